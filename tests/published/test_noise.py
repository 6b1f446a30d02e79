"""The dose of noise against the tables of the law, whose formula it is, and against NIOSH's.

29 CFR 1910.95: tables G-16 and G-16a and Appendix A, read on OSHA's own page. Standing: law.
Table A-1 of the appendix: doses and averages; from memory, each checked with the formula printed above it.
NIOSH, criteria of 1996/1998: 85 dB, 3 dB, TWA = 10 log10(D / 100) + 85; the footnote read. Standing: published.
"""

import math

import pytest

from calculators import ranges
from calculators.facts import noise as facts
from calculators.noise_dose import average_level, dose_share, full_dose_time

HOUR = 3600.0

# Table G-16a as printed, level [dB]: reference duration [h]. At 83 dB one printing has 21.1, another 21.2.
G_16A = (
    *((80, 32), (81, 27.9), (82, 24.3), (83, 21.1), (84, 18.4), (85, 16), (86, 13.9), (87, 12.1), (88, 10.6)),
    *((89, 9.2), (90, 8), (91, 7.0), (92, 6.1), (93, 5.3), (94, 4.6), (95, 4), (96, 3.5), (97, 3.0), (98, 2.6)),
    *((99, 2.3), (100, 2), (101, 1.7), (102, 1.5), (103, 1.3), (104, 1.1), (105, 1), (106, 0.87), (107, 0.76)),
    *((108, 0.66), (109, 0.57), (110, 0.5), (111, 0.44), (112, 0.38), (113, 0.33), (114, 0.29), (115, 0.25)),
    *((120, 0.125), (125, 0.063), (130, 0.031)),
)


@pytest.mark.parametrize(("level", "hours"), G_16A)
def test_reference_duration_of_the_law(level, hours):
    places = len(str(hours).partition(".")[2])
    found = full_dose_time(float(level), 90.0, 5.0) / HOUR
    assert found == pytest.approx(hours, abs=0.51 * 10.0**-places)


# Table G-16: these are rounder than the formula (6.06, 3.03 and 1.52 h).
@pytest.mark.parametrize(("level", "hours"), [(90, 8), (92, 6), (95, 4), (97, 3), (100, 2), (102, 1.5), (105, 1)])
def test_permissible_duration_of_the_law(level, hours):
    assert full_dose_time(float(level), 90.0, 5.0) / HOUR == pytest.approx(hours, rel=0.012)


@pytest.mark.parametrize(("level", "hours"), [(85, 8), (88, 4), (91, 2), (94, 1), (97, 0.5), (100, 0.25)])
def test_duration_that_is_recommended(level, hours):
    assert full_dose_time(float(level), 85.0, 3.0) / HOUR == pytest.approx(hours)


# Table A-1, dose [%]: average [dB].
A_1 = ((10, 73.4), (25, 80.0), (50, 85.0), (75, 87.9), (100, 90.0), (150, 92.9), (200, 95.0), (400, 100.0))


@pytest.mark.parametrize(("dose", "level"), A_1)
def test_natural_logarithm_in_the_average_is_wrong(dose, level):
    """The trap: ln for log10 agrees at 100 % and is 6.5 dB off at half a dose."""
    assert average_level(dose / 100, 90.0, facts.TENFOLD) == pytest.approx(level, abs=0.06)
    natural = 16.61 * math.log(dose / 100) + 90
    assert dose == 100 or abs(natural - level) > 2.0


def test_tenfold_dose_follows_from_the_exchange():
    assert pytest.approx(5.0 / math.log10(2.0), abs=0.001) == facts.TENFOLD
    assert pytest.approx(3.0 / math.log10(2.0), abs=0.04) == facts.NIOSH_TENFOLD


# A published example (a guide to Appendix A): 90 dB for 4 h, 95 for 2 h and 85 for 2 h give 112.5 % and 90.85 dB.
def test_mixed_day_with_both_thresholds():
    day = ((95.0, 2.0), (90.0, 4.0), (85.0, 2.0))
    programme = sum(dose_share(level, hours * HOUR, 90.0, 5.0, 80.0) for level, hours in day)
    limit = sum(dose_share(level, hours * HOUR, 90.0, 5.0, 90.0) for level, hours in day)
    assert programme == pytest.approx(1.125)
    assert limit == pytest.approx(1.0)
    assert average_level(programme, 90.0, facts.TENFOLD) == pytest.approx(90.85, abs=0.01)


def test_steady_day_averages_its_own_level():
    for level in (80.0, 88.0, 90.0, 97.0, 110.0):
        dose = dose_share(level, 8 * HOUR, 90.0, 5.0, 80.0)
        assert average_level(dose, 90.0, facts.TENFOLD) == pytest.approx(level, abs=0.01)


def test_below_the_threshold_nothing_counts_and_on_it_all_does():
    assert dose_share(79.9, 8 * HOUR, 90.0, 5.0, 80.0) == 0.0
    assert dose_share(80.0, 8 * HOUR, 90.0, 5.0, 80.0) == pytest.approx(0.25)
    assert dose_share(89.9, 8 * HOUR, 90.0, 5.0, 90.0) == 0.0
    assert dose_share(90.0, 8 * HOUR, 90.0, 5.0, 90.0) == pytest.approx(1.0)


def test_usual_levels_are_those_of_the_authority():
    """Health and Safety Executive, as read: wire 95 to 102, rods 85 to 95, gouging 100 to 115, grinding 95 to 105."""
    assert {work: (low, high) for work, low, high in facts.TYPICAL} == {
        "gas-metal-arc": (95, 102),
        "shielded-metal-arc": (85, 95),
        "gas-tungsten-arc": (65, 75),
        "air-carbon-arc": (100, 115),
        "plasma-cutting": (98, 105),
        "oxygen-cutting": (90, 100),
        "grinding": (95, 105),
        "chipping": (105, 105),
    }


@pytest.mark.parametrize(
    ("function", "arguments"),
    [
        (full_dose_time, (130.1, 90.0, 5.0)),
        (full_dose_time, (39.9, 90.0, 5.0)),
        (full_dose_time, (math.nan, 90.0, 5.0)),
        (full_dose_time, (90.0, 79.0, 5.0)),
        (full_dose_time, (90.0, 91.0, 5.0)),
        (full_dose_time, (90.0, 90.0, 2.9)),
        (full_dose_time, (90.0, 90.0, 6.1)),
        (dose_share, (90.0, -1.0, 90.0, 5.0, 80.0)),
        (dose_share, (90.0, 86401.0, 90.0, 5.0, 80.0)),
        (dose_share, (90.0, 60.0, 90.0, 5.0, 39.0)),
        (dose_share, (90.0, 60.0, 90.0, 5.0, 91.0)),
        (average_level, (0.0, 90.0, 16.61)),
        (average_level, (2.0e6, 90.0, 16.61)),
        (average_level, (1.0, 79.0, 16.61)),
        (average_level, (1.0, 91.0, 16.61)),
        (average_level, (1.0, 90.0, 9.9)),
        (average_level, (1.0, 90.0, 20.1)),
    ],
)
def test_out_of_range(function, arguments):
    with pytest.raises(ranges.OutOfRange):
        function(*arguments)


def test_the_ends_of_the_ranges_are_taken():
    assert full_dose_time(40.0, 80.0, 5.0) == pytest.approx(8 * HOUR * 2.0**8)
    assert dose_share(40.0, 8 * HOUR, 90.0, 5.0, 40.0) == pytest.approx(2.0**-10)
    assert average_level(1.0, 80.0, 10.0) == pytest.approx(80.0)
    with pytest.raises(ranges.OutOfRange):
        average_level(1.0000005e6, 90.0, 16.61)
