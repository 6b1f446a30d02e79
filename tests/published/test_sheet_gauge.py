"""Sheet gauges against the law, the published tables and the traps in them.

Every expected number was printed by somebody else; beside each list stands its source and its standing.
"""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calculators import gauge_tables, numerals, ranges

INCH = 0.0254  # m, exactly (international yard and pound agreement, 1959)
POUND_PER_SQUARE_FOOT = 0.45359237 / 0.3048**2  # kg/m2, exactly (same agreement)

# fmt: off
# 15 U.S.C. 206, standard gauge for sheet and plate iron and steel. Standing: law. (gauge, thickness in,
# thickness mm, oz/ft2, lb/ft2, kg/m2); gauge 27 was readable as far as the ounces.
STATUTE = (
    (3, 0.25, 6.35, 160, 10.0, 48.82), (4, 0.234375, 5.953125, 150, 9.375, 45.77),
    (5, 0.21875, 5.55625, 140, 8.75, 42.72), (6, 0.203125, 5.159375, 130, 8.125, 39.67),
    (7, 0.1875, 4.7625, 120, 7.5, 36.62), (8, 0.171875, 4.365625, 110, 6.875, 33.57),
    (9, 0.15625, 3.96875, 100, 6.25, 30.52), (10, 0.140625, 3.571875, 90, 5.625, 27.46),
    (11, 0.125, 3.175, 80, 5.0, 24.41), (12, 0.109375, 2.778125, 70, 4.375, 21.36),
    (13, 0.09375, 2.38125, 60, 3.75, 18.31), (14, 0.078125, 1.984375, 50, 3.125, 15.26),
    (15, 0.0703125, 1.7859375, 45, 2.8125, 13.73), (16, 0.0625, 1.5875, 40, 2.5, 12.21),
    (17, 0.05625, 1.42875, 36, 2.25, 10.99), (18, 0.05, 1.27, 32, 2.0, 9.765),
    (19, 0.04375, 1.11125, 28, 1.75, 8.544), (20, 0.0375, 0.9525, 24, 1.5, 7.324),
    (21, 0.034375, 0.873125, 22, 1.375, 6.713), (22, 0.03125, 0.79375, 20, 1.25, 6.103),
    (23, 0.028125, 0.714375, 18, 1.125, 5.493), (24, 0.025, 0.635, 16, 1.0, 4.882),
    (25, 0.021875, 0.555625, 14, 0.875, 4.272), (26, 0.01875, 0.47625, 12, 0.75, 3.662),
    (27, 0.0171875, 0.4365625, 11, None, None),
)

# "Comparison of gauges in decimal points of an inch", U.S. Standard column: in, lb/ft2. Standing:
# published.
STATUTE_TAIL = ((27, 0.01719, 0.6875), (28, 0.01563, 0.625), (29, 0.01406, 0.5625), (30, 0.0125, 0.5))

# Engineers Edge, "Mechanical Steel Sheet Mechanical Tolerances", carbon steel sheets, 3 to 30, inches; 3
# gauge from the Manufacturers' Standard Gauge table. Standing: published.
MANUFACTURERS_STANDARD = (
    0.2391, 0.2242, 0.2092, 0.1943, 0.1793, 0.1644, 0.1495, 0.1345, 0.1196,
    0.1046, 0.0897, 0.0747, 0.0673, 0.0598, 0.0538, 0.0478, 0.0418, 0.0359, 0.0329,
    0.0299, 0.0269, 0.0239, 0.0209, 0.0179, 0.0164, 0.0149, 0.0135, 0.0120,
)

# The same page, galvanized steel sheets: nominal in, tolerance range in, lb/ft2. 8 and 9 gauge: "Sheet
# Metal Gage Conversion" (nominal), and a supplier's coated-sheet list to 0.001 in (range, weight).
# Standing: published.
GALVANIZED = (
    (8, 0.1681, 0.177, 0.159, 7.031), (9, 0.1532, 0.162, 0.144, 6.406),
    (10, 0.1382, 0.1472, 0.1292, 5.78125), (11, 0.1233, 0.1323, 0.1143, 5.15625),
    (12, 0.1084, 0.1174, 0.0994, 4.53125), (13, 0.0934, 0.1014, 0.0854, 3.90625),
    (14, 0.0785, 0.0865, 0.0705, 3.28125), (15, 0.0710, 0.0770, 0.0650, 2.96875),
    (16, 0.0635, 0.0695, 0.0575, 2.65625), (17, 0.0575, 0.0625, 0.0525, 2.40625),
    (18, 0.0516, 0.0566, 0.0466, 2.15625), (19, 0.0456, 0.0506, 0.0406, 1.90625),
    (20, 0.0396, 0.0436, 0.0356, 1.65625), (21, 0.0366, 0.0406, 0.0326, 1.53125),
    (22, 0.0336, 0.0376, 0.0296, 1.40625), (23, 0.0306, 0.0346, 0.0266, 1.28125),
    (24, 0.0276, 0.0316, 0.0236, 1.15625), (25, 0.0247, 0.0287, 0.0207, 1.03125),
    (26, 0.0217, 0.0247, 0.0187, 0.90625), (27, 0.0202, 0.0232, 0.0172, 0.84375),
    (28, 0.0187, 0.0217, 0.0157, 0.78125), (29, 0.0172, 0.0202, 0.0142, 0.71875),
    (30, 0.0157, 0.0187, 0.0127, 0.65625),
)

# Machinery's Handbook (Oberg and others, Industrial Press, 2012), wire gauges, American or Brown & Sharpe,
# 3 to 30, inches; read as reproduced in the `fluids` library. Standing: published.
AMERICAN_WIRE_GAUGE = (
    0.2294, 0.2043, 0.1819, 0.162, 0.1443, 0.1285, 0.1144, 0.1019, 0.0907, 0.0808, 0.072, 0.0641, 0.0571,
    0.0508, 0.0453, 0.0403, 0.0359, 0.032, 0.0285, 0.0253, 0.0226, 0.0201, 0.0179, 0.0159, 0.0142, 0.0126,
    0.0113, 0.01,
)

# "Sheet Metal Gages and Tolerances", Birmingham or Stubs, strip and tubing, 3 to 26, inches; 27 to 30 from
# the Machinery's Handbook table. Standing: published. The gauge is a table itself: this second list can
# only catch a slip in ours.
BIRMINGHAM_WIRE_GAUGE = (
    0.259, 0.238, 0.220, 0.203, 0.180, 0.165, 0.148, 0.134, 0.120, 0.109, 0.095, 0.083, 0.072, 0.065, 0.058,
    0.049, 0.042, 0.035, 0.032, 0.028, 0.025, 0.022, 0.020, 0.018, 0.016, 0.014, 0.013, 0.012,
)

# Steel Market Update, "Cold-Rolled Sheet Thickness Tolerances" (the ASTM limits): gauge, minimum, maximum,
# inches; 29 and 30 from Engineers Edge, the page named above. Standing: published.
COLD_ROLLED_LIMITS = (
    (10, 0.1285, 0.1405), (11, 0.1136, 0.1256), (12, 0.0986, 0.1106), (13, 0.0847, 0.0947),
    (14, 0.0697, 0.0797), (15, 0.0623, 0.0723), (16, 0.0548, 0.0648), (17, 0.0498, 0.0578),
    (18, 0.0438, 0.0518), (19, 0.0378, 0.0458), (20, 0.0329, 0.0389), (21, 0.0299, 0.0359),
    (22, 0.0269, 0.0329), (23, 0.0239, 0.0299), (24, 0.0209, 0.0269), (25, 0.0179, 0.0239),
    (26, 0.0159, 0.0199), (27, 0.0144, 0.0184), (28, 0.0129, 0.0169), (29, 0.0115, 0.0155),
    (30, 0.0110, 0.0130),
)

# Engineers Edge, the page named above, hot-rolled column: gauge, maximum, minimum, inches. Standing:
# published.
HOT_ROLLED_LIMITS = (
    (4, 0.2332, 0.2152), (5, 0.2182, 0.2002), (6, 0.2033, 0.1853), (7, 0.1873, 0.1713), (8, 0.1724, 0.1564),
    (9, 0.1575, 0.1415), (10, 0.1425, 0.1265), (11, 0.1276, 0.1116), (12, 0.1126, 0.0966),
    (13, 0.0967, 0.0827), (14, 0.0817, 0.0677), (15, 0.0733, 0.0613), (16, 0.0658, 0.0538),
    (17, 0.0598, 0.0478), (18, 0.0528, 0.0428),
)

# Stainless as some suppliers list it, inches; from a list of US sheet sizes, and a second suppliers' list
# agrees within 0.001 in. Standing: common practice.
SECOND_STAINLESS = {
    7: 0.1874, 8: 0.1650, 10: 0.1350, 11: 0.1200, 12: 0.1054, 13: 0.0900, 14: 0.0751, 16: 0.0595, 18: 0.0480,
    19: 0.0420, 20: 0.0355, 22: 0.0293, 24: 0.0235, 26: 0.0178, 28: 0.0151,
}
# fmt: on

EVERY_GAUGE = [
    (system, gauge)
    for system in gauge_tables.GAUGE_SYSTEMS
    for gauge in range(gauge_tables.gauge_range(system)[0], gauge_tables.gauge_range(system)[1] + 1)
]
NEIGHBOURS = [(system, gauge) for system, gauge in EVERY_GAUGE if gauge < 30]


def inches(system: str, gauge: int) -> float:
    return gauge_tables.thickness_of_gauge(system, gauge) / INCH


def gauges(system: str, thickness: float, count: int = 2) -> list[int]:
    return [row[0] for row in gauge_tables.nearest_gauges(system, thickness, count)]


# The published rows


@pytest.mark.parametrize("row", STATUTE, ids=lambda row: f"{row[0]}ga")
def test_stainless_thickness_is_the_laws(row):
    gauge, inch, millimetre = row[:3]
    assert gauge_tables.thickness_of_gauge("stainless", gauge) == pytest.approx(inch * INCH, rel=1e-12)
    assert gauge_tables.thickness_of_gauge("stainless", gauge) == pytest.approx(millimetre / 1000, rel=1e-12)


@pytest.mark.parametrize("row", STATUTE, ids=lambda row: f"{row[0]}ga")
def test_steel_weighs_the_laws_ounces_pounds_and_kilograms(row):
    gauge, _, _, ounces, pounds, kilograms = row
    mass = gauge_tables.mass_per_area_of_gauge("steel", gauge)
    assert mass / POUND_PER_SQUARE_FOOT * 16 == pytest.approx(ounces, rel=1e-12)
    if pounds is not None:
        assert mass / POUND_PER_SQUARE_FOOT == pytest.approx(pounds, rel=1e-12)
    if kilograms is not None:  # printed to four figures
        assert mass == pytest.approx(kilograms, abs=0.0051 if kilograms >= 10 else 0.00051)


@pytest.mark.parametrize("row", STATUTE_TAIL, ids=lambda row: f"{row[0]}ga")
def test_thin_end_of_the_laws_table(row):
    gauge, inch, pounds = row
    assert inches("stainless", gauge) == pytest.approx(inch, abs=0.00000501)
    assert gauge_tables.mass_per_area_of_gauge("steel", gauge) == pytest.approx(pounds * POUND_PER_SQUARE_FOOT)


@pytest.mark.parametrize(("gauge", "inch"), list(enumerate(MANUFACTURERS_STANDARD, start=3)))
def test_steel_is_the_manufacturers_standard_gauge(gauge, inch):
    assert numerals.fixed(inches("steel", gauge), 4) == numerals.fixed(inch, 4)


@pytest.mark.parametrize("row", GALVANIZED, ids=lambda row: f"{row[0]}ga")
def test_galvanized_thickness_weight_and_tolerance(row):
    gauge, inch, most, least, pounds = row
    assert numerals.fixed(inches("galvanized", gauge), 4) == numerals.fixed(inch, 4)
    mass = gauge_tables.mass_per_area_of_gauge("galvanized", gauge)
    assert mass / POUND_PER_SQUARE_FOOT == pytest.approx(pounds, abs=0.00026)
    tolerance = gauge_tables.mill_tolerance("galvanized", gauge)
    assert tolerance is not None
    assert tolerance == pytest.approx((most - least) / 2 * INCH, rel=1e-9)


@pytest.mark.parametrize(("gauge", "inch"), list(enumerate(AMERICAN_WIRE_GAUGE, start=3)))
def test_aluminum_closed_form_equals_the_handbook(gauge, inch):
    assert numerals.fixed(inches("aluminum", gauge), 4) == numerals.fixed(inch, 4)


@pytest.mark.parametrize(("gauge", "inch"), list(enumerate(BIRMINGHAM_WIRE_GAUGE, start=3)))
def test_tube_wall_is_the_birmingham_gauge(gauge, inch):
    assert gauge_tables.thickness_of_gauge("tube", gauge) == pytest.approx(inch * INCH, rel=1e-12)


def test_published_rows_cover_every_gauge_offered():
    offered = {system: [gauge for name, gauge in EVERY_GAUGE if name == system] for system, _ in EVERY_GAUGE}
    assert len(MANUFACTURERS_STANDARD) == len(offered["steel"])
    assert [row[0] for row in GALVANIZED] == offered["galvanized"]
    assert sorted({row[0] for row in STATUTE + STATUTE_TAIL}) == offered["stainless"]
    assert len(AMERICAN_WIRE_GAUGE) == len(offered["aluminum"])
    assert len(BIRMINGHAM_WIRE_GAUGE) == len(offered["tube"])


# "Sheet Steel: Gauge, Thickness, and Weight Chart" (2024): kg/m2, and what galvanizing adds. Standing:
# published.
@pytest.mark.parametrize(
    ("gauge", "kilograms"), [(3, 48.824), (4, 45.773), (5, 42.721), (6, 39.670), (7, 36.618), (8, 33.567)]
)
def test_steel_mass_in_kilograms(gauge, kilograms):
    assert gauge_tables.mass_per_area_of_gauge("steel", gauge) == pytest.approx(kilograms, abs=0.0006)


@pytest.mark.parametrize("gauge", range(8, 31))
def test_zinc_adds_the_published_constant(gauge):
    mass = gauge_tables.mass_per_area_of_gauge
    thickness = gauge_tables.thickness_of_gauge
    assert mass("galvanized", gauge) - mass("steel", gauge) == pytest.approx(0.762, abs=0.0015)
    added = thickness("galvanized", gauge) - thickness("steel", gauge)
    assert added == pytest.approx(0.00375 * INCH, abs=0.00002 * INCH)


# "Sheet Metal Gages and Tolerances": lb/ft2 of 1100 and 6061 aluminum, and of steel tubing. Stainless: a
# supplier's chart reckoned at 8.0 g/cm3, where ours takes 7.93. Standing: published. 1 % is what alloys
# differ by.
@pytest.mark.parametrize(
    ("system", "gauge", "pounds"),
    [
        ("aluminum", 10, 1.438),
        ("aluminum", 16, 0.717),
        ("aluminum", 20, 0.452),
        ("tube", 11, 4.895),
        ("tube", 14, 3.386),
        ("tube", 16, 2.652),
        ("stainless", 3, 10.404),
    ],
)
def test_mass_of_other_metals(system, gauge, pounds):
    mass = gauge_tables.mass_per_area_of_gauge(system, gauge)
    assert mass / POUND_PER_SQUARE_FOOT == pytest.approx(pounds, rel=0.01)


# Mill tolerance


@pytest.mark.parametrize("row", HOT_ROLLED_LIMITS, ids=lambda row: f"{row[0]}ga")
def test_steel_tolerance_is_hot_rolled_where_that_is_published(row):
    gauge, most, least = row
    tolerance = gauge_tables.mill_tolerance("steel", gauge)
    assert tolerance == pytest.approx((most - least) / 2 * INCH, rel=1e-9)


@pytest.mark.parametrize("row", COLD_ROLLED_LIMITS, ids=lambda row: f"{row[0]}ga")
def test_steel_tolerance_is_never_tighter_than_cold_rolled(row):
    gauge, least, most = row
    tolerance = gauge_tables.mill_tolerance("steel", gauge)
    if gauge >= 19:
        assert tolerance == pytest.approx((most - least) / 2 * INCH, rel=1e-9)
    else:
        assert tolerance > (most - least) / 2 * INCH


@pytest.mark.parametrize("row", COLD_ROLLED_LIMITS, ids=lambda row: f"{row[0]}ga")
def test_a_sheet_at_its_cold_rolled_limits_may_be_that_gauge(row):
    gauge, least, most = row
    # The limits are printed from the rounded nominal; step inside by that rounding.
    for limit in (least + 0.0001, most - 0.0001):
        assert gauge in gauge_tables.gauges_within_tolerance("steel", limit * INCH)


def test_a_reading_can_straddle_two_gauges():
    # 0.056 in: inside 16 gauge (0.0538 to 0.0658) and 17 gauge (0.0478 to 0.0598) of the hot-rolled list
    # above.
    assert gauge_tables.gauges_within_tolerance("steel", 0.056 * INCH) == (16, 17)


@pytest.mark.parametrize("gauge", range(8, 31))
def test_the_edge_of_a_tolerance_counts_as_inside_and_no_more(gauge):
    nominal = gauge_tables.thickness_of_gauge("galvanized", gauge)
    tolerance = gauge_tables.mill_tolerance("galvanized", gauge)
    assert tolerance is not None
    for edge, beyond in ((nominal + tolerance, 1), (nominal - tolerance, -1)):
        assert gauge in gauge_tables.gauges_within_tolerance("galvanized", edge)
        if 8 < gauge < 30:
            assert gauge not in gauge_tables.gauges_within_tolerance("galvanized", edge + beyond * 1e-9)


@pytest.mark.parametrize("system", ["stainless", "aluminum", "tube"])
def test_no_tolerance_is_claimed_where_none_is_held(system):
    assert gauge_tables.mill_tolerance(system, 16) is None
    assert gauge_tables.gauges_within_tolerance(system, 0.0016) == ()


def test_three_gauge_steel_has_no_published_tolerance():
    assert gauge_tables.mill_tolerance("steel", 3) is None


# Traps


def test_sixteen_gauge_is_five_thicknesses():
    # The five values stand in the lists above; the trade's commonest mistake is to ask for "16 gauge" of
    # anything.
    printed = [numerals.fixed(inches(system, 16), 4) for system in gauge_tables.GAUGE_SYSTEMS]
    assert printed == ["0.0598", "0.0635", "0.0625", "0.0508", "0.0650"]


def test_a_chart_with_a_slipped_row_is_not_copied():
    # A published chart prints galvanized 22 gauge as 0.0306 in beside 0.853 mm. The millimetres are right
    # (0.0336 in); 0.0306 is 23 gauge, one row down.
    assert inches("galvanized", 22) == pytest.approx(0.853 / 25.4, abs=0.00006)
    assert numerals.fixed(inches("galvanized", 23), 4) == "0.0306"
    assert gauges("galvanized", 0.0306 * INCH, 1) == [23]


def test_galvanized_listed_by_bare_thickness_reads_a_gauge_out():
    # Some duct tables list galvanized 22 gauge as 0.0299 in, the bare sheet: measured with its zinc that is
    # 23.
    assert gauges("galvanized", 0.0299 * INCH, 1) == [23]
    assert gauges("steel", 0.0299 * INCH, 1) == [22]


@pytest.mark.parametrize("gauge", range(3, 31))
def test_second_stainless_list(gauge):
    second = gauge_tables.second_stainless_thickness(gauge)
    if gauge in SECOND_STAINLESS:
        assert second == pytest.approx(SECOND_STAINLESS[gauge] * INCH, rel=1e-12)
    else:
        assert second is None


@pytest.mark.parametrize(("gauge", "reads_as"), [(16, 16), (18, 18), (20, 21), (22, 23), (26, 27)])
def test_stainless_sold_by_the_second_list_can_read_a_gauge_out(gauge, reads_as):
    # By hand: 0.0355 in is 0.0020 from the law's 20 gauge and 0.0011 from its 21; the others likewise.
    assert gauges("stainless", SECOND_STAINLESS[gauge] * INCH, 1) == [reads_as]


@pytest.mark.parametrize("thickness", [0.059375 * INCH, 1.508125 / 1000, 1.508125e-3, 59.375 * 2.54e-5])
def test_a_tie_names_the_thicker_sheet_first_however_it_was_typed(thickness):
    # 0.059375 in is exactly half way between 16 (0.0625) and 17 (0.05625) of the law's table.
    assert gauges("stainless", thickness) == [16, 17]


@pytest.mark.parametrize(("system", "gauge"), NEIGHBOURS)
def test_every_tie_names_the_lower_number_first(system, gauge):
    thick, thin = (gauge_tables.thickness_of_gauge(system, number) for number in (gauge, gauge + 1))
    for middle in ((thick + thin) / 2, thin + (thick - thin) / 2, math.nextafter((thick + thin) / 2, 0)):
        assert gauges(system, middle) == [gauge, gauge + 1]


# Properties


@pytest.mark.parametrize(("system", "gauge"), NEIGHBOURS)
def test_a_higher_number_is_thinner_and_lighter(system, gauge):
    for measure in (gauge_tables.thickness_of_gauge, gauge_tables.mass_per_area_of_gauge):
        assert measure(system, gauge) > measure(system, gauge + 1) > 0


@pytest.mark.parametrize(("system", "gauge"), EVERY_GAUGE)
def test_a_gauge_comes_back_from_its_own_thickness(system, gauge):
    nominal = gauge_tables.thickness_of_gauge(system, gauge)
    assert gauge_tables.nearest_gauges(system, nominal, 1) == ((gauge, nominal, 0.0),)
    # and from the four decimals of an inch that a caliper shows
    shown = float(numerals.fixed(nominal / INCH, 4)) * INCH
    assert gauges(system, shown, 1) == [gauge]


@given(
    system=st.sampled_from(gauge_tables.GAUGE_SYSTEMS),
    thickness=st.floats(min_value=0.0005, max_value=0.0042),
    count=st.integers(min_value=1, max_value=23),
)
def test_nearest_gauges_come_in_order_of_distance(system, thickness, count):
    rows = gauge_tables.nearest_gauges(system, thickness, count)
    distances = [numerals.settle(abs(difference)) for _, _, difference in rows]
    assert len({gauge for gauge, _, _ in rows}) == len(rows) == count
    assert distances == sorted(distances)
    for gauge, nominal, difference in rows:
        assert nominal == gauge_tables.thickness_of_gauge(system, gauge)
        assert nominal + difference == pytest.approx(thickness, rel=1e-9)
    lowest, highest = gauge_tables.gauge_range(system)
    nearest = min(abs(gauge_tables.thickness_of_gauge(system, g) - thickness) for g in range(lowest, highest + 1))
    assert distances[0] == pytest.approx(nearest, rel=1e-8, abs=1e-12)


# Refusals


@pytest.mark.parametrize(
    ("system", "gauge"),
    [("steel", 2), ("steel", 31), ("galvanized", 7), ("tube", 0), ("aluminum", -16), ("stainless", math.nan)]
    + [("steel", math.inf)],
)
def test_a_gauge_outside_the_table_is_refused(system, gauge):
    for function in (
        gauge_tables.thickness_of_gauge,
        gauge_tables.mass_per_area_of_gauge,
        gauge_tables.mill_tolerance,
    ):
        with pytest.raises(ranges.OutOfRange, match="gauge"):
            function(system, gauge)


def test_half_a_gauge_is_refused():
    with pytest.raises(ValueError, match=r"gauge is 16\.5; it must be a whole number"):
        gauge_tables.thickness_of_gauge("steel", 16.5)


def test_a_whole_number_typed_as_a_decimal_is_a_gauge():
    assert gauge_tables.thickness_of_gauge("steel", 16.0) == gauge_tables.thickness_of_gauge("steel", 16)


def test_an_unknown_gauge_system_is_refused():
    with pytest.raises(ValueError, match="copper"):
        gauge_tables.thickness_of_gauge("copper", 16)


@pytest.mark.parametrize(
    ("system", "inch"),
    [
        ("steel", 0.25),
        ("steel", 0.0109),
        ("galvanized", 0.18),
        ("stainless", 0.26),
        ("tube", 0.3),
        ("tube", 0.0),
    ],
)
def test_metal_outside_the_table_has_no_gauge(system, inch):
    with pytest.raises(ranges.OutOfRange, match="thickness"):
        gauge_tables.nearest_gauges(system, inch * INCH, 1)
    with pytest.raises(ranges.OutOfRange, match="thickness"):
        gauge_tables.gauges_within_tolerance(system, inch * INCH)


@pytest.mark.parametrize("thickness", [math.nan, math.inf, -0.001])
def test_a_thickness_that_is_no_thickness_is_refused(thickness):
    for function in (
        lambda value: gauge_tables.nearest_gauges("steel", value, 1),
        gauge_tables.nearest_fraction,
    ):
        with pytest.raises(ranges.OutOfRange, match="thickness"):
            function(thickness)


@pytest.mark.parametrize("count", [0, 29, -1])
def test_a_count_the_table_cannot_fill_is_refused(count):
    with pytest.raises(ranges.OutOfRange, match="count"):
        gauge_tables.nearest_gauges("steel", 0.0015, count)


def test_the_last_gauge_reaches_as_far_as_the_mill_may_deliver_it():
    # Galvanized 30 gauge from 0.0127 in, 8 gauge to 0.177 in, by the list above.
    assert gauges("galvanized", 0.0128 * INCH, 1) == [30]
    assert gauges("galvanized", 0.177 * INCH, 1) == [8]


def test_the_last_gauge_reaches_half_a_step_beyond_itself():
    # Stainless: 30 gauge 0.0125 in, 29 gauge 0.0140625 in, half the step 0.00078125 in.
    assert gauges("stainless", 0.01171875 * INCH, 1) == [30]
    with pytest.raises(ranges.OutOfRange):
        gauge_tables.nearest_gauges("stainless", 0.0117187 * INCH, 1)
    # 3 gauge 0.25 in, 4 gauge 0.234375 in, half the step 0.0078125 in.
    assert gauges("stainless", 0.2578125 * INCH, 1) == [3]
    with pytest.raises(ranges.OutOfRange):
        gauge_tables.nearest_gauges("stainless", 0.2578126 * INCH, 1)


# Fractions of an inch: the rule's own marks, by hand


@pytest.mark.parametrize(
    ("inch", "text"),
    [
        (1 / 64, "1/64"),
        (1 / 32, "1/32"),
        (0.1875, "3/16"),
        (0.25, "1/4"),
        (63 / 64, "63/64"),
        (1.0, "1"),
        (1.25, "1 1/4"),
        (2 + 1 / 64, "2 1/64"),
        (0.0598, "1/16"),  # 16 gauge steel: 3.83 / 64, nearest 4 / 64
        (0.1345, "9/64"),  # 10 gauge steel: 8.61 / 64
    ],
)
def test_nearest_fraction(inch, text):
    found, difference = gauge_tables.nearest_fraction(inch * INCH)
    assert found == text
    assert difference == pytest.approx((inch - numerals.parse(text)) * INCH, rel=1e-9, abs=1e-15)


def test_a_fraction_met_exactly_leaves_no_difference():
    # 4.7625 mm is 3/16 in; the two ways of typing it differ in the last bit.
    assert gauge_tables.nearest_fraction(4.7625 / 1000) == ("3/16", 0.0)
    assert gauge_tables.nearest_fraction(0.1875 * INCH) == ("3/16", 0.0)


@pytest.mark.parametrize(
    ("thickness", "text"),
    [
        (5 / 128 * INCH, "3/64"),
        (0.9921875 / 1000, "3/64"),
        (3 / 128 * INCH, "1/32"),
        (29 / 128 * INCH, "15/64"),
    ]
    + [(79 / 128 * INCH, "5/8"), (15.6765625 / 1000, "5/8")],
)
def test_half_way_between_two_fractions_takes_the_larger(thickness, text):
    # The last four fall a last bit short of half way in floating point.
    assert gauge_tables.nearest_fraction(thickness)[0] == text


@given(sixty_fourths=st.integers(min_value=1, max_value=755), shift=st.floats(min_value=-0.499, max_value=0.499))
def test_nearest_fraction_is_within_half_a_sixty_fourth_and_reduced(sixty_fourths, shift):
    text, difference = gauge_tables.nearest_fraction((sixty_fourths + shift) / 64 * INCH)
    assert numerals.parse(text) == sixty_fourths / 64
    assert difference == pytest.approx(shift / 64 * INCH, abs=1e-9 * INCH * sixty_fourths)
    if "/" in text:
        top, bottom = text.split(" ")[-1].split("/")
        assert math.gcd(int(top), int(bottom)) == 1


def test_metal_nobody_reads_64ths_of_is_refused():
    gauge_tables.nearest_fraction(0.3)
    with pytest.raises(ranges.OutOfRange) as refused:
        gauge_tables.nearest_fraction(0.3001)
    assert (refused.value.name, refused.value.high, refused.value.unit) == ("thickness", 0.3, "m")


def test_metal_too_thin_for_a_fraction_is_refused():
    assert gauge_tables.nearest_fraction(INCH / 128)[0] == "1/64"
    with pytest.raises(ranges.OutOfRange):
        gauge_tables.nearest_fraction(INCH / 129)
