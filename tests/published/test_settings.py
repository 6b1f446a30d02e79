"""Settings against the world. No published table is copied into the code; these are points it has to meet.

Standing is written beside each. No published setting for mild steel with 75/25 was found outside makers' charts, which
are not used: the jobs in tests/settings_situations.py stand for common practice there.
"""

import json
import math

import pytest

from calculators import starting_current
from tests import walking

INCH, IN_PER_MIN = 0.0254, 0.0254 / 60.0


def ask(status=200, **typed):
    reply = walking.reply("/api/settings", list(typed.items()), system="us")
    assert reply.status == status, reply.body
    return json.loads(reply.body)


def result(name, **typed):
    return ask(**typed)["results"][name]


def value(name, **typed):
    return result(name, **typed)["value"]


# ---------------------------------------------------------------- aluminum


def test_navy_exercise_on_thick_aluminum():
    # NAVEDTRA 14119 (US Navy), chapter 10, horizontal multipass exercise: 1/2 in plate, 1/16 in wire, 210 to 250 A,
    # 50 ft3/h. Standing: published, seen.
    job = {"wire_material": "aluminum", "thickness": "1/2 in", "wire_diameter": "1/16 in", "position": "horizontal"}
    assert 210.0 <= value("current", **job) <= 250.0
    assert result("gas_flow", **job)["high"] == pytest.approx(50.0)


@pytest.mark.parametrize(
    # NAVEDTRA 14119, table 10-11: currents of aluminum wire in argon. Standing: published, seen.
    ("wire", "lowest", "highest"),
    [("0.030 in", 75.0, 150.0), ("3/64 in", 120.0, 210.0), ("1/16 in", 165.0, 300.0)],
)
@pytest.mark.parametrize("thickness", ["3/16 in", "1/4 in", "1/2 in"])
def test_navy_currents_of_aluminum_wire(wire, lowest, highest, thickness):
    job = {"wire_material": "aluminum", "thickness": thickness, "wire_diameter": wire}
    assert lowest <= value("current", **job) <= highest


@pytest.mark.parametrize(
    # Modern Welding (textbook, 2020), figure 8-18. Standing: published, seen.
    ("wire", "thickness", "least", "most"),
    [("0.030 in", "1/8 in", 19.0, 22.0), ("3/64 in", "3/16 in", 22.0, 28.0), ("1/16 in", "3/8 in", 24.0, 30.0)],
)
def test_textbook_volts_of_aluminum(wire, thickness, least, most):
    job = {"wire_material": "aluminum", "thickness": thickness, "wire_diameter": wire}
    assert least <= value("voltage", **job) <= most


def test_no_silicon_on_magnesium():
    # Mathers, The welding of aluminium and its alloys, page 49: no silicon filler on more than 2 % magnesium; its table
    # 3.3 has 5356 and 5183 for 5083. Standing: published, seen.
    job = {"wire_material": "aluminum", "thickness": "1/4 in", "base_alloy": "5083"}
    refused = ask(status=422, filler_alloy="4043", **job)["errors"]["filler_alloy"]
    assert "5356" in refused and "5183" in refused
    for filler in ("5356", "5183"):
        assert ask(filler_alloy=filler, **job)["results"]


# ---------------------------------------------------------------- stainless


@pytest.mark.parametrize(
    # Modern Welding (2020), figure 8-16, short-circuit in helium mix, and 8-17, spray. Standing: published, seen.
    ("gas", "wire", "thickness", "currents", "volts"),
    [
        ("helium-mix", "0.030 in", "1/16 in", (50.0, 145.0), (17.0, 22.0)),
        ("helium-mix", "0.035 in", "1/8 in", (65.0, 175.0), (17.0, 22.0)),
        ("helium-mix", "0.045 in", "3/16 in", (100.0, 210.0), (17.0, 22.0)),
        ("argon-oxygen", "0.035 in", "3/8 in", (180.0, 255.0), (24.0, 29.0)),
        ("argon-oxygen", "0.045 in", "3/8 in", (200.0, 300.0), (24.0, 30.0)),
    ],
)
def test_textbook_ranges_of_stainless(gas, wire, thickness, currents, volts):
    job = {"wire_material": "stainless", "gas": gas, "wire_diameter": wire, "thickness": thickness}
    assert currents[0] <= value("current", **job) <= currents[1]
    assert volts[0] <= value("voltage", **job) <= volts[1]


# ---------------------------------------------------------------- mild steel


def test_measured_pair():
    # Brazilian thesis, measured in short-circuit: 2.4 m/min, 101.9 A, 17.8 V; 1.2 mm fits. Standing: published,
    # excerpt seen. The rule asks 0.102 in for 102 A.
    job = {"thickness": "0.102 in", "wire_diameter": "1.2 mm"}
    assert value("current", **job) == pytest.approx(102.0)
    feed, volts = result("wire_feed_speed", **job), result("voltage", **job)
    assert feed["low"] <= 2.4 / 0.0254 <= feed["high"]
    assert volts["low"] <= 17.8 <= volts["high"]


@pytest.mark.parametrize(
    # Burn-off in short-circuit: 1.6 in/min for each A of 0.035 in wire, 1.0 of 0.045 in, good to 15 %. Standing: common
    # practice.
    ("wire", "burn_off"),
    [("0.035 in", 1.6), ("0.045 in", 1.0)],
)
def test_shop_rule_of_burn_off(wire, burn_off):
    answer = ask(thickness="1/8 in", wire_diameter=wire)["results"]
    assert answer["wire_feed_speed"]["value"] / answer["current"]["value"] == pytest.approx(burn_off, rel=0.15)


@pytest.mark.parametrize(
    # AWS C5.6: most current in short-circuit, flat, then uphill and overhead. Standing: from memory.
    ("wire", "flat", "overhead"),
    [("0.030 in", 150.0, 125.0), ("0.035 in", 175.0, 150.0), ("0.045 in", 225.0, 175.0)],
)
def test_short_circuit_stays_in_the_wire_s_range(wire, flat, overhead):
    assert value("current", thickness="1/4 in", wire_diameter=wire) == pytest.approx(flat)
    assert value("current", thickness="7/32 in", wire_diameter=wire, position="overhead") == pytest.approx(overhead)


@pytest.mark.parametrize(
    # AWS D1.1/D1.1M:2020, table 5.1: largest fillet in one pass of gas metal arc. Standing: standard, seen reproduced.
    ("position", "most"),
    [("flat", 0.5), ("horizontal", 0.375)],
)
def test_one_pass_of_the_code(position, most):
    job = {"thickness": "1 in", "wire_diameter": "1/16 in", "gas": "argon-oxygen", "position": position}
    for leg in (0.3125, 0.375, 0.5, 0.625):
        answer = ask(leg=f"{leg} in", **job)["results"]
        one = answer["passes"]["value"] == 1
        assert not (one and leg > most)
        if not one:
            assert answer["bead_area"]["value"] <= 1.2 * 0.5 * most * most * 1.000001


@pytest.mark.parametrize(
    # ANSI/AISC 360, table J2.4: smallest fillet by thickness. Standing: standard, seen.
    ("thickness", "least"),
    [("3/8 in", 0.1875), ("5/8 in", 0.25), ("1 in", 0.3125)],
)
def test_leg_taken_is_no_smaller_than_the_code_s(thickness, least):
    job = {"wire_diameter": "0.045 in", "gas": "argon-oxygen"}
    assert value("leg", thickness=thickness, **job) >= least * 0.999999


def test_wind_of_the_code():
    # AWS D1.1: no gas-shielded welding above 5 mph [8 km/h]. Standing: standard, seen quoted.
    assert "5 mph (8 km/h)" in ask(status=422, thickness="1/8 in", wind="wind")["errors"]["wind"].replace("\u00a0", " ")


def test_short_circuit_ends_at_a_quarter_inch():
    # Short-circuit serves 24 gauge to 1/4 inch. Standing: common practice.
    for thickness, wire in (("0.0239 in", "0.023 in"), ("1/4 in", "0.045 in")):
        assert ask(thickness=thickness, wire_diameter=wire)["results"]["transfer_mode"]["text"].startswith("Short")
    assert ask(status=422, thickness="0.26 in", wire_diameter="0.045 in")["errors"]["gas"]
    assert ask(status=422, thickness="0.0179 in", wire_diameter="0.023 in")["errors"]


# ---------------------------------------------------------------- a second method, by hand


JOBS = (
    {"thickness": "1/8 in"},
    {"thickness": "1/2 in", "wire_diameter": "0.045 in", "gas": "argon-carbon-dioxide", "carbon_dioxide": "10 %"},
    {"wire_material": "aluminum", "thickness": "1/4 in", "wire_diameter": "3/64 in", "leg": "3/8 in"},
)


@pytest.mark.parametrize("job", JOBS)
def test_metal_in_is_metal_out(job):
    # Conservation of mass: law. Efficiency of 75/25 96 %, argon-rich 98 %.
    answer = ask(**job)["results"]
    wire = {"0.035 in": 0.035, "0.045 in": 0.045, "3/64 in": 0.046875}[job.get("wire_diameter", "0.035 in")]
    efficiency = 0.96 if len(job) == 1 else 0.98
    fed = answer["wire_feed_speed"]["value"] * math.pi / 4.0 * wire * wire * efficiency
    leg, passes = answer["leg"]["value"], answer["passes"]["value"]
    laid = answer["travel_speed"]["value"] * 1.2 * leg * leg / 2.0 / passes
    assert laid == pytest.approx(fed, rel=1e-6)


@pytest.mark.parametrize("job", JOBS)
def test_heat_by_hand(job):
    # kJ/in = V × A × 60 ÷ (1000 × in/min): ASME IX QW-409.1(a), standard; times 0.8: EN 1011-1, standard.
    answer = ask(**job)["results"]
    volts, amperes = answer["voltage"]["value"], answer["current"]["value"]
    energy = volts * amperes * 60.0 / (1000.0 * answer["travel_speed"]["value"])
    assert answer["arc_energy"]["value"] == pytest.approx(energy)
    assert answer["heat_input"]["value"] == pytest.approx(0.8 * energy)


def test_more_metal_wants_more_current_until_the_wire_ends():
    currents = [value("current", thickness=f"{mils / 1000} in") for mils in range(60, 251, 10)]
    assert currents == sorted(currents)
    assert currents[0] == 75.0 and currents[-1] == 175.0


def test_thickness_in_either_unit():
    inches, metric = ask(thickness="0.125 in")["results"], ask(thickness="3.175 mm")["results"]
    assert inches == metric


@pytest.mark.parametrize("metal", ["mild-steel", "stainless", "aluminum"])
def test_wanted_current_goes_with_thickness_and_then_stays(metal):
    thin = starting_current.wanted_current(metal, 2e-3, "flat")
    double = starting_current.wanted_current(metal, 4e-3, "flat")
    assert double == pytest.approx([2.0 * amperes for amperes in thin])
    assert starting_current.wanted_current(metal, 0.25 * INCH, "flat") == pytest.approx(
        starting_current.wanted_current(metal, 1.0 * INCH, "flat")
    )


# ---------------------------------------------------------------- where a setting starts, by hand


@pytest.mark.parametrize(
    ("metal", "position", "amperes"),
    [
        ("mild-steel", "flat", 125.0),
        ("mild-steel", "vertical-up", 112.5),
        ("mild-steel", "vertical-down", 125.0),
        ("stainless", "horizontal", 106.25),
        ("stainless", "vertical-up", 95.625),
        ("stainless", "overhead", 95.625),
        ("aluminum", "overhead", 112.5),
    ],
)
def test_an_eighth_wants(metal, position, amperes):
    # 125 A, x 0.85 on stainless, x 0.9 uphill and overhead, and a quarter either way. Standing: common practice.
    low, middle, high = starting_current.wanted_current(metal, 0.125 * INCH, position)
    assert (low, middle, high) == pytest.approx((0.75 * amperes, amperes, 1.25 * amperes))


@pytest.mark.parametrize(
    ("metal", "amperes", "position", "wire"),
    [
        # AWS C5.6 (from memory): 0.045 in 100 to 225 A, 175 uphill; 0.035 in from 75, 0.030 in from 50 A. Stretched to
        # 1.3 and 0.75 of it: common practice.
        ("mild-steel", 260.0, "flat", 0.045),
        ("mild-steel", 260.0, "overhead", None),
        ("mild-steel", 230.0, "overhead", 0.045),
        ("mild-steel", 76.0, "flat", 0.035),
        ("mild-steel", 57.0, "flat", 0.030),
        ("mild-steel", 38.0, "flat", 0.023),
        ("mild-steel", 22.0, "flat", None),
        ("stainless", 76.0, "flat", 0.035),
        ("stainless", 49.0, "flat", 0.030),
        ("aluminum", 100.0, "flat", None),
    ],
)
def test_nearest_wire_is_one_that_runs_there(metal, amperes, position, wire):
    found = starting_current.nearest_wire(metal, amperes, position)
    assert (found and round(found / INCH, 4)) == wire
