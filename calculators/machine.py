"""The welder's own machine, read: feed for a dial mark, mark for a feed, tap for a voltage, and its melting trim.

What a machine is travels in the address as the few words of machine_fields.py. A dial is written `1=120 3=210
5=310 in/min`: a mark, `=`, what was measured there; a unit stands once after the last or after each.
"""

from calculators import numerals, ranges, units
from calculators.contract import Given, Measured, Message, Number, Plain, Refusal, Words, say
from calculators.machine_fields import MARKS, NAMES, TAPS, TRIM
from calculators.quantities import quantity

MOST_MARKS = 12
_LONGEST_NAME = 12
_HIGHEST_MARK = 1000.0


class _Dial:
    """Marks as typed, each with what was measured there [coherent SI], in the order they were typed."""

    def __init__(self, field: str, text: str, of: str, example: str) -> None:
        self.field = field
        self.example = example
        self.quantity = quantity(of)
        self.unit = ""
        self.marks: list[tuple[str, float]] = []
        for mark, number, unit in self._pairs(text):
            if mark in [each for each, _ in self.marks]:
                raise self.refused("twice", mark)
            self.marks.append((mark, self._value(mark, number, unit)))
        if len(self.marks) < 2 or len(self.marks) > MOST_MARKS:
            raise self.refused("count", "")

    def refused(self, why: str, mark: str, **more: object) -> Refusal:
        """Return what is wrong with a mark, in words; `mark` is as it was typed."""
        return Refusal(self.field, say("dial." + why, mark=mark, example=self.example, most=MOST_MARKS, **more))

    def _pairs(self, text: str) -> list[tuple[str, str, str]]:
        """Return (mark, number, unit) of each mark; a unit counts for those before it that have none."""
        text = numerals.tidy(text).replace(";", " ")
        for spaced in (" =", "= "):
            while spaced in text:
                text = text.replace(spaced, "=")
        found: list[tuple[str, str, str]] = []
        for word in text.split(" "):
            word = word.rstrip(",")
            mark, equals, value = word.partition("=")
            if equals:
                number, unit = numerals.split_unit(value)
                if mark == "" or len(mark) > _LONGEST_NAME or number == "" or "=" in unit:
                    raise self.refused("pair", word)
                found.append((mark, number, unit))
            elif word and found and found[-1][2] == "":
                found[-1] = (found[-1][0], found[-1][1], word)
            elif word:
                raise self.refused("pair", word)
        last = found[-1][2] if found else ""
        return [(mark, number, unit or last) for mark, number, unit in found]

    def _value(self, mark: str, number: str, unit: str) -> float:
        if unit == "" and len(self.quantity.units) == 1:
            unit = self.quantity.si
        named = units.named(unit)
        if named is None or named not in self.quantity.units:
            raise self.refused("unit", mark, units=" ".join(units.sign(each) for each in self.quantity.units))
        self.unit = named
        value = units.to_coherent(self.number(mark, number), named)
        low, high = [units.to_coherent(end, self.quantity.si) for end in (self.quantity.low, self.quantity.high)]
        if ranges.above(low, value) or ranges.above(value, high):
            ends = [Measured(each, self.quantity.name, None, named) for each in (low, high)]
            raise self.refused("range", mark, low=ends[0], high=ends[1])
        return value

    def number(self, mark: str, text: str) -> float:
        """Return a number typed for `mark`, or refuse it."""
        try:
            value = numerals.parse(text)
        except numerals.BadNumber:
            value = None
        if value is None:
            raise self.refused("pair", mark)
        return value

    def written(self) -> str:
        """Return the dial as it is typed into its field, with four figures."""
        pairs = [
            mark + "=" + numerals.significant(units.from_coherent(value, self.unit), 4, False)
            for mark, value in self.marks
        ]
        return " ".join(pairs + [self.unit])


class FeedDial(_Dial):
    """A dial of numbered marks: straight between two of them, nothing beyond the first and the last."""

    def __init__(self, text: str) -> None:
        super().__init__("feed_dial", text, "wire_feed_speed", MARKS)
        rows = sorted([(self._place(mark), value, mark) for mark, value in self.marks])
        for position in range(1, len(rows)):
            (place, slower, before), (after, faster, mark) = rows[position - 1], rows[position]
            if not ranges.above(after, place):
                raise self.refused("twice", mark)
            if not ranges.above(faster, slower):
                raise self.refused("order", mark, before=before)
        self.rows = [(place, value) for place, value, _ in rows]
        self.marks = [(mark, value) for _, value, mark in rows]

    def _place(self, mark: str) -> float:
        place = self.number(mark, mark)
        if place < 0.0 or place > _HIGHEST_MARK:
            raise self.refused("pair", mark)
        return place

    def mark(self, feed: float) -> tuple[float, str, str] | None:
        """Return the place on the dial and the marks it lies between (one mark, if it is at one); None beyond them.

        `feed` is in [m/s].
        """
        if ranges.above(self.rows[0][1], feed) or ranges.above(feed, self.rows[-1][1]):
            return None
        position = 1
        while position < len(self.rows) - 1 and ranges.above(feed, self.rows[position][1]):
            position += 1
        (before, slow), (after, fast) = self.rows[position - 1], self.rows[position]
        first, last = self.marks[position - 1][0], self.marks[position][0]
        for place, value, mark in ((before, slow, first), (after, fast, last)):
            if numerals.settle(value) == numerals.settle(feed):
                return place, mark, mark
        return before + (feed - slow) / (fast - slow) * (after - before), first, last

    def beyond(self, feed: float) -> Message:
        """Return which end of the dial a feed lies beyond, in words; feed in [m/s]."""
        last = ranges.above(feed, self.rows[-1][1])
        mark, value = self.marks[-1 if last else 0]
        return say(
            "dial.above" if last else "dial.below",
            mark=mark,
            feed=Measured(value, "wire_feed_speed", None, self.unit),
        )


class VoltageDial(_Dial):
    """Taps by name, each with its volts: there is nothing between two taps."""

    def __init__(self, text: str) -> None:
        super().__init__("voltage_dial", text, "voltage", TAPS)

    def nearest(self, voltage: float) -> tuple[str, float]:
        """Return the tap nearest to a voltage [V], the lower of two as near, and its voltage [V]."""
        ranked = [
            (numerals.settle(abs(value - voltage)), numerals.settle(value), place, mark)
            for place, (mark, value) in enumerate(self.marks)
        ]
        _, _, place, mark = min(ranked)
        return mark, self.marks[place][1]


class Machine:
    """What the fields of machine_fields.py say of the welder's machine; refuses what cannot be read."""

    def __init__(self, given: Given) -> None:
        self.name = given.word("machine")
        self.feed_dial = FeedDial(given.word("feed_dial")) if given.has("feed_dial") else None
        self.voltage_dial = VoltageDial(given.word("voltage_dial")) if given.has("voltage_dial") else None
        self.trim = {name: given.number(name) for name in TRIM[:3] if given.has(name)}
        self.material = given.word("trim_material")
        self._carried: list[tuple[str, object]] = []
        for name in NAMES:
            if given.has(name):
                kind = "percentage" if name == "trim_band" else "trim_factor"
                self._carried.append((name, given.measured(name, kind) if name in self.trim else given.word(name)))
        wire = given.word("wire_material")
        if self.trim and self.material and wire and wire != self.material:
            raise Refusal("trim_material", say("machine.other-wire"))

    def words(self, feed: float, voltage: float | None = None) -> Message | None:
        """Return where to set dial and tap for a feed [m/s] and a voltage [V]; None where neither is known."""
        parts = []
        if self.feed_dial is not None:
            parts.append(self._dial(self.feed_dial, feed))
        if self.voltage_dial is not None and voltage is not None:
            parts.append(self._tap(self.voltage_dial, voltage))
        if not parts:
            return None
        both = parts[0] if len(parts) == 1 else say("machine.both", dial=parts[0], tap=parts[1])
        return say("machine.set", machine=self._called(), what=both)

    def _called(self) -> Message:
        return say("machine.named", mark=self.name) if self.name else say("machine.unnamed")

    def _dial(self, dial: FeedDial, feed: float) -> Message:
        found = dial.mark(feed)
        if found is None:
            return say("machine.feed-beyond", beyond=dial.beyond(feed))
        place, before, after = found
        if before == after:
            return say("machine.feed-at", mark=before)
        return say("machine.feed", place=Plain(place, _figures(place)), mark=before, after=after)

    def _tap(self, dial: VoltageDial, voltage: float) -> Message:
        mark, value = dial.nearest(voltage)
        off = numerals.settle(value, 6) - numerals.settle(voltage, 6)
        id = "machine.tap" if off == 0.0 else "machine.tap-above" if off > 0.0 else "machine.tap-below"
        return say(id, mark=mark, tap=Measured(value, "voltage"), off=Measured(abs(off), "voltage", 2))

    def feed_results(self, feed: float) -> tuple[Number, ...]:
        """Return the mark of a feed [m/s] as a result, where it lies on the dial."""
        found = self.feed_dial.mark(feed) if self.feed_dial is not None else None
        if found is None:
            return ()
        label = say("machine.set", machine=self._called(), what=say("machine.feed-mark"))
        return (Number("feed_mark", found[0], "dial_mark", label=label, figures=_figures(found[0])),)

    def voltage_results(self, voltage: float) -> tuple[Words, ...]:
        """Return the tap nearest to a voltage [V] and how far off it is, where taps are known."""
        if self.voltage_dial is None:
            return ()
        label = say("machine.set", machine=self._called(), what=say("machine.voltage-tap"))
        return (Words("voltage_tap", self._tap(self.voltage_dial, voltage), label),)

    def notes(self) -> tuple[Message, ...]:
        """Return what has to be said of the trim: that it is in the numbers, and where it holds."""
        known = self.feed_dial is not None or self.voltage_dial is not None
        if not self.trim:
            return (say("machine.only-named", machine=self._called()),) if self.name and not known else ()
        terms = [Plain(self.trim.get(name, 1.0), 3) for name in TRIM[:2]]
        return (say("machine.trimmed", machine=self._called(), arc=terms[0], resistance=terms[1]),)

    def carried(self) -> tuple[tuple[str, object], ...]:
        """Return the fields that another question about this machine is to be given."""
        return tuple(self._carried)


def _figures(place: float) -> int:
    """Return the figures with which a place on a dial is read: tenths of a mark up to ten, whole ones above."""
    return 2 if place < 100.0 else 3
