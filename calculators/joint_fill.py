"""Joint fill: the metal one weld takes, and the wire, time and gas that go into it."""

import math

from calculators import deposition, fillet_geometry, numerals
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
from calculators.drawings import joint_drawing
from calculators.drawings.joint_outline import Outline
from calculators.facts import deposition as facts
from calculators.joint_fill_words import ENGLISH
from calculators.joint_job import JointJob
from calculators.joint_section import BEVELLED, CURVED, FILLETS, GROOVES, HOLES, JOINTS, LINES, RIGHT_ANGLE, Section

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

TWI_95 = Source('TWI Job Knowledge 95, "Calculating weld volume and weight", July 2008', "published")
GEOMETRY = Source("Geometry of triangle, parabola, arc and circle", "law")
OVERWELD = Source(
    'Legs 10 % over, so 1.2 times the metal: Welding Design, "Pre-Calculating Wire-Feed Speed, Travel Speed, and'
    ' Voltage", November 2009',
    "published",
)
EFFICIENCY = Source(
    "Average deposition efficiencies by process; inside the spans of weldinganswers.com, Which Arc Welding Process is"
    " the Most Efficient, but for metal-cored wire, 1 % lower",
    "from memory",
)
GAP_RULE = Source(
    "AWS D1.1, fit-up of fillets: over 1/16 in (2 mm) the legs grow by the opening, at most 3/16 in (5 mm); edition not"
    " seen, quoted in the AWS forum",
    "standard",
)
ANGLE_RULE = Source("EN 1993-1-8:2005, 4.3.2.1: fillets at 60 to 120°; seen quoted", "standard")
CONVEXITY = Source("AWS D1.1, visual inspection: most convexity by width of face", "from memory")
FACTORS = Source("Waste 5 %, operating factor 15 % in repair, 10 % for a cap", "common practice")


_SIZES = (
    "leg",
    "second_leg",
    "thickness",
    "root_gap",
    "root_face",
    "included_angle",
    "root_radius",
    "joint_angle",
    "convexity",
    "concavity",
    "reinforcement",
    "bead_width",
    "hole_diameter",
    "slot_width",
    "slot_length",
    "fill_depth",
)
# What besides length, number and wire decides how one follows from another.
_ALSO = _SIZES + (
    "joint",
    "wire_material",
    "wire_and_gas",
    "throat",
    "overweld_factor",
    "deposition_efficiency",
    "waste",
    "largest_bead",
    "wire_diameter",
    "wire_feed_speed",
    "operating_factor",
)

# ---------------------------------------------------------------- what is asked about

_BY_THROAT = "fillet-by-throat"


def _job(values: "dict[str, Any]", unit: str = "mm") -> JointJob:
    """Return the weld asked about, laid out."""
    gas = values.get("wire_and_gas", "")
    if values["wire_material"] == "aluminum" and gas not in ("", "solid-argon-rich"):
        raise Refusal("wire_and_gas", say("joint-fill.refusal.aluminum"))
    return JointJob(values, _section(values, unit))


def _section(values: "dict[str, Any]", unit: str) -> Section:
    asked = values["joint"]
    _refuse_shape(asked, values, unit)
    sizes = {}
    for name in _SIZES:
        if name in values:
            sizes[name] = values[name]
    if asked == _BY_THROAT:
        angle, hollow = sizes.get("joint_angle") or RIGHT_ANGLE, sizes.get("concavity") or 0.0
        sizes["leg"] = fillet_geometry.leg_for_throat(values["throat"], angle, hollow)
    return Section("fillet" if asked == _BY_THROAT else asked, sizes, unit)


def _refuse_shape(asked: str, values: "dict[str, Any]", unit: str) -> None:
    """Refuse what no range of one size says."""
    if "convexity" in values and "concavity" in values:
        raise Refusal("concavity", say("joint-fill.refusal.both"))
    if asked == "lap" and numerals.settle(values["leg"]) > numerals.settle(values["thickness"]):
        thickness = Measured(values["thickness"], "joint_size", None, unit)
        raise Refusal("leg", say("joint-fill.refusal.lap", thickness=thickness))
    if asked == "edge" and not values.get("reinforcement"):
        raise Refusal("reinforcement", say("joint-fill.refusal.edge"))
    if asked == "square-butt":
        if not values.get("root_gap") and not values.get("reinforcement"):
            raise Refusal("root_gap", say("joint-fill.refusal.nothing"))
        if values.get("reinforcement") and "bead_width" not in values:
            raise Refusal("bead_width", say("joint-fill.refusal.width"))


def _solve(unknown: str, values: "dict[str, Any]") -> float:
    """Return the wire that a length or a number of welds takes, or how much of them the wire does."""
    job = _job(values)
    if unknown == "wire_mass":
        return job.wire
    return job.length_from_wire() if unknown == "weld_length" else job.count_from_wire()


def _line_takes_part(given: Given) -> bool:
    return given.word("joint") not in HOLES and (given.has("weld_length") or given.has("wire_mass"))


def _holes_take_part(given: Given) -> bool:
    return given.word("joint") in HOLES and (given.has("weld_count") or given.has("wire_mass"))


# ---------------------------------------------------------------- the answer


def _answer(given: Given) -> Answer:
    values = {}
    for name in _ALSO + ("weld_length", "weld_count", "wire_mass"):
        if given.has(name):
            values[name] = given.values[name]
    main = {"fillet": "leg", "lap": "leg", _BY_THROAT: "throat"}.get(given.word("joint"), "thickness")
    job = _job(values, given.units[main])
    return Answer(
        results=tuple(_headline(given, job) + _amounts(given, job) + _times(given, job))
        + (_drawing(given, job.section),),
        working=_working(given, job),
        notes=_notes(given, job),
        cautions=_cautions(job),
        sources=_sources(job.section),
        next_questions=_next(given, job),
        verdict=_verdict(given, job),
    )


def _banded(job: JointJob, name: str, value: float, quantity: str, turned: bool = False) -> Number:
    """Return a number with its band; `turned` where more metal makes it smaller."""
    least, most = (1.0 / job.most, 1.0 / job.least) if turned else (job.least, job.most)
    if numerals.settle(least) == numerals.settle(most):
        return Number(name, value, quantity)
    return Number(name, value, quantity, low=value * least, high=value * most, band=say("joint-fill.band"))


def _headline(given: Given, job: JointJob) -> list[object]:
    if given.solved_for == "weld_length":
        length = given.number("weld_length")
        found = _banded(job, "weld_length", length, "weld_length", turned=True)
        feet, metres = Measured(length, "weld_length", 3, "ft"), Measured(length, "weld_length", 3, "m")
        found.in_words = say("joint-fill.feet", feet=feet, metres=metres)
        return [found]
    if given.solved_for == "weld_count":
        return [Number("weld_count", given.number("weld_count"), "count", figures=6)]
    if given.solved_for == "wire_mass":
        return [_banded(job, "wire_mass", given.number("wire_mass"), "wire_mass")]
    if job.extent:
        return [_banded(job, "wire_needed", job.wire, "wire_mass")]
    return [_banded(job, "deposit_per_length", job.per_length, "mass_per_length")]


def _amounts(given: Given, job: JointJob) -> list[object]:
    section = job.section
    found: list[object] = []
    if given.word("joint") == _BY_THROAT:
        found.append(Number("leg", section.size("leg"), in_words=say("joint-fill.leg.not-throat")))
    elif section.throat is not None:
        found.append(Number("throat", section.throat, "joint_size", in_words=say("joint-fill.throat.not-leg")))
    if section.is_line():
        found.append(Number("weld_area", job.area, "bead_area"))
        if job.extent:
            found.append(Number("deposit_per_length", job.per_length, "mass_per_length"))
    else:
        found.append(Number("deposit_each", job.each, "wire_mass"))
    if job.extent:
        found.append(Number("deposit_mass", job.deposit, "wire_mass"))
    if job.bead is not None:
        found.append(Number("passes", float(job.passes), "count", figures=6))
    return found


def _times(given: Given, job: JointJob) -> list[object]:
    found: list[object] = []
    if job.travel is not None:
        found.append(Number("travel_speed", job.travel))
    if job.rate is not None:
        found.append(Number("deposition_rate", job.rate))
    if job.arc_time is not None:
        found.append(Number("arc_time", job.arc_time))
        found.append(Number("clock_time", job.clock_time, "arc_time", in_words=_hours(job.clock_time)))
        if given.has("gas_flow"):
            found.append(Number("gas_volume", deposition.gas_used(given.number("gas_flow"), job.arc_time)))
    return found


def _hours(seconds: float) -> Message:
    minutes = math.floor(numerals.settle(seconds / 60.0) + 0.5)
    return say("joint-fill.hours", hours=minutes // 60, minutes=minutes % 60)


def _verdict(given: Given, job: JointJob) -> Verdict | None:
    if not given.has("wire_mass") or given.solved_for is not None:
        return None
    unit = given.units.get("wire_mass")
    held = given.number("wire_mass")
    left = held - job.wire
    if numerals.settle(left) < 0.0:
        return Verdict("outside", say("joint-fill.verdict.short", short=Measured(-left, "wire_mass", None, unit)))
    message = say("joint-fill.verdict.enough", left=Measured(left, "wire_mass", None, unit))
    most = job.wire * job.most
    if numerals.settle(held) < numerals.settle(most):
        remedy = say("joint-fill.verdict.may", most=Measured(most, "wire_mass", None, unit))
        return Verdict("unclear", message, remedy)
    return Verdict("inside", message)


def _drawing(given: Given, section: Section) -> object:
    texts = []
    if section.joint in FILLETS and section.gap:
        texts.append(_size_text("gap", size=section.shown(section.gap)))
    if section.bulge:
        key = "bulge" if section.bulge > 0.0 else "hollow"
        texts.append(_size_text(key, size=section.shown(abs(section.bulge))))
    if section.joint == "fillet" and section.size("joint_angle"):
        texts.append(_size_text("between", size=section.shown_angle(section.angle)))
    if section.joint == "lap":
        texts.append(_size_text("thickness", size=section.shown(section.size("thickness"))))
    if section.joint in CURVED:
        texts.append(_size_text("radius", size=section.shown(section.size("root_radius"))))
    if section.joint == "slot":
        texts.append(_size_text("slot-length", size=section.shown(section.size("slot_length"))))
    joint = say("joint-fill.option.joint." + given.word("joint"))
    words = (
        say("joint-fill.drawing.title", joint=joint),
        say("joint-fill.drawing.description", joint=joint, area=section.shown_area(section.area)),
    )
    return joint_drawing.draw(Outline(section), words, _size_text, texts)


def _size_text(key: str, **parameters: object) -> Message:
    return say("joint-fill.drawing." + key, **parameters)


# ---------------------------------------------------------------- working, notes, cautions, sources, next


def _working(given: Given, job: JointJob) -> tuple[Message, ...]:
    leg = _leg_line(job.section) if given.word("joint") == _BY_THROAT else []
    lines = leg + job.section.lines + job.lines(given.solved_for)
    return tuple(say("joint-fill.working." + key, **parameters) for key, parameters in lines)


def _leg_line(section: Section) -> "list[tuple[str, dict[str, Any]]]":
    leg, hollow, half = section.size("leg"), section.size("concavity"), section.angle / 2.0
    shown = {
        "throat": section.shown(leg * math.cos(half) - hollow),
        "hollow": section.shown(hollow),
        "half": section.shown_angle(half),
        "leg": section.shown(leg),
    }
    return [("leg-hollow" if hollow else "leg", shown)]


def _notes(given: Given, job: JointJob) -> tuple[Message, ...]:
    section = job.section
    notes = []
    if not given.has("overweld_factor"):
        notes.append(say("joint-fill.note.overweld-" + _kind_of_overweld(job), factor=Plain(job.overweld, 3)))
    if section.joint in FILLETS and section.gap:
        grown = numerals.settle(section.gap) > numerals.settle(facts.GROW_LEGS_ABOVE)
        notes.append(say("joint-fill.note.gap-code" if grown else "joint-fill.note.gap"))
    if section.joint in GROOVES:
        notes.append(say("joint-fill.note.root"))
    if section.levels() == 2:
        notes.append(say("joint-fill.note.both-sides"))
    if section.joint in HOLES and not given.has("fill_depth"):
        notes.append(say("joint-fill.note.filled"))
    notes.append(say("joint-fill.note.wire", efficiency=Plain(job.efficiency * 100.0, 3)))
    if job.gas in facts.CORED:
        notes.append(say("joint-fill.note.cored"))
    elif job.rate is None:
        notes.append(say("joint-fill.note.feed"))
    elif job.arc_time is not None and not given.has("operating_factor"):
        notes.append(say("joint-fill.note.factor", factor=Plain(job.factor * 100.0, 2)))
    return tuple(notes)


def _kind_of_overweld(job: JointJob) -> str:
    if job.section.joint in HOLES:
        return "hole"
    if job.section.bulge or job.section.size("reinforcement"):
        return "exact"
    return "fillet" if job.section.joint in FILLETS else "groove"


def _cautions(job: JointJob) -> tuple[Message, ...]:
    section = job.section
    cautions = [say("joint-fill.caution.drawing")]
    allowed = [most for width, most in facts.MOST_CONVEXITY if numerals.settle(section.width) <= numerals.settle(width)]
    if section.joint in FILLETS and numerals.settle(section.bulge) > numerals.settle(allowed[0]):
        cautions.append(say("joint-fill.caution.convex", most=section.shown(allowed[0])))
    if job.travel is not None:
        cautions.append(say("joint-fill.caution.fusion"))
    cautions.append(say("caution.arc"))
    return tuple(cautions)


def _sources(section: Section) -> tuple[Source, ...]:
    found = [TWI_95, GEOMETRY, OVERWELD, EFFICIENCY, FACTORS]
    if section.joint in FILLETS and section.gap:
        found.append(GAP_RULE)
    if section.joint == "fillet" and section.size("joint_angle"):
        found.append(ANGLE_RULE)
    if section.bulge > 0.0:
        found.append(CONVEXITY)
    return tuple(found)


def _next(given: Given, job: JointJob) -> tuple[Next, ...]:
    questions = []
    travel = () if job.travel is None else carry("travel_speed", Measured(job.travel, "travel_speed"), 0.2e-3, 0.1)
    if job.section.is_line() and job.gas not in facts.CORED:
        carried = carry("bead_area", Measured(job.area / job.passes, "bead_area"), 0.5e-6, 400e-6)
        if given.has("wire_diameter"):
            carried += carry("wire_diameter", given.measured("wire_diameter"), 0.5e-3, 2.5e-3)
        if given.has("wire_feed_speed") and (travel or job.travel is None):
            carried += (("wire_feed_speed", given.measured("wire_feed_speed")),)
        if given.has("deposition_efficiency"):
            carried += (("deposition_efficiency", given.measured("deposition_efficiency")),)
        carried += (("wire_and_gas", job.gas),)
        questions.append(Next("travel-speed", say("joint-fill.next.travel"), carried))
    if travel:
        questions.append(Next("heat-input", say("joint-fill.next.heat"), travel))
    # Strength and shrinkage are reckoned for steel.
    if given.word("wire_material") == "mild-steel":
        questions += _next_of_steel(given, job)
    if job.section.is_line():
        questions.append(Next("weld-cost", say("joint-fill.next.cost"), _for_cost(given, job)))
    return tuple(questions)


def _for_cost(given: Given, job: JointJob) -> tuple[tuple[str, object], ...]:
    """Return the weld and how it is run, as the cost of it is asked about."""
    cored = job.gas in facts.CORED
    area = Measured(job.area, "bead_area", None, job.section.unit + "2")
    carried = carry("weld_area", area, 1.0e-6, 0.01)
    carried += (("wire_material", given.word("wire_material")), ("wire_and_gas", job.gas))
    carried += (("rate_by", "rate" if cored else "feed"),)
    names = ("weld_length", "deposition_efficiency", "waste", "operating_factor", "gas_flow")
    for name in names[:-1] if job.gas == facts.CORED[-1] else names:
        if name in given.typed:
            quantity = "percentage" if name in ("waste", "operating_factor") else name
            carried += ((name, given.measured(name, quantity)),)
    for name in () if cored else ("wire_diameter", "wire_feed_speed"):
        if given.has(name):
            carried += ((name, given.measured(name)),)
    return carried


def _next_of_steel(given: Given, job: JointJob) -> list[Next]:
    section = job.section
    shown = Measured(section.size("thickness"), "thickness", None, section.unit)
    thickness = carry("thickness", shown, 1.0e-3, 0.1)
    length = (("weld_length", given.measured("weld_length")),) if given.has("weld_length") else ()
    if section.joint in GROOVES:
        area = carry("weld_area", Measured(job.area, "bead_area", None, section.unit + "2"), 1.0e-6, 0.01)
        carried = (("joint", "butt"), ("root_opening", section.shown(section.gap))) + area + thickness + length
        return [Next("shrinkage", say("joint-fill.next.shrinkage"), carried)]
    legs = (section.size("leg"), section.size("second_leg") or section.size("leg"))
    # They know only equal legs between square plates.
    if section.joint not in ("fillet", "lap") or legs[0] != legs[1] or section.angle != RIGHT_ANGLE:
        return []
    leg = (("leg", Measured(legs[0], "leg", None, section.unit)),)
    lap = section.joint == "lap"
    gap = carry("root_gap", Measured(section.gap, "root_gap", None, section.unit), 1.0e-6, 4.7625e-3)
    edge = (("joint", "lap"),) + carry("edge_thickness", shown, 3.0e-3, 0.1) if lap else ()
    pulls = (("joint", "lap-fillets"),) + thickness if lap else (("joint", "tee-fillets"),)
    return [
        Next("fillet-size", say("joint-fill.next.fillet-size"), leg + gap + edge),
        Next("shrinkage", say("joint-fill.next.shrinkage"), pulls + leg + length),
    ]


def _size(name: str, joints: tuple[str, ...], low: float, high: float, *presets: str, **more: bool) -> Quantity:
    return Quantity(
        name,
        "joint_size",
        when=("joint", joints),
        low=low,
        high=high,
        presets=presets,
        optional=more.get("optional", False),
        hint=more.get("hint", False),
    )


_FILLETS = FILLETS + (_BY_THROAT,)
_LINES = LINES + (_BY_THROAT,)
_LEGS = ("1/8 in", "3/16 in", "1/4 in", "5/16 in", "3/8 in", "4 mm", "5 mm", "6 mm", "8 mm")
_PLATES = ("1/8 in", "1/4 in", "3/8 in", "1/2 in", "3/4 in", "4 mm", "6 mm", "10 mm", "12 mm", "20 mm")
_GAPS = ("1/16 in", "3/32 in", "1/8 in", "2 mm", "3 mm")
_LOW = ("1/32 in", "1/16 in", "1 mm", "2 mm")
_HOLES = ("5/8 in", "3/4 in", "1 in", "16 mm", "20 mm")
_ANGLES = ("20 deg", "45 deg", "60 deg", "90 deg")
_MASSES = ("2 lb", "10 lb", "11 lb", "33 lb", "5 kg", "15 kg")
_WIRES = ("0.030 in", "0.035 in", "0.045 in", "0.8 mm", "1.0 mm", "1.2 mm")
_FEEDS = ("200 in/min", "300 in/min", "400 in/min", "5 m/min", "8 m/min")

CALCULATOR = Calculator(
    name="joint-fill",
    fields=(
        Choice("joint", ("fillet", _BY_THROAT) + JOINTS[1:], default="fillet"),
        _size("leg", ("fillet", "lap"), 1.0, 50.0, *_LEGS, hint=True),
        _size("throat", (_BY_THROAT,), 0.7, 35.0, "1/8 in", "3/16 in", "3 mm", "4 mm", "5 mm", hint=True),
        _size("thickness", ("lap", "corner", "edge") + GROOVES + HOLES, 0.5, 100.0, *_PLATES, hint=True),
        _size("root_gap", _FILLETS + GROOVES, 0.0, 25.0, *_GAPS, optional=True, hint=True),
        _size("root_face", BEVELLED, 0.0, 20.0, *_GAPS, optional=True, hint=True),
        Quantity("included_angle", "joint_angle", when=("joint", BEVELLED), hint=True, low=5.0, high=120.0, presets=_ANGLES),
        _size("root_radius", CURVED, 1.0, 25.0, "1/4 in", "3/8 in", "6 mm", "8 mm"),
        _size("reinforcement", GROOVES + ("edge",), 0.0, 10.0, *_LOW, optional=True, hint=True),
        _size("bead_width", ("square-butt",), 1.0, 50.0, "1/4 in", "3/8 in", "6 mm", "8 mm", optional=True),
        _size("hole_diameter", ("plug",), 3.0, 100.0, *_HOLES),
        _size("slot_width", ("slot",), 3.0, 100.0, *_HOLES),
        _size("slot_length", ("slot",), 3.0, 1000.0, "2 in", "50 mm"),
        _size("fill_depth", HOLES, 0.5, 100.0, optional=True, hint=True),
        Quantity("weld_length", optional=True, hint=True, when=("joint", _LINES), presets=("12 in", "10 ft", "500 mm", "3 m")),
        Quantity("weld_count", "count", optional=True, whole=True, when=("joint", HOLES)),
        Quantity("wire_mass", optional=True, hint=True, presets=_MASSES),
        _size("second_leg", ("fillet", "lap"), 1.0, 50.0, optional=True, hint=True),
        Quantity("joint_angle", when=("joint", ("fillet", _BY_THROAT)), optional=True, hint=True, low=60.0, high=120.0),
        _size("convexity", _FILLETS, 0.0, 10.0, *_LOW, optional=True),
        _size("concavity", _FILLETS, 0.0, 10.0, *_LOW, optional=True),
        Quantity("wire_diameter", optional=True, presets=_WIRES),
        Quantity("wire_feed_speed", optional=True, presets=_FEEDS),
        Quantity("gas_flow", optional=True, presets=("25 ft3/h", "30 ft3/h", "35 ft3/h", "12 L/min", "15 L/min")),
        Quantity("largest_bead", "leg", optional=True, hint=True, when=("joint", _LINES), presets=("1/4 in", "5/16 in", "3/8 in", "6 mm", "8 mm")),
        Choice("wire_material", ("mild-steel", "stainless", "aluminum"), default="mild-steel"),
        Choice("wire_and_gas", tuple(row[0] for row in facts.DEPOSITION_EFFICIENCY), optional=True),
        Quantity("overweld_factor", optional=True, hint=True, presets=("1", "1.2", "1.4")),
        Quantity("deposition_efficiency", optional=True, hint=True),
        Quantity("waste", "percentage", optional=True, hint=True, high=50.0),
        Quantity("operating_factor", "percentage", optional=True, hint=True, low=1.0, high=100.0, presets=("10 %", "15 %", "30 %")),
    ),
    relations=(
        Relation(("weld_length", "wire_mass"), _solve, check="", also=_ALSO, takes_part=_line_takes_part),
        Relation(("weld_count", "wire_mass"), _solve, check="", also=_ALSO, takes_part=_holes_take_part),
    ),
    answer=_answer,
    english=ENGLISH,
    sources=(TWI_95, GEOMETRY, OVERWELD, EFFICIENCY, FACTORS, GAP_RULE, ANGLE_RULE, CONVEXITY),
    place=30,
    fold_from="second_leg",
)  # fmt: skip
