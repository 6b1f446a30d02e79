"""The calculators on the shelf: which there are, loaded only when asked for, so that a cold phone loads one."""

from calculators import made
from calculators.contract import Calculator

_loaded: dict[str, Calculator] = {}


def names() -> tuple[str, ...]:
    """Return the names of all calculators, as they stand in addresses, in the order of the work."""
    found = []
    for module in made.CALCULATOR_MODULES:
        name = module.replace("_", "-")
        loaded = calculator(name)
        assert loaded is not None
        found.append((loaded.place, name))
    return tuple(name for _, name in sorted(found))


def calculator(name: str) -> Calculator | None:
    """Return the calculator of that name, or None."""
    if name not in _loaded:
        module = name.replace("-", "_")
        if "_" in name or module not in made.CALCULATOR_MODULES:
            return None
        _loaded[name] = __import__("calculators." + module, None, None, ("CALCULATOR",)).CALCULATOR
    return _loaded[name]


def words_of(name: str) -> dict[str, str] | None:
    """Return the English sentences of a calculator, or None if there is no such calculator."""
    found = calculator(name)
    return None if found is None else found.english
