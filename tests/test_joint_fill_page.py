"""What the joint-fill question answers, waits for and refuses. The geometry is checked in tests/published.

Expected numbers are worked out by hand beside each test from the sums whose sources stand in tests/published.
"""

import json
import math
import re

import pytest

from calculators import asking, joint_fill
from calculators.contract import Choice, Drawing, Number
from calculators.joint_section import BEVELLED, JOINTS
from tests import walking
from tests.published.joints import SQUARE
from webapp import shelf
from webapp.catalogue import Context, sentence

CONTEXT = Context("en", "us", "0")
OPTIONS = (*JOINTS, "fillet-by-throat")
QUARTER = {"leg": "1/4 in"}
FOUR_MILLIMETRE_THROAT = {"joint": "fillet-by-throat", "throat": "4 mm"}


def ask(units="us", status=200, **typed):
    """Return what the API replies, results in US units unless asked otherwise."""
    reply = walking.reply("/api/joint-fill", list(typed.items()), system=units)
    assert reply.status == status, reply.body
    return json.loads(reply.body)


def value(answer, name):
    return answer["results"][name]["value"]


def errors(**typed):
    return {field: text.replace("\u00a0", " ") for field, text in ask(status=422, **typed)["errors"].items()}


def said(answer, part):
    return " ".join(answer[part]).replace("\u00a0", " ")


def typed_of(joint):
    """Return the ordinary joint of a kind as it is typed, in metric."""
    typed = {"joint": joint}
    for name, size in SQUARE[joint].items():
        typed[name] = f"{size:g} deg" if name == "included_angle" else f"{size:g} mm"
    return typed


def found(**typed):
    """Return the Answer, or fail."""
    reply = asking.ask(joint_fill.CALCULATOR, list(typed.items()))
    assert reply.answer is not None, reply.errors
    return reply.answer


def figure(**typed):
    (drawing,) = [result for result in found(**typed).results if isinstance(result, Drawing)]
    return drawing


def texts(**typed):
    """Return the labels in the drawing."""
    labels = [shape[3] for shape in figure(**typed).shapes if shape[0] == "text"]
    shown = walking.reply("/joint-fill", list(typed.items()), partial=True).body
    written = re.findall(r"<text[^>]*>([^<]*)</text>", shown)
    assert len(written) == len(labels)
    return [text.replace("\u00a0", " ") for text in written]


# ---------------------------------------------------------------- a length, a spool, or both


def test_length_gives_the_wire():
    # 0.106 lb/ft x 1.2 = 0.1273; x 40 ft = 5.10 lb of metal (0.2836 lb/in3); ÷ 0.96 ÷ 0.95 = 5.60 lb of wire.
    answer = ask(weld_length="40 ft", **QUARTER)
    assert answer["solved_for"] == "wire_mass"
    assert value(answer, "wire_mass") == pytest.approx(5.60, abs=0.005)
    assert value(answer, "deposit_mass") == pytest.approx(5.10, abs=0.006)
    assert value(answer, "deposit_per_length") == pytest.approx(0.1276, abs=5e-5)


def test_spool_gives_the_length():
    answer = ask(wire_mass="10 lb", **QUARTER)
    assert answer["solved_for"] == "weld_length"
    # 10 x 0.95 x 0.96 = 9.12 lb of metal ÷ 0.12762 lb/ft = 71.46 ft.
    assert value(answer, "weld_length") / 12.0 == pytest.approx(71.46, abs=0.01)
    assert "71.5 ft" in answer["results"]["weld_length"]["text"].replace("\u00a0", " ")


def test_length_and_spool_are_found_back_from_each_other():
    length = value(ask(wire_mass="10 lb", **QUARTER), "weld_length")
    assert value(ask(weld_length=f"{length} in", **QUARTER), "wire_mass") == pytest.approx(10.0)


def test_plugs_are_found_back_from_the_wire_for_them():
    plug = {"joint": "plug", "thickness": "1/4 in", "hole_diameter": "5/8 in"}
    wire = value(ask(weld_count="20", **plug), "wire_mass")
    assert value(ask(wire_mass=f"{wire} lb", **plug), "weld_count") == 20
    # pi/4 x 0.625^2 x 0.25 in3 x 0.2836 lb/in3 x 1.1, by hand.
    assert value(ask(weld_count="20", **plug), "deposit_each") == pytest.approx(0.02393, abs=2e-5)


def test_too_little_wire_for_one_plug_is_refused():
    refused = errors(joint="plug", thickness="1 in", hole_diameter="2 in", wire_mass="0.1 lb")
    assert "How many would have to be 0" in refused[""]


@pytest.mark.parametrize(("spool", "state"), [("5 lb", "outside"), ("6 lb", "unclear"), ("11 lb", "inside")])
def test_length_and_spool_are_compared(spool, state):
    # 5.60 lb needed, as much as 5.60 x 1.45/1.2 x 0.96/0.92 = 7.06 lb.
    answer = ask(weld_length="40 ft", wire_mass=spool, **QUARTER)
    assert answer["verdict"] == state
    assert value(answer, "wire_needed") == pytest.approx(5.60, abs=0.005)


def test_sizes_alone_give_metal_for_each_length():
    answer = ask(**QUARTER)
    assert next(iter(answer["results"])) == "deposit_per_length"
    assert "wire_mass" not in answer["results"]


def test_nothing_but_a_length_waits_for_the_leg():
    assert errors(weld_length="40 ft") == {"": "Waiting for: Leg"}


# ---------------------------------------------------------------- leg and throat


def test_throat_on_the_drawing_gives_the_leg_to_make():
    answer = ask(units="si", **FOUR_MILLIMETRE_THROAT)
    assert value(answer, "leg") == pytest.approx(5.657, abs=5e-4)
    # a^2 = 16 mm2, times 1.2.
    assert value(answer, "weld_area") == pytest.approx(19.2)


def test_leg_and_throat_of_the_same_number_are_not_the_same_weld():
    by_leg = ask(units="si", leg="4 mm")
    by_throat = ask(units="si", **FOUR_MILLIMETRE_THROAT)
    assert value(by_throat, "weld_area") == pytest.approx(2.0 * value(by_leg, "weld_area"))
    assert value(by_leg, "throat") == pytest.approx(2.828, abs=5e-4)
    assert by_leg["results"]["throat"]["text"] == "not the leg"
    assert by_throat["results"]["leg"]["text"] == "not the throat"


def test_throat_of_a_hollow_fillet_counts_from_the_hollow():
    # (4 + 0.5) x 1.4142 = 6.364 mm.
    answer = ask(units="si", concavity="0.5 mm", **FOUR_MILLIMETRE_THROAT)
    assert value(answer, "leg") == pytest.approx(6.364, abs=5e-4)
    assert "(4 mm + 0.5 mm)" in said(answer, "working")


# ---------------------------------------------------------------- overwelding, efficiency, waste


def test_usual_overweld_depends_on_what_is_known_of_the_face():
    assert "× 1.2 =" in said(ask(**QUARTER), "working")
    assert "× 1 =" in said(ask(convexity="1/32 in", **QUARTER), "working")
    groove = {"joint": "single-v", "thickness": "3/8 in", "included_angle": "60"}
    assert "× 1.1 =" in said(ask(**groove), "working")
    assert "× 1 =" in said(ask(reinforcement="1/16 in", **groove), "working")
    assert "× 1.4 =" in said(ask(overweld_factor="1.4", **QUARTER), "working")


def test_own_factor_and_efficiency_leave_no_band():
    answer = ask(weld_length="1 ft", overweld_factor="1", deposition_efficiency="90 %", waste="0 %", **QUARTER)
    assert "low" not in answer["results"]["wire_mass"]
    # 0.03125 in2 x 12 in x 0.28360 lb/in3 ÷ 0.9.
    assert value(answer, "wire_mass") == pytest.approx(0.1182, abs=5e-5)


def test_band_runs_from_the_bare_triangle_to_a_generous_bead():
    wire = ask(weld_length="40 ft", **QUARTER)["results"]["wire_mass"]
    assert wire["low"] / wire["value"] == pytest.approx(1.0 / 1.2 * 0.96 / 1.0)
    assert wire["high"] / wire["value"] == pytest.approx(1.45 / 1.2 * 0.96 / 0.92)


@pytest.mark.parametrize(
    ("gas", "expected"), [("metal-cored", "93 %"), ("flux-cored-self-shielded", "78 %"), ("", "96 %")]
)
def test_efficiency_goes_with_wire_and_gas(gas, expected):
    assert expected in said(ask(wire_and_gas=gas, **QUARTER), "notes")


def test_aluminum_is_a_third_of_the_mass_and_runs_in_argon():
    steel, aluminum = ask(**QUARTER), ask(wire_material="aluminum", **QUARTER)
    ratio = value(aluminum, "deposit_per_length") / value(steel, "deposit_per_length")
    assert ratio == pytest.approx(2670.0 / 7850.0)
    assert errors(wire_material="aluminum", wire_and_gas="solid-carbon-dioxide", **QUARTER) == {
        "wire_and_gas": "Aluminum wire runs solid, in argon"
    }


# ---------------------------------------------------------------- passes, travel, time, gas

RUN = {"wire_diameter": "0.035 in", "wire_feed_speed": "300 in/min"}


def test_time_and_gas():
    # 4.71 lb/h (tests/published): 5.10 lb take 65.0 min of arc, at 15 % 433 min; 30 ft3/h x 65 min = 32.5 ft3.
    answer = ask(weld_length="40 ft", gas_flow="30 ft3/h", **RUN, **QUARTER)
    assert value(answer, "arc_time") == pytest.approx(64.96, abs=0.02)
    assert value(answer, "clock_time") == pytest.approx(433.1, abs=0.1)
    assert answer["results"]["clock_time"]["text"] == "7 h 13 min"
    assert value(answer, "gas_volume") == pytest.approx(32.48, abs=0.01)
    # 300 in/min x 0.000962 in2 x 0.96 ÷ 0.0375 in2.
    assert value(answer, "travel_speed") == pytest.approx(7.389, abs=1e-3)


def test_passes_share_the_metal_and_travel_faster():
    whole = ask(**RUN, leg="1/2 in")
    shared = ask(largest_bead="1/4 in", **RUN, leg="1/2 in")
    assert value(shared, "passes") == 4  # (1/2 ÷ 1/4)^2
    assert value(shared, "travel_speed") == pytest.approx(4.0 * value(whole, "travel_speed"))


def test_fillet_no_larger_than_the_largest_bead_is_one_pass():
    assert value(ask(leg="5/16 in", largest_bead="5/16 in"), "passes") == 1


def test_cored_wire_gets_its_mass_and_no_travel():
    answer = ask(wire_and_gas="flux-cored-gas-shielded", weld_length="10 ft", **RUN, **QUARTER)
    assert "wire_mass" in answer["results"]
    assert not {"travel_speed", "arc_time", "deposition_rate"} & set(answer["results"])
    assert "cored wire" in said(answer, "notes")


# ---------------------------------------------------------------- shapes that cannot be

REFUSALS = (
    ({"joint": "lap", "leg": "3/8 in", "thickness": "1/4 in"}, "leg", "there the edge ends"),
    ({"leg": "6 mm", "convexity": "1 mm", "concavity": "1 mm"}, "concavity", "not both"),
    ({"joint": "edge", "thickness": "3 mm"}, "reinforcement", "height of the bead"),
    ({"joint": "square-butt", "thickness": "3 mm"}, "root_gap", "takes no wire"),
    ({"joint": "square-butt", "thickness": "3 mm", "reinforcement": "1 mm"}, "bead_width", "width of the bead"),
    ({"leg": "6 mm", "second_leg": "20 mm"}, "second_leg", "a bead on one plate"),
    ({"leg": "6 mm", "joint_angle": "45 deg"}, "joint_angle", "between 60 ° and 120 °"),
    ({"leg": "6 mm", "root_gap": "6 mm"}, "root_gap", "never more than its leg"),
    ({"leg": "6 mm", "convexity": "3 mm"}, "convexity", "hang over"),
    ({"leg": "6 mm", "concavity": "2 mm"}, "concavity", "run along the plate"),
    ({"joint": "single-v", "thickness": "10 mm", "included_angle": "10"}, "included_angle", "no sharper"),
    (
        {"joint": "single-v", "thickness": "10 mm", "included_angle": "60", "root_face": "10 mm"},
        "root_face",
        "bevelled",
    ),
    (
        {"joint": "single-u", "thickness": "10 mm", "included_angle": "20", "root_radius": "15 mm"},
        "root_radius",
        "below the surface",
    ),
    ({"joint": "slot", "thickness": "6 mm", "slot_width": "20 mm", "slot_length": "10 mm"}, "slot_length", "as long"),
    (
        {"joint": "plug", "thickness": "6 mm", "hole_diameter": "20 mm", "fill_depth": "7 mm"},
        "fill_depth",
        "no deeper than the plate",
    ),
)


@pytest.mark.parametrize(("typed", "field", "reason"), REFUSALS)
def test_shape_that_cannot_be_is_refused_beside_its_box(typed, field, reason):
    refused = errors(**typed)
    assert list(refused) == [field]
    assert reason in refused[field]


def test_limit_that_is_shown_is_accepted():
    shown = errors(leg="6 mm", convexity="3 mm")["convexity"]
    most = re.search(r"and ([0-9.]+ mm)", shown)
    assert most
    assert ask(leg="6 mm", convexity=most.group(1))


def test_bulge_over_the_inspection_limit_is_a_caution():
    # AWS D1.1 by width of face, from memory: 0.354 in wide takes 1/8 in; under 5/16 in wide 1/16 in.
    assert "at most" in said(ask(leg="3/16 in", convexity="0.066 in"), "cautions")
    assert "at most" not in said(ask(leg="3/16 in", convexity="1/16 in"), "cautions")
    assert "at most" not in said(ask(leg="1/4 in", convexity="0.08 in"), "cautions")


@pytest.mark.parametrize(("gap", "id"), [("1/32 in", "to keep the throat"), ("3/32 in", "AWS D1.1")])
def test_gap_under_a_fillet_says_what_it_does(gap, id):
    assert id in said(ask(root_gap=gap, **QUARTER), "notes")


# ---------------------------------------------------------------- the drawing


@pytest.mark.parametrize("joint", JOINTS)
def test_drawing_is_to_scale_and_on_the_paper(joint):
    drawing = figure(**typed_of(joint))
    numbers = [number for shape in drawing.shapes for number in shape[1]]
    assert all(isinstance(number, int) for number in numbers)
    for form, places, _, _ in drawing.shapes:
        if form != "text":
            assert all(0 <= x <= drawing.width for x in places[::2]), (form, places)
            assert all(0 <= y <= drawing.height for y in places[1::2]), (form, places)


def test_square_of_the_paper_is_a_square_of_the_plate():
    # Twice everything is the same drawing, to the pixel.
    small = figure(leg="6 mm", second_leg="8 mm", convexity="0.5 mm")
    large = figure(leg="12 mm", second_leg="16 mm", convexity="1 mm")
    for one, other in zip(small.shapes, large.shapes, strict=True):
        assert one[:3] == other[:3]


def test_legs_are_drawn_in_proportion():
    weld = next(shape[1] for shape in figure(leg="4 mm", second_leg="8 mm").shapes if shape[2] == "band-area")
    across, up = max(weld[::2]) - min(weld[::2]), max(weld[1::2]) - min(weld[1::2])
    assert across / up == pytest.approx(2.0, abs=0.03)


def test_drawing_carries_the_sizes_typed():
    assert "leg 0.25 in" in texts(**QUARTER)
    assert {"throat", "0.1768 in"} <= set(texts(**QUARTER))
    groove = texts(joint="single-v", thickness="10 mm", root_gap="2 mm", root_face="1.5 mm", included_angle="60")
    assert {"plate", "10 mm", "root gap 2 mm", "root face", "1.5 mm", "included angle 60 °"} <= set(groove)


@pytest.mark.parametrize("joint", OPTIONS)
def test_drawing_has_words_for_those_who_cannot_see_it(joint):
    typed = typed_of(joint) if joint in JOINTS else FOUR_MILLIMETRE_THROAT
    drawing = figure(**typed)
    assert sentence(drawing.title, CONTEXT).endswith("cross-section as drawn, to scale")
    assert re.search(
        r"Weld metal as drawn: [0-9.]+.in²\.|Weld metal as drawn: [0-9.]+.mm²\.", sentence(drawing.description, CONTEXT)
    )


# ---------------------------------------------------------------- form and next questions


@pytest.mark.parametrize("joint", OPTIONS)
def test_only_the_boxes_of_the_joint_are_asked(joint):
    page = walking.reply("/joint-fill", [("joint", joint)]).body
    shown = re.findall(
        r'<div class="field(?: stepped)?"(?: data-when="joint" data-when-is="[^"]*")?><label for="([a-z_]+)"', page
    )
    assert ("leg" in shown) == (joint in ("fillet", "lap"))
    assert ("throat" in shown) == (joint == "fillet-by-throat")
    assert ("included_angle" in shown) == (joint in BEVELLED)
    assert ("hole_diameter" in shown) == (joint == "plug")
    assert ("weld_length" in shown) == (joint not in ("plug", "slot"))


@pytest.mark.parametrize("joint", OPTIONS)
def test_every_joint_has_an_answer_with_its_sources(joint):
    answer = ask(**(typed_of(joint) if joint in JOINTS else FOUR_MILLIMETRE_THROAT))
    titles = [source.title for source in joint_fill.CALCULATOR.sources]
    assert answer["sources"]
    assert all(source["title"] in titles for source in answer["sources"])


def test_next_questions_carry_values_that_are_taken():
    names = {each.calculator for each in found(**QUARTER, **RUN).next_questions}
    assert names == {"travel-speed", "heat-input", "fillet-size", "shrinkage", "weld-cost"}
    page = walking.reply("/joint-fill", [*QUARTER.items(), *RUN.items()], partial=True).body
    address = re.search(r'href="travel-speed\?([^"]*)"', page)
    assert address
    pairs = [tuple(pair.split("=", 1)) for pair in address.group(1).replace("&amp;", "&").split("&")]
    pairs = [(name, text.replace("+", " ").replace("%2F", "/").replace("%20", " ")) for name, text in pairs]
    carried = json.loads(walking.reply("/api/travel-speed", pairs, system="us").body)
    assert carried["results"]["travel_speed"]["value"] == pytest.approx(
        value(ask(**RUN, **QUARTER), "travel_speed"), rel=1e-4
    )


def test_steel_goes_on_to_its_strength_and_its_shrinkage_with_its_own_sizes():
    def carried(**typed):
        return {
            each.calculator: {name: getattr(value, "value", value) for name, value in each.carried}
            for each in found(**typed).next_questions
        }

    fillet = carried(leg="6 mm", root_gap="2 mm", weld_length="1 m")
    assert fillet["fillet-size"] == pytest.approx({"leg": 0.006, "root_gap": 0.002})
    assert fillet["shrinkage"] == {"joint": "tee-fillets", "leg": pytest.approx(0.006), "weld_length": 1.0}
    lap = carried(joint="lap", leg="4 mm", thickness="5 mm")
    assert lap["fillet-size"] == {"leg": pytest.approx(0.004), "joint": "lap", "edge_thickness": 0.005}
    groove = carried(joint="single-v", thickness="10 mm", root_gap="2 mm", included_angle="60 deg", overweld_factor="1")
    # By hand: 10 x 2 and a triangle 10 deep and 2 x 10 tan 30 wide.
    area = 20e-6 + 100e-6 * math.tan(math.radians(30.0))
    assert groove["shrinkage"] == {
        "joint": "butt",
        "weld_area": pytest.approx(area),
        "thickness": 0.01,
        "root_opening": 0.002,
    }
    # Strength and shrinkage are reckoned for steel and for equal legs between square plates.
    assert {"fillet-size", "shrinkage"}.isdisjoint(carried(leg="6 mm", wire_material="aluminum"))
    assert {"fillet-size", "shrinkage"}.isdisjoint(carried(leg="6 mm", second_leg="8 mm"))
    assert {"fillet-size", "shrinkage"}.isdisjoint(carried(leg="6 mm", joint_angle="75 deg"))


def test_every_next_question_is_on_the_shelf_and_takes_what_it_is_given():
    for name in ("joint-fill", "travel-speed"):
        for _, came in walking.answered(name):
            assert came.answer is not None
            for each in came.answer.next_questions:
                if each.calculator in shelf.names():
                    asked = walking.calculator(each.calculator)
                    for field, _ in each.carried:
                        asked.field(field)


def test_headline_is_a_number():
    for joint in JOINTS:
        assert isinstance(found(**typed_of(joint)).results[0], Number)


def test_every_joint_is_offered():
    (field,) = [field for field in joint_fill.CALCULATOR.fields if field.name == "joint"]
    assert isinstance(field, Choice)
    assert sorted(field.options) == sorted(OPTIONS)


WELD = {"leg": "1/4 in", "weld_length": "10 ft", "wire_diameter": "0.035 in", "wire_feed_speed": "300 in/min"}


@pytest.mark.parametrize(("typed", "share"), [({}, 0.15), ({"operating_factor": "30 %"}, 0.30)])
def test_clock_time_is_arc_time_over_the_operating_factor(typed, share):
    answer = ask(**WELD, **typed)
    assert value(answer, "clock_time") * share == pytest.approx(value(answer, "arc_time"))
    assert f"at {100 * share:g} % of the time" in said(answer, "working")


@pytest.mark.parametrize(("typed", "word"), [("convexity", "Bulge"), ("concavity", "Hollow")])
def test_working_names_the_way_the_face_goes(typed, word):
    assert word + " = " in said(ask(leg="6 mm", **{typed: "0.5 mm"}), "working")
