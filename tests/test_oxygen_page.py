"""The oxygen question: carbon dioxide leads, nothing is ever called good, and no time is a time to stay."""

import json
import re

import pytest

from calculators.oxygen_words import ENGLISH
from tests import walking

TANK = {"space": "known", "space_volume": "10 m3", "gas_inflow": "35 ft3/h"}


def ask(status=200, **typed):
    reply = walking.reply("/api/oxygen", list(typed.items()), system="si")
    assert reply.status == status, reply.body
    return json.loads(reply.body)


def page(**typed):
    return walking.reply("/oxygen", list(typed.items())).body.replace("\u00a0", " ")


def state(**typed):
    return page(**typed).partition('class="verdict ')[2].partition('"')[0]


def test_carbon_dioxide_leads_where_the_gas_holds_it():
    results = ask(**TANK, gas="carbon-dioxide")["results"]
    assert next(iter(results)) == "carbon_dioxide_limit_time"
    assert results["carbon_dioxide_limit_time"]["value"] == pytest.approx(3.03, abs=0.01)
    assert results["carbon_dioxide_danger_time"]["value"] == pytest.approx(24.7, abs=0.05)
    assert results["oxygen_low_time"]["value"] == pytest.approx(42.0, abs=0.05)
    assert results["carbon_dioxide_at_alarm"]["value"] == pytest.approx(67000, rel=0.01)


def test_75_25_passes_the_law_for_carbon_dioxide_before_the_meter_alarms():
    results = ask(**TANK)["results"]
    assert next(iter(results)) == "carbon_dioxide_limit_time"
    assert results["carbon_dioxide_limit_time"]["value"] == pytest.approx(12.2, abs=0.1)  # -605 min x ln(0.98)
    assert results["carbon_dioxide_at_alarm"]["value"] == pytest.approx(16700, rel=0.01)


def test_argon_is_led_by_oxygen():
    results = ask(**TANK, gas="argon")["results"]
    assert next(iter(results)) == "oxygen_low_time"
    assert not any(name.startswith("carbon") for name in results)


def test_a_lean_mix_is_led_by_oxygen_too():
    """5 % of carbon dioxide: 5000 ppm takes a tenth of the space, 19.5 % oxygen only a fifteenth."""
    results = ask(**TANK, carbon_dioxide="5 %")["results"]
    assert list(results)[:2] == ["oxygen_low_time", "carbon_dioxide_limit_time"]


def test_every_time_has_an_early_end_for_gas_that_lies_low():
    time = ask(**TANK)["results"]["carbon_dioxide_limit_time"]
    assert time["low"] == pytest.approx(time["high"] / 3)
    assert time["high"] == time["value"]
    assert "lowest third" in page(**TANK)
    assert "top third" in page(**TANK, gas="helium-mix")


def test_a_night_with_a_small_leak():
    """10 L/h of 75/25 into a 2 m3 cab for 12 h: 5.8 % gas, 14 600 ppm, 19.7 % oxygen; by hand."""
    cab = {"space": "known", "space_volume": "2 m3", "gas_inflow": "10 L/h", "time_let_in": "12 h"}
    results = ask(**cab)["results"]
    assert results["carbon_dioxide_then"]["value"] == pytest.approx(14560, rel=0.005)
    assert results["oxygen_then"]["value"] == pytest.approx(19.68, abs=0.01)
    assert state(**cab) == "outside"


def test_a_fan_settles_it_and_proves_nothing():
    blown = {**TANK, "fan": "blows-in", "air_flow": "2000 ft3/min"}
    results = ask(**blown)["results"]
    assert next(iter(results)) == "carbon_dioxide_settled"
    # 35 of 120 035 ft3/h, a quarter of it: 73 ppm, by hand.
    assert results["carbon_dioxide_settled"]["value"] == pytest.approx(72.9, abs=0.1)
    assert state(**blown) == "unclear"
    assert "not by this sum" in page(**blown)


def test_a_fan_that_draws_out_less_than_comes_in_helps_nothing():
    weak = {**TANK, "gas_inflow": "100 ft3/h", "fan": "draws-out", "air_flow": "1 ft3/min"}
    still = {**TANK, "gas_inflow": "100 ft3/h"}
    assert ask(**weak)["results"]["oxygen_low_time"] == ask(**still)["results"]["oxygen_low_time"]
    strong = {**TANK, "gas": "argon", "gas_inflow": "0.9 L/min", "fan": "draws-out", "air_flow": "10 m3/h"}
    assert ask(**strong)["results"]["oxygen_settled"]["value"] == pytest.approx(20.9 * (1 - 0.054 / 10), abs=0.001)


def test_no_answer_is_ever_inside():
    for _, came in walking.answered("oxygen"):
        verdict = came.answer.verdict if came.answer else None
        assert verdict is not None and verdict.state in ("outside", "unclear")
        assert verdict.remedy is not None and verdict.remedy.id == "oxygen.remedy"


def test_what_has_not_been_reached_yet_is_unclear_not_good():
    assert state(**TANK, time_let_in="1 min") == "unclear"
    assert state(**TANK, time_let_in="13 min") == "outside"


# "Never" may stand before any of them.
PERMISSION = r"\b(safe|ok|okay|may stay|can stay|you may|allowed|permitted|no danger|harmless|fine to)\b"


def test_no_sentence_permits_anything():
    for id, text in ENGLISH.items():
        assert not re.search(PERMISSION, text.lower()), id


def test_meters_permit_attendant_and_rescue_stand_beside_every_answer():
    cautions = " ".join(ask(**TANK)["cautions"])
    for word in ("Test the air", "Get a permit", "shut the gas outside", "Call for help", "Never freshen"):
        assert word in cautions
    assert "None of these is a time to stay" in page(**TANK)


def test_an_oxygen_meter_is_called_blind_only_where_there_is_carbon_dioxide():
    assert "blind" in page(**TANK)
    assert "blind" not in page(**TANK, gas="argon")


def test_shapes():
    box = {"space_length": "2 m", "space_width": "2 m", "space_height": "2.5 m", "gas_inflow": "35 ft3/h"}
    round_tank = {"space": "round", "space_length": "2 m", "space_diameter": "2 m", "gas_inflow": "35 ft3/h"}
    ten = ask(**TANK)["results"]["oxygen_low_time"]["value"]
    assert ask(**box)["results"]["oxygen_low_time"]["value"] == pytest.approx(ten)
    assert ask(**round_tank)["results"]["oxygen_low_time"]["value"] == pytest.approx(ten * 0.6283, rel=1e-3)


def test_long_times_are_told_in_hours():
    """By hand: 10 m3, 35 ft3/h: 6 % of oxygen after 12.6 h."""
    last = page(**TANK, gas="carbon-dioxide").partition("<tbody>")[2].partition("</tbody>")[0].rpartition("<td>")[2]
    assert last.startswith("13 h")
