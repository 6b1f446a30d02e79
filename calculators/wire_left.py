"""The wire left on one spool, however it was found: on a scale, or by how deep it lies below the rim."""

from calculators import numerals, ranges, spool, wire_mass
from calculators.contract import Measured, Refusal, say
from calculators.facts import spools, wires

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

# What each way of finding it needs, besides the wire.
NEEDED = (
    ("label", ("wire_mass",)),
    ("package", ("package",)),
    ("scale", ("spool_mass", "empty_spool_mass")),
    ("depth-share", ("spool_diameter", "core_diameter", "spool_depth", "new_spool_depth", "new_wire_mass")),
    ("depth-size", ("spool_diameter", "core_diameter", "spool_depth", "spool_width")),
)
_LEAST_WINDING = 0.0005  # less wire than this on the barrel cannot be measured, [m]


class WireLeft:
    """`mass` of wire left with its band `least` to `most`, [kg]; for a depth also the diameters, [m], and the share."""

    def __init__(self, values: "dict[str, Any]", made: list[str]) -> None:
        self.values = values
        self.made = made  # what of the values was not typed
        self.share = 0.0
        self.full = 0.0
        by = values["remaining_by"]
        if by == "label":
            self.least = self.mass = self.most = values["wire_mass"]
        elif by == "scale":
            self.least = self.mass = self.most = self._weighed()
        elif by == "package":
            self._take_full_package()
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

    @staticmethod
    def density_of(values: "dict[str, Any]") -> float:
        """Return the density of the wire, [kg/m3]."""
        return wire_mass.density(values["wire_material"], values.get("filler_alloy") or "")[0]

    @staticmethod
    def size_of(name: str) -> tuple[float, float] | None:
        """Return (diameter over the rims, width between them) of a spool of that standard name, [m], or None."""
        for spool_name, diameter, width in spools.SPOOLS:
            if spool_name == name:
                return diameter, width - 2.0 * spools.RIM
        return None

    @staticmethod
    def barrel(values: "dict[str, Any]", packing: float) -> float:
        """Return the barrel of a named spool from its mass and depth when new, at a packing, [m]."""
        full = spool.wound_diameter(values["spool_diameter"], values["new_spool_depth"])
        size = WireLeft.size_of(values["spool"])
        assert size is not None
        try:
            core = spool.core_for(values["new_wire_mass"], full, size[1], WireLeft.density_of(values), packing)
            ranges.require("core", core, 0.01, full - 4.0 * _LEAST_WINDING, "m")
            return core
        except ranges.OutOfRange:
            raise Refusal("new_wire_mass", say("spool-life.refusal.other-mass")) from None

    @staticmethod
    def barrel_can_be_found(values: "dict[str, Any]") -> bool:
        """Return whether the barrel, not measured, follows from what is known of the new spool."""
        if values["remaining_by"] != "depth-share" or WireLeft.size_of(values["spool"]) is None:
            return False
        rim, new = values.get("spool_diameter"), values.get("new_spool_depth")
        if rim is None or new is None or values.get("new_wire_mass") is None:
            return False
        return numerals.settle(new) < numerals.settle(0.4 * rim)

    def _take_full_package(self) -> None:
        table = spools.ALUMINUM_PACKAGES if self.values["wire_material"] == "aluminum" else spools.PACKAGES
        for name, (least, most) in table:
            if name == self.values["package"]:
                self.least, self.mass, self.most = least, 0.5 * (least + most), most
                return
        raise Refusal("package", say("spool-life.refusal.package"))

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
        cores = [self.core, self.core, self.core]
        if "core_diameter" in self.made:
            # A wider barrel leaves less of what is below the wire.
            low, _, high = spool.packing("not-known")
            cores = [self.barrel(self.values, high), self.core, self.barrel(self.values, low)]
        for error, core in zip((wires.DEPTH_BAND, 0.0, -wires.DEPTH_BAND), cores):
            wound = max(self._wound_at(error, new), core)
            shares.append(spool.remaining_fraction(wound, self.full, core))
        self.share = shares[1]
        self.least, self.mass, self.most = [share * self.values["new_wire_mass"] for share in shares]

    def _measure(self) -> None:
        self.density = density = self.density_of(self.values)
        self.width = self.values["spool_width"]
        low, self.packing, high = spool.packing(self.values["winding"])
        masses = []
        off = spools.WIDTH_BAND if "spool_width" in self.made else 0.0
        for error, packing in ((wires.DEPTH_BAND, low), (0.0, self.packing), (-wires.DEPTH_BAND, high)):
            width = self.width - off if error > 0.0 else self.width + off if error < 0.0 else self.width
            masses.append(spool.wound_mass(self._wound_at(error, 0.0), self.core, width, density, packing))
        self.least, self.mass, self.most = masses

    def packing_found(self) -> float | None:
        """Return how tightly the new spool was wound, where its width is known from its name; None where not."""
        size = self.size_of(self.values.get("spool") or "")
        if self.full == 0.0 or size is None or "core_diameter" in self.made:
            return None
        return spool.packing_of(
            self.values["new_wire_mass"], self.full, self.core, size[1], self.density_of(self.values)
        )
