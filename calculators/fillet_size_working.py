"""How a fillet weld was worked out, line by line, with the numbers in each formula."""

from calculators import fillet_legs
from calculators.contract import Measured, Message, Plain, say
from calculators.fillet_job import ALLOWABLE, EUROCODE, RESISTANCE, Weld

_STRESS = {
    ALLOWABLE: "fillet-size.working.stress.allowable-strength",
    RESISTANCE: "fillet-size.working.stress.load-and-resistance-factor",
    EUROCODE: "fillet-size.working.stress.eurocode",
}
_METAL = {
    ALLOWABLE: "fillet-size.working.metal.allowable-strength",
    RESISTANCE: "fillet-size.working.metal.load-and-resistance-factor",
    EUROCODE: "fillet-size.working.metal.eurocode",
}


class Working:
    """The lines for one weld, in the units of its code: inches for the American ones, millimetres for the Eurocode."""

    def __init__(self, weld: Weld) -> None:
        self.weld = weld
        self.length, self.force, self.stress = ("mm", "kN/mm", "MPa") if weld.eurocode else ("in", "kip/in", "ksi")

    def lines(self) -> tuple[Message, ...]:
        """Return all lines that have their numbers."""
        lines: list[Message] = []
        if self.weld.effective_leg is not None:
            lines += self._stress()
            lines += self._leg() if self.weld.solved_leg else self._strength()
        if self.weld.metal is not None:
            lines += self._metal()
        return tuple(lines + self._sizes())

    def _in_length(self, value: float) -> Measured:
        return Measured(value, "leg", 4, self.length)

    def _in_force(self, value: float) -> Measured:
        return Measured(value, "force_per_length", 4, self.force)

    def _in_stress(self, value: float) -> Measured:
        return Measured(value, "strength", 4, self.stress)

    def _stress(self) -> list[Message]:
        weld = self.weld
        base = weld.stress(1.0)
        shown: dict[str, object] = {"stress": self._in_stress(base)}
        if weld.eurocode:
            shown["strength"] = self._in_stress(weld.ultimate_strength or 0.0)
            shown["factor"] = Plain(weld.correlation_factor or 0.0, 3)
        else:
            shown["strength"] = self._in_stress(weld.electrode_strength)
        lines = [say(_STRESS[weld.method], **shown)]
        if weld.increase_counted:
            lines.append(
                say(
                    "fillet-size.working.increase-eurocode" if weld.eurocode else "fillet-size.working.increase",
                    angle=weld.given.measured("load_angle"),
                    factor=Plain(weld.increase(weld.load_angle), 4),
                    stress=self._in_stress(weld.counted_stress()),
                )
            )
        return lines

    def _gap(self, leg: float) -> dict[str, object]:
        taken = self.weld.taken
        return {
            "leg": self._in_length(leg),
            "gap": self._in_length(taken),
            "counted": self._in_length(leg - taken),
        }

    def _strength(self) -> list[Message]:
        weld = self.weld
        assert weld.leg is not None
        counted = weld.leg - weld.taken
        throat = fillet_legs.throat_of_leg(counted)
        lines = [say("fillet-size.working.gap-off", **self._gap(weld.leg))] if weld.taken else []
        lines.append(say("fillet-size.working.throat", leg=self._in_length(counted), throat=self._in_length(throat)))
        lines.append(
            say(
                "fillet-size.working.strength",
                stress=self._in_stress(weld.counted_stress()),
                throat=self._in_length(throat),
                strength=self._in_force(weld.strength),
            )
        )
        return lines

    def _leg(self) -> list[Message]:
        weld = self.weld
        assert weld.leg is not None and weld.force is not None
        counted = weld.leg - weld.taken
        throat = self._in_length(fillet_legs.throat_of_leg(counted))
        lines = [
            say(
                "fillet-size.working.throat-needed",
                force=self._in_force(weld.force),
                stress=self._in_stress(weld.counted_stress()),
                throat=throat,
            ),
            say("fillet-size.working.leg", throat=throat, leg=self._in_length(counted)),
        ]
        if weld.taken:
            lines.append(say("fillet-size.working.gap-on", **self._gap(weld.leg)))
        return lines

    def _metal(self) -> list[Message]:
        weld = self.weld
        assert weld.metal is not None and weld.thickness is not None
        lines = [
            say(
                _METAL[weld.method],
                yielding=self._in_stress(weld.yield_strength or 0.0),
                ultimate=self._in_stress(weld.ultimate_strength or 0.0),
                thickness=self._in_length(weld.thickness),
                whole=self._in_force(weld.metal * weld.weld_lines),
            )
        ]
        if weld.weld_lines == 2:
            whole, each = self._in_force(weld.metal * 2.0), self._in_force(weld.metal)
            lines.append(say("fillet-size.working.both-sides", whole=whole, each=each))
        return lines

    def _sizes(self) -> list[Message]:
        weld = self.weld
        lines = []
        if weld.eurocode:
            least = self._in_length(weld.least or 0.0)
            lines.append(say("fillet-size.working.least-eurocode", least=least))
        elif weld.least is not None and weld.thickness is not None:
            shown = self._in_length(weld.thickness)
            lines.append(say("fillet-size.working.least", thickness=shown, least=self._in_length(weld.least)))
        if weld.least is not None and weld.taken:
            lines.append(say("fillet-size.working.gap-on", **self._gap(weld.least_laid())))
        if weld.largest is not None and weld.edge is not None:
            thin = weld.largest == weld.edge
            id = "fillet-size.working.edge-thin" if thin else "fillet-size.working.edge"
            lines.append(say(id, thickness=self._in_length(weld.edge), largest=self._in_length(weld.largest)))
        return lines
