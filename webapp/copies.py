"""Older generations of the server's files: kept before each write, found again when a file is damaged, put back.

For each file: its last ten generations, and the first of each day for thirty days. A closed segment never changes,
so one copy of it is enough. Nothing here deletes a file of records itself; what is put aside is renamed.
"""

import datetime
import os
import pathlib
import shutil

from webapp import atomic_storage
from webapp.atomic_storage import Damaged

FOLDER = "copies"
GENERATIONS = 10
DAYS = 30


def keep(path: pathlib.Path, today: datetime.date) -> None:
    """Keep the file as it is, before it is replaced; the copy is the file itself under a second name."""
    folder = _folder(path)
    numbers = sorted(_number(each) for each in folder.glob(path.name + ".generation-*"))
    number = (numbers[-1] if numbers else 0) + 1
    os.link(path, folder / f"{path.name}.generation-{number:09d}")
    for old in numbers[: max(0, len(numbers) + 1 - GENERATIONS)]:
        (folder / f"{path.name}.generation-{old:09d}").unlink(missing_ok=True)
    daily = folder / f"{path.name}.day-{today.isoformat()}"
    if not daily.exists():
        os.link(path, daily)
        oldest = (today - datetime.timedelta(days=DAYS)).isoformat()
        for each in folder.glob(path.name + ".day-*"):
            if each.name.rpartition("day-")[2] < oldest:
                each.unlink(missing_ok=True)


def keep_closed(path: pathlib.Path) -> None:
    """Keep a second file of what will never change again: a fault in the one is not in the other."""
    copy = _folder(path) / (path.name + ".closed")
    atomic_storage.replace(copy, path.read_bytes())


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


def _number(path: pathlib.Path) -> int:
    return int(path.name.rpartition("-")[2])


def _is_good(path: pathlib.Path) -> bool:
    try:
        atomic_storage.read(path)
    except (Damaged, OSError, ValueError):
        return False
    return True
