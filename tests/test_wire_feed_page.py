"""The wire-feed question from what is typed to what is answered. The law itself is checked in tests/published.

Expected numbers are worked out here from the two coefficients of mild steel at 1.2 mm, 0.30 mm/(A s) and
5.0e-5 1/(A² s) (Amin 1983, in Norrish, Advanced Welding Processes; from memory): they catch a slip between the form
and the law, never a wrong coefficient. Checks against other numbers name their source and its standing.
"""

import itertools
import json
import re

import pytest

from calculators import asking, wire_feed
from calculators.contract import Drawing, Number
from webapp import pocket
from webapp.catalogue import Context, sentence

CONTEXT = Context("en", "us", "0")
IN_PER_MIN = 0.0254 / 60.0
WIRE = {"wire_material": "mild-steel", "wire_diameter": "0.035 in"}


def ask(**typed):
    return asking.ask(wire_feed.CALCULATOR, list(typed.items()))


def answer(**typed):
    reply = ask(**typed)
    assert reply.state == "answer", [sentence(message, CONTEXT) for _, message in reply.errors]
    return reply


def headline(**typed):
    result = answer(**typed).answer.results[0]
    assert isinstance(result, Number)
    return result


def problem(**typed):
    """Return the one field at fault and its sentence."""
    reply = ask(**typed)
    assert reply.state == "problem"
    ((field, message),) = reply.errors
    return field, sentence(message, CONTEXT)


def api(**typed):
    reply = pocket.respond(pocket.Request("/api/wire-feed", list(typed.items()), False), "en", "0")
    return reply.status, json.loads(reply.body)


def presets(name, system):
    """Return what the buttons below a box fill in."""
    page = pocket.respond(pocket.Request("/wire-feed", [("units", system)], False), "en", "0").body
    found = re.findall(f'data-fill="{name}" data-number="([^"]*)" data-unit="([^"]*)"', page)
    return [f"{number} {unit}".strip() for number, unit in found]


def said(messages):
    return " ".join(sentence(message, CONTEXT) for message in messages)


def by_hand(diameter, current, extension):
    """Return the feed of mild steel wire, [mm] and [A] in, [m/min] out."""
    area = (1.2 / diameter) ** 2
    return (0.30 * area * current + 5.0e-5 * area * area * extension * current * current) * 0.06


# --- One of three is the blank


def test_a_bare_question_gives_the_feed_and_its_band():
    status, body = api(**WIRE, current="125 A", contact_tip_to_work="15 mm")
    assert status == 200
    assert body["solved_for"] == "wire_feed_speed"
    feed = body["results"]["wire_feed_speed"]
    assert feed["unit"] == "m/min"
    assert feed["value"] == pytest.approx(by_hand(0.889, 125, 12), rel=1e-9)  # 15 mm less 3 mm of arc
    assert feed["low"] == pytest.approx(0.85 * feed["value"], rel=1e-9)
    assert feed["high"] == pytest.approx(1.15 * feed["value"], rel=1e-9)


def test_mild_steel_and_solid_are_taken_where_nothing_is_said():
    bare = headline(wire_diameter="0.035 in", current="125 A", contact_tip_to_work="15 mm")
    assert bare.value == headline(**WIRE, wire_kind="solid", current="125 A", contact_tip_to_work="15 mm").value


def test_the_feed_gives_the_current_and_a_narrower_band():
    feed = by_hand(0.889, 125, 12)
    status, body = api(**WIRE, wire_feed_speed=f"{feed:.9f} m/min", contact_tip_to_work="15 mm")
    assert (status, body["solved_for"]) == (200, "current")
    current = body["results"]["current"]
    assert current["value"] == pytest.approx(125.0, rel=1e-6)
    assert 125 / 1.15 < current["low"] < 125 < current["high"] < 125 / 0.85


def test_feed_and_current_give_the_distance_with_a_wide_band():
    """1.2 mm, 200 A, 5.40 m/min belong to 15 mm of wire past the tip; with 3 mm of arc 18 mm."""
    status, body = api(wire_diameter="1.2 mm", current="200 A", wire_feed_speed="5.40 m/min")
    assert (status, body["solved_for"]) == (200, "contact_tip_to_work")
    distance = body["results"]["contact_tip_to_work"]
    assert distance["value"] == pytest.approx(18.0, abs=0.01)
    # By hand: 5400/60 = 90 mm/s; (90 / 1.15 - 60) / 2 = 9.13 mm, (90 / 0.85 - 60) / 2 = 22.94 mm; 3 mm of arc.
    assert distance["low"] == pytest.approx(12.13, abs=0.01)
    assert distance["high"] == pytest.approx(25.94, abs=0.01)


@pytest.mark.parametrize(
    ("current", "feed", "low", "high"),
    [
        # 38.33 / 1.15 - 33 is less than 3 mm of 0.605 mm/s each; (38.33 / 0.85 - 33) / 0.605 = 20.0 mm; 3 mm of arc
        ("110 A", "2.3 m/min", 6.0, 23.0),
        # (75.33 / 1.15 - 45) / 1.125 = 18.23 mm; 75.33 / 0.85 - 45 is more than 30 mm of 1.125 mm/s each
        ("150 A", "4.52 m/min", 21.23, 33.0),
    ],
)
def test_the_distance_band_stops_where_the_law_does(current, feed, low, high):
    distance = headline(wire_diameter="1.2 mm", current=current, wire_feed_speed=feed)
    assert distance.low * 1000 == pytest.approx(low, abs=0.01)
    assert distance.high * 1000 == pytest.approx(high, abs=0.01)


@pytest.mark.parametrize("material", ["mild-steel", "stainless"])
@pytest.mark.parametrize("transfer", ["", "short-circuit", "spray"])
@pytest.mark.parametrize(
    ("size", "current", "distance"), [("0.8 mm", 100, 14), ("0.045 in", 180, 16), ("1.2 mm", 240, 19)]
)
def test_there_and_back_by_all_three(material, transfer, size, current, distance):
    wire = {"wire_material": material, "wire_diameter": size, "transfer_mode": transfer}
    amps, millimeters = f"{current} A", f"{distance} mm"
    feed = headline(**wire, current=amps, contact_tip_to_work=millimeters).value
    typed = f"{feed * 60:.12f} m/min"
    back = headline(**wire, wire_feed_speed=typed, contact_tip_to_work=millimeters)
    assert back.value == pytest.approx(current, rel=1e-9)
    assert headline(**wire, wire_feed_speed=typed, current=amps).value == pytest.approx(distance / 1000, rel=1e-7)


def test_two_blanks_ask_for_one_of_them():
    for typed, names in (
        ({"current": "125"}, "Wire feed speed or Contact tip to work"),
        ({"contact_tip_to_work": "15"}, "Current or Wire feed speed"),
        ({"wire_feed_speed": "5"}, "Current or Contact tip to work"),
    ):
        reply = ask(wire_diameter="0.9 mm", **typed)
        assert reply.state == "waiting"
        assert sentence(reply.waiting, CONTEXT) == "Waiting for one of: " + names


def test_the_wire_is_waited_for():
    reply = ask(current="125 A", contact_tip_to_work="15 mm")
    assert (reply.state, sentence(reply.waiting, CONTEXT)) == ("waiting", "Waiting for: Wire diameter")


@pytest.mark.parametrize(
    ("feed", "state", "word"),
    [
        ("200 in/min", "inside", "below"),
        ("260 in/min", "inside", "above"),
        ("180 in/min", "outside", "below"),
        ("300 in/min", "outside", "above"),
    ],
)
def test_no_blank_says_whether_the_numbers_fit(feed, state, word):
    """The law: 234.9 in/min; its band 199.7 to 270.2 in/min."""
    found = answer(**WIRE, current="125 A", contact_tip_to_work="15 mm", wire_feed_speed=feed)
    verdict = found.answer.verdict
    assert verdict.state == state
    percent = abs(float(feed.split()[0]) / (by_hand(0.889, 125, 12) / 0.0254) - 1.0) * 100.0
    assert (
        sentence(verdict.message, CONTEXT) == f"your {feed.replace(' ', chr(0xA0))} is {percent:.2g} % {word} the law"
    )
    assert (verdict.remedy is not None) == (state == "outside")
    assert found.given.solved_for is None


def test_what_the_law_itself_says_is_the_same():
    feed = headline(**WIRE, current="125 A", contact_tip_to_work="15 mm").value
    found = answer(**WIRE, current="125 A", contact_tip_to_work="15 mm", wire_feed_speed=f"{feed * 60:.12f} m/min")
    assert "is what the law says" in sentence(found.answer.verdict.message, CONTEXT)


# --- Against numbers of others


def test_a_welder_with_035_wire_at_125_amps_in_short_circuit():
    """200 to 225 in/min is what short-circuit work on 1/8 in steel is set to. Standing: common practice."""
    for distance in ("10 mm", "12 mm"):
        feed = headline(**WIRE, current="125 A", transfer_mode="short-circuit", contact_tip_to_work=distance)
        assert 200.0 <= feed.value / IN_PER_MIN <= 225.0


def test_the_band_of_an_unmeasured_distance_holds_a_measured_pair():
    """2.4 m/min drew 101.9 A in short-circuit; 1.2 mm wire fits. Brazilian thesis; published, excerpt seen."""
    current = headline(
        wire_diameter="1.2 mm",
        wire_feed_speed="2.4 m/min",
        transfer_mode="short-circuit",
        contact_tip_to_work="unknown",
    )
    assert current.low < 101.9 < current.high


# --- A distance nobody measured


def test_a_distance_not_known_is_taken_as_usual_and_widens_the_band():
    """Short-circuit is run at 10 to 12 mm, spray at about 19 mm. Standing: common practice."""
    for transfer, usual in (("short-circuit", (10, 12)), ("spray", (18, 20))):
        guessed = headline(**WIRE, current="150 A", transfer_mode=transfer, contact_tip_to_work="unknown")
        for distance in usual:
            measured = headline(**WIRE, current="150 A", transfer_mode=transfer, contact_tip_to_work=f"{distance} mm")
            assert guessed.low < measured.low
            assert measured.high < guessed.high
            assert measured.value == pytest.approx(guessed.value, rel=0.05)


def test_the_transfer_narrows_what_is_not_known():
    widths = []
    for transfer in ("", "short-circuit"):
        guessed = headline(**WIRE, current="120 A", transfer_mode=transfer, contact_tip_to_work="Unknown")
        widths.append(guessed.high - guessed.low)
    assert widths[1] < widths[0]


def test_what_was_taken_is_said():
    found = answer(**WIRE, current="120 A", contact_tip_to_work="unknown").answer
    assert "Distance not known: 0.51 in taken, and the band holds 0.31 in to 0.98 in." in said(found.notes).replace(
        "\u00a0", " "
    )
    given = answer(**WIRE, current="120 A", contact_tip_to_work="1/2 in").answer
    assert "Distance not known" not in said(given.notes)
    assert "an arc of 0.12 in is taken" in said(given.notes).replace("\u00a0", " ")


def test_the_transfer_decides_the_arc_length():
    """2, 3 and 5 mm of arc. Standing: common practice."""
    for transfer, arc in (("short-circuit", 2), ("", 3), ("spray", 5)):
        feed = headline(wire_diameter="1.2 mm", current="220 A", transfer_mode=transfer, contact_tip_to_work="16 mm")
        assert feed.value * 60 == pytest.approx(by_hand(1.2, 220, 16 - arc), rel=1e-9)


# --- Aluminum


def test_aluminum_needs_no_distance():
    """0.75 mm/(A s) at 1.2 mm, Amin 1983 in Norrish; from memory: 6.75 m/min at 150 A."""
    wire = {"wire_material": "aluminum", "wire_diameter": "1.2 mm"}
    found = answer(**wire, current="150 A")
    assert found.answer.results[0].value * 60 == pytest.approx(6.75, rel=1e-9)
    assert "plays no part" in said(found.answer.notes)
    assert headline(**wire, current="150 A", contact_tip_to_work="20 mm").value == found.answer.results[0].value
    back = headline(**wire, wire_feed_speed="6.75 m/min")
    assert back.value == pytest.approx(150.0, rel=1e-9)


def test_5356_feeds_10_to_15_percent_faster_than_4043_in_a_narrower_band():
    """Standing: common practice."""
    wire = {"wire_material": "aluminum", "wire_diameter": "1.2 mm", "current": "150 A"}
    either, silicon, magnesium = (headline(**wire, filler_alloy=alloy) for alloy in ("", "4043", "5356"))
    assert 1.10 <= magnesium.value / silicon.value <= 1.15
    for alloy in (silicon, magnesium):
        assert alloy.high - alloy.low < either.high - either.low
    assert "5356 feeds" in said(answer(**wire).answer.notes)
    assert "5356 feeds" not in said(answer(**wire, filler_alloy="4043").answer.notes)


def test_aluminum_does_not_tell_the_distance_and_says_why():
    wire = {"wire_material": "aluminum", "wire_diameter": "1.2 mm"}
    field, text = problem(**wire, current="150 A", wire_feed_speed="7 m/min")
    assert field == "contact_tip_to_work"
    assert "conducts so well" in text
    checked = answer(**wire, current="150 A", wire_feed_speed="7 m/min", contact_tip_to_work="unknown")
    assert checked.answer.verdict.state == "inside"


def test_an_alloy_belongs_to_aluminum():
    field, text = problem(wire_diameter="1.2 mm", current="150 A", filler_alloy="4043")
    assert (field, text) == ("wire_material", "Choose Wire metal: it decides how Aluminum alloy is used")
    steel = {"wire_diameter": "1.2 mm", "current": "150 A", "contact_tip_to_work": "15 mm"}
    left_over = headline(wire_material="mild-steel", filler_alloy="4043", **steel)  # hidden on the page, still sent
    assert left_over.value == headline(**steel).value


# --- Refusals


@pytest.mark.parametrize("kind", ["metal-cored", "flux-cored"])
def test_cored_wire_is_refused_with_the_reason(kind):
    for typed in ({}, {"wire_diameter": "0.045 in", "current": "200 A", "contact_tip_to_work": "3/4 in"}):
        field, text = problem(wire_kind=kind, **typed)
        assert field == "wire_kind"
        assert "solid wire only" in text
        assert "sheath carries the current" in text


def test_pulse_is_refused_with_the_reason():
    field, text = problem(**WIRE, current="120 A", transfer_mode="pulse", contact_tip_to_work="15 mm")
    assert field == "transfer_mode"
    assert "Pulsed current melts more" in text


@pytest.mark.parametrize(
    ("typed", "at_fault", "low", "high"),
    [
        # The short-circuit range of AWS C5.6 begins at 75 A (from memory). At 25 mm half the heat would be made in the
        # wire at 0.5466 / (1.660e-4 * 22) = 149.7 A; at 15 mm only above the table's 255 A.
        ({"current": "60 A", "contact_tip_to_work": "15 mm"}, "current", "75 A", "255 A"),
        ({"current": "300 A", "contact_tip_to_work": "15 mm"}, "current", "75 A", "255 A"),
        ({"current": "160 A", "contact_tip_to_work": "25 mm"}, "current", "75 A", "149 A"),
        ({"current": "60 A", "wire_feed_speed": "200 in/min"}, "current", "75 A", "255 A"),
        # (0.5466 * I + 1.660e-4 * 12 * I * I) mm/s at 75 A and 255 A
        (
            {"wire_feed_speed": "90 in/min", "contact_tip_to_work": "15 mm"},
            "wire_feed_speed",
            "124 in/min",
            "635 in/min",
        ),
        (
            {"wire_feed_speed": "900 in/min", "contact_tip_to_work": "15 mm"},
            "wire_feed_speed",
            "124 in/min",
            "635 in/min",
        ),
        # (68.33 + 2.594 * extension) mm/s at 125 A, 3 mm and 0.5466 / (1.660e-4 * 125) = 26.3 mm
        ({"current": "125 A", "wire_feed_speed": "150 in/min"}, "wire_feed_speed", "180 in/min", "322 in/min"),
        ({"current": "125 A", "wire_feed_speed": "400 in/min"}, "wire_feed_speed", "180 in/min", "322 in/min"),
        ({"current": "125 A", "contact_tip_to_work": "1.5 in"}, "contact_tip_to_work", "0.197 in", "1.37 in"),
        ({"current": "125 A", "contact_tip_to_work": "5.5 mm"}, "contact_tip_to_work", "6 mm", "33 mm"),
    ],
)
def test_outside_its_range_there_is_no_number_only_the_range_and_why(typed, at_fault, low, high):
    """An end is shown rounded inward, so that what is shown is accepted."""
    field, text = problem(**WIRE, **typed)
    assert field == at_fault
    assert f"must be between {low} and {high}: the law is known" in text.replace("\u00a0", " ")


@pytest.mark.parametrize(
    ("material", "size", "ends"),
    [
        ("stainless", "0.023 in", ("0.030 in", "0.063 in")),
        ("aluminum", "0.6 mm", ("0.75 mm", "1.61 mm")),
        ("mild-steel", "2.4 mm", ("0.58 mm", "1.61 mm")),
    ],
)
def test_a_size_nobody_measured_is_refused_in_the_unit_it_was_typed_in(material, size, ends):
    field, text = problem(wire_material=material, wire_diameter=size, current="100 A", contact_tip_to_work="12 mm")
    assert field == "wire_diameter"
    assert "{} and {}: the law is known for these sizes".format(*(end.replace(" ", "\u00a0") for end in ends)) in text


def test_a_refusal_in_the_api_names_the_field():
    status, body = api(**WIRE, current="300 A", contact_tip_to_work="15 mm")
    assert status == 422
    assert list(body["errors"]) == ["current"]


# --- Wire run out


def test_six_seconds_of_wire_times_ten():
    """22 in of wire in six seconds is 220 in/min. Standing: common practice."""
    found = answer(**WIRE, run_out_length="22 in", contact_tip_to_work="1/2 in")
    assert found.given.solved_for == "current"
    feed = next(result for result in found.answer.results if result.name == "wire_feed_speed")
    assert feed.value / IN_PER_MIN == pytest.approx(220.0, rel=1e-9)
    typed = headline(**WIRE, wire_feed_speed="220 in/min", contact_tip_to_work="1/2 in")
    assert found.answer.results[0].value == pytest.approx(typed.value, rel=1e-9)
    assert "22 in ÷ 6 s" in said(found.answer.working).replace("\u00a0", " ")


def test_another_time_than_six_seconds():
    found = headline(**WIRE, run_out_length="22 in", run_out_time="3 s", contact_tip_to_work="1/2 in")
    assert found.value == pytest.approx(
        headline(**WIRE, wire_feed_speed="440 in/min", contact_tip_to_work="1/2 in").value
    )


def test_a_feed_from_the_dial_is_set_against_the_wire_run_out():
    near = answer(**WIRE, wire_feed_speed="225 in/min", run_out_length="22 in", contact_tip_to_work="1/2 in")
    assert "Your numbers agree" in sentence(near.agreement, CONTEXT)
    far = answer(**WIRE, wire_feed_speed="300 in/min", run_out_length="22 in", contact_tip_to_work="1/2 in")
    assert "You typed 300\u00a0in/min, 36.4 % more" in sentence(far.agreement, CONTEXT)


def test_the_answer_says_how_much_wire_six_seconds_run_out():
    _, body = api(**WIRE, current="125 A", contact_tip_to_work="15 mm", units="us")
    run_out = body["results"]["run_out_length"]
    assert run_out["unit"] == "in"
    assert run_out["value"] * 10 == pytest.approx(by_hand(0.889, 125, 12) / 0.0254, rel=1e-9)


# --- Shop rules beside it


def test_the_burn_off_rule_stands_beside_the_law_with_how_far_it_is_off():
    """1.6 in/min for each ampere of 0.035 in wire in short-circuit. Standing: common practice."""
    notes = said(answer(**WIRE, current="125 A", contact_tip_to_work="1/2 in").answer.notes).replace("\u00a0", " ")
    law = by_hand(0.889, 125, 9.7) / 0.0254
    assert f"200 in/min, {(1 - 200 / law) * 100:.2g} % below the law's {law:.0f} in/min. Common practice" in notes


@pytest.mark.parametrize(
    "typed",
    [
        {"wire_material": "stainless", "current": "125 A"},
        {"current": "200 A"},  # the rule ends at 180 A
        {"current": "125 A", "transfer_mode": "spray"},
        {"current": "125 A", "wire_diameter": "1.0 mm"},  # no rule for this size
    ],
)
def test_where_the_rule_does_not_reach_it_is_not_shown(typed):
    notes = said(answer(**{**WIRE, "contact_tip_to_work": "15 mm", **typed}).answer.notes)
    assert "Shop rule for short-circuit" not in notes


@pytest.mark.parametrize(
    ("thickness", "current", "words"),
    [
        ("1/8 in", "125 A", "125 A, the same as yours"),
        ("1/8 in", "150 A", "125 A, 17 % below your 150 A"),
        ("3/16 in", "150 A", "188 A, 25 % above your 150 A"),
        ("1/2 in", "150 A", "ends at 1/4 in"),
    ],
)
def test_an_ampere_for_each_thousandth_of_an_inch_of_steel(thickness, current, words):
    """Standing: common practice."""
    typed = {"current": current, "thickness": thickness, "contact_tip_to_work": "1/2 in"}
    assert words in said(answer(**WIRE, **typed).answer.notes).replace("\u00a0", " ")
    without = answer(wire_material="stainless", wire_diameter="0.035 in", **typed).answer
    assert words not in said(without.notes).replace("\u00a0", " ")


# --- What goes with the answer


def test_the_working_shows_both_terms_and_their_sum():
    """By hand: 0.5466 x 125 = 68.33 mm/s; 1.66e-4 x 12 x 125 x 125 = 31.12 mm/s."""
    found = answer(**WIRE, current="125 A", contact_tip_to_work="15 mm", wire_feed_speed_unit="in/min").answer
    lines = [sentence(line, CONTEXT).replace("\u00a0", " ") for line in found.working]
    assert "15 mm − 3 mm = 12 mm" in lines[1]
    assert "125 A = 68.33 mm/s = 161.4 in/min" in lines[2]
    assert "12 mm × (125 A)² = 31.12 mm/s = 73.52 in/min" in lines[3]
    assert "161.4 in/min + 73.52 in/min = 234.9 in/min" in lines[4]


def test_the_size_the_coefficients_belong_to_is_not_scaled():
    found = answer(wire_diameter="1.2 mm", current="200 A", contact_tip_to_work="18 mm").answer
    assert "From 1.2 mm wire" not in said(found.working).replace("\u00a0", " ")
    other = answer(wire_diameter="1.6 mm", current="300 A", contact_tip_to_work="18 mm").answer
    assert "From 1.2 mm wire to 1.6 mm: the arc term grows with 1 ÷ area, 0.5625 times" in said(other.working).replace(
        "\u00a0", " "
    )


def test_the_drawing_is_in_whole_numbers_and_can_be_read_aloud():
    for typed in ({"current": "76 A"}, {"current": "250 A"}, {"current": "125 A", "wire_feed_speed": "35 m/min"}):
        found = answer(**WIRE, **typed, contact_tip_to_work="15 mm").answer
        drawing = found.results[-1]
        assert isinstance(drawing, Drawing)
        for form, numbers, _, _ in drawing.shapes:
            assert all(isinstance(number, int) for number in numbers)
            across, up = (numbers[0:1], numbers[1:2]) if form == "circle" else (numbers[0::2], numbers[1::2])
            assert all(0 <= x <= drawing.width for x in across)
            assert all(0 <= y <= drawing.height for y in up)
        curve = next(numbers for form, numbers, style, _ in drawing.shapes if style == "curve")
        assert list(curve[1::2]) == sorted(curve[1::2], reverse=True)  # rising: up is less
        assert typed["current"].replace(" ", "\u00a0") in sentence(drawing.description, CONTEXT)


def test_the_point_of_the_drawing_is_on_the_curve_and_labelled_in_the_readers_unit():
    found = answer(**WIRE, wire_feed_speed="6 m/min", contact_tip_to_work="15 mm").answer
    drawing = found.results[-1]
    scales = [label for form, _, _, label in drawing.shapes if form == "scale"]
    assert ("wire_feed_speed", "m/min", 0.1) in [(scale.quantity.name, scale.unit, scale.own) for scale in scales]
    circle = next(numbers for form, numbers, _, _ in drawing.shapes if form == "circle")
    curve = next(numbers for form, numbers, style, _ in drawing.shapes if style == "curve")
    points = list(zip(curve[0::2], curve[1::2], strict=True))
    (left_x, left_y), (right_x, right_y) = next(pair for pair in itertools.pairwise(points) if pair[1][0] >= circle[0])
    between = left_y + (right_y - left_y) * (circle[0] - left_x) / (right_x - left_x)
    assert abs(between - circle[1]) <= 2


def test_sources_are_those_of_the_wire_and_declared():
    titles = {}
    for material in ("mild-steel", "stainless", "aluminum"):
        found = answer(
            wire_material=material, wire_diameter="0.9 mm", current="110 A", contact_tip_to_work="15 mm"
        ).answer
        assert set(found.sources) <= set(wire_feed.CALCULATOR.sources)
        titles[material] = " ".join(source.title for source in found.sources)
    assert "Burn-off" in titles["mild-steel"]
    assert "NAVEDTRA" in titles["aluminum"]
    assert "1910.1026" in titles["stainless"]
    assert "1910.1026" not in titles["mild-steel"]


def test_cautions_come_with_the_number():
    cautions = said(answer(**WIRE, current="125 A", contact_tip_to_work="15 mm").answer.cautions)
    for words in (
        "scrap first",
        "welding procedure (WPS) rules",
        "live at welding voltage",
        "away from face and hands",
        "Arc rays",
    ):
        assert words in cautions
    stainless = answer(
        wire_material="stainless", wire_diameter="0.035 in", current="125 A", contact_tip_to_work="15 mm"
    )
    assert "hexavalent chromium" in said(stainless.answer.cautions)


def test_the_next_questions_carry_the_numbers():
    found = answer(wire_material="aluminum", filler_alloy="4043", wire_diameter="1.2 mm", current="150 A").answer
    carried = {each.calculator: dict(each.carried) for each in found.next_questions}
    assert carried["heat-input"]["current"].value == 150.0
    spool = carried["spool-life"]
    assert (spool["wire_material"], spool["filler_alloy"]) == ("aluminum", "4043")
    assert spool["wire_diameter"].value == pytest.approx(0.0012)
    assert spool["wire_feed_speed"].value == found.results[0].value


def test_the_wire_moves_the_answer_most():
    reply = answer(**WIRE, current="125 A", contact_tip_to_work="15 mm")
    assert "Wire diameter" in sentence(reply.sensitivity, CONTEXT)


@pytest.mark.parametrize(("system", "unit"), [("us", "in"), ("si", "mm")])
def test_the_presets_shown_are_the_readers_own_and_at_most_six(system, unit):
    for name in ("wire_diameter", "contact_tip_to_work", "thickness"):
        shown = [text for text in presets(name, system) if text != "unknown"]
        assert 0 < len(shown) <= 6
        assert all(text.endswith(" " + unit) for text in shown)
    assert "unknown" in presets("contact_tip_to_work", system)
    assert len(presets("current", system)) == 4  # amperes belong to both


def test_every_preset_is_a_size_the_law_can_be_asked_about():
    for system in ("us", "si"):
        for text in presets("wire_diameter", system):
            reply = ask(wire_diameter=text, current="111 A", contact_tip_to_work="unknown")
            assert reply.state == "answer" or reply.errors[0][0] == "current", text
