"""The passes of one weld: the arc energy of each, the hottest of them, and whether that keeps a limit."""

from calculators import numerals, units
from calculators.contract import (
    Choice,
    Given,
    Measured,
    Message,
    Number,
    Plain,
    Quantity,
    Refusal,
    Table,
    Verdict,
    Words,
    say,
)
from calculators.instantaneous_energy import arc_energy_of_energy, arc_energy_of_power
from calculators.line_energy import arc_energy, solve_travel
from calculators.quantities import quantity

_WITH_SPEED = ("speed", "power-speed")
_WITH_TIME = ("time", "power-time")
_WITH_METERS = ("time", "speed")
_WITH_POWER = ("power-time", "power-speed")

# Narrower than for one weld: a pass is of one length and one arc time.
ROW_FIELDS = (
    Choice("readings", ("time", "speed", "power-time", "power-speed", "energy"), default="time"),
    Quantity("voltage", when=("readings", _WITH_METERS), presets=("18 V", "20 V", "24 V", "27 V")),
    Quantity("current", when=("readings", _WITH_METERS), presets=("120 A", "150 A", "180 A", "220 A")),
    Quantity("arc_power", when=("readings", _WITH_POWER), presets=("3 kW", "4 kW", "5 kW")),
    Quantity("instantaneous_energy", when=("readings", ("energy",)), low=100.0, high=5e7, presets=("60 kJ", "100 kJ")),
    Quantity("travel_speed", when=("readings", _WITH_SPEED), presets=("8 in/min", "10 in/min", "12 in/min")),
    Quantity(
        "weld_length",
        when=("readings", _WITH_TIME + ("energy",)),
        low=5.0,
        high=50000.0,
        presets=("6 in", "12 in", "150 mm", "300 mm"),
    ),
    Quantity(
        "arc_time",
        "pass_time",
        when=("readings", _WITH_TIME),
        low=1.0 / 60.0,
        high=600.0,
        presets=("30 s", "1 min", "2 min"),
        timer=True,
    ),
)


class _Pass:
    """One pass: its number, its arc energy [J/m] and, unless its energy was measured, its travel speed [m/s]."""

    def __init__(self, row: Given) -> None:
        self.row = row
        self.place = row.place
        self.readings = row.word("readings")
        self.speed = self._speed()
        self.arc_energy = self._arc_energy()
        self._refuse_outside("pass-energy", "arc_energy", self.arc_energy, "")

    def _speed(self) -> float | None:
        if self.readings in _WITH_SPEED:
            return self.row.number("travel_speed")
        if self.readings == "energy":
            return None
        values = {name: self.row.number(name) for name in ("weld_length", "arc_time")}
        speed = solve_travel("travel_speed", values)
        self._refuse_outside("pass-speed", "travel_speed", speed, "passes-" + str(self.place) + "-arc_time")
        return speed

    def _refuse_outside(self, id: str, name: str, value: float, field: str) -> None:
        entry = quantity(name)
        low, high = units.to_coherent(entry.low, entry.si), units.to_coherent(entry.high, entry.si)
        if numerals.settle(low) <= numerals.settle(value) <= numerals.settle(high):
            return
        shown: dict[str, object] = {
            "pass": self.place,
            name: Measured(value, name),
            "low": Measured(low, name),
            "high": Measured(high, name),
        }
        raise Refusal(field, say("heat-input.refusal." + id, **shown))

    def _arc_energy(self) -> float:
        row = self.row
        if self.speed is None:
            return arc_energy_of_energy(row.number("instantaneous_energy"), row.number("weld_length"))
        if self.readings in _WITH_POWER:
            return arc_energy_of_power(row.number("arc_power"), self.speed)
        return arc_energy(row.number("voltage"), row.number("current"), self.speed)

    def name(self) -> Message:
        """Return `pass 2`."""
        return say("heat-input.passes.one", **{"pass": self.place})

    def working(self) -> Message:
        """Return the arc energy with this pass's numbers in the formula."""
        shown: dict[str, object] = {"pass": self.place, "arc_energy": Measured(self.arc_energy, "arc_energy", 4)}
        for name in sorted(self.row.typed):
            if name != "readings":
                shown[name] = self.row.measured(name)
        return say("heat-input.working.pass." + self.readings, **shown)


class PassLog:
    """All passes given, with the efficiency and the limit that hold for all of them."""

    def __init__(self, given: Given) -> None:
        self.efficiency = given.number("thermal_efficiency")
        self.basis = given.word("limit_basis")
        self.limit = given.number("heat_input_limit") if given.has("heat_input_limit") else None
        self.limit_unit = given.units.get("heat_input_limit")
        self.passes = [_Pass(row) for row in given.rows("passes")]
        # Of two equally hot passes the first is named.
        ranked = sorted((-numerals.settle(each.arc_energy), each.place) for each in self.passes)
        self.worst = next(each for each in self.passes if each.place == ranked[0][1])

    def results(self) -> tuple[object, ...]:
        """Return the hottest pass first, on the basis that the limit is on, and the table of all."""
        both = [
            Number("heat_input", self.efficiency * self.worst.arc_energy),
            Number("arc_energy", self.worst.arc_energy),
        ]
        if self.basis == "arc-energy":
            both.reverse()
        return tuple(both) + (Words("worst_pass", self.worst.name()), self._table())

    def _table(self) -> Table:
        heads = ["pass", "of-limit" if self.limit is not None else "travel", "arc_energy", "heat_input"]
        rows = []
        for each in self.passes:
            speed: object = say("heat-input.passes.not-asked")
            if each.speed is not None:
                speed = Measured(each.speed, "travel_speed")
            if self.limit is not None:
                speed = Plain(self._reached(each) / self.limit * 100.0, 3)
            heat = Measured(self.efficiency * each.arc_energy, "heat_input")
            rows.append((str(each.place), speed, Measured(each.arc_energy, "arc_energy"), heat))
        columns = tuple(say("heat-input.passes." + head) for head in heads)
        return Table("passes", say("heat-input.passes.table"), columns, tuple(rows))

    def _reached(self, each: _Pass) -> float:
        return each.arc_energy if self.basis == "arc-energy" else self.efficiency * each.arc_energy

    def _is_over(self, each: _Pass) -> bool:
        return self.limit is not None and numerals.settle(self._reached(each)) > numerals.settle(self.limit)

    def verdict(self) -> Verdict | None:
        """Return whether the hottest pass keeps the limit, if there is one."""
        if self.limit is None:
            return None
        over = [each for each in self.passes if self._is_over(each)]
        share = self._reached(self.worst) / self.limit
        shown: dict[str, object] = {
            "pass": self.worst.place,
            "percent": Plain(abs(share - 1.0) * 100.0, 2),
            "limit": Measured(self.limit, "heat_input", None, self.limit_unit),
            "basis": say("heat-input.option.limit_basis." + self.basis),
        }
        if not over:
            return Verdict("inside", say("heat-input.verdict.pass-under", **shown))
        shown["passes"] = _listed(over)
        return Verdict("outside", say("heat-input.verdict.pass-over", **shown), self._remedy(share))

    def _remedy(self, share: float) -> Message | None:
        if self.worst.speed is None:
            return None
        unit = self.worst.row.units.get("travel_speed")
        # Four figures, so that rounding does not bring it back over the limit by anything that counts.
        slowest = Measured(self.worst.speed * share, "travel_speed", 4, unit)
        return say("heat-input.remedy.pass", **{"pass": self.worst.place, "travel_speed": slowest})

    def working(self) -> tuple[Message, ...]:
        """Return one line for each pass and one for the hottest."""
        heat = self.efficiency * self.worst.arc_energy
        last: dict[str, object] = {
            "pass": self.worst.place,
            "efficiency": Plain(self.efficiency, 4),
            "heat_input": Measured(heat, "heat_input", 4, "J/mm"),
            "heat_input_us": Measured(heat, "heat_input", 4, "kJ/in"),
        }
        return tuple([each.working() for each in self.passes] + [say("heat-input.working.passes", **last)])


def _listed(passes: list[_Pass]) -> Message:
    """Return the numbers of passes as a list in words: `1, 3 and 4`."""
    listed: Message = say("heat-input.passes.number", **{"pass": passes[-1].place})
    joint = "list.and"
    for each in reversed(passes[:-1]):
        listed = say(joint, first=each.place, rest=listed)
        joint = "list.comma"
    return listed
