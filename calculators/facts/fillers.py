"""How fillers are named: the rows of symbols that make a class, and what they stand for. Steel; the others: fillers_alloy.

A row is (system, symbols of each part in turn); `~` is a part left out, an empty text a part that this row lacks.
Beside a strength in ksi stands the metric one of the same class. Strengths in ksi or MPa as printed.

AWS A5.18: the edition of 2005 as SFA-5.18 (ASME 2007): tables 1 and 3 seen; standard. Metal-cored classes: E70C-6M seen
in AWS D1.1:2020, table M.1; the rest from memory; -5 was taken out in 2005 (1979 and 1993: seen).
AWS A5.20: D1.1:2020, table M.1, has T-1, 4, 5, 6, 7, 8, 9 and 12 with strength and toughness; standard, seen. The
other usability numbers, polarity, passes, J, D, Q: from memory.
AWS A5.5: US Army Corps of Engineers, TI 809-26 (2000), table C-2, has strength, position, covering, hydrogen, R and
what the letters of the suffix mean; published, seen. Which suffix goes with which strength and covering, and the
yield: from memory.
AWS A5.1, A5.28, A5.29: from memory. ER70S-G and E70C-G stand in A5.18 and A5.28 alike: read as A5.18.
ISO 14341: strength, toughness and wires of system A seen (tables 1A, 2, 3A); standard. System B: from memory.
"""

from calculators.facts.gases import GROUPS

_H = "~ H4 H8 H16"
_HR = (_H, "~ R")
_GASES = " ".join([row[0] for row in GROUPS if row[0][0] in "MCI"])

# system -> its parts in turn; a hyphen or space before a part is how it is printed.
PARTS = (
    ("A5.1", ("process", "strength", "position", "covering", "-tough", " hydrogen", "moisture")),
    ("A5.5", ("process", "strength", "position", "covering", "-type", " hydrogen", "moisture")),
    ("A5.18", ("process", "strength", "form", "-type", "gas", "nuclear", " hydrogen")),
    ("A5.28", ("process", "strength", "form", "-type", " hydrogen")),
    ("A5.20", ("process", "strength", "position", "form", "-usability", "gas", "-tough", "procedure", " hydrogen")),
    ("A5.29", ("process", "strength", "position", "form", "usability", "-type", "gas", "tough", " hydrogen")),
    ("ISO 14341-A", ("process", " strength", " impact", " gas", " older", " type")),
    ("ISO 14341-B", ("process", " strength", "condition", " impact", "tough", " gas", " type")),
    ("A5.4", ("process", "type", "variant", "-coating")),
    ("A5.9", ("process", "type", "variant")),
    ("A5.10", ("process", "type")),
    ("A5.15", ("process", "type", "form", "-base", "-variant")),
    ("A5.21", ("process", "type", "-variant")),
)

FORMS = (
    ("A5.1", "E", "60 43", "1", "0 1 2 3 9"),
    ("A5.1", "E", "60 43", "2", "0 2 7"),
    ("A5.1", "E", "70 49", "1", "4"),
    ("A5.1", "E", "70 49", "1", "5", "") + _HR,
    ("A5.1", "E", "70 49", "1", "6 8", "~ 1") + _HR,
    ("A5.1", "E", "70 49", "1", "8M"),
    ("A5.1", "E", "70 49", "2", "4", "~ 1"),
    ("A5.1", "E", "70 49", "2", "7"),
    ("A5.1", "E", "70 49", "2 4", "8", "") + _HR,
    ("A5.5", "E", "70 49", "1", "0 1", "A1 G"),
    ("A5.5", "E", "70 49", "1", "0", "P1"),
    ("A5.5", "E", "70 49", "2", "0 7", "A1 G"),
    ("A5.5", "E", "70 49", "1", "5 6 8", "A1 B2L C1L C2L G") + _HR,
    ("A5.5", "E", "70 49", "1", "8", "C3L W1") + _HR,
    ("A5.5", "E", "80 55", "1", "0", "P1 G"),
    ("A5.5", "E", "80 55", "1", "1 3", "G"),
    ("A5.5", "E", "80 55", "1", "6 8", "B1 B2 B6 B8 C1 C2 C3 C4 D3 G") + _HR,
    ("A5.5", "E", "80 55", "1", "5", "B2 B3L B4L B6 B8 G") + _HR,
    ("A5.5", "E", "80 55", "1", "6", "B5") + _HR,
    ("A5.5", "E", "80 55", "1", "8", "B3L NM1 W2") + _HR,
    ("A5.5", "E", "90 62", "1", "0", "P1 G"),
    ("A5.5", "E", "90 62", "1", "5 6 8", "B3 B9 G") + _HR,
    ("A5.5", "E", "90 62", "1", "5", "C5L D1") + _HR,
    ("A5.5", "E", "90 62", "1", "8", "D1 D3") + _HR,
    ("A5.5", "E", "100 69", "1", "5 6 8", "D2 G") + _HR,
    ("A5.5", "E", "110 76 120 83", "1", "5 6 8", "G") + _HR,
    ("A5.5", "E", "90 62 100 69 110 76 120 83", "1", "8", "M"),
    ("A5.5", "E", "120 83", "1", "8", "M1"),
    ("A5.18", "ER", "70 48", "S", "2 3 4 5 6 7 G", "", "~ N", _H),
    ("A5.18", "E", "70 48", "C", "3 6", "C M", "~ N", _H),
    ("A5.18", "E", "70 48", "C", "G GS", "~ C M", "~ N", _H),
    ("A5.28", "ER", "70 49", "S", "A1 B2L", _H),
    ("A5.28", "ER", "80 55", "S", "B2 B3L B6 B8 Ni1 Ni2 Ni3 D2 G", _H),
    ("A5.28", "ER", "90 62", "S", "B3 B9 D2 G", _H),
    ("A5.28", "ER", "100 69 110 76 120 83", "S", "1 G", _H),
    ("A5.28", "E", "70 49", "C", "B2L Ni2", _H),
    ("A5.28", "E", "80 55", "C", "B2 B3L B6 B8 Ni1 Ni2 Ni3 W2 G", _H),
    ("A5.28", "E", "90 62", "C", "B3 B9 D2 K3 G", _H),
    ("A5.28", "E", "100 69", "C", "K3 G", _H),
    ("A5.28", "E", "110 76", "C", "K3 K4 G", _H),
    ("A5.28", "E", "120 83", "C", "K4 G", _H),
    ("A5.20", "E", "7 49", "0 1", "T", "1 5 9 12", "~ C M", "~ J", "~ D Q", _H),
    ("A5.20", "E", "7 49", "0 1", "T", "2", "~ C M", "", "", _H),
    ("A5.20", "E", "7 49", "0", "T", "3 4 10", "", "", "", _H),
    ("A5.20", "E", "7 49", "0", "T", "6", "", "~ J", "~ D Q", _H),
    ("A5.20", "E", "7 49", "0 1", "T", "8", "", "~ J", "~ D Q", _H),
    ("A5.20", "E", "7 49", "0 1", "T", "7 11 13 14", "", "", "", _H),
    ("A5.20", "E", "6 43 7 49", "0 1", "T", "G GS", "", "", "", _H),
    ("A5.29", "E", "6 43", "0 1", "T", "1", "Ni1", "~ C M", "~ J", _H),
    ("A5.29", "E", "6 43 7 49", "0 1", "T", "8", "K6", "", "~ J", _H),
    ("A5.29", "E", "7 49", "0 1", "T", "5", "A1", "~ C M", "~ J", _H),
    ("A5.29", "E", "7 49", "0 1", "T", "6", "Ni1", "", "~ J", _H),
    ("A5.29", "E", "7 49", "0 1", "T", "4 11", "K2", "", "~ J", _H),
    ("A5.29", "E", "7 49", "0 1", "T", "8", "Ni1 Ni2 K2", "", "~ J", _H),
    ("A5.29", "E", "8 55", "0 1", "T", "1", "A1 B1 B1L B2 B2L B2H B6 B6L B8 B8L Ni1 Ni2 K2 W2", "~ C M", "~ J", _H),
    ("A5.29", "E", "8 55", "0 1", "T", "5", "B2 B2L B6 B6L B8 B8L Ni1 Ni2 Ni3 K1 K2", "~ C M", "~ J", _H),
    ("A5.29", "E", "8 55", "0 1", "T", "8", "Ni2", "", "~ J", _H),
    ("A5.29", "E", "8 55", "0 1", "T", "11", "Ni3", "", "~ J", _H),
    ("A5.29", "E", "9 62", "0 1", "T", "1", "B3 B3L B3H B9 Ni2 D1 D3 K2", "~ C M", "~ J", _H),
    ("A5.29", "E", "9 62", "0 1", "T", "5", "B3 Ni2 Ni3 D2 K2", "~ C M", "~ J", _H),
    ("A5.29", "E", "9 62", "0 1", "T", "8", "K8", "", "~ J", _H),
    ("A5.29", "E", "10 69", "0 1", "T", "1", "B3 K3 K7 K9", "~ C M", "~ J", _H),
    ("A5.29", "E", "10 69", "0 1", "T", "5", "D2 K3", "~ C M", "~ J", _H),
    ("A5.29", "E", "11 76", "0 1", "T", "1 5", "K3 K4", "~ C M", "~ J", _H),
    ("A5.29", "E", "12 83", "0 1", "T", "1", "K5", "~ C M", "~ J", _H),
    ("A5.29", "E", "12 83", "0 1", "T", "5", "K4", "~ C M", "~ J", _H),
    ("A5.29", "E", "6 43 7 49 8 55 9 62 10 69 11 76 12 83", "0 1", "T", "1 5", "G", "~ C M", "~ J", _H),
    ("A5.29", "E", "6 43 7 49 8 55 9 62 10 69 11 76 12 83", "0 1", "T", "4 6 7 8 11 G", "G", "", "~ J", _H),
    ("ISO 14341-A", "G", "35 38 42 46 50", "Z A 0 2 3 4 5 6 7 8 9 10", _GASES + " M C", "~ G", "2Si 3Si1 3Si2 4Si1 2Ti 2Al 3Ni1 2Ni2 2Mo 4Mo Z"),
    ("ISO 14341-A", "G", "", "", "", "", "2Si 3Si1 3Si2 4Si1 2Ti 2Al 3Ni1 2Ni2 2Mo 4Mo"),
    ("ISO 14341-B", "G", "43 49 55 57", "A P AP", "Z Y 0 2 3 4 5 6 7 8 9 10", "~ U", _GASES, "S2 S3 S4 S6 S7 SZ"),
)  # fmt: skip

# Least tensile strength by symbol, [ksi]; the metric symbols are tenths of MPa, rounded as their standard does.
TENSILE = (
    ("60 43 6", 60.0),
    ("70 48 49 7", 70.0),
    ("80 55 8", 80.0),
    ("90 62 9", 90.0),
    ("100 69 10", 100.0),
    ("110 76 11", 110.0),
    ("120 83 12", 120.0),
)
# (systems, ((tensile [ksi], least yield [ksi]), ...)). A5.5: as welded or after heat treatment; the M classes differ.
YIELD = (
    ("A5.1 A5.18 A5.20", ((60.0, 48.0), (70.0, 58.0))),
    ("A5.28", ((70.0, 58.0), (80.0, 68.0), (90.0, 78.0), (100.0, 88.0), (110.0, 95.0), (120.0, 105.0))),
    ("A5.29", ((60.0, 50.0), (70.0, 58.0), (80.0, 68.0), (90.0, 78.0), (100.0, 88.0), (110.0, 98.0), (120.0, 108.0))),
    ("A5.5", ((70.0, 57.0), (80.0, 67.0), (90.0, 77.0), (100.0, 87.0), (110.0, 97.0), (120.0, 107.0))),
)
# Symbol, least yield, least and highest tensile strength [MPa]. ISO 14341, table 1A (standard, seen) and 1B (memory).
ISO_A_STRENGTH = (
    ("35", 355.0, 440.0, 570.0),
    ("38", 380.0, 470.0, 600.0),
    ("42", 420.0, 500.0, 640.0),
    ("46", 460.0, 530.0, 680.0),
    ("50", 500.0, 560.0, 720.0),
)
ISO_B_STRENGTH = (
    ("43", 330.0, 430.0, 600.0),
    ("49", 390.0, 490.0, 670.0),
    ("55", 460.0, 550.0, 740.0),
    ("57", 490.0, 570.0, 770.0),
)

# Least toughness: 20 ft-lbf (27 J) at so many degF, by the part that fixes it; what is not here has no figure.
TOUGH = (
    ("A5.1", "position covering", "10 11 15 16 18 27 48", -20.0),
    ("A5.1", "position covering", "19 28", 0.0),
    ("A5.1", "position covering tough", "161 181", -50.0),
    ("A5.1", "position covering tough", "241", 0.0),
    ("A5.18", "type", "2 6 7", -20.0),
    ("A5.18", "type", "3", 0.0),
    ("A5.18", "type gas", "3C 3M", 0.0),
    ("A5.18", "type gas", "6C 6M", -20.0),
    ("A5.20", "usability tough", "5 6 8 9 12", -20.0),
    ("A5.20", "usability tough", "1", 0.0),
    ("A5.20", "tough", "J", -40.0),
    ("A5.28", "type", "1 K4", -60.0),  # from here on from memory
    ("A5.28", "type", "Ni1", -50.0),
    ("A5.28", "type", "D2", -20.0),
    ("A5.28", "type", "W2", -20.0),
    ("A5.29", "type tough", "W2", -20.0),
    ("A5.5", "type", "M", -60.0),
    ("A5.5", "type", "C3", -40.0),
    ("A5.5", "type", "D3", -60.0),
    ("A5.5", "type", "W1 W2", 0.0),
)

# What the symbol of the chemistry means: (systems, word, ((symbols, what is in it in % by mass), ...)). One number is
# nominal. A5.18 and ISO 14341-A: the wire, as printed; others nominal. How much deoxidizer a wire brings is our grading.
TYPES = (
    ("A5.18|ISO 14341-B", "deoxidizer.three", (("2 S2", "C ≤ 0.07, Mn 0.9–1.4, Si 0.4–0.7, Ti 0.05–0.15, Zr 0.02–0.12, Al 0.05–0.15"),)),
    ("A5.18|ISO 14341-B", "deoxidizer.less", (("3 S3", "C 0.06–0.15, Mn 0.9–1.4, Si 0.45–0.75"),)),
    ("A5.18|ISO 14341-B", "deoxidizer.medium", (("4 S4", "C 0.06–0.15, Mn 1–1.5, Si 0.65–0.85"),)),
    ("A5.18|ISO 14341-B", "deoxidizer.much", (("6 S6", "C 0.06–0.15, Mn 1.4–1.85, Si 0.8–1.15"),)),
    ("A5.18|ISO 14341-B", "deoxidizer.manganese", (("7 S7", "C 0.07–0.15, Mn 1.5–2, Si 0.5–0.8"),)),
    ("A5.18", "deoxidizer.aluminum", (("5", "Mn 0.9–1.4, Si 0.3–0.6, Al 0.5–0.9"),)),
    ("A5.18", "cored", (("C3", "3"), ("C6", "6"))),
    ("A5.5|A5.18|A5.28|A5.29|ISO 14341-A|ISO 14341-B", "open.G", (("G CG Z SZ", ""),)),
    ("A5.18", "open.GS", (("CGS", ""),)),
    ("A5.5", "open.P1", (("P1", ""),)),
    ("ISO 14341-A", "deoxidizer.less", (("2Si", "Mn 0.9–1.3, Si 0.5–0.8"),)),
    ("ISO 14341-A", "deoxidizer.medium", (("3Si1", "C 0.06–0.14, Mn 1.3–1.6, Si 0.7–1"),)),
    ("ISO 14341-A", "deoxidizer.much", (("3Si2", "Mn 1.3–1.6, Si 1–1.3"), ("4Si1", "Mn 1.6–1.9, Si 0.8–1.2"))),
    ("ISO 14341-A", "deoxidizer.three", (("2Ti", "Mn 0.9–1.4, Si 0.4–0.8, Ti"),)),
    ("ISO 14341-A", "deoxidizer.aluminum", (("2Al", "Mn 1, Si 0.4, Al 0.5"),)),
    ("ISO 14341-A", "alloy.Ni", (("3Ni1", "Mn 1.3, Si 0.7, Ni 1"), ("2Ni2", "Mn 1, Si 0.6, Ni 2.4"))),
    ("ISO 14341-A", "alloy.A", (("2Mo", "Mn 1.1, Si 0.5, Mo 0.5"), ("4Mo", "Mn 1.9, Si 0.65, Mo 0.5"))),
    ("A5.5|A5.28|A5.29", "alloy.A", (("A1", "Mo 0.5"),)),
    ("A5.5|A5.28|A5.29", "alloy.B", (("B1", "Cr 0.5, Mo 0.5"), ("B2", "Cr 1.25, Mo 0.5"), ("B3", "Cr 2.25, Mo 1"), ("B4", "Cr 2, Mo 0.5"), ("B5", "Cr 0.5, Mo 1, V"), ("B6", "Cr 5, Mo 0.5"), ("B8", "Cr 9, Mo 1"), ("B9", "Cr 9, Mo 1, V, Nb"))),
    ("A5.5|A5.28|A5.29", "alloy.Ni", (("C1 Ni2", "Ni 2.5"), ("C2 Ni3", "Ni 3.5"), ("C3 Ni1", "Ni 1"), ("C4", "Ni 1.5"), ("C5", "Ni 6.5"), ("NM1", "Ni 1, Mo 0.5"))),
    ("A5.5|A5.28|A5.29", "alloy.D", (("D1", "Mn 1.5, Mo 0.35"), ("D2", "Mn 1.8, Mo 0.5"), ("D3", "Mn 1.4, Mo 0.5"))),
    ("A5.28|A5.29", "alloy.K", (("K1 K2 K5 K6 K7 K8 K9", "Mn, Ni"), ("K3 K4", "Mn 1.6, Ni 2, Mo 0.5"))),
    ("A5.5|A5.28|A5.29", "alloy.W", (("W1", "Cu 0.45, Cr 0.25, Ni 0.3"), ("W2", "Cu 0.5, Cr 0.6, Ni 0.6"))),
    ("A5.5|A5.28", "alloy.K", (("1 M M1", "Mn 1.5, Ni 2, Mo 0.4"),)),
)  # fmt: skip

# What begins so is a class of a standard that this book does not hold; # is a digit. The first that fits.
ELSEWHERE = (
    ("AWS A5.36", "E##T#C#A E##T#C#P E##T#M2 E##T##C#A"),
    ("AWS A5.22", "E###T E###LT E###HT E###MOT E###LMOT E####T EC### R###LT"),
    ("AWS A5.17", "EL# EM# EH# F#A F#P"),
    ("AWS A5.14", "ERNICR# ERNICRMO ERNICRFE ERNICRCO ERNICU ERNI1 ERNIFECR"),
    ("AWS A5.11", "ENICR ENICU# ENI1 ENIMO"),
    ("AWS A5.7", "ERCU"),
    ("AWS A5.6", "ECU"),
    ("AWS A5.16", "ERTI"),
    ("AWS A5.24", "ERZR"),
    ("AWS A5.19", "ERMG"),
    ("AWS A5.13", "EFE ECOCR"),
    ("AWS A5.12", "EW"),
    ("AWS A5.8", "BAG BCU BNI BAU BALSI RBCU"),
    ("AWS A5.3", "E1100 E3003 E4043"),
    ("AWS A5.2", "R45 R60 R65 R100"),
    ("ISO 2560", "E35 E38 E42 E46 E50"),
    ("ISO 17632", "T35 T38 T42 T46 T50"),
    ("ISO 636", "W35 W38 W42 W46 W50"),
    ("ISO 16834", "G62 G69 G79 G89"),
    ("ISO 14343", "G18 G19 G20 G22 G23 G25"),
    ("ISO 18273", "SAL"),
)
