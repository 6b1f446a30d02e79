"""How fast the book opens and answers: `.venv/bin/python -m tests.bench` measures it and prints one table.

It takes about ten minutes and wants root, to hold the whole browser to half and to a quarter of one core (`held.py`
says how); without, only the column at full speed is measured. `--rounds 3` is quicker and rougher, `--only keys`
(or `opening`, `touches`, `stops`, `log`, `jobs`, `bytes`, `server`, `records`) measures one part. In all but the
baseline, `server` and `records`, the server is dead.
"""

import argparse
import json
import random
import subprocess
import sys
import tempfile
from contextlib import ExitStack
from itertools import count
from pathlib import Path
from statistics import median, quantiles

from playwright.sync_api import Playwright, sync_playwright

from calculators import made
from tests.bench import jobs, keying, looking_back, opening, records, serving, touching
from tests.bench.browser import Phone, Server, learn, question
from tests.bench.held import HeldGroup, NoControlGroup
from tests.faults.phones import identity
from webapp import packing
from webapp.bundle import Bundle
from webapp.environment import find_chromium

PARTS = ("opening", "touches", "keys", "stops", "log", "jobs", "bytes", "server", "records")
FULL, HALF, QUARTER = "full speed", "half a core", "quarter core"
CORES = {FULL: None, HALF: 0.5, QUARTER: 0.25}
KEYS = 100
LOOP = "import time; t = time.perf_counter(); sum(range(20_000_000)); print(time.perf_counter() - t)"

Table = dict[str, dict[str, str]]


def judged(value: float, text: str, most: float | None = None, least: float | None = None) -> str:
    """Return the text of a measurement, marked if it misses its target."""
    missed = (most is not None and value > most) or (least is not None and value < least)
    return text + (" MISSED" if missed else "")


class Bench:
    """The browser's control group, the phone that met its server once, and the phone that never had a worker."""

    def __init__(self, stack: ExitStack, playwright: Playwright, rounds: int) -> None:
        self.rounds = rounds
        self.fresh = count(1)  # of questions that nobody asked before
        self.table: Table = {}
        self.targets: dict[str, str] = {}
        folder = Path(stack.enter_context(tempfile.TemporaryDirectory(prefix="bench-", ignore_cleanup_errors=True)))
        chromium = Path(find_chromium() or "chromium")
        self.loop = Path(sys.executable)
        self.group: HeldGroup | None = None
        try:
            self.group = HeldGroup("browser")
            others = HeldGroup("others")
        except NoControlGroup as reason:
            print(f"Measured only at full speed: {reason}.", file=sys.stderr)
        else:
            stack.callback(self.group.close)
            stack.callback(others.close)
            others.join()  # servers and clients too must not wait for what else this machine does
            chromium = self.group.launcher(str(chromium), folder / "chromium")
            self.loop = self.group.launcher(sys.executable, folder / "loop")
        self.folder, self.chromium, self.playwright, self.stack = folder, chromium, playwright, stack
        self.logs: tuple[Phone, Phone, str] | None = None
        self.jobbers: dict[int, tuple[Phone, str]] = {}
        self.phone = Phone(playwright, chromium, folder / "phone", workers=True)
        self.plain = Phone(playwright, chromium, folder / "plain", workers=False)
        self.dead = Server("webapp.serve", "--port", "0", "--data", str(folder / "dead"))
        self.live = Server("webapp.serve", "--port", "0", "--data", str(folder / "live"))
        stack.callback(self.live.kill)
        learn(self.phone, self.dead, question("24"))
        learn(self.plain, self.live, question("24"))
        self.dead.kill()

    def note(self, what: str, speed: str, cell: str, target: str = "") -> None:
        """Put a cell into the table."""
        self.table.setdefault(what, {})[speed] = cell
        self.targets[what] = target
        print(f"{speed}: {what}: {cell}", file=sys.stderr, flush=True)

    def hold(self, speed: str) -> None:
        """Hold the browser to a speed, and note how much longer a plain loop then takes."""
        assert self.group is not None or speed == FULL
        taken = []
        for cores in (None, CORES[speed]):
            if self.group is not None:
                self.group.hold(cores)
            taken.append(float(subprocess.run([self.loop, "-c", LOOP], capture_output=True, check=True).stdout))
        self.note("a plain loop takes this much longer", speed, f"{taken[1] / taken[0]:.1f} x")

    def opening(self, speed: str) -> None:
        """Cold openings."""
        found = opening.cold_openings(self.phone, self.plain, self.dead, self.live, self.rounds, self.fresh)
        most = 1.5 if speed == HALF else 1.2
        plain = found["plain"].medians()
        for way, words in (
            ("plain", "cold, live server, no worker"),
            ("again", "cold offline, same question again"),
            ("new", "cold offline, new question"),
        ):
            for name, value, base in zip(("first paint", "answer"), found[way].medians(), plain, strict=True):
                cell = f"{value:.0f} ms"
                if way != "plain":
                    cell = judged(value / base, f"{cell} {value / base:.2f} x", most)
                self.note(f"{words}: {name}", speed, cell, "" if way == "plain" else "1.2, 1.5, 1.2 x")

    def touches(self, speed: str) -> None:
        """Taps and keys on several pages: the next paint after each, and what moves by itself."""
        times, moved = touching.interactions(self.phone, self.dead)
        most = 100.0 if speed == QUARTER else None
        for name, value in (("median", median(times)), ("p98", quantiles(times, n=50)[-1]), ("longest", max(times))):
            cell = judged(value, f"{value:.0f} ms", None if name == "median" else most)
            self.note(f"touch or key to next paint, {name} of {len(times)}", speed, cell, "-, -, 100 ms")
        self.note("layout shift of those pages together", speed, judged(moved, f"{moved:.3f}", 0.0), "0")

    def keys(self, speed: str) -> None:
        """Keys in an open calculator."""
        times = keying.keys(self.phone, self.dead, KEYS)
        self.note("key to answer beyond the debounce, p50", speed, f"{median(times):.0f} ms")
        late = quantiles(times, n=20)[-1]
        most = {FULL: 20.0, QUARTER: 60.0}.get(speed)
        self.note("key to answer beyond the debounce, p95", speed, judged(late, f"{late:.0f} ms", most), "20, -, 60 ms")

    def stops(self, speed: str) -> None:
        """Keys just after the browser has ended the worker."""
        times = keying.keys_after_a_stop(self.phone, self.dead)
        most = 500.0 if speed == QUARTER else None
        for name, value in (("median", median(times)), ("longest", max(times))):
            cell = judged(value, f"{value:.0f} ms", most)
            self.note(f"key to answer, worker stopped, {name} of {len(times)}", speed, cell, "-, -, 500 ms")

    def log(self, speed: str) -> None:
        """Open the log with 10,000 entries in it, and with none."""
        if self.logs is None:
            full, empty = (
                Phone(self.playwright, self.chromium, self.folder / name, True) for name in ("full", "empty")
            )
            crew = self.stack.enter_context(records.running(self.folder / "crew", looking_back.ENTRIES))
            seconds = looking_back.take_entries(full, crew)
            self.note(f"log: a new phone takes {looking_back.ENTRIES} entries", FULL, f"{seconds:.1f} s")
            learn(empty, crew.server, question("24"))
            crew.server.kill()
            self.logs = full, empty, crew.server.address
        full, empty, address = self.logs
        for phone, words in ((empty, "no entry"), (full, f"{looking_back.ENTRIES} entries")):
            whole, script, rows = looking_back.open_log(phone, address)
            assert (rows > 0) == (phone is full), rows
            most = 300.0 if speed == QUARTER else None
            self.note(f"log by its address, {words}: rows drawn", speed, f"{whole:.0f} ms")
            self.note(f"log by its address, {words}: its frame to rows", speed, f"{script:.0f} ms")
            tapped = looking_back.tap_log(phone, address)
            cell = judged(tapped, f"{tapped:.0f} ms", most)
            self.note(f"tap on Log to rows drawn, {words}", speed, cell, "-, -, 300 ms")

    def jobs(self, speed: str) -> None:
        """Open the list of jobs and one job, with 500 of them on the phone, and by a tap with fewer and with more."""
        for size in jobs.GROWTH if not self.jobbers else ():
            phone = Phone(self.playwright, self.chromium, self.folder / f"jobs-{size}", True)
            number = size * (1 + jobs.ENTRIES)
            with records.running(self.folder / f"jobs-crew-{size}", number, jobs.record) as crew:
                looking_back.take_entries(phone, crew, number)
                self.jobbers[size] = phone, crew.server.address
        one = "work#" + identity(random.Random(jobs.JOBS - 1))
        most = 300.0 if speed == QUARTER else None
        for size, (phone, address) in self.jobbers.items():
            for path, link, seen, words in (
                ("", "header a[href=jobs]", jobs.LIST, f"tap on Jobs to rows drawn, {size} jobs"),
                ("jobs", "[data-rows] a[data-open]", jobs.JOB, f"tap on a job to its cards drawn, {size} jobs"),
            ):
                tapped = jobs.tap(phone, address + path, link, seen)
                self.note(words, speed, judged(tapped, f"{tapped:.0f} ms", most), "-, -, 300 ms")
        phone, address = self.jobbers[jobs.JOBS]
        for path, seen, words in (
            ("jobs", jobs.LIST, "jobs by their address: rows drawn"),
            (one, jobs.JOB, "a job by its address: its kept cards drawn"),
            (one, jobs.WORKED_OUT, "a job by its address: worked out anew"),
        ):
            whole, script = jobs.open_page(phone, address, path, seen)
            self.note(words, speed, f"{whole:.0f} ms")
            self.note(f"{words}: of that, its script", speed, f"{script:.0f} ms")

    def bytes(self) -> None:
        """What the phone carries."""
        bundle = Bundle()
        contents = [bundle.worker, *(bundle.files[address.partition("?")[0]] for address in bundle.precache)]
        files = json.loads(bundle.files["pocket.json"])["files"]
        calculators = json.dumps({path: text for path, text in files.items() if path.startswith("calculators/")})
        self.note("carried, as it is", FULL, f"{sum(map(len, contents)) / 1000:.0f} kB")
        for encoding in packing.ENCODINGS:
            total = sum(len(packing.packed(content, [encoding])[1]) for content in contents)
            each = len(packing.packed(calculators.encode(), [encoding])[1]) / len(made.CALCULATOR_MODULES)
            self.note(f"carried, {encoding}", FULL, judged(total, f"{total / 1000:.0f} kB", 500_000), "500 kB")
            for language in bundle.languages:
                more = len(packing.packed(bundle.files[f"{language}.json"], [encoding])[1])
                self.note(f"{language} beside that, {encoding}", FULL, f"{more / 1000:.0f} kB")
            self.note(f"calculators/ per calculator, {encoding}", FULL, f"{each / 1000:.1f} kB")

    def server(self) -> None:
        """Answers a second."""
        bare = Server("tests.bench.bare")
        try:
            rates = serving.rates(self.live.address, bare.address, max(3, self.rounds // 2))
        finally:
            bare.kill()
        most = rates["bare"].per_second()
        self.note("server, bare Flask view", FULL, f"{most:.0f} /s")
        for name in ("region", "page", "json"):
            rate = rates[name].per_second()
            cell = judged(rate / most, f"{rate:.0f} /s {rate / most:.2f} x", least=0.5)
            self.note(f"server, answers as {name}", FULL, cell, "0.5 x")

    def records(self) -> None:
        """Measure the crew's server with much in its records."""
        with ExitStack() as stack:
            servers = []
            for size in records.SIZES:
                server = stack.enter_context(records.running(self.folder / f"records-{size}", size))
                servers.append(server)
                self.note(f"{size} revisions: start-up", FULL, f"{server.seconds:.1f} s")
            found = records.latencies(servers)
            for size, times in zip(records.SIZES, found, strict=True):
                p95, ratio = quantiles(times, n=20)[-1], median(times) / median(found[0])
                cell = f"{median(times):.0f} ms {p95:.0f} ms {ratio:.2f} x"
                self.note(f"{size} revisions: push to ack, p50, p95", FULL, judged(ratio, cell, 2.0), "2 x")
            for size, server in zip(records.SIZES, servers, strict=True):
                if size >= records.PULLED:
                    seconds, messages, entries = records.pull(server)
                    self.note(f"{size} revisions: pull of {entries}", FULL, f"{seconds:.1f} s, {messages} calls")
                times, rate = records.at_once(server)
                cell = f"{median(times):.0f} ms, {rate:.0f} /s"
                self.note(f"{size} revisions: {records.PHONES} phones at once", FULL, cell)
                self.note(f"{size} revisions: memory", FULL, f"{server.memory():.0f} MB")

    def show(self) -> None:
        """Print the table."""
        print(f"{'':46}" + "".join(f"{speed:>22}" for speed in CORES) + "   hoped for")
        for what, cells in self.table.items():
            line = f"{what:46}" + "".join(f"{cells.get(speed, ''):>22}" for speed in CORES)
            print((line + "   " + self.targets[what]).rstrip())


def main() -> int:
    """Measure what was asked for and print it; return the exit status."""
    parser = argparse.ArgumentParser(prog="python -m tests.bench", description="Measure how fast the book is.")
    parser.add_argument("--rounds", type=int, default=7, help="runs of each cold opening (default 7)")
    parser.add_argument("--only", choices=PARTS, action="append", help="measure this part; may be given again")
    options = parser.parse_args()
    parts = options.only or PARTS
    with ExitStack() as stack:
        bench = Bench(stack, stack.enter_context(sync_playwright()), options.rounds)
        for speed in CORES if bench.group is not None else (FULL,):
            if not {"opening", "touches", "keys", "stops", "log", "jobs"}.intersection(parts):
                break
            bench.hold(speed)
            for part, measure in (
                ("opening", bench.opening),
                ("touches", bench.touches),
                ("keys", bench.keys),
                ("stops", bench.stops),
                ("log", bench.log),
                ("jobs", bench.jobs),
            ):
                if part in parts:
                    measure(speed)
        for part, count_up in (("bytes", bench.bytes), ("server", bench.server), ("records", bench.records)):
            if part in parts:
                count_up()
        bench.show()
    return 0


if __name__ == "__main__":
    sys.exit(main())
