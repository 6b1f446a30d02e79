"""Gloves and small screens: how big what is tapped is, how far apart, and that nothing runs off the side."""

import pytest

from tests.browser import pages

WIDTHS = (320, 360, 412)
SMALLEST_PX = 56
SMALLEST_GAP_PX = 8

# Boxes of everything that can be tapped. The target of a radio button or a tick is its whole row. A link inside a
# sentence is as high as its line: the one kind that is left out. The answer's bar covers what it will, so it is put
# where it belongs.
TARGETS = """() => {
  for (const bar of document.querySelectorAll('.headline')) bar.style.position = 'static';
  const selector = 'a[href], button, input:not([type=hidden]), select, summary, [tabindex="0"]';
  const found = [];
  for (const element of document.querySelectorAll(selector)) {
    const target = element.closest('label.radio, label.tick') ?? element;
    const box = target.getBoundingClientRect();
    const style = getComputedStyle(target);
    const shown = target.checkVisibility({ visibilityProperty: true }) && style.clipPath === 'none' && box.right > 0;
    if (!shown || (target.matches('a') && style.display === 'inline')) continue;
    const name = target.id || target.className || target.textContent.trim().slice(0, 30) || target.tagName;
    found.push({ name, x: box.left, y: box.top + scrollY, right: box.right, bottom: box.bottom + scrollY });
  }
  return found;
}"""

# A select shows its chosen words only as far as it is wide; the arrow takes some of it.
CUT_OFF = """() => {
  const pen = document.createElement('canvas').getContext('2d');
  const cut = [];
  for (const select of document.querySelectorAll('select')) {
    if (!select.checkVisibility()) continue;
    const style = getComputedStyle(select);
    pen.font = `${style.fontWeight} ${style.fontSize} ${style.fontFamily}`;
    const room = select.clientWidth - parseFloat(style.paddingLeft) - parseFloat(style.paddingRight) - 16;
    for (const option of select.options) {
      const wide = pen.measureText(option.text).width;
      if (wide > room) cut.push(`${select.id}: ${option.text} needs ${Math.ceil(wide)} of ${Math.floor(room)} px`);
    }
  }
  return cut;
}"""

RUNS_OFF = """() => {
  const width = document.documentElement.clientWidth;
  const off = [];
  for (const element of document.body.querySelectorAll('*')) {
    if (element.closest('.table, svg, .visually-hidden, .skip') || !element.checkVisibility()) continue;
    const box = element.getBoundingClientRect();
    if (box.width && (box.right > width + 0.5 || box.left < -0.5)) off.push(`${element.tagName}.${element.className}`);
  }
  if (document.documentElement.scrollWidth > width) off.push('the page scrolls sideways');
  return off;
}"""


@pytest.fixture(scope="module")
def measured(chromium, specimen_server, specimen):
    """What there is to complain about on every page, by kind: [(path, width, complaint)]."""
    found: dict[str, list[tuple[str, int, object]]] = {
        "size": [],
        "gap": [],
        "cut off": [],
        "runs off": [],
        "runs off at 200 %": [],
    }
    with chromium.new_context(has_touch=True, is_mobile=True, service_workers="block") as context:
        walked = pages.walk(context, specimen_server.address, languages=pages.LANGUAGES)
        for number, (path, page) in enumerate(walked):
            for width in (WIDTHS[0], *pages.by_turns(WIDTHS[1:], number)):
                page.set_viewport_size({"width": width, "height": 640})
                targets = page.evaluate(TARGETS)
                assert targets
                found["size"] += [(path, width, each) for each in targets if too_small(each)]
                found["gap"] += [(path, width, pair) for pair in too_close(targets)]
                found["cut off"] += [(path, width, each) for each in page.evaluate(CUT_OFF)]
                found["runs off"] += [(path, width, each) for each in page.evaluate(RUNS_OFF)]
            page.set_viewport_size({"width": 320, "height": 640})
            page.evaluate("document.documentElement.style.fontSize = '36px'")
            found["runs off at 200 %"] += [(path, 320, each) for each in page.evaluate(RUNS_OFF)]
    return found


def too_small(box):
    # Half a pixel is what a browser rounds away.
    return box["right"] - box["x"] < SMALLEST_PX - 0.5 or box["bottom"] - box["y"] < SMALLEST_PX - 0.5


def too_close(boxes):
    """Return the pairs of names whose boxes are nearer to each other than they may be."""
    unique = {(each["x"], each["y"], each["right"], each["bottom"]): each for each in boxes}
    ordered = sorted(unique.values(), key=lambda each: each["y"])
    pairs = []
    for position, one in enumerate(ordered):
        for other in ordered[position + 1 :]:
            down = other["y"] - one["bottom"]
            if down >= SMALLEST_GAP_PX - 0.5:
                continue
            across = max(other["x"] - one["right"], one["x"] - other["right"])
            if across < SMALLEST_GAP_PX - 0.5:
                pairs.append((one["name"], other["name"], round(down, 1), round(across, 1)))
    return pairs


@pytest.mark.parametrize("kind", ["size", "gap", "cut off", "runs off", "runs off at 200 %"])
def test_nothing_to_complain_about(measured, kind):
    once = {str(complaint): f"{complaint} at {width} px on /{path[:80]}" for path, width, complaint in measured[kind]}
    assert not once, "\n".join(once.values())


def test_the_measures_see_what_is_wrong():
    """Boxes as `TARGETS` gives them: one too small, and two too close."""
    good = {"name": "good", "x": 12, "y": 0, "right": 68, "bottom": 56}
    low = {"name": "low", "x": 12, "y": 64, "right": 112, "bottom": 114}
    beside = {"name": "beside", "x": 72, "y": 0, "right": 130, "bottom": 56}
    assert [each["name"] for each in (good, low, beside) if too_small(each)] == ["low"]
    assert too_close([good, low]) == []
    assert too_close([good, beside]) == [("good", "beside", -56, 4)]
