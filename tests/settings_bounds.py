"""What one pass of each job in settings_situations.py has to be: leg, passes, travel, gas flow and arc energy.

None of it is read off the answer of this code. Common practice, but for what is named:

- leg: as thick as the thinner metal up to 1/4 in, no less than ANSI/AISC 360, table J2.4 (standard): 3/16 in above
  1/4 in of metal, 1/4 in above 1/2 in, 5/16 in above 3/4 in; a wire too heavy for sheet lays up to 1/16 in more;
- one pass lays up to 5/16 in by hand (AWS D1.1 lets 3/8 to 1/2 in; standard, seen reproduced): a single fillet up to
  there is one pass, 3/8 in of single V two or three;
- travel of a hand: 10 to 22 in/min on sheet, 8 to 20 in short-circuit on 3/16 in and more, 4 to 10 uphill on steel,
  8 to 25 in spray, 15 to 30 on aluminum;
- gas: 25 to 40 ft3/h on steel, 30 to 50 on aluminum and with helium (NAVEDTRA 14119 has 50 on 1/2 in of aluminum;
  published, seen), the top of the range in a breeze; 15 to 20 L/min, 32 to 42 ft3/h, is specified (Beyer and others,
  2013; published, abstract seen);
- arc energy, V x A x 60 / travel: 1.5 to 6 kJ/in on sheet to 14 gauge, 4 to 12 on 11 gauge to 1/8 in (to 16 uphill and
  in a gap), 12 to 30 on 3/16 in and 1/4 in, 15 to 40 uphill, 20 to 55 in spray on plate, 4 to 10 on 1/8 in of aluminum
  and 14 to 32 on thicker.

(leg [in] or None where no leg is asked or the bead is wider than the lap, passes, travel [in/min], flow [ft3/h],
arc energy [kJ/in])
"""

Bounds = tuple[float, float]

_SHEET: tuple[Bounds, Bounds, Bounds] = ((10, 22), (25, 40), (1.5, 6))
_EIGHTH: tuple[Bounds, Bounds, Bounds] = ((10, 22), (25, 40), (4, 12))
_PLATE: tuple[Bounds, Bounds, Bounds] = ((7, 20), (25, 40), (12, 30))
_UPHILL: tuple[Bounds, Bounds, Bounds] = ((4, 10), (25, 40), (15, 40))
_SPRAY: tuple[Bounds, Bounds, Bounds] = ((8, 25), (30, 40), (20, 55))
_ALUMINUM: tuple[Bounds, Bounds, Bounds] = ((15, 30), (30, 50), (14, 32))

# (what, (leg, passes, travel, flow, arc energy))
PASSES: dict[str, tuple[Bounds | None, Bounds, Bounds, Bounds, Bounds]] = {
    "overhead sheet patch": (None, (1, 1), *_SHEET),
    "half-inch flat fillet": ((0.1875, 0.3125), (1, 1), *_SPRAY),
    "aluminum trough": (None, (1, 1), (15, 30), (30, 50), (4, 10)),
    "stainless rail": ((0.065, 0.1275), (1, 1), (10, 22), (30, 50), (1.5, 6)),
    "galvanized gate": ((0.0785, 0.141), (1, 1), *_SHEET),
    "long leads off a small generator": ((0.125, 0.1875), (1, 1), *_EIGHTH),
    "hitch bracket, quarter-inch": ((0.25, 0.25), (1, 1), (7, 12), (25, 40), (18, 30)),
    "exhaust pipe": (None, (1, 1), *_SHEET),
    "body panel": (None, (1, 1), *_SHEET),
    "pasture fence rail": ((0.12, 0.1825), (1, 1), (15, 25), (25, 40), (4, 12)),
    "angle iron frame, uphill": ((0.1875, 0.25), (1, 1), *_UPHILL),
    "plow patch, uphill": ((0.25, 0.25), (1, 1), (5, 9), (25, 40), (18, 36)),
    "bracket in carbon dioxide": ((0.125, 0.1875), (1, 1), *_EIGHTH),
    "bucket edge": ((0.3125, 0.3125), (1, 2), *_SPRAY),
    "beam web, thin wire": ((0.1875, 0.3125), (1, 1), *_SPRAY),
    "grooved plate with backing": (None, (2, 3), *_SPRAY),
    "stainless flange": ((0.1875, 0.3125), (1, 1), *_SPRAY),
    "stainless counter": (None, (1, 1), *_SHEET),
    "boat hull, uphill": ((0.25, 0.25), (1, 1), (15, 24), (30, 50), (14, 24)),
    "thick aluminum, horizontal": ((0.1875, 0.3125), (1, 1), *_ALUMINUM),
    "trailer floor": (None, (1, 1), *_EIGHTH),
    "tool box corner": (None, (1, 1), (10, 22), (25, 40), (3, 9)),
    "bumper tube with heavy wire": ((0.125, 0.1875), (1, 1), *_EIGHTH),
    "hand rail butt, overhead": (None, (1, 1), (7, 20), (25, 40), (6, 16)),
    "quarter-inch on a 200 A machine": ((0.25, 0.25), (1, 1), *_SPRAY),
    "sheet on a household outlet": ((0.0598, 0.1225), (1, 1), *_SHEET),
    "outdoors in a breeze": ((0.1875, 0.25), (1, 1), (8, 20), (38, 50), (12, 30)),
    "thin plate with spray gas aboard": ((0.125, 0.1875), (1, 1), *_EIGHTH),
    "metric channel": ((0.118, 0.181), (1, 1), (4, 10), (25, 40), (6, 16)),
    "rusty channel": ((0.1875, 0.25), (1, 1), *_PLATE),
    "thick plate and nothing but 75/25": ((0.1875, 0.3125), (1, 1), *_SPRAY),
    "boat seam, filler not told": ((0.25, 0.25), (1, 1), *_ALUMINUM),
    "half-inch on a 250 A machine with 90/10": ((0.1875, 0.3125), (1, 1), *_SPRAY),
    "stepless knob at the end of long leads": ((0.125, 0.1875), (1, 1), *_EIGHTH),
    "gate hinge, uphill": ((0.25, 0.25), (1, 1), *_UPHILL),
    "trailer tongue, uphill": ((0.1875, 0.25), (1, 1), *_UPHILL),
}
