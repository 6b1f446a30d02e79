"""What wire comes on: spools by their standard sizes, and what a package holds. Standing beside each."""

from calculators import units


def _pounds(low: float, high: float) -> tuple[float, float]:
    return units.to_coherent(low, "lb"), units.to_coherent(high, "lb")


# Spools of EN ISO 544 by name: (name, diameter over the rims [m], width over the rims [m]). From memory. Second route,
# seen: MIL-E-23765B has small spools with 4 in rims and large ones with 12 in. The barrel is not in the standard.
SPOOLS = (("s100", 0.100, 0.045), ("s200", 0.200, 0.055), ("s300", 0.300, 0.103), ("s350", 0.350, 0.103))
RIM = 3.0e-3  # thickness of one rim; from memory [m]
WIDTH_BAND = 3.0e-3  # by which the width between the rims may then be out; from memory [m]

# Net mass of wire in a full package: (package, (lowest, highest) [kg]). Steel: common practice; a drum from memory.
# Second routes, seen: MIL-W-10430D, small spools 2 1/2 lb or less; MIL-E-23765B, coils of 65 lb and under.
PACKAGES = (
    ("small", _pounds(1.0, 2.5)),
    ("medium", _pounds(10.0, 15.0)),
    ("large", _pounds(25.0, 35.0)),
    ("coil", _pounds(50.0, 60.0)),
    ("drum", _pounds(250.0, 600.0)),
)
# Aluminum on the same spools; from memory.
ALUMINUM_PACKAGES = (("small", _pounds(0.5, 1.0)), ("medium", _pounds(4.0, 5.0)), ("large", _pounds(16.0, 20.0)))
