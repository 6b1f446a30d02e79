"""Pages of records opened from a link into the page that is there: the same as loaded anew, and the way back."""

from pathlib import Path

import pytest
from playwright.sync_api import BrowserContext, Page, expect

from tests.browser import kept
from tests.browser.driving import Server, visit, wait_until_carried
from tests.browser.test_jobs import CALL, bring, follow, titles
from tests.browser.test_log import is_same_document

WORKED_OUT = "[data-cards][data-worked-out=yes]"
JOB = follow(None, {**CALL, "status": "open"})
CLOSED = follow(None, {**CALL, "title": "Gate hinge", "status": "closed"}, "2026-04-01T08:00:00.000Z")
WELD = kept.record("weld-entry", {"joint": "ear", "weld_pass": "root", "job_id": JOB["id"], "used_wire": "0.2 kg"})


@pytest.fixture
def page(phone: BrowserContext, server: Server, tmp_path: Path) -> Page:
    """The first page of a phone with two jobs and a weld, its records' script at hand, its document marked."""
    page = visit(phone, server.address)
    wait_until_carried(page)
    bring(page, server.address, tmp_path, JOB, CLOSED, WELD)
    page.reload()
    page.locator("[data-rows] li").wait_for()  # from now on the phone knows that it has a log
    page.goto(server.address)
    page.locator("script[data-records=early]").wait_for(state="attached")
    page.evaluate("document.documentElement.dataset.same = 'yes'")
    return page


def open_list(page: Page) -> None:
    page.get_by_role("link", name="Jobs", exact=True).tap()
    assert titles(page, 2) == ["Loader bucket ear", "Gate hinge"]


def open_first_job(page: Page) -> None:
    page.locator("[data-rows] li", has_text="Loader bucket ear").get_by_role("link", name="Open").tap()
    page.locator(WORKED_OUT).wait_for()
    page.locator("[data-entries] li").wait_for()


def shown(page: Page) -> tuple[str, str, str]:
    """Return the address, the title and the whole main part but for what a focus leaves."""
    return page.url, page.title(), page.locator("main").inner_html().replace(' tabindex="-1"', "")


def test_each_page_opened_softly_is_the_page_loaded_anew_and_back_leads_through_them(page: Page, server: Server):
    page.locator("#find").fill("gauge")
    open_list(page)
    assert page.evaluate("document.activeElement.localName") == "h1"
    softly = [shown(page)]
    open_first_job(page)
    assert page.evaluate("document.activeElement.innerText") == "Loader bucket ear"
    assert page.evaluate("scrollY") == 0
    softly.append(shown(page))
    page.locator("[data-entries]").get_by_role("link", name="Open").tap()
    page.locator("[data-versions] article").wait_for()
    softly.append(shown(page))
    page.get_by_role("link", name="Jobs", exact=True).tap()
    titles(page, 2)
    page.locator("main a[href=truck]").tap()
    page.locator("[data-truck] [data-empty]:not([hidden])").wait_for()
    softly.append(shown(page))
    assert is_same_document(page)
    page.go_back()
    titles(page, 2)
    page.go_back()
    page.locator("[data-versions] article").wait_for()
    page.go_back()
    page.locator(WORKED_OUT).wait_for()
    assert page.title() == "Loader bucket ear"
    page.go_back()
    titles(page, 2)
    page.go_back()
    assert page.input_value("#find") == "gauge" and page.url == server.address
    expect(page.locator("[data-at-hand]")).to_contain_text("Loader bucket ear")  # looked at since
    assert is_same_document(page) and page.locator("main").count() == 1
    for before, ready in zip(softly, ("[data-rows] li", WORKED_OUT, "article", "[data-empty]"), strict=True):
        page.goto("about:blank")
        page.goto(before[0])
        page.locator(ready).first.wait_for()
        page.wait_for_function("html => document.querySelector('main').innerHTML === html", arg=before[2])
        assert shown(page)[:2] == before[:2]


def test_what_was_kept_meanwhile_is_there_on_the_way_back(page: Page, server: Server, tmp_path: Path):
    open_list(page)
    open_first_job(page)
    other = page.context.new_page()
    longer = follow(JOB, {**CALL, "title": "Bucket ear, both", "status": "open"}, "2026-05-03T08:00:00.000Z")
    more = kept.record("weld-entry", {"joint": "ear", "weld_pass": "cap", "job_id": JOB["id"]})
    new = follow(None, {**CALL, "title": "Trailer hitch", "status": "open"}, "2026-05-04T08:00:00.000Z")
    bring(other, server.address, tmp_path, longer, more, new)
    page.go_back()
    assert titles(page, 3) == ["Trailer hitch", "Bucket ear, both", "Gate hinge"]
    page.go_forward()
    expect(page.locator("h1")).to_have_text("Bucket ear, both")
    expect(page.locator("[data-entries] li")).to_have_count(2)
    assert is_same_document(page)


def test_the_list_comes_back_as_it_was_looked_for_and_as_far_down(page: Page, server: Server, tmp_path: Path):
    at = [f"2026-03-01T08:{minute:02d}:00.000Z" for minute in range(25)]
    others = [follow(None, {**CALL, "title": "Trailer hitch", "status": "open"}, each) for each in at]
    bring(page, server.address, tmp_path, *others)
    page.goto(server.address + "jobs")
    page.locator("#find-job").fill("hitch")
    page.locator("#job-status").select_option("open")
    titles(page, 25)
    link = page.locator("[data-rows] li").nth(20).get_by_role("link", name="Open")
    link.scroll_into_view_if_needed()
    page.evaluate("document.documentElement.dataset.same = 'yes'")
    y = page.evaluate("scrollY")
    link.tap()
    page.locator(WORKED_OUT).wait_for()
    page.go_back()
    titles(page, 25)
    page.wait_for_function("y => scrollY === y", arg=y)
    assert (page.input_value("#find-job"), page.input_value("#job-status")) == ("hitch", "open")
    assert is_same_document(page)


def test_steps_in_a_hurry_end_on_the_page_that_the_address_names(page: Page):
    open_list(page)
    for steps in ([-1, 1], [-1, 1, -1], [1, -1, 1]):
        page.evaluate("async steps => { for (const step of steps) { history.go(step); await 0; } }", steps)
        page.wait_for_timeout(600)
        on_list = page.url.endswith("/jobs")
        assert (page.locator("[data-rows] li").count() == 2) == on_list, page.url
        assert page.title().startswith("Jobs") == on_list
    if not page.url.endswith("/jobs"):
        page.go_forward()
    titles(page, 2)
    page.locator("[data-rows]").get_by_role("link", name="Open").first.tap()
    page.evaluate("history.back()")
    page.wait_for_timeout(600)  # back to the list, or to the first page if the job had not come yet
    assert page.title().startswith("Jobs" if page.url.endswith("/jobs") else "Puddlebook")
    assert page.locator("[data-jobs]").count() == page.url.endswith("/jobs")


def test_a_page_with_something_to_sign_is_left_for_a_new_document(page: Page, server: Server):
    page.goto(f"{server.address}paper#{JOB['id']}")
    page.locator("[data-sheet] *").first.wait_for()
    page.evaluate("document.documentElement.dataset.same = 'yes'")
    page.locator("[data-back]").tap()
    page.locator(WORKED_OUT).wait_for()
    assert not is_same_document(page)
