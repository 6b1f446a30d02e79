"""The part-weight question from what is typed to what is answered. The formulas are checked in tests/published.

Expected numbers are worked out here from sizes and densities by hand, or are those of the tables named in
tests/published/test_part_weight.py.
"""

import json
import re

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calculators import asking, part_weight
from calculators.contract import Drawing
from calculators.part_section import SHAPES, SIZES_OF, Section
from tests import walking
from webapp.catalogue import Context, sentence

CONTEXT = Context("en", "us", "0")
POUND = 0.45359237

# One piece of each shape, as typed.
TYPED = {
    "plate": {"part_width": "48 in", "thickness": "1/4 in"},
    "flat-bar": {"part_width": "2 in", "thickness": "1/4 in"},
    "round-bar": {"diameter": "1 in"},
    "square-bar": {"side": "1 in"},
    "hex-bar": {"across_flats": "1 in"},
    "pipe": {"pipe_size": "dn-100", "pipe_schedule": "40"},
    "round-tube": {"diameter": "4.5 in", "wall": "0.237 in"},
    "rectangular-tube": {"part_width": "4 in", "part_height": "3 in", "wall": "1/4 in"},
    "sharp-tube": {"part_width": "4 in", "part_height": "3 in", "wall": "1/4 in"},
    "angle": {"first_leg": "4 in", "second_leg": "3 in", "thickness": "3/8 in"},
    "channel": {
        "depth": "6 in",
        "flange_width": "1.92 in",
        "web_thickness": "0.2 in",
        "flange_thickness": "0.343 in",
    },
}


def ask(status=200, units="us", **typed):
    reply = walking.reply("/api/part-weight", list(typed.items()), system=units)
    assert reply.status == status, reply.body
    return json.loads(reply.body)


def result(name, **typed):
    return ask(**typed)["results"][name]["value"]


def reply(**typed):
    came = asking.ask(part_weight.CALCULATOR, list(typed.items()))
    assert came.state == "answer", [sentence(message, CONTEXT) for _, message in came.errors]
    return came


def said(messages):
    return " ".join(sentence(message, CONTEXT) for message in messages).replace("\u00a0", " ")


def errors(**typed):
    return {name: text.replace("\u00a0", " ") for name, text in ask(422, **typed)["errors"].items()}


# ---------------------------------------------------------------- weight


def test_a_sheet_of_quarter_plate_weighs_by_the_square_foot():
    # 32 ft2 of 1/4 in at 40.8 lb/ft2 for each inch (ASTM A6, from memory): 326.4 lb.
    mass = result("total_mass", part_width="48 in", thickness="1/4 in", part_length="96 in")
    assert mass == pytest.approx(326.4, rel=1.5e-3)


def test_pieces_multiply_and_one_piece_is_said():
    one = result("total_mass", shape="round-bar", diameter="1 in", part_length="1 ft")
    answer = ask(shape="round-bar", diameter="1 in", part_length="1 ft", piece_count="12")["results"]
    assert answer["total_mass"]["value"] == pytest.approx(12 * one)
    assert answer["piece_mass"]["value"] == pytest.approx(one)
    # 0.7854 in2 x 12 in x 0.2836 lb/in3
    assert one == pytest.approx(2.673, abs=0.002)


@pytest.mark.parametrize("shape", SHAPES)
def test_every_shape_is_answered_with_a_drawing_that_stays_on_its_paper(shape):
    came = reply(shape=shape, part_length="10 ft", **TYPED[shape])
    (drawing,) = [each for each in came.answer.results if isinstance(each, Drawing)]
    for form, numbers, _, _ in drawing.shapes:
        assert all(isinstance(number, int) for number in numbers)
        if form != "circle":
            assert all(0 <= x <= drawing.width for x in numbers[::2])
            assert all(0 <= y <= drawing.height for y in numbers[1::2])


@pytest.mark.parametrize("shape", SHAPES)
def test_the_outline_holds_the_area_that_was_reckoned(shape):
    """A second method: the drawn outline's area by the corner-by-corner sum, arcs of it as 6 chords to the quarter."""
    section = Section(reply(shape=shape, part_length="1 ft", **TYPED[shape]).given.values)
    outline, *hole = [abs(_shoelace(loop)) for loop in section.outlines()]
    assert outline - sum(hole) == pytest.approx(section.area, rel=0.012)
    width, height = section.extent()
    for loop in section.outlines():
        assert all(-1e-9 <= x <= width + 1e-9 and -1e-9 <= y <= height + 1e-9 for x, y in loop)


def _shoelace(loop):
    return sum(x * v - u * y for (x, y), (u, v) in zip(loop, [*loop[1:], loop[0]], strict=True)) / 2


def test_the_balance_point_is_that_of_the_outline():
    """The same second method for the centre of gravity of angle and channel."""
    for shape in ("angle", "channel"):
        section = Section(reply(shape=shape, part_length="1 ft", **TYPED[shape]).given.values)
        (loop,) = section.outlines()
        pairs = list(zip(loop, [*loop[1:], loop[0]], strict=True))
        area = _shoelace(loop)
        right = sum((x + u) * (x * v - u * y) for (x, y), (u, v) in pairs) / (6 * area)
        above = sum((y + v) * (x * v - u * y) for (x, y), (u, v) in pairs) / (6 * area)
        assert section.balance() == pytest.approx((right, above))


def test_pipe_by_name_equals_tube_by_size():
    named = ask(shape="pipe", part_length="20 ft", **TYPED["pipe"])["results"]
    sized = ask(shape="round-tube", part_length="20 ft", **TYPED["round-tube"])["results"]
    assert named["total_mass"]["value"] == pytest.approx(sized["total_mass"]["value"])
    # ASTM A53, second list: 10.80 lb/ft
    assert named["total_mass"]["value"] == pytest.approx(216.0, rel=2e-3)
    assert named["diameter"]["value"] == pytest.approx(4.5)
    assert named["wall"]["value"] == pytest.approx(0.237)


def test_a_blank_radius_is_twice_the_wall_and_said():
    typed = {"shape": "rectangular-tube", "part_length": "1 ft", **TYPED["rectangular-tube"]}
    came = reply(**typed)
    assert "twice the wall, 0.5 in" in said(came.answer.notes)
    assert result("total_mass", **typed) == pytest.approx(result("total_mass", corner_radius="1/2 in", **typed))
    # AISC HSS4X3X1/4 by its nominal wall: 10.51 lb/ft.
    assert result("total_mass", **typed) == pytest.approx(10.51, rel=2e-3)
    sharp = result("total_mass", **{**typed, "shape": "sharp-tube"})
    assert sharp == pytest.approx(2 * 0.25 * (4 + 3 - 0.5) * 12 * 7850 / 27679.90471, rel=1e-6)
    assert sharp > result("total_mass", **typed)


def test_a_radius_that_would_not_fit_is_taken_smaller():
    typed = {"shape": "rectangular-tube", "part_width": "20 mm", "part_height": "20 mm", "wall": "6 mm"}
    came = reply(part_length="1 m", **typed)
    section = Section(came.given.values)
    assert section.sizes["corner_radius"] == pytest.approx(0.010)


# ---------------------------------------------------------------- the other blanks


@pytest.mark.parametrize("shape", SHAPES)
def test_there_and_back_by_length_pieces_and_density(shape):
    typed = {"shape": shape, "material": "other", **TYPED[shape]}
    known = {"part_length": "2.5 m", "piece_count": "7", "density": "7000 kg/m3"}
    mass = result("total_mass", units="si", **typed, **known)
    for blank, wanted in (("part_length", 2.5), ("piece_count", 7.0), ("density", 7000.0)):
        others = {name: text for name, text in known.items() if name != blank}
        answer = ask(units="si", **typed, **others, total_mass=f"{mass:.12g} kg")
        assert answer["solved_for"] == blank
        assert answer["results"][blank]["value"] == pytest.approx(wanted, rel=1e-9)


def test_pieces_are_counted_down_to_whole_ones():
    came = reply(shape="angle", part_length="10 ft", total_mass="500 lb", **TYPED["angle"])
    # 4 x 3 x 3/8: 2.484 in2, 8.454 lb/ft, 84.5 lb each
    assert came.answer.results[0].value == pytest.approx(5.91, abs=0.01)
    assert said([came.answer.results[0].in_words]) == "whole pieces within that weight: 5"
    few = errors(shape="angle", part_length="10 ft", total_mass="80 lb", **TYPED["angle"])
    assert few[""].startswith("Pieces would have to be 0.9462")


def test_exactly_whole_pieces_do_not_lose_one_to_the_last_bit():
    for count in range(1, 40):
        mass = count * 0.05 * 0.01 * 0.3 * 7850
        came = reply(
            shape="flat-bar", part_width="50 mm", thickness="10 mm", part_length="300 mm", total_mass=f"{mass:.10g} kg"
        )
        assert said([came.answer.results[0].in_words]).endswith(f": {count}")


def test_a_weighed_piece_of_unknown_metal_finds_the_closest():
    came = ask(shape="round-bar", material="other", diameter="1 in", part_length="1 ft", total_mass="0.93 lb")
    assert came["solved_for"] == "density"
    assert came["results"]["closest_metal"]["text"].startswith("Aluminum")


def test_a_length_and_a_weight_together_are_compared():
    agrees = reply(shape="pipe", part_length="10 ft", piece_count="1", total_mass="108 lb", **TYPED["pipe"])
    assert agrees.agreement.id == "agree.yes"
    differs = reply(shape="pipe", part_length="10 ft", piece_count="1", total_mass="150 lb", **TYPED["pipe"])
    assert differs.agreement.id == "agree.over"


def test_length_and_weight_without_pieces_ask_how_many():
    answer = ask(shape="pipe", part_length="10 ft", total_mass="216 lb", **TYPED["pipe"])
    assert answer["solved_for"] == "piece_count"


# ---------------------------------------------------------------- how sure


def test_pipe_carries_the_tolerance_of_its_standard_and_other_metals_their_spread():
    steel = ask(shape="pipe", part_length="1 ft", **TYPED["pipe"])["results"]["total_mass"]
    assert steel["low"] == pytest.approx(0.9 * steel["value"])
    assert steel["high"] == pytest.approx(1.1 * steel["value"])
    stainless = ask(shape="plate", material="stainless", part_length="1 ft", **TYPED["plate"])["results"]["total_mass"]
    assert stainless["high"] / stainless["value"] == pytest.approx(8030 / 7930)
    plate = ask(shape="plate", part_length="1 ft", **TYPED["plate"])["results"]["total_mass"]
    assert "low" not in plate or plate["low"] is None


@pytest.mark.parametrize("shape", SHAPES)
def test_every_answer_warns_before_a_lift(shape):
    cautions = said(reply(shape=shape, part_length="1 ft", **TYPED[shape]).answer.cautions)
    for words in ("weigh it", "qualified person", "center of gravity", "Never stand"):
        assert words in cautions


def test_nothing_said_reads_as_leave_to_lift():
    for text in part_weight.CALCULATOR.english.values():
        assert not re.search(r"\b(safe|ok|okay|may lift|can lift|allowed)\b", text.lower()), text


# ---------------------------------------------------------------- refusals


def test_a_pipe_that_the_table_lacks_is_refused_by_name():
    found = errors(shape="pipe", pipe_size="dn-125", pipe_schedule="60", part_length="1 ft")
    assert found == {
        "pipe_schedule": "The table has no 5 in (DN 125) pipe in schedule 60. Choose another, or give diameter and wall"
    }


@pytest.mark.parametrize(
    ("typed", "field"),
    [
        ({"shape": "round-tube", "diameter": "1 in", "wall": "0.51 in"}, "wall"),
        ({"shape": "rectangular-tube", "part_width": "1 in", "part_height": "3 in", "wall": "0.51 in"}, "wall"),
        ({"shape": "angle", "first_leg": "1 in", "second_leg": "3 in", "thickness": "1.1 in"}, "thickness"),
        ({**TYPED["channel"], "shape": "channel", "web_thickness": "2 in"}, "web_thickness"),
        ({**TYPED["channel"], "shape": "channel", "flange_thickness": "3.1 in"}, "flange_thickness"),
        ({**TYPED["rectangular-tube"], "shape": "rectangular-tube", "corner_radius": "0.2 in"}, "corner_radius"),
        ({**TYPED["rectangular-tube"], "shape": "rectangular-tube", "corner_radius": "1.6 in"}, "corner_radius"),
    ],
)
def test_sizes_that_do_not_fit_together_are_refused(typed, field):
    assert list(errors(part_length="1 ft", **typed)) == [field]


def test_missing_sizes_are_waited_for():
    came = asking.ask(part_weight.CALCULATOR, [("part_width", "4 in"), ("part_length", "1 ft")])
    assert came.state == "waiting"
    assert came.waiting is not None
    assert sentence(came.waiting, CONTEXT) == "Waiting for: Thickness"


# ---------------------------------------------------------------- properties


sizes = st.floats(0.01, 0.5)


@settings(max_examples=60, deadline=None)
@given(width=sizes, thickness=st.floats(0.001, 0.009), factor=st.floats(1.1, 4.0))
def test_twice_the_size_is_four_times_the_section(width, thickness, factor):
    shapes = {
        "plate": {"part_width": width, "thickness": thickness},
        "round-tube": {"diameter": width, "wall": thickness / 2},
        "rectangular-tube": {"part_width": width, "part_height": width, "wall": thickness / 2},
        "angle": {"first_leg": width, "second_leg": width, "thickness": thickness},
    }
    for shape, values in shapes.items():
        small = Section({"shape": shape, **values})
        scaled = {name: value * factor if isinstance(value, float) else value for name, value in values.items()}
        assert Section({"shape": shape, **scaled}).area == pytest.approx(small.area * factor**2)


@settings(max_examples=60, deadline=None)
@given(width=sizes, thickness=st.floats(0.001, 0.0045))
def test_hollow_is_lighter_than_solid_and_heavier_with_more_wall(width, thickness):
    for shape, names in SIZES_OF:
        if "wall" not in names:
            continue
        values = dict.fromkeys(names, width) | {"shape": shape}
        thin = Section({**values, "wall": thickness / 2}).area
        thick = Section({**values, "wall": thickness}).area
        assert 0 < thin < thick < width * width
