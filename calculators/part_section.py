"""The cross-section that was asked about: its size, area, outline, and where it balances."""

import math

from calculators import numerals, pipe_sizes, sections
from calculators.contract import Measured, Message, Refusal, say

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    Loop = list[tuple[float, float]]

# The sizes that each shape is asked for, besides the schedule of a pipe.
SIZES_OF = (
    ("plate", ("part_width", "thickness")),
    ("flat-bar", ("part_width", "thickness")),
    ("round-bar", ("diameter",)),
    ("square-bar", ("side",)),
    ("hex-bar", ("across_flats",)),
    ("pipe", ()),
    ("round-tube", ("diameter", "wall")),
    ("rectangular-tube", ("part_width", "part_height", "wall")),
    ("sharp-tube", ("part_width", "part_height", "wall")),
    ("angle", ("first_leg", "second_leg", "thickness")),
    ("channel", ("depth", "flange_width", "web_thickness", "flange_thickness")),
)
SHAPES = tuple(shape for shape, _ in SIZES_OF)
# What one size may be at most: (shape, the size, as a share of which other, the share).
_FITS = (
    ("round-tube", "wall", "diameter", 0.5),
    ("rectangular-tube", "wall", "part_width", 0.5),
    ("rectangular-tube", "wall", "part_height", 0.5),
    ("sharp-tube", "wall", "part_width", 0.5),
    ("sharp-tube", "wall", "part_height", 0.5),
    ("angle", "thickness", "first_leg", 1.0),
    ("angle", "thickness", "second_leg", 1.0),
    ("channel", "web_thickness", "flange_width", 1.0),
    ("channel", "flange_thickness", "depth", 0.5),
)
# The sizes whose units the width and the height as drawn are shown in.
_DRAWN_AS = (
    ("plate", ("part_width", "thickness")),
    ("flat-bar", ("part_width", "thickness")),
    ("round-bar", ("diameter", "diameter")),
    ("square-bar", ("side", "side")),
    ("hex-bar", ("across_flats", "across_flats")),
    ("pipe", ("diameter", "diameter")),
    ("round-tube", ("diameter", "diameter")),
    ("rectangular-tube", ("part_width", "part_height")),
    ("sharp-tube", ("part_width", "part_height")),
    ("angle", ("second_leg", "first_leg")),
    ("channel", ("flange_width", "depth")),
)
_ARC_POINTS = 12  # of a quarter circle


class Section:
    """A cross-section, made from the values of the fields, [coherent SI]; refuses sizes that do not fit together."""

    def __init__(self, values: "dict[str, Any]") -> None:
        self.shape: str = values["shape"]
        self.sizes: dict[str, float] = {name: values[name] for name in dict(SIZES_OF)[self.shape]}
        self.rounded = self.shape == "rectangular-tube"
        self.radius_assumed = self.rounded and values.get("corner_radius") is None
        if self.shape == "pipe":
            self._look_up(values["pipe_size"], values["pipe_schedule"])
        self._refuse_misfits()
        if self.rounded:
            self._round(values.get("corner_radius"))
        self.area = self._area()

    def _look_up(self, pipe_size: str, pipe_schedule: str) -> None:
        wall = pipe_sizes.pipe_wall(pipe_size, pipe_schedule)
        if wall is None:
            size = say("part-weight.option.pipe_size." + pipe_size)
            schedule = say("part-weight.option.pipe_schedule." + pipe_schedule)
            raise Refusal("pipe_schedule", say("part-weight.refusal.no-such-pipe", size=size, schedule=schedule))
        self.sizes = {"diameter": pipe_sizes.pipe_outside_diameter(pipe_size), "wall": wall}

    def _refuse_misfits(self) -> None:
        for shape, small, large, share in _FITS:
            if shape == self.shape and _above(self.sizes[small], self.sizes[large] * share):
                id = "part-weight.refusal." + ("half" if share == 0.5 else "whole")
                names = {"small": say("part-weight.field." + small), "large": say("part-weight.field." + large)}
                raise Refusal(small, say(id, **names))

    def _round(self, corner_radius: float | None) -> None:
        half = min(self.sizes["part_width"], self.sizes["part_height"]) / 2.0
        wall = self.sizes["wall"]
        radius = min(2.0 * wall, half) if corner_radius is None else corner_radius
        if _above(radius, half):
            raise Refusal("corner_radius", say("part-weight.refusal.radius-wide"))
        if _above(wall, radius):
            raise Refusal("corner_radius", say("part-weight.refusal.radius-small"))
        self.sizes["corner_radius"] = radius

    def _area(self) -> float:
        of = self.sizes
        if self.shape in ("plate", "flat-bar"):
            return sections.rectangle_area(of["part_width"], of["thickness"])
        if self.shape == "round-bar":
            return sections.round_area(of["diameter"])
        if self.shape == "square-bar":
            return sections.rectangle_area(of["side"], of["side"])
        if self.shape == "hex-bar":
            return sections.hexagon_area(of["across_flats"])
        if self.shape in ("pipe", "round-tube"):
            return sections.tube_area(of["diameter"], of["wall"])
        if self.shape == "angle":
            return sections.angle_area(of["first_leg"], of["second_leg"], of["thickness"])
        if self.shape == "channel":
            return sections.channel_area(of["depth"], of["flange_width"], of["web_thickness"], of["flange_thickness"])
        if self.rounded:
            return sections.rounded_tube_area(of["part_width"], of["part_height"], of["wall"], of["corner_radius"])
        return sections.sharp_tube_area(of["part_width"], of["part_height"], of["wall"])

    def balance(self) -> tuple[float, float] | None:
        """Return how far right of and above the lower left corner an angle or channel balances, [m]; else None."""
        of = self.sizes
        if self.shape == "angle":
            right = sections.angle_balance(of["first_leg"], of["second_leg"], of["thickness"])
            return right, sections.angle_balance(of["second_leg"], of["first_leg"], of["thickness"])
        if self.shape == "channel":
            right = sections.channel_balance(
                of["depth"], of["flange_width"], of["web_thickness"], of["flange_thickness"]
            )
            return right, of["depth"] / 2.0
        return None

    def extent(self) -> tuple[float, float]:
        """Return the width and height of the section as drawn, [m]."""
        of = self.sizes
        if self.shape in ("plate", "flat-bar"):
            return of["part_width"], of["thickness"]
        if self.shape in ("round-bar", "pipe", "round-tube"):
            return of["diameter"], of["diameter"]
        if self.shape == "square-bar":
            return of["side"], of["side"]
        if self.shape == "hex-bar":
            return of["across_flats"] * 2.0 / math.sqrt(3.0), of["across_flats"]
        if self.shape == "angle":
            return of["second_leg"], of["first_leg"]
        if self.shape == "channel":
            return of["flange_width"], of["depth"]
        return of["part_width"], of["part_height"]

    def outlines(self) -> "list[Loop]":
        """Return the outline, and of a hollow section the hole, as points right of and above the lower left, [m]."""
        of = self.sizes
        width, height = self.extent()
        if self.shape == "round-bar":
            return [_rounded(0.0, width, height, width / 2.0)]
        if self.shape in ("pipe", "round-tube"):
            wall = of["wall"]
            return [
                _rounded(0.0, width, height, width / 2.0),
                _rounded(wall, width, height, width / 2.0 - wall),
            ]
        if self.shape in ("rectangular-tube", "sharp-tube"):
            wall, radius = of["wall"], of.get("corner_radius", 0.0)
            return [_rounded(0.0, width, height, radius), _rounded(wall, width, height, max(radius - wall, 0.0))]
        if self.shape == "hex-bar":
            q = width / 4.0
            middle = height / 2.0
            return [[(0.0, middle), (q, 0.0), (3.0 * q, 0.0), (width, middle), (3.0 * q, height), (q, height)]]
        if self.shape == "angle":
            t = of["thickness"]
            return [[(0.0, 0.0), (width, 0.0), (width, t), (t, t), (t, height), (0.0, height)]]
        if self.shape == "channel":
            web, flange = of["web_thickness"], of["flange_thickness"]
            upper = height - flange
            inner = [(width, flange), (web, flange), (web, upper), (width, upper)]
            return [[(0.0, 0.0), (width, 0.0)] + inner + [(width, height), (0.0, height)]]
        return [_rounded(0.0, width, height, 0.0)]

    def shown(self, name: str, units: dict[str, str]) -> Measured:
        """Return one size as it is shown: in the unit typed, else in the reader's."""
        quantity = "part_width" if name in ("part_width", "part_height") else "part_size"
        return Measured(self.sizes[name], quantity, 4, units.get(name))

    def parameters(self, units: dict[str, str]) -> dict[str, object]:
        """Return all sizes for a sentence, by name."""
        return {name: self.shown(name, units) for name in sorted(self.sizes)}

    def across(self, units: dict[str, str]) -> Measured:
        """Return the width as drawn, in the unit its size was typed in."""
        return self._measure(0, units)

    def up(self, units: dict[str, str]) -> Measured:
        """Return the height as drawn, in the unit its size was typed in."""
        return self._measure(1, units)

    def _measure(self, side: int, units: dict[str, str]) -> Measured:
        name = dict(_DRAWN_AS)[self.shape][side]
        return Measured(self.extent()[side], "part_width", 4, units.get(name))

    def name(self) -> Message:
        """Return what the shape is called."""
        return say("part-weight.option.shape." + self.shape)


def _above(value: float, limit: float) -> bool:
    return numerals.settle(value) > numerals.settle(limit)


def _rounded(inset: float, width: float, height: float, radius: float) -> "Loop":
    """Return a rectangle with round corners, that far inside the whole; a full radius makes it a circle."""
    left, right = inset + radius, width - inset - radius
    low, high = inset + radius, height - inset - radius
    if radius <= 0.0:
        return [(left, low), (right, low), (right, high), (left, high)]
    points = []
    for x, y, start in ((right, low, -90.0), (right, high, 0.0), (left, high, 90.0), (left, low, 180.0)):
        for step in range(_ARC_POINTS + 1):
            angle = math.radians(start + 90.0 * step / _ARC_POINTS)
            points.append((x + radius * math.cos(angle), y + radius * math.sin(angle)))
    return points
