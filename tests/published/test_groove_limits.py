"""Where a groove or a slot ends to be one: geometry, law, worked by hand."""

import math

import pytest

from calculators import groove_geometry, ranges
from tests.published.joints import degrees

CURVED = (groove_geometry.curved_side_area, groove_geometry.curved_side_width)


def _blamed(function, *asked):
    with pytest.raises(ranges.OutOfRange) as refused:
        function(*asked)
    return refused.value.name, refused.value.unit


@pytest.mark.parametrize("function", CURVED)
def test_a_root_may_be_as_round_as_the_groove_is_deep_and_no_more(function):
    # At 30 degrees a root of radius R leaves its curve R (1 - sin 30) = R / 2 above the bottom.
    assert function(0.01, 0.02, degrees(30.0)) > 0.0
    assert _blamed(function, 0.01, 0.0201, degrees(30.0)) == ("straight_side", "m")


def test_a_side_that_is_all_curve_is_a_piece_of_a_circle():
    # R = 20 mm at 30 degrees, 10 mm deep: R cos 30 wide, and under the arc R^2 / 2 (60 degrees - sin 30 cos 30).
    width = groove_geometry.curved_side_width(0.01, 0.02, degrees(30.0))
    assert width * 1000.0 == pytest.approx(20.0 * math.sqrt(3.0) / 2.0)
    area = groove_geometry.curved_side_area(0.01, 0.02, degrees(30.0))
    assert area * 1e6 == pytest.approx(200.0 * (math.pi / 3.0 - math.sqrt(3.0) / 4.0))


def test_a_slot_is_at_least_as_long_as_wide_and_at_most_two_metres():
    assert groove_geometry.slot_area(0.02, 0.02) == pytest.approx(math.pi / 4.0 * 0.0004)
    assert groove_geometry.slot_area(0.02, 2.0) == pytest.approx(0.02 * 1.98 + math.pi / 4.0 * 0.0004)
    for length in (0.0199, 2.0001):
        assert _blamed(groove_geometry.slot_area, 0.02, length) == ("slot_length", "m")
