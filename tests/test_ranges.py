"""How a formula refuses: the sentence it says, what it keeps for the page, and where a limit ends."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calculators import ranges

pytestmark = pytest.mark.quick

# Limits as they are written: a few figures.
LIMITS = st.integers(1, 10**6).map(lambda count: count / 1000.0)

# (low, high, value, unit, sentence); written out by hand.
SENTENCES = (
    (5.0, 60.0, 4.5, "V", "voltage is 4.5 V; it must be at least 5 and at most 60 V"),
    (5.0, None, 4.5, "V", "voltage is 4.5 V; it must be at least 5 V"),
    (None, 60.0, 60.5, "V", "voltage is 60.5 V; it must be at most 60 V"),
    (5.0, 60.0, 61.0, "", "voltage is 61; it must be at least 5 and at most 60"),
    (5.0, 60.0, math.nan, "V", "voltage is not finite V; it must be at least 5 and at most 60 V"),
    (None, 60.0, -math.inf, "V", "voltage is not finite V; it must be at most 60 V"),
)


@pytest.mark.parametrize(("low", "high", "value", "unit", "sentence"), SENTENCES)
def test_refusal_says_what_was_given_and_what_is_allowed(low, high, value, unit, sentence):
    with pytest.raises(ranges.OutOfRange) as refused:
        ranges.require("voltage", value, low, high, unit)
    assert str(refused.value) == sentence


def test_refusal_keeps_what_the_page_shows():
    with pytest.raises(ranges.OutOfRange) as refused:
        ranges.require("voltage", 61.00000000000001, 5.0, 60.0, "V")
    kept = refused.value
    assert (kept.name, kept.value, kept.low, kept.high, kept.unit) == ("voltage", 61.0, 5.0, 60.0, "V")


@given(LIMITS)
def test_a_limit_is_inside_as_is_what_ten_figures_cannot_tell_from_it(limit):
    for near in (limit, limit * (1.0 + 1e-14), limit * (1.0 - 1e-14)):
        ranges.require("voltage", near, limit, None, "V")
        ranges.require("voltage", near, None, limit, "V")


@given(LIMITS, st.floats(2e-9, 1.0))
def test_what_ten_figures_can_tell_from_a_limit_is_outside(limit, share):
    with pytest.raises(ranges.OutOfRange):
        ranges.require("voltage", limit * (1.0 - share), limit, None, "V")
    with pytest.raises(ranges.OutOfRange):
        ranges.require("voltage", limit * (1.0 + share), None, limit, "V")


@given(st.floats(-1e6, 1e6), st.sampled_from((-1.0, 0.0, 1.0)))
def test_above_is_the_plain_comparison_away_from_a_limit(number, limit):
    if abs(number - limit) > 1e-6:
        assert ranges.above(number, limit) == (number > limit)


def test_no_limit_refuses_only_what_is_not_finite():
    ranges.require("voltage", -1e300, None, None, "V")
    for value in (math.nan, math.inf, -math.inf):
        with pytest.raises(ranges.OutOfRange):
            ranges.require("voltage", value, None, None, "V")
