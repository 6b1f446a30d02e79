"""Clothing: what to wear for this work, what cloth never, and why."""

from calculators.clothing_words import ENGLISH
from calculators.contract import Answer, Calculator, Checklist, Choice, Given, Next, Source, Words, say

LAW = Source("29 CFR 1910.252(b)(3): clothing by the size and kind of the work; section recalled", "from memory")
HABIT = Source("Cloth, cut and leathers: what welders wear, and the burns that taught it", "common practice")
EARS = Source("Ear plugs guard against noise, ear muffs against noise and sparks", "common practice")

_SOURCES = (LAW, HABIT, EARS)
_ALWAYS = ("cloth", "never", "shirt", "pockets", "trousers")
_HEAVY = ("gouging", "cutting")  # throw heavy sparks whatever else is said


def _answer(given: Given) -> Answer:
    work, position = given.word("work"), given.word("position")
    heavy = given.word("sparks") == "heavy" or work in _HEAVY
    overhead = position == "overhead"
    ids = list(_ALWAYS)
    if work == "grinding":
        ids += ["shield", "gloves-grinding"]
    else:
        ids += ["gloves-stick" if work in ("stick", "gouging") else "gloves", "cap"]
    if heavy or overhead:
        ids.append("leathers")
    if overhead:
        ids.append("collar")
    if heavy:
        ids.append("laces")
    ids.append("muffs" if heavy or overhead else "plugs")
    kind = "leathers" if heavy or overhead else "cloth"
    named = say("clothing.option.work." + work)
    return Answer(
        results=(
            Words("wear", say("clothing.wear." + kind)),
            Checklist(
                "wear_list",
                say("clothing.list"),
                tuple([(id, say("clothing.item." + id)) for id in ids]),
                say("clothing.left"),
            ),
        ),
        working=(say("clothing.working." + kind, work=named),),
        cautions=tuple([say("clothing.caution." + id) for id in ("grease", "lighter", "oxygen")]),
        sources=_SOURCES,
        next_questions=(Next("hot-work", say("clothing.next.hot-work"), ()),),
    )


CALCULATOR = Calculator(
    name="clothing",
    fields=(
        Choice("work", ("wire", "cored", "stick", "gouging", "cutting", "grinding")),
        Choice("position", ("flat", "upright", "overhead")),
        Choice("sparks", ("light", "heavy"), default="light", hint=True),
    ),
    answer=_answer,
    english=ENGLISH,
    sources=_SOURCES,
    place=99,
)
