"""What shop tests say of an unknown metal: its density, and points for and against each family."""

import math

from calculators import numerals, ranges
from calculators.facts import densities
from calculators.facts import metals as facts

_ROWS = {(test, answer): (fits, rest, source) for test, answer, fits, rest, source in facts.EVIDENCE}
DENSITY_RANGES = {family: (low, high) for family, low, high in densities.FAMILIES}


def block_density(mass: float, length: float, width: float, thickness: float) -> float:
    """Return the density of a solid block: density = mass / (length * width * thickness).

    Parameters
    ----------
    mass : float
        Mass of the piece, [kg]; 0.001 to 20000.
    length : float
        Length, [m]; 0.0001 to 100.
    width : float
        Width, [m]; 0.0001 to 100.
    thickness : float
        Thickness, [m]; 0.0001 to 100.

    Returns
    -------
    float
        Density, [kg/m3].

    Raises
    ------
    ranges.OutOfRange
        If an input is outside its range.

    Source
    ------
    Definition of density.

    Examples
    --------
    A plate 1 ft by 1 ft by 1 in weighs 40.8 lb (15 U.S.C. 206 and ASTM A6 for steel):

    >>> round(block_density(18.507, 0.3048, 0.3048, 0.0254), 0)
    7843.0
    """
    ranges.require("mass", mass, 0.001, 20000.0, "kg")
    ranges.require("length", length, 0.0001, 100.0, "m")
    ranges.require("width", width, 0.0001, 100.0, "m")
    ranges.require("thickness", thickness, 0.0001, 100.0, "m")
    return mass / (length * width * thickness)


def round_bar_density(mass: float, length: float, diameter: float) -> float:
    """Return the density of a solid round bar: density = mass / (length * pi * diameter^2 / 4).

    Parameters
    ----------
    mass : float
        Mass of the piece, [kg]; 0.001 to 20000.
    length : float
        Length, [m]; 0.0001 to 100.
    diameter : float
        Diameter, [m]; 0.0001 to 100.

    Returns
    -------
    float
        Density, [kg/m3].

    Raises
    ------
    ranges.OutOfRange
        If an input is outside its range.

    Source
    ------
    Definition of density; area of a circle.

    Examples
    --------
    A one-inch round steel bar weighs 2.67 lb a foot:

    >>> round(round_bar_density(1.2111, 0.3048, 0.0254), -1)
    7840.0
    """
    ranges.require("mass", mass, 0.001, 20000.0, "kg")
    ranges.require("length", length, 0.0001, 100.0, "m")
    ranges.require("diameter", diameter, 0.0001, 100.0, "m")
    return mass / (length * diameter * diameter * (math.pi / 4.0))


def density_by_weighing(mass: float, mass_in_water: float, water_density: float) -> float:
    """Return the density of a part of any shape: density = water_density * mass / (mass - mass_in_water).

    Parameters
    ----------
    mass : float
        What a hanging scale shows in air, [kg]; 0.001 to 20000.
    mass_in_water : float
        What it shows with the part hung under water, [kg]; 0 to less than ``mass``.
    water_density : float
        Density of the water, [kg/m3]; 950 to 1050.

    Returns
    -------
    float
        Density, [kg/m3].

    Raises
    ------
    ranges.OutOfRange
        If an input is outside its range, or the part weighs no less under water.

    Source
    ------
    Archimedes' principle.

    Examples
    --------
    A part that loses more than a third of its weight is about as dense as aluminum:

    >>> round(density_by_weighing(2.70, 1.70, 1000.0), 0)
    2700.0
    """
    ranges.require("mass", mass, 0.001, 20000.0, "kg")
    ranges.require("mass_in_water", mass_in_water, 0.0, 20000.0, "kg")
    ranges.require("water_density", water_density, 950.0, 1050.0, "kg/m3")
    ranges.require("displaced_water", mass - mass_in_water, 1e-6, None, "kg")
    return water_density * (mass / (mass - mass_in_water))


def density_points(family: str, density: float) -> int:
    """Return the points a density gives a family: more within its published range, fewer the further off.

    Parameters
    ----------
    family : str
        One of facts.metals.FAMILIES.
    density : float
        Density found, [kg/m3]; above 0.

    Returns
    -------
    int
        Points, [-].

    Raises
    ------
    ranges.OutOfRange
        If the density is not above 0.
    KeyError
        If there is no such family.

    Notes
    -----
    The steps are wide, since a scale and a tape read a part to a few hundredths. They are our own.

    Source
    ------
    Density ranges as in facts/densities.py; points from memory of how well such readings repeat.

    Examples
    --------
    >>> density_points("aluminum", 2700.0), density_points("magnesium", 2700.0)
    (3, -8)
    """
    ranges.require("density", density, 1e-9, None, "kg/m3")
    low, high = DENSITY_RANGES[family]
    off = max(low - density, density - high, 0.0) / (low if density < low else high)
    for share, points in facts.DENSITY_POINTS:
        if numerals.settle(off) <= share:
            return points
    return facts.DENSITY_POINTS_FAR


def answer_points(test: str, answer: str, family: str) -> int:
    """Return the points that one answer gives a family: each doubles the odds, each below 0 halves them.

    Parameters
    ----------
    test : str
        `magnet`, `spark`, `file`, `chip`, `sound`, `color`, `corrosion`, `surface` or `part`.
    answer : str
        One of that test's answers in facts.metals.EVIDENCE; a part that has no row says nothing.
    family : str
        One of facts.metals.FAMILIES.

    Returns
    -------
    int
        Points, [-].

    Raises
    ------
    KeyError
        If the test has no such answer.

    Source
    ------
    The row's own, named in facts/metals.py.

    Examples
    --------
    >>> answer_points("magnet", "strong", "mild-steel"), answer_points("magnet", "strong", "aluminum")
    (2, -6)
    """
    if test == "part" and (test, answer) not in _ROWS:
        return 0
    fits, rest, _ = _ROWS[(test, answer)]
    for points, families in fits:
        if family in families:
            return points
    return rest


def ranking(answers: tuple[tuple[str, str], ...], density: float | None = None) -> tuple[tuple[int, str], ...]:
    """Return (points, family) of every family, most points first: points = the sum over all answers.

    Parameters
    ----------
    answers : tuple of (test, answer)
        What was found, each test once; the order does not matter.
    density : float | None
        Density found, [kg/m3]; above 0, or None if the part was not weighed.

    Returns
    -------
    tuple of (int, str)
        Points and family; level ones in the order in which they are met on a truck.

    Raises
    ------
    KeyError
        If a test has no such answer.
    ranges.OutOfRange
        If the density is not above 0.

    Notes
    -----
    Adding points supposes that the tests are independent. They are not quite: all that hangs on carbon is counted
    by spark and file alike. So the points rank, and are not turned into a percentage.

    Source
    ------
    Sum of log-odds; the points are our own grading of the rows' sources.

    Examples
    --------
    >>> ranking((("magnet", "strong"), ("spark", "red-short"), ("chip", "short")))[0]
    (8, 'gray-iron')
    """
    found = []
    for place, family in enumerate(facts.FAMILIES):
        total = 0 if density is None else density_points(family, density)
        for test, answer in answers:
            total += answer_points(test, answer, family)
        found.append((-total, place, family))
    return tuple([(-total, family) for total, _, family in sorted(found)])
