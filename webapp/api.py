"""The JSON API: answers, the list of calculators and the OpenAPI document, all from the declarations."""

from calculators import asking, reading, units
from calculators.contract import (
    Answer,
    Calculator,
    Card,
    Checklist,
    Choice,
    Countdown,
    Draft,
    Drawing,
    Field,
    Findings,
    Measured,
    Number,
    Quantity,
    Rows,
    Source,
    Table,
    Text,
    Words,
    say,
)
from webapp import cautions, shelf
from webapp.catalogue import Context, piece, sentence
from webapp.json_text import Pairs


def reply(path: str, pairs: list[tuple[str, str]], context: Context) -> tuple[int, Pairs]:
    """Return (status, JSON value) for an address under /api."""
    if path in ("/api", "/api/"):
        return 200, listing(context)
    name = path[len("/api/") :] if path.startswith("/api/") else ""
    if name == "openapi.json":
        return 200, openapi(context)
    calculator = shelf.calculator(name)
    if calculator is None:
        return 404, Pairs(("errors", Pairs(("", sentence(say("not-found.calculator"), context)))))
    return _ask(calculator, pairs, context)


def _ask(calculator: Calculator, pairs: list[tuple[str, str]], context: Context) -> tuple[int, Pairs]:
    asked = asking.ask(calculator, pairs)
    if asked.state == "answer":
        assert asked.answer is not None
        return 200, _answer(calculator, asked, asked.answer, context)
    errors = Pairs()
    if asked.state == "problem":
        seen = []
        for name, message in asked.errors:
            if name not in seen:
                seen.append(name)
                errors.add(name, sentence(message, context))
    elif asked.waiting is not None:
        errors.add("", sentence(asked.waiting, context))
    else:
        errors.add("", sentence(say("answer.blank"), context))
    return 422, Pairs(("errors", errors))


def _answer(calculator: Calculator, asked: asking.Reply, answer: Answer, context: Context) -> Pairs:
    results = Pairs()
    for result in answer.results:
        results.add(result.name, _result(result, context))  # type: ignore[attr-defined]
    notes = [asked.agreement, asked.sensitivity] + list(answer.notes)
    if answer.verdict is not None:
        notes = [answer.verdict.message, answer.verdict.remedy] + notes
    value = Pairs(
        ("calculator", calculator.name),
        ("solved_for", asked.given.solved_for),
        ("results", results),
        ("notes", [sentence(note, context) for note in notes if note is not None]),
        ("cautions", [sentence(caution, context) for caution in answer.cautions]),
        ("sources", [_source(source) for source in answer.sources]),
        ("caution_sources", [_source(source) for source in cautions.sources_of((), answer.cautions)]),
        ("working", [sentence(line, context) for line in answer.working]),
    )
    if answer.verdict is not None:
        value.add("verdict", answer.verdict.state)
    return value


def _source(source: Source) -> Pairs:
    return Pairs(("title", source.title), ("standing", source.standing))


def _result(result: object, context: Context) -> Pairs:
    if isinstance(result, Number):
        unit = result.quantity.unit(context.system)
        value = Pairs(("value", units.from_coherent(result.value, unit)), ("unit", unit))
        if result.low is not None and result.high is not None:
            value.add("low", units.from_coherent(result.low, unit))
            value.add("high", units.from_coherent(result.high, unit))
        if result.in_words is not None:
            value.add("text", sentence(result.in_words, context))
        return value
    if isinstance(result, (Words, Draft)):
        return Pairs(("text", sentence(result.message, context)))
    if isinstance(result, Table):
        columns = [sentence(column, context) for column in result.columns]
        return Pairs(("columns", columns), ("rows", [[_cell(cell, context) for cell in row] for row in result.rows]))
    if isinstance(result, Findings):
        return Pairs(
            (
                "findings",
                [
                    Pairs(
                        ("what", sentence(item.what, context)),
                        ("sureness", "" if item.sureness is None else sentence(item.sureness, context)),
                        ("why", sentence(item.why, context)),
                    )
                    for item in result.items
                ],
            )
        )
    if isinstance(result, Checklist):
        items = [Pairs(("id", id), ("text", sentence(what, context))) for id, what in result.items]
        return Pairs(("items", items), ("left", sentence(result.left, context)))
    if isinstance(result, Countdown):
        minutes = units.from_coherent(result.length, "min")
        return Pairs(("value", minutes), ("unit", "min"), ("text", sentence(result.after, context)))
    if isinstance(result, Card):
        lines = Pairs()
        for line in result.lines:
            lines.add(line.key, Pairs(("title", sentence(line.label, context)), ("text", piece(line.value, context))))
        return Pairs(("title", sentence(result.heading, context)), ("lines", lines))
    assert isinstance(result, Drawing)
    return Pairs(("title", sentence(result.title, context)), ("description", sentence(result.description, context)))


def _cell(cell: object, context: Context) -> object:
    if isinstance(cell, Measured):
        unit = cell.unit if cell.unit is not None else cell.quantity.unit(context.system)
        return Pairs(("value", units.from_coherent(cell.value, unit)), ("unit", unit))
    return piece(cell, context)


# ---------------------------------------------------------------- what there is to ask


def listing(context: Context) -> Pairs:
    """Return the calculators with their fields, kinds, units and choices."""
    found = []
    for name in shelf.names():
        calculator = shelf.calculator(name)
        assert calculator is not None
        found.append(
            Pairs(
                ("name", name),
                ("title", sentence(say(name + ".title"), context)),
                ("question", sentence(say(name + ".question"), context)),
                ("fields", [_field(calculator, field, context) for field in calculator.fields]),
                ("relations", [list(relation.fields) for relation in calculator.relations]),
            )
        )
    return Pairs(("calculators", found), ("build", context.build))


def _field(calculator: Calculator, field: Field, context: Context) -> Pairs:
    value = Pairs(
        ("name", field.name),
        ("kind", field.kind),
        ("label", sentence(reading.label(calculator, field), context)),
        ("optional", field.optional),
    )
    if field.when is not None:
        value.add("when", Pairs((field.when[0], list(field.when[1]))))
    if isinstance(field, Quantity):
        value.add("units", list(field.quantity.units))
        value.add("default_unit", field.quantity.si)
        value.add("lowest", field.low)
        value.add("highest", field.high)
        value.add("may_be_unknown", field.may_be_unknown)
    elif isinstance(field, Choice):
        value.add("choices", list(field.options))
        value.add("default", field.default)
    elif isinstance(field, Text):
        value.add("longest", field.longest)
    elif isinstance(field, Rows):
        value.add("most", field.most)
        value.add("fields", [_field(calculator, each, context) for each in field.fields])
    return value


def openapi(context: Context) -> Pairs:
    """Return the OpenAPI 3.1 document of the whole API."""
    paths = Pairs(("/api", Pairs(("get", _operation("list", "List of calculators", [], "Listing")))))
    for name in shelf.names():
        calculator = shelf.calculator(name)
        assert calculator is not None
        summary = sentence(say(name + ".question"), context)
        parameters = [_parameter(calculator, field, "", context) for field in _flat(calculator)]
        parameters.append(_enumerated("units", ("us", "si"), "Unit system of the results"))
        paths.add("/api/" + name, Pairs(("get", _operation(name, summary, parameters, "Answer"))))
    return Pairs(
        ("openapi", "3.1.0"),
        (
            "info",
            Pairs(
                ("title", sentence(say("app.name"), context)),
                ("version", context.build),
                ("license", Pairs(("name", "MIT"))),
            ),
        ),
        ("paths", paths),
        ("components", Pairs(("schemas", _schemas()))),
    )


def _flat(calculator: Calculator) -> list[tuple[str, Field]]:
    fields: list[tuple[str, Field]] = []
    for field in calculator.fields:
        if isinstance(field, Rows):
            fields += [(field.name + "-1-" + each.name, each) for each in field.fields]
        else:
            fields.append((field.name, field))
    return fields


def _parameter(calculator: Calculator, named: tuple[str, Field], prefix: str, context: Context) -> Pairs:
    name, field = named
    text = sentence(reading.label(calculator, field), context)
    if isinstance(field, Choice):
        return _enumerated(name, field.options, text)
    if isinstance(field, Quantity):
        text += ". Number with one of the units: " + ", ".join(
            unit if unit else "none" for unit in field.quantity.units
        )
    return Pairs(
        ("name", name),
        ("in", "query"),
        ("required", False),
        ("description", text),
        ("schema", Pairs(("type", "string"))),
    )


def _enumerated(name: str, options: tuple[str, ...], text: str) -> Pairs:
    schema = Pairs(("type", "string"), ("enum", list(options)))
    return Pairs(("name", name), ("in", "query"), ("required", False), ("description", text), ("schema", schema))


def _operation(name: str, summary: str, parameters: list[Pairs], schema: str) -> Pairs:
    def content(of: str) -> Pairs:
        reference = Pairs(("$ref", "#/components/schemas/" + of))
        return Pairs(("application/json", Pairs(("schema", reference))))

    responses = Pairs(("200", Pairs(("description", "The answer"), ("content", content(schema)))))
    if schema == "Answer":
        problem = Pairs(("description", "Bad input, or outside the method's range"), ("content", content("Errors")))
        responses.add("422", problem)
    return Pairs(("operationId", name), ("summary", summary), ("parameters", parameters), ("responses", responses))


def _result_schema(text: Pairs) -> Pairs:
    """Return the schema of one result, whichever kind it is of: what is in it says which."""
    number = Pairs(("type", "number"))
    cell = Pairs(("type", ["string", "object"]), ("properties", Pairs(("value", number), ("unit", text))))
    row = Pairs(("type", "array"), ("items", cell))
    finding = Pairs(("type", "object"), ("properties", Pairs(("what", text), ("sureness", text), ("why", text))))
    item = Pairs(("type", "object"), ("properties", Pairs(("id", text), ("text", text))))
    line = Pairs(("type", "object"), ("properties", Pairs(("title", text), ("text", text))))
    members = Pairs(
        ("value", number),
        ("unit", text),
        ("low", number),
        ("high", number),
        ("text", text),
        ("columns", Pairs(("type", "array"), ("items", text))),
        ("rows", Pairs(("type", "array"), ("items", row))),
        ("findings", Pairs(("type", "array"), ("items", finding))),
        ("items", Pairs(("type", "array"), ("items", item))),
        ("left", text),
        ("lines", Pairs(("type", "object"), ("additionalProperties", line))),
        ("title", text),
        ("description", text),
    )
    return Pairs(("type", "object"), ("properties", members))


def _schemas() -> Pairs:
    text = Pairs(("type", "string"))
    texts = Pairs(("type", "array"), ("items", text))
    source = Pairs(("type", "object"), ("properties", Pairs(("title", text), ("standing", text))))
    answer = Pairs(
        ("type", "object"),
        ("required", ["calculator", "solved_for", "results", "notes", "cautions", "sources"]),
        (
            "properties",
            Pairs(
                ("calculator", text),
                ("solved_for", Pairs(("type", ["string", "null"]))),
                ("results", Pairs(("type", "object"), ("additionalProperties", _result_schema(text)))),
                ("notes", texts),
                ("cautions", texts),
                ("sources", Pairs(("type", "array"), ("items", source))),
                ("caution_sources", Pairs(("type", "array"), ("items", source))),
                ("working", texts),
                ("verdict", text),
            ),
        ),
    )
    errors = Pairs(("type", "object"), ("additionalProperties", text))
    return Pairs(
        ("Answer", answer),
        ("Errors", Pairs(("type", "object"), ("properties", Pairs(("errors", errors))))),
        (
            "Listing",
            Pairs(
                ("type", "object"), ("properties", Pairs(("calculators", Pairs(("type", "array"))), ("build", text)))
            ),
        ),
    )
