"""How warm the steel must be before it is welded: a formula for each kind of steel, and the rows of a code.

Coherent SI: temperatures in kelvin, contents as mass fractions, diffusible hydrogen in m3/kg (1 mL/100 g is
1e-5 m3/kg). The formulas were fitted in degC, %, mm, mL/100 g and kJ/mm, and are written in these.
"""

import math

from calculators import numerals, ranges, units
from calculators.facts import preheat as facts

_ZERO_CELSIUS = 273.15  # K
_PERCENT = 0.01
_MILLIMETRE = units.factor_of("mm")
_INCH = units.factor_of("in")
_HYDROGEN = units.factor_of("mL/100g")
_KILOJOULE_PER_MILLIMETRE = units.factor_of("kJ/mm")

# EN 1011-2:2001, C.3, for welds like the tested ones: steels up to 1000 N/mm2 yield strength.
CET_RANGE = (0.20 * _PERCENT, 0.50 * _PERCENT)
THICKNESS_RANGE = (10.0 * _MILLIMETRE, 90.0 * _MILLIMETRE)
HYDROGEN_RANGE = (1.0 * _HYDROGEN, 20.0 * _HYDROGEN)
HEAT_INPUT_RANGE = (0.5 * _KILOJOULE_PER_MILLIMETRE, 4.0 * _KILOJOULE_PER_MILLIMETRE)

_WELD_METAL_ABOVE = 0.03 * _PERCENT


def governing_cet(cet: float, weld_metal_cet: float) -> float:
    """Return the CET that decides: the steel's, or the weld metal's and 0.03 % if that is more.

    CET = max(CET of the steel, CET of the weld metal + 0.03 %)

    Parameters
    ----------
    cet : float
        CET of the steel as a mass fraction, [-]; 0.0005 to 0.01.
    weld_metal_cet : float
        CET of the weld metal as a mass fraction, [-]; 0.0005 to 0.01.

    Returns
    -------
    float
        CET to put into the formula, [-].

    Raises
    ------
    ranges.OutOfRange
        If an input is not finite or is outside its range.

    Source
    ------
    EN 1011-2:2001, C.3.2; from memory. A steelmaker's handbook states the same 0.03 % as a condition (seen).

    Examples
    --------
    >>> round(governing_cet(0.0030, 0.0029), 6)
    0.0032
    """
    ranges.require("cet", cet, 0.0005, 0.01, "")
    ranges.require("weld_metal_cet", weld_metal_cet, 0.0005, 0.01, "")
    return max(cet, weld_metal_cet + _WELD_METAL_ABOVE)


def _require_method_b(cet: float, thickness: float, hydrogen: float, heat_input: float) -> None:
    ranges.require("cet", cet, *CET_RANGE, "")
    ranges.require("thickness", thickness, *THICKNESS_RANGE, "m")
    ranges.require("hydrogen", hydrogen, *HYDROGEN_RANGE, "m3/kg")
    ranges.require("heat_input", heat_input, *HEAT_INPUT_RANGE, "J/m")


def preheat_by_cet(cet: float, thickness: float, hydrogen: float, heat_input: float) -> float:
    """Return the least preheat of the CET method (EN 1011-2 Method B).

    Tp = 697 CET + 160 tanh(d / 35) + 62 HD^0.35 + (53 CET - 32) Q - 328, in degC, %, mm, mL/100 g, kJ/mm

    Parameters
    ----------
    cet : float
        Carbon equivalent CET as a mass fraction, [-]; 0.002 to 0.005.
    thickness : float
        Thickness of the thicker part, not the parts added up, [m]; 0.01 to 0.09.
    hydrogen : float
        Diffusible hydrogen of the weld metal, [m3/kg]; 1e-05 to 0.0002.
    heat_input : float
        Heat input with the thermal efficiency in it, [J/m]; 500000 to 4000000.

    Returns
    -------
    float
        Least temperature before each pass, [K]. It may lie below ambient.

    Raises
    ------
    ranges.OutOfRange
        If an input is not finite or is outside the range of the method.

    Notes
    -----
    Two false forms are about: tanh(35 / d), which falls with thickness, and CE put where CET belongs, which asks
    some 70 degC too much. Holds for yield strengths up to 1000 N/mm2.

    Source
    ------
    EN 1011-2:2001, C.3; not read in the standard itself. Its four parts add up to it exactly (``cet_method_parts``),
    and a course exercise on it gives the same sum with the rounder 700 and 330 (seen). Standard.

    Examples
    --------
    >>> round(preheat_by_cet(0.0034, 0.025, 5e-5, 1.0e6) - 273.15, 1)
    102.0
    """
    _require_method_b(cet, thickness, hydrogen, heat_input)
    percent = cet / _PERCENT
    heat = heat_input / _KILOJOULE_PER_MILLIMETRE
    celsius = (
        697.0 * percent
        + 160.0 * math.tanh(thickness / _MILLIMETRE / 35.0)
        + 62.0 * (hydrogen / _HYDROGEN) ** 0.35
        + (53.0 * percent - 32.0) * heat
        - 328.0
    )
    return celsius + _ZERO_CELSIUS


def cet_method_parts(
    cet: float, thickness: float, hydrogen: float, heat_input: float
) -> tuple[float, float, float, float]:
    """Return what chemistry, thickness, hydrogen and heat input each add to the preheat of the CET method.

    750 CET - 150;  160 tanh(d / 35) - 110;  62 HD^0.35 - 100;  (53 CET - 32) Q - 53 CET + 32

    Parameters
    ----------
    cet : float
        Carbon equivalent CET as a mass fraction, [-]; 0.002 to 0.005.
    thickness : float
        Thickness of the thicker part, [m]; 0.01 to 0.09.
    hydrogen : float
        Diffusible hydrogen of the weld metal, [m3/kg]; 1e-05 to 0.0002.
    heat_input : float
        Heat input with the thermal efficiency in it, [J/m]; 500000 to 4000000.

    Returns
    -------
    tuple[float, float, float, float]
        Parts by chemistry, thickness, hydrogen and heat input, [K]; added up they are the preheat in degC.

    Raises
    ------
    ranges.OutOfRange
        If an input is not finite or is outside the range of the method.

    Source
    ------
    EN 1011-2:2001, C.3, the formulas before the closed one; from memory. Standard.

    Examples
    --------
    >>> [round(part, 1) for part in cet_method_parts(0.0034, 0.025, 5e-5, 1.0e6)]
    [105.0, -11.9, 8.9, 0.0]
    """
    _require_method_b(cet, thickness, hydrogen, heat_input)
    percent = cet / _PERCENT
    heat = heat_input / _KILOJOULE_PER_MILLIMETRE
    return (
        750.0 * percent - 150.0,
        160.0 * math.tanh(thickness / _MILLIMETRE / 35.0) - 110.0,
        62.0 * (hydrogen / _HYDROGEN) ** 0.35 - 100.0,
        (53.0 * percent - 32.0) * heat - 53.0 * percent + 32.0,
    )


def seferian_carbon(
    carbon: float, manganese: float, chromium: float, nickel: float, molybdenum: float, thickness: float
) -> float:
    """Return Seferian's total carbon equivalent: the chemistry, and a share of it for the thickness.

    Ct = (C + (40 (Mn + Cr) + 20 Ni + 28 Mo) / 360) (1 + 0.005 d), d in mm

    Parameters
    ----------
    carbon : float
        Mass fraction of carbon, [-]; 0 to 0.007.
    manganese : float
        Mass fraction of manganese, [-]; 0 to 0.02.
    chromium : float
        Mass fraction of chromium, [-]; 0 to 0.03.
    nickel : float
        Mass fraction of nickel, [-]; 0 to 0.04.
    molybdenum : float
        Mass fraction of molybdenum, [-]; 0 to 0.012.
    thickness : float
        Thickness of the thicker part, [m]; 0.003 to 0.1.

    Returns
    -------
    float
        Total carbon equivalent as a mass fraction, [-].

    Raises
    ------
    ranges.OutOfRange
        If an input is not finite or is outside its range.

    Notes
    -----
    The ranges are ours: none was found with the formula.

    Source
    ------
    Seferian, Metallurgie de la soudure (1959); from memory.

    Examples
    --------
    >>> round(seferian_carbon(0.00405, 0.00875, 0.0095, 0.0, 0.0020, 0.025), 5)
    0.00701
    """
    ranges.require("carbon", carbon, 0.0, 0.007, "")
    ranges.require("manganese", manganese, 0.0, 0.02, "")
    ranges.require("chromium", chromium, 0.0, 0.03, "")
    ranges.require("nickel", nickel, 0.0, 0.04, "")
    ranges.require("molybdenum", molybdenum, 0.0, 0.012, "")
    ranges.require("thickness", thickness, 0.003, 0.1, "m")
    chemical = carbon + (40.0 * (manganese + chromium) + 20.0 * nickel + 28.0 * molybdenum) / 360.0
    return chemical * (1.0 + 0.005 * thickness / _MILLIMETRE)


def seferian_preheat(total_carbon: float) -> float:
    """Return the preheat by Seferian's formula, the cross-check for steels that CET does not reach.

    Tp = 350 sqrt(Ct - 0.25), in degC and %

    Parameters
    ----------
    total_carbon : float
        Total carbon equivalent (``seferian_carbon``) as a mass fraction, [-]; 0.0025 to 0.022.

    Returns
    -------
    float
        Preheat temperature, [K].

    Raises
    ------
    ranges.OutOfRange
        If the input is not finite or is outside its range: below 0.25 % the formula asks for no preheat.

    Notes
    -----
    It knows neither hydrogen nor heat input nor restraint. Shop practice for 1045 (300 to 500 degF) and 4140 (400
    to 600 degF) lies around it.

    Source
    ------
    Seferian, Metallurgie de la soudure (1959); from memory. A public French text has the same 350 and 0.25 (seen).

    Examples
    --------
    >>> round(seferian_preheat(0.007012) - 273.15)
    235
    """
    ranges.require("total_carbon", total_carbon, 0.0025, 0.022, "")
    return 350.0 * (total_carbon / _PERCENT - 0.25) ** 0.5 + _ZERO_CELSIUS


def code_minimum(row: str, thickness: float) -> float:
    """Return the least preheat and interpass temperature in a row of AWS D1.1.

    Up to 3/4 in, up to 1-1/2 in, up to 2-1/2 in, thicker: one temperature each.

    Parameters
    ----------
    row : str
        Row of ``CODE_ROWS``: a, b, c or q, [-].
    thickness : float
        Thickest part at the weld, [m]; 0.003175 to 0.3.

    Returns
    -------
    float
        Least temperature before each pass, [K].

    Raises
    ------
    ranges.OutOfRange
        If the thickness is not finite or is outside its range.
    ValueError
        If there is no such row.

    Notes
    -----
    The inch limits decide. The code's own metric limits (20, 38, 65 mm) differ a little and are not mixed in.

    Source
    ------
    AWS D1.1/D1.1M:2015, table 3.3; TI 809-26 (2000), table 3-1. Rows a and b seen as reproduced; c and q from memory.

    Examples
    --------
    >>> round(code_minimum("b", 0.0254) * 1.8 - 459.67)
    50
    """
    ranges.require("thickness", thickness, facts.THINNEST_IN_CODE * _INCH, 0.3, "m")
    inches = numerals.settle(thickness / _INCH)
    for name, temperatures in facts.CODE_ROWS:
        if name == row:
            position = len([end for end in facts.THICKNESS_ENDS if inches > end])
            return units.to_coherent(temperatures[position], "degF")
    raise ValueError("no row is called " + row)
