"""One pass by mass balance: the wire fed in is the bead laid down, and so is the travel speed."""

import math

from calculators import ranges

_QUARTER_PI = math.pi / 4.0


def bead_area(leg: float, overweld_factor: float) -> float:
    """Return the cross-section of one real fillet bead of that leg.

    bead_area = overweld_factor * leg^2 / 2

    Parameters
    ----------
    leg : float
        Leg of an equal fillet between plates at a right angle, [m]; 0.0005 to 0.1.
    overweld_factor : float
        Metal laid down over metal on the drawing, [-]; 0.5 to 3.

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
    Leg, not throat.

    Source
    ------
    TWI Job Knowledge 95 (July 2008), half the square of the leg; published, seen.

    Examples
    --------
    >>> round(bead_area(0.006, 1.0) * 1e6, 6)
    18.0
    """
    ranges.require("leg", leg, 0.0005, 0.1, "m")
    ranges.require("overweld_factor", overweld_factor, 0.5, 3.0, "")
    return 0.5 * overweld_factor * leg * leg


def solve_bead(unknown: str, values: dict[str, float]) -> float:
    """Return the unknown one of leg [m], overweld_factor [-] and bead_area [m2].

    bead_area = overweld_factor * leg^2 / 2, turned round.

    Parameters
    ----------
    unknown : str
        Name of the blank.
    values : dict
        The other two by name, in the units and ranges of `bead_area`.

    Returns
    -------
    float
        The unknown, in coherent SI.

    Raises
    ------
    ranges.OutOfRange
        If the area is asked for and an input is outside its range.

    Source
    ------
    As `bead_area`; the turned forms are algebra.

    Examples
    --------
    >>> round(solve_bead("leg", {"overweld_factor": 1.0, "bead_area": 18.0e-6}), 6)
    0.006
    """
    if unknown == "bead_area":
        return bead_area(values["leg"], values["overweld_factor"])
    if unknown == "leg":
        return (2.0 * values["bead_area"] / values["overweld_factor"]) ** 0.5
    return 2.0 * values["bead_area"] / (values["leg"] * values["leg"])


def travel_speed(wire_feed_speed: float, wire_diameter: float, deposition_efficiency: float, bead_area: float) -> float:
    """Return the travel speed at which the wire fed fills the bead: metal in is metal out.

    travel_speed = wire_feed_speed * pi / 4 * wire_diameter^2 * deposition_efficiency / bead_area

    Parameters
    ----------
    wire_feed_speed : float
        Wire feed speed, [m/s]; 0.005 to 1.
    wire_diameter : float
        Wire diameter, [m]; 0.0003 to 0.006.
    deposition_efficiency : float
        Share of the wire that becomes weld metal, [-]; 0.3 to 1.
    bead_area : float
        Cross-section of what one pass adds, [m2]; 1e-8 to 0.01.

    Returns
    -------
    float
        Travel speed, [m/s].

    Raises
    ------
    ranges.OutOfRange
        If an input is outside its range.

    Notes
    -----
    Solid wire: the density cancels. The bead is what stands out over the plates, not the fused zone. The balance
    says nothing about fusion: a bead can have the right size and be cold lapped.

    Source
    ------
    Conservation of mass: law. Welding Design (November 2009) works an example; published, seen.

    Examples
    --------
    >>> round(travel_speed(0.1, 1.0e-3, 1.0, 7.853981633974483e-6), 6)
    0.01
    """
    ranges.require("wire_feed_speed", wire_feed_speed, 0.005, 1.0, "m/s")
    ranges.require("wire_diameter", wire_diameter, 0.0003, 0.006, "m")
    ranges.require("deposition_efficiency", deposition_efficiency, 0.3, 1.0, "")
    ranges.require("bead_area", bead_area, 1e-8, 0.01, "m2")
    return wire_feed_speed * _QUARTER_PI * wire_diameter * wire_diameter * deposition_efficiency / bead_area


def solve_travel_speed(unknown: str, values: dict[str, float]) -> float:
    """Return the unknown one of wire_feed_speed, wire_diameter, deposition_efficiency, bead_area, travel_speed.

    wire_feed_speed * pi / 4 * wire_diameter^2 * deposition_efficiency = travel_speed * bead_area

    Parameters
    ----------
    unknown : str
        Name of the blank.
    values : dict
        The other four by name, in the units and ranges of `travel_speed`; travel_speed [m/s] above 0.

    Returns
    -------
    float
        The unknown, in coherent SI.

    Raises
    ------
    ranges.OutOfRange
        If the travel speed is asked for and an input is outside its range.

    Source
    ------
    As `travel_speed`; the turned forms are algebra.

    Examples
    --------
    >>> round(solve_travel_speed("bead_area", {"wire_feed_speed": 0.1, "wire_diameter": 0.001,
    ...     "deposition_efficiency": 1.0, "travel_speed": 0.01}) * 1e6, 4)
    7.854
    """
    if unknown == "travel_speed":
        return travel_speed(
            values["wire_feed_speed"], values["wire_diameter"], values["deposition_efficiency"], values["bead_area"]
        )
    if unknown == "wire_diameter":
        fed = _QUARTER_PI * values["wire_feed_speed"] * values["deposition_efficiency"]
        return (values["travel_speed"] * values["bead_area"] / fed) ** 0.5
    across = _QUARTER_PI * values["wire_diameter"] * values["wire_diameter"]
    if unknown == "bead_area":
        return values["wire_feed_speed"] * across * values["deposition_efficiency"] / values["travel_speed"]
    laid = values["travel_speed"] * values["bead_area"] / across
    if unknown == "wire_feed_speed":
        return laid / values["deposition_efficiency"]
    return laid / values["wire_feed_speed"]
