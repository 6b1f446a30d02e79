"""The exchange between a phone and the server: what a phone sends, what it is told of each, what it is given.

One message does both ways. A phone may send it again as often as it likes: what is stored once is `already` there.
"""

from typing import Any

from webapp import revisions
from webapp.store import Store

PROTOCOL = 1
MOST_RECORDS = 100  # that a phone sends in one message
MOST_GIVEN = 1000  # in one reply: a new phone has 10,000 entries before it has called too often
MOST_CHARACTERS = 1_000_000  # of bodies in one reply; a single larger one still goes
KEYS = ("sync", "schema", "build", "store", "after", "after_rev", "records")


class BadMessage(Exception):
    """A message that is not one; the text says why."""


def exchange(store: Store, device: str, message: object, build: str) -> dict[str, Any]:
    """Store what a phone sends and return what it has not seen.

    `outcomes` has one entry for each record sent, in the same order: `stored`, `already`, `conflict` (stored, and
    another version stands beside it) or `refused` with the reason. `reset` says that what the phone remembers of
    this store is of no use: it has to send everything again, and is given everything from the beginning.
    """
    asked = _checked(message)
    faults = [revisions.fault(record) for record in asked["records"]]
    good = [record for record, fault in zip(asked["records"], faults) if not fault]
    stored = iter(store.add(good, device))
    outcomes = [
        _outcome(record, fault, "" if fault else next(stored)) for record, fault in zip(asked["records"], faults)
    ]
    after = asked["after"]
    known = asked["store"] == store.identity and (after == 0 or store.name_at(after) == asked["after_rev"])
    reset = bool(asked["store"]) and not known
    start = after if known else 0
    found = _not_too_long(store.after(start, MOST_GIVEN))
    end = start + len(found)
    return {
        "sync": PROTOCOL,
        "schema": revisions.SCHEMA,
        "build": build,
        "store": store.identity,
        "reset": reset,
        "outcomes": outcomes,
        "records": found,
        "after": end,
        "after_rev": store.name_at(end),
        "more": end < store.sequence,
    }


def _checked(message: object) -> dict[str, Any]:
    if not isinstance(message, dict) or sorted(message) != sorted(KEYS):
        raise BadMessage("The message does not have the parts that this server knows.")
    if message["sync"] != PROTOCOL:
        raise BadMessage("This server speaks another version of the exchange: update the app or the server.")
    for key in ("schema", "after"):
        number = message[key]
        if not isinstance(number, int) or isinstance(number, bool) or not 0 <= number <= revisions.LARGEST_WHOLE:
            raise BadMessage(f"The message's {key} is not a whole number.")
    for key in ("build", "store", "after_rev"):
        if not isinstance(message[key], str) or len(message[key]) > 60:
            raise BadMessage(f"The message's {key} is not a short text.")
    if not isinstance(message["records"], list) or len(message["records"]) > MOST_RECORDS:
        raise BadMessage(f"A message carries at most {MOST_RECORDS} records.")
    return message


def _outcome(record: object, fault: str, stored: str) -> dict[str, str]:
    """Return what the phone is told of one record; what it cannot be named by is left empty."""
    named = record if isinstance(record, dict) else {}
    told = {key: named.get(key, "") if isinstance(named.get(key), str) else "" for key in ("id", "rev")}
    told["outcome"] = "refused" if fault else stored
    told["reason"] = fault
    return told


def _not_too_long(records: list[dict[str, Any]]) -> list[dict[str, Any]]:
    room = MOST_CHARACTERS
    for count, record in enumerate(records):
        room -= len(record["body"])
        if room < 0:
            return records[: max(1, count)]
    return records
