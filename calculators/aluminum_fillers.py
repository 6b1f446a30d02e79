"""Which aluminum filler goes with which alloy: what magnesium, silicon and heat rule out."""

from calculators.facts import aluminum_fillers as facts


def fault(base: str, filler: str, hot: bool) -> str:
    """Return what speaks against a filler on an alloy, or "": cracks, 4043-on-5083, hot, magnesium.

    Parameters
    ----------
    base : str
        Group of alloys, one of facts/aluminum_fillers.py, or "" where it is not known.
    filler : str
        Filler alloy, for instance 4043, or "".
    hot : bool
        Whether it works above 65 degC (150 degF) for long.

    Returns
    -------
    str
        The gravest word; only magnesium is a doubt, the others rule it out.

    Raises
    ------
    Nothing: what is not in the tables has nothing against it.

    Notes
    -----
    Silicon in the filler and magnesium in the alloy make a brittle weld.

    Source
    ------
    Mathers, The welding of aluminium and its alloys, p. 49 (published): no silicon filler above 2 % magnesium. Above 3 %
    magnesium not for hot service: from memory.

    Examples
    --------
    >>> fault("5083", "4043", False)
    '4043-on-5083'
    """
    if base in facts.CRACKING:
        return "cracks"
    magnesium = dict(facts.BASES).get(base, 0.0)
    if filler in facts.SILICON_FILLERS and magnesium > facts.MUCH_MAGNESIUM:
        return "4043-on-5083"
    if hot and max(magnesium, dict(facts.FILLERS).get(filler, 0.0)) > facts.MUCH_MAGNESIUM:
        return "hot"
    return "magnesium" if filler in facts.SILICON_FILLERS and magnesium > facts.SOME_MAGNESIUM else ""
