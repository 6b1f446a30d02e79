"""The glossary: every term is said, linked both ways, and its word stands where it is said to be used."""

import pytest

from tests import walking
from tests.html_reading import Page
from webapp import glossary, shelf
from webapp.words import en

pytestmark = pytest.mark.quick

TOO_COMMON = ("wire", "weld", "metal", "arc", "to", "work", "speed", "voltage", "current", "transfer", "factor")


def test_there_are_enough_terms_each_once_and_each_short():
    keys = [key for key, _, _ in glossary.TERMS]
    assert len(keys) == len(set(keys)) >= 45
    for key in keys:
        assert en.WORDS["meaning." + key].count(". ") <= 2, key
        assert len(en.WORDS["meaning." + key]) <= 130, key


@pytest.mark.parametrize(("key", "used", "_source"), glossary.TERMS)
def test_each_term_links_to_its_questions_and_they_to_it(key, used, _source):
    page = Page(walking.reply("/glossary", []).body)
    assert page.faults == []
    part = next(each for each in page.elements if each.attributes.get("id") == key)
    links = [
        each.attributes["href"]
        for each in page.elements
        if each.name == "a" and each.parent and each.parent.parent is part
    ]
    assert links == used.split()
    for name in used.split():
        assert f'href="glossary#{key}"' in walking.reply("/" + name, []).body


@pytest.mark.parametrize(("key", "name"), [(key, name) for key, used, _ in glossary.TERMS for name in used.split()])
def test_a_question_uses_the_words_it_is_said_to_use(key, name):
    said = (
        " ".join([*walking.calculator(name).english.values(), walking.reply("/" + name, []).body])
        .lower()
        .replace("-", " ")
    )
    said = said.split("words on this page")[0] if "words on this page" in said else said
    words = (
        en.WORDS["term." + key].lower().replace(",", " ").replace("(", " ").replace("-", " ").replace(")", " ").split()
    )
    telling = [word for word in words if word not in TOO_COMMON] or words
    assert any(word[:6] in said for word in telling), (key, name)


def test_a_question_without_such_words_has_no_fold():
    without = [name for name in shelf.names() if not any(name in used.split() for _, used, _ in glossary.TERMS)]
    assert without
    assert "glossary#" not in walking.reply("/" + without[0], []).body


def test_terms_stand_in_the_order_of_the_alphabet():
    heads = [each.text() for each in Page(walking.reply("/glossary", []).body).elements if each.name == "h2"]
    assert heads == sorted(heads)
