"""Magnesium in aluminum alloys and their fillers, and where it rules a filler out.

Nominal % by mass; the fillers' limits are in fillers_alloy.py. Alloys: Aluminum Association, from memory.
"""

BASES = (("1100-3003", 0.0), ("5052", 2.5), ("5083", 4.4), ("6061", 1.0))
CRACKING = ("2024-7075",)  # hot cracks and no strength beside the weld; common practice
FILLERS = (("1100", 0.0), ("4043", 0.0), ("4047", 0.0), ("5554", 2.7), ("5356", 5.0), ("5183", 4.75), ("5556", 5.1))
SILICON_FILLERS = ("4043", "4047")
SOME_MAGNESIUM = 2.0  # Mathers, p. 49; published
MUCH_MAGNESIUM = 3.0  # above it, none for hot service, and silicon does harm beyond doubt; from memory
