"""Where the choice of a process comes from, and the standing of each source."""

from calculators.contract import Source
from calculators.process_case import Case

WIND = Source("AWS D1.1: at most 5 mph [8 km/h] of wind at a gas-shielded weld, as quoted", "standard")
WORDS = Source("US National Weather Service, Beaufort scale: 4 to 7 mph is felt on the face", "published")
CLASSES = Source(
    "AWS A5.20, classes of flux-cored wire: position, gas, polarity, passes, as in a textbook (table 23-2)", "standard"
)
CORED = Source("Modern Welding (textbook, 2020), figure 8-20: flux-cored wire with gas", "published")
RODS = Source(
    "Machinery's Handbook, 31st edition, pages 1593 and 1594: rods, polarity, diameter and current", "published"
)
DRY = Source("AWS D1.1:2015, 5.3.2.1 and 5.3.2.2: low-hydrogen rods, as reproduced", "standard")
HOURS = Source("Hours of low-hydrogen rods in the air: 4, with R 9 (AWS D1.1, table 5.1)", "from memory")
NOT_PREQUALIFIED = Source(
    "The Fabricator, Short-circuit MIG not prequalified in AWS D1.1? (2014): that, and sheet by D1.3", "published"
)
SINGLE_PASS = Source("AWS D1.1: no prequalified procedure for single-pass classes of cored wire", "from memory")
ZINC = Source("American Galvanizers Association, Welding galvanized steel: zinc off, after AWS D19.0", "published")
PUSH = Source("FenderBender, The Aluminum Age: push feed, about 10 ft of liner", "published")
FLOW = Source("Beyer and others, Sci. Technol. Weld. Join. (2013): 15 to 20 L/min usual, 12 enough", "published")
METAL_CORED = Source("AWS A5.18, E70C-6M, as in AWS D1.1:2020, annex M", "standard")
ALUMINUM_RODS = Source("AWS A5.3, covered aluminum rods", "standard")
PRACTICE = Source(
    "Thickness, positions, gun length, tip to work, rolls and gun angle of each process", "common practice"
)

ALL = (
    WIND,
    WORDS,
    CLASSES,
    CORED,
    RODS,
    DRY,
    HOURS,
    NOT_PREQUALIFIED,
    SINGLE_PASS,
    ZINC,
    PUSH,
    FLOW,
    METAL_CORED,
    ALUMINUM_RODS,
    PRACTICE,
)


class Sources:
    """`found` are the sources behind one answer: what it shows are the tables of `shown` and of the rod."""

    def __init__(self, case: Case, shown: tuple[str, ...], rod: str) -> None:
        reasons = [reason for suit in case.ranked for _, reason, _ in suit.against]
        gas_cored = "flux-cored-gas-shielded" in shown
        self_shielded = "flux-cored-self-shielded" in shown
        wanted = (
            (WIND, True),
            (WORDS, not case.given.has("wind_speed")),
            (CLASSES, gas_cored or self_shielded or "t8" in reasons or "runs-uphill" in reasons),
            (CORED, gas_cored and case.metal == "mild-steel"),
            (RODS, rod in ("e6010", "e6013", "e7018")),
            (DRY, rod == "e7018"),
            (HOURS, rod == "e7018"),
            (NOT_PREQUALIFIED, "not-prequalified" in reasons),
            (SINGLE_PASS, self_shielded and case.structural),
            (ZINC, "galvanized" in reasons),
            (PUSH, "push-limit" in reasons or "pulse-spool-gun" in reasons),
            (FLOW, bool(shown) and case.metal != "aluminum"),
            (METAL_CORED, "metal-cored" in shown),
            (ALUMINUM_RODS, "aluminum-rod" in reasons),
            (PRACTICE, True),
        )
        self.found = tuple([source for source, is_wanted in wanted if is_wanted])
