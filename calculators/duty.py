"""Duty cycle: how long of ten minutes a machine may weld, and what its heating current comes to."""

import math

from calculators import ranges

SQUARE = 2.0  # heat in copper grows with the square of the current


def allowed_duty(current: float, rated_current: float, rated_duty: float, exponent: float = SQUARE) -> float:
    """Return the share of the ten minutes that a machine may weld at another current.

    duty = rated_duty * (rated_current / current)^exponent, at most 1

    Parameters
    ----------
    current : float
        Welding current, [A]; 1 to 2000.
    rated_current : float
        Current on the plate, [A]; 1 to 2000.
    rated_duty : float
        Share that goes with it, [-]; 0.01 to 1.
    exponent : float, optional
        How heat grows with current, [-]; 0.5 to 6.

    Returns
    -------
    float
        Share of the time, [-].

    Raises
    ------
    ranges.OutOfRange
        If an input is outside its range.

    Notes
    -----
    Near the rating and at 40 degC. Never above the highest rated current: that the caller refuses.

    Source
    ------
    Heat of copper, I^2 X constant over the ten minutes of IEC 60974-1 (seen quoted): standard. NEC Table 630.11(A)
    has the same as multipliers: standard.

    Examples
    --------
    >>> round(allowed_duty(150.0, 200.0, 0.30), 4), allowed_duty(100.0, 160.0, 0.60)
    (0.5333, 1.0)
    """
    ranges.require("current", current, 1.0, 2000.0, "A")
    ranges.require("rated_current", rated_current, 1.0, 2000.0, "A")
    ranges.require("rated_duty", rated_duty, 0.01, 1.0, "")
    ranges.require("exponent", exponent, 0.5, 6.0, "")
    return min(1.0, rated_duty * (rated_current / current) ** exponent)


def current_for_duty(duty: float, rated_current: float, rated_duty: float, exponent: float = SQUARE) -> float:
    """Return the current at which a machine may weld that share of the ten minutes.

    current = rated_current * (rated_duty / duty)^(1 / exponent)

    Parameters
    ----------
    duty : float
        Share of the time, [-]; 0.01 to 1.
    rated_current : float
        Current on the plate, [A]; 1 to 2000.
    rated_duty : float
        Share that goes with it, [-]; 0.01 to 1.
    exponent : float, optional
        How heat grows with current, [-]; 0.5 to 6.

    Returns
    -------
    float
        Current, [A].

    Raises
    ------
    ranges.OutOfRange
        If an input is outside its range.

    Source
    ------
    As `allowed_duty`, turned round.

    Examples
    --------
    >>> round(current_for_duty(1.0, 200.0, 0.30), 1)
    109.5
    """
    ranges.require("duty", duty, 0.01, 1.0, "")
    ranges.require("rated_current", rated_current, 1.0, 2000.0, "A")
    ranges.require("rated_duty", rated_duty, 0.01, 1.0, "")
    ranges.require("exponent", exponent, 0.5, 6.0, "")
    return rated_current * (rated_duty / duty) ** (1.0 / exponent)


def exponent_of(higher_current: float, its_duty: float, lower_current: float, longer_duty: float) -> float:
    """Return how a machine's heat grows with current, from two of its ratings.

    exponent = ln(longer_duty / its_duty) / ln(higher_current / lower_current)

    Parameters
    ----------
    higher_current : float
        The rating of more current, [A]; 1 to 2000.
    its_duty : float
        Share that goes with it, [-]; 0.01 to 1.
    lower_current : float
        The rating of less current, [A]; above 1, and below the higher.
    longer_duty : float
        Share that goes with that, [-]; above its_duty, up to 1.

    Returns
    -------
    float
        Exponent, [-]; 2 where all heat is that of copper.

    Raises
    ------
    ranges.OutOfRange
        If an input is outside its range.

    Source
    ------
    Straight line through two points on paper logarithmic both ways: law.

    Examples
    --------
    >>> round(exponent_of(200.0, 0.25, 100.0, 1.0), 6)
    2.0
    """
    ranges.require("higher_current", higher_current, 1.0, 2000.0, "A")
    ranges.require("its_duty", its_duty, 0.01, 1.0, "")
    ranges.require("lower_current", lower_current, 1.0, 2000.0, "A")
    ranges.require("longer_duty", longer_duty, 0.01, 1.0, "")
    ranges.require("ratio", higher_current / lower_current, 1.0001, None, "")
    ranges.require("ratio", longer_duty / its_duty, 1.0001, None, "")
    return math.log(longer_duty / its_duty) / math.log(higher_current / lower_current)


def effective_current(current: float, duty: float, idle_current: float = 0.0) -> float:
    """Return the steady current that heats a cable as much as one that comes and goes.

    effective = sqrt(current^2 * duty + idle_current^2 * (1 - duty))

    Parameters
    ----------
    current : float
        Current while welding, [A]; 0 to 2000.
    duty : float
        Share of the time, [-]; 0 to 1.
    idle_current : float, optional
        Current in between, [A]; 0 to 2000.

    Returns
    -------
    float
        Current, [A].

    Raises
    ------
    ranges.OutOfRange
        If an input is outside its range.

    Source
    ------
    NEC 630.12, note on I1eff, and IEC 60974-1: standard, seen quoted.

    Examples
    --------
    >>> round(effective_current(32.0, 0.35, 0.5), 2)
    18.94
    """
    ranges.require("current", current, 0.0, 2000.0, "A")
    ranges.require("duty", duty, 0.0, 1.0, "")
    ranges.require("idle_current", idle_current, 0.0, 2000.0, "A")
    return (current * current * duty + idle_current * idle_current * (1.0 - duty)) ** 0.5
