"""Electric shock: what the volts of a welding output with no arc drive through a body."""

from calculators import ranges


def body_current(open_circuit_voltage: float, body_resistance: float) -> float:
    """Return the current through a body that bridges gun and work: I = U / R.

    Parameters
    ----------
    open_circuit_voltage : float
        Between gun and work with no arc, [V]; 1 to 500.
    body_resistance : float
        From one contact to the other, skin included, [ohm]; 100 to 1000000.

    Returns
    -------
    float
        Current, [A].

    Raises
    ------
    ranges.OutOfRange
        If an input is outside its range.

    Source
    ------
    Ohm's law: law.

    Examples
    --------
    >>> body_current(80.0, 1000.0)
    0.08
    """
    ranges.require("open_circuit_voltage", open_circuit_voltage, 1.0, 500.0, "V")
    ranges.require("body_resistance", body_resistance, 100.0, 1e6, "ohm")
    return open_circuit_voltage / body_resistance
