"""Codes and tokens at each limit: how long, how often, from where, and what lies in the folder afterwards."""

import datetime
import hashlib
import json
import pathlib
import re
import stat
import uuid

import pytest

from webapp import atomic_storage, devices
from webapp.devices import Devices, TooManyTries
from webapp.store import CannotStart

START = datetime.datetime(2026, 1, 5, 12, tzinfo=datetime.UTC)
MOMENT = datetime.timedelta(microseconds=1)
SECOND = datetime.timedelta(seconds=1)
MINUTE = datetime.timedelta(minutes=1)
HOUR = datetime.timedelta(hours=1)
DAY = datetime.timedelta(days=1)


class Clock:
    """A clock that stands until it is put forward."""

    def __init__(self) -> None:
        self.time = START

    def __call__(self) -> datetime.datetime:
        return self.time

    def forward(self, by: datetime.timedelta) -> None:
        self.time += by


@pytest.fixture
def clock() -> Clock:
    return Clock()


@pytest.fixture
def folder(tmp_path: pathlib.Path) -> pathlib.Path:
    (tmp_path / "data").mkdir()
    return tmp_path / "data"


@pytest.fixture
def phones(folder: pathlib.Path, clock: Clock) -> Devices:
    return Devices(folder, clock)


def codes(folder: pathlib.Path) -> list[str]:
    return sorted(path.name for path in (folder / "codes").iterdir())


def let_in(phones: Devices, clock: Clock, name: str = "n") -> tuple[str, str]:
    got = phones.pair(devices.make_code(phones.folder, clock), name, "here")
    assert got is not None
    return got


# ---------------------------------------------------------------- codes


def test_a_code_is_a_file_named_by_its_hash_that_is_gone_once_it_was_used(phones, folder, clock):
    code = devices.make_code(folder, clock)
    assert re.fullmatch("[A-Z2-7]{4}-[A-Z2-7]{4}", code)
    name = hashlib.sha256(code.replace("-", "").encode()).hexdigest()
    assert codes(folder) == [name]
    assert (folder / "codes" / name).read_text() == START.isoformat()
    assert stat.S_IMODE((folder / "codes").stat().st_mode) == 0o700
    id, token = phones.pair(code, "Red truck", "here")
    assert str(uuid.UUID(id)) == id and re.fullmatch(r"[A-Za-z0-9_-]{43}", token)
    assert codes(folder) == []
    [row] = devices.paired(folder)
    wanted = {"id": id, "name": "Red truck", "token": hashlib.sha256(token.encode()).hexdigest(), "shut_out": False}
    assert row == {**wanted, "paired": START.isoformat(), "seen": START.isoformat()}
    assert phones.known(token) == id
    assert phones.pair(code, "n", "here") is None


def test_a_code_is_made_now_by_the_clock_of_the_machine(folder):
    before = datetime.datetime.now(datetime.UTC)
    devices.make_code(folder)
    [path] = (folder / "codes").iterdir()
    assert before <= datetime.datetime.fromisoformat(path.read_text()) <= datetime.datetime.now(datetime.UTC)


@pytest.mark.parametrize(
    "write", [str.lower, lambda code: f"  {code[:2]} {code[2:]}\t", lambda code: code[:4] + code[5:]]
)
def test_a_code_is_taken_however_it_is_written(phones, folder, clock, write):
    assert phones.pair(write(devices.make_code(folder, clock)), "n", "here")


def test_a_nought_and_a_one_are_read_as_the_letters(phones, folder, clock, monkeypatch):
    monkeypatch.setattr("secrets.token_bytes", lambda count: bytes([0b01110_010, 0b00_01110_0]) + b"\0" * 3)
    code = devices.make_code(folder, clock)
    assert code.count("O") == 2 and code.count("I") == 1
    assert phones.pair(code.replace("O", "0").replace("I", "1"), "n", "here")


def test_what_is_typed_counts_up_to_forty_characters(phones, folder, clock):
    code = devices.make_code(folder, clock)
    assert phones.pair(" " * 31 + code, "n", "here")
    code = devices.make_code(folder, clock)
    assert phones.pair(" " * 32 + code, "n", "here") is None, "its last letter is beyond"


@pytest.mark.parametrize(("age", "alive"), [(10 * MINUTE, True), (10 * MINUTE + MOMENT, False)])
def test_a_code_lives_for_ten_minutes(phones, folder, clock, age, alive):
    code = devices.make_code(folder, clock)
    clock.forward(age)
    assert bool(phones.pair(code, "n", "here")) is alive
    assert codes(folder) == []


def test_a_wrong_try_takes_dead_codes_away_and_leaves_the_others(phones, folder, clock):
    devices.make_code(folder, clock)
    clock.forward(10 * MINUTE)
    living = devices.make_code(folder, clock)
    assert phones.pair("wrong", "n", "here") is None
    assert len(codes(folder)) == 2, "ten minutes are not over"
    clock.forward(MOMENT)
    assert phones.pair("wrong", "n", "here") is None
    assert codes(folder) == [devices.digest(living.replace("-", ""))]


@pytest.mark.parametrize(("wrong", "alive"), [(4, True), (5, False)])
def test_five_wrong_tries_kill_every_code_made_before(phones, folder, clock, wrong, alive):
    assert phones.pair("wrong", "n", "here") is None  # before the code was made: no matter
    code = devices.make_code(folder, clock)
    for _ in range(wrong):
        clock.forward(SECOND)
        assert phones.pair("wrong", "n", "here") is None
    assert bool(codes(folder)) is alive
    assert bool(phones.pair(code, "n", "elsewhere")) is alive


def test_a_code_made_after_the_wrong_tries_is_alive(phones, folder, clock):
    for _ in range(5):
        assert phones.pair("wrong", "n", "here") is None
    assert phones.pair(devices.make_code(folder, clock), "n", "here"), "those came before it, in the same moment"


def test_what_is_no_code_among_the_codes_is_passed_over(phones, folder, clock):
    code = devices.make_code(folder, clock)
    (folder / "codes" / ("0" * 64)).write_text("never")
    (folder / "codes" / ("0" * 63)).write_text((START + DAY).isoformat())
    (folder / "codes" / "0.new").write_text("half")
    (folder / "codes" / ("00" + "1" * 62)).mkdir()
    assert phones.pair(code, "n", "here")


# ---------------------------------------------------------------- too many tries


def seconds(phones: Devices, address: str = "here") -> int:
    """Return how long a wrong code has to wait; 0 if it was looked at."""
    try:
        assert phones.pair("wrong", "n", address) is None
    except TooManyTries as refusal:
        assert refusal.args == (refusal.seconds,)
        return refusal.seconds
    return 0


def test_an_address_may_be_wrong_twenty_times_an_hour(phones, clock):
    assert [seconds(phones) for _ in range(20)] == [0] * 20
    assert seconds(phones) == 3601
    assert seconds(phones, "elsewhere") == 0
    clock.forward(HOUR - SECOND)
    assert seconds(phones) == 2
    clock.forward(SECOND)
    assert seconds(phones) == 0


def test_it_waits_for_the_oldest_of_the_hour(phones, clock):
    for _ in range(20):
        assert seconds(phones) == 0
        clock.forward(MINUTE)
    assert seconds(phones) == 40 * 60 + 1
    clock.forward(40 * MINUTE)
    assert [seconds(phones), seconds(phones)] == [0, 61]


def test_all_together_may_be_wrong_a_hundred_times_a_day(phones, clock):
    for each in range(100):
        assert seconds(phones, f"address {each}") == 0
        clock.forward(SECOND if each == 0 else 0 * SECOND)
    assert seconds(phones, "another") == 86_400
    clock.forward(DAY - 2 * SECOND)
    assert seconds(phones, "another") == 2
    clock.forward(SECOND)
    assert seconds(phones, "another") == 0


@pytest.mark.parametrize("later", [0 * SECOND, SECOND])
def test_a_new_code_begins_the_count_anew(phones, folder, clock, later):
    for _ in range(20):
        seconds(phones)
    assert seconds(phones) > 0
    clock.forward(later)
    code = devices.make_code(folder, clock)
    assert phones.pair(code, "n", "here")


# ---------------------------------------------------------------- tokens


@pytest.mark.parametrize("limit", [90, 365])
@pytest.mark.parametrize(("more", "is_known"), [(datetime.timedelta(0), True), (MOMENT, False)])
def test_a_token_ends_after_ninety_idle_days_and_after_a_year(phones, clock, limit, more, is_known):
    id, token = let_in(phones, clock)
    while limit == 365 and clock.time < START + 300 * DAY:
        clock.forward(50 * DAY)
        assert phones.known(token) == id
    clock.time = START + limit * DAY + more
    assert phones.known(token) == (id if is_known else "")


def test_when_a_phone_was_seen_is_written_at_most_once_a_day(phones, folder, clock):
    _, other = let_in(phones, clock, "other")
    id, token = let_in(phones, clock)
    clock.forward(DAY)
    assert phones.known(token) == id
    assert [each["seen"] for each in devices.paired(folder)] == [START.isoformat()] * 2
    clock.forward(MOMENT)
    assert phones.known(token) == id
    assert [each["seen"] for each in devices.paired(folder)] == [START.isoformat(), clock.time.isoformat()]
    again = Devices(folder, clock)
    clock.forward(89 * DAY)
    assert (bool(again.known(token)), again.known(other)) == (True, "")


def test_who_is_unknown_or_shut_out_is_nobody(phones, folder, clock):
    id, token = let_in(phones, clock)
    other, its = let_in(phones, clock, "other")
    assert phones.known("") == phones.known("x" * 43) == phones.known("\ud800") == ""
    devices.shut_out(folder, id)
    assert stat.S_IMODE((folder / "shut-out").stat().st_mode) == 0o700
    assert (folder / "shut-out" / id).read_bytes() == b""
    assert (phones.known(token), phones.known(its)) == ("", other)
    assert [(each["name"], each["shut_out"]) for each in devices.paired(folder)] == [("n", True), ("other", False)]


def test_no_phone_was_let_in_where_none_was(folder):
    assert devices.paired(folder) == []
    (folder / "devices.json").write_bytes(atomic_storage.written(b"{}"))
    assert devices.paired(folder) == []


def test_a_damaged_list_of_phones_is_refused_in_words(phones, folder, clock):
    let_in(phones, clock)
    path = folder / "devices.json"
    path.write_bytes(path.read_bytes()[:-3])
    with pytest.raises(CannotStart) as told:
        Devices(folder, clock)
    assert str(told.value).startswith("The list of phones is not opened: ")
    assert str(told.value).endswith(f". Move {path} away; every phone then has to be paired again.")


def test_the_list_of_phones_keeps_a_copy_of_each_day(phones, folder, clock):
    let_in(phones, clock)
    let_in(phones, clock)
    kept = [path.name for path in folder.rglob("*") if "devices" in path.name and START.date().isoformat() in path.name]
    assert kept
    assert json.loads((folder / "devices.json").read_bytes().partition(b"\n")[2])["devices"]
