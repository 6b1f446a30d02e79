"""Shielding gas through a nozzle: how much, how fast, and what is too much."""

from calculators import ranges
from calculators.facts.gases import GASES
from calculators.facts.shielding import (
    FLOW_PER_BORE,
    MOST_PER_BORE,
    OPEN_JOINT_SHARE,
    OUT_OF_POSITION,
    WIND_LIMIT,
)

_PI = 3.141592653589793
_ARGON_DENSITY = GASES[0][3]


def _require_bore(nozzle_bore: float) -> None:
    ranges.require("nozzle_bore", nozzle_bore, 0.005, 0.035, "m")


def _require_density(density: float) -> None:
    ranges.require("density", density, 0.08, 3.0, "kg/m3")


def light_gas_factor(density: float, argon_density: float = _ARGON_DENSITY) -> float:
    """Return how much more of a light gas it takes for the push of argon: (argon_density / density) ** 0.5, at least 1.

    Parameters
    ----------
    density : float
        Density of the gas at 15 degC and 1 atm, [kg/m3]; 0.08 to 3.
    argon_density : float, optional
        Density of argon at the same state, [kg/m3]; 0.08 to 3.

    Returns
    -------
    float
        Factor on the flow, [-].

    Raises
    ------
    ranges.OutOfRange
        If an input is not finite or outside its range.

    Notes
    -----
    Equal momentum of the jet. For 75 % helium it makes 40 ft3/h of argon 70; a textbook prints 90.

    Source
    ------
    Our reckoning from the momentum of a jet, checked against Modern Welding (2020), figure 8-35. Standing: common
    practice.

    Examples
    --------
    >>> round(light_gas_factor(0.5496), 2), light_gas_factor(1.87)
    (1.75, 1.0)
    """
    _require_density(density)
    ranges.require("argon_density", argon_density, 0.08, 3.0, "kg/m3")
    ratio = argon_density / density
    return float(max(1.0, ratio**0.5))


def usual_flow(nozzle_bore: float, density: float, wind_speed: float, position: str, joint: str) -> float:
    """Return the flow to set for a nozzle (empirical: plain floats in SI).

    Q = (1 L/min for each mm of bore, 1.2 times that at an open joint, and 10 ft3/h more out of position), times the
    factor of a light gas; wind lifts it in proportion, to the most the nozzle takes at 5 mph.

    Parameters
    ----------
    nozzle_bore : float
        Bore of the nozzle, [m]; 0.005 to 0.035.
    density : float
        Density of the gas at 15 degC and 1 atm, [kg/m3]; 0.08 to 3.
    wind_speed : float
        Wind at the weld, [m/s]; 0 to 2.2352, above which no flow helps.
    position : str
        flat, horizontal, vertical-up, vertical-down or overhead.
    joint : str
        corner and edge are open; any other keeps the gas in.

    Returns
    -------
    float
        Flow at 15 degC and 1 atm, [m3/s]; never more than ``most_flow``.

    Raises
    ------
    ranges.OutOfRange
        If an input is not finite or outside its range.

    Notes
    -----
    A rule of the trade, good to about 20 %. How wind lifts it is our straight line between the two ends.

    Source
    ------
    calculators/facts/shielding.py. Standing: common practice; position from Modern Welding (2020).

    Examples
    --------
    >>> round(usual_flow(0.013, 1.69, 0.0, "flat", "fillet") * 60000.0, 1)
    13.0
    """
    _require_bore(nozzle_bore)
    ranges.require("wind_speed", wind_speed, 0.0, WIND_LIMIT, "m/s")
    factor = light_gas_factor(density)
    flow = FLOW_PER_BORE * nozzle_bore
    if joint in ("corner", "edge"):
        flow *= OPEN_JOINT_SHARE
    if position not in ("flat", "horizontal"):
        flow += OUT_OF_POSITION
    most = most_flow(nozzle_bore, density)
    flow = min(flow * factor, most)
    return flow + (most - flow) * wind_speed / WIND_LIMIT


def most_flow(nozzle_bore: float, density: float) -> float:
    """Return the flow above which the jet stirs air into itself (empirical: plain floats in SI).

    Q = 25 L/min for 13 mm of bore, in proportion to the bore, times the factor of a light gas.

    Parameters
    ----------
    nozzle_bore : float
        Bore of the nozzle, [m]; 0.005 to 0.035.
    density : float
        Density of the gas at 15 degC and 1 atm, [kg/m3]; 0.08 to 3.

    Returns
    -------
    float
        Flow at 15 degC and 1 atm, [m3/s].

    Raises
    ------
    ranges.OutOfRange
        If an input is not finite or outside its range.

    Notes
    -----
    Not a Reynolds number: 2300 is passed by ordinary good practice, such as 18 L/min of 75/25 through 13 mm.

    Source
    ------
    calculators/facts/shielding.py. Standing: common practice.

    Examples
    --------
    >>> round(most_flow(0.013, 1.69) * 60000.0, 1)
    25.0
    """
    _require_bore(nozzle_bore)
    return MOST_PER_BORE * nozzle_bore * light_gas_factor(density)


def nozzle_velocity(gas_flow: float, nozzle_bore: float) -> float:
    """Return the mean speed of the gas in a nozzle: 4 * gas_flow / (pi * nozzle_bore ** 2).

    Parameters
    ----------
    gas_flow : float
        Flow at 15 degC and 1 atm, [m3/s]; 1e-6 to 0.01.
    nozzle_bore : float
        Bore of the nozzle, [m]; 0.005 to 0.035.

    Returns
    -------
    float
        Speed, [m/s].

    Raises
    ------
    ranges.OutOfRange
        If an input is not finite or outside its range.

    Notes
    -----
    The tip and its holder stand in the way: the true speed is higher.

    Source
    ------
    Conservation of volume. Standing: published.

    Examples
    --------
    >>> round(nozzle_velocity(0.00025, 0.016), 2)
    1.24
    """
    ranges.require("gas_flow", gas_flow, 1.0e-6, 0.01, "m3/s")
    _require_bore(nozzle_bore)
    return 4.0 * gas_flow / (_PI * nozzle_bore * nozzle_bore)


def reynolds_number(gas_flow: float, nozzle_bore: float, density: float, viscosity: float) -> float:
    """Return the Reynolds number in an open nozzle: 4 * density * gas_flow / (pi * nozzle_bore * viscosity).

    Parameters
    ----------
    gas_flow : float
        Flow, [m3/s]; 1e-6 to 0.01.
    nozzle_bore : float
        Bore of the nozzle, [m]; 0.005 to 0.035.
    density : float
        Density at the state the flow is counted at, [kg/m3]; 0.08 to 3.
    viscosity : float
        Dynamic viscosity, [Pa s]; 5e-6 to 5e-5.

    Returns
    -------
    float
        Reynolds number, [-].

    Raises
    ------
    ranges.OutOfRange
        If an input is not finite or outside its range.

    Notes
    -----
    Shown to explain, never to warn: a long smooth pipe may turn turbulent from 2300, a short nozzle with a tip in it
    is another thing.

    Source
    ------
    O. Reynolds, Phil. Trans. R. Soc. 174 (1883) 935. Standing: published.

    Examples
    --------
    >>> round(reynolds_number(0.0003, 0.013, 1.736, 19.9e-6))
    2563
    """
    ranges.require("gas_flow", gas_flow, 1.0e-6, 0.01, "m3/s")
    _require_bore(nozzle_bore)
    _require_density(density)
    ranges.require("viscosity", viscosity, 5.0e-6, 5.0e-5, "Pa s")
    return 4.0 * density * gas_flow / (_PI * nozzle_bore * viscosity)


def evaporation_power(gas_flow: float, density: float, evaporation_heat: float) -> float:
    """Return the heat it takes to draw gas from above its liquid: gas_flow * density * evaporation_heat.

    Parameters
    ----------
    gas_flow : float
        Flow, [m3/s]; 1e-6 to 0.01.
    density : float
        Density at the state the flow is counted at, [kg/m3]; 0.08 to 3.
    evaporation_heat : float
        Heat of evaporation, [J/kg]; 1e4 to 1e6.

    Returns
    -------
    float
        Power, [W].

    Raises
    ------
    ranges.OutOfRange
        If an input is not finite or outside its range.

    Notes
    -----
    The cylinder takes it from the air around it. A cold cylinder needs more: 231 kJ/kg at 0 degC, 152 at 20.

    Source
    ------
    Definition of the heat of evaporation. Standing: published.

    Examples
    --------
    >>> round(evaporation_power(0.00025, 1.87185, 152.0e3), 1)
    71.1
    """
    ranges.require("gas_flow", gas_flow, 1.0e-6, 0.01, "m3/s")
    _require_density(density)
    ranges.require("evaporation_heat", evaporation_heat, 1.0e4, 1.0e6, "J/kg")
    return gas_flow * density * evaporation_heat
