"""One welded joint as a cross-section: how much metal it takes as drawn, its throat, and the sum line by line."""

import math

from calculators import fillet_geometry, groove_geometry, ranges
from calculators.contract import Measured

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

FILLETS = ("fillet", "lap", "corner")
GROOVES = (
    "square-butt",
    "single-v",
    "double-v",
    "single-bevel",
    "double-bevel",
    "single-u",
    "single-j",
)
HOLES = ("plug", "slot")
LINES = FILLETS + GROOVES + ("edge",)  # welds that have a length
JOINTS = LINES + HOLES
BEVELLED = ("single-v", "double-v", "single-bevel", "double-bevel", "single-u", "single-j")
CURVED = ("single-u", "single-j")
_TWO_SLOPES = ("single-v", "double-v", "single-u")
_TWO_SIDED = ("double-v", "double-bevel")

RIGHT_ANGLE = math.pi / 2.0
_DEGREE = math.pi / 180.0
# What these grooves are cut at; common practice. (joints, narrowest, widest included angle [rad])
_ANGLES = (
    (("single-v", "double-v"), 20.0 * _DEGREE, 120.0 * _DEGREE),
    (("single-bevel", "double-bevel"), 10.0 * _DEGREE, 60.0 * _DEGREE),
    (("single-u",), 5.0 * _DEGREE, 60.0 * _DEGREE),
    (("single-j",), 5.0 * _DEGREE, 45.0 * _DEGREE),
)
_LEAST_BEVEL = 0.05  # of the thickness: less is a square butt
_STEEPEST_CAP = 0.25  # height over width: higher, its edges hang over


class Section:
    """A joint of given sizes [m, rad], by the names of their fields; absent ones are 0 or the usual.

    `area` is the metal as drawn, [m2]: the cross-section of a line, the hole seen from above of a plug or slot,
    which is filled to `depth`. `throat` [m] is None where there is none to speak of. `lines` is the working:
    (key, parameters). A size that cannot be is refused with OutOfRange, under the name of its field.
    """

    def __init__(self, joint: str, sizes: dict[str, float], unit: str) -> None:
        self.joint = joint
        self.sizes = sizes
        self.unit = unit
        self.area = 0.0
        self.depth = 0.0
        self.width = 0.0  # of the face or the cap
        self.throat: float | None = None
        self.lines: list[tuple[str, dict[str, Any]]] = []
        self.legs = (0.0, 0.0)
        self.angle = RIGHT_ANGLE
        self.slant = 0.0  # of one bevelled edge from square, [rad]
        self.gap = self.size("root_gap")
        self.bulge = self.size("convexity") - self.size("concavity")
        if joint in FILLETS:
            self._fillet()
        elif joint in HOLES:
            self._hole()
        elif joint == "edge":
            self._edge()
        else:
            self._groove()

    def size(self, name: str) -> float:
        """Return a size, 0 if it was not given."""
        return self.sizes.get(name) or 0.0

    def is_line(self) -> bool:
        """Return whether it has a length; a plug or a slot has a number instead."""
        return self.joint not in HOLES

    def levels(self) -> int:
        """Return from how many sides it is welded."""
        return 2 if self.joint in _TWO_SIDED else 1

    def slopes(self) -> int:
        """Return how many of the two plates are bevelled."""
        if self.joint in _TWO_SLOPES:
            return 2
        return 1 if self.joint in BEVELLED else 0

    def shown(self, size: float) -> Measured:
        """Return a size in the unit the joint was described in."""
        return Measured(size, "joint_size", None, self.unit)

    def shown_area(self, area: float) -> Measured:
        """Return an area in the square of that unit."""
        return Measured(area, "bead_area", None, self.unit + "2")

    def shown_angle(self, angle: float) -> Measured:
        """Return an angle in degrees."""
        return Measured(angle, "joint_angle", None, "deg")

    def _line(self, key: str, **parameters: "Any") -> None:
        self.lines.append((key, parameters))

    # ------------------------------------------------------------ fillets

    def _fillet(self) -> None:
        if self.joint == "corner":
            first = second = self.size("thickness")
        else:
            first = self.size("leg")
            second = self.size("second_leg") or first
        if self.joint == "fillet":
            self.angle = self.size("joint_angle") or RIGHT_ANGLE
        fillet_geometry.fillet_face(first, second, self.angle)  # refuses legs that make no fillet
        ranges.require("root_gap", self.gap, 0.0, min(first, 0.005), "m")
        along = fillet_geometry.gap_along_plate(self.gap, self.angle)
        # The second leg of a corner ends where its plate does.
        self.legs = (first + along, second if self.joint == "corner" else second + along)
        if self.gap:
            key = "gap-corner" if self.joint == "corner" else "gap-legs"
            first_leg, second_leg = self.legs
            self._line(key, along=self.shown(along), leg=self.shown(first_leg), second=self.shown(second_leg))
        self._triangle()
        self._face()
        self._throat(along)

    def _triangle(self) -> None:
        first, second = self.legs
        self.area = fillet_geometry.fillet_area(first, second, self.angle)
        self.width = fillet_geometry.fillet_face(first, second, self.angle)
        self._line(
            "triangle" if self.angle == RIGHT_ANGLE else "triangle-skewed",
            leg=self.shown(first),
            second=self.shown(second),
            angle=self.shown_angle(self.angle),
            area=self.shown_area(self.area),
        )

    def _face(self) -> None:
        first, second = self.legs
        if self.bulge == 0.0:
            return
        if self.bulge > 0.0:
            ranges.require("convexity", self.bulge, 0.0, fillet_geometry.most_convexity(first, second, self.angle), "m")
        else:
            ranges.require(
                "concavity", -self.bulge, 0.0, fillet_geometry.most_concavity(first, second, self.angle), "m"
            )
        extra = groove_geometry.cap_area(self.width, abs(self.bulge))
        self.area += extra if self.bulge > 0.0 else -extra
        self._line(
            "bulge" if self.bulge > 0.0 else "hollow",
            width=self.shown(self.width),
            height=self.shown(abs(self.bulge)),
            extra=self.shown_area(extra),
            area=self.shown_area(self.area),
        )

    def _throat(self, along: float) -> None:
        first, second = self.legs
        hollow = max(-self.bulge, 0.0)
        self.throat = fillet_geometry.fillet_throat(first, second, self.angle, self.gap, hollow)
        key = "throat" if self.angle == RIGHT_ANGLE else "throat-skewed"
        self._line(
            key + "-hollow" if hollow else key,
            leg=self.shown(first - along),
            second=self.shown(second),
            angle=self.shown_angle(self.angle),
            width=self.shown(self.width),
            hollow=self.shown(hollow),
            throat=self.shown(self.throat),
        )

    # ------------------------------------------------------------ grooves and edges

    def _groove(self) -> None:
        thickness = self.size("thickness")
        self.area = groove_geometry.gap_area(self.gap, thickness)
        self.width = self.gap
        if self.gap:
            self._line(
                "gap", gap=self.shown(self.gap), thickness=self.shown(thickness), area=self.shown_area(self.area)
            )
        if self.joint in BEVELLED:
            self._bevels(thickness)
        else:
            self.width = self.size("bead_width") or self.gap
            ranges.require("bead_width", self.width, self.gap, 0.05, "m")
        self._cap()

    def _bevels(self, thickness: float) -> None:
        face = self.size("root_face")
        ranges.require("root_face", face, 0.0, thickness * (1.0 - _LEAST_BEVEL), "m")
        included = self.size("included_angle")
        for joints, narrowest, widest in _ANGLES:
            if self.joint in joints:
                ranges.require("included_angle", included, narrowest, widest, "rad")
        self.slant = included / self.slopes()
        self.depth = (thickness - face) / self.levels()
        count = self.slopes() * self.levels()
        if self.joint in CURVED:
            radius = self.size("root_radius")
            ranges.require("root_radius", radius, 0.0, self.depth / (1.0 - math.sin(self.slant)), "m")
            one = groove_geometry.curved_side_area(self.depth, radius, self.slant)
            self.width += self.slopes() * groove_geometry.curved_side_width(self.depth, radius, self.slant)
        else:
            one = groove_geometry.bevel_area(self.depth, self.slant)
            self.width += self.slopes() * groove_geometry.bevel_width(self.depth, self.slant)
        self.area += count * one
        self._line(
            "curve" if self.joint in CURVED else "bevel",
            count=count,
            depth=self.shown(self.depth),
            slant=self.shown_angle(self.slant),
            radius=self.shown(self.size("root_radius")),
            area=self.shown_area(count * one),
        )

    def _cap(self) -> None:
        height = self.size("reinforcement")
        if height:
            ranges.require("reinforcement", height, 0.0, self.width * _STEEPEST_CAP, "m")
            cap = self.levels() * groove_geometry.cap_area(self.width, height)
            self.area += cap
            self._line(
                "cap",
                count=self.levels(),
                width=self.shown(self.width),
                height=self.shown(height),
                area=self.shown_area(cap),
            )
        if len(self.lines) > 1:
            self._line("total", area=self.shown_area(self.area))

    def _edge(self) -> None:
        self.width = 2.0 * self.size("thickness")
        self._cap()

    # ------------------------------------------------------------ plugs and slots

    def _hole(self) -> None:
        thickness = self.size("thickness")
        self.depth = self.size("fill_depth") or thickness
        ranges.require("fill_depth", self.depth, 0.0, thickness, "m")
        if self.joint == "plug":
            self.width = self.size("hole_diameter")
            self.area = groove_geometry.plug_area(self.width)
            self._line("hole", diameter=self.shown(self.width), area=self.shown_area(self.area))
            return
        self.width = self.size("slot_width")
        length = self.size("slot_length")
        self.area = groove_geometry.slot_area(self.width, length)
        self._line("slot", width=self.shown(self.width), length=self.shown(length), area=self.shown_area(self.area))
