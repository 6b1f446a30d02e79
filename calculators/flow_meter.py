"""Flow meter: what truly flows when the scale was made for another gas, pressure or temperature."""

from calculators import gas_as_mix, shielding_gas, units
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
    carry,
    say,
)
from calculators.facts.gas_state import STANDARD_ATMOSPHERE
from calculators.facts.gases import AIR_DENSITY, GASES
from calculators.gas_as_mix import HELIUM, GasAsMix
from calculators.meter_correction import meter_factor

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

THEORY = Source("Theory of the variable-area meter: the float takes the same push from every gas", "published")
FACTORS = Source(
    "A published table of gas factors for variable-area meters, good to 10 %",
    "published",
)
DENSITY = Source("Densities by the equations of state in CoolProp 8.0.0, mixed by volume", "published")
GAUGE = Source("A two-gauge regulator with an orifice reads pressure, not flow", "common practice")

_SCALES = (
    ("argon", GASES[0][3]),
    ("ar-co2-25", 0.75 * GASES[0][3] + 0.25 * GASES[1][3]),
    ("carbon-dioxide", GASES[1][3]),
    ("air", AIR_DENSITY),
    ("nitrogen", GASES[5][3]),
    ("oxygen", GASES[2][3]),
    ("helium", GASES[3][3]),
)
_USUAL_TEMPERATURE = units.to_coherent(70.0, "degF")
_OFF = 0.10  # what such a correction may be out
_ROWS = (("ft3/h", (20.0, 25.0, 30.0, 35.0, 40.0)), ("L/min", (10.0, 12.0, 15.0, 18.0, 20.0)))
_PAIRS = (("scale_pressure", "inlet_pressure"), ("scale_temperature", "gas_temperature"))


def _prepare(given: Given) -> None:
    for pair in _PAIRS:
        blanks = [name for name in pair if not given.has(name)]
        if len(blanks) == 1 and pair == _PAIRS[0]:
            raise Refusal(blanks[0], say("flow-meter.refusal.pressure"))
        for name in blanks:
            given.fill(name, 0.0 if pair == _PAIRS[0] else _USUAL_TEMPERATURE)


def _factor(given: Given) -> float:
    return meter_factor(
        dict(_SCALES)[given.word("scale_gas")],
        GasAsMix(given).density,
        given.number("scale_pressure") + STANDARD_ATMOSPHERE,
        given.number("inlet_pressure") + STANDARD_ATMOSPHERE,
        given.number("scale_temperature"),
        given.number("gas_temperature"),
    )


def _solve(unknown: str, values: "dict[str, Any]") -> float:
    known = Given()
    known.values = values
    factor = _factor(known)
    return values["reading"] * factor if unknown == "gas_flow" else values["gas_flow"] / factor


# ---------------------------------------------------------------- the answer


def _answer(given: Given) -> Answer:
    factor = _factor(given)
    headline = given.solved_for or "gas_flow"
    value = given.number(headline)
    results: list[object] = [
        Number(headline, value, "gas_flow", value * (1.0 - _OFF), value * (1.0 + _OFF), say("flow-meter.band")),
        Number("meter_factor", factor, "ratio"),
        _table(given, factor),
    ]
    return Answer(
        results=tuple(results),
        working=_working(given, factor),
        notes=_notes(given),
        cautions=(say("caution.cylinder"),),
        sources=(THEORY, FACTORS, DENSITY, GAUGE),
        next_questions=_next(given),
    )


def _table(given: Given, factor: float) -> Table:
    unit = given.units.get("reading") or given.units.get("gas_flow") or "ft3/h"
    rows = []
    for flow in dict(_ROWS)[unit]:
        read = units.to_coherent(flow, unit)
        rows.append((Measured(read, "gas_flow", None, unit), Measured(read * factor, "gas_flow", None, unit)))
    columns = (say("flow-meter.column.reading"), say("flow-meter.column.true"))
    return Table("readings", say("flow-meter.table"), columns, tuple(rows))


def _working(given: Given, factor: float) -> tuple[Message, ...]:
    lines = [
        say(
            "flow-meter.working.density",
            scale=Plain(dict(_SCALES)[given.word("scale_gas")], 4),
            gas=Plain(GasAsMix(given).density, 4),
            factor=Plain((dict(_SCALES)[given.word("scale_gas")] / GasAsMix(given).density) ** 0.5, 4),
        )
    ]
    if "inlet_pressure" in given.typed:
        now = given.number("inlet_pressure") + STANDARD_ATMOSPHERE
        scale = given.number("scale_pressure") + STANDARD_ATMOSPHERE
        unit = given.units.get("inlet_pressure")
        lines.append(
            say(
                "flow-meter.working.pressure",
                now=Measured(now, "inlet_pressure", 4, unit),
                scale=Measured(scale, "inlet_pressure", 4, unit),
                factor=Plain((now / scale) ** 0.5, 4),
            )
        )
    if "gas_temperature" in given.typed or "scale_temperature" in given.typed:
        ratio = (given.number("scale_temperature") / given.number("gas_temperature")) ** 0.5
        lines.append(say("flow-meter.working.temperature", factor=Plain(ratio, 4)))
    reading = Measured(given.number("reading"), "gas_flow", 4, given.units.get("reading"))
    flow = Measured(given.number("gas_flow"), "gas_flow", 4, given.units.get("reading"))
    lines.append(say("flow-meter.working.flow", reading=reading, factor=Plain(factor, 4), flow=flow))
    return tuple(lines)


def _notes(given: Given) -> tuple[Message, ...]:
    notes = [say("flow-meter.note.pressure"), say("flow-meter.note.gauge"), say("flow-meter.note.ball")]
    taken = [name for name in _PAIRS[1] if name not in given.typed]
    if len(taken) == 1:
        shown = Measured(_USUAL_TEMPERATURE, "cylinder_temperature")
        notes.insert(0, say("flow-meter.note.taken", temperature=shown))
    return tuple(notes)


def _next(given: Given) -> tuple[Next, ...]:
    flow = Measured(given.number("gas_flow"), "gas_flow", None, given.units.get("reading"))
    carried = (("gas", given.word("gas")),) + carry("gas_flow", flow, 1.0 / 60000.0, 100.0 / 60000.0)
    return (Next("gas-flow", say("flow-meter.next.flow"), carried),)


ENGLISH = {
    "title": "Flow meter",
    "question": "What truly flows when the meter was made for another gas?",
    "found-by": "flowmeter rotameter tube ball float regulator scale argon on co2 helium reads wrong correction cfh psi",
    "lead": "Type the reading for the true flow, or the flow you want for the reading to set.",
    "field.scale_gas": "Scale made for",
    "option.scale_gas.argon": "Argon",
    "option.scale_gas.ar-co2-25": "Argon 75, carbon dioxide 25",
    "option.scale_gas.carbon-dioxide": "Carbon dioxide",
    "option.scale_gas.air": "Air",
    "option.scale_gas.nitrogen": "Nitrogen",
    "option.scale_gas.oxygen": "Oxygen",
    "option.scale_gas.helium": "Helium",
    "field.reading": "Reading",
    "field.gas_flow": "True flow",
    "field.scale_pressure": "Inlet pressure the scale was made for",
    "hint.scale_pressure": "Printed on the tube, often 20, 30, 50 or 80 psi.",
    "field.inlet_pressure": "Inlet pressure now",
    "field.scale_temperature": "Temperature the scale was made for",
    "field.gas_temperature": "Temperature of the gas",
    "range.scale_temperature": "the correction is not meant for colder or hotter",
    "range.gas_temperature": "the correction is not meant for colder or hotter",
    "result.gas_flow": "True flow",
    "result.reading": "Set the float to",
    "result.meter_factor": "True flow for each reading",
    "band": "Such a correction is good to about 10 %.",
    "table": "Reading and true flow",
    "column.reading": "Reading",
    "column.true": "True",
    "refusal.pressure": "Type both pressures or neither: the correction takes one against the other",
    "working.density": "Gas: √({scale} kg/m³ ÷ {gas} kg/m³) = {factor}",
    "working.pressure": "Pressure, absolute: √({now} ÷ {scale}) = {factor}",
    "working.temperature": "Temperature, from absolute zero: √(scale ÷ gas) = {factor}",
    "working.flow": "True flow = reading × factor = {reading} × {factor} = {flow}",
    "note.pressure": "The pressure in the tube counts. Valve after the tube: it is the inlet pressure. Valve before the tube: it is nearly the air's, so leave both blank.",
    "note.gauge": "A second round gauge marked in flow is a pressure gauge behind a hole: it shows flow even when the nozzle is blocked.",
    "note.ball": "Read a float at its widest edge, a ball at its middle, the tube upright. For a ball this is less sure.",
    "note.taken": "{temperature} was taken for the other temperature.",
    "next.flow": "Does that flow suit the nozzle?",
}
ENGLISH.update(shielding_gas.ENGLISH)
ENGLISH.update(gas_as_mix.ENGLISH)

CALCULATOR = Calculator(
    name="flow-meter",
    fields=(
        Choice("scale_gas", tuple(name for name, _ in _SCALES), default="argon"),
        shielding_gas.FIELDS[0],
        shielding_gas.FIELDS[1],
        HELIUM,
        Quantity("reading", "gas_flow", presets=("20 ft3/h", "25 ft3/h", "30 ft3/h", "35 ft3/h", "15 L/min")),
        Quantity("gas_flow", presets=("25 ft3/h", "30 ft3/h", "35 ft3/h", "15 L/min")),
        Quantity("scale_pressure", "inlet_pressure", optional=True, hint=True, presets=("30 psi", "50 psi", "80 psi")),
        Quantity("inlet_pressure", optional=True, presets=("30 psi", "50 psi", "80 psi")),
        Quantity("scale_temperature", "cylinder_temperature", optional=True, presets=("70 degF", "20 degC")),
        Quantity("gas_temperature", "cylinder_temperature", optional=True, presets=("32 degF", "95 degF", "0 degC")),
    ),
    relations=(
        Relation(
            ("reading", "gas_flow"),
            _solve,
            check="gas_flow",
            also=(
                "scale_gas",
                "gas",
                "carbon_dioxide",
                "helium",
                "scale_pressure",
                "inlet_pressure",
                "scale_temperature",
                "gas_temperature",
            ),
        ),
    ),
    prepare=_prepare,
    answer=_answer,
    english=ENGLISH,
    sources=(THEORY, FACTORS, DENSITY, GAUGE),
    place=56,
    fold_from="scale_pressure",
)
