"""Which voltage is usual between contact tip and work, per gas and transfer mode; and the rating line, which is not.

Empirical: lines and corners of ranges from facts/transfer.py. The rating line is a standard's.
"""

from calculators import ranges
from calculators.facts import transfer, wires


def between(rows: "tuple[tuple[float, ...], ...]", place: float) -> tuple[float, ...]:
    """Return the columns after the first, read straight between the rows; the end rows hold beyond themselves.

    a + share * (b - a)

    Parameters
    ----------
    rows : tuple of tuple
        Rows in rising order of their first column, [-].
    place : float
        Where to read in the first column, [-]; any finite number, 0 to 1 for a share, as the caller has checked.

    Returns
    -------
    tuple of float
        The other columns, [-].

    Raises
    ------
    ranges.OutOfRange
        If the place is no number.

    Source
    ------
    Straight line between two points: law.

    Examples
    --------
    >>> between(((0.0, 10.0), (1.0, 20.0)), 0.25)
    (12.5,)
    """
    ranges.require("place", place, None, None, "")
    before = rows[0]
    for row in rows:
        if place <= row[0]:
            span = row[0] - before[0]
            share = (place - before[0]) / span if span else 0.0
            return tuple([before[i] + share * (row[i] - before[i]) for i in range(1, len(row))])
        before = row
    return tuple(before[1:])


def at_diameter(rows: "tuple[tuple[float, ...], ...]", wire_diameter: float) -> tuple[float, ...]:
    """Return the columns of a table of wires at a diameter: read between its rows, refused beyond them.

    a + share * (b - a)

    Parameters
    ----------
    rows : tuple of tuple
        Rows in rising order of wire diameter, the first column, [m].
    wire_diameter : float
        Wire diameter, [m]; within the rows and 2 % beyond.

    Returns
    -------
    tuple of float
        The other columns, [-], in the table's own units.

    Raises
    ------
    ranges.OutOfRange
        If the diameter is not within the table.

    Source
    ------
    Straight line between two points: law. The slack lets 1.6 mm stand for 1/16 in: common practice.

    Examples
    --------
    >>> at_diameter(((0.8e-3, 100.0), (1.2e-3, 200.0)), 1.0e-3)
    (150.0,)
    """
    slack = wires.DIAMETER_SLACK
    ranges.require("wire_diameter", wire_diameter, rows[0][0] * (1.0 - slack), rows[-1][0] * (1.0 + slack), "m")
    return between(rows, wire_diameter)


def carbon_dioxide_share(gas: str, carbon_dioxide: float = 0.25) -> float:
    """Return the carbon dioxide in a gas, as a share.

    carbon_dioxide for a mix, 1 for carbon dioxide alone, 0.025 for the helium mix, 0 for the others

    Parameters
    ----------
    gas : str
        `argon-carbon-dioxide`, `argon`, `argon-oxygen`, `helium-mix` or `carbon-dioxide`, [-].
    carbon_dioxide : float, optional
        Share of carbon dioxide in the mix with argon, [-]; 0 to 1.

    Returns
    -------
    float
        Share of carbon dioxide, [-].

    Raises
    ------
    ranges.OutOfRange
        If the share is outside its range.

    Source
    ------
    Definition; helium mix of 90 % helium, 7.5 % argon, 2.5 % carbon dioxide: Modern Welding, 2020, published.

    Examples
    --------
    >>> carbon_dioxide_share("argon-carbon-dioxide", 0.18), carbon_dioxide_share("carbon-dioxide")
    (0.18, 1.0)
    """
    ranges.require("carbon_dioxide", carbon_dioxide, 0.0, 1.0, "")
    fixed = (("argon-carbon-dioxide", carbon_dioxide), ("carbon-dioxide", 1.0), ("helium-mix", 0.025))
    return dict(fixed).get(gas, 0.0)


def usual_voltage(
    wire_material: str,
    gas: str,
    transfer_mode: str,
    current: float,
    wire_diameter: float,
    carbon_dioxide: float = 0.25,
) -> tuple[float, float, float] | None:
    """Return the voltage usually run between contact tip and work, as a band, or None where none is known.

    a + b * current + c * carbon dioxide for steel; from corner to corner of a published range where there is one

    Parameters
    ----------
    wire_material : str
        `mild-steel`, `stainless` or `aluminum`, [-].
    gas : str
        As in `carbon_dioxide_share`, [-].
    transfer_mode : str
        `short-circuit`, `globular`, `spray` or `flux-cored`, [-]; `pulse` has no line.
    current : float
        Mean current, [A]; 5 to 1000.
    wire_diameter : float
        Wire diameter, [m]; 0.5e-3 to 2.5e-3.
    carbon_dioxide : float, optional
        Share of carbon dioxide in the mix with argon, [-]; 0 to 1.

    Returns
    -------
    tuple of float or None
        Lowest, middle and highest usual voltage, [V].

    Raises
    ------
    ranges.OutOfRange
        If an input is outside its range or a published range does not reach the wire.

    Notes
    -----
    Arc and electrode extension together, leads left out. It is a place to start; the ear and the bead settle it.

    Source
    ------
    facts/transfer.py: CORNERS published (Modern Welding, 2020); LINES common practice.

    Examples
    --------
    >>> [round(volts, 2) for volts in usual_voltage("mild-steel", "argon-carbon-dioxide", "short-circuit", 100.0, 0.9e-3)]
    [15.75, 17.25, 18.75]
    >>> usual_voltage("aluminum", "argon", "spray", 165.0, 1.190625e-3)
    (23.0, 25.0, 27.0)
    """
    ranges.require("current", current, 5.0, 1000.0, "A")
    ranges.require("wire_diameter", wire_diameter, 0.5e-3, 2.5e-3, "m")
    ranges.require("carbon_dioxide", carbon_dioxide, 0.0, 1.0, "")
    if transfer_mode == "pulse":
        return None
    half = dict(transfer.HALF_BANDS)[transfer_mode]
    for name, mode, rows in transfer.CORNERS:
        if name == wire_material and mode == transfer_mode and _is_of(name, mode, gas, carbon_dioxide):
            return _along(at_diameter(rows, wire_diameter), current, half)
    return _on_line(wire_material, gas, transfer_mode, current, carbon_dioxide)


def _is_of(wire_material: str, transfer_mode: str, gas: str, carbon_dioxide: float) -> bool:
    """Return whether a published range was given for this gas."""
    if transfer_mode == "short-circuit":
        return gas == "helium-mix"
    if wire_material == "aluminum":
        return gas == "argon"
    if transfer_mode == "flux-cored":
        return gas in ("argon-carbon-dioxide", "carbon-dioxide")
    return gas == "argon-oxygen" or (gas == "argon-carbon-dioxide" and not ranges.above(carbon_dioxide, 0.05))


def _along(corners: tuple[float, ...], current: float, half: float) -> tuple[float, float, float]:
    """Return the band around the line from corner to corner, kept inside the range of voltage."""
    least, most, low, high = corners
    middle = min(max(low + (high - low) * (current - least) / (most - least), low), high)
    return max(low, middle - half), middle, min(high, middle + half)


def _on_line(
    wire_material: str, gas: str, transfer_mode: str, current: float, carbon_dioxide: float
) -> tuple[float, float, float] | None:
    mixed = gas in ("argon-carbon-dioxide", "argon-oxygen")
    if wire_material == "aluminum" or not (mixed or gas == "carbon-dioxide"):
        return None
    share = carbon_dioxide_share(gas, carbon_dioxide)
    if transfer_mode == "spray" and ranges.above(share, dict(transfer.MOST_CARBON_DIOXIDE)[wire_material]):
        return None
    for name, start, per_ampere, per_share in transfer.LINES:
        if name == transfer_mode:
            half = dict(transfer.HALF_BANDS)[name] + (0.0 if mixed else transfer.MORE_IN_CARBON_DIOXIDE)
            middle = start + per_ampere * current + per_share * share
            return middle - half, middle, middle + half
    return None


def load_voltage(current: float) -> float:
    """Return the conventional load voltage of gas metal arc machines: what a machine is rated and tested at.

    U = 14 V + 0.05 V/A * current, at most 44 V

    Parameters
    ----------
    current : float
        Rated current, [A]; 0 to 2000.

    Returns
    -------
    float
        Conventional load voltage, [V].

    Raises
    ------
    ranges.OutOfRange
        If the current is outside its range.

    Notes
    -----
    A line for test loads, so that ratings can be compared. Not a setting.

    Source
    ------
    IEC 60974-1, clause 11.2, GMAW and FCAW: standard; the line seen in use, the 44 V end from memory.

    Examples
    --------
    >>> load_voltage(200.0), load_voltage(700.0)
    (24.0, 44.0)
    """
    ranges.require("current", current, 0.0, 2000.0, "A")
    return min(14.0 + 0.05 * current, 44.0)
