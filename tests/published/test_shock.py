"""Shock against the law and the published effects of current; standing beside each."""

import json

import pytest

from calculators import ranges, shock_limits
from calculators.facts import shock as facts
from tests import walking


def api(**typed):
    asked = {"place": "dry", "supply": "mains", **typed}
    reply = walking.reply("/api/shock", list(asked.items()))
    assert reply.status == 200, reply.body
    return json.loads(reply.body)


# 29 CFR 1910.254(b)(3), word for word in WAC 296-24-68503(2): ac by hand 80 V, automatic 100 V; dc 100 V both.
# Standing: law, seen.
@pytest.mark.parametrize(
    ("output", "moved", "most"),
    [("ac", "hand", 80), ("ac", "machine", 100), ("dc", "hand", 100), ("dc", "machine", 100)],
)
def test_most_volts_with_no_arc(output, moved, most):
    assert api(output=output, moved=moved)["results"]["most_voltage"]["value"] == most


@pytest.mark.parametrize(
    ("volts", "output", "state"),
    [("80", "ac", "inside"), ("80.1", "ac", "outside"), ("100", "dc", "inside"), ("101", "dc", "outside")],
)
def test_over_the_law_or_not(volts, output, state):
    assert api(output=output, open_circuit_voltage=volts)["verdict"] == state


# Michigan R 408.11272(4): ac in the wet takes a control that brings no-load volts below 50 V. Standing: law, seen.
@pytest.mark.parametrize("place", ["wet", "cramped"])
def test_wet_and_cramped_places_are_never_inside(place):
    assert facts.WET_AC == 50.0
    assert api(place=place, output="ac")["results"]["wet_voltage"]["value"] == 50
    assert api(place=place, output="ac", open_circuit_voltage="50")["verdict"] == "outside", "below 50 V, not at it"
    for volts, output in (("49", "ac"), ("49", "dc"), ("80", "dc")):
        assert api(place=place, output=output, open_circuit_voltage=volts)["verdict"] == "unclear"
    assert "wet_voltage" not in api(place=place)["results"]


# 80 V through 1000 ohm is 80 mA, through 500 ohm 160 mA. Ohm's law, by hand.
def test_body_current():
    assert shock_limits.body_current(80.0, 1000.0) == pytest.approx(0.080)
    assert shock_limits.body_current(80.0, 500.0) == pytest.approx(0.160)
    assert api(open_circuit_voltage="80")["results"]["body_current"]["value"] == pytest.approx(80)
    for volts, ohms in ((0.5, 1000.0), (600.0, 1000.0), (80.0, 50.0), (80.0, 2e6)):
        with pytest.raises(ranges.OutOfRange):
            shock_limits.body_current(volts, ohms)


# NIOSH as quoted: 16 mA let go, 20 mA breathing, 100 mA fibrillation. OSHA 3075 has 9 to 30 mA for letting go and 50 to
# 150 mA for breathing and possible death, which NIOSH's lie within or below. Standing: published, seen.
def test_what_a_current_does():
    assert (facts.LET_GO, facts.BREATHING, facts.HEART) == (0.016, 0.020, 0.100)
    assert 0.009 <= facts.LET_GO <= 0.030 < facts.HEART
    said = api(open_circuit_voltage="80")["results"]["body_current"]["text"].replace("\u00a0", " ")
    assert said == "hands lock at 16 mA, breath stops at 20 mA, the heart at 100 mA"


# 29 CFR 1910.254(d)(9) and 1926.351(b)(2): no splice within 10 ft of the holder; bare conductors replaced; (c)(2): no
# chains, wire rope, cranes. Standing: law, seen.
def test_leads_and_work_clamp_on_every_list():
    for place in ("dry", "wet", "cramped"):
        said = " ".join(each["text"] for each in api(place=place)["results"]["before"]["items"])
        assert "no splice within 10 ft" in said and "Not through chain, wire rope, crane or conduit" in said
        assert ("somebody at the switch" in said) == (place == "cramped")


# 29 CFR 1926.404(f)(3)(i)(B), (ii)(A): ground pins of outlets bonded to the generator's frame, that to the vehicle's.
# Standing: law, seen in letters of interpretation.
def test_a_generator_has_its_frames_joined():
    said = " ".join(each["text"] for each in api(supply="generator")["results"]["before"]["items"])
    assert "ground pins of its outlets join its frame" in said
    assert "its frame joins the truck's" in said
