"""Shock: what the volts of a machine with no arc can do where the welder stands, and what to look over first."""

from calculators import ranges, safety_sources, shock_limits
from calculators.contract import (
    Answer,
    Calculator,
    Checklist,
    Choice,
    Given,
    Measured,
    Message,
    Next,
    Number,
    Quantity,
    Source,
    Verdict,
    say,
)
from calculators.facts import shock as facts
from calculators.shock_words import ENGLISH

VOLTS = Source("29 CFR 1910.254(b)(3): most volts with no arc; seen as WAC 296-24-68503", "law")
WET = Source("Michigan R 408.11272: ac in wet places below 50 V; dc with more than 10 % ripple as ac; seen", "law")
LEADS = Source(
    "29 CFR 1910.254(d)(9), 1926.351(b): no splice within 10 ft, no bare copper; seen as WAC 296-155-405", "law"
)
BONDING = Source("29 CFR 1926.404(f)(3): frames of generators, neutral, vehicle; seen in OSHA letters of 1991", "law")
BODY = Source("NIOSH on electrocution: 16 mA no letting go, 20 mA no breath, 100 mA heart; seen quoted", "published")
SKIN = Source("NIOSH 98-131: 1000 ohm through wet skin", "from memory")

_SOURCES = (VOLTS, WET, BODY, SKIN, LEADS, BONDING, safety_sources.RETURN)
_ALWAYS = ("gloves", "leads", "work-clamp", "off")
_OF_SUPPLY = {"mains": ("plug",), "generator": ("bond",), "engine": ("frame",)}
_OF_PLACE = {"dry": (), "wet": ("mat", "rain", "gfci"), "cramped": ("mat", "outside", "gfci")}


def _answer(given: Given) -> Answer:
    alternating = given.word("output") == "ac"
    most = (facts.BY_HAND if given.word("moved") == "hand" else facts.BY_MACHINE)[0 if alternating else 1]
    results: list[object] = [Number("most_voltage", most, "open_circuit_voltage")]
    if alternating and given.word("place") != "dry":
        results.insert(0, Number("wet_voltage", facts.WET_AC, "open_circuit_voltage"))
    volts = given.number("open_circuit_voltage") if given.has("open_circuit_voltage") else most
    current = shock_limits.body_current(volts, facts.WET_SKIN)
    shown = {
        "volts": Measured(volts, "open_circuit_voltage"),
        "skin": Measured(facts.WET_SKIN, "lead_resistance", unit="ohm"),
        "current": Measured(current, "body_current"),
        "let_go": Measured(facts.LET_GO, "body_current"),
        "breathing": Measured(facts.BREATHING, "body_current"),
        "heart": Measured(facts.HEART, "body_current"),
    }
    results.append(Number("body_current", current, in_words=say("shock.body", **shown)))
    results.append(Checklist("before", say("shock.list"), _items(given), say("shock.left")))
    return Answer(
        results=tuple(results),
        working=(say("shock.working.limit"), say("shock.working.body", **shown)),
        notes=(say("shock.note.ripple"), say("shock.note.feeder")),
        cautions=tuple([say("shock.caution." + id) for id in ("kills", "helper", "tingle")]),
        sources=_SOURCES,
        next_questions=(Next("lead-drop", say("shock.next.lead-drop"), ()),),
        verdict=_verdict(given, most, alternating),
    )


def _items(given: Given) -> tuple[tuple[str, Message], ...]:
    ids = _OF_SUPPLY[given.word("supply")] + _ALWAYS + _OF_PLACE[given.word("place")]
    return tuple([(id, say("shock.item." + id)) for id in ids])


def _verdict(given: Given, most: float, alternating: bool) -> Verdict | None:
    if not given.has("open_circuit_voltage"):
        return None
    volts = given.number("open_circuit_voltage")
    shown = {"volts": given.measured("open_circuit_voltage"), "most": Measured(most, "open_circuit_voltage")}
    if ranges.above(volts, most):
        return Verdict("outside", say("shock.verdict.over", **shown), say("shock.remedy.over"))
    if given.word("place") == "dry":
        return Verdict("inside", say("shock.verdict.under", **shown), say("shock.remedy.under"))
    if alternating and not ranges.above(facts.WET_AC, volts):
        return Verdict("outside", say("shock.verdict.wet-ac", **shown), say("shock.remedy.wet-ac"))
    return Verdict("unclear", say("shock.verdict.wet", **shown), say("shock.remedy.wet"))


CALCULATOR = Calculator(
    name="shock",
    fields=(
        Choice("place", ("dry", "wet", "cramped")),
        Choice("supply", ("mains", "generator", "engine")),
        Choice("output", ("dc", "ac"), default="dc"),
        Choice("moved", ("hand", "machine"), default="hand"),
        Quantity("open_circuit_voltage", optional=True, presets=("30 V", "60 V", "80 V"), hint=True),
    ),
    answer=_answer,
    english=ENGLISH,
    sources=_SOURCES,
    place=98,
)
