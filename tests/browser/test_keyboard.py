"""A keyboard alone reaches everything, shows where it is, and is never hidden behind the answer's bar."""

import pytest

from tests.browser import pages
from tests.browser.driving import box_of, boxes_of, visit, wait_until_answered

# Where the focus is after each press of Tab, until it leaves the page: [name, ring in px, is it in sight].
FOCUSED = """() => {
  const element = document.activeElement;
  if (!element || element === document.body) return null;
  const target = element.closest('label.radio') ?? element;
  const box = target.getBoundingClientRect();
  const x = Math.min(box.left + box.width / 2, innerWidth - 1);
  // A tall region counts as seen if the part of it that is on the screen is.
  const y = (Math.max(box.top, 0) + Math.min(box.bottom, innerHeight)) / 2;
  const seen = document.elementFromPoint(x, y);
  const style = getComputedStyle(element);
  return {
    key: [...document.querySelectorAll('*')].indexOf(element),
    name: element.id || element.className || element.textContent.trim(),
    ring: style.outlineStyle === 'none' ? 0 : parseFloat(style.outlineWidth),
    sight: Boolean(seen) && (target.contains(seen) || seen.contains(target)) && box.bottom > 0 && box.top < innerHeight,
  };
}"""

# Everything that a keyboard has to reach; of radio buttons of one name, one.
REACHABLE = """() => {
  const selector = 'a[href], button, input:not([type=hidden]), select, summary, [tabindex="0"]';
  const all = [...document.querySelectorAll('*')];
  const names = new Set();
  return [...document.querySelectorAll(selector)]
    .filter(each => each.checkVisibility() && !each.disabled && each.tabIndex >= 0)
    .filter(each => each.type !== 'radio' || (!names.has(each.name) && names.add(each.name)))
    .map(each => all.indexOf(each));
}"""
RADIO_GROUPS = """() => {
  const all = [...document.querySelectorAll('*')];
  const first = {};
  const groups = {};
  for (const each of document.querySelectorAll('input[type=radio]')) {
    first[each.name] ??= all.indexOf(each);
    groups[all.indexOf(each)] = first[each.name];
  }
  return groups;
}"""


# What is wrong stands above the same form as an answer: a run walks through one of the two.
STATES = pages.by_turns(("problem", "answer"), 0)


@pytest.fixture(scope="module")
def walked(chromium, specimen_server, specimen):
    """Every page walked through with Tab: {path: (what was reached, what was not, faults)}."""
    found = {}
    options = {"viewport": {"width": 360, "height": 640}, "service_workers": "block", "reduced_motion": "reduce"}
    with chromium.new_context(**options) as context:
        for path, page in pages.walk(context, specimen_server.address, STATES):
            wanted, groups = set(page.evaluate(REACHABLE)), page.evaluate(RADIO_GROUPS)
            # From the top, wherever the page itself put the focus.
            page.evaluate("document.activeElement.blur(); document.body.tabIndex = -1; document.body.focus()")
            page.evaluate("document.body.removeAttribute('tabindex'); scrollTo(0, 0)")
            reached, faults = set(), []
            for _ in range(len(wanted) + 20):
                page.keyboard.press("Tab")
                focused = page.evaluate(FOCUSED)
                if focused is None:
                    break
                reached.add(groups.get(str(focused["key"]), focused["key"]))
                if focused["ring"] < 3 or not focused["sight"]:
                    faults.append(focused)
            found[path] = (reached, wanted - reached, faults)
    return found


def test_tab_reaches_everything(walked):
    assert {path: missed for path, (_, missed, _) in walked.items() if missed} == {}
    assert all(len(reached) > 5 for reached, _, _ in walked.values())


def test_where_the_focus_is_can_be_seen(walked):
    assert {path[:60]: faults for path, (_, _, faults) in walked.items() if faults} == {}


def test_a_question_is_answered_by_keys_alone(phone, server):
    page = visit(phone, server.address + "heat-input")
    page.keyboard.press("Tab")
    assert page.evaluate("document.activeElement.className") == "skip"
    box = box_of(page.locator(".skip"))
    assert box["height"] >= 56
    page.keyboard.press("Enter")
    for name, keys in (("voltage", "24"), ("current", "180"), ("travel_speed", "12")):
        while page.evaluate("document.activeElement.id") != name:
            page.keyboard.press("Tab")
        page.keyboard.type(keys)
    page.locator(".headline .number b", has_text="17.3").wait_for()
    page.keyboard.press("Enter")
    wait_until_answered(page)
    assert page.input_value("#voltage") == "24", "Enter pressed a preset"
    # Tab goes on to the unit and to the presets, where the space bar presses.
    page.keyboard.press("Tab")
    page.keyboard.press("Tab")
    page.keyboard.press("Space")
    assert page.input_value("#travel_speed") == page.locator("[data-fill=travel_speed]").first.get_attribute(
        "data-number"
    )


@pytest.mark.parametrize("height", [640, 380])
def test_the_bar_never_covers_the_field_that_is_typed_in(phone, server, height):
    """380 px is what the keyboard leaves of the screen."""
    page = visit(phone, server.address + "heat-input")
    page.set_viewport_size({"width": 360, "height": height})
    for name, text in (("voltage", "24"), ("current", "180"), ("travel_speed", "12"), ("weld_length", "12")):
        box = page.locator(f"#{name}")
        # As low as it can be tapped, and the bar grows while it is typed in.
        box.evaluate("each => scrollBy(0, each.getBoundingClientRect().top - innerHeight + 130)")
        box.focus()
        page.keyboard.type(text)
        wait_until_answered(page)
        field, bar = boxes_of(page, f"#{name}", ".headline")
        assert field["y"] >= 0, name
        assert field["y"] + field["height"] <= bar["y"], name
        assert bar["height"] < height / 2
