"""What the phone cannot make for itself: unit factors (pint's) and the list of calculators (the folder's).

This file is the CPython side. The phone's bundle carries a file of the same name that holds the same two values
as literals (webapp/bundle.py writes it), so that both Pythons read `made.FACTORS` and `made.CALCULATOR_MODULES`.
"""

import os
from decimal import Decimal

import pint

from calculators.facts.units import UNITS

# Decimal, so that an inch is 0.0254 m and not a neighbour of it.
_registry: pint.UnitRegistry[Decimal] = pint.UnitRegistry(non_int_type=Decimal)


def _factor_and_offset(pint_name: str) -> tuple[float, float]:
    one = _registry.Quantity(Decimal(1), pint_name).to_base_units().magnitude
    zero = _registry.Quantity(Decimal(0), pint_name).to_base_units().magnitude
    return float(one - zero), float(zero)


def _calculator_modules() -> tuple[str, ...]:
    """Return the names of the modules of this folder that declare a CALCULATOR."""
    folder = os.path.dirname(os.path.abspath(__file__))
    names = []
    for name in sorted(os.listdir(folder)):
        if name.endswith(".py"):
            with open(os.path.join(folder, name), encoding="utf-8") as handle:
                if "\nCALCULATOR = " in handle.read():
                    names.append(name[:-3])
    return tuple(names)


# (unit, factor, offset): coherent SI = value * factor + offset
FACTORS = tuple((name, *_factor_and_offset(pint_name)) for name, pint_name in UNITS)
CALCULATOR_MODULES = _calculator_modules()
