"""What is wrong with a revision that came in, at each limit and in which words; and how one is named."""

import hashlib
import json
import random
from typing import Any

import pytest

from tests.faults.phones import identity, revision
from webapp import revisions

NAME = "1-" + "0123456789abcdef" * 2
ID = "01234567-89ab-cdef-0123-456789abcdef"


def body(**changed: Any) -> str:
    whole = {"kind": "weld-entry", "schema": 1, "build": "b", "fields": {"joint": "a"}, **changed}
    return json.dumps({key: value for key, value in whole.items() if value is not None})


def fault(**changed: Any) -> str:
    """Return what is said of a sound revision with something changed; it is named rightly unless that is changed."""
    return revisions.fault(revision(random.Random("sound"), **changed))


ENVELOPE: dict[str, dict[str, list[Any]]] = {
    "its id or its phone's id is not one": {"id": [ID.upper(), ID + "0", ID[:-1], "", 7], "device": ["", None, ID[1:]]},
    "the name of its revision is not one": {"rev": ["", 7, "1-" + "0" * 31]},
    "the revisions that it follows are not named rightly": {
        "parents": ["none", None, [7], [NAME, "2-x"], [f"{n}-{n}{NAME[3:]}" for n in range(1, 10)]]
    },
    "the revisions that it follows are not in order": {"parents": [["2" + NAME[1:], NAME], [NAME, NAME]]},
    "its number on the phone is not a whole one": {"seq_on_device": [0, -1, 2**53, True, "1", 1.0, None]},
    "the time it was saved at is not one": {"saved_at": ["2026-11-2", "2" * 41, 7, None]},
    "it does not say whether it is deleted": {"deleted": [0, 1, "", None]},
    "its body is not text of at most 100000 characters": {"body": ["x" * 100_001, {}, None, 7]},
}


@pytest.mark.parametrize(
    ("key", "value", "words"),
    [(key, value, words) for words, given in ENVELOPE.items() for key, values in given.items() for value in values],
    ids=lambda each: str(each)[:30],
)
def test_a_faulty_envelope_is_refused_in_words(key, value, words):
    assert revisions.fault({**revision(random.Random("sound")), key: value}) == words


def test_what_is_no_record_at_all_is_refused():
    sound = revision(random.Random("sound"))
    assert revisions.fault(sound) == ""
    words = "it does not have the parts of a record"
    assert revisions.fault(None) == revisions.fault([]) == revisions.fault(list(sound)) == words
    assert revisions.fault({**sound, "more": ""}) == words
    for key in sound:
        assert revisions.fault({name: value for name, value in sound.items() if name != key}) == words


@pytest.mark.parametrize(
    "changed",
    [
        {"parents": [f"{n}-{n}{NAME[3:]}" for n in range(1, 9)]},
        {"seq_on_device": 2**53 - 1},
        {"saved_at": "2026-11-28"},
        {"saved_at": "2" * 40},
        {"deleted": True},
        {"body": " " * (100_000 - len(body())) + body()},
    ],
    ids=lambda each: next(iter(each)),
)
def test_the_limits_themselves_are_taken(changed):
    assert fault(**changed) == ""


NO_SCHEMA: list[Any] = [None, 0, -1, 2**53, True, "1", 1.0, []]
NO_TEXT: list[Any] = [7, None, [], "x" * 4001, {}]
NO_WORD: list[Any] = [None, "", "x" * 41, 7]
BODIES: dict[str, list[str]] = {
    "its body is not JSON with numbers that can be written down": ["", "{", body()[:-1], '{"a": NaN}', '{"a": 1e999}'],
    "its body has no fields": ["[]", "7", "null", '"x"'],
    "its body does not say which schema it has": [body(schema=each) for each in NO_SCHEMA],
    "its body does not say what it is and which build made it": [
        *(body(kind=each) for each in NO_WORD),
        *(body(build=each) for each in NO_WORD),
        body(schema=2, kind=""),
        body(schema=2, build=7),
    ],
    "its body is of no kind known here": [body(kind="hat"), body(more=1), body(fields=None)],
    "its fields are not there": [
        body(fields=[]),
        body(fields="x"),
        body(fields={f"f{n}": "" for n in range(201)}),
    ],
    "its field 'joint' is not text of at most 4000 characters": [body(fields={"joint": each}) for each in NO_TEXT],
    "its field '' is not text of at most 4000 characters": [body(fields={"": "x"})],
    f"its field {'n' * 60!r} is not text of at most 4000 characters": [body(fields={"n" * 61: "x"})],
}


@pytest.mark.parametrize(
    ("text", "words"),
    [(text, words) for words, texts in BODIES.items() for text in texts],
    ids=lambda each: str(each)[:40],
)
def test_a_faulty_body_is_refused_in_words(text, words):
    assert fault(body=text) == words


@pytest.mark.parametrize(
    "text",
    [
        body(),
        body(kind="job"),
        body(kind="stock", build="x" * 40),
        body(fields={}),
        body(fields={"joint": "", "n" * 60: "x" * 4000, "n": "y"}),
        body(fields={f"f{n}": "" for n in range(200)}),
        body(schema=2, kind="k" * 40, build="x" * 40, fields=None, more=1.5),
        body(schema=2**53 - 1, kind="hat"),
    ],
    ids=range(8),
)
def test_a_sound_body_is_taken(text):
    assert fault(body=text) == ""


def test_a_name_that_does_not_belong_to_the_content_is_refused():
    sound = revision(random.Random("sound"))
    for key, value in (("saved_at", "2026-11-28T10:00:00.001Z"), ("deleted", True), ("rev", NAME), ("device", ID)):
        assert revisions.fault({**sound, key: value}) == "its name and its content do not belong together"


def test_a_name_is_the_depth_and_a_hash_of_all_it_says():
    chance = random.Random("name")
    parents = [f"{depth}-{chance.getrandbits(128):032x}" for depth in (2, 11, 9)]
    record: dict[str, Any] = {
        "id": identity(chance),
        "parents": parents,
        "device": ID,
        "seq_on_device": 12,
        "saved_at": "then",
        "deleted": True,
        "body": "caf\u00e9 \ud800",
    }
    said = "\n".join([record["id"], ",".join(sorted(parents)), ID, "12", "then", "deleted", record["body"]])
    digest = hashlib.sha256(said.encode("utf-8", "surrogatepass")).hexdigest()
    assert revisions.revision_name(record) == "12-" + digest[:32]
    assert revisions.revision_name({**record, "parents": parents[::-1]}) == "12-" + digest[:32]
    kept = said.replace("deleted", "kept").replace(",".join(sorted(parents)), "")
    digest = hashlib.sha256(kept.encode("utf-8", "surrogatepass")).hexdigest()
    assert revisions.revision_name({**record, "parents": [], "deleted": False}) == "1-" + digest[:32]


@pytest.mark.parametrize(
    ("text", "sound"),
    [
        (NAME, True),
        ("123456789" + NAME[1:], True),
        ("1234567890" + NAME[1:], False),
        ("0" + NAME[1:], False),
        ("01" + NAME[1:], False),
        ("" + NAME[1:], False),
        ("x" + NAME[1:], False),
        ("\u0661" + NAME[1:], False),
        (NAME.upper(), False),
        (NAME[:-1] + "g", False),
        (NAME[:-1], False),
        (NAME + "0", False),
        (NAME.replace("-", ""), False),
        (None, False),
        (7, False),
    ],
)
def test_what_is_the_name_of_a_revision(text, sound):
    assert revisions.is_name(text) is sound


@pytest.mark.parametrize("text", [ID, "f" * 8 + "-0000-0000-0000-" + "9" * 12])
def test_an_identity_is_one(text):
    assert revisions.is_identity(text) is True


@pytest.mark.parametrize("text", [ID.upper(), ID.replace("-", ""), ID[:-1] + "g", ID + "-", "0" + ID, None, 7, ""])
def test_what_is_no_identity(text):
    assert revisions.is_identity(text) is False


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("NaN", "NaN is no number"),
        ("[Infinity]", "Infinity is no number"),
        ("-Infinity", "-Infinity is no number"),
        ("1e999", "1e999 is too large"),
        ("-1e999", "-1e999 is too large"),
        ("[" * 100_000, "nested too deep"),
    ],
    ids=lambda each: each[:12],
)
def test_a_number_that_cannot_be_written_down_is_no_json(text, words):
    with pytest.raises(ValueError) as told:
        revisions.strict_json(text)
    assert str(told.value) == words


def test_json_is_read_from_text_and_bytes():
    assert revisions.strict_json('[1.5, "a", 2]') == revisions.strict_json(b'[1.5, "a", 2]') == [1.5, "a", 2]
