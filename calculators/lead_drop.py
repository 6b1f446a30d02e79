"""Lead drop: the volts and watts lost in welding leads, the longest lead, or the size that keeps the loss low."""

from calculators import conductors, duty, numerals, ranges
from calculators.contract import (
    Answer,
    Calculator,
    Choice,
    Given,
    Measured,
    Message,
    Next,
    Number,
    Plain,
    Quantity,
    Refusal,
    Relation,
    Source,
    Verdict,
    Words,
    say,
)
from calculators.facts import conductors as facts

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

COPPER = Source(
    "NBS Handbook 100, Copper Wire Tables, 1966: resistivity of annealed copper; its change with temperature from memory",
    "published",
)
AWG = Source(
    "ASTM B258, American Wire Gauge; with copper and 2 % stranding it gives NEC Chapter 9 Table 8 within 0.3 %",
    "standard",
)
IEC_60228 = Source("IEC 60228:2004, class 5: highest resistance of metric cable; seen quoted", "standard")
FACT_SHEET = Source("AWS Safety and Health Fact Sheet 39, Welding Cables, 2016: 4 V, and no coils", "published")
STEADY = Source(
    "NEC Table 400.5(B), 75 °C, in Set Lighting Technician's Handbook, 4th ed.: what a cable carries continuously",
    "published",
)
CONNECTIONS = Source("Connectors and clamp lose 0.3 to 1 V together; 60 % arc time by hand", "common practice")
FINE = Source("Strands of the finest cable are up to 7 % longer than it (ASTM B172)", "from memory")

_SOURCES = (COPPER, AWG, IEC_60228, FACT_SHEET, STEADY, CONNECTIONS, FINE)
_OTHER = "other"
_SIZES = tuple([name for name, _ in conductors.LEADS])
_NOMINAL = {name: area for name, area, _ in facts.METRIC_LEADS}


# ---------------------------------------------------------------- what is asked


def _prepare(given: Given) -> None:
    size = given.word("cable_size")
    if size in _SIZES:
        given.fill("conductor_area", dict(conductors.LEADS)[size])
    if not given.has("conductor_temperature"):
        given.fill("conductor_temperature", facts.HOT_LEAD)
    if not given.has("duty_cycle"):
        given.fill("duty_cycle", facts.HAND_DUTY)
    if not size and not given.has("lead_voltage_drop") and given.has("lead_length") and given.has("current"):
        given.fill("lead_voltage_drop", facts.LEAD_LIMIT)


def _solve(unknown: str, values: "dict[str, Any]") -> float:
    joints = values.get("connection_drop", 0.0)
    if unknown != "conductor_area":
        ranges.require("conductor_area", values["conductor_area"], 8e-6, 130e-6, "m2")
    # What 1 m one way of 1 m2 resists, out and back.
    unit = conductors.loop_resistance(1.0, 1e-3, conductors.copper_resistivity(values["conductor_temperature"])) * 1e-3
    if unknown == "lead_voltage_drop":
        return joints + values["current"] * unit * values["lead_length"] / values["conductor_area"]
    left = values["lead_voltage_drop"] - joints
    if numerals.settle(left, 6) <= 0.0:
        raise Refusal("connection_drop", say("lead-drop.refusal.joints"))
    if unknown == "conductor_area":
        return unit * values["lead_length"] * values["current"] / left
    per_metre = unit / values["conductor_area"]
    return left / (per_metre * values["current" if unknown == "lead_length" else "lead_length"])


class _Lead:
    """The lead asked about, and what is the matter with it."""

    def __init__(self, given: Given) -> None:
        self.given = given
        self.size = given.word("cable_size")
        self.found = given.solved_for == "conductor_area"
        self.current = given.number("current")
        self.joints = given.number("connection_drop") if given.has("connection_drop") else 0.0
        self.effective = duty.effective_current(self.current, given.number("duty_cycle"))
        self.area = given.number("conductor_area")
        if self.found:
            self.size, self.area = _smallest("awg", self.area, self.effective)
        self.drop = self.drop_of(self.area)
        self.steady = conductors.steady_current(self.area)
        self.hot = numerals.settle(self.effective) > numerals.settle(self.steady)

    def solved(self, unknown: str, **changed: float) -> float:
        """Return one of the four numbers from the others."""
        values: dict[str, Any] = {"connection_drop": self.joints}
        for name in ("lead_length", "current", "conductor_area", "lead_voltage_drop", "conductor_temperature"):
            values[name] = changed.get(name, self.given.number(name))
        return _solve(unknown, values)

    def drop_of(self, area: float) -> float:
        """Return what a lead of that copper would lose, [V]."""
        return self.solved("lead_voltage_drop", conductor_area=area)

    def spread(self) -> tuple[float, float]:
        """Return the least and the most that the copper may resist over what was reckoned."""
        low, high = 1.0, facts.FINE_STRANDING / facts.STRANDING
        if self.size in _NOMINAL:
            low, high = self.area / _NOMINAL[self.size], 1.0
        if "conductor_temperature" in self.given.made:
            cold = conductors.copper_resistivity(facts.REFERENCE_TEMPERATURE)
            low *= cold / conductors.copper_resistivity(facts.HOT_LEAD)
        return low, high


def _smallest(system: str, area: float, effective: float) -> tuple[str, float]:
    """Return the thinnest size of a system that has the copper wanted and does not overheat."""
    for name, copper in conductors.LEADS:
        if name.startswith(system) and numerals.settle(copper) >= numerals.settle(area):
            if numerals.settle(conductors.steady_current(copper)) >= numerals.settle(effective):
                return name, copper
    if numerals.settle(area) > numerals.settle(max([copper for _, copper in conductors.LEADS])):
        raise Refusal("", say("lead-drop.refusal.thick", area=Measured(area, "conductor_area")))
    raise Refusal("", say("lead-drop.refusal.heat", effective=Measured(effective, "current", 3)))


def _named(size: str) -> Message:
    return say("lead-drop.option.cable_size." + size)


def _both(area: float, effective: float) -> Message:
    american, _ = _smallest("awg", area, effective)
    metric, _ = _smallest("mm2", area, effective)
    return say("lead-drop.sizes", american=_named(american), metric=_named(metric))


# ---------------------------------------------------------------- the answer


def _answer(given: Given) -> Answer:
    lead = _Lead(given)
    cautions = ("coil", "heat", "worn", "work") if not lead.hot else ("coil", "worn", "work")
    return Answer(
        results=tuple(_results(given, lead)),
        working=_working(given, lead),
        notes=_notes(given, lead),
        cautions=tuple([say("lead-drop.caution." + each) for each in cautions]),
        sources=_SOURCES,
        next_questions=_next(lead),
        verdict=None if lead.found else _verdict(lead),
    )


def _results(given: Given, lead: _Lead) -> list[object]:
    results: list[object] = []
    low, high = lead.spread()
    why = "cold-to-hot" if "conductor_temperature" in given.made else "strands"
    band = say("lead-drop.band." + why)
    cable = lead.drop - lead.joints
    drop = Number(
        "lead_voltage_drop", lead.drop, "voltage_drop", lead.joints + low * cable, lead.joints + high * cable, band
    )
    if lead.found:
        needed = given.number("conductor_area")
        results += [Words("cable_size", _both(needed, lead.effective)), Number("conductor_area", needed)]
        drop.label = say("lead-drop.label.drop-of", size=_named(lead.size))
    elif given.solved_for in ("lead_length", "current"):
        value = given.number(str(given.solved_for))
        results.append(Number(str(given.solved_for), value, None, value / high, value / low, band))
    results.append(drop)
    results.append(Number("lost_power", lead.drop * lead.current, "arc_power", figures=2))
    if not lead.found:
        if given.solved_for == "lead_voltage_drop" and lead.joints < facts.LEAD_LIMIT:
            longest = lead.solved("lead_length", lead_voltage_drop=facts.LEAD_LIMIT)
            results.append(Number("longest_lead", longest, "lead_length", figures=2))
        results.append(Words("other_system", _nearest(lead)))
    results.append(Number("steady_current", lead.steady, "current"))
    return results


def _nearest(lead: _Lead) -> Message:
    """Return the size of the other system that is next in copper."""
    other = "awg" if lead.size in _NOMINAL else "mm2"
    near = [(abs(copper - lead.area), name) for name, copper in conductors.LEADS if name.startswith(other)]
    return say("lead-drop.nearest", size=_named(min(near)[1]), area=Measured(lead.area, "conductor_area"))


def _verdict(lead: _Lead) -> Verdict:
    limit = Measured(facts.LEAD_LIMIT, "voltage_drop")
    over = numerals.settle(lead.drop, 6) > facts.LEAD_LIMIT
    if lead.hot:
        carried = Measured(lead.effective, "current", 3)
        message = say("lead-drop.verdict.hot", effective=carried, steady=Measured(lead.steady, "current", 3))
    else:
        message = say("lead-drop.verdict.over" if over else "lead-drop.verdict.under", limit=limit)
    if not over and not lead.hot:
        return Verdict("inside", message)
    return Verdict("outside", message, _remedy(lead, limit))


def _remedy(lead: _Lead, limit: Measured) -> Message:
    if lead.joints >= facts.LEAD_LIMIT:
        return say("lead-drop.remedy.joints", limit=limit)
    area = lead.solved("conductor_area", lead_voltage_drop=facts.LEAD_LIMIT)
    try:
        return say("lead-drop.remedy.size", limit=limit, sizes=_both(area, lead.effective))
    except Refusal:
        return say("lead-drop.remedy.closer", limit=limit)


def _working(given: Given, lead: _Lead) -> tuple[Message, ...]:
    length, temperature = given.number("lead_length"), given.number("conductor_temperature")
    resistivity = conductors.copper_resistivity(temperature)
    resistance = conductors.loop_resistance(length, lead.area, resistivity)
    loop = Measured(2.0 * length, "lead_length", 4, given.units.get("lead_length"))
    shown: dict[str, object] = {
        "length": Measured(length, "lead_length", 4, given.units.get("lead_length")),
        "loop": loop,
        "loop_metres": Measured(2.0 * length, "lead_length", 4, "m"),
        "temperature": Measured(temperature, "conductor_temperature", 3, given.units.get("conductor_temperature")),
        "resistivity": Plain(resistivity * 1e6, 4),
        "stranding": Plain(facts.STRANDING, 3),
        "area": Measured(lead.area, "conductor_area", 4),
        "needed": Measured(given.number("conductor_area"), "conductor_area", 4),
        "resistance": Plain(resistance * 1000.0, 4),
        "current": Measured(lead.current, "current", 4),
        "limit": Measured(given.number("lead_voltage_drop"), "voltage_drop", 4),
        "joints": Measured(lead.joints, "voltage_drop", 3),
        "drop": Measured(lead.drop, "voltage_drop", 4),
        "power": Measured(lead.drop * lead.current, "arc_power", 4),
    }
    lines = ["loop", "copper", "needed"] if lead.found else ["loop", "copper"]
    lines += ["resistance", "drop", "power"]
    return tuple([say("lead-drop.working." + line, **shown) for line in lines])


def _notes(given: Given, lead: _Lead) -> tuple[Message, ...]:
    notes = []
    if "lead_voltage_drop" in given.made and lead.found:
        notes.append(say("lead-drop.note.limit", limit=Measured(facts.LEAD_LIMIT, "voltage_drop")))
    if lead.found and lead.area > given.number("conductor_area") and _heat_decides(given, lead):
        notes.append(say("lead-drop.note.heat-decides", effective=Measured(lead.effective, "current", 3)))
    if "duty_cycle" in given.made:
        notes.append(say("lead-drop.note.duty", percent=Plain(facts.HAND_DUTY * 100.0, 2)))
    if "conductor_temperature" in given.made:
        hot = Measured(facts.HOT_LEAD, "conductor_temperature", 2)
        notes.append(say("lead-drop.note.hot", temperature=hot))
    if not given.has("connection_drop"):
        low, high = facts.CONNECTION_LOSS
        notes.append(
            say("lead-drop.note.joints", low=Measured(low, "voltage_drop"), high=Measured(high, "voltage_drop"))
        )
    notes.append(say("lead-drop.note.arc"))
    return tuple(notes)


def _heat_decides(given: Given, lead: _Lead) -> bool:
    return _smallest("awg", given.number("conductor_area"), 0.0)[0] != lead.size


def _next(lead: _Lead) -> tuple[Next, ...]:
    current = ("current", Measured(lead.current, "current"))
    questions = []
    if lead.drop < 20.0:  # the most that arc-voltage reckons with
        drop = ("lead_voltage_drop", Measured(lead.drop, "lead_voltage_drop"))
        questions.append(Next("arc-voltage", say("lead-drop.next.arc-voltage"), (drop, current)))
    if 20.0 <= lead.current <= 600.0:
        questions.append(Next("duty-cycle", say("lead-drop.next.duty-cycle"), (current,)))
        questions.append(Next("generator-size", say("lead-drop.next.generator-size"), (current,)))
    return tuple(questions)


ENGLISH = {
    "title": "Lead drop",
    "question": "How many volts do my leads eat, and what cable keeps the loss small?",
    "found-by": "cable voltage drop loss leads long wire size awg gauge 1/0 2/0 mm2 stinger ground clamp dinse extension",
    "lead": "Leave out what you want to know. Length and current alone: the cable for 4 V.",
    "field.lead_length": "Lead, one way",
    "hint.lead_length": "Machine to work. Doubled here for the way back.",
    "field.current": "Current",
    "field.cable_size": "Cable",
    "hint.cable_size": "Copper, the same both ways.",
    "option.cable_size.": "Which one do I need?",
    "option.cable_size.awg-4": "4 AWG",
    "option.cable_size.awg-3": "3 AWG",
    "option.cable_size.awg-2": "2 AWG",
    "option.cable_size.awg-1": "1 AWG",
    "option.cable_size.awg-1-0": "1/0 AWG",
    "option.cable_size.awg-2-0": "2/0 AWG",
    "option.cable_size.awg-3-0": "3/0 AWG",
    "option.cable_size.awg-4-0": "4/0 AWG",
    "option.cable_size.mm2-16": "16 mm²",
    "option.cable_size.mm2-25": "25 mm²",
    "option.cable_size.mm2-35": "35 mm²",
    "option.cable_size.mm2-50": "50 mm²",
    "option.cable_size.mm2-70": "70 mm²",
    "option.cable_size.mm2-95": "95 mm²",
    "option.cable_size.mm2-120": "120 mm²",
    "option.cable_size.other": "Another: type its copper",
    "field.conductor_area": "Copper area",
    "field.lead_voltage_drop": "Volts lost",
    "hint.lead_voltage_drop": "To find a cable, a length or a current: the most you allow.",
    "field.connection_drop": "Of that in connectors and clamp",
    "hint.connection_drop": "If measured across them under load. Blank: none.",
    "field.conductor_temperature": "Copper temperature",
    "hint.conductor_temperature": "Blank: a hot lead.",
    "field.duty_cycle": "Arc time in ten minutes",
    "hint.duty_cycle": "Only for the heat of the cable. Blank: 60 %.",
    "range.conductor_area": "no welding leads are made outside that",
    "result.cable_size": "Cable for it, or thicker",
    "result.lead_voltage_drop": "Volts lost, out and back",
    "result.lead_length": "Longest lead, one way",
    "result.current": "Most current",
    "result.lost_power": "Heat in the leads",
    "result.longest_lead": "Longest for 4 V, one way",
    "result.conductor_area": "Copper needed for the volts",
    "result.other_system": "This cable",
    "result.steady_current": "Continuous current of the cable, laid out",
    "label.drop-of": "Volts lost in {size}, out and back",
    "sizes": "{american} or {metric}",
    "nearest": "Counts as {area} of copper; nearest is {size}",
    "band.cold-to-hot": "From cold copper to hot, and by how finely it is stranded.",
    "band.strands": "By how finely the cable is stranded.",
    "verdict.under": "no more than {limit} lost",
    "verdict.over": "more than {limit} lost",
    "verdict.hot": "too thin: it heats as with {effective} continuous, and carries about {steady}",
    "remedy.size": "For {limit} and the heat: {sizes}.",
    "remedy.closer": "No single cable keeps {limit} and the heat: bring the machine closer.",
    "remedy.joints": "The connections alone lose {limit} or more: clean and tighten them first.",
    "refusal.joints": "The connections lose all the volts you allow: nothing is left for the cable",
    "refusal.thick": "It takes {area} of copper, more than any one lead has. Bring the machine closer or use less current",
    "refusal.heat": "No one lead stands {effective} continuous. Use less current, or less arc time",
    "working.loop": "Out and back = 2 × {length} = {loop}",
    "working.copper": "Copper at {temperature}: {resistivity} Ω·mm²/m; strands are {stranding} times as long as the cable.",
    "working.needed": "Copper needed = {resistivity} × {stranding} × {loop_metres} × {current} ÷ ({limit} − {joints}) = {needed}",
    "working.resistance": "Resistance = {resistivity} × {stranding} × {loop_metres} ÷ {area} = {resistance} mΩ",
    "working.drop": "Lost = {current} × {resistance} mΩ + connections {joints} = {drop}",
    "working.power": "Heat = {drop} × {current} = {power}",
    "note.limit": "{limit} is the loss that the trade keeps to, so that the arc behaves.",
    "note.heat-decides": "The volts would allow a thinner cable. Its heat, as of {effective} continuous, does not.",
    "note.duty": "Arc time of {percent} % is taken for the heat, as in steady hand welding. A machine-held arc runs longer.",
    "note.hot": "Reckoned at {temperature}. A list reckoned with cold copper shows a fifth less.",
    "note.joints": "Connectors and clamp take another {low} to {high} together, more when loose or burnt. Measure across them under load.",
    "note.arc": "The volts are lost at the arc. With constant voltage, set that much more at the machine, after trying shorter or thicker leads.",
    "caution.coil": "Lay leads out. A coil heats in one spot, and upsets the arc.",
    "caution.heat": "Few volts lost does not mean a cool cable: its own rating and the machine's book rule.",
    "caution.worn": "Cut, wet or patched insulation, a hot or loose connector: take it out of use.",
    "caution.work": "Clamp on the piece itself, near the weld: current through bearings, chains or pipes burns them.",
    "next.arc-voltage": "What volts are left at the arc?",
    "next.duty-cycle": "How long may the machine weld at this current?",
    "next.generator-size": "What feeds the machine at this current?",
}

CALCULATOR = Calculator(
    name="lead-drop",
    fields=(
        Quantity("lead_length", hint=True, presets=("25 ft", "50 ft", "100 ft", "10 m", "20 m", "30 m")),
        Quantity("current", presets=("125 A", "150 A", "200 A", "250 A")),
        Choice("cable_size", _SIZES + (_OTHER,), optional=True, hint=True),
        Quantity("conductor_area", when=("cable_size", (_OTHER,))),
        Quantity("lead_voltage_drop", "voltage_drop", hint=True, presets=("2 V", "4 V")),
        Quantity("connection_drop", "voltage_drop", optional=True, hint=True, high=10.0),
        Quantity("duty_cycle", optional=True, hint=True, presets=("20 %", "30 %", "60 %", "100 %")),
        Quantity(
            "conductor_temperature", optional=True, hint=True, presets=("70 degF", "120 degF", "20 degC", "50 degC")
        ),
    ),
    relations=(
        Relation(
            ("lead_length", "current", "conductor_area", "lead_voltage_drop"),
            _solve,
            check="lead_voltage_drop",
            also=("conductor_temperature", "connection_drop"),
            agree_within=0.1,
        ),
    ),
    prepare=_prepare,
    answer=_answer,
    english=ENGLISH,
    sources=_SOURCES,
    place=26,
)
