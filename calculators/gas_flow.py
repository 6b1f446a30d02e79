"""Gas flow: what to set for a nozzle, joint, position and wind, and what is too little, too much or too windy.

The rules are in nozzle_flow.py, their numbers in facts/shielding.py.
"""

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
    Source,
    Verdict,
    Words,
    carry,
    say,
)
from calculators.facts import shielding as facts
from calculators.facts.gases import GASES as PURE
from calculators.gas_as_mix import CARBON_DIOXIDE, HELIUM, HELIUM_MIX, GasAsMix
from calculators.gas_flow_words import ENGLISH
from calculators.nozzle_flow import (
    evaporation_power,
    light_gas_factor,
    most_flow,
    nozzle_velocity,
    reynolds_number,
    usual_flow,
)
from calculators.shielding_gas import FIELDS as GAS
from calculators.shielding_gas import MIXED

RULE = Source("One litre a minute for each millimetre of bore; 25 L/min on 13 mm is too much", "common practice")
TEXTBOOK = Source(
    "Modern Welding (Goodheart-Willcox, 2020), 8.4.4 and figure 8-35: flows, and 10 to 20 ft³/h more out of position",
    "published",
)
SHIPYARD = Source(
    "Beyer et al., Sci. Technol. Weld. Join. (2013): 15 to 20 L/min is specified, 12 was enough in production; abstract seen",
    "published",
)
D1_1 = Source("AWS D1.1: wind at a gas-shielded weld at most 5 mph [8 km/h]; seen quoted, edition not seen", "standard")
D1_8 = Source("AWS D1.8: 3 mph for seismic work", "from memory")
BEAUFORT = Source("US National Weather Service, Beaufort scale: wind in words", "published")
OSHA = Source("29 CFR 1910.252(c)(3): 100 ft/min of extraction", "law")
ARMY = Source("US Army TC 9-237 (1993): at most 25 ft³/h from one carbon dioxide cylinder", "published")
SOURCES = (RULE, TEXTBOOK, SHIPYARD, D1_1, D1_8, BEAUFORT, OSHA, ARMY)

_OPEN = ("corner", "edge")


class _Case:
    """The nozzle, its gas and the wind; coherent SI."""

    def __init__(self, given: Given) -> None:
        self.given = given
        self.bore = given.number("nozzle_bore")
        self.gas = GasAsMix(given)
        word = given.word("wind")
        if word == "measured":
            self.low = self.high = given.number("wind_speed")
        else:
            self.low, self.high = next(row[1:] for row in facts.WINDS if row[0] == word)
        self.state = self._state()
        self.screened = self.state == "wind"
        # Behind a screen it is still; where the wind is told in words, its lighter end is taken.
        self.wind = 0.0 if self.screened else min(self.low, facts.WIND_LIMIT)
        self.most = most_flow(self.bore, self.gas.density)
        self.flow = self.flow_in(self.wind)

    def _state(self) -> str:
        low, high = numerals.settle(self.low), numerals.settle(self.high)
        if low > numerals.settle(facts.WIND_LIMIT):
            return "wind"
        if high > numerals.settle(facts.WIND_LIMIT):
            return "breeze"
        return "seismic" if high > numerals.settle(facts.SEISMIC_WIND_LIMIT) else "calm"

    def flow_in(self, wind: float) -> float:
        """Return the flow to set in a wind, [m3/s]."""
        return usual_flow(self.bore, self.gas.density, wind, self.given.word("position"), self.given.word("joint"))

    def ends(self) -> tuple[float, float]:
        """Return the least and most flow that is sensible, [m3/s]."""
        low = self.flow * facts.LEAST_SHARE
        return low, min(self.flow * facts.MOST_SHARE, self.most)


# ---------------------------------------------------------------- the answer


def _answer(given: Given) -> Answer:
    case = _Case(given)
    low, high = case.ends()
    label = say("gas-flow.result.screened_flow") if case.screened else None
    speed = nozzle_velocity(case.flow, case.bore)
    return Answer(
        results=(
            Number("usual_flow", case.flow, "gas_flow", low, high, say("gas-flow.band"), label, 2),
            Number("most_flow", case.most, "gas_flow", figures=2),
            Words("nozzle_speed", say("gas-flow.speed", speed=Plain(speed, 2))),
        ),
        working=_working(case),
        notes=_notes(case),
        cautions=_cautions(given),
        sources=_sources(case),
        next_questions=_next(case),
        verdict=_verdict(case),
    )


def _verdict(case: _Case) -> Verdict:
    remedy = say("gas-flow.remedy.wind")
    if case.state == "wind":
        return Verdict("outside", say("gas-flow.verdict.wind"), remedy)
    if case.state == "breeze":
        return Verdict("unclear", say("gas-flow.verdict.breeze"), remedy)
    if case.given.has("gas_flow"):
        return _verdict_on_flow(case)
    return Verdict("inside", say("gas-flow.verdict.calm"))


def _verdict_on_flow(case: _Case) -> Verdict:
    flow = numerals.settle(case.given.number("gas_flow"))
    shown = case.given.measured("gas_flow")
    low, high = case.ends()
    if numerals.settle(case.flow_in(0.0) * facts.LEAST_SHARE) <= flow < numerals.settle(low):
        return Verdict("unclear", say("gas-flow.verdict.wind-low", gas_flow=shown), say("gas-flow.remedy.wind-low"))
    if flow < numerals.settle(low):
        return Verdict("outside", say("gas-flow.verdict.low", gas_flow=shown), say("gas-flow.remedy.low"))
    if flow > numerals.settle(case.most):
        return Verdict("outside", say("gas-flow.verdict.high", gas_flow=shown), say("gas-flow.remedy.high"))
    if flow > numerals.settle(high):
        return Verdict("inside", say("gas-flow.verdict.more", gas_flow=shown))
    return Verdict("inside", say("gas-flow.verdict.flow", gas_flow=shown))


def _flow(value: float) -> Measured:
    return Measured(value, "gas_flow", 3, "L/min")


def _working(case: _Case) -> tuple[Message, ...]:
    given, gas = case.given, case.gas
    bore = Measured(case.bore, "nozzle_bore", None, "mm")
    flow = facts.FLOW_PER_BORE * case.bore
    lines = [say("gas-flow.working.base", bore=bore, flow=_flow(flow))]
    if given.word("joint") in _OPEN:
        flow *= facts.OPEN_JOINT_SHARE
        lines.append(say("gas-flow.working.open", factor=Plain(facts.OPEN_JOINT_SHARE, 2), flow=_flow(flow)))
    if given.word("position") not in ("flat", "horizontal"):
        flow += facts.OUT_OF_POSITION
        lines.append(say("gas-flow.working.position", more=_flow(facts.OUT_OF_POSITION), flow=_flow(flow)))
    factor = light_gas_factor(gas.density)
    if numerals.settle(factor) > 1.0:
        argon, density = Plain(PURE[0][3], 4), Plain(gas.density, 4)
        shown = _flow(flow * factor)
        lines.append(say("gas-flow.working.light", argon=argon, density=density, factor=Plain(factor, 3), flow=shown))
    lines.append(say("gas-flow.working.most", most=_flow(case.most)))
    if case.wind > 0.0:
        wind = Measured(case.wind, "wind_speed", 2, given.units.get("wind_speed"))
        limit = Measured(facts.WIND_LIMIT, "wind_speed", 2, given.units.get("wind_speed"))
        lines.append(say("gas-flow.working.wind", wind=wind, limit=limit, most=_flow(case.most), flow=_flow(case.flow)))
    judged = given.number("gas_flow") if given.has("gas_flow") else case.flow
    reynolds = reynolds_number(judged, case.bore, gas.density, gas.viscosity)
    lines.append(say("gas-flow.working.reynolds", reynolds=Plain(reynolds, 2)))
    if given.word("gas") == CARBON_DIOXIDE:
        power = evaporation_power(judged, gas.density, facts.EVAPORATION_HEAT)
        lines.append(
            say("gas-flow.working.heat", flow=_flow(judged), density=Plain(gas.density, 4), power=Plain(power, 2))
        )
    return tuple(lines)


def _notes(case: _Case) -> tuple[Message, ...]:
    speed = Measured(facts.EXTRACTION, "wind_speed", 2)
    notes = [say("gas-flow.note.seismic")] if case.state == "seismic" else []
    return tuple(notes + [say("gas-flow.note.extraction", speed=speed), say("gas-flow.note.trial")])


def _cautions(given: Given) -> tuple[Message, ...]:
    cautions = [say("gas-flow.caution.procedure"), say("caution.cylinder"), say("caution.arc")]
    if given.word("gas") == CARBON_DIOXIDE:
        cautions.insert(1, say("gas-flow.caution.frost", flow=Measured(facts.FROSTING_FLOW, "gas_flow", 2)))
    return tuple(cautions)


def _sources(case: _Case) -> tuple[Source, ...]:
    return SOURCES if case.given.word("gas") == CARBON_DIOXIDE else SOURCES[:-1]


def _next(case: _Case) -> tuple[Next, ...]:
    given = case.given
    questions = []
    if case.state in ("wind", "breeze"):
        carried: list[tuple[str, object]] = [("wind", given.word("wind")), ("position", given.word("position"))]
        if given.word("wind") == "measured":
            carried.append(("wind_speed", given.measured("wind_speed")))
        questions.append(Next("process-choice", say("gas-flow.next.process"), tuple(carried)))
    flow = given.measured("gas_flow") if given.has("gas_flow") else Measured(case.flow, "gas_flow", 2)
    supply = carry("gas_flow", flow, 1.0 / 60000.0, 100.0 / 60000.0)
    questions.append(Next("gas-supply", say("gas-flow.next.supply"), _gas(given) + supply))
    # A scale for argon reads a light gas at less than half, a heavy one at a little more.
    meter = carry("gas_flow", flow, 4.0 / 60000.0, 90.0 / 60000.0)
    questions.append(Next("flow-meter", say("gas-flow.next.meter"), (("gas", given.word("gas")),) + meter))
    return tuple(questions)


def _gas(given: Given) -> tuple[tuple[str, object], ...]:
    """Return the gas as gas-supply takes it."""
    gas = given.word("gas")
    if gas == HELIUM_MIX:
        return ()
    if gas != MIXED or not given.has("carbon_dioxide"):
        return (("gas", gas),)
    return (("gas", gas),) + carry("carbon_dioxide", given.measured("carbon_dioxide", "percentage"), 0.0, 0.3)


CALCULATOR = Calculator(
    name="gas-flow",
    fields=(
        Quantity(
            "nozzle_bore",
            hint=True,
            presets=("3/8 in", "1/2 in", "5/8 in", "3/4 in", "10 mm", "13 mm", "16 mm", "19 mm"),
        ),
        Choice("wind", ("still", "breeze", "wind", "measured"), default="still", hint=True),
        Quantity("wind_speed", when=("wind", ("measured",)), presets=("2 mph", "3 mph", "5 mph", "8 mph")),
        Choice("position", ("flat", "horizontal", "vertical-up", "vertical-down", "overhead"), default="flat"),
        Quantity(
            "gas_flow",
            optional=True,
            presets=("20 ft3/h", "25 ft3/h", "30 ft3/h", "35 ft3/h", "40 ft3/h", "12 L/min", "15 L/min", "18 L/min"),
        ),
        GAS[0],
        GAS[1],
        HELIUM,
        Choice("joint", ("fillet", "lap", "square-butt", "single-v", "corner", "edge"), default="fillet"),
    ),
    answer=_answer,
    english=ENGLISH,
    sources=SOURCES,
    place=54,
    fold_from="gas",
)
