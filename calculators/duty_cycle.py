"""Duty cycle: how much of ten minutes the machine may weld at this current, and how long it rests after a pass."""

from calculators import duty, numerals, ranges
from calculators.contract import (
    Answer,
    Calculator,
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
    say,
)
from calculators.drawings import duty_bar

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

IEC_60974 = Source(
    "IEC 60974-1: duty cycle is of ten minutes, in air of 40 °C; seen quoted, not read in the standard itself",
    "standard",
)
NEC_630 = Source(
    "NEC Table 630.11(A), 2008: multipliers of arc welders without a motor, 100 to 20 %, equal √ duty to 0.005",
    "standard",
)
FIXED = Source("Heat of rectifiers and transistors grows with the current, not with its square", "from memory")
GUN = Source("Guns have their own rating, lower in argon mixes than in CO₂", "common practice")

_SOURCES = (IEC_60974, NEC_630, FIXED, GUN)
_PERIOD = 600.0  # the ten minutes that a duty cycle is of, [s]
_CAREFUL = 1.0  # the slowest that heat grows with current: what one rating alone is reckoned with
_EXPONENTS = (1.0, 5.0)  # no machine's two ratings lie outside


# ---------------------------------------------------------------- what is asked


def _exponent(values: "dict[str, Any]") -> float:
    """Return how this machine's heat grows with current: by two ratings, else the careful end."""
    if values.get("second_current") is None:
        return _CAREFUL
    pairs = sorted(
        [
            (values["rated_current"], values["rated_duty_cycle"]),
            (values["second_current"], values["second_duty_cycle"]),
        ]
    )
    (low_current, long_duty), (high_current, short_duty) = pairs
    try:
        found = duty.exponent_of(high_current, short_duty, low_current, long_duty)
        ranges.require("exponent", found, _EXPONENTS[0], _EXPONENTS[1], "")
    except ranges.OutOfRange:
        raise Refusal("second_duty_cycle", say("duty-cycle.refusal.ratings")) from None
    return found


def _highest(values: "dict[str, Any]") -> float:
    return max(values["rated_current"], values.get("second_current") or 0.0)


def _solve(unknown: str, values: "dict[str, Any]") -> float:
    if unknown in ("rated_current", "rated_duty_cycle") and values.get("second_current") is not None:
        raise Refusal("second_current", say("duty-cycle.refusal.second"))
    if unknown == "rated_current":
        # A machine is never run above its rating, however short the arc.
        asked = values["current"], values["duty_cycle"]
        return max(duty.current_for_duty(values["rated_duty_cycle"], asked[0], asked[1], _CAREFUL), asked[0])
    if unknown == "current":
        exponent = _exponent(values)
        found = duty.current_for_duty(
            values["duty_cycle"], values["rated_current"], values["rated_duty_cycle"], exponent
        )
        return min(found, _highest(values))
    _refuse_above(values["current"], _highest(values))
    if unknown == "rated_duty_cycle":
        return values["duty_cycle"] * (values["current"] / values["rated_current"]) ** _CAREFUL
    exponent = _exponent(values)
    return duty.allowed_duty(values["current"], values["rated_current"], values["rated_duty_cycle"], exponent)


def _refuse_above(current: float, highest: float) -> None:
    if ranges.above(current, highest):
        raise Refusal("current", say("duty-cycle.refusal.above", highest=Measured(highest, "current")))


def _prepare(given: Given) -> None:
    for first, other in (("second_current", "second_duty_cycle"), ("second_duty_cycle", "second_current")):
        if given.has(first) and not given.has(other):
            raise Refusal(other, say("duty-cycle.refusal.half"))


class _Machine:
    """The machine at the current asked about."""

    def __init__(self, given: Given) -> None:
        names = ("rated_current", "rated_duty_cycle", "second_current", "second_duty_cycle")
        values = {name: given.values.get(name) for name in names}
        self.rated, self.rated_duty = given.number("rated_current"), given.number("rated_duty_cycle")
        self.exponent = _exponent(values)
        self.two_ratings = given.has("second_current")
        self.best = self.exponent if self.two_ratings else duty.SQUARE  # as copper's heat grows
        self.highest = _highest(values)
        self.current = given.number("current")
        _refuse_above(self.current, self.highest)
        self.allowed = numerals.settle(self.duty_at(self.exponent), 9)
        self.most = numerals.settle(self.duty_at(self.best), 9)
        self.on, self.most_on = self.allowed * _PERIOD, self.most * _PERIOD
        self.steady = self.current_at(1.0, self.exponent)
        self.time = given.number("arc_time") if given.has("arc_time") else None
        self.too_long = self.time is not None and self.allowed < 1.0 and ranges.above(self.time, self.on)
        self.far_too_long = self.too_long and self.most < 1.0 and ranges.above(self.time or 0.0, self.most_on)

    def duty_at(self, exponent: float) -> float:
        """Return the share of the time that the current asked about is allowed."""
        return duty.allowed_duty(self.current, self.rated, self.rated_duty, exponent)

    def current_at(self, share: float, exponent: float) -> float:
        """Return the current allowed that share of the time, never above the rating."""
        return min(duty.current_for_duty(share, self.rated, self.rated_duty, exponent), self.highest)

    def rest(self, share: float) -> float:
        """Return how long the machine rests after the pass where it is allowed that share, [s]."""
        assert self.time is not None
        return self.time * (1.0 - share) / share


# ---------------------------------------------------------------- the answer


def _answer(given: Given) -> Answer:
    machine = _Machine(given)
    return Answer(
        results=_results(given, machine),
        working=_working(given, machine),
        notes=_notes(given, machine),
        cautions=(say("duty-cycle.caution.cut-out"), say("duty-cycle.caution.hot"), say("duty-cycle.caution.gun")),
        sources=_SOURCES,
        next_questions=_next(given, machine),
        verdict=_verdict(given, machine),
    )


def _results(given: Given, machine: _Machine) -> tuple[object, ...]:
    results: list[object] = [_headline(given, machine)]
    if machine.time is not None:
        label = say("duty-cycle.label.rest-over" if machine.far_too_long else "duty-cycle.label.rest")
        rests = machine.rest(machine.allowed), machine.rest(machine.most)
        results.insert(0, _banded("rest_time", rests[0], rests[1], "arc_time", label))
    results.append(_banded("minutes_on", machine.on, machine.most_on, "arc_time"))
    results.append(_banded("minutes_off", _PERIOD - machine.on, _PERIOD - machine.most_on, "arc_time"))
    if given.solved_for != "current" or machine.allowed < 1.0:
        results.append(_banded("steady_current", machine.steady, machine.current_at(1.0, machine.best), "current"))
    results.append(_drawing(machine))
    for each in results:
        if isinstance(each, Number) and each.low is not None:
            each.band = say("duty-cycle.band")  # once is enough
            break
    return tuple(results)


def _banded(name: str, value: float, other: float, quantity: str, label: Message | None = None) -> Number:
    """Return the careful value, with the other end where the machine's heat may grow faster with current."""
    if numerals.settle(other, 6) == numerals.settle(value, 6):
        return Number(name, value, quantity, label=label)
    return Number(name, value, quantity, min(value, other), max(value, other), say("duty-cycle.band.same"), label)


def _headline(given: Given, machine: _Machine) -> Number:
    """Return what was asked for, at its careful end."""
    name = given.solved_for or "duty_cycle"
    value = given.number(name) if given.solved_for else machine.allowed
    other = value
    if name == "duty_cycle":
        other = machine.most
    elif name == "current":
        other = machine.current_at(given.number("duty_cycle"), machine.best)
    elif name == "rated_current":
        wanted = given.number("duty_cycle")
        other = max(machine.current, duty.current_for_duty(machine.rated_duty, machine.current, wanted))
    else:
        other = given.number("duty_cycle") * (machine.current / machine.rated) ** duty.SQUARE
    found = _banded(name, value, other, "current" if name.endswith("current") else "duty_cycle")
    if name == "duty_cycle":
        low, high = [Measured(each, "arc_time", unit="min") for each in (machine.on, machine.most_on)]
        found.in_words = say(
            "duty-cycle.minutes" if found.low is not None else "duty-cycle.minutes-one", low=low, high=high
        )
    return found


def _drawing(machine: _Machine) -> Drawing:
    on, off = Measured(machine.on, "arc_time", unit="min"), Measured(_PERIOD - machine.on, "arc_time", unit="min")
    return duty_bar.draw(
        machine.on,
        _PERIOD,
        (say("duty-cycle.drawing.on", on=on), say("duty-cycle.drawing.off", off=off)),
        say("duty-cycle.drawing.scale"),
        say("duty-cycle.drawing.title", current=Measured(machine.current, "current")),
        say("duty-cycle.drawing.description", on=on, off=off),
    )


def _verdict(given: Given, machine: _Machine) -> Verdict | None:
    if machine.time is not None:
        shown: dict[str, object] = {"time": given.measured("arc_time")}
        shown["on"], shown["most"] = [Measured(each, "arc_time", unit="min") for each in (machine.on, machine.most_on)]
        if machine.allowed == 1.0:
            return Verdict("inside", say("duty-cycle.verdict.no-rest"))
        if not machine.too_long:
            return Verdict("inside", say("duty-cycle.verdict.pass", **shown))
        wanted, state = min(machine.time / _PERIOD, 1.0), "outside" if machine.far_too_long else "unclear"
        remedy = "pass"
    elif given.solved_for:
        return None
    else:
        wanted = given.number("duty_cycle")
        shown = {"wanted": given.measured("duty_cycle")}
        shown["allowed"], shown["most"] = [Measured(each, "duty_cycle") for each in (machine.allowed, machine.most)]
        if not ranges.above(wanted, machine.allowed):
            return Verdict("inside", say("duty-cycle.verdict.enough", **shown))
        state, remedy = "outside" if ranges.above(wanted, machine.most) else "unclear", "current"
    current = Measured(machine.current_at(wanted, machine.exponent), "current")
    message = say("duty-cycle.verdict." + remedy + "-" + state, **shown)
    return Verdict(state, message, say("duty-cycle.remedy." + remedy, current=current))


def _working(given: Given, machine: _Machine) -> tuple[Message, ...]:
    shown: dict[str, object] = {
        "rated": Measured(machine.rated, "current", 4),
        "rated_duty": Measured(machine.rated_duty, "duty_cycle", 4),
        "current": Measured(machine.current, "current", 4),
        "exponent": Plain(machine.exponent, 4),
        "inverse": Plain(1.0 / machine.exponent, 4),
        "allowed": Measured(machine.allowed, "duty_cycle", 4),
        "on": Measured(machine.on, "arc_time", 4, "min"),
        "off": Measured(_PERIOD - machine.on, "arc_time", 4, "min"),
        "period": Measured(_PERIOD, "arc_time", 4, "min"),
        "steady": Measured(machine.steady, "current", 4),
    }
    lines = ["allowed", "minutes", "steady"]
    if machine.two_ratings:
        shown["second"] = given.measured("second_current", "current")
        shown["second_duty"] = given.measured("second_duty_cycle", "duty_cycle")
        lines.insert(0, "exponent")
    if machine.time is not None:
        shown["time"] = given.measured("arc_time")
        shown["rest"] = Measured(machine.rest(machine.allowed), "arc_time", 4, given.units.get("arc_time"))
        lines.append("rest")
    return tuple([say("duty-cycle.working." + line, **shown) for line in lines])


def _notes(given: Given, machine: _Machine) -> tuple[Message, ...]:
    notes = []
    if given.solved_for in ("current", "rated_current") and machine.current == machine.highest:
        notes.append(say("duty-cycle.note.capped"))
    if machine.allowed < 1.0:
        notes.append(say("duty-cycle.note.period", percent=Plain(machine.allowed * 100.0, 3)))
    notes.append(say("duty-cycle.note.own-line" if machine.two_ratings else "duty-cycle.note.one-rating"))
    return tuple(notes)


def _next(given: Given, machine: _Machine) -> tuple[Next, ...]:
    if given.number("current") > 600.0:  # the most that the next questions reckon with
        return ()
    current = ("current", given.measured("current"))
    # The most that may be welded heats leads and breakers most.
    solved = given.solved_for == "duty_cycle"
    share = ("duty_cycle", Measured(machine.most, "duty_cycle") if solved else given.measured("duty_cycle"))
    return (
        Next("lead-drop", say("duty-cycle.next.lead-drop"), (current, share)),
        Next("generator-size", say("duty-cycle.next.generator-size"), (current, share)),
    )


ENGLISH = {
    "title": "Duty cycle",
    "question": "How long can the machine weld at this current, and how long must it rest?",
    "found-by": "duty cycle percent overheat thermal cutout trip rest cool down ten minutes rated plate continuous overheated overheating cuts cutting off quits",
    "lead": "Copy one rating off the plate. Leave out what you want to know.",
    "field.rated_current": "Current on the plate",
    "field.rated_duty_cycle": "Percent that goes with it",
    "field.second_current": "Another current on the plate",
    "hint.second_current": "With it the answer follows your own machine.",
    "field.second_duty_cycle": "Percent that goes with that",
    "field.current": "Current you weld at",
    "field.duty_cycle": "Arc time in ten minutes",
    "hint.duty_cycle": "Blank: what the machine allows.",
    "field.arc_time": "Pass just welded",
    "hint.arc_time": "Tells how long to rest now.",
    "result.duty_cycle": "By its rating, at this current",
    "result.current": "Most current for that",
    "result.rated_current": "Plate needed, at that percent",
    "result.rated_duty_cycle": "Plate needed, at that current",
    "result.minutes_on": "Arc on, of ten minutes",
    "result.minutes_off": "Then off",
    "result.steady_current": "Continuous current",
    "label.rest": "Rest now, fan running",
    "label.rest-over": "Rest now at least, fan running",
    "minutes": "{low} to {high} of ten, then rest",
    "minutes-one": "{low} of ten, then rest",
    "band": "Shown big: heat that grows with the current, as in rectifiers and transistors. The other end: with its square, as in copper.",
    "band.same": "From the same.",
    "drawing.title": "Ten minutes at {current}",
    "drawing.description": "A bar of ten minutes: arc {on}, rest {off}.",
    "drawing.on": "Arc {on}",
    "drawing.off": "Rest {off}",
    "drawing.scale": "Time",
    "verdict.no-rest": "this current needs no rest",
    "verdict.pass": "{time} is within the {on} of ten",
    "verdict.pass-outside": "{time} is more than the {most} of ten",
    "verdict.pass-unclear": "{time} is more than the {on} of ten that are sure",
    "verdict.enough": "{wanted} wanted, {allowed} allowed",
    "verdict.current-outside": "{wanted} wanted, {most} allowed at most",
    "verdict.current-unclear": "{wanted} wanted, {allowed} to {most} allowed",
    "remedy.pass": "Break the pass, or weld passes that long at {current} or less.",
    "remedy.current": "Weld at {current} or less for that, or rest longer.",
    "refusal.half": "A second rating takes both its current and its percent",
    "refusal.second": "With the first rating left out, leave the second out too",
    "refusal.ratings": "These two ratings do not belong to one machine: the higher current goes with the lower percent, and not by this much. Look at the plate again",
    "refusal.above": "The plate ends at {highest}. No rest makes up for more current",
    "working.exponent": "From {rated} at {rated_duty} and {second} at {second_duty}: heat grows with current to the power {exponent}",
    "working.allowed": "Allowed = {rated_duty} × ({rated} ÷ {current}) to the power {exponent} = {allowed}, 100 % at most",
    "working.minutes": "Of {period}: arc {on}, rest {off}",
    "working.steady": "Continuous current = {rated} × ({rated_duty} ÷ 100 %) to the power {inverse} = {steady}, the plate's highest at most",
    "working.rest": "Rest = {time} × (100 % − {allowed}) ÷ {allowed} = {rest}",
    "note.capped": "The highest current on the plate is the end, however short the arc.",
    "note.period": "{percent} % is of ten minutes. It is not {percent} minutes at a stretch out of 100: that overheats the machine.",
    "note.own-line": "Between the two ratings this is the machine's own line. Beyond them it is a guess.",
    "note.one-rating": "One rating does not tell how heat grows with current: the careful end is shown. A second rating tells.",
    "caution.cut-out": "The thermal cut-out is the last guard, not a timer. After it trips, leave the fan running.",
    "caution.hot": "Ratings are for air of 40 °C (104 °F). Hotter, in full sun, in thin air or with clogged vents it is less. The plate does not say how much.",
    "caution.gun": "The gun has a rating of its own, lower in argon mixes than in CO₂. The weaker one rules.",
    "next.lead-drop": "Do the leads stand it?",
    "next.generator-size": "Will the outlet or generator carry it?",
}

CALCULATOR = Calculator(
    name="duty-cycle",
    fields=(
        Quantity("rated_current", "current", low=20.0, presets=("140 A", "200 A", "250 A", "300 A")),
        Quantity("rated_duty_cycle", "duty_cycle", presets=("20 %", "30 %", "40 %", "60 %")),
        Quantity("current", low=20.0, presets=("125 A", "150 A", "180 A", "220 A")),
        Quantity("duty_cycle", hint=True, presets=("30 %", "60 %", "100 %")),
        Quantity("arc_time", optional=True, hint=True, high=120.0, timer=True),
        Quantity("second_current", "current", optional=True, hint=True, low=20.0),
        Quantity("second_duty_cycle", "duty_cycle", optional=True, presets=("60 %", "100 %")),
    ),
    relations=(
        # Not checked by a share: less arc time than the machine allows is no disagreement.
        Relation(
            ("rated_current", "rated_duty_cycle", "current", "duty_cycle"),
            _solve,
            check="",
            also=("second_current", "second_duty_cycle"),
        ),
    ),
    prepare=_prepare,
    answer=_answer,
    english=ENGLISH,
    sources=_SOURCES,
    place=27,
)
