"""What no piece of metal can be is refused: a wall thicker than half of the tube, a leg thinner than its thickness."""

import pytest

from calculators import part_mass, ranges, sections

TUBE = {"diameter": 0.1, "wall": 0.01}
SHARP = {"width": 0.1, "height": 0.06, "wall": 0.005}
ROUNDED = {**SHARP, "corner_radius": 0.01}
ANGLE = {"first_leg": 0.1, "second_leg": 0.06, "thickness": 0.01}
CHANNEL = {"depth": 0.1, "flange_width": 0.05, "web_thickness": 0.005, "flange_thickness": 0.008}

# (function, sizes, the last that can be, the name and the unit it is refused under just beyond): what can be follows
# from the shape, by hand.
ENDS = (
    (sections.tube_area, TUBE, {"wall": 0.05}, "wall_to_diameter", ""),
    (sections.sharp_tube_area, SHARP, {"wall": 0.03}, "wall_to_height", ""),
    (sections.sharp_tube_area, {**SHARP, "height": 0.2}, {"wall": 0.05}, "wall_to_width", ""),
    (sections.rounded_tube_area, {**ROUNDED, "corner_radius": 0.02}, {"wall": 0.02}, "wall_to_corner_radius", ""),
    (sections.rounded_tube_area, ROUNDED, {"corner_radius": 0.03}, "corner_radius_to_height", ""),
    (sections.rounded_tube_area, {**ROUNDED, "height": 0.2}, {"corner_radius": 0.05}, "corner_radius_to_width", ""),
    (sections.angle_area, ANGLE, {"thickness": 0.06}, "thickness_to_second_leg", ""),
    (sections.angle_area, {**ANGLE, "second_leg": 0.2}, {"thickness": 0.1}, "thickness_to_first_leg", ""),
    (sections.channel_area, CHANNEL, {"web_thickness": 0.05}, "web_to_flange_width", ""),
    (sections.channel_area, CHANNEL, {"flange_thickness": 0.05}, "flange_to_depth", ""),
)


def _blamed(function, sizes):
    with pytest.raises(ranges.OutOfRange) as refused:
        function(**sizes)
    return refused.value.name, refused.value.unit


@pytest.mark.parametrize(("function", "sizes", "last", "name", "unit"), ENDS)
def test_the_thickest_there_can_be_is_taken_and_a_hair_more_is_not(function, sizes, last, name, unit):
    assert function(**{**sizes, **last}) > 0.0
    ((changed, value),) = last.items()
    assert _blamed(function, {**sizes, changed: value * (1.0 + 2e-8)}) == (name, unit)


@pytest.mark.parametrize(
    ("function", "sizes", "name"),
    (
        (sections.tube_area, TUBE, "wall"),
        (sections.sharp_tube_area, SHARP, "wall"),
        (sections.rounded_tube_area, ROUNDED, "corner_radius"),
        (sections.angle_area, ANGLE, "thickness"),
        (sections.channel_area, CHANNEL, "web_thickness"),
        (sections.channel_area, CHANNEL, "flange_thickness"),
    ),
)
def test_less_than_nothing_is_no_thickness(function, sizes, name):
    assert _blamed(function, {**sizes, name: -1e-9}) == (name, "m")


def test_a_tube_without_a_corner_radius_is_refused_and_not_divided_by():
    assert _blamed(sections.rounded_tube_area, {**ROUNDED, "corner_radius": 0.0}) == ("corner_radius", "m")


def test_half_a_piece_weighs_half_and_a_million_are_the_most():
    one = part_mass.total_mass(0.001, 7850.0, 2.0, 1.0)
    assert part_mass.total_mass(0.001, 7850.0, 2.0, 0.5) == pytest.approx(one / 2.0)
    assert part_mass.total_mass(0.001, 7850.0, 2.0, 1e6) == pytest.approx(one * 1e6)
    for count in (-1e-9, 1e6 + 0.1):
        pieces = {"section_area": 0.001, "density": 7850.0, "part_length": 2.0, "piece_count": count}
        assert _blamed(part_mass.total_mass, pieces) == ("piece_count", "")
