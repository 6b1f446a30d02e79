"""Gas above a reserve: how much a cylinder gives, and the pressure or the size it takes to give enough.

Pressures are gauge pressures here, in air of 1 atm. Amounts are volumes at the one reference state of the book,
15 degC and 1 atm.
"""

from calculators import ranges
from calculators.cylinder_contents import (
    LARGEST_CYLINDER,
    absolute_pressure,
    expanded_volume,
    gas_volume_in_cylinder,
    pressure_for_gas_volume,
)
from calculators.facts.gas_state import STANDARD_ATMOSPHERE
from calculators.gas_density import CARBON_DIOXIDE, HIGHEST_GAUGE_PRESSURE, density, reference_density
from calculators.liquid_carbon_dioxide import largest_charge, mass_when_liquid_is_gone


def usable_gas_volume(
    cylinder_water_volume: float,
    cylinder_pressure: float,
    reserve: float,
    temperature: float,
    second_fraction: float,
    second_gas: str = CARBON_DIOXIDE,
) -> float:
    """Return the gas a cylinder gives down to a reserve (empirical: plain floats in SI).

    V = cylinder_water_volume * (density at cylinder_pressure - density at reserve) / reference_density

    Parameters
    ----------
    cylinder_water_volume : float
        Inner volume of the cylinder, [m3]; 0.0001 to 1.
    cylinder_pressure : float
        Reading of the gauge, [Pa]; reserve to 300e5.
    reserve : float
        Reading of the gauge at which the cylinder is given back, [Pa]; 0 to 300e5.
    temperature : float
        Temperature of the gas, [K]; 253.15 to 323.15 (-20 to 50 degC).
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
        If an input is not finite or outside its range, or the pressure lies below the reserve.

    Notes
    -----
    At a reserve of 0 the gauge shows nothing and 1 atm of gas stays in the cylinder. The gas is taken to be as
    warm at the end as at the start.

    Source
    ------
    calculators/facts/gas_state.py (Tegeler, Span and Wagner 1999; Gernert 2013, EOS-CG). Standing: published.

    Examples
    --------
    >>> round(usable_gas_volume(0.05, 200e5, 14e5, 288.15, 0.0), 2)
    9.83
    """
    _require_reserve(reserve)
    ranges.require("cylinder_pressure", cylinder_pressure, reserve, HIGHEST_GAUGE_PRESSURE, "Pa")
    full = density(absolute_pressure(cylinder_pressure), temperature, second_fraction, 0.0, second_gas)
    kept = density(absolute_pressure(reserve), temperature, second_fraction, 0.0, second_gas)
    return expanded_volume(cylinder_water_volume, full - kept, reference_density(second_fraction, 0.0, second_gas))


def pressure_to_start(
    gas_volume: float,
    cylinder_water_volume: float,
    reserve: float,
    temperature: float,
    second_fraction: float,
    second_gas: str = CARBON_DIOXIDE,
) -> float:
    """Return the gauge pressure from which a cylinder gives a gas volume (empirical: plain floats in SI).

    The inverse of ``usable_gas_volume``.

    Parameters
    ----------
    gas_volume : float
        Gas to be used, at the reference state, [m3]; 0 to what the cylinder gives from 300e5 Pa.
    cylinder_water_volume : float
        Inner volume of the cylinder, [m3]; 0.0001 to 1.
    reserve : float
        Reading of the gauge at which the cylinder is given back, [Pa]; 0 to 300e5.
    temperature : float
        Temperature of the gas, [K]; 253.15 to 323.15 (-20 to 50 degC).
    second_fraction : float
        Fraction of the second gas by volume, [-]; 0 to 0.30, of helium and nitrogen to 1.
    second_gas : str, optional
        What argon is mixed with: carbon_dioxide, helium or nitrogen.

    Returns
    -------
    float
        Gauge pressure, [Pa].

    Raises
    ------
    ranges.OutOfRange
        If an input is not finite or outside its range.

    Notes
    -----
    It may lie above what the cylinder is made for: its stamp decides, not this number.

    Source
    ------
    calculators/facts/gas_state.py. Standing: published.

    Examples
    --------
    >>> round(pressure_to_start(5.0, 0.05, 14e5, 288.15, 0.0) / 1e5, 1)
    108.7
    """
    most = usable_gas_volume(
        cylinder_water_volume, HIGHEST_GAUGE_PRESSURE, reserve, temperature, second_fraction, second_gas
    )
    ranges.require("gas_volume", gas_volume, 0.0, most, "m3")
    kept = gas_volume_in_cylinder(
        cylinder_water_volume, absolute_pressure(reserve), temperature, second_fraction, second_gas
    )
    start = pressure_for_gas_volume(gas_volume + kept, cylinder_water_volume, temperature, second_fraction, second_gas)
    return max(start - STANDARD_ATMOSPHERE, reserve)


def water_volume_needed(
    gas_volume: float,
    cylinder_pressure: float,
    reserve: float,
    temperature: float,
    second_fraction: float,
    second_gas: str = CARBON_DIOXIDE,
) -> float:
    """Return the size of cylinder that gives a gas volume (empirical: plain floats in SI).

    The inverse of ``usable_gas_volume``, which is in proportion to the size.

    Parameters
    ----------
    gas_volume : float
        Gas to be used, at the reference state, [m3]; 0 to 1000.
    cylinder_pressure : float
        Reading of the gauge at the start, [Pa]; 1 Pa above the reserve to 300e5.
    reserve : float
        Reading of the gauge at which the cylinder is given back, [Pa]; 0 to 300e5.
    temperature : float
        Temperature of the gas, [K]; 253.15 to 323.15 (-20 to 50 degC).
    second_fraction : float
        Fraction of the second gas by volume, [-]; 0 to 0.30, of helium and nitrogen to 1.
    second_gas : str, optional
        What argon is mixed with: carbon_dioxide, helium or nitrogen.

    Returns
    -------
    float
        Inner volume of the cylinder, [m3].

    Raises
    ------
    ranges.OutOfRange
        If an input is not finite or outside its range, or the pressure is not above the reserve.

    Notes
    -----
    As ``usable_gas_volume``.

    Source
    ------
    calculators/facts/gas_state.py. Standing: published.

    Examples
    --------
    >>> round(water_volume_needed(9.83, 200e5, 14e5, 288.15, 0.0) * 1000.0, 1)
    50.0
    """
    ranges.require("gas_volume", gas_volume, 0.0, 1000.0, "m3")
    each = usable_gas_volume(LARGEST_CYLINDER, cylinder_pressure, reserve, temperature, second_fraction, second_gas)
    ranges.require("cylinder_pressure", cylinder_pressure, reserve + 1.0, None, "Pa")
    return gas_volume * LARGEST_CYLINDER / each


def charge_left_when_gauge_falls(temperature: float, filling_density: float = 0.68) -> float:
    """Return the share of a full charge of carbon dioxide at which the gauge begins to fall (empirical).

    Density of the saturated vapour / (filling_density * density of water): no liquid is left below it.

    Parameters
    ----------
    temperature : float
        Temperature of the liquid, [K]; 253.15 to 303.15 (-20 to 30 degC).
    filling_density : float, optional
        Mass of gas filled for each mass of water the cylinder holds, [-]; 0.1 to 0.745.

    Returns
    -------
    float
        Share of a full charge, [-].

    Raises
    ------
    ranges.OutOfRange
        If an input is not finite or outside its range.

    Notes
    -----
    The size of the cylinder cancels. 0.68 is the most the law allows in a cylinder marked for 1800 psi.

    Source
    ------
    calculators/facts/gas_state.py (Span and Wagner 1996). Standing: published. The filling density: 49 CFR
    173.304a(a)(2), table 1. Standing: law.

    Examples
    --------
    >>> round(charge_left_when_gauge_falls(293.15), 3)
    0.286
    """
    full = largest_charge(LARGEST_CYLINDER, filling_density)
    return mass_when_liquid_is_gone(LARGEST_CYLINDER, temperature) / full


def _require_reserve(reserve: float) -> None:
    ranges.require("reserve", reserve, 0.0, HIGHEST_GAUGE_PRESSURE, "Pa")
