"""Every formula function says what it takes, gives, refuses and stands on, shows it, and means it.

What counts as a formula function is written at the top of formulas.py.
"""

import doctest
import inspect
import math
import re
import subprocess
import sys
import types

import pint
import pytest

from calculators import ranges
from tests import formulas
from tests.formulas import Formula, described, name_of, sections, unit_of

FORMULAS = formulas.all_formulas()
every_formula = pytest.mark.parametrize("function", FORMULAS, ids=name_of)

registry: pint.UnitRegistry[float] = pint.UnitRegistry()

# Parameters without a range of their own, with the reason.
UNCHECKED = {
    ("interpolation.four_points", "position"): "inner step: the tables' own functions have refused already",
    ("interpolation.four_points", "rows"): "inner step: the length of a table, not input",
    ("wire_mass.usable", "amount"): "a mass or a length: its field has refused already, and no one range fits both",
    ("wire_mass.needed", "amount"): "a mass or a length: its field has refused already, and no one range fits both",
}


def faults(function: Formula) -> list[str]:
    """Return what the docstring of a formula function lacks."""
    found = sections(function)
    return _missing_sections(found) + _parameter_faults(function) + _return_faults(function, found)


def _missing_sections(found: dict[str, str]) -> list[str]:
    faults = []
    first = found[""].partition("\n")[0]
    if not first.startswith("Return ") or not re.search(r"[.:,]|=", first):
        faults.append("the first line does not say what it returns")
    for heading in ("Returns", "Raises", "Source", "Examples"):
        if not found.get(heading, "").strip():
            faults.append(f"no {heading}")
    if ">>> " not in found.get("Examples", ""):
        faults.append("no example that runs")
    return faults


def _parameter_faults(function: Formula) -> list[str]:
    faults = []
    signature = inspect.signature(function).parameters
    told = described(function)
    if list(told) != list(signature):
        faults.append(f"Parameters name {list(told)}, the signature {list(signature)}")
    for name, text in told.items():
        if name not in signature:
            continue
        if signature[name].annotation is inspect.Parameter.empty:
            faults.append(f"{name} has no annotation")
        if not text.strip():
            faults.append(f"{name} is not described")
        if formulas.is_number(signature[name].annotation):
            faults += _number_faults(name_of(function), name, text)
    return faults


def _number_faults(function: str, name: str, text: str) -> list[str]:
    unit = unit_of(text)
    if unit is None:
        return [f"{name} has no unit in [ ]"]
    faults = [] if _is_a_unit(unit) else [f"{name} is in [{unit}], which is no unit"]
    after = text.partition("]")[2]
    if not re.search(r"\d|above|as ``?\w|within| to ", after) and (function, name) not in UNCHECKED:
        faults.append(f"{name} has no range after its unit")
    return faults


def _return_faults(function: Formula, found: dict[str, str]) -> list[str]:
    returned = inspect.signature(function).return_annotation
    if returned is inspect.Signature.empty:
        return ["the return has no annotation"]
    told = "".join(line for line in found.get("Returns", "").splitlines(keepends=True) if line.startswith(" "))
    units = formulas.units_of(told)
    if _solves_a_relation(function):
        return [] if "coherent SI" in told else ["Returns does not say that the unknown is in coherent SI"]
    if "float" in str(returned) and not units:
        return ["Returns has no unit in [ ]"]
    return [f"Returns names [{unit}], which is no unit" for unit in units if not _is_a_unit(unit)]


def _solves_a_relation(function: Formula) -> bool:
    """Return whether it takes (unknown, values): what it returns depends on which is the unknown."""
    return list(inspect.signature(function).parameters) == ["unknown", "values"]


def _is_a_unit(text: str) -> bool:
    try:
        for unit in text.split(" or "):
            registry.Unit(formulas.in_pint(unit))
    except (pint.errors.UndefinedUnitError, pint.errors.DefinitionSyntaxError, ValueError):
        return False
    return True


@pytest.mark.quick
@every_formula
def test_docstring_is_whole(function):
    assert faults(function) == []


@pytest.mark.quick
@every_formula
def test_examples_run_and_are_right(function):
    example = formulas.example_of(function)
    assert example.examples
    said: list[str] = []
    result = doctest.DocTestRunner(verbose=False).run(example, out=said.append, clear_globs=False)
    assert result.attempted > 0
    assert result.failed == 0, "".join(said)


@pytest.mark.quick
@every_formula
def test_examples_call_the_function(function):
    assert formulas.calls_of(function), "no example calls it and gets something back"


def test_pytest_runs_the_examples_too():
    command = [sys.executable, "-m", "pytest", "--collect-only", "-q", "calculators"]
    listed = subprocess.run(command, cwd=formulas.FOLDER.parent, capture_output=True, text=True, check=False).stdout
    missing = [name_of(each) for each in FORMULAS if f"::calculators.{name_of(each)}\n" not in listed]
    assert missing == [], listed[-500:]


# ---------------------------------------------------------------- what is stated is enforced


def _numbers(function: Formula) -> list[str]:
    parameters = inspect.signature(function).parameters
    return [name for name in parameters if parameters[name].annotation in (float, int)]


def _refusal(function: Formula, **changed: float) -> ValueError | None:
    """Return what the function refuses with when its first example is changed, or None if it answers."""
    arguments = dict(formulas.calls_of(function)[0])
    arguments.update(changed)
    try:
        function(**arguments)
    except ValueError as error:
        return error
    return None


@pytest.mark.quick
@every_formula
def test_not_a_number_and_endless_are_refused(function):
    for name in _numbers(function):
        if (name_of(function), name) in UNCHECKED:
            continue
        for value in (math.nan, math.inf, -math.inf):
            refused = _refusal(function, **{name: value})
            assert refused is not None, f"{name} = {value} gets an answer"
            assert blame_faults(refused, name, described(function)[name]) == [], f"{name} = {value}"


def blame_faults(refused: ValueError, name: str, text: str) -> list[str]:
    """Return how a refusal of one parameter differs from its docstring: the parameter it blames, the unit it names."""
    if not isinstance(refused, ranges.OutOfRange):
        return []
    faults = [] if refused.name == name else [f"blames {refused.name}: {refused}"]
    if refused.unit != unit_of(text):
        faults.append(f"is in [{refused.unit}], the docstring has [{unit_of(text)}]")
    return faults


def _stated_range(text: str) -> tuple[float, float] | None:
    """Return the range right after the unit, where it is two plain numbers in that unit."""
    number = r"(-?\d+(?:\.\d+)?(?:e-?\d+)?)"
    found = re.search(r"\]; (?:a whole number from )?" + number + " to " + number + r"(?=[.,;]? *$|[.,;(] | \()", text)
    return (float(found.group(1)), float(found.group(2))) if found else None


def _beyond(end: float, sign: float, whole: bool) -> float:
    """Return what lies barely outside an end: a limit that is 1 too high shows even where it is thirty million."""
    return end + sign * (1.0 if whole else abs(end) * 2e-8 or 1e-9)


@pytest.mark.quick
@every_formula
def test_stated_range_is_the_enforced_one(function):
    parameters = inspect.signature(function).parameters
    for name, text in described(function).items():
        stated = _stated_range(text)
        if stated is None or (name_of(function), name) in UNCHECKED or name not in _numbers(function):
            continue
        whole = parameters[name].annotation is int
        for outside in (_beyond(stated[0], -1.0, whole), _beyond(stated[1], 1.0, whole)):
            refused = _refusal(function, **{name: outside})
            assert refused is not None, f"{name} is stated as {stated} and {outside} gets an answer"
            assert blame_faults(refused, name, text) == [], f"{name} = {outside}"
        for end in stated:
            refused = _refusal(function, **{name: end})
            blamed = refused.name if isinstance(refused, ranges.OutOfRange) else None
            assert blamed != name, f"{name} is stated as {stated} and {end} is refused: {refused}"


# ---------------------------------------------------------------- the walk can fail

GOOD = '''
def speed(length: float, time: float) -> float:
    """Return how fast it goes.

    Parameters
    ----------
    length : float
        How far, [m]; 0 to 10.
    time : float
        How long, [s]; 1 to 10.

    Returns
    -------
    float
        Speed, [m/s].

    Raises
    ------
    ValueError
        If an input is outside its range.

    Source
    ------
    Definition of speed.

    Examples
    --------
    >>> speed(1.0, 2.0)
    0.5
    """
    return length / time
'''


def _made(source: str) -> Formula:
    module = types.ModuleType("calculators.planted")
    exec(compile(source, "planted.py", "exec"), vars(module))
    return module.speed


@pytest.mark.quick
def test_whole_docstring_has_no_fault():
    assert faults(_made(GOOD)) == []


@pytest.mark.quick
@pytest.mark.parametrize(
    ("whole", "broken", "said"),
    (
        ("How far, [m]", "How far", "length has no unit"),
        ("How far, [m]", "How far, [furlungs]", "no unit"),
        ("How far, [m]; 0 to 10.", "How far, [m].", "length has no range"),
        ("    time : float\n        How long, [s]; 1 to 10.\n", "", "the signature"),
        ("    time : float", "    duration : float", "the signature"),
        ("Speed, [m/s].", "Speed.", "Returns has no unit"),
        ("    Raises\n    ------\n", "", "no Raises"),
        ("    Definition of speed.\n", "", "no Source"),
        (">>> speed(1.0, 2.0)", "speed(1.0, 2.0)", "no example"),
        ("Return how fast it goes.", "Speed", "first line"),
    ),
)
def test_broken_docstring_is_found(whole, broken, said):
    assert whole in GOOD
    assert any(said in fault for fault in faults(_made(GOOD.replace(whole, broken))))


@pytest.mark.quick
@pytest.mark.parametrize(
    ("name", "unit", "said"),
    (
        ("length", "m", []),
        ("width", "m", ["blames width"]),
        ("length", "s", ["is in [s]"]),
        ("length", "", ["is in []"]),
    ),
)
def test_wrong_name_or_unit_in_a_refusal_is_found(name, unit, said):
    found = blame_faults(ranges.OutOfRange(name, 11.0, 0.0, 10.0, unit), "length", "How far, [m]; 0 to 10.")
    assert [fault.partition(":")[0].partition(",")[0] for fault in found] == said
