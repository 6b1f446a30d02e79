"""From wire to weld metal: how much of it stays, how much more than the drawing is laid down.

Standing is written beside each table. "From memory": the source is named but could not be read.
"""

# Deposition efficiency: weld metal over wire melted, the rest being spatter, slag and fume.
# The averages 98, 96, 93, 93, 86, 78 % were seen in a handbook's list; which process each belongs to is from
# memory. Second route, seen: weldinganswers.com, "Which Arc Welding Process is the Most Efficient?" gives gas
# metal arc 92 to 99 %, metal-cored 94 to 98, gas-shielded flux-cored 82 to 88, self-shielded 75 to 85; all but
# metal-cored, 1 % lower here, lie inside. Half-band: the widest distance from an average to the end of its span.
# (wire and gas, average, half-band)
DEPOSITION_EFFICIENCY = (
    ("solid-argon-rich", 0.98, 0.02),
    ("solid-argon-25-carbon-dioxide", 0.96, 0.04),
    ("solid-carbon-dioxide", 0.93, 0.03),
    ("metal-cored", 0.93, 0.05),
    ("flux-cored-gas-shielded", 0.86, 0.04),
    ("flux-cored-self-shielded", 0.78, 0.07),
)
CORED = ("metal-cored", "flux-cored-gas-shielded", "flux-cored-self-shielded")
# What is usual with a wire where nobody says; common practice. (wire material, wire and gas)
USUAL_GAS = (
    ("mild-steel", "solid-argon-25-carbon-dioxide"),
    ("stainless", "solid-argon-rich"),
    ("aluminum", "solid-argon-rich"),
)

# Metal laid down over metal on the drawing. A flat fillet: legs made 10 % too long give 1.1 * 1.1 = 1.21
# (Welding Design, "Pre-Calculating Wire-Feed Speed, Travel Speed, and Voltage", November 2009; weldinganswers.com,
# "Calculating Weld Metal Requirements by Hand"; published, seen); the highest is common practice. A groove:
# 10 % for the cap where none is given; common practice. (lowest, usual, highest)
FILLET_OVERWELD = (1.0, 1.2, 1.45)
GROOVE_OVERWELD = (1.0, 1.1, 1.25)
EXACT = (1.0, 1.0, 1.0)  # whoever gives the bulge or the cap has said what is there

# A face that bulges is measured against this by AWS D1.1, visual inspection: convexity by width of face.
# From memory. (face up to [m], most convexity [m])
MOST_CONVEXITY = ((0.3125 * 0.0254, 0.0625 * 0.0254), (1.0 * 0.0254, 0.125 * 0.0254), (10.0, 0.1875 * 0.0254))
# AWS D1.1, fillet welds: above this opening the legs grow by the opening; above the next there is no fillet.
# Seen quoted: AWS forum, reply on root opening of fillets.
GROW_LEGS_ABOVE = 0.0625 * 0.0254
WIDEST_FILLET_GAP = 0.1875 * 0.0254
