"""Current across, voltage up: where each transfer mode surely is, and where the welder stands; feed along the top."""

from calculators.contract import Drawing, Measured, Message
from calculators.drawings.paper import TEXT_HEIGHT, WIDTH, place
from calculators.facts.transfer import LEAST_VOLTAGE, MOST_VOLTAGE

TYPE_CHECKING = False
if TYPE_CHECKING:
    Shape = tuple[str, tuple[int, ...], str, object]
    Region = tuple[Message, int, tuple[tuple[float, float, float], ...]]

_HEIGHT = 296
_LEFT, _RIGHT = 62, 332
_TOP, _BOTTOM = 50, 254
_GRID = (15.0, 20.0, 25.0, 30.0, 35.0)
_BESIDE = 6
_CLEAR = 14  # between the point and what is written beside it
_CURRENT_WIDTH, _FEED_WIDTH = 58, 96  # of labels, in pixels


def draw(
    regions: "tuple[Region, ...]",
    feeds: tuple[tuple[float, float], ...],
    point: tuple[float, float, float],
    unit: str | None,
    tag: Message | None,
    title: Message,
    description: Message,
) -> Drawing:
    """Return the drawing: a region is its name, the width of that, and (current, lowest, highest voltage), [A] and [V].

    `feeds` are (current, wire feed) at both ends of the map; `point` is current, voltage and wire feed; `unit` is
    the one that feeds are shown in; `tag` stands beside the point.
    """
    least, most = feeds[0][0], feeds[-1][0]

    def x_of(current: float) -> int:
        return place(current, least, most, _LEFT, _RIGHT)

    x, y = x_of(point[0]), _y_of(point[1])
    shapes: list[Shape] = []
    for _, _, rows in regions:
        lower = [(x_of(row[0]), _y_of(row[1])) for row in rows]
        upper = [(x_of(row[0]), _y_of(row[2])) for row in rows]
        corners = lower + list(reversed(upper))
        shapes.append(("area", tuple([number for corner in corners for number in corner]), "band-area", None))
    shapes += _voltages(y, point[1])
    shapes.append(("line", (_LEFT, _TOP, _LEFT, _BOTTOM, _RIGHT, _BOTTOM), "axis", None))
    shapes.append(("line", (_LEFT, _TOP, _RIGHT, _TOP), "axis", None))
    shapes.append(("line", (_LEFT, y, x, y), "mark-line", None))
    shapes.append(("line", (x, _TOP, x, _BOTTOM), "mark-line", None))
    for name, width, rows in regions:
        sides = (x_of(rows[0][0]), x_of(rows[-1][0]))
        shapes += _name(name, width, sides, (_y_of(rows[0][1]), _y_of(rows[-1][2])), (x, y))
    shapes.append(("circle", (x, y, 8), "mark", None))
    if tag is not None:
        at_left = x > (_LEFT + _RIGHT) // 2
        shapes.append(("text", (x - _CLEAR if at_left else x + _CLEAR, y - _BESIDE), "end" if at_left else "", tag))
    ends = (x_of(least), x_of(most))
    below = (_BOTTOM + TEXT_HEIGHT - 2, _BOTTOM + 2 * TEXT_HEIGHT - 2)
    above = (_TOP - _BESIDE, _TOP - _BESIDE - TEXT_HEIGHT)
    shapes += _along(x, ends, below, _CURRENT_WIDTH, _currents(point, feeds))
    shapes += _along(x, ends, above, _FEED_WIDTH, _feeds(point, feeds, unit))
    return Drawing("transfer_map", WIDTH, _HEIGHT, title, description, tuple(shapes))


def _y_of(voltage: float) -> int:
    return place(min(max(voltage, LEAST_VOLTAGE), MOST_VOLTAGE), LEAST_VOLTAGE, MOST_VOLTAGE, _BOTTOM, _TOP)


def _currents(point: tuple[float, float, float], feeds: tuple[tuple[float, float], ...]) -> tuple[Measured, ...]:
    return tuple([Measured(value, "current") for value in (feeds[0][0], point[0], feeds[-1][0])])


def _feeds(
    point: tuple[float, float, float], feeds: tuple[tuple[float, float], ...], unit: str | None
) -> tuple[Measured, ...]:
    values = (feeds[0][1], point[2], feeds[-1][1])
    return tuple([Measured(value, "wire_feed_speed", None, unit) for value in values])


def _name(
    name: Message, width: int, sides: tuple[int, int], heights: tuple[int, int], point: tuple[int, int]
) -> "list[Shape]":
    """Return the name of a region at its left, or beside the point's line where that would cross it."""
    left, right = sides
    bottom, top = heights
    lowest = bottom == _BOTTOM
    y = bottom - _BESIDE if lowest else top + TEXT_HEIGHT
    start = left + _BESIDE
    if start - _BESIDE < point[0] < start + width + _BESIDE:
        start = point[0] + _CLEAR
        if start + width > right and point[0] - _CLEAR - width >= left:
            start = point[0] - _CLEAR - width
    if point[0] > start and abs(point[1] - y + _BESIDE) < TEXT_HEIGHT:  # the line to the left would cross it
        y += -TEXT_HEIGHT if lowest else TEXT_HEIGHT
    limit = _RIGHT if lowest else right  # beside the lowest region the paper is empty
    if start + width <= limit:
        return [("text", (start, y), "", name)]
    end = right - _BESIDE  # too narrow: the name stands out of it to the left
    if end - width - _BESIDE < point[0] < end + _BESIDE:
        end = point[0] - _CLEAR
    return [("text", (end, y), "end", name)] if end - width >= _LEFT else []


def _voltages(y: int, voltage: float) -> "list[Shape]":
    """Return the voltages on the left: the point's, and those of the grid that it leaves room for."""
    shapes: list[Shape] = []
    for value in _GRID:
        height = _y_of(value)
        shapes.append(("line", (_LEFT, height, _RIGHT, height), "grid", None))
        if abs(height - y) >= TEXT_HEIGHT:
            shapes.append(("text", (_LEFT - _BESIDE, height + _BESIDE), "end", Measured(value, "voltage")))
    shapes.append(("text", (_LEFT - _BESIDE, y + _BESIDE), "end", Measured(voltage, "voltage", 3)))
    return shapes


def _along(
    x: int, ends: tuple[int, int], rows: tuple[int, int], width: int, labels: tuple[Measured, ...]
) -> "list[Shape]":
    """Return the labels of an axis: the point's, and those of its ends, in the outer row where it is in their way."""
    half = width // 2
    middle = min(max(x, ends[0] + half), ends[1] - half)
    first = rows[0] if middle - half > ends[0] + width else rows[1]
    last = rows[0] if middle + half < ends[1] - width else rows[1]
    return [
        ("text", (middle, rows[0]), "middle", labels[1]),
        ("text", (ends[0], first), "", labels[0]),
        ("text", (ends[1], last), "end", labels[2]),
    ]
