"""On paper: black on white, the headline, what was typed, the working, the sources and the build."""

import re

import pytest
from playwright.sync_api import PdfMargins

from tests.browser import pages
from tests.browser.driving import box_of, visit

ASKED = "heat-input?voltage=24+V&current=180+A&travel_speed=12+in/min"
MARGINS = PdfMargins(top="15mm", bottom="15mm", left="15mm", right="15mm")
ON_SCREEN_ONLY = (
    ".primary",
    ".presets",
    ".top",
    ".skip",
    "[data-theme-choice]",
    "[data-clear]",
    "[data-copy]",
    ".next",
)


@pytest.fixture(params=["auto", "dark", "noon"])
def printed(request, phone, server):
    phone.add_init_script(f"if (location.host) localStorage.setItem('theme', '{request.param}')")
    page = visit(phone, server.address + ASKED)
    page.emulate_media(media="print")
    return page


def test_everything_that_matters_is_on_the_paper(printed):
    for words in ("17.3", "Heat input, efficiency included", "How it was worked out", "EN 1011-1:1998", "Take care"):
        assert printed.get_by_text(words).first.is_visible(), words
    folded = printed.locator("details:not([open]) li")
    assert folded.count() > 3
    for item in folded.all():
        assert item.is_visible()
        assert box_of(item)["height"] > 10, item.inner_text()
    for name, typed in (("voltage", "24"), ("current", "180"), ("travel_speed", "12")):
        assert printed.locator(f"#{name}").is_visible()
        assert printed.input_value(f"#{name}") == typed
    assert re.fullmatch("[0-9a-f]{10}", printed.inner_text(".build code"))
    assert printed.locator(".build").is_visible()


def test_nothing_is_on_the_paper_that_only_a_screen_needs(printed):
    for selector in ON_SCREEN_ONLY:
        assert printed.locator(selector).locator("visible=true").count() == 0, selector
    assert printed.locator(".headline").evaluate("each => getComputedStyle(each).position") == "static"


def test_it_is_black_on_white_whatever_the_theme(printed):
    colours = "each => [getComputedStyle(each).color, getComputedStyle(each).backgroundColor]"
    assert printed.locator("html").evaluate(colours) == ["rgb(0, 0, 0)", "rgb(255, 255, 255)"]
    for selector in (".headline .number b", ".cautions", "cite", "#voltage"):
        assert printed.locator(selector).first.evaluate(colours)[0] == "rgb(0, 0, 0)", selector


def test_every_answer_prints_on_few_pages(chromium, server):
    with chromium.new_context(service_workers="block") as context:
        for path, page in pages.walk(context, server.address, ("answer",)):
            if page.locator(".answered").count():
                paper = page.pdf(format="A4", margin=MARGINS)
                assert 1 <= len(re.findall(rb"/Type\s*/Page\b", paper)) <= 3, path
