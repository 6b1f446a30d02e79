"""What the fault-finder leads on to, with what each next question takes of the numbers."""

from calculators import ranges, transfer_limits
from calculators.contract import UNKNOWN, Measured, Next, carry, say
from calculators.facts import transfer
from calculators.fault_case import CORED, SELF_SHIELDED, SOLID, Case
from calculators.ranges import OutOfRange
from calculators.truck_gas import TruckGas

CRACKS = ("crater-crack", "center-crack", "toe-crack")


class Onward:
    """The questions that an answer leads to, with what they take of the numbers."""

    def __init__(self, case: Case) -> None:
        self.case = case
        self.given = case.given
        self.causes = [suspect.cause for suspect in case.ranked]

    def _any(self, *causes: str) -> bool:
        return any(cause in self.causes for cause in causes)

    def _has(self, *fields: str) -> tuple[tuple[str, object], ...]:
        """Return the fields that were told, as they are carried."""
        found: list[tuple[str, object]] = []
        for field in fields:
            if isinstance(self.given.values.get(field), str):
                found.append((field, self.given.word(field)))
            elif self.given.has(field):
                quantity = {"machine_voltage": "voltage", "carbon_dioxide": "percentage"}.get(field, field)
                found.append((field, self.given.measured(field, quantity)))
        return tuple(found)

    def _gas(self) -> tuple[tuple[str, object], ...]:
        return self._has("gas", "carbon_dioxide") if "gas" not in self.given.made else ()

    def _current(self) -> tuple[tuple[str, object], ...]:
        current = self.case.current
        return () if current is None else carry("current", Measured(current, "current", 4), 5.0, 1000.0)

    def questions(self) -> tuple[Next, ...]:
        """Return them, the nearest to the first cause in front."""
        case = self.case
        asked: list[tuple[str, tuple[tuple[str, object], ...]]] = []
        if case.fault in CRACKS:
            asked += [("crack-repair", ()), ("metal-id", ())]
        if self._any("preheat"):
            asked.append(("preheat", ()))
        if self._any("wind", "flow-low", "flow-high", "flow-frost") and case.kind != SELF_SHIELDED:
            asked.append(("gas-flow", self._wind() + self._has("nozzle_bore", "position", "gas_flow") + self._gas()))
        if self._any("volts-low", "volts-high"):
            asked += self._arc()
        if self._any("feed-low", "feed-high", "below-spray"):
            asked += self._feed()
        if self._any("lead-drop", "volts-low", "work-clamp"):
            asked.append(("lead-drop", self._leads() + self._current()))
        if self._any("gas-ends"):
            asked.append(("leak-test", ()))
        if self._any("wind", "short-circuit-thick"):
            thick = self._has("thickness")
            if thick:
                thick = carry("thickness", self.given.measured("thickness"), 0.0005, 0.1)
            asked.append(("process-choice", self._wind() + thick + self._has("position")))
        asked.append(("settings", ()))
        return tuple([Next(name, say("fault-finder.next." + name), carried) for name, carried in asked[:5]])

    def _leads(self) -> tuple[tuple[str, object], ...]:
        """Return the leads where the question on them has an answer."""
        lost = self.case.lost
        if lost is None or ranges.above(0.05, lost) or ranges.above(lost, 60.0):
            return ()
        return self._has("lead_length", "cable_size")

    def _wind(self) -> tuple[tuple[str, object], ...]:
        if self.given.has("wind_speed"):
            return (("wind", "measured"),) + self._has("wind_speed")
        return self._has("wind")

    def _arc(self) -> list[tuple[str, tuple[tuple[str, object], ...]]]:
        """Return the questions on volts and transfer, as far as they know this wire."""
        case = self.case
        if case.usual is None or case.kind == SELF_SHIELDED:
            return []
        gas = tuple(case.gas.carried(self.given))
        wire = self._has("wire_material", "wire_diameter") + gas + self._current()
        gun = None if case.meter is None else case.meter - case.drop
        volts: tuple[tuple[str, object], ...] = ()
        if gun is not None and not ranges.above(transfer.LEAST_VOLTAGE, gun):
            drop = UNKNOWN if case.lost is None else Measured(case.lost, "lead_voltage_drop")
            if case.lost is None or case.lost < 20.0:
                volts = self._has("machine_voltage") + (("lead_voltage_drop", drop),)
        mode = (("transfer_mode", case.mode),) if case.mode != CORED else ()
        asked = [("arc-voltage", wire + self._has("wire_kind") + mode + volts)]
        if case.kind == SOLID and gun is not None and not ranges.above(transfer.LEAST_VOLTAGE, gun):
            if not ranges.above(gun, transfer.MOST_VOLTAGE) and self._has_borders():
                asked.append(("transfer-mode", wire + (("voltage", Measured(gun, "voltage", 4)),)))
        return asked

    def _has_borders(self) -> bool:
        case = self.case
        if case.law is None or case.current is None or TruckGas(self.given, case.metal).problem():
            return False
        try:
            distance = case.law.usual_distances()[1]
            case.law.checked_feed(case.current, distance)
            diameter = self.given.number("wire_diameter")
            gas = case.gas
            return bool(transfer_limits.borders_at(case.metal, diameter, gas.word, case.current, "flat", gas.share))
        except OutOfRange:
            return False

    def _feed(self) -> list[tuple[str, tuple[tuple[str, object], ...]]]:
        case = self.case
        if case.law is None or case.current is None:
            return []
        wire = self._has("wire_material", "wire_diameter")
        return [("wire-feed", wire + self._current() + (("contact_tip_to_work", UNKNOWN),))]
