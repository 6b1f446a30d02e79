"""A finished weld measured: each thing that was looked at, with what was found, its limit and how it stands."""

from calculators import ranges, visual_limits
from calculators.contract import Given, Measured, Message, say
from calculators.facts import visual as facts

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable

INSIDE, OUTSIDE, UNCLEAR = "inside", "outside", "unclear"


class Look:
    """One line of the check: what, found and limit as shown, and the state."""

    def __init__(self, name: str, found: object, limit: object, state: str) -> None:
        self.name = name
        self.found = found
        self.limit = limit
        self.state = state

    def row(self) -> tuple[object, ...]:
        """Return the line as cells of a table."""
        state, look = say("answer.verdict." + self.state), say("visual-check.look." + self.name)
        return (say("visual-check.stands", state=state, look=look), self.found, self.limit)


class Case:
    """Everything looked at on this weld, in the order of the form."""

    def __init__(self, given: Given) -> None:
        self.given = given
        seen = given.word("seen")
        none = say("visual-check.none")
        found = none if seen == "none" else say("visual-check.option.seen." + seen)
        self.looks = [Look("seen", found, none, INSIDE if seen == "none" else OUTSIDE)]
        self._undercut()
        self._pores()
        if given.word("joint") == "fillet":
            self._leg()
            self._limit("convexity", "face_width", visual_limits.most_bulge)
        else:
            self._limit("reinforcement", "thickness", visual_limits.most_cap)

    def state(self) -> str:
        """Return how the whole weld stands: outside if anything is, inside only if everything was measured."""
        states = [look.state for look in self.looks]
        if OUTSIDE in states:
            return OUTSIDE
        return UNCLEAR if UNCLEAR in states else INSIDE

    def named(self, state: str) -> list[Message]:
        """Return what stands so."""
        return [say("visual-check.look." + look.name) for look in self.looks if look.state == state]

    def _missing(self, name: str) -> None:
        self.looks.append(Look(name, say("visual-check.not-measured"), "", UNCLEAR))

    def _undercut(self) -> None:
        given = self.given
        if not given.has("undercut_depth"):
            return self._missing("undercut_depth")
        depth, thickness = given.number("undercut_depth"), given.number("thickness")
        length = given.number("undercut_length") if given.has("undercut_length") else facts.DEEP_LENGTH
        most = visual_limits.most_undercut(thickness, length)
        state = OUTSIDE if ranges.above(depth, most) else INSIDE
        deep = ranges.above(depth, facts.SHALLOW) and ranges.above(facts.THICK, thickness)
        if state == INSIDE and deep and not given.has("undercut_length"):
            state = UNCLEAR
        limit = self._limit_of(most if deep else min(most, self._everywhere()), "undercut_depth")
        self.looks.append(Look("undercut_depth", _shown(given, "undercut_depth"), limit, state))
        return None

    def _limit_of(self, most: float, name: str) -> Measured:
        """Return a limit in the unit in which what it limits was typed."""
        return Measured(most, "joint_size", 3, self.given.units.get(name))

    def _everywhere(self) -> float:
        return visual_limits.most_undercut(self.given.number("thickness"), 0.3048)

    def _pores(self) -> None:
        given = self.given
        if given.word("joint") == "groove" and given.word("pull") == "across":
            limits = (0.0, 0.0)
        else:
            limits = (facts.PORES_IN_INCH, facts.PORES_IN_FOOT)
        for name, most in zip(("pores_in_inch", "pores_in_foot"), limits):
            if not given.has(name):
                self._missing(name)
                continue
            state = OUTSIDE if ranges.above(given.number(name), most) else INSIDE
            self.looks.append(Look(name, _shown(given, name), self._limit_of(most, name), state))

    def _leg(self) -> None:
        given = self.given
        if not (given.has("wanted_leg") and given.has("found_leg")):
            return self._missing("found_leg")
        wanted, found = given.number("wanted_leg"), given.number("found_leg")
        least = wanted - visual_limits.most_missing_leg(wanted)
        state = INSIDE
        if ranges.above(least, found):
            state = OUTSIDE
        elif ranges.above(wanted, found):
            if not given.has("short_share"):
                state = UNCLEAR
            else:
                state = OUTSIDE if ranges.above(given.number("short_share"), facts.SHORT_SHARE) else INSIDE
        self.looks.append(Look("found_leg", _shown(given, "found_leg"), self._limit_of(least, "found_leg"), state))
        return None

    def _limit(self, name: str, by: str, most_of: "Callable[[float], float]") -> None:
        given = self.given
        if not (given.has(name) and given.has(by)):
            return self._missing(name)
        most = most_of(given.number(by))
        state = OUTSIDE if ranges.above(given.number(name), most) else INSIDE
        self.looks.append(Look(name, _shown(given, name), self._limit_of(most, name), state))
        return None


def _shown(given: Given, name: str) -> Measured:
    return Measured(given.number(name), "joint_size", 3, given.units.get(name))
