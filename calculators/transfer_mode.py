"""Transfer mode: how the metal crosses at this wire, gas, current and voltage, and how far each border is.

The limits are in transfer_limits.py and voltage_lines.py; here they meet what was asked.
"""

from calculators import arc_sources as from_
from calculators import machine_fields, numerals, solid_wire, transfer_limits, voltage_lines
from calculators.arc_melting import Melt
from calculators.contract import (
    Answer,
    Calculator,
    Choice,
    Given,
    Measured,
    Message,
    Next,
    Plain,
    Quantity,
    Refusal,
    Relation,
    Source,
    Table,
    Verdict,
    Words,
    say,
)
from calculators.drawings import transfer_map
from calculators.facts import transfer
from calculators.machine import Machine
from calculators.melting_law import Point
from calculators.shielding_gas import FIELDS, MIXED
from calculators.transfer_mode_words import ENGLISH
from calculators.truck_gas import TruckGas

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from calculators.transfer_limits import Border

_STEPS = 6  # of the voltage lines on the map
_AGREE = 0.25  # the melting law is good to 15 to 28 %


# ---------------------------------------------------------------- what is asked


def _solve(unknown: str, values: "dict[str, Any]") -> float:
    melt = Melt(values, unknown == "current")
    if unknown == "current":
        return melt.law.checked_current(values["wire_feed_speed"], melt.distance)
    return melt.law.checked_feed(values["current"], melt.distance)


def _prepare(given: Given) -> None:
    Machine(given)  # says at once what of it cannot be read
    if given.word("wire_kind") != "solid":
        raise Refusal("wire_kind", say("transfer-mode.refusal.cored"))
    problem = TruckGas(given, given.word("wire_material")).problem()
    if problem:
        raise Refusal("gas", say("transfer-mode.refusal." + problem))


class Arc:
    """Where the welder stands: the mode there, what the wire feed leaves open, and the borders."""

    def __init__(self, given: Given) -> None:
        self.from_feed = given.solved_for == "current"
        melt = Melt(given.values, self.from_feed)
        self.law, self.distance = melt.law, melt.distance
        self.current, self.voltage = given.number("current"), given.number("voltage")
        self.gas = TruckGas(given, self.law.material)
        self.position = given.word("position")
        self.pulse = given.word("waveform") == "pulse"
        feed = given.number("wire_feed_speed")
        self.guessed = not given.has("contact_tip_to_work")
        self.point = Point(self.law, self.distance, self.current, feed, self.guessed)
        self.currents = self.point.currents() if self.from_feed else (self.current, self.current)
        self.borders = self.borders_at(self.current)
        modes = [self._mode_at(current) for current in (self.current,) + self.currents]
        self.mode = modes[0]
        self.settled = modes[0] == modes[1] == modes[2]

    def borders_at(self, current: float) -> "tuple[Border, ...]":
        """Return the borders at a current."""
        law, gas = self.law, self.gas
        return transfer_limits.borders_at(law.material, law.diameter, gas.word, current, self.position, gas.share)

    def _mode_at(self, current: float) -> str:
        law, gas = self.law, self.gas
        return transfer_limits.mode_at(
            law.material, law.diameter, gas.word, current, self.voltage, self.position, gas.share
        )[0]

    def usual(self, mode: str, current: float) -> tuple[float, float, float] | None:
        """Return the voltage usual in a mode at a current."""
        law, gas = self.law, self.gas
        return voltage_lines.usual_voltage(law.material, gas.word, mode, current, law.diameter, gas.share)


# ---------------------------------------------------------------- the answer


def _answer(given: Given) -> Answer:
    arc = Arc(given)
    shown = "pulse" if arc.pulse else arc.mode
    results: list[object] = [Words("transfer_mode", say("transfer-mode.mode." + shown))]
    usual = None if arc.pulse or arc.mode == "unclear" else arc.usual(arc.mode, arc.current)
    stubs = usual is not None and numerals.settle(arc.voltage) < numerals.settle(usual[0])
    if usual is not None:
        results.append(Words("usual", _from_to(usual[0], usual[2], "voltage")))
    if shown != "unclear":
        metal = "-aluminum" if shown == "spray" and arc.law.material == "aluminum" else ""
        results.append(Words("serves", say("transfer-mode.serves." + shown + metal)))
    if arc.from_feed:
        results.append(Words("current", _from_to(arc.currents[0], arc.currents[1], "current")))
    results.append(_table(arc))
    results.append(_drawing(given, arc))
    return Answer(
        results=tuple(results),
        working=_working(given, arc),
        notes=(say("transfer-mode.sounds." + ("low" if stubs else shown)),) + _notes(given, arc),
        cautions=_cautions(arc, shown),
        sources=_sources(arc),
        next_questions=_next(given, arc, shown),
        verdict=_verdict(given, arc, shown),
    )


def _from_to(low: float, high: float, quantity: str) -> Message:
    return say("transfer-mode.from-to", low=Measured(low, quantity, 3), high=Measured(high, quantity, 3))


def _quantity_of(border: str) -> str:
    return "voltage" if border in ("shorting", "spray-arc") else "current"


def _table(arc: Arc) -> Table:
    rows = []
    for name, low, _, high in arc.borders:
        quantity = _quantity_of(name)
        own = arc.voltage if quantity == "voltage" else arc.current
        rows.append(
            (say("transfer-mode.border." + name), _from_to(low, high, quantity), _margin(own, low, high, quantity))
        )
    columns = tuple([say("transfer-mode.column." + name) for name in ("border", "band", "you")])
    return Table("borders", say("transfer-mode.borders"), columns, tuple(rows))


def _margin(own: float, low: float, high: float, quantity: str) -> Message:
    """Return how far a number is from the nearer end of a band."""
    own, low, high = numerals.settle(own), numerals.settle(low), numerals.settle(high)
    if low <= own <= high:
        return say("transfer-mode.margin.in")
    id, margin = ("under", low - own) if own < low else ("over", own - high)
    return say("transfer-mode.margin." + id, margin=Measured(margin, quantity, 2))


def _verdict(given: Given, arc: Arc, shown: str) -> Verdict:
    if shown == "unclear":
        return Verdict("unclear", say("transfer-mode.verdict.unclear"), _remedy(arc))
    if not arc.settled and shown != "pulse":
        return Verdict("unclear", say("transfer-mode.verdict.feed"), say("transfer-mode.remedy.feed"))
    if shown == "pulse" and not arc.gas.sprays():
        return Verdict(
            "outside", say("transfer-mode.verdict.no-pulse"), say("transfer-mode.remedy.gas." + arc.law.material)
        )
    mode = say("transfer-mode.mode." + shown)
    thickness = given.number("thickness") if given.has("thickness") else transfer.COLD_LAP_FROM - 1e-3
    word = transfer_limits.fit(shown, arc.law.material, thickness, arc.position)
    if word == "serves":
        if shown == "globular":
            return Verdict("unclear", say("transfer-mode.verdict.globular"))
        id = "serves" if given.has("thickness") else "serves-position"
        return Verdict("inside", say("transfer-mode.verdict." + id, mode=mode))
    state = "unclear" if word == "cold-lap" else "outside"
    return Verdict(state, say("transfer-mode.verdict." + word, mode=mode), say("transfer-mode.remedy." + word))


def _remedy(arc: Arc) -> Message | None:
    """Return what makes the mode clear: the nearest corner of the modes this wire and gas have."""
    borders = {border[0]: border for border in arc.borders}
    ways = []
    if "short-circuit-top" in borders:
        current = min(arc.current, borders["short-circuit-top"][1])
        usual = arc.usual("short-circuit", current)
        if usual is not None:
            ways.append(_way("short-circuit", usual[2], current))
    if "transition" in borders:
        current = max(arc.current, borders["transition"][3])
        usual = arc.usual("spray", current)
        if usual is not None:
            ways.append(_way("spray", usual[0], current))
    if not ways:
        return None
    return say(
        "transfer-mode.remedy.unclear", ways=ways[0] if len(ways) == 1 else say("list.or", first=ways[0], rest=ways[1])
    )


def _way(mode: str, voltage: float, current: float) -> Message:
    return say(
        "transfer-mode.way." + mode, voltage=Measured(voltage, "voltage", 3), current=Measured(current, "current", 3)
    )


def _where_run(arc: Arc) -> list[tuple[str, float]]:
    """Return the modes whose voltages draw a border here, each with the nearest current at which it is run."""
    borders = {border[0]: border for border in arc.borders}
    found = []
    if "short-circuit-top" in borders:
        found.append(("short-circuit", min(arc.current, borders["short-circuit-top"][1])))
    if "transition" in borders and numerals.settle(arc.current) >= numerals.settle(borders["transition"][1]):
        found.append(("spray", arc.current))
    return found


def _working(given: Given, arc: Arc) -> tuple[Message, ...]:
    lines = []
    current = Measured(arc.current, "current", 3)
    if arc.from_feed:
        band = Plain(arc.law.half_band * 100.0, 2)
        lines.append(
            say("transfer-mode.working.feed", feed=given.measured("wire_feed_speed"), current=current, band=band)
        )
    for mode, at in _where_run(arc):
        usual = arc.usual(mode, at)
        if usual is not None:
            run_at = Measured(at, "current", 3)
            low, high = Measured(usual[0], "voltage", 3), Measured(usual[2], "voltage", 3)
            lines.append(say("transfer-mode.working." + mode, current=run_at, low=low, high=high))
    for border in arc.borders:
        if border[0] == "transition":
            low, middle, high = [Measured(value, "current", 3) for value in border[1:]]
            lines.append(say("transfer-mode.working.transition", low=low, middle=middle, high=high))
    return tuple(lines)


def _notes(given: Given, arc: Arc) -> tuple[Message, ...]:
    notes = []
    if arc.pulse:
        notes.append(say("transfer-mode.note.pulse"))
    if "carbon_dioxide" in given.made:
        notes.append(say("transfer-mode.note.mix"))
    if not arc.gas.sprays() and not arc.pulse:
        notes.append(say("transfer-mode.note.no-spray"))
        notes.append(say("transfer-mode.remedy.gas." + arc.law.material))
    elif arc.gas.sprays():
        notes.append(say("transfer-mode.note.stick-out"))
    if arc.guessed:
        notes.append(say("transfer-mode.note.distance", distance=Measured(arc.distance, "contact_tip_to_work", 2)))
    return tuple(notes) + Machine(given).notes()


def _cautions(arc: Arc, shown: str) -> tuple[Message, ...]:
    cautions = [say("transfer-mode.caution.start")]
    if shown == "short-circuit":
        cautions.append(say("transfer-mode.caution.cold-lap"))
    return tuple(cautions) + (say("caution.arc"),)


def _sources(arc: Arc) -> tuple[Source, ...]:
    found = [from_.LINES, from_.SERVES, from_.API_577, from_.BULLETIN, from_.SHEET_CODE]
    if arc.law.material == "mild-steel":
        found += [from_.SHORT_CIRCUIT, from_.MORE_VOLTAGE]
    else:
        found.append(from_.MODERN_WELDING)
    if arc.gas.sprays():
        found += [from_.TRANSITIONS, from_.PONOMAREV]
        if arc.gas.word == MIXED:
            found.append(from_.METHONG)
    return tuple(found)


def _next(given: Given, arc: Arc, shown: str) -> tuple[Next, ...]:
    wire: list[tuple[str, object]] = [("wire_material", given.word("wire_material"))]
    if given.word("filler_alloy"):
        wire.append(("filler_alloy", given.word("filler_alloy")))
    sizes: list[tuple[str, object]] = [(name, given.measured(name)) for name in ("wire_diameter", "current")]
    voltage: tuple[str, object] = ("voltage", given.measured("voltage"))
    unit = given.units.get("contact_tip_to_work")
    distance: tuple[str, object] = (
        "contact_tip_to_work",
        Measured(arc.distance, "contact_tip_to_work", None, unit),
    )
    questions = []
    if shown in ("short-circuit", "globular", "spray"):
        mode: tuple[str, object] = ("transfer_mode", shown)
        asked = tuple(wire[:1]) + tuple(sizes) + tuple(arc.gas.carried(given)) + (mode, voltage)
        questions.append(Next("arc-voltage", say("transfer-mode.next.arc-voltage"), asked))
    melts = tuple(wire) + tuple(sizes) + (distance,) + Machine(given).carried()
    if arc.law.transfer != "not-known":
        melts += (("transfer_mode", arc.law.transfer),)
    questions.append(Next("wire-feed", say("transfer-mode.next.wire-feed"), melts))
    questions.append(Next("heat-input", say("transfer-mode.next.heat-input"), (voltage, sizes[1])))
    return tuple(questions)


# ---------------------------------------------------------------- the map


def _drawing(given: Given, arc: Arc) -> object:
    least, most = arc.law.current_limits(arc.point.extension)
    unit = given.units.get("wire_feed_speed")
    shown = say("transfer-mode.mode." + ("pulse" if arc.pulse else arc.mode))
    description = say(
        "transfer-mode.map.description",
        mode=shown,
        current=Measured(arc.current, "current"),
        voltage=Measured(arc.voltage, "voltage"),
    )
    currents = [least + (most - least) * step / _STEPS for step in range(_STEPS + 1)]
    feeds = tuple([(current, arc.law.feed(current, arc.point.extension)) for current in currents])
    point = (arc.current, arc.voltage, arc.law.feed(arc.current, arc.point.extension))
    words = (say("transfer-mode.map"), description)
    names = (
        say("transfer-mode.field.current"),
        say("transfer-mode.field.voltage"),
        say("transfer-mode.field.wire_feed_speed"),
    )
    tag = shown if arc.pulse else None
    return transfer_map.draw(_regions(arc, least, most), feeds, point, unit, tag, words, names)


def _regions(arc: Arc, least: float, most: float) -> "tuple[transfer_map.Region, ...]":
    borders = {border[0]: border for border in arc.borders}
    found = []
    top = borders.get("short-circuit-top")
    transition = borders.get("transition")
    floor, ceiling = transfer.LEAST_VOLTAGE, transfer.MOST_VOLTAGE
    if top is not None:
        rows = tuple([(current, floor, line["shorting"][1]) for current, line in _lines(arc, least, min(top[1], most))])
        found.append((say("transfer-mode.mode.short-circuit"), 130, rows))
    end = most if transition is None else min(transition[1], most)
    if end > least:
        rows = tuple(
            [
                (current, line["shorting"][3] if "shorting" in line else floor, ceiling)
                for current, line in _lines(arc, least, end)
            ]
        )
        found.append((say("transfer-mode.mode.globular"), 80, rows))
    if transition is not None and transition[3] < most:
        rows = tuple([(current, line["spray-arc"][3], ceiling) for current, line in _lines(arc, transition[3], most)])
        found.append((say("transfer-mode.mode.spray"), 50, rows))
    return tuple(found)


def _lines(arc: Arc, first: float, last: float) -> "list[tuple[float, dict[str, Border]]]":
    currents = [first + (last - first) * step / _STEPS for step in range(_STEPS + 1)]
    return [(current, {border[0]: border for border in arc.borders_at(current)}) for current in currents]


CALCULATOR = Calculator(
    name="transfer-mode",
    fields=solid_wire.FIELDS
    + FIELDS
    + (
        Quantity("current", presets=("90 A", "125 A", "150 A", "180 A", "250 A")),
        Quantity("wire_feed_speed", hint=True),
        Quantity(
            "voltage",
            hint=True,
            low=transfer.LEAST_VOLTAGE,
            high=transfer.MOST_VOLTAGE,
            presets=("17 V", "18 V", "19 V", "20 V", "24 V", "27 V"),
        ),
        Choice("position", transfer.EVERY, default="flat"),
        Quantity(
            "thickness", optional=True, hint=True, presets=("1/16 in", "1/8 in", "3/16 in", "1/4 in", "3/8 in", "1/2 in")
        ),
        Quantity(
            "contact_tip_to_work",
            optional=True,
            hint=True,
            low=5.0,
            high=35.0,
            presets=("3/8 in", "1/2 in", "5/8 in", "3/4 in", "10 mm", "12 mm", "15 mm", "19 mm"),
        ),
        Choice("waveform", ("steady", "pulse"), default="steady"),
    )
    + machine_fields.FEED_FIELDS,
    relations=(
        Relation(
            ("current", "wire_feed_speed"),
            _solve,
            check="wire_feed_speed",
            also=(
                "wire_material", "filler_alloy", "wire_diameter", "contact_tip_to_work", "gas", "carbon_dioxide",
                "voltage", "position", "waveform",
            ) + machine_fields.TRIM,
            agree_within=_AGREE,
        ),
    ),
    prepare=_prepare,
    answer=_answer,
    english=ENGLISH,
    sources=(
        from_.LINES, from_.SERVES, from_.API_577, from_.BULLETIN, from_.SHEET_CODE, from_.SHORT_CIRCUIT,
        from_.MORE_VOLTAGE, from_.MODERN_WELDING, from_.TRANSITIONS, from_.PONOMAREV, from_.METHONG,
    ),
    place=22,
    fold_from="position",
    machine=machine_fields.FEED_NAMES,
)  # fmt: skip
