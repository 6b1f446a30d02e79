"""Where a value stands on the paper: in whole numbers, the same on every Python."""

import math

from calculators import numerals

WIDTH = 340  # as wide as a phone shows it, so that a text of 15 px is 15 px
TEXT_HEIGHT = 20


def place(value: float, low: float, high: float, first: int, last: int) -> int:
    """Return the coordinate of value on a scale that runs from `first` at low to `last` at high."""
    share = (value - low) / (high - low)
    return math.floor(numerals.settle(first + share * (last - first), 7) + 0.5)
