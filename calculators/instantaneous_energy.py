"""Arc energy from a meter that shows instantaneous energy or power: the only way for pulsed and controlled waveforms."""

from calculators import ranges


def arc_energy_of_power(arc_power: float, travel_speed: float) -> float:
    """Return the arc energy for each length of weld from instantaneous power.

    E = IP / v

    Parameters
    ----------
    arc_power : float
        Mean of the instantaneous power, as such a meter shows it, [W]; 25 to 60000.
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
    Not the product of mean voltage and mean current: for a pulsed arc that is not the mean of their product.

    Source
    ------
    ASME IX QW-409.1(c)(2); ISO/TR 18491:2015 method C. Standards, seen quoted.

    Examples
    --------
    >>> round(arc_energy_of_power(arc_power=5000.0, travel_speed=0.25 * 0.0254) * 0.0254)
    20000
    """
    ranges.require("arc_power", arc_power, 25.0, 60000.0, "W")
    ranges.require("travel_speed", travel_speed, 0.0002, 0.1, "m/s")
    return arc_power / travel_speed


def arc_energy_of_energy(instantaneous_energy: float, weld_length: float) -> float:
    """Return the arc energy for each length of weld from instantaneous energy.

    E = IE / L

    Parameters
    ----------
    instantaneous_energy : float
        Instantaneous energy summed from arc on to arc off, as such a meter shows it, [J]; 1 to 1000000000.
    weld_length : float
        Length of weld made in that time, [m]; 0.001 to 1000.

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
    Neither travel speed nor time comes in: the meter has counted them already.

    Source
    ------
    ASME IX QW-409.1(c)(1); ISO/TR 18491:2015 method B. Standards, seen quoted.

    Examples
    --------
    >>> round(arc_energy_of_energy(instantaneous_energy=60000.0, weld_length=3 * 0.0254) * 0.0254)
    20000
    """
    ranges.require("instantaneous_energy", instantaneous_energy, 1.0, 1e9, "J")
    ranges.require("weld_length", weld_length, 0.001, 1000.0, "m")
    return instantaneous_energy / weld_length


def solve_power(unknown: str, values: dict[str, float]) -> float:
    """Return the unknown one of arc_power, travel_speed, thermal_efficiency, heat_input, [coherent SI].

    Q = k * IP / v, turned round for each of its letters.

    Parameters
    ----------
    unknown : str
        Name of the blank.
    values : dict
        The others by name, in the units and ranges of `arc_energy_of_power`; heat_input [J/m].

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
    As `arc_energy_of_power`, times k (ISO/TR 17671-1); the turned forms are algebra.

    Examples
    --------
    >>> solve_power("arc_power", {"travel_speed": 0.005, "thermal_efficiency": 0.8, "heat_input": 800000.0})
    5000.0
    """
    if unknown == "heat_input":
        return values["thermal_efficiency"] * arc_energy_of_power(values["arc_power"], values["travel_speed"])
    if unknown == "arc_power":
        return values["heat_input"] * values["travel_speed"] / values["thermal_efficiency"]
    if unknown == "travel_speed":
        return values["thermal_efficiency"] * values["arc_power"] / values["heat_input"]
    return values["heat_input"] * values["travel_speed"] / values["arc_power"]


def solve_energy(unknown: str, values: dict[str, float]) -> float:
    """Return the unknown one of instantaneous_energy, weld_length, thermal_efficiency, heat_input, [coherent SI].

    Q = k * IE / L, turned round for each of its letters.

    Parameters
    ----------
    unknown : str
        Name of the blank.
    values : dict
        The others by name, in the units and ranges of `arc_energy_of_energy`; heat_input [J/m].

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
    As `arc_energy_of_energy`, times k (ISO/TR 17671-1); the turned forms are algebra.

    Examples
    --------
    >>> solve_energy("weld_length", {"instantaneous_energy": 60000.0, "thermal_efficiency": 0.8, "heat_input": 640000.0})
    0.075
    """
    if unknown == "heat_input":
        return values["thermal_efficiency"] * arc_energy_of_energy(
            values["instantaneous_energy"], values["weld_length"]
        )
    if unknown == "instantaneous_energy":
        return values["heat_input"] * values["weld_length"] / values["thermal_efficiency"]
    if unknown == "weld_length":
        return values["thermal_efficiency"] * values["instantaneous_energy"] / values["heat_input"]
    return values["heat_input"] * values["weld_length"] / values["instantaneous_energy"]
