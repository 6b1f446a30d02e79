"""Where a setting starts: current by thickness, how far a wire is stretched, one pass, hand travel, gas flow.

Coherent SI (m, m/s, m3/s, A, J/m). Standing is written beside each table. "From memory": the source is named but was
not open when the number was written.
"""

_INCH = 0.0254
_IN_PER_MIN = _INCH / 60.0
_FT3_PER_H = 0.3048 * 0.3048 * 0.3048 / 3600.0

WIRE_DIAMETER = 0.035 * _INCH  # what most trucks carry; common practice

# Current over that of mild steel, which is 1 A for each 0.001 in up to 1/4 in. Stainless 10 to 20 % less, since it
# holds its heat; aluminum the same; both common practice, no published figure found. Second route for aluminum:
# NAVEDTRA 14119 (US Navy, seen) runs 1/2 in plate at 210 to 250 A, and the rule ends at 250 A.
CURRENT_SHARES = (("mild-steel", 1.0), ("stainless", 0.85), ("aluminum", 1.0))
# Uphill and overhead about a tenth less; common practice. Second route: the short-circuit tops of AWS C5.6 are 14 to
# 22 % lower there (from memory).
UPHILL_SHARE = 0.9
UPHILL = ("vertical-up", "overhead")
THICKEST_BY_RULE = 0.25 * _INCH

# The least a wire carries over what the metal wants, and the most: beyond the first a doubt, beyond the second a
# refusal. Common practice, set so that 0.035 in wire starts at 16 gauge and is coaxed to 18, 0.030 in to 20, 0.023 in
# to 24, 0.045 in to 14.
HOT, TOO_HOT = 1.3, 1.58
COLD, TOO_COLD = 0.75, 0.6
ROOM = 1.1  # a setting leaves about a tenth of current to try, where wire and machine have it; common practice

# Largest fillet laid in one pass. AWS D1.1/D1.1M:2020, table 5.1, gas metal arc other than short-circuit; standard,
# seen reproduced. Short-circuit: common practice, the code has no number. (position, leg [m])
ONE_PASS = (
    ("flat", 0.5 * _INCH),
    ("horizontal", 0.375 * _INCH),
    ("vertical-up", 0.5 * _INCH),
    ("vertical-down", 0.5 * _INCH),
    ("overhead", 0.3125 * _INCH),
)
ONE_PASS_SHORT_CIRCUIT = 0.25 * _INCH
LEG_BY_THICKNESS = 0.25 * _INCH  # a leg as thick as the thinner metal, up to here; common practice

# Travel that a hand holds: slower, the puddle runs ahead of the arc; faster, the bead breaks up. Common practice.
SLOWEST = (("vertical-up", 4.0 * _IN_PER_MIN),)
SLOWEST_ELSE = 7.0 * _IN_PER_MIN
# (metal, transfer or position, travel [m/s]); the first that fits
FASTEST = (
    ("aluminum", 30.0 * _IN_PER_MIN),
    ("vertical-up", 10.0 * _IN_PER_MIN),
    ("spray", 25.0 * _IN_PER_MIN),
    ("vertical-down", 25.0 * _IN_PER_MIN),
)
FASTEST_ELSE = 20.0 * _IN_PER_MIN

MOST_ARC_ENERGY = 2.5e6  # of one pass by hand; common practice, as a cross-check. [J/m]

# Fit-up taken where it is not given; common practice.
BUTT_GAP = 0.0625 * _INCH  # half the thickness, at most this
BUTT_CAP = 0.0625 * _INCH
BUTT_WIDER = 2.0e-3  # a bead is this much wider than gap and thickness together
CAP_SHARE = 0.2  # height over width of a cap
THICKEST_SQUARE_BUTT = 0.25 * _INCH
SQUARE_BUTT_IN_DOUBT = 0.125 * _INCH
V_GAP, V_FACE, V_ANGLE = 0.09375 * _INCH, 0.0625 * _INCH, 60.0 * 3.141592653589793 / 180.0
THINNEST_V = 0.1875 * _INCH

# Gas flow on a usual nozzle (lowest, to set, highest). Beyer and others, Sci. Technol. Weld. Join. (2013; published,
# abstract seen): 15 to 20 L/min is specified, 12 proved enough. Aluminum: NAVEDTRA 14119 (published, seen) has 50 ft3/h
# on 1/2 in. Helium is light and needs more; from memory.
FLOWS = (
    ("short-circuit", 25.0 * _FT3_PER_H, 30.0 * _FT3_PER_H, 40.0 * _FT3_PER_H),
    ("globular", 30.0 * _FT3_PER_H, 35.0 * _FT3_PER_H, 40.0 * _FT3_PER_H),
    ("spray", 30.0 * _FT3_PER_H, 35.0 * _FT3_PER_H, 40.0 * _FT3_PER_H),
    ("aluminum", 30.0 * _FT3_PER_H, 40.0 * _FT3_PER_H, 50.0 * _FT3_PER_H),
    ("helium-mix", 35.0 * _FT3_PER_H, 40.0 * _FT3_PER_H, 50.0 * _FT3_PER_H),
)

# The wires a truck may carry, for naming a nearest one.
WIRES = (0.023 * _INCH, 0.030 * _INCH, 0.035 * _INCH, 0.045 * _INCH, 0.0625 * _INCH)

# Filler taken on 5083, 5086 and 5456 where none is told: Mathers, The welding of aluminium and its alloys, table 3.3, has
# 5356 and 5183 (published, seen); that 5556 serves too: from memory. Most trucks with aluminum carry 5356; common
# practice.
MAGNESIUM_FILLER = "5356"

CODE_STARTS = 0.125 * _INCH  # AWS D1.1 is meant for thicker steel, D1.3 for sheet; standard, seen quoted
