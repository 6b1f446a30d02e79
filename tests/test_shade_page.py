"""The shade question: the darker of two bands, rods, torches, grinding, and the shade already in the helmet."""

import json

import pytest

from tests import walking


def ask(status=200, **typed):
    reply = walking.reply("/api/shade", list(typed.items()))
    assert reply.status == status, reply.body
    return json.loads(reply.body)


def page(**typed):
    return walking.reply("/shade", list(typed.items())).body.replace("\u00a0", " ")


def state(**typed):
    return page(**typed).partition('class="verdict ')[2].partition('"')[0]


@pytest.mark.parametrize(("current", "comfort"), [("159 A", 11), ("160 A", 12), ("250 A", 14)])
def test_an_edge_takes_the_darker(current, comfort):
    results = ask(current=current)["results"]
    assert results["least_shade"]["value"] == 10
    assert results["comfort_shade"]["value"] == comfort


def test_a_low_current_has_no_comfort_shade_and_says_so():
    answer = ask(current="50 A")
    assert list(answer["results"]) == ["least_shade"]
    assert "No comfort shade" in " ".join(answer["notes"])


def test_a_thick_rod_asks_for_more_than_its_current_and_a_thin_one_for_no_less():
    thick = {"process": "shielded-metal-arc", "current": "120 A"}
    assert ask(**thick)["results"]["least_shade"]["value"] == 8
    assert ask(**thick, rod_diameter="3/16 in")["results"]["least_shade"]["value"] == 10
    assert "darker than its current" in page(**thick, rod_diameter="3/16 in")
    assert ask(**{**thick, "current": "200 A"}, rod_diameter="3/32 in")["results"]["least_shade"]["value"] == 10


def test_the_shade_in_the_helmet_is_held_against_the_law():
    assert state(current="120 A", helmet_shade="9") == "outside"
    assert state(current="120 A", helmet_shade="10") == "inside"
    assert "floor" in page(current="120 A", helmet_shade="10")
    assert "Change the lens" in page(current="120 A", helmet_shade="9")


@pytest.mark.parametrize(
    ("process", "beyond", "end"),
    [
        ("gas-metal-arc", "501 A", "500 A"),
        ("shielded-metal-arc", "551 A", "550 A"),
        ("plasma-cutting", "801 A", "800 A"),
    ],
)
def test_beyond_the_table_there_is_no_number(process, beyond, end):
    errors = ask(422, process=process, current=beyond)["errors"]
    assert list(errors) == ["current"]
    assert end in errors["current"].replace("\u00a0", " ")


def test_a_torch_goes_by_the_plate():
    results = ask(process="gas-welding", thickness="1/8 in")["results"]
    assert results["least_shade"]["value"] == 5
    assert (results["comfort_shade"]["low"], results["comfort_shade"]["high"]) == (5, 6)
    assert "yellow" in page(process="gas-welding", thickness="1/8 in")


def test_brazing_asks_for_nothing_more():
    assert ask(process="brazing")["results"]["least_shade"]["value"] == 3


def test_grinding_takes_no_filter_but_glasses_and_shield():
    answer = ask(process="grinding")
    assert "impact glasses" in answer["results"]["no_filter"]["text"]
    assert "least_shade" not in answer["results"]


def test_bystanders_are_always_thought_of():
    for process in ("gas-metal-arc", "plasma-cutting"):
        assert any("Helper and fire watch" in each for each in ask(process=process, current="100 A")["cautions"])


def test_plasma_below_eighty_ampere_keeps_the_law():
    """The standard goes down to shade 4; the law's table has one band up to 300 A."""
    assert ask(process="plasma-cutting", current="30 A")["results"]["least_shade"]["value"] == 8
    assert "The standard goes lower" in page(process="plasma-cutting", current="30 A")
