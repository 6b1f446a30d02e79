"""A weld entry against its limits: heat by hand from the published equation, limits on both bases.

Sources: EN 1011-1:1998 and ISO/TR 17671-1 (heat input = k x U x I / v, k 0.8 for gas metal arc) and ASME IX
QW-409.1(a) (V x A x 60 / travel speed), as quoted beside heat_input; no published example of a log entry was found.
"""

import pytest

from calculators import asking
from webapp import shelf
from webapp.catalogue import Context, sentence


def ask(**fields: str):
    calculator = shelf.calculator("weld-entry")
    assert calculator is not None
    return asking.ask(calculator, list(fields.items()))


def numbers(answer) -> dict[str, float]:
    return {each.name: each.value for each in answer.results if each.kind == "number"}


# ASME IX QW-409.1(a), by hand: V x A x 60 / (in/min) = J/in.
@pytest.mark.parametrize(
    ("volts", "amps", "inches", "joules_per_inch"),
    [(24, 180, 12, 21600), (18, 120, 8, 16200), (28, 300, 15, 33600), (22.5, 200, 10, 27000)],
)
def test_arc_energy_is_that_of_the_code(volts, amps, inches, joules_per_inch):
    reply = ask(joint="a", voltage=f"{volts} V", current=f"{amps} A", travel_speed=f"{inches} in/min")
    found = numbers(reply.answer)
    assert found["arc_energy"] == pytest.approx(joules_per_inch / 0.0254)
    assert found["heat_input"] == pytest.approx(0.8 * joules_per_inch / 0.0254)


def test_travel_is_length_over_time():
    reply = ask(joint="a", voltage="24 V", current="180 A", weld_length="6 in", arc_time="30 s")
    assert numbers(reply.answer)["travel_speed"] == pytest.approx(6 * 0.0254 / 30)


ENERGY = 24 * 180 / (12 * 0.0254 / 60)  # J/m, by hand


@pytest.mark.parametrize(
    ("basis", "limit", "state"),
    [
        ("arc-energy", ENERGY, "inside"),
        ("arc-energy", ENERGY * 0.999, "outside"),
        ("heat-input", ENERGY * 0.8, "inside"),
        ("heat-input", ENERGY * 0.8 * 0.999, "outside"),
    ],
)
def test_the_highest_heat_is_on_the_limit_s_own_basis(basis, limit, state):
    reply = ask(
        joint="a",
        voltage="24 V",
        current="180 A",
        travel_speed="12 in/min",
        limit_basis=basis,
        heat_input_limit=f"{limit / 1e3:.6f} J/mm",
    )
    assert reply.answer.verdict.state == state


@pytest.mark.parametrize(("least", "state"), [("0.8 kJ/mm", "inside"), ("0.9 kJ/mm", "outside")])
def test_the_least_heat_is_kept_from_above(least, state):
    reply = ask(
        joint="a",
        voltage="24 V",
        current="180 A",
        travel_speed="12 in/min",
        limit_basis="arc-energy",
        heat_input_least=least,
    )
    assert reply.answer.verdict.state == state


@pytest.mark.parametrize(
    ("fields", "state"),
    [
        ({"preheat_measured": "150 degF", "preheat_least": "150 degF"}, "inside"),
        ({"preheat_measured": "149 degF", "preheat_least": "150 degF"}, "outside"),
        ({"interpass_measured": "250 degC", "interpass_most": "250 degC"}, "inside"),
        ({"interpass_measured": "251 degC", "interpass_most": "250 degC"}, "outside"),
        ({"preheat_least": "150 degF"}, "unclear"),
        ({"interpass_most": "250 degC", "preheat_measured": "70 degF"}, "unclear"),
    ],
)
def test_temperatures_are_held_against_their_limits(fields, state):
    reply = ask(joint="a", **fields)
    assert reply.answer.verdict.state == state


def test_what_is_outside_is_flagged_and_never_refused():
    reply = ask(joint="a", preheat_measured="20 degC", preheat_least="150 degC", visual_result="rejected")
    assert reply.answer is not None and reply.answer.record == "weld-entry"
    assert reply.answer.verdict.state == "outside"


def test_a_joint_alone_is_an_entry_and_says_what_is_missing():
    reply = ask(joint="a")
    assert reply.answer.verdict is None
    assert numbers(reply.answer) == {}
    assert reply.answer.record == "weld-entry"


@pytest.mark.parametrize(
    ("basis", "first"), [({"limit_basis": "arc-energy"}, "arc_energy"), ({"limit_basis": "heat-input"}, "heat_input")]
)
def test_the_headline_is_what_the_limit_is_held_against(basis, first):
    # By hand: 24 V x 180 A / 12 in/min = 21.6 kJ/in, over 20; its heat input of 17.28 kJ/in would look inside.
    reply = ask(
        joint="a", voltage="24 V", current="180 A", travel_speed="12 in/min", heat_input_limit="20 kJ/in", **basis
    )
    assert reply.answer.results[0].name == first
    assert reply.answer.verdict.state == ("outside" if first == "arc_energy" else "inside")


def test_every_broken_limit_is_named():
    reply = ask(
        joint="a",
        preheat_measured="70 degF",
        preheat_least="150 degF",
        interpass_measured="500 degF",
        interpass_most="450 degF",
    )
    assert sentence(reply.answer.verdict.message, Context("en", "us", "0")) == "Least preheat, Highest interpass"


# ---------------------------------------------------------------- what was used

STEEL = {"wire_material": "mild-steel", "wire_diameter": "0.045 in", "wire_feed_speed": "300 in/min"}


# Inches of wire in a pound, a printed table of the trade, seen: geometry agrees within 1.4 %. An entry does not ask for
# the aluminum alloy, which is 1.2 % either way.
@pytest.mark.parametrize(
    ("material", "diameter", "inches_in_a_pound"),
    [
        ("mild-steel", "0.030 in", 4956),
        ("mild-steel", "0.035 in", 3648),
        ("mild-steel", "0.045 in", 2196),
        ("stainless", "0.035 in", 3588),
        ("stainless", "1/16 in", 1140),
        ("aluminum", "0.030 in", 14412),
        ("aluminum", "1/16 in", 3372),
    ],
)
def test_the_wire_used_is_what_the_inches_in_a_pound_say(material, diameter, inches_in_a_pound):
    run = {**STEEL, "wire_material": material, "wire_diameter": diameter}
    used = numbers(ask(joint="a", arc_time="5 min", **run).answer)["wire_used"]
    within = 0.014 + (0.012 if material == "aluminum" else 0.0)
    assert used == pytest.approx(1500 / inches_in_a_pound * 0.45359237, rel=within)


# 490 lb/ft3 of steel (Iowa DOT, Instructional Memorandum 452.02): 1500 in of 0.045 in wire by hand:
# 1500 x pi/4 x 0.045^2 in3 x 490/1728 lb/in3 = 0.67648 lb.
def test_the_wire_used_is_its_volume_by_the_printed_density():
    used = numbers(ask(joint="a", arc_time="5 min", **STEEL).answer)["wire_used"]
    assert used / 0.45359237 == pytest.approx(0.67648, rel=2e-4)


def test_the_time_may_come_from_length_and_travel():
    # 6 in at 12 in/min is 30 s.
    worked = ask(joint="a", weld_length="6 in", travel_speed="12 in/min", gas_flow="30 ft3/h", **STEEL)
    typed = ask(joint="a", arc_time="30 s", gas_flow="30 ft3/h", **STEEL)
    for name in ("wire_used", "gas_used_volume"):
        assert numbers(worked.answer)[name] == pytest.approx(numbers(typed.answer)[name])


# A flow is a volume in a time: 17 L/min for 5 min is 85 L; 30 ft3/h for 30 s is a quarter of a cubic foot.
@pytest.mark.parametrize(
    ("flow", "time", "litres"), [("17 L/min", "5 min", 85.0), ("30 ft3/h", "30 s", 0.25 * 28.316846592)]
)
def test_the_gas_used_is_flow_times_arc_time(flow, time, litres):
    reply = ask(joint="a", gas_flow=flow, arc_time=time)
    assert numbers(reply.answer)["gas_used_volume"] == pytest.approx(litres / 1000)


@pytest.mark.parametrize(
    "changed",
    [
        {"process": "flux-cored-arc"},
        {"process": "shielded-metal-arc"},
        {"wire_material": ""},
        {"wire_feed_speed": ""},
        {"wire_diameter": ""},
        {"arc_time": ""},
    ],
)
def test_without_what_it_takes_no_wire_is_reckoned_and_nothing_refused(changed):
    reply = ask(joint="a", **{"arc_time": "5 min", **STEEL, **changed})
    assert reply.answer is not None and reply.answer.record == "weld-entry"
    assert "wire_used" not in numbers(reply.answer)


def test_cored_wire_is_said_to_need_a_scale():
    notes = [each.id for each in ask(joint="a", arc_time="5 min", process="flux-cored-arc", **STEEL).answer.notes]
    assert "weld-entry.note.cored" in notes


def test_a_pass_of_a_month_is_reckoned_too():
    reply = ask(joint="a", arc_time="60000 min", **{**STEEL, "wire_feed_speed": "40 m/min"})
    assert numbers(reply.answer)["wire_used"] > 1000
