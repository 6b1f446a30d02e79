"""Heat input: what the arc puts into each length of weld, or what keeps it under a limit."""

from calculators import numerals
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
    Relation,
    Source,
    Verdict,
    say,
)
from calculators.line_energy import (
    THERMAL_EFFICIENCY,
    arc_energy,
    efficiency_of,
    solve_heat_input,
    solve_travel,
)

EN_1011 = Source(
    "EN 1011-1:1998 and ISO/TR 17671-1: heat input = k × U × I ÷ v, with k by process; as tabulated by TWI; not read in the standard itself",
    "standard",
)
ISO_18491 = Source("ISO/TR 18491, method A: arc energy = U × I ÷ v; seen quoted, not read in full", "standard")
ASME_IX = Source(
    "ASME Boiler and Pressure Vessel Code, Section IX, QW-409.1(a): V × A × 60 ÷ travel speed; seen quoted, edition not seen",
    "standard",
)


# ---------------------------------------------------------------- the question


def _prepare(given: Given) -> None:
    blanks = [name for name in ("voltage", "current", "travel_speed") if not given.has(name)]
    if given.has("weld_length") and given.has("arc_time") and "travel_speed" in blanks:
        blanks.remove("travel_speed")
    # With all the others given, the efficiency is the one blank; else the process decides it.
    if not given.has("thermal_efficiency") and (blanks or not given.has("heat_input")):
        given.fill("thermal_efficiency", efficiency_of(given.word("process")))
    if given.has("heat_input_limit") and not given.has("heat_input") and len(blanks) == 1:
        given.fill("heat_input", _limit_as_heat_input(given))


def _limit_as_heat_input(given: Given) -> float:
    limit = given.number("heat_input_limit")
    return limit * given.number("thermal_efficiency") if given.word("limit_basis") == "arc-energy" else limit


def _answer(given: Given) -> Answer:
    energy = arc_energy(given.number("voltage"), given.number("current"), given.number("travel_speed"))
    heat = given.number("thermal_efficiency") * energy
    both = [Number("heat_input", heat), Number("arc_energy", energy)]
    if given.word("limit_basis") == "arc-energy":
        both.reverse()
    results = list(both)
    for name in ("travel_speed", "current", "voltage", "thermal_efficiency"):
        if given.solved_for == name:
            results.insert(0, Number(name, given.number(name)))
    if given.solved_for != "travel_speed" and "travel_speed" in given.made:
        results.append(Number("travel_speed", given.number("travel_speed")))
    for name in ("arc_time", "weld_length"):
        if name in given.made:
            results.append(Number(name, given.number(name)))
    return Answer(
        results=tuple(results),
        working=_working(given, energy, heat),
        notes=_notes(given),
        cautions=(say("heat-input.caution.procedure"), say("caution.arc")),
        sources=(EN_1011, ISO_18491, ASME_IX),
        next_questions=_next(given),
        verdict=_verdict(given, energy, heat),
    )


def _working(given: Given, energy: float, heat: float) -> tuple[Message, ...]:
    speed = given.number("travel_speed")
    lines = []
    if given.has("weld_length") and given.has("arc_time"):
        lines.append(
            say(
                "heat-input.working.travel",
                weld_length=given.measured("weld_length"),
                arc_time=given.measured("arc_time"),
                travel_speed=Measured(speed, "travel_speed", 4, "mm/s"),
            )
        )
    lines.append(
        say(
            "heat-input.working.energy",
            voltage=given.measured("voltage"),
            current=given.measured("current"),
            travel_speed=Measured(speed, "travel_speed", 4, "mm/s"),
            arc_energy=Measured(energy, "arc_energy", 4, "J/mm"),
        )
    )
    lines.append(
        say(
            "heat-input.working.us",
            voltage=Plain(given.number("voltage"), 4),
            current=Plain(given.number("current"), 4),
            travel_speed=Measured(speed, "travel_speed", 4, "in/min"),
            arc_energy=Measured(energy, "arc_energy", 4, "kJ/in"),
        )
    )
    lines.append(
        say(
            "heat-input.working.heat",
            efficiency=Plain(given.number("thermal_efficiency"), 4),
            arc_energy=Measured(energy, "arc_energy", 4, "J/mm"),
            heat_input=Measured(heat, "heat_input", 4, "J/mm"),
            heat_input_us=Measured(heat, "heat_input", 4, "kJ/in"),
        )
    )
    return tuple(lines)


def _notes(given: Given) -> tuple[Message, ...]:
    notes = []
    if "thermal_efficiency" in given.made:
        id = "usual" if given.solved_for == "thermal_efficiency" else "efficiency"
        notes.append(say("heat-input.note." + id, efficiency=Plain(efficiency_of(given.word("process")), 3)))
    notes.append(say("heat-input.note.bases"))
    notes.append(say("heat-input.note.voltage"))
    return tuple(notes)


def _verdict(given: Given, energy: float, heat: float) -> Verdict | None:
    if not given.has("heat_input_limit"):
        return None
    basis = given.word("limit_basis")
    limit = given.number("heat_input_limit")
    reached = energy if basis == "arc-energy" else heat
    over = numerals.settle(reached) > numerals.settle(limit)
    unit = given.units.get("heat_input_limit")
    slowest = given.number("travel_speed") * reached / limit
    basis_name = say("heat-input.option.limit_basis." + basis)
    shown_limit = Measured(limit, "heat_input", None, unit)
    if "heat_input" in given.made and given.solved_for in ("travel_speed", "voltage", "current"):
        at_limit = say("heat-input.verdict.at-limit", limit=shown_limit, basis=basis_name)
        return Verdict("inside", at_limit, say("heat-input.remedy." + given.solved_for))
    message = say(
        "heat-input.verdict.over" if over else "heat-input.verdict.under",
        basis=basis_name,
        limit=shown_limit,
        percent=Plain(abs(reached - limit) / limit * 100.0, 2),
    )
    remedy = say(
        "heat-input.remedy.over" if over else "heat-input.remedy.under",
        travel_speed=Measured(slowest, "travel_speed", None, given.units.get("travel_speed")),
        current=Measured(given.number("current") * limit / reached, "current"),
    )
    return Verdict("outside" if over else "inside", message, remedy)


def _next(given: Given) -> tuple[Next, ...]:
    carried = []
    for name in ("voltage", "current", "travel_speed"):
        carried.append((name, given.measured(name)))
    questions = [Next("wire-feed", say("heat-input.next.wire-feed"), (("current", given.measured("current")),))]
    if not given.has("heat_input_limit"):
        questions.append(
            Next("heat-input", say("heat-input.next.limit"), tuple(carried) + (("limit_basis", "arc-energy"),))
        )
    return tuple(questions)


ENGLISH = {
    "title": "Heat input",
    "question": "How much heat goes into each inch of weld, and am I inside the limit?",
    "lead": "Leave one of voltage, current, travel speed and heat input blank: it is worked out.",
    "field.process": "Process",
    "option.process.gas-metal-arc": "Gas metal arc (MIG/MAG)",
    "option.process.flux-cored-arc": "Flux-cored arc",
    "option.process.shielded-metal-arc": "Shielded metal arc (stick)",
    "option.process.submerged-arc": "Submerged arc",
    "option.process.gas-tungsten-arc": "Gas tungsten arc",
    "field.voltage": "Arc voltage",
    "hint.voltage": "At the arc. A machine at the end of long leads shows more than the arc gets.",
    "field.current": "Current",
    "field.travel_speed": "Travel speed",
    "hint.travel_speed": "Or leave it blank and give a weld length and the arc time below.",
    "field.weld_length": "Weld length",
    "field.arc_time": "Arc time",
    "hint.arc_time": "From arc on to arc off. The timer fills it in.",
    "field.thermal_efficiency": "Thermal efficiency",
    "hint.thermal_efficiency": "Blank takes the usual value of the process.",
    "field.heat_input": "Heat input",
    "hint.heat_input": "With the efficiency in it. Leave blank to work it out.",
    "field.limit_basis": "Limit to keep",
    "option.limit_basis.": "None",
    "option.limit_basis.arc-energy": "US: efficiency left out",
    "option.limit_basis.heat-input": "European: efficiency in",
    "field.heat_input_limit": "Highest allowed",
    "result.heat_input": "Heat input, efficiency included",
    "result.arc_energy": "Arc energy, no efficiency",
    "result.travel_speed": "Travel speed",
    "result.current": "Current",
    "result.voltage": "Arc voltage",
    "result.thermal_efficiency": "Thermal efficiency",
    "result.arc_time": "Arc time",
    "result.weld_length": "Weld length",
    "working.travel": "Travel speed = weld length ÷ arc time = {weld_length} ÷ {arc_time} = {travel_speed}",
    "working.energy": "Arc energy = voltage × current ÷ travel speed = {voltage} × {current} ÷ {travel_speed} = {arc_energy}",
    "working.us": "The same in inches: {voltage} × {current} × 60 ÷ (1000 × {travel_speed}) = {arc_energy}",
    "working.heat": "Heat input = efficiency × arc energy = {efficiency} × {arc_energy} = {heat_input} = {heat_input_us}",
    "note.efficiency": "Efficiency {efficiency} is the convention for this process; type another if your procedure gives one.",
    "note.usual": "The convention for this process is {efficiency}.",
    "note.bases": "Two bases are in use. US procedures limit arc energy, without the efficiency. European ones limit heat input, with it. Compare like with like.",
    "note.voltage": "For pulsed current, meter volts times meter amps is not the power: use a meter that shows energy or power.",
    "verdict.under": "{percent} % under {limit} ({basis})",
    "verdict.over": "{percent} % over {limit} ({basis})",
    "verdict.at-limit": "just at {limit} ({basis})",
    "remedy.under": "Slowest travel that stays inside: {travel_speed}.",
    "remedy.over": "It comes inside at a travel speed of {travel_speed} or faster, or at {current} or less with the same travel.",
    "remedy.travel_speed": "This is the slowest travel that keeps the limit. Faster is inside.",
    "remedy.voltage": "This is the highest voltage that keeps the limit. Lower is inside.",
    "remedy.current": "This is the highest current that keeps the limit. Lower is inside.",
    "caution.procedure": "The limit, its basis and how to measure belong to the welding procedure (WPS). It rules; this page only does the sum.",
    "next.wire-feed": "What wire feed gives this current?",
    "next.limit": "Check it against a limit",
}

CALCULATOR = Calculator(
    name="heat-input",
    fields=(
        Quantity("voltage", hint=True, presets=("18 V", "20 V", "24 V", "27 V")),
        Quantity("current", presets=("120 A", "150 A", "180 A", "220 A")),
        Quantity("travel_speed", hint=True, presets=("8 in/min", "10 in/min", "12 in/min", "16 in/min")),
        Quantity("weld_length", optional=True, presets=("6 in", "12 in")),
        Quantity("arc_time", optional=True, hint=True, timer=True),
        Quantity("heat_input", hint=True),
        Choice("limit_basis", ("arc-energy", "heat-input"), optional=True),
        Quantity("heat_input_limit", when=("limit_basis", ("arc-energy", "heat-input"))),
        Choice("process", tuple(name for name, _ in THERMAL_EFFICIENCY), default="gas-metal-arc"),
        Quantity("thermal_efficiency", hint=True),
    ),
    relations=(
        Relation(
            ("travel_speed", "weld_length", "arc_time"),
            solve_travel,
            check="travel_speed",
            required=False,
            its_own=("weld_length", "arc_time"),
        ),
        Relation(
            ("voltage", "current", "travel_speed", "thermal_efficiency", "heat_input"),
            solve_heat_input,
            check="heat_input",
        ),
    ),
    prepare=_prepare,
    answer=_answer,
    english=ENGLISH,
    sources=(EN_1011, ISO_18491, ASME_IX),
    place=40,
)
