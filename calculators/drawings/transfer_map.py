"""Current across, voltage up: where each transfer mode surely is, and where the welder stands; feed along the top."""

from calculators.contract import Drawing, Message
from calculators.drawings import chart
from calculators.drawings.paper import LEFT, RIGHT, TEXT_HEIGHT, Scale
from calculators.facts.transfer import LEAST_VOLTAGE, MOST_VOLTAGE

TYPE_CHECKING = False
if TYPE_CHECKING:
    Shape = tuple[str, tuple[int, ...], str, object]
    Region = tuple[Message, int, tuple[tuple[float, float, float], ...]]

_TOP, _BOTTOM = 80, 284
_BESIDE = 6
_CLEAR = 14  # between the point and what is written beside it


def draw(
    regions: "tuple[Region, ...]",
    feeds: tuple[tuple[float, float], ...],
    point: tuple[float, float, float],
    unit: str | None,
    tag: Message | None,
    words: tuple[Message, Message],
    names: tuple[Message, Message, Message],
) -> Drawing:
    """Return the drawing: a region is its name, the width of that, and (current, lowest, highest voltage), [A] and [V].

    `feeds` are (current, wire feed) from end to end of the map; `point` is current, voltage and wire feed; `unit` is
    the one that feeds are shown in; `tag` stands beside the point; `words` are title and description; `names` those
    of current, voltage and wire feed.
    """
    current, voltage, feed = point
    ends = ((feeds[0][0], LEFT), (feeds[-1][0], RIGHT))
    made = chart.Chart(
        Scale(names[0], "current", ends, _BOTTOM, current),
        Scale(names[1], "voltage", ((LEAST_VOLTAGE, _BOTTOM), (MOST_VOLTAGE, _TOP)), LEFT, voltage, None, "left", 44),
    )
    stops = tuple([(speed, made.across.place(each)) for each, speed in feeds])
    made.shapes.append(Scale(names[2], "wire_feed_speed", stops, _TOP, feed, unit, "above").shape())
    for _, _, rows in regions:
        made.area(list(rows))
    made.lead(current, voltage, _TOP)
    at = made.at(current, voltage)
    named: list[Shape] = []
    for name, width, rows in regions:
        low, high = made.at(rows[0][0], rows[0][1]), made.at(rows[-1][0], rows[-1][2])
        named += _name(name, width, (low[0], high[0]), (low[1], high[1]), at)
    made.shapes += named
    made.point(current, voltage)
    if tag is not None:
        at_left = at[0] > (LEFT + RIGHT) // 2
        rows_free = [at[1] + away for away in (-_BESIDE, TEXT_HEIGHT, 2 * TEXT_HEIGHT, -_BESIDE - TEXT_HEIGHT)]
        free = [y for y in rows_free if all(abs(y - each[1][1]) >= TEXT_HEIGHT - 2 for each in named)]
        made.text(at[0] - _CLEAR if at_left else at[0] + _CLEAR, free[0], "end" if at_left else "", tag)
    return made.drawing("transfer_map", words[0], words[1])


def _name(
    name: Message, width: int, sides: tuple[int, int], heights: tuple[int, int], point: tuple[int, int]
) -> "list[Shape]":
    """Return the name of a region at its left, or beside the point's line where that would cross it."""
    left, right = sides
    bottom, top = heights
    lowest = bottom == _BOTTOM
    y = bottom - _BESIDE if lowest else top + TEXT_HEIGHT
    start = left + _BESIDE
    if start - _BESIDE < point[0] < start + width + _BESIDE:
        start = point[0] + _CLEAR
        if start + width > right and point[0] - _CLEAR - width >= left:
            start = point[0] - _CLEAR - width
    if point[0] > start and abs(point[1] - y + _BESIDE) < TEXT_HEIGHT:  # the line to the left would cross it
        y += -TEXT_HEIGHT if lowest else TEXT_HEIGHT
    limit = RIGHT if lowest else right  # beside the lowest region the paper is empty
    if start + width <= limit:
        return [("text", (start, y), "", name)]
    end = right - _BESIDE  # too narrow: the name stands out of it to the left
    if end - width - _BESIDE < point[0] < end + _BESIDE:
        end = point[0] - _CLEAR
    return [("text", (end, y), "end", name)] if end - width >= LEFT else []
