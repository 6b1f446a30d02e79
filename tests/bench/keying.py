"""Keys pressed in an open calculator with no server: from the key to the changed answer."""

import random

from playwright.sync_api import Page

from tests.bench.browser import Phone, Server, question

DEBOUNCE = 60.0  # [ms], as the form's own hx-trigger says
STOPS = 10

# The clock starts at the key event's own time stamp, given by the browser when the key came in.
WATCH = """
() => {
  const answer = document.querySelector('#answer');
  let pressed = 0;
  document.addEventListener('keydown', event => { pressed = event.timeStamp; }, true);
  new MutationObserver(() => {
    if (pressed && answer.querySelector('.answered')) { window.answered(performance.now() - pressed); pressed = 0; }
  }).observe(answer, { childList: true });
  window.next = () => new Promise(done => { window.answered = done; });
}
"""


def _press(page: Page, key: str) -> float:
    """Return the milliseconds from a key to its answer."""
    page.evaluate("() => { window.waiting = window.next(); }")
    page.keyboard.press(key)
    return float(page.evaluate("window.waiting"))


def _ready(page: Page, server: Server) -> None:
    page.goto(server.address + question("24.1"))
    page.wait_for_selector(".answered")
    page.evaluate(WATCH)
    page.focus("#voltage")
    page.keyboard.press("End")
    page.wait_for_timeout(3000)  # let the browser's own start-up end


def keys(phone: Phone, server: Server, presses: int) -> list[float]:
    """Return key-to-answer times beyond the debounce, [ms]; each key changes the number asked."""
    pauses = random.Random(1)
    found = []
    with phone.opened() as page:
        _ready(page, server)
        for turn in range(presses):
            key = "Backspace" if turn % 2 else str(1 + turn // 2 % 9)
            found.append(_press(page, key) - DEBOUNCE)
            # Never in step with the quota's period, and shorter than the page's idea of resting fingers.
            page.wait_for_timeout(pauses.uniform(80.0, 200.0))
    return found


def keys_after_a_stop(phone: Phone, server: Server) -> list[float]:
    """Return key-to-answer times, [ms], debounce included, each just after the browser ended the worker."""
    found = []
    with phone.opened() as page:
        _ready(page, server)
        devtools = page.context.new_cdp_session(page)
        status: list[str] = []
        devtools.on(
            "ServiceWorker.workerVersionUpdated",
            lambda event: status.extend(version["runningStatus"] for version in event["versions"]),
        )
        devtools.send("ServiceWorker.enable")
        for turn in range(STOPS):
            status.clear()
            devtools.send("ServiceWorker.stopAllWorkers")
            while "stopped" not in status:
                page.wait_for_timeout(50)
            page.wait_for_timeout(300)
            found.append(_press(page, "Backspace" if turn % 2 else "5"))
            page.wait_for_timeout(2500)
    return found
