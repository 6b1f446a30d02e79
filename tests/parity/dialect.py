"""What may not be written in a file that runs on both Pythons, where a machine can see it.

A compiler for the phone refuses the syntax it lacks; this finds what it would take without a word and then do
otherwise than CPython: silently, or by failing at the reader's hands. What it can not see (a float in `str(x)`, a
sort whose keys tie, a dict handed from function to function) is left to the parity run.
"""

import ast

# Modules that both have; `re` is there too, but two of its operators silently never match.
MODULES = ("math", "json")
OURS = ("calculators", "webapp")
MATHS = (
    "acos acosh asin asinh atan atan2 atanh ceil copysign cos cosh degrees e erf erfc exp expm1 fabs "
    "factorial floor fmod frexp gamma inf isclose isfinite isinf isnan ldexp lgamma log log10 log2 modf "
    "nan pi pow radians sin sinh sqrt tan tanh tau trunc"
)
MISSING_METHODS = (
    "title capitalize casefold removeprefix removesuffix ljust rjust zfill isalnum isascii translate "
    "maketrans swapcase expandtabs format_map isidentifier isnumeric isdecimal isprintable is_integer "
    "bit_length bit_count as_integer_ratio fromhex"
)
ASCII_ONLY = ("isalpha", "isdigit", "isspace", "isupper", "islower", "upper", "splitlines")
MISSING_BUILTINS = ("format", "ascii", "vars", "aiter", "anext", "breakpoint")
MISSING_EXCEPTIONS = (
    "ModuleNotFoundError",
    "RecursionError",
    "UnicodeDecodeError",
    "UnicodeEncodeError",
    "TimeoutError",
)
MISSING_ATTRIBUTES = ("__doc__", "__annotations__", "__mro__", "__qualname__", "__module__", "__package__", "__cause__")
# What may be done with a view of a dict without its order showing.
ORDERLESS = ("sorted", "len", "set", "frozenset", "any", "all", "sum", "min", "max")


def violations(source: str, name: str) -> list[str]:
    """Return `name:line: why` for each thing in source that the two Pythons do not do alike."""
    finder = _Finder(source)
    finder.visit(ast.parse(source))
    return [f"{name}:{line}: {why}" for line, why in sorted(set(finder.found))]


class _Finder(ast.NodeVisitor):
    def __init__(self, source: str) -> None:
        self.found: list[tuple[int, str]] = []
        self.modules = {
            alias.asname or alias.name
            for node in ast.walk(ast.parse(source))
            if isinstance(node, (ast.Import, ast.ImportFrom))
            for alias in node.names
        }
        self.orderless: set[ast.expr] = set()

    def report(self, node: ast.AST, why: str) -> None:
        self.found.append((getattr(node, "lineno", 0), why))

    # -------------------------------------------------------- imports and classes

    def visit_If(self, node: ast.If) -> None:
        if not (isinstance(node.test, ast.Name) and node.test.id == "TYPE_CHECKING"):
            self.generic_visit(node)

    def visit_Import(self, node: ast.Import) -> None:
        for alias in node.names:
            self._module(node, alias.name)

    def visit_ImportFrom(self, node: ast.ImportFrom) -> None:
        self._module(node, node.module or "")
        if node.module == "math":
            for alias in node.names:
                self._maths(node, alias.name)

    def _module(self, node: ast.AST, name: str) -> None:
        if name.split(".")[0] not in MODULES + OURS:
            self.report(node, f"module {name} is not on the phone, or does not do the same there")

    def _maths(self, node: ast.AST, name: str) -> None:
        if name not in MATHS.split(" "):
            self.report(node, f"math.{name} is not on the phone")

    def visit_ClassDef(self, node: ast.ClassDef) -> None:
        if len(node.bases) > 1:
            self.report(node, "a class with several parents: the phone skips some of them")
        self.generic_visit(node)

    def visit_ExceptHandler(self, node: ast.ExceptHandler) -> None:
        for name in ast.walk(node.type) if node.type else ():
            if isinstance(name, ast.Name) and name.id in MISSING_EXCEPTIONS:
                self.report(node, f"{name.id} is not on the phone")
        self.generic_visit(node)

    # -------------------------------------------------------- text of numbers

    def visit_JoinedStr(self, node: ast.JoinedStr) -> None:
        for part in node.values:
            if isinstance(part, ast.FormattedValue) and part.format_spec is not None:
                self.report(node, "a format specification: ties, commas and digits differ; use numerals")
            if isinstance(part, ast.FormattedValue) and part.conversion == ord("r"):
                self.report(node, "repr in an f-string: floats and quotes differ")
            if isinstance(part, ast.FormattedValue) and _is_float(part.value):
                self.report(node, "a float in an f-string: its digits differ; use numerals")
            if isinstance(part, ast.Constant) and ("{" in str(part.value) or "}" in str(part.value)):
                self.report(node, "braces beside an f-string: the phone drops what is between them")
        self.generic_visit(node)

    def visit_BinOp(self, node: ast.BinOp) -> None:
        left = node.left
        if isinstance(node.op, ast.Mod) and (
            isinstance(left, ast.JoinedStr) or (isinstance(left, ast.Constant) and isinstance(left.value, str))
        ):
            self.report(node, "text % values: ties and floats differ; use numerals")
        self.generic_visit(node)

    # -------------------------------------------------------- order and slices

    def visit_Slice(self, node: ast.Slice) -> None:
        if node.step is not None:
            self.report(node.step, "a slice with a step; use reversed or a loop")
        self.generic_visit(node)

    def visit_For(self, node: ast.For) -> None:
        self._iterated(node.iter)
        self.generic_visit(node)

    def visit_comprehension(self, node: ast.comprehension) -> None:
        self._iterated(node.iter)
        self.generic_visit(node)

    def visit_SetComp(self, node: ast.SetComp) -> None:
        self._loses_order(node)
        self.generic_visit(node)

    def visit_DictComp(self, node: ast.DictComp) -> None:
        self._loses_order(node)
        self.generic_visit(node)

    def _loses_order(self, node: ast.expr) -> None:
        self.orderless.add(node)
        if isinstance(node, (ast.GeneratorExp, ast.ListComp, ast.SetComp, ast.DictComp)):
            self.orderless.update(each.iter for each in node.generators)

    def _iterated(self, over: ast.expr) -> None:
        if over in self.orderless:
            return
        made = (
            isinstance(over, ast.Call)
            and isinstance(over.func, ast.Name)
            and over.func.id in ("set", "dict", "frozenset")
        )
        if made or isinstance(over, (ast.Dict, ast.DictComp, ast.Set, ast.SetComp)):
            self.report(over, "a dict or set has no order on the phone; use tuples of pairs")

    # -------------------------------------------------------- calls

    def visit_Call(self, node: ast.Call) -> None:
        if isinstance(node.func, ast.Name):
            if node.func.id in ORDERLESS:
                for each in node.args:
                    self._loses_order(each)
            self._function(node, node.func.id)
        elif isinstance(node.func, ast.Attribute):
            self._method(node, node.func)
        keywords = [keyword.value for keyword in node.keywords]
        for starred in node.args:
            if isinstance(starred, ast.Starred) and any(_place(each) < _place(starred) for each in keywords):
                self.report(node, "*arguments after keywords: the phone scrambles them")
        self.generic_visit(node)

    def _function(self, node: ast.Call, name: str) -> None:
        named = [keyword.arg for keyword in node.keywords]
        if name == "repr":
            self.report(node, "repr: floats and quotes differ; use numerals")
        if name == "str" and node.args and _is_float(node.args[0]):
            self.report(node, "str of a float: its digits differ; use numerals")
        if name == "round" and (len(node.args) > 1 or "ndigits" in named):
            self.report(node, "round to places: ties differ; use numerals")
        if name == "sorted" and "reverse" in named:
            self.report(node, "a reversed sort: equal items change places; use a key that is never equal")
        if name == "zip" and "strict" in named:
            self.report(node, "zip(strict=) is not on the phone")
        if name in MISSING_BUILTINS:
            self.report(node, f"{name}() is not on the phone")
        if name == "isinstance" and len(node.args) == 2 and isinstance(node.args[1], ast.BinOp):
            self.report(node, "isinstance with a union; use a tuple of types")
        if name in ("list", "tuple", "enumerate", "iter", "map", "zip") and node.args:
            self._iterated(node.args[0])

    def _method(self, node: ast.Call, function: ast.Attribute) -> None:
        named = [keyword.arg for keyword in node.keywords]
        name, on = function.attr, function.value
        if isinstance(on, ast.Name) and on.id in self.modules and on.id not in ("math", "json"):
            return  # a function of one of our modules
        if isinstance(on, ast.Name) and on.id == "json" and name != "loads":
            self.report(node, f"json.{name}: order and numbers differ; use json_text")
        if name in MISSING_METHODS.split(" "):
            self.report(node, f".{name}() is not on the phone")
        if name in ASCII_ONLY or (name in ("strip", "lstrip", "rstrip", "split", "rsplit") and not node.args):
            self.report(node, f".{name}() knows only ASCII on the phone; name the characters")
        if name == "center" and len(node.args) > 1:
            self.report(node, ".center() takes no fill on the phone")
        if name == "format" and not (
            isinstance(on, ast.Constant) and ":" not in str(on.value) and "!" not in str(on.value)
        ):
            self.report(node, "a format specification: ties, commas and digits differ; use numerals")
        if name in ("items", "keys", "values") and not node.args and node not in self.orderless:
            self.report(node, f".{name}() of a dict has no order on the phone; use tuples of pairs, or sorted()")
        if name == "sort" and "reverse" in named:
            self.report(node, "a reversed sort: equal items change places; use a key that is never equal")

    # -------------------------------------------------------- attributes

    def visit_Attribute(self, node: ast.Attribute) -> None:
        if isinstance(node.value, ast.Name) and node.value.id == "math":
            self._maths(node, node.attr)
        if node.attr in MISSING_ATTRIBUTES:
            self.report(node, f"{node.attr} is not on the phone")
        self.generic_visit(node)


def _place(node: ast.expr) -> tuple[int, int]:
    return node.lineno, node.col_offset


def _is_float(node: ast.expr) -> bool:
    """Return whether an expression is plainly a float."""
    if isinstance(node, ast.Constant):
        return isinstance(node.value, float)
    if isinstance(node, ast.BinOp):
        return isinstance(node.op, ast.Div) or _is_float(node.left) or _is_float(node.right)
    if isinstance(node, ast.UnaryOp):
        return _is_float(node.operand)
    return isinstance(node, ast.Call) and isinstance(node.func, ast.Name) and node.func.id == "float"
