"""How much gas a cylinder of compressed argon or argon mix holds, and how long it lasts.

Amounts are volumes at the one reference state of the app, 15 degC and 1 atm. Up to 5 % oxygen counts as argon
here: that moves the amount by less than 0.1 %. Carbon dioxide alone is a liquid in its cylinder: see
liquid_carbon_dioxide.py.
"""

from calculators import ranges
from calculators.facts.gas_state import REFERENCE_TEMPERATURE, STANDARD_ATMOSPHERE
from calculators.gas_density import (
    CARBON_DIOXIDE,
    HIGHEST_GAUGE_PRESSURE,
    HIGHEST_PRESSURE,
    HIGHEST_TEMPERATURE,
    LOWEST_TEMPERATURE,
    density,
    pressure_for_density,
    reference_density,
)

SMALLEST_CYLINDER, LARGEST_CYLINDER = 1.0e-4, 1.0  # [m3], a tenth of a litre to a bundle of cylinders
_LARGEST_GAS_VOLUME = 1000.0  # [m3]


def absolute_pressure(gauge_pressure: float, atmospheric_pressure: float = STANDARD_ATMOSPHERE) -> float:
    """Return the absolute pressure behind a gauge reading: gauge_pressure + atmospheric_pressure.

    Parameters
    ----------
    gauge_pressure : float
        Reading of the gauge, [Pa]; 0 to 300e5.
    atmospheric_pressure : float, optional
        Pressure of the air around the gauge, [Pa]; 50e3 to 110e3, 1 atm if not given.

    Returns
    -------
    float
        Absolute pressure, [Pa].

    Raises
    ------
    ranges.OutOfRange
        If an input is not finite or outside its range.

    Notes
    -----
    At 3000 m the air is 0.3 bar lighter: nothing beside a full cylinder, 5 % of a remainder at 5 bar.

    Source
    ------
    Definition of gauge pressure. Standing: common practice.

    Examples
    --------
    >>> absolute_pressure(200e5)
    20101325.0
    """
    ranges.require("gauge_pressure", gauge_pressure, 0.0, HIGHEST_GAUGE_PRESSURE, "Pa")
    ranges.require("atmospheric_pressure", atmospheric_pressure, 50.0e3, 110.0e3, "Pa")
    return gauge_pressure + atmospheric_pressure


def expanded_volume(cylinder_water_volume: float, density_in_cylinder: float, density_at_reference: float) -> float:
    """Return the volume at the reference state of the gas in a cylinder.

    V = cylinder_water_volume * density_in_cylinder / density_at_reference

    Parameters
    ----------
    cylinder_water_volume : float
        Inner volume of the cylinder, [m3]; 0.0001 to 1.
    density_in_cylinder : float
        Density of the gas in the cylinder, [kg/m3]; 0 to 1000.
    density_at_reference : float
        Density of the same gas at the reference state, [kg/m3]; 0.05 to 10.

    Returns
    -------
    float
        Gas volume at the reference state, [m3].

    Raises
    ------
    ranges.OutOfRange
        If an input is not finite or outside its range.

    Notes
    -----
    All the gas, the last 1 atm included, which never leaves the cylinder by itself.

    Source
    ------
    Conservation of mass. Standing: common practice.

    Examples
    --------
    >>> round(expanded_volume(0.05, 356.0, 1.6908), 2)
    10.53
    """
    _require_cylinder(cylinder_water_volume)
    ranges.require("density_in_cylinder", density_in_cylinder, 0.0, 1000.0, "kg/m3")
    ranges.require("density_at_reference", density_at_reference, 0.05, 10.0, "kg/m3")
    return cylinder_water_volume * density_in_cylinder / density_at_reference


def gas_volume_in_cylinder(
    cylinder_water_volume: float,
    pressure_absolute: float,
    temperature: float,
    second_fraction: float,
    second_gas: str = CARBON_DIOXIDE,
) -> float:
    """Return the gas in a cylinder as a volume at the reference state (empirical: plain floats in SI).

    V = cylinder_water_volume * density / reference_density, both of the real gas.

    Parameters
    ----------
    cylinder_water_volume : float
        Inner volume of the cylinder, [m3]; 0.0001 to 1.
    pressure_absolute : float
        Absolute pressure, [Pa]; 0 to 300e5 + 1 atm.
    temperature : float
        Temperature of the gas, not of the air, [K]; 253.15 to 323.15 (-20 to 50 degC).
    second_fraction : float
        Fraction of the second gas by volume, [-]; 0 to 0.30, of helium and nitrogen to 1.
    second_gas : str, optional
        What argon is mixed with: carbon_dioxide, helium or nitrogen.

    Returns
    -------
    float
        Gas volume at the reference state, [m3].

    Raises
    ------
    ranges.OutOfRange
        If an input is not finite or outside its range.

    Notes
    -----
    The gauge decides how sure this is: one of class 2.5 over 315 bar may be 8 bar out anywhere on its scale
    (2.5 % of full scale, EN 837-1, from memory). What can be used is this less the same function at the
    pressure kept in reserve.

    Source
    ------
    calculators/facts/gas_state.py (Tegeler, Span and Wagner 1999; Gernert 2013, EOS-CG). Standing: published.

    Examples
    --------
    >>> round(gas_volume_in_cylinder(0.05, 200e5, 288.15, 0.0), 2)
    10.53
    """
    return expanded_volume(
        cylinder_water_volume,
        density(pressure_absolute, temperature, second_fraction, 0.0, second_gas),
        reference_density(second_fraction, 0.0, second_gas),
    )


def ideal_gas_volume_in_cylinder(
    cylinder_water_volume: float,
    pressure_absolute: float,
    temperature: float,
    reference_pressure: float = STANDARD_ATMOSPHERE,
    reference_temperature: float = REFERENCE_TEMPERATURE,
) -> float:
    """Return what the ideal gas law says a cylinder holds: the figure to compare with, not to trust.

    V = cylinder_water_volume * (p / p_reference) * (T_reference / T)

    Parameters
    ----------
    cylinder_water_volume : float
        Inner volume of the cylinder, [m3]; 0.0001 to 1.
    pressure_absolute : float
        Absolute pressure, [Pa]; 0 to 300e5 + 1 atm.
    temperature : float
        Temperature of the gas, [K]; 253.15 to 323.15 (-20 to 50 degC).
    reference_pressure : float, optional
        Pressure of the reference state, [Pa]; 90e3 to 110e3, 1 atm if not given.
    reference_temperature : float, optional
        Temperature of the reference state, [K]; 273.15 to 298.15, 288.15 if not given.

    Returns
    -------
    float
        Gas volume at the reference state, [m3].

    Raises
    ------
    ranges.OutOfRange
        If an input is not finite or outside its range.

    Notes
    -----
    At 200 bar and 15 degC it is 6 % below the real gas for argon, 18 % with 25 % carbon dioxide.

    Source
    ------
    Ideal gas law. Standing: published.

    Examples
    --------
    >>> round(ideal_gas_volume_in_cylinder(0.05, 200e5, 288.15), 2)
    9.87
    """
    _require_cylinder(cylinder_water_volume)
    ranges.require("pressure_absolute", pressure_absolute, 0.0, HIGHEST_PRESSURE, "Pa")
    ranges.require("temperature", temperature, LOWEST_TEMPERATURE, HIGHEST_TEMPERATURE, "K")
    ranges.require("reference_pressure", reference_pressure, 90.0e3, 110.0e3, "Pa")
    ranges.require("reference_temperature", reference_temperature, 273.15, 298.15, "K")
    return cylinder_water_volume * (pressure_absolute / reference_pressure) * (reference_temperature / temperature)


def pressure_for_gas_volume(
    gas_volume: float,
    cylinder_water_volume: float,
    temperature: float,
    second_fraction: float,
    second_gas: str = CARBON_DIOXIDE,
) -> float:
    """Return the absolute pressure at which a cylinder holds a gas volume (empirical: plain floats in SI).

    The inverse of ``gas_volume_in_cylinder``.

    Parameters
    ----------
    gas_volume : float
        Gas volume at the reference state, [m3]; 0 to what the cylinder holds at 300e5 Pa gauge.
    cylinder_water_volume : float
        Inner volume of the cylinder, [m3]; 0.0001 to 1.
    temperature : float
        Temperature of the gas, [K]; 253.15 to 323.15 (-20 to 50 degC).
    second_fraction : float
        Fraction of the second gas by volume, [-]; 0 to 0.30, of helium and nitrogen to 1.
    second_gas : str, optional
        What argon is mixed with: carbon_dioxide, helium or nitrogen.

    Returns
    -------
    float
        Absolute pressure, [Pa].

    Raises
    ------
    ranges.OutOfRange
        If an input is not finite or outside its range.

    Notes
    -----
    A pressure found here may be above what the cylinder is made for: its stamp decides, not this number.

    Source
    ------
    calculators/facts/gas_state.py. Standing: published.

    Examples
    --------
    >>> round(pressure_for_gas_volume(5.0, 0.05, 288.15, 0.0) / 1e5, 1)
    95.9
    """
    most = gas_volume_in_cylinder(cylinder_water_volume, HIGHEST_PRESSURE, temperature, second_fraction, second_gas)
    ranges.require("gas_volume", gas_volume, 0.0, most, "m3")
    density_wanted = gas_volume * reference_density(second_fraction, 0.0, second_gas) / cylinder_water_volume
    return pressure_for_density(density_wanted, temperature, second_fraction, second_gas)


def arc_time(gas_volume: float, gas_flow: float) -> float:
    """Return how long a gas volume lasts at a steady flow: gas_volume / gas_flow.

    Parameters
    ----------
    gas_volume : float
        Gas volume at the reference state, [m3]; 0 to 1000.
    gas_flow : float
        Flow at the same reference state, [m3/s]; 1e-6 to 0.01 (0.06 to 600 L/min).

    Returns
    -------
    float
        Time with the gas flowing, [s].

    Raises
    ------
    ranges.OutOfRange
        If an input is not finite or outside its range.

    Notes
    -----
    Gas flows before and after the arc too, and a hose blows its store out at every start: real arc time is
    shorter.

    Source
    ------
    Definition of volume flow. Standing: common practice.

    Examples
    --------
    >>> round(arc_time(6.0, 0.25e-3))
    24000
    """
    ranges.require("gas_volume", gas_volume, 0.0, _LARGEST_GAS_VOLUME, "m3")
    ranges.require("gas_flow", gas_flow, 1.0e-6, 0.01, "m3/s")
    return gas_volume / gas_flow


def _require_cylinder(cylinder_water_volume: float) -> None:
    ranges.require("cylinder_water_volume", cylinder_water_volume, SMALLEST_CYLINDER, LARGEST_CYLINDER, "m3")
