"""What is known of the part in hand: the answers given, its density, the ranking, and which test comes next."""

from calculators import metal_evidence, numerals
from calculators.contract import Given, Refusal, say
from calculators.facts import densities
from calculators.facts import metals as facts

ASKED = ("magnet", "color", "corrosion", "surface", "sound", "file", "spark", "chip")
STOPS = tuple([part for part, _ in facts.DO_NOT_WELD])
FEW = 3  # tests: with fewer, whatever leads is a guess

_LIGHTEST, _HEAVIEST = 1600.0, 12000.0  # kg/m3: beyond these it is no solid metal of the list
_MISFIT = -3  # an answer this much against the leading family contradicts it, and so does less than nothing in all


class Case:
    """The part, the answers given, the density if it was weighed, and the ranking they make."""

    def __init__(self, given: Given) -> None:
        self.given = given
        self.part = given.word("part")
        self.stopped = self.part in STOPS
        self.found = tuple([(test, given.word(test)) for test in ASKED if given.word(test)])
        self.density = _density(given)
        self.weighed = self.density is not None and _LIGHTEST <= numerals.settle(self.density) <= _HEAVIEST
        self.counted = self.density if self.weighed else None
        self.tests = len(self.found) + (1 if self.weighed else 0)
        self.answers = self.found + (("part", self.part),)
        self.ranked = metal_evidence.ranking(self.answers, self.counted)
        self.top = self.ranked[0][1]
        self.second = self.ranked[1][1]
        self.margin = self.ranked[0][0] - self.ranked[1][0]
        self.state = self._state()

    def _state(self) -> str:
        if self.tests == 0:
            return "untested"
        if self.ranked[0][0] < 0 or min([points for _, points in self.points_of(self.top)]) <= _MISFIT:
            return "contradiction"
        if self.tests < FEW or self.margin < 2:
            return "open"
        return "likely" if self.margin >= 4 else "leads"

    def points_of(self, family: str) -> list[tuple[str, int]]:
        """Return (test, points) of everything that was found, for one family."""
        points = [(test, metal_evidence.answer_points(test, answer, family)) for test, answer in self.answers]
        if self.counted is not None:
            points.append(("density", metal_evidence.density_points(family, self.counted)))
        return points

    def behind(self, most: int) -> list[str]:
        """Return the families at most so many points behind the first, the first among them."""
        return [family for points, family in self.ranked if self.ranked[0][0] - points <= most]

    def next_test(self) -> str:
        """Return the test to make next: of those not made, the one that can part the first two by most.

        Where there is none: `contradiction`, `leave-it` or `nothing-left`.
        """
        if not self.given.word("magnet"):
            return "magnet"
        if self.state == "contradiction":
            return "leave-it" if self.stopped else "contradiction"
        best, most = "", 1
        for test in facts.TESTS:
            parts = self.parts(test)
            if self.may_be_made(test) and parts > most:
                best, most = test, parts
        if best:
            return best
        return "leave-it" if self.stopped else "nothing-left"

    def may_be_made(self, test: str) -> bool:
        """Return whether a test is still open and does no harm to this part or to who makes it."""
        if self.given.word(test) or (test == "density" and self.density is not None):
            return False
        if self.stopped and (test in facts.MARKING or (test == "density" and self.part in facts.CLOSED)):
            return False
        if test == "spark" and self.top not in facts.SPARKING:
            return False  # a soft metal clogs the wheel until it bursts
        dusty = [family for family in self.behind(4) if family in facts.BAD_DUST]
        return not (test in ("spark", "file") and dusty)

    def parts(self, test: str) -> int:
        """Return by how many points the answers to a test can tell the first two families apart."""
        if test == "density":
            low, high = metal_evidence.DENSITY_RANGES[self.second]
            return abs(metal_evidence.density_points(self.top, (low + high) / 2.0) - facts.DENSITY_POINTS[0][1])
        apart = [0]
        for named, answer, _, _, _ in facts.EVIDENCE:
            if named == test:
                points = [metal_evidence.answer_points(test, answer, family) for family in (self.top, self.second)]
                if max(points) > 0:  # an answer that neither would give parts nothing
                    apart.append(abs(points[0] - points[1]))
        return max(apart)


def _density(given: Given) -> float | None:
    how = given.word("weighed")
    if not how:
        return None
    mass = given.number("mass")
    if how == "block":
        length, width, thickness = [given.number(name) for name in ("length", "width", "thickness")]
        return metal_evidence.block_density(mass, length, width, thickness)
    if how == "round-bar":
        return metal_evidence.round_bar_density(mass, given.number("length"), given.number("diameter"))
    in_water = given.number("mass_in_water")
    # Compared settled: a part that weighs the same typed in two units floats in either.
    if numerals.settle(in_water) >= numerals.settle(mass * 0.999):
        raise Refusal("mass_in_water", say("metal-id.refusal.water", label=say("metal-id.field.mass_in_water")))
    return metal_evidence.density_by_weighing(mass, in_water, densities.WATER)
