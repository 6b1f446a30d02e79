"""Fault-finder: from what is seen or heard to the likely causes, in the order that the welder's numbers give them."""

from calculators import conductors, machine_fields, solid_wire
from calculators.contract import (
    Answer,
    Calculator,
    Choice,
    Finding,
    Findings,
    Given,
    Measured,
    Message,
    Quantity,
    Source,
    Words,
    say,
)
from calculators.facts import conductors as leads
from calculators.facts import faults as facts
from calculators.facts import processes, shielding, transfer
from calculators.fault_case import CLEARED, OPEN, SELF_SHIELDED, Case, Suspect
from calculators.fault_finder_words import ENGLISH
from calculators.fault_onward import CRACKS, Onward
from calculators.fault_remedy import Remedy
from calculators.fault_sources import ALL, AMPERES, LINES, MELTING, OF
from calculators.machine import Machine
from calculators.shielding_gas import FIELDS as GAS

_STOP = CRACKS + ("cold-lap",)
_FEEDING = ("burn-back", "birdnest", "wire-slip", "erratic-arc")


def _prepare(given: Given) -> None:
    Machine(given)  # says at once what of it cannot be read


def _answer(given: Given) -> Answer:
    case = Case(given)
    first = Remedy(case, case.ranked[0].cause)
    results: list[object] = []
    if case.fault in _STOP:
        what = "cold-lap" if case.fault == "cold-lap" else "crack"
        results.append(Words("stop", say("fault-finder.stop." + what)))
        results.append(Words("repair", say("fault-finder.repair." + given.word("service"))))
    results.append(Words("first", say("fault-finder.cause." + first.cause)))
    results.append(Words("change", _change(case, first)))
    results += _dials(given, first)
    results += _findings(case)
    return Answer(
        results=tuple(results),
        working=_working(case),
        notes=_notes(case),
        cautions=_cautions(case),
        sources=_sources(case),
        next_questions=Onward(case).questions(),
    )


# ---------------------------------------------------------------- what to change


def _shown(case: Case, remedy: Remedy, value: float) -> Measured:
    field = "machine_voltage" if remedy.quantity == "voltage" else remedy.quantity
    figures = 3 if remedy.quantity in ("voltage", "wire_feed_speed") else 2
    return Measured(value, remedy.quantity, figures, case.given.units.get(field))


def _change(case: Case, remedy: Remedy) -> Message:
    """Return which number the remedy moves, which way, and how far."""
    way = "up" if remedy.direction > 0 else "down"
    if remedy.number == "polarity":
        return say("fault-finder.polarity-" + way)
    number = say("fault-finder.number." + remedy.number)
    if remedy.new is None:
        return say("fault-finder." + way, number=number, by=_by(case, remedy))
    new = _shown(case, remedy, remedy.new)
    if remedy.old is None:
        return say("fault-finder." + way + "-to", number=number, new=new)
    return say("fault-finder." + way + "-from", number=number, old=_shown(case, remedy, remedy.old), new=new)


def _by(case: Case, remedy: Remedy) -> Message:
    """Return how far, in words."""
    cause = remedy.cause
    if cause == "wind":
        return say("fault-finder.by.wind", limit=Measured(shielding.WIND_LIMIT, "wind_speed", 2))
    if cause == "lead-drop":
        return say("fault-finder.by.lead-drop", limit=Measured(leads.LEAD_LIMIT, "voltage_drop", 2))
    if cause == "downhill":
        return say("fault-finder.by.downhill", most=Measured(transfer.VERTICAL_DOWN_THICKEST, "joint_size", 3))
    if cause == "soft-wire":
        return say("fault-finder.by.soft-wire", most=Measured(processes.PUSH_ALUMINUM, "part_length", 2))
    if cause == "dirty" and case.given.word("surface") == "galvanized":
        low, high = [Measured(each, "joint_size", 2) for each in processes.ZINC_OFF]
        return say("fault-finder.by.zinc", low=low, high=high)
    return say("fault-finder.by." + cause)


def _dials(given: Given, remedy: Remedy) -> list[object]:
    """Return the new number on the welder's own machine, where its dials are known."""
    machine = Machine(given)
    if remedy.new is None:
        return []
    if remedy.quantity == "voltage":
        return list(machine.voltage_results(remedy.new))
    words = machine.words(remedy.new) if remedy.quantity == "wire_feed_speed" else None
    return [Words("feed_mark", words)] if words is not None else []


def _findings(case: Case) -> list[object]:
    likely = [suspect for suspect in case.ranked if suspect.level > CLEARED]
    cleared = [suspect for suspect in case.ranked if suspect.level == CLEARED]
    found: list[object] = []
    for name, suspects in (("causes", likely), ("cleared", cleared)):
        if suspects:
            judged = suspects[0].level > OPEN or name == "cleared"
            items = tuple([_finding(case, suspect, judged) for suspect in suspects])
            remember = case.fault + "." + case.metal + "." + case.kind if name == "causes" else ""
            found.append(Findings(name, say("fault-finder." + name + ("" if judged else ".unjudged")), items, remember))
    return found


def _finding(case: Case, suspect: Suspect, judged: bool) -> Finding:
    if suspect.level == CLEARED:
        why = say("fault-finder.cleared.why")
    else:
        look = say("fault-finder.look." + suspect.cause)
        why = say("fault-finder.why", look=look, change=_change(case, Remedy(case, suspect.cause)))
    standing = say("standing." + dict(OF)[suspect.source].standing)
    sure = say("fault-finder.sure." + str(suspect.level), standing=standing) if judged else None
    return Finding(say("fault-finder.cause." + suspect.cause), sure, why, suspect.cause)


# ---------------------------------------------------------------- how, and what to mind


def _working(case: Case) -> tuple[Message, ...]:
    given = case.given
    lines = []
    volts, current = "voltage", Measured(case.current or 0.0, "current", 3)
    if case.current is not None and not given.has("current"):
        lines.append(say("fault-finder.working.current", current=current))
    if case.lost is not None:
        limit = Measured(leads.LEAD_LIMIT, "voltage_drop")
        lines.append(say("fault-finder.working.drop", drop=Measured(case.lost, "voltage_drop", 2), limit=limit))
    if case.meter is not None:
        low, high = [Measured(case.meter - drop, volts, 3) for drop in (case.drops[1], case.drops[0])]
        meter = Measured(case.meter, volts, 3)
        if case.lost is None:
            lines.append(say("fault-finder.working.guessed", meter=meter, low=low, high=high))
        else:
            lines.append(say("fault-finder.working.told", meter=meter, drop=Measured(case.lost, volts, 2), low=low))
    if case.usual is not None:
        low, high = [Measured(each, volts, 3) for each in (case.usual[0], case.usual[2])]
        lines.append(say("fault-finder.working.usual", current=current, low=low, high=high))
    if case.transition is not None:
        low, high = [Measured(each, "current", 3) for each in (case.transition[0], case.transition[2])]
        lines.append(say("fault-finder.working.spray", current=current, low=low, high=high))
    if case.wanted is not None and case.current is not None:
        low, high = [Measured(each, "current", 3) for each in (case.wanted[0], case.wanted[2])]
        thick = given.measured("thickness")
        lines.append(say("fault-finder.working.wanted", thickness=thick, low=low, high=high, current=current))
    if case.distance is not None:
        unit = given.units.get("contact_tip_to_work")
        low, _, high = [Measured(each, "contact_tip_to_work", 2, unit) for each in case.distances()]
        lines.append(say("fault-finder.working.distance", low=low, high=high))
    if given.has("nozzle_bore") and case.kind != SELF_SHIELDED:
        low, _, high = [Measured(each, "gas_flow", 2, given.units.get("gas_flow")) for each in case.flows()]
        lines.append(say("fault-finder.working.flow", low=low, high=high))
    return tuple(lines) + (say("fault-finder.working.order"),)


def _notes(case: Case) -> tuple[Message, ...]:
    made = case.given.made
    notes = [say("fault-finder.note.one")]
    if "wire_diameter" in made:
        notes.append(say("fault-finder.note.wire", diameter=case.given.measured("wire_diameter")))
    if "nozzle_bore" in made:
        notes.append(say("fault-finder.note.bore", bore=case.given.measured("nozzle_bore")))
    if case.meter is not None and case.lost is None:
        notes.append(say("fault-finder.note.leads"))
    if case.unknown:
        notes.append(say("fault-finder.note.unknown"))
    return tuple(notes)


def _cautions(case: Case) -> tuple[Message, ...]:
    surface = case.given.word("surface")
    causes = [suspect.cause for suspect in case.ranked]
    wanted = (
        ("stop", case.fault in _STOP and case.given.word("service") == "structural"),
        ("feed", case.fault in _FEEDING or "polarity" in causes),
        ("paint", surface == "paint"),
        ("decides", True),
    )
    cautions = [say("fault-finder.caution." + key) for key, is_wanted in wanted if is_wanted]
    if surface == "galvanized":
        cautions.append(say("caution.zinc"))
    if case.fault == "regulator-freeze":
        cautions.append(say("caution.cylinder"))
    if case.fault in _FEEDING:
        cautions.append(say("caution.live"))
    return tuple(cautions) + (say("caution.arc"),)


def _sources(case: Case) -> tuple[Source, ...]:
    named = [suspect.source for suspect in case.ranked] + ["practice"]
    found = [source for key, source in OF if key in named]
    if case.usual is not None or case.transition is not None:
        found += LINES
    if case.law is not None:
        found.append(MELTING)
    if case.wanted is not None or case.distance is not None or case.given.has("nozzle_bore"):
        found.append(AMPERES)
    return tuple(found)


# ---------------------------------------------------------------- the question


def _with(*causes: str) -> tuple[str, tuple[str, ...]]:
    """Return the faults that any of these causes may be behind, as what a field hangs on."""
    faults = [fault for fault, found in facts.FAULTS if any(cause in causes for cause, _ in found)]
    return "fault", tuple(faults)


_ARC = _with("volts-low", "volts-high", "feed-low", "feed-high", "lead-drop")
_VOLTS = _with("volts-low", "volts-high")
_LEADS = _with("volts-low", "volts-high", "lead-drop")
_AIR = _with("wind", "flow-low", "flow-frost")
_WITH_GAS = ("wire_kind", ("solid", "metal-cored", "flux-cored"))

CALCULATOR = Calculator(
    name="fault-finder",
    fields=(
        Choice("fault", tuple([fault for fault, _ in facts.FAULTS]), many=True),
        Choice("service", ("structural", "other"), default="structural", when=("fault", _STOP)),
        Choice("wind", ("still", "breeze", "wind"), optional=True, when=_with("wind")),
        Quantity("wind_speed", optional=True, when=_with("wind"), presets=("3 mph", "5 mph", "8 mph")),
        Quantity(
            "gas_flow",
            optional=True,
            when=_AIR,
            presets=("20 ft3/h", "25 ft3/h", "30 ft3/h", "40 ft3/h", "12 L/min", "15 L/min", "18 L/min"),
        ),
        Choice(
            "surface",
            ("clean", "mill-scale", "rust", "paint", "galvanized", "oil"),
            optional=True,
            when=_with("dirty"),
        ),
        Quantity(
            "machine_voltage", "voltage", optional=True, when=_VOLTS, presets=("16 V", "18 V", "20 V", "24 V", "27 V")
        ),
        Quantity("current", optional=True, when=_ARC, presets=("90 A", "125 A", "150 A", "180 A")),
        Quantity("wire_feed_speed", optional=True, hint=True, when=_ARC),
        Quantity(
            "contact_tip_to_work",
            optional=True,
            when=_with("stick-out-long", "stick-out-short"),
            presets=("3/8 in", "1/2 in", "3/4 in", "1 in", "10 mm", "12 mm", "19 mm", "25 mm"),
        ),
        Quantity(
            "thickness",
            optional=True,
            when=_with("feed-low", "feed-high", "short-circuit-thick"),
            low=0.5,
            presets=("1/16 in", "1/8 in", "3/16 in", "1/4 in", "2 mm", "3 mm", "6 mm"),
        ),
        solid_wire.FIELDS[0],
        Choice("wire_kind", ("solid", "metal-cored", "flux-cored", "self-shielded"), default="solid"),
        Quantity("wire_diameter", optional=True, hint=True, presets=solid_wire.PRESETS),
        Choice("gas", GAS[0].options, optional=True, when=_WITH_GAS),
        GAS[1],
        Choice("polarity", ("positive", "negative"), optional=True, when=_with("polarity")),
        Choice(
            "position",
            transfer.EVERY,
            default="flat",
            when=_with("flow-low", "feed-low", "feed-high", "downhill"),
        ),
        Quantity("nozzle_bore", optional=True, hint=True, when=_AIR, presets=("1/2 in", "5/8 in", "3/4 in", "13 mm")),
        Quantity(
            "lead_length", optional=True, when=_LEADS, presets=("25 ft", "50 ft", "100 ft", "10 m", "20 m", "30 m")
        ),
        Choice("cable_size", tuple([name for name, _ in conductors.LEADS]), optional=True, when=_LEADS),
    )
    + machine_fields.FIELDS,
    prepare=_prepare,
    answer=_answer,
    english=ENGLISH,
    sources=ALL,
    place=71,
    fold_from="wire_material",
    machine=machine_fields.NAMES,
)
