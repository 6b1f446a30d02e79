"""Pairs of feed and current read off one machine, and the melting law fitted to them.

Each pair counts by its percentage error, since tape, stop-watch and meter err by a share of what they read.
"""

from calculators import melting_fit, numerals
from calculators.facts import trim


class Pair:
    """A reading: its place among the rows, current [A], and both terms of the law over the feed read [-]."""

    def __init__(self, place: int, feed: float, current: float, arc: float, resistance: float) -> None:
        self.place = place
        self.current = current
        self.arc_share = arc / feed
        self.resistance_share = resistance / feed

    def off(self, terms: tuple[float, float]) -> float:
        """Return how far the pair lies above (+) or below the law with these terms, as a share of it."""
        return numerals.settle(1.0 / (terms[0] * self.arc_share + terms[1] * self.resistance_share), 8) - 1.0


def _factor(pairs: list[Pair]) -> float:
    """Return the one factor on both terms that brings the law nearest to the pairs."""
    return melting_fit.one_factor([each.arc_share + each.resistance_share for each in pairs], [1.0 for _ in pairs])


def _fitted(pairs: list[Pair]) -> tuple[tuple[float, float], int]:
    """Return the factors of the arc term and the resistance term, and how many of the two were fitted.

    Two terms need three pairs over at least 30 % of current, a wire that heats in the stick-out, and must come out
    between a half and the double of the law's. Where one factor was fitted, both are the same.
    """
    ones = [1.0 for _ in pairs]
    one = _factor(pairs)
    currents = [each.current for each in pairs]
    span = numerals.settle(max(currents) / min(currents), 6)
    if len(pairs) < trim.FEWEST_PAIRS or span < trim.LEAST_SPAN or pairs[0].resistance_share == 0.0:
        return (one, one), 1
    try:
        two = melting_fit.two_factors(
            [each.arc_share for each in pairs], [each.resistance_share for each in pairs], ones
        )
    except ZeroDivisionError:
        return (one, one), 1
    if all(trim.LOWEST_TERM <= numerals.settle(term, 6) <= trim.HIGHEST_TERM for term in two):
        return two, 2
    return (one, one), 1


def _scatter(pairs: list[Pair], terms: tuple[float, float], count: int) -> float:
    """Return how far the pairs lie off the law by and large, `count` of its terms being fitted to them."""
    squares = sum([each.off(terms) * each.off(terms) for each in pairs])
    return (squares / max(len(pairs) - count, 1)) ** 0.5


class MeltingTrim:
    """The law fitted to pairs: its terms, how many were fitted, one factor for all, the band, the odd pair."""

    def __init__(self, pairs: list[Pair]) -> None:
        self.pairs = pairs
        terms, self.fitted_terms = _fitted(pairs)
        # Three figures are more than six seconds and a meter are good for, and short enough for an address.
        self.terms = (numerals.settle(terms[0], 3), numerals.settle(terms[1], 3))
        self.factor = _factor(pairs)
        self.offs = [each.off(self.terms) for each in pairs]
        self.farthest = max([abs(off) for off in self.offs])
        self.scatter = _scatter(pairs, self.terms, self.fitted_terms)
        self.band = trim.BAND_OF_FEW
        if len(pairs) >= trim.FEWEST_PAIRS:
            self.band = min(max(numerals.settle(2.0 * self.scatter, 2), trim.LEAST_BAND), trim.WIDEST_BAND)

    def worst(self) -> tuple[Pair, float, float]:
        """Return the pair without which the others agree best, how far off their law it lies, and their scatter."""
        if len(self.pairs) < trim.FEWEST_PAIRS:
            place = len(self.pairs) - 1  # of two, neither is the wrong one
            return self.pairs[place], self.offs[place], self.scatter
        ranked = []
        for place, pair in enumerate(self.pairs):
            others = self.pairs[:place] + self.pairs[place + 1 :]
            terms, count = _fitted(others)
            ranked.append((numerals.settle(_scatter(others, terms, count), 6), place, pair.off(terms)))
        scatter, place, off = min(ranked)
        return self.pairs[place], off, scatter

    def odd_one(self) -> tuple[Pair, float] | None:
        """Return the pair that is out of line with the others, and how far, if one is and they are not."""
        pair, off, scatter = self.worst()
        few = len(self.pairs) < trim.FEWEST_PAIRS or numerals.settle(self.farthest, 6) <= trim.ODD
        if few or self.scatter < trim.TIMES_TIGHTER * max(scatter, trim.LEAST_SCATTER):
            return None
        return pair, off
