"""Readings in the order they were taken, with their limits as lines: what climbs, drifts or jumps shows."""

from calculators.contract import Drawing, Measured, Message
from calculators.drawings.paper import TEXT_HEIGHT, WIDTH, place

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable

    Shape = tuple[str, tuple[int, ...], str, object]

_HEIGHT = 230
_LEFT, _RIGHT = 14, 326
_TOP, _BOTTOM = 46, 184
_BESIDE = 6
_AIR = 0.15  # of what is drawn, above and below it
_FLAT = 0.02  # of the value: so much is drawn where all readings are the same


def draw(
    name: str,
    values: list[float | None],
    limits: list[tuple[float, Message]],
    shown: "Callable[[float], Measured]",
    title: Message,
    description: Message,
) -> Drawing:
    """Return the drawing of readings, None where there is none; `limits` are (value, name), `shown` puts a unit to one."""
    known = [value for value in values if value is not None]
    low, high = min(known), max(known)
    bottom, top = min([low] + [limit for limit, _ in limits]), max([high] + [limit for limit, _ in limits])
    air = max((top - bottom) * _AIR, abs(top) * _FLAT, 1e-9)
    bottom, top = bottom - air, top + air

    def x_of(position: int) -> int:
        return place(float(position), 0.0, float(max(len(values) - 1, 1)), _LEFT, _RIGHT)

    def y_of(value: float) -> int:
        return place(value, bottom, top, _BOTTOM, _TOP)

    shapes: list[Shape] = [
        ("line", (_LEFT, y_of(value), _RIGHT, y_of(value)), "grid", None)
        for value in ([low, high] if high > low else [low])
    ]
    for limit, _ in limits:
        shapes.append(("line", (_LEFT, y_of(limit), _RIGHT, y_of(limit)), "mark-line", None))
    points = [(x_of(position), y_of(value)) for position, value in enumerate(values) if value is not None]
    if len(points) > 1:
        shapes.append(("line", tuple([number for point in points for number in point]), "curve", None))
    shapes += [("circle", (x, y, 6), "mark", None) for x, y in points]
    shapes.append(("line", (_LEFT, _TOP, _LEFT, _BOTTOM, _RIGHT, _BOTTOM), "axis", None))
    shapes.append(("text", (_LEFT, _BOTTOM + TEXT_HEIGHT), "", "1"))
    if len(values) > 1:
        shapes.append(("text", (_RIGHT, _BOTTOM + TEXT_HEIGHT), "end", str(len(values))))
    return Drawing(
        "run_" + name, WIDTH, _HEIGHT, title, description, tuple(shapes + _words(limits, shown, low, high, y_of))
    )


def _words(
    limits: list[tuple[float, Message]],
    shown: "Callable[[float], Measured]",
    low: float,
    high: float,
    y_of: "Callable[[float], int]",
) -> "list[Shape]":
    """Return the names of the limits above and below all else, where no line runs through them."""
    shapes: list[Shape] = [
        ("text", (_LEFT, _TOP - TEXT_HEIGHT - _BESIDE), "", shown(high)),
        ("text", (_LEFT, _BOTTOM + 2 * TEXT_HEIGHT), "", shown(low)),
    ]
    for limit, name in limits:
        is_upper = limit >= max([each for each, _ in limits]) and limit >= (low + high) / 2.0
        y = _TOP - TEXT_HEIGHT - _BESIDE if is_upper else _BOTTOM + 2 * TEXT_HEIGHT
        shapes.append(("text", (_RIGHT, y), "end", name))
    return shapes
