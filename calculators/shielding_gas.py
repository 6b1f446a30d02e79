"""Which shielding gas: the fields every question about the arc asks, and their words."""

from calculators.contract import Choice, Given, Quantity

MIXED = "argon-carbon-dioxide"
TAKEN = 0.25  # share of carbon dioxide where the mix is not told: the everyday 75/25; common practice

FIELDS = (
    Choice("gas", (MIXED, "argon-oxygen", "argon", "carbon-dioxide", "helium-mix"), default=MIXED),
    Quantity(
        "carbon_dioxide",
        "percentage",
        optional=True,
        when=("gas", (MIXED,)),
        hint=True,
        low=0.01,
        high=60.0,
        presets=("25 %", "20 %", "18 %", "15 %", "10 %", "8 %", "5 %"),
    ),
)


class ShieldingGas:
    """The gas that was chosen: its `word` and its `share` of carbon dioxide; a mix not told is 75/25."""

    def __init__(self, given: Given) -> None:
        self.word = given.word("gas")
        if self.word == MIXED and not given.has("carbon_dioxide"):
            given.fill("carbon_dioxide", TAKEN)
        self.share = given.number("carbon_dioxide") if self.word == MIXED else TAKEN

    def carried(self, given: Given) -> list[tuple[str, object]]:
        """Return the gas as a next question takes it."""
        found: list[tuple[str, object]] = [("gas", self.word)]
        if self.word == MIXED:
            found.append(("carbon_dioxide", given.measured("carbon_dioxide", "percentage")))
        return found


ENGLISH = {
    "field.gas": "Gas",
    "option.gas.argon-carbon-dioxide": "Argon with carbon dioxide",
    "option.gas.argon-oxygen": "Argon with up to 5 % oxygen",
    "option.gas.argon": "Argon",
    "option.gas.carbon-dioxide": "Carbon dioxide alone",
    "option.gas.helium-mix": "Helium mix (90 % He)",
    "field.carbon_dioxide": "Carbon dioxide in the mix",
    "hint.carbon_dioxide": "Blank takes 25 %.",
}
