"""The gas in a cylinder: the fields that gas-supply and leak-test ask, and what the density functions take."""

from calculators.contract import Choice, Given, Message, Quantity, Refusal
from calculators.gas_density import CARBON_DIOXIDE, HIGHEST_CARBON_DIOXIDE_FRACTION
from calculators.shielding_gas import MIXED

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

HELIUM_MIX = "helium-mix"
NITROGEN = "nitrogen"
LIQUID = "carbon-dioxide"
COMPRESSED = (MIXED, "argon", "argon-oxygen", HELIUM_MIX, NITROGEN)
TAKEN_HELIUM = 0.90  # the mix for stainless; its 2.5 % of carbon dioxide counts as argon

GAS = Choice("gas", COMPRESSED + (LIQUID,), default=MIXED)
SHARES = (
    Quantity(
        "carbon_dioxide",
        "percentage",
        when=("gas", (MIXED,)),
        high=HIGHEST_CARBON_DIOXIDE_FRACTION * 100.0,
        presets=("25 %", "20 %", "18 %", "15 %", "10 %", "8 %", "5 %"),
    ),
    Quantity(
        "helium", "percentage", optional=True, when=("gas", (HELIUM_MIX,)), hint=True, presets=("25 %", "75 %", "100 %")
    ),
)


class CylinderGas:
    """The compressed gas that was chosen: the `fraction` of its `second` gas, the rest being argon."""

    def __init__(self, values: "dict[str, Any]") -> None:
        word = values["gas"]
        self.second = CARBON_DIOXIDE
        self.fraction: float = values["carbon_dioxide"] if word == MIXED else 0.0
        if word == HELIUM_MIX:
            self.second, self.fraction = "helium", values["helium"]
        elif word == NITROGEN:
            self.second, self.fraction = "nitrogen", 1.0

    @staticmethod
    def fill(given: Given, refusal: Message) -> None:
        """Fill in the helium of a mix; refuse 75/25 typed as a fraction, which would be read as 3."""
        for name in ("carbon_dioxide", "helium"):
            if "/" in given.typed.get(name, ""):
                raise Refusal(name, refusal)
        if given.word("gas") == HELIUM_MIX and not given.has("helium"):
            given.fill("helium", TAKEN_HELIUM)


ENGLISH = {
    "field.gas": "Gas",
    "option.gas.argon-carbon-dioxide": "Argon with carbon dioxide",
    "option.gas.argon": "Argon",
    "option.gas.argon-oxygen": "Argon with up to 5 % oxygen",
    "option.gas.helium-mix": "Helium with argon",
    "option.gas.nitrogen": "Nitrogen",
    "option.gas.carbon-dioxide": "Carbon dioxide alone",
    "field.carbon_dioxide": "Carbon dioxide in the mix",
    "range.carbon_dioxide": "in a richer mix some of it can be liquid, and pressure no longer tells the amount",
    "field.helium": "Helium in the mix",
    "hint.helium": "Blank takes 90 %, as in the mix for stainless.",
    "refusal.mix": "Type the carbon dioxide or the helium alone: 25 for 75/25",
    "field.cylinder": "Cylinder",
    "option.cylinder.other": "I know its water volume",
    "option.cylinder.40-ft3": "40 ft³ (8 L)",
    "option.cylinder.80-ft3": "80 ft³ (15.5 L)",
    "option.cylinder.125-ft3": "125 ft³ (21.5 L)",
    "option.cylinder.150-ft3": "150 ft³ (29 L)",
    "option.cylinder.250-ft3": "250 ft³ (43 L)",
    "option.cylinder.330-ft3": "330 ft³ (49 L)",
    "option.cylinder.5-litre": "5 L",
    "option.cylinder.10-litre": "10 L",
    "option.cylinder.20-litre": "20 L",
    "option.cylinder.50-litre": "50 L",
    "field.cylinder_water_volume": "Water volume",
    "hint.cylinder_water_volume": "Stamped on the shoulder. Or choose the size above.",
}
