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
    Rows,
    Source,
    Verdict,
    carry,
    say,
)
from calculators.heat_input_passes import ROW_FIELDS, PassLog
from calculators.heat_input_words import ENGLISH
from calculators.instantaneous_energy import (
    arc_energy_of_energy,
    arc_energy_of_power,
    solve_energy,
    solve_power,
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
ISO_18491_INSTANTS = Source(
    "ISO/TR 18491:2015, method B: arc energy = IE ÷ L, and method C: IP ÷ v; seen quoted, not read in full", "standard"
)
ASME_IX_INSTANTS = Source(
    "ASME Boiler and Pressure Vessel Code, Section IX, QW-409.1(c): instantaneous energy ÷ weld length, or instantaneous power ÷ travel speed; seen quoted, edition not seen",
    "standard",
)
ASME_IX = Source(
    "ASME Boiler and Pressure Vessel Code, Section IX, QW-409.1(a): V × A × 60 ÷ travel speed; seen quoted, edition not seen",
    "standard",
)

_SOURCES = {
    "meters": (EN_1011, ISO_18491, ASME_IX),
    "power": (EN_1011, ISO_18491_INSTANTS, ASME_IX_INSTANTS),
    "energy": (EN_1011, ISO_18491_INSTANTS, ASME_IX_INSTANTS),
    "passes": (EN_1011, ISO_18491, ASME_IX, ISO_18491_INSTANTS, ASME_IX_INSTANTS),
}

# ---------------------------------------------------------------- the question

# What the arc gave and how long the weld is, for each thing that may have been measured.
_MEASURED = (
    ("meters", ("voltage", "current", "travel_speed")),
    ("power", ("arc_power", "travel_speed")),
    ("energy", ("instantaneous_energy", "weld_length")),
    ("passes", ()),
)
_ONE_WELD = ("meters", "power", "energy")


def _prepare(given: Given) -> None:
    mode = given.word("measured_by")
    blanks = [name for name in dict(_MEASURED)[mode] if not given.has(name)]
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


def _travel_takes_part(given: Given) -> bool:
    timed = given.has("weld_length") or given.has("arc_time")
    return timed and given.word("measured_by") in ("meters", "power")


# ---------------------------------------------------------------- the answer


def _answer(given: Given) -> Answer:
    mode = given.word("measured_by")
    if mode == "passes":
        return _answer_for_passes(given)
    energy = _arc_energy(given, mode)
    heat = given.number("thermal_efficiency") * energy
    both = [Number("heat_input", heat), Number("arc_energy", energy)]
    if given.word("limit_basis") == "arc-energy":
        both.reverse()
    results = list(both)
    for name in dict(_MEASURED)[mode] + ("thermal_efficiency",):
        if given.solved_for == name:
            results.insert(0, Number(name, given.number(name)))
    if given.solved_for != "travel_speed" and "travel_speed" in given.made:
        results.append(Number("travel_speed", given.number("travel_speed")))
    for name in ("arc_time", "weld_length"):
        if name in given.made and given.solved_for != name:
            results.append(Number(name, given.number(name)))
    return Answer(
        results=tuple(results),
        working=_working(given, mode, energy, heat),
        notes=_notes(given, mode),
        cautions=(say("heat-input.caution.procedure"), say("caution.arc")),
        sources=_SOURCES[mode],
        next_questions=_next(given, mode, heat),
        verdict=_verdict(given, mode, energy, heat),
    )


def _answer_for_passes(given: Given) -> Answer:
    log = PassLog(given)
    return Answer(
        results=log.results(),
        working=log.working(),
        notes=_notes(given, "passes"),
        cautions=(say("heat-input.caution.procedure"), say("caution.arc")),
        sources=_SOURCES["passes"],
        verdict=log.verdict(),
    )


def _arc_energy(given: Given, mode: str) -> float:
    if mode == "power":
        return arc_energy_of_power(given.number("arc_power"), given.number("travel_speed"))
    if mode == "energy":
        return arc_energy_of_energy(given.number("instantaneous_energy"), given.number("weld_length"))
    return arc_energy(given.number("voltage"), given.number("current"), given.number("travel_speed"))


def _working(given: Given, mode: str, energy: float, heat: float) -> tuple[Message, ...]:
    lines = []
    if _travel_takes_part(given):
        lines.append(
            say(
                "heat-input.working.travel",
                weld_length=given.measured("weld_length"),
                arc_time=given.measured("arc_time"),
                travel_speed=_speed(given, "mm/s"),
            )
        )
    if mode == "meters":
        lines += _working_of_meters(given, energy)
    else:
        lines.append(_working_of_instants(given, mode, energy))
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


def _speed(given: Given, unit: str) -> Measured:
    return Measured(given.number("travel_speed"), "travel_speed", 4, unit)


def _working_of_meters(given: Given, energy: float) -> list[Message]:
    return [
        say(
            "heat-input.working.energy",
            voltage=given.measured("voltage"),
            current=given.measured("current"),
            travel_speed=_speed(given, "mm/s"),
            arc_energy=Measured(energy, "arc_energy", 4, "J/mm"),
        ),
        say(
            "heat-input.working.us",
            voltage=Plain(given.number("voltage"), 4),
            current=Plain(given.number("current"), 4),
            travel_speed=_speed(given, "in/min"),
            arc_energy=Measured(energy, "arc_energy", 4, "kJ/in"),
        ),
    ]


def _working_of_instants(given: Given, mode: str, energy: float) -> Message:
    metric = Measured(energy, "arc_energy", 4, "J/mm")
    inches = Measured(energy, "arc_energy", 4, "kJ/in")
    if mode == "power":
        power = Measured(given.number("arc_power"), "arc_power", 4, "W")
        speed = _speed(given, "mm/s")
        return say(
            "heat-input.working.power", arc_power=power, travel_speed=speed, arc_energy=metric, arc_energy_us=inches
        )
    return say(
        "heat-input.working.instantaneous-energy",
        instantaneous_energy=Measured(given.number("instantaneous_energy"), "instantaneous_energy", 4, "J"),
        weld_length=Measured(given.number("weld_length"), "weld_length", 4, "mm"),
        arc_energy=metric,
        arc_energy_us=inches,
    )


def _notes(given: Given, mode: str) -> tuple[Message, ...]:
    notes = []
    if "thermal_efficiency" in given.made:
        id = "usual" if given.solved_for == "thermal_efficiency" else "efficiency"
        notes.append(say("heat-input.note." + id, efficiency=Plain(efficiency_of(given.word("process")), 3)))
    if mode == "passes":
        notes.append(say("heat-input.note.worst"))
    notes.append(say("heat-input.note.bases"))
    about = (("meters", "voltage"), ("power", "instantaneous"), ("energy", "instantaneous"), ("passes", "pulsed-pass"))
    notes.append(say("heat-input.note." + dict(about)[mode]))
    return tuple(notes)


def _verdict(given: Given, mode: str, energy: float, heat: float) -> Verdict | None:
    if not given.has("heat_input_limit"):
        return None
    basis = given.word("limit_basis")
    limit = given.number("heat_input_limit")
    reached = energy if basis == "arc-energy" else heat
    over = numerals.settle(reached) > numerals.settle(limit)
    basis_name = say("heat-input.option.limit_basis." + basis)
    shown_limit = Measured(limit, "heat_input", None, given.units.get("heat_input_limit"))
    if "heat_input" in given.made and given.solved_for in dict(_MEASURED)[mode]:
        at_limit = say("heat-input.verdict.at-limit", limit=shown_limit, basis=basis_name)
        return Verdict("inside", at_limit, say("heat-input.remedy." + str(given.solved_for)))
    message = say(
        "heat-input.verdict.over" if over else "heat-input.verdict.under",
        basis=basis_name,
        limit=shown_limit,
        percent=Plain(abs(reached - limit) / limit * 100.0, 2),
    )
    return Verdict("outside" if over else "inside", message, _remedy(given, mode, over, reached / limit))


def _remedy(given: Given, mode: str, over: bool, share: float) -> Message:
    """Return what would bring it just to the limit; `share` is what was reached over the limit."""
    if mode == "energy":
        least = Measured(given.number("weld_length") * share, "weld_length", 4, given.units.get("weld_length"))
        return say("heat-input.remedy.energy-over" if over else "heat-input.remedy.energy-under", weld_length=least)
    slowest = Measured(given.number("travel_speed") * share, "travel_speed", None, given.units.get("travel_speed"))
    if not over:
        return say("heat-input.remedy.under", travel_speed=slowest)
    if mode == "power":
        power = Measured(given.number("arc_power") / share, "arc_power", None, given.units.get("arc_power"))
        return say("heat-input.remedy.power-over", travel_speed=slowest, arc_power=power)
    current = Measured(given.number("current") / share, "current")
    return say("heat-input.remedy.over", travel_speed=slowest, current=current)


def _next(given: Given, mode: str, heat: float) -> tuple[Next, ...]:
    carried: list[tuple[str, object]] = [] if mode == "meters" else [("measured_by", mode)]
    for name in dict(_MEASURED)[mode]:
        carried.append((name, given.measured(name)))
    questions = []
    if mode == "meters":
        current = (("current", given.measured("current")),)
        questions.append(Next("wire-feed", say("heat-input.next.wire-feed"), current))
    shown = Measured(heat, "heat_input", None, given.units.get("heat_input"))
    cooling = carry("heat_input", shown, 1.0e5, 1.0e7)
    questions.append(Next("cooling-time", say("heat-input.next.cooling-time"), cooling))
    if not given.has("heat_input_limit"):
        questions.append(
            Next("heat-input", say("heat-input.next.limit"), tuple(carried) + (("limit_basis", "arc-energy"),))
        )
    return tuple(questions)


CALCULATOR = Calculator(
    name="heat-input",
    fields=(
        Choice("measured_by", tuple(mode for mode, _ in _MEASURED), default="meters"),
        Quantity("voltage", when=("measured_by", ("meters",)), hint=True, presets=("18 V", "20 V", "24 V", "27 V")),
        Quantity("current", when=("measured_by", ("meters",)), presets=("120 A", "150 A", "180 A", "220 A")),
        Quantity("arc_power", when=("measured_by", ("power",)), hint=True, presets=("3 kW", "4 kW", "5 kW")),
        Quantity("instantaneous_energy", when=("measured_by", ("energy",)), hint=True),
        Quantity(
            "travel_speed",
            when=("measured_by", ("meters", "power")),
            hint=True,
            presets=("8 in/min", "10 in/min", "12 in/min", "16 in/min"),
        ),
        Quantity("weld_length", optional=True, when=("measured_by", _ONE_WELD), presets=("6 in", "12 in")),
        Quantity(
            "arc_time", "pass_time", optional=True, when=("measured_by", ("meters", "power")), hint=True, timer=True
        ),
        Rows("passes", ROW_FIELDS, most=8, optional=False, when=("measured_by", ("passes",))),
        Quantity("heat_input", when=("measured_by", _ONE_WELD), hint=True),
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
            takes_part=_travel_takes_part,
        ),
        Relation(
            ("voltage", "current", "travel_speed", "thermal_efficiency", "heat_input"),
            solve_heat_input,
            check="heat_input",
            takes_part=lambda given: given.word("measured_by") == "meters",
        ),
        Relation(
            ("arc_power", "travel_speed", "thermal_efficiency", "heat_input"),
            solve_power,
            check="heat_input",
            takes_part=lambda given: given.word("measured_by") == "power",
        ),
        Relation(
            ("instantaneous_energy", "weld_length", "thermal_efficiency", "heat_input"),
            solve_energy,
            check="heat_input",
            takes_part=lambda given: given.word("measured_by") == "energy",
        ),
    ),
    prepare=_prepare,
    answer=_answer,
    english=ENGLISH,
    sources=_SOURCES["passes"],
    place=44,
)
