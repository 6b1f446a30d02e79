"""The wire left on one spool, however it was found: on a scale, or by how deep it lies below the rim."""

from calculators import numerals, ranges, spool, wire_mass
from calculators.contract import Measured, Refusal, say
from calculators.facts import wires

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

# What each way of finding it needs, besides the wire.
NEEDED = (
    ("label", ("wire_mass",)),
    ("scale", ("spool_mass", "empty_spool_mass")),
    ("depth-share", ("spool_diameter", "core_diameter", "spool_depth", "new_spool_depth", "new_wire_mass")),
    ("depth-size", ("spool_diameter", "core_diameter", "spool_depth", "spool_width")),
)
_LEAST_WINDING = 0.0005  # less wire than this on the barrel cannot be measured, [m]


class WireLeft:
    """`mass` of wire left with its band `least` to `most`, [kg]; for a depth also the diameters, [m], and the share."""

    def __init__(self, values: "dict[str, Any]") -> None:
        self.values = values
        self.share = 0.0
        self.full = 0.0
        by = values["remaining_by"]
        if by == "label":
            self.least = self.mass = self.most = values["wire_mass"]
        elif by == "scale":
            self.least = self.mass = self.most = self._weighed()
        else:
            self.rim, self.core = values["spool_diameter"], values["core_diameter"]
            self._require_wire()
            if by == "depth-share":
                self._compare_with_new()
            else:
                self._measure()

    @staticmethod
    def can_be_found(values: "dict[str, Any]") -> bool:
        """Return whether everything is there that this way of finding the wire needs."""
        return all(values.get(name) is not None for name in dict(NEEDED)[values["remaining_by"]])

    def _weighed(self) -> float:
        gross, empty = self.values["spool_mass"], self.values["empty_spool_mass"]
        if numerals.settle(gross) <= numerals.settle(empty):
            raise Refusal("spool_mass", say("spool-life.refusal.light", empty_spool_mass=Measured(empty, "wire_mass")))
        return gross - empty

    def _require_wire(self) -> None:
        """Refuse a barrel as wide as the rim, and wire that lies level with the barrel or inside it."""
        ranges.require("core_diameter", self.core, 0.01, self.rim - 4.0 * _LEAST_WINDING, "m")
        self.deepest = (self.rim - self.core) / 2.0
        self.depth = self.values["spool_depth"]
        if numerals.settle(self.depth) > numerals.settle(self.deepest - _LEAST_WINDING):
            deepest = Measured(self.deepest, "spool_depth")
            raise Refusal("spool_depth", say("spool-life.refusal.empty", deepest=deepest))
        self.wound = spool.wound_diameter(self.rim, self.depth)

    def _wound_at(self, error: float, shallowest: float) -> float:
        """Return the outer diameter of the wire if it lies deeper by `error`, no more than full or empty, [m]."""
        depth = min(max(self.depth + error, shallowest), self.deepest)
        return spool.wound_diameter(self.rim, depth)

    def _compare_with_new(self) -> None:
        new = self.values["new_spool_depth"]
        ranges.require("new_spool_depth", new, 0.0, self.depth, "m")
        self.full = spool.wound_diameter(self.rim, new)
        shares = []
        for error in (wires.DEPTH_BAND, 0.0, -wires.DEPTH_BAND):
            shares.append(spool.remaining_fraction(self._wound_at(error, new), self.full, self.core))
        self.share = shares[1]
        self.least, self.mass, self.most = [share * self.values["new_wire_mass"] for share in shares]

    def _measure(self) -> None:
        density, _ = wire_mass.density(self.values["wire_material"], self.values.get("filler_alloy") or "")
        self.density = density
        self.width = self.values["spool_width"]
        low, self.packing, high = spool.packing(self.values["winding"])
        masses = []
        for error, packing in ((wires.DEPTH_BAND, low), (0.0, self.packing), (-wires.DEPTH_BAND, high)):
            masses.append(spool.wound_mass(self._wound_at(error, 0.0), self.core, self.width, density, packing))
        self.least, self.mass, self.most = masses
