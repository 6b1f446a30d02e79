"""How a gas let into a closed space dilutes its air, evenly mixed."""

import math

from calculators import ranges


def gas_share(space_volume: float, gas_inflow: float, through_flow: float, time: float) -> float:
    """Return the share of the space that the gas has taken: f = R / W * (1 - exp(-W * t / V)).

    Parameters
    ----------
    space_volume : float
        V, [m3]; 0.01 to 1e7.
    gas_inflow : float
        R, [m3/s]; 1e-10 to 0.02.
    through_flow : float
        W, all that leaves the space, [m3/s]; R to 1e4: R without a fan, R and the fan's flow where it blows in, the
        fan's flow where it draws out more than R.
    time : float
        t since the gas began to flow into clean air, [s]; 0 to 1e9.

    Returns
    -------
    float
        f, [-]; 0 to 1. Of the air 1 - f is left.

    Raises
    ------
    ranges.OutOfRange
        If an input is not finite or outside its range.

    Notes
    -----
    Evenly mixed. Argon and carbon dioxide sink: low down it is worse and sooner.

    Source
    ------
    Mass balance of a well mixed space, V df/dt = R - W f; the form that the oxygen deficiency programmes of US
    national laboratories use. Standing: published.

    Examples
    --------
    >>> round(gas_share(10.0, 1.0 / 3600.0, 1.0 / 3600.0, 2520.0), 4)
    0.0676
    """
    _require(space_volume, gas_inflow, through_flow)
    ranges.require("time", time, 0.0, 1.0e9, "s")
    return -(gas_inflow / through_flow) * math.expm1(-through_flow * time / space_volume)


def time_to_share(space_volume: float, gas_inflow: float, through_flow: float, share: float) -> float | None:
    """Return when the gas takes a share of the space: t = -V / W * ln(1 - f * W / R); None if it never does.

    Parameters
    ----------
    space_volume : float
        V, [m3]; 0.01 to 1e7.
    gas_inflow : float
        R, [m3/s]; 1e-10 to 0.02.
    through_flow : float
        W, all that leaves the space, [m3/s]; R to 1e4.
    share : float
        f, [-]; 0 to 1.

    Returns
    -------
    float or None
        t, [s].

    Raises
    ------
    ranges.OutOfRange
        If an input is not finite or outside its range.

    Source
    ------
    The mass balance of gas_share, turned round. Standing: published.

    Examples
    --------
    >>> round(time_to_share(10.0, 1.0 / 3600.0, 1.0 / 3600.0, 1.0 - 19.5 / 20.9) / 60.0, 1)
    41.6
    """
    _require(space_volume, gas_inflow, through_flow)
    ranges.require("share", share, 0.0, 1.0, "")
    reached = share * through_flow / gas_inflow
    if ranges.above(1.0, reached):
        return -space_volume / through_flow * math.log(1.0 - reached)
    return None


def _require(space_volume: float, gas_inflow: float, through_flow: float) -> None:
    ranges.require("space_volume", space_volume, 0.01, 1.0e7, "m3")
    ranges.require("gas_inflow", gas_inflow, 1.0e-10, 0.02, "m3/s")
    ranges.require("through_flow", through_flow, None, 1.0e4, "m3/s")
    ranges.require("through_flow", through_flow / gas_inflow, 1.0, None, "")
