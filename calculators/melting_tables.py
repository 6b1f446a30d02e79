"""What is known of each solid wire: its melting coefficients, how sure they are, where they hold, and the
shop rules.

Empirical throughout: numbers fitted to a material, found by a table, so plain numbers only. The law itself is
in melting_rate.py.
"""

from calculators import melting_rate, numerals, ranges
from calculators.facts import wires


def _melting_row(wire_material: str, filler_alloy: str) -> tuple[str, str, float, float, float]:
    for row in wires.MELTING:
        if row[0] == wire_material and row[1] == filler_alloy:
            return row
    raise ValueError("no melting coefficients for wire_material " + wire_material + ", filler_alloy " + filler_alloy)


def _current_rows(wire_material: str, wire_diameter: float) -> tuple[tuple[float, float, float], ...]:
    """Return the current ranges of a material, after refusing a diameter they do not reach."""
    for name, rows in wires.CURRENT_RANGES:
        if name == wire_material:
            low = rows[0][0] * (1.0 - wires.DIAMETER_SLACK)
            high = rows[-1][0] * (1.0 + wires.DIAMETER_SLACK)
            ranges.require("wire_diameter", wire_diameter, low, high, "m")
            return rows
    raise ValueError("no current range for wire_material " + wire_material)


def _between(rows: tuple[tuple[float, float, float], ...], wire_diameter: float) -> tuple[float, float]:
    """Return (lowest, highest) current, straight between the rows; the end rows hold beyond themselves."""
    before = rows[0]
    for row in rows:
        if wire_diameter <= row[0]:
            span = row[0] - before[0]
            share = (wire_diameter - before[0]) / span if span else 0.0
            return before[1] + share * (row[1] - before[1]), before[2] + share * (row[2] - before[2])
        before = row
    return before[1], before[2]


def coefficients(
    wire_material: str, wire_diameter: float, filler_alloy: str = "", trim: float = 1.0
) -> tuple[float, float]:
    """Return the melting coefficients of a solid wire: the table's, scaled to its diameter.

    arc_coefficient = trim * table * (1.2 mm / wire_diameter)^2, resistance_coefficient with the fourth power

    Parameters
    ----------
    wire_material : str
        `mild-steel`, `stainless` or `aluminum`, [-].
    wire_diameter : float
        Wire diameter, [m]; 0.573 to 1.619 mm for mild steel, 0.747 to 1.619 mm for the others.
    filler_alloy : str, optional
        For aluminum `4043`, `5356` or `5183`, empty if not known, [-]; empty for steels.
    trim : float, optional
        Real melting of one arc over the law's, [-]; 0.5 to 2. `1 - half_band(...)` and `1 + half_band(...)`
        give the ends of the band for whatever is worked out from the result.

    Returns
    -------
    tuple of float
        Arc coefficient [m/(A s)] and resistance coefficient [1/(A^2 s)].

    Raises
    ------
    ranges.OutOfRange
        If the diameter or the trim is outside its range.
    ValueError
        If there is no such wire in the table.

    Notes
    -----
    Electrode positive, steady current or constant voltage, gas-shielded, solid wire. Pulsed current melts
    more per mean ampere, electrode negative much more: neither is covered.

    Source
    ------
    facts/wires.py, MELTING: Amin (1983) in Norrish, Advanced Welding Processes; from memory, second routes
    named there.

    Examples
    --------
    >>> arc, resistance = coefficients("mild-steel", 1.6e-3)
    >>> round(arc * 1e3, 3), round(resistance * 1e5, 2)
    (0.169, 1.58)
    """
    row = _melting_row(wire_material, filler_alloy)
    _current_rows(wire_material, wire_diameter)
    ranges.require("trim", trim, 0.5, 2.0, "")
    return melting_rate.scaled_coefficients(trim * row[2], trim * row[3], wires.REFERENCE_DIAMETER, wire_diameter)


def half_band(wire_material: str, filler_alloy: str = "") -> float:
    """Return how far a real arc may melt faster or slower than the law, as a share of it.

    trim = 1 - half_band to 1 + half_band

    Parameters
    ----------
    wire_material : str
        `mild-steel`, `stainless` or `aluminum`, [-].
    filler_alloy : str, optional
        For aluminum `4043`, `5356` or `5183`, empty if not known, [-].

    Returns
    -------
    float
        Half-width of the band, [-].

    Raises
    ------
    ValueError
        If there is no such wire in the table.

    Notes
    -----
    Covers the coefficients, the gas, short-circuit against spray, and about 2 mm of arc length. It does not
    cover a contact_tip_to_work that was guessed, or a dial that does not show feed.

    Source
    ------
    facts/wires.py, MELTING: the spread between independent routes; from memory.

    Examples
    --------
    >>> half_band("mild-steel")
    0.15
    """
    return _melting_row(wire_material, filler_alloy)[4]


def current_limits(wire_material: str, wire_diameter: float, electrode_extension: float) -> tuple[float, float]:
    """Return the lowest and highest current for which the melting law may be asked.

    highest = the smaller of the wire's table and arc_coefficient / (resistance_coefficient *
    electrode_extension)

    Parameters
    ----------
    wire_material : str
        `mild-steel`, `stainless` or `aluminum`, [-].
    wire_diameter : float
        Wire diameter, [m]; 0.573 to 1.619 mm for mild steel, 0.747 to 1.619 mm for the others.
    electrode_extension : float
        Wire between contact tip and arc, [m]; 0.003 to 0.030.

    Returns
    -------
    tuple of float
        Lowest and highest current, [A]. They are where the law and its sources reach, not settings.

    Raises
    ------
    ranges.OutOfRange
        If the diameter or the extension is outside its range.
    ValueError
        If there is no such wire in the table.

    Notes
    -----
    Beyond the second limit more than half the heat would be made in the stick-out: the wire would be near
    melting before it met the arc, and a law with one fixed resistance no longer holds. A shorter stick-out
    moves the limit up.

    Source
    ------
    facts/wires.py, CURRENT_RANGES: stainless and aluminum published, mild steel from memory. The half-heat
    limit: energy balance, law.

    Examples
    --------
    >>> current_limits("aluminum", 1.6e-3, 0.012)
    (160.0, 300.0)
    >>> [round(limit) for limit in current_limits("mild-steel", 0.889e-3, 0.014)]
    [75, 235]
    """
    rows = _current_rows(wire_material, wire_diameter)
    ranges.require("electrode_extension", electrode_extension, 0.003, 0.030, "m")
    lowest, highest = _between(rows, wire_diameter)
    arc, resistance = coefficients(wire_material, wire_diameter)
    if resistance > 0.0:
        highest = min(highest, arc / (resistance * electrode_extension))
    return lowest, highest


def current_for_thickness(thickness: float) -> float:
    """Return the shop rule's current for a thickness of steel: one ampere for a thousandth of an inch.

    current = thickness / 0.001 in * 1 A

    Parameters
    ----------
    thickness : float
        Thickness of steel, [m]; 0.0005 to 0.00635.

    Returns
    -------
    float
        Current, [A]; good to about 25 %.

    Raises
    ------
    ranges.OutOfRange
        If the thickness is outside its range.

    Notes
    -----
    Somewhere to start on a test piece, not a procedure. Above about 1/4 in it asks for far too much; thick
    metal is welded in passes.

    Source
    ------
    Shop rule: common practice.

    Examples
    --------
    >>> round(current_for_thickness(0.125 * 0.0254))
    125
    """
    ranges.require("thickness", thickness, 0.0005, 0.00635, "m")
    return thickness * wires.CURRENT_PER_THICKNESS


def burn_off_feed(current: float, wire_diameter: float) -> float:
    """Return the shop rule's feed of steel wire in short-circuit: so many inches a minute for each ampere.

    wire_feed_speed = rule of the nearest inch size * (inch size / wire_diameter)^2 * current

    Parameters
    ----------
    current : float
        Mean current, [A]; 30 to 180.
    wire_diameter : float
        Wire diameter, [m]; within 7 % of 0.6 mm, 0.030, 0.035 or 0.045 in.

    Returns
    -------
    float
        Wire feed speed, [m/s]; good to about 15 %.

    Raises
    ------
    ranges.OutOfRange
        If the current is outside its range or the rule has no such wire.

    Notes
    -----
    A cross-check for the melting law, which stands on other numbers. It knows no stick-out; above about 180 A
    it reads low.

    Source
    ------
    Shop rule, facts/wires.py, BURN_OFF: common practice.

    Examples
    --------
    >>> round(burn_off_feed(125.0, 0.889e-3) / 0.0254 * 60)
    200
    """
    ranges.require("current", current, 30.0, 180.0, "A")
    nearest = wires.BURN_OFF[0]
    for row in wires.BURN_OFF:
        if numerals.settle(abs(row[0] - wire_diameter)) < numerals.settle(abs(nearest[0] - wire_diameter)):
            nearest = row
    slack = wires.BURN_OFF_SLACK
    ranges.require("wire_diameter", wire_diameter, nearest[0] * (1.0 - slack), nearest[0] * (1.0 + slack), "m")
    ratio = nearest[0] / wire_diameter
    return nearest[1] * ratio * ratio * current
