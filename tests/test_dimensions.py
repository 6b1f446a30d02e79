"""No formula mixes units: each is called with pint quantities, and each question is asked in every unit.

A formula function is taken as homogeneous unless it is listed in EMPIRICAL, so that a new one that hides a unit
fails here until somebody says why it may. What the empirical ones answer must not depend on the unit typed; that
is asked of every calculator.
"""

import inspect
from collections.abc import Iterator
from typing import Any

import pint
import pytest

from calculators import asking, ranges, units
from calculators.contract import Answer, Calculator, Given, Number, Quantity, Rows
from calculators.facts.units import UNITS
from calculators.quantities import quantity
from tests import formulas, walking
from tests.formulas import Formula, described, name_of
from webapp import shelf

REAL_GAS = "reads a table of the real gas, spaced in kelvin and pascal"
GAUGE = "a gauge number has no unit and stands for a thickness"
WIRE = "reads a table of wires, in SI inside"
SHOP_RULE = "a rule of the trade fitted in one unit"
CODE_SIZES = "sizes that a code lays down in inches or millimetres"
COOLING = "its constants are fitted in kJ/mm, mm and degrees Celsius, in SI inside"
FITTED = "fitted in degC, %, mm, mL/100 g and kJ/mm"
PIPE = "a nominal pipe size and a schedule are names"
LAW_TABLE = "reads a table of the law, in SI inside"
MATERIAL = "reads a property of a material, in SI, by its name"
EMPIRICAL = {
    "visual_limits.most_bulge": CODE_SIZES,
    "visual_limits.most_cap": CODE_SIZES,
    "visual_limits.most_missing_leg": CODE_SIZES,
    "visual_limits.most_undercut": CODE_SIZES,
    "cooling.cooling_time": COOLING,
    "cooling.is_thin": "compares settled numbers, to decide",
    "cooling.thick_plate_time": COOLING,
    "cooling.thin_plate_time": COOLING,
    "cooling.transition_thickness": COOLING,
    "cooling_wanted.heat_input_for": COOLING,
    "cooling_wanted.preheat_for": COOLING,
    "cooling_wanted.thickness_for": COOLING,
    "crack_excavation.hold_time": SHOP_RULE,
    "cylinder_contents.gas_volume_in_cylinder": REAL_GAS,
    "cylinder_contents.pressure_for_gas_volume": REAL_GAS,
    "fillet_legs.gap_taken_from_leg": CODE_SIZES,
    "fillet_legs.largest_leg_along_edge": CODE_SIZES,
    "fillet_legs.least_leg": CODE_SIZES,
    "fillet_legs.shortest_length_eurocode": CODE_SIZES,
    "distortion.fillet_coefficient": SHOP_RULE,
    "distortion.fillet_shrinkage": SHOP_RULE,
    "gas_density.compressibility": REAL_GAS,
    "gas_density.density": REAL_GAS,
    "gas_density.mean_molar_mass": MATERIAL,
    "gas_density.pressure_for_density": REAL_GAS,
    "gas_density.reference_density": REAL_GAS,
    "gas_mixture.mixture_density": MATERIAL,
    "gas_mixture.mixture_viscosity": MATERIAL,
    "gauge_tables.gauges_within_tolerance": GAUGE,
    "gauge_tables.mass_per_area_of_gauge": GAUGE,
    "gauge_tables.mill_tolerance": GAUGE,
    "gauge_tables.nearest_fraction": "names 64ths of an inch",
    "gauge_tables.nearest_gauges": GAUGE,
    "gauge_tables.second_stainless_thickness": GAUGE,
    "gauge_tables.thickness_of_gauge": GAUGE,
    "liquid_carbon_dioxide.mass_when_liquid_is_gone": REAL_GAS,
    "liquid_carbon_dioxide.vapour_pressure": REAL_GAS,
    "melting_tables.burn_off_feed": SHOP_RULE,
    "melting_tables.coefficients": WIRE,
    "melting_tables.current_for_thickness": SHOP_RULE,
    "melting_tables.current_limits": WIRE,
    "metal_evidence.density_points": MATERIAL,
    "metal_evidence.ranking": "counts points for families of metals",
    "preheat_methods.cet_method_parts": FITTED,
    "preheat_methods.code_minimum": "reads a table of a code, in SI, by the name of its row",
    "preheat_methods.preheat_by_cet": FITTED,
    "preheat_methods.seferian_carbon": FITTED,
    "preheat_methods.seferian_preheat": FITTED,
    "nozzle_flow.most_flow": SHOP_RULE,
    "nozzle_flow.usual_flow": SHOP_RULE,
    "part_mass.metal_density": MATERIAL,
    "pipe_sizes.pipe_outside_diameter": PIPE,
    "pipe_sizes.pipe_wall": PIPE,
    "starting_current.nearest_wire": WIRE,
    "starting_current.wanted_current": SHOP_RULE,
    "transfer_limits.borders_at": WIRE,
    "transfer_limits.fit": SHOP_RULE,
    "transfer_limits.mode_at": WIRE,
    "transfer_limits.short_circuit_currents": WIRE,
    "transfer_limits.sprays": "compares shares of a gas with a limit, to decide",
    "transfer_limits.transition_current": WIRE,
    "process_limits.rod_current": "reads a table of rods, in SI inside",
    "process_limits.rod_diameter": "reads a table of rods, in SI inside",
    "process_limits.wind_state": "compares with a limit, to decide",
    "usable_gas.charge_left_when_gauge_falls": REAL_GAS,
    "usable_gas.pressure_to_start": REAL_GAS,
    "usable_gas.usable_gas_volume": REAL_GAS,
    "usable_gas.water_volume_needed": REAL_GAS,
    "voltage_lines.at_diameter": WIRE,
    "voltage_lines.load_voltage": "a standard's line fitted in volts and amperes",
    "voltage_lines.usual_voltage": "lines fitted in volts and amperes",
    "wire_mass.density": MATERIAL,
    "conductors.area_of_resistance": MATERIAL,
    "conductors.awg_area": GAUGE,
    "conductors.copper_resistivity": MATERIAL,
    "conductors.steady_current": "a fit of a table of cables, in SI inside",
    "noise_dose.dose_share": "a law's formula over a day of 8 h",
    "noise_dose.full_dose_time": "a law's formula over a day of 8 h",
    "shade_bands.arc_shade": LAW_TABLE,
    "shade_bands.plate_shade": LAW_TABLE,
    "shade_bands.rod_shade": LAW_TABLE,
    "supply_power.current_of_power": "a line of volts over amperes",
    "supply_power.derating": SHOP_RULE,
}

registry: pint.UnitRegistry[float] = pint.UnitRegistry()


# ---------------------------------------------------------------- pint in place of floats


def _magnitude(value: Any, unit: str) -> float:
    """Stand in for ranges.magnitude: a number that should have a unit and has none is refused."""
    if isinstance(value, registry.Quantity):
        return float(value.to(formulas.in_pint(unit)).magnitude)
    if unit and value != 0.0:
        raise TypeError(f"{value} is checked in {unit} and has no unit")
    return float(value)


def _call_with_units(function: Formula, arguments: dict[str, Any]) -> Any:
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(ranges, "magnitude", _magnitude)
        return function(**arguments)


def _coherent_unit(name: str) -> str:
    """Return the coherent SI unit of a quantity of the vocabulary, as pint names it."""
    return str(registry.Quantity(1.0, dict(UNITS)[quantity(name).si]).to_base_units().units)


def _quantity(value: Any, unit: str | None) -> Any:
    if not unit or isinstance(value, bool) or not isinstance(value, (float, int)):
        return value
    return registry.Quantity(float(value), formulas.in_pint(unit))


def homogeneity_faults(function: Formula) -> list[str]:
    """Return what is wrong when the function's own examples are worked with quantities instead of floats."""
    if list(inspect.signature(function).parameters) == ["unknown", "values"]:
        return [fault for call in formulas.calls_of(function) for fault in _relation_faults(function, call)]
    faults = []
    for call in formulas.calls_of(function):
        for choice in _alternatives(function):
            faults += _call_faults(function, call, choice)
    return faults


def _alternatives(function: Formula) -> Iterator[int]:
    """Return 0, and further numbers where the docstring gives alternatives such as [kg or m]."""
    told = " ".join(described(function).values())
    return iter(range(max([len(unit.split(" or ")) for unit in formulas.units_of(told)] + [1])))


def _chosen(unit: str | None, choice: int) -> str | None:
    alternatives = (unit or "").split(" or ")
    return alternatives[min(choice, len(alternatives) - 1)]


def _call_faults(function: Formula, call: dict[str, Any], choice: int) -> list[str]:
    told = described(function)
    arguments = {name: _quantity(value, _chosen(formulas.unit_of(told[name]), choice)) for name, value in call.items()}
    returned = formulas.sections(function)["Returns"]
    lines = [line for line in returned.splitlines() if line.startswith(" ")]
    wanted = [_chosen(unit, choice) or "" for unit in formulas.units_of("\n".join(lines))]
    return _result_faults(function, call, arguments, wanted)


def _relation_faults(function: Formula, call: dict[str, Any]) -> list[str]:
    """Turn the example round: each name in turn is the unknown."""
    whole = {**call["values"], call["unknown"]: function(**call)}
    faults = []
    for unknown in whole:
        others = {name: value for name, value in whole.items() if name != unknown}
        typed = {name: _quantity(value, _coherent_unit(name)) for name, value in others.items()}
        unit = _coherent_unit(unknown)
        wanted = ["" if unit == "dimensionless" else unit]
        plain: dict[str, Any] = {"unknown": unknown, "values": others}
        faults += _result_faults(function, plain, {"unknown": unknown, "values": typed}, wanted)
    return faults


def _result_faults(function: Formula, plain: dict[str, Any], typed: dict[str, Any], wanted: list[str]) -> list[str]:
    expected = function(**plain)
    try:
        result = _call_with_units(function, typed)
    except (pint.DimensionalityError, TypeError, AttributeError, ValueError) as error:
        return [f"{type(error).__name__}: {error}"]
    results = result if isinstance(result, tuple) else (result,)
    numbers = [each for each in results if not isinstance(each, str) and each is not None]
    if len(wanted) == 1:
        wanted = wanted * len(numbers)
    if len(numbers) != len(wanted):
        return [f"returns {len(numbers)} numbers and states the units {wanted}"]
    plain_numbers = [
        each for each in (expected if isinstance(expected, tuple) else (expected,)) if not isinstance(each, str)
    ]
    faults = []
    for number, unit, value in zip(numbers, wanted, plain_numbers, strict=True):
        faults += _number_faults(number, unit, value)
    return faults


def _number_faults(number: Any, unit: str, value: float) -> list[str]:
    measured = number if isinstance(number, registry.Quantity) else registry.Quantity(number, "dimensionless")
    stated = registry.Unit(formulas.in_pint(unit) or "dimensionless")
    if measured.dimensionality != stated.dimensionality:
        return [f"returns {measured.units:~} and states [{unit}]"]
    if measured.to(stated).magnitude != pytest.approx(value, rel=1e-12):
        return [f"returns {measured} with units and {value} without"]
    return []


FORMULAS = formulas.all_formulas()


@pytest.mark.quick
@pytest.mark.parametrize("function", [each for each in FORMULAS if name_of(each) not in EMPIRICAL], ids=name_of)
def test_formula_is_homogeneous(function):
    assert homogeneity_faults(function) == []


@pytest.mark.quick
@pytest.mark.parametrize("name", sorted(EMPIRICAL))
def test_empirical_formula_is_there_and_needs_its_place(name):
    """One that would pass as homogeneous has no business in the list."""
    assert EMPIRICAL[name]
    function = {name_of(each): each for each in FORMULAS}.get(name)
    assert function is not None, "listed, and gone"
    assert homogeneity_faults(function) != []


# ---------------------------------------------------------------- the same question in every unit


def _asked_in(asked: Calculator, pairs: walking.Pairs, box: str, unit: str, coherent: float) -> asking.Reply:
    text = walking.text_of(units.from_coherent(coherent, unit), unit)
    return asking.ask(
        asked, [(name, typed) for name, typed in pairs if name not in (box, box + "_unit")] + [(box, text)]
    )


def _numbers(came: asking.Reply) -> dict[str, float]:
    assert came.state == "answer", came.errors or came.waiting
    assert came.answer is not None
    return {each.name: each.value for each in came.answer.results if isinstance(each, Number)}


def _typed_numbers(asked: Calculator, given: Given) -> Iterator[tuple[str, Quantity, float]]:
    """Return (name in an address, field, value) of each number typed, rows included."""
    for field in asked.fields:
        if isinstance(field, Rows):
            for row, values in enumerate(given.rows(field.name), 1):
                for each in field.fields:
                    value = values.values.get(each.name)
                    if isinstance(each, Quantity) and isinstance(value, (float, int)):
                        yield f"{field.name}-{row}-{each.name}", each, value
        elif isinstance(field, Quantity) and field.name in given.typed:
            value = given.values[field.name]
            if isinstance(value, (float, int)):
                yield field.name, field, value


def unit_faults(asked: Calculator, pairs: walking.Pairs, came: asking.Reply) -> list[str]:
    """Return each box and unit that changes a number of the answer when the same amount is typed in it."""
    expected = _numbers(came)
    faults = []
    for box, field, value in _typed_numbers(asked, came.given):
        for unit in field.quantity.units:
            again = _numbers(_asked_in(asked, pairs, box, unit, value))
            for name in expected:
                if again.get(name) != pytest.approx(expected[name], rel=1e-9, abs=1e-12):
                    faults.append(f"{box} in {unit or 'no unit'}: {name} is {again.get(name)}, not {expected[name]}")
    return faults


@pytest.mark.parametrize("name", shelf.names())
def test_same_amounts_in_other_units_get_the_same_answer(name):
    asked = walking.calculator(name)
    for pairs, came in walking.answered(name):
        assert unit_faults(asked, pairs, came) == [], pairs


@pytest.mark.parametrize("name", shelf.names())
def test_walk_types_every_number_in_every_unit(name):
    """The walk above would prove nothing about a box it never fills in."""
    asked = walking.calculator(name)
    filled = {box for _, came in walking.answered(name) for box, _, _ in _typed_numbers(asked, came.given)}
    boxes = {box for box, field in walking.boxes(asked) if isinstance(field, Quantity) and "-" not in box}
    assert boxes - filled == set()


# ---------------------------------------------------------------- both walks can fail


def _planted(body: str) -> Formula:
    source = f'''
def planted(length: float, time: float) -> float:
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

    Examples
    --------
    >>> speed = planted(1.0, 2.0)
    """
    {body}
'''
    names: dict[str, Any] = {"ranges": ranges, "__name__": __name__}
    exec(source, names)
    function: Formula = names["planted"]
    return function


@pytest.mark.quick
def test_good_formula_has_no_fault():
    body = 'ranges.require("length", length, 0.0, 10.0, "m"); return (length * length) ** 0.5 / time'
    assert homogeneity_faults(_planted(body)) == []


@pytest.mark.quick
@pytest.mark.parametrize(
    ("body", "said"),
    (
        ("return length + time", "DimensionalityError"),
        ("return length / 25.4 + 1.0", "DimensionalityError"),
        ("return length * time", "states"),
        ("return length / 1.0", "states"),
        ("return 0.5", "states"),
        ("return length / time if length > 1.0 else time", "compare"),
        ('ranges.require("length", length, 0.0, 10.0, "s"); return length / time', "DimensionalityError"),
        ('ranges.require("length", 3.0, 0.0, 10.0, "m"); return length / time', "has no unit"),
    ),
)
def test_formula_that_mixes_units_is_found(body, said):
    assert any(said in fault for fault in homogeneity_faults(_planted(body)))


def _mixing(given: Given) -> Answer:
    # Whether the millimetre is the unit typed decides: what a formula that reads the typed number would do.
    return Answer(
        results=(Number("thickness", given.number("thickness") * (1.0 if given.units["thickness"] == "mm" else 2.0)),)
    )


@pytest.mark.quick
def test_answer_that_depends_on_the_unit_is_found():
    mixing = Calculator("mixing", (Quantity("thickness"),), _mixing, {}, (), 0)
    pairs = [("thickness", "3 mm")]
    faults = unit_faults(mixing, pairs, asking.ask(mixing, pairs))
    assert len(faults) == 1 and faults[0].startswith("thickness in in:")
