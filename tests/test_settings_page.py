"""What settings answers and refuses, and that it never contradicts the calculators it leads to."""

import json
import random
import types
import urllib.parse

import pytest

from calculators import asking, line_energy, settings, settings_bead
from calculators.facts import settings as facts
from tests import walking
from tests.settings_bounds import PASSES
from tests.settings_situations import REFUSED, SITUATIONS

SIX_FIGURES = 2e-5  # what a link carries


def api(calculator, pairs, units="us", status=200):
    reply = walking.reply("/api/" + calculator, pairs, system=units)
    assert reply.status == status, reply.body
    return json.loads(reply.body)


def typed(text):
    return [tuple(part.strip().split("=", 1)) for part in text.split(";")]


def ask(units="us", status=200, **given):
    return api("settings", list(given.items()), units, status)


def value(answer, name):
    return answer["results"][name]["value"]


def whole(answer):
    return json.dumps(answer, ensure_ascii=False).replace("\u00a0", " ")


# ---------------------------------------------------------------- as a competent welder would have it


@pytest.mark.parametrize("situation", SITUATIONS, ids=[each[0] for each in SITUATIONS])
def test_competent_welder_would_accept_it(situation):
    _, why, text, transfer, currents, voltages, words = situation
    assert why
    answer = ask(**dict(typed(text)))
    assert answer["results"]["transfer_mode"]["text"].startswith(transfer)
    assert currents[0] <= value(answer, "current") <= currents[1]
    assert voltages[0] <= value(answer, "voltage") <= voltages[1]
    page = walking.reply("/settings", typed(text)).body.replace("\u00a0", " ")
    for word in words:
        assert word in page


@pytest.mark.parametrize("situation", SITUATIONS, ids=[each[0] for each in SITUATIONS])
def test_its_pass_is_one_a_hand_lays(situation):
    leg, passes, travel, flow, energy = PASSES[situation[0]]
    results = ask(**dict(typed(situation[2])))["results"]
    bounds = {"passes": passes, "travel_speed": travel, "gas_flow": flow, "arc_energy": energy}
    if leg is not None:
        bounds["leg"] = leg
    for name, (low, high) in bounds.items():
        assert low - 0.001 <= results[name]["value"] <= high + 0.001, name
    assert results["heat_input"]["value"] == pytest.approx(0.8 * results["arc_energy"]["value"])


def test_situations_are_many():
    assert set(PASSES) == {each[0] for each in SITUATIONS}
    assert len(SITUATIONS) >= 30
    assert len(REFUSED) >= 6


@pytest.mark.parametrize("situation", REFUSED, ids=[each[0] for each in REFUSED])
def test_what_the_truck_cannot_do_is_refused_and_something_named(situation):
    _, why, text, field, words = situation
    assert why
    errors = ask(status=422, **dict(typed(text)))["errors"]
    assert list(errors) == [field]
    for word in words:
        assert word in errors[field].replace("\u00a0", " ")


# ---------------------------------------------------------------- no contradiction


def onward(text, calculator):
    """Return the question that the page leads to, as it is linked."""
    page = walking.reply("/settings", typed(text)).body
    start = page.find(f'href="{calculator}?')
    if start < 0:
        return None
    address = page[start + 6 : page.index('"', start + 6)].replace("&amp;", "&")
    return urllib.parse.parse_qsl(address.partition("?")[2])


def contradictions(pairs):
    """Return the calculators that do not say what settings says, each asked what the page leads to."""
    answer = api("settings", pairs)
    text = "; ".join(f"{name}={typed}" for name, typed in pairs)
    results = answer["results"]
    found = []

    def compare(calculator, name, own, ends=("value",)):
        question = onward(text, calculator)
        if question is None:
            return
        theirs = api(calculator, question)["results"][name]
        if any(theirs[end] != pytest.approx(own[end], rel=SIX_FIGURES) for end in ends):
            found.append(f"{calculator} {name}: {theirs}, not {own}")

    band = ("value", "low", "high")
    compare("wire-feed", "wire_feed_speed", results["wire_feed_speed"], band)
    compare("travel-speed", "travel_speed", results["travel_speed"])
    compare("heat-input", "arc_energy", results["arc_energy"])
    compare("heat-input", "heat_input", results["heat_input"])
    compare("joint-fill", "travel_speed", results["travel_speed"])
    if results["passes"]["value"] > 1:
        compare("joint-fill", "passes", results["passes"])
    question = onward(text, "transfer-mode")
    if question is not None:
        mode = api("transfer-mode", question)["results"]["transfer_mode"]["text"]
        if not results["transfer_mode"]["text"].startswith(mode):
            found.append(f"transfer-mode: {mode}")
    usual = api("arc-voltage", onward(text, "arc-voltage"))["results"]["usual_voltage"]
    if [usual["low"], usual["high"]] != pytest.approx([results["voltage"]["low"], results["voltage"]["high"]]):
        found.append(f"arc-voltage: {usual}")
    return found


@pytest.mark.parametrize("situation", SITUATIONS, ids=[each[0] for each in SITUATIONS])
def test_other_calculators_say_the_same(situation):
    assert contradictions(typed(situation[2])) == []


def random_jobs(count):
    """Return jobs that get an answer, of every metal, gas, joint and position, with and without a machine's limits."""
    chance = random.Random("settings")
    found: list[walking.Pairs] = []
    while len(found) < count:
        pairs = walking.a_question(settings.CALCULATOR, chance)
        kept = [
            (name, text) for name, text in pairs if name not in ("wire_kind", "wind") and not name.endswith("_dial")
        ]
        thickness = f"{chance.choice((0.0359, 0.0598, 0.0747, 0.125, 0.1875, 0.25, 0.375, 0.5))} in"
        kept = [(name, thickness if name == "thickness" else text) for name, text in kept]
        if asking.ask(settings.CALCULATOR, kept).state == "answer":
            found.append(kept)
    return found


def test_other_calculators_say_the_same_of_random_jobs():
    wrong = [(pairs, found) for pairs in random_jobs(50) if (found := contradictions(pairs))]
    assert wrong == []


def test_metric_wire_keeps_its_size_on_the_way():
    # 1.2 mm is where a table of wires begins anew: 0.0472441 in would be thicker.
    assert contradictions(typed("thickness=0.0747 in; wire_diameter=1.2 mm")) == []


def test_contradiction_would_be_found(monkeypatch):
    """Of a formula of its own, since a change to a shared one would show nowhere."""

    def own(*numbers):
        return 1.001 * line_energy.arc_energy(*numbers)

    rest = {"heat_input": line_energy.heat_input, "efficiency_of": line_energy.efficiency_of}
    monkeypatch.setattr(settings_bead, "line_energy", types.SimpleNamespace(arc_energy=own, **rest))
    assert [found.split(":")[0] for found in contradictions(typed(SITUATIONS[0][2]))] == ["heat-input arc_energy"]


def test_most_joints_lead_to_joint_fill():
    led = [each for each in SITUATIONS if onward(each[2], "joint-fill") is not None]
    assert len(led) >= 0.7 * len(SITUATIONS)


def test_most_wires_lead_to_transfer_mode():
    led = [each for each in SITUATIONS if onward(each[2], "transfer-mode") is not None]
    assert len(led) >= 0.9 * len(SITUATIONS)


def test_bands_hold_their_numbers():
    for situation in SITUATIONS:
        for name, result in ask(**dict(typed(situation[2])))["results"].items():
            if "low" in result:
                assert result["low"] <= result["value"] * 1.000001, (situation[0], name)
                assert result["high"] >= result["value"] * 0.999999, (situation[0], name)


# ---------------------------------------------------------------- what is taken, and said


def test_blank_wire_and_gas_are_taken_and_said():
    answer = ask(thickness="1/8 in")
    assert "Wire taken as 0.035 in." in whole(answer)
    assert "Gas taken as 75/25." in whole(answer)
    asked = ask(thickness="1/8 in", wire_diameter="0.035 in", gas="argon-carbon-dioxide", carbon_dioxide="25 %")
    assert asked["results"] == answer["results"]
    assert "taken as" not in whole(asked)


@pytest.mark.parametrize(("metal", "said"), [("aluminum", "Gas taken as Argon."), ("stainless", "Gas taken as 98/2.")])
def test_usual_gas_goes_with_the_metal(metal, said):
    assert said in whole(ask(wire_material=metal, thickness="1/8 in"))


def test_rule_is_an_ampere_for_each_thousandth():
    assert value(ask(thickness="0.125 in"), "current") == pytest.approx(125.0)
    assert value(ask(thickness="0.150 in"), "current") == pytest.approx(150.0)


def test_overhead_runs_a_tenth_cooler():
    assert value(ask(thickness="0.125 in", position="overhead"), "current") == pytest.approx(112.5, abs=0.51)


def test_stainless_runs_cooler():
    assert value(ask(wire_material="stainless", thickness="0.125 in"), "current") == pytest.approx(106.25, abs=0.51)


def test_lead_drop_raises_the_machine_and_not_the_arc():
    plain, long = ask(thickness="1/8 in"), ask(thickness="1/8 in", lead_voltage_drop="3 V")
    assert value(long, "voltage") == value(plain, "voltage")
    assert value(long, "machine_voltage") == pytest.approx(value(plain, "voltage") + 3.0)
    assert value(long, "arc_energy") == value(plain, "arc_energy")
    assert "machine_voltage" not in plain["results"]


def test_most_volts_hold_the_voltage_down():
    answer = ask(thickness="1/8 in", largest_voltage="17.5 V")
    assert value(answer, "voltage") == pytest.approx(17.5)
    behind_leads = ask(thickness="1/8 in", largest_voltage="20 V", lead_voltage_drop="2.5 V")
    assert value(behind_leads, "voltage") == pytest.approx(17.5)


def test_slowest_feed_holds_the_current_up():
    answer = ask(thickness="0.0598 in", wire_diameter="0.030 in", least_feed="150 in/min")
    assert value(answer, "wire_feed_speed") == pytest.approx(150.0, rel=0.02)


def test_fastest_feed_holds_the_current_down():
    answer = ask(thickness="3/16 in", largest_feed="300 in/min")
    assert value(answer, "wire_feed_speed") == pytest.approx(300.0, rel=0.02)
    assert value(answer, "wire_feed_speed") <= 300.0


def test_spray_is_not_pushed_through_thin_plate():
    # 3/16 in wants 188 A; 0.045 in wire in 90/10 sprays surely above 260 A, but short-circuits at 188 A.
    answer = ask(thickness="3/16 in", wire_diameter="0.045 in", gas="argon-carbon-dioxide", carbon_dioxide="10 %")
    assert answer["results"]["transfer_mode"]["text"].startswith("Short-circuit")


def test_leg_too_small_for_the_wire_is_said():
    answer = ask(thickness="1/8 in", leg="1/16 in")
    assert answer["verdict"] == "warning"
    assert "a larger bead than your leg" in whole(answer)
    assert value(answer, "leg") > 1 / 16


def test_large_leg_takes_passes():
    answer = ask(thickness="1/8 in", leg="3/8 in")
    assert value(answer, "passes") >= 2
    assert "leg here" in whole(answer)


def test_travel_is_what_a_hand_holds():
    for situation in SITUATIONS:
        travel = value(ask(**dict(typed(situation[2]))), "travel_speed")
        assert 3.9999 <= travel <= 30.0001, situation[0]


def test_nobody_runs_steel_uphill_faster_than_ten_inches_a_minute():
    for thickness in ("1/16 in", "1/8 in", "3/16 in"):
        travel = ask(thickness=thickness, position="vertical-up", wire_diameter="0.030 in")["results"]["travel_speed"]
        assert travel["unit"] == "in/min"
        assert travel["value"] <= 10.0001


def alloys(**more):
    return {"wire_material": "aluminum", "thickness": "1/4 in", "wire_diameter": "3/64 in", **more}


def test_filler_of_5083_is_taken_with_magnesium_and_goes_along():
    answer = ask(**alloys(base_alloy="5083"))
    assert answer["results"] == ask(**alloys(base_alloy="5083", filler_alloy="5356"))["results"]
    assert "Filler taken as 5356" in whole(answer)
    assert ("filler_alloy", "5356") in dict(links("; ".join(f"{k}={v}" for k, v in alloys(base_alloy="5083").items())))[
        "wire-feed"
    ]
    assert "Filler taken" not in whole(ask(**alloys(base_alloy="6061")))


def test_4043_is_doubted_where_the_alloy_may_not_take_it():
    # Mathers, p. 49: no silicon filler on more than 2 % magnesium; 5052 has 2.2 to 2.8 %. Published; from memory.
    unknown = ask(**alloys(filler_alloy="4043"))
    assert unknown["verdict"] == "warning"
    assert "Find out the alloy" in whole(walking.reply("/settings", list(alloys(filler_alloy="4043").items())).body)
    assert ask(**alloys(filler_alloy="4043", base_alloy="5052"))["verdict"] == "warning"
    for takes in ("6061", "1100-3003"):
        assert "brittle" not in whole(ask(**alloys(filler_alloy="4043", base_alloy=takes)))
    assert "brittle" not in whole(ask(**alloys(filler_alloy="5356")))


@pytest.mark.parametrize(
    ("typed", "mended"),
    [
        (alloys(base_alloy="5083", filler_alloy="4043", position="vertical-up"), {"filler_alloy": "5356"}),
        ({"thickness": "1/8 in", "gas": "argon"}, {"gas": "argon-carbon-dioxide", "carbon_dioxide": "25 %"}),
        (
            {"wire_material": "stainless", "thickness": "1/8 in", "gas": "carbon-dioxide"},
            {"gas": "argon-carbon-dioxide", "carbon_dioxide": "2 %"},
        ),
        (alloys(gas="argon-oxygen"), {"gas": "argon"}),
    ],
)
def test_refused_filler_or_gas_is_mended_with_one_tap(typed, mended):
    text = "; ".join(f"{name}={value}" for name, value in typed.items())
    ((calculator, pairs),) = links(text)
    assert calculator == "settings"
    kept = {name: value for name, value in typed.items() if name not in mended}
    assert set({**kept, **mended}) == {name for name, _ in pairs}
    assert {name: value for name, value in pairs if name in mended} == mended
    assert api("settings", pairs)["results"]


def test_no_tap_leads_from_one_refusal_into_another():
    job = "wire_material=stainless; thickness=1 in; position=overhead; gas=carbon-dioxide"
    assert links(job) == []


def test_aluminum_that_laps_cold_is_not_to_be_warmed():
    said = whole(ask(wire_material="aluminum", thickness="1/4 in", base_alloy="5083", filler_alloy="5356"))
    assert "Never warm 5083" in said
    assert "warm the metal" not in said
    assert "No 4043 on 5083" in said


def test_a_wire_far_too_thin_for_the_plate_is_refused_uphill():
    problem = ask(status=422, thickness="1/4 in", position="vertical-up", wire_diameter="0.030 in")["errors"]
    assert "0.045" in problem["wire_diameter"]


def test_short_circuit_names_the_codes():
    assert "D1.1" in whole(ask(thickness="1/8 in"))
    assert "D1.1 has no" not in whole(ask(thickness="1/2 in", wire_diameter="0.045 in", gas="argon-oxygen"))


def test_scrap_first_and_the_procedure_rules():
    for text in (SITUATIONS[0][2], SITUATIONS[1][2], SITUATIONS[2][2]):
        said = whole(ask(**dict(typed(text)))["cautions"])
        assert "scrap" in said and "WPS" in said


def test_headline_is_the_feed():
    assert next(iter(ask(thickness="1/8 in")["results"])) == "wire_feed_speed"


def test_first_fields_are_the_job():
    assert [field.name for field in settings.CALCULATOR.fields][:4] == [
        "wire_material",
        "thickness",
        "joint",
        "position",
    ]


def test_thickness_alone_is_enough():
    assert ask(thickness="1/8 in")["results"]


def test_rule_for_wire_and_sheet_is_what_its_comment_says():
    # 0.035 in wire from 16 gauge, coaxed to 18; 0.030 in to 20; 0.023 in to 24; 0.045 in to 14.
    for wire, coaxed, refused in (
        ("0.035 in", "0.0478 in", "0.0359 in"),
        ("0.030 in", "0.0359 in", "0.0299 in"),
        ("0.045 in", "0.0747 in", "0.0598 in"),
    ):
        assert ask(thickness=coaxed, wire_diameter=wire)["verdict"] == "warning"
        assert ask(status=422, thickness=refused, wire_diameter=wire)["errors"]["wire_diameter"]
    assert "verdict" not in ask(thickness="0.0598 in", wire_diameter="0.035 in")
    assert "verdict" not in ask(thickness="0.0239 in", wire_diameter="0.023 in")
    assert facts.HOT < facts.TOO_HOT


# ---------------------------------------------------------------- where it leads, and whose machine


def links(text):
    """Return (calculator, what it is asked) of every next question on the page."""
    page = walking.reply("/settings", typed(text)).body
    nav = page.partition('class="next"')[2].partition("</nav>")[0]
    found = []
    for part in nav.split('href="')[1:]:
        calculator, _, query = part.partition('"')[0].replace("&amp;", "&").partition("?")
        found.append((calculator, urllib.parse.parse_qsl(query)))
    return found


@pytest.mark.parametrize("situation", SITUATIONS, ids=[each[0] for each in SITUATIONS])
def test_every_next_question_takes_what_it_is_given(situation):
    found = links(situation[2])
    assert {"wire-feed", "arc-voltage", "travel-speed", "heat-input"} <= {name for name, _ in found}
    for calculator, pairs in found:
        state = asking.ask(walking.calculator(calculator), pairs).state
        assert state in ("answer", "waiting"), (calculator, pairs)


@pytest.mark.parametrize(
    "text",
    [
        "thickness=1/2 in",
        "thickness=1/2 in; position=vertical-up",
        "thickness=1/8 in; wind=wind",
        "thickness=1/4 in; wire_kind=flux-cored",
        "wire_material=aluminum; thickness=1/16 in",
    ],
)
def test_refusal_leads_to_another_process(text):
    assert walking.reply("/settings", typed(text)).body.count('class="summary"') > 0
    [(calculator, pairs)] = links(text)
    assert calculator == "process-choice"
    answer = asking.ask(walking.calculator(calculator), pairs)
    assert answer.state == "answer", answer.errors


MACHINE = {"machine": "Shop", "feed_dial": "1=100 5=300 in/min", "voltage_dial": "A=16 B=18 C=20 V"}


def test_own_dial_is_told():
    answer = ask(thickness="1/8 in", **MACHINE)
    # 100 to 300 in/min over four marks: 50 in/min a mark.
    mark = 1.0 + (value(answer, "wire_feed_speed") - 100.0) / 50.0
    assert value(answer, "feed_mark") == pytest.approx(mark)
    assert "B" in answer["results"]["voltage_tap"]["text"]
    assert "feed_mark" not in ask(thickness="1/8 in")["results"]


def test_tap_makes_good_what_the_leads_lose():
    answer = ask(thickness="1/8 in", lead_voltage_drop="2 V", **MACHINE)
    assert "C" in answer["results"]["voltage_tap"]["text"]


def test_own_trim_is_in_the_feed_and_carried():
    trim = {"arc_term": "1.1", "resistance_term": "1.1", "trim_band": "8 %"}
    plain, own = ask(thickness="1/8 in"), ask(thickness="1/8 in", **trim)
    assert value(own, "wire_feed_speed") == pytest.approx(1.1 * value(plain, "wire_feed_speed"))
    text = "thickness=1/8 in; arc_term=1.1; resistance_term=1.1; trim_band=8 %"
    feed = api("wire-feed", onward(text, "wire-feed"))["results"]["wire_feed_speed"]
    for end in ("value", "low", "high"):
        assert feed[end] == pytest.approx(own["results"]["wire_feed_speed"][end], rel=SIX_FIGURES)


def test_trim_of_other_wire_is_left_out_and_that_is_said():
    typed = {"wire_material": "stainless", "thickness": "1/8 in"}
    other = ask(**typed, arc_term="1.1", trim_material="mild-steel")
    assert other["results"]["wire_feed_speed"] == ask(**typed)["results"]["wire_feed_speed"]
    assert [note for note in other["notes"] if "another wire metal" in note]


def test_second_doubt_is_a_sentence_of_its_own():
    answer = ask(wire_material="mild-steel", thickness="0.25 in", joint="fillet", position="vertical-up")
    told = [text.replace("\u00a0", " ") for text in answer["cautions"]]
    assert "Also: runs cold, as 0.25 in wants 225 A" in told


@pytest.mark.parametrize(("alloy", "told"), [("6061", True), ("5083", False)])
def test_strength_of_6061_is_spoken_of_where_it_is_6061(alloy, told):
    answer = ask(wire_material="aluminum", thickness="0.1875 in", joint="lap", position="flat", base_alloy=alloy)
    assert any("6061 loses" in text for text in answer["cautions"]) is told
