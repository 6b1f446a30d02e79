"""Fillet size: the leg for a force, what a leg carries, and the smallest and largest leg for the parts.

Legs and throats are in fillet_legs.py, strengths in fillet_strength.py; here is how it is asked and told.
"""

from calculators import fillet_legs, numerals, ranges, units
from calculators.contract import (
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
    carry,
    say,
)
from calculators.drawings import fillet_section
from calculators.facts import fillet_rules as facts
from calculators.facts import usual_wire
from calculators.fillet_job import ALLOWABLE, EUROCODE, RESISTANCE, Rule, Weld
from calculators.fillet_size_words import ENGLISH
from calculators.fillet_size_working import Working

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

_STEELS = tuple(name for name, _, _ in facts.STEELS) + ("other",)
_CARRIED = (
    ("thickness", "thickness"),
    ("edge_thickness", "thickness"),
    ("root_gap", "root_gap"),
    ("yield_strength", "strength"),
    ("ultimate_strength", "strength"),
    ("load_angle", "load_angle"),
)
_LEG_AND_THROAT_AGREE = 0.02  # a leg and a throat read off a drawing are rounded

AISC_SIZES = Source(
    "ANSI/AISC 360, table J2.4 and section J2.2b: smallest and largest leg, shortest length (2005 and 2010 texts;"
    " later editions not seen)",
    "standard",
)
AISC_STRENGTH = Source(
    "ANSI/AISC 360-22, J2.4 and J4.2: weld and metal in shear, as worked in AISC Design Examples v16.0, J.1 and J.2A",
    "standard",
)
D1_1 = Source(
    "AWS D1.1: a gap above 1/16 in is added to the leg, and short-circuit transfer is not prequalified; as quoted on"
    " the American Welding Society's forum and in Practical Welding Today (2014), clauses not seen",
    "published",
)
EN_1993_1_8 = Source(
    "EN 1993-1-8:2005, 4.5: simplified method, correlation factors, least throat and length; seen quoted, with the"
    " recommended factor 1.25",
    "standard",
)
EUROPEAN_METAL = Source(
    "EN 1993-1-1:2005, 6.2.6 and table 3.1, and EN 10025: shear and least strengths of European steels", "from memory"
)
AMERICAN_METAL = Source(
    "AISC Manual, table 2-5: least strengths of A572 grade 50; A36 as used in the Design Examples", "published"
)


# ---------------------------------------------------------------- what must hold before anything is worked out


def _strength_wanted(given: Given) -> bool:
    """Return whether more is asked than the sizes that a thickness alone decides."""
    return not given.has("thickness") or any(given.has(name) for name in ("leg", "throat", "force_per_length"))


def _prepare(given: Given) -> None:
    if given.has("leg") and given.has("throat"):
        reckoned = fillet_legs.throat_of_leg(given.number("leg"))
        if numerals.settle(abs(given.number("throat") / reckoned - 1.0)) > _LEG_AND_THROAT_AGREE:
            leg, throat = given.measured("leg"), Measured(reckoned, "throat", None, given.units["throat"])
            raise Refusal("throat", say("fillet-size.refusal.throat", leg=leg, throat=throat))
    if given.has("thickness") and given.has("edge_thickness"):
        if numerals.settle(given.number("edge_thickness")) < numerals.settle(given.number("thickness")):
            raise Refusal("thickness", say("fillet-size.refusal.thinner"))
    if given.word("method") == EUROCODE:
        _require_eurocode(given)
    _require_thin_enough(given)


def _require_eurocode(given: Given) -> None:
    thinnest = facts.LEAST_EUROCODE_THICKNESS
    if given.has("thickness") and numerals.settle(given.number("thickness")) < numerals.settle(thinnest):
        shown = Measured(thinnest, "thickness", None, given.units["thickness"])
        raise Refusal("thickness", say("fillet-size.refusal.thin", thickness=shown))
    if _strength_wanted(given) and given.word("steel") not in [name for name, _ in facts.CORRELATION_FACTORS]:
        raise Refusal("steel", say("fillet-size.refusal.steel"))


def _require_thin_enough(given: Given) -> None:
    """The strengths held for European steels end at 40 mm; thicker steel is weaker."""
    european = given.word("steel") in [name for name, _ in facts.CORRELATION_FACTORS]
    if not european or not given.has("thickness"):
        return
    if numerals.settle(given.number("thickness")) <= numerals.settle(facts.THICKEST_OF_EUROPEAN_STEELS):
        return
    for name in ("yield_strength", "ultimate_strength"):
        if not given.has(name):
            raise Refusal(name, say("fillet-size.refusal.thick-steel"))


def _solve_strength(unknown: str, values: "dict[str, Any]") -> float:
    """Return the leg to lay for the force, or the force that the leg carries, both for each length."""
    rule = Rule(values)
    if unknown == "leg":
        return rule.leg_for(values["force_per_length"])
    counted = values["leg"] - rule.taken
    if numerals.settle(counted) <= 0.0:
        raise Refusal("leg", say("fillet-size.refusal.gap"))
    return rule.carried(counted)


# ---------------------------------------------------------------- the answer


def _answer(given: Given) -> Answer:
    weld = Weld(given)
    results = _headline(weld)
    if weld.effective_leg is not None:
        results.append(Number("throat", fillet_legs.throat_of_leg(weld.effective_leg)))
    if weld.least is not None and not any(each.name == "minimum_leg" for each in results):
        results.append(Number("minimum_leg", weld.least_laid(), "leg"))
    if weld.largest is not None:
        results.append(Number("maximum_leg", weld.largest, "leg"))
    if weld.metal is not None and not any(each.name == "metal_strength" for each in results):
        results.append(Number("metal_strength", weld.metal, "force_per_length"))
    results.append(Number("shortest_length", weld.shortest_length(), "weld_length"))
    return Answer(
        results=tuple(results) + (_drawing(weld),),
        working=Working(weld).lines(),
        notes=_notes(weld),
        cautions=_cautions(weld),
        sources=_sources(weld),
        next_questions=_next(weld),
        verdict=_verdict(weld),
    )


def _headline(weld: Weld) -> list[Number]:
    """Return what was asked, and before it what governs in its place."""
    if weld.leg is None:
        return [Number("minimum_leg", weld.least_laid(), "leg", in_words=_size_up(weld, weld.least_laid()))]
    if weld.solved_leg:
        needed = Number("leg", weld.leg, in_words=_size_up(weld, weld.leg))
        if not weld.least_governs:
            return [needed]
        label = say("fillet-size.label.leg-by-strength")
        words = _size_up(weld, weld.least_laid())
        return [
            Number("minimum_leg", weld.least_laid(), "leg", label=say("fillet-size.label.governs"), in_words=words),
            Number("leg", weld.leg, label=label),
        ]
    name = "force_per_length" if weld.force is None else "weld_strength"
    carried = Number(name, weld.strength, "force_per_length", label=say("fillet-size.label.weld-metal"))
    if weld.metal is None or numerals.settle(weld.metal) >= numerals.settle(weld.strength):
        return [carried]
    label = say("fillet-size.label.metal-governs")
    return [Number("metal_strength", weld.metal, "force_per_length", label=label), carried]


def _size_up(weld: Weld, leg: float) -> Message:
    """Return the next size that a drawing would call for."""
    count, size = weld.size_up(leg)
    if weld.eurocode:
        throat = Measured(fillet_legs.throat_of_leg(size), "throat", 3, "mm")
        return say("fillet-size.up.millimetre", leg=Measured(size, "leg", None, "mm"), throat=throat)
    exact = numerals.settle(size) == numerals.settle(leg)
    return say("fillet-size.up.same" if exact else "fillet-size.up.sixteenth", fraction=_fraction(count))


def _fraction(sixteenths: int) -> str:
    """Return a count of sixteenths as on a rule: 5/16, 1/2, 1 1/4."""
    whole, rest = sixteenths // 16, sixteenths % 16
    below = 16
    while rest and rest % 2 == 0:
        rest, below = rest // 2, below // 2
    part = str(rest) + "/" + str(below) if rest else ""
    return (str(whole) + " " + part if part else str(whole)) if whole else part


def _drawing(weld: Weld) -> Drawing:
    leg = weld.leg_to_lay()
    unit = weld.given.units.get("leg") or weld.given.units.get("throat")
    shown_leg = Measured(leg, "leg", None, unit)
    shown_throat = Measured(fillet_legs.throat_of_leg(leg), "throat", 3, unit)
    labels = (say("fillet-size.drawing.leg", leg=shown_leg), say("fillet-size.drawing.throat", throat=shown_throat))
    return fillet_section.draw(
        leg,
        weld.edge if weld.lap else weld.thickness,
        weld.lap,
        labels,
        say("fillet-size.drawing.title"),
        say("fillet-size.drawing.description", leg=shown_leg, throat=shown_throat),
    )


# ---------------------------------------------------------------- verdict, notes, cautions, sources, next


def _verdict(weld: Weld) -> Verdict | None:
    given = weld.given
    shown: dict[str, object] = {}
    if weld.force is not None and weld.metal is not None and _above(weld.force, weld.metal):
        shown["percent"] = Plain(weld.force / weld.metal * 100.0, 3)
        return Verdict("outside", say("fillet-size.verdict.metal", **shown), say("fillet-size.remedy.metal"))
    if weld.judged and _above(weld.force or 0.0, weld.strength):
        shown["percent"] = Plain((weld.force or 0.0) / weld.strength * 100.0, 3)
        return Verdict("outside", say("fillet-size.verdict.weak", **shown), say("fillet-size.remedy.weak"))
    if weld.too_small:
        least = Measured(weld.least_laid(), "leg", None, given.units.get("leg"))
        return Verdict("outside", say("fillet-size.verdict.small", least=least), say("fillet-size.remedy.small"))
    if weld.largest is not None and _above(weld.leg_to_lay(), weld.largest):
        largest = Measured(weld.largest, "leg", None, given.units.get("leg"))
        return Verdict("outside", say("fillet-size.verdict.edge", largest=largest), say("fillet-size.remedy.edge"))
    if not weld.judged:
        return None
    shown["percent"] = Plain((weld.force or 0.0) / weld.strength * 100.0, 3)
    if weld.metal is None or weld.least is None:
        return Verdict("unclear", say("fillet-size.verdict.unchecked", **shown), say("fillet-size.remedy.unchecked"))
    return Verdict("inside", say("fillet-size.verdict.below", **shown), say("fillet-size.remedy.below"))


def _above(value: float, limit: float) -> bool:
    return numerals.settle(value) > numerals.settle(limit)


def _notes(weld: Weld) -> tuple[Message, ...]:
    notes = [say("fillet-size.note.level." + weld.method)]
    if weld.leg is not None:
        if weld.increase_counted:
            notes.append(say("fillet-size.note.increase-on"))
        else:
            factor, increased = weld.increase_across(), Measured(weld.strength_across(), "force_per_length")
            notes.append(say("fillet-size.note.increase-off", factor=Plain(factor, 4), increased=increased))
        notes.append(say("fillet-size.note.class-eurocode" if weld.eurocode else "fillet-size.note.class"))
        if weld.eurocode:
            strength = Measured(weld.ultimate_strength or 0.0, "strength", 3, "MPa")
            notes.append(say("fillet-size.note.ultimate", strength=strength))
        if weld.metal is None:
            notes.append(say("fillet-size.note.metal-not-checked"))
        else:
            notes.append(say("fillet-size.note.metal-in-shear"))
        notes.append(say("fillet-size.note.long-eurocode" if weld.eurocode else "fillet-size.note.long"))
    if weld.least is not None:
        notes.append(say("fillet-size.note.least-eurocode" if weld.eurocode else "fillet-size.note.least"))
    if weld.lap and weld.eurocode:
        notes.append(say("fillet-size.note.no-edge-rule"))
    notes.append(say("fillet-size.note.overwelding"))
    return tuple(notes)


def _cautions(weld: Weld) -> tuple[Message, ...]:
    names = ["aid", "leg-or-throat", "static", "short-circuit", "gap"]
    if weld.thickness is not None and numerals.settle(weld.thickness) < numerals.settle(0.1875 * units.factor_of("in")):
        names.append("sheet")
    return tuple(say("fillet-size.caution." + name) for name in names)


def _sources(weld: Weld) -> tuple[Source, ...]:
    if weld.eurocode:
        return (EN_1993_1_8, EUROPEAN_METAL, D1_1)
    sources = [AISC_SIZES, AISC_STRENGTH, D1_1]
    if weld.given.word("steel") in ("a36", "a572-50"):
        sources.append(AMERICAN_METAL)
    elif weld.given.has("steel"):
        sources.append(EUROPEAN_METAL)
    return tuple(sources)


def _next(weld: Weld) -> tuple[Next, ...]:
    given = weld.given
    size = weld.size_up(weld.leg_to_lay())[1]
    leg = carry("leg", Measured(size, "leg", None, "mm" if weld.eurocode else "in"), 1.0e-3, 0.05)
    carried = list(leg)
    for name in ("method", "electrode_strength", "joint", "sides", "steel", "directional_increase"):
        if given.has(name):
            carried.append((name, given.word(name)))
    for name, quantity in _CARRIED:
        if given.has(name):
            carried.append((name, given.measured(name, quantity)))
    questions = [Next("joint-fill", say("fillet-size.next.joint-fill"), leg)]
    if weld.leg is None:
        questions.append(Next("fillet-size", say("fillet-size.next.carries"), tuple(carried)))
    elif weld.solved_leg and leg:
        carried.append(("force_per_length", given.measured("force_per_length")))
        questions.append(Next("fillet-size", say("fillet-size.next.size-up"), tuple(carried)))
    if weld.thickness is not None:
        steel: tuple[tuple[str, object], ...] = (
            ("wire_material", "mild-steel"),
            ("thickness", given.measured("thickness")),
        )
        onward = "process-choice" if ranges.above(weld.thickness, usual_wire.THICKEST) else "settings"
        questions.append(Next(onward, say("fillet-size.next." + onward), steel))
    questions.append(Next("preheat", say("fillet-size.next.preheat"), _to_preheat(given)))
    return tuple(questions)


def _to_preheat(given: Given) -> tuple[tuple[str, object], ...]:
    """Return the kind of steel; no thickness, since preheat goes by the thickest part and this question by the thinnest."""
    steel = given.word("steel")
    if steel in ("", "other"):
        return ()
    grade = {"a36": "a36-group", "a572-50": "a572-50-group"}.get(steel)
    return (("family", "structural"),) + ((("grade", grade),) if grade else ())


CALCULATOR = Calculator(
    name="fillet-size",
    fields=(
        Choice("method", (ALLOWABLE, RESISTANCE, EUROCODE), default=ALLOWABLE, hint=True),
        Quantity("leg", hint=True, low=0.1, presets=("1/8 in", "3/16 in", "1/4 in", "5/16 in", "3/8 in", "4 mm", "5 mm", "6 mm", "8 mm", "10 mm")),
        Quantity("throat", hint=True, low=0.07, presets=("3 mm", "4 mm", "5 mm", "6 mm")),
        Quantity("force_per_length", hint=True),
        Quantity("thickness", optional=True, hint=True, low=3.0, high=100.0, presets=("3/16 in", "1/4 in", "3/8 in", "1/2 in", "3/4 in", "5 mm", "6 mm", "10 mm", "12 mm")),
        Choice("electrode_strength", tuple(name for name, _ in facts.ELECTRODE_STRENGTHS), default="70-ksi", hint=True),
        Choice("steel", _STEELS, optional=True, hint=True),
        Quantity("yield_strength", "strength", optional=True, hint=True, when=("steel", _STEELS)),
        Quantity("ultimate_strength", "strength", optional=True, when=("steel", _STEELS)),
        Choice("sides", ("one", "both"), default="one", hint=True),
        Choice("joint", ("tee", "lap"), default="tee"),
        Quantity("edge_thickness", "thickness", optional=True, hint=True, low=3.0, high=100.0, when=("joint", ("lap",))),
        Quantity("root_gap", optional=True, hint=True, high=4.7625, presets=("1/16 in", "1/8 in", "3/16 in", "2 mm", "3 mm")),
        Choice("directional_increase", ("off", "on"), default="off", hint=True),
        Quantity("load_angle", hint=True, when=("directional_increase", ("on",)), presets=("0 deg", "45 deg", "90 deg")),
    ),
    relations=(
        Relation(("leg", "throat"), fillet_legs.solve_throat, check="throat", required=False, its_own=("throat",), agree_within=_LEG_AND_THROAT_AGREE),
        # Not checked by the share they differ by: the verdict says whether the weld is strong enough.
        Relation(
            ("leg", "force_per_length"),
            _solve_strength,
            check="",
            also=("method", "electrode_strength", "steel", "ultimate_strength", "directional_increase", "load_angle", "root_gap"),
            takes_part=_strength_wanted,
        ),
    ),
    prepare=_prepare,
    answer=_answer,
    english=ENGLISH,
    sources=(AISC_SIZES, AISC_STRENGTH, D1_1, EN_1993_1_8, EUROPEAN_METAL, AMERICAN_METAL),
    place=32,
)  # fmt: skip
