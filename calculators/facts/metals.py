"""Metals met on repairs: their families, what density and shop tests say of them, what is not to be welded.

Points are whole numbers on a scale where one point about doubles or halves the odds; they are our own grading of
what the named source says in words, no measurement. Every row names the key of its source; the titles and standings
stand in metal_id_sources.py. "memory" rows could not be confirmed by a second route.
"""

# In the order in which they are met on a truck; it decides between families that all else leaves level.
FAMILIES = (
    "mild-steel",
    "medium-carbon",
    "gray-iron",
    "aluminum",
    "austenitic",
    "quenched-tempered",
    "ductile-iron",
    "magnetic-stainless",
    "high-carbon",
    "copper-alloy",
    "copper",
    "zinc",
    "manganese",
    "white-iron",
    "wrought-iron",
    "magnesium",
    "nickel",
    "titanium",
    "lead",
)

# How far off a family's range [share], and the points for it: a scale and a tape read a part to a few hundredths.
DENSITY_POINTS = ((0.03, 3), (0.08, -1), (0.15, -4))
DENSITY_POINTS_FAR = -8

_STEELS = ("mild-steel", "medium-carbon", "quenched-tempered", "high-carbon", "wrought-iron")
_IRONS = ("gray-iron", "ductile-iron", "white-iron")
_STAINLESS = ("austenitic", "magnetic-stainless")
_LIGHT = ("aluminum", "magnesium")

# (test, answer, ((points, families) ...), points of every other family, source)
EVIDENCE = (
    ("magnet", "strong", ((2, _STEELS + _IRONS + ("magnetic-stainless",)), (0, ("nickel",)), (-3, ("austenitic",)), (-4, ("manganese",))), -6, "engineers"),
    ("magnet", "weak", ((2, ("austenitic", "nickel")), (0, ("manganese",)), (-2, ("magnetic-stainless",)), (-3, _STEELS + _IRONS)), -5, "engineers"),
    ("magnet", "none", ((2, _LIGHT + ("zinc", "copper", "copper-alloy", "titanium", "lead", "austenitic", "manganese")), (0, ("nickel",))), -6, "steelworker"),
    ("spark", "none", ((2, _LIGHT + ("zinc", "copper", "copper-alloy", "lead")), (-1, ("nickel",))), -6, "machinery"),
    ("spark", "long-few-forks", ((3, ("mild-steel", "quenched-tempered", "wrought-iron")), (0, ("medium-carbon",)), (-1, _STAINLESS), (-2, ("manganese",)), (-3, ("high-carbon",)), (-4, _IRONS)), -6, "ordnance"),
    ("spark", "many-forks", ((3, ("medium-carbon",)), (1, ("quenched-tempered",)), (0, ("mild-steel", "high-carbon", "manganese")), (-2, _STAINLESS + _IRONS), (-3, ("wrought-iron",))), -6, "ordnance"),
    ("spark", "bushy", ((3, ("high-carbon",)), (0, ("medium-carbon", "manganese", "ductile-iron")), (-1, ("gray-iron", "white-iron")), (-3, ("quenched-tempered",) + _STAINLESS), (-4, ("mild-steel", "wrought-iron"))), -6, "ordnance"),
    ("spark", "red-short", ((3, _IRONS), (-1, ("high-carbon",)), (-3, _STAINLESS + ("nickel",)), (-4, ("mild-steel", "medium-carbon", "quenched-tempered", "wrought-iron", "manganese"))), -6, "machinery"),
    ("spark", "straw", ((3, _STAINLESS), (-1, ("nickel", "mild-steel", "wrought-iron")), (-2, ("quenched-tempered",)), (-3, ("medium-carbon", "high-carbon", "manganese") + _IRONS)), -6, "machinery"),
    ("spark", "orange-tiny", ((3, ("nickel",)), (-2, _STAINLESS)), -5, "machinery"),
    ("spark", "white-fans", ((3, ("manganese",)), (-1, ("medium-carbon", "high-carbon")), (-2, ("mild-steel", "quenched-tempered"))), -5, "memory"),
    ("spark", "blinding", ((4, ("titanium",)), (-2, ("magnesium",)), (-4, _STEELS + ("manganese",))), -6, "memory"),
    ("file", "clogs", ((2, _LIGHT + ("lead", "copper", "zinc")), (0, ("copper-alloy",)), (-3, ("mild-steel", "wrought-iron", "gray-iron"))), -5, "machinery"),
    ("file", "easy", ((2, _LIGHT + _STAINLESS + ("mild-steel", "wrought-iron", "gray-iron", "ductile-iron", "copper-alloy", "nickel", "zinc", "copper")), (1, ("medium-carbon",)), (0, ("titanium",)), (-1, ("high-carbon", "lead")), (-2, ("manganese",)), (-3, ("quenched-tempered",))), -6, "machinery"),
    ("file", "resists", ((2, ("medium-carbon", "quenched-tempered", "high-carbon", "manganese", "titanium", "magnetic-stainless")), (0, ("austenitic", "ductile-iron", "nickel")), (-1, ("gray-iron",)), (-2, ("mild-steel", "wrought-iron")), (-3, ("white-iron",))), -5, "machinery"),
    ("file", "barely", ((2, ("high-carbon", "quenched-tempered")), (0, ("medium-carbon", "white-iron", "manganese", "magnetic-stainless")), (-3, ("gray-iron", "ductile-iron", "titanium"))), -6, "machinery"),
    ("file", "slides", ((3, ("white-iron", "high-carbon")), (0, ("medium-carbon",)), (-1, ("quenched-tempered", "manganese", "magnetic-stainless")), (-3, ("mild-steel", "gray-iron", "ductile-iron"))), -6, "machinery"),
    ("chip", "curls", ((2, _STEELS + _STAINLESS + ("aluminum", "copper", "lead", "nickel")), (0, ("copper-alloy", "magnesium", "titanium")), (-1, ("ductile-iron",)), (-3, ("zinc",)), (-4, ("manganese",)), (-5, ("gray-iron",))), -6, "ordnance"),
    ("chip", "short", ((3, ("gray-iron",)), (1, ("ductile-iron", "zinc")), (0, ("copper-alloy", "magnesium")), (-1, ("white-iron",))), -3, "memory"),
    ("chip", "splinters", ((3, ("white-iron",)), (0, ("gray-iron", "zinc")), (-1, ("high-carbon",))), -4, "memory"),
    ("chip", "uncut", ((3, ("manganese",)), (0, ("high-carbon", "white-iron", "quenched-tempered")), (-2, ("titanium", "medium-carbon"))), -5, "ordnance"),
    ("sound", "rings", ((1, _STEELS + _STAINLESS + ("manganese", "ductile-iron", "nickel", "titanium", "copper-alloy")), (0, _LIGHT + ("copper",)), (-1, ("white-iron",)), (-2, ("zinc",)), (-3, ("gray-iron",))), -4, "damping"),
    ("sound", "dull", ((2, ("gray-iron", "lead")), (1, ("zinc",)), (0, _LIGHT + ("white-iron", "copper"))), -1, "damping"),
    ("color", "steel-gray", ((1, _STEELS + _IRONS + ("manganese", "titanium")), (0, _STAINLESS), (-1, ("nickel", "zinc")), (-3, _LIGHT)), -5, "ordnance"),
    ("color", "dark-gray", ((3, ("gray-iron",)), (2, ("ductile-iron",)), (-2, ("white-iron",)), (-3, _STEELS + ("manganese",))), -5, "memory"),
    ("color", "silver-white", ((2, _LIGHT + _STAINLESS + ("nickel",)), (0, ("titanium", "zinc", "white-iron")), (-2, _STEELS + ("gray-iron", "ductile-iron", "manganese", "lead"))), -6, "ordnance"),
    ("color", "blue-gray", ((2, ("zinc", "lead")), (-1, ("magnesium",)), (-2, ("aluminum", "titanium"))), -4, "engineers"),
    ("color", "yellow", ((4, ("copper-alloy",)), (-2, ("copper",))), -6, "engineers"),
    ("color", "red", ((4, ("copper",)), (1, ("copper-alloy",))), -6, "memory"),
    ("corrosion", "red-rust", ((2, ("mild-steel", "medium-carbon", "quenched-tempered", "high-carbon", "manganese") + _IRONS), (0, ("wrought-iron",)), (-1, ("magnetic-stainless",)), (-3, ("austenitic",))), -5, "common"),
    ("corrosion", "layered-rust", ((4, ("wrought-iron",)), (0, ("mild-steel",)), (-2, ("medium-carbon", "quenched-tempered", "high-carbon")), (-3, _IRONS)), -6, "memory"),
    ("corrosion", "white-powder", ((2, _LIGHT + ("zinc",)), (-1, ("lead", "mild-steel"))), -4, "common"),
    ("corrosion", "gray-film", ((2, _LIGHT + ("zinc", "lead")), (0, ("titanium", "nickel"))), -2, "ordnance"),
    ("corrosion", "green", ((2, ("copper", "copper-alloy")), (1, ("nickel",))), -5, "common"),
    ("corrosion", "stays-bright", ((2, _STAINLESS + ("titanium", "nickel")), (0, ("aluminum",)), (-2, ("mild-steel",))), -3, "common"),
    ("surface", "sand-cast", ((2, _IRONS + ("manganese",)), (0, _LIGHT + ("copper-alloy", "mild-steel", "medium-carbon", "austenitic", "magnetic-stainless", "nickel")), (-4, ("quenched-tempered",)), (-5, ("wrought-iron",))), -3, "steelworker"),
    ("surface", "die-cast", ((2, _LIGHT + ("zinc",)), (-1, ("copper-alloy",))), -4, "memory"),
    ("surface", "rolled", ((1, ("mild-steel", "medium-carbon", "quenched-tempered", "wrought-iron", "aluminum", "copper", "copper-alloy") + _STAINLESS), (-2, ("zinc",)), (-6, _IRONS)), 0, "ordnance"),
    ("surface", "forged", ((2, ("medium-carbon", "high-carbon")), (0, ("mild-steel", "quenched-tempered", "wrought-iron", "aluminum", "titanium") + _STAINLESS), (-6, _IRONS)), -2, "ordnance"),
    ("part", "casting", ((1, _IRONS + _LIGHT + ("zinc", "copper-alloy")), (-1, ("quenched-tempered", "wrought-iron"))), 0, "common"),
    ("part", "rolled-shape", ((1, ("mild-steel",)), (-3, _IRONS + ("zinc", "wrought-iron"))), 0, "common"),
    ("part", "wear-part", ((2, ("manganese", "quenched-tempered")), (1, ("white-iron",))), 0, "common"),
    ("part", "pin-or-tool", ((1, ("medium-carbon", "high-carbon")), (-1, ("wrought-iron",))), 0, "common"),
    ("part", "spring", ((2, ("high-carbon",)), (1, ("medium-carbon",))), 0, "common"),
    ("part", "shaft", ((1, ("medium-carbon", "high-carbon")),), 0, "common"),
)  # fmt: skip

# The tests, in the order in which they cost least: nothing is marked before the grinder.
TESTS = ("magnet", "color", "corrosion", "surface", "sound", "density", "file", "spark", "chip")
MARKING = ("file", "spark", "chip", "sound")  # cut, strike or burn the part
# The wheel is only for what sparks; the dust of some burns or poisons.
SPARKING = _STEELS + _IRONS + _STAINLESS + ("manganese", "nickel")
BAD_DUST = ("magnesium", "titanium", "lead", "copper-alloy")

# Parts that are not for the welder alone to decide on, and the source that says so.
DO_NOT_WELD = (
    ("lifting-gear", ("slings",)),
    ("fork", ("forks",)),
    ("hitch", ("hitches",)),
    ("frame-rail", ("frames",)),
    ("roll-over", ("rollover",)),
    ("wheel", ("wheels",)),
    ("container", ("containers",)),
    ("pressure-vessel", ("vessels",)),
    ("gas-cylinder", ("cylinders",)),
    ("hydraulic", ("common",)),
    ("boom", ("common",)),
    ("steering-brake", ("common",)),
    ("car-body", ("common",)),
    ("spring", ("common",)),
    ("shaft", ("common",)),
    ("bolt", ("bolts",)),
    ("aircraft", ("aircraft", "copper-bearing")),
)
OTHER_PARTS = ("casting", "rolled-shape", "wear-part", "pin-or-tool", "something-else")
# Of these, the ones where even a spark or a blow may kill: something inside may burn, burst or be thrown.
CLOSED = ("wheel", "container", "pressure-vessel", "gas-cylinder", "hydraulic")
