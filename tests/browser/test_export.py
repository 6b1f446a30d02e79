"""The book as files on a plain host, under a path of its own: it arrives once, and needs no host after that."""

import pytest

from tests.browser import known as questions
from tests.browser.driving import NoSignal, Server, Watch, open_profile, visit, wait_until_carried
from tests.browser.known import KNOWN
from tests.browser.plain_files import UNDER
from webapp import pocket, shelf


@pytest.fixture
def host(tmp_path):
    with Server(tmp_path / "files", module="tests.browser.plain_files") as running:
        yield running


def test_every_question_and_page_opens_with_the_host_gone(playwright, tmp_path, host):
    book = f"{host.address}{UNDER}/"
    with open_profile(playwright, tmp_path / "profile") as context:
        page = visit(context, book)
        page.wait_for_selector("details.part")  # it went on by itself from the page of arrival
        wait_until_carried(page)
        host.kill()
    with open_profile(playwright, tmp_path / "profile") as context:
        watch = Watch(context)
        with NoSignal(host, watch):
            page = context.new_page()
            for name in shelf.names():
                page.goto(book + KNOWN[name].address(name))
                questions.expect(page, KNOWN[name])
            for name in pocket.PAGES:
                page.goto(book + name)
                assert page.locator("h1").count() == 1
            questions.expect(_typed(page, book), KNOWN["heat-input"])
        assert not watch.faults


def _typed(page, book):
    page.evaluate("localStorage.clear()")
    page.goto(book + "heat-input")
    questions.type_in(page, KNOWN["heat-input"])
    return page


def test_a_texted_link_works_on_a_phone_that_never_saw_the_book(phone, host):
    asked = KNOWN["heat-input"].address("heat-input")
    page = visit(phone, f"{host.address}{UNDER}/{asked}")
    page.wait_for_selector(".answered")  # the page of arrival has gone on to it
    questions.expect(page, KNOWN["heat-input"])
    assert page.url.startswith(f"{host.address}{UNDER}/heat-input?voltage=24")


def test_a_copy_without_a_server_says_so_and_keeps_its_log(phone, host):
    book = f"{host.address}{UNDER}/"
    page = visit(phone, book + "crew")
    page.get_by_text("This copy of the book has no server").wait_for()
    assert page.locator("[data-joining]").count() == 0
    page.goto(book + KNOWN["weld-entry"].address("weld-entry"))
    page.get_by_role("button", name="Keep in the log").tap()
    page.get_by_text("Kept on this phone.").wait_for()
    page.goto(book + "log")
    page.get_by_text("On this phone alone").wait_for()
    assert page.locator("[data-rows] li").count() == 1


def test_scripts_off_is_said_in_words(new_phone, host):
    page = visit(new_phone(java_script_enabled=False), f"{host.address}{UNDER}/heat-input")
    assert "no server: it cannot answer without them" in page.inner_text("noscript")
    assert page.locator("link[rel=stylesheet]").evaluate("each => each.sheet !== null")
