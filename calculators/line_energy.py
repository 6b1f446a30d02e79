"""Energy for each length of weld: arc energy, heat input, and travel from a timed length."""

from calculators import ranges

# EN 1011-1:1998 / ISO/TR 17671-1 thermal efficiency k by process, as quoted in TWI's published answer
# "What is the difference between heat input and arc energy?" (seen). Plasma and gas tungsten share 0.6.
THERMAL_EFFICIENCY = (
    ("gas-metal-arc", 0.8),
    ("flux-cored-arc", 0.8),
    ("shielded-metal-arc", 0.8),
    ("submerged-arc", 1.0),
    ("gas-tungsten-arc", 0.6),
)


def arc_energy(voltage: float, current: float, travel_speed: float) -> float:
    """Return the electrical energy of the arc for each length of weld, without an efficiency.

    E = U * I / v

    Parameters
    ----------
    voltage : float
        Arc voltage, [V]; 5 to 60.
    current : float
        Welding current, [A]; 5 to 1000.
    travel_speed : float
        Speed along the weld, [m/s]; 0.0002 to 0.1.

    Returns
    -------
    float
        Arc energy, [J/m].

    Raises
    ------
    ranges.OutOfRange
        If an input is not finite or is outside its range.

    Notes
    -----
    Mean values of steady direct current. For pulsed current the product of the means is not the mean power:
    the instantaneous form is needed (ASME IX QW-409.1(c), ISO/TR 18491 methods B and C).

    Source
    ------
    ISO/TR 18491 method A; ASME IX QW-409.1(a) is the same with travel in in/min (x 60). Both seen quoted.

    Examples
    --------
    >>> round(arc_energy(voltage=24.0, current=200.0, travel_speed=0.006))
    800000
    """
    ranges.require("voltage", voltage, 5.0, 60.0, "V")
    ranges.require("current", current, 5.0, 1000.0, "A")
    ranges.require("travel_speed", travel_speed, 0.0002, 0.1, "m/s")
    return voltage * current / travel_speed


def heat_input(voltage: float, current: float, travel_speed: float, thermal_efficiency: float) -> float:
    """Return the heat that reaches the metal for each length of weld, on the European basis.

    Q = k * U * I / v

    Parameters
    ----------
    voltage : float
        Arc voltage, [V]; 5 to 60.
    current : float
        Welding current, [A]; 5 to 1000.
    travel_speed : float
        Speed along the weld, [m/s]; 0.0002 to 0.1.
    thermal_efficiency : float
        Share k of the arc's energy that enters the work, [-]; 0.2 to 1.

    Returns
    -------
    float
        Heat input, [J/m].

    Raises
    ------
    ranges.OutOfRange
        If an input is not finite or is outside its range.

    Notes
    -----
    k is a convention of the standard, not a measurement; measured values for gas metal arc are near 0.84.

    Source
    ------
    EN 1011-1:1998, ISO/TR 17671-1, as quoted in TWI's published answer on heat input and arc energy (seen).

    Examples
    --------
    >>> round(heat_input(voltage=24.0, current=200.0, travel_speed=0.006, thermal_efficiency=0.8))
    640000
    """
    ranges.require("thermal_efficiency", thermal_efficiency, 0.2, 1.0, "")
    return thermal_efficiency * arc_energy(voltage, current, travel_speed)


def solve_heat_input(unknown: str, values: dict[str, float]) -> float:
    """Return the unknown one of voltage, current, travel_speed, thermal_efficiency, heat_input, [coherent SI].

    Q = k * U * I / v, turned round for each of its five letters.

    Parameters
    ----------
    unknown : str
        Name of the blank.
    values : dict
        The other four by name, in the units and ranges of `heat_input`; heat_input [J/m].

    Returns
    -------
    float
        The unknown, in coherent SI.

    Raises
    ------
    ranges.OutOfRange
        If heat input is asked for and an input is outside its range.

    Source
    ------
    As `heat_input`; the turned forms are algebra.

    Examples
    --------
    >>> round(solve_heat_input("travel_speed", {"voltage": 24.0, "current": 200.0, "thermal_efficiency": 0.8,
    ...     "heat_input": 640000.0}), 6)
    0.006
    """
    if unknown == "heat_input":
        return heat_input(values["voltage"], values["current"], values["travel_speed"], values["thermal_efficiency"])
    if unknown == "travel_speed":
        return values["thermal_efficiency"] * values["voltage"] * values["current"] / values["heat_input"]
    if unknown == "current":
        return values["heat_input"] * values["travel_speed"] / (values["thermal_efficiency"] * values["voltage"])
    if unknown == "voltage":
        return values["heat_input"] * values["travel_speed"] / (values["thermal_efficiency"] * values["current"])
    return values["heat_input"] * values["travel_speed"] / (values["voltage"] * values["current"])


def solve_travel(unknown: str, values: dict[str, float]) -> float:
    """Return the unknown one of travel_speed [m/s], weld_length [m] and arc_time [s].

    v = length / time

    Parameters
    ----------
    unknown : str
        Name of the blank.
    values : dict
        The other two by name; each above 0.

    Returns
    -------
    float
        The unknown, in coherent SI.

    Raises
    ------
    ZeroDivisionError
        If a divisor is 0; the fields' ranges do not allow it.

    Source
    ------
    Definition of speed.

    Examples
    --------
    >>> solve_travel("travel_speed", {"weld_length": 0.3, "arc_time": 60.0})
    0.005
    """
    if unknown == "travel_speed":
        return values["weld_length"] / values["arc_time"]
    if unknown == "weld_length":
        return values["travel_speed"] * values["arc_time"]
    return values["weld_length"] / values["travel_speed"]


def efficiency_of(process: str) -> float:
    """Return the conventional thermal efficiency k of a process, [-].

    Parameters
    ----------
    process : str
        One of the names in THERMAL_EFFICIENCY.

    Returns
    -------
    float
        k, [-].

    Raises
    ------
    KeyError
        If the process is not in the table.

    Source
    ------
    EN 1011-1:1998, as quoted by TWI (seen).

    Examples
    --------
    >>> efficiency_of("gas-metal-arc")
    0.8
    """
    for name, efficiency in THERMAL_EFFICIENCY:
        if name == process:
            return efficiency
    raise KeyError(process)
