"""The exchange under faults: repeated, cut, at once, in any order, restored, with bad records among good ones."""

import datetime
import http.client
import itertools
import json
import pathlib
import random
import shutil
import socket
import threading
import time
from collections.abc import Callable
from typing import Any

from flask import Flask
from flask.testing import FlaskClient

from tests.faults.conftest import CrewServer
from tests.faults.counts import count
from tests.faults.phones import Phone, Record, headers, message, revision
from webapp import crew, devices
from webapp.store import SEGMENT_SIZE

HERE = "http://localhost"


def let_in(client: FlaskClient, folder: pathlib.Path) -> str:
    """Pair a client, which then carries its cookie; return its token."""
    code = devices.make_code(folder)
    reply = client.post("/pair", json={"code": code, "name": "test"}, headers=headers(HERE))
    assert reply.status_code == 200, reply.text
    token = reply.headers["Set-Cookie"].partition("=")[2].partition(";")[0]
    client.set_cookie(crew.COOKIE, token, secure=False)
    return str(token)


def push(client: FlaskClient, records: list[Record], **known: Any) -> tuple[int, Any]:
    """Send records and return the status and the reply."""
    reply = client.post("/sync", json=message(records, **known), headers=headers(HERE))
    return reply.status_code, reply.get_json(silent=True)


def outcomes(client: FlaskClient, records: list[Record]) -> list[str]:
    """Send records and return what became of each."""
    status, reply = push(client, records)
    assert status == 200, reply
    return [each["outcome"] for each in reply["outcomes"]]


def everything(client: FlaskClient) -> list[Record]:
    """Return all revisions that the server holds, a page at a time."""
    found: list[Record] = []
    known: dict[str, Any] = {}
    while True:
        _, reply = push(client, [], **known)
        found += reply["records"]
        known = {"store": reply["store"], "after": reply["after"], "after_rev": reply["after_rev"]}
        if not reply["more"]:
            return found


# ---------------------------------------------------------------- the same again


def test_f5_the_same_push_again_and_again_is_one_record(client: FlaskClient, folder: pathlib.Path, chance):
    let_in(client, folder)
    for times in [2, 10, 40] * count(1, 1):
        record = revision(chance)
        assert outcomes(client, [record]) == ["stored"]
        assert {outcomes(client, [record])[0] for _ in range(times - 1)} == {"already"}
        client.application.extensions["store"]  # the rate limit counts per phone: a new one for the next round
        let_in(client, folder)
    assert len(everything(client)) == 3


def test_f5_twenty_at_once_are_one_record(server: CrewServer, chance: random.Random):
    for _ in range(count(2, 50)):
        phones = [server.phone() for _ in range(4)]
        record = revision(chance)
        told: list[str] = []

        def send(phone: Phone, record: Record = record, told: list[str] = told) -> None:
            status, reply = phone.post("/sync", message([record]))
            assert status == 200
            told.append(reply["outcomes"][0]["outcome"])

        threads = [threading.Thread(target=send, args=(phones[each % 4],)) for each in range(20)]
        for thread in threads:
            thread.start()
        for thread in threads:
            thread.join()
        assert sorted(told) == ["already"] * 19 + ["stored"]


def test_f8_the_same_name_with_other_words_is_refused_and_neither_is_lost(client, folder, chance):
    let_in(client, folder)
    for _ in range(10):
        record = revision(chance)
        other = {**record, "body": revision(chance)["body"]}
        assert outcomes(client, [record]) == ["stored"]
        status, reply = push(client, [other])
        assert (status, reply["outcomes"][0]["outcome"]) == (200, "refused")
        assert "do not belong together" in reply["outcomes"][0]["reason"]  # the phone keeps it and shows this
        assert record in everything(client) and other not in everything(client)
        let_in(client, folder)


# ---------------------------------------------------------------- cut lines


def _raw(server: CrewServer, token: str, content: Any) -> bytes:
    body = json.dumps(content).encode()
    lines = [f"POST /sync HTTP/1.1\r\nHost: 127.0.0.1:{server.port}\r\nContent-Length: {len(body)}\r\n"]
    lines += [f"{name}: {value}\r\n" for name, value in headers(f"http://127.0.0.1:{server.port}", token).items()]
    return "".join(lines).encode() + b"\r\n" + body


def test_f6_a_reply_cut_anywhere_leads_to_already_and_one_record(server: CrewServer, chance: random.Random):
    phone = server.phone()
    for _ in range(count(2, 25)):
        for part in (0.0, 1.0, 0.5, -1.0):
            phone.token = server.token()
            record = revision(chance)
            phone.save(record)
            with socket.create_connection(("127.0.0.1", server.port), timeout=10) as line:
                line.sendall(_raw(server, phone.token, message([record])))
                whole = 1 if part == 1.0 else 200 if part == 0.5 else 10**6 if part == -1.0 else 0
                if whole:
                    line.recv(whole)
            _wait_until_stored(server, phone, record)
            phone.exchange_all()
            assert phone.outbox == [] and phone.acknowledged[-1] == record
    assert len({each["rev"] for each in phone.acknowledged}) == 4 * count(2, 25)


def _wait_until_stored(server: CrewServer, phone: Phone, record: Record) -> None:
    for _ in range(200):
        status, _ = phone.post("/sync", message([]))
        if status == 200 and any(record["rev"] in path.read_text() for path in server.folder.glob("revisions-*.json")):
            return
        phone.token = server.token() if status == 429 else phone.token
        time.sleep(0.02)
    raise AssertionError("the record that was sent whole is not stored")


def test_f7_a_request_cut_anywhere_stores_nothing(server: CrewServer, chance: random.Random):
    token = server.token()
    request = _raw(server, token, message([revision(chance) for _ in range(3)]))
    for _ in range(50):
        with socket.create_connection(("127.0.0.1", server.port), timeout=10) as line:
            line.sendall(request[: chance.randrange(len(request))])
            line.shutdown(socket.SHUT_WR)
            line.settimeout(20)
            try:
                while line.recv(4096):
                    pass
            except OSError:
                pass
    phone = server.phone()
    phone.exchange_all()
    assert phone.seen == {}


# ---------------------------------------------------------------- two phones


def _synced(phones: list[Phone]) -> None:
    for _ in range(2):
        for phone in phones:
            phone.token = phone_token(phone)
            phone.exchange_all()


def phone_token(phone: Phone) -> str:
    """Return the phone's token; tests that exchange often put another here."""
    return phone.token


def test_f9_two_phones_that_edit_one_record_offline_both_keep_both(server: CrewServer, chance: random.Random):
    a, b = server.phone(), server.phone()
    # Who exchanges when, after both have edited: every order of three exchanges in which both take part.
    orders = [each for each in itertools.product((a, b), repeat=3) if a in each and b in each]
    assert len(orders) == 6
    for order in orders * count(1, 20):
        a.token, b.token = server.token(), server.token()
        first = revision(chance)
        a.save(first)
        a.exchange_all()
        b.exchange_all()
        edits = [revision(chance, 2, first["id"], (first["rev"],)) for _ in (a, b)]
        a.save(edits[0])
        b.save(edits[1])
        for phone in order:
            phone.exchange_all()
        for phone in (a, b):
            phone.exchange_all()
        for phone in (a, b):
            assert all((first["id"], each["rev"]) in phone.seen for each in edits)
            assert phone.outbox == []


def test_f9_the_second_phone_is_told_of_the_conflict_and_a_merge_ends_it(client, folder, chance):
    let_in(client, folder)
    first = revision(chance)
    mine, yours = (revision(chance, 2, first["id"], (first["rev"],)) for _ in range(2))
    assert outcomes(client, [first, mine]) == ["stored", "stored"]
    assert outcomes(client, [yours]) == ["conflict"]
    store = client.application.extensions["store"]
    assert store.heads(first["id"]) == sorted([mine["rev"], yours["rev"]])
    both = revision(chance, 3, first["id"], (mine["rev"], yours["rev"]))
    assert outcomes(client, [both]) == ["stored"]
    assert store.heads(first["id"]) == [both["rev"]]
    assert len(everything(client)) == 4  # nothing of it is gone


def test_f11_delete_against_edit_keeps_both_and_a_deleted_one_does_not_come_back(client, folder, chance):
    let_in(client, folder)
    store = client.application.extensions["store"]
    for _ in range(count(3, 20)):
        first = revision(chance)
        gone = revision(chance, 2, first["id"], (first["rev"],), deleted=True)
        edit = revision(chance, 2, first["id"], (first["rev"],))
        assert outcomes(client, [first, gone]) == ["stored", "stored"]
        assert outcomes(client, [first]) == ["already"]  # an old phone sends what it had
        assert store.heads(first["id"]) == [gone["rev"]]
        assert outcomes(client, [edit]) == ["conflict"]
        assert set(store.heads(first["id"])) == {gone["rev"], edit["rev"]}


def test_f10_random_actions_on_two_phones_and_a_server_end_with_equal_stores(new_app, folder, chance):
    """The server's part, with phones of Python: create, edit, delete, exchange, lose the reply, restart."""
    for seed in range(count(100, 1000)):
        _random_actions(random.Random(seed), new_app, folder / str(seed))


def _random_actions(chance: random.Random, new_app: Callable[..., Flask], folder: pathlib.Path) -> None:
    app = Flask("crew", root_path=".", static_folder=None)
    crew.register(app, folder, "0123456789")
    clients = [app.test_client() for _ in range(2)]
    phones = [Phone(0, let_in(client, folder)) for client in clients]
    made: list[str] = []
    try:
        for _ in range(100):
            which = chance.randrange(2)
            action = chance.choice(["create", "edit", "edit", "delete", "exchange", "lose"])
            if action == "create":
                record = revision(chance)
                made.append(record["id"])
                phones[which].save(record)
            elif action in ("edit", "delete"):
                _change(chance, phones[which], action == "delete")
            else:
                _exchange_with(clients[which], phones[which], folder, action == "lose")
        for _ in range(2):
            for client, phone in zip(clients, phones):
                while True:
                    _exchange_with(client, phone, folder, False)
                    if not phone.outbox and not phone.more:
                        break
        assert phones[0].seen == phones[1].seen
        assert {id for id, _ in phones[0].seen} == set(made)
        assert len(phones[0].seen) == app.extensions["store"].sequence
    finally:
        app.extensions["store"].close()


def _change(chance: random.Random, phone: Phone, deleted: bool) -> None:
    if not phone.seen:
        return
    id = chance.choice(sorted({id for id, _ in phone.seen}))
    followed = {parent for (of, _), each in phone.seen.items() if of == id for parent in each["parents"]}
    heads = tuple(sorted(rev for of, rev in phone.seen if of == id and rev not in followed))
    phone.save(revision(chance, chance.randrange(1, 10**6), id, heads[: chance.randrange(1, 3)], deleted=deleted))


def _exchange_with(client: FlaskClient, phone: Phone, folder: pathlib.Path, lost: bool) -> None:
    if getattr(phone, "calls", 0) >= 50:
        phone.calls = 0  # type: ignore[attr-defined]
        let_in(client, folder)
    phone.calls = getattr(phone, "calls", 0) + 1  # type: ignore[attr-defined]
    status, reply = push(client, phone.outbox[:7], store=phone.store, after=phone.after, after_rev=phone.after_rev)
    assert status == 200
    if not lost:
        phone.take(reply)


# ---------------------------------------------------------------- bad among good, old, wrong clocks


def test_f13_one_refused_record_does_not_stop_the_others(client: FlaskClient, folder: pathlib.Path, chance):
    for size in (10, 50):
        let_in(client, folder)
        for _ in range(20):
            records = [revision(chance) for _ in range(size)]
            bad = chance.randrange(size)
            records[bad] = {**records[bad], "saved_at": 7}
            _, reply = push(client, records)
            told = [each["outcome"] for each in reply["outcomes"]]
            assert told == ["refused" if at == bad else "stored" for at in range(size)]
            assert reply["outcomes"][bad]["id"] == records[bad]["id"]  # named
            assert "saved" in reply["outcomes"][bad]["reason"]


def test_f14_an_entry_400_days_old_is_taken(client: FlaskClient, folder: pathlib.Path, chance: random.Random):
    let_in(client, folder)
    old = (datetime.datetime.now(datetime.UTC) - datetime.timedelta(days=400)).isoformat()
    assert outcomes(client, [revision(chance, saved_at=old)]) == ["stored"]


def test_f26_phone_clocks_ten_years_off_change_no_order(client: FlaskClient, folder: pathlib.Path, chance):
    let_in(client, folder)
    times = [f"{chance.choice([2016, 2026, 2036])}-0{chance.randrange(1, 9)}-01T00:00:00+0{n}:00" for n in range(10)]
    records = [revision(chance, saved_at=when) for when in times]
    for record in records:
        assert outcomes(client, [record]) == ["stored"]
    assert everything(client) == records


def test_a_body_of_a_newer_schema_is_kept_byte_for_byte(client: FlaskClient, folder: pathlib.Path, chance):
    let_in(client, folder)
    body = '{ "schema": 7, "kind": "hat",\n "build": "later",  "more": [1.50, {"\\u00e9": null}] }'
    record = revision(chance, body=body)
    assert outcomes(client, [record]) == ["stored"]
    assert everything(client)[0]["body"] == body


# ---------------------------------------------------------------- a restored server


def test_f27_after_yesterdays_copy_is_put_back_the_phones_fill_it_up(new_app, folder: pathlib.Path, chance):
    for run in range(count(2, 5)):
        client = new_app().test_client()
        phone = Phone(0, let_in(client, folder))
        for _ in range(SEGMENT_SIZE // 3):
            phone.save(revision(chance))
        while phone.outbox:
            _exchange_with(client, phone, folder, False)
        client.application.extensions["store"].close()
        shutil.copytree(folder, folder.parent / f"yesterday-{run}")
        client = new_app().test_client()
        let_in(client, folder)
        for _ in range(30):
            phone.save(revision(chance))
        while phone.outbox:
            _exchange_with(client, phone, folder, False)
        client.application.extensions["store"].close()
        # The owner copies yesterday's folder back by hand; another phone stores as much as is missing since.
        shutil.rmtree(folder)
        shutil.copytree(folder.parent / f"yesterday-{run}", folder)
        client = new_app().test_client()
        let_in(client, folder)
        others = [revision(chance) for _ in range(30)]
        assert set(outcomes(client, others)) == {"stored"}
        for _ in range(100):
            _exchange_with(client, phone, folder, False)
            if not phone.outbox and not phone.more:
                break
        assert phone.outbox == [] and not phone.more
        store = client.application.extensions["store"]
        assert [rev for id, rev in phone.seen if not store.has(id, rev)] == []
        assert all((each["id"], each["rev"]) in phone.seen for each in others)


def test_the_line_may_break_at_any_byte_of_the_reply_without_a_wrong_acknowledgement(server: CrewServer, chance):
    """A reply that does not parse acknowledges nothing."""
    phone = server.phone()
    phone.save(revision(chance))
    real = http.client.HTTPResponse.read

    class Cut(http.client.HTTPResponse):
        def read(self, amount: int | None = None) -> bytes:
            whole = real(self, amount)
            return whole[: chance.randrange(len(whole) - 1)]

    http.client.HTTPConnection.response_class = Cut
    try:
        for _ in range(10):
            assert not phone.exchange()
            assert len(phone.outbox) == 1
    finally:
        http.client.HTTPConnection.response_class = http.client.HTTPResponse
    assert phone.exchange()
    assert phone.outbox == []
