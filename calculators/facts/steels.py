"""Steels: the weights of the carbon equivalents, where each was tested, and what common grades are made of.

Everything is in mass %, as certificates print it. Standing is written beside each table. "From memory": the
source is named but was not open when the number was written.
"""

ELEMENTS = (
    "carbon", "silicon", "manganese", "chromium", "molybdenum", "vanadium", "nickel", "copper", "boron",
)  # fmt: skip

# An element adds its content divided by this number; carbon counts whole.
#
# CE: International Institute of Welding, 1967, as in EN 1011-2:2001, C.2.1, and EN 10025-1; quoted so by TWI and
#   by general encyclopedias (seen). Standard.
# CET: EN 1011-2:2001, C.3.2; quoted so by general encyclopedias (seen). Standard.
# Pcm: Ito and Bessyo, IIW documents IX-576-68 and IX-631-69, as in AWS D1.1's hydrogen annex and API 5L; quoted
#   so by a university review, general encyclopedias and the text of API 5L, 6.1.3.1 (seen). Standard.
# CE with silicon: AWS D1.1's annex; TWI says that it adds Si/6 to the first (seen). Standard.
CE_DIVISORS = (
    ("carbon", 1.0), ("manganese", 6.0), ("chromium", 5.0), ("molybdenum", 5.0), ("vanadium", 5.0),
    ("nickel", 15.0), ("copper", 15.0),
)  # fmt: skip
CET_DIVISORS = (
    ("carbon", 1.0), ("manganese", 10.0), ("molybdenum", 10.0), ("chromium", 20.0), ("copper", 20.0),
    ("nickel", 40.0),
)  # fmt: skip
PCM_DIVISORS = (
    ("carbon", 1.0), ("silicon", 30.0), ("manganese", 20.0), ("copper", 20.0), ("chromium", 20.0),
    ("nickel", 60.0), ("molybdenum", 15.0), ("vanadium", 10.0), ("boron", 0.2),
)  # fmt: skip
CE_WITH_SILICON_DIVISORS = CE_DIVISORS + (("silicon", 6.0),)

# The most of each element that a certificate of a steel these sums are for can show: above it stands another
# metal (cast iron, manganese steel, stainless) or another unit (hundredths of a percent, ppm). Our own limits.
HIGHEST = (
    ("carbon", 1.1), ("silicon", 2.2), ("manganese", 2.0), ("chromium", 3.0), ("molybdenum", 1.2),
    ("vanadium", 0.5), ("nickel", 4.0), ("copper", 1.0), ("boron", 0.01),
)  # fmt: skip

# Compositions within which each was tested; outside them no number is given.
#
# CET: EN 1011-2:2001, C.3.2; from memory. It names Nb and Ti too, which this book does not ask for.
# Pcm: Ito and Bessyo's steels; from memory.
# CE has no such table here: as an index of hardening it is used for any carbon or low-alloy steel.
CET_TESTED = (
    ("carbon", 0.05, 0.32), ("silicon", 0.0, 0.8), ("manganese", 0.5, 1.9), ("chromium", 0.0, 1.5),
    ("molybdenum", 0.0, 0.75), ("vanadium", 0.0, 0.18), ("nickel", 0.0, 2.5), ("copper", 0.0, 0.7),
    ("boron", 0.0, 0.005),
)  # fmt: skip
PCM_TESTED = (
    ("carbon", 0.07, 0.22), ("silicon", 0.0, 0.6), ("manganese", 0.4, 1.4), ("chromium", 0.0, 1.2),
    ("molybdenum", 0.0, 0.7), ("vanadium", 0.0, 0.12), ("nickel", 0.0, 1.2), ("copper", 0.0, 0.5),
    ("boron", 0.0, 0.005),
)  # fmt: skip

# How CE is read: below the first usually no preheat for its sake, above the second preheat and slow cooling.
# A metallurgy laboratory's page prints these (seen), an encyclopedia 0.45 and 0.65 (seen): common practice.
CE_LOW, CE_HIGH = 0.35, 0.55

# Pcm -> index group of AWS D1.1's hydrogen annex with very low hydrogen (H1, 5 mL/100 g): up to, group. One cell
# of the table was seen quoted (Pcm up to 0.28 with H2 is one letter higher: D); the rest from memory.
PCM_GROUPS = ((0.18, "A"), (0.23, "B"), (0.28, "C"), (0.33, "D"), (0.38, "E"))

# What common grades are made of: (grade, a typical heat, the limits of the specification for what it limits).
#
# Typical heats of A36, A572, A516 and S355 are illustrations, no certificates: from memory. Limits are those of
# ASTM A36, A572, A516, A514 and EN 10025-2 (product analysis left aside): from memory. The SAE grades are the
# middle and the upper end of the ranges in SAE J403 and J404, from memory; 4130 also as printed by the FAA, report
# ANM-112N-14-02 (2014), published, seen. Residual copper and nickel of the SAE grades are not counted.
TYPICAL = (
    (
        "a36",
        (0.20, 0.20, 0.80, 0.05, 0.01, 0.0, 0.05, 0.20, 0.0),
        (0.29, 0.40, 1.20, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0),
    ),
    (
        "a572-50",
        (0.18, 0.25, 1.20, 0.05, 0.01, 0.04, 0.05, 0.20, 0.0),
        (0.23, 0.40, 1.35, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0),
    ),
    (
        "a516-70",
        (0.20, 0.25, 1.10, 0.05, 0.01, 0.0, 0.05, 0.15, 0.0),
        (0.31, 0.40, 1.20, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0),
    ),
    (
        "s355j2",
        (0.17, 0.35, 1.45, 0.05, 0.01, 0.005, 0.04, 0.05, 0.0),
        (0.22, 0.55, 1.60, 0.0, 0.0, 0.0, 0.0, 0.55, 0.0),
    ),
    (
        "a514-b",
        (0.165, 0.275, 0.85, 0.525, 0.20, 0.055, 0.0, 0.0, 0.002),
        (0.21, 0.35, 1.00, 0.65, 0.25, 0.08, 0.0, 0.0, 0.005),
    ),
    (
        "1018",
        (0.175, 0.0, 0.75, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0),
        (0.20, 0.0, 0.90, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0),
    ),
    (
        "1045",
        (0.465, 0.0, 0.75, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0),
        (0.50, 0.0, 0.90, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0),
    ),
    (
        "4130",
        (0.305, 0.25, 0.50, 0.95, 0.20, 0.0, 0.0, 0.0, 0.0),
        (0.33, 0.35, 0.60, 1.10, 0.25, 0.0, 0.0, 0.0, 0.0),
    ),
    (
        "4140",
        (0.405, 0.25, 0.875, 0.95, 0.20, 0.0, 0.0, 0.0, 0.0),
        (0.43, 0.35, 1.00, 1.10, 0.25, 0.0, 0.0, 0.0, 0.0),
    ),
)

# Grades that harden beside the weld: (grade, lower end, upper end) of carbon, manganese, chromium, nickel and
# molybdenum. SAE J403 (1045) and J404; from memory, 4130 as above.
HARDENING = (
    ("1045", (0.43, 0.60, 0.0, 0.0, 0.0), (0.50, 0.90, 0.0, 0.0, 0.0)),
    ("4130", (0.28, 0.40, 0.80, 0.0, 0.15), (0.33, 0.60, 1.10, 0.0, 0.25)),
    ("4140", (0.38, 0.75, 0.80, 0.0, 0.15), (0.43, 1.00, 1.10, 0.0, 0.25)),
    ("4340", (0.38, 0.60, 0.70, 1.65, 0.20), (0.43, 0.80, 0.90, 2.00, 0.30)),
)

# What the preheat question takes of a steel it knows by chemistry alone, lowest and highest: our own limits, around the
# grades above.
PREHEATED_BY_CHEMISTRY = (
    ("carbon", 0.25, 0.70), ("manganese", 0.0, 1.7), ("chromium", 0.0, 1.6), ("nickel", 0.0, 4.0),
    ("molybdenum", 0.0, 0.6),
)  # fmt: skip
