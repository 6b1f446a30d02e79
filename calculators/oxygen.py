"""Oxygen: what shielding gas let into a tank, pit or cab does to the air there. It never says that air is good."""

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
    Table,
    Verdict,
    say,
)
from calculators.facts import breathing as facts
from calculators.gas_dilution import gas_share, time_to_share
from calculators.oxygen_words import ENGLISH
from calculators.shielding_gas import FIELDS, MIXED, ShieldingGas

SPACES = Source("29 CFR 1910.146: permit spaces; oxygen below 19.5 % is a hazardous atmosphere; seen quoted", "law")
CO2_LAW = Source("29 CFR 1910.1000 table Z-1: carbon dioxide 5000 ppm over 8 h, as OSHA gives it", "law")
CO2_DANGER = Source("NIOSH: carbon dioxide 30 000 ppm short-term, 40 000 ppm immediately dangerous", "published")
BALANCE = Source("Mass balance of a well mixed space, as used for oxygen deficiency hazards", "published")
EFFECTS = Source("OSHA, preamble to 29 CFR 1910.134: what little oxygen does; seen quoted", "published")
WELDING = Source(
    "29 CFR 1910.252(a)(4) and (c)(4): cylinders and attendant outside, gas shut off outside, no oxygen to ventilate; seen quoted in part",
    "law",
)
RESCUE = Source("NIOSH 86-110, Preventing occupational fatalities in confined spaces", "published")
_SOURCES = (CO2_LAW, CO2_DANGER, SPACES, EFFECTS, BALANCE, WELDING, RESCUE)

_LONG = 7200.0  # [s] from here on in hours
_FANS = ("blows-in", "draws-out")


class _Space:
    """The closed space with gas flowing into it; coherent SI."""

    def __init__(self, given: Given) -> None:
        self.given = given
        gas = ShieldingGas(given)
        self.gas = gas.word
        others = {MIXED: gas.share, "carbon-dioxide": 1.0, "helium-mix": facts.IN_HELIUM_MIX}
        self.carbon_dioxide = others.get(self.gas, 0.0)
        self.volume = self._volume()
        self.inflow = given.number("gas_inflow")
        self.through = self._through()
        self.times: list[tuple[str, float | None]] = []
        for word, share in self._levels():
            self.times.append((word, time_to_share(self.volume, self.inflow, self.through, share)))

    def _volume(self) -> float:
        given = self.given
        if given.word("space") == "known":
            return given.number("space_volume")
        if given.word("space") == "round":
            across = given.number("space_diameter")
            return 3.141592653589793 / 4.0 * across * across * given.number("space_length")
        return given.number("space_length") * given.number("space_width") * given.number("space_height")

    def _through(self) -> float:
        fan = self.given.word("fan")
        if fan == "blows-in":
            return self.inflow + self.given.number("air_flow")
        return max(self.inflow, self.given.number("air_flow")) if fan == "draws-out" else self.inflow

    def _levels(self) -> list[tuple[str, float]]:
        """Return (level, share of the gas in the space that makes it), of carbon dioxide first."""
        found = []
        if self.carbon_dioxide > 0.0:
            for level, word in facts.CARBON_DIOXIDE:
                # A gas with less of it than that never gets there.
                found.append(("co2-" + word, min(level / self.carbon_dioxide, 1.0)))
        for level, word in facts.OXYGEN:
            found.append(("o2-" + word, 1.0 - level / facts.CLEAN_OXYGEN))
        return found

    def first(self) -> str:
        """Return the level that is reached first, or "" if none is."""
        ranked = sorted(
            [(numerals.settle(time), place) for place, (_, time) in enumerate(self.times) if time is not None]
        )
        return self.times[ranked[0][1]][0] if ranked else ""

    def time(self, word: str) -> float | None:
        """Return when a level is reached."""
        return dict(self.times).get(word)

    def at(self, time: float) -> tuple[float, float]:
        """Return the shares of carbon dioxide and of oxygen at a time."""
        share = gas_share(self.volume, self.inflow, self.through, time)
        return self.carbon_dioxide * share, facts.CLEAN_OXYGEN * (1.0 - share)

    def settled(self) -> tuple[float, float]:
        """Return the shares of carbon dioxide and of oxygen in the end."""
        share = self.inflow / self.through
        return self.carbon_dioxide * share, facts.CLEAN_OXYGEN * (1.0 - share)


# ---------------------------------------------------------------- the answer

_SHOWN = (
    ("co2-law", "carbon_dioxide_limit_time"),
    ("co2-danger", "carbon_dioxide_danger_time"),
    ("o2-meter", "oxygen_low_time"),
)


def _answer(given: Given) -> Answer:
    space = _Space(given)
    return Answer(
        results=tuple(_results(space)),
        working=_working(space),
        notes=_notes(space),
        cautions=tuple([say("oxygen.caution." + word) for word in ("meters", "permit", "shut", "rescue", "no-oxygen")]),
        sources=_SOURCES,
        next_questions=(
            Next("leak-test", say("oxygen.next.leak-test"), ()),
            Next("fume", say("oxygen.next.fume"), ()),
        ),
        verdict=_verdict(space),
    )


def _results(space: _Space) -> list[object]:
    results: list[object] = []
    for word, name in _SHOWN:
        time = space.time(word)
        if time is not None:
            band = say("oxygen.band.light" if space.gas == "helium-mix" else "oxygen.band")
            number = Number(name, time, "arc_time", time * facts.POOL, time, band, figures=2)
            # What comes first leads.
            results.insert(0 if word == space.first() else len(results), number)
    then = space.given.number("time_let_in") if space.given.has("time_let_in") else None
    if then is not None:
        results += _state(("carbon_dioxide_then", "oxygen_then"), space.carbon_dioxide, space.at(then))
    if not space.first():
        names = ("carbon_dioxide_settled", "oxygen_settled")
        results = _state(names, space.carbon_dioxide, space.settled()) + results
    if space.carbon_dioxide > 0.0:
        alarm = space.carbon_dioxide * (1.0 - facts.OXYGEN[0][0] / facts.CLEAN_OXYGEN)
        results.append(Number("carbon_dioxide_at_alarm", alarm, "carbon_dioxide_share", figures=2))
    results.append(_table(space))
    return results


def _state(names: tuple[str, str], carbon_dioxide: float, shares: tuple[float, float]) -> list[object]:
    found: list[object] = [Number(names[1], shares[1], "percentage")]
    if carbon_dioxide > 0.0:
        found.insert(0, Number(names[0], shares[0], "carbon_dioxide_share", figures=2))
    return found


def _duration(time: float | None) -> object:
    if time is None:
        return say("oxygen.table.never")
    return Measured(time, "arc_time", 2, "h" if numerals.settle(time) >= _LONG else "min")


def _table(space: _Space) -> Table:
    rows = []
    for word, time in space.times:
        rows.append((say("oxygen.level." + word), _duration(time)))
    heads = (say("oxygen.table.level"), say("oxygen.table.after"))
    return Table("levels", say("oxygen.table"), heads, tuple(rows))


def _working(space: _Space) -> tuple[Message, ...]:
    given = space.given
    shown: dict[str, object] = {
        "volume": Measured(space.volume, "space_volume"),
        "inflow": given.measured("gas_inflow"),
        "through": Measured(space.through, "gas_inflow", 3, given.units.get("gas_inflow")),
        "settles": Plain(space.inflow / space.through * 100.0, 3),
    }
    lines = [say("oxygen.working.share", **shown)]
    if space.carbon_dioxide > 0.0:
        lines.append(say("oxygen.working.carbon-dioxide", percent=Plain(space.carbon_dioxide * 100.0, 3)))
    return tuple(lines + [say("oxygen.working.oxygen")])


def _notes(space: _Space) -> tuple[Message, ...]:
    notes = [say("oxygen.note.not-a-time")]
    notes.append(say("oxygen.note.rises" if space.gas == "helium-mix" else "oxygen.note.sinks"))
    if space.carbon_dioxide > 0.0:
        notes.append(say("oxygen.note.blind"))
    return tuple(notes + [say("oxygen.note.more")])


def _verdict(space: _Space) -> Verdict:
    passed = space.first()
    if space.given.has("time_let_in"):
        time = space.time(passed)
        if time is None or numerals.settle(space.given.number("time_let_in")) < numerals.settle(time):
            passed = ""
    remedy = say("oxygen.remedy")
    if not passed:
        return Verdict("unclear", say("oxygen.verdict.unclear"), remedy)
    return Verdict("outside", say("oxygen.verdict." + passed), remedy)


_LENGTHS = ("3 ft", "4 ft", "6 ft", "1 m", "2 m")

CALCULATOR = Calculator(
    name="oxygen",
    fields=FIELDS
    + (
        Choice("space", ("box", "round", "known"), default="box"),
        Quantity(
            "space_length", "part_length", when=("space", ("box", "round")), low=0.3, high=100.0, presets=_LENGTHS
        ),
        Quantity("space_width", "part_length", when=("space", ("box",)), low=0.3, high=100.0, presets=_LENGTHS),
        Quantity("space_height", "part_length", when=("space", ("box",)), low=0.3, high=100.0, presets=_LENGTHS),
        Quantity("space_diameter", "part_length", when=("space", ("round",)), low=0.3, high=100.0, presets=_LENGTHS),
        Quantity("space_volume", when=("space", ("known",)), presets=("100 ft3", "350 ft3", "10 m3")),
        Quantity("gas_inflow", hint=True, presets=("35 ft3/h", "25 ft3/h", "15 L/min", "2 ft3/h", "10 L/h")),
        Choice("fan", ("none",) + _FANS, default="none"),
        Quantity("air_flow", when=("fan", _FANS), hint=True, presets=("200 ft3/min", "500 ft3/min", "2000 ft3/min")),
        Quantity("time_let_in", "arc_time", optional=True, hint=True, presets=("15 min", "1 h", "12 h")),
    ),
    answer=_answer,
    english=ENGLISH,
    sources=_SOURCES,
    place=98,
)
