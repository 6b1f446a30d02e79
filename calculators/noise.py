"""Noise: the dose of a mixed day by the law's formula, and by the stricter one that is recommended."""

from calculators import numerals, ranges
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
    Rows,
    Source,
    Table,
    Verdict,
    say,
)
from calculators.facts import noise as facts
from calculators.noise_dose import average_level, dose_share, full_dose_time
from calculators.noise_words import ENGLISH

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable

LAW = Source(
    "29 CFR 1910.95, tables G-16 and G-16a and Appendix A: dose and average; 80 dB counts for the programme", "law"
)
NIOSH = Source(
    "NIOSH 98-126, Criteria for a recommended standard, occupational noise exposure: 85 dB, 3 dB; its draft of 1996 seen",
    "published",
)
TYPICAL = Source(
    "Health and Safety Executive (Great Britain), typical noise levels of welding and its tasks", "published"
)
PRACTICE = Source("Plugs and muffs at the arc; a voice raised at arm's length", "common practice")
_SOURCES = (LAW, NIOSH, TYPICAL, PRACTICE)

_MEASURED = "measured"
_LEVEL_OF = {work: (low, high) for work, low, high in facts.TYPICAL}


class _Period:
    """One stretch of the day: its work, the band of its level, and how long."""

    def __init__(self, row: Given) -> None:
        self.row = row
        self.place = row.place
        self.work = row.word("work")
        if self.work == _MEASURED:
            self.low = self.high = row.number("sound_level")
        else:
            self.low, self.high = _LEVEL_OF[self.work]
        self.level = (self.low + self.high) / 2.0
        self.time = row.number("exposure_time")

    def share(self, level: float, threshold: float) -> float:
        """Return the share of the law's dose at a level."""
        return dose_share(level, self.time, facts.CRITERION, facts.EXCHANGE, threshold)

    def recommended(self, level: float) -> float:
        """Return the share of the recommended dose at a level."""
        return dose_share(level, self.time, facts.NIOSH_CRITERION, facts.NIOSH_EXCHANGE, facts.PROGRAMME_FROM)


class _Day:
    """All periods, with the doses at the low, usual and high end of their levels."""

    def __init__(self, given: Given) -> None:
        self.periods = [_Period(row) for row in given.rows("periods")]
        total = 0.0
        for each in self.periods:
            total += each.time
        if ranges.above(total, 86400.0):
            raise Refusal("", say("noise.refusal.day", total=Measured(total, "exposure_time")))
        self.sure = all(each.low == each.high for each in self.periods)
        self.programme = self._doses(lambda each, level: each.share(level, facts.PROGRAMME_FROM))
        self.limit = self._doses(lambda each, level: each.share(level, facts.LIMIT_FROM))
        self.niosh = self._doses(lambda each, level: each.recommended(level))
        self.loud = any(ranges.above(each.high, facts.LOUDEST) for each in self.periods)

    def _doses(self, share: "Callable[[_Period, float], float]") -> list[float]:
        sums = [0.0, 0.0, 0.0]
        for each in self.periods:
            for place, level in enumerate((each.low, each.level, each.high)):
                sums[place] += share(each, level)
        return [numerals.settle(each) for each in sums]

    def state(self) -> str:
        """Return how the day stands: over, maybe-over, action, maybe-action or below."""
        if self.loud or self.limit[0] > facts.LIMIT:
            return "over"
        if self.limit[2] > facts.LIMIT:
            return "maybe-over"
        if self.programme[0] >= facts.ACTION or self.niosh[0] > facts.LIMIT:
            return "action"
        return "maybe-action" if self.programme[2] >= facts.ACTION or self.niosh[2] > facts.LIMIT else "below"


def _answer(given: Given) -> Answer:
    day = _Day(given)
    return Answer(
        results=tuple(_results(day)),
        working=_working(day),
        notes=_notes(day),
        cautions=(say("noise.caution.guard"), say("noise.caution.raise"), say("noise.caution.others")),
        sources=_SOURCES,
        next_questions=(
            Next("shade", say("noise.next.shade"), ()),
            Next("fume", say("noise.next.fume"), ()),
        ),
        verdict=_verdict(day),
    )


def _banded(name: str, values: list[float], quantity: str, sure: bool) -> Number:
    if sure:
        return Number(name, values[1], quantity)
    return Number(name, values[1], quantity, values[0], values[2], say("noise.band"))


def _results(day: _Day) -> list[object]:
    results: list[object] = [
        _banded("dose", day.programme, "noise_share", day.sure),
        _banded("limit_dose", day.limit, "noise_share", day.sure),
        _banded("recommended_dose", day.niosh, "noise_share", day.sure),
    ]
    # Of no dose at all there is no average.
    if day.programme[0] > 0.0:
        levels = [average_level(each, facts.CRITERION, facts.TENFOLD) for each in day.programme]
        results.append(_banded("law_average", levels, "average_level", day.sure))
    if day.niosh[0] > 0.0:
        levels = [average_level(each, facts.NIOSH_CRITERION, facts.NIOSH_TENFOLD) for each in day.niosh]
        results.append(_banded("recommended_average", levels, "average_level", day.sure))
    results.append(_table(day))
    return results


def _table(day: _Day) -> Table:
    rows = []
    for each in day.periods:
        rows.append(
            (
                str(each.place) + ".",
                _span(each),
                Measured(each.share(each.level, facts.PROGRAMME_FROM), "noise_share", 2),
                Measured(each.recommended(each.level), "noise_share", 2),
            )
        )
    heads = tuple([say("noise.table." + head) for head in ("period", "level", "law", "niosh")])
    return Table("shares", say("noise.table"), heads, tuple(rows))


def _span(each: _Period) -> object:
    if each.low == each.high:
        return Measured(each.low, "sound_level", 4)
    return say("noise.span", low=Plain(each.low, 4), high=Measured(each.high, "sound_level", 4))


def _working(day: _Day) -> tuple[Message, ...]:
    lines = []
    for each in day.periods:
        whole = full_dose_time(each.level, facts.CRITERION, facts.EXCHANGE)
        lines.append(
            say(
                "noise.working.period",
                place=each.place,
                level=Measured(each.level, "sound_level", 4),
                time=each.row.measured("exposure_time"),
                whole=Measured(whole, "exposure_time", 3, "h"),
                share=Measured(each.share(each.level, facts.PROGRAMME_FROM), "noise_share"),
            )
        )
    if day.programme[1] > 0.0:
        dose = Measured(day.programme[1], "noise_share", 4)
        average = average_level(day.programme[1], facts.CRITERION, facts.TENFOLD)
        lines.append(say("noise.working.average", dose=dose, average=Measured(average, "average_level")))
    return tuple(lines)


def _notes(day: _Day) -> tuple[Message, ...]:
    notes = [say("noise.note.twice")]
    if not day.sure:
        notes.append(say("noise.note.typical"))
    return tuple(notes)


def _verdict(day: _Day) -> Verdict:
    state = day.state()
    words = {"over": "outside", "action": "outside", "below": "inside"}
    remedy = say("noise.remedy.below" if state == "below" else "noise.remedy")
    if day.loud:
        return Verdict("outside", say("noise.verdict.loud", loudest=Measured(facts.LOUDEST, "sound_level")), remedy)
    return Verdict(words.get(state, "unclear"), say("noise.verdict." + state), remedy)


CALCULATOR = Calculator(
    name="noise",
    fields=(
        Rows(
            "periods",
            (
                Choice("work", tuple(work for work, _, _ in facts.TYPICAL) + (_MEASURED,), default="gas-metal-arc"),
                Quantity(
                    "sound_level",
                    when=("work", (_MEASURED,)),
                    hint=True,
                    high=facts.TOP,
                    presets=("85 dB", "90 dB", "95 dB", "100 dB"),
                ),
                Quantity("exposure_time", presets=("15 min", "30 min", "1 h", "2 h", "4 h")),
            ),
            most=6,
            optional=False,
        ),
    ),
    answer=_answer,
    english=ENGLISH,
    sources=_SOURCES,
    place=99,
)
