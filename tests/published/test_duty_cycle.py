"""Duty cycle against the multipliers of the electrical code and published worked examples."""

import pytest

from calculators import duty, ranges

# NEC Table 630.11(A), 2008, welders without a motor: (duty, multiplier). Standing: standard, seen quoted. Made for
# supply cables, not for this: an independent proof that heat goes with the square of the current.
MULTIPLIERS = (
    (1.00, 1.00), (0.90, 0.95), (0.80, 0.89), (0.70, 0.84), (0.60, 0.78), (0.50, 0.71), (0.40, 0.63), (0.30, 0.55),
    (0.20, 0.45),
)  # fmt: skip
# The same table, motor-generator welders.
MOTOR_MULTIPLIERS = ((0.90, 0.96), (0.80, 0.91), (0.70, 0.86), (0.60, 0.81), (0.50, 0.75), (0.40, 0.69), (0.30, 0.62))


@pytest.mark.parametrize(("share", "multiplier"), MULTIPLIERS)
def test_heating_current_is_the_electrical_code_s(share, multiplier):
    assert duty.effective_current(100.0, share) / 100.0 == pytest.approx(multiplier, abs=0.006)


@pytest.mark.parametrize(("share", "multiplier"), MULTIPLIERS)
def test_continuous_current_of_a_plate_is_the_electrical_code_s(share, multiplier):
    assert duty.current_for_duty(1.0, 100.0, share) / 100.0 == pytest.approx(multiplier, abs=0.006)


@pytest.mark.parametrize(("share", "multiplier"), MOTOR_MULTIPLIERS)
def test_motor_generators_stay_under_a_steeper_line(share, multiplier):
    """The trap: that column is no square root. Below its rating such a machine may do more than the square says."""
    exponent = duty.exponent_of(100.0, share, 100.0 * multiplier, 1.0)
    assert 2.1 < exponent < 2.7


# A 40 A welder of 50 % takes 28.4 A of cable: EC&M, Code Q&A 45. 60 A at 70 % takes 50.4 A and 25 A at 40 % 15.75 A,
# multipliers being rounded: EC&M, Code Quiz 61. Standing: published.
@pytest.mark.parametrize(("rated", "share", "expected"), [(40, 0.5, 28.4), (60, 0.7, 50.4), (25, 0.4, 15.75)])
def test_worked_examples_of_an_electrician_s_journal(rated, share, expected):
    assert duty.effective_current(rated, share) == pytest.approx(expected, rel=0.01)


# I^2 X = constant (IEC 60974-1), by hand; the first seen worked in print. Standing: standard.
@pytest.mark.parametrize(
    ("rated", "rated_share", "share", "expected"),
    [
        (400, 0.25, 0.50, 282.8),
        (200, 0.30, 0.60, 141.4),
        (200, 0.30, 1.00, 109.5),
        (180, 0.20, 0.60, 103.9),
        (250, 0.40, 1.00, 158.1),
        (300, 0.60, 1.00, 232.4),
    ],
)
def test_current_for_another_share(rated, rated_share, share, expected):
    assert duty.current_for_duty(share, rated, rated_share) == pytest.approx(expected, abs=0.1)


@pytest.mark.parametrize(
    ("rated", "rated_share", "current", "expected"),
    [(200, 0.30, 150, 0.533), (180, 0.20, 120, 0.45), (200, 0.60, 160, 0.938), (160, 0.60, 100, 1.0)],
)
def test_share_at_another_current(rated, rated_share, current, expected):
    assert duty.allowed_duty(current, rated, rated_share) == pytest.approx(expected, abs=0.0006)


def test_supply_current_with_its_idle_part():
    # 32² x 0.35 + 0.5² x 0.65 = 358.6; √ = 18.94 A (NEC 630.12, IEC 60974-1). Standing: standard, by hand.
    assert duty.effective_current(32.0, 0.35, 0.5) == pytest.approx(18.94, abs=0.005)
    # With nothing between the arcs: 32 x √0.35 = 18.93.
    assert duty.effective_current(32.0, 0.35) == pytest.approx(18.932, abs=0.001)
    assert duty.effective_current(32.0, 1.0, 0.5) == pytest.approx(32.0)
    assert duty.effective_current(32.0, 0.0, 0.5) == pytest.approx(0.5)


# ---------------------------------------------------------------- how it scales


@pytest.mark.parametrize("exponent", [1.0, 2.0, 2.4, 3.0])
@pytest.mark.parametrize("share", [0.35, 0.6, 1.0])
def test_there_and_back(exponent, share):
    current = duty.current_for_duty(share, 220.0, 0.3, exponent)
    assert duty.allowed_duty(current, 220.0, 0.3, exponent) == pytest.approx(share)
    assert duty.exponent_of(220.0, 0.3, current, share) == pytest.approx(exponent)


def test_halved_current_runs_four_times_as_long():
    assert duty.allowed_duty(100.0, 200.0, 0.2) == pytest.approx(4 * 0.2)


def test_never_more_than_always():
    assert duty.allowed_duty(20.0, 200.0, 0.6) == 1.0


def test_less_current_and_steeper_heat_both_allow_more():
    shares = [duty.allowed_duty(current, 200.0, 0.3) for current in (200, 190, 170, 150, 120)]
    assert shares == sorted(shares) and len(set(shares)) == 5
    assert duty.allowed_duty(150.0, 200.0, 0.3, 1.0) < duty.allowed_duty(150.0, 200.0, 0.3, 2.4)


def test_share_is_not_in_proportion_to_current():
    """The trap: 200 A at 30 % is not 40 % at 150 A, but 53 %; and 60 % is not at 100 A."""
    assert duty.allowed_duty(150.0, 200.0, 0.3) > 0.5
    assert duty.current_for_duty(0.6, 200.0, 0.3) > 140.0


# ---------------------------------------------------------------- what is refused


@pytest.mark.parametrize(
    ("two", "named"),
    [
        ((0.9, 0.3, 0.5, 0.6), "higher_current"),
        ((2001.0, 0.3, 100.0, 0.6), "higher_current"),
        ((200.0, 0.009, 100.0, 0.6), "its_duty"),
        ((200.0, 1.1, 100.0, 1.0), "its_duty"),
        ((200.0, 0.3, 0.9, 0.6), "lower_current"),
        ((1999.0, 0.3, 2001.0, 0.6), "lower_current"),
        ((200.0, 0.3, 100.0, 0.009), "longer_duty"),
        ((200.0, 0.3, 100.0, 1.1), "longer_duty"),
        ((200.0, 0.3, 200.0, 0.6), "ratio"),
        ((200.0, 0.3, 220.0, 0.6), "ratio"),
        ((200.0, 0.3, 100.0, 0.3), "ratio"),
        ((200.0, 0.3, 100.0, 0.2), "ratio"),
    ],
)
def test_two_ratings_that_make_no_line_are_refused_by_name(two, named):
    with pytest.raises(ranges.OutOfRange) as refused:
        duty.exponent_of(*two)
    assert refused.value.name == named
    assert refused.value.unit == ("A" if named.endswith("current") else "")


@pytest.mark.parametrize("two", [(2000.0, 0.01, 1.0, 1.0), (1.001, 0.5, 1.0, 0.501)])
def test_ends_of_the_range_of_two_ratings_are_inside(two):
    higher, short, lower, longer = two
    exponent = duty.exponent_of(*two)
    assert (higher / lower) ** exponent == pytest.approx(longer / short)


def test_two_ratings_may_lie_close_together_but_not_on_each_other():
    """1.0001 is where a ratio counts as one: less cannot be told from none."""
    assert duty.exponent_of(100.02, 0.5, 100.0, 0.6) > 0.0
    assert duty.exponent_of(200.0, 0.5, 100.0, 0.5001) > 0.0
    for two in ((100.005, 0.5, 100.0, 0.6), (200.0, 0.5, 100.0, 0.50004)):
        with pytest.raises(ranges.OutOfRange):
            duty.exponent_of(*two)
