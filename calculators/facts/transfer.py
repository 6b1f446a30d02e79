"""How metal crosses the arc: the currents and voltages at which each mode is run, and where it serves.

Coherent SI (m, A, V); carbon dioxide as a share of the gas. Standing is written beside each table. "From memory":
the source is named but was not open when the number was written.
"""

from calculators.facts import usual_wire

# Current at which drops become finer than the wire: axial spray begins. About 19 mm of stick-out; more lowers it.
#
# AWS Welding Handbook, volume 2, gas metal arc chapter: mild steel in argon with 2 % oxygen, stainless with 1 %,
#   aluminum in argon; from memory. Second route: Ponomarev and Slivinsky, "MIG/MAG spray and streaming metal
#   transfer modes" (lecture, NTUU KPI and UFU; published, seen): 1.0 mm mild steel with 2 % oxygen turns at 190 A;
#   stainless 0.9, 1.0, 1.2, 1.6 mm at 170, 170, 225, 285 A; aluminum 0.8, 1.0, 1.2, 1.6 mm at 90 to 95, 100, 120,
#   170 to 180 A. The lower side of each band reaches down to those. The upper side stands 7 % above the table: no
#   published figure with argon and oxygen or argon alone lies higher, and with up to 10 % carbon dioxide the highest
#   is 6 % above; the lecture shows spray at 197 and 211 A where the table turns at 189, and Modern Welding (2020) runs
#   stainless in spray from 180 A (0.9 mm) and aluminum from 100 A (0.8 mm), 6 and 5 % above it.
#
# (wire material, ((wire diameter [m], transition [A]), ...), band below, band above [-])
TRANSITIONS = (
    (
        "mild-steel",
        ((0.762e-3, 150.0), (0.889e-3, 165.0), (1.143e-3, 220.0), (1.3208e-3, 240.0), (1.5875e-3, 275.0)),
        0.10,
        0.07,
    ),
    ("stainless", ((0.889e-3, 170.0), (1.143e-3, 225.0), (1.5875e-3, 285.0)), 0.13, 0.07),
    ("aluminum", ((0.762e-3, 95.0), (1.190625e-3, 135.0), (1.5875e-3, 180.0)), 0.15, 0.07),
)

# What carbon dioxide in argon does to it, on mild steel. Published figures disagree, and the band holds them:
#   Ponomarev and Slivinsky (seen): 5 %: 140, 180, 240, 280 A and 20 %: 160, 200, 275, 280 A for 0.8, 1.0, 1.2 and
#   1.6 mm; Methong and others, Sci. Technol. Weld. Join. 23 (2018) 87 (abstract seen, wire size not in it): 330 to
#   350 A at 20 %. Between them, from memory: 0.9 mm 175 to 180 A at 10 %, 190 A at 15 %; 1.2 mm 225 to 230 A at
#   8 to 10 %, 250 A at 15 %, 260 to 280 A at 18 to 20 %. Up to 10 % the highest of them is 6 % above the middle; only
#   at 20 % does one lie far above it, and between the two the upper side widens evenly. No published number was found
#   for what stick-out does to it.
# (carbon dioxide, transition over that without [-], band below, band above [-])
CARBON_DIOXIDE_RAISES = (
    (0.0, 1.0, 0.10, 0.07),
    (0.05, 1.0, 0.10, 0.07),
    (0.10, 1.06, 0.12, 0.07),
    (0.20, 1.20, 0.16, 0.30),
)
# Beyond it the arc forces push the drop aside: no axial spray. AWS Welding Handbook: about 80 % argon at least;
# from memory. API RP 577 (seen in a copy) has spray with 98 % argon, and down to 80 %.
MOST_CARBON_DIOXIDE = (("mild-steel", 0.20), ("stainless", 0.05), ("aluminum", 0.0))
# Stainless where the gas is not told: argon with 2 % carbon dioxide. More than 5 % leaves carbon in the weld, which
# then rusts; from memory. Second route: the textbook's ranges of stainless (Modern Welding) are with helium mix or
# argon with up to 5 % oxygen.
STAINLESS_TAKEN = 0.02

# Currents of short-circuit transfer: flat and horizontal, then vertical and overhead.
# Mild steel: AWS C5.6, 0.030, 0.035 and 0.045 in; from memory. 0.023 in: common practice. 1.2 mm is taken as 0.045.
# Stainless: Modern Welding (textbook, 2020), figure 8-16, in 90 % helium; published, seen; no other position there.
# (wire material, ((wire diameter [m], lowest, highest flat, highest vertical or overhead [A]), ...))
SHORT_CIRCUIT = (
    (
        "mild-steel",
        (
            (0.5842e-3, 30.0, 90.0, 80.0),
            (0.762e-3, 50.0, 150.0, 125.0),
            (0.889e-3, 75.0, 175.0, 150.0),
            (1.143e-3, 100.0, 225.0, 175.0),
            (1.2e-3, 100.0, 225.0, 175.0),
        ),
    ),
    (
        "stainless",
        (
            (0.762e-3, 50.0, 145.0, 145.0),
            (0.889e-3, 65.0, 175.0, 175.0),
            (1.143e-3, 100.0, 210.0, 210.0),
            (1.2e-3, 100.0, 210.0, 210.0),
        ),
    ),
)
MOST_SHORT_CIRCUIT = 225.0  # A, of any wire
BEYOND_SHORT_CIRCUIT = 0.15  # how far above its range it may still hold, [-]; common practice

# Voltage between contact tip and work at the current run, where a textbook gives both for each wire: from the low
# corner of its range to the high one. Modern Welding (2020), figures 8-16 (stainless, 90 % helium), 8-17 (stainless,
# argon with oxygen), 8-18 (aluminum, argon) and 8-20 (flux-cored with gas); published, seen.
# (wire material, transfer, ((wire diameter [m], lowest, highest current [A], lowest, highest voltage [V]), ...))
CORNERS = (
    (
        "stainless",
        "short-circuit",
        (
            (0.762e-3, 50.0, 145.0, 17.0, 22.0),
            (0.889e-3, 65.0, 175.0, 17.0, 22.0),
            (1.143e-3, 100.0, 210.0, 17.0, 22.0),
            (1.2e-3, 100.0, 210.0, 17.0, 22.0),
        ),
    ),
    (
        "stainless",
        "spray",
        (
            (0.762e-3, 160.0, 210.0, 24.0, 28.0),
            (0.889e-3, 180.0, 255.0, 24.0, 29.0),
            (1.143e-3, 200.0, 300.0, 24.0, 30.0),
            (1.5875e-3, 215.0, 325.0, 24.0, 32.0),
        ),
    ),
    (
        "aluminum",
        "spray",
        (
            (0.762e-3, 100.0, 150.0, 19.0, 22.0),
            (1.190625e-3, 130.0, 200.0, 22.0, 28.0),
            (1.5875e-3, 160.0, 300.0, 24.0, 30.0),
        ),
    ),
    (
        "mild-steel",
        "flux-cored",
        (
            (0.889e-3, 150.0, 250.0, 26.0, 32.0),
            (1.143e-3, 150.0, 250.0, 24.0, 28.0),
            (1.3208e-3, 200.0, 350.0, 24.0, 28.0),
            (1.5875e-3, 225.0, 375.0, 25.0, 30.0),
        ),
    ),
)

# Voltage lines of steel: a + b * current + c * carbon dioxide. No published line was found for mild steel; what
# holds these, and their standing, common practice:
# Short-circuit with 25 %: 1.3 to 2.2 V below the conventional load line from 60 to 145 A (common practice); a
#   measured pair, 101.9 A at 17.8 V (Brazilian thesis, gas not in the excerpt; published).
# Short-circuit in carbon dioxide: between two shop rules, 16 + 0.04 I (from memory) and 14 + 0.05 I, both ± 2 V.
# Globular in carbon dioxide: between 20 + 0.04 I (from memory) and 16 + 0.05 I, ± 2 V; with 25 %: common practice.
# Spray: through the middles of figure 8-17 for stainless in argon with oxygen, 0.5 V off at most; 0.1 V more for
#   each per cent of carbon dioxide, from memory. That more of it asks for more voltage: Metals 16 (2026) 264,
#   abstract seen; published.
# (transfer, a [V], b [V/A], c [V])
LINES = (
    ("short-circuit", 12.5, 0.04, 3.0),
    ("globular", 16.8, 0.04, 3.0),
    ("spray", 20.0, 0.03, 10.0),
)
# How far from the line a settled arc may be; common practice. (transfer, half-band [V])
HALF_BANDS = (("short-circuit", 1.5), ("globular", 2.5), ("spray", 2.0), ("flux-cored", 2.0))
MORE_IN_CARBON_DIOXIDE = 0.5  # V; the shop rules for carbon dioxide alone give 2 V where a mix has 1.5

# Solid wire is run between these; common practice. [V]
LEAST_VOLTAGE, MOST_VOLTAGE = 12.0, 36.0

# Borders of voltage, each a band this wide: the arc stops shorting above the usual short-circuit voltages; spray begins
# to short below the usual spray voltages. Common practice. [V]
BORDER_WIDTH = 2.0

# Leads: clamp and plugs alone lose 0.3 to 1 V (common practice); cables are sized to lose 4 V at most (AWS Safety and
# Health Fact Sheet 39; published, seen). What to take where nobody knows, [V].
LEADS_LOSE = (0.3, 4.0)
LEADS_TAKEN = 2.0

# Where each serves. Positions: AWS Welding Handbook; from memory. Second route: API RP 577, 4.4 (seen in a copy):
# globular flat and horizontal; spray kept from vertical and overhead by its pool; short-circuit any. Aluminum spray:
# all. Thickness: common practice; short-circuit 24 gauge (0.0239 in) to 1/4 in. API RP 577: spray below 6 mm may be
# difficult.
# (transfer, positions, thinnest, thickest or 0 for no end [m])
LEVEL = ("flat", "horizontal")
EVERY = ("flat", "horizontal", "vertical-up", "vertical-down", "overhead")
SERVES = (
    ("short-circuit", EVERY, 0.6e-3, usual_wire.THICKEST),
    ("globular", LEVEL, 3.0e-3, 0.0),
    ("spray", LEVEL, 3.0e-3, 0.0),
    ("pulse", EVERY, 1.5e-3, 0.0),
)
# From here short-circuit laps cold easily. AWS D1.3 (sheet) ends at 3/16 in; standard, seen quoted.
COLD_LAP_FROM = 4.7625e-3  # m
# No vertical-down above it on structural work; common practice, about 3 mm, here 1/8 in.
VERTICAL_DOWN_THICKEST = 3.175e-3  # m
