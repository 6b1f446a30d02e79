"""Filter shades, row by row against the law and the standard that sets the shade for comfort.

Least shade: 29 CFR 1910.133(a)(5) as in force on 30 November 2024, read; the same rows in 29 CFR 1915.153, read.
Standing: law. Comfort: ANSI Z49.1:2005 and :2012, seen quoted. Standing: standard.
"""

import math

import pytest

from calculators import ranges
from calculators.facts import shade as facts
from calculators.shade_bands import arc_shade, plate_shade, rod_shade

INCH = 0.0254

# (process, a current inside the band, least, comfort or None)
ROWS = (
    ("shielded-metal-arc", 40, 7, None),
    ("shielded-metal-arc", 110, 8, 10),
    ("shielded-metal-arc", 205, 10, 12),
    ("shielded-metal-arc", 400, 11, 14),
    ("gas-metal-arc", 30, 7, None),
    ("gas-metal-arc", 110, 10, 11),
    ("gas-metal-arc", 205, 10, 12),
    ("gas-metal-arc", 375, 10, 14),
    ("flux-cored-arc", 205, 10, 12),
    ("gas-tungsten-arc", 25, 8, 10),
    ("gas-tungsten-arc", 100, 8, 12),
    ("gas-tungsten-arc", 325, 10, 14),
    ("air-carbon-arc", 250, 10, 12),
    ("air-carbon-arc", 750, 11, 14),
    ("plasma-welding", 10, 6, (6, 8)),
    ("plasma-welding", 60, 8, 10),
    ("plasma-welding", 250, 10, 12),
    ("plasma-welding", 600, 11, 14),
    ("plasma-cutting", 200, 8, 9),
    ("plasma-cutting", 350, 9, 12),
    ("plasma-cutting", 600, 10, 14),
)


@pytest.mark.parametrize(("process", "current", "least", "comfort"), ROWS)
def test_arc_by_the_table(process, current, least, comfort):
    low, high = comfort if isinstance(comfort, tuple) else (comfort or 0, comfort or 0)
    assert arc_shade(process, float(current)) == (least, low, high)


# Where two bands of the law share an edge the darker one counts.
@pytest.mark.parametrize(
    ("process", "edge", "least"),
    [
        ("shielded-metal-arc", 60.0, 8),
        ("shielded-metal-arc", 160.0, 10),
        ("shielded-metal-arc", 250.0, 11),
        ("gas-metal-arc", 60.0, 10),
        ("gas-tungsten-arc", 150.0, 10),
        ("air-carbon-arc", 500.0, 11),
        ("plasma-welding", 20.0, 8),
        ("plasma-welding", 400.0, 11),
        ("plasma-cutting", 300.0, 9),
        ("plasma-cutting", 400.0, 10),
    ],
)
def test_the_edge_of_two_bands_takes_the_higher(process, edge, least):
    assert arc_shade(process, edge)[0] == least
    assert arc_shade(process, math.nextafter(edge, 0.0))[0] == least  # read to ten figures, not to the last bit
    assert arc_shade(process, edge * 0.999)[0] < least


@pytest.mark.parametrize(
    ("thirty_seconds", "least"), [(2.5, 7), (3, 8), (4, 8), (5, 10), (6, 10), (8, 10), (8.5, 11), (10, 11)]
)
def test_rods_by_their_size_in_thirty_seconds(thirty_seconds, least):
    assert rod_shade(thirty_seconds * INCH / 32)[0] == least


@pytest.mark.parametrize(
    ("process", "inches", "shade"),
    [
        ("gas-welding", 0.1, (4, 4, 5)),
        ("gas-welding", 0.125, (5, 5, 6)),
        ("gas-welding", 0.5, (5, 5, 6)),
        ("gas-welding", 0.51, (6, 6, 8)),
        ("oxygen-cutting", 0.9, (3, 3, 4)),
        ("oxygen-cutting", 1.0, (4, 4, 5)),
        ("oxygen-cutting", 6.0, (4, 4, 5)),
        ("oxygen-cutting", 6.1, (5, 5, 6)),
    ],
)
def test_torches_by_plate(process, inches, shade):
    assert plate_shade(process, inches * INCH) == shade


def test_brazing_soldering_and_carbon_arc():
    assert facts.FIXED == (("brazing", 3, 3, 4), ("soldering", 2, 2, 2), ("carbon-arc", 14, 14, 14))


def test_the_ends_of_the_tables():
    """Federal law ends gas metal arc at 500 A; the standard and a state's copy print 550."""
    assert arc_shade("gas-metal-arc", 500.0)[0] == 10
    assert arc_shade("plasma-welding", 0.5)[0] == 6
    for process, end in (("gas-metal-arc", 500.1), ("shielded-metal-arc", 550.1), ("air-carbon-arc", 1000.1)):
        with pytest.raises(ranges.OutOfRange):
            arc_shade(process, end)
    for bad in (math.nan, math.inf, -1.0):
        with pytest.raises(ranges.OutOfRange):
            arc_shade("gas-metal-arc", bad)
    for bad in (0.0005, 0.0128):
        with pytest.raises(ranges.OutOfRange):
            rod_shade(bad)
    with pytest.raises(ranges.OutOfRange):
        plate_shade("gas-welding", 0.31)
    with pytest.raises(ranges.OutOfRange):
        plate_shade("gas-welding", -0.001)


def test_more_current_never_asks_for_less():
    for process, bands in facts.CURRENTS:
        shades = [arc_shade(process, current) for current in range(1, int(bands[-1][0]) + 1)]
        assert [each[0] for each in shades] == sorted(each[0] for each in shades)
        assert all(each[1] == 0 or each[0] <= each[1] <= each[2] for each in shades)
