"""Hot work against the law and the fire code as they are quoted; standing beside each."""

import json
from pathlib import Path

import pytest

from calculators.facts import fire
from tests import walking
from webapp import bundle

FOOT, MINUTE = 0.3048, 60.0
OPEN = [("work_on", "open"), ("place", "indoors")]


def page(*more):
    return walking.reply("/hot-work", [*OPEN, *more]).body.replace("\u00a0", " ")


def results(*more):
    return json.loads(walking.reply("/api/hot-work", [*OPEN, *more]).body)["results"]


# 29 CFR 1915.504(b)(2) gives 35 ft as 10.7 m; 1910.252(a)(2)(iii)(A)(1), as WAC 296-307-49503 has it: closer than
# 35 feet. Standing: law, seen.
def test_the_circle_is_35_ft_which_the_shipyard_rule_gives_as_10_7_m():
    assert pytest.approx(35 * FOOT) == fire.CIRCLE
    assert round(fire.CIRCLE, 1) == 10.7
    assert "35 ft all round" in page()
    assert "10.7 m all round" in page(("units", "si"))


# "closer than 35 feet": at 35 feet itself the rule's first case does not hold, though others may. Standing: law, seen.
@pytest.mark.parametrize(
    ("typed", "state"), [("34.9 ft", "outside"), ("35 ft", "unclear"), ("10.6 m", "outside"), ("0 ft", "outside")]
)
def test_closer_than_the_circle_calls_for_a_watch_and_beyond_it_is_never_called_inside(typed, state):
    said = json.loads(walking.reply("/api/hot-work", [*OPEN, ("fire_distance", typed)]).body)
    assert said["verdict"] == state


# 29 CFR 1910.252(a)(2)(iii)(B), word for word in WAC 296-307-49503(3)(b): "at least a half hour". Standing: law, seen.
def test_the_law_s_watch_is_half_an_hour():
    assert fire.WATCH_BY_LAW == 30 * MINUTE
    assert results(("watch_rule", "law"))["fire_watch"] == {"value": 30, "unit": "min"}
    assert results(("watch_rule", "law"))["timer"]["value"] == 30


# NFPA 51B (2019) 5.6.1.1: "for 1 hour after completion of hot work operations". Standing: standard, seen quoted.
def test_the_fire_code_s_watch_is_an_hour_and_is_what_is_asked_for_unless_the_law_s_is_chosen():
    assert fire.WATCH_BY_FIRE_CODE == 60 * MINUTE
    assert results()["fire_watch"] == {"value": 60, "unit": "min"}
    assert results()["timer"]["value"] == 60


# 29 CFR 1910.252(a)(2)(i), (iii)(A)(3) and (4): openings, cracks, the opposite side; (ii) fire extinguishing equipment
# ready; (iii)(B) watchers trained, with the alarm known. Standing: law, seen as WAC 296-307-49503.
@pytest.mark.parametrize(
    "word", ["Cracks, drains, ducts", "Other side of wall, floor and roof", "Extinguisher full", "trained"]
)
def test_what_the_law_names_is_on_the_list(word):
    assert word in page()


# 29 CFR 1910.177 and WAC 296-864-20010: rim wheels are not heated at any time. Standing: law, seen.
def test_a_rim_is_refused_tire_on_or_off():
    body = walking.reply("/api/hot-work", [("work_on", "rim"), ("place", "vehicle")]).body
    assert list(json.loads(body)["errors"]) == ["work_on"]
    assert "tire on or off" in body


# 29 CFR 1910.252(a)(3)(i) asks that used containers be clean beyond all doubt. No tick of ours can know that, so there
# is none. Standing: law, seen as 8 CCR 5166.
@pytest.mark.parametrize("held", ["burns", "unknown"])
@pytest.mark.parametrize(
    ("name", "of"), [("hot-work", [("work_on", "container"), ("place", "outdoors")]), ("make-safe", [("job", "tank")])]
)
def test_a_drum_that_held_what_burns_or_nobody_knows_what_is_refused(name, of, held):
    reply = walking.reply("/api/" + name, [*of, ("held", held)])
    assert reply.status == 422
    assert "Do not weld, cut or grind it" in json.loads(reply.body)["errors"]["held"]


def test_no_list_anywhere_can_be_ticked_to_make_a_fuel_drum_fit_for_heat():
    said = "".join(
        Path(bundle.ROOT / "calculators" / name).read_text() for name in ("hot_work_words.py", "make_safe_words.py")
    )
    for word in ("cleaned", "purged", "steamed", "rinsed", "inerted"):
        assert word not in said.lower(), word
