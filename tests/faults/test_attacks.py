"""Who has no business here: without a token, with a wrong or spent code, from another page, with a poisoned body."""

import datetime
import json
import pathlib
import random
import re
import socket
import stat
import subprocess
import threading
from collections.abc import Callable
from urllib.parse import quote

import pytest
from flask import Flask
from flask.testing import FlaskClient

from tests.faults.conftest import CrewServer
from tests.faults.phones import Phone, headers, message, revision
from tests.faults.test_exchange import HERE, everything, let_in, outcomes, push
from webapp import crew, devices, pages
from webapp.bundle import PAGE_POLICY, ROOT

METHODS = ("GET", "HEAD", "POST", "PUT", "PATCH", "DELETE", "OPTIONS")
# What anybody may have: the calculators and the app itself. Everything else is refused without a token.
PUBLIC = {"healthz", "answer", "worker", "carried"}
PAIRING = {"pair"}  # asks for a code in place of a token


@pytest.fixture(scope="module")
def whole_app(tmp_path_factory: pytest.TempPathFactory) -> Flask:
    return pages.create_app(tmp_path_factory.mktemp("whole") / "data")


def test_s1_every_route_without_a_token_is_refused_or_public(whole_app: Flask):
    client = whole_app.test_client()
    refused = set()
    for rule in whole_app.url_map.iter_rules():
        if rule.endpoint in PUBLIC:
            assert rule.methods is not None and rule.methods <= {"GET", "HEAD", "OPTIONS"}, rule
            continue
        for method in rule.methods or ():
            if method == "OPTIONS":
                continue
            reply = client.open(str(rule), method=method, json={}, headers=headers(HERE))
            wanted = {422} if rule.endpoint in PAIRING else {401, 403}
            assert reply.status_code in wanted, (rule, method, reply.status_code)
            refused.add(rule.endpoint)
    assert refused == {"pair", "sync", "leave"}  # a new route has to be named here or in PUBLIC


def test_s1_no_method_but_its_own_reaches_a_route_that_changes_something(whole_app: Flask):
    client = whole_app.test_client()
    for path in ("/pair", "/sync", "/leave"):
        for method in METHODS:
            if method == "POST":
                continue
            reply = client.open(path, method=method, json={}, headers=headers(HERE))
            assert reply.status_code in (200, 404, 405), (path, method)
            assert "Set-Cookie" not in reply.headers
            assert b'"sync"' not in reply.data


# ---------------------------------------------------------------- codes


class Clock:
    """A clock that goes when it is told to."""

    def __init__(self) -> None:
        self.now = datetime.datetime(2026, 11, 28, 12, tzinfo=datetime.UTC)

    def __call__(self) -> datetime.datetime:
        return self.now

    def go(self, **by: float) -> None:
        self.now += datetime.timedelta(**by)


@pytest.fixture
def clock() -> Clock:
    return Clock()


def _try(phones: devices.Devices, code: str, address: str = "192.0.2.1") -> str:
    try:
        return "in" if phones.pair(code, "test", address) else "refused"
    except devices.TooManyTries as refusal:
        assert 0 < refusal.seconds <= 86_401
        return "later"


def test_s2_a_thousand_wrong_codes_open_nothing_and_do_not_lock_the_owner_out(
    folder: pathlib.Path, clock: Clock, chance: random.Random
):
    phones = devices.Devices(folder, clock)
    good = devices.make_code(folder, clock)
    clock.go(seconds=1)
    told = [_try(phones, f"{chance.getrandbits(40):08x}") for _ in range(1000)]
    assert told[:20] == ["refused"] * 20 and set(told[20:]) == {"later"}
    clock.go(minutes=9)
    assert _try(phones, good, "192.0.2.2") == "refused"  # dead after five wrong ones
    clock.go(hours=2)
    told = [_try(phones, "AAAAAAAA", f"192.0.2.{n}") for n in range(200)]
    assert told.count("later") == 200 - (devices.TRIES_A_DAY - 21)
    again = devices.make_code(folder, clock)
    assert _try(phones, good, "192.0.2.2") == "refused"
    assert _try(phones, again, "192.0.2.2") == "in"


@pytest.mark.parametrize("wrong", range(devices.WRONG_TRIES + 1))
def test_s2_a_code_is_dead_after_five_wrong_tries_and_not_before(folder: pathlib.Path, clock: Clock, wrong: int):
    phones = devices.Devices(folder, clock)
    code = devices.make_code(folder, clock)
    clock.go(seconds=1)
    for _ in range(wrong):
        assert _try(phones, "WRONGONE") == "refused"
    assert _try(phones, code) == ("in" if wrong < devices.WRONG_TRIES else "refused")


def test_s2_every_refused_code_is_told_the_same(client: FlaskClient, folder: pathlib.Path):
    used = devices.make_code(folder)
    told = []
    for code in (used, used, "AAAA-AAAA", "", "x" * 200):
        reply = client.post("/pair", json={"code": code, "name": "n"}, headers=headers(HERE))
        told.append((reply.status_code, reply.data))
    assert told[0][0] == 200
    assert len(set(told[1:])) == 1 and told[1][0] == 403


def test_s3_a_code_lets_one_phone_in_once_and_for_ten_minutes(folder: pathlib.Path, clock: Clock):
    phones = devices.Devices(folder, clock)
    code = devices.make_code(folder, clock)
    assert _try(phones, code.lower().replace("-", " ")) == "in"
    assert _try(phones, code) == "refused"
    code = devices.make_code(folder, clock)
    clock.go(minutes=10)
    assert _try(phones, code) == "in"
    code = devices.make_code(folder, clock)
    clock.go(minutes=10, seconds=1)
    assert _try(phones, code) == "refused"


def test_s3_two_phones_at_once_with_one_code_are_one_phone(server: CrewServer):
    for _ in range(20):
        code = devices.make_code(server.folder)
        told: list[int] = []
        phone = server.phone()

        def send(told: list[int] = told, code: str = code, phone: Phone = phone) -> None:
            told.append(phone.post("/pair", {"code": code, "name": "race"})[0])

        threads = [threading.Thread(target=send) for _ in range(2)]
        for thread in threads:
            thread.start()
        for thread in threads:
            thread.join()
        assert sorted(told) == [200, 403]


def test_a_code_is_forty_bits_and_never_written_down(folder: pathlib.Path):
    codes = {devices.make_code(folder) for _ in range(200)}
    assert len(codes) == 200
    assert all(re.fullmatch(r"[A-Z2-7]{4}-[A-Z2-7]{4}", code) for code in codes)
    written = b"".join(path.name.encode() + path.read_bytes() for path in folder.rglob("*") if path.is_file())
    assert not [code for code in codes if code.replace("-", "").encode() in written]


# ---------------------------------------------------------------- tokens


def test_s4_a_token_with_any_byte_changed_is_refused(client: FlaskClient, folder: pathlib.Path, chance):
    token = let_in(client, folder)
    assert outcomes(client, [revision(chance)]) == ["stored"]
    for at in range(len(token)):
        other = "A" if token[at] != "A" else "B"
        client.set_cookie(crew.COOKIE, token[:at] + other + token[at + 1 :], secure=False)
        assert push(client, [revision(chance)])[0] == 401
    client.set_cookie(crew.COOKIE, token, secure=False)
    assert len(everything(client)) == 1


def test_s4_a_phone_shut_out_is_refused_at_its_next_request(client: FlaskClient, folder: pathlib.Path, chance):
    let_in(client, folder)
    assert outcomes(client, [revision(chance)]) == ["stored"]
    devices.shut_out(folder, devices.paired(folder)[0]["id"])
    status, reply = push(client, [revision(chance)])
    assert status == 401 and "pair it again" in reply["error"]
    assert devices.paired(folder)[0]["shut_out"]


def test_s4_leaving_the_crew_spends_the_token(client: FlaskClient, folder: pathlib.Path):
    token = let_in(client, folder)
    reply = client.post("/leave", json={}, headers=headers(HERE))
    assert reply.status_code == 200 and f"{crew.COOKIE}=;" in reply.headers["Set-Cookie"]
    client.set_cookie(crew.COOKIE, token, secure=False)
    assert push(client, [])[0] == 401


def test_s4_a_session_ends_after_90_idle_days_and_after_a_year(new_app: Callable[..., Flask], folder, clock: Clock):
    def letting_in() -> FlaskClient:
        client = new_app(now=clock).test_client()
        code = devices.make_code(folder, clock)
        reply = client.post("/pair", json={"code": code, "name": "n"}, headers=headers(HERE))
        client.set_cookie(crew.COOKIE, reply.headers["Set-Cookie"].partition("=")[2].partition(";")[0], secure=False)
        return client

    client = letting_in()
    clock.go(days=89)
    assert push(client, [])[0] == 200
    clock.go(days=89)  # since it was seen last
    assert push(client, [])[0] == 200
    clock.go(days=91)
    assert push(client, [])[0] == 401
    client = letting_in()
    for _ in range(4):
        clock.go(days=80)
        assert push(client, [])[0] == 200
    clock.go(days=46)  # 366 in all
    assert push(client, [])[0] == 401


def test_s4_a_token_is_known_after_a_restart(new_app: Callable[..., Flask], folder: pathlib.Path):
    client = new_app().test_client()
    token = let_in(client, folder)
    client = new_app().test_client()
    client.set_cookie(crew.COOKIE, token, secure=False)
    assert push(client, [])[0] == 200


def test_the_cookie_is_for_this_host_alone_and_out_of_a_script_s_reach(client: FlaskClient, folder: pathlib.Path):
    reply = client.post("/pair", json={"code": devices.make_code(folder), "name": "n"}, headers=headers(HERE))
    name, *attributes = [part.strip() for part in reply.headers["Set-Cookie"].split(";")]
    token = name.partition("=")[2]
    assert name.startswith("__Host-") and len(token) >= 43  # 256 bits
    assert {"Secure", "HttpOnly", "SameSite=Lax", "Path=/"} <= set(attributes)
    assert not [each for each in attributes if each.startswith("Domain")]
    assert token not in "".join(path.read_text("latin-1") for path in folder.rglob("*") if path.is_file())


# ---------------------------------------------------------------- other people's pages


@pytest.mark.parametrize(
    "changed",
    [
        {"Origin": "https://elsewhere.example"},
        {"Origin": "http://localhost:81"},  # another port of this host
        {"Origin": "https://localhost"},  # the same host, not the same scheme
        {"Origin": "null"},
        {"Origin": None},
        {"Sec-Fetch-Site": "cross-site"},
        {"Sec-Fetch-Site": "same-site"},
        {"X-Puddlebook": None},
        {"Content-Type": "text/plain"},
        {"Content-Type": "application/x-www-form-urlencoded"},
    ],
    ids=str,
)
def test_s5_what_another_page_can_send_changes_nothing(client, folder: pathlib.Path, chance, changed):
    let_in(client, folder)
    sent = {name: value for name, value in {**headers(HERE), **changed}.items() if value is not None}
    body = json.dumps(message([revision(chance)]))
    assert client.post("/sync", data=body, headers=sent).status_code == 403
    assert client.post("/leave", data="{}", headers=sent).status_code == 403
    code = devices.make_code(folder)
    assert client.post("/pair", data=json.dumps({"code": code, "name": "n"}), headers=sent).status_code == 403
    assert everything(client) == []
    assert len(devices.paired(folder)) == 1


def test_s5_a_stranger_s_name_that_points_here_reaches_nothing(whole_app: Flask, chance: random.Random):
    """Its page would be of the same origin as ours in every header: the name alone tells them apart."""
    client = whole_app.test_client()
    theirs = "http://elsewhere.example"
    for rule in whole_app.url_map.iter_rules():
        for method in ("GET", "POST"):
            reply = client.open(str(rule), method=method, base_url=theirs, json={}, headers=headers(theirs))
            assert reply.status_code == 421, (rule, method)
    assert whole_app.extensions["store"].sequence == 0


# ---------------------------------------------------------------- poison

PAYLOADS = (
    "<script>alert(1)</script>",
    "\"'><img src=x onerror=alert(1)>",
    "javascript:alert(1)",
    "{{7*7}}${7*7}",
    "\u202eevil\u202c",
    "a\x00b",
    "=HYPERLINK(1)",
    "\ud800",
    "\U0001f525" * 500,
    "../../etc/passwd",
)


@pytest.mark.parametrize("payload", PAYLOADS, ids=ascii)
def test_s6_a_poisoned_text_comes_back_as_it_was_and_nowhere_else(client, folder: pathlib.Path, chance, payload):
    """The server never shows a record: it only gives it back, as JSON. What pages show is tested with the pages."""
    let_in(client, folder)
    body = json.dumps({"kind": "weld-entry", "schema": 1, "build": "b", "fields": {"notes": payload}})
    record = revision(chance, body=body)
    assert outcomes(client, [record]) == ["stored"]
    assert everything(client) == [record]
    page = client.get("/" + quote(payload, errors="replace"))
    assert page.status_code in (404, 405, 308) and "<script>alert" not in page.text


def test_s7_every_reply_has_the_headers_that_keep_others_out(whole_app: Flask):
    client = whole_app.test_client()
    for path, method in (("/sync", "POST"), ("/pair", "POST"), ("/leave", "POST"), ("/sync", "PUT"), ("/none", "GET")):
        reply = client.open(
            path, method=method, json={}, headers=headers("https://localhost"), base_url="https://localhost"
        )
        found = reply.headers
        assert found["Content-Security-Policy"] == PAGE_POLICY
        assert found["X-Content-Type-Options"] == "nosniff"
        assert found["Referrer-Policy"] == "same-origin"
        assert found["Cache-Control"] == "no-store"
        assert found["Strict-Transport-Security"] == "max-age=31536000"


def _bodies(chance: random.Random) -> dict[str, bytes]:
    text = json.dumps(message([revision(chance)]))
    many = json.dumps(message([revision(chance)] * 10_000))[:1_900_000]
    return {
        "too large": b"[" * (crew.LARGEST_BODY + 1),
        "10,000 records": many.encode(),
        "1,000 deep": b"[" * 100_000 + b"]" * 100_000,
        "a deep body": text.replace(
            '\\"fields\\": {', '\\"fields\\": {\\"a\\": ' + "[" * 5000 + "]" * 5000 + ", "
        ).encode(),
        "NaN": text.replace('"after": 0', '"after": NaN').encode(),
        "1e999": text.replace('"after": 0', '"after": 1e999').encode(),
        "a number of 10,000 figures": text.replace('"after": 0', '"after": 1' + "0" * 10_000).encode(),
        "no JSON": b"\xff\xfe\x00",
        "nothing": b"",
        "101 records": json.dumps(message([revision(chance) for _ in range(101)])).encode(),
    }


@pytest.mark.parametrize("what", list(_bodies(random.Random(0))))
def test_s8_a_poisoned_body_is_refused_and_stores_nothing(client, folder: pathlib.Path, chance, what: str):
    import tracemalloc

    let_in(client, folder)
    body = _bodies(chance)[what]
    tracemalloc.start()
    reply = client.post("/sync", data=body, headers=headers(HERE))
    peak = tracemalloc.get_traced_memory()[1]
    tracemalloc.stop()
    if what == "a deep body":
        assert reply.get_json()["outcomes"][0]["outcome"] == "refused"
    else:
        assert 400 <= reply.status_code < 500, reply.text
    assert peak < 50_000_000
    assert everything(client) == []


@pytest.mark.parametrize(
    "changed",
    [
        {"id": "../../x"},
        {"id": 7},
        {"rev": "1-short"},
        {"rev": None},
        {"parents": "none"},
        {"parents": ["1-x"]},
        {"device": ""},
        {"seq_on_device": 0},
        {"seq_on_device": True},
        {"seq_on_device": 2**60},
        {"saved_at": ""},
        {"deleted": 1},
        {"body": {}},
        {"body": "x" * 100_001},
        {"body": '{"kind": "weld-entry"}'},
        {"body": '{"kind": "hat", "schema": 1, "build": "b", "fields": {}}'},
        {"body": '{"kind": "job", "schema": 1, "build": "b", "fields": {"n": 7}}'},
        {"body": '{"kind": "job", "schema": 1, "build": "b", "fields": {}, "more": 1}'},
        {"body": '{"kind": "job", "schema": 1, "build": "b", "fields": {"n": NaN}}'},
        {"more": 1},
    ],
    ids=lambda changed: str(changed)[:50],
)
def test_s8_a_record_that_is_not_one_is_refused_with_a_reason(client, folder: pathlib.Path, chance, changed):
    let_in(client, folder)
    record = {**revision(chance), **changed}
    _, reply = push(client, [record])
    assert reply["outcomes"][0]["outcome"] == "refused"
    assert len(reply["outcomes"][0]["reason"]) > 10
    assert everything(client) == []


def test_s8_a_slow_body_does_not_stop_the_others(server: CrewServer, chance: random.Random):
    phone = server.phone()
    lines = [socket.create_connection(("127.0.0.1", server.port)) for _ in range(4)]
    for line in lines:
        line.sendall(b"POST /sync HTTP/1.1\r\nHost: x\r\nContent-Length: 1000\r\n\r\nslow")
    phone.save(revision(chance))
    assert phone.exchange() and phone.outbox == []
    for line in lines:
        line.close()


def test_a_phone_that_calls_too_often_is_told_to_wait(client: FlaskClient, folder: pathlib.Path):
    let_in(client, folder)
    replies = [client.post("/sync", json=message([]), headers=headers(HERE)) for _ in range(crew.CALLS_A_MINUTE + 1)]
    assert [reply.status_code for reply in replies] == [200] * crew.CALLS_A_MINUTE + [429]
    assert 1 <= int(replies[-1].headers["Retry-After"]) <= 60


# ---------------------------------------------------------------- secrets, files


def test_s9_nothing_of_another_phone_s_token_is_on_any_route(new_app, folder: pathlib.Path, chance):
    """The crew shares its records; what is a phone's own is its token and its place in the list: no route has them."""
    app = new_app()
    mine, other = app.test_client(), app.test_client()
    let_in(mine, folder)
    secret = let_in(other, folder)
    row = devices.paired(folder)[1]
    for rule in app.url_map.iter_rules():
        for method in rule.methods or ():
            reply = mine.open(str(rule), method=method, json=message([]), headers=headers(HERE))
            assert secret not in reply.text and row["token"] not in reply.text and row["id"] not in reply.text


def test_s11_no_secret_in_the_log_or_on_an_error_page(whole_app: Flask, caplog: pytest.LogCaptureFixture):
    client = whole_app.test_client()
    with caplog.at_level("INFO"):
        for path in ("/pair", "/sync", "/leave"):
            sent = {**headers(HERE, "SECRET-TOKEN")}
            reply = client.post(path, json={"code": "SECRET-CODE", "name": "SECRET-NAME"}, headers=sent)
            assert "SECRET" not in reply.text
    assert "/sync" in caplog.text and "SECRET" not in caplog.text


def test_s11_no_secret_is_kept_in_the_repository():
    command = ["git", "grep", "-IlE", "BEGIN [A-Z ]*PRIVATE KEY|SECRET_KEY *= *['\"]", "--", ".", ":!tests/faults"]
    found = subprocess.run(command, cwd=ROOT, capture_output=True, text=True, check=False)
    assert found.stdout == ""


def test_s12_every_file_of_records_is_the_owner_s_alone(client: FlaskClient, folder: pathlib.Path, chance):
    let_in(client, folder)
    outcomes(client, [revision(chance)])
    outcomes(client, [revision(chance)])
    devices.shut_out(folder, devices.paired(folder)[0]["id"])
    devices.make_code(folder)
    files = [path for path in folder.rglob("*") if path.is_file()]
    assert len(files) >= 6
    assert {stat.S_IMODE(path.stat().st_mode) for path in files} == {0o600}
    assert {stat.S_IMODE(path.stat().st_mode) for path in folder.rglob("*") if path.is_dir()} == {0o700}
