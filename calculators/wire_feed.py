"""Wire feed: what feed gives this current, what current this feed draws, or how far the tip must be for both."""

from calculators import machine_fields, melting_tables, numerals, solid_wire, wire_mass
from calculators.contract import (
    UNKNOWN,
    Answer,
    Calculator,
    Choice,
    Drawing,
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
    say,
)
from calculators.drawings import melting_curve
from calculators.facts import wires
from calculators.machine import Machine
from calculators.melting_law import MeltingLaw, Point
from calculators.ranges import OutOfRange

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

LESNEWICH = Source(
    "Lesnewich, Welding Journal, 1958, as in the AWS Welding Handbook: wire feed = arc term + resistance term",
    "from memory",
)
AMIN = Source(
    "Amin (1983), in Norrish, Advanced Welding Processes: both terms of mild steel, the arc term of aluminum",
    "from memory",
)
AWS_C5_6 = Source("AWS C5.6: currents of mild steel wire in short-circuit", "from memory")
STAINLESS = Source("Both terms of stainless: between remembered figures and an energy balance", "from memory")
MODERN_WELDING = Source(
    "Modern Welding, 2020, figures 8-16 to 8-18: currents of stainless and aluminum wire", "published"
)
NAVY = Source("NAVEDTRA 14119, US Navy, table 10-11: currents of aluminum wire in argon", "published")
RAMGOPAL = Source(
    "Ramgopal and Mendez, Deposition rate in GMAW of ER1100 and ER5183 Aluminum Alloys, CANWELD 2023, abstract:"
    " aluminum wire hardly heats before the arc",
    "published",
)
CHROMIUM = Source("29 CFR 1910.1026: hexavalent chromium, at most 5 µg/m³ over 8 hours", "law")
BURN_OFF = Source("Burn-off of steel wire in short-circuit: so many in/min for each ampere", "common practice")
AMPERE_RULE = Source("1 A for each 0.001 in of steel", "common practice")
USUAL = Source("Arc length, and contact tip to work where it is not known", "common practice")
RUN_OUT = Source("Wire run out in six seconds, times ten", "common practice")

_SOURCES_OF = (
    ("mild-steel", (LESNEWICH, AMIN, AWS_C5_6, BURN_OFF, AMPERE_RULE)),
    ("stainless", (LESNEWICH, STAINLESS, MODERN_WELDING, CHROMIUM)),
    ("aluminum", (LESNEWICH, AMIN, RAMGOPAL, NAVY, MODERN_WELDING)),
)
_CURVE_STEPS = 8
_OWN_GAS = (("stainless", "helium-mix"), ("aluminum", "argon"))


# ---------------------------------------------------------------- what is asked


def _solve_melting(unknown: str, values: "dict[str, Any]") -> float:
    law = MeltingLaw(values)
    if unknown == "wire_feed_speed":
        return law.checked_feed(values["current"], values["contact_tip_to_work"])
    if unknown == "current":
        return law.checked_current(values["wire_feed_speed"], values["contact_tip_to_work"])
    if law.resistance == 0.0:
        raise Refusal("contact_tip_to_work", say("wire-feed.refusal.aluminum"))
    return law.checked_distance(values["wire_feed_speed"], values["current"])


def _solve_run_out(unknown: str, values: "dict[str, Any]") -> float:
    if unknown == "wire_feed_speed":
        return wire_mass.feed_measured(values["run_out_length"], values["run_out_time"])
    if unknown == "run_out_length":
        return wire_mass.length_fed(values["wire_feed_speed"], values["run_out_time"])
    return wire_mass.arc_time(values["run_out_length"], values["wire_feed_speed"])


def _prepare(given: Given) -> None:
    Machine(given)  # says at once what of it cannot be read
    if given.word("wire_kind") != "solid":
        raise Refusal("wire_kind", say("wire-feed.refusal.cored"))
    if given.word("transfer_mode") == "pulse":
        raise Refusal("transfer_mode", say("wire-feed.refusal.pulse"))
    if given.has("run_out_length") and not given.has("run_out_time"):
        given.fill("run_out_time", wires.RUN_OUT_TIME)
    if given.values.get("contact_tip_to_work") == UNKNOWN:
        given.values["contact_tip_to_work"] = None
    if given.has("wire_diameter") and not given.has("contact_tip_to_work") and _may_guess_distance(given):
        given.fill("contact_tip_to_work", MeltingLaw(given.values).usual_distances()[1])


def _may_guess_distance(given: Given) -> bool:
    """Return whether the reader said that the distance is not known, or it plays no part."""
    if given.typed.get("contact_tip_to_work", "").lower() == UNKNOWN:
        return True
    has_feed = given.has("wire_feed_speed") or given.has("run_out_length")
    return given.word("wire_material") == "aluminum" and given.has("current") != has_feed


# ---------------------------------------------------------------- the answer


def _answer(given: Given) -> Answer:
    law = MeltingLaw(given.values)
    guessed = "contact_tip_to_work" in given.made and given.solved_for != "contact_tip_to_work"
    distance, current = given.number("contact_tip_to_work"), given.number("current")
    point = Point(law, distance, current, given.number("wire_feed_speed"), guessed)
    return Answer(
        results=_results(given, point),
        working=_working(given, point),
        notes=_notes(given, point),
        cautions=_cautions(law),
        sources=dict(_SOURCES_OF)[law.material] + (USUAL, RUN_OUT),
        next_questions=_next(given),
        verdict=_verdict(given, point),
    )


def _feed(given: Given, value: float, figures: int | None = None) -> Measured:
    """Return a feed to be shown in the unit the reader uses for wire feed."""
    return Measured(value, "wire_feed_speed", figures, given.units.get("wire_feed_speed"))


def _distance(given: Given, value: float, figures: int | None = None) -> Measured:
    return Measured(value, "contact_tip_to_work", figures, given.units.get("contact_tip_to_work"))


def _results(given: Given, point: Point) -> tuple[object, ...]:
    percent = Plain(point.law.half_band * 100.0, 2)
    band = say("wire-feed.band.guessed" if point.guessed else "wire-feed.band.law", percent=percent)
    machine = Machine(given)
    if "trim_band" in machine.trim and not point.guessed:
        band = say("machine.band", percent=percent)
    results: list[object] = []
    if given.solved_for == "current":
        low, high = point.currents()
        results.append(Number("current", point.current, None, low, high, band))
    elif given.solved_for == "contact_tip_to_work":
        low, high = point.distances()
        band = say("wire-feed.band.distance", percent=percent)
        results.append(Number("contact_tip_to_work", point.distance, None, low, high, band))
    else:
        low, high = point.feeds(point.current)
        label = None if given.solved_for else say("wire-feed.result.by-the-law")
        dial = machine.words(point.feed)
        results.append(Number("wire_feed_speed", point.feed, None, low, high, band, label, in_words=dial))
    if given.solved_for in ("current", "contact_tip_to_work") and "wire_feed_speed" in given.made:
        results.append(Number("wire_feed_speed", point.typed_feed))
    results += machine.feed_results(point.typed_feed if given.solved_for else point.feed)
    if not given.has("run_out_length"):
        results.append(Number("run_out_length", wire_mass.length_fed(point.typed_feed, wires.RUN_OUT_TIME)))
    results.append(_drawing(given, point))
    return tuple(results)


def _drawing(given: Given, point: Point) -> Drawing:
    curve = point.curve(_CURVE_STEPS)
    description = say(
        "wire-feed.drawing.description",
        lowest=Measured(curve[0][0], "current"),
        slowest=_feed(given, curve[0][2]),
        highest=Measured(curve[-1][0], "current"),
        fastest=_feed(given, curve[-1][2]),
        current=Measured(point.current, "current"),
        wire_feed_speed=_feed(given, point.typed_feed),
    )
    plain: list[tuple[float, float]] = []
    if Machine(given).trim:
        law = MeltingLaw({name: value for name, value in given.values.items() if name not in machine_fields.TRIM})
        plain = [(row[0], law.feed(row[0], point.extension)) for row in curve]
        there = _feed(given, law.feed(point.current, point.extension))
        description = say("wire-feed.drawing.trimmed", curve=description, wire_feed_speed=there)
    names = (say("wire-feed.field.current"), say("wire-feed.field.wire_feed_speed"), say("drawing.plain"))
    points = ((point.current, point.typed_feed),)
    words = (say("wire-feed.drawing.title"), description)
    return melting_curve.draw(curve, tuple(plain), points, given.units.get("wire_feed_speed"), words, names)


def _verdict(given: Given, point: Point) -> Verdict | None:
    if given.solved_for:
        return None
    low, high = point.feeds(point.current)
    typed = numerals.settle(point.typed_feed)
    message = say(
        "wire-feed.verdict." + _sense(point.typed_feed, point.feed),
        wire_feed_speed=_feed(given, point.typed_feed),
        percent=_percent(point.typed_feed, point.feed),
    )
    if numerals.settle(low) <= typed <= numerals.settle(high):
        return Verdict("inside", message)
    return Verdict("outside", message, say("wire-feed.remedy.outside"))


def _working(given: Given, point: Point) -> tuple[Message, ...]:
    law, arc, heat = point.law, point.arc_term, point.resistance_term
    ratio = wires.REFERENCE_DIAMETER / law.diameter
    shown: dict[str, object] = {
        "reference": Measured(wires.REFERENCE_DIAMETER, "wire_diameter", 4, "mm"),
        "wire_diameter": Measured(law.diameter, "wire_diameter", 4, "mm"),
        "ratio": Plain(ratio * ratio, 4),
        "distance": Measured(point.distance, "contact_tip_to_work", 3, "mm"),
        "arc_length": Measured(law.arc_length, "contact_tip_to_work", 3, "mm"),
        "extension": Measured(point.extension, "contact_tip_to_work", 3, "mm"),
        "arc_coefficient": Plain(law.arc * 1000.0, 4),
        "arc_speed": Measured(arc, "wire_feed_speed", 4, "mm/s"),
        "arc": _feed(given, arc, 4),
        "resistance_coefficient": Plain(law.resistance, 4),
        "resistance_speed": Measured(heat, "wire_feed_speed", 4, "mm/s"),
        "resistance": _feed(given, heat, 4),
        "current": Measured(point.current, "current", 4),
        "wire_feed_speed": _feed(given, point.feed, 4),
        "contact_tip_to_work": _distance(given, point.distance),
    }
    lines = ["extension", "arc", "resistance" if heat > 0.0 else "no-resistance", given.solved_for or "wire_feed_speed"]
    if numerals.settle(ratio) != 1.0:
        lines.insert(0, "scaled")
    if given.has("run_out_length") and "wire_feed_speed" in given.made:
        shown["run_out_length"] = given.measured("run_out_length")
        shown["run_out_time"] = given.measured("run_out_time")
        shown["typed_feed"] = _feed(given, point.typed_feed, 4)
        lines.insert(0, "run-out")
    return tuple(say("wire-feed.working." + line, **shown) for line in lines)


def _notes(given: Given, point: Point) -> tuple[Message, ...]:
    notes = _rules_of_thumb(given, point) if point.law.material == "mild-steel" else []
    if point.guessed:
        near, usual, far = point.law.usual_distances()
        parameters = (_distance(given, usual, 2), _distance(given, near, 2), _distance(given, far, 2))
        notes.append(say("wire-feed.note.guessed", usual=parameters[0], near=parameters[1], far=parameters[2]))
    elif point.resistance_term > 0.0 and point.law.transfer == "not-known":
        notes.append(say("wire-feed.note.arc-length", arc_length=_distance(given, point.law.arc_length, 2)))
    if point.resistance_term == 0.0:
        notes.append(say("wire-feed.note.no-part"))
        if point.law.alloy == "":
            notes.append(say("wire-feed.note.alloy"))
    if given.solved_for == "contact_tip_to_work":
        notes.append(say("wire-feed.note.distance"))
    notes += Machine(given).notes()
    return tuple(notes) + (say("wire-feed.note.run-out"), say("wire-feed.note.holds"))


def _rules_of_thumb(given: Given, point: Point) -> list[Message]:
    """Return the shop's rules beside the law; a rule that does not reach this wire and current is left out."""
    notes = []
    if point.law.transfer != "spray":
        try:
            rule = melting_tables.burn_off_feed(point.current, point.law.diameter)
            notes.append(_set_against("burn-off", _feed(given, rule), _feed(given, point.feed), wires.BURN_OFF_BAND))
        except OutOfRange:
            pass
    if given.has("thickness"):
        try:
            rule = melting_tables.current_for_thickness(given.number("thickness"))
            shown, own = Measured(rule, "current"), Measured(point.current, "current")
            notes.append(_set_against("thickness", shown, own, wires.CURRENT_PER_THICKNESS_BAND))
        except OutOfRange:
            notes.append(say("wire-feed.note.thickness-ends"))
    return notes


def _set_against(rule: str, shown: Measured, own: Measured, band: float) -> Message:
    return say(
        "wire-feed.note." + rule + "." + _sense(shown.value, own.value),
        shown=shown,
        own=own,
        percent=_percent(shown.value, own.value),
        band=Plain(band * 100.0, 2),
    )


def _sense(value: float, reference: float) -> str:
    value, reference = numerals.settle(value, 6), numerals.settle(reference, 6)
    return "same" if value == reference else "above" if value > reference else "below"


def _percent(value: float, reference: float) -> Plain:
    """Return how far a value is from its reference, free of the last bits in which maths libraries differ."""
    value, reference = numerals.settle(value, 6), numerals.settle(reference, 6)
    return Plain(abs(value - reference) / reference * 100.0, 2)


def _cautions(law: MeltingLaw) -> tuple[Message, ...]:
    cautions = [
        say("wire-feed.caution.start"),
        say("caution.run-out"),
        say("caution.live"),
        say("caution.arc"),
    ]
    if law.material == "stainless":
        cautions.append(say("wire-feed.caution.stainless"))
    return tuple(cautions)


def _next(given: Given) -> tuple[Next, ...]:
    current = ("current", given.measured("current"))
    wire = [("wire_material", given.word("wire_material"))]
    if given.word("filler_alloy"):
        wire.append(("filler_alloy", given.word("filler_alloy")))
    sizes = [(name, given.measured(name)) for name in ("wire_diameter", "wire_feed_speed")]
    # Steel may run in any mix: the question takes the usual one. The others have a gas of their own.
    arc = wire[:1] + [("gas", gas) for material, gas in _OWN_GAS if material == given.word("wire_material")]
    return (
        Next("transfer-mode", say("wire-feed.next.transfer-mode"), tuple(arc) + tuple(sizes[:1]) + (current,)),
        Next("travel-speed", say("wire-feed.next.travel-speed"), tuple(sizes)),
        Next("heat-input", say("wire-feed.next.heat-input"), (current,)),
        Next("spool-life", say("wire-feed.next.spool-life"), tuple(wire) + tuple(sizes)),
    )


ENGLISH = {
    "title": "Wire feed and current",
    "question": "What wire feed gives this current, and what current does this feed draw?",
    "found-by": "wfs ipm amps 1/4 amperage current dial speed feed rate stickout ctwd stick out melting burn off birdnest contact tip",
    "lead": "Leave one of current, wire feed speed and contact tip to work blank: it is worked out.",
    "field.current": "Current",
    "field.contact_tip_to_work": "Contact tip to work",
    "hint.contact_tip_to_work": "From tip to metal, arc included. Short-circuit: 3/8 to 1/2 in (10 to 12 mm). Spray: about 3/4 in (19 mm).",
    "field.wire_feed_speed": "Wire feed speed",
    "hint.wire_feed_speed": "As measured. A dial number is not a speed: run wire out below.",
    "field.run_out_length": "Wire run out",
    "hint.run_out_length": "Run wire for six seconds, cut it, measure it.",
    "field.run_out_time": "Time it ran",
    "hint.run_out_time": "Blank takes 6 seconds.",
    "field.transfer_mode": "Transfer",
    "option.transfer_mode.": "Not sure",
    "option.transfer_mode.short-circuit": "Short-circuit",
    "option.transfer_mode.spray": "Spray",
    "option.transfer_mode.pulse": "Pulse",
    "field.thickness": "Steel thickness",
    "hint.thickness": "Only to set a shop rule beside the answer.",
    "range.wire_diameter": "the law is known for these sizes of this wire only",
    "range.current": "the law is known there only, for this wire and contact tip distance",
    "range.wire_feed_speed": "the law is known there only, for what else you typed",
    "range.contact_tip_to_work": "the law is known for these distances only",
    "refusal.cored": "The melting law holds for solid wire only. In cored wire the sheath carries the current and the fill does not, so the same amps melt another length. Use the wire's data sheet",
    "refusal.pulse": "Pulsed current melts more wire for each ampere on the meter than this law says. Use the machine's own program, or run wire out and measure",
    "refusal.aluminum": "Aluminum conducts so well that the distance hardly changes how fast it melts. Feed and current do not tell the distance",
    "result.wire_feed_speed": "Wire feed speed",
    "result.by-the-law": "Wire feed speed by the law",
    "result.current": "Current",
    "result.contact_tip_to_work": "Contact tip to work",
    "result.run_out_length": "Wire run out in 6 seconds",
    "band.law": "Real arcs melt up to {percent} % more or less wire than the law: gas, transfer and arc length move it.",
    "band.guessed": "Real arcs melt up to {percent} % more or less wire than the law, and the distance was guessed.",
    "band.distance": "{percent} % of feed is many millimeters of distance. Good for how far the gun moved, poor for the distance itself.",
    "verdict.above": "your {wire_feed_speed} is {percent} % above the law",
    "verdict.below": "your {wire_feed_speed} is {percent} % below the law",
    "verdict.same": "your {wire_feed_speed} is what the law says",
    "remedy.outside": "One number is off. Run wire out and measure the feed, then check the wire size, the distance and the meter.",
    "working.run-out": "Wire feed = wire run out ÷ time = {run_out_length} ÷ {run_out_time} = {typed_feed}",
    "working.scaled": "From {reference} wire to {wire_diameter}: the arc term grows with 1 ÷ area, {ratio} times; the resistance term with its square.",
    "working.extension": "Electrode extension = contact tip to work − arc length = {distance} − {arc_length} = {extension}",
    "working.arc": "Arc term = {arc_coefficient} mm/s for each A × {current} = {arc_speed} = {arc}",
    "working.resistance": "Resistance term = {resistance_coefficient} for each s·A² × {extension} × ({current})² = {resistance_speed} = {resistance}",
    "working.no-resistance": "Resistance term = 0: aluminum wire hardly heats before the arc.",
    "working.wire_feed_speed": "Wire feed = arc term + resistance term = {arc} + {resistance} = {wire_feed_speed}",
    "working.current": "{current} is the current at which both terms add up to the feed: {arc} + {resistance} = {wire_feed_speed}",
    "working.contact_tip_to_work": "{contact_tip_to_work} is the distance at which both terms add up to the feed: {arc} + {resistance} = {wire_feed_speed}",
    "note.burn-off.above": "Shop rule for short-circuit, so much feed for each ampere: {shown}, {percent} % above the law's {own}. Common practice, good to about {band} %.",
    "note.burn-off.below": "Shop rule for short-circuit, so much feed for each ampere: {shown}, {percent} % below the law's {own}. Common practice, good to about {band} %.",
    "note.burn-off.same": "Shop rule for short-circuit, so much feed for each ampere: {shown}, the same as the law. Common practice, good to about {band} %.",
    "note.thickness.above": "Shop rule, 1 A for each 0.001 in of steel: {shown}, {percent} % above your {own}. Common practice, good to about {band} %.",
    "note.thickness.below": "Shop rule, 1 A for each 0.001 in of steel: {shown}, {percent} % below your {own}. Common practice, good to about {band} %.",
    "note.thickness.same": "Shop rule, 1 A for each 0.001 in of steel: {shown}, the same as yours. Common practice, good to about {band} %.",
    "note.thickness-ends": "The shop rule of 1 A for each 0.001 in ends at 1/4 in of steel: thicker metal is welded in passes.",
    "note.guessed": "Distance not known: {usual} taken, and the band holds {near} to {far}. Measure it for a narrower answer.",
    "note.arc-length": "Transfer not chosen: an arc of {arc_length} is taken.",
    "note.no-part": "Contact tip to work plays no part with aluminum: it still matters for the gas and the arc.",
    "note.alloy": "5356 feeds about 10 to 15 % faster than 4043 at the same current: choose the alloy for a narrower band. Common practice.",
    "note.distance": "Trust a change more than the distance: the same error is in both readings.",
    "note.run-out": "A dial with marks only: run wire for six seconds and measure it. Times ten is the feed for a minute. Common practice.",
    "note.holds": "Holds for solid wire, electrode positive, steady current. A worn tip or a dragging liner moves it.",
    "caution.start": "A starting point, not a setting: try it on scrap first. The welding procedure (WPS) rules where there is one.",
    "caution.stainless": "Stainless fume holds hexavalent chromium: extract it at the arc. US limit 5 µg/m³ over 8 hours (29 CFR 1910.1026).",
    "drawing.title": "Current across, wire feed up, with the band",
    "drawing.trimmed": "{curve} The plain law gives {wire_feed_speed} there.",
    "drawing.description": "The melting curve of this wire rises from {slowest} at {lowest} to {fastest} at {highest}. Your point: {wire_feed_speed} at {current}.",
    "next.transfer-mode": "What volts, and which transfer is that?",
    "next.travel-speed": "How fast do I go at this feed?",
    "next.heat-input": "How much heat goes into the weld?",
    "next.spool-life": "How long does the spool last?",
}
ENGLISH.update(solid_wire.ENGLISH)
ENGLISH.update(machine_fields.ENGLISH)

CALCULATOR = Calculator(
    name="wire-feed",
    fields=solid_wire.FIELDS
    + (
        Quantity("current", presets=("90 A", "125 A", "150 A", "180 A")),
        Quantity("wire_feed_speed", hint=True),
        Quantity(
            "contact_tip_to_work",
            hint=True,
            low=5.0,
            high=35.0,
            presets=("3/8 in", "1/2 in", "5/8 in", "3/4 in", "10 mm", "12 mm", "15 mm", "19 mm"),
            may_be_unknown=True,
        ),
        Quantity("run_out_length", optional=True, hint=True),
        Quantity("run_out_time", optional=True, hint=True),
        Choice("transfer_mode", ("short-circuit", "spray", "pulse"), optional=True),
        Quantity("thickness", optional=True, hint=True, when=("wire_material", ("mild-steel",)), presets=("1/16 in", "1/8 in", "3/16 in", "2 mm", "3 mm", "5 mm")),
    )
    + machine_fields.FEED_FIELDS,
    relations=(
        Relation(
            ("wire_feed_speed", "run_out_length", "run_out_time"),
            _solve_run_out,
            check="wire_feed_speed",
            required=False,
            its_own=("run_out_length",),
            agree_within=0.05,
        ),
        Relation(
            ("current", "wire_feed_speed", "contact_tip_to_work"),
            _solve_melting,
            check="",
            also=("wire_material", "filler_alloy", "wire_diameter", "transfer_mode") + machine_fields.TRIM,
        ),
    ),
    prepare=_prepare,
    answer=_answer,
    english=ENGLISH,
    sources=(
        LESNEWICH, AMIN, AWS_C5_6, STAINLESS, MODERN_WELDING, NAVY, RAMGOPAL, CHROMIUM, BURN_OFF, AMPERE_RULE, USUAL,
        RUN_OUT,
    ),
    place=20,
    machine=machine_fields.FEED_NAMES,
)  # fmt: skip
