"""Ticks and timers that last: over a reload, a closed browser and no signal; undone, and of no use without script."""

import re

import pytest

from tests.browser.driving import NoSignal, Server, Watch, open_profile, visit, wait_until_carried

LIST = "make-safe?job=machine"
FIRE = "hot-work?work_on=open&place=indoors"
HOUR_MS = 3600 * 1000


def count(page):
    return page.locator("[data-done]").inner_text()


def box(page, words):
    return page.get_by_role("checkbox", name=words)


@pytest.fixture(scope="module")
def away(playwright, tmp_path_factory):
    """A phone on which things were ticked and a watch was started before its browser closed, with no signal now."""
    profile = tmp_path_factory.mktemp("profile")
    with Server(tmp_path_factory.mktemp("data")) as server:
        with open_profile(playwright, profile) as context:
            page = visit(context, server.address)
            wait_until_carried(page)
            page.goto(server.address + LIST)
            box(page, "What can turn").check()
            box(page, "Work clamp").check()
            page.goto(server.address + FIRE)
            page.get_by_role("button", name="Last spark now: start the watch").tap()
            page.get_by_role("button", name="Stop the watch").wait_for()
            end = page.evaluate("localStorage.getItem('countdown:hot-work:timer')")
            shown = page.locator("[data-ends]").inner_text()
        server.kill()
        with open_profile(playwright, profile) as context:
            watch = Watch(context)
            yield context, server, watch, (end, shown)
    assert not watch.faults


def test_ticks_outlast_the_browser_and_the_signal(away):
    context, server, watch, _ = away
    with NoSignal(server, watch):
        page = visit(context, server.address + LIST)
        page.locator("[data-done]", has_text="2 of 9 done. First tick:").wait_for()
        assert box(page, "What can turn").is_checked()
        assert not box(page, "Off, locked").is_checked()
        box(page, "What can turn").uncheck()
        assert count(page).startswith("1 of 9 done")
        page.reload()
        page.locator("[data-done]", has_text="1 of 9 done").wait_for()
        box(page, "What can turn").check()
    page.close()


def test_ticks_follow_their_item_to_another_list_and_are_brought_back_when_cleared(away):
    context, server, _, _ = away
    page = visit(context, server.address + LIST)
    page.locator("[data-done]", has_text="2 of 9 done").wait_for()
    page.get_by_text("Trailer").tap()
    page.get_by_text("Wheels chocked").wait_for()
    page.locator("[data-done]", has_text="1 of 9 done").wait_for()  # the work clamp is on both lists
    page.get_by_role("button", name="Clear ticks").tap()
    assert count(page) == "0 of 9 done"
    assert page.get_by_role("button", name="Clear ticks").is_hidden()
    page.get_by_role("button", name="Undo clear").last.tap()
    assert count(page).startswith("1 of 9 done")
    page.close()


def test_all_ticks_do_not_say_that_it_is_safe(away):
    context, server, _, _ = away
    page = visit(context, server.address + "make-safe?job=structure")
    page.wait_for_selector("[data-tick]")
    for each in page.locator("[data-tick]").all():
        each.check()
    assert count(page).startswith("7 of 7 done")
    assert page.get_by_text("Ticks prove nothing").is_visible()
    assert "safe" not in page.inner_text(".checklist").lower()
    page.close()


def test_a_fire_watch_keeps_its_end_over_a_restart_and_counts_down_to_it(away):
    context, server, watch, (end, shown) = away
    with NoSignal(server, watch):
        page = visit(context, server.address + FIRE)
        page.locator("[data-ends]", has_text="ends").wait_for()
        assert page.evaluate("localStorage.getItem('countdown:hot-work:timer')") == end
        assert page.locator("[data-ends]").inner_text() == shown
        start, over = (int(each) for each in end.split())
        assert over - start == HOUR_MS
        assert re.fullmatch(r"5\d:\d\d", page.locator("[data-left]").inner_text())
        assert page.get_by_text("cannot ring a locked phone").is_visible()
        assert page.get_by_text("The time is over").is_hidden()
    page.close()


def test_a_fire_watch_stopped_by_mistake_is_brought_back(away):
    context, server, _, (end, _) = away
    page = visit(context, server.address + FIRE)
    page.get_by_role("button", name="Stop the watch").tap()
    assert page.locator("[data-left]").is_hidden()
    page.get_by_role("button", name="Undo", exact=True).tap()
    page.locator("[data-left]").wait_for()
    assert page.evaluate("localStorage.getItem('countdown:hot-work:timer')") == end
    page.close()


def test_a_fire_watch_that_ended_while_the_phone_was_locked_says_so_and_what_to_do(away):
    context, server, _, (end, _) = away
    page = visit(context, server.address + FIRE)
    page.locator("[data-left]").wait_for()
    page.evaluate("localStorage.setItem('countdown:hot-work:timer', `${Date.now() - 4e6} ${Date.now() - 1000}`)")
    page.reload()
    page.get_by_text("The time is over. Look and feel once more").wait_for()
    assert page.locator("[data-left]").inner_text() == "00:00"
    page.evaluate(f"localStorage.setItem('countdown:hot-work:timer', '{end}')")
    page.close()


def test_a_text_to_send_is_copied_as_it_stands(phone, server):
    phone.grant_permissions(["clipboard-read", "clipboard-write"])
    page = visit(phone, server.address + "lone-worker?start_time=2:30+pm&call_every=30+min&where=North+gate")
    page.get_by_role("button", name="Copy text").tap()
    page.locator("[data-copy-draft]", has_text="Copied").wait_for()
    text = page.evaluate("navigator.clipboard.readText()")
    assert text == page.locator("[data-draft]").inner_text()
    assert text.startswith("I work alone from 2:30\u00a0pm. Where: North gate.")


def test_without_script_the_boxes_can_be_ticked_and_no_timer_is_promised(new_phone, server):
    page = visit(new_phone(java_script_enabled=False), server.address + FIRE)
    box(page, "Floor swept").check()
    assert page.locator("[data-done]").is_hidden()
    assert page.locator("[data-begin]").is_hidden()
    assert page.get_by_text("Fire watch: 60").is_visible()


def test_a_list_is_printed_with_its_boxes_ticks_and_what_is_left(phone, server):
    page = visit(phone, server.address + LIST)
    box(page, "What can turn").check()
    page.emulate_media(media="print")
    assert page.locator("[data-tick]").locator("visible=true").count() == 9
    assert page.locator("[data-done]").is_visible()
    assert page.get_by_text("Ticks prove nothing").is_visible()
    assert page.get_by_role("button", name="Clear ticks").is_hidden()
