"""The wire and transfer that most trucks have loaded, 0.035 in in short-circuit, and the thickness it serves.

A file of its own, since questions that only lead on to others need nothing else of theirs.
"""

# Thinner sheet it overheats: another wire first. Common practice. [m]
THINNEST = 1.5e-3
# The wire asked about there instead, 0.023 in; common practice. [m]
THIN_WIRE = 0.5842e-3
# Thicker plate it laps cold: another process or transfer first; 1/4 in, common practice. [m]
THICKEST = 6.35e-3
