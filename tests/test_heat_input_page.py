"""The heat-input question where energy or power was measured, and where there are several passes.

Expected numbers are worked out by hand from the formulas, which tests/published checks.
"""

import json
import re

import pytest

from calculators import asking, heat_input
from tests import walking
from webapp.catalogue import Context, sentence

CONTEXT = Context("en", "us", "0")
LIMIT = {"limit_basis": "arc-energy", "heat_input_limit": "19 kJ/in"}


def ask(typed, status=200, units="us"):
    reply = walking.reply("/api/heat-input", list(typed.items()), system=units)
    assert reply.status == status, reply.body
    return json.loads(reply.body)


def came(typed):
    return asking.ask(heat_input.CALCULATOR, list(typed.items()))


def page(typed):
    return walking.reply("/heat-input", list(typed.items())).body


def passes(*rows):
    typed = {"measured_by": "passes"}
    for number, row in enumerate(rows, 1):
        typed.update({f"passes-{number}-{name}": text for name, text in row.items()})
    return typed


# 24 V x 180 A: 12 in in 60 s 21.6, in 48 s 17.28; 8.64 in the cool one, all kJ/in.
HOT = {"voltage": "24 V", "current": "180 A", "weld_length": "12 in", "arc_time": "60 s"}
MIDDLE = {"voltage": "24 V", "current": "180 A", "weld_length": "12 in", "arc_time": "48 s"}
COOL = {"readings": "speed", "voltage": "24 V", "current": "180 A", "travel_speed": "30 in/min"}
ENERGY = {"readings": "energy", "instantaneous_energy": "60 kJ", "weld_length": "3 in"}  # 20 kJ/in
POWER = {"readings": "power-speed", "arc_power": "5 kW", "travel_speed": "15 in/min"}  # 20 kJ/in
POWER_TIME = {"readings": "power-time", "arc_power": "5 kW", "weld_length": "15 in", "arc_time": "1 min"}  # 20 kJ/in


# ---------------------------------------------------------------- what the question was before stays so


def test_a_question_that_says_nothing_of_measuring_is_of_volts_and_amps():
    typed = {"voltage": "24 V", "current": "180 A", "travel_speed": "12 in/min"}
    plain, said = ask(typed), ask({**typed, "measured_by": "meters"})
    assert plain == said
    assert plain["solved_for"] == "heat_input"
    assert list(plain["results"]) == ["heat_input", "arc_energy"]
    assert plain["results"]["arc_energy"]["value"] == pytest.approx(21.6)


# ---------------------------------------------------------------- energy and power


@pytest.mark.parametrize(
    "typed",
    [
        {"measured_by": "power", "arc_power": "5000 W", "travel_speed": "15 in/min"},
        {"measured_by": "power", "arc_power": "5 kW", "weld_length": "15 in", "arc_time": "60 s"},
        {"measured_by": "energy", "instantaneous_energy": "60000 J", "weld_length": "3 in"},
    ],
)
def test_energy_and_power_give_the_arc_energy_of_the_code(typed):
    answer = ask(typed)
    assert answer["results"]["arc_energy"]["value"] == pytest.approx(20.0)
    assert answer["results"]["heat_input"]["value"] == pytest.approx(16.0)
    titles = " ".join(source["title"] for source in answer["sources"])
    assert "QW-409.1(c)" in titles and "QW-409.1(a)" not in titles


@pytest.mark.parametrize(
    ("typed", "blank", "value", "unit"),
    [
        ({"measured_by": "power", "travel_speed": "15 in/min"}, "arc_power", 5000.0, "W"),
        ({"measured_by": "power", "arc_power": "5 kW"}, "travel_speed", 15.0, "in/min"),
        ({"measured_by": "energy", "weld_length": "3 in"}, "instantaneous_energy", 60000.0, "J"),
        ({"measured_by": "energy", "instantaneous_energy": "60 kJ"}, "weld_length", 3.0, "in"),
    ],
)
def test_a_limit_gives_the_blank_that_just_keeps_it(typed, blank, value, unit):
    answer = ask({**typed, "limit_basis": "arc-energy", "heat_input_limit": "20 kJ/in"})
    assert answer["solved_for"] == blank
    assert answer["results"][blank] == {"value": pytest.approx(value), "unit": unit}
    # A European limit of 16 kJ/in with k 0.8 is the same weld.
    europe = ask({**typed, "limit_basis": "heat-input", "heat_input_limit": "16 kJ/in"})
    assert europe["results"][blank]["value"] == pytest.approx(value)


def test_a_limit_on_the_wrong_basis_is_not_kept():
    """The trap: 20 kJ/in of arc energy is 16 kJ/in of heat input, which must not pass a US limit of 19."""
    typed = {"measured_by": "energy", "instantaneous_energy": "60 kJ", "weld_length": "3 in"}
    us = came({**typed, **LIMIT}).answer.verdict
    assert us.state == "outside"
    assert came({**typed, **LIMIT, "limit_basis": "heat-input"}).answer.verdict.state == "inside"
    assert sentence(us.remedy, CONTEXT).replace("\u00a0", " ").startswith("It comes inside over a weld length of 3.158")


def test_volts_typed_beside_a_power_are_not_taken_silently():
    assert list(ask({"arc_power": "5 kW", "travel_speed": "15 in/min"}, 422)["errors"]) == ["measured_by"]


def test_energy_without_its_length_waits():
    waiting = came({"measured_by": "energy", "instantaneous_energy": "60 kJ"})
    assert waiting.state == "waiting"
    assert "Weld length" in sentence(waiting.waiting, CONTEXT)


# ---------------------------------------------------------------- several passes


def test_the_hottest_pass_leads_and_every_pass_is_listed():
    answer = ask(passes(COOL, HOT, MIDDLE))
    assert answer["results"]["arc_energy"]["value"] == pytest.approx(21.6)
    assert answer["results"]["heat_input"]["value"] == pytest.approx(0.8 * 21.6)
    assert answer["results"]["worst_pass"]["text"] == "pass 2"
    table = answer["results"]["passes"]
    assert [row[0] for row in table["rows"]] == ["1", "2", "3"]
    assert [row[2]["value"] for row in table["rows"]] == [pytest.approx(value) for value in (8.64, 21.6, 17.28)]


def test_all_ways_to_measure_a_pass_mix_in_one_table():
    rows = ask(passes(HOT, ENERGY, POWER, POWER_TIME, COOL))["results"]["passes"]["rows"]
    assert [row[2]["value"] for row in rows] == [pytest.approx(value) for value in (21.6, 20.0, 20.0, 20.0, 8.64)]


def test_the_worst_is_held_to_the_limit_and_not_the_average():
    """The trap: 8.64 and 21.6 average 15.1, inside 19; the weld is outside."""
    verdict = came({**passes(COOL, HOT), **LIMIT}).answer.verdict
    assert verdict.state == "outside"
    text = sentence(verdict.message, CONTEXT).replace("\u00a0", " ")
    assert text == "pass 2 is 14 % over 19 kJ/in (US: efficiency left out). Over it: 2"
    # 12 in/min x 21.6 / 19
    assert "13.64" in sentence(verdict.remedy, CONTEXT)


def test_all_passes_over_are_named():
    verdict = came({**passes(HOT, COOL, ENERGY), **LIMIT}).answer.verdict
    assert sentence(verdict.message, CONTEXT).endswith("Over it: 1 and 3")


def test_passes_inside_are_said_to_be():
    verdict = came({**passes(COOL, MIDDLE), **LIMIT}).answer.verdict
    assert verdict.state == "inside"
    assert "pass 2, the hottest" in sentence(verdict.message, CONTEXT)


def test_just_at_the_limit_is_inside():
    limit = {"limit_basis": "arc-energy", "heat_input_limit": "20 kJ/in"}
    assert came({**passes(ENERGY, POWER), **limit}).answer.verdict.state == "inside"


def test_the_basis_of_the_limit_leads():
    assert next(iter(ask({**passes(HOT), **LIMIT})["results"])) == "arc_energy"
    assert next(iter(ask(passes(HOT))["results"])) == "heat_input"


def test_order_of_passes_changes_nothing_but_their_numbers():
    forth, back = ask(passes(COOL, HOT, ENERGY)), ask(passes(ENERGY, HOT, COOL))
    assert forth["results"]["heat_input"] == back["results"]["heat_input"]
    assert forth["results"]["worst_pass"] == back["results"]["worst_pass"]


def test_of_two_equal_passes_the_first_is_named():
    assert ask(passes(COOL, ENERGY, POWER))["results"]["worst_pass"]["text"] == "pass 2"


def test_efficiency_holds_for_every_pass():
    answer = ask({**passes(HOT), "thermal_efficiency": "0.6"})
    assert answer["results"]["heat_input"]["value"] == pytest.approx(0.6 * 21.6)


def test_one_pass_gives_what_the_one_weld_gives():
    one = ask({name: text for name, text in HOT.items() if name != "readings"})
    assert ask(passes(HOT))["results"]["heat_input"] == one["results"]["heat_input"]


def test_no_pass_and_half_a_pass_are_waited_for():
    for typed, words in (
        ({"measured_by": "passes"}, "Waiting for: Pass"),
        (passes({"voltage": "24 V", "current": "180 A", "arc_time": "60 s"}), "Waiting for: Weld length in row 1"),
        (passes(HOT, {"readings": "energy", "weld_length": "3 in"}), "Waiting for: Instantaneous energy in row 2"),
    ):
        reply = came(typed)
        assert reply.state == "waiting"
        assert sentence(reply.waiting, CONTEXT) == words


def test_a_pass_that_cannot_be_is_refused_by_its_number():
    crawl = {**HOT, "weld_length": "1 in", "arc_time": "10 min"}
    found = ask(passes(COOL, crawl), 422)["errors"]
    assert list(found) == ["passes-2-arc_time"]
    assert found["passes-2-arc_time"].startswith("Pass 2: that length in that time is a travel speed of 0.1")
    cold = {"readings": "energy", "instantaneous_energy": "0.2 kJ", "weld_length": "10 m"}
    assert "Pass 1 comes to" in ask(passes(cold), 422)["errors"][""]


def test_a_pass_typed_without_the_choice_asks_for_it():
    found = ask({"passes-1-voltage": "24 V"}, 422)["errors"]
    assert list(found) == ["measured_by"]


def test_choices_in_rows_that_nobody_typed_ask_for_nothing():
    """Without script a form sends every choice of every row, shown or not."""
    typed = {"voltage": "24 V", "current": "180 A", "travel_speed": "12 in/min", "passes-1-readings": "time"}
    assert ask(typed)["results"]["arc_energy"]["value"] == pytest.approx(21.6)


# ---------------------------------------------------------------- the form


def _rows_tag(html):
    (found,) = re.findall(r'<fieldset class="rows"[^>]*>', html)
    return found


def test_rows_show_only_when_asked_for():
    assert " hidden" in _rows_tag(page({}))
    assert 'data-when="measured_by" data-when-is="passes"' in _rows_tag(page({}))
    assert " hidden" not in _rows_tag(page({"measured_by": "passes"}))
    # What was typed and is no longer asked for stays in sight.
    assert " hidden" not in _rows_tag(page({"measured_by": "power", "passes-1-voltage": "24 V"}))


def test_a_row_hides_what_its_readings_do_not_need():
    html = page(passes(ENERGY))
    shown = re.findall(r'<div class="field[^>]*>(?:(?!<div class="field).)*?id="(passes-1-\w+)"', html, re.S)
    hidden = re.findall(r'<div class="field[^>]*hidden>(?:(?!<div class="field).)*?id="(passes-1-\w+)"', html, re.S)
    assert {"passes-1-voltage", "passes-1-current", "passes-1-travel_speed", "passes-1-arc_time"} <= set(hidden)
    assert "passes-1-weld_length" in set(shown) - set(hidden)
