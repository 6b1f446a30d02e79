"""Densities of metals that parts are made of, in kg/m3: the value used, and the lowest and highest of its kind.

Carbon steel: 490 lb/ft3, 7850 kg/m3 (Iowa Department of Transportation, Instructional Memorandum 452.02, published,
seen; the AISC weights agree). Nothing common lies far off it, so no spread is given.
Stainless, 300 series: 7930, the type 304 of the gauge lists of this book; 7900 for 1.4301 and 8000 for 1.4401 in
EN 10088-1, 8030 in American lists (from memory).
Cast iron: 450 lb/ft3, 7210 kg/m3 (the same memorandum); 7000 to 7400 in Gere, Mechanics of Materials, 5th ed., a copy
of its table (published, seen).
Aluminum, brass, copper, titanium: Gere, the same table: 6061 2700 and 7075 2800; brass 8400 to 8600; copper 8900;
titanium 4500. The ends beyond those (5083 2660; 7075 2810; copper to 8960; titanium alloys 4430 to 4540) are from
memory.
"""

# (material, density, lowest, highest [kg/m3])
DENSITIES = (
    ("carbon-steel", 7850.0, 7850.0, 7850.0),
    ("stainless", 7930.0, 7900.0, 8030.0),
    ("aluminum", 2700.0, 2660.0, 2810.0),
    ("cast-iron", 7210.0, 7000.0, 7400.0),
    ("brass", 8500.0, 8400.0, 8600.0),
    ("copper", 8900.0, 8890.0, 8960.0),
    ("titanium", 4500.0, 4430.0, 4540.0),
)

# How far a piece may be off its nominal weight, as a share below and above.
# Pipe: 10 % either way (ASTM A53; copies of it seen). Hollow sections: the wall 10 % either way (ASTM A500, from
# memory). Angle and channel: 2.5 % either way (ASTM A6, from memory), and above that up to 3 % for the root fillet
# that the sum leaves out (largest gap to the AISC and BS tables the tests hold). Plate and bar: not in this book.
PIPE_TOLERANCE = (0.10, 0.10)
HOLLOW_TOLERANCE = (0.10, 0.10)
ROLLED_TOLERANCE = (0.025, 0.055)
