"""Where the causes of a fault come from, and the standing of each source; the keys are those of facts/faults.py."""

from calculators import arc_sources as from_
from calculators.contract import Source

OF = (
    (
        "handbook",
        Source("GMAW/FCAW Handbook (2018), pages 76 and 155: stick-out, burn-through, craters, cracks", "published"),
    ),
    ("gmaw", Source("Gas Metal Arc Welding Handbook (2008), chapter 3: work clamp, roll tension", "published")),
    ("forehand", Source("Welding Fundamentals (2017), figure 17-6: pushed or dragged", "published")),
    (
        "navy",
        Source("NAVEDTRA 14119 (US Navy), chapter 10: porosity, poor fusion, arc blow; excerpts seen", "published"),
    ),
    ("army", Source("US Army TM 9-2350-247-20-3, aluminum: angle, cleaning, nozzle distance", "published")),
    ("crater", Source("Pipe Welding (Lake Washington Institute of Technology, 2024), crater cracks", "published")),
    ("cracking", Source("TWI Job Knowledge 44: cracks along the middle; excerpt seen", "published")),
    ("wind", Source("AWS D1.1: at most 5 mph [8 km/h] of wind; seen quoted", "standard")),
    ("frost", Source("US Army TC 9-237 (1993): 25 ft³/h from one carbon dioxide cylinder", "published")),
    ("leads", from_.LEADS),
    ("memory", Source("Trouble tables of welding textbooks", "from memory")),
    ("practice", Source("Order of the causes, and causes and steps not named above", "common practice")),
)
LINES = (from_.LINES, from_.SHORT_CIRCUIT, from_.TRANSITIONS, from_.MODERN_WELDING)
MELTING = Source("Melting law of solid wire, see Wire feed and current", "from memory")
AMPERES = Source("1 A for each 0.001 in of metal; stick-out; 1 L/min for each mm of nozzle bore", "common practice")
ALL = tuple([source for _, source in OF]) + LINES + (MELTING, AMPERES)
