"""The shrinkage question from what is typed to what is answered. The formulas are checked in tests/published."""

import json

import pytest

from calculators import asking, shrinkage
from calculators.contract import Findings, Number, Words
from webapp import pocket
from webapp.catalogue import Context, sentence

CONTEXT = Context("en", "si", "0")
BUTT = {"thickness": "10 mm", "root_opening": "2 mm", "weld_area": "60 mm2"}
FILLET = {"joint": "tee-fillets", "leg": "6 mm", "thickness": "12 mm"}


def ask(**typed):
    return asking.ask(shrinkage.CALCULATOR, list(typed.items()))


def answer(**typed):
    reply = ask(**typed)
    assert reply.state == "answer", [sentence(message, CONTEXT) for _, message in reply.errors]
    return reply


def number(name, **typed):
    (found,) = [each for each in answer(**typed).answer.results if isinstance(each, Number) and each.name == name]
    return found


def said(messages):
    return " ".join(sentence(message, CONTEXT) for message in messages).replace("\u00a0", " ")


def test_a_bare_question_gives_the_shrinkage_and_its_scatter():
    """By hand: 0.2 x 60 / 10 + 0.05 x 2 = 1.3 mm; 0.1 x 60 / 10 = 0.6 mm; half as much again 1.95 mm."""
    reply = pocket.respond(pocket.Request("/api/shrinkage", list(BUTT.items()), False), "en", "0")
    body = json.loads(reply.body)
    assert (reply.status, body["solved_for"]) == (200, "transverse_shrinkage")
    found = body["results"]["transverse_shrinkage"]
    assert (found["low"], found["value"], found["high"]) == (
        pytest.approx(0.6),
        pytest.approx(1.3),
        pytest.approx(1.95),
    )


def test_inches_give_the_same_shrinkage():
    """0.1 in2, 1/2 in, 1/8 in: 0.0463 in, which is 1.1747 mm; five or 25 times that is the inch-only form misused."""
    found = number("transverse_shrinkage", thickness="1/2 in", root_opening="1/8 in", weld_area="0.1 in2")
    assert found.value * 1000.0 == pytest.approx(1.17475, rel=1e-9)


def test_the_area_comes_from_the_two_widths():
    """10 x (14.5 + 3) / 2 = 87.5 mm2; 0.2 x 87.5 / 10 + 0.05 x 3 = 1.9 mm: inside TWI's 1.5 to 3 mm for a 60° V."""
    typed = {"thickness": "10 mm", "root_opening": "3 mm", "groove_width": "14.5 mm"}
    assert number("weld_area", **typed).value == pytest.approx(87.5e-6)
    assert number("transverse_shrinkage", **typed).value == pytest.approx(0.0019)


def test_fillets_have_half_less_and_half_more():
    """AWS Welding Handbook, volume 1; from memory: 0.04 in x 6 / 12 = 0.508 mm."""
    found = number("transverse_shrinkage", **FILLET)
    assert found.value == pytest.approx(0.000508)
    assert (found.low, found.high) == (pytest.approx(0.000254), pytest.approx(0.000762))
    half = number("transverse_shrinkage", **FILLET, welded_share="50 %")
    assert half.value == pytest.approx(found.value / 2.0)


@pytest.mark.parametrize(
    ("typed", "blanks"),
    [
        (BUTT, {"thickness": 0.010, "root_opening": 0.002, "weld_area": 60e-6}),
        (FILLET, {"leg": 0.006, "thickness": 0.012}),
        ({**FILLET, "joint": "lap-fillets", "welded_share": "40 %"}, {"leg": 0.006, "thickness": 0.012}),
    ],
)
def test_each_blank_is_found_again(typed, blanks):
    pulled = number("transverse_shrinkage", **typed).value * 1000.0
    for blank, expected in blanks.items():
        rest = {name: text for name, text in typed.items() if name != blank}
        found = answer(**rest, transverse_shrinkage=f"{pulled:.12g} mm")
        assert found.given.solved_for == blank
        assert found.answer.results[0].name == blank
        assert found.answer.results[0].value == pytest.approx(expected, rel=1e-8)


def test_two_blanks_ask_for_one_of_them():
    reply = ask(thickness="10 mm", root_opening="2 mm")
    assert reply.state == "waiting"
    assert sentence(reply.waiting, CONTEXT) == "Waiting for one of: Weld area or Shrinkage across"
    reply = ask(joint="tee-fillets", thickness="10 mm")
    assert sentence(reply.waiting, CONTEXT) == "Waiting for one of: Leg of each fillet or Shrinkage across"


@pytest.mark.parametrize(
    ("measured", "id"), [("1.6 mm", "agree.yes"), ("3 mm", "agree.over"), ("0.3 mm", "agree.under")]
)
def test_no_blank_says_whether_a_measured_weld_is_within_the_scatter(measured, id):
    assert answer(**BUTT, transverse_shrinkage=measured).agreement.id == id


def test_no_angle_is_made_up():
    for typed in (BUTT, FILLET):
        found = answer(**typed).answer
        (angle,) = [each for each in found.results if isinstance(each, Words) and each.name == "angle"]
        assert said([angle.message]) == "No number here"
        assert "Weld a trial piece and measure" in said(found.notes)


def test_along_the_weld_is_the_rule_of_thumb():
    """TWI, technical FAQ on shrinkage allowance: 3 mm per 3 m of butt weld, 0.8 mm per 3 m of fillet."""
    assert number("longitudinal_shrinkage", **BUTT, weld_length="3 m").value == pytest.approx(0.003)
    assert number("longitudinal_shrinkage", **FILLET, weld_length="3 m").value == pytest.approx(0.0008)


def test_the_rule_of_thumb_stands_beside_the_formula():
    assert "1.5 mm to 3 mm" in said(answer(**BUTT).answer.notes)
    assert "allow 0.8 mm for each weld" in said(answer(**FILLET).answer.notes)
    assert "is too little" in said(answer(**{**FILLET, "leg": "10 mm"}).answer.notes)


def test_what_makes_it_less_fits_the_joint():
    for typed, first in ((BUTT, "Close the root"), (FILLET, "Keep the fillet to size")):
        (findings,) = [each for each in answer(**typed).answer.results if isinstance(each, Findings)]
        assert said([findings.items[0].what]).startswith(first)
        assert {said([item.sureness]) for item in findings.items} >= {"published", "common practice"}


def test_nobody_is_told_to_make_a_weld_smaller():
    cautions = said(answer(**FILLET).answer.cautions)
    assert "Never make a weld smaller" in cautions
    assert "trial piece" in cautions


def test_sources_are_those_of_the_joint():
    butt = [source.title for source in answer(**BUTT).answer.sources]
    fillet = [source.title for source in answer(**FILLET).answer.sources]
    assert any("Spraragen" in title for title in butt) and not any("Spraragen" in title for title in fillet)
    assert any("fillets of T and lap" in title for title in fillet)


@pytest.mark.parametrize(
    ("typed", "field"),
    [
        ({**BUTT, "thickness": "0.5 mm"}, "thickness"),
        ({**BUTT, "root_opening": "30 mm"}, "root_opening"),
        ({**FILLET, "leg": "60 mm"}, "leg"),
        ({**FILLET, "welded_share": "2 %"}, "welded_share"),
    ],
)
def test_outside_the_range_there_is_no_number(typed, field):
    reply = ask(**typed)
    assert reply.state == "problem"
    assert [name for name, _ in reply.errors] == [field]


def test_shrinkage_less_than_the_gap_alone_gives_is_refused():
    """0.05 x 20 mm = 1 mm of the gap alone."""
    reply = ask(thickness="10 mm", root_opening="20 mm", transverse_shrinkage="0.8 mm")
    assert reply.state == "problem"


def test_the_next_questions_carry_the_numbers():
    carried = {each.calculator: dict(each.carried) for each in answer(**FILLET).answer.next_questions}
    assert carried["cooling-time"]["joint"] == "tee-fillet"
    assert carried["cooling-time"]["thickness"].value == pytest.approx(0.012)
