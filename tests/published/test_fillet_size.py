"""Fillet welds against the codes' tables, worked examples in print and a handbook's table: no number here is ours."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calculators import fillet_legs, fillet_strength, ranges
from calculators.facts import fillet_rules as facts

INCH = 0.0254  # m, exactly (international yard and pound agreement, 1959)
KIP = 1000 * 0.45359237 * 9.80665  # N: the same agreement and the standard gravity of 1901
KSI = KIP / INCH**2
KIP_PER_INCH = KIP / INCH
MPA = 1.0e6

# ---------------------------------------------------------------- sizes

# ANSI/AISC 360-05 table J2.4, as printed in Structural Steel Designer's Handbook (Brockenbrough and Merritt), table
# 5.6, and in the 2010 text; AWS D1.1 prints the same numbers. Standing: standard. (thinner part in, leg in): the ends
# of each band, which are "inclusive", and the first thickness past it.
TABLE_J2_4 = (
    (0.125, 1 / 8), (0.1875, 1 / 8), (0.25, 1 / 8), (0.2501, 3 / 16), (0.375, 3 / 16), (0.5, 3 / 16),
    (0.5001, 1 / 4), (0.5625, 1 / 4), (0.75, 1 / 4), (0.7501, 5 / 16), (0.8125, 5 / 16), (2.0, 5 / 16), (3.9, 5 / 16),
)  # fmt: skip


@pytest.mark.parametrize(("thickness", "leg"), TABLE_J2_4)
def test_smallest_leg_is_the_table_s(thickness, leg):
    assert fillet_legs.least_leg(thickness * INCH) == pytest.approx(leg * INCH, rel=1e-12)


def test_band_edges_hold_when_typed_in_millimetres():
    """A float that lands a last bit past 1/4, 1/2 or 3/4 in is still that thickness."""
    for millimetres, leg in ((6.35, 1 / 8), (12.7, 3 / 16), (19.05, 1 / 4)):
        for nudged in (millimetres / 1000, math.nextafter(millimetres / 1000, 1.0)):
            assert fillet_legs.least_leg(nudged) == pytest.approx(leg * INCH, rel=1e-12)


# AISC Design Examples v16.0. Standing: published by the body that writes the standard. J.1: a 1/4 in plate takes a leg
# of 1/8 in at least and of 3/16 in at most along its edge. J.2A: a 5/8 in part takes 1/4 in at least.
def test_sizes_of_the_design_examples():
    assert fillet_legs.least_leg(0.25 * INCH) == pytest.approx(INCH / 8)
    assert fillet_legs.largest_leg_along_edge(0.25 * INCH) == pytest.approx(3 / 16 * INCH)
    assert fillet_legs.least_leg(0.625 * INCH) == pytest.approx(INCH / 4)


# ANSI/AISC 360-10 J2.2b (text seen; standing: standard): under 1/4 in the thickness, from 1/4 in up 1/16 in less.
@pytest.mark.parametrize(
    ("thickness", "leg"), ((0.1875, 0.1875), (0.2499, 0.2499), (0.25, 0.1875), (0.375, 0.3125), (0.5, 0.4375))
)
def test_largest_leg_along_an_edge(thickness, leg):
    assert fillet_legs.largest_leg_along_edge(thickness * INCH) == pytest.approx(leg * INCH, rel=1e-9)


# ANSI/AISC 360-10 J2.2b: four times the leg. EN 1993-1-8 4.5.1(2): 6 a, and 30 mm at least. Standing: standard.
def test_shortest_length_that_counts():
    assert fillet_legs.shortest_length(INCH / 4) == pytest.approx(INCH)
    assert fillet_legs.shortest_length_eurocode(0.004) == pytest.approx(0.030)
    assert fillet_legs.shortest_length_eurocode(0.008) == pytest.approx(0.048)


# AWS D1.1, quoted on the society's forum (published): up to 1/16 in nothing, above it the gap is added to the leg,
# above 3/16 in the fit-up is corrected.
def test_gap_is_added_to_the_leg_above_a_sixteenth():
    assert fillet_legs.gap_taken_from_leg(INCH / 16) == 0.0
    assert fillet_legs.gap_taken_from_leg(INCH / 8) == INCH / 8
    assert fillet_legs.gap_taken_from_leg(3 / 16 * INCH) == 3 / 16 * INCH
    with pytest.raises(ranges.OutOfRange):
        fillet_legs.gap_taken_from_leg(0.19 * INCH)


# ---------------------------------------------------------------- leg and throat


# Leg and throat as listed in European practice, rounded to 0.1 mm: 6 mm leg is 4.2 mm throat (SCI P363; published, from
# memory); the others are Pythagoras: the throat is half the diagonal of the square on the leg.
@pytest.mark.parametrize(("leg", "throat"), ((3, 2.1), (4, 2.8), (5, 3.5), (6, 4.2), (8, 5.7), (10, 7.1), (12, 8.5)))
def test_throat_is_half_the_diagonal(leg, throat):
    assert fillet_legs.throat_of_leg(leg / 1000) * 1000 == pytest.approx(throat, abs=0.05)
    assert fillet_legs.throat_of_leg(leg / 1000) * 1000 == pytest.approx(math.dist((0, 0), (leg, leg)) / 2)


def test_a_leg_taken_for_a_throat_is_41_percent_off():
    """Trap: strength must go by the throat; by the leg it would come out 41 % too high."""
    stress = fillet_strength.allowable_weld_stress(70 * KSI, 1.0)
    right = stress * fillet_legs.throat_of_leg(INCH / 4)
    assert stress * INCH / 4 / right == pytest.approx(1.414, abs=0.001)
    assert right / KIP_PER_INCH == pytest.approx(3.71, abs=0.005)


# ---------------------------------------------------------------- strength of the weld, United States

# O. W. Blodgett, "Stress Allowables Affect Weldment Design" (1991), as reprinted in Shigley's Mechanical Engineering
# Design, table 9-6: allowable force on a fillet weld, kip for each inch. Standing: published.
FILLER_CLASSES = (110, 100, 90, 80, 70, 60)
SHIGLEY_9_6 = (
    (1, (23.33, 21.21, 19.09, 16.97, 14.85, 12.73)),
    (7 / 8, (20.41, 18.57, 16.70, 14.85, 12.99, 11.14)),
    (3 / 4, (17.50, 15.92, 14.32, 12.73, 11.14, 9.55)),
    (5 / 8, (14.58, 13.27, 11.93, 10.61, 9.28, 7.96)),
    (1 / 2, (11.67, 10.61, 9.54, 8.48, 7.42, 6.37)),
    (7 / 16, (10.21, 9.28, 8.35, 7.42, 6.50, 5.57)),
    (3 / 8, (8.75, 7.95, 7.16, 6.36, 5.57, 4.77)),
    (5 / 16, (7.29, 6.63, 5.97, 5.30, 4.64, 3.98)),
    (1 / 4, (5.83, 5.30, 4.77, 4.24, 3.71, 3.18)),
    (3 / 16, (4.38, 3.98, 3.58, 3.18, 2.78, 2.39)),
    (1 / 8, (2.92, 2.65, 2.39, 2.12, 1.86, 1.59)),
    (1 / 16, (1.46, 1.33, 1.19, 1.06, 0.930, 0.795)),
)


@pytest.mark.parametrize(("leg", "row"), SHIGLEY_9_6)
def test_allowable_force_is_blodgett_s(leg, row):
    for filler, expected in zip(FILLER_CLASSES, row, strict=True):
        stress = fillet_strength.allowable_weld_stress(filler * KSI, 1.0)
        # Their factor is 0.707, and some entries are multiples of a rounded one: 0.2 %.
        found = stress * fillet_legs.throat_of_leg(leg * INCH) / KIP_PER_INCH
        assert found == pytest.approx(expected, abs=0.006, rel=0.003)


# The AISC Manual's own constants for each sixteenth of leg, equations 8-2a and 8-2b: 1.392 and 0.928 kip/in for
# 70 ksi. Standing: published; from memory.
def test_strength_of_a_sixteenth():
    throat = fillet_legs.throat_of_leg(INCH / 16)
    assert fillet_strength.design_weld_stress(70 * KSI, 1.0) * throat / KIP_PER_INCH == pytest.approx(1.392, abs=0.0005)
    allowable = fillet_strength.allowable_weld_stress(70 * KSI, 1.0) * throat / KIP_PER_INCH
    assert allowable == pytest.approx(0.928, abs=0.0005)


# AISC Design Examples v16.0, example J.1: 3/16 in, 70 ksi: nominal 5.57 kip/in; two welds of 27 in with
# beta = 0.912 carry 206 kips (LRFD) and 137 kips (ASD). Standing: published. The beta is theirs, not ours.
def test_design_example_j_1():
    throat = fillet_legs.throat_of_leg(3 / 16 * INCH)
    length = 0.912 * 2 * 27 * INCH
    assert fillet_strength.design_weld_stress(70 * KSI, 1.0) * throat * length / KIP == pytest.approx(206, abs=0.5)
    assert fillet_strength.allowable_weld_stress(70 * KSI, 1.0) * throat * length / KIP == pytest.approx(137, abs=0.5)
    assert fillet_strength.allowable_weld_stress(70 * KSI, 1.0) * throat * 2.0 / KIP_PER_INCH == pytest.approx(
        5.57, abs=0.005
    )


# The same, example J.2A: 5/16 in, 70 ksi, 60 degrees: factor 1.40; two sides carry 19.5 kip/in (LRFD), 13.0 (ASD).
def test_design_example_j_2a():
    increase = fillet_strength.directional_increase(math.radians(60))
    assert increase == pytest.approx(1.40, abs=0.005)
    throat = 2 * fillet_legs.throat_of_leg(5 / 16 * INCH)
    assert fillet_strength.design_weld_stress(70 * KSI, increase) * throat / KIP_PER_INCH == pytest.approx(
        19.5, abs=0.05
    )
    found = fillet_strength.allowable_weld_stress(70 * KSI, increase) * throat / KIP_PER_INCH
    assert found == pytest.approx(13.0, abs=0.05)


# M. E. Haque, "Weld Connections", course notes, example 1: a 3/4 in weld 8 in long, 70 ksi, LRFD, carries 133.62 kips
# along, 200.4 across and 172.7 at 45 degrees. Standing: published. Its factor at 45 degrees is 1.2925, where the
# equation it prints gives 1.2973: hence the wider tolerance there.
@pytest.mark.parametrize(("degrees", "kips", "tolerance"), ((0, 133.62, 0.1), (90, 200.4, 0.1), (45, 172.7, 0.8)))
def test_course_notes(degrees, kips, tolerance):
    stress = fillet_strength.design_weld_stress(70 * KSI, fillet_strength.directional_increase(math.radians(degrees)))
    assert stress * fillet_legs.throat_of_leg(0.75 * INCH) * 8 * INCH / KIP == pytest.approx(kips, abs=tolerance)


# ---------------------------------------------------------------- strength of the parts, United States


# AISC Design Examples v16.0, example J.1: 1/4 in of 65 ksi beside two welds of 27 in: rupture 395 kips (LRFD), 264
# kips (ASD). Standing: published. A yield strength as high as the tensile one takes yielding out of the way.
def test_rupture_of_the_plate_in_design_example_j_1():
    length = 2 * 27 * INCH
    design = fillet_strength.design_metal_strength(0.25 * INCH, 65 * KSI, 65 * KSI) * length / KIP
    assert design == pytest.approx(395, abs=0.5)
    allowable = fillet_strength.allowable_metal_strength(0.25 * INCH, 65 * KSI, 65 * KSI) * length / KIP
    assert allowable == pytest.approx(264, abs=0.8)  # they halve a rounded 527


# AISC Manual equations 9-2 and 9-3: the least thickness in inches that matches the rupture of D sixteenths of 70 ksi
# weld is 3.09 D / Fu for one line and 6.19 D / Fu for two. Standing: published; from memory.
@pytest.mark.parametrize(("sixteenths", "ksi"), ((4, 58), (5, 65), (3, 58), (8, 65)))
def test_metal_as_thick_as_the_manual_says_matches_the_weld(sixteenths, ksi):
    weld = fillet_strength.design_weld_stress(70 * KSI, 1.0) * fillet_legs.throat_of_leg(sixteenths / 16 * INCH)
    for constant, lines in ((3.09, 1), (6.19, 2)):
        thickness = constant * sixteenths / ksi * INCH
        metal = fillet_strength.design_metal_strength(thickness, ksi * KSI, ksi * KSI)
        assert metal == pytest.approx(weld * lines, rel=0.002)


def test_yielding_counts_where_it_comes_first():
    """Second method, both sums by hand: A36, 1/4 in: 0.6 x 36 x 0.25 / 1.5 = 3.6; 0.6 x 58 x 0.25 / 2 = 4.35."""
    found = fillet_strength.allowable_metal_strength(0.25 * INCH, 36 * KSI, 58 * KSI)
    assert found / KIP_PER_INCH == pytest.approx(3.6, rel=1e-9)
    # LRFD: 0.6 x 36 x 0.25 = 5.4; 0.75 x 0.6 x 58 x 0.25 = 6.525.
    found = fillet_strength.design_metal_strength(0.25 * INCH, 36 * KSI, 58 * KSI)
    assert found / KIP_PER_INCH == pytest.approx(5.4, rel=1e-9)
    # 50/55: the other way about, 0.6 x 50 x 0.25 = 7.5; 0.75 x 0.6 x 55 x 0.25 = 6.1875.
    found = fillet_strength.design_metal_strength(0.25 * INCH, 50 * KSI, 55 * KSI)
    assert found / KIP_PER_INCH == pytest.approx(6.1875, rel=1e-9)


# ---------------------------------------------------------------- Eurocode

# EN 1993-1-8 equation 4.4 worked for each grade: fvw,d in N/mm2. Standing: computed by hand from the printed formula;
# 222.8 and 241.2 times 4.2 mm of throat are printed as 0.94 and 1.01 kN/mm in SCI P363 (published; from memory).
EUROCODE = (
    ("s235", 360, 207.8), ("s275", 410, 222.8), ("s275", 430, 233.7), ("s355", 470, 241.2),
    ("s355", 490, 251.5), ("s355", 510, 261.7), ("s460", 540, 249.4),
)  # fmt: skip


@pytest.mark.parametrize(("steel", "ultimate", "expected"), EUROCODE)
def test_eurocode_weld_strength(steel, ultimate, expected):
    factor = dict(facts.CORRELATION_FACTORS)[steel]
    assert fillet_strength.eurocode_weld_stress(ultimate * MPA, factor, 1.0) / MPA == pytest.approx(expected, abs=0.06)


# SCI P363 (published; from memory): 6 mm leg, 4.2 mm throat: S275 0.94 along and 1.15 kN/mm across, S355 1.01 and 1.24.
@pytest.mark.parametrize(
    ("steel", "ultimate", "along", "across"), (("s275", 410, 0.94, 1.15), ("s355", 470, 1.01, 1.24))
)
def test_blue_book_strengths(steel, ultimate, along, across):
    factor = dict(facts.CORRELATION_FACTORS)[steel]
    increase = fillet_strength.directional_increase_eurocode(math.pi / 2)
    found = fillet_strength.eurocode_weld_stress(ultimate * MPA, factor, 1.0) * 0.0042
    assert found / 1e6 == pytest.approx(along, abs=0.005)
    found = fillet_strength.eurocode_weld_stress(ultimate * MPA, factor, increase) * 0.0042
    assert found / 1e6 == pytest.approx(across, abs=0.005)


# "Steel Buildings in Europe, Multi-storey steel buildings, Part 5: Joint design", 2.2.6 (seen; standing: published):
# two fillets match the plate in tension when the throat is 0.46, 0.48, 0.55 or 0.74 of its thickness. The yield and
# tensile strengths are those of EN 1993-1-1 table 3.1.
@pytest.mark.parametrize(
    ("steel", "yielding", "ultimate", "share"),
    (("s235", 235, 360, 0.46), ("s275", 275, 430, 0.48), ("s355", 355, 510, 0.55), ("s460", 460, 550, 0.74)),
)
def test_full_strength_double_fillet(steel, yielding, ultimate, share):
    increase = fillet_strength.directional_increase_eurocode(math.pi / 2)
    stress = fillet_strength.eurocode_weld_stress(ultimate * MPA, dict(facts.CORRELATION_FACTORS)[steel], increase)
    assert yielding * MPA / (2 * stress) == pytest.approx(share, abs=0.005)


def test_directional_increase_of_the_eurocode_is_not_the_one_with_twice_the_cosine():
    """Trap: sqrt(3 / (1 + 2 cos2)) takes the angle to the throat; with the angle to the weld it would give 1.73."""
    assert fillet_strength.directional_increase_eurocode(math.pi / 2) == pytest.approx(1.2247, abs=0.0001)
    assert fillet_strength.directional_increase_eurocode(0.0) == pytest.approx(1.0)


@given(st.floats(0.0, math.pi / 2))
def test_directional_increase_by_the_stresses_on_the_throat(angle):
    """Second method: the standard's equivalent stress from a unit force, its parts on a throat at 45 degrees."""
    across = math.sin(angle) / math.sqrt(2.0)
    equivalent = math.sqrt(across**2 + 3.0 * (across**2 + math.cos(angle) ** 2))
    found = fillet_strength.directional_increase_eurocode(angle)
    assert found == pytest.approx(math.sqrt(3.0) / equivalent, rel=1e-12)
    # The second limit, 0.9 fu / 1.25 on the tension alone, is never the one that counts, even at the least factor 0.8.
    assert found * across / (math.sqrt(3.0) * 0.8 * 1.25) < 0.9 / 1.25


# ANSI/AISC 360 equation J2-5 at the angles of the Manual's table (published; from memory).
@pytest.mark.parametrize(
    ("degrees", "factor"),
    ((0, 1.0), (15, 1.066), (30, 1.177), (45, 1.297), (60, 1.403), (75, 1.475), (90, 1.5)),
)
def test_directional_increase_of_aisc(degrees, factor):
    assert fillet_strength.directional_increase(math.radians(degrees)) == pytest.approx(factor, abs=0.0006)


# ---------------------------------------------------------------- filler classes and steels held


# The class number is the strength (AWS A5.18: 70 is 70 ksi, 480 MPa). A certificate's 82 ksi is no class.
def test_filler_class_is_its_own_number():
    for name, strength in facts.ELECTRODE_STRENGTHS:
        assert strength / KSI == pytest.approx(float(name.removesuffix("-ksi")), rel=1e-12)
    assert [name for name, _ in facts.ELECTRODE_STRENGTHS if name.startswith("7")] == ["70-ksi"]


# AISC Design Examples v16.0, J.1: A572 grade 50 has 50 and 65 ksi. A36: 36 and 58 ksi, as in the Design Examples. The S
# numbers are the yield strength in N/mm2 (EN 10025).
def test_steels_are_the_published_ones():
    found = {name: (yielding, ultimate) for name, yielding, ultimate in facts.STEELS}
    assert found["a572-50"] == pytest.approx((50 * KSI, 65 * KSI))
    assert found["a36"] == pytest.approx((36 * KSI, 58 * KSI))
    for name, (yielding, ultimate) in found.items():
        if name.startswith("s"):
            assert yielding == float(name[1:]) * MPA
            assert ultimate > yielding


# ---------------------------------------------------------------- properties


@given(st.floats(0.0005, 0.05), st.floats(1.01, 2.0))
def test_strength_grows_as_the_leg(leg, times):
    assert fillet_legs.throat_of_leg(leg * times) == pytest.approx(times * fillet_legs.throat_of_leg(leg), rel=1e-12)
    assert fillet_legs.leg_of_throat(fillet_legs.throat_of_leg(leg)) == pytest.approx(leg, rel=1e-12)


@given(st.floats(0.003, 0.099), st.floats(0.0, 0.001))
def test_sizes_never_shrink_with_thickness_but_at_the_quarter_inch_edge(thickness, more):
    assert fillet_legs.least_leg(thickness + more) >= fillet_legs.least_leg(thickness)
    below = thickness < 0.25 * INCH * (1 - 1e-9) and thickness + more >= 0.25 * INCH * (1 - 1e-9)
    if not below:
        assert fillet_legs.largest_leg_along_edge(thickness + more) >= fillet_legs.largest_leg_along_edge(thickness)


@given(st.floats(0.0, math.pi / 2), st.floats(100e6, 1200e6))
def test_limit_state_is_half_as_much_again_as_allowable(angle, strength):
    """0.75 x 2.00 = 1.5 whatever the angle: the two American forms differ by the load's own factor only."""
    increase = fillet_strength.directional_increase(angle)
    assert 1.0 <= increase <= 1.5
    allowable = fillet_strength.allowable_weld_stress(strength, increase)
    assert fillet_strength.design_weld_stress(strength, increase) == pytest.approx(1.5 * allowable, rel=1e-12)
