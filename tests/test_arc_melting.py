"""Which arc and which stick-out the melting law is asked with, from a point of current, or feed, and voltage."""

import pytest

from calculators.arc_melting import Melt
from calculators.melting_law import MeltingLaw

# Short-circuit: an arc of 2 mm, 11 mm from contact tip to work; spray: 5 and 19 mm; of no known mode: 3 and 13 mm.
# facts/wires.py, ARC_LENGTHS and USUAL_DISTANCES: common practice.
MODES = {"short-circuit": (2.0e-3, 11.0e-3), "spray": (5.0e-3, 19.0e-3), "not-known": (3.0e-3, 13.0e-3)}
SHORTING = {"gas": "argon-carbon-dioxide", "carbon_dioxide": 0.25, "current": 180.0, "voltage": 19.0}
SPRAYING = {"gas": "argon-carbon-dioxide", "carbon_dioxide": 0.10, "current": 250.0, "voltage": 28.0}


def asked(**point):
    wire = {"wire_material": "mild-steel", "wire_diameter": 1.143e-3, "position": "flat", "waveform": "steady"}
    return {**wire, **point}


def feed(mode, current, distance):
    return MeltingLaw(asked(transfer_mode=mode)).checked_feed(current, distance)


@pytest.mark.parametrize(
    ("point", "mode"),
    [
        (SHORTING, "short-circuit"),
        (SPRAYING, "spray"),
        ({**SPRAYING, "gas": "carbon-dioxide"}, "not-known"),
        # A pulse runs in neither mode, whatever its mean current and voltage look like.
        ({**SHORTING, "waveform": "pulse"}, "not-known"),
        ({**SPRAYING, "waveform": "pulse"}, "not-known"),
    ],
)
def test_arc_and_stick_out_are_those_of_the_mode_at_hand(point, mode):
    melt = Melt(asked(**point), False)
    assert (melt.law.arc_length, melt.distance) == pytest.approx(MODES[mode])


@pytest.mark.parametrize(("point", "mode"), [(SHORTING, "short-circuit"), (SPRAYING, "spray")])
@pytest.mark.parametrize("distance", [None, 16.0e-3])
def test_feed_finds_the_mode_of_the_current_that_it_melts_at(point, mode, distance):
    speed = feed(mode, point["current"], distance or MODES[mode][1])
    melt = Melt(asked(**{**point, "current": None}, wire_feed_speed=speed, contact_tip_to_work=distance), True)
    assert (melt.law.arc_length, melt.distance) == pytest.approx((MODES[mode][0], distance or MODES[mode][1]))
    assert melt.law.checked_current(speed, melt.distance) == pytest.approx(point["current"])


def test_a_feed_too_fast_for_a_short_arc_is_not_too_fast_for_spray():
    # 1.143 mm is run up to 350 A (facts/wires.py): the longer stick-out of spray melts more wire there.
    fastest = feed("short-circuit", 350.0, MODES["short-circuit"][1])
    speed = feed("spray", 345.0, MODES["spray"][1])
    assert speed > fastest
    melt = Melt(asked(**{**SPRAYING, "current": None, "voltage": 31.0}, wire_feed_speed=speed), True)
    assert (melt.law.arc_length, melt.distance) == pytest.approx(MODES["spray"])
    assert melt.law.checked_current(speed, melt.distance) == pytest.approx(345.0)
