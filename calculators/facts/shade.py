"""The filter shade that each arc and torch calls for.

Least shade: 29 CFR 1910.133(a)(5), the same in 1915.153 and 1926.102; law, seen. Two of its bands share each edge: the
edge counts for the higher one. A state's copy ends gas metal arc at 550 A; the federal table ends at 500 A.

Comfort: ANSI Z49.1 and AWS F2.2, lens shade selector; standard, seen quoted, the sheet itself not read. Below 60 A it
gives none for wire and rods. What it gives for small plasma cutters (4 to 8 below 80 A) is less than the law's 8.
"""

_INCH = 0.0254
_SMALL = _INCH / 32.0  # the law's unit for rods

# (process, ((end of the band [A], least, comfort from, comfort to; 0 where there is none), ...))
_WIRE = ((60.0, 7, 0, 0), (160.0, 10, 11, 11), (250.0, 10, 12, 12), (500.0, 10, 14, 14))
CURRENTS = (
    ("gas-metal-arc", _WIRE),
    ("flux-cored-arc", _WIRE),
    ("shielded-metal-arc", ((60.0, 7, 0, 0), (160.0, 8, 10, 10), (250.0, 10, 12, 12), (550.0, 11, 14, 14))),
    ("gas-tungsten-arc", ((50.0, 8, 10, 10), (150.0, 8, 12, 12), (500.0, 10, 14, 14))),
    ("air-carbon-arc", ((500.0, 10, 12, 12), (1000.0, 11, 14, 14))),
    ("plasma-cutting", ((300.0, 8, 9, 9), (400.0, 9, 12, 12), (800.0, 10, 14, 14))),
    ("plasma-welding", ((20.0, 6, 6, 8), (100.0, 8, 10, 10), (400.0, 10, 12, 12), (800.0, 11, 14, 14))),
)

# Rods: less than 3, 3 to 5, 5 to 8 and more than 8 thirty-seconds of an inch. An edge with its own size in the band
# below, `more than`, stays there. (end [m], whether the end belongs to the band, least, comfort from, comfort to)
RODS = (
    (3.0 * _SMALL, False, 7, 0, 0),
    (5.0 * _SMALL, False, 8, 10, 10),
    (8.0 * _SMALL, True, 10, 12, 12),
    (0.5 * _INCH, True, 11, 14, 14),
)
# Plate under, from to, and over. The top is where this book stops, not the law.
PLATES = (
    ("gas-welding", ((_INCH / 8.0, False, 4, 4, 5), (_INCH / 2.0, True, 5, 5, 6), (12.0 * _INCH, True, 6, 6, 8))),
    ("oxygen-cutting", ((_INCH, False, 3, 3, 4), (6.0 * _INCH, True, 4, 4, 5), (12.0 * _INCH, True, 5, 5, 6))),
)
FIXED = (("brazing", 3, 3, 4), ("soldering", 2, 2, 2), ("carbon-arc", 14, 14, 14))
