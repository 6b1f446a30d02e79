"""The melting law of one wire at work: its coefficients, its band and its ranges, asked for any of the three.

The formulas are in melting_rate.py and the numbers in melting_tables.py; here they meet what was asked.
"""

from calculators import melting_rate, melting_tables, ranges
from calculators.facts import wires

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

_SHORTEST, _LONGEST = 0.003, 0.030  # electrode extension the law is asked about, [m]
_FARTHEST = 0.035  # contact tip to work, [m]


class MeltingLaw:
    """The law for `wire_material`, `filler_alloy`, `wire_diameter` and `transfer_mode`, all in coherent SI.

    `arc_term`, `resistance_term` and `trim_band`, where given, are what pairs read off the welder's own machine made
    of the two terms and of the band; read with another wire metal (`trim_material`) they are left out. The argument `trim` is what a real arc melts over what the law says:
    1 - half_band to 1 + half_band.
    """

    def __init__(self, values: "dict[str, Any]") -> None:
        self.material: str = values["wire_material"]
        self.alloy: str = values.get("filler_alloy") or ""
        self.diameter: float = values["wire_diameter"]
        self.transfer: str = values.get("transfer_mode") or "not-known"
        self.arc, self.resistance = melting_tables.coefficients(self.material, self.diameter, self.alloy)
        # Where half the heat is made in the stick-out, whatever the trim: [A m]
        self._half_heat = self.arc / self.resistance if self.resistance > 0.0 else None
        self.half_band = melting_tables.half_band(self.material, self.alloy)
        if (values.get("trim_material") or self.material) == self.material:
            self.arc *= values.get("arc_term") or 1.0
            self.resistance *= values.get("resistance_term") or 1.0
            self.half_band = values.get("trim_band") or self.half_band
        self.arc_length = dict(wires.ARC_LENGTHS)[self.transfer]

    def usual_distances(self) -> tuple[float, float, float]:
        """Return the shortest, the usual and the longest contact tip to work of this transfer, [m]."""
        for transfer, shortest, usual, longest in wires.USUAL_DISTANCES:
            if transfer == self.transfer:
                return shortest, usual, longest
        raise KeyError(self.transfer)

    def extension(self, distance: float) -> float:
        """Return the electrode extension at a contact tip to work, which has to leave a length the law knows, [m]."""
        high = min(_LONGEST + self.arc_length, _FARTHEST)
        ranges.require("contact_tip_to_work", distance, _SHORTEST + self.arc_length, high, "m")
        return melting_rate.electrode_extension(distance, self.arc_length)

    def current_limits(self, extension: float) -> tuple[float, float]:
        """Return the lowest and the highest current that may be asked about, [A]."""
        return melting_tables.current_limits(self.material, self.diameter, extension)

    def feed(self, current: float, extension: float, trim: float = 1.0) -> float:
        """Return the wire feed speed at a current, [m/s]."""
        return trim * melting_rate.wire_feed_speed(current, extension, self.arc, self.resistance)

    def current(self, feed: float, extension: float, trim: float = 1.0) -> float:
        """Return the current at a wire feed speed, [A]."""
        return melting_rate.current(feed, extension, trim * self.arc, trim * self.resistance)

    def distance(self, feed: float, current: float, trim: float = 1.0) -> float:
        """Return the contact tip to work at a feed and a current, no nearer or farther than the law is asked, [m]."""
        heat = trim * self.resistance * current * current
        extension = (feed - trim * self.arc * current) / heat
        return melting_rate.contact_tip_to_work(min(max(extension, _SHORTEST), _LONGEST), self.arc_length)

    def checked_feed(self, current: float, distance: float) -> float:
        """Return the feed at a current, after refusing a current beyond the wire's range, [m/s]."""
        extension = self.extension(distance)
        lowest, highest = self.current_limits(extension)
        ranges.require("current", current, lowest, highest, "A")
        return self.feed(current, extension)

    def checked_current(self, feed: float, distance: float) -> float:
        """Return the current at a feed, after refusing a feed that needs one beyond the wire's range, [A]."""
        extension = self.extension(distance)
        lowest, highest = self.current_limits(extension)
        slowest, fastest = self.feed(lowest, extension), self.feed(highest, extension)
        ranges.require("wire_feed_speed", feed, slowest, fastest, "m/s")
        return self.current(feed, extension)

    def checked_distance(self, feed: float, current: float) -> float:
        """Return the contact tip to work, after refusing a feed that no distance gives at this current, [m]."""
        lowest, highest = self.current_limits(_SHORTEST)
        ranges.require("current", current, lowest, highest, "A")
        longest = min(_LONGEST, self._half_heat / current) if self._half_heat is not None else _LONGEST
        ranges.require("wire_feed_speed", feed, self.feed(current, _SHORTEST), self.feed(current, longest), "m/s")
        return self.distance(feed, current)

    @staticmethod
    def knows(values: "dict[str, Any]") -> bool:
        """Return whether the law knows this wire, and a current for the feed if one is given."""
        try:
            law = MeltingLaw(values)
            usual = law.usual_distances()[1]
            law.current_limits(law.extension(usual))
            if values.get("wire_feed_speed") is not None:
                law.checked_current(values["wire_feed_speed"], usual)
        except ranges.OutOfRange:
            return False
        return True


class Point:
    """Where on the law an answer stands, and between which extensions it may really lie."""

    def __init__(self, law: MeltingLaw, distance: float, current: float, typed_feed: float, guessed: bool) -> None:
        self.law = law
        self.distance = distance
        self.current = current
        self.typed_feed = typed_feed
        self.feed = law.checked_feed(current, distance)
        self.extension = self.shortest = self.longest = law.extension(distance)
        self.guessed = guessed and law.resistance > 0.0
        if self.guessed:
            near, _, far = law.usual_distances()
            self.shortest, self.longest = law.extension(near), law.extension(far)
        self.arc_term = law.arc * current
        self.resistance_term = law.resistance * self.extension * current * current

    def feeds(self, current: float) -> tuple[float, float]:
        """Return the ends of the band of feed at a current, [m/s]."""
        half = self.law.half_band
        return self.law.feed(current, self.shortest, 1.0 - half), self.law.feed(current, self.longest, 1.0 + half)

    def currents(self) -> tuple[float, float]:
        """Return the ends of the band of current at the feed that was typed, [A]."""
        law, half = self.law, self.law.half_band
        least = law.current(self.typed_feed, self.longest, 1.0 + half)
        return least, law.current(self.typed_feed, self.shortest, 1.0 - half)

    def distances(self) -> tuple[float, float]:
        """Return the ends of the band of contact tip to work at the feed and the current that were typed, [m]."""
        law, half = self.law, self.law.half_band
        nearest = law.distance(self.typed_feed, self.current, 1.0 + half)
        return nearest, law.distance(self.typed_feed, self.current, 1.0 - half)

    def curve(self, steps: int) -> tuple[tuple[float, float, float, float], ...]:
        """Return (current, lowest, middle, highest feed) over the range of this wire, [A] and [m/s]."""
        lowest, highest = self.law.current_limits(self.extension)
        rows = []
        for step in range(steps + 1):
            current = lowest + (highest - lowest) * step / steps
            low, high = self.feeds(current)
            rows.append((current, low, self.law.feed(current, self.extension), high))
        return tuple(rows)
