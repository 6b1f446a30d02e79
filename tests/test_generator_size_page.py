"""What the generator-size question answers and refuses. The sums themselves are checked in tests/published.

By hand, with efficiency 0.80 and power factor 0.70: 200 A x 24 V ÷ 0.56 = 8571 VA; a quarter more is 10 714 VA.
"""

import json

import pytest

from tests import walking

BOOK = {"machine_efficiency": "80 %", "power_factor": "0.7"}


def ask(status=200, **typed):
    reply = walking.reply("/api/generator-size", list(typed.items()))
    assert reply.status == status, reply.body
    return json.loads(reply.body)


def value(answer, name):
    return answer["results"][name]["value"]


def errors(**typed):
    return {field: text.replace("\u00a0", " ") for field, text in ask(status=422, **typed)["errors"].items()}


def said(answer, part):
    return " ".join(answer[part]).replace("\u00a0", " ")


def test_current_gives_the_rating():
    answer = ask(current="200 A", **BOOK)
    assert answer["solved_for"] == "generator_power"
    assert value(answer, "generator_power") == pytest.approx(10.714, abs=0.001)
    assert value(answer, "apparent_power") == pytest.approx(8.571, abs=0.001)
    assert value(answer, "real_power") == pytest.approx(6000.0)
    assert value(answer, "supply_current") == pytest.approx(35.71, abs=0.01)


@pytest.mark.parametrize("rating", ["10714.2857 W", "10.7142857 kW", "10.7142857 kVA"])
def test_rating_gives_the_current_again(rating):
    assert value(ask(generator_power=rating, **BOOK), "current") == pytest.approx(200.0, rel=1e-6)


def test_typed_volts_replace_the_rating_line():
    # 200 A at 20 V: 4000 ÷ 0.56 x 1.25 = 8929 VA.
    assert value(ask(current="200 A", voltage="20 V", **BOOK), "generator_power") == pytest.approx(8.929, abs=0.001)
    assert value(ask(generator_power="8928.5714 W", voltage="20 V", **BOOK), "current") == pytest.approx(200.0)


def test_outlet_gives_the_most_current():
    # 120 V x 20 A ÷ 1.25 x 0.56 = 1075 W: 10 (√(196 + 215) - 14) = 62.7 A.
    answer = ask(supply="outlet-120-20", **BOOK)
    assert value(answer, "current") == pytest.approx(62.7, abs=0.1)
    assert value(answer, "supply_current") == pytest.approx(16.0)


@pytest.mark.parametrize(
    ("supply", "amperes"),
    [("outlet-120-15", 12.0), ("outlet-120-20", 16.0), ("outlet-240-30", 24.0), ("outlet-240-50", 40.0)],
)
def test_outlet_is_used_to_four_fifths(supply, amperes):
    assert value(ask(supply=supply), "supply_current") == pytest.approx(amperes)


@pytest.mark.parametrize(
    ("typed", "state"),
    [
        # 35.7 A drawn at 240 V.
        ({"supply": "outlet-240-50", "current": "200 A"}, "inside"),
        ({"supply": "outlet-240-30", "current": "200 A"}, "outside"),
        # 35.7 x √0.3 = 19.6 A heats a 30 A breaker.
        ({"supply": "outlet-240-30", "current": "200 A", "duty_cycle": "30 %"}, "unclear"),
        # 150 A: 3225 ÷ 0.56 = 5759 VA, 24.0 A at 240 V; just at 80 %. 160 A is beyond.
        ({"supply": "outlet-240-30", "current": "160 A"}, "unclear"),
        # 90 A: 1665 ÷ 0.56 = 2973 VA, 24.8 A at 120 V: more than 15 A, and less than twice.
        ({"supply": "outlet-120-15", "current": "90 A", "duty_cycle": "20 %"}, "unclear"),
        # 130 A: 2665 ÷ 0.56 = 4759 VA, 39.7 A: over twice 15 A, however short the arc.
        ({"supply": "outlet-120-15", "current": "130 A", "duty_cycle": "10 %"}, "outside"),
        ({"generator_power": "11 kW", "current": "200 A"}, "inside"),
        ({"generator_power": "9 kW", "current": "200 A"}, "unclear"),
        ({"generator_power": "8 kW", "current": "200 A"}, "outside"),
        # A generator carries the load while the arc burns, not on the average.
        ({"generator_power": "8 kW", "current": "200 A", "duty_cycle": "20 %"}, "outside"),
    ],
)
def test_verdict(typed, state):
    assert ask(**typed, **BOOK)["verdict"] == state


def test_both_known_leads_with_the_most_it_carries():
    answer = ask(supply="outlet-240-30", current="200 A", **BOOK)
    assert next(iter(answer["results"])) == "current"
    assert f"{value(answer, 'current'):.0f} A or less" in said(answer, "notes")


def test_kind_of_machine_makes_a_band():
    rating = ask(current="200 A")["results"]["generator_power"]
    # 4800 x 1.25 ÷ (0.88 x 0.75) and ÷ (0.80 x 0.60).
    assert rating["low"] == pytest.approx(9.091, abs=0.001)
    assert rating["high"] == pytest.approx(12.5)
    assert "low" not in ask(current="200 A", **BOOK)["results"]["generator_power"]


def test_correction_and_copper_matter():
    plain, corrected, transformer = (
        value(ask(current="200 A", power_source=kind), "generator_power")
        for kind in ("inverter", "inverter-corrected", "transformer")
    )
    assert corrected < 0.75 * plain < plain < transformer


def test_height_and_heat_take_from_a_generator():
    # 1500 m: 1 - 0.175; 36 degC: 1 - 0.02.
    answer = ask(generator_power="10 kW", current="100 A", altitude="1500 m", air_temperature="36 degC", **BOOK)
    assert value(answer, "derated_power") == pytest.approx(10 * 0.825 * 0.98)
    derated = answer["results"]["derated_power"]
    # The army's slopes: 1 - 0.195 and 1 - 0.033.
    assert derated["low"] == pytest.approx(10 * 0.805 * 0.967)
    assert value(ask(current="200 A", altitude="1500 m", **BOOK), "generator_power") == pytest.approx(
        10.714 / 0.825, rel=1e-3
    )


def test_outlet_gives_the_same_on_a_mountain():
    high = ask(supply="outlet-240-50", altitude="1500 m")
    assert high["results"] == ask(supply="outlet-240-50")["results"]


def test_more_than_the_book_reckons_with_is_refused():
    assert set(errors(current="601 A")) == {"current"}
    assert set(errors(generator_power="60 kVA", power_source="inverter-corrected")) == {""}


def test_room_is_the_reader_s():
    assert value(ask(current="200 A", margin="50 %", **BOOK), "generator_power") == pytest.approx(12.857, abs=0.001)
    assert value(ask(current="200 A", margin="0 %", **BOOK), "generator_power") == pytest.approx(8.571, abs=0.001)


def test_cord_is_named_by_current_and_loss():
    # 24.8 A at 120 V over 100 ft: 10 AWG (NEC 1.24 ohm/kft) loses 6.2 V, over 5 %; 8 AWG (0.778) 3.9 V.
    answer = ask(supply="generator-120", current="90 A", cord_length="100 ft", **BOOK)
    assert answer["results"]["cord_needed"]["text"] == "8 AWG"
    assert (
        ask(supply="generator-120", current="90 A", cord_length="10 ft", **BOOK)["results"]["cord_needed"]["text"]
        == "12 AWG"
    )


def test_thin_or_long_cord_is_outside():
    long = ask(supply="outlet-240-50", current="200 A", cord_length="300 ft", cord_size="awg-8", **BOOK)
    assert long["verdict"] == "outside"
    # 35.7 A x 0.6 kft x 0.778 ohm/kft = 16.7 V.
    assert value(long, "cord_drop") == pytest.approx(16.7, abs=0.1)
    assert "6 AWG" in said(long, "notes")
    thin = ask(supply="outlet-240-50", current="200 A", cord_size="awg-12", **BOOK)
    assert thin["verdict"] == "outside"
    assert "too thin" in said(thin, "notes")


def test_cord_is_not_excused_by_a_short_arc():
    """35.7 A heats as 8 A at 5 %, and burns 14 AWG all the same."""
    answer = ask(supply="outlet-240-50", current="200 A", cord_size="awg-14", duty_cycle="5 %", **BOOK)
    assert answer["verdict"] == "outside"


def test_cautions_name_fumes_and_backfeed_of_engines():
    assert "monoxide" in said(ask(current="150 A"), "cautions")
    outlet = said(ask(supply="outlet-240-50"), "cautions")
    assert "monoxide" not in outlet and "electrician" in outlet
