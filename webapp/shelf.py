"""The calculators on the shelf: which there are, loaded only when asked for, so that a cold phone loads one."""

from calculators import asking, made
from calculators.contract import Calculator
from webapp import shelf_entries

_loaded: dict[str, Calculator] = {}


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
