"""Hot work: what to clear, cover and watch so that nothing burns, and how long somebody watches after the last spark."""

from calculators import numerals
from calculators import safety_sources as sources
from calculators.contract import (
    Answer,
    Calculator,
    Checklist,
    Choice,
    Countdown,
    Given,
    Measured,
    Message,
    Next,
    Number,
    Quantity,
    Refusal,
    Verdict,
    say,
)
from calculators.facts import fire
from calculators.hot_work_words import ENGLISH

# Each id keeps its meaning: ticks are kept under it.
_ALWAYS = ("permit", "clear", "cracks", "behind", "vapor", "cleaner")
_OF_PLACE = {"indoors": ("floor", "sprinklers"), "outdoors": ("grass",), "vehicle": ("fuel",)}
_LAST = ("cylinders", "extinguisher", "watcher")
_SOURCES = (sources.FIRE, sources.FIRE_CODE, sources.CONTAINERS, sources.RIMS, sources.TRADE)


def _answer(given: Given) -> Answer:
    if given.word("work_on") == "rim":
        raise Refusal("work_on", say("hot-work.refusal.rim"))
    if given.word("held") in ("burns", "unknown"):
        raise Refusal("held", say("caution.held"))
    by_code = given.word("watch_rule") == "fire-code"
    length = fire.WATCH_BY_FIRE_CODE if by_code else fire.WATCH_BY_LAW
    watch = Measured(length, "arc_time", unit="min")
    shown = {
        "circle": Measured(fire.CIRCLE, "fire_distance"),
        "law": Measured(fire.WATCH_BY_LAW, "arc_time", unit="min"),
        "code": Measured(fire.WATCH_BY_FIRE_CODE, "arc_time", unit="min"),
        "watch": watch,
    }
    return Answer(
        results=(
            Number("fire_watch", length, "arc_time"),
            Checklist("before", say("hot-work.list"), _items(given), say("hot-work.left")),
            Countdown(
                "timer",
                say("hot-work.timer", watch=watch),
                length,
                say("hot-work.over"),
                say("hot-work.begin"),
                say("hot-work.end"),
            ),
        ),
        working=(say("hot-work.working.circle", **shown), say("hot-work.working.watch", **shown)),
        cautions=tuple([say("hot-work.caution." + id) for id in ("hidden", "longer", "leave")]),
        sources=_SOURCES,
        next_questions=(Next("make-safe", say("hot-work.next.make-safe"), ()),),
        verdict=_verdict(given),
    )


def _items(given: Given) -> tuple[tuple[str, Message], ...]:
    ids = _ALWAYS + _OF_PLACE[given.word("place")]
    if given.word("work_on") != "open":
        ids = ids + ("hollow",)
    circle = Measured(fire.CIRCLE, "fire_distance")
    return tuple([(id, say("hot-work.item." + id, circle=circle)) for id in ids + _LAST])


def _verdict(given: Given) -> Verdict | None:
    if not given.has("fire_distance"):
        return None
    shown = {"distance": given.measured("fire_distance"), "circle": Measured(fire.CIRCLE, "fire_distance")}
    if numerals.settle(given.number("fire_distance")) < numerals.settle(fire.CIRCLE):
        return Verdict("outside", say("hot-work.verdict.close", **shown), say("hot-work.remedy.close", **shown))
    return Verdict("unclear", say("hot-work.verdict.far", **shown), say("hot-work.remedy.far"))


CALCULATOR = Calculator(
    name="hot-work",
    fields=(
        Choice("work_on", ("open", "hollow", "container", "rim"), hint=True),
        Choice("held", ("burns", "unknown", "water"), when=("work_on", ("container",)), hint=True),
        Choice("place", ("indoors", "outdoors", "vehicle")),
        Quantity("fire_distance", optional=True, presets=("10 ft", "35 ft", "5 m", "11 m"), hint=True),
        Choice("watch_rule", ("fire-code", "law"), default="fire-code"),
    ),
    answer=_answer,
    english=ENGLISH,
    sources=_SOURCES,
    place=96,
)
