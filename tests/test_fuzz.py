"""Whatever is typed, the book answers, asks or says what is wrong: it never fails, and never shows a non-number."""

import json
import math
import random
import re
from collections.abc import Callable
from typing import Any
from urllib.parse import quote

import pytest
from hypothesis import HealthCheck, example, given, settings
from hypothesis import strategies as st

from calculators import asking, numerals, reading, units
from calculators.contract import Calculator, Choice, Quantity
from tests import walking
from tests.html_reading import Page
from webapp import pocket, shelf
from webapp.catalogue import PSEUDO
from webapp.pages import LONGEST_QUERY, create_app

pytestmark = pytest.mark.usefixtures("specimen")

NAMES = (*shelf.names(), "specimen")

many = settings(max_examples=300, deadline=None, suppress_health_check=[HealthCheck.too_slow])

# ---------------------------------------------------------------- what is typed

NASTY = (
    "",
    " ",
    "0",
    "-0",
    "1e22",
    "1e-22",
    "1e308",
    "1e999",
    "nan",
    "NaN",
    "inf",
    "-Infinity",
    "1/0",
    "0/5",
    "1,234",
    "9" * 15,
    "9" * 16,
    "9" * 201,
    "5 furlong",
    "6 mm 7",
    "unknown",
    "<script>alert(1)</script>",
    "\"><b onclick='x'>",
    "&lt;&amp;",
    "{label}",
    "}{",
    "\u27e6\u27e7",
    "\x00",
    "1\x002",
    "\u0663",
    "\u202e6",
    "6\u00a0mm",
    "\u00bd",
    "24 V; DROP TABLE",
    "../../etc/passwd",
    "%s%d%n",
    "#frag",
    "a&b=c",
)

plain_text = st.text(st.characters(exclude_categories=["Cs"]), max_size=40)
numbers = st.floats(allow_nan=False, allow_infinity=False).map(repr) | st.integers(-(10**6), 10**6).map(str)
number_like = st.text("0123456789.,-+/eE mVin\"'", max_size=14)
typed_text = st.sampled_from(NASTY) | plain_text | numbers | number_like


def edges(field: Quantity) -> st.SearchStrategy[str]:
    """Return a strategy of texts at the ends of a range and next to them, where formulas divide by zero."""
    low, high = reading.limits(field)
    near = (low, high, low + (high - low) * 1e-6, high - (high - low) * 1e-6, 0.0)
    texts = [walking.text_of(units.from_coherent(end, unit), unit) for unit in field.quantity.units for end in near]
    return st.sampled_from(texts)


@st.composite
def questions(draw: Callable[..., Any]) -> tuple[str, walking.Pairs]:
    """Draw a calculator and a question to it: a good one, then spoiled in a few places, or not."""
    name = draw(st.sampled_from(NAMES))
    asked = walking.calculator(name)
    pairs: walking.Pairs = []
    if draw(st.integers(0, 9)):
        pairs += walking.a_question(asked, random.Random(draw(st.integers(0, 10**6))))
    for _ in range(draw(st.integers(0, 3))):
        box, field = draw(st.sampled_from(walking.boxes(asked)))
        pairs = [pair for pair in pairs if pair[0] != box or draw(st.booleans())]
        pairs.append((box, draw(edges(field) | typed_text if isinstance(field, Quantity) else typed_text)))
        if isinstance(field, Quantity) and draw(st.booleans()):
            pairs.append((box + "_unit", draw(st.sampled_from(field.quantity.units) | typed_text)))
    if draw(st.integers(0, 4)) == 0:
        pairs.append((draw(plain_text), draw(typed_text)))
    if draw(st.integers(0, 4)) == 0:
        pairs.append(
            (draw(st.sampled_from(("units", "lang"))), draw(st.sampled_from(("us", "si", PSEUDO)) | typed_text))
        )
    return name, pairs


def _read(pairs: walking.Pairs) -> walking.Pairs:
    """Return pairs as the book reads them."""
    return pocket.Request("/", pairs, False).pairs


def _came(name: str, pairs: walking.Pairs) -> asking.Reply:
    return asking.ask(walking.calculator(name), _read(pairs))


# ---------------------------------------------------------------- pages


@many
@given(questions())
def test_page_is_whole_whatever_is_typed(question):
    name, pairs = question
    whole = walking.reply("/" + name, pairs)
    fragment = walking.reply("/" + name, pairs, partial=True)
    assert (whole.status, fragment.status) == (200, 200)
    page = Page(whole.body)
    assert page.faults == []
    assert Page(fragment.body).faults == []
    assert fragment.body in whole.body
    titles = [element.text() for element in page.all("title") if not element.inside("svg")]
    assert len(page.all("main")) == len(page.all("h1")) == len(titles) == 1
    assert titles[0].startswith(("Error: ", "\u27e6Error: ")) == (_came(name, pairs).state == "problem")


@many
@given(questions())
def test_answer_region_says_something_and_no_non_number(question):
    name, pairs = question
    fragment = Page(walking.reply("/" + name, pairs, partial=True).body)
    said = fragment.root.text()
    assert re.search(r"\w", said)
    came = _came(name, pairs)
    if came.state == "answer":
        headline = [element for element in fragment.elements if element.has_class("number")]
        assert len(headline) == 1 and re.search(r"\w", headline[0].text())
        if not any(re.search("nan|inf|none", text, re.I) for _, text in pairs):
            assert not re.search(r"\b(nan|inf|infinity|none)\b", said, re.I), said
    if came.state == "problem":
        shown = [
            element.attributes["data-field"] for element in fragment.all("li") if "data-field" in element.attributes
        ]
        assert shown == [box for box, _ in came.errors]


@many
@given(questions())
@example(("specimen", [("remark", "<i>\"'&</i>"), ("weld_length", "6 mm"), ("arc_time", "<b>")]))
def test_what_was_typed_stays_in_its_box(question):
    name, pairs = question
    asked = walking.calculator(name)
    page = Page(walking.reply("/" + name, pairs).body)
    typed = reading.last_typed(_read(pairs))
    for box, field in walking.boxes(asked):
        text = typed.get(box, "")
        shown = page.chosen(box)
        if isinstance(field, Choice):
            kept = numerals.tidy(text)
            assert shown == (kept if kept in field.options else field.default or ""), box
        elif shown != text[: reading.LONGEST_TYPED + 1]:
            assert isinstance(field, Quantity), (box, text, shown)
            number, suffix = numerals.split_unit(text)
            assert (shown, page.chosen(box + "_unit")) == (number, units.named(suffix)), (box, text)


@many
@given(plain_text, st.booleans(), st.sampled_from(("en", PSEUDO)))
def test_unknown_address_is_a_page_that_says_so(path, partial, language):
    reply = walking.reply("/" + path, [], language, partial=partial)
    assert reply.status in (200, 404)
    if reply.content_type == pocket.HTML:
        assert Page(reply.body).faults == []
    else:
        assert json.loads(reply.body)


# ---------------------------------------------------------------- the API


def _strict(text: str) -> Any:
    def refuse(constant: str) -> None:
        raise AssertionError(constant)

    return json.loads(text, parse_constant=refuse)


def _numbers_in(value: object) -> list[float]:
    if isinstance(value, dict):
        return [number for each in value.values() for number in _numbers_in(each)]
    if isinstance(value, list):
        return [number for each in value for number in _numbers_in(each)]
    return [value] if isinstance(value, float) else []


@many
@given(questions())
def test_api_answers_or_names_the_field(question):
    name, pairs = question
    reply = walking.reply("/api/" + name, pairs)
    assert reply.status in (200, 422)
    value = _strict(reply.body)
    assert all(math.isfinite(number) for number in _numbers_in(value))
    if reply.status == 200:
        assert value["calculator"] == name
        assert value["results"]
        assert all(
            each.get("unit") is not None or each.keys() & {"text", "rows", "findings", "title", "items"}
            for each in value["results"].values()
        )
        assert value["sources"]
    else:
        boxes = {box for box, _ in walking.boxes(walking.calculator(name))} | {""}
        assert value["errors"] and set(value["errors"]) <= boxes
        for sentence in value["errors"].values():
            assert re.search(r"[^\W\d]{2}", sentence), sentence
    if "lang" not in dict(_read(pairs)):
        assert "\u27e6" not in reply.body or any("\u27e6" in text for _, text in pairs)


@pytest.mark.parametrize("name", NAMES)
def test_every_box_at_the_ends_of_its_range_is_answered_or_refused(name):
    """What chance might miss: each number at each end, and at zero, in questions that had an answer."""
    for pairs, _ in walking.answered(name)[:5]:
        for box, field in walking.boxes(walking.calculator(name)):
            if not isinstance(field, Quantity):
                continue
            for end in (field.low, field.high, 0.0):
                text = walking.text_of(end, field.quantity.si)
                asked = [(other, typed) for other, typed in pairs if other != box] + [(box, text)]
                assert walking.reply("/" + name, asked, partial=True).status == 200, (box, text)


# ---------------------------------------------------------------- ranges

RANGED = [
    (name, box)
    for name in shelf.names()
    for box, field in walking.boxes(walking.calculator(name))
    if isinstance(field, Quantity)
]


def _refusal(asked: Calculator, box: str, field: Quantity, text: str) -> str | None:
    """Return the sentence beside a box when `text` stands in it, or None if the box takes it."""
    pairs: walking.Pairs = [(box, text), *walking.choices_for(asked, box)]
    if asking.ask(asked, pairs).state != "problem":
        return None
    errors = _strict(walking.reply("/api/" + asked.name, pairs).body)["errors"]
    return str(errors[box]) if box in errors else None


def _ends(sentence: str) -> list[str]:
    found = re.search("between ([\u22120-9\u202f.e-]+)(?:\u00a0\\S+)? and ([\u22120-9\u202f.e-]+)", sentence)
    assert found, sentence
    return [end.replace("\u202f", "").replace("\u2212", "-") for end in found.groups()]


@pytest.mark.quick
@pytest.mark.parametrize(("name", "box"), RANGED)
def test_refusal_by_range_says_both_ends_in_the_unit_typed(name, box):
    asked = walking.calculator(name)
    field = dict(walking.boxes(asked))[box]
    assert isinstance(field, Quantity)
    for unit in field.quantity.units:
        low, high = (units.from_coherent(end, unit) for end in reading.limits(field))
        for outside in (low - (high - low) * 0.01, high + (high - low) * 0.01, high * 1000 + 1):
            outside = math.floor(outside) if outside < low else math.ceil(outside)
            sentence = _refusal(asked, box, field, walking.text_of(outside if field.whole else float(outside), unit))
            assert sentence is not None, (outside, unit)
            shown = [float(end) for end in _ends(sentence)]
            # Shown with a few figures, and never wider than it is.
            assert low - 1e-9 <= shown[0] <= low + abs(low) * 0.02 + 1e-9, sentence
            assert high - abs(high) * 0.02 - 1e-9 <= shown[1] <= high + 1e-9, sentence
            assert units.sign(unit) in sentence


@pytest.mark.quick
@pytest.mark.parametrize(("name", "box"), RANGED)
def test_ends_that_a_refusal_shows_are_taken(name, box):
    """A reader who types the limit just read must not be refused again."""
    asked = walking.calculator(name)
    field = dict(walking.boxes(asked))[box]
    assert isinstance(field, Quantity)
    for unit in field.quantity.units:
        sentence = _refusal(asked, box, field, walking.text_of(-99999.0, unit))
        assert sentence is not None
        for end in _ends(sentence):
            assert _refusal(asked, box, field, f"{end} {unit}".strip()) is None, f"{sentence} refuses {end} {unit}"


# ---------------------------------------------------------------- through Flask


@pytest.fixture(scope="module")
def client():
    return create_app().test_client()


@many
@given(path=st.text(max_size=20), query=st.binary(max_size=60), partial=st.booleans())
@example(path="heat-input", query=b"voltage=%00%ff%F0%9F%98%80&current=1%2C5", partial=False)
@example(path="api/heat-input", query=b"voltage=" + b"9" * (LONGEST_QUERY + 1), partial=False)
@example(path="static/../webapp/pages.py", query=b"", partial=False)
@example(path="heat-input\x00", query=b"&&==;=%", partial=True)
def test_server_never_fails(client, path, query, partial):
    headers = {"HX-Request": "true"} if partial else {}
    # Two slashes in front would name another host to the test client.
    target = "/" + quote(path.encode("utf-8", "replace")).lstrip("/")
    reply = client.get(target, query_string=query.decode("latin-1"), headers=headers, buffered=True)
    assert reply.status_code < 500
    assert reply.status_code in (301, 308) or reply.data


def test_bytes_that_are_no_text_are_still_a_question(client):
    for raw in (b"voltage=\xff\xfe", b"voltage=%ff%fe", b"\xff=\xff", b"voltage=%ED%A0%80"):
        reply = client.get("/heat-input", query_string=raw.decode("latin-1"))
        assert reply.status_code == 200
        reply.data.decode("utf-8")
