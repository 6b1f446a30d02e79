"""The passes of a joint: drawn, in a table, against their limits, and refused in words where they are no readings."""

import json
import re

import pytest

from tests import walking

RUN = {"heats": "17.3 18.1 - 17.8 21 kJ/in", "heat_input_limit": "20 kJ/in"}


def page(**typed):
    return walking.reply("/pass-chart", list({"limit_basis": "heat-input", **typed}.items())).body.replace(
        "\u00a0", " "
    )


def errors(**typed):
    reply = walking.reply("/api/pass-chart", list({"limit_basis": "heat-input", **typed}.items()))
    assert reply.status == 422, reply.body
    return json.loads(reply.body)["errors"]


def state(**typed):
    return page(**typed).partition('class="verdict ')[2].partition('"')[0]


def points(text):
    return [(int(x), int(y)) for x, y in re.findall(r'<circle cx="(\d+)" cy="(\d+)"', text)]


def test_each_reading_is_a_point_and_a_gap_is_none():
    found = points(page(**RUN))
    assert len(found) == 4
    assert [x for x, _ in found] == sorted(x for x, _ in found)
    assert found[2][0] - found[1][0] == 2 * (found[1][0] - found[0][0])  # the third pass has no reading
    assert min(found, key=lambda point: point[1]) == found[-1]  # the hottest stands highest


def test_the_table_says_what_the_drawing_shows():
    text = page(**RUN)
    cells = re.findall(r'<th scope="row">(\d)</th><td>([^<]*)</td>', text)
    assert cells == [("1", "17.3 kJ/in"), ("2", "18.1 kJ/in"), ("3", "-"), ("4", "17.8 kJ/in"), ("5", "21 kJ/in")]
    assert "Heat input of 4 passes in their order, from 17.3 kJ/in to 21 kJ/in" in text


def test_a_pass_over_its_limit_is_named_and_the_limit_drawn():
    text = page(**RUN, interpasses="250 300 degF", interpass_most="300 degF")
    assert "Highest heat, pass 5" in text and state(**RUN) == "outside"
    assert text.count('class="limit"') == 2
    assert "not above 20 kJ/in" in text and "not above 300 °F" in text


def test_two_limits_that_are_not_held_are_both_named():
    text = page(**RUN, preheats="210 190 degF", preheat_least="200 degF")
    assert "Highest heat, pass 5, Least preheat, pass 2" in text


def test_held_limits_are_inside_and_none_is_no_verdict():
    assert state(heats="17.3 18.1 kJ/in", heat_input_limit="20 kJ/in") == "inside"
    assert state(heats="17.3 18.1 kJ/in") == ""


def test_temperatures_alone_are_drawn_too():
    text = page(interpasses="120 150 degC", units="si")
    assert len(points(text)) == 2 and "Interpass, pass by pass" in text


def test_one_pass_and_equal_passes_are_drawn():
    assert points(page(heats="17.3 kJ/in")) and len(points(page(heats="17.3 17.3 kJ/in"))) == 2


def test_which_heat_it_is_is_asked_not_guessed():
    text = walking.reply("/pass-chart", [("heats", "17 18 kJ/in")], partial=True).body
    assert "Waiting for" in text and "The heat is" in text and "drawing" not in text


def test_arc_energy_is_called_so():
    assert "Arc energy, middle one" in page(heats="17 18 kJ/in", limit_basis="arc-energy")


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("17.3 18.1", "one unit at the end"),
        ("17.3 18.1 V", "one unit at the end"),
        ("17.3 x 18.1 kJ/in", "is no number"),
        ("- - kJ/in", "No reading"),
        ("kJ/in", "one unit at the end"),
        ("17 " * 25 + "kJ/in", "At most 24"),
        ("17.3 900000 kJ/in", "goes from"),
        ("17.3 -4 kJ/in", "goes from"),
    ],
)
def test_what_is_no_row_of_readings_is_refused_beside_it(text, words):
    assert words in errors(heats=text)["heats"]


def test_nothing_to_draw_is_told():
    assert "Nothing to draw yet" in errors(heat_input_limit="20 kJ/in")[""]


def test_the_next_pass_carries_the_limits():
    text = page(**RUN, joint="bracket", interpass_most="350 degF")
    assert (
        "weld-entry?joint=bracket&amp;limit_basis=heat-input&amp;heat_input_limit=20+kJ/in&amp;interpass_most=350"
        in text
    )
