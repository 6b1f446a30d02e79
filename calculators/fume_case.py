"""Fume at one place: what smokes off, what stands in the room, and what part of each limit that is."""

from calculators import numerals, ranges, wire_mass
from calculators.contract import Given, Measured, Refusal, say
from calculators.facts import fume as facts
from calculators.room_air import concentration, mean_concentration

METALS = ("manganese", "chromium_six", "nickel", "zinc_oxide")
SOLID = ("solid-steel", "solid-stainless", "solid-aluminum")
_METAL_OF = {"solid-stainless": "stainless", "solid-aluminum": "aluminum"}


class FumeCase:
    """The work and the room; coherent SI. `rates` are of each substance into the air, [kg/s]."""

    def __init__(self, given: Given) -> None:
        self.given = given
        self.consumable = given.word("consumable")
        self.time = given.number("work_time")
        self.burned = self._burned()
        if ranges.above(self.burned / self.time, facts.MOST_BURNED):
            most = Measured(facts.MOST_BURNED * self.time, "wire_mass")
            field = "wire_mass" if given.word("told_by") == "mass" else "arc_time"
            raise Refusal(field, say("fume.refusal.most", most=most))
        self.air = given.number("air_flow") if given.has("air_flow") else 0.0
        self.height = given.number("room_height")
        self.volume = self._floor() * self.height
        self.rates = self._rates()

    def _burned(self) -> float:
        given = self.given
        if given.word("told_by") == "mass":
            return given.number("wire_mass")
        if self.consumable not in SOLID:
            raise Refusal("told_by", say("fume.refusal.rods"))
        if ranges.above(given.number("arc_time"), self.time):
            raise Refusal("arc_time", say("fume.refusal.arc-time"))
        density = wire_mass.density(_METAL_OF.get(self.consumable, "mild-steel"))[0]
        each = wire_mass.mass_per_length(given.number("wire_diameter"), density)
        return each * given.number("wire_feed_speed") * given.number("arc_time")

    def _floor(self) -> float:
        given = self.given
        if given.word("room_by") == "paces":
            return given.number("paces_long") * given.number("paces_wide") * facts.PACE * facts.PACE
        return given.number("room_length") * given.number("room_width")

    def _rates(self) -> dict[str, float]:
        rates = {}
        each = self.burned / self.time
        for name, fume, manganese, chromium_six, nickel in facts.PRINTED:
            if name == self.consumable:
                rates["fume"] = fume * facts.GRAMS * each
                for metal, printed in (
                    ("manganese", manganese),
                    ("chromium_six", chromium_six),
                    ("nickel", nickel),
                ):
                    if printed is not None:
                        rates[metal] = printed * facts.TENTHS * each
        zinc = dict(facts.ZINC_A_FACE).get(self.given.word("coating"))
        if zinc is not None:
            burnt = 2.0 * facts.BURNT_WIDTH * self.given.number("weld_length") * zinc
            rates["zinc_oxide"] = burnt * facts.ZINC_OXIDE / self.time
            rates["fume"] += rates["zinc_oxide"]
        return rates

    def at(self, substance: str, time: float) -> float:
        """Return the mean of the room at a time, [kg/m3]."""
        return concentration(self.rates[substance], self.volume, self.air, time)

    def share_of(self, substance: str, limit: float, whole_day: bool) -> float:
        """Return what part of a limit the mean of the room comes to: over 8 h, or at the end of the work."""
        if not whole_day:
            return self.at(substance, self.time) / limit
        mean = mean_concentration(self.rates[substance], self.volume, self.air, self.time)
        return mean * self.time / facts.DAY / limit

    def shares(self) -> list[tuple[str, float, bool, float]]:
        """Return (limit, [kg/m3], whether it is law, part of it in the room) for all that is in this fume."""
        found = []
        for name, substance, limit, whole_day, law in facts.LIMITS:
            if substance in self.rates:
                found.append((name, limit, law, self.share_of(substance, limit, whole_day)))
        return found

    def worst(self, law: bool) -> str:
        """Return the limit that even twice the room's mean passes by most, of law or of advice; "" if none."""
        ranked = []
        for place, (_, _, is_law, share) in enumerate(self.shares()):
            share = numerals.settle(share * facts.FACE_LOW)
            if is_law == law and share > 1.0:
                ranked.append((-share, place))
        return self.shares()[sorted(ranked)[0][1]][0] if ranked else ""
