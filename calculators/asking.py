"""Putting a question to a calculator: read what was typed, fill the one blank, check, answer or say what is wrong."""

import math

from calculators import numerals, units
from calculators.contract import (
    UNKNOWN,
    Answer,
    Calculator,
    Choice,
    Field,
    Given,
    Measured,
    Message,
    Number,
    Plain,
    Quantity,
    Refusal,
    Relation,
    Rows,
    Text,
    say,
)
from calculators.ranges import OutOfRange

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

LONGEST_TYPED = 200  # characters of one value; a phone's keyboard sends less, a fuzzer sends more


class Reply:
    """What came of a question. `state` is blank, waiting, problem or answer."""

    def __init__(self, state: str, given: Given) -> None:
        self.state = state
        self.given = given
        self.errors: list[tuple[str, Message]] = []
        self.waiting: Message | None = None
        self.answer: Answer | None = None
        self.agreement: Message | None = None
        self.sensitivity: Message | None = None


def ask(calculator: Calculator, pairs: list[tuple[str, str]]) -> Reply:
    """Return the Reply of `calculator` to (field, typed text) pairs; never raises for anything typed."""
    given = Given()
    errors: list[tuple[str, Message]] = []
    typed = last_typed(pairs)
    touched = _read_fields(calculator, calculator.fields, typed, "", given, errors)
    reply = Reply("blank", given)
    if errors:
        reply.state = "problem"
        reply.errors = errors
        return reply
    if not touched:
        return reply
    try:
        return _work_out(calculator, given, reply)
    except Refusal as refusal:
        reply.errors = [(refusal.field, refusal.message)]
    except OutOfRange as error:
        reply.errors = [(_field_at_fault(calculator, error.name), _range_message(calculator, error, given))]
    reply.state = "problem"
    return reply


def last_typed(pairs: list[tuple[str, str]]) -> dict[str, str]:
    """Return name -> text as typed; a later non-empty pair wins, so that a preset button can follow its own box."""
    typed: dict[str, str] = {}
    for name, text in pairs:
        blank = numerals.tidy(text) == ""
        if not blank or name not in typed:
            typed[name] = "" if blank else text
    return typed


def _work_out(calculator: Calculator, given: Given, reply: Reply) -> Reply:
    if calculator.prepare:
        calculator.prepare(given)
    waiting = _missing_fields(calculator, calculator.fields, given, "") or _close_relations(calculator, given, reply)
    if waiting:
        reply.state = "waiting"
        reply.waiting = waiting
        return reply
    reply.answer = calculator.answer(given)
    reply.state = "answer"
    reply.sensitivity = _what_moves_it(calculator, given, reply.answer)
    return reply


# ---------------------------------------------------------------- reading


def applies(field: Field, given: Given) -> bool:
    """Return whether a conditional field is asked, given the choices made."""
    return field.when is None or given.word(field.when[0]) in field.when[1]


def label(calculator: Calculator, field: Field, prefix: str = "") -> Message:
    """Return the label of a field (of a row, if a prefix `passes-1-` is given)."""
    return say(calculator.name + ".field." + field.name) if not prefix else _row_label(calculator, field, prefix)


def _row_label(calculator: Calculator, field: Field, prefix: str) -> Message:
    number = prefix.split("-")[-2]
    return say("row-field", row=number, label=say(calculator.name + ".field." + field.name))


def _read_fields(
    calculator: Calculator,
    fields: tuple[Field, ...],
    typed: dict[str, str],
    prefix: str,
    given: Given,
    errors: list[tuple[str, Message]],
) -> bool:
    """Read fields into given; return whether anything was filled in beyond the defaults."""
    touched = False
    for field in fields:
        if isinstance(field, Choice):
            touched = _read_choice(calculator, field, typed, prefix, given, errors) or touched
    for field in fields:
        if isinstance(field, Rows):
            touched = _read_rows(calculator, field, typed, given, errors) or touched
        elif not applies(field, given):
            _refuse_unasked(calculator, fields, field, prefix, typed, given, errors)
            given.values[field.name] = None
        elif not isinstance(field, Choice):
            text = typed.get(prefix + field.name, "")
            if text == "":
                given.values[field.name] = None
                _remember_unit(field, numerals.tidy(typed.get(prefix + field.name + "_unit", "")), given)
                continue
            touched = True
            given.typed[field.name] = text
            try:
                if len(text) > LONGEST_TYPED:
                    raise Refusal(
                        "", say("text.too-long", label=label(calculator, field, prefix), longest=LONGEST_TYPED)
                    )
                if isinstance(field, Quantity):
                    unit = numerals.tidy(typed.get(prefix + field.name + "_unit", ""))
                    given.values[field.name] = _read_quantity(calculator, field, text, unit, prefix, given)
                elif isinstance(field, Text):
                    given.values[field.name] = _read_text(calculator, field, text, prefix)
            except Refusal as refusal:
                errors.append((prefix + field.name, refusal.message))
    return touched


def _refuse_unasked(
    calculator: Calculator,
    fields: tuple[Field, ...],
    field: Field,
    prefix: str,
    typed: dict[str, str],
    given: Given,
    errors: list[tuple[str, Message]],
) -> None:
    """A value whose choice was not made would be dropped silently: ask for the choice, or say why it is of no use."""
    if typed.get(prefix + field.name, "") == "":
        return
    why = "unasked." + field.name
    if why in calculator.english:
        errors.append((prefix + field.name, say(calculator.name + "." + why)))
        return
    for chooser in fields:
        if field.when is None or chooser.name != field.when[0] or not applies(chooser, given):
            continue
        name = prefix + chooser.name
        if typed.get(name, "") == "" and name not in [wrong for wrong, _ in errors]:
            choice = label(calculator, chooser, prefix)
            errors.append((name, say("choice.needed", label=choice, field=label(calculator, field, prefix))))


def _remember_unit(field: Field, unit: str, given: Given) -> None:
    if isinstance(field, Quantity) and unit in field.quantity.units:
        given.units[field.name] = unit


def _read_choice(
    calculator: Calculator,
    field: Choice,
    typed: dict[str, str],
    prefix: str,
    given: Given,
    errors: list[tuple[str, Message]],
) -> bool:
    text = numerals.tidy(typed.get(prefix + field.name, ""))
    if text == "":
        given.values[field.name] = field.default
        return False
    given.typed[field.name] = text
    if text not in field.options:
        names = ", ".join(field.options)
        errors.append(
            (prefix + field.name, say("choice.unknown", label=label(calculator, field, prefix), options=names))
        )
        given.values[field.name] = None
        return True
    given.values[field.name] = text
    return text != field.default


def _read_text(calculator: Calculator, field: Text, text: str, prefix: str) -> str:
    if len(text) > field.longest:
        raise Refusal("", say("text.too-long", label=label(calculator, field, prefix), longest=field.longest))
    return text


def _read_rows(
    calculator: Calculator, field: Rows, typed: dict[str, str], given: Given, errors: list[tuple[str, Message]]
) -> bool:
    rows = []
    for number in range(1, field.most + 1):
        row = Given()
        row.place = number
        if _read_fields(calculator, field.fields, typed, field.name + "-" + str(number) + "-", row, errors):
            rows.append(row)
    given.values[field.name] = rows
    return len(rows) > 0


def _read_quantity(
    calculator: Calculator, field: Quantity, text: str, chosen_unit: str, prefix: str, given: Given
) -> object:
    name = label(calculator, field, prefix)
    if field.may_be_unknown and numerals.tidy(text).lower() == UNKNOWN:
        return UNKNOWN
    number_text, unit_text = numerals.split_unit(text)
    if number_text == "":
        raise Refusal("", say("number.unreadable", label=name))
    quantity = field.quantity
    unit: str | None = chosen_unit if chosen_unit in quantity.units else quantity.si
    if unit_text:
        unit = units.named(unit_text)
        if unit is None or unit not in quantity.units:
            offered = " ".join(units.sign(each) for each in quantity.units if each) or say("number.no-unit")
            raise Refusal("", say("number.unit", label=name, unit=unit_text, units=offered))
    assert unit is not None
    try:
        value = numerals.parse(number_text)
    except numerals.BadNumber as bad:
        raise Refusal("", _bad_number(name, bad)) from None
    if value is None:
        raise Refusal("", say("number.unreadable", label=name))
    given.units[field.name] = unit
    coherent = units.to_coherent(value, unit)
    low, high = limits(field)
    settled = numerals.settle(coherent)
    if field.whole and settled != int(settled):
        raise Refusal("", say("number.whole", label=name))
    if settled < numerals.settle(low) or settled > numerals.settle(high):
        raise Refusal("", _between(calculator, field, name, low, high, unit))
    return float(int(settled)) if field.whole else coherent


def limits(field: Quantity) -> tuple[float, float]:
    """Return the lowest and highest value of a field, [coherent SI]."""
    return units.to_coherent(field.low, field.quantity.si), units.to_coherent(field.high, field.quantity.si)


def _between(calculator: Calculator, field: Quantity, name: Message, low: float, high: float, unit: str) -> Message:
    reason_id = "range." + field.name
    id = "number.between"
    parameters: dict[str, object] = {}
    if reason_id in calculator.english:
        id = "number.between-because"
        parameters["reason"] = say(calculator.name + "." + reason_id)
    parameters["label"] = name
    parameters["low"] = _shown_limit(field, low, unit, 1.0)
    parameters["high"] = _shown_limit(field, high, unit, -1.0)
    return Message(id, tuple((key, parameters[key]) for key in sorted(parameters)))


def _shown_limit(field: Quantity, limit: float, unit: str, inward: float) -> Measured:
    """Return a limit as it is shown, its last digit moved inward if need be: what is shown must be accepted."""
    number = units.from_coherent(limit, unit)
    figures = field.quantity.figures
    places = field.quantity.decimals(unit)
    step = 1.0
    if places is None:
        shown = numerals.settle(number, figures)
        while abs(shown) >= step * 10**figures:
            step *= 10.0
        while abs(shown) < step * 10 ** (figures - 1) and step > 1e-9:
            step /= 10.0
    else:
        shown = numerals.parse(numerals.fixed(number, places)) or 0.0
        step = 10.0**-places
    if numerals.settle(shown) * inward < numerals.settle(number) * inward:
        shown = numerals.settle(shown + step * inward)
    return Measured(units.to_coherent(shown, unit), field.quantity.name, None, unit)


def _bad_number(name: Message, bad: numerals.BadNumber) -> Message:
    readings = bad.readings
    if len(readings) == 2:
        return say(bad.reason, label=name, first=readings[0], second=readings[1])
    if len(readings) == 1:
        return say(bad.reason, label=name, first=readings[0])
    return say(bad.reason, label=name)


# ---------------------------------------------------------------- solving


def _missing_fields(calculator: Calculator, fields: tuple[Field, ...], given: Given, prefix: str) -> Message | None:
    """Return what is still waited for outside the relations, in rows that were begun too, or None."""
    related = [] if prefix else [name for relation in calculator.relations for name in relation.fields]
    for field in fields:
        if isinstance(field, Rows):
            for row in given.rows(field.name):
                place = field.name + "-" + str(row.place) + "-"
                missing = _missing_fields(calculator, field.fields, row, place)
                if missing:
                    return missing
        elif not field.optional and field.name not in related and not given.has(field.name):
            if applies(field, given):
                return say("waiting.field", label=label(calculator, field, prefix))
    return None


def _close_relations(calculator: Calculator, given: Given, reply: Reply) -> Message | None:
    """Fill every blank that a relation decides; return what is still waited for, or None."""
    open_relations = [relation for relation in calculator.relations if _takes_part(relation, given)]
    progress = True
    while progress and open_relations:
        progress = False
        for relation in list(open_relations):
            blanks = [name for name in relation.fields if not given.has(name)]
            if len(blanks) > 1:
                continue
            if blanks:
                _solve(calculator, relation, blanks[0], given)
            elif relation.check and (reply.agreement is None or reply.agreement.id == "agree.yes"):
                # A disagreement must not be hidden by another relation that agrees.
                reply.agreement = _agreement(calculator, relation, given)
            open_relations.remove(relation)
            progress = True
    if not open_relations:
        return None
    blanks = [name for name in open_relations[0].fields if not given.has(name)]
    names = [label(calculator, calculator.field(name)) for name in blanks]
    return _one_of(names, len(blanks) - 1)


def _one_of(names: list[Message], count: int) -> Message:
    return say("waiting.one-of" if count == 1 else "waiting.more", names=_listed(names, "list.or"), count=count)


def _listed(names: list[Message], last: str) -> Message:
    """Return names as a list in words: `a, b or c` for list.or, `a, b and c` for list.and."""
    listed = names[-1]
    for position in range(len(names) - 2, -1, -1):
        joint = last if position == len(names) - 2 else "list.comma"
        listed = say(joint, first=names[position], rest=listed)
    return listed


def _takes_part(relation: Relation, given: Given) -> bool:
    if relation.takes_part is not None:
        return relation.takes_part(given)
    return relation.required or any(given.has(name) for name in relation.its_own)


def _numbers(relation: Relation, given: Given) -> "dict[str, Any]":
    return {name: given.values[name] for name in relation.fields + relation.also if given.has(name)}


def _solve(calculator: Calculator, relation: Relation, unknown: str, given: Given) -> None:
    value = _solved(relation, unknown, _numbers(relation, given))
    field = _quantity_field(calculator, unknown)
    low, high = limits(field)
    settled = numerals.settle(value)
    if not numerals.is_finite(value) or settled < numerals.settle(low) or settled > numerals.settle(high):
        raise _solved_outside(calculator, field, value, given)
    given.fill(unknown, value)
    if relation.required:
        given.solved_for = unknown


def _solved(relation: Relation, unknown: str, numbers: "dict[str, Any]") -> float:
    try:
        return relation.solve(unknown, numbers)
    except ZeroDivisionError:
        return math.inf  # no number closes the relation, which the refusal says in words


def _quantity_field(calculator: Calculator, name: str) -> Quantity:
    field = calculator.field(name)
    assert isinstance(field, Quantity)
    return field


def _solved_outside(calculator: Calculator, field: Quantity, value: float, given: Given) -> Refusal:
    low, high = limits(field)
    unit = given.units.get(field.name)
    shown = Measured(value, field.quantity.name, None, unit) if numerals.is_finite(value) else say("not-finite")
    return Refusal(
        "",
        say(
            "solved.outside",
            label=label(calculator, field),
            value=shown,
            low=Measured(low, field.quantity.name, None, unit),
            high=Measured(high, field.quantity.name, None, unit),
        ),
    )


def _agreement(calculator: Calculator, relation: Relation, given: Given) -> Message:
    """Return how well numbers agree when none is blank."""
    numbers = _numbers(relation, given)
    typed = numbers[relation.check]
    others = {name: numbers[name] for name in numbers if name != relation.check}
    reckoned = _solved(relation, relation.check, others)
    quantity = _quantity_field(calculator, relation.check)
    if not numerals.is_finite(reckoned):
        raise _solved_outside(calculator, quantity, reckoned, given)
    # Settled first: two that agree must not differ by the last bit, which no two maths libraries share.
    difference = numerals.settle(typed, 8) - numerals.settle(reckoned, 8)
    difference = numerals.settle(difference / (reckoned or typed or 1.0), 6)
    unit = given.units.get(relation.check)
    if abs(difference) <= relation.agree_within:
        id = "agree.yes"
    else:
        id = "agree.over" if difference > 0 else "agree.under"
    return say(
        id,
        label=label(calculator, quantity),
        reckoned=Measured(reckoned, quantity.quantity.name, None, unit),
        typed=Measured(typed, quantity.quantity.name, None, unit),
        percent=Plain(abs(difference) * 100.0, 3),
    )


# ---------------------------------------------------------------- what went wrong in a formula


def _field_at_fault(calculator: Calculator, name: str) -> str:
    return name if any(field.name == name for field in calculator.fields) else ""


def _range_message(calculator: Calculator, error: OutOfRange, given: Given) -> Message:
    for field in calculator.fields:
        if field.name == error.name and isinstance(field, Quantity):
            low, high = limits(field)
            low = low if error.low is None else error.low
            high = high if error.high is None else error.high
            unit = given.units.get(field.name, field.quantity.si)
            return _between(calculator, field, label(calculator, field), low, high, unit)
    return say("formula.outside", name=error.name.replace("_", " "))


# ---------------------------------------------------------------- what moves the answer


def _headline(calculator: Calculator, answer: Answer) -> Number | None:
    """Return the first number of an answer; None for a whole one, which goes in steps and not by the percent."""
    for result in answer.results:
        if isinstance(result, Number):
            return None if result.name in _whole_fields(calculator) else result
    return None


def _whole_fields(calculator: Calculator) -> list[str]:
    return [field.name for field in calculator.fields if isinstance(field, Quantity) and field.whole]


def _what_moves_it(calculator: Calculator, given: Given, answer: Answer) -> Message | None:
    """Return which typed number moves the headline most, found by asking again with each one 10 % higher."""
    headline = _headline(calculator, answer)
    if headline is None or headline.value == 0.0:
        return None
    base = headline.value
    # Where the headline is the blank itself, closing the relations is enough; a whole answer costs ten times that.
    solved = given.solved_for if given.solved_for is not None and given.values[given.solved_for] == base else None
    changes = []
    for field in calculator.fields:
        if not isinstance(field, Quantity) or field.whole or field.name not in given.typed:
            continue
        value = given.values.get(field.name)
        if not isinstance(value, float) or value == 0.0 or units.to_coherent(0.0, field.quantity.si) != 0.0:
            continue  # nobody thinks of a temperature as 10 % more
        moved = _again_with(calculator, given, field.name, value * 1.1, solved)
        if moved is not None:
            changes.append((numerals.settle((moved - base) / base, 3), label(calculator, field)))
    most = max([abs(change) for change, _ in changes] + [0.0])
    if most < 0.005:
        return None
    movers = [(change, name) for change, name in changes if abs(change) == most]
    id = "moves.up" if movers[0][0] > 0 else "moves.down"
    names = [name for change, name in movers if change == movers[0][0]]
    return say(id, names=_listed(names, "list.and"), percent=Plain(most * 100.0, 2))


def _again_with(
    calculator: Calculator, given: Given, name: str, value: float, solved: str | None
) -> float | None:
    """Return the headline (or the `solved` blank) with one number changed, or None if that has no answer."""
    other = Given()
    other.typed = given.typed
    other.units = given.units
    other.values = dict(given.values)
    for name_made in given.made:
        other.values[name_made] = None
    other.values[name] = value
    reply = Reply("blank", other)
    try:
        if calculator.prepare:
            calculator.prepare(other)
        if _close_relations(calculator, other, reply):
            return None
        if solved is not None:
            return other.number(solved)
        headline = _headline(calculator, calculator.answer(other))
        return None if headline is None else headline.value
    except (Refusal, OutOfRange):
        return None
