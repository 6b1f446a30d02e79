"""What is carried of a source is the same program: nothing but names differs, and no name that anybody else knows."""

import ast
import re
import symtable

import pytest

from webapp import bundle, shorten

NAME_OF = {ast.Name: "id", ast.arg: "arg", ast.FunctionDef: "name", ast.ClassDef: "name", ast.ExceptHandler: "name"}
SCOPES = (ast.FunctionDef, ast.Lambda, ast.ListComp, ast.SetComp, ast.DictComp, ast.GeneratorExp)
FULL = bundle.sources()
SHORT = bundle.shortened(FULL)


class Bare(ast.NodeTransformer):
    """Takes out annotations, but for names that get no value, and what is there for the type checker."""

    def visit_FunctionDef(self, node):
        self.generic_visit(node)
        node.returns = None
        return node

    def visit_arg(self, node):
        node.annotation = None
        return node

    def visit_AnnAssign(self, node):
        self.generic_visit(node)
        return node if node.value is None else ast.Assign([node.target], node.value, lineno=0)

    def visit_If(self, node):
        self.generic_visit(node)
        return None if ast.unparse(node.test) == "TYPE_CHECKING" else node


def bare(source):
    """Return the syntax tree that is left of a source when everything that Python skips is gone."""
    tree = Bare().visit(ast.parse(re.sub("^TYPE_CHECKING = False$", "", source, flags=re.MULTILINE)))
    for node in ast.walk(tree):
        if isinstance(node, (ast.Module, ast.ClassDef, ast.FunctionDef)) and ast.get_docstring(node) is not None:
            del node.body[0]
            if not node.body and not isinstance(node, ast.Module):
                node.body.append(ast.Pass())
    return ast.parse(ast.unparse(tree))  # for the line numbers


def names_in_step(old, new, skipped=()):
    """Yield the names of two trees in pairs; everything else in them must be the same."""
    assert type(old) is type(new), (ast.dump(old), ast.dump(new))
    for field in old._fields:
        one, other = getattr(old, field), getattr(new, field)
        if one is not None and NAME_OF.get(type(old)) == field:
            yield one, other
        elif not isinstance(old, skipped):
            parts, its = (one, other) if isinstance(one, list) else ([one], [other])
            assert len(parts) == len(its), ast.dump(old)
            for part, its_part in zip(parts, its):
                if isinstance(part, ast.AST):
                    yield from names_in_step(part, its_part, skipped)
                else:
                    assert (type(part), part) == (type(its_part), its_part), ast.dump(old)


def outermost_scopes(tree):
    """Return every function, lambda and comprehension that is in no other, in the order of the source."""
    found: list[ast.AST] = []
    for child in ast.iter_child_nodes(tree):
        found += [child] if isinstance(child, SCOPES) else outermost_scopes(child)
    return found


def tables_within(table, node):
    """Return the symbol tables of everything that a node holds."""
    here = [table] if table.get_type() == "function" and node.lineno <= table.get_lineno() <= node.end_lineno else []
    return here + [each for child in table.get_children() for each in tables_within(child, node)]


def is_global(tables, name):
    return any(name in table.get_identifiers() and table.lookup(name).is_global() for table in tables)


def given_by_name(sources):
    """Return every name by which some call gives an argument."""
    nodes = [node for source in sources for node in ast.walk(ast.parse(source))]
    return {node.arg for node in nodes if isinstance(node, ast.keyword) and node.arg}


def assert_one_to_one(pairs):
    assert len({old for old, _ in pairs}) == len({new for _, new in pairs}) == len(set(pairs)), sorted(pairs)


def assert_only_names_differ(full, short, given):
    """Fail unless `short` is `full` with other names for what functions bind and for private names of the module."""
    old, new = bare(full), ast.parse(short)
    assert not any(isinstance(node, (ast.AnnAssign, ast.arg)) and node.annotation for node in ast.walk(new))
    symbols = symtable.symtable(ast.unparse(old), "full", "exec")
    outside = set(names_in_step(old, new, SCOPES))
    for scope, its in zip(outermost_scopes(old), outermost_scopes(new), strict=True):
        pairs = set(names_in_step(scope, its)) - set(names_in_step(scope, its, SCOPES))
        assert_one_to_one(pairs)
        tables = tables_within(symbols, scope)
        outside |= {pair for pair in pairs if is_global(tables, pair[0])}
        arguments = {node.arg for node in ast.walk(scope) if isinstance(node, ast.arg)}
        assert not [pair for pair in pairs if pair[0] in arguments & given and pair[0] != pair[1]]
    assert_one_to_one(outside)
    defined = {symbol.get_name() for symbol in symbols.get_symbols() if symbol.is_assigned()}
    changed = [pair for pair in outside if pair[0] != pair[1]]
    assert all(name.startswith("_") and its.startswith("_") and name in defined for name, its in changed), changed


def assert_shortened_well(source):
    assert_only_names_differ(source, shorten.shorten({"a.py": source})["a.py"], given_by_name([source]))


# ---------------------------------------------------------------- the files that are carried

GIVEN = given_by_name(FULL.values())


@pytest.mark.parametrize("path", FULL)
def test_only_names_differ_in_what_is_carried(path):
    assert_only_names_differ(FULL[path], SHORT[path], GIVEN)
    assert len(SHORT[path]) < len(FULL[path]) or not SHORT[path]


@pytest.mark.parametrize("path", SHORT)
def test_every_name_that_a_carried_file_takes_from_another_is_there(path):
    nodes = list(ast.walk(ast.parse(SHORT[path])))
    modules = {}
    for taken in [node for node in nodes if isinstance(node, ast.ImportFrom)]:
        module = str(taken.module).replace(".", "/")
        for alias in taken.names:
            inside = f"{module}/{alias.name}.py"
            if inside in SHORT:
                modules[alias.asname or alias.name] = inside
            elif f"{module}.py" in SHORT:
                assert alias.name in defined_in(f"{module}.py")
    for node in nodes:
        if isinstance(node, ast.Attribute) and isinstance(node.value, ast.Name) and node.value.id in modules:
            assert node.attr in defined_in(modules[node.value.id])


def defined_in(path):
    symbols = symtable.symtable(SHORT[path], path, "exec")
    return {symbol.get_name() for symbol in symbols.get_symbols()}


# ---------------------------------------------------------------- tricky sources

TRICKY = {
    "a docstring beyond ASCII and two statements": 'def f():\n    """20 °C – “so”."""\n    a = 1\n    return a\n',
    "a blank line inside a string": 'a = """one\n\n\ntwo   \n   """\nb = """x\n\n""" + f"""y\n\n{a}  \n"""\n',
    "odd line ends inside a string": "a = 'x\\x0cy\u2028z\x0c'\nb = 1\n",
    "quotes of every kind": "a = 'it\\'s  \"so\"'\nb = f'\"{a}\"  \\'  {a}'\nc = '\\\\'\nd = \"  '\"  # '\n",
    "spaces in strings": "def f(given):\n    return 'a  + b' if given == ' ' else f' {given} '\n",
    "an f-string with an expression": "def f(given):\n    return f'<{given + 1}>  {len(given)} not  {{in}} '\n",
    "operators that could run together": "def f(one, two):\n    return one - -two, one if not -one else 1, two is -1\n",
    "words that could run together": "def f(one):\n    return [1 if one else 2 for one in 'ab' if one in 'a' or one]\n",
    "a docstring alone": 'def f():\n    """Only this."""\n',
    "a class with a docstring alone": 'class C(ValueError):\n    """Only this."""\n',
    "a module with a docstring alone": '"""Only this."""\n',
    "a string that looks like a docstring": 'a = 1\n"""Not one."""\nb = """two\nlines # kept\n"""\n',
    "a comment where the code needs a line": "if a:\n    # why\n    pass\nb = (1,  # one\n     2)  # two\n",
    "annotations": "a: int = 1\ndef f(b: int, *c: str, **d: 'C') -> dict[str, int]:\n    e: int = b\n    return e\n",
    "the type checker's own": "TYPE_CHECKING = False\nif TYPE_CHECKING:\n    from a import B\na = 1\n",
    "nested functions": 'def f(one):\n    """F."""\n\n    def g(two):\n        return one + two\n\n    return g\n',
    "a name that is local here and global there": "two = 1\ndef f(two):\n    return two\ndef g():\n    return two\n",
    "a comprehension that hides a global": "each = [1]\n\n\ndef f():\n    return [each for each in each]\n",
    "a built-in name as an argument": "def f(id, len):\n    return id, len, max(id)\n",
    "a default that is global": "one = 1\n\n\ndef f(two, three=one):\n    return [two for one in three]\n",
    "a global statement": "count = 0\n\n\ndef f(step):\n    global count\n    count = count + step\n",
    "a nonlocal statement": "def f(one):\n    def g():\n        nonlocal one\n        one = 2\n    return g, one\n",
    "an import inside": "def f(one):\n    import math\n    return math.sqrt(one)\n",
    "a class inside": "def f(one):\n    class C:\n        two = one\n        def three(self):\n            pass\n",
    "a single letter taken": "def a():\n    return 1\n\n\ndef f(one, two):\n    b = a()\n    return one, two, b\n",
    "an exception's name": "def f():\n    try:\n        pass\n    except ValueError as error:\n        return error\n",
    "attributes and methods": "class C:\n    _two = 1\n    def _one(self):\n        self._two = _one\n_one = 1\n",
    "a private name hidden inside": "_one = 1\n\n\ndef f(_one):\n    return _one\n\n\ndef g():\n    return _one\n",
    "a private name imported": "from math import sqrt as _root\n\n_two = _root(4)\n",
    "a private name that is taken": "_b = 1\n_longer = 2\n_a = _b + _longer\n",
    "a lambda and a comprehension in the open": "_one = lambda two: two[1]\nb = [_one(each) for each in (1, 2)]\n",
    "more names than letters": "def f():\n" + "".join([f"    name{each} = {each}\n" for each in range(80)]),
}


@pytest.mark.parametrize("how", TRICKY)
def test_only_names_differ_in_a_tricky_source(how):
    assert_shortened_well(TRICKY[how])


def test_what_is_short_reads_like_this():
    source = (
        '"""Why."""\n\n_LIMIT = 2.50\n\n\ndef speed_of(length: float, time: float) -> float:\n    """Return it."""\n'
        "    speed = length / time  # never zero\n    return speed if speed > _LIMIT else _zero(length=speed)\n\n\n"
        "def _zero(length):\n    return length - length\n"
    )
    expected = (
        "_a=2.5\ndef speed_of(length,a):\n b=length/a\n return b if b>_a else _b(length=b)\n"
        "def _b(length):\n return length-length\n"
    )
    assert shorten.shorten({"a.py": source}) == {"a.py": expected}


# ---------------------------------------------------------------- names that others know


def test_an_argument_given_by_name_in_another_module_keeps_it():
    source = "def f(one, two):\n    return one, two\n"
    short = shorten.shorten({"a.py": source, "b.py": "from a import f\nf(1, two=2)\n"})
    assert short["a.py"] == "def f(a,two):\n return(a,two)\n"


def test_arguments_given_by_stars_keep_the_names_that_may_be_among_them():
    facts = "NAMES = ('carbon', 'length')\n"
    formulas = "def f(carbon, other):\n    return carbon, other\n"
    caller = "import facts\nfrom formulas import f\n\n\ndef g(values):\n    return f(2, **{facts.NAMES[0]: values})\n"
    elsewhere = "def h(length):\n    return length\n"
    short = shorten.shorten({"facts.py": facts, "formulas.py": formulas, "c.py": caller, "d.py": elsewhere})
    assert short["formulas.py"] == "def f(carbon,a):\n return(carbon,a)\n"
    assert short["d.py"] == "def h(a):\n return a\n"


def test_a_private_name_that_another_module_takes_stays():
    user = "import a\nfrom a import _two\n\nb = a._one + _two\n"
    short = shorten.shorten({"a.py": "_one = 1\n_two = 2\n_three = 3\n", "b.py": user})
    assert short["a.py"] == "_one=1\n_two=2\n_a=3\n"
    assert short["b.py"] == "import a\nfrom a import _two\nb=a._one+_two\n"


# ---------------------------------------------------------------- the comparison itself


@pytest.mark.parametrize(
    ("full", "short"),
    (
        ("a = 1\nb = 2\n", "a=1\n"),
        ("a = 'x'\n", "a='y'\n"),
        ("a = 1\n", "a=1.0\n"),
        ("a = 1\n", "b=1\n"),
        ("def f(one):\n    return one\n", "def g(one):\n return one\n"),
        ("def f(one, two):\n    return one\n", "def f(a,b):\n return b\n"),
        ("def f(one, two):\n    return one, two\n", "def f(a,b):\n return a,a\n"),
        ("def f(one):\n    return len(one)\n", "def f(len):\n return len(len)\n"),
        ("def f(one):\n    return len(one)\n", "def f(a):\n return b(a)\n"),
        ("c = 1\ndef f(one):\n    return one, c\n", "c=1\ndef f(c):\n return c,c\n"),
        ("c = 1\ndef f(one):\n    return [c for one in one]\n", "c=1\ndef f(a):\n return [a for b in a]\n"),
        ("def f(one):\n    return one\nf(one=1)\n", "def f(a):\n return a\nf(one=1)\n"),
        ("def f(one):\n    return one.two\n", "def f(a):\n return a.b\n"),
        ("_one = 1\n_two = 2\n_three = _one\n", "_a=1\n_b=2\n_c=_b\n"),
        ("_one = 1\n_two = 2\n", "_a=1\n_a=2\n"),
        ("_one = 1\n_a = 2\n", "_a=1\n_a=2\n"),
        ("def f(one: int):\n    return one\n", "def f(a:int):\n return a\n"),
    ),
)
def test_the_comparison_sees_a_planted_mistake(full, short):
    with pytest.raises(AssertionError):
        assert_only_names_differ(full, short, given_by_name([full]))
