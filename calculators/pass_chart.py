"""Pass by pass: the heat and the temperatures of one joint in the order they were run, against their limits."""

from calculators import numerals, quantities, ranges, units
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
    Table,
    Text,
    Verdict,
    say,
)
from calculators.drawings import run_chart
from calculators.pass_chart_words import ENGLISH

RUN_CHART = Source("NIST/SEMATECH e-Handbook of Statistical Methods: run sequence plot", "from memory")
LIMITS = Source("The limits are the procedure's, as typed; nothing here replaces it", "common practice")

MOST_PASSES = 24
NONE = "-"  # where a pass has no reading
_SERIES = (
    ("heats", "heat_input", "heat_input_least", "heat_input_limit"),
    ("preheats", "preheat_temperature", "preheat_least", ""),
    ("interpasses", "preheat_temperature", "", "interpass_most"),
)


class Series:
    """Readings of one kind in the order of the passes, [coherent SI]; None where a pass has none."""

    def __init__(self, name: str, quantity: str, text: str) -> None:
        self.name = name
        self.quantity = quantities.quantity(quantity)
        words = [word for word in numerals.tidy(text).split(" ") if word]
        number, sign = numerals.split_unit(words[-1]) if words else ("", "")
        words = words[:-1] + ([number] if number else [])
        unit = units.named(sign)
        if unit is None or unit not in self.quantity.units or not words:
            shown = " ".join([units.sign(each) for each in self.quantity.units])
            raise Refusal(name, say("pass-chart.refusal.unit", units=shown))
        if len(words) > MOST_PASSES:
            raise Refusal(name, say("pass-chart.refusal.many", most=MOST_PASSES))
        self.unit: str = unit
        self.values = [self._value(word) for word in words]
        if not self.known():
            raise Refusal(name, say("pass-chart.refusal.none"))

    def _value(self, word: str) -> float | None:
        if word == NONE:
            return None
        try:
            number = numerals.parse(word)
        except numerals.BadNumber:
            number = None
        if number is None:
            raise Refusal(self.name, say("pass-chart.refusal.number", word=word))
        value = units.to_coherent(number, self.unit)
        low, high = [units.to_coherent(end, self.quantity.si) for end in (self.quantity.low, self.quantity.high)]
        if ranges.above(low, value) or ranges.above(value, high):
            raise Refusal(
                self.name,
                say("pass-chart.refusal.range", word=word, low=self.measured(low), high=self.measured(high)),
            )
        return value

    def measured(self, value: float) -> Measured:
        """Return a value of this kind as it is shown: in the unit it was typed in."""
        return Measured(value, self.quantity.name, None, self.unit)

    def known(self) -> list[float]:
        """Return the readings, the smallest first."""
        return sorted([value for value in self.values if value is not None])

    def middle(self) -> float:
        """Return the median: half of the readings are not above it, half not below."""
        known = self.known()
        half = len(known) // 2
        return known[half] if len(known) % 2 else (known[half - 1] + known[half]) / 2.0

    def spread(self) -> float:
        """Return how far the highest lies above the lowest, as a share of the median."""
        known = self.known()
        return (known[-1] - known[0]) / self.middle()

    def outside(self, limit: float, is_least: bool) -> list[int]:
        """Return which passes, counted from 1, do not hold a limit, [coherent SI]."""
        limit = numerals.settle(limit)
        found = []
        for place, value in enumerate(self.values):
            if value is not None:
                value = numerals.settle(value)
                if value < limit if is_least else value > limit:
                    found.append(place + 1)
        return found


def _series(given: Given) -> list[Series]:
    return [Series(name, quantity, given.word(name)) for name, quantity, _, _ in _SERIES if given.word(name)]


def _limits(given: Given, name: str) -> list[tuple[str, float, bool]]:
    """Return (field, limit [coherent SI], whether it is the least) of each limit given for a series."""
    found = []
    for series, _, least, most in _SERIES:
        if series == name:
            for field, is_least in ((least, True), (most, False)):
                if field and given.has(field):
                    found.append((field, given.number(field), is_least))
    return found


def _answer(given: Given) -> Answer:
    all_series = _series(given)
    if not all_series:
        raise Refusal("", say("pass-chart.refusal.nothing"))
    results: list[object] = []
    for series in all_series:
        label = _called("middle", series, given)
        results.append(Number("middle_" + series.name, series.middle(), series.quantity.name, label=label))
    results += [_drawing(given, series) for series in all_series]
    results.append(_table(given, all_series))
    return Answer(
        results=tuple(results),
        working=tuple([_working(given, series) for series in all_series]),
        notes=tuple([say("pass-chart.note." + id) for id in ("order", "scale")]),
        cautions=(say("weld-entry.caution"),),
        sources=(RUN_CHART, LIMITS),
        next_questions=(Next("weld-entry", say("pass-chart.next.weld-entry"), _carried(given)),),
        verdict=_verdict(given, all_series),
    )


def _name(series: Series, given: Given) -> Message:
    return say("pass-chart.series." + (given.word("limit_basis") if series.name == "heats" else series.name))


def _called(id: str, series: Series, given: Given) -> Message:
    return say("pass-chart." + id, series=_name(series, given))


def _working(given: Given, series: Series) -> Message:
    known = series.known()
    parts = (series.measured(known[0]), series.measured(known[-1]), series.measured(series.middle()))
    low, high, middle = parts
    name, count = _name(series, given), len(known)
    if series.name == "heats":
        spread = Plain(series.spread() * 100.0, 2)
        return say(
            "pass-chart.working.heat", series=name, count=count, low=low, high=high, middle=middle, spread=spread
        )
    return say("pass-chart.working.temperature", series=name, count=count, low=low, high=high, middle=middle)


def _verdict(given: Given, all_series: list[Series]) -> Verdict | None:
    kept, checked = [], 0
    for series in all_series:
        for field, limit, is_least in _limits(given, series.name):
            checked += 1
            places = series.outside(limit, is_least)
            if places:
                shown = " ".join([str(place) for place in places])
                kept.append(say("pass-chart.outside", limit=say("pass-chart.field." + field), passes=shown))
    if kept:
        message = kept[-1]
        for each in reversed(kept[:-1]):
            message = say("weld-entry.and", first=each, rest=message)
        return Verdict("outside", message, say("weld-entry.remedy"))
    return Verdict("inside", say("weld-entry.verdict.inside", count=checked)) if checked else None


def _drawing(given: Given, series: Series) -> object:
    lines = []
    for field, limit, is_least in _limits(given, series.name):
        shown = Measured(limit, series.quantity.name, None, given.units.get(field))
        lines.append((limit, say("drawing.least" if is_least else "drawing.most", value=shown), is_least))
    known = series.known()
    description = say(
        "pass-chart.drawing",
        series=_name(series, given),
        count=len(known),
        low=series.measured(known[0]),
        high=series.measured(known[-1]),
    )
    words = (_called("title.drawing", series, given), description)
    names = (say("pass-chart.column.pass"), _name(series, given))
    return run_chart.draw(series.name, series.values, lines, (series.quantity.name, series.unit), words, names)


def _table(given: Given, all_series: list[Series]) -> Table:
    columns = [say("pass-chart.column.pass")] + [_name(series, given) for series in all_series]
    rows = []
    for place in range(max([len(series.values) for series in all_series])):
        cells: list[object] = [str(place + 1)]
        for series in all_series:
            value = series.values[place] if place < len(series.values) else None
            cells.append(NONE if value is None else series.measured(value))
        rows.append(tuple(cells))
    return Table("passes", say("pass-chart.table"), tuple(columns), tuple(rows))


def _carried(given: Given) -> tuple[tuple[str, object], ...]:
    pairs: list[tuple[str, object]] = [("joint", given.word("joint"))] if given.word("joint") else []
    if given.has("heat_input_least") or given.has("heat_input_limit"):
        pairs.append(("limit_basis", given.word("limit_basis")))
    for name in ("heat_input_least", "heat_input_limit"):
        if given.has(name):
            pairs.append((name, given.measured(name, "heat_input")))
    for name in ("preheat_least", "interpass_most"):
        if given.has(name):
            pairs.append((name, given.measured(name, "preheat_temperature")))
    return tuple(pairs)


CALCULATOR = Calculator(
    name="pass-chart",
    fields=(
        Text("heats", longest=300, optional=True, hint=True, examples=("17.3 18.1 - 17.8 kJ/in", "0.7 0.71 kJ/mm")),
        Choice("limit_basis", ("heat-input", "arc-energy")),
        Text("preheats", longest=300, optional=True, examples=("210 - 215 degF",)),
        Text("interpasses", longest=300, optional=True, examples=("250 300 310 degF", "120 150 degC")),
        Quantity("heat_input_least", "heat_input", optional=True),
        Quantity("heat_input_limit", optional=True),
        Quantity("preheat_least", "preheat_temperature", optional=True),
        Quantity("interpass_most", "preheat_temperature", optional=True),
        Text("joint", longest=60, optional=True),
    ),
    answer=_answer,
    english=ENGLISH,
    sources=(RUN_CHART, LIMITS),
    place=-4,
)
