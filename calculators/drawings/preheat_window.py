"""The window of temperature: a bar from cold to hot with its lowest and its highest marked."""

from calculators.contract import Drawing, Measured, Message
from calculators.drawings.paper import TEXT_HEIGHT, WIDTH, place

TYPE_CHECKING = False
if TYPE_CHECKING:
    Shape = tuple[str, tuple[int, ...], str, object]

_HEIGHT = 150
_LEFT, _RIGHT = 6, 334
_TOP, _BOTTOM = 56, 94
_COLD, _HOT = 273.15, 623.15  # K; 0 to 350 degC, further only where an end lies further
_SPARE = 20.0  # K
_HALF_LABEL = 70


def draw(
    lowest: tuple[Message, float] | None,
    highest: tuple[Message, float],
    title: Message,
    description: Message,
) -> Drawing:
    """Return the drawing: each end is (its label, its temperature [K]); without a lowest it begins at the cold edge."""
    hot = max(_HOT, highest[1] + _SPARE, _COLD if lowest is None else lowest[1] + _SPARE)

    def x_of(temperature: float) -> int:
        return place(temperature, _COLD, hot, _LEFT, _RIGHT)

    left = _LEFT if lowest is None else x_of(lowest[1])
    right = x_of(highest[1])
    shapes: list[Shape] = []
    if right > left:
        shapes.append(("area", (left, _TOP, right, _TOP, right, _BOTTOM, left, _BOTTOM), "band-area", None))
    shapes.append(("line", (_LEFT, _TOP, _RIGHT, _TOP, _RIGHT, _BOTTOM, _LEFT, _BOTTOM, _LEFT, _TOP), "frame", None))
    if lowest is not None:
        shapes.append(("line", (left, _TOP - 12, left, _BOTTOM), "curve", None))
        shapes.append(_label(left, _TOP - 20, lowest[0]))
    shapes.append(("line", (right, _TOP, right, _BOTTOM + 12), "mark-line", None))
    shapes.append(_label(right, _BOTTOM + 12 + TEXT_HEIGHT, highest[0]))
    shapes.append(("text", (_LEFT, _HEIGHT - 4), "", Measured(_COLD, "preheat_temperature")))
    shapes.append(("text", (_RIGHT, _HEIGHT - 4), "end", Measured(hot, "preheat_temperature")))
    return Drawing("preheat_window", WIDTH, _HEIGHT, title, description, tuple(shapes))


def _label(x: int, y: int, text: Message) -> "Shape":
    """Return a label at x that stays on the paper."""
    if x < _LEFT + _HALF_LABEL:
        return ("text", (_LEFT, y), "", text)
    if x > _RIGHT - _HALF_LABEL:
        return ("text", (_RIGHT, y), "end", text)
    return ("text", (x, y), "middle", text)
