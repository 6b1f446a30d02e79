"""What is on the truck: a spool, a cylinder, a lead, a generator, a machine; what is left of it, what it can do."""

from calculators import conductors, machine_fields, numerals, solid_wire
from calculators.asked import Asked
from calculators.contract import (
    Answer,
    Calculator,
    Card,
    Choice,
    Given,
    Line,
    Measured,
    Message,
    Next,
    Number,
    Plain,
    Quantity,
    Refusal,
    Source,
    Text,
    Verdict,
    Words,
    say,
)
from calculators.cylinder_gas import COMPRESSED, GAS, LIQUID, SHARES, CylinderGas
from calculators.cylinder_supply import NAMED, UNNAMED
from calculators.facts import supply as facts
from calculators.stock_words import ENGLISH

LEFT = Source(
    "Left = counted − used by the log; all else is asked of the book's own questions, with their sources", "law"
)
LOW = Source("A fifth of it left is called low until you say otherwise", "common practice")
_LOW = 0.2

_OF_SPOOL = ("item", ("spool",))
_OF_CYLINDER = ("item", ("cylinder",))
_OF_LEAD = ("item", ("lead",))
_OF_GENERATOR = ("item", ("generator",))
_OF_MACHINE = ("item", ("machine",))
_PRESSED = ("gas", COMPRESSED)
_WEIGHED = ("gas", (LIQUID,))
_FULL = {"spool": "new_wire_mass", "pressed": "full_pressure", "weighed": "full_gas_mass"}


class _Item:
    """One thing in stock: the results and the lines of its card as they come together."""

    def __init__(self, given: Given) -> None:
        self.given = given
        self.results: list[object] = []
        self.lines: list[Line] = []
        self.asked: list[Asked] = []
        self.working: tuple[Message, ...] = ()
        self.verdict: Verdict | None = None
        self.used = False

    def carried(self, names: tuple[tuple[str, str, str], ...]) -> "tuple[tuple[str, object], ...]":
        """Return what is given of (field there, field here, its quantity), to be carried there."""
        found: list[tuple[str, object]] = []
        for there, here, quantity in names:
            if self.given.has(here):
                value = self.given.measured(here, quantity) if quantity else self.given.word(here)
                found.append((there, value))
        return tuple(found)

    def ask(self, name: str, carried: "tuple[tuple[str, object], ...]", takes: tuple[tuple[str, str], ...]) -> Asked:
        """Ask another calculator, and remember to link to it."""
        asked = Asked(name, carried, takes)
        self.asked.append(asked)
        return asked

    def line(self, found: Number, asked: Asked, takes: tuple[tuple[str, str], ...]) -> None:
        """Show a number that another calculator gave, as the headline or below it, and as a line that leads there."""
        label = found.label
        assert label is not None
        self.results.append(found)
        self.lines.append(Line(found.name, label, Measured(found.value, found.quantity.name), asked.leads(), takes))

    def left(
        self, name: str, count: Number, full: float, leads: "Next | None", takes: tuple[tuple[str, str], ...]
    ) -> float:
        """Show what is left of what was counted, and judge whether it is low; return it, [kg] or [m3]."""
        given, quantity = self.given, count.quantity.name
        use = "used_wire" if quantity == "wire_mass" else "used_gas"
        used = given.number(use) if given.has(use) else 0.0
        self.used = given.has(use)
        left = max(count.value - used, 0.0)
        low = None if count.low is None else max(count.low - used, 0.0)
        high = None if count.high is None else max(count.high - used, 0.0)
        unit = given.units.get("spool_left") if use == "used_wire" else None
        if unit is not None:
            given.units[name] = unit
        self.results.append(Number(name, left, quantity, low, high, count.band if low is not None else None))
        counted = Measured(count.value, quantity, None, unit)
        taken, now = Measured(used, quantity, None, unit), Measured(left, quantity, None, unit)
        self.working += (say("stock.working.left", counted=counted, used=taken, left=now),)
        self.lines.append(Line("left", say("stock.result." + name), now))
        if self.used:
            self.lines.append(Line("used", say("stock.line.used"), taken))
        self.lines.append(Line("counted", say("stock.line.counted"), counted, leads, takes))
        self._judge(left, low, high, full, numerals.settle(used) > numerals.settle(count.value))
        return left

    def _judge(self, left: float, low: float | None, high: float | None, full: float, over: bool) -> None:
        given = self.given
        limit = given.number("low_at") if given.has("low_at") else _LOW
        least, share, most = [numerals.settle((left if each is None else each) / full) for each in (low, left, high)]
        state = "inside" if least > limit else "outside" if most <= limit else "unclear"
        percent = Plain(share * 100.0, 2)
        of = "full" if any(given.has(name) for name in _FULL.values()) else "counted"
        message = say("stock.left-of-" + of, percent=percent, low=Plain(limit * 100.0, 3))
        self.verdict = Verdict("outside" if over else state, message, say("stock.over") if over else None)

    def card(self) -> Card:
        """Return what a job and the truck's page keep of it."""
        return Card(
            "stock",
            say("stock.named", item=say("stock.option.item." + self.given.word("item")), name=self.given.word("name")),
            tuple(self.lines),
        )


def _spool(item: _Item) -> None:
    given = item.given
    full = given.number("new_wire_mass" if given.has("new_wire_mass") else "spool_left")
    if numerals.settle(full) < numerals.settle(given.number("spool_left")):
        raise Refusal("spool_left", say("stock.refusal.more"))
    count = Number("wire_left", given.number("spool_left"), "wire_mass")
    left = item.left("wire_left", count, full, None, ())
    wire = item.carried((("wire_material", "wire_material", ""), ("wire_diameter", "wire_diameter", "wire_diameter")))
    if len(wire) < 2 or numerals.settle(left) < 0.001:
        return
    takes: tuple[tuple[str, str], ...] = (("wire_material", "wire_material"), ("wire_diameter", "wire_diameter"))
    takes += () if item.used else (("wire_mass", "spool_left"),)
    wire += (("wire_mass", Measured(left, "wire_mass", None, given.units.get("spool_left"))),)
    wire += item.carried((("wire_feed_speed", "wire_feed_speed", "wire_feed_speed"),))
    asked = item.ask("spool-life", wire, takes)
    for name in ("wire_length", "arc_time"):
        if name == "wire_length" or given.has("wire_feed_speed"):
            item.line(asked.number(name), asked, takes)


def _cylinder(item: _Item) -> None:
    given = item.given
    CylinderGas.fill(given, say("gas-supply.refusal.mix"))
    gas = item.carried(
        (("gas", "gas", ""), ("carbon_dioxide", "carbon_dioxide", "percentage"), ("helium", "helium", "percentage"))
    )
    takes = tuple([(name, name) for name, _ in gas])
    kind, name, quantity = ("weighed", "gas_mass", "gas_mass")
    vessel: tuple[tuple[str, object], ...] = ()
    if given.word("gas") != LIQUID:
        kind, name, quantity = ("pressed", "cylinder_pressure", "cylinder_pressure")
        vessel = item.carried(
            (("cylinder", "cylinder", ""), ("cylinder_water_volume", "cylinder_water_volume", "cylinder_water_volume"))
        )
        takes += tuple([(each, each) for each, _ in vessel])
    takes += ((name, name),)
    counted = item.ask("gas-supply", gas + vessel + item.carried(((name, name, quantity),)), takes)
    count = counted.number("gas_volume")
    item.working = counted.answer().working
    full = count.value
    if given.has(_FULL[kind]):
        if numerals.settle(given.number(_FULL[kind])) < numerals.settle(given.number(name)):
            raise Refusal(name, say("stock.refusal.more"))
        new = gas + vessel + item.carried(((name, _FULL[kind], quantity),))
        full = Asked("gas-supply", new, ((name, _FULL[kind]),)).number("gas_volume").value
    left = item.left("gas_left", count, full, counted.leads(), takes)
    if given.has("gas_flow") and numerals.settle(left) > 0.0:
        flow = (("gas_volume", Measured(left, "gas_volume")), ("gas_flow", given.measured("gas_flow")))
        lasting = item.ask("gas-supply", gas + flow, (("gas_flow", "gas_flow"),))
        item.line(lasting.number("arc_time"), lasting, (("gas_flow", "gas_flow"),))


def _lead(item: _Item) -> None:
    names = (
        ("lead_length", "lead_length", "lead_length"),
        ("cable_size", "cable_size", ""),
        ("current", "current", "current"),
    )
    takes = tuple([(there, here) for there, here, _ in names])
    asked = item.ask("lead-drop", item.carried(names), takes)
    item.line(asked.number("lead_voltage_drop"), asked, takes)
    item.working = asked.answer().working
    item.verdict = asked.answer().verdict


def _generator(item: _Item) -> None:
    names = (("supply", "supply", ""), ("generator_power", "generator_power", "generator_power"))
    takes = tuple([(there, here) for there, here, _ in names])
    asked = item.ask("generator-size", item.carried(names), takes)
    item.line(asked.number("current"), asked, takes)
    item.working = asked.answer().working


def _machine(item: _Item) -> None:
    given = item.given
    names = (("rated_current", "rated_current", "current"), ("rated_duty_cycle", "rated_duty_cycle", "duty_cycle"))
    rated = item.carried(names)
    if len(rated) == 1:
        raise Refusal(
            "rated_duty_cycle" if given.has("rated_current") else "rated_current", say("stock.refusal.rating")
        )
    if rated:
        takes = tuple([(there, here) for there, here, _ in names])
        asked = item.ask("duty-cycle", rated + (("duty_cycle", "60 %"),), takes)
        found = asked.number("current")
        found.label = say("stock.result.current")
        item.line(found, asked, takes)
        item.working = asked.answer().working
    for name in _LIMITS:
        if given.has(name):
            value = given.measured(name, _LIMIT_OF[name])
            item.lines.append(Line(name, say("stock.field." + name), value))


_OF = {"spool": _spool, "cylinder": _cylinder, "lead": _lead, "generator": _generator, "machine": _machine}
_LIMIT_OF = {
    "largest_current": "current",
    "largest_feed": "wire_feed_speed",
    "least_feed": "wire_feed_speed",
    "largest_voltage": "voltage",
    "least_voltage": "voltage",
}
_LIMITS = ("largest_current", "largest_feed", "least_feed", "largest_voltage", "least_voltage")
_CAUTIONS = {
    "spool": ("caution.live",),
    "cylinder": ("caution.cylinder", "caution.valve"),
    "lead": ("lead-drop.caution.coil", "lead-drop.caution.worn"),
    "generator": ("generator-size.caution.fumes", "generator-size.caution.backfeed"),
    "machine": ("duty-cycle.caution.cut-out",),
}
_ONWARD = {
    "spool": "spool-life",
    "cylinder": "leak-test",
    "lead": "lead-drop",
    "generator": "generator-size",
    "machine": "machine-trim",
}


def _answer(given: Given) -> Answer:
    item = _Item(given)
    kind = given.word("item")
    _OF[kind](item)
    if not item.results:
        item.results.append(Words("name", item.card().heading))
    # One link to each calculator: the last asked knows most.
    last = {asked.name: asked for asked in item.asked}
    onward = [asked.leads() for asked in item.asked if last[asked.name] is asked]
    onward = onward or [Next(_ONWARD[kind], say(_ONWARD[kind] + ".title"), ())]
    return Answer(
        results=tuple(item.results) + ((item.card(),) if item.lines else ()),
        working=item.working or (say("stock.working.kept"),),
        notes=(say("stock.note.used" if item.used else "stock.note.count"),) if kind in ("spool", "cylinder") else (),
        cautions=tuple([say(each) for each in _CAUTIONS[kind]]),
        sources=(LEFT, LOW),
        next_questions=tuple(onward),
        verdict=item.verdict,
        # With what was used taken off it is no count, and kept as one it would be taken off twice.
        record="" if item.used else "stock",
    )


CALCULATOR = Calculator(
    name="stock",
    fields=(
        Choice("item", ("spool", "cylinder", "lead", "generator", "machine")),
        Text("name", longest=40, hint=True),
        Text("wire_class", longest=40, optional=True, when=_OF_SPOOL),
        Choice("wire_material", ("mild-steel", "stainless", "aluminum"), optional=True, when=_OF_SPOOL),
        Quantity("wire_diameter", optional=True, when=_OF_SPOOL, presets=solid_wire.PRESETS),
        Quantity("spool_left", "wire_mass", when=_OF_SPOOL, hint=True, presets=("2 lb", "11 lb", "33 lb", "1 kg", "5 kg", "15 kg")),
        Choice("gas", GAS.options, default=GAS.default, when=_OF_CYLINDER),
        SHARES[0],
        SHARES[1],
        Choice("cylinder", (UNNAMED,) + tuple([name for name, _, _ in NAMED]), default=UNNAMED, when=_PRESSED),
        Quantity("cylinder_water_volume", when=("cylinder", (UNNAMED,)), hint=True),
        Quantity("cylinder_pressure", when=_PRESSED, low=0.1),
        Quantity("gas_mass", when=_WEIGHED, hint=True, low=0.01),
        Quantity("lead_length", when=_OF_LEAD, hint=True, presets=("25 ft", "50 ft", "10 m", "20 m")),
        Choice("cable_size", tuple([name for name, _ in conductors.LEADS]), when=_OF_LEAD, many=True),
        Quantity("current", when=_OF_LEAD, presets=("125 A", "150 A", "200 A")),
        Choice("supply", tuple([name for name, _, _ in facts.SUPPLIES if name.startswith("generator")]), default="generator-240", when=_OF_GENERATOR),
        Quantity("generator_power", when=_OF_GENERATOR, presets=("5500 W", "7500 W", "9500 W", "8 kVA")),
        Quantity("rated_current", "current", optional=True, when=_OF_MACHINE, low=20.0),
        Quantity("rated_duty_cycle", "duty_cycle", optional=True, when=_OF_MACHINE),
    )
    + tuple([Quantity(name, _LIMIT_OF[name], optional=True, when=_OF_MACHINE) for name in _LIMITS])
    + (
        Quantity("wire_feed_speed", optional=True, when=_OF_SPOOL),
        Quantity("gas_flow", optional=True, when=_OF_CYLINDER),
        Quantity("new_wire_mass", "wire_mass", optional=True, when=_OF_SPOOL),
        Quantity("full_pressure", "cylinder_pressure", optional=True, when=_PRESSED, low=0.1),
        Quantity("full_gas_mass", "gas_mass", optional=True, when=_WEIGHED, low=0.01),
        Quantity("low_at", "percentage", optional=True, when=("item", ("spool", "cylinder")), hint=True),
        Quantity("used_wire", "wire_mass", optional=True, when=_OF_SPOOL, low=0.0, hint=True),
        Quantity("used_gas", "gas_volume", optional=True, when=_OF_CYLINDER, hint=True),
        Text("notes", longest=400, optional=True),
    )
    + machine_fields.FIELDS,
    answer=_answer,
    english=ENGLISH,
    sources=(LEFT, LOW),
    place=58,
    fold_from="wire_feed_speed",
    machine=machine_fields.NAMES,
    machine_when=_OF_MACHINE,
    moves=False,
)  # fmt: skip
