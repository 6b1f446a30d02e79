"""The server's records: one process, one lock, and files that are whole or that are refused.

Revisions are kept in the order in which the server stored them, in segments of at most 200. Only the newest segment
is ever written again; the closed ones are named in a ledger with their checksums. What the rest of the server sees is
`Store`: an engine for a fleet would only have to offer the same five calls.
"""

import datetime
import fcntl
import json
import os
import pathlib
import secrets
import threading
from collections.abc import Callable, Iterable
from typing import Any

from tinydb import TinyDB

from webapp import atomic_storage, copies
from webapp.atomic_storage import AtomicStorage, Damaged

LEDGER = "ledger.json"
SEGMENT_SIZE = 200  # revisions; TinyDB writes the whole of the newest segment again for each push
_SEGMENTS_IN_MEMORY = 8  # closed segments read lately

Record = dict[str, Any]


class CannotStart(Exception):
    """Why the records are not opened; the message says what to do."""


class Store:
    """The revisions of a crew's records.

    A revision is stored once, whatever its sender does; `sequence` counts them in the order of storing. `identity`
    names this store: it changes when older copies are put back, so that phones know to send again what they have.
    """

    def __init__(self, folder: pathlib.Path, now: Callable[[], datetime.datetime] | None = None) -> None:
        self.folder = folder
        self.now = now or (lambda: datetime.datetime.now(datetime.UTC))
        self._lock = threading.Lock()
        folder.mkdir(parents=True, exist_ok=True, mode=0o700)
        self._held = hold(folder)
        self._keeper = copies.Keeper(lambda: self.now().date())
        try:
            self._open()
        except BaseException:
            self.close()
            raise

    def close(self) -> None:
        """Let another process open the records."""
        if self._held >= 0:
            os.close(self._held)
        self._held = -1

    # ------------------------------------------------------------ opening

    def _open(self) -> None:
        """Read and check every file, and make the index."""
        self._places: dict[tuple[str, str], int] = {}  # (id, rev) -> sequence
        self._heads: dict[str, set[str]] = {}  # id -> the revisions that no other follows
        self._followed: dict[str, set[str]] = {}  # id -> the revisions that some other follows
        self._names: list[str] = []  # the revision stored at each sequence, from 1
        self._recent: dict[int, list[Record]] = {}  # closed segments in memory, the latest last
        ledger = self._table(LEDGER)
        if ledger.storage.read() is None:
            if copies.anything_of_records(self.folder):
                raise CannotStart(self._words_for(self.folder / LEDGER, "it is missing"))
            ledger.table("store").insert({"identity": new_identity(), "made": self.now().isoformat()})
        self._ledger = ledger
        self.identity: str = ledger.table("store").all()[0]["identity"]
        self._closed: list[dict[str, Any]] = sorted(ledger.table("closed").all(), key=lambda entry: entry["number"])
        for entry in self._closed:
            self._index(self._read_closed(entry))
        number = len(self._closed) + 1
        self._refuse_what_follows(number)
        self._newest = self._segment_table(number)
        self._newest_records: list[Record] = list(self._newest.table("revisions").all())
        self._index(self._newest_records)

    def _segment_table(self, number: int) -> TinyDB:
        """Return a segment; a new one is written at once, empty, so that its first write already keeps a copy."""
        table = self._table(segment_name(number))
        if table.storage.read() is None:
            table.storage.write({"revisions": {}})
        return table

    def _table(self, name: str) -> TinyDB:
        path = self.folder / name
        try:
            return TinyDB(path, storage=AtomicStorage, before=self._keeper.keep)
        except (Damaged, OSError, ValueError) as error:
            raise CannotStart(self._words_for(path, str(error))) from error

    def _read_closed(self, entry: dict[str, Any]) -> list[Record]:
        path = self.folder / segment_name(entry["number"])
        try:
            whole = path.read_bytes()
            if atomic_storage.checksum(whole) != entry["checksum"]:
                raise Damaged(path, "its content is not what the ledger says")
            return list(json.loads(whole.partition(b"\n")[2])["revisions"].values())
        except (Damaged, OSError, ValueError, KeyError) as error:
            raise CannotStart(self._words_for(path, str(error))) from error

    def _refuse_what_follows(self, number: int) -> None:
        """Refuse to start if the newest segment has gone, or segments are there that the ledger does not lead to.

        One empty segment may follow: it is made before the ledger closes the one before it.
        """
        path = self.folder / segment_name(number)
        if not path.exists() and copies.has_copies(path):
            raise CannotStart(self._words_for(path, "it is missing"))
        beyond = sorted(each for each in self.folder.glob("revisions-*.json") if each.name > path.name)
        following = segment_name(number + 1)
        empty = [each.name for each in beyond] == [following] and not self._table(following).table("revisions").all()
        if beyond and not empty:
            raise CannotStart(self._words_for(self.folder / LEDGER, f"it is older than {beyond[0].name}"))

    def _words_for(self, path: pathlib.Path, why: str) -> str:
        good = copies.good_copies(path)
        copy = f"The newest good copy is {good[0]}." if good else "There is no good copy of it."
        return (
            f"The records are not opened: {path} is damaged or gone ({why}). {copy} "
            "Nothing was changed. Put good copies back with: ./webapp/start restore"
        )

    def _index(self, stored: Iterable[Record]) -> None:
        for each in stored:
            record = each["record"]
            id, rev = record["id"], record["rev"]
            self._names.append(rev)
            self._places[(id, rev)] = len(self._names)
            followed = self._followed.setdefault(id, set())
            followed.update(record["parents"])
            heads = self._heads.setdefault(id, set())
            heads.difference_update(record["parents"])
            if rev not in followed:
                heads.add(rev)

    # ------------------------------------------------------------ what the server asks

    @property
    def sequence(self) -> int:
        """How many revisions are stored."""
        return len(self._names)

    def add(self, records: list[Record], device: str) -> list[str]:
        """Store revisions; return for each `stored`, `already` or `conflict`.

        `conflict` is stored too: it says that another version stands beside it. When this returns, all of it is on
        the disk; if it raises, nothing that was not there before counts as stored.
        """
        with self._lock:
            fresh = []
            outcomes = []
            seen: set[tuple[str, str]] = set()
            for record in records:
                place = (record["id"], record["rev"])
                known = place in self._places or place in seen
                outcomes.append("already" if known else "stored")
                if not known:
                    seen.add(place)
                    fresh.append(record)
            received = self.now().isoformat(timespec="milliseconds")
            while fresh:
                self._close_full_segment()
                room = SEGMENT_SIZE - len(self._newest_records)
                part, fresh = fresh[:room], fresh[room:]
                stored = [{"record": record, "device": device, "received": received} for record in part]
                self._newest.table("revisions").insert_multiple(stored)
                self._newest_records += stored
                self._index(stored)
            return [
                "conflict" if outcome == "stored" and len(self._heads[record["id"]]) > 1 else outcome
                for record, outcome in zip(records, outcomes)
            ]

    def after(self, sequence: int, most: int) -> list[Record]:
        """Return at most so many revisions in the order of storing, beginning after this sequence."""
        with self._lock:
            found: list[Record] = []
            while len(found) < most and sequence < len(self._names):
                part = self._segment(sequence // SEGMENT_SIZE)[sequence % SEGMENT_SIZE :]
                part = part[: most - len(found)]
                found += [each["record"] for each in part]
                sequence += len(part)
            return found

    def name_at(self, sequence: int) -> str:
        """Return the revision stored at a sequence, or "" if there is none."""
        return self._names[sequence - 1] if 1 <= sequence <= len(self._names) else ""

    def heads(self, id: str) -> list[str]:
        """Return the revisions of a record that no other follows, in order; more than one is a conflict."""
        return sorted(self._heads.get(id, ()))

    def has(self, id: str, rev: str) -> bool:
        """Return whether a revision is stored."""
        return (id, rev) in self._places

    # ------------------------------------------------------------ segments

    def _segment(self, index: int) -> list[Record]:
        if index >= len(self._closed):
            return self._newest_records
        records = self._recent.pop(index, None)
        if records is None:
            records = self._read_closed(self._closed[index])
        self._recent[index] = records
        if len(self._recent) > _SEGMENTS_IN_MEMORY:
            del self._recent[next(iter(self._recent))]
        return records

    def _close_full_segment(self) -> None:
        if len(self._newest_records) < SEGMENT_SIZE:
            return
        number = len(self._closed) + 1
        path = self.folder / segment_name(number)
        whole = path.read_bytes()
        if atomic_storage.checksum(whole) != atomic_storage.checksum(
            atomic_storage.written(self._newest.storage.content)  # type: ignore[attr-defined]
        ):
            raise Damaged(path, "its content has changed under the server")
        following = self._segment_table(number + 1)
        copies.keep_closed(path)
        entry = {"number": number, "checksum": atomic_storage.checksum(whole), "revisions": len(self._newest_records)}
        self._ledger.table("closed").insert(entry)
        self._closed.append(entry)
        self._newest, self._newest_records = following, []
        copies.forget_generations(path)


def segment_name(number: int) -> str:
    """Return the file name of a segment, counted from 1."""
    return f"revisions-{number:06d}.json"


def hold(folder: pathlib.Path) -> int:
    """Return a handle that keeps every other process from opening the records in a folder.

    Raises
    ------
    CannotStart
        If another process has them open.
    """
    handle = os.open(folder / "lock", os.O_RDWR | os.O_CREAT | os.O_CLOEXEC, atomic_storage.MODE)
    try:
        fcntl.flock(handle, fcntl.LOCK_EX | fcntl.LOCK_NB)
    except OSError:
        os.close(handle)
        raise CannotStart(
            f"The records in {folder} are open in another process: stop it first, or give another folder with --data."
        ) from None
    return handle


def new_identity() -> str:
    """Return a name that no store has had."""
    return secrets.token_hex(16)
