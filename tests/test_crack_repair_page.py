"""What crack-repair says of parts as a welder would describe them, what it refuses, and what it never says.

That its numbers are those of the joint and preheat questions is checked by asking those.
"""

import html
import json
import re
import urllib.parse

import pytest

from calculators import asking, crack_repair
from calculators.contract import STANDINGS, Number
from tests import walking
from tests.crack_repair_scenarios import SCENARIOS

pytestmark = pytest.mark.quick

ENGLISH = crack_repair.CALCULATOR.english
STEEL = {"service": "steady", "family": "structural", "grade": "a36-group"}
PLATE = {**STEEL, "crack_length": "4 in", "thickness": "1/2 in"}
HARDENED = ("quenched-tempered", "wear-plate")
HIGH_FIRST = (*HARDENED, "manganese", "stainless", "aluminum-heat-treated", "aluminum-magnesium")


def ask(status=200, units="us", **typed):
    reply = walking.reply("/api/crack-repair", list(typed.items()), system=units)
    assert reply.status == status, reply.body
    return json.loads(reply.body)


def rows(answer):
    return [[cell.replace("\u00a0", " ") for cell in row] for row in answer["results"]["steps"]["rows"]]


def has_step(answer, key):
    return any(f". {ENGLISH['step.' + key]}" in re.sub(r": .*", "", row[0]) for row in rows(answer))


def followed(calculator, **typed):
    """Return what the API says when the link to another calculator is followed."""
    page = walking.reply("/crack-repair", list(typed.items()), partial=True).body
    (link,) = [each for each in re.findall(r'href="([^"]+)"', page) if each.startswith(calculator + "?")]
    pairs = urllib.parse.parse_qsl(urllib.parse.urlsplit(html.unescape(link)).query)
    reply = walking.reply("/api/" + calculator, pairs, system="us")
    return reply.status, json.loads(reply.body)


def value(answer, name):
    return answer["results"][name]["value"]


# ---------------------------------------------------------------- scenarios


@pytest.mark.parametrize(
    ("typed", "verdict", "there", "absent"), [each[1:] for each in SCENARIOS], ids=[each[0] for each in SCENARIOS]
)
def test_scenario_takes_its_path(typed, verdict, there, absent):
    if verdict == "refused":
        assert ask(status=422, **typed)["errors"]
        return
    answer = ask(**typed)
    assert answer.get("verdict", "") == verdict
    assert [step for step in there if not has_step(answer, step)] == []
    assert [step for step in absent if has_step(answer, step)] == []


def test_there_are_scenarios_enough():
    assert len(SCENARIOS) >= 15
    assert sum(1 for each in SCENARIOS if each[2] == "refused") >= 5


@pytest.mark.parametrize("service", ["pressure", "lifting"])
def test_refusal_comes_before_any_other_question(service):
    assert list(ask(status=422, service=service)["errors"]) == ["service"]
    assert list(ask(status=422, **{**PLATE, "service": service})["errors"]) == ["service"]


@pytest.mark.parametrize("service", ["people", "road", "heat-treated"])
def test_part_that_others_decide_about_gets_no_number_to_weld_by(service):
    for family in ("structural", "quenched-tempered", "hardening", "cast-iron", "unknown"):
        answer = ask(service=service, family=family)
        assert answer["verdict"] == "outside"
        assert "Who must agree" in " ".join(answer["notes"])
        assert not [name for name, each in answer["results"].items() if "value" in each]
        assert not re.search(r"\d (°|in|mm|h\b)", json.dumps(answer["results"]["steps"], ensure_ascii=False))


def test_steps_are_numbered_in_the_order_of_work():
    for _, typed, verdict, _, _ in SCENARIOS:
        if verdict != "refused":
            numbers = [int(row[0].partition(".")[0]) for row in rows(ask(**typed))]
            assert numbers == list(range(1, len(numbers) + 1))
    steps = ["cause", "unload", "ends", "stop", "dig", "prove", "chill", "weld", "still-air", "wait", "after"]
    found = [re.sub(r"^\d+\. ", "", row[0]).partition(":")[0] for row in rows(ask(**PLATE))]
    assert found == [ENGLISH["step." + each] for each in steps]


def test_steps_carry_the_numbers():
    said = [row[0] for row in rows(ask(**PLATE))]
    assert said[3].endswith(": 0.25 in")
    assert said[4].endswith(": 8 in")
    assert said[6].endswith(": at least 32 °F")
    assert said[9].endswith(": 16 h at least")


# ---------------------------------------------------------------- no number contradicts the other questions

JOINTS: tuple[dict[str, str], ...] = (
    {},
    {"groove": "single-u", "thickness": "1 in"},
    {"groove": "double-v", "thickness": "25 mm", "access": "both-sides", "crack_through": "yes"},
    {"family": "manganese", "service": "impact"},
    {"family": "aluminum-heat-treated", "included_angle": "90 deg", "root_gap": "0 mm"},
    {"process": "flux-cored-arc", "largest_bead": "5/16 in", "crack_through": "no", "crack_depth": "1/4 in"},
    {"ends_inside": "one", "crack_length": "150 mm"},
)


@pytest.mark.parametrize("more", JOINTS)
def test_metal_wire_and_passes_are_those_of_joint_fill(more):
    typed = {**PLATE, **more}
    if typed["family"] != "structural":
        del typed["grade"]
    ours = ask(**typed)
    status, theirs = followed("joint-fill", **typed)
    assert status == 200
    assert value(ours, "wire_needed") == pytest.approx(value(theirs, "wire_mass"), rel=2e-4)
    for name in ("deposit_mass", "passes"):
        assert value(ours, name) == pytest.approx(value(theirs, name), rel=2e-4)


PREHEATS: tuple[dict[str, str], ...] = (
    {"thickness": "3 in"},
    {"grade": "a572-65-group", "cet": "0.34 %", "thickness": "1 1/2 in"},
    {"family": "quenched-tempered", "cet": "0.40 %", "thickness": "40 mm", "process": "low-hydrogen-stick"},
    {"family": "wear-plate", "cet": "0.45 %"},
    {"family": "hardening", "hardening_grade": "4140"},
    {"family": "hardening", "hardening_grade": "1045", "thickness": "2 in"},
    {"family": "manganese"},
    {"family": "stainless"},
    {"family": "aluminum-magnesium"},
    {"family": "unknown", "magnet": "sticks"},
    {"family": "unknown", "magnet": "does-not-stick"},
)


@pytest.mark.parametrize("more", PREHEATS)
def test_temperatures_are_those_of_preheat(more):
    typed = {**PLATE, **more}
    if typed["family"] != "structural":
        del typed["grade"]
    ours = ask(**typed)
    status, theirs = followed("preheat", **typed)
    assert status == 200
    for name in ("preheat_minimum", "preheat_maximum"):
        assert (name in ours["results"]) == (name in theirs["results"]), name
        if name in ours["results"]:
            assert value(ours, name) == pytest.approx(value(theirs, name))


def test_heat_input_and_wire_feed_take_what_is_carried():
    for calculator in ("heat-input", "wire-feed"):
        page = walking.reply("/crack-repair", list(PLATE.items()), partial=True).body
        link = re.search(rf'href="({calculator}\?[^"]+)"', page)
        assert link
        names = [name for name, _ in urllib.parse.parse_qsl(html.unescape(link.group(1)).partition("?")[2])]
        known = [field.name for field in walking.calculator(calculator).fields]
        assert set(names) <= set(known)


# ---------------------------------------------------------------- traps


@pytest.mark.parametrize("family", HIGH_FIRST)
def test_highest_is_said_first_where_it_governs(family):
    typed = {**PLATE, "family": family, "cet": "0.42 %"}
    del typed["grade"]
    lowest = ENGLISH["label.lowest"]
    if family not in HARDENED:
        del typed["cet"]
        lowest = ENGLISH["result.no_preheat"]
    page = walking.reply("/crack-repair", list(typed.items()), partial=True).body
    assert ENGLISH["label.highest"] in page
    assert page.index(ENGLISH["label.highest"]) < page.index(lowest)


@pytest.mark.parametrize("family", HARDENED)
def test_highest_is_known_before_the_thickness_is(family):
    answer = ask(service="wear", family=family, crack_length="4 in", thickness="unknown")
    assert value(answer, "preheat_maximum") == pytest.approx(392.0)
    assert "preheat_minimum" not in answer["results"]
    assert not has_step(answer, "keep-cool")  # nobody knows yet that it wants no heat


def test_magnetic_powder_is_never_asked_for_on_what_no_magnet_sticks_to():
    for family in ("manganese", "stainless", "aluminum-heat-treated", "aluminum-magnesium", "unknown"):
        said = json.dumps(rows(ask(service="steady", family=family, crack_length="4 in", thickness="1/2 in")))
        assert "Dye or magnetic powder" not in said.partition("Wait, then test")[0], family


def test_no_wire_is_reckoned_for_what_has_none():
    for more in ({"family": "cast-iron"}, {"family": "unknown"}, {"process": "low-hydrogen-stick"}):
        typed = {**PLATE, **more}
        if typed["family"] != "structural":
            del typed["grade"]
        assert "wire_needed" not in ask(**typed)["results"], more


def test_without_a_length_it_says_to_measure_first():
    answer = ask(service="steady", family="structural", thickness="1/2 in")
    assert "Find both ends" in answer["results"]["first"]["text"]
    assert "wire_needed" not in answer["results"]
    assert "groove_area" in answer["results"]


def test_no_groove_without_a_thickness():
    answer = ask(service="steady", family="structural", crack_length="4 in", thickness="unknown")
    for name in ("metal_volume", "passes", "stop_hole", "preheat_minimum"):
        assert name not in answer["results"]


# ---------------------------------------------------------------- all of them


def test_every_answer_gives_no_leave_and_names_sources_it_declared():
    declared = {source.title for source in crack_repair.CALCULATOR.sources}
    for _, came in walking.answered("crack-repair"):
        assert came.answer is not None
        assert "caution.decides" in [message.id for message in came.answer.cautions]
        assert {source.title for source in came.answer.sources} <= declared
        assert all(source.standing in STANDINGS for source in came.answer.sources)


def test_nothing_said_sounds_like_leave_to_weld():
    texts = [walking.reply("/crack-repair", list(each[1].items())).body for each in SCENARIOS]
    texts += [walking.reply("/crack-repair", pairs).body for _, pairs in walking.states("crack-repair")]
    for text in texts:
        plain = re.sub(r"<[^>]+>", " ", text.lower())
        for word in ("safe ", "no preheat", "is allowed", "you may", "approved", "good to go", "inside:"):
            assert word not in plain, word


def test_a_closed_window_never_goes_without_a_verdict():
    for _, came in walking.answered("crack-repair"):
        assert came.answer is not None
        numbers = {each.name: each.value for each in came.answer.results if isinstance(each, Number)}
        if numbers.get("preheat_minimum", 0.0) >= numbers.get("preheat_maximum", 1e9):
            assert came.answer.verdict is not None and came.answer.verdict.state == "outside"


def test_every_scenario_has_sentences_for_all_it_says():
    for _, typed, *_ in SCENARIOS:
        came = asking.ask(crack_repair.CALCULATOR, list(typed.items()))
        assert came.state in ("answer", "problem")
        assert "crack-repair." not in re.sub(r'"[^"]*"', "", walking.reply("/crack-repair", list(typed.items())).body)
