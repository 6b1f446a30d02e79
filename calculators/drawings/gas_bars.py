"""What a cylinder gives over what the work needs: a bar as long as the gas is much, with the need as a limit."""

from calculators.contract import Drawing, Message
from calculators.drawings.paper import EDGE, RIGHT, TEXT_HEIGHT, WIDTH, Scale, box, frame, limit

TYPE_CHECKING = False
if TYPE_CHECKING:
    Shape = tuple[str, tuple[int, ...], str, object]

_TOP, _BOTTOM = 54, 86
_END = 5  # half a tick


def draw(
    gas: tuple[float, float, float],
    need: float,
    labels: tuple[Message, Message],
    name: Message,
    title: Message,
    description: Message,
) -> Drawing:
    """Return the drawing: `gas` is what there is, with its likely least and most, and `need`, all [m3].

    `labels` stand over the bar, the one of what there is first; `name` is that of the scale.
    """
    scale = Scale(name, "gas_volume", ((0.0, EDGE), (max(gas[2], need), RIGHT)), _BOTTOM)
    have, low, high, needed = [scale.place(value) for value in (gas[0], gas[1], gas[2], need)]
    middle = (_TOP + _BOTTOM) // 2
    sure = (low, middle - _END, low, middle + _END, low, middle, high, middle, high, middle - _END, high, middle + _END)
    shapes: list[Shape] = [
        ("area", box(EDGE, _TOP, have, _BOTTOM), "mark", None),
        frame(EDGE, _TOP, RIGHT, _BOTTOM),
        ("line", sure, "halo", None),
        ("line", sure, "curve", None),
        scale.shape(),
        ("text", (EDGE, TEXT_HEIGHT - 4), "", labels[0]),
        ("text", (needed, 2 * TEXT_HEIGHT - 4), "middle", labels[1]),
    ]
    shapes += limit((needed, _TOP - 10, needed, _BOTTOM))
    return Drawing("gas_bars", WIDTH, _BOTTOM + 2 * TEXT_HEIGHT + 6, title, description, tuple(shapes))
