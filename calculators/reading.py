"""Reading what was typed into a calculator's fields: numbers with units, choices, text, rows, and what is wrong."""

from calculators import numerals, ranges, units
from calculators.contract import (
    UNKNOWN,
    Calculator,
    Choice,
    Field,
    Given,
    Measured,
    Message,
    Quantity,
    Refusal,
    Rows,
    Text,
    say,
)

LONGEST_TYPED = 200  # characters of one value; a phone's keyboard sends less, a fuzzer sends more


def last_typed(pairs: list[tuple[str, str]]) -> dict[str, str]:
    """Return name -> text as typed; a later non-empty pair wins, so that a preset button can follow its own box."""
    typed: dict[str, str] = {}
    for name, text in pairs:
        blank = numerals.tidy(text) == ""
        if not blank or name not in typed:
            typed[name] = "" if blank else text
    return typed


def applies(field: Field, given: Given) -> bool:
    """Return whether a conditional field is asked, given the choices made."""
    return field.when is None or given.word(field.when[0]) in field.when[1]


def label(calculator: Calculator, field: Field, prefix: str = "") -> Message:
    """Return the label of a field (of a row, if a prefix `passes-1-` is given)."""
    return say(calculator.name + ".field." + field.name) if not prefix else _row_label(calculator, field, prefix)


def _row_label(calculator: Calculator, field: Field, prefix: str) -> Message:
    number = prefix.split("-")[-2]
    return say("row-field", row=number, label=say(calculator.name + ".field." + field.name))


def read_fields(
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
        if isinstance(field, Rows) and applies(field, given):
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
    if not was_typed(field, prefix, typed):
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


def was_typed(field: Field, prefix: str, typed: dict[str, str]) -> bool:
    """Return whether a field holds anything; of rows, what stands in a choice was perhaps never chosen."""
    if not isinstance(field, Rows):
        return typed.get(prefix + field.name, "") != ""
    if not rows_were_sent(field, typed):
        return False
    for number in range(1, field.most + 1):
        for each in field.fields:
            if not isinstance(each, Choice) and typed.get(field.name + "-" + str(number) + "-" + each.name, "") != "":
                return True
    return False


def rows_were_sent(field: Rows, typed: dict[str, str]) -> bool:
    """Return whether any box of a repeated field came in at all; mostly none does, and there are dozens to look for."""
    return any(name.startswith(field.name + "-") for name in typed)


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
        asked, names = label(calculator, field, prefix), ", ".join(field.options)
        wrong = say("choice.listed", label=asked) if field.many else say("choice.unknown", label=asked, options=names)
        errors.append((prefix + field.name, wrong))
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
    for number in range(1, field.most + 1 if rows_were_sent(field, typed) else 1):
        row = Given()
        row.place = number
        if read_fields(calculator, field.fields, typed, field.name + "-" + str(number) + "-", row, errors):
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
    if number_text == "" or (numerals.names_money(text) and not field.quantity.money):
        raise Refusal("", say("number.unreadable", label=name))
    quantity = field.quantity
    unit: str | None = chosen_unit if chosen_unit in quantity.units else quantity.si
    if unit_text:
        unit = units.named(unit_text)
        if unit is None or unit not in quantity.units:
            signs = [Message("number.plain-unit", (("unit", units.sign(each)),)) for each in quantity.units if each]
            offered = listed(signs, "list.or") if signs else say("number.no-unit")
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
    settled = numerals.settle(coherent) if field.whole else coherent
    if field.whole and settled != int(settled):
        raise Refusal("", say("number.whole", label=name))
    if ranges.above(low, coherent) or ranges.above(coherent, high):
        raise Refusal("", between(calculator, field, name, low, high, unit, coherent))
    return float(int(settled)) if field.whole else coherent


def as_typed(value: Measured, system: str) -> str:
    """Return a Measured as it would be typed into a field: in its own unit, or that of `us` or `si`."""
    unit = value.unit if value.unit is not None else value.quantity.unit(system)
    return (numerals.significant(units.from_coherent(value.value, unit), 6, False) + " " + unit).strip(" ")


def listed(names: list[Message], last: str) -> Message:
    """Return names as a list in words: `a, b or c` for list.or, `a, b and c` for list.and."""
    listed = names[-1]
    for position in range(len(names) - 2, -1, -1):
        joint = last if position == len(names) - 2 else "list.comma"
        listed = say(joint, first=names[position], rest=listed)
    return listed


def limits(field: Quantity) -> tuple[float, float]:
    """Return the lowest and highest value of a field, [coherent SI]."""
    return units.to_coherent(field.low, field.quantity.si), units.to_coherent(field.high, field.quantity.si)


def between(
    calculator: Calculator, field: Quantity, name: Message, low: float, high: float, unit: str, value: float
) -> Message:
    """Return that a field must be between two limits, and why; a reason may hold for one of the two sides alone."""
    reason_id = "range." + field.name
    if reason_id not in calculator.english:
        reason_id += ".low" if ranges.above(low, value) else ".high"
    id = "number.between"
    parameters: dict[str, object] = {}
    if reason_id in calculator.english:
        id = "number.between-because"
        parameters["reason"] = say(calculator.name + "." + reason_id)
    parameters["label"] = name
    parameters["low"] = Measured(low, field.quantity.name, None, unit, 1.0)
    parameters["high"] = Measured(high, field.quantity.name, None, unit, -1.0)
    return Message(id, tuple((key, parameters[key]) for key in sorted(parameters)))


def _bad_number(name: Message, bad: numerals.BadNumber) -> Message:
    readings = bad.readings
    if len(readings) == 2:
        return say(bad.reason, label=name, first=readings[0], second=readings[1])
    if len(readings) == 1:
        return say(bad.reason, label=name, first=readings[0])
    return say(bad.reason, label=name)
