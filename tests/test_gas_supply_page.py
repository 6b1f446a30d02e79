"""What the gas-supply question solves for, judges, waits for and refuses, and what goes with a number."""

import json
import random
import re

import pytest
from CoolProp.CoolProp import PropsSI

from calculators import gas_supply
from calculators.contract import STANDINGS, Quantity
from tests import walking
from tests.gas_supply_asking import (
    ARGON,
    ATMOSPHERE,
    BAR,
    CUBIC_FEET_PER_HOUR,
    CUBIC_FOOT,
    MIX,
    PSI,
    SEVENTY_FAHRENHEIT,
    TWENTY,
    ask,
    errors,
    found,
    page,
    plain,
    said,
    usable,
    value,
)

pytestmark = pytest.mark.quick

# ---------------------------------------------------------------- any one blank

COMPRESSED = {
    "carbon_dioxide": "18 %",
    "cylinder_temperature": "10 degC",
    "reserve": "15 bar",
    "cylinder_water_volume": "20 L",
    "cylinder_pressure": "150 bar",
    "gas_flow": "14 L/min",
}
LIQUID = {"gas": "carbon-dioxide", "cylinder_mass": "62 kg", "tare": "45 kg", "gas_flow": "12 L/min"}


@pytest.mark.parametrize(
    ("asked", "blank", "expected"),
    (
        (COMPRESSED, "cylinder_water_volume", 20),
        (COMPRESSED, "cylinder_pressure", 150),
        (COMPRESSED, "gas_flow", 14),
        (LIQUID, "cylinder_mass", 62),
        (LIQUID, "tare", 45),
        (LIQUID, "gas_flow", 12),
    ),
)
def test_any_one_blank_comes_back(asked, blank, expected):
    lasting = value(ask(**asked, units="si"), "arc_time")
    fewer = {name: text for name, text in asked.items() if name != blank}
    again = ask(**fewer, arc_time=f"{lasting:.10g} min", units="si")
    assert again["solved_for"] == blank
    assert next(iter(again["results"])) == blank
    assert value(again, blank) == pytest.approx(expected, rel=1e-6)


def test_flow_and_time_alone_tell_the_gas_and_the_smallest_cylinder_by_name():
    """40 ft3/h for 3 h is 120 ft3: more than an 80, less than a full 125."""
    answer = ask(gas="argon", gas_flow="40 ft3/h", arc_time="3 h")
    assert answer["solved_for"] == "gas_volume"
    assert value(answer, "gas_volume") == pytest.approx(120)
    assert "125 ft³" in answer["results"]["smallest_size"]["text"]
    more = ask(gas="argon", gas_flow="40 ft3/h", arc_time="20 h")["results"]["smallest_size"]["text"]
    assert "more than one" in more


def test_size_that_is_asked_for_names_the_next_one_up():
    answer = ask(gas="argon", gas_flow="40 ft3/h", arc_time="3 h", cylinder_pressure="2000 psi")
    size = 120 * CUBIC_FOOT / usable(1000, 2000 * PSI) * 1000
    assert 21.5 < size < 29
    assert value(answer, "cylinder_water_volume") == pytest.approx(size, rel=1e-3)
    assert "150 ft³" in answer["results"]["next_size"]["text"]


def test_property_twice_the_flow_lasts_half_as_long_and_more_pressure_longer():
    chance = random.Random(20)
    for _ in range(20):
        percent, psi, flow = chance.randrange(0, 30), chance.randrange(300, 3900), chance.uniform(10, 50)
        asked = {"carbon_dioxide": f"{percent} %", "cylinder_water_volume": "30 L"}
        once = value(ask(**asked, cylinder_pressure=f"{psi} psi", gas_flow=f"{flow:.3f} ft3/h"), "arc_time")
        twice = value(ask(**asked, cylinder_pressure=f"{psi} psi", gas_flow=f"{2 * flow:.3f} ft3/h"), "arc_time")
        higher = value(ask(**asked, cylinder_pressure=f"{psi + 50} psi", gas_flow=f"{flow:.3f} ft3/h"), "arc_time")
        assert twice == pytest.approx(once / 2, rel=1e-4)
        assert higher > once


# ---------------------------------------------------------------- will it last


def test_bottle_that_finishes_the_work_is_inside_and_tells_the_gauge_at_the_end():
    answer = ask(**MIX, cylinder_pressure="1400 psi", gas_flow="35 ft3/h", arc_time="40 min")
    assert answer["verdict"] == "inside"
    lasting = value(answer, "arc_time")
    left = round(lasting - 40)
    assert f"it lasts 40 min, {left} min to spare" in said(answer, "notes")
    end = float(found(r"The gauge will then show about ([0-9.]+) psi", said(answer, "notes")))
    # What is in it then is what was in it less 35 ft3/h for 40 min.
    then = usable(43, end * PSI, SEVENTY_FAHRENHEIT, 0.25)
    used = 35 * CUBIC_FEET_PER_HOUR * 2400
    assert then == pytest.approx(usable(43, 1400 * PSI, SEVENTY_FAHRENHEIT, 0.25) - used, rel=5e-3)


def test_bottle_that_is_short_is_outside_and_tells_the_pressure_it_takes():
    asked = {**MIX, "gas_flow": "35 ft3/h", "arc_time": "3 h"}
    answer = ask(**asked, cylinder_pressure="500 psi")
    assert answer["verdict"] == "outside"
    assert re.search(r"[0-9.]+ min short of 3 h", said(answer, "notes")) is None  # in the unit it was typed in
    assert re.search(r"[0-9.]+ h short of 3 h", said(answer, "notes"))
    start = found(r"It would have to start at ([0-9]+) psi", said(answer, "notes"))
    enough = ask(**asked, cylinder_pressure=f"{start} psi")
    assert value(enough, "arc_time") == pytest.approx(180, rel=5e-3)
    assert value(ask(**asked), "cylinder_pressure") == pytest.approx(float(start), rel=5e-3)


def test_what_gauge_and_flow_meter_cannot_tell_is_unclear():
    asked = {**MIX, "cylinder_pressure": "400 psi", "gas_flow": "35 ft3/h"}
    lasting = ask(**asked)["results"]["arc_time"]
    assert lasting["low"] < lasting["value"] < lasting["high"]
    for share, state in ((0.99, "inside"), (1.01, "unclear")):
        assert ask(**asked, arc_time=f"{lasting['low'] * share:.6f} min")["verdict"] == state
    for share, state in ((0.99, "unclear"), (1.01, "outside")):
        assert ask(**asked, arc_time=f"{lasting['high'] * share:.6f} min")["verdict"] == state
    close = ask(**asked, arc_time=f"{lasting['value'] * 0.98:.4f} min")
    assert "to spare, too little to be sure" in said(close, "notes")
    close = ask(**asked, arc_time=f"{lasting['value'] * 1.02:.4f} min")
    assert "short, too close to be sure" in said(close, "notes")


def test_work_that_no_pressure_in_this_cylinder_does_takes_a_second_one():
    answer = ask(gas="argon", cylinder="40-ft3", cylinder_pressure="2000 psi", gas_flow="40 ft3/h", arc_time="4 h")
    assert answer["verdict"] == "outside"
    assert "it takes a second one" in said(answer, "notes")


def test_pressure_that_is_asked_for_is_held_against_a_full_cylinder():
    """A full 125 gives about 125 ft3 of argon: 40 ft3 is inside that, 400 ft3 is not."""
    asked = {"gas": "argon", "cylinder": "125-ft3", "gas_flow": "40 ft3/h"}
    little = ask(**asked, arc_time="1 h")
    assert little["verdict"] == "inside" and "a full one gives" in said(little, "notes")
    much = ask(**asked, arc_time="3.6 h")
    assert much["verdict"] == "outside" and "a full one gives only" in said(much, "notes")
    assert "never to a number from here" in said(much, "cautions")


# ---------------------------------------------------------------- waiting and refusing


@pytest.mark.parametrize(
    ("asked", "waits"),
    (
        ({"gas": "argon"}, "Waiting for 2 of: Water volume, Pressure on the gauge or Gas to use"),
        ({"gas": "argon", "cylinder": "80-ft3"}, "Waiting for one of: Pressure on the gauge or Gas to use"),
        ({"cylinder": "80-ft3", "cylinder_pressure": "900 psi"}, "Waiting for: Carbon dioxide in the mix"),
        ({"gas": "argon", "gas_flow": "30 ft3/h"}, "Waiting for one of: Gas to use or Arc time"),
        ({"gas": "carbon-dioxide"}, "Waiting for one of: Carbon dioxide, by weight or Gas to use"),
        (
            {"gas": "carbon-dioxide", "cylinder_mass": "90 lb"},
            "Waiting for one of: Empty weight, stamped TW or Carbon dioxide, by weight",
        ),
    ),
)
def test_it_says_what_it_waits_for(asked, waits):
    assert errors(**asked) == {"": waits}


@pytest.mark.parametrize(
    ("name", "text", "low", "high"),
    (
        ("cylinder_pressure", "0 psi", "1.46 psi", "4350 psi"),
        ("cylinder_pressure", "4400 psi", "1.46 psi", "4350 psi"),
        ("cylinder_pressure", "301 bar", "0.1 bar", "300 bar"),
        ("cylinder_temperature", "130 degF", "−4 °F", "122 °F"),
        ("cylinder_temperature", "-21 degC", "−20 °C", "50 °C"),
        ("carbon_dioxide", "31 %", "0 %", "30 %"),
        ("cylinder_water_volume", "0.4 L", "0.5 L", "200 L"),
        ("reserve", "301 bar", "0 bar", "300 bar"),
        ("gas_flow", "0.9 L/min", "1 L/min", "100 L/min"),
    ),
)
def test_outside_the_range_is_refused_at_its_field_with_both_ends(name, text, low, high):
    asked = {"carbon_dioxide": "25 %", "cylinder_water_volume": "43 L", "cylinder_pressure": "1000 psi"}
    refused = errors(**{**asked, name: text})
    assert list(refused) == [name]
    assert f"between {low} and {high}" in refused[name]


def test_richer_mix_is_refused_because_it_can_be_liquid():
    assert "can be liquid" in errors(carbon_dioxide="40 %")["carbon_dioxide"]


def test_mix_typed_as_two_numbers_is_not_read_as_a_fraction():
    """75/25 is a mix, not 3 %."""
    refused = errors(carbon_dioxide="75/25", cylinder="250-ft3", cylinder_pressure="1000 psi")
    assert refused == {"carbon_dioxide": "Type the carbon dioxide or the helium alone: 25 for 75/25"}


def test_work_that_the_cylinder_cannot_hold_is_refused_with_both_amounts():
    refused = errors(gas="argon", cylinder="40-ft3", gas_flow="40 ft3/h", arc_time="10 h")
    assert list(refused) == ["cylinder"]
    assert "This takes 400 ft³" in refused["cylinder"]
    most = float(found(r"gives ([0-9.]+) ft³ at most, from 4350 psi", refused["cylinder"]))
    assert most == pytest.approx(usable(8, 300 * BAR) / CUBIC_FOOT, rel=1e-3)


def test_gas_that_disagrees_with_the_gauge_is_said():
    answer = ask(**ARGON, cylinder_pressure="2000 psi", gas_volume="150 ft3", gas_flow="35 ft3/h")
    assert "do not agree" in said(answer, "notes")


def test_number_of_a_field_that_is_not_asked_does_not_count():
    """The share of a mix means nothing for argon; a water volume nothing for carbon dioxide."""
    assert ask(**ARGON, carbon_dioxide="25 %", cylinder_pressure="2000 psi") == ask(
        **ARGON, cylinder_pressure="2000 psi"
    )
    assert ask(gas="carbon-dioxide", gas_mass="20 lb", cylinder_water_volume="43 L", gas_flow="20 ft3/h")


# ---------------------------------------------------------------- the page and what goes with a number


def hidden(**typed):
    """Return the names of the fields that a page does not show."""
    _, body = page(**typed)
    fields = re.findall(r'<div class="field(?: stepped)?"([^>]*)><label for="(\w+)"', body)
    assert len(fields) > 10
    return {name for attributes, name in fields if " hidden" in attributes}


def test_carbon_dioxide_page_asks_for_weights_and_hides_the_rest():
    of_pressure = {
        "carbon_dioxide",
        "helium",
        "cylinder",
        "cylinder_water_volume",
        "cylinder_count",
        "cylinder_pressure",
        "reserve",
    }
    of_weight = {"cylinder_mass", "tare", "gas_mass"}
    assert hidden(gas="carbon-dioxide") == of_pressure
    assert hidden() == of_weight | {"helium"}
    assert hidden(gas="argon") == of_weight | {"carbon_dioxide", "helium"}
    assert hidden(gas="helium-mix") == of_weight | {"carbon_dioxide"}
    assert hidden(cylinder="250-ft3") == of_weight | {"cylinder_water_volume", "helium"}


def test_verdict_is_drawn_in_whole_numbers_on_the_paper():
    _, body = page(**MIX, cylinder_pressure="1400 psi", gas_flow="35 ft3/h", arc_time="40 min")
    assert "There is 16" in body and "Needed 23.3" in plain(body)
    for points in re.findall(r'points="([^"]*)"', body):
        numbers = [int(each) for each in points.split()]
        assert all(0 <= each <= 340 for each in numbers)
    _, bare = page(**MIX, cylinder_pressure="1400 psi", gas_flow="35 ft3/h")
    assert "<svg" not in bare.partition("<main")[2]


def test_working_carries_the_reader_s_numbers():
    lines = said(ask(**ARGON, cylinder_pressure="2000 psi", reserve="200 psi", gas_flow="35 ft3/h"), "working")
    for part in ("Gas at 2000 psi", "43 L", "stays at 200 psi", "÷ 35 ft³/h"):
        assert part in lines
    factor = float(found(r"is ([0-9.]+); the ideal gas law takes 1", lines))
    pressure = 2000 * PSI + ATMOSPHERE
    assert factor == pytest.approx(PropsSI("Z", "P", pressure, "T", TWENTY, "Argon"), abs=2e-4)


def test_reference_state_stands_beside_the_gas():
    text, _ = page(**MIX, cylinder_pressure="1400 psi", gas_flow="35 ft3/h")
    assert "(at 15 °C, 1 atm)" in text
    # 294.26 K / 288.15 K = 1.021
    assert "counts at 70 °F, which makes it 2 % more" in text


@pytest.mark.parametrize(
    "asked",
    (
        {**ARGON, "cylinder_pressure": "2000 psi"},
        {**MIX, "gas_flow": "30 ft3/h", "arc_time": "40 min"},
        {"gas": "carbon-dioxide", "gas_mass": "20 lb", "gas_flow": "30 ft3/h"},
        {"gas": "argon", "gas_flow": "30 ft3/h", "arc_time": "40 min"},
    ),
)
def test_answer_names_its_sources_and_cautions(asked):
    answer = ask(**asked)
    declared = {(each.title, each.standing) for each in gas_supply.CALCULATOR.sources}
    assert answer["sources"]
    for source in answer["sources"]:
        assert (source["title"], source["standing"]) in declared and source["standing"] in STANDINGS
    assert "upright and chained" in said(answer, "cautions")
    assert "The supplier's rules and the law where you work come first" in said(answer, "cautions")


def test_presets_are_values_that_their_fields_take():
    for field in gas_supply.CALCULATOR.fields:
        if isinstance(field, Quantity):
            for text in field.presets:
                pairs = [(field.name, text)] + ([(field.when[0], field.when[1][0])] if field.when else [])
                reply = walking.reply("/api/gas-supply", pairs)
                assert field.name not in json.loads(reply.body).get("errors", {}), text
