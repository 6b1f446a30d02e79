"""Opening the list of jobs, and one job, on a phone that has 50, 500 or 1,000 jobs with 20 entries each.

Each job keeps the cards of a real answer. They come to the phone as they do in a crew: it takes them from the server.
"""

import json
import random
from functools import cache
from statistics import median
from urllib.parse import parse_qsl, urlencode

from tests import html_reading
from tests.bench import looking_back, records
from tests.bench.browser import Phone
from tests.faults.phones import Record, identity, revision
from webapp import pocket

JOBS = 500
GROWTH = (50, 500, 1000)
ENTRIES = 20  # of each
CALL = {
    "title": "Loader bucket ear",
    "broken": "Ear cracked through at the pin",
    "customer": "B. Hand",
    "place": "Quarry road 7",
    "base_metal": "mild-steel",
    "joints-1-name": "ear",
    "joints-1-thickness": "1/4 in",
    "joints-1-weld_length": "6 in",
    "joints-2-name": "gusset",
    "joints-2-thickness": "3/16 in",
    "joints-2-weld_length": "4 in",
}
LIST = ("[data-jobs]:not([hidden])", "[data-rows] li")
JOB = ("[data-work]:not([hidden])", "[data-cards] [data-card]")
WORKED_OUT = ("[data-work]:not([hidden])", "[data-cards][data-worked-out=yes]")


def record(chance: random.Random, number: int) -> Record:
    """Return a job, or one of the twenty entries that follow it."""
    place, of = divmod(number, 1 + ENTRIES)
    job = identity(random.Random(place))
    at = f"2026-{1 + place // 90:02d}-{1 + place % 28:02d}T10:{of:02d}:00.000Z"
    if of:
        made = records.entry(chance, number)
        body = json.loads(made["body"])
        body["fields"] |= {"job_id": job, "used_wire": "0.032 kg", "used_gas": "8.1 L", "welded_at": at}
        return revision(chance, number + 1, body=json.dumps(body), saved_at=at)
    fields = {**CALL, **cards(), "title": f"{CALL['title']} {place}", "status": "open" if place % 5 else "closed"}
    body = {"kind": "job", "schema": 1, "build": "0123456789", "fields": fields}
    return revision(chance, number + 1, of=job, body=json.dumps(body), saved_at=at)


@cache
def cards() -> dict[str, str]:
    """Return the cards of a real answer as a phone keeps them."""
    pairs = parse_qsl(urlencode(CALL))
    page = html_reading.Page(pocket.respond(pocket.Request("/job", pairs, True), "en", "0123456789").body)
    found: dict[str, list[object]] = {}
    for each in page.elements:
        if "data-card" in each.attributes:
            found[each.attributes["data-card"]] = [each.children[0].text()]  # type: ignore[union-attr]
        elif "data-line" in each.attributes:
            label, value = [child.text() for child in each.children if not isinstance(child, str)]
            found[list(found)[-1]].append([each.attributes["data-line"], label, value])
    return {f"card_{name}": json.dumps(lines) for name, lines in found.items()}


def open_page(phone: Phone, address: str, path: str, seen: tuple[str, str]) -> tuple[float, float]:
    """Return the medians of (navigation start to what is to be seen, its script's start to that), [ms]."""
    whole, script = [], []
    with phone.opened() as page:
        page.add_init_script(looking_back.watch(*seen))
        page.goto(address)
        page.wait_for_timeout(2000)  # let the browser's own start-up end
        for turn in range(looking_back.OPENINGS + 1):
            page.goto(address + path, wait_until="commit")
            found = page.evaluate("window.looking")
            if turn > 0:  # the first reads the script and wakes the worker
                whole.append(found["drawn"])
                script.append(found["drawn"] - found["began"])
            page.wait_for_timeout(1000)
            page.goto(address)
            page.wait_for_timeout(500)
    return median(whole), median(script)


def tap(phone: Phone, address: str, link: str, seen: tuple[str, str]) -> float:
    """Return the median from the touch of a link on a page read for some seconds to what is to be seen, [ms]."""
    taken = []
    with phone.opened() as page:
        page.add_init_script(looking_back.watch(*seen) + looking_back.TAPPED)
        for turn in range(looking_back.OPENINGS + 1):
            page.goto(address)
            page.wait_for_timeout(3000)  # by then what comes next has been read
            page.evaluate("window.sameDocument = true")
            page.locator(link).first.tap()
            page.locator(seen[1]).first.wait_for()
            found = page.evaluate("window.looking")
            if turn > 0:  # the first one may find a phone that never had a record
                assert page.evaluate("window.sameDocument"), "a new document"
                taken.append(found["waited"])
            page.wait_for_timeout(500)
    return median(taken)
