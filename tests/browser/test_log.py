"""The weld log as a welder keeps it: with no signal, corrected, sent to the crew's server, on two phones at once."""

import base64
import datetime
import json
from collections.abc import Callable
from pathlib import Path
from urllib.parse import urlencode

import pytest
from playwright.sync_api import BrowserContext, Dialog, Page, expect

from tests.browser import kept
from tests.browser.driving import ROOT, NoSignal, Server, Watch, open_profile, visit, wait_until_carried
from tests.browser.known import KNOWN
from webapp import devices
from webapp.store import Store

RUN = {
    "joint": "bracket left",
    "weld_pass": "root",
    "voltage": "24 V",
    "current": "180 A",
    "weld_length": "6 in",
    "arc_time": "30 s",
}
SETTINGS = {"thickness": "1/4 in"}


def keep(page: Page, address: str, **changed: str) -> None:
    """Write a weld into the log from its address, as the form does when it is filled in."""
    page.goto(address + "weld-entry?" + urlencode({**RUN, **changed}))
    page.get_by_role("button", name="Keep in the log").tap()
    page.get_by_text("Kept on this phone.").wait_for()


def rows(page: Page, address: str, count: int = 1) -> list[str]:
    """Open the log and return its rows as text, once so many are there."""
    page.goto(address + "log")
    page.locator("[data-rows] li").nth(count - 1).wait_for()
    return page.locator("[data-rows] li").all_inner_texts()


def pair(page: Page, server: Server) -> None:
    """Let the page's phone into the crew, by a code as it is scanned: after the #."""
    page.goto(server.address + "crew#" + devices.make_code(server.data))
    page.get_by_role("button", name="Join the crew").tap()
    page.get_by_text("This phone belongs to the crew.").wait_for()
    assert page.url == server.address + "crew"  # the code does not stay in the address


@pytest.fixture
def crew(tmp_path: Path):
    """A server of one's own, whose records are empty."""
    with Server(tmp_path / "data") as running:
        yield running


def test_a_weld_is_kept_with_no_signal_and_is_there_after_the_browser_was_closed(playwright, tmp_path: Path):
    with Server(tmp_path / "data") as server:
        with open_profile(playwright, tmp_path / "profile") as context:
            wait_until_carried(visit(context, server.address))
        server.kill()
        with open_profile(playwright, tmp_path / "profile") as context:
            watch = Watch(context)
            with NoSignal(server, watch):
                page = visit(context, server.address)
                keep(page, server.address)
                # In the middle of whatever comes next, the battery dies.
        with open_profile(playwright, tmp_path / "profile") as context:
            watch = Watch(context)
            with NoSignal(server, watch):
                [row] = rows(visit(context, server.address), server.address)
                assert "bracket left, root" in row and "17.3 kJ/in" in row and "On this phone" in row


def test_a_correction_keeps_what_it_corrects(phone: BrowserContext, server: Server):
    page = visit(phone, server.address)
    keep(page, server.address)
    rows(page, server.address)
    page.get_by_role("link", name="Open").tap()
    page.get_by_role("link", name="Correct").tap()
    page.locator("#voltage").fill("26")
    page.get_by_text("18.7").first.wait_for()
    page.get_by_role("button", name="Keep the correction").tap()
    page.get_by_text("Kept on this phone.").wait_for()
    [row] = rows(page, server.address)
    assert "18.7 kJ/in" in row
    page.get_by_role("link", name="Open").tap()
    page.locator("[data-versions] article").nth(1).wait_for()
    versions = page.locator("[data-versions] article").all_inner_texts()
    assert "As it stands" in versions[0] and "26 V" in versions[0]
    assert "Before a correction" in versions[1] and "24 V" in versions[1]


def test_a_deleted_entry_can_be_brought_back(phone: BrowserContext, server: Server):
    page = visit(phone, server.address)
    keep(page, server.address)
    rows(page, server.address)
    page.get_by_role("link", name="Open").tap()
    page.get_by_role("button", name="Delete").tap()
    page.get_by_text("Deleted. It stays readable here.").wait_for()
    entry = page.url
    page.goto(server.address + "log")
    page.get_by_text("Nothing here yet.").wait_for()
    page.goto(entry)
    page.get_by_role("button", name="Bring back").tap()
    page.get_by_role("button", name="Delete").wait_for()
    assert len(rows(page, server.address)) == 1


def test_the_next_pass_starts_from_the_last_one(phone: BrowserContext, server: Server):
    page = visit(phone, server.address)
    keep(page, server.address, wire_class="ER70S-6", wire_feed_speed="300 in/min", notes="first")
    again = page.get_by_role("link", name="Same again")
    here = again.get_attribute("href")  # right where it was kept, and in the log
    rows(page, server.address)
    assert here == again.get_attribute("href")
    again.tap()
    page.get_by_role("button", name="24 V last time").wait_for()
    assert page.input_value("#joint") == "bracket left"
    assert page.input_value("#wire_class") == "ER70S-6" and page.input_value("#wire_feed_speed") == "300"
    assert page.input_value("#arc_time") == "" and page.input_value("#notes") == ""
    # A reading is taken anew; that it reads the same is one tap.
    assert page.input_value("#voltage") == "" and page.input_value("#current") == ""
    page.get_by_role("button", name="24 V last time").tap()
    assert page.input_value("#voltage") == "24"


def test_an_entry_shows_what_was_chosen_in_words(phone: BrowserContext, server: Server):
    page = visit(phone, server.address)
    keep(page, server.address, limit_basis="arc-energy", heat_input_limit="20 kJ/in")
    rows(page, server.address)
    page.get_by_role("link", name="Open").tap()
    version = page.locator("[data-versions] article")
    version.wait_for()
    shown = version.inner_text()
    assert "US: efficiency left out" in shown and "arc-energy" not in shown, shown


def test_what_is_outside_a_limit_is_kept_and_flagged(phone: BrowserContext, server: Server):
    page = visit(phone, server.address)
    keep(page, server.address, preheat_measured="70 degF", preheat_least="150 degF")
    [row] = rows(page, server.address)
    assert "Outside: Least preheat" in row


def test_a_row_says_which_heat_its_number_is(phone: BrowserContext, server: Server):
    page = visit(phone, server.address)
    keep(page, server.address)
    keep(page, server.address, limit_basis="arc-energy")
    keep(page, server.address, arc_time="")
    nothing, arc, heat = rows(page, server.address, 3)
    assert "21.6 kJ/in" in arc and "arc energy" in arc
    assert "17.3 kJ/in" in heat and "heat input" in heat
    assert "Not worked out" in nothing and "heat input" not in nothing


# ---------------------------------------------------------------- looking back


def test_what_was_run_last_on_a_thickness_is_one_tap_from_the_settings(phone: BrowserContext, server: Server):
    page = visit(phone, server.address)
    for weld_pass, thickness in (("first", "1/4 in"), ("other", "1/2 in"), ("second", "6 mm")):
        keep(page, server.address, weld_pass=weld_pass, thickness=thickness, wire_feed_speed="300 in/min")
    page.goto(server.address + "settings?" + urlencode(SETTINGS))
    page.get_by_role("link", name="What I ran last time").tap()
    page.locator("[data-rows] li").nth(1).wait_for()
    shown = page.locator("[data-rows] li").all_inner_texts()
    assert len(shown) == 2 and "second" in shown[0] and "first" in shown[1]
    assert "24 V" in shown[0] and "180 A" in shown[0] and "300 in/min" in shown[0]
    assert page.locator("[data-by]").input_value() == "thickness"
    page.locator("[data-by]").select_option("")
    page.locator("[data-rows] li").nth(2).wait_for()


def test_the_log_is_narrowed_to_days_and_a_joint_and_its_passes_are_drawn(phone: BrowserContext, server: Server):
    page = visit(phone, server.address)
    for count, amps in enumerate(("170 A", "180 A", "190 A")):
        page.clock.set_fixed_time(datetime.datetime(2026, 1, 10 + count, 12, 0))
        keep(page, server.address, current=amps, preheat_measured="210 degF", weld_pass=f"pass {count}")
    keep(page, server.address, joint="another")
    rows(page, server.address, 4)
    page.get_by_label("To").fill("2026-01-11")
    page.get_by_text("another").wait_for(state="detached")
    assert page.locator("[data-rows] li").count() == 2
    page.get_by_label("From").fill("2026-01-11")
    page.get_by_text("pass 0").wait_for(state="detached")
    [row] = page.locator("[data-rows] li").all_inner_texts()
    assert "pass 1" in row
    page.get_by_label("To").fill("")
    page.get_by_label("From").fill("")
    page.locator("[data-by]").select_option("joint")
    page.locator("[data-value]").select_option("bracket left")
    page.get_by_role("link", name="Pass by pass, drawn").tap()
    page.locator(".drawing circle").nth(5).wait_for()
    assert page.input_value("#heats") == "16.3 17.3 18.2 kJ/in"
    assert page.input_value("#preheats") == "210 210 210 degF"


def test_pairs_for_the_machine_come_from_the_log(phone: BrowserContext, server: Server):
    page = visit(phone, server.address)
    wire = {"wire_material": "mild-steel", "wire_diameter": "0.035 in"}
    keep(page, server.address, **wire, wire_feed_speed="300 in/min", current="150 A")
    keep(page, server.address, **wire, wire_feed_speed="400 in/min", current="190 A")
    keep(page, server.address)
    rows(page, server.address, 3)
    page.goto(server.address + "machine-trim?measured=pairs")
    page.get_by_role("button", name="Take pairs from my log").tap()
    page.get_by_text("2 taken, the newest first.").wait_for()
    assert page.input_value("#wire_diameter") == "0.035"
    assert [page.input_value(f"#pairs-{place}-current") for place in (1, 2, 3)] == ["190", "150", ""]
    assert page.input_value("#pairs-1-wire_feed_speed") == "400"
    assert page.input_value("#pairs-1-wire_feed_speed_unit") == "in/min"


# ---------------------------------------------------------------- the crew


def test_two_phones_share_a_log_and_choose_between_two_versions(new_phone: Callable[..., BrowserContext], crew: Server):
    mine, yours = visit(new_phone(), crew.address), visit(new_phone(), crew.address)
    keep(mine, crew.address)
    pair(mine, crew)
    pair(yours, crew)
    assert "On the server" in _row_once(mine, crew, "On the server")
    assert "bracket left" in _row_once(yours, crew, "On the server")
    for page, volts in ((mine, "25"), (yours, "27")):
        page.context.set_offline(True)
        page.get_by_role("link", name="Open").tap()
        page.get_by_role("link", name="Correct").tap()
        page.locator("#voltage").fill(volts)  # and at once, before the answer knows of it:
        page.get_by_role("button", name="Keep the correction").tap()
        page.get_by_text("Kept on this phone.").wait_for()
    for page in (mine, yours, mine):
        page.context.set_offline(False)
        page.goto(crew.address + "log")
        page.get_by_role("button", name="Send now").tap()
        page.get_by_text("Everything on this phone is on the server too.").wait_for()
    for page in (mine, yours):
        assert "Two versions stand side by side" in _row_once(page, crew, "Two versions")
    mine.get_by_role("link", name="Open").tap()
    mine.locator("[data-versions] article").nth(2).wait_for()
    shown = mine.locator("[data-versions] article").all_inner_texts()
    assert sorted("25 V" in each or "27 V" in each for each in shown[:2]) == [True, True]
    mine.locator("article", has_text="25 V").get_by_role("button", name="Keep this version").tap()
    mine.locator("[data-versions] article").nth(3).wait_for()
    for page in (mine, yours):
        page.goto(crew.address + "log")
        page.get_by_role("button", name="Send now").tap()
        page.get_by_text("Everything on this phone is on the server too.").wait_for()
    assert "25 V" in _row_once(yours, crew, "25 V") and "Two versions" not in rows(yours, crew.address)[0]


def _row_once(page: Page, server: Server, words: str) -> str:
    """Return the log's first row once it says so: the exchange goes on behind the page."""
    for _ in range(30):
        row = rows(page, server.address)[0]
        if words in row:
            return row
        page.wait_for_timeout(300)
    raise AssertionError(f"the row never says {words!r}: {row!r}")


@pytest.mark.parametrize(
    ("status", "body", "words"),
    [
        (200, "<title>Sign in</title>", "answered in its place"),
        (200, "{}", "answered in its place"),
        (503, '{"sync": 1, "error": "x"}', "The server has a fault"),
        (401, '{"sync": 1, "error": "x"}', "not in a crew"),
        (429, '{"sync": 1, "error": "x"}', "asks to wait"),
    ],
)
def test_f12_a_wrong_answer_keeps_what_waits_and_says_why(phone: BrowserContext, crew: Server, status, body, words):
    page = visit(phone, crew.address)
    pair(page, crew)
    phone.route("**/sync", lambda route: route.fulfill(status=status, body=body))
    keep(page, crew.address)
    rows(page, crew.address)
    page.get_by_role("button", name="Send now").tap()
    page.locator("[data-exchange]", has_text=words).and_(
        page.locator("[data-exchange]", has_text="1 not on the server yet")
    ).wait_for()
    expect(page.locator(".unsent")).to_have_text("\u21911")
    phone.unroute("**/sync")
    page.get_by_role("button", name="Send now").tap()
    page.get_by_text("Everything on this phone is on the server too.").wait_for()
    expect(page.locator(".unsent")).to_have_text("")


def test_f21_five_tabs_at_once_store_each_entry_once(phone: BrowserContext, crew: Server):
    page = visit(phone, crew.address)
    pair(page, crew)
    phone.set_offline(True)
    for count in range(3):
        keep(page, crew.address, weld_pass=f"pass {count}")
    tabs = [phone.new_page() for _ in range(5)]
    for tab in tabs:
        tab.goto(crew.address + "log")
    phone.set_offline(False)
    for tab in tabs:
        tab.evaluate("window.dispatchEvent(new Event('online'))")
    tabs[0].get_by_role("button", name="Send now").tap()
    tabs[0].get_by_text("Everything on this phone is on the server too.").wait_for()
    crew.kill()
    stored = Store(crew.data)
    assert stored.sequence == 3
    stored.close()


def test_a_phone_does_not_leave_the_crew_with_unsent_entries(phone: BrowserContext, crew: Server):
    page = visit(phone, crew.address)
    pair(page, crew)
    phone.route("**/sync", lambda route: route.abort())
    keep(page, crew.address)
    page.goto(crew.address + "crew")
    page.get_by_role("button", name="Leave the crew").tap()
    page.get_by_text("1 not on the server yet. Send or export them first.").wait_for()
    phone.unroute("**/sync")
    page.goto(crew.address + "log")
    page.get_by_role("button", name="Send now").tap()
    page.get_by_text("Everything on this phone is on the server too.").wait_for()
    page.goto(crew.address + "crew")
    page.get_by_role("button", name="Leave the crew").tap()
    page.get_by_text("This phone has left the crew. Its log stays here.").wait_for()
    assert len(rows(page, crew.address)) == 1


def test_s10_a_phone_shut_out_keeps_its_log_and_is_told(phone: BrowserContext, crew: Server):
    page = visit(phone, crew.address)
    pair(page, crew)
    devices.shut_out(crew.data, devices.paired(crew.data)[0]["id"])
    keep(page, crew.address)
    rows(page, crew.address)
    page.get_by_role("button", name="Send now").tap()
    page.get_by_text("not in a crew").wait_for()
    assert "On this phone" in rows(page, crew.address)[0]


# ---------------------------------------------------------------- poison, no room, files

POISON = "<img src=x onerror=alert(1)>{{7*7}}\u202e\"'=1+1"


def test_s6_poisoned_text_is_inert_on_every_page_of_the_log(phone: BrowserContext, server: Server):
    page = visit(phone, server.address)
    spoken: list[str] = []

    def heard(dialog: Dialog) -> None:
        spoken.append(dialog.message)
        dialog.dismiss()

    page.on("dialog", heard)
    fields = ("joint", "weld_pass", "notes", "repair", "job", "wire_class", "wire_lot", "gas_used")
    keep(page, server.address, **dict.fromkeys(fields, POISON[:30]))
    [row] = rows(page, server.address)
    assert POISON[:30] in row
    page.locator("[data-by]").select_option("job")
    page.locator("[data-value]").wait_for()
    assert page.locator("[data-value] option").first.inner_text() == POISON[:30]
    page.get_by_role("link", name="Open").tap()
    page.locator("[data-versions] article").wait_for()
    assert page.locator("[data-versions]").inner_text().count(POISON[:30]) == len(fields)
    assert page.locator("main img").count() == 0
    assert spoken == []


def test_f17_with_no_room_left_it_says_so_and_what_was_typed_stays(phone: BrowserContext, server: Server):
    page = visit(phone, server.address)
    page.goto(server.address + "weld-entry?" + urlencode(RUN))
    page.evaluate(
        """() => { IDBObjectStore.prototype.put = () => {
            throw new DOMException('no room', 'QuotaExceededError'); }; }"""
    )
    page.get_by_role("button", name="Keep in the log").tap()
    page.get_by_text("NOT kept: the phone has no room left.").wait_for()
    assert page.input_value("#joint") == "bracket left"
    page.reload()
    page.get_by_role("button", name="Keep in the log").tap()
    page.get_by_text("Kept on this phone.").wait_for()


@pytest.mark.parametrize(
    ("answer", "words"), [("true", "has promised not to clear"), ("false", "may clear the log"), ("", "does not say")]
)
def test_f19_whether_the_browser_promises_to_keep_it_is_told_as_it_is(phone: BrowserContext, server, answer, words):
    asked = f"async () => {answer}" if answer else "undefined"
    script = f"if (navigator.storage) Object.defineProperty(navigator.storage, 'persisted', {{ value: {asked} }})"
    phone.add_init_script(script)
    page = visit(phone, server.address + "log")
    page.get_by_text(words).wait_for()


def test_an_export_is_taken_in_on_another_phone_byte_for_byte(new_phone, server: Server, tmp_path: Path):
    page = visit(new_phone(), server.address)
    keep(page, server.address, notes="caf\u00e9 \U0001f525")
    page.goto(server.address + KNOWN["weld-entry"].address("weld-entry"))
    page.locator("#record-photo").set_input_files(ROOT / "static" / "icon-180.png")
    page.get_by_role("button", name="Keep in the log").tap()
    page.get_by_text("Kept on this phone.").wait_for()
    ticked = json.dumps(["Before", ["lock", "Locked out", "2026-05-01T08:00:00.000Z"], ["chock", "Chocked", ""]])
    job = {"title": "Yard gate", "ticks.make-safe": ticked, "watch.from": "2026-05-01T08:00:00.000Z"}
    stock = {"item": "spool", "name": "cap rack", "spool_left": "10 lb"}
    kept.put(page, server.address, tmp_path, kept.record("job", job), kept.record("stock", stock))
    rows(page, server.address, 2)
    with page.expect_download() as download:
        page.get_by_role("button", name="Export everything").tap()
    download.value.save_as(tmp_path / "log.json")
    exported = json.loads((tmp_path / "log.json").read_text("utf-8"))
    assert len(exported["revisions"]) == 4
    photo = base64.b64encode((ROOT / "static" / "icon-180.png").read_bytes()).decode()
    assert [each["base64"] for each in exported["photos"]] == [photo]
    other = visit(new_phone(), server.address + "log")
    other.get_by_text("Nothing here yet.").wait_for()
    other.locator("[data-import]").set_input_files(tmp_path / "log.json")
    other.get_by_text("4 taken in").wait_for()
    assert len(rows(other, server.address, 2)) == 2
    with other.expect_download() as again:
        other.get_by_role("button", name="Export everything").tap()
    again.value.save_as(tmp_path / "again.json")
    assert (tmp_path / "again.json").read_bytes() == (tmp_path / "log.json").read_bytes()
    (tmp_path / "log.json").write_text((tmp_path / "log.json").read_text("utf-8").replace("cap", "cat"))
    other.locator("[data-import]").set_input_files(tmp_path / "log.json")
    other.get_by_text("Not taken in").wait_for()


# ---------------------------------------------------------------- opened from the page head


def with_the_log_at_hand(page: Page, server: Server) -> Page:
    """Open the first page as a phone with a log does, and wait until the log's script has come; mark the document."""
    keep(page, server.address)
    rows(page, server.address)
    page.goto(server.address)
    page.locator("script[data-records=early]").wait_for(state="attached")
    page.evaluate("document.documentElement.dataset.same = 'yes'")
    return page


def is_same_document(page: Page) -> bool:
    """Return whether no new document came since it was marked."""
    return page.evaluate("document.documentElement.dataset.same") == "yes"


def test_the_log_opens_from_the_first_page_without_a_new_document(phone: BrowserContext, server: Server):
    page = with_the_log_at_hand(visit(phone, server.address), server)
    page.locator("#find").fill("gauge")
    page.get_by_role("link", name="Log", exact=True).tap()
    page.locator("[data-rows] li").wait_for()
    assert is_same_document(page) and page.url == server.address + "log" and page.title().startswith("Weld log")
    assert page.evaluate("document.activeElement.localName") == "h1"
    page.go_back()
    page.locator("#find").wait_for()
    assert is_same_document(page) and page.url == server.address and "log" not in page.title().lower()
    assert page.input_value("#find") == "gauge"  # as it was left
    page.go_forward()
    page.locator("[data-rows] li").wait_for()
    assert is_same_document(page) and page.locator("main").count() == 1


def test_the_way_back_is_the_same_after_the_log_was_loaded_anew(phone: BrowserContext, server: Server):
    page = with_the_log_at_hand(visit(phone, server.address), server)
    page.get_by_role("link", name="Log", exact=True).tap()
    page.locator("[data-rows] li").wait_for()
    page.reload()
    page.locator("[data-rows] li").wait_for()
    page.go_back()
    page.locator("#find").wait_for()
    assert page.locator("[data-log]").count() == 0 and page.url == server.address
    page.go_forward()
    page.locator("[data-rows] li").wait_for()
    page.get_by_role("link", name="Open").tap()
    page.locator("[data-versions] article").wait_for()
    page.go_back()
    page.locator("[data-rows] li").wait_for()


def test_a_page_with_a_form_is_left_for_a_new_document(phone: BrowserContext, server: Server):
    page = visit(phone, server.address)
    keep(page, server.address)
    page.evaluate("document.documentElement.dataset.same = 'yes'")
    page.get_by_role("link", name="Log", exact=True).tap()
    page.locator("[data-rows] li").wait_for()
    assert not is_same_document(page) and page.url == server.address + "log"


def test_an_entry_kept_meanwhile_stands_in_the_log_opened_softly(phone: BrowserContext, server: Server):
    page = with_the_log_at_hand(visit(phone, server.address), server)
    page.get_by_role("link", name="Log", exact=True).tap()
    page.locator("[data-rows] li").wait_for()
    page.go_back()
    page.locator("#find").wait_for()
    other = phone.new_page()
    keep(other, server.address, weld_pass="cap")
    page.get_by_role("link", name="Log", exact=True).tap()
    page.locator("[data-rows] li").nth(1).wait_for()
    assert "cap" in page.locator("[data-rows] li").first.inner_text()
