"""The crew's server with much in its records: what a push takes, a pull, a start, and how much memory it holds.

Every server is the real one, as a process of its own. The sizes are pushed to in turns, so that a busy minute hits
all of them, and for one whole segment each: a push that rewrites a full segment takes longer than one that begins it.
"""

import itertools
import json
import pathlib
import random
import threading
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager

from tests.bench.browser import Server
from tests.faults.phones import Phone, Record, message, revision
from webapp import devices
from webapp.devices import Devices
from webapp.store import SEGMENT_SIZE, Store

SIZES = (100, 10_000, 100_000)
PULLED = 10_000
CREW = 20  # phones, most of which are there because of the limit below
PHONES = 8  # that push at once
PUSHES = 40  # of each of them
CALLS = 50  # of one phone, before another is taken: the server lets each call 60 times a minute
Seen = tuple[str, int, str]  # the store's name, how many revisions a phone has seen, the name of the last
Make = Callable[[random.Random, int], Record]  # a record by its number
NOTES = "Undercut at the toe ground out, second pass over it. "


def entry(chance: random.Random, number: int) -> Record:
    """Return a weld entry as long as a full one is."""
    fields = {
        "joint": f"bracket {number % 40}",
        "weld_pass": chance.choice(("root", "fill", "cap")),
        "job": f"job {number // 60}",
        "wire_class": chance.choice(("ER70S-6", "ER70S-3", "E71T-1")),
        "wire_lot": f"{chance.randrange(10**6):06d}",
        "gas_used": "argon 82 %, CO2 18 %",
        **{name: f"{chance.randrange(150, 300) / 10} V" for name in ("voltage", "voltage_least", "voltage_most")},
        **{name: f"{chance.randrange(100, 300)} A" for name in ("current", "current_least", "current_most")},
        **{name: f"{chance.randrange(50, 300)} degF" for name in ("preheat_measured", "interpass_measured")},
        "weld_length": "6 in",
        "arc_time": "30 s",
        "visual_result": "accept",
        "notes": NOTES * 8,
        "welded_at": f"2026-{1 + number // 3000 % 12:02d}-{1 + number // 100 % 28:02d}T10:{number % 60:02d}:00.000Z",
        "shown": "17.3 kJ/in",
    }
    body = {"kind": "weld-entry", "schema": 1, "build": "0123456789", "fields": fields}
    return revision(chance, number + 1, body=json.dumps(body), saved_at=fields["welded_at"])


def fill(folder: pathlib.Path, size: int, make: Make = entry) -> Seen:
    """Make a folder with so many revisions in it, each of a record of its own; return how far that is."""
    chance = random.Random(size)
    store = Store(folder)
    for first in range(0, size, SEGMENT_SIZE):
        store.add([make(chance, number) for number in range(first, min(size, first + SEGMENT_SIZE))], "bench")
    assert store.sequence == size
    store.close()
    return store.identity, size, store.name_at(size)


def tokens(folder: pathlib.Path, count: int) -> list[str]:
    """Let so many phones in, while no server runs."""
    known = Devices(folder)
    found = [known.pair(devices.make_code(folder), "bench", "127.0.0.1") for _ in range(count)]
    return [pair[1] for pair in found if pair is not None]


class Running:
    """A server over a folder of records, with the phones of its crew; how long it took to start."""

    def __init__(self, folder: pathlib.Path, size: int, make: Make = entry) -> None:
        self.folder = folder
        self.seen = fill(folder, size, make)
        self.tokens = tokens(folder, CREW)
        started = time.perf_counter()
        self.server = Server("webapp.serve", "--port", "0", "--data", str(folder))
        self.seconds = time.perf_counter() - started
        self.port = int(self.server.address.rstrip("/").rpartition(":")[2])
        self.used = itertools.cycle(token for token in self.tokens for _ in range(CALLS))

    def memory(self) -> float:
        """Return what the process holds in memory, [MB]."""
        status = pathlib.Path(f"/proc/{self.server.process.pid}/status").read_text()
        return int(status.partition("VmRSS:")[2].split()[0]) * 1024 / 1e6

    def phone(self) -> Phone:
        """Return a phone of the crew that has seen nothing."""
        return Phone(self.port, next(self.used))

    def push(self, record: Record) -> float:
        """Send one revision from a phone that has seen everything; return the milliseconds until it is acknowledged."""
        phone = self.phone()
        taken = push(phone, self.seen, record)
        self.seen = phone.store, phone.after, phone.after_rev
        return taken


@contextmanager
def running(folder: pathlib.Path, size: int, make: Make = entry) -> Iterator[Running]:
    """Fill a folder and run a server over it."""
    found = Running(folder, size, make)
    try:
        yield found
    finally:
        found.server.kill()


def push(phone: Phone, seen: Seen, record: Record) -> float:
    """Send one revision; return the milliseconds until it is acknowledged."""
    started = time.perf_counter()
    status, reply = phone.post("/sync", message([record], *seen))
    taken = (time.perf_counter() - started) * 1000
    assert status == 200 and reply["outcomes"][0]["outcome"] == "stored", (status, reply)
    phone.store, phone.after, phone.after_rev = reply["store"], reply["after"], reply["after_rev"]
    return taken


def latencies(servers: list[Running]) -> list[list[float]]:
    """Return for each server the milliseconds of a whole segment's pushes, one revision each, in turns."""
    chance = random.Random(7)
    found: list[list[float]] = [[] for _ in servers]
    for number in range(SEGMENT_SIZE):
        for place in range(len(servers)):
            turn = (place + number) % len(servers)
            found[turn].append(servers[turn].push(entry(chance, number)))
    return found


def pull(server: Running) -> tuple[float, int, int]:
    """Take the first entries as a new phone does; return the seconds, the messages and the entries."""
    phone = server.phone()
    started = time.perf_counter()
    messages = 0
    while len(phone.seen) < PULLED:
        assert phone.exchange(), "the server refused: called too often?"
        messages += 1
        if not phone.more:
            break
    return time.perf_counter() - started, messages, len(phone.seen)


def at_once(server: Running) -> tuple[list[float], float]:
    """Let phones push at once, one revision in each message; return all milliseconds, and the pushes a second."""
    found: list[float] = []

    def run(number: int, token: str) -> None:
        chance = random.Random(f"phone {number}")
        phone = Phone(server.port, token)
        seen = server.seen
        for each in range(PUSHES):
            found.append(push(phone, seen, entry(chance, each)))
            seen = phone.store, phone.after, phone.after_rev

    threads = [
        threading.Thread(target=run, args=(number, token)) for number, token in enumerate(server.tokens[-PHONES:])
    ]
    started = time.perf_counter()
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    assert len(found) == PHONES * PUSHES, "a phone was refused"
    return found, len(found) / (time.perf_counter() - started)
