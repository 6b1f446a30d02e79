"""Older generations of the server's files: kept before each write, found again when a file is damaged, put back.

For each file: its last ten generations, and the first of each day for thirty days. A closed segment never changes,
so one copy of it takes the place of its generations. Nothing here deletes a file of records itself; what is put aside
is renamed.
"""

import datetime
import os
import pathlib
import shutil
from collections.abc import Callable

from webapp import atomic_storage
from webapp.atomic_storage import Damaged

FOLDER = "copies"
GENERATIONS = 10
DAYS = 30


class Keeper:
    """Keeps copies of the files of one folder; `keep` is called before each write.

    What lies in the folder of copies is looked at once for each file: with years of records there are thousands.
    """

    def __init__(self, today: Callable[[], datetime.date]) -> None:
        self._today = today
        self._numbers: dict[pathlib.Path, list[int]] = {}  # of the generations of each file, the newest last
        self._days: dict[pathlib.Path, str] = {}  # the day of which a copy was kept last

    def keep(self, path: pathlib.Path) -> None:
        """Keep the file as it is, before it is replaced; the copy is the file itself under a second name."""
        folder = _folder(path)
        numbers = self._numbers.get(path)
        if numbers is None:
            numbers = sorted(_number(each) for each in folder.glob(path.name + ".generation-*"))
        # Known again only if all goes well: after a failure the folder says what is there.
        self._numbers.pop(path, None)
        number = (numbers[-1] if numbers else 0) + 1
        os.link(path, folder / _generation(path, number))
        for old in numbers[: max(0, len(numbers) + 1 - GENERATIONS)]:
            (folder / _generation(path, old)).unlink(missing_ok=True)
        self._numbers[path] = [*numbers, number][-GENERATIONS:]
        self._keep_daily(path, folder)

    def _keep_daily(self, path: pathlib.Path, folder: pathlib.Path) -> None:
        today = self._today()
        if self._days.get(path) == today.isoformat():
            return
        daily = folder / f"{path.name}.day-{today.isoformat()}"
        if not daily.exists():
            os.link(path, daily)
            oldest = (today - datetime.timedelta(days=DAYS)).isoformat()
            for each in folder.glob(path.name + ".day-*"):
                if each.name.rpartition("day-")[2] < oldest:
                    each.unlink(missing_ok=True)
        self._days[path] = today.isoformat()


def keep_closed(path: pathlib.Path) -> None:
    """Keep a second file of what will never change again: a fault in the one is not in the other."""
    copy = _folder(path) / (path.name + ".closed")
    atomic_storage.replace(copy, path.read_bytes())


def forget_generations(path: pathlib.Path) -> None:
    """Remove the older states of a closed segment: all that they hold is in it and in its copy."""
    for each in _folder(path).glob(path.name + ".generation-*"):
        each.unlink(missing_ok=True)


def good_copies(path: pathlib.Path) -> list[pathlib.Path]:
    """Return the copies of a file that are what was written, the newest first."""
    folder = path.parent / FOLDER
    closed = sorted(folder.glob(path.name + ".closed"))
    generations = sorted(folder.glob(path.name + ".generation-*"), reverse=True)
    days = sorted(folder.glob(path.name + ".day-*"), reverse=True)
    return [each for each in closed + generations + days if _is_good(each)]


def has_copies(path: pathlib.Path) -> bool:
    """Return whether a file was ever replaced or closed: then there are copies of it, good or not."""
    return any((path.parent / FOLDER).glob(path.name + ".*"))


def anything_of_records(folder: pathlib.Path) -> bool:
    """Return whether there are records or copies of records in a folder."""
    return any(folder.glob("revisions-*.json")) or any((folder / FOLDER).glob("*"))


def put_back(path: pathlib.Path, copy: pathlib.Path) -> None:
    """Put a copy in a file's place; what was there is renamed, so that somebody can still look at it."""
    if path.exists():
        aside = path.with_name(path.name + ".damaged")
        count = 1
        while aside.exists():
            count += 1
            aside = path.with_name(f"{path.name}.damaged-{count}")
        shutil.copy2(path, aside)
        os.chmod(aside, atomic_storage.MODE)
    atomic_storage.replace(path, copy.read_bytes())


def _folder(path: pathlib.Path) -> pathlib.Path:
    folder = path.parent / FOLDER
    folder.mkdir(mode=0o700, exist_ok=True)
    return folder


def _generation(path: pathlib.Path, number: int) -> str:
    return f"{path.name}.generation-{number:09d}"


def _number(path: pathlib.Path) -> int:
    return int(path.name.rpartition("-")[2])


def _is_good(path: pathlib.Path) -> bool:
    try:
        atomic_storage.read(path)
    except (Damaged, OSError, ValueError):
        return False
    return True
