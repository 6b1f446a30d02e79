"""The bead of a setting: leg or cross-section of a pass, how many, travel by mass balance, heat for each length."""

from calculators import bead_travel, fillet_legs, line_energy, ranges
from calculators.contract import Given, Measured
from calculators.facts import deposition, transfer
from calculators.facts import settings as facts
from calculators.joint_job import JointJob
from calculators.joint_section import Section
from calculators.settings_case import Trial
from calculators.shielding_gas import MIXED

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

PROCESS = "gas-metal-arc"
LEGGED = ("fillet", "lap")
# The joints asked about, and which of their sizes joint-fill asks for.
_ASKED = {
    "fillet": ("leg",),
    "lap": ("leg", "thickness"),
    "corner": ("thickness",),
    "square-butt": ("thickness", "root_gap", "reinforcement", "bead_width"),
    "single-v": ("thickness", "root_gap", "root_face", "included_angle"),
}
JOINTS = ("fillet", "lap", "corner", "square-butt", "single-v")


class Bead:
    """What one pass lays at the feed of a trial, in coherent SI.

    `least` is the cross-section that the wire lays at the fastest travel a hand holds. `widened` says that the joint
    takes less than that; `as_drawn` is False where joint-fill cannot be asked for the wider bead.
    """

    def __init__(self, given: Given, trial: Trial) -> None:
        self.trial = trial
        self.joint = given.word("joint")
        self.gas = _wire_and_gas(trial)
        self.slowest = dict(facts.SLOWEST).get(trial.position, facts.SLOWEST_ELSE)
        fastest = [travel for word, travel in facts.FASTEST if word in (trial.metal, trial.mode, trial.position)]
        self.fastest = fastest[0] if fastest else facts.FASTEST_ELSE
        self.sizes = _sizes(given, self.joint)
        self.efficiency = self._job(None).efficiency
        self.largest = self._largest()
        self.widened = False
        self.as_drawn = True
        self._lay()
        voltage, current = trial.voltage, trial.current
        self.arc_energy = line_energy.arc_energy(voltage, current, self.travel)
        self.share = line_energy.efficiency_of(PROCESS)
        self.heat_input = line_energy.heat_input(voltage, current, self.travel, self.share)
        low = trial.voltages[0] * trial.currents[0] / self.travels[1]
        high = trial.voltages[2] * trial.currents[1] / self.travels[0]
        self.arc_energies = (low, high)
        self.legs = (_leg_of(self.least), self.largest)
        self.areas = (self.least, bead_travel.bead_area(self.largest, deposition.FILLET_OVERWELD[1]))

    def question(self) -> "list[tuple[str, object]]":
        """Return the joint as joint-fill asks for it."""
        found: list[tuple[str, object]] = [("joint", self.joint)]
        for name in _ASKED[self.joint]:
            quantity = "joint_angle" if name == "included_angle" else "joint_size"
            found.append((name, Measured(self.sizes[name], quantity)))
        return found + [("largest_bead", Measured(self.largest, "leg")), ("wire_and_gas", self.gas)]

    def _job(self, largest: float | None) -> JointJob:
        values: dict[str, Any] = {"wire_material": self.trial.metal, "wire_and_gas": self.gas}
        if largest is not None:
            values["largest_bead"] = largest
        return JointJob(values, Section(self.joint, self.sizes, "mm"))

    def _laid_at(self, travel: float) -> float:
        """Return the cross-section that the wire lays at a travel speed, [m2]."""
        trial = self.trial
        values = {"wire_feed_speed": trial.feed, "wire_diameter": trial.diameter}
        values["deposition_efficiency"], values["travel_speed"] = self.efficiency, travel
        return bead_travel.solve_travel_speed("bead_area", values)

    def _largest(self) -> float:
        """Return the largest leg of one pass: by the code or the mode, and no slower than a hand can go, [m]."""
        most = dict(facts.ONE_PASS)[self.trial.position]
        if self.trial.mode == "short-circuit":
            most = min(most, facts.ONE_PASS_SHORT_CIRCUIT)
        return min(most, _leg_of(self._laid_at(self.slowest)))

    def _lay(self) -> None:
        job = self._job(self.largest)
        self.passes, self.area = job.passes, job.area / job.passes
        self.least = self._laid_at(self.fastest)
        if ranges.above(self.least, self.area):
            self.widened = True
            self.area = self.least
            self.largest = max(self.largest, _leg_of(self.least))
            if self.passes == 1 and self._widen():
                job = self._job(None)
                self.area = job.area
            else:
                self.as_drawn = False
        self.travel = bead_travel.travel_speed(self.trial.feed, self.trial.diameter, self.efficiency, self.area)
        self.travels = (self.travel / job.most, self.travel / job.least)

    def _widen(self) -> bool:
        """Make the joint as large as the least bead; return False for one that joint-fill knows no larger."""
        if self.joint == "fillet":
            self.sizes["leg"] = _leg_of(self.least)
            return True
        if self.joint == "square-butt":
            cap = self.least - self.sizes["root_gap"] * self.sizes["thickness"]
            width = (1.5 * cap / facts.CAP_SHARE) ** 0.5
            if cap > 0.0 and width > self.sizes["root_gap"]:
                self.sizes["bead_width"], self.sizes["reinforcement"] = width, width * facts.CAP_SHARE
                return True
        return False


def _leg_of(area: float) -> float:
    return bead_travel.solve_bead("leg", {"bead_area": area, "overweld_factor": deposition.FILLET_OVERWELD[1]})


def _sizes(given: Given, joint: str) -> dict[str, float]:
    """Return the sizes of the joint by the names of joint-fill's fields, the usual where none is given."""
    thickness = given.number("thickness")
    sizes = {"thickness": thickness}
    if joint in LEGGED:
        sizes["leg"] = given.number("leg") if given.has("leg") else _usual_leg(thickness, joint)
    elif joint == "single-v":
        sizes["root_gap"] = given.number("root_gap") if given.has("root_gap") else facts.V_GAP
        sizes["root_face"], sizes["included_angle"] = facts.V_FACE, facts.V_ANGLE
    elif joint == "square-butt":
        gap = given.number("root_gap") if given.has("root_gap") else min(thickness / 2.0, facts.BUTT_GAP)
        width = gap + thickness + facts.BUTT_WIDER
        sizes["root_gap"], sizes["bead_width"] = gap, width
        sizes["reinforcement"] = min(width * facts.CAP_SHARE, facts.BUTT_CAP)
    return sizes


def _usual_leg(thickness: float, joint: str) -> float:
    if not ranges.above(thickness, facts.LEG_BY_THICKNESS):
        leg = thickness
    else:
        leg = max(facts.LEG_BY_THICKNESS, fillet_legs.least_leg(thickness))
    at_edge = joint == "lap" and not ranges.above(facts.LEG_BY_THICKNESS, thickness)
    return min(leg, fillet_legs.largest_leg_along_edge(thickness)) if at_edge else leg


def _wire_and_gas(trial: Trial) -> str:
    """Return the name that joint-fill and travel-speed have for wire and gas."""
    if trial.gas.word == "carbon-dioxide":
        return "solid-carbon-dioxide"
    rich = trial.gas.word != MIXED or not ranges.above(trial.gas.share, dict(transfer.MOST_CARBON_DIOXIDE)["stainless"])
    return "solid-argon-rich" if rich or trial.mode == "spray" else "solid-argon-25-carbon-dioxide"
