"""What belongs to a job stays with it: ticks, the fire watch by the clock, photos; on its page and on its paper."""

import io
import re
from pathlib import Path

from playwright.sync_api import BrowserContext, Page
from pypdf import PdfReader

from tests.browser import kept
from tests.browser.driving import ROOT, Server, visit
from tests.browser.test_jobs import call, open_job

SITE = {"job_kind": "machine", "work_on": "open", "where": "outdoors"}
HOUR_MS = 3600 * 1000
FIRE = "hot-work?work_on=open&place=indoors"
OTHER = "00000000-0000-4000-8000-000000000000"


def fields(page: Page, id: str) -> list[dict[str, str]]:
    """Return the fields of every revision of a record, the oldest first."""
    found = [value for key, value in kept.lying_on(page)["revisions"] if key[0] == id]
    return [kept.fields(each) for each in sorted(found, key=lambda each: int(each["rev"].partition("-")[0]))]


def test_ticks_the_watch_and_photos_are_the_job_s_and_stay_as_they_were_when_it_is_closed(
    phone: BrowserContext, server: Server, tmp_path: Path
):
    page = visit(phone, server.address)
    id = call(page, server.address, **SITE)
    open_job(page, server.address, id)
    page.locator("[data-list=make-safe] a").tap()
    page.get_by_text("Ticks here are kept with the job.").wait_for()
    page.get_by_role("checkbox", name="What can turn").check()
    page.get_by_role("checkbox", name="Work clamp").check()
    page.locator("[data-done]", has_text="2 of 9 done. First tick:").wait_for()
    assert page.get_by_role("button", name="Clear ticks").is_hidden()
    page.get_by_role("link", name="Back to the job").tap()
    ticked = page.locator("[data-list=make-safe]", has_text="2 of 9 ticked, the last")
    ticked.wait_for()
    assert ticked.locator("ul").first.locator("li").count() == 7, "what was NOT ticked is named"
    assert page.locator("[data-list=hot-work]", has_text="Nothing ticked.").is_visible()
    assert page.evaluate("localStorage.getItem('ticks:make-safe')") is None

    # A list of another job begins with what that one carries, not with what was typed and started for nobody or here.
    fire = "[data-list=hot-work] a"
    page.evaluate("localStorage.setItem('inputs:hot-work', 'work_on=rim')")
    page.evaluate("localStorage.setItem('countdown:hot-work:timer', `${Date.now()} ${Date.now() + 4e6}`)")
    page.goto(f"{server.address}hot-work#job={OTHER}&take=place:where")
    assert page.locator("[name=work_on]:checked").count() == 0
    page.goto("about:blank")
    page.goto(f"{server.address}{FIRE}#job={OTHER}")
    page.get_by_role("button", name="Last spark now").tap()
    page.locator("[data-left]").wait_for()
    open_job(page, server.address, id)
    page.locator(fire).tap()
    page.locator("[data-begin]").wait_for()
    assert page.locator("[data-left]").is_hidden(), "the other job's watch does not run here"
    assert page.locator("[name=place]:checked").get_attribute("value") == "outdoors", "as the job says it"
    # What was answered here for this job, and not taken into it, is offered again.
    page.evaluate("id => localStorage.setItem(`inputs:hot-work#${id}`, 'work_on=open&place=indoors')", id)
    page.goto("about:blank")
    page.goto(f"{server.address}hot-work#job={id}&take=place:where")
    page.get_by_role("button", name="Take into the job").wait_for()
    open_job(page, server.address, id)

    # No spark is known of: no end is claimed. Then it is the button's time, the question's minutes.
    page.get_by_text("No end time yet.").wait_for()
    page.get_by_role("button", name="Last spark is now").tap()
    page.get_by_text("Counted from the last spark as tapped").wait_for()
    assert re.fullmatch(r"Watch until .+ at least", page.locator("[data-watch-until]").inner_text())
    page.get_by_text("Fire watch: 60").wait_for()
    assert page.get_by_text("The longest one rules").is_visible()
    assert "NFPA 51B" in str(page.locator("[data-watch-sources]").text_content())
    start, end = page.evaluate(
        "([from, until]) => [Date.parse(from), Date.parse(until)]",
        [fields(page, id)[-1]["watch.from"], fields(page, id)[-1]["watch.until"]],
    )
    assert end - start == HOUR_MS
    # The list has it too, and a watch that is started there is known here.
    page.locator(fire).tap()
    page.locator("[data-left]").wait_for()
    page.get_by_role("button", name="Stop the watch").tap()
    page.get_by_role("button", name="Last spark now").tap()
    page.locator("[data-left]").wait_for()
    begun = page.evaluate("id => localStorage.getItem(`countdown:hot-work:timer#${id}`)", id)
    assert int(begun.split()[0]) > start
    open_job(page, server.address, id)
    page.get_by_text("Counted from the last spark as tapped").wait_for()
    assert page.evaluate("id => document.querySelector('[data-watch-left]').textContent.length", id) >= len("59:59")

    page.locator("#job-photo").set_input_files(ROOT / "static" / "icon-192.png")
    page.locator("[data-photos] img").wait_for()
    page.locator("[data-cards][data-worked-out=yes]").wait_for()

    # On a weld logged later the watch starts again; that one was of a day whose watch is over.
    weld = {"job_id": id, "joint": "ear", "welded_at": "2099-01-01T10:00:00.000Z"}
    kept.put(page, server.address, tmp_path, kept.record("weld-entry", weld))
    open_job(page, server.address, id)
    page.get_by_text("Counted from the last weld logged").wait_for()
    page.get_by_role("button", name="Close the job").tap()
    page.get_by_text("It keeps its numbers").wait_for()
    last = fields(page, id)[-1]
    assert (last["watch.from"], last["watch.until"]) == ("2099-01-01T10:00:00.000Z", "2099-01-01T11:00:00.000Z")
    assert page.locator("[data-watch-now]").is_hidden() and page.locator("#job-photo").is_hidden()

    page.goto(f"{server.address}make-safe?job=machine#job={id}")
    page.get_by_text("Its ticks stay as they were.").wait_for()
    assert page.locator("[data-tick]:disabled").count() == 9 and page.locator("[data-tick]:checked").count() == 2
    page.goto(server.address + "make-safe?job=machine")
    page.locator("[data-done]", has_text="0 of 9 done").wait_for()  # outside the job nothing was ticked

    page.goto(f"{server.address}paper#{id}")
    page.locator(".paper .photos img").wait_for()
    text = " ".join(" ".join(each.extract_text() for each in PdfReader(io.BytesIO(page.pdf())).pages).split())
    assert "Make safe: 2 of 9 ticked" in text and text.count("NOT TICKED") == 7
    assert "Nothing was ticked of: Hot work and fire watch." in text and "Fire watch: until" in text
    with page.expect_download() as shared:
        page.get_by_role("button", name="Share as a file").tap()
    shared.value.save_as(tmp_path / "paper.html")
    assert 'src="data:image/png;base64,' in (tmp_path / "paper.html").read_text("utf-8")
