"""What current a thickness of metal wants to start from, and which wire of a truck comes nearest to it.

Empirical throughout: shop rules, plain numbers.
"""

from calculators import melting_tables, ranges, transfer_limits
from calculators.facts import settings as facts
from calculators.facts import wires
from calculators.ranges import OutOfRange


def wanted_current(wire_material: str, thickness: float, position: str) -> tuple[float, float, float]:
    """Return the current a thickness wants, as a band: the shop rule, less on stainless, uphill and overhead.

    current = 1 A for each 0.001 in, up to 1/4 in * share of the metal * share of the position

    Parameters
    ----------
    wire_material : str
        `mild-steel`, `stainless` or `aluminum`, [-].
    thickness : float
        Thinnest metal of the joint, [m]; 0.0005 to 0.3. Above 1/4 in the rule stays where it ends.
    position : str
        `flat`, `horizontal`, `vertical-up`, `vertical-down` or `overhead`, [-].

    Returns
    -------
    tuple of float
        Lowest, middle and highest, [A].

    Raises
    ------
    ranges.OutOfRange
        If the thickness is outside its range.

    Notes
    -----
    Thick metal is welded in passes: more thickness then asks for more passes, not for more current.

    Source
    ------
    1 A for each 0.001 in, good to 25 %: common practice. The shares: facts/settings.py, common practice.

    Examples
    --------
    >>> [round(amperes, 2) for amperes in wanted_current("mild-steel", 3.175e-3, "flat")]
    [93.75, 125.0, 156.25]
    """
    ranges.require("thickness", thickness, 0.0005, 0.3, "m")
    share = dict(facts.CURRENT_SHARES)[wire_material]
    if position in facts.UPHILL:
        share *= facts.UPHILL_SHARE
    middle = share * melting_tables.current_for_thickness(min(thickness, facts.THICKEST_BY_RULE))
    half = wires.CURRENT_PER_THICKNESS_BAND
    return middle * (1.0 - half), middle, middle * (1.0 + half)


def nearest_wire(wire_material: str, current: float, position: str) -> float | None:
    """Return the thickest usual wire that short-circuits at a current without being stretched, or None.

    lowest <= 1.3 * current and highest >= 0.75 * current

    Parameters
    ----------
    wire_material : str
        `mild-steel` or `stainless`, [-]; aluminum has no such wire.
    current : float
        Current wanted, [A]; 5 to 1000.
    position : str
        As in `wanted_current`, [-].

    Returns
    -------
    float or None
        Wire diameter, [m].

    Raises
    ------
    ranges.OutOfRange
        If the current is outside its range.

    Source
    ------
    facts/transfer.py, SHORT_CIRCUIT; how far a wire is stretched: common practice.

    Examples
    --------
    >>> round(nearest_wire("mild-steel", 36.0, "flat") / 0.0254, 3)
    0.023
    """
    ranges.require("current", current, 5.0, 1000.0, "A")
    found = None
    for diameter in facts.WIRES:
        try:
            reach = transfer_limits.short_circuit_currents(wire_material, diameter, position)
        except OutOfRange:
            continue
        if (
            reach
            and not ranges.above(reach[0], facts.HOT * current)
            and not ranges.above(facts.COLD * current, reach[1])
        ):
            found = diameter
    return found
