"""The transfer-mode question from what is typed to what is answered. The limits are checked in tests/published."""

import html
import re
import urllib.parse

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calculators import asking, settings, transfer_limits, transfer_mode, voltage_lines, wire_feed
from calculators.contract import Drawing, Message, Table, Words
from calculators.drawings.paper import WIDTH
from tests import walking
from webapp import pocket
from webapp.catalogue import Context, sentence

CONTEXT = Context("en", "us", "0")
MIX = "argon-carbon-dioxide"
WIRE = {"wire_diameter": "0.035 in", "current": "130 A", "voltage": "18.5 V"}
SPRAY = {"wire_diameter": "0.045 in", "current": "270 A", "voltage": "28 V", "gas": "argon-oxygen"}


def transition(metal, size, gas, share=0.25):
    found = transfer_limits.transition_current(metal, size, gas, share)
    assert found is not None
    return found


def usual(metal, gas, mode, amperes, size, share=0.25):
    found = voltage_lines.usual_voltage(metal, gas, mode, amperes, size, share)
    assert found is not None
    return found


def ask(**typed):
    return asking.ask(transfer_mode.CALCULATOR, list(typed.items()))


def answer(**typed):
    reply = ask(**typed)
    assert reply.state == "answer", [sentence(message, CONTEXT) for _, message in reply.errors]
    return reply.answer


def mode(found):
    assert isinstance(found.results[0], Words)
    return found.results[0].message.id.rpartition(".")[2]


def problem(**typed):
    reply = ask(**typed)
    assert reply.state == "problem"
    ((field, message),) = reply.errors
    return field, message.id


def ids(messages):
    return [message.id.partition(".")[2] for message in messages]


def rows(found):
    (table,) = [each for each in found.results if isinstance(each, Table)]
    shown = {}
    for row in table.rows:
        cells = [cell for cell in row if isinstance(cell, Message)]
        shown[cells[0].id.rpartition(".")[2]] = [sentence(cell, CONTEXT).replace("\u00a0", " ") for cell in cells[1:]]
    return shown


# --- The mode and its borders


def test_the_everyday_setting_is_short_circuit():
    found = answer(**WIRE)
    assert mode(found) == "short-circuit"
    assert found.verdict.state == "inside"


def test_margins_are_to_the_near_end_of_each_band():
    """20 V is 12.5 + 0.04 x 130 + 3 x 0.25 + 1.5, 175 A the wire's range in AWS C5.6: by hand."""
    found = rows(answer(**WIRE))
    assert found["shorting"] == ["20 V to 22 V", "1.5 V under"]
    assert found["short-circuit-top"] == ["175 A to 201 A", "45 A under"]


def test_inside_a_band_the_table_says_so():
    assert rows(answer(**{**WIRE, "voltage": "21 V"}))["shorting"][1] == "in it"


def test_between_the_modes_it_is_unclear_and_says_what_would_be_sure():
    found = answer(**{**SPRAY, "current": "215 A", "voltage": "25 V"})
    assert mode(found) == "unclear"
    assert found.verdict.state == "unclear"
    said = sentence(found.verdict.remedy, CONTEXT)
    assert "short-circuits" in said
    assert "sprays" in said


def test_75_25_at_high_current_is_globular_and_names_the_gas_that_would_spray():
    found = answer(wire_diameter="0.045 in", current="300 A", voltage="29 V")
    assert mode(found) == "globular"
    assert "note.no-spray" in ids(found.notes)
    assert "remedy.gas.mild-steel" in ids(found.notes)


def test_spray_hisses_and_globular_pops():
    """Standing: common practice."""
    assert "hisses" in sentence(answer(**SPRAY).notes[0], CONTEXT)
    assert "pops" in sentence(answer(wire_diameter="0.045 in", current="300 A", voltage="29 V").notes[0], CONTEXT)


def test_a_voltage_under_the_usual_stubs():
    assert ids(answer(**{**WIRE, "voltage": "15 V"}).notes)[0] == "sounds.low"


def test_the_working_speaks_of_short_circuit_only_where_the_wire_is_run_in_it():
    """225 A is the most of 0.045 in wire in AWS C5.6; 12.5 + 0.04 x 225 + 3 x 0.25 + 1.5 is 23.75 V: by hand."""
    found = answer(wire_diameter="0.045 in", current="300 A", voltage="29 V")
    (line,) = [sentence(each, CONTEXT).replace("\u00a0", " ") for each in found.working]
    assert "at 225 A" in line
    assert "to 23.8 V" in line
    assert rows(found)["shorting"][0] == "23.8 V to 25.8 V"


def test_pulse_is_a_tag_and_no_region():
    found = answer(**{**SPRAY, "current": "150 A", "waveform": "pulse", "position": "overhead"})
    assert mode(found) == "pulse"
    assert found.verdict.state == "inside"
    assert "note.pulse" in ids(found.notes)
    (drawing,) = [each for each in found.results if isinstance(each, Drawing)]
    texts = [shape[3].id for shape in drawing.shapes if shape[0] == "text" and hasattr(shape[3], "id")]
    assert texts.count("transfer-mode.mode.pulse") == 1


def test_pulse_needs_argon():
    found = answer(**WIRE, waveform="pulse")
    assert found.verdict.state == "outside"
    assert found.verdict.remedy.id == "transfer-mode.remedy.gas.mild-steel"


# --- Positions and thickness


@pytest.mark.parametrize(
    ("typed", "state", "id"),
    (
        ({**SPRAY, "position": "overhead"}, "outside", "position"),
        ({**SPRAY, "thickness": "1/16 in"}, "outside", "thin"),
        ({**SPRAY, "thickness": "1/2 in"}, "inside", "serves"),
        ({**WIRE, "thickness": "1/4 in"}, "unclear", "cold-lap"),
        ({**WIRE, "thickness": "3/8 in"}, "outside", "thick"),
        ({**WIRE, "thickness": "3/16 in", "position": "vertical-down"}, "outside", "vertical-down"),
        ({**WIRE, "thickness": "1/8 in", "position": "overhead"}, "inside", "serves"),
    ),
)
def test_position_and_thickness_are_judged(typed, state, id):
    found = answer(**typed)
    assert found.verdict.state == state
    assert found.verdict.message.id == "transfer-mode.verdict." + id
    assert (found.verdict.remedy is None) == (state == "inside")


def test_short_circuit_always_carries_the_cold_lap_caution():
    assert "caution.cold-lap" in ids(answer(**WIRE).cautions)
    assert "caution.cold-lap" not in ids(answer(**SPRAY).cautions)


# --- Wire feed in place of current


def test_feed_gives_the_mode_through_the_melting_law():
    """223 in/min melts 0.035 in wire at 125 A with 10 mm of stick-out, by hand: 12 mm, less an arc of 2 mm."""
    found = ask(wire_diameter="0.035 in", wire_feed_speed="223 in/min", voltage="18 V", contact_tip_to_work="12 mm")
    assert found.given.number("current") == pytest.approx(125.0, abs=0.5)
    assert mode(found.answer) == "short-circuit"


@pytest.mark.parametrize(
    ("typed", "mode_asked"),
    (
        ({"current": "250 A", "voltage": "28 V", "carbon_dioxide": "10 %"}, "spray"),
        ({"current": "180 A", "voltage": "19 V"}, "short-circuit"),
    ),
)
@pytest.mark.parametrize("distance", ("", "16 mm"))
def test_feed_is_what_wire_feed_says_of_that_mode(typed, mode_asked, distance):
    typed = {**typed, "wire_diameter": "0.045 in"}
    usual = {"spray": "19 mm", "short-circuit": "11 mm"}[mode_asked]
    own = ask(**typed, contact_tip_to_work=distance)
    assert mode(own.answer) == mode_asked
    wire = {"wire_diameter": "0.045 in", "current": typed["current"], "contact_tip_to_work": distance or usual}
    theirs = asking.ask(wire_feed.CALCULATOR, list({**wire, "transfer_mode": mode_asked}.items()))
    assert own.given.number("wire_feed_speed") == pytest.approx(theirs.given.number("wire_feed_speed"), rel=1e-9)
    back = ask(
        **{**typed, "current": "", "contact_tip_to_work": distance},
        wire_feed_speed=f"{own.given.number('wire_feed_speed') * 60.0:.9g} m/min",
    )
    assert back.given.number("current") == pytest.approx(own.given.number("current"), rel=1e-6)


def test_feed_axis_has_the_welder_s_own_trim():
    plain, trimmed = ask(**WIRE), ask(**WIRE, arc_term="1.1", resistance_term="1.1", machine="Shop")
    assert trimmed.given.number("wire_feed_speed") == pytest.approx(1.1 * plain.given.number("wire_feed_speed"))
    assert any("machine.trimmed" in each.id for each in trimmed.answer.notes)


def test_a_feed_that_leaves_the_mode_open_says_so():
    found = answer(wire_diameter="0.035 in", wire_feed_speed="300 in/min", voltage="20 V")
    assert mode(found) == "short-circuit"
    assert found.verdict.state == "unclear"
    assert found.verdict.remedy.id == "transfer-mode.remedy.feed"


def test_feed_and_current_that_disagree_are_told():
    reply = ask(**WIRE, wire_feed_speed="400 in/min")
    assert reply.agreement.id == "agree.over"


# --- Refusals


@pytest.mark.parametrize(
    ("typed", "field", "id"),
    (
        ({"wire_kind": "flux-cored"}, "wire_kind", "cored"),
        ({"wire_material": "aluminum"}, "gas", "aluminum-gas"),
        ({"wire_material": "aluminum", "gas": "argon-oxygen"}, "gas", "aluminum-gas"),
        ({"gas": "argon"}, "gas", "steel-argon"),
        ({"gas": "helium-mix"}, "gas", "steel-helium-mix"),
        ({"wire_material": "aluminum", "gas": "helium-mix"}, "gas", "aluminum-gas"),
        ({"wire_material": "stainless"}, "gas", "stainless-gas"),
        ({"wire_material": "stainless", "carbon_dioxide": "6 %"}, "gas", "stainless-gas"),
        ({"wire_material": "stainless", "gas": "carbon-dioxide"}, "gas", "stainless-gas"),
        ({"wire_material": "stainless", "gas": "argon"}, "gas", "stainless-gas"),
    ),
)
def test_what_is_refused(typed, field, id):
    assert problem(**{**WIRE, **typed}) == (field, "transfer-mode.refusal." + id)


@pytest.mark.parametrize(
    ("typed", "field"),
    (
        ({"current": "60 A"}, "current"),
        ({"current": "400 A"}, "current"),
        ({"wire_diameter": "2.4 mm"}, "wire_diameter"),
        ({"wire_diameter": "0.023 in", "current": "60 A", "gas": "argon-oxygen"}, "wire_diameter"),
        ({"voltage": "45 V"}, "voltage"),
    ),
)
def test_beyond_the_tables_the_field_is_named(typed, field):
    assert problem(**{**WIRE, **typed})[0] == field


def test_stainless_takes_5_per_cent_at_most():
    wire = {**WIRE, "wire_material": "stainless", "voltage": "18 V"}
    for share in ("2 %", "5 %"):
        assert mode(answer(**wire, carbon_dioxide=share)) == "short-circuit"


@pytest.mark.parametrize("metal", ("mild-steel", "stainless", "aluminum"))
@pytest.mark.parametrize("gas", ("argon", "argon-oxygen", "helium-mix", "carbon-dioxide", "2", "5", "6", "25"))
def test_settings_refuses_the_same_gases(metal, gas):
    asked = {"gas": MIX, "carbon_dioxide": f"{gas} %"} if gas.isdigit() else {"gas": gas}
    wire = {"wire_material": metal, "wire_diameter": "0.035 in", **asked}
    here = ask(**wire, current="130 A", voltage="20 V")
    there = asking.ask(settings.CALCULATOR, list({**wire, "thickness": "1/8 in"}.items()))
    own, other = (
        [(field, message.id.partition(".")[2]) for field, message in each.errors if field == "gas"]
        for each in (here, there)
    )
    assert own == [each for each in other if "no-spray" not in each[1]]


# --- One set of functions, whoever asks


def test_the_page_says_what_the_function_says():
    for volts in (15.0, 18.0, 20.5, 22.5, 25.0, 30.0):
        for amperes in (80.0, 130.0, 180.0, 215.0):
            found = answer(**{**WIRE, "current": f"{amperes} A", "voltage": f"{volts} V"})
            asked = transfer_limits.mode_at("mild-steel", 0.889e-3, MIX, amperes, volts)[0]
            assert mode(found) == asked


def test_arc_voltage_takes_what_is_carried_to_it():
    page = pocket.respond(pocket.Request("/transfer-mode", list(WIRE.items()), False), "en", "0").body
    (link,) = [each for each in page.split('href="') if each.startswith("arc-voltage?")]
    for part in ("voltage=18.5+V", "current=130+A", "transfer_mode=short-circuit", "carbon_dioxide=25+%25"):
        assert part in link.partition('"')[0]


@pytest.mark.parametrize("name", ("transfer-mode", "arc-voltage"))
def test_no_next_question_leads_into_an_error(name):
    for pairs, _ in walking.answered(name):
        page = walking.reply("/" + name, pairs, partial=True).body
        for nav in re.findall('<nav class="next".*?</nav>', page, re.DOTALL):
            for address in re.findall('href="([^"]+)"', nav):
                following, _, query = html.unescape(address).partition("?")
                reply = asking.ask(walking.calculator(following), urllib.parse.parse_qsl(query))
                assert reply.state != "problem", address


# --- What holds whatever the numbers

STEEL = st.sampled_from((0.8e-3, 0.889e-3, 1.0e-3, 1.143e-3, 1.2e-3))
SHARES = st.floats(0.01, 0.20)


@given(STEEL, st.sampled_from(("argon-oxygen", MIX)), SHARES, st.floats(0.0, 1.0))
def test_usual_voltage_of_spray_above_the_transition_is_spray(size, gas, share, place):
    begins = transition("mild-steel", size, gas, share)[2]
    amperes = begins + place * 100.0
    for volts in usual("mild-steel", gas, "spray", amperes, size, share):
        assert transfer_limits.mode_at("mild-steel", size, gas, amperes, volts, "flat", share)[0] == "spray"


@given(STEEL, st.sampled_from((MIX, "carbon-dioxide", "argon-oxygen")), st.floats(0.01, 0.6), st.floats(0.0, 1.0))
def test_usual_voltage_of_short_circuit_in_its_currents_is_short_circuit(size, gas, share, place):
    for position in ("flat", "overhead"):
        reach = transfer_limits.short_circuit_currents("mild-steel", size, position)
        assert reach is not None
        least, most = reach
        amperes = least + place * (most - least)
        for volts in usual("mild-steel", gas, "short-circuit", amperes, size, share):
            found = transfer_limits.mode_at("mild-steel", size, gas, amperes, volts, position, share)[0]
            assert found == "short-circuit"


@given(STEEL, SHARES, SHARES)
def test_carbon_dioxide_never_lowers_the_transition(size, first, second):
    less, more = sorted((first, second))
    found = [transition("mild-steel", size, MIX, share) for share in (less, more)]
    assert found[0][1] <= found[1][1] * (1.0 + 1e-12)
    assert found[0][2] <= found[1][2] * (1.0 + 1e-12)


@given(STEEL, STEEL, SHARES)
def test_thicker_wire_sprays_at_more_current(first, second, share):
    thin, thick = sorted((first, second))
    found = [transition("mild-steel", each, MIX, share)[1] for each in (thin, thick)]
    assert found[0] <= found[1]


@given(st.sampled_from(("mild-steel", "stainless", "aluminum")), st.floats(75.0, 300.0), st.floats(12.0, 36.0))
def test_borders_are_bands_in_rising_order(metal, amperes, volts):
    gas = "argon" if metal == "aluminum" else "argon-oxygen"
    found, borders = transfer_limits.mode_at(metal, 1.0e-3, gas, amperes, volts)
    assert found in ("short-circuit", "globular", "spray", "unclear")
    assert borders
    for _, low, middle, high in borders:
        assert low < middle < high


@given(st.floats(75.0, 230.0), st.floats(12.0, 36.0), st.sampled_from((MIX, "argon-oxygen", "carbon-dioxide")))
def test_the_map_stays_on_the_paper(amperes, volts, gas):
    found = answer(wire_diameter="0.035 in", current=f"{amperes:.4g} A", voltage=f"{volts:.3g} V", gas=gas)
    (drawing,) = [each for each in found.results if isinstance(each, Drawing)]
    for form, numbers, _, _ in drawing.shapes:
        across, up = (numbers[:1], numbers[1:2]) if form in ("circle", "text") else (numbers[::2], numbers[1::2])
        assert all(0 <= each <= WIDTH for each in across)
        assert all(0 <= each <= drawing.height for each in up)


def test_globular_is_never_called_inside():
    found = answer(wire_diameter="0.045 in", current="300 A", voltage="28 V", thickness="0.5 in", position="flat")
    assert mode(found) == "globular"
    assert (found.verdict.state, found.verdict.message.id) == ("unclear", "transfer-mode.verdict.globular")
