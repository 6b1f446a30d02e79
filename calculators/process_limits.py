"""Limits that choose between arc processes: wind at the weld, and the size and current of a covered rod."""

from calculators import ranges
from calculators.facts import processes as facts


def wind_state(lowest: float, highest: float) -> str:
    """Return whether the wind keeps the limit of gas-shielded welding: `inside`, `outside` or `unclear`.

    inside if highest <= 5 mph, outside if lowest > 5 mph, unclear between

    Parameters
    ----------
    lowest : float
        Least the wind at the weld may be, [m/s]; 0 to 50.
    highest : float
        Most it may be, [m/s]; 0 to 50.

    Returns
    -------
    str
        `inside`, `outside` or `unclear`.

    Raises
    ------
    ranges.OutOfRange
        If a speed is outside its range.

    Source
    ------
    AWS D1.1, wind at gas-shielded welds: 5 mph [8 km/h], as quoted; standard.

    Examples
    --------
    >>> wind_state(0.0, 1.3), wind_state(1.8, 3.1), wind_state(3.6, 50.0)
    ('inside', 'unclear', 'outside')
    """
    ranges.require("lowest", lowest, 0.0, 50.0, "m/s")
    ranges.require("highest", highest, 0.0, 50.0, "m/s")
    if ranges.above(lowest, facts.WIND_LIMIT):
        return "outside"
    return "unclear" if ranges.above(highest, facts.WIND_LIMIT) else "inside"


def rod_diameter(rod: str, thickness: float) -> float:
    """Return the diameter of a covered rod for a thickness of steel.

    1/16 in up to 1/16 in of steel, 3/32 in up to 3/16, 1/8 in up to 5/16, 5/32 in above; not under the rod's smallest

    Parameters
    ----------
    rod : str
        `e6010` (and E6011), `e6013` or `e7018`, [-].
    thickness : float
        Thinner part of the joint, [m]; 0.5e-3 to 0.3.

    Returns
    -------
    float
        Rod diameter, [m].

    Raises
    ------
    ranges.OutOfRange
        If the thickness is outside its range.

    Source
    ------
    Machinery's Handbook, 31st edition, page 1594: E7018 vertical up, 1/8 in for 3/16 to 5/16 in, 5/32 in above;
    published. Thinner steel: common practice.

    Examples
    --------
    >>> round(rod_diameter("e7018", 6e-3) * 1e3, 2), round(rod_diameter("e6013", 1.5e-3) * 1e3, 2)
    (3.17, 1.59)
    """
    ranges.require("thickness", thickness, 0.5e-3, 0.3, "m")
    fitting = [diameter for most, diameter in facts.ROD_DIAMETERS if not ranges.above(thickness, most)]
    return max(fitting[0], _sizes(rod)[0][0])


def _sizes(rod: str) -> "tuple[tuple[float, float, float], ...]":
    for name, sizes in facts.RODS:
        if name == rod:
            return sizes
    raise ValueError("no such rod: " + rod)


def rod_current(rod: str, diameter: float, thickness: float) -> tuple[float, float, float]:
    """Return the lowest current of a covered rod, where to start, and its highest.

    start = lowest on sheet (up to 0.134 in), (lowest + highest) / 2 on thicker steel

    Parameters
    ----------
    rod : str
        `e6010` (and E6011), `e6013` or `e7018`, [-].
    diameter : float
        Rod diameter, one of the table's, [m]; 1.5e-3 to 5e-3.
    thickness : float
        Thinner part of the joint, [m]; 0.5e-3 to 0.3.

    Returns
    -------
    tuple of float
        Lowest, start and highest current, [A].

    Raises
    ------
    ranges.OutOfRange
        If a size is outside its range.
    ValueError
        If the table has no such rod.

    Source
    ------
    Machinery's Handbook, 31st edition, pages 1593 and 1594, tables 13 and 14; published.

    Examples
    --------
    >>> rod_current("e7018", 3.175e-3, 10e-3), rod_current("e6013", 2.38125e-3, 2e-3)
    ((110.0, 135.0, 160.0), (50.0, 50.0, 100.0))
    """
    ranges.require("diameter", diameter, 1.5e-3, 5e-3, "m")
    ranges.require("thickness", thickness, 0.5e-3, 0.3, "m")
    for size, lowest, highest in _sizes(rod):
        if not ranges.above(abs(size - diameter), 0.05e-3):
            if ranges.above(thickness, facts.SHEET_ENDS):
                return lowest, (lowest + highest) / 2.0, highest
            return lowest, lowest, highest
    raise ValueError("no such size of rod")
