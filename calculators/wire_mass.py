"""What wire weighs, how long it is, how long it lasts, and how much is left on a spool."""

import math

from calculators import ranges
from calculators.facts import densities

_QUARTER_PI = math.pi / 4.0


def density(wire_material: str, filler_alloy: str = "") -> tuple[float, float]:
    """Return the density of a solid wire and how sure it is.

    Empirical: a table.

    Parameters
    ----------
    wire_material : str
        `mild-steel`, `stainless` or `aluminum`, [-].
    filler_alloy : str, optional
        For aluminum `4043`, `5356` or `5183`, empty if not known, [-]; empty for steels.

    Returns
    -------
    tuple of float
        Density [kg/m3] and the half-width of its band [-].

    Raises
    ------
    ValueError
        If there is no such wire in the table.

    Notes
    -----
    Solid wire. Cored wire is lighter than its outside by what its fill leaves empty: its label or a scale has
    to say.

    Source
    ------
    facts/densities.py, WIRES, where the source of each stands.

    Examples
    --------
    >>> density("mild-steel")
    (7850.0, 0.005)
    """
    for material, alloy, value, half_band in densities.WIRES:
        if material == wire_material and alloy == filler_alloy:
            return value, half_band
    raise ValueError("no density for wire_material " + wire_material + ", filler_alloy " + filler_alloy)


def mass_per_length(wire_diameter: float, density: float) -> float:
    """Return the mass of a metre of round wire.

    mass_per_length = density * pi / 4 * wire_diameter^2

    Parameters
    ----------
    wire_diameter : float
        Wire diameter, [m]; 0.0003 to 0.006.
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
    Wire is made to a tolerance: 0.001 in of 0.045 in is 4.4 % of the mass (`facts.wires.LENGTH_BAND`).

    Source
    ------
    Geometry: law.

    Examples
    --------
    >>> round(mass_per_length(1.0e-3, 7850.0) * 1000, 3)
    6.165
    """
    ranges.require("wire_diameter", wire_diameter, 0.0003, 0.006, "m")
    ranges.require("density", density, 1000.0, 20000.0, "kg/m3")
    return density * _QUARTER_PI * wire_diameter * wire_diameter


def wire_length(wire_mass: float, wire_diameter: float, density: float) -> float:
    """Return the length of a mass of round wire.

    wire_length = wire_mass / mass_per_length

    Parameters
    ----------
    wire_mass : float
        Mass of wire alone, without spool, [kg]; 0 to 2000.
    wire_diameter : float
        Wire diameter, [m]; 0.0003 to 0.006.
    density : float
        Density of the metal, [kg/m3]; 1000 to 20000.

    Returns
    -------
    float
        Length, [m].

    Raises
    ------
    ranges.OutOfRange
        If an input is outside its range.

    Notes
    -----
    A spool is sold by the mass of its wire; the spool itself has to be weighed empty or taken from its label.

    Source
    ------
    Geometry: law.

    Examples
    --------
    >>> round(wire_length(1.0, 1.2e-3, 7850.0), 1)
    112.6
    """
    ranges.require("wire_mass", wire_mass, 0.0, 2000.0, "kg")
    return wire_mass / mass_per_length(wire_diameter, density)


def wire_mass(wire_length: float, wire_diameter: float, density: float) -> float:
    """Return the mass of a length of round wire.

    wire_mass = wire_length * mass_per_length

    Parameters
    ----------
    wire_length : float
        Length of wire, [m]; 0 to 1e6.
    wire_diameter : float
        Wire diameter, [m]; 0.0003 to 0.006.
    density : float
        Density of the metal, [kg/m3]; 1000 to 20000.

    Returns
    -------
    float
        Mass, [kg].

    Raises
    ------
    ranges.OutOfRange
        If an input is outside its range.

    Notes
    -----
    Wire consumed, not weld metal deposited: spatter comes off that.

    Source
    ------
    Geometry: law.

    Examples
    --------
    >>> round(wire_mass(100.0, 1.2e-3, 7850.0), 3)
    0.888
    """
    ranges.require("wire_length", wire_length, 0.0, 1e6, "m")
    return wire_length * mass_per_length(wire_diameter, density)


def usable(amount: float, waste: float) -> float:
    """Return what of a mass or a length of wire reaches the arc.

    usable = amount * (1 - waste)

    Parameters
    ----------
    amount : float
        Mass or length of wire, [kg or m]; the result is of the same kind.
    waste : float
        Share trimmed off, left in the liner or thrown away, [-]; 0 to 0.5. Usual: `facts.wires.WASTE`.

    Returns
    -------
    float
        What is left to burn, [kg or m].

    Raises
    ------
    ranges.OutOfRange
        If the waste is outside its range.

    Notes
    -----
    A thin spool wastes more: every change leaves the wire between rolls and contact tip.

    Source
    ------
    Arithmetic: law. The usual waste: common practice.

    Examples
    --------
    >>> usable(100.0, 0.05)
    95.0
    """
    ranges.require("waste", waste, 0.0, 0.5, "")
    return amount * (1.0 - waste)


def needed(amount: float, waste: float) -> float:
    """Return how much wire to have so that a mass or a length of it reaches the arc.

    needed = amount / (1 - waste)

    Parameters
    ----------
    amount : float
        Mass or length of wire to burn, [kg or m]; the result is of the same kind.
    waste : float
        Share trimmed off, left in the liner or thrown away, [-]; 0 to 0.5. Usual: `facts.wires.WASTE`.

    Returns
    -------
    float
        What to have on the truck, [kg or m].

    Raises
    ------
    ranges.OutOfRange
        If the waste is outside its range.

    Notes
    -----
    The inverse of `usable`.

    Source
    ------
    Arithmetic: law. The usual waste: common practice.

    Examples
    --------
    >>> needed(95.0, 0.05)
    100.0
    """
    ranges.require("waste", waste, 0.0, 0.5, "")
    return amount / (1.0 - waste)


def arc_time(wire_length: float, wire_feed_speed: float) -> float:
    """Return how long a length of wire lasts with the arc on.

    arc_time = wire_length / wire_feed_speed

    Parameters
    ----------
    wire_length : float
        Length of wire, [m]; 0 to 1e6.
    wire_feed_speed : float
        Wire feed speed, [m/s]; 0.005 to 1.

    Returns
    -------
    float
        Arc time, [s]. The day is longer: divide by the operating factor.

    Raises
    ------
    ranges.OutOfRange
        If an input is outside its range.

    Notes
    -----
    The feed of the wire itself, not the number on the dial.

    Source
    ------
    Definition of speed: law.

    Examples
    --------
    >>> round(arc_time(1000.0, 8.0 / 60.0) / 60)
    125
    """
    ranges.require("wire_length", wire_length, 0.0, 1e6, "m")
    ranges.require("wire_feed_speed", wire_feed_speed, 0.005, 1.0, "m/s")
    return wire_length / wire_feed_speed


def length_fed(wire_feed_speed: float, arc_time: float) -> float:
    """Return the length of wire that a time of arc takes.

    length_fed = wire_feed_speed * arc_time

    Parameters
    ----------
    wire_feed_speed : float
        Wire feed speed, [m/s]; 0.005 to 1.
    arc_time : float
        Time with the arc on, [s]; 0 to 4e6.

    Returns
    -------
    float
        Length, [m].

    Raises
    ------
    ranges.OutOfRange
        If an input is outside its range.

    Notes
    -----
    Before waste: see `needed`.

    Source
    ------
    Definition of speed: law.

    Examples
    --------
    >>> round(length_fed(8.0 / 60.0, 600.0), 6)
    80.0
    """
    ranges.require("wire_feed_speed", wire_feed_speed, 0.005, 1.0, "m/s")
    ranges.require("arc_time", arc_time, 0.0, 4e6, "s")
    return wire_feed_speed * arc_time


def feed_measured(wire_length: float, time: float) -> float:
    """Return the feed from a length of wire run out in a time.

    feed_measured = wire_length / time

    Parameters
    ----------
    wire_length : float
        Length run out, [m]; 0 to 1e6.
    time : float
        Time it took, [s]; 0.1 to 4e6.

    Returns
    -------
    float
        Wire feed speed, [m/s].

    Raises
    ------
    ranges.OutOfRange
        If an input is outside its range.

    Notes
    -----
    Run six seconds of wire away from the work with the arc off, cut it and measure: ten times that is a
    minute's feed. The free end is live while the gun trigger is held.

    Source
    ------
    Definition of speed: law. The way of measuring: common practice.

    Examples
    --------
    >>> round(feed_measured(0.508, 6.0) / 0.0254 * 60, 6)
    200.0
    """
    ranges.require("wire_length", wire_length, 0.0, 1e6, "m")
    ranges.require("time", time, 0.1, 4e6, "s")
    return wire_length / time
