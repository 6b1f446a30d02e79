"""Which number a cause's remedy moves, which way, and to what."""

from calculators import numerals
from calculators.facts import faults as facts
from calculators.facts import shielding
from calculators.fault_case import HINTED, SELF_SHIELDED, Case


class Remedy:
    """The number that a cause's remedy moves: `direction` 1 or -1, from `old` to `new` where those are known."""

    def __init__(self, case: Case, cause: str) -> None:
        self.case = case
        self.cause = cause
        for name, number, direction in facts.CAUSES:
            if name == cause:
                self.number, self.direction = number, direction
        if cause == "polarity" and case.kind == SELF_SHIELDED:
            self.direction = -1
        self.quantity = ""
        self.old: float | None = None
        self.new: float | None = None
        if self.number in ("voltage", "wire_feed_speed", "contact_tip_to_work", "gas_flow"):
            getattr(self, "_move_" + self.number)()

    def _shown(self) -> bool:
        for suspect in self.case.ranked:
            if suspect.cause == self.cause:
                return suspect.level >= HINTED
        return False

    def _move_voltage(self) -> None:
        case = self.case
        self.quantity, self.old = "voltage", case.meter
        if case.meter is None:
            return
        if case.usual is not None and self._shown():
            # Leads that nobody told of are not made up for: up from the least they lose, half a volt at a time.
            lost = case.drops[0] if self.direction > 0 else case.drop
            self.new = case.usual[1] + lost
        else:
            self.new = case.meter + self.direction * facts.VOLTS_STEP

    def _move_wire_feed_speed(self) -> None:
        case = self.case
        self.quantity, self.old = "wire_feed_speed", case.feed
        if case.feed is None and case.law is not None and case.current is not None:
            self.old = case.law.feed(case.current, case.extension)
        if self.old is None:
            return
        self.new = self.old * (1.0 + self.direction * facts.FEED_STEP)
        wanted = None
        if self.cause == "below-spray":
            wanted = case.transition[2] if case.transition is not None else None
        elif case.wanted is not None and self._shown():
            wanted = case.wanted[1]
        target = case.feed_for(wanted) if wanted is not None else None
        # Where the wire's own range ends on the way, a step at a time.
        if target is not None and (target - self.old) * self.direction > 0.0:
            self.new = target

    def _move_contact_tip_to_work(self) -> None:
        self.quantity, self.old = "contact_tip_to_work", self.case.distance
        usual = self.case.distances()[1]
        if self.old is None or numerals.settle((usual - self.old) * self.direction) > 0.0:
            self.new = usual

    def _move_gas_flow(self) -> None:
        case = self.case
        self.quantity = "gas_flow"
        if self.cause == "flow-frost":
            self.new = shielding.FROSTING_FLOW
        elif case.given.has("nozzle_bore"):
            self.new = case.flows()[1]
        if case.given.has("gas_flow"):
            self.old = case.given.number("gas_flow")
            if self.new is not None and numerals.settle((self.new - self.old) * self.direction) <= 0.0:
                self.new = None  # it is there already
