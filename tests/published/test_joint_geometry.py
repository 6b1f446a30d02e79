"""Fillets, grooves, plugs and slots: areas and throats against published sums, and against areas counted otherwise.

Geometry is law, so a published number can only test the arithmetic and what the letters mean. What has no published
number that could be read: the curved sides of J and U grooves, skewed and gapped fillets, plugs and slots. Those are
checked by a second method: the width of the weld measured at many heights, and the polygon that is drawn.
"""

import itertools
import math

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from calculators import fillet_geometry, groove_geometry, ranges
from calculators.drawings.joint_outline import Outline, whole
from calculators.joint_section import BEVELLED, CURVED, FILLETS, GROOVES, JOINTS, LINES
from tests.published.joints import INCH, MILLIMETRE, POUND, SQUARE, a_joint, degrees, section

STEEL = 7850.0  # kg/m3
FOOT = 12.0 * INCH


def square_millimetres(joint, **sizes):
    return section(joint, **sizes).area * 1e6


# ---------------------------------------------------------------- fillets

# TWI Job Knowledge 95, "Calculating weld volume and weight" (July 2008): the area is half the square of the leg;
# published, seen. Times 7850 kg/m3 by hand. (leg mm, kg/m)
FILLETS_IN_KILOGRAMS = ((3, 0.0353), (4, 0.0628), (5, 0.0981), (6, 0.1413), (8, 0.2512), (10, 0.3925))
# A filler metal handbook works 0.5 x 0.5 in x 0.5 in x 12 in x 0.283 lb/in3 = 0.424 lb for a foot of 1/2 in fillet;
# published, seen. The others are the same sum by hand. (leg in, lb/ft)
FILLETS_IN_POUNDS = (
    (0.125, 0.0265),
    (0.1875, 0.0597),
    (0.25, 0.106),
    (0.3125, 0.166),
    (0.375, 0.239),
    (0.5, 0.424),
    (0.625, 0.663),
    (0.75, 0.955),
    (1.0, 1.698),
)


@pytest.mark.parametrize(("leg", "kilograms"), FILLETS_IN_KILOGRAMS)
def test_fillet_weighs_what_half_the_square_of_its_leg_does(leg, kilograms):
    assert section("fillet", leg=leg).area * STEEL == pytest.approx(kilograms, abs=5.1e-5)


@pytest.mark.parametrize(("leg", "pounds"), FILLETS_IN_POUNDS)
def test_fillet_weighs_what_the_handbook_s_sum_says(leg, pounds):
    pounds_per_foot = section("fillet", leg=leg * 25.4).area * 7833.4 * FOOT / POUND  # 0.283 lb/in3
    assert pounds_per_foot == pytest.approx(pounds, rel=4e-3)


def test_unequal_legs_take_half_their_product():
    # TWI Job Knowledge 95: Z1 x Z2 / 2; published, seen. 6 x 9 / 2 by hand.
    assert square_millimetres("fillet", leg=6, second_leg=9) == pytest.approx(27.0)


def test_fillet_with_legs_a_tenth_too_long_is_the_published_example():
    # weldinganswers.com, "Calculating Weld Metal Requirements by Hand": 1/4 in with 10 % over is 0.275 in, 0.0378 in2;
    # 76.5 in of it 2.89 in3; published, seen.
    area = section("fillet", leg=0.275 * 25.4).area / (INCH * INCH)
    assert area == pytest.approx(0.0378, abs=5e-5)
    assert area * 76.5 == pytest.approx(2.89, abs=5e-3)


def test_three_eighths_fillet_a_tenth_over_is_the_published_volume():
    # Welding Design, "Pre-Calculating Wire-Feed Speed, Travel Speed, and Voltage" (November 2009): 0.4125 in leg takes
    # 1.02 in3 for each foot; published, seen.
    assert section("fillet", leg=0.4125 * 25.4).area * FOOT / INCH**3 == pytest.approx(1.02, abs=5e-3)


# a = z / sqrt(2), by hand; EN ISO 2553 and AWS A3.0 define both, from memory. (leg mm, throat mm)
THROATS = ((3, 2.12), (4, 2.83), (5, 3.54), (6, 4.24), (8, 5.66), (10, 7.07), (12, 8.49))


@pytest.mark.parametrize(("leg", "throat"), THROATS)
def test_throat_of_an_equal_fillet(leg, throat):
    assert section("fillet", leg=leg).throat / MILLIMETRE == pytest.approx(throat, abs=0.005)
    assert fillet_geometry.leg_for_throat(throat * MILLIMETRE) / MILLIMETRE == pytest.approx(leg, abs=0.01)


# L1 L2 / sqrt(L1^2 + L2^2), by hand: geometry, law. (leg, other leg, throat; all mm)
UNEQUAL_THROATS = ((6, 9, 4.9923), (5, 8, 4.2400), (6.35, 9.525, 5.2835))


@pytest.mark.parametrize(("leg", "second", "throat"), UNEQUAL_THROATS)
def test_throat_of_an_unequal_fillet(leg, second, throat):
    assert section("fillet", leg=leg, second_leg=second).throat / MILLIMETRE == pytest.approx(throat, abs=5e-4)


def test_leg_is_not_throat():
    # The commonest mistake on a drawing: the same number taken for the other doubles the metal or halves it.
    by_leg = square_millimetres("fillet", leg=5)
    by_throat = square_millimetres("fillet", leg=fillet_geometry.leg_for_throat(5 * MILLIMETRE) / MILLIMETRE)
    assert by_leg == pytest.approx(12.5)
    assert by_throat == pytest.approx(25.0)  # a^2


def test_a_millimetre_on_five_is_44_percent_more():
    assert square_millimetres("fillet", leg=6) / square_millimetres("fillet", leg=5) == pytest.approx(1.44)


def test_legs_grown_by_the_gap_keep_the_throat():
    # AWS D1.1, fit-up of fillets: over 1/16 in the legs grow by the opening, or the throat must be shown to be there;
    # quoted, seen. With equal legs at a right angle growing by the gap is exactly enough.
    tight = section("fillet", leg=8)
    open_joint = section("fillet", leg=8, root_gap=3)
    assert open_joint.throat == pytest.approx(tight.throat)
    assert open_joint.legs == pytest.approx((11 * MILLIMETRE, 11 * MILLIMETRE))
    assert open_joint.area * 1e6 == pytest.approx(11.0 * 11.0 / 2.0)


def test_gap_under_a_leg_not_grown_would_take_throat_away():
    throat = fillet_geometry.fillet_throat(0.008, 0.008, root_gap=0.003)
    assert throat / MILLIMETRE == pytest.approx(5.0 / math.sqrt(2.0))  # 8 - 3 = 5 mm hold


# Equilateral at 60 degrees, half of two legs' product times the sine: geometry, law; by hand. (angle, mm2, throat mm)
SKEWED = ((60, 15.588, 5.196), (90, 18.0, 4.243), (120, 15.588, 3.0))


@pytest.mark.parametrize(("angle", "area", "throat"), SKEWED)
def test_skewed_fillet(angle, area, throat):
    skewed = section("fillet", leg=6, joint_angle=angle)
    assert skewed.area * 1e6 == pytest.approx(area, abs=1e-3)
    assert skewed.throat / MILLIMETRE == pytest.approx(throat, abs=1e-3)
    assert fillet_geometry.leg_for_throat(skewed.throat, degrees(angle)) == pytest.approx(6 * MILLIMETRE)


def test_hollow_face_takes_metal_and_throat_away_and_a_bulge_only_adds_metal():
    flat = section("fillet", leg=6)
    hollow, bulge = section("fillet", leg=6, concavity=0.5), section("fillet", leg=6, convexity=0.5)
    # Two thirds of 8.485 x 0.5 mm by hand.
    assert (flat.area - hollow.area) * 1e6 == pytest.approx(2.828, abs=1e-3)
    assert (bulge.area - flat.area) * 1e6 == pytest.approx(2.828, abs=1e-3)
    assert (flat.throat - hollow.throat) / MILLIMETRE == pytest.approx(0.5)
    assert bulge.throat == flat.throat


# ---------------------------------------------------------------- grooves

# TWI Job Knowledge 95: gap g t, and t (tan b t) for the two bevels of a V; published, seen. With a root face the bevel
# is t - f deep: geometry, law. All by hand. (joint, t, g, f, included angle, mm2)
GROOVE_AREAS = (
    ("single-v", 6, 2, 1, 60, 26.43),
    ("single-v", 10, 2, 2, 60, 56.95),
    ("single-v", 12, 3, 2, 60, 93.74),
    ("single-v", 10, 3, 0, 45, 71.42),
    ("double-v", 20, 2, 2, 60, 133.53),
    ("single-bevel", 10, 2, 1, 45, 60.5),
    ("double-bevel", 20, 2, 2, 45, 121.0),
)


@pytest.mark.parametrize(("joint", "thickness", "gap", "face", "angle", "expected"), GROOVE_AREAS)
def test_groove_without_a_cap(joint, thickness, gap, face, angle, expected):
    area = square_millimetres(joint, thickness=thickness, root_gap=gap, root_face=face, included_angle=angle)
    assert area == pytest.approx(expected, abs=0.006)


def test_double_v_takes_half_of_the_bevels_of_a_single_one():
    plate = {"thickness": 20, "included_angle": 60}
    assert square_millimetres("single-v", **plate) == pytest.approx(2.0 * square_millimetres("double-v", **plate))


def test_included_angle_is_not_the_bevel_of_each_plate():
    # A V of two 30 degree bevels is 60 degrees included: taken for each plate it would take three times the metal.
    right = square_millimetres("single-v", thickness=10, included_angle=60)
    taken_twice = square_millimetres("single-v", thickness=10, included_angle=120)
    assert taken_twice == pytest.approx(3.0 * right)


def test_cap_is_the_published_parabola():
    # 2/3 w h (Archimedes: law), by hand for the 10 mm V above, 11.238 mm wide at the top.
    v = {"thickness": 10, "root_gap": 2, "root_face": 2, "included_angle": 60}
    flat, capped = section("single-v", **v), section("single-v", reinforcement=1.5, **v)
    assert flat.width / MILLIMETRE == pytest.approx(11.238, abs=5e-4)
    assert (capped.area - flat.area) * 1e6 == pytest.approx(11.238, abs=5e-4)


@given(st.floats(0.005, 0.05), st.floats(0.02, 1.0 / 9.0))
def test_cap_is_within_one_percent_of_an_arc_of_a_circle(width, slenderness):
    height = width * slenderness
    radius = (width * width / 4.0 + height * height) / (2.0 * height)
    half = math.asin(width / 2.0 / radius)
    segment = radius * radius * (half - math.sin(half) * math.cos(half))
    assert groove_geometry.cap_area(width, height) == pytest.approx(segment, rel=0.01)


def test_u_is_near_the_workshop_s_breakdown():
    # Half a circle, a rectangle over it and two triangles: how costing tables break a U down. It lets the side start
    # beside the circle and not tangent to it, so that it is a few per cent off: a second method, not a source.
    t, g, f, r, slant = 25.0, 2.0, 3.0, 6.0, degrees(10)
    above = t - f - r
    broken_down = g * t + math.pi * r * r / 2.0 + 2.0 * r * above + above * above * math.tan(slant)
    area = square_millimetres("single-u", thickness=t, root_gap=g, root_face=f, root_radius=r, included_angle=20)
    assert area == pytest.approx(broken_down, rel=0.03)


def test_upright_u_is_exactly_half_a_circle_and_a_rectangle():
    side = groove_geometry.curved_side_area(0.020, 0.006, 0.0)
    assert 2.0 * side * 1e6 == pytest.approx(math.pi * 36.0 / 2.0 + 12.0 * 14.0)


def test_round_root_opens_more_than_a_bevel_by_less_the_smaller_it_is():
    bevel = groove_geometry.bevel_area(0.020, degrees(30))
    extra = [groove_geometry.curved_side_area(0.020, radius, degrees(30)) - bevel for radius in (0.004, 0.002, 0.001)]
    # The side is moved out by r (cos b - (1 - sin b) tan b) = r tan(45 - b/2), so that extra goes with the radius.
    assert extra[0] > extra[1] > extra[2] > 0.0
    assert extra[1] / extra[2] == pytest.approx(2.0, rel=0.05)


def test_plug_and_slot():
    # pi/4 x 20^2 and 20 x 30 + pi/4 x 20^2: geometry, law; by hand.
    assert square_millimetres("plug", thickness=10, hole_diameter=20) == pytest.approx(314.159, abs=1e-3)
    slot = section("slot", thickness=10, slot_width=20, slot_length=50, fill_depth=8)
    assert slot.area * 1e6 == pytest.approx(914.159, abs=1e-3)
    assert slot.depth == pytest.approx(0.008)


def test_edge_is_a_cap_over_both_plates():
    assert square_millimetres("edge", thickness=3, reinforcement=1.5) == pytest.approx(2.0 / 3.0 * 6.0 * 1.5)


def test_corner_is_a_fillet_with_the_plate_for_legs():
    assert square_millimetres("corner", thickness=6) == pytest.approx(18.0)


# ---------------------------------------------------------------- the same area, counted otherwise


def counted(joint, sizes, steps=4000):
    """Return the area of a groove or a right-angled fillet from its width at many heights, [mm2], all in mm and
    degrees. Written from what the sizes mean, without a formula for an area in it."""
    top = sizes.get("thickness", 0.0) if joint in GROOVES else sizes["leg"] + sizes.get("root_gap", 0.0)
    height = top / steps
    total = sum(_width(joint, sizes, (step + 0.5) * height) * height for step in range(steps))
    cap = sizes.get("reinforcement", 0.0)
    if cap:
        wide = _width(joint, sizes, top)
        if joint == "square-butt":
            wide = sizes["bead_width"]
        # A parabola: at the height y over the plate it is as wide as the root of what is left of it.
        one = sum(wide * math.sqrt(1.0 - (step + 0.5) / steps) * cap / steps for step in range(steps))
        total += one * (2.0 if joint.startswith("double") else 1.0)
    return total


def _width(joint, sizes, y):
    if joint == "fillet":
        first = sizes["leg"] + sizes.get("root_gap", 0.0)
        second = sizes.get("second_leg", sizes["leg"]) + sizes.get("root_gap", 0.0)
        return second * (1.0 - y / first)
    return sizes.get("root_gap", 0.0) + _opened(joint, sizes, y) * (2.0 if joint[-1] in "vu" else 1.0)


def _opened(joint, sizes, y):
    """Return how far one bevelled edge has leaned back at the height y, [mm]."""
    if joint == "square-butt":
        return 0.0
    slant = math.radians(sizes["included_angle"]) / (2.0 if joint[-1] in "vu" else 1.0)
    face = sizes.get("root_face", 0.0)
    if joint.startswith("double"):
        from_middle = abs(y - sizes["thickness"] / 2.0) - face / 2.0
        return max(from_middle, 0.0) * math.tan(slant)
    up = y - face
    if up <= 0.0:
        return 0.0
    if joint not in CURVED:
        return up * math.tan(slant)
    radius = sizes["root_radius"]
    if up < radius * (1.0 - math.sin(slant)):
        return math.sqrt(radius * radius - (radius - up) * (radius - up))
    return radius * math.cos(slant) + (up - radius * (1.0 - math.sin(slant))) * math.tan(slant)


@settings(max_examples=120, deadline=None)
@given(a_joint(("fillet",) + GROOVES))
def test_area_is_the_sum_of_the_widths(case):
    joint, sizes = case
    assume(joint != "fillet" or not {"joint_angle", "convexity", "concavity"} & set(sizes))
    assert square_millimetres(joint, **sizes) == pytest.approx(counted(joint, sizes), rel=2e-3)


def shoelace(points):
    """Return the area of a polygon of hundredths of a millimetre, [mm2]."""
    turned = points[1:] + points[:1]
    return abs(sum(x * to_y - to_x * y for (x, y), (to_x, to_y) in zip(points, turned, strict=True))) / 2.0 / 1e4


@settings(max_examples=250, deadline=None)
@given(a_joint(JOINTS))
def test_polygon_drawn_has_the_area_reckoned(case):
    joint, sizes = case
    found = section(joint, **sizes)
    drawn = shoelace(Outline(found).weld)
    expected = found.area * 1e6 if joint in LINES else found.width * found.depth * 1e6
    # A polygon of 16 sides cuts 0.4 % off a parabola, and its corners are rounded to 0.01 mm.
    around = 0.01 * 4.0 * (found.width / MILLIMETRE + sizes.get("thickness", sizes.get("leg", 0.0)))
    assert drawn == pytest.approx(expected, rel=6e-3, abs=around)


@settings(max_examples=150, deadline=None)
@given(a_joint(FILLETS))
def test_throat_is_the_shortest_way_over_the_drawn_weld(case):
    joint, sizes = case
    found = section(joint, **sizes)
    outline = Outline(found)
    root = outline.marks["root"]
    face = outline.weld[1:]
    shortest = min(_distance(root, start, end) for start, end in itertools.pairwise(face)) / 100.0
    throat = found.throat / MILLIMETRE
    if found.bulge > 0.0:
        assert throat <= shortest + 0.03
    else:
        # Exact on a flat face and on an equal hollow one; on others never on the high side.
        assert throat <= shortest + 0.03
        if found.bulge == 0.0 or (found.legs[0] == found.legs[1] and not found.gap):
            assert throat == pytest.approx(shortest, abs=0.03)
    assert math.dist(root, outline.marks["foot"]) / 100.0 == pytest.approx(throat, abs=0.03)  # the dashed line


def _distance(point, start, end):
    (x, y), (ax, ay), (bx, by) = point, start, end
    run, rise = bx - ax, by - ay
    along = run * run + rise * rise
    share = 0.0 if along == 0 else min(max(((x - ax) * run + (y - ay) * rise) / along, 0.0), 1.0)
    return math.dist((x, y), (ax + share * run, ay + share * rise))


@settings(max_examples=150, deadline=None)
@given(a_joint(FILLETS))
def test_face_never_leaves_the_corner_between_the_plates(case):
    joint, sizes = case
    found = section(joint, **sizes)
    for x, y in Outline(found).weld:
        # Clockwise of the standing plate, above the lying one.
        beyond = x * math.sin(found.angle) - y * math.cos(found.angle)
        assert beyond >= -2.0 and y >= -2.0, (x, y)


# ---------------------------------------------------------------- properties


@settings(max_examples=150, deadline=None)
@given(a_joint(JOINTS), st.floats(0.8, 1.25))
def test_area_goes_with_the_square_of_the_size(case, factor):
    joint, sizes = case
    larger = {}
    for name in sizes:
        larger[name] = sizes[name] if name in ("joint_angle", "included_angle") else sizes[name] * factor
    try:
        scaled = section(joint, **larger)
    except ranges.OutOfRange:
        assume(False)
    assert scaled.area == pytest.approx(section(joint, **sizes).area * factor * factor, rel=1e-9)


@settings(max_examples=200, deadline=None)
@given(
    a_joint(LINES), st.sampled_from(("leg", "second_leg", "thickness", "root_gap", "included_angle", "reinforcement"))
)
def test_more_of_a_size_never_takes_less_metal(case, name):
    joint, sizes = case
    assume(name in sizes)
    try:
        more = section(joint, **{**sizes, name: sizes[name] * 1.02})
    except ranges.OutOfRange:
        assume(False)
    assert more.area >= section(joint, **sizes).area * (1.0 - 1e-9)


@settings(max_examples=100, deadline=None)
@given(a_joint(BEVELLED))
def test_more_root_face_never_takes_more_metal(case):
    joint, sizes = case
    assume(joint not in CURVED and sizes.get("root_face"))
    assert section(joint, **{**sizes, "root_face": 0.0}).area >= section(joint, **sizes).area * (1.0 - 1e-9)


@given(st.floats(1.0, 50.0))
def test_groove_of_no_angle_gap_and_cap_tends_to_nothing(thickness):
    narrow = groove_geometry.bevel_area(thickness * MILLIMETRE, 1e-9)
    assert narrow * 1e6 < 1e-5
    assert groove_geometry.gap_area(0.0, thickness * MILLIMETRE) == 0.0


@given(st.floats(1.0, 35.0), st.floats(60.0, 120.0))
def test_leg_for_a_throat_gives_that_throat(throat, angle):
    leg = fillet_geometry.leg_for_throat(throat * MILLIMETRE, degrees(angle))
    assert fillet_geometry.fillet_throat(leg, leg, degrees(angle)) == pytest.approx(throat * MILLIMETRE)


# ---------------------------------------------------------------- what cannot be is refused

REFUSED = (
    ("fillet", {"leg": 6, "second_leg": 18.2}, "second_leg"),  # over three times
    ("fillet", {"leg": 6, "second_leg": 12.1, "joint_angle": 60}, "second_leg"),  # the face would hang over
    ("fillet", {"leg": 6, "joint_angle": 59}, "joint_angle"),
    ("fillet", {"leg": 6, "joint_angle": 121}, "joint_angle"),
    ("fillet", {"leg": 6, "root_gap": 5.1}, "root_gap"),
    ("fillet", {"leg": 3, "root_gap": 3.1}, "root_gap"),
    ("fillet", {"leg": 6, "convexity": 2.2}, "convexity"),  # over a quarter of the face
    ("fillet", {"leg": 6, "concavity": 1.8}, "concavity"),  # over a fifth
    ("single-v", {"thickness": 10, "included_angle": 15}, "included_angle"),
    ("single-v", {"thickness": 10, "included_angle": 125}, "included_angle"),
    ("single-bevel", {"thickness": 10, "included_angle": 65}, "included_angle"),
    ("single-j", {"thickness": 10, "included_angle": 46, "root_radius": 5}, "included_angle"),
    ("single-v", {"thickness": 10, "root_face": 9.6, "included_angle": 60}, "root_face"),
    ("single-u", {"thickness": 10, "root_face": 3, "included_angle": 20, "root_radius": 9}, "root_radius"),
    ("single-v", {"thickness": 10, "included_angle": 60, "reinforcement": 3}, "reinforcement"),
    ("square-butt", {"thickness": 3, "root_gap": 2, "bead_width": 1.9}, "bead_width"),
    ("square-butt", {"thickness": 3, "root_gap": 2, "bead_width": 50.1}, "bead_width"),
    ("fillet", {"leg": 6, "joint_angle": 120, "concavity": 1.21}, "concavity"),  # 0.2 x 10.39 x tan 30
    ("fillet", {"leg": 6, "joint_angle": 60, "convexity": 0.88}, "convexity"),  # 0.25 x 6 / tan 60
    ("plug", {"thickness": 10, "hole_diameter": 20, "fill_depth": 10.1}, "fill_depth"),
    ("slot", {"thickness": 10, "slot_width": 20, "slot_length": 19}, "slot_length"),
)


@pytest.mark.parametrize(("joint", "sizes", "name"), REFUSED)
def test_what_cannot_be_is_refused_under_its_own_name(joint, sizes, name):
    with pytest.raises(ranges.OutOfRange) as refused:
        section(joint, **sizes)
    assert refused.value.name == name
    assert refused.value.unit == ("rad" if name.endswith("angle") else "m")


@pytest.mark.parametrize(("joint", "sizes", "name"), REFUSED)
def test_a_little_less_is_not_refused(joint, sizes, name):
    allowed = {**sizes}
    lower = {"joint_angle": 60.0, "included_angle": 20.0, "bead_width": 2.0, "slot_length": 20.0}
    if name in lower and sizes[name] <= lower[name]:
        allowed[name] = lower[name]
    else:
        allowed[name] = sizes[name] * 0.9 if name != "joint_angle" else 120.0
    assert section(joint, **allowed).area > 0.0


def test_hundredths_are_whole_and_nearest():
    assert [whole(size) for size in (0.0, 1e-5, 1.49e-5, 1.5e-5, -1.5e-5, 0.00635)] == [0, 1, 1, 2, -1, 635]


def test_every_joint_has_a_case_that_is_drawn():
    for joint in JOINTS:
        outline = Outline(section(joint, **SQUARE[joint]))
        assert outline.plates and len(outline.weld) >= 3
        for polygon in [*outline.plates, outline.weld]:
            assert all(isinstance(number, int) for point in polygon for number in point)
