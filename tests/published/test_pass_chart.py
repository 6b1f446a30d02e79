"""The middle and the spread of readings, against NumPy and pint (standing: published, computed).

No published chart of a weld's passes with numbers was found; the statistics are checked by libraries that others
made, and the limits by hand.
"""

import json

import numpy
import pint
import pytest

from calculators.pass_chart import Series
from tests import walking

KILOJOULES = (17.3, 18.1, 17.8, 21.0, 16.9, 19.4, 17.3)
FAHRENHEIT = (200, 250, 300, 310)


def heats(values, unit="kJ/in"):
    return Series("heats", "heat_input", " ".join(str(value) for value in values) + " " + unit)


@pytest.mark.parametrize("count", [1, 2, 3, 6, 7])
def test_the_middle_one_is_numpy_s_median(count):
    metres = numpy.array(KILOJOULES[:count]) * 1000 / 0.0254
    assert heats(KILOJOULES[:count]).middle() == pytest.approx(numpy.median(metres), rel=1e-12)


def test_the_spread_is_numpy_s_range_over_its_median():
    assert heats(KILOJOULES).spread() == pytest.approx(numpy.ptp(KILOJOULES) / numpy.median(KILOJOULES), rel=1e-12)


def test_units_are_pint_s():
    ureg: pint.UnitRegistry[float] = pint.UnitRegistry()
    [value] = heats([17.3]).values
    assert value == pytest.approx(ureg("17.3 kJ/in").to("J/m").magnitude, rel=1e-12)
    [kelvin] = Series("preheats", "preheat_temperature", "300 degF").values
    assert kelvin == pytest.approx(ureg.Quantity(300, ureg.degF).to("kelvin").magnitude, rel=1e-12)


def test_a_temperature_s_middle_is_numpy_s_in_another_unit():
    found = Series("preheats", "preheat_temperature", " ".join(map(str, FAHRENHEIT)) + " degF").middle()
    celsius = numpy.median((numpy.array(FAHRENHEIT) - 32) / 1.8)
    assert found - 273.15 == pytest.approx(celsius, abs=1e-9)


# By hand: 50 kJ/in is 1.9685 kJ/mm, so of 1.96, 1.97 and 2.00 the second and third lie above it.
def test_limits_in_another_unit_by_hand():
    series = heats([1.96, 1.97, 2.0], "kJ/mm")
    assert series.outside(50_000 / 0.0254, is_least=False) == [2, 3]
    assert series.outside(50_000 / 0.0254, is_least=True) == [1]


# By hand: a reading that is its limit holds it, both ways.
def test_a_reading_at_its_limit_holds_it():
    series = heats([20.0, 20.1], "kJ/in")
    assert series.outside(20_000 / 0.0254, is_least=False) == [2]
    assert series.outside(20_000 / 0.0254, is_least=True) == []


def test_the_answer_says_numpy_s_median():
    asked = [("heats", " ".join(map(str, KILOJOULES)) + " kJ/in")]
    reply = walking.reply("/api/pass-chart", [*asked, ("limit_basis", "heat-input")], system="us")
    found = json.loads(reply.body)["results"]["middle_heats"]
    assert found["unit"] == "kJ/in" and found["value"] == pytest.approx(numpy.median(KILOJOULES), abs=0.05)
