"""What goes wrong with a weld, what causes it, and which number the remedy moves which way.

The order of causes is the order in which to look while no number speaks: common practice, what is free and quick
first. Standing of each cause: the source named beside it in FAULTS, one of

  handbook   GMAW/FCAW Handbook (Goodheart-Willcox, 2018), pages 76, 155 to 157; published, excerpts seen
  gmaw       Gas Metal Arc Welding Handbook (Goodheart-Willcox, 2008), chapter 3; published, excerpt seen
  forehand   Welding Fundamentals (Goodheart-Willcox, 2017), figure 17-6; published, seen
  navy       NAVEDTRA 14119, chapter 10: figures 10-53, 10-61, 10-62 and arc blow; published, excerpts seen
  army       US Army TM 9-2350-247-20-3, aluminum hull; published, excerpt seen
  crater     Pipe Welding (Lake Washington Institute of Technology, 2024), chapter 49; published, seen
  cracking   TWI Job Knowledge 44, solidification cracking; published, excerpt seen
  wind       AWS D1.1, 5 mph; standard, seen quoted
  frost      US Army TC 9-237 (1993), 25 ft3/h from one carbon dioxide cylinder; published
  leads      AWS Safety and Health Fact Sheet 39, 4 V; published
  memory     trouble tables of textbooks, from memory
  practice   common practice
"""

# (fault, ((cause, source), ... in the order in which to look))
FAULTS = (
    (
        "porosity",
        (
            ("wind", "wind"),
            ("flow-low", "navy"),
            ("nozzle-clogged", "practice"),
            ("dirty", "navy"),
            ("stick-out-long", "memory"),
            ("flow-high", "practice"),
            ("wire-damp", "navy"),
            ("gun-leans", "army"),
            ("gas-ends", "navy"),
            ("gas-wrong", "practice"),
            ("polarity", "practice"),
        ),
    ),
    (
        "worm-tracks",
        (("volts-high", "memory"), ("wire-damp", "memory"), ("stick-out-short", "memory"), ("dirty", "practice")),
    ),
    (
        "spatter",
        (
            ("volts-low", "memory"),
            ("volts-high", "memory"),
            ("stick-out-long", "memory"),
            ("below-spray", "practice"),
            ("polarity", "practice"),
            ("gas-carbon-dioxide", "memory"),
            ("work-clamp", "gmaw"),
            ("inductance", "memory"),
            ("dirty", "practice"),
        ),
    ),
    (
        "stubbing",
        (
            ("volts-low", "practice"),
            ("lead-drop", "leads"),
            ("work-clamp", "gmaw"),
            ("feed-high", "practice"),
            ("inductance", "practice"),
        ),
    ),
    (
        "burn-through",
        (("feed-high", "handbook"), ("travel-slow", "handbook"), ("gap-wide", "memory"), ("gun-drags", "handbook")),
    ),
    (
        "cold-lap",
        (
            ("feed-low", "navy"),
            ("short-circuit-thick", "practice"),
            ("downhill", "practice"),
            ("puddle-ahead", "memory"),
            ("volts-low", "memory"),
            ("stick-out-long", "handbook"),
            ("dirty", "memory"),
            ("polarity", "practice"),
            ("travel-fast", "navy"),
        ),
    ),
    (
        "undercut",
        (
            ("travel-fast", "memory"),
            ("volts-high", "memory"),
            ("feed-high", "memory"),
            ("toes-unfilled", "memory"),
            ("gun-leans", "memory"),
        ),
    ),
    (
        "ropy-bead",
        (
            ("volts-low", "memory"),
            ("feed-low", "memory"),
            ("stick-out-long", "handbook"),
            ("travel-slow", "memory"),
            ("gun-drags", "forehand"),
        ),
    ),
    ("crater-crack", (("crater-unfilled", "crater"), ("feed-high", "practice"), ("dirty", "practice"))),
    (
        "center-crack",
        (
            ("filler-lean", "memory"),
            ("travel-fast", "cracking"),
            ("volts-high", "memory"),
            ("gap-wide", "cracking"),
            ("bead-deep", "cracking"),
            ("dirty", "memory"),
            ("preheat", "handbook"),
        ),
    ),
    ("toe-crack", (("preheat", "memory"), ("filler-lean", "memory"), ("wire-damp", "memory"), ("dirty", "memory"))),
    (
        "burn-back",
        (
            ("feed-low", "memory"),
            ("stick-out-short", "memory"),
            ("volts-high", "memory"),
            ("tip-worn", "memory"),
            ("tension-low", "memory"),
            ("burnback-long", "memory"),
        ),
    ),
    (
        "birdnest",
        (
            ("tip-blocked", "memory"),
            ("tension-high", "gmaw"),
            ("liner-drags", "memory"),
            ("guide-off", "memory"),
            ("soft-wire", "practice"),
        ),
    ),
    (
        "wire-slip",
        (
            ("tip-blocked", "practice"),
            ("tension-low", "gmaw"),
            ("groove-wide", "memory"),
            ("liner-drags", "memory"),
            ("brake-tight", "practice"),
        ),
    ),
    (
        "erratic-arc",
        (
            ("work-clamp", "gmaw"),
            ("tip-worn", "memory"),
            ("polarity", "memory"),
            ("lead-drop", "leads"),
            ("liner-drags", "practice"),
            ("stick-out-long", "practice"),
            ("gas-wrong", "practice"),
        ),
    ),
    (
        "arc-blow",
        (("clamp-place", "navy"), ("volts-high", "practice"), ("leads-coiled", "leads"), ("feed-high", "practice")),
    ),
    (
        "slag",
        (
            ("not-cleaned", "practice"),
            ("puddle-ahead", "practice"),
            ("gun-pushes", "practice"),
            ("feed-low", "practice"),
            ("volts-low", "practice"),
        ),
    ),
    (
        "whiskers",
        (("arc-ahead", "memory"), ("feed-high", "memory"), ("stick-out-short", "memory"), ("gap-wide", "practice")),
    ),
    (
        "soot",
        (
            ("gun-drags", "army"),
            ("dirty", "army"),
            ("wind", "wind"),
            ("flow-low", "memory"),
            ("volts-high", "practice"),
            ("stick-out-long", "army"),
            ("gas-wrong", "practice"),
        ),
    ),
    (
        "regulator-freeze",
        (("flow-frost", "frost"), ("cylinder-cold", "practice"), ("cylinder-lies", "practice")),
    ),
)

# (cause, the number that its remedy moves, 1 up or -1 down)
CAUSES = (
    ("wind", "wind_speed", -1),
    ("flow-low", "gas_flow", 1),
    ("flow-high", "gas_flow", -1),
    ("flow-frost", "gas_flow", -1),
    ("nozzle-clogged", "nozzle_opening", 1),
    ("gas-ends", "cylinder_pressure", 1),
    ("gas-wrong", "carbon_dioxide", -1),
    ("gas-carbon-dioxide", "carbon_dioxide", -1),
    ("short-circuit-thick", "carbon_dioxide", -1),
    ("dirty", "cleaned_width", 1),
    ("wire-damp", "wire_cut_off", 1),
    ("gun-leans", "gun_lean", -1),
    ("gun-drags", "push_angle", 1),
    ("gun-pushes", "push_angle", -1),
    ("stick-out-long", "contact_tip_to_work", -1),
    ("stick-out-short", "contact_tip_to_work", 1),
    ("volts-low", "voltage", 1),
    ("volts-high", "voltage", -1),
    ("feed-low", "wire_feed_speed", 1),
    ("feed-high", "wire_feed_speed", -1),
    ("below-spray", "wire_feed_speed", 1),
    ("inductance", "inductance", 1),
    ("polarity", "polarity", 1),  # -1 for self-shielded wire
    ("lead-drop", "lead_voltage_drop", -1),
    ("work-clamp", "clamp_drop", -1),
    ("clamp-place", "clamp_distance", 1),
    ("leads-coiled", "lead_turns", -1),
    ("travel-fast", "travel_speed", -1),
    ("travel-slow", "travel_speed", 1),
    ("puddle-ahead", "travel_speed", 1),
    ("arc-ahead", "travel_speed", -1),
    ("downhill", "weld_slope", 1),
    ("toes-unfilled", "toe_pause", 1),
    ("gap-wide", "root_gap", -1),
    ("crater-unfilled", "crater_fill", 1),
    ("bead-deep", "bead_depth", -1),
    ("preheat", "preheat_temperature", 1),
    ("filler-lean", "filler_alloying", 1),
    ("tip-worn", "tip_bore", -1),
    ("tip-blocked", "tip_opening", 1),
    ("tension-low", "roll_tension", 1),
    ("tension-high", "roll_tension", -1),
    ("liner-drags", "liner_drag", -1),
    ("guide-off", "guide_gap", -1),
    ("groove-wide", "groove_width", -1),
    ("brake-tight", "spool_brake", -1),
    ("burnback-long", "burnback_time", -1),
    ("soft-wire", "gun_length", -1),
    ("not-cleaned", "pass_cleaning", 1),
    ("cylinder-cold", "cylinder_warmth", 1),
    ("cylinder-lies", "cylinder_lean", -1),
)

# A step where no number shows how far to go; common practice. [V], [-]
VOLTS_STEP = 0.5
FEED_STEP = 0.10
# How far outside the usual volts a meter has to be, with the leads guessed, before it is hinted at; ours. [V]
VOLTS_DOUBT = 1.0
# What is taken where it is not told: the bore most guns have. Common practice. [m]
NOZZLE_BORE = 12.7e-3
