"""The least filter shade by law and the shade for comfort, from current, rod or plate."""

from calculators import ranges
from calculators.facts import shade as facts


def arc_shade(process: str, current: float) -> tuple[int, int, int]:
    """Return the shade for an arc: the band of its current; on the edge of two the higher.

    Parameters
    ----------
    process : str
        A name in facts.shade.CURRENTS.
    current : float
        Arc current, [A]; above 0, at most the end of the table for the process, 500 to 1000.

    Returns
    -------
    tuple
        Least shade by law, and comfort from and to, 0 where none is published, [-].

    Raises
    ------
    ranges.OutOfRange
        If the current is not finite or beyond the table.
    KeyError
        If the process is not in the table.

    Source
    ------
    29 CFR 1910.133(a)(5). Standing: law. ANSI Z49.1, comfort. Standing: standard, seen quoted.

    Examples
    --------
    >>> arc_shade("gas-metal-arc", 160.0)
    (10, 12, 12)
    """
    bands = dict(facts.CURRENTS)[process]
    ranges.require("current", current, 0.0, bands[-1][0], "A")
    for end, least, low, high in bands[:-1]:
        if ranges.above(end, current):
            return least, low, high
    return bands[-1][1:]


def rod_shade(rod_diameter: float) -> tuple[int, int, int]:
    """Return the shade for a covered rod by its size.

    Parameters
    ----------
    rod_diameter : float
        Core wire, [m]; 0.001 to 0.0127.

    Returns
    -------
    tuple
        Least shade by law, and comfort from and to, 0 where none is published, [-].

    Raises
    ------
    ranges.OutOfRange
        If the size is not finite or outside its range.

    Source
    ------
    29 CFR 1910.133(a)(5). Standing: law. ANSI Z49.1, comfort. Standing: standard, seen quoted.

    Examples
    --------
    >>> rod_shade(0.00396875)
    (10, 12, 12)
    """
    ranges.require("rod_diameter", rod_diameter, 0.001, facts.RODS[-1][0], "m")
    return _band(facts.RODS, rod_diameter)


def plate_shade(process: str, thickness: float) -> tuple[int, int, int]:
    """Return the shade for a torch by the plate it welds or cuts.

    Parameters
    ----------
    process : str
        gas-welding or oxygen-cutting.
    thickness : float
        Plate, [m]; 0 to 0.3048.

    Returns
    -------
    tuple
        Least shade by law, and comfort from and to, [-].

    Raises
    ------
    ranges.OutOfRange
        If the thickness is not finite or outside its range.
    KeyError
        If the process is not in the table.

    Source
    ------
    29 CFR 1910.133(a)(5). Standing: law. ANSI Z49.1, comfort. Standing: standard, seen quoted.

    Examples
    --------
    >>> plate_shade("oxygen-cutting", 0.0254)
    (4, 4, 5)
    """
    bands = dict(facts.PLATES)[process]
    ranges.require("thickness", thickness, 0.0, bands[-1][0], "m")
    return _band(bands, thickness)


def _band(bands: tuple[tuple[float, bool, int, int, int], ...], size: float) -> tuple[int, int, int]:
    for end, belongs, least, low, high in bands[:-1]:
        if ranges.above(end, size) or (belongs and not ranges.above(size, end)):
            return least, low, high
    return bands[-1][2:]
