"""Numbers to text and back: what is typed is understood or asked about, what is shown is rounded exactly."""

import ast
import math
import re
from decimal import ROUND_HALF_UP, Context, Decimal
from fractions import Fraction

import pytest
from hypothesis import assume, example, given, settings
from hypothesis import strategies as st

from calculators import asking, numerals
from calculators.contract import Answer, Calculator, Given, Number, Quantity
from webapp import bundle
from webapp.pages import create_app

pytestmark = pytest.mark.quick


@pytest.fixture(scope="module")
def client():
    return create_app().test_client()


def _echo(asked: Given) -> Answer:
    return Answer(results=(Number("thickness", asked.number("thickness")),))


ECHO = Calculator(
    name="echo",
    fields=(Quantity("thickness", low=-10000.0, high=10000.0),),
    answer=_echo,
    english={},
    sources=(),
    place=0,
)

# (where it is typed, what is typed, thickness understood in mm or the question asked). A box takes numbers the
# same way in every country: a mark that may be either is asked about. Values by hand.
TYPED = (
    ("en", "3.14", 3.14),
    ("en", "24", 24.0),
    ("en", "024", 24.0),
    ("en", ".5", 0.5),
    ("en", "5.", 5.0),
    ("en", "-2", -2.0),
    ("en", "- 2", -2.0),
    ("en", "\u22122", -2.0),
    ("en", "+2", 2.0),
    ("en", "-0", 0.0),
    ("en", "1e3", 1000.0),
    ("en", "1E3", 1000.0),
    ("en", "1e-3", 0.001),
    ("en", "1.5e+3", 1500.0),
    ("en", "6 mm", 6.0),
    ("en", "6mm", 6.0),
    ("en", "1e3mm", 1000.0),
    ("en", '1"', 25.4),
    ("en", "1/8", 0.125),
    ("en", '3/16"', 4.7625),
    ("en", "3/16 in", 4.7625),
    ("en", "1 3/16 in", 30.1625),
    ("en", "1-3/16 in", 30.1625),
    ("en", "-1/2 in", -12.7),
    ("en", "\u00bd in", 12.7),
    ("en", "1\u00bd in", 38.1),
    ("en", "1 \u215d in", 41.275),
    ("en", "3\u20444 in", 19.05),
    ("en", "  7  ", 7.0),
    ("en", "1,234", "number.ambiguous"),
    ("en", "1,234 mm", "number.ambiguous"),
    ("en", "-1,234", "number.ambiguous"),
    ("en", "1,234.5", "number.two-marks"),
    ("en", "1,234,567", "number.two-marks"),
    ("en", "1.2.3", "number.two-marks"),
    ("en", "1,5e3", "number.unreadable"),
    ("en", "3/0", "number.fraction"),
    ("en", "3/", "number.fraction"),
    ("en", "/4", "number.fraction"),
    ("en", "1.5/2", "number.fraction"),
    ("en", "1 2 3/4", "number.fraction"),
    ("en", "1/2/3", "number.fraction"),
    ("en", ".", "number.unreadable"),
    ("en", ",", "number.unreadable"),
    ("en", "-", "number.unreadable"),
    ("en", "--2", "number.unreadable"),
    ("en", "2-3", "number.unreadable"),
    ("en", "2+3", "number.unreadable"),
    ("en", "1e", "number.unit"),
    ("en", "e3", "number.unreadable"),
    ("en", "1e99", "number.too-long"),
    ("en", "1e9999", "number.too-long"),
    ("en", "1234567890123456", "number.too-long"),
    ("en", "0x10", "number.unit"),
    ("en", "1_000", "number.unit"),
    ("en", "nan", "number.unreadable"),
    ("en", "inf", "number.unreadable"),
    ("en", "six", "number.unreadable"),
    ("en", "6 furlong", "number.unit"),
    ("en", "5' 3\"", "number.unit"),
    ("en", "mm", "number.unreadable"),
    ("de", "3,14", 3.14),
    ("de", "0,125", 0.125),
    ("de", ",5", 0.5),
    ("de", ",125", 0.125),
    ("de", "5,", 5.0),
    ("de", "1,5 mm", 1.5),
    ("de", "1.234,5", "number.two-marks"),
    ("de", "1.234.567", "number.two-marks"),
    ("fr", " 3 ,14", 3.14),
    ("fr", "1 234,5", 1234.5),
    ("fr", "1\u00a0234,5", 1234.5),
    ("fr", "1\u202f234,5", 1234.5),
    ("fr", "1 234,567", "number.ambiguous"),
    ("hi", "1,23,456", "number.two-marks"),
    ("hi", "1,23,456.7", "number.two-marks"),
    ("hi", "\u0966.\u096b", "number.unreadable"),
    ("ar", "\u0663", "number.unreadable"),
    ("ar", "\u0663\u066b\u0661", "number.unreadable"),
    ("zh", "\uff13.\uff11", "number.unreadable"),
)


@pytest.mark.parametrize(("where", "typed", "expected"), TYPED)
def test_typed_number_is_understood_or_asked_about(where, typed, expected):
    came = asking.ask(ECHO, [("thickness", typed), ("thickness_unit", "mm")])
    if isinstance(expected, str):
        assert [(name, message.id) for name, message in came.errors] == [("thickness", expected)]
        assert came.answer is None
    else:
        assert came.answer is not None, came.errors
        (result,) = came.answer.results
        assert isinstance(result, Number)
        assert result.value == pytest.approx(expected / 1000.0, rel=1e-15)


# The twelve texts that every number box is tried with, and what each one is, in millimetres, or which question it gets.
TWELVE = (
    ("3.14", 3.14),
    ("3,14", 3.14),
    (" 3 ,14", 3.14),
    ("1,234", "number.ambiguous"),
    ("1.234,5", "number.two-marks"),
    (".5", 0.5),
    ("5.", 5.0),
    ("-2", -2.0),
    ("1e3", 1000.0),
    ("6 mm", 6.0),
    ("\u0663", "number.unreadable"),
    ("", None),
)


@pytest.mark.parametrize(("typed", "expected"), TWELVE)
def test_each_of_the_twelve_has_its_value_or_its_question(typed, expected):
    came = asking.ask(ECHO, [("thickness", typed), ("thickness_unit", "mm")])
    if expected is None:
        assert came.state == "blank"
    elif isinstance(expected, str):
        assert [message.id for _, message in came.errors] == [expected]
    else:
        assert came.given.number("thickness") == pytest.approx(expected / 1000.0, rel=1e-15)


@pytest.mark.parametrize("typed", [typed for typed, _ in TWELVE])
def test_a_browser_s_country_changes_nothing_of_what_is_understood(client, typed):
    asked = {"gauge_system": "steel", "thickness": typed, "thickness_unit": "mm"}
    said = {
        client.get("/sheet-gauge", query_string=asked, headers={"Accept-Language": country}).data
        for country in ("en-US", "de-DE", "fr-FR", "hi-IN")
    }
    assert len(said) == 1
    assert typed == "" or b'class="headline waiting"' not in said.pop()


@pytest.mark.parametrize("typed", ("", "   ", "\u00a0", "\t\n"))
def test_empty_box_is_blank_not_zero(typed):
    assert numerals.parse(typed) is None
    assert asking.ask(ECHO, [("thickness", typed)]).state == "blank"


@pytest.mark.parametrize(
    ("typed", "readings"),
    (
        ("1,234", ("1234", "1.234")),
        ("12,500", ("12500", "12.500")),
        ("1,234.5", ("1234.5",)),
        ("1.234,5", ("1234.5",)),
        ("1,234,567", ("1234567",)),
        ("1,23,456.7", ("123456.7",)),
        ("1.234,567,8", ("1234567.8",)),
        ("1,234.567.8", ("1234567.8",)),
    ),
)
def test_question_offers_readings_that_are_then_understood(typed, readings):
    with pytest.raises(numerals.BadNumber) as caught:
        numerals.parse(typed)
    assert caught.value.readings == readings
    for reading in readings:
        assert numerals.parse(reading) == float(reading)


@pytest.mark.parametrize(
    ("typed", "plain"),
    (
        *[("1" + space + "5", "1 5") for space in ("\u00a0", "\u202f", "\u2009", "\t", "\n", "\r", "\x0b", "\x0c")],
        ("300 \u212a", "300 K"),
        (" X5X ", "X5X"),
        ("X\u00bdX", "X 1/2X"),
        ("\u30005", "\u30005"),
    ),
)
def test_signs_are_made_plain_and_nothing_else(typed, plain):
    assert numerals.tidy(typed) == plain


@pytest.mark.parametrize(("text", "is_number"), (("0123456789", True), ("", False), ("1X", False), ("\u0663", False)))
def test_digits_are_0_to_9(text, is_number):
    assert numerals.all_digits(text) == is_number


# How long a number may be: 15 digits and a power of ten that is an exact double, 6 digits each part of a fraction.
@pytest.mark.parametrize(
    ("typed", "expected"),
    (
        ("123456789012345", 123456789012345.0),
        ("1234567890123456", "number.too-long"),
        ("100000000000000000000", 1e20),
        ("1e22", 1e22),
        ("1e23", "number.too-long"),
        ("1e-22", 1e-22),
        ("1e-23", "number.too-long"),
        ("1e003", 1000.0),
        ("1e0003", "number.too-long"),
        ("999999/2", 499999.5),
        ("1000000/2", "number.fraction"),
        ("1/500000", 2e-6),
        ("1/1000000", "number.fraction"),
        ("+3/4", 0.75),
        ("X3/4", "number.fraction"),
        ("-X3/4", "number.fraction"),
        ("X34", "number.unreadable"),
        ("1ex", "number.unreadable"),
    ),
)
def test_numbers_are_read_as_far_as_they_are_exact(typed, expected):
    if isinstance(expected, float):
        assert numerals.parse(typed) == expected
    else:
        with pytest.raises(numerals.BadNumber, match=expected) as refused:
            numerals.parse(typed)
        assert refused.value.reason == expected


@given(st.text("0123456789.,-+/eE '", max_size=12))
@example("1,234")
@example("1e3")
@example("1 3/4")
@example("-1-3/4")
def test_nothing_is_guessed_silently(text):
    """An independent reading by pattern: whatever parse returns must be the only thing the text can mean."""
    try:
        value = numerals.parse(text)
    except numerals.BadNumber:
        return
    if value is None:
        assert text.strip() == ""
        return
    compact = text.strip()
    fraction = re.fullmatch(r"([+-]?)\s*(?:(\d+)[\s-]+)?(\d+)[\s-]*/\s*(\d+)", compact)
    if fraction:
        sign, whole, top, bottom = fraction.groups()
        exact = Fraction(whole or "0") + Fraction(int(top), int(bottom))
        exact = -exact if sign == "-" else exact
    else:
        compact = compact.replace(" ", "")
        assert re.fullmatch(r"[+-]?(\d+[.,]?\d*|[.,]\d+)([eE][+-]?\d+)?", compact), text
        assert not re.fullmatch(r"[+-]?0*[1-9]\d*,\d{3}", compact), f"{text!r} was not asked about"
        exact = Fraction(compact.replace(",", "."))
    assert value == pytest.approx(float(exact), rel=3e-16, abs=0.0)


@given(st.integers(0, 99), st.integers(1, 64), st.sampled_from((2, 4, 8, 16, 32, 64)))
def test_fractions_are_exact(whole, top, bottom):
    assert numerals.parse(f"{whole} {top}/{bottom}") == whole + top / bottom
    assert numerals.parse(f"{whole}-{top}/{bottom}") == whole + top / bottom
    assert numerals.parse(f"-{top}/{bottom}") == -top / bottom


@given(st.text("0123456789.", min_size=1, max_size=12), st.sampled_from(("", "mm", "in/min", '"', "ft3/h", "%")))
def test_unit_suffix_is_split_off(number, unit):
    for typed in (number + unit, number + " " + unit, " " + number + "\u00a0" + unit + " "):
        assert numerals.split_unit(typed) == (number, unit)


# What no unit is, and what an exponent is not: all of it comes back as the unit, to be named in the refusal.
@pytest.mark.parametrize(
    ("typed", "number", "unit"),
    (
        ("5X", "5", "X"),
        ("5 X ", "5", "X"),
        ("5X3", "5", "X3"),
        ("5eX3", "5", "eX3"),
        ("5e+-3", "5", "e+-3"),
        ("e5", "", "e5"),
    ),
)
def test_what_is_no_number_is_split_off_whole(typed, number, unit):
    assert numerals.split_unit(typed) == (number, unit)


# ---------------------------------------------------------------- numbers to text

sizes = st.floats(1e-12, 1e21) | st.floats(-1e21, -1e-12) | st.just(0.0)
ordinary = st.floats(1e-6, 1e9) | st.floats(-1e9, -1e-6) | st.just(0.0)


def _guarded(value: float) -> Decimal:
    """Return value at 13 figures, halves away from zero, worked out by decimal."""
    return Context(prec=13, rounding=ROUND_HALF_UP).create_decimal(Decimal(value))


def _ungrouped(text: str) -> str:
    return text.replace("\u202f", "").replace("\u2212", "-")


@given(sizes, st.integers(1, 10))
@example(0.125, 2)
@example(2.5, 1)
@example(9.9999999999996, 4)
@example(99995.0, 4)
@example(78.4, 3)
@example(5e-324, 4)
@example(1.7976931348623157e308, 4)
@example(2.675, 3)
def test_significant_is_half_up_on_the_guarded_value(value, figures):
    expected = Context(prec=figures, rounding=ROUND_HALF_UP).plus(_guarded(value))
    assert Decimal(_ungrouped(numerals.significant(value, figures))) == expected
    assert Decimal(numerals.significant(value, figures, group=False)) == expected


@given(ordinary, st.integers(0, 6))
@example(0.5, 0)
@example(1.5, 0)
@example(2.5, 0)
@example(0.125, 2)
@example(-0.004, 2)
@example(2.675, 2)
@example(999.995, 2)
def test_fixed_is_half_up_on_the_guarded_value(value, places):
    expected = _guarded(value).quantize(Decimal(1).scaleb(-places), ROUND_HALF_UP, Context(prec=60))
    text = numerals.fixed(value, places)
    assert Decimal(_ungrouped(text)) == expected
    assert len(text.partition(".")[2]) == places


@pytest.mark.parametrize(
    ("value", "figures", "text"),
    (
        (0.0, 4, "0"),
        (1234.0, 4, "1234"),
        (12345.0, 5, "12\u202f345"),
        (1234567.0, 7, "1\u202f234\u202f567"),
        (-2.5, 3, "\u22122.5"),
        (0.00012, 3, "0.00012"),
        (1.5e-9, 3, "1.5e-9"),
        (6.02e23, 3, "6.02e23"),
        (100.0, 3, "100"),
        (78.4, 10, "78.4"),
        (0.1 + 0.2, 10, "0.3"),
        (1e16, 10, "1e16"),
        (123456.0, 6, "123\u202f456"),
        (999999999999.0, 10, "1e12"),
        (123456789012.0, 4, "123\u202f500\u202f000\u202f000"),
        (1234567890123.0, 4, "1.235e12"),
        (0.000001234, 4, "0.000001234"),
        (0.0000001234, 4, "1.234e-7"),
    ),
)
def test_shape_of_shown_numbers(value, figures, text):
    assert numerals.significant(value, figures) == text


def test_four_figures_unless_told_otherwise():
    assert numerals.significant(123456.0) == "123\u202f500"


@pytest.mark.parametrize(
    ("value", "places", "text"),
    (
        (0.0, 2, "0.00"),
        (-0.001, 2, "0.00"),
        (0.0625, 3, "0.063"),
        (12345.6, 1, "12\u202f345.6"),
        (-1.0, 0, "\u22121"),
        (0.5, 1, "0.5"),
    ),
)
def test_shape_of_fixed_decimals(value, places, text):
    assert numerals.fixed(value, places) == text


@given(sizes)
def test_plain_text_reads_back_as_the_settled_number(value):
    settled = numerals.settle(value)
    assert numerals.parse(numerals.plain(value)) == settled
    assert float(numerals.plain(value)) == settled


@given(st.floats(allow_nan=False, allow_infinity=False), st.integers(1, 10))
def test_settling_twice_changes_nothing(value, figures):
    settled = numerals.settle(value, figures)
    assert numerals.settle(settled, figures) == settled


@pytest.mark.parametrize(
    ("value", "settled"),
    (
        (1.00000000000001e31, 1e31),
        (1.00000000000001e-13, 1e-13),
        (1.00000000000001e32, 1.00000000000001e32),
        (1.00000000000001e-14, 1.00000000000001e-14),
        (math.inf, math.inf),
        (-math.inf, -math.inf),
    ),
)
def test_settling_reaches_as_far_as_powers_of_ten_are_exact(value, settled):
    assert numerals.settle(value) == settled


@given(sizes)
def test_settling_swallows_the_last_bits(value):
    """Two maths libraries differ by a few last bits; away from the edge of a step both settle alike."""
    assume(value != 0)
    thirteen = _guarded(value)
    ten = Context(prec=10, rounding=ROUND_HALF_UP).plus(thirteen)
    half_step = Decimal(5).scaleb(ten.adjusted() - 10)
    assume(abs(abs(thirteen - ten) - half_step) > half_step / 100)
    for noisy in (value * (1 + 4e-16), value * (1 - 4e-16)):
        assert numerals.settle(noisy) == numerals.settle(value)


@pytest.mark.parametrize("value", (float("nan"), float("inf"), float("-inf")))
def test_only_finite_numbers_become_text(value):
    with pytest.raises(ValueError, match="finite"):
        numerals.significant(value)
    with pytest.raises(ValueError, match="finite"):
        numerals.fixed(value, 2)
    assert not numerals.is_finite(value)


@given(st.floats(allow_nan=False, allow_infinity=False), st.integers(1, 10))
@settings(max_examples=200)
def test_no_text_looks_like_a_float_s_own(value, figures):
    text = numerals.significant(value, figures)
    assert re.fullmatch("\u2212?[0-9\u202f]+(\\.[0-9]*[1-9])?(e-?[1-9][0-9]*)?", text), text


# ---------------------------------------------------------------- nobody else makes text of a number


def _texts_made(source: str) -> list[str]:
    """Return what a module does to make text of a value without numerals.py."""
    found = []
    for node in ast.walk(ast.parse(source)):
        if isinstance(node, ast.FormattedValue):
            found.append(f"line {node.lineno}: an f-string formats a value")
        elif isinstance(node, ast.Call) and isinstance(node.func, ast.Name) and node.func.id in ("repr", "format"):
            found.append(f"line {node.lineno}: {node.func.id}()")
        elif isinstance(node, ast.Call) and isinstance(node.func, ast.Attribute) and node.func.attr == "format":
            found.append(f"line {node.lineno}: .format()")
        elif isinstance(node, ast.BinOp) and isinstance(node.op, ast.Mod) and isinstance(node.left, ast.Constant):
            if isinstance(node.left.value, str):
                found.append(f"line {node.lineno}: % formatting")
    return found


@pytest.mark.parametrize("path", bundle.shared_sources(), ids=lambda path: str(path.relative_to(bundle.ROOT)))
def test_shared_files_leave_the_text_of_numbers_to_numerals(path):
    assert _texts_made(path.read_text("utf-8")) == []


@pytest.mark.parametrize("planted", ("f'{x}'", "repr(x)", "'{:.2f}'.format(x)", "'%g' % x", "format(x, 'g')"))
def test_that_check_finds_a_planted_one(planted):
    assert _texts_made(f"y = {planted}\n")
