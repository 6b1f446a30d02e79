"""The welder's own machine, read: the mark for a feed, the mark or tap for a voltage, and its melting trim.

What a machine is travels in the address as the few words of machine_fields.py. A dial is written `1=120 3=210
5=310 in/min`: a mark, `=`, what was measured there; a unit stands once after the last or after each. Its voltage is
set by taps, with nothing between two of them, or by a stepless knob, read between its marks as the feed dial is.
"""

from calculators import numerals, ranges, units
from calculators.contract import Given, Measured, Message, Number, Plain, Refusal, Words, say
from calculators.machine_fields import KNOB, MARKS, NAMES, TAPS, TRIM
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
        value = _read(text)
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


class _Scale(_Dial):
    """A dial of numbered marks that rises: straight between two of them, nothing beyond the first and the last."""

    order = ""  # what is wrong where it does not rise

    def __init__(self, field: str, text: str, of: str, example: str) -> None:
        super().__init__(field, text, of, example)
        rows = sorted([(self._place(mark), value, mark) for mark, value in self.marks])
        for position in range(1, len(rows)):
            (place, less, before), (after, more, mark) = rows[position - 1], rows[position]
            if not ranges.above(after, place):
                raise self.refused("twice", mark)
            if not ranges.above(more, less):
                raise self.refused(self.order, mark, before=before)
        self.rows = [(place, value) for place, value, _ in rows]
        self.marks = [(mark, value) for _, value, mark in rows]

    def _place(self, mark: str) -> float:
        place = _read(mark)
        if place is None or place < 0.0 or place > _HIGHEST_MARK:
            raise self.refused("place", mark, highest=int(_HIGHEST_MARK))
        return place

    def mark(self, wanted: float) -> tuple[float, str, str] | None:
        """Return the place on the dial and the marks it lies between (one mark, if it is at one); None beyond them.

        `wanted` is in the coherent unit of what was measured.
        """
        if ranges.above(self.rows[0][1], wanted) or ranges.above(wanted, self.rows[-1][1]):
            return None
        position = 1
        while position < len(self.rows) - 1 and ranges.above(wanted, self.rows[position][1]):
            position += 1
        (before, less), (after, more) = self.rows[position - 1], self.rows[position]
        first, last = self.marks[position - 1][0], self.marks[position][0]
        for place, value, mark in ((before, less, first), (after, more, last)):
            if numerals.settle(value) == numerals.settle(wanted):
                return place, mark, mark
        return before + (wanted - less) / (more - less) * (after - before), first, last


class FeedDial(_Scale):
    """A dial for the wire, each mark with its feed."""

    order = "order"

    def __init__(self, text: str) -> None:
        super().__init__("feed_dial", text, "wire_feed_speed", MARKS)

    def beyond(self, feed: float) -> Message:
        """Return which end of the dial a feed lies beyond, in words; feed in [m/s]."""
        last = ranges.above(feed, self.rows[-1][1])
        mark, value = self.marks[-1 if last else 0]
        return say(
            "dial.above" if last else "dial.below",
            mark=mark,
            feed=Measured(value, "wire_feed_speed", None, self.unit),
        )


class VoltageKnob(_Scale):
    """A stepless knob, each mark with its volts."""

    order = "volts-order"

    def __init__(self, text: str) -> None:
        super().__init__("voltage_dial", text, "voltage", KNOB)


class VoltageTaps(_Dial):
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

    def across(self, voltage: float) -> tuple[str, float] | None:
        """Return the tap next to a voltage [V] on the other side of it than the nearest; None where there is none."""
        off = ranges.above(self.nearest(voltage)[1], voltage)
        ranked = [
            (numerals.settle(abs(value - voltage)), place)
            for place, (_, value) in enumerate(self.marks)
            if (ranges.above(voltage, value) if off else ranges.above(value, voltage))
        ]
        return self.marks[min(ranked)[1]] if ranked else None

    def numbered(self) -> bool:
        """Return whether each tap is called by a number, as the marks of a knob are."""
        return all(_read(mark) is not None for mark, _ in self.marks)


class Machine:
    """What the fields of machine_fields.py say of the welder's machine; refuses what cannot be read."""

    def __init__(self, given: Given) -> None:
        self.name = given.word("machine")
        self.feed_dial = FeedDial(given.word("feed_dial")) if given.has("feed_dial") else None
        self.control = given.word("voltage_control")
        self.at_gun = given.word("voltage_read_at") == "gun"
        self.taps = self.knob = None
        if given.has("voltage_dial") and self.control == "knob":
            self.knob = VoltageKnob(given.word("voltage_dial"))
        elif given.has("voltage_dial"):
            self.taps = VoltageTaps(given.word("voltage_dial"))
        self.trim = {name: given.number(name) for name in TRIM[:3] if given.has(name)}
        self._carried: list[tuple[str, object]] = []
        for name in NAMES:
            if given.has(name):
                kind = "percentage" if name == "trim_band" else "trim_factor"
                self._carried.append((name, given.measured(name, kind) if name in self.trim else given.word(name)))
        wire, read_with = given.word("wire_material"), given.word("trim_material")
        self.left_out = bool(self.trim and wire and read_with and wire != read_with)  # as MeltingLaw does
        if self.left_out:
            self.trim = {}

    def words(self, feed: float, voltage: float | None = None, drop: float = 0.0) -> Message | None:
        """Return where to set dial and tap or knob for a feed [m/s] and a voltage; None where neither is known.

        `voltage` is wanted at the gun, `drop` is lost in the leads, both in [V].
        """
        volts = [] if voltage is None else self._voltage(voltage, drop)
        parts = []
        if self.feed_dial is not None:
            parts.append(self._dial(self.feed_dial, feed, volts == []))
        parts += volts
        if not parts:
            return None
        both = parts[0] if len(parts) == 1 else say("machine.both", dial=parts[0], tap=parts[1])
        return say("machine.set", machine=self._called(), what=both)

    def _called(self) -> Message:
        return say("machine.named", mark=self.name) if self.name else say("machine.unnamed")

    def _dial(self, dial: FeedDial, feed: float, with_marks: bool) -> Message:
        found = dial.mark(feed)
        if found is None:
            return say("machine.feed-beyond", beyond=dial.beyond(feed))
        place, before, after = found
        if before == after:
            return say("machine.feed-at", mark=before)
        shown = Plain(place, _figures(place))
        if not with_marks:  # a headline with both knobs is long enough
            return say("machine.feed-at", mark=shown)
        return say("machine.feed", place=shown, mark=before, after=after)

    def _voltage(self, voltage: float, drop: float) -> list[Message]:
        """Return the tap or the place of the knob, if one is known: as `words` is asked for it."""
        wanted = voltage if self.at_gun else voltage + drop
        if self.taps is not None:
            return [self._tap(self.taps, wanted)]
        return [self._turned(self.knob, wanted)] if self.knob is not None else []

    def _tap(self, taps: VoltageTaps, wanted: float) -> Message:
        mark, value = taps.nearest(wanted)
        off = numerals.settle(value, 6) - numerals.settle(wanted, 6)
        shown: dict[str, object] = {"mark": mark, "tap": self._volts(value), "off": Measured(abs(off), "voltage", 2)}
        if off == 0.0:
            return say("machine.tap", mark=mark, tap=shown["tap"])
        across = taps.across(wanted)
        if across is None:
            return say("machine.tap-lowest" if off > 0.0 else "machine.tap-highest", **shown)
        shown["other"], shown["across"] = across[0], Measured(across[1], "voltage")
        return say("machine.tap-above" if off > 0.0 else "machine.tap-below", **shown)

    def _turned(self, knob: VoltageKnob, wanted: float) -> Message:
        found = knob.mark(wanted)
        if found is None:
            (first, low), (last, high) = knob.marks[0], knob.marks[-1]
            ends = {"low": self._volts(low), "high": self._volts(high), "wanted": Measured(wanted, "voltage", 3)}
            return say("machine.knob-beyond", first=first, last=last, **ends)
        place, before, after = found
        if before == after:
            return say("machine.knob", mark=before)
        return say("machine.knob", mark=Plain(place, _knob_figures(place)))

    def _volts(self, value: float) -> object:
        volts = Measured(value, "voltage")
        return say("machine.at-gun", volts=volts) if self.at_gun else volts

    def feed_results(self, feed: float) -> tuple[Number, ...]:
        """Return the mark of a feed [m/s] as a result, where it lies on the dial."""
        found = self.feed_dial.mark(feed) if self.feed_dial is not None else None
        if found is None:
            return ()
        label = say("machine.set", machine=self._called(), what=say("machine.feed-mark"))
        return (Number("feed_mark", found[0], "dial_mark", label=label, figures=_figures(found[0])),)

    def voltage_results(self, voltage: float, drop: float = 0.0, id: str = "machine.set") -> tuple[object, ...]:
        """Return the tap, and how far it is off, or the place of the knob for a voltage at the gun and a drop, [V]."""
        said = self._voltage(voltage, drop)
        if not said:
            return ()
        what = say("machine.voltage-tap" if self.taps is not None else "machine.voltage-knob")
        label = say(id, machine=self._called(), what=what)
        if self.knob is None:
            return (Words("voltage_tap", said[0], label),)
        found = self.knob.mark(voltage if self.at_gun else voltage + drop)
        if found is None:
            return (Words("voltage_mark", said[0], label),)
        return (Number("voltage_mark", found[0], "dial_mark", label=label, figures=_knob_figures(found[0])),)

    def voltage_notes(self, leads_known: bool) -> tuple[Message, ...]:
        """Return what has to be said of the volts of a tap or knob: what it was taken for and where they were read."""
        if self.taps is None and self.knob is None:
            return ()
        notes = []
        if self.taps is not None and self.control == "" and self.taps.numbered():
            notes.append(say("machine.as-taps"))
        if self.at_gun:
            notes.append(say("machine.read-at-gun"))
        elif not leads_known:
            notes.append(say("machine.read-on-machine"))
        return tuple(notes)

    def notes(self) -> tuple[Message, ...]:
        """Return what has to be said of the trim: that it is in the numbers and where it holds, or that it is not."""
        known = self.feed_dial is not None or self.taps is not None or self.knob is not None
        if self.left_out:
            return (say("machine.other-wire", machine=self._called()),)
        if not self.trim:
            return (say("machine.only-named", machine=self._called()),) if self.name and not known else ()
        terms = [Plain(self.trim.get(name, 1.0), 3) for name in TRIM[:2]]
        return (say("machine.trimmed", machine=self._called(), arc=terms[0], resistance=terms[1]),)

    def carried(self) -> tuple[tuple[str, object], ...]:
        """Return the fields that another question about this machine is to be given."""
        return tuple(self._carried)


def _read(text: str) -> float | None:
    try:
        return numerals.parse(text)
    except numerals.BadNumber:
        return None


def _figures(place: float) -> int:
    """Return the figures with which a place on a dial is read: tenths of a mark up to ten, whole ones above."""
    return 2 if place < 100.0 else 3


def _knob_figures(place: float) -> int:
    """Return the same for a voltage knob: a whole mark of one that is marked in volts would be too coarse."""
    return 2 if place < 10.0 else 3
