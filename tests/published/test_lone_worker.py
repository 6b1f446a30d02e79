"""Calls by the clock. No published interval was found; the arithmetic is checked against datetime, a second method."""

import datetime
import json
import random

import pytest

from calculators.clock import Clock, Typed
from tests import walking

BASE = {"start_time": "14:30", "call_every": "30 min", "where": "Barn behind 12 Mill Lane"}


def api(status=200, **typed):
    reply = walking.reply("/api/lone-worker", list({**BASE, **typed}.items()))
    assert reply.status == status, reply.body
    return json.loads(reply.body)


def read(typed):
    clock = Typed(typed).clock
    assert clock is not None, typed
    return clock


def shown(clock):
    return f"{clock.text()} {clock.half()}".strip()


def test_times_are_those_of_datetime_over_midnight_too():
    chance = random.Random(7)
    for _ in range(300):
        start = datetime.datetime(2024, 5, 1, chance.randint(0, 23), chance.randint(0, 59))
        later = chance.randint(0, 3000)
        expected = start + datetime.timedelta(minutes=later)
        assert read(start.strftime("%H:%M")).after(later).text() == expected.strftime("%H:%M")
        half = start.strftime("%I:%M %p")
        assert shown(read(half).after(later)).upper() == expected.strftime("%I:%M %p").lstrip("0")


@pytest.mark.parametrize(
    ("typed", "expected"),
    [
        ("14:30", "14:30"),
        ("14.30", "14:30"),
        ("0:05", "00:05"),
        ("2:30 pm", "2:30 pm"),
        ("2:30PM", "2:30 pm"),
        ("2:30 p.m.", "2:30 pm"),
        ("2:30 A.M.", "2:30 am"),
        ("12 am", "12:00 am"),
        ("12 pm", "12:00 pm"),
        ("7 am", "7:00 am"),
    ],
)
def test_ways_to_type_a_time(typed, expected):
    assert shown(read(typed)) == expected


@pytest.mark.parametrize(
    "typed",
    [
        "",
        "noon",
        "014:30",
        "14:030",
        "1x:30",
        "24:00",
        "14:60",
        "13 pm",
        "0 am",
        "7",
        "1430",
        "014:30",
        "14:030",
        "1x:30",
        "14:3",
        "14:30:00",
        "-1:00",
        "\u0661:00",
    ],
)
def test_what_is_no_time_is_refused_beside_its_box(typed):
    assert Typed(typed).clock is None
    if typed:
        assert api(422, start_time=typed)["errors"] == {
            "start_time": "From must be a time of day, like 14:30 or 2:30 pm"
        }


def test_a_clock_wraps_once_a_day():
    assert Clock(1440 + 5, False).minutes == 5


def test_calls_and_the_text_that_says_them():
    results = api()["results"]
    assert results["first_call"]["text"] == "15:00"
    assert results["calls"]["text"] == "15:30, 16:00, 16:30, 17:00, 17:30"
    assert results["overdue"]["text"] == "15:10"
    assert results["call"]["value"] == 30
    text = results["text"]["text"].replace("\u00a0", " ")
    for words in (
        "from 14:30",
        "Barn behind 12 Mill Lane",
        "call at 15:00 and every 30 min",
        "No call by 15:10",
        "emergency",
    ):
        assert words in text
    assert "do not go in after me" in text


@pytest.mark.parametrize("hazard", ["tank", "under"])
def test_what_is_not_for_one_alone_is_said_to_be_outside(hazard):
    said = api(hazard=hazard)
    assert said["verdict"] == "outside"
    assert "Do not start this one alone." in said["notes"]
    assert "verdict" not in api(hazard="hot")


def test_nothing_is_sent_and_what_is_typed_is_shown_as_typed():
    body = walking.reply("/lone-worker", list({**BASE, "where": "<b>Gate & yard</b>"}.items())).body
    assert "&lt;b&gt;Gate &amp; yard&lt;/b&gt;" in body and "<b>Gate" not in body
    assert "Sending it is yours to do" in body
