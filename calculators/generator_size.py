"""Generator or outlet: whether it carries a setting, up to how many amps, and what rating a setting takes."""

from calculators import numerals, ranges
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
    Relation,
    Source,
    Verdict,
    Words,
    say,
)
from calculators.facts import supply as facts
from calculators.generator_size_words import ENGLISH
from calculators.supply_case import LEAST, MOST, OTHERS, USUAL, Balance, Load

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

DEFINITION = Source("Apparent power = power out ÷ (efficiency × power factor)", "law")
KINDS = Source("Efficiency and power factor by kind of machine", "from memory")
ECODESIGN = Source(
    "Commission Regulation (EU) 2019/1784: efficiency of 80 % for single-phase machines, 50 W idle; seen quoted", "law"
)
LINE = Source("IEC 60974-1, clause 11.2: 14 V + 0.05 V for each A, for ratings; seen in use, not read", "standard")
EFFECTIVE = Source("NEC 630.12, note on the effective supply current; seen quoted, edition 2008", "standard")
ROOM = Source("25 to 50 % of room over the running load", "common practice")
CIRCUIT = Source("NEC 210.23(A)(1): one machine takes 80 % of a circuit; NEC 210.19, note: 5 % lost", "from memory")
CORDS = Source(
    "NEC Table 400.5(A), two wires carrying: 14 AWG 18 A, 12 AWG 25 A; seen quoted, thicker ones from memory",
    "standard",
)
ARMY = Source("ARMY TM 9-6115-673-13&P, table 2-3: 1.3 % for 100 m of height, 3 % for 10 °C", "published")
DERATING = Source("3.5 % for 300 m of height, 1 % for 5.5 °C above 25 °C", "from memory")
BREAKER = Source("UL 489: a breaker trips within 2 to 4 minutes at twice its current", "from memory")
FUMES = Source("OSHA 4105-11, 2020: carbon monoxide of portable generators", "published")

_SOURCES = (DEFINITION, KINDS, ECODESIGN, LINE, EFFECTIVE, ROOM, CIRCUIT, BREAKER, CORDS, ARMY, DERATING, FUMES)
_GENERATORS = ("generator-240", "generator-120")
_BREAKERS = {name: volts * amperes for name, volts, amperes in facts.SUPPLIES}
_CORDS = tuple([name for name, _, _ in facts.CORDS])


# ---------------------------------------------------------------- what is asked


def _prepare(given: Given) -> None:
    supply = given.word("supply")
    if supply not in _GENERATORS:
        given.fill("generator_power", _BREAKERS[supply])


def _solve(unknown: str, values: "dict[str, Any]") -> float:
    return Balance(values).solved(unknown)


# ---------------------------------------------------------------- the answer


def _answer(given: Given) -> Answer:
    load = Load(given)
    generator = given.word("supply") in _GENERATORS
    cautions = ["fumes", "backfeed"] if generator else []
    if load.cord.told:
        cautions.append("cord")
    return Answer(
        results=tuple(_results(given, load)),
        working=_working(given, load),
        notes=_notes(given, load),
        cautions=tuple([say("generator-size.caution." + each) for each in cautions + ["shock", "electrician"]]),
        sources=_sources(given, load),
        next_questions=_next(given, load),
        verdict=_verdict(given, load),
    )


def _sources(given: Given, load: Load) -> tuple[Source, ...]:
    generator = given.word("supply") in _GENERATORS
    used = [DEFINITION, KINDS, ECODESIGN, ROOM]
    if not given.has("voltage"):
        used.append(LINE)
    if given.has("duty_cycle"):
        used.append(EFFECTIVE)
    if given.has("altitude") or given.has("air_temperature"):
        used += [DERATING, ARMY]
    if not generator or load.cord.told:
        used.append(CIRCUIT)
    if load.cord.told:
        used.append(CORDS)
    used.append(FUMES if generator else BREAKER)
    return tuple(used)


def _results(given: Given, load: Load) -> list[object]:
    current = Measured(load.current, "current")
    results: list[object] = [_headline(given, load)]
    if load.cord.told:
        results += _cord(given, load)
    results.append(
        Number("apparent_power", load.apparent, figures=3, label=say("generator-size.label.drawn", current=current))
    )
    results.append(Number("real_power", load.real, "arc_power", figures=3))
    results.append(Number("supply_current", load.drawn, "current"))
    if given.has("duty_cycle"):
        results.append(Number("heating_current", load.heating, "current"))
    if (given.has("altitude") or given.has("air_temperature")) and given.solved_for != "generator_power":
        usual, worst = load.rating * load.room.left, load.rating * load.room.worst
        band = say("generator-size.band-derating")
        low, high = min(usual, worst), max(usual, worst)
        results.append(Number("derated_power", usual, "generator_power", low, high, band))
    return results


def _cord(given: Given, load: Load) -> list[object]:
    """Return what the cord loses, and the size that stands what the headline says."""
    found: list[object] = []
    if load.cord.size and load.cord.length is not None:
        found.append(Number("cord_drop", load.cord.drop(load.drawn), "voltage_drop"))
    current, size = load.cord_for(given.solved_for)
    label = say("generator-size.label.cord", current=Measured(current, "current"))
    found.append(Words("cord_needed", _wires(size), label))
    return found


def _headline(given: Given, load: Load) -> Number:
    """Return the rating needed, or the most current that the supply has room for."""
    name = "generator_power" if given.solved_for == "generator_power" else "current"
    value, low, high = [load.balance.solved(name, which) for which in (USUAL, LEAST, MOST)]
    found = Number(name, value)
    if ranges.above(max(low, high), min(low, high)):
        found = Number(name, value, None, min(low, high), max(low, high), say("generator-size.band"))
    if name == "current" and load.limited:
        found.label = say("generator-size.label.through")
    if load.cord.told:
        found.in_words = _warning(given, load)
    return found


def _warning(given: Given, load: Load) -> Message:
    """Return what has to be said of the cord beside the number."""
    if load.cord.size:
        return say("generator-size.cord.own")
    size = load.cord_for(given.solved_for)[1]
    return say("generator-size.cord.take", size=_wires(size)) if size else say("generator-size.remedy.no-cord")


def _wires(size: str) -> Message:
    return say("generator-size.option.cord_size." + size) if size else say("generator-size.cord.none")


def _verdict(given: Given, load: Load) -> Verdict | None:
    asked = given.solved_for is None
    state = load.state() if asked else "inside"
    shown: dict[str, object] = {
        "current": Measured(load.current, "current"),
        "margin": Plain(load.room.margin * 100.0, 3),
        "drawn": Measured(load.drawn, "current"),
        "breaker": Measured(load.breaker, "current"),
        "apparent": Measured(load.apparent, "apparent_power", 3),
        "given": Measured(load.rating * load.room.left, "apparent_power", 3),
        "volts": Measured(load.volts, "voltage"),
    }
    most = say("generator-size.remedy.current", most=Measured(load.balance.solved("current"), "current"))
    if state == "outside":
        return Verdict(
            state, say("generator-size.verdict." + ("outlet" if load.breaker else "generator"), **shown), most
        )
    if load.cord.size and ranges.above(load.drawn, load.cord.most(load.cord.size)):
        thin = ranges.above(load.drawn, load.cord.carried())
        shown["drop"] = Measured(load.cord.drop(load.drawn), "voltage_drop")
        message = say("generator-size.verdict.cord-" + ("thin" if thin else "long"), **shown)
        size = load.cord_for(given.solved_for)[1]
        remedy = say("generator-size.remedy.cord", size=_wires(size)) if size else say("generator-size.remedy.no-cord")
        return Verdict("outside", message, remedy)
    if not asked:
        return None
    if state == "unclear":
        return Verdict(state, say("generator-size.verdict." + ("breaker" if load.breaker else "tight"), **shown), most)
    return Verdict(state, say("generator-size.verdict.inside", **shown))


def _working(given: Given, load: Load) -> tuple[Message, ...]:
    share = given.number("duty_cycle") if given.has("duty_cycle") else 1.0
    rating = Measured(load.rating, "apparent_power", 4)
    shown: dict[str, object] = {
        "amperes": Plain(load.current, 4),
        "current": Measured(load.current, "current", 4),
        "voltage": Measured(load.arc_volts, "voltage", 4),
        "out": Measured(load.current * load.arc_volts, "arc_power"),
        "efficiency": Plain(load.machine.efficiencies[USUAL], 3),
        "factor": Plain(load.machine.factors[USUAL], 3),
        "real": Measured(load.real, "arc_power"),
        "apparent": Measured(load.apparent, "apparent_power", 4),
        "volts": Measured(load.volts, "voltage"),
        "drawn": Measured(load.drawn, "current", 4),
        "share": Plain(share, 3),
        "idle": Measured(load.idle, "current", 3),
        "heating": Measured(load.heating, "current", 4),
        "margin": Plain(load.room.margin, 3),
        "left": Plain(load.room.left, 3),
        "needed": rating,
        "rating": rating,
        "room": Measured(load.room.usable(load.rating), "apparent_power", 4),
        "most": Measured(load.balance.usable() / load.volts, "current", 4),
        "through": Measured(load.balance.usable(), "apparent_power", 4),
    }
    lines = ["out", "real", "apparent", "drawn"]
    if not given.has("voltage"):
        lines.insert(0, "voltage")
    if given.has("duty_cycle"):
        lines.append("heating")
    lines.append("needed" if given.solved_for == "generator_power" else "room")
    if load.limited and given.solved_for != "generator_power":
        lines.append("cord")
    return tuple([say("generator-size.working." + line, **shown) for line in lines])


def _notes(given: Given, load: Load) -> tuple[Message, ...]:
    notes = []
    generator = given.word("supply") in _GENERATORS
    if not (given.has("machine_efficiency") and given.has("power_factor")):
        efficiency = Plain(load.machine.efficiencies[USUAL], 3)
        factor = Plain(load.machine.factors[USUAL], 3)
        notes.append(say("generator-size.note.usual", efficiency=efficiency, factor=factor))
    if generator:
        notes.append(say("generator-size.note.watts"))
        if given.word("power_source") != "transformer":
            notes.append(say("generator-size.note.inverter"))
        if given.word("supply") == "generator-120":
            notes.append(say("generator-size.note.half"))
    if given.has("altitude") or given.has("air_temperature"):
        notes.append(say("generator-size.note.derating"))
    if load.cord.told:
        notes.append(say("generator-size.note.cord"))
    return tuple(notes)


def _next(given: Given, load: Load) -> tuple[Next, ...]:
    """Return what to ask of the current that the supply carries: never of more than that."""
    most = load.current
    if given.solved_for != "generator_power":
        most = min(most, load.balance.solved("current"))
    shown = Measured(most, "current")
    names = ("settings", "duty-cycle", "lead-drop") if numerals.settle(most) >= 20.0 else ("lead-drop",)
    return tuple([Next(name, say("generator-size.next." + name), ((_CARRIED_AS[name], shown),)) for name in names])


_CARRIED_AS = {"settings": "largest_current", "duty-cycle": "current", "lead-drop": "current"}


CALCULATOR = Calculator(
    name="generator-size",
    fields=(
        Choice("supply", tuple([name for name, _, _ in facts.SUPPLIES]), default="generator-240"),
        Quantity(
            "generator_power", when=("supply", _GENERATORS), hint=True, presets=("5500 W", "7500 W", "9500 W", "8 kVA")
        ),
        Quantity("current", hint=True, high=600.0, presets=("90 A", "125 A", "150 A", "200 A")),
        Quantity("voltage", optional=True, hint=True, presets=("18 V", "20 V", "24 V")),
        Choice("power_source", tuple([name for name, _, _ in facts.POWER_SOURCES]), default="inverter", hint=True),
        Quantity("cord_length", "lead_length", optional=True, presets=("25 ft", "50 ft", "100 ft", "25 m")),
        Choice("cord_size", _CORDS, optional=True),
        Quantity("duty_cycle", optional=True, hint=True, presets=("20 %", "30 %", "60 %")),
        Quantity("altitude", optional=True, when=("supply", _GENERATORS), presets=("3000 ft", "6000 ft", "1000 m")),
        Quantity(
            "air_temperature", optional=True, when=("supply", _GENERATORS), presets=("90 degF", "105 degF", "35 degC")
        ),
        Quantity("margin", "percentage", optional=True, hint=True, presets=("25 %", "50 %")),
        Quantity("machine_efficiency", "percentage", optional=True, low=40.0, high=98.0),
        Quantity("power_factor", "ratio", optional=True, hint=True, low=0.3, high=1.0),
    ),
    relations=(
        # Not checked by a share: a generator larger than needed is no disagreement.
        Relation(
            ("current", "generator_power"),
            _solve,
            check="",
            also=OTHERS,
        ),
    ),
    prepare=_prepare,
    answer=_answer,
    english=ENGLISH,
    sources=_SOURCES,
    place=28,
)
