"""Density of shielding gas under pressure: argon with up to 30 % carbon dioxide and 5 % oxygen, helium, nitrogen.

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
    HELIUM_COMPRESSIBILITY,
    HELIUM_MOLAR_MASS,
    LIGHT_PRESSURE_STEP,
    NITROGEN_COMPRESSIBILITY,
    NITROGEN_MOLAR_MASS,
    OXYGEN_MOLAR_MASS,
    PRESSURE_STEP,
    REFERENCE_TEMPERATURE,
    STANDARD_ATMOSPHERE,
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

CARBON_DIOXIDE = "carbon_dioxide"
# second gas -> highest fraction, molar mass, table of compressibility, pressure step of the table
_SECOND_GASES = {
    CARBON_DIOXIDE: (
        HIGHEST_CARBON_DIOXIDE_FRACTION,
        CARBON_DIOXIDE_MOLAR_MASS,
        COMPRESSIBILITY,
        PRESSURE_STEP,
    ),
    "helium": (1.0, HELIUM_MOLAR_MASS, HELIUM_COMPRESSIBILITY, LIGHT_PRESSURE_STEP),
    "nitrogen": (1.0, NITROGEN_MOLAR_MASS, NITROGEN_COMPRESSIBILITY, LIGHT_PRESSURE_STEP),
}

TYPE_CHECKING = False
if TYPE_CHECKING:
    Isotherm = tuple[list[float], float]

_BISECTIONS = 60  # halves the 301 bar below the last bit of the answer


def mean_molar_mass(second_fraction: float, oxygen_fraction: float = 0.0, second_gas: str = CARBON_DIOXIDE) -> float:
    """Return the mean molar mass of a mix: the sum of fraction * molar mass, argon being the rest.

    Parameters
    ----------
    second_fraction : float
        Fraction of the second gas by volume, [-]; 0 to 0.30, of helium and nitrogen to 1.
    oxygen_fraction : float, optional
        Oxygen by volume, [-]; 0 to 0.05.
    second_gas : str, optional
        What argon is mixed with: carbon_dioxide, helium or nitrogen.

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
    _require_mix(second_fraction, second_gas)
    ranges.require("oxygen_fraction", oxygen_fraction, 0.0, HIGHEST_OXYGEN_FRACTION, "")
    argon_fraction = 1.0 - second_fraction - oxygen_fraction
    return (
        argon_fraction * ARGON_MOLAR_MASS
        + second_fraction * _SECOND_GASES[second_gas][1]
        + oxygen_fraction * OXYGEN_MOLAR_MASS
    )


def compressibility(
    pressure_absolute: float, temperature: float, second_fraction: float, second_gas: str = CARBON_DIOXIDE
) -> float:
    """Return the compressibility factor of argon or an argon mix (empirical: plain floats in SI).

    Z = p / (molar density * R * T), by four-point interpolation over fraction, temperature and pressure.

    Parameters
    ----------
    pressure_absolute : float
        Absolute pressure, [Pa]; 0 to 300e5 + 1 atm.
    temperature : float
        Temperature of the gas, [K]; 253.15 to 323.15 (-20 to 50 degC).
    second_fraction : float
        Fraction of the second gas by volume, [-]; 0 to 0.30, of helium and nitrogen to 1.
    second_gas : str, optional
        What argon is mixed with: carbon_dioxide, helium or nitrogen.

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
    Within 0.02 % of the argon equation of state and 0.05 % of the mixture model, 0.3 % of that with helium, all
    measured by the tests;
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
    return _at_pressure(_isotherm(temperature, second_fraction, second_gas), pressure_absolute)


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
    pressure_absolute: float,
    temperature: float,
    second_fraction: float,
    oxygen_fraction: float = 0.0,
    second_gas: str = CARBON_DIOXIDE,
) -> float:
    """Return the density of argon or an argon mix (empirical: plain floats in SI).

    Parameters
    ----------
    pressure_absolute : float
        Absolute pressure, [Pa]; 0 to 300e5 + 1 atm.
    temperature : float
        Temperature of the gas, [K]; 253.15 to 323.15 (-20 to 50 degC).
    second_fraction : float
        Fraction of the second gas by volume, [-]; 0 to 0.30, of helium and nitrogen to 1.
    oxygen_fraction : float, optional
        Oxygen by volume, [-]; 0 to 0.05.
    second_gas : str, optional
        What argon is mixed with: carbon_dioxide, helium or nitrogen.

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
    molar_mass = mean_molar_mass(second_fraction, oxygen_fraction, second_gas)
    factor = compressibility(pressure_absolute, temperature, second_fraction, second_gas)
    return density_from_compressibility(pressure_absolute, temperature, molar_mass, factor)


def reference_density(second_fraction: float, oxygen_fraction: float = 0.0, second_gas: str = CARBON_DIOXIDE) -> float:
    """Return the density of argon or an argon mix at the reference state, 15 degC and 1 atm.

    Parameters
    ----------
    second_fraction : float
        Fraction of the second gas by volume, [-]; 0 to 0.30, of helium and nitrogen to 1.
    oxygen_fraction : float, optional
        Oxygen by volume, [-]; 0 to 0.05.
    second_gas : str, optional
        What argon is mixed with: carbon_dioxide, helium or nitrogen.

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
    return density(STANDARD_ATMOSPHERE, REFERENCE_TEMPERATURE, second_fraction, oxygen_fraction, second_gas)


def pressure_for_density(
    density_wanted: float, temperature: float, second_fraction: float, second_gas: str = CARBON_DIOXIDE
) -> float:
    """Return the absolute pressure at which an argon mix has a given density (empirical: plain floats in SI).

    The inverse of ``density``, by halving the interval from 0 to the highest pressure.

    Parameters
    ----------
    density_wanted : float
        Density, [kg/m3]; 0 to the density at the highest pressure.
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
    isotherm = _isotherm(temperature, second_fraction, second_gas)
    slope = mean_molar_mass(second_fraction, 0.0, second_gas) / (GAS_CONSTANT * temperature)
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


def _require_mix(second_fraction: float, second_gas: str) -> None:
    highest = _SECOND_GASES[second_gas][0]
    ranges.require("second_fraction", second_fraction, 0.0, highest, "")


def _isotherm(temperature: float, second_fraction: float, second_gas: str) -> "Isotherm":
    """Return the compressibility factors at one temperature, one for each pressure of the table, and its step."""
    _require_temperature(temperature)
    _require_mix(second_fraction, second_gas)
    _, _, table, step = _SECOND_GASES[second_gas]
    fraction_step = FRACTION_STEP if table is COMPRESSIBILITY else 1.0 / (len(table) - 1)
    temperature_step = (HIGHEST_TEMPERATURE - LOWEST_TEMPERATURE) / (len(table[0]) - 1)
    block, *block_weights = four_points(second_fraction / fraction_step, len(table))
    row, *row_weights = four_points((temperature - FIRST_TEMPERATURE) / temperature_step, len(table[0]))
    factors = [0.0] * len(table[0][0])
    for i in range(4):
        for j in range(4):
            weight = block_weights[i] * row_weights[j] / 10000.0
            cells = table[block + i][row + j]
            for column in range(len(cells)):
                factors[column] += weight * cells[column]
    return factors, step


def _at_pressure(isotherm: "Isotherm", pressure_absolute: float) -> float:
    factors, step = isotherm
    first, a, b, c, d = four_points(pressure_absolute / step, len(factors))
    return a * factors[first] + b * factors[first + 1] + c * factors[first + 2] + d * factors[first + 3]
