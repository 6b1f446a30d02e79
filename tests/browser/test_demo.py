"""The demo: loads on demand and offline, says everywhere what it is, goes nowhere, and goes away without a trace."""

import json
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import BrowserContext, Page

from tests.browser import kept
from tests.browser.driving import NoSignal, Server, Watch, open_profile, visit, wait_until_carried
from tests.browser.test_log import keep, pair
from webapp.store import Store

MARK = "DEMO: invented"
Lying = dict[str, Any]


def load(page: Page, address: str) -> Lying:
    """Load the demo on the truck's page; return what lies on the phone then."""
    page.goto(address + "truck")
    page.get_by_role("button", name="Load the demo truck").tap()
    page.get_by_text("The demo is on this phone.").wait_for()
    return kept.lying_on(page)


def remove(page: Page, address: str) -> Lying:
    """Take the demo away again; return what lies on the phone then."""
    page.goto(address + "truck")
    page.get_by_role("button", name="Remove the demo").tap()
    page.get_by_role("button", name="Load the demo truck").wait_for()
    return kept.lying_on(page)


def fields_of(lying: Lying, kind: str) -> list[dict[str, str]]:
    """Return the fields of the records of a kind."""
    return [row["fields"] for _, row in lying["rows"] if row["kind"] == kind]


@pytest.fixture
def crew(tmp_path: Path):
    """A server of one's own, whose records are empty."""
    with Server(tmp_path / "data") as running:
        yield running


def test_it_loads_and_goes_with_no_signal_and_leaves_everything_as_it_was(playwright, tmp_path: Path):
    with Server(tmp_path / "data") as server:
        with open_profile(playwright, tmp_path / "profile") as context:
            page = visit(context, server.address)
            wait_until_carried(page)
            keep(page, server.address)
            page.goto(server.address + "truck")
            page.get_by_text("Nothing on the truck yet.").wait_for()
            watch = Watch(context)
            server.kill()
            with NoSignal(server, watch):
                page.goto(server.address + "truck")
                before = kept.lying_on(page)
                assert fields_of(load(page, server.address), "job")
                assert remove(page, server.address) == before


def test_three_jobs_at_different_stages_with_answers_as_the_book_gives_them(phone: BrowserContext, server: Server):
    page = visit(phone, server.address)
    lying = load(page, server.address)
    closed, *others = sorted(fields_of(lying, "job"), key=lambda each: each["status"])
    assert closed["status"] == "closed" and [each["status"] for each in others] == ["open", "open"]
    for job in (closed, *others):
        assert job["shown"] and json.loads(job["card_load"])[0] == "Before leaving"
        assert json.loads(job["card_joint-1"])[1:]
    assert {len([name for name in each if name.startswith("price.")]) > 0 for each in (closed, *others)} == {
        True,
        False,
    }
    assert float(closed["price.shown"]) > 0 and closed["price.paid"] == "all"
    welds = fields_of(lying, "weld-entry")
    assert len(welds) == 4 and all(
        each["used_wire"].endswith(" kg") and each["used_gas"].endswith(" L") for each in welds
    )
    assert {each["item"] for each in fields_of(lying, "stock")} == {"spool", "cylinder", "machine", "lead", "generator"}
    ids = {row["id"] for _, row in lying["rows"]}
    for each in welds:
        assert {each["job_id"], each["spool"], each["cylinder"]} < ids
    page.goto(server.address + "truck")
    page.get_by_text("Welds on it: 4").first.wait_for()


def test_it_says_on_every_row_and_paper_what_it_is(phone: BrowserContext, server: Server):
    page = visit(phone, server.address)
    lying = load(page, server.address)
    assert {row["fields"].get("demo") for _, row in lying["rows"]} == {"yes"}
    for path in ("truck", "log"):
        page.goto(server.address + path)
        rows = page.locator("[data-rows] > li")
        rows.nth(3).wait_for()
        assert all(MARK in each for each in rows.all_inner_texts())
    for _, row in lying["rows"]:
        if row["kind"] != "job":
            page.goto(server.address + "entry#" + row["id"])
            page.locator("[data-versions] article", has_text=MARK).wait_for()
        else:
            page.goto(server.address + "paper#" + row["id"])
            page.locator(".paper .mark").wait_for()
            assert "DEMO" in page.locator(".paper .foot").inner_text()
            assert "DEMO" in page.locator(".paper .mark").inner_text()


def test_nothing_of_it_is_sent_exported_or_offered_to_one_s_own_welds(phone: BrowserContext, crew: Server, tmp_path):
    page = visit(phone, crew.address)
    pair(page, crew)
    lying = load(page, crew.address)
    assert lying["outbox"] == []
    # Changed and deleted, it stays what it is.
    page.locator("li", has_text="Long pair").locator("summary").tap()
    page.locator("li", has_text="Long pair").get_by_role("button", name="Take off the truck").tap()
    page.locator("li", has_text="Long pair").wait_for(state="detached")
    page.goto(crew.address + "weld-entry")
    page.wait_for_timeout(500)
    assert page.get_by_label("Spool on the truck").is_hidden()
    keep(page, crew.address)
    page.goto(crew.address + "log")
    page.get_by_role("button", name="Send now").tap()
    page.get_by_text("Everything on this phone is on the server too.").wait_for()
    with page.expect_download() as download:
        page.get_by_role("button", name="Export everything").tap()
    download.value.save_as(tmp_path / "all.json")
    text = (tmp_path / "all.json").read_text("utf-8")
    assert "demo" not in text and len(json.loads(text)["revisions"]) == 1
    crew.kill()
    store = Store(crew.data)
    assert store.sequence == 1
    store.close()


def test_what_was_done_with_it_goes_too_and_what_is_one_s_own_stays(phone: BrowserContext, server: Server, tmp_path):
    page = visit(phone, server.address)
    mine = kept.record("stock", {"item": "spool", "name": "My own", "left": "2 kg"})
    # Says that it is of the demo in its second version only: another phone may not make it go.
    other = kept.record("stock", {"item": "lead", "name": "Other"})
    kept.put(page, server.address, tmp_path, mine, other)
    lying = load(page, server.address)
    [job] = [row for _, row in lying["rows"] if row["fields"].get("title") == "Handrail post broken off"]
    page.goto(server.address + "paper#" + job["id"])
    page.get_by_label("Name", exact=True).fill("Somebody")
    page.get_by_role("button", name="Keep the signature").tap()
    page.get_by_text("Signed: Somebody").wait_for()
    page.goto(server.address + f"weld-entry?joint=Post+base&voltage=20+V#job={job['id']}")
    page.get_by_text("DEMO: this belongs to an invented job.").wait_for()
    page.get_by_label("Spool on the truck").select_option(label="Stainless, small, 1.2\u00a0lb")
    page.get_by_role("button", name="Keep in the log").tap()
    page.get_by_text("Kept on this phone.").wait_for()
    assert len(fields_of(kept.lying_on(page), "weld-entry")) == 5
    after = remove(page, server.address)
    assert {row["id"] for _, row in after["rows"]} == {mine["id"], other["id"]}
    assert {value["id"] for _, value in after["revisions"]} == {mine["id"], other["id"]}
    assert {value["id"] for _, value in after["outbox"]} == {mine["id"], other["id"]}
    assert not [key for key in after["memory"] if job["id"] in key or job["id"] in after["memory"][key]]
    assert after["drafts"] == []


def test_where_the_book_cannot_answer_nothing_is_kept(new_phone, server: Server):
    phone = new_phone(service_workers="block")
    page = visit(phone, server.address + "truck")
    phone.route("**/job?*", lambda route: route.abort())
    page.get_by_role("button", name="Load the demo truck").tap()
    page.get_by_text("The demo did not load. Nothing was kept.").wait_for()
    assert kept.lying_on(page)["rows"] == []
