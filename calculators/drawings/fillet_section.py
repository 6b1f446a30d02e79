"""A fillet weld cut through: leg along the plate, throat from the root square to the face, so that neither is the other."""

from calculators.contract import Drawing, Message
from calculators.drawings.paper import TEXT_HEIGHT, WIDTH, place

TYPE_CHECKING = False
if TYPE_CHECKING:
    Shape = tuple[str, tuple[int, ...], str, object]

_HEIGHT = 256
_TOP, _FLOOR = 10, 178  # of the upright part; upper face of the part below
_LEFT, _RIGHT = 8, 332
_LEG = 112  # always as long: the parts are drawn to its scale
_THINNEST, _THICKEST_BELOW, _WIDEST = 14, 30, 58
_ROOT = 72
_TICK = 5
_BESIDE = 8


def draw(
    leg: float,
    thickness: float | None,
    lap: bool,
    labels: tuple[Message, Message],
    title: Message,
    description: Message,
) -> Drawing:
    """Return the drawing of a weld with this `leg` [m] at a part of this `thickness` [m], or at one of no known one.

    `labels` are leg and throat with their numbers. In a `lap` the part ends at the weld and its upper edge shows.
    """
    part = _WIDEST if thickness is None else place(min(thickness / leg, 2.0), 0.0, 2.0, 0, 2 * _LEG)
    below = _FLOOR + min(max(part, _THINNEST), _THICKEST_BELOW)
    if lap:
        upper = max(_FLOOR - max(part, _THINNEST), _TOP)
        plate = (_LEFT, upper, _ROOT, upper, _ROOT, _FLOOR, _LEFT, _FLOOR)
    else:
        wide = min(max(part, _THINNEST), _WIDEST)
        plate = (_ROOT - wide, _TOP, _ROOT, _TOP, _ROOT, _FLOOR, _ROOT - wide, _FLOOR)
    toe, high = _ROOT + _LEG, _FLOOR - _LEG
    face_x, face_y = _ROOT + _LEG // 2, _FLOOR - _LEG // 2
    measure = below + 14
    out = face_x + 34
    shapes: list[Shape] = [
        ("area", (_LEFT, _FLOOR, _RIGHT, _FLOOR, _RIGHT, below, _LEFT, below), "metal", None),
        ("area", plate, "metal", None),
        ("area", (_ROOT, _FLOOR, toe, _FLOOR, _ROOT, high), "band-area", None),
        ("line", (_ROOT, _FLOOR, toe, _FLOOR, _ROOT, high, _ROOT, _FLOOR), "curve", None),
        ("line", (_ROOT, _FLOOR, face_x, face_y), "mark-line", None),
        ("line", (face_x, face_y, out, face_y - 34, out + 14, face_y - 34), "axis", None),
        ("text", (out + 14 + _BESIDE, face_y - 29), "", labels[1]),
        ("line", (_ROOT, measure - _TICK, _ROOT, measure + _TICK), "axis", None),
        ("line", (toe, measure - _TICK, toe, measure + _TICK), "axis", None),
        ("line", (_ROOT, measure, toe, measure), "axis", None),
        ("text", (_ROOT + _LEG // 2, measure + TEXT_HEIGHT), "middle", labels[0]),
    ]
    return Drawing("fillet_section", WIDTH, _HEIGHT, title, description, tuple(shapes))
