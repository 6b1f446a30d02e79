"""Lead drop: the volts and watts lost in welding leads, the longest lead, or the size that keeps the loss low."""

from calculators import conductors, duty, numerals, ranges
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
    Verdict,
    Words,
    say,
)
from calculators.facts import conductors as facts
from calculators.lead_drop_words import ENGLISH

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    Fit = tuple[str, float, int]

COPPER = Source(
    "NBS Handbook 100, Copper Wire Tables, 1966: resistivity of annealed copper; its change with temperature from memory",
    "published",
)
AWG = Source(
    "ASTM B258, American Wire Gauge; with copper and 2 % stranding it gives NEC Chapter 9 Table 8 within 0.3 %",
    "standard",
)
IEC_60228 = Source("IEC 60228:2004, class 5: highest resistance of metric cable; seen quoted", "standard")
FACT_SHEET = Source("AWS Safety and Health Fact Sheet 39, Welding Cables, 2016: 4 V, and no coils", "published")
STEADY = Source(
    "NEC Table 400.5(B), 75 °C, in Set Lighting Technician's Handbook, 4th ed.: what a cable carries continuously",
    "published",
)
CONNECTIONS = Source(
    "Connectors and clamp lose 0.3 to 1 V together; 60 % arc time by hand; one of two leads carries up to 60 %",
    "common practice",
)
FINE = Source("Strands of the finest cable are up to 7 % longer than it (ASTM B172)", "from memory")

_SOURCES = (COPPER, AWG, IEC_60228, FACT_SHEET, STEADY, CONNECTIONS, FINE)
_OTHER = "other"
_SIZES = tuple([name for name, _ in conductors.LEADS])
_NOMINAL = {name: area for name, area, _ in facts.METRIC_LEADS}
_THICKEST = max([(copper, name) for name, copper in conductors.LEADS])


# ---------------------------------------------------------------- what is asked


def _prepare(given: Given) -> None:
    size = given.word("cable_size")
    if size in _SIZES:
        given.fill("conductor_area", dict(conductors.LEADS)[size])
    if not given.has("conductor_temperature"):
        given.fill("conductor_temperature", facts.HOT_LEAD)
    if not given.has("duty_cycle"):
        given.fill("duty_cycle", facts.HAND_DUTY)
    if not size and not given.has("lead_voltage_drop") and given.has("lead_length") and given.has("current"):
        given.fill("lead_voltage_drop", facts.LEAD_LIMIT)


def _solve(unknown: str, values: "dict[str, Any]") -> float:
    joints = values.get("connection_drop", 0.0)
    if unknown != "conductor_area":
        ranges.require("conductor_area", values["conductor_area"], 8e-6, 130e-6, "m2")
    # What 1 m one way of 1 m2 resists, out and back.
    unit = conductors.loop_resistance(1.0, 1e-3, conductors.copper_resistivity(values["conductor_temperature"])) * 1e-3
    if unknown == "lead_voltage_drop":
        return joints + values["current"] * unit * values["lead_length"] / values["conductor_area"]
    left = values["lead_voltage_drop"] - joints
    if numerals.settle(left, 6) <= 0.0:
        raise Refusal("connection_drop", say("lead-drop.refusal.joints"))
    if unknown == "conductor_area":
        return unit * values["lead_length"] * values["current"] / left
    per_metre = unit / values["conductor_area"]
    return left / (per_metre * values["current" if unknown == "lead_length" else "lead_length"])


class _Lead:
    """The lead asked about, and what is the matter with it."""

    def __init__(self, given: Given) -> None:
        self.given = given
        self.size = given.word("cable_size")
        self.found = given.solved_for == "conductor_area"
        self.current = given.number("current")
        self.joints = given.number("connection_drop") if given.has("connection_drop") else 0.0
        self.effective = duty.effective_current(self.current, given.number("duty_cycle"))
        self.area = given.number("conductor_area")
        self.count = 1
        self.fits: list[Fit] = []
        if self.found:
            self.fits = _fits(self.area, self.effective)
            if not self.fits:
                raise Refusal("", self.beyond(given.number("lead_voltage_drop")), self._shorter())
            self.size, self.area, self.count = _simplest(self.fits)
        self.drop = self.drop_of(self.area)
        self.steady = _carries(self.area, self.count)
        self.hot = ranges.above(self.effective, self.steady)
        self.left: float | None = None  # at the gun
        if given.has("machine_voltage"):
            self.left = given.number("machine_voltage") - self.drop
            if ranges.above(5.0, self.left):  # the least that any arc has
                raise Refusal(
                    "machine_voltage", say("lead-drop.refusal.left", drop=Measured(self.drop, "voltage_drop"))
                )
        self.over = numerals.settle(self.drop, 6) > facts.LEAD_LIMIT
        if not self.found and (self.over or self.hot) and self.joints < facts.LEAD_LIMIT:
            needed = self.solved("conductor_area", lead_voltage_drop=facts.LEAD_LIMIT)
            self.fits = _fits(needed, self.effective)

    def beyond(self, limit: float) -> Message:
        """Return what even two of the thickest leads side by side do, where that is not enough."""
        copper, name = _THICKEST
        steady = _carries(copper, 2)
        if ranges.above(self.effective, steady):
            shown = {"effective": Measured(self.effective, "current", 3), "steady": Measured(steady, "current", 3)}
            return say("lead-drop.refusal.heat", size=_named(name), **shown)
        found = {"conductor_area": copper, "lead_voltage_drop": limit}
        length = self.solved("lead_length", current=self.current / 2.0, **found)
        return say(
            "lead-drop.refusal.thick",
            size=_named(name),
            length=Measured(length, "lead_length", 3, self.given.units.get("lead_length")),
            current=Measured(2.0 * self.solved("current", **found), "current", 3),
        )

    def reach(self) -> float:
        """Return how far one of the thickest leads keeps the volts allowed, [m]; nothing where it is too hot."""
        copper, _ = _THICKEST
        if ranges.above(self.effective, _carries(copper)):
            return 0.0
        return self.solved("lead_length", conductor_area=copper)

    def _shorter(self) -> tuple[Next, ...]:
        """Return the question how far one lead reaches, where it has an answer."""
        if not 0.5 <= numerals.settle(self.reach()) <= 200.0:  # what lead_length takes
            return ()
        carried: list[tuple[str, object]] = [("cable_size", _THICKEST[1])]
        for name in ("current", "lead_voltage_drop", "connection_drop"):
            if self.given.has(name):
                quantity = "current" if name == "current" else "voltage_drop"
                carried.append((name, self.given.measured(name, quantity)))
        return (Next("lead-drop", say("lead-drop.next.reach", size=_named(_THICKEST[1])), tuple(carried)),)

    def solved(self, unknown: str, **changed: float) -> float:
        """Return one of the four numbers from the others."""
        values: dict[str, Any] = {"connection_drop": self.joints}
        for name in ("lead_length", "current", "conductor_area", "lead_voltage_drop", "conductor_temperature"):
            values[name] = changed.get(name, self.given.number(name))
        return _solve(unknown, values)

    def drop_of(self, area: float) -> float:
        """Return what one lead, or as many side by side as there are, of that copper would lose, [V]."""
        return self.solved("lead_voltage_drop", conductor_area=area, current=self.current / self.count)

    def spread(self) -> tuple[float, float]:
        """Return the least and the most that the copper may resist over what was reckoned."""
        low, high = 1.0, facts.FINE_STRANDING / facts.STRANDING
        if self.size in _NOMINAL:
            low, high = self.area / _NOMINAL[self.size], 1.0
        if "conductor_temperature" in self.given.made:
            cold = conductors.copper_resistivity(facts.REFERENCE_TEMPERATURE)
            low *= cold / conductors.copper_resistivity(facts.HOT_LEAD)
        return low, high


def _carries(copper: float, count: int = 1) -> float:
    """Return what leads of that copper carry without end, [A]; two do not share evenly."""
    return conductors.steady_current(copper) / (facts.PAIR_SHARE if count > 1 else 1.0)


def _fits(area: float, effective: float) -> "list[Fit]":
    """Return (size, its copper, how many side by side), thinnest first, of each system that has one.

    It has the copper wanted and does not overheat; two are taken only where no single one does.
    """
    found = []
    for system in ("awg", "mm2"):
        wanted = [
            (count, place)
            for count in (1, 2)
            for place in range(len(conductors.LEADS))
            if conductors.LEADS[place][0].startswith(system)
            and not ranges.above(area / count, conductors.LEADS[place][1])
            and not ranges.above(effective, _carries(conductors.LEADS[place][1], count))
        ]
        if wanted:
            count, place = min(wanted)
            found.append(conductors.LEADS[place] + (count,))
    return found


def _simplest(fits: "list[Fit]") -> "Fit":
    """Return the one of fewer leads; the American one where both are alike."""
    return fits[1] if len(fits) > 1 and fits[1][2] < fits[0][2] else fits[0]


def _named(size: str, count: int = 1) -> Message:
    name = say("lead-drop.option.cable_size." + size)
    return say("lead-drop.pair", size=name) if count > 1 else name


def _all_named(fits: "list[Fit]") -> Message:
    names = [_named(size, count) for size, _, count in fits]
    return say("lead-drop.sizes", american=names[0], metric=names[1]) if len(names) > 1 else names[0]


# ---------------------------------------------------------------- the answer


def _answer(given: Given) -> Answer:
    lead = _Lead(given)
    cautions = ["coil", "worn", "work"] if lead.hot else ["coil", "heat", "worn", "work"]
    if [count for _, _, count in lead.fits if count > 1]:
        cautions.insert(0, "pair")
    return Answer(
        results=tuple(_results(given, lead)),
        working=_working(given, lead),
        notes=_notes(given, lead),
        cautions=tuple([say("lead-drop.caution." + each) for each in cautions]),
        sources=_SOURCES,
        next_questions=_next(lead),
        verdict=None if lead.found else _verdict(lead),
    )


def _results(given: Given, lead: _Lead) -> list[object]:
    results: list[object] = []
    low, high = lead.spread()
    why = "cold-to-hot" if "conductor_temperature" in given.made else "strands"
    band = say("lead-drop.band." + why)
    cable = lead.drop - lead.joints
    drop = Number(
        "lead_voltage_drop", lead.drop, "voltage_drop", lead.joints + low * cable, lead.joints + high * cable, band
    )
    if lead.found:
        needed = given.number("conductor_area")
        results += [Words("cable_size", _all_named(lead.fits)), Number("conductor_area", needed)]
        drop.label = say("lead-drop.label.drop-of", size=_named(lead.size, lead.count))
        if lead.count > 1 and lead.reach():
            label = say("lead-drop.label.reach", size=_named(_THICKEST[1]))
            results.append(Number("longest_lead", lead.reach(), "lead_length", label=label, figures=2))
    elif given.solved_for in ("lead_length", "current"):
        value = given.number(str(given.solved_for))
        results.append(Number(str(given.solved_for), value, None, value / high, value / low, band))
    results.append(drop)
    if lead.left is not None:
        gun = [lead.drop + lead.left - each for each in (drop.high, drop.low) if each is not None]
        results.append(Number("voltage", lead.left, None, gun[0], gun[1], band))
    results.append(Number("lost_power", lead.drop * lead.current, "arc_power", figures=2))
    if not lead.found:
        if given.solved_for == "lead_voltage_drop" and lead.joints < facts.LEAD_LIMIT:
            longest = lead.solved("lead_length", lead_voltage_drop=facts.LEAD_LIMIT)
            results.append(Number("longest_lead", longest, "lead_length", figures=2))
        results.append(Words("other_system", _nearest(lead)))
    results.append(Number("steady_current", lead.steady, "current"))
    return results


def _nearest(lead: _Lead) -> Message:
    """Return the size of the other system that is next in copper."""
    other = "awg" if lead.size in _NOMINAL else "mm2"
    near = [(abs(copper - lead.area), name) for name, copper in conductors.LEADS if name.startswith(other)]
    return say("lead-drop.nearest", size=_named(min(near)[1]), area=Measured(lead.area, "conductor_area"))


def _verdict(lead: _Lead) -> Verdict:
    limit = Measured(facts.LEAD_LIMIT, "voltage_drop")
    if lead.hot:
        carried = Measured(lead.effective, "current", 3)
        message = say("lead-drop.verdict.hot", effective=carried, steady=Measured(lead.steady, "current", 3))
    else:
        message = say("lead-drop.verdict.over" if lead.over else "lead-drop.verdict.under", limit=limit)
    if not lead.over and not lead.hot:
        return Verdict("inside", message)
    return Verdict("outside", message, _remedy(lead, limit))


def _remedy(lead: _Lead, limit: Measured) -> Message:
    if lead.joints >= facts.LEAD_LIMIT:
        return say("lead-drop.remedy.joints", limit=limit)
    if lead.fits:
        return say("lead-drop.remedy.size", limit=limit, sizes=_all_named(lead.fits))
    return say("lead-drop.remedy.closer", why=lead.beyond(facts.LEAD_LIMIT))


def _working(given: Given, lead: _Lead) -> tuple[Message, ...]:
    length, temperature = given.number("lead_length"), given.number("conductor_temperature")
    resistivity = conductors.copper_resistivity(temperature)
    area = lead.count * lead.area
    resistance = conductors.loop_resistance(length, area, resistivity)
    loop = Measured(2.0 * length, "lead_length", 4, given.units.get("lead_length"))
    shown: dict[str, object] = {
        "length": Measured(length, "lead_length", 4, given.units.get("lead_length")),
        "loop": loop,
        "loop_metres": Measured(2.0 * length, "lead_length", 4, "m"),
        "temperature": Measured(temperature, "conductor_temperature", 3, given.units.get("conductor_temperature")),
        "resistivity": Plain(resistivity * 1e6, 4),
        "stranding": Plain(facts.STRANDING, 3),
        "area": Measured(area, "conductor_area", 4),
        "needed": Measured(given.number("conductor_area"), "conductor_area", 4),
        "resistance": Plain(resistance * 1000.0, 4),
        "current": Measured(lead.current, "current", 4),
        "limit": Measured(given.number("lead_voltage_drop"), "voltage_drop", 4),
        "joints": Measured(lead.joints, "voltage_drop", 3),
        "drop": Measured(lead.drop, "voltage_drop", 4),
        "power": Measured(lead.drop * lead.current, "arc_power", 4),
    }
    lines = ["loop", "copper", "needed"] if lead.found else ["loop", "copper"]
    lines += ["resistance", "drop", "power"]
    return tuple([say("lead-drop.working." + line, **shown) for line in lines])


def _notes(given: Given, lead: _Lead) -> tuple[Message, ...]:
    notes = []
    if "lead_voltage_drop" in given.made and lead.found:
        notes.append(say("lead-drop.note.limit", limit=Measured(facts.LEAD_LIMIT, "voltage_drop")))
    if lead.found and _heat_decides(given, lead):
        notes.append(say("lead-drop.note.heat-decides", effective=Measured(lead.effective, "current", 3)))
    if "duty_cycle" in given.made:
        notes.append(say("lead-drop.note.duty", percent=Plain(facts.HAND_DUTY * 100.0, 2)))
    if "conductor_temperature" in given.made:
        hot = Measured(facts.HOT_LEAD, "conductor_temperature", 2)
        notes.append(say("lead-drop.note.hot", temperature=hot))
    if not given.has("connection_drop"):
        low, high = facts.CONNECTION_LOSS
        notes.append(
            say("lead-drop.note.joints", low=Measured(low, "voltage_drop"), high=Measured(high, "voltage_drop"))
        )
    notes.append(say("lead-drop.note.arc"))
    return tuple(notes)


def _heat_decides(given: Given, lead: _Lead) -> bool:
    fits = _fits(given.number("conductor_area"), 0.0)
    return bool(fits) and _simplest(fits) != (lead.size, lead.area, lead.count)


def _next(lead: _Lead) -> tuple[Next, ...]:
    current = ("current", Measured(lead.current, "current"))
    questions = []
    if lead.drop < 20.0:  # the most that arc-voltage reckons with
        drop = ("lead_voltage_drop", Measured(lead.drop, "lead_voltage_drop"))
        meter = (("machine_voltage", lead.given.measured("machine_voltage", "voltage")),) if lead.left else ()
        questions.append(Next("arc-voltage", say("lead-drop.next.arc-voltage"), meter + (drop, current)))
    if 20.0 <= lead.current <= 600.0:
        questions.append(Next("duty-cycle", say("lead-drop.next.duty-cycle"), (current,)))
        questions.append(Next("generator-size", say("lead-drop.next.generator-size"), (current,)))
    return tuple(questions)


CALCULATOR = Calculator(
    name="lead-drop",
    fields=(
        Quantity("lead_length", hint=True, presets=("25 ft", "50 ft", "100 ft", "10 m", "20 m", "30 m")),
        Quantity("current", presets=("125 A", "150 A", "200 A", "250 A")),
        Choice("cable_size", _SIZES + (_OTHER,), optional=True, hint=True),
        Quantity("conductor_area", when=("cable_size", (_OTHER,))),
        Quantity("lead_voltage_drop", "voltage_drop", hint=True, presets=("2 V", "4 V")),
        Quantity("connection_drop", "voltage_drop", optional=True, hint=True, high=10.0),
        Quantity("duty_cycle", optional=True, hint=True, presets=("20 %", "30 %", "60 %", "100 %")),
        Quantity(
            "conductor_temperature", optional=True, hint=True, presets=("70 degF", "120 degF", "20 degC", "50 degC")
        ),
        Quantity("machine_voltage", "voltage", optional=True, hint=True),
    ),
    relations=(
        Relation(
            ("lead_length", "current", "conductor_area", "lead_voltage_drop"),
            _solve,
            check="lead_voltage_drop",
            also=("conductor_temperature", "connection_drop"),
            agree_within=0.1,
        ),
    ),
    prepare=_prepare,
    answer=_answer,
    english=ENGLISH,
    sources=_SOURCES,
    place=26,
)
