"""The fillet weld that was asked about: what is known of it, what follows from it, which rule governs."""

import math

from calculators import fillet_legs, fillet_strength, numerals
from calculators.contract import Given
from calculators.facts import fillet_rules as facts

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

ALLOWABLE = "allowable-strength"
RESISTANCE = "load-and-resistance-factor"
EUROCODE = "eurocode"

_SQUARE_ACROSS = math.pi / 2.0
_MILLIMETRE = 0.001


class Rule:
    """One code's stress on the throat for these `values` (of fields, by name), and what a gap takes of the leg."""

    def __init__(self, values: "dict[str, Any]") -> None:
        self.method: str = values["method"]
        self.eurocode = self.method == EUROCODE
        self.increase_counted = values.get("directional_increase") == "on"
        self.load_angle: float = values["load_angle"] if self.increase_counted else 0.0
        self.gap: float = values.get("root_gap") or 0.0
        self.taken = fillet_legs.gap_taken_from_leg(self.gap)
        self.electrode_strength = dict(facts.ELECTRODE_STRENGTHS)[values["electrode_strength"]]
        self.ultimate_strength: float | None = values.get("ultimate_strength")
        self.correlation_factor = dict(facts.CORRELATION_FACTORS).get(values.get("steel") or "")
        if self.ultimate_strength is None:
            for name, _, ultimate in facts.STEELS:
                if name == values.get("steel"):
                    self.ultimate_strength = ultimate

    def increase(self, load_angle: float) -> float:
        """Return the factor for a force at this angle to the weld."""
        if self.eurocode:
            return fillet_strength.directional_increase_eurocode(load_angle)
        return fillet_strength.directional_increase(load_angle)

    def stress(self, increase: float) -> float:
        """Return the stress that the throat may carry, [Pa]."""
        if self.eurocode:
            assert self.ultimate_strength is not None and self.correlation_factor is not None
            return fillet_strength.eurocode_weld_stress(self.ultimate_strength, self.correlation_factor, increase)
        if self.method == RESISTANCE:
            return fillet_strength.design_weld_stress(self.electrode_strength, increase)
        return fillet_strength.allowable_weld_stress(self.electrode_strength, increase)

    def counted_stress(self) -> float:
        """Return the stress with the increase only if it was turned on, [Pa]."""
        return self.stress(self.increase(self.load_angle))

    def carried(self, leg: float) -> float:
        """Return what a weld with this leg, the gap's share already taken off, carries, [N/m]."""
        return self.counted_stress() * fillet_legs.throat_of_leg(leg)

    def leg_for(self, force: float) -> float:
        """Return the leg to lay for this force for each length, the gap's share added, [m]."""
        return fillet_legs.leg_of_throat(force / self.counted_stress()) + self.taken


class Weld(Rule):
    """The weld, the parts it joins and the force on it, as far as they are known; coherent SI."""

    def __init__(self, given: Given) -> None:
        super().__init__(given.values)
        self.given = given
        self.thickness = self._known("thickness")
        self.lap = given.word("joint") == "lap"
        self.edge = self._known("edge_thickness") or self.thickness
        self.leg = self._known("leg")
        self.solved_leg = given.solved_for == "leg"
        self.force = None if given.solved_for == "force_per_length" else self._known("force_per_length")
        self.judged = self.force is not None and not self.solved_leg
        self.effective_leg = None if self.leg is None else self.leg - self.taken
        self.weld_lines = 2 if given.word("sides") == "both" else 1
        self.metal = self._metal()
        self.least = self._least()
        self.largest = None
        if self.lap and self.edge is not None and not self.eurocode:
            self.largest = fillet_legs.largest_leg_along_edge(self.edge)
        self.least_governs = False
        self.too_small = False
        if self.effective_leg is not None:
            under = self.least is not None and _above(self.least, self.effective_leg)
            self.least_governs = under and self.solved_leg
            self.too_small = under and not self.solved_leg
        self.strength = 0.0 if self.effective_leg is None else self.carried(self.effective_leg)

    def _known(self, name: str) -> float | None:
        return self.given.number(name) if self.given.has(name) else None

    def _least(self) -> float | None:
        if self.eurocode:
            return fillet_legs.leg_of_throat(facts.LEAST_THROAT)
        return None if self.thickness is None else fillet_legs.least_leg(self.thickness)

    def _metal(self) -> float | None:
        """Return what the thinner part carries for each of its weld lines, [N/m], or None if too little is known."""
        self.yield_strength = self._known("yield_strength")
        if self.yield_strength is None:
            for name, yielding, _ in facts.STEELS:
                if name == self.given.word("steel"):
                    self.yield_strength = yielding
        if self.thickness is None or self.yield_strength is None or self.ultimate_strength is None:
            return None
        if self.eurocode:
            whole = fillet_strength.eurocode_metal_strength(self.thickness, self.yield_strength)
        elif self.method == RESISTANCE:
            whole = fillet_strength.design_metal_strength(self.thickness, self.yield_strength, self.ultimate_strength)
        else:
            whole = fillet_strength.allowable_metal_strength(
                self.thickness, self.yield_strength, self.ultimate_strength
            )
        return whole / self.weld_lines

    def least_laid(self) -> float:
        """Return the smallest leg the code asks for, the gap's share added, [m]."""
        assert self.least is not None
        return self.least + self.taken

    def leg_to_lay(self) -> float:
        """Return the leg that was typed, or else the one that strength and the smallest size ask for, [m]."""
        if self.leg is None or self.least_governs:
            return self.least_laid()
        return self.leg

    def size_up(self, leg: float) -> tuple[int, float]:
        """Return the next size on a drawing as a count and in [m]: sixteenths of an inch, or millimetres."""
        step = _MILLIMETRE if self.eurocode else facts.SIXTEENTH
        count = math.ceil(numerals.settle(leg / step))
        return count, count * step

    def shortest_length(self) -> float:
        """Return the shortest length that counts, [m]."""
        leg = self.leg_to_lay() - self.taken
        if self.eurocode:
            return fillet_legs.shortest_length_eurocode(fillet_legs.throat_of_leg(leg))
        return fillet_legs.shortest_length(leg)

    def increase_across(self) -> float:
        """Return the factor that the code would allow for a force square across."""
        return self.increase(_SQUARE_ACROSS)

    def strength_across(self) -> float:
        """Return what the weld would carry with that factor, [N/m]."""
        assert self.effective_leg is not None
        return self.stress(self.increase_across()) * fillet_legs.throat_of_leg(self.effective_leg)


def _above(value: float, limit: float) -> bool:
    return numerals.settle(value) > numerals.settle(limit)
