"""Every unit against pint and against the definitions the units stand on."""

import ast
import functools
import inspect
from fractions import Fraction

import pint
import pytest
from hypothesis import given
from hypothesis import strategies as st

from calculators import made, numerals, quantities, units
from calculators.facts import units as facts
from calculators.facts.units import SIGNS, SPELLINGS, UNITS
from webapp import api, shelf
from webapp.catalogue import Context
from webapp.json_text import Pairs

pytestmark = pytest.mark.quick

NAMES = tuple(name for name, _ in UNITS)

# A registry of floats of its own: the factors were made by one of decimals.
registry: pint.UnitRegistry[float] = pint.UnitRegistry()


@functools.cache
def _in_pint(unit: str) -> str:
    return dict(UNITS)[unit]


# ---------------------------------------------------------------- factors


@pytest.mark.parametrize("unit", NAMES)
def test_factor_and_offset_are_pint_s(unit):
    one = registry.Quantity(1.0, _in_pint(unit)).to_base_units().magnitude
    zero = registry.Quantity(0.0, _in_pint(unit)).to_base_units().magnitude
    assert units.factor_of(unit) == pytest.approx(one - zero, rel=1e-15 if zero == 0.0 else 1e-12)
    assert units.to_coherent(0.0, unit) == pytest.approx(zero, rel=1e-15)


# Exact by definition. The yard and pound: international agreement of 1959, 0.9144 m and 0.45359237 kg. Standard
# gravity 9.80665 m/s2: 3rd CGPM, 1901. Litre: 12th CGPM, 1964. Standing: standard, from memory.
_INCH = Fraction("0.9144") / 36
_POUND = Fraction("0.45359237")
EXACT = (
    ("in", _INCH),
    ("ft", _INCH * 12),
    ("in/min", _INCH / 60),
    ("m/min", Fraction(1, 60)),
    ("L", Fraction(1, 1000)),
    ("L/min", Fraction(1, 60000)),
    ("ft3", (_INCH * 12) ** 3),
    ("ft3/h", (_INCH * 12) ** 3 / 3600),
    ("L/h", Fraction(1, 3600000)),
    ("ft3/min", (_INCH * 12) ** 3 / 60),
    ("m3/h", Fraction(1, 3600)),
    ("mg/m3", Fraction(1, 1000000)),
    ("ppm", Fraction(1, 1000000)),
    ("dB", Fraction(1)),
    ("lb", _POUND),
    ("lb/ft2", _POUND / (_INCH * 12) ** 2),
    ("psi", _POUND * Fraction("9.80665") / _INCH**2),
    ("bar", Fraction(100000)),
    ("kJ/in", 1000 / _INCH),
    ("kJ/mm", Fraction(1000000)),
    ("J/mm", Fraction(1000)),
    ("kVA", Fraction(1000)),
    ("min", Fraction(60)),
    ("h", Fraction(3600)),
    ("%", Fraction(1, 100)),
    ("degF", Fraction(5, 9)),
    ("ksi", 1000 * _POUND * Fraction("9.80665") / _INCH**2),
    ("kip/in", 1000 * _POUND * Fraction("9.80665") / _INCH),
    ("lb/in", _POUND * Fraction("9.80665") / _INCH),
    ("kN/mm", Fraction(1000000)),
    ("MPa", Fraction(1000000)),
    ("mph", _INCH * 63360 / 3600),
    ("km/h", Fraction(1000, 3600)),
)


@pytest.mark.parametrize(("unit", "exact"), EXACT)
def test_factor_is_the_definition_s(unit, exact):
    assert units.factor_of(unit) == float(exact)


# Water freezes at 32 degF and 0 degC and boils at 212 degF and 100 degC (old definitions); the two scales meet
# at -40; absolute zero is -459.67 degF and -273.15 degC. Standing: common practice.
@pytest.mark.parametrize(
    ("fahrenheit", "celsius", "kelvin"),
    ((32.0, 0.0, 273.15), (212.0, 100.0, 373.15), (-40.0, -40.0, 233.15), (-459.67, -273.15, 0.0)),
)
def test_temperatures_have_their_offsets(fahrenheit, celsius, kelvin):
    assert units.to_coherent(fahrenheit, "degF") == pytest.approx(kelvin, abs=1e-9)
    assert units.to_coherent(celsius, "degC") == pytest.approx(kelvin, abs=1e-9)
    assert units.from_coherent(kelvin, "degF") == pytest.approx(fahrenheit, abs=1e-9)


@given(st.sampled_from(NAMES), st.floats(1e-6, 1e6) | st.floats(-1e6, -1e-6))
def test_there_and_back_is_the_same_number(unit, value):
    coherent = units.to_coherent(value, unit)
    assert units.from_coherent(coherent, unit) == pytest.approx(value, rel=1e-14, abs=1e-12)
    assert units.to_coherent(units.from_coherent(coherent, unit), unit) == pytest.approx(coherent, rel=1e-14)


def test_every_unit_is_there_once():
    assert [name for name, _, _ in made.FACTORS] == list(NAMES)
    assert len(set(NAMES)) == len(NAMES)


# ---------------------------------------------------------------- names

# The units of the JSON API, exactly as spelled: other programs depend on them.
PROMISED = (
    *("mm", "in", "in/min", "m/min", "mm/s", "L/min", "ft3/h", "J/mm", "kJ/in", "kJ/mm", "psi", "bar"),
    *("degF", "degC", "A", "V", "kVA", "lb", "kg", "min", "h"),
)


@pytest.mark.parametrize("unit", PROMISED)
def test_promised_unit_is_there_as_spelled(unit):
    assert unit in NAMES
    assert units.named(unit) == unit


@pytest.mark.parametrize("unit", NAMES)
def test_unit_is_read_as_written_and_as_shown(unit):
    if unit:
        assert units.named(unit) == unit
        assert units.named(units.sign(unit)) == unit
        assert numerals.split_unit("5 " + units.sign(unit)) == ("5", units.sign(unit))


@pytest.mark.parametrize(
    ("unit", "shown"), (("degF", "°F"), ("degC", "°C"), ("m3", "m³"), ("mm", "mm"), ("psi", "psi"))
)
def test_unit_is_shown_as_readers_expect_it(unit, shown):
    assert units.sign(unit) == shown


@pytest.mark.parametrize("unit", NAMES)
def test_unit_is_read_in_capitals(unit):
    assert units.named(unit.upper()) == unit


@pytest.mark.parametrize("spelling", sorted(SPELLINGS))
def test_spelling_means_a_unit_and_can_be_typed(spelling):
    assert SPELLINGS[spelling] in NAMES
    assert spelling not in NAMES, "the exact name is looked up first: this spelling is never used"
    # lower() of the phone's Python knows ASCII only
    assert spelling == "".join(chr(ord(c) + 32) if "A" <= c <= "Z" else c for c in spelling)
    for typed in ("12.5" + spelling, "12.5 " + spelling, "1/2 " + spelling):
        assert units.named(numerals.split_unit(typed)[1]) == SPELLINGS[spelling]


def test_no_spelling_is_listed_twice():
    for node in ast.walk(ast.parse(inspect.getsource(facts))):
        if isinstance(node, ast.Dict):
            keys = [key.value for key in node.keys if isinstance(key, ast.Constant)]
            assert len(set(keys)) == len(keys)


def test_signs_belong_to_units():
    assert set(SIGNS) <= set(NAMES)
    assert len(set(SIGNS.values())) == len(SIGNS)


@pytest.mark.parametrize("text", ("furlong", "°°", "cm2", "mmm", "degK", "1", " ", "°F/min"))
def test_unknown_unit_is_unknown(text):
    assert units.named(text) is None


# ---------------------------------------------------------------- quantities

# What the last word of a quantity's name (or the whole name) says it is. A name that ends in a new word fails
# until the word is added here with its dimension.
KINDS = {
    "voltage": "volt",
    "current": "ampere",
    "power": "watt",
    "speed": "meter/second",
    "length": "meter",
    "diameter": "meter",
    "width": "meter",
    "depth": "meter",
    "thickness": "meter",
    "leg": "meter",
    "size": "meter",
    "shrinkage": "meter",
    "throat": "meter",
    "gap": "meter",
    "angle": "dimensionless",
    "force_per_length": "newton/meter",
    "strength": "pascal",
    "contact_tip_to_work": "meter",
    "electrode_extension": "meter",
    "time": "second",
    "efficiency": "dimensionless",
    "gauge": "dimensionless",
    "mark": "dimensionless",
    "ratio": "dimensionless",
    "percentage": "dimensionless",
    "fraction": "dimensionless",
    "trim": "dimensionless",
    "count": "dimensionless",
    "factor": "dimensionless",
    "area": "meter**2",
    "equivalent": "dimensionless",
    "energy": "joule",
    "heat_input": "joule/meter",
    "heat_input_limit": "joule/meter",
    "arc_energy": "joule/meter",
    "mass_per_area": "kilogram/meter**2",
    "mass_per_length": "kilogram/meter",
    "density": "kilogram/meter**3",
    "flow": "meter**3/second",
    "volume": "meter**3",
    "hydrogen": "meter**3/kilogram",
    "pressure": "pascal",
    "temperature": "kelvin",
    "mass": "kilogram",
    "rate": "kilogram/second",
    "drop": "volt",
    "resistance": "ohm",
    "cycle": "dimensionless",
    "altitude": "meter",
    "bore": "meter",
    "shade": "dimensionless",
    "inflow": "meter**3/second",
    "share": "dimensionless",
    "level": "dimensionless",
    "concentration": "kilogram/meter**3",
    "distance": "meter",
    "leak_rate": "meter**3/second",
    "price": "dimensionless",
    "cost": "dimensionless",
    "money": "dimensionless",
    "wire_price": "1/kilogram",
    "cost_per_mass": "1/kilogram",
    "labor_rate": "1/second",
    "distance_price": "1/meter",
    "energy_price": "1/joule",
    "cost_per_length": "1/meter",
}
QUANTITIES = quantities._ALL


def _kind(name: str) -> str | None:
    return KINDS.get(name) or KINDS.get(name.rsplit("_", 1)[-1])


@pytest.mark.parametrize("quantity", QUANTITIES, ids=lambda each: each.name)
def test_units_of_a_quantity_have_its_dimension(quantity):
    kind = _kind(quantity.name)
    assert kind is not None, f"say in KINDS what dimension {quantity.name} has"
    wanted = registry.Unit(kind).dimensionality
    for unit in quantity.units:
        assert registry.Unit(_in_pint(unit)).dimensionality == wanted, unit


@pytest.mark.parametrize("quantity", QUANTITIES, ids=lambda each: each.name)
def test_default_units_are_offered_once_and_range_is_a_range(quantity):
    assert quantity.si in quantity.units
    assert quantity.us in quantity.units
    assert len(set(quantity.units)) == len(quantity.units)
    assert quantity.low < quantity.high
    assert all(unit in quantity.units for unit, _ in quantity.places)
    assert quantities.quantity(quantity.name) is quantity


def test_quantities_are_told_apart_by_name():
    assert len({each.name for each in QUANTITIES}) == len(QUANTITIES)


def test_api_offers_only_units_that_there_are():
    listing = api.listing(Context("en", "si", ""))
    offered = set(_all_units(listing))
    assert offered <= set(NAMES)
    assert offered or not shelf.names()


def _all_units(value: object) -> list[str]:
    if isinstance(value, Pairs):
        found: list[str] = []
        for name, member in value.members:
            if name == "units":
                assert isinstance(member, list)
                found += member
            else:
                found += _all_units(member)
        return found
    if isinstance(value, list):
        return [unit for each in value for unit in _all_units(each)]
    return []
