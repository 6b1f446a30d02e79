"""Cooling of a weld from 800 to 500 °C: thick plate, thin plate and the thickness between them."""

from calculators import numerals, ranges

# EN 1011-2:2001, Annex D, as SEW 088 and Uwer & Degenkolbe (1977) have it too:
#   thick  t = (6700 - 5 T) Q (1/(500 - T) - 1/(800 - T)) F3
#   thin   t = (4300 - 4.3 T) 1e5 (Q/d)^2 (1/(500 - T)^2 - 1/(800 - T)^2) F2
# with Q in kJ/mm, efficiency included, d in mm, T in °C; both seen quoted in German texts, not in the standard
# itself. Here in coherent SI: 5 s mm/kJ is 5e-6 s m/J, 4.3e5 s K mm4/kJ2 is 4.3e-13 s K m4/J2, and 6700/5 and
# 4300/4.3 °C are 1613.15 and 1273.15 K.
_THICK = 5.0e-6
_THIN = 4.3e-13
_THICK_END = 1613.15
_THIN_END = 1273.15
_HOT = 1073.15  # 800 °C
_COOL = 773.15  # 500 °C

# Joint -> lowest and highest F2 of thin plate, F3 of thick plate: EN 1011-2:2001, Annex D; from memory. Where F2 is
# a range it depends on heat input and thickness by a chart that is not at hand.
JOINT_FACTORS = (
    ("bead-on-plate", 1.0, 1.0, 1.0),
    ("butt-passes", 0.9, 0.9, 0.9),
    ("corner-fillet", 0.9, 0.9, 0.67),
    ("tee-fillet", 0.45, 0.67, 0.67),
)

# Where this book uses the formulas. They leave out what air and backing take, which counts on sheet and in slow
# cooling, and come from arc welds of ordinary size.
HEAT_INPUT_RANGE = (1.0e5, 1.0e7)
THICKNESS_RANGE = (0.003, 0.3)
PREHEAT_RANGE = (253.15, 573.15)
COOLING_TIME_RANGE = (0.5, 200.0)


def joint_factors(joint: str) -> tuple[float, float, float]:
    """Return the factors of a joint: lowest and highest F2 of thin plate, and F3 of thick plate.

    Parameters
    ----------
    joint : str
        One of the names in JOINT_FACTORS.

    Returns
    -------
    tuple
        Lowest F2 [-], highest F2 [-], F3 [-].

    Raises
    ------
    KeyError
        If the joint is not in the table.

    Source
    ------
    EN 1011-2:2001, Annex D; from memory.

    Examples
    --------
    >>> joint_factors("corner-fillet")
    (0.9, 0.9, 0.67)
    """
    for name, low, high, thick in JOINT_FACTORS:
        if name == joint:
            return (low, high, thick)
    raise KeyError(joint)


def thick_plate_time(heat_input: float, preheat_temperature: float, thick_factor: float) -> float:
    """Return the cooling time from 800 to 500 °C where heat runs away in three directions.

    t = (6700 - 5 T) Q (1/(500 - T) - 1/(800 - T)) F3, with Q in kJ/mm and T in °C

    Parameters
    ----------
    heat_input : float
        Heat input, efficiency included, [J/m]; 1e5 to 1e7.
    preheat_temperature : float
        Temperature of the plate before the pass, [K]; 253.15 to 573.15.
    thick_factor : float
        Joint factor F3, [-]; 0.3 to 1.

    Returns
    -------
    float
        Cooling time, [s].

    Raises
    ------
    ranges.OutOfRange
        If an input is not finite or is outside its range.

    Notes
    -----
    Unalloyed and low-alloy steel. The thickness plays no part.

    Source
    ------
    EN 1011-2:2001, Annex D; standard, seen quoted in German texts, not read in the standard itself.

    Examples
    --------
    >>> round(thick_plate_time(1.0e6, 293.15, 1.0), 2)
    5.29
    """
    _require(heat_input, preheat_temperature)
    ranges.require("thick_factor", thick_factor, 0.3, 1.0, "")
    fall = 1.0 / (_COOL - preheat_temperature) - 1.0 / (_HOT - preheat_temperature)
    return _THICK * (_THICK_END - preheat_temperature) * heat_input * fall * thick_factor


def thin_plate_time(heat_input: float, preheat_temperature: float, thickness: float, thin_factor: float) -> float:
    """Return the cooling time from 800 to 500 °C where heat runs away in the plane of the plate only.

    t = (4300 - 4.3 T) 1e5 (Q/d)^2 (1/(500 - T)^2 - 1/(800 - T)^2) F2, with Q in kJ/mm, d in mm and T in °C

    Parameters
    ----------
    heat_input : float
        Heat input, efficiency included, [J/m]; 1e5 to 1e7.
    preheat_temperature : float
        Temperature of the plate before the pass, [K]; 253.15 to 573.15.
    thickness : float
        Plate thickness, [m]; 0.003 to 0.3.
    thin_factor : float
        Joint factor F2, [-]; 0.3 to 1.

    Returns
    -------
    float
        Cooling time, [s].

    Raises
    ------
    ranges.OutOfRange
        If an input is not finite or is outside its range.

    Notes
    -----
    Unalloyed and low-alloy steel.

    Source
    ------
    EN 1011-2:2001, Annex D; standard, seen quoted in German texts, not read in the standard itself.

    Examples
    --------
    >>> round(thin_plate_time(1.0e6, 293.15, 0.010, 1.0), 2)
    11.36
    """
    _require(heat_input, preheat_temperature)
    ranges.require("thickness", thickness, THICKNESS_RANGE[0], THICKNESS_RANGE[1], "m")
    ranges.require("thin_factor", thin_factor, 0.3, 1.0, "")
    cool = 1.0 / (_COOL - preheat_temperature)
    hot = 1.0 / (_HOT - preheat_temperature)
    share = heat_input / thickness
    return _THIN * (_THIN_END - preheat_temperature) * share * share * (cool * cool - hot * hot) * thin_factor


def transition_thickness(
    heat_input: float, preheat_temperature: float, thin_factor: float = 1.0, thick_factor: float = 1.0
) -> float:
    """Return the thickness at which the thin-plate and thick-plate cooling times are equal.

    dt = sqrt((4300 - 4.3 T)/(6700 - 5 T) 1e5 Q (1/(500 - T) + 1/(800 - T)) F2/F3), with Q in kJ/mm, T in °C, dt in mm

    Parameters
    ----------
    heat_input : float
        Heat input, efficiency included, [J/m]; 1e5 to 1e7.
    preheat_temperature : float
        Temperature of the plate before the pass, [K]; 253.15 to 573.15.
    thin_factor : float, optional
        Joint factor F2, [-]; 0.3 to 1.
    thick_factor : float, optional
        Joint factor F3, [-]; 0.3 to 1.

    Returns
    -------
    float
        Transition thickness, [m].

    Raises
    ------
    ranges.OutOfRange
        If an input is not finite or is outside its range.

    Notes
    -----
    The standard's own has no joint factors in it (both 1 here). With unequal factors the two times meet elsewhere.

    Source
    ------
    EN 1011-2:2001, Annex D; standard, from memory. It follows from setting its two formulas equal.

    Examples
    --------
    >>> round(transition_thickness(1.0e6, 293.15) * 1000.0, 2)
    14.66
    """
    _require(heat_input, preheat_temperature)
    ranges.require("thin_factor", thin_factor, 0.3, 1.0, "")
    ranges.require("thick_factor", thick_factor, 0.3, 1.0, "")
    both = 1.0 / (_COOL - preheat_temperature) + 1.0 / (_HOT - preheat_temperature)
    ratio = _THIN * (_THIN_END - preheat_temperature) / (_THICK * (_THICK_END - preheat_temperature))
    return (ratio * heat_input * both * thin_factor / thick_factor) ** 0.5


def is_thin(thickness: float, transition: float) -> bool:
    """Return whether a plate counts as thin: below the transition thickness, compared at ten figures.

    Parameters
    ----------
    thickness : float
        Plate thickness, [m]; 0.003 to 0.3.
    transition : float
        Transition thickness, [m]; above 0.

    Returns
    -------
    bool
        True for the thin-plate formula [-]; at the transition itself both give the same.

    Raises
    ------
    ranges.OutOfRange
        If an input is not finite or is outside its range.

    Source
    ------
    EN 1011-2:2001, Annex D; standard, from memory.

    Examples
    --------
    >>> is_thin(0.010, 0.01466)
    True
    """
    ranges.require("thickness", thickness, THICKNESS_RANGE[0], THICKNESS_RANGE[1], "m")
    ranges.require("transition", transition, 1e-6, None, "m")
    return numerals.settle(thickness) < numerals.settle(transition)


def cooling_time(
    heat_input: float, preheat_temperature: float, thickness: float, thin_factor: float, thick_factor: float
) -> float:
    """Return the cooling time from 800 to 500 °C by the formula that the thickness calls for.

    t = thin-plate time below the transition thickness of the joint, thick-plate time from it on

    Parameters
    ----------
    heat_input : float
        Heat input, efficiency included, [J/m]; 1e5 to 1e7.
    preheat_temperature : float
        Temperature of the plate before the pass, [K]; 253.15 to 573.15.
    thickness : float
        Plate thickness, [m]; 0.003 to 0.3.
    thin_factor : float
        Joint factor F2, [-]; 0.3 to 1.
    thick_factor : float
        Joint factor F3, [-]; 0.3 to 1.

    Returns
    -------
    float
        Cooling time, [s].

    Raises
    ------
    ranges.OutOfRange
        If an input is not finite or is outside its range.

    Notes
    -----
    The transition thickness is taken with the joint factors in it, so this is the longer of the two times and never
    jumps. By the standard's own (factors left out) joints with unequal factors jump there by F2/F3.

    Source
    ------
    EN 1011-2:2001, Annex D; standard, seen quoted in German texts, not read in the standard itself.

    Examples
    --------
    >>> round(cooling_time(1.0e6, 293.15, 0.010, 1.0, 1.0), 2)
    11.36
    >>> round(cooling_time(1.0e6, 293.15, 0.025, 1.0, 1.0), 2)
    5.29
    """
    transition = transition_thickness(heat_input, preheat_temperature, thin_factor, thick_factor)
    if is_thin(thickness, transition):
        return thin_plate_time(heat_input, preheat_temperature, thickness, thin_factor)
    return thick_plate_time(heat_input, preheat_temperature, thick_factor)


def _require(heat_input: float, preheat_temperature: float) -> None:
    ranges.require("heat_input", heat_input, HEAT_INPUT_RANGE[0], HEAT_INPUT_RANGE[1], "J/m")
    ranges.require("preheat_temperature", preheat_temperature, PREHEAT_RANGE[0], PREHEAT_RANGE[1], "K")
