"""Random requests made from the declarations: good, at the edge, half filled, contradictory and plain garbage."""

import random

from calculators import asking, reading, units
from calculators.contract import Calculator, Quantity
from calculators.facts.units import SPELLINGS
from tests import walking
from tests.parity.two_pythons import Request, asked
from webapp import shelf

Pairs = list[tuple[str, str]]

GARBAGE = (
    *("", " ", "\u00a0", "\x00", "12\x0013", "\x7f", "\x85", "\x1c", "\u2028", "\ufeff", "\u202e12", "a\u0301"),
    *("abc", "<script>alert(1)</script>", "\"'&<>", "{label}", "{", "}", "{0}", "%s", "%", "\\", "?a=b&c", "#", "+"),
    *("1,234", "1.234,5", "1,234.5", "1,2,3", "1.2.3", "0,123", "1 000", "1\u202f000", "1'000", ",5", "5,", ".5", "5."),
    *("1e5", "1e-30", "1e999", "1E+2", "1e22", "1e-22", "e5", "1e", "1e+", "1,5e3", "0x10", "1_000", "0b1", "00012"),
    *(".", "-", "--5", "+-5", "-0", "0", "-1", "\u22125", "\u20135", "\u00b15", "~5", "5-6", "5 6", "(5)", "5!"),
    *("3/16", "1 3/16", "1-3/16", "-3/16", "1/0", "1/", "/2", "1 2/3 4", "1/2/3", "\u00bd", "1\u00bd", "1\u20442"),
    *("\u0663", "\u4e09", "\uff15", "\u00b2", "\u221e", "nan", "NaN", "inf", "-inf", "Infinity", "None", "True"),
    *("5 parsecs", "5 \u212ag", "UN\u212aNOWN", "UNKNOWN", "unknown", "5 \u0130N", "5 \u00b5m", "5 \u212b", "5 mm mm"),
    *("5 %", "12V", "12 v", "180 amps", '3/16"', "3/16''", "6'", "5 ft3/h", "5 m\u00b3", "20 \u00b0F", "20 \u00b0c"),
    *("9" * 15, "9" * 16, "9" * 300, "0." + "0" * 30 + "1", "1" + "0" * 22, "0.1" + "0" * 100 + "1"),
    *("\U0001f600", "\U0001f600" * 150),
)
CHARACTERS = "0123456789.,-+/eE '\"%mftin/\u00bd\u212a\u00e9\u0130\u03a9\U0001f600<>&{}\x00\x7f\u00a0\u2028"
SEARCHES = (
    "gauge",
    "Stick-Out",
    "which bottle is EMPTY",
    "prehaet",
    "caf\u00e9 gas",
    "wire\u2028feed",
    "a" * 90,
    "zz top",
)
NOWHERE = (
    *("/nothing", "/a/b/c", "//", "/heat-input/", "/HEAT-INPUT", "/heat_input", "/specimen/x", "/\u00e9", "/-"),
    *("/api/nothing", "/api/specimen/", "/api/a/b", "/apix", "/api//", "/about/", "/asking", "/made", "/facts.units"),
)
NAMES = ("units", "lang", "q", "", "units_unit", "voltage", "extras-9-length", "extras--length", "\u00e9", "a" * 300)


def requests(chance: random.Random, count: int) -> list[Request]:
    """Return that many requests, the same for the same seed."""
    return [_request(chance) for _ in range(count)]


def _request(chance: random.Random) -> Request:
    where = chance.random()
    if where < 0.02:
        where_to = chance.choice(("/", "/", "/about", "/about", "/about", "/api", "/api/"))
        return asked(where_to, _settings(chance), False, _language(chance))
    if where < 0.03:
        typed = chance.choice((*SEARCHES, chance.choice(GARBAGE), chance.choice(SEARCHES)[: chance.randint(0, 9)]))
        return asked("/", [("find", typed), *_settings(chance)], chance.random() < 0.8, _language(chance))
    if where < 0.032:
        return asked("/api/openapi.json", _settings(chance), False, _language(chance))
    if where < 0.05:
        pairs = _settings(chance) + _nonsense(chance)
        return asked(chance.choice(NOWHERE), pairs, chance.random() < 0.3, _language(chance))
    name = chance.choice(shelf.names())
    pairs = _question(walking.calculator(name), chance)
    pairs = [_respelt(pair, chance) for pair in pairs] + _settings(chance)
    kind = chance.random()
    if kind < 0.35:
        return asked("/api/" + name, _flattened(pairs, chance), False, _language(chance))
    return asked("/" + name, _flattened(pairs, chance), kind < 0.96, _language(chance))


def _settings(chance: random.Random) -> Pairs:
    pairs = []
    if chance.random() < 0.5:
        pairs.append(("units", chance.choice(("us", "si", "si", "", "metric"))))
    if chance.random() < 0.15:
        pairs.append(("lang", chance.choice(("en", "zz", "de", ""))))
    return pairs


def _language(chance: random.Random) -> str:
    return "zz" if chance.random() < 0.2 else "en"


def _question(calculator: Calculator, chance: random.Random) -> Pairs:
    pairs = _answered(calculator, chance)
    style = chance.random()
    if style < 0.3:
        return pairs
    if style < 0.45:
        return _at_the_edge(calculator, pairs, chance)
    if style < 0.6:
        return [pair for pair in pairs if chance.random() < 0.75]
    if style < 0.68:
        return _nothing_blank(calculator, pairs, chance)
    if style < 0.92:
        boxes = walking.boxes(calculator)
        return pairs + [(chance.choice(boxes)[0], _garbage(chance)) for _ in range(chance.randint(1, 3))]
    return _nonsense(chance)


def _answered(calculator: Calculator, chance: random.Random) -> Pairs:
    """Return a question that very likely gets an answer: any, or one that did with its numbers a little changed."""
    if chance.random() < 0.3:
        return walking.a_question(calculator, chance)
    pairs, _ = chance.choice(walking.answered(calculator.name))
    return [(name, _near(text, chance)) for name, text in pairs]


def _near(text: str, chance: random.Random) -> str:
    number, space, unit = text.partition(" ")
    if chance.random() < 0.5 or not number.replace(".", "").isdecimal():
        return text
    return f"{float(number) * chance.uniform(0.93, 1.07):.{chance.randint(3, 8)}g}{space}{unit}"


def _at_the_edge(calculator: Calculator, pairs: Pairs, chance: random.Random) -> Pairs:
    boxes = [(name, field) for name, field in walking.boxes(calculator) if isinstance(field, Quantity)]
    if not boxes:
        return pairs
    name, field = chance.choice(boxes)
    unit = chance.choice(field.quantity.units)
    value = units.from_coherent(chance.choice(reading.limits(field)), unit)
    value *= chance.choice((1.0, 1.0, 1.0001, 0.9999, 2.0, 0.5, -1.0, 1e6))
    figures = chance.choice((3, 6, 10, 15))
    return [pair for pair in pairs if pair[0] != name] + [(name, f"{value:.{figures}g} {unit}".strip())]


def _nothing_blank(calculator: Calculator, pairs: Pairs, chance: random.Random) -> Pairs:
    """Return the question with the blank filled in too, rightly or nearly so."""
    given = asking.ask(calculator, pairs).given
    boxes = dict(walking.boxes(calculator))
    for name in given.made:
        field = boxes.get(name)  # the weld log fills in what it has no box for
        if isinstance(field, Quantity) and isinstance(given.values[name], float):
            off = chance.choice((1.0, 1.0, 1.005, 0.995, 1.01, 1.3, 0.7))
            value = units.from_coherent(given.number(name) * off, field.quantity.si)
            pairs = [*pairs, (name, f"{value:.6g} {field.quantity.si}".strip())]
    return pairs


def _garbage(chance: random.Random) -> str:
    kind = chance.random()
    if kind < 0.7:
        return chance.choice(GARBAGE)
    if kind < 0.85:
        return f"{10 ** chance.uniform(-30, 30):.{chance.randint(1, 17)}g}"
    return "".join(chance.choice(CHARACTERS) for _ in range(chance.choice((1, 3, 8, 30, 250))))


def _nonsense(chance: random.Random) -> Pairs:
    names = [name for each in shelf.names() for name, _ in walking.boxes(walking.calculator(each))] + list(NAMES)
    return [(chance.choice(names), _garbage(chance)) for _ in range(chance.choice((0, 1, 3, 10)))]


def _respelt(pair: tuple[str, str], chance: random.Random) -> tuple[str, str]:
    """Return a pair typed another way: a decimal comma, another spelling of its unit, more spaces."""
    name, text = pair
    number, _, unit = text.partition(" ")
    how = chance.random()
    if how < 0.1:
        return name, text.replace(".", ",")
    if how < 0.2 and unit:
        return name, number + chance.choice([unit, *(key for key, value in SPELLINGS.items() if value == unit)])
    if how < 0.25:
        return name, chance.choice((" ", "\u00a0", "\t")) + text.upper() + " "
    return pair


def _flattened(pairs: Pairs, chance: random.Random) -> Pairs:
    """Return pairs as a form sends them: units in a box of their own, empty boxes too, sometimes a name twice."""
    out: Pairs = []
    for name, text in pairs:
        number, _, unit = text.partition(" ")
        if unit and chance.random() < 0.2:
            out += [(name, number), (name + "_unit", unit)]
        else:
            out.append((name, text))
        if chance.random() < 0.05:
            out.append((name, chance.choice(("", " ", text, "1"))))
    if chance.random() < 0.05:
        chance.shuffle(out)
    return out
