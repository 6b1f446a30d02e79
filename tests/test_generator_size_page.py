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


def test_cord_is_chosen_for_what_the_headline_says():
    """The trap: 90 A draws 12 A, and the headline says that the outlet carries more than twice that.

    240 V 50 A: 40 A are used, which 8 AWG carries (NEC Table 400.5(A): 40 A). 9.6 kVA x 0.56 = 5376 W, 217 A.
    """
    answer = ask(supply="outlet-240-50", current="90 A", cord_length="25 ft", **BOOK)
    assert value(answer, "current") == pytest.approx(10 * ((196 + 0.2 * 5376) ** 0.5 - 14), abs=0.1)
    assert answer["results"]["cord_needed"]["text"] == "8 AWG"
    page = walking.reply(
        "/generator-size", [("supply", "outlet-240-50"), ("current", "90 A"), ("cord_length", "25 ft")]
    )
    text = page.body.replace("\u00a0", " ")
    assert "Cord wires for 220 A" in text
    headline = text[text.index('class="headline answered"') :]
    assert "Cord: 8 AWG or thicker, unrolled" in headline[: headline.index("</div>")]


def test_cord_of_a_rating_is_chosen_for_the_greediest_of_its_kind():
    # 90 A x 18.5 V ÷ (0.80 x 0.60) = 3469 VA: 28.9 A at 120 V, 10 AWG; at the usual 0.84 x 0.68 24.3 A would be 12 AWG.
    answer = ask(supply="generator-120", current="90 A", cord_length="10 ft")
    assert answer["results"]["cord_needed"]["text"] == "10 AWG"


def test_more_than_the_supply_has_room_for_is_what_the_cord_is_chosen_for():
    # 90 A draws 24.8 A, which 12 AWG just carries; the outlet's 12 A alone would go through 14 AWG.
    answer = ask(supply="outlet-120-15", current="90 A", cord_length="10 ft", **BOOK)
    assert answer["results"]["cord_needed"]["text"] == "12 AWG"


def test_cord_that_no_size_is_enough_for_at_the_most_is_chosen_for_the_current_asked():
    # 40 A over 400 ft: 12 V are lost already at 0.3 ohm; 6 AWG (0.491 ohm/kft) has 0.393. 90 A draws 12.4 A.
    answer = ask(supply="outlet-240-50", current="90 A", cord_length="400 ft", **BOOK)
    assert answer["results"]["cord_needed"]["text"] == "8 AWG"
    assert "go without" in said_on_page(supply="outlet-240-50", cord_length="400 ft")


def said_on_page(**typed):
    return walking.reply("/generator-size", list(typed.items())).body.replace("\u00a0", " ")


def test_thin_cord_takes_the_headline_down():
    """12 AWG carries 25 A (NEC Table 400.5(A)): 240 V x 25 A x 0.56 = 3360 W, 153 A; the outlet has 217."""
    answer = ask(supply="outlet-240-50", cord_size="awg-12", cord_length="10 ft", **BOOK)
    most = value(answer, "current")
    assert most == pytest.approx(10 * ((196 + 0.2 * 3360) ** 0.5 - 14), abs=0.01)
    assert value(answer, "supply_current") == pytest.approx(25.0)
    assert answer["results"]["cord_needed"]["text"] == "8 AWG"
    assert "this cord" in said_on_page(supply="outlet-240-50", cord_size="awg-12")
    assert ask(supply="outlet-240-50", current=f"{most - 0.5} A", cord_size="awg-12", **BOOK)["verdict"] == "inside"
    assert ask(supply="outlet-240-50", current=f"{most + 0.5} A", cord_size="awg-12", **BOOK)["verdict"] == "outside"


def test_long_cord_takes_the_headline_down_by_its_loss():
    # 5 % of 120 V over 2 x 100 ft of 12 AWG, 1.98 ohm/kft (NEC Chapter 9 Table 8): 15.2 A, not the 16 of the outlet.
    answer = ask(supply="outlet-120-20", cord_size="awg-12", cord_length="100 ft", **BOOK)
    assert value(answer, "supply_current") == pytest.approx(15.15, rel=0.01)
    assert value(answer, "cord_drop") == pytest.approx(6.0)


def test_thick_cord_changes_nothing():
    plain, through = ask(supply="outlet-240-30", **BOOK), ask(supply="outlet-240-30", cord_size="awg-10", **BOOK)
    assert value(plain, "current") == value(through, "current")
    assert "this cord" not in said_on_page(supply="outlet-240-30", cord_size="awg-10")


def test_cord_is_not_excused_by_a_short_arc():
    """35.7 A heats as 8 A at 5 %, and burns 14 AWG all the same."""
    answer = ask(supply="outlet-240-50", current="200 A", cord_size="awg-14", duty_cycle="5 %", **BOOK)
    assert answer["verdict"] == "outside"


def test_cautions_name_fumes_and_backfeed_of_engines():
    assert "monoxide" in said(ask(current="150 A"), "cautions")
    outlet = said(ask(supply="outlet-240-50"), "cautions")
    assert "monoxide" not in outlet and "electrician" in outlet


def test_cord_is_cautioned_where_there_is_one():
    assert "coiled cord can burn" in said(ask(current="150 A", cord_size="awg-10"), "cautions")
    assert "coiled cord" not in said(ask(current="150 A"), "cautions")


def test_next_questions_never_carry_more_than_the_supply_carries():
    html = walking.reply("/generator-size", [("generator_power", "5 kW"), ("current", "180 A"), *BOOK.items()]).body
    most = value(ask(generator_power="5 kW", current="180 A", **BOOK), "current")
    assert most < 180.0
    for name in ("settings?largest_current=", "duty-cycle?current=", "lead-drop?current="):
        assert float(html.partition('href="' + name)[2].partition("+")[0]) == pytest.approx(most, rel=1e-3)
    html = walking.reply("/generator-size", [("current", "180 A"), *BOOK.items()]).body
    assert 'href="lead-drop?current=180+A"' in html
