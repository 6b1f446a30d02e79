"""Densities of metals, in kg/m3: the one place of every one that this book uses, with its source and standing.

Carbon steel: 490 lb/ft3, 7850 kg/m3 (Iowa Department of Transportation, Instructional Memorandum 452.02, published,
seen; the AISC weights agree).
Stainless: 7930, type 304, a mill's basic mass of 7.93 kg per mm and m2 (316: 7.98, 430: 7.70; published); 7900 for
1.4301 and 8000 for 1.4401 in EN 10088-1, 8030 in American lists (from memory).
Cast iron: 450 lb/ft3, 7210 kg/m3 (the same memorandum); 7000 to 7400 in Gere, Mechanics of Materials, 5th ed., a copy
of its table (published, seen).
Aluminum, brass, copper, titanium: Gere, the same table: 6061 2700 and 7075 2800; brass 8400 to 8600; copper 8900;
titanium 4500. 6061 stands for other sheet alloys a shop bends to within about 1 %. The ends beyond those (5083 2660;
7075 2810; copper 8890 to 8960; titanium alloys 4430 to 4540) are from memory.
"""

STEEL = 7850.0
STAINLESS = 7930.0
ALUMINUM = 2700.0

# What parts are made of: (material, density, lowest, highest of its kind). Nothing common lies far off carbon steel,
# so no spread is given.
PARTS = (
    ("carbon-steel", STEEL, STEEL, STEEL),
    ("stainless", STAINLESS, 7900.0, 8030.0),
    ("aluminum", ALUMINUM, 2660.0, 2810.0),
    ("cast-iron", 7210.0, 7000.0, 7400.0),
    ("brass", 8500.0, 8400.0, 8600.0),
    ("copper", 8900.0, 8890.0, 8960.0),
    ("titanium", 4500.0, 4430.0, 4540.0),
)

# Sheet whose gauge is a thickness, so that its weight is reckoned; tube is carbon steel: (gauge system, density).
GAUGES = (("stainless", STAINLESS), ("aluminum", ALUMINUM), ("tube", STEEL))

# Solid wires. Stainless: 7900 to 8000, from memory. Aluminum alloys: from memory; second route: the densities of the
# elements in the proportions of the classification (law). Unknown aluminum: the middle of the alloys.
# (wire material, filler alloy, density, half-band [-])
WIRES = (
    ("mild-steel", "", STEEL, 0.005),
    ("stainless", "", 7950.0, 0.008),
    ("aluminum", "", 2670.0, 0.012),
    ("aluminum", "4043", 2690.0, 0.007),
    ("aluminum", "5356", 2640.0, 0.007),
    ("aluminum", "5183", 2660.0, 0.007),
)

# Families met on repairs, in the order of facts/metals.py: (family, lowest, highest). A public list of densities of
# metals (light alloys of aluminium 2560 to 2800, of magnesium 1738 to 1870, titanium 4500, zinc 7135, cast iron 6800 to
# 7800, rolled steel 7850, stainless 7480 to 8000, bronze and brass 7400 to 8900, copper 8930, nickel 8800, Monel 8360
# to 8840, lead 11340; published), narrowed or widened to what the family here means: gray iron 6800 to 7400, white iron
# 7400 to 7700 and zinc casting alloys from 6600 are from memory. Each holds the parts above that belong to it.
FAMILIES = (
    ("mild-steel", 7800.0, 7870.0),
    ("medium-carbon", 7800.0, 7870.0),
    ("gray-iron", 6800.0, 7400.0),
    ("aluminum", 2560.0, 2830.0),
    ("austenitic", 7850.0, 8030.0),
    ("quenched-tempered", 7800.0, 7870.0),
    ("ductile-iron", 7000.0, 7400.0),
    ("magnetic-stainless", 7600.0, 7800.0),
    ("high-carbon", 7700.0, 7870.0),
    ("copper-alloy", 7400.0, 8900.0),
    ("copper", 8890.0, 8960.0),
    ("zinc", 6600.0, 7200.0),
    ("manganese", 7800.0, 7950.0),
    ("white-iron", 7400.0, 7700.0),
    ("wrought-iron", 7600.0, 7870.0),
    ("magnesium", 1738.0, 1870.0),
    ("nickel", 8360.0, 8910.0),
    ("titanium", 4420.0, 4540.0),
    ("lead", 10900.0, 11350.0),
)

WATER = 998.0  # fresh, at about 20 degC
