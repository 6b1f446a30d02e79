"""Half a spool cut through, axle below and rim above: barrel, wire now, wire when new, and how deep it lies."""

from calculators.contract import Drawing, Measured, Message
from calculators.drawings.paper import TEXT_HEIGHT, WIDTH, box, frame, place

TYPE_CHECKING = False
if TYPE_CHECKING:
    Shape = tuple[str, tuple[int, ...], str, object]

_HEIGHT = 230
_AXLE, _RIM = 214, 16
_LEFT, _RIGHT = 6, 166
_FLANGE = 10
_DEPTH_AT = 34  # where the depth is measured, from the left
_LABELS = _RIGHT + 34


def draw(
    diameters: tuple[tuple[Message, float], ...],
    depth: float,
    unit: str | None,
    title: Message,
    description: Message,
) -> Drawing:
    """Return the drawing: `diameters` are (name, [m]) of rim, new wire if known, wire now and barrel, in that order."""

    def y_of(diameter: float) -> int:
        return place(diameter, 0.0, diameters[0][1], _AXLE, _RIM)

    wire, barrel = y_of(diameters[-2][1]), y_of(diameters[-1][1])
    inner_left, inner_right = _LEFT + _FLANGE, _RIGHT - _FLANGE
    shapes: list[Shape] = [
        ("area", box(inner_left, wire, inner_right, barrel), "mark", None),
        ("area", box(inner_left, barrel, inner_right, _AXLE), "metal", None),
        ("area", box(_LEFT, _RIM, inner_left, _AXLE), "metal", None),
        ("area", box(inner_right, _RIM, _RIGHT, _AXLE), "metal", None),
        ("line", (_LEFT - 4, _AXLE, _RIGHT + 4, _AXLE), "grid", None),
        ("line", (_DEPTH_AT, _RIM, _DEPTH_AT, wire), "mark-line", None),
        ("line", (inner_left, _RIM, inner_right, _RIM), "grid", None),
        (
            "text",
            (_DEPTH_AT + 8, max((_RIM + wire) // 2 + 5, _RIM + 14)),
            "",
            Measured(depth, "spool_depth", None, unit),
        ),
    ]
    if len(diameters) == 4:
        new = y_of(diameters[1][1])
        shapes.append(frame(inner_left, new, inner_right, barrel))
    below = 0
    for name, diameter in diameters:
        at = y_of(diameter)
        below = max(at + 5, below + TEXT_HEIGHT)
        shapes.append(("line", (_RIGHT + 2, at, _LABELS - 14, below - 5, _LABELS - 4, below - 5), "axis", None))
        shapes.append(("text", (_LABELS, below), "", name))
    return Drawing("spool_section", WIDTH, _HEIGHT, title, description, tuple(shapes))
