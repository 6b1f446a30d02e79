"""Shrinkage: how far a weld draws its plates together, with its scatter, and what makes it less."""

from calculators import distortion, numerals
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
    Number,
    Plain,
    Quantity,
    Relation,
    Source,
    Words,
    carry,
    say,
)
from calculators.cooling import THICKNESS_RANGE

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

SPRARAGEN = Source(
    "Spraragen & Ettinger, in the AWS Welding Handbook, volume 1, and Masubuchi, Analysis of Welded Structures:"
    " shrinkage of butt welds",
    "from memory",
)
BLODGETT = Source(
    "Blodgett, Design of Welded Structures, section 7.7: a tenth of the mean width; seen quoted in a method statement",
    "published",
)
HANDBOOK = Source("AWS Welding Handbook, volume 1: shrinkage across fillets of T and lap joints", "from memory")
SCATTER = Source("Scatter of half, up and down, between like welds", "from memory")
TWI_ALLOWANCES = Source("TWI, technical FAQ: How much shall I allow for weld shrinkage?", "published")
TWI_DISTORTION = Source(
    "TWI, technical FAQ on the techniques that reduce distortion, and Job Knowledge on distortion", "published"
)
SHOP = Source("Preset, back-step, clamps and strongbacks", "common practice")

_FILLETS = ("tee-fillets", "lap-fillets")
_SIZES = ("0 in", "1/16 in", "3/32 in", "1/8 in", "2 mm", "3 mm")

# What makes it less: (id, standing), what helps most of all and costs nothing first.
_REMEDIES = {
    "butt": (
        ("fit-up", "published"),
        ("balance", "published"),
        ("preset", "common practice"),
        ("back-step", "common practice"),
        ("clamp", "common practice"),
    ),
    "fillet": (
        ("leg", "published"),
        ("balance", "published"),
        ("runs", "from memory"),
        ("preset", "common practice"),
        ("back-step", "common practice"),
        ("clamp", "common practice"),
    ),
}


# ---------------------------------------------------------------- what is asked


def _is_butt(given: Given) -> bool:
    return given.word("joint") == "butt"


def _is_fillet(given: Given) -> bool:
    return given.word("joint") in _FILLETS


def _solve_area(unknown: str, values: "dict[str, Any]") -> float:
    if unknown == "weld_area":
        return distortion.weld_area(values["thickness"], values["groove_width"], values["root_opening"])
    area = values["weld_area"]
    if unknown == "thickness":
        return 2.0 * area / (values["groove_width"] + values["root_opening"])
    other = values["root_opening"] if unknown == "groove_width" else values["groove_width"]
    return 2.0 * area / values["thickness"] - other


def _solve_butt(unknown: str, values: "dict[str, Any]") -> float:
    if unknown == "transverse_shrinkage":
        return distortion.butt_shrinkage(values["weld_area"], values["thickness"], values["root_opening"])
    if unknown == "root_opening":
        return (values["transverse_shrinkage"] - 0.2 * values["weld_area"] / values["thickness"]) / 0.05
    rest = values["transverse_shrinkage"] - 0.05 * values["root_opening"]
    if unknown == "weld_area":
        return rest * values["thickness"] / 0.2
    return 0.2 * values["weld_area"] / rest


def _solve_fillet(unknown: str, values: "dict[str, Any]") -> float:
    share = values["welded_share"]
    if unknown == "transverse_shrinkage":
        return distortion.fillet_shrinkage(values["joint"], values["leg"], values["thickness"], share)
    coefficient = distortion.fillet_coefficient(values["joint"]) * share
    if unknown == "leg":
        return values["transverse_shrinkage"] * values["thickness"] / coefficient
    return coefficient * values["leg"] / values["transverse_shrinkage"]


def _prepare(given: Given) -> None:
    if _is_fillet(given) and not given.has("welded_share"):
        given.fill("welded_share", 1.0)


# ---------------------------------------------------------------- the answer


def _answer(given: Given) -> Answer:
    kind = "butt" if _is_butt(given) else "fillet"
    results: list[object] = []
    if given.solved_for and given.solved_for != "transverse_shrinkage":
        results.append(Number(given.solved_for, given.number(given.solved_for), _quantity_of(given.solved_for)))
    results.append(_across(given))
    if given.has("weld_length"):
        along = distortion.shrinkage_along(kind, given.number("weld_length"))
        results.append(Number("longitudinal_shrinkage", along, "shrinkage", figures=2, in_words=say("shrinkage.along")))
    if kind == "butt" and "weld_area" in given.made and given.solved_for != "weld_area":
        results.append(Number("weld_area", given.number("weld_area"), "bead_area", figures=3))
    results.append(Words("angle", say("shrinkage.angle")))
    results.append(_remedies(kind))
    butt_sources = (SPRARAGEN, BLODGETT) if kind == "butt" else (HANDBOOK,)
    return Answer(
        results=tuple(results),
        working=_working(given, kind),
        notes=_notes(given, kind),
        cautions=(
            say("shrinkage.caution.trial"),
            say("shrinkage.caution.size"),
            say("shrinkage.caution.restraint"),
        ),
        sources=butt_sources + (SCATTER, TWI_ALLOWANCES, TWI_DISTORTION, SHOP),
        next_questions=_next(given),
    )


def _quantity_of(name: str) -> str:
    return {"weld_area": "bead_area", "root_opening": "joint_size"}.get(name, name)


def _across(given: Given) -> Number:
    """Return the shrinkage across the weld with its scatter: the lower published formula sets the low end."""
    value = _reckoned(given)
    high = value * (1.0 + distortion.SCATTER)
    low = value * (1.0 - distortion.SCATTER)
    band = say("shrinkage.band.fillet")
    if _is_butt(given):
        low = distortion.butt_shrinkage_of_mean_width(given.number("weld_area"), given.number("thickness"))
        band = say("shrinkage.band.butt")
    return Number("transverse_shrinkage", value, "shrinkage", low, high, band, figures=2)


def _reckoned(given: Given) -> float:
    if _is_butt(given):
        return distortion.butt_shrinkage(
            given.number("weld_area"), given.number("thickness"), given.number("root_opening")
        )
    return distortion.fillet_shrinkage(
        given.word("joint"), given.number("leg"), given.number("thickness"), given.number("welded_share")
    )


def _remedies(kind: str) -> Findings:
    items = [
        Finding(say("shrinkage.remedy." + id), say("standing." + standing), say("shrinkage.why." + id))
        for id, standing in _REMEDIES[kind]
    ]
    return Findings("remedies", say("shrinkage.remedies"), tuple(items))


def _working(given: Given, kind: str) -> tuple[Message, ...]:
    shown: dict[str, object] = {
        "thickness": Measured(given.number("thickness"), "joint_size", 4, given.units.get("thickness")),
        "shrinkage": Measured(_reckoned(given), "shrinkage", 3),
    }
    lines = []
    if kind == "butt":
        shown["area"] = Measured(given.number("weld_area"), "bead_area", 4, _area_unit(given))
        shown["root_opening"] = given.measured("root_opening", "joint_size")
        shown["lower"] = Measured(
            distortion.butt_shrinkage_of_mean_width(given.number("weld_area"), given.number("thickness")),
            "shrinkage",
            3,
        )
        if given.has("groove_width"):
            shown["groove_width"] = given.measured("groove_width", "joint_size")
            lines.append("area")
        lines += ["butt", "lower"]
    else:
        shown["leg"] = given.measured("leg")
        shown["share"] = Plain(given.number("welded_share"), 3)
        shown["coefficient"] = Measured(
            distortion.fillet_coefficient(given.word("joint")), "shrinkage", 3, given.units.get("thickness")
        )
        lines.append("fillet")
    if given.has("weld_length"):
        shown["weld_length"] = given.measured("weld_length")
        shown["along"] = Measured(distortion.shrinkage_along(kind, given.number("weld_length")), "shrinkage", 3)
        lines.append("along-butt" if kind == "butt" else "along-fillet")
    return tuple(say("shrinkage.working." + line, **shown) for line in lines)


def _area_unit(given: Given) -> str | None:
    """Return the area unit that goes with the length unit the reader uses."""
    return given.units.get("weld_area") or {"in": "in2", "mm": "mm2"}.get(given.units.get("thickness", ""))


def _notes(given: Given, kind: str) -> tuple[Message, ...]:
    notes = [say("shrinkage.note.angle")]
    if kind == "butt":
        low, high = distortion.RULE_BUTT
        notes.append(
            say("shrinkage.note.rule-butt", low=Measured(low, "shrinkage", 2), high=Measured(high, "shrinkage", 2))
        )
        if "weld_area" in given.made and given.has("groove_width"):
            notes.append(say("shrinkage.note.trapezium"))
    else:
        notes.append(say("shrinkage.note.both-sides"))
        share = given.number("leg") / given.number("thickness")
        rule = Measured(distortion.RULE_FILLET, "shrinkage", 2)
        within = numerals.settle(share) <= numerals.settle(distortion.RULE_FILLET_LEG)
        notes.append(say("shrinkage.note.rule-fillet" if within else "shrinkage.note.rule-fillet-over", rule=rule))
    notes.append(say("shrinkage.note.free"))
    notes.append(say("shrinkage.note.metals"))
    return tuple(notes)


def _next(given: Given) -> tuple[Next, ...]:
    thickness = carry("thickness", given.measured("thickness"), *THICKNESS_RANGE)
    joint = "butt-passes" if _is_butt(given) else "tee-fillet"
    return (
        Next("cooling-time", say("shrinkage.next.cooling-time"), (("joint", joint),) + thickness),
        Next("heat-input", say("shrinkage.next.heat-input"), ()),
    )


ENGLISH = {
    "title": "Weld shrinkage",
    "question": "How far will this weld pull, and what makes it less?",
    "found-by": "warp distortion pull bend twist gap shrink preset bending bow bowed",
    "lead": "For steel. Leave the shrinkage blank to work it out, or type it and leave another number blank.",
    "field.joint": "Joint",
    "option.joint.butt": "Butt joint",
    "option.joint.tee-fillets": "T joint, fillets on both sides",
    "option.joint.lap-fillets": "Lap joint, both edges welded",
    "field.thickness": "Thickness",
    "hint.thickness": "Of the plate that shrinks: on a T joint, the one that runs through.",
    "field.groove_width": "Width at the top",
    "hint.groove_width": "Measured across the fitted-up groove. It gives the weld area; type that below if you have it.",
    "field.root_opening": "Root opening",
    "field.weld_area": "Weld area",
    "hint.weld_area": "Cross-section of the weld. Blank takes it from the two widths.",
    "field.leg": "Leg of each fillet",
    "hint.leg": "As welded, not as drawn.",
    "field.welded_share": "Share welded",
    "hint.welded_share": "Of the length, where fillets are broken. Blank: all of it.",
    "field.weld_length": "Weld length",
    "field.transverse_shrinkage": "Shrinkage across",
    "hint.transverse_shrinkage": "Across the weld. Blank works it out.",
    "result.transverse_shrinkage": "Shrinkage across the weld",
    "result.longitudinal_shrinkage": "Shrinkage along the weld",
    "result.thickness": "Thickness",
    "result.weld_area": "Weld area",
    "result.root_opening": "Root opening",
    "result.leg": "Leg of each fillet",
    "result.angle": "Angle",
    "along": "A rule of thumb.",
    "angle": "No number here",
    "band.butt": "From the lower of two published formulas to half as much again as the higher: welds scatter so.",
    "band.fillet": "Half less to half more: welds scatter so.",
    "remedies": "What makes it less",
    "remedy.fit-up": "Close the root and open the groove no more than the drawing asks",
    "why.fit-up": "Shrinkage goes with the metal laid down. A double V takes about half the metal of a single V in thick plate.",
    "remedy.leg": "Keep the fillet to size",
    "why.leg": "A leg a quarter larger is half as much metal again. Overwelding pulls, and the angle most of all.",
    "remedy.balance": "Weld both sides in turn, about the middle of the thickness",
    "why.balance": "One side pulls back what the other did. Two welders at once do it best.",
    "remedy.runs": "Few runs against tipping",
    "why.runs": "For the same size of weld the angle grows with the number of runs. Large deposits pull more across and along: weigh one against the other.",
    "remedy.preset": "Set the parts over by what they will move",
    "why.preset": "Measure a trial piece, set the next by as much the other way, and they pull straight. First try it on scrap.",
    "remedy.back-step": "Back-step, and skip about",
    "why.back-step": "Short lengths welded backwards keep the gap from closing ahead of the arc.",
    "remedy.clamp": "Clamps and strongbacks, let cool before they come off",
    "why.clamp": "They trade movement for stress locked in: the part may spring, or crack, later.",
    "working.area": "Weld area = thickness × (width at the top + root opening) ÷ 2 = {thickness} × ({groove_width} + {root_opening}) ÷ 2 = {area}",
    "working.butt": "Shrinkage = 0.2 × area ÷ thickness + 0.05 × root opening = 0.2 × {area} ÷ {thickness} + 0.05 × {root_opening} = {shrinkage}",
    "working.lower": "The lower formula: 0.1 × area ÷ thickness = 0.1 × {area} ÷ {thickness} = {lower}",
    "working.fillet": "Shrinkage = {coefficient} × leg ÷ thickness × share welded = {coefficient} × {leg} ÷ {thickness} × {share} = {shrinkage}",
    "working.along-butt": "Along a butt weld: 3 mm for each 3 m = {weld_length} ÷ 1000 = {along}",
    "working.along-fillet": "Along a fillet: 0.8 mm for each 3 m = {weld_length} × 0.8 ÷ 3000 = {along}",
    "note.rule-butt": "Rule of thumb for a 60° V: allow {low} to {high}.",
    "note.rule-fillet": "Rule of thumb for a leg up to 3/4 of the thickness: allow {rule} for each weld.",
    "note.rule-fillet-over": "The leg is more than 3/4 of the thickness: the rule of thumb, {rule} for each weld, is too little.",
    "note.both-sides": "The formula is for both fillets made. One alone also tips the plate.",
    "note.trapezium": "Cap and melted sides are not in the area: a fat weld pulls more.",
    "note.angle": "How far it tips or folds is not reckoned: no published formula for it could be checked. Weld a trial piece and measure.",
    "note.free": "For plates free to move. Held plates move less and keep the stress instead.",
    "note.metals": "Carbon and low-alloy steel. Stainless pulls about half as much again, aluminum up to twice (from memory).",
    "caution.trial": "An estimate to cut and fit by. Where it matters, weld a trial piece and measure.",
    "caution.size": "Weld size and spacing come from the drawing. Never make a weld smaller or shorter to save shrinkage.",
    "caution.restraint": "A clamped part can spring when released: hands and face clear, and let it cool first.",
    "next.cooling-time": "How fast does it cool?",
    "next.heat-input": "How much heat goes in?",
}

CALCULATOR = Calculator(
    name="shrinkage",
    fields=(
        Choice("joint", ("butt",) + _FILLETS, default="butt"),
        Quantity(
            "thickness", hint=True, low=1.0, high=100.0, presets=("1/8 in", "3/16 in", "1/4 in", "3/8 in", "1/2 in")
        ),
        Quantity("groove_width", "joint_size", optional=True, hint=True, when=("joint", ("butt",)), high=200.0),
        Quantity("root_opening", "joint_size", when=("joint", ("butt",)), high=25.0, presets=_SIZES),
        Quantity("weld_area", "bead_area", hint=True, when=("joint", ("butt",)), low=1.0, high=10000.0),
        Quantity(
            "leg", hint=True, when=("joint", _FILLETS), presets=("1/8 in", "3/16 in", "1/4 in", "5/16 in", "3/8 in")
        ),
        Quantity("welded_share", "percentage", optional=True, hint=True, when=("joint", _FILLETS), low=5.0, high=100.0),
        Quantity("weld_length", optional=True, presets=("12 in", "10 ft", "1 m", "3 m")),
        Quantity("transverse_shrinkage", "shrinkage", hint=True, low=0.01, high=50.0),
    ),
    relations=(
        Relation(
            ("weld_area", "thickness", "groove_width", "root_opening"),
            _solve_area,
            check="weld_area",
            required=False,
            its_own=("groove_width",),
            agree_within=0.1,  # a cap or a root face makes as much
        ),
        Relation(
            ("weld_area", "thickness", "root_opening", "transverse_shrinkage"),
            _solve_butt,
            check="transverse_shrinkage",
            agree_within=distortion.SCATTER,
            takes_part=_is_butt,
        ),
        Relation(
            ("leg", "thickness", "transverse_shrinkage"),
            _solve_fillet,
            check="transverse_shrinkage",
            also=("joint", "welded_share"),
            agree_within=distortion.SCATTER,
            takes_part=_is_fillet,
        ),
    ),
    prepare=_prepare,
    answer=_answer,
    english=ENGLISH,
    sources=(SPRARAGEN, BLODGETT, HANDBOOK, SCATTER, TWI_ALLOWANCES, TWI_DISTORTION, SHOP),
    place=36,
)
