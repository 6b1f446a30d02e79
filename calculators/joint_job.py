"""A joint and the wire for it: what is laid down, what that takes, how far a spool goes."""

import math

from calculators import bead_travel, deposition, numerals, wire_mass
from calculators.contract import Measured, Plain
from calculators.facts import deposition as facts
from calculators.facts import wires
from calculators.joint_section import FILLETS, Section

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any


class JointJob:
    """The weld asked about, worked out from what is given: values by the names of the fields.

    `area` [m2] is laid down along a line, `each` [kg] is one plug or slot; `extent` [m] is the length of the weld or
    the depth of all plugs together, 0 if not known; `least` and `most` bound the metal against the middle.
    """

    def __init__(self, values: "dict[str, Any]", section: Section) -> None:
        self.values = values
        self.section = section
        low, self.overweld, high = self._overweld()
        self.area = section.area * self.overweld
        material = values["wire_material"]
        self.density, _ = wire_mass.density(material)
        self.gas: str = values.get("wire_and_gas") or dict(facts.USUAL_GAS)[material]
        self.efficiency, half_band = deposition.deposition_efficiency(self.gas)
        if "deposition_efficiency" in values:
            self.efficiency, half_band = values["deposition_efficiency"], 0.0
        self.least = low / self.overweld * self.efficiency / min(self.efficiency + half_band, 1.0)
        self.most = high / self.overweld * self.efficiency / (self.efficiency - half_band)
        self.waste = values.get("waste", wires.WASTE)
        self.factor = values.get("operating_factor", wires.OPERATING_FACTOR)
        self.per_length = deposition.deposit_per_length(self.area, self.density)
        self.each = self.per_length * section.depth
        if section.is_line():
            self.extent = values.get("weld_length", 0.0)
        else:
            self.extent = section.depth * values.get("weld_count", 1.0)
        self.deposit = self.per_length * self.extent
        self.wire = wire_mass.needed(deposition.wire_melted(self.deposit, self.efficiency), self.waste)
        self._run()

    def _overweld(self) -> tuple[float, float, float]:
        """Return the lowest, the usual and the highest ratio of metal laid down to metal drawn."""
        factor = self.values.get("overweld_factor")
        if factor is not None:
            return factor, factor, factor
        if self.section.bulge or self.section.size("reinforcement"):
            return facts.EXACT
        return facts.FILLET_OVERWELD if self.section.joint in FILLETS else facts.GROOVE_OVERWELD

    def _run(self) -> None:
        """Work out passes, and with a solid wire and its feed also rate, travel and times; None where not known."""
        largest = self.values.get("largest_bead")
        self.bead: float | None = None
        self.passes = 1
        if largest is not None and self.section.is_line():
            factor = self.overweld if self.section.joint in FILLETS else facts.FILLET_OVERWELD[1]
            self.bead = bead_travel.bead_area(largest, factor)
            self.passes = deposition.passes(self.area, self.bead)
        self.rate: float | None = None
        self.travel: float | None = None
        self.arc_time: float | None = None
        feed, diameter = self.values.get("wire_feed_speed"), self.values.get("wire_diameter")
        if self.gas in facts.CORED or feed is None or diameter is None:
            return
        self.rate = deposition.deposition_rate(feed, diameter, self.density, self.efficiency)
        if self.section.is_line():
            self.travel = bead_travel.travel_speed(feed, diameter, self.efficiency, self.area / self.passes)
        if self.extent:
            self.arc_time = deposition.arc_time(self.deposit, self.rate)
            self.clock_time = deposition.clock_time(self.arc_time, self.factor)

    def metal_on_hand(self) -> float:
        """Return the weld metal that the wire on hand gives, [kg]."""
        return wire_mass.usable(self.values["wire_mass"], self.waste) * self.efficiency

    def length_from_wire(self) -> float:
        """Return the length of weld that the wire on hand does, [m]."""
        return self.metal_on_hand() / self.per_length

    def count_from_wire(self) -> float:
        """Return how many whole plugs or slots the wire on hand fills."""
        return float(math.floor(numerals.settle(self.metal_on_hand() / self.each)))

    # ------------------------------------------------------------ the working, line by line

    def lines(self, solved_for: str | None) -> "list[tuple[str, dict[str, Any]]]":
        """Return the working after that of the section: (key, parameters)."""
        drawn, laid = self.section.shown_area(self.section.area), self.section.shown_area(self.area)
        found: list[tuple[str, dict[str, Any]]] = [
            ("overweld", {"drawn": drawn, "factor": Plain(self.overweld, 3), "area": laid}),
            self._metal_line(),
        ]
        if self.extent:
            found.append(self._wire_line(solved_for))
        if self.bead is not None:
            bead = self.section.shown_area(self.bead)
            found.append(("passes", {"area": laid, "bead": bead, "passes": self.passes}))
        if self.travel is not None:
            found.append(self._travel_line())
        if self.arc_time is not None:
            found.append(self._time_line())
        return found

    def _metal_line(self) -> "tuple[str, dict[str, Any]]":
        shown = {"area": Measured(self.area, "bead_area", 4, "mm2"), "density": Plain(self.density, 4)}
        if self.section.is_line():
            shown["si"] = Measured(self.per_length, "mass_per_length", 4, "kg/m")
            shown["us"] = Measured(self.per_length, "mass_per_length", 4, "lb/ft")
            return "deposit", shown
        shown["depth"] = Measured(self.section.depth, "joint_size", 4, "mm")
        shown["each"] = Measured(self.each, "wire_mass", 4, "kg")
        return "each", shown

    def _wire_line(self, solved_for: str | None) -> "tuple[str, dict[str, Any]]":
        shown = {
            "deposit": Measured(self.deposit, "wire_mass", 4, "kg"),
            "each": Measured(self.each, "wire_mass", 4, "kg"),
            "per_length": Measured(self.per_length, "mass_per_length", 4, "kg/m"),
            "efficiency": Plain(self.efficiency, 3),
            "waste": Plain(self.waste * 100.0, 3),
            "wire": Measured(self.wire, "wire_mass", 4, "kg"),
        }
        if solved_for == "weld_length":
            shown["length"] = Measured(self.extent, "weld_length", 4, "m")
            return "length", shown
        return "count" if solved_for == "weld_count" else "wire", shown

    def _travel_line(self) -> "tuple[str, dict[str, Any]]":
        diameter = self.values["wire_diameter"]
        return "travel", {
            "feed": Measured(self.values["wire_feed_speed"], "wire_feed_speed", 4, "mm/s"),
            "wire": Measured(0.25 * math.pi * diameter * diameter, "bead_area", 4, "mm2"),
            "efficiency": Plain(self.efficiency, 3),
            "bead": Measured(self.area / self.passes, "bead_area", 4, "mm2"),
            "speed": Measured(self.travel or 0.0, "travel_speed", 4, "mm/s"),
        }

    def _time_line(self) -> "tuple[str, dict[str, Any]]":
        return "time", {
            "deposit": Measured(self.deposit, "wire_mass", 4, "kg"),
            "rate": Measured(self.rate or 0.0, "deposition_rate", 4, "kg/h"),
            "time": Measured(self.arc_time or 0.0, "arc_time", 4, "min"),
            "factor": Plain(self.factor * 100.0, 3),
            "clock": Measured(self.clock_time, "arc_time", 4, "min"),
        }
