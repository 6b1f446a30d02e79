"""What changes for a process: polarity, wire, gas, distance, rolls, gun and slag; and the covered rod to fall back on."""

from calculators import process_limits, ranges
from calculators.contract import Measured, Message, Table, say
from calculators.facts import processes as facts
from calculators.facts import transfer
from calculators.process_case import SELF_SHIELDED, SLAG, Case

_ENGLISH_INCH = 0.0254 / 32.0
CORED = ("flux-cored-gas-shielded", SELF_SHIELDED, "metal-cored")
_WIDEST_WIRE = 1.7e-3  # what a truck's feeder takes


def _row(name: str, value: object) -> tuple[object, ...]:
    return (say("process-choice.row." + name), value)


def _span(quantity: str, ends: tuple[float, float], figures: int) -> Message:
    low, high = [Measured(each, quantity, figures) for each in ends]
    return say("process-choice.span", low=low, high=high)


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
        gasless = process == SELF_SHIELDED
        aluminum = self.case.metal == "aluminum"
        cored = process in CORED
        slag = process in SLAG
        rows = [
            _row("polarity", say("process-choice.polarity." + ("negative" if gasless else "positive"))),
            _row("wire", say("process-choice.wire." + self._wire(process))),
            _row("gas", say("process-choice.gas." + self._gas(process))),
        ]
        if gasless and self.case.structural:
            rows.append(_row("not", say("process-choice.wire.single-pass")))
        if not gasless:
            rows.append(_row("flow", _span("gas_flow", facts.FLOW_ALUMINUM if aluminum else facts.FLOW, 2)))
        ends = [(low, high) for name, low, high in facts.TIP_TO_WORK if name == process]
        rows.append(_row("distance", _span("contact_tip_to_work", ends[0], 3)))
        rows += self._currents(process)
        rows.append(
            _row("rolls", say("process-choice.rolls." + ("aluminum" if aluminum else "cored" if cored else "solid")))
        )
        rows.append(_row("gun", say("process-choice.gun." + ("push" if aluminum else "drag" if slag else "either"))))
        rows.append(_row("between", say("process-choice.between." + ("slag" if slag else self.case.metal))))
        return self._table(process, rows)

    def _table(self, process: str, rows: list[tuple[object, ...]]) -> Table:
        if self.case.metal == "aluminum":
            rows.append(_row("prep", say("process-choice.prep.aluminum")))
        elif self.case.surface == "galvanized":
            low, high = [Measured(each, "joint_size", 2) for each in facts.ZINC_OFF]
            rows.append(_row("prep", say("process-choice.prep.galvanized", low=low, high=high)))
        columns = (say("process-choice.column.what"), say("process-choice.column.set"))
        caption = say("process-choice.changes", process=say("process-choice.process." + process))
        return Table(process.replace("-", "_"), caption, columns, tuple(rows))

    def _wire(self, process: str) -> str:
        if self.case.metal != "mild-steel":
            return self.case.metal
        if process == SELF_SHIELDED and self.case.needs_t8():
            return "t8"
        if process == SELF_SHIELDED and self.case.structural:
            return "self-shielded-structural"
        return process if process in CORED else "solid"

    def _gas(self, process: str) -> str:
        if self.case.metal == "aluminum":
            return "aluminum"
        return "stainless" if self.case.metal == "stainless" and process not in SLAG else process

    def _currents(self, process: str) -> list[tuple[object, ...]]:
        if process != "flux-cored-gas-shielded" or self.case.metal != "mild-steel":
            unknown = process in CORED or (self.case.metal == "aluminum" and not self.case.carried_by("spray"))
            asked = "pulse" if process == "pulse" else "none" if unknown else "settings"
            return [_row("current", say("process-choice.current." + asked))]
        rows: list[tuple[object, ...]] = []
        for material, mode, wires in transfer.CORNERS:
            if material == "mild-steel" and mode == "flux-cored":
                for size, low, high, least, most in wires:
                    if size < _WIDEST_WIRE:
                        label = say("process-choice.row.size", size=Measured(size, "wire_diameter"))
                        pair = (_span("current", (low, high), 3), _span("voltage", (least, most), 3))
                        rows.append((label, say("list.comma", first=pair[0], rest=pair[1])))
        return rows

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
        rows += self._dry()
        rows.append(_row("between", say("process-choice.between.slag")))
        return self._table("stick", rows)

    def _dry(self) -> list[tuple[object, ...]]:
        if self.rod != "e7018":
            return [_row("dry", say("process-choice.dry." + self.rod))]
        out, out_r, back = [
            Measured(each, "hold_time", 2, "h") for each in (facts.HOURS_OUT, facts.HOURS_OUT_R, facts.HOURS_BACK)
        ]
        return [
            _row("dry", say("process-choice.dry.e7018", oven=Measured(facts.OVEN, "preheat_temperature"))),
            _row("out", say("process-choice.dry.out", out=out, out_r=out_r)),
            _row("back", say("process-choice.dry.back", back=back)),
        ]
