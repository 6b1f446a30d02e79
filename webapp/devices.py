"""Which phones belong to the crew: codes that let one in once, tokens that let it come again, and how to shut it out.

The owner's commands run beside the server, in another process, so they meet in the folder: a code is a file named by
its hash, a phone shut out is a file named by its id. The server reads both at each request, so that either takes
effect at once. Neither codes nor tokens are ever written down: only their hashes are.
"""

import base64
import datetime
import hashlib
import pathlib
import secrets
import threading
import uuid
from collections.abc import Callable
from typing import Any

from tinydb import TinyDB, where

from webapp import atomic_storage, copies
from webapp.atomic_storage import AtomicStorage, Damaged
from webapp.store import CannotStart

DEVICES = "devices.json"
CODES, SHUT_OUT = "codes", "shut-out"
CODE_LIFE = datetime.timedelta(minutes=10)
CODE_BYTES = 5  # 40 bits: eight letters and digits of base 32
WRONG_TRIES = 5  # after which every code made before is dead
TRIES_AN_HOUR = 20  # wrong ones, from one address
TRIES_A_DAY = 100  # wrong ones, from all
IDLE = datetime.timedelta(days=90)
LIFE = datetime.timedelta(days=365)
_SEEN_EVERY = datetime.timedelta(days=1)  # so that a sync does not write this file each time
LONGEST_NAME = 60

Clock = Callable[[], datetime.datetime]


class TooManyTries(Exception):
    """No more tries for now; `seconds` says how long to wait."""

    def __init__(self, seconds: int) -> None:
        super().__init__(seconds)
        self.seconds = seconds


class Devices:
    """The phones of a crew, for the server."""

    def __init__(self, folder: pathlib.Path, now: Clock | None = None) -> None:
        self.folder = folder
        self.now = now or _clock
        self._lock = threading.Lock()
        self._wrong: list[tuple[datetime.datetime, str]] = []  # wrong tries: when, from which address
        self._table = _open(folder, self.now).table("devices")
        self._by_token: dict[str, dict[str, Any]] = {row["token"]: dict(row) for row in self._table.all()}

    def pair(self, code: str, name: str, address: str) -> tuple[str, str] | None:
        """Take a code and return the new phone's id and token, or None: wrong, expired, used and unknown are alike.

        Raises
        ------
        TooManyTries
            If too many were tried from this address, or from everywhere.
        """
        with self._lock:
            now = self.now()
            codes = _codes(self.folder)
            newest = max(codes.values(), default=now - datetime.timedelta(days=1))
            self._refuse_too_many(now, newest, address)
            wanted = digest(_plain(code))
            made = codes.get(wanted)
            alive = made is not None and now - made <= CODE_LIFE and self._wrong_since(made) < WRONG_TRIES
            if not alive:
                self._wrong.append((now, address))
                for known, since in codes.items():
                    if self._wrong_since(since) >= WRONG_TRIES or now - since > CODE_LIFE:
                        (self.folder / CODES / known).unlink(missing_ok=True)
                return None
            (self.folder / CODES / wanted).unlink()  # before anything is let in: one code, one phone
            return self._add(name, now)

    def _add(self, name: str, now: datetime.datetime) -> tuple[str, str]:
        id, token = str(uuid.uuid4()), secrets.token_urlsafe(32)
        row = {"id": id, "name": name, "token": digest(token), "paired": now.isoformat(), "seen": now.isoformat()}
        self._table.insert(row)
        self._by_token[row["token"]] = row
        return id, token

    def _refuse_too_many(self, now: datetime.datetime, newest: datetime.datetime, address: str) -> None:
        """Refuse beyond the limits; a new code of the owner's begins the count anew: nobody can lock him out."""
        self._wrong = [each for each in self._wrong if now - each[0] < datetime.timedelta(days=1)]
        hour_ago = now - datetime.timedelta(hours=1)
        wrong = [(when, source) for when, source in self._wrong if when > newest]
        here = [when for when, source in wrong if source == address and when > hour_ago]
        if len(here) >= TRIES_AN_HOUR:
            raise TooManyTries(int((here[0] - hour_ago).total_seconds()) + 1)
        if len(wrong) >= TRIES_A_DAY:
            raise TooManyTries(int((wrong[0][0] - now).total_seconds()) + 86_401)

    def _wrong_since(self, moment: datetime.datetime) -> int:
        return len([when for when, _ in self._wrong if when > moment])

    def known(self, token: str) -> str:
        """Return the id of the phone that holds a token, or "" if it is not let in (any more)."""
        row = self._by_token.get(digest(token))
        if row is None or (self.folder / SHUT_OUT / row["id"]).exists():
            return ""
        now = self.now()
        seen, paired = (datetime.datetime.fromisoformat(row[key]) for key in ("seen", "paired"))
        if now - seen > IDLE or now - paired > LIFE:
            return ""
        if now - seen > _SEEN_EVERY:
            with self._lock:
                row["seen"] = now.isoformat()
                self._table.update({"seen": row["seen"]}, where("id") == row["id"])
        return str(row["id"])


# ---------------------------------------------------------------- the owner's commands


def make_code(folder: pathlib.Path, now: Clock | None = None) -> str:
    """Return a new code, as two groups of four, that lets one phone in within ten minutes."""
    code = base64.b32encode(secrets.token_bytes(CODE_BYTES)).decode()
    _folder(folder, CODES)
    path = folder / CODES / digest(code)
    atomic_storage.replace(path, (now or _clock)().isoformat().encode())
    return code[:4] + "-" + code[4:]


def paired(folder: pathlib.Path) -> list[dict[str, Any]]:
    """Return the phones that were let in, the last one last, each with whether it is shut out."""
    path = folder / DEVICES
    if not path.exists():
        return []
    rows = list(atomic_storage.read(path).get("devices", {}).values())
    return [{**row, "shut_out": (folder / SHUT_OUT / row["id"]).exists()} for row in rows]


def shut_out(folder: pathlib.Path, id: str) -> None:
    """Keep a phone out from its next request on."""
    _folder(folder, SHUT_OUT)
    atomic_storage.replace(folder / SHUT_OUT / id, b"")


# ---------------------------------------------------------------- files


def digest(text: str) -> str:
    """Return the hash under which a code or a token is kept."""
    return hashlib.sha256(text.encode("utf-8", "surrogatepass")).hexdigest()


def _plain(code: str) -> str:
    """Return a code as it was made, however it was typed: small letters, spaces, 0 for O and 1 for I."""
    kept = [each for each in code.upper()[:40] if each.isascii() and each.isalnum()]
    return "".join(kept).replace("0", "O").replace("1", "I")


def _codes(folder: pathlib.Path) -> dict[str, datetime.datetime]:
    """Return hash -> when it was made, of the codes that lie there."""
    found = {}
    for path in sorted((folder / CODES).glob("*")):
        if len(path.name) == 64:
            try:
                found[path.name] = datetime.datetime.fromisoformat(path.read_text())
            except (OSError, ValueError):
                continue
    return found


def _open(folder: pathlib.Path, now: Clock) -> TinyDB:
    path = folder / DEVICES
    try:
        return TinyDB(path, storage=AtomicStorage, before=copies.Keeper(lambda: now().date()).keep)
    except (Damaged, OSError, ValueError) as error:
        raise CannotStart(
            f"The list of phones is not opened: {error}. Move {path} away; every phone then has to be paired again."
        ) from error


def _folder(folder: pathlib.Path, name: str) -> None:
    (folder / name).mkdir(parents=True, exist_ok=True, mode=0o700)


def _clock() -> datetime.datetime:
    return datetime.datetime.now(datetime.UTC)
