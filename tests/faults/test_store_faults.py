"""The server's file under faults: killed, out of space, out of power, damaged, written by many at once."""

import errno
import json
import os
import pathlib
import random
import re
import shutil
import subprocess
import sys
import threading
import time
from collections.abc import Callable, Iterator
from typing import Any

import pytest

from tests.faults.conftest import CrewServer
from tests.faults.counts import count
from tests.faults.phones import Phone, Record, revision
from webapp import atomic_storage, copies
from webapp.bundle import ROOT
from webapp.restore import restore
from webapp.store import LEDGER, SEGMENT_SIZE, CannotStart, Store

# ---------------------------------------------------------------- killed


def test_f1_a_server_killed_while_four_phones_push_loses_nothing(server: CrewServer, chance: random.Random):
    phones = [server.phone() for _ in range(4)]
    slowest = 0.0
    acknowledged = 0
    for _ in range(count(50, 1000)):
        stop = threading.Event()
        threads = [threading.Thread(target=_push_until, args=(phone, stop, chance.random())) for phone in phones]
        for thread in threads:
            thread.start()
        time.sleep(chance.uniform(0.0, 0.12))
        server.kill()
        stop.set()
        for thread in threads:
            thread.join()
        started = time.monotonic()
        server.start()
        slowest = max(slowest, time.monotonic() - started)
    server.kill()
    with_all = Store(server.folder)
    for phone in phones:
        acknowledged += len(phone.acknowledged)
        assert [each["rev"] for each in phone.acknowledged if not with_all.has(each["id"], each["rev"])] == []
    stored = with_all.after(0, 10**6)
    assert len({(each["id"], each["rev"]) for each in stored}) == len(stored)
    with_all.close()
    assert acknowledged > count(50, 1000)  # it did push in between
    assert slowest < 5.0


def _push_until(phone: Phone, stop: threading.Event, seed: float) -> None:
    chance = random.Random(seed)
    while not stop.is_set():
        if len(phone.outbox) < 3:
            phone.save(revision(chance))
        phone.exchange()


# ---------------------------------------------------------------- a disk that fails

CALLS = ("open", "write", "fsync", "replace", "link")


class _FailingDisk:
    """Makes the n-th call that writes fail; reading is left alone."""

    def __init__(self, patch: pytest.MonkeyPatch, nth: int, error: int) -> None:
        self.left = nth
        self.error = error
        self.failed = False
        for name in CALLS:
            patch.setattr(os, name, self._failing(getattr(os, name)))

    def _failing(self, call: Callable[..., Any]) -> Callable[..., Any]:
        def made(*arguments: Any, **named: Any) -> Any:
            self.left -= 1
            if self.left == 0:
                self.failed = True
                raise OSError(self.error, os.strerror(self.error))
            return call(*arguments, **named)

        return made


@pytest.mark.parametrize("error", [errno.ENOSPC, errno.EIO, errno.EMFILE])
@pytest.mark.parametrize("held", [0, 1, SEGMENT_SIZE - 1, SEGMENT_SIZE])
def test_f2_a_disk_that_fails_at_any_call_loses_no_acknowledged_record(
    tmp_path: pathlib.Path, chance: random.Random, error: int, held: int
):
    nth = 0
    while True:
        nth += 1
        folder = tmp_path / str(nth)
        store = Store(folder)
        before = [revision(chance) for _ in range(held)]
        store.add(before, "phone")
        wanted = [revision(chance), revision(chance)]
        with pytest.MonkeyPatch.context() as patch:
            disk = _FailingDisk(patch, nth, error)
            try:
                assert store.add(wanted, "phone") == ["stored", "stored"]
                acknowledged = before + wanted
            except OSError:
                acknowledged = before
        later = [revision(chance)]
        assert store.add(later, "phone") == ["stored"]
        again = store.add(wanted, "phone")
        assert set(again) <= {"stored", "already"}
        store.close()
        store = Store(folder)
        assert _missing(store, acknowledged + later + wanted) == []
        assert store.sequence == held + 3
        store.close()
        if not disk.failed:
            break
    assert nth > 4  # there were calls to fail


def test_f2_the_phone_is_told_5xx_and_may_send_again(new_app: Callable[..., Any], folder: pathlib.Path, chance):
    from tests.faults.test_exchange import let_in, push

    client = new_app().test_client()
    let_in(client, folder)
    record = revision(chance)
    with pytest.MonkeyPatch.context() as patch:
        _FailingDisk(patch, 2, errno.ENOSPC)
        assert push(client, [record])[0] >= 500
    status, reply = push(client, [record])
    assert (status, reply["outcomes"][0]["outcome"]) == (200, "stored")


def _missing(store: Store, records: list[Record]) -> list[str]:
    return [each["rev"] for each in records if not store.has(each["id"], each["rev"])]


# ---------------------------------------------------------------- the power goes


class _Log:
    """What was asked of the disk, in order: names given and taken, content made durable, folders made durable."""

    def __init__(self, patch: pytest.MonkeyPatch) -> None:
        self.entries: list[tuple[Any, ...]] = []
        self.real = {name: getattr(os, name) for name in ("open", "fsync", "replace", "link", "unlink", "mkdir")}
        for name in self.real:
            patch.setattr(os, name, getattr(self, "_" + name))

    def _open(self, path: Any, flags: int, mode: int = 0o777, **named: Any) -> int:
        handle: int = self.real["open"](path, flags, mode, **named)
        if flags & os.O_CREAT:
            self.entries.append(("name", str(path), os.fstat(handle).st_ino))
        return handle

    def _fsync(self, handle: int) -> None:
        self.real["fsync"](handle)
        path = pathlib.Path(os.readlink(f"/proc/self/fd/{handle}"))
        if path.is_dir():
            self.entries.append(("folder", str(path)))
        else:
            self.entries.append(("content", os.fstat(handle).st_ino, path.read_bytes()))

    def _replace(self, source: Any, target: Any) -> None:
        inode = os.stat(source).st_ino
        self.real["replace"](source, target)
        self.entries += [("name", str(target), inode), ("gone", str(source))]

    def _link(self, source: Any, target: Any) -> None:
        self.real["link"](source, target)
        self.entries.append(("name", str(target), os.stat(target).st_ino))

    def _unlink(self, path: Any) -> None:
        self.real["unlink"](path)
        self.entries.append(("gone", str(path)))

    def _mkdir(self, path: Any, *arguments: Any, **named: Any) -> None:
        self.real["mkdir"](path, *arguments, **named)

    def after_cut(self, entries: int, names_kept: bool) -> dict[str, bytes]:
        """Return path -> content on the disk if the power goes after so many entries.

        What was not made durable is gone. Names may have got to the disk without being asked to: with
        `names_kept` all did, so that a name can stand before its content.
        """
        names: dict[str, int] = {}
        durable: dict[str, int] = {}
        contents: dict[int, bytes] = {}
        for entry in self.entries[:entries]:
            if entry[0] == "name":
                names[entry[1]] = entry[2]
            elif entry[0] == "gone":
                names.pop(entry[1], None)
            elif entry[0] == "content":
                contents[entry[1]] = entry[2]
            elif entry[0] == "folder":
                inside = {path: inode for path, inode in names.items() if os.path.dirname(path) == entry[1]}
                durable = {path: inode for path, inode in durable.items() if os.path.dirname(path) != entry[1]}
                durable.update(inside)
        return {path: contents.get(inode, b"") for path, inode in (names if names_kept else durable).items()}


@pytest.mark.parametrize("names_kept", [False, True])
def test_f3_no_power_cut_at_any_moment_loses_an_acknowledged_record(
    tmp_path: pathlib.Path, chance: random.Random, names_kept: bool, monkeypatch: pytest.MonkeyPatch
):
    # Small segments, so that a hundred saves close some.
    monkeypatch.setattr("webapp.store.SEGMENT_SIZE", 30)
    folder = tmp_path / "data"
    acknowledged: list[tuple[int, Record]] = []
    with pytest.MonkeyPatch.context() as patch:
        log = _Log(patch)
        store = Store(folder)
        opened = len(log.entries)
        for _ in range(100):
            record = revision(chance)
            store.add([record], "phone")
            acknowledged.append((len(log.entries), record))
        store.close()
    tried = 0
    step = count(3, 1)
    for entries in range(opened, len(log.entries) + 1, step):
        place = tmp_path / "after"
        shutil.rmtree(place, ignore_errors=True)
        for path, content in log.after_cut(entries, names_kept).items():
            put = place / pathlib.Path(path).relative_to(folder)
            put.parent.mkdir(parents=True, exist_ok=True)
            put.write_bytes(content)
        found = Store(place)
        assert _missing(found, [record for at, record in acknowledged if at <= entries]) == [], entries
        found.close()
        tried += 1
    assert tried > 100


def test_f3_the_model_of_a_power_cut_sees_a_store_that_does_not_wait_for_the_disk(tmp_path: pathlib.Path, chance):
    """The check can fail: with fsync of the content left out, an acknowledged record is gone."""
    folder = tmp_path / "data"
    with pytest.MonkeyPatch.context() as patch:
        log = _Log(patch)
        store = Store(folder)
        entries = len(log.entries)
        store.add([revision(chance)], "phone")
        store.close()
    log.entries = [each for at, each in enumerate(log.entries) if at < entries or each[0] != "content"]
    left = log.after_cut(len(log.entries), False)
    assert left[str(folder / "revisions-000001.json")] == b""


# ---------------------------------------------------------------- many at once


def test_f4_eight_threads_at_once_keep_every_record(tmp_path: pathlib.Path, chance: random.Random):
    for run in range(count(1, 20)):
        store = Store(tmp_path / str(run))
        records = [[revision(chance) for _ in range(40)] for _ in range(8)]
        threads = [threading.Thread(target=_add_each, args=(store, part)) for part in records]
        for thread in threads:
            thread.start()
        for thread in threads:
            thread.join()
        store.close()
        store = Store(tmp_path / str(run))
        assert _missing(store, sum(records, [])) == []
        assert store.sequence == 320
        store.close()


def _add_each(store: Store, records: list[Record]) -> None:
    for record in records:
        store.add([record], "phone")


def test_f4_of_four_processes_one_opens_the_records_and_three_refuse(tmp_path: pathlib.Path):
    program = (
        "import pathlib, sys, time\n"
        "from webapp.store import CannotStart, Store\n"
        "try:\n"
        "    Store(pathlib.Path(sys.argv[1]))\n"
        "except CannotStart as reason:\n"
        "    print('refused', reason)\n"
        "else:\n"
        "    print('open', flush=True)\n"
        "    sys.stdin.read()\n"
    )
    for run in range(count(2, 20)):
        command = [sys.executable, "-c", program, str(tmp_path / str(run))]
        processes = [
            subprocess.Popen(command, cwd=ROOT, stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True)
            for _ in range(4)
        ]
        lines = [process.stdout.readline() for process in processes if process.stdout]
        for process in processes:
            process.communicate(timeout=30)
        assert sorted(line.split()[0] for line in lines) == ["open", "refused", "refused", "refused"]
        assert all("another process" in line for line in lines if line.startswith("refused"))


# ---------------------------------------------------------------- damaged files


@pytest.fixture(scope="module")
def kept(tmp_path_factory: pytest.TempPathFactory) -> tuple[pathlib.Path, list[Record]]:
    """A folder with two closed segments and a newest one, and what is in it."""
    chance = random.Random("kept")
    folder = tmp_path_factory.mktemp("kept") / "data"
    records = [revision(chance) for _ in range(2 * SEGMENT_SIZE + 7)]
    store = Store(folder)
    for start in range(0, len(records), 40):
        store.add(records[start : start + 40], "phone")
    store.close()
    return folder, records


def _damages(content: bytes, chance: random.Random) -> Iterator[tuple[str, bytes]]:
    for percent in range(0, 100, count(10, 1)):
        yield f"cut at {percent} %", content[: len(content) * percent // 100]
    for _ in range(count(10, 100)):
        at, bit = chance.randrange(len(content)), 1 << chance.randrange(8)
        yield f"bit flipped at {at}", content[:at] + bytes([content[at] ^ bit]) + content[at + 1 :]


@pytest.mark.parametrize("name", [LEDGER, "revisions-000001.json", "revisions-000003.json"])
def test_f28_a_damaged_file_is_refused_and_the_copy_named_puts_it_right(
    kept: tuple[pathlib.Path, list[Record]], tmp_path: pathlib.Path, chance: random.Random, name: str
):
    source, records = kept
    content = (source / name).read_bytes()
    for number, (what, damaged) in enumerate(_damages(content, chance)):
        folder = tmp_path / str(number)
        shutil.copytree(source, folder)
        (folder / name).write_bytes(damaged)
        with pytest.raises(CannotStart) as refusal:
            Store(folder)
        assert name in str(refusal.value), what
        named = re.search(r"newest good copy is (\S+)\. ", str(refusal.value))
        assert named, str(refusal.value)
        assert atomic_storage.read(pathlib.Path(named.group(1)))
        assert (folder / name).read_bytes() == damaged  # refusing changes nothing
        before = json.loads((source / LEDGER).read_bytes().partition(b"\n")[2])["store"]["1"]["identity"]
        restore(folder)
        store = Store(folder)
        assert store.identity != before  # so that phones send again
        # The newest segment's copy is one push behind, the others' are whole.
        lost = 40 if name == "revisions-000003.json" else 0
        assert len(_missing(store, records)) <= lost
        store.add(records, "phone")
        assert _missing(store, records) == []
        store.close()


@pytest.mark.parametrize("name", [LEDGER, "revisions-000001.json", "revisions-000003.json"])
def test_f28_a_file_that_is_gone_is_never_an_empty_store(kept, tmp_path: pathlib.Path, name: str):
    folder = tmp_path / "data"
    shutil.copytree(kept[0], folder)
    (folder / name).unlink()
    with pytest.raises(CannotStart, match="newest good copy"):
        Store(folder)
    restore(folder)
    Store(folder).close()


def test_f28_without_a_good_copy_restore_says_so_and_changes_nothing(kept, tmp_path: pathlib.Path):
    folder = tmp_path / "data"
    shutil.copytree(kept[0], folder)
    for each in [folder / LEDGER, *(folder / "copies").glob(LEDGER + "*")]:
        each.write_bytes(b"nothing")
    before = {path: path.read_bytes() for path in folder.rglob("*") if path.is_file()}
    with pytest.raises(CannotStart, match="no good copy"):
        Store(folder)
    with pytest.raises(CannotStart, match="no good copy"):
        restore(folder)
    assert {path: path.read_bytes() for path in folder.rglob("*") if path.is_file()} == before


def test_copies_are_the_last_ten_and_one_a_day_for_thirty_days(folder: pathlib.Path, chance: random.Random):
    import datetime

    day = [datetime.datetime(2026, 1, 1, 12, tzinfo=datetime.UTC)]
    store = Store(folder, lambda: day[0])
    for _ in range(40):
        for _ in range(3):
            store.add([revision(chance)], "phone")
        day[0] += datetime.timedelta(days=1)
    store.close()
    names = sorted(path.name for path in (folder / copies.FOLDER).glob("revisions-000001.json.*"))
    days = [name.rpartition("day-")[2] for name in names if ".day-" in name]
    assert len([name for name in names if "generation" in name]) == copies.GENERATIONS
    assert days == sorted(days) and len(days) == copies.DAYS + 1
    assert days[-1] == "2026-02-09" and days[0] == "2026-01-10"


def test_closed_segments_are_not_written_again(kept):
    folder = kept[0]
    sizes = [len(atomic_storage.read(folder / f"revisions-00000{n}.json")["revisions"]) for n in (1, 2, 3)]
    assert sizes == [SEGMENT_SIZE, SEGMENT_SIZE, 7]
    stamps = [(folder / f"revisions-00000{n}.json").stat().st_mtime_ns for n in (1, 2)]
    store = Store(folder)
    store.add([revision(random.Random("more"))], "phone")
    store.close()
    assert [(folder / f"revisions-00000{n}.json").stat().st_mtime_ns for n in (1, 2)] == stamps


@pytest.mark.parametrize("held", [SEGMENT_SIZE - 1, SEGMENT_SIZE, SEGMENT_SIZE + 1])
def test_f1_a_server_started_again_with_a_segment_just_full_goes_on_storing(folder: pathlib.Path, chance, held: int):
    store = Store(folder)
    store.add([revision(chance) for _ in range(held)], "phone")
    store.close()
    again = Store(folder)
    assert again.add([revision(chance)], "phone") == ["stored"]
    again.close()
    store = Store(folder)
    assert store.sequence == held + 1
    store.close()


def test_a_closed_segment_keeps_one_copy_and_no_generations(folder: pathlib.Path, chance: random.Random):
    store = Store(folder)
    for _ in range(5):
        store.add([revision(chance) for _ in range(SEGMENT_SIZE // 5)], "phone")
    names = [path.name for path in (folder / copies.FOLDER).glob("revisions-000001.json.generation-*")]
    assert len(names) == 5
    store.add([revision(chance)], "phone")
    store.close()
    names = sorted(path.name for path in (folder / copies.FOLDER).glob("revisions-000001.json.*"))
    assert [name.rpartition(".")[2] for name in names if ".day-" not in name] == ["closed"]


def test_f28_an_old_ledger_and_two_damaged_segments_are_put_right_together(kept, tmp_path: pathlib.Path):
    folder = tmp_path / "data"
    shutil.copytree(kept[0], folder)
    store = Store(folder)
    store.add([revision(random.Random("one more"))], "phone")  # so that the newest one's copy is not the empty one
    store.close()
    ledgers = [atomic_storage.read(path) for path in (folder / "copies").glob(LEDGER + ".generation-*")]
    [old] = [each for each in ledgers if not each.get("closed")]
    (folder / LEDGER).write_bytes(atomic_storage.written(json.dumps(old).encode()))
    for name in ("revisions-000002.json", "revisions-000003.json"):
        (folder / name).write_bytes(b"nothing")
    restore(folder)
    store = Store(folder)
    assert store.sequence >= 2 * SEGMENT_SIZE
    store.close()
