"""Where a value stands on the paper, in whole numbers, the same on every Python, and what drawings show alike.

The reader's own point is a circle with dashed lines to its numbers on the scales; a limit is a line of dashes and
dots with its word; what is left or there is a filled part of a frame.
"""

import math

from calculators import numerals, quantities, units
from calculators.contract import Measured

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable

    Shape = tuple[str, tuple[int, ...], str, object]

WIDTH = 340  # as wide as a phone shows it, so that a text of 15 px is 15 px
TEXT_HEIGHT = 22
LEFT, RIGHT = 60, 328  # between which charts are drawn; the numbers stand to the left
EDGE = 12  # where bars begin, which have no numbers there
POINT = 7  # radius of the reader's point
_MARK = 5
_UPRIGHT, _ACROSS = 36, 62  # room that a number takes on a scale


def place(value: float, low: float, high: float, first: int, last: int) -> int:
    """Return the coordinate of value on a scale that runs from `first` at low to `last` at high."""
    share = (value - low) / (high - low)
    return math.floor(numerals.settle(first + share * (last - first), 7) + 0.5)


def flat(points: "list[tuple[int, int]]") -> tuple[int, ...]:
    """Return points as the numbers of a shape."""
    return tuple([number for point in points for number in point])


def box(left: int, top: int, right: int, bottom: int) -> tuple[int, ...]:
    """Return the numbers of a rectangle."""
    return (left, top, right, top, right, bottom, left, bottom)


def frame(left: int, top: int, right: int, bottom: int) -> "Shape":
    """Return the frame that a bar fills."""
    return ("line", box(left, top, right, bottom) + (left, top), "frame", None)


def limit(numbers: tuple[int, ...]) -> "list[Shape]":
    """Return a limit as a line, which stands out from what it runs through."""
    return [("line", numbers, "halo", None), ("line", numbers, "limit", None)]


class Scale:
    """An axis: its name with the unit, round numbers along it, and the reader's own number.

    `stops` are (value in coherent SI, coordinate), values rising. It stands at `cross`; numbers of a scale across
    stand `above` it or below; `lift` is how much higher its name stands. The round numbers are known only when the reader's units are.
    """

    def __init__(
        self,
        name: object,
        quantity: str,
        stops: tuple[tuple[float, int], ...],
        cross: int,
        own: float | None = None,
        unit: str | None = None,
        side: str = "below",
        lift: int = 0,
    ) -> None:
        self.name = name
        self.quantity = quantities.quantity(quantity)
        self.stops = stops
        self.cross = cross
        self.own = own
        self.unit = unit
        self.side = side
        self.lift = lift

    def place(self, value: float) -> int:
        """Return the coordinate of a value; one beyond an end stands at that end."""
        before = self.stops[0]
        if value <= before[0]:
            return before[1]
        for stop in self.stops[1:]:
            if value <= stop[0]:
                return place(value, before[0], stop[0], before[1], stop[1])
            before = stop
        return before[1]

    def shape(self) -> "Shape":
        """Return the scale as a shape of a drawing."""
        first, last = self.stops[0][1], self.stops[-1][1]
        ends = (self.cross, first, self.cross, last) if self.side == "left" else (first, self.cross, last, self.cross)
        return ("scale", ends, "", self)

    def shapes(self, system: str, say: "Callable[[object], str]") -> "list[Shape]":
        """Return lines and texts in the reader's units; `say` puts into words."""
        unit = self.quantity.unit(system) if self.unit is None else self.unit
        sign = units.sign(unit)
        taken: list[tuple[int, int]] = []
        found: list[Shape] = [("line", self.shape()[1], "axis", None)]
        if self.own is not None:
            text = say(Measured(self.own, self.quantity.name, None, unit))
            text = text[: -1 - len(sign)] if sign else text
            at = self._fitted(self.place(self.own), text)
            taken.append((at, self._room(text)))
            found.append(self._text(at, text))
        for number in self._round(unit):
            at = self.place(units.to_coherent(number, unit))
            text = numerals.significant(number, 6)
            stands = self._fitted(at, text)
            if all(abs(stands - other) >= (room + self._room(text)) // 2 for other, room in taken):
                taken.append((stands, self._room(text)))
                found += [self._mark(at), self._text(stands, text)]
        name = say(self.name) + (", " + sign if sign else "")
        last = self.stops[-1][1]
        if self.side == "left":
            found.append(("text", (4, last - _MARK - 9 - self.lift), "", name))
        else:
            found.append(("text", (last, self._row(2)), "end", name))
        return found

    def _row(self, number: int) -> int:
        """Return the height of the first or second row of texts beside a scale across."""
        if self.side == "above":
            return self.cross - _MARK - 4 - TEXT_HEIGHT * (number - 1)
        return self.cross + _MARK - 4 + TEXT_HEIGHT * number

    def _room(self, text: str) -> int:
        return TEXT_HEIGHT - 4 if self.side == "left" else wide(text) + 8

    def _fitted(self, at: int, text: str) -> int:
        half = 0 if self.side == "left" else wide(text) // 2
        return min(max(at, half), WIDTH - half)

    def _text(self, at: int, text: str) -> "Shape":
        if self.side == "left":
            return ("text", (self.cross - _MARK - 4, at + 6), "end", text)
        return ("text", (at, self._row(1)), "middle", text)

    def _mark(self, at: int) -> "Shape":
        if self.side == "left":
            return ("line", (self.cross - _MARK, at, RIGHT, at), "grid", None)
        away = -_MARK if self.side == "above" else _MARK
        return ("line", (at, self.cross, at, self.cross + away), "axis", None)

    def _round(self, unit: str) -> list[float]:
        """Return numbers of 1, 2 or 5 and zeros between the ends, as many as there is room for."""
        low, high = [units.from_coherent(stop[0], unit) for stop in (self.stops[0], self.stops[-1])]
        length = abs(self.stops[-1][1] - self.stops[0][1])
        room = _UPRIGHT if self.side == "left" else _ACROSS
        over, under = _step((high - low) * room / length, self.quantity.name == "count")
        first = math.ceil(numerals.settle(low * under / over, 7))
        last = math.floor(numerals.settle(high * under / over, 7))
        return [number * over / under for number in range(first, last + 1)]


def wide(text: str) -> int:
    """Return how wide a text is at most, by its letters."""
    return len(text) * 10


def _step(least: float, whole: bool) -> tuple[int, int]:
    """Return the smallest of 1, 2, 5, 10 ... and their tenths that is `least` or more, as a fraction."""
    under = 1 if whole else 100000
    over = 1
    least = numerals.settle(least, 7)
    while over * 1.0 < numerals.settle(least * under, 7):
        if under > 1 and over == 10:
            over, under = 1, under // 10
        else:
            over = over // 2 * 5 if str(over)[0] == "2" else over * 2
    return over, under
