"""The pages that the walks look at: every page, and every calculator in each state that it can be in."""

import json
from collections.abc import Iterator
from urllib.parse import urlencode

from playwright.sync_api import BrowserContext, Page

from tests import walking
from webapp import shelf

# An answer that waits looks the same for all: the specimen's stands for them.
ONE_OF_EACH = ("blank", "problem", "answer")
RECENT = [
    {"calculator": name, "href": f"{name}?units=us", "label": "A result", "number": "17.3\u00a0kJ/in", "at": 0}
    for name in ("heat-input", "spool-life")
]


def addresses(states: tuple[str, ...] = ONE_OF_EACH) -> list[str]:
    """Return the address of every page, each calculator's in each of these states."""
    found = ["", "about", "glossary", "log", "entry", "crew", "jobs", "work", "truck", "no/such/page"]
    for name in shelf.names():
        wanted = list(states) + ["waiting"] * (name == "specimen")
        for state, pairs in walking.states(name):
            if wanted and state.startswith(tuple(wanted)):
                wanted = [each for each in wanted if not state.startswith(each)]
                found.append(name + ("?" + urlencode(pairs) if pairs else ""))
    return found


def walk(context: BrowserContext, address: str, states: tuple[str, ...] = ONE_OF_EACH) -> Iterator[tuple[str, Page]]:
    """Open one page after the other, with everything on it that can be opened: (path, page)."""
    recent = json.dumps(json.dumps(RECENT))
    context.add_init_script(f"if (location.host) localStorage.setItem('recent', {recent});")
    page = context.new_page()
    for path in addresses(states):
        page.goto(address + path)
        page.evaluate(OPEN_EVERYTHING)
        yield path, page


OPEN_EVERYTHING = """() => {
  for (const folded of document.querySelectorAll('details')) folded.open = true;
  for (const each of document.querySelectorAll('[data-undo], [data-update]')) each.hidden = false;
}"""
