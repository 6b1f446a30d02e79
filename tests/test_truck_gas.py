"""The gas on the truck: what is taken where none is told, and which of position, gas and thickness is said first."""

import pytest

from calculators import asking, transfer_mode
from calculators.truck_gas import TruckGas

MIX = "argon-carbon-dioxide"


def gas(metal, **typed):
    return TruckGas(asking.ask(transfer_mode.CALCULATOR, list(typed.items())).given, metal)


@pytest.mark.parametrize(
    ("metal", "mode", "share", "thickness", "position", "word"),
    [
        # No other gas lets spray or big drops stay up overhead, or makes downhill sound: the position is said first.
        ("mild-steel", "spray", "25 %", 10e-3, "overhead", "position"),
        ("mild-steel", "spray", "25 %", 10e-3, "vertical-down", "position"),
        ("mild-steel", "globular", "10 %", 10e-3, "overhead", "position"),
        ("aluminum", "globular", "", 10e-3, "vertical-down", "vertical-down"),
        # The gas before the thickness.
        ("mild-steel", "spray", "25 %", 10e-3, "flat", "no-spray"),
        ("mild-steel", "spray", "25 %", 1e-3, "flat", "no-spray"),
        ("mild-steel", "globular", "10 %", 10e-3, "flat", "no-globular"),
        ("mild-steel", "spray", "10 %", 10e-3, "flat", "serves"),
        ("mild-steel", "spray", "10 %", 1e-3, "flat", "thin"),
        ("mild-steel", "globular", "25 %", 10e-3, "flat", "serves"),
    ],
)
def test_what_a_mode_is_refused_for(metal, mode, share, thickness, position, word):
    typed = {"gas": MIX, "carbon_dioxide": share} if share else {"gas": "argon"}
    assert gas(metal, **typed).fit(mode, thickness, position) == word
