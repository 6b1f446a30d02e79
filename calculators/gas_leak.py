"""A leak found by the fall of a gauge: how much gas went, whatever the temperature did meanwhile."""

from calculators import ranges

_PI = 3.141592653589793


def leak_rate(
    volume: float, start_density: float, end_density: float, reference_density: float, leak_time: float
) -> float:
    """Return the gas lost over a time: volume * (start_density - end_density) / (reference_density * leak_time).

    Parameters
    ----------
    volume : float
        Inner volume of what was tested, [m3]; 1e-6 to 1.
    start_density : float
        Density of the gas at the start, [kg/m3]; 0 to 1000.
    end_density : float
        Density of the gas at the end, [kg/m3]; 0 to 1000.
    reference_density : float
        Density of the same gas at 15 degC and 1 atm, [kg/m3]; 0.05 to 10.
    leak_time : float
        Time between the two readings, [s]; 1 to 1e7.

    Returns
    -------
    float
        Leak at 15 degC and 1 atm, [m3/s]; negative where the gas seems to have grown.

    Raises
    ------
    ranges.OutOfRange
        If an input is not finite or outside its range.

    Notes
    -----
    The densities are of the real gas, each at its own temperature: a colder cylinder shows less and has lost nothing.

    Source
    ------
    Conservation of mass. Standing: published.

    Examples
    --------
    >>> round(leak_rate(0.05, 356.0, 350.0, 1.691, 43200.0) * 3.6e6, 2)
    14.78
    """
    ranges.require("volume", volume, 1.0e-6, 1.0, "m3")
    ranges.require("start_density", start_density, 0.0, 1000.0, "kg/m3")
    ranges.require("end_density", end_density, 0.0, 1000.0, "kg/m3")
    ranges.require("reference_density", reference_density, 0.05, 10.0, "kg/m3")
    ranges.require("leak_time", leak_time, 1.0, 1.0e7, "s")
    return volume * (start_density - end_density) / (reference_density * leak_time)


def hose_volume(hose_bore: float, hose_length: float) -> float:
    """Return what a hose holds inside: pi / 4 * hose_bore ** 2 * hose_length.

    Parameters
    ----------
    hose_bore : float
        Inner diameter, [m]; 0.002 to 0.02.
    hose_length : float
        Length, [m]; 0.5 to 100.

    Returns
    -------
    float
        Volume, [m3].

    Raises
    ------
    ranges.OutOfRange
        If an input is not finite or outside its range.

    Notes
    -----
    Regulator, feeder and gun hold some gas too: a leak found with the hose alone is rather more.

    Source
    ------
    Geometry. Standing: published.

    Examples
    --------
    >>> round(hose_volume(0.005, 10.0) * 1000.0, 3)
    0.196
    """
    ranges.require("hose_bore", hose_bore, 0.002, 0.02, "m")
    ranges.require("hose_length", hose_length, 0.5, 100.0, "m")
    return _PI / 4.0 * hose_bore * hose_bore * hose_length
