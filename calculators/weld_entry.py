"""A weld for the log: what was run, measured against its limits. Nothing that was done is refused; it is flagged."""

from calculators import density_sources, numerals, solid_wire, wire_mass
from calculators.contract import (
    Answer,
    Calculator,
    Choice,
    Given,
    Measured,
    Message,
    Next,
    Number,
    Plain,
    Quantity,
    Relation,
    Source,
    Table,
    Text,
    Verdict,
    Words,
    carry,
    say,
)
from calculators.heat_input import ASME_IX, EN_1011
from calculators.line_energy import THERMAL_EFFICIENCY, arc_energy, efficiency_of, solve_travel
from calculators.weld_entry_words import ENGLISH

LIMITS = Source("The limits are the procedure's, as typed; nothing here replaces it", "common practice")

USED = Source("Wire used = feed × arc time × area × density; gas used = flow × arc time", "law")

_TRAVEL = ("travel_speed", "weld_length", "arc_time")
_FED = ("gas-metal-arc", "submerged-arc")  # where the wire is solid and its feed tells what was used
_LOOKED = ("not-looked", "accepted", "rejected", "repaired")


def _prepare(given: Given) -> None:
    given.fill("thermal_efficiency", efficiency_of(given.word("process")))


def _travel_takes_part(given: Given) -> bool:
    return len([name for name in _TRAVEL if given.has(name)]) > 1


class _Weld:
    """What was run; coherent SI."""

    def __init__(self, given: Given) -> None:
        self.given = given
        self.missing = [name for name in ("voltage", "current", "travel_speed") if not given.has(name)]
        self.energy: float | None = None
        if not self.missing:
            self.energy = arc_energy(given.number("voltage"), given.number("current"), given.number("travel_speed"))
        self.checks = self._checks()
        self.wire = self._wire_used()
        self.gas: float | None = None
        if given.has("gas_flow") and given.has("arc_time"):
            self.gas = given.number("gas_flow") * given.number("arc_time")

    def _wire_used(self) -> float | None:
        """Return the wire melted, [kg], or None where its feed does not tell or something is missing."""
        given = self.given
        if given.word("process") not in _FED or not given.word("wire_material"):
            return None
        if not all(given.has(name) for name in ("wire_diameter", "wire_feed_speed", "arc_time")):
            return None
        length = wire_mass.length_fed(given.number("wire_feed_speed"), given.number("arc_time"))
        density, _ = wire_mass.density(given.word("wire_material"))
        return length * wire_mass.mass_per_length(given.number("wire_diameter"), density)

    def _checks(self) -> list[tuple[str, Measured, Measured, bool]]:
        """Return (which, measured, limit, whether it is kept) for each limit that there is a reading for."""
        given = self.given
        found = []
        for reading, limit, is_least in (
            ("preheat_measured", "preheat_least", True),
            ("interpass_measured", "interpass_most", False),
        ):
            if given.has(reading) and given.has(limit):
                measured = given.measured(reading, "preheat_temperature")
                wanted = given.measured(limit, "preheat_temperature")
                found.append((limit, measured, wanted, _kept(measured.value, wanted.value, is_least)))
        reached = self.reached()
        if reached is not None:
            for limit, is_least in (("heat_input_least", True), ("heat_input_limit", False)):
                if given.has(limit):
                    unit = given.units.get(limit)
                    wanted = Measured(given.number(limit), "heat_input", None, unit)
                    shown = Measured(reached, "heat_input", 4, unit)
                    found.append((limit, shown, wanted, _kept(reached, wanted.value, is_least)))
        return found

    def reached(self) -> float | None:
        """Return the arc energy or the heat input, whichever the limits are given in, [J/m]."""
        if self.energy is None:
            return None
        share = 1.0 if self.given.word("limit_basis") == "arc-energy" else self.given.number("thermal_efficiency")
        return self.energy * share

    def unchecked(self) -> list[str]:
        """Return the limits that have no reading to hold against them."""
        checked = [name for name, _, _, _ in self.checks]
        limits = ("preheat_least", "interpass_most", "heat_input_least", "heat_input_limit")
        return [name for name in limits if self.given.has(name) and name not in checked]


def _kept(reached: float, limit: float, is_least: bool) -> bool:
    reached, limit = numerals.settle(reached), numerals.settle(limit)
    return reached >= limit if is_least else reached <= limit


def _answer(given: Given) -> Answer:
    weld = _Weld(given)
    results: list[object] = []
    if weld.energy is None:
        results.append(Words("heat_input", say("weld-entry.no-heat")))
        results.append(Words("missing", _listed(weld.missing)))
    else:
        heat = weld.energy * given.number("thermal_efficiency")
        both = [Number("heat_input", heat), Number("arc_energy", weld.energy)]
        # The headline is the number that the limit is for, and what the log shows of this weld.
        results += list(reversed(both)) if given.word("limit_basis") == "arc-energy" else both
        if "travel_speed" in given.made:
            results.append(Number("travel_speed", given.number("travel_speed")))
    if weld.wire is not None:
        results.append(Number("wire_used", weld.wire, "wire_mass"))
    if weld.gas is not None:
        results.append(Number("gas_used_volume", weld.gas, "gas_volume"))
    if weld.checks:
        results.append(_table(weld))
    return Answer(
        results=tuple(results),
        working=_working(weld) + _working_of_use(weld),
        notes=_notes(weld),
        cautions=(say("weld-entry.caution"),),
        sources=_sources(weld),
        next_questions=_next(weld),
        verdict=_verdict(weld),
        record="weld-entry",
    )


def _sources(weld: _Weld) -> tuple[Source, ...]:
    found = (EN_1011, ASME_IX, LIMITS)
    if weld.wire is not None:
        return found + (USED, density_sources.WIRES)
    return found if weld.gas is None else found + (USED,)


def _notes(weld: _Weld) -> tuple[Message, ...]:
    notes = [say("weld-entry.note.kept")]
    if weld.wire is not None or weld.gas is not None:
        notes.append(say("weld-entry.note.used"))
    if weld.given.word("process") == "flux-cored-arc" and weld.given.has("wire_feed_speed"):
        notes.append(say("weld-entry.note.cored"))
    return tuple(notes)


def _listed(names: list[str]) -> Message:
    """Return names of fields as one message: two or three of them nest."""
    message = say("weld-entry.field." + names[-1])
    for name in reversed(names[:-1]):
        message = say("weld-entry.and", first=say("weld-entry.field." + name), rest=message)
    return message


def _table(weld: _Weld) -> Table:
    columns = tuple([say("weld-entry.column." + each) for each in ("what", "measured", "limit", "kept")])
    rows = []
    for name, measured, limit, kept in weld.checks:
        state = say("weld-entry.kept" if kept else "weld-entry.not-kept")
        rows.append((say("weld-entry.limit." + name), measured, limit, state))
    return Table("limits", say("weld-entry.limits"), columns, tuple(rows))


def _verdict(weld: _Weld) -> Verdict | None:
    broken = [name for name, _, _, kept in weld.checks if not kept]
    unchecked = weld.unchecked()
    if broken:
        message = say("weld-entry.limit." + broken[-1])
        for name in reversed(broken[:-1]):
            message = say("weld-entry.and", first=say("weld-entry.limit." + name), rest=message)
        message = say("weld-entry.verdict.outside", what=message)
        return Verdict("outside", message, say("weld-entry.remedy"))
    if unchecked:
        return Verdict("unclear", say("weld-entry.verdict.unclear", what=say("weld-entry.limit." + unchecked[0])))
    return Verdict("inside", say("weld-entry.verdict.inside", count=len(weld.checks))) if weld.checks else None


def _working(weld: _Weld) -> tuple[Message, ...]:
    if weld.energy is None:
        return (say("weld-entry.working.missing", missing=_listed(weld.missing)),)
    given = weld.given
    energy = Measured(weld.energy, "arc_energy", 4, "J/mm")
    return (
        say(
            "weld-entry.working.energy",
            voltage=given.measured("voltage"),
            current=given.measured("current"),
            travel_speed=Measured(given.number("travel_speed"), "travel_speed", 4, "mm/s"),
            arc_energy=energy,
        ),
        say(
            "weld-entry.working.heat",
            efficiency=Plain(given.number("thermal_efficiency"), 3),
            arc_energy=energy,
            heat_input=Measured(weld.energy * given.number("thermal_efficiency"), "heat_input", 4, "J/mm"),
        ),
    )


def _working_of_use(weld: _Weld) -> tuple[Message, ...]:
    given, lines = weld.given, []
    if weld.wire is not None:
        lines.append(
            say(
                "weld-entry.working.wire",
                feed=given.measured("wire_feed_speed"),
                arc_time=given.measured("arc_time"),
                diameter=Measured(given.number("wire_diameter"), "wire_diameter", 4, "mm"),
                density=Plain(wire_mass.density(given.word("wire_material"))[0], 4),
                wire=Measured(weld.wire, "wire_mass", 4, "kg"),
            )
        )
    if weld.gas is not None:
        flow, time = given.measured("gas_flow"), given.measured("arc_time")
        lines.append(say("weld-entry.working.gas", flow=flow, arc_time=time, gas=Measured(weld.gas, "gas_volume", 4)))
    return tuple(lines)


def _next(weld: _Weld) -> tuple[Next, ...]:
    return _next_of_heat(weld) + _next_of_use(weld)


def _next_of_use(weld: _Weld) -> tuple[Next, ...]:
    given, found = weld.given, []
    if weld.wire is not None:
        wire: tuple[tuple[str, object], ...] = (("wire_material", given.word("wire_material")),)
        wire += tuple([(name, given.measured(name)) for name in ("wire_diameter", "wire_feed_speed")])
        found.append(Next("spool-life", say("weld-entry.next.spool-life"), wire))
    if weld.gas is not None:
        flow = (("gas_flow", given.measured("gas_flow")),)
        found.append(Next("gas-supply", say("weld-entry.next.gas-supply"), flow))
    return tuple(found)


def _next_of_heat(weld: _Weld) -> tuple[Next, ...]:
    if weld.energy is None:
        return ()
    given = weld.given
    heat = Measured(weld.energy * given.number("thermal_efficiency"), "heat_input")
    # Heat that is out of all range is no question: there it would be refused.
    names: tuple[str, ...] = ("voltage", "current")
    if heat.value >= 5.0e3 and weld.energy <= 2.0e7:
        names += ("travel_speed",)
    carried = tuple([(name, given.measured(name)) for name in names])
    return (
        Next("heat-input", say("weld-entry.next.heat-input"), carried),
        Next("cooling-time", say("weld-entry.next.cooling-time"), carry("heat_input", heat, 1.0e5, 1.0e7)),
    )


_HEATS = ("1.0 kJ/mm", "2.5 kJ/mm", "35 kJ/in", "50 kJ/in")

CALCULATOR = Calculator(
    name="weld-entry",
    fields=(
        Text("joint", longest=60, hint=True),
        Text("weld_pass", longest=30, optional=True, hint=True),
        Quantity("voltage", optional=True, presets=("18 V", "20 V", "24 V", "27 V")),
        Quantity("current", optional=True, presets=("120 A", "150 A", "180 A", "220 A")),
        Quantity("weld_length", optional=True, presets=("6 in", "12 in", "150 mm", "300 mm")),
        Quantity("arc_time", "pass_time", optional=True, timer=True),
        Quantity("travel_speed", optional=True, hint=True),
        Quantity("preheat_measured", "preheat_temperature", optional=True),
        Quantity("interpass_measured", "preheat_temperature", optional=True),
        Choice("visual_result", _LOOKED, default="not-looked"),
        Text("repair", longest=200, optional=True, hint=True),
        Text("notes", longest=400, optional=True),
        Text("job", longest=60, optional=True),
        Quantity("thickness", optional=True),
        Text("wire_class", longest=40, optional=True),
        Text("wire_lot", longest=40, optional=True),
        Choice("wire_material", ("mild-steel", "stainless", "aluminum"), optional=True),
        Quantity("wire_diameter", optional=True, presets=solid_wire.PRESETS),
        Quantity("wire_feed_speed", optional=True),
        Text("gas_used", longest=40, optional=True),
        Quantity("gas_flow", optional=True),
        Choice("process", tuple(name for name, _ in THERMAL_EFFICIENCY), default="gas-metal-arc"),
        Quantity("preheat_least", "preheat_temperature", optional=True),
        Quantity("interpass_most", "preheat_temperature", optional=True),
        Choice("limit_basis", ("arc-energy", "heat-input"), optional=True),
        Quantity("heat_input_least", "heat_input", when=("limit_basis", ("arc-energy", "heat-input")), optional=True),
        Quantity(
            "heat_input_limit",
            when=("limit_basis", ("arc-energy", "heat-input")),
            optional=True,
            presets=_HEATS,
        ),
    ),
    relations=(
        Relation(
            _TRAVEL,
            solve_travel,
            check="travel_speed",
            required=False,
            its_own=_TRAVEL,
            takes_part=_travel_takes_part,
        ),
    ),
    prepare=_prepare,
    answer=_answer,
    english=ENGLISH,
    sources=(EN_1011, ASME_IX, LIMITS, USED, density_sources.WIRES),
    place=-8,
    fold_from="job",
)
