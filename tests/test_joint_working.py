"""The sums that joint-fill shows, number by number: worked by hand from the sizes typed, formula beside each line."""

import json
import re

import pytest

from tests import walking
from tests.published.joints import section

pytestmark = pytest.mark.quick


def numbers(typed, extra=(), system="si"):
    """Return the numbers of each line of the working, in the order in which they are read."""
    reply = walking.reply("/api/joint-fill", [*typed.items(), *extra], system=system)
    assert reply.status == 200, reply.body
    lines = [line.replace("\u202f", "") for line in json.loads(reply.body)["working"]]
    return [[float(each) for each in re.findall(r"\d+(?:\.\d+)?", line)] for line in lines]


# One joint of each shape, and the lines up to the metal as drawn, [mm], [degrees] and [mm2]. The count of sides
# stands in a line twice, and the 4 of pi / 4 is read too.
SECTIONS = (
    # 1/2 x 6 x 6; face 6 root 2; throat 36 / face.
    ({"joint": "fillet", "leg": "6 mm"}, [[6, 6, 18], [6, 6, 8.485, 4.243]]),
    # The hollow: 2/3 x 8.485 x 0.5 off the triangle, 0.5 off the throat.
    (
        {"joint": "fillet", "leg": "6 mm", "concavity": "0.5 mm"},
        [[6, 6, 18], [8.485, 0.5, 2.828, 15.17], [6, 6, 8.485, 0.5, 3.743]],
    ),
    # 2 / sin 75 = 2.071 along each plate: legs 10.07 and 8.071.
    # face^2 = 10.07^2 + 8.071^2 - 2 x 10.07 x 8.071 x cos 75.
    (
        {
            "joint": "fillet",
            "leg": "8 mm",
            "second_leg": "6 mm",
            "joint_angle": "75 deg",
            "root_gap": "2 mm",
            "concavity": "0.5 mm",
        },
        [
            [2.071, 10.07, 8.071],
            [10.07, 8.071, 75, 39.25],
            [11.16, 0.5, 3.719, 35.53],
            [8, 8.071, 75, 11.16, 0.5, 5.09],
        ],
    ),
    # The same without the hollow: 8 x 8.071 x sin 75 / 11.16.
    (
        {"joint": "fillet", "leg": "8 mm", "second_leg": "6 mm", "joint_angle": "75 deg", "root_gap": "2 mm"},
        [[2.071, 10.07, 8.071], [10.07, 8.071, 75, 39.25], [8, 8.071, 75, 11.16, 5.59]],
    ),
    # Only the leg on the plate that stands off grows; face root of 49 + 36; a bulge of 2/3 x 9.22 x 0.6.
    (
        {"joint": "corner", "thickness": "6 mm", "root_gap": "1 mm", "convexity": "0.6 mm"},
        [[1, 7, 6], [7, 6, 21], [9.22, 0.6, 3.688, 24.69], [6, 6, 9.22, 3.905]],
    ),
    # Slant 20: 6 cos 20 + (18 - 6 (1 - sin 20)) tan 20 = 10.75 a side, so 23.51 wide with the gap. Each curved side: a
    # segment of 16.21, then 5.638 x 14.05 and 1/2 x 14.05^2 x tan 20.
    (
        {
            "joint": "single-u",
            "thickness": "20 mm",
            "root_gap": "2 mm",
            "root_face": "2 mm",
            "included_angle": "40 deg",
            "root_radius": "6 mm",
            "reinforcement": "1.5 mm",
        },
        [[2, 20, 40], [2, 18, 6, 20, 262.7], [1, 1, 23.51, 1.5, 23.51], [326.2]],
    ),
    # Two bevels of 9 mm at 45; 2 + 9 wide, capped on both sides.
    (
        {
            "joint": "double-bevel",
            "thickness": "20 mm",
            "root_gap": "2 mm",
            "root_face": "2 mm",
            "included_angle": "45 deg",
            "reinforcement": "1 mm",
        },
        [[2, 20, 40], [2, 2, 9, 45, 81], [2, 2, 11, 1, 14.67], [135.7]],
    ),
    ({"joint": "edge", "thickness": "3 mm", "reinforcement": "1 mm"}, [[1, 1, 6, 1, 4]]),
    # 20 x 30 and pi / 4 x 20^2.
    ({"joint": "slot", "thickness": "10 mm", "slot_width": "20 mm", "slot_length": "50 mm"}, [[4, 20, 50, 914.2]]),
    ({"joint": "plug", "thickness": "10 mm", "hole_diameter": "20 mm"}, [[4, 4, 20, 314.2]]),
)


@pytest.mark.parametrize(("typed", "expected"), SECTIONS)
def test_section_is_worked_out_line_by_line(typed, expected):
    found = numbers(typed, () if typed["joint"] in ("slot", "plug") else (("weld_length", "1 m"),))
    assert found[: len(expected)] == expected


# Common practice here: 1.2 times the triangle is laid down, 96 % of the wire becomes weld metal in 75 argon 25 CO2, 5 %
# is wasted, the arc burns 15 % of the time. 21.6 mm2 x 7850 kg/m3 = 0.1696 kg/m = 0.1139 lb/ft.
FILLET = {"joint": "fillet", "leg": "6 mm"}
DEPOSIT = [[18, 1.2, 21.6], [21.6, 7850, 0.1696, 0.1139]]


def test_wire_of_a_length_is_worked_out_line_by_line():
    # 0.1696 / 0.96 / 0.95 = 0.1859 kg.
    assert numbers({**FILLET, "weld_length": "1 m"})[2:] == [*DEPOSIT, [1, 0.1696, 0.96, 1, 5, 0.1859]]


def test_length_of_a_spool_is_worked_out_line_by_line():
    # 1 kg x 0.95 x 0.96 / 0.1696 kg/m = 5.379 m, of 0.9120 kg.
    assert numbers({**FILLET, "wire_mass": "1 kg"})[2:] == [*DEPOSIT, [1, 1, 1, 5, 0.96, 0.1696, 5.379]]


def test_whole_slots_of_a_spool_are_worked_out_line_by_line():
    # 914.2 x 1.1 = 1006 mm2, 10 mm deep, 0.07894 kg: 0.08655 kg of wire each, so 11 of 1 kg, which take 0.9521 kg.
    slot = {"joint": "slot", "thickness": "10 mm", "slot_width": "20 mm", "slot_length": "50 mm", "wire_mass": "1 kg"}
    assert numbers(slot)[1:] == [
        [914.2, 1.1, 1006],
        [1006, 10, 7850, 0.07894],
        [0.07894, 0.96, 1, 5, 0.9521],
    ]


def test_passes_travel_and_time_are_worked_out_line_by_line():
    run = {"weld_length": "1 m", "largest_bead": "4 mm", "wire_diameter": "1.2 mm", "wire_feed_speed": "8 m/min"}
    # A bead of 1.2 x 1/2 x 4^2 = 9.6 mm2: 2.25 of them, so 3 passes of 7.2 mm2. 133.3 mm/s of wire of 1.131 mm2, 96 %
    # of it: 20.11 mm/s. 133.3 x 1.131 x 7850 x 96 % = 4.091 kg/h: 2.487 min, 16.58 min at 15 %.
    assert numbers({**FILLET, **run})[5:] == [
        [21.6, 9.6, 3],
        [133.3, 1.131, 0.96, 7.2, 20.11],
        [0.1696, 4.091, 2.487, 15, 16.58],
    ]


@pytest.mark.parametrize(
    "typed",
    (
        {**FILLET, "wire_mass": "1 kg"},
        {
            **FILLET,
            "weld_length": "1 m",
            "largest_bead": "4 mm",
            "wire_diameter": "1.2 mm",
            "wire_feed_speed": "8 m/min",
        },
        {"joint": "slot", "thickness": "10 mm", "slot_width": "20 mm", "slot_length": "50 mm", "weld_count": "3"},
        {"joint": "slot", "thickness": "10 mm", "slot_width": "20 mm", "slot_length": "50 mm", "wire_mass": "1 kg"},
    ),
)
def test_the_sums_are_in_one_system_whatever_the_reader_s(typed):
    assert numbers(typed, system="us") == numbers(typed, system="si")


def test_slots_without_a_number_are_one():
    slot = {"joint": "slot", "thickness": "10 mm", "slot_width": "20 mm", "slot_length": "50 mm"}
    assert numbers(slot) == numbers({**slot, "weld_count": "1"}) != numbers({**slot, "weld_count": "2"})


def test_time_on_the_clock_goes_by_the_operating_factor_typed():
    run = {**FILLET, "weld_length": "1 m", "wire_diameter": "1.2 mm", "wire_feed_speed": "8 m/min"}
    # 2.487 min of arc: half of the time it burns.
    assert numbers({**run, "operating_factor": "50 %"})[-1] == [0.1696, 4.091, 2.487, 50, 4.974]


def test_a_feed_without_a_wire_gives_no_travel():
    length = {**FILLET, "weld_length": "1 m"}
    for half in ({"wire_feed_speed": "8 m/min"}, {"wire_diameter": "1.2 mm"}):
        assert numbers({**length, **half}) == numbers(length)


def test_a_bead_of_a_groove_is_as_full_as_a_fillet_is_laid():
    # A single V of 20 + 57.74 mm2, 1.5 times over = 116.6; beads of 1.2 x 1/2 x 6^2 = 21.6: 5.4, so 6. A fillet's own
    # beads go by its own factor: 1.5 x 18 = 27 in beads of 1.5 x 1/2 x 4^2 = 12: 2.25, so 3.
    groove = {"joint": "single-v", "thickness": "10 mm", "root_gap": "2 mm", "included_angle": "60 deg"}
    passes = {"weld_length": "1 m", "largest_bead": "6 mm", "overweld_factor": "1.5"}
    assert numbers({**groove, **passes})[-1] == [116.6, 21.6, 6]
    assert numbers({**FILLET, **passes, "largest_bead": "4 mm"})[-1] == [27, 12, 3]


def test_each_line_is_called_by_what_it_adds_up():
    def lines(joint, **sizes):
        return [key for key, _ in section(joint, **sizes).lines]

    assert lines("fillet", leg=6, root_gap=2, convexity=0.5) == ["gap-legs", "triangle", "bulge", "throat"]
    assert lines("corner", thickness=6, root_gap=1, concavity=0.5) == [
        "gap-corner",
        "triangle",
        "hollow",
        "throat-hollow",
    ]
    assert lines("edge", thickness=3, reinforcement=1) == ["cap"]
    assert lines("single-v", thickness=10, root_gap=2, included_angle=60) == ["gap", "bevel", "total"]
    assert lines("single-v", thickness=10, included_angle=60) == ["bevel"]


def test_only_bevelled_plates_slope():
    assert section("square-butt", thickness=3, root_gap=1.5).slopes() == 0
    assert section("single-bevel", thickness=10, root_gap=2, included_angle=45).slopes() == 1
    assert section("single-v", thickness=10, root_gap=2, included_angle=60).slopes() == 2
