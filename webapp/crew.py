"""The routes that change something: pairing a phone, the exchange of records, leaving the crew.

Calculators are everybody's; records never are. Each of these takes JSON from our own pages only, and says no more
about a refusal than a person who belongs here needs.
"""

import json
import pathlib
import time
from collections import deque
from typing import Any

from flask import Flask, Response, request

from webapp import exchange, revisions
from webapp.devices import LONGEST_NAME, Clock, Devices, TooManyTries, shut_out
from webapp.exchange import BadMessage
from webapp.store import Store

COOKIE = "__Host-device"
COOKIE_LIFE = 365 * 24 * 3600
LARGEST_BODY = 2_000_000
CALLS_A_MINUTE = 60  # of one phone
REFUSAL_SECONDS = 0.25  # every refused code takes this long, whatever was wrong with it
JSON = "application/json"


class _Refused(Exception):
    def __init__(self, status: int, sentence: str, wait: int = 0) -> None:
        super().__init__(sentence)
        self.status = status
        self.wait = wait


def register(app: Flask, folder: pathlib.Path, build: str, now: Clock | None = None) -> None:
    """Open the records in a folder and add the routes to the app."""
    store, devices = Store(folder, now), Devices(folder, now)
    app.extensions["store"] = store
    calls: dict[str, deque[float]] = {}

    @app.post("/pair")
    def pair() -> Response:
        """Let a phone in that shows a code of the owner's."""
        message = _message({"code", "name"})
        name = message["name"].strip() or "a phone"
        if len(name) > LONGEST_NAME or not name.isprintable():
            raise _Refused(422, f"Give the phone a name of at most {LONGEST_NAME} plain characters.")
        started = time.monotonic()
        try:
            got = devices.pair(message["code"], name, request.remote_addr or "")
        except TooManyTries as refusal:
            sentence = "Too many codes were tried. Wait, or ask the owner for a new code."
            raise _Refused(429, sentence, refusal.seconds) from None
        if got is None:
            time.sleep(max(0.0, REFUSAL_SECONDS - (time.monotonic() - started)))
            raise _Refused(403, "This code does not let a phone in. Ask the owner for a new one.")
        id, token = got
        reply = _reply(200, {"sync": exchange.PROTOCOL, "device": id, "store": store.identity})
        reply.set_cookie(COOKIE, token, COOKIE_LIFE, path="/", secure=True, httponly=True, samesite="Lax")
        return reply

    @app.post("/sync")
    def sync() -> Response:
        """Store what a phone sends, and return what it has not seen."""
        device = _device()
        _count_call(calls, device)
        try:
            return _reply(200, exchange.exchange(store, device, _json(), build))
        except BadMessage as refusal:
            raise _Refused(422, str(refusal)) from None

    @app.post("/leave")
    def leave() -> Response:
        """Forget this phone: its token is of no use from now on."""
        device = _device()
        _message(set())
        shut_out(folder, device)
        reply = _reply(200, {"sync": exchange.PROTOCOL})
        reply.delete_cookie(COOKIE, path="/", secure=True, httponly=True, samesite="Lax")
        return reply

    def _device() -> str:
        _only_our_pages()
        device = devices.known(request.cookies.get(COOKIE, ""))
        if not device:
            raise _Refused(401, "This phone does not belong to the crew (any more): pair it again.")
        return device

    @app.errorhandler(_Refused)
    def refused(refusal: _Refused) -> Response:
        reply = _reply(refusal.status, {"sync": exchange.PROTOCOL, "error": str(refusal)})
        if refusal.wait:
            reply.headers["Retry-After"] = str(refusal.wait)
        return reply


def _only_our_pages() -> None:
    """Refuse what a page of anybody else's could send: no header of ours, another origin, another type of body."""
    headers = request.headers
    ours = request.host_url.rstrip("/")
    if (
        headers.get("X-Puddlebook") != str(exchange.PROTOCOL)
        or headers.get("Origin") != ours
        or headers.get("Sec-Fetch-Site", "same-origin") != "same-origin"
        or request.mimetype != JSON
    ):
        raise _Refused(403, "Only the app's own pages may send this.")


def _json() -> Any:
    try:
        return revisions.strict_json(request.get_data())
    except ValueError:
        raise _Refused(400, "The message is not JSON.") from None


def _message(keys: set[str]) -> dict[str, str]:
    """Return a message of short texts with exactly these keys."""
    _only_our_pages()
    message = _json()
    if not isinstance(message, dict) or set(message) != keys:
        raise _Refused(422, "The message does not have the parts that this server knows.")
    if not all(isinstance(each, str) and len(each) <= 200 for each in message.values()):
        raise _Refused(422, "The message's parts are not short texts.")
    return message


def _count_call(calls: dict[str, deque[float]], device: str) -> None:
    now = time.monotonic()
    latest = calls.setdefault(device, deque())
    while latest and now - latest[0] >= 60.0:
        latest.popleft()
    if len(latest) >= CALLS_A_MINUTE:
        raise _Refused(429, "Too many messages: wait.", int(60.0 - (now - latest[0])) + 1)
    latest.append(now)


def _reply(status: int, content: dict[str, Any]) -> Response:
    reply = Response(json.dumps(content) + "\n", status=status, content_type=JSON)
    reply.headers["Cache-Control"] = "no-store"
    return reply
