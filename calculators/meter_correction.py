"""Reading a variable-area flow meter whose scale was made for another gas, pressure or temperature."""

from calculators import ranges


def meter_factor(
    scale_density: float,
    gas_density: float,
    scale_pressure: float,
    inlet_pressure: float,
    scale_temperature: float,
    gas_temperature: float,
) -> float:
    """Return the true flow over the reading: sqrt(rho_scale / rho_gas * p / p_scale * T_scale / T).

    Parameters
    ----------
    scale_density : float
        Density of the gas that the scale was made for, at 15 degC and 1 atm, [kg/m3]; 0.05 to 10.
    gas_density : float
        Density of the gas that flows, at the same state, [kg/m3]; 0.05 to 10.
    scale_pressure : float
        Absolute pressure in the tube that the scale was made for, [Pa]; 5e4 to 3e6.
    inlet_pressure : float
        Absolute pressure in the tube now, [Pa]; 5e4 to 3e6.
    scale_temperature : float
        Temperature that the scale was made for, [K]; 230 to 340.
    gas_temperature : float
        Temperature of the gas now, [K]; 230 to 340.

    Returns
    -------
    float
        Factor on the reading, [-], both flows counted at one reference state.

    Raises
    ------
    ranges.OutOfRange
        If an input is not finite or outside its range.

    Notes
    -----
    The float weighs the same and takes the same push, so density times speed squared stays. Good to about 10 %;
    a ball float feels viscosity too.

    Source
    ------
    Theory of the variable-area meter; a published example and table of gas factors in the tests. Standing: published.

    Examples
    --------
    >>> round(meter_factor(1.69075, 1.87185, 4.5e5, 4.5e5, 293.15, 293.15), 4)
    0.9504
    """
    for name, density in (("scale_density", scale_density), ("gas_density", gas_density)):
        ranges.require(name, density, 0.05, 10.0, "kg/m3")
    for name, pressure in (("scale_pressure", scale_pressure), ("inlet_pressure", inlet_pressure)):
        ranges.require(name, pressure, 5.0e4, 3.0e6, "Pa")
    for name, temperature in (("scale_temperature", scale_temperature), ("gas_temperature", gas_temperature)):
        ranges.require(name, temperature, 230.0, 340.0, "K")
    square = scale_density / gas_density * (inlet_pressure / scale_pressure) * (scale_temperature / gas_temperature)
    return square**0.5
