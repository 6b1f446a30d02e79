"""Gas let into a closed space: the closed forms against numerical integration, and against published sums.

Second method: scipy integrates the mass balance step by step. Standing: law (conservation of mass).
Published: Fermilab news note of January 2013, read: 160 L of liquid nitrogen bring a room of 70 x 70 x 10 ft below
19.5 % oxygen. OSHA's page for carbon dioxide, read: 5000 ppm over 8 h; NIOSH 30 000 ppm for 15 minutes; NIOSH,
documentation of 1994, seen quoted: 40 000 ppm immediately dangerous. 29 CFR 1910.146(b), seen quoted: 19.5 %.
"""

import math

import pytest
from scipy.integrate import solve_ivp

from calculators import ranges
from calculators.facts import breathing as facts
from calculators.gas_dilution import gas_share, time_to_share

HOUR, MINUTE = 3600.0, 60.0
CFH = 0.3048**3 / HOUR


def integrated(volume, inflow, leaves, time):
    """Return the share of gas by integrating what comes in less what leaves with the mixed air."""
    solved = solve_ivp(
        lambda _, share: inflow / volume - leaves / volume * share, (0.0, time), [0.0], rtol=1e-10, atol=1e-14
    )
    return solved.y[0][-1]


def minutes_to(volume, inflow, share):
    """Return the minutes until the gas has taken a share of a space without a fan."""
    time = time_to_share(volume, inflow, inflow, share)
    assert time is not None
    return time / MINUTE


@pytest.mark.parametrize(
    ("volume", "inflow", "air"),
    [(10.0, 35 * CFH, 0.0), (2.0, 12e-3 / MINUTE, 0.0), (10.0, 0.9 / HOUR, 10.0 / HOUR), (300.0, 1e-6, 0.01)],
)
@pytest.mark.parametrize("time", [30.0, 600.0, 3 * HOUR, 48 * HOUR])
def test_closed_form_against_numerical_integration(volume, inflow, air, time):
    expected = integrated(volume, inflow, inflow + air, time)
    assert gas_share(volume, inflow, inflow + air, time) == pytest.approx(expected, rel=1e-6, abs=1e-12)


def test_fan_that_draws_out_against_numerical_integration():
    """Out goes Q of mixed air, in comes Q - R of fresh air: the oxygen itself is integrated here."""
    volume, inflow, fan = 10.0, 0.9 / HOUR, 10.0 / HOUR
    solved = solve_ivp(
        lambda _, oxygen: (0.209 * (fan - inflow) - fan * oxygen) / volume, (0.0, HOUR), [0.209], rtol=1e-10, atol=1e-14
    )
    assert 0.209 * (1 - gas_share(volume, inflow, fan, HOUR)) == pytest.approx(solved.y[0][-1], rel=1e-7)
    # Steady, by hand: 20.9 x (1 - 0.9 / 10) = 19.02 %; blown in 20.9 x 10 / 10.9 = 19.17 %.
    assert 20.9 * (1 - gas_share(volume, inflow, fan, 1e6)) == pytest.approx(19.02, abs=0.005)
    assert 20.9 * (1 - gas_share(volume, inflow, fan + inflow, 1e6)) == pytest.approx(19.17, abs=0.005)


@pytest.mark.parametrize("share", [0.001, 0.05, 0.5, 0.9])
@pytest.mark.parametrize("air", [0.0, 1e-5])
def test_time_is_the_share_turned_round(share, air):
    inflow = 2.0e-4
    time = time_to_share(10.0, inflow, inflow + air, share)
    assert integrated(10.0, inflow, inflow + air, time) == pytest.approx(share, rel=1e-6)


def test_a_share_that_is_never_reached_has_no_time():
    assert time_to_share(10.0, 1e-4, 1e-3, 0.1) is None  # it settles there, and never arrives
    assert time_to_share(10.0, 1e-4, 1e-3, 0.2) is None
    assert time_to_share(10.0, 1e-4, 1e-3, 0.0999) is not None
    assert time_to_share(10.0, 1e-4, 1e-4, 1.0) is None


# By hand: -ln(1 - x) x V / R.
@pytest.mark.parametrize(
    ("volume", "inflow", "level", "minutes"),
    [(10.0, 15e-3 / 60, 0.195, 46.2), (5.0, 15e-3 / 60, 0.195, 23.1), (2.0, 12e-3 / 60, 0.195, 11.6)],
)
def test_minutes_until_a_meter_alarms(volume, inflow, level, minutes):
    assert minutes_to(volume, inflow, 1 - level / facts.CLEAN_OXYGEN) == pytest.approx(minutes, abs=0.1)


def test_a_dewar_in_a_room_as_a_laboratory_sums_it():
    room = 70 * 70 * 10 * 0.3048**3
    gas = 0.160 * 694  # 1 L of liquid nitrogen is 694 L of gas at 20 degC; published
    oxygen = facts.CLEAN_OXYGEN * (1 - gas_share(room, gas / (2 * HOUR), gas / (2 * HOUR), 2 * HOUR))
    assert 0.192 < oxygen < 0.195


def test_carbon_dioxide_passes_its_limits_before_an_oxygen_meter_alarms():
    """The trap: 10 m3 with 35 ft3/h of carbon dioxide. By hand 3.0, 24.7 and 42.0 minutes."""
    inflow = 35 * CFH
    law, _, danger = [minutes_to(10.0, inflow, level) for level, _ in facts.CARBON_DIOXIDE]
    alarm = minutes_to(10.0, inflow, 1 - 0.195 / facts.CLEAN_OXYGEN)
    assert law == pytest.approx(3.03, abs=0.01)
    assert danger == pytest.approx(24.7, abs=0.05)
    assert alarm == pytest.approx(42.0, abs=0.05)
    # At the alarm it stands at 6.7 %: beyond what is immediately dangerous.
    assert pytest.approx(0.067, abs=0.0005) == 1 - 0.195 / facts.CLEAN_OXYGEN


def test_levels_are_those_of_law_and_niosh():
    assert [level for level, _ in facts.CARBON_DIOXIDE] == [0.005, 0.03, 0.04]
    assert [level for level, _ in facts.OXYGEN] == [0.195, 0.16, 0.10, 0.06]


@pytest.mark.parametrize(
    ("volume", "inflow", "through", "time"),
    [
        (0.009, 1e-4, 1e-4, 60.0),
        (1.1e7, 1e-4, 1e-4, 60.0),
        (10.0, 0.0, 1e-4, 60.0),
        (10.0, 0.03, 0.03, 60.0),
        (10.0, 1e-4, 0.9e-4, 60.0),
        (10.0, 1e-4, 1.1e4, 60.0),
        (10.0, 1e-4, 1e-4, -1.0),
        (10.0, 1e-4, 1e-4, 1.1e9),
        (math.nan, 1e-4, 1e-4, 60.0),
    ],
)
def test_out_of_range(volume, inflow, through, time):
    with pytest.raises(ranges.OutOfRange):
        gas_share(volume, inflow, through, time)


def test_the_upper_ends_hold_and_the_fault_is_named():
    for inflow, through, time in ((1e-4, 1e-4, 1.0000005e9), (1e-4, 10000.5, 60.0)):
        with pytest.raises(ranges.OutOfRange):
            gas_share(10.0, inflow, through, time)
    with pytest.raises(ranges.OutOfRange) as refused:
        gas_share(10.0, 1e-4, 0.5e-4, 60.0)
    assert refused.value.name == "through_flow"


@pytest.mark.parametrize("share", [-0.01, 1.01, math.nan])
def test_a_share_is_of_one(share):
    with pytest.raises(ranges.OutOfRange):
        time_to_share(10.0, 1e-4, 1e-4, share)
