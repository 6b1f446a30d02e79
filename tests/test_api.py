"""The JSON API: the listing and the OpenAPI document are the declarations, and answers have their promised shape."""

import json
import re
from typing import Any

import pytest

from calculators import units
from calculators.contract import STANDINGS, Choice, Field, Number, Quantity, Rows, Text
from calculators.facts.units import UNITS
from tests import walking
from webapp import pocket, shelf

pytestmark = [pytest.mark.quick, pytest.mark.usefixtures("specimen")]

NAMES = (*shelf.names(), "specimen")


def get(path: str, *pairs: tuple[str, str]) -> tuple[int, Any]:
    """Return status and value of a reply of the API."""
    reply = walking.reply(path, list(pairs))
    assert reply.content_type == pocket.JSON
    assert reply.body.endswith("\n") and reply.body.isascii()
    return reply.status, json.loads(reply.body)


# ---------------------------------------------------------------- the promised example

# 24 V x 200 A / 6 mm/s = 800 J/mm by hand, and 0.8 of it (EN 1011-1, gas metal arc) is 640 J/mm; in kJ/in
# 0.640 x 25.4 = 16.256. Standing: standard.
EXAMPLE = (("voltage", "24 V"), ("current", "200 A"), ("travel_speed", "6 mm/s"))


def test_heat_input_answers_as_documented():
    status, value = get("/api/heat-input", *EXAMPLE)
    assert status == 200
    assert value["calculator"] == "heat-input"
    assert value["solved_for"] == "heat_input"
    assert value["results"]["heat_input"] == {"value": pytest.approx(640.0, rel=1e-9), "unit": "J/mm"}
    assert value["results"]["arc_energy"] == {"value": pytest.approx(800.0, rel=1e-9), "unit": "J/mm"}
    for name in ("notes", "cautions", "sources"):
        assert value[name]


@pytest.mark.parametrize(
    ("system", "unit", "heat"),
    (("us", "kJ/in", 16.256), ("si", "J/mm", 640.0), ("", "J/mm", 640.0), ("metric", "J/mm", 640.0)),
)
def test_unit_system_decides_the_unit_of_results(system, unit, heat):
    _, value = get("/api/heat-input", *EXAMPLE, ("units", system))
    assert value["results"]["heat_input"] == {"value": pytest.approx(heat, rel=1e-9), "unit": unit}


def test_number_without_a_unit_takes_the_default_one_whatever_the_system():
    with_unit = get("/api/heat-input", *EXAMPLE, ("units", "us"))
    without = get("/api/heat-input", ("voltage", "24"), ("current", "200"), ("travel_speed", "6"), ("units", "us"))
    assert without[1]["results"] == with_unit[1]["results"]


def test_unit_box_beside_a_number_counts_and_a_typed_unit_wins():
    six = get("/api/heat-input", *EXAMPLE)[1]["results"]
    boxed = (("travel_speed", "0.36"), ("travel_speed_unit", "m/min"))
    typed = (("travel_speed", "6 mm/s"), ("travel_speed_unit", "in/min"))
    for pairs in (boxed, typed):
        assert get("/api/heat-input", *EXAMPLE[:2], *pairs)[1]["results"] == six


# ---------------------------------------------------------------- answers


@pytest.mark.parametrize("name", NAMES)
@pytest.mark.parametrize("system", ("us", "si"))
def test_answer_has_its_shape(name, system):
    for pairs, came in walking.answered(name):
        status, value = get("/api/" + name, *pairs, ("units", system))
        assert status == 200, value
        assert value["calculator"] == name
        assert value["solved_for"] == came.given.solved_for
        assert came.answer is not None
        assert list(value["results"]) == [vars(each)["name"] for each in came.answer.results]
        for each in came.answer.results:
            if isinstance(each, Number):
                _check_number(value["results"][each.name], each, system)
        for part in ("notes", "cautions", "working"):
            assert all(isinstance(sentence, str) and sentence for sentence in value[part])
        assert value["sources"]
        for source in value["sources"]:
            assert set(source) == {"title", "standing"} and source["standing"] in STANDINGS
        if "verdict" in value:
            assert value["verdict"] in ("inside", "outside", "unclear", "warning")


def _check_number(shown: dict[str, Any], result: Number, system: str) -> None:
    """The number in JSON reads back as the one worked out, at the ten figures that are shown."""
    unit = result.quantity.us if system == "us" else result.quantity.si
    assert shown["unit"] == unit
    assert units.to_coherent(shown["value"], unit) == pytest.approx(result.value, rel=1e-9, abs=1e-12)
    assert ("low" in shown) == ("high" in shown) == (result.low is not None and result.high is not None)
    if "low" in shown:
        assert shown["low"] <= shown["value"] <= shown["high"]
        assert units.to_coherent(shown["low"], unit) == pytest.approx(result.low, rel=1e-9, abs=1e-12)
        assert units.to_coherent(shown["high"], unit) == pytest.approx(result.high, rel=1e-9, abs=1e-12)


@pytest.mark.parametrize("name", NAMES)
def test_sources_of_an_answer_are_among_the_declared_ones(name):
    declared = [(source.title, source.standing) for source in walking.calculator(name).sources]
    assert len(set(declared)) == len(declared)
    for pairs, _ in walking.answered(name):
        for source in get("/api/" + name, *pairs)[1]["sources"]:
            assert (source["title"], source["standing"]) in declared


@pytest.mark.parametrize("name", NAMES)
def test_next_questions_lead_to_a_calculator_that_takes_them(name):
    for _, came in walking.answered(name):
        assert came.answer is not None
        for following in came.answer.next_questions:
            assert following.calculator in NAMES, following.calculator
            boxes = [box for box, _ in walking.boxes(walking.calculator(following.calculator))]
            assert {box for box, _ in following.carried} <= set(boxes)


# ---------------------------------------------------------------- refusals


def test_unknown_calculator_is_not_found():
    for path in (
        "/api/no-such",
        "/api/heat_input",
        "/api/heat-input/",
        "/api/../heat-input",
        "/api/__init__",
        "/apiary",
    ):
        status, value = get(path)
        assert status == 404, path
        assert list(value) == ["errors"] and list(value["errors"]) == [""]


@pytest.mark.parametrize("name", NAMES)
def test_nothing_asked_is_refused_with_no_field_at_fault(name):
    status, value = get("/api/" + name)
    assert status == 422
    assert list(value) == ["errors"] and list(value["errors"]) == [""]


@pytest.mark.parametrize("name", NAMES)
def test_problem_names_its_field(name):
    seen = 0
    for state, pairs in walking.states(name):
        status, value = get("/api/" + name, *pairs)
        if state.startswith("problem "):
            seen += 1
            assert status == 422, state
            assert pairs[0][0] in value["errors"], (state, value)
            assert len(value["errors"][pairs[0][0]]) > 10
        elif state == "waiting":
            assert (status, list(value["errors"])) == (422, [""])
        elif state.startswith(("answer", "solved")):
            assert status == 200
    assert seen


def test_both_wrong_fields_are_named():
    status, value = get("/api/heat-input", ("voltage", "lots"), ("current", "1,234"), ("travel_speed", "6 mm/s"))
    assert status == 422
    assert set(value["errors"]) == {"voltage", "current"}


# ---------------------------------------------------------------- the listing


def _listed() -> dict[str, Any]:
    return {each["name"]: each for each in get("/api")[1]["calculators"]}


def test_listing_has_every_calculator_in_order_with_the_build():
    status, value = get("/api")
    assert status == 200
    assert [each["name"] for each in value["calculators"]] == list(shelf.names())
    assert value["build"] == walking.BUILD
    assert get("/api/") == (status, value)


@pytest.mark.parametrize("name", NAMES)
def test_listing_is_the_declaration(name):
    asked = walking.calculator(name)
    listed = _listed()[name]
    assert listed["title"] == asked.english["title"]
    assert listed["question"] == asked.english["question"]
    assert listed["relations"] == [list(relation.fields) for relation in asked.relations]
    assert [each["name"] for each in listed["fields"]] == [field.name for field in asked.fields]
    for field, shown in zip(asked.fields, listed["fields"], strict=True):
        _check_field(field, shown, asked.english)


def _check_field(field: Field, shown: dict[str, Any], english: dict[str, str]) -> None:
    assert shown["kind"] == field.kind
    assert shown["label"] == english["field." + field.name]
    assert shown["optional"] == field.optional
    assert shown.get("when") == ({field.when[0]: list(field.when[1])} if field.when else None)
    if isinstance(field, Quantity):
        assert shown["units"] == list(field.quantity.units)
        assert shown["default_unit"] == field.quantity.si
        assert (shown["lowest"], shown["highest"]) == pytest.approx((field.low, field.high), rel=1e-9)
        assert shown["may_be_unknown"] == field.may_be_unknown
    elif isinstance(field, Choice):
        assert shown["choices"] == list(field.options)
        assert shown["default"] == field.default
        assert all(re.fullmatch("[a-z0-9]+(-[a-z0-9]+)*", option) for option in field.options)
    elif isinstance(field, Text):
        assert shown["longest"] == field.longest
    else:
        assert isinstance(field, Rows)
        assert shown["most"] == field.most
        for inner, each in zip(field.fields, shown["fields"], strict=True):
            _check_field(inner, each, english)


# ---------------------------------------------------------------- OpenAPI


def _openapi() -> dict[str, Any]:
    status, value = get("/api/openapi.json")
    assert status == 200
    assert isinstance(value, dict)
    return value


def _references(value: object) -> list[str]:
    if isinstance(value, dict):
        own = [value["$ref"]] if "$ref" in value else []
        return own + [each for member in value.values() for each in _references(member)]
    if isinstance(value, list):
        return [each for member in value for each in _references(member)]
    return []


def test_openapi_document_is_well_formed():
    """The parts of the OpenAPI 3.1 schema that this document uses: required members, and every reference leads on."""
    document = _openapi()
    assert document["openapi"] == "3.1.0"
    assert set(document) <= {"openapi", "info", "paths", "components", "servers"}
    assert {"title", "version"} <= set(document["info"])
    assert document["info"]["license"] == {"name": "MIT"}
    assert _references(document)
    for reference in _references(document):
        assert reference.startswith("#/components/schemas/")
        assert reference.rpartition("/")[2] in document["components"]["schemas"]
    operations = [(path, document["paths"][path]["get"]) for path in document["paths"]]
    assert len({operation["operationId"] for _, operation in operations}) == len(operations)
    for path, operation in operations:
        assert path.startswith("/api")
        assert operation["responses"]["200"]["description"]
        for response in operation["responses"].values():
            assert set(response) == {"description", "content"}
        names = [parameter["name"] for parameter in operation["parameters"]]
        assert len(set(names)) == len(names)
        for parameter in operation["parameters"]:
            assert set(parameter) == {"name", "in", "required", "description", "schema"}
            assert parameter["in"] == "query" and parameter["required"] is False
            assert parameter["schema"]["type"] == "string"


def test_openapi_has_every_calculator():
    assert set(_openapi()["paths"]) == {"/api"} | {"/api/" + name for name in shelf.names()}


@pytest.mark.parametrize("name", NAMES)
def test_openapi_parameters_are_the_boxes(name):
    parameters = {each["name"]: each for each in _openapi()["paths"]["/api/" + name]["get"]["parameters"]}
    boxes = dict(walking.boxes(walking.calculator(name)))
    assert set(parameters) - {"units"} <= set(boxes)
    missing = set(boxes) - set(parameters)
    assert all(re.fullmatch(r"\w+-([2-9]|\d\d)-\w+", box) for box in missing), "only later rows may be left out"
    assert parameters["units"]["schema"]["enum"] == ["us", "si"]
    for box in parameters:
        field = boxes.get(box)
        if isinstance(field, Choice):
            assert parameters[box]["schema"]["enum"] == list(field.options)
        elif isinstance(field, Quantity):
            told = parameters[box]["description"].rpartition(": ")[2].split(", ")
            assert told == [unit or "none" for unit in field.quantity.units]


@pytest.mark.parametrize("name", NAMES)
def test_answers_fit_the_documented_schema(name):
    schemas = _openapi()["components"]["schemas"]
    for _, pairs in walking.states(name):
        status, value = get("/api/" + name, *pairs)
        schema = schemas["Answer" if status == 200 else "Errors"]
        assert _misfits(value, schema, schemas, "") == []


KINDS: dict[str, tuple[type, ...]] = {
    "object": (dict,),
    "array": (list,),
    "string": (str,),
    "number": (int, float),
    "null": (type(None),),
    "boolean": (bool,),
}


def _misfits(value: Any, schema: dict[str, Any], schemas: dict[str, Any], where: str) -> list[str]:
    """Return where a value does not fit a schema (the few keywords this document uses)."""
    if "$ref" in schema:
        schema = schemas[schema["$ref"].rpartition("/")[2]]
    known = {"type", "properties", "required", "additionalProperties", "items", "enum", "oneOf", "anyOf", "description"}
    assert set(schema) <= known, set(schema) - known
    kinds = schema.get("type", list(KINDS))
    kinds = [kinds] if isinstance(kinds, str) else kinds
    if not any(isinstance(value, KINDS[kind]) for kind in kinds):
        return [f"{where}: {value!r} is no {kinds}"]
    found = []
    if isinstance(value, dict):
        properties = schema.get("properties", {})
        found += [f"{where}: {name} is missing" for name in schema.get("required", []) if name not in value]
        for name in value:
            if name in properties:
                found += _misfits(value[name], properties[name], schemas, f"{where}/{name}")
            elif isinstance(schema.get("additionalProperties"), dict):
                found += _misfits(value[name], schema["additionalProperties"], schemas, f"{where}/{name}")
            else:
                found.append(f"{where}: {name} is not documented")
    if isinstance(value, list) and "items" in schema:
        for each in value:
            found += _misfits(each, schema["items"], schemas, where + "/-")
    return found


def test_misfit_is_found():
    schema = {"type": "object", "required": ["a"], "properties": {"a": {"type": "number"}}}
    assert _misfits({"a": 1.5}, schema, {}, "") == []
    assert _misfits({"a": "1.5"}, schema, {}, "")
    assert _misfits({}, schema, {}, "")
    assert _misfits({"a": 1, "b": 2}, schema, {}, "")


def test_units_named_anywhere_in_the_api_are_the_documented_ones():
    names = {name for name, _ in UNITS}
    for each in _listed().values():
        for field in each["fields"]:
            assert set(field.get("units", [])) <= names
