"""The gas-flow question: what is judged, in which order, and where it leads."""

import json
import re

import pytest

from tests import walking


def ask(status=200, units="us", **typed):
    reply = walking.reply("/api/gas-flow", list(typed.items()), system=units)
    assert reply.status == status, reply.body
    return json.loads(reply.body)


def verdict(**typed):
    page = walking.reply("/gas-flow", list(typed.items())).body.replace("\u00a0", " ")
    found = re.search(r'class="verdict (\w+)"><strong>\w+</strong>: ([^<]*)', page)
    assert found, page
    return found.groups()


def said(answer, part):
    return " ".join(answer[part]).replace("\u00a0", " ")


def test_one_litre_a_minute_for_each_millimetre():
    answer = ask(units="si", nozzle_bore="16 mm")
    assert answer["results"]["usual_flow"]["value"] == pytest.approx(16.0)
    assert answer["results"]["usual_flow"]["low"] < 16.0 < answer["results"]["usual_flow"]["high"]
    assert "decides nothing here" in walking.reply("/gas-flow", [("nozzle_bore", "16 mm")]).body


@pytest.mark.parametrize(
    ("typed", "state", "part"),
    (
        ({}, "inside", "below the 5 mph"),
        ({"wind": "breeze"}, "unclear", "felt on the face"),
        ({"wind": "wind"}, "outside", "above the 5 mph"),
        ({"wind": "measured", "wind_speed": "5 mph"}, "inside", "below the 5 mph"),
        ({"wind": "measured", "wind_speed": "5.1 mph"}, "outside", "above the 5 mph"),
        ({"gas_flow": "15 L/min"}, "inside", "suits"),
        ({"gas_flow": "5 L/min"}, "outside", "less than"),
        ({"gas_flow": "20 L/min"}, "inside", "costs more"),
        ({"gas_flow": "25 L/min"}, "inside", "costs more"),
        ({"gas_flow": "25.1 L/min"}, "outside", "stirs air in"),
        ({"gas_flow": "40 L/min", "gas": "helium-mix", "helium": "75 %"}, "inside", "costs more"),
        ({"gas_flow": "15 L/min", "wind": "measured", "wind_speed": "4 mph"}, "unclear", "in this wind"),
        ({"gas_flow": "11 L/min", "wind": "measured", "wind_speed": "4 mph"}, "outside", "less than"),
        ({"gas_flow": "15 L/min", "wind": "wind"}, "outside", "wind above"),
    ),
)
def test_wind_is_judged_first_and_then_the_flow(typed, state, part):
    found = verdict(nozzle_bore="13 mm", **typed)
    assert found[0] == state
    assert part in found[1]


def test_in_the_wind_the_flow_told_is_for_behind_a_screen_and_leads_to_no_more_gas():
    page = walking.reply("/gas-flow", [("nozzle_bore", "13 mm"), ("wind", "wind")]).body
    assert "behind a screen" in page and "More gas does not help" in page
    windy, still = ask(nozzle_bore="13 mm", wind="wind"), ask(nozzle_bore="13 mm")
    assert windy["results"] == still["results"]


def test_seismic_work_is_told_of_its_own_limit():
    assert "D1.8" in said(ask(nozzle_bore="13 mm", wind="measured", wind_speed="4 mph"), "notes")
    assert "D1.8" not in said(ask(nozzle_bore="13 mm", wind="measured", wind_speed="3 mph"), "notes")


def test_carbon_dioxide_freezes_the_regulator_and_argon_does_not():
    assert "freezes" in said(ask(nozzle_bore="13 mm", gas="carbon-dioxide"), "cautions")
    assert "25 ft\u00b3/h" in said(ask(nozzle_bore="13 mm", gas="carbon-dioxide"), "cautions")
    assert "freezes" not in said(ask(nozzle_bore="13 mm", gas="argon"), "cautions")


def test_an_open_joint_and_overhead_take_more():
    plain = ask(nozzle_bore="16 mm")["results"]["usual_flow"]["value"]
    assert ask(nozzle_bore="16 mm", joint="corner")["results"]["usual_flow"]["value"] == pytest.approx(1.2 * plain)
    assert ask(nozzle_bore="16 mm", position="overhead")["results"]["usual_flow"]["value"] == pytest.approx(plain + 10)


def test_supply_is_asked_with_gas_and_flow():
    page = walking.reply(
        "/gas-flow", [("nozzle_bore", "13 mm"), ("gas_flow", "30 ft3/h"), ("carbon_dioxide", "25 %")]
    ).body
    assert "gas-supply?gas=argon-carbon-dioxide&amp;carbon_dioxide=25+%25&amp;gas_flow=30+ft3/h" in page
