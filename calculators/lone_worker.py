"""Lone worker: when to call next by the clock, what to tell whom, and a text that says it."""

from calculators.clock import Clock, Typed
from calculators.contract import (
    Answer,
    Calculator,
    Checklist,
    Choice,
    Countdown,
    Draft,
    Given,
    Measured,
    Message,
    Next,
    Plain,
    Quantity,
    Refusal,
    Source,
    Text,
    Verdict,
    Words,
    say,
)
from calculators.lone_worker_words import ENGLISH

HABIT = Source("Calling in by the clock, and somebody who comes when no call does", "common practice")
NONE = Source("No published number was found for how often: the job decides", "common practice")

ATTENDED = Source("29 CFR 1910.146(d)(6): an attendant outside a permit space", "law")

_SOURCES = (HABIT, NONE, ATTENDED)
_SHOWN = 6
_TELL = ("place", "way", "work", "truck", "phone", "medical", "miss")
_GRACE = 10  # minutes


def _answer(given: Given) -> Answer:
    start = Typed(given.word("start_time")).clock
    if start is None:
        raise Refusal("start_time", say("lone-worker.refusal.time"))
    every = int(given.number("call_every") / 60.0 + 0.5)
    length = Measured(every * 60.0, "arc_time", unit="min")
    calls = [start.after(every * number) for number in range(1, _SHOWN + 1)]
    overdue = calls[0].after(_GRACE)
    shown: dict[str, object] = {"start": _at(start), "call": _at(calls[0]), "overdue": _at(overdue)}
    shown["every"], shown["grace"] = length, _GRACE
    shown["where"] = given.word("where")
    shown["work"] = say("lone-worker.option.hazard." + given.word("hazard"))
    items = tuple([(id, say("lone-worker.item." + id)) for id in _TELL])
    return Answer(
        results=(
            Words("first_call", _at(calls[0])),
            Words("calls", _listed(calls[1:])),
            Words("overdue", _at(overdue)),
            Draft("text", say("lone-worker.draft"), say("lone-worker.draft.text", **shown)),
            Countdown("call", say("lone-worker.timer", every=length), every * 60.0, say("lone-worker.over")),
            Checklist("told", say("lone-worker.list"), items, say("lone-worker.left")),
        ),
        working=(say("lone-worker.working", minutes=Plain(float(every), 4), **shown),),
        cautions=tuple([say("lone-worker.caution." + id) for id in ("signal", "alone")]),
        sources=_SOURCES,
        verdict=_verdict(given.word("hazard")),
        next_questions=(Next("make-safe", say("lone-worker.next.make-safe"), ()),),
    )


def _at(clock: Clock) -> Message:
    half = clock.half()
    return say("lone-worker." + half if half else "lone-worker.at", time=clock.text())


def _verdict(hazard: str) -> Verdict | None:
    if hazard not in ("tank", "under"):
        return None
    return Verdict("outside", say("lone-worker.verdict." + hazard), say("lone-worker.remedy"))


def _listed(calls: list[Clock]) -> Message:
    listed = _at(calls[0])
    for call in calls[1:]:
        listed = say("list.comma", first=listed, rest=_at(call))
    return listed


CALCULATOR = Calculator(
    name="lone-worker",
    fields=(
        Text("start_time", longest=10, examples=("14:30", "2:30 pm", "7 am", "00:05")),
        Quantity("call_every", "arc_time", low=5.0, high=240.0, presets=("15 min", "30 min", "1 h"), hint=True),
        Text("where", longest=60),
        Choice("hazard", ("hot", "height", "tank", "under", "other"), default="hot"),
    ),
    answer=_answer,
    english=ENGLISH,
    sources=_SOURCES,
    place=100,
)
