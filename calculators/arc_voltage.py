"""Arc voltage: what the meter on the machine reads, what the arc gets of it, and what is usual there.

The lines are in voltage_lines.py, the limits of the modes in transfer_limits.py.
"""

from calculators import arc_sources as from_
from calculators import machine_fields, numerals, ranges, transfer_limits, voltage_lines
from calculators.arc_melting import Melt
from calculators.arc_voltage_words import ENGLISH
from calculators.contract import (
    UNKNOWN,
    Answer,
    Calculator,
    Choice,
    Given,
    Measured,
    Message,
    Next,
    Number,
    Quantity,
    Refusal,
    Relation,
    Source,
    Verdict,
    say,
)
from calculators.facts import transfer
from calculators.machine import Machine
from calculators.ranges import OutOfRange
from calculators.shielding_gas import FIELDS, ShieldingGas
from calculators.truck_gas import TruckGas

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

_VOLTS = ("18 V", "19 V", "20 V", "22 V", "25 V", "28 V")
_ANY_STEEL = 1.0e-3  # m; the lines of mild steel know no diameter


# ---------------------------------------------------------------- what is asked


def _solve_leads(unknown: str, values: "dict[str, Any]") -> float:
    if unknown == "machine_voltage":
        return values["voltage"] + values["lead_voltage_drop"]
    if unknown == "voltage":
        return values["machine_voltage"] - values["lead_voltage_drop"]
    return values["machine_voltage"] - values["voltage"]


def _solve_resistance(unknown: str, values: "dict[str, Any]") -> float:
    if unknown == "lead_voltage_drop":
        return values["current"] * values["lead_resistance"]
    if unknown == "lead_resistance":
        return values["lead_voltage_drop"] / values["current"]
    return values["lead_voltage_drop"] / values["lead_resistance"]


def _prepare(given: Given) -> None:
    ShieldingGas(given)
    Machine(given)  # says at once what of it cannot be read
    if given.values.get("lead_voltage_drop") == UNKNOWN:
        given.values["lead_voltage_drop"] = None
        if not given.has("lead_resistance") and given.has("machine_voltage") != given.has("voltage"):
            given.fill("lead_voltage_drop", transfer.LEADS_TAKEN)


class Reading:
    """The voltages of one question: at the gun, what the leads may take, and the usual band."""

    def __init__(self, given: Given) -> None:
        self.gun, self.drop = given.number("voltage"), given.number("lead_voltage_drop")
        self.guessed = "lead_voltage_drop" in given.made and not given.has("lead_resistance")
        self.guessed = self.guessed and given.solved_for != "lead_voltage_drop"
        self.least_drop, self.most_drop = transfer.LEADS_LOSE if self.guessed else (self.drop, self.drop)
        self.low = self.high = self.gun
        if self.guessed and given.solved_for == "voltage":
            meter = given.number("machine_voltage")
            self.low, self.high = meter - self.most_drop, meter - self.least_drop
        self.gas = ShieldingGas(given)
        self.metal = given.word("wire_material")
        self.mode = "flux-cored" if given.word("wire_kind") == "flux-cored" else given.word("transfer_mode")
        self.current = given.number("current") if given.has("current") else None
        self.diameter = given.number("wire_diameter") if given.has("wire_diameter") else None
        self.usual = self._usual(given.word("wire_kind"))

    def _usual(self, kind: str) -> tuple[float, float, float] | None:
        if self.current is None or kind == "metal-cored":
            return None
        if self.diameter is None and (self.metal != "mild-steel" or self.mode == "flux-cored"):
            raise Refusal("wire_diameter", say("arc-voltage.refusal.diameter"))
        diameter = _ANY_STEEL if self.diameter is None else self.diameter
        return voltage_lines.usual_voltage(self.metal, self.gas.word, self.mode, self.current, diameter, self.gas.share)

    def off_its_currents(self) -> str:
        """Return `too-much` or `too-little` where the mode is not run at this current, else nothing."""
        if self.current is None or self.diameter is None:
            return ""
        current = numerals.settle(self.current)
        if self.mode == "short-circuit":
            reach = transfer_limits.short_circuit_currents(self.metal, self.diameter)
            return "too-much" if reach is None or current > numerals.settle(reach[1]) else ""
        if self.mode == "spray":
            begins = transfer_limits.transition_current(self.metal, self.diameter, self.gas.word, self.gas.share)
            return "too-little" if begins is not None and current < numerals.settle(begins[0]) else ""
        return ""


# ---------------------------------------------------------------- the answer


def _answer(given: Given) -> Answer:
    reading = Reading(given)
    return Answer(
        results=_results(given, reading),
        working=_working(given, reading),
        notes=_notes(given, reading),
        cautions=(say("caution.gun-meter"), say("arc-voltage.caution.start"), say("caution.arc")),
        sources=_sources(reading),
        next_questions=_next(given, reading),
        verdict=_verdict(reading),
    )


def _volts(value: float) -> Measured:
    return Measured(value, "voltage", 3)


def _results(given: Given, reading: Reading) -> tuple[object, ...]:
    results: list[object] = []
    guess = say("arc-voltage.band.guessed") if reading.guessed else None
    if given.solved_for == "machine_voltage":
        low, high = (reading.gun + reading.least_drop, reading.gun + reading.most_drop) if guess else (None, None)
        results.append(Number("machine_voltage", given.number("machine_voltage"), "voltage", low, high, guess))
        results += Machine(given).voltage_results(reading.gun, reading.drop)
    elif given.solved_for != "lead_voltage_drop":
        low, high = (reading.low, reading.high) if guess else (None, None)
        results.append(Number("voltage", reading.gun, None, low, high, guess))
    if given.solved_for == "lead_voltage_drop" or given.has("lead_resistance"):
        results.append(Number("lead_voltage_drop", reading.drop))
    for name in ("current", "lead_resistance"):
        if name in given.made:
            results.append(Number(name, given.number(name)))
    if reading.usual is not None:
        low, middle, high = reading.usual
        band = say("arc-voltage.band.usual")
        results.append(Number("usual_voltage", middle, "voltage", low, high, band))
        drops = (reading.least_drop, reading.drop, reading.most_drop)
        band = say("arc-voltage.band.meter")
        results.append(Number("usual_meter", middle + drops[1], "voltage", low + drops[0], high + drops[2], band))
        if given.solved_for != "machine_voltage":
            results += Machine(given).voltage_results(middle, reading.drop, "machine.usual")
    if reading.current is not None:
        results.append(Number("load_voltage", voltage_lines.load_voltage(reading.current), "voltage"))
    return tuple(results)


def _verdict(reading: Reading) -> Verdict | None:
    if reading.usual is None:
        return None
    low, high = numerals.settle(reading.usual[0]), numerals.settle(reading.usual[2])
    least, most = numerals.settle(reading.low), numerals.settle(reading.high)
    mode = say("arc-voltage.mode." + reading.mode)
    if low <= least and most <= high:
        return Verdict("inside", say("arc-voltage.verdict.inside", low=_volts(low), high=_volts(high), mode=mode))
    if least <= high and low <= most:
        return Verdict("unclear", say("arc-voltage.verdict.unclear", mode=mode), say("arc-voltage.remedy.unclear"))
    id, off = ("above", least - high) if least > high else ("below", low - most)
    message = say("arc-voltage.verdict." + id, off=_volts(off), low=_volts(low), high=_volts(high), mode=mode)
    return Verdict("outside", message, say("arc-voltage.remedy." + id, meter=_volts(reading.usual[1] + reading.drop)))


def _working(given: Given, reading: Reading) -> tuple[Message, ...]:
    lines = []
    drop = Measured(reading.drop, "lead_voltage_drop", 3)
    if given.has("lead_resistance") and reading.current is not None:
        resistance = Measured(given.number("lead_resistance"), "lead_resistance", 3)
        current = Measured(reading.current, "current", 3)
        lines.append(say("arc-voltage.working.resistance", current=current, resistance=resistance, drop=drop))
    meter = _volts(given.number("machine_voltage"))
    lines.append(say("arc-voltage.working." + _line(given), meter=meter, drop=drop, gun=_volts(reading.gun)))
    if reading.current is not None:
        current = Measured(reading.current, "current", 3)
        load = _volts(voltage_lines.load_voltage(reading.current))
        lines.append(say("arc-voltage.working.load", current=current, load=load))
    return tuple(lines)


def _line(given: Given) -> str:
    return given.solved_for if given.solved_for in ("machine_voltage", "lead_voltage_drop") else "voltage"


def _notes(given: Given, reading: Reading) -> tuple[Message, ...]:
    notes = []
    if reading.current is None:
        notes.append(say("arc-voltage.note.current"))
    else:
        if reading.usual is None:
            notes.append(say("arc-voltage.note.none"))
        elif reading.off_its_currents():
            notes.append(say("arc-voltage.note." + reading.off_its_currents()))
        notes.append(_about_rating(reading, reading.current))
    if reading.guessed:
        notes.append(say("arc-voltage.note.leads"))
    if "carbon_dioxide" in given.made:
        notes.append(say("arc-voltage.note.mix"))
    return tuple(notes) + Machine(given).voltage_notes(True) + (say("arc-voltage.note.gun"),)


def _about_rating(reading: Reading, current: float) -> Message:
    """Return what the rating line is for, and how far it is off what is run."""
    if reading.usual is not None:
        off = numerals.settle(voltage_lines.load_voltage(current) - reading.usual[1], 6)
        if off != 0.0:
            id = "above" if off > 0.0 else "below"
            return say("arc-voltage.note.rating-" + id, off=Measured(abs(off), "voltage", 2))
    return say("arc-voltage.note.rating")


def _sources(reading: Reading) -> tuple[Source, ...]:
    found = [from_.LEADS, from_.LOAD_LINE, from_.LINES, from_.MORE_VOLTAGE]
    if reading.metal != "mild-steel" or reading.mode == "flux-cored":
        found.append(from_.MODERN_WELDING)
    return tuple(found)


def _has_mode(given: Given, reading: Reading, diameter: float) -> bool:
    """Return whether the question on the transfer mode takes these values."""
    current = 0.0 if reading.current is None else reading.current
    try:
        ranges.require("voltage", reading.gun, transfer.LEAST_VOLTAGE, transfer.MOST_VOLTAGE, "V")
        gas = reading.gas
        if TruckGas(given, reading.metal).problem():
            return False
        values = {"wire_material": reading.metal, "wire_diameter": diameter, "gas": gas.word, "current": current}
        values.update({"carbon_dioxide": gas.share, "voltage": reading.gun, "position": "flat", "waveform": "steady"})
        melt = Melt(values, False)
        melt.law.checked_feed(current, melt.distance)
        return bool(transfer_limits.borders_at(reading.metal, diameter, gas.word, current, "flat", gas.share))
    except OutOfRange:
        return False


def _next(given: Given, reading: Reading) -> tuple[Next, ...]:
    meter: list[tuple[str, object]] = [("machine_voltage", given.measured("machine_voltage", "voltage"))]
    if "machine_voltage" in given.made:
        meter = []
    if reading.current is None:
        return (Next("lead-drop", say("arc-voltage.next.lead-drop"), tuple(meter)),)
    carried: list[tuple[str, object]] = [
        ("voltage", _volts(reading.gun)),
        ("current", Measured(reading.current, "current")),
    ]
    questions = [Next("heat-input", say("arc-voltage.next.heat-input"), tuple(carried))]
    if (
        reading.diameter is not None
        and given.word("wire_kind") == "solid"
        and _has_mode(given, reading, reading.diameter)
    ):
        wire = [("wire_material", reading.metal), ("wire_diameter", given.measured("wire_diameter"))]
        asked = tuple(wire) + tuple(reading.gas.carried(given)) + tuple(carried)
        questions.insert(0, Next("transfer-mode", say("arc-voltage.next.transfer-mode"), asked))
    leads = Next("lead-drop", say("arc-voltage.next.lead-drop"), tuple(carried[1:] + meter))
    questions.insert(0 if reading.guessed else len(questions), leads)
    return tuple(questions)


CALCULATOR = Calculator(
    name="arc-voltage",
    fields=(
        Quantity("machine_voltage", "voltage", hint=True, presets=_VOLTS),
        Quantity("voltage", hint=True, presets=_VOLTS),
        Quantity("lead_voltage_drop", hint=True, presets=("1 V", "2 V", "4 V"), may_be_unknown=True),
        Quantity("current", hint=True, presets=("90 A", "125 A", "150 A", "180 A", "250 A")),
        Quantity("lead_resistance", optional=True, hint=True),
        Choice("transfer_mode", ("short-circuit", "globular", "spray", "pulse"), default="short-circuit"),
        Choice("wire_material", ("mild-steel", "stainless", "aluminum"), default="mild-steel"),
        Choice("wire_kind", ("solid", "metal-cored", "flux-cored"), default="solid"),
        Quantity(
            "wire_diameter",
            optional=True,
            hint=True,
            presets=("0.030 in", "0.035 in", "0.045 in", "1/16 in", "0.8 mm", "0.9 mm", "1.0 mm", "1.2 mm"),
        ),
    )
    + FIELDS
    + machine_fields.VOLTAGE_ONLY,
    relations=(
        Relation(("machine_voltage", "voltage", "lead_voltage_drop"), _solve_leads, check="machine_voltage"),
        Relation(
            ("lead_voltage_drop", "current", "lead_resistance"),
            _solve_resistance,
            check="lead_voltage_drop",
            required=False,
            its_own=("lead_resistance",),
            agree_within=0.1,
        ),
    ),
    prepare=_prepare,
    answer=_answer,
    english=ENGLISH,
    sources=(from_.LEADS, from_.LOAD_LINE, from_.LINES, from_.MORE_VOLTAGE, from_.MODERN_WELDING),
    place=24,
    fold_from="transfer_mode",
    machine=machine_fields.VOLTAGE_NAMES,
)
