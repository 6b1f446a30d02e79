"""What the lead-drop question answers, chooses and refuses. Copper itself is checked in tests/published.

Expected numbers by hand from NEC Chapter 9 Table 8 (75 degC): 1/0 AWG 0.122, 2 AWG 0.194 ohm for 1000 ft.
"""

import json

import pytest

from tests import walking


def ask(status=200, **typed):
    reply = walking.reply("/api/lead-drop", list(typed.items()))
    assert reply.status == status, reply.body
    return json.loads(reply.body)


def value(answer, name):
    return answer["results"][name]["value"]


def errors(**typed):
    return {field: text.replace("\u00a0", " ") for field, text in ask(status=422, **typed)["errors"].items()}


def said(answer, part):
    return " ".join(answer[part]).replace("\u00a0", " ")


LONG = {"lead_length": "100 ft", "current": "200 A"}


def test_length_current_and_cable_give_the_loss():
    answer = ask(cable_size="awg-1-0", **LONG)
    assert value(answer, "lead_voltage_drop") == pytest.approx(4.88, rel=0.005)
    assert value(answer, "lost_power") == pytest.approx(976, rel=0.005)
    # 4 V ÷ 4.88 V x 100 ft = 82 ft.
    assert value(answer, "longest_lead") / 0.3048 == pytest.approx(82.0, abs=0.3)
    assert answer["verdict"] == "outside"
    assert "2/0 AWG or 95 mm²" in said(answer, "notes")


def test_length_and_current_alone_give_the_cable_for_4_volts():
    answer = ask(**LONG)
    assert answer["solved_for"] == "conductor_area"
    assert answer["results"]["cable_size"]["text"] == "2/0 AWG or 95 mm²"
    assert "4 V" in said(answer, "notes")


def test_thinnest_cable_that_keeps_the_limit_is_named():
    """The next thinner one loses more than the limit, the named one does not."""
    assert value(ask(cable_size="awg-1-0", **LONG), "lead_voltage_drop") > 4.0
    assert value(ask(cable_size="awg-2-0", **LONG), "lead_voltage_drop") <= 4.0
    assert value(ask(cable_size="mm2-70", **LONG), "lead_voltage_drop") > 4.0
    assert value(ask(cable_size="mm2-95", **LONG), "lead_voltage_drop") <= 4.0


def test_looser_limit_takes_a_thinner_cable():
    # 1 AWG: 200 A x 0.2 x 0.154 = 6.16 V.
    assert ask(lead_voltage_drop="6.2 V", **LONG)["results"]["cable_size"]["text"] == "1 AWG or 50 mm²"


def test_short_lead_is_chosen_by_its_heat():
    """10 ft at 300 A loses under 2 V in 4 AWG, which carries 125 A: volts alone would name a cable that burns."""
    answer = ask(lead_length="10 ft", current="300 A", duty_cycle="100 %")
    assert answer["results"]["cable_size"]["text"] == "3/0 AWG or 95 mm²"
    assert "thinner cable" in said(answer, "notes")
    assert ask(lead_length="10 ft", current="300 A", cable_size="awg-4")["verdict"] == "outside"


def test_part_time_arc_heats_less():
    # 300 A at 30 % heats as 164 A: 2 AWG (170 A) stands it.
    assert ask(lead_length="10 ft", current="300 A", duty_cycle="30 %")["results"]["cable_size"]["text"].startswith(
        "2 AWG"
    )


WHOLE = {"lead_length": "100 ft", "current": "200 A", "lead_voltage_drop": "4.876104 V", "cable_size": "awg-1-0"}


@pytest.mark.parametrize(
    ("blank", "expected"), [("lead_length", 30.48), ("current", 200.0), ("lead_voltage_drop", 4.876104)]
)
def test_every_blank_is_found_again(blank, expected):
    typed = {name: text for name, text in WHOLE.items() if name != blank}
    assert value(ask(**typed), blank) == pytest.approx(expected, rel=1e-6)


def test_copper_needed_is_found_again():
    typed = {name: text for name, text in WHOLE.items() if name != "cable_size"}
    assert value(ask(**typed), "conductor_area") == pytest.approx(53.48, abs=0.01)


def test_nothing_blank_is_compared():
    assert "agree:" in said(ask(**WHOLE), "notes")
    assert "do not agree" in said(ask(**dict(WHOLE, lead_voltage_drop="3 V")), "notes")


def test_connections_take_their_share():
    with_joints = ask(cable_size="awg-1-0", connection_drop="0.6 V", **LONG)
    assert value(with_joints, "lead_voltage_drop") == pytest.approx(5.48, rel=0.005)
    assert "0.3 V to 1 V" not in said(with_joints, "notes")
    assert "0.3 V to 1 V" in said(ask(cable_size="awg-1-0", **LONG), "notes")
    # (4 - 0.6) of 4 V is left for the cable.
    assert value(ask(connection_drop="0.6 V", **LONG), "conductor_area") == pytest.approx(65.19 * 4 / 3.4, abs=0.02)


def test_connections_that_take_all_are_refused():
    assert set(errors(connection_drop="4 V", **LONG)) == {"connection_drop"}


def test_band_goes_from_cold_to_hot_unless_the_copper_is_known():
    drop = ask(cable_size="awg-1-0", **LONG)["results"]["lead_voltage_drop"]
    # Cold copper: 1 ÷ 1.216; finest strands: 1.07 ÷ 1.02.
    assert drop["low"] / drop["value"] == pytest.approx(1 / 1.216, abs=0.001)
    assert drop["high"] / drop["value"] == pytest.approx(1.07 / 1.02)
    cold = ask(cable_size="awg-1-0", conductor_temperature="20 degC", **LONG)["results"]["lead_voltage_drop"]
    assert cold["value"] == pytest.approx(drop["low"])
    assert cold["low"] == cold["value"]


def test_metric_band_reaches_down_to_the_number_on_the_cable():
    drop = ask(cable_size="mm2-70", conductor_temperature="20 degC", **LONG)["results"]["lead_voltage_drop"]
    # 200 A x 60.96 m x 0.272 ohm/km = 3.316 V; with the 70 mm2 it is called by and 2 % stranding 3.063 V.
    assert drop["value"] == pytest.approx(3.316, abs=0.001)
    assert drop["low"] == pytest.approx(3.063, abs=0.001)


def test_two_leads_side_by_side_are_offered_where_no_one_lead_does():
    """150 ft at 300 A: 300 A x 0.3 kft x 0.0608 ohm/kft (NEC Chapter 9 Table 8, 4/0) = 5.5 V. Two 2/0 lose 4.35 V,
    two 3/0 (0.0766) 3.45 V; one 120 mm2 (0.161 ohm/km, hot 0.1958) reaches 4 ÷ (300 x 0.0003916) = 34 m."""
    answer = ask(lead_length="150 ft", current="300 A")
    assert answer["results"]["cable_size"]["text"] == "2 × 3/0 AWG or 2 × 95 mm²"
    assert value(answer, "lead_voltage_drop") == pytest.approx(300 * 0.3 * 0.0766 / 2, rel=0.005)
    assert value(answer, "longest_lead") / 0.3048 == pytest.approx(34.05 / 0.3048, rel=0.005)
    assert "joined at both ends" in said(answer, "cautions")
    assert "joined at both ends" not in said(ask(**LONG), "cautions")


def test_one_120_square_millimetre_lead_is_named_where_4_0_is_just_too_thin():
    # 108 mm2 of copper are wanted: 4/0 has 107.2, 120 mm2 counts as 109.2; half is more than 1/0.
    answer = ask(lead_length="100 ft", current="331 A")
    assert answer["results"]["cable_size"]["text"] == "2 × 2/0 AWG or 120 mm²"
    assert "120 mm²" in said_on_page(lead_length="100 ft", current="331 A")
    # What is reckoned on with is the one lead: 331 A x 0.1958 ohm/km x 60.96 m.
    assert value(answer, "lead_voltage_drop") == pytest.approx(331 * 0.1958e-3 * 60.96, rel=0.002)


def said_on_page(**typed):
    return walking.reply("/lead-drop", list(typed.items())).body.replace("\u00a0", " ")


def test_two_leads_do_not_share_evenly():
    # 400 A without end: an even half would be 200 A, 1/0 AWG (NEC Table 400.5(B): 230 A); 60 % is 240 A, 2/0 (265 A).
    answer = ask(lead_length="10 ft", current="400 A", duty_cycle="100 %")
    assert answer["results"]["cable_size"]["text"].startswith("2 × 2/0 AWG")
    assert "thinner cable" in said(answer, "notes")
    assert value(answer, "steady_current") == pytest.approx(265 / 0.6, rel=0.01)


def test_too_much_for_two_leads_is_refused_with_what_they_do():
    """300 ft at 400 A: two 120 mm2 lose 400 x 182.88 m x 0.0979 ohm/km = 7.16 V: 4 V are 168 ft, or 223 A."""
    refused = errors(lead_length="300 ft", current="400 A")
    assert list(refused) == [""]
    assert "168 ft" in refused[""] and "223 A" in refused[""]
    assert "closer" in refused[""]
    page = said_on_page(lead_length="300 ft", current="400 A")
    assert "lead-drop?cable_size=mm2-120&amp;current=400+A&amp;lead_voltage_drop=4+V" in page
    assert value(ask(cable_size="mm2-120", current="400 A", lead_voltage_drop="4 V"), "lead_length") == pytest.approx(
        4 / (400 * 2 * 0.1958e-3), rel=0.002
    )


def test_heat_beyond_two_leads_is_refused_with_what_they_stand():
    # 120 mm2 carries 364 A by the fit to NEC Table 400.5(B); ÷ 0.6.
    hot = errors(lead_length="10 ft", current="620 A", duty_cycle="100 %")
    assert list(hot) == [""]
    assert "arc time" in hot[""] and "606 A" in hot[""]


def test_remedy_of_a_thin_cable_names_two_or_how_far_they_reach():
    pair = ask(lead_length="150 ft", current="300 A", cable_size="awg-4-0")
    assert pair["verdict"] == "outside"
    assert "2 × 3/0 AWG" in said(pair, "notes")
    assert "joined at both ends" in said(pair, "cautions")
    beyond = ask(lead_length="300 ft", current="400 A", cable_size="awg-4-0")
    assert "223 A" in said(beyond, "notes") and ".." not in said(beyond, "notes")


def test_other_copper_is_typed():
    assert value(ask(cable_size="other", conductor_area="53.48 mm2", **LONG), "lead_voltage_drop") == pytest.approx(
        4.88, rel=0.005
    )
    assert set(errors(cable_size="other", conductor_area="1 mm2", **LONG)) == {"conductor_area"}


def test_length_is_said_to_be_one_way_and_doubled():
    answer = ask(cable_size="awg-1-0", **LONG)
    assert "2 × 100 ft = 200 ft" in said(answer, "working")


def test_cautions_name_coils_and_the_way_back():
    cautions = said(ask(**LONG), "cautions")
    assert "coil" in cautions and "bearings" in cautions


def test_voltage_left_at_the_gun_goes_back_to_the_arc():
    # 24 V less 200 A x 0.2 kft x 0.122 ohm/kft = 4.88 V (NEC Chapter 9 Table 8).
    answer = ask(cable_size="awg-1-0", machine_voltage="24 V", **LONG)
    left, drop = answer["results"]["voltage"], answer["results"]["lead_voltage_drop"]
    assert left["value"] == pytest.approx(24.0 - 4.88, abs=0.02)
    assert (left["low"], left["high"]) == pytest.approx((24.0 - drop["high"], 24.0 - drop["low"]))
    page = said_on_page(cable_size="awg-1-0", machine_voltage="24 V", **LONG)
    assert "arc-voltage?machine_voltage=24+V&amp;lead_voltage_drop=4.8761+V&amp;current=200+A" in page
    assert set(errors(cable_size="awg-4", machine_voltage="12 V", **LONG)) == {"machine_voltage"}


def test_no_further_question_where_not_even_one_lead_reaches_half_a_metre():
    typed = {"lead_length": "10 ft", "current": "900 A", "lead_voltage_drop": "0.05 V"}
    assert list(errors(**typed)) == [""]
    assert "lead-drop?" not in said_on_page(**typed)
