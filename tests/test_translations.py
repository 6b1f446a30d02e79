"""Every other language says all that English says, with the same numbers in it, and nothing more."""

import re

import pytest

from calculators import asking, made
from tests import walking
from tests.html_reading import Page
from webapp import catalogue, finding, pocket, shelf, shelf_entries, translations
from webapp.bundle import ROOT
from webapp.words import en

pytestmark = pytest.mark.quick

MODULES = (translations.SHARED, *made.CALCULATOR_MODULES)
# What a hurried reader could take for leave, as in tests/test_cautions.py.
LEAVE = re.compile(
    r"\b(es|son|est\u00e1n?|ya es) seguros?\b|\b(es|est\u00e1) segura\b"
    r"|\bsegur[oa]s? (de|para) (soldar|usar|entrar|tocar)"
    r"|\bpuede (quedarse|entrar|soldar (ya|con confianza))\b|\bno hay (peligro|riesgo)\b|\binofensiv[oa]s?\b"
    r"|\bcon confianza\b|\bsin (riesgo|cuidado)\b",
    re.IGNORECASE,
)


def english_of(module):
    return en.WORDS if module == translations.SHARED else walking.calculator(module.replace("_", "-")).english


@pytest.fixture(params=translations.LANGUAGES)
def language(request):
    return request.param


def sentences(language):
    """Return (where, sentence) of all but the words that are only searched for."""
    every = [(module, translations.words_of(language, module)) for module in MODULES]
    return [(f"{module}.{id}", text) for module, words in every for id, text in words.items() if id != "found-by"]


def numbers(text):
    return sorted(re.findall(r"\d+(?:[.,/]\d+)?", text))


def parameters(text):
    return set(re.findall(r"\{[a-z_]+\}", text))


@pytest.mark.parametrize("module", MODULES)
def test_no_sentence_is_missing_and_none_is_left_over(language, module):
    words, english = translations.words_of(language, module), english_of(module)
    assert [id for id in english if id not in words] == []
    assert [id for id in words if id not in english] == []


def test_there_is_no_file_that_nobody_reads(language):
    files = {path.stem for path in (ROOT / "webapp" / "words" / language).glob("*.py")}
    assert files == {*MODULES, "__init__"}


@pytest.mark.parametrize("module", MODULES)
def test_each_sentence_takes_what_its_english_takes(language, module):
    words = translations.words_of(language, module)
    for id, text in english_of(module).items():
        assert parameters(words[id]) == parameters(text), id
        assert words[id].count("#") == text.count("#"), id
        assert words[id].strip() == words[id] != "", id
        assert words[id].endswith(".") == text.endswith("."), id


@pytest.mark.parametrize("module", MODULES)
def test_numbers_in_sentences_are_the_same(language, module):
    """A sentence may count in words; what it says in digits it says in each language."""
    words = translations.words_of(language, module)
    for id, text in english_of(module).items():
        if not id.endswith("found-by"):
            assert numbers(words[id]) == numbers(text), id


def test_sentences_are_not_left_in_english(language):
    same = []
    for module in MODULES:
        words = translations.words_of(language, module)
        same += [(f"{module}.{id}", text) for id, text in english_of(module).items() if words[id] == text]
    # Signs, formulas and names of standards are the same in any language.
    spoken = [(id, re.findall(r"[a-z]{3,}", re.sub(r"\{[a-z_]+\}", "", text))) for id, text in same]
    assert [id for id, found in spoken if len(found) > 2 and not id.endswith("found-by")] == []


def test_no_sentence_could_be_taken_for_leave(language):
    assert len(sentences(language)) > 5000
    assert [each for each in sentences(language) if LEAVE.search(each[1])] == []


def test_planted_leave_is_found():
    assert LEAVE.search("El tanque es seguro para soldar.")
    assert LEAVE.search("Ya no hay peligro.")


@pytest.mark.parametrize("name", shelf.names())
def test_each_caution_shows_its_english_beside_it(language, name):
    asked = walking.calculator(name)
    shown = 0
    for state, pairs in walking.states(name):
        if not state.startswith("answer"):
            continue
        came = asking.ask(asked, pairs)
        assert came.answer is not None
        page = Page(walking.reply("/" + name, pairs, language).body)
        said = [element.text() for element in page.elements if element.has_class("english")]
        in_english = catalogue.Context("en", "us", "")
        wanted = [catalogue.sentence(each, in_english) for each in came.answer.cautions]
        assert [each for each in wanted if each not in said] == [], state
        shown += len(wanted)
    assert shown


def test_cautions_that_stand_alone_show_their_english_too(language):
    for path, id in (("/", "home.caution"), ("/about", "about.caution")):
        body = walking.reply(path, [], language).body
        assert f'<span lang="en" class="english">{en.WORDS[id]}' in body


def test_english_shows_no_second_english():
    assert 'class="english"' not in walking.reply("/", []).body


def test_titles_are_told_without_loading_every_calculator(language):
    for name, _, title, question, words in shelf_entries.entries(language):
        assert title == translations.words_of(language, name.replace("-", "_"))["title"]
        assert question == translations.words_of(language, name.replace("-", "_"))["question"]
        assert words == translations.words_of(language, name.replace("-", "_"))["found-by"]


def test_a_phone_that_lacks_the_language_answers_in_english(language, monkeypatch):
    monkeypatch.setattr(translations, "_loaded", {})
    monkeypatch.setattr(translations, "__import__", _not_there, raising=False)
    body = pocket.respond(pocket.Request("/heat-input", [], False), language, "").body
    assert '<html lang="en">' in body and "How much heat" in body


def _not_there(place, *_):
    raise ImportError(place)


# What is typed by whoever reads that language, in its words and in the trade's English ones: -> one of the first two.
TYPED = (
    ("calibre", "sheet-gauge"),
    ("CFH", "gas-flow"),
    ("stickout", "wire-feed"),
    ("por qu\u00e9 salpica", "fault-finder"),
    ("porque salpica tanto", "fault-finder"),
    ("qu\u00e9 polaridad", "process-choice"),
    ("me alcanza la botella", "gas-supply"),
    ("cu\u00e1nto alambre queda", "spool-life"),
    ("precalentar", "preheat"),
    ("qu\u00e9 tan caliente", "preheat"),
    ("humo", "fume"),
    ("sombra del lente", "shade"),
    ("me da toques", "shock"),
    ("cotizaci\u00f3n", "job-price"),
    ("grieta", "crack-repair"),
    ("velocidad de alambre", "wire-feed"),
    ("tama\u00f1o de filete", "fillet-size"),
    ("l\u00edmite de calor", "heat-input"),
    ("incendio", "hot-work"),
    ("nido de alambre", "wire-feed"),
    ("cuanta soldadura lleva", "joint-fill"),
)


@pytest.mark.parametrize(("typed", "name"), TYPED)
def test_questions_are_found_by_spanish_words(typed, name):
    assert name in finding.find(typed, "es")[:2]


def test_english_words_find_in_spanish_too():
    assert finding.find("overheats", "es") == finding.find("overheats")
    assert finding.find("salpica") == []
