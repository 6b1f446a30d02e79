"""The pages of make safe and hot work: what each list holds, what it says beside it, and what no sentence may say."""

import json
import re

import pytest

from tests import walking

PERMISSION = re.compile(r"\b(it is safe|safe to|ok to|okay|you may|you can now|allowed to|go ahead)\b", re.I)


def api(name, *pairs):
    return json.loads(walking.reply("/api/" + name, list(pairs)).body)


def ids(*pairs):
    return [each["id"] for each in api("hot-work", *pairs)["results"]["before"]["items"]]


def test_the_list_follows_the_place_and_what_gets_the_heat():
    indoors = ids(("work_on", "open"), ("place", "indoors"))
    outdoors = ids(("work_on", "open"), ("place", "outdoors"))
    assert set(indoors) - set(outdoors) == {"floor", "sprinklers"}
    assert set(outdoors) - set(indoors) == {"grass"}
    hollow = ids(("work_on", "hollow"), ("place", "vehicle"))
    assert "hollow" in hollow and "fuel" in hollow
    assert hollow[-1] == "watcher", "who watches comes last, when all else is looked at"


def test_a_list_is_the_same_for_the_same_address_whatever_was_ticked():
    first = walking.reply("/make-safe", [("job", "vehicle")], partial=True).body
    assert walking.reply("/make-safe", [("job", "vehicle")], partial=True).body == first
    assert "checked" not in first.partition("checklist")[2]


def test_a_tank_waits_for_what_it_held():
    assert "What it ever held" in json.dumps(api("make-safe", ("job", "tank")))


@pytest.mark.parametrize("name", ["make-safe", "hot-work"])
def test_no_sentence_gives_leave(name):
    for id, text in walking.calculator(name).english.items():
        if id != "found-by":
            assert not PERMISSION.search(text), text


@pytest.mark.parametrize(
    ("name", "pairs"), [("make-safe", [("job", "machine")]), ("hot-work", [("work_on", "open"), ("place", "indoors")])]
)
def test_what_is_left_to_judge_is_said_and_leads_to_stopping(name, pairs):
    left = api(name, *pairs)["results"]["before"]["left"]
    assert left.startswith("Ticks ") and "In doubt" in left


def test_distances_are_asked_about_in_paces_and_refused_below_nothing():
    assert "A pace is 2.5 ft" in walking.reply("/hot-work", []).body.replace("\u00a0", " ")
    errors = api("hot-work", ("work_on", "open"), ("place", "indoors"), ("fire_distance", "-3 ft"))["errors"]
    assert list(errors) == ["fire_distance"]


def test_each_leads_to_the_other():
    assert 'href="hot-work"' in walking.reply("/make-safe", [("job", "machine")]).body
    assert 'href="make-safe"' in walking.reply("/hot-work", [("work_on", "open"), ("place", "indoors")]).body
