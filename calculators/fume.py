"""Fume: what builds up in a room while wire or rods burn, beside the limits by law and by advice."""

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
    Source,
    Table,
    Verdict,
    Words,
    say,
)
from calculators.facts import fume as facts
from calculators.fume_case import METALS, SOLID, FumeCase
from calculators.fume_words import ENGLISH

EPA = Source(
    "US EPA, AP-42, 12.19 (1995), tables 12.19-1 and 12.19-2 (metals in tenths of a g/kg); seen in part, as repeated",
    "published",
)
OSHA = Source(
    "29 CFR 1910.1000 table Z-1 and 1910.1026: limits by law, as OSHA's pages give them; dust from memory", "law"
)
NIOSH = Source("NIOSH recommended limits (chromium(VI): 2013-128) and ACGIH TLV, as quoted by OSHA", "published")
ROOM = Source("29 CFR 1910.252(c)(2): 10 000 ft³ for each welder, 16 ft, 2000 ft³/min", "law")
BALANCE = Source("Mass balance of a well mixed room", "published")
CANCER = Source("IARC Monographs 118 (2018): welding fume and its ultraviolet rays cause cancer", "published")
ZINC = Source("ASTM A653: zinc on sheet; seen quoted", "standard")
GUESS = Source("How far the factors scatter, zinc on hot-dip work and how wide it burns off", "from memory")
FEVER = Source("OSHA, zinc oxide fume: fever hours after it", "published")
COATINGS = Source("Cadmium, lead and chromium in coatings; 4 in strip, 29 CFR 1926.354", "from memory")
PRACTICE = Source("Face against room, pace, long beads, solvents at the arc", "common practice")
_SOURCES = (EPA, OSHA, NIOSH, ROOM, BALANCE, CANCER, ZINC, FEVER, COATINGS, GUESS, PRACTICE)

_COATINGS = ("bare", "galvanized-sheet", "galvanized-hot-dip", "painted", "plated", "unknown")
_LEFT_OUT = ("painted", "plated", "unknown")
_ZINC = ("galvanized-sheet", "galvanized-hot-dip")


def _answer(given: Given) -> Answer:
    case = FumeCase(given)
    return Answer(
        results=tuple(_results(case)),
        working=_working(case),
        notes=_notes(case),
        cautions=_cautions(case),
        sources=_SOURCES,
        next_questions=(
            Next("oxygen", say("fume.next.oxygen"), ()),
            Next("shade", say("fume.next.shade"), ()),
        ),
        verdict=_verdict(case),
    )


def _results(case: FumeCase) -> list[object]:
    results: list[object] = []
    for name in ("fume",) + METALS:
        if name in case.rates:
            value = case.at(name, case.time)
            ends = (value / facts.SCATTER, value * facts.SCATTER)
            results.append(Number(name, value, "air_concentration", ends[0], ends[1], say("fume.band")))
    results.append(Words("ventilation", _ventilation(case)))
    return results + [_limits(case), _growth(case)]


def _ventilation(case: FumeCase) -> Message:
    if numerals.settle(case.volume) < numerals.settle(facts.LEAST_SPACE):
        return say("fume.ventilation.small")
    if numerals.settle(case.height) < numerals.settle(facts.LEAST_CEILING):
        return say("fume.ventilation.low")
    return say("fume.ventilation.else")


def _limits(case: FumeCase) -> Table:
    rows = []
    for name, limit, _, share in case.shares():
        face = say("fume.span", low=Plain(share * facts.FACE_LOW, 2), high=Plain(share * facts.FACE_HIGH, 2))
        named = say("fume.named", limit=say("fume.limit." + name), value=Measured(limit, "air_concentration", 2))
        rows.append((named, Plain(share, 2), face))
    heads = tuple([say("fume.table." + head) for head in ("limit", "room", "face")])
    return Table("limits", say("fume.table.limits"), heads, tuple(rows))


def _growth(case: FumeCase) -> Table:
    names = [name for name in ("fume",) + METALS if name in case.rates][:2]
    rows = []
    for part in (0.25, 0.5, 1.0):
        time = case.time * part
        cells: list[object] = [Measured(time, "arc_time", 2, case.given.units.get("work_time"))]
        rows.append(tuple(cells + [Measured(case.at(name, time), "air_concentration") for name in names]))
    if case.air > 0.0:
        cells = [say("fume.table.settled")]
        rows.append(tuple(cells + [Measured(case.rates[name] / case.air, "air_concentration") for name in names]))
    heads = [say("fume.table.after")] + [say("fume.result." + name) for name in names]
    return Table("growth", say("fume.table.growth"), tuple(heads), tuple(rows))


def _working(case: FumeCase) -> tuple[Message, ...]:
    shown: dict[str, object] = {
        "burned": Measured(case.burned, "wire_mass"),
        "time": case.given.measured("work_time", "arc_time"),
        "rate": Plain(case.rates["fume"] * 6.0e7, 3),
        "volume": Measured(case.volume, "space_volume", 3),
    }
    lines = [say("fume.working.rate", **shown)]
    if "zinc_oxide" in case.rates:
        length = case.given.measured("weld_length")
        grams = dict(facts.ZINC_A_FACE)[case.given.word("coating")] * 1000.0
        lines.insert(0, say("fume.working.zinc", length=length, grams=Plain(grams, 4)))
    if case.air > 0.0:
        lines.append(say("fume.working.air", air=case.given.measured("air_flow"), **shown))
    else:
        lines.append(say("fume.working.still", **shown))
    return tuple(lines)


def _notes(case: FumeCase) -> tuple[Message, ...]:
    notes = [say("fume.note.face"), say("fume.note.room")]
    if not case.air:
        notes.append(say("fume.note.still"))
    if case.consumable in SOLID and case.consumable != "solid-aluminum":
        notes.append(say("fume.note.long-beads"))
    if case.consumable == "solid-aluminum":
        notes.append(say("fume.note.aluminum"))
    if case.consumable == "cored-steel":
        notes.append(say("fume.note.cored"))
    return tuple(notes)


def _cautions(case: FumeCase) -> tuple[Message, ...]:
    coating = case.given.word("coating")
    cautions = []
    if coating in _ZINC:
        cautions.append(say("fume.caution.zinc"))
    elif coating != "bare":
        cautions.append(say("fume.caution." + coating))
    if "chromium_six" in case.rates:
        cautions.append(say("fume.caution.chromium"))
    return tuple(cautions + [say("fume.caution." + word) for word in ("plume", "cancer", "tight", "solvent")])


def _verdict(case: FumeCase) -> Verdict:
    remedy = say("fume.remedy")
    for word, law in (("law", True), ("advice", False)):
        worst = case.worst(law)
        if worst:
            return Verdict("outside", say("fume.verdict." + word, limit=say("fume.limit." + worst)), remedy)
    if case.given.word("coating") in _LEFT_OUT:
        return Verdict("unclear", say("fume.verdict.coating"), say("fume.remedy.coating"))
    return Verdict("unclear", say("fume.verdict.unclear"), remedy)


_ROOM = ("10 ft", "16 ft", "30 ft", "3 m", "5 m")

CALCULATOR = Calculator(
    name="fume",
    fields=(
        Choice("consumable", tuple(row[0] for row in facts.PRINTED), default="solid-steel"),
        Choice("told_by", ("mass", "feed"), default="mass"),
        Quantity("wire_mass", when=("told_by", ("mass",)), low=0.001, high=100.0, presets=("1 lb", "2 lb", "1 kg")),
        Quantity("wire_feed_speed", when=("told_by", ("feed",)), presets=("200 in/min", "300 in/min", "6 m/min")),
        Quantity("wire_diameter", when=("told_by", ("feed",)), presets=("0.030 in", "0.035 in", "0.045 in", "1 mm")),
        Quantity("arc_time", when=("told_by", ("feed",)), high=1440.0, presets=("10 min", "30 min", "1 h"), timer=True),
        Quantity("work_time", "arc_time", hint=True, low=1.0, high=1440.0, presets=("15 min", "1 h", "4 h", "8 h")),
        Choice("coating", _COATINGS, default="bare"),
        Quantity(
            "weld_length", when=("coating", _ZINC), low=5.0, high=100000.0, presets=("12 in", "10 ft", "1 m", "10 m")
        ),
        Choice("room_by", ("paces", "tape"), default="paces"),
        Quantity("paces_long", "count", when=("room_by", ("paces",)), high=200.0, presets=("6", "10", "20")),
        Quantity("paces_wide", "count", when=("room_by", ("paces",)), high=200.0, presets=("6", "10", "20")),
        Quantity("room_length", "part_length", when=("room_by", ("tape",)), low=0.3, presets=_ROOM),
        Quantity("room_width", "part_length", when=("room_by", ("tape",)), low=0.3, presets=_ROOM),
        Quantity("room_height", "part_length", low=0.3, high=50.0, presets=("8 ft", "12 ft", "16 ft", "3 m")),
        Quantity("air_flow", optional=True, hint=True, presets=("500 ft3/min", "2000 ft3/min", "3400 m3/h")),
    ),
    answer=_answer,
    english=ENGLISH,
    sources=_SOURCES,
    place=97,
)
