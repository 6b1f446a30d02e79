"""The cracked or worn part in hand: whether it is to be welded at all, and the numbers of the repair.

Groove, metal and wire come from the joint modules and preheat from the preheat modules, so that no number here can
differ from theirs.
"""

import math

from calculators import crack_excavation, deposition, numerals, units, wire_mass
from calculators.contract import Given, Measured, Refusal, say
from calculators.facts import deposition as deposition_facts
from calculators.facts import repair as facts
from calculators.facts import wires
from calculators.joint_job import JointJob
from calculators.joint_section import Section
from calculators.preheat_bounds import AMBIENT, BY_METHOD_B, THICKNESS_COUNTS, Bounds, Rule

STEELS = BY_METHOD_B + ("hardening", "unknown")
ALUMINUM = ("aluminum-heat-treated", "aluminum-magnesium")
# Where heat itself spoils the metal, the highest temperature is said first.
HIGHEST_FIRST = ("quenched-tempered", "wear-plate", "manganese", "stainless") + ALUMINUM
REFUSED = ("pressure", "lifting")  # no word of how to weld it
OTHERS_AGREE = ("people", "road", "heat-treated")  # whoever made it has to agree first
WELDED = ("steady", "vibrating", "impact", "wear", "not-known")

_INCH = units.factor_of("in")
_DEGREE = units.factor_of("deg")
_PROCESS_GAS = {"flux-cored-arc": "flux-cored-gas-shielded"}
_HARD = ("quenched-tempered", "wear-plate", "hardening")
_NO_POWDER = ("manganese", "stainless") + ALUMINUM
_SOAKED = ("quenched-tempered", "wear-plate", "hardening", "structural")


class Repair:
    """What is known and what follows; a number that cannot be worked out is None."""

    def __init__(self, given: Given) -> None:
        self.given = given
        self.family = given.word("family")
        self.service = given.word("service")
        self.damage = given.word("damage")
        self.iron = given.word("iron_kind")
        self.stopped = self.stopped_by(given)
        self.thickness = self._known("thickness")
        self.unit = given.units.get("thickness") or given.units.get("crack_depth") or "mm"
        self.bounds: Bounds | None = None
        self.most: float | None = None
        self.rules: list[Rule] = []
        self.job: JointJob | None = None
        self.section: Section | None = None
        self.length: float | None = None
        self.depth: float | None = None
        self.volume: float | None = None
        self.deposit: float | None = None
        self.wire: float | None = None
        self.facing: float | None = None  # depth of hard-facing on top of what is built up
        if self.stopped:
            return
        self._preheat()
        if self.damage == "worn":
            self._build_up()
        else:
            self._dig_out()

    @staticmethod
    def stopped_by(given: Given) -> str:
        """Return why a part is not welded as things stand, or "" if nothing of that kind is known."""
        service = given.word("service")
        if service in OTHERS_AGREE:
            return service
        if service in WELDED and given.word("family") == "cast-iron":
            if given.word("iron_kind") == "white":
                return "white-iron"
            if service == "impact":
                return "iron-blows"
        return ""

    def _known(self, name: str) -> float | None:
        value = self.given.values.get(name)
        return value if isinstance(value, float) else None

    # ------------------------------------------------------------ preheat

    def _preheat(self) -> None:
        """Ask the preheat rules, as the preheat question would with the same words."""
        asked = Given()
        asked.units = self.given.units
        asked.values["family"] = self.family
        asked.values["process"] = self.process()
        for name in ("grade", "hardening_grade", "magnet", "cet"):
            asked.values[name] = self.given.values.get(name)
        if self.family == "structural" and not self.given.has("grade"):
            asked.values["grade"] = "other"
        undecided = {"hardening": "hardening_grade", "unknown": "magnet"}.get(self.family)
        if self.family == "cast-iron" or (undecided is not None and not self.given.has(undecided)):
            return
        if self.thickness is not None:
            asked.values["thickness"] = self.thickness
        found = Bounds(asked)
        self.most = found.highest
        self.rules = [rule for rule in found.rules if rule.what == "highest"]
        # Without the thickness only what does not hang on it holds: the highest.
        if self.thickness is not None or self.family not in THICKNESS_COUNTS:
            self.bounds = found
            self.rules = found.rules

    def process(self) -> str:
        """Return the process; solid wire where it was not asked."""
        return self.given.word("process") or "gas-metal-arc"

    def lowest(self) -> float | None:
        """Return the lowest preheat, [K]."""
        return None if self.bounds is None else self.bounds.lowest

    def highest(self) -> float | None:
        """Return the highest preheat, [K]."""
        return self.most

    def is_heated(self) -> bool:
        """Return whether the lowest preheat is above a warm shop."""
        lowest = self.lowest()
        return lowest is not None and numerals.settle(lowest) > numerals.settle(AMBIENT)

    def hold(self) -> float | None:
        """Return how long to hold the heat after the last pass, [s]; None where nothing is held."""
        if self.thickness is None or self.family not in _SOAKED or not self.is_heated():
            return None
        return crack_excavation.hold_time(self.thickness)

    def wait(self) -> float | None:
        """Return how long to wait before the test, [s]; None where cold is enough."""
        if self.family not in STEELS:
            return None
        hours = facts.WAIT_HARD
        if self.family == "structural" and self.thickness is not None:
            thick = numerals.settle(units.from_coherent(self.thickness, "mm")) > facts.LONGER_ABOVE
            hours = facts.WAIT_HARD if thick else facts.WAIT_GENERAL
        return units.to_coherent(hours, "h")

    # ------------------------------------------------------------ a crack

    def ends_inside(self) -> int:
        """Return how many ends of the crack lie inside the part."""
        return {"none": 0, "one": 1}.get(self.given.word("ends_inside"), 2)

    def beyond(self) -> float:
        """Return how much sound metal goes with it beyond an end, [m]."""
        return (facts.BEYOND_END_IRON if self.family == "cast-iron" else facts.BEYOND_END) * _INCH

    def is_drilled(self) -> bool:
        """Return whether a hole is drilled at an end: some metals are too hard, or only get harder."""
        return self.ends_inside() > 0 and self.family not in ("manganese", "wear-plate")

    def stop_hole(self) -> float | None:
        """Return the diameter of the hole at an end, [m]; None where nothing is drilled or the thickness not known."""
        if not self.is_drilled():
            return None
        if self.family == "cast-iron":
            return facts.STOP_HOLE_IRON * _INCH
        for plate, hole in facts.STOP_HOLES:
            if self.thickness is not None and numerals.settle(self.thickness / _INCH) <= plate:
                return hole * _INCH
        return None

    def _dig_out(self) -> None:
        crack = self._known("crack_length")
        if crack is not None:
            self.length = crack_excavation.repair_length(crack, self.ends_inside(), self.beyond())
        self._refuse_shape()
        self.depth = self.thickness
        if self.given.word("crack_through") == "no" and self._known("crack_depth") is not None:
            self.depth = self._known("crack_depth")
        if self.depth is None:
            return
        self.section = Section(self.given.word("groove"), self._sizes(self.depth), self.unit)
        values: dict[str, object] = {
            "wire_material": self.wire_material(),
            "wire_and_gas": _PROCESS_GAS.get(self.process(), ""),
            "largest_bead": self.largest_bead(),
        }
        if self.length is not None:
            values["weld_length"] = self.length
        self.job = JointJob(values, self.section)
        if self.length is None:
            return
        self.volume = crack_excavation.metal_volume(self.section.area, self.length)
        if self.is_wire_known():
            self.deposit = self.job.deposit
            self.wire = None if self.process() == "low-hydrogen-stick" else self.job.wire

    def _refuse_shape(self) -> None:
        given = self.given
        deep, thick = self._known("crack_depth"), self.thickness
        if deep is not None and thick is not None and numerals.settle(deep) > numerals.settle(thick):
            limit = Measured(thick, "joint_size", None, self.unit)
            raise Refusal("crack_depth", say("crack-repair.refusal.depth", thickness=limit))
        if given.word("groove") == "double-v":
            if given.word("access") != "both-sides":
                raise Refusal("groove", say("crack-repair.refusal.access"))
            if given.word("crack_through") == "no":
                raise Refusal("groove", say("crack-repair.refusal.part-way"))

    def _sizes(self, depth: float) -> dict[str, float]:
        groove = self.given.word("groove")
        angle, gap = self._known("included_angle"), self._known("root_gap")
        sizes = {
            "thickness": depth,
            "root_gap": facts.ROOT_OPENING * _INCH if gap is None else gap,
            "included_angle": (facts.ANGLE_U if groove == "single-u" else facts.ANGLE_V) * _DEGREE,
        }
        if angle is not None:
            sizes["included_angle"] = angle
        if groove == "single-u":
            sizes["root_radius"] = facts.ROOT_RADIUS * _INCH
            least = sizes["root_radius"] * (1.0 - math.sin(sizes["included_angle"] / 2.0))
            if numerals.settle(depth) < numerals.settle(least):
                shown = Measured(least, "joint_size", None, self.unit)
                raise Refusal("groove", say("crack-repair.refusal.shallow", least=shown))
        return sizes

    def largest_bead(self) -> float:
        """Return the largest bead, by the leg of a fillet of its size, [m]."""
        typed = self._known("largest_bead")
        return facts.LARGEST_BEAD * _INCH if typed is None else typed

    def wire_material(self) -> str:
        """Return what the wire is reckoned as: austenitic wire for manganese steel weighs like stainless."""
        if self.family in ALUMINUM:
            return "aluminum"
        return "stainless" if self.family in ("stainless", "manganese") else "mild-steel"

    def is_wire_known(self) -> bool:
        """Return whether a wire can be reckoned: nickel rod melts otherwise, and an unknown metal has no filler."""
        return self.family != "cast-iron" and (self.family != "unknown" or self.is_magnetic())

    def takes_powder(self) -> bool:
        """Return whether magnetic powder shows a crack in it."""
        if self.family == "unknown":
            return self.is_magnetic()
        return self.family not in _NO_POWDER

    def is_dug_warm(self) -> bool:
        """Return whether the chill of a gouge hardens the groove."""
        return self.is_heated() or self.family in _HARD or self.is_magnetic()

    def is_magnetic(self) -> bool:
        """Return whether a magnet was tried and sticks."""
        return self.given.word("magnet") == "sticks"

    # ------------------------------------------------------------ a worn face

    def _build_up(self) -> None:
        if self.family == "stainless" or self.family in ALUMINUM:
            raise Refusal("damage", say("crack-repair.refusal.worn"))
        given = self.given
        self.depth = given.number("worn_depth")
        self.length = given.number("worn_length")
        area = given.number("worn_width") * self.depth
        self.volume = crack_excavation.metal_volume(area, self.length)
        self.facing = min(self.depth, facts.HARD_FACING_MOST * _INCH)
        if not self.is_wire_known():
            return
        density, _ = wire_mass.density(self.wire_material())
        self.deposit = deposition.deposit_per_length(area, density) * self.length * deposition_facts.GROOVE_OVERWELD[1]
        if self.process() != "low-hydrogen-stick":
            gas = _PROCESS_GAS.get(self.process()) or dict(deposition_facts.USUAL_GAS)[self.wire_material()]
            efficiency, _ = deposition.deposition_efficiency(gas)
            self.wire = wire_mass.needed(deposition.wire_melted(self.deposit, efficiency), wires.WASTE)
