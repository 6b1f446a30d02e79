"""The gas on the truck at the arc: the usual one where none was chosen, which metal it spoils, which mode it lets serve.

Settings, transfer-mode and process-choice all ask here, so that they cannot disagree.
"""

from calculators import ranges, transfer_limits
from calculators.contract import Given
from calculators.facts import transfer
from calculators.shielding_gas import MIXED, TAKEN, ShieldingGas


class TruckGas(ShieldingGas):
    """The gas chosen, or the one that goes with the metal where none was; `told` says whether one was."""

    def __init__(self, given: Given, metal: str) -> None:
        self.metal = metal
        self.told = bool(given.word("gas"))
        if self.told:
            super().__init__(given)
        else:
            self.word = "argon" if metal == "aluminum" else MIXED
            self.share = transfer.STAINLESS_TAKEN if metal == "stainless" else TAKEN

    def problem(self) -> str:
        """Return the id of why this gas does not go with the metal, or nothing."""
        if self.metal == "aluminum":
            return "" if self.word == "argon" else "aluminum-gas"
        if self.metal == "mild-steel":
            return "steel-" + self.word if self.word in ("argon", "helium-mix") else ""
        if self.word in ("argon-oxygen", "helium-mix"):
            return ""
        most = dict(transfer.MOST_CARBON_DIOXIDE)[self.metal]
        return "stainless-gas" if self.word != MIXED or ranges.above(self.share, most) else ""

    def sprays(self) -> bool:
        """Return whether the gas lets wire of this metal spray."""
        return transfer_limits.sprays(self.metal, self.word, self.share)

    def fit(self, mode: str, thickness: float, position: str) -> str:
        """Return whether a mode serves with this gas: the word of `transfer_limits.fit`, or what the gas forbids."""
        word = transfer_limits.fit(mode, self.metal, thickness, position)
        if word not in ("position", "vertical-down"):
            if mode == "spray" and not self.sprays():
                return "no-spray"
            if mode == "globular" and self.sprays():
                return "no-globular"
        return word


ENGLISH = {
    "refusal.aluminum-gas": "Carbon dioxide, oxygen and helium mix for stainless spoil aluminum. Argon is what does it",
    "refusal.steel-argon": "Pure argon on steel wanders and undercuts. Take 75/25 for short-circuit, argon with at most 20 % CO₂ for spray",
    "refusal.steel-helium-mix": "Nothing is known of this gas on mild steel. Take 75/25",
    "refusal.stainless-gas": "This gas leaves carbon in stainless, or is not used on it. Take argon with 2 % CO₂, or helium mix",
}
