"""Questions made from the declarations alone, so that every walk takes up a new calculator by itself."""

import functools
import random

from calculators import asking, reading, units
from calculators.contract import Calculator, Choice, Field, Quantity, Relation, Rows, Text
from webapp import pocket, shelf

BUILD = "0123456789"
FEWEST, MOST_TRIES = 16, 4000
TYPED_TEXT = "as found"  # what the reader types where words are asked for

Pairs = list[tuple[str, str]]


def calculator(name: str) -> Calculator:
    """Return a calculator on the shelf."""
    found = shelf.calculator(name)
    assert found is not None, name
    return found


def boxes(asked: Calculator) -> list[tuple[str, Field]]:
    """Return every box of the form that holds one value: (its name in an address, its field)."""
    found: list[tuple[str, Field]] = []
    for field in asked.fields:
        if isinstance(field, Rows):
            for number in range(1, field.most + 1):
                found += [(f"{field.name}-{number}-{each.name}", each) for each in field.fields]
        else:
            found.append((field.name, field))
    return found


def choices_for(asked: Calculator, box: str) -> Pairs:
    """Return the choices that a box hangs on, made so that it is asked for: its own, theirs, and those of its rows."""
    found: Pairs = []
    every = dict(boxes(asked))
    field = every[box]
    while field.when is not None:
        found.append((box_beside(box, field.when[0]), field.when[1][0]))
        field = every[found[-1][0]]
    if "-" in box:
        rows = asked.field(box.split("-")[0])
        if rows.when is not None:
            found.append((rows.when[0], rows.when[1][0]))
    return found


def box_beside(box: str, name: str) -> str:
    """Return the name in an address of the field `name` in the same row, if any, as another box."""
    return box[: box.rfind("-") + 1] + name


def reply(path: str, pairs: Pairs, language: str = "en", system: str = "", partial: bool = False) -> pocket.Reply:
    """Return what the book replies to an address."""
    if system:
        pairs = [*pairs, ("units", system)]
    return pocket.respond(pocket.Request(path, pairs, partial), language, BUILD)


# ---------------------------------------------------------------- values that a field takes


def text_of(value: float, unit: str) -> str:
    """Return a number with as many digits as may be typed, and its unit; what 32 °F is off 0 °C is no number."""
    return f"{round(value, 12):.15g} {unit}".strip()


def in_range(field: Quantity, chance: random.Random, share: float | None = None) -> str:
    """Return typed text inside the range of a quantity, in one of the units offered."""
    low, high = reading.limits(field)
    share = chance.uniform(0.02, 0.98) if share is None else share
    coherent = low * (high / low) ** share if low > 0 and chance.random() < 0.7 else low + (high - low) * share
    unit = chance.choice(field.quantity.units)
    if field.whole:
        unit = field.quantity.si
        return f"{round(units.from_coherent(coherent, unit))} {unit}".strip()
    rough = f"{units.from_coherent(coherent, unit):.4g}"
    kept = low < units.to_coherent(float(rough), unit) < high
    return f"{rough} {unit}".strip() if kept else text_of(units.from_coherent(coherent, unit), unit)


def a_value(field: Field, chance: random.Random) -> str:
    """Return typed text that a field takes."""
    if isinstance(field, Choice):
        return chance.choice(field.options)
    if isinstance(field, Text):
        return chance.choice(field.examples) if field.examples else TYPED_TEXT
    assert isinstance(field, Quantity)
    if field.presets and chance.random() < 0.5:
        return chance.choice(field.presets)
    return in_range(field, chance)


# ---------------------------------------------------------------- whole questions


def a_question(asked: Calculator, chance: random.Random) -> Pairs:
    """Return a question in which everything needed is filled in and each relation has one blank."""
    chosen = _choices(asked.fields, chance)
    blanks = _blanks(asked, chance)
    # Where one of these is to be found, the others are there.
    wanted = {name for each in asked.relations if len(blanks & set(each.fields)) == 1 for name in each.fields}
    pairs: Pairs = list(chosen.items())
    for field in asked.fields:
        if isinstance(field, Choice) or field.name in blanks or not _applies(field, chosen):
            continue
        if isinstance(field, Rows):
            pairs += _rows(field, chance)
        elif not field.optional or field.name in wanted or chance.random() < 0.5:
            pairs.append((field.name, a_value(field, chance)))
    return pairs


def _choices(fields: tuple[Field, ...], chance: random.Random) -> dict[str, str]:
    chosen: dict[str, str] = {}
    for field in fields:
        if isinstance(field, Choice) and _applies(field, chosen) and not (field.optional and chance.random() < 0.4):
            chosen[field.name] = chance.choice(field.options)
    return chosen


def _applies(field: Field, chosen: dict[str, str]) -> bool:
    return field.when is None or chosen.get(field.when[0], "") in field.when[1]


def _blanks(asked: Calculator, chance: random.Random) -> set[str]:
    blanks: set[str] = set()
    for relation in asked.relations:
        if not relation.required and chance.random() < 0.5:
            blanks |= set(relation.its_own)
        elif not blanks & set(relation.fields):
            blanks.add(chance.choice(relation.fields))
    return blanks


def _rows(field: Rows, chance: random.Random) -> Pairs:
    pairs = []
    for number in range(1, chance.randint(1, field.most) + 1):
        chosen = _choices(field.fields, chance)
        for each in field.fields:
            if each.name in chosen or (not isinstance(each, Choice) and _applies(each, chosen)):
                text = chosen.get(each.name) or a_value(each, chance)
                pairs.append((f"{field.name}-{number}-{each.name}", text))
    return pairs


@functools.cache
def answered(name: str) -> tuple[tuple[Pairs, asking.Reply], ...]:
    """Return questions to a calculator that get an answer, with it; the same ones every time.

    At least FEWEST, and more until every box has been filled in by one of them or MOST_TRIES have been made.
    """
    asked = calculator(name)
    chance = random.Random(name)
    found: list[tuple[Pairs, asking.Reply]] = []
    empty = {box for box, _ in boxes(asked)}
    for _ in range(MOST_TRIES):
        pairs = a_question(asked, chance)
        filled = {box for box, _ in pairs} & empty
        if len(found) >= FEWEST and not filled:
            continue
        came = asking.ask(asked, pairs)
        if came.state == "answer":
            found.append((pairs, came))
            empty -= filled
            if len(found) >= FEWEST and not empty:
                break
    assert found, f"none of {MOST_TRIES} questions made from the declaration of {name} gets an answer"
    return tuple(found)


def turned_round(asked: Calculator, pairs: Pairs, came: asking.Reply, relation: Relation, unknown: str) -> Pairs:
    """Return an answered question with another field of one relation left blank, the others filled in."""
    kept = [(name, text) for name, text in pairs if name not in relation.fields]
    for name in relation.fields:
        if name != unknown:
            field = asked.field(name)
            assert isinstance(field, Quantity)
            unit = field.quantity.si
            kept.append((name, text_of(units.from_coherent(came.given.number(name), unit), unit)))
    return kept


@functools.cache
def states(name: str) -> tuple[tuple[str, Pairs], ...]:
    """Return a question for every state a calculator's page has, and one solved for each field it can solve."""
    asked = calculator(name)
    found: list[tuple[str, Pairs]] = [("blank", [])]
    found += _waiting(asked) + _problems(asked)
    found += [(f"answer {number}", pairs) for number, (pairs, _) in enumerate(answered(name))]
    solved: set[str] = set()
    for pairs, came in answered(name):
        for relation in asked.relations:
            for unknown in relation.fields:
                if unknown in solved or not all(came.given.has(each) for each in relation.fields):
                    continue
                turned = turned_round(asked, pairs, came, relation, unknown)
                again = asking.ask(asked, turned)
                if again.state == "answer" and unknown in again.given.made:
                    solved.add(unknown)
                    found.append((f"solved for {unknown}", turned))
    return tuple(found)


def _waiting(asked: Calculator) -> list[tuple[str, Pairs]]:
    """Return a question with one pair too few, and, if need be, without what hangs on that pair either."""
    for with_what_hangs_on_it in (False, True):
        for pairs, _ in answered(asked.name):
            for position, (chooser, _) in enumerate(pairs):
                fewer = pairs[:position] + pairs[position + 1 :]
                if with_what_hangs_on_it:
                    fewer = [pair for pair in fewer if not _hangs_on(asked, pair[0], chooser)]
                if asking.ask(asked, fewer).state == "waiting":
                    return [("waiting", fewer)]
    return []


def _hangs_on(asked: Calculator, box: str, chooser: str) -> bool:
    field = dict(boxes(asked)).get(box)
    return field is not None and field.when is not None and field.when[0] == chooser


def _problems(asked: Calculator) -> list[tuple[str, Pairs]]:
    found = []
    typed = ("1,234", "1.234,5", "1,2,3", "?", "5 furlong", "1/0", "1e22", "1" * 20, "9" * 300, "-99999")
    for name, field in boxes(asked):
        words = ("x" * 300,) if isinstance(field, Text) and not field.examples else ("no-such-word", "x" * 300)
        for text in typed if isinstance(field, Quantity) else words:
            pairs: Pairs = [(name, text), *choices_for(asked, name)]
            if asking.ask(asked, pairs).state == "problem":
                found.append((f"problem {name}={text[:12]}", pairs))
        if field.when is not None and isinstance(field, Quantity):
            found.append((f"unasked {name}", [(name, field.presets[0] if field.presets else "1")]))
    return found
