"""The About page names every source that any answer, caution or word of the glossary gives, with its standing."""

from tests import walking
from tests.html_reading import Page
from webapp import cautions, shelf


def _folds():
    page = Page(walking.reply("/about", []).body)
    assert page.faults == []
    return [each for each in page.elements if each.name == "details"]


def _cited(element):
    """Return {(title, standing)} of what is cited inside."""
    items = [each for each in element.children if getattr(each, "name", "") == "ul"][-1].children
    return {tuple(part.text() for part in item.children if not isinstance(part, str)) for item in items}


def test_each_question_has_a_fold_of_its_own_all_closed():
    heads = [each.text() for fold in _folds() for each in fold.children[0].children]
    assert heads == [
        *[walking.calculator(name).english["title"] for name in shelf.names()],
        "Take care",
        "Words of the trade",
    ]
    assert not [each for each in _folds() if "open" in each.attributes]


def test_what_an_answer_cites_is_there():
    everything = set().union(*[_cited(fold) for fold in _folds()])
    by_name = dict(zip(shelf.names(), _folds(), strict=False))
    for name in shelf.names():
        assert _cited(by_name[name]) == {(each.title, each.standing) for each in walking.calculator(name).sources}
        for _, came in walking.answered(name):
            assert came.answer is not None
            given = cautions.sources_of(came.answer.sources, came.answer.cautions)
            assert {(each.title, each.standing) for each in given} <= everything, name
    assert not {pair for pair in everything if len(pair) != 2}
