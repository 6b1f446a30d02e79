"""A cross-section of plate, bar, pipe, tube, angle or channel, with its width, height and thickness."""

from calculators.contract import Drawing, Message
from calculators.drawings.paper import POINT, TEXT_HEIGHT, WIDTH, flat, place

TYPE_CHECKING = False
if TYPE_CHECKING:
    Shape = tuple[str, tuple[int, ...], str, object]
    Loop = list[tuple[float, float]]

_LEFT, _TOP = 12, 38
_WIDEST, _HIGHEST = 196, 170
_THINNEST = 8  # pixels, so that a plate still shows as one
_GAP = 14  # from the section to its measures
_TICK = 5


def draw(
    loops: "list[Loop]",
    extent: tuple[float, float],
    balance: tuple[float, float] | None,
    labels: tuple[Message, object, object],
    title: Message,
    description: Message,
) -> Drawing:
    """Return the drawing: `loops` are outline and hole, `extent` width and height, all [m].

    `labels` are what stands above it, its width and its height.
    """
    width, height = extent
    scale = min(_WIDEST / width, _HIGHEST / height)
    across, up = max(int(width * scale), _THINNEST), max(int(height * scale), _THINNEST)

    def at(point: tuple[float, float]) -> tuple[int, int]:
        x = place(point[0], 0.0, width, _LEFT, _LEFT + across)
        return x, place(point[1], 0.0, height, _TOP + up, _TOP)

    drawn = [[at(point) for point in loop] for loop in loops]
    right, bottom = _LEFT + across, _TOP + up
    x, y = right + _GAP, bottom + _GAP
    shapes: list[Shape] = [("area", flat(_filled(drawn)), "band-area", None)]
    shapes += [("line", flat(loop + loop[:1]), "curve", None) for loop in drawn]
    shapes += [
        ("line", (_LEFT, y, right, y), "axis", None),
        ("line", (_LEFT, y - _TICK, _LEFT, y + _TICK), "axis", None),
        ("line", (right, y - _TICK, right, y + _TICK), "axis", None),
        ("line", (x, _TOP, x, bottom), "axis", None),
        ("line", (x - _TICK, _TOP, x + _TICK, _TOP), "axis", None),
        ("line", (x - _TICK, bottom, x + _TICK, bottom), "axis", None),
        ("text", (_LEFT, TEXT_HEIGHT - 2), "", labels[0]),
        ("text", (_LEFT, y + _TICK + TEXT_HEIGHT - 4), "", labels[1]),
        ("text", (x + _TICK + 4, (_TOP + bottom) // 2 + 5), "", labels[2]),
    ]
    if balance is not None:
        mark = at(balance)
        shapes.append(("circle", (mark[0], mark[1], POINT), "mark", None))
    return Drawing("part_section", WIDTH, y + _TICK + TEXT_HEIGHT, title, description, tuple(shapes))


def _filled(loops: "list[list[tuple[int, int]]]") -> "list[tuple[int, int]]":
    """Return one polygon of outline and hole: there and back along one seam, the hole the other way round."""
    outline = loops[0]
    if len(loops) == 1:
        return outline
    hole = list(reversed(loops[1]))
    # Both are given from the same corner on; reversed, the hole ends there.
    return outline + outline[:1] + hole[-1:] + hole
