"""What a phone remembers when its browser was closed and opened again, and what it forgets when told to."""

import pytest

from tests.browser.driving import (
    PATIENCE_MS,
    Server,
    Watch,
    open_profile,
    path_of,
    unfold,
    visit,
    wait_until_carried,
    wait_until_settled,
)
from tests.browser.known import read_number
from webapp import shelf

# Typed one after the other on one page: only the last is a question that was asked.
VOLTAGES = ("20", "24")


@pytest.fixture(scope="module")
def reopened(playwright, tmp_path_factory):
    """A phone on which things were asked before its browser was closed: (context, address)."""
    profile = tmp_path_factory.mktemp("profile")
    with Server(tmp_path_factory.mktemp("data")) as server:
        with open_profile(playwright, profile) as context:
            wait_until_carried(visit(context, server.address))
            ask_things(context, server.address)
        with open_profile(playwright, profile) as context:
            watch = Watch(context)
            yield context, server.address
    assert not watch.faults


def ask_things(context, address):
    page = visit(context, address + "heat-input")
    page.fill("#current", "180")
    page.select_option("#travel_speed_unit", "mm/s")
    page.fill("#travel_speed", "5.08")
    for voltage in VOLTAGES:
        page.fill("#voltage", voltage)
        wait_until_settled(page)
    page.goto(address + "joint-fill")
    page.locator("details.more summary").tap()
    page.fill("#convexity", "1/16")
    page.goto(address + "sheet-gauge?gauge_system=steel&gauge=16")
    page.wait_for_selector(".answered")
    wait_until_settled(page)
    page.goto(address + "sheet-gauge")
    # Not settled, not finished: the browser is closed in the middle of a number.
    page.get_by_role("button", name="Noon").tap()
    page.locator("#thickness").tap()
    page.keyboard.type("3/1")


@pytest.fixture
def page(reopened):
    page = visit(*reopened)
    yield page
    page.close()


def open_question(page, name):
    unfold(page, page.locator(".questions a", has=page.locator("strong", has_text=name)).first).tap()
    page.wait_for_selector("form")


def test_what_was_filled_in_under_the_fold_shows_again(page, reopened):
    page.goto(reopened[1] + "joint-fill")
    page.locator("#convexity").wait_for()  # visible
    assert page.input_value("#convexity") == "1/16"
    page.goto(reopened[1] + "crack-repair")
    assert not page.locator("#largest_bead").is_visible()


def test_last_inputs_and_units_are_back(page):
    open_question(page, "Heat input")
    assert read_number(page) == (17.3, "kJ/in")
    values = {name: page.input_value(f"#{name}") for name in ("voltage", "current", "travel_speed")}
    assert values == {"voltage": "24", "current": "180", "travel_speed": "5.08"}
    assert page.input_value("#travel_speed_unit") == "mm/s"


def test_last_inputs_are_back_at_the_bare_address(reopened, page):
    page.goto(reopened[1] + "heat-input")
    assert read_number(page) == (17.3, "kJ/in")
    assert page.input_value("#travel_speed_unit") == "mm/s"


def test_a_number_cut_short_by_the_closing_is_back_too(page):
    open_question(page, "Sheet gauge")
    assert page.input_value("#thickness") == "3/1"


def test_the_theme_is_as_it_was_chosen(page):
    assert page.evaluate("document.documentElement.dataset.theme") == "noon"
    assert page.get_by_role("button", name="Noon").get_attribute("aria-pressed") == "true"
    colours = page.locator("meta[name=theme-color]").evaluate_all("all => all.map(each => each.content)")
    assert colours == ["#ffffff", "#ffffff"]


def test_recent_answers_show_number_inputs_and_link(page):
    entries = page.locator("[data-recent] a")
    entries.first.wait_for()
    assert entries.count() == 2, "every key press became an answer of its own"
    first, second = entries.all_inner_texts()
    assert "0.0598" in first
    assert "16" in first
    for part in ("17.3\u00a0kJ/in", "Heat input", "24 V", "180 A", "5.08 mm/s"):
        assert part in second, part
    entries.nth(1).tap()
    assert read_number(page) == (17.3, "kJ/in")
    assert path_of(page.url).startswith("heat-input?voltage=24+V&")


def test_clear_is_remembered_but_for_the_units(reopened):
    page = visit(reopened[0], reopened[1] + "heat-input")
    page.wait_for_selector(".answered")
    page.get_by_role("button", name="Clear all").tap()
    page.locator("#answer").get_by_text("Fill in what you know").wait_for()
    page.goto(reopened[1])
    open_question(page, "Heat input")
    assert page.input_value("#voltage") == ""
    assert page.input_value("#travel_speed_unit") == "mm/s"
    page.close()


def test_forgetting_is_one_tap(page):
    page.get_by_role("button", name="Forget these").tap()
    page.get_by_text("Your last answers will be listed here").wait_for(timeout=PATIENCE_MS)
    page.reload()
    assert page.locator("[data-recent] a").count() == 0
    assert page.get_by_role("button", name="Forget these").is_hidden()


def test_a_browser_that_refuses_storage_still_answers(new_phone, server):
    context = new_phone()
    context.add_init_script("Object.defineProperty(window, 'localStorage', { get() { throw new Error('no'); } });")
    page = visit(context, server.address + "heat-input")
    for name, text in (("voltage", "24"), ("current", "180"), ("travel_speed", "12")):
        page.fill(f"#{name}", text)
    assert read_number(page)[1] == "kJ/in"
    assert len(shelf.names()) == visit(context, server.address).locator(".questions a").count()
