"""What digging out a crack takes: how long the groove, how much metal is gone, and how long to hold the heat."""

from calculators import ranges, units
from calculators.facts import repair as facts

_HOUR = units.factor_of("h")
_INCH = units.factor_of("in")


def repair_length(crack_length: float, ends_inside: int, beyond_end: float) -> float:
    """Return how long the groove is: the crack, and sound metal beyond each end that lies inside the part.

    repair_length = crack_length + ends_inside * beyond_end

    Parameters
    ----------
    crack_length : float
        Crack from end to end, as found by a test, [m]; 0.0005 to 20.
    ends_inside : int
        Ends of it that do not run out at an edge, [-]; 0, 1 or 2.
    beyond_end : float
        Sound metal dug out beyond each of these, [m]; 0 to 0.1.

    Returns
    -------
    float
        Length of the groove, [m].

    Raises
    ------
    ranges.OutOfRange
        If a value is outside its range.

    Notes
    -----
    What the eye sees of a crack is shorter than the crack.

    Source
    ------
    AWS D1.1/D1.1M:2015, 5.25.1.4, as reproduced: 2 in beyond each end. Standard.

    Examples
    --------
    >>> round(repair_length(0.1016, 2, 0.0508), 4)
    0.2032
    """
    ranges.require("crack_length", crack_length, 0.0005, 20.0, "m")
    ranges.require("ends_inside", ends_inside, 0, 2, "")
    ranges.require("beyond_end", beyond_end, 0.0, 0.1, "m")
    return crack_length + ends_inside * beyond_end


def metal_volume(area: float, length: float) -> float:
    """Return the volume of metal that is gone and has to be put back.

    metal_volume = area * length

    Parameters
    ----------
    area : float
        Cross-section of the groove, or width times depth of a worn face, [m2]; 1e-8 to 0.5.
    length : float
        Length of it, [m]; 0.0005 to 21.

    Returns
    -------
    float
        Volume, [m3].

    Raises
    ------
    ranges.OutOfRange
        If a value is outside its range.

    Notes
    -----
    The ends of a groove run out in a slope: this is on the high side by about its depth at each end.

    Source
    ------
    Geometry: law.

    Examples
    --------
    >>> round(metal_volume(1e-4, 0.2), 9)
    2e-05
    """
    ranges.require("area", area, 1e-8, 0.5, "m2")
    ranges.require("length", length, 0.0005, 21.0, "m")
    return area * length


def hold_time(thickness: float) -> float:
    """Return how long to hold the preheat after the last pass, so that hydrogen can leave.

    hold_time = 1 h for each inch of thickness, and 1 h at least. Empirical.

    Parameters
    ----------
    thickness : float
        Thickness of the thickest part at the weld, [m]; 0.001 to 0.3.

    Returns
    -------
    float
        Time at the preheat temperature, [s].

    Raises
    ------
    ranges.OutOfRange
        If the thickness is outside its range.

    Notes
    -----
    For steel that hardens. It takes the place of no heat treatment that a procedure asks for.

    Source
    ------
    Common practice; facts/repair.py, HOLD_PER_INCH.

    Examples
    --------
    >>> hold_time(0.0508) / 3600.0
    2.0
    """
    ranges.require("thickness", thickness, 0.001, 0.3, "m")
    return max(facts.HOLD_PER_INCH * thickness / _INCH, facts.LEAST_HOLD) * _HOUR
