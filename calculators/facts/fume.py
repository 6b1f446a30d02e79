"""Fume and the metals in it for each kilogram of wire or rod burned, the limits they have, and what law asks of a room.

Emission factors: US EPA, AP-42, section 12.19 (January 1995), tables 12.19-1 (fume, as PM10) and 12.19-2 (metals).
The tables themselves were not read. Fume: from memory; the gas metal arc and flux-cored values seen repeated in a
public list. Metals: E70S, 308, 316, E7018 and E6010 seen in permit sheets of a state agency (Oregon DEQ); the others
from memory. Standing: published, with these reservations.

The heading of table 12.19-2 is 10^-1 g/kg: what is printed is ten times the grams. One of those permit sheets missed it and
has the manganese of E70S at 3.2 g/kg, which would be six tenths of all its fume.
"""

_INCH = 0.0254
_FOOT = 12.0 * _INCH

GRAMS = 1.0e-3  # [kg/kg] for each g/kg printed in table 12.19-1
TENTHS = 1.0e-4  # [kg/kg] for each 10^-1 g/kg printed in table 12.19-2

# As printed: (consumable, fume [g/kg], manganese, chromium(VI), nickel [10^-1 g/kg]; None where the table has none).
# Of two stainless grades the higher of each. E6013: manganese from memory. The nickel of steel wire and rods, 0.01 to
# 0.05 there, is left out: of its strictest limit it is less than a hundredth of what manganese is of its own.
PRINTED = (
    ("solid-steel", 5.2, 3.18, None, None),
    ("solid-stainless", 5.4, 3.46, 0.10, 2.26),
    ("solid-aluminum", 24.1, None, None, None),
    ("cored-steel", 12.2, 6.62, None, None),
    ("cored-stainless", 9.1, 5.90, 1.40, 0.93),
    ("stick-7018", 18.4, 10.3, None, None),
    ("stick-6010", 25.6, 9.91, 0.01, None),
    ("stick-6011", 38.4, 9.98, None, None),
    ("stick-6013", 19.7, 9.45, None, None),
    ("stick-stainless", 10.8, 5.44, 3.59, 0.55),
)
# Current, gas and transfer move these factors: a third to three times. From memory. A pipefitter's stick work in the
# field came out considerably below the laboratory (J. Occup. Environ. Hyg. 6 (2009) 298; abstract seen).
SCATTER = 3.0

# The face sees more than the room's mean: 2 to 10 times. Standing: common practice.
FACE_LOW, FACE_HIGH = 2.0, 10.0

# Zinc: ASTM A653 G90, 275 g/m2 on both faces; standard, seen quoted. Hot-dip: about 600 g/m2 a face (85 um); from
# memory. How wide the arc burns it off, and that all of it smokes: from memory, no published number found.
ZINC_A_FACE = (("galvanized-sheet", 0.1375), ("galvanized-hot-dip", 0.6))  # [kg/m2]
BURNT_WIDTH = 0.010  # [m] on each face
ZINC_OXIDE = 81.38 / 65.38  # by molar masses

# mg/m3 in kg/m3.
_MG = 1.0e-6
# (limit, substance, [kg/m3], whether it is of a whole day, whether it is law)
# OSHA: 29 CFR 1910.1000 table Z-1 and 1910.1026 (chromium(VI), seen); manganese, zinc oxide and nickel as OSHA's
# own pages give them, seen; NIOSH and ACGIH values for manganese and zinc oxide seen on those pages, chromium(VI) in
# NIOSH 2013-128, seen quoted; nickel 0.015: seen quoted. Dust: from memory.
LIMITS = (
    ("manganese-osha", "manganese", 5.0 * _MG, False, True),
    ("manganese-niosh", "manganese", 1.0 * _MG, True, False),
    ("manganese-acgih", "manganese", 0.02 * _MG, True, False),
    ("chromium-osha", "chromium_six", 0.005 * _MG, True, True),
    ("chromium-niosh", "chromium_six", 0.0002 * _MG, True, False),
    ("nickel-osha", "nickel", 1.0 * _MG, True, True),
    ("nickel-niosh", "nickel", 0.015 * _MG, True, False),
    ("zinc-osha", "zinc_oxide", 5.0 * _MG, True, True),
    ("zinc-short", "zinc_oxide", 10.0 * _MG, False, False),
    ("zinc-acgih", "zinc_oxide", 2.0 * _MG, True, False),
    ("dust-osha", "fume", 15.0 * _MG, True, True),
)
DAY = 8.0 * 3600.0  # [s]

# 29 CFR 1910.252(c)(2): mechanical ventilation where a welder has less, or the ceiling is lower, or in confined spaces;
# law, seen. [m3], [m], [m3/s]
LEAST_SPACE = 10000.0 * _FOOT * _FOOT * _FOOT
LEAST_CEILING = 16.0 * _FOOT
LEAST_AIR = 2000.0 * _FOOT * _FOOT * _FOOT / 60.0

PACE = 2.5 * _FOOT  # common practice
MOST_BURNED = 30.0 / 3600.0  # [kg/s]; no hand-held arc burns more; common practice
