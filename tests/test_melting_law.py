"""The melting law of one wire refuses by the name and in the unit of what was asked."""

import pytest

from calculators import ranges
from calculators.melting_law import MeltingLaw, Point

pytestmark = pytest.mark.quick

WIRE = {"wire_material": "mild-steel", "wire_diameter": 1.2e-3, "transfer_mode": "short-circuit"}


@pytest.mark.parametrize(
    ("question", "first", "second", "name", "unit"),
    (
        ("extension", 0.1, None, "contact_tip_to_work", "m"),
        ("checked_feed", 900.0, 0.015, "current", "A"),
        ("checked_feed", 5.0, 0.015, "current", "A"),
        ("checked_current", 0.9, 0.015, "wire_feed_speed", "m/s"),
        ("checked_current", 0.006, 0.015, "wire_feed_speed", "m/s"),
        ("checked_distance", 0.09, 900.0, "current", "A"),
        ("checked_distance", 0.9, 200.0, "wire_feed_speed", "m/s"),
        ("checked_distance", 0.006, 200.0, "wire_feed_speed", "m/s"),
    ),
)
def test_refusal_names_what_was_asked_and_its_unit(question, first, second, name, unit):
    ask = getattr(MeltingLaw(WIRE), question)
    with pytest.raises(ranges.OutOfRange) as refused:
        ask(first) if second is None else ask(first, second)
    assert (refused.value.name, refused.value.unit) == (name, unit)


def test_what_was_not_said_is_taken_as_not_known():
    law = MeltingLaw({"wire_material": "aluminum", "wire_diameter": 1.2e-3})
    assert (law.alloy, law.transfer) == ("", "not-known")


def test_the_curve_runs_from_the_lowest_current_to_the_highest_in_even_steps():
    law = MeltingLaw(WIRE)
    point = Point(law, 0.015, 150.0, 0.07, guessed=False)
    lowest, highest = law.current_limits(point.extension)
    rows = point.curve(4)
    assert [row[0] for row in rows] == pytest.approx([lowest + (highest - lowest) * step / 4.0 for step in range(5)])
    for current, low, middle, high in rows:
        assert middle == pytest.approx(law.feed(current, point.extension))
        assert (low / middle, high / middle) == pytest.approx((1.0 - law.half_band, 1.0 + law.half_band))


def test_a_guessed_distance_widens_the_band_of_steel_and_not_of_aluminum():
    steel = Point(MeltingLaw(WIRE), 0.011, 150.0, 0.07, guessed=True)
    assert steel.guessed
    assert steel.shortest < steel.extension < steel.longest
    aluminum = Point(MeltingLaw({**WIRE, "wire_material": "aluminum"}), 0.011, 150.0, 0.11, guessed=True)
    assert not aluminum.guessed
    assert aluminum.shortest == aluminum.extension == aluminum.longest


@pytest.mark.parametrize("arc_term", (0.5, 0.9, 1.0, 1.1, 2.0))
@pytest.mark.parametrize("resistance_term", (0.5, 1.0, 2.0))
def test_a_trim_multiplies_the_terms_and_moves_no_limit(arc_term, resistance_term):
    plain = MeltingLaw(WIRE)
    law = MeltingLaw({**WIRE, "arc_term": arc_term, "resistance_term": resistance_term, "trim_band": 0.07})
    arc, heat = plain.arc * 200.0, plain.feed(200.0, 0.015) - plain.arc * 200.0
    assert law.feed(200.0, 0.015) == pytest.approx(arc_term * arc + resistance_term * heat)
    assert law.current(law.feed(200.0, 0.015), 0.015) == pytest.approx(200.0)
    assert law.distance(law.feed(200.0, 0.015), 200.0) == pytest.approx(0.017)
    assert law.current_limits(0.015) == plain.current_limits(0.015)
    assert (law.half_band, plain.half_band) == (0.07, 0.15)


def test_a_trim_read_with_another_wire_metal_is_left_out():
    trim = {"arc_term": 1.1, "resistance_term": 0.9, "trim_band": 0.06}
    plain, own = MeltingLaw(WIRE), MeltingLaw({**WIRE, **trim, "trim_material": WIRE["wire_material"]})
    assert own.arc == pytest.approx(1.1 * plain.arc) and own.half_band == 0.06
    other = MeltingLaw({**WIRE, **trim, "trim_material": "aluminum"})
    assert (other.arc, other.resistance, other.half_band) == (plain.arc, plain.resistance, plain.half_band)


@pytest.mark.parametrize(("arc_term", "resistance_term"), ((2.0, 0.5), (0.5, 2.0), (1.0, 1.0)))
def test_a_distance_that_is_worked_out_is_one_the_law_answers_for(arc_term, resistance_term):
    """Where half the heat is made in the stick-out is the wire's, not the trim's: both ends must agree on it."""
    law = MeltingLaw({**WIRE, "arc_term": arc_term, "resistance_term": resistance_term})
    longest = min(0.030, 0.30e-3 / (5.0e-5 * 340.0))
    feed = law.feed(340.0, longest)
    distance = law.checked_distance(feed * 0.9999999, 340.0)
    assert Point(law, distance, 340.0, feed, guessed=False).distance == distance
    with pytest.raises(ranges.OutOfRange):
        law.checked_distance(feed * 1.0001, 340.0)
