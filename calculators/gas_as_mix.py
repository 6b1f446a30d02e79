"""The shielding gas of a question as fractions by volume, with its density and viscosity."""

from calculators.contract import Given, Quantity
from calculators.gas_mixture import mixture_density, mixture_viscosity
from calculators.shielding_gas import MIXED, TAKEN

CARBON_DIOXIDE = "carbon-dioxide"
HELIUM_MIX = "helium-mix"
HELIUM = Quantity(
    "helium",
    "percentage",
    optional=True,
    when=("gas", (HELIUM_MIX,)),
    hint=True,
    low=1.0,
    presets=("25 %", "50 %", "75 %", "100 %"),
)
_OXYGEN = 0.02  # argon with oxygen is mostly 98/2; 5 % moves the density by half a percent
_TRI_MIX = (0.075, 0.025, 0.0, 0.90, 0.0, 0.0)  # the mix for stainless, where the helium is not told


class GasAsMix:
    """What was chosen: its `mix`, its density at 15 degC and 1 atm, and its viscosity."""

    def __init__(self, given: Given) -> None:
        self.mix = self._of(given)
        self.density = mixture_density(self.mix)
        self.viscosity = mixture_viscosity(self.mix)

    def _of(self, given: Given) -> tuple[float, ...]:
        word = given.word("gas")
        if word == MIXED:
            share = given.number("carbon_dioxide") if given.has("carbon_dioxide") else TAKEN
            return (1.0 - share, share, 0.0, 0.0, 0.0, 0.0)
        if word == CARBON_DIOXIDE:
            return (0.0, 1.0, 0.0, 0.0, 0.0, 0.0)
        if word == HELIUM_MIX:
            if not given.has("helium"):
                return _TRI_MIX
            helium = given.number("helium")
            return (1.0 - helium, 0.0, 0.0, helium, 0.0, 0.0)
        oxygen = _OXYGEN if word == "argon-oxygen" else 0.0
        return (1.0 - oxygen, 0.0, oxygen, 0.0, 0.0, 0.0)


ENGLISH = {
    "option.gas.helium-mix": "Helium mix",
    "field.helium": "Helium in the mix, with argon",
    "hint.helium": "Blank takes 90 helium, 7.5 argon, 2.5 carbon dioxide.",
}
