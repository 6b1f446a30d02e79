"""The formula functions of calculators/, their docstrings read apart, and the calls their examples make.

What counts as one: every public function written at module level in a module of calculators/ that is about a
subject of the trade. The modules in MACHINERY are not: they read, convert, solve and show, and hold no formula.
A new module is a subject unless it is added there.
"""

import doctest
import functools
import importlib
import inspect
import pathlib
import re
from collections.abc import Callable
from types import ModuleType
from typing import Any

FOLDER = pathlib.Path(__file__).resolve().parent.parent / "calculators"
MACHINERY = ("__init__", "asking", "reading", "contract", "made", "numerals", "quantities", "ranges", "units")
HEADINGS = ("Parameters", "Returns", "Raises", "Notes", "Source", "Examples")

Formula = Callable[..., Any]


def modules() -> list[ModuleType]:
    """Return the subject modules, in the order of their names."""
    names = sorted(path.stem for path in FOLDER.glob("*.py"))
    return [importlib.import_module("calculators." + name) for name in names if name not in MACHINERY]


def formulas_of(module: ModuleType) -> list[Formula]:
    """Return the public functions that a module itself defines."""
    found = inspect.getmembers(module, inspect.isfunction)
    return [function for name, function in found if function.__module__ == module.__name__ and _is_written(name)]


def _is_written(name: str) -> bool:
    """Return whether a name is a public one of ours; under mutmut each function's changed copies lie beside it."""
    return not name.startswith("_") and "__mutmut" not in name


def all_formulas() -> list[Formula]:
    """Return every formula function."""
    return [function for module in modules() for function in formulas_of(module)]


def name_of(function: Formula) -> str:
    """Return `module.function`."""
    return function.__module__.rpartition(".")[2] + "." + function.__name__


# ---------------------------------------------------------------- docstrings


def sections(function: Formula) -> dict[str, str]:
    """Return heading -> text of a docstring; the text before the first heading is under ""."""
    found = {"": ""}
    heading = ""
    lines = (inspect.getdoc(function) or "").splitlines()
    for number, line in enumerate(lines):
        following = lines[number + 1] if number + 1 < len(lines) else ""
        if line in HEADINGS and re.fullmatch("-{3,}", following):
            heading = line
            found[heading] = ""
        elif not (re.fullmatch("-{3,}", line) and number and lines[number - 1] in HEADINGS):
            found[heading] += line + "\n"
    return found


def described(function: Formula) -> dict[str, str]:
    """Return parameter -> its description, in the order of the docstring."""
    found: dict[str, str] = {}
    name = ""
    for line in sections(function).get("Parameters", "").splitlines():
        start = re.fullmatch(r"(\w+) : .+", line)
        if start:
            name = start.group(1)
            found[name] = ""
        elif name:
            found[name] += line.strip() + " "
    return found


def unit_of(text: str) -> str | None:
    """Return the first unit in square brackets, `` for [-], or None if there is none."""
    units = units_of(text)
    return units[0] if units else None


def units_of(text: str) -> list[str]:
    """Return all units in square brackets."""
    return ["" if unit == "-" else unit for unit in re.findall(r"\[([^\]]+)\]", text)]


def in_pint(unit: str) -> str:
    """Return a unit of a docstring as pint reads it: m3 and m^3 as m**3."""
    return re.sub(r"(?<=[A-Za-z])\^?(\d)", r"**\1", unit)


def is_number(annotation: object) -> bool:
    """Return whether a parameter of this annotation takes a number."""
    return annotation in (float, int) or str(annotation) in ("float | None", "float", "int")


# ---------------------------------------------------------------- examples


@functools.cache
def example_of(function: Formula) -> doctest.DocTest:
    """Return the doctest of a function, ready to run in the names of its module."""
    module = inspect.getmodule(function)
    assert module is not None
    return doctest.DocTestParser().get_doctest(
        inspect.getdoc(function) or "", dict(vars(module)), name_of(function), module.__file__, 0
    )


@functools.cache
def calls_of(function: Formula) -> tuple[dict[str, Any], ...]:
    """Return the arguments of each call of the function in its own examples that returned something."""
    seen: list[dict[str, Any]] = []
    signature = inspect.signature(function)

    @functools.wraps(function)
    def recorded(*arguments: Any, **named: Any) -> Any:
        result = function(*arguments, **named)
        bound = signature.bind(*arguments, **named)
        bound.apply_defaults()
        seen.append(dict(bound.arguments))
        return result

    example = example_of(function)
    names = dict(example.globs)
    names[function.__name__] = recorded
    copy = doctest.DocTest(example.examples, names, example.name, example.filename, 0, None)
    doctest.DocTestRunner(verbose=False).run(copy, out=lambda text: None)
    return tuple(seen)
