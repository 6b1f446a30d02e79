"""A cylinder down to a reserve: the three questions are one relation, and no size answers at the reserve itself."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calculators import ranges, usable_gas

pytestmark = pytest.mark.quick

RESERVES = st.floats(0.0, 20e5)
RISES = st.floats(1e5, 200e5)  # from the reserve to the start
SIZES = st.floats(0.001, 0.1)
MIXES = st.sampled_from((0.0, 0.10, 0.25))


@given(RESERVES, RISES, SIZES, MIXES)
def test_pressure_and_size_are_found_again_from_the_gas_they_give(reserve, rise, size, mix):
    gas = usable_gas.usable_gas_volume(size, reserve + rise, reserve, 288.15, mix)
    assert usable_gas.pressure_to_start(gas, size, reserve, 288.15, mix) == pytest.approx(reserve + rise, rel=1e-6)
    assert usable_gas.water_volume_needed(gas, reserve + rise, reserve, 288.15, mix) == pytest.approx(size, rel=1e-9)


@pytest.mark.parametrize("above", (0.0, 0.5))
def test_no_size_is_large_enough_at_the_reserve_itself(above):
    with pytest.raises(ranges.OutOfRange) as refused:
        usable_gas.water_volume_needed(1.0, 14e5 + above, 14e5, 288.15, 0.0)
    kept = refused.value
    assert (kept.name, kept.low, kept.high, kept.unit) == ("cylinder_pressure", 14e5 + 1.0, None, "Pa")


def test_a_pascal_above_the_reserve_has_an_answer():
    assert usable_gas.water_volume_needed(0.0, 14e5 + 1.0, 14e5, 288.15, 0.0) == 0.0
    assert usable_gas.water_volume_needed(1e-6, 14e5 + 1.0, 14e5, 288.15, 0.0) > 0.0


def test_gas_no_gauge_pressure_gives_is_refused():
    most = usable_gas.usable_gas_volume(0.05, 300e5, 14e5, 288.15, 0.0)
    with pytest.raises(ranges.OutOfRange) as refused:
        usable_gas.pressure_to_start(most * 1.001, 0.05, 14e5, 288.15, 0.0)
    kept = refused.value
    assert (kept.name, kept.low, kept.unit) == ("gas_volume", 0.0, "m3")
    assert kept.high == pytest.approx(most)


def test_no_gas_needs_no_more_than_the_reserve():
    assert usable_gas.pressure_to_start(0.0, 0.05, 14e5, 288.15, 0.0) == pytest.approx(14e5, abs=1.0)
