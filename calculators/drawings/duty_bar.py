"""Ten minutes as a bar: how much of them the arc may burn, and how much the machine rests."""

from calculators.contract import Drawing, Message
from calculators.drawings.paper import EDGE, RIGHT, TEXT_HEIGHT, WIDTH, Scale, box, frame

_TOP, _BOTTOM = 30, 62


def draw(
    time: float, period: float, labels: tuple[Message, Message], name: Message, title: Message, description: Message
) -> Drawing:
    """Return the bar: the first `time` of the `period` [s] for the arc. `labels` name arc and rest, `name` the scale."""
    scale = Scale(name, "arc_time", ((0.0, EDGE), (period, RIGHT)), _BOTTOM, None, "min")
    shapes = (
        ("area", box(EDGE, _TOP, scale.place(time), _BOTTOM), "mark", None),
        frame(EDGE, _TOP, RIGHT, _BOTTOM),
        scale.shape(),
        ("text", (EDGE, _TOP - 10), "", labels[0]),
        ("text", (RIGHT, _TOP - 10), "end", labels[1]),
    )
    return Drawing("duty_bar", WIDTH, _BOTTOM + 2 * TEXT_HEIGHT + 6, title, description, shapes)
