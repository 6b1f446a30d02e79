"""What a nominal pipe size and a schedule measure."""

from calculators import units
from calculators.facts import pipes

PIPE_SIZES = tuple(size for size, _, _ in pipes.PIPES)
STAINLESS_SCHEDULES = ("5s", "10s", "40s", "80s")
NUMBERED_SCHEDULES = ("5", "10", "20", "30", "40", "60", "80", "100", "120", "140", "160")
SCHEDULES = STAINLESS_SCHEDULES + NUMBERED_SCHEDULES + ("std", "xs", "xxs")

_INCH = units.factor_of("in")


def pipe_outside_diameter(pipe_size: str) -> float:
    """Return the outside diameter of a nominal pipe size: the same for every schedule.

    Empirical: a table.

    Parameters
    ----------
    pipe_size : str
        `dn-6` (NPS 1/8) to `dn-600` (NPS 24), [-].

    Returns
    -------
    float
        Outside diameter, [m].

    Raises
    ------
    KeyError
        If the size is not in the table.

    Notes
    -----
    Up to NPS 12 the outside is more than the name: NPS 4 measures 4.5 in.

    Source
    ------
    facts/pipes.py: ASME B36.10M, standard.

    Examples
    --------
    >>> round(pipe_outside_diameter("dn-100") * 1000, 1)
    114.3
    """
    for size, inches, _ in pipes.PIPES:
        if size == pipe_size:
            return inches * _INCH
    raise KeyError(pipe_size)


def pipe_wall(pipe_size: str, pipe_schedule: str) -> float | None:
    """Return the wall of a nominal pipe size in a schedule, or None where the table has no such pipe.

    Empirical: a table.

    Parameters
    ----------
    pipe_size : str
        `dn-6` (NPS 1/8) to `dn-600` (NPS 24), [-].
    pipe_schedule : str
        `5s` to `80s`, `5` to `160`, `std`, `xs` or `xxs`, [-].

    Returns
    -------
    float
        Wall thickness, [m].

    Raises
    ------
    KeyError
        If the size is not in the table.

    Notes
    -----
    Nominal. ASTM A53 lets the wall be 12.5 % thinner at any point.

    Source
    ------
    facts/pipes.py: ASME B36.10M and B36.19M, standard.

    Examples
    --------
    >>> round(pipe_wall("dn-100", "40") * 1000, 2)
    6.02
    """
    for size, _, walls in pipes.PIPES:
        if size == pipe_size:
            for schedule, inches in walls:
                if schedule == pipe_schedule:
                    return inches * _INCH
            return None
    raise KeyError(pipe_size)
