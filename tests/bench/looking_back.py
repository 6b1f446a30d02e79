"""Opening the log on a phone that has 10,000 entries, up to the first rows drawn: by its address, and by a tap.

The entries come to the phone as they do in a crew: it is paired, and takes them from the server.
"""

import json
from statistics import median

from tests.bench.browser import Phone
from tests.bench.records import Running
from webapp import devices

ENTRIES = 10_000
OPENINGS = 7
LOG = ("[data-log]:not([hidden])", "[data-rows] li, [data-empty]:not([hidden])")


# `began` is when the page's script shows the log's frame, `drawn` when a frame with rows in it is on the screen.
def watch(frame: str, shown: str) -> str:
    """Return the script that sees a frame shown, and then what stands in it."""
    return WATCH.replace("FRAME", json.dumps(frame)).replace("SHOWN", json.dumps(shown))


WATCH = """
window.looking = new Promise((done, fail) => {
  setTimeout(() => fail(new Error('no rows within a minute: ' + document.body?.innerText)), 60000);
  let began = 0;
  const watcher = new MutationObserver(() => {
    if (!began && document.querySelector(FRAME)) began = performance.now();
    if (!document.querySelector(SHOWN)) return;
    watcher.disconnect();
    requestAnimationFrame(() => {
      const { port1, port2 } = new MessageChannel();
      port1.onmessage = () => done({ began, drawn: performance.now() });
      port2.postMessage(0);
    });
  });
  watcher.observe(document, { childList: true, subtree: true, attributes: true });
});
"""


# From the finger's touch on one page to rows on the screen, in the same document or in another.
TAPPED = """
const epoch = at => performance.timeOrigin + at;
addEventListener('pointerdown', () => localStorage.setItem('touched', epoch(performance.now())), true);
window.looking = window.looking.then(({ drawn }) => ({ waited: epoch(drawn) - localStorage.getItem('touched') }));
"""


def take_entries(phone: Phone, crew: Running, entries: int = ENTRIES) -> float:
    """Let the phone into the crew and wait until it has every entry; return the seconds that took."""
    with phone.opened() as page:
        page.goto(crew.server.address)
        page.wait_for_selector("[data-phone-state=ready]", timeout=60_000)
        page.goto(crew.server.address + "crew#" + devices.make_code(crew.folder))
        page.get_by_role("button", name="Join the crew").tap()
        return float(
            page.evaluate(
                """async most => {
                  const began = performance.now();
                  const count = () => new Promise((done, fail) => {
                    const opening = indexedDB.open('puddlebook');
                    opening.onerror = fail;
                    opening.onsuccess = () => {
                      const asked = opening.result.transaction('rows').objectStore('rows').count();
                      asked.onsuccess = () => { opening.result.close(); done(asked.result); };
                    };
                  });
                  while (await count() < most) {
                    if (performance.now() - began > 300000) throw new Error('only ' + await count());
                    await new Promise(next => setTimeout(next, 200));
                  }
                  return (performance.now() - began) / 1000;
                }""",
                entries,
            )
        )


def open_log(phone: Phone, address: str) -> tuple[float, float, int]:
    """Return the medians of (navigation start to rows drawn, script's start to rows drawn), [ms], and the rows."""
    whole, script, rows = [], [], 0
    with phone.opened() as page:
        page.add_init_script(watch(*LOG))
        page.goto(address)
        page.wait_for_timeout(2000)  # let the browser's own start-up end
        for turn in range(OPENINGS + 1):
            page.goto(address + "log", wait_until="commit")
            seen = page.evaluate("window.looking")
            rows = page.locator("[data-rows] li").count()
            if turn > 0:  # the first reads the script and wakes the worker
                whole.append(seen["drawn"])
                script.append(seen["drawn"] - seen["began"])
            page.wait_for_timeout(1000)
            page.goto(address)
            page.wait_for_timeout(500)
    return median(whole), median(script), rows


def tap_log(phone: Phone, address: str) -> float:
    """Return the median from the touch of "Log" on the first page, read for some seconds, to rows drawn, [ms]."""
    taken = []
    with phone.opened() as page:
        page.add_init_script(watch(*LOG) + TAPPED)
        for turn in range(OPENINGS + 1):
            page.goto(address)
            page.wait_for_timeout(2500)  # by then what the log needs has been read
            page.locator("header a[href=log]").tap()
            page.locator("[data-rows] li, [data-empty]:not([hidden])").first.wait_for()
            seen = page.evaluate("window.looking")
            if turn > 0:
                taken.append(seen["waited"])
            page.wait_for_timeout(500)
    return median(taken)
