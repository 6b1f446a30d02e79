"""Spool life: how long the wire on a spool lasts, how much is left, how much to bring."""

import math

from calculators import numerals, solid_wire, wire_mass
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
    carry,
    say,
)
from calculators.drawings import spool_section
from calculators.facts import wires
from calculators.melting_law import MeltingLaw
from calculators.wire_left import WireLeft

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

GEOMETRY = Source("Geometry: the volume of a round wire, the area of a ring; length = speed × time", "law")
DENSITY = Source("Densities of steel 7850, stainless 7950, aluminum alloys 2640 to 2690 kg/m³", "from memory")
TOLERANCE = Source("AWS A5.02 and A5.18: 0.045 in wire may be 0.001 in over or under, 4.4 % of its mass", "from memory")
PACKING = Source("How tightly wire lies on a spool: 70 to 85 % of the space is metal", "from memory")
DEPTH = Source("A depth read with a rule over uneven wire: good to 2 mm", "common practice")
WASTE = Source("5 % of wire wasted in field work; the arc on 15 % of the clock in repair", "common practice")

_BY_DEPTH = ("depth-share", "depth-size")


# ---------------------------------------------------------------- what is asked


def _density(values: "dict[str, Any]") -> float:
    return wire_mass.density(values["wire_material"], values.get("filler_alloy") or "")[0]


def _solve_mass(unknown: str, values: "dict[str, Any]") -> float:
    if unknown == "wire_length":
        return wire_mass.wire_length(values["wire_mass"], values["wire_diameter"], _density(values))
    return wire_mass.wire_mass(values["wire_length"], values["wire_diameter"], _density(values))


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
    if given.word("remaining_by") != "label" and WireLeft.can_be_found(given.values):
        given.fill("wire_mass", WireLeft(given.values).mass)


# ---------------------------------------------------------------- the answer


class _Spool:
    """What is known of the wire, and how sure: `low` and `high` are shares of whatever goes with its length."""

    def __init__(self, given: Given) -> None:
        self.by = given.word("remaining_by")
        mass_was_known = self.by != "label" or (given.has("wire_mass") and "wire_mass" not in given.made)
        self.left = WireLeft(given.values) if mass_was_known else None
        self.mass = given.number("wire_mass")
        self.length = given.number("wire_length")
        self.usable = wire_mass.usable(self.length, given.number("waste"))
        self.to_bring = self.left is None and "wire_length" in given.made
        self.low = self.high = 1.0
        if self.left is not None and "wire_length" in given.made:
            self.low = self.left.least / self.left.mass * (1.0 - wires.LENGTH_BAND)
            self.high = self.left.most / self.left.mass * (1.0 + wires.LENGTH_BAND)
        self.lasts = 0.0
        if given.has("arc_time") and given.has("wire_feed_speed"):
            self.lasts = wire_mass.arc_time(self.usable, given.number("wire_feed_speed"))


def _answer(given: Given) -> Answer:
    spool = _Spool(given)
    names = _names(given, spool)
    given.solved_for = names[0] if names[0] in given.made else None
    results: list[object] = [_number(given, spool, name) for name in names]
    if spool.left is not None and spool.by in _BY_DEPTH:
        results += _of_depth(given, spool.left)
    return Answer(
        results=tuple(results),
        working=_working(given, spool),
        notes=_notes(given, spool),
        cautions=(say("spool-life.caution.spare"), say("spool-life.caution.spring"), say("caution.live")),
        sources=_sources(spool.by),
        next_questions=_next(given, spool),
        verdict=_verdict(given, spool),
    )


def _sources(by: str) -> tuple[Source, ...]:
    of_depth = (DEPTH, PACKING) if by == "depth-size" else (DEPTH,) if by == "depth-share" else ()
    return (GEOMETRY, DENSITY, TOLERANCE) + of_depth + (WASTE,)


def _names(given: Given, spool: _Spool) -> list[str]:
    """Return what the answer shows, the headline first."""
    names = []
    if spool.lasts > 0.0 and not spool.to_bring:
        names.append("wire_feed_speed" if "wire_feed_speed" in given.made else "arc_time")
    mass_first = spool.to_bring or spool.by in _BY_DEPTH
    for name in ("wire_mass", "wire_length") if mass_first else ("wire_length", "wire_mass"):
        if name in given.made:
            names.append(name)
    return names if names else ["wire_length"]


def _number(given: Given, spool: _Spool, name: str) -> Number:
    value = spool.lasts if name == "arc_time" else given.number(name)
    low, high = value * spool.low, value * spool.high
    band = say("spool-life.band.wire")
    if spool.by in _BY_DEPTH:
        band = say("spool-life.band." + spool.by)
        if name != "wire_mass":
            band = say("spool-life.band.also-wire", first=band)
    if name == "wire_mass" and spool.left is not None:
        low, high = spool.left.least, spool.left.most
    elif name == "wire_mass":
        low, high = value * (1.0 - wires.LENGTH_BAND), value * (1.0 + wires.LENGTH_BAND)
    label = say("spool-life.result.to-bring") if name == "wire_mass" and spool.to_bring else None
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


def _verdict(given: Given, spool: _Spool) -> Verdict | None:
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
    mass = wire_mass.wire_mass(needed, given.number("wire_diameter"), _density(given.values))
    message = say("spool-life.verdict.asked", arc_time=given.measured("arc_time"))
    return Verdict(state, message, say("spool-life.remedy.mass", wire_mass=_mass(given, mass)))


def _mass(given: Given, mass: float, figures: int | None = None) -> Measured:
    unit = given.units.get("wire_mass", given.units.get("spool_mass", given.units.get("new_wire_mass")))
    return Measured(mass, "wire_mass", figures, unit)


# ---------------------------------------------------------------- how it was worked out


def _working(given: Given, spool: _Spool) -> tuple[Message, ...]:
    density = _density(given.values)
    per_length = wire_mass.mass_per_length(given.number("wire_diameter"), density)
    length_unit = given.units.get("wire_length")
    shown: dict[str, object] = {
        "density": Plain(density, 4),
        "wire_diameter": Measured(given.number("wire_diameter"), "wire_diameter", 4, "mm"),
        "per_length": Plain(per_length * 1000.0, 4),
        "wire_mass": _mass(given, spool.mass, 4),
        "length": Measured(spool.length, "wire_length", 4, length_unit),
        "waste": Measured(given.number("waste"), "percentage"),
        "usable": Measured(spool.usable, "wire_length", 4, length_unit),
    }
    lines = ["length" if "wire_length" in given.made and not spool.to_bring else "mass"]
    if spool.lasts > 0.0:
        shown["wire_feed_speed"] = given.measured("wire_feed_speed")
        shown["arc_time"] = Measured(spool.lasts, "arc_time", 4, given.units.get("arc_time"))
        if spool.to_bring:
            lines = ["length-fed", "needed"] + lines
        else:
            lines += ["usable", "feed" if "wire_feed_speed" in given.made else "time"]
    told = [say("spool-life.working." + line, **shown) for line in ["per-length"] + lines]
    return _working_of_mass(given, spool) + tuple(told)


def _working_of_mass(given: Given, spool: _Spool) -> tuple[Message, ...]:
    """Return how the mass on the spool was found, if it was not typed."""
    left, unit = spool.left, given.units.get("spool_diameter")
    if left is None or spool.by == "label":
        return ()
    shown: dict[str, object] = {"wire_mass": _mass(given, left.mass, 4)}
    if spool.by == "scale":
        shown["spool_mass"] = given.measured("spool_mass", "wire_mass")
        shown["empty_spool_mass"] = given.measured("empty_spool_mass", "wire_mass")
        return (say("spool-life.working.scale", **shown),)
    shown["spool_depth"] = given.measured("spool_depth")
    for name, diameter in (("rim", left.rim), ("wound", left.wound), ("core", left.core)):
        shown[name] = Measured(diameter, "spool_diameter", 4, unit)
    if spool.by == "depth-share":
        shown["full"] = Measured(left.full, "spool_diameter", 4, unit)
        shown["share"] = Measured(left.share, "percentage")
        shown["new_wire_mass"] = given.measured("new_wire_mass", "wire_mass")
        lines = ["wound", "share", "of-new"]
    else:
        shown["density"] = Plain(left.density, 4)
        shown["packing"] = Plain(left.packing, 3)
        shown["width"] = Measured(left.width, "spool_width", 4, unit)
        lines = ["wound", "size"]
    return tuple(say("spool-life.working." + line, **shown) for line in lines)


def _notes(given: Given, spool: _Spool) -> tuple[Message, ...]:
    notes = []
    if spool.lasts > 0.0:
        if "waste" in given.made:
            notes.append(say("spool-life.note.waste", waste=Measured(wires.WASTE, "percentage")))
        share = Measured(wires.OPERATING_FACTOR, "percentage")
        clock = Measured(spool.lasts / wires.OPERATING_FACTOR, "arc_time", 2, "h")
        notes.append(say("spool-life.note.clock", share=share, clock=clock))
        notes.append(say("spool-life.note.feed"))
    notes.append(say("spool-life.note." + spool.by))
    return tuple(notes)


def _next(given: Given, spool: _Spool) -> tuple[Next, ...]:
    questions = []
    if spool.lasts > 0.0:
        lasts = Measured(spool.lasts, "arc_time", None, given.units.get("arc_time"))
        questions.append(Next("gas-supply", say("spool-life.next.gas-supply"), carry("arc_time", lasts, 0.6, 3.6e6)))
    wire: list[tuple[str, object]] = [("wire_material", given.word("wire_material"))]
    if given.word("filler_alloy"):
        wire.append(("filler_alloy", given.word("filler_alloy")))
    for name in ("wire_diameter", "wire_feed_speed"):
        if given.has(name):
            wire.append((name, given.measured(name)))
    if MeltingLaw.knows(given.values):
        questions.append(Next("wire-feed", say("spool-life.next.wire-feed"), tuple(wire)))
    return tuple(questions)


ENGLISH = {
    "title": "Spool life",
    "question": "How long does the wire on this spool last, and how much do I bring?",
    "found-by": "wire left roll spool drum remaining run out enough birdnest length reel empty",
    "lead": "Wire by mass, length or arc time: fill in one, and a wire feed speed to get from one to the other.",
    "field.remaining_by": "How the wire is known",
    "option.remaining_by.label": "Mass on its label",
    "option.remaining_by.scale": "Spool on a scale",
    "option.remaining_by.depth-share": "Depth, against a new spool",
    "option.remaining_by.depth-size": "Depth and spool sizes",
    "field.wire_mass": "Mass of wire",
    "hint.wire_mass": "The wire alone, without the spool. Blank to work it out.",
    "field.spool_mass": "Spool with its wire",
    "field.empty_spool_mass": "Empty spool",
    "hint.empty_spool_mass": "Weigh one of the same kind once, and write it down.",
    "field.spool_diameter": "Spool diameter",
    "hint.spool_diameter": "Over the rims.",
    "field.core_diameter": "Barrel diameter",
    "hint.core_diameter": "What the wire is wound on. Measure an empty spool of the same kind.",
    "field.spool_depth": "Depth of the wire now",
    "hint.spool_depth": "From the rim straight down to the wire, the mean of three places.",
    "field.new_spool_depth": "Depth when new",
    "field.new_wire_mass": "Mass of wire when new",
    "field.spool_width": "Width between the rims",
    "field.winding": "How it is wound",
    "option.winding.not-known": "Not known",
    "option.winding.random": "Random",
    "option.winding.layer": "Layer by layer",
    "field.wire_feed_speed": "Wire feed speed",
    "field.arc_time": "Arc time",
    "hint.arc_time": "Blank: how long it lasts. Filled in: whether that is enough, or what to bring.",
    "field.wire_length": "Length of wire",
    "field.waste": "Waste",
    "hint.waste": "Trimmed ends, starts, wire left in the liner. Blank takes 5 %.",
    "range.core_diameter": "the barrel is smaller than the rims",
    "range.new_spool_depth": "a new spool is wound fuller than it is now",
    "refusal.cored": "Cored wire is lighter than solid wire of the same diameter, by as much as its fill leaves empty. Its data sheet gives length for mass",
    "refusal.light": "That is no more than the empty spool ({empty_spool_mass}): no wire is left, or one of the two is wrong",
    "refusal.empty": "At {deepest} the barrel begins: there is no wire left, or one of the sizes is wrong",
    "result.arc_time": "Arc time on the spool",
    "result.wire_feed_speed": "Wire feed speed that uses it up",
    "result.wire_length": "Length of wire",
    "result.wire_mass": "Mass of wire",
    "result.to-bring": "Wire to bring",
    "result.remaining_share": "Share of a new spool",
    "in-words": "{hours} h {minutes} min",
    "band.wire": "Wire is made to a tolerance: 5 % of its mass for a length.",
    "band.also-wire": "{first} Wire is made to a tolerance: 5 % of its mass for a length.",
    "band.depth-share": "A rule reads the depth to about 2 mm.",
    "band.depth-size": "A rule reads the depth to about 2 mm, and how tightly the wire lies is not known well.",
    "verdict.asked": "{arc_time} asked for",
    "remedy.mass": "That much arc time takes {wire_mass} of wire, waste included.",
    "working.scale": "Mass of wire = spool with its wire − empty spool = {spool_mass} − {empty_spool_mass} = {wire_mass}",
    "working.wound": "Diameter of the wire = rim − 2 × depth = {rim} − 2 × {spool_depth} = {wound}",
    "working.share": "Share left = (now² − barrel²) ÷ (new² − barrel²), with now {wound}, barrel {core}, new {full} = {share}",
    "working.of-new": "Mass of wire = {share} × {new_wire_mass} = {wire_mass}",
    "working.size": "Mass of wire = density × packing × π/4 × (wire² − barrel²) × width, with {density} kg/m³, {packing}, {wound}, {core}, {width} = {wire_mass}",
    "working.per-length": "A metre weighs density × π/4 × diameter² = {density} kg/m³ × π/4 × ({wire_diameter})² = {per_length} g",
    "working.length": "Length = mass ÷ mass of a metre = {wire_mass} ÷ {per_length} g/m = {length}",
    "working.mass": "Mass = length × mass of a metre = {length} × {per_length} g/m = {wire_mass}",
    "working.usable": "To burn = length × (1 − waste) = {length} × (1 − {waste}) = {usable}",
    "working.needed": "Length to have = to burn ÷ (1 − waste) = {usable} ÷ (1 − {waste}) = {length}",
    "working.time": "Arc time = to burn ÷ wire feed = {usable} ÷ {wire_feed_speed} = {arc_time}",
    "working.feed": "Wire feed = to burn ÷ arc time = {usable} ÷ {arc_time} = {wire_feed_speed}",
    "working.length-fed": "To burn = wire feed × arc time = {wire_feed_speed} × {arc_time} = {usable}",
    "note.waste": "{waste} of the wire is taken as wasted. Common practice in field work.",
    "note.clock": "With the arc on {share} of the clock, as in repair work, that is {clock} of work. Common practice.",
    "note.feed": "The feed is that of the wire itself, not the number on the dial.",
    "note.label": "A label gives the wire alone. Small spools waste more of it: every change leaves wire in the liner.",
    "note.scale": "Weighing is the best way: wire is what the scale shows, less the empty spool.",
    "note.depth-share": "Width and packing cancel against the new spool: better than sizes, not as good as a scale.",
    "note.depth-size": "How tightly the wire lies is not known well: weigh the spool, or note the depth of the next new one.",
    "caution.spare": "A reckoning, not a gauge: carry a spare for work that must not stop.",
    "caution.spring": "Wire on a spool is a spring: hold the end when you cut it, and keep it out of faces.",
    "drawing.title": "The spool, cut through from axle to rim",
    "drawing.description": "The wire lies {spool_depth} below a rim of {rim}: {wound} across, on a barrel of {barrel}.",
    "drawing.rim": "Rim {diameter}",
    "drawing.new": "New {diameter}",
    "drawing.now": "Now {diameter}",
    "drawing.barrel": "Barrel {diameter}",
    "next.gas-supply": "Does the gas last as long?",
    "next.wire-feed": "What current does this feed draw?",
}
ENGLISH.update(solid_wire.ENGLISH)

_MASSES = ("1 lb", "2 lb", "11 lb", "16 lb", "33 lb", "44 lb", "0.5 kg", "1 kg", "5 kg", "7 kg", "15 kg")
_BY_DEPTH_FIELDS = ("remaining_by", _BY_DEPTH)

CALCULATOR = Calculator(
    name="spool-life",
    fields=solid_wire.FIELDS
    + (
        Choice("remaining_by", ("label", "scale", "depth-share", "depth-size"), default="label"),
        Quantity("wire_mass", when=("remaining_by", ("label",)), hint=True, presets=_MASSES),
        Quantity("spool_mass", "wire_mass", when=("remaining_by", ("scale",))),
        Quantity("empty_spool_mass", "wire_mass", when=("remaining_by", ("scale",)), hint=True),
        Quantity(
            "spool_diameter",
            when=_BY_DEPTH_FIELDS,
            hint=True,
            low=50.0,
            presets=("4 in", "8 in", "12 in", "14 in", "100 mm", "200 mm", "300 mm"),
        ),
        Quantity("core_diameter", "spool_diameter", when=_BY_DEPTH_FIELDS, hint=True),
        Quantity("spool_depth", when=_BY_DEPTH_FIELDS, hint=True),
        Quantity("new_spool_depth", "spool_depth", when=("remaining_by", ("depth-share",))),
        Quantity("new_wire_mass", "wire_mass", when=("remaining_by", ("depth-share",)), presets=_MASSES),
        Quantity("spool_width", when=("remaining_by", ("depth-size",))),
        Choice(
            "winding", ("not-known", "random", "layer"), default="not-known", when=("remaining_by", ("depth-size",))
        ),
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
            also=("wire_material", "filler_alloy", "wire_diameter"),
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
    sources=(GEOMETRY, DENSITY, TOLERANCE, PACKING, DEPTH, WASTE),
    place=50,
)
