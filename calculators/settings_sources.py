"""What a setting stands on."""

from calculators import arc_sources as from_
from calculators.contract import Source

AMPERES = Source(
    "1 A for each 0.001 in up to 1/4 in; 15 % less on stainless, 10 % less uphill and overhead; how far a wire is stretched",
    "common practice",
)
MELTING = Source(
    "Lesnewich, 1958, and Amin, 1983, in Norrish, Advanced Welding Processes: wire feed by current and stick-out",
    "from memory",
)
ONE_PASS = Source("AWS D1.1/D1.1M:2020, table 5.1: largest fillet in one pass; seen reproduced", "standard")
LEAST_LEG = Source("ANSI/AISC 360, table J2.4: smallest fillet", "standard")
BALANCE = Source("Conservation of mass: the wire fed in is the bead laid down and what spatters", "law")
HAND = Source("Stick-out, fit-up and the travel that a hand holds", "common practice")
FLOW = Source("Beyer and others, Sci. Technol. Weld. Join., 2013, abstract: gas flow", "published")
NAVY = Source("NAVEDTRA 14119, US Navy, chapter 10: aluminum, gas flow and current", "published")
HEAT = Source("EN 1011-1 and ISO/TR 17671-1, as tabulated by TWI: heat input = 0.8 × arc energy", "standard")
WIND = Source("AWS D1.1: gas-shielded welding in at most 5 mph (8 km/h) of wind; seen quoted", "standard")
MATHERS = Source(
    "Mathers, The welding of aluminium and its alloys, p. 49: no silicon filler on more than 2 % magnesium", "published"
)
ZINC = Source(
    "AWS D19.0, in American Galvanizers Association, Welding galvanized steel: how far zinc comes off", "published"
)
CHROMIUM = Source("29 CFR 1910.1026: hexavalent chromium", "law")

_ALWAYS = (AMPERES, MELTING, BALANCE, HAND, ONE_PASS, LEAST_LEG, FLOW, HEAT, WIND, from_.API_577)
_STEEL = (from_.LINES, from_.SHORT_CIRCUIT, from_.TRANSITIONS, from_.PONOMAREV, from_.SHEET_CODE, ZINC)
_STAINLESS = (from_.MODERN_WELDING, from_.LINES, from_.TRANSITIONS, CHROMIUM)
_ALUMINUM = (from_.MODERN_WELDING, from_.TRANSITIONS, NAVY, MATHERS)
ALL = _ALWAYS + _STEEL + (from_.MODERN_WELDING, CHROMIUM, NAVY, MATHERS)

# What a setting of each metal stands on.
OF = {"mild-steel": _ALWAYS + _STEEL, "stainless": _ALWAYS + _STAINLESS, "aluminum": _ALWAYS + _ALUMINUM}
