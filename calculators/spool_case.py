"""The wire that a question about a spool is about: how much, how sure, and the working, line by line."""

from calculators import wire_mass
from calculators.contract import Given, Measured, Message, Plain, say
from calculators.facts import wires
from calculators.spool import packing
from calculators.wire_left import WireLeft


class Spool:
    """What is known of the wire, and how sure: `low` and `high` are shares of whatever goes with its length."""

    def __init__(self, given: Given) -> None:
        self.given = given
        self.density, _ = wire_mass.density(given.word("wire_material"), given.word("filler_alloy"))
        self.by = given.word("remaining_by")
        mass_was_known = self.by != "label" or (given.has("wire_mass") and "wire_mass" not in given.made)
        self.left = WireLeft(given.values, given.made) if mass_was_known else None
        self.count = given.number("spool_count") if given.has("spool_count") else 1.0
        self.mass = given.number("wire_mass")
        self.length = given.number("wire_length")
        self.usable = wire_mass.usable(self.length, given.number("waste"))
        self.to_bring = self.left is None and "wire_length" in given.made
        self.low = self.high = 1.0
        if self.left is not None and "wire_length" in given.made:
            self.low = self.left.least / self.left.mass * (1.0 - wires.LENGTH_BAND)
            self.high = self.left.most / self.left.mass * (1.0 + wires.LENGTH_BAND)
        self.lasts = 0.0
        if given.has("arc_time") and given.has("wire_feed_speed"):
            self.lasts = wire_mass.arc_time(self.usable, given.number("wire_feed_speed"))

    def shown_mass(self, mass: float, figures: int | None = None) -> Measured:
        """Return a mass to be shown in the unit the reader uses for wire."""
        units = self.given.units
        unit = units.get("wire_mass", units.get("spool_mass", units.get("new_wire_mass")))
        return Measured(mass, "wire_mass", figures, unit)

    def working(self) -> tuple[Message, ...]:
        """Return the working, line by line."""
        per_length = wire_mass.mass_per_length(self.given.number("wire_diameter"), self.density)
        length_unit = self.given.units.get("wire_length")
        shown: dict[str, object] = {
            "density": Plain(self.density, 4),
            "wire_diameter": Measured(self.given.number("wire_diameter"), "wire_diameter", 4, "mm"),
            "per_length": Plain(per_length * 1000.0, 4),
            "wire_mass": self.shown_mass(self.mass * self.count, 4),
            "length": Measured(self.length, "wire_length", 4, length_unit),
            "waste": Measured(self.given.number("waste"), "percentage"),
            "usable": Measured(self.usable, "wire_length", 4, length_unit),
        }
        lines = ["length" if "wire_length" in self.given.made and not self.to_bring else "mass"]
        if self.lasts > 0.0:
            shown["wire_feed_speed"] = self.given.measured("wire_feed_speed")
            shown["arc_time"] = Measured(self.lasts, "arc_time", 4, self.given.units.get("arc_time"))
            if self.to_bring:
                lines = ["length-fed", "needed"] + lines
            else:
                lines += ["usable", "feed" if "wire_feed_speed" in self.given.made else "time"]
        told = [say("spool-life.working." + line, **shown) for line in ["per-length"] + lines]
        if self.count > 1.0 and not self.to_bring:
            together = self.shown_mass(self.mass * self.count, 4)
            told.insert(0, say("spool-life.working.count", count=int(self.count), all=together))
        return self._working_of_mass() + tuple(told)

    def _working_of_mass(self) -> tuple[Message, ...]:
        """Return how the mass on the spool was found, if it was not typed."""
        left, unit = self.left, self.given.units.get("spool_diameter")
        if left is None or self.by == "label":
            return ()
        shown: dict[str, object] = {"wire_mass": self.shown_mass(left.mass, 4)}
        if self.by == "scale":
            shown["spool_mass"] = self.given.measured("spool_mass", "wire_mass")
            shown["empty_spool_mass"] = self.given.measured("empty_spool_mass", "wire_mass")
            return (say("spool-life.working.scale", **shown),)
        if self.by == "package":
            shown["low"], shown["high"] = self.shown_mass(left.least), self.shown_mass(left.most)
            return (say("spool-life.working.package", **shown),)
        shown["spool_depth"] = self.given.measured("spool_depth")
        for name, diameter in (("rim", left.rim), ("wound", left.wound), ("core", left.core)):
            shown[name] = Measured(diameter, "spool_diameter", 4, unit)
        if self.by == "depth-share":
            shown["full"] = Measured(left.full, "spool_diameter", 4, unit)
            shown["share"] = Measured(left.share, "percentage")
            shown["new_wire_mass"] = self.given.measured("new_wire_mass", "wire_mass")
            lines = ["wound", "share", "of-new"]
            if "core_diameter" in self.given.made:
                size = WireLeft.size_of(self.given.word("spool"))
                shown["width"] = Measured(size[1] if size else 0.0, "spool_width", 4, unit)
                shown["density"], shown["packing"] = Plain(self.density, 4), Plain(packing("not-known")[1], 3)
                lines.insert(0, "core")
        else:
            shown["density"] = Plain(left.density, 4)
            shown["packing"] = Plain(left.packing, 3)
            shown["width"] = Measured(left.width, "spool_width", 4, unit)
            lines = ["wound", "size"]
        return tuple(say("spool-life.working." + line, **shown) for line in lines)
