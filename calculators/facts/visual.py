"""What may be seen on a finished weld of statically loaded building steel. Lengths in m.

AWS D1.1, visual inspection acceptance: table 6.1 of the 2000 and 2004 editions and 8.1 of 2020, seen as reproduced, for
cracks, fusion, craters, size and undercut (standard). Pores: seen quoted (standard). Caps of groove welds: from memory.
The inch column: the code's own mm column rounds to 1, 2 and 50 mm.
"""

_INCH = 0.0254

# Material thinner than THICK: undercut to SHALLOW, and to DEEP over a length of DEEP_LENGTH in any 12 in. From THICK on:
# to DEEP at any length.
THICK = 1.0 * _INCH
SHALLOW = 0.03125 * _INCH
DEEP = 0.0625 * _INCH
DEEP_LENGTH = 2.0 * _INCH

# Leg that the drawing asks for, from -> how much may be missing, over SHORT_SHARE of the weld's length. The first row
# is for less too.
SHORT_LEGS = ((0.1875 * _INCH, 0.0625 * _INCH), (0.25 * _INCH, 0.09375 * _INCH), (0.3125 * _INCH, 0.125 * _INCH))
SHORT_SHARE = 0.10

# Sum of the diameters of pores of 1/32 in and more: in an inch, and in 12 in. None in a butt joint pulled across.
PORES_IN_INCH = 0.375 * _INCH
PORES_IN_FOOT = 0.75 * _INCH

# Thickness up to and with -> highest cap of a groove weld.
CAPS = ((1.0 * _INCH, 0.125 * _INCH), (2.0 * _INCH, 0.1875 * _INCH), (10.0, 0.25 * _INCH))
