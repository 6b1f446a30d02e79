"""Deposition, wire, time and travel by mass balance, against published sums. Beside each check: source, standing.

What has no published number that could be read: gas used and passes (arithmetic, by hand), the spread of overwelding,
the operating factor in repair.
"""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calculators import bead_travel, deposition, ranges, wire_mass
from calculators.facts import deposition as facts
from tests.published.joints import INCH, MILLIMETRE, POUND

HOUR = 3600.0
MINUTE = 60.0
FOOT = 12.0 * INCH
STEEL = 7850.0  # kg/m3
STEEL_IN_POUNDS = 0.283 * POUND / INCH**3  # what the American sums take

FEEDS = st.floats(0.02, 0.5)
DIAMETERS = st.floats(0.0006, 0.0024)
SHARES = st.floats(0.5, 1.0)
AREAS = st.floats(1e-6, 400e-6)


# ---------------------------------------------------------------- deposition rate

# Welding Design, "Pre-Calculating Wire-Feed Speed, Travel Speed, and Voltage" (November 2009): 13.1 D^2 WFS EE in lb/h
# works out 0.045 in at 300 in/min and all of it deposited as 7.96 lb/h; a training note on the same formula works out
# 0.052 in at 320 in/min and 0.98 as 11.1 lb/h. Published, seen. pi/4 x 60 x 0.283 is 13.34, so that both are 2 % low.
# (wire in, feed in/min, efficiency, lb/h)
PUBLISHED_RATES = ((0.045, 300, 1.0, 7.96), (0.052, 320, 0.98, 11.1))


@pytest.mark.parametrize(("wire", "feed", "efficiency", "expected"), PUBLISHED_RATES)
def test_deposition_rate_is_the_published_one(wire, feed, efficiency, expected):
    rate = deposition.deposition_rate(feed * INCH / MINUTE, wire * INCH, STEEL_IN_POUNDS, efficiency)
    assert rate * HOUR / POUND == pytest.approx(expected, rel=0.025)
    assert rate * HOUR / POUND > expected


# pi/4 d^2 x feed x 7850 kg/m3 x efficiency: geometry, law; by hand. (wire mm, feed m/min, efficiency, kg/h)
METRIC_RATES = ((0.8, 8.0, 0.95, 1.799), (1.0, 8.0, 0.95, 2.811), (1.2, 8.0, 0.95, 4.048))


@pytest.mark.parametrize(("wire", "feed", "efficiency", "expected"), METRIC_RATES)
def test_deposition_rate_by_hand(wire, feed, efficiency, expected):
    rate = deposition.deposition_rate(feed / MINUTE, wire * MILLIMETRE, STEEL, efficiency)
    assert rate * HOUR == pytest.approx(expected, abs=5e-4)


# ---------------------------------------------------------------- deposition efficiency

# weldinganswers.com, "Which Arc Welding Process is the Most Efficient?": spans by process; published, seen.
PUBLISHED_SPANS = (
    ("solid-argon-rich", 0.92, 0.99),
    ("solid-argon-25-carbon-dioxide", 0.92, 0.99),
    ("solid-carbon-dioxide", 0.92, 0.99),
    ("flux-cored-gas-shielded", 0.82, 0.88),
    ("flux-cored-self-shielded", 0.75, 0.85),
)


@pytest.mark.parametrize(("wire_and_gas", "low", "high"), PUBLISHED_SPANS)
def test_efficiency_lies_in_the_published_span_and_its_band_over_most_of_it(wire_and_gas, low, high):
    share, half_band = deposition.deposition_efficiency(wire_and_gas)
    assert low <= share <= high
    assert half_band <= (high - low) * 0.71


def test_metal_cored_is_a_percent_under_the_published_span():
    # The same page gives 94 to 98 %; the handbook's list, its label from memory, has 93.
    share, half_band = deposition.deposition_efficiency("metal-cored")
    assert share == 0.93
    assert share + half_band == pytest.approx(0.98)


def test_more_carbon_dioxide_and_a_core_deposit_less():
    shares = [row[1] for row in facts.DEPOSITION_EFFICIENCY]
    assert shares == sorted(shares, reverse=True)


def test_unknown_wire_and_gas_is_refused():
    with pytest.raises(ValueError, match="solid-helium"):
        deposition.deposition_efficiency("solid-helium")


# ---------------------------------------------------------------- wire


def test_wire_for_forty_feet_of_quarter_inch_fillet():
    # P = W L / E (published, seen) with W = 0.106 lb/ft: 0.106 x 40 / 0.96 = 4.42 lb, by hand.
    per_length = deposition.deposit_per_length(bead_travel.bead_area(0.25 * INCH, 1.0), STEEL_IN_POUNDS)
    wire = deposition.wire_melted(per_length * 40.0 * FOOT, 0.96)
    assert wire / POUND == pytest.approx(4.42, abs=0.005)


def test_part_of_the_published_example_weighs_what_it_says():
    # weldinganswers.com, "Calculating Weld Metal Requirements by Hand": 76.5 in of 0.275 in fillet in steel of
    # 0.283 lb/in3 weigh 0.819 lb; published, seen.
    per_length = deposition.deposit_per_length(bead_travel.bead_area(0.275 * INCH, 1.0), STEEL_IN_POUNDS)
    assert per_length * 76.5 * INCH / POUND == pytest.approx(0.819, abs=5e-4)


def test_overweld_factor_is_what_a_tenth_more_leg_does():
    # Both publications above add 10 % to the leg: 1.1 x 1.1 = 1.21 times the metal.
    low, usual, high = facts.FILLET_OVERWELD
    assert usual == pytest.approx(1.1 * 1.1, abs=0.015)
    assert low == 1.0 and high > usual


def test_waste_and_efficiency_both_add_wire():
    metal = 2.0
    wire = wire_mass.needed(deposition.wire_melted(metal, 0.96), 0.05)
    assert wire == pytest.approx(2.0 / 0.96 / 0.95)
    assert wire_mass.usable(wire, 0.05) * 0.96 == pytest.approx(metal)


# ---------------------------------------------------------------- time, gas, passes


def test_job_time_at_an_operating_factor():
    # Time = W L / (DR x OF), definition: 4.25 lb at 4 lb/h and 30 % take 3.54 h, by hand.
    arc_time = deposition.arc_time(4.25 * POUND, 4.0 * POUND / HOUR)
    assert deposition.clock_time(arc_time, 0.30) / HOUR == pytest.approx(3.54, abs=0.005)


def test_gas_by_hand():
    # 30 ft3/h for 65 min is 32.5 ft3.
    assert deposition.gas_used(30.0 * FOOT**3 / HOUR, 65.0 * MINUTE) / FOOT**3 == pytest.approx(32.5)


# (weld mm2, largest bead mm2, passes), by hand; an exact fit must not become one more.
PASSES = ((18.0, 18.0, 1), (18.1, 18.0, 2), (90.0, 30.0, 3), (0.3, 0.1, 3), (17.9, 18.0, 1), (144.0, 36.0, 4))


@pytest.mark.parametrize(("weld", "bead", "expected"), PASSES)
def test_passes(weld, bead, expected):
    assert deposition.passes(weld * 1e-6, bead * 1e-6) == expected


@given(st.floats(1.0, 500.0), st.floats(5.0, 60.0))
def test_passes_are_enough_and_one_fewer_is_not(weld, bead):
    count = deposition.passes(weld * 1e-6, bead * 1e-6)
    assert count * bead >= weld * (1.0 - 1e-9)
    assert (count - 1) * bead < weld


# ---------------------------------------------------------------- travel by mass balance


def test_travel_is_that_of_the_published_numbers():
    # Welding Design (November 2009): 0.045 in at 300 in/min lays 7.96 lb/h; a foot of 3/8 in fillet 10 % over takes
    # 1.02 in3 of 0.283 lb; published, seen. 7.96 lb/h over 0.289 lb/ft is 5.5 in/min, by hand; ours is 2 % more, since
    # the printed rate is 2 % low.
    bead = bead_travel.bead_area(0.4125 * INCH, 1.0)
    speed = bead_travel.travel_speed(300.0 * INCH / MINUTE, 0.045 * INCH, 1.0, bead)
    assert speed * MINUTE / INCH == pytest.approx(7.96 / (1.02 * 0.283) / 5.0, rel=0.025)
    assert speed * MINUTE / INCH == pytest.approx(5.61, abs=0.01)


def test_travel_by_hand():
    # 1.0 mm wire has 0.7854 mm2: 8 m/min of it is 104.72 mm3/s; on a 5 mm fillet of 12.5 mm2 8.378 mm/s, all by hand.
    speed = bead_travel.travel_speed(8.0 / MINUTE, 1.0 * MILLIMETRE, 1.0, 12.5e-6)
    assert speed / MILLIMETRE == pytest.approx(8.378, abs=5e-4)


@given(FEEDS, DIAMETERS, SHARES, AREAS)
def test_metal_in_is_metal_out(feed, diameter, share, area):
    speed = bead_travel.travel_speed(feed, diameter, share, area)
    laid = deposition.deposit_per_length(area, STEEL) * speed
    assert laid == pytest.approx(deposition.deposition_rate(feed, diameter, STEEL, share), rel=1e-12)


@given(FEEDS, DIAMETERS, SHARES, AREAS, st.sampled_from(("wire_feed_speed", "wire_diameter", "bead_area")))
def test_travel_scales(feed, diameter, share, area, name):
    values = {"wire_feed_speed": feed, "wire_diameter": diameter, "deposition_efficiency": share, "bead_area": area}
    doubled = bead_travel.travel_speed(**{**values, name: values[name] * 1.5})
    ratio = {"wire_feed_speed": 1.5, "wire_diameter": 2.25, "bead_area": 1.0 / 1.5}[name]
    assert doubled == pytest.approx(ratio * bead_travel.travel_speed(**values), rel=1e-12)


MAIN = ("wire_feed_speed", "wire_diameter", "deposition_efficiency", "bead_area", "travel_speed")


@pytest.mark.parametrize("unknown", MAIN)
@given(FEEDS, DIAMETERS, SHARES, AREAS)
def test_every_blank_of_the_balance_is_found_again(unknown, feed, diameter, share, area):
    values = {"wire_feed_speed": feed, "wire_diameter": diameter, "deposition_efficiency": share, "bead_area": area}
    values["travel_speed"] = bead_travel.travel_speed(feed, diameter, share, area)
    wanted = values.pop(unknown)
    assert bead_travel.solve_travel_speed(unknown, values) == pytest.approx(wanted, rel=1e-9)


@pytest.mark.parametrize("unknown", ["leg", "overweld_factor", "bead_area"])
@given(st.floats(0.001, 0.03), st.floats(0.8, 2.5))
def test_every_blank_of_the_bead_is_found_again(unknown, leg, factor):
    values = {"leg": leg, "overweld_factor": factor, "bead_area": bead_travel.bead_area(leg, factor)}
    wanted = values.pop(unknown)
    assert bead_travel.solve_bead(unknown, values) == pytest.approx(wanted, rel=1e-9)


def test_a_throat_taken_for_a_leg_halves_the_travel_time():
    # The trap: the throat of the wanted 5 mm leg, 3.54 mm, typed as its leg lets the arc run twice as fast.
    wanted = bead_travel.travel_speed(0.1, 0.001, 1.0, bead_travel.bead_area(0.005, 1.0))
    trapped = bead_travel.travel_speed(0.1, 0.001, 1.0, bead_travel.bead_area(0.005 / math.sqrt(2.0), 1.0))
    assert trapped == pytest.approx(2.0 * wanted)


def test_diameter_is_not_radius():
    # pi/4 d^2 and not pi d^2: a wire of 1.2 mm has 1.131 mm2.
    speed = bead_travel.travel_speed(0.1, 1.2 * MILLIMETRE, 1.0, 10e-6)
    assert speed == pytest.approx(0.1 * 1.13097e-6 / 10e-6, rel=1e-5)


@pytest.mark.parametrize("share", [0.29, 1.01])
def test_efficiency_out_of_range_is_refused(share):
    with pytest.raises(ranges.OutOfRange):
        bead_travel.travel_speed(0.1, 0.001, share, 10e-6)
    with pytest.raises(ranges.OutOfRange):
        deposition.wire_melted(1.0, share)
