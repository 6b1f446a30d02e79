"""Areas of cross-sections of plate, bar, pipe, tube, angle and channel, and where an angle or channel balances."""

import math

from calculators import ranges

_QUARTER_PI = math.pi / 4.0
_HEXAGON = math.sqrt(3.0) / 2.0


def rectangle_area(width: float, thickness: float) -> float:
    """Return the cross-section of plate, flat bar or square bar.

    A = width * thickness

    Parameters
    ----------
    width : float
        One side, [m]; 0.0001 to 20.
    thickness : float
        The other side, [m]; 0.0001 to 20.

    Returns
    -------
    float
        Area, [m2].

    Raises
    ------
    ranges.OutOfRange
        If a side is outside its range.

    Notes
    -----
    Sharp edges. A rolled edge or a corner rounded with radius r takes 0.215 r^2 off each corner.

    Source
    ------
    Geometry: law.

    Examples
    --------
    >>> round(rectangle_area(width=0.1, thickness=0.01), 6)
    0.001
    """
    ranges.require("width", width, 0.0001, 20.0, "m")
    ranges.require("thickness", thickness, 0.0001, 20.0, "m")
    return width * thickness


def round_area(diameter: float) -> float:
    """Return the cross-section of round bar.

    A = pi / 4 * diameter^2

    Parameters
    ----------
    diameter : float
        Diameter, [m]; 0.0005 to 3.

    Returns
    -------
    float
        Area, [m2].

    Raises
    ------
    ranges.OutOfRange
        If the diameter is outside its range.

    Source
    ------
    Geometry: law.

    Examples
    --------
    >>> round(round_area(diameter=0.02) * 1e6, 2)
    314.16
    """
    ranges.require("diameter", diameter, 0.0005, 3.0, "m")
    return _QUARTER_PI * diameter * diameter


def hexagon_area(across_flats: float) -> float:
    """Return the cross-section of hexagon bar.

    A = sqrt(3) / 2 * across_flats^2

    Parameters
    ----------
    across_flats : float
        From one flat to the opposite one, as a wrench takes it, [m]; 0.0005 to 3.

    Returns
    -------
    float
        Area, [m2].

    Raises
    ------
    ranges.OutOfRange
        If the size is outside its range.

    Notes
    -----
    Not across the corners, which is 1.155 times as much and would give a third more area.

    Source
    ------
    Geometry: law.

    Examples
    --------
    >>> round(hexagon_area(across_flats=0.02) * 1e6, 2)
    346.41
    """
    ranges.require("across_flats", across_flats, 0.0005, 3.0, "m")
    return _HEXAGON * across_flats * across_flats


def tube_area(diameter: float, wall: float) -> float:
    """Return the cross-section of pipe or round tube.

    A = pi * (diameter - wall) * wall

    Parameters
    ----------
    diameter : float
        Outside diameter, [m]; 0.0005 to 3.
    wall : float
        Wall thickness, [m]; above 0 to half the diameter.

    Returns
    -------
    float
        Area, [m2].

    Raises
    ------
    ranges.OutOfRange
        If the diameter is outside its range, or the wall is thicker than half of it.

    Notes
    -----
    The outside diameter: of pipe that is more than the nominal size up to NPS 12.

    Source
    ------
    Geometry: law. ASME B36.10M makes its weights the same way.

    Examples
    --------
    >>> round(tube_area(diameter=0.1143, wall=0.00602) * 1e6, 1)
    2047.8
    """
    ranges.require("diameter", diameter, 0.0005, 3.0, "m")
    ranges.require("wall", wall, 0.0, None, "m")
    ranges.require("wall_to_diameter", wall / diameter, None, 0.5, "")
    return math.pi * (diameter - wall) * wall


def sharp_tube_area(width: float, height: float, wall: float) -> float:
    """Return the cross-section of a rectangular tube with sharp corners, such as an extruded one.

    A = 2 * wall * (width + height - 2 * wall)

    Parameters
    ----------
    width : float
        Outside width, [m]; 0.001 to 20.
    height : float
        Outside height, [m]; 0.001 to 20.
    wall : float
        Wall thickness, [m]; above 0 to half of the smaller side.

    Returns
    -------
    float
        Area, [m2].

    Raises
    ------
    ranges.OutOfRange
        If a side is outside its range, or the wall is thicker than half a side.

    Source
    ------
    Geometry: law.

    Examples
    --------
    >>> round(sharp_tube_area(width=0.05, height=0.05, wall=0.003) * 1e6, 1)
    564.0
    """
    ranges.require("width", width, 0.001, 20.0, "m")
    ranges.require("height", height, 0.001, 20.0, "m")
    ranges.require("wall", wall, 0.0, None, "m")
    ranges.require("wall_to_width", wall / width, None, 0.5, "")
    ranges.require("wall_to_height", wall / height, None, 0.5, "")
    return 2.0 * wall * (width + height - 2.0 * wall)


def rounded_tube_area(width: float, height: float, wall: float, corner_radius: float) -> float:
    """Return the cross-section of a rectangular tube with round corners, such as a cold-formed one.

    A = 2 * wall * (width + height - 2 * wall) - (4 - pi) * (R^2 - (R - wall)^2)

    Parameters
    ----------
    width : float
        Outside width, [m]; 0.001 to 20.
    height : float
        Outside height, [m]; 0.001 to 20.
    wall : float
        Wall thickness, [m]; above 0 to half of the smaller side.
    corner_radius : float
        Outside radius R of the corners, [m]; as thick as the wall to half of the smaller side.

    Returns
    -------
    float
        Area, [m2].

    Raises
    ------
    ranges.OutOfRange
        If a side is outside its range, or the wall or the radius does not fit into it.

    Notes
    -----
    The wall is as thick in the corner as beside it, so the inside radius is R - wall.

    Source
    ------
    Geometry: law. EN 10219-2 gives the same form; with R of twice the wall (its value up to 6 mm of wall, and what
    AISC takes) it gives the areas of their tables.

    Examples
    --------
    >>> round(rounded_tube_area(width=0.05, height=0.05, wall=0.003, corner_radius=0.006) * 1e6, 1)
    540.8
    """
    sharp = sharp_tube_area(width, height, wall)
    ranges.require("corner_radius", corner_radius, 1e-9, None, "m")
    ranges.require("wall_to_corner_radius", wall / corner_radius, None, 1.0, "")
    ranges.require("corner_radius_to_width", corner_radius / width, None, 0.5, "")
    ranges.require("corner_radius_to_height", corner_radius / height, None, 0.5, "")
    inside = corner_radius - wall
    return sharp - (4.0 - math.pi) * (corner_radius * corner_radius - inside * inside)


def angle_area(first_leg: float, second_leg: float, thickness: float) -> float:
    """Return the cross-section of an angle, its root fillet and rounded toes left out.

    A = thickness * (first_leg + second_leg - thickness)

    Parameters
    ----------
    first_leg : float
        Outside length of one leg, [m]; 0.001 to 20.
    second_leg : float
        Outside length of the other leg, [m]; 0.001 to 20.
    thickness : float
        Thickness of both legs, [m]; above 0 to as much as the shorter leg.

    Returns
    -------
    float
        Area, [m2].

    Raises
    ------
    ranges.OutOfRange
        If a leg is outside its range, or the thickness is more than a leg.

    Notes
    -----
    The fillet adds up to about 2 % to a rolled angle; the toes take a little off.

    Source
    ------
    Geometry: law. ASTM A6 and AISC tables lie within 2 % of it.

    Examples
    --------
    >>> round(angle_area(first_leg=0.1016, second_leg=0.1016, thickness=0.0127) / 0.0254**2, 3)
    3.75
    """
    ranges.require("first_leg", first_leg, 0.001, 20.0, "m")
    ranges.require("second_leg", second_leg, 0.001, 20.0, "m")
    ranges.require("thickness", thickness, 0.0, None, "m")
    ranges.require("thickness_to_first_leg", thickness / first_leg, None, 1.0, "")
    ranges.require("thickness_to_second_leg", thickness / second_leg, None, 1.0, "")
    return thickness * (first_leg + second_leg - thickness)


def angle_balance(leg_along: float, leg_across: float, thickness: float) -> float:
    """Return how far from the back of one leg of an angle its centre of gravity lies.

    x = (leg_along * t * t / 2 + (leg_across - t) * t * (leg_across + t) / 2) / A

    Parameters
    ----------
    leg_along : float
        The leg whose back is measured from, [m]; 0.001 to 20.
    leg_across : float
        The other leg, which stands off that back, [m]; 0.001 to 20.
    thickness : float
        Thickness of both legs, [m]; above 0 to as much as the shorter leg.

    Returns
    -------
    float
        Distance from the back, [m].

    Raises
    ------
    ranges.OutOfRange
        As `angle_area`.

    Notes
    -----
    Root fillet and toes left out, which moves it by up to 3 %.

    Source
    ------
    Geometry: law. AISC tables of x and y of angles agree.

    Examples
    --------
    >>> round(angle_balance(leg_along=0.1016, leg_across=0.1016, thickness=0.0127) / 0.0254, 3)
    1.183
    """
    ranges.require("leg_along", leg_along, 0.001, 20.0, "m")
    ranges.require("leg_across", leg_across, 0.001, 20.0, "m")
    area = angle_area(leg_along, leg_across, thickness)
    along = leg_along * thickness * thickness / 2.0
    across = (leg_across - thickness) * thickness * (leg_across + thickness) / 2.0
    return (along + across) / area


def channel_area(depth: float, flange_width: float, web_thickness: float, flange_thickness: float) -> float:
    """Return the cross-section of a channel with parallel flanges, its root fillets left out.

    A = 2 * flange_width * flange_thickness + (depth - 2 * flange_thickness) * web_thickness

    Parameters
    ----------
    depth : float
        Over both flanges, [m]; 0.001 to 20.
    flange_width : float
        From the back of the web to the flange tips, [m]; 0.001 to 20.
    web_thickness : float
        Thickness of the web, [m]; above 0 to as much as the flange is wide.
    flange_thickness : float
        Thickness of a flange, of a tapered one at the middle of its width, [m]; above 0 to half the depth.

    Returns
    -------
    float
        Area, [m2].

    Raises
    ------
    ranges.OutOfRange
        If a size is outside its range or does not fit into another.

    Notes
    -----
    The fillets add 1 to 3 % to a rolled channel.

    Source
    ------
    Geometry: law. AISC and BS tables lie within 3 % of it.

    Examples
    --------
    >>> inch = 0.0254
    >>> round(channel_area(6 * inch, 1.92 * inch, 0.2 * inch, 0.343 * inch) / inch**2, 2)
    2.38
    """
    ranges.require("depth", depth, 0.001, 20.0, "m")
    ranges.require("flange_width", flange_width, 0.001, 20.0, "m")
    ranges.require("web_thickness", web_thickness, 0.0, None, "m")
    ranges.require("flange_thickness", flange_thickness, 0.0, None, "m")
    ranges.require("web_to_flange_width", web_thickness / flange_width, None, 1.0, "")
    ranges.require("flange_to_depth", flange_thickness / depth, None, 0.5, "")
    return 2.0 * flange_width * flange_thickness + (depth - 2.0 * flange_thickness) * web_thickness


def channel_balance(depth: float, flange_width: float, web_thickness: float, flange_thickness: float) -> float:
    """Return how far from the back of its web the centre of gravity of a channel lies.

    x = (flange_width^2 * flange_thickness + (depth - 2 * flange_thickness) * web_thickness^2 / 2) / A

    Parameters
    ----------
    depth : float
        Over both flanges, [m]; 0.001 to 20.
    flange_width : float
        From the back of the web to the flange tips, [m]; 0.001 to 20.
    web_thickness : float
        Thickness of the web, [m]; above 0 to as much as the flange is wide.
    flange_thickness : float
        Thickness of a flange, of a tapered one at the middle of its width, [m]; above 0 to half the depth.

    Returns
    -------
    float
        Distance from the back of the web, [m].

    Raises
    ------
    ranges.OutOfRange
        As `channel_area`.

    Notes
    -----
    Parallel flanges. A tapered one is thicker near the web, which brings the point up to 15 % nearer to it.

    Source
    ------
    Geometry: law.

    Examples
    --------
    >>> round(channel_balance(0.1, 0.05, 0.005, 0.0085) * 1000, 1)
    17.6
    """
    area = channel_area(depth, flange_width, web_thickness, flange_thickness)
    flanges = flange_width * flange_width * flange_thickness
    web = (depth - 2.0 * flange_thickness) * web_thickness * web_thickness / 2.0
    return (flanges + web) / area
