"""What each element adds to a carbon equivalent: pieces end to end over a scale, with the two marks it is read by."""

from calculators.contract import Drawing, Message
from calculators.drawings.paper import EDGE, RIGHT, TEXT_HEIGHT, WIDTH, Scale, box, limit, wide

TYPE_CHECKING = False
if TYPE_CHECKING:
    Shape = tuple[str, tuple[int, ...], str, object]

_TOP, _BOTTOM = 36, 84
_ROOM_FOR_LABEL = wide("Mn") + 8  # a piece narrower than this cannot hold its sign
_SPARE = 1.12  # how much of the scale is left free beyond the longer of sum and marks
_PERCENT = 0.01


def draw(
    pieces: tuple[tuple[Message, float], ...],
    marks: tuple[tuple[Message, float], ...],
    name: Message,
    title: Message,
    description: Message,
) -> Drawing:
    """Return the drawing: `pieces` are (sign of the element, what it adds), `marks` (label, place), all in percent."""
    total = sum([amount for _, amount in pieces])
    most = max([total] + [value for _, value in marks]) * _SPARE
    scale = Scale(name, "carbon_equivalent", ((0.0, EDGE), (most * _PERCENT, RIGHT)), _BOTTOM, total * _PERCENT)
    shapes: list[Shape] = []
    reached = 0.0
    for number, (sign, amount) in enumerate(pieces):
        left, right = [scale.place(value * _PERCENT) for value in (reached, reached + amount)]
        reached = reached + amount
        if right > left:
            style = "metal" if number % 2 == 0 else "band-area"
            shapes.append(("area", box(left, _TOP, right, _BOTTOM), style, None))
            if right - left >= _ROOM_FOR_LABEL:
                shapes.append(("text", ((left + right) // 2, (_TOP + _BOTTOM) // 2 + 5), "middle", sign))
    end = scale.place(total * _PERCENT)
    shapes.append(("line", (end, _TOP - 6, end, _BOTTOM), "mark-line", None))
    for label, value in marks:
        x = scale.place(value * _PERCENT)
        shapes += limit((x, TEXT_HEIGHT, x, _BOTTOM))
        shapes.append(("text", (x, TEXT_HEIGHT - 6), "middle", label))
    shapes.append(scale.shape())
    return Drawing("carbon_share", WIDTH, _BOTTOM + 2 * TEXT_HEIGHT + 6, title, description, tuple(shapes))
