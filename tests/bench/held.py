"""Holding the whole browser to a share of one core, through the kernel's own CPU quota.

The devtools' throttle slows the page and leaves the worker, the network and the painting at full speed, so it would
flatter an app that thinks in a worker. A control group counts every thread of every process of the browser.
"""

import os
import time
from contextlib import suppress
from pathlib import Path

CONTROL_GROUPS = Path("/sys/fs/cgroup")
# Short, so that a burst of 10 ms is already slowed: with the kernel's usual 100 ms it would pass at full speed. Work
# that ends within one tick of the scheduler (4 ms here) still does.
PERIOD_MICROSECONDS = 10_000


class NoControlGroup(Exception):
    """This machine lets us hold nothing back; the message says why."""


class HeldGroup:
    """A control group; `hold(0.25)` lets its processes have a quarter of a core between them, `hold(None)` all.

    Whatever else runs on the machine has to stand back, so that the group gets what it is allowed.
    """

    def __init__(self, purpose: str) -> None:
        name = f"puddlebook-bench-{os.getpid()}-{purpose}"
        self.version = 2 if (CONTROL_GROUPS / "cgroup.controllers").exists() else 1
        self.folder = CONTROL_GROUPS / name if self.version == 2 else CONTROL_GROUPS / "cpu" / name
        try:
            self.folder.mkdir()
        except OSError as error:
            raise NoControlGroup(f"{self.folder} cannot be made: {error.strerror}") from error
        if not (self.folder / ("cpu.max" if self.version == 2 else "cpu.cfs_quota_us")).exists():
            self.folder.rmdir()
            raise NoControlGroup(f"{CONTROL_GROUPS} does not share out CPU time")
        weight, most = ("cpu.weight", 10_000) if self.version == 2 else ("cpu.shares", 262_144)
        (self.folder / weight).write_text(str(most))
        self.hold(None)

    def hold(self, cores: float | None) -> None:
        """Let every process of the group have `cores` of CPU time together."""
        quota = None if cores is None else round(cores * PERIOD_MICROSECONDS)
        if self.version == 2:
            (self.folder / "cpu.max").write_text(f"{'max' if quota is None else quota} {PERIOD_MICROSECONDS}")
            return
        (self.folder / "cpu.cfs_quota_us").write_text("-1")
        (self.folder / "cpu.cfs_period_us").write_text(str(PERIOD_MICROSECONDS))
        (self.folder / "cpu.cfs_quota_us").write_text("-1" if quota is None else str(quota))

    def launcher(self, program: str, path: Path) -> Path:
        """Write a command at `path` that runs `program` and all its children inside the group; return the path."""
        path.write_text(f'#!/bin/sh\necho $$ > {self.folder}/cgroup.procs\nexec "{program}" "$@"\n')
        path.chmod(0o755)
        return path

    def join(self) -> None:
        """Put this process, and the children it will have, into the group."""
        (self.folder / "cgroup.procs").write_text(str(os.getpid()))

    def close(self) -> None:
        """Remove the group; whoever is still in it goes back to where all others are."""
        for _ in range(50):
            for process in (self.folder / "cgroup.procs").read_text().split():
                with suppress(OSError):  # it has just ended
                    (self.folder.parent / "cgroup.procs").write_text(process)
            with suppress(OSError):  # the kernel takes a moment to let go of one that ended
                self.folder.rmdir()
                return
            time.sleep(0.1)
