"""What several tests share."""

import sys
from collections.abc import Iterator

import pytest
from hypothesis import settings

from calculators import made
from calculators.contract import Calculator
from tests import specimen as specimen_module
from webapp import shelf

# A deadline measures the machine, not the code; tests/bench measures speed.
settings.register_profile("no deadline", deadline=None)
settings.load_profile("no deadline")


LONG = ("browser", "parity", "faults")


def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """Put the folders whose files take long first: files go to the cores whole, and a long one must not be the last."""
    items.sort(key=lambda item: item.path.parent.name not in LONG)


@pytest.fixture(scope="module")
def specimen() -> Iterator[Calculator]:
    """The calculator with every kind of field and answer, on the shelf until the module's tests are done."""
    with pytest.MonkeyPatch.context() as patch:
        patch.setitem(sys.modules, "calculators.specimen", specimen_module)
        patch.setitem(shelf._loaded, "specimen", specimen_module.CALCULATOR)
        patch.setattr(made, "CALCULATOR_MODULES", (*made.CALCULATOR_MODULES, "specimen"))
        yield specimen_module.CALCULATOR
