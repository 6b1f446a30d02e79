"""The first page: every question is on it once, and is found by the words that welders use for it."""

import pytest

from tests import walking
from tests.html_reading import Page
from webapp import finding, home, shelf

# What is typed, and the question that must be among the first few found.
WANTED = (
    ("gauge", "sheet-gauge"),
    ("16 ga", "sheet-gauge"),
    ("cfh", "gas-supply"),
    ("C25", "gas-supply"),
    ("stickout", "wire-feed"),
    ("stick-out", "wire-feed"),
    ("birdnest", "wire-feed"),
    ("will this bottle finish", "gas-supply"),
    ("prehaet", "preheat"),
    ("how hot may it get", "preheat"),
    ("IPM", "wire-feed"),
    ("warp", "shrinkage"),
    ("how heavy is this pipe", "part-weight"),
    ("kj/in", "heat-input"),
    ("may I weld a truck frame", "metal-id"),
    ("leg or throat", "fillet-size"),
    ("t8/5", "cooling-time"),
    ("broken casting", "crack-repair"),
    ("how many passes", "joint-fill"),
    ("how much do I charge", "weld-cost"),
    ("labour rate", "weld-cost"),
    ("helmet lens", "shade"),
    ("welder's flash", "shade"),
    ("smoke in the shop", "fume"),
    ("galvanized fume", "fume"),
    ("welding inside a tank", "oxygen"),
    ("argon in a pit", "oxygen"),
    ("loud", "noise"),
    ("ear plugs", "noise"),
    ("lockout", "make-safe"),
    ("jack stand", "make-safe"),
    ("fire watch", "hot-work"),
    ("fuel drum", "hot-work"),
    ("undercut", "visual-check"),
    ("OCV", "shock"),
    ("what to wear", "clothing"),
    ("working alone", "lone-worker"),
)
FIRST_FEW = 3


@pytest.mark.parametrize(("typed", "name"), WANTED)
def test_is_found_by_the_welder_s_word(typed, name):
    assert name in finding.find(typed)[:FIRST_FEW]


@pytest.mark.parametrize("name", shelf.names())
def test_is_found_first_by_its_own_title(name):
    assert finding.find(walking.calculator(name).english["title"])[0] == name


@pytest.mark.parametrize(
    ("asked", "word", "same"),
    [
        ("preheat", "prehaet", True),
        ("guage", "gauge", True),
        ("stickuot", "stickout", True),
        ("spools", "spool", True),
        ("splol", "spool", True),
        ("spark", "spool", False),
        ("gas", "gap", False),  # too short to be forgiven
        ("cooling", "cool", False),
    ],
)
def test_one_slip_is_forgiven(asked, word, same):
    assert (finding._fit(asked, word) > 0) is same


def test_words_that_only_ask_find_nothing_and_nothing_found_shows_all():
    assert finding.find("what is it") == []
    for typed in ("", "what is it", "xyzzy"):
        page = Page(walking.reply("/", [("find", typed)]).body)
        links = [element.attributes.get("href", "") for element in page.elements if element.name == "a"]
        assert [link for link in links if link in shelf.names()] == list(shelf.names())
    assert "Nothing for \u201cxyzzy\u201d" in walking.reply("/", [("find", "xyzzy")]).body


def test_every_question_is_in_one_part_of_the_book():
    assert [name for _, names in home._parts() for name in names] == list(shelf.names())


def test_only_what_fits_is_listed_and_what_was_typed_stays():
    reply = walking.reply("/", [("find", "gage"), ("units", "si")]).body
    page = Page(reply)
    assert page.faults == []
    links = [element.attributes.get("href", "") for element in page.elements if element.name == "a"]
    assert "sheet-gauge?units=si" in links
    assert not any(link.startswith("preheat") for link in links)
    assert 'value="gage"' in reply
    assert "Found: 1" in reply


def test_the_list_alone_comes_while_typing():
    whole = walking.reply("/", [("find", "gage")]).body
    part = walking.reply("/", [("find", "gage")], partial=True).body
    assert part in whole
    assert "<h1" not in part


def test_marks_of_markup_stay_text():
    body = walking.reply("/", [("find", '"><script>x')]).body
    assert "<script>x" not in body
    assert Page(body).faults == []
