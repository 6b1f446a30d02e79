"""The job at hand stands first on the first page, moves nothing, and leaves when its work is done."""

import pytest

from tests.browser import kept
from tests.browser.driving import box_of, visit
from tests.browser.test_steadiness import OBSERVE, shifts

TITLE = "Trailer, cracked coupler, both sides of the tongue and a good deal more of it"


def test_the_job_at_hand_is_one_tap_from_the_first_page_until_it_is_closed(phone, server, tmp_path):
    phone.add_init_script(f"({OBSERVE})()")
    page = visit(phone, server.address)
    link = page.locator("[data-at-hand] a")
    assert not link.is_visible()
    job = kept.record("job", {"title": TITLE, "status": "open"})
    kept.put(page, server.address, tmp_path, job)
    page.goto(server.address + "work#" + job["id"])
    page.get_by_role("heading", name=TITLE).wait_for()
    page.goto(server.address)
    assert shifts(page) == []
    assert link.inner_text().endswith(TITLE)
    assert box_of(link)["height"] >= 56 and box_of(link)["y"] < 200
    link.tap()
    page.get_by_role("heading", name=TITLE).wait_for()
    page.get_by_role("button", name="Close the job").tap()
    page.get_by_role("button", name="Open it again").wait_for()
    page.goto(server.address)
    assert not link.is_visible()


@pytest.mark.parametrize("spoilt", ["", "null", "7", "{", '{"id":5,"title":"x"}', "[]"])
def test_what_lies_there_spoilt_is_no_job(phone, server, spoilt):
    page = visit(phone, server.address)
    page.evaluate("spoilt => localStorage.setItem('job-at-hand', spoilt)", spoilt)
    page.goto(server.address)
    page.locator("[data-recent]").wait_for(state="attached")
    page.locator("[data-at-hand] a").wait_for(state="hidden")
