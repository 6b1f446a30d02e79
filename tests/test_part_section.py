"""The section as it is drawn and shown: the same from left and right, in the unit it was typed in."""

import math

import pytest

from calculators.contract import Refusal
from calculators.part_section import Section

INCH = 0.0254
SYMMETRIC = (
    {"shape": "plate", "part_width": 0.1, "thickness": 0.01},
    {"shape": "round-bar", "diameter": 0.03},
    {"shape": "hex-bar", "across_flats": 0.03},
    {"shape": "round-tube", "diameter": 0.06, "wall": 0.004},
    {"shape": "rectangular-tube", "part_width": 0.1, "part_height": 0.06, "wall": 0.005},
    {"shape": "sharp-tube", "part_width": 0.1, "part_height": 0.06, "wall": 0.005},
)


def turned(loop, width, height):
    """Return the points of a loop rounded to a nanometre, and the same mirrored left to right and top to bottom."""

    def rounded(points):
        return sorted({(round(x, 9) + 0.0, round(y, 9) + 0.0) for x, y in points})

    return (
        rounded(loop),
        rounded([(width - x, y) for x, y in loop]),
        rounded([(x, height - y) for x, y in loop]),
    )


@pytest.mark.parametrize("values", SYMMETRIC, ids=lambda values: values["shape"])
def test_outline_is_the_same_from_left_and_right_and_from_above_and_below(values):
    section = Section(values)
    width, height = section.extent()
    for loop in section.outlines():
        drawn, sideways, upside_down = turned(loop, width, height)
        assert drawn == sideways == upside_down
    outer = section.outlines()[0]
    assert [min(x for x, _ in outer), max(x for x, _ in outer)] == pytest.approx([0.0, width])
    assert [min(y for _, y in outer), max(y for _, y in outer)] == pytest.approx([0.0, height])


def test_round_corners_lie_on_their_circle():
    tube = Section({**SYMMETRIC[4], "corner_radius": 0.02})
    outer, inner = tube.outlines()
    for loop, radius in ((outer, 0.02), (inner, 0.015)):
        corner = [(x, y) for x, y in loop if x <= 0.02 and y <= 0.02]
        assert len(corner) > 4
        for x, y in corner:
            assert math.dist((x, y), (0.02, 0.02)) == pytest.approx(radius)


def test_sizes_are_shown_in_the_unit_each_was_typed_in():
    tube = Section({"shape": "sharp-tube", "part_width": 2.0 * INCH, "part_height": 0.04, "wall": 0.003})
    typed = {"part_width": "in", "part_height": "mm", "wall": "mm"}
    across, up = tube.across(typed), tube.up(typed)
    assert [across.value, up.value] == pytest.approx([2.0 * INCH, 0.04])
    assert (across.unit, up.unit) == ("in", "mm")
    shown = [tube.shown(name, typed) for name in ("part_height", "part_width", "wall")]
    assert [(each.unit, each.quantity.name) for each in shown] == [
        ("mm", "part_width"),
        ("in", "part_width"),
        ("mm", "part_size"),
    ]


def test_a_corner_radius_is_assumed_only_where_none_was_typed():
    tube = SYMMETRIC[4]
    # EN 10219-2: twice the wall outside, up to 6 mm (from memory).
    assert Section(tube).radius_assumed and Section(tube).sizes["corner_radius"] == pytest.approx(0.010)
    assert not Section({**tube, "corner_radius": 0.008}).radius_assumed
    assert not Section(SYMMETRIC[5]).radius_assumed


@pytest.mark.parametrize(
    ("values", "name", "said"),
    (
        ({"shape": "round-tube", "diameter": 0.06, "wall": 0.0301}, "wall", "half"),
        ({"shape": "angle", "first_leg": 0.05, "second_leg": 0.05, "thickness": 0.051}, "thickness", "whole"),
    ),
)
def test_what_does_not_fit_is_refused_with_how_much_would(values, name, said):
    with pytest.raises(Refusal) as refused:
        Section(values)
    assert (refused.value.field, refused.value.message.id) == (name, "part-weight.refusal." + said)
