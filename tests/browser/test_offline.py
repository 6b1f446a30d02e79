"""With no signal: a phone that saw the book once answers every question and opens every page."""

import pytest

from tests.browser import known as questions
from tests.browser.driving import NoSignal, Server, Watch, open_profile, stop_workers, visit, wait_until_carried
from tests.browser.known import KNOWN
from webapp import pocket, shelf

PAGES = ("", *pocket.PAGES, *shelf.names())


@pytest.fixture(scope="module")
def truck(playwright, tmp_path_factory):
    """A phone that has the book, was switched off and on again, and whose server is dead: (context, server)."""
    profile = tmp_path_factory.mktemp("profile")
    with Server(tmp_path_factory.mktemp("data")) as server:
        with open_profile(playwright, profile) as context:
            wait_until_carried(visit(context, server.address))
            server.kill()
        with open_profile(playwright, profile) as context:
            watch = Watch(context)
            yield context, server, watch
    assert not watch.faults


@pytest.fixture
def no_signal(truck):
    _, server, watch = truck
    with NoSignal(server, watch):
        yield
    for page in truck[0].pages[1:]:
        page.evaluate("localStorage.clear()")  # the next form is empty
        page.close()


def test_every_calculator_has_a_known_question():
    assert set(KNOWN) >= set(shelf.names())


@pytest.mark.parametrize("name", shelf.names())
def test_a_typed_question_gets_the_right_number(truck, no_signal, name):
    page = visit(truck[0], truck[1].address + name)
    questions.type_in(page, KNOWN[name])
    questions.expect(page, KNOWN[name])


@pytest.mark.parametrize("name", shelf.names())
def test_a_texted_link_opens_with_the_right_number(truck, no_signal, name):
    page = visit(truck[0], truck[1].address + KNOWN[name].address(name))
    questions.expect(page, KNOWN[name])


@pytest.mark.parametrize("path", PAGES)
def test_every_page_opens_and_says_that_it_works_offline(truck, no_signal, path):
    page = visit(truck[0], truck[1].address + path)
    assert page.locator("h1").count() == 1
    page.wait_for_selector("[data-phone-state=ready]")
    assert page.inner_text("[data-phone-state]").endswith("Ready to work offline")
    assert page.evaluate("getComputedStyle(document.querySelector('.primary, .questions a, code')).fontWeight")
    assert page.evaluate("document.styleSheets.length") >= 1


def test_an_address_that_is_not_in_the_book_says_so(truck, no_signal):
    page = visit(truck[0], truck[1].address + "no/such/page")
    assert page.inner_text("h1") == "That page is not in the book"
    page.get_by_role("link", name="Questions").first.tap()
    page.wait_for_selector("details.part")


def test_a_question_is_found_by_the_welder_s_word_while_typing(truck, no_signal):
    page = visit(truck[0], truck[1].address)
    page.locator("#find").press_sequentially("stickout", delay=15)
    page.get_by_role("status").get_by_text("Found: 1", exact=True).wait_for()
    found = page.locator("#questions > .questions strong")
    assert found.all_inner_texts() == ["Wire feed and current"]
    found.tap()
    page.wait_for_selector("form[data-calculator=wire-feed]")


def test_a_stopped_worker_starts_again_and_answers(truck, no_signal):
    page = visit(truck[0], truck[1].address + "heat-input")
    stop_workers(page)
    questions.type_in(page, KNOWN["heat-input"])
    questions.expect(page, KNOWN["heat-input"])
    stop_workers(page)
    page.goto(truck[1].address + KNOWN["heat-input"].address("heat-input") + "&weld_length=6+in")
    questions.expect(page, KNOWN["heat-input"])


def test_the_guard_trips_when_a_server_could_have_answered(phone, server):
    """A phone with a signal passes every test above but for the guard: here is the guard seen to trip."""
    page = visit(phone, server.address)
    with pytest.raises(AssertionError, match="the server can be reached"):
        with NoSignal(server, Watch(phone)):
            page.goto(server.address + "about")


def test_the_guard_trips_when_a_server_did_answer(phone, tmp_path):
    watch = Watch(phone)
    with Server(tmp_path) as server:
        page = visit(phone, server.address)
        server.kill()
        guard = NoSignal(server, watch)
        with pytest.raises(AssertionError, match="the server came back"):
            with guard:
                server.start()
                page.goto(server.address + "about")
        server.kill()
        with pytest.raises(AssertionError, match="answered by a server"):
            guard.__exit__(None)
