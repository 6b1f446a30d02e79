"""Taps and keys on open pages with no server: from each to the next paint, as the browser counts it, and what moved.

Event Timing rounds to 8 ms and tells nothing shorter than 16 ms; such a one is counted as 16.
"""

from collections.abc import Callable

from playwright.sync_api import Page

from tests.bench.browser import Phone, Server, question

SHORTEST = 16.0  # [ms]
PAUSE = 350  # [ms] between two of them, as fingers in gloves are not quicker; the answer has come by then

WATCH = """(() => {
  window.touched = {};
  window.moved = 0;
  new PerformanceObserver(list => {
    for (const each of list.getEntries()) {
      if (each.interactionId) touched[each.interactionId] = Math.max(touched[each.interactionId] ?? 0, each.duration);
    }
  }).observe({ type: 'event', durationThreshold: 16, buffered: true });
  new PerformanceObserver(list => {
    for (const each of list.getEntries()) if (!each.hadRecentInput) moved += each.value;
  }).observe({ type: 'layout-shift', buffered: true });
})()"""


def interactions(phone: Phone, server: Server) -> tuple[list[float], float]:
    """Return (milliseconds from each tap or key to the next paint, the layout shifts of all pages together)."""
    times: list[float] = []
    moved = 0.0
    with phone.opened() as page:
        page.add_init_script(WATCH)
        for address, acts in WALK:
            page.goto(server.address + address)
            page.wait_for_timeout(1500)
            for act in acts:
                act(page)
                page.wait_for_timeout(PAUSE)
            found = page.evaluate("[Object.values(touched), moved]")
            times += [float(each) for each in found[0]] + [SHORTEST] * (len(acts) - len(found[0]))
            moved += found[1]
    return times, moved


def _tap(selector: str, number: int = 0) -> Callable[[Page], None]:
    return lambda page: page.locator(selector).locator("visible=true").nth(number).tap()


def _key(selector: str, key: str) -> Callable[[Page], None]:
    return lambda page: page.locator(selector).press(key)


# Address and what is done there: about fifty in all.
WALK: tuple[tuple[str, list[Callable[[Page], None]]], ...] = (
    (
        question("24"),
        [
            *[_tap("[data-fill=voltage]", number) for number in range(3)],
            *[_tap("[data-fill=travel_speed]", number) for number in range(3)],
            *[_tap(".steps button", number) for number in (1, 1, 0, 3, 3, 2)],
            *[_key("#current", key) for key in ("End", "5", "Backspace", "5", "Backspace")],
            *[_tap("#answer summary", number) for number in (0, 1)],
        ],
    ),
    ("settings?wire_material=mild-steel&thickness=1%2F4+in&joint=fillet", [_tap(".steps button", 1) for _ in range(6)]),
    ("fault-finder?fault=spatter", [_tap("#answer summary", 0), _tap("#answer summary", 1)]),
    ("make-safe?job=machine", [_tap("label.tick", number) for number in range(6)]),
    (
        "",
        [
            *[_tap("#questions summary", number) for number in range(4)],
            *[_key("#find", key) for key in "spool"],
            *[_tap("button[data-theme]", number) for number in (1, 2, 0)],
        ],
    ),
)
