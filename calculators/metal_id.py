"""Which metal is it: whether a part is to be welded at all, and which metals its tests leave open."""

from calculators import made, metal_evidence, numerals
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
    Plain,
    Quantity,
    Source,
    Table,
    Verdict,
    Words,
    say,
)
from calculators.facts import densities
from calculators.facts import metals as facts
from calculators.metal_id_case import FEW, STOPS, Case
from calculators.metal_id_sources import BY_KEY, WITH
from calculators.metal_id_words import ENGLISH

_SHOWN = 5

# family -> filler, preheat, highest temperature: which questions to ask; then preheat's own family, wire's material.
_QUESTIONS = (
    ("mild-steel", "steel", "thickness", "procedure", "structural", "mild-steel"),
    ("medium-carbon", "hardening", "slow", "procedure", "hardening", ""),
    ("gray-iron", "iron", "iron", "procedure", "", ""),
    ("aluminum", "aluminum", "alloy", "aluminum", "", "aluminum"),
    ("austenitic", "stainless", "cool", "stainless", "stainless", "stainless"),
    ("quenched-tempered", "hardening", "thickness", "quenched", "quenched-tempered", ""),
    ("ductile-iron", "iron", "iron", "procedure", "", ""),
    ("magnetic-stainless", "stainless", "slow", "procedure", "", ""),
    ("high-carbon", "specialist", "slow", "specialist", "", ""),
    ("copper-alloy", "other-metal", "alloy", "procedure", "", ""),
    ("copper", "other-metal", "alloy", "procedure", "", ""),
    ("zinc", "specialist", "specialist", "specialist", "", ""),
    ("manganese", "manganese", "cool", "manganese", "manganese", ""),
    ("white-iron", "specialist", "specialist", "specialist", "", ""),
    ("wrought-iron", "steel", "alloy", "procedure", "", ""),
    ("magnesium", "specialist", "specialist", "specialist", "", ""),
    ("nickel", "other-metal", "alloy", "procedure", "", ""),
    ("titanium", "specialist", "specialist", "specialist", "", ""),
    ("lead", "specialist", "specialist", "specialist", "", ""),
)
_QUESTIONS_OF = {row[0]: row for row in _QUESTIONS}
_ON_CARBON = ("mild-steel", "medium-carbon", "quenched-tempered", "high-carbon")
_NOTED = ("mild-steel", "quenched-tempered", "medium-carbon", "aluminum", "austenitic", "gray-iron", "manganese", "wrought-iron")  # fmt: skip
_HAZARDS = ("magnesium", "titanium", "zinc", "lead", "copper-alloy")


def _family(family: str) -> Message:
    return say("metal-id.family." + family)


def _listed(items: list[Message], last: str) -> Message:
    listed = items[-1]
    for position in range(len(items) - 2, -1, -1):
        listed = say(last if position == len(items) - 2 else "list.comma", first=items[position], rest=listed)
    return listed


# ---------------------------------------------------------------- the answer


def _answer(given: Given) -> Answer:
    case = Case(given)
    results: list[object] = []
    if case.stopped:
        part = say("metal-id.option.part." + case.part)
        results.append(Words("stop", say("metal-id.stop"), label=part))
    results.append(Words("metal", _headline(case)))
    results.append(Words("next_test", say("metal-id.do." + case.next_test())))
    if case.density is not None:
        results.append(_density_words(case.density, case.weighed))
    if not case.stopped:
        results += _questions(case)
    if case.tests:
        results.append(_candidates(case))
    if case.counted is not None:
        results.append(_densities(case.counted))
    return Answer(
        results=tuple(results),
        working=_working(case),
        notes=_notes(case),
        cautions=_cautions(case),
        sources=_sources(case),
        next_questions=_next(case),
        verdict=_verdict(case),
    )


def _headline(case: Case) -> Message:
    if case.state in ("untested", "contradiction"):
        return say("metal-id.metal." + case.state)
    if case.state == "likely":
        return say("metal-id.metal.likely", family=_family(case.top))
    if case.state == "leads":
        return say("metal-id.metal.leads", family=_family(case.top), other=_family(case.second))
    close = case.behind(1)
    if len(close) == 1:
        close = case.behind(case.margin)
    if len(close) > 3:
        return say("metal-id.metal.open-more", families=_listed([_family(each) for each in close[:3]], "list.comma"))
    return say("metal-id.metal.open", families=_listed([_family(each) for each in close], "list.or"))


def _verdict(case: Case) -> Verdict:
    if case.stopped:
        message = say("metal-id.verdict.stop", agree=say("metal-id.agree." + case.part))
        return Verdict("outside", message, say("metal-id.because." + case.part))
    if case.state in ("untested", "contradiction"):
        return Verdict("unclear", say("metal-id.verdict." + case.state))
    return Verdict("unclear", say("metal-id.verdict.signs"))


def _candidates(case: Case) -> Findings:
    items = []
    for points, family in case.ranked[:_SHOWN]:
        behind = case.ranked[0][0] - points
        if behind > 8:
            break
        items.append(Finding(_family(family), say("metal-id.sure." + _sureness(case, behind)), _why(case, family)))
    return Findings("candidates", say("metal-id.candidates"), tuple(items))


def _sureness(case: Case, behind: int) -> str:
    """Return the word for how sure a family is that lies so many points behind the first."""
    if case.state == "contradiction":
        return "misfit"
    if behind == 0 and case.state in ("likely", "leads"):
        return case.state
    if behind < 2:
        return "guess" if case.tests < FEW else "tied"
    return "possible" if behind <= 4 else "less-likely"


def _why(case: Case, family: str) -> Message:
    points = case.points_of(family)
    fits = [say("metal-id.test." + test) for test, each in points if each > 0]
    against = [say("metal-id.test." + test) for test, each in points if each < 0]
    if fits and against:
        return say("metal-id.why.both", fits=_listed(fits, "list.and"), against=_listed(against, "list.and"))
    if fits:
        return say("metal-id.why.for", fits=_listed(fits, "list.and"))
    if against:
        return say("metal-id.why.against", against=_listed(against, "list.and"))
    return say("metal-id.why.neither")


# ---------------------------------------------------------------- filler, heat, next questions


def _questions(case: Case) -> list[object]:
    """Return what to settle about filler and heat, as questions; nothing while the metal is open."""
    if case.state not in ("likely", "leads"):
        return [] if case.state == "untested" else [Words("unsettled", say("metal-id.unsettled"))]
    _, filler, preheat, maximum, _, _ = _QUESTIONS_OF[case.top]
    return [
        Words("filler", say("metal-id.filler." + filler)),
        Words("preheat", say("metal-id.preheat." + preheat)),
        Words("maximum", say("metal-id.maximum." + maximum)),
    ]


def _next(case: Case) -> tuple[Next, ...]:
    """Return the next questions: none for a part that is not to be welded, and only to calculators that are there."""
    if case.stopped or case.tests == 0 or case.state == "contradiction":
        return ()
    settled = case.state == "likely"
    family, wire = _QUESTIONS_OF[case.top][4:]
    questions = []
    if settled and family:
        questions.append(Next("preheat", say("metal-id.next.preheat"), (("family", family),)))
    elif case.top in _ON_CARBON:
        sticks = (("magnet", "sticks"),) if case.given.word("magnet") == "strong" else ()
        questions.append(Next("preheat", say("metal-id.next.preheat-unknown"), (("family", "unknown"),) + sticks))
    if case.top in _ON_CARBON:
        questions.append(Next("carbon-equivalent", say("metal-id.next.carbon-equivalent"), ()))
    if settled and wire:
        questions.append(Next("wire-feed", say("metal-id.next.wire-feed"), (("wire_material", wire),)))
    return tuple([each for each in questions if each.calculator.replace("-", "_") in made.CALCULATOR_MODULES])


# ---------------------------------------------------------------- density


def _shown(density: float) -> Measured:
    return Measured(density, "density")


def _density_words(density: float, weighed: bool) -> Words:
    if not weighed:
        return Words("density", say("metal-id.density.nothing", density=_shown(density)))
    times = Plain(density / densities.WATER, 2)
    metric = Measured(density, "density", None, "kg/m3")
    return Words("density", say("metal-id.density.found", metric=metric, times=times))


def _densities(density: float) -> Table:
    """Return the reading and the five families whose published range is nearest to it."""
    near = []
    for place, (family, low, high) in enumerate(densities.FAMILIES):
        near.append((numerals.settle(max(low - density, density - high, 0.0)), place, family, low, high))
    nearest = sorted([(low, place, family, high) for _, place, family, low, high in sorted(near)[:5]])
    rows: list[tuple[object, ...]] = [(say("metal-id.row.yours"), _shown(density), _shown(density))]
    rows += [(_family(family), _shown(low), _shown(high)) for low, _, family, high in nearest]
    columns = tuple([say("metal-id.column." + name) for name in ("metal", "low", "high")])
    return Table("densities", say("metal-id.densities"), columns, tuple(rows))


# ---------------------------------------------------------------- working, notes, cautions, sources


def _working(case: Case) -> tuple[Message, ...]:
    lines = []
    how = case.given.word("weighed")
    if case.density is not None:
        parameters = {"density": _shown(case.density), "mass": case.given.measured("mass", "part_mass")}
        for name in ("length", "width", "thickness", "diameter"):
            if case.given.has(name):
                parameters[name] = case.given.measured(name, "piece_size")
        if how == "in-water":
            parameters["mass_in_water"] = case.given.measured("mass_in_water", "part_mass")
            parameters["water"] = _shown(densities.WATER)
        lines.append(say("metal-id.working." + how, **parameters))
    if case.tests == 0:
        return tuple(lines)
    families = [family for _, family in case.ranked[:3]]
    for test, answer in case.answers:
        points = _scored([(family, metal_evidence.answer_points(test, answer, family)) for family in families])
        chosen = say("metal-id.option." + test + "." + answer)
        if test == "part":
            lines.append(say("metal-id.working.part", answer=chosen, points=points))
        else:
            lines.append(
                say("metal-id.working.answer", test=say("metal-id.field." + test), answer=chosen, points=points)
            )
    if case.counted is not None:
        points = _scored([(family, metal_evidence.density_points(family, case.counted)) for family in families])
        lines.append(say("metal-id.working.density", density=_shown(case.counted), points=points))
    lines.append(say("metal-id.working.sum", points=_scored([(family, sum_) for sum_, family in case.ranked[:3]])))
    lines.append(say("metal-id.working.scale"))
    return tuple(lines)


def _scored(scores: list[tuple[str, int]]) -> Message:
    items = []
    for family, points in scores:
        id = "for" if points > 0 else "against" if points < 0 else "neutral"
        items.append(say("metal-id.points." + id, family=_family(family), points=abs(points)))
    return _listed(items, "list.comma")


def _notes(case: Case) -> tuple[Message, ...]:
    if case.tests == 0:
        return ()
    notes = []
    hidden = [_family(family) for family in case.behind(1)[_SHOWN:]]
    if hidden:
        notes.append(say("metal-id.note.also-open", families=_listed(hidden, "list.and")))
    if case.tests < FEW:
        notes.append(say("metal-id.note.few"))
    for family in case.behind(4)[:3]:
        if family in _NOTED:
            notes.append(say("metal-id.note." + family))
    return tuple(notes)


def _cautions(case: Case) -> tuple[Message, ...]:
    cautions = []
    if case.part in facts.CLOSED:
        cautions.append(say("metal-id.caution.closed"))
    elif case.stopped:
        cautions.append(say("metal-id.caution.no-marks"))
    open_still = case.behind(6) if case.tests else []
    for family in _HAZARDS:
        if family in open_still:
            cautions.append(say("metal-id.caution." + family))
    if not case.stopped:
        cautions.append(say("metal-id.caution.grinding"))
        cautions.append(say("metal-id.caution.coating"))
    cautions.append(say("caution.decides"))
    return tuple(cautions)


def _sources(case: Case) -> tuple[Source, ...]:
    keys = ["aircraft"]
    for test, answer, _, _, source in facts.EVIDENCE:
        if (test, answer) in case.answers:
            keys.append(source)
    for part, sources in facts.DO_NOT_WELD:
        if part == case.part:
            keys += sources
    if case.counted is not None:
        keys.append("densities")
    if not case.stopped and case.state in ("likely", "leads"):
        keys += ["fillers", "maximum"]
    if "aluminum" in case.behind(4)[:3] and case.tests:
        keys.append("copper-bearing")
    for key, others in WITH:
        if key in keys:
            keys += others
    return tuple([source for key, source in BY_KEY if key in keys])


_MEASURED = ("block", "round-bar")

CALCULATOR = Calculator(
    name="metal-id",
    fields=(
        Choice("part", STOPS + facts.OTHER_PARTS, hint=True),
        Choice("magnet", ("strong", "weak", "none"), optional=True, hint=True),
        Choice("color", ("steel-gray", "dark-gray", "silver-white", "blue-gray", "yellow", "red"), optional=True),
        Choice("corrosion", ("red-rust", "layered-rust", "white-powder", "gray-film", "green", "stays-bright"), optional=True),
        Choice("surface", ("sand-cast", "die-cast", "rolled", "forged"), optional=True),
        Choice("sound", ("rings", "dull"), optional=True),
        Choice("weighed", ("block", "round-bar", "in-water"), optional=True, hint=True),
        Quantity("mass", "part_mass", when=("weighed", ("block", "round-bar", "in-water"))),
        Quantity("mass_in_water", "part_mass", hint=True, when=("weighed", ("in-water",))),
        Quantity("length", "piece_size", when=("weighed", _MEASURED)),
        Quantity("width", "piece_size", when=("weighed", ("block",))),
        Quantity("thickness", "piece_size", when=("weighed", ("block",))),
        Quantity("diameter", "piece_size", when=("weighed", ("round-bar",))),
        Choice("file", ("clogs", "easy", "resists", "barely", "slides"), optional=True),
        Choice(
            "spark",
            ("none", "long-few-forks", "many-forks", "bushy", "red-short", "straw", "orange-tiny", "white-fans", "blinding"),
            optional=True,
            hint=True,
        ),
        Choice("chip", ("curls", "short", "splinters", "uncut"), optional=True),
    ),
    answer=_answer,
    english=ENGLISH,
    sources=tuple([source for _, source in BY_KEY]),
    place=5,
)  # fmt: skip
