"""Sun and shed: every text and every edge against what is behind it, in both themes and in forced colours."""

import pytest

from tests.browser import pages

THEMES = pages.THEMES
FORCED = "forced colours"
TEXT, NUMBER, EDGE = 7.0, 15.0, 3.0  # WCAG 1.4.6 and 1.4.11; for the number, our own

# Every pair of colours that meet: [kind, what, contrast]. The formula is WCAG's.
PAIRS = """() => {
  const channel = value => (value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4);
  const read = text => (text.match(/[\\d.]+/g) ?? []).map(Number);
  const luminance = ([r, g, b]) => 0.2126 * channel(r / 255) + 0.7152 * channel(g / 255) + 0.0722 * channel(b / 255);
  const clear = text => text === 'transparent' || read(text)[3] === 0;
  const contrast = (one, other) => {
    const [low, high] = [luminance(read(one)), luminance(read(other))].sort((a, b) => a - b);
    return (high + 0.05) / (low + 0.05);
  };
  const behind = element => {
    for (let each = element; each; each = each.parentElement) {
      const colour = getComputedStyle(each).backgroundColor;
      if (!clear(colour)) return colour;
    }
    return 'rgb(255, 255, 255)';
  };
  const found = [];
  const note = (kind, element, one, other) => {
    const what = `${element.tagName}.${element.getAttribute('class') ?? ''}`;
    found.push([kind, `${what} ${one} on ${other}`, contrast(one, other)]);
  };
  for (const element of document.querySelectorAll('body, body *')) {
    if (!element.checkVisibility() || element.closest('desc, title, script, noscript')) continue;
    const style = getComputedStyle(element);
    const drawn = element.namespaceURI.endsWith('svg');
    const says = [...element.childNodes].some(node => node.nodeType === 3 && node.data.trim());
    const typed = element.matches('input[type=text], select');
    if (says || typed) {
      const kind = element.closest('.headline .number') ? 'number' : 'text';
      note(kind, element, drawn ? style.fill : style.color, behind(element));
    }
    for (const pseudo of ['::before', '::after']) {
      const made = getComputedStyle(element, pseudo);
      if (made.content.startsWith('"') && made.content.length > 2) note('text', element, made.color, behind(element));
    }
    if (drawn && element.matches('.curve, .axis, .frame, .mark, .mark-line, .metal')) {
      const filled = style.stroke === 'none' || element.matches('.mark');
      note('edge', element, filled ? style.fill : style.stroke, behind(element));
    }
    if (element.matches('button, input[type=text], select, label.radio, .questions a, .recent a')) {
      const around = behind(element.parentElement);
      for (const colour of [style.borderTopColor, style.borderBottomColor]) {
        // A box that stands out by what fills it needs no edge.
        const marks = [colour, style.backgroundColor].filter(each => !clear(each));
        note('edge', element, marks.sort((a, b) => contrast(b, around) - contrast(a, around))[0], around);
      }
    }
  }
  return found;
}"""
LEAST = {"text": TEXT, "number": NUMBER, "edge": EDGE}


@pytest.fixture(scope="module")
def pairs(chromium, specimen_server, specimen):
    """Every pair of colours on every page: theme -> [(kind, what, contrast, path)]."""
    found: dict[str, list[tuple[str, str, float, str]]] = {theme: [] for theme in (*THEMES, FORCED)}
    with chromium.new_context(service_workers="block") as context:
        for number, (path, page) in enumerate(pages.walk(context, specimen_server.address)):
            for theme in pages.by_turns((*THEMES, FORCED), number):
                page.emulate_media(forced_colors="active" if theme == FORCED else "none")
                page.evaluate("theme => (document.documentElement.dataset.theme = theme)", theme)
                found[theme] += [(*pair, path) for pair in page.evaluate(PAIRS)]
    return found


@pytest.mark.parametrize("kind", LEAST)
@pytest.mark.parametrize("theme", THEMES)
def test_contrast_is_enough(pairs, theme, kind):
    measured = [(what, round(ratio, 2), path) for each, what, ratio, path in pairs[theme] if each == kind]
    assert measured
    weak = {what: f"{ratio}: {what} on /{path[:60]}" for what, ratio, path in measured if ratio < LEAST[kind]}
    assert not weak, "\n".join(weak.values())


def test_forced_colours_leave_nothing_unreadable(pairs):
    weak = {what: (round(ratio, 2), path[:60]) for _, what, ratio, path in pairs[FORCED] if ratio < EDGE}
    assert not weak


def test_the_noon_theme_stands_the_sun(phone, server):
    """Contrast counting what the glass reflects: 800 nit, 50,000 lx, 4.5 % of it sent back.

    Ratio = (La x nit + R) / (Lb x nit + R), R = lux x reflectance / pi; a clean glass and white on black give 2.1.
    """
    page = phone.new_page()
    page.goto(server.address + "heat-input?voltage=24+V&current=180+A&travel_speed=12+in/min")
    page.evaluate("document.documentElement.dataset.theme = 'noon'")
    for selector, least in ((".headline .number b", 2.0), ("label", 1.9), (".hint", 1.9)):
        colour = page.locator(selector).first.evaluate("each => getComputedStyle(each).color")
        assert in_sun(colour) >= least, selector


def in_sun(colour, nit=800.0, lux=50000.0, reflectance=0.045):
    red, green, blue = (int(part) / 255 for part in colour.removeprefix("rgb(").removesuffix(")").split(","))
    parts = [each / 12.92 if each <= 0.04045 else ((each + 0.055) / 1.055) ** 2.4 for each in (red, green, blue)]
    dark = 0.2126 * parts[0] + 0.7152 * parts[1] + 0.0722 * parts[2]
    sun = lux * reflectance / 3.14159
    return (nit + sun) / (dark * nit + sun)
