"""Where a setting leads on: to the calculator behind each number, and to another process."""

from calculators import machine_fields, ranges, transfer_limits
from calculators.contract import UNKNOWN, Given, Measured, Next, say
from calculators.facts import settings as facts
from calculators.facts import transfer
from calculators.machine import Machine
from calculators.ranges import OutOfRange
from calculators.settings_bead import Bead
from calculators.settings_case import Trial
from calculators.shielding_gas import ShieldingGas

TYPE_CHECKING = False
if TYPE_CHECKING:
    Pairs = list[tuple[str, object]]


class ToProcess:
    """The question which process does it, with what is known of the job; `questions` is none where nothing is."""

    def __init__(self, given: Given) -> None:
        self.questions: tuple[Next, ...] = ()
        if not given.has("thickness"):
            return
        position = given.word("position")
        if position == "vertical-down" and ranges.above(given.number("thickness"), transfer.VERTICAL_DOWN_THICKEST):
            position = "vertical-up"  # the way this thickness is run under load, which that question takes it to be
        pairs: Pairs = [(name, given.word(name)) for name in ("wire_material", "wind")]
        pairs.append(("position", position))
        pairs.append(("thickness", given.measured("thickness")))
        if given.word("gas") and "gas" not in given.made:
            pairs += ShieldingGas(given).carried(given)
        if given.word("wire_material") == "mild-steel":
            pairs.append(("surface", given.word("surface")))
        self.questions = (Next("process-choice", say("settings.next.process-choice"), tuple(pairs)),)


class Onward:
    """The questions after an answer, each with its values."""

    def __init__(self, given: Given, trial: Trial, bead: Bead) -> None:
        self.given = given
        self.trial = trial
        self.bead = bead
        self.wire: Pairs = [("wire_material", trial.metal)]
        # As typed: rounded in another unit it may fall outside the table of its wire.
        unit = given.units.get("wire_diameter") if "wire_diameter" in given.typed else "in"
        self.diameter: Pairs = [("wire_diameter", Measured(trial.diameter, "wire_diameter", None, unit))]
        self.current: Pairs = [("current", Measured(trial.current, "current"))]
        self.voltage: Pairs = [("voltage", Measured(trial.voltage, "voltage"))]
        self.feed: Pairs = [("wire_feed_speed", Measured(trial.feed, "wire_feed_speed"))]
        self.distance: Pairs = [("contact_tip_to_work", Measured(trial.distance, "contact_tip_to_work"))]
        self.trim: Pairs = self._machine(machine_fields.FEED_NAMES)
        self.alloy: Pairs = [("filler_alloy", trial.law.alloy)] if trial.law.alloy else []

    def questions(self) -> tuple[Next, ...]:
        """Return them in the order of the numbers."""
        trial, bead = self.trial, self.bead
        found = [("wire-feed", self._law())]
        if self._has_borders():
            found.append(("transfer-mode", self._transfer()))
        found.append(("arc-voltage", self._arc()))
        if bead.as_drawn:
            found.append(("joint-fill", bead.question() + self.wire + self.diameter + self.feed))
        area: Pairs = [("bead_area", Measured(bead.area, "bead_area")), ("wire_and_gas", bead.gas)]
        found.append(("travel-speed", self.feed + self.diameter + area))
        heat: Pairs = [("travel_speed", Measured(bead.travel, "travel_speed"))]
        found.append(("heat-input", self.voltage + self.current + heat))
        found.append(("duty-cycle", self.current))
        found.append(("generator-size", self.voltage + self.current))
        if trial.metal == "mild-steel" and not ranges.above(facts.CODE_STARTS, trial.thickness):
            plate: Pairs = [("family", "structural"), ("thickness", self.given.measured("thickness"))]
            found.append(("preheat", plate + [("heat_input", Measured(bead.heat_input, "heat_input"))]))
        asked = tuple([Next(name, say("settings.next." + name), tuple(pairs)) for name, pairs in found])
        return asked + ToProcess(self.given).questions

    def _has_borders(self) -> bool:
        """Return whether transfer-mode knows where this wire sprays: thin ones, it does not."""
        trial = self.trial
        try:
            transfer_limits.transition_current(trial.metal, trial.diameter, trial.gas.word, trial.gas.share)
        except OutOfRange:
            return False
        return True

    def _mode(self) -> "Pairs":
        return [("transfer_mode", self.trial.mode)]

    def _law(self) -> "Pairs":
        mode = [] if self.trial.mode == "globular" else self._mode()
        return self.wire + self.alloy + self.diameter + self.current + self.distance + mode + self.trim

    def _machine(self, names: tuple[str, ...]) -> "Pairs":
        return [pair for pair in Machine(self.given).carried() if pair[0] in names]

    def _transfer(self) -> "Pairs":
        place: Pairs = [("position", self.trial.position), ("thickness", self.given.measured("thickness"))]
        gas = self.trial.gas.carried(self.trial.given)
        wire = self.wire + self.alloy + gas + self.diameter + self.current + self.voltage
        return wire + place + self.distance + self.trim

    def _arc(self) -> "Pairs":
        known = self.given.has("lead_voltage_drop")
        drop: Pairs = [("lead_voltage_drop", Measured(self.trial.drop, "lead_voltage_drop") if known else UNKNOWN)]
        gas = self.trial.gas.carried(self.trial.given)
        machine = self._machine(machine_fields.VOLTAGE_NAMES)
        return self.wire + gas + self.diameter + self.current + self._mode() + self.voltage + drop + machine
