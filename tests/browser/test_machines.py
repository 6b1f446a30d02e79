"""The welder's own machines: measured and kept with a signal, picked, renamed and deleted without one."""

import pytest

from tests.browser.driving import NoSignal, Server, Watch, open_profile, visit, wait_until_carried
from tests.browser.known import BETWEEN_TAPS_MS, KNOWN, read_number

DIALS = KNOWN["machine-trim"].address("machine-trim")
# 0.035 in wire at 125 A, 12 mm from tip to work: 217 in/min by the law; 1=120 5=310 in/min puts it at mark 3.03.
ASKED = "wire-feed?wire_diameter=0.035+in&current=125+A&contact_tip_to_work=12+mm"
MARK = "Red box: feed dial 3, between 1 and 5"


@pytest.fixture(scope="module")
def away(playwright, tmp_path_factory):
    """A phone on which one machine was kept before its browser was closed, opened again with no signal."""
    profile = tmp_path_factory.mktemp("profile")
    with Server(tmp_path_factory.mktemp("data")) as server:
        with open_profile(playwright, profile) as context:
            page = visit(context, server.address)
            wait_until_carried(page)
            page.goto(server.address + DIALS + "&machine=Red+box")
            page.get_by_role("button", name="Keep as a machine on this phone").tap()
            page.get_by_role("button", name="Kept on this phone").wait_for()
        server.kill()
        with open_profile(playwright, profile) as context:
            watch = Watch(context)
            yield context, server, watch
    assert not watch.faults


def picker(page):
    return page.locator("#machine-picker")


def names(page):
    return picker(page).locator("option").all_inner_texts()


def open_question(page, address):
    page.goto(address)
    page.wait_for_selector(".answered")
    return page


def test_a_machine_is_picked_offline_and_its_dial_mark_is_the_answer(away):
    context, server, watch = away
    with NoSignal(server, watch):
        page = visit(context, server.address + ASKED)
        page.wait_for_selector(".answered")
        assert page.locator(".in-words").count() == 0
        assert names(page) == ["No machine", "Red box"]
        picker(page).select_option(label="Red box")
        page.get_by_text(MARK).wait_for()
        assert read_number(page) == (217, "in/min")
        assert page.input_value("#feed_dial") == "1=120 5=310 in/min"
        picker(page).select_option(label="No machine")
        page.locator(".in-words").wait_for(state="detached")
        assert page.input_value("#feed_dial") == ""
    page.close()


def test_the_link_to_the_answer_gives_the_mark_on_a_phone_that_has_no_such_machine(away, phone):
    context, server, _ = away
    page = visit(context, server.address + ASKED)
    picker(page).select_option(label="Red box")
    page.get_by_text(MARK).wait_for()
    link = page.locator("a.share").get_attribute("href")
    page.close()
    server.start()
    try:
        other = visit(phone, server.address + link)
        other.get_by_text(MARK).wait_for()
        assert picker(other).is_hidden(), "a phone with no machine has none to pick"
    finally:
        server.kill()


def test_a_kept_machine_is_shown_as_picked_and_a_changed_one_is_not(away):
    context, server, _ = away
    page = visit(context, server.address + ASKED + "&machine=Red+box&feed_dial=1%3D120+5%3D310+in/min")
    page.get_by_text(MARK).wait_for()
    assert picker(page).locator("option:checked").inner_text() == "Red box"
    page.locator("summary", has_text="Machine").tap()
    page.fill("#feed_dial", "1=120 5=410 in/min")
    page.locator("#machine").tap()
    picker(page).locator("option:checked", has_text="As typed below").wait_for(state="attached")
    assert page.get_by_role("button", name="Rename").is_hidden()
    page.close()


def test_a_machine_is_renamed_deleted_and_brought_back(away):
    context, server, _ = away
    page = open_question(context.new_page(), server.address + ASKED)
    picker(page).select_option(label="Red box")
    page.once("dialog", lambda dialog: dialog.accept("Shed"))
    page.get_by_role("button", name="Rename").tap()
    page.get_by_text(MARK.replace("Red box", "Shed")).wait_for()
    assert names(page) == ["No machine", "Shed"]
    page.get_by_role("button", name="Delete").tap()
    page.locator(".in-words").wait_for(state="detached")
    assert names(page) == ["No machine"]
    page.get_by_role("button", name="Undo", exact=True).tap()
    page.get_by_text(MARK.replace("Red box", "Shed")).wait_for()
    assert names(page) == ["No machine", "Shed"]
    page.wait_for_timeout(BETWEEN_TAPS_MS)
    page.once("dialog", lambda dialog: dialog.accept("Red box"))
    page.get_by_role("button", name="Rename").tap()
    page.get_by_text(MARK).wait_for()
    page.close()


def test_keeping_is_undone(away):
    context, server, _ = away
    page = open_question(context.new_page(), server.address + DIALS + "&machine=Other")
    page.get_by_role("button", name="Keep as a machine").tap()
    page.get_by_role("button", name="Undo", exact=True).tap()
    assert page.get_by_role("button", name="Keep as a machine").is_enabled()
    open_question(page, server.address + ASKED)
    assert names(page) == ["No machine", "Red box"]
    page.close()


def test_an_error_in_a_folded_box_unfolds_it(away):
    context, server, _ = away
    page = open_question(context.new_page(), server.address + ASKED)
    page.evaluate("document.getElementById('feed_dial').value = '1 to 5'")
    page.locator("#current").fill("126")
    page.locator("#contact_tip_to_work").tap()
    page.locator("#feed_dial-error", has_text="Each mark needs").wait_for()
    page.close()


def test_without_script_the_boxes_are_there_and_nothing_else(new_phone, server):
    page = visit(new_phone(java_script_enabled=False), server.address + ASKED)
    assert picker(page).is_hidden()
    page.locator("summary", has_text="Machine").tap()
    page.fill("#machine", "Red box")
    page.fill("#feed_dial", "1=120 5=310 in/min")
    with page.expect_navigation():
        page.get_by_role("button", name="Work it out").tap()
    page.get_by_text(MARK).wait_for()
    page.goto(server.address + DIALS)
    assert page.get_by_role("button", name="Keep as a machine").is_hidden()
