"""Visual check: a finished weld against what is commonly published for statically loaded building steel."""

from calculators.contract import (
    Answer,
    Calculator,
    Choice,
    Given,
    Message,
    Next,
    Quantity,
    Refusal,
    Source,
    Table,
    Verdict,
    Words,
    say,
)
from calculators.visual_case import INSIDE, Case
from calculators.visual_check_words import ENGLISH

TABLE = Source(
    "AWS D1.1, visual acceptance, table 6.1 (2000, 2004) and 8.1 (2020): cracks to undercut; seen as reproduced",
    "standard",
)
PORES = Source("The same table: pores in fillet and groove welds; seen quoted", "standard")
PROFILES = Source("AWS D1.1:2015, tables 5.8 and 5.9: bulge partly seen quoted, cap not seen", "from memory")

_SOURCES = (TABLE, PORES, PROFILES)
_OTHERS = ("vibrating", "pressure", "machine", "not-known")
_SMALL = ("1/64 in", "1/32 in", "3/64 in", "1/16 in", "0.5 mm", "1 mm")
_SUMS = ("0 in", "1/8 in", "1/4 in", "3/8 in", "3/4 in")
_LEGS = ("1/8 in", "3/16 in", "1/4 in", "5/16 in", "6 mm", "8 mm")


def _answer(given: Given) -> Answer:
    if given.word("service") in _OTHERS:
        raise Refusal("service", say("visual-check.refusal." + given.word("service")))
    case = Case(given)
    state = case.state()
    columns = tuple([say("visual-check.column." + name) for name in ("look", "found", "limit")])
    rows = tuple([look.row() for look in case.looks])
    lines = ["undercut", "pores"] + (["leg", "convexity"] if given.word("joint") == "fillet" else ["cap"])
    return Answer(
        results=(
            Words("weld", say("visual-check.weld." + state)),
            Table("looks", say("visual-check.table"), columns, rows),
        ),
        working=tuple([say("visual-check.working." + line) for line in lines]),
        notes=(say("visual-check.note.clean"), say("visual-check.note.metric"), say("visual-check.note.wait")),
        cautions=tuple([say("visual-check.caution." + id) for id in ("decides", "inside", "others")]),
        sources=_SOURCES,
        next_questions=_next(given),
        verdict=Verdict(state, _why(case, state), say("visual-check.remedy." + state)),
    )


def _why(case: Case, state: str) -> Message:
    if state == INSIDE:
        return say("visual-check.verdict.inside", count=len(case.looks))
    named = case.named(state)
    listed = named[0]
    for each in named[1:]:
        listed = say("list.comma", first=listed, rest=each)
    return say("visual-check.verdict." + state, named=listed)


def _next(given: Given) -> tuple[Next, ...]:
    if given.word("seen") == "crack":
        return (Next("crack-repair", say("visual-check.next.crack-repair"), ()),)
    return (Next("fillet-size", say("visual-check.next.fillet-size"), ()),) if given.word("joint") == "fillet" else ()


def _size(
    name: str, joint: str, high: float, presets: tuple[str, ...], low: float = 0.0, hint: bool = False
) -> Quantity:
    when = ("joint", (joint,)) if joint else None
    return Quantity(name, "joint_size", optional=True, when=when, low=low, high=high, presets=presets, hint=hint)


CALCULATOR = Calculator(
    name="visual-check",
    fields=(
        Choice("service", ("steady",) + _OTHERS),
        Choice("joint", ("fillet", "groove")),
        Choice("seen", ("none", "crack", "fusion", "crater"), hint=True),
        Quantity("thickness", low=3.0, presets=("1/8 in", "3/16 in", "1/4 in", "3/8 in", "1/2 in", "1 in")),
        _size("undercut_depth", "", 10.0, _SMALL),
        Quantity(
            "undercut_length", "joint_size", optional=True, low=0.0, high=304.8, presets=("1 in", "2 in"), hint=True
        ),
        Choice("pull", ("across", "not-across"), default="across", when=("joint", ("groove",))),
        _size("pores_in_inch", "", 25.4, _SUMS, hint=True),
        _size("pores_in_foot", "", 304.8, _SUMS),
        _size("wanted_leg", "fillet", 50.0, _LEGS, low=3.0),
        _size("found_leg", "fillet", 60.0, _LEGS, low=0.5),
        Quantity(
            "short_share", "percentage", optional=True, when=("joint", ("fillet",)), hint=True, presets=("5 %", "10 %")
        ),
        _size("face_width", "fillet", 100.0, ("1/4 in", "3/8 in", "8 mm", "10 mm"), low=1.0),
        _size("convexity", "fillet", 20.0, ("0 in", "1/16 in", "1/8 in", "1 mm", "2 mm")),
        _size("reinforcement", "groove", 30.0, ("1/16 in", "1/8 in", "2 mm", "3 mm")),
    ),
    answer=_answer,
    english=ENGLISH,
    sources=_SOURCES,
    place=80,
)
