"""Jobs as a welder lives with them: from the call to a closed job, changed, shared, found again; with no signal too."""

import json
import re
import uuid
from collections.abc import Callable
from pathlib import Path
from typing import Any
from urllib.parse import parse_qs, urlencode, urlsplit

import pytest
from playwright.sync_api import BrowserContext, Dialog, Page, expect

from tests.browser.driving import NoSignal, Server, Watch, visit, wait_until_carried
from tests.browser.test_axe import AXE, RULES, RUN
from tests.browser.test_log import pair
from tests.browser.test_touch import RUNS_OFF, TARGETS, too_close, too_small
from webapp.revisions import revision_name

CALL = {
    "title": "Loader bucket ear",
    "broken": "Ear cracked at the pin",
    "customer": "B. Hand",
    "place": "Quarry road",
    "base_metal": "mild-steel",
    "joints-1-name": "ear",
    "joints-1-thickness": "1/4 in",
    "joints-1-weld_length": "6 in",
}
LEADS = "[data-cards] a[data-takes*='joints-1-thickness']"

Record = dict[str, Any]


def call(page: Page, address: str, **changed: str) -> str:
    """Keep a new job from its address, as the form does when it is filled in; return its id."""
    fields = {name.replace("__", "-"): text for name, text in {**CALL, **changed}.items()}
    page.goto(address + "job?" + urlencode({name: text for name, text in fields.items() if text}))
    page.get_by_role("button", name="Keep the job").tap()
    page.get_by_text("Kept on this phone.").wait_for()
    return str(page.get_by_role("link", name="Open the job").get_attribute("href")).partition("#")[2]


def open_job(page: Page, address: str, id: str) -> None:
    """Open a job's own page, and wait until it was worked out anew."""
    page.goto("about:blank")
    page.goto(f"{address}work#{id}")
    page.locator("[data-cards][data-worked-out=yes]").wait_for()


def titles(page: Page, count: int) -> list[str]:
    """Return the titles in the list, once so many and no more are there."""
    page.wait_for_function("count => document.querySelectorAll('[data-rows] li').length === count", arg=count)
    return page.locator("[data-rows] .what").all_inner_texts()


def follow(record: Record | None, fields: dict[str, str], at: str = "2026-05-01T08:00:00.000Z") -> Record:
    """Return a revision of a job, the first or one that follows another."""
    made: Record = {
        "id": record["id"] if record else str(uuid.uuid4()),
        "parents": [record["rev"]] if record else [],
        "device": str(uuid.uuid4()),
        "seq_on_device": 1,
        "saved_at": at,
        "deleted": False,
        "body": json.dumps({"kind": "job", "schema": 1, "build": "0123456789", "fields": fields}),
    }
    made["rev"] = revision_name(made)
    return made


def bring(page: Page, address: str, folder: Path, *records: Record) -> None:
    """Put records on the page's phone, as another phone's export brings them."""
    path = folder / "brought.json"
    path.write_text(json.dumps({"puddlebook-log": 1, "revisions": records, "photos": []}), "utf-8")
    page.goto(address + "log")
    page.locator("[data-import]").set_input_files(path)
    page.get_by_text(f"{len(records)} taken in").wait_for()


def test_a_job_is_kept_and_opened_with_no_signal(phone: BrowserContext, tmp_path: Path):
    with Server(tmp_path / "data") as server:
        page = visit(phone, server.address)
        wait_until_carried(page)
        server.kill()
        with NoSignal(server, Watch(phone)):
            page.goto(server.address + "jobs")
            page.get_by_text("No job yet.").wait_for()
            id = call(page, server.address)
            page.get_by_role("link", name="Open the job").tap()
            page.locator("[data-cards][data-worked-out=yes]").wait_for()
            assert page.locator("h1").inner_text() == "Loader bucket ear"
            assert page.locator(".state").first.inner_text().startswith("Open")
            assert page.locator("[data-different]").is_hidden()
            page.goto(server.address + "jobs")
            assert titles(page, 1) == ["Loader bucket ear"]
            page.locator("[data-rows]").get_by_role("link", name="Open").tap()
            page.locator("[data-cards][data-worked-out=yes]").wait_for()
            assert page.url.endswith(f"work#{id}")


def test_a_changed_thickness_says_what_it_changes_before_and_after_it_is_kept(phone: BrowserContext, server: Server):
    page = visit(phone, server.address)
    open_job(page, server.address, call(page, server.address))
    page.get_by_role("link", name="Change", exact=True).tap()
    page.locator("#joints-1-thickness").fill("3/16")
    changed = page.locator("[data-record-changed]")
    changed.get_by_text("Joint 1: ear: Leg").wait_for()
    before, after = changed.locator("li", has_text="Joint 1: ear: Leg").locator("del, ins").all_inner_texts()
    assert before.startswith("0.25 in") and after.startswith("0.188 in")
    page.get_by_role("button", name="Keep the change").tap()
    page.get_by_text("Kept on this phone.").wait_for()
    page.get_by_role("link", name="Open the job").tap()
    page.locator("[data-cards][data-worked-out=yes]").wait_for()
    moved = page.locator("[data-moved]")
    moved.locator("summary").tap()
    assert "0.188 in" in moved.inner_text() and "0.25 in" in moved.inner_text()
    page.locator("[data-history] summary").tap()
    page.locator("[data-history] article").wait_for()
    assert "1/4 in" in page.locator("[data-history] article").inner_text()
    page.goto(server.address + "jobs")
    assert titles(page, 1) == ["Loader bucket ear"]


def test_what_is_changed_in_a_question_is_taken_back_into_the_job(phone: BrowserContext, server: Server):
    page = visit(phone, server.address)
    id = call(page, server.address)
    open_job(page, server.address, id)
    page.locator(LEADS).first.tap()
    page.get_by_text("From the job: Loader bucket ear").wait_for()
    take = page.get_by_role("button", name="Take into the job")
    assert take.is_hidden()  # nothing was changed
    page.locator("#thickness").fill("3/16")
    take.wait_for()
    page.wait_for_url("**/settings?*3/16*")  # it has settled, and what it was opened for is not lost
    page.reload()
    take.tap()  # one tap keeps it
    page.wait_for_url(f"{server.address}work#{id}")
    page.locator("[data-cards][data-worked-out=yes]").wait_for()
    assert "0.188 in" in " ".join(page.locator("[data-cards]").inner_text().split())
    assert page.locator("[data-different]").is_hidden(), "what it says was kept with it"
    undo = page.get_by_role("button", name="Undo the last change")
    undo.tap()
    page.locator("[data-cards][data-worked-out=yes]", has_text=re.compile(r"0\.25\sin")).wait_for()
    undo.tap()  # and the other way
    page.locator("[data-cards][data-worked-out=yes]", has_text=re.compile(r"0\.188\sin")).wait_for()
    close, delete = (page.get_by_role("button", name=name).bounding_box() for name in ("Close the job", "Delete"))
    assert close and delete and delete["y"] - close["y"] - close["height"] >= 24
    # What stood in the form as it came is in the record; a line that waits for a field leads to it.
    page.get_by_role("link", name="Waiting for: Power on site").tap()
    page.get_by_role("heading", name="Change the job: Loader bucket ear").wait_for()
    assert page.evaluate("document.activeElement.name") == "power"
    assert page.input_value("#joints-1-thickness") == "3/16" and page.input_value("#customer") == "B. Hand"
    assert {"joints-1-joint": ["fillet"], "joints-1-position": ["flat"]}.items() <= parse_qs(
        urlsplit(page.url).query
    ).items()
    page.goto(server.address + "jobs")
    assert titles(page, 1) == ["Loader bucket ear"]


def test_the_back_button_goes_back_through_what_was_opened(phone: BrowserContext, server: Server):
    page = visit(phone, server.address)
    call(page, server.address)
    page.goto(server.address + "jobs")
    page.locator("[data-rows]").get_by_role("link", name="Open").tap()
    page.locator("[data-cards][data-worked-out=yes]").wait_for()
    page.locator(LEADS).first.tap()
    page.get_by_text("From the job: Loader bucket ear").wait_for()
    page.go_back()
    page.locator("[data-cards][data-worked-out=yes]").wait_for()
    assert page.locator("h1").inner_text() == "Loader bucket ear"
    page.go_back()
    assert titles(page, 1) == ["Loader bucket ear"]


def test_two_phones_change_one_job_and_one_version_is_chosen(new_phone: Callable[..., BrowserContext], tmp_path: Path):
    with Server(tmp_path / "data") as crew:
        mine, yours = visit(new_phone(), crew.address), visit(new_phone(), crew.address)
        id = call(mine, crew.address)
        pair(mine, crew)
        pair(yours, crew)
        yours.goto(crew.address + "jobs")
        assert titles(yours, 1) == ["Loader bucket ear"]
        for page, thickness in ((mine, "3/16"), (yours, "5/16")):
            open_job(page, crew.address, id)
            page.context.set_offline(True)
            page.get_by_role("link", name="Change", exact=True).tap()
            page.locator("#joints-1-thickness").fill(thickness)
            page.get_by_role("button", name="Keep the change").tap()
            page.get_by_text("Kept on this phone.").wait_for()
        for page in (mine, yours, mine):
            page.context.set_offline(False)
            _send(page, crew)
        open_job(mine, crew.address, id)
        beside = mine.locator("[data-two]")
        beside.wait_for()
        line = beside.locator("tr", has_text="Thickness 1")
        assert sorted(line.locator("td").all_inner_texts()) == ["3/16 in", "5/16 in"]
        assert "Title" not in beside.inner_text()  # what is alike is left out
        place = line.locator("td").all_inner_texts().index("5/16 in")
        beside.get_by_role("button", name="Keep this version").nth(place).tap()
        beside.wait_for(state="hidden")
        _send(mine, crew)
        _send(yours, crew)
        open_job(yours, crew.address, id)
        assert yours.locator("[data-two]").is_hidden()
        yours.get_by_role("link", name="Change", exact=True).tap()
        yours.locator("#joints-1-thickness").wait_for()
        assert yours.input_value("#joints-1-thickness") == "5/16"


def _send(page: Page, crew: Server) -> None:
    page.goto(crew.address + "log")
    page.get_by_role("button", name="Send now").tap()
    page.get_by_text("Everything on this phone is on the server too.").wait_for()


PLANTED = json.dumps(["Planted", ["wire", "Wire", "as it was reckoned then"]])


def test_a_closed_job_keeps_what_it_said_and_an_open_one_says_what_is_different(
    phone: BrowserContext, server: Server, tmp_path: Path
):
    page = visit(phone, server.address)
    closed = follow(None, {**CALL, "status": "closed", "closed_at": "2026-05-02T08:00:00Z", "card_load": PLANTED})
    bring(page, server.address, tmp_path, closed)
    page.goto(f"{server.address}work#{closed['id']}")
    page.get_by_text("as it was reckoned then").wait_for()
    page.get_by_text("It keeps its numbers.").wait_for()
    page.wait_for_timeout(1500)  # time enough to be worked out anew, which must not happen
    assert page.locator("[data-cards] [data-card]").count() == 1
    assert page.get_by_role("link", name="Change", exact=True).is_hidden()
    page.get_by_role("button", name="Open it again").tap()
    page.locator("[data-cards][data-worked-out=yes]").wait_for()
    different = page.locator("[data-different]")
    assert "as it was reckoned then" in different.inner_text()
    assert page.locator("[data-cards]").get_by_text("as it was reckoned then").count() == 0
    # What stands there when it is closed is what it keeps.
    said = page.locator("[data-cards] [data-card=load]").inner_text()
    page.get_by_role("button", name="Close the job").tap()
    page.get_by_text("It keeps its numbers.").wait_for()
    page.reload()
    page.get_by_text("It keeps its numbers.").wait_for()
    assert page.locator("[data-cards] [data-card=load]").inner_text().split() == said.split()


def test_a_deleted_job_can_be_brought_back(phone: BrowserContext, server: Server):
    page = visit(phone, server.address)
    id = call(page, server.address)
    open_job(page, server.address, id)
    page.get_by_role("button", name="Delete").tap()
    page.get_by_text("Deleted. It stays readable here.").wait_for()
    page.goto(server.address + "jobs")
    page.get_by_text("No job yet.").wait_for()
    page.goto(f"{server.address}work#{id}")
    page.get_by_role("button", name="Bring back").tap()
    page.locator("[data-cards][data-worked-out=yes]").wait_for()
    page.goto(server.address + "jobs")
    assert titles(page, 1) == ["Loader bucket ear"]


def test_jobs_are_found_by_words_and_by_whether_they_are_open(phone: BrowserContext, server: Server, tmp_path: Path):
    page = visit(phone, server.address)
    made = [
        follow(
            None, {"title": f"Gate {n}", "customer": "Holm", "status": "closed" if n % 2 else "open"}, f"2026-05-0{n}"
        )
        for n in range(1, 8)
    ]
    other = follow(None, {"title": "Trailer tongue", "customer": "Holmes", "place": "Mill", "status": "open"})
    bring(page, server.address, tmp_path, *made, other)
    page.goto(server.address + "jobs")
    assert titles(page, 8)[0] == "Gate 7"
    find, show = page.get_by_label("Find by title, customer, place"), page.get_by_label("Show")
    find.fill("GATE hol")
    assert titles(page, 7) == [f"Gate {n}" for n in range(7, 0, -1)]
    show.select_option("closed")
    assert titles(page, 4) == ["Gate 7", "Gate 5", "Gate 3", "Gate 1"]
    find.fill("mill holm")
    page.get_by_text("No job has these words.").wait_for()
    show.select_option("")
    assert titles(page, 1) == ["Trailer tongue"]


def test_a_new_job_starts_like_an_old_one_without_whose_it_was(phone: BrowserContext, server: Server):
    page = visit(phone, server.address)
    first = call(page, server.address)
    page.goto(server.address + "jobs")
    page.get_by_role("link", name="Same as last time").tap()
    page.locator("#title").wait_for()
    assert page.input_value("#joints-1-thickness") == "1/4" and page.input_value("#customer") == ""
    page.locator("#title").fill("The other ear")
    page.get_by_role("button", name="Keep the job").tap()
    page.get_by_text("Kept on this phone.").wait_for()
    second = str(page.get_by_role("link", name="Open the job").get_attribute("href")).partition("#")[2]
    assert second != first
    page.goto(server.address + "jobs")
    assert titles(page, 2) == ["The other ear", "Loader bucket ear"]
    page.goto(server.address + "job")  # and the next one starts empty
    assert page.input_value("#title") == ""


def test_half_a_change_of_a_job_is_there_again_and_is_of_that_job_alone(phone: BrowserContext, server: Server):
    page = visit(phone, server.address)
    id = call(page, server.address)
    open_job(page, server.address, id)
    page.get_by_role("link", name="Change", exact=True).tap()
    page.locator("#joints-1-name").fill("left ear")
    page.wait_for_timeout(1000)
    page.goto(server.address + "job")
    assert page.input_value("#title") == ""
    open_job(page, server.address, id)
    page.get_by_role("link", name="Change", exact=True).tap()
    expect(page.locator("#joints-1-name")).to_have_value("left ear")


# ---------------------------------------------------------------- a pass, taps


class Taps:
    """Taps on a page, counted."""

    def __init__(self, page: Page) -> None:
        self.page = page
        self.count = 0

    def on(self, role: Any, name: str) -> None:
        """Tap what is called so."""
        self.page.get_by_role(role, name=name, exact=True).first.tap()
        self.count += 1

    def at(self, selector: str) -> None:
        """Tap an element, a choice in a list counted as two: one opens it."""
        self.page.locator(selector).first.tap()
        self.count += 1

    def choose(self, selector: str, value: str) -> None:
        """Choose from a list: one tap opens it, one picks."""
        self.page.locator(selector).select_option(value)
        self.count += 2


def test_a_new_job_is_twelve_taps_from_its_settings_and_a_pass_four(phone: BrowserContext, server: Server):
    page = visit(phone, server.address)
    taps = Taps(page)
    taps.on("link", "Jobs")
    taps.on("link", "New job")
    taps.at("#title")
    page.keyboard.type("Ear")
    taps.choose("#base_metal", "mild-steel")
    taps.at("#joints-1-thickness")
    page.keyboard.type("0.25")
    page.locator("[data-card=joint-1] [data-line=voltage]").wait_for()
    taps.on("button", "Keep the job")
    page.get_by_text("Kept on this phone.").wait_for()
    taps.on("link", "Open the job")
    page.locator("[data-cards][data-worked-out=yes]").wait_for()
    taps.at(LEADS)
    page.locator(".answered").wait_for()
    assert taps.count <= 12
    page.get_by_role("link", name="Back to the job").tap()
    page.locator("[data-cards][data-worked-out=yes]").wait_for()
    taps.count = 0
    taps.on("link", "Log a pass")
    for name, number in (("voltage", "24"), ("current", "180"), ("weld_length", "6"), ("arc_time", "0.5")):
        page.locator(f"#{name}").fill(number)  # tapping a box to type into it belongs to its number
    page.locator(".answered .number b").wait_for()
    taps.on("button", "Keep in the log")
    page.get_by_text("Kept on this phone.").wait_for()
    taps.on("link", "Open the job")
    page.locator("[data-entries] li").wait_for()
    assert taps.count <= 4
    assert "17.3 kJ/in" in page.locator("[data-entries] li").inner_text()


def test_passes_of_a_job_carry_what_is_known_and_add_up(phone: BrowserContext, server: Server):
    page = visit(phone, server.address)
    id = call(page, server.address, joints__2__name="gusset", joints__2__thickness="3/16 in")
    open_job(page, server.address, id)
    for name in ("ear", "gusset"):
        page.get_by_role("link", name=f"Log a pass: {name}").tap()
        page.locator("#joint").wait_for()
        assert page.input_value("#joint") == name and page.input_value("#job") == "Loader bucket ear"
        page.locator("#weld_length").fill("6")
        page.locator("#arc_time").fill("0.5")
        page.locator("#wire_feed_speed").fill("300")
        page.locator("#wire_diameter").fill("0.035")
        page.get_by_role("button", name="Keep in the log").tap()
        page.get_by_text("Kept on this phone.").wait_for()
        page.get_by_role("link", name="Open the job").tap()
        page.locator("[data-entries] li").first.wait_for()
    page.locator("[data-entries] li").nth(1).wait_for()
    page.get_by_text("Used so far: 0.0").wait_for()
    page.locator("[data-entries] li").first.get_by_role("link", name="Open").tap()
    page.get_by_role("button", name="Delete").tap()
    page.get_by_text("Deleted. It stays readable here.").wait_for()
    open_job(page, server.address, id)
    page.locator("[data-entries] li").first.wait_for()
    assert page.locator("[data-entries] li").count() == 1
    again = page.locator("[data-entries] li").get_by_role("link", name="Same again").get_attribute("href")
    assert str(again).endswith(f"job={id}") and parse_qs(urlsplit(str(again)).query)["joint"] == ["ear"]


def test_a_price_lies_in_its_job_and_follows_it_but_not_over_what_was_typed(phone: BrowserContext, server: Server):
    page = visit(phone, server.address)
    id = call(page, server.address)
    open_job(page, server.address, id)
    page.get_by_role("link", name="Price", exact=True).tap()
    page.locator("#wire_mass").wait_for()
    wire, gas = page.input_value("#wire_mass"), page.input_value("#gas_volume")
    assert float(wire) > 0 and float(gas) > 0
    for name, number in (
        ("labor_rate", "90"),
        ("welding_time", "2"),
        ("wire_price", "4"),
        ("gas_volume", "7"),
        ("fill_price", "60"),
        ("fill_volume", "300"),
    ):
        page.locator(f"#{name}").fill(number)
    page.get_by_role("button", name="Keep the price with the job").tap()
    page.get_by_text("Kept on this phone.").wait_for()
    page.get_by_role("link", name="Open the job").tap()
    page.locator("[data-cards][data-worked-out=yes]").wait_for()
    assert "180.00" in page.locator("[data-price-cards]").inner_text()
    assert page.locator("h1").inner_text() == "Loader bucket ear"
    # Twice as long a weld takes twice the wire; what was typed over the job's number stays.
    page.get_by_role("link", name="Change", exact=True).tap()
    page.locator("#joints-1-weld_length").fill("12")
    page.locator("[data-record-changed] li").first.wait_for()
    page.get_by_role("button", name="Keep the change").tap()
    page.get_by_text("Kept on this phone.").wait_for()
    page.get_by_role("link", name="Open the job").tap()
    page.locator("[data-cards][data-worked-out=yes]").wait_for()
    assert "180.00" in page.locator("[data-price-cards]").inner_text()
    assert page.locator("[data-different]").is_visible()  # its price is not as it was kept
    page.get_by_role("link", name="Price", exact=True).tap()
    page.locator("#wire_mass").wait_for()
    assert float(page.input_value("#wire_mass")) == pytest.approx(2 * float(wire), rel=1e-3)
    assert page.input_value("#gas_volume") == "7" and page.input_value("#labor_rate") == "90"


# ---------------------------------------------------------------- poison, small screens, other readers

POISON = "<img src=x onerror=alert(1)><script>alert(2)</script>{{7*7}}\u202e\"'=1+1"
LINK = "javascript:alert(3)"


@pytest.mark.parametrize("status", ["open", "closed"])
def test_a_poisoned_job_of_another_phone_is_text_on_every_page(
    phone: BrowserContext, server: Server, tmp_path: Path, status: str
):
    page = visit(phone, server.address)
    spoken: list[str] = []

    def heard(dialog: Dialog) -> None:
        spoken.append(dialog.message)
        dialog.dismiss()

    page.on("dialog", heard)
    names = ("title", "broken", "customer", "place", "joints-1-name", "shown", "shown_verdict", "job_kind", POISON[:50])
    fields = {**dict.fromkeys(names, POISON), "joints-1-thickness": LINK, "photos": LINK, "spool": LINK}
    fields |= {"status": status, "closed_at": LINK, "copied_from": LINK, "price.labour_rate": LINK}
    fields["card_load"] = json.dumps([POISON, ["wire", POISON, LINK], [LINK, LINK, POISON]])
    fields[f"card_{POISON[:40]}"] = json.dumps([LINK, [POISON, LINK, POISON]])
    fields["card_price"] = json.dumps([POISON, ["sum", POISON, LINK]])
    first = follow(None, fields)
    second = follow(first, {**fields, "title": POISON + "2"}, "2026-05-02T08:00:00.000Z")
    third = follow(first, {**fields, "title": POISON + "3"}, "2026-05-03T08:00:00.000Z")
    bring(page, server.address, tmp_path, first, second, third)
    page.goto(server.address + "jobs")
    page.locator("[data-rows] li").wait_for()
    assert "onerror=alert(1)" in page.locator("[data-rows] li").inner_text()
    _is_inert(page)
    page.locator("[data-rows]").get_by_role("link", name="Open").tap()
    page.locator("[data-two] td").first.wait_for()
    page.locator("[data-history] summary").tap()
    page.locator("[data-history] article").wait_for()
    page.wait_for_timeout(1500)
    assert LINK in page.locator("main").inner_text()
    _is_inert(page)
    if status == "open":
        page.goto(str(page.locator("[data-change]").evaluate("each => each.href")))
        page.locator("#title").wait_for()
        page.wait_for_timeout(1000)
        _is_inert(page)
    page.goto("about:blank")
    page.goto(f"{server.address}settings#job={first['id']}&take=thickness:joints-1-thickness&was={LINK}")
    page.locator(".from-job").wait_for()
    _is_inert(page)
    assert spoken == []


def _is_inert(page: Page) -> None:
    assert page.locator("main img, main script, main [onerror], main iframe").count() == 0
    hrefs = page.locator("main a[href]").evaluate_all("all => all.map(each => each.protocol)")
    assert set(hrefs) <= {"http:"}, hrefs


def test_full_pages_fit_small_screens_and_break_no_rule(chromium, server: Server, tmp_path: Path):
    with chromium.new_context(
        viewport={"width": 360, "height": 640}, has_touch=True, is_mobile=True, bypass_csp=True, service_workers="block"
    ) as context:
        page = visit(context, server.address)
        id = call(page, server.address, title="Loader bucket ear, the left one, cracked at the pin boss")
        page.goto(server.address + "weld-entry?" + urlencode({"joint": "ear", "voltage": "24 V"}) + f"#job={id}")
        page.get_by_role("button", name="Keep in the log").tap()
        page.get_by_text("Kept on this phone.").wait_for()
        open_job(page, server.address, id)
        page.get_by_role("link", name="Change", exact=True).tap()
        page.locator("#joints-1-thickness").fill("3/16")
        page.get_by_role("button", name="Keep the change").tap()
        page.get_by_text("Kept on this phone.").wait_for()
        stored = page.evaluate(STORED, id)
        for device in ("a", "b"):  # two versions beside each other
            bring(page, server.address, tmp_path, follow(stored, {**CALL, "title": f"Ear {device}", "status": "open"}))
        complaints: list[tuple[str, object, object]] = []
        for path in ("jobs", f"work#{id}", f"settings?thickness=1/4+in#job={id}&take=thickness:joints-1-thickness"):
            page.goto("about:blank")
            page.goto(server.address + path)
            page.locator("[data-rows] li, [data-cards][data-worked-out=yes], .from-job").first.wait_for()
            if path.startswith("settings"):
                page.locator("#thickness").fill("3/8")
                page.get_by_role("button", name="Take into the job").wait_for()
            page.evaluate("for (const each of document.querySelectorAll('details')) each.open = true")
            page.wait_for_timeout(500)
            page.add_script_tag(path=AXE)
            for theme in ("dark", "noon"):
                page.evaluate("theme => document.documentElement.dataset.theme = theme", theme)
                complaints += [(path, theme, each) for each in page.evaluate(RUN, {"type": "tag", "values": RULES})]
            for width in (320, 360, 412):
                page.set_viewport_size({"width": width, "height": 640})
                targets = page.evaluate(TARGETS)
                complaints += [(path, width, each) for each in targets if too_small(each)]
                complaints += [(path, width, each) for each in too_close(targets)]
                complaints += [(path, width, each) for each in page.evaluate(RUNS_OFF)]
        assert complaints == []


STORED = """id => new Promise((done, fail) => {
  const opening = indexedDB.open('puddlebook');
  opening.onerror = fail;
  opening.onsuccess = () => {
    const asked = opening.result.transaction('rows').objectStore('rows').get(id);
    asked.onsuccess = () => { opening.result.close(); done({ id: asked.result.id, rev: asked.result.rev }); };
  };
})"""
