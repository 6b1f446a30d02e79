"""Preheat: rows of a code, highest temperatures by metal, and what is taken where the welder does not know.

Units as published (inch and degF, or mL/100 g). Standing is written beside each table. "From memory": the
source is named but was not open when the number was written.
"""

# Thickest part at the weld, [in]: each row of the code's table reaches up to here, the last one without end.
# The code prints 20, 38 and 65 mm for these in its metric column; in between, the inches ask for more.
THICKNESS_ENDS = (0.75, 1.5, 2.5)
THICKNESS_ENDS_METRIC = (20.0, 38.0, 65.0)  # mm
THINNEST_IN_CODE = 0.125  # in; thinner is sheet, which has its own code

# Least preheat and interpass temperature by row, [degF].
#
# a: AWS D1.1/D1.1M:2015, table 3.3, category A (shielded metal arc, other than low hydrogen).
# b: the same, category B (low-hydrogen stick, submerged, gas metal and flux-cored arc). Both seen as reproduced,
#   and equal to US Army Corps of Engineers TI 809-26 (2000), table 3-1 (seen). Standard.
# c: the same, category C; from memory.
# q: AWS D1.1:2015, table 4.9, A514, A517 and A709 grades 100; from memory.
CODE_ROWS = (
    ("a", (32.0, 150.0, 225.0, 300.0)),
    ("b", (32.0, 50.0, 150.0, 225.0)),
    ("c", (50.0, 150.0, 225.0, 300.0)),
    ("q", (50.0, 125.0, 175.0, 225.0)),
)
# (grades, process is low hydrogen) -> row; a pair that is not here stands in no row.
ROW_OF = (
    ("a36-group", False, "a"),
    ("a36-group", True, "b"),
    ("a572-50-group", True, "b"),
    ("a572-65-group", True, "c"),
    ("quenched-tempered", True, "q"),
)

# Diffusible hydrogen taken when it is not given, [mL/100 g]: the most that the process is usually classed for.
# Solid wire: EN 1011-2:2001, C.2.2.2, scale D (3 to 5). All others: AWS H16, the most that still counts as low
# hydrogen. Both from memory. Sticks that are not low hydrogen give more than the method holds for.
HYDROGEN_OF_PROCESS = (
    ("gas-metal-arc", 5.0),
    ("flux-cored-arc", 16.0),
    ("low-hydrogen-stick", 16.0),
    ("submerged-arc", 16.0),
)

# Highest preheat and interpass temperature where the heat itself spoils the metal, [degF].
#
# quenched-tempered, wear-plate: about 200 degC (the maker's data sheet decides; AWS D1.1 and D1.5 print 400 degF
#   for A514 up to 1-1/2 in): from memory.
# manganese: about 260 degC, above which carbides make it brittle: from memory. That it is usually not preheated
#   is printed by NIMI (below).
# stainless: US Navy S9074-AR-GIB-010/278, table IV, group S-8, 350 degF; seen. Standard.
# aluminum-heat-treated: Practical Welding Today, "Aluminum Workshop: Preheating aluminum", 250 degF; seen. Published.
# aluminum-magnesium: the same column, 150 degF for long times; US Navy S9074-AR-GIB-010/278, table V: for 5086 and
#   5456 keep out of 150 to 400 degF (seen). Standard.
HIGHEST = (
    ("quenched-tempered", 392.0),
    ("wear-plate", 392.0),
    ("manganese", 500.0),
    ("stainless", 350.0),
    ("aluminum-heat-treated", 250.0),
    ("aluminum-magnesium", 150.0),
)
# US Navy S9074-AR-GIB-010/278, table IV, seen: quenched and tempered carbon steel (S-2), highest interpass; carbon
# steel (S-1) above 0.30 % carbon and 1 in, and chromium-molybdenum steel (S-4), least preheat. [degF]. Standard.
NAVY_QUENCHED_TEMPERED_HIGHEST = 300.0
NAVY_CARBON_LEAST = 175.0
NAVY_CHROMIUM_MOLYBDENUM_LEAST = 250.0

# Where preheat meddles with the alloy itself, [degF]: the ageing that gave a heat-treated alloy its strength (Practical
# Welding Today, the same column; seen), and the range the Navy names for 5086 and 5456 (seen).
AGEING = (325.0, 400.0)
SENSITIZING = (150.0, 400.0)

# Plain carbon steel by carbon: up to [mass %], from [degF], to [degF]. NIMI (Directorate General of Training,
# India), Welder (CITS) Trade Theory, p. 169, "Preheating temperatures for plain and alloy steels"; seen. Published.
# Its first row reads "up to 200"; its row for 12 % manganese steel "usually not required".
BY_CARBON = (
    (0.20, None, 200.0),
    (0.30, 200.0, 300.0),
    (0.45, 300.0, 500.0),
    (0.80, 500.0, 800.0),
)

# What widely copied shop charts ask for chromium-molybdenum grades: grade, from, to [degF]. Two copies seen, their
# origin not known; shop practice as remembered is lower (400 to 600 degF for 4140). Common practice.
SHOP_CHARTS = (
    ("4140", 600.0, 800.0),
    ("4340", 700.0, 900.0),
)

# A steel that nobody knows, but a magnet sticks to: warm enough for carbon up to 0.45 % by the table above, and not
# hotter than spoils quenched and tempered plate. [degF]. Our own choice, between two published limits.
UNKNOWN_LEAST, UNKNOWN_HIGHEST = 300.0, 392.0

# AWS D1.1, table 3.3, footnote a: base metal below 32 degF is first warmed to 70 degF and kept there; from memory.
FREEZING, WARMED = 32.0, 70.0

# AWS D1.1:2015, 5.6: heated and measured for the thickness of the thickest part around the weld, and at least
# 3 in; quoted in full by a published page (seen). Standard.
LEAST_DISTANCE = 3.0  # in
