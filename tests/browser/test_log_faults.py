"""The phone's own log under faults: killed at any moment, its store closed, held, cleared, of another version."""

import json
import os
import random
import re
import signal
import time
from collections.abc import Callable
from contextlib import suppress
from pathlib import Path
from urllib.parse import urlencode

import pytest
from playwright.sync_api import BrowserContext, Page, Playwright, Route, expect

from tests.browser.driving import Server, open_profile, visit, wait_until, wait_until_carried
from tests.browser.test_log import RUN, keep, pair, rows
from tests.faults.counts import count
from tests.faults.phones import revision
from webapp.store import Store

# Gives a test a hand on the page's store: every connection, a failure of the next openings, another version.
STORE = """
{
  const open = IDBFactory.prototype.open;
  window.connections = [];
  window.failures = 0;
  IDBFactory.prototype.open = function (name, version) {
    if (window.failures-- > 0) throw new DOMException('no', 'UnknownError');
    const asked = open.call(this, name, version && version + (window.newer ?? 0));
    asked.addEventListener('success', () => window.connections.push(asked.result));
    return asked;
  };
}
"""
NEWER = "window.newer = 1;"
REFUSED = "NOT kept: this browser refuses to store. What you typed is still here."
CANNOT_OPEN = "This browser does not open the log now."


def fill_in(page: Page, address: str, **changed: str) -> None:
    """Fill the form in as fingers do, and wait for the answer."""
    page.goto(address + "weld-entry")
    for name, text in {**RUN, **changed}.items():
        page.locator(f"#{name}").fill(text.split(" ")[0] if name in ("voltage", "current") else text)
    page.get_by_role("button", name="Keep in the log").wait_for()


def lying_in(page: Page, store: str) -> list[dict[str, object]]:
    """Return what lies in a part of the phone's own store."""
    return page.evaluate(
        """store => new Promise(done => {
          const opening = indexedDB.open('puddlebook');
          opening.onsuccess = () => {
            const asked = opening.result.transaction(store).objectStore(store).getAll();
            asked.onsuccess = () => { opening.result.close(); done(asked.result); };
          };
        })""",
        store,
    )


@pytest.fixture
def crew(tmp_path: Path):
    """A server of one's own, whose records are empty."""
    with Server(tmp_path / "data") as running:
        yield running


# ---------------------------------------------------------------- killed


class Battery:
    """A phone whose browser is killed as by a dead battery: every process at once, nothing written on the way out."""

    def __init__(self, playwright: Playwright, profile: Path, server: Server) -> None:
        self.playwright, self.profile, self.server = playwright, profile, server
        self.context: BrowserContext = None  # type: ignore[assignment]  # until it is on

    def on(self, path: str = "", offline: bool = False) -> Page:
        """Open the browser and a page."""
        self.dies()  # what a test that failed left open
        self.context = open_profile(self.playwright, self.profile, offline=offline)
        return visit(self.context, self.server.address + path)

    def dies(self) -> None:
        """Kill the browser; it is dead when this returns."""
        while found := self._processes():
            for each in found:
                with suppress(ProcessLookupError):
                    os.kill(each, signal.SIGKILL)
            time.sleep(0.05)
        if self.context:
            with suppress(Exception):  # nobody is left to say goodbye to
                self.context.close()

    def _processes(self) -> list[int]:
        wanted = f"--user-data-dir={self.profile}".encode()
        found = []
        for path in Path("/proc").glob("[0-9]*/cmdline"):
            with suppress(OSError):
                if wanted in path.read_bytes().split(b"\0"):
                    found.append(int(path.parent.name))
        return found


@pytest.fixture(scope="module")
def battery(playwright: Playwright, tmp_path_factory: pytest.TempPathFactory):
    """A phone of a crew that carries the book and has one entry, on the server too."""
    with Server(tmp_path_factory.mktemp("data")) as server:
        phone = Battery(playwright, tmp_path_factory.mktemp("profile"), server)
        page = phone.on()
        wait_until_carried(page)
        pair(page, server)
        keep(page, server.address, joint="first")
        page.goto(server.address + "log")
        page.get_by_text("Everything on this phone is on the server too.").wait_for()
        phone.context.close()
        yield phone


def stored(server: Server) -> list[str]:
    """Return the joints in the order of storing; the server is started again."""
    server.kill()
    records = Store(server.data)
    joints = [json.loads(each["body"])["fields"]["joint"] for each in records.after(0, 1000)]
    records.close()
    server.start()
    return joints


def test_f15_killed_while_typing_at_most_the_last_second_is_lost(battery: Battery):
    for turn in range(count(1, 50)):
        page = battery.on("weld-entry")
        page.locator("#joint").tap()
        page.locator("#joint").press("Control+a")
        page.keyboard.type(f"half {turn}")
        page.evaluate("() => new Promise(done => setTimeout(done, 1000))")  # of the page's own seconds
        battery.dies()
        page = battery.on("weld-entry")
        expect(page.locator("#joint")).to_have_value(f"half {turn}")
        battery.context.close()


@pytest.mark.parametrize("pause", [0, 30, 200])
def test_f15_killed_while_saving_it_is_there_whole_or_not_at_all_and_what_was_said_holds(battery: Battery, pause: int):
    for turn in range(count(1, 50)):
        name = f"saving {pause} {turn}"
        page = battery.on()
        battery.context.set_offline(True)
        fill_in(page, battery.server.address, joint=name)
        page.wait_for_timeout(1000)
        page.get_by_role("button", name="Keep in the log").tap()
        page.wait_for_timeout(pause)
        said = page.locator("[data-record-said]").inner_text()
        battery.dies()
        page = battery.on("log")
        page.locator("[data-rows] li").first.wait_for()
        shown = [row for row in page.locator("[data-rows] li").all_inner_texts() if name in row]
        revisions = [each for each in lying_in(page, "revisions") if name in str(each["body"])]
        assert len(shown) == len(revisions) <= 1
        assert shown or not said, "it said that it was kept"
        page.goto(battery.server.address + "weld-entry")
        expect(page.locator("#joint")).to_have_value(name)
        battery.context.close()


def test_f15_killed_once_it_is_kept_it_is_there_and_waits_to_be_sent(battery: Battery):
    for turn in range(count(1, 50)):
        page = battery.on()
        battery.context.set_offline(True)
        keep(page, battery.server.address, joint=f"queued {turn}")
        battery.dies()
        page = battery.on(offline=True)  # from the first page on: it would send what waits
        assert f"queued {turn}" in rows(page, battery.server.address)[0]
        assert len(lying_in(page, "outbox")) >= 1
        battery.context.set_offline(False)
        page.get_by_role("button", name="Send now").tap()
        page.get_by_text("Everything on this phone is on the server too.").wait_for()
        battery.context.close()
        assert stored(battery.server).count(f"queued {turn}") == 1


def hold_messages(context: BrowserContext, reach_server: bool) -> list[Route]:
    """Never let an answer come back; return the list into which the messages that were sent go."""
    held: list[Route] = []

    def hold(route: Route) -> None:
        if reach_server:
            route.fetch()
        held.append(route)

    context.route("**/sync", hold)
    return held


@pytest.mark.parametrize("point", ["sending", "on ack"])
def test_f15_killed_while_sending_and_on_the_acknowledgement_it_arrives_once(battery: Battery, point: str):
    for turn in range(count(1, 50)):
        page = battery.on()
        held = hold_messages(battery.context, reach_server=point == "on ack")
        keep(page, battery.server.address, joint=f"{point} {turn}")
        wait_until(page, held.__len__)
        battery.dies()
        page = battery.on("log")
        page.get_by_text("Everything on this phone is on the server too.").wait_for()
        assert lying_in(page, "outbox") == []
        battery.context.close()
        assert stored(battery.server).count(f"{point} {turn}") == 1


def test_f15_killed_after_deleting_it_stays_deleted_and_can_be_brought_back(battery: Battery):
    for turn in range(count(1, 50)):
        page = battery.on()
        keep(page, battery.server.address, joint=f"gone {turn}")
        assert f"gone {turn}" in rows(page, battery.server.address)[0]
        page.get_by_role("link", name="Open").first.tap()
        page.get_by_role("button", name="Delete").tap()
        page.get_by_text("Deleted. It stays readable here.").wait_for()
        entry = page.url
        battery.dies()
        page = battery.on("log")
        page.locator("[data-rows] li").first.wait_for()
        assert f"gone {turn}" not in page.locator("[data-rows]").inner_text()
        page.goto(entry)
        page.get_by_text("Deleted. It stays readable here.").wait_for()
        page.get_by_role("button", name="Bring back").wait_for()
        battery.context.close()


# ---------------------------------------------------------------- the store closed, held, of another version


def test_f16_a_connection_closed_under_us_is_opened_again(phone: BrowserContext, server: Server):
    phone.add_init_script(STORE)
    page = visit(phone, server.address)
    for turn in range(count(2, 20)):
        fill_in(page, server.address, joint=f"closed {turn}")
        assert page.evaluate("connections.length") > 0
        page.evaluate("connections.forEach(each => each.close())")
        page.get_by_role("button", name="Keep in the log").tap()
        page.get_by_text("Kept on this phone.").wait_for()
    assert len(rows(page, server.address, count(2, 20))) == count(2, 20)


def test_f16_an_opening_that_fails_once_is_told_or_made_again(phone: BrowserContext, server: Server):
    phone.add_init_script(STORE)
    page = visit(phone, server.address)
    for turn in range(count(2, 20)):
        fill_in(page, server.address, joint=f"failed {turn}")
        page.evaluate("() => { connections.forEach(each => each.close()); failures = 1; }")
        page.get_by_role("button", name="Keep in the log").tap()
        said = page.locator("[data-record-said]")
        expect(said).to_have_text(re.compile(r"Kept on this phone\.|NOT kept"))
        if "NOT kept" in said.inner_text():
            assert page.input_value("#joint") == f"failed {turn}"
            page.get_by_role("button", name="Keep in the log").tap()
            page.get_by_text("Kept on this phone.").wait_for()
    assert len(rows(page, server.address, count(2, 20))) == count(2, 20)


def test_f16_a_store_held_by_another_tab_is_told_and_used_once_it_is_free(phone: BrowserContext, server: Server):
    page = visit(phone, server.address)
    keep(page, server.address)
    holder = visit(phone, server.address + "about")
    holder.evaluate(
        """() => new Promise(done => {
          window.asked = indexedDB.open('puddlebook');  // kept, or it would be cleared away and closed
          asked.onsuccess = () => done();
        })"""
    )
    newer = phone.new_page()
    newer.add_init_script(NEWER + STORE)
    newer.goto(server.address + "log")
    newer.locator("[data-exchange]", has_text=CANNOT_OPEN).wait_for()
    newer.goto(server.address + "entry#00000000-0000-4000-8000-000000000000")
    newer.locator("[data-store-said]", has_text=CANNOT_OPEN).wait_for()
    fill_in(newer, server.address, joint="held")
    newer.get_by_role("button", name="Keep in the log").tap()
    newer.get_by_text(REFUSED + " Close the other tabs").wait_for()
    assert newer.input_value("#joint") == "held"
    holder.close()
    wait_until(newer, lambda: newer.evaluate("connections.length"))  # the opening that waited has come through
    newer.get_by_role("button", name="Keep in the log").tap()
    newer.get_by_text("Kept on this phone.").wait_for()
    assert len(rows(newer, server.address, 2)) == 2


def test_f20_a_newer_store_opens_beside_an_old_tab_which_says_so_and_loses_nothing(phone: BrowserContext, server):
    old = visit(phone, server.address)
    keep(old, server.address, joint="before")
    fill_in(old, server.address, joint="half way")
    newer = phone.new_page()
    newer.add_init_script(NEWER + STORE)
    began = time.monotonic()
    assert "before" in rows(newer, server.address)[0]
    assert time.monotonic() - began < 5.0
    old.get_by_role("button", name="Keep in the log").tap()
    old.get_by_text(REFUSED + " Close the other tabs").wait_for()
    assert old.input_value("#joint") == "half way"
    old.goto(server.address + "log")
    old.locator("[data-exchange]", has_text=CANNOT_OPEN).wait_for()
    old.add_init_script(NEWER + STORE)  # loaded anew, it is the newer one too
    old.goto(server.address + "weld-entry")
    expect(old.locator("#joint")).to_have_value("half way")
    old.get_by_role("button", name="Keep in the log").tap()
    old.get_by_text("Kept on this phone.").wait_for()
    assert len(rows(newer, server.address, 2)) == 2


# ---------------------------------------------------------------- cleared, and written by a newer Puddlebook


@pytest.mark.parametrize("cleared", ["all", "indexeddb"])
def test_f18_after_storage_was_cleared_it_says_so_and_every_sent_record_comes_back(phone, crew: Server, cleared: str):
    page = visit(phone, crew.address)
    pair(page, crew)
    for turn in range(3):
        keep(page, crew.address, weld_pass=f"pass {turn}")
    page.goto(crew.address + "log")
    page.get_by_role("button", name="Send now").tap()
    page.get_by_text("Everything on this phone is on the server too.").wait_for()
    page.goto("about:blank")
    origin = crew.address.rstrip("/")
    session = phone.new_cdp_session(page)
    session.send("Storage.clearDataForOrigin", {"origin": origin, "storageTypes": cleared})
    page.goto(crew.address + "log")
    if cleared == "all":
        page.get_by_text("Nothing here yet.").wait_for()
        page.get_by_text("On this phone alone: it is in no crew.").wait_for()
        pair(page, crew)
    for _ in range(50):
        page.goto(crew.address + "log")
        page.locator("[data-rows] li, [data-empty]:not([hidden])").first.wait_for()
        if page.locator("[data-rows] li").count() == 3:
            break
        page.wait_for_timeout(200)
    shown = page.locator("[data-rows]").inner_text()
    assert [f"pass {turn}" in shown for turn in range(3)] == [True] * 3


def test_f29_an_entry_of_a_newer_schema_is_listed_kept_byte_for_byte_and_not_edited(
    phone: BrowserContext,
    crew: Server,
    tmp_path: Path,
):
    body = json.dumps({"kind": "weld-entry", "schema": 2, "build": "f" * 10, "joints": ["a", "caf\u00e9"], "n": 1.50})
    record = revision(random.Random("newer"), body=body)
    crew.kill()
    records = Store(crew.data)
    records.add([record], "newer phone")
    records.close()
    crew.start()
    page = visit(phone, crew.address)
    pair(page, crew)
    page.goto(crew.address + "log")
    page.get_by_role("button", name="Send now").tap()
    page.get_by_text("Everything on this phone is on the server too.").wait_for()
    [row] = rows(page, crew.address)
    assert "Written by a newer Puddlebook: update to read it." in row
    assert page.get_by_role("link", name="Same again").count() == 0
    with page.expect_download() as download:
        page.get_by_role("button", name="Export everything").tap()
    download.value.save_as(tmp_path / "log.json")
    [exported] = json.loads((tmp_path / "log.json").read_text("utf-8"))["revisions"]
    assert exported == record
    page.get_by_role("link", name="Open").tap()
    page.get_by_text("Written by a newer Puddlebook: update to read it.").wait_for()
    for name in ("Correct", "Same again"):
        assert page.get_by_role("link", name=name).count() == 0
    assert page.get_by_role("button", name="Delete").count() == 0


# ---------------------------------------------------------------- two tabs, and anything in any order


def open_entry(page: Page, address: str, entry: object) -> None:
    """Open an entry's page anew; it is told apart by what follows the #, which alone loads nothing."""
    page.goto(address + "about")
    page.goto(address + f"entry#{entry}")
    page.locator("[data-versions] article").first.wait_for()


def correct(page: Page, joint: str) -> None:
    """Go on from an entry to its correction, with another joint in it, and do not keep it yet."""
    page.get_by_role("link", name="Correct").tap()
    page.locator("#joint").fill(joint)


def keep_correction(page: Page) -> str:
    """Keep it, and return what the page says of it."""
    page.get_by_role("button", name="Keep the correction").tap()
    said = page.locator("[data-record-said]")
    expect(said).to_have_text(re.compile(r"^Kept"))
    return said.inner_text()


def test_f22_the_second_of_two_tabs_that_correct_one_entry_is_told_and_both_versions_stand(phone, server: Server):
    one, other = visit(phone, server.address), visit(phone, server.address)
    for turn in range(count(1, 20)):
        keep(one, server.address, joint=f"first {turn}")
        rows(one, server.address)
        [entry] = {each["id"] for each in lying_in(one, "rows") if f"first {turn}" in str(each["fields"])}
        for tab in (one, other):
            open_entry(tab, server.address, entry)
            correct(tab, f"{'one' if tab is one else 'other'} {turn}")
        assert keep_correction(one) == "Kept on this phone."
        assert keep_correction(other).startswith("Kept. Somebody changed this meanwhile: both versions stand")
        assert "Two versions stand side by side" in rows(one, server.address)[0]
        one.get_by_role("link", name="Open").first.tap()
        one.locator("[data-versions] article").nth(2).wait_for()
        shown = one.locator("[data-versions] article").all_inner_texts()
        assert sorted((f"one {turn}" in each) + 2 * (f"other {turn}" in each) for each in shown) == [0, 1, 2]
        assert one.get_by_role("button", name="Keep this version").count() == 2
        one.locator("article", has_text=f"other {turn}").get_by_role("button", name="Keep this version").tap()
        expect(one.get_by_role("button", name="Keep this version")).to_have_count(0)
        [row] = [each for each in rows(one, server.address) if f"other {turn}" in each]
        assert "Two versions" not in row


# The phone's clock, by as much as was said last.
SKEWED = """{
  const Right = Date;
  const skew = () => { try { return Number(localStorage.getItem('skew')); } catch { return 0; } };
  window.Date = class extends Right {
    constructor(...given) { given.length ? super(...given) : super(Right.now() + skew()); }
    static now() { return Right.now() + skew(); }
  };
}"""
A_DAY_MS = 86_400_000
ACTIONS = ("create", "create", "edit", "edit", "delete", "choose", "send", "kill", "reload", "line", "clock", "tab")


class Careless:
    """A phone to which anything happens in any order; it remembers what its screen said was kept."""

    def __init__(self, battery: Battery, chance: random.Random, name: str) -> None:
        self.battery, self.chance, self.name = battery, chance, name
        self.address = battery.server.address
        self.kept: list[str] = []
        self.online = True
        self.start()
        wait_until_carried(self.tabs[0])
        pair(self.tabs[0], battery.server)
        battery.context.close()  # a killed browser may lose a cookie of the last half minute
        self.start()

    def start(self) -> None:
        """Open the browser, on which nothing is open."""
        page = self.battery.on(offline=not self.online)
        self.battery.context.add_init_script(SKEWED)
        self.tabs = [page]

    def does(self, action: str) -> None:
        """Let something happen, in one of the tabs."""
        page = self.chance.choice(self.tabs)
        if action == "create":
            name = self._new_name()
            page.goto(self.address + "weld-entry?" + urlencode({**RUN, "joint": name}))
            page.get_by_role("button", name="Keep in the log").tap()
            page.get_by_text("Kept on this phone.").wait_for()
            self.kept.append(name)
        elif action in ("edit", "delete", "choose"):
            self._change(page, action)
        elif action == "send":
            page.goto(self.address + "log")
            page.get_by_role("button", name="Send now").tap()
        elif action == "kill":
            self.battery.dies()
            self.start()
        elif action == "reload":
            page.reload()
        elif action == "line":
            self.online = not self.online
            self.battery.context.set_offline(not self.online)
        elif action == "clock":
            page.evaluate("by => localStorage.setItem('skew', by)", str(self.chance.choice((-A_DAY_MS, 0, A_DAY_MS))))
        elif len(self.tabs) < 3:
            self.tabs.append(visit(self.battery.context, self.address + "log"))

    def _new_name(self) -> str:
        return f"{self.name} {self.chance.getrandbits(40):x}"

    def _change(self, page: Page, action: str) -> None:
        found = sorted((each for each in lying_in(page, "rows")), key=lambda each: str(each["id"]))
        if action == "choose":
            found = [each for each in found if int(str(each["versions"])) > 1]
        if not found:
            return
        row = self.chance.choice(found)
        name = self._new_name()
        open_entry(page, self.address, row["id"])
        # What the page shows counts: it may have been deleted elsewhere since the row was read.
        if action == "edit" and page.get_by_role("link", name="Correct").is_visible():
            correct(page, name)
            keep_correction(page)
            self.kept.append(name)
            return
        if action == "choose":
            # Whatever came in meanwhile, there may be nothing to choose any more.
            for button in page.get_by_role("button", name="Keep this version").all()[:1]:
                button.tap()
        elif row["deleted"]:
            page.get_by_role("button", name="Bring back").or_(page.get_by_role("button", name="Delete")).tap()
        else:
            page.get_by_role("button", name="Delete").or_(page.get_by_role("button", name="Bring back")).tap()

    def settles(self, wanted: Callable[[], bool]) -> None:
        """Have a signal again, and exchange until it is so; a server called too often asks to wait up to a minute."""
        self.online = True
        self.battery.context.set_offline(False)
        for tab in self.tabs[1:]:
            tab.close()
        self.tabs = self.tabs[:1]
        self.tabs[0].goto(self.address + "log")
        for _ in range(100):
            self.tabs[0].get_by_role("button", name="Send now").tap()
            if wanted():
                return
            self.tabs[0].wait_for_timeout(1000)
        raise AssertionError(self.tabs[0].locator("main").inner_text())

    def sent(self) -> bool:
        """Return whether nothing waits to be sent."""
        return lying_in(self.tabs[0], "outbox") == []

    def holds(self) -> dict[tuple[str, str], dict[str, object]]:
        """Return every revision on the phone."""
        return {(str(each["id"]), str(each["rev"])): each for each in lying_in(self.tabs[0], "revisions")}


@pytest.mark.parametrize("seed", range(count(2, 10)))
def test_f10_anything_in_any_order_on_two_phones_ends_with_equal_stores(playwright, crew: Server, tmp_path: Path, seed):
    chance = random.Random(seed)
    phones = [Careless(Battery(playwright, tmp_path / name, crew), chance, name) for name in ("a", "b")]
    done = []
    try:
        for _ in range(count(12, 100)):
            done.append((chance.randrange(2), chance.choice(ACTIONS)))
            phones[done[-1][0]].does(done[-1][1])
        for each in phones:
            each.settles(each.sent)
        crew.kill()
        records = Store(crew.data)
        stored = {(each["id"], each["rev"]): each for each in records.after(0, 10_000)}
        records.close()
        crew.start()
        for each in phones:
            each.settles(lambda each=each: each.holds() == stored)  # type: ignore[misc]
        joints = [json.loads(each["body"])["fields"]["joint"] for each in stored.values()]
        assert [name for each in phones for name in each.kept if name not in joints] == [], (seed, done)
    finally:
        for each in phones:
            each.battery.dies()


def test_f21_a_tab_that_found_another_one_sending_looks_again_by_itself(phone: BrowserContext, crew: Server):
    page = visit(phone, crew.address)
    pair(page, crew)
    other = visit(phone, crew.address + "about")
    other.evaluate(
        """() => new Promise(held => {
          navigator.locks.request('puddlebook exchange', () => new Promise(free => { window.free = free; held(); }));
        })"""
    )
    keep(page, crew.address)
    page.goto(crew.address + "log")
    page.get_by_text("1 not on the server yet. Another tab").wait_for()
    other.evaluate("free()")
    page.get_by_text("Everything on this phone is on the server too.").wait_for()
