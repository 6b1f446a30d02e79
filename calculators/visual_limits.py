"""Limits for the eye on a finished weld, statically loaded building steel: undercut, missing leg, bulge, cap."""

from calculators import ranges
from calculators.facts import visual as facts
from calculators.facts.deposition import MOST_CONVEXITY

_THINNEST, _THICKEST = 0.003, 0.3  # m: structural rules begin at 1/8 in, which is written as 3 mm


def most_undercut(thickness: float, undercut_length: float) -> float:
    """Return the deepest undercut that the table takes over this length of any 12 in of weld.

    Parameters
    ----------
    thickness : float
        Of the metal that is undercut, [m]; 0.003 to 0.3.
    undercut_length : float
        Of undercut deeper than 1/32 in, all of it in the worst 12 in, [m]; 0 to 0.3048.

    Returns
    -------
    float
        Depth, [m].

    Raises
    ------
    ranges.OutOfRange
        If an input is outside its range.

    Source
    ------
    AWS D1.1, table 6.1 (2000, 2004) and 8.1 (2020), statically loaded: standard, seen as reproduced.

    Examples
    --------
    >>> round(most_undercut(0.0127, 0.0508) / 0.0254, 5), round(most_undercut(0.0127, 0.06) / 0.0254, 5)
    (0.0625, 0.03125)
    """
    ranges.require("thickness", thickness, _THINNEST, _THICKEST, "m")
    ranges.require("undercut_length", undercut_length, 0.0, 0.3048, "m")
    thick = not ranges.above(facts.THICK, thickness)
    return facts.DEEP if thick or not ranges.above(undercut_length, facts.DEEP_LENGTH) else facts.SHALLOW


def most_missing_leg(wanted_leg: float) -> float:
    """Return how much of a fillet's leg may be missing over a tenth of the weld's length.

    Parameters
    ----------
    wanted_leg : float
        Leg that the drawing asks for, [m]; 0.003 to 0.05.

    Returns
    -------
    float
        What may be missing, [m].

    Raises
    ------
    ranges.OutOfRange
        If the leg is outside its range.

    Notes
    -----
    The table has rows for 3/16 in and less, for 1/4 in, and for 5/16 in and more. A leg between two of them gets the
    smaller one's.

    Source
    ------
    AWS D1.1, table 6.1 (2000, 2004) and 8.1 (2020): standard, seen as reproduced.

    Examples
    --------
    >>> round(most_missing_leg(0.00635) / 0.0254, 5)
    0.09375
    """
    ranges.require("wanted_leg", wanted_leg, 0.003, 0.05, "m")
    found = facts.SHORT_LEGS[0][1]
    for row, missing in facts.SHORT_LEGS:
        if not ranges.above(row, wanted_leg):
            found = missing
    return found


def most_bulge(face_width: float) -> float:
    """Return the highest bulge of a fillet's face, or of one bead in it.

    Parameters
    ----------
    face_width : float
        Width of the face, toe to toe, [m]; 0.001 to 0.1.

    Returns
    -------
    float
        Bulge over the straight line from toe to toe, [m].

    Raises
    ------
    ranges.OutOfRange
        If the width is outside its range.

    Source
    ------
    AWS D1.1, weld profiles: 1/16 in to 5/16 in of face and 1/8 in above, seen quoted; the last step from memory.

    Examples
    --------
    >>> round(most_bulge(0.008) / 0.0254, 5)
    0.125
    """
    ranges.require("face_width", face_width, 0.001, 0.1, "m")
    return _row(MOST_CONVEXITY, face_width)


def most_cap(thickness: float) -> float:
    """Return the highest cap of a groove weld over the plate.

    Parameters
    ----------
    thickness : float
        Of the thinner plate, [m]; 0.003 to 0.3.

    Returns
    -------
    float
        Height, [m].

    Raises
    ------
    ranges.OutOfRange
        If the thickness is outside its range.

    Source
    ------
    AWS D1.1:2015, table 5.9, schedule A: from memory.

    Examples
    --------
    >>> round(most_cap(0.0127) / 0.0254, 5)
    0.125
    """
    ranges.require("thickness", thickness, _THINNEST, _THICKEST, "m")
    return _row(facts.CAPS, thickness)


def _row(rows: tuple[tuple[float, float], ...], size: float) -> float:
    return next(most for limit, most in rows if not ranges.above(size, limit))
