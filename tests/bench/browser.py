"""A phone for the benchmarks: a Chromium of 360 by 640 with a profile that outlives it, and the server it met once."""

import os
import signal
import socket
import subprocess
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from urllib.parse import urlsplit

from playwright.sync_api import BrowserContext, Page, Playwright

ROOT = Path(__file__).resolve().parent.parent.parent
ARGUMENTS = [
    "--no-sandbox",
    "--disable-gpu",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
]
QUESTION = "heat-input?voltage={voltage}+V&current=180+A&travel_speed=12+in%2Fmin"


class Server:
    """A server as a process of its own, outside the browser's quota: it stands for a machine elsewhere."""

    def __init__(self, module: str, *options: str) -> None:
        command = [sys.executable, "-m", module, *options]
        self.process = subprocess.Popen(command, cwd=ROOT, stdout=subprocess.PIPE, stderr=subprocess.DEVNULL, text=True)
        assert self.process.stdout is not None
        line = self.process.stdout.readline()
        self.address = line.split()[-1]

    def kill(self) -> None:
        """End it as a power cut would, and make sure that nobody answers at its address."""
        if self.process.poll() is None:
            os.kill(self.process.pid, signal.SIGKILL)
            self.process.wait()
        with socket.socket() as line:
            where = urlsplit(self.address)
            assert line.connect_ex((where.hostname, where.port)) != 0, (
                "somebody still answers at the dead server's address"
            )


class Phone:
    """One profile. Each `opened()` is a new browser process on it."""

    def __init__(self, playwright: Playwright, program: Path, profile: Path, workers: bool) -> None:
        self.playwright = playwright
        self.program = program
        self.profile = profile
        self.workers = workers

    @contextmanager
    def opened(self) -> Iterator[Page]:
        """Yield the first page of a browser started now, and end the browser afterwards."""
        context: BrowserContext = self.playwright.chromium.launch_persistent_context(
            self.profile,
            executable_path=self.program,
            headless=True,
            args=ARGUMENTS,
            viewport={"width": 360, "height": 640},
            device_scale_factor=2,
            is_mobile=True,
            has_touch=True,
            service_workers="allow" if self.workers else "block",
        )
        try:
            yield context.pages[0]
        finally:
            context.close()


def question(voltage: str) -> str:
    """Return the address, below the server's, of a heat input with that voltage."""
    return QUESTION.format(voltage=voltage)


def learn(phone: Phone, server: Server, remembered: str) -> None:
    """Visit the live server as a reader would once: until the book is carried and one question has been asked."""
    with phone.opened() as page:
        page.goto(server.address)
        if phone.workers:
            page.wait_for_selector("[data-phone-state=ready]", timeout=30_000)
        page.goto(server.address + remembered)
        page.wait_for_selector(".answered")
        page.wait_for_timeout(2500)  # the page itself waits for resting fingers before it keeps the answer
