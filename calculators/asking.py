"""Putting a question to a calculator: read what was typed, fill the one blank, check, answer or say what is wrong."""

import math

from calculators import numerals, ranges, reading, units
from calculators.contract import (
    Answer,
    Calculator,
    Field,
    Given,
    Measured,
    Message,
    Next,
    Number,
    Plain,
    Quantity,
    Refusal,
    Relation,
    Rows,
    say,
)
from calculators.ranges import OutOfRange

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any


class Reply:
    """What came of a question. `state` is blank, waiting, problem or answer."""

    def __init__(self, state: str, given: Given) -> None:
        self.state = state
        self.given = given
        self.errors: list[tuple[str, Message]] = []
        self.next_questions: tuple[Next, ...] = ()  # of a refusal
        self.waiting: Message | None = None
        self.answer: Answer | None = None
        self.agreement: Message | None = None
        self.sensitivity: Message | None = None


def named(name: str) -> Calculator:
    """Return the calculator of that name; ImportError if there is none."""
    module = "calculators." + name.replace("-", "_")
    found: Calculator = __import__(module, None, None, ("CALCULATOR",)).CALCULATOR
    return found


def ask(calculator: Calculator, pairs: list[tuple[str, str]]) -> Reply:
    """Return the Reply of `calculator` to (field, typed text) pairs; never raises for anything typed."""
    reply = answer_only(calculator, pairs)
    if reply.answer is not None and calculator.moves:
        reply.sensitivity = _what_moves_it(calculator, reply.given, reply.answer)
    return reply


def answer_only(calculator: Calculator, pairs: list[tuple[str, str]]) -> Reply:
    """Return the Reply without what moves it most, which costs more than the answer: for one calculator that asks another."""
    given = Given()
    errors: list[tuple[str, Message]] = []
    typed = reading.last_typed(pairs)
    touched = reading.read_fields(calculator, calculator.fields, typed, "", given, errors)
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
        reply.next_questions = refusal.next_questions
    except OutOfRange as error:
        reply.errors = [(_field_at_fault(calculator, error.name), _range_message(calculator, error, given))]
    reply.state = "problem"
    return reply


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
    return reply


# ---------------------------------------------------------------- solving


def _missing_fields(calculator: Calculator, fields: tuple[Field, ...], given: Given, prefix: str) -> Message | None:
    """Return what is still waited for outside the relations, in rows that were begun too, or None."""
    related = [] if prefix else [name for relation in calculator.relations for name in relation.fields]
    for field in fields:
        if isinstance(field, Rows):
            if not field.optional and not given.rows(field.name) and reading.applies(field, given):
                return say("waiting.field", label=reading.label(calculator, field))
            for row in given.rows(field.name):
                place = field.name + "-" + str(row.place) + "-"
                missing = _missing_fields(calculator, field.fields, row, place)
                if missing:
                    return missing
        elif not field.optional and field.name not in related and not given.has(field.name):
            if reading.applies(field, given):
                return say("waiting.field", label=reading.label(calculator, field, prefix))
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
    names = [reading.label(calculator, calculator.field(name)) for name in blanks]
    return _one_of(names, len(blanks) - 1)


def _one_of(names: list[Message], count: int) -> Message:
    return say("waiting.one-of" if count == 1 else "waiting.more", names=reading.listed(names, "list.or"), count=count)


def _takes_part(relation: Relation, given: Given) -> bool:
    if relation.takes_part is not None:
        return relation.takes_part(given)
    return relation.required or any(given.has(name) for name in relation.its_own)


def _numbers(relation: Relation, given: Given) -> "dict[str, Any]":
    return {name: given.values[name] for name in relation.fields + relation.also if given.has(name)}


def _solve(calculator: Calculator, relation: Relation, unknown: str, given: Given) -> None:
    value = _solved(relation, unknown, _numbers(relation, given))
    field = _quantity_field(calculator, unknown)
    low, high = reading.limits(field)
    if not numerals.is_finite(value) or ranges.above(low, value) or ranges.above(value, high):
        raise _solved_outside(calculator, relation, field, value, given)
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


def _solved_outside(calculator: Calculator, relation: Relation, field: Quantity, value: float, given: Given) -> Refusal:
    """Refuse what a relation leads to, and name the numbers that were typed and lead there."""
    low, high = reading.limits(field)
    unit = given.units.get(field.name)
    typed = []
    for name in relation.fields:
        if name != field.name and name in given.typed and isinstance(given.values.get(name), float):
            other = _quantity_field(calculator, name)
            shown = given.measured(name, other.quantity.name)
            typed.append(say("solved.typed", label=reading.label(calculator, other), value=shown))
    parameters: dict[str, object] = {
        "label": reading.label(calculator, field),
        "value": Measured(value, field.quantity.name, None, unit) if numerals.is_finite(value) else say("not-finite"),
        "low": Measured(low, field.quantity.name, None, unit, 1.0),
        "high": Measured(high, field.quantity.name, None, unit, -1.0),
    }
    if typed:
        parameters["typed"] = reading.listed(typed, "list.and")
    return Refusal("", say("solved.outside-from" if typed else "solved.outside", **parameters))


def _agreement(calculator: Calculator, relation: Relation, given: Given) -> Message:
    """Return how well numbers agree when none is blank."""
    numbers = _numbers(relation, given)
    typed = numbers[relation.check]
    others = {name: numbers[name] for name in numbers if name != relation.check}
    reckoned = _solved(relation, relation.check, others)
    quantity = _quantity_field(calculator, relation.check)
    if not numerals.is_finite(reckoned):
        raise _solved_outside(calculator, relation, quantity, reckoned, given)
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
        label=reading.label(calculator, quantity),
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
            low, high = reading.limits(field)
            low = low if error.low is None else error.low
            high = high if error.high is None else error.high
            unit = given.units.get(field.name, field.quantity.si)
            return reading.between(calculator, field, reading.label(calculator, field), low, high, unit, error.value)
    return say("formula.outside", name=error.name.replace("_", " "))


# ---------------------------------------------------------------- what moves the answer


def _headline(calculator: Calculator, answer: Answer) -> Number | None:
    """Return the first number of an answer; None for one that is not spoken of by the percent.

    A whole number goes in steps, and the zero of a temperature is a convention.
    """
    for result in answer.results:
        if isinstance(result, Number):
            by_percent = units.to_coherent(0.0, result.quantity.si) == 0.0
            return result if by_percent and result.name not in _whole_fields(calculator) else None
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
            changes.append((numerals.settle((moved - base) / base, 3), reading.label(calculator, field)))
    most = max([abs(change) for change, _ in changes] + [0.0])
    if most < 0.005:
        return None
    movers = [(change, name) for change, name in changes if abs(change) == most]
    id = "moves.up" if movers[0][0] > 0 else "moves.down"
    names = [name for change, name in movers if change == movers[0][0]]
    moved_label = headline.label or say(calculator.name + ".result." + headline.name)
    return say(id, names=reading.listed(names, "list.and"), percent=Plain(most * 100.0, 2), label=moved_label)


def _again_with(calculator: Calculator, given: Given, name: str, value: float, solved: str | None) -> float | None:
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
