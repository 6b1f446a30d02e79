"""Ten minutes as a bar: how much of them the arc may burn, and how much the machine rests."""

from calculators.contract import Drawing, Message
from calculators.drawings.paper import WIDTH, place

TYPE_CHECKING = False
if TYPE_CHECKING:
    Shape = tuple[str, tuple[int, ...], str, object]

_HEIGHT = 104
_LEFT, _RIGHT = 6, 334
_TOP, _BOTTOM = 30, 72
_TICK, _NUMBERS = 80, 98


def draw(
    share: float, labels: tuple[Message, Message], ends: tuple[Message, Message], title: Message, description: Message
) -> Drawing:
    """Return the bar: the first `share` of it for the arc. `labels` name arc and rest, `ends` the ends of the scale."""
    middle = place(share, 0.0, 1.0, _LEFT, _RIGHT)
    shapes: list[Shape] = [("area", _box(_LEFT, middle), "mark", None)]
    if middle < _RIGHT:
        shapes.append(("area", _box(middle, _RIGHT), "metal", None))
    for minute in range(11):
        x = place(minute / 10.0, 0.0, 1.0, _LEFT, _RIGHT)
        shapes.append(("line", (x, _BOTTOM, x, _TICK), "axis", None))
    shapes += [
        ("text", (_LEFT, _TOP - 10), "", labels[0]),
        ("text", (_RIGHT, _TOP - 10), "end", labels[1]),
        ("text", (_LEFT, _NUMBERS), "", ends[0]),
        ("text", (_RIGHT, _NUMBERS), "end", ends[1]),
    ]
    return Drawing("duty_bar", WIDTH, _HEIGHT, title, description, tuple(shapes))


def _box(left: int, right: int) -> tuple[int, ...]:
    return (left, _TOP, right, _TOP, right, _BOTTOM, left, _BOTTOM)
