"""The arc-voltage question from what is typed to what is answered. The lines are checked in tests/published."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calculators import arc_voltage, asking, voltage_lines
from calculators.contract import Number, say
from webapp.catalogue import Context, sentence

CONTEXT = Context("en", "us", "0")
WELD = {"current": "150 A"}


def usual(metal, gas, mode, amperes, size, share=0.25):
    found = voltage_lines.usual_voltage(metal, gas, mode, amperes, size, share)
    assert found is not None
    return found


def ask(**typed):
    return asking.ask(arc_voltage.CALCULATOR, list(typed.items()))


def answer(**typed):
    reply = ask(**typed)
    assert reply.state == "answer", [sentence(message, CONTEXT) for _, message in reply.errors]
    return reply.answer


def numbers(found):
    return {each.name: each for each in found.results if isinstance(each, Number)}


def ids(messages):
    return [message.id.partition(".")[2] for message in messages]


# --- Leave one blank


@pytest.mark.parametrize(
    ("typed", "name", "value"),
    (
        ({"machine_voltage": "22 V", "lead_voltage_drop": "2.5 V"}, "voltage", 19.5),
        ({"voltage": "19.5 V", "lead_voltage_drop": "2.5 V"}, "machine_voltage", 22.0),
        ({"machine_voltage": "22 V", "voltage": "19.5 V"}, "lead_voltage_drop", 2.5),
    ),
)
def test_any_one_of_three_is_the_blank(typed, name, value):
    found = answer(**typed)
    assert found.results[0].name == name
    assert found.results[0].value == pytest.approx(value)


@given(st.floats(12.0, 34.0), st.floats(0.1, 8.0))
def test_there_and_back(gun, drop):
    typed = {"voltage": f"{gun:.6g} V", "lead_voltage_drop": f"{drop:.6g} V"}
    meter = answer(**typed).results[0].value
    back = answer(machine_voltage=f"{meter:.9g} V", lead_voltage_drop=typed["lead_voltage_drop"]).results[0].value
    assert back == pytest.approx(gun, rel=1e-5)


def test_resistance_and_current_give_what_is_lost():
    """150 A through 15 mohm: 2.25 V, by hand."""
    found = answer(**WELD, lead_resistance="15 mohm", machine_voltage="22 V")
    assert numbers(found)["lead_voltage_drop"].value == pytest.approx(2.25)
    assert numbers(found)["voltage"].value == pytest.approx(19.75)


def test_three_that_disagree_are_told():
    reply = ask(machine_voltage="24 V", voltage="20 V", lead_voltage_drop="1 V")
    assert reply.agreement.id == "agree.over"


def test_more_at_the_gun_than_on_the_machine_is_refused():
    assert ask(machine_voltage="18 V", voltage="20 V").state == "problem"


def test_one_voltage_alone_waits():
    assert ask(machine_voltage="22 V").state == "waiting"


# --- Leads not known


def test_unknown_leads_are_a_band():
    """0.3 V of clamp and plugs to 4 V, the most leads are sized for; 2 V in the middle."""
    found = answer(**WELD, machine_voltage="21 V", lead_voltage_drop="unknown")
    gun = numbers(found)["voltage"]
    assert (gun.low, gun.value, gun.high) == pytest.approx((17.0, 19.0, 20.7))
    assert found.verdict.state == "unclear"
    assert "note.leads" in ids(found.notes)


def test_unknown_leads_to_the_machine():
    meter = numbers(answer(voltage="19 V", lead_voltage_drop="unknown"))["machine_voltage"]
    assert (meter.low, meter.value, meter.high) == pytest.approx((19.3, 21.0, 23.0))


def test_unknown_is_no_answer_where_the_leads_follow():
    found = answer(machine_voltage="22 V", voltage="19 V", lead_voltage_drop="unknown")
    assert found.results[0].name == "lead_voltage_drop"
    assert found.results[0].value == pytest.approx(3.0)


# --- Beside the usual


@pytest.mark.parametrize(
    ("meter", "state", "id"), (("22 V", "inside", "inside"), ("26 V", "outside", "above"), ("17 V", "outside", "below"))
)
def test_the_reading_is_set_against_the_usual(meter, state, id):
    """75/25 at 150 A: 17.75 to 20.75 V at the gun; 2 V of leads."""
    found = answer(**WELD, machine_voltage=meter, lead_voltage_drop="2 V")
    assert found.verdict.state == state
    assert found.verdict.message.id == "arc-voltage.verdict." + id


def test_how_far_off_it_is_and_what_to_set():
    """26 V less 2 V is 24 V, 3.25 V above 20.75 V; the middle of 19.25 V and the leads make 21.25 V: by hand."""
    found = answer(**WELD, machine_voltage="26 V", lead_voltage_drop="2 V")
    assert "3.25" in sentence(found.verdict.message, CONTEXT)
    assert "21.3" in sentence(found.verdict.remedy, CONTEXT)


def test_the_rating_line_is_beside_it_and_named():
    found = answer(**WELD, machine_voltage="22 V", lead_voltage_drop="2 V")
    assert numbers(found)["load_voltage"].value == pytest.approx(21.5)
    assert "note.rating-above" in ids(found.notes)
    page = sentence(say("arc-voltage.result.load_voltage"), CONTEXT)
    assert "not a setting" in page


def test_without_a_current_there_is_no_usual():
    found = answer(machine_voltage="22 V", lead_voltage_drop="2 V")
    assert found.verdict is None
    assert "note.current" in ids(found.notes)
    assert set(numbers(found)) == {"voltage"}


@pytest.mark.parametrize(
    "typed",
    ({"transfer_mode": "pulse"}, {"wire_kind": "metal-cored"}, {"transfer_mode": "spray"}, {"gas": "argon"}),
)
def test_where_no_line_is_known_none_is_shown(typed):
    found = answer(**WELD, **typed, machine_voltage="22 V", lead_voltage_drop="2 V")
    assert found.verdict is None
    assert "note.none" in ids(found.notes)
    assert "usual_voltage" not in numbers(found)


def test_other_wires_need_their_diameter():
    for typed in ({"wire_material": "stainless"}, {"wire_kind": "flux-cored"}):
        reply = ask(**WELD, **typed, machine_voltage="24 V", lead_voltage_drop="2 V")
        assert [field for field, _ in reply.errors] == ["wire_diameter"]


@pytest.mark.parametrize(
    ("typed", "id"),
    (
        ({"current": "200 A", "wire_diameter": "0.035 in"}, "note.too-much"),
        (
            {"current": "150 A", "wire_diameter": "0.045 in", "transfer_mode": "spray", "gas": "argon-oxygen"},
            "note.too-little",
        ),
    ),
)
def test_a_current_the_mode_is_not_run_at_is_told(typed, id):
    assert id in ids(answer(**typed, machine_voltage="24 V", lead_voltage_drop="2 V").notes)


def test_gun_distance_moves_the_amps_on_constant_voltage():
    """Standing: common practice; 2.5 to 4 A for each mm."""
    said = " ".join(sentence(each, CONTEXT) for each in answer(machine_voltage="22 V", lead_voltage_drop="2 V").notes)
    assert "on constant voltage the volts hold" in said
    assert "on constant current the amps hold" in said


# --- What holds whatever the numbers


@given(st.floats(60.0, 220.0), st.floats(60.0, 220.0), st.sampled_from(("argon-carbon-dioxide", "carbon-dioxide")))
def test_more_current_asks_for_more_voltage(first, second, gas):
    less, more = sorted((first, second))
    for mode in ("short-circuit", "globular"):
        found = [usual("mild-steel", gas, mode, each, 1.0e-3) for each in (less, more)]
        assert found[0][1] <= found[1][1]
        assert found[0][0] < found[0][1] < found[0][2]


@given(st.floats(60.0, 220.0))
def test_globular_lies_above_short_circuit(amperes):
    for gas in ("argon-carbon-dioxide", "carbon-dioxide", "argon-oxygen"):
        shorting = usual("mild-steel", gas, "short-circuit", amperes, 1.0e-3)
        drops = usual("mild-steel", gas, "globular", amperes, 1.0e-3)
        assert shorting[1] < drops[1]
        assert shorting[2] < drops[2]


# --- The leads, there and back


def leads_asked(**typed):
    found = [each for each in answer(**typed).next_questions if each.calculator == "lead-drop"]
    assert len(found) == 1
    return [name for name, _ in found[0].carried]


def test_the_leads_are_asked_with_what_is_known():
    assert leads_asked(**WELD, machine_voltage="22 V", lead_voltage_drop="unknown") == ["current", "machine_voltage"]
    assert leads_asked(machine_voltage="22 V", voltage="20 V") == ["machine_voltage"]
    assert leads_asked(voltage="20 V", lead_voltage_drop="2 V") == []


def test_unknown_leads_are_asked_first():
    known = answer(**WELD, machine_voltage="22 V", lead_voltage_drop="2 V").next_questions
    unknown = answer(**WELD, machine_voltage="22 V", lead_voltage_drop="unknown").next_questions
    assert known[0].calculator != "lead-drop"
    assert unknown[0].calculator == "lead-drop"
