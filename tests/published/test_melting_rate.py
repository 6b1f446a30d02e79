"""The melting law against the world. Beside each check: where its number comes from, and its standing.

No number here was made by the code it tests. Some were made with the same two coefficients by hand: they
catch a slip of arithmetic, never a wrong coefficient, and say "self-check".

What has no published number that could be read:
- stainless. The one study found (308 wire, J. Japan Welding Society 27-1) shows the shape of the law in its
abstract and
  keeps the coefficients in its pages; the table's line is held by an energy balance and a published current
  range.
- aluminum. The coefficient is from memory; that magnesium alloys melt faster is published, by how much is
common practice.
- the assumed arc lengths, the widths of the bands, the top of the mild-steel current ranges, and 0.6 mm wire.
- cored wire: no law, so nothing to check.
"""

import math

import pytest

from calculators import melting_rate, melting_tables, ranges
from calculators.facts import wires

INCH = 0.0254  # m, exactly
INCH_PER_MINUTE = INCH / 60.0
METRE_PER_MINUTE = 1.0 / 60.0

# Self-check: computed by hand with 0.30 mm/(A s) and 5.0e-5 1/(A^2 s) at 1.2 mm (Amin 1983, in Norrish,
# Advanced Welding Processes; from memory). (wire mm, A, extension mm, m/min)
SAME_COEFFICIENTS = (
    (0.8, 100, 10, 5.569),
    (0.9, 120, 10, 5.205),
    (1.0, 150, 12, 5.568),
    (1.0, 200, 15, 8.916),
    (1.2, 100, 12, 2.160),
    (1.2, 150, 12, 3.510),
    (1.2, 200, 15, 5.400),
    (1.2, 250, 15, 7.312),
    (1.2, 300, 20, 10.80),
    (1.6, 300, 20, 4.746),
    (1.6, 350, 20, 5.869),
)

# Self-check, same coefficients: current of 1.2 mm steel wire at 5.40 m/min. (extension mm, A)
SAME_FEED = ((10, 219.6), (15, 200.0), (20, 185.4), (25, 173.9))

# Burn-off of steel wire in short-circuit, in/min for each ampere, beside the middle of the wire's current
# range; 0.023 in wire is 0.6 mm. Standing: common practice. (wire in, in/min per A, A)
BURN_OFF_RULE = ((0.6 / 25.4, 3.5, 62), (0.030, 2.0, 62), (0.035, 1.6, 125), (0.045, 1.0, 125))

# One ampere for a thousandth of an inch of steel. Standing: common practice. (in, A)
AMPERE_PER_THOUSANDTH = ((0.0625, 62.5), (0.125, 125.0), (0.0598, 59.8), (0.1875, 187.5))

# NAVEDTRA 14119 (US Navy training manual), table 10-11: aluminum filler wire in argon. Standing: published,
# excerpt seen.
NAVY_ALUMINUM = ((0.030, 75, 150), (3 / 64, 120, 210), (1 / 16, 165, 300))

# Modern Welding (textbook, 2020), figure 8-17: stainless in spray. Standing: published, seen. Wire between
# tip and arc is not in the figure: a short one. (wire in, lowest A, highest A, m)
TEXTBOOK_STAINLESS_SPRAY = (
    (0.030, 160, 210, 0.008),
    (0.035, 180, 255, 0.010),
    (0.045, 200, 300, 0.014),
    (1 / 16, 215, 325, 0.014),
)


def steel_feed(wire_diameter, current, extension, trim=1.0):
    arc, resistance = melting_tables.coefficients("mild-steel", wire_diameter, trim=trim)
    return melting_rate.wire_feed_speed(current, extension, arc, resistance)


def close(actual, expected, relative):
    return actual == pytest.approx(expected, rel=relative)


# --- Against other people's numbers


@pytest.mark.parametrize("extension", [0.010, 0.012, 0.015])
def test_a_measured_short_circuit_pair_lies_within_12_percent_of_current(extension):
    """2.4 m/min gave 101.9 A at 17.8 V, mean of a recorded weld.

    Brazilian thesis on the variability of MIG/MAG beads, table 5.1. Standing: published, excerpt seen. The
    wire is not named in the excerpt: 1.2 mm fits; nor is the stick-out, so the usual ones are tried.
    """
    arc, resistance = melting_tables.coefficients("mild-steel", 1.2e-3)
    assert close(melting_rate.current(2.4 * METRE_PER_MINUTE, extension, arc, resistance), 101.9, 0.12)


@pytest.mark.parametrize("extension", [0.010, 0.012, 0.015])
def test_the_band_of_mild_steel_holds_the_measured_pair(extension):
    """The same measured pair, the other way round: its feed lies between the two ends of the band."""
    band = melting_tables.half_band("mild-steel")
    slow = steel_feed(1.2e-3, 101.9, extension, 1.0 - band)
    fast = steel_feed(1.2e-3, 101.9, extension, 1.0 + band)
    assert slow < 2.4 * METRE_PER_MINUTE < fast


def test_the_measured_pair_is_inside_the_currents_the_law_may_be_asked_about():
    lowest, highest = melting_tables.current_limits("mild-steel", 1.2e-3, 0.012)
    assert lowest <= 101.9 <= highest


@pytest.mark.parametrize(("size", "current", "extension", "feed"), SAME_COEFFICIENTS)
def test_so_are_the_points_of_the_self_check(size, current, extension, feed):
    lowest, highest = melting_tables.current_limits("mild-steel", size / 1000.0, extension / 1000.0)
    ranges.require("current", current, lowest, highest, "A")


@pytest.mark.parametrize("contact_tip_to_work", [0.010, 0.012])
def test_a_welder_with_035_wire_at_125_amps_feeds_200_to_225_inches_a_minute(contact_tip_to_work):
    """What short-circuit work on 1/8 in steel is set to. Standing: common practice."""
    arc_length = dict(wires.ARC_LENGTHS)["short-circuit"]
    extension = melting_rate.electrode_extension(contact_tip_to_work, arc_length)
    assert 200.0 <= steel_feed(0.035 * INCH, 125.0, extension) / INCH_PER_MINUTE <= 225.0


@pytest.mark.parametrize(("size", "multiplier", "current"), BURN_OFF_RULE)
def test_the_law_agrees_with_the_burn_off_rule_in_short_circuit(size, multiplier, current):
    """8 mm of wire: a stick-out of 10 mm (common practice in short-circuit) less 2 mm of arc."""
    assert close(steel_feed(size * INCH, current, 0.008), multiplier * current * INCH_PER_MINUTE, 0.15)


@pytest.mark.parametrize("current", [75.0, 100.0, 125.0, 150.0, 175.0])
@pytest.mark.parametrize("extension", [0.008, 0.010, 0.012])
def test_a_second_fitted_pair_of_coefficients_gives_the_same_feed_within_the_band(current, extension):
    """Naidu, Ozcelik and Moore, Modeling, Sensing and Control of Gas Metal Arc Welding: volume melted is C1 I
    + C2 r L I^2.

    C1 2.885e-10 m3/(A s), C2 5.22e-10 m3/(A2 Ohm s), r 0.2821 Ohm/m, for ER70S wire of about 0.9 mm.
    Standing: from memory.
    """
    volume = 2.885e-10 * current + 5.22e-10 * 0.2821 * extension * current * current
    feed = volume / (math.pi / 4.0 * 0.9e-3**2)
    assert close(steel_feed(0.9e-3, current, extension), feed, melting_tables.half_band("mild-steel"))


def test_the_arc_term_of_16_mm_steel_is_the_handbooks_within_the_band():
    """AWS Welding Handbook: melting rate = a I + b L I^2, a = 8.6e-3 kg/(h A) for 1.6 mm steel.

    Standing: from memory.
    """
    arc, _ = melting_tables.coefficients("mild-steel", 1.6e-3)
    mass_per_metre = 7850.0 * math.pi / 4.0 * 1.6e-3**2
    assert close(arc * mass_per_metre * 3600.0, 8.6e-3, 0.15)


@pytest.mark.parametrize(
    ("size", "current"), [(0.8e-3, 100), (0.9e-3, 150), (1.0e-3, 200), (1.2e-3, 250), (1.6e-3, 350)]
)
def test_an_ampere_melts_10_to_20_grams_of_steel_an_hour(size, current):
    """Melting coefficient as in Chang and Babkin, Welding Journal, May 2016; the range is from memory."""
    grams_per_hour = steel_feed(size, current, 0.012) * 7850.0 * math.pi / 4.0 * size * size * 3600.0 * 1000.0
    assert 10.0 <= grams_per_hour / current <= 20.0


@pytest.mark.parametrize(("shorter", "longer"), [(0.010, 0.015), (0.015, 0.020)])
def test_a_millimetre_of_stick_out_moves_the_current_by_2_5_to_4_amps(shorter, longer):
    """1.2 mm steel wire at a steady feed, constant voltage. Standing: common practice."""
    arc, resistance = melting_tables.coefficients("mild-steel", 1.2e-3)
    feed = 5.4 * METRE_PER_MINUTE
    drop = melting_rate.current(feed, shorter, arc, resistance) - melting_rate.current(feed, longer, arc, resistance)
    assert 2.5 <= drop / ((longer - shorter) * 1000.0) <= 4.0


# Energy balance at 1.2 mm (law; property values from memory, rounded): (material, alloy, density kg/m3, heat
# to bring wire to a drop J/kg, lowest and highest electrical resistivity from cold to molten Ohm m).
HEAT = (
    ("mild-steel", "", 7850.0, 2.05e6, 0.16e-6, 1.36e-6),
    ("stainless", "", 7950.0, 1.95e6, 0.74e-6, 1.36e-6),
    ("aluminum", "4043", 2690.0, 2.5e6, 0.0, 0.25e-6),
    ("aluminum", "5356", 2640.0, 2.2e6, 0.0, 0.25e-6),
)


@pytest.mark.parametrize(("material", "alloy", "density", "heat", "cold", "molten"), HEAT)
def test_the_coefficients_are_possible_by_the_energy_they_need(material, alloy, density, heat, cold, molten):
    """An arc gives its anode 4 to 8 V for each ampere; a wire has a resistivity between cold and molten.

    Conservation of energy: law. The volts and the heats: from memory.
    """
    arc, resistance = melting_tables.coefficients(material, 1.2e-3, alloy)
    area = math.pi / 4.0 * 1.2e-3**2
    assert 4.0 <= arc * density * area * heat <= 8.0
    assert cold <= resistance * density * area * area * heat <= molten


def test_the_band_of_stainless_holds_both_routes_to_its_coefficients():
    """Remembered literature set against an energy balance from mild steel: 0.275 with 9e-5, and 0.31 with
    5.3e-5.

    Standing: from memory; the balance is law with property values from memory.
    """
    band = melting_tables.half_band("stainless")
    arc, resistance = melting_tables.coefficients("stainless", 1.2e-3)
    for current, extension in ((150.0, 0.010), (200.0, 0.012), (250.0, 0.014)):
        feed = melting_rate.wire_feed_speed(current, extension, arc, resistance)
        for other_arc, other_resistance in ((0.275e-3, 9.0e-5), (0.31e-3, 5.3e-5)):
            other = other_arc * current + other_resistance * extension * current * current
            assert (1.0 - band) * feed < other < (1.0 + band) * feed


def test_5356_feeds_10_to_15_percent_faster_than_4043():
    """Standing: common practice. That magnesium melts faster: published (Ramgopal, Mendez, CANWELD 2023)."""
    with_silicon, _ = melting_tables.coefficients("aluminum", 1.2e-3, "4043")
    with_magnesium, _ = melting_tables.coefficients("aluminum", 1.2e-3, "5356")
    assert 1.10 <= with_magnesium / with_silicon <= 1.15


def test_unknown_aluminum_lies_between_the_alloys_and_its_band_holds_theirs():
    plain, _ = melting_tables.coefficients("aluminum", 1.2e-3)
    band = melting_tables.half_band("aluminum")
    for alloy in ("4043", "5356", "5183"):
        arc, _ = melting_tables.coefficients("aluminum", 1.2e-3, alloy)
        own = melting_tables.half_band("aluminum", alloy)
        assert own < band
        assert plain * (1.0 - band) <= arc * (1.0 - own)
        assert arc * (1.0 + own) <= plain * (1.0 + band) * 1.0000001


@pytest.mark.parametrize("alloy", ["", "4043", "5356", "5183"])
def test_12_mm_aluminum_at_150_amps_feeds_675_metres_a_minute(alloy):
    """+-20 %: 0.75 mm/(A s), Amin 1983 in Norrish; from memory. A self-check where the alloy is not known."""
    arc, resistance = melting_tables.coefficients("aluminum", 1.2e-3, alloy)
    assert close(melting_rate.wire_feed_speed(150.0, 0.012, arc, resistance) / METRE_PER_MINUTE, 6.75, 0.20)


# --- Self-checks on the same coefficients


@pytest.mark.parametrize(("size", "current", "extension", "feed"), SAME_COEFFICIENTS)
def test_self_check_feed(size, current, extension, feed):
    assert close(steel_feed(size / 1000.0, current, extension / 1000.0) / METRE_PER_MINUTE, feed, 0.0005)


@pytest.mark.parametrize(("extension", "current"), SAME_FEED)
def test_self_check_current(extension, current):
    arc, resistance = melting_tables.coefficients("mild-steel", 1.2e-3)
    result = melting_rate.current(5.4 * METRE_PER_MINUTE, extension / 1000.0, arc, resistance)
    assert result == pytest.approx(current, abs=0.06)


# --- Shop rules


@pytest.mark.parametrize(("size", "multiplier", "current"), BURN_OFF_RULE)
def test_the_burn_off_rule_is_the_shops(size, multiplier, current):
    assert close(melting_tables.burn_off_feed(current, size * INCH), multiplier * current * INCH_PER_MINUTE, 1e-9)


def test_the_burn_off_rule_follows_the_area_to_the_metric_size_and_stops_there():
    inch_size = melting_tables.burn_off_feed(100.0, 0.030 * INCH)
    assert close(melting_tables.burn_off_feed(100.0, 0.8e-3), inch_size * (0.762 / 0.8) ** 2, 1e-9)
    for size in (1.0e-3, 1.6e-3, 0.5e-3, math.nan):
        with pytest.raises(ranges.OutOfRange) as refusal:
            melting_tables.burn_off_feed(100.0, size)
        assert refusal.value.name == "wire_diameter"
    with pytest.raises(ranges.OutOfRange):
        melting_tables.burn_off_feed(181.0, 0.889e-3)


@pytest.mark.parametrize(("thickness", "current"), AMPERE_PER_THOUSANDTH)
def test_an_ampere_for_each_thousandth(thickness, current):
    assert close(melting_tables.current_for_thickness(thickness * INCH), current, 1e-9)


def test_the_ampere_rule_ends_at_a_quarter_inch():
    assert close(melting_tables.current_for_thickness(0.25 * INCH), 250.0, 1e-9)
    with pytest.raises(ranges.OutOfRange):
        melting_tables.current_for_thickness(0.26 * INCH)


# --- Where it holds


@pytest.mark.parametrize(("size", "low", "high"), NAVY_ALUMINUM)
def test_the_navys_aluminum_currents_are_inside(size, low, high):
    lowest, highest = melting_tables.current_limits("aluminum", size * INCH, 0.012)
    ranges.require("current", low, lowest, highest, "A")
    ranges.require("current", high, lowest, highest, "A")


@pytest.mark.parametrize(("size", "low", "high", "extension"), TEXTBOOK_STAINLESS_SPRAY)
def test_the_textbooks_stainless_currents_are_inside(size, low, high, extension):
    """Published as running: so the stick-out cannot be making more than half the heat."""
    lowest, highest = melting_tables.current_limits("stainless", size * INCH, extension)
    ranges.require("current", low, lowest, highest, "A")
    assert close(highest, high, 1e-9)


@pytest.mark.parametrize(("size", "low", "high"), [(0.030, 50, 150), (0.035, 75, 175), (0.045, 100, 225)])
def test_short_circuit_on_mild_steel_is_inside(size, low, high):
    """AWS C5.6 and the AWS Welding Handbook, flat position. Standing: from memory."""
    lowest, highest = melting_tables.current_limits("mild-steel", size * INCH, 0.010)
    assert close(lowest, low, 1e-9)
    assert highest >= high
