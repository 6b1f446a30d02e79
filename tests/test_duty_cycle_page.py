"""What the duty-cycle question answers and refuses. The relation itself is checked in tests/published.

By hand, 200 A at 30 % on the plate. With care, heat as the current: 30 x 200 ÷ 150 = 40 % at 150 A, and 200 x 0.3 =
60 A without end. As its square (NEC Table 630.11(A)): 53.33 %, and 200 x √0.3 = 109.5 A.
"""

import json

import pytest

from tests import walking

PLATE = {"rated_current": "200 A", "rated_duty_cycle": "30 %"}
SECOND = {"second_current": "140 A", "second_duty_cycle": "60 %"}


def ask(status=200, **typed):
    reply = walking.reply("/api/duty-cycle", list(typed.items()))
    assert reply.status == status, reply.body
    return json.loads(reply.body)


def value(answer, name):
    return answer["results"][name]["value"]


def errors(**typed):
    return {field: text.replace("\u00a0", " ") for field, text in ask(status=422, **typed)["errors"].items()}


def said(answer, part):
    return " ".join(answer[part]).replace("\u00a0", " ")


def test_current_gives_percent_and_minutes():
    answer = ask(current="150 A", **PLATE)
    for name, careful, other in (
        ("duty_cycle", 40.0, 53.333),
        ("minutes_on", 4.0, 5.333),
        ("minutes_off", 6.0, 4.667),
        ("steady_current", 60.0, 109.54),
    ):
        found = answer["results"][name]
        assert found["value"] == pytest.approx(careful)
        assert (found["low"], found["high"]) == pytest.approx(tuple(sorted((careful, other))), abs=0.005)


def test_minutes_stand_beside_the_number():
    page = walking.reply("/duty-cycle", [*PLATE.items(), ("current", "150 A")]).body.replace("\u00a0", " ")
    headline = page[page.index('class="headline answered"') :]
    headline = headline[: headline.index("</div>")]
    assert "4 min to 5.33 min of ten, then rest" in headline
    assert "<b>40</b>" in headline and "Likely 40 % to 53.3 %" in headline
    rated = walking.reply("/duty-cycle", [*PLATE.items(), ("current", "200 A")]).body.replace("\u00a0", " ")
    assert "3 min of ten, then rest" in rated


def test_thirty_percent_is_3_minutes_on_then_7_off():
    """The trap: not 30 minutes of 100."""
    answer = ask(current="200 A", **PLATE)
    assert value(answer, "minutes_on") == pytest.approx(3.0)
    assert value(answer, "minutes_off") == pytest.approx(7.0)
    assert "not 30 minutes at a stretch" in said(answer, "notes")


WHOLE = {"rated_current": "200 A", "rated_duty_cycle": "30 %", "current": "150 A", "duty_cycle": "40 %"}


@pytest.mark.parametrize(
    ("blank", "expected"),
    [("rated_current", 200.0), ("rated_duty_cycle", 30.0), ("current", 150.0), ("duty_cycle", 40.0)],
)
def test_every_blank_is_found_again(blank, expected):
    answer = ask(**{name: text for name, text in WHOLE.items() if name != blank})
    assert answer["solved_for"] == blank
    assert value(answer, blank) == pytest.approx(expected, rel=1e-6)


def test_nothing_goes_above_the_plate():
    assert set(errors(current="201 A", **PLATE)) == {"current"}
    # 200 x √(30 ÷ 10) would be 346 A.
    answer = ask(duty_cycle="10 %", **PLATE)
    assert value(answer, "current") == pytest.approx(200.0)
    assert "highest current on the plate" in said(answer, "notes")
    assert value(ask(current="180 A", duty_cycle="10 %", rated_duty_cycle="30 %"), "rated_current") == pytest.approx(
        180.0
    )


def test_two_ratings_give_the_machine_s_own_line():
    # ln 2 ÷ ln (200 ÷ 140) = 1.943; 30 x (200 ÷ 160)^1.943 = 46.28 %.
    answer = ask(current="160 A", **PLATE, **SECOND)
    assert value(answer, "duty_cycle") == pytest.approx(46.28, abs=0.02)
    assert "low" not in answer["results"]["duty_cycle"]
    assert value(ask(current="140 A", **PLATE, **SECOND), "duty_cycle") == pytest.approx(60.0)
    swapped = {
        "rated_current": "140 A",
        "rated_duty_cycle": "60 %",
        "second_current": "200 A",
        "second_duty_cycle": "30 %",
    }
    assert value(ask(current="160 A", **swapped), "duty_cycle") == pytest.approx(value(answer, "duty_cycle"))


@pytest.mark.parametrize(
    "second",
    [
        {"second_current": "200 A", "second_duty_cycle": "60 %"},
        {"second_current": "140 A", "second_duty_cycle": "20 %"},
        {"second_current": "190 A", "second_duty_cycle": "100 %"},
        {"second_current": "60 A", "second_duty_cycle": "35 %"},
    ],
)
def test_ratings_of_no_machine_are_refused(second):
    assert set(errors(current="150 A", **PLATE, **second)) == {"second_duty_cycle"}


def test_half_a_second_rating_is_refused():
    assert set(errors(current="150 A", second_current="140 A", **PLATE)) == {"second_duty_cycle"}
    assert set(errors(current="150 A", second_duty_cycle="60 %", **PLATE)) == {"second_current"}


def test_second_rating_without_the_first_is_refused():
    assert set(errors(current="150 A", duty_cycle="60 %", rated_duty_cycle="30 %", **SECOND)) == {"second_current"}


@pytest.mark.parametrize(
    ("blank", "other"),
    [
        ("rated_current", 173.2),  # 150 x √(40 ÷ 30)
        ("rated_duty_cycle", 22.5),  # 40 x (150 ÷ 200)²
        ("current", 173.2),  # 200 x √(30 ÷ 40)
        ("duty_cycle", 53.33),
    ],
)
def test_band_reaches_to_heat_with_the_square_of_the_current(blank, other):
    found = ask(**{name: text for name, text in WHOLE.items() if name != blank})["results"][blank]
    assert (found["low"], found["high"]) == pytest.approx(tuple(sorted((found["value"], other))), rel=1e-3)


def test_number_shown_big_is_the_careful_end():
    """The trap: from one rating nobody knows, and what is shown big is what is welded by."""
    for blank, careful in (
        ("rated_current", "high"),
        ("rated_duty_cycle", "high"),
        ("current", "low"),
        ("duty_cycle", "low"),
    ):
        found = ask(**{name: text for name, text in WHOLE.items() if name != blank})["results"][blank]
        assert found["value"] == found[careful]
    assert "low" not in ask(current="200 A", **PLATE)["results"]["duty_cycle"]


def test_pass_just_welded_gives_the_rest():
    # 4 min x (100 - 40) ÷ 40 = 6 min; with 53.33 % it would be 3.5.
    answer = ask(current="150 A", arc_time="4 min", **PLATE)
    assert next(iter(answer["results"])) == "rest_time"
    rest = answer["results"]["rest_time"]
    assert (rest["value"], rest["low"], rest["high"]) == pytest.approx((6.0, 3.5, 6.0))
    assert answer["verdict"] == "inside"


def test_pass_longer_than_its_part_of_ten_minutes_is_outside():
    answer = ask(current="150 A", arc_time="8 min", **PLATE)
    assert answer["verdict"] == "outside"
    # 200 x 30 ÷ 80 = 75 A.
    assert "75 A" in said(answer, "notes")
    # Longer than the ten minutes: continuous current.
    assert "60 A" in said(ask(current="150 A", arc_time="25 min", **PLATE), "notes")


@pytest.mark.parametrize(("time", "state"), [("4 min", "inside"), ("5 min", "unclear"), ("5.4 min", "outside")])
def test_pass_between_the_two_ends_is_unclear(time, state):
    assert ask(current="150 A", arc_time=time, **PLATE)["verdict"] == state


def test_no_rest_below_the_continuous_current():
    answer = ask(current="60 A", arc_time="25 min", **PLATE)
    assert value(answer, "duty_cycle") == pytest.approx(100.0)
    assert value(answer, "rest_time") == 0.0
    # Ten minutes on is all of any ten minutes.
    assert answer["verdict"] == "inside"
    # Between 60 and 109.5 A nobody knows from one rating.
    assert ask(current="100 A", arc_time="25 min", **PLATE)["verdict"] == "unclear"


@pytest.mark.parametrize(("wanted", "state"), [("40 %", "inside"), ("50 %", "unclear"), ("54 %", "outside")])
def test_wanted_share_is_compared(wanted, state):
    assert ask(current="150 A", duty_cycle=wanted, **PLATE)["verdict"] == state


def test_remedy_of_too_much_is_the_careful_current():
    answer = ask(current="180 A", duty_cycle="60 %", **PLATE)
    assert answer["verdict"] == "outside"
    # 200 x 30 ÷ 60.
    assert "100 A" in said(answer, "notes")


def test_next_question_carries_the_share_that_heats_most():
    page = walking.reply("/duty-cycle", [*PLATE.items(), ("current", "150 A")]).body
    assert "lead-drop?current=150+A&amp;duty_cycle=53.3333+%25" in page


def test_cautions_name_hot_days_and_the_gun():
    cautions = said(ask(current="150 A", **PLATE), "cautions")
    assert "40 °C" in cautions and "gun" in cautions
