"""Copper of leads and cords: its resistance, the sizes sold, and what each carries. Coherent SI (m, m2, K, A, ohm)."""

# Annealed copper at 20 degC and its temperature coefficient there: NBS Handbook 100, Copper Wire Tables, 1966
# (0.017241 ohm mm2/m seen quoted; 0.00393 from memory). Standing: published. NEC Chapter 9 Table 8, made by others,
# comes out of both and the stranding below within 0.3 %.
COPPER_RESISTIVITY = 1.7241e-8
COPPER_COEFFICIENT = 0.00393
REFERENCE_TEMPERATURE = 293.15

# Strands run round one another and are that much longer than the cable. 2 %: ASTM B496 (seen quoted) and what NEC
# Chapter 9 Table 8 holds. Up to 7 % in rope-lay cable of fine wires: from memory (ASTM B172).
STRANDING = 1.02
FINE_STRANDING = 1.07

# A lead warmed by hours of work, as NEC Chapter 9 Table 8 takes it. Standing: published.
HOT_LEAD = 348.15

# American Wire Gauge, ASTM B258: 0.005 in at 36, 0.46 in at 4/0, even ratios between. 1/0 counts as 0, 4/0 as -3.
AWG_LEADS = (
    ("awg-4", 4),
    ("awg-3", 3),
    ("awg-2", 2),
    ("awg-1", 1),
    ("awg-1-0", 0),
    ("awg-2-0", -1),
    ("awg-3-0", -2),
    ("awg-4-0", -3),
)

# Metric leads: (name, nominal area, highest resistance at 20 degC per metre). IEC 60228:2004, class 5, plain copper;
# seen quoted alike in three cable texts. Standing: standard. A metric size is a promise of resistance, not of area.
METRIC_LEADS = (
    ("mm2-16", 16e-6, 1.21e-3),
    ("mm2-25", 25e-6, 0.780e-3),
    ("mm2-35", 35e-6, 0.554e-3),
    ("mm2-50", 50e-6, 0.386e-3),
    ("mm2-70", 70e-6, 0.272e-3),
    ("mm2-95", 95e-6, 0.206e-3),
    ("mm2-120", 120e-6, 0.161e-3),
)

# What one rubber cable in air carries without end at 75 degC: 125 A for 4 AWG, growing with area to the power 0.65.
# Meets NEC Table 400.5(B) (in Set Lighting Technician's Handbook, 4th ed., table D.1) within 1 % from 4 AWG to 4/0
# and 3 % down to 8 AWG. Standing: published; the power is a fit.
STEADY_CURRENT = 125.0
STEADY_AREA = 21.15e-6
STEADY_POWER = 0.65

# Loss in the leads that the industry's lists keep to: AWS Safety and Health Fact Sheet 39, 2016. Standing: published.
LEAD_LIMIT = 4.0

# What connectors and clamp lose together, V. Standing: common practice.
CONNECTION_LOSS = (0.3, 1.0)

# Arc time in ten minutes of steady welding by hand. Standing: common practice.
HAND_DUTY = 0.6

# What the more loaded of two leads side by side is taken to carry, since plugs and lugs differ. No published number
# found: our own allowance over an even half. Standing: common practice.
PAIR_SHARE = 0.6
