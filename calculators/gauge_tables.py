"""What a gauge number means in each system of gauges, and which gauge a measured thickness is.

Look-ups in published tables and one closed form. Plain floats in coherent SI; the tables keep the units they
were published in (calculators/facts/gauges.py) and meet pint's factors here, once.
"""

from calculators import numerals, ranges, units
from calculators.facts import densities
from calculators.facts import gauges as facts

GAUGE_SYSTEMS = ("steel", "galvanized", "stainless", "aluminum", "tube")
THINNEST_GAUGE = 30
THICKEST_GAUGE = 3

_INCH = units.factor_of("in")
_POUND_PER_SQUARE_FOOT = units.factor_of("lb/ft2")
_OUNCES_IN_A_POUND = 16
_FINEST_FRACTION = 64
_THICKEST_FOR_FRACTION = 0.3  # m; beyond this nobody reads 64ths


def gauge_range(gauge_system: str) -> tuple[int, int]:
    """Return the lowest (thickest) and highest (thinnest) gauge number of a system.

    Parameters
    ----------
    gauge_system : str
        One of ``GAUGE_SYSTEMS``, [-].

    Returns
    -------
    tuple[int, int]
        Lowest and highest gauge number, [-].

    Raises
    ------
    ValueError
        If there is no such gauge system.

    Source
    ------
    The published extent of each table (calculators/facts/gauges.py), less plate and foil.

    Examples
    --------
    >>> gauge_range("galvanized")
    (8, 30)
    """
    if gauge_system not in GAUGE_SYSTEMS:
        raise ValueError("no gauge system is called " + gauge_system)
    if gauge_system == "galvanized":
        return facts.THICKEST_GALVANIZED_GAUGE, THINNEST_GAUGE
    return THICKEST_GAUGE, THINNEST_GAUGE


def thickness_of_gauge(gauge_system: str, gauge: float) -> float:
    """Return the nominal thickness of a gauge number.

    steel:      ounces / 16 / 41.82 in     (ounces per square foot from the law's table)
    galvanized: (ounces + 2.5) / 16 / 41.82 in
    stainless:  ounces / 640 in
    aluminum:   0.005 * 92 ** ((36 - gauge) / 39) in
    tube:       the Birmingham wire gauge, a table

    Parameters
    ----------
    gauge_system : str
        One of ``GAUGE_SYSTEMS``, [-].
    gauge : float
        Gauge number, [-]; a whole number from 3 to 30, galvanized from 8.

    Returns
    -------
    float
        Nominal thickness, [m]; with the zinc for galvanized, tube wall for tube.

    Raises
    ------
    ValueError
        If there is no such gauge system or the gauge is not whole; ranges.OutOfRange outside its table.

    Notes
    -----
    The same number is a different thickness in every system. The nominal is not what the mill delivered:
    see ``mill_tolerance``. Some duct tables list galvanized sheet by its bare thickness, 0.0037 in less.

    Source
    ------
    15 U.S.C. 206 (law): the ounces, and stainless. Manufacturers' Standard Gauge for Sheet Steel, Galvanized
    Sheet Gage, Machinery's Handbook wire gauges (published). ASTM B258 (standard).

    Examples
    --------
    >>> [round(thickness_of_gauge(system, 16) / 0.0254, 4) for system in GAUGE_SYSTEMS]
    [0.0598, 0.0635, 0.0625, 0.0508, 0.065]
    """
    number = _whole_gauge(gauge_system, gauge)
    if gauge_system == "tube":
        return _published(facts.BWG_INCHES, number) * _INCH
    if gauge_system == "aluminum":
        steps: float = facts.AWG_RATIO ** ((36 - number) / facts.AWG_STEPS)
        return facts.AWG_INCHES_AT_36 * steps * _INCH
    pounds = _pounds_per_square_foot(gauge_system, number)
    per_inch = facts.IRON_POUNDS_PER_INCH if gauge_system == "stainless" else facts.STEEL_POUNDS_PER_INCH
    return pounds / per_inch * _INCH


def nearest_gauges(gauge_system: str, thickness: float, count: int) -> tuple[tuple[int, float, float], ...]:
    """Return the gauges nearest to a measured thickness, nearest first.

    Parameters
    ----------
    gauge_system : str
        One of ``GAUGE_SYSTEMS``, [-].
    thickness : float
        Thickness of clean metal, [m]; within the table, or beyond it by half a step or the mill's tolerance.
    count : int
        How many gauges to return, [-]; 1 up to the length of the table.

    Returns
    -------
    tuple[tuple[int, float, float], ...]
        (gauge, its nominal thickness [m], thickness less nominal [m]). Of two gauges equally near, the lower
        number (the thicker sheet) comes first.

    Raises
    ------
    ValueError
        If there is no such gauge system; ranges.OutOfRange outside the table or its length.

    Notes
    -----
    Paint and scale must be off before measuring, and zinc too unless the system is galvanized. Nearest is not
    certain: see ``gauges_within_tolerance``.

    Source
    ------
    As ``thickness_of_gauge``.

    Examples
    --------
    >>> [gauge for gauge, nominal, difference in nearest_gauges("steel", 0.0015, 3)]
    [16, 17, 15]
    """
    lowest, highest = gauge_range(gauge_system)
    least, greatest = _thickness_range(gauge_system)
    ranges.require("thickness", thickness, least, greatest, "m")
    ranges.require("count", count, 1, highest - lowest + 1, "")
    rows = []
    for gauge in range(lowest, highest + 1):
        nominal = thickness_of_gauge(gauge_system, gauge)
        rows.append((gauge, nominal, _difference(thickness, nominal)))
    rows.sort(key=lambda row: (numerals.settle(abs(row[2])), row[0]))
    return tuple(rows[: int(count)])


def mill_tolerance(gauge_system: str, gauge: float) -> float | None:
    """Return how far a mill may deliver a gauge from its nominal thickness, either way.

    Parameters
    ----------
    gauge_system : str
        One of ``GAUGE_SYSTEMS``, [-].
    gauge : float
        Gauge number, [-]; a whole number from 3 to 30, galvanized from 8.

    Returns
    -------
    float | None
        Plus or minus, [m]; None where none is held here (stainless, aluminum, tube, 3 gauge steel).

    Raises
    ------
    ValueError
        As ``thickness_of_gauge``.

    Notes
    -----
    A sheet in hand does not tell how it was rolled, so steel takes the wider of hot and cold rolled. The
    standard's limits also vary with width. The bands of neighbouring gauges overlap almost everywhere.

    Source
    ------
    Lists made from the ASTM tables for carbon steel sheet, named in calculators/facts/gauges.py (published).

    Examples
    --------
    >>> round(mill_tolerance("steel", 16) / 0.0254, 4)
    0.006
    """
    number = _whole_gauge(gauge_system, gauge)
    bands: tuple[tuple[int, int, int], ...] = ()
    if gauge_system == "steel":
        bands = facts.HOT_ROLLED_TOLERANCE + facts.COLD_ROLLED_TOLERANCE
    elif gauge_system == "galvanized":
        bands = facts.GALVANIZED_TOLERANCE
    thousandths = [band[2] for band in bands if band[0] <= number <= band[1]]
    return max(thousandths) / 1000 * _INCH if thousandths else None


def gauges_within_tolerance(gauge_system: str, thickness: float) -> tuple[int, ...]:
    """Return every gauge that a mill may have delivered at this thickness.

    Parameters
    ----------
    gauge_system : str
        One of ``GAUGE_SYSTEMS``, [-].
    thickness : float
        Thickness of clean metal, [m]; as ``nearest_gauges``.

    Returns
    -------
    tuple[int, ...]
        Gauge numbers in rising order, [-]: more than one where the reading straddles gauges, none where
        ``mill_tolerance`` holds no band for it.

    Raises
    ------
    ValueError
        If there is no such gauge system; ranges.OutOfRange outside the table.

    Source
    ------
    As ``mill_tolerance``.

    Examples
    --------
    >>> gauges_within_tolerance("steel", 0.056 * 0.0254)
    (16, 17)
    """
    least, greatest = _thickness_range(gauge_system)
    ranges.require("thickness", thickness, least, greatest, "m")
    lowest, highest = gauge_range(gauge_system)
    found = []
    for gauge in range(lowest, highest + 1):
        tolerance = mill_tolerance(gauge_system, gauge)
        distance = abs(thickness - thickness_of_gauge(gauge_system, gauge))
        if tolerance is not None and numerals.settle(distance) <= numerals.settle(tolerance):
            found.append(gauge)
    return tuple(found)


def second_stainless_thickness(gauge: float) -> float | None:
    """Return what some suppliers mean by a stainless gauge, where that is not the law's thickness.

    Parameters
    ----------
    gauge : float
        Gauge number, [-]; a whole number from 3 to 30.

    Returns
    -------
    float | None
        Thickness in the second list, [m]; None for a gauge that list does not have.

    Raises
    ------
    ValueError
        As ``thickness_of_gauge``.

    Notes
    -----
    5 % thinner than the law's at 20 gauge: 0.0355 in is 20 gauge in this list and nearest to 21 in the law's.

    Source
    ------
    Suppliers' lists (common practice). ASTM A480 discourages gauge numbers for stainless.

    Examples
    --------
    >>> round(second_stainless_thickness(20) / 0.0254, 4)
    0.0355
    """
    number = _whole_gauge("stainless", gauge)
    for listed, inches in facts.SECOND_STAINLESS_INCHES:
        if listed == number:
            return inches * _INCH
    return None


def mass_per_area_of_gauge(gauge_system: str, gauge: float) -> float:
    """Return the mass of one square metre of a gauge.

    steel, galvanized: the weight that defines the gauge; the others: nominal thickness * density

    Parameters
    ----------
    gauge_system : str
        One of ``GAUGE_SYSTEMS``, [-].
    gauge : float
        Gauge number, [-]; a whole number from 3 to 30, galvanized from 8.

    Returns
    -------
    float
        Mass per area, [kg/m2]; for tube, of the wall laid flat.

    Raises
    ------
    ValueError
        As ``thickness_of_gauge``.

    Notes
    -----
    The defining weight of steel allows 2.5 % for a sheet thicker in the middle: a piece of the nominal
    thickness all over weighs that much less. The law's ounces are wrought iron's. Alloys differ by 2 %.

    Source
    ------
    15 U.S.C. 206 (law) for steel; Galvanized Sheet Gage and the densities of facts/densities.py (published).

    Examples
    --------
    >>> round(mass_per_area_of_gauge("steel", 16), 2)
    12.21
    """
    number = _whole_gauge(gauge_system, gauge)
    for name, density in densities.GAUGES:
        if name == gauge_system:
            return thickness_of_gauge(gauge_system, number) * density
    return _pounds_per_square_foot(gauge_system, number) * _POUND_PER_SQUARE_FOOT


def nearest_fraction(thickness: float) -> tuple[str, float]:
    """Return the nearest 64th of an inch as a reduced fraction, and how far the thickness is from it.

    Parameters
    ----------
    thickness : float
        Thickness, [m]; from 1/128 in (thinner has no fraction) to 0.3.

    Returns
    -------
    tuple[str, float]
        The fraction of an inch as text, such as ``3/16`` or ``1 1/4``; thickness less fraction, [m]. Half
        way between two, the larger.

    Raises
    ------
    ValueError
        ranges.OutOfRange outside the range stated above.

    Source
    ------
    Arithmetic; the inch is 25.4 mm exactly.

    Examples
    --------
    >>> nearest_fraction(0.1875 * 0.0254)
    ('3/16', 0.0)
    """
    ranges.require("thickness", thickness, _INCH / (2 * _FINEST_FRACTION), _THICKEST_FOR_FRACTION, "m")
    parts = int(numerals.settle(thickness / _INCH * _FINEST_FRACTION) + 0.5)
    difference = _difference(thickness, parts / _FINEST_FRACTION * _INCH)
    whole, top = divmod(parts, _FINEST_FRACTION)
    bottom = _FINEST_FRACTION
    while top and top % 2 == 0:
        top, bottom = top // 2, bottom // 2
    text = (str(whole) if whole else "") + (" " + str(top) + "/" + str(bottom) if top else "")
    return text.strip(" "), difference


def _whole_gauge(gauge_system: str, gauge: float) -> int:
    lowest, highest = gauge_range(gauge_system)
    ranges.require("gauge", gauge, lowest, highest, "")
    if gauge == int(gauge):
        return int(gauge)
    number = numerals.settle(gauge)
    if number != int(number):
        raise ValueError("gauge is " + numerals.plain(number) + "; it must be a whole number")
    return int(number)


def _thickness_range(gauge_system: str) -> tuple[float, float]:
    """Return the least and greatest thickness that a gauge of the table may have.

    Half a step beyond either end, or the mill's tolerance if that is more: further out lies another gauge.
    """
    lowest, highest = gauge_range(gauge_system)
    thick, thin = thickness_of_gauge(gauge_system, lowest), thickness_of_gauge(gauge_system, highest)
    above = (thick - thickness_of_gauge(gauge_system, lowest + 1)) / 2
    below = (thickness_of_gauge(gauge_system, highest - 1) - thin) / 2
    above = max(above, mill_tolerance(gauge_system, lowest) or 0.0)
    below = max(below, mill_tolerance(gauge_system, highest) or 0.0)
    return thin - below, thick + above


def _published(rows: tuple[tuple[int, float], ...], gauge: int) -> float:
    for number, published in rows:
        if number == gauge:
            return published
    raise KeyError(gauge)


def _pounds_per_square_foot(gauge_system: str, gauge: int) -> float:
    zinc = facts.ZINC_OUNCES_PER_SQUARE_FOOT if gauge_system == "galvanized" else 0.0
    return (_published(facts.OUNCES_PER_SQUARE_FOOT, gauge) + zinc) / _OUNCES_IN_A_POUND


def _difference(thickness: float, nominal: float) -> float:
    """Return thickness less nominal: exactly 0 where they differ only by the noise of a unit conversion."""
    difference = thickness - nominal
    if abs(difference) < 1e-8 * nominal and numerals.settle(thickness) == numerals.settle(nominal):
        return 0.0
    return difference
