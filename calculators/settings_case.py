"""What the truck can do on this joint: each transfer mode is tried, with its current, voltage and feed or its problem."""

import math

from calculators import machine_fields, numerals, ranges, starting_current, transfer_limits, voltage_lines
from calculators.contract import Given
from calculators.facts import settings as facts
from calculators.facts import transfer
from calculators.melting_law import MeltingLaw
from calculators.ranges import OutOfRange
from calculators.shielding_gas import MIXED
from calculators.truck_gas import TruckGas

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    Problem = tuple[str, str]  # (field at fault, id of the refusal)


class Trial:
    """One transfer mode on this metal, wire, gas and machine, all in coherent SI.

    `problem` is None where it can be run; then `current`, `voltage`, `feed` and `distance` are where to start,
    each with a band. `doubts` are what may still go wrong, the worst first.
    """

    def __init__(self, given: Given, mode: str) -> None:
        self.given = given
        self.mode = mode
        self.metal = given.word("wire_material")
        self.thickness = given.number("thickness")
        self.position = given.word("position")
        self.diameter = given.number("wire_diameter")
        self.gas = TruckGas(given, self.metal)
        self.doubts: list[str] = []
        self.wanted = starting_current.wanted_current(self.metal, self.thickness, self.position)
        self.law = self._law()
        self.lowest = self.highest = 0.0
        self.held_by = "wire_diameter"  # the field that holds the current down
        self.raised_by = "wire_diameter"  # and the one that holds it up
        self.problem: Problem | None = (
            self._fit() or self._reach() or self._machine() or self._load() or self._voltage()
        )

    def _law(self) -> MeltingLaw:
        values: dict[str, Any] = {"wire_material": self.metal, "wire_diameter": self.diameter}
        values["filler_alloy"] = self.given.word("filler_alloy")
        if self.mode != "globular":
            values["transfer_mode"] = self.mode
        for name in machine_fields.TRIM:
            if self.given.has(name):
                values[name] = self.given.values[name]
        return MeltingLaw(values)

    # ------------------------------------------------------------ may it be run here at all

    def _fit(self) -> "Problem | None":
        word = self.gas.fit(self.mode, self.thickness, self.position)
        if word in ("position", "vertical-down"):
            return "position", word
        if word in ("no-spray", "no-globular"):
            return ("gas" if word == "no-spray" else "transfer_mode"), word
        if word in ("thin", "thick"):
            return "thickness", word
        if word == "cold-lap":
            self.doubts.append(word)
        return None

    # ------------------------------------------------------------ currents

    def _reach(self) -> "Problem | None":
        """Find the currents of this wire in this mode, and a stick-out at which the melting law knows them."""
        short = transfer_limits.short_circuit_currents(self.metal, self.diameter, self.position)
        top = transfer.MOST_SHORT_CIRCUIT if short is None else short[1]
        if self.mode == "short-circuit":
            if short is None:
                return "wire_diameter", "no-short"
            self.lowest = short[0]
        elif self.mode == "globular":
            self.lowest = top * (1.0 + transfer.BEYOND_SHORT_CIRCUIT)
        else:
            transition = self._transition()
            if transition is None:
                return "wire_diameter", "no-spray-wire"
            self.lowest = transition[2]
        self._stick_out()
        least, limit = self.law.current_limits(self.extension)
        self.lowest = max(self.lowest, least)
        self.highest = min(top, limit) if self.mode == "short-circuit" else limit
        return ("gas", "out-of-reach") if ranges.above(self.lowest, self.highest) else None

    def _stick_out(self) -> None:
        """Take the usual stick-out, or less where the wire would be near melting before it meets the arc."""
        near, usual, _ = self.law.usual_distances()
        self.distance = usual
        for distance in (usual, (near + usual) / 2.0):
            if not ranges.above(facts.ROOM * self.lowest, self.law.current_limits(self.law.extension(distance))[1]):
                self.distance = distance
                break
        self.extension = self.law.extension(self.distance)

    def _transition(self) -> tuple[float, float, float] | None:
        try:
            return transfer_limits.transition_current(self.metal, self.diameter, self.gas.word, self.gas.share)
        except OutOfRange:
            return None  # no figures for a wire this thin

    def _machine(self) -> "Problem | None":
        """Keep the current within what the machine gives."""
        for field, is_most in (("largest_current", True), ("largest_feed", True), ("least_feed", False)):
            if not self.given.has(field):
                continue
            bound = self.given.number(field)
            if field != "largest_current":
                bound = self.law.current(bound, self.extension)
            if is_most and ranges.above(self.highest, bound):
                self.highest, self.held_by = bound, field
            if not is_most and ranges.above(bound, self.lowest):
                self.lowest, self.raised_by = bound, field
        if ranges.above(self.lowest, self.highest):
            return (self.held_by if self.raised_by == "wire_diameter" else self.raised_by), "machine"
        return None

    def _load(self) -> "Problem | None":
        """Choose the current: what the metal wants, as far as wire and machine let it."""
        wanted = self.wanted[1]
        if ranges.above(self.lowest, facts.TOO_HOT * wanted):
            return self.raised_by, "too-hot"
        if ranges.above(facts.TOO_COLD * wanted, self.highest):
            return self.held_by, "too-cold"
        if ranges.above(self.lowest, facts.HOT * wanted):
            self.doubts.append("hot")
        if ranges.above(facts.COLD * wanted, self.highest):
            self.doubts.append("cold")
        self.current = _whole(min(max(wanted, self.lowest), self.highest), self.lowest, self.highest)
        self.currents = (
            # A whole ampere may lie a last bit beyond an end that is one.
            min(self.current, max(self.lowest, min(self.wanted[0], self.current / facts.ROOM))),
            max(self.current, min(self.highest, max(self.wanted[2], self.current * facts.ROOM))),
        )
        half = self.law.half_band
        self.feed = self.law.feed(self.current, self.extension)
        # Feeds of real arcs at this same current, so that a current held down by wire or machine narrows no band.
        self.feeds = (self.feed * (1.0 - half), self.feed * (1.0 + half))
        return None

    def chosen_by(self) -> str:
        """Return what decided the current: the metal, or the end of what wire or machine carry."""
        if ranges.above(self.wanted[1], self.highest):
            return "wire" if self.held_by == "wire_diameter" else "machine"
        if not ranges.above(self.lowest, self.wanted[1]):
            return "metal"
        return "spray" if self.mode == "spray" else "least"

    # ------------------------------------------------------------ voltage

    def _voltage(self) -> "Problem | None":
        usual = voltage_lines.usual_voltage(
            self.metal, self.gas.word, self.mode, self.current, self.diameter, self.gas.share
        )
        assert usual is not None  # the gases of which no line is known were refused
        self.drop = self.given.number("lead_voltage_drop") if self.given.has("lead_voltage_drop") else 0.0
        self.voltages = usual
        self.voltage = usual[1]
        if self.given.has("largest_voltage"):
            most = self.given.number("largest_voltage") - self.drop
            # With fewer volts than usual globular begins to short.
            if ranges.above(usual[1] if self.mode == "globular" else usual[0], most):
                return "largest_voltage", "too-few-volts"
            self.voltage = min(self.voltage, most)
        if self.given.has("least_voltage"):
            least = self.given.number("least_voltage") - self.drop
            if ranges.above(least, usual[2]):
                return "least_voltage", "too-many-volts"
            self.voltage = max(self.voltage, least)
        return None


def _whole(current: float, lowest: float, highest: float) -> float:
    """Return the nearest whole ampere within the limits, since nobody reads less off a meter."""
    whole = math.floor(numerals.settle(current) + 0.5)
    whole = max(whole, math.ceil(numerals.settle(lowest)))
    whole = min(whole, math.floor(numerals.settle(highest)))
    return current if ranges.above(lowest, whole) else float(whole)


class Truck:
    """What was asked, with the gas that goes with the metal where none was chosen, and the modes tried with it."""

    def __init__(self, given: Given) -> None:
        self.asked = given
        gas = TruckGas(given, given.word("wire_material"))
        if not gas.told:
            self.asked = Given()
            self.asked.values, self.asked.units = dict(given.values), given.units
            self.asked.typed, self.asked.made = given.typed, list(given.made)
            self.asked.fill("gas", gas.word)
            if gas.word == MIXED:
                self.asked.fill("carbon_dioxide", gas.share)

    def trials(self) -> "list[Trial]":
        """Return the modes worth trying, the likeliest first; the first without a problem is the one to set."""
        given = self.asked
        wanted = given.word("transfer_mode")
        if wanted:
            return [Trial(given, wanted)]
        if given.word("wire_material") == "aluminum":
            return [Trial(given, "spray")]
        thick = not ranges.above(transfer.COLD_LAP_FROM, given.number("thickness"))
        modes = ("spray", "short-circuit") if thick else ("short-circuit", "spray")
        trials = [Trial(given, mode) for mode in modes]
        if trials[0].problem is None and "hot" in trials[0].doubts and trials[1].problem is None:
            trials.reverse()  # a wire that has to be pushed through thin plate is not the first choice
        return trials
