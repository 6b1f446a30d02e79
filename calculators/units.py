"""Units: which there are, how they are written, and conversion to and from coherent SI.

Formulas work in coherent SI only (m, kg, s, K, A, V, Pa, J/m ...); units exist at the edge. Every factor is
made by pint (`made.py`); none is written here.
"""

from calculators import made
from calculators.facts.units import SIGNS, SPELLINGS

_FACTORS = {name: (factor, offset) for name, factor, offset in made.FACTORS}
_IN_LOWER_CASE = {name.lower(): name for name, _, _ in made.FACTORS}
_SHOWN = {SIGNS.get(name, name): name for name, _, _ in made.FACTORS}


def sign(unit: str) -> str:
    """Return the unit as a reader expects to see it (degF as °F); the API keeps the plain name."""
    return SIGNS.get(unit, unit)


def named(text: str) -> str | None:
    """Return the unit meant by typed text, or None if there is no such unit."""
    if text in _FACTORS:
        return text
    if text in _SHOWN:
        return _SHOWN[text]
    text = text.lower()
    return SPELLINGS[text] if text in SPELLINGS else _IN_LOWER_CASE.get(text)


def to_coherent(value: float, unit: str) -> float:
    """Return value [unit] in coherent SI."""
    factor, offset = _FACTORS[unit]
    return value * factor + offset


def from_coherent(value: float, unit: str) -> float:
    """Return value [coherent SI] in `unit`."""
    factor, offset = _FACTORS[unit]
    return (value - offset) / factor


def factor_of(unit: str) -> float:
    """Return what one `unit` is in coherent SI, leaving any zero offset aside."""
    return _FACTORS[unit][0]
