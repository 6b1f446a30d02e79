"""Cooling time: how fast a weld in steel passes from 800 to 500 °C, or the heat input that gives the time wanted."""

from calculators import cooling, cooling_wanted, numerals, ranges, units
from calculators.contract import (
    Answer,
    Calculator,
    Choice,
    Drawing,
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
    carry,
    say,
)
from calculators.drawings import cooling_curve

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

EN_1011_2 = Source(
    "EN 1011-2:2001, Annex D (SEW 088 and Uwer & Degenkolbe, 1977, have the same): cooling time of thick and thin"
    " plate; seen quoted in German texts, not read in the standard itself",
    "standard",
)
FACTORS = Source("EN 1011-2:2001, Annex D: transition thickness, joint factors F2 and F3", "from memory")
EFFICIENCY = Source(
    "EN 1011-1:1998: efficiency of gas metal arc 0.8, as tabulated by TWI; not read in the standard itself", "standard"
)
SEW_088 = Source("SEW 088: efficiency of gas metal arc 0.85; and the usual windows of cooling time", "from memory")

_CURVE_STEPS = 14
_AGREES = 0.05  # nearer than an arc can be measured


# ---------------------------------------------------------------- what is asked


class _Plate:
    """The plate and joint asked about: all four numbers, the factors, and how the heat runs away."""

    def __init__(self, given: Given) -> None:
        self.heat = given.number("heat_input")
        self.temperature = given.number("preheat_temperature")
        self.thickness = given.number("thickness")
        self.typed_time = given.number("cooling_time")
        self.unit = given.units.get("heat_input")
        self.low, self.high, self.thick = cooling.joint_factors(given.word("joint"))
        self.middle = (self.low + self.high) / 2.0
        self.plain = cooling.transition_thickness(self.heat, self.temperature)
        self.transition = cooling.transition_thickness(self.heat, self.temperature, self.middle, self.thick)
        self.thin = cooling.is_thin(self.thickness, self.transition)
        # Between the standard's transition thickness and that of the joint the two readings differ.
        self.between = self.thin != cooling.is_thin(self.thickness, self.plain)
        self.time = self.times(self.heat)[1]

    def times(self, heat: float) -> tuple[float, float, float]:
        """Return the shortest, middle and longest cooling time of a heat input, [s]."""
        fixed = (heat, self.temperature, self.thickness)
        longest = cooling.cooling_time(fixed[0], fixed[1], fixed[2], self.high, self.thick)
        middle = cooling.cooling_time(fixed[0], fixed[1], fixed[2], self.middle, self.thick)
        if cooling.is_thin(self.thickness, cooling.transition_thickness(heat, self.temperature)):
            shortest = cooling.thin_plate_time(fixed[0], fixed[1], fixed[2], self.low)
        else:
            shortest = cooling.thick_plate_time(heat, self.temperature, self.thick)
        return (shortest, middle, longest)

    def heats(self) -> tuple[float, float]:
        """Return the lowest and highest heat input that may give the typed time, [J/m]."""
        lowest = cooling_wanted.heat_input_for(self.typed_time, self.temperature, self.thickness, self.high, self.thick)
        knee = self.knee()
        one = 1.0e6
        thin = (self.typed_time / cooling.thin_plate_time(one, self.temperature, self.thickness, self.low)) ** 0.5 * one
        if thin > knee:
            return (lowest, thin)
        return (lowest, min(knee, one * self.typed_time / cooling.thick_plate_time(one, self.temperature, self.thick)))

    def knee(self) -> float:
        """Return the heat input above which the plate counts as thin by the standard, [J/m]."""
        one = 1.0e6
        share = self.thickness / cooling.transition_thickness(one, self.temperature)
        return one * share * share

    def joint_knee(self) -> float:
        """Return the heat input above which the joint counts as thin, [J/m]."""
        return self.knee() * self.thick / self.middle


def _solve(unknown: str, values: "dict[str, Any]") -> float:
    low, high, thick = cooling.joint_factors(values["joint"])
    thin = (low + high) / 2.0
    if unknown == "cooling_time":
        time = cooling.cooling_time(
            values["heat_input"], values["preheat_temperature"], values["thickness"], thin, thick
        )
        return _kept("cooling_time", time, cooling.COOLING_TIME_RANGE, "s")
    time = values["cooling_time"]
    if unknown == "heat_input":
        heat = cooling_wanted.heat_input_for(time, values["preheat_temperature"], values["thickness"], thin, thick)
        return _kept("heat_input", heat, cooling.HEAT_INPUT_RANGE, "J/m")
    if unknown == "thickness":
        return _solve_thickness(values, thin, thick)
    return _solve_preheat(values, thin, thick)


def _kept(name: str, value: float, limits: tuple[float, float], unit: str) -> float:
    """Return a number that was worked out, unless the formulas are not used so far."""
    try:
        ranges.require(name, value, limits[0], limits[1], unit)
    except ranges.OutOfRange:
        way = "low" if value < limits[0] else "high"
        limit = Measured(limits[0] if way == "low" else limits[1], name)
        raise Refusal("", say("cooling-time.refusal." + name + "." + way, limit=limit)) from None
    return value


def _solve_thickness(values: "dict[str, Any]", thin: float, thick: float) -> float:
    heat, temperature, time = values["heat_input"], values["preheat_temperature"], values["cooling_time"]
    shortest = cooling.thick_plate_time(heat, temperature, thick)
    if numerals.settle(time) <= numerals.settle(shortest):
        raise Refusal("cooling_time", say("cooling-time.refusal.thick", shortest=Measured(shortest, "cooling_time")))
    return cooling_wanted.thickness_for(time, heat, temperature, thin)


def _solve_preheat(values: "dict[str, Any]", thin: float, thick: float) -> float:
    heat, thickness, time = values["heat_input"], values["thickness"], values["cooling_time"]
    cold, hot = cooling.PREHEAT_RANGE
    shortest = cooling.cooling_time(heat, cold, thickness, thin, thick)
    longest = cooling.cooling_time(heat, hot, thickness, thin, thick)
    if numerals.settle(time) < numerals.settle(shortest):
        raise Refusal("cooling_time", say("cooling-time.refusal.cold", shortest=Measured(shortest, "cooling_time")))
    if numerals.settle(time) > numerals.settle(longest):
        raise Refusal("cooling_time", say("cooling-time.refusal.hot", longest=Measured(longest, "cooling_time")))
    return cooling_wanted.preheat_for(time, heat, thickness, thin, thick)


# ---------------------------------------------------------------- the answer


def _answer(given: Given) -> Answer:
    plate = _Plate(given)
    results = [_headline(given, plate)]
    results.append(Words("heat_flow", say("cooling-time.flow.thin" if plate.thin else "cooling-time.flow.thick")))
    results.append(Number("transition_thickness", plate.transition, "thickness", figures=3))
    results.append(_drawing(given, plate))
    return Answer(
        results=tuple(results),
        working=_working(given, plate),
        notes=_notes(given, plate),
        cautions=(
            say("cooling-time.caution.procedure"),
            say("cooling-time.caution.ends"),
            say("cooling-time.caution.hydrogen"),
        ),
        sources=(EN_1011_2, FACTORS, EFFICIENCY, SEW_088),
        next_questions=_next(given, plate),
        verdict=_verdict(given, plate) if given.solved_for is None else None,
    )


def _headline(given: Given, plate: _Plate) -> "Any":
    name = given.solved_for or "cooling_time"
    low, high, value = None, None, given.number(name)
    if name == "cooling_time":
        low, value, high = plate.times(plate.heat)
    elif name == "heat_input":
        low, high = plate.heats()
    elif name == "thickness" and plate.high > plate.low:
        low = cooling_wanted.thickness_for(plate.typed_time, plate.heat, plate.temperature, plate.low)
        high = cooling_wanted.thickness_for(plate.typed_time, plate.heat, plate.temperature, plate.high)
    elif name == "preheat_temperature" and plate.high > plate.low:
        fixed = (plate.typed_time, plate.heat, plate.thickness)
        low = cooling_wanted.preheat_for(fixed[0], fixed[1], fixed[2], plate.high, plate.thick)
        high = cooling_wanted.preheat_for(fixed[0], fixed[1], fixed[2], plate.low, plate.thick)
    if low is None or numerals.settle(low, 6) == numerals.settle(high or 0.0, 6):
        return Number(name, value)
    return Number(name, value, None, low, high, _why_a_band(plate))


def _why_a_band(plate: _Plate) -> Message:
    if plate.high > plate.low:
        return say("cooling-time.band.factor", low=Plain(plate.low, 2), high=Plain(plate.high, 2))
    return say("cooling-time.band.transition")


def _drawing(given: Given, plate: _Plate) -> Drawing:
    lowest, highest = cooling.HEAT_INPUT_RANGE
    widest = min(highest, 1.5 * plate.heat)
    first = max(lowest, 0.05 * widest)
    knees = [heat for heat in (plate.knee(), plate.joint_knee()) if first < heat < widest]
    heats = [first, widest] + knees
    # Thick plate is a straight line, which steps in whole numbers would only make uneven.
    bent = min(plate.knee(), plate.joint_knee())
    steps = [first + (widest - first) * step / _CURVE_STEPS for step in range(1, _CURVE_STEPS)]
    heats += [heat for heat in steps if heat > bent]
    curve = []
    for heat in sorted(set(heats)):
        low, middle, high = plate.times(heat)
        curve.append((heat, low, middle, high))
    knee = plate.joint_knee()
    shown = (knee, plate.times(knee)[1]) if first < knee < 0.95 * widest else None
    description = say(
        "cooling-time.drawing.description",
        heat_input=Measured(plate.heat, "heat_input", None, plate.unit),
        cooling_time=Measured(plate.time, "cooling_time"),
        widest=Measured(widest, "heat_input", None, plate.unit),
        longest=Measured(curve[-1][2], "cooling_time"),
    )
    names = (
        say("cooling-time.field.heat_input"),
        say("cooling-time.field.cooling_time"),
        say("cooling-time.drawing.knee"),
    )
    title = say("cooling-time.drawing.title")
    return cooling_curve.draw(tuple(curve), (plate.heat, plate.time), shown, plate.unit, title, description, names)


def _working(given: Given, plate: _Plate) -> tuple[Message, ...]:
    celsius = units.from_coherent(plate.temperature, "degC")
    shown: dict[str, object] = {
        "temperature": Plain(celsius, 4),
        "heat": Plain(units.from_coherent(plate.heat, "kJ/mm"), 4),
        "thickness": Plain(units.from_coherent(plate.thickness, "mm"), 4),
        "thin_factor": Plain(plate.middle, 3),
        "thick_factor": Plain(plate.thick, 3),
        "plain": Measured(plate.plain, "thickness", 4, "mm"),
        "transition": Measured(plate.transition, "thickness", 4, "mm"),
        "time": Plain(plate.typed_time, 4),
        "cooling_time": Measured(plate.time, "cooling_time", 4),
        "heat_input": Measured(plate.heat, "heat_input", 4, "kJ/mm"),
        "heat_input_us": Measured(plate.heat, "heat_input", 4, "kJ/in"),
        "found_thickness": Measured(plate.thickness, "thickness", 4, "mm"),
        "preheat_temperature": Measured(plate.temperature, "preheat_temperature", 4, "degC"),
    }
    lines = ["units", "transition"]
    if plate.middle != plate.thick:
        lines.append("joint-transition")
    lines.append("thin-plate" if plate.thin else "thick-plate")
    if given.solved_for == "thickness":
        lines.append("thickness")
    elif given.solved_for == "heat_input":
        lines.append("thin-heat" if plate.thin else "thick-heat")
    else:
        if given.solved_for == "preheat_temperature":
            lines.append("preheat")
        lines.append("thin" if plate.thin else "thick")
    return tuple(say("cooling-time.working." + line, **shown) for line in lines)


def _notes(given: Given, plate: _Plate) -> tuple[Message, ...]:
    notes = [say("cooling-time.note.thin" if plate.thin else "cooling-time.note.thick")]
    if plate.high > plate.low and plate.thin:
        notes.append(say("cooling-time.note.chart", factor=Plain(plate.middle, 2)))
    if plate.between:
        notes.append(say("cooling-time.note.between", plain=Measured(plate.plain, "thickness", 3)))
    notes.append(say("cooling-time.note.efficiency"))
    notes.append(say("cooling-time.note.windows"))
    notes.append(say("cooling-time.note.holds"))
    return tuple(notes)


def _verdict(given: Given, plate: _Plate) -> Verdict:
    """Return whether a typed time is what the formula gives from the others."""
    low, middle, high = plate.times(plate.heat)
    typed = numerals.settle(plate.typed_time, 6)
    difference = typed - numerals.settle(middle, 6)
    share = abs(difference) / middle
    sense = "same" if numerals.settle(share, 6) < 0.0005 else "longer" if difference > 0 else "shorter"
    message = say(
        "cooling-time.verdict." + sense,
        cooling_time=given.measured("cooling_time"),
        percent=Plain(share * 100.0, 2),
    )
    if numerals.settle(low * (1.0 - _AGREES)) <= typed <= numerals.settle(high * (1.0 + _AGREES)):
        return Verdict("inside", message)
    return Verdict("outside", message, say("cooling-time.remedy"))


def _next(given: Given, plate: _Plate) -> tuple[Next, ...]:
    heat = ("heat_input", Measured(plate.heat, "heat_input", None, plate.unit))
    thickness = given.measured("thickness")
    joint = "butt" if given.word("joint") in ("bead-on-plate", "butt-passes") else "tee-fillets"
    return (
        Next("heat-input", say("cooling-time.next.heat-input"), (heat,)),
        Next("preheat", say("cooling-time.next.preheat"), (("family", "structural"), ("thickness", thickness), heat)),
        Next(
            "shrinkage",
            say("cooling-time.next.shrinkage"),
            (("joint", joint),) + carry("thickness", thickness, 1.0e-3, 0.1),
        ),
    )


ENGLISH = {
    "title": "Cooling time t8/5",
    "question": "How fast does this weld cool from 800 to 500 °C, and what heat input gives the time I need?",
    "found-by": "t85 cool cooling rate hardness haz",
    "lead": "For steel. Leave one of the four numbers blank: it is worked out.",
    "field.joint": "Weld",
    "option.joint.bead-on-plate": "Bead on plate",
    "option.joint.butt-passes": "Passes in a butt joint",
    "option.joint.corner-fillet": "One-pass corner fillet",
    "option.joint.tee-fillet": "One-pass fillet on a T joint",
    "field.heat_input": "Heat input",
    "hint.heat_input": "With the efficiency in it. Volts times amps over travel alone is too high.",
    "field.thickness": "Thickness",
    "field.preheat_temperature": "Steel before the pass",
    "hint.preheat_temperature": "Preheat, or interpass temperature. No preheat: as cold as the steel is.",
    "field.cooling_time": "Cooling time t8/5",
    "hint.cooling_time": "From 800 to 500 °C (1472 to 932 °F). Blank works it out.",
    "range.heat_input": "the formulas are used for arc welds of that size only",
    "range.thickness": "on thinner sheet the air and the backing cool it too, which the formulas leave out",
    "range.preheat_temperature": "the formulas are used up to there only",
    "range.cooling_time": "beyond that the formulas are not used here",
    "result.cooling_time": "Cooling time, 800 to 500 °C",
    "result.heat_input": "Heat input, efficiency included",
    "result.thickness": "Thickness",
    "result.preheat_temperature": "Steel before the pass",
    "result.heat_flow": "Heat flow",
    "result.transition_thickness": "Transition thickness",
    "flow.thin": "As in thin plate",
    "flow.thick": "As in thick plate",
    "band.factor": "The joint factor of thin plate lies between {low} and {high}.",
    "band.transition": "So near the transition thickness the two formulas can be read two ways.",
    "drawing.title": "Cooling time against heat input, this plate",
    "drawing.description": "A curve that rises with heat input, and from the transition on faster: at {heat_input} it stands at {cooling_time}, at {widest} at {longest}.",
    "drawing.knee": "counts as thin",
    "working.units": "In the formulas T is in °C, Q in kJ/mm, d in mm. Here T = {temperature}, Q = {heat}, d = {thickness}.",
    "working.transition": "Transition thickness = √((4300 − 4.3 T) ÷ (6700 − 5 T) × 100 000 × Q × (1 ÷ (500 − T) + 1 ÷ (800 − T))) = {plain}",
    "working.joint-transition": "For this joint × √(F2 ÷ F3) = × √({thin_factor} ÷ {thick_factor}) = {transition}: there both formulas give the same.",
    "working.thin-plate": "{thickness} mm is below {transition}: thin plate.",
    "working.thick-plate": "{thickness} mm is not below {transition}: thick plate.",
    "working.thick": "Cooling time = (6700 − 5 T) × Q × (1 ÷ (500 − T) − 1 ÷ (800 − T)) × F3 = (6700 − 5 × {temperature}) × {heat} × (1 ÷ (500 − {temperature}) − 1 ÷ (800 − {temperature})) × {thick_factor} = {cooling_time}",
    "working.thin": "Cooling time = (4300 − 4.3 T) × 100 000 × (Q ÷ d)² × (1 ÷ (500 − T)² − 1 ÷ (800 − T)²) × F2 = (4300 − 4.3 × {temperature}) × 100 000 × ({heat} ÷ {thickness})² × (1 ÷ (500 − {temperature})² − 1 ÷ (800 − {temperature})²) × {thin_factor} = {cooling_time}",
    "working.thick-heat": "Heat input = t ÷ ((6700 − 5 T) × (1 ÷ (500 − T) − 1 ÷ (800 − T)) × F3) = {time} ÷ ((6700 − 5 × {temperature}) × (1 ÷ (500 − {temperature}) − 1 ÷ (800 − {temperature})) × {thick_factor}) = {heat_input} = {heat_input_us}",
    "working.thin-heat": "Heat input = d × √(t ÷ ((4300 − 4.3 T) × 100 000 × (1 ÷ (500 − T)² − 1 ÷ (800 − T)²) × F2)) = {thickness} × √({time} ÷ ((4300 − 4.3 × {temperature}) × 100 000 × (1 ÷ (500 − {temperature})² − 1 ÷ (800 − {temperature})²) × {thin_factor})) = {heat_input} = {heat_input_us}",
    "working.thickness": "Thickness = Q × √((4300 − 4.3 T) × 100 000 × (1 ÷ (500 − T)² − 1 ÷ (800 − T)²) × F2 ÷ t) = {heat} × √((4300 − 4.3 × {temperature}) × 100 000 × (1 ÷ (500 − {temperature})² − 1 ÷ (800 − {temperature})²) × {thin_factor} ÷ {time}) = {found_thickness}",
    "working.preheat": "The temperature is found by trial: {preheat_temperature} is where the formula gives the time typed.",
    "note.thin": "Thinner than the transition thickness: heat runs off to the sides only, and a thinner plate cools slower.",
    "note.thick": "Not thinner than the transition thickness: heat runs down as well, and more thickness changes nothing.",
    "note.chart": "The factor F2 of this joint hangs on heat input and thickness by a chart not at hand. The middle, {factor}, is taken.",
    "note.between": "The plate lies between the transition thickness of plain plate, {plain}, and that of this joint. The longer time is given, the band holds both.",
    "note.efficiency": "Gas metal arc is reckoned with an efficiency of 0.8. Some works use 0.85: that makes the time 6 % longer in thick plate and 13 % in thin.",
    "note.windows": "Windows often named (from memory): 10 to 25 s for steels of 355 to 460 MPa yield, 5 to 15 or 20 s for 690 MPa. The steel's data sheet gives the real one.",
    "note.holds": "For unalloyed and low-alloy steel, plate wide on both sides of the weld. Not for stainless or aluminum. A narrow or warm piece cools slower.",
    "verdict.same": "your {cooling_time} is what the formula gives",
    "verdict.longer": "your {cooling_time} is {percent} % longer than the formula gives",
    "verdict.shorter": "your {cooling_time} is {percent} % shorter than the formula gives",
    "remedy": "The four numbers do not belong together. Leave out the one you trust least.",
    "refusal.thick": "However thick the plate, this heat does not cool faster than in {shortest}, and at that time no thickness can be told",
    "refusal.cold": "Even in the coldest steel this book reckons with, it takes {shortest} to cool. Use less heat",
    "refusal.hot": "Even in the hottest steel this book reckons with, it takes no longer than {longest} to cool. Use more heat",
    "refusal.cooling_time.low": "It would cool in less than {limit}. The formulas are not used there",
    "refusal.cooling_time.high": "It would take longer than {limit} to cool. There the air and the backing cool it too, which the formulas leave out",
    "refusal.heat_input.low": "It would take less than {limit}: too small an arc weld for these formulas",
    "refusal.heat_input.high": "It would take more than {limit}: too large an arc weld for these formulas",
    "caution.procedure": "The steel's data sheet and the welding procedure (WPS) set the window. This page only does the sum.",
    "caution.ends": "Too fast: a hard zone beside the weld that can crack. Too slow: a soft zone, or one that breaks in the cold.",
    "caution.hydrogen": "The right cooling time does not replace preheat against hydrogen cracks.",
    "next.heat-input": "What volts, amps and travel give this heat input?",
    "next.preheat": "How warm must it be against hydrogen cracks, if it is structural steel?",
    "next.shrinkage": "How far will it pull?",
}

CALCULATOR = Calculator(
    name="cooling-time",
    fields=(
        Choice("joint", tuple(row[0] for row in cooling.JOINT_FACTORS), default="butt-passes"),
        Quantity(
            "heat_input", hint=True, low=100.0, high=10000.0, presets=("20 kJ/in", "30 kJ/in", "1 kJ/mm", "1.5 kJ/mm")
        ),
        Quantity("thickness", low=3.0, high=300.0, presets=("1/4 in", "3/8 in", "1/2 in", "3/4 in", "1 in")),
        Quantity(
            "preheat_temperature",
            hint=True,
            low=-20.0,
            high=300.0,
            presets=("70 degF", "200 degF", "300 degF", "20 degC", "100 degC"),
        ),
        Quantity("cooling_time", hint=True, presets=("8 s", "10 s", "15 s", "20 s")),
    ),
    relations=(
        # Not checked by the share they differ by: the verdict takes the band of the joint factor into account.
        Relation(("heat_input", "thickness", "preheat_temperature", "cooling_time"), _solve, check="", also=("joint",)),
    ),
    answer=_answer,
    english=ENGLISH,
    sources=(EN_1011_2, FACTORS, EFFICIENCY, SEW_088),
    place=46,
)
