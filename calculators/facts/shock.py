"""Electric shock from welding current. V, ohm, A."""

# 29 CFR 1910.254(b)(3), word for word in WAC 296-24-68503 (seen): most volts with no arc, (ac, dc). By hand, and where a
# machine moves the gun. Law.
BY_HAND = (80.0, 100.0)
BY_MACHINE = (100.0, 100.0)
# Michigan R 408.11272 (seen): ac in wet places takes a control that brings it below 50 V; a dc output with more than 10 %
# of ripple counts as ac. Law there; the federal rule recommends the control.
WET_AC = 50.0

# NIOSH 98-131: skin wet with sweat or water, hand to foot. From memory.
WET_SKIN = 1000.0
# NIOSH, 60 Hz, as quoted (seen): a hand cannot let go; breathing stops; the heart stops pumping. Published.
LET_GO = 0.016
BREATHING = 0.020
HEART = 0.100
