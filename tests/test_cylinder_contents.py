"""What a cylinder holds: the laws of Boyle and Charles, and where each question ends."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calculators import cylinder_contents, ranges
from calculators.cylinder_contents import ideal_gas_volume_in_cylinder, pressure_for_gas_volume

pytestmark = pytest.mark.quick

ATMOSPHERE = 101325.0  # [Pa]
FIFTEEN = 288.15  # [K], 15 degC


@given(st.floats(0.001, 1.0), st.floats(1.0, 200.0), st.floats(253.15, 323.15))
def test_an_ideal_gas_grows_with_pressure_and_shrinks_with_warmth(size, atmospheres, temperature):
    """Boyle and Charles. Standing: law."""
    volume = ideal_gas_volume_in_cylinder(size, atmospheres * ATMOSPHERE, temperature)
    assert volume == pytest.approx(size * atmospheres * FIFTEEN / temperature, rel=1e-12)


def test_an_ideal_gas_is_asked_from_no_pressure_to_the_highest_gauge():
    assert ideal_gas_volume_in_cylinder(0.05, 0.0, FIFTEEN) == 0.0
    assert ideal_gas_volume_in_cylinder(0.05, 300e5 + ATMOSPHERE, FIFTEEN) > 14.0
    for pressure in (-1.0, 300e5 + ATMOSPHERE + 1.0):
        with pytest.raises(ranges.OutOfRange) as refused:
            ideal_gas_volume_in_cylinder(0.05, pressure, FIFTEEN)
        assert (refused.value.name, refused.value.unit) == ("pressure_absolute", "Pa")


@pytest.mark.parametrize("share", (-0.01, 1.001))
def test_gas_no_pressure_holds_is_refused_by_its_own_name(share):
    most = cylinder_contents.gas_volume_in_cylinder(0.05, 300e5 + ATMOSPHERE, FIFTEEN, 0.0)
    with pytest.raises(ranges.OutOfRange) as refused:
        pressure_for_gas_volume(most * share, 0.05, FIFTEEN, 0.0)
    assert (refused.value.name, refused.value.low, refused.value.unit) == ("gas_volume", 0.0, "m3")
    assert refused.value.high == pytest.approx(most)
