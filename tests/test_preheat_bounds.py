"""Which rule bears on which steel and from which thickness on, and how its two ends lie.

The rows: US Navy S9074-AR-GIB-010/278, table IV (standard, seen): carbon steel above 0.30 % carbon and 1 in, at least
175 degF; chromium-molybdenum steel, from 0.75 % chromium here, above 1/2 in, at least 250 degF.
"""

import pytest

from calculators import units
from calculators.contract import Given
from calculators.preheat_bounds import Bounds

INCH = 0.0254
PLAIN = {"carbon": 0.0040, "manganese": 0.0075, "chromium": 0.0, "nickel": 0.0, "molybdenum": 0.0}


def bounds(**values):
    given = Given()
    given.values = dict(values)
    return Bounds(given)


def said(found):
    """Return what each rule says, [degF], by its name."""
    return {
        rule.name: None if rule.value is None else round(units.from_coherent(rule.value, "degF"), 6)
        for rule in found.rules
    }


def hardening(inches, **percents):
    contents = {name: value / 100.0 for name, value in percents.items()}
    return said(bounds(family="hardening-chemistry", thickness=inches * INCH, **{**PLAIN, **contents}))


@pytest.mark.parametrize(
    ("inches", "carbon", "chromium", "row"),
    (
        (1.01, 0.31, 0.0, ("navy-s1", 175.0)),
        (1.0, 0.31, 0.0, None),
        (1.01, 0.30, 0.0, None),
        (0.51, 0.31, 0.0, None),
        (0.51, 0.31, 0.75, ("navy-s4", 250.0)),
        (0.5, 0.31, 0.75, None),
        (0.51, 0.31, 0.74, None),
        (1.01, 0.31, 0.74, ("navy-s1", 175.0)),
        (2.0, 0.31, 1.0, ("navy-s4", 250.0)),
    ),
)
def test_the_navy_s_rows_begin_where_they_are_printed_to(inches, carbon, chromium, row):
    found = hardening(inches, carbon=carbon, chromium=chromium)
    rows = [(name, value) for name, value in found.items() if name.startswith("navy")]
    assert rows == ([] if row is None else [row])


def test_the_navy_s_rows_go_by_a_grade_s_own_carbon_and_chromium():
    # SAE J404: 4140 has up to 1.10 % chromium and no nickel; J403: 1045 has up to 0.50 % carbon and no chromium.
    alloyed = said(bounds(family="hardening", hardening_grade="4140", thickness=0.6 * INCH))
    assert alloyed["navy-s4"] == 250.0
    plain = said(bounds(family="hardening", hardening_grade="1045", thickness=1.5 * INCH))
    assert plain["navy-s1"] == 175.0 and "navy-s4" not in plain


def test_the_training_table_ends_with_the_carbon_it_prints():
    # NIMI, Welder (CITS) Trade Theory, p. 169 (published, seen): up to 0.30 % from 200, up to 0.45 % from 300 degF.
    assert hardening(0.5, carbon=0.30)["by-carbon"] == 200.0
    assert hardening(0.5, carbon=0.31)["by-carbon"] == 300.0
    assert hardening(0.5, carbon=0.45)["by-carbon"] == 300.0
    assert hardening(0.5, carbon=0.46)["by-carbon"] == 500.0


def test_shop_charts_are_practice_and_decide_nothing():
    found = bounds(family="hardening", hardening_grade="4140", thickness=INCH)
    (charts,) = [rule for rule in found.rules if rule.name == "shop-charts"]
    assert charts.what == "practice"
    assert found.deciding is not charts
    assert units.from_coherent(found.lowest, "degF") < 600.0


def test_a_steel_in_no_row_of_the_code_is_not_said_to_be_in_none():
    """`other` and wear plate are not in the code; it leaves out A572 with sticks that are not low hydrogen."""
    plate = {"thickness": INCH}
    assert said(bounds(family="structural", grade="other", process="gas-metal-arc", **plate)) == {}
    assert said(bounds(family="wear-plate", process="gas-metal-arc", **plate)) == {"wear-plate": 392.0}
    assert said(bounds(family="structural", grade="a572-50-group", process="other-stick", **plate)) == {
        "code-none": None
    }
    quenched = said(bounds(family="quenched-tempered", process="gas-metal-arc", **plate))
    assert quenched == {"code-q": 125.0, "quenched-tempered": 392.0}


def test_the_rule_that_asks_most_decides():
    # 1045, thin: the training table asks 500 degF and Seferian's sum stays below.
    found = bounds(family="hardening", hardening_grade="1045", thickness=0.25 * INCH)
    assert found.deciding is not None and found.deciding.name == "by-carbon"


@pytest.mark.parametrize(
    ("kelvins", "window"),
    ((-1.0, "closed"), (0.0, "closed"), (0.5, "narrow"), (24.9, "narrow"), (25.0, "wide"), (100.0, "wide")),
)
def test_a_window_is_narrow_below_25_kelvins_and_closed_at_none(kelvins, window):
    found = bounds(family="quenched-tempered", process="gas-metal-arc", thickness=INCH)
    found.highest = found.lowest + kelvins
    assert found.window() == window


def test_a_window_with_one_end_is_open():
    assert bounds(family="stainless").window() == "open"
    assert bounds(family="structural", grade="a36-group", process="gas-metal-arc", thickness=INCH).window() == "open"


def test_heat_reaches_three_inches_where_no_thickness_was_asked_for():
    assert bounds(family="stainless").distance() == pytest.approx(3.0 * INCH)


def test_only_between_the_inches_and_the_millimetres_do_the_columns_differ():
    for millimetres, differ in (
        (19.05, False),
        (19.06, True),
        (20.0, True),
        (20.01, False),
        (38.1, False),
        (64.0, True),
    ):
        found = bounds(family="structural", grade="a36-group", process="gas-metal-arc", thickness=millimetres / 1000.0)
        assert found.between_the_codes_limits() is differ, millimetres
