"""The pages that the walks look at: every page, and every calculator in each state that it can be in.

Every page in both languages and both themes would be four walks. A run takes them by turns, page by page, beginning
with another one each time; WALK=all takes each page in all of them, and WALK=<number> repeats a run.
"""

import json
import os
import random
from collections.abc import Iterator
from typing import TypeVar
from urllib.parse import urlencode

from playwright.sync_api import BrowserContext, Page

from tests import walking
from webapp import shelf

Option = TypeVar("Option")

ALL = os.environ.get("WALK") == "all"
TURN = 0 if ALL else int(os.environ.get("WALK", "0")) or random.SystemRandom().randrange(1, 1000)
LANGUAGES = ("en", "es")
THEMES = ("dark", "noon")

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


def by_turns(options: tuple[Option, ...], number: int) -> tuple[Option, ...]:
    """Return the options for the page of that number: one of them, or all if all were asked for."""
    # One further in each round: three states of a page must not always meet the same of three options.
    return options if ALL else (options[(number + number // len(options) + TURN) % len(options)],)


def walk(
    context: BrowserContext,
    address: str,
    states: tuple[str, ...] = ONE_OF_EACH,
    languages: tuple[str, ...] = LANGUAGES[:1],
    by_halves: bool = False,
) -> Iterator[tuple[str, Page]]:
    """Open one page after the other, with everything on it that can be opened: (path, page).

    `by_halves` takes every second page of a walk that takes long over each.
    """
    recent = json.dumps(json.dumps(RECENT))
    context.add_init_script(f"if (location.host) localStorage.setItem('recent', {recent});")
    page = context.new_page()
    for number, path in enumerate(addresses(states)):
        if by_halves and 0 not in by_turns((0, 1), number):
            continue  # another run's half
        for language in by_turns(languages, number):
            path_in = path + ("&" if "?" in path else "?") + "lang=" + language
            page.goto(address + path_in)
            page.evaluate(OPEN_EVERYTHING)
            yield path_in, page


OPEN_EVERYTHING = """() => {
  for (const folded of document.querySelectorAll('details')) folded.open = true;
  for (const each of document.querySelectorAll('[data-undo], [data-update]')) each.hidden = false;
}"""
