"""Sheet and tube gauges as their sources print them: ounces per square foot, inches, thousandths."""

# 15 U.S.C. 206, standard gauge for sheet and plate iron and steel (Act of March 3, 1893): the column of
# weight per square foot in ounces avoirdupois. Standing: law. Rows 28 to 30 were read in published
# comparisons of the same column. Left out: 0000000 to 2, which a shop calls plate, and 31 to 38, foil.
OUNCES_PER_SQUARE_FOOT = (
    (3, 160),
    (4, 150),
    (5, 140),
    (6, 130),
    (7, 120),
    (8, 110),
    (9, 100),
    (10, 90),
    (11, 80),
    (12, 70),
    (13, 60),
    (14, 50),
    (15, 45),
    (16, 40),
    (17, 36),
    (18, 32),
    (19, 28),
    (20, 24),
    (21, 22),
    (22, 20),
    (23, 18),
    (24, 16),
    (25, 14),
    (26, 12),
    (27, 11),
    (28, 10),
    (29, 9),
    (30, 8),
)

# Pounds per square foot of a sheet one inch thick, as each gauge reckons it. U.S. Standard gauge: wrought
# iron at 480 lb/ft3, so 1 oz/ft2 is 1/640 in (15 U.S.C. 206, thickness column). Law.
IRON_POUNDS_PER_INCH = 40.0
# Manufacturers' Standard Gauge for Sheet Steel: 40.8 for the steel itself, and 2.5 % because a sheet is
# thicker in the middle than at the edge where it is measured. Standing: published.
STEEL_POUNDS_PER_INCH = 41.82

# Galvanized Sheet Gage: the bare gauge and 2.5 oz/ft2 of zinc, both sides together; 0.0037 in on the
# thickness. Printed for 8 to 30 gauge; thicker than 8 would be a guess. Standing: published.
ZINC_OUNCES_PER_SQUARE_FOOT = 2.5
THICKEST_GALVANIZED_GAUGE = 8

# American Wire (Brown & Sharpe) Gauge, ASTM B258: 36 gauge is 0.005 in, and 39 steps make a ratio of 92.
# Standing: standard, edition not at hand; equal to the Machinery's Handbook table from 3 to 30 gauge.
AWG_INCHES_AT_36 = 0.005
AWG_RATIO = 92.0
AWG_STEPS = 39.0

# Birmingham (Stubs') iron wire gauge, the wall of tubing: Machinery's Handbook, wire gauge table. Inches.
# Standing: published. It follows no formula.
BWG_INCHES = (
    (3, 0.259),
    (4, 0.238),
    (5, 0.220),
    (6, 0.203),
    (7, 0.180),
    (8, 0.165),
    (9, 0.148),
    (10, 0.134),
    (11, 0.120),
    (12, 0.109),
    (13, 0.095),
    (14, 0.083),
    (15, 0.072),
    (16, 0.065),
    (17, 0.058),
    (18, 0.049),
    (19, 0.042),
    (20, 0.035),
    (21, 0.032),
    (22, 0.028),
    (23, 0.025),
    (24, 0.022),
    (25, 0.020),
    (26, 0.018),
    (27, 0.016),
    (28, 0.014),
    (29, 0.013),
    (30, 0.012),
)

# A second list of stainless gauges that suppliers sell by, beside the law's. Inches. Standing: common
# practice. ASTM A480 calls gauge numbers archaic and without agreed meaning: order stainless by thickness.
SECOND_STAINLESS_INCHES = (
    (7, 0.1874),
    (8, 0.1650),
    (10, 0.1350),
    (11, 0.1200),
    (12, 0.1054),
    (13, 0.0900),
    (14, 0.0751),
    (16, 0.0595),
    (18, 0.0480),
    (19, 0.0420),
    (20, 0.0355),
    (22, 0.0293),
    (24, 0.0235),
    (26, 0.0178),
    (28, 0.0151),
)

# What a mill may deliver over or under the nominal thickness, in thousandths of an inch: (first gauge, last
# gauge, plus or minus). Lists made from the ASTM tables of carbon steel sheet: Engineers Edge, "Mechanical
# Steel Sheet Mechanical Tolerances"; Steel Market Update, "Cold-Rolled Sheet Thickness Tolerances" (10 to
# 28 gauge, the same). Galvanized 8 and 9 from a list printed to 0.001 in. The standard's own limits vary
# with the width of the sheet. Standing: published.
HOT_ROLLED_TOLERANCE = ((4, 6, 9), (7, 12, 8), (13, 14, 7), (15, 17, 6), (18, 18, 5))
COLD_ROLLED_TOLERANCE = ((10, 12, 6), (13, 16, 5), (17, 19, 4), (20, 25, 3), (26, 29, 2), (30, 30, 1))
GALVANIZED_TOLERANCE = ((8, 12, 9), (13, 14, 8), (15, 16, 6), (17, 19, 5), (20, 25, 4), (26, 30, 3))
