"""Metal identification against manuals, lists and law: what density, magnet, spark, file and chisel say.

Sources and standings stand beside each check. The points themselves are our own grading and have no published
value; what is checked is the order they put the families in, which the manuals do state in words.
"""

import pytest

from calculators import metal_evidence, ranges
from calculators.facts import densities
from calculators.facts.metals import DENSITY_POINTS, DENSITY_POINTS_FAR, EVIDENCE, FAMILIES
from calculators.metal_evidence import answer_points, density_points, ranking
from calculators.ranges import OutOfRange

pytestmark = pytest.mark.quick

STEELS = {"mild-steel", "medium-carbon", "quenched-tempered", "high-carbon", "wrought-iron"}
IRONS = {"gray-iron", "ductile-iron", "white-iron"}


def highest(test, answer):
    """Return the families that an answer speaks for most."""
    points = {family: answer_points(test, answer, family) for family in FAMILIES}
    return {family for family in FAMILIES if points[family] == max(points.values())}


# ---------------------------------------------------------------- density

# SImetric, "Density of Metals", a public list (published), kg/m3; a middle is taken where it gives a range.
LISTED = (
    ("magnesium", 1738.0),
    ("aluminum", 2700.0),
    ("titanium", 4500.0),
    ("zinc", 7135.0),
    ("mild-steel", 7850.0),
    ("copper", 8930.0),
    ("nickel", 8800.0),
    ("lead", 11340.0),
    ("copper-alloy", 8550.0),  # brass, casting: 8400 to 8700
)
# NIST Standard Reference Database 126, table 1 (from memory): densities of the elements, kg/m3.
ELEMENTS = (
    ("magnesium", 1740.0),
    ("aluminum", 2699.0),
    ("titanium", 4540.0),
    ("zinc", 7133.0),
    ("wrought-iron", 7874.0),
    ("copper", 8960.0),
    ("nickel", 8902.0),
    ("lead", 11350.0),
)


@pytest.mark.parametrize(("family", "density"), LISTED + ELEMENTS)
def test_published_density_speaks_for_its_own_metal(family, density):
    assert density_points(family, density) == 3


@pytest.mark.parametrize(
    ("density", "family", "others"),
    [
        # The same list. Gray iron: 7200, Army TM 9-237 (from memory), inside the list's cast iron, 6800 to 7800.
        (1740.0, "magnesium", ("aluminum", "titanium", "zinc")),
        (2700.0, "aluminum", ("magnesium", "titanium", "zinc")),
        (7150.0, "gray-iron", ("mild-steel", "medium-carbon", "aluminum", "copper")),
        (7850.0, "mild-steel", ("gray-iron", "ductile-iron", "aluminum", "lead", "titanium")),
    ],
)
def test_density_parts_the_metals_that_look_alike(density, family, others):
    assert density_points(family, density) > 0
    for other in others:
        assert density_points(other, density) < 0, other


def test_a_foot_of_inch_plate_at_the_lawful_weight_is_steel():
    # 15 U.S.C. 206 (law) reckons iron at 480 lb/ft3; ASTM A6 (standard) steel plate at 40.8 lb/ft2 an inch thick.
    density = metal_evidence.block_density(40.8 * 0.45359237, 0.3048, 0.3048, 0.0254)
    assert density == pytest.approx(489.6 * 0.45359237 / 0.3048**3, rel=1e-9)
    assert density_points("mild-steel", density) == 3


def test_a_foot_of_inch_round_bar_is_steel():
    # AISC and mill lists (published): 1 in round bar 2.67 lb/ft.
    density = metal_evidence.round_bar_density(2.67 * 0.45359237, 0.3048, 0.0254)
    assert density == pytest.approx(7850.0, rel=0.003)


def test_weighing_in_water_agrees_with_measuring_a_block():
    # Second method: the block displaces its own volume of water.
    mass = metal_evidence.block_density(2.0, 0.1, 0.05, 0.04)
    in_water = 2.0 - 998.0 * 0.1 * 0.05 * 0.04
    assert metal_evidence.density_by_weighing(2.0, in_water, 998.0) == pytest.approx(mass, rel=1e-12)


def test_what_cannot_hang_in_water_is_refused():
    for in_water, name in ((-1e-9, "mass_in_water"), (20000.001, "mass_in_water"), (2.0, "displaced_water")):
        with pytest.raises(ranges.OutOfRange) as refused:
            metal_evidence.density_by_weighing(2.0, in_water, 998.0)
        assert (refused.value.name, refused.value.unit) == (name, "kg")


def test_a_density_of_nothing_is_none_and_a_feather_is_no_metal():
    with pytest.raises(ranges.OutOfRange):
        density_points("aluminum", 0.0)
    assert density_points("aluminum", 0.5) == -8


# 3, 8 and 15 % off the nearer end of the range, the last of each step included: by hand from facts/metals.py.
@pytest.mark.parametrize(("family", "low", "high"), densities.FAMILIES)
def test_points_fall_by_the_share_that_a_density_is_off_its_nearer_end(family, low, high):
    shares = (0.0, 0.03, 0.0301, 0.08, 0.0801, 0.15, 0.1501)
    for end, sign in ((low, -1.0), (high, 1.0)):
        found = [density_points(family, end * (1.0 + sign * share)) for share in shares]
        assert found == [3, 3, -1, -1, -4, -4, -8], end


def test_density_does_not_change_with_the_size_of_the_piece():
    once = metal_evidence.block_density(1.0, 0.1, 0.1, 0.01)
    assert metal_evidence.block_density(8.0, 0.2, 0.2, 0.02) == pytest.approx(once, rel=1e-12)
    assert metal_evidence.round_bar_density(4.0, 0.1, 0.04) == pytest.approx(
        metal_evidence.round_bar_density(1.0, 0.1, 0.02), rel=1e-12
    )


@pytest.mark.parametrize(("family", "low", "high"), densities.FAMILIES)
def test_the_further_from_the_range_the_fewer_points(family, low, high):
    above = [density_points(family, high * (1.0 + step / 100.0)) for step in range(40)]
    below = [density_points(family, low * (1.0 - step / 100.0)) for step in range(40)]
    assert above == sorted(above, reverse=True) and below == sorted(below, reverse=True)
    assert above[0] == below[0] == 3 and above[-1] == below[-1] == -8


# ---------------------------------------------------------------- magnet

# US Army subcourse EN0562, 5-21 and 5-22 (published): iron and steel are drawn strongly, stainless and Monel
# lightly, all else not. NAVEDTRA 14250 (published): some stainless steels are not drawn at all.


def test_magnet_draws_iron_and_steel():
    assert highest("magnet", "strong") == STEELS | IRONS | {"magnetic-stainless"}


def test_magnet_draws_stainless_and_monel_a_little():
    assert highest("magnet", "weak") == {"austenitic", "nickel"}


def test_magnet_that_does_not_stick_leaves_some_stainless_open():
    left = highest("magnet", "none")
    assert {"aluminum", "magnesium", "copper", "copper-alloy", "zinc", "lead", "austenitic"} <= left
    assert not left & (STEELS | IRONS)


# ---------------------------------------------------------------- spark

# US Navy NAVEDTRA 14345, Machinery Repairman (published): copper, brass, bronze and lead form no sparks; gray iron
# red at the wheel, straw at the end; malleable straw, many small bursts; stainless straw to white, few and forked;
# nickel short, orange, no bursts, Monel the same. US Army OD1643 (published): low-carbon steel a few plain forks,
# more with carbon, tool steel bushy from the wheel; the three cast irons hard to tell apart.
SPARKS = (
    ("none", {"copper", "copper-alloy", "lead", "aluminum", "magnesium", "zinc"}),
    ("red-short", IRONS),
    ("straw", {"austenitic", "magnetic-stainless"}),
    ("orange-tiny", {"nickel"}),
    ("many-forks", {"medium-carbon"}),
    ("bushy", {"high-carbon"}),
)


@pytest.mark.parametrize(("spark", "families"), SPARKS)
def test_spark_speaks_for_the_metal_of_the_manuals(spark, families):
    assert highest("spark", spark) == families


def test_long_spark_with_few_forks_does_not_part_mild_from_heat_treated_steel():
    # ASTM A514 (standard, as in facts): 0.12 to 0.21 % carbon, as little as low-carbon steel, so the spark is alike.
    assert {"mild-steel", "quenched-tempered"} <= highest("spark", "long-few-forks")


def test_forks_grow_with_carbon():
    carbon = ("mild-steel", "medium-carbon", "high-carbon")
    for spark, order in (("long-few-forks", carbon), ("bushy", tuple(reversed(carbon)))):
        points = [answer_points("spark", spark, family) for family in order]
        assert points == sorted(points, reverse=True) and points[0] > points[-1]


# ---------------------------------------------------------------- file and chisel


def test_file_grades_go_from_soft_to_hard():
    # NAVEDTRA 14345 (published): clogs, some resistance, considerable, extreme effort, slides: very soft to
    # extremely hard, the last two heat-treated.
    grades = ("clogs", "easy", "resists", "barely", "slides")
    hard = [answer_points("file", grade, "high-carbon") for grade in grades]
    assert hard == sorted(hard)
    soft = [answer_points("file", grade, "aluminum") for grade in grades]
    assert soft == sorted(soft, reverse=True)
    assert answer_points("file", "barely", "quenched-tempered") > answer_points("file", "barely", "mild-steel")


def test_chisel_curls_every_steel_but_manganese():
    # OD1643 (published): chips of the steels curl up, except manganese steel, which a chisel cannot cut.
    for family in STEELS | {"austenitic", "magnetic-stainless"}:
        assert family in highest("chip", "curls"), family
    assert answer_points("chip", "curls", "manganese") < 0
    assert highest("chip", "uncut") == {"manganese"}


def test_fracture_of_sand_cast_iron():
    # NAVEDTRA 14250 (published): cast and malleable iron usually show the sand mold.
    assert highest("surface", "sand-cast") >= IRONS


# ---------------------------------------------------------------- the table as a whole


def test_every_answer_speaks_for_somebody_and_against_somebody():
    for test, answer, _, _, _ in EVIDENCE:
        points = [answer_points(test, answer, family) for family in FAMILIES]
        assert max(points) > 0, (test, answer)
        assert min(points) < 0 or test == "part", (test, answer)


def test_no_family_is_named_twice_in_a_row_or_unknown():
    for test, answer, fits, _, _ in EVIDENCE:
        named = [family for _, families in fits for family in families]
        assert len(named) == len(set(named)), (test, answer)
        assert set(named) <= set(FAMILIES), (test, answer)
    assert [family for family, _, _ in densities.FAMILIES] == list(FAMILIES)


def test_nothing_found_leaves_every_family_level():
    assert ranking(()) == tuple((0, family) for family in FAMILIES)


def test_a_density_counts_by_how_far_it_lies_outside_the_family_s_range():
    """Steps of our own grading, so by second method: a share of the nearer end of the range, on either side."""
    low, high = metal_evidence.DENSITY_RANGES["aluminum"]
    (near, fits), (far, doubtful), (farthest, hardly) = DENSITY_POINTS
    inside = (0.5 * (low + high), low, high, low * (1.0 - 0.9 * near), high * (1.0 + 0.9 * near))
    assert {density_points("aluminum", each) for each in inside} == {fits}
    for share, points in (
        (1.1 * near, doubtful),
        (0.9 * far, doubtful),
        (1.1 * far, hardly),
        (0.9 * farthest, hardly),
        (1.1 * farthest, DENSITY_POINTS_FAR),
    ):
        assert density_points("aluminum", low * (1.0 - share)) == points
        assert density_points("aluminum", high * (1.0 + share)) == points


@pytest.mark.parametrize(
    ("mass_in_water", "name"), [(1.0, "displaced_water"), (1.5, "displaced_water"), (-0.1, "mass_in_water")]
)
def test_a_part_that_floats_or_sinks_upwards_has_no_density(mass_in_water, name):
    with pytest.raises(OutOfRange) as refused:
        metal_evidence.density_by_weighing(1.0, mass_in_water, 1000.0)
    assert refused.value.name == name
