"""The caution library: each caution has a source, is said once and shown with it, reads easily and gives no leave."""

import json
import re
from collections.abc import Iterator

import pytest

from calculators.contract import STANDINGS
from tests import walking
from tests.html_reading import Page
from webapp import cautions, shelf
from webapp.bundle import ROOT
from webapp.words import en

pytestmark = pytest.mark.quick

MOST_WORDS = 20  # in a sentence
HARDEST = 8.5  # school year of one caution; a child of twelve is in the seventh
HARDEST_MEAN = 5.0
# What a hurried reader could take for leave. Looked for in every sentence of the book.
LEAVE = re.compile(
    r"\b(is|are|it's|now) safe\b|\bsafe (to|for|enough)\b|\bsafely\b|\byou may\b|\bokay\b|\bok to\b|\ballowed to\b"
    r"|\bno (danger|risk|hazard)\b|\bharmless\b|\bgo ahead\b|\byou are free\b|\ball clear\b|\bnothing to fear\b",
    re.IGNORECASE,
)


def every_sentence() -> Iterator[tuple[str, str]]:
    """Return (whole id, text) of every sentence in the book."""
    yield from en.WORDS.items()
    for name in shelf.names():
        for id, text in walking.calculator(name).english.items():
            yield f"{name}.{id}", text


def every_caution() -> list[tuple[str, str]]:
    """Return (whole id, text) of every caution."""
    return [(id, text) for id, text in every_sentence() if ".caution." in f".{id}." and not id.startswith("about.")]


def sentences(text: str) -> list[str]:
    return [each for each in re.split(r"(?<=[.!?])\s+", text) if each]


def words(text: str) -> list[str]:
    return re.findall(r"[\w'\u2019{}/-]*[A-Za-z0-9][\w'\u2019{}/-]*", text)


def syllables(word: str) -> int:
    letters = re.sub(r"[^a-z]", "", word.lower())
    return max(1, len(re.findall(r"[aeiouy]+", re.sub(r"e$", "", letters))))


def school_year(text: str) -> float:
    """Return the Flesch-Kincaid grade level; a colon or semicolon ends a thought as a full stop does."""
    parts = [each for each in re.split(r"[.!?:;]\s+", text) if each]
    said = re.findall(r"[A-Za-z']+", text)
    return 0.39 * len(said) / len(parts) + 11.8 * sum(map(syllables, said)) / len(said) - 15.59


CAUTIONS = [(id, text) for id, text in every_caution() if id != "home.caution"]


@pytest.mark.parametrize(("id", "text"), CAUTIONS, ids=[id for id, _ in CAUTIONS])
def test_caution_has_a_source(id, text):
    source = cautions.source_of(id)
    assert source is not None, f"say in webapp/cautions.py where it comes from: {text}"
    assert source.standing in STANDINGS


def test_library_names_nothing_that_is_not_said():
    known = {id for id, _ in CAUTIONS} | {id.partition(".caution")[0] + ".caution" for id, _ in CAUTIONS}
    named = [each for _, ids in cautions.LIBRARY for each in ids.split(" ")]
    assert sorted(set(named) - known) == []
    assert sorted({each for each in named if named.count(each) > 1}) == []


def test_every_caution_of_a_calculator_with_one_source_for_the_rest_still_has_some_left():
    """An entry for all of a calculator's others is dead once each of them has its own."""
    named = {each for _, ids in cautions.LIBRARY for each in ids.split(" ")}
    for general in (each for each in named if each.endswith(".caution")):
        assert any((id.startswith(general) and id not in named) or id == general for id, _ in CAUTIONS), general


def test_no_caution_is_written_twice():
    texts = [text for _, text in every_caution()]
    assert sorted({text for text in texts if texts.count(text) > 1}) == []


def test_cautions_kept_for_several_are_said_by_several():
    sources = [path.read_text("utf-8") for path in sorted((ROOT / "calculators").glob("*.py"))]
    shared = [id for id in en.WORDS if id.startswith("caution.")]
    assert {id for id in shared if sum(f'"{id}"' in source for source in sources) < 2} == set()


@pytest.mark.parametrize("name", shelf.names())
def test_the_source_of_a_caution_stands_in_its_answer_on_the_page_and_in_the_api(name):
    pairs, came = walking.answered(name)[0]
    assert came.answer is not None
    wanted = set()
    for caution in came.answer.cautions:
        source = cautions.source_of(caution.id)
        assert source is not None, caution.id
        wanted.add(source.title)
    cited = [each.text() for each in Page(walking.reply("/" + name, pairs, partial=True).body).all("cite")]
    assert wanted <= set(cited)
    assert len(cited) == len(set(cited)), "each source once"
    value = json.loads(walking.reply("/api/" + name, pairs).body)
    assert {each["title"] for each in value["caution_sources"]} == wanted


@pytest.mark.parametrize(("id", "text"), CAUTIONS, ids=[id for id, _ in CAUTIONS])
def test_caution_reads_easily(id, text):
    for sentence in sentences(text):
        assert len(words(sentence)) <= MOST_WORDS, sentence
    assert school_year(text) <= HARDEST, round(school_year(text), 1)


def test_cautions_read_easily_on_the_whole():
    years = [school_year(text) for _, text in CAUTIONS]
    assert sum(years) / len(years) < HARDEST_MEAN


def test_no_sentence_in_the_book_can_be_taken_for_leave():
    found = [f"{id}: {text}" for id, text in every_sentence() if not id.endswith("found-by") and LEAVE.search(text)]
    assert found == []


def test_the_measures_see_what_is_wrong():
    assert LEAVE.search("Below 80 V it is safe to touch.") and LEAVE.search("You may stay 5 minutes.")
    assert not LEAVE.search("This page gives no leave to weld.")
    assert school_year("Ascertain atmospheric composition anterior to ingress into confined enclosures.") > 15
    assert school_year("Keep your hands off. It is hot.") < 2
    assert len(words("Above 5 mph (8 km/h) the gas is gone: put up a screen.")) == 13
    assert sentences("Stop. Look: there it is.") == ["Stop.", "Look: there it is."]
