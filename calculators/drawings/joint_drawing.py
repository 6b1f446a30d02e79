"""A joint cut across, to scale: plates, weld metal as drawn, and the sizes that make it."""

import math

from calculators import numerals
from calculators.contract import Drawing, Measured, Message
from calculators.drawings.joint_outline import Outline
from calculators.drawings.paper import TEXT_HEIGHT, WIDTH
from calculators.joint_section import RIGHT_ANGLE

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable

    Shape = tuple[str, tuple[int, ...], str, object]
    Pixel = tuple[int, int]

_SIDE = 108  # room beside the section for a dimension line and a name over a size
_MARGIN = 8
_LABEL = 88  # how wide that is with the widest of the usual letters
_HALF_LINE = 82  # half of a name and a size on one line
_TALLEST = 170
_AWAY = 12  # from the metal to its dimension line
_TICK = 5


def draw(
    outline: Outline, words: "tuple[Message, Message]", say: "Callable[..., Message]", section_text: "list[Message]"
) -> Drawing:
    """Return the drawing. `words` are title and description, `say(key, size=...)` names a size, `section_text` are
    lines to stand under it."""
    paper = _Paper(outline, say)
    joint = outline.section.joint
    if joint in ("fillet", "lap", "corner"):
        _fillet(paper)
    elif joint in ("plug", "slot"):
        _hole(paper)
    elif joint == "edge":
        _edge(paper)
    else:
        _groove(paper)
    for message in section_text:
        paper.write_below(message)
    return Drawing("joint", WIDTH, paper.height(), words[0], words[1], tuple(paper.shapes))


class _Paper:
    """Places hundredths of a millimetre on the paper, and collects shapes."""

    def __init__(self, outline: Outline, say: "Callable[..., Message]") -> None:
        self.outline = outline
        self.section = outline.section
        self.say = say
        self.shapes: list[Shape] = []
        corners = [point for polygon in outline.plates for point in polygon] + list(outline.weld)
        self.left = min(x for x, _ in corners)
        self.high = max(y for _, y in corners)
        wide, tall = max(x for x, _ in corners) - self.left, self.high - min(y for _, y in corners)
        self.top = _MARGIN + TEXT_HEIGHT * self._lines_above()
        left, right = self._sides()
        room = WIDTH - left - right
        # The same share of both ways, as a whole fraction: whatever is rounded, it is to scale.
        self.share = (room, wide) if room * tall <= _TALLEST * wide else (_TALLEST, tall)
        self.indent = left + (room - self.length(wide)) // 2
        reach = [x for x, _ in outline.weld]
        middle = self.at(((min(reach) + max(reach)) // 2, 0))[0]
        self.middle = min(max(middle, _HALF_LINE), WIDTH - _HALF_LINE)
        self.bottom = self.top + self.length(tall)
        self.below = self.bottom + 4
        for polygon in outline.plates:
            self.shapes.append(("area", self.flat(polygon), "metal", None))
        weld = self.flat(outline.weld)
        self.shapes.append(("area", weld, "band-area", None))
        self.shapes.append(("line", weld + weld[:2], "curve", None))

    def _sides(self) -> tuple[int, int]:
        """Return how much room the labels need on the left and on the right."""
        joint = self.section.joint
        if joint in ("fillet", "lap", "corner"):
            crowded = joint == "corner" or self.section.angle < RIGHT_ANGLE
            return _SIDE, 94 if crowded else 34
        return _SIDE if self.is_part_filled() else _MARGIN, _MARGIN if joint == "edge" else _SIDE

    def is_part_filled(self) -> bool:
        """Return whether a plug or a slot is filled less than full."""
        section = self.section
        part = numerals.settle(section.depth) < numerals.settle(section.size("thickness"))
        return section.joint in ("plug", "slot") and part

    def _lines_above(self) -> int:
        section = self.section
        if section.joint in ("plug", "slot"):
            return 2
        return (1 if section.size("reinforcement") else 0) + (1 if section.slopes() else 0)

    def length(self, hundredths: int) -> int:
        """Return a length on the paper."""
        over, under = self.share
        return (2 * hundredths * over + under) // (2 * under)

    def at(self, point: "tuple[int, int]") -> "Pixel":
        """Return where a point of the joint stands on the paper."""
        return (self.indent + self.length(point[0] - self.left), self.top + self.length(self.high - point[1]))

    def mark(self, name: str) -> "Pixel":
        """Return where a named point stands."""
        return self.at(self.outline.marks[name])

    def flat(self, points: "tuple[tuple[int, int], ...]") -> tuple[int, ...]:
        """Return points as the numbers of a shape."""
        return tuple(number for point in points for number in self.at(point))

    def height(self) -> int:
        """Return how tall the paper is."""
        return self.below + 4

    def line(self, numbers: tuple[int, ...], style: str) -> None:
        """Draw a line."""
        self.shapes.append(("line", numbers, style, None))

    def text(self, x: int, y: int, style: str, label: object) -> None:
        """Write a text."""
        self.shapes.append(("text", (x, y), style, label))

    def write_below(self, message: Message) -> None:
        """Write one line under everything."""
        self.below += TEXT_HEIGHT
        self.text(self.middle, self.below - 4, "middle", message)

    def size(self, value: float) -> Measured:
        """Return a size as it is shown."""
        return self.section.shown(value)

    def beside(self, x: int, y: int, style: str, key: str, value: float) -> None:
        """Write a name and under it a size, at the height y."""
        y = max(y, TEXT_HEIGHT)
        self.text(x, y - 3, style, self.say(key))
        self.text(x, y + TEXT_HEIGHT - 5, style, self.size(value))
        self.below = max(self.below, y + TEXT_HEIGHT)

    def dimension(self, start: "Pixel", end: "Pixel", away: "Pixel") -> "Pixel":
        """Draw a dimension line beside start and end, moved by `away`, and return its middle."""
        (x, y), (to_x, to_y), (dx, dy) = start, end, away
        self.line((x, y, x + dx, y + dy), "grid")
        self.line((to_x, to_y, to_x + dx, to_y + dy), "grid")
        self.line((x + dx, y + dy, to_x + dx, to_y + dy), "axis")
        for at_x, at_y in ((x + dx, y + dy), (to_x + dx, to_y + dy)):
            self.line((at_x - _TICK, at_y + _TICK, at_x + _TICK, at_y - _TICK), "axis")
        return ((x + to_x) // 2 + dx, (y + to_y) // 2 + dy)

    def across(self, left: "Pixel", right: "Pixel", key: str, value: float) -> None:
        """Draw a dimension under everything so far, and its label under that."""
        row = self.below + _AWAY
        self.line((left[0], left[1], left[0], row), "grid")
        self.line((right[0], right[1], right[0], row), "grid")
        self.dimension((left[0], row), (right[0], row), (0, 0))
        self.below = row + TEXT_HEIGHT + 2
        middle = min(max((left[0] + right[0]) // 2, _HALF_LINE), WIDTH - _HALF_LINE)
        self.text(middle, self.below - 4, "middle", self.say(key, size=self.size(value)))


# ---------------------------------------------------------------- each kind of joint


def _fillet(paper: _Paper) -> None:
    section = paper.section
    toe, far_toe, root, foot = [paper.mark(name) for name in ("toe", "far_toe", "root", "foot")]
    corner = paper.at((0, 0))
    if section.joint == "fillet":
        # Straight to the left of its plate, so that it also stands clear of a slanted one.
        plate = paper.outline.plates[0]
        away = -paper.length(plate[1][0] - plate[2][0]) - _AWAY
    else:
        away = paper.indent - _AWAY - corner[0]
    x, y = paper.dimension(corner, toe, (away, 0))
    paper.beside(x - 10, y, "end", "leg", section.legs[0])
    if section.joint == "corner":
        paper.across((corner[0], paper.bottom), (far_toe[0], paper.bottom), "thickness", section.size("thickness"))
    else:
        paper.across(corner, far_toe, "second", section.legs[1])
    paper.line(root + foot, "mark-line")
    assert section.throat is not None
    out = paper.length(_hundredths(max(section.bulge, 0.0))) + 14
    paper.beside(min(foot[0] + out, WIDTH - _LABEL), max(foot[1] - out, paper.top + 14), "", "throat", section.throat)


def _groove(paper: _Paper) -> None:
    section = paper.section
    top, foot = paper.mark("plate_top"), paper.mark("plate_foot")
    x, y = paper.dimension(foot, top, (_AWAY, 0))
    paper.beside(x + 10, y, "", "thickness-beside", section.size("thickness"))
    above = paper.top - 6
    if section.size("reinforcement"):
        paper.text(paper.middle, above, "middle", paper.say("cap", size=paper.size(section.size("reinforcement"))))
        above -= TEXT_HEIGHT
    if section.slopes():
        included = section.shown_angle(section.size("included_angle"))
        paper.text(paper.middle, above, "middle", paper.say("angle", size=included))
    face = section.size("root_face")
    if face and section.joint != "single-u":
        low, high = paper.mark("face_foot"), paper.mark("face_top")
        x, y = paper.dimension(low, high, (-_AWAY, 0))
        paper.beside(max(x - 10, _LABEL), min(y, foot[1] - TEXT_HEIGHT - 2), "end", "face-beside", face)
    if section.gap:
        left, right = paper.mark("gap_left"), paper.mark("gap_right")
        paper.across(left, right, "gap", section.gap)
    if face and section.joint == "single-u":
        # The curve of a U reaches out over its root face: no room beside it.
        paper.write_below(paper.say("face", size=paper.size(face)))


def _edge(paper: _Paper) -> None:
    section = paper.section
    left, right = paper.mark("plate_left"), paper.mark("plate_right")
    paper.across(left, right, "thickness", section.size("thickness"))
    paper.text(paper.middle, paper.top - 6, "middle", paper.say("cap", size=paper.size(section.size("reinforcement"))))


def _hole(paper: _Paper) -> None:
    section = paper.section
    top, foot = paper.mark("plate_top"), paper.mark("plate_foot")
    x, y = paper.dimension(foot, top, (_AWAY, 0))
    paper.beside(x + 10, y, "", "thickness-beside", section.size("thickness"))
    left, right = paper.mark("hole_left"), paper.mark("hole_right")
    paper.dimension(left, right, (0, -_AWAY))
    key = "hole" if section.joint == "plug" else "slot-width"
    paper.text(
        (left[0] + right[0]) // 2, left[1] - _AWAY - 10, "middle", paper.say(key, size=paper.size(section.width))
    )
    if paper.is_part_filled():
        low, high = paper.mark("fill_foot"), paper.mark("fill_top")
        x, y = paper.dimension(low, high, (paper.indent - _AWAY - low[0], 0))
        paper.beside(x - 10, y, "end", "fill", section.depth)


def _hundredths(size: float) -> int:
    return _rounded(size * 1e5)


def _rounded(value: float) -> int:
    return math.floor(numerals.settle(value, 7) + 0.5)
