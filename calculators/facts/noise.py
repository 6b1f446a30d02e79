"""Noise limits, and how loud the work usually is."""

# 29 CFR 1910.95: tables G-16 and G-16a, Appendix A; law, seen. TWA = 16.61 log10(D / 100) + 90 as printed there.
# The dose for the hearing programme counts levels from 80 dB up ((d)(2)), that for the limit from 90 up (table G-16).
# [dB, dB, s, dB for a tenfold dose, dB]
CRITERION, EXCHANGE, DAY, TENFOLD = 90.0, 5.0, 8.0 * 3600.0, 16.61
PROGRAMME_FROM, LIMIT_FROM = 80.0, 90.0
ACTION, LIMIT = 0.5, 1.0
LOUDEST = 115.0  # table G-16 ends here: a quarter of an hour or less
TOP = 130.0  # table G-16a ends here

# NIOSH 98-126 (draft of 1996 seen): 85 dB, exchange 3 dB, TWA = 10 log10(D / 100) + 85, levels from 80 dB up (the
# last from memory). Standing: published.
NIOSH_CRITERION, NIOSH_EXCHANGE, NIOSH_TENFOLD = 85.0, 3.0, 10.0

# Health and Safety Executive (Great Britain), Hearing loss and vibration white finger, welding; published, seen:
# tungsten arc up to 75; rods 85 to 95; wire 95 to 102; plasma cutting by hand up to 100 A 98 to 105; flame gouging
# 95; flame cutting up to 100, above 90 from about 40 mm; air carbon arc 100 to 115; chipping slag 105; grinding
# 95 to 105. "Up to" is written as a band of 10 dB, from memory. (work, lowest, highest [dB(A)])
TYPICAL = (
    ("gas-metal-arc", 95.0, 102.0),
    ("shielded-metal-arc", 85.0, 95.0),
    ("gas-tungsten-arc", 65.0, 75.0),
    ("air-carbon-arc", 100.0, 115.0),
    ("plasma-cutting", 98.0, 105.0),
    ("oxygen-cutting", 90.0, 100.0),
    ("grinding", 95.0, 105.0),
    ("chipping", 105.0, 105.0),
)
