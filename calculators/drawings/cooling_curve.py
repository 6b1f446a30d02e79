"""Heat input across, cooling time up: how slowly this plate cools, and where the welder stands on it."""

from calculators.contract import Drawing, Message
from calculators.drawings import chart
from calculators.drawings.paper import LEFT, RIGHT, TEXT_HEIGHT

TYPE_CHECKING = False
if TYPE_CHECKING:
    Shape = tuple[str, tuple[int, ...], str, object]

_BESIDE = 6
_NAME_WIDTH = 124  # of the knee's name
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
    made = chart.Chart(
        chart.across(names[0], "heat_input", (0.0, curve[-1][0]), point[0], unit),
        chart.up(names[1], "cooling_time", (0.0, curve[-1][3]), point[1]),
    )
    made.banded(curve)
    made.lead(point[0], point[1])
    made.point(point[0], point[1])
    if knee is not None:
        made.shapes += _knee(made.at(knee[0], knee[1]), made.at(point[0], point[1])[1], names[2])
    return made.drawing("cooling_curve", title, description)


def _knee(at: tuple[int, int], y_point: int, name: Message) -> "list[Shape]":
    """Return a tick on the curve with its name, beside which the curve leaves room; nothing where it does not."""
    x, y = at
    tick: Shape = ("line", (x, y - _KNEE, x, y + _KNEE), "curve", None)
    if y < chart.BOTTOM - 2 * TEXT_HEIGHT and x < RIGHT - _NAME_WIDTH:
        return [tick, ("text", (x + _BESIDE, y + TEXT_HEIGHT), "", name)]
    if x > LEFT + _NAME_WIDTH and y - 2 * TEXT_HEIGHT > y_point:
        return [tick, ("text", (x - _BESIDE, y - _BESIDE - _KNEE), "end", name)]
    return []
