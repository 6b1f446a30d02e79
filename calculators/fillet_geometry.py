"""The cross-section of a fillet: its triangle, its face, its throat, and what a gap under the plate adds."""

import math

from calculators import ranges

_RIGHT_ANGLE = math.pi / 2.0
# EN 1993-1-8:2005, 4.3.2.1: a fillet joins faces at 60 to 120 degrees; sharper is a partly fused groove. [rad]
SHARPEST = math.pi / 3.0
BLUNTEST = 2.0 * math.pi / 3.0
MOST_UNEQUAL = 3.0  # common sense: beyond it the weld is a bead on one plate
_TOUCHING = 1.0 - 1e-9


def _require_triangle(leg: float, second_leg: float, joint_angle: float) -> None:
    ranges.require("joint_angle", joint_angle, SHARPEST, BLUNTEST, "rad")
    ranges.require("leg", leg, 0.0005, 0.1, "m")
    size = ranges.magnitude(leg, "m")
    most = most_unequal(joint_angle)
    ranges.require("second_leg", second_leg, size / most, size * most, "m")


def most_unequal(joint_angle: float) -> float:
    """Return how many times the short leg the long one may be, so that the face leans over neither plate.

    most_unequal = 1 / cos(joint_angle) below 90 degrees, and never above 3

    Parameters
    ----------
    joint_angle : float
        Angle between the plates on the side of the weld, [rad]; from 60 to 120 degrees.

    Returns
    -------
    float
        Long leg over short leg, [-].

    Raises
    ------
    ranges.OutOfRange
        If the angle is outside its range.

    Notes
    -----
    With a sharp angle and a longer leg than this, the corner of the triangle at the short leg is wider than a
    right angle: the metal would hang over.

    Source
    ------
    Geometry: law. The limit of 3: common practice.

    Examples
    --------
    >>> round(most_unequal(1.0471975511965976), 6), round(most_unequal(1.5707963267948966), 6)
    (2.0, 3.0)
    """
    ranges.require("joint_angle", joint_angle, SHARPEST, BLUNTEST, "rad")
    slant = math.cos(ranges.magnitude(joint_angle, "rad"))
    return 1.0 / slant if slant * MOST_UNEQUAL > 1.0 else MOST_UNEQUAL


def gap_along_plate(root_gap: float, joint_angle: float = _RIGHT_ANGLE) -> float:
    """Return how much of a leg lies in front of an open gap, and so holds nothing.

    gap_along_plate = root_gap / sin(joint_angle)

    Parameters
    ----------
    root_gap : float
        Opening between the plates, square to the plate that is welded on to, [m]; 0 to 0.005.
    joint_angle : float
        Angle between the plates on the side of the weld, [rad]; from 60 to 120 degrees.

    Returns
    -------
    float
        What both legs have to grow by so that the throat stays, [m].

    Raises
    ------
    ranges.OutOfRange
        If an input is outside its range.

    Notes
    -----
    With equal legs and a right angle, growing both legs by the gap keeps the throat exactly: the rule of AWS D1.1.
    Metal that runs into the gap comes on top.

    Source
    ------
    AWS D1.1, fit-up of fillet welds: above 1/16 in [2 mm] the legs are increased by the opening, and the opening
    is at most 3/16 in [5 mm]; seen quoted. On the slant: geometry, law.

    Examples
    --------
    >>> gap_along_plate(0.002)
    0.002
    """
    ranges.require("root_gap", root_gap, 0.0, 0.005, "m")
    ranges.require("joint_angle", joint_angle, SHARPEST, BLUNTEST, "rad")
    return root_gap / math.sin(ranges.magnitude(joint_angle, "rad"))


def fillet_area(leg: float, second_leg: float, joint_angle: float = _RIGHT_ANGLE) -> float:
    """Return the area of a fillet's triangle.

    fillet_area = leg * second_leg * sin(joint_angle) / 2

    Parameters
    ----------
    leg : float
        From the corner of the plates to the toe on one of them, [m]; 0.0005 to 0.1.
    second_leg : float
        The same on the other plate, [m]; from leg / 3 to 3 * leg, less at sharp angles (`most_unequal`).
    joint_angle : float
        Angle between the plates on the side of the weld, [rad]; from 60 to 120 degrees.

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
    Leg, not throat: a leg taken for a throat doubles the metal, since the area of an equal fillet is
    leg^2 / 2 and throat^2.

    Source
    ------
    TWI Job Knowledge 95, "Calculating weld volume and weight" (July 2008): half the square of the leg, or half the
    product of two legs; published, seen. The sine: geometry, law.

    Examples
    --------
    >>> round(fillet_area(0.006, 0.006) * 1e6, 6)
    18.0
    """
    _require_triangle(leg, second_leg, joint_angle)
    return 0.5 * leg * second_leg * math.sin(ranges.magnitude(joint_angle, "rad"))


def fillet_face(leg: float, second_leg: float, joint_angle: float = _RIGHT_ANGLE) -> float:
    """Return the width of the face, straight from toe to toe.

    fillet_face^2 = leg^2 + second_leg^2 - 2 * leg * second_leg * cos(joint_angle)

    Parameters
    ----------
    leg : float
        From the corner of the plates to the toe on one of them, [m]; 0.0005 to 0.1.
    second_leg : float
        The same on the other plate, [m]; from leg / 3 to 3 * leg, less at sharp angles (`most_unequal`).
    joint_angle : float
        Angle between the plates on the side of the weld, [rad]; from 60 to 120 degrees.

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
    The law of cosines.

    Source
    ------
    Geometry: law.

    Examples
    --------
    >>> round(fillet_face(0.003, 0.004), 6)
    0.005
    """
    _require_triangle(leg, second_leg, joint_angle)
    slant = math.cos(ranges.magnitude(joint_angle, "rad"))
    return (leg * leg + second_leg * second_leg - 2.0 * slant * leg * second_leg) ** 0.5


def fillet_throat(
    leg: float, second_leg: float, joint_angle: float = _RIGHT_ANGLE, root_gap: float = 0.0, concavity: float = 0.0
) -> float:
    """Return the throat: the shortest way from the root to the face.

    fillet_throat = (leg - gap_along_plate) * second_leg * sin(joint_angle) / fillet_face - concavity

    Parameters
    ----------
    leg : float
        From the corner of the plates to the toe on the plate that stands off by the gap, [m]; 0.0005 to 0.1.
    second_leg : float
        The same on the other plate, [m]; from leg / 3 to 3 * leg, less at sharp angles (`most_unequal`).
    joint_angle : float
        Angle between the plates on the side of the weld, [rad]; from 60 to 120 degrees.
    root_gap : float
        Opening between the plates, [m]; 0 to 0.005.
    concavity : float
        How deep the face is hollow, [m]; above 0 to less than the throat of the flat face.

    Returns
    -------
    float
        Throat, [m].

    Raises
    ------
    ranges.OutOfRange
        If an input is outside its range, or the gap takes the whole leg.

    Notes
    -----
    A face that bulges adds nothing. With unequal legs or a gap the shortest way does not meet the hollow at its
    deepest, so that the answer is a little low there.

    Source
    ------
    AWS A3.0, theoretical and actual throat: from memory. Geometry: law.

    Examples
    --------
    >>> round(fillet_throat(0.006, 0.009) * 1000, 4)
    4.9923
    """
    _require_triangle(leg, second_leg, joint_angle)
    holding = leg - gap_along_plate(root_gap, joint_angle)
    ranges.require("holding_leg", holding, 0.0001, None, "m")
    flat = holding * second_leg * math.sin(ranges.magnitude(joint_angle, "rad"))
    flat = flat / fillet_face(leg, second_leg, joint_angle)
    ranges.require("concavity", concavity, 0.0, ranges.magnitude(flat, "m") * _TOUCHING, "m")
    return flat - concavity


def leg_for_throat(throat: float, joint_angle: float = _RIGHT_ANGLE, concavity: float = 0.0) -> float:
    """Return the leg of a fillet with two equal legs and this throat.

    leg_for_throat = (throat + concavity) / cos(joint_angle / 2)

    Parameters
    ----------
    throat : float
        The shortest way from the root to the face, [m]; 0.0003 to 0.07.
    joint_angle : float
        Angle between the plates on the side of the weld, [rad]; from 60 to 120 degrees.
    concavity : float
        How deep the face is hollow, [m]; 0 to 0.05.

    Returns
    -------
    float
        Leg, [m].

    Raises
    ------
    ranges.OutOfRange
        If an input is outside its range.

    Notes
    -----
    Between plates at a right angle the leg is 1.414 times the throat: a throat made as a leg is a weld of half the
    metal and 0.707 of the strength; a leg made as a throat is twice the metal.

    Source
    ------
    Geometry of the isosceles triangle: law. a = z / sqrt(2): ISO 2553 and AWS A3.0, from memory.

    Examples
    --------
    >>> round(leg_for_throat(0.005) * 1000, 3)
    7.071
    """
    ranges.require("throat", throat, 0.0003, 0.07, "m")
    ranges.require("joint_angle", joint_angle, SHARPEST, BLUNTEST, "rad")
    ranges.require("concavity", concavity, 0.0, 0.05, "m")
    return (throat + concavity) / math.cos(ranges.magnitude(joint_angle, "rad") / 2.0)


def most_convexity(leg: float, second_leg: float, joint_angle: float = _RIGHT_ANGLE) -> float:
    """Return the highest bulge whose face still meets both plates without hanging over.

    most_convexity = fillet_face / 4 * the smaller of 1 and cot(widest corner at a toe)

    Parameters
    ----------
    leg : float
        From the corner of the plates to the toe on one of them, [m]; 0.0005 to 0.1.
    second_leg : float
        The same on the other plate, [m]; from leg / 3 to 3 * leg, less at sharp angles (`most_unequal`).
    joint_angle : float
        Angle between the plates on the side of the weld, [rad]; from 60 to 120 degrees.

    Returns
    -------
    float
        Height of the bulge over the straight face, [m].

    Raises
    ------
    ranges.OutOfRange
        If an input is outside its range.

    Notes
    -----
    A parabola of height h over a width w rises from its end at the slope 4 h / w. Codes allow far less.

    Source
    ------
    Geometry: law.

    Examples
    --------
    >>> round(most_convexity(0.006, 0.006) / fillet_face(0.006, 0.006), 6)
    0.25
    """
    face = fillet_face(leg, second_leg, joint_angle)
    _, steep = _slopes(leg, second_leg, joint_angle)
    return 0.25 * face if steep < 1.0 else 0.25 * face / steep


def most_concavity(leg: float, second_leg: float, joint_angle: float = _RIGHT_ANGLE) -> float:
    """Return the deepest hollow whose face still leaves both plates at the toes.

    most_concavity = fillet_face / 4 * the smaller of 0.8 and 0.8 * tan(narrowest corner at a toe)

    Parameters
    ----------
    leg : float
        From the corner of the plates to the toe on one of them, [m]; 0.0005 to 0.1.
    second_leg : float
        The same on the other plate, [m]; from leg / 3 to 3 * leg, less at sharp angles (`most_unequal`).
    joint_angle : float
        Angle between the plates on the side of the weld, [rad]; from 60 to 120 degrees.

    Returns
    -------
    float
        Depth of the hollow under the straight face, [m].

    Raises
    ------
    ranges.OutOfRange
        If an input is outside its range.

    Notes
    -----
    At tan(corner) / 4 the face would run along the plate; four fifths of that still leaves a toe to see.

    Source
    ------
    Geometry: law. The four fifths: common practice.

    Examples
    --------
    >>> round(most_concavity(0.006, 0.006) / fillet_face(0.006, 0.006), 6)
    0.2
    """
    face = fillet_face(leg, second_leg, joint_angle)
    shallow, _ = _slopes(leg, second_leg, joint_angle)
    return 0.2 * face if shallow > 1.0 else 0.2 * shallow * face


def _slopes(leg: float, second_leg: float, joint_angle: float) -> tuple[float, float]:
    """Return the tangents of the corners of the triangle at the two toes, the smaller first."""
    angle = ranges.magnitude(joint_angle, "rad")
    across, first, second = math.sin(angle), ranges.magnitude(leg, "m"), ranges.magnitude(second_leg, "m")
    tangents = []
    for near, far in ((first, second), (second, first)):
        beside = near - far * math.cos(angle)
        tangents.append(far * across / beside if beside > far * 1e-6 else 1e6)
    return min(tangents), max(tangents)
