"""Crack repair: the order of work, with the numbers of groove, wire, preheat, holding and waiting filled in."""

from calculators import numerals, units
from calculators.contract import (
    UNKNOWN,
    Answer,
    Calculator,
    Choice,
    Given,
    Measured,
    Message,
    Number,
    Plain,
    Quantity,
    Refusal,
    Table,
    Verdict,
    Words,
    say,
)
from calculators.crack_case import (
    ALUMINUM,
    HIGHEST_FIRST,
    OTHERS_AGREE,
    REFUSED,
    STEELS,
    WELDED,
    Repair,
)
from calculators.crack_onward import Onward
from calculators.crack_repair_sources import OWN, Sources
from calculators.crack_repair_words import ENGLISH
from calculators.crack_steps import Steps
from calculators.drawings import joint_drawing
from calculators.drawings.joint_outline import Outline
from calculators.facts import repair as facts
from calculators.preheat_bounds import AMBIENT, BY_METHOD_B, HARDENING_GRADES, STRUCTURAL_GRADES
from calculators.preheat_sources import ALL as PREHEAT_SOURCES

_FAMILIES = (
    "structural",
    "quenched-tempered",
    "wear-plate",
    "hardening",
    "manganese",
    "cast-iron",
    "stainless",
    "aluminum-heat-treated",
    "aluminum-magnesium",
    "unknown",
)

_WORN_SIZES = ("worn_length", "worn_width", "worn_depth")


def _prepare(given: Given) -> None:
    """Refuse what is not for this page before anything else is asked for, and ask no size of what is not welded."""
    if given.word("service") in REFUSED:
        raise Refusal("service", say("crack-repair.refusal." + given.word("service")))
    if Repair.stopped_by(given):
        for name in ("thickness",) + _WORN_SIZES:
            if not given.has(name):
                given.fill(name, UNKNOWN)


# ---------------------------------------------------------------- the answer


def _answer(given: Given) -> Answer:
    repair = Repair(given)
    results = [_headline(repair)]
    if not repair.stopped:
        results += _heat(repair) + _amounts(repair) + _times(repair)
    results.append(_order(repair))
    if repair.section is not None and repair.depth == repair.thickness:
        results.append(_drawing(repair))
    return Answer(
        results=tuple(results),
        working=_working(repair),
        notes=_notes(repair),
        cautions=_cautions(repair),
        sources=Sources(repair).found,
        next_questions=Onward(repair).questions,
        verdict=_verdict(repair),
    )


def _shown(temperature: float) -> Measured:
    return Measured(temperature, "preheat_temperature")


def _headline(repair: Repair) -> object:
    if repair.stopped:
        return Words("stop", say("crack-repair.stop." + repair.stopped))
    if repair.damage == "worn":
        assert repair.volume is not None
        return Number("metal_volume", repair.volume, "metal_volume")
    if repair.length is None:
        return Words("first", say("crack-repair.first"))
    each = Measured(repair.beyond(), "joint_size", None, repair.given.units.get("crack_length"))
    words = (
        say("crack-repair.length.edges"),
        say("crack-repair.length.one", each=each),
        say("crack-repair.length.both", each=each),
    )[repair.ends_inside()]
    return Number("repair_length", repair.length, "weld_length", in_words=words)


def _heat(repair: Repair) -> list[object]:
    low, high = repair.lowest(), repair.highest()
    least = most = None
    if low is not None:
        words = None if repair.is_heated() else say("crack-repair.no-heating", ambient=_shown(AMBIENT))
        least = Number("preheat_minimum", low, "preheat_temperature", label=_label(repair, "lowest"), in_words=words)
    if high is not None:
        most = Number("preheat_maximum", high, "preheat_temperature", label=_label(repair, "highest"))
    both = (most, least) if repair.family in HIGHEST_FIRST else (least, most)
    found: list[object] = [each for each in both if each is not None]
    if low is None:
        found.append(Words("no_preheat", say("crack-repair.no-preheat." + _why_no_preheat(repair))))
    return found


def _label(repair: Repair, end: str) -> Message:
    return say("crack-repair.label." + end + ("-guessed" if repair.family == "unknown" else ""))


def _why_no_preheat(repair: Repair) -> str:
    if repair.family in ("cast-iron", "manganese", "stainless"):
        return repair.family
    if repair.family in ALUMINUM:
        return "aluminum"
    if repair.bounds is None:
        missing = {"hardening": "grade", "unknown": "magnet"}.get(repair.family)
        field = {"grade": "hardening_grade", "magnet": "magnet"}.get(missing or "")
        return missing if missing and field and not repair.given.has(field) else "thickness"
    return "not-magnetic" if repair.family == "unknown" else "number"


def _amounts(repair: Repair) -> list[object]:
    found: list[object] = []
    if repair.volume is not None and repair.damage == "crack":
        found.append(Number("metal_volume", repair.volume, "metal_volume"))
    if repair.section is not None and repair.length is None:
        found.append(Number("groove_area", repair.section.area, "bead_area"))
    for name, mass in (("deposit_mass", repair.deposit), ("wire_needed", repair.wire)):
        if mass is not None:
            found.append(_mass(repair, name, mass))
    if repair.job is not None and repair.family != "cast-iron":
        found.append(Number("passes", float(repair.job.passes), "count", figures=6))
    return found


def _mass(repair: Repair, name: str, mass: float) -> Number:
    job = repair.job
    if job is None or numerals.settle(job.least) == numerals.settle(job.most):
        return Number(name, mass, "wire_mass")
    return Number(name, mass, "wire_mass", mass * job.least, mass * job.most, say("crack-repair.band"))


def _times(repair: Repair) -> list[object]:
    found: list[object] = []
    if repair.damage == "crack" and repair.stop_hole() is not None:
        found.append(Number("stop_hole", repair.stop_hole() or 0.0, "joint_size"))
    if repair.hold() is not None:
        found.append(Number("hold_time", repair.hold() or 0.0, "hold_time"))
    if repair.wait() is not None:
        found.append(Number("wait_time", repair.wait() or 0.0, "hold_time", in_words=say("crack-repair.from-cold")))
    return found


def _order(repair: Repair) -> Table:
    rows = []
    for place, (what, why, figure, parameters) in enumerate(Steps(repair).rows):
        step: Message = say("crack-repair.step." + what)
        if figure:
            number = say("crack-repair.figure." + figure, **parameters)
            step = say("crack-repair.row-with", step=step, figure=number, place=place + 1)
        else:
            step = say("crack-repair.row", step=step, place=place + 1)
        rows.append((step, say("crack-repair.why." + why)))
    columns = (say("crack-repair.column.step"), say("crack-repair.column.why"))
    return Table("steps", say("crack-repair.steps"), columns, tuple(rows))


def _drawing(repair: Repair) -> object:
    section = repair.section
    assert section is not None
    texts = []
    if section.size("root_radius"):
        texts.append(_size_text("radius", size=section.shown(section.size("root_radius"))))
    words = (
        say("crack-repair.drawing.title"),
        say("crack-repair.drawing.description", area=section.shown_area(section.area)),
    )
    return joint_drawing.draw(Outline(section), words, _size_text, texts)


def _size_text(key: str, **parameters: object) -> Message:
    return say("crack-repair.drawing." + key, **parameters)


# ---------------------------------------------------------------- verdict


def _verdict(repair: Repair) -> Verdict | None:
    """Return what stands against it; None is no leave, only that nothing asked here stands against it."""
    if repair.stopped:
        return Verdict(
            "outside", say("crack-repair.verdict." + repair.stopped), say("crack-repair.agree." + repair.stopped)
        )
    bounds = repair.bounds
    if bounds is not None and bounds.window() in ("closed", "narrow"):
        assert bounds.lowest is not None and bounds.highest is not None
        ends = say("crack-repair.verdict." + bounds.window(), low=_shown(bounds.lowest), high=_shown(bounds.highest))
        state = "outside" if bounds.window() == "closed" else "unclear"
        return Verdict(state, ends, say("crack-repair.agree." + bounds.window()))
    reason = _reason(repair)
    if reason is None:
        return None
    return Verdict("unclear", say("crack-repair.verdict." + reason), say("crack-repair.agree." + reason))


def _reason(repair: Repair) -> str | None:
    """Return the strongest reason for doubt."""
    if repair.family in ("unknown", "cast-iron"):
        worn_iron = repair.family == "cast-iron" and repair.damage == "worn"
        return "iron-worn" if worn_iron else repair.family
    if repair.service == "not-known":
        return "not-known"
    if repair.family == "wear-plate" and repair.service in ("steady", "vibrating"):
        return "wear-plate"
    if repair.family in ("quenched-tempered", "hardening"):
        return "hardened"
    if repair.family == "aluminum-heat-treated":
        return "softened"
    if repair.service == "vibrating":
        return "vibrating"
    return None


# ---------------------------------------------------------------- working, notes, cautions


def _working(repair: Repair) -> tuple[Message, ...]:
    if repair.stopped:
        return (say("crack-repair.working.none"),)
    lines = []
    given = repair.given
    unit = given.units.get("crack_length")
    if repair.damage == "worn":
        sizes = {name: given.measured(name, "piece_size") for name in _WORN_SIZES}
        volume = Measured(repair.volume or 0.0, "metal_volume", 4)
        lines.append(say("crack-repair.working.worn", volume=volume, **sizes))
    elif repair.length is not None:
        parts = {
            "crack": given.measured("crack_length", "piece_size"),
            "each": Measured(repair.beyond(), "joint_size", None, unit),
            "length": Measured(repair.length, "piece_size", 4, unit),
        }
        lines.append(say("crack-repair.working.length", ends=repair.ends_inside(), **parts))
    lines += _groove_lines(repair)
    hold = repair.hold()
    if hold is not None and repair.thickness is not None:
        thickness = Measured(repair.thickness, "thickness", None, given.units.get("thickness"))
        lines.append(say("crack-repair.working.hold", thickness=thickness, time=Measured(hold, "hold_time", 3, "h")))
    return tuple(lines) or (say("crack-repair.working.none"),)


def _groove_lines(repair: Repair) -> list[Message]:
    """Return the working of groove and wire as the joint modules worked it."""
    section, job = repair.section, repair.job
    if section is None or job is None:
        return []
    lines = [say("crack-repair.working." + key, **parameters) for key, parameters in section.lines]
    if repair.volume is not None and repair.length is not None:
        shown = {
            "area": section.shown_area(section.area),
            "length": Measured(repair.length, "piece_size", 4, repair.given.units.get("crack_length")),
            "volume": Measured(repair.volume, "metal_volume", 4),
        }
        lines.append(say("crack-repair.working.volume", **shown))
    for key, parameters in job.lines(None):
        wanted = {"overweld": True, "deposit": True, "wire": repair.wire is not None, "passes": True}.get(key, False)
        if wanted and repair.family != "cast-iron":
            lines.append(say("crack-repair.working." + key, **parameters))
    return lines


def _notes(repair: Repair) -> tuple[Message, ...]:
    if repair.stopped:
        return ()
    given = repair.given
    notes = []
    if repair.section is not None:
        if not given.has("included_angle"):
            angle = repair.section.shown_angle(repair.section.size("included_angle"))
            castings = Plain(facts.ANGLE_OF_CASTINGS, 2)
            notes.append(say("crack-repair.note.angle", angle=angle, castings=castings))
        if not given.has("root_gap"):
            notes.append(say("crack-repair.note.gap", gap=repair.section.shown(repair.section.gap)))
        if given.word("crack_through") != "yes" and repair.depth == repair.thickness:
            notes.append(say("crack-repair.note.depth"))
    if repair.family in STEELS or repair.family == "manganese":
        notes.append(say("crack-repair.note.preheat"))
    if repair.family == "manganese" and repair.wire is not None:
        notes.append(say("crack-repair.note.stainless-wire"))
    if repair.family == "cast-iron":
        key = "ductile" if repair.iron == "ductile" else "iron"
        pearlitic = Measured(units.to_coherent(facts.DUCTILE_PEARLITIC, "degC"), "preheat_temperature")
        notes.append(say("crack-repair.note." + key, **({"pearlitic": pearlitic} if key == "ductile" else {})))
    if repair.damage == "worn":
        notes.append(say("crack-repair.note.worn"))
    elif repair.service in ("vibrating", "impact"):
        notes.append(say("crack-repair.note.hole-only"))
    return tuple(notes)


def _cautions(repair: Repair) -> tuple[Message, ...]:
    cautions = [say("caution.decides")]
    if not repair.stopped:
        if repair.damage == "crack":
            cautions.append(say("crack-repair.caution.back"))
        if repair.highest() is not None:
            cautions.append(say("crack-repair.caution.too-hot"))
        cautions.append(say("crack-repair.caution.closed"))
        if repair.family == "cast-iron":
            cautions.append(say("crack-repair.caution.iron"))
        if repair.family == "manganese" or repair.family == "stainless":
            cautions.append(say("crack-repair.caution.alloy-fume"))
        cautions.append(say("crack-repair.caution.dust"))
    return tuple(cautions)


_DIG = ("damage", ("crack",))
_WORN = ("damage", ("worn",))
_LENGTHS = ("1 in", "2 in", "4 in", "8 in", "50 mm", "100 mm")
_PLATES = ("1/4 in", "3/8 in", "1/2 in", "3/4 in", "1 in", "6 mm", "10 mm", "20 mm")
_SMALL = ("1/16 in", "1/8 in", "3/16 in", "2 mm", "3 mm")

CALCULATOR = Calculator(
    name="crack-repair",
    fields=(
        Choice("service", REFUSED + OTHERS_AGREE + WELDED, hint=True),
        Choice("family", _FAMILIES, hint=True),
        Choice("iron_kind", ("gray", "ductile", "white", "not-known"), default="not-known", hint=True, when=("family", ("cast-iron",))),
        Choice("grade", STRUCTURAL_GRADES, optional=True, when=("family", ("structural",))),
        Choice("hardening_grade", HARDENING_GRADES, optional=True, when=("family", ("hardening",))),
        Choice("magnet", ("sticks", "does-not-stick"), optional=True, when=("family", ("unknown",))),
        Choice("damage", ("crack", "worn"), default="crack"),
        Quantity("crack_length", "piece_size", optional=True, hint=True, when=_DIG, presets=_LENGTHS),
        Choice("ends_inside", ("both", "one", "none"), default="both", hint=True, when=_DIG),
        Quantity("worn_length", "piece_size", when=_WORN, low=5.0, high=5000.0, presets=_LENGTHS),
        Quantity("worn_width", "piece_size", when=_WORN, low=5.0, high=2000.0, presets=_LENGTHS),
        Quantity("worn_depth", "joint_size", when=_WORN, hint=True, low=0.5, high=50.0, presets=("1/8 in", "1/4 in", "1/2 in", "3 mm", "6 mm")),
        Quantity("thickness", hint=True, low=1.0, high=100.0, when=("damage", ("crack", "worn")), presets=_PLATES, may_be_unknown=True),
        Choice("crack_through", ("yes", "no", "not-known"), default="not-known", hint=True, when=_DIG),
        Quantity("crack_depth", "joint_size", optional=True, hint=True, low=0.5, high=100.0, when=("crack_through", ("no",)), presets=_SMALL),
        Choice("access", ("one-side", "both-sides"), default="one-side", when=_DIG),
        Choice("groove", ("single-v", "double-v", "single-u"), default="single-v", when=_DIG),
        Quantity("included_angle", "joint_angle", optional=True, hint=True, low=5.0, high=120.0, when=_DIG, presets=("45 deg", "60 deg", "70 deg", "90 deg")),
        Quantity("root_gap", "joint_size", optional=True, hint=True, low=0.0, high=25.0, when=_DIG, presets=_SMALL),
        Quantity("largest_bead", "leg", optional=True, hint=True, when=_DIG, presets=("3/16 in", "1/4 in", "5/16 in", "5 mm", "6 mm")),
        Choice("process", ("gas-metal-arc", "flux-cored-arc", "low-hydrogen-stick"), default="gas-metal-arc", when=("family", STEELS)),
        Quantity("cet", "carbon_equivalent", optional=True, hint=True, when=("family", BY_METHOD_B), low=0.05, high=1.0),
    ),
    prepare=_prepare,
    answer=_answer,
    english=ENGLISH,
    sources=OWN + PREHEAT_SOURCES,
    place=72,
    fold_from="included_angle",
)  # fmt: skip
