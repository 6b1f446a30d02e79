"""Parts as a welder would describe them, each with the family that the manuals' signs point to.

The signs are those of the sources named in tests/published/test_metal_id.py. Written `test=answer; ...`; `block`
stands for the sides of a block of 0.1 L, so that ten times the mass in kg is the density in kg/L.
"""

BLOCK = {"weighed": "block", "length": "100 mm", "width": "50 mm", "thickness": "20 mm"}  # 0.1 L
_SCENARIOS = (
    # Engine bracket: red spark, chips short, black finger: gray iron.
    ("gray-iron", "part=casting; magnet=strong; color=dark-gray; spark=red-short; chip=short"),
    # The same without the chisel, but dull when tapped.
    ("gray-iron", "part=casting; magnet=strong; surface=sand-cast; sound=dull; file=easy"),
    # Iron spark, but it rings: ductile.
    ("ductile-iron", "part=casting; magnet=strong; spark=red-short; sound=rings; file=easy"),
    # Iron spark, no file cuts it, splinters: white iron.
    ("white-iron", "part=wear-part; magnet=strong; spark=red-short; file=slides; chip=splinters"),
    # Angle iron: rolled, rusty, long sparks, easy file.
    ("mild-steel", "part=rolled-shape; magnet=strong; spark=long-few-forks; file=easy"),
    ("mild-steel", "part=rolled-shape; magnet=strong; corrosion=red-rust; file=easy; chip=curls"),
    # Plate that sparks like mild steel and that a file barely cuts: heat-treated.
    ("quenched-tempered", "part=rolled-shape; magnet=strong; spark=long-few-forks; file=barely"),
    ("quenched-tempered", "part=wear-part; magnet=strong; spark=long-few-forks; file=resists"),
    # Pin with many forks: medium carbon.
    ("medium-carbon", "part=pin-or-tool; magnet=strong; spark=many-forks; file=resists"),
    ("medium-carbon", "part=shaft; magnet=strong; spark=many-forks; surface=forged"),
    # Bushy from the wheel and file-hard: tool steel.
    ("high-carbon", "part=pin-or-tool; magnet=strong; spark=bushy; file=slides"),
    ("high-carbon", "part=spring; magnet=strong; spark=bushy; file=barely"),
    # Crusher jaw: no magnet, sand cast, rusty, chisel does nothing.
    ("manganese", "part=wear-part; magnet=none; surface=sand-cast; corrosion=red-rust; chip=uncut"),
    ("manganese", "part=wear-part; magnet=none; spark=white-fans; color=steel-gray"),
    # Sink: no magnet, bright, straw spark.
    ("austenitic", "part=rolled-shape; magnet=none; corrosion=stays-bright; spark=straw"),
    # Bent handrail: a little magnetic where it was worked.
    ("austenitic", "part=rolled-shape; magnet=weak; corrosion=stays-bright; spark=straw"),
    # Muffler: magnet sticks, bright, straw spark.
    ("magnetic-stainless", "part=rolled-shape; magnet=strong; corrosion=stays-bright; spark=straw"),
    # Boat rail bracket: no spark, silver, 0.27 kg for 0.1 L.
    ("aluminum", "part=rolled-shape; magnet=none; color=silver-white; mass=0.27 kg; block"),
    ("aluminum", "part=casting; magnet=none; spark=none; corrosion=gray-film; mass=0.27 kg; block"),
    # The same look at two thirds of the weight: magnesium.
    ("magnesium", "part=casting; magnet=none; color=silver-white; mass=0.178 kg; block"),
    # The same look, 0.67 kg: zinc.
    ("zinc", "part=casting; magnet=none; surface=die-cast; color=blue-gray; mass=0.67 kg; block"),
    # Yellow valve body.
    ("copper-alloy", "part=casting; magnet=none; color=yellow; spark=none; corrosion=green"),
    # Bus bar.
    ("copper", "part=rolled-shape; magnet=none; color=red; spark=none; file=clogs"),
    # Propeller shaft sleeve: weak magnet, tiny orange sparks.
    ("nickel", "part=something-else; magnet=weak; spark=orange-tiny; color=silver-white"),
    # Bright, light for its size, blinding sparks.
    ("titanium", "part=something-else; magnet=none; spark=blinding; mass=0.45 kg; block"),
    # Keel weight.
    ("lead", "part=casting; magnet=none; color=blue-gray; sound=dull; mass=1.13 kg; block"),
    # Old bridge rod: rust like wood grain.
    ("wrought-iron", "part=pin-or-tool; magnet=strong; corrosion=layered-rust; spark=long-few-forks"),
    # Only the weight in water: 7.15 times water and a magnet that sticks.
    (
        "gray-iron",
        "part=casting; magnet=strong; weighed=in-water; mass=7.15 kg; mass_in_water=6.15 kg; color=dark-gray",
    ),
)

# What the manuals say each family does in each test; where they are silent, or the family is not the plainest case
# of the answer, it is left out.
_TYPICAL = (
    ("mild-steel", "magnet=strong; spark=long-few-forks; file=easy; chip=curls; corrosion=red-rust; surface=rolled"),
    ("medium-carbon", "magnet=strong; spark=many-forks; file=resists; chip=curls; surface=forged"),
    ("gray-iron", "magnet=strong; spark=red-short; chip=short; sound=dull; color=dark-gray; surface=sand-cast"),
    ("ductile-iron", "magnet=strong; spark=red-short; sound=rings; file=easy; surface=sand-cast"),
    ("white-iron", "magnet=strong; spark=red-short; file=slides; chip=splinters; corrosion=red-rust"),
    ("quenched-tempered", "magnet=strong; spark=long-few-forks; file=barely; chip=curls; corrosion=red-rust"),
    ("high-carbon", "magnet=strong; spark=bushy; file=slides; surface=forged; corrosion=red-rust"),
    ("wrought-iron", "magnet=strong; spark=long-few-forks; file=easy; chip=curls; corrosion=layered-rust"),
    ("austenitic", "magnet=none; spark=straw; file=easy; chip=curls; color=silver-white; corrosion=stays-bright"),
    ("magnetic-stainless", "magnet=strong; spark=straw; chip=curls; color=silver-white; corrosion=stays-bright"),
    ("aluminum", "magnet=none; spark=none; file=clogs; chip=curls; color=silver-white; corrosion=white-powder"),
    ("magnesium", "magnet=none; spark=none; file=clogs; color=silver-white; corrosion=gray-film"),
    ("zinc", "magnet=none; spark=none; color=blue-gray; corrosion=white-powder; surface=die-cast"),
    ("copper", "magnet=none; spark=none; file=clogs; chip=curls; color=red; corrosion=green"),
    ("copper-alloy", "magnet=none; spark=none; file=easy; color=yellow; corrosion=green; sound=rings"),
    ("lead", "magnet=none; spark=none; file=clogs; chip=curls; color=blue-gray; sound=dull"),
    ("manganese", "magnet=none; spark=white-fans; file=resists; chip=uncut; surface=sand-cast"),
    ("nickel", "magnet=weak; spark=orange-tiny; file=easy; color=silver-white; corrosion=stays-bright"),
    ("titanium", "magnet=none; spark=blinding; file=resists; corrosion=stays-bright; sound=rings"),
)


def typed(text: str) -> dict[str, str]:
    """Return what a scenario types, by field."""
    found = {}
    for each in text.split("; "):
        name, _, answer = each.partition("=")
        found.update(BLOCK if name == "block" else {name: answer})
    return found


SCENARIOS = tuple((family, typed(text)) for family, text in _SCENARIOS)
TYPICAL = tuple((family, typed(text)) for family, text in _TYPICAL)
