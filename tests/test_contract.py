"""What a calculator may be made of: every kind of field and of answer, in every way it can be asked and shown.

The first half is the specimen, which uses each kind; the second holds for every calculator on the shelf.
"""

import inspect
import json
from typing import Any
from urllib.parse import parse_qsl, urlsplit

import pytest

from calculators import asking, contract, numerals, units
from calculators.contract import Calculator, Choice, Field, Measured, Quantity, Rows
from tests import specimen as specimen_module
from tests import walking
from tests.html_reading import Page
from webapp import cautions, shelf
from webapp.catalogue import has

pytestmark = [pytest.mark.quick, pytest.mark.usefixtures("specimen")]

WHOLE = [
    ("joint", "butt"),
    ("groove", "vee"),
    ("limit_on", "time"),
    ("longest_time", "20 s"),
    ("weld_length", "6 in"),
    ("travel_speed", "12 in/min"),
    ("wire_feed_speed", "250 in/min"),
    ("contact_tip_to_work", "unknown"),
    ("pass_count", "3"),
    ("operating_factor", "30 %"),
    ("metal_temperature", "-5 degC"),
    ("thickness", "1/4 in"),
    ("remark", '<b>\u00bd & "so"</b>'),
    ("extras-1-length", "2 in"),
    ("extras-2-kind", "seam"),
    ("extras-2-length", "76.2 mm"),
    ("extras-2-gap", "1 mm"),
    ("extras-2-name", "gate"),
]


def page(pairs=(), partial=False, system="us", language="en"):
    reply = walking.reply("/specimen", list(pairs), language, system, partial)
    assert reply.status == 200
    read = Page(reply.body)
    assert read.faults == []
    return read


def whole_answer() -> Any:
    return asking.ask(specimen_module.CALCULATOR, WHOLE).answer


def api(path, pairs=()):
    reply = walking.reply(path, list(pairs))
    return reply.status, json.loads(reply.body, object_pairs_hook=each_once)


def each_once(pairs):
    """Return pairs as a dict; a name that stands twice in one object is a fault."""
    names = [name for name, _ in pairs]
    assert len(set(names)) == len(names), names
    return dict(pairs)


def one(elements):
    (element,) = elements
    return element


def labelled(read, name):
    """Return the text of the label of a box."""
    return one(each for each in read.all("label") if each.attributes["for"] == name).text()


def options(read, name):
    """Return (value, text) of each option of a chooser, and the chosen value."""
    chooser = one(each for each in read.all("select") if each.attributes.get("name") == name)
    return [(each.attributes["value"], each.text()) for each in chooser.children], read.chosen(name)


def described(read, name):
    return read.box(name).attributes["aria-describedby"].split()


def presets(read, name):
    """Return (value, text) of each button that fills a box; each must be of that box's name."""
    buttons = [each for each in read.all("button") if each.attributes.get("data-fill") == name]
    assert {each.attributes["name"] for each in buttons} == {name}
    return [(each.attributes["value"], each.text()) for each in buttons]


def frame(read, name):
    """Return the element around a field, which is hidden where the field is not asked."""
    box = one(each for each in read.elements if each.attributes.get("id") == name)
    while not box.has_class("field"):
        box = box.parent
    return box


def listed(name):
    """Return what GET /api says of a field."""
    _, listing = api("/api")
    calculator = one(each for each in listing["calculators"] if each["name"] == "specimen")
    return one(each for each in calculator["fields"] if each["name"] == name)


def parameter(name):
    """Return what the OpenAPI document says of a parameter."""
    _, document = api("/api/openapi.json")
    found = one(each for each in document["paths"]["/api/specimen"]["get"]["parameters"] if each["name"] == name)
    assert (found["in"], found["required"]) == ("query", False)
    return found


# ---------------------------------------------------------------- nothing of the contract is left out


def test_the_specimen_has_every_kind_of_field():
    kinds = {each.kind for each in vars(contract).values() if inspect.isclass(each) and issubclass(each, Field)}
    fields = [field for _, field in walking.boxes(specimen_module.CALCULATOR)] + list(specimen_module.CALCULATOR.fields)
    assert {field.kind for field in fields} == kinds - {""}


def test_the_specimen_sets_every_property_of_a_field():
    usual: dict[str, object] = {
        "optional": False,
        "when": None,
        "hint": False,
        "presets": (),
        "whole": False,
        "may_be_unknown": False,
    }
    usual |= {"timer": False, "kept_with": "", "default": None, "examples": ()}
    for name, value in usual.items():
        fields = [field for _, field in walking.boxes(specimen_module.CALCULATOR) if hasattr(field, name)]
        assert {getattr(field, name) == value for field in fields} == {True, False}, name


def test_the_specimen_answers_with_every_kind_of_result_and_of_shape():
    answer = whole_answer()
    kinds = {each.kind for each in vars(contract).values() if inspect.isclass(each) and hasattr(each, "kind")}
    fields = {each.kind for each in vars(contract).values() if inspect.isclass(each) and issubclass(each, Field)}
    assert {result.kind for result in answer.results} == kinds - fields
    drawing = one(result for result in answer.results if result.kind == "drawing")
    documented = {
        word for word in str(contract.Drawing.__doc__).split("`") if word in ("line", "area", "circle", "text", "scale")
    }
    assert {shape[0] for shape in drawing.shapes} == documented == {"line", "area", "circle", "text", "scale"}


def test_the_specimen_answers_with_every_part_of_an_answer():
    answer = whole_answer()
    assert [name for name, value in vars(answer).items() if not value] == []


# ---------------------------------------------------------------- each kind of field


def test_quantity():
    read = page()
    assert labelled(read, "weld_length") == "Weld length"
    box = read.box("weld_length")
    assert (box.attributes["type"], box.attributes["inputmode"], box.attributes["value"]) == ("text", "decimal", "")
    assert described(read, "weld_length") == ["weld_length-hint", "weld_length-error"]
    offered = [("in", "in"), ("ft", "ft"), ("mm", "mm"), ("m", "m")]
    assert options(read, "weld_length_unit") == (offered, "in")
    assert options(page(system="si"), "weld_length_unit") == (offered, "mm")
    assert "inputmode" not in read.box("metal_temperature").attributes, "a keypad for decimals has no minus"
    assert presets(read, "weld_length") == [("6 in", "6\u00a0in")]
    assert presets(page(system="si"), "weld_length") == [("100 mm", "100\u00a0mm")]
    filled = page(WHOLE)
    assert (filled.chosen("weld_length"), filled.chosen("weld_length_unit")) == ("6", "in")
    assert (filled.chosen("thickness"), filled.chosen("thickness_unit")) == ("1/4", "in")
    said = listed("weld_length")
    assert said["kind"] == "quantity"
    assert (said["units"], said["default_unit"]) == (["in", "ft", "mm", "m"], "mm")
    assert (said["lowest"], said["highest"], said["optional"]) == (1, 1000000, False)
    assert "in, ft, mm, m" in parameter("weld_length")["description"]


def test_quantity_that_may_be_unknown():
    button = one(each for each in page().all("button") if each.attributes.get("value") == "unknown")
    assert (button.attributes["name"], button.text()) == ("contact_tip_to_work", "Not known")
    assert page(WHOLE).chosen("contact_tip_to_work") == "unknown"
    assert listed("contact_tip_to_work")["may_be_unknown"] is True
    assert listed("weld_length")["may_be_unknown"] is False
    assert "Tip distance not known." in api("/api/specimen", WHOLE)[1]["notes"]


def test_whole_number():
    assert "3 passes." in api("/api/specimen", WHOLE)[1]["notes"]
    status, told = api("/api/specimen", [*WHOLE, ("pass_count", "3.5")])
    assert (status, told) == (422, {"errors": {"pass_count": "Passes must be a whole number"}})


def test_choice_with_a_default():
    read = page()
    assert options(read, "position") == ([("flat", "Flat"), ("vertical", "Vertical")], "flat")
    assert page([("position", "vertical")]).chosen("position") == "vertical"
    said = listed("position")
    assert (said["kind"], said["choices"], said["default"]) == ("choice", ["flat", "vertical"], "flat")
    assert parameter("position")["schema"] == {"type": "string", "enum": ["flat", "vertical"]}


def test_compulsory_choice():
    read = page()
    buttons = [each for each in read.all("input") if each.attributes["name"] == "joint"]
    assert [each.attributes["value"] for each in buttons] == ["butt", "fillet"]
    assert {each.attributes["type"] for each in buttons} == {"radio"}
    assert [labelled(read, each.attributes["id"]) for each in buttons] == ["Butt", "Fillet"]
    assert read.box("joint") is None, "nothing is chosen for the reader"
    assert page(WHOLE).chosen("joint") == "butt"
    assert listed("joint")["default"] is None


def test_optional_choice():
    words = [("", "No limit"), ("time", "Time"), ("length", "Length")]
    assert options(page(), "limit_on") == (words, "")
    assert page(WHOLE).chosen("limit_on") == "time"
    assert (listed("limit_on")["default"], listed("limit_on")["optional"]) == (None, True)


def test_text():
    typed = '<b>\u00bd & "so"</b>'
    assert page(WHOLE).chosen("remark") == typed
    assert "remark_unit" not in [each.attributes.get("name") for each in page().all("select")]
    assert (listed("remark")["kind"], listed("remark")["longest"]) == ("text", 40)
    assert f"You wrote: {typed}" in api("/api/specimen", WHOLE)[1]["notes"]
    assert f"You wrote: {typed}" in [each.text() for each in page(WHOLE, partial=True).all("li")]


def test_optional_field():
    read = page()
    assert labelled(read, "wire_length") != "Wire length"
    assert "Wire length" in labelled(read, "wire_length")
    assert (listed("wire_length")["optional"], listed("arc_time")["optional"]) == (True, False)


def test_conditional_field():
    read = page()
    hidden = frame(read, "thickness")
    assert (hidden.attributes["data-when"], hidden.attributes["data-when-is"]) == ("joint", "butt")
    assert "hidden" in hidden.attributes
    assert "hidden" not in frame(page(WHOLE), "thickness").attributes
    assert "hidden" not in frame(page(WHOLE), "groove").attributes
    assert listed("thickness")["when"] == {"joint": ["butt"]}
    assert "when" not in listed("arc_time")


def test_rows():
    read = page(WHOLE)
    assert read.chosen("extras-2-length") == "76.2"
    assert read.chosen("extras-2-kind") == "seam"
    rows = [each for each in read.all("fieldset") if "data-row" in each.attributes]
    assert ["hidden" in row.attributes for row in rows] == [False, False, False]
    assert ["hidden" in row.attributes for row in page().all("fieldset") if row.has_class("row")] == [False, True, True]
    gap = frame(read, "extras-1-gap")
    assert (gap.attributes["data-when"], "hidden" in gap.attributes) == ("extras-1-kind", True)
    assert "hidden" not in frame(read, "extras-2-gap").attributes
    said = listed("extras")
    assert (said["kind"], said["most"]) == ("rows", 3)
    assert [each["name"] for each in said["fields"]] == ["kind", "length", "gap", "name"]
    assert said["fields"][2]["when"] == {"kind": ["seam"]}
    assert parameter("extras-1-kind")["schema"]["enum"] == ["tack", "seam"]
    assert parameter("extras-1-length")["schema"] == {"type": "string"}


def folds(pairs):
    """Return whether the fold of the form is open, and the names of the boxes in it."""
    read = page(pairs)
    (fold,) = [each for each in read.all("details") if each.has_class("more")]
    inside = [each for each in read.elements if each.name in ("input", "select") and _within(each, fold)]
    return "open" in fold.attributes, [each.attributes["name"] for each in inside]


def _within(element, ancestor):
    return element is not None and (element is ancestor or _within(element.parent, ancestor))


@pytest.mark.parametrize(
    ("pairs", "opened"),
    [
        ([], False),
        ([("weld_length", "6 in")], False),
        ([("extras-1-kind", "tack")], False),
        ([("remark", "gate")], False),  # a machine's
        ([("extras-2-length", "2 in")], True),
        ([("extras-1-length", "no number")], True),
    ],
)
def test_what_is_folded_away_shows_when_it_holds_something(pairs, opened):
    found, boxes = folds(pairs)
    assert found is opened
    assert (boxes[0], len(boxes)) == ("extras-1-kind", 3 * 6)


@pytest.mark.parametrize("name", shelf.names())
def test_nothing_that_must_be_answered_is_folded_away(name):
    asked = walking.calculator(name)
    names = [field.name for field in asked.fields]
    starts = [names.index(name) for name in (asked.fold_from, *asked.folds) if name]
    for field in asked.fields[min(starts, default=len(names)) :]:
        assert field.optional or (isinstance(field, Choice) and field.default), field.name


def test_timer():
    button = one(each for each in page().all("button") if "data-timer" in each.attributes)
    assert button.attributes["data-timer"] == "arc_time"
    assert button.attributes["data-stop"] and button.attributes["data-running"]


def test_the_enter_key_presses_no_preset():
    form = one(page().all("form"))
    submits = [each for each in page().all("button") if each.attributes.get("type", "submit") == "submit"]
    assert "name" not in submits[0].attributes
    assert form.attributes["method"] == "get"


def test_the_fields_of_a_machine_are_folded_below_a_picker_that_needs_script():
    read = page(WHOLE)
    folded = one(each for each in read.all("details") if "data-machine" in each.attributes)
    assert "open" not in folded.attributes
    assert [each.attributes["name"] for each in read.all("input") if _within(each, folded)] == ["remark"]
    picker = one(each for each in read.elements if "data-machines" in each.attributes)
    assert (picker.attributes["data-machines"], "hidden" in picker.attributes) == ("remark", True)
    assert (
        "name"
        not in one(each for each in read.all("select") if each.attributes.get("id") == "machine-picker").attributes
    )
    wrong = page([*WHOLE, ("remark", "x" * 41)])
    folded = one(each for each in wrong.all("details") if "data-machine" in each.attributes)
    assert "open" in folded.attributes, "the error would be out of sight"
    other = Page(walking.reply("/heat-input", []).body)
    assert [each for each in other.elements if "data-machines" in each.attributes] == []


def test_an_answer_offers_its_machine_to_be_kept_as_it_would_be_typed():
    offer = one(each for each in page(WHOLE).elements if "data-keeping" in each.attributes)
    assert parse_qsl(offer.attributes["data-keeping"]) == [("weld_length", "6 in"), ("remark", '<b>\u00bd & "so"</b>')]
    assert "hidden" in offer.attributes


def test_an_error_stands_beside_its_field_and_in_the_summary():
    read = page([*WHOLE, ("extras-2-length", "1,234"), ("weld_length", "far")])
    texts = {each.attributes["id"]: each.text() for each in read.all("p") if each.has_class("error") and each.text()}
    assert set(texts) == {"weld_length-error", "extras-2-length-error"}
    anchors = [(each.attributes.get("href", ""), each.text()) for each in read.all("a")]
    links = {address: text for address, text in anchors if address.startswith("#")}
    for name in ("weld_length", "extras-2-length"):
        assert read.box(name).attributes["aria-invalid"] == "true"
        assert frame(read, name).has_class("wrong")
        assert links["#" + name] == texts[name + "-error"]
    assert (read.chosen("extras-2-length"), read.chosen("weld_length")) == ("1,234", "far")
    assert read.all("title")[0].text().startswith("Error: ")


# ---------------------------------------------------------------- each kind of answer


def answered(system="us", pairs=WHOLE):
    return page(pairs, partial=True, system=system)


def result(name):
    status, said = api("/api/specimen", WHOLE)
    assert status == 200
    return said["results"][name]


def within(read, style):
    return one(each for each in read.elements if each.has_class(style))


def test_fragment_is_the_answer_on_the_page():
    read = page(WHOLE)
    section = one(each for each in read.all("section") if each.attributes.get("id") == "answer")
    assert section.text() == answered().root.text()


def test_number_with_its_band_and_words():
    read = answered()
    assert within(read, "headline-label").text() == "Arc time"
    assert within(read, "number").text() == "0.5\u00a0min"
    band = one(each for each in read.all("p") if each.has_class("band")).text().replace("\u00a0", " ")
    assert band == "Likely 0.45 min to 0.55 min A tenth either way, for tests."
    assert one(each for each in read.all("p") if each.has_class("in-words")).text() == "or 300 tenths"
    said = result("arc_time")
    assert said == {"value": 0.5, "unit": "min", "low": 0.45, "high": 0.55, "text": "or 300 tenths"}


def test_number_shows_the_typed_unit_first_and_the_other_system_beside_it():
    terms = {}
    for term, shown in zip(answered().all("dt"), answered().all("dd"), strict=True):
        terms[term.text()] = shown.text().replace("\u00a0", " ")
    assert terms["Weld length"] == "6 in or 152 mm"
    assert terms["Travel speed"] == "12 in/min or 5.08 mm/s"
    assert terms["Wire length"] == "10.4 ft or 3.18 m"
    metric = answered(system="si")
    assert "3.18\u00a0m or 10.4\u00a0ft" in [each.text() for each in metric.all("dd")]
    _, us = api("/api/specimen", [*WHOLE, ("units", "us")])
    assert us["results"]["weld_length"] == {"value": 6, "unit": "in"}
    assert result("weld_length") == {"value": 152.4, "unit": "mm"}


def test_words():
    term = one(each for each in answered().all("dt") if each.text() == "Posture")
    siblings = term.parent.children
    assert siblings[siblings.index(term) + 1].text() == "Stand <easy> & look down"
    assert result("posture") == {"text": "Stand <easy> & look down"}


def test_table():
    table = one(answered().all("table"))
    assert [each.text() for each in answered().all("caption")] == ["The welds"]
    rows = [[cell.text().replace("\u00a0", " ") for cell in row.children] for row in answered().all("tr")]
    assert table.parent.attributes["aria-label"] == "The welds"
    assert rows == [
        ["Part", "Length", "Minutes", "Name"],
        ["Main", "6 in", "0.5", "1"],
        ["Tack", "2 in", "0.167", ""],
        ["Seam", "76.2 mm", "0.25", "gate"],
    ]
    said = result("parts")
    assert said["columns"] == rows[0]
    assert said["rows"][1] == ["Tack", {"value": 2, "unit": "in"}, "0.167", ""]


def test_findings():
    found = within(answered(), "findings")
    assert found.children[0].text() == "What it could be"
    items = [each for each in answered().all("li") if each.parent.parent and each.parent.parent.has_class("findings")]
    assert [each.text() for each in items] == [
        "This How sure: likelyIt comes first.",
        "That How sure: possibleFactor 30\u00a0%.",
    ]
    assert result("suspects")["findings"][1] == {"what": "That", "sureness": "possible", "why": "Factor 30\u00a0%."}


def test_card():
    card = one(each for each in answered().all("section") if each.has_class("card"))
    assert card.attributes["data-card"] == "slip"
    assert card.children[0].text() == "On a slip & pinned"
    speed, posture = card.children[1].children
    assert [each.text() for each in speed.children] == ["So fast", "12\u00a0in/min"]
    link = speed.children[1].children[0].attributes
    assert link["href"] == "heat-input?travel_speed=12+in/min"
    assert link["data-takes"] == "travel_speed:travel_speed"
    assert posture.has_class("doubt") and posture.attributes["data-line"] == "posture"
    assert posture.children[1].children == ["Stand <easy> & look down"], "what comes from no question leads to none"
    said = result("slip")
    assert said["title"] == "On a slip & pinned"
    assert said["lines"]["posture"] == {"title": "Held", "text": "Stand <easy> & look down"}


def test_checklist():
    found = one(each for each in answered().all("fieldset") if each.has_class("checklist"))
    assert one(answered().all("legend")).text() == "Before the seam"
    boxes = [each for each in answered().all("input") if each.inside("fieldset")]
    assert [each.attributes.get("data-tick") for each in boxes] == ["clean", "measure", "bevel"]
    assert all("name" not in each.attributes for each in boxes), "ticks are no part of the address"
    assert [each.text() for each in answered().all("label")][:2] == ["Clean it <twice>.", "Measure it."]
    count = one(each for each in answered().all("p") if "data-done" in each.attributes).attributes
    assert (count["data-done"], count["data-since"]) == ("{done} of 3 done", "First tick: {when}")
    assert "Ticks do not clean it." in found.text(), "what is left to judge stands there whatever is ticked"
    said = result("chores")
    assert said["items"][0] == {"id": "clean", "text": "Clean it <twice>."}
    assert said["left"] == "Ticks do not clean it."


def test_countdown():
    found = within(answered(), "countdown")
    assert (found.attributes["data-countdown"], found.attributes["data-seconds"]) == ("wait", "30")
    assert found.children[0].text() == "Wait 0.5\u00a0min"
    assert "cannot ring a locked phone" in found.text()
    assert result("wait") == {"value": 0.5, "unit": "min", "text": "Look again."}


def test_draft():
    found = within(answered(), "draft")
    assert [each.text() for each in found.children[:2]] == ["To send", "Seam of 6\u00a0in & more."]
    assert result("letter") == {"text": "Seam of 6\u00a0in & more."}


def test_drawing():
    read = answered()
    drawing = one(read.all("svg"))
    assert (drawing.attributes["role"], drawing.attributes["viewbox"]) == ("img", "0 0 300 100")
    assert [read_text.text() for read_text in read.all("desc")] == ["A line of 6\u00a0in."]
    # Its title stands under it, once: a second one would be read out twice.
    assert one(read.all("figcaption")).text() == "The seam"
    assert not read.all("title")
    shapes = [(each.name, each.attributes) for each in read.all("polyline", "polygon", "circle", "text")]
    assert shapes[:4] == [
        ("polyline", {"points": "10 50 25 50", "class": "mark"}),
        ("polygon", {"points": "10 60 25 60 25 80 10 80", "class": "metal"}),
        ("circle", {"cx": "10", "cy": "50", "r": "4", "class": "mark"}),
        ("text", {"x": "10", "y": "40", "class": "label"}),
    ]
    # A scale becomes a line, round numbers in the reader's units and its name with the unit.
    assert shapes[4] == ("polyline", {"points": "10 50 290 50", "class": "axis"})
    assert [each.text() for each in read.all("text")] == ["6\u00a0in", "0", "50", "100", "So fast, in"]
    assert result("sketch") == {"title": "The seam", "description": "A line of 6\u00a0in."}


@pytest.mark.parametrize(
    ("change", "state", "text"),
    [
        ([], "outside", "More than 20\u00a0s."),
        ([("longest_time", "30 s")], "inside", "No more than 30\u00a0s."),
        ([("limit_on", "length")], "unclear", "No length limit was given."),
    ],
)
def test_verdict(change, state, text):
    verdict = within(answered(pairs=[*WHOLE, *change]), "verdict")
    assert verdict.has_class(state)
    assert verdict.text().startswith(state[0].upper() + state[1:]), "not by colour alone"
    assert verdict.text().endswith(" " + text)
    status, said = api("/api/specimen", [*WHOLE, *change])
    assert (status, said["verdict"]) == (200, state)
    assert said["notes"][0] == text


def test_next_questions_carry_values():
    links = {each.text(): each.attributes["href"] for each in answered().all("a") if each.inside("nav")}
    assert links == {
        "Once more": "specimen?weld_length=6+in&joint=butt",
        "How much heat?": "heat-input?travel_speed=12+in/min",
    }
    metric = [each.attributes["href"] for each in answered(system="si").all("a") if each.inside("nav")]
    assert metric[1] == "heat-input?travel_speed=12+in/min&units=si"


def test_notes_cautions_working_and_sources():
    read = answered()
    notes = [each.text() for each in within(read, "notes").children[1].children]
    assert notes[0] == "Tip distance not known."
    assert "Metal at \u22125\u00a0\u00b0C." in notes
    assert within(read, "cautions").children[1].children[0].text() == "Do not weld a specimen."
    folded = [each.text() for each in read.all("details")]
    assert "6\u00a0in \u00f7 5.08\u00a0mm/s = 30\u00a0s" in folded[0]
    cited = {each.text() for each in read.all("cite")}
    of_caution = cautions.source_of("caution.arc")
    assert of_caution is not None
    assert cited == {"Definition of speed", "Nobody's habit, for tests", of_caution.title}
    _, said = api("/api/specimen", WHOLE)
    assert set(notes) < set(said["notes"])
    assert said["cautions"][0] == "Do not weld a specimen."
    assert said["working"] == ["6\u00a0in \u00f7 5.08\u00a0mm/s = 30\u00a0s"]
    assert said["sources"][1] == {"title": "Nobody's habit, for tests", "standing": "common practice"}
    assert (said["calculator"], said["solved_for"]) == ("specimen", "arc_time")


def test_what_moves_it_and_whether_it_agrees_stand_with_the_answer():
    remarks = [
        each.text() for each in page([*WHOLE, ("arc_time", "33 s")], partial=True).all("p") if each.has_class("remark")
    ]
    assert [each.split(":")[0] for each in remarks] == ["Your numbers do not agree", "Moves the answer most"]
    assert remarks[0] in api("/api/specimen", [*WHOLE, ("arc_time", "33 s")])[1]["notes"]


def test_a_problem_of_no_one_field_stands_in_the_answer_alone():
    pairs = [("joint", "fillet"), ("contact_tip_to_work", "unknown"), ("weld_length", "1 m"), ("arc_time", "1 s")]
    read = page(pairs, partial=True)
    assert [each.attributes["data-field"] for each in read.all("li")] == [""]
    assert list(api("/api/specimen", pairs)[1]["errors"]) == [""]


def test_waiting_and_blank_are_said_in_the_answer():
    assert "Waiting for" in page([("weld_length", "6 in")], partial=True).root.text()
    assert api("/api/specimen", [("weld_length", "6 in")])[0] == 422
    assert api("/api/specimen")[0] == 422


def test_the_specimen_is_in_the_list_and_among_the_sources():
    _, listing = api("/api")
    entry = one(each for each in listing["calculators"] if each["name"] == "specimen")
    assert entry["question"] == "Does every kind of field and answer work?"
    assert entry["relations"] == [list(relation.fields) for relation in specimen_module.CALCULATOR.relations]
    assert "specimen" in {each.attributes.get("href") for each in Page(walking.reply("/", []).body).all("a")}
    assert "Nobody's habit, for tests" in Page(walking.reply("/about", []).body).root.text()


# ---------------------------------------------------------------- every calculator on the shelf


def everyone() -> list[Calculator]:
    return [walking.calculator(name) for name in shelf.names()]


def answers(asked: Calculator) -> list[Any]:
    """Return questions that get an answer, as (pairs, answer)."""
    return [(pairs, came.answer) for pairs, came in walking.answered(asked.name)]


def test_names_within_a_declaration_fit_together():
    for asked in everyone():
        fields = {field.name: field for field in asked.fields}
        assert len(fields) == len(asked.fields), f"{asked.name} has a name twice"
        for relation in asked.relations:
            named = {*relation.fields, *relation.its_own, *relation.also, *filter(None, [relation.check])}
            assert named <= set(fields), f"{asked.name}: {named - set(fields)}"
            assert {relation.check, *relation.its_own} - {""} <= set(relation.fields), asked.name
            assert bool(relation.its_own) != relation.required, f"{asked.name}: its_own is for what is not required"
            for name in relation.fields:
                assert isinstance(fields[name], Quantity), f"{asked.name}: {name} is no number to solve for"


def check_fields(asked, fields):
    for field in fields:
        if isinstance(field, Rows):
            check_fields(asked, field.fields)
        if field.when is not None:
            chooser = one(each for each in fields if each.name == field.when[0])
            assert isinstance(chooser, Choice), f"{asked.name}: {field.name} hangs on {chooser.name}"
            assert set(field.when[1]) <= set(chooser.options), f"{asked.name}: {field.name} {field.when[1]}"
        if isinstance(field, Choice):
            assert len(set(field.options)) == len(field.options), f"{asked.name}: {field.name}"
            assert field.default is None or field.default in field.options, f"{asked.name}: {field.name}"
            for option in field.options:
                assert option == option.lower() and " " not in option and "_" not in option, option
        if isinstance(field, Quantity):
            assert field.low < field.high, f"{asked.name}: {field.name}"
            assert "-" not in field.name, "a hyphen parts the number of a row from its field"


def test_choices_conditions_and_limits_are_sound():
    for asked in everyone():
        check_fields(asked, asked.fields)


def test_every_preset_is_taken_as_typed():
    for asked in everyone():
        for name, field in walking.boxes(asked):
            if not isinstance(field, Quantity):
                continue
            for preset in field.presets:
                pairs = [(name, preset), *walking.choices_for(asked, name)]
                errors = dict(asking.ask(asked, pairs).errors)
                assert name not in errors, f"{asked.name}: {name}={preset}"
                number, unit = numerals.split_unit(preset)
                assert number and (units.named(unit) if unit else "") in field.quantity.units, f"{asked.name}: {preset}"


def test_every_hint_and_every_range_reason_belongs_to_a_field():
    for asked in everyone():
        names = {field.name for _, field in walking.boxes(asked)} | {field.name for field in asked.fields}
        for id in asked.english:
            group, _, rest = id.partition(".")
            if group in ("field", "hint", "range"):
                if group == "range":
                    rest = rest.removesuffix(".low").removesuffix(".high")  # a reason of one side alone
                assert rest in names, f"{asked.name}: {id}"


def test_every_source_has_a_standing_and_every_answer_names_only_declared_ones():
    for asked in everyone():
        assert asked.sources, asked.name
        assert {source.standing for source in asked.sources} <= set(contract.STANDINGS)
        for _, answer in answers(asked):
            assert answer.sources, f"{asked.name} answers without a source"
            assert set(answer.sources) <= set(asked.sources), asked.name


def test_every_answer_has_a_headline_working_and_cautions():
    for asked in everyone():
        for pairs, answer in answers(asked):
            assert answer.results, pairs
            assert answer.working, pairs
            assert answer.cautions, pairs
            assert answer.results[0].kind in ("number", "words", "findings"), "what stands biggest on the screen"


def test_results_and_json_have_each_name_once():
    for asked in everyone():
        for pairs, _ in walking.answered(asked.name):
            status, said = api("/api/" + asked.name, pairs)
            assert status == 200
            for name, value in said["results"].items():
                assert name and value


def test_bands_enclose_their_number():
    for asked in everyone():
        for pairs, answer in answers(asked):
            for found in answer.results:
                if found.kind == "number" and found.low is not None:
                    assert found.low <= found.value <= found.high, (asked.name, pairs, found.name)
                    assert found.band is not None, f"{asked.name}: where does the band of {found.name} come from?"


def test_drawings_have_whole_coordinates_and_known_shapes():
    lengths = {"line": lambda count: count >= 4 and count % 2 == 0, "area": lambda count: count >= 6 and count % 2 == 0}
    lengths |= {"circle": lambda count: count == 3, "text": lambda count: count == 2}
    lengths["scale"] = lambda count: count == 4
    for asked in everyone():
        for pairs, answer in answers(asked):
            for drawing in (found for found in answer.results if found.kind == "drawing"):
                for form, numbers, _, label in drawing.shapes:
                    assert lengths[form](len(numbers)), (asked.name, form, numbers)
                    assert {type(number) for number in numbers} == {int}, (asked.name, pairs, form, numbers)
                    assert (label is not None) == (form in ("text", "scale")), (asked.name, form)


def test_the_link_to_an_answer_gives_the_same_answer():
    for asked in everyone():
        for pairs, _ in walking.answered(asked.name):
            for system in ("us", "si"):
                first = walking.reply("/" + asked.name, pairs, system=system, partial=True).body
                link = one(each for each in Page(first).all("a") if each.has_class("share")).attributes["href"]
                again = parse_qsl(urlsplit(link).query, keep_blank_values=True)
                assert urlsplit(link).path == asked.name
                assert walking.reply("/" + asked.name, again, partial=True).body == first, (pairs, link)


def test_a_next_question_is_on_the_shelf_and_reads_what_it_is_given():
    for asked in everyone():
        for pairs, answer in answers(asked):
            for each in answer.next_questions:
                following = shelf.calculator(each.calculator)
                assert following is not None, f"{asked.name} leads to {each.calculator}"
                names = {name for name, _ in walking.boxes(following)}
                assert {name for name, _ in each.carried} <= names, f"{asked.name} -> {each.calculator}"
            read = Page(walking.reply("/" + asked.name, pairs, partial=True).body)
            for link in (link for link in read.all("a") if link.inside("nav")):
                address = urlsplit(link.attributes["href"])
                carried = [pair for pair in parse_qsl(address.query) if pair[0] != "units"]
                told = asking.ask(walking.calculator(address.path), carried).errors
                unread = [(name, message.id) for name, message in told if name and message.id.startswith("number.")]
                unread = [told for told in unread if not told[1].startswith("number.between")]
                assert unread == [], f"{asked.name}: {link.attributes['href']}"


def test_carried_measured_values_keep_their_size():
    carried = dict(whole_answer().next_questions[0].carried)["weld_length"]
    assert isinstance(carried, Measured)
    link = next(each for each in answered().all("a") if each.text() == "Once more").attributes["href"]
    again = asking.ask(specimen_module.CALCULATOR, parse_qsl(urlsplit(link).query))
    assert again.given.number("weld_length") == pytest.approx(carried.value, rel=1e-5)


def test_every_word_of_a_declaration_is_in_the_catalogue():
    for asked in everyone():
        assert has(asked.name + ".title") and has(asked.name + ".question")
        for field in [*asked.fields, *(field for _, field in walking.boxes(asked))]:
            needed = [f"field.{field.name}"] + ([f"hint.{field.name}"] if field.hint else [])
            if isinstance(field, Choice):
                needed += [f"option.{field.name}.{option}" for option in field.options]
            assert [id for id in needed if not has(f"{asked.name}.{id}")] == [], asked.name


def test_answers_read_the_same_whatever_the_order_of_the_address():
    for asked in everyone():
        for pairs, _ in walking.answered(asked.name)[:4]:
            forward = walking.reply("/" + asked.name, pairs, partial=True).body
            assert walking.reply("/" + asked.name, pairs[::-1], partial=True).body == forward


def test_the_context_decides_units_and_language_and_nothing_else_does():
    first = walking.reply("/specimen", WHOLE, system="si").body
    assert walking.reply("/specimen", WHOLE, system="si").body == first
    assert walking.reply("/specimen", WHOLE, "zz", "si").body != first
    assert walking.reply("/specimen", WHOLE, system="us").body != first
