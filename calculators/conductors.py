"""Copper conductors: what a lead or cord resists, loses and carries."""

from calculators import ranges
from calculators.facts import conductors as facts


def awg_area(gauge: int) -> float:
    """Return the copper area of an American Wire Gauge size (empirical: a gauge number stands for an area).

    area = pi / 4 * (0.127 mm * 92^((36 - gauge) / 39))^2

    Parameters
    ----------
    gauge : int
        Gauge number, 1/0 being 0 and 4/0 being -3, [-]; a whole number from -3 to 36.

    Returns
    -------
    float
        Area, [m2].

    Raises
    ------
    ranges.OutOfRange
        If there is no such gauge.

    Source
    ------
    ASTM B258; standard, as in Machinery's Handbook.

    Examples
    --------
    >>> round(awg_area(2) * 1e6, 2), round(awg_area(-3) * 1e6, 1)
    (33.63, 107.2)
    """
    ranges.require("gauge", gauge, -3, 36, "")
    diameter = 0.127e-3 * 92.0 ** ((36 - gauge) / 39.0)
    return 0.25 * 3.141592653589793 * diameter * diameter


def copper_resistivity(temperature: float) -> float:
    """Return the resistivity of annealed copper (empirical: a property of the material).

    resistivity = resistivity at 20 degC * (1 + 0.00393 * (temperature - 20 degC))

    Parameters
    ----------
    temperature : float
        Temperature of the copper, [K]; 223.15 to 423.15.

    Returns
    -------
    float
        Resistivity, [ohm m].

    Raises
    ------
    ranges.OutOfRange
        If the temperature is outside its range.

    Source
    ------
    NBS Handbook 100, 1966: published; the coefficient from memory.

    Examples
    --------
    >>> round(copper_resistivity(348.15) * 1e8, 4)
    2.0968
    """
    ranges.require("temperature", temperature, 223.15, 423.15, "K")
    warmer = temperature - facts.REFERENCE_TEMPERATURE
    return facts.COPPER_RESISTIVITY * (1.0 + facts.COPPER_COEFFICIENT * warmer)


def loop_resistance(one_way: float, area: float, resistivity: float, stranding: float = facts.STRANDING) -> float:
    """Return the resistance of a lead out and back.

    resistance = resistivity * stranding * 2 * one_way / area

    Parameters
    ----------
    one_way : float
        Length from the machine to the work, [m]; 0.1 to 1000.
    area : float
        Copper area, [m2]; 1e-7 to 0.001.
    resistivity : float
        Resistivity, [ohm m]; 1e-9 to 1e-6.
    stranding : float, optional
        How much longer the strands are than the cable, [-]; 1 to 1.2.

    Returns
    -------
    float
        Resistance, [ohm].

    Raises
    ------
    ranges.OutOfRange
        If an input is outside its range.

    Notes
    -----
    Direct current. A coiled lead adds inductance, which is not in it.

    Source
    ------
    Ohm's law; NEC Chapter 9 Table 8 agrees within 0.3 %: published.

    Examples
    --------
    >>> round(loop_resistance(30.48, awg_area(0), copper_resistivity(348.15)) * 200.0, 2)
    4.88
    """
    ranges.require("one_way", one_way, 0.1, 1000.0, "m")
    ranges.require("area", area, 1e-7, 1e-3, "m2")
    ranges.require("resistivity", resistivity, 1e-9, 1e-6, "ohm m")
    ranges.require("stranding", stranding, 1.0, 1.2, "")
    return resistivity * stranding * 2.0 * one_way / area


def area_of_resistance(resistance_per_length: float) -> float:
    """Return the copper area that a metric size comes to (empirical: a property of copper).

    area = resistivity at 20 degC * stranding / resistance per length

    Parameters
    ----------
    resistance_per_length : float
        Highest resistance at 20 degC of the standard, [ohm/m]; 1e-5 to 0.1.

    Returns
    -------
    float
        Area of copper stranded 2 % that has this resistance, [m2].

    Raises
    ------
    ranges.OutOfRange
        If the resistance is outside its range.

    Notes
    -----
    Some 3 to 10 % less than the number on the cable: the standard lets it be so.

    Source
    ------
    IEC 60228:2004: standard, seen quoted.

    Examples
    --------
    >>> round(area_of_resistance(0.554e-3) * 1e6, 2)
    31.74
    """
    ranges.require("resistance_per_length", resistance_per_length, 1e-5, 0.1, "ohm/m")
    return facts.COPPER_RESISTIVITY * facts.STRANDING / resistance_per_length


def steady_current(area: float) -> float:
    """Return what one rubber cable in air carries without end at 75 degC (empirical: a fit).

    current = 125 A * (area / 21.15 mm2)^0.65

    Parameters
    ----------
    area : float
        Copper area, [m2]; 8e-6 to 130e-6.

    Returns
    -------
    float
        Current, [A].

    Raises
    ------
    ranges.OutOfRange
        If the area is outside its range.

    Notes
    -----
    Laid out in the open in air of 30 degC. Coiled, in the sun or under a mat it carries less.

    Source
    ------
    NEC Table 400.5(B), in Set Lighting Technician's Handbook, 4th ed.: published; the power is a fit.

    Examples
    --------
    >>> round(steady_current(53.48e-6))
    228
    """
    ranges.require("area", area, 8e-6, 130e-6, "m2")
    return facts.STEADY_CURRENT * (area / facts.STEADY_AREA) ** facts.STEADY_POWER


# (name, copper area), thinnest first in each system.
LEADS = tuple([(name, awg_area(gauge)) for name, gauge in facts.AWG_LEADS]) + tuple(
    [(name, area_of_resistance(most)) for name, _, most in facts.METRIC_LEADS]
)
