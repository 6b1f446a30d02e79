"""Fume: the emission factors as public bodies repeat them, the box model against integration, and the limits by law.

Factors: US EPA, AP-42 12.19. Repeated, and read there: a permit sheet of Oregon DEQ (record 6478112) in lb for each lb:
70S manganese 3.18E-04; 316 manganese 2.45E-04, nickel 2.26E-04. Another sheet (record 6801160) has
316 and 308L with chromium, manganese and nickel as printed, ten times too high. Standing: published.
Law: 29 CFR 1910.252(c)(2), 1910.1000 and 1910.1026, read on OSHA's pages or a state's copy.
"""

import math

import pytest
from scipy.integrate import quad, solve_ivp

from calculators import ranges
from calculators.facts import fume as facts
from calculators.room_air import concentration, mean_concentration

MG, HOUR = 1e-6, 3600.0
# Fume, manganese, chromium(VI), nickel as printed; 0 where the table has none.
ROWS = {
    name: (fume, manganese or 0.0, six or 0.0, nickel or 0.0) for name, fume, manganese, six, nickel in facts.PRINTED
}


def test_heading_of_the_metals_table_is_tenths_of_a_gram():
    """The trap: read as g/kg, the manganese of solid wire would be six tenths of its fume, and is one sixteenth."""
    _, manganese, _, _ = ROWS["solid-steel"]
    assert manganese * facts.TENTHS == pytest.approx(3.18e-4)  # lb for each lb, the permit sheet that got it right
    assert manganese * facts.TENTHS != pytest.approx(3.2e-3, rel=0.05)  # and the one that did not
    for fume, manganese, six, nickel in ROWS.values():
        metals = (manganese + six + nickel) * facts.TENTHS
        assert metals < 0.11 * fume * facts.GRAMS


def test_stainless_takes_the_higher_of_two_grades():
    """308: manganese 3.46, nickel 1.84; 316: 2.45 and 2.26; permit sheets."""
    assert ROWS["solid-stainless"][1] == max(3.46, 2.45)
    assert ROWS["solid-stainless"][3] == max(1.84, 2.26)


def test_rods_as_the_sheet_has_them():
    """Record 6801160: E7018 manganese 1.0 (there already in g/kg), E6010 manganese 9.9 as printed."""
    assert ROWS["stick-7018"][1] * facts.TENTHS == pytest.approx(1.0e-3, rel=0.05)
    assert ROWS["stick-6010"][1] == pytest.approx(9.9, abs=0.05)


# A public list of particulate factors, read: GMAW E70S 5.2, E308L 5.4, ER5154 24.1; FCAW E71T 12.2, E308LT 9.1 g/kg.
def test_fume_of_wires_as_repeated():
    names = ("solid-steel", "solid-stainless", "solid-aluminum", "cored-steel", "cored-stainless")
    assert [ROWS[name][0] for name in names] == [5.2, 5.4, 24.1, 12.2, 9.1]


def test_solid_wire_makes_less_fume_than_stick():
    """Common practice, borne out by the factors: and yet it builds up, since the beads are long."""
    sticks = [row[0] for name, row in ROWS.items() if name.startswith("stick-")]
    assert ROWS["solid-steel"][0] < min(sticks)


@pytest.mark.parametrize("air", [0.0, 1e-6, 0.01, 0.95, 5.0])
@pytest.mark.parametrize("time", [60.0, HOUR, 8 * HOUR])
def test_box_model_against_numerical_integration(air, time):
    rate, volume = 2.9e-6, 283.0
    solved = solve_ivp(
        lambda _, c: (rate - air * c) / volume, (0.0, time), [0.0], rtol=1e-10, atol=1e-18, dense_output=True
    )
    assert concentration(rate, volume, air, time) == pytest.approx(solved.y[0][-1], rel=1e-5, abs=0)
    area = quad(lambda at: solved.sol(at)[0], 0.0, time, limit=200)[0]
    assert mean_concentration(rate, volume, air, time) == pytest.approx(area / time, rel=1e-4, abs=0)


def test_series_and_closed_form_meet():
    """Both ways round the number of changes of air at which they are switched."""
    for changes in (0.999e-3, 1.001e-3):
        air = changes * 100.0 / HOUR
        exact = 1e-6 / air * -math.expm1(-changes)
        assert concentration(1e-6, 100.0, air, HOUR) == pytest.approx(exact, rel=1e-9, abs=0)
        mean = 1e-6 / air * (1 - -math.expm1(-changes) / changes)
        assert mean_concentration(1e-6, 100.0, air, HOUR) == pytest.approx(mean, rel=1e-9, abs=0)


def test_legal_room_at_the_legal_rate():
    """2 kg of solid wire an hour, 283 m3, 57 m3/min. By hand: 173.3 mg/min; 1.93, 2.89 and 3.04 mg/m3."""
    rate = 2.0 / HOUR * 5.2 * facts.GRAMS
    assert rate * 6e7 == pytest.approx(173.3, abs=0.1)
    found = [concentration(rate, 283.0, 0.95, minutes * 60.0) / MG for minutes in (5, 15, 600)]
    assert found == [pytest.approx(each, abs=0.01) for each in (1.93, 2.89, 3.04)]
    manganese = 2.0 / HOUR * ROWS["solid-steel"][1] * facts.TENTHS
    assert concentration(manganese, 283.0, 0.95, 10 * HOUR) / MG == pytest.approx(0.186, abs=0.001)


def test_without_air_it_is_shared_out():
    assert concentration(1e-6, 50.0, 0.0, HOUR) == pytest.approx(3600e-6 / 50)
    assert mean_concentration(1e-6, 50.0, 0.0, HOUR) == pytest.approx(1800e-6 / 50)


# OSHA's own pages, read: manganese ceiling 5, NIOSH 1, ACGIH (2013) 0.02 respirable; zinc oxide 5, NIOSH 15 min 10,
# ACGIH 2; nickel 1. Chromium(VI): 5 ug/m3 (1910.1026, read), NIOSH 0.2 ug/m3 (2013-128, seen quoted).
def test_limits():
    assert {name: pytest.approx(limit / MG) for name, _, limit, _, _ in facts.LIMITS} == {
        "manganese-osha": 5,
        "manganese-niosh": 1,
        "manganese-acgih": 0.02,
        "chromium-osha": 0.005,
        "chromium-niosh": 0.0002,
        "nickel-osha": 1,
        "nickel-niosh": 0.015,
        "zinc-osha": 5,
        "zinc-short": 10,
        "zinc-acgih": 2,
        "dust-osha": 15,
    }
    assert [name for name, _, _, _, law in facts.LIMITS if law] == [
        *("manganese-osha", "chromium-osha", "nickel-osha", "zinc-osha", "dust-osha")
    ]
    assert [name for name, _, _, day, _ in facts.LIMITS if not day] == ["manganese-osha", "zinc-short"]


def test_figures_of_the_law_for_a_room():
    """29 CFR 1910.252(c)(2) prints 284 m3, 5 m and 57 m3/min beside its feet."""
    assert pytest.approx(284, abs=1.0) == facts.LEAST_SPACE
    assert pytest.approx(5, abs=0.15) == facts.LEAST_CEILING
    assert pytest.approx(57, abs=0.5) == facts.LEAST_AIR * 60


def test_zinc_on_sheet_is_shared_by_two_faces():
    """ASTM A653 G90: 0.90 oz/ft2 is 275 g/m2, on both faces together."""
    sheet = dict(facts.ZINC_A_FACE)["galvanized-sheet"]
    assert 2 * sheet == pytest.approx(0.275)
    assert 2 * sheet == pytest.approx(0.90 * 0.028349523 / 0.3048**2, rel=0.002)
    assert pytest.approx(1.245, abs=0.001) == facts.ZINC_OXIDE


@pytest.mark.parametrize("function", [concentration, mean_concentration])
@pytest.mark.parametrize(
    "arguments",
    [
        (-1e-9, 10.0, 0.1, 60.0),
        (1.1, 10.0, 0.1, 60.0),
        (1e-6, 0.009, 0.1, 60.0),
        (1e-6, 1.1e7, 0.1, 60.0),
        (1e-6, 10.0, -0.1, 60.0),
        (1e-6, 10.0, 1.1e4, 60.0),
        (1e-6, 10.0, 0.1, -1.0),
        (1e-6, 10.0, 0.1, 1.1e6),
        (math.nan, 10.0, 0.1, 60.0),
    ],
)
def test_out_of_range(function, arguments):
    with pytest.raises(ranges.OutOfRange):
        function(*arguments)
