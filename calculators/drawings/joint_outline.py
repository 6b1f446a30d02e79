"""The plates and the weld of a joint as polygons, in whole hundredths of a millimetre, x to the right and y up.

The root is at 0, 0: of a fillet the corner on the plate that runs across, of a groove the middle of the gap at the
lower face, of a plug the middle of the hole at the plate below.
"""

import math

from calculators import numerals
from calculators.joint_section import CURVED, HOLES, Section

TYPE_CHECKING = False
if TYPE_CHECKING:
    Point = tuple[float, float]
    Points = list[Point]

_HUNDREDTH = 1e-5  # m
_STEPS = 16  # of a parabola or an arc: finer than the paper shows


def whole(size: float) -> int:
    """Return a size in whole hundredths of a millimetre."""
    return math.floor(numerals.settle(size / _HUNDREDTH) + 0.5)


class Outline:
    """`plates` and `weld`, each a polygon of whole numbers; `marks` are named points for the dimensions."""

    def __init__(self, section: Section) -> None:
        self.section = section
        self.plates: list[tuple[tuple[int, int], ...]] = []
        self.weld: tuple[tuple[int, int], ...] = ()
        self.marks: dict[str, tuple[int, int]] = {}
        if section.joint in ("fillet", "lap", "corner"):
            self._fillet()
        elif section.joint in HOLES:
            self._hole()
        elif section.joint == "edge":
            self._edge()
        else:
            self._groove()

    def _plate(self, points: "Points") -> None:
        self.plates.append(_in_whole(points))

    def _mark(self, name: str, point: "Point") -> None:
        self.marks[name] = (whole(point[0]), whole(point[1]))

    # ------------------------------------------------------------ fillets

    def _fillet(self) -> None:
        section = self.section
        first, second = section.legs
        across, up = math.cos(section.angle), math.sin(section.angle)
        toe, far_toe = (first * across, first * up), (second, 0.0)
        along = section.gap / up
        root = (along * across, section.gap)
        self.weld = _in_whole([(0.0, 0.0)] + _parabola(far_toe, toe, section.bulge))
        size = max(first, second)
        if section.joint == "fillet":
            self._standing(root, across, up, first, size)
        else:
            self._lying(root, size)
        foot = _nearer(_foot(root, toe, far_toe), root, max(-section.bulge, 0.0))
        for name, point in (("toe", toe), ("far_toe", far_toe), ("root", root), ("foot", foot)):
            self._mark(name, point)

    def _standing(self, root: "Point", across: float, up: float, first: float, size: float) -> None:
        thick = 0.45 * size
        width, length = thick / up, first + 0.35 * size
        tip = (length * across, length * up)
        self._plate([root, tip, (tip[0] - width, tip[1]), (root[0] - width, root[1])])
        left = min(root[0], tip[0]) - width - 0.2 * size
        self._base(left, self.section.legs[1] + 0.35 * size, thick)

    def _lying(self, root: "Point", size: float) -> None:
        """A lap or a corner: the plate whose edge is welded lies to the left."""
        thickness = self.section.size("thickness")
        top = root[1] + thickness
        self._plate([root, (0.0, top), (-1.2 * size, top), (-1.2 * size, root[1])])
        if self.section.joint == "corner":
            self._plate([(0.0, 0.0), (thickness, 0.0), (thickness, -1.2 * size), (0.0, -1.2 * size)])
        else:
            self._base(-0.8 * size, self.section.legs[1] + 0.5 * size, thickness)

    def _base(self, left: float, right: float, thick: float) -> None:
        self._plate([(left, 0.0), (right, 0.0), (right, -thick), (left, -thick)])

    # ------------------------------------------------------------ grooves

    def _groove(self) -> None:
        section = self.section
        thickness = section.size("thickness")
        right = self._side(section.slopes() > 0)
        left = [(-x, y) for x, y in self._side(section.slopes() > 1)]
        reach = max(0.6 * thickness, 0.3 * section.width)
        widest = max(abs(x) for x, _ in right + left)
        wide = max(widest, section.width / 2.0) + reach
        self._plate(right + [(wide, thickness), (wide, 0.0)])
        self._plate(left + [(-wide, thickness), (-wide, 0.0)])
        height = section.size("reinforcement")
        top_left, top_right = (left[-1][0], thickness), (right[-1][0], thickness)
        low_left, low_right = (left[0][0], 0.0), (right[0][0], 0.0)
        if not section.slopes():
            half = section.width / 2.0
            top_left, top_right = (-half, thickness), (half, thickness)
        points = right[:-1] + _parabola(top_right, top_left, height) + list(reversed(left[:-1]))
        if not section.slopes():
            points = [right[0], right[-1]] + _parabola(top_right, top_left, height) + [left[-1], left[0]]
        if section.levels() == 2:
            points += _parabola(low_left, low_right, height)
        self.weld = _in_whole(points)
        for name, point in (("gap_left", (-section.gap / 2.0, 0.0)), ("gap_right", (section.gap / 2.0, 0.0))):
            self._mark(name, point)
        self._mark("plate_top", (wide, thickness))
        self._mark("plate_foot", (wide, 0.0))
        face = section.size("root_face")
        lowest = section.depth if section.levels() == 2 else 0.0
        self._mark("face_foot", (-section.gap / 2.0, lowest))
        self._mark("face_top", (-section.gap / 2.0, lowest + face))

    def _side(self, bevelled: bool) -> "Points":
        """Return the edge of the right-hand plate from its lower face to its upper one."""
        section = self.section
        thickness, edge = section.size("thickness"), section.gap / 2.0
        if not bevelled:
            return [(edge, 0.0), (edge, thickness)]
        face, slope = section.size("root_face"), math.tan(section.slant)
        if section.joint in CURVED:
            return [(edge, 0.0)] + self._curve(edge, face, slope, thickness)
        back = edge + section.depth * slope
        if section.levels() == 2:
            return [(back, 0.0), (edge, section.depth), (edge, section.depth + face), (back, thickness)]
        return [(edge, 0.0), (edge, face), (back, thickness)]

    def _curve(self, edge: float, face: float, slope: float, thickness: float) -> "Points":
        radius = self.section.size("root_radius")
        turn = math.pi / 2.0 - self.section.slant
        points = []
        for step in range(_STEPS + 1):
            angle = turn * step / _STEPS
            points.append((edge + radius * math.sin(angle), face + radius * (1.0 - math.cos(angle))))
        x, y = points[-1]
        return points + [(x + (thickness - y) * slope, thickness)]

    # ------------------------------------------------------------ edges, plugs, slots

    def _edge(self) -> None:
        thickness = self.section.size("thickness")
        foot = -2.5 * thickness
        self._plate([(0.0, 0.0), (thickness, 0.0), (thickness, foot), (0.0, foot)])
        self._plate([(-thickness, 0.0), (0.0, 0.0), (0.0, foot), (-thickness, foot)])
        height = self.section.size("reinforcement")
        self.weld = _in_whole(_parabola((thickness, 0.0), (-thickness, 0.0), height))
        self._mark("plate_left", (0.0, foot))
        self._mark("plate_right", (thickness, foot))

    def _hole(self) -> None:
        section = self.section
        thickness, half = section.size("thickness"), section.width / 2.0
        wide = half + max(0.5 * section.width, thickness)
        for side in (1.0, -1.0):
            self._plate([(side * half, 0.0), (side * wide, 0.0), (side * wide, thickness), (side * half, thickness)])
        self._base(-wide, wide, thickness)
        self.weld = _in_whole([(-half, 0.0), (half, 0.0), (half, section.depth), (-half, section.depth)])
        self._mark("hole_left", (-half, thickness))
        self._mark("hole_right", (half, thickness))
        self._mark("plate_top", (wide, thickness))
        self._mark("plate_foot", (wide, 0.0))
        self._mark("fill_top", (-half, section.depth))
        self._mark("fill_foot", (-half, 0.0))


# ---------------------------------------------------------------- points


def _in_whole(points: "Points") -> tuple[tuple[int, int], ...]:
    return tuple((whole(x), whole(y)) for x, y in points)


def _parabola(start: "Point", end: "Point", height: float) -> "Points":
    """Return points from start to end, swung out to the right of the way by at most `height`; to the left if below 0."""
    if height == 0.0:
        return [start, end]
    (x, y), (to_x, to_y) = start, end
    length = math.sqrt((to_x - x) * (to_x - x) + (to_y - y) * (to_y - y))
    out_x, out_y = (to_y - y) / length, (x - to_x) / length
    points = []
    for step in range(_STEPS + 1):
        share = step / _STEPS
        swing = 4.0 * height * share * (1.0 - share)
        points.append((x + share * (to_x - x) + swing * out_x, y + share * (to_y - y) + swing * out_y))
    return points


def _foot(point: "Point", start: "Point", end: "Point") -> "Point":
    """Return the point of a straight line nearest to a point."""
    (x, y), (to_x, to_y) = start, end
    run, rise = to_x - x, to_y - y
    share = ((point[0] - x) * run + (point[1] - y) * rise) / (run * run + rise * rise)
    return (x + share * run, y + share * rise)


def _nearer(point: "Point", goal: "Point", distance: float) -> "Point":
    """Return a point moved straight towards a goal that is further off than the distance."""
    (x, y), (to_x, to_y) = point, goal
    share = distance / math.sqrt((to_x - x) * (to_x - x) + (to_y - y) * (to_y - y))
    return (x + share * (to_x - x), y + share * (to_y - y))
