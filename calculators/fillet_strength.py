"""What a fillet weld carries for each length of it, and what the part beside it carries, by two codes."""

import math

from calculators import ranges
from calculators.facts import fillet_rules as facts

_THINNEST, _THICKEST = 0.003, 0.1  # m: structural rules begin at 1/8 in, which is written as 3 mm
_WEAKEST, _STRONGEST = 100.0e6, 1200.0e6  # Pa


# ---------------------------------------------------------------- strength of the weld


def directional_increase(load_angle: float) -> float:
    """Return how much stronger a weld is across than along: 1.0 + 0.50 sin^1.5(angle).

    Parameters
    ----------
    load_angle : float
        Angle between the force and the length of the weld, [rad]; 0 to 1.5707963267948966.

    Returns
    -------
    float
        Factor, 1 to 1.5, [-].

    Raises
    ------
    ranges.OutOfRange
        If the angle is not finite or is outside its range.

    Notes
    -----
    Not for fillet welds to the ends of hollow sections, nor for groups of welds that run in several directions unless
    their strains are reckoned with. Packer and others (Toronto) found it unsafe for gapped hollow sections.

    Source
    ------
    ANSI/AISC 360-22 equation J2-5, as worked in AISC Design Examples v16.0, example J.2A (seen; standard).

    Examples
    --------
    >>> round(directional_increase(1.0471975511965976), 3)
    1.403
    """
    ranges.require("load_angle", load_angle, 0.0, math.pi / 2.0, "rad")
    return 1.0 + 0.50 * math.sin(load_angle) ** 1.5


def directional_increase_eurocode(load_angle: float) -> float:
    """Return how much more a pair of welds carries by the Eurocode's directional method: sqrt(3 / (2 + cos2)).

    Parameters
    ----------
    load_angle : float
        Angle between the force and the length of the weld, [rad]; 0 to 1.5707963267948966.

    Returns
    -------
    float
        Factor, 1 to 1.2247, [-].

    Raises
    ------
    ranges.OutOfRange
        If the angle is not finite or is outside its range.

    Notes
    -----
    For a symmetrical pair of welds: the force across is shared evenly by tension and shear on throats at 45 degrees. The
    standard's second limit, 0.9 fu / 1.25 on the tension alone, is then met with room to spare.

    Source
    ------
    EN 1993-1-8:2005 4.5.3.2, by algebra; 1.2247 for a force square across is the factor K of SCI P363 (from memory).

    Examples
    --------
    >>> round(directional_increase_eurocode(1.5707963267948966), 4)
    1.2247
    """
    ranges.require("load_angle", load_angle, 0.0, math.pi / 2.0, "rad")
    along = math.cos(load_angle)
    return (3.0 / (2.0 + along * along)) ** 0.5


def allowable_weld_stress(electrode_strength: float, increase: float) -> float:
    """Return the allowable stress on the throat: 0.60 * FEXX * increase / 2.00.

    Parameters
    ----------
    electrode_strength : float
        Classification strength FEXX of the filler, not the tensile strength of a certificate, [Pa]; 1e8 to 1.2e9.
    increase : float
        Factor of `directional_increase`; 1 leaves it out, [-]; 1 to 1.5.

    Returns
    -------
    float
        Allowable stress, to be met by loads as they are, [Pa].

    Raises
    ------
    ranges.OutOfRange
        If an input is not finite or is outside its range.

    Source
    ------
    ANSI/AISC 360 J2.4, allowable strength design (as worked in AISC Design Examples v16.0, J.1; seen; standard).

    Examples
    --------
    >>> round(allowable_weld_stress(482633010.5, 1.0))
    144789903
    """
    ranges.require("electrode_strength", electrode_strength, _WEAKEST, _STRONGEST, "Pa")
    ranges.require("increase", increase, 1.0, 1.5, "")
    return facts.SHEAR_SHARE * electrode_strength * increase / facts.WELD_SAFETY_FACTOR


def design_weld_stress(electrode_strength: float, increase: float) -> float:
    """Return the design stress on the throat: 0.75 * 0.60 * FEXX * increase.

    Parameters
    ----------
    electrode_strength : float
        Classification strength FEXX of the filler, [Pa]; 1e8 to 1.2e9.
    increase : float
        Factor of `directional_increase`; 1 leaves it out, [-]; 1 to 1.5.

    Returns
    -------
    float
        Design stress, to be met by factored loads, [Pa].

    Raises
    ------
    ranges.OutOfRange
        If an input is not finite or is outside its range.

    Source
    ------
    ANSI/AISC 360 J2.4, load and resistance factor design (as worked in AISC Design Examples v16.0, J.1; seen;
    standard).

    Examples
    --------
    >>> round(design_weld_stress(482633010.5, 1.0))
    217184855
    """
    ranges.require("electrode_strength", electrode_strength, _WEAKEST, _STRONGEST, "Pa")
    ranges.require("increase", increase, 1.0, 1.5, "")
    return facts.WELD_RESISTANCE_FACTOR * facts.SHEAR_SHARE * electrode_strength * increase


def eurocode_weld_stress(ultimate_strength: float, correlation_factor: float, increase: float) -> float:
    """Return the design shear strength of a weld by the Eurocode: fu / (sqrt(3) * beta_w * 1.25) * increase.

    Parameters
    ----------
    ultimate_strength : float
        Tensile strength fu of the weaker part, [Pa]; 1e8 to 1.2e9.
    correlation_factor : float
        Factor beta_w of the steel, [-]; 0.8 to 1.
    increase : float
        Factor of `directional_increase_eurocode`; 1 is the simplified method, [-]; 1 to 1.2248.

    Returns
    -------
    float
        Design stress on the throat, to be met by factored loads, [Pa].

    Raises
    ------
    ranges.OutOfRange
        If an input is not finite or is outside its range.

    Source
    ------
    EN 1993-1-8:2005 4.5.3.3, simplified method (text seen quoted; standard), with the recommended factor 1.25.

    Examples
    --------
    >>> round(eurocode_weld_stress(470e6, 0.9, 1.0) / 1e6, 1)
    241.2
    """
    ranges.require("ultimate_strength", ultimate_strength, _WEAKEST, _STRONGEST, "Pa")
    ranges.require("correlation_factor", correlation_factor, 0.8, 1.0, "")
    ranges.require("increase", increase, 1.0, 1.2248, "")
    return ultimate_strength * increase / (3.0**0.5 * correlation_factor * facts.GAMMA_M2)


# ---------------------------------------------------------------- strength of the parts joined


def allowable_metal_strength(thickness: float, yield_strength: float, ultimate_strength: float) -> float:
    """Return what a part carries in shear beside the weld: the lower of 0.60 Fy t / 1.50 and 0.60 Fu t / 2.00.

    Parameters
    ----------
    thickness : float
        Thickness of the part, [m]; 0.003 to 0.1.
    yield_strength : float
        Least yield strength Fy, [Pa]; 1e8 to 1.2e9.
    ultimate_strength : float
        Least tensile strength Fu, [Pa]; 1e8 to 1.2e9.

    Returns
    -------
    float
        Allowable force for each length, to be met by loads as they are, [N/m].

    Raises
    ------
    ranges.OutOfRange
        If an input is not finite or is outside its range.

    Notes
    -----
    Shear along the weld only. Tension through the thickness, bending and block shear are other checks.

    Source
    ------
    ANSI/AISC 360 J2.4(a) and J4.2 (rupture as worked in AISC Design Examples v16.0, J.1; seen; standard).

    Examples
    --------
    >>> round(allowable_metal_strength(0.00635, 345e6, 448e6))
    853440
    """
    _require_metal(thickness, yield_strength, ultimate_strength)
    yielding = facts.SHEAR_SHARE * yield_strength * thickness / facts.YIELD_SAFETY_FACTOR
    rupture = facts.SHEAR_SHARE * ultimate_strength * thickness / facts.WELD_SAFETY_FACTOR
    return min(yielding, rupture)


def design_metal_strength(thickness: float, yield_strength: float, ultimate_strength: float) -> float:
    """Return what a part carries in shear beside the weld: the lower of 1.00 * 0.60 Fy t and 0.75 * 0.60 Fu t.

    Parameters
    ----------
    thickness : float
        Thickness of the part, [m]; 0.003 to 0.1.
    yield_strength : float
        Least yield strength Fy, [Pa]; 1e8 to 1.2e9.
    ultimate_strength : float
        Least tensile strength Fu, [Pa]; 1e8 to 1.2e9.

    Returns
    -------
    float
        Design force for each length, to be met by factored loads, [N/m].

    Raises
    ------
    ranges.OutOfRange
        If an input is not finite or is outside its range.

    Source
    ------
    As `allowable_metal_strength`.

    Examples
    --------
    >>> round(design_metal_strength(0.00635, 345e6, 448e6))
    1280160
    """
    _require_metal(thickness, yield_strength, ultimate_strength)
    yielding = facts.YIELD_RESISTANCE_FACTOR * facts.SHEAR_SHARE * yield_strength * thickness
    rupture = facts.WELD_RESISTANCE_FACTOR * facts.SHEAR_SHARE * ultimate_strength * thickness
    return min(yielding, rupture)


def eurocode_metal_strength(thickness: float, yield_strength: float) -> float:
    """Return what a part carries in shear beside the weld by the Eurocode: fy t / (sqrt(3) * 1.00).

    Parameters
    ----------
    thickness : float
        Thickness of the part, [m]; 0.003 to 0.1.
    yield_strength : float
        Yield strength fy, [Pa]; 1e8 to 1.2e9.

    Returns
    -------
    float
        Design force for each length, to be met by factored loads, [N/m].

    Raises
    ------
    ranges.OutOfRange
        If an input is not finite or is outside its range.

    Source
    ------
    EN 1993-1-1:2005 6.2.6, plastic shear resistance with the recommended factor 1.00 (standard; from memory).

    Examples
    --------
    >>> round(eurocode_metal_strength(0.01, 355e6))
    2049593
    """
    _require_metal(thickness, yield_strength, yield_strength)
    return yield_strength * thickness / (3.0**0.5 * facts.GAMMA_M0)


def _require_metal(thickness: float, yield_strength: float, ultimate_strength: float) -> None:
    ranges.require("thickness", thickness, _THINNEST, _THICKEST, "m")
    ranges.require("yield_strength", yield_strength, _WEAKEST, _STRONGEST, "Pa")
    ranges.require("ultimate_strength", ultimate_strength, _WEAKEST, _STRONGEST, "Pa")
