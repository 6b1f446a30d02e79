"""Leak test: from the fall of a gauge, cleared of temperature, to what leaks and what that costs a month."""

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
    Refusal,
    Source,
    Verdict,
    carry,
    say,
)
from calculators.cylinder_contents import absolute_pressure
from calculators.cylinder_gas import GAS, HELIUM_MIX, LIQUID, SHARES, CylinderGas
from calculators.cylinder_supply import NAMED, UNNAMED, USUAL_TEMPERATURE
from calculators.facts.gas_state import STANDARD_ATMOSPHERE
from calculators.gas_density import (
    HIGHEST_GAUGE_PRESSURE,
    HIGHEST_TEMPERATURE,
    density,
    pressure_for_density,
    reference_density,
)
from calculators.gas_leak import hose_volume, leak_rate
from calculators.leak_test_words import ENGLISH
from calculators.shielding_gas import MIXED

MASS = Source("Mass does not vanish: the same gas, two densities", "law")
STATE = Source(
    "Density of the real gas: Tegeler, Span and Wagner 1999 (argon), Gernert 2013 and EOS-CG (mixes), by CoolProp 8.0.0",
    "published",
)
READING = Source(
    "How closely a gauge is read (3 bar of a cylinder's, 0.2 bar of a hose's) and a temperature known (2 °C, or 10 not told)",
    "from memory",
)

_MONTH = 30.0 * 24.0 * 3600.0
_READ = {"open": 3.0e5, "shut": 0.2e5}  # [Pa]
_KNOWN, _NOT_TOLD = 2.0, 10.0  # [K]


class _Test:
    """Two readings of one volume of gas; coherent SI."""

    def __init__(self, given: Given) -> None:
        self.given = given
        self.mode = given.word("tested")
        self.gas = CylinderGas(given.values)
        if self.mode == "open":
            self.volume = given.number("cylinder_water_volume")
        else:
            self.volume = hose_volume(given.number("hose_bore"), given.number("hose_length"))
        self.pressures = [given.number(name) for name in ("start_pressure", "end_pressure")]
        self.temperatures = [given.number(name) for name in ("start_temperature", "end_temperature")]
        self.time = given.number("leak_time")
        self.reference = reference_density(self.gas.fraction, 0.0, self.gas.second)
        self.densities = [self._density(self.pressures[i], self.temperatures[i]) for i in range(2)]
        self.told = "end_temperature" in given.typed and "start_temperature" in given.typed
        self.off = _KNOWN if self.told else _NOT_TOLD
        self.rate = self._rate(self.densities[0] - self.densities[1])
        self.limit = self._limit()

    def _density(self, pressure: float, temperature: float) -> float:
        pressure = min(max(pressure, 0.0), HIGHEST_GAUGE_PRESSURE)
        return density(absolute_pressure(pressure), temperature, self.gas.fraction, 0.0, self.gas.second)

    def _rate(self, fall: float) -> float:
        return leak_rate(self.volume, max(fall, 0.0), max(-fall, 0.0), self.reference, self.time)

    def _limit(self) -> float:
        """Return the leak that a wrong reading and a wrong temperature could feign, [m3/s]."""
        square = 0.0
        for pressure, temperature, found in zip(self.pressures, self.temperatures, self.densities):
            read = self._density(max(0.0, pressure - _READ[self.mode]), temperature)
            if pressure < _READ[self.mode]:
                read = 2.0 * found - self._density(pressure + _READ[self.mode], temperature)
            step = self.off if temperature + self.off <= HIGHEST_TEMPERATURE else -self.off
            warm = self._density(pressure, temperature + step)
            square += (found - read) * (found - read)
            # Not told, only the difference of the two temperatures is unsure.
            square += (found - warm) * (found - warm) * (1.0 if self.told else 0.5)
        return self._rate(square**0.5)

    def state(self) -> str:
        """Return whether it leaks: outside, unclear or inside."""
        rate = numerals.settle(self.rate)
        if rate > numerals.settle(self.limit):
            return "outside"
        return "unclear" if rate > 0.0 else "inside"

    def tight_pressure(self) -> float | None:
        """Return what a tight cylinder would show at the end, [Pa gauge], or None above the tables."""
        highest = self._density(HIGHEST_GAUGE_PRESSURE, self.temperatures[1])
        if numerals.settle(self.densities[0]) > numerals.settle(highest):
            return None
        found = pressure_for_density(self.densities[0], self.temperatures[1], self.gas.fraction, self.gas.second)
        return found - STANDARD_ATMOSPHERE


def _prepare(given: Given) -> None:
    if given.word("gas") == LIQUID:
        raise Refusal("gas", say("leak-test.refusal.liquid"))
    CylinderGas.fill(given, say("leak-test.refusal.mix"))
    for name, size, _ in NAMED:
        if given.word("cylinder") == name:
            given.fill("cylinder_water_volume", size)
    start, end = "start_temperature", "end_temperature"
    for name, other in ((start, end), (end, start)):
        if not given.has(name):
            given.fill(name, given.number(other) if given.has(other) else USUAL_TEMPERATURE)
    if given.has("fill_price") and not given.has("fill_volume"):
        raise Refusal("fill_volume", say("leak-test.refusal.fill"))


# ---------------------------------------------------------------- the answer


def _answer(given: Given) -> Answer:
    test = _Test(given)
    rate = max(0.0, test.rate)
    gauge = Measured(_READ[test.mode], "cylinder_pressure", 2)
    band = say("leak-test.band" if test.told else "leak-test.band.not-told", gauge=gauge)
    loss = rate * _MONTH
    results: list[object] = [
        Number(
            "leak_rate", rate, low=max(0.0, test.rate - test.limit), high=max(0.0, test.rate + test.limit), band=band
        )
    ]
    tight = test.tight_pressure()
    if tight is not None:
        results.append(Number("tight_pressure", tight, "cylinder_pressure"))
    if test.state() == "outside":
        results.append(Number("monthly_loss", loss, "gas_volume", figures=2))
    if test.state() == "outside" and given.has("fill_price"):
        results.append(Number("monthly_cost", loss / given.number("fill_volume") * given.number("fill_price")))
    return Answer(
        results=tuple(results),
        working=_working(test, tight, loss),
        notes=_notes(test),
        cautions=(say("caution.valve"), say("leak-test.caution.repair"), say("caution.cylinder")),
        sources=(MASS, STATE, READING),
        next_questions=_next(test),
        verdict=_verdict(test),
    )


def _verdict(test: _Test) -> Verdict:
    state = test.state()
    if state == "outside":
        return Verdict(state, say("leak-test.verdict.outside"), say("leak-test.remedy.outside"))
    remedy = say("leak-test.remedy.unclear", limit=Measured(test.limit, "leak_rate"))
    return Verdict(state, say("leak-test.verdict." + state), remedy)


def _working(test: _Test, tight: float | None, loss: float) -> tuple[Message, ...]:
    given = test.given
    lines = []
    for place, end in enumerate(("start", "end")):
        unit = given.units.get(end + "_temperature")
        lines.append(
            say(
                "leak-test.working." + end,
                pressure=given.measured(end + "_pressure", "cylinder_pressure"),
                temperature=Measured(test.temperatures[place], "cylinder_temperature", None, unit),
                density=Plain(test.densities[place], 4),
            )
        )
    if tight is not None:
        unit = given.units.get("end_pressure")
        lines.append(say("leak-test.working.tight", pressure=Measured(tight, "cylinder_pressure", 4, unit)))
    lines.append(
        say(
            "leak-test.working.leak",
            size=Measured(test.volume, "cylinder_water_volume", 4, "L"),
            fall=Plain(test.densities[0] - test.densities[1], 3),
            reference=Plain(test.reference, 4),
            time=given.measured("leak_time"),
            leak=Measured(test.rate, "leak_rate", 3, "L/h"),
        )
    )
    if test.state() == "outside" and given.has("fill_price"):
        cost = loss / given.number("fill_volume") * given.number("fill_price")
        lines.append(
            say(
                "leak-test.working.cost",
                loss=Measured(loss, "gas_volume", 3, given.units.get("fill_volume")),
                fill=given.measured("fill_volume", "gas_volume"),
                price=Plain(given.number("fill_price"), 4),
                cost=Plain(cost, 2),
            )
        )
    return tuple(lines)


def _notes(test: _Test) -> tuple[Message, ...]:
    notes = [] if test.told else [say("leak-test.note.temperature")]
    if test.mode == "shut":
        notes.append(say("leak-test.note.hose"))
    return tuple(notes + [say("leak-test.note.gun")])


def _next(test: _Test) -> tuple[Next, ...]:
    given = test.given
    if test.mode != "open":
        return ()
    carried: list[tuple[str, object]] = [("gas", given.word("gas")), ("cylinder", given.word("cylinder"))]
    share = {MIXED: "carbon_dioxide", HELIUM_MIX: "helium"}.get(given.word("gas"))
    if share is not None:
        carried.append((share, given.measured(share, "percentage")))
    if given.word("cylinder") == UNNAMED:
        carried.append(("cylinder_water_volume", given.measured("cylinder_water_volume")))
    left = given.measured("end_pressure", "cylinder_pressure")
    pressure = carry("cylinder_pressure", left, 0.1e5, HIGHEST_GAUGE_PRESSURE)
    return (Next("gas-supply", say("leak-test.next.supply"), tuple(carried) + pressure),)


_PRESSURES = ("2000 psi", "1500 psi", "1000 psi", "200 bar", "150 bar", "100 bar")

CALCULATOR = Calculator(
    name="leak-test",
    fields=(
        Choice("tested", ("open", "shut"), default="open"),
        GAS,
        SHARES[0],
        SHARES[1],
        Choice(
            "cylinder", (UNNAMED,) + tuple(name for name, _, _ in NAMED), default=UNNAMED, when=("tested", ("open",))
        ),
        Quantity("cylinder_water_volume", when=("cylinder", (UNNAMED,)), hint=True),
        Quantity("hose_bore", when=("tested", ("shut",)), presets=("1/4 in", "3/16 in", "6 mm", "8 mm")),
        Quantity("hose_length", when=("tested", ("shut",)), presets=("10 ft", "15 ft", "25 ft", "4 m", "10 m")),
        Quantity("start_pressure", "cylinder_pressure", low=0.1, presets=_PRESSURES),
        Quantity("end_pressure", "cylinder_pressure"),
        Quantity("leak_time", presets=("1 h", "8 h", "12 h", "24 h", "48 h")),
        Quantity("start_temperature", "cylinder_temperature", optional=True),
        Quantity("end_temperature", "cylinder_temperature", optional=True, hint=True),
        Quantity("fill_price", optional=True, hint=True),
        Quantity(
            "fill_volume", "gas_volume", optional=True, low=100.0, presets=("125 ft3", "250 ft3", "330 ft3", "10 m3")
        ),
    ),
    prepare=_prepare,
    answer=_answer,
    english=ENGLISH,
    sources=(MASS, STATE, READING),
    place=58,
    fold_from="fill_price",
)
