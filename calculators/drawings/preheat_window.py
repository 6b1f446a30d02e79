"""The window of temperature: a bar from cold to hot with its lowest and its highest marked."""

from calculators.contract import Drawing, Message
from calculators.drawings.paper import EDGE, RIGHT, TEXT_HEIGHT, WIDTH, Scale, box, frame, limit

TYPE_CHECKING = False
if TYPE_CHECKING:
    Shape = tuple[str, tuple[int, ...], str, object]

_TOP, _BOTTOM = 56, 92
_COLD, _HOT = 273.15, 623.15  # K; 0 to 350 degC, further only where an end lies further
_SPARE = 20.0  # K


def draw(
    lowest: tuple[Message, float] | None,
    highest: tuple[Message, float],
    name: Message,
    title: Message,
    description: Message,
) -> Drawing:
    """Return the drawing: each end is (its label, its temperature [K]); without a lowest it begins at the cold edge."""
    hot = max(_HOT, highest[1] + _SPARE, _COLD if lowest is None else lowest[1] + _SPARE)
    scale = Scale(name, "preheat_temperature", ((_COLD, EDGE), (hot, RIGHT)), _BOTTOM)
    left = EDGE if lowest is None else scale.place(lowest[1])
    right = scale.place(highest[1])
    shapes: list[Shape] = [frame(EDGE, _TOP, RIGHT, _BOTTOM), scale.shape()]
    if right > left:
        shapes.insert(0, ("area", box(left, _TOP, right, _BOTTOM), "band-area", None))
    for row, end in enumerate((lowest, highest)):
        if end is not None:
            x, y = scale.place(end[1]), TEXT_HEIGHT * (row + 1)
            shapes += limit((x, y - 2, x, _BOTTOM))
            shapes.append(("text", (x, y - 6), "" if row else "end", end[0]))
    return Drawing("preheat_window", WIDTH, _BOTTOM + 2 * TEXT_HEIGHT + 6, title, description, tuple(shapes))
