"""The corners of a fillet's triangle: what a skewed joint, unequal legs and a gap do to face, throat and limits.

Geometry is law: worked by hand from triangles whose sides and angles are known (equilateral, 30-30-120, 3-4-5).
"""

import math

import pytest

from calculators import fillet_geometry, ranges
from tests.published.joints import degrees

# Equal legs of 6 mm at 60 degrees make an equilateral triangle: all corners 60 degrees, so the face is 6 mm wide. At
# 120 degrees the corners at the toes are 30 degrees and the face is 6 times root 3. Legs 3 and 4 at a right angle make
# a face of 5, with corners of tangent 3/4 and 4/3. (leg, second leg, angle, face, smaller and larger tangent)
TRIANGLES = (
    (6.0, 6.0, 60.0, 6.0, math.sqrt(3.0), math.sqrt(3.0)),
    (6.0, 6.0, 120.0, 6.0 * math.sqrt(3.0), 1.0 / math.sqrt(3.0), 1.0 / math.sqrt(3.0)),
    (3.0, 4.0, 90.0, 5.0, 0.75, 4.0 / 3.0),
    (4.0, 3.0, 90.0, 5.0, 0.75, 4.0 / 3.0),
    # Legs 2 and 1 at 60 degrees: half of an equilateral triangle, a right angle at the short leg's toe.
    (5.0, 2.5, 60.0, 2.5 * math.sqrt(3.0), 1.0 / math.sqrt(3.0), math.inf),
)


@pytest.mark.parametrize(("leg", "second", "angle", "face", "shallow", "steep"), TRIANGLES)
def test_bulge_and_hollow_end_where_the_face_would_leave_the_plates(leg, second, angle, face, shallow, steep):
    """A parabola of height h over a width w leaves its end at the slope 4 h / w: law, by differentiation."""
    asked = (leg / 1000.0, second / 1000.0, degrees(angle))
    assert fillet_geometry.fillet_face(*asked) * 1000.0 == pytest.approx(face)
    # A bulge turns the face up by that slope: at most to a right angle to the plate, and never over 45 degrees.
    bulge = fillet_geometry.most_convexity(*asked) * 1000.0
    assert 4.0 * bulge / face == pytest.approx(min(1.0, 1.0 / steep), abs=1e-5)
    # A hollow turns it down: four fifths of the way to the plate, and never over tangent 0.8.
    hollow = fillet_geometry.most_concavity(*asked) * 1000.0
    assert 4.0 * hollow / face == pytest.approx(0.8 * min(1.0, shallow), abs=1e-5)


# A gap of g square to one plate lies g / sin(angle) along the other: 3 / sin 60 = 3.464. By hand.
@pytest.mark.parametrize(("angle", "along"), ((60.0, 3.4641), (90.0, 3.0), (120.0, 3.4641)))
def test_a_skewed_gap_takes_more_of_the_leg_than_its_width(angle, along):
    assert fillet_geometry.gap_along_plate(0.003, degrees(angle)) * 1000.0 == pytest.approx(along, abs=1e-4)
    # Legs of 8 mm at this angle, of which 8 - along hold: the triangle's height over its face.
    face = 2.0 * 8.0 * math.sin(degrees(angle) / 2.0)
    height = (8.0 - along) * 8.0 * math.sin(degrees(angle)) / face
    throat = fillet_geometry.fillet_throat(0.008, 0.008, degrees(angle), root_gap=0.003)
    assert throat * 1000.0 == pytest.approx(height, abs=1e-4)


def test_a_right_angle_at_the_short_leg_is_the_most_unequal_a_sharp_joint_may_be():
    # At 60 degrees the short leg is half the long one there; at 75, 1 / cos 75 = 3.86 is over the common limit of 3.
    assert fillet_geometry.most_unequal(degrees(60.0)) == pytest.approx(2.0)
    assert fillet_geometry.most_unequal(degrees(70.6)) == pytest.approx(3.0, abs=0.02)
    assert fillet_geometry.most_unequal(degrees(75.0)) == fillet_geometry.most_unequal(degrees(120.0)) == 3.0


def _blamed(function, *asked, **more):
    with pytest.raises(ranges.OutOfRange) as refused:
        function(*asked, **more)
    return refused.value.name, refused.value.unit


# EN 1993-1-8:2005, 4.3.2.1: fillets at 60 to 120 degrees (standard; seen quoted).
@pytest.mark.parametrize("angle", (59.9, 120.1))
def test_a_fillet_sharper_or_blunter_than_the_standard_s_is_refused(angle):
    beyond = degrees(angle)
    for function, asked in (
        (fillet_geometry.most_unequal, ()),
        (fillet_geometry.gap_along_plate, (0.002,)),
        (fillet_geometry.leg_for_throat, (0.004,)),
        (fillet_geometry.fillet_area, (0.006, 0.006)),
    ):
        assert _blamed(function, *asked, beyond) == ("joint_angle", "rad")


def test_legs_too_unequal_are_refused_either_way():
    for second in (0.006 * 3.01, 0.006 / 3.01):
        assert _blamed(fillet_geometry.fillet_area, 0.006, second) == ("second_leg", "m")
    for second in (0.006 * 3.0, 0.006 / 3.0):
        assert fillet_geometry.fillet_area(0.006, second) == pytest.approx(0.003 * second)


def test_a_gap_that_takes_the_whole_leg_and_a_hollow_that_takes_the_whole_throat_are_refused():
    throat = fillet_geometry.fillet_throat
    assert _blamed(throat, 0.003, 0.003, root_gap=0.00291) == ("holding_leg", "m")
    assert throat(0.003, 0.003, root_gap=0.0029) == pytest.approx(0.0001 * math.sqrt(0.5))
    flat = throat(0.006, 0.006)
    assert _blamed(throat, 0.006, 0.006, concavity=flat) == ("concavity", "m")
    assert _blamed(throat, 0.006, 0.006, concavity=-1e-9) == ("concavity", "m")
    assert throat(0.006, 0.006, concavity=0.999 * flat) == pytest.approx(0.001 * flat)
