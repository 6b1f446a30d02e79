"""What the server tells a phone and gives it, at each limit, and which messages it does not take."""

import pathlib
import random
from collections.abc import Iterator
from typing import Any

import pytest

from tests.faults.phones import message, revision
from webapp import exchange
from webapp.exchange import BadMessage
from webapp.store import Store


@pytest.fixture
def store(tmp_path: pathlib.Path) -> Iterator[Store]:
    with_records = Store(tmp_path / "data")
    yield with_records
    with_records.close()


def made(count: int, seed: str = "made") -> list[dict[str, Any]]:
    chance = random.Random(seed)
    return [revision(chance) for _ in range(count)]


def test_what_a_reply_says(store: Store):
    one, two = made(2)
    bad = {**made(1, "bad")[0], "deleted": 7}
    reply = exchange.exchange(store, "phone", message([one, bad, two]), "build")
    named = [{"id": each["id"], "rev": each["rev"]} for each in (one, bad, two)]
    why = "it does not say whether it is deleted"
    assert reply == {
        "sync": 1,
        "schema": 1,
        "build": "build",
        "store": store.identity,
        "reset": False,
        "outcomes": [
            {**named[0], "outcome": "stored", "reason": ""},
            {**named[1], "outcome": "refused", "reason": why},
            {**named[2], "outcome": "stored", "reason": ""},
        ],
        "records": [one, two],
        "after": 2,
        "after_rev": two["rev"],
        "more": False,
    }
    again = exchange.exchange(store, "phone", message([one], store.identity, 2, two["rev"]), "build")
    assert [each["outcome"] for each in again["outcomes"]] == ["already"]
    assert {each["device"] for each in store._newest_records} == {"phone"}
    assert (again["records"], again["after"], again["after_rev"], again["reset"]) == ([], 2, two["rev"], False)


@pytest.mark.parametrize("record", [None, [], "x", {}, {"id": 7, "rev": None}, {"rev": "2"}, {"id": "1", "more": 1}])
def test_what_cannot_be_named_is_refused_all_the_same(store: Store, record):
    [told] = exchange.exchange(store, "phone", message([record]), "build")["outcomes"]
    given = record if isinstance(record, dict) else {}
    named = {key: given[key] if isinstance(given.get(key), str) else "" for key in ("id", "rev")}
    assert told == {**named, "outcome": "refused", "reason": "it does not have the parts of a record"}
    assert store.sequence == 0


def test_a_phone_that_knows_another_store_or_another_order_begins_anew(store: Store):
    records = made(3)
    store.add(records, "phone")
    known = store.identity

    def told(**asked: Any) -> tuple[bool, int]:
        reply = exchange.exchange(store, "phone", message([], **asked), "build")
        return reply["reset"], len(reply["records"])

    assert told() == (False, 3)
    assert told(after=2, after_rev=records[1]["rev"]) == (False, 3), "of no store, nothing is known"
    assert told(store=known, after=2, after_rev=records[1]["rev"]) == (False, 1)
    assert told(store=known, after=3, after_rev=records[2]["rev"]) == (False, 0)
    assert told(store=known, after=0, after_rev="whatever") == (False, 3)
    assert told(store=known, after=2, after_rev=records[0]["rev"]) == (True, 3)
    assert told(store=known, after=4, after_rev=records[2]["rev"]) == (True, 3)
    assert told(store=known, after=1, after_rev="") == (True, 3)
    assert told(store="another", after=2, after_rev=records[1]["rev"]) == (True, 3)
    assert told(store="another") == (True, 3)


def test_a_reply_ends_at_a_thousand_and_says_that_more_is_there(store: Store):
    records = made(1001)
    store.add(records, "phone")
    first = exchange.exchange(store, "phone", message([]), "build")
    assert (len(first["records"]), first["after"], first["after_rev"]) == (1000, 1000, records[999]["rev"])
    assert first["more"] is True
    rest = exchange.exchange(store, "phone", message([], store.identity, 1000, records[999]["rev"]), "build")
    assert (rest["records"], rest["after"], rest["more"]) == ([records[1000]], 1001, False)


def test_a_reply_ends_at_a_million_characters_but_one_record_always_goes():
    ten = [{"body": "x" * 100_000} for _ in range(10)]
    assert exchange._not_too_long(ten) == ten
    assert exchange._not_too_long([*ten, {"body": ""}]) == [*ten, {"body": ""}]
    assert exchange._not_too_long([*ten, {"body": "x"}]) == ten
    assert exchange._not_too_long([*ten, {"body": "x"}, {"body": ""}]) == ten
    large = {"body": "x" * 1_000_001}
    assert exchange._not_too_long([large, large]) == [large]
    assert exchange._not_too_long([]) == []


NO_WHOLE: list[Any] = [-1, 2**53, True, "1", 1.0, None]
NO_TEXT: list[Any] = ["x" * 61, 7, None]
NO_RECORDS: list[Any] = [{}, None, "x", [None] * 101]
PARTS = "The message does not have the parts that this server knows."
VERSION = "This server speaks another version of the exchange: update the app or the server."
MANY = "A message carries at most 100 records."
BAD: list[tuple[dict[str, Any], str]] = [
    *[({"more": 1}, PARTS)],
    *[({"sync": each}, VERSION) for each in (0, 2, "1", None)],
    *[({key: each}, f"The message's {key} is not a whole number.") for key in ("schema", "after") for each in NO_WHOLE],
    *[
        ({key: each}, f"The message's {key} is not a short text.")
        for key in ("build", "store", "after_rev")
        for each in NO_TEXT
    ],
    *[({"records": each}, MANY) for each in NO_RECORDS],
]


@pytest.mark.parametrize(("changed", "words"), BAD, ids=lambda each: str(each)[:30])
def test_a_message_that_is_none_is_refused_in_words_and_stores_nothing(store: Store, changed, words):
    with pytest.raises(BadMessage) as told:
        exchange.exchange(store, "phone", {**message(made(1)), **changed}, "build")
    assert str(told.value) == words
    assert store.sequence == 0


def test_what_has_not_the_parts_of_a_message_is_refused(store: Store):
    whole = message([])
    for wrong in (None, [], list(whole), *({k: v for k, v in whole.items() if k != key} for key in whole)):
        with pytest.raises(BadMessage) as told:
            exchange.exchange(store, "phone", wrong, "build")
        assert str(told.value) == PARTS


def test_the_limits_of_a_message_are_taken(store: Store):
    asked = {**message(made(100)), "schema": 2**53 - 1, "build": "x" * 60}
    assert len(exchange.exchange(store, "phone", asked, "build")["outcomes"]) == 100
    asked = {**message([]), "schema": 0, "store": "x" * 60, "after": 2**53 - 1, "after_rev": "x" * 60}
    assert exchange.exchange(store, "phone", asked, "build")["reset"] is True
