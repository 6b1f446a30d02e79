"""The one function through which every visible sentence goes: a Message in, text in the reader's language out.

Plain dicts, since the phone's Python has no gettext. Ids `<calculator>.<rest>` are looked up in that calculator's
own words; all others in `webapp/words/en.py`; those of another language in `webapp/words/<language>/`. The
pseudo-language `zz` marks every sentence, so that a test can find text that did not come this way.
"""

import math

from calculators import numerals, units
from calculators.contract import Measured, Message, Plain
from webapp import shelf, translations
from webapp.words import en

ENGLISH = "en"
PSEUDO = "zz"
PSEUDO_OPEN = "\u27e6"
PSEUDO_CLOSE = "\u27e7"
NO_BREAK_SPACE = "\u00a0"


ALONE = "-alone"  # ends the build of a book that was exported as files: it has no server to share with


class Context:
    """What a reply depends on besides the request: language, unit system (`us` or `si`) and build."""

    def __init__(self, language: str, system: str, build: str) -> None:
        self.language = language
        self.system = system
        self.build = build

    def has_server(self) -> bool:
        """Return whether there is a server behind the book."""
        return not self.build.endswith(ALONE)


def template(id: str, context: Context) -> str:
    """Return the sentence `id` with its {parameters} still open."""
    calculator, _, rest = id.partition(".")
    own = shelf.words_of(calculator, rest) if rest else None
    if context.language in translations.LANGUAGES:
        if own is None:
            found = translations.words_of(context.language, translations.SHARED).get(id)
        else:
            found = shelf.translated(context.language, calculator, rest)
        if found is not None:
            return found
    words = en.WORDS if own is None else own
    text = words[id if own is None else rest]
    if context.language == PSEUDO:
        return PSEUDO_OPEN + text + PSEUDO_CLOSE
    return text


def has(id: str) -> bool:
    """Return whether the catalogue knows `id`."""
    calculator, _, rest = id.partition(".")
    own = shelf.words_of(calculator, rest) if rest else None
    return id in en.WORDS if own is None else rest in own


def sentence(message: Message, context: Context) -> str:
    """Return the finished sentence of a Message, as plain text (not escaped)."""
    text = template(message.id, context)
    parts = text.split("{")
    out = parts[0]
    for part in parts[1:]:
        name, _, rest = part.partition("}")
        out += piece(_parameter(message, name), context) + rest
    return out


def unchecked(message: Message, context: Context) -> str:
    """Return the English of a caution for whoever reads it in a language that no native reader has checked, else ""."""
    if context.language not in translations.LANGUAGES:
        return ""
    return sentence(message, Context(ENGLISH, context.system, context.build))


def _parameter(message: Message, name: str) -> object:
    for key, value in message.parameters:
        if key == name:
            return value
    raise KeyError(message.id + " lacks " + name)


def piece(value: object, context: Context) -> str:
    """Return one parameter or table cell as text."""
    if isinstance(value, Message):
        return sentence(value, context)
    if isinstance(value, Measured):
        return measured(value, context)
    if isinstance(value, Plain):
        return numerals.significant(value.value, value.figures)
    return str(value)


def measured(value: Measured, context: Context) -> str:
    """Return number and unit of a Measured, in its own unit or else the context's."""
    unit = value.unit if value.unit is not None else value.quantity.unit(context.system)
    return with_unit(amount(value, unit), unit)


def amount(value: Measured, unit: str) -> str:
    """Return the number of a Measured in `unit`, as the vocabulary says it is shown."""
    number = units.from_coherent(value.value, unit)
    places = value.quantity.decimals(unit)
    if value.inward:
        return _limit(number, value, places)
    if value.figures is None and places is not None:
        return numerals.fixed(number, places)
    return numerals.significant(number, value.figures or value.quantity.figures)


def _limit(number: float, value: Measured, places: int | None) -> str:
    """Return a limit, its last digit moved inward if need be; a fraction of zeros is left off."""
    step = 1.0
    if places is None:
        figures = value.quantity.figures
        shown = numerals.settle(number, figures)
        while abs(shown) >= step * 10**figures:
            step *= 10.0
        while abs(shown) < step * 10 ** (figures - 1) and step > 1e-9:
            step /= 10.0
    else:
        shown = numerals.settle(math.floor(numerals.settle(number) * 10**places + 0.5) / 10.0**places)
        step = 10.0**-places
    if numerals.settle(shown) * value.inward < numerals.settle(number) * value.inward:
        shown = numerals.settle(shown + step * value.inward)
    if places is None or numerals.settle(shown) == math.floor(shown + 0.5):
        return numerals.significant(shown, numerals.MOST_FIGURES)
    return numerals.fixed(shown, places)


def with_unit(number: str, unit: str) -> str:
    """Return number and unit, held together."""
    if unit == "%":
        return number + NO_BREAK_SPACE + "%"
    return number + NO_BREAK_SPACE + units.sign(unit) if unit else number
