"""The gas-blend question: what is asked, what is said, what is refused."""

import json

import pytest

from calculators.contract import Choice
from tests import walking


def ask(status=200, **typed):
    reply = walking.reply("/api/gas-blend", list(typed.items()))
    assert reply.status == status, reply.body
    return json.loads(reply.body)


def words(answer, name):
    return answer["results"][name]["text"].replace("\u00a0", " ")


def said(answer, part):
    return " ".join(answer[part]).replace("\u00a0", " ")


def test_a_common_mix_is_named_in_full():
    answer = ask(blend="ar-co2-25")
    assert words(answer, "group") == "M21: oxidizing"
    assert words(answer, "designation") == "ISO 14175-M21-ArC-25"
    assert words(answer, "aws") == "SG-AC-25"
    assert words(answer, "mix") == "Argon 75 %, Carbon dioxide 25 %"
    assert words(answer, "weight").startswith("1.42 times as heavy: it sinks")
    assert "older" not in answer["results"]


def test_eight_percent_is_m20_and_an_older_wps_says_m21():
    answer = ask(carbon_dioxide="8 %")
    assert words(answer, "group").startswith("M20")
    assert words(answer, "older") == "M21"


def test_typed_and_chosen_mix_get_the_same_answer():
    assert ask(carbon_dioxide="2.5 %", helium="90 %")["results"] == ask(blend="he-ar-co2")["results"]


def test_helium_rises_and_a_light_mix_is_not_said_to_sink():
    assert "rises" in words(ask(helium="75 %"), "weight")
    assert "neither" in words(ask(helium="33 %"), "weight")  # 0.67 x 1.380 + 0.33 x 0.138 = 0.970


def test_what_does_not_add_up_is_said_with_how_much():
    over = ask(422, carbon_dioxide="60 %", oxygen="45 %")["errors"]
    assert over["carbon_dioxide"].replace("\u00a0", " ") == "These add up to 105 %: 5 % too much"
    under = ask(422, argon="70 %", carbon_dioxide="25 %")["errors"]
    assert "5 % is missing" in under["carbon_dioxide"].replace("\u00a0", " ")
    assert ask(argon="75 %", carbon_dioxide="25 %")["results"] == ask(carbon_dioxide="25 %")["results"]


def test_argon_alone_takes_carbon_dioxide_as_the_rest_and_says_so():
    answer = ask(argon="92 %")
    assert words(answer, "group").startswith("M20")
    assert "taken as the rest" in said(answer, "notes")
    assert "taken as the rest" not in said(ask(argon="98 %", carbon_dioxide="2 %"), "notes")
    assert words(ask(argon="100 %"), "group") == "I1: inert"
    assert words(ask(oxygen="2 %"), "group") == "M13: weakly oxidizing"


def test_a_mix_typed_as_a_fraction_is_not_three_percent():
    assert "25 for 75/25" in ask(422, carbon_dioxide="75/25")["errors"]["carbon_dioxide"]


def test_a_third_and_two_thirds_still_add_up():
    assert ask(carbon_dioxide="33.3 %", argon="66.7 %")["results"]["group"]["text"].startswith("M31")


@pytest.mark.parametrize(
    ("metal", "typed", "verdict", "part"),
    (
        ("aluminum", {"blend": "ar-co2-25"}, "Outside", "soot"),
        ("mild-steel", {"blend": "argon"}, "Outside", "wanders"),
        ("stainless", {"blend": "ar-co2-2"}, "Inside", "Spray"),
        ("stainless", {"hydrogen": "2 %"}, "Unclear", "austenitic"),
    ),
)
def test_a_metal_gets_a_verdict_instead_of_the_table(metal, typed, verdict, part):
    page = walking.reply("/gas-blend", [*typed.items(), ("metal", metal)]).body
    assert f"<strong>{verdict}</strong>" in page
    assert part in page.partition('class="verdict')[2][:300]
    assert "What it suits" not in page


def test_two_cylinders_are_a_planning_figure_with_the_back_feed_caution():
    answer = ask(blend="argon", second_blend="carbon-dioxide", gas_flow="15 L/min", second_flow="5 L/min")
    assert words(answer, "mix") == "Argon 75 %, Carbon dioxide 25 %"
    assert "planning figure" in said(answer, "notes")
    assert "21 to 29 %" in said(answer, "notes")  # 5.5 of 19 and 4.5 of 21, by hand
    assert "push into each other" in said(answer, "cautions")
    assert "push into each other" not in said(ask(blend="argon"), "cautions")


def test_no_second_cylinder_of_oxygen_or_hydrogen_is_offered():
    field = walking.calculator("gas-blend").field("second_blend")
    assert isinstance(field, Choice)
    assert not {"oxygen", "hydrogen"} & set(field.options)


def test_hydrogen_and_much_oxygen_are_warned_of():
    assert "Hydrogen burns" in said(ask(hydrogen="5 %"), "cautions")
    assert "feeds fire" in said(ask(carbon_dioxide="70 %", oxygen="30 %"), "cautions")
    assert "feeds fire" not in said(ask(oxygen="2 %"), "cautions")


@pytest.mark.parametrize("blend", ["ar-co2-25", "argon", "ar-o2-2", "carbon-dioxide"])
def test_supply_is_asked_with_the_gas_where_it_knows_it(blend):
    page = walking.reply("/gas-blend", [("blend", blend)]).body
    assert 'href="gas-supply?gas=' in page


def test_supply_is_not_asked_of_a_mix_it_does_not_know():
    page = walking.reply("/gas-blend", [("carbon_dioxide", "40 %")]).body
    assert 'href="gas-supply' not in page.partition('id="answer"')[2].partition("</section>")[0]
