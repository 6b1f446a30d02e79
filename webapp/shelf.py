"""The calculators on the shelf: which there are, loaded only when asked for, so that a cold phone loads one."""

from calculators import asking, made
from calculators.contract import Calculator
from webapp import shelf_entries, translations

_loaded: dict[str, Calculator] = {}
_titles: dict[str, dict[str, dict[str, str]]] = {}


def names() -> tuple[str, ...]:
    """Return the names of all calculators, as they stand in addresses, in the order of the work."""
    return tuple(entry[0] for entry in shelf_entries.entries())


def places() -> tuple[tuple[str, int], ...]:
    """Return (name, place) of all calculators, in the order of the work."""
    return tuple(entry[:2] for entry in shelf_entries.entries())


def calculator(name: str) -> Calculator | None:
    """Return the calculator of that name, or None."""
    if name not in _loaded:
        module = name.replace("-", "_")
        if "_" in name or module not in made.CALCULATOR_MODULES:
            return None
        _loaded[name] = asking.named(name)
    return _loaded[name]


def words_of(name: str, id: str) -> dict[str, str] | None:
    """Return the English sentences of a calculator, or None if there is no such calculator.

    For its title and question the calculator need not be loaded.
    """
    if id in ("title", "question") and name not in _loaded:
        for entry, _, title, question, _ in shelf_entries.entries():
            if entry == name:
                return {"title": title, "question": question}
        return None
    found = calculator(name)
    return None if found is None else found.english


def translated(language: str, name: str, id: str) -> str | None:
    """Return a calculator's sentence in another language, or None; for title and question nothing is loaded."""
    if id not in ("title", "question"):
        return translations.words_of(language, name.replace("-", "_")).get(id)
    if language not in _titles:
        entries = shelf_entries.entries(language)
        _titles[language] = {entry: {"title": title, "question": question} for entry, _, title, question, _ in entries}
    return _titles[language].get(name, {}).get(id)
