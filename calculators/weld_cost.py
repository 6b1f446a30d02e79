"""Weld cost: what weld metal, a length of weld and the whole job cost, and another way of doing it beside."""

from calculators import numerals
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
    Rows,
    Source,
    Table,
    Words,
    carry,
    say,
)
from calculators.facts import costs, wires
from calculators.facts import deposition as facts
from calculators.melting_law import MeltingLaw
from calculators.weld_cost_case import AROUND, GAS, ROW, SELF_SHIELDED, Way
from calculators.weld_cost_words import ENGLISH

SUMS = Source("Price × amount, rate × time, mass = area × length × density", "law")
NAVY = Source(
    "NAVEDTRA 14251A, US Navy, Steelworker Advanced, chapter 5: labor and overhead about 85 % of the cost of a weld, power"
    " less than 1 %",
    "published",
)
FACTOR = Source(
    "Handbook of Structural Steel Connection Design and Details: operating factor 40 % semiautomatic in a shop, much less"
    " on site",
    "published",
)
USUAL = Source("Operating factor 10 to 20 % in repair; 5 % of wire wasted", "common practice")
RECALLED = Source(
    "Operating factor of the welding alone, 20 to 45 %; deposition efficiencies; 80 % of the power drawn reaches the arc",
    "from memory",
)

_QUANTITIES = {"mass": "cost_per_mass", "length": "cost_per_length", "job": "money"}
_SAME = 0.05  # ways that differ by less are called alike


def _prepare(given: Given) -> None:
    if not given.has("waste"):
        given.fill("waste", wires.WASTE)


# ---------------------------------------------------------------- the answer


def _answer(given: Given) -> Answer:
    found = Way.asked_about(given)
    way = found[0]
    return Answer(
        results=tuple(_results(given, found)),
        working=tuple(_working(given, found)),
        notes=_notes(given, way),
        cautions=(say("weld-cost.caution.price"), say("weld-cost.caution.procedure")),
        sources=(SUMS, NAVY, FACTOR, USUAL, RECALLED),
        next_questions=_next(given, way),
    )


def _results(given: Given, found: list[Way]) -> list[object]:
    way = found[0]
    basis = way.basis()
    results: list[object] = [_banded(_QUANTITIES[basis], way.totals(), "", _band(given))]
    if basis != "mass":
        results.append(_banded("cost_per_mass", (way.least.total, way.usual.total, way.most.total), "", _band(given)))
    results.append(_banded("around_share", way.around_shares(), "percentage", _band(given)))
    if basis == "job":
        results.append(Number("work_time", way.work_time()))
    if len(found) > 1:
        results.append(Words("compared", _compared(way, found[1])))
    return results + [_table(found)]


def _banded(name: str, three: tuple[float, float, float], quantity: str, band: Message) -> Number:
    low, usual, high = three
    figures = 2 if quantity else None
    if numerals.settle(low) == numerals.settle(high):
        return Number(name, usual, quantity or name, figures=figures)
    return Number(name, usual, quantity or name, low, high, band, figures=figures)


def _band(given: Given) -> Message:
    if given.has("operating_factor"):
        return say("weld-cost.band.wire")
    return say("weld-cost.band.arc" if given.has("deposition_efficiency") else "weld-cost.band.both")


def _compared(way: Way, other: Way) -> Message:
    difference = other.totals()[1] - way.totals()[1]
    share = numerals.settle(difference / way.totals()[1])
    if abs(share) < _SAME:
        return say("weld-cost.compared.same")
    money = Measured(abs(difference), _QUANTITIES[way.basis()])
    percent = Plain(abs(share) * 100.0, 2)
    return say("weld-cost.compared.less" if share < 0.0 else "weld-cost.compared.more", money=money, percent=percent)


def _parts(way: Way) -> list[tuple[str, float]]:
    """Return (name, cost) of what the cost is made of, in the table's order."""
    usual, metal = way.usual, way.metal
    return [
        ("wire", usual.wire * metal),
        ("gas", usual.gas * metal),
        ("power", usual.power * metal),
        ("arc-on", usual.arc_on * metal),
        ("arc-off", usual.arc_off * metal),
        ("around", way.around),
        ("total", way.totals()[1]),
    ]


def _table(found: list[Way]) -> Table:
    basis = found[0].basis()
    parts = [_parts(way) for way in found]
    rows = []
    for place, (name, cost) in enumerate(parts[0]):
        own = [each[place][1] for each in parts]
        if max(own) == 0.0 and name != "wire":
            continue
        cells: list[object] = [say("weld-cost.row." + name)]
        cells += [Measured(each, _QUANTITIES[basis]) for each in own]
        if len(found) == 1:
            cells.append(say("weld-cost.percent", share=Plain(cost / parts[0][-1][1] * 100.0, 2)))
        rows.append(tuple(cells))
    names = ("part", "cost", "share") if len(found) == 1 else ("part", "a", "b")
    columns = tuple([say("weld-cost.column." + name) for name in names])
    return Table("parts", say("weld-cost.table." + basis), columns, tuple(rows))


# ---------------------------------------------------------------- working, notes, next


def _working(given: Given, found: list[Way]) -> list[Message]:
    lines = []
    for place, way in enumerate(found):
        if len(found) > 1:
            lines.append(say("weld-cost.column." + ("a", "b")[place]))
        lines += _working_of(given, way)
    return lines


def _working_of(given: Given, way: Way) -> list[Message]:
    values, usual = way.values, way.usual
    unit = given.units.get("wire_price", "/lb")
    metric = unit == "/kg"
    rate = Measured(way.rate, "deposition_rate", 4, "kg/h" if metric else "lb/h")
    efficiency = Plain(way.efficiencies[1], 3)

    def cost(value: float) -> Measured:
        return Measured(value, "cost_per_mass", None, unit)

    lines = []
    if values["rate_by"] == "feed":
        feed = Measured(values["wire_feed_speed"], "wire_feed_speed", 4, "m/min")
        diameter = Measured(values["wire_diameter"], "wire_diameter", 4, "mm")
        shown = {"feed": feed, "diameter": diameter, "density": Plain(way.density, 4)}
        lines.append(say("weld-cost.working.rate", efficiency=efficiency, rate=rate, **shown))
    price, waste = cost(values["wire_price"]), Plain(values["waste"] * 100.0, 3)
    lines.append(say("weld-cost.working.wire", price=price, efficiency=efficiency, waste=waste, cost=cost(usual.wire)))
    labor, factor = Measured(values["labor_rate"], "labor_rate"), Plain(way.factors[1] * 100.0, 3)
    both = cost(usual.arc_on + usual.arc_off)
    lines.append(say("weld-cost.working.labor", labor=labor, rate=rate, factor=factor, cost=both))
    if usual.gas > 0.0:
        fill = Measured(values["fill_volume"], "gas_volume", 4, "m3" if metric else "ft3")
        flow = Measured(values["gas_flow"], "gas_flow", 4, "L/min" if metric else "ft3/h")
        price = Measured(values["fill_price"], "money")
        lines.append(say("weld-cost.working.gas", price=price, fill=fill, flow=flow, rate=rate, cost=cost(usual.gas)))
    if usual.power > 0.0:
        price = Measured(values["energy_price"], "energy_price")
        power, share = Measured(values["arc_power"], "arc_power", 4, "kW"), Plain(costs.MACHINE_EFFICIENCY, 2)
        shown = {"price": price, "power": power, "efficiency": share, "rate": rate}
        lines.append(say("weld-cost.working.power", cost=cost(usual.power), **shown))
    if way.basis() != "mass":
        lines += _working_of_weld(way, cost(usual.total), labor, metric)
    return lines


def _working_of_weld(way: Way, cost: Measured, labor: Measured, metric: bool) -> list[Message]:
    values = way.values
    per_length = way.usual.total * way.density * values["weld_area"]
    total = Measured(per_length, "cost_per_length", None, "/m" if metric else "/ft")
    area = Measured(values["weld_area"], "bead_area", 4, "mm2")
    density = Plain(way.density, 4)
    lines = [say("weld-cost.working.length", cost=cost, area=area, density=density, total=total)]
    if way.basis() == "job":
        length = Measured(values["weld_length"], "weld_length", 4, "m" if metric else "ft")
        hours = Measured(way.around / values["labor_rate"], "work_time", 4, "h")
        whole = Measured(way.totals()[1], "money")
        lines.append(say("weld-cost.working.job", cost=total, length=length, hours=hours, labor=labor, total=whole))
    return lines


def _notes(given: Given, way: Way) -> tuple[Message, ...]:
    notes = []
    if numerals.settle(way.around_shares()[1]) > 0.5:
        notes.append(say("weld-cost.note.around"))
    if not given.has("operating_factor"):
        low, usual, high = [Plain(each * 100.0, 2) for each in way.factors]
        notes.append(say("weld-cost.note.factor", factor=usual, low=low, high=high))
    shown = (Plain(way.efficiencies[1] * 100.0, 3), Plain(given.number("waste") * 100.0, 3))
    notes.append(say("weld-cost.note.efficiency", efficiency=shown[0], waste=shown[1]))
    if way.gas != SELF_SHIELDED and not all(given.has(name) for name in GAS):
        notes.append(say("weld-cost.note.gas"))
    if way.usual.power == 0.0:
        notes.append(say("weld-cost.note.power"))
    if way.basis() != "job" and any(given.has(name) for name in AROUND + ("weld_length",)):
        notes.append(say("weld-cost.note.length"))
    return tuple(notes + [say("weld-cost.note.left-out")])


def _next(given: Given, way: Way) -> tuple[Next, ...]:
    wire: tuple[tuple[str, object], ...] = (("wire_material", given.word("wire_material")),)
    by_feed = given.word("rate_by") == "feed"
    if by_feed:
        for name in ("wire_diameter", "wire_feed_speed"):
            wire += ((name, given.measured(name)),)
    asked = wire
    if given.word("wire_and_gas"):
        asked += (("wire_and_gas", way.gas),)
    for name in ("gas_flow", "operating_factor"):
        if given.has(name):
            asked += ((name, given.measured(name, "percentage" if name == "operating_factor" else name)),)
    questions = [Next("joint-fill", say("weld-cost.next.joint-fill"), asked)]
    if by_feed and MeltingLaw.knows(given.values):
        questions.append(Next("wire-feed", say("weld-cost.next.wire-feed"), wire))
    if way.basis() == "job" and way.gas != SELF_SHIELDED:
        gas = carry("arc_time", Measured(way.arc_time(), "arc_time"), 0.6, 3.6e6)
        if given.has("gas_flow"):
            gas += (("gas_flow", given.measured("gas_flow")),)
        questions.append(Next("gas-supply", say("weld-cost.next.gas-supply"), gas))
    return tuple(questions)


_WIRES = ("0.030 in", "0.035 in", "0.045 in", "0.8 mm", "1.0 mm", "1.2 mm")
_FEEDS = ("200 in/min", "300 in/min", "400 in/min", "5 m/min", "8 m/min")
_KINDS = tuple(row[0] for row in facts.DEPOSITION_EFFICIENCY)
_BY_FEED = ("rate_by", ("feed",))
_BY_RATE = ("rate_by", ("rate",))
_FLOWS = ("25 ft3/h", "30 ft3/h", "35 ft3/h", "12 L/min", "15 L/min")
_FILLS = ("125 ft3", "250 ft3", "330 ft3", "10 m3")


def _rate(optional: bool) -> tuple[Choice | Quantity, ...]:
    """Return the fields that say how fast it goes."""
    return (
        Choice("rate_by", ("feed", "rate"), default="feed"),
        Quantity("wire_diameter", when=_BY_FEED, optional=optional, presets=() if optional else _WIRES),
        Quantity("wire_feed_speed", when=_BY_FEED, optional=optional, presets=() if optional else _FEEDS),
        Quantity("deposition_rate", when=_BY_RATE, optional=optional, low=0.05, high=100.0, hint=not optional),
    )


def _gas(shown: bool) -> tuple[Quantity, ...]:
    """Return the fields of the gas, with their common values where `shown`."""
    return (
        Quantity("gas_flow", optional=True, presets=_FLOWS if shown else ()),
        Quantity("fill_price", optional=True),
        Quantity("fill_volume", "gas_volume", optional=True, low=100.0, presets=_FILLS if shown else ()),
    )


def _factor(hint: bool) -> Quantity:
    return Quantity(
        "operating_factor", "percentage", optional=True, low=1.0, hint=hint, presets=("15 %", "30 %") if hint else ()
    )


_AREA = Quantity("weld_area", "bead_area", optional=True, hint=True, low=1.0, high=10000.0)

CALCULATOR = Calculator(
    name="weld-cost",
    fields=(
        Choice("wire_material", ("mild-steel", "stainless", "aluminum"), default="mild-steel"),
        Choice("wire_and_gas", _KINDS, optional=True),
        Quantity("wire_price", hint=True),
    )
    + _rate(False)
    + (
        Quantity("labor_rate", low=0.01, hint=True),
        _AREA,
        Quantity("weld_length", optional=True, presets=("12 in", "10 ft", "500 mm", "3 m")),
        Quantity("drive_time", "work_time", optional=True),
        Quantity("prep_time", "work_time", optional=True),
        Quantity("finish_time", "work_time", optional=True, hint=True),
    )
    + _gas(True)
    + (
        _factor(True),
        Quantity("deposition_efficiency", optional=True, hint=True),
        Quantity("waste", "percentage", optional=True, hint=True, high=50.0),
        Quantity("energy_price", optional=True),
        Quantity("arc_power", optional=True, hint=True),
        Rows(
            ROW,
            (Choice("other_wire", _KINDS, optional=True), Quantity("wire_price", optional=True))
            + _rate(True)
            + _gas(False)
            + (
                _factor(False),
                Quantity("weld_area", "bead_area", optional=True, low=1.0, high=10000.0),
                Quantity("prep_time", "work_time", optional=True),
            ),
            most=1,
            hint=True,
        ),
    ),
    prepare=_prepare,
    answer=_answer,
    english=ENGLISH,
    sources=(SUMS, NAVY, FACTOR, USUAL, RECALLED),
    place=90,
    fold_from="operating_factor",
)
