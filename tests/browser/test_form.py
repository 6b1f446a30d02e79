"""A calculator's page under a thumb: typing, tapping, leaving a field, turning the phone, going back."""

import pytest

from tests.browser.driving import box_of, boxes_of, path_of, visit, wait_until, wait_until_answered, wait_until_settled
from tests.browser.known import TYPING_MS

ASKED = "heat-input?voltage=24+V&current=180+A&travel_speed=12+in/min"


@pytest.fixture
def heat(phone, server):
    """The empty heat-input page."""
    return visit(phone, server.address + "heat-input")


@pytest.fixture
def answered(phone, server):
    """The heat-input page opened with an answer: 17.3 kJ/in."""
    page = visit(phone, server.address + ASKED)
    page.wait_for_selector(".answered")
    return page


def number(page):
    return page.inner_text(".headline .number b")


def wait_for_number(page, text):
    page.locator(".headline .number b", has_text=text).wait_for()


# ---------------------------------------------------------------- filling in


def test_a_link_shows_its_values_in_the_boxes(answered):
    values = {name: answered.input_value(f"#{name}") for name in ("voltage", "current", "travel_speed")}
    assert values == {"voltage": "24", "current": "180", "travel_speed": "12"}
    assert answered.input_value("#travel_speed_unit") == "in/min"


def test_a_preset_fills_its_box_and_its_unit(heat):
    heat.select_option("#travel_speed_unit", "mm/s")
    for name, text in (("voltage", "24 V"), ("current", "180 A"), ("travel_speed", "12 in/min")):
        heat.get_by_role("group", name=heat.inner_text(f"label[for={name}]")).get_by_text(text).tap()
    assert heat.input_value("#travel_speed") == "12"
    assert heat.input_value("#travel_speed_unit") == "in/min"
    wait_for_number(heat, "17.3")


def test_a_step_more_or_less_changes_the_number_and_the_answer(answered):
    less, more = (answered.get_by_role("button", name=f"Arc voltage: {way}") for way in ("less", "more"))
    for button, volts, heat in ((more, "24.5", "17.6"), (less, "24", "17.3"), (less, "23.5", "16.9")):
        button.tap()
        assert answered.input_value("#voltage") == volts
        wait_for_number(answered, heat)  # 24.5 and 23.5 of 24 V x 17.28 kJ/in, by hand
    answered.fill("#weld_length", "3/16 in")
    answered.get_by_role("button", name="Weld length: more").tap()
    assert answered.input_value("#weld_length") == "1 in"
    answered.get_by_role("button", name="Arc time: less").tap()
    assert answered.evaluate("document.activeElement.id") == "arc_time", "blank: the place to type it"
    assert answered.input_value("#arc_time") == ""


def test_an_answer_is_compared_with_the_one_before_and_can_be_put_back(answered):
    answered.fill("#voltage", "3")
    answered.locator("#answer .problem").wait_for()
    answered.fill("#voltage", "30")
    wait_for_number(answered, "21.6")
    line = answered.locator("[data-before]")
    assert line.inner_text().startswith("Before: 17.3\u00a0kJ/in, at 24\u00a0V\n")
    wait_until_settled(answered)
    assert line.inner_text().startswith("Before: 17.3"), "the line went away when the fingers rested"
    answered.get_by_role("button", name="Put that back").tap()
    wait_for_number(answered, "17.3")
    assert answered.input_value("#voltage") == "24"
    assert line.inner_text().startswith("Before: 21.6\u00a0kJ/in, at 30\u00a0V\n")


def test_a_unit_is_the_welder_s_own_on_every_page_but_for_a_number_that_has_one(heat, server):
    heat.select_option("#travel_speed_unit", "m/min")
    heat.get_by_role("button", name="Clear all").tap()
    heat.goto(server.address + "travel-speed?travel_speed=12+in/min")
    assert heat.input_value("#travel_speed_unit") == "in/min"
    heat.goto(server.address + "travel-speed")
    assert heat.input_value("#travel_speed_unit") == "m/min"


def test_an_answer_comes_while_typing_and_says_what_it_waits_for(heat):
    heat.locator("#voltage").tap()
    heat.keyboard.type("24", delay=TYPING_MS)
    heat.locator("#answer").get_by_text("Waiting for 2 of").wait_for()
    heat.fill("#current", "180")
    heat.fill("#travel_speed", "12")
    wait_for_number(heat, "17.3")


def test_a_conditional_field_appears_with_its_choice_and_leaves_with_it(answered):
    limit = answered.locator("#heat_input_limit")
    assert limit.is_hidden()
    answered.select_option("#limit_basis", "arc-energy")
    limit.wait_for()
    limit.fill("20")
    answered.get_by_text("Outside", exact=False).first.wait_for()
    answered.select_option("#limit_basis", "")
    wait_for_number(answered, "17.3")
    assert limit.is_hidden()
    assert answered.locator(".problem").count() == 0
    answered.select_option("#limit_basis", "arc-energy")
    assert limit.input_value() == "20"


def test_clear_empties_the_form_keeps_the_units_and_can_be_undone(answered):
    answered.select_option("#travel_speed_unit", "mm/s")
    answered.get_by_role("button", name="Clear all").tap()
    answered.locator("#answer").get_by_text("Fill in what you know").wait_for()
    assert answered.input_value("#voltage") == ""
    assert answered.input_value("#travel_speed_unit") == "mm/s"
    answered.get_by_role("button", name="Undo clear").tap()
    answered.wait_for_selector(".answered")
    assert answered.input_value("#voltage") == "24"
    assert answered.locator("[data-undo]").is_hidden()


def test_the_timer_fills_in_the_arc_time_and_runs_on_across_a_reload(heat):
    heat.get_by_role("button", name="Start timer").tap()
    heat.wait_for_timeout(400)
    heat.reload()
    stop = heat.get_by_role("button", name="Stop timer")
    assert float(heat.inner_text(".clock").removesuffix(" s")) >= 0.3
    heat.wait_for_timeout(300)
    stop.tap()
    assert heat.input_value("#arc_time_unit") == "s"
    assert 0.7 <= float(heat.input_value("#arc_time")) <= 8
    assert heat.inner_text(".clock") == ""


def test_turning_the_phone_keeps_what_was_typed(heat):
    heat.locator("#voltage").tap()
    heat.keyboard.type("24")
    heat.set_viewport_size({"width": 640, "height": 360})
    heat.keyboard.type(".5")
    heat.set_viewport_size({"width": 360, "height": 640})
    # As large as letters go in a phone's settings.
    heat.evaluate("document.documentElement.style.fontSize = '36px'")
    heat.keyboard.type("1")
    wait_until_answered(heat)
    assert heat.input_value("#voltage") == "24.51"
    assert heat.evaluate("document.activeElement.id") == "voltage"
    box, bar = boxes_of(heat, "#voltage", ".headline")
    assert box["y"] + box["height"] <= bar["y"]


@pytest.mark.parametrize("locale", ["de-DE", "hi-IN"])
def test_a_number_is_understood_the_same_in_a_browser_of_another_country(new_phone, server, locale):
    page = visit(new_phone(locale=locale), server.address + ASKED)
    assert page.evaluate("navigator.language") == locale
    for typed, heat in (("24,5", "17.6"), ("24.0", "17.3")):  # of 17.28 kJ/in at 24 V, by hand
        page.fill("#voltage", typed)
        wait_for_number(page, heat)
    page.get_by_role("button", name="Arc voltage: more").tap()
    assert page.input_value("#voltage") == "24.5"
    page.fill("#voltage", "1,234")
    page.locator("#answer", has_text="could be 1234 or 1.234").wait_for(state="attached")


# ---------------------------------------------------------------- errors


def test_an_error_waits_until_its_field_is_left_and_goes_when_it_is_mended(answered):
    box, slot = answered.locator("#voltage"), answered.locator("#voltage-error")
    box.tap()
    box.fill("")
    for character in "1,234":
        answered.keyboard.type(character)
        wait_until_answered(answered)
        assert slot.is_hidden(), character
        assert box.get_attribute("aria-invalid") is None
    answered.locator("#answer").get_by_text("Waiting for the rest of the number").wait_for()
    answered.locator("#current").tap()
    slot.wait_for()
    assert slot.inner_text().endswith("could be 1234 or 1.234. Type one of these")
    assert box.get_attribute("aria-invalid") == "true"
    assert "voltage-error" in (box.get_attribute("aria-describedby") or "")
    assert answered.locator(".headline .summary").inner_text().startswith("There is a problem")
    error, entry = boxes_of(answered, "#voltage-error", "#voltage")
    assert entry["y"] - (error["y"] + error["height"]) < 20, "the error is not beside its field"
    box.fill("24")
    wait_for_number(answered, "17.3")
    assert slot.is_hidden()
    assert box.get_attribute("aria-invalid") is None


def test_what_is_said_aloud_leaves_out_an_error_that_is_still_held_back(heat):
    heat.locator("#voltage").tap()
    heat.keyboard.type("1,234")
    heat.locator("#spoken", has_text="Waiting").wait_for(state="attached")
    assert heat.inner_text("#spoken") == "Waiting for the rest of the number."


@pytest.mark.parametrize("press", ["tap", "click"])
def test_an_error_that_appears_does_not_take_the_button_from_under_the_finger(heat, press):
    heat.locator("#voltage").tap()
    heat.keyboard.type("1,234")
    wait_until_answered(heat)
    target = heat.locator("[data-fill=voltage]").nth(2)
    if press == "tap":
        target.tap()
    else:
        # Clear of the answer at the foot of the screen, which grows when it says what is wrong.
        target.evaluate("button => button.scrollIntoView({ block: 'center' })")
        place = box_of(target)
        heat.mouse.move(place["x"] + 20, place["y"] + 20)
        heat.mouse.down()
        wait_until_answered(heat)
        heat.mouse.up()
    heat.locator("#answer").get_by_text("Waiting for 2 of").wait_for()
    assert heat.input_value("#voltage") == "24"


def test_a_page_that_opened_with_a_problem_forgets_it_once_it_is_mended(phone, server):
    page = visit(phone, server.address + ASKED.replace("24+V", "1,234"))
    assert page.title().startswith("Error: ")
    assert page.evaluate("document.activeElement.className") == "summary"
    page.locator("#voltage").tap()
    page.fill("#voltage", "24")
    wait_for_number(page, "17.3")
    assert page.locator(".summary").count() == 0
    assert not page.title().startswith("Error")
    assert page.locator("#voltage-error").is_hidden()


# ---------------------------------------------------------------- addresses


def test_the_address_becomes_the_link_to_the_answer(answered):
    answered.fill("#voltage", "30")
    wait_for_number(answered, "21.6")
    wait_until_settled(answered)
    link = answered.get_by_role("link", name="Link to this answer")
    assert path_of(answered.url) == link.get_attribute("href")
    assert "voltage=30+V" in answered.url
    other = visit(answered.context, answered.url)
    assert number(other) == "21.6"


def test_the_address_does_not_keep_an_answer_that_is_gone(answered):
    answered.fill("#voltage", "")
    answered.locator("#answer").get_by_text("Waiting for one of").wait_for()
    answered.wait_for_url("**/heat-input")
    answered.reload()
    answered.locator("#answer").get_by_text("Waiting for one of").wait_for()
    assert answered.input_value("#current") == "180"


def test_copy_puts_answer_and_link_on_the_clipboard_and_touches_nothing_else(answered):
    answered.context.grant_permissions(["clipboard-read", "clipboard-write"])
    answered.get_by_role("button", name="Copy answer").tap()
    answered.get_by_role("button", name="Copied").wait_for()
    copied = answered.evaluate("navigator.clipboard.readText()")
    assert "17.3 kJ/in or 680 J/mm" in copied
    assert copied.splitlines()[-1] == answered.locator("a.share").evaluate("link => link.href")
    assert answered.input_value("#voltage") == "24"


def test_the_phone_s_own_sheet_is_given_answer_and_link_where_there_is_one(answered):
    send = answered.get_by_role("button", name="Send answer")
    assert send.is_hidden()
    # Closed without sending, as most often.
    closed = "given => { window.given = given; return Promise.reject(new Error('closed')); }"
    answered.evaluate(f"() => {{ navigator.share = {closed}; }}")
    answered.fill("#voltage", "30")
    wait_for_number(answered, "21.6")
    send.tap()
    given = answered.evaluate("given")
    assert given["title"] == "Heat input"
    assert "21.6 kJ/in or 850 J/mm" in given["text"]
    assert given["url"] == answered.locator("a.share").evaluate("link => link.href")


@pytest.mark.parametrize(("path", "headline"), [(ASKED, ".number b"), ("filler-name?filler=ER70S-6", ".words")])
def test_the_answer_is_read_at_arm_s_length_upright_and_on_its_side(phone, server, path, headline):
    page = visit(phone, server.address + path)
    for width, height in ((320, 640), (640, 320)):
        page.set_viewport_size({"width": width, "height": height})
        size = page.locator(".headline " + headline).evaluate("each => getComputedStyle(each).fontSize")
        assert float(size.removesuffix("px")) >= 32.0, (width, height)


def test_back_returns_to_the_answer_and_its_inputs(answered):
    answered.fill("#voltage", "30")
    wait_for_number(answered, "21.6")
    wait_until_settled(answered)
    answered.get_by_role("navigation", name="Next question").get_by_role("link").first.tap()
    answered.wait_for_url("**/wire-feed?*")
    answered.go_back()
    wait_for_number(answered, "21.6")
    assert answered.input_value("#voltage") == "30"
    assert answered.input_value("#current") == "180"


# ---------------------------------------------------------------- slow answers


@pytest.mark.parametrize("sync", ["this:replace", "this:drop"])
def test_a_slow_answer_never_replaces_a_newer_one(new_phone, server, sync):
    """Told to drop what comes while an answer is on its way, the same steps end with the older number."""
    page = visit(new_phone(service_workers="block"), server.address + ASKED)
    page.locator("form").evaluate("(form, sync) => form.setAttribute('hx-sync', sync)", sync)
    slow = []
    page.route("**/heat-input?*voltage=30&*", lambda route: slow.append(route), times=1)
    page.fill("#voltage", "30")
    while not slow:
        page.wait_for_timeout(50)
    page.fill("#voltage", "20")
    shown = {"this:replace": "14.4", "this:drop": "21.6"}
    if sync == "this:replace":
        wait_for_number(page, shown[sync])
        slow[0].continue_()
        page.wait_for_timeout(500)  # the older answer must not come
    else:
        page.wait_for_timeout(500)  # the newer question must not be asked
        slow[0].continue_()
        wait_for_number(page, shown[sync])
    assert (page.input_value("#voltage"), number(page)) == ("20", shown[sync])


def test_an_answer_of_before_never_settles_once_something_else_is_typed(new_phone, server):
    """On a slow phone the new answer takes longer than fingers rest."""
    page = visit(new_phone(service_workers="block"), server.address + ASKED)
    slow = []
    page.route("**/heat-input?*voltage=30&*", lambda route: slow.append(route), times=1)
    page.fill("#voltage", "30")
    wait_until(page, lambda: slow)
    page.wait_for_timeout(1500)  # more than fingers rest
    assert page.evaluate("localStorage.getItem('link:heat-input')") is None
    slow[0].continue_()
    wait_until_settled(page)
    assert "voltage=30+V" in page.url
