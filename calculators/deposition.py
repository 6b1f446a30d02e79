"""From a cross-section to wire, time and gas: what a weld weighs and what it takes. Travel is in bead_travel.py."""

import math

from calculators import numerals, ranges
from calculators.facts import deposition as facts

_QUARTER_PI = math.pi / 4.0


def deposition_efficiency(wire_and_gas: str) -> tuple[float, float]:
    """Return the share of the wire melted that becomes weld metal, and how sure it is.

    Empirical: a table.

    Parameters
    ----------
    wire_and_gas : str
        One of the names in `facts.deposition.DEPOSITION_EFFICIENCY`, [-].

    Returns
    -------
    tuple of float
        Share [-] and the half-width of its band [-].

    Raises
    ------
    ValueError
        If there is no such wire and gas in the table.

    Notes
    -----
    An average over ordinary settings; spatter at a bad setting costs more.

    Source
    ------
    facts/deposition.py, DEPOSITION_EFFICIENCY: from memory; second route named there.

    Examples
    --------
    >>> deposition_efficiency("solid-carbon-dioxide")
    (0.93, 0.03)
    """
    for name, share, half_band in facts.DEPOSITION_EFFICIENCY:
        if name == wire_and_gas:
            return share, half_band
    raise ValueError("no deposition efficiency for " + wire_and_gas)


def deposit_per_length(weld_area: float, density: float) -> float:
    """Return the mass of weld metal in a length of weld.

    deposit_per_length = weld_area * density

    Parameters
    ----------
    weld_area : float
        Cross-section of what is laid down, [m2]; 1e-8 to 0.1.
    density : float
        Density of the metal, [kg/m3]; 1000 to 20000.

    Returns
    -------
    float
        Mass per length, [kg/m].

    Raises
    ------
    ranges.OutOfRange
        If an input is outside its range.

    Notes
    -----
    What is added, not what is melted: the fused edges of the plates do not come from the wire.

    Source
    ------
    TWI Job Knowledge 95, "Calculating weld volume and weight" (July 2008); published, seen.

    Examples
    --------
    >>> round(deposit_per_length(18.0e-6, 7850.0), 4)
    0.1413
    """
    ranges.require("weld_area", weld_area, 1e-8, 0.1, "m2")
    ranges.require("density", density, 1000.0, 20000.0, "kg/m3")
    return weld_area * density


def deposition_rate(
    wire_feed_speed: float, wire_diameter: float, density: float, deposition_efficiency: float
) -> float:
    """Return the mass of weld metal laid down in a time of arc.

    deposition_rate = wire_feed_speed * pi / 4 * wire_diameter^2 * density * deposition_efficiency

    Parameters
    ----------
    wire_feed_speed : float
        Wire feed speed, [m/s]; 0.005 to 1.
    wire_diameter : float
        Wire diameter, [m]; 0.0003 to 0.006.
    density : float
        Density of the metal, [kg/m3]; 1000 to 20000.
    deposition_efficiency : float
        Share of the wire that becomes weld metal, [-]; 0.3 to 1.

    Returns
    -------
    float
        Mass per time, [kg/s].

    Raises
    ------
    ranges.OutOfRange
        If an input is outside its range.

    Notes
    -----
    Solid wire. In inches, pounds and hours the constant for steel is 13.35; handbooks print 13.1, which is 2 % low.

    Source
    ------
    Welding Design, "Pre-Calculating Wire-Feed Speed, Travel Speed, and Voltage" (November 2009): deposition rate =
    13.1 D^2 WFS EE; published, seen. Geometry: law.

    Examples
    --------
    >>> round(deposition_rate(8.0 / 60.0, 1.2e-3, 7850.0, 0.95) * 3600, 3)
    4.048
    """
    ranges.require("wire_feed_speed", wire_feed_speed, 0.005, 1.0, "m/s")
    ranges.require("wire_diameter", wire_diameter, 0.0003, 0.006, "m")
    ranges.require("density", density, 1000.0, 20000.0, "kg/m3")
    ranges.require("deposition_efficiency", deposition_efficiency, 0.3, 1.0, "")
    return wire_feed_speed * _QUARTER_PI * wire_diameter * wire_diameter * density * deposition_efficiency


def wire_melted(deposit_mass: float, deposition_efficiency: float) -> float:
    """Return the mass of wire that has to melt for a mass of weld metal.

    wire_melted = deposit_mass / deposition_efficiency

    Parameters
    ----------
    deposit_mass : float
        Mass of weld metal, [kg]; 0 to 1e7.
    deposition_efficiency : float
        Share of the wire that becomes weld metal, [-]; 0.3 to 1.

    Returns
    -------
    float
        Mass, [kg]. What to buy is more: `wire_mass.needed` adds trimmings.

    Raises
    ------
    ranges.OutOfRange
        If an input is outside its range.

    Notes
    -----
    The published P = W L / E.

    Source
    ------
    Definition of deposition efficiency (AWS A3.0): weld metal deposited over filler metal melted; from memory.

    Examples
    --------
    >>> round(wire_melted(1.92, 0.96), 6)
    2.0
    """
    ranges.require("deposit_mass", deposit_mass, 0.0, 1e7, "kg")
    ranges.require("deposition_efficiency", deposition_efficiency, 0.3, 1.0, "")
    return deposit_mass / deposition_efficiency


def passes(weld_area: float, largest_bead: float) -> int:
    """Return how many passes fill a weld when none may be larger than the largest bead.

    passes = weld_area / largest_bead, rounded up

    Parameters
    ----------
    weld_area : float
        Cross-section of what is laid down, [m2]; 1e-8 to 0.1.
    largest_bead : float
        Cross-section of the largest bead that is run, [m2]; 1e-7 to 0.01.

    Returns
    -------
    int
        Passes, a plain count [-].

    Raises
    ------
    ranges.OutOfRange
        If an input is outside its range.

    Notes
    -----
    By metal alone: a wide groove may need a split layer all the same, a root its own small bead.

    Source
    ------
    Arithmetic: law.

    Examples
    --------
    >>> passes(90.0e-6, 30.0e-6), passes(91.0e-6, 30.0e-6)
    (3, 4)
    """
    ranges.require("weld_area", weld_area, 1e-8, 0.1, "m2")
    ranges.require("largest_bead", largest_bead, 1e-7, 0.01, "m2")
    return math.ceil(numerals.settle(weld_area / largest_bead))


def arc_time(deposit_mass: float, deposition_rate: float) -> float:
    """Return how long the arc has to burn for a mass of weld metal.

    arc_time = deposit_mass / deposition_rate

    Parameters
    ----------
    deposit_mass : float
        Mass of weld metal, [kg]; 0 to 1e7.
    deposition_rate : float
        Mass laid down in a time of arc, [kg/s]; 1e-7 to 1.

    Returns
    -------
    float
        Time with the arc on, [s].

    Raises
    ------
    ranges.OutOfRange
        If an input is outside its range.

    Notes
    -----
    The day is longer: `clock_time`.

    Source
    ------
    Definition of a rate: law.

    Examples
    --------
    >>> arc_time(2.0, 0.001)
    2000.0
    """
    ranges.require("deposit_mass", deposit_mass, 0.0, 1e7, "kg")
    ranges.require("deposition_rate", deposition_rate, 1e-7, 1.0, "kg/s")
    return deposit_mass / deposition_rate


def clock_time(arc_time: float, operating_factor: float) -> float:
    """Return how long a job takes by the clock.

    clock_time = arc_time / operating_factor

    Parameters
    ----------
    arc_time : float
        Time with the arc on, [s]; 0 to 1e9.
    operating_factor : float
        Arc time over working time, [-]; 0.01 to 1. Usual in repair: `facts.wires.OPERATING_FACTOR`.

    Returns
    -------
    float
        Time, [s].

    Raises
    ------
    ranges.OutOfRange
        If an input is outside its range.

    Notes
    -----
    Fitting, grinding, moving and waiting are the rest.

    Source
    ------
    Definition of the operating factor: Handbook of Structural Steel Connection Design and Details, "Welded Joint
    Design and Production": arc-on time over the whole; published, seen. It gives 40 % semiautomatic in a shop, much
    less on site.

    Examples
    --------
    >>> round(clock_time(900.0, 0.15) / 60)
    100
    """
    ranges.require("arc_time", arc_time, 0.0, 1e9, "s")
    ranges.require("operating_factor", operating_factor, 0.01, 1.0, "")
    return arc_time / operating_factor


def gas_used(gas_flow: float, arc_time: float) -> float:
    """Return the gas that flows while the arc is on.

    gas_used = gas_flow * arc_time

    Parameters
    ----------
    gas_flow : float
        Flow, at the reference state of the flowmeter, [m3/s]; 0 to 0.01.
    arc_time : float
        Time with the arc on, [s]; 0 to 1e9.

    Returns
    -------
    float
        Volume at the same state, [m3].

    Raises
    ------
    ranges.OutOfRange
        If an input is outside its range.

    Notes
    -----
    Flow before and after the arc, the surge when the valve opens and leaks come on top.

    Source
    ------
    Definition of flow: law.

    Examples
    --------
    >>> round(gas_used(15.0 / 60000.0, 600.0) * 1000)
    150
    """
    ranges.require("gas_flow", gas_flow, 0.0, 0.01, "m3/s")
    ranges.require("arc_time", arc_time, 0.0, 1e9, "s")
    return gas_flow * arc_time
