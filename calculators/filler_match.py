"""Filler match: which filler classes go with a base metal, a gas and a service, which do not, and why.

The judging is in filler_pairing.py, the lists in facts/filler_match.py.
"""

from calculators import settings_sources
from calculators.contract import (
    Answer,
    Calculator,
    Choice,
    Given,
    Measured,
    Message,
    Next,
    Number,
    Source,
    Table,
    Verdict,
    Words,
    say,
)
from calculators.facts import filler_match as facts
from calculators.facts.gases import BLENDS
from calculators.filler_grammar import Reading
from calculators.filler_match_words import ENGLISH
from calculators.filler_name import Meaning
from calculators.filler_pairing import NO_GAS, Joint

TRADE = Source("Which filler goes with which metal, in our words", "common practice")
BRIDGE = Source("Welding Journal, July 2016: 309L or 312 joins stainless to carbon steel, 308 welds 304", "published")
STRENGTHS = Source("AISC Manual, table 2-5: least strengths of A36 and A572", "published")
MEMORY = Source("ASTM A588 and A514; toughness of low-alloy fillers; magnesium and hot service", "from memory")
CLASSES = Source("AWS A5 series, as Filler name reads it; of these A5.18 and A5.20 seen", "from memory")
_MATCHING = 0.1  # share of the base metal's strength within which a filler is called matching
_NOTED = ("6061", "gray-iron", "hardening")


def _answer(given: Given) -> Answer:
    joint = Joint(given)
    if joint.stop:
        stop = say("filler-match.stop." + joint.stop)
        return Answer(
            results=(Words("first", say("filler-match.do-not"), say("filler-match.label.stop")),),
            working=(_working(joint),),
            cautions=(say("filler-match.caution"),),
            sources=(TRADE,),
            next_questions=_ask([("metal-id", ())] if joint.stop == "unknown" else []),
            verdict=Verdict("outside", stop),
        )
    best = joint.candidates[0]
    shown = say("filler-match.none") if best.verdict == "no" else _class(best.name)
    results: list[object] = [Words("first", shown, say("filler-match.label." + best.verdict))]
    meaning = _meaning(best.name)
    base = joint.base_strength()
    if best.verdict != "no" and meaning.tensile and base:
        results.append(Words("match", _match(meaning.tensile, base)))
        results.append(Number("filler_strength", meaning.tensile, "strength", figures=3))
        results.append(Number("base_strength", base, "strength", figures=3))
    rows = [(say("filler-name.mark", mark=each.name), _use(each.verdict, each.why)) for each in joint.candidates]
    columns = (say("filler-match.column.class"), say("gas-blend.column.use"))
    results.append(Table("fillers", say("filler-match.fillers"), columns, tuple(rows)))
    return Answer(
        results=tuple(results),
        working=(_working(joint),),
        notes=_notes(joint),
        cautions=_cautions(joint),
        sources=_sources(joint),
        next_questions=_next(joint, best.name, meaning),
        verdict=Verdict("unclear", say("filler-match.verdict")),
    )


def _meaning(name: str) -> Meaning:
    found = Reading(name).found
    assert found is not None
    return Meaning(found)


def _working(joint: Joint) -> Message:
    first, second = [say("filler-match.option.base." + joint.bases[place]) for place in (0, -1)]
    return say("filler-match.working", first=first, second=second)


def _class(name: str) -> Message:
    meaning = _meaning(name)
    return say("filler-match.class", mark=name, kind=say("filler-name.kind." + meaning.system))


def _shown(value: float) -> Measured:
    return Measured(value, "strength", 3)


def _use(verdict: str, why: Message) -> Message:
    return say("gas-blend.use." + verdict, reason=why)


def _match(filler: float, base: float) -> Message:
    share = filler / base - 1.0
    way = "matching" if abs(share) <= _MATCHING else "over" if share > 0.0 else "under"
    return say("filler-match.match." + way, off=_shown(abs(filler - base)))


def _notes(joint: Joint) -> tuple[Message, ...]:
    notes = [say("filler-match.note." + base) for base in joint.bases if base in _NOTED]
    if len(joint.bases) > 1 and joint.list != "stainless-steel":
        notes.append(say("filler-match.note.weaker"))
    if joint.service in ("cold", "structural"):
        notes.append(say("filler-match.note." + joint.service))
    notes.append(say("filler-match.note.copper"))
    return tuple(notes)


def _cautions(joint: Joint) -> tuple[Message, ...]:
    cautions = [say("filler-match.caution")]
    if "galvanized" in joint.bases:
        cautions.append(say("settings.caution.galvanized"))
    if "stainless" in joint.kinds:
        cautions.append(say("settings.caution.stainless"))
    return tuple(cautions)


def _sources(joint: Joint) -> tuple[Source, ...]:
    sources = [TRADE, CLASSES]
    if joint.list == "stainless-steel" or "304" in joint.bases:
        sources.append(BRIDGE)
    if "aluminum" in joint.kinds:
        sources.append(settings_sources.MATHERS)
    if joint.base_strength():
        sources.append(STRENGTHS)
    if "galvanized" in joint.bases:
        sources.append(settings_sources.ZINC)
    if "stainless" in joint.kinds:
        sources.append(settings_sources.CHROMIUM)
    return tuple(sources + [MEMORY])


def _ask(asked: "list[tuple[str, tuple[tuple[str, object], ...]]]") -> tuple[Next, ...]:
    return tuple([Next(name, say("filler-match.next." + name), carried) for name, carried in asked])


def _next(joint: Joint, best: str, meaning: Meaning) -> tuple[Next, ...]:
    asked: list[tuple[str, tuple[tuple[str, object], ...]]] = [("filler-name", (("filler", best),))]
    families = [row[2] for row in facts.BASES if row[0] in joint.bases]
    hard = [family for family in families if family not in ("", "structural")] or families
    if hard[0]:
        asked.append(("preheat", (("family", hard[0]),)))
    if meaning.system in ("A5.18", "A5.9", "A5.10") and joint.kinds[0] in ("mild-steel", "stainless", "aluminum"):
        material = {"A5.18": "mild-steel", "A5.9": "stainless", "A5.10": "aluminum"}[meaning.system]
        carried: list[tuple[str, object]] = [("wire_material", material)]
        if material == "aluminum":
            carried.append(("base_alloy", joint.bases[0]))
            if meaning.found.symbol("type") in ("4043", "5356", "5183"):
                carried.append(("filler_alloy", meaning.found.symbol("type")))
        asked.append(("settings", tuple(carried)))
    return _ask(asked)


_BASES = tuple([row[0] for row in facts.BASES])

CALCULATOR = Calculator(
    name="filler-match",
    fields=(
        Choice("base", _BASES, many=True),
        Choice("second_base", _BASES, optional=True),
        Choice("gas", tuple([row[0] for row in BLENDS[:12]]) + (NO_GAS,), optional=True),
        Choice("service", ("structural", "hot", "cold", "corrosion", "hidden"), optional=True),
    ),
    answer=_answer,
    english=ENGLISH,
    sources=(
        TRADE,
        CLASSES,
        BRIDGE,
        settings_sources.MATHERS,
        STRENGTHS,
        settings_sources.ZINC,
        settings_sources.CHROMIUM,
        MEMORY,
    ),
    place=17,
)
