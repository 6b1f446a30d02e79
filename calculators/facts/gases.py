"""The gases that shielding gas is mixed from, the groups that mixes fall into, and what each mix is good for.

Molar mass, density and viscosity (standing: published; CoolProp 8.0.0, I. Bell et al., Ind. Eng. Chem. Res. 53
(2014) 2498, from the equations of state and viscosity correlations that it names for each gas). The tests compare
every one with CoolProp again.

Groups: ISO 14175:2008, table 2. Seen quoted: what the groups are, the letters of the gases, the limit of 15 % between
M20 and M21, 4 % carbon dioxide as M12 (ArC-4), I3 and M24. The other limits are from memory. Standing: from memory.
The sheet of the standard decides.

Suits: common practice, in our words. Standing: common practice; the welding procedure decides.
"""

# (name, letters of ISO 14175, molar mass [kg/mol], density at 15 degC and 1 atm [kg/m3], viscosity at 20 degC [Pa s])
GASES = (
    ("argon", "Ar", 0.039948, 1.69075, 22.307e-6),
    ("carbon_dioxide", "C", 0.0440098, 1.87185, 14.675e-6),
    ("oxygen", "O", 0.0319988, 1.35436, 20.273e-6),
    ("helium", "He", 0.004002602, 0.169195, 19.618e-6),
    ("hydrogen", "H", 0.00201588, 0.0852049, 8.797e-6),
    ("nitrogen", "N", 0.02801348, 1.18510, 17.573e-6),
)
SIGNS = ("Ar", "CO₂", "O₂", "He", "H₂", "N₂")  # of these, as a welder reads them
AIR_DENSITY = 1.22554  # [kg/m3] at 15 degC and 1 atm, dry

# A bound is (low, whether low itself counts, high), % by volume; a gas without one is not in the mix.
NONE = (0.0, True, 0.0)
REST = (0.0, True, 100.0)
ALL = (100.0, True, 100.0)
SOME = (0.0, False, 100.0)
_LITTLE = (0.5, True, 5.0)
_SECOND = (5.0, False, 15.0)
_THIRD = (15.0, False, 25.0)
_RICH = (25.0, False, 50.0)
_OXYGEN_1 = (0.5, True, 3.0)
_OXYGEN_2 = (3.0, False, 10.0)
_OXYGEN_3 = (10.0, False, 15.0)

# (group, argon, carbon dioxide, oxygen, helium, hydrogen, nitrogen). In M and R helium may stand for argon.
GROUPS = (
    ("I1", ALL, NONE, NONE, NONE, NONE, NONE),
    ("I2", NONE, NONE, NONE, ALL, NONE, NONE),
    ("I3", REST, NONE, NONE, (0.5, True, 95.0), NONE, NONE),
    ("M11", REST, _LITTLE, NONE, REST, _LITTLE, NONE),
    ("M12", REST, _LITTLE, NONE, REST, NONE, NONE),
    ("M13", REST, NONE, _OXYGEN_1, REST, NONE, NONE),
    ("M14", REST, _LITTLE, _OXYGEN_1, REST, NONE, NONE),
    ("M20", REST, _SECOND, NONE, REST, NONE, NONE),
    ("M21", REST, _THIRD, NONE, REST, NONE, NONE),
    ("M22", REST, NONE, _OXYGEN_2, REST, NONE, NONE),
    ("M23", REST, _LITTLE, _OXYGEN_2, REST, NONE, NONE),
    ("M24", REST, _SECOND, _OXYGEN_1, REST, NONE, NONE),
    ("M25", REST, _SECOND, _OXYGEN_2, REST, NONE, NONE),
    ("M26", REST, _THIRD, _OXYGEN_1, REST, NONE, NONE),
    ("M27", REST, _THIRD, _OXYGEN_2, REST, NONE, NONE),
    ("M31", REST, _RICH, NONE, REST, NONE, NONE),
    ("M32", REST, NONE, _OXYGEN_3, REST, NONE, NONE),
    ("M33", REST, _RICH, (2.0, False, 10.0), REST, NONE, NONE),
    ("M34", REST, (5.0, False, 25.0), _OXYGEN_3, REST, NONE, NONE),
    ("M35", REST, _RICH, _OXYGEN_3, REST, NONE, NONE),
    ("C1", NONE, ALL, NONE, NONE, NONE, NONE),
    ("C2", NONE, REST, (0.5, True, 30.0), NONE, NONE, NONE),
    ("R1", REST, NONE, NONE, REST, (0.5, True, 15.0), NONE),
    ("R2", REST, NONE, NONE, REST, (15.0, False, 50.0), NONE),
    ("N1", NONE, NONE, NONE, NONE, NONE, ALL),
    ("N2", REST, NONE, NONE, NONE, NONE, _LITTLE),
    ("N3", REST, NONE, NONE, NONE, NONE, (5.0, False, 50.0)),
    ("N4", REST, NONE, NONE, NONE, (0.5, True, 10.0), _LITTLE),
    ("N5", NONE, NONE, NONE, NONE, (0.5, True, 50.0), REST),
    ("O1", NONE, NONE, ALL, NONE, NONE, NONE),
)
OTHER_GROUP = "Z"

# What ISO 14175:1997 and EN 439 called the same mix where their number differs (from memory, but for M20).
# M25 and M27 were M24 up to 8 % oxygen, above that another group.
OLDER_GROUPS = (("M20", "M21"), ("M26", "M24"), ("M25", "M24"), ("M27", "M24"), ("N1", "F1"), ("N5", "F2"))
OLDER_HIGHEST_OXYGEN = 8.0  # % by volume

# (metal, verdict, reason, then the bounds as above): the first row that a mix falls into speaks for its metal.
SUITS = (
    ("mild-steel", "no", "hydrogen", REST, REST, REST, REST, SOME, REST),
    ("mild-steel", "no", "nitrogen", REST, REST, REST, REST, NONE, SOME),
    ("mild-steel", "no", "wanders", REST, NONE, NONE, REST, NONE, NONE),
    ("mild-steel", "no", "burns", REST, REST, (30.0, False, 100.0), REST, NONE, NONE),
    ("mild-steel", "care", "oxygen", REST, REST, (5.0, False, 30.0), REST, NONE, NONE),
    ("mild-steel", "suits", "globular", REST, (50.0, False, 100.0), REST, REST, NONE, NONE),
    ("mild-steel", "suits", "short", REST, (20.0, False, 50.0), REST, REST, NONE, NONE),
    ("mild-steel", "care", "helium", REST, REST, REST, (50.0, True, 100.0), NONE, NONE),
    ("mild-steel", "suits", "both", REST, (5.0, True, 20.0), REST, REST, NONE, NONE),
    ("mild-steel", "suits", "spray", REST, REST, REST, REST, NONE, NONE),
    ("stainless", "no", "pores", REST, REST, REST, REST, (5.0, False, 100.0), REST),
    ("stainless", "no", "nitrogen", REST, REST, REST, REST, REST, (5.0, False, 100.0)),
    ("stainless", "no", "carbon", REST, (5.0, False, 100.0), REST, REST, REST, REST),
    ("stainless", "no", "scale", REST, REST, (3.0, False, 100.0), REST, REST, REST),
    ("stainless", "care", "austenitic", REST, REST, REST, REST, SOME, REST),
    ("stainless", "care", "ferrite", REST, REST, REST, REST, NONE, SOME),
    ("stainless", "care", "low-carbon", REST, (3.0, False, 5.0), REST, REST, NONE, NONE),
    ("stainless", "care", "steady", REST, NONE, NONE, REST, NONE, NONE),
    ("stainless", "suits", "hot-short", REST, REST, REST, (50.0, True, 100.0), NONE, NONE),
    ("stainless", "suits", "fine-spray", REST, REST, REST, REST, NONE, NONE),
    ("duplex", "no", "hydrogen", REST, REST, REST, REST, SOME, REST),
    ("duplex", "no", "carbon", REST, (3.0, False, 100.0), REST, REST, NONE, REST),
    ("duplex", "no", "scale", REST, REST, (3.0, False, 100.0), REST, NONE, REST),
    ("duplex", "no", "nitrogen", REST, REST, REST, REST, NONE, (5.0, False, 100.0)),
    ("duplex", "care", "keeps-nitrogen", REST, REST, REST, REST, NONE, SOME),
    ("duplex", "care", "loses-nitrogen", REST, REST, REST, REST, NONE, NONE),
    ("aluminum", "no", "soot", REST, SOME, REST, REST, REST, REST),
    ("aluminum", "no", "soot", REST, REST, SOME, REST, REST, REST),
    ("aluminum", "no", "pores", REST, NONE, NONE, REST, SOME, REST),
    ("aluminum", "no", "brittle", REST, NONE, NONE, REST, NONE, SOME),
    ("aluminum", "care", "hot", REST, NONE, NONE, (75.0, False, 100.0), NONE, NONE),
    ("aluminum", "suits", "clean", REST, NONE, NONE, REST, NONE, NONE),
    ("copper", "no", "pores", REST, REST, REST, REST, SOME, REST),
    ("copper", "no", "pores", REST, REST, REST, REST, NONE, SOME),
    ("copper", "no", "scale", REST, (3.0, False, 100.0), REST, REST, NONE, NONE),
    ("copper", "no", "scale", REST, REST, (2.0, False, 100.0), REST, NONE, NONE),
    ("copper", "suits", "bronze", REST, NONE, NONE, REST, NONE, NONE),
    ("copper", "care", "coated", REST, REST, REST, REST, NONE, NONE),
)

# (name, argon, carbon dioxide, oxygen, helium, hydrogen, nitrogen), % by volume. Compositions in everyday use.
BLENDS = (
    ("ar-co2-25", 75.0, 25.0, 0.0, 0.0, 0.0, 0.0),
    ("ar-co2-20", 80.0, 20.0, 0.0, 0.0, 0.0, 0.0),
    ("ar-co2-18", 82.0, 18.0, 0.0, 0.0, 0.0, 0.0),
    ("ar-co2-15", 85.0, 15.0, 0.0, 0.0, 0.0, 0.0),
    ("ar-co2-10", 90.0, 10.0, 0.0, 0.0, 0.0, 0.0),
    ("ar-co2-8", 92.0, 8.0, 0.0, 0.0, 0.0, 0.0),
    ("ar-co2-5", 95.0, 5.0, 0.0, 0.0, 0.0, 0.0),
    ("ar-o2-2", 98.0, 0.0, 2.0, 0.0, 0.0, 0.0),
    ("carbon-dioxide", 0.0, 100.0, 0.0, 0.0, 0.0, 0.0),
    ("argon", 100.0, 0.0, 0.0, 0.0, 0.0, 0.0),
    ("ar-co2-2", 98.0, 2.0, 0.0, 0.0, 0.0, 0.0),
    ("he-ar-co2", 7.5, 2.5, 0.0, 90.0, 0.0, 0.0),
    ("ar-he-25", 75.0, 0.0, 0.0, 25.0, 0.0, 0.0),
    ("helium", 0.0, 0.0, 0.0, 100.0, 0.0, 0.0),
)
