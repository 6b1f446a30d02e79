"""Leads against published tables of copper: resistance, area, what a cable carries, and what a lead loses.

Values of NEC Chapter 9 Table 8 and Table 400.5(B) were seen quoted, not read in the code itself.
"""

import pytest

from calculators import conductors, duty
from calculators.facts import conductors as facts

KILOFOOT = 304.8
CIRCULAR_MIL = 3.141592653589793 / 4.0 * 0.0254e-3**2
COLD, HOT = 293.15, 348.15


def per_kilofoot(area, temperature, stranding=facts.STRANDING):
    """Return the resistance of 1000 ft of one conductor, [ohm]."""
    return conductors.loop_resistance(KILOFOOT / 2.0, area, conductors.copper_resistivity(temperature), stranding)


# NEC Chapter 9 Table 8, uncoated copper, stranded, 75 degC, ohm for 1000 ft. Standing: standard, seen quoted.
NEC_TABLE_8 = ((4, 0.308), (3, 0.245), (2, 0.194), (1, 0.154), (0, 0.122), (-1, 0.0967), (-2, 0.0766), (-3, 0.0608))


@pytest.mark.parametrize(("gauge", "expected"), NEC_TABLE_8)
def test_hot_stranded_copper_is_the_electrical_code_s(gauge, expected):
    assert per_kilofoot(conductors.awg_area(gauge), HOT) == pytest.approx(expected, rel=0.004)


# NBS Handbook 100, 1966, solid copper at 20 degC, ohm for 1000 ft. Standing: published, from memory.
@pytest.mark.parametrize(("gauge", "expected"), [(4, 0.2485), (2, 0.1563), (0, 0.09827), (-1, 0.07793), (-3, 0.04901)])
def test_cold_solid_copper_is_the_bureau_of_standards(gauge, expected):
    assert per_kilofoot(conductors.awg_area(gauge), COLD, 1.0) == pytest.approx(expected, rel=0.0005)


def test_mil_foot_of_copper_is_10_37_ohm():
    # Welding Design, a trade journal, states 10.37 ohm; NBS Handbook 100 has 10.371. Standing: published.
    found = conductors.loop_resistance(0.1524, 1e-6, conductors.copper_resistivity(COLD), 1.0) * 1e-6 / CIRCULAR_MIL
    assert found == pytest.approx(10.371, rel=0.0003)


# NEC Chapter 9 Table 8, circular mils. Standing: standard, seen quoted.
@pytest.mark.parametrize(("gauge", "mils"), [(4, 41740), (2, 66360), (0, 105600), (-3, 211600)])
def test_gauge_has_the_area_of_the_list(gauge, mils):
    assert conductors.awg_area(gauge) == pytest.approx(mils * CIRCULAR_MIL, rel=0.001)


def test_three_gauges_double_the_copper_within_1_percent():
    # A rule electricians use. Standing: common practice.
    assert conductors.awg_area(1) / conductors.awg_area(4) == pytest.approx(2.0, rel=0.01)


# IEC 60228, correction from 20 degC to a conductor's temperature (factor that takes a reading back to 20 degC), as
# tabulated by a cable text. Standing: standard, seen quoted.
@pytest.mark.parametrize(("celsius", "factor"), [(5, 1.064), (40, 0.926), (50, 0.893), (75, 0.820), (90, 0.781)])
def test_copper_warms_as_the_international_standard_says(celsius, factor):
    found = conductors.copper_resistivity(COLD) / conductors.copper_resistivity(celsius + 273.15)
    assert found == pytest.approx(factor, abs=0.004)


# IEC 60228:2004, class 5, plain copper, highest resistance at 20 degC, ohm for 1 km. Standing: standard, seen quoted.
IEC_60228 = ((16, 1.21), (25, 0.780), (35, 0.554), (50, 0.386), (70, 0.272), (95, 0.206), (120, 0.161))


@pytest.mark.parametrize(("size", "expected"), IEC_60228)
def test_metric_lead_resists_what_the_standard_allows(size, expected):
    area = dict(conductors.LEADS)[f"mm2-{size}"]
    found = conductors.loop_resistance(500.0, area, conductors.copper_resistivity(COLD))
    assert found == pytest.approx(expected, rel=1e-9)


@pytest.mark.parametrize(("size", "expected"), IEC_60228)
def test_metric_number_taken_for_copper_is_8_to_14_percent_too_good(size, expected):
    """The trap: a 35 mm2 lead need not hold 35 mm2."""
    taken = conductors.loop_resistance(500.0, size * 1e-6, conductors.copper_resistivity(COLD), 1.0)
    assert 1.08 < expected / taken < 1.14


# NEC Table 400.5(B), one conductor, 75 degC, in Set Lighting Technician's Handbook, 4th ed., table D.1.
# Standing: published.
@pytest.mark.parametrize(("gauge", "amperes"), [(4, 125), (2, 170), (0, 230), (-1, 265), (-2, 310), (-3, 360)])
def test_cable_carries_what_the_electrical_code_lists(gauge, amperes):
    assert conductors.steady_current(conductors.awg_area(gauge)) == pytest.approx(amperes, rel=0.01)


@pytest.mark.parametrize(("gauge", "amperes"), [(8, 70), (6, 95)])
def test_thin_cable_carries_no_more_than_the_electrical_code_lists(gauge, amperes):
    assert 0.97 * amperes < conductors.steady_current(conductors.awg_area(gauge)) <= amperes


# ---------------------------------------------------------------- what is lost, by hand from the tables above


# Current x table 8 x total length: 200 A x 0.122 ohm/kft x 200 ft = 4.88 V, and so on. Standing: standard, by hand.
@pytest.mark.parametrize(
    ("current", "gauge", "total", "expected"),
    [(200, 0, 200, 4.88), (200, 2, 100, 3.88), (150, 2, 200, 5.82), (250, -1, 200, 4.84), (300, -3, 300, 5.47)],
)
def test_volts_lost(current, gauge, total, expected):
    resistance = conductors.loop_resistance(
        total * 0.3048 / 2.0, conductors.awg_area(gauge), conductors.copper_resistivity(HOT)
    )
    assert current * resistance == pytest.approx(expected, rel=0.005)


def test_one_way_length_is_doubled():
    """The trap: taken as the whole circuit, half the loss would be hidden."""
    one_way = conductors.loop_resistance(30.48, conductors.awg_area(0), conductors.copper_resistivity(HOT))
    assert one_way == pytest.approx(0.122 * 0.2, rel=0.004)


def test_hot_copper_loses_a_fifth_more_than_cold():
    """1 + 0.00393 x 55 = 1.216."""
    assert conductors.copper_resistivity(HOT) / conductors.copper_resistivity(COLD) == pytest.approx(1.216, abs=0.001)


@pytest.mark.parametrize("factor", [0.5, 2.0, 5.0])
def test_loss_goes_with_length_and_against_copper(factor):
    base = conductors.loop_resistance(10.0, 50e-6, 2e-8)
    assert conductors.loop_resistance(10.0 * factor, 50e-6, 2e-8) == pytest.approx(factor * base)
    assert conductors.loop_resistance(10.0, 50e-6 * factor, 2e-8) == pytest.approx(base / factor)


def test_thicker_cable_carries_more_and_loses_less():
    for system in ("awg", "mm2"):
        areas = [area for name, area in conductors.LEADS if name.startswith(system)]
        assert areas == sorted(areas)
        carried = [conductors.steady_current(area) for area in areas]
        assert carried == sorted(carried)


# American and metric sizes commonly named side by side (common practice): the metric one may resist up to a fifth more.
@pytest.mark.parametrize(("american", "metric"), [("awg-2", "mm2-35"), ("awg-1-0", "mm2-50"), ("awg-2-0", "mm2-70")])
def test_metric_size_is_near_its_american_neighbour(american, metric):
    sizes = dict(conductors.LEADS)
    assert 0.83 < sizes[metric] / sizes[american] <= 1.0


def test_heat_of_part_time_current():
    # 200 A at 60 %: 200 x 0.7746 = 154.9 A, by hand.
    assert duty.effective_current(200.0, 0.6) == pytest.approx(154.9, abs=0.05)
