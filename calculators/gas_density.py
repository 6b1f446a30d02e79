"""Density of shielding gas under pressure: argon, and argon with up to 30 % carbon dioxide and 5 % oxygen.

Pressures are absolute. How much gas a cylinder holds is in cylinder_contents.py.
"""

from calculators import ranges
from calculators.facts.gas_state import (
    ARGON_MOLAR_MASS,
    CARBON_DIOXIDE_MOLAR_MASS,
    COMPRESSIBILITY,
    FIRST_TEMPERATURE,
    FRACTION_STEP,
    GAS_CONSTANT,
    OXYGEN_MOLAR_MASS,
    PRESSURE_STEP,
    REFERENCE_TEMPERATURE,
    STANDARD_ATMOSPHERE,
    TEMPERATURE_STEP,
)
from calculators.interpolation import four_points

HIGHEST_GAUGE_PRESSURE = 300.0e5  # [Pa]
HIGHEST_PRESSURE = HIGHEST_GAUGE_PRESSURE + STANDARD_ATMOSPHERE  # [Pa] absolute
LOWEST_TEMPERATURE = 253.15  # [K], -20 degC
HIGHEST_TEMPERATURE = 323.15  # [K], 50 degC

# 30 % carbon dioxide begins to condense at -30.6 degC and 95 bar, 25 % at -38 degC, 40 % already at -18 degC
# (CoolProp 8.0.0, phase envelope): these limits keep 10 K away from a cylinder that holds liquid.
HIGHEST_CARBON_DIOXIDE_FRACTION = 0.30  # [-]
HIGHEST_OXYGEN_FRACTION = 0.05  # [-]

_BISECTIONS = 60  # halves the 301 bar below the last bit of the answer


def mean_molar_mass(carbon_dioxide_fraction: float, oxygen_fraction: float = 0.0) -> float:
    """Return the mean molar mass of a mix: the sum of fraction * molar mass, argon being the rest.

    Parameters
    ----------
    carbon_dioxide_fraction : float
        Carbon dioxide by volume, [-]; 0 to 0.30.
    oxygen_fraction : float, optional
        Oxygen by volume, [-]; 0 to 0.05.

    Returns
    -------
    float
        Molar mass, [kg/mol].

    Raises
    ------
    ranges.OutOfRange
        If an input is not finite or outside its range.

    Notes
    -----
    Fractions by volume are taken as fractions by amount; at 1 atm they differ by under 0.5 % of themselves.

    Source
    ------
    Molar masses as the equations of state use them: calculators/facts/gas_state.py. Standing: published.

    Examples
    --------
    >>> round(mean_molar_mass(0.25), 6)
    0.040963
    """
    _require_mix(carbon_dioxide_fraction)
    ranges.require("oxygen_fraction", oxygen_fraction, 0.0, HIGHEST_OXYGEN_FRACTION, "")
    argon_fraction = 1.0 - carbon_dioxide_fraction - oxygen_fraction
    return (
        argon_fraction * ARGON_MOLAR_MASS
        + carbon_dioxide_fraction * CARBON_DIOXIDE_MOLAR_MASS
        + oxygen_fraction * OXYGEN_MOLAR_MASS
    )


def compressibility(pressure_absolute: float, temperature: float, carbon_dioxide_fraction: float) -> float:
    """Return the compressibility factor of argon or an argon mix (empirical: plain floats in SI).

    Z = p / (molar density * R * T), by four-point interpolation over fraction, temperature and pressure.

    Parameters
    ----------
    pressure_absolute : float
        Absolute pressure, [Pa]; 0 to 300e5 + 1 atm.
    temperature : float
        Temperature of the gas, [K]; 253.15 to 323.15 (-20 to 50 degC).
    carbon_dioxide_fraction : float
        Carbon dioxide by volume, [-]; 0 to 0.30.

    Returns
    -------
    float
        Compressibility factor, [-].

    Raises
    ------
    ranges.OutOfRange
        If an input is not finite or outside its range.

    Notes
    -----
    Within 0.02 % of the argon equation of state and 0.05 % of the mixture model, both measured by the tests;
    the argon equation itself is good to 0.03 %, the mixture model to about 1 %. Richer or colder mixes are
    refused: part of the carbon dioxide can be liquid there, and then pressure no longer tells the amount.

    Source
    ------
    calculators/facts/gas_state.py: Tegeler, Span and Wagner 1999 (argon); Gernert 2013, EOS-CG (mixes).
    Standing: published.

    Examples
    --------
    >>> round(compressibility(200e5, 288.15, 0.0), 4)
    0.9368
    >>> round(compressibility(200e5, 288.15, 0.18), 3)
    0.853
    """
    _require_pressure(pressure_absolute)
    return _at_pressure(_isotherm(temperature, carbon_dioxide_fraction), pressure_absolute)


def density_from_compressibility(
    pressure_absolute: float,
    temperature: float,
    molar_mass: float,
    compressibility_factor: float,
    gas_constant: float = GAS_CONSTANT,
) -> float:
    """Return the density of a real gas: pressure_absolute * M / (Z * R * T).

    Parameters
    ----------
    pressure_absolute : float
        Absolute pressure, [Pa]; 0 to 300e5 + 1 atm.
    temperature : float
        Temperature of the gas, [K]; 253.15 to 323.15.
    molar_mass : float
        Mean molar mass, [kg/mol]; 0.002 to 0.2.
    compressibility_factor : float
        Compressibility factor, [-]; 0.2 to 2, and 1 for the ideal gas.
    gas_constant : float, optional
        Molar gas constant, [J/(mol K)]; 8.3 to 8.4.

    Returns
    -------
    float
        Density, [kg/m3].

    Raises
    ------
    ranges.OutOfRange
        If an input is not finite or outside its range.

    Notes
    -----
    As good as the compressibility factor it is given.

    Source
    ------
    Definition of the compressibility factor; gas constant CODATA 2018. Standing: published.

    Examples
    --------
    >>> round(density_from_compressibility(101325.0, 288.15, 0.039948, 0.9993), 3)
    1.691
    """
    _require_pressure(pressure_absolute)
    _require_temperature(temperature)
    ranges.require("molar_mass", molar_mass, 0.002, 0.2, "kg/mol")
    ranges.require("compressibility_factor", compressibility_factor, 0.2, 2.0, "")
    ranges.require("gas_constant", gas_constant, 8.3, 8.4, "J/(mol K)")
    return pressure_absolute * molar_mass / (compressibility_factor * gas_constant * temperature)


def density(
    pressure_absolute: float, temperature: float, carbon_dioxide_fraction: float, oxygen_fraction: float = 0.0
) -> float:
    """Return the density of argon or an argon mix (empirical: plain floats in SI).

    Parameters
    ----------
    pressure_absolute : float
        Absolute pressure, [Pa]; 0 to 300e5 + 1 atm.
    temperature : float
        Temperature of the gas, [K]; 253.15 to 323.15 (-20 to 50 degC).
    carbon_dioxide_fraction : float
        Carbon dioxide by volume, [-]; 0 to 0.30.
    oxygen_fraction : float, optional
        Oxygen by volume, [-]; 0 to 0.05.

    Returns
    -------
    float
        Density, [kg/m3].

    Raises
    ------
    ranges.OutOfRange
        If an input is not finite or outside its range.

    Notes
    -----
    As ``compressibility``. Oxygen counts by its mass and is compressed like argon: less than 0.1 % off.

    Source
    ------
    calculators/facts/gas_state.py. Standing: published.

    Examples
    --------
    >>> round(density(200e5, 288.15, 0.0), 1)
    356.0
    """
    molar_mass = mean_molar_mass(carbon_dioxide_fraction, oxygen_fraction)
    factor = compressibility(pressure_absolute, temperature, carbon_dioxide_fraction)
    return density_from_compressibility(pressure_absolute, temperature, molar_mass, factor)


def reference_density(carbon_dioxide_fraction: float, oxygen_fraction: float = 0.0) -> float:
    """Return the density of argon or an argon mix at the reference state, 15 degC and 1 atm.

    Parameters
    ----------
    carbon_dioxide_fraction : float
        Carbon dioxide by volume, [-]; 0 to 0.30.
    oxygen_fraction : float, optional
        Oxygen by volume, [-]; 0 to 0.05.

    Returns
    -------
    float
        Density, [kg/m3].

    Raises
    ------
    ranges.OutOfRange
        If an input is not finite or outside its range.

    Notes
    -----
    As ``density``.

    Source
    ------
    calculators/facts/gas_state.py. Standing: published.

    Examples
    --------
    >>> round(reference_density(0.0), 3)
    1.691
    """
    return density(STANDARD_ATMOSPHERE, REFERENCE_TEMPERATURE, carbon_dioxide_fraction, oxygen_fraction)


def pressure_for_density(density_wanted: float, temperature: float, carbon_dioxide_fraction: float) -> float:
    """Return the absolute pressure at which an argon mix has a given density (empirical: plain floats in SI).

    The inverse of ``density``, by halving the interval from 0 to the highest pressure.

    Parameters
    ----------
    density_wanted : float
        Density, [kg/m3]; 0 to the density at the highest pressure.
    temperature : float
        Temperature of the gas, [K]; 253.15 to 323.15 (-20 to 50 degC).
    carbon_dioxide_fraction : float
        Carbon dioxide by volume, [-]; 0 to 0.30.

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
    A tight cylinder keeps its density, so its reading at another temperature is this function of ``density``
    at the first one. A real gas moves more than its absolute temperature does: 10 K of cooling from 20 degC
    takes 5 % off 200 bar of argon and almost 7 % with 25 % carbon dioxide, not 3.4 %.

    Source
    ------
    calculators/facts/gas_state.py. Standing: published.

    Examples
    --------
    >>> round(pressure_for_density(density(200e5, 293.15, 0.0), 283.15, 0.0) / 1e5, 1)
    189.6
    """
    isotherm = _isotherm(temperature, carbon_dioxide_fraction)
    slope = mean_molar_mass(carbon_dioxide_fraction) / (GAS_CONSTANT * temperature)
    most = HIGHEST_PRESSURE * slope / _at_pressure(isotherm, HIGHEST_PRESSURE)
    ranges.require("density_wanted", density_wanted, 0.0, most, "kg/m3")
    low, high = 0.0, HIGHEST_PRESSURE
    for _ in range(_BISECTIONS):
        middle = (low + high) / 2.0
        if middle * slope < density_wanted * _at_pressure(isotherm, middle):
            low = middle
        else:
            high = middle
    return (low + high) / 2.0


def _require_pressure(pressure_absolute: float) -> None:
    ranges.require("pressure_absolute", pressure_absolute, 0.0, HIGHEST_PRESSURE, "Pa")


def _require_temperature(temperature: float) -> None:
    ranges.require("temperature", temperature, LOWEST_TEMPERATURE, HIGHEST_TEMPERATURE, "K")


def _require_mix(carbon_dioxide_fraction: float) -> None:
    ranges.require("carbon_dioxide_fraction", carbon_dioxide_fraction, 0.0, HIGHEST_CARBON_DIOXIDE_FRACTION, "")


def _isotherm(temperature: float, carbon_dioxide_fraction: float) -> list[float]:
    """Return the compressibility factors at one temperature, one for each pressure of the table."""
    _require_temperature(temperature)
    _require_mix(carbon_dioxide_fraction)
    block, *block_weights = four_points(carbon_dioxide_fraction / FRACTION_STEP, len(COMPRESSIBILITY))
    row, *row_weights = four_points((temperature - FIRST_TEMPERATURE) / TEMPERATURE_STEP, len(COMPRESSIBILITY[0]))
    factors = [0.0] * len(COMPRESSIBILITY[0][0])
    for i in range(4):
        for j in range(4):
            weight = block_weights[i] * row_weights[j] / 10000.0
            cells = COMPRESSIBILITY[block + i][row + j]
            for column in range(len(cells)):
                factors[column] += weight * cells[column]
    return factors


def _at_pressure(isotherm: list[float], pressure_absolute: float) -> float:
    first, a, b, c, d = four_points(pressure_absolute / PRESSURE_STEP, len(isotherm))
    return a * isotherm[first] + b * isotherm[first + 1] + c * isotherm[first + 2] + d * isotherm[first + 3]
