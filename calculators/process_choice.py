"""Process choice: too windy, too thick, too far, too rusty; what is on the truck, and what changes."""

from calculators import ranges
from calculators.contract import (
    Answer,
    Calculator,
    Choice,
    Finding,
    Findings,
    Given,
    Measured,
    Message,
    Next,
    Quantity,
    Verdict,
    Words,
    carry,
    say,
)
from calculators.facts import processes as facts
from calculators.facts import usual_wire
from calculators.process_case import PROCESSES, Case, Suit
from calculators.process_changes import CORED, Changes
from calculators.process_choice_sources import ALL, PRACTICE, Sources
from calculators.process_choice_words import ENGLISH
from calculators.shielding_gas import FIELDS as GAS_FIELDS
from calculators.shielding_gas import MIXED

_KNOWN = ("mild-steel", "stainless", "aluminum")
_TABLES = 2


def _answer(given: Given) -> Answer:
    if given.word("wire_material") not in _KNOWN:
        return Answer(
            results=(Words("stop", say("process-choice.stop")),),
            working=(say("process-choice.working.none"),),
            notes=(say("process-choice.stop.why"),),
            cautions=(say("process-choice.caution.metal-id"),),
            sources=(PRACTICE,),
            next_questions=(Next("metal-id", say("process-choice.next.metal-id"), ()),),
        )
    case = Case(given)
    changes = Changes(case)
    shown = _shown(case)
    results: list[object] = [_headline(case)]
    better = case.better()
    if better is not None:
        results.append(Words("better", _name(better.process)))
    tables = [changes.wire(process) for process in shown]
    best = case.best()
    if changes.rod:
        tables.insert(0 if best is not None and best.process == "stick" else len(tables), changes.stick())
    usable = case.usable()
    results += _findings("choices", [suit for suit in usable if suit.on_truck]) + tables
    results += _findings("elsewhere", [suit for suit in usable if not suit.on_truck])
    results += _findings("ruled-out", [suit for suit in case.ranked if suit.grade() == "no"])
    return Answer(
        results=tuple(results),
        working=_working(case, changes),
        notes=(say("process-choice.note.service"),) if changes.rod and case.structural else (),
        cautions=_cautions(case, changes, shown),
        sources=Sources(case, shown, changes.rod).found,
        next_questions=_next(case, changes, shown),
        verdict=_verdict(case),
    )


def _name(process: str) -> Message:
    return say("process-choice.process." + process)


def _shown(case: Case) -> tuple[str, ...]:
    """Return the wires to set out: the best on the truck, or the best of all where nothing there will do."""
    wires = [suit for suit in case.usable() if suit.process != "stick" and suit.grade() != "weak"]
    there = [suit for suit in wires if suit.on_truck]
    best = case.best()
    if not there and (best is None or best.grade() == "weak"):
        there = wires[:1]
    return tuple([suit.process for suit in there[:_TABLES]])


def _headline(case: Case) -> Words:
    best = case.best()
    if best is None:
        return Words("first", say("process-choice.nothing"))
    if best.grade() == "weak":
        return Words("first", say("process-choice.last-resort", process=_name(best.process)))
    return Words("first", _name(best.process))


def _findings(name: str, suits: list[Suit]) -> list[object]:
    items = []
    for suit in suits:
        worst_first = sorted([(-how_much, place) for place, (how_much, _, _) in enumerate(suit.against)])
        why = [] if suit.grade() == "no" else [say("process-choice.for." + suit.process)]
        for _, place in worst_first:
            _, reason, more = suit.against[place]
            why.append(say("process-choice.reason." + reason, **more))
        items.append(Finding(_name(suit.process), say("process-choice.sure." + suit.grade()), _joined(why)))
    if not items:
        return []
    return [Findings(name.replace("-", "_"), say("process-choice." + name), tuple(items))]


def _joined(sentences: list[Message]) -> Message:
    whole = sentences[-1]
    for position in range(len(sentences) - 2, -1, -1):
        whole = say("process-choice.and", first=sentences[position], rest=whole)
    return whole


def _verdict(case: Case) -> Verdict:
    if case.wind == "inside":
        return Verdict("inside", say("process-choice.verdict.still"))
    remedy = say("process-choice.remedy.wind")
    if case.wind == "outside":
        return Verdict("outside", say("process-choice.verdict.wind"), remedy)
    return Verdict("unclear", say("process-choice.verdict.breeze"), remedy)


def _working(case: Case, changes: Changes) -> tuple[Message, ...]:
    lines = [say("process-choice.working.wind", wind=_wind(case.given), limit=Measured(facts.WIND_LIMIT, "wind_speed"))]
    if changes.rod and changes.has_currents():
        low, start, high = [Measured(each, "current") for each in changes.currents()]
        if changes.is_sheet():
            lines.append(say("process-choice.working.start-sheet", start=start))
        else:
            lines.append(say("process-choice.working.start", low=low, start=start, high=high))
    return tuple(lines)


def _wind(given: Given) -> object:
    for word, low, high in facts.WINDS:
        if word == given.word("wind"):
            ends = [Measured(each, "wind_speed", 2) for each in (low, high)]
            return (
                say("process-choice.span", low=ends[0], high=ends[1])
                if high
                else say("process-choice.working.up", low=ends[0])
            )
    return given.measured("wind_speed")


def _cautions(case: Case, changes: Changes, shown: tuple[str, ...]) -> tuple[Message, ...]:
    wanted = (
        ("metal-id", True),
        ("paint", case.surface == "paint"),
        ("leads", "flux-cored-self-shielded" in shown),
        ("stick", bool(changes.rod)),
        ("high-wind", case.wind == "outside"),
        ("decides", True),
    )
    cautions = [say("process-choice.caution." + key) for key, is_wanted in wanted if is_wanted]
    if case.surface == "galvanized":
        cautions.append(say("caution.zinc"))
    cautions.append(say("caution.arc"))
    return tuple(cautions)


def _next(case: Case, changes: Changes, shown: tuple[str, ...]) -> tuple[Next, ...]:
    given = case.given
    thickness = given.measured("thickness")
    questions = []
    every = ("spray",) if case.metal == "aluminum" else ("short-circuit", "spray")
    modes = [mode for mode in every if case.carried_by(mode)]
    # On sheet that thin another wire is asked about; for stainless none of them has figures.
    thin = case.metal != "aluminum" and ranges.above(usual_wire.THINNEST, case.thickness)
    if modes and not (thin and case.metal == "stainless") and ("solid-wire" in shown or "spool-gun" in shown):
        carried = [("wire_material", case.metal), ("thickness", thickness), ("position", case.position)]
        if case.gas.told:
            carried += case.gas.carried(given)
        if thin:
            carried.append(("wire_diameter", Measured(usual_wire.THIN_WIRE, "wire_diameter", None, "in")))
        ask = "process-choice.next.screened" if case.wind == "outside" else "process-choice.next.settings"
        questions.append(Next("settings", say(ask), tuple(carried) + _around(case)))
    elif case.wants_spray_gas():
        carried = [("wire_material", case.metal), ("thickness", thickness), ("position", case.position)]
        carried += [("gas", MIXED), ("carbon_dioxide", "10 %")]  # in the middle of the mixes that spray
        questions.append(Next("settings", say("process-choice.next.spray-gas"), tuple(carried) + _around(case)))
    cored = [process for process in shown if process in CORED]
    if cored:
        questions.append(Next("joint-fill", say("process-choice.next.joint-fill"), (("wire_and_gas", cored[0]),)))
    questions.append(Next("metal-id", say("process-choice.next.metal-id"), ()))
    if changes.rod == "e7018":
        rod = (("family", "structural"), ("thickness", thickness), ("process", "low-hydrogen-stick"))
        questions.append(Next("preheat", say("process-choice.next.preheat"), rod))
    if given.has("machine_distance"):
        length = carry("lead_length", Measured(case.reach, "lead_length"), 0.5, 200.0)
        questions.append(Next("lead-drop", say("process-choice.next.lead-drop"), length))
    return tuple(questions)


def _around(case: Case) -> tuple[tuple[str, object], ...]:
    """Return wind and surface as settings takes them."""
    found = []
    if case.given.word("wind") == "breeze":
        found.append(("wind", "breeze"))
    if case.surface in ("rust", "galvanized"):
        found.append(("surface", case.surface))
    return tuple(found)


_ASKED = ("wire_material", _KNOWN)


def _truck(field: str) -> Choice:
    usual = "yes" if field in ("solid_wire", "stick_box") else "no"
    return Choice(field, ("yes", "no"), default=usual, when=_ASKED)


CALCULATOR = Calculator(
    name="process-choice",
    fields=(
        Choice("wire_material", _KNOWN + ("not-known",), default="mild-steel"),
        Quantity(
            "thickness",
            when=_ASKED,
            low=0.5,
            high=100.0,
            presets=("1/8 in", "3/16 in", "1/4 in", "3/8 in", "1/2 in", "3 mm", "6 mm", "12 mm"),
        ),
        Choice("service", ("structural", "other"), default="structural", when=_ASKED),
        Choice("wind", ("still", "breeze", "wind", "measured"), hint=True, when=_ASKED),
        Quantity("wind_speed", when=("wind", ("measured",)), presets=("3 mph", "5 mph", "8 mph", "10 mph")),
        Choice("position", ("flat", "horizontal", "vertical-up", "vertical-down", "overhead"), default="flat", when=_ASKED),
        Choice("surface", ("clean", "mill-scale", "rust", "paint", "galvanized"), default="clean", when=("wire_material", ("mild-steel",))),
        Quantity(
            "machine_distance",
            "part_length",
            optional=True,
            hint=True,
            when=_ASKED,
            low=0.3,
            presets=("10 ft", "15 ft", "25 ft", "50 ft", "100 ft", "5 m", "15 m"),
        ),
        Choice("gas", GAS_FIELDS[0].options, optional=True, when=_ASKED),
        GAS_FIELDS[1],
    )
    + tuple([_truck(field) for _, field, _ in PROCESSES]),
    answer=_answer,
    english=ENGLISH,
    sources=ALL,
    place=16,
    fold_from="gas",
)  # fmt: skip
