"""Solid wires: how fast they melt, the currents they are run at, how they lie on a spool.

Coherent SI (m, s, A, kg). A wire is found by its material and filler alloy; an empty alloy means "not known".
Standing is written beside each table. "From memory": the source is named but was not open when the number was
written, so a second route is named with it.
"""

# Melting: wire feed = arc_coefficient * I + resistance_coefficient * L * I * I, written for this diameter.
# Other diameters follow from the cross-section (melting_rate.scaled_coefficients).
REFERENCE_DIAMETER = 1.2e-3

# Mild steel: 0.30 mm/(A s), 5.0e-5 1/(A^2 s). Amin (1983), in Norrish, Advanced Welding Processes;
#   from memory. Second routes: a measured pair from a thesis, a second fitted pair of coefficients, the shop
#   rules. Band 15 %: the spread of those routes.
# Stainless: from memory, low confidence. The literature values remembered are 0.25 to 0.30 and 8e-5 to 1e-4;
#   an energy balance from the mild-steel line gives 0.31 and 5e-5 to 6e-5; and 0.035 in wire, published as
#   running in spray at 255 A, could not reach that with more than about 6e-5: 10 mm of stick-out would make
#   more heat than the arc. The line lies between them. Band 25 %: it holds them all.
# Aluminum: 0.75 mm/(A s) for 4043 and 5356 together; source as for mild steel; from memory. No resistance
#   term: Ramgopal and Mendez ("Deposition rate in GMAW of ER1100 and ER5183 Aluminum Alloys", CANWELD 2023;
#   published, abstract seen) found the heating of the stick-out two orders of magnitude too small to explain
#   the feed of magnesium alloys, which melt faster. Splitting the alloys by 13 % is common practice (10 to
#   15 %). Band 20 %; 28 % where the alloy is not known, which holds both.
#
# (wire material, filler alloy, arc coefficient [m/(A s)], resistance coefficient [1/(A^2 s)], half-band [-])
MELTING = (
    ("mild-steel", "", 0.30e-3, 5.0e-5, 0.15),
    ("stainless", "", 0.29e-3, 6.0e-5, 0.25),
    ("aluminum", "", 0.75e-3, 0.0, 0.28),
    ("aluminum", "4043", 0.71e-3, 0.0, 0.20),
    ("aluminum", "5356", 0.80e-3, 0.0, 0.20),
    ("aluminum", "5183", 0.80e-3, 0.0, 0.20),
)

# Currents the law may be asked about, read straight between the rows.
#
# Mild steel: the lowest of 0.030, 0.035 and 0.045 in are the optimum short-circuit ranges of AWS C5.6; from
#   memory; that of 1.2 mm is a measured pair (102 A, wire size inferred; published, excerpt seen). The
#   highest, and the rows of 0.023 and 1/16 in: common practice.
# Stainless: Modern Welding (textbook, 2020), figures 8-16 and 8-17, from the lowest short-circuit to the
#   highest spray current; published, seen. No 0.6 mm wire there, so none here.
# Aluminum: NAVEDTRA 14119 (US Navy training manual), table 10-11, and Modern Welding (2020), figure 8-18, in
#   argon: the wider of the two; published, seen. No 0.6 mm wire.
#
# (wire material, ((wire diameter [m], lowest [A], highest [A]), ...))
CURRENT_RANGES = (
    (
        "mild-steel",
        (
            (0.5842e-3, 30.0, 120.0),
            (0.762e-3, 50.0, 200.0),
            (0.889e-3, 75.0, 255.0),
            (1.143e-3, 100.0, 350.0),
            (1.2e-3, 100.0, 360.0),
            (1.5875e-3, 160.0, 450.0),
        ),
    ),
    (
        "stainless",
        (
            (0.762e-3, 50.0, 210.0),
            (0.889e-3, 65.0, 255.0),
            (1.143e-3, 100.0, 300.0),
            (1.5875e-3, 215.0, 325.0),
        ),
    ),
    ("aluminum", ((0.762e-3, 75.0, 150.0), (1.190625e-3, 120.0, 210.0), (1.5875e-3, 160.0, 300.0))),
)
# Beyond the end rows, so that 1.6 mm stands for 1/16 in and 0.75 mm for 0.030 in.
DIAMETER_SLACK = 0.02

# Arc length to assume between wire tip and work. Common practice; the one published figure found, a
# comparison of 1.2 mm cored wires in Soldagem & Inspecao (abstract seen), held 3.5 mm. An error of 2 mm moves
# the feed by about 5 % at ordinary settings, which the melting bands hold.
ARC_LENGTHS = (("short-circuit", 2.0e-3), ("spray", 5.0e-3), ("not-known", 3.0e-3))

# Contact tip to work where nobody measured it: what is usual (10 to 12 mm in short-circuit, about 19 mm in spray)
# and how far from it a hand may be. Common practice. (transfer, shortest, usual, longest [m])
USUAL_DISTANCES = (
    ("short-circuit", 8.0e-3, 11.0e-3, 15.0e-3),
    ("spray", 13.0e-3, 19.0e-3, 25.0e-3),
    ("not-known", 8.0e-3, 13.0e-3, 25.0e-3),
)

# How long to run wire out when a feed is measured; common practice: six seconds, since times ten is a minute. [s]
RUN_OUT_TIME = 6.0

# Shop rule: 1 A per 0.001 in of steel, up to about 1/4 in; common practice, good to about 25 %. [A/m]
CURRENT_PER_THICKNESS = 1.0 / 25.4e-6
CURRENT_PER_THICKNESS_BAND = 0.25

# Shop rule: burn-off of steel wire in short-circuit, 3.5, 2.0, 1.6 and 1.0 in/min per A for 0.023 (0.6 mm),
# 0.030, 0.035 and 0.045 in; common practice, good to about 15 %. 1 in/min is 0.0254/60 m/s.
# (wire diameter [m], feed per current [m/(A s)])
BURN_OFF = (
    (0.6e-3, 3.5 * 0.0254 / 60.0),
    (0.762e-3, 2.0 * 0.0254 / 60.0),
    (0.889e-3, 1.6 * 0.0254 / 60.0),
    (1.143e-3, 1.0 * 0.0254 / 60.0),
)
BURN_OFF_BAND = 0.15
BURN_OFF_SLACK = 0.07  # takes 0.8 mm for 0.030 in and 1.2 mm for 0.045 in, and no size between two of them

# Half-band of a length from a mass. 0.045 in wire may be 0.001 in over or under (AWS A5.18 / A5.02; from
# memory): 4.4 % of the cross-section; the rest is density.
LENGTH_BAND = 0.05
# Trimmed ends, starts, wire left between rolls and contact tip: 3 to 5 % in field work; common practice.
WASTE = 0.05

# Half-band of how deep the wire lies below the rim, read with a rule over a winding that is never level; common
# practice. [m]
DEPTH_BAND = 2.0e-3
# Arc time over clock time in repair work; common practice.
OPERATING_FACTOR = 0.15

# Share of the wound space that is metal; from memory. Geometry bounds it: square lay pi/4 = 0.785, nested lay
# pi/sqrt(12) = 0.907. (how it is wound, low, middle, high)
PACKINGS = (
    ("random", 0.70, 0.75, 0.80),
    ("layer", 0.78, 0.815, 0.85),
    ("not-known", 0.70, 0.775, 0.85),
)
