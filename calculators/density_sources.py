"""Where the densities of parts, sheet and wire come from, by name; the numbers and more words are in facts/densities.py."""

from calculators.contract import Source

STEEL_AND_IRON = Source(
    "Iowa Department of Transportation, Instructional Memorandum 452.02: steel 490, cast iron 450 lb/ft³", "published"
)
STAINLESS = Source("Type 304 stainless 7930 kg/m³, a mill's basic mass", "published")
GERE = Source("Gere, Mechanics of Materials, 5th edition, table of densities, in a copy", "published")
WIRES = Source("Densities of steel 7850, stainless 7950, aluminum alloys 2640 to 2690 kg/m³", "from memory")
