"""What a welding machine draws from its supply, and what an engine gives high up and on a hot day."""

from calculators import ranges, voltage_lines
from calculators.facts import supply as facts


def apparent_power(current: float, voltage: float, efficiency: float, power_factor: float) -> float:
    """Return the apparent power that a machine draws.

    apparent = current * voltage / (efficiency * power_factor)

    Parameters
    ----------
    current : float
        Welding current, [A]; 1 to 2000.
    voltage : float
        Voltage at the machine's terminals, [V]; 5 to 120.
    efficiency : float
        Power out over power in, [-]; 0.3 to 1.
    power_factor : float
        Power in over apparent power in, [-]; 0.2 to 1.

    Returns
    -------
    float
        Apparent power, [W].

    Raises
    ------
    ranges.OutOfRange
        If an input is outside its range.

    Source
    ------
    Definition of efficiency and power factor: law.

    Examples
    --------
    >>> round(apparent_power(200.0, 24.0, 0.80, 0.70))
    8571
    """
    ranges.require("current", current, 1.0, 2000.0, "A")
    ranges.require("voltage", voltage, 5.0, 120.0, "V")
    ranges.require("efficiency", efficiency, 0.3, 1.0, "")
    ranges.require("power_factor", power_factor, 0.2, 1.0, "")
    return current * voltage / (efficiency * power_factor)


def current_of_power(power: float) -> float:
    """Return the current at which the rating line takes a power (empirical: volts of a line in amperes).

    current * load_voltage(current) = power, found by halving

    Parameters
    ----------
    power : float
        Power out of the machine, [W]; 5 to 60000.

    Returns
    -------
    float
        Current, [A].

    Raises
    ------
    ranges.OutOfRange
        If the power is outside its range.

    Source
    ------
    IEC 60974-1, clause 11.2: standard.

    Examples
    --------
    >>> round(current_of_power(4800.0), 6)
    200.0
    """
    ranges.require("power", power, 5.0, 60000.0, "W")
    low, high = 0.1, 2000.0
    for _ in range(60):
        middle = 0.5 * (low + high)
        if middle * voltage_lines.load_voltage(middle) < power:
            low = middle
        else:
            high = middle
    return 0.5 * (low + high)


def derating(altitude: float, air_temperature: float, worse: bool = False) -> float:
    """Return what is left of an engine's rating high up and on a hot day (empirical: a rule of the trade).

    (1 - share per metre * altitude) * (1 - share per kelvin * (air_temperature - 25 degC)), nothing gained

    Parameters
    ----------
    altitude : float
        Height above the sea, [m]; -500 to 4500.
    air_temperature : float
        Temperature of the air, [K]; 213.15 to 343.15.
    worse : bool, optional
        Whether to take the steeper of two published rules, [-].

    Returns
    -------
    float
        Share of the rating, [-].

    Raises
    ------
    ranges.OutOfRange
        If an input is outside its range.

    Notes
    -----
    For engines without a blower. The maker's book rules.

    Source
    ------
    facts/supply.py: the usual rule from memory, the worse one published.

    Examples
    --------
    >>> round(derating(1500.0, 298.15), 3)
    0.825
    """
    ranges.require("altitude", altitude, -500.0, 4500.0, "m")
    ranges.require("air_temperature", air_temperature, 213.15, 343.15, "K")
    by_height, by_heat = facts.DERATING_WORSE if worse else facts.DERATING_USUAL
    height, heat = max(altitude, 0.0), max(air_temperature - facts.RATED_TEMPERATURE, 0.0)
    return (1.0 - by_height * height) * (1.0 - by_heat * heat)
