"""The flow-meter question: both ways round, what is taken, what is refused."""

import json

import pytest

from tests import walking


def ask(status=200, units="us", **typed):
    reply = walking.reply("/api/flow-meter", list(typed.items()), system=units)
    assert reply.status == status, reply.body
    return json.loads(reply.body)


def value(answer, name):
    return answer["results"][name]["value"]


def said(answer, part):
    return " ".join(answer[part]).replace("\u00a0", " ")


def test_an_argon_scale_reads_high_on_carbon_dioxide():
    answer = ask(gas="carbon-dioxide", reading="30 ft3/h")
    assert answer["solved_for"] == "gas_flow"
    assert value(answer, "gas_flow") == pytest.approx(28.5, abs=0.02)
    assert answer["results"]["gas_flow"]["low"] == pytest.approx(0.9 * value(answer, "gas_flow"))


def test_the_wanted_flow_gives_the_reading_to_set():
    answer = ask(gas="helium-mix", helium="75 %", gas_flow="40 ft3/h")
    assert answer["solved_for"] == "reading"
    assert value(answer, "reading") == pytest.approx(40 / 1.754, rel=1e-3)
    back = ask(gas="helium-mix", helium="75 %", reading=f"{value(answer, 'reading')} ft3/h")
    assert value(back, "gas_flow") == pytest.approx(40.0, rel=1e-6)


def test_helium_not_told_is_the_mix_for_stainless():
    blank = ask(gas="helium-mix", reading="30 ft3/h")
    assert value(blank, "gas_flow") == pytest.approx(30 * (1.69075 / 0.32588) ** 0.5, rel=1e-4)


def test_same_gas_same_state_reads_true():
    answer = ask(gas="argon", reading="30 ft3/h", scale_pressure="50 psi", inlet_pressure="50 psi")
    assert value(answer, "gas_flow") == pytest.approx(30.0)
    assert value(answer, "meter_factor") == pytest.approx(1.0)


def test_pressures_count_from_nothing_not_from_the_gauge():
    answer = ask(gas="argon", reading="30 ft3/h", scale_pressure="50 psi", inlet_pressure="30 psi")
    assert value(answer, "meter_factor") == pytest.approx((44.696 / 64.696) ** 0.5, rel=1e-4)


def test_one_pressure_alone_is_refused_and_one_temperature_takes_70_degrees():
    assert list(ask(422, reading="30 ft3/h", scale_pressure="50 psi")["errors"]) == ["inlet_pressure"]
    answer = ask(gas="argon", reading="30 ft3/h", gas_temperature="32 degF")
    assert value(answer, "meter_factor") == pytest.approx((529.67 / 491.67) ** 0.5, rel=1e-6)
    assert "70 \u00b0F was taken" in said(answer, "notes")
    assert "was taken" not in said(ask(reading="30 ft3/h"), "notes")


def test_an_orifice_gauge_is_warned_of():
    assert "even when the nozzle is blocked" in said(ask(reading="30 ft3/h"), "notes")


def test_flow_is_asked_next_with_what_truly_flows():
    page = walking.reply("/flow-meter", [("gas", "carbon-dioxide"), ("reading", "30 ft3/h")]).body
    assert 'href="gas-flow?gas=carbon-dioxide&amp;gas_flow=28.5' in page
