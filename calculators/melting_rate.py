"""How fast a solid wire melts: feed from current, current from feed, stick-out from both.

wire_feed_speed = arc_coefficient * current + resistance_coefficient * electrode_extension * current * current

The first term is heat the arc gives to the wire tip, the second is heat the current makes in the wire between
contact tip and arc. Everything here is homogeneous; the numbers of each wire and where they hold are in
melting_tables.py.
"""

from calculators import ranges

_ARC_UNIT = "m/(A s)"
_RESISTANCE_UNIT = "1/(A^2 s)"


def _require_coefficients(arc_coefficient: float, resistance_coefficient: float) -> None:
    ranges.require("arc_coefficient", arc_coefficient, 1e-5, 1e-2, _ARC_UNIT)
    ranges.require("resistance_coefficient", resistance_coefficient, 0.0, 1e-2, _RESISTANCE_UNIT)


def scaled_coefficients(
    arc_coefficient: float, resistance_coefficient: float, reference_diameter: float, wire_diameter: float
) -> tuple[float, float]:
    """Return the two melting coefficients of one wire diameter from those of another.

    arc_coefficient * (reference/wire)^2, resistance_coefficient * (reference/wire)^4

    Parameters
    ----------
    arc_coefficient : float
        Arc term at the reference diameter, [m/(A s)]; 1e-5 to 1e-2.
    resistance_coefficient : float
        Resistance term at the reference diameter, [1/(A^2 s)]; 0 to 1e-2.
    reference_diameter : float
        Wire diameter those two belong to, [m]; 0.0005 to 0.0025.
    wire_diameter : float
        Wire diameter wanted, [m]; 0.0005 to 0.0025.

    Returns
    -------
    tuple of float
        Arc coefficient [m/(A s)] and resistance coefficient [1/(A^2 s)] of the wire wanted.

    Raises
    ------
    ranges.OutOfRange
        If an input is outside its range.

    Notes
    -----
    The same heat melts the same volume, so length goes with 1/area; the heat made in the wire goes with its
    resistance, which adds another 1/area. Holds for one material at the same transfer mode.

    Source
    ------
    Conservation of energy: law.

    Examples
    --------
    >>> arc, resistance = scaled_coefficients(0.30e-3, 5.0e-5, 1.2e-3, 0.8e-3)
    >>> round(arc * 1e3, 3), round(resistance * 1e4, 2)
    (0.675, 2.53)
    """
    _require_coefficients(arc_coefficient, resistance_coefficient)
    ranges.require("reference_diameter", reference_diameter, 0.5e-3, 2.5e-3, "m")
    ranges.require("wire_diameter", wire_diameter, 0.5e-3, 2.5e-3, "m")
    ratio = reference_diameter / wire_diameter
    area_ratio = ratio * ratio
    return arc_coefficient * area_ratio, resistance_coefficient * (area_ratio * area_ratio)


def electrode_extension(contact_tip_to_work: float, arc_length: float) -> float:
    """Return the length of wire that carries current: from the contact tip to the arc.

    electrode_extension = contact_tip_to_work - arc_length

    Parameters
    ----------
    contact_tip_to_work : float
        Contact tip to work distance, [m]; 0.005 to 0.035.
    arc_length : float
        Wire tip to work, [m]; 0 to 0.008. `facts.wires.ARC_LENGTHS` has the values to assume.

    Returns
    -------
    float
        Electrode extension, [m].

    Raises
    ------
    ranges.OutOfRange
        If an input or the result (0.003 to 0.030 m) is outside its range.

    Notes
    -----
    A contact tip recessed in the nozzle is farther from the work than the nozzle is: measure from the tip.

    Source
    ------
    Geometry: law. The assumed arc lengths: common practice.

    Examples
    --------
    >>> round(electrode_extension(0.012, 0.002), 4)
    0.01
    """
    ranges.require("contact_tip_to_work", contact_tip_to_work, 0.005, 0.035, "m")
    ranges.require("arc_length", arc_length, 0.0, 0.008, "m")
    extension = contact_tip_to_work - arc_length
    ranges.require("electrode_extension", extension, 0.003, 0.030, "m")
    return extension


def contact_tip_to_work(electrode_extension: float, arc_length: float) -> float:
    """Return the distance from contact tip to work.

    contact_tip_to_work = electrode_extension + arc_length

    Parameters
    ----------
    electrode_extension : float
        Wire between contact tip and arc, [m]; 0.003 to 0.030.
    arc_length : float
        Wire tip to work, [m]; 0 to 0.008.

    Returns
    -------
    float
        Contact tip to work distance, [m].

    Raises
    ------
    ranges.OutOfRange
        If an input is outside its range.

    Notes
    -----
    The inverse of `electrode_extension`.

    Source
    ------
    Geometry: law. The assumed arc lengths: common practice.

    Examples
    --------
    >>> round(contact_tip_to_work(0.010, 0.002), 4)
    0.012
    """
    ranges.require("electrode_extension", electrode_extension, 0.003, 0.030, "m")
    ranges.require("arc_length", arc_length, 0.0, 0.008, "m")
    return electrode_extension + arc_length


def wire_feed_speed(
    current: float, electrode_extension: float, arc_coefficient: float, resistance_coefficient: float
) -> float:
    """Return the feed at which a solid wire melts as fast as it arrives.

    wire_feed_speed = arc_coefficient * I + resistance_coefficient * L * I * I

    Parameters
    ----------
    current : float
        Mean current I, electrode positive, [A]; 5 to 1000. `melting_tables.current_limits` has each wire's
        range.
    electrode_extension : float
        Wire between contact tip and arc L, [m]; 0.003 to 0.030.
    arc_coefficient : float
        Arc term, [m/(A s)]; 1e-5 to 1e-2.
    resistance_coefficient : float
        Resistance term, [1/(A^2 s)]; 0 to 1e-2.

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
    In short-circuit and pulse the resistance term goes with the mean of the squared current, above the square
    of the mean: part of the band. Solid wire only.

    Source
    ------
    Lesnewich, Welding Journal, 1958, as in the AWS Welding Handbook and Norrish, Advanced Welding Processes:
    the form of the law; from memory. A Japanese study of 308 wire (J. Japan Welding Society 27-1, abstract
    seen) fits the same shape.

    Examples
    --------
    0.035 in steel wire, 125 A, 12 mm from tip to work, 2 mm of arc, in inches a minute:

    >>> arc, resistance = scaled_coefficients(0.30e-3, 5.0e-5, 1.2e-3, 0.889e-3)
    >>> round(wire_feed_speed(125.0, 0.010, arc, resistance) / 0.0254 * 60)
    223
    """
    ranges.require("current", current, 5.0, 1000.0, "A")
    ranges.require("electrode_extension", electrode_extension, 0.003, 0.030, "m")
    _require_coefficients(arc_coefficient, resistance_coefficient)
    return arc_coefficient * current + resistance_coefficient * electrode_extension * current * current


def current(
    wire_feed_speed: float, electrode_extension: float, arc_coefficient: float, resistance_coefficient: float
) -> float:
    """Return the current that melts a solid wire as fast as it is fed.

    I = 2 * v / (a + sqrt(a * a + 4 * b * L * v))

    Parameters
    ----------
    wire_feed_speed : float
        Wire feed speed v, [m/s]; 0.005 to 1.
    electrode_extension : float
        Wire between contact tip and arc L, [m]; 0.003 to 0.030.
    arc_coefficient : float
        Arc term a, [m/(A s)]; 1e-5 to 1e-2.
    resistance_coefficient : float
        Resistance term b, [1/(A^2 s)]; 0 to 1e-2.

    Returns
    -------
    float
        Mean current, [A]. Check it against `melting_tables.current_limits` before showing it.

    Raises
    ------
    ranges.OutOfRange
        If an input is outside its range.

    Notes
    -----
    The positive root of the law, written so that it neither cancels for a small b nor divides by a b of zero.

    Source
    ------
    Algebra on the law of `wire_feed_speed`: law.

    Examples
    --------
    >>> round(current(0.090, 0.015, 0.30e-3, 5.0e-5), 1)
    200.0
    """
    ranges.require("wire_feed_speed", wire_feed_speed, 0.005, 1.0, "m/s")
    ranges.require("electrode_extension", electrode_extension, 0.003, 0.030, "m")
    _require_coefficients(arc_coefficient, resistance_coefficient)
    squared = arc_coefficient * arc_coefficient + 4.0 * resistance_coefficient * electrode_extension * wire_feed_speed
    return 2.0 * wire_feed_speed / (arc_coefficient + squared**0.5)


def electrode_extension_for(
    wire_feed_speed: float, current: float, arc_coefficient: float, resistance_coefficient: float
) -> float:
    """Return the electrode extension at which a feed and a current belong together.

    L = (v - a * I) / (b * I * I)

    Parameters
    ----------
    wire_feed_speed : float
        Wire feed speed v, [m/s]; 0.005 to 1.
    current : float
        Mean current I, [A]; 5 to 1000.
    arc_coefficient : float
        Arc term a, [m/(A s)]; 1e-5 to 1e-2.
    resistance_coefficient : float
        Resistance term b, [1/(A^2 s)]; 1e-7 to 1e-2: aluminum has none, and no answer.

    Returns
    -------
    float
        Electrode extension, [m].

    Raises
    ------
    ranges.OutOfRange
        If an input or the result (0.003 to 0.030 m) is outside its range.

    Notes
    -----
    Very sensitive: at 200 A on 1.2 mm steel wire 15 % of feed is 6 to 8 mm of extension. Good for how far a
    change of feed moves the gun, poor for the distance itself.

    Source
    ------
    Algebra on the law of `wire_feed_speed`: law.

    Examples
    --------
    >>> round(electrode_extension_for(0.090, 200.0, 0.30e-3, 5.0e-5), 4)
    0.015
    """
    ranges.require("wire_feed_speed", wire_feed_speed, 0.005, 1.0, "m/s")
    ranges.require("current", current, 5.0, 1000.0, "A")
    _require_coefficients(arc_coefficient, resistance_coefficient)
    ranges.require("resistance_coefficient", resistance_coefficient, 1e-7, 1e-2, _RESISTANCE_UNIT)
    extension = (wire_feed_speed - arc_coefficient * current) / (resistance_coefficient * current * current)
    ranges.require("electrode_extension", extension, 0.003, 0.030, "m")
    return extension
