"""What the travel-speed question answers, waits for and refuses. The balance itself is checked in tests/published.

Expected numbers are worked out by hand: 0.035 in wire has 0.000962 in2; 300 in/min of it at 96 % is 0.2771 in3/min.
"""

import json

import pytest

from calculators import travel_speed
from tests import walking

WIRE = {"wire_feed_speed": "300 in/min", "wire_diameter": "0.035 in"}
TIMED = {"weld_length": "6 in", "arc_time": "40 s"}
PLAIN = {"overweld_factor": "1", "deposition_efficiency": "100 %"}


def ask(units="us", status=200, **typed):
    reply = walking.reply("/api/travel-speed", list(typed.items()), system=units)
    assert reply.status == status, reply.body
    return json.loads(reply.body)


def value(answer, name):
    return answer["results"][name]["value"]


def errors(**typed):
    return {field: text.replace("\u00a0", " ") for field, text in ask(status=422, **typed)["errors"].items()}


def said(answer, part):
    return " ".join(answer[part]).replace("\u00a0", " ")


def test_leg_gives_the_travel():
    # 0.2771 in3/min ÷ (1.2 x 0.03125 in2) = 7.389 in/min.
    answer = ask(leg="1/4 in", **WIRE)
    assert answer["solved_for"] == "travel_speed"
    assert value(answer, "travel_speed") == pytest.approx(7.389, abs=1e-3)


def test_cross_section_instead_of_a_leg():
    assert value(ask(bead_area="0.0375 in2", **WIRE), "travel_speed") == pytest.approx(7.389, abs=1e-3)


def test_timed_bead_gives_the_leg_it_came_to():
    # 6 in in 40 s is 9 in/min; 0.2771 ÷ 9 = 0.03079 in2; √(2 x 0.03079 ÷ 1.2) = 0.2265 in.
    answer = ask(**TIMED, **WIRE)
    assert value(answer, "travel_speed") == pytest.approx(9.0)
    assert value(answer, "leg") == pytest.approx(0.2265, abs=5e-5)
    assert next(iter(answer["results"])) == "leg"


def test_timed_bead_and_a_wanted_leg_are_compared():
    answer = ask(leg="1/4 in", **TIMED, **WIRE)
    assert answer["solved_for"] is None
    assert value(answer, "travel_speed") == pytest.approx(7.389, abs=1e-3)
    assert value(answer, "leg_now") == pytest.approx(0.2265, abs=5e-5)
    assert "21.8 % more" in said(answer, "notes")


def test_travel_within_a_twentieth_agrees():
    assert "agree:" in said(ask(leg="1/4 in", travel_speed="7.6 in/min", **WIRE), "notes")


# 300 in/min x 0.000962113 in2 ÷ (0.03125 in2) = 9.2363 in/min with nothing lost and nothing over.
WHOLE = {
    "wire_feed_speed": "300 in/min",
    "wire_diameter": "0.035 in",
    "leg": "0.25 in",
    "travel_speed": "9.23628 in/min",
}


@pytest.mark.parametrize(
    ("blank", "found", "expected"),
    [
        ("wire_feed_speed", "wire_feed_speed", 300.0),
        ("wire_diameter", "wire_diameter", 0.035),
        ("leg", "leg", 0.25),
        ("leg", "bead_area", 0.03125),
        ("travel_speed", "travel_speed", 9.23628),
    ],
)
def test_every_blank_is_found_again(blank, found, expected):
    typed = {name: text for name, text in WHOLE.items() if name != blank}
    assert value(ask(**typed, **PLAIN), found) == pytest.approx(expected, rel=1e-5)


def test_leg_and_cross_section_give_the_overweld_factor():
    answer = ask(leg="1/4 in", bead_area="0.04 in2", **WIRE)
    assert value(answer, "overweld_factor") == pytest.approx(1.28)


def test_leg_factor_and_cross_section_that_disagree_are_refused():
    refused = errors(leg="1/4 in", bead_area="0.05 in2", overweld_factor="1.2", **WIRE)
    assert refused == {"bead_area": "Leg and overweld factor make a bead of 0.0375 in². Leave one of the three blank"}


def test_leg_taken_for_a_throat_goes_twice_as_fast():
    # The throat of a 1/4 in leg, 0.1768 in, typed as a leg.
    wanted = value(ask(leg="0.25 in", **WIRE), "travel_speed")
    assert value(ask(leg="0.176777 in", **WIRE), "travel_speed") == pytest.approx(2.0 * wanted, rel=1e-4)
    assert "Leg is not throat" in said(ask(leg="0.25 in", **WIRE), "notes")


def test_band_holds_a_bare_and_a_generous_bead():
    travel = ask(leg="1/4 in", **WIRE)["results"]["travel_speed"]
    assert travel["low"] / travel["value"] == pytest.approx(0.92 / 0.96 * 1.2 / 1.45)
    assert travel["high"] / travel["value"] == pytest.approx(1.0 / 0.96 * 1.2 / 1.0)


def test_band_goes_when_factor_and_efficiency_are_known():
    assert "low" not in ask(leg="1/4 in", **PLAIN, **WIRE)["results"]["travel_speed"]


def test_cross_section_typed_has_no_doubt_of_its_own():
    travel = ask(bead_area="0.0375 in2", **WIRE)["results"]["travel_speed"]
    assert travel["high"] / travel["value"] == pytest.approx(1.0 / 0.96)


def test_more_wire_needs_less_feed_or_a_slower_arc():
    slower = value(ask(leg="1/4 in", overweld_factor="1.4", **WIRE), "travel_speed")
    assert slower < value(ask(leg="1/4 in", **WIRE), "travel_speed")


def test_nothing_to_go_by_is_waited_for():
    assert errors(wire_feed_speed="300 in/min") == {
        "": "Waiting for 2 of: Wire diameter, Cross-section of the pass or Travel speed"
    }


@pytest.mark.parametrize(("gas", "share"), [("solid-argon-rich", 0.98), ("solid-carbon-dioxide", 0.93)])
def test_gas_sets_the_efficiency(gas, share):
    whole = value(ask(leg="1/4 in", deposition_efficiency="100 %", **WIRE), "travel_speed")
    assert value(ask(leg="1/4 in", wire_and_gas=gas, **WIRE), "travel_speed") == pytest.approx(share * whole)


def test_cored_wire_is_not_offered():
    assert not any(
        "cored" in option for field in travel_speed.CALCULATOR.fields for option in getattr(field, "options", ())
    )


def test_caution_says_that_size_is_not_fusion():
    assert "not its fusion" in said(ask(leg="6 mm", **WIRE), "cautions")
