"""Shade: how dark the filter has to be by law, and how dark it is worn."""

from calculators import ranges
from calculators.contract import (
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
    Source,
    Verdict,
    Words,
    carry,
    say,
)
from calculators.facts import shade as facts
from calculators.shade_bands import arc_shade, plate_shade, rod_shade
from calculators.shade_words import ENGLISH

LAW = Source("29 CFR 1910.133(a)(5): filter lenses, least shade; (a)(1) flying particles", "law")
COMFORT = Source("ANSI Z49.1 and AWS F2.2: shade for comfort; seen quoted, edition not seen", "standard")
OTHERS = Source(
    "29 CFR 1910.252(b)(2): helpers and attendants, screens round the arc; seen quoted",
    "law",
)
PRACTICE = Source("Grinding, aluminum and how to go about a new lens", "common practice")
_SOURCES = (LAW, COMFORT, OTHERS, PRACTICE)

_GRINDING = "grinding"
_ARCS = tuple(process for process, _ in facts.CURRENTS)
# The range that the box shows is that of the first.
_LONGEST_FIRST = ("air-carbon-arc",) + tuple([process for process in _ARCS if process != "air-carbon-arc"])
_TORCHES = tuple(process for process, _ in facts.PLATES)
_FIXED = tuple(process for process, _, _, _ in facts.FIXED)
_LIT = _ARCS + _TORCHES + _FIXED


class _Filter:
    """The shade that the work calls for, and by what."""

    def __init__(self, given: Given) -> None:
        self.process = given.word("process")
        self.by = "fixed"
        if self.process in _ARCS:
            end = dict(facts.CURRENTS)[self.process][-1][0]
            if ranges.above(given.number("current"), end):
                raise Refusal("current", say("shade.refusal.current", end=Measured(end, "current")))
            self.by = "current"
            found = arc_shade(self.process, given.number("current"))
            if given.has("rod_diameter") and self.process == "shielded-metal-arc":
                rod = rod_shade(given.number("rod_diameter"))
                if rod[0] > found[0] or (rod[0] == found[0] and rod[1] > found[1]):
                    self.by, found = "rod", rod
        elif self.process in _TORCHES:
            self.by = "plate"
            found = plate_shade(self.process, given.number("thickness"))
        else:
            _, least, low, high = facts.FIXED[_FIXED.index(self.process)]
            found = (least, low, high)
        self.least, self.low, self.high = found


def _answer(given: Given) -> Answer:
    if given.word("process") == _GRINDING:
        return Answer(
            results=(Words("no_filter", say("shade.no-filter")),),
            working=(say("shade.working.grinding"),),
            cautions=(say("shade.caution.guard"),),
            sources=_SOURCES,
            next_questions=(Next("noise", say("shade.next.noise"), ()),),
        )
    found = _Filter(given)
    results = [Number("least_shade", float(found.least), "shade")]
    if found.low:
        band = say("shade.band") if found.high > found.low else None
        ends = (float(found.low), float(found.high)) if band else (None, None)
        results.append(Number("comfort_shade", float(found.low), "shade", ends[0], ends[1], band))
    return Answer(
        results=tuple(results),
        working=(_working(given, found),),
        notes=_notes(found),
        cautions=_cautions(found),
        sources=_SOURCES,
        next_questions=_next(given, found),
        verdict=_verdict(given, found),
    )


def _working(given: Given, found: _Filter) -> Message:
    shown: dict[str, object] = {"least": found.least}
    if found.by == "current":
        shown["size"] = given.measured("current")
    elif found.by == "rod":
        shown["size"] = given.measured("rod_diameter", "thickness")
    elif found.by == "plate":
        shown["size"] = given.measured("thickness")
    return say("shade.working." + found.by, **shown)


def _verdict(given: Given, found: _Filter) -> Verdict | None:
    if not given.has("helmet_shade"):
        return None
    worn = Measured(given.number("helmet_shade"), "shade")
    if ranges.above(float(found.least), worn.value):
        return Verdict("outside", say("shade.verdict.light", worn=worn, least=found.least), say("shade.remedy.light"))
    return Verdict("inside", say("shade.verdict.enough", worn=worn, least=found.least), say("shade.remedy.enough"))


def _notes(found: _Filter) -> tuple[Message, ...]:
    notes = [say("shade.note.start")]
    if not found.low:
        notes.append(say("shade.note.no-comfort"))
    if found.process == "plasma-cutting":
        notes.append(say("shade.note.seen"))
    if found.process in _TORCHES or found.process in ("brazing", "soldering"):
        notes.append(say("shade.note.yellow"))
    return tuple(notes)


def _cautions(found: _Filter) -> tuple[Message, ...]:
    cautions = [say("shade.caution.others"), say("shade.caution.glasses")]
    if found.process not in _TORCHES and found.process not in ("brazing", "soldering"):
        cautions += [say("shade.caution.skin"), say("caution.arc")]
    return tuple(cautions)


def _next(given: Given, found: _Filter) -> tuple[Next, ...]:
    questions = [Next("noise", say("shade.next.noise"), ())]
    if found.process in ("gas-metal-arc", "flux-cored-arc", "shielded-metal-arc"):
        questions.insert(0, Next("fume", say("shade.next.fume"), ()))
    if found.process == "gas-metal-arc":
        current = carry("current", given.measured("current"), 20.0, 350.0)
        questions.append(Next("wire-feed", say("shade.next.wire-feed"), current))
    return tuple(questions)


CALCULATOR = Calculator(
    name="shade",
    fields=(
        Choice("process", _LIT + (_GRINDING,), default="gas-metal-arc"),
        Quantity("current", when=("process", _LONGEST_FIRST), presets=("90 A", "125 A", "180 A", "250 A")),
        Quantity(
            "rod_diameter",
            "thickness",
            optional=True,
            when=("process", ("shielded-metal-arc",)),
            low=1.0,
            high=12.7,
            presets=("3/32 in", "1/8 in", "5/32 in", "3.2 mm"),
        ),
        Quantity("thickness", when=("process", _TORCHES), low=0.1, presets=("1/8 in", "1/4 in", "1/2 in", "1 in")),
        Quantity("helmet_shade", "shade", optional=True, when=("process", _LIT), hint=True, presets=("9", "10", "11")),
    ),
    answer=_answer,
    english=ENGLISH,
    sources=_SOURCES,
    place=96,
)
