"""Make safe against the law that asks for its steps. It has no published numbers: what it names is checked."""

import json

import pytest

from tests import walking

JOBS = ("machine", "trailer", "vehicle", "structure", "tank")


def listed(job):
    pairs = [("job", job)] + [("held", "water")] * (job == "tank")
    return json.loads(walking.reply("/api/make-safe", pairs).body)


def text(job):
    return " ".join(each["text"] for each in listed(job)["results"]["before"]["items"])


# 29 CFR 1910.147(d)(2) to (6): shut down, isolate, lock, relieve or restrain stored energy, verify. Standing: law, seen
# quoted.
def test_a_machine_goes_through_the_steps_of_lockout_in_words():
    said = text("machine")
    for step in (
        "Off, locked with my own lock",
        "key in my pocket",
        "let down",
        "chained",
        "blocked",
        "it will not start",
    ):
        assert step in said, step


# 29 CFR 1910.177 and WAC 296-864-20010: no heat on a rim. Standing: law, seen.
@pytest.mark.parametrize("job", ["trailer", "vehicle"])
def test_what_has_tires_says_that_a_flat_one_bursts_too(job):
    assert "even flat" in text(job)


# 29 CFR 1910.254(c)(2), as WAC 296-24-68505(2)(c): no chains or wire rope for welding current. Bearings, hinges, rams:
# common practice. Standing: law, seen.
@pytest.mark.parametrize("job", JOBS)
def test_the_work_clamp_stands_on_every_list(job):
    assert "No bearing, hinge, ram, chain or wire rope between" in text(job)
    assert "upright and chained" in text(job)  # 29 CFR 1926.350(a)(9). Standing: law, seen.


# 29 CFR 1910.252(a)(3), as 8 CCR 5166(b): pipes disconnected or blanked, hollow spaces vented. Standing: law, seen.
def test_a_tank_has_its_pipes_off_and_is_open():
    assert "Every pipe into it off or blanked" in text("tank")
    assert "nothing that is heated is closed" in text("tank")
    assert "without a permit, tested air and somebody at the hole" in text("tank")  # 29 CFR 1910.146. Standing: law.
    assert any("8 CCR 5166" in each["title"] for each in listed("tank")["sources"])


# Repair training: both battery leads off, negative first; air bags disabled, a time waited. Standing: published, seen.
def test_a_vehicle_has_its_battery_off_before_its_air_bags():
    ids = [each["id"] for each in listed("vehicle")["results"]["before"]["items"]]
    assert ids.index("battery") < ids.index("air-bags")
    assert "negative first" in text("vehicle")


@pytest.mark.parametrize("job", JOBS)
def test_each_list_is_short_and_its_ids_stand_once(job):
    ids = [each["id"] for each in listed(job)["results"]["before"]["items"]]
    assert 5 <= len(ids) <= 9
    assert len(set(ids)) == len(ids)
