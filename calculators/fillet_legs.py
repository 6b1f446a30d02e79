"""Fillet welds with equal legs at a right angle: leg and throat, the sizes a code asks for, and a gap below."""

from calculators import numerals, ranges
from calculators.facts import fillet_rules as facts

_LEAST, _MOST = 0.0, 0.5  # m: of a leg or a throat
_THINNEST, _THICKEST = 0.003, 0.1  # m: structural rules begin at 1/8 in, which is written as 3 mm
_HALF_ROOT = 0.5**0.5  # of the leg: the height of half a square over its diagonal


# ---------------------------------------------------------------- leg and throat


def throat_of_leg(leg: float) -> float:
    """Return the throat of a fillet weld with equal legs: a = z / sqrt(2).

    Parameters
    ----------
    leg : float
        Leg z, along the plate, [m]; 0 to 0.5.

    Returns
    -------
    float
        Throat a, from the root square to the face, [m].

    Raises
    ------
    ranges.OutOfRange
        If the leg is not finite or is outside its range.

    Notes
    -----
    Plates at a right angle and a flat face. No depth of penetration beyond the root is counted.

    Source
    ------
    Geometry. The throat is defined so in AWS A3.0, ISO 2553 and EN 1993-1-8 4.5.2 (standard; not read in full).

    Examples
    --------
    >>> round(throat_of_leg(0.006), 6)
    0.004243
    """
    ranges.require("leg", leg, _LEAST, _MOST, "m")
    return leg * _HALF_ROOT


def leg_of_throat(throat: float) -> float:
    """Return the leg of a fillet weld with equal legs: z = a * sqrt(2).

    Parameters
    ----------
    throat : float
        Throat a, [m]; 0 to 0.5.

    Returns
    -------
    float
        Leg z, [m].

    Raises
    ------
    ranges.OutOfRange
        If the throat is not finite or is outside its range.

    Source
    ------
    As `throat_of_leg`.

    Examples
    --------
    >>> round(leg_of_throat(0.005), 6)
    0.007071
    """
    ranges.require("throat", throat, _LEAST, _MOST, "m")
    return throat / _HALF_ROOT


def solve_throat(unknown: str, values: dict[str, float]) -> float:
    """Return the unknown one of leg [m] and throat [m]: a = z / sqrt(2).

    Parameters
    ----------
    unknown : str
        Name of the blank.
    values : dict
        The other one by name, in the ranges of `throat_of_leg` and `leg_of_throat`.

    Returns
    -------
    float
        The unknown, in coherent SI.

    Raises
    ------
    ranges.OutOfRange
        If the other one is outside its range.

    Source
    ------
    As `throat_of_leg`.

    Examples
    --------
    >>> round(solve_throat("leg", {"throat": 0.005}), 6)
    0.007071
    """
    return throat_of_leg(values["leg"]) if unknown == "throat" else leg_of_throat(values["throat"])


# ---------------------------------------------------------------- the sizes a code asks for


def least_leg(thickness: float) -> float:
    """Return the smallest leg for the thinner part, as a table: 1/8, 3/16, 1/4 or 5/16 in.

    Parameters
    ----------
    thickness : float
        Thickness of the thinner part joined, [m]; 0.003 to 0.1.

    Returns
    -------
    float
        Smallest leg, [m].

    Raises
    ------
    ranges.OutOfRange
        If the thickness is not finite or is outside its range.

    Notes
    -----
    Each band holds its upper edge. For low-hydrogen processes, gas metal arc among them; for others without preheat
    AWS D1.1 goes by the thicker part. AWS D1.1 asks 3/16 in at least under cyclic load.

    Source
    ------
    ANSI/AISC 360-05 table J2.4, as printed in Structural Steel Designer's Handbook, table 5.6 (seen; standard).

    Examples
    --------
    >>> round(least_leg(0.0127) / 0.0254, 4), round(least_leg(0.0128) / 0.0254, 4)
    (0.1875, 0.25)
    """
    ranges.require("thickness", thickness, _THINNEST, _THICKEST, "m")
    settled = numerals.settle(thickness)
    for most, leg in facts.LEAST_LEGS:
        if settled <= numerals.settle(most):
            return leg
    return facts.LEAST_LEG_OF_THICK


def largest_leg_along_edge(thickness: float) -> float:
    """Return the largest leg along the edge of a lapped part: t below 1/4 in, else t - 1/16 in.

    Parameters
    ----------
    thickness : float
        Thickness of the part whose edge the weld runs along, [m]; 0.003 to 0.1.

    Returns
    -------
    float
        Largest leg, [m].

    Raises
    ------
    ranges.OutOfRange
        If the thickness is not finite or is outside its range.

    Notes
    -----
    Exactly 1/4 in belongs to the upper rule. A drawing may have the weld built out to the full thickness.

    Source
    ------
    ANSI/AISC 360-10 J2.2b (text seen; standard).

    Examples
    --------
    >>> round(largest_leg_along_edge(0.00635) / 0.0254, 4)
    0.1875
    """
    ranges.require("thickness", thickness, _THINNEST, _THICKEST, "m")
    if numerals.settle(thickness) < numerals.settle(facts.EDGE_LEFT_CLEAR_FROM):
        return thickness
    return thickness - facts.EDGE_CLEARANCE


def shortest_length(leg: float) -> float:
    """Return the shortest length that counts whole: four legs.

    Parameters
    ----------
    leg : float
        Leg, [m]; 0 to 0.5.

    Returns
    -------
    float
        Shortest length, [m].

    Raises
    ------
    ranges.OutOfRange
        If the leg is not finite or is outside its range.

    Source
    ------
    ANSI/AISC 360-10 J2.2b: for a shorter weld a quarter of its length counts as the leg (text seen; standard).

    Examples
    --------
    >>> shortest_length(0.006)
    0.024
    """
    ranges.require("leg", leg, _LEAST, _MOST, "m")
    return 4.0 * leg


def shortest_length_eurocode(throat: float) -> float:
    """Return the shortest length that may carry load by the Eurocode: the longer of 6 a and 30 mm.

    Parameters
    ----------
    throat : float
        Throat a, [m]; 0 to 0.5.

    Returns
    -------
    float
        Shortest effective length, [m].

    Raises
    ------
    ranges.OutOfRange
        If the throat is not finite or is outside its range.

    Source
    ------
    EN 1993-1-8:2005 4.5.1(2) (seen quoted; standard).

    Examples
    --------
    >>> shortest_length_eurocode(0.004)
    0.03
    """
    ranges.require("throat", throat, _LEAST, _MOST, "m")
    return max(6.0 * throat, facts.SHORTEST_EUROCODE_LENGTH)


# ---------------------------------------------------------------- a gap under the weld


def gap_taken_from_leg(root_gap: float) -> float:
    """Return how much of the leg a gap takes: nothing up to 1/16 in, the whole gap above it.

    Parameters
    ----------
    root_gap : float
        Gap between the parts, [m]; 0 to 0.0047625 (3/16 in).

    Returns
    -------
    float
        What is lost of the leg, and added to make up for it, [m].

    Raises
    ------
    ranges.OutOfRange
        If the gap is not finite or is above 3/16 in: the parts are to be brought closer.

    Source
    ------
    AWS D1.1, assembly tolerances of fillet welds, as quoted on the American Welding Society's forum (published).

    Examples
    --------
    >>> gap_taken_from_leg(0.0015), gap_taken_from_leg(0.003)
    (0.0, 0.003)
    """
    ranges.require("root_gap", root_gap, 0.0, facts.LARGEST_GAP, "m")
    return root_gap if numerals.settle(root_gap) > numerals.settle(facts.GAP_NOT_COUNTED) else 0.0
