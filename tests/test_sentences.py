"""No sentence is missing from the catalogue, none is left over, and scripts have none of their own."""

import ast
import re
from collections.abc import Iterator

import pytest

from calculators import asking
from calculators.contract import STANDINGS, Calculator, Choice, Field, Number, Quantity, Rows, Words
from tests import walking
from tests.html_reading import Page
from webapp import cautions, fragments, glossary, jobs_page, log_page, paper_page, shelf, translations, truck_page
from webapp.bundle import ROOT
from webapp.catalogue import PSEUDO_CLOSE, PSEUDO_OPEN
from webapp.words import en

pytestmark = [pytest.mark.quick, pytest.mark.usefixtures("specimen")]

NAMES = (*shelf.names(), "specimen")


def shared_hints() -> set[str]:
    """Return the last parts of the hints that stand beside fields without one of their own."""
    found = set()
    for name in shelf.names():
        for _, field in walking.boxes(walking.calculator(name)):
            if not field.hint:
                own = f"{field.name}.{name}"
                found.add(own if "hint." + own in en.WORDS else field.name)
        found |= {each.name for each in walking.calculator(name).fields if isinstance(each, Rows) and not each.hint}
    return found


# Ids made at run time from a first part and one of these; where a tuple is empty, the rest comes from the
# declarations and is checked with each calculator below.
MADE_IDS: dict[str, tuple[str, ...]] = {
    "standing.": STANDINGS,
    "timer.": ("start", "stop", "running"),
    "term.": tuple(key for key, _, _ in glossary.TERMS),
    "meaning.": tuple(key for key, _, _ in glossary.TERMS),
    "hint.": tuple(shared_hints()),
    "theme.": ("auto", "dark", "noon"),
    "language.": ("en", *translations.LANGUAGES),
    "form.units.": ("us", "si"),
    "answer.verdict.": ("inside", "outside", "unclear", "warning"),
    "dial.": ("twice", "count", "pair", "unit", "range", "order", "volts-order", "place"),
    "jobs.": jobs_page.STATUSES,
    "jobs.state.": jobs_page.STATUSES,
    "work.": (
        *("gone", "deleted", "asking", "kept", "closed", "pass", "pass-of", "used", "used-unknown"),
        *("change", "price", "on-paper", "again", "close", "reopen", "delete", "undo-delete"),
    ),
    "log.": ("versions", "newer", "arc-energy", "heat-input", "from", "to"),
    "weld-entry.option.visual_result.": ("accepted", "rejected", "repaired"),
    "log.by.": log_page.NARROWED_BY,
    "log.exchange.": ("none", "waiting", "alone", "sending"),
    "log.import.": ("done", "spoilt"),
    "log.persist.": ("yes", "no", "unknown"),
    "log.reason.": log_page.REASONS,
    "log.state.": log_page.STATES,
    "entry.": ("leading", "beside", "older", "deleted", "gone", "take"),
    "entry.field.": ("welded_at", "shown", "shown_verdict", "status", "closed_at"),
    "crew.": ("paired", "not-paired", "not-sent", "left", "wrong"),
    "record.": (
        *("corrects", "job", "saved", "full", "refused", "versions", "last-time"),
        *(f"{id}.{name}" for id in ("corrects", "log", "save") for name in ("job", "job-price")),
        *("log.stock", "save.stock"),
    ),
    "truck.": ("left", "uncounted", "short", "counted", "unknown", "used-by"),
    "truck.item.": truck_page.ITEMS,
    "truck.choice.": ("spool", "cylinder"),
    "checklist.job.": fragments.OF_JOB,
    "ticks.": (*jobs_page.TICKED, "none", "when", "open-list"),
    "watch.": ("until", "none", "weld", "tap"),
    "watch.label.": ("from", "until"),
    "photos.": ("photo", "elsewhere", "saved", "full", "refused"),
    "paper.": (*paper_page.WORDS, "gone"),
    "paper.sign.": ("nothing", "kept", "refused"),
    "demo.": ("loading", "failed", "here", "mark"),
    "machine.": ("none", "typed", "new-name", "rename", "delete", "undo"),
}
# Looked up by name from a calculator's declaration.
OF_A_CALCULATOR = (
    ".title",
    ".question",
    ".found-by",
    ".lead",
    ".field.",
    ".hint.",
    ".fold.",
    ".option.",
    ".result.",
    "range.",
    "unasked.",
)


def _sources() -> dict[str, str]:
    """Return path -> text of everything that may name a shared sentence, except the sentences themselves."""
    paths = [*(ROOT / "calculators").glob("*.py"), *(ROOT / "webapp").glob("*.py")]
    paths += [*(ROOT / "webapp" / "templates").iterdir()]
    return {str(path.relative_to(ROOT)): path.read_text("utf-8") for path in sorted(paths)}


def strings(path: str, text: str) -> list[str]:
    """Return the string literals of a source, without those of a calculator's own sentences."""
    if not path.endswith(".py"):
        return re.findall(r"'([^'\n]*)'", text)
    tree = ast.parse(text)
    own = {id(node) for each in tree.body if _is_english(each) for node in ast.walk(each)}
    constants = [node for node in ast.walk(tree) if isinstance(node, ast.Constant) and id(node) not in own]
    return [node.value for node in constants if isinstance(node.value, str)]


def _is_english(node: ast.stmt) -> bool:
    return (
        isinstance(node, ast.Assign)
        and isinstance(node.targets[0], ast.Name)
        and node.targets[0].id.endswith("ENGLISH")
    )


def _ids_said(text: str) -> list[str]:
    """Return every literal id handed to something that says it."""
    found = []
    for node in ast.walk(ast.parse(text)):
        if isinstance(node, ast.Call) and node.args and isinstance(node.args[0], ast.Constant):
            called = node.func.attr if isinstance(node.func, ast.Attribute) else getattr(node.func, "id", "")
            if called in ("say", "Message", "words", "BadNumber") and isinstance(node.args[0].value, str):
                found.append(node.args[0].value)
    return found


def _known(id: str) -> bool:
    name, _, rest = id.partition(".")
    own = shelf.words_of(name, rest) if rest else None
    return id in en.WORDS if own is None else rest in own


def test_every_sentence_said_is_there():
    said = [id for path, text in _sources().items() if path.endswith(".py") for id in _ids_said(text)]
    said += re.findall(r"say\('([^']+)'\)", _sources()["webapp/templates/shell.html"])
    said += [first + rest for first in MADE_IDS for rest in MADE_IDS[first]]
    assert len(said) > 80
    assert sorted({id for id in said if not _known(id)}) == []


def test_ids_made_at_run_time_are_all_accounted_for():
    """A new first part of an id must be listed above with what may follow."""
    firsts = set()
    for path, text in _sources().items():
        own = path.removeprefix("calculators/").removesuffix(".py").replace("_", "-")
        for each in strings(path, text):
            of_a_calculator = path.startswith("calculators/") and each.split(".")[0] in NAMES
            if of_a_calculator or each.startswith(own + "."):
                continue  # each calculator's own are checked below
            if re.fullmatch(r"\.?[a-z]+(-[a-z]+)*(\.[a-z_-]+)*\.", each):
                firsts.add(each)
    # Packages, and what stock_words.py leaves out of another calculator's sentences.
    assert firsts - set(MADE_IDS) - set(OF_A_CALCULATOR) - {"calculators.", "webapp.words.", "refusal."} == set()
    assert set(MADE_IDS) <= firsts


def test_no_shared_sentence_is_left_over():
    named = {each for path, text in _sources().items() for each in strings(path, text)}
    named |= {first + rest for first in MADE_IDS for rest in MADE_IDS[first]}
    assert sorted(id for id in en.WORDS if id not in named) == []


def _declared_ids(asked: Calculator) -> Iterator[tuple[str, bool]]:
    """Return (id, whether it must be there) of everything looked up by name from a declaration."""
    yield "title", True
    yield "question", True
    yield "found-by", True
    yield "lead", False
    for name in asked.folds:
        yield f"fold.{name}", True
    for field in _all_fields(asked):
        yield f"field.{field.name}", True
        if field.hint:
            yield f"hint.{field.name}", True
        if isinstance(field, Choice):
            for option in field.options:
                yield f"option.{field.name}.{option}", True
            if field.optional:
                yield f"option.{field.name}.", False
        if isinstance(field, Quantity):
            yield f"range.{field.name}", False
            yield f"range.{field.name}.low", False
            yield f"range.{field.name}.high", False
        yield f"unasked.{field.name}", False
        if field.when is not None:
            yield f"unasked.{field.name}", False


def _all_fields(asked: Calculator) -> list[Field]:
    found: list[Field] = []
    for field in asked.fields:
        found.append(field)
        if isinstance(field, Rows):
            found += field.fields
    return found


@pytest.mark.parametrize("name", NAMES)
def test_declaration_s_sentences_are_there(name):
    asked = walking.calculator(name)
    assert [id for id, needed in _declared_ids(asked) if needed and id not in asked.english] == []


@pytest.mark.parametrize("name", NAMES)
def test_every_result_has_its_label(name):
    asked = walking.calculator(name)
    for state, pairs in walking.states(name):
        came = asking.ask(asked, pairs)
        for result in came.answer.results if came.answer is not None else ():
            if isinstance(result, (Number, Words)) and result.label is None:
                assert f"result.{result.name}" in asked.english, state


@pytest.mark.parametrize("name", shelf.names())
def test_every_caution_has_its_source_in_the_library(name):
    for id in walking.calculator(name).english:
        if id.startswith("caution"):
            assert cautions.source_of(f"{name}.{id}") is not None, f"say in webapp/cautions.py where {id} comes from"


def left_over(asked: Calculator, literals: set[str]) -> list[str]:
    """Return the ids of a calculator's sentences that nothing in its own file or declaration uses."""
    declared = {id for id, _ in _declared_ids(asked)}
    firsts = [each for each in literals if each.startswith(asked.name + ".") and each.endswith((".", "-"))]
    unused = []
    for id in asked.english:
        whole = f"{asked.name}.{id}"
        made = any(whole.startswith(first) for first in firsts)
        result = id.startswith("result.") and id.removeprefix("result.") in literals
        if id not in declared and whole not in literals and not made and not result:
            unused.append(id)
    return unused


def _literals_of(name: str) -> set[str]:
    """Return the string literals of every file that may say a calculator's sentences: it may be in parts."""
    paths = [ROOT / "tests" / "specimen.py"] if name == "specimen" else sorted((ROOT / "calculators").rglob("*.py"))
    return {each for path in paths for each in strings(str(path), path.read_text("utf-8"))}


@pytest.mark.parametrize("name", NAMES)
def test_no_sentence_of_a_calculator_is_left_over(name):
    assert left_over(walking.calculator(name), _literals_of(name)) == []


@pytest.mark.parametrize("name", NAMES)
def test_every_sentence_a_calculator_says_is_there(name):
    asked = walking.calculator(name)
    named = [each for each in _literals_of(name) if re.fullmatch(re.escape(name) + r"\.[a-z_.-]+", each)]
    known = [name + "." + id for id in asked.english]
    for each in named:
        if each.endswith((".", "-")):
            assert any(id.startswith(each) for id in known), each
        else:
            assert each in known


def test_left_over_sentence_is_found(specimen, monkeypatch):
    monkeypatch.setitem(specimen.english, "note.nobody", "Nobody says this.")
    assert left_over(specimen, _literals_of("specimen")) == ["note.nobody"]


def test_missing_sentence_is_found():
    assert _ids_said('say("number.nowhere")\nraise BadNumber("number.fraction")') == [
        "number.nowhere",
        "number.fraction",
    ]
    assert not _known("number.nowhere")
    assert not _known("heat-input.nowhere")
    assert _known("number.fraction")


@pytest.mark.parametrize("words", [en.WORDS, *[walking.calculator(name).english for name in shelf.names()]])
def test_sentences_are_whole(words):
    for id, text in words.items():
        assert text.strip() == text != "", id
        assert text.count("{") == text.count("}") == len(re.findall(r"\{[a-z_]+\}", text)), id
        assert PSEUDO_OPEN not in text and PSEUDO_CLOSE not in text, id


# ---------------------------------------------------------------- scripts say nothing of their own


def script_sentences(text: str) -> list[str]:
    """Return literals of a script that read like a sentence; what goes to the console is for us, not the reader."""
    code = re.sub(r"//[^\n]*|/\*.*?\*/", "", text, flags=re.S)
    code = re.sub(r"(console\.\w+|new Error|TypeError)\([^)]*\)", "", code)
    return [each for each in re.findall(r"""['"`]([^'"`\n]*)['"`]""", code) if re.match(r"[A-Z][a-z]+ [a-z]+", each)]


SCRIPTS = (
    *sorted((ROOT / "static" / "page").glob("*.js")),
    ROOT / "static" / "theme.js",
    ROOT / "static" / "worker.js",
)


@pytest.mark.parametrize("path", SCRIPTS, ids=lambda path: path.name)
def test_script_has_no_sentence_of_its_own(path):
    assert script_sentences(path.read_text("utf-8")) == []


def test_planted_sentence_in_a_script_is_found():
    assert script_sentences("say('Ready to go'); // It's ready\nlog(`Not yet done`)") == ["Ready to go", "Not yet done"]


def test_every_field_has_one_sentence_beside_it():
    lacking = []
    for name in NAMES[:-1]:  # the specimen shows that a field can do without
        page = Page(walking.reply("/" + name, []).body)
        ids = {each.attributes.get("id") for each in page.elements}
        for box, _ in walking.boxes(walking.calculator(name)):
            if box + "-hint" not in ids:
                lacking.append((name, box))
    assert lacking == []
