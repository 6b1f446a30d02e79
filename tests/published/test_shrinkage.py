"""Weld shrinkage against published formulas and TWI's rules of thumb: expected numbers are copied or worked by hand."""

import math

import pytest

from calculators import distortion

INCH = 0.0254

# (area, thickness, root opening, shrinkage, unit of length in m): S = 0.2 A/t + 0.05 d by hand. Spraragen and Ettinger,
# in the AWS Welding Handbook, volume 1, and Masubuchi, Analysis of Welded Structures; from memory.
BUTT_BY_HAND = (
    (0.10, 0.5, 0.125, 0.0463, INCH),
    (0.25, 0.75, 0.125, 0.0729, INCH),
    (60.0, 10.0, 2.0, 1.30, 0.001),
    (120.0, 15.0, 3.0, 1.75, 0.001),
    (40.0, 8.0, 0.0, 1.00, 0.001),
)


@pytest.mark.parametrize(("area", "thickness", "opening", "expected", "unit"), BUTT_BY_HAND)
def test_butt_weld_equals_the_formula_by_hand(area, thickness, opening, expected, unit):
    found = distortion.butt_shrinkage(area * unit * unit, thickness * unit, opening * unit)
    assert found / unit == pytest.approx(expected, rel=0.002)


@pytest.mark.parametrize(
    ("area", "thickness", "expected", "unit"),
    # Blodgett, Design of Welded Structures, section 7.7: 0.10 A/t, by hand; the formula seen quoted.
    [(0.0312, 0.25, 0.0125, INCH), (60.0, 10.0, 0.60, 0.001), (0.098, 0.5, 0.0196, INCH)],
)
def test_mean_width_rule_equals_the_formula_by_hand(area, thickness, expected, unit):
    found = distortion.butt_shrinkage_of_mean_width(area * unit * unit, thickness * unit)
    assert found / unit == pytest.approx(expected, rel=0.005)


@pytest.mark.parametrize(
    ("joint", "leg", "thickness", "expected", "unit"),
    # AWS Welding Handbook, volume 1: 0.04 in (1.02 mm) for T joints, 0.06 in (1.52 mm) for lap joints; from memory.
    [
        ("tee-fillets", 0.25, 0.5, 0.02, INCH),
        ("tee-fillets", 6.0, 12.0, 0.51, 0.001),
        ("lap-fillets", 0.25, 0.5, 0.03, INCH),
        ("lap-fillets", 6.0, 12.0, 0.76, 0.001),
    ],
)
def test_fillets_equal_the_handbook_rule(joint, leg, thickness, expected, unit):
    found = distortion.fillet_shrinkage(joint, leg * unit, thickness * unit, 1.0)
    assert found / unit == pytest.approx(expected, rel=0.01)


# ---------------------------------------------------------------- TWI's allowances, seen


@pytest.mark.parametrize("opening", [2.0, 3.0, 4.0])
@pytest.mark.parametrize("thickness", [8.0, 10.0, 12.0])
def test_a_60_degree_v_lies_by_the_allowance_of_twi(thickness, opening):
    """TWI, technical FAQ on shrinkage allowance: 1.5 to 3 mm for each 60° V butt weld. The formula, from memory, has
    to reach that, and half more or less is its scatter.
    """
    width = opening + 2.0 * thickness * math.tan(math.radians(30.0))
    area = distortion.weld_area(thickness / 1000.0, width / 1000.0, opening / 1000.0)
    shrinkage = distortion.butt_shrinkage(area, thickness / 1000.0, opening / 1000.0) * 1000.0
    assert 1.5 * 0.9 < shrinkage < 3.0


def test_the_largest_fillet_of_the_allowance_gives_the_allowance():
    """TWI, the same: 0.8 mm where the leg does not exceed 3/4 of the thickness. The handbook's rule gives 0.76 mm."""
    found = distortion.fillet_shrinkage("tee-fillets", 0.75 * 0.012, 0.012, 1.0)
    assert found * 1000.0 == pytest.approx(0.8, rel=0.06)
    assert distortion.RULE_FILLET == 0.0008
    assert distortion.RULE_FILLET_LEG == 0.75
    assert distortion.RULE_BUTT == (0.0015, 0.003)


def test_shrinkage_along_is_the_allowance_of_twi():
    """TWI, the same: 3 mm per 3 m of butt weld, 0.8 mm per 3 m of fillet."""
    assert distortion.shrinkage_along("butt", 3.0) == pytest.approx(0.003)
    assert distortion.shrinkage_along("fillet", 3.0) == pytest.approx(0.0008)
    assert distortion.shrinkage_along("fillet", 6.0) == pytest.approx(0.0016)


# ---------------------------------------------------------------- traps


def test_the_inch_only_form_fed_with_millimetres_is_not_used():
    """5.08 A/t + 1.27 d gives millimetres from inches: 0.1 in2, 0.5 in, 0.125 in -> 1.1747 mm. With millimetres it
    gives 25.4 times too much: 33 mm for a 10 mm plate.
    """
    inches = 5.08 * 0.1 / 0.5 + 1.27 * 0.125
    assert inches == pytest.approx(1.1747, abs=0.0001)
    found = distortion.butt_shrinkage(0.1 * INCH * INCH, 0.5 * INCH, 0.125 * INCH) * 1000.0
    assert found == pytest.approx(inches, rel=1e-9)
    misused = 5.08 * 60.0 / 10.0 + 1.27 * 2.0
    assert distortion.butt_shrinkage(60e-6, 0.010, 0.002) * 1000.0 < misused / 20.0


@pytest.mark.parametrize("scale", [0.5, 2.0, 25.4])
def test_butt_formulas_are_homogeneous(scale):
    """All lengths twice as large: twice the shrinkage. The inch-only form fails this once its unit changes."""
    base = distortion.butt_shrinkage(10e-6, 0.003, 0.0005)
    scaled = distortion.butt_shrinkage(10e-6 * scale * scale, 0.003 * scale, 0.0005 * scale)
    assert scaled == pytest.approx(base * scale)


def test_a_contractors_table_that_does_not_follow_from_its_own_groove_is_not_used():
    """A method statement seen prints 0.1 A/t and 0.96 mm for a 45° bevel, 10 mm, root opening 2, root face 2. Its own
    groove is 2 x 10 + 8 x 8 / 2 x tan 45° = 52 mm2, which gives 0.52 mm.
    """
    area = 2.0 * 10.0 + 8.0 * 8.0 / 2.0 * math.tan(math.radians(45.0))
    found = distortion.butt_shrinkage_of_mean_width(area * 1e-6, 0.010) * 1000.0
    assert found == pytest.approx(0.52)


# ---------------------------------------------------------------- how it scales


def test_the_lower_formula_is_half_the_higher_without_a_gap():
    for area, thickness in ((40e-6, 0.008), (120e-6, 0.015), (500e-6, 0.030)):
        lower = distortion.butt_shrinkage_of_mean_width(area, thickness)
        assert distortion.butt_shrinkage(area, thickness, 0.0) == pytest.approx(2.0 * lower)
        assert distortion.butt_shrinkage(area, thickness, 0.003) > 2.0 * lower


def test_more_metal_and_wider_gap_pull_more_thicker_plate_less():
    assert distortion.butt_shrinkage(80e-6, 0.010, 0.002) > distortion.butt_shrinkage(60e-6, 0.010, 0.002)
    assert distortion.butt_shrinkage(60e-6, 0.010, 0.003) > distortion.butt_shrinkage(60e-6, 0.010, 0.002)
    assert distortion.butt_shrinkage(60e-6, 0.012, 0.002) < distortion.butt_shrinkage(60e-6, 0.010, 0.002)


@pytest.mark.parametrize("joint", [name for name, _ in distortion.FILLET_COEFFICIENTS])
def test_fillet_shrinkage_goes_with_leg_and_share_and_against_thickness(joint):
    base = distortion.fillet_shrinkage(joint, 0.006, 0.012, 1.0)
    assert distortion.fillet_shrinkage(joint, 0.012, 0.012, 1.0) == pytest.approx(2.0 * base)
    assert distortion.fillet_shrinkage(joint, 0.006, 0.024, 1.0) == pytest.approx(base / 2.0)
    assert distortion.fillet_shrinkage(joint, 0.006, 0.012, 0.5) == pytest.approx(base / 2.0)


def test_area_of_square_groove_is_gap_times_thickness():
    assert distortion.weld_area(0.006, 0.002, 0.002) == pytest.approx(0.006 * 0.002)
