"""Current across, wire feed up: the melting law of one wire with its band, and where the welder stands on it."""

from calculators.contract import Drawing, Measured, Message
from calculators.drawings.paper import TEXT_HEIGHT, WIDTH, place

TYPE_CHECKING = False
if TYPE_CHECKING:
    Shape = tuple[str, tuple[int, ...], str, object]

_HEIGHT = 240
_LEFT, _RIGHT = 8, 332
_TOP, _BOTTOM = 44, 210
_BESIDE = 6
_LABEL_WIDTH = 58  # of a current, in pixels
_FEED_WIDTH = 100


def draw(
    curve: tuple[tuple[float, float, float, float], ...],
    current: float,
    feed: float,
    feed_unit: str | None,
    title: Message,
    description: Message,
    axes: tuple[Message, Message],
) -> Drawing:
    """Return the drawing: `curve` is (current, lowest, middle, highest feed) in rising order, [A] and [m/s].

    `axes` are the names of the two axes, current first.
    """
    most_current = curve[-1][0]
    most_feed = max(curve[-1][3], feed)

    def x_of(value: float) -> int:
        return place(value, 0.0, most_current, _LEFT, _RIGHT)

    def y_of(value: float) -> int:
        return place(value, 0.0, most_feed, _BOTTOM, _TOP)

    lower = [(x_of(row[0]), y_of(row[1])) for row in curve]
    upper = [(x_of(row[0]), y_of(row[3])) for row in curve]
    middle = [(x_of(row[0]), y_of(row[2])) for row in curve]
    x, y = x_of(current), y_of(feed)
    shapes: list[Shape] = [
        ("area", _flat(lower + list(reversed(upper))), "band-area", None),
        ("line", (_LEFT, y, x, y, x, _BOTTOM), "mark-line", None),
        ("line", _flat(middle), "curve", None),
        ("line", (_LEFT, _TOP - TEXT_HEIGHT, _LEFT, _BOTTOM, _RIGHT, _BOTTOM), "axis", None),
        ("circle", (x, y, 8), "mark", None),
        ("text", (_LEFT + _BESIDE, _TOP - TEXT_HEIGHT - _BESIDE), "", axes[1]),
        _name_of_current(x, axes[0]),
    ]
    shapes += _feed_labels(middle[-1][1], curve[-1][2], x, y, feed, feed_unit)
    shapes += _current_labels(middle[0][0], curve[0][0], most_current, x, current)
    return Drawing("melting_curve", WIDTH, _HEIGHT, title, description, tuple(shapes))


def _flat(points: list[tuple[int, int]]) -> tuple[int, ...]:
    return tuple(number for point in points for number in point)


def _name_of_current(x: int, name: Message) -> "Shape":
    """Return the name of the axis across, on the side that the line of the point leaves free."""
    y = _BOTTOM - _BESIDE - 2
    if x > _RIGHT - _LABEL_WIDTH * 3 // 2:
        return ("text", (_LEFT + _BESIDE, y), "", name)
    return ("text", (_RIGHT, y), "end", name)


def _feed_labels(y_top: int, top: float, x: int, y: int, feed: float, unit: str | None) -> "list[Shape]":
    """Return the feed of the point and, where there is room for it, of the end of the curve."""
    above = _BESIDE if x > _LEFT + _FEED_WIDTH else 2 * _BESIDE  # clear of the point's own circle
    shown: list[Shape] = [("text", (_LEFT + _BESIDE, y - above), "", Measured(feed, "wire_feed_speed", None, unit))]
    if abs(y_top - y) > TEXT_HEIGHT:
        shown.append(("line", (_LEFT, y_top, _RIGHT, y_top), "grid", None))
        shown.append(("text", (_LEFT + _BESIDE, y_top - _BESIDE), "", Measured(top, "wire_feed_speed", None, unit)))
    return shown


def _current_labels(x_low: int, low: float, high: float, x: int, current: float) -> "list[Shape]":
    """Return the current of the point and, where there is room for them, of both ends of the curve."""
    y = _BOTTOM + TEXT_HEIGHT - 2
    if x > _RIGHT - _LABEL_WIDTH // 2:
        shown: list[Shape] = [("text", (_RIGHT, y), "end", Measured(current, "current"))]
    else:
        shown = [("text", (x, y), "middle", Measured(current, "current"))]
        if x < _RIGHT - _LABEL_WIDTH * 3 // 2:
            shown.append(("text", (_RIGHT, y), "end", Measured(high, "current")))
    if abs(x - x_low) > _LABEL_WIDTH:
        shown.append(("text", (x_low, y), "middle", Measured(low, "current")))
    return shown
