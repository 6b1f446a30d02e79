"""`./webapp/start restore`: put good copies in the place of damaged files of records.

It changes only what is damaged or missing, renames what it replaces, and gives the store a new name, so that every
phone sends again what it has: what the copies lack comes back from the phones.
"""

import datetime
import os
import pathlib
from typing import Any

from tinydb import TinyDB

from webapp import atomic_storage, copies
from webapp.atomic_storage import AtomicStorage, Damaged
from webapp.store import LEDGER, SEGMENT_SIZE, CannotStart, Store, hold, new_identity, segment_name


def restore(folder: pathlib.Path) -> list[str]:
    """Make the records in a folder whole again; return what was done, a sentence each.

    Raises
    ------
    CannotStart
        If another process has them open, or a file has no good copy; nothing is changed then.
    """
    handle = hold(folder)
    try:
        steps = _Steps(folder)
        steps.find()
        done = steps.carry_out()
    finally:
        os.close(handle)
    Store(folder).close()  # whoever restores wants to know now whether it opens
    return done


class _Steps:
    """What has to be put back, found first and done afterwards."""

    def __init__(self, folder: pathlib.Path) -> None:
        self.folder = folder
        self.put: list[tuple[pathlib.Path, pathlib.Path]] = []
        self.closed: list[dict[str, Any]] = []

    def find(self) -> None:
        """Decide which copies go where."""
        ledger = self._whole(self.folder / LEDGER)
        self.closed = sorted(ledger.get("closed", {}).values(), key=lambda entry: entry["number"])
        for entry in self.closed:
            self._find_closed(entry)
        # A ledger from before a segment was closed does not name it yet.
        while self._follows(len(self.closed) + 2):
            self._close_again(len(self.closed) + 1)
        newest = self.folder / segment_name(len(self.closed) + 1)
        if newest.exists() or copies.has_copies(newest):
            self._whole(newest)

    def _follows(self, number: int) -> bool:
        """Return whether a segment with revisions in it is there; an empty one is made ahead of its time."""
        path = self.folder / segment_name(number)
        return path.exists() and bool(self._whole(path)["revisions"])

    def _whole(self, path: pathlib.Path) -> Any:
        """Return what a file holds, or the newest good copy of it, which is then put in its place."""
        for known, copy in self.put:
            if known == path:
                return atomic_storage.read(copy)
        try:
            return atomic_storage.read(path)
        except (Damaged, OSError, ValueError):
            good = copies.good_copies(path)
        if not good:
            raise CannotStart(f"{path} is damaged or gone, and there is no good copy of it. Nothing was changed.")
        self.put.append((path, good[0]))
        return atomic_storage.read(good[0])

    def _find_closed(self, entry: dict[str, Any]) -> None:
        path = self.folder / segment_name(entry["number"])
        if path.exists() and atomic_storage.checksum(path.read_bytes()) == entry["checksum"]:
            return
        for copy in copies.good_copies(path):
            if atomic_storage.checksum(copy.read_bytes()) == entry["checksum"]:
                self.put.append((path, copy))
                return
        raise CannotStart(f"{path} is damaged or gone, and there is no good copy of it. Nothing was changed.")

    def _close_again(self, number: int) -> None:
        path = self.folder / segment_name(number)
        held = self._whole(path)["revisions"]
        if len(held) != SEGMENT_SIZE:
            raise CannotStart(
                f"{path} should hold {SEGMENT_SIZE} revisions and holds {len(held)}. Nothing was changed."
            )
        source = dict(self.put).get(path, path)
        checksum = atomic_storage.checksum(source.read_bytes())
        self.closed.append({"number": number, "checksum": checksum, "revisions": len(held)})

    def carry_out(self) -> list[str]:
        """Put the copies back, and give the store a new name; return what was done."""
        done = []
        for path, copy in self.put:
            copies.put_back(path, copy)
            done.append(f"{path.name} was put back from {copy.name}; what stood there is kept beside it.")
        today = datetime.datetime.now(datetime.UTC).date()
        ledger = TinyDB(self.folder / LEDGER, storage=AtomicStorage, before=copies.Keeper(lambda: today).keep)
        ledger.table("store").update({"identity": new_identity()})
        named = {entry["number"] for entry in ledger.table("closed").all()}
        ledger.table("closed").insert_multiple(entry for entry in self.closed if entry["number"] not in named)
        done.append("The store has a new name: every phone sends again what it has.")
        return done
