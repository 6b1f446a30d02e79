"""Every page in every state against the rules of axe-core: WCAG 2.2 A and AA and its best practices."""

import pytest

from tests.browser import pages
from webapp import environment

AXE = environment.NODE_MODULES / "axe-core" / "axe.min.js"
RULES = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"]
RUN = """async only => {
  const { violations } = await axe.run(document, { runOnly: only, resultTypes: ['violations'] });
  return violations.map(each => `${each.id}: ${each.nodes.map(node => node.html.slice(0, 120)).join(' | ')}`);
}"""


@pytest.fixture(scope="module")
def context(chromium):
    """A phone in which this module's own script may run beside the page's."""
    with chromium.new_context(
        viewport={"width": 360, "height": 640}, bypass_csp=True, service_workers="block", color_scheme="dark"
    ) as made:
        yield made


def test_no_rule_is_broken_on_any_page_in_either_theme_and_language(context, specimen_server, specimen):
    broken: dict[str, str] = {}
    walked = pages.walk(context, specimen_server.address, languages=pages.LANGUAGES, by_halves=True)
    for number, (path, page) in enumerate(walked):
        page.add_script_tag(path=AXE)
        # Two pages in one theme, then two in the other: beside the languages, which change with each page.
        for theme in pages.by_turns(pages.THEMES, number // 2):
            page.evaluate("theme => (document.documentElement.dataset.theme = theme)", theme)
            for each in page.evaluate(RUN, {"type": "tag", "values": RULES}):
                broken.setdefault(each, f"/{path} {theme}")
    assert broken == {}, f"WALK={pages.TURN} walks the same way again"


def test_axe_sees_what_is_wrong(context, specimen_server):
    page = context.new_page()
    page.goto(specimen_server.address + "heat-input?voltage=24+V")  # not what it was asked last
    page.add_script_tag(path=AXE)
    page.evaluate("document.querySelector('label[for=voltage]').remove()")
    assert any(each.startswith("label:") for each in page.evaluate(RUN, {"type": "tag", "values": RULES}))
