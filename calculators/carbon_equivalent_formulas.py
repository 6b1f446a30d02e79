"""Carbon equivalents: one number for how much the carbon and the alloy of a steel harden it beside a weld.

Contents and results are mass fractions (0.18 % is 0.0018), so that no hidden percent can slip in. The divisors
stand in calculators/facts/steels.py.
"""

from calculators import ranges
from calculators.facts import steels

_PERCENT = 0.01


def _require(contents: tuple[tuple[str, float], ...]) -> None:
    highest = dict(steels.HIGHEST)
    for element, content in contents:
        ranges.require(element, content, 0.0, highest[element] * _PERCENT, "")


def _added(divisors: tuple[tuple[str, float], ...], contents: tuple[tuple[str, float], ...]) -> float:
    known = dict(contents)
    total = 0.0
    for element, divisor in divisors:
        total = total + known[element] / divisor
    return total


def ce_iiw(
    carbon: float,
    manganese: float,
    chromium: float,
    molybdenum: float,
    vanadium: float,
    nickel: float,
    copper: float,
) -> float:
    """Return the carbon equivalent CE of the International Institute of Welding (CEV on European certificates).

    CE = C + Mn/6 + (Cr + Mo + V)/5 + (Ni + Cu)/15

    Parameters
    ----------
    carbon : float
        Mass fraction of carbon, [-]; 0 to 0.011.
    manganese : float
        Mass fraction of manganese, [-]; 0 to 0.02.
    chromium : float
        Mass fraction of chromium, [-]; 0 to 0.03.
    molybdenum : float
        Mass fraction of molybdenum, [-]; 0 to 0.012.
    vanadium : float
        Mass fraction of vanadium, [-]; 0 to 0.005.
    nickel : float
        Mass fraction of nickel, [-]; 0 to 0.04.
    copper : float
        Mass fraction of copper, [-]; 0 to 0.01.

    Returns
    -------
    float
        Carbon equivalent as a mass fraction, [-].

    Raises
    ------
    ranges.OutOfRange
        If a content is not finite or is outside its range.

    Notes
    -----
    At least five sums are called "carbon equivalent": the number means nothing without its formula.

    Source
    ------
    EN 1011-2:2001, C.2.1, and EN 10025-1; quoted by TWI and by general encyclopedias (seen). Standard.

    Examples
    --------
    >>> round(ce_iiw(0.0020, 0.0080, 0.0005, 0.0001, 0.0, 0.0005, 0.0020), 5)
    0.00362
    """
    contents = (
        ("carbon", carbon),
        ("manganese", manganese),
        ("chromium", chromium),
        ("molybdenum", molybdenum),
        ("vanadium", vanadium),
        ("nickel", nickel),
        ("copper", copper),
    )
    _require(contents)
    return _added(steels.CE_DIVISORS, contents)


def ce_with_silicon(
    carbon: float,
    silicon: float,
    manganese: float,
    chromium: float,
    molybdenum: float,
    vanadium: float,
    nickel: float,
    copper: float,
) -> float:
    """Return the carbon equivalent of AWS D1.1's annex: the usual CE with silicon counted like manganese.

    CE = C + (Mn + Si)/6 + (Cr + Mo + V)/5 + (Ni + Cu)/15

    Parameters
    ----------
    carbon : float
        Mass fraction of carbon, [-]; 0 to 0.011.
    silicon : float
        Mass fraction of silicon, [-]; 0 to 0.022.
    manganese : float
        Mass fraction of manganese, [-]; 0 to 0.02.
    chromium : float
        Mass fraction of chromium, [-]; 0 to 0.03.
    molybdenum : float
        Mass fraction of molybdenum, [-]; 0 to 0.012.
    vanadium : float
        Mass fraction of vanadium, [-]; 0 to 0.005.
    nickel : float
        Mass fraction of nickel, [-]; 0 to 0.04.
    copper : float
        Mass fraction of copper, [-]; 0 to 0.01.

    Returns
    -------
    float
        Carbon equivalent as a mass fraction, [-].

    Raises
    ------
    ranges.OutOfRange
        If a content is not finite or is outside its range.

    Source
    ------
    AWS D1.1, annex on preheat; TWI, "What is the difference between the various carbon equivalent formulae",
    says that it adds Si/6 (seen). Standard, not read in the code itself.

    Examples
    --------
    >>> round(ce_with_silicon(0.0020, 0.0020, 0.0080, 0.0005, 0.0001, 0.0, 0.0005, 0.0020), 6)
    0.003953
    """
    contents = (
        ("carbon", carbon),
        ("silicon", silicon),
        ("manganese", manganese),
        ("chromium", chromium),
        ("molybdenum", molybdenum),
        ("vanadium", vanadium),
        ("nickel", nickel),
        ("copper", copper),
    )
    _require(contents)
    return _added(steels.CE_WITH_SILICON_DIVISORS, contents)


def cet(carbon: float, manganese: float, molybdenum: float, chromium: float, copper: float, nickel: float) -> float:
    """Return the carbon equivalent CET, the one that the preheat formula of EN 1011-2 Method B takes.

    CET = C + (Mn + Mo)/10 + (Cr + Cu)/20 + Ni/40

    Parameters
    ----------
    carbon : float
        Mass fraction of carbon, [-]; 0 to 0.011.
    manganese : float
        Mass fraction of manganese, [-]; 0 to 0.02.
    molybdenum : float
        Mass fraction of molybdenum, [-]; 0 to 0.012.
    chromium : float
        Mass fraction of chromium, [-]; 0 to 0.03.
    copper : float
        Mass fraction of copper, [-]; 0 to 0.01.
    nickel : float
        Mass fraction of nickel, [-]; 0 to 0.04.

    Returns
    -------
    float
        Carbon equivalent as a mass fraction, [-].

    Raises
    ------
    ranges.OutOfRange
        If a content is not finite or is outside its range.

    Notes
    -----
    The sum itself holds for any content; the steels it was tested on are narrower (``steels.CET_TESTED``), and the
    page gives no number outside them.

    Source
    ------
    EN 1011-2:2001, C.3.2; quoted by general encyclopedias (seen). Standard, not read in the standard itself.

    Examples
    --------
    >>> round(cet(0.0020, 0.0080, 0.0001, 0.0005, 0.0020, 0.0005), 7)
    0.0029475
    """
    contents = (
        ("carbon", carbon),
        ("manganese", manganese),
        ("molybdenum", molybdenum),
        ("chromium", chromium),
        ("copper", copper),
        ("nickel", nickel),
    )
    _require(contents)
    return _added(steels.CET_DIVISORS, contents)


def pcm(
    carbon: float,
    silicon: float,
    manganese: float,
    copper: float,
    chromium: float,
    nickel: float,
    molybdenum: float,
    vanadium: float,
    boron: float,
) -> float:
    """Return the cracking parameter Pcm of Ito and Bessyo, made for low-carbon steels.

    Pcm = C + Si/30 + (Mn + Cu + Cr)/20 + Ni/60 + Mo/15 + V/10 + 5 B

    Parameters
    ----------
    carbon : float
        Mass fraction of carbon, [-]; 0 to 0.011.
    silicon : float
        Mass fraction of silicon, [-]; 0 to 0.022.
    manganese : float
        Mass fraction of manganese, [-]; 0 to 0.02.
    copper : float
        Mass fraction of copper, [-]; 0 to 0.01.
    chromium : float
        Mass fraction of chromium, [-]; 0 to 0.03.
    nickel : float
        Mass fraction of nickel, [-]; 0 to 0.04.
    molybdenum : float
        Mass fraction of molybdenum, [-]; 0 to 0.012.
    vanadium : float
        Mass fraction of vanadium, [-]; 0 to 0.005.
    boron : float
        Mass fraction of boron, [-]; 0 to 0.0001.

    Returns
    -------
    float
        Cracking parameter as a mass fraction, [-].

    Raises
    ------
    ranges.OutOfRange
        If a content is not finite or is outside its range.

    Notes
    -----
    Boron counts five times: 20 ppm is 0.0020 % and adds 0.010 %. The sum itself holds for any content; the steels it
    was tested on are narrower (``steels.PCM_TESTED``), and the page gives no number outside them.

    Source
    ------
    Ito and Bessyo, IIW documents IX-576-68 and IX-631-69, as in AWS D1.1 and API 5L; quoted by a university review
    and general encyclopedias (seen). Standard, not read in the standards themselves.

    Examples
    --------
    >>> round(pcm(0.0020, 0.0020, 0.0080, 0.0020, 0.0005, 0.0005, 0.0001, 0.0, 0.0), 6)
    0.002607
    """
    contents = (
        ("carbon", carbon),
        ("silicon", silicon),
        ("manganese", manganese),
        ("copper", copper),
        ("chromium", chromium),
        ("nickel", nickel),
        ("molybdenum", molybdenum),
        ("vanadium", vanadium),
        ("boron", boron),
    )
    _require(contents)
    return _added(steels.PCM_DIVISORS, contents)
