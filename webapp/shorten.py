"""The phone's copy of a source: the same code without what Python skips, with short names, printed tight.

Renamed is only what nobody outside can know by its name: what a function binds, and the private names of a module.
Names of attributes, public names, and arguments that any call gives by their names stay as they are.
"""

import ast
import builtins
import itertools
import keyword
import re
import string
from collections.abc import Iterable, Iterator

# Where each kind of node keeps the name that it binds or reads.
_NAME_OF = {ast.Name: "id", ast.arg: "arg", ast.FunctionDef: "name", ast.ClassDef: "name", ast.ExceptHandler: "name"}
_SCOPES = (ast.FunctionDef, ast.Lambda, ast.ListComp, ast.SetComp, ast.DictComp, ast.GeneratorExp)
_BUILT_IN = frozenset(dir(builtins))
_TEXT_OR_SPACE = re.compile(
    r"""(?P<text>'''(?:\\.|[^\\])*?'''|\"""(?:\\.|[^\\])*?\"""|'(?:\\.|[^'\\])*'|"(?:\\.|[^"\\])*")"""
    r"|(?P<indent>^ +)|(?<!\w) +| +(?!\w)|^\n",
    re.MULTILINE,
)


def shorten(sources: dict[str, str]) -> dict[str, str]:
    """Return path -> short source for path -> source of all modules that run together."""
    trees = {path: _Bare().visit(ast.parse(source)) for path, source in sources.items()}
    known = _known_elsewhere(trees)
    for tree in trees.values():
        _rename(tree, known)
    return {path: _tight(ast.unparse(tree)) for path, tree in trees.items()}


class _Bare(ast.NodeTransformer):
    """Takes out docstrings, annotations and what is there for the type checker alone."""

    def visit_Module(self, node: ast.Module) -> ast.Module:
        self.generic_visit(node)
        node.body = _without_docstring(node.body)
        return node

    def visit_ClassDef(self, node: ast.ClassDef) -> ast.ClassDef:
        self.generic_visit(node)
        node.body = _without_docstring(node.body) or [ast.Pass()]
        return node

    def visit_FunctionDef(self, node: ast.FunctionDef) -> ast.FunctionDef:
        self.generic_visit(node)
        node.body = _without_docstring(node.body) or [ast.Pass()]
        node.returns = None
        return node

    def visit_arg(self, node: ast.arg) -> ast.arg:
        node.annotation = None
        return node

    def visit_AnnAssign(self, node: ast.AnnAssign) -> ast.stmt:
        self.generic_visit(node)
        return ast.copy_location(ast.Assign([node.target], node.value), node) if node.value else node

    def visit_Assign(self, node: ast.Assign) -> ast.Assign | None:
        return None if _is(node.targets[0], "TYPE_CHECKING") else node

    def visit_If(self, node: ast.If) -> ast.If | None:
        self.generic_visit(node)
        return None if _is(node.test, "TYPE_CHECKING") else node


def _without_docstring(body: list[ast.stmt]) -> list[ast.stmt]:
    match body:
        case [ast.Expr(ast.Constant(str())), *rest]:
            return rest
    return body


# ---------------------------------------------------------------- which names stay


def _known_elsewhere(trees: dict[str, ast.Module]) -> set[str]:
    """Return the names by which calls give arguments, and the private ones that one module takes from another."""
    known = set()
    for path, tree in trees.items():
        for node in ast.walk(tree):
            if isinstance(node, ast.keyword):
                known.add(node.arg or "")
            elif isinstance(node, ast.alias) and node.name.startswith("_"):
                known.add(node.name)
            elif isinstance(node, ast.Attribute) and node.attr.startswith("_") and not _is(node.value, "self"):
                known.add(node.attr)
            elif isinstance(node, ast.Call) and _gives_by_stars(node):
                # Any name of an argument in reach may be among them, if it is also a text in reach.
                reached = [inner for each in (path, *_imported(tree, trees)) for inner in ast.walk(trees[each])]
                texts = {str(inner.value) for inner in reached if isinstance(inner, ast.Constant)}
                known |= texts & {inner.arg for inner in reached if isinstance(inner, ast.arg)}
    return known


def _gives_by_stars(call: ast.Call) -> bool:
    """Return whether a call gives arguments whose names cannot be seen; `say` takes any and knows none."""
    return not _is(call.func, "say") and None in [each.arg for each in call.keywords]


def _is(node: ast.expr, name: str) -> bool:
    return isinstance(node, ast.Name) and node.id == name


def _imported(tree: ast.Module, paths: Iterable[str]) -> list[str]:
    """Return those of the paths whose modules a module imports, or takes names from."""
    found = set()
    for node in ast.walk(tree):
        if isinstance(node, ast.Import):
            found |= {alias.name for alias in node.names}
        elif isinstance(node, ast.ImportFrom):
            found |= {node.module or "", *(f"{node.module}.{alias.name}" for alias in node.names)}
    return [path for path in paths if path.removesuffix(".py").replace("/", ".") in found]


# ---------------------------------------------------------------- new names


def _rename(tree: ast.Module, known: set[str]) -> None:
    module = list(_outside_scopes(tree, classes=False))
    outside = list(_outside_scopes(tree, classes=True))
    in_classes = set(outside).difference(module)
    fixed = known.union(_bound(in_classes), _bound(node for node in module if isinstance(node, ast.alias)))
    shared = _BUILT_IN.union(_bound(outside))
    for scope in outside:
        if isinstance(scope, _SCOPES):
            inside = list(ast.walk(scope))[1:]
            fixed.update(_bound(inside))
            _rename_bound_inside(inside, shared, known)
    private = [name for name in _bound(module) if name.startswith("_") and name not in fixed]
    everything = list(ast.walk(tree))
    _give(everything, private, "_", _all_names(everything))


def _outside_scopes(node: ast.AST, classes: bool) -> Iterator[ast.AST]:
    """Yield what no function, lambda or comprehension holds, with or without what classes hold."""
    for child in ast.iter_child_nodes(node):
        yield child
        if not isinstance(child, _SCOPES) and (classes or not isinstance(child, ast.ClassDef)):
            yield from _outside_scopes(child, classes)


def _rename_bound_inside(inside: list[ast.AST], shared: frozenset[str], known: set[str]) -> None:
    """Rename what a function binds, the functions and comprehensions in it included: one name, one new name."""
    if any(isinstance(node, (ast.ClassDef, ast.alias, ast.Global, ast.Nonlocal)) for node in inside):
        return  # rare, and not worth the care that it would take
    fixed = shared | {node.arg for node in inside if isinstance(node, ast.arg) and node.arg in known}
    names = [name for name in _bound(inside) if name not in fixed]
    _give(inside, names, "", _all_names(inside) - set(names))


def _bound(nodes: Iterable[ast.AST]) -> list[str]:
    """Return the names that nodes bind, each once, in the order in which they turn up."""
    found = []
    for node in nodes:
        if isinstance(node, ast.alias):
            found.append((node.asname or node.name).partition(".")[0])
        elif not isinstance(node, ast.Name) or isinstance(node.ctx, ast.Store):
            found.append(_name(node))
    return [name for name in dict.fromkeys(found) if name]


def _all_names(nodes: Iterable[ast.AST]) -> set[str]:
    return {_name(node) for node in nodes}


def _name(node: ast.AST) -> str:
    return getattr(node, _NAME_OF[type(node)]) or "" if type(node) in _NAME_OF else ""


def _give(nodes: Iterable[ast.AST], names: list[str], before: str, taken: set[str]) -> None:
    """Give nodes of these names the first short ones that are free."""
    letters = string.ascii_letters
    short = itertools.chain(letters, (first + second for first in letters for second in letters))
    free = (before + each for each in short if before + each not in taken and not keyword.iskeyword(each))
    new = dict(zip(names, free))
    for node in nodes:
        if _name(node) in new:
            setattr(node, _NAME_OF[type(node)], new[_name(node)])


# ---------------------------------------------------------------- printing


def _tight(source: str) -> str:
    """Return what `ast.unparse` printed with one space for four at the line's start and none where none is needed."""

    def tighten(found: re.Match[str]) -> str:
        return found["text"] or (found["indent"] or "")[::4]

    return _TEXT_OR_SPACE.sub(tighten, source) + "\n"
