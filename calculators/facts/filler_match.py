"""Which filler classes go with which base metal, and why. Verdicts: suits, care, no.

Standing: common practice, in our words, but for what facts/aluminum_fillers.py and facts/gases.py rule out, and
stainless to carbon steel by 309L (Welding Journal, July 2016; published, seen). Strengths of base metals: A36, A572 and
S355 stand in fillet_rules.py; A588 and A514: ASTM, from memory.
"""

_KSI = 6894757.293168361

# base -> (kind of metal, family that preheat asks for, list of fillers)
BASES = (
    ("a36", "mild-steel", "structural", "steel"),
    ("a572-50", "mild-steel", "structural", "steel"),
    ("weathering", "mild-steel", "structural", "weathering"),
    ("galvanized", "mild-steel", "structural", "galvanized"),
    ("quenched-tempered", "mild-steel", "quenched-tempered", "quenched-tempered"),
    ("wear-plate", "mild-steel", "wear-plate", "wear-plate"),
    ("hardening", "mild-steel", "hardening", "hardening"),
    ("spring", "mild-steel", "", ""),
    ("free-machining", "mild-steel", "", ""),
    ("gray-iron", "iron", "", "iron"),
    ("manganese", "manganese", "manganese", "manganese"),
    ("304", "stainless", "stainless", "304"),
    ("316", "stainless", "stainless", "316"),
    ("2205", "stainless", "", "2205"),
    ("430", "stainless", "", "430"),
    ("303", "stainless", "", ""),
    ("1100-3003", "aluminum", "", "1100-3003"),
    ("5052", "aluminum", "", "5052"),
    ("5083", "aluminum", "aluminum-magnesium", "5083"),
    ("6061", "aluminum", "aluminum-heat-treated", "6061"),
    ("2024-7075", "aluminum", "", ""),
    ("unknown", "", "", ""),
)
# Least yield and tensile strength of what fillet_rules.py does not hold.
STRENGTHS = (("weathering", 50.0 * _KSI, 70.0 * _KSI), ("quenched-tempered", 100.0 * _KSI, 110.0 * _KSI))

# (list, ((verdict, why, classes), ...))
FILLERS = (
    ("steel", (("suits", "usual", "ER70S-6 E71T-1M E7018"), ("suits", "clean", "ER70S-3"), ("suits", "rust", "ER70S-2"), ("suits", "wind", "E71T-8"), ("care", "thin", "E71T-11"), ("care", "single", "E71T-GS"), ("no", "hard", "ER308L"))),
    ("weathering", (("suits", "weathers", "E80C-W2 E8018-W2 E81T1-W2C"), ("suits", "nickel", "ER80S-Ni1"), ("care", "one-pass", "ER70S-6 E7018"))),
    ("galvanized", (("care", "zinc", "ER70S-3 ER70S-2 E7018 E71T-14"), ("care", "zinc-silicon", "ER70S-6"))),
    ("quenched-tempered", (("suits", "matching", "ER110S-1 E11018-M E110C-K4"), ("care", "fillets", "ER70S-6 E7018-H4R"), ("no", "hydrogen", "E71T-11 E6010"))),
    ("wear-plate", (("suits", "soft", "ER70S-6 E7018-H4R"), ("care", "austenitic", "ER309L"), ("no", "hydrogen", "E71T-11 E6010"), ("no", "surface", "ERFeCr-A1A"))),
    ("hardening", (("care", "preheat", "ER80S-D2 E7018-H4R E8018-D3"), ("care", "austenitic", "ER309L"), ("no", "hydrogen", "E71T-11 E6010"))),
    ("steel-hard", (("suits", "weaker", "E7018-H4R ER70S-6"), ("no", "hydrogen", "E71T-11 E6010"))),
    ("iron", (("care", "iron", "ENiFe-CI ENi-CI ERNi-CI"), ("no", "chill", "ER70S-6 E7018"))),
    ("manganese", (("suits", "austenitic", "ER307 ER309L"), ("care", "build-up", "ERFeMnCr"), ("no", "brittle", "ER70S-6 E7018"))),
    ("304", (("suits", "grade", "ER308LSi ER308L E308L-16"), ("care", "richer", "ER316L ER309L"), ("no", "rusts", "ER70S-6"))),
    ("316", (("suits", "grade", "ER316LSi ER316L E316L-16"), ("care", "molybdenum", "ER308L"), ("no", "rusts", "ER70S-6"))),
    ("2205", (("suits", "grade", "ER2209 E2209-16"), ("no", "weak", "ER308L ER316L"))),
    ("430", (("care", "austenitic", "ER309L"), ("care", "brittle", "ER430"), ("no", "rusts", "ER70S-6"))),
    ("stainless-steel", (("suits", "bridge", "ER309L ER309LSi E309L-16"), ("care", "hard", "ER312"), ("no", "diluted", "ER308L"), ("no", "hard", "ER70S-6"))),
    ("1100-3003", (("suits", "flows", "ER4043"), ("suits", "grade", "ER1100"), ("care", "richer", "ER5356"))),
    ("5052", (("suits", "strong", "ER5356"), ("suits", "warm", "ER5554"), ("suits", "flows", "ER4043"))),
    ("5083", (("suits", "strong", "ER5183 ER5356 ER5556"), ("care", "weak", "ER5554"), ("suits", "flows", "ER4043"))),
    ("6061", (("suits", "tough", "ER5356"), ("suits", "flows", "ER4043"), ("care", "weak", "ER5554"))),
)  # fmt: skip

# Of two lists the one that serves both, the first that either base has; the lists of hard steels serve themselves alone.
SHARED = ("iron", "manganese", "2205", "430", "316", "304", "galvanized", "5083", "5052", "6061", "1100-3003")
HARD = ("quenched-tempered", "wear-plate", "hardening")
