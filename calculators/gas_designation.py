"""What ISO 14175 calls a mix, what its older edition called it, and which metals it suits."""

from calculators import numerals
from calculators.facts import gases

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Sequence

    Bound = tuple[float, bool, float]


def _percents(mix: tuple[float, ...]) -> list[float]:
    return [numerals.settle(fraction * 100.0, 8) for fraction in mix]


def _within(percents: list[float], bounds: "Sequence[Bound]") -> bool:
    for percent, bound in zip(percents, bounds):
        low, counts, high = bound
        if percent > high or percent < low or (percent == low and not counts):
            return False
    return True


def group(mix: tuple[float, ...]) -> str:
    """Return the group and sub-group of a mix by ISO 14175:2008, for instance M21.

    Parameters
    ----------
    mix : tuple
        Fractions by volume in the order of facts/gases.py; each 0 to 1, together 1.

    Returns
    -------
    str
        The symbol; Z where no row of the table holds the mix.

    Raises
    ------
    Nothing: the caller has already refused what is no mix.

    Notes
    -----
    By the nominal composition. A part under 0.5 % puts a mix in Z.

    Source
    ------
    ISO 14175:2008, table 2, as in calculators/facts/gases.py. Standing: from memory.

    Examples
    --------
    >>> group((0.75, 0.25, 0.0, 0.0, 0.0, 0.0))
    'M21'
    """
    percents = _percents(mix)
    for row in gases.GROUPS:
        if _within(percents, row[1:]):
            return row[0]
    return gases.OTHER_GROUP


def designation(mix: tuple[float, ...]) -> str:
    """Return the full designation of a mix by ISO 14175:2008: standard, group, gases and percentages.

    Parameters
    ----------
    mix : tuple
        Fractions by volume in the order of facts/gases.py; each 0 to 1, together 1.

    Returns
    -------
    str
        For instance ISO 14175-M24-ArCO-10/3.

    Raises
    ------
    Nothing: the caller has already refused what is no mix.

    Notes
    -----
    The largest part stands first and has no number; the others follow by how much there is of each.

    Source
    ------
    ISO 14175:2008, designation. Standing: from memory.

    Examples
    --------
    >>> designation((0.75, 0.25, 0.0, 0.0, 0.0, 0.0))
    'ISO 14175-M21-ArC-25'
    """
    letters, numbers = _letters_and_numbers(mix)
    return "ISO 14175-" + group(mix) + "-" + "".join(letters) + numbers


def us_designation(mix: tuple[float, ...]) -> str:
    """Return the designation of a mix by AWS A5.32-97: SG, letters of the gases and percentages.

    Parameters
    ----------
    mix : tuple
        Fractions by volume in the order of facts/gases.py; each 0 to 1, together 1.

    Returns
    -------
    str
        For instance SG-AC-25.

    Raises
    ------
    Nothing: the caller has already refused what is no mix.

    Notes
    -----
    As the ISO designation without the group, argon being A alone. Later editions follow ISO 14175.

    Source
    ------
    AWS A5.32/A5.32M-97. Standing: from memory.

    Examples
    --------
    >>> us_designation((0.75, 0.25, 0.0, 0.0, 0.0, 0.0))
    'SG-AC-25'
    """
    letters, numbers = _letters_and_numbers(mix)
    return "SG-" + "".join("A" if letter == "Ar" else letter for letter in letters) + numbers


def _letters_and_numbers(mix: tuple[float, ...]) -> tuple[list[str], str]:
    percents = _percents(mix)
    parts = [(-percents[place], place) for place in range(len(percents)) if percents[place] > 0.0]
    parts.sort()
    numbers = "/".join(numerals.significant(-less, 4) for less, _ in parts[1:])
    return [gases.GASES[place][1] for _, place in parts], "-" + numbers if numbers else ""


def older_group(mix: tuple[float, ...]) -> str:
    """Return what ISO 14175:1997 and EN 439 called a mix where that differs, or an empty text.

    Parameters
    ----------
    mix : tuple
        Fractions by volume in the order of facts/gases.py; each 0 to 1, together 1.

    Returns
    -------
    str
        The older symbol, or an empty text.

    Raises
    ------
    Nothing: the caller has already refused what is no mix.

    Notes
    -----
    The older editions had all of 5 to 25 % carbon dioxide in M21.

    Source
    ------
    EN 439:1994 and ISO 14175:1997. Standing: from memory.

    Examples
    --------
    >>> older_group((0.92, 0.08, 0.0, 0.0, 0.0, 0.0))
    'M21'
    """
    if _percents(mix)[2] > gases.OLDER_HIGHEST_OXYGEN:
        return ""
    return dict(gases.OLDER_GROUPS).get(group(mix), "")


def suits(mix: tuple[float, ...], metal: str) -> tuple[str, str]:
    """Return (verdict, reason) of a mix for welding a metal with solid wire: suits, care or no, and why.

    Parameters
    ----------
    mix : tuple
        Fractions by volume in the order of facts/gases.py; each 0 to 1, together 1.
    metal : str
        mild-steel, stainless (austenitic), duplex, aluminum or copper (and silicon bronze).

    Returns
    -------
    tuple
        Two words.

    Raises
    ------
    ValueError
        If the metal is not one of these.

    Notes
    -----
    Rows of a table, the first that holds the mix.

    Source
    ------
    Practice of the trade. Standing: common practice.

    Examples
    --------
    >>> suits((0.75, 0.25, 0.0, 0.0, 0.0, 0.0), "aluminum")
    ('no', 'soot')
    """
    percents = _percents(mix)
    for row in gases.SUITS:
        if row[0] == metal and _within(percents, row[3:]):
            return row[1], row[2]
    raise ValueError(metal)
