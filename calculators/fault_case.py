"""A trouble and what was told of it: each cause is held against the numbers, and the causes are ranked."""

from calculators import conductors, machine_fields, ranges, starting_current, transfer_limits, voltage_lines
from calculators.contract import Given
from calculators.facts import conductors as leads
from calculators.facts import faults as facts
from calculators.facts import processes, settings, shielding, transfer, wires
from calculators.gas_as_mix import CARBON_DIOXIDE, GasAsMix
from calculators.melting_law import MeltingLaw
from calculators.nozzle_flow import most_flow, usual_flow
from calculators.ranges import OutOfRange
from calculators.shielding_gas import MIXED, ShieldingGas
from calculators.truck_gas import TruckGas

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

# What the numbers say of a cause: nothing else counts while it is so; they show it; they hint at it; they say
# nothing; they speak against it.
ROOT, SHOWN, HINTED, OPEN, CLEARED = 4, 3, 2, 1, 0
SOLID, CORED, SELF_SHIELDED = "solid", "flux-cored", "self-shielded"
_BELOW_SPRAY = "below-spray"
_OF_TRANSFER = (_BELOW_SPRAY, "short-circuit-thick", "downhill")


class Suspect:
    """A cause, what the numbers say of it, and the source that names it."""

    def __init__(self, cause: str, level: int, source: str) -> None:
        self.cause = cause
        self.level = level
        self.source = source


class Case:
    """What was told, coherent SI; `ranked` has the causes of this fault, the one to look at first in front.

    `unknown` says that nothing is known of a number that was told, so that it was not held against anything.
    """

    def __init__(self, given: Given) -> None:
        self.given = given
        self.fault = given.word("fault")
        self.metal = given.word("wire_material")
        self.kind = given.word("wire_kind")
        self.position = given.word("position") or "flat"
        self.unknown = False
        self._fill()
        self.gas = ShieldingGas(given)
        self.current = self._number("current")
        self.feed = self._number("wire_feed_speed")
        self.distance = self._number("contact_tip_to_work")
        self.thickness = self._number("thickness")
        self.law = self._law()
        self._melt()
        self.meter = self._number("machine_voltage")
        self.lost = self._lost()
        self.drops = transfer.LEADS_LOSE if self.lost is None else (self.lost, self.lost)
        self.drop = transfer.LEADS_TAKEN if self.lost is None else self.lost
        self.transition: tuple[float, float, float] | None = None
        self.surely = False  # spray volts, even after the most that leads lose
        self.mode = self._mode()
        self.usual = self._usual()
        self.wanted = self._wanted()
        self.ranked = self._ranked()

    def _number(self, field: str) -> float | None:
        return self.given.number(field) if self.given.has(field) else None

    def _fill(self) -> None:
        """Fill in what most trucks have where it is not told and plays a part."""
        given = self.given
        if self.kind != SELF_SHIELDED and not given.word("gas"):
            gas = TruckGas(given, self.metal)
            given.fill("gas", gas.word)
            if gas.word == MIXED:
                given.fill("carbon_dioxide", gas.share)
        arc = given.has("current") or given.has("wire_feed_speed")
        if arc and self.kind == SOLID and not given.has("wire_diameter"):
            given.fill("wire_diameter", settings.WIRE_DIAMETER)
        if given.has("gas_flow") and not given.has("nozzle_bore"):
            given.fill("nozzle_bore", facts.NOZZLE_BORE)

    # ------------------------------------------------------------ current and feed

    def _law(self) -> MeltingLaw | None:
        """Return the melting law of this wire; None for cored wire, and for one whose figures are not known."""
        given = self.given
        if self.kind != SOLID or not given.has("wire_diameter"):
            return None
        values: dict[str, Any] = {"wire_material": self.metal, "wire_diameter": given.number("wire_diameter")}
        for name in machine_fields.TRIM:
            if given.has(name):
                values[name] = given.values[name]
        try:
            return MeltingLaw(values)
        except OutOfRange:
            self.unknown = True
            return None

    def _melt(self) -> None:
        """Work out feed from current or current from feed, where the law reaches them."""
        self.extension = 0.0
        if self.law is None:
            return
        try:
            distance = self.law.usual_distances()[1] if self.distance is None else self.distance
            self.extension = self.law.extension(distance)
        except OutOfRange:
            self.extension = self.law.extension(self.law.usual_distances()[1])
        try:
            if self.current is not None:
                low, high = self.law.current_limits(self.extension)
                ranges.require("current", self.current, low, high, "A")
            elif self.feed is not None:
                distance = self.extension + self.law.arc_length
                self.current = self.law.checked_current(self.feed, distance)
        except OutOfRange:
            self.unknown = True
            self.law = None

    def feed_for(self, current: float) -> float | None:
        """Return the feed to set for another current, in proportion to the feed that was told, [m/s]."""
        if self.law is None or self.current is None:
            return None
        low, high = self.law.current_limits(self.extension)
        wanted = self.law.feed(min(max(current, low), high), self.extension)
        return wanted if self.feed is None else self.feed * wanted / self.law.feed(self.current, self.extension)

    # ------------------------------------------------------------ volts

    def _lost(self) -> float | None:
        """Return the volts that leads of the length and size told lose, or None."""
        given = self.given
        if self.current is None or not given.has("lead_length") or not given.word("cable_size"):
            return None
        area = dict(conductors.LEADS)[given.word("cable_size")]
        hot = conductors.copper_resistivity(leads.HOT_LEAD)
        return self.current * conductors.loop_resistance(given.number("lead_length"), area, hot)

    def _mode(self) -> str:
        """Return the transfer that these numbers belong to, or "" where none is known."""
        if self.kind == CORED:
            return CORED
        if self.law is None or self.current is None:
            return ""  # nothing is known of this wire, or of it at this current
        try:
            return self._solid_mode(self.given.number("wire_diameter"), self.current)
        except OutOfRange:
            self.unknown = True
            return ""

    def _solid_mode(self, diameter: float, current: float) -> str:
        reach = transfer_limits.short_circuit_currents(self.metal, diameter)
        self.transition = transfer_limits.transition_current(self.metal, diameter, self.gas.word, self.gas.share)
        if self.transition is not None:
            if not ranges.above(self.transition[0], current) or reach is None:
                return "spray"
            shorts = voltage_lines.usual_voltage(
                self.metal, self.gas.word, "short-circuit", current, diameter, self.gas.share
            )
            if self.meter is not None and shorts is not None:
                border = shorts[2] + transfer.BORDER_WIDTH / 2.0
                self.surely = ranges.above(self.meter - self.drops[1], border)
                if ranges.above(self.meter - self.drop, border):
                    return _BELOW_SPRAY
            return "short-circuit"
        if reach is not None and not ranges.above(current, reach[1] * (1.0 + transfer.BEYOND_SHORT_CIRCUIT)):
            return "short-circuit"
        return "globular" if self.metal == "mild-steel" else ""

    def _usual(self) -> tuple[float, float, float] | None:
        """Return the usual volts at the gun for this current, gas and transfer, or None where none are known."""
        if self.current is None or self.mode in ("", _BELOW_SPRAY) or not self.given.has("wire_diameter"):
            return None
        try:
            return voltage_lines.usual_voltage(
                self.metal,
                self.gas.word,
                self.mode,
                self.current,
                self.given.number("wire_diameter"),
                self.gas.share,
            )
        except OutOfRange:
            self.unknown = True
            return None

    def _volts(self, low: bool) -> int:
        """Return what the meter says of too few volts, or of too many."""
        if self.usual is None or self.meter is None:
            return OPEN
        least, most = self.meter - self.drops[1], self.meter - self.drops[0]
        at_gun = self.meter - self.drop
        if low:
            outside, inside = ranges.above(self.usual[0], most), not ranges.above(self.usual[0], least)
            doubtful = ranges.above(self.usual[0] - facts.VOLTS_DOUBT, at_gun)
        else:
            outside, inside = ranges.above(least, self.usual[2]), not ranges.above(most, self.usual[2])
            doubtful = ranges.above(at_gun, self.usual[2] + facts.VOLTS_DOUBT)
        return SHOWN if outside else HINTED if doubtful else CLEARED if inside else OPEN

    # ------------------------------------------------------------ what else has limits

    def _wanted(self) -> tuple[float, float, float] | None:
        if self.thickness is None or self.kind != SOLID:
            return None
        return starting_current.wanted_current(self.metal, self.thickness, self.position)

    def _amperes(self, low: bool) -> int:
        if self.wanted is None or self.current is None:
            return OPEN
        outside = ranges.above(self.wanted[0], self.current) if low else ranges.above(self.current, self.wanted[2])
        return SHOWN if outside else CLEARED

    def distances(self) -> tuple[float, float, float]:
        """Return the shortest, the usual and the longest contact tip to work of this wire and transfer, [m]."""
        names = (
            (CORED, "flux-cored-gas-shielded"),
            (SELF_SHIELDED, "flux-cored-self-shielded"),
            ("metal-cored", "metal-cored"),
        )
        for kind, process in names:
            if kind == self.kind:
                for name, low, high in processes.TIP_TO_WORK:
                    if name == process:
                        return low, (low + high) / 2.0, high
        mode = self.mode if self.mode in ("short-circuit", "spray") else "not-known"
        for name, low, usual, high in wires.USUAL_DISTANCES:
            if name == mode:
                return low, usual, high
        raise KeyError(mode)

    def _distance(self, long: bool) -> int:
        if self.distance is None:
            return OPEN
        low, _, high = self.distances()
        outside = ranges.above(self.distance, high) if long else ranges.above(low, self.distance)
        return SHOWN if outside else CLEARED

    def flows(self) -> tuple[float, float, float]:
        """Return the least, the usual and the most flow of this nozzle and gas, [m3/s]."""
        bore, density = self.given.number("nozzle_bore"), GasAsMix(self.given).density
        usual = usual_flow(bore, density, 0.0, self.position, "fillet")
        return usual * shielding.LEAST_SHARE, usual, most_flow(bore, density)

    def _flow(self, low: bool) -> int:
        if not self.given.has("gas_flow"):
            return OPEN
        flow = self.given.number("gas_flow")
        least, _, most = self.flows()
        outside = ranges.above(least, flow) if low else ranges.above(flow, most)
        if not outside:
            return CLEARED
        return HINTED if "nozzle_bore" in self.given.made else SHOWN

    # ------------------------------------------------------------ each cause

    def _may_be(self, cause: str) -> bool:
        """Return whether a cause can be one at all, with this wire and gas."""
        if cause in ("wind", "flow-low", "flow-high", "nozzle-clogged", "gas-ends"):
            return self.kind != SELF_SHIELDED
        if cause == "polarity" and self.fault == "porosity":
            return self.kind == SELF_SHIELDED
        if cause in ("soft-wire", "gas-wrong", "filler-lean"):
            return self.metal == "aluminum" and self.kind == SOLID
        if cause == "preheat":
            return self.metal == "mild-steel"  # stainless is kept cool, and 5083 is never warmed
        if cause == "gas-carbon-dioxide":
            return self.kind != SELF_SHIELDED and self.gas.word == CARBON_DIOXIDE
        if cause == "below-spray":
            return self.transition is not None
        if cause == "short-circuit-thick":
            return self.kind == SOLID and self.metal != "aluminum"
        return cause != "downhill" or self.position == "vertical-down"

    def _level(self, cause: str) -> int:
        """Return what the numbers say of a cause."""
        if cause in ("volts-low", "volts-high"):
            return self._volts(cause == "volts-low")
        if cause in ("feed-low", "feed-high"):
            return self._amperes(cause == "feed-low")
        if cause in ("stick-out-long", "stick-out-short"):
            return self._distance(cause == "stick-out-long")
        if cause in ("flow-low", "flow-high"):
            return self._flow(cause == "flow-low")
        if cause in ("soft-wire", "gas-carbon-dioxide"):
            return HINTED
        if cause in ("wind", "flow-frost", "dirty", "polarity", "lead-drop", "gas-wrong") + _OF_TRANSFER:
            return int(getattr(self, "_see_" + cause.replace("-", "_"))())
        return OPEN

    def _see_wind(self) -> int:
        if self.given.has("wind_speed"):
            return SHOWN if ranges.above(self.given.number("wind_speed"), shielding.WIND_LIMIT) else CLEARED
        return {"still": CLEARED, "breeze": HINTED, "wind": SHOWN}.get(self.given.word("wind"), OPEN)

    def _see_flow_frost(self) -> int:
        if self.gas.word != CARBON_DIOXIDE or not self.given.has("gas_flow"):
            return OPEN
        return SHOWN if ranges.above(self.given.number("gas_flow"), shielding.FROSTING_FLOW) else CLEARED

    def _see_dirty(self) -> int:
        surface = self.given.word("surface")
        if surface == "mill-scale" and self.fault != "cold-lap":
            return HINTED
        return OPEN if not surface else CLEARED if surface == "clean" else SHOWN

    def _see_polarity(self) -> int:
        polarity = self.given.word("polarity")
        if not polarity:
            return OPEN
        return CLEARED if (polarity == "negative") == (self.kind == SELF_SHIELDED) else ROOT

    def _see_lead_drop(self) -> int:
        if self.lost is None:
            return OPEN
        return ROOT if ranges.above(self.lost, leads.LEAD_LIMIT) else CLEARED

    def _see_gas_wrong(self) -> int:
        if "gas" in self.given.made:
            return OPEN
        return CLEARED if self.gas.word == "argon" else ROOT

    def _see_below_spray(self) -> int:
        if self.mode != _BELOW_SPRAY:
            return CLEARED if self.mode == "spray" else OPEN
        return SHOWN if self.surely else HINTED

    def _see_short_circuit_thick(self) -> int:
        if self.thickness is None or self.mode != "short-circuit":
            return OPEN
        fit = transfer_limits.fit(self.mode, self.metal, self.thickness, "flat")
        return ROOT if fit == "thick" else HINTED if fit == "cold-lap" else CLEARED

    def _see_downhill(self) -> int:
        if self.thickness is None:
            return HINTED
        return ROOT if ranges.above(self.thickness, transfer.VERTICAL_DOWN_THICKEST) else HINTED

    def _ranked(self) -> list[Suspect]:
        for fault, causes in facts.FAULTS:
            if fault == self.fault:
                found = [Suspect(cause, self._level(cause), source) for cause, source in causes if self._may_be(cause)]
                # By what the numbers say, then in the order in which to look: a key without equals, for any sort.
                places = sorted([(-suspect.level, place) for place, suspect in enumerate(found)])
                return [found[place] for _, place in places]
        raise KeyError(self.fault)
