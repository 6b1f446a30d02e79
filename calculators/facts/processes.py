"""What each arc process asks of wind, thickness, position and reach, and the covered rods to fall back on.

Coherent SI (m, m/s, A, s). Standing is written beside each table. "From memory": the source is named but was not
open when the number was written.
"""

_INCH = 0.0254
_FOOT = 12.0 * _INCH
_MILE_PER_HOUR = 5280.0 * _FOOT / 3600.0

# AWS D1.1: gas metal arc, gas tungsten arc, electrogas and gas-shielded flux-cored welding only where the wind at the
# weld is at most 5 mph [8 km/h]; standard, seen quoted (Material Welding, Maximum wind velocity). No number for
# self-shielded wire and covered rods.
WIND_LIMIT = 5.0 * _MILE_PER_HOUR
# Wind in words: US National Weather Service, Beaufort scale; published, seen. Smoke drifts: up to 3 mph; felt on the
# face, leaves rustle: 4 to 7 mph; leaves and twigs keep moving: 8 mph and more. (word, lowest, highest or 0 [m/s])
WINDS = (
    ("still", 0.0, 3.0 * _MILE_PER_HOUR),
    ("breeze", 4.0 * _MILE_PER_HOUR, 7.0 * _MILE_PER_HOUR),
    ("wind", 8.0 * _MILE_PER_HOUR, 0.0),
)
STRONG_WIND = (
    25.0 * _MILE_PER_HOUR
)  # the same scale: umbrellas used with difficulty. That it ends welding: common practice

# Gas-shielded cored wire: its lowest current in Modern Welding (2020), figure 8-20, is 150 A. By 1 A for each
# 0.001 in that is 3.8 mm of steel; 3 mm is as thin as it goes. Rods: a textbook's chapter on plate has 1/8 in (3 mm)
# and thicker. The rest is common practice. (process, thinnest steel it suits, thinnest it can be coaxed to [m])
THINNEST = (
    ("flux-cored-gas-shielded", 3.0e-3, 2.0e-3),
    ("flux-cored-self-shielded", 0.048 * _INCH, 0.036 * _INCH),
    ("stick", 3.0e-3, 0.0),
)
STICK_HARD_BELOW = 0.0625 * _INCH  # common practice
T11_THICKEST = 0.75 * _INCH  # E71T-11, AWS A5.20 annex; from memory

# How far from the machine the wire is fed. Aluminum pushed through a liner: about 3 m (FenderBender, The Aluminum
# Age; published, seen). Steel: a 15 ft gun; common practice.
PUSH_ALUMINUM = 10.0 * _FOOT
PUSH_STEEL = 15.0 * _FOOT

# Gas flow on a usual nozzle. Beyer and others, Sci. Technol. Weld. Join. (2013), abstract seen: 15 to 20 L/min is
# specified, 12 proved enough. Aluminum: common practice. (lowest, highest [m3/s])
FLOW = (12.0e-3 / 60.0, 20.0e-3 / 60.0)
FLOW_ALUMINUM = (14.0e-3 / 60.0, 24.0e-3 / 60.0)

# Tip to work; common practice. (process, lowest, highest [m])
TIP_TO_WORK = (
    ("solid-wire", 0.375 * _INCH, 0.75 * _INCH),
    ("pulse", 0.625 * _INCH, 0.75 * _INCH),
    ("metal-cored", 0.625 * _INCH, 1.0 * _INCH),
    ("flux-cored-gas-shielded", 0.75 * _INCH, 1.0 * _INCH),
    ("flux-cored-self-shielded", 0.5 * _INCH, 1.0 * _INCH),
    ("spool-gun", 0.5 * _INCH, 0.75 * _INCH),
)

# Zinc off on each side of the weld, both faces: AWS D19.0 in American Galvanizers Association, Welding galvanized
# steel; published, seen. [m]
ZINC_OFF = (1.0 * _INCH, 4.0 * _INCH)

# Covered rods: current ranges of Machinery's Handbook, 31st edition, page 1594, tables 13 and 14; published, seen.
# "Start in the middle; sheet, up to 10 gauge (0.134 in), at the low end" (pages 1593 and 1594).
# (class, ((diameter, lowest, highest [m, A, A]), ...))
RODS = (
    (
        "e6010",
        (
            (0.09375 * _INCH, 40.0, 75.0),
            (0.125 * _INCH, 75.0, 130.0),
            (0.15625 * _INCH, 90.0, 170.0),
            (0.1875 * _INCH, 135.0, 220.0),
        ),
    ),
    (
        "e6013",
        (
            (0.0625 * _INCH, 20.0, 40.0),
            (0.09375 * _INCH, 50.0, 100.0),
            (0.125 * _INCH, 75.0, 135.0),
            (0.15625 * _INCH, 110.0, 185.0),
            (0.1875 * _INCH, 150.0, 235.0),
        ),
    ),
    (
        "e7018",
        (
            (0.09375 * _INCH, 70.0, 105.0),
            (0.125 * _INCH, 110.0, 160.0),
            (0.15625 * _INCH, 150.0, 215.0),
            (0.1875 * _INCH, 180.0, 275.0),
        ),
    ),
)
SHEET_ENDS = 0.134 * _INCH
# Diameter by thickness. 1/8 in from 3/16 to 5/16 in of plate, 5/32 in above: the handbook, E7018 vertical up; taken
# here in every position. Thinner: common practice. (thickness up to, rod diameter [m])
ROD_DIAMETERS = (
    (0.0625 * _INCH, 0.0625 * _INCH),
    (0.1875 * _INCH, 0.09375 * _INCH),
    (0.3125 * _INCH, 0.125 * _INCH),
    (10.0, 0.15625 * _INCH),
)

# Low-hydrogen rods. Oven, return and waste: AWS D1.1:2015, 5.3.2.1 and 5.3.2.2; standard, seen reproduced: 250 degF
# at least, 4 h there before they go out again, baked again once at most, wet ones never. Hours in the air: 4, with
# an R in the class 9: AWS D1.1, table 5.1, from memory; second route, seen: a schedule of conditioning and exposure
# (4 h) and a study guide to the code (9 h for E7018 H4R). [K, s]
OVEN = (250.0 + 459.67) / 1.8
HOURS_OUT = 4.0 * 3600.0
HOURS_OUT_R = 9.0 * 3600.0
HOURS_BACK = 4.0 * 3600.0
