"""Preheat rules against the tables and sums that others print.

The CET formula was read in no standard and no published table of it was found: it is checked by its own four parts,
by a course exercise on it and by sums worked with tabled tanh and powers. Seferian's formula has no published number
here either; it is bracketed by a published table and by shop practice.
"""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calculators import ranges
from calculators.facts import preheat as facts
from calculators.facts import steels
from calculators.preheat_methods import (
    cet_method_parts,
    code_minimum,
    governing_cet,
    preheat_by_cet,
    seferian_carbon,
    seferian_preheat,
)

INCH = 0.0254  # m, exactly
ZERO_CELSIUS = 273.15


def celsius(kelvin):
    return kelvin - ZERO_CELSIUS


def fahrenheit(kelvin):
    return celsius(kelvin) * 1.8 + 32.0


def by_cet(cet, millimetres, hydrogen, heat):
    """Return the preheat in degC from %, mm, mL/100 g and kJ/mm."""
    return celsius(preheat_by_cet(cet / 100.0, millimetres / 1000.0, hydrogen * 1e-5, heat * 1e6))


def seferian_total(percents, millimetres):
    """Return Ct from the percents of carbon, manganese, chromium, nickel and molybdenum, and mm."""
    carbon, manganese, chromium, nickel, molybdenum = [each / 100.0 for each in percents]
    return seferian_carbon(carbon, manganese, chromium, nickel, molybdenum, millimetres / 1000.0)


def seferian(percents, millimetres):
    return celsius(seferian_preheat(seferian_total(percents, millimetres)))


# ---------------------------------------------------------------- the code's table

# US Army Corps of Engineers TI 809-26 (1 March 2000), table 3-1, and AWS D1.1/D1.1M:2015, table 3.3, categories A and
# B, as reproduced: thickest part [in] at the upper end of each row, least preheat and interpass temperature [degF].
# Standard.
CATEGORY_A = ((0.75, 32), (1.5, 150), (2.5, 225), (8.0, 300))
CATEGORY_B = ((0.75, 32), (1.5, 50), (2.5, 150), (8.0, 225))


@pytest.mark.quick
@pytest.mark.parametrize(("row", "table"), (("a", CATEGORY_A), ("b", CATEGORY_B)))
def test_rows_of_the_code_are_the_printed_ones(row, table):
    thinner = 0.125
    for end, degrees in table:
        for inches in (thinner, (thinner + end) / 2, end):
            assert fahrenheit(code_minimum(row, inches * INCH)) == pytest.approx(degrees, abs=1e-9)
        thinner = end + 0.001


# Category C of the same table, and table 4.9 for A514 and A517 [degF]. From memory: they catch a slip of the pen only.
@pytest.mark.quick
@pytest.mark.parametrize(("row", "table"), (("c", (50, 150, 225, 300)), ("q", (50, 125, 175, 225))))
def test_rows_from_memory_are_as_remembered(row, table):
    asked = [fahrenheit(code_minimum(row, inches * INCH)) for inches in (0.5, 1.0, 2.0, 3.0)]
    assert asked == pytest.approx(list(table))


@pytest.mark.quick
def test_one_inch_a36_by_gas_metal_arc_asks_50_and_not_150():
    """The 150 degF that a published answer gives for it is the row of sticks that are not low hydrogen."""
    rows = {(grade, low_hydrogen): row for grade, low_hydrogen, row in facts.ROW_OF}
    assert fahrenheit(code_minimum(rows["a36-group", True], INCH)) == pytest.approx(50.0)
    assert fahrenheit(code_minimum(rows["a36-group", False], INCH)) == pytest.approx(150.0)


@pytest.mark.quick
def test_table_ends_where_sheet_begins():
    code_minimum("b", 0.125 * INCH)
    with pytest.raises(ranges.OutOfRange):
        code_minimum("b", 0.12 * INCH)


@pytest.mark.quick
@pytest.mark.parametrize("row", [name for name, _ in facts.CODE_ROWS])
def test_thicker_never_asks_less(row):
    asked = [code_minimum(row, inches * INCH) for inches in (0.125, 0.75, 0.76, 1.5, 1.51, 2.5, 2.51, 10.0)]
    assert asked == sorted(asked)


# ---------------------------------------------------------------- the CET method


# A public course exercise on DIN EN 1011-2 (in German): CET .345, d 12 mm, HD 5, Q 1.0 -> 58.8 degC, boxed as about
# 60 degC, with the rounder constants 700 and 330 of the older form (they make it 1.0 less) and 5^0.35 taken as 1.746.
# Published.
@pytest.mark.quick
def test_cet_method_meets_a_course_exercise():
    assert by_cet(0.345, 12.0, 5.0, 1.0) == pytest.approx(60.0, abs=1.0)


# Worked apart, from tabled values: tanh(20/35) .5164, tanh(25/35) .6134, tanh(1) .7616, tanh(30/35) .6948,
# tanh(40/35) .8158, tanh(50/35) .8914, tanh(15/35) .4041; 5^.35 1.7565, 3^.35 1.4689, 10^.35 2.2387.
BY_HAND = (
    (0.30, 20.0, 5.0, 1.0, 56.5),
    (0.32, 25.0, 5.0, 1.0, 87.0),
    (0.34, 25.0, 5.0, 1.0, 102.0),
    (0.36, 30.0, 5.0, 1.5, 123.6),
    (0.40, 40.0, 3.0, 1.5, 156.1),
    (0.40, 15.0, 10.0, 1.0, 143.5),
    (0.30, 50.0, 5.0, 2.0, 100.4),
    (0.25, 20.0, 5.0, 1.0, 19.0),
    (0.50, 90.0, 20.0, 4.0, 333.6),
    (0.20, 10.0, 1.0, 0.5, -92.8),
)


@pytest.mark.quick
@pytest.mark.parametrize(("cet", "thickness", "hydrogen", "heat", "expected"), BY_HAND)
def test_cet_method_meets_sums_worked_apart(cet, thickness, hydrogen, heat, expected):
    assert by_cet(cet, thickness, hydrogen, heat) == pytest.approx(expected, abs=0.6)


within = {
    "cet": st.floats(0.0020, 0.0050),
    "thickness": st.floats(0.010, 0.090),
    "hydrogen": st.floats(1e-5, 20e-5),
    "heat_input": st.floats(0.5e6, 4.0e6),
}


@pytest.mark.quick
@given(**within)
def test_four_parts_add_up_to_the_closed_formula(cet, thickness, hydrogen, heat_input):
    """750 - 53 = 697 and -150 - 110 - 100 + 32 = -328: a slip in any constant breaks it."""
    parts = cet_method_parts(cet, thickness, hydrogen, heat_input)
    assert sum(parts) == pytest.approx(celsius(preheat_by_cet(cet, thickness, hydrogen, heat_input)), abs=1e-9)


@pytest.mark.quick
def test_thickness_goes_in_upright():
    """tanh(35 / d) is about, and gives 145.6 degC here."""
    upside_down = 102.0 - 160.0 * (math.tanh(25.0 / 35.0) - math.tanh(35.0 / 25.0))
    assert upside_down == pytest.approx(145.6, abs=0.6)
    assert abs(by_cet(0.34, 25.0, 5.0, 1.0) - upside_down) > 40.0
    assert by_cet(0.34, 60.0, 5.0, 1.0) > by_cet(0.34, 25.0, 5.0, 1.0)


@pytest.mark.quick
def test_ce_in_place_of_cet_is_far_off():
    """S355J2, illustrative heat: CE 0.4307 and CET 0.3220. The one in place of the other is 80 degC too hot."""
    assert by_cet(0.4307, 25.0, 5.0, 1.0) - by_cet(0.3220, 25.0, 5.0, 1.0) == pytest.approx(81.5, abs=1.0)


# EN 1011-2:2001, C.3: CET .20 to .50, d 10 to 90 mm, HD 1 to 20 mL/100 g, Q 0.5 to 4.0 kJ/mm; from memory, and the
# same in several public codes.
@pytest.mark.quick
@pytest.mark.parametrize("position", range(4))
def test_each_input_has_the_method_s_own_range(position):
    ends = ((0.20, 0.50), (10.0, 90.0), (1.0, 20.0), (0.5, 4.0))
    names = ("cet", "thickness", "hydrogen", "heat_input")
    inside = [0.34, 25.0, 5.0, 1.0]
    for end, off in ((0, 0.99), (1, 1.01)):
        typed = list(inside)
        typed[position] = ends[position][end]
        by_cet(*typed)
        typed[position] = ends[position][end] * off
        with pytest.raises(ranges.OutOfRange) as refused:
            by_cet(*typed)
        assert refused.value.name == names[position]


@pytest.mark.quick
@given(**within, more=st.floats(1.01, 1.5))
def test_more_cet_thickness_or_hydrogen_asks_more(cet, thickness, hydrogen, heat_input, more):
    least = preheat_by_cet(cet, thickness, hydrogen, heat_input)
    for changed in (
        (min(cet * more, 0.005), thickness, hydrogen, heat_input),
        (cet, min(thickness * more, 0.090), hydrogen, heat_input),
        (cet, thickness, min(hydrogen * more, 20e-5), heat_input),
    ):
        assert preheat_by_cet(*changed) >= least - 1e-9


@pytest.mark.quick
@given(**within)
def test_more_heat_input_asks_less(cet, thickness, hydrogen, heat_input):
    """53 CET - 32 is below nought wherever the method holds."""
    low = preheat_by_cet(cet, thickness, hydrogen, 0.5e6)
    assert preheat_by_cet(cet, thickness, hydrogen, heat_input) <= low + 1e-9


@pytest.mark.quick
def test_beyond_60_mm_thickness_hardly_counts():
    assert by_cet(0.34, 90.0, 5.0, 1.0) - by_cet(0.34, 60.0, 5.0, 1.0) < 10.0


# A steelmaker's handbook: its chart holds if the CET of the steel is at least that of the consumable + 0.03 %.
# Published.
@pytest.mark.quick
@pytest.mark.parametrize(
    ("steel", "weld_metal", "governs"), ((0.34, 0.25, 0.34), (0.34, 0.31, 0.34), (0.30, 0.31, 0.34))
)
def test_richer_weld_metal_governs(steel, weld_metal, governs):
    assert governing_cet(steel / 100.0, weld_metal / 100.0) == pytest.approx(governs / 100.0)


# ---------------------------------------------------------------- Seferian


# 4140, middle of the ranges, 25 mm: Cc .6233, Ct .7012, 235 degC; 1045: Cc .5483, Ct .6169, 212; at 50 mm .6854, 231.
# Worked apart from the formula.
@pytest.mark.quick
@pytest.mark.parametrize(
    ("percents", "millimetres", "total", "expected"),
    (
        ((0.405, 0.875, 0.95, 0.0, 0.20), 25.0, 0.7012, 235.0),
        ((0.465, 0.75, 0.0, 0.0, 0.0), 25.0, 0.6169, 212.0),
        ((0.465, 0.75, 0.0, 0.0, 0.0), 50.0, 0.6854, 231.0),
        # 4340, middle: .405 + (40 x 1.5 + 20 x 1.825 + 28 x .25)/360 = .6925; x 1.125 = .7791; 350 x sqrt(.5291)
        ((0.405, 0.70, 0.80, 1.825, 0.25), 25.0, 0.7791, 254.6),
    ),
)
def test_seferian_meets_sums_worked_apart(percents, millimetres, total, expected):
    assert seferian_total(percents, millimetres) == pytest.approx(total / 100.0, abs=1e-6)
    assert seferian(percents, millimetres) == pytest.approx(expected, abs=1.0)


# NIMI, Welder (CITS) Trade Theory, p. 169: plain carbon 0.30 to 0.45 %, 300 to 500 degF; 0.45 to 0.80 %, 500 to 800.
# Published. The formula must not leave the table by more than a step at half an inch to two inches.
@pytest.mark.quick
@pytest.mark.parametrize(("carbon", "low", "high"), ((0.35, 300.0, 500.0), (0.44, 300.0, 500.0), (0.60, 500.0, 800.0)))
def test_seferian_lies_by_the_published_table(carbon, low, high):
    for millimetres in (12.7, 25.4, 50.8):
        asked = seferian((carbon, 0.75, 0.0, 0.0, 0.0), millimetres) * 1.8 + 32.0
        assert low - 75.0 <= asked <= high


# US Navy S9074-AR-GIB-010/278, table IV: carbon steel above 0.30 % and 1 in, at least 175 degF; chromium-molybdenum
# (Cr to 2 %) above 1/2 in, at least 250 degF. Standard. The cross-check must ask at least that much.
@pytest.mark.quick
def test_seferian_never_asks_less_than_the_navy():
    assert facts.NAVY_CARBON_LEAST == 175.0 and facts.NAVY_CHROMIUM_MOLYBDENUM_LEAST == 250.0
    for millimetres in (25.5, 50.0, 100.0):
        assert seferian((0.31, 0.60, 0.0, 0.0, 0.0), millimetres) * 1.8 + 32.0 >= 175.0
    for grade, low, _ in steels.HARDENING:
        if low[2] > 0.0:
            assert seferian(low, 13.0) * 1.8 + 32.0 >= 250.0, grade


@pytest.mark.quick
def test_seferian_asks_nothing_of_mild_steel():
    with pytest.raises(ranges.OutOfRange):
        seferian_preheat(0.0024)
    assert celsius(seferian_preheat(0.0025)) == pytest.approx(0.0)


# ---------------------------------------------------------------- highest temperatures


# US Navy S9074-AR-GIB-010/278, table IV: S-8 (austenitic) at most 350 degF, S-2 (quenched and tempered carbon steel)
# at most 300 degF; table V: 5086 and 5456, keep out of 150 to 400 degF. Standard. Practical Welding Today, Aluminum
# Workshop: heat-treated alloys at most 250 degF; above 150 degF others become sensitive. Published.
@pytest.mark.quick
def test_highest_temperatures_are_the_printed_ones():
    highest = dict(facts.HIGHEST)
    assert highest["stainless"] == 350.0
    assert highest["aluminum-heat-treated"] == 250.0
    assert highest["aluminum-magnesium"] == 150.0
    assert facts.SENSITIZING == (150.0, 400.0)
    assert facts.NAVY_QUENCHED_TEMPERED_HIGHEST == 300.0


@pytest.mark.quick
def test_guess_for_an_unknown_steel_lies_between_what_carbon_asks_and_plate_bears():
    low = {end: start for end, start, _ in facts.BY_CARBON}[0.45]
    assert low == facts.UNKNOWN_LEAST == 300.0
    assert facts.UNKNOWN_LEAST < facts.UNKNOWN_HIGHEST <= dict(facts.HIGHEST)["quenched-tempered"]
