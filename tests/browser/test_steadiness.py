"""Nothing on a page moves by itself while it opens, and every press shows at once."""

import pytest

from tests.browser.driving import Watch, box_of, visit, wait_until, wait_until_carried, wait_until_settled

ASKED = "heat-input?voltage=24+V&current=180+A&travel_speed=12+in/min"
OBSERVE = """() => {
  window.shifts = [];
  new PerformanceObserver(list => {
    for (const each of list.getEntries()) {
      shifts.push([each.value, ...each.sources.map(source => source.node?.className || source.node?.nodeName)]);
    }
  }).observe({ type: 'layout-shift', buffered: true });
}"""


@pytest.fixture
def observed(phone):
    phone.add_init_script(f"({OBSERVE})()")
    return phone


def shifts(page):
    page.wait_for_timeout(300)  # long enough for a late one: none may come
    return page.evaluate("shifts")


@pytest.mark.parametrize("width", [320, 360, 412])
@pytest.mark.parametrize("path", [ASKED, ""])
def test_nothing_moves_on_a_first_visit(observed, server, path, width):
    """The phone's state goes from nothing over `not yet` to `ready` in the meantime."""
    page = observed.new_page()
    page.set_viewport_size({"width": width, "height": 640})
    page.goto(server.address + path)
    wait_until_carried(page)
    assert shifts(page) == []


def test_nothing_moves_when_the_phone_answers(observed, server):
    page = visit(observed, server.address)
    wait_until_carried(page)
    page.goto(server.address + ASKED)
    assert page.locator(".answered").count()
    wait_until_settled(page)
    assert shifts(page) == []
    page.goto(server.address)
    assert page.locator("[data-recent] a").count() == 1
    assert shifts(page) == []


def test_a_press_shows_at_once(phone, server):
    page = visit(phone, server.address + "heat-input")
    button = page.locator(".preset").first
    button.evaluate("each => each.scrollIntoView({ block: 'center' })")  # clear of the answer at the foot
    place = box_of(button)
    before = button.evaluate("each => getComputedStyle(each).backgroundColor")
    page.mouse.move(place["x"] + 20, place["y"] + 20)
    page.mouse.down()
    assert button.evaluate("each => getComputedStyle(each).backgroundColor") != before
    page.mouse.up()
    assert button.evaluate("each => getComputedStyle(each).touchAction") == "manipulation"


def test_the_watch_on_consoles_sees_a_refused_script(chromium, server):
    """Every phone of these tests fails its test on such a line; here it is seen to come."""
    with chromium.new_context() as context:
        watch = Watch(context)
        page = visit(context, server.address)
        page.evaluate("document.body.append(Object.assign(document.createElement('script'), { text: '1' }))")
        page.evaluate("setTimeout(() => { throw new Error('planted') })")
        wait_until(page, lambda: len(watch.faults) >= 2)
        assert any("Content Security Policy" in fault for fault in watch.faults), watch.faults
        assert any("planted" in fault for fault in watch.faults), watch.faults
