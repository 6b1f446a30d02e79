"""Wire by mass, length and time, and the spool it is on. Beside each check: where its number comes from, its
standing.

Geometry is law, so most of these test the arithmetic and the densities. What has no published number that
could be read: the packing of a wound spool, the barrel diameters (no standard fixes them), the tables of ISO
544, the waste of field work.
"""

import math
from typing import Any

import pint
import pytest
from hypothesis import given
from hypothesis import strategies as st

from calculators import ranges, spool, wire_mass
from calculators.facts import spools, wires
from calculators.wire_left import WireLeft

INCH = 0.0254  # m, exactly
POUND = 0.45359237  # kg, exactly

# Metres in a kilogram, from density and diameter by hand. Standing: law (geometry). (density kg/m3, wire mm,
# m/kg)
METRES_PER_KILOGRAM = (
    (7850, 0.8, 253.43),
    (7850, 0.9, 200.24),
    (7850, 1.0, 162.2),
    (7850, 1.2, 112.64),
    (7850, 1.6, 63.36),
    (7950, 0.8, 250.24),
    (7950, 0.9, 197.72),
    (7950, 1.0, 160.16),
    (7950, 1.2, 111.22),
    (7950, 1.6, 62.56),
    (2700, 0.8, 736.83),
    (2700, 0.9, 582.19),
    (2700, 1.0, 471.57),
    (2700, 1.2, 327.48),
    (2700, 1.6, 184.21),
)

# Middle of each classification, mass % (AWS A5.10; from memory), the rest aluminum, and densities of the
# elements (CRC Handbook; from memory). Ideal mixing of the elements' volumes: law, good to about 1 % for
# these alloys.
ELEMENT_DENSITY = (("Al", 2699.0), ("Si", 2330.0), ("Mg", 1738.0), ("Mn", 7300.0))
COMPOSITION = (("4043", "Si", 5.25, 0.0), ("5356", "Mg", 5.0, 0.125), ("5183", "Mg", 4.75, 0.75))

DIAMETERS = st.floats(0.0005, 0.0025)
MASSES = st.floats(0.01, 100.0)
CORES = st.floats(0.02, 0.25)
HEIGHTS = st.floats(0.002, 0.5)
SHARES = st.floats(0.0, 1.0)


def close(actual, expected, relative):
    return actual == pytest.approx(expected, rel=relative)


# --- Mass and length


@pytest.mark.parametrize(("density", "size", "metres"), METRES_PER_KILOGRAM)
def test_metres_in_a_kilogram(density, size, metres):
    assert close(wire_mass.wire_length(1.0, size / 1000.0, density), metres, 0.0001)


@pytest.mark.parametrize(("alloy", "element", "percent", "manganese"), COMPOSITION)
def test_aluminum_alloys_weigh_what_their_elements_do(alloy, element, percent, manganese):
    of = dict(ELEMENT_DENSITY)
    rest = 100.0 - percent - manganese
    mixed = 100.0 / (rest / of["Al"] + percent / of[element] + manganese / of["Mn"])
    assert close(wire_mass.density("aluminum", alloy)[0], mixed, 0.01)


def test_unknown_aluminum_holds_every_alloy_in_its_band():
    middle, band = wire_mass.density("aluminum")
    for alloy in ("4043", "5356", "5183"):
        assert middle * (1.0 - band) <= wire_mass.density("aluminum", alloy)[0] <= middle * (1.0 + band)


def test_wire_nobody_weighed_is_refused():
    for wire in (("copper", ""), ("mild-steel", "4043"), ("aluminum", "2319")):
        with pytest.raises(ValueError, match="no density"):
            wire_mass.density(*wire)


def test_the_handbook_constant_for_deposition_is_2_percent_below_geometry():
    """lb/h = 13.1 d^2 WFS for steel, d in inches, WFS in in/min: handbooks. Standing: from memory."""
    feed = 300.0 * INCH / 60.0
    pounds_per_hour = wire_mass.mass_per_length(0.035 * INCH, 7850.0) * feed * 3600.0 / POUND
    assert close(pounds_per_hour, 13.1 * 0.035**2 * 300.0, 0.025)
    assert close(pounds_per_hour * 0.96, 4.71, 0.002)  # law (geometry), with 96 % deposited


# --- Time


def test_a_15_kg_spool_of_1_mm_steel_lasts_304_minutes_at_8_metres_a_minute():
    """Standing: law (geometry), by hand."""
    length = wire_mass.wire_length(15.0, 1.0e-3, 7850.0)
    assert close(wire_mass.arc_time(length, 8.0 / 60.0) / 60.0, 304.1, 0.0003)


def test_a_10_pound_spool_of_030_steel_lasts_166_minutes_at_300_inches_a_minute():
    """Standing: law (geometry), by hand with 0.2836 lb/in3."""
    length = wire_mass.wire_length(10.0 * POUND, 0.030 * INCH, 7850.0)
    assert close(wire_mass.arc_time(length, 300.0 * INCH / 60.0) / 60.0, 166.3, 0.001)


def test_six_seconds_of_wire_times_ten_is_a_minutes_feed():
    """Standing: common practice."""
    assert close(wire_mass.feed_measured(22.0 * INCH, 6.0) / INCH * 60.0, 220.0, 1e-12)


def test_5_percent_waste_leaves_19_of_20_pounds():
    """Waste of 5 % in field work. Standing: common practice."""
    assert close(wire_mass.usable(20.0, wires.WASTE), 19.0, 1e-12)
    assert close(wire_mass.needed(19.0, wires.WASTE), 20.0, 1e-12)


# --- Spool


@pytest.mark.parametrize(
    ("core", "full", "now", "left"), [(0.195, 0.270, 0.235, 0.4932), (0.100, 0.190, 0.150, 0.4789)]
)
def test_what_is_left_by_the_ratio_of_areas(core, full, now, left):
    """Standing: law (geometry), by hand."""
    assert spool.remaining_fraction(now, full, core) == pytest.approx(left, abs=0.00006)


def test_what_is_left_agrees_with_winding_it_turn_by_turn():
    """1.2 mm wire laid square on a 195 mm barrel, 80 turns a layer, the turns added one layer at a time."""
    wire, turns, core = 1.2e-3, 80, 0.195

    def wound(layers):
        return sum(turns * math.pi * (core + wire + 2.0 * wire * layer) for layer in range(layers))

    left = spool.remaining_fraction(core + 2.0 * wire * 15, core + 2.0 * wire * 30, core)
    assert close(left, wound(15) / wound(30), 1e-9)


def test_the_mass_agrees_with_winding_it_turn_by_turn():
    """The same winding: a square lay fills pi/4 of its space. Standing: law (geometry)."""
    wire, turns, core, layers = 1.2e-3, 80, 0.195, 30
    length = sum(turns * math.pi * (core + wire + 2.0 * wire * layer) for layer in range(layers))
    outer = core + 2.0 * wire * layers
    mass = spool.wound_mass(outer, core, turns * wire, 7850.0, math.pi / 4.0)
    assert close(mass, wire_mass.wire_mass(length, wire, 7850.0), 1e-9)


def test_a_new_300_mm_spool_holds_its_15_kg_within_the_packing_band():
    """Barrel 195, full 270, 98 mm between flanges, 15 kg of steel: usual sizes. Standing: from memory."""
    low, middle, high = (spool.wound_mass(0.270, 0.195, 0.098, 7850.0, packing) for packing in spool.packing("random"))
    assert low < 15.0 < high
    assert close(middle, 15.0, 0.10)


def test_packing_lies_below_the_densest_lay_there_is():
    """Nested round wire fills pi/sqrt(12), square lay pi/4. Standing: law (geometry)."""
    assert close(math.pi / math.sqrt(12.0), 0.9069, 0.0001)
    for winding in ("random", "layer", "not-known"):
        low, middle, high = spool.packing(winding)
        assert low < middle < high < math.pi / math.sqrt(12.0)
        assert low <= math.pi / 4.0
    with pytest.raises(ranges.OutOfRange) as refusal:
        spool.wound_mass(0.270, 0.195, 0.098, 7850.0, 0.91)
    assert refusal.value.name == "packing"
    with pytest.raises(ValueError, match="no packing"):
        spool.packing("loose")


def test_the_barrel_agrees_with_winding_it_turn_by_turn():
    """Square lay again, and its mass taken for that of a label. Standing: law (geometry)."""
    wire, turns, core, layers = 1.0e-3, 95, 0.110, 35
    length = sum(turns * math.pi * (core + wire + 2.0 * wire * layer) for layer in range(layers))
    mass = wire_mass.wire_mass(length, wire, 7850.0)
    outer, width = core + 2.0 * wire * layers, turns * wire
    assert close(spool.core_for(mass, outer, width, 7850.0, math.pi / 4.0), core, 1e-9)
    assert close(spool.packing_of(mass, outer, core, width, 7850.0), math.pi / 4.0, 1e-9)


@pytest.mark.parametrize(("wire", "turns"), [(0.8e-3, 120), (1.2e-3, 80), (1.6e-3, 60)])
def test_nested_lay_lies_between_square_lay_and_the_densest_there_is(wire, turns):
    """Each layer in the grooves of the one below, a turn fewer in every other, wound turn by turn. Law (geometry)."""
    core, layers, rise = 0.195, 40, math.sqrt(3.0) / 2.0 * wire
    length = 0.0
    for layer in range(layers):
        length += (turns - layer % 2) * math.pi * (core + wire + 2.0 * rise * layer)
    outer, mass = core + 2.0 * (wire + rise * (layers - 1)), wire_mass.wire_mass(length, wire, 7850.0)
    packing = spool.packing_of(mass, outer, core, turns * wire, 7850.0)
    assert math.pi / 4.0 < packing < math.pi / math.sqrt(12.0)
    assert spool.packing("layer")[0] < packing
    assert close(spool.core_for(mass, outer, turns * wire, 7850.0, packing), core, 1e-9)


# What is on the label of each, and its bore: the barrel is wider than that. Standing: from memory.
LABELS = (("s100", 1.0, 0.0165), ("s200", 5.0, 0.0505), ("s300", 15.0, 0.0505))


@pytest.mark.parametrize(("name", "label", "bore"), LABELS)
def test_a_named_spool_holds_what_its_label_says(name, label, bore):
    rim, width = WireLeft.size_of(name) or (0.0, 0.0)
    for packing in spool.packing("not-known"):
        core = spool.core_for(label, 0.92 * rim, width, 7850.0, packing)
        assert bore < core < 0.8 * rim


def test_named_spools_are_those_of_the_specification():
    """MIL-E-23765B, 1985, forms 3a and 3b: small spool with 4 in rims, large with 12 in. Standing: published, seen."""
    sizes = {name: rim for name, rim, _ in spools.SPOOLS}
    assert close(sizes["s100"], 4.0 * INCH, 0.02)
    assert close(sizes["s300"], 12.0 * INCH, 0.02)
    assert WireLeft.size_of("measured") is None


def test_packages_are_those_of_the_trade():
    """Small spools one to a few pounds, medium 10 to 15, large 25 to 35, coils 50 to 60. Standing: common practice."""
    in_pounds = {name: (low / POUND, high / POUND) for name, (low, high) in spools.PACKAGES}
    assert in_pounds["small"] == pytest.approx((1.0, 2.5))
    assert in_pounds["medium"] == pytest.approx((10.0, 15.0))
    assert in_pounds["large"] == pytest.approx((25.0, 35.0))
    assert in_pounds["coil"] == pytest.approx((50.0, 60.0))


def test_packages_keep_the_limits_of_the_specifications():
    """MIL-W-10430D: a small spool 2 1/2 lb or less; MIL-E-23765B: coils 65 lb and under. Standing: published, seen."""
    most = {name: high / POUND for name, (_, high) in spools.PACKAGES}
    assert most["small"] <= 2.5 * (1.0 + 1e-9)
    assert most["coil"] <= 65.0


@pytest.mark.parametrize(
    ("package", "name", "core"), [("small", "s100", 0.045), ("medium", "s200", 0.100), ("large", "s300", 0.195)]
)
def test_a_package_fits_on_its_spool(package, name, core):
    """The most it holds, wound as usual on a usual barrel, stays below the rim. Law (geometry); barrels from memory."""
    rim, width = WireLeft.size_of(name) or (0.0, 0.0)
    for table, density in ((spools.PACKAGES, 7850.0), (spools.ALUMINUM_PACKAGES, 2700.0)):
        (most,) = [high for each, (_, high) in table if each == package]
        packing = spool.packing_of(most, rim, core, width, density)
        assert packing < math.pi / math.sqrt(12.0)


def test_a_rule_from_the_rim_is_twice_off_the_diameter():
    assert close(spool.wound_diameter(0.300, 0.0325), 0.235, 1e-12)


@pytest.mark.parametrize(
    ("now", "full", "core", "name"),
    [
        (0.280, 0.270, 0.195, "wound_diameter"),
        (0.190, 0.270, 0.195, "wound_diameter"),
        (math.nan, 0.270, 0.195, "wound_diameter"),
        (0.195, 0.195, 0.195, "winding_height"),
        (0.200, 0.190, 0.195, "full_diameter"),
        (0.200, 0.270, 0.005, "core_diameter"),
        (0.200, 1.100, 0.195, "full_diameter"),
    ],
)
def test_a_spool_that_cannot_be_is_refused_by_name(now, full, core, name):
    with pytest.raises(ranges.OutOfRange) as refusal:
        spool.remaining_fraction(now, full, core)
    assert refusal.value.name == name


@pytest.mark.parametrize(
    ("ask", "name"),
    [
        (lambda: wire_mass.mass_per_length(0.0002, 7850.0), "wire_diameter"),
        (lambda: wire_mass.mass_per_length(0.007, 7850.0), "wire_diameter"),
        (lambda: wire_mass.mass_per_length(0.001, 999.0), "density"),
        (lambda: wire_mass.wire_length(-1.0, 0.001, 7850.0), "wire_mass"),
        (lambda: wire_mass.wire_length(math.inf, 0.001, 7850.0), "wire_mass"),
        (lambda: wire_mass.wire_mass(-1.0, 0.001, 7850.0), "wire_length"),
        (lambda: wire_mass.usable(1.0, 0.51), "waste"),
        (lambda: wire_mass.needed(1.0, -0.01), "waste"),
        (lambda: wire_mass.arc_time(1.0, 0.004), "wire_feed_speed"),
        (lambda: wire_mass.arc_time(math.nan, 0.1), "wire_length"),
        (lambda: wire_mass.length_fed(1.1, 1.0), "wire_feed_speed"),
        (lambda: wire_mass.length_fed(0.1, -1.0), "arc_time"),
        (lambda: wire_mass.feed_measured(1.0, 0.0), "time"),
        (lambda: wire_mass.feed_measured(-1.0, 6.0), "wire_length"),
        (lambda: spool.wound_diameter(0.300, 0.146), "wound_diameter"),
        (lambda: spool.wound_diameter(0.04, 0.0), "flange_diameter"),
        (lambda: spool.wound_diameter(0.3, -0.001), "depth"),
        (lambda: spool.wound_diameter_at(1.01, 0.27, 0.195), "remaining_fraction"),
        (lambda: spool.wound_mass(0.27, 0.195, 0.6, 7850.0, 0.75), "width"),
        (lambda: spool.wound_mass(0.19, 0.195, 0.1, 7850.0, 0.75), "wound_diameter"),
        (lambda: spool.wound_mass(0.27, 0.195, 0.1, 999.0, 0.75), "density"),
        (lambda: spool.wound_diameter_at(-0.01, 0.27, 0.195), "remaining_fraction"),
        (lambda: spool.wound_diameter_at(0.5, 0.27, 0.009), "core_diameter"),
        (lambda: spool.wound_diameter_at(0.5, 0.19, 0.195), "full_diameter"),
        (lambda: spool.wound_mass(0.27, 0.009, 0.1, 7850.0, 0.75), "core_diameter"),
        (lambda: spool.wound_mass(0.27, 0.195, 0.009, 7850.0, 0.75), "width"),
        (lambda: spool.wound_mass(0.27, 0.195, 0.1, 20000.5, 0.75), "density"),
        (lambda: spool.wound_mass(0.27, 0.195, 0.1, 7850.0, 0.39), "packing"),
        (lambda: spool.wound_diameter(1.01, 0.1), "flange_diameter"),
        (lambda: spool.wound_diameter(1.0, 0.501), "depth"),
        (lambda: spool.packing_of(-0.1, 0.27, 0.195, 0.1, 7850.0), "wire_mass"),
        (lambda: spool.packing_of(1000.1, 0.27, 0.195, 0.1, 7850.0), "wire_mass"),
        (lambda: spool.packing_of(15.0, 0.19, 0.195, 0.1, 7850.0), "wound_diameter"),
        (lambda: spool.packing_of(15.0, 0.1955, 0.195, 0.1, 7850.0), "winding_height"),
        (lambda: spool.packing_of(15.0, 0.27, 0.195, 0.009, 7850.0), "width"),
        (lambda: spool.packing_of(15.0, 0.27, 0.195, 0.51, 7850.0), "width"),
        (lambda: spool.packing_of(15.0, 0.27, 0.195, 0.1, 999.0), "density"),
        (lambda: spool.packing_of(15.0, 0.27, 0.195, 0.1, 20001.0), "density"),
        (lambda: spool.packing_of(15.0, 0.27, 0.009, 0.1, 7850.0), "core_diameter"),
        (lambda: spool.core_for(-0.1, 0.27, 0.1, 7850.0, 0.75), "wire_mass"),
        (lambda: spool.core_for(1000.1, 0.27, 0.1, 7850.0, 0.75), "wire_mass"),
        (lambda: spool.core_for(15.0, 0.009, 0.1, 7850.0, 0.75), "full_diameter"),
        (lambda: spool.core_for(15.0, 1.01, 0.1, 7850.0, 0.75), "full_diameter"),
        (lambda: spool.core_for(15.0, 0.27, 0.009, 7850.0, 0.75), "width"),
        (lambda: spool.core_for(15.0, 0.27, 0.51, 7850.0, 0.75), "width"),
        (lambda: spool.core_for(15.0, 0.27, 0.1, 999.0, 0.75), "density"),
        (lambda: spool.core_for(15.0, 0.27, 0.1, 20001.0, 0.75), "density"),
        (lambda: spool.core_for(15.0, 0.27, 0.1, 7850.0, 0.39), "packing"),
        (lambda: spool.core_for(15.0, 0.27, 0.1, 7850.0, 0.91), "packing"),
        (lambda: spool.core_for(40.0, 0.27, 0.1, 7850.0, 0.75), "core_squared"),
        (lambda: spool.core_for(15.0, 0.27, 0.1, 7850.0, math.nan), "packing"),
    ],
)
def test_what_is_out_of_range_is_refused_by_name(ask, name):
    with pytest.raises(ranges.OutOfRange) as refusal:
        ask()
    assert refusal.value.name == name


def test_the_ends_of_a_spool_s_ranges_are_taken():
    assert spool.packing_of(0.0, 0.27, 0.195, 0.1, 7850.0) == 0.0
    whole = math.pi / 4.0 * (1.0 - 0.01**2) * 0.5 * 20000.0
    assert close(spool.packing_of(1000.0, 1.0, 0.01, 0.5, 20000.0), 1000.0 / whole, 1e-12)
    thin = math.pi / 4.0 * (0.196**2 - 0.195**2) * 0.01 * 1000.0
    assert close(spool.packing_of(1.0, 0.196, 0.195, 0.01, 1000.0), 1.0 / thin, 1e-9)
    assert spool.core_for(0.0, 0.01, 0.01, 1000.0, 0.4) == pytest.approx(0.01)
    assert spool.core_for(0.0, 1.0, 0.5, 20000.0, 0.9069) == pytest.approx(1.0)
    heavy = 1000.0 / (20000.0 * 0.9069 * math.pi / 4.0 * 0.5)
    assert close(spool.core_for(1000.0, 1.0, 0.5, 20000.0, 0.9069), math.sqrt(1.0 - heavy), 1e-12)


# --- Properties


@given(MASSES, DIAMETERS, st.floats(2000.0, 9000.0))
def test_mass_and_length_are_inverse(mass, size, density):
    assert close(wire_mass.wire_mass(wire_mass.wire_length(mass, size, density), size, density), mass, 1e-12)


@given(MASSES, st.floats(0.0005, 0.00125), st.floats(2000.0, 9000.0))
def test_twice_the_diameter_is_a_quarter_of_the_length(mass, size, density):
    thin = wire_mass.wire_length(mass, size, density)
    assert close(wire_mass.wire_length(mass, 2.0 * size, density), thin / 4.0, 1e-12)


@given(st.floats(0.1, 1e4), st.floats(0.005, 1.0))
def test_length_feed_and_time_are_inverse(length, feed):
    time = wire_mass.arc_time(length, feed)
    assert close(wire_mass.length_fed(feed, time), length, 1e-12)
    if time >= 0.1:
        assert close(wire_mass.feed_measured(length, time), feed, 1e-12)


@given(MASSES, st.floats(0.0, 0.5))
def test_waste_there_and_back(mass, waste):
    assert close(wire_mass.needed(wire_mass.usable(mass, waste), waste), mass, 1e-12)


@given(SHARES, CORES, HEIGHTS)
def test_share_and_diameter_are_inverse(share, core, height):
    diameter = spool.wound_diameter_at(share, core + height, core)
    assert spool.remaining_fraction(diameter, core + height, core) == pytest.approx(share, abs=1e-8)


@given(CORES, HEIGHTS)
def test_an_empty_spool_is_0_and_a_full_one_1(core, height):
    assert spool.remaining_fraction(core, core + height, core) == 0.0
    assert spool.remaining_fraction(core + height, core + height, core) == 1.0


@given(st.floats(0.05, 0.2), st.floats(0.05, 0.5), st.floats(0.1, 0.9))
def test_share_left_is_the_ratio_of_the_masses(core, height, share):
    now, full = core + share * height, core + height
    masses = [spool.wound_mass(outer, core, 0.1, 7850.0, 0.75) for outer in (now, full)]
    assert close(spool.remaining_fraction(now, full, core), masses[0] / masses[1], 1e-9)
    assert masses[0] < masses[1]


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


def test_mass_length_and_time_keep_their_units(registry):
    wire: Any = wire_mass  # its annotations speak of plain numbers
    quantity = registry.Quantity
    size, density = quantity(0.035, "inch"), quantity(7850.0, "kg/m**3")
    length = wire.wire_length(quantity(11.0, "lb"), size, density)
    by_hand = 11.0 / (7850.0 * INCH**3 / POUND) / (math.pi / 4.0 * 0.035**2) / 12.0
    assert close(length.to("foot").magnitude, by_hand, 1e-9)
    assert close(wire.wire_mass(length, size, density).to("lb").magnitude, 11.0, 1e-9)
    time = wire.arc_time(wire.usable(length, 0.05), quantity(200.0, "inch/minute"))
    assert close(time.to("minute").magnitude, by_hand * 12.0 * 0.95 / 200.0, 1e-9)
    burnt = wire.length_fed(quantity(200.0, "inch/minute"), time)
    assert close(wire.needed(burnt, 0.05).to("foot").magnitude, by_hand, 1e-9)
    assert close(wire.feed_measured(burnt, time).to("inch/minute").magnitude, 200.0, 1e-9)


def test_the_spool_keeps_its_units(registry):
    on: Any = spool
    quantity = registry.Quantity
    core, full = quantity(195.0, "mm"), quantity(270.0, "mm")
    now = on.wound_diameter(quantity(11.811023622047244, "inch"), quantity(32.5, "mm"))
    left = on.remaining_fraction(now, full, core)
    assert close(left.to("").magnitude, 0.4932, 0.0002)
    assert close(on.wound_diameter_at(left, full, core).to("mm").magnitude, 235.0, 1e-9)
    mass = on.wound_mass(full, core, quantity(98.0, "mm"), quantity(7850.0, "kg/m**3"), 0.75)
    assert close(mass.to("kg").magnitude, math.pi / 4.0 * (0.27**2 - 0.195**2) * 0.098 * 7850.0 * 0.75, 1e-9)
