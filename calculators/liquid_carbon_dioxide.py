"""Carbon dioxide alone: a liquid under its own vapour, so it is weighed, not read off a gauge."""

from calculators import ranges, units
from calculators.cylinder_contents import LARGEST_CYLINDER, SMALLEST_CYLINDER
from calculators.facts.cylinders import CUBIC_INCHES_OF_A_POUND_OF_WATER
from calculators.facts.gas_state import (
    CARBON_DIOXIDE_REFERENCE_DENSITY,
    CARBON_DIOXIDE_SATURATION,
    FIRST_SATURATION_TEMPERATURE,
    SATURATION_TEMPERATURE_STEP,
)
from calculators.interpolation import four_points

LOWEST_TEMPERATURE = FIRST_SATURATION_TEMPERATURE  # [K], -20 degC
HIGHEST_TEMPERATURE = 303.15  # [K], 30 degC; from 31.0 degC there is no liquid at any pressure

_INCH = units.factor_of("in")
WATER_DENSITY = units.factor_of("lb") / (CUBIC_INCHES_OF_A_POUND_OF_WATER * _INCH * _INCH * _INCH)  # [kg/m3]

_LARGEST_MASS = 1000.0  # [kg]


def gas_volume_of_mass(gas_mass: float, reference_density: float = CARBON_DIOXIDE_REFERENCE_DENSITY) -> float:
    """Return the gas, at the reference state, that a mass of carbon dioxide gives: mass / reference_density.

    Parameters
    ----------
    gas_mass : float
        Contents by weight: the cylinder as it stands less the tare stamped on it, [kg]; 0 to 1000.
    reference_density : float, optional
        Density of the gas at the reference state, [kg/m3]; 0.05 to 10, carbon dioxide if not given.

    Returns
    -------
    float
        Gas volume at 15 degC and 1 atm, [m3].

    Raises
    ------
    ranges.OutOfRange
        If an input is not finite or outside its range.

    Notes
    -----
    0.534 m3/kg, 8.56 ft3/lb at this reference state. Handbooks print 8.74 ft3/lb for 70 degF and 1 atm.

    Source
    ------
    Density from calculators/facts/gas_state.py (Span and Wagner 1996). Standing: published.

    Examples
    --------
    >>> round(gas_volume_of_mass(10.0), 2)
    5.34
    """
    ranges.require("gas_mass", gas_mass, 0.0, _LARGEST_MASS, "kg")
    ranges.require("reference_density", reference_density, 0.05, 10.0, "kg/m3")
    return gas_mass / reference_density


def vapour_pressure(temperature: float) -> float:
    """Return the pressure in a carbon dioxide cylinder while it holds liquid (empirical: plain floats in SI).

    By four-point interpolation in a table over temperature.

    Parameters
    ----------
    temperature : float
        Temperature of the liquid, [K]; 253.15 to 303.15 (-20 to 30 degC).

    Returns
    -------
    float
        Absolute pressure, [Pa].

    Raises
    ------
    ranges.OutOfRange
        If the input is not finite or outside its range.

    Notes
    -----
    It depends on temperature alone, not on what is left: the gauge stays up until the last liquid has gone. A
    cylinder cools while gas is drawn, so the gauge also sags under flow and recovers, with nothing lost.

    Source
    ------
    calculators/facts/gas_state.py (Span and Wagner 1996). Standing: published.

    Examples
    --------
    >>> round(vapour_pressure(293.15) / 1e5, 1)
    57.3
    """
    return _saturation(temperature, 0) * 1000.0


def mass_when_liquid_is_gone(cylinder_water_volume: float, temperature: float) -> float:
    """Return the carbon dioxide left when the last liquid evaporates (empirical: plain floats in SI).

    m = cylinder_water_volume * density of saturated vapour at the temperature

    Parameters
    ----------
    cylinder_water_volume : float
        Inner volume of the cylinder, [m3]; 0.0001 to 1.
    temperature : float
        Temperature of the liquid, [K]; 253.15 to 303.15 (-20 to 30 degC).

    Returns
    -------
    float
        Mass of gas left, [kg].

    Raises
    ------
    ranges.OutOfRange
        If an input is not finite or outside its range.

    Notes
    -----
    Only below this mass does the gauge say anything. The interpolation is within 0.2 % up to 28 degC and
    0.5 % up to 30 degC, where the vapour density climbs steeply.

    Source
    ------
    calculators/facts/gas_state.py (Span and Wagner 1996). Standing: published.

    Examples
    --------
    >>> round(mass_when_liquid_is_gone(0.030, 293.15), 2)
    5.83
    """
    _require_cylinder(cylinder_water_volume)
    return cylinder_water_volume * _saturation(temperature, 1) / 10.0


def largest_charge(cylinder_water_volume: float, filling_density: float, water_density: float = WATER_DENSITY) -> float:
    """Return the largest lawful charge: cylinder_water_volume * water_density * filling_density.

    Parameters
    ----------
    cylinder_water_volume : float
        Inner volume of the cylinder, [m3]; 0.0001 to 1.
    filling_density : float
        Mass of gas allowed for each mass of water the cylinder holds, [-]; 0.1 to 0.745.
    water_density : float, optional
        Water at 60 degF as the rule counts it, [kg/m3]; 990 to 1000.

    Returns
    -------
    float
        Mass of carbon dioxide, [kg].

    Raises
    ------
    ranges.OutOfRange
        If an input is not finite or outside its range.

    Notes
    -----
    To judge a weighed content, not to fill by: only a qualified filler with a scale fills cylinders. Charged
    to 0.68 kg for each litre, one is full of liquid at 27 degC and stands above 140 bar at 50 degC.

    Source
    ------
    49 CFR 173.304a(a)(2), table 1. Standing: law.

    Examples
    --------
    >>> round(largest_charge(0.040, 0.68), 2)
    27.14
    """
    _require_cylinder(cylinder_water_volume)
    ranges.require("filling_density", filling_density, 0.1, 0.745, "")
    ranges.require("water_density", water_density, 990.0, 1000.0, "kg/m3")
    return cylinder_water_volume * water_density * filling_density


def _require_cylinder(cylinder_water_volume: float) -> None:
    ranges.require("cylinder_water_volume", cylinder_water_volume, SMALLEST_CYLINDER, LARGEST_CYLINDER, "m3")


def _saturation(temperature: float, column: int) -> float:
    ranges.require("temperature", temperature, LOWEST_TEMPERATURE, HIGHEST_TEMPERATURE, "K")
    rows = CARBON_DIOXIDE_SATURATION
    position = (temperature - FIRST_SATURATION_TEMPERATURE) / SATURATION_TEMPERATURE_STEP
    first, a, b, c, d = four_points(position, len(rows))
    return (
        a * rows[first][column]
        + b * rows[first + 1][column]
        + c * rows[first + 2][column]
        + d * rows[first + 3][column]
    )
