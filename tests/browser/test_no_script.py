"""Without script: forms, links and the server alone. Nothing that needs script shows."""

import pytest
from playwright.sync_api import Position

from tests.browser import known as questions
from tests.browser.driving import box_of, unfold, visit
from tests.browser.known import KNOWN
from webapp import shelf


@pytest.fixture
def plain(new_phone):
    """A phone whose browser runs no script."""
    return new_phone(java_script_enabled=False)


def follow(page, element):
    """Tap what leads to another page, and wait until that is there."""
    with page.expect_navigation():
        element.tap()


def work_it_out(page):
    follow(page, page.get_by_role("button", name="Work it out"))


@pytest.mark.parametrize("name", shelf.names())
def test_a_question_is_asked_and_answered(plain, server, name):
    page = visit(plain, server.address + name)
    questions.fill_in(page, KNOWN[name])
    work_it_out(page)
    questions.expect(page, KNOWN[name])


def test_a_question_is_opened_from_the_first_page(plain, server):
    page = visit(plain, server.address)
    assert {link.get_attribute("href") for link in page.locator(".questions a").all()} == set(shelf.names())
    follow(page, unfold(page, page.locator('.questions a[href="heat-input"]')))
    assert page.locator("#voltage").count() == 1


def test_a_question_is_found(plain, server):
    page = visit(plain, server.address)
    page.fill("#find", "gage")
    follow(page, page.get_by_role("button", name="Find"))
    assert page.locator(".questions strong").all_inner_texts() == ["Sheet gauge"]
    assert page.input_value("#find") == "gage"


def test_nothing_that_needs_script_shows(plain, server):
    for path in ("", "heat-input", "about", "log", "entry", "crew", "jobs", "work", "truck"):
        page = visit(plain, server.address + path)
        for part in (
            "[data-theme-choice]",
            "[data-timer]",
            "[data-clear]",
            "[data-undo]",
            "[data-forget]",
            "[data-update]",
        ):
            assert page.locator(part).locator("visible=true").count() == 0, (path, part)
        assert box_of(page.locator("noscript .caution"))["height"] > 20


def test_a_preset_is_a_button_that_asks(plain, server):
    page = visit(plain, server.address + "heat-input")
    page.fill("#current", "180")
    page.fill("#travel_speed", "12")
    page.locator("#voltage").fill("99")
    follow(page, page.locator("[data-fill=voltage]").nth(2))
    assert page.input_value("#voltage") == "24"
    assert page.inner_text(".headline .number b") == "17.3"
    follow(page, page.locator("[data-fill=travel_speed]").nth(0))
    assert (page.input_value("#travel_speed"), page.input_value("#travel_speed_unit")) == ("8", "in/min")


def test_errors_come_first_beside_their_fields_and_keep_what_was_typed(plain, server):
    page = visit(plain, server.address + "heat-input")
    page.fill("#voltage", "1,234")
    page.fill("#current", "many")
    page.select_option("#travel_speed_unit", "mm/s")
    page.fill("#travel_speed", "5")
    work_it_out(page)
    assert page.title().startswith("Error: ")
    summary = page.locator("main > .summary")
    assert summary.inner_text().startswith("There is a problem")
    assert box_of(summary)["y"] < box_of(page.locator("form"))["y"]
    for name, typed in (("voltage", "1,234"), ("current", "many")):
        error = page.inner_text(f"#{name}-error")
        assert error.lstrip("\u25b2\u00a0 ") in summary.inner_text()
        assert page.get_attribute(f"#{name}", "aria-invalid") == "true"
        assert page.input_value(f"#{name}") == typed
    assert page.input_value("#travel_speed_unit") == "mm/s"
    summary.get_by_role("link").nth(1).tap()
    assert page.url.endswith("#current")


def test_a_conditional_field_comes_with_the_page_after_its_choice(plain, server):
    page = visit(plain, server.address + KNOWN["heat-input"].address("heat-input"))
    limit = page.locator("#heat_input_limit")
    assert limit.is_hidden()
    page.select_option("#limit_basis", "arc-energy")
    work_it_out(page)
    page.fill("#heat_input_limit", "20")
    work_it_out(page)
    assert "Outside" in page.inner_text(".verdict")
    page.select_option("#limit_basis", "")
    work_it_out(page)
    # The choice is gone and its number is not: the page asks, and shows the number so that it can be taken out.
    assert "There is a problem" in page.inner_text("main > .summary")
    limit.fill("")
    work_it_out(page)
    questions.expect(page, KNOWN["heat-input"])


def test_a_choice_is_made_by_tapping_its_whole_row(plain, server):
    page = visit(plain, server.address + "sheet-gauge")
    row = page.locator("label.radio").nth(1)
    place = box_of(row)
    row.tap(position=Position(x=place["width"] - 10, y=place["height"] / 2))
    assert row.locator("input").is_checked()
