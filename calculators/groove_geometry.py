"""The cross-section of butt, edge, plug and slot welds: gap, bevelled or curved sides, cap."""

import math

from calculators import ranges

_QUARTER_PI = math.pi / 4.0


def gap_area(root_gap: float, thickness: float) -> float:
    """Return the area of the gap between two plates, from top to bottom: all of a square butt.

    gap_area = root_gap * thickness

    Parameters
    ----------
    root_gap : float
        Opening at the root, [m]; 0 to 0.025.
    thickness : float
        Plate thickness, [m]; 0.0001 to 0.3.

    Returns
    -------
    float
        Area, [m2].

    Raises
    ------
    ranges.OutOfRange
        If an input is outside its range.

    Notes
    -----
    Without a gap and a cap a square butt takes no filler: it is fused from its own edges.

    Source
    ------
    TWI Job Knowledge 95 (July 2008), the gap as one of the four areas of a butt weld; published, seen.

    Examples
    --------
    >>> round(gap_area(0.002, 0.006) * 1e6, 6)
    12.0
    """
    ranges.require("root_gap", root_gap, 0.0, 0.025, "m")
    ranges.require("thickness", thickness, 0.0001, 0.3, "m")
    return root_gap * thickness


def bevel_area(depth: float, bevel_angle: float) -> float:
    """Return the area opened by bevelling one edge of one plate.

    bevel_area = depth^2 * tan(bevel_angle) / 2

    Parameters
    ----------
    depth : float
        How deep the bevel goes: thickness less root face, [m]; 0.00001 to 0.3.
    bevel_angle : float
        Slant of that one edge from square, [rad]; 0 to 1.4.

    Returns
    -------
    float
        Area, [m2].

    Raises
    ------
    ranges.OutOfRange
        If an input is outside its range.

    Notes
    -----
    A single V is two of these at half its included angle; a single bevel is one, at all of it. Taking the included
    angle of a V for the bevel of each plate more than doubles the metal.

    Source
    ------
    TWI Job Knowledge 95 (July 2008): t (tan b t) / 2 for each plate; published, seen.

    Examples
    --------
    >>> round(bevel_area(0.009, 0.7853981633974483) * 1e6, 6)
    40.5
    """
    ranges.require("depth", depth, 0.00001, 0.3, "m")
    ranges.require("bevel_angle", bevel_angle, 0.0, 1.4, "rad")
    return 0.5 * depth * depth * math.tan(ranges.magnitude(bevel_angle, "rad"))


def bevel_width(depth: float, bevel_angle: float) -> float:
    """Return how far a bevelled edge leans back at the surface.

    bevel_width = depth * tan(bevel_angle)

    Parameters
    ----------
    depth : float
        How deep the bevel goes, [m]; 0.00001 to 0.3.
    bevel_angle : float
        Slant of that one edge from square, [rad]; 0 to 1.4.

    Returns
    -------
    float
        Width, [m].

    Raises
    ------
    ranges.OutOfRange
        If an input is outside its range.

    Notes
    -----
    The groove is this wide for each bevelled plate, and the root gap.

    Source
    ------
    TWI Job Knowledge 95 (July 2008), width of the cap: 2 (tan b t) + g; published, seen.

    Examples
    --------
    >>> round(bevel_width(0.010, 0.7853981633974483) * 1000, 6)
    10.0
    """
    ranges.require("depth", depth, 0.00001, 0.3, "m")
    ranges.require("bevel_angle", bevel_angle, 0.0, 1.4, "rad")
    return depth * math.tan(ranges.magnitude(bevel_angle, "rad"))


def curved_height(root_radius: float, bevel_angle: float) -> float:
    """Return how high the curve at the root of a J or U rises before its side runs straight.

    curved_height = root_radius * (1 - sin(bevel_angle))

    Parameters
    ----------
    root_radius : float
        Radius at the root, [m]; 0.001 to 0.05.
    bevel_angle : float
        Slant of the straight side from square, [rad]; 0 to 1.4.

    Returns
    -------
    float
        Height above the root face, [m].

    Raises
    ------
    ranges.OutOfRange
        If an input is outside its range.

    Notes
    -----
    The curve leaves the root face level and runs smoothly into the side.

    Source
    ------
    Geometry of a tangent arc: law.

    Examples
    --------
    >>> round(curved_height(0.006, 0.0) * 1000, 6)
    6.0
    """
    ranges.require("root_radius", root_radius, 0.001, 0.05, "m")
    ranges.require("bevel_angle", bevel_angle, 0.0, 1.4, "rad")
    return root_radius * (1.0 - math.sin(ranges.magnitude(bevel_angle, "rad")))


def curved_side_area(depth: float, root_radius: float, bevel_angle: float) -> float:
    """Return the area opened in one plate by a J: a curve at the root, then a straight slanted side.

    curved_side_area = r^2 * (p / 2 - sin(2 p) / 4) + r cos(b) h + h^2 tan(b) / 2, with p = pi / 2 - b and
    h = depth - r (1 - sin(b)), the height of the straight part

    Parameters
    ----------
    depth : float
        How deep the groove goes: thickness less root face, [m]; 0.0005 to 0.3.
    root_radius : float
        Radius r at the root, [m]; 0.001 to 0.05.
    bevel_angle : float
        Slant b of the straight side from square, [rad]; 0 to 1.4.

    Returns
    -------
    float
        Area, [m2].

    Raises
    ------
    ranges.OutOfRange
        If an input is outside its range or the plate ends before the curve does.

    Notes
    -----
    A J is one of these, a U is two. Square sides (b = 0) leave a quarter circle and a rectangle.

    Source
    ------
    Geometry of a tangent arc: law. The shape, root radius and side angle of a U: ISO 9692-1 and AWS A3.0, from memory.

    Examples
    --------
    >>> round(curved_side_area(0.006, 0.006, 0.0) * 1e6, 4) == round(3.141592653589793 * 9, 4)
    True
    """
    ranges.require("depth", depth, 0.0005, 0.3, "m")
    curved = curved_height(root_radius, bevel_angle)
    straight = depth - curved
    ranges.require("straight_side", straight, -1e-9, None, "m")
    slant = ranges.magnitude(bevel_angle, "rad")
    turn = math.pi / 2.0 - slant
    arc = root_radius * root_radius * (0.5 * turn - 0.25 * math.sin(2.0 * turn))
    return arc + root_radius * math.cos(slant) * straight + 0.5 * straight * straight * math.tan(slant)


def curved_side_width(depth: float, root_radius: float, bevel_angle: float) -> float:
    """Return how far the edge of a J leans back at the surface.

    curved_side_width = r cos(b) + (depth - r (1 - sin(b))) tan(b)

    Parameters
    ----------
    depth : float
        How deep the groove goes, [m]; 0.0005 to 0.3.
    root_radius : float
        Radius r at the root, [m]; 0.001 to 0.05.
    bevel_angle : float
        Slant b of the straight side from square, [rad]; 0 to 1.4.

    Returns
    -------
    float
        Width, [m].

    Raises
    ------
    ranges.OutOfRange
        If an input is outside its range or the plate ends before the curve does.

    Notes
    -----
    The groove is this wide for each curved plate, and the root gap.

    Source
    ------
    Geometry of a tangent arc: law.

    Examples
    --------
    >>> round(curved_side_width(0.020, 0.006, 0.0) * 1000, 6)
    6.0
    """
    ranges.require("depth", depth, 0.0005, 0.3, "m")
    straight = depth - curved_height(root_radius, bevel_angle)
    ranges.require("straight_side", straight, -1e-9, None, "m")
    slant = ranges.magnitude(bevel_angle, "rad")
    return root_radius * math.cos(slant) + straight * math.tan(slant)


def cap_area(width: float, height: float) -> float:
    """Return the area between a straight line and a parabola over it: a cap, a bulge, or a hollow.

    cap_area = 2 / 3 * width * height

    Parameters
    ----------
    width : float
        From edge to edge, [m]; 0 to 1.
    height : float
        Greatest height over the straight line, [m]; 0 to 0.05.

    Returns
    -------
    float
        Area, [m2].

    Raises
    ------
    ranges.OutOfRange
        If an input is outside its range.

    Notes
    -----
    An arc of a circle gives less than 1 % more while it is lower than a ninth of its width. Taken as a triangle,
    a cap comes out a quarter too small.

    Source
    ------
    Archimedes, Quadrature of the Parabola: law.

    Examples
    --------
    >>> round(cap_area(0.012, 0.0015) * 1e6, 6)
    12.0
    """
    ranges.require("width", width, 0.0, 1.0, "m")
    ranges.require("height", height, 0.0, 0.05, "m")
    return 2.0 / 3.0 * width * height


def plug_area(hole_diameter: float) -> float:
    """Return the area of a round hole, seen from above.

    plug_area = pi / 4 * hole_diameter^2

    Parameters
    ----------
    hole_diameter : float
        Diameter of the hole, [m]; 0.001 to 0.2.

    Returns
    -------
    float
        Area, [m2]; times the depth of fill it is the volume of the plug.

    Raises
    ------
    ranges.OutOfRange
        If the diameter is outside its range.

    Notes
    -----
    A hole with straight sides. A countersunk one takes more.

    Source
    ------
    Geometry: law.

    Examples
    --------
    >>> round(plug_area(0.020) * 1e6, 2)
    314.16
    """
    ranges.require("hole_diameter", hole_diameter, 0.001, 0.2, "m")
    return _QUARTER_PI * hole_diameter * hole_diameter


def slot_area(slot_width: float, slot_length: float) -> float:
    """Return the area of a slot with round ends, seen from above.

    slot_area = slot_width * (slot_length - slot_width) + pi / 4 * slot_width^2

    Parameters
    ----------
    slot_width : float
        Width of the slot, [m]; 0.001 to 0.2.
    slot_length : float
        Whole length of the slot, round ends included, [m]; from slot_width to 2.

    Returns
    -------
    float
        Area, [m2]; times the depth of fill it is the volume of the weld.

    Raises
    ------
    ranges.OutOfRange
        If an input is outside its range.

    Notes
    -----
    As long as it is wide, a slot is a round hole.

    Source
    ------
    Geometry: law.

    Examples
    --------
    >>> round(slot_area(0.020, 0.020) * 1e6, 2)
    314.16
    """
    ranges.require("slot_width", slot_width, 0.001, 0.2, "m")
    ranges.require("slot_length", slot_length, ranges.magnitude(slot_width, "m"), 2.0, "m")
    return slot_width * (slot_length - slot_width) + _QUARTER_PI * slot_width * slot_width
