"""The dose of noise of a mixed day, and the steady level that would give the same."""

import math

from calculators import ranges
from calculators.facts import noise as facts


def full_dose_time(sound_level: float, criterion: float, exchange: float) -> float:
    """Return the time at one level that makes up a whole dose: T = 8 h / 2 ** ((level - criterion) / exchange).

    Parameters
    ----------
    sound_level : float
        A-weighted level, [-], in dB; 40 to 130.
    criterion : float
        Level that makes up a whole dose in 8 h, [-], in dB; 80 to 90.
    exchange : float
        Rise that halves the time, [-], in dB; 3 to 6.

    Returns
    -------
    float
        T, [s].

    Raises
    ------
    ranges.OutOfRange
        If an input is not finite or outside its range.

    Source
    ------
    29 CFR 1910.95, table G-16a and its footnote. Standing: law.

    Examples
    --------
    >>> full_dose_time(95.0, 90.0, 5.0) / 3600.0
    4.0
    """
    ranges.require("sound_level", sound_level, 40.0, facts.TOP, "")
    ranges.require("criterion", criterion, 80.0, 90.0, "")
    ranges.require("exchange", exchange, 3.0, 6.0, "")
    return facts.DAY / 2.0 ** ((sound_level - criterion) / exchange)


def dose_share(sound_level: float, exposure_time: float, criterion: float, exchange: float, threshold: float) -> float:
    """Return what one period adds to the dose: C / T, and nothing below the threshold.

    Parameters
    ----------
    sound_level : float
        A-weighted level, [-], in dB; 40 to 130.
    exposure_time : float
        C, [s]; 0 to 86400.
    criterion : float
        Level that makes up a whole dose in 8 h, [-], in dB; 80 to 90.
    exchange : float
        Rise that halves the time, [-], in dB; 3 to 6.
    threshold : float
        Lowest level that counts, [-], in dB; 40 to 90.

    Returns
    -------
    float
        Share of a whole dose, [-]; 1 is 100 %.

    Raises
    ------
    ranges.OutOfRange
        If an input is not finite or outside its range.

    Source
    ------
    29 CFR 1910.95 Appendix A: D = 100 (C1 / T1 + C2 / T2 + ...). Standing: law.

    Examples
    --------
    >>> dose_share(95.0, 7200.0, 90.0, 5.0, 80.0)
    0.5
    """
    ranges.require("exposure_time", exposure_time, 0.0, 86400.0, "s")
    ranges.require("threshold", threshold, 40.0, 90.0, "")
    whole = full_dose_time(sound_level, criterion, exchange)
    return 0.0 if ranges.above(threshold, sound_level) else exposure_time / whole


def average_level(dose: float, criterion: float, tenfold: float) -> float:
    """Return the steady level of 8 h that gives a dose: TWA = tenfold * log10(D) + criterion.

    Parameters
    ----------
    dose : float
        D, [-], 1 for 100 %; above 0, at most 1e6.
    criterion : float
        Level of a whole dose, [-], in dB; 80 to 90.
    tenfold : float
        Rise for ten times the dose, [-], in dB; 10 to 20.

    Returns
    -------
    float
        TWA, [-], in dB.

    Raises
    ------
    ranges.OutOfRange
        If an input is not finite or outside its range.

    Notes
    -----
    The logarithm is to base 10. The natural one is wrong by 2.3 times, and looks right at 100 %.

    Source
    ------
    29 CFR 1910.95 Appendix A, I (2): TWA = 16.61 log10(D / 100) + 90. Standing: law.

    Examples
    --------
    >>> round(average_level(0.5, 90.0, 16.61), 1)
    85.0
    """
    ranges.require("dose", dose, 1.0e-9, 1.0e6, "")
    ranges.require("criterion", criterion, 80.0, 90.0, "")
    ranges.require("tenfold", tenfold, 10.0, 20.0, "")
    return tenfold * math.log10(dose) + criterion
