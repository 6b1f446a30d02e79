"""What the reading of a filler's name stands on, by system."""

from calculators.contract import Source

_MEMORY = Source("AWS A5.1, A5.4, A5.9, A5.10, A5.15, A5.28, A5.29 and ISO 14341 system B", "from memory")
_BY_SYSTEM = (
    ("A5.5", Source("US Army Corps of Engineers, TI 809-26 (2000), table C-2: AWS A5.5; which suffix, and yield: from memory", "published")),
    ("A5.18", Source("AWS A5.18:2005, tables 1 and 3, as SFA-5.18 (2007)", "standard")),
    ("A5.20", Source("AWS D1.1/D1.1M:2020, table M.1: AWS A5.20; polarity, passes, J, D, Q: from memory", "standard")),
    ("ISO 14341-A", Source("ISO 14341, tables 1A, 2 and 3A; gases from memory", "standard")),
    ("A5.21", Source("AWS A5.21:2001 as SFA-5.21: iron-chromium classes; the others from memory", "standard")),
)  # fmt: skip
ALL = tuple([source for _, source in _BY_SYSTEM]) + (_MEMORY,)


class Sources:
    """The sources of some systems."""

    def __init__(self, systems: list[str]) -> None:
        held = dict(_BY_SYSTEM)
        found = [source for system, source in _BY_SYSTEM if system in systems]
        if not all(system in held for system in systems):
            found.append(_MEMORY)
        self.sources = tuple(found)
