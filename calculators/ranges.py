"""The one way a formula says that an input lies outside the range it holds for."""

from calculators import numerals


class OutOfRange(ValueError):
    """An input outside a formula's range: names the input, its value, the range and the coherent unit."""

    def __init__(self, name: str, value: float, low: float | None, high: float | None, unit: str) -> None:
        self.name = name
        self.value = value
        self.low = low
        self.high = high
        self.unit = unit
        super().__init__(_sentence(name, value, low, high, unit))


def _text(value: float) -> str:
    return numerals.plain(value) if numerals.is_finite(value) else "not finite"


def _sentence(name: str, value: float, low: float | None, high: float | None, unit: str) -> str:
    parts = []
    if low is not None:
        parts.append("at least " + _text(low))
    if high is not None:
        parts.append("at most " + _text(high))
    tail = " " + unit if unit else ""
    return name + " is " + _text(value) + tail + "; it must be " + " and ".join(parts) + tail


def magnitude(value: float, unit: str) -> float:
    """Return the plain number of value in `unit`; the dimension test replaces this to pass pint quantities."""
    return value


def require(name: str, value: float, low: float | None, high: float | None, unit: str) -> None:
    """Raise OutOfRange unless value is finite and low <= value <= high (None means no limit on that side).

    Both sides are compared at ten figures, so that a limit typed in another unit still counts as inside.
    """
    number = magnitude(value, unit)
    if not numerals.is_finite(number):
        raise OutOfRange(name, number, low, high, unit)
    if (low is not None and above(low, number)) or (high is not None and above(number, high)):
        raise OutOfRange(name, numerals.settle(number), low, high, unit)


def above(number: float, limit: float) -> bool:
    """Return whether number > limit at ten figures; only near the limit do those have to be worked out."""
    if abs(number - limit) > 1e-8 * abs(limit):
        return number > limit
    return numerals.settle(number) > numerals.settle(limit)
