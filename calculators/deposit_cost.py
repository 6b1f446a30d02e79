"""What a mass of weld metal costs: its wire, its gas, its labor, its power. Money has no unit here."""

from calculators import ranges

_MOST = 1.0e9  # money for a unit of anything


def wire_cost(wire_price: float, deposition_efficiency: float, waste: float) -> float:
    """Return what the wire costs that becomes a mass of weld metal.

    wire_cost = wire_price / (deposition_efficiency * (1 - waste))

    Parameters
    ----------
    wire_price : float
        Price of a mass of wire, [1/kg]; 0 to 1e9.
    deposition_efficiency : float
        Share of the wire melted that becomes weld metal, [-]; 0.3 to 1.
    waste : float
        Share of the wire bought that is never melted, [-]; 0 to 0.5.

    Returns
    -------
    float
        Cost for a mass of weld metal, [1/kg].

    Raises
    ------
    ranges.OutOfRange
        If an input is outside its range.

    Notes
    -----
    Without waste this is the price over the efficiency, as it is usually given.

    Source
    ------
    Arithmetic: law.

    Examples
    --------
    >>> round(wire_cost(4.50, 0.90, 0.0), 9)
    5.0
    """
    ranges.require("wire_price", wire_price, 0.0, _MOST, "1/kg")
    ranges.require("deposition_efficiency", deposition_efficiency, 0.3, 1.0, "")
    ranges.require("waste", waste, 0.0, 0.5, "")
    return wire_price / (deposition_efficiency * (1.0 - waste))


def gas_cost(gas_price: float, gas_flow: float, deposition_rate: float) -> float:
    """Return what the gas costs that flows while a mass of weld metal is laid down.

    gas_cost = gas_price * gas_flow / deposition_rate

    Parameters
    ----------
    gas_price : float
        Price of a volume of gas, [1/m3]; 0 to 1e9.
    gas_flow : float
        Flow, measured as the gas is sold, [m3/s]; 0 to 0.01.
    deposition_rate : float
        Mass laid down in a time of arc, [kg/s]; 1e-6 to 1.

    Returns
    -------
    float
        Cost for a mass of weld metal, [1/kg].

    Raises
    ------
    ranges.OutOfRange
        If an input is outside its range.

    Notes
    -----
    Gas before and after the arc, and leaks, come on top.

    Source
    ------
    Arithmetic: law.

    Examples
    --------
    >>> round(gas_cost(20.0, 0.00025, 0.0005), 9)
    10.0
    """
    ranges.require("gas_price", gas_price, 0.0, _MOST, "1/m3")
    ranges.require("gas_flow", gas_flow, 0.0, 0.01, "m3/s")
    ranges.require("deposition_rate", deposition_rate, 1.0e-6, 1.0, "kg/s")
    return gas_price * gas_flow / deposition_rate


def labor_cost(labor_rate: float, deposition_rate: float, operating_factor: float) -> float:
    """Return what the working time costs in which a mass of weld metal is laid down.

    labor_cost = labor_rate / (deposition_rate * operating_factor)

    Parameters
    ----------
    labor_rate : float
        Price of a time of work, [1/s]; 0 to 1e9.
    deposition_rate : float
        Mass laid down in a time of arc, [kg/s]; 1e-6 to 1.
    operating_factor : float
        Arc time over working time, [-]; 0.01 to 1.

    Returns
    -------
    float
        Cost for a mass of weld metal, [1/kg].

    Raises
    ------
    ranges.OutOfRange
        If an input is outside its range.

    Notes
    -----
    With an operating factor of 1 it is the labor while the arc is on.

    Source
    ------
    Definition of the operating factor: see `deposition.clock_time`. Arithmetic: law.

    Examples
    --------
    >>> round(labor_cost(0.02, 0.0005, 0.4), 9)
    100.0
    """
    ranges.require("labor_rate", labor_rate, 0.0, _MOST, "1/s")
    ranges.require("deposition_rate", deposition_rate, 1.0e-6, 1.0, "kg/s")
    ranges.require("operating_factor", operating_factor, 0.01, 1.0, "")
    return labor_rate / (deposition_rate * operating_factor)


def power_cost(energy_price: float, arc_power: float, machine_efficiency: float, deposition_rate: float) -> float:
    """Return what the electricity costs that lays down a mass of weld metal.

    power_cost = energy_price * arc_power / (machine_efficiency * deposition_rate)

    Parameters
    ----------
    energy_price : float
        Price of an energy, [1/J]; 0 to 1e9.
    arc_power : float
        Volts times amperes of the arc, [W]; 0 to 100000.
    machine_efficiency : float
        Power of the arc over power drawn, [-]; 0.3 to 1.
    deposition_rate : float
        Mass laid down in a time of arc, [kg/s]; 1e-6 to 1.

    Returns
    -------
    float
        Cost for a mass of weld metal, [1/kg].

    Raises
    ------
    ranges.OutOfRange
        If an input is outside its range.

    Notes
    -----
    What the machine draws while it idles is left out.

    Source
    ------
    Arithmetic: law.

    Examples
    --------
    >>> round(power_cost(5.0e-8, 4000.0, 0.8, 0.0005), 9)
    0.5
    """
    ranges.require("energy_price", energy_price, 0.0, _MOST, "1/J")
    ranges.require("arc_power", arc_power, 0.0, 100000.0, "W")
    ranges.require("machine_efficiency", machine_efficiency, 0.3, 1.0, "")
    ranges.require("deposition_rate", deposition_rate, 1.0e-6, 1.0, "kg/s")
    return energy_price * arc_power / (machine_efficiency * deposition_rate)
