"""How far a piece may be off its nominal weight, as a share below and above.

Pipe: 10 % either way (ASTM A53; copies of it seen). Hollow sections: the wall 10 % either way (ASTM A500, from
memory). Angle and channel: 2.5 % either way (ASTM A6, from memory), and above that up to 3 % for the root fillet
that the sum leaves out (largest gap to the AISC and BS tables the tests hold). Plate and bar: not in this book.
"""

PIPE = (0.10, 0.10)
HOLLOW = (0.10, 0.10)
ROLLED = (0.025, 0.055)
