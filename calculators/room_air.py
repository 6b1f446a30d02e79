"""Fume in the air of a room: how it builds up, evenly mixed, with and without air moving through."""

import math

from calculators import ranges

_FEW_CHANGES = 1.0e-3  # below it the series is closer than the difference of two nearly equal numbers


def concentration(emission_rate: float, space_volume: float, air_flow: float, time: float) -> float:
    """Return what is in the air after a time: c = G / Q * (1 - exp(-Q * t / V)), and G * t / V without any flow.

    Parameters
    ----------
    emission_rate : float
        G, [kg/s]; 0 to 1.
    space_volume : float
        V, [m3]; 0.01 to 1e7.
    air_flow : float
        Q of clean air, [m3/s]; 0 to 1e4.
    time : float
        t since the work began in clean air, [s]; 0 to 1e6.

    Returns
    -------
    float
        c, mean of the room, [kg/m3].

    Raises
    ------
    ranges.OutOfRange
        If an input is not finite or outside its range.

    Source
    ------
    Mass balance of a well mixed room, V dc/dt = G - Q c. Standing: published.

    Examples
    --------
    >>> round(concentration(2.888e-6, 283.0, 0.95, 900.0) * 1e6, 2)
    2.89
    """
    _require(emission_rate, space_volume, air_flow, time)
    changes = air_flow * time / space_volume
    if changes < _FEW_CHANGES:
        return emission_rate * time / space_volume * (1.0 - changes / 2.0 + changes * changes / 6.0)
    return -emission_rate / air_flow * math.expm1(-changes)


def mean_concentration(emission_rate: float, space_volume: float, air_flow: float, time: float) -> float:
    """Return the mean over the time: G / Q * (1 - (1 - exp(-x)) / x) with x = Q * t / V; G * t / (2 V) without flow.

    Parameters
    ----------
    emission_rate : float
        G, [kg/s]; 0 to 1.
    space_volume : float
        V, [m3]; 0.01 to 1e7.
    air_flow : float
        Q of clean air, [m3/s]; 0 to 1e4.
    time : float
        t since the work began in clean air, [s]; 0 to 1e6.

    Returns
    -------
    float
        Mean concentration of the room over the time, [kg/m3].

    Raises
    ------
    ranges.OutOfRange
        If an input is not finite or outside its range.

    Source
    ------
    The integral of `concentration`. Standing: published.

    Examples
    --------
    >>> round(mean_concentration(2.888e-6, 283.0, 0.95, 900.0) * 1e6, 2)
    2.08
    """
    _require(emission_rate, space_volume, air_flow, time)
    changes = air_flow * time / space_volume
    if changes < _FEW_CHANGES:
        return emission_rate * time / space_volume * (0.5 - changes / 6.0 + changes * changes / 24.0)
    return emission_rate / air_flow * (1.0 + math.expm1(-changes) / changes)


def _require(emission_rate: float, space_volume: float, air_flow: float, time: float) -> None:
    ranges.require("emission_rate", emission_rate, 0.0, 1.0, "kg/s")
    ranges.require("space_volume", space_volume, 0.01, 1.0e7, "m3")
    ranges.require("air_flow", air_flow, 0.0, 1.0e4, "m3/s")
    ranges.require("time", time, 0.0, 1.0e6, "s")
