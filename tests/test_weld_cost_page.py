"""The weld-cost question from what is typed to what is answered. The formulas are checked in tests/published."""

import json

import pytest

from calculators import asking, weld_cost
from calculators.contract import Measured, Table, Words
from tests import walking
from tests.test_next_questions import links, opened
from webapp.catalogue import Context, piece, sentence

CONTEXT = Context("en", "us", "0")
SHOP = {
    "wire_price": "4.50/lb",
    "rate_by": "rate",
    "deposition_rate": "10 lb/h",
    "labor_rate": "45",
    "operating_factor": "30 %",
    "deposition_efficiency": "90 %",
    "waste": "0",
}
# 0.3 in2 of steel, 0.2836 lb/in3: 1.0209 lb/ft.
JOB = {**SHOP, "weld_area": "0.3 in2", "weld_length": "10 ft"}
GAS = {"gas_flow": "35 ft3/h", "fill_price": "60", "fill_volume": "250 ft3"}


def ask(status=200, units="us", **typed):
    reply = walking.reply("/api/weld-cost", list(typed.items()), system=units)
    assert reply.status == status, reply.body
    return json.loads(reply.body)


def page(**typed):
    return walking.reply("/weld-cost", list(typed.items())).body.replace("\u00a0", " ")


def in_pounds(result):
    assert result["unit"] in ("/lb", "/ft")
    return result["value"]


def table(**typed):
    """Return what -> the costs beside it."""
    came = asking.ask(weld_cost.CALCULATOR, list(typed.items()))
    assert came.answer is not None, [sentence(message, CONTEXT) for _, message in came.errors]
    found = came.answer.results[-1]
    assert isinstance(found, Table)
    return {
        piece(row[0], CONTEXT): [cell.value if isinstance(cell, Measured) else cell for cell in row[1:]]
        for row in found.rows
    }


def other(**typed):
    return {"other-1-" + name: text for name, text in typed.items()}


def said(reply, name):
    words = next(each for each in reply.answer.results if each.name == name)
    assert isinstance(words, Words)
    return sentence(words.message, CONTEXT).replace("\u00a0", " ")


# --- What it comes to, by hand


def test_weld_metal_costs_its_wire_and_its_labor():
    """4.50 / 0.90 = 5.00 of wire, 45 / (10 x 0.30) = 15.00 of labor: 20.00 a pound; 10.50 of it with the arc off."""
    answer = ask(**SHOP)
    assert in_pounds(answer["results"]["cost_per_mass"]) == pytest.approx(20.0)
    assert "low" not in answer["results"]["cost_per_mass"]
    assert answer["results"]["around_share"]["value"] == pytest.approx(52.5)
    shown = table(**SHOP)
    assert [cells[0] * 0.45359237 for cells in shown.values()] == pytest.approx([5.0, 4.5, 10.5, 20.0])
    assert "cost_per_length" not in answer["results"] and "work_time" not in answer["results"]


def test_a_cross_section_gives_the_foot():
    """0.3 in2 x 12 in x 0.28360 lb/in3 = 1.02095 lb/ft, x 20.00 = 20.42."""
    answer = ask(**{**SHOP, "weld_area": "0.3 in2"})
    assert in_pounds(answer["results"]["cost_per_length"]) == pytest.approx(20.419, abs=0.001)
    assert in_pounds(answer["results"]["cost_per_mass"]) == pytest.approx(20.0)


def test_length_and_hours_give_the_job_and_the_labor_around_the_arc():
    """10 ft of it 204.19; 2 + 1.5 + 0.5 h at 45 is 180: 384.19. Around the arc: 180 + 107.20 of it, 74.75 %."""
    hours = {"drive_time": "2 h", "prep_time": "90 min", "finish_time": "0.5"}
    answer = ask(**JOB, **hours)
    assert answer["results"]["money"]["value"] == pytest.approx(384.19, abs=0.01)
    assert answer["results"]["around_share"]["value"] == pytest.approx(74.75, abs=0.01)
    # 10.2095 lb at 10 lb/h and 30 %: 3.4032 h, and 4 h around it.
    assert answer["results"]["work_time"]["value"] == pytest.approx(7.4032, abs=0.0005)
    assert "Most of it is labor around the arc" in " ".join(answer["notes"])
    assert table(**JOB, **hours)["Hours around it"][0] == pytest.approx(180.0)


def test_gas_and_power():
    """60 / 250 ft3 x 35 ft3/h / 10 lb/h = 0.84; 0.15 x 6 kW / 0.8 / 10 lb/h = 0.1125."""
    shown = table(**SHOP, **GAS, energy_price="0.15/kWh", arc_power="6 kW")
    assert shown["Gas"][0] * 0.45359237 == pytest.approx(0.84)
    assert shown["Electricity"][0] * 0.45359237 == pytest.approx(0.1125)
    assert shown["Together"][0] * 0.45359237 == pytest.approx(20.9525)


def test_feed_and_diameter_give_the_rate():
    """0.035 in at 300 in/min, 96 % of it: 4.71 lb/h by hand; 60 / (4.71 x 0.15) = 84.9, 4.50 / 0.96 / 0.95 = 4.93."""
    feed = {"wire_price": "4.50/lb", "wire_diameter": "0.035 in", "wire_feed_speed": "300 in/min", "labor_rate": "60"}
    answer = ask(**feed)
    assert in_pounds(answer["results"]["cost_per_mass"]) == pytest.approx(89.8, abs=0.2)
    assert "15 % of the time, 10 to 20" in " ".join(answer["notes"]).replace("\u00a0", " ")
    low, high = answer["results"]["cost_per_mass"]["low"], answer["results"]["cost_per_mass"]["high"]
    # The factor 20 % and 100 % of the wire, then 10 % and 92 %.
    assert low == pytest.approx(60 / (4.9113 * 0.20) + 4.50 / 0.95, rel=1e-3)
    assert high == pytest.approx(60 / (4.5184 * 0.10) + 4.50 / 0.92 / 0.95, rel=1e-3)


def test_fitting_counted_apart_is_not_counted_twice():
    """15 % holds fitting and cleaning; with these counted apart the welding alone is 30 %, 20 to 45."""
    blank = {name: text for name, text in JOB.items() if name != "operating_factor"}
    assert "15 %" in " ".join(ask(**blank)["notes"]).replace("\u00a0", " ")
    assert "15 %" in " ".join(ask(**blank, drive_time="1")["notes"]).replace("\u00a0", " ")
    for name in ("prep_time", "finish_time"):
        notes = " ".join(ask(**blank, **{name: "1"})["notes"]).replace("\u00a0", " ")
        assert "30 % of the time, 20 to 45" in notes


@pytest.mark.parametrize(
    ("known", "words"),
    [
        ((), "of the wire stays, and how much of the time"),
        (("operating_factor",), "From: how much of the wire stays."),
        (("deposition_efficiency",), "From: how much of the time the arc burns."),
    ],
)
def test_the_band_says_what_it_comes_from(known, words):
    guessed = ("operating_factor", "deposition_efficiency")
    typed = {name: text for name, text in SHOP.items() if name not in guessed or name in known}
    assert words in page(**typed)


def test_working_time_goes_by_the_usual_factor():
    """10.2095 lb at 10 lb/h and 15 %: 6.806 h."""
    blank = {name: text for name, text in JOB.items() if name != "operating_factor"}
    assert ask(**blank)["results"]["work_time"]["value"] == pytest.approx(6.806, abs=0.001)


# --- Two ways


def test_two_ways_stand_side_by_side():
    """At half the rate labor is 30.00 a pound: 35.00 against 20.00, 75 % more."""
    typed = {**SHOP, **other(rate_by="rate", deposition_rate="5 lb/h")}
    assert [cost * 0.45359237 for cost in table(**typed)["Together"]] == pytest.approx([20.0, 35.0])
    came = asking.ask(weld_cost.CALCULATOR, list(typed.items()))
    assert said(came, "compared") == "15.00 /lb more, 75 %."
    for heading in ("Way A", "Way B"):
        assert f'<th scope="col">{heading}</th>' in page(**typed)


def test_way_b_is_as_way_a_but_for_what_was_typed():
    """Wire at 9.00 instead of 4.50: 10.00 a pound of weld metal, all else the same."""
    shown = table(**JOB, **GAS, **other(wire_price="9/lb"))
    assert shown["Wire"][1] == pytest.approx(2.0 * shown["Wire"][0])
    for name in ("Gas", "Labor, arc on", "Labor, arc off"):
        assert shown[name][0] == pytest.approx(shown[name][1])


def test_a_smaller_cross_section_is_cheaper():
    came = asking.ask(weld_cost.CALCULATOR, [*JOB.items(), *other(weld_area="0.15 in2").items()])
    assert said(came, "compared") == "102.10 less, 50 %."


FEED = {"wire_price": "4.50/lb", "wire_diameter": "0.035 in", "wire_feed_speed": "300 in/min", "labor_rate": "60"}


def test_way_b_may_be_known_by_the_other_of_feed_and_rate():
    """0.035 in at 300 in/min lays 4.7148 lb/h at 96 %: twice that is half the labor, as a rate
    and as a feed."""
    rate = other(rate_by="rate", deposition_rate="9.4296 lb/h")
    a, b = table(**FEED, **rate)["Labor, arc on"]
    assert b == pytest.approx(0.5 * a, rel=1e-4)
    for changed in ({"wire_feed_speed": "600 in/min"}, {"wire_diameter": "0.0494975 in"}):
        a, b = table(**FEED, **other(**changed))["Labor, arc on"]
        assert b == pytest.approx(0.5 * a, rel=1e-5)
    by_rate = {**SHOP, "deposition_efficiency": "96 %", "deposition_rate": "4.7148 lb/h"}
    a, b = table(**by_rate, **other(wire_diameter="0.035 in", wire_feed_speed="600 in/min"))["Labor, arc on"]
    assert b == pytest.approx(0.5 * a, rel=1e-4)


def test_another_wire_in_the_same_gas_keeps_the_gas():
    shown = table(**SHOP, **GAS, **other(other_wire="solid-carbon-dioxide"))
    assert shown["Gas"][0] == pytest.approx(shown["Gas"][1])
    assert shown["Wire"][1] * 0.45359237 == pytest.approx(4.50 / 0.93)


def test_ways_within_5_percent_are_alike():
    came = asking.ask(weld_cost.CALCULATOR, [*SHOP.items(), *other(wire_price="5.20/lb").items()])
    assert said(came, "compared").startswith("About the same")


def test_wire_without_gas_leaves_the_gas_out():
    typed = {**SHOP, **GAS, **other(other_wire="flux-cored-self-shielded")}
    shown = table(**typed)
    assert shown["Gas"][0] > 0.0 == shown["Gas"][1]
    # Its own efficiency, 78 %, not the 90 % typed for way A.
    assert shown["Wire"][1] * 0.45359237 == pytest.approx(4.50 / 0.78)


# --- Money as it is typed


@pytest.mark.parametrize("price", ["$4.50/lb", "4.50", "4.50 per lb", "$ 4.50 /lb", "4,50 \u20ac/lb", "\u00a34.50/lb"])
def test_a_price_is_read_with_or_without_its_sign(price):
    answer = ask(**{**SHOP, "wire_price": price, "wire_price_unit": "/lb"})
    assert in_pounds(answer["results"]["cost_per_mass"]) == pytest.approx(20.0)


def test_a_price_for_a_kilogram_is_not_one_for_a_pound():
    kilogram = ask(**{**SHOP, "wire_price": "9.9208/kg"})
    assert in_pounds(kilogram["results"]["cost_per_mass"]) == pytest.approx(20.0, abs=0.0001)


@pytest.mark.parametrize("price", ["4$50", "$", "$4.50/mm", "$$4"])
def test_a_price_that_cannot_be_read_is_asked_for_again(price):
    assert list(ask(422, **{**SHOP, "wire_price": price})["errors"]) == ["wire_price"]


def test_no_volt_costs_money():
    reply = walking.reply("/api/heat-input", [("voltage", "$24")])
    assert "must be a number" in json.loads(reply.body)["errors"]["voltage"]


# --- What is refused


@pytest.mark.parametrize(
    ("name", "text", "words"),
    [
        ("operating_factor", "0", "without an arc nothing is welded"),
        ("operating_factor", "101 %", "burns no longer than you work"),
        ("deposition_efficiency", "101 %", "more than its own weight"),
        ("deposition_efficiency", "0", "more than its own weight"),
        ("labor_rate", "0", "an hour costs something"),
        ("wire_price", "-1", "between 0"),
        ("deposition_rate", "0 lb/h", "between"),
        ("waste", "60 %", "between"),
    ],
)
def test_nonsense_is_refused_at_its_field(name, text, words):
    errors = ask(422, **{**SHOP, name: text})["errors"]
    assert list(errors) == [name]
    assert words in errors[name]


@pytest.mark.parametrize("kind", ["metal-cored", "flux-cored-gas-shielded", "flux-cored-self-shielded"])
def test_the_feed_of_cored_wire_does_not_tell(kind):
    feed = {"wire_price": "4", "wire_diameter": "0.045 in", "wire_feed_speed": "300 in/min", "labor_rate": "60"}
    assert list(ask(422, **feed, wire_and_gas=kind)["errors"]) == ["rate_by"]
    assert list(ask(422, **feed, **other(other_wire=kind))["errors"]) == ["other-1-rate_by"]


def test_what_does_not_go_together_is_said_at_its_box():
    self_shielded = {**SHOP, **GAS, "wire_and_gas": "flux-cored-self-shielded"}
    assert list(ask(422, **self_shielded)["errors"]) == ["gas_flow"]
    dip = {**SHOP, "wire_material": "aluminum", "wire_and_gas": "solid-carbon-dioxide"}
    assert list(ask(422, **dip)["errors"]) == ["wire_and_gas"]
    assert list(ask(422, **SHOP, **other(weld_area="0.1 in2"))["errors"]) == ["weld_area"]
    assert list(ask(422, **SHOP, **other(wire_feed_speed="300 in/min"))["errors"]) == ["other-1-wire_diameter"]
    assert list(ask(422, **SHOP, **other(wire_diameter="0.035 in"))["errors"]) == ["other-1-wire_feed_speed"]


def test_aluminum_runs_in_argon():
    """Its usual wire and gas is argon-rich: 98 % of 4.50 is 4.59, at 90 % typed 5.00."""
    for kind in ({}, {"wire_and_gas": "solid-argon-rich"}):
        shown = table(**{**SHOP, "wire_material": "aluminum", **kind})
        assert shown["Wire"][0] * 0.45359237 == pytest.approx(5.0)
    changed = other(other_wire="solid-carbon-dioxide")
    assert list(ask(422, **{**SHOP, "wire_material": "aluminum"}, **changed)["errors"]) == ["other-1-other_wire"]


@pytest.mark.parametrize("alone", [{"energy_price": "0.15"}, {"arc_power": "6 kW"}])
def test_half_of_what_electricity_takes_is_not_counted(alone):
    assert "Electricity" not in table(**SHOP, **alone)


def test_a_second_of_fitting_is_counted_apart_too():
    blank = {name: text for name, text in JOB.items() if name != "operating_factor"}
    notes = " ".join(ask(**blank, prep_time="0.0001 h")["notes"]).replace("\u00a0", " ")
    assert "30 % of the time" in notes


def test_what_is_not_counted_is_said():
    notes = " ".join(ask(**SHOP, gas_flow="35 ft3/h", drive_time="2 h")["notes"])
    for words in (
        "Gas is not counted yet",
        "Electricity is not counted",
        "Length and hours around the weld count once",
    ):
        assert words in notes
    whole = " ".join(ask(**JOB, **GAS, drive_time="2 h", energy_price="0.15", arc_power="6000 W")["notes"])
    assert "not counted" not in whole and "count once" not in whole
    assert "Gas is not" not in " ".join(ask(**{**SHOP, "wire_and_gas": "flux-cored-self-shielded"})["notes"])


def test_the_cautions_stand_by_the_number():
    cautions = " ".join(ask(**SHOP)["cautions"])
    assert "not an offer" in cautions and "procedure (WPS) allows" in cautions


# --- What comes before and after


def test_the_joint_brings_its_cross_section_and_its_wire():
    asked = [
        ("leg", "1/4 in"),
        ("overweld_factor", "1"),
        ("weld_length", "40 ft"),
        ("wire_diameter", "0.035 in"),
        ("wire_feed_speed", "300 in/min"),
        ("waste", "0"),
    ]
    (address,) = [
        each for each in links(walking.reply("/joint-fill", asked, partial=True).body) if each.startswith("weld-cost")
    ]
    carried, came = opened(address)
    assert came.state == "waiting"
    # 1/4 in leg: 1/32 in2.
    assert dict(carried)["weld_area"] == "0.03125 in2"
    money = {**dict(carried), "wire_price": "4.50/lb", "labor_rate": "60"}
    # 40 ft take 4.42 lb of wire (P = W L / E at 0.96): 19.9.
    assert table(**money)["Wire"][0] == pytest.approx(4.42 * 4.50, rel=0.005)


def test_cored_wire_comes_from_the_joint_by_its_rate():
    asked = [("leg", "1/4 in"), ("wire_and_gas", "flux-cored-self-shielded"), ("gas_flow", "30 ft3/h")]
    (address,) = [
        each for each in links(walking.reply("/joint-fill", asked, partial=True).body) if each.startswith("weld-cost")
    ]
    carried, came = opened(address)
    assert dict(carried)["rate_by"] == "rate" and "gas_flow" not in dict(carried)
    assert came.state == "waiting"


def test_the_next_questions_carry_feed_flow_and_arc_time():
    typed = {
        **{name: text for name, text in JOB.items() if name not in ("rate_by", "deposition_rate")},
        **GAS,
        "wire_diameter": "0.035 in",
        "wire_feed_speed": "300 in/min",
    }
    found = {each.partition("?")[0]: each for each in links(page(**typed))}
    assert list(found) == ["joint-fill", "wire-feed", "gas-supply"]
    assert "wire_feed_speed=300+in/min" in found["wire-feed"]
    # 10.2095 lb at 4.4197 lb/h (90 % of the wire): 138.6 min.
    assert "arc_time=138.58" in found["gas-supply"] and "gas_flow=35+ft3/h" in found["gas-supply"]


def test_the_working_shows_the_sums():
    found = asking.ask(weld_cost.CALCULATOR, [*JOB.items(), *GAS.items(), ("drive_time", "2 h")]).answer
    assert found is not None
    lines = " ".join(sentence(line, CONTEXT) for line in found.working).replace("\u00a0", " ")
    for words in (
        "4.50 /lb ÷ 0.9 ÷ (1 − 0 %) = 5.00 /lb",
        "45.00 /h ÷ (10 lb/h × 30 %) = 15.00 /lb",
        "60.00 ÷ 250 ft³ × 35 ft³/h ÷ 10 lb/h = 0.84 /lb",
        "20.84 /lb × 193.5 mm² × 7850 kg/m³ = 21.28 /ft",
        "21.28 /ft × 10 ft + hours around it 2 h × 45.00 /h = 302.77",
    ):
        assert words in lines
