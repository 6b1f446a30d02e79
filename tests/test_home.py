"""The first page: every question is on it once, and is found by the words that welders use for it."""

import json
import urllib.parse

import pytest

from tests import walking
from tests.html_reading import Page
from tests.mid_job import GIVEN, MOST_TAPS, TAPS_TO_ASK
from webapp import finding, home, shelf
from webapp.asked_often import OFTEN
from webapp.words import en

# What is typed, and the question that must be the first or the second found.
WANTED = (
    ("gauge", "sheet-gauge"),
    ("16 ga", "sheet-gauge"),
    ("cfh", "gas-flow"),
    ("C25", "gas-blend"),
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
    ("why is it spitting", "fault-finder"),
    ("which polarity", "process-choice"),
    ("how long will this tank last", "gas-supply"),
    ("my weld is full of holes", "fault-finder"),
    ("wire keeps sticking to the tip", "fault-finder"),
    ("wire won't feed", "fault-finder"),
    ("cold lap", "fault-finder"),
    ("weld is cracking", "fault-finder"),
    ("it cracked again", "crack-repair"),
    ("blowing through thin sheet", "fault-finder"),
    ("too much spatter", "fault-finder"),
    ("arc keeps popping", "fault-finder"),
    ("tacks keep breaking", "fault-finder"),
    ("black soot on aluminum", "fault-finder"),
    ("gun angle", "fault-finder"),
    ("inductance", "fault-finder"),
    ("how many volts", "settings"),
    ("what do I set for 1/4 plate", "settings"),
    ("how wide a weave", "settings"),
    ("wire size", "settings"),
    ("what wire for stainless", "filler-match"),
    ("weld stainless to mild steel", "filler-match"),
    ("can I weld cast iron", "metal-id"),
    ("is this aluminum or steel", "metal-id"),
    ("can I weld a fuel tank", "hot-work"),
    ("oil drum", "hot-work"),
    ("sparks in the grass", "hot-work"),
    ("do I need to preheat", "preheat"),
    ("how hot between passes", "preheat"),
    ("mill cert", "carbon-equivalent"),
    ("slow cooling", "cooling-time"),
    ("how big a fillet", "fillet-size"),
    ("how much wire is left on the spool", "spool-life"),
    ("machine keeps cutting out", "duty-cycle"),
    ("overheated", "duty-cycle"),
    ("breaker trips", "generator-size"),
    ("extension cord", "generator-size"),
    ("long leads", "lead-drop"),
    ("ground clamp gets hot", "lead-drop"),
    ("contact tip", "wire-feed"),
    ("too windy", "gas-flow"),
    ("gas is leaking", "leak-test"),
    ("flowmeter for argon on CO2", "flow-meter"),
    ("what does ER70S-6 mean", "filler-name"),
    ("what gas for aluminum", "gas-blend"),
    ("75/25", "gas-blend"),
    ("plate is bending", "shrinkage"),
    ("how fast do I travel", "travel-speed"),
    ("pulse or spray", "transfer-mode"),
    ("vertical up", "transfer-mode"),
    ("knob marks", "machine-trim"),
    ("what did I run last time", "weld-entry"),
    ("what is in the truck", "stock"),
    ("how dark a lens", "shade"),
    ("is this undercut too deep", "visual-check"),
    ("hard facing", "crack-repair"),
    ("air bag", "make-safe"),
    ("disconnect the battery", "make-safe"),
    ("it zaps me", "shock"),
    ("amps for 1/4", "settings"),
    ("amps for 1/4", "wire-feed"),
    ("flux core", "settings"),
    ("welding in the rain", "shock"),
)
FIRST_FEW = 2


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
        ("cooling", "cool", False),  # nor is so short a stem
        ("cracking", "crack", True),
        ("crackpotted", "crack", False),
    ],
)
def test_one_slip_is_forgiven(asked, word, same):
    assert (finding._fit(asked, word) > 0) is same


def test_accents_and_capitals_make_no_difference():
    """A second language has them, a glove leaves them out, and a phone's keyboard puts them in."""
    assert finding.plain("p\u00f3lvora P\u00d3LVORA polvora") == ["polvora"] * 3
    assert finding.plain("\u00c1\u00e1\u00c9\u00e9\u00cd\u00ed\u00d3\u00f3\u00da\u00fa\u00dc\u00fc\u00d1\u00f1") == [
        "aaeeiioouuuunn"
    ]
    assert finding.find("g\u00e1uge") == finding.find("gauge")


def test_a_slash_joins_digits_alone():
    assert finding.plain("75/25 t8/5 volts/amps 1/ /2") == ["7525", "t85", "volts", "amps", "1", "2"]


def test_a_word_that_few_have_says_more_than_one_that_most_have():
    assert len(finding.find("wire")) > 5
    assert finding.find("wire birdnest") == finding.find("birdnest")


def test_words_that_only_ask_find_nothing_and_nothing_found_shows_all():
    assert finding.find("what is it") == []
    for typed in ("", "what is it", "xyzzy"):
        page = Page(walking.reply("/", [("find", typed)]).body)
        strong = [element.parent for element in page.elements if element.name == "strong" and element.inside("ul")]
        assert [link.attributes["href"] for link in strong if link is not None] == list(shelf.names())
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


@pytest.mark.parametrize(("id", "name", "pairs", "typed"), OFTEN)
def test_what_is_asked_most_is_three_taps_and_its_numbers_from_the_first_page(id, name, pairs, typed):
    picked, numbers, answer = GIVEN[id]
    assert TAPS_TO_ASK + len(picked) <= MOST_TAPS
    page = Page(walking.reply("/", []).body)
    links = {each.text(): each.attributes["href"] for each in page.elements if each.name == "a" and each.inside("ul")}
    path, _, asked = links[en.WORDS[id]].partition("?")
    assert (path, urllib.parse.parse_qsl(asked)) == (name, list(pairs))
    given = [*pairs, *picked, *numbers]
    assert next(iter(json.loads(walking.reply("/api/" + name, given).body)["results"])) == answer
    assert 'class="headline answered"' in walking.reply("/" + name, given).body
    # And nothing is given that is not needed.
    for left_out in (*picked, *numbers):
        fewer = json.loads(walking.reply("/api/" + name, [each for each in given if each != left_out]).body)
        assert next(iter(fewer.get("results", {})), "") != answer, left_out
    assert name in finding.find(typed)[:FIRST_FEW]


def test_twelve_are_asked_most_and_none_twice_and_metric_readers_get_their_units():
    assert len(OFTEN) == len({(name, pairs) for _, name, pairs, _ in OFTEN}) == 12
    metric = walking.reply("/", [], system="si").body
    assert 'href="fault-finder?fault=spatter&amp;units=si"' in metric
    assert 'href="heat-input?units=si">' + en.WORDS["often.heat-input"] in metric


def test_room_for_what_is_pinned_is_there_and_empty():
    body = walking.reply("/", []).body
    for part in ("data-at-hand", "data-pinned", "data-used", 'id="find"', 'id="questions"', 'id="recent"'):
        assert part in body
        body = body[body.index(part) :]  # in this order


def test_the_list_alone_comes_while_typing():
    whole = walking.reply("/", [("find", "gage")]).body
    part = walking.reply("/", [("find", "gage")], partial=True).body
    assert part in whole
    assert "<h1" not in part


def test_marks_of_markup_stay_text():
    body = walking.reply("/", [("find", '"><script>x')]).body
    assert "<script>x" not in body
    assert Page(body).faults == []
