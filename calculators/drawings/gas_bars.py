"""What a cylinder gives over what the work needs: two bars from one left edge, as long as the gas is much."""

from calculators.contract import Drawing, Message
from calculators.drawings.paper import TEXT_HEIGHT, WIDTH, place

TYPE_CHECKING = False
if TYPE_CHECKING:
    Shape = tuple[str, tuple[int, ...], str, object]

_HEIGHT = 134
_LEFT, _RIGHT = 4, 336
_BAR = 32
_UPPER, _LOWER = 28, 94  # tops of the two bars
_END = 5  # half a tick


def draw(
    have: float,
    low: float,
    high: float,
    need: float,
    labels: tuple[Message, Message],
    title: Message,
    description: Message,
) -> Drawing:
    """Return the drawing: `have` with its likely `low` and `high`, and `need`, all in one unit.

    `labels` stand over the bars, the one of what there is first.
    """
    most = max(high, need)

    def x_of(value: float) -> int:
        return place(value, 0.0, most, _LEFT, _RIGHT)

    middle = _UPPER + _BAR // 2
    x_low, x_high = x_of(low), x_of(high)
    shapes: list[Shape] = [
        ("area", _box(x_of(have), _UPPER), "metal", None),
        ("line", (x_low, middle, x_high, middle), "curve", None),
        ("line", (x_low, middle - _END, x_low, middle + _END), "curve", None),
        ("line", (x_high, middle - _END, x_high, middle + _END), "curve", None),
        ("area", _box(x_of(need), _LOWER), "mark", None),
        ("line", (x_of(need), _UPPER - _END, x_of(need), _UPPER + _BAR + _END), "mark-line", None),
        ("text", (_LEFT, _UPPER - TEXT_HEIGHT // 2), "", labels[0]),
        ("text", (_LEFT, _LOWER - TEXT_HEIGHT // 2), "", labels[1]),
    ]
    return Drawing("gas_bars", WIDTH, _HEIGHT, title, description, tuple(shapes))


def _box(right: int, top: int) -> tuple[int, ...]:
    return (_LEFT, top, right, top, right, top + _BAR, _LEFT, top + _BAR)
