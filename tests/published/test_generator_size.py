"""What a machine draws and what an engine gives, against definitions, an army manual and the standard atmosphere.

No published worked example of a welding machine on a generator was found that is not a maker's: the apparent power
is the definition worked by hand.
"""

import pytest

from calculators import duty, supply_power
from calculators.facts import supply as facts

WARM = 298.15


# Power out ÷ (efficiency x power factor), by hand. Standing: law (definition).
@pytest.mark.parametrize(
    ("current", "voltage", "efficiency", "factor", "expected"),
    [
        (200, 24.0, 0.80, 0.70, 8571),
        (150, 21.5, 0.85, 0.65, 5837),
        (250, 26.5, 0.85, 0.95, 8204),
        (140, 21.0, 0.75, 0.60, 6533),
        (100, 19.0, 1.0, 1.0, 1900),
    ],
)
def test_apparent_power_is_its_definition(current, voltage, efficiency, factor, expected):
    assert supply_power.apparent_power(current, voltage, efficiency, factor) == pytest.approx(expected, abs=0.6)


def test_power_factor_and_efficiency_both_divide():
    """The traps: taken as factors, or one of the two forgotten, the generator would be half as large."""
    real = supply_power.apparent_power(200.0, 24.0, 0.80, 1.0)
    assert real == pytest.approx(6000.0)
    assert supply_power.apparent_power(200.0, 24.0, 0.80, 0.5) == pytest.approx(2.0 * real)


# Power on the rating line of IEC 60974-1 (14 V + 0.05 V/A): 100 A 1900 W, 150 A 3225 W, 350 A 11 025 W, 600 A 26.4 kW.
# Standing: standard, by hand.
@pytest.mark.parametrize(("power", "expected"), [(1900, 100), (3225, 150), (4800, 200), (11025, 350), (26400, 600)])
def test_current_of_a_power_on_the_rating_line(power, expected):
    assert supply_power.current_of_power(float(power)) == pytest.approx(expected, rel=1e-9)


def test_current_of_a_power_solves_the_square():
    # 0.05 I² + 14 I = P: I = 10 (√(196 + 0.2 P) - 14).
    for power in (5.0, 300.0, 2000.0, 9000.0, 20000.0):
        assert supply_power.current_of_power(power) == pytest.approx(10.0 * ((196.0 + 0.2 * power) ** 0.5 - 14.0))


# ---------------------------------------------------------------- height and heat


def atmosphere(height):
    """Return the pressure of the standard atmosphere (ISO 2533) over that at sea level."""
    return (1.0 - 2.25577e-5 * height) ** 5.25588


@pytest.mark.parametrize("height", [300, 600, 1000, 1500, 2000, 2500])
def test_usual_rule_of_height_is_the_pressure_of_the_standard_atmosphere(height):
    """An engine without a blower burns what air it gets. ISO 2533: law of the standard atmosphere; from memory."""
    assert supply_power.derating(height, WARM) == pytest.approx(atmosphere(height), abs=0.04)


@pytest.mark.parametrize("height", [500, 1500, 2500])
def test_usual_rule_of_height_is_near_the_engine_test_code(height):
    """SAE J1349: power ÷ rated = 1 ÷ (1.18 x 99 kPa ÷ p - 0.18) at 25 degC, p of dry air. From memory."""
    pressure = 101.325 * atmosphere(height)
    # It is rated at 99 kPa, near 195 m: the rule counts from the sea.
    expected = 1.0 / (1.18 * 99.0 / pressure - 0.18)
    assert supply_power.derating(height, WARM) == pytest.approx(expected, abs=0.03)


@pytest.mark.parametrize("celsius", [30, 35, 40, 50])
def test_usual_rule_of_heat_is_the_root_of_temperature(celsius):
    """Power of a petrol engine with √(298 K ÷ T): SAE J1349. From memory."""
    assert supply_power.derating(0.0, celsius + 273.15) == pytest.approx(
        (298.15 / (celsius + 273.15)) ** 0.5, abs=0.007
    )


# ARMY TM 9-6115-673-13&P, table 2-3, a 2 kW set: 0.013 for each 328 ft above 4000 ft, 0.03 for each 10 degC above
# 95 degF. Standing: published. Its slopes, from where we count.
def test_worse_rule_has_the_slopes_of_the_army_manual():
    high, low = (supply_power.derating(feet * 0.3048, WARM, True) for feet in (8000, 4000))
    assert low - high == pytest.approx(0.013 * 4000 / 328, rel=0.001)
    cool, hot = (supply_power.derating(0.0, celsius + 273.15, True) for celsius in (35, 45))
    assert cool - hot == pytest.approx(0.03)


@pytest.mark.parametrize("height", [0, 500, 1500, 3000, 4500])
@pytest.mark.parametrize("celsius", [0, 25, 35, 50])
def test_usual_rule_never_takes_more_than_the_worse(height, celsius):
    usual = supply_power.derating(height, celsius + 273.15)
    assert 0.3 < supply_power.derating(height, celsius + 273.15, True) <= usual <= 1.0


def test_nothing_is_gained_below_the_sea_or_in_the_cold():
    assert supply_power.derating(-300.0, 253.15) == 1.0


# ---------------------------------------------------------------- tables


# NEC Table 400.5(A), two wires carrying. Standing: standard, 14 and 12 AWG seen quoted.
@pytest.mark.parametrize(("size", "amperes"), [("awg-14", 18), ("awg-12", 25)])
def test_cords_carry_what_the_electrical_code_lists(size, amperes):
    assert (size, amperes) in [(name, carried) for name, _, carried in facts.CORDS]


def test_cords_grow():
    assert [gauge for _, gauge, _ in facts.CORDS] == sorted((gauge for _, gauge, _ in facts.CORDS), reverse=True)
    carried = [amperes for _, _, amperes in facts.CORDS]
    assert carried == sorted(carried)


def test_single_phase_inverters_reach_what_the_law_asks():
    """Commission Regulation (EU) 2019/1784: 80 % for single-phase machines. Standing: law, seen quoted."""
    for name, efficiencies, factors in facts.POWER_SOURCES:
        assert sorted(efficiencies) == list(efficiencies) and sorted(factors) == list(factors)
        if name.startswith("inverter"):
            assert efficiencies[0] == 0.80


def test_four_fifths_of_a_circuit_is_a_quarter_of_room():
    """NEC 210.23(A)(1), 80 % of the circuit; from memory."""
    room = 1.0 / (1.0 + facts.MARGIN)
    assert room == pytest.approx(0.80)


def test_supply_current_of_a_plate():
    # NEC 630.12: 32 A for 35 % of the time, 0.5 A idle: 18.94 A. Standing: standard, by hand.
    assert duty.effective_current(32.0, 0.35, 0.5) == pytest.approx(18.94, abs=0.005)
