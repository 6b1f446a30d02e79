"""What the reading of a filler's name stands on, by system."""

from calculators.contract import Source

_BY_SYSTEM = (
    ("A5.1", Source("AWS A5.1: covered electrodes for carbon steel", "from memory")),
    ("A5.5", Source("US Army Corps of Engineers, TI 809-26 (2000), table C-2: how AWS A5.5 names electrodes", "published")),
    ("A5.5", Source("AWS A5.5: which suffix goes with which strength, and yield", "from memory")),
    ("A5.18", Source("AWS A5.18:2005, tables 1 and 3, as SFA-5.18 (2007)", "standard")),
    ("A5.20", Source("AWS D1.1/D1.1M:2020, table M.1: strength and toughness of AWS A5.20 classes; seen reproduced", "standard")),
    ("A5.20", Source("AWS A5.20: polarity, passes, J, D and Q", "from memory")),
    ("A5.28", Source("AWS A5.28: low-alloy wire for gas-shielded welding", "from memory")),
    ("A5.29", Source("AWS A5.29: low-alloy cored wire", "from memory")),
    ("ISO 14341-A", Source("ISO 14341, tables 1A, 2 and 3A", "standard")),
    ("ISO 14341-B", Source("ISO 14341, system B", "from memory")),
    ("ISO", Source("ISO 14175:2008, table 2: groups of shielding gas", "from memory")),
    ("A5.4", Source("AWS A5.4: covered electrodes for stainless", "from memory")),
    ("A5.9", Source("AWS A5.9: bare wire and rods for stainless", "from memory")),
    ("A5.10", Source("AWS A5.10: bare wire and rods for aluminum", "from memory")),
    ("A5.15", Source("AWS A5.15: fillers for cast iron", "from memory")),
    ("A5.21", Source("AWS A5.21:2001 as SFA-5.21: iron-chromium classes; the others from memory", "standard")),
    ("deoxidizers", Source("What the deoxidizers do for rust and mill scale", "common practice")),
)  # fmt: skip
ALL = tuple([source for _, source in _BY_SYSTEM])


def _named(system: str, systems: list[str]) -> bool:
    if system == "ISO":
        return any(each[0] == "I" for each in systems)
    if system == "deoxidizers":
        return any(each == "A5.18" or each[0] == "I" for each in systems)
    return system in systems


class Sources:
    """The sources of some systems."""

    def __init__(self, systems: list[str]) -> None:
        self.sources = tuple([source for system, source in _BY_SYSTEM if _named(system, systems)])
