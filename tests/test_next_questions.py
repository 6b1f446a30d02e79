"""Every next question an answer offers opens, as the page links it, with an answer or a wait: never with an error."""

import functools
import html
import random
import re
import urllib.parse

import pytest

from calculators import asking
from tests import walking
from tests.browser.known import KNOWN
from webapp import shelf

# Questions at random besides the ones every walk takes: what is carried has to be in range, and ranges are wide.
MORE = 100


def links(page: str) -> list[str]:
    """Return the addresses under the next questions of a page."""
    found = re.search(r'<nav class="next".*?</nav>', page, re.DOTALL)
    return [html.unescape(each) for each in re.findall(r'href="([^"]*)"', found.group(0))] if found else []


def opened(address: str) -> tuple[walking.Pairs, asking.Reply]:
    """Return what an address carries and what the calculator it leads to replies."""
    name, _, asked = address.partition("?")
    pairs = [(box, text) for box, text in urllib.parse.parse_qsl(asked, strict_parsing=bool(asked)) if box != "units"]
    return pairs, asking.ask(walking.calculator(name), pairs)


@functools.cache
def onward(name: str) -> tuple[str, ...]:
    """Return the addresses of the next questions of many answers, once each."""
    asked = walking.calculator(name)
    questions = [pairs for pairs, _ in walking.answered(name)]
    questions += [walking.a_question(asked, random.Random(f"{name} {seed}")) for seed in range(MORE)]
    questions.append(urllib.parse.parse_qsl(KNOWN[name].address(name).partition("?")[2]))
    found = []
    for number, pairs in enumerate(questions):
        system = ("us", "si")[number % 2]
        found += links(walking.reply("/" + name, pairs, system=system, partial=True).body)
    return tuple(sorted(set(found)))


@pytest.mark.parametrize("name", shelf.names())
def test_every_next_question_opens_with_an_answer_or_a_wait(name):
    for address in onward(name):
        _, came = opened(address)
        assert came.state != "problem", (address, [(box, each.id) for box, each in came.errors])


@pytest.mark.parametrize("name", shelf.names())
def test_what_a_next_question_carries_is_taken(name):
    for address in onward(name):
        carried, came = opened(address)
        assert {box for box, _ in carried} <= set(came.given.values), address


@pytest.mark.parametrize("name", shelf.names())
def test_every_question_leads_on(name):
    assert onward(name)


def test_an_address_that_opens_with_an_error_is_found():
    carried, came = opened("cooling-time?joint=butt-passes&thickness=2+mm&units=si")
    assert came.state == "problem" and len(carried) == 2
    page = '<nav class="next" aria-label="x"><a href="a?b=1&amp;c=2">d</a></nav><a href="e">f</a>'
    assert links(page) == ["a?b=1&c=2"]


def test_preheat_is_not_given_the_thinner_part_for_the_thickest():
    """A fillet's size goes by the thinner part, preheat by the thickest: carried over, it would ask for too little."""
    addresses = [each for each in onward("fillet-size") if each.startswith("preheat")]
    assert addresses and not any("thickness" in address for address in addresses)


def test_preheat_and_cooling_time_hand_each_other_their_numbers():
    # AWS D1.1:2015, table 3.3, category B, over 1 1/2 to 2 1/2 in: 150 degF (standard).
    asked = [("family", "structural"), ("grade", "a36-group"), ("thickness", "2 in"), ("heat_input", "1.5 kJ/mm")]
    (address,) = [
        each for each in links(walking.reply("/preheat", asked, partial=True).body) if each.startswith("cooling-time")
    ]
    carried, came = opened(address)
    assert came.state == "answer"
    assert dict(carried) == {"thickness": "2 in", "heat_input": "1.5 kJ/mm", "preheat_temperature": "150 degF"}
    (back,) = [
        each for each in links(walking.reply("/cooling-time", carried, partial=True).body) if each.startswith("preheat")
    ]
    assert dict(opened(back)[0]) == {"family": "structural", "thickness": "2 in", "heat_input": "1.5 kJ/mm"}
