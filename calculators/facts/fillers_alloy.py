"""How stainless, aluminum, cast-iron and surfacing fillers are named; rows as in fillers.py.

AWS A5.4, A5.9: classes and nominal composition from memory; the tests hold them against limits of A5.9. AWS A5.10:
limits from memory. AWS A5.15: from memory, but that it holds rods, wires, cored wires and covered electrodes by
composition (SFA-5.15, seen). AWS A5.21: iron-chromium classes as in SFA-5.21 (A5.21:2001; standard, seen), others from
memory.
"""

_STAINLESS = (
    ("308", "~ H L Mo LMo", "Si LSi"),
    ("309", "~ L Mo LMo", "Si LSi"),
    ("316", "~ H L", "Si LSi"),
    ("317", "~ L", ""),
    ("347", "~", "Si"),
    ("410", "~ NiMo", ""),
    ("307 310 312 330 430 630 2209 2594", "", ""),
)
FORMS = (
    tuple([("A5.4", "E", type_, variants, "15 16 17 26") for type_, variants, _ in _STAINLESS])
    + tuple([("A5.9", "ER", type_, (variants + " " + wire).strip(" ")) for type_, variants, wire in _STAINLESS])
    + (
        ("A5.9", "ER", "321 385 409 420", ""),
        ("A5.10", "ER R", "1100 2319 4043 4047 4145 4643 5183 5356 5554 5556 5654"),
        ("A5.15", "E", "Ni NiFe", "", "CI", "~ A"),
        ("A5.15", "E", "NiFeMn", "", "CI"),
        ("A5.15", "E", "NiFe", "T3", "CI"),
        ("A5.15", "E", "NiCu", "", "", "A B"),
        ("A5.15", "E", "St"),
        ("A5.15", "ER", "Ni NiFeMn", "", "CI"),
        ("A5.15", "R", "", "", "CI", "~ A B"),
        ("A5.21", "ER ERC", "Fe", "1 1A 2 3 5 6 8"),
        ("A5.21", "ER ERC", "FeMn", "C F G H"),
        ("A5.21", "ER ERC", "FeMnCr"),
        ("A5.21", "ER ERC", "FeCr", "A1A A3A A4 A5 A9 A10"),
        ("A5.21", "ER ERC", "CoCr", "A B C E F G"),
        ("A5.21", "ER ERC", "NiCr", "A B C D E"),
    )
)

# As in fillers.py. Stainless: nominal chromium, nickel and the rest.
TYPES = (
    ("A5.4|A5.9", "analysis", (("307", "Cr 20, Ni 10, Mn 4"), ("308", "Cr 20, Ni 10"), ("309", "Cr 24, Ni 13"), ("310", "Cr 26, Ni 21"), ("312", "Cr 30, Ni 9"), ("316", "Cr 19, Ni 12, Mo 2.5"), ("317", "Cr 19, Ni 14, Mo 3.5"), ("321", "Cr 19, Ni 10, Ti"), ("330", "Cr 16, Ni 35"), ("347", "Cr 20, Ni 10, Nb"), ("385", "Cr 20, Ni 25, Mo 4.7, Cu 1.5"), ("409", "Cr 11, Ti"), ("410", "Cr 12"), ("420", "Cr 13, C 0.3"), ("430", "Cr 16"), ("630", "Cr 16.5, Ni 4.8, Cu 3.6"), ("2209", "Cr 22.5, Ni 8.5, Mo 3, N"), ("2594", "Cr 25, Ni 9, Mo 4, N"))),
    ("A5.10", "analysis", (("1100", "Al ≥ 99"), ("2319", "Cu 5.8–6.8"), ("4043", "Si 4.5–6"), ("4047", "Si 11–13"), ("4145", "Si 9.3–10.7, Cu 3.3–4.7"), ("4643", "Si 3.6–4.6, Mg 0.1–0.3"), ("5183", "Mg 4.3–5.2, Mn 0.5–1, Cr 0.05–0.25"), ("5356", "Mg 4.5–5.5, Mn 0.05–0.2, Cr 0.05–0.2"), ("5554", "Mg 2.4–3, Mn 0.5–1"), ("5556", "Mg 4.7–5.5, Mn 0.5–1"), ("5654", "Mg 3.1–3.9"))),
    ("A5.15", "analysis", (("Ni", "Ni 90"), ("NiFe", "Ni 53, Fe"), ("NiFeMn", "Ni 40, Mn 12, Fe"), ("NiCu", "Ni, Cu"), ("St", "Fe"))),
    ("A5.21", "analysis", (("Fe", "Fe, C"), ("FeMn", "Mn 14, C"), ("FeMnCr", "Mn 15, Cr 15"), ("FeCr", "C, Cr 14–32"), ("CoCr", "Co, Cr 28, W"), ("NiCr", "Ni, Cr 8–20, B"))),
)  # fmt: skip
