"""Travel speed: how fast one pass goes so that the wire fed fills the bead, or what bead a timed pass laid."""

import math

from calculators import bead_travel, deposition
from calculators.contract import (
    Answer,
    Calculator,
    Choice,
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
    carry,
    say,
)
from calculators.facts import deposition as facts
from calculators.line_energy import solve_travel

BALANCE = Source("Conservation of mass: the wire fed in is the bead laid down and what spatters", "law")
WORKED = Source(
    'Welding Design, "Pre-Calculating Wire-Feed Speed, Travel Speed, and Voltage", November 2009', "published"
)
TWI_95 = Source(
    'TWI Job Knowledge 95, "Calculating weld volume and weight", July 2008: half the square of the leg', "published"
)
EFFICIENCY = Source(
    "Average deposition efficiencies by gas; inside the span of weldinganswers.com, Which Arc Welding Process is the"
    " Most Efficient",
    "from memory",
)

_SOLID = tuple(row[0] for row in facts.DEPOSITION_EFFICIENCY if row[0] not in facts.CORED)
# What goes with which power of the efficiency: more metal from the same wire lets the arc travel faster.
_POWERS = {"travel_speed": 1.0, "wire_feed_speed": -1.0, "wire_diameter": -0.5, "deposition_efficiency": 0.0}
_MAIN = ("wire_feed_speed", "wire_diameter", "deposition_efficiency", "bead_area", "travel_speed")


# ---------------------------------------------------------------- the question


def _prepare(given: Given) -> None:
    if not given.has("deposition_efficiency"):
        given.fill("deposition_efficiency", deposition.deposition_efficiency(given.word("wire_and_gas"))[0])
    # Leg and area together say what the factor is.
    if not given.has("overweld_factor") and not (given.has("leg") and given.has("bead_area")):
        given.fill("overweld_factor", facts.FILLET_OVERWELD[1])
    if given.has("leg") and given.has("overweld_factor"):
        area = bead_travel.bead_area(given.number("leg"), given.number("overweld_factor"))
        if not given.has("bead_area"):
            given.fill("bead_area", area)
        elif abs(given.number("bead_area") - area) > 0.01 * area:
            shown = Measured(area, "bead_area", None, given.units.get("bead_area"))
            raise Refusal("bead_area", say("travel-speed.refusal.bead", bead=shown))


def _answer(given: Given) -> Answer:
    return Answer(
        results=tuple(_results(given)),
        working=_working(given),
        notes=_notes(given),
        cautions=(say("travel-speed.caution.fusion"), say("travel-speed.caution.procedure"), say("caution.arc")),
        sources=(BALANCE, WORKED, TWI_95, EFFICIENCY),
        next_questions=_next(given),
    )


def _results(given: Given) -> list[Number]:
    solved = given.solved_for
    if solved is None:
        return _compared(given) + _others(given, ("travel_speed",))
    if solved == "bead_area":
        leg = _banded(given, "leg", 0.5, _usual_factor(given))
        return [leg, _banded(given, "bead_area", 1.0, False)] + _others(given, ("bead_area", "leg"))
    return [_banded(given, solved, _POWERS[solved], "bead_area" not in given.typed and _usual_factor(given))] + _others(
        given, (solved,)
    )


def _usual_factor(given: Given) -> bool:
    """Return whether nobody said how full the bead is."""
    return "overweld_factor" in given.made and not ("leg" in given.typed and "bead_area" in given.typed)


def _banded(given: Given, name: str, power: float, by_factor: bool) -> Number:
    """Return a number with its band: it goes with a power of the efficiency, and of the overweld factor against it."""
    least = most = 1.0
    if "deposition_efficiency" not in given.typed:
        share, half_band = deposition.deposition_efficiency(given.word("wire_and_gas"))
        least, most = (share - half_band) / share, min(share + half_band, 1.0) / share
    if by_factor:
        low, usual, high = facts.FILLET_OVERWELD
        least, most = least * usual / high, most * usual / low
    value = given.number(name)
    if least == most or power == 0.0:
        return Number(name, value, figures=3)
    ends = [value * least**power, value * most**power]
    band = say("travel-speed.band-factor" if by_factor else "travel-speed.band")
    return Number(name, value, low=min(ends), high=max(ends), band=band, figures=3)


def _compared(given: Given) -> list[Number]:
    """Return, where nothing is blank, the travel that would fit and the leg that is laid at the travel given."""
    values = {}
    for name in _MAIN:
        values[name] = given.number(name)
    travel = values.pop("travel_speed")
    fits = bead_travel.solve_travel_speed("travel_speed", values)
    values.pop("bead_area")
    values["travel_speed"] = travel
    area = bead_travel.solve_travel_speed("bead_area", values)
    leg = bead_travel.solve_bead("leg", {"bead_area": area, "overweld_factor": given.number("overweld_factor")})
    shown = Measured(travel, "travel_speed", None, given.units.get("travel_speed"))
    return [
        Number("travel_speed", fits, label=say("travel-speed.label.fits")),
        Number("leg_now", leg, "leg", figures=3, label=say("travel-speed.label.leg-now", travel_speed=shown)),
        Number(
            "bead_area_now", area, "bead_area", figures=3, label=say("travel-speed.label.bead-now", travel_speed=shown)
        ),
    ]


def _others(given: Given, shown: tuple[str, ...]) -> list[Number]:
    """Return what else was worked out on the way."""
    found = []
    for name in ("travel_speed", "arc_time", "weld_length", "bead_area", "leg", "overweld_factor"):
        made = name in given.made and name not in shown
        # The usual factor is told in a note; one worked out of leg and area is news.
        if made and not (name == "overweld_factor" and _usual_factor(given)):
            found.append(Number(name, given.number(name), figures=3))
    return found


def _working(given: Given) -> tuple[Message, ...]:
    lines = []
    travel = Measured(given.number("travel_speed"), "travel_speed", 4, "mm/s")
    bead = Measured(given.number("bead_area"), "bead_area", 4, "mm2")
    diameter = given.number("wire_diameter")
    wire = Measured(0.25 * math.pi * diameter * diameter, "bead_area", 4, "mm2")
    if given.has("weld_length") and given.has("arc_time"):
        length, time = given.measured("weld_length"), given.measured("arc_time")
        lines.append(say("travel-speed.working.timed", weld_length=length, arc_time=time, travel_speed=travel))
    leg = Measured(given.number("leg"), "leg", 4, "mm")
    factor = Plain(given.number("overweld_factor"), 4)
    id = "travel-speed.working.bead" if "leg" in given.typed else "travel-speed.working.leg"
    from_leg = say(id, leg=leg, factor=factor, bead=bead)
    shown = Measured(diameter, "wire_diameter", None, "mm")
    main = say(
        "travel-speed.working." + (given.solved_for or "both"),
        feed=Measured(given.number("wire_feed_speed"), "wire_feed_speed", 4, "mm/s"),
        diameter=shown,
        wire=wire,
        efficiency=Plain(given.number("deposition_efficiency"), 3),
        bead=bead,
        travel=travel,
    )
    lines.append(say("travel-speed.working.wire", diameter=shown, wire=wire))
    lines += [main, from_leg] if given.solved_for == "bead_area" else [from_leg, main]
    return tuple(lines)


def _notes(given: Given) -> tuple[Message, ...]:
    notes = []
    if _usual_factor(given):
        notes.append(say("travel-speed.note.overweld", factor=Plain(given.number("overweld_factor"), 3)))
    if "deposition_efficiency" in given.made and given.solved_for != "deposition_efficiency":
        notes.append(
            say("travel-speed.note.efficiency", percent=Plain(given.number("deposition_efficiency") * 100.0, 3))
        )
    notes.append(say("travel-speed.note.leg"))
    notes.append(say("travel-speed.note.timed"))
    notes.append(say("travel-speed.note.solid"))
    return tuple(notes)


def _next(given: Given) -> tuple[Next, ...]:
    feed, diameter = given.measured("wire_feed_speed"), given.measured("wire_diameter")
    wire: tuple[tuple[str, object], ...] = (("wire_feed_speed", feed), ("wire_diameter", diameter))
    questions = [
        Next("heat-input", say("travel-speed.next.heat"), (("travel_speed", given.measured("travel_speed")),)),
        Next("wire-feed", say("travel-speed.next.current"), wire),
    ]
    if "leg" in given.typed:
        carried = (("joint", "fillet"),) + carry("leg", given.measured("leg"), 1.0e-3, 0.05) + wire
        questions.append(Next("joint-fill", say("travel-speed.next.fill"), carried))
    return tuple(questions)


ENGLISH = {
    "title": "Travel speed",
    "question": "How fast do I go for this bead, or what bead did I just lay?",
    "found-by": "ips ipm speed bead timed pass fast slow",
    "lead": "Leave one of feed, wire, bead and travel blank. Time a bead to see what leg it comes to.",
    "field.wire_feed_speed": "Wire feed speed",
    "hint.wire_feed_speed": "What really comes out, not the mark on the dial.",
    "field.wire_diameter": "Wire diameter",
    "field.leg": "Leg of the fillet",
    "hint.leg": "A leg, not a throat. Blank: worked out from the travel.",
    "field.bead_area": "Cross-section of the pass",
    "hint.bead_area": "Instead of a leg, for a pass in a groove.",
    "field.travel_speed": "Travel speed",
    "hint.travel_speed": "Or leave it blank and time a bead below.",
    "field.weld_length": "Length of the timed bead",
    "field.arc_time": "Arc time of it",
    "hint.arc_time": "From arc on to arc off. The timer fills it in.",
    "field.overweld_factor": "Overweld factor",
    "hint.overweld_factor": "Metal laid down over the bare triangle. Blank: 1.2.",
    "field.wire_and_gas": "Wire and gas",
    "option.wire_and_gas.solid-argon-rich": "Solid, argon-rich, spray",
    "option.wire_and_gas.solid-argon-25-carbon-dioxide": "Solid, 75 argon 25 CO₂",
    "option.wire_and_gas.solid-carbon-dioxide": "Solid, CO₂",
    "field.deposition_efficiency": "Deposition efficiency",
    "hint.deposition_efficiency": "Blank: the usual of this gas.",
    "result.travel_speed": "Travel speed",
    "result.leg": "Leg it comes to",
    "result.bead_area": "Cross-section of the pass",
    "result.wire_feed_speed": "Wire feed speed",
    "result.wire_diameter": "Wire diameter",
    "result.deposition_efficiency": "Deposition efficiency",
    "result.overweld_factor": "Overweld factor",
    "result.arc_time": "Arc time",
    "result.weld_length": "Length",
    "label.fits": "Travel speed for that bead",
    "label.leg-now": "Leg at {travel_speed}",
    "label.bead-now": "Cross-section at {travel_speed}",
    "band": "From how much of the wire spatters.",
    "band-factor": "From how full a bead is laid by hand, and how much of the wire spatters.",
    "working.timed": "Travel = length ÷ arc time = {weld_length} ÷ {arc_time} = {travel_speed}",
    "working.wire": "Wire area = π/4 × diameter² = π/4 × ({diameter})² = {wire}",
    "working.bead": "Bead = factor × ½ × leg² = {factor} × ½ × ({leg})² = {bead}",
    "working.leg": "Leg of a fillet of that much metal = √(2 × bead ÷ factor) = √(2 × {bead} ÷ {factor}) = {leg}",
    "working.travel_speed": "Travel = feed × wire area × efficiency ÷ bead = {feed} × {wire} × {efficiency} ÷ {bead} = {travel}",
    "working.bead_area": "Bead = feed × wire area × efficiency ÷ travel = {feed} × {wire} × {efficiency} ÷ {travel} = {bead}",
    "working.wire_feed_speed": "Feed = travel × bead ÷ (wire area × efficiency) = {travel} × {bead} ÷ ({wire} × {efficiency}) = {feed}",
    "working.wire_diameter": "Wire area = travel × bead ÷ (feed × efficiency) = {travel} × {bead} ÷ ({feed} × {efficiency}) = {wire}",
    "working.deposition_efficiency": "Efficiency = travel × bead ÷ (feed × wire area) = {travel} × {bead} ÷ ({feed} × {wire}) = {efficiency}",
    "working.both": "Metal in = feed × wire area × efficiency = {feed} × {wire} × {efficiency}; metal out = travel × bead = {travel} × {bead}",
    "refusal.bead": "Leg and overweld factor make a bead of {bead}. Leave one of the three blank",
    "note.overweld": "A real fillet takes about {factor} times its triangle. Common for hand welding; type your own if you know it.",
    "note.efficiency": "{percent} % of the wire is taken to become weld metal.",
    "note.leg": "The leg is that of an equal fillet between square plates. Leg is not throat: leg = 1.41 × throat.",
    "note.timed": "To time a bead: mark a length, run it as you mean to, stop the clock at the end. Measure the leg with a gauge as well.",
    "note.solid": "Solid wire only: a cored wire holds less metal than its diameter says.",
    "caution.fusion": "The balance gives the size of a bead, not its fusion. Too slow, the puddle runs ahead of the arc and laps cold; too fast, it undercuts.",
    "caution.procedure": "Where a procedure (WPS) gives a travel speed, it rules: this speed may be outside it.",
    "next.heat": "How much heat goes in at this travel?",
    "next.current": "What current does this feed draw?",
    "next.fill": "How much wire does the whole weld take?",
}

CALCULATOR = Calculator(
    name="travel-speed",
    fields=(
        Quantity(
            "wire_feed_speed",
            hint=True,
            presets=("200 in/min", "300 in/min", "400 in/min", "5 m/min", "8 m/min"),
        ),
        Quantity(
            "wire_diameter",
            high=2.5,
            presets=("0.030 in", "0.035 in", "0.045 in", "0.8 mm", "1 mm", "1.2 mm"),
        ),
        Quantity(
            "leg", hint=True, low=0.5, high=40.0, presets=("1/8 in", "3/16 in", "1/4 in", "5/16 in", "5 mm", "6 mm")
        ),
        Quantity("bead_area", hint=True, low=0.5, high=400.0),
        Quantity(
            "travel_speed", hint=True, presets=("8 in/min", "10 in/min", "12 in/min", "16 in/min", "4 mm/s", "6 mm/s")
        ),
        Quantity("weld_length", optional=True, presets=("6 in", "12 in", "200 mm")),
        Quantity("arc_time", "pass_time", optional=True, hint=True, timer=True),
        Quantity("overweld_factor", hint=True, presets=("1", "1.2", "1.4")),
        Choice("wire_and_gas", _SOLID, default="solid-argon-25-carbon-dioxide"),
        Quantity("deposition_efficiency", hint=True),
    ),
    relations=(
        Relation(
            ("travel_speed", "weld_length", "arc_time"),
            solve_travel,
            check="travel_speed",
            required=False,
            its_own=("weld_length", "arc_time"),
        ),
        Relation(_MAIN, bead_travel.solve_travel_speed, check="travel_speed", agree_within=0.05),
        Relation(
            ("leg", "overweld_factor", "bead_area"),
            bead_travel.solve_bead,
            check="",
            required=False,
            its_own=("leg", "overweld_factor", "bead_area"),
        ),
    ),
    prepare=_prepare,
    answer=_answer,
    english=ENGLISH,
    sources=(BALANCE, WORKED, TWI_95, EFFICIENCY),
    place=34,
)
