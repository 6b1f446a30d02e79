"""What the preheat question answers, waits for and refuses, as a reader and a program see it.

The numbers expected here are those of tests/published/test_preheat.py, or worked by hand beside each test.
"""

import json
import re

import pytest

from calculators import asking, preheat
from calculators.contract import STANDINGS, Number
from calculators.preheat_bounds import FAMILIES
from tests import walking

pytestmark = pytest.mark.quick


def ask(status=200, units="us", **typed):
    reply = walking.reply("/api/preheat", list(typed.items()), system=units)
    assert reply.status == status, reply.body
    return json.loads(reply.body)


def errors(**typed):
    return ask(status=422, **typed)["errors"]


def structural(thickness="1 in", grade="a572-50-group", **more):
    return ask(family="structural", grade=grade, thickness=thickness, **more)


def said(answer, part):
    return " ".join(answer[part]).replace("\u00a0", " ")


def rules(answer):
    return {row[0]: row[1].replace("\u00a0", " ") for row in answer["results"]["rules"]["rows"]}


def lowest(answer):
    assert answer["results"]["preheat_minimum"]["unit"] == "degF"
    return answer["results"]["preheat_minimum"]["value"]


CODE_A = "AWS D1.1, category A (not low hydrogen)"
CODE_B = "AWS D1.1, category B (low hydrogen)"
CODE_C = "AWS D1.1, category C (low hydrogen)"
CET = "CET method (EN 1011-2, Method B)"
FOUR = {"cet": "0.34", "hydrogen": "5", "heat_input": "1000 J/mm"}


# ---------------------------------------------------------------- structural steel


def test_code_row_alone_without_chemistry():
    answer = structural()
    assert lowest(answer) == pytest.approx(50.0)
    assert rules(answer) == {CODE_B: "at least 50 °F"}


def test_one_inch_a36_by_gas_metal_arc_is_never_given_150():
    answer = structural(grade="a36-group")
    assert lowest(answer) == pytest.approx(50.0)
    assert "150" not in rules(answer)[CODE_B]
    assert lowest(structural(grade="a36-group", process="other-stick")) == pytest.approx(150.0)


def test_cet_method_stands_beside_the_code_and_the_higher_decides():
    answer = structural(thickness="25 mm", **FOUR)
    assert lowest(answer) == pytest.approx(102.0 * 1.8 + 32.0, abs=1.1)
    assert rules(answer) == {CODE_B: "at least 50 °F", CET: "at least 216 °F"}
    assert "Decided by: CET method" in answer["results"]["preheat_minimum"]["text"]
    thick = structural(thickness="3 in", cet="0.22", hydrogen="2", heat_input="3000 J/mm")
    assert lowest(thick) == pytest.approx(225.0)
    assert "AWS D1.1, category B" in thick["results"]["preheat_minimum"]["text"]


def test_working_shows_the_four_parts_and_their_sum():
    working = said(structural(thickness="25 mm", **FOUR), "working")
    for line in (
        "750 × 0.34 − 150 = 105 °C",
        "160 × tanh(25 mm ÷ 35) − 110 = −11.86 °C",
        "62 × 5^0.35 − 100 = 8.901 °C",
        "= 102 °C = 216 °F",
    ):
        assert line in working


@pytest.mark.parametrize(
    ("typed", "left"),
    (
        ({"cet": "0.19"}, "CET 0.19 % is outside 0.2 % to 0.5 %"),
        ({"cet": "0.56"}, "CET 0.56 % is outside 0.2 % to 0.5 %"),
        ({"thickness": "9 mm"}, "9 mm is outside 10 mm to 90 mm"),
        ({"thickness": "4 in"}, "4 in is outside 0.394 in to 3.54 in"),
        ({"hydrogen": "0.9"}, "hydrogen 0.9 mL/100g is outside 1 mL/100g to 20 mL/100g"),
        ({"hydrogen": "25"}, "hydrogen 25 mL/100g is outside 1 mL/100g to 20 mL/100g"),
        ({"heat_input": "400 J/mm"}, "heat input 400 J/mm is outside 500 J/mm to 4000 J/mm"),
        ({"heat_input": "4.1 kJ/mm"}, "heat input 4.1 kJ/mm is outside 0.5 kJ/mm to 4 kJ/mm"),
    ),
)
def test_outside_its_own_range_the_cet_method_gives_no_number_and_says_why(typed, left):
    answer = structural(**{"thickness": "25 mm", **FOUR, **typed})
    assert rules(answer)[CET] == "no number: " + left
    assert "750 ×" not in said(answer, "working")


def test_below_ambient_no_heating_is_named_and_freezing_is_cautioned():
    answer = structural(grade="other", thickness="12 mm", cet="0.22", hydrogen="3", heat_input="1500 J/mm")
    assert lowest(answer) == pytest.approx(32.0)
    assert "no heating above a shop at 68 °F" in answer["results"]["preheat_minimum"]["text"].replace("\u00a0", " ")
    assert rules(answer)[CET].startswith("no heating above ambient")
    assert "Steel below 32 °F is first warmed to 70 °F" in said(answer, "cautions")


def test_hydrogen_and_heat_input_not_given_are_taken_on_the_hot_side_and_said():
    answer = structural(thickness="25 mm", cet="0.34")
    assert "Hydrogen not given: 5 mL/100g taken" in said(answer, "notes")
    assert "Heat input not given: 12.7 kJ/in taken" in said(answer, "notes")
    assert lowest(answer) > lowest(structural(thickness="25 mm", **FOUR))
    cored = structural(thickness="25 mm", cet="0.34", process="flux-cored-arc")
    assert "16 mL/100g taken" in said(cored, "notes")
    assert lowest(cored) > lowest(answer)


def test_sticks_that_are_not_low_hydrogen_need_their_hydrogen():
    answer = structural(grade="a36-group", process="other-stick", cet="0.30")
    assert "needs the hydrogen" in rules(answer)[CET]
    assert lowest(answer) == pytest.approx(150.0)
    assert "lists this steel for low hydrogen only" in rules(structural(process="other-stick"))["AWS D1.1"]


def test_no_grade_and_no_cet_is_no_number():
    answer = structural(grade="other")
    assert "preheat_minimum" not in answer["results"]
    assert answer["results"]["no_lowest"]["text"].startswith("No number yet")


def test_thickness_between_the_code_s_inches_and_millimetres_is_pointed_out():
    assert "metric column" in said(structural(thickness="20 mm"), "notes")
    assert lowest(structural(thickness="20 mm")) == pytest.approx(50.0)
    assert "metric column" not in said(structural(thickness="3/4 in"), "notes")
    assert lowest(structural(thickness="3/4 in")) == pytest.approx(32.0)


def test_sheet_is_not_in_the_code():
    assert "thinner is sheet" in rules(structural(thickness="2 mm"))[CODE_B]


def test_a_cet_as_large_as_a_ce_is_asked_about():
    assert "Is it CE?" in said(structural(thickness="25 mm", cet="0.43"), "notes")
    assert "Is it CE?" not in said(structural(thickness="25 mm", cet="0.36"), "notes")


def test_there_is_no_box_that_takes_ce():
    assert "ce" not in [field.name for field in preheat.CALCULATOR.fields]


def test_richer_weld_metal_is_counted():
    plain = lowest(structural(thickness="25 mm", **FOUR))
    richer = structural(thickness="25 mm", weld_metal_cet="0.35", **FOUR)
    # 0.04 % more CET at Q = 1: 0.04 * (697 + 53) = 30 degC
    assert lowest(richer) - plain == pytest.approx(30.0 * 1.8, abs=0.1)
    assert "0.03 % = 0.38 %" in said(richer, "working")


# ---------------------------------------------------------------- metals with a highest

MOST = (
    ("quenched-tempered", 392.0),
    ("wear-plate", 392.0),
    ("manganese", 500.0),
    ("stainless", 350.0),
    ("aluminum-heat-treated", 250.0),
    ("aluminum-magnesium", 150.0),
)


@pytest.mark.parametrize(("family", "degrees"), MOST)
def test_where_heat_spoils_the_metal_a_highest_is_given(family, degrees):
    typed = {"thickness": "1 in"} if family in ("quenched-tempered", "wear-plate") else {}
    answer = ask(family=family, **typed)
    assert answer["results"]["preheat_maximum"]["value"] == pytest.approx(degrees)
    assert "Too hot spoils this metal" in said(answer, "cautions")


@pytest.mark.parametrize("family", ("manganese", "stainless", "aluminum-heat-treated", "aluminum-magnesium"))
def test_what_is_not_preheated_gets_no_lowest(family):
    results = ask(family=family)["results"]
    assert "preheat_minimum" not in results
    assert re.match("Usually not preheated|Not needed", results["no_lowest"]["text"])


def test_a_window_has_both_ends_and_the_headline_names_both():
    answer = ask(family="quenched-tempered", thickness="1 in", **FOUR)
    assert lowest(answer) < answer["results"]["preheat_maximum"]["value"]
    assert "And not hotter than 392 °F" in answer["results"]["preheat_minimum"]["text"].replace("\u00a0", " ")


def test_a_closed_window_is_a_verdict_and_not_the_higher_number():
    html = walking.reply(
        "/preheat", [("family", "quenched-tempered"), ("thickness", "2 in"), ("cet", "0.42"), ("hydrogen", "5")]
    ).body
    text = re.sub(r"\s+", " ", re.sub("<[^>]+>", " ", html)).replace("\u00a0", " ")
    assert "Outside : no window. It asks for 414 °F and bears 392 °F at most" in text
    assert "Do not weld it like this" in text


def test_a_narrow_window_is_unclear():
    # By hand: 697 x .40 + 160 tanh(50/35) + 62 x 5^.35 + (53 x .40 - 32) x .5 - 328 = 196.9 degC; it bears 200.
    came = asking.ask(
        preheat.CALCULATOR,
        [("family", "wear-plate"), ("thickness", "50 mm"), ("cet", "0.40"), ("hydrogen", "5")],
    )
    assert came.answer is not None and came.answer.verdict is not None
    assert came.answer.verdict.state == "unclear"


def test_wear_plate_without_its_cet_gets_no_lowest():
    results = ask(family="wear-plate", thickness="1 in")["results"]
    assert "preheat_minimum" not in results
    assert "data sheet" in results["no_lowest"]["text"]


# ---------------------------------------------------------------- steels that CET does not reach


@pytest.mark.parametrize("grade", ("1045", "4130", "4140", "4340"))
def test_cet_formula_is_not_used_for_steels_that_harden(grade):
    answer = ask(family="hardening", hardening_grade=grade, thickness="1 in")
    assert CET not in rules(answer)
    assert "The CET formula does not hold for this steel" in said(answer, "notes")
    assert rules(answer)["Seferian's formula"].startswith("at least")


def test_cet_typed_for_such_a_steel_changes_nothing():
    typed = {"family": "hardening", "hardening_grade": "4140", "thickness": "1 in"}
    assert lowest(ask(**typed)) == lowest(ask(**typed, cet="0.30"))


def test_band_of_a_grade_runs_from_the_leanest_to_the_richest_heat():
    answer = ask(units="si", family="hardening", hardening_grade="4140", thickness="25 mm")
    least = answer["results"]["preheat_minimum"]
    # Worked by hand: lean C .38 Mn .75 Cr .80 Mo .15, Ct .6346, 217; rich C .43 Mn 1.00 Cr 1.10 Mo .25, Ct .7681, 252.
    assert least["low"] == pytest.approx(217.0, abs=1.0)
    assert least["high"] == least["value"] == pytest.approx(252.0, abs=1.0)


def test_typed_chemistry_gives_one_number():
    answer = ask(
        units="si", family="hardening-chemistry", thickness="25 mm",
        carbon="0.405", manganese="0.875", chromium="0.95", nickel="0", molybdenum="0.20",
    )  # fmt: skip
    assert answer["results"]["preheat_minimum"]["value"] == pytest.approx(235.0, abs=1.0)
    assert "low" not in answer["results"]["preheat_minimum"]


def test_no_band_where_a_table_decides():
    least = ask(family="hardening", hardening_grade="1045", thickness="1 in")["results"]["preheat_minimum"]
    assert "Training table" in least["text"] and "low" not in least


def test_shop_charts_stand_beside_the_formula():
    answer = ask(family="hardening", hardening_grade="4140", thickness="1 in")
    assert rules(answer)["Shop charts for this grade"] == "600 °F to 800 °F"


def test_thicker_than_the_cross_check_reaches_leaves_the_tables():
    answer = ask(family="hardening", hardening_grade="1045", thickness="6 in")
    assert rules(answer)["Seferian's formula"].startswith("no number: 6 in is outside")
    assert lowest(answer) == pytest.approx(500.0)


# ---------------------------------------------------------------- unknown steel


def test_unknown_steel_is_told_to_be_found_out_first():
    answer = ask(family="unknown", magnet="sticks", thickness="1/2 in")
    first = next(iter(answer["results"]))
    assert first == "find_out"
    assert "The guess allows nothing" in said(answer, "cautions")
    assert lowest(answer) == pytest.approx(300.0)
    assert answer["results"]["preheat_maximum"]["value"] == pytest.approx(392.0)
    html = walking.reply("/preheat", [("family", "unknown"), ("magnet", "sticks"), ("thickness", "1/2 in")]).body
    assert html.index("Find out first what it is") < html.index("A guess if it cannot wait")


def test_unknown_metal_that_no_magnet_sticks_to_is_not_preheated():
    answer = ask(family="unknown", magnet="does-not-stick", thickness="1/2 in")
    assert "preheat_minimum" not in answer["results"]
    assert answer["results"]["preheat_maximum"]["value"] == pytest.approx(350.0)


# ---------------------------------------------------------------- all of them


def test_heat_reaches_the_thickness_and_at_least_three_inches():
    assert structural(thickness="1 in")["results"]["measuring_distance"]["value"] == pytest.approx(3.0)
    assert structural(thickness="5 in")["results"]["measuring_distance"]["value"] == pytest.approx(5.0)


def test_every_answer_defers_to_the_procedure():
    for _, pairs in walking.states("preheat"):
        came = asking.ask(preheat.CALCULATOR, pairs)
        if came.answer is not None:
            assert "preheat.caution.procedure" in [message.id for message in came.answer.cautions]


def test_nothing_said_sounds_like_leave_to_weld():
    for state, pairs in walking.states("preheat"):
        text = re.sub(r"<[^>]+>", " ", walking.reply("/preheat", pairs).body.lower())
        for word in ("safe ", "no preheat", "is allowed", "you may", "approved", "good to go"):
            assert word not in text, (state, word)


def test_a_temperature_is_not_spoken_of_by_the_percent():
    """10 % more of 375 K means nothing to anybody."""
    answer = structural(thickness="25 mm", **FOUR)
    assert "Moves the answer most" not in said(answer, "notes")


def test_no_lowest_is_ever_below_freezing_or_above_a_highest_without_a_verdict():
    for _, came in walking.answered("preheat"):
        assert came.answer is not None
        numbers = {each.name: each.value for each in came.answer.results if isinstance(each, Number)}
        if "preheat_minimum" in numbers:
            assert numbers["preheat_minimum"] >= 273.15 - 1e-9
            if numbers["preheat_minimum"] >= numbers.get("preheat_maximum", 1e9):
                assert came.answer.verdict is not None and came.answer.verdict.state == "outside"


def test_every_family_answers_and_names_sources_it_declared():
    declared = {source.title for source in preheat.CALCULATOR.sources}
    met = set()
    for _, came in walking.answered("preheat"):
        assert came.answer is not None
        met.add(came.given.word("family"))
        assert {source.title for source in came.answer.sources} <= declared
        assert all(source.standing in STANDINGS for source in came.answer.sources)
    assert met == set(FAMILIES)
