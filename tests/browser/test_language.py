"""Spanish on the phone: chosen by a tap or by the phone's own language, carried apart, there with no signal."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Page, expect

from tests.browser import test_demo
from tests.browser.driving import NoSignal, Server, Watch, visit, wait_until, wait_until_carried

ASKED = "heat-input?voltage=24+V&current=180+A&travel_speed=12+in/min"
IN_SPANISH = "html[lang=es]"


def choose(page: Page, language: str) -> None:
    page.locator(f"a[data-language={language}]").tap()


@pytest.fixture
def server(tmp_path: Path) -> Iterator[Server]:
    """One of this test's own, which is taken away from it."""
    with Server(tmp_path) as running:
        yield running


def lose_signal(page: Page, server: Server) -> NoSignal:
    watch = Watch(page.context)
    server.kill()
    return NoSignal(server, watch)


@pytest.fixture
def page(new_phone, server: Server) -> Page:
    opened = visit(new_phone(), server.address)
    wait_until_carried(opened)
    return opened


def test_a_tap_brings_spanish_and_it_stays_without_a_signal(page: Page, server: Server):
    page.reload()
    choose(page, "es")
    page.wait_for_selector(IN_SPANISH)
    expect(page.locator("a[data-language=es]")).to_have_attribute("aria-current", "true")
    with lose_signal(page, server):
        page.goto(server.address + ASKED)
        page.wait_for_selector(IN_SPANISH)
        expect(page.locator("h1")).to_have_text("Aporte térmico")
        expect(page.locator(".headline .number")).to_contain_text("17.3")
        for caution in page.locator(".cautions li").all():
            expect(caution.locator("[lang=en]")).not_to_be_empty()
        page.locator("#voltage").fill("27")  # the part of a page that is asked for while typing
        expect(page.locator(".headline .number")).to_contain_text("19.4")
        expect(page.locator(".headline .headline-label")).to_have_text("Aporte térmico, con eficiencia")
        choose(page, "en")
        page.wait_for_selector("html[lang=en]")
        expect(page.locator("h1")).to_have_text("Heat input")
        assert page.input_value("#voltage") == "27"


def test_without_a_signal_a_language_that_is_not_here_says_so_and_changes_nothing(page: Page, server: Server):
    page.reload()
    with lose_signal(page, server):
        choose(page, "es")
        expect(page.locator("[data-language-said]")).to_contain_text("It needs a signal once")
        page.reload()
        assert page.locator("html").get_attribute("lang") == "en"


def test_a_phone_set_to_spanish_is_answered_in_spanish_from_the_first_page_on(new_phone, server: Server):
    page = new_phone(locale="es-MX").new_page()
    page.goto(server.address)
    assert page.locator("html").get_attribute("lang") == "es"
    wait_until_carried(page)
    with lose_signal(page, server):
        page.goto(server.address + "shade")
        assert page.locator("html").get_attribute("lang") == "es"


def test_what_was_chosen_before_there_was_a_worker_is_what_the_worker_answers_in(new_phone, server: Server):
    page = new_phone().new_page()
    page.goto(server.address + "?lang=es")
    assert page.locator("html").get_attribute("lang") == "es"
    wait_until_carried(page)
    wait_until(page, lambda: page.evaluate("() => caches.has('puddlebook-choices')"))
    with lose_signal(page, server):
        page.goto(server.address + "shade")
        assert page.locator("html").get_attribute("lang") == "es"


def test_a_job_kept_in_english_is_not_told_as_changed_in_spanish(new_phone, server: Server):
    page = new_phone(service_workers="block").new_page()
    rows = test_demo.load(page, server.address)["rows"]
    page.context.add_cookies([{"name": "language", "value": "es", "url": server.address}])
    for job in [row["id"] for _, row in rows if row["kind"] == "job"]:
        page.goto("about:blank")
        page.goto(f"{server.address}work#{job}")
        page.locator("[data-cards]:not([data-worked-out=no]) [data-card]").first.wait_for()
        assert page.locator("html").get_attribute("lang") == "es"
        expect(page.locator("[data-different]")).to_be_hidden()
