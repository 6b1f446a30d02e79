"""Filler name: a classification read part by part, two of them compared, or which part of it is wrong.

The reading is in filler_grammar.py, the tables in facts/fillers.py and facts/fillers_alloy.py.
"""

from calculators import filler_name_sources, numerals, units
from calculators.contract import (
    Answer,
    Calculator,
    Given,
    Measured,
    Message,
    Next,
    Number,
    Plain,
    Refusal,
    Table,
    Text,
    Words,
    say,
)
from calculators.facts import fillers, fillers_alloy, gases
from calculators.filler_grammar import Class, Fault, Reading
from calculators.filler_name_words import ENGLISH

_ORDER = (
    "process", "strength", "tensile", "toughness", "position", "condition", "form", "covering", "usability", "impact",
    "tough", "coating", "gas", "older", "type", "base", "variant", "procedure", "nuclear", "hydrogen", "moisture",
)  # fmt: skip
_STAINLESS = ("A5.4", "A5.9")
_WIRES = {"A5.18": "mild-steel", "A5.28": "mild-steel", "ISO 14341-A": "mild-steel", "ISO 14341-B": "mild-steel"}
_WIRES.update({"A5.9": "stainless", "A5.10": "aluminum"})
_FILLET = ("60-ksi", "70-ksi", "80-ksi", "90-ksi", "100-ksi", "110-ksi")


# ---------------------------------------------------------------- what a part means


class Meaning:
    """What the parts of one class mean, and the strengths that follow, [Pa]."""

    def __init__(self, found: Class) -> None:
        self.found = found
        self.system = found.system
        self.tensile = self.yield_ = self.most = 0.0
        self.fahrenheit: float | None = None
        self._strengths()
        self.parts = [(part, symbol, self._meaning(part, symbol)) for part, symbol in found.parts]
        self.toughness = self._toughness()

    def _strengths(self) -> None:
        symbol = self.found.symbol("strength")
        if self.system[0] == "I":
            table = fillers.ISO_A_STRENGTH if self.system[-1] == "A" else fillers.ISO_B_STRENGTH
            for mark, yield_, least, most in table:
                if mark == symbol:
                    self.yield_, self.tensile, self.most = yield_ * 1e6, least * 1e6, most * 1e6
            return
        for symbols, ksi in fillers.TENSILE:
            if symbol in symbols.split(" "):
                self.tensile = units.to_coherent(ksi, "ksi")
                for systems, rows in fillers.YIELD:
                    if self.system in systems.split(" ") and not self._is_military():
                        self.yield_ = units.to_coherent(dict(rows)[ksi], "ksi")

    def says(self, part: str, symbol: str) -> object:
        """Return what two names are compared by: the symbol, or the value where symbols of one value differ."""
        if part == "strength":
            return self.tensile, self.yield_, self.most
        return self.fahrenheit if part == "toughness" else symbol

    def _is_military(self) -> bool:
        return self.found.symbol("covering") == "8M" or self.found.symbol("type") in ("M", "M1")

    def _meaning(self, part: str, symbol: str) -> Message:
        if part == "strength":
            return self._strength()
        if part == "type":
            return self._type(symbol)
        if part == "hydrogen":
            return say("filler-name.hydrogen", most=Plain(float(symbol[1:])))
        if part == "gas" and self.system[0] == "I" and symbol not in ("M", "C"):
            return _gas_group(symbol)
        if part == "impact":
            return _impact(symbol, "47" if self.system[-1] == "A" else "27")
        if part == "tough":
            symbol = self.system + symbol
        if part == "covering" and self.found.symbol("position") == "2" and symbol in ("0", "2", "7"):
            symbol = "2" + symbol
        if part == "variant" and self.system not in _STAINLESS:
            symbol = "letter"
        return say("filler-name." + part + "." + symbol)

    def _strength(self) -> Message:
        both = dict(_both("tensile", self.tensile) + _both("yield", self.yield_) + _both("most", self.most))
        return say("filler-name.strength." + ("range" if self.most else "both" if self.yield_ else "tensile"), **both)

    def _type(self, symbol: str) -> Message:
        own = "C" + symbol if self.system == "A5.18" and self.found.symbol("form") == "C" else symbol
        for systems, word, rows in fillers.TYPES + fillers_alloy.TYPES:
            if self.system in systems.split("|"):
                for symbols, analysis in rows:
                    shown = analysis.replace(" ", "\u00a0").replace(",\u00a0", ", ")  # an element keeps its figure
                    if own in symbols.split(" "):
                        return say("filler-name." + word, analysis=shown)
                    if own[-1:] in "LH" and own[:-1] in symbols.split(" "):
                        return say("filler-name.alloy." + own[-1], alloy=say("filler-name." + word, analysis=shown))
        raise KeyError(symbol)

    def _toughness(self) -> Message | None:
        for system, parts, symbols, fahrenheit in fillers.TOUGH:
            own = "".join([self.found.symbol(part) for part in parts.split(" ")])
            if system == self.system and own in symbols.split(" "):
                self.fahrenheit = fahrenheit
        if self.fahrenheit is None:
            return None
        return say(
            "filler-name.toughness", celsius=_at(self.fahrenheit, "degC"), fahrenheit=_at(self.fahrenheit, "degF")
        )


def _at(fahrenheit: float, unit: str) -> Measured:
    return Measured(units.to_coherent(fahrenheit, "degF"), "preheat_temperature", None, unit)


def _both(name: str, value: float) -> tuple[tuple[str, object], ...]:
    return (
        (name + "_ksi", Measured(value, "strength", 3, "ksi")),
        (name + "_mpa", Measured(value, "strength", 3, "MPa")),
    )


def _impact(symbol: str, joule: str) -> Message:
    if symbol == "Z":
        return say("filler-name.impact.none")
    celsius = 20.0 if symbol in ("A", "Y") else -10.0 * float(symbol)
    value = units.to_coherent(celsius, "degC")
    fahrenheit = Measured(value, "preheat_temperature", None, "degF")
    return say(
        "filler-name.impact.at",
        mark=joule,
        celsius=Measured(value, "preheat_temperature", None, "degC"),
        fahrenheit=fahrenheit,
    )


def _gas_group(symbol: str) -> Message:
    """Return what a group of shielding gas is, from the bounds that name it."""
    character = say("gas-blend.character." + (symbol[:2] if symbol[0] == "M" else symbol[0]))
    parts = []
    for row in gases.GROUPS:
        if row[0] != symbol:
            continue
        for place in range(len(gases.SIGNS)):
            low, counts, high = row[1:][place]
            if low > 0.0 or (place == 0 and high > 0.0):
                ends = numerals.significant(low, 3) + "–" + numerals.significant(high, 3)
                span = "" if low in (0.0, high) else "\u00a0" + ("" if counts else ">") + ends + "\u00a0%"
                parts.append(gases.SIGNS[place] + span)
    return say("filler-name.gas.group", character=character, analysis=", ".join(parts))


# ---------------------------------------------------------------- what is wrong


def _refusal(field: str, fault: Fault) -> Refusal:
    kind = "extra-may" if fault.kind == "extra" and fault.choices else fault.kind
    shown: dict[str, object] = {"before": fault.before, "after": fault.typed, "mark": fault.standard}
    shown["options"] = ", ".join(fault.choices)
    if fault.part:
        shown["part"] = say("filler-name.part." + fault.part)
    return Refusal(field, say("filler-name.refusal." + kind, **shown))


def _read(given: Given, field: str) -> Meaning | None:
    if not given.has(field):
        return None
    reading = Reading(given.word(field))
    if reading.found is None:
        assert reading.fault is not None
        raise _refusal(field, reading.fault)
    return Meaning(reading.found)


# ---------------------------------------------------------------- the answer


def _answer(given: Given) -> Answer:
    first, second = _read(given, "filler"), _read(given, "second_filler")
    assert first is not None
    both = [first] if second is None else [first, second]
    results: list[object] = [_kind(first, "read")]
    if second is not None:
        results = _differences(first, second) + [_kind(first, "read"), _kind(second, "second_read")]
    if first.tensile:
        results.append(Number("tensile_strength", first.tensile, "strength", figures=3))
    if first.yield_:
        results.append(Number("yield_strength", first.yield_, "strength", figures=3))
    results.append(_table(first, "parts"))
    if second is not None:
        results.append(_table(second, "second_parts"))
    return Answer(
        results=tuple(results),
        working=tuple([_working(each) for each in both]),
        notes=_notes(both),
        cautions=(say("filler-name.caution"),),
        sources=filler_name_sources.Sources([each.system for each in both]).sources,
        next_questions=_next(first),
    )


def _kind(meaning: Meaning, name: str) -> Words:
    standard = meaning.system if meaning.system[0] == "I" else "AWS " + meaning.system
    label = say("filler-name.label", mark=meaning.found.name, unit=standard)
    return Words(name, say("filler-name.kind." + meaning.system), label)


def _rows(meaning: Meaning) -> "list[tuple[str, str, Message]]":
    rows = list(meaning.parts)
    if meaning.toughness is not None:
        rows.append(("toughness", "", meaning.toughness))
    return rows


def _differences(first: Meaning, second: Meaning) -> list[object]:
    ours, theirs = _rows(first), _rows(second)
    differ = []
    for part in _ORDER:
        mine = [first.says(each, symbol) for each, symbol, _ in ours if each == part]
        other = [second.says(each, symbol) for each, symbol, _ in theirs if each == part]
        if mine != other:
            differ.append(say("filler-name.part." + part))
    count = Words("count", say("filler-name.differ.some" if differ else "filler-name.differ.none", count=len(differ)))
    if not differ:
        return [count]
    listed = differ[-1]
    for place in range(len(differ) - 2, -1, -1):
        listed = say("list.and" if place == len(differ) - 2 else "list.comma", first=differ[place], rest=listed)
    return [count, Words("differ", listed)]


def _table(meaning: Meaning, name: str) -> Table:
    read = _rows(meaning)
    rows = []
    for part in _ORDER:
        for each, symbol, message in read:
            if each == part:
                cell = say("filler-name.cell", mark=symbol, meaning=message) if symbol else message
                rows.append((say("filler-name.part." + part), cell))
    columns = (say("filler-name.column.part"), say("filler-name.column.means"))
    return Table(name, say("filler-name.table", mark=meaning.found.name), columns, tuple(rows))


def _working(meaning: Meaning) -> Message:
    """Return how a name comes apart."""
    symbols = " + ".join([symbol for _, symbol in meaning.found.parts])
    return say("filler-name.working", mark=meaning.found.name, after=symbols, unit=meaning.system)


def _notes(both: list[Meaning]) -> tuple[Message, ...]:
    notes = []
    for id, wanted in (
        ("polarity", lambda each: each.found.symbol("form") in ("S", "C") or each.system in ("A5.9", "A5.10") or each.system[0] == "I"),
        ("gas", lambda each: each.system in ("A5.20", "A5.29") and each.found.symbol("usability") in ("1", "2", "5", "9", "12") and not each.found.symbol("gas")),
        ("older", lambda each: each.system == "A5.18" and each.found.symbol("type") == "5"),
        ("strength", lambda each: not each.tensile and each.system not in ("A5.15", "A5.21")),
    ):  # fmt: skip
        if any(wanted(each) for each in both):
            notes.append(say("filler-name.note." + id))
    return tuple(notes)


def _next(meaning: Meaning) -> tuple[Next, ...]:
    found, questions = meaning.found, []
    strength = ""
    for symbols, ksi in fillers.TENSILE:
        if meaning.system[0] == "A" and found.symbol("strength") in symbols.split(" "):
            strength = str(int(ksi)) + "-ksi"
    if strength in _FILLET:
        questions.append(Next("fillet-size", say("filler-name.next.fillet-size"), (("electrode_strength", strength),)))
    material = _WIRES.get(meaning.system)
    if material is not None and found.symbol("process") in ("ER", "G"):
        carried: list[tuple[str, object]] = [("wire_material", material)]
        if material == "aluminum" and found.symbol("type") in ("4043", "5356", "5183"):
            carried.append(("filler_alloy", found.symbol("type")))
        questions.append(Next("wire-feed", say("filler-name.next.wire-feed"), tuple(carried)))
    return tuple(questions)


_EXAMPLES = (
    "ER70S-6", "E71T-1C", "E71T-11", "E7018", "ER308LSi", "ER309L", "ER5356", "ER4043", "E81T1-Ni1C J H8", "E8018-C3 H4R",
    "E11018-M", "ER80S-D2", "E70C-6M", "G 42 4 M21 3Si1", "G 49A 3 C1 S6", "E309L-16", "ENiFe-CI", "ERCCoCr-A", "E71T-GS",
)  # fmt: skip
_PRESETS = _EXAMPLES[:8]

CALCULATOR = Calculator(
    name="filler-name",
    fields=(
        Text("filler", longest=40, hint=True, examples=_EXAMPLES, presets=_PRESETS),
        Text("second_filler", longest=40, optional=True, examples=_EXAMPLES),
    ),
    answer=_answer,
    english=ENGLISH,
    sources=filler_name_sources.ALL,
    place=51,
)
