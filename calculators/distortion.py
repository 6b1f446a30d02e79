"""How far a weld draws its plates together across the joint and along it: published formulas and rules of thumb."""

from calculators import ranges

# Fillets of one leg on both sides: shrinkage = so much for a leg as large as the plate is thick. AWS Welding
# Handbook, volume 1: 0.04 in for a T joint, 0.06 in for a lap joint; from memory.
FILLET_COEFFICIENTS = (("tee-fillets", 0.04 * 0.0254), ("lap-fillets", 0.06 * 0.0254))

# TWI, technical FAQ "How much shall I allow for weld shrinkage?": allowances for steel; seen.
RULE_FILLET = 0.8e-3  # across, each fillet with a leg up to 3/4 of the thickness, [m]
RULE_FILLET_LEG = 0.75  # of the thickness
RULE_BUTT = (1.5e-3, 3.0e-3)  # across, 60° V, [m]
RULE_ALONG = (("butt", 0.001), ("fillet", 0.8 / 3000.0))  # 3 mm and 0.8 mm in 3 m of weld

# Published formulas for the same weld differ by a factor of two, and welds scatter by half: from memory.
SCATTER = 0.5


def weld_area(thickness: float, groove_width: float, root_opening: float) -> float:
    """Return the cross-section of a V or square butt weld from its width at the top and at the root.

    A = t (w + d) / 2

    Parameters
    ----------
    thickness : float
        Plate thickness, [m]; 0.001 to 0.1.
    groove_width : float
        Width at the top, [m]; 0 to 0.2.
    root_opening : float
        Opening at the root, [m]; 0 to 0.025.

    Returns
    -------
    float
        Area, [m2].

    Raises
    ------
    ranges.OutOfRange
        If an input is not finite or is outside its range.

    Notes
    -----
    A trapezium. Cap and melted sides add to it, a root face takes a little off.

    Source
    ------
    Geometry: law.

    Examples
    --------
    >>> round(weld_area(0.010, 0.010, 0.002) * 1e6, 6)
    60.0
    """
    _require_plate(thickness)
    ranges.require("groove_width", groove_width, 0.0, 0.2, "m")
    ranges.require("root_opening", root_opening, 0.0, 0.025, "m")
    return thickness * (groove_width + root_opening) / 2.0


def butt_shrinkage(area: float, thickness: float, root_opening: float) -> float:
    """Return how far a butt weld draws its plates together, by Spraragen and Ettinger.

    S = 0.2 A/t + 0.05 d

    Parameters
    ----------
    area : float
        Cross-section of the weld, [m2]; 1e-6 to 0.01.
    thickness : float
        Plate thickness, [m]; 0.001 to 0.1.
    root_opening : float
        Opening at the root, [m]; 0 to 0.025.

    Returns
    -------
    float
        Shrinkage across the weld, [m].

    Raises
    ------
    ranges.OutOfRange
        If an input is not finite or is outside its range.

    Notes
    -----
    Carbon and low-alloy steel, free to move. Homogeneous: any one unit of length serves. The form with 5.08 and 1.27
    in it takes inches and gives millimetres; fed with millimetres it is 25 times too large.

    Source
    ------
    Spraragen and Ettinger, in the AWS Welding Handbook, volume 1, and Masubuchi, Analysis of Welded Structures; from
    memory.

    Examples
    --------
    >>> round(butt_shrinkage(60e-6, 0.010, 0.002) * 1000.0, 6)
    1.3
    """
    ranges.require("area", area, 1.0e-6, 0.01, "m2")
    _require_plate(thickness)
    ranges.require("root_opening", root_opening, 0.0, 0.025, "m")
    return 0.2 * area / thickness + 0.05 * root_opening


def butt_shrinkage_of_mean_width(area: float, thickness: float) -> float:
    """Return how far a butt weld draws its plates together, by Blodgett: a tenth of its mean width.

    S = 0.10 A/t

    Parameters
    ----------
    area : float
        Cross-section of the weld, [m2]; 1e-6 to 0.01.
    thickness : float
        Plate thickness, [m]; 0.001 to 0.1.

    Returns
    -------
    float
        Shrinkage across the weld, [m].

    Raises
    ------
    ranges.OutOfRange
        If an input is not finite or is outside its range.

    Source
    ------
    Blodgett, Design of Welded Structures, section 7.7; published, seen quoted in a contractor's method statement.

    Examples
    --------
    >>> round(butt_shrinkage_of_mean_width(60e-6, 0.010) * 1000.0, 6)
    0.6
    """
    ranges.require("area", area, 1.0e-6, 0.01, "m2")
    _require_plate(thickness)
    return 0.1 * area / thickness


def fillet_shrinkage(joint: str, leg: float, thickness: float, welded_share: float) -> float:
    """Return how far a pair of fillets shrinks the plate across their length.

    S = C leg/t welded_share, with C = 0.04 in for a T joint and 0.06 in for a lap joint

    Parameters
    ----------
    joint : str
        One of the names in FILLET_COEFFICIENTS.
    leg : float
        Leg of each of the two fillets, [m]; 0.001 to 0.05.
    thickness : float
        Thickness of the plate that shrinks, [m]; 0.001 to 0.1.
    welded_share : float
        Share of the length that is welded, [-]; 0.05 to 1.

    Returns
    -------
    float
        Shrinkage across the welds, [m].

    Raises
    ------
    ranges.OutOfRange
        If a number is not finite or is outside its range.
    KeyError
        If the joint is not in the table.

    Notes
    -----
    Carbon and low-alloy steel, free to move; both fillets made.

    Source
    ------
    AWS Welding Handbook, volume 1; from memory.

    Examples
    --------
    >>> round(fillet_shrinkage("tee-fillets", 0.006, 0.012, 1.0) * 1000.0, 3)
    0.508
    """
    ranges.require("leg", leg, 0.001, 0.05, "m")
    _require_plate(thickness)
    ranges.require("welded_share", welded_share, 0.05, 1.0, "")
    return fillet_coefficient(joint) * leg / thickness * welded_share


def fillet_coefficient(joint: str) -> float:
    """Return the shrinkage of a pair of fillets with legs as large as the plate is thick.

    Parameters
    ----------
    joint : str
        One of the names in FILLET_COEFFICIENTS.

    Returns
    -------
    float
        Coefficient C, [m].

    Raises
    ------
    KeyError
        If the joint is not in the table.

    Source
    ------
    AWS Welding Handbook, volume 1; from memory.

    Examples
    --------
    >>> round(fillet_coefficient("lap-fillets") * 1000.0, 3)
    1.524
    """
    for name, coefficient in FILLET_COEFFICIENTS:
        if name == joint:
            return coefficient
    raise KeyError(joint)


def shrinkage_along(kind: str, weld_length: float) -> float:
    """Return how much shorter a weld makes the plate along its own length, by the rule of thumb.

    S = 0.8 mm in 3 m for a fillet, 3 mm in 3 m for a butt weld

    Parameters
    ----------
    kind : str
        butt or fillet.
    weld_length : float
        Length of the weld, [m]; 0.001 to 1000.

    Returns
    -------
    float
        Shrinkage along the weld, [m].

    Raises
    ------
    ranges.OutOfRange
        If a number is not finite or is outside its range.
    KeyError
        If the kind is neither.

    Source
    ------
    TWI, technical FAQ "How much shall I allow for weld shrinkage?"; published, seen.

    Examples
    --------
    >>> round(shrinkage_along("butt", 3.0) * 1000.0, 6)
    3.0
    """
    ranges.require("weld_length", weld_length, 0.001, 1000.0, "m")
    for name, share in RULE_ALONG:
        if name == kind:
            return share * weld_length
    raise KeyError(kind)


def _require_plate(thickness: float) -> None:
    ranges.require("thickness", thickness, 0.001, 0.1, "m")
