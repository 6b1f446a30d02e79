"""What a revision of a record is on the wire: its envelope, its name, and what is wrong with one that is not right.

A record (a weld entry, a job, a piece of stock) is never changed: each change is a new revision that names the ones
that it follows. The body is text that nobody rewrites, so that what was signed can be shown as it was.
"""

import hashlib
import json
from typing import Any

KEYS = ("id", "rev", "parents", "device", "seq_on_device", "saved_at", "deleted", "body")
KINDS = ("weld-entry", "job", "stock")
SCHEMA = 1
MOST_PARENTS = 8
LONGEST_BODY = 100_000  # characters; a full weld entry is about 1,500
LONGEST_TEXT = 4_000  # characters of one field
MOST_FIELDS = 200
LARGEST_WHOLE = 2**53 - 1  # the largest that a page's script counts without a gap

_HEX = "0123456789abcdef"


def revision_name(record: dict[str, Any]) -> str:
    """Return the name of a revision: how many changes deep it is, and a hash of all that it says.

    The same words always have the same name, so that sending one twice cannot make two of it, and no revision
    can take another's place.
    """
    parents = sorted(record["parents"])
    depth = 1 + max([int(parent.partition("-")[0]) for parent in parents], default=0)
    said = [
        record["id"],
        ",".join(parents),
        record["device"],
        str(record["seq_on_device"]),
        record["saved_at"],
        "deleted" if record["deleted"] else "kept",
        record["body"],
    ]
    digest = hashlib.sha256("\n".join(said).encode("utf-8", "surrogatepass")).hexdigest()
    return f"{depth}-{digest[:32]}"


def fault(record: object) -> str:
    """Return what is wrong with a revision that came in, in words, or "" if nothing is."""
    if not isinstance(record, dict) or sorted(record) != sorted(KEYS):
        return "it does not have the parts of a record"
    return _envelope_fault(record) or _body_fault(record["body"]) or _name_fault(record)


def _envelope_fault(record: dict[str, Any]) -> str:
    parents = record["parents"]
    count = record["seq_on_device"]
    found = ""
    if not is_identity(record["id"]) or not is_identity(record["device"]):
        found = "its id or its phone's id is not one"
    elif not is_name(record["rev"]):
        found = "the name of its revision is not one"
    elif not isinstance(parents, list) or len(parents) > MOST_PARENTS or not all(is_name(each) for each in parents):
        found = "the revisions that it follows are not named rightly"
    elif parents != sorted(set(parents)):
        found = "the revisions that it follows are not in order"
    elif not isinstance(count, int) or isinstance(count, bool) or not 1 <= count <= LARGEST_WHOLE:
        found = "its number on the phone is not a whole one"
    elif not isinstance(record["saved_at"], str) or not 10 <= len(record["saved_at"]) <= 40:
        found = "the time it was saved at is not one"
    elif not isinstance(record["deleted"], bool):
        found = "it does not say whether it is deleted"
    elif not isinstance(record["body"], str) or len(record["body"]) > LONGEST_BODY:
        found = f"its body is not text of at most {LONGEST_BODY} characters"
    return found


def _name_fault(record: dict[str, Any]) -> str:
    return "" if record["rev"] == revision_name(record) else "its name and its content do not belong together"


def _body_fault(text: str) -> str:
    try:
        body = strict_json(text)
    except ValueError:
        return "its body is not JSON with numbers that can be written down"
    if not isinstance(body, dict):
        return "its body has no fields"
    schema = body.get("schema")
    if not isinstance(schema, int) or isinstance(schema, bool) or not 1 <= schema <= LARGEST_WHOLE:
        return "its body does not say which schema it has"
    if not _is_text(body.get("kind"), 40) or not _is_text(body.get("build"), 40):
        return "its body does not say what it is and which build made it"
    if schema > SCHEMA:
        return ""  # a newer phone's: kept byte for byte, for the phones that know it
    if body["kind"] not in KINDS or sorted(body) != ["build", "fields", "kind", "schema"]:
        return "its body is of no kind known here"
    fields = body["fields"]
    if not isinstance(fields, dict) or len(fields) > MOST_FIELDS:
        return "its fields are not there"
    for name, value in fields.items():
        if not _is_text(name, 60) or not (value == "" or _is_text(value, LONGEST_TEXT)):
            return f"its field {name[:60]!r} is not text of at most {LONGEST_TEXT} characters"
    return ""


def strict_json(text: str | bytes) -> Any:
    """Return what a JSON text says.

    Raises
    ------
    ValueError
        If it is no JSON, is nested too deep, or has a number that is infinite or none.
    """
    try:
        return json.loads(text, parse_constant=_refuse_number, parse_float=_finite)
    except RecursionError as error:
        raise ValueError("nested too deep") from error


def _refuse_number(word: str) -> float:
    raise ValueError(f"{word} is no number")


def _finite(text: str) -> float:
    number = float(text)
    if number in (float("inf"), float("-inf")):
        raise ValueError(f"{text} is too large")
    return number


def _is_text(value: object, longest: int) -> bool:
    return isinstance(value, str) and 1 <= len(value) <= longest


def is_identity(value: object) -> bool:
    """Return whether this is a UUID as text: 8-4-4-4-12 of lower-case hex."""
    if not isinstance(value, str):
        return False
    parts = value.split("-")
    return [len(part) for part in parts] == [8, 4, 4, 4, 12] and all(each in _HEX for each in "".join(parts))


def is_name(value: object) -> bool:
    """Return whether this is the name of a revision: a depth, a hyphen, 32 of lower-case hex."""
    if not isinstance(value, str):
        return False
    depth, _, digest = value.partition("-")
    whole = depth.isascii() and depth.isdecimal() and not depth.startswith("0") and len(depth) <= 9
    return whole and len(digest) == 32 and all(each in _HEX for each in digest)
