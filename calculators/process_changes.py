"""What changes for a process: polarity, wire, gas, distance, rolls, gun and slag; and the covered rod to fall back on."""

from calculators import process_limits, ranges
from calculators.contract import Measured, Message, Table, say
from calculators.facts import processes as facts
from calculators.facts import transfer
from calculators.process_case import SLAG, Case

_ENGLISH_INCH = 0.0254 / 32.0
CORED = ("flux-cored-gas-shielded", "flux-cored-self-shielded", "metal-cored")
_WIDEST_WIRE = 1.7e-3  # what a truck's feeder takes


def _row(name: str, value: object) -> tuple[object, ...]:
    return (say("process-choice.row." + name), value)


class Changes:
    """The tables of one answer."""

    def __init__(self, case: Case) -> None:
        self.case = case
        self.rod = ""
        if case.metal in ("mild-steel", "stainless"):
            self.rod = self._rod()

    def _rod(self) -> str:
        """Return the class: low hydrogen where the weld carries load, one that runs downhill or through rust else."""
        case = self.case
        if case.metal == "stainless":
            return "e308l"
        thin = ranges.above(3.0e-3, case.thickness)
        if case.position == "vertical-down":
            return "e6010"
        if case.structural:
            return "e6013" if thin else "e7018"
        if case.surface in ("rust", "mill-scale"):
            return "e6010"
        return "e7018" if ranges.above(case.thickness, 0.1875 * 0.0254) else "e6013"

    # ------------------------------------------------------------ wires

    def wire(self, process: str) -> Table:
        """Return what to set for a process that feeds wire."""
        rows = [_row("polarity", say("process-choice.polarity." + self._polarity(process)))]
        rows.append(_row("wire", say("process-choice.wire." + self._wire(process))))
        rows.append(_row("gas", say("process-choice.gas." + self._gas(process))))
        if process != "flux-cored-self-shielded":
            rows.append(_row("flow", self._range("gas_flow", self._flow(), 2)))
        for name, low, high in facts.TIP_TO_WORK:
            if name == process:
                rows.append(_row("distance", self._range("contact_tip_to_work", (low, high), 3)))
        rows += self._currents(process)
        rows.append(_row("rolls", say("process-choice.rolls." + self._rolls(process))))
        rows.append(_row("gun", say("process-choice.gun." + self._gun(process))))
        rows.append(_row("between", say("process-choice.between." + self._between(process))))
        return self._table(process, rows + self._prep())

    def _table(self, process: str, rows: list[tuple[object, ...]]) -> Table:
        columns = (say("process-choice.column.what"), say("process-choice.column.set"))
        caption = say("process-choice.changes", process=say("process-choice.process." + process))
        return Table(process.replace("-", "_"), caption, columns, tuple(rows))

    def _polarity(self, process: str) -> str:
        return "negative" if process == "flux-cored-self-shielded" else "positive"

    def _wire(self, process: str) -> str:
        if self.case.metal != "mild-steel":
            return self.case.metal
        if process == "flux-cored-self-shielded" and self.case.needs_t8():
            return "t8"
        if process == "flux-cored-self-shielded" and self.case.structural:
            return "self-shielded-structural"
        return process if process in CORED else "solid"

    def _gas(self, process: str) -> str:
        if process == "flux-cored-self-shielded":
            return "none"
        if self.case.metal == "aluminum":
            return "aluminum"
        if self.case.metal == "stainless" and process != "flux-cored-gas-shielded":
            return "stainless"
        return process

    def _flow(self) -> tuple[float, float]:
        return facts.FLOW_ALUMINUM if self.case.metal == "aluminum" else facts.FLOW

    def _range(self, quantity: str, ends: tuple[float, float], figures: int) -> Message:
        low, high = ends
        return say("process-choice.range", low=Measured(low, quantity, figures), high=Measured(high, quantity, figures))

    def _currents(self, process: str) -> list[tuple[object, ...]]:
        if process not in CORED:
            return [_row("current", say("process-choice.current.settings"))]
        if process != "flux-cored-gas-shielded" or self.case.metal != "mild-steel":
            return [_row("current", say("process-choice.current.none"))]
        rows: list[tuple[object, ...]] = []
        for material, mode, wires in transfer.CORNERS:
            if material == "mild-steel" and mode == "flux-cored":
                for size, low, high, least, most in wires:
                    if size < _WIDEST_WIRE:
                        label = say("process-choice.row.size", size=Measured(size, "wire_diameter"))
                        amps = {"low": Measured(low, "current"), "high": Measured(high, "current")}
                        volts = {"least": Measured(least, "voltage"), "most": Measured(most, "voltage")}
                        amps.update(volts)
                        rows.append((label, say("process-choice.range.pair", **amps)))
        return rows

    def _rolls(self, process: str) -> str:
        if self.case.metal == "aluminum":
            return "aluminum"
        return "cored" if process in CORED else "solid"

    def _gun(self, process: str) -> str:
        if self.case.metal == "aluminum":
            return "push"
        return "drag" if process in SLAG else "either"

    def _between(self, process: str) -> str:
        if process in SLAG:
            return "slag"
        return "islands" if self.case.metal == "mild-steel" else self.case.metal

    def _prep(self) -> list[tuple[object, ...]]:
        if self.case.metal == "aluminum":
            return [_row("prep", say("process-choice.prep.aluminum"))]
        if self.case.surface != "galvanized":
            return []
        ends = [Measured(each, "joint_size", 2) for each in facts.ZINC_OFF]
        return [_row("prep", say("process-choice.prep.galvanized", low=ends[0], high=ends[1]))]

    # ------------------------------------------------------------ rod

    def diameter(self) -> float:
        """Return the rod's diameter, [m]."""
        return process_limits.rod_diameter(self.rod, self.case.thickness)

    def currents(self) -> tuple[float, float, float]:
        """Return lowest, start and highest current of the rod, [A]."""
        return process_limits.rod_current(self.rod, self.diameter(), self.case.thickness)

    def is_sheet(self) -> bool:
        """Return whether the steel is sheet: the rod starts at the low end of its range."""
        return not ranges.above(self.case.thickness, facts.SHEET_ENDS)

    def has_currents(self) -> bool:
        """Return whether a range was found for the rod."""
        return self.rod in [name for name, _ in facts.RODS]

    def stick(self) -> Table:
        """Return the rod to fall back on."""
        rows = [_row("rod", say("process-choice.rod." + self.rod))]
        if self.has_currents():
            size = str(int(self.diameter() / _ENGLISH_INCH + 0.5))
            low, start, high = [Measured(each, "current") for each in self.currents()]
            key = "sheet" if self.is_sheet() else "plate"
            current = say("process-choice.start." + key, start=start, low=low, high=high)
        else:
            size = "box"
            current = say("process-choice.start.box")
        rows.append(_row("diameter", say("process-choice.size." + size)))
        rows.append(_row("start", current))
        rows.append(_row("polarity", say("process-choice.rod-polarity." + self.rod)))
        rows.append(_row("dry", self._dry()))
        rows.append(_row("between", say("process-choice.between.slag")))
        return self._table("stick", rows + self._prep())

    def _dry(self) -> Message:
        if self.rod != "e7018":
            return say("process-choice.dry." + self.rod)
        hours = {
            "out": Measured(facts.HOURS_OUT, "hold_time", 2, "h"),
            "out_r": Measured(facts.HOURS_OUT_R, "hold_time", 2, "h"),
            "back": Measured(facts.HOURS_BACK, "hold_time", 2, "h"),
        }
        return say("process-choice.dry.e7018", oven=Measured(facts.OVEN, "preheat_temperature"), **hours)
