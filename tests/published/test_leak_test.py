"""A leak by the fall of a gauge, against the equations of state (CoolProp 8.0.0; standing: published, computed).

No published leak test with numbers was found: the gas lost is checked against densities that CoolProp gives by
itself, and the rule of the trade about cooling against both.
"""

import math

import CoolProp
import pytest
from CoolProp.CoolProp import AbstractState, PropsSI

from calculators import gas_leak, ranges
from calculators.gas_density import density, pressure_for_density, reference_density

BAR, ATMOSPHERE, ICE = 1e5, 101325.0, 273.15
LITRE, HOUR = 1e-3, 3600.0


def argon(gauge_bar, celsius):
    return PropsSI("D", "P", gauge_bar * BAR + ATMOSPHERE, "T", celsius + ICE, "Argon")


def test_leak_of_argon_by_the_equation_of_state():
    start, end, reference = argon(200, 15), argon(150, 15), argon(0, 15)
    expected = 50 * (start - end) / reference / 100  # [L/h]
    assert expected == pytest.approx(26.0, abs=0.1)
    ours = gas_leak.leak_rate(
        50 * LITRE,
        density(200 * BAR + ATMOSPHERE, 15 + ICE, 0.0),
        density(150 * BAR + ATMOSPHERE, 15 + ICE, 0.0),
        reference_density(0.0),
        100 * HOUR,
    )
    assert ours * HOUR / LITRE == pytest.approx(expected, rel=1e-3)


# "10 K of cooling drops the pressure about 3.4 %" is the ideal gas. The real one: 5.2 % for argon from 200 bar, and
# more for mixes. Standing: published, computed.
def test_cooling_alone_takes_more_than_the_ideal_gas_law_says():
    there = density(200 * BAR, 20 + ICE, 0.0)
    assert 1 - pressure_for_density(there, 10 + ICE, 0.0) / (200 * BAR) == pytest.approx(0.052, abs=0.0005)
    assert pytest.approx(0.034, abs=0.0002) == 10 / 293.15
    mixed = density(200 * BAR, 20 + ICE, 0.25)
    assert 1 - pressure_for_density(mixed, 10 + ICE, 0.25) / (200 * BAR) == pytest.approx(0.068, abs=0.002)


@pytest.mark.parametrize("fraction", [0.0, 0.18, 0.25])
def test_tight_cylinder_by_coolprop_loses_nothing_here(fraction):
    """The end pressure of a tight cylinder comes from CoolProp; what is left of it as a leak is a rounding."""
    names, amounts = (["Argon"], [1.0]) if not fraction else (["Argon", "CarbonDioxide"], [1 - fraction, fraction])
    state = AbstractState("HEOS", "&".join(names))
    state.set_mole_fractions(amounts)
    state.specify_phase(CoolProp.iphase_gas)
    state.update(CoolProp.PT_INPUTS, 200 * BAR, 20 + ICE)
    start = state.rhomass()
    low, high = 150 * BAR, 200 * BAR
    for _ in range(60):
        middle = (low + high) / 2
        state.update(CoolProp.PT_INPUTS, middle, 5 + ICE)
        low, high = (middle, high) if state.rhomass() < start else (low, middle)
    leak = gas_leak.leak_rate(
        50 * LITRE,
        density(200 * BAR, 20 + ICE, fraction),
        density(low, 5 + ICE, fraction),
        reference_density(fraction),
        12 * HOUR,
    )
    assert abs(leak) * HOUR / LITRE < 0.5  # of 10 m3


def test_ideal_gas_would_cry_leak_where_there_is_none():
    """The trap: corrected by absolute temperature alone, a tight argon cylinder seems to lose 2 % overnight."""
    start = 200 * BAR
    tight = pressure_for_density(density(start, 20 + ICE, 0.0), 10 + ICE, 0.0)
    assert tight < start * 283.15 / 293.15 * 0.985


def test_hose_volume_is_that_of_a_cylinder():
    assert gas_leak.hose_volume(0.006, 4.0) * 1000 == pytest.approx(0.1131, abs=1e-4)  # by hand
    assert gas_leak.hose_volume(0.012, 4.0) == pytest.approx(4 * gas_leak.hose_volume(0.006, 4.0))


def test_leak_scales():
    base = gas_leak.leak_rate(0.02, 300.0, 290.0, 1.69, 3600.0)
    assert base == pytest.approx(0.02 * 10 / 1.69 / 3600)
    assert gas_leak.leak_rate(0.04, 300.0, 290.0, 1.69, 3600.0) == pytest.approx(2 * base)
    assert gas_leak.leak_rate(0.02, 300.0, 290.0, 1.69, 7200.0) == pytest.approx(base / 2)
    assert gas_leak.leak_rate(0.02, 290.0, 300.0, 1.69, 3600.0) == pytest.approx(-base)
    with pytest.raises(ranges.OutOfRange):
        gas_leak.leak_rate(0.02, math.nan, 290.0, 1.69, 3600.0)
