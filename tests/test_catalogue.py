"""Every sentence a reader can see goes through the catalogue; no sentence is missing, none is left over."""

import json
import re
from collections.abc import Iterator

import pytest

from calculators import asking, units
from calculators.contract import (
    Answer,
    Measured,
    Message,
    Plain,
)
from calculators.facts.units import UNITS
from tests import walking
from tests.html_reading import Element, Page
from webapp import about, catalogue, pocket, shelf
from webapp.catalogue import PSEUDO, PSEUDO_CLOSE, PSEUDO_OPEN

pytestmark = pytest.mark.usefixtures("specimen")
quick = pytest.mark.quick

NAMES = (*shelf.names(), "specimen")

# ---------------------------------------------------------------- what may stand outside a sentence

SIGNS = {units.sign(name) for name, _ in UNITS if name}
NUMBER = re.compile("\u2212?[0-9\u202f./:-]+(e-?[0-9]+)?")
# In <code> stands the build, in <cite> a title as published.
AS_PUBLISHED = ("cite", "code")
# Attributes that a reader sees or hears.
SEEN = ("aria-label", "alt", "title", "placeholder", "content", "summary", "label")
# Attributes that only scripts read. Any other data- attribute is taken for a sentence.
FOR_SCRIPTS = {
    *("data-calculator", "data-clear", "data-clock", "data-copy", "data-field", "data-fill", "data-forget"),
    *(
        "data-keep",
        "data-keeping",
        "data-machine",
        "data-machine-delete",
        "data-machine-none",
        "data-machine-rename",
        "data-machine-undo",
    ),
    *("data-language", "data-languages", "data-language-said"),
    *("data-machines", "data-undo-keep", "data-kept-box", "data-kept-with"),
    *("data-by", "data-correct", "data-crew", "data-csv", "data-delete", "data-empty", "data-entry", "data-exchange"),
    *("data-export", "data-import", "data-import-said", "data-joining", "data-label", "data-labels", "data-leave"),
    *("data-log", "data-more", "data-narrow-value", "data-no-log", "data-open", "data-pattern", "data-persist"),
    *("data-photos", "data-record", "data-record-said", "data-record-save", "data-repeat", "data-said", "data-send"),
    *("data-record-again", "data-undo-change"),
    *("data-take", "data-undo-delete", "data-value", "data-versions"),
    *("data-remember", "data-undo-fixed", "data-steps", "data-quantity", "data-hand-on"),
    *("data-needs-script", "data-no-recent", "data-number", "data-phone-state", "data-recent", "data-row", "data-rows"),
    *("data-pin", "data-pinned", "data-used"),
    *("data-theme", "data-theme-choice", "data-timer", "data-undo", "data-unit", "data-update", "data-update-now"),
    *("data-when", "data-when-is", "data-card", "data-line", "data-takes"),
    *("data-again", "data-count", "data-deleted", "data-demo", "data-demo-form", "data-demo-load", "data-demo-remove"),
    *(
        "data-demo-said",
        "data-details",
        "data-item",
        "data-kg",
        "data-lasts",
        "data-l",
        "data-stock",
        "data-stock-choice",
    ),
    *("data-truck", "data-used", "data-unknown"),
    *("data-back", "data-clear-signature", "data-kind", "data-of-job", "data-pad", "data-paper", "data-print"),
    *("data-share", "data-sheet", "data-sign", "data-signed-said", "data-signing"),
    *("data-back", "data-begin", "data-checklist", "data-copy-draft", "data-countdown", "data-draft", "data-end"),
    *("data-left", "data-over", "data-retick", "data-seconds", "data-tick", "data-untick"),
    *("data-card", "data-line", "data-takes"),
    *("data-record-changed", "data-record-open", "data-results"),
    *("data-again", "data-cards", "data-change", "data-close", "data-decides", "data-details", "data-different"),
    *("data-entries", "data-entry-pattern", "data-find", "data-from-job", "data-history", "data-jobs", "data-moved"),
    *("data-no-entries", "data-none-found", "data-on-paper", "data-passes", "data-price", "data-price-cards"),
    *(
        "data-reopen",
        "data-shown",
        "data-status",
        "data-sum",
        "data-take-pattern",
        "data-title",
        "data-two",
        "data-work",
    ),
}


def outside_marks(text: str) -> str:
    """Return what of a text stands outside the pseudo-language's marks."""
    depth = 0
    out = ""
    for character in text:
        if character == PSEUDO_OPEN:
            depth += 1
        elif character == PSEUDO_CLOSE:
            depth -= 1
        elif depth == 0:
            out += character
    assert depth == 0, text
    return out


def is_free(text: str) -> bool:
    """Return whether nothing is said outside the marks but numbers, unit signs, and what the reader typed."""
    ours = text.replace(walking.TYPED_TEXT, "").replace(catalogue.NO_BREAK_SPACE, " ")
    words = outside_marks(ours).split()
    return all(NUMBER.fullmatch(word) or word in SIGNS or word in (".", ":", "\u2013", ",") for word in words)


def plain_sentences(html: str) -> list[str]:
    """Return everything to be seen or heard on a page that did not come through the catalogue."""
    page = Page(html)
    found = []
    for element, text in page.texts:
        if not is_free(text) and not any(element.inside(name) for name in AS_PUBLISHED):
            found.append(f"<{element.name}> {text.strip()}")
    for element in page.elements:
        for key in sorted(element.attributes):
            value = element.attributes[key]
            if _is_sentence(element, key) and not is_free(value):
                found.append(f"<{element.name} {key}> {value}")
    return found


def _is_sentence(element: Element, key: str) -> bool:
    if element.name == "meta" and element.attributes.get("name") != "description":
        return False
    return key in SEEN or (key.startswith("data-") and key not in FOR_SCRIPTS)


def _pages(name: str) -> Iterator[tuple[str, str]]:
    """Return (state, page) of every state, the unit systems by turns; the answer region is part of its page."""
    for number, (state, pairs) in enumerate(walking.states(name)):
        yield state, walking.reply("/" + name, pairs, PSEUDO, ("us", "si")[number % 2]).body


@pytest.mark.parametrize("name", NAMES)
def test_calculator_says_nothing_outside_the_catalogue(name):
    for state, html in _pages(name):
        assert plain_sentences(html) == [], state


@pytest.mark.parametrize("name", NAMES)
def test_walk_reaches_every_state(name):
    states = [state for state, _ in walking.states(name)]
    for wanted in ("blank", "waiting", "problem", "answer"):
        assert any(state.startswith(wanted) for state in states), wanted
    asked = walking.calculator(name)
    for relation in asked.relations:
        for field in relation.fields if relation.required and relation.takes_part is None else ():
            assert f"solved for {field}" in states, "no question made from the declaration is solved for it"


@quick
@pytest.mark.parametrize("path", ("", *pocket.PAGES, "no-such-page", "no/such/page"))
def test_page_says_nothing_outside_the_catalogue(path):
    html = walking.reply("/" + path, [], PSEUDO).body
    found = [sentence for sentence in plain_sentences(html) if sentence not in _proper_names()]
    assert found == []


def _proper_names() -> list[str]:
    return [f"<li> {name}: {licence}" for name, licence in about.PARTS]


@pytest.mark.parametrize("name", NAMES)
def test_api_says_nothing_outside_the_catalogue(name):
    for state, pairs in walking.states(name):
        value = json.loads(walking.reply("/api/" + name, [*pairs, ("lang", PSEUDO)]).body)
        if "errors" in value:
            sentences = list(value["errors"].values())
        else:
            sentences = value["notes"] + value["cautions"] + value["working"]
        assert sentences or "errors" not in value, state
        assert [each for each in sentences if not is_free(each)] == [], state


@quick
def test_list_of_calculators_says_nothing_outside_the_catalogue():
    listing = json.loads(walking.reply("/api", [("lang", PSEUDO)]).body)
    said = []
    for each in listing["calculators"]:
        said += [each["title"], each["question"]]
        for field in each["fields"]:
            said += [field["label"]] + [inner["label"] for inner in field.get("fields", [])]
    assert said
    assert [each for each in said if not is_free(each)] == []


PLANTED = (
    ("<h1>", "<h1>Hello there"),
    ("</label>", " now</label>"),
    ("</option>", " please</option>"),
    ('<section id="answer" aria-label="', '<section id="answer" aria-label="Answer '),
    ('<form id="ask"', '<form id="ask" title="Ask away"'),
    ("<main", '<img alt="A weld" src="x"><main'),
    ("<main", '<p data-said-later="Well done">\u27e6x\u27e7</p><main'),
    ('<meta name="description" content="', '<meta name="description" content="Sums. '),
    ("<legend>", "<legend>Pick "),
    ("</button>", " it</button>"),
    ('class="unit">', 'class="unit">volts '),
)


@quick
@pytest.mark.parametrize(("place", "planted"), PLANTED)
def test_planted_plain_sentence_is_found(place, planted):
    html = walking.reply("/specimen", walking.states("specimen")[-1][1], PSEUDO).body
    assert plain_sentences(html) == []
    assert place in html
    assert len(plain_sentences(html.replace(place, planted, 1))) == 1


@quick
def test_english_page_is_full_of_plain_sentences():
    assert len(plain_sentences(walking.reply("/", []).body)) > 5


# ---------------------------------------------------------------- what goes into a sentence

# Text that a sentence may take as it is: what the reader typed, names of units and options, readings offered,
# symbols of what is in a metal.
TYPED_OR_NAMED = {
    "typed",
    "where",
    "unit",
    "units",
    "options",
    "first",
    "second",
    "remark",
    "mark",
    "before",
    "after",
    "example",
    "analysis",
}


def _pieces(message: Message) -> Iterator[tuple[Message, str, object]]:
    for key, value in message.parameters:
        yield message, key, value
        if isinstance(value, Message):
            yield from _pieces(value)


def _said_by(answer: Answer) -> Iterator[Message]:
    yield from (*answer.working, *answer.notes, *answer.cautions)
    yield from (each.message for each in answer.next_questions)
    if answer.verdict is not None:
        yield answer.verdict.message
    for result in answer.results:
        for key in sorted(vars(result)):
            yield from _messages(vars(result)[key])


def _messages(value: object) -> Iterator[Message]:
    if isinstance(value, Message):
        yield value
    elif isinstance(value, (tuple, list)):
        for each in value:
            yield from _messages(each)
    elif hasattr(value, "__dict__") and not isinstance(value, (Measured, Plain)):
        for each in vars(value).values():
            yield from _messages(each)


@pytest.mark.parametrize("name", NAMES)
def test_sentences_take_numbers_from_numerals_and_words_from_the_catalogue(name):
    """A float would be shown in the way of its Python, a plain string in English."""
    for state, pairs in walking.states(name):
        came = asking.ask(walking.calculator(name), pairs)
        said = [message for _, message in came.errors]
        said += [each for each in (came.waiting, came.agreement, came.sensitivity) if each is not None]
        said += list(_said_by(came.answer)) if came.answer is not None else []
        for message in said:
            for inner, key, value in _pieces(message):
                assert isinstance(value, (Message, Measured, Plain, int, str)), (state, inner.id, key, value)
                if isinstance(value, str) and key not in TYPED_OR_NAMED:
                    assert is_free(value), (state, inner.id, key, value)
