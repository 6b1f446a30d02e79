"""At which current and voltage each transfer mode runs, and where it serves.

Empirical throughout: tables of wires and gases, read between their rows and never beyond them.
"""

from calculators import numerals, ranges, voltage_lines
from calculators.facts import transfer, wires

TYPE_CHECKING = False
if TYPE_CHECKING:
    Border = tuple[str, float, float, float]


def _rows_of(
    table: "tuple[tuple[str, tuple[tuple[float, ...], ...]], ...]", name: str
) -> "tuple[tuple[float, ...], ...]":
    for row in table:
        if row[0] == name:
            return row[1]
    return ()


def sprays(wire_material: str, gas: str, carbon_dioxide: float = 0.25) -> bool:
    """Return whether a gas lets a wire spray: the argon-rich ones do, as far as their figures are known.

    carbon dioxide at most 20 % on mild steel, 5 % on stainless, none on aluminum

    Parameters
    ----------
    wire_material : str
        `mild-steel`, `stainless` or `aluminum`, [-].
    gas : str
        Gas, as in `voltage_lines.carbon_dioxide_share`, [-].
    carbon_dioxide : float, optional
        Share of carbon dioxide in the mix with argon, [-]; 0 to 1.

    Returns
    -------
    bool
        Whether there is a spray transition to speak of.

    Raises
    ------
    ranges.OutOfRange
        If the share is outside its range.

    Notes
    -----
    Steel in pure argon sprays with a wandering arc, which is not used; aluminum takes pure argon only here, since
    the figures of its helium mixes are not known.

    Source
    ------
    facts/transfer.py, MOST_CARBON_DIOXIDE: from memory, second route API RP 577.

    Examples
    --------
    >>> sprays("mild-steel", "argon-carbon-dioxide", 0.10), sprays("mild-steel", "argon-carbon-dioxide", 0.25)
    (True, False)
    """
    share = voltage_lines.carbon_dioxide_share(gas, carbon_dioxide)
    if wire_material == "aluminum":
        return gas == "argon"
    if gas == "argon-carbon-dioxide":
        return share > 0.0 and not ranges.above(share, dict(transfer.MOST_CARBON_DIOXIDE)[wire_material])
    return gas == "argon-oxygen"


def transition_current(
    wire_material: str, wire_diameter: float, gas: str, carbon_dioxide: float = 0.25
) -> tuple[float, float, float] | None:
    """Return the current above which a wire sprays, as a band, or None where the gas lets none.

    transition = table of the wire * factor of the carbon dioxide

    Parameters
    ----------
    wire_material : str
        `mild-steel`, `stainless` or `aluminum`, [-].
    wire_diameter : float
        Wire diameter, [m]; above 0.747 mm for mild steel and aluminum, 0.871 mm for stainless, all to 1.619 mm.
    gas : str
        Gas, as in `voltage_lines.carbon_dioxide_share`, [-].
    carbon_dioxide : float, optional
        Share of carbon dioxide in the mix with argon, [-]; 0 to 1.

    Returns
    -------
    tuple of float or None
        Below the first surely not, about the second, above the third surely spray, [A].

    Raises
    ------
    ranges.OutOfRange
        If the gas lets the wire spray and its diameter is not in the table, or an input is no number.

    Notes
    -----
    Holds for about 19 mm of stick-out, electrode positive. More stick-out lowers it; by how much, no published number was found.

    Source
    ------
    facts/transfer.py, TRANSITIONS and CARBON_DIOXIDE_RAISES: AWS Welding Handbook, from memory; Ponomarev and
    Slivinsky, published; Methong and others, 2018, published.

    Examples
    --------
    >>> [round(amperes, 1) for amperes in transition_current("mild-steel", 0.889e-3, "argon-oxygen")]
    [148.5, 165.0, 176.6]
    """
    ranges.require("wire_diameter", wire_diameter, 0.5e-3, 2.5e-3, "m")
    if not sprays(wire_material, gas, carbon_dioxide):
        return None
    for name, rows, below, above in transfer.TRANSITIONS:
        if name == wire_material:
            middle = voltage_lines.at_diameter(rows, wire_diameter)[0]
            share = voltage_lines.carbon_dioxide_share(gas, carbon_dioxide)
            factor, less, more = voltage_lines.between(transfer.CARBON_DIOXIDE_RAISES, share)
            middle *= factor
            return middle * (1.0 - max(below, less)), middle, middle * (1.0 + max(above, more))
    raise ValueError("no transition current for wire_material " + wire_material)


def short_circuit_currents(
    wire_material: str, wire_diameter: float, position: str = "flat"
) -> tuple[float, float] | None:
    """Return the currents of short-circuit transfer: the wire's range, or None for a wire that has none.

    lowest and highest of the wire, read between the rows

    Parameters
    ----------
    wire_material : str
        `mild-steel`, `stainless` or `aluminum`, [-].
    wire_diameter : float
        Wire diameter, [m]; within the tables of this wire.
    position : str, optional
        `flat`, `horizontal`, `vertical-up`, `vertical-down` or `overhead`, [-].

    Returns
    -------
    tuple of float or None
        Lowest and highest current, [A]; None for aluminum and for a wire thicker than 1.2 mm.

    Raises
    ------
    ranges.OutOfRange
        If the wire is thinner than its table.

    Source
    ------
    facts/transfer.py, SHORT_CIRCUIT: mild steel AWS C5.6, from memory; stainless Modern Welding, 2020, published.

    Examples
    --------
    >>> short_circuit_currents("mild-steel", 0.889e-3), short_circuit_currents("mild-steel", 0.889e-3, "overhead")
    ((75.0, 175.0), (75.0, 150.0))
    """
    ranges.require("wire_diameter", wire_diameter, 0.5e-3, 2.5e-3, "m")
    rows = _rows_of(transfer.SHORT_CIRCUIT, wire_material)
    if not rows or ranges.above(wire_diameter, rows[-1][0] * (1.0 + wires.DIAMETER_SLACK)):
        return None
    lowest, level, other = voltage_lines.at_diameter(rows, wire_diameter)
    return lowest, level if position in transfer.LEVEL else other


def mode_at(
    wire_material: str,
    wire_diameter: float,
    gas: str,
    current: float,
    voltage: float,
    position: str = "flat",
    carbon_dioxide: float = 0.25,
) -> "tuple[str, tuple[Border, ...]]":
    """Return the transfer mode at a current and a voltage, and its borders, each a band.

    short-circuit below the border of voltage and inside the wire's range; spray above the transition with a long
    enough arc; globular above the border of voltage and below the transition; unclear within a band

    Parameters
    ----------
    wire_material : str
        `mild-steel`, `stainless` or `aluminum`, [-].
    wire_diameter : float
        Wire diameter, [m]; within the tables of this wire.
    gas : str
        Gas, as in `voltage_lines.carbon_dioxide_share`, [-].
    current : float
        Mean current, [A]; 5 to 1000.
    voltage : float
        Voltage between contact tip and work, [V]; 5 to 60.
    position : str, optional
        As in `short_circuit_currents`, [-].
    carbon_dioxide : float, optional
        Share of carbon dioxide in the mix with argon, [-]; 0 to 1.

    Returns
    -------
    tuple
        `short-circuit`, `globular`, `spray` or `unclear`, and (name, low, middle, high) of each border that this
        wire and gas have: `shorting` and `spray-arc` [V], `short-circuit-top` and `transition` [A].

    Raises
    ------
    ranges.OutOfRange
        If an input is outside its range or the wire is not in the tables.

    Notes
    -----
    Constant voltage, electrode positive, no pulse.

    Source
    ------
    facts/transfer.py; the borders of voltage: common practice.

    Examples
    --------
    >>> mode_at("mild-steel", 0.889e-3, "argon-carbon-dioxide", 130.0, 18.5)[0]
    'short-circuit'
    >>> mode_at("mild-steel", 1.143e-3, "argon-oxygen", 270.0, 28.0)[0]
    'spray'
    """
    ranges.require("current", current, 5.0, 1000.0, "A")
    ranges.require("voltage", voltage, 5.0, 60.0, "V")
    borders = borders_at(wire_material, wire_diameter, gas, current, position, carbon_dioxide)
    return _mode({border[0]: border[1:] for border in borders}, current, voltage), borders


def borders_at(
    wire_material: str,
    wire_diameter: float,
    gas: str,
    current: float,
    position: str = "flat",
    carbon_dioxide: float = 0.25,
) -> "tuple[Border, ...]":
    """Return the borders between the modes at a current: each a band of current or of voltage.

    shorting from the usual short-circuit voltages 2 V up, spray-arc from the usual spray voltages 2 V down; the
    others from the tables. Above the wire's short-circuit range, shorting stays where it ends.

    Parameters
    ----------
    wire_material : str
        `mild-steel`, `stainless` or `aluminum`, [-].
    wire_diameter : float
        Wire diameter, [m]; within the tables of this wire.
    gas : str
        Gas, as in `voltage_lines.carbon_dioxide_share`, [-].
    current : float
        Mean current, [A]; 5 to 1000.
    position : str, optional
        As in `short_circuit_currents`, [-].
    carbon_dioxide : float, optional
        Share of carbon dioxide in the mix with argon, [-]; 0 to 1.

    Returns
    -------
    tuple
        (name, low, middle, high) of `shorting` [V], `short-circuit-top` [A], `transition` [A] and `spray-arc` [V],
        as far as there are such.

    Raises
    ------
    ranges.OutOfRange
        If an input is outside its range or the wire is not in the tables.

    Source
    ------
    facts/transfer.py; the borders of voltage: common practice.

    Examples
    --------
    >>> [border[0] for border in borders_at("mild-steel", 0.889e-3, "carbon-dioxide", 130.0)]
    ['shorting', 'short-circuit-top']
    """
    wide = transfer.BORDER_WIDTH
    found = []
    reach = short_circuit_currents(wire_material, wire_diameter, position)
    top = transfer.MOST_SHORT_CIRCUIT if reach is None else reach[1]
    shorting = voltage_lines.usual_voltage(
        wire_material, gas, "short-circuit", min(current, top), wire_diameter, carbon_dioxide
    )
    if shorting is not None:
        most = shorting[2]
        found.append(("shorting", most, most + wide / 2.0, most + wide))
        if reach is not None:
            beyond = top * transfer.BEYOND_SHORT_CIRCUIT
            found.append(("short-circuit-top", top, top + beyond / 2.0, top + beyond))
    transition = transition_current(wire_material, wire_diameter, gas, carbon_dioxide)
    spray = voltage_lines.usual_voltage(wire_material, gas, "spray", current, wire_diameter, carbon_dioxide)
    if transition is not None and spray is not None:
        found.append(("transition", transition[0], transition[1], transition[2]))
        least = spray[0]
        found.append(("spray-arc", least - wide, least - wide / 2.0, least))
    return tuple(found)


def _mode(borders: "dict[str, tuple[float, float, float]]", current: float, voltage: float) -> str:
    shorting = borders.get("shorting")
    top = borders.get("short-circuit-top")
    transition = borders.get("transition")
    spray = borders.get("spray-arc")
    if shorting and top and not ranges.above(voltage, shorting[0]) and not ranges.above(current, top[0]):
        return "short-circuit"
    if transition and spray and not ranges.above(transition[2], current) and not ranges.above(spray[2], voltage):
        return "spray"
    if not shorting and not transition:
        return "unclear"  # a gas nothing is known of
    low_enough = transition is None or not ranges.above(current, transition[0])
    if low_enough and (shorting is None or not ranges.above(shorting[2], voltage)):
        return "globular"
    return "unclear"


def fit(transfer_mode: str, wire_material: str, thickness: float, position: str) -> str:
    """Return whether a mode serves a thickness in a position, in one word: `serves`, or what forbids it.

    position, vertical-down, thin, thick and cold-lap are looked at in this order

    Parameters
    ----------
    transfer_mode : str
        `short-circuit`, `globular`, `spray` or `pulse`, [-].
    wire_material : str
        `mild-steel`, `stainless` or `aluminum`, [-].
    thickness : float
        Thinnest metal of the joint, [m]; 0.1e-3 to 0.3.
    position : str
        As in `short_circuit_currents`, [-].

    Returns
    -------
    str
        `serves`, `position`, `vertical-down`, `thin`, `thick` (short-circuit above 1/4 in) or `cold-lap`
        (short-circuit from 3/16 in up to that).

    Raises
    ------
    ranges.OutOfRange
        If the thickness is outside its range.

    Notes
    -----
    `vertical-down` is about structural work; sheet-metal work has its own rules.

    Source
    ------
    facts/transfer.py, SERVES: positions from memory, second route API RP 577; thickness common practice.

    Examples
    --------
    >>> fit("short-circuit", "mild-steel", 3e-3, "overhead"), fit("spray", "mild-steel", 10e-3, "overhead")
    ('serves', 'position')
    """
    ranges.require("thickness", thickness, 0.1e-3, 0.3, "m")
    for mode, positions, thinnest, thickest in transfer.SERVES:
        if mode == transfer_mode:
            return _fit(mode, wire_material, numerals.settle(thickness), position, (positions, thinnest, thickest))
    raise ValueError("no such transfer_mode: " + transfer_mode)


def _fit(
    mode: str, wire_material: str, thickness: float, position: str, row: "tuple[tuple[str, ...], float, float]"
) -> str:
    positions, thinnest, thickest = row
    if position not in positions and wire_material != "aluminum":
        return "position"
    if position == "vertical-down" and thickness > transfer.VERTICAL_DOWN_THICKEST:
        return "vertical-down"
    if thickness < thinnest:
        return "thin"
    if thickest and thickness > thickest:
        return "thick"
    if mode == "short-circuit" and thickness >= transfer.COLD_LAP_FROM:
        return "cold-lap"
    return "serves"
