"""What gives a cooling time wanted: the heat input, the thickness or the temperature of the plate."""

from calculators import cooling, ranges

_HALVINGS = 60


def heat_input_for(
    time: float, preheat_temperature: float, thickness: float, thin_factor: float, thick_factor: float
) -> float:
    """Return the heat input that cools from 800 to 500 °C in the time wanted.

    Q = smaller of t/(t/Q of thick plate) and d sqrt(t/(t d^2/Q^2 of thin plate))

    Parameters
    ----------
    time : float
        Cooling time wanted, [s]; 0.5 to 200.
    preheat_temperature : float
        Temperature of the plate before the pass, [K]; 253.15 to 573.15.
    thickness : float
        Plate thickness, [m]; 0.003 to 0.3.
    thin_factor : float
        Joint factor F2, [-]; 0.3 to 1.
    thick_factor : float
        Joint factor F3, [-]; 0.3 to 1.

    Returns
    -------
    float
        Heat input, efficiency included, [J/m]. It may lie outside the range of `cooling_time`.

    Raises
    ------
    ranges.OutOfRange
        If an input is not finite or is outside its range.

    Source
    ------
    As `cooling_time`; the turned form is algebra.

    Examples
    --------
    >>> round(heat_input_for(11.36, 293.15, 0.010, 1.0, 1.0), -3)
    1000000.0
    """
    ranges.require("time", time, cooling.COOLING_TIME_RANGE[0], cooling.COOLING_TIME_RANGE[1], "s")
    one = 1.0e6
    thick = one * time / cooling.thick_plate_time(one, preheat_temperature, thick_factor)
    thin = one * (time / cooling.thin_plate_time(one, preheat_temperature, thickness, thin_factor)) ** 0.5
    return min(thick, thin)


def thickness_for(time: float, heat_input: float, preheat_temperature: float, thin_factor: float) -> float:
    """Return the thickness of thin plate that cools from 800 to 500 °C in the time wanted.

    d = Q sqrt(t d^2/Q^2 of thin plate / t)

    Parameters
    ----------
    time : float
        Cooling time wanted, [s]; 0.5 to 200.
    heat_input : float
        Heat input, efficiency included, [J/m]; 1e5 to 1e7.
    preheat_temperature : float
        Temperature of the plate before the pass, [K]; 253.15 to 573.15.
    thin_factor : float
        Joint factor F2, [-]; 0.3 to 1.

    Returns
    -------
    float
        Thickness, [m].

    Raises
    ------
    ranges.OutOfRange
        If an input is not finite or is outside its range.

    Notes
    -----
    Holds only for a time longer than that of thick plate: no thickness cools faster.

    Source
    ------
    As `thin_plate_time`; the turned form is algebra.

    Examples
    --------
    >>> round(thickness_for(11.36, 1.0e6, 293.15, 1.0), 4)
    0.01
    """
    ranges.require("time", time, cooling.COOLING_TIME_RANGE[0], cooling.COOLING_TIME_RANGE[1], "s")
    one = 0.010
    return one * (cooling.thin_plate_time(heat_input, preheat_temperature, one, thin_factor) / time) ** 0.5


def preheat_for(time: float, heat_input: float, thickness: float, thin_factor: float, thick_factor: float) -> float:
    """Return the plate temperature at which it cools from 800 to 500 °C in the time wanted.

    T : cooling_time(Q, T, d, F2, F3) = t, found by halving, since the time only rises with T

    Parameters
    ----------
    time : float
        Cooling time wanted, [s]; 0.5 to 200.
    heat_input : float
        Heat input, efficiency included, [J/m]; 1e5 to 1e7.
    thickness : float
        Plate thickness, [m]; 0.003 to 0.3.
    thin_factor : float
        Joint factor F2, [-]; 0.3 to 1.
    thick_factor : float
        Joint factor F3, [-]; 0.3 to 1.

    Returns
    -------
    float
        Temperature of the plate before the pass, [K]; the nearer end of the range where it holds no answer.

    Raises
    ------
    ranges.OutOfRange
        If an input is not finite or is outside its range.

    Source
    ------
    As `cooling_time`.

    Examples
    --------
    >>> round(preheat_for(21.19, 1.0e6, 0.010, 1.0, 1.0) - 273.15)
    150
    """
    ranges.require("time", time, cooling.COOLING_TIME_RANGE[0], cooling.COOLING_TIME_RANGE[1], "s")
    cold, hot = cooling.PREHEAT_RANGE
    for _ in range(_HALVINGS):
        middle = (cold + hot) / 2.0
        if cooling.cooling_time(heat_input, middle, thickness, thin_factor, thick_factor) < time:
            cold = middle
        else:
            hot = middle
    return (cold + hot) / 2.0
