"""Cold opening: a browser process started now, from navigation start to first paint and to the answer in sight."""

from dataclasses import dataclass, field
from itertools import count
from statistics import median

from tests.bench.browser import Phone, Server, question

# Runs before the page's own scripts. The promise settles when a frame with the answer in it has been drawn: a task
# queued from inside the frame's own callback runs once that frame is done.
WATCH = """
window.opening = new Promise((done, fail) => {
  setTimeout(() => fail(new Error('no answer within a minute: ' + document.body?.innerText)), 60000);
  const look = () => {
    if (!document.querySelector('#answer .answered .number')) return;
    watcher.disconnect();
    const inDocument = performance.now();
    requestAnimationFrame(() => {
      const { port1, port2 } = new MessageChannel();
      port1.onmessage = () => {
        const drawn = performance.now();
        const paint = () => performance.getEntriesByName('first-contentful-paint')[0];
        const report = () => paint()
          ? done({ paint: paint().startTime, inDocument, answer: Math.max(drawn, paint().startTime) })
          : setTimeout(report, 5);
        report();
      };
      port2.postMessage(0);
    });
  };
  const watcher = new MutationObserver(look);
  watcher.observe(document, { childList: true, subtree: true });
});
"""


@dataclass
class Openings:
    """Milliseconds of one way of opening, over its runs."""

    paint: list[float] = field(default_factory=list)
    answer: list[float] = field(default_factory=list)

    def medians(self) -> tuple[float, float]:
        """Return the median first paint and the median answer in sight, [ms]."""
        return median(self.paint), median(self.answer)


def open_once(phone: Phone, address: str, expect_phone: bool) -> tuple[float, float]:
    """Return (first paint, answer in sight), [ms after navigation start], in a browser started for this."""
    with phone.opened() as page:
        page.add_init_script(WATCH)
        reply = page.goto(address, wait_until="commit")
        seen = page.evaluate("window.opening")
        assert reply is not None and reply.from_service_worker == expect_phone, "answered by the wrong side"
        return seen["paint"], seen["answer"]


def cold_openings(
    phone: Phone, plain: Phone, dead: Server, live: Server, rounds: int, fresh: "count[int]"
) -> dict[str, Openings]:
    """Return the openings of the three ways, taken in turns so that a busy minute hits all of them.

    `again` and `new` have a worker and no server; `plain` has a server and never had a worker. `again` asks what was
    asked before, so the phone may give the kept page back; `new` asks what was never asked.
    """
    ways = ["again", "new", "plain"]
    found = {way: Openings() for way in ways}
    for turn in range(rounds + 1):
        for way in ways[turn % 3 :] + ways[: turn % 3]:
            voltage = "24" if way == "again" else f"24.{next(fresh):04d}"
            server = live if way == "plain" else dead
            paint, answer = open_once(
                plain if way == "plain" else phone, server.address + question(voltage), way != "plain"
            )
            if turn > 0:  # the first turn only warms the disk
                found[way].paint.append(paint)
                found[way].answer.append(answer)
    return found
