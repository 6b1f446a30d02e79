"""Settings: where to set the machine for this metal, joint and position with what is on the truck."""

from calculators import aluminum_fillers, machine_fields, ranges, settings_sources, solid_wire
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
    Refusal,
    Verdict,
    Words,
    say,
)
from calculators.facts import settings as facts
from calculators.facts import transfer
from calculators.machine import Machine
from calculators.ranges import OutOfRange
from calculators.settings_bead import JOINTS, LEGGED, Bead
from calculators.settings_case import Trial, Truck
from calculators.settings_onward import Onward, ToProcess
from calculators.settings_refusals import Unserved
from calculators.settings_words import ENGLISH
from calculators.shielding_gas import FIELDS as GAS_FIELDS
from calculators.shielding_gas import MIXED
from calculators.truck_gas import TruckGas

MAGNESIUM, SILICON = "5083", "4043"  # an alloy that no silicon filler may touch, and that filler


# ---------------------------------------------------------------- what is asked


def _prepare(given: Given) -> None:
    if not given.has("wire_diameter"):
        given.fill("wire_diameter", facts.WIRE_DIAMETER)
    Machine(given)  # says at once what of it cannot be read
    if given.word("base_alloy") == MAGNESIUM and not given.word("filler_alloy"):
        given.fill("filler_alloy", facts.MAGNESIUM_FILLER)
    problem = _materials(Truck(given).asked)
    if problem is not None:
        raise Refusal(problem[0], say("settings.refusal." + problem[1]), _instead(given, problem))


def _instead(given: Given, problem: tuple[str, str]) -> tuple[Next, ...]:
    """Return where a refusal of the materials leads: to another process, or to the same job with what does it."""
    field, id = problem
    if id in ("cored", "wind"):
        return ToProcess(given).questions
    right = dict(_RIGHT).get(id)
    if right is None:
        return ()
    mended = Given()
    mended.values, mended.units, mended.typed = dict(given.values), given.units, given.typed
    for name, value in right:
        mended.values[name] = 0.01 * float(value[:-2]) if name == "carbon_dioxide" else value
    if given.has("thickness") and not _serves(mended):
        return ()
    kept: list[tuple[str, object]] = []
    for each in CALCULATOR.fields:
        if each.name in given.typed and given.has(each.name) and each.name not in (field, "carbon_dioxide"):
            if isinstance(each, Quantity):
                kept.append((each.name, given.measured(each.name, each.quantity.name)))
            else:
                kept.append((each.name, given.word(each.name)))
    return (Next("settings", say("settings.next." + id), tuple(kept) + right),)


def _serves(given: Given) -> bool:
    """Return whether there is a setting."""
    try:
        return _materials(given) is None and any(trial.problem is None for trial in Truck(given).trials())
    except OutOfRange:
        return False


def _materials(given: Given) -> tuple[str, str] | None:
    """Return (field, id) of what no setting mends: a wire, gas, alloy or wind that does not go with the metal."""
    metal = given.word("wire_material")
    if given.word("wire_kind") != "solid":
        return "wire_kind", "cored"
    if given.word("transfer_mode") == "pulse":
        return "transfer_mode", "pulse"
    wrong_gas = TruckGas(given, metal).problem()
    if wrong_gas:
        return "gas", wrong_gas
    fault = aluminum_fillers.fault(given.word("base_alloy"), given.word("filler_alloy"), False)
    if fault in ("cracks", "4043-on-5083"):
        return ("base_alloy" if fault == "cracks" else "filler_alloy"), fault
    if metal == "aluminum" and given.word("transfer_mode") in ("short-circuit", "globular"):
        return "transfer_mode", "aluminum-mode"
    if metal == "stainless" and given.word("transfer_mode") == "globular":
        return "transfer_mode", "no-globular"
    return ("wind", "wind") if given.word("wind") == "wind" else _of_joint(given)


def _of_joint(given: Given) -> tuple[str, str] | None:
    if not given.has("thickness"):
        return None
    thickness = given.number("thickness")
    if given.word("joint") == "square-butt" and ranges.above(thickness, facts.THICKEST_SQUARE_BUTT):
        return "joint", "bevel"
    if given.word("joint") == "single-v" and ranges.above(facts.THINNEST_V, thickness):
        return "joint", "no-bevel"
    if given.word("joint") == "lap" and given.has("leg") and ranges.above(given.number("leg"), thickness):
        return "leg", "lap"
    return None


# ---------------------------------------------------------------- the answer


def _answer(given: Given) -> Answer:
    trials = Truck(given).trials()
    served = [each for each in trials if each.problem is None]
    if not served:
        raise Unserved(trials).refusal
    trial = served[0]
    bead = Bead(given, trial)
    doubts = _doubts(given, trial, bead)
    return Answer(
        results=_results(given, trial, bead),
        working=_working(given, trial, bead),
        notes=_notes(given, trial, bead),
        cautions=_cautions(given, trial, doubts),
        sources=settings_sources.OF[trial.metal],
        next_questions=Onward(given, trial, bead).questions(),
        verdict=_verdict(trial, doubts),
    )


def _doubts(given: Given, trial: Trial, bead: Bead) -> list[str]:
    """Return what may go wrong with this setting, the worst first."""
    doubts = list(trial.doubts)
    if bead.joint == "square-butt" and ranges.above(trial.thickness, facts.SQUARE_BUTT_IN_DOUBT):
        doubts.append("butt")
    if bead.widened and given.has("leg"):
        doubts.append("leg")
    if ranges.above(bead.arc_energy, facts.MOST_ARC_ENERGY):
        doubts.append("heat")
    if given.word("filler_alloy") == SILICON and given.word("base_alloy") in ("", "5052"):
        doubts.insert(0, "silicon" if given.word("base_alloy") else "alloy")
    return doubts


def _verdict(trial: Trial, doubts: list[str]) -> Verdict | None:
    """Return the first doubt as a warning beside the headline; no doubt is no permission."""
    if not doubts:
        return None
    # Heat that helps steel harms aluminum with much magnesium.
    remedy = "cold-aluminum" if doubts[0] == "cold" and trial.metal == "aluminum" else doubts[0]
    return Verdict("warning", _doubt("settings.doubt.", doubts[0], trial), _doubt("settings.remedy.", remedy, trial))


def _doubt(kind: str, doubt: str, trial: Trial) -> Message:
    return say(
        kind + doubt,
        wanted=Measured(trial.wanted[1], "current", 3),
        current=Measured(trial.current, "current", 3),
        thickness=trial.given.measured("thickness", "joint_size"),
    )


def _results(given: Given, trial: Trial, bead: Bead) -> tuple[object, ...]:
    machine = Machine(given)
    low, high = trial.feeds
    why = say("settings.why.feed", percent=Plain(trial.law.half_band * 100.0, 2))
    dialled = _dialled(trial, machine)
    results: list[object] = [Number("wire_feed_speed", trial.feed, None, low, high, why, in_words=dialled)]
    results += machine.feed_results(trial.feed)
    results.append(_voltage(trial))
    if trial.drop:
        low, high = trial.voltages[0] + trial.drop, trial.voltages[2] + trial.drop
        results.append(
            Number("machine_voltage", trial.voltage + trial.drop, "voltage", low, high, say("settings.why.drop"))
        )
    results += machine.voltage_results(trial.voltage, trial.drop)
    results.append(Words("transfer_mode", say("settings.mode-why." + trial.mode)))
    results.append(_current(given, trial))
    near, _, far = trial.law.usual_distances()
    results.append(
        Number("contact_tip_to_work", trial.distance, None, near, far, say("settings.why.distance"), figures=2)
    )
    results.append(_flow(given, trial))
    results.append(Words("polarity", say("settings.polarity")))
    return tuple(results + _of_bead(trial, bead))


def _dialled(trial: Trial, machine: Machine) -> Message:
    """Return what else is dialled, short enough for the headline, before the marks of the welder's own machine."""
    dialled = say(
        "settings.dial-machine" if trial.drop else "settings.dial-gun",
        voltage=Measured(trial.voltage + trial.drop, "voltage", 3),
        current=Measured(trial.current, "current", 3),
    )
    held = trial.chosen_by()
    if held in ("wire", "machine"):
        dialled = say("settings.dial-most-" + held, dialled=dialled, mode=say("settings.mode." + trial.mode))
    own = machine.words(trial.feed, trial.voltage, trial.drop)
    return dialled if own is None else say("settings.dial-own", own=own, dialled=dialled)


def _voltage(trial: Trial) -> Number:
    low, _, high = trial.voltages
    why = say("settings.why.voltage", mode=say("settings.mode." + trial.mode), gas=_gas_name(trial))
    return Number("voltage", trial.voltage, None, low, high, why)


def _gas_name(trial: Trial) -> Message:
    if trial.gas.word == MIXED:
        percent = Plain(trial.gas.share * 100.0, 2)
        return say("settings.gas-name.mix", argon=Plain(100.0 - trial.gas.share * 100.0, 3), carbon_dioxide=percent)
    return say("settings.option.gas." + trial.gas.word)


def _current(given: Given, trial: Trial) -> Number:
    wanted = Measured(trial.wanted[1], "current", 3)
    why = say("settings.why.current." + trial.chosen_by(), wanted=wanted)
    return Number("current", trial.current, None, trial.currents[0], trial.currents[1], why, figures=3)


def _flow(given: Given, trial: Trial) -> Number:
    kind = trial.mode
    if trial.metal == "aluminum" or trial.gas.word == "helium-mix":
        kind = "aluminum" if trial.metal == "aluminum" else "helium-mix"
    low, usual, high = next(row[1:] for row in facts.FLOWS if row[0] == kind)
    breeze = given.word("wind") == "breeze"
    why = say("settings.why.breeze" if breeze else "settings.why.flow")
    return Number("gas_flow", high if breeze else usual, None, low, high, why, figures=2)


def _of_bead(trial: Trial, bead: Bead) -> list[object]:
    """Return leg, passes, cross-section, travel and heat."""
    found: list[object] = []
    legged = bead.joint in LEGGED and bead.as_drawn
    why = say("settings.why.bead." + ("widened" if bead.widened else "leg" if legged else "groove"))
    one = legged and bead.passes == 1
    if legged:
        low, high = (bead.legs[0], bead.legs[1]) if one else (None, None)
        found.append(Number("leg", bead.sizes["leg"], None, low, high, why, figures=3))
    found.append(Number("passes", float(bead.passes), "count", figures=6))
    if not one:
        low, high = bead.areas
        found.append(Number("bead_area", bead.area, None, low, high, why, figures=3))
    low, high = bead.travels
    found.append(Number("travel_speed", bead.travel, None, low, high, say("settings.why.travel"), figures=3))
    low, high = bead.arc_energies
    found.append(Number("arc_energy", bead.arc_energy, None, low, high, say("settings.why.arc-energy")))
    why = say("settings.why.heat", share=Plain(bead.share, 2))
    found.append(Number("heat_input", bead.heat_input, None, low * bead.share, high * bead.share, why))
    return found


# ---------------------------------------------------------------- working, notes, cautions, next


def _working(given: Given, trial: Trial, bead: Bead) -> tuple[Message, ...]:
    shown = {
        "thickness": given.measured("thickness", "joint_size"),
        "wanted": Measured(trial.wanted[1], "current", 3),
        "current": Measured(trial.current, "current", 3),
        "lowest": Measured(trial.lowest, "current", 3),
        "highest": Measured(trial.highest, "current", 3),
        "mode": say("settings.mode." + trial.mode),
        "distance": Measured(trial.distance, "contact_tip_to_work", 3, "mm"),
        "feed": Measured(trial.feed, "wire_feed_speed", 3),
    }
    lines = [say("settings.working." + line, **shown) for line in ("wanted", "held", "feed")]
    if bead.passes > 1:
        lines.append(say("settings.working.passes", largest=Measured(bead.largest, "leg", 3), passes=bead.passes))
    return tuple(lines)


def _notes(given: Given, trial: Trial, bead: Bead) -> tuple[Message, ...]:
    notes = []
    if "wire_diameter" in given.made:
        notes.append(say("settings.note.wire", diameter=Measured(trial.diameter, "wire_diameter")))
    if not given.word("gas") or "carbon_dioxide" in trial.given.made:
        notes.append(say("settings.note.gas", gas=_gas_name(trial)))
    if "filler_alloy" in given.made:
        notes.append(say("settings.note.filler"))
    if trial.metal == "aluminum" and not trial.law.alloy:
        notes.append(say("settings.note.alloy"))
    if bead.joint in ("square-butt", "single-v"):
        gap = Measured(bead.sizes["root_gap"], "root_gap", 3)
        notes.append(say("settings.note." + bead.joint, gap=gap))
    notes.append(say("settings.note.drop" if not trial.drop else "settings.note.tune"))
    machine = Machine(given)
    return tuple(notes) + machine.voltage_notes(given.has("lead_voltage_drop")) + machine.notes()


def _cautions(given: Given, trial: Trial, doubts: list[str]) -> tuple[Message, ...]:
    cautions = [say("settings.caution.start")]
    for doubt in doubts[1:]:
        cautions.append(say("settings.caution.doubt", doubt=_doubt("settings.doubt.", doubt, trial)))
    if trial.mode == "short-circuit" and trial.metal == "mild-steel":
        cautions.append(say("settings.caution.code"))
    if given.word("surface") != "clean":
        cautions.append(say("settings.caution." + given.word("surface")))
    if given.word("wind") == "breeze":
        cautions.append(say("settings.caution.breeze"))
    if trial.metal != "mild-steel":
        cautions.append(say("settings.caution." + trial.metal))
    if trial.metal == "aluminum" and given.word("base_alloy") in ("", "6061"):
        cautions.append(say("settings.caution.6061"))
    return tuple(cautions) + (say("caution.live"), say("caution.arc"))


# What mends a refusal with one tap: the boxes as they have to be.
_RIGHT: tuple[tuple[str, tuple[tuple[str, str], ...]], ...] = (
    ("4043-on-5083", (("filler_alloy", facts.MAGNESIUM_FILLER),)),
    ("aluminum-gas", (("gas", "argon"),)),
    ("stainless-gas", (("gas", MIXED), ("carbon_dioxide", "2 %"))),
    ("steel-argon", (("gas", MIXED), ("carbon_dioxide", "25 %"))),
    ("steel-helium-mix", (("gas", MIXED), ("carbon_dioxide", "25 %"))),
)

# The same sizes as everywhere else a wire is asked for.
_DIAMETERS = solid_wire.FIELDS[3].presets
_GASES = GAS_FIELDS[0].options
# Folded away: what most jobs leave as it is.
_MORE = (
    Quantity("leg", optional=True, hint=True, when=("joint", LEGGED), presets=("1/8 in", "3/16 in", "1/4 in", "5/16 in", "3 mm", "5 mm", "6 mm")),
    Quantity("root_gap", optional=True, hint=True, when=("joint", ("square-butt", "single-v")), presets=("1/16 in", "3/32 in", "1/8 in", "2 mm", "3 mm")),
    Choice("transfer_mode", ("short-circuit", "globular", "spray", "pulse"), optional=True),
    Quantity("largest_current", "current", optional=True, presets=("90 A", "140 A", "180 A", "210 A", "250 A")),
    Quantity("largest_feed", "wire_feed_speed", optional=True),
    Quantity("least_feed", "wire_feed_speed", optional=True),
    Quantity("largest_voltage", "voltage", optional=True),
    Quantity("least_voltage", "voltage", optional=True),
    Quantity("lead_voltage_drop", optional=True, hint=True, presets=("1 V", "2 V", "4 V")),
)  # fmt: skip

CALCULATOR = Calculator(
    name="settings",
    fields=(
        solid_wire.FIELDS[0],
        Quantity(
            "thickness",
            hint=True,
            low=0.607,  # 24 gauge
            high=100.0,
            presets=("1/16 in", "1/8 in", "3/16 in", "1/4 in", "3/8 in", "1/2 in", "2 mm", "3 mm", "5 mm", "6 mm", "10 mm"),
        ),
        Choice("joint", JOINTS, default="fillet"),
        Choice("position", transfer.EVERY, default="flat"),
        solid_wire.FIELDS[2],
        Quantity("wire_diameter", optional=True, hint=True, presets=_DIAMETERS),
        solid_wire.FIELDS[1],
        Choice("base_alloy", ("1100-3003", "5052", "5083", "6061", "2024-7075"), optional=True, when=("wire_material", ("aluminum",))),
        Choice("gas", _GASES, optional=True),
        GAS_FIELDS[1],
        Choice("surface", ("clean", "rust", "galvanized"), default="clean"),
        Choice("wind", ("still", "breeze", "wind"), default="still"),
    )
    + _MORE
    + machine_fields.FIELDS,
    prepare=_prepare,
    answer=_answer,
    english=ENGLISH,
    sources=settings_sources.ALL,
    place=18,
    fold_from="leg",
    machine=machine_fields.NAMES,
)  # fmt: skip
