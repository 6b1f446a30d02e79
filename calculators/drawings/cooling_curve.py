"""Heat input across, cooling time up: how slowly this plate cools, and where the welder stands on it."""

from calculators.contract import Drawing, Measured, Message
from calculators.drawings.paper import TEXT_HEIGHT, WIDTH, place

TYPE_CHECKING = False
if TYPE_CHECKING:
    Shape = tuple[str, tuple[int, ...], str, object]

_HEIGHT = 230
_LEFT, _RIGHT = 8, 332
_TOP, _BOTTOM = 44, 200
_BESIDE = 6
_LABEL_WIDTH = 84  # of a heat input, in pixels
_NAME_WIDTH = 112  # of the knee's name
_KNEE = 5  # half the cross where thick plate becomes thin


def draw(
    curve: tuple[tuple[float, float, float, float], ...],
    point: tuple[float, float],
    knee: tuple[float, float] | None,
    unit: str | None,
    title: Message,
    description: Message,
    names: tuple[Message, Message, Message],
) -> Drawing:
    """Return the drawing: `curve` is (heat input, shortest, middle, longest time) in rising order, [J/m] and [s].

    `point` is the welder's heat input and time; `knee` is where the plate starts to count as thin, if it is in
    sight; `names` are those of the two axes, heat input first, and of the knee.
    """
    widest, longest = curve[-1][0], curve[-1][3]

    def x_of(value: float) -> int:
        return place(value, 0.0, widest, _LEFT, _RIGHT)

    def y_of(value: float) -> int:
        return place(value, 0.0, longest, _BOTTOM, _TOP)

    lower = [(x_of(row[0]), y_of(row[1])) for row in curve]
    upper = [(x_of(row[0]), y_of(row[3])) for row in curve]
    x, y = x_of(point[0]), y_of(point[1])
    shapes: list[Shape] = [
        ("area", _flat(lower + list(reversed(upper))), "band-area", None),
        ("line", (_LEFT, y, x, y, x, _BOTTOM), "mark-line", None),
        ("line", _flat([(x_of(row[0]), y_of(row[2])) for row in curve]), "curve", None),
        ("line", (_LEFT, _TOP - TEXT_HEIGHT, _LEFT, _BOTTOM, _RIGHT, _BOTTOM), "axis", None),
        ("circle", (x, y, 8), "mark", None),
        ("text", (_LEFT + _BESIDE, _TOP - TEXT_HEIGHT - _BESIDE), "", names[1]),
        ("text", (_LEFT + _BESIDE, y - 2 * _BESIDE), "", Measured(point[1], "cooling_time")),
        ("text", (min(x, _RIGHT - _LABEL_WIDTH // 2), _BOTTOM + TEXT_HEIGHT - 2), "middle", _heat(point[0], unit)),
    ]
    if x > _LEFT + 2 * _LABEL_WIDTH + _BESIDE:
        shapes.append(("text", (_LEFT, _BOTTOM + TEXT_HEIGHT - 2), "", names[0]))
    else:
        shapes.append(("text", (_RIGHT, _BOTTOM + TEXT_HEIGHT - 2), "end", names[0]))
    if knee is not None:
        shapes += _knee(x_of(knee[0]), y_of(knee[1]), y, names[2])
    return Drawing("cooling_curve", WIDTH, _HEIGHT, title, description, tuple(shapes))


def _heat(value: float, unit: str | None) -> Measured:
    return Measured(value, "heat_input", None, unit)


def _flat(points: list[tuple[int, int]]) -> tuple[int, ...]:
    return tuple(number for point in points for number in point)


def _knee(x: int, y: int, y_point: int, name: Message) -> "list[Shape]":
    """Return a tick on the curve with its name, beside which the curve leaves room; nothing where it does not."""
    tick: Shape = ("line", (x, y - _KNEE, x, y + _KNEE), "curve", None)
    if y < _BOTTOM - 2 * TEXT_HEIGHT and x < _RIGHT - _NAME_WIDTH:
        return [tick, ("text", (x + _BESIDE, y + TEXT_HEIGHT), "", name)]
    if x > _LEFT + _NAME_WIDTH and y - 2 * TEXT_HEIGHT > y_point:
        return [tick, ("text", (x - _BESIDE, y - _BESIDE - _KNEE), "end", name)]
    return []
