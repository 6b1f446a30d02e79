"""The server's records, asked directly: what is stored, given and said, over the ends of segments too."""

import datetime
import hashlib
import json
import pathlib
import random
import re
import stat
from collections.abc import Callable, Iterator
from typing import Any

import pytest

from tests.faults.phones import revision
from webapp import atomic_storage, copies
from webapp import store as store_module
from webapp.store import CannotStart, Store

NOW = datetime.datetime(2026, 1, 5, 12, 0, 0, 123_999, tzinfo=datetime.UTC)


@pytest.fixture
def folder(tmp_path: pathlib.Path) -> pathlib.Path:
    return tmp_path / "deep" / "data"


@pytest.fixture
def opened(folder: pathlib.Path) -> Iterator[Callable[[], Store]]:
    """Open the records, after closing whatever had them open."""
    made: list[Store] = []

    def open_again() -> Store:
        for each in made:
            each.close()
        made.append(Store(folder, lambda: NOW))
        return made[-1]

    yield open_again
    for each in made:
        each.close()


@pytest.fixture
def small(monkeypatch: pytest.MonkeyPatch) -> None:
    """Segments of three revisions."""
    monkeypatch.setattr(store_module, "SEGMENT_SIZE", 3)


def made(count: int) -> list[dict[str, Any]]:
    chance = random.Random("made")
    return [revision(chance) for _ in range(count)]


def content(path: pathlib.Path) -> Any:
    return json.loads(path.read_bytes().partition(b"\n")[2])


def refusal(folder: pathlib.Path) -> str:
    """Return why the records are not opened."""
    with pytest.raises(CannotStart) as told:
        Store(folder)
    return str(told.value)


# ---------------------------------------------------------------- storing


def test_what_lies_on_the_disk(opened, folder: pathlib.Path, small):
    store = opened()
    records = made(4)
    assert store.add(records, "a phone") == ["stored"] * 4
    stamp = "2026-01-05T12:00:00.123+00:00"
    rows = [{"record": each, "device": "a phone", "received": stamp} for each in records]
    assert list(content(folder / "revisions-000001.json")["revisions"].values()) == rows[:3]
    assert list(content(folder / "revisions-000002.json")["revisions"].values()) == rows[3:]
    ledger = content(folder / "ledger.json")
    assert list(ledger["store"].values()) == [{"identity": store.identity, "made": NOW.isoformat()}]
    whole = (folder / "revisions-000001.json").read_bytes()
    entry = {"number": 1, "checksum": atomic_storage.checksum(whole), "revisions": 3}
    assert list(ledger["closed"].values()) == [entry]
    assert re.fullmatch("[0-9a-f]{32}", store.identity)
    assert [stat.S_IMODE((folder / name).stat().st_mode) for name in (".", "lock")] == [0o700, 0o600]


def test_each_store_has_a_name_of_its_own_and_keeps_it(opened, tmp_path: pathlib.Path):
    store = opened()
    other = Store(tmp_path / "other")
    other.close()
    assert store.identity != other.identity
    assert opened().identity == store.identity


def test_without_a_clock_it_is_now(tmp_path: pathlib.Path):
    before = datetime.datetime.now(datetime.UTC) - datetime.timedelta(milliseconds=1)
    store = Store(tmp_path)
    store.add(made(1), "a phone")
    store.close()
    [row] = content(tmp_path / "revisions-000001.json")["revisions"].values()
    assert before <= datetime.datetime.fromisoformat(row["received"]) <= datetime.datetime.now(datetime.UTC)


@pytest.mark.parametrize("again", [False, True])
def test_what_is_stored_is_there_whether_opened_again_or_not(opened, small, again):
    store = opened()
    records = made(10)
    store.add(records[:5], "a phone")
    store.add(records[5:], "a phone")
    store = opened() if again else store
    assert store.sequence == 10
    names = [each["rev"] for each in records]
    assert [store.name_at(each) for each in range(-1, 13)] == ["", "", *names, "", ""]
    for start in range(12):
        for most in (0, 1, 2, 3, 4, 100):
            assert store.after(start, most) == records[start : start + most], (start, most)
    for each in records:
        assert store.has(each["id"], each["rev"])
        assert store.heads(each["id"]) == [each["rev"]]
        assert not store.has(each["id"], "1-" + "0" * 32)
    assert not store.has(records[0]["id"], names[1])
    assert store.heads("nobody's") == []


def test_the_same_again_is_already_there_in_one_message_too(opened):
    store = opened()
    one, two = made(2)
    assert store.add([one, two, one], "a phone") == ["stored", "stored", "already"]
    assert store.add([two, one], "another") == ["already", "already"]
    assert store.add([], "a phone") == []
    assert store.after(0, 10) == [one, two]
    changed = {**one, "rev": two["rev"]}
    assert store.add([changed], "a phone") == ["conflict"], "the name of another record's is free"


@pytest.mark.parametrize("again", [False, True])
def test_two_that_follow_one_are_a_conflict_until_one_follows_both(opened, again):
    chance = random.Random("conflict")
    first = revision(chance)
    mine, yours, third = (revision(chance, 2, first["id"], (first["rev"],)) for _ in range(3))
    both = revision(chance, 3, first["id"], tuple(sorted([mine["rev"], yours["rev"]])))
    store = opened()
    assert store.add([first, mine], "a phone") == ["stored", "stored"]
    store = opened() if again else store
    assert store.add([mine, yours], "a phone") == ["already", "conflict"]
    store = opened() if again else store
    assert store.heads(first["id"]) == sorted([mine["rev"], yours["rev"]])
    assert store.add([both], "a phone") == ["stored"]
    assert store.heads(first["id"]) == [both["rev"]]
    assert store.add([third], "a phone") == ["conflict"]
    store = opened() if again else store
    assert store.heads(first["id"]) == sorted([both["rev"], third["rev"]])


def test_one_that_comes_before_what_it_follows_stays_ahead(opened):
    chance = random.Random("order")
    first = revision(chance)
    second = revision(chance, 2, first["id"], (first["rev"],))
    third = revision(chance, 3, first["id"], (second["rev"],))
    store = opened()
    for each in (third, first, second):
        store.add([each], "a phone")
    assert store.heads(first["id"]) == [third["rev"]]


def test_both_versions_of_one_message_are_told_of(opened):
    chance = random.Random("both")
    mine = revision(chance)
    yours = revision(chance, 1, mine["id"])
    assert opened().add([mine, yours], "a phone") == ["conflict", "conflict"]


# ---------------------------------------------------------------- segments


def test_a_message_may_fill_several_segments(opened, folder: pathlib.Path, small):
    store = opened()
    store.add(made(9), "a phone")
    assert [len(content(path)["revisions"]) for path in sorted(folder.glob("revisions-*"))] == [3, 3, 3]
    store.add([revision(random.Random("next"))], "a phone")
    assert sorted(path.name for path in folder.glob("revisions-*")) == [f"revisions-00000{n}.json" for n in range(1, 5)]
    assert [each["number"] for each in content(folder / "ledger.json")["closed"].values()] == [1, 2, 3]


def test_eight_closed_segments_are_kept_in_memory_the_latest_read_ones(opened, small, monkeypatch):
    store = opened()
    store.add(made(31), "a phone")
    store = opened()
    read: list[int] = []
    real = store._read_closed

    def noted(entry: dict[str, Any]) -> Any:
        read.append(entry["number"])
        return real(entry)

    monkeypatch.setattr(store, "_read_closed", noted)
    for segment in (1, 2, 3, 4, 5, 6, 7, 8, 1, 8, 9, 1, 8, 3, 2, 11):
        store.after((segment - 1) * 3, 1)
    assert read == [1, 2, 3, 4, 5, 6, 7, 8, 9, 2]


def test_a_full_segment_that_was_changed_under_the_server_is_not_closed(opened, folder: pathlib.Path, small):
    store = opened()
    store.add(made(3), "a phone")
    path = folder / "revisions-000001.json"
    path.write_bytes(path.read_bytes() + b" ")
    with pytest.raises(atomic_storage.Damaged, match=r": its content has changed under the server$"):
        store.add([revision(random.Random("next"))], "a phone")
    assert store.sequence == 3
    assert not (folder / "revisions-000002.json").exists()


# ---------------------------------------------------------------- not opened

WORDS = "The records are not opened: {} is damaged or gone ({}). {} Nothing was changed. "
WORDS += "Put good copies back with: ./webapp/start restore"
NO_COPY = "There is no good copy of it."


def copy_of(path: pathlib.Path) -> str:
    found = copies.good_copies(path)
    return f"The newest good copy is {found[0]}."


def test_a_second_process_is_told_that_the_records_are_open(opened, folder: pathlib.Path):
    opened()
    words = f"The records in {folder} are open in another process: stop it first, or give another folder with --data."
    assert refusal(folder) == refusal(folder) == words


def test_closing_twice_closes_once(opened, folder: pathlib.Path):
    store = opened()
    store.close()
    other = Store(folder)  # which may have got the number of the handle that was closed
    store.close()
    assert "another process" in refusal(folder)
    other.close()


def test_records_that_were_refused_are_not_held(opened, folder: pathlib.Path):
    opened().close()
    (folder / "ledger.json").write_text("nothing")
    assert refusal(folder) == refusal(folder)
    assert "ledger.json is damaged or gone" in refusal(folder)


def test_a_closed_segment_that_is_not_what_the_ledger_says_is_named(opened, folder: pathlib.Path, small):
    opened().add(made(7), "a phone")
    opened().close()
    path = folder / "revisions-000002.json"
    whole = path.read_bytes()
    path.write_bytes(whole.replace(b"a phone", b"a phome"))
    why = str(atomic_storage.Damaged(path, "its content is not what the ledger says"))
    assert refusal(folder) == WORDS.format(path, why, copy_of(path))
    path.unlink()
    assert refusal(folder).startswith(f"The records are not opened: {path} is damaged or gone (")
    assert copy_of(path) in refusal(folder)
    path.write_bytes(whole)
    assert opened().sequence == 7


@pytest.mark.parametrize("text", [b"{}", b'{"other": {}}', b"[", b'{"revisions": 7}'[:-1]])
def test_a_closed_segment_without_revisions_is_refused_even_if_the_ledger_names_it(opened, folder, small, text):
    opened().add(made(4), "a phone")
    opened().close()
    path = folder / "revisions-000001.json"
    whole = hashlib.sha256(text).hexdigest().encode() + b"\n" + text
    path.write_bytes(whole)
    ledger = content(folder / "ledger.json")
    next(iter(ledger["closed"].values()))["checksum"] = atomic_storage.checksum(whole)
    written = json.dumps(ledger).encode()
    (folder / "ledger.json").write_bytes(atomic_storage.written(written))
    assert refusal(folder).startswith(f"The records are not opened: {path} is damaged or gone (")


@pytest.mark.parametrize("copies_too", [False, True])
def test_a_ledger_that_is_gone_beside_records_is_never_made_anew(opened, folder: pathlib.Path, copies_too):
    opened().add(made(1), "a phone")
    opened().close()
    path = folder / "ledger.json"
    path.unlink()
    if copies_too:
        for each in folder.glob("revisions-*.json"):
            each.unlink()
    words = copy_of(path) if copies.good_copies(path) else NO_COPY
    assert refusal(folder) == WORDS.format(path, "it is missing", words)
    assert not path.exists()


def test_a_newest_segment_that_is_gone_is_named(opened, folder: pathlib.Path):
    opened().add(made(1), "a phone")
    opened().close()
    path = folder / "revisions-000001.json"
    path.unlink()
    assert refusal(folder) == WORDS.format(path, "it is missing", copy_of(path))
    assert not path.exists()


def test_segments_that_the_ledger_does_not_lead_to_are_refused(opened, folder: pathlib.Path, small):
    store = opened()
    store.add(made(2), "a phone")
    early = (folder / "ledger.json").read_bytes()
    store.add(made(9)[2:], "a phone")
    opened().close()
    late = (folder / "ledger.json").read_bytes()
    path = folder / "ledger.json"
    path.write_bytes(early)
    assert refusal(folder) == WORDS.format(path, "it is older than revisions-000002.json", copy_of(path))
    path.write_bytes(late)
    assert opened().sequence == 9


def test_one_empty_segment_may_follow_and_no_other(opened, folder: pathlib.Path, small):
    opened().add(made(2), "a phone")
    empty = folder / "revisions-000002.json"
    opened().close()
    empty.write_bytes(atomic_storage.written(b'{"revisions": {}}'))
    assert opened().sequence == 2
    opened().add(made(4), "a phone")
    assert opened().after(0, 9) == made(4)
    opened().close()
    (folder / "revisions-000004.json").write_bytes(empty.read_bytes())
    assert "it is older than revisions-000004.json" in refusal(folder)
    (folder / "revisions-000003.json").write_bytes(atomic_storage.written(b'{"revisions": {}}'))
    assert "it is older than revisions-000003.json" in refusal(folder)
    (folder / "revisions-000004.json").unlink()
    assert opened().sequence == 4


def test_a_newest_segment_that_is_damaged_is_named_with_what_is_wrong(opened, folder: pathlib.Path):
    opened().add(made(2), "a phone")
    opened().close()
    path = folder / "revisions-000001.json"
    path.write_bytes(path.read_bytes()[:-1])
    with pytest.raises(atomic_storage.Damaged) as damaged:
        atomic_storage.read(path)
    assert refusal(folder) == WORDS.format(path, str(damaged.value), copy_of(path))


def test_one_segment_with_records_that_the_ledger_does_not_lead_to_is_refused(opened, folder: pathlib.Path, small):
    store = opened()
    store.add(made(3), "a phone")
    early = (folder / "ledger.json").read_bytes()
    store.add(made(4)[3:], "a phone")
    opened().close()
    (folder / "ledger.json").write_bytes(early)
    assert "it is older than revisions-000002.json" in refusal(folder)


def test_a_new_segment_is_on_the_disk_before_anything_is_in_it(opened, folder: pathlib.Path):
    opened()
    assert content(folder / "revisions-000001.json") == {"revisions": {}}


def test_what_follows_in_one_record_is_no_matter_of_another(opened):
    one = made(1)[0]
    other = revision(random.Random("other"), 2, parents=(one["rev"],))
    store = opened()
    assert store.add([other, one], "a phone") == ["stored", "stored"]
    assert (store.heads(one["id"]), store.heads(other["id"])) == ([one["rev"]], [other["rev"]])
