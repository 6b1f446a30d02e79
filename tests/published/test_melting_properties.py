"""The melting law where it must refuse, the relations it keeps whatever the coefficients, and its units."""

import math
from typing import Any

import pint
import pytest
from hypothesis import given
from hypothesis import strategies as st

from calculators import melting_rate, melting_tables, ranges
from calculators.facts import wires

METRE_PER_MINUTE = 1.0 / 60.0

STEEL_SIZES = st.sampled_from((0.6e-3, 0.8e-3, 0.889e-3, 0.9e-3, 1.0e-3, 1.143e-3, 1.2e-3, 1.6e-3))
WIRES = st.sampled_from(
    tuple((row[0], row[1], size) for row in wires.MELTING for size in (0.8e-3, 0.9e-3, 1.0e-3, 1.2e-3, 1.6e-3))
)
EXTENSIONS = st.floats(0.004, 0.025)
CURRENTS = st.floats(30.0, 450.0)


def steel_feed(wire_diameter, current, extension, trim=1.0):
    arc, resistance = melting_tables.coefficients("mild-steel", wire_diameter, trim=trim)
    return melting_rate.wire_feed_speed(current, extension, arc, resistance)


def close(actual, expected, relative):
    return actual == pytest.approx(expected, rel=relative)


# --- Where it holds


def test_the_limit_is_read_between_the_sizes_and_held_at_the_ends():
    lowest, highest = melting_tables.current_limits("aluminum", (0.762e-3 + 1.190625e-3) / 2.0, 0.010)
    assert close(lowest, (75 + 120) / 2, 1e-12)
    assert close(highest, (150 + 210) / 2, 1e-12)
    assert melting_tables.current_limits("aluminum", 1.6e-3, 0.010) == (160.0, 300.0)
    assert melting_tables.current_limits("aluminum", 0.75e-3, 0.010) == (75.0, 150.0)


@given(STEEL_SIZES, st.floats(0.010, 0.030))
def test_up_to_the_limit_the_arc_makes_at_least_half_the_heat(size, extension):
    _, highest = melting_tables.current_limits("mild-steel", size, extension)
    arc, resistance = melting_tables.coefficients("mild-steel", size)
    assert resistance * extension * highest <= arc * (1.0 + 1e-12)


def test_a_longer_stick_out_lowers_the_limit():
    highest = [melting_tables.current_limits("mild-steel", 0.889e-3, length)[1] for length in (0.010, 0.014, 0.020)]
    assert highest[0] == 255.0
    assert highest[0] > highest[1] > highest[2]


@pytest.mark.parametrize(
    ("material", "size"),
    [
        ("mild-steel", 0.5e-3),
        ("mild-steel", 1.7e-3),
        ("stainless", 0.6e-3),
        ("aluminum", 0.6e-3),
        ("aluminum", math.inf),
    ],
)
def test_wire_nobody_measured_is_refused_by_name(material, size):
    with pytest.raises(ranges.OutOfRange) as refusal:
        melting_tables.coefficients(material, size)
    assert refusal.value.name == "wire_diameter"
    with pytest.raises(ranges.OutOfRange) as refusal:
        melting_tables.current_limits(material, size, 0.010)
    assert refusal.value.name == "wire_diameter"


@pytest.mark.parametrize(
    ("material", "alloy"), [("copper", ""), ("mild-steel", "4043"), ("aluminum", "2319"), ("", "")]
)
def test_wire_nobody_knows_is_refused(material, alloy):
    with pytest.raises(ValueError, match="no melting coefficients"):
        melting_tables.coefficients(material, 1.2e-3, alloy)
    with pytest.raises(ValueError, match="no melting coefficients"):
        melting_tables.half_band(material, alloy)


def test_an_unknown_material_has_no_current_limits():
    with pytest.raises(ValueError, match="no current range"):
        melting_tables.current_limits("copper", 1.2e-3, 0.010)


@pytest.mark.parametrize("bad", [math.nan, math.inf, -1.0, 0.0, 1e6])
def test_every_formula_refuses_what_is_not_in_its_range(bad):
    good = {
        "wire_feed_speed": (0.09, (0.005, 1.0)),
        "current": (200.0, (5.0, 1000.0)),
        "electrode_extension": (0.015, (0.003, 0.030)),
        "arc_coefficient": (0.30e-3, (1e-5, 1e-2)),
    }
    for formula, names in (
        (melting_rate.wire_feed_speed, ("current", "electrode_extension", "arc_coefficient")),
        (melting_rate.current, ("wire_feed_speed", "electrode_extension", "arc_coefficient")),
        (melting_rate.electrode_extension_for, ("wire_feed_speed", "current", "arc_coefficient")),
    ):
        for wrong in names:
            inputs = {name: bad if name == wrong else good[name][0] for name in names}
            with pytest.raises(ranges.OutOfRange) as refusal:
                formula(**inputs, resistance_coefficient=5.0e-5)
            assert refusal.value.name == wrong
            assert (refusal.value.low, refusal.value.high) == good[wrong][1]
        inputs = {name: good[name][0] for name in names}
        with pytest.raises(ranges.OutOfRange) as refusal:
            formula(**inputs, resistance_coefficient=-1e-5)
        assert refusal.value.name == "resistance_coefficient"


def test_aluminum_gives_no_stick_out():
    arc, resistance = melting_tables.coefficients("aluminum", 1.2e-3, "4043")
    with pytest.raises(ranges.OutOfRange) as refusal:
        melting_rate.electrode_extension_for(0.1125, 150.0, arc, resistance)
    assert refusal.value.name == "resistance_coefficient"


def test_a_stick_out_that_cannot_be_is_refused():
    with pytest.raises(ranges.OutOfRange) as refusal:
        melting_rate.electrode_extension_for(0.050, 200.0, 0.30e-3, 5.0e-5)  # below the arc term alone
    assert refusal.value.name == "electrode_extension"
    with pytest.raises(ranges.OutOfRange) as refusal:
        melting_rate.electrode_extension_for(0.30e-3 * 200.0 + 5.0e-5 * 0.031 * 40000.0, 200.0, 0.30e-3, 5.0e-5)
    assert (refusal.value.name, refusal.value.high) == ("electrode_extension", 0.030)
    with pytest.raises(ranges.OutOfRange) as refusal:
        melting_rate.electrode_extension(0.006, 0.005)
    assert refusal.value.name == "electrode_extension"
    with pytest.raises(ranges.OutOfRange) as refusal:
        melting_rate.electrode_extension(0.012, -0.001)
    assert refusal.value.name == "arc_length"
    with pytest.raises(ranges.OutOfRange) as refusal:
        melting_rate.contact_tip_to_work(0.031, 0.002)
    assert refusal.value.name == "electrode_extension"


# --- Properties


@given(WIRES, CURRENTS, EXTENSIONS)
def test_feed_and_current_are_inverse(wire, current, extension):
    material, alloy, size = wire
    arc, resistance = melting_tables.coefficients(material, size, alloy)
    feed = melting_rate.wire_feed_speed(current, extension, arc, resistance)
    if 0.005 <= feed <= 1.0:
        assert close(melting_rate.current(feed, extension, arc, resistance), current, 1e-12)


@given(STEEL_SIZES, st.floats(60.0, 450.0), EXTENSIONS, st.floats(0.0, 0.005))
def test_feed_and_stick_out_are_inverse(size, current, extension, arc_length):
    arc, resistance = melting_tables.coefficients("mild-steel", size)
    feed = melting_rate.wire_feed_speed(current, extension, arc, resistance)
    if 0.005 <= feed <= 1.0:
        found = melting_rate.electrode_extension_for(feed, current, arc, resistance)
        assert close(found, extension, 1e-9)
        distance = melting_rate.contact_tip_to_work(found, arc_length)
        if distance >= 0.005:
            assert close(melting_rate.electrode_extension(distance, arc_length), found, 1e-9)


@given(st.floats(0.0, 1e-6), st.floats(0.006, 0.9))
def test_the_root_is_the_straight_line_as_the_resistance_term_vanishes(resistance, feed):
    straight = feed / 1.0e-3
    share = resistance * 0.015 * straight / 1.0e-3  # the resistance term over the arc term
    result = melting_rate.current(feed, 0.015, 1.0e-3, resistance)
    assert straight * (1.0 - share) * (1.0 - 1e-12) <= result <= straight * (1.0 + 1e-12)


@given(STEEL_SIZES, CURRENTS, EXTENSIONS)
def test_more_current_or_more_stick_out_melts_more_and_thicker_wire_less(size, current, extension):
    feed = steel_feed(size, current, extension)
    assert steel_feed(size, current * 1.01, extension) > feed
    assert steel_feed(size, current, extension * 1.01) > feed
    assert steel_feed(min(size * 1.01, 1.61e-3), current, extension) < feed


@given(CURRENTS, EXTENSIONS)
def test_twice_the_current_is_more_than_twice_the_feed_on_steel_and_exactly_twice_on_aluminum(current, extension):
    assert steel_feed(1.2e-3, 2.0 * current, extension) > 2.0 * steel_feed(1.2e-3, current, extension)
    arc, resistance = melting_tables.coefficients("aluminum", 1.2e-3)
    once = melting_rate.wire_feed_speed(current, extension, arc, resistance)
    assert close(melting_rate.wire_feed_speed(2.0 * current, extension, arc, resistance), 2.0 * once, 1e-12)


@given(st.floats(0.6e-3, 1.2e-3))
def test_twice_the_diameter_divides_the_terms_by_4_and_16(size):
    arc, resistance = melting_rate.scaled_coefficients(0.30e-3, 5.0e-5, 1.2e-3, size)
    wide_arc, wide_resistance = melting_rate.scaled_coefficients(0.30e-3, 5.0e-5, 1.2e-3, 2.0 * size)
    assert close(arc / wide_arc, 4.0, 1e-12)
    assert close(resistance / wide_resistance, 16.0, 1e-12)


@given(STEEL_SIZES, CURRENTS, EXTENSIONS, st.floats(0.5, 2.0))
def test_the_trim_multiplies_the_feed(size, current, extension, trim):
    assert close(steel_feed(size, current, extension, trim), trim * steel_feed(size, current, extension), 1e-12)


def test_a_band_of_feed_is_a_narrower_band_of_current_on_steel():
    band = melting_tables.half_band("mild-steel")
    at = []
    for trim in (1.0 + band, 1.0, 1.0 - band):
        arc, resistance = melting_tables.coefficients("mild-steel", 1.2e-3, trim=trim)
        at.append(melting_rate.current(0.090, 0.015, arc, resistance))
    assert at[0] < at[1] < at[2]
    assert at[2] / at[1] - 1.0 < band


# --- Units


@pytest.fixture
def registry(monkeypatch):
    """A pint registry, with the range checks reading pint quantities."""
    units: Any = pint.UnitRegistry()

    def magnitude(value, unit):
        if hasattr(value, "to"):
            return value.to(unit.replace("kg/m3", "kg/m**3")).magnitude
        return value

    monkeypatch.setattr(ranges, "magnitude", magnitude)
    return units


def test_the_law_keeps_its_units(registry):
    law: Any = melting_rate  # its annotations speak of plain numbers
    arc, resistance = law.scaled_coefficients(
        registry.Quantity(0.30, "mm/(A s)"),
        registry.Quantity(5.0e-5, "1/(A^2 s)"),
        registry.Quantity(1.2, "mm"),
        registry.Quantity(0.045, "inch"),
    )
    distance, arc_length = registry.Quantity(0.5, "inch"), registry.Quantity(2.0, "mm")
    extension = law.electrode_extension(distance, arc_length)
    feed = law.wire_feed_speed(registry.Quantity(150.0, "A"), extension, arc, resistance)
    expected = (0.30 * 150 * (1.2 / 1.143) ** 2 + 5.0e-5 * 10.7 * 150**2 * (1.2 / 1.143) ** 4) / 25.4 * 60
    assert close(feed.to("inch/minute").magnitude, expected, 1e-9)
    back = law.current(feed.to("m/min"), extension, arc, resistance)
    assert close(back.to("A").magnitude, 150.0, 1e-9)
    length = law.electrode_extension_for(feed, back, arc, resistance)
    assert close(law.contact_tip_to_work(length, arc_length).to("inch").magnitude, 0.5, 1e-9)


def test_the_law_refuses_a_wrong_kind_of_quantity(registry):
    with pytest.raises(pint.DimensionalityError):
        melting_rate.wire_feed_speed(
            registry.Quantity(24.0, "V"),
            registry.Quantity(10.0, "mm"),
            0.30e-3,
            registry.Quantity(5.0e-5, "1/(A^2 s)"),
        )
