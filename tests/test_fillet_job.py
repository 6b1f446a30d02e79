"""The fillet weld asked about: which rule, which part and which limit count. Expected numbers are worked by hand.

Formulas by hand: AISC 360-22, J4.2: a part in shear yields at 0.60 Fy (factor 1.00) and breaks at 0.60 Fu (0.75);
J2.2b: an edge of 1/4 in and more keeps 1/16 in clear; J2.2b: a length of four legs at least. EN 1993-1-1, 6.2.6:
a part in shear yields at fy / root 3. Standards, as named in the calculator.
"""

import math

import pytest

from calculators.contract import Given
from calculators.fillet_job import ALLOWABLE, EUROCODE, RESISTANCE, Rule, Weld

INCH = 0.0254
KIP_PER_INCH = 1000.0 * 4.4482216152605 / INCH


def weld(solved_for=None, **values):
    given = Given()
    given.values = {"method": ALLOWABLE, "electrode_strength": "70-ksi", "joint": "tee", "sides": "one", **values}
    given.solved_for = solved_for
    return Weld(given)


@pytest.mark.parametrize(
    ("steel", "carries"),
    (
        ("a36", 0.60 * 36.0 * 0.375),  # yields first: 8.1 kip/in, against 9.8 to break it
        ("a572-50", 0.75 * 0.60 * 65.0 * 0.375),  # breaks first: 11.0 kip/in, against 11.3 to yield
    ),
)
def test_the_metal_beside_the_weld_yields_or_breaks_by_load_and_resistance(steel, carries):
    asked = {"method": RESISTANCE, "thickness": 0.375 * INCH, "steel": steel}
    assert weld(**asked).metal == pytest.approx(carries * KIP_PER_INCH, rel=1e-6)
    assert weld(**asked, sides="both").metal == pytest.approx(carries / 2.0 * KIP_PER_INCH, rel=1e-6)


def test_the_metal_beside_the_weld_yields_by_the_eurocode():
    # S355, 10 mm: 355 / 1.7321 x 10 = 2050 N/mm.
    found = weld(method=EUROCODE, thickness=0.010, steel="s355").metal
    assert found == pytest.approx(2.0496e6, rel=1e-4)


def test_the_metal_beside_the_weld_is_not_reckoned_from_half_of_what_it_takes():
    strengths = {"yield_strength": 250e6, "ultimate_strength": 400e6}
    assert weld(thickness=0.01, steel="other", **strengths).metal is not None
    for name in strengths:
        assert weld(thickness=0.01, steel="other", **{name: strengths[name]}).metal is None
    assert weld(steel="a36").metal is None


def test_the_edge_of_a_lap_is_the_part_that_was_named():
    lap = {"joint": "lap", "thickness": 0.25 * INCH}
    assert weld(**lap).largest == pytest.approx(3 / 16 * INCH)
    assert weld(**lap, edge_thickness=0.5 * INCH).largest == pytest.approx(7 / 16 * INCH)
    assert weld(joint="lap", leg=0.25 * INCH).largest is None
    assert weld(joint="tee", thickness=0.25 * INCH).largest is None
    assert weld(**lap, method=EUROCODE, steel="s235").largest is None


def test_a_leg_is_too_small_below_the_least_and_not_at_it():
    # AISC 360 table J2.4: over 1/4 to 1/2 in, 3/16 in at least.
    plate = {"thickness": 0.5 * INCH}
    at, under = weld(**plate, leg=3 / 16 * INCH), weld(**plate, leg=0.18 * INCH)
    assert at.too_small is False and under.too_small is True
    assert at.least_governs is under.least_governs is False
    solved = weld(**plate, leg=0.18 * INCH, solved_for="leg")
    assert solved.least_governs is True and solved.too_small is False
    unknown = weld(**plate)
    assert unknown.least_governs is unknown.too_small is False
    assert unknown.strength == 0.0


def test_a_gap_shortens_what_counts_of_the_leg_and_of_the_length():
    # 3/8 in less a gap of 1/8 in leaves 1/4 in, four times which is 1 in.
    assert weld(leg=0.375 * INCH, root_gap=0.125 * INCH).shortest_length() == pytest.approx(1.0 * INCH)


def test_the_next_size_up_is_in_the_code_s_own_steps():
    assert weld(leg=0.0052).size_up(0.0052) == (4, pytest.approx(0.25 * INCH))
    european = weld(method=EUROCODE, steel="s235", leg=0.0052)
    assert european.size_up(0.0052) == (6, pytest.approx(0.006))


def test_square_across_the_weld_it_carries_half_as_much_again():
    # AISC 360, J2.5: 1 + 0.50 sin^1.5; a 1/4 in leg of 70 ksi along the weld: 0.30 x 70 x 0.7071 x 1/4 = 3.712 kip/in.
    quarter = weld(leg=0.25 * INCH)
    assert quarter.strength == pytest.approx(3.712 * KIP_PER_INCH, rel=1e-3)
    assert quarter.strength_across() == pytest.approx(1.5 * quarter.strength)


def test_a_rule_counts_the_angle_only_where_it_was_turned_on():
    values = {"method": ALLOWABLE, "electrode_strength": "70-ksi", "load_angle": math.pi / 2.0}
    off, on = Rule(values), Rule({**values, "directional_increase": "on"})
    assert on.carried(0.006) == pytest.approx(1.5 * off.carried(0.006))
