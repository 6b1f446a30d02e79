"""What the numbers of a gas supply rest on."""

from calculators.contract import Source

ARGON = Source(
    "Tegeler, Span and Wagner, J. Phys. Chem. Ref. Data 28 (1999) 779: density of argon, good to 0.03 % here",
    "published",
)
MIXES = Source(
    "Gernert (thesis, Bochum 2013) and EOS-CG, J. Chem. Thermodyn. 93 (2016) 274: argon with carbon dioxide;"
    " good to 1 % by our estimate",
    "published",
)
LIGHT = Source(
    "Helium and nitrogen, and their mixes with argon, by the equations of state in CoolProp 8.0.0; mixes good to 1 % by"
    " our estimate",
    "published",
)
CARBON_DIOXIDE = Source(
    "Span and Wagner, J. Phys. Chem. Ref. Data 25 (1996) 1509: carbon dioxide, gas and liquid", "published"
)
FILLING = Source("49 CFR 173.304a(a)(2), table 1: most carbon dioxide in a cylinder, 68 % of its water", "law")
GAUGE = Source("EN 837-1:1996, table 11: a class 2.5 gauge may be 2.5 % of its span out", "standard")
INSTRUMENTS = Source(
    "That a cylinder gauge is of class 2.5 and spans 315 bar (4570 psi), that a flow meter is good to 10 % and a"
    " scale to 1 %",
    "from memory",
)
SIZES = Source("Cylinders by name with their litres, good to about 5 %; the stamp decides", "from memory")
RESERVE = Source("About 200 psi is left in a cylinder, so that no air gets in", "common practice")
ARC_SHARE = Source("Field repair has the arc on for 10 to 20 % of the hours", "common practice")
ARMY = Source(
    "US Army TC 9-237, Welding Theory and Application (1993): at most 25 ft³/h from one carbon dioxide cylinder",
    "published",
)
