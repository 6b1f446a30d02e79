"""Make safe: what stores force on this job, and what to block, lock and let out before the first arc."""

from calculators import safety_sources as sources
from calculators.contract import Answer, Calculator, Checklist, Choice, Given, Next, Refusal, Words, say
from calculators.make_safe_words import ENGLISH

# job -> what to do, the deadliest first. Each id keeps its meaning: ticks are kept under it.
_LISTS = {
    "machine": ("falls", "lock", "relieve", "springs", "turns", "battery", "fuel", "clamp", "cylinders"),
    "trailer": ("falls", "chock", "truck", "load", "springs", "tires", "hollow", "clamp", "cylinders"),
    "vehicle": ("chock", "falls", "battery", "air-bags", "springs", "fuel", "tires", "clamp", "cylinders"),
    "tank": ("pipes", "vent", "enter", "lock", "falls", "clamp", "cylinders"),
    "structure": ("carries", "falls", "hidden", "hollow", "beneath", "clamp", "cylinders"),
}
_LAWS = (
    ("lock", sources.LOCKOUT),
    ("tires", sources.RIMS),
    ("pipes", sources.CONTAINERS),
    ("hollow", sources.CONTAINERS),
    ("enter", sources.ENTRY),
    ("air-bags", sources.VEHICLES),
)


def _answer(given: Given) -> Answer:
    job = given.word("job")
    if given.word("held") in ("burns", "unknown"):
        raise Refusal("held", say("caution.held"))
    ids = _LISTS[job]
    items = tuple([(id, say("make-safe.item." + id)) for id in ids])
    named = [law for id, law in _LAWS if id in ids] + [sources.RETURN, sources.CYLINDERS, sources.TRADE]
    heading, left = say("make-safe.list"), say("make-safe.left")
    return Answer(
        results=(
            Words("first", say("make-safe.first." + job)),
            Checklist("before", heading, items, left),
        ),
        working=(say("make-safe.working", count=len(ids), law=len(named) - 1),),
        cautions=(say("make-safe.caution.jack"), say("make-safe.caution.maker")),
        sources=tuple(named),
        next_questions=(Next("hot-work", say("make-safe.next.hot-work"), ()),),
    )


CALCULATOR = Calculator(
    name="make-safe",
    fields=(
        Choice("job", ("machine", "trailer", "vehicle", "tank", "structure")),
        Choice("held", ("burns", "unknown", "water"), when=("job", ("tank",)), hint=True),
    ),
    answer=_answer,
    english=ENGLISH,
    sources=(
        sources.LOCKOUT,
        sources.RIMS,
        sources.CONTAINERS,
        sources.ENTRY,
        sources.VEHICLES,
        sources.RETURN,
        sources.CYLINDERS,
        sources.TRADE,
    ),
    place=95,
)
