"""What stands for a phone in the fault tests of the server: it makes revisions, sends them, and keeps its outbox."""

import http.client
import json
import random
import uuid
from typing import Any

from webapp.crew import COOKIE
from webapp.revisions import revision_name

Record = dict[str, Any]
FIELDS = ("joint", "notes", "voltage", "current")


def revision(
    chance: random.Random, number: int = 1, of: str = "", parents: tuple[str, ...] = (), **changed: Any
) -> Record:
    """Return a revision as a phone makes it, with whatever is changed, rightly named."""
    fields = {name: f"{name} {chance.randrange(10**6)}" for name in FIELDS}
    record: Record = {
        "id": of or identity(chance),
        "parents": sorted(parents),
        "device": identity(chance),
        "seq_on_device": number,
        "saved_at": "2026-11-28T10:00:00.000Z",
        "deleted": False,
        "body": json.dumps({"kind": "weld-entry", "schema": 1, "build": "0123456789", "fields": fields}),
        **changed,
    }
    record["rev"] = revision_name(record)
    return record


def identity(chance: random.Random) -> str:
    """Return a UUID from a seed."""
    return str(uuid.UUID(int=chance.getrandbits(128), version=4))


def message(records: list[Record], store: str = "", after: int = 0, after_rev: str = "") -> Record:
    """Return what a phone sends."""
    return {
        "sync": 1,
        "schema": 1,
        "build": "0123456789",
        "store": store,
        "after": after,
        "after_rev": after_rev,
        "records": records,
    }


def headers(address: str, token: str = "") -> dict[str, str]:
    """Return the headers that our own pages send."""
    found = {
        "Content-Type": "application/json",
        "Origin": address,
        "X-Puddlebook": "1",
        "Sec-Fetch-Site": "same-origin",
    }
    return {**found, "Cookie": f"{COOKIE}={token}"} if token else found


class Phone:
    """A phone of the crew with an outbox: an entry leaves it only when the server has named it."""

    def __init__(self, port: int, token: str) -> None:
        self.port = port
        self.token = token
        self.outbox: list[Record] = []
        self.acknowledged: list[Record] = []
        self.seen: dict[tuple[str, str], Record] = {}
        self.store, self.after, self.after_rev = "", 0, ""

    def save(self, record: Record) -> None:
        """Keep a revision until it is acknowledged."""
        self.outbox.append(record)
        self.seen[(record["id"], record["rev"])] = record

    def post(self, path: str, content: Any) -> tuple[int, Any]:
        """Send JSON and return the status and what came back."""
        connection = http.client.HTTPConnection("127.0.0.1", self.port, timeout=20)
        try:
            body = json.dumps(content)
            connection.request("POST", path, body, headers(f"http://127.0.0.1:{self.port}", self.token))
            reply = connection.getresponse()
            return reply.status, json.loads(reply.read())
        finally:
            connection.close()

    def exchange(self, most: int = 100) -> bool:
        """Send and take one message; return whether the server answered."""
        sent = self.outbox[:most]
        try:
            status, reply = self.post("/sync", message(sent, self.store, self.after, self.after_rev))
        except (OSError, http.client.HTTPException, ValueError):
            return False
        if status != 200:
            return False
        self.take(reply)
        return True

    def take(self, reply: Any) -> None:
        """Do what a reply says."""
        if reply["reset"]:
            self.outbox = list(self.seen.values())
        named = {(each["id"], each["rev"]) for each in reply["outcomes"] if each["outcome"] != "refused"}
        self.acknowledged += [each for each in self.outbox if (each["id"], each["rev"]) in named]
        self.outbox = [each for each in self.outbox if (each["id"], each["rev"]) not in named]
        for record in reply["records"]:
            self.seen[(record["id"], record["rev"])] = record
        self.store, self.after, self.after_rev = reply["store"], reply["after"], reply["after_rev"]
        self.more = reply["more"]

    def exchange_all(self) -> None:
        """Exchange until both have everything."""
        for _ in range(1000):
            assert self.exchange()
            if not self.outbox and not self.more:
                return
        raise AssertionError("the exchange never ends")
