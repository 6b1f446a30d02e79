"""What each element adds to a carbon equivalent: pieces end to end over a scale, with the two marks it is read by."""

from calculators.contract import Drawing, Message
from calculators.drawings.paper import TEXT_HEIGHT, WIDTH, place

TYPE_CHECKING = False
if TYPE_CHECKING:
    Shape = tuple[str, tuple[int, ...], str, object]

_HEIGHT = 104
_LEFT, _RIGHT = 6, 334
_TOP, _BOTTOM = 24, 72
_ROOM_FOR_LABEL = 26  # a piece narrower than this cannot hold its sign
_SPARE = 1.12  # how much of the scale is left free beyond the longer of sum and marks


def draw(
    pieces: tuple[tuple[Message, float], ...],
    marks: tuple[tuple[Message, float], ...],
    title: Message,
    description: Message,
) -> Drawing:
    """Return the drawing: `pieces` are (sign of the element, what it adds), `marks` (label, place), all in one unit."""
    total = sum([amount for _, amount in pieces])
    most = max([total] + [value for _, value in marks]) * _SPARE

    def x_of(value: float) -> int:
        return place(value, 0.0, most, _LEFT, _RIGHT)

    shapes: list[Shape] = [("line", (_LEFT, _BOTTOM, _RIGHT, _BOTTOM), "axis", None)]
    reached = 0.0
    for number, (sign, amount) in enumerate(pieces):
        left, right = x_of(reached), x_of(reached + amount)
        reached = reached + amount
        if right > left:
            style = "metal" if number % 2 == 0 else "band-area"
            shapes.append(("area", (left, _TOP, right, _TOP, right, _BOTTOM, left, _BOTTOM), style, None))
            if right - left >= _ROOM_FOR_LABEL:
                shapes.append(("text", ((left + right) // 2, (_TOP + _BOTTOM) // 2 + 5), "middle", sign))
    end = x_of(total)
    shapes.append(("line", (end, _TOP - 8, end, _BOTTOM), "curve", None))
    for label, value in marks:
        x = x_of(value)
        shapes.append(("line", (x, _TOP - 20, x, _BOTTOM + 6), "mark-line", None))
        shapes.append(("text", (x, _BOTTOM + 6 + TEXT_HEIGHT), "middle", label))
    return Drawing("carbon_share", WIDTH, _HEIGHT, title, description, tuple(shapes))
