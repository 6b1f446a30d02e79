"""How much wire is left on a spool, from a tape measure."""

import math

from calculators import ranges
from calculators.facts import wires

_QUARTER_PI = math.pi / 4.0


def packing(winding: str) -> tuple[float, float, float]:
    """Return the share of the wound space that is metal: lowest, middle, highest.

    Empirical: a table.

    Parameters
    ----------
    winding : str
        `random`, `layer` or `not-known`, [-].

    Returns
    -------
    tuple of float
        Lowest, middle and highest packing, [-].

    Raises
    ------
    ValueError
        If there is no such winding in the table.

    Notes
    -----
    Geometry bounds it: round wire in square lay fills pi/4, nested in the grooves below pi/sqrt(12).

    Source
    ------
    facts/wires.py, PACKINGS: from memory.

    Examples
    --------
    >>> packing("layer")
    (0.78, 0.815, 0.85)
    """
    for name, low, middle, high in wires.PACKINGS:
        if name == winding:
            return low, middle, high
    raise ValueError("no packing for winding " + winding)


def wound_diameter(flange_diameter: float, depth: float) -> float:
    """Return the outer diameter of the wire on a spool from how far it lies below the rim.

    wound_diameter = flange_diameter - 2 * depth

    Parameters
    ----------
    flange_diameter : float
        Outer diameter of the spool, [m]; 0.05 to 1.
    depth : float
        From the rim of the flange straight down to the wire, [m]; 0 to 0.5.

    Returns
    -------
    float
        Outer diameter of the wire, [m].

    Raises
    ------
    ranges.OutOfRange
        If an input or the result (0.01 to 1 m) is outside its range.

    Notes
    -----
    Measure at two or three places: wire does not come off evenly.

    Source
    ------
    Geometry: law.

    Examples
    --------
    >>> round(wound_diameter(0.300, 0.0325), 4)
    0.235
    """
    ranges.require("flange_diameter", flange_diameter, 0.05, 1.0, "m")
    ranges.require("depth", depth, 0.0, 0.5, "m")
    diameter = flange_diameter - 2.0 * depth
    ranges.require("wound_diameter", diameter, 0.01, 1.0, "m")
    return diameter


def _require_annulus(inner_name: str, inner: float, outer_name: str, outer: float) -> None:
    ranges.require(inner_name, inner, 0.01, 1.0, "m")
    ranges.require(outer_name, outer, ranges.magnitude(inner, "m"), 1.0, "m")


def remaining_fraction(wound_diameter: float, full_diameter: float, core_diameter: float) -> float:
    """Return the share of a full spool that is left.

    remaining_fraction = (wound^2 - core^2) / (full^2 - core^2)

    Parameters
    ----------
    wound_diameter : float
        Outer diameter of the wire now, [m]; core_diameter to full_diameter.
    full_diameter : float
        Outer diameter of the wire when the spool was new, [m]; at least 1 mm above core_diameter, at most 1.
    core_diameter : float
        Barrel the wire is wound on, [m]; 0.01 to 1.

    Returns
    -------
    float
        Share left, [-]; 0 to 1.

    Raises
    ------
    ranges.OutOfRange
        If an input is outside its range.

    Notes
    -----
    Width, density and packing cancel, so this is better than a mass from dimensions. Weighing, less the empty
    spool, is better still. The barrel is not fixed by any standard: measure it once per kind of spool.

    Source
    ------
    Geometry, area of an annulus: law.

    Examples
    --------
    >>> round(remaining_fraction(0.235, 0.270, 0.195), 4)
    0.4932
    """
    _require_annulus("core_diameter", core_diameter, "full_diameter", full_diameter)
    ranges.require("winding_height", full_diameter - core_diameter, 0.001, 1.0, "m")
    core, full = ranges.magnitude(core_diameter, "m"), ranges.magnitude(full_diameter, "m")
    ranges.require("wound_diameter", wound_diameter, core, full, "m")
    core_squared = core_diameter * core_diameter
    return (wound_diameter * wound_diameter - core_squared) / (full_diameter * full_diameter - core_squared)


def wound_diameter_at(remaining_fraction: float, full_diameter: float, core_diameter: float) -> float:
    """Return the outer diameter of the wire when a share of a full spool is left.

    wound_diameter = sqrt(core^2 + remaining_fraction * (full^2 - core^2))

    Parameters
    ----------
    remaining_fraction : float
        Share left, [-]; 0 to 1.
    full_diameter : float
        Outer diameter of the wire when the spool was new, [m]; core_diameter to 1.
    core_diameter : float
        Barrel the wire is wound on, [m]; 0.01 to 1.

    Returns
    -------
    float
        Outer diameter of the wire, [m].

    Raises
    ------
    ranges.OutOfRange
        If an input is outside its range.

    Notes
    -----
    The inverse of `remaining_fraction`: where to put a mark on the flange for "order more".

    Source
    ------
    Geometry, area of an annulus: law.

    Examples
    --------
    >>> round(wound_diameter_at(0.5, 0.270, 0.195), 4)
    0.2355
    """
    ranges.require("remaining_fraction", remaining_fraction, 0.0, 1.0, "")
    _require_annulus("core_diameter", core_diameter, "full_diameter", full_diameter)
    core_squared = core_diameter * core_diameter
    return (core_squared + remaining_fraction * (full_diameter * full_diameter - core_squared)) ** 0.5


def wound_mass(wound_diameter: float, core_diameter: float, width: float, density: float, packing: float) -> float:
    """Return the mass of the wire wound on a spool, from its dimensions.

    wound_mass = density * packing * pi / 4 * (wound^2 - core^2) * width

    Parameters
    ----------
    wound_diameter : float
        Outer diameter of the wire, [m]; core_diameter to 1.
    core_diameter : float
        Barrel the wire is wound on, [m]; 0.01 to 1.
    width : float
        Width of the wire between the flanges, [m]; 0.01 to 0.5.
    density : float
        Density of the metal, [kg/m3]; 1000 to 20000.
    packing : float
        Share of the wound space that is metal, [-]; 0.4 to 0.9069. `packing(...)` has the range of each
        winding.

    Returns
    -------
    float
        Mass of wire, [kg].

    Raises
    ------
    ranges.OutOfRange
        If an input is outside its range.

    Notes
    -----
    Good to about 10 %, all of it from the packing. With the mass of the new spool known, `remaining_fraction`
    is better.

    Source
    ------
    Geometry, volume of a hollow cylinder: law. The packing: from memory.

    Examples
    --------
    >>> round(wound_mass(0.270, 0.195, 0.098, 7850.0, 0.75), 1)
    15.8
    """
    _require_annulus("core_diameter", core_diameter, "wound_diameter", wound_diameter)
    ranges.require("width", width, 0.01, 0.5, "m")
    ranges.require("density", density, 1000.0, 20000.0, "kg/m3")
    ranges.require("packing", packing, 0.4, 0.9069, "")
    annulus = _QUARTER_PI * (wound_diameter * wound_diameter - core_diameter * core_diameter)
    return density * packing * annulus * width


def packing_of(wire_mass: float, wound_diameter: float, core_diameter: float, width: float, density: float) -> float:
    """Return how tightly a spool of known mass is wound: the share of the wound space that is metal.

    packing = wire_mass / (density * pi / 4 * (wound^2 - core^2) * width)

    Parameters
    ----------
    wire_mass : float
        Mass of wire, [kg]; 0 to 1000.
    wound_diameter : float
        Outer diameter of the wire, [m]; at least 1 mm above core_diameter, at most 1.
    core_diameter : float
        Barrel the wire is wound on, [m]; 0.01 to 1.
    width : float
        Width of the wire between the flanges, [m]; 0.01 to 0.5.
    density : float
        Density of the metal, [kg/m3]; 1000 to 20000.

    Returns
    -------
    float
        Share of the space that is metal, [-]. Above 0.9069 no round wire lies: then a size or the mass is wrong.

    Raises
    ------
    ranges.OutOfRange
        If an input is outside its range.

    Notes
    -----
    The inverse of `wound_mass`.

    Source
    ------
    Geometry, volume of a hollow cylinder: law.

    Examples
    --------
    >>> round(packing_of(15.0, 0.270, 0.195, 0.098, 7850.0), 3)
    0.712
    """
    ranges.require("wire_mass", wire_mass, 0.0, 1000.0, "kg")
    _require_annulus("core_diameter", core_diameter, "wound_diameter", wound_diameter)
    ranges.require("winding_height", wound_diameter - core_diameter, 0.001, 1.0, "m")
    ranges.require("width", width, 0.01, 0.5, "m")
    ranges.require("density", density, 1000.0, 20000.0, "kg/m3")
    annulus = _QUARTER_PI * (wound_diameter * wound_diameter - core_diameter * core_diameter)
    return wire_mass / (density * annulus * width)


def core_for(wire_mass: float, full_diameter: float, width: float, density: float, packing: float) -> float:
    """Return the barrel of a new spool from the mass on its label.

    core = sqrt(full^2 - wire_mass / (density * packing * pi / 4 * width))

    Parameters
    ----------
    wire_mass : float
        Mass of wire on the new spool, [kg]; 0 to 1000.
    full_diameter : float
        Outer diameter of the wire when the spool was new, [m]; 0.01 to 1.
    width : float
        Width of the wire between the flanges, [m]; 0.01 to 0.5.
    density : float
        Density of the metal, [kg/m3]; 1000 to 20000.
    packing : float
        Share of the wound space that is metal, [-]; 0.4 to 0.9069.

    Returns
    -------
    float
        Diameter of the barrel, [m].

    Raises
    ------
    ranges.OutOfRange
        If an input is outside its range, or the square of the barrel (at least 0.0001 m2): so much wire does not fit.

    Notes
    -----
    The inverse of `wound_mass`. A barrel measured on an empty spool is better.

    Source
    ------
    Geometry, volume of a hollow cylinder: law. The packing: from memory.

    Examples
    --------
    >>> round(core_for(15.0, 0.270, 0.098, 7850.0, 0.75), 3)
    0.199
    """
    ranges.require("wire_mass", wire_mass, 0.0, 1000.0, "kg")
    ranges.require("full_diameter", full_diameter, 0.01, 1.0, "m")
    ranges.require("width", width, 0.01, 0.5, "m")
    ranges.require("density", density, 1000.0, 20000.0, "kg/m3")
    ranges.require("packing", packing, 0.4, 0.9069, "")
    square = full_diameter * full_diameter - wire_mass / (density * packing * _QUARTER_PI * width)
    ranges.require("core_squared", square, 0.0001, None, "m2")
    return square**0.5
