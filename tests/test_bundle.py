"""What the phone carries: nothing lost when docstrings go, nothing missing, and a build that names exactly this."""

import ast
import json
import shutil
import tokenize
from typing import Any

import pytest

from calculators import made
from webapp import bundle, shelf_entries, shell_pieces

SHARED = bundle.shared_sources()
# MicroPython's own, of those that the dialect allows.
BUILT_IN = ("math", "json")


def named(path):
    return str(path.relative_to(bundle.ROOT))


class Unannotated(ast.NodeTransformer):
    """Takes the annotations out of a syntax tree, but for names that get no value."""

    def visit_FunctionDef(self, node):
        self.generic_visit(node)
        node.returns = None
        return node

    def visit_arg(self, node):
        node.annotation = None
        return node

    def visit_AnnAssign(self, node):
        self.generic_visit(node)
        return node if node.value is None else ast.Assign([node.target], node.value)


def without_docstrings(source):
    """Return the syntax tree of a source, as text, as `strip` should leave it."""
    tree = Unannotated().visit(ast.parse(source))
    for node in ast.walk(tree):
        if isinstance(node, (ast.Module, ast.ClassDef, ast.FunctionDef)) and ast.get_docstring(node) is not None:
            del node.body[0]
            if not node.body and not isinstance(node, ast.Module):
                node.body.append(ast.Pass())
    return ast.dump(tree)


def assert_only_docstrings_and_comments_go(source):
    stripped = bundle.strip(source)
    assert ast.dump(ast.parse(stripped)) == without_docstrings(source)
    compile(stripped, "stripped", "exec")
    for node in ast.walk(ast.parse(stripped)):
        if isinstance(node, (ast.Module, ast.ClassDef, ast.FunctionDef)):
            assert ast.get_docstring(node) is None
    kinds = [token.type for token in tokenize.generate_tokens(iter(stripped.splitlines(keepends=True)).__next__)]
    assert tokenize.COMMENT not in kinds


# ---------------------------------------------------------------- stripping


@pytest.mark.parametrize("path", SHARED, ids=named)
def test_stripping_takes_docstrings_and_comments_and_nothing_else(path):
    source = path.read_text("utf-8")
    assert_only_docstrings_and_comments_go(source)
    assert len(bundle.strip(source)) < len(source)


TRICKY = {
    "a docstring beyond ASCII and two statements": 'def f():\n    """20 °C – “so”."""\n    a = 1\n    return a\n',
    "a blank line inside a string": 'a = """one\n\n\ntwo   \n   """\nb = """x\n\n""" + f"""y\n\n{a}  \n"""\n',
    "odd line ends inside a string": "a = 'x\\x0cy\u2028z\x0c'\nb = 1\n",
    "a docstring alone": 'def f():\n    """Only this."""\n',
    "a class with a docstring alone": 'class C(ValueError):\n    """Only this."""\n',
    "a module with a docstring alone": '"""Only this."""\n',
    "a docstring beyond ASCII": 'def f():\n    """Return 20 °C ± ½ – “so”."""\n    return 1\n\n\ng = 2\n',
    "a docstring of several lines beyond ASCII": 'def f():\n    """Return.\n\n    20 °C ± ½ – “so”."""\n    return 1\n',
    "something before a comment, beyond ASCII": 'a = "°±½"  # 20 °C\nb = "# no comment"  # one\n',
    "a string that looks like a docstring": 'a = 1\n"""Not one."""\nb = """two\nlines # kept\n"""\n',
    "a comment where the code needs a line": "if a:\n    # why\n    pass\nb = (1,  # one\n     2)  # two\n",
    "nested functions": 'def f():\n    """F."""\n\n    def g():\n        """G."""\n\n    return g\n',
}


@pytest.mark.parametrize("how", TRICKY)
def test_stripping_tricky_source_takes_nothing_else(how):
    assert_only_docstrings_and_comments_go(TRICKY[how])


def test_the_comparison_sees_a_lost_statement():
    assert without_docstrings("a = 1\nb = 2\n") != without_docstrings("a = 1\n")
    assert without_docstrings('a = """x\n\ny"""\n') != without_docstrings('a = """x\ny"""\n')


# ---------------------------------------------------------------- what is carried


def test_every_module_that_a_carried_file_imports_is_carried():
    files = bundle.python_files()
    for name, source in files.items():
        for module in imported(source):
            path = module.replace(".", "/")
            assert module in BUILT_IN or f"{path}.py" in files or f"{path}/__init__.py" in files, f"{name}: {module}"


def imported(source):
    """Return the dotted names of all modules that a source imports, those for the type checker aside."""
    found = set()
    waiting = [ast.parse(source)]
    while waiting:
        node = waiting.pop()
        if isinstance(node, ast.If) and isinstance(node.test, ast.Name) and node.test.id == "TYPE_CHECKING":
            continue
        if isinstance(node, ast.Import):
            found |= {alias.name for alias in node.names}
        elif isinstance(node, ast.ImportFrom):
            assert node.module is not None, "imports from nowhere are not for shared files"
            found.add(node.module)
            if (bundle.ROOT / node.module.replace(".", "/")).is_dir():
                inside = {f"{node.module}.{alias.name}" for alias in node.names}
                found |= {each for each in inside if (bundle.ROOT / (each.replace(".", "/") + ".py")).exists()}
        waiting += ast.iter_child_nodes(node)
    return found


def test_the_walk_over_imports_sees_them():
    source = "import math\nfrom calculators.facts import units\nfrom webapp import fragments\n"
    source += "if TYPE_CHECKING:\n    import re\n"
    expected = {"math", "calculators.facts", "calculators.facts.units", "webapp", "webapp.fragments"}
    assert imported(source) == expected


def test_every_package_folder_of_a_carried_file_is_a_package():
    files = bundle.python_files()
    for name in files:
        folders = name.split("/")[:-1]
        for depth in range(1, len(folders) + 1):
            assert "/".join([*folders[:depth], "__init__.py"]) in files, name


def test_every_calculator_is_carried():
    files = bundle.python_files()
    assert made.CALCULATOR_MODULES
    assert all(f"calculators/{name}.py" in files for name in made.CALCULATOR_MODULES)


def test_the_literals_of_the_phone_equal_what_was_made():
    files = bundle.python_files()
    units: dict[str, object] = {}
    shell: dict[str, object] = {}
    shelf: dict[str, Any] = {}
    exec(files["calculators/made.py"], units)
    exec(files["webapp/shell_pieces.py"], shell)
    exec(files["webapp/shelf_entries.py"], shelf)
    assert units["FACTORS"] == made.FACTORS
    assert units["CALCULATOR_MODULES"] == made.CALCULATOR_MODULES
    assert shell["PIECES"] == shell_pieces.PIECES
    assert shelf["entries"]() == shelf_entries.entries()


def test_the_python_that_is_carried_is_one_json_file_of_the_sources():
    assert json.loads(bundle.Bundle().files["pocket.json"]) == {"files": bundle.python_files()}


def test_carried_python_is_ascii_so_that_every_reader_gets_the_same_bytes():
    assert bundle.Bundle().files["pocket.json"].isascii()


# ---------------------------------------------------------------- the build names what is carried


def changed_static(tmp_path, monkeypatch, name):
    """Return the build when one byte of one file under static/ is another."""
    folder = tmp_path / "static"
    for each in (*bundle.PRECACHED_STATIC, *bundle.PLAIN_STATIC, "manifest.webmanifest", "built/worker.js"):
        (folder / each).parent.mkdir(parents=True, exist_ok=True)
        shutil.copy(bundle.STATIC / each, folder / each)
    content = (folder / name).read_bytes()
    (folder / name).write_bytes(content[:-1] + bytes([content[-1] ^ 1]))
    monkeypatch.setattr(bundle, "STATIC", folder)
    monkeypatch.setattr(shell_pieces, "_static", str(folder))
    return bundle.Bundle().build


def test_the_same_content_is_the_same_build():
    assert bundle.Bundle().build == bundle.Bundle().build


@pytest.mark.parametrize(
    "name", [*bundle.PRECACHED_STATIC, *bundle.PLAIN_STATIC, "manifest.webmanifest", "built/worker.js"]
)
def test_another_byte_in_a_carried_file_is_another_build(tmp_path, monkeypatch, name):
    files = bundle.python_files()
    monkeypatch.setattr(bundle, "python_files", lambda: files)
    before = bundle.Bundle().build
    assert changed_static(tmp_path, monkeypatch, name) != before


def test_another_byte_in_any_carried_source_is_another_build(monkeypatch):
    files = bundle.python_files()
    builds = {bundle.Bundle().build}
    for name in files:
        monkeypatch.setattr(bundle, "python_files", lambda name=name: {**files, name: files[name] + "\n"})
        builds.add(bundle.Bundle().build)
    assert len(builds) == 1 + len(files)


def test_a_comment_is_not_carried_so_it_is_no_other_build():
    source = SHARED[0].read_text("utf-8")
    assert bundle.strip(source + "# why\n") == bundle.strip(source)


def test_the_worker_names_its_build_and_every_carried_file_with_its_hash():
    carried = bundle.Bundle()
    first, _, rest = carried.worker.partition(b"\n")
    head = json.loads(first.removeprefix(b"self.BUILD=").removesuffix(b";"))
    assert head["build"] == carried.build
    assert head["precache"] == carried.precache
    assert rest == (bundle.STATIC / "built" / "worker.js").read_bytes()
    for name in (*bundle.PRECACHED_STATIC, *bundle.PLAIN_STATIC):
        assert any(address.partition("?")[0] == f"static/{name}" for address in carried.precache)
