"""What structural codes say of fillet welds: sizes, factors, strengths. Lengths in m, stresses in Pa."""

_INCH = 0.0254
_KSI = 6894757.293168361  # Pa: 1000 lbf/in2, from the pound and the standard gravity

# ANSI/AISC 360 table J2.4 (2005 and 2010 texts seen; AWS D1.1 table 5.7 in 2020, 7.7 in 2025, gives the same
# numbers): thickness of the thinner part up to and with -> smallest leg. Above the last row: LEAST_LEG_OF_THICK.
LEAST_LEGS = (
    (0.25 * _INCH, 0.125 * _INCH),
    (0.5 * _INCH, 0.1875 * _INCH),
    (0.75 * _INCH, 0.25 * _INCH),
)
LEAST_LEG_OF_THICK = 0.3125 * _INCH

# ANSI/AISC 360 J2.2b: along an edge of 1/4 in and more, 1/16 in stays clear, so that the edge can be seen whole.
EDGE_LEFT_CLEAR_FROM = 0.25 * _INCH
EDGE_CLEARANCE = 0.0625 * _INCH
SIXTEENTH = 0.0625 * _INCH

# AWS D1.1, assembly tolerances: a gap above 1/16 in is added to the leg; above 3/16 in the parts are brought closer.
# Quoted on the American Welding Society's forum; the clause itself was not seen.
GAP_NOT_COUNTED = 0.0625 * _INCH
LARGEST_GAP = 0.1875 * _INCH

# ANSI/AISC 360: weld shear J2.4 with safety factor 2.00 or resistance factor 0.75; shear yielding J4.2 with
# 1.50 or 1.00; shear rupture J4.2 with 2.00 or 0.75. Shear is 0.60 of the tensile stress in all three.
SHEAR_SHARE = 0.60
WELD_SAFETY_FACTOR, WELD_RESISTANCE_FACTOR = 2.00, 0.75
YIELD_SAFETY_FACTOR, YIELD_RESISTANCE_FACTOR = 1.50, 1.00

# EN 1993-1-8 table 2.1 and EN 1993-1-1 6.1, recommended values; the National Annex may change them.
GAMMA_M2 = 1.25
GAMMA_M0 = 1.00

# EN 1993-1-8: 4.5.2(2) least throat, 4.5.1(2) shortest length, 4.1(1) least thickness.
LEAST_THROAT = 0.003
SHORTEST_EUROCODE_LENGTH = 0.030
LEAST_EUROCODE_THICKNESS = 0.004

# A filler's classification strength: the least tensile strength that its class stands for (AWS A5 series). The
# tensile strength of a certificate or a test is not it.
ELECTRODE_STRENGTHS = (
    ("60-ksi", 60.0 * _KSI),
    ("70-ksi", 70.0 * _KSI),
    ("80-ksi", 80.0 * _KSI),
    ("90-ksi", 90.0 * _KSI),
    ("100-ksi", 100.0 * _KSI),
    ("110-ksi", 110.0 * _KSI),
)

# steel -> least yield and tensile strength. ASTM A36 and A572 grade 50: AISC Manual table 2-5, as quoted in the AISC
# Design Examples. S grades: EN 1993-1-1 table 3.1 for the yield, to 40 mm, and the lower tensile strengths of
# EN 10025, which the table of EN 1993-1-1 exceeds for S275 and S355; from memory.
STEELS = (
    ("a36", 36.0 * _KSI, 58.0 * _KSI),
    ("a572-50", 50.0 * _KSI, 65.0 * _KSI),
    ("s235", 235.0e6, 360.0e6),
    ("s275", 275.0e6, 410.0e6),
    ("s355", 355.0e6, 470.0e6),
    ("s420", 420.0e6, 520.0e6),
    ("s460", 460.0e6, 540.0e6),
)
THICKEST_OF_EUROPEAN_STEELS = 0.040

# EN 1993-1-8 table 4.1.
CORRELATION_FACTORS = (("s235", 0.80), ("s275", 0.85), ("s355", 0.90), ("s420", 1.00), ("s460", 1.00))
