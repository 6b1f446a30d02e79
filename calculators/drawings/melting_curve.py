"""Current across, wire feed up: the melting law of one wire with its band, and where the welder stands on it."""

from calculators.contract import Drawing, Message
from calculators.drawings import chart
from calculators.drawings.paper import TEXT_HEIGHT

TYPE_CHECKING = False
if TYPE_CHECKING:
    Curve = tuple[tuple[float, float, float, float], ...]

_BESIDE = 8
_MIDDLE = 190  # left of it there is room for a name on the right


def draw(
    curve: "Curve",
    plain: "tuple[tuple[float, float], ...]",
    points: "tuple[tuple[float, float], ...]",
    unit: str | None,
    words: tuple[Message, Message],
    names: tuple[Message, Message, Message],
) -> Drawing:
    """Return the drawing: `curve` is (current, lowest, middle, highest feed) in rising order, [A] and [m/s].

    `plain` is (current, feed) of the law without the welder's own trim, where there is one; a single one of `points`
    has its numbers on the scales. `words` are title and description; `names` those of current, feed and plain law.
    """
    most = max([curve[-1][0]] + [point[0] for point in points])
    top = max([curve[-1][3]] + [row[1] for row in plain] + [point[1] for point in points])
    one = points[0] if len(points) == 1 else (None, None)
    made = chart.Chart(
        chart.across(names[0], "current", (0.0, most), one[0]),
        chart.up(names[1], "wire_feed_speed", (0.0, top), one[1], unit),
    )
    made.banded(curve)
    if plain:
        made.curve(list(plain), "other-curve")
        if plain[0][1] > curve[0][2]:
            x, y = made.at(plain[-1][0], plain[-1][1])
            made.text(x - _BESIDE, max(y, chart.TOP + _BESIDE), "end", names[2])
        else:  # under the line, and beside the one from the point down
            x, y = made.at(plain[0][0], plain[0][1])
            lead = x if one[0] is None else made.across.place(one[0])
            right = lead < _MIDDLE
            y = min(y + TEXT_HEIGHT, chart.BOTTOM - _BESIDE)
            made.text(max(x, lead) + _BESIDE if right else lead - _BESIDE, y, "" if right else "end", names[2])
    if len(points) == 1:
        made.lead(points[0][0], points[0][1])
    for current, feed in points:
        made.point(current, feed)
    return made.drawing("melting_curve", words[0], words[1])
