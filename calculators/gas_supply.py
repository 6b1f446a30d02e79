"""Gas supply: how long a cylinder lasts, or the flow, the pressure or the size that makes it last.

The gas is in gas_density.py, cylinder_contents.py, liquid_carbon_dioxide.py and usable_gas.py, what is known of a
supply and how surely in cylinder_supply.py; here is how it is asked and told.
"""

from calculators import gas_supply_working, numerals, units, usable_gas
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
    Table,
    Verdict,
    Words,
    say,
)
from calculators.cylinder_contents import arc_time
from calculators.cylinder_gas import COMPRESSED, GAS, LIQUID, SHARES, CylinderGas
from calculators.cylinder_supply import (
    COLD,
    GAUGE_ERROR,
    NAMED,
    UNNAMED,
    USUAL_RESERVE,
    USUAL_TEMPERATURE,
    Supply,
)
from calculators.drawings import gas_bars
from calculators.facts.gas_state import CARBON_DIOXIDE_REFERENCE_DENSITY, STANDARD_ATMOSPHERE
from calculators.gas_density import CARBON_DIOXIDE as CARBON_DIOXIDE_GAS
from calculators.gas_density import HIGHEST_GAUGE_PRESSURE
from calculators.gas_supply_sources import (
    ARC_SHARE,
    ARGON,
    ARMY,
    CARBON_DIOXIDE,
    FILLING,
    GAUGE,
    INSTRUMENTS,
    LIGHT,
    MIXES,
    RESERVE,
    SIZES,
)
from calculators.gas_supply_words import ENGLISH
from calculators.joints_left import JointsLeft
from calculators.liquid_carbon_dioxide import HIGHEST_TEMPERATURE, gas_volume_of_mass, vapour_pressure
from calculators.ranges import OutOfRange
from calculators.vapour_table import VapourTable

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

_FLOWS = (("ft3/h", (20.0, 25.0, 30.0, 35.0, 40.0)), ("L/min", (10.0, 12.0, 15.0, 18.0, 20.0)))
_FROSTING_FLOW = units.to_coherent(25.0, "ft3/h")  # TC 9-237: the most to draw from one carbon dioxide cylinder
_LEAST_ARC, _MOST_ARC = 0.10, 0.20  # share of the hours with the arc on, field repair


# ---------------------------------------------------------------- the relations


def _prepare(given: Given) -> None:
    if not given.has("cylinder_temperature"):
        given.fill("cylinder_temperature", USUAL_TEMPERATURE)
    if given.word("gas") == LIQUID:
        return
    CylinderGas.fill(given, say("gas-supply.refusal.mix"))
    for name, taken in (("reserve", 0.0), ("cylinder_count", 1.0)):
        if not given.has(name):
            given.fill(name, taken)
    for name, size, _ in NAMED:
        if given.word("cylinder") == name:
            given.fill("cylinder_water_volume", size)
    if given.has("cylinder_pressure"):
        _require_gas_above_reserve(given)


def _require_gas_above_reserve(given: Given) -> None:
    if numerals.settle(given.number("cylinder_pressure")) > numerals.settle(given.number("reserve")):
        return
    pressure = given.measured("cylinder_pressure")
    reserve = given.measured("reserve", "cylinder_pressure")
    raise Refusal("reserve", say("gas-supply.refusal.reserve", pressure=pressure, reserve=reserve))


def _any(given: Given, names: tuple[str, ...]) -> bool:
    return any(given.has(name) for name in names)


def _weighed(given: Given) -> bool:
    return _any(given, ("cylinder_mass", "tare"))


def _by_mass(given: Given) -> bool:
    return given.word("gas") == LIQUID


def _by_pressure(given: Given) -> bool:
    if given.word("gas") == LIQUID:
        return False
    return _any(given, ("cylinder_pressure", "cylinder_water_volume")) or not _any(
        given, ("gas_volume", "gas_flow", "arc_time")
    )


def _by_time(given: Given) -> bool:
    """Flow and time are not asked for where what there is can be told without them."""
    return _any(given, ("gas_flow", "arc_time", "joint_time")) or not _any(
        given, ("gas_volume", "gas_mass", "cylinder_mass", "cylinder_pressure", "cylinder_water_volume")
    )


def _solve_mass(unknown: str, values: "dict[str, Any]") -> float:
    if unknown == "cylinder_mass":
        return values["tare"] + values["gas_mass"]
    net = values["cylinder_mass"] - values["gas_mass" if unknown == "tare" else "tare"]
    if numerals.settle(net) <= 0.0:
        raise Refusal("cylinder_mass", say("gas-supply.refusal.tare"))
    return net


def _solve_liquid(unknown: str, values: "dict[str, Any]") -> float:
    if unknown == "gas_volume":
        return gas_volume_of_mass(values["gas_mass"])
    return values["gas_volume"] * CARBON_DIOXIDE_REFERENCE_DENSITY


def _solve_cylinder(unknown: str, values: "dict[str, Any]") -> float:
    chosen = CylinderGas(values)
    gas = (values["reserve"], values["cylinder_temperature"], chosen.fraction, chosen.second)
    count = values["cylinder_count"]
    if unknown == "gas_volume":
        return usable_gas.usable_gas_volume(values["cylinder_water_volume"] * count, values["cylinder_pressure"], *gas)
    if unknown == "cylinder_water_volume":
        return usable_gas.water_volume_needed(values["gas_volume"], values["cylinder_pressure"], *gas) / count
    try:
        return usable_gas.pressure_to_start(values["gas_volume"], values["cylinder_water_volume"] * count, *gas)
    except OutOfRange as error:
        if error.name != "gas_volume":
            raise
        wanted = Measured(error.value, "gas_volume")
        highest = Measured(HIGHEST_GAUGE_PRESSURE, "cylinder_pressure")
        most = Measured(error.high or 0.0, "gas_volume")
        raise Refusal(
            "cylinder", say("gas-supply.refusal.too-much", gas_volume=wanted, most=most, pressure=highest)
        ) from None


def _solve_time(unknown: str, values: "dict[str, Any]") -> float:
    if unknown == "gas_volume":
        return values["gas_flow"] * values["arc_time"]
    if unknown == "gas_flow":
        return values["gas_volume"] / values["arc_time"]
    return arc_time(values["gas_volume"], values["gas_flow"])


# ---------------------------------------------------------------- the answer


def _answer(given: Given) -> Answer:
    supply = Supply(given)
    joints = JointsLeft(supply)
    headline = "arc_time" if supply.judged else given.solved_for or "gas_volume"
    results: list[object] = [_likely(supply, headline, _reserve(supply))]
    if headline == "cylinder_water_volume":
        results += _next_size(given)
    if headline != "gas_volume":
        results.append(_likely(supply, "gas_volume"))
    elif supply.needed and not supply.liquid:
        results += _smallest(supply)
    for name in ("arc_time", "gas_flow", "cylinder_pressure", "gas_mass"):
        if name in given.made and name != headline:
            results.append(_likely(supply, name))
    results += joints.results(say("gas-supply.band.joints"))
    if supply.judged:
        results.append(_bars(supply))
    if not supply.needed and headline != "gas_flow":
        results.append(_minutes(supply))
    if supply.liquid:
        results.append(VapourTable())
    return Answer(
        results=tuple(results),
        working=gas_supply_working.Working(supply).lines() + tuple(joints.working()),
        notes=_notes(supply),
        cautions=_cautions(supply),
        sources=_sources(supply),
        next_questions=_next(supply),
        verdict=_verdict(supply),
    )


_QUANTITIES = {"cylinder_mass": "gas_mass", "tare": "gas_mass"}


def _likely(supply: Supply, name: str, beside: Message | None = None) -> Number:
    """Return a number of the answer with its band, what stands beside it and, a long time, in hours."""
    value = supply.lasting() if name == "arc_time" else supply.given.number(name)
    band = supply.band(name)
    label = say("gas-supply.result.gas_volume-needed") if name == "gas_volume" and supply.needed else None
    return Number(
        name,
        value,
        _QUANTITIES.get(name),
        low=None if band is None else band[0],
        high=None if band is None else band[1],
        band=None if band is None else say("gas-supply.band", parts=_listed(band[2])),
        label=label,
        in_words=_beside(_in_hours(value) if name == "arc_time" else None, beside),
    )


def _listed(parts: tuple[str, ...]) -> Message:
    gauge = Measured(GAUGE_ERROR, "cylinder_pressure", 2)
    names = [say("gas-supply.band." + part, gauge=gauge) for part in parts]
    listed = names[-1]
    for name in reversed(names[:-1]):
        listed = say("list.comma", first=name, rest=listed)
    return listed


def _beside(first: Message | None, rest: Message | None) -> Message | None:
    return say("gas-supply.beside", first=first, rest=rest) if first and rest else first or rest


def _in_hours(time: float) -> Message | None:
    minutes = int(numerals.settle(time / 60.0) + 0.5)
    return None if minutes < 90 else say("gas-supply.hours", hours=minutes // 60, minutes=minutes % 60)


def _next_size(given: Given) -> list[Words]:
    size = numerals.settle(given.number("cylinder_water_volume"))
    larger = sorted((each, name) for name, each, _ in NAMED if numerals.settle(each) >= size)
    return [Words("next_size", say("gas-supply.option.cylinder." + larger[0][1]))] if larger else []


def _smallest(supply: Supply) -> list[Words]:
    """Return the smallest cylinder by name that gives the gas needed when it is full."""
    for name, _, _ in NAMED:
        full = supply.full(name)
        if full is not None and numerals.settle(full) >= numerals.settle(supply.volume):
            return [Words("smallest_size", say("gas-supply.option.cylinder." + name))]
    return [Words("smallest_size", say("gas-supply.no-size"))]


def _bars(supply: Supply) -> object:
    need = supply.given.number("gas_flow") * supply.given.number("arc_time")
    band = supply.band("arc_time")
    low, high = (1.0, 1.0) if band is None else (band[0] / supply.lasting(), band[1] / supply.lasting())
    have_shown = Measured(supply.volume, "gas_volume")
    need_shown = Measured(need, "gas_volume")
    return gas_bars.draw(
        (supply.volume, supply.volume * low, supply.volume * high),
        need,
        (say("gas-supply.bars.have", gas_volume=have_shown), say("gas-supply.bars.need", gas_volume=need_shown)),
        say("gas-supply.bars.scale"),
        say("gas-supply.bars"),
        say("gas-supply.bars.description", have=have_shown, need=need_shown),
    )


def _minutes(supply: Supply) -> Table:
    unit = "L/min" if supply.given.units.get("gas_flow") == "L/min" else "ft3/h"
    other = "ft3/h" if unit == "L/min" else "L/min"
    rows = []
    for flow in dict(_FLOWS)[unit]:
        rate = units.to_coherent(flow, unit)
        lasting = Measured(arc_time(supply.volume, rate), "arc_time", None, "min")
        rows.append((Measured(rate, "gas_flow", None, unit), Measured(rate, "gas_flow", None, other), lasting))
    columns = tuple(say("gas-supply.column." + name) for name in ("flow", "or", "lasts"))
    return Table("minutes", say("gas-supply.minutes"), columns, tuple(rows))


# ---------------------------------------------------------------- verdict


def _verdict(supply: Supply) -> Verdict | None:
    if supply.judged:
        return _enough(supply)
    full = supply.full(supply.given.word("cylinder")) if supply.needed and not supply.liquid else None
    if full is None:
        return None
    shown = Measured(full, "gas_volume")
    state = _state(supply.volume, full * 0.9, full * 1.1)
    return Verdict(state, say("gas-supply.verdict.full." + state, full=shown))


def _state(need: float, low: float, high: float) -> str:
    if numerals.settle(need) <= numerals.settle(low):
        return "inside"
    return "outside" if numerals.settle(need) > numerals.settle(high) else "unclear"


def _enough(supply: Supply) -> Verdict:
    """Return whether the gas there is lasts the arc time, as surely as gauge and flow meter can tell."""
    given = supply.given
    wanted, lasting = given.number("arc_time"), supply.lasting()
    band = supply.band("arc_time")
    state = _state(wanted, lasting if band is None else band[0], lasting if band is None else band[1])
    unit = given.units.get("arc_time")
    left = Measured(abs(lasting - wanted), "arc_time", None, unit)
    short = numerals.settle(lasting) < numerals.settle(wanted)
    id = "gas-supply.verdict." + state + ("-short" if state == "unclear" and short else "")
    message = say(id, arc_time=given.measured("arc_time"), left=left)
    return Verdict(state, message, _remedy(supply, short))


def _remedy(supply: Supply, short: bool) -> Message:
    """Return what the gauge will show at the end or what it would take."""
    given = supply.given
    need = given.number("gas_flow") * given.number("arc_time")
    if supply.liquid and given.has("gas_mass"):
        mass = Measured(need * CARBON_DIOXIDE_REFERENCE_DENSITY, "gas_mass", None, given.units.get("gas_mass"))
        return say("gas-supply.remedy.mass", gas_mass=mass)
    if not supply.from_gauge:
        return say("gas-supply.remedy.volume", gas_volume=Measured(need, "gas_volume"))
    pressure = supply.pressure_for(need) if short else supply.pressure_at_end()
    if pressure is None:
        return say("gas-supply.remedy.second")
    shown = Measured(pressure, "cylinder_pressure", None, given.units.get("cylinder_pressure"))
    return say("gas-supply.remedy.start" if short else "gas-supply.remedy.end", pressure=shown)


# ---------------------------------------------------------------- notes, cautions, sources, next


def _notes(supply: Supply) -> tuple[Message, ...]:
    given = supply.given
    notes = _notes_on_liquid(supply) if supply.liquid else []
    if supply.in_cylinder:
        notes += _notes_on_pressure(supply)
    if given.word("gas") == "argon-oxygen":
        notes.append(say("gas-supply.note.oxygen"))
    if "helium" in given.made:
        notes.append(say("gas-supply.note.helium"))
    if given.has("arc_time"):
        time = given.number("arc_time") if supply.needed or "arc_time" not in given.made else supply.lasting()
        least = Measured(time / _MOST_ARC, "arc_time", 2, "h")
        most = Measured(time / _LEAST_ARC, "arc_time", 2, "h")
        notes.append(say("gas-supply.note.clock", least=least, most=most))
    notes.append(say("gas-supply.note.losses"))
    notes.append(say("gas-supply.note.reference"))
    return tuple(notes)


def _notes_on_liquid(supply: Supply) -> list[Message]:
    given = supply.given
    notes = []
    temperature = Measured(supply.temperature, "cylinder_temperature", None, given.units.get("cylinder_temperature"))
    if numerals.settle(supply.temperature) > numerals.settle(HIGHEST_TEMPERATURE):
        notes.append(say("gas-supply.note.no-liquid", temperature=temperature))
    else:
        shows = Measured(vapour_pressure(supply.temperature) - STANDARD_ATMOSPHERE, "cylinder_pressure")
        left = Plain(usable_gas.charge_left_when_gauge_falls(supply.temperature) * 100.0, 2)
        notes.append(say("gas-supply.note.liquid", temperature=temperature, pressure=shows, percent=left))
    flow = given.number("gas_flow") if given.has("gas_flow") else None
    if flow is None or numerals.settle(flow) > numerals.settle(_FROSTING_FLOW):
        notes.append(say("gas-supply.note.frost", gas_flow=Measured(_FROSTING_FLOW, "gas_flow", 2)))
    return notes


def _notes_on_pressure(supply: Supply) -> list[Message]:
    given = supply.given
    notes = []
    if "cylinder_temperature" in given.made:
        cold = supply.usable_at(COLD) / supply.usable - 1.0
        taken = Measured(supply.temperature, "cylinder_temperature")
        colder = Measured(COLD, "cylinder_temperature")
        percent = Plain(cold * 100.0, 2)
        notes.append(say("gas-supply.note.temperature", temperature=taken, cold=colder, percent=percent))
    return notes


def _reserve(supply: Supply) -> Message | None:
    """Return that the headline keeps nothing back, where it does not: nobody is to read that three screens below."""
    given = supply.given
    if not supply.in_cylinder or "reserve" not in given.made:
        return None
    if supply.needed:
        return say("gas-supply.no-reserve.needed")
    if not _could_keep_reserve(supply):
        return say("gas-supply.no-reserve.low")
    kept = supply.usable - supply.usable_above(USUAL_RESERVE)
    reserve = Measured(USUAL_RESERVE, "cylinder_pressure", 2, given.units.get("cylinder_pressure"))
    return say("gas-supply.no-reserve", reserve=reserve, gas_volume=Measured(kept, "gas_volume", 2))


def _could_keep_reserve(supply: Supply) -> bool:
    if not supply.in_cylinder or "reserve" not in supply.given.made:
        return False
    return supply.needed or numerals.settle(supply.pressure) > numerals.settle(USUAL_RESERVE)


def _cautions(supply: Supply) -> tuple[Message, ...]:
    cautions = [say("caution.cylinder"), say("caution.valve")]
    if supply.liquid:
        cautions.append(say("gas-supply.caution.carbon-dioxide"))
    elif supply.given.number("cylinder_count") > 1.0:
        cautions.append(say("gas-supply.caution.manifold"))
    if "cylinder_pressure" in supply.given.made:
        cautions.append(say("gas-supply.caution.stamp"))
    cautions += [say("gas-supply.caution.regulator"), say("gas-supply.caution.supplier")]
    return tuple(cautions)


def _sources(supply: Supply) -> tuple[Source, ...]:
    given = supply.given
    sources = [CARBON_DIOXIDE, FILLING, ARMY] if supply.liquid else []
    if supply.in_cylinder:
        light = supply.second != CARBON_DIOXIDE_GAS
        sources += [LIGHT] if light else [MIXES] if supply.fraction > 0.0 else [ARGON]
        sources += [GAUGE, RESERVE]
    if not supply.liquid and (supply.needed or given.word("cylinder") != UNNAMED):
        sources.append(SIZES)
    return tuple(sources + [INSTRUMENTS, ARC_SHARE])


def _next(supply: Supply) -> tuple[Next, ...]:
    given = supply.given
    questions = []
    if _could_keep_reserve(supply):
        carried: list[tuple[str, object]] = []
        for field in CALCULATOR.fields:
            if isinstance(field, Choice) and given.word(field.name):
                carried.append((field.name, given.word(field.name)))
            elif isinstance(field, Quantity) and field.name in given.typed:
                carried.append((field.name, given.measured(field.name, field.quantity.name)))
        carried.append(("reserve", Measured(USUAL_RESERVE, "cylinder_pressure")))
        questions.append(Next("gas-supply", say("gas-supply.next.reserve"), tuple(carried)))
    if supply.from_gauge:
        share = "helium" if supply.second == "helium" else "carbon_dioxide"
        gas: list[tuple[str, object]] = [("gas", given.word("gas")), ("cylinder", given.word("cylinder"))]
        if share in given.typed:
            gas.append((share, given.measured(share, "percentage")))
        if "cylinder_water_volume" in given.typed:
            gas.append(("cylinder_water_volume", given.measured("cylinder_water_volume")))
        gas.append(("start_pressure", given.measured("cylinder_pressure")))
        questions.append(Next("leak-test", say("gas-supply.next.leak"), tuple(gas)))
    if given.has("arc_time"):
        questions.append(Next("spool-life", say("gas-supply.next.wire"), (("arc_time", given.measured("arc_time")),)))
    return tuple(questions)


CALCULATOR = Calculator(
    name="gas-supply",
    fields=(
        GAS,
        SHARES[0],
        SHARES[1],
        Choice("cylinder", (UNNAMED,) + tuple(name for name, _, _ in NAMED), default=UNNAMED, when=("gas", COMPRESSED)),
        Quantity("cylinder_water_volume", when=("cylinder", (UNNAMED,)), hint=True),
        Quantity(
            "cylinder_pressure",
            when=("gas", COMPRESSED),
            low=0.1,
            presets=("2000 psi", "1500 psi", "1000 psi", "500 psi", "200 bar", "150 bar", "100 bar", "50 bar"),
        ),
        Quantity("cylinder_mass", "gas_mass", when=("gas", (LIQUID,)), hint=True),
        Quantity("tare", "gas_mass", when=("gas", (LIQUID,))),
        Quantity(
            "gas_mass", when=("gas", (LIQUID,)), hint=True, low=0.05, presets=("20 lb", "50 lb", "10 kg", "20 kg")
        ),
        Quantity(
            "gas_flow",
            presets=(
                "20 ft3/h",
                "25 ft3/h",
                "30 ft3/h",
                "35 ft3/h",
                "40 ft3/h",
                "10 L/min",
                "12 L/min",
                "15 L/min",
                "18 L/min",
            ),
        ),
        Quantity("arc_time", hint=True, presets=("15 min", "30 min", "60 min")),
        Quantity(
            "reserve", "cylinder_pressure", optional=True, when=("gas", COMPRESSED), presets=("200 psi", "15 bar")
        ),
        Quantity(
            "cylinder_temperature",
            optional=True,
            hint=True,
            presets=("32 degF", "70 degF", "95 degF", "0 degC", "20 degC", "35 degC"),
        ),
        Quantity("gas_volume", hint=True, low=0.01),
        Quantity("joint_time", "arc_time", optional=True, hint=True, presets=("1 min", "2 min", "5 min")),
        Quantity(
            "cylinder_count", "count", optional=True, whole=True, when=("gas", COMPRESSED), high=4.0, presets=("2",)
        ),
    ),
    relations=(
        Relation(("cylinder_mass", "tare", "gas_mass"), _solve_mass, check="gas_mass", takes_part=_weighed),
        Relation(("gas_mass", "gas_volume"), _solve_liquid, check="gas_volume", takes_part=_by_mass),
        Relation(
            ("cylinder_water_volume", "cylinder_pressure", "gas_volume"),
            _solve_cylinder,
            check="gas_volume",
            takes_part=_by_pressure,
            also=("reserve", "cylinder_temperature", "gas", "carbon_dioxide", "helium", "cylinder_count"),
        ),
        # Not checked: with flow, time and gas all known the answer says whether the gas lasts.
        Relation(("gas_volume", "gas_flow", "arc_time"), _solve_time, check="", takes_part=_by_time),
    ),
    prepare=_prepare,
    answer=_answer,
    english=ENGLISH,
    sources=(
        ARGON,
        MIXES,
        LIGHT,
        CARBON_DIOXIDE,
        FILLING,
        GAUGE,
        INSTRUMENTS,
        SIZES,
        RESERVE,
        ARC_SHARE,
        ARMY,
    ),
    place=60,
    fold_from="joint_time",
)
