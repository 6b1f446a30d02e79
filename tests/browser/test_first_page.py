"""The first page as somebody uses it in the middle of a job: pins, what was used last, and the twelve questions."""

from tests.browser.driving import box_of, visit
from tests.browser.test_steadiness import OBSERVE, shifts
from tests.mid_job import GIVEN, MOST_TAPS
from webapp.asked_often import OFTEN
from webapp.words import en

ANSWERS = {
    "heat-input": ("heat-input?voltage=24+V&current=180+A&travel_speed=12+in/min", "17.3"),
    "sheet-gauge": ("sheet-gauge?gauge_system=steel&gauge=16", "0.0598"),
}


def test_pinned_and_last_used_stand_first_move_nothing_and_open_with_their_numbers(phone, server):
    phone.add_init_script(f"({OBSERVE})()")
    page = visit(phone, server.address)
    pinned, used = page.locator("[data-pinned]"), page.locator("[data-used]")
    assert not pinned.is_visible() and not used.is_visible()
    for path, _ in ANSWERS.values():
        page.goto(server.address + path)
        page.wait_for_function("name => localStorage.getItem('recent')?.includes(name)", arg=path.split("?")[0])
    pin = page.get_by_role("button", name="Pin to the first page")
    assert pin.get_attribute("aria-pressed") == "false" and box_of(pin)["height"] >= 56
    pin.tap()
    assert pin.get_attribute("aria-pressed") == "true"
    page.goto(server.address)
    assert shifts(page) == []
    for rows, name in ((pinned, "sheet-gauge"), (used, "heat-input")):
        row = rows.locator("a")
        assert row.count() == 1 and box_of(row)["height"] >= 56
        assert ANSWERS[name][1] in row.inner_text()
    tops = [box_of(each)["y"] for each in (pinned, used, page.locator("#find"), page.locator("#questions"))]
    assert tops == sorted(tops)
    pinned.locator("a").tap()
    assert page.locator(".number b").inner_text() == ANSWERS["sheet-gauge"][1]
    page.get_by_role("button", name="Pin to the first page", pressed=True).tap()
    page.goto(server.address)
    assert not pinned.is_visible()
    assert used.locator("strong").all_inner_texts() == ["Sheet gauge", "Heat input"]
    page.evaluate("localStorage.setItem('pinned', '[{\"calculator\": 5}, 7]')")
    page.reload()
    used.locator("a").first.wait_for()
    assert not pinned.is_visible()


def test_the_twelve_questions_are_three_taps_and_their_numbers_away(phone, server):
    page = visit(phone, server.address)
    for id, _, _, _ in OFTEN:
        picked, numbers, _ = GIVEN[id]
        page.goto(server.address)
        taps = 0
        for target in (page.locator("details:has(.often) summary"), page.get_by_role("link", name=en.WORDS[id])):
            target.tap()
            taps += 1
        page.locator("form[data-calculator]").wait_for()
        for name, value in picked:
            field = page.locator(f"#{name}")
            if field.evaluate("each => each.tagName") == "SELECT":
                field.select_option(value)
            else:
                page.locator(f"label:has(input[name={name}][value={value}])").tap()
            taps += 1
        for name, text in numbers:
            page.locator(f"input#{name}").fill(text)
        page.locator(".headline.answered").wait_for()
        assert taps <= MOST_TAPS, id
