"""Where to ask on: the groove, the preheat, the heat input and the wire feed, each with the numbers of the repair."""

from calculators.contract import Measured, Next, say
from calculators.crack_case import STEELS, Repair
from calculators.preheat_bounds import BY_METHOD_B


class Onward:
    """`questions` are the next ones, carrying the values; none for a part that is not welded as it stands."""

    def __init__(self, repair: Repair) -> None:
        self.repair = repair
        self.questions: tuple[Next, ...] = ()
        if repair.stopped:
            return
        if repair.family in ("unknown", "cast-iron"):
            casting = (("part", "casting"),) if repair.family == "cast-iron" else ()
            self.questions = (Next("metal-id", say("crack-repair.next.metal-id"), casting),)
        if repair.family != "cast-iron":
            self.questions += self._asked()

    def _asked(self) -> tuple[Next, ...]:
        repair = self.repair
        questions = []
        if repair.section is not None and repair.is_wire_known():
            questions.append(Next("joint-fill", say("crack-repair.next.joint-fill"), self._to_joint_fill()))
        questions.append(Next("preheat", say("crack-repair.next.preheat"), self._to_preheat()))
        heat: list[tuple[str, object]] = []
        if repair.length is not None and repair.damage == "crack":
            heat.append(("weld_length", self._length()))
        if repair.highest() is not None:
            heat.append(("limit_basis", "heat-input"))
        questions.append(Next("heat-input", say("crack-repair.next.heat-input"), tuple(heat)))
        if repair.process() == "gas-metal-arc" and repair.is_wire_known():
            wire = (("wire_material", repair.wire_material()),)
            questions.append(Next("wire-feed", say("crack-repair.next.wire-feed"), wire))
        return tuple(questions)

    def _length(self) -> Measured:
        return Measured(self.repair.length or 0.0, "weld_length", None, self.repair.given.units.get("crack_length"))

    def _to_joint_fill(self) -> tuple[tuple[str, object], ...]:
        repair = self.repair
        section = repair.section
        assert section is not None
        carried: list[tuple[str, object]] = [("joint", section.joint)]
        for name in ("thickness", "root_gap", "root_radius"):
            if section.size(name) or name == "root_gap":
                carried.append((name, section.shown(section.size(name))))
        carried.append(("included_angle", section.shown_angle(section.size("included_angle"))))
        if repair.length is not None:
            carried.append(("weld_length", self._length()))
        carried.append(("largest_bead", Measured(repair.largest_bead(), "leg")))
        carried.append(("wire_material", repair.wire_material()))
        if repair.process() == "flux-cored-arc":
            carried.append(("wire_and_gas", "flux-cored-gas-shielded"))
        return tuple(carried)

    def _to_preheat(self) -> tuple[tuple[str, object], ...]:
        repair = self.repair
        given = repair.given
        carried: list[tuple[str, object]] = [("family", repair.family)]
        names = {"structural": "grade", "hardening": "hardening_grade", "unknown": "magnet"}
        chosen = names.get(repair.family)
        if chosen is not None and given.has(chosen):
            carried.append((chosen, given.word(chosen)))
        if repair.thickness is not None and repair.family in STEELS:
            carried.append(("thickness", given.measured("thickness")))
        if repair.family in BY_METHOD_B:
            carried.append(("process", repair.process()))
            if given.has("cet"):
                carried.append(("cet", given.measured("cet", "carbon_equivalent")))
        return tuple(carried)
