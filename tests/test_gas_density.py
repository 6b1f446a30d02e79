"""The pressure for a density: where the question ends."""

import pytest

from calculators import ranges
from calculators.gas_density import HIGHEST_PRESSURE, density, pressure_for_density

pytestmark = pytest.mark.quick


@pytest.mark.parametrize("mix", (0.0, 0.25))
def test_no_density_is_no_pressure_and_the_highest_density_the_highest_pressure(mix):
    assert pressure_for_density(0.0, 288.15, mix) == pytest.approx(0.0, abs=1e-3)
    highest = density(HIGHEST_PRESSURE, 288.15, mix)
    assert pressure_for_density(highest, 288.15, mix) == pytest.approx(HIGHEST_PRESSURE, rel=1e-9)


@pytest.mark.parametrize("share", (-0.01, 1.001))
def test_a_density_no_pressure_gives_is_refused(share):
    highest = density(HIGHEST_PRESSURE, 288.15, 0.18)
    with pytest.raises(ranges.OutOfRange) as refused:
        pressure_for_density(highest * share, 288.15, 0.18)
    assert (refused.value.name, refused.value.low, refused.value.unit) == ("density_wanted", 0.0, "kg/m3")
    assert refused.value.high == pytest.approx(highest)
