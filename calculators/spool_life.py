"""Spool life: how long the wire on a spool lasts, how much is left, how much to bring."""

import math

from calculators import density_sources, numerals, solid_wire, wire_mass
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
    Relation,
    Source,
    Verdict,
    carry,
    say,
)
from calculators.drawings import spool_section
from calculators.facts import spools, wires
from calculators.melting_law import MeltingLaw
from calculators.spool import packing
from calculators.spool_case import Spool
from calculators.spool_life_words import ENGLISH
from calculators.wire_left import WireLeft

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

GEOMETRY = Source("Geometry: the volume of a round wire, the area of a ring; length = speed × time", "law")
TOLERANCE = Source("AWS A5.02 and A5.18: 0.045 in wire may be 0.001 in over or under, 4.4 % of its mass", "from memory")
PACKING = Source("How tightly wire lies on a spool: 70 to 85 % of the space is metal", "from memory")
DEPTH = Source("A depth read with a rule over uneven wire: good to 2 mm", "common practice")
WASTE = Source("5 % of wire wasted in field work; the arc on 15 % of the clock in repair", "common practice")

PACKAGE = Source("Small spools one to a few pounds, medium 10 to 15, large 25 to 35, coils 50 to 60", "common practice")
SPOOLS = Source("Sizes of spools by name (EN ISO 544), a drum 250 to 600 lb, aluminum on a spool", "from memory")
COPPER = Source("The copper flash on steel wire does not harm the weld", "common practice")

_BY_DEPTH = ("depth-share", "depth-size")
_BANDED = _BY_DEPTH + ("package",)


# ---------------------------------------------------------------- what is asked


def _solve_mass(unknown: str, values: "dict[str, Any]") -> float:
    count = values.get("spool_count", 1.0)
    if unknown == "wire_length":
        return wire_mass.wire_length(values["wire_mass"] * count, values["wire_diameter"], WireLeft.density_of(values))
    return wire_mass.wire_mass(values["wire_length"], values["wire_diameter"], WireLeft.density_of(values)) / count


def _solve_time(unknown: str, values: "dict[str, Any]") -> float:
    if unknown == "arc_time":
        return wire_mass.arc_time(wire_mass.usable(values["wire_length"], values["waste"]), values["wire_feed_speed"])
    if unknown == "wire_feed_speed":
        return wire_mass.feed_measured(wire_mass.usable(values["wire_length"], values["waste"]), values["arc_time"])
    return wire_mass.needed(wire_mass.length_fed(values["wire_feed_speed"], values["arc_time"]), values["waste"])


def _prepare(given: Given) -> None:
    if given.word("wire_kind") != "solid":
        raise Refusal("wire_kind", say("spool-life.refusal.cored"))
    if not given.has("waste"):
        given.fill("waste", wires.WASTE)
    _fill_sizes(given)
    if given.word("remaining_by") != "label" and WireLeft.can_be_found(given.values):
        given.fill("wire_mass", WireLeft(given.values, given.made).mass)


def _fill_sizes(given: Given) -> None:
    """Fill in what the name of a spool tells, and the barrel if its label and its depth when new tell that."""
    size = WireLeft.size_of(given.word("spool"))
    if size is None:
        return
    for place, name in enumerate(("spool_diameter", "spool_width")):
        if not given.has(name) and (place == 0 or given.word("remaining_by") == "depth-size"):
            given.fill(name, size[place])
    if not given.has("core_diameter") and WireLeft.barrel_can_be_found(given.values):
        given.fill("core_diameter", WireLeft.barrel(given.values, packing("not-known")[1]))


# ---------------------------------------------------------------- the answer


def _answer(given: Given) -> Answer:
    spool = Spool(given)
    names = _names(given, spool)
    given.solved_for = names[0] if names[0] in given.made else None
    results: list[object] = [_number(given, spool, name) for name in names]
    if spool.left is not None and spool.by in _BY_DEPTH:
        results += _of_depth(given, spool.left)
    return Answer(
        results=tuple(results),
        working=spool.working(),
        notes=_notes(given, spool),
        cautions=(say("spool-life.caution.spare"), say("spool-life.caution.spring"), say("caution.live")),
        sources=_sources(given, spool.by),
        next_questions=_next(given, spool),
        verdict=_verdict(given, spool),
    )


def _sources(given: Given, by: str) -> tuple[Source, ...]:
    found = [GEOMETRY, density_sources.WIRES, TOLERANCE]
    if by in _BY_DEPTH:
        found.append(DEPTH)
    if by == "depth-size" or "core_diameter" in given.made:
        found.append(PACKING)
    if by == "package":
        found.append(PACKAGE)
    if by == "package" or WireLeft.size_of(given.word("spool")) is not None:
        found.append(SPOOLS)
    if given.word("wire_material") == "mild-steel":
        found.append(COPPER)
    return tuple(found + [WASTE])


def _names(given: Given, spool: Spool) -> list[str]:
    """Return what the answer shows, the headline first."""
    names = []
    if spool.lasts > 0.0 and not spool.to_bring:
        names.append("wire_feed_speed" if "wire_feed_speed" in given.made else "arc_time")
    mass_first = spool.to_bring or spool.by in _BANDED
    for name in ("wire_mass", "wire_length") if mass_first else ("wire_length", "wire_mass"):
        if name in given.made:
            names.append(name)
    return names if names else ["wire_length"]


def _number(given: Given, spool: Spool, name: str) -> Number:
    value = spool.lasts if name == "arc_time" else given.number(name)
    low, high = value * spool.low, value * spool.high
    band = say("spool-life.band.wire")
    if spool.by in _BANDED:
        band = say("spool-life.band." + spool.by)
        if name != "wire_mass":
            band = say("spool-life.band.also-wire", first=band)
    if name == "wire_mass" and spool.left is not None:
        low, high = spool.left.least, spool.left.most
    elif name == "wire_mass":
        low, high = value * (1.0 - wires.LENGTH_BAND), value * (1.0 + wires.LENGTH_BAND)
    label = None
    if name == "wire_mass" and spool.to_bring:
        label = say("spool-life.result.to-bring" if spool.count == 1.0 else "spool-life.result.to-bring-each")
    elif spool.count > 1.0 and name != "wire_feed_speed":
        label = say("spool-life.result." + name + "-of-all", count=int(spool.count))
    in_words = _hours(value) if name == "arc_time" and value >= 3600.0 else None
    if low == high:
        return Number(name, value, None, None, None, None, label, None, in_words)
    return Number(name, value, None, low, high, band, label, None, in_words)


def _hours(seconds: float) -> Message:
    minutes = math.floor(numerals.settle(seconds / 60.0) + 0.5)
    return say("spool-life.in-words", hours=minutes // 60, minutes=minutes % 60)


def _of_depth(given: Given, left: WireLeft) -> list[object]:
    """Return the share of a new spool, if one was compared with, and the drawing."""
    found: list[object] = []
    rows = [("rim", left.rim), ("now", left.wound), ("barrel", left.core)]
    if left.full > 0.0:
        rows.insert(1, ("new", left.full))
        found.append(Number("remaining_share", left.share, "percentage"))
        if "core_diameter" in given.made:
            found.append(Number("core_diameter", left.core, "spool_diameter"))
        tight = left.packing_found()
        if tight is not None and _can_be(tight):
            found.append(Number("packing", tight, "percentage"))
    unit = given.units.get("spool_diameter")
    named = []
    for name, diameter in rows:
        shown = Measured(diameter, "spool_diameter", None, unit)
        named.append((say("spool-life.drawing." + name, diameter=shown), diameter))
    description = say(
        "spool-life.drawing.description",
        spool_depth=given.measured("spool_depth"),
        rim=Measured(left.rim, "spool_diameter", None, unit),
        wound=Measured(left.wound, "spool_diameter", None, unit),
        barrel=Measured(left.core, "spool_diameter", None, unit),
    )
    title = say("spool-life.drawing.title")
    found.append(spool_section.draw(tuple(named), left.depth, given.units.get("spool_depth"), title, description))
    return found


def _can_be(tight: float) -> bool:
    """Return whether round wire can fill that share of a space."""
    return 0.4 <= numerals.settle(tight) <= 0.9069


def _verdict(given: Given, spool: Spool) -> Verdict | None:
    if spool.lasts == 0.0 or spool.to_bring or "arc_time" in given.made or "wire_feed_speed" in given.made:
        return None
    asked = numerals.settle(given.number("arc_time"))
    state = "unclear"
    if asked <= numerals.settle(spool.lasts * spool.low):
        state = "inside"
    elif asked > numerals.settle(spool.lasts * spool.high):
        state = "outside"
    needed = wire_mass.needed(
        wire_mass.length_fed(given.number("wire_feed_speed"), given.number("arc_time")), given.number("waste")
    )
    mass = wire_mass.wire_mass(needed, given.number("wire_diameter"), spool.density)
    message = say("spool-life.verdict.asked", arc_time=given.measured("arc_time"))
    if spool.by in ("label", "package") and state == "outside":
        count = math.ceil(numerals.settle(mass / spool.mass))
        return Verdict(state, message, say("spool-life.remedy.spools", wire_mass=spool.shown_mass(mass), count=count))
    return Verdict(state, message, say("spool-life.remedy.mass", wire_mass=spool.shown_mass(mass)))


def _notes(given: Given, spool: Spool) -> tuple[Message, ...]:
    notes = []
    if spool.lasts > 0.0:
        if "waste" in given.made:
            notes.append(say("spool-life.note.waste", waste=Measured(wires.WASTE, "percentage")))
        share = Measured(wires.OPERATING_FACTOR, "percentage")
        clock = Measured(spool.lasts / wires.OPERATING_FACTOR, "arc_time", 2, "h")
        notes.append(say("spool-life.note.clock", share=share, clock=clock))
        notes.append(say("spool-life.note.feed"))
    notes.append(say("spool-life.note." + ("barrel" if "core_diameter" in given.made else spool.by)))
    tight = spool.left.packing_found() if spool.left is not None else None
    if tight is not None and not _can_be(tight):
        notes.append(say("spool-life.note.loose", packing=Measured(tight, "percentage", 2)))
    if given.word("wire_material") == "mild-steel":
        notes.append(say("spool-life.note.copper"))
    return tuple(notes)


def _next(given: Given, spool: Spool) -> tuple[Next, ...]:
    questions = []
    if spool.lasts > 0.0:
        lasts = Measured(spool.lasts, "arc_time", None, given.units.get("arc_time"))
        questions.append(Next("gas-supply", say("spool-life.next.gas-supply"), carry("arc_time", lasts, 0.6, 3.6e6)))
    if spool.by in _BY_DEPTH:
        questions.append(Next("spool-life", say("spool-life.next.again"), _the_spool(given)))
    wire: list[tuple[str, object]] = [("wire_material", given.word("wire_material"))]
    if given.word("filler_alloy"):
        wire.append(("filler_alloy", given.word("filler_alloy")))
    for name in ("wire_diameter", "wire_feed_speed"):
        if given.has(name):
            wire.append((name, given.measured(name)))
    if MeltingLaw.knows(given.values):
        questions.append(Next("wire-feed", say("spool-life.next.wire-feed"), tuple(wire)))
    return tuple(questions)


def _the_spool(given: Given) -> tuple[tuple[str, object], ...]:
    """Return all that stays of a spool when its wire goes: the link keeps its barrel."""
    carried: list[tuple[str, object]] = []
    for name in ("wire_material", "filler_alloy", "remaining_by", "spool", "winding"):
        if given.word(name):
            carried.append((name, given.word(name)))
    for field in CALCULATOR.fields:
        if field.name in _STAYS and isinstance(field, Quantity) and field.name in given.typed:
            carried.append((field.name, given.measured(field.name, field.quantity.name)))
    return tuple(carried)


_STAYS = ("wire_diameter", "spool_diameter", "core_diameter", "new_spool_depth", "new_wire_mass", "spool_width")
_MASSES = ("1 lb", "2 lb", "11 lb", "16 lb", "33 lb", "44 lb", "0.5 kg", "1 kg", "5 kg", "7 kg", "15 kg")
_BY_DEPTH_FIELDS = ("remaining_by", _BY_DEPTH)

CALCULATOR = Calculator(
    name="spool-life",
    fields=solid_wire.FIELDS
    + (
        Choice("remaining_by", ("label", "package", "scale", "depth-share", "depth-size"), default="label"),
        Quantity("wire_mass", when=("remaining_by", ("label",)), hint=True, presets=_MASSES),
        Choice("package", tuple(name for name, _ in spools.PACKAGES), when=("remaining_by", ("package",))),
        Quantity("spool_mass", "wire_mass", when=("remaining_by", ("scale",))),
        Quantity("empty_spool_mass", "wire_mass", when=("remaining_by", ("scale",)), hint=True),
        Choice(
            "spool",
            ("measured",) + tuple(name for name, _, _ in spools.SPOOLS),
            default="measured",
            when=_BY_DEPTH_FIELDS,
        ),
        Quantity(
            "spool_diameter",
            when=_BY_DEPTH_FIELDS,
            hint=True,
            low=50.0,
            presets=("4 in", "8 in", "12 in", "14 in", "100 mm", "200 mm", "300 mm"),
        ),
        Quantity("core_diameter", "spool_diameter", when=_BY_DEPTH_FIELDS, hint=True, kept_with="spool"),
        Quantity("spool_depth", when=_BY_DEPTH_FIELDS, hint=True),
        Quantity("new_spool_depth", "spool_depth", when=("remaining_by", ("depth-share",))),
        Quantity("new_wire_mass", "wire_mass", when=("remaining_by", ("depth-share",)), presets=_MASSES),
        Quantity("spool_width", when=("remaining_by", ("depth-size",)), hint=True),
        Choice(
            "winding", ("not-known", "random", "layer"), default="not-known", when=("remaining_by", ("depth-size",))
        ),
        Quantity("spool_count", "count", optional=True, whole=True, high=50.0),
        Quantity(
            "wire_feed_speed",
            presets=(
                "150 in/min",
                "200 in/min",
                "300 in/min",
                "400 in/min",
                "4 m/min",
                "6 m/min",
                "8 m/min",
                "10 m/min",
            ),
        ),
        Quantity("arc_time", hint=True),
        Quantity("wire_length"),
        Quantity("waste", "percentage", optional=True, hint=True, high=50.0, presets=("0 %", "5 %", "10 %")),
    ),
    relations=(
        Relation(
            ("wire_mass", "wire_length"),
            _solve_mass,
            check="wire_length",
            also=("wire_material", "filler_alloy", "wire_diameter", "spool_count"),
            agree_within=wires.LENGTH_BAND,
        ),
        Relation(
            ("wire_length", "wire_feed_speed", "arc_time"),
            _solve_time,
            check="",
            required=False,
            its_own=("wire_feed_speed", "arc_time"),
            also=("waste",),
        ),
    ),
    prepare=_prepare,
    answer=_answer,
    english=ENGLISH,
    sources=(GEOMETRY, density_sources.WIRES, TOLERANCE, PACKING, DEPTH, PACKAGE, SPOOLS, COPPER, WASTE),
    place=50,
)
