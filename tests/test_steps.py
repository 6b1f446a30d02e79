"""One step less or more: what a tap is worth for each quantity, and what the page's script is told of it."""

import pytest

from calculators import numerals, quantities, reading, units
from calculators.contract import Field, Quantity, Rows
from tests import walking
from tests.html_reading import Page
from webapp import shelf

pytestmark = pytest.mark.quick

STEPPED = [each for each in quantities._ALL if each.steps]


def _quantities(fields: tuple[Field, ...]) -> list[Quantity]:
    found = [field for field in fields if isinstance(field, Quantity)]
    for field in fields:
        if isinstance(field, Rows):
            found += _quantities(field.fields)
    return found


@pytest.mark.parametrize("quantity", STEPPED, ids=lambda each: each.name)
def test_a_quantity_has_a_step_for_each_of_its_units(quantity):
    assert [unit for unit, _ in quantity.steps] == [unit for unit in quantity.units if unit in dict(quantity.steps)]
    assert set(dict(quantity.steps)) == set(quantity.units)
    for _, step in quantity.steps:
        assert (numerals.parse(step) or 0.0) > 0.0


@pytest.mark.parametrize("name", shelf.names())
def test_every_field_s_range_has_room_for_steps(name):
    calculator = shelf.calculator(name)
    assert calculator is not None
    for field in _quantities(calculator.fields):
        low, high = reading.limits(field)
        for unit, step in field.quantity.steps:
            worth = numerals.parse(step)
            assert worth is not None
            room = (units.from_coherent(high, unit) - units.from_coherent(low, unit)) / worth
            assert room >= 2.0, f"{name}: {field.name} in {unit} has room for {room}"
            # Whole numbers stay whole.
            assert not field.whole or worth == int(worth), f"{name}: {field.name}"


def _steps(path: str, name: str) -> tuple[list[str], str]:
    read = Page(walking.reply(path, [], "en", "us", False).body)
    field = next(each for each in read.elements if each.attributes.get("id") == name).parent
    assert field is not None
    pair = next(each for each in read.elements if each.has_class("steps") and each.parent is field)
    names = [each.attributes["aria-label"] for each in pair.children if not isinstance(each, str)]
    return names, pair.attributes["data-steps"]


def test_the_page_names_both_buttons_and_tells_step_and_range_in_each_unit():
    # By hand: 0.2 and 100 mm/s are 12/25.4 and 6000/25.4 in/min, 0.012 and 6 m/min.
    assert _steps("/heat-input", "travel_speed") == (
        ["Travel speed: less", "Travel speed: more"],
        "in/min|1|0.4724409449|236.2204724;mm/s|0.5|0.2|100;m/min|0.05|0.012|6",
    )
    assert _steps("/heat-input", "voltage") == (["Arc voltage: less", "Arc voltage: more"], "V|0.5|5|60")


def test_what_has_no_step_of_its_own_has_no_buttons():
    read = Page(walking.reply("/heat-input", [], "en", "us", False).body)
    stepped = [each for each in read.elements if each.has_class("steps")]
    assert len(stepped) == len([each for each in read.elements if each.has_class("stepped")])
    inside = [
        child.attributes.get("id")
        for each in stepped
        if each.parent
        for child in each.parent.children
        if not isinstance(child, str)
    ]
    assert "arc_time" in inside
    assert "thermal_efficiency" not in inside
