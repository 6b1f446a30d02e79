"""Driving the app as a phone in a welder's hand would: a server of its own, a real Chromium, and a watch on both."""

import os
import re
import signal
import socket
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path
from urllib.parse import urlsplit

from playwright.sync_api import (
    Browser,
    BrowserContext,
    ConsoleMessage,
    FloatRect,
    Locator,
    Page,
    Playwright,
    Response,
)

from webapp import environment

ROOT = environment.ROOT
CHROMIUM = environment.find_chromium()
ARGUMENTS = [
    "--no-sandbox",
    "--disable-gpu",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
]
PHONE = {"viewport": {"width": 360, "height": 640}, "has_touch": True, "is_mobile": True}
PATIENCE_MS = 15000  # a shared machine under load; nothing waits this long when it works

# Whether the answer belongs to what stands in the form: nothing waits to be asked, nothing is on its way, and the
# last answer was asked for after the last change.
WATCH_ASKING = """{
  const DELAY_MS = 80;  // a little more than the form's own (hx-trigger)
  let changes = 0, answered = 0, waiting = 1, underway = 0;
  const asked = new WeakMap();
  const form = event => event.target instanceof Element && event.target.closest('form[hx-get]');
  for (const type of ['input', 'change', 'submit']) {
    addEventListener(type, event => {
      if (!form(event)) return;
      changes++;
      waiting++;
      setTimeout(() => waiting--, DELAY_MS);
    }, true);
  }
  addEventListener('load', () => setTimeout(() => waiting--, DELAY_MS));
  addEventListener('htmx:config:request', event => asked.set(event.detail.ctx, changes));
  addEventListener('htmx:before:request', () => underway++);
  addEventListener('htmx:finally:request', () => underway--);
  addEventListener('htmx:after:swap', event => { answered = asked.get(event.detail.ctx) ?? answered; });
  window.isAnswered = () => !waiting && !underway && answered >= changes;
}"""


class Server:
    """A server process that can be killed like a phone loses its signal, and started again on the same port."""

    def __init__(self, data: Path, project: Path = ROOT, module: str = "webapp.serve") -> None:
        self.data = data
        self.project = project
        self.module = module
        self.build = ""
        self._process: subprocess.Popen[str] | None = None
        self._hold: socket.socket | None = None
        self.port = 0
        self._hold_port()

    @property
    def address(self) -> str:
        """The app's own address; it ends in a slash."""
        return f"http://127.0.0.1:{self.port}/"

    def start(self, project: Path | None = None) -> "Server":
        """Start, on the port it had before if there was one, and return itself once it answers."""
        self._let_go()
        self.project = project or self.project
        command = [sys.executable, "-m", self.module, "--port", str(self.port), "--data", str(self.data)]
        variables = {**os.environ, "PYTHONPATH": f"{self.project}{os.pathsep}{ROOT}", "PYTHONDONTWRITEBYTECODE": "1"}
        self._process = subprocess.Popen(
            command,
            cwd=self.project,
            env=variables,
            stdout=subprocess.PIPE,
            stderr=subprocess.DEVNULL,
            text=True,
        )
        assert self._process.stdout is not None
        said = self._process.stdout.readline()
        found = re.search(r"build (\w+): ", said)
        assert found, f"the server did not start: {said!r}"
        self.build = found[1]
        return self

    def kill(self) -> None:
        """End it without a goodbye, and hold the port so that nobody else can answer on it."""
        if self._process is None:
            return
        self._process.send_signal(signal.SIGKILL)
        self._process.wait()
        assert self._process.stdout is not None
        self._process.stdout.close()
        self._process = None
        self._hold_port()

    def __enter__(self) -> "Server":
        return self.start()

    def __exit__(self, *_: object) -> None:
        self.kill()
        self._let_go()

    def is_reachable(self) -> bool:
        """Return whether anything answers on the port."""
        try:
            socket.create_connection(("127.0.0.1", self.port), timeout=2).close()
        except ConnectionRefusedError:
            return False
        return True

    def _hold_port(self) -> None:
        # Bound but not listening: a connection is refused.
        self._hold = socket.socket()
        self._hold.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
        self._hold.bind(("127.0.0.1", self.port))
        self.port = self._hold.getsockname()[1]

    def _let_go(self) -> None:
        if self._hold is not None:
            self._hold.close()
            self._hold = None


class Watch:
    """What went on in a browser context: every response, and everything that must never appear in a console."""

    def __init__(self, context: BrowserContext) -> None:
        self.responses: list[Response] = []
        self.faults: list[str] = []
        context.on("response", lambda response: self.responses.append(response))
        context.on("weberror", lambda error: self.faults.append(f"uncaught: {error.error}"))
        context.on("console", self._read)

    def _read(self, message: ConsoleMessage) -> None:
        if "Content Security Policy" in message.text or "Content-Security-Policy" in message.text:
            self.faults.append(message.text)

    def from_network(self) -> list[str]:
        """Return the address of every response that a server gave, the worker's own fetches included."""
        return [each.url for each in self.responses if each.request.service_worker or not each.from_service_worker]


class NoSignal:
    """A guard around what is done offline: it fails if a server could have answered, or did."""

    def __init__(self, server: Server, watch: Watch) -> None:
        self.server = server
        self.watch = watch

    def __enter__(self) -> "NoSignal":
        assert not self.server.is_reachable(), "the server can be reached: nothing was tested"
        self.watch.responses.clear()
        return self

    def __exit__(self, kind: object, *_: object) -> None:
        if kind is None:
            assert not self.server.is_reachable(), "the server came back"
            assert self.watch.responses, "nothing was asked"
            assert not self.watch.from_network(), f"answered by a server: {self.watch.from_network()}"


def launch(playwright: Playwright) -> Browser:
    """Return a running Chromium without any profile."""
    return playwright.chromium.launch(executable_path=CHROMIUM, args=ARGUMENTS)


def open_profile(playwright: Playwright, profile: Path, **options: object) -> BrowserContext:
    """Return a new Chromium process on a profile folder: what a phone's browser is after it was closed."""
    settings = {"executable_path": CHROMIUM, "args": ARGUMENTS, **PHONE, **options}
    context = playwright.chromium.launch_persistent_context(profile, **settings)  # type: ignore[arg-type]
    context.set_default_timeout(PATIENCE_MS)
    context.add_init_script(WATCH_ASKING)
    return context


def visit(context: BrowserContext, address: str) -> Page:
    """Return a new page opened at an address."""
    page = context.new_page()
    page.goto(address)
    return page


def box_of(element: Locator) -> FloatRect:
    """Return where an element is on the screen."""
    box = element.bounding_box()
    assert box, f"{element} does not show"
    return box


def boxes_of(page: Page, *selectors: str) -> list[FloatRect]:
    """Return where the first of each is on the screen, all at one moment: no answer can come in between."""
    boxes = page.evaluate(
        "all => all.map(each => document.querySelector(each)?.getBoundingClientRect().toJSON())", selectors
    )
    assert all(box and box["height"] for box in boxes), dict(zip(selectors, boxes, strict=True))
    return boxes


def wait_until_answered(page: Page) -> None:
    """Wait until the answer belongs to what stands in the form, and nothing is about to replace it."""
    wait_until(page, lambda: page.evaluate("isAnswered()"))


def wait_until_carried(page: Page) -> None:
    """Wait until the page says that it will work offline."""
    page.wait_for_selector("[data-phone-state=ready]")


def wait_until(page: Page, holds: Callable[[], object], patience: int = PATIENCE_MS) -> None:
    """Wait until something holds. A page that allows no eval has no other way to be asked."""
    for _ in range(patience // 50):
        if holds():
            return
        page.wait_for_timeout(50)
    raise AssertionError(f"not within {patience} ms")


def wait_until_settled(page: Page) -> None:
    """Wait until the fingers have rested for long enough: the answer is remembered and stands in the address."""
    wait_until_answered(page)
    wait_until(page, lambda: page.evaluate("localStorage.getItem(`link:${document.forms[0].dataset.calculator}`)"))


def stop_workers(page: Page) -> None:
    """Stop every service worker, as a phone does to save its battery; it is gone when this returns."""
    session = page.context.new_cdp_session(page)
    seen: set[str] = set()

    def note(event: dict[str, list[dict[str, str]]]) -> None:
        seen.update(version["runningStatus"] for version in event["versions"])

    session.on("ServiceWorker.workerVersionUpdated", note)
    session.send("ServiceWorker.enable")
    for attempt in range(100):
        if attempt % 10 == 0:
            session.send("ServiceWorker.stopAllWorkers")
        page.wait_for_timeout(50)
        if "stopped" in seen:
            break
    session.detach()
    assert "stopped" in seen, seen


def path_of(address: str) -> str:
    """Return path and query of an address, as they would follow the app's own."""
    parts = urlsplit(address)
    return parts.path.lstrip("/") + ("?" + parts.query if parts.query else "")


def unfold(page: Page, link: Locator) -> Locator:
    """Open the part of the book that a link to a question stands in; return the link."""
    page.locator("details.part:not([open])", has=link).locator("summary").tap()
    return link
