"""Repair of cracks and worn faces: how far to dig, how long to hold and to wait, and what cast iron wants.

Units as published (inch, hour, degF, degC). Standing is written beside each table. "From memory": the source is
named but was not open when the number was written.
"""

# How much sound metal goes with the crack, beyond each of its ends that lies inside the part, [in].
#
# Steel: AWS D1.1/D1.1M:2015, 5.25.1.4: extent found by acid etching, magnetic particles, penetrant or another equally
#   positive means; crack and 2 in of sound metal beyond each end removed. Seen as reproduced. Standard. For other
#   wrought metals the same, by common practice.
# Cast iron: US Army subcourse OD1651, lesson 1, task 1: a hole of 1/8 in, 1/4 in beyond each end. Seen. Published.
BEYOND_END = 2.0
BEYOND_END_IRON = 0.25
STOP_HOLE_IRON = 0.125

# Hole at each end, so that the crack does not run on while it is dug out: plate up to [in], hole [in]. Common practice.
STOP_HOLES = ((0.25, 0.125), (1000.0, 0.25))

# What the groove is taken to be where nobody says. 60 deg for a V, 45 deg and a radius of 1/4 in for a U, an
# opening of 1/8 in: AWS D1.1, prequalified butt joints B-U2, B-U3 and B-U6; from memory (its J and bevel details
# were seen). A bead the size of a 1/4 in fillet: common practice.
# Steel castings: Indian Boiler Regulations, regulation 80: a V for a crack opens at least 70 deg. Seen. Law.
ANGLE_V = 60.0
ANGLE_U = 45.0
ROOT_OPENING = 0.125
ROOT_RADIUS = 0.25
LARGEST_BEAD = 0.25
ANGLE_OF_CASTINGS = 70.0

# Held at the preheat after the last pass: 1 h for each inch of thickness, and 1 h at least. Common practice. TWI, "What
# is meant by post-heating and how is it applied?" (seen, published): what it is for; standards guide loosely.
HOLD_PER_INCH = 1.0
LEAST_HOLD = 1.0

# Hours from cold metal to the test for cracks.
#
# 48: AWS D1.1 for A514, A517 and A709 HPS 100W; CSA W59 for quenched and tempered steel and stiff joints, "preferably";
#   both as quoted by the CWB Group, "Why do some standards require that you wait" (seen). Standard.
# 16: EN 1011-2:2001, clause 18, in general; longer above 50 mm or 500 N/mm2; as quoted (seen). Standard.
WAIT_HARD = 48.0
WAIT_GENERAL = 16.0
LONGER_ABOVE = 50.0  # mm

# Gray iron with a nickel rod: baked at 1000 degF to drive off what it soaked up; preheat and interpass not below 400
# to 500 degF; slow cooling. US Army subcourse OD1651, lesson 1, task 1, engine blocks. Seen. Published.
IRON_BAKE = 1000.0
IRON_LEAST = (400.0, 500.0)
# Ductile iron, [degC]: thick or complex ferritic castings from 100 to 200; pearlitic at least 250; 320 to 330 where
# stresses are high. TWI, "How do you weld spheroidal or nodular cast iron by MMA (SMAW) welding?" Seen. Published.
DUCTILE_LEAST = (100.0, 200.0)
DUCTILE_PEARLITIC = 250.0
# Building up cast iron: 1000 to 1200 degF, slow cooling, not generally recommended. NAVFAC P-433 (1991), section 2.
# Seen. Published.
IRON_BUILD_UP = (1000.0, 1200.0)

# Hard-facing: not more than 1/4 in or two layers; what is more deeply worn is first built up to within 3/8 in of the
# finished size or nearer. NAVFAC P-433 (1991), section 2. Seen. Published. US Navy Steelworker, volume 1, gives 1/16 to
# 1/8 in, seldom over 1/4 in (seen).
HARD_FACING_MOST = 0.25
HARD_FACING_LAYERS = 2
