"""The job: what is known from the call, and what it comes to in the order of the work, asked of the other calculators."""

from calculators import machine_fields, shielding_gas, solid_wire
from calculators.contract import Answer, Calculator, Choice, Given, Quantity, Rows, Source, Text, Words, say
from calculators.facts import transfer
from calculators.job_words import ENGLISH

TYPE_CHECKING = False
if TYPE_CHECKING:
    from calculators.job_cards import Cards
    from calculators.job_case import Plan

ASKED = Source("Each line: the question that it opens, by that question's own sources", "common practice")
SUMS = Source("What all joints need is the sum of what each needs; what is left over is what is held less that", "law")

# The joints of Settings.
_JOINTS = ("fillet", "lap", "corner", "square-butt", "single-v")
_GRADES = ("a36-group", "a572-50-group", "a572-65-group", "other")
_ALUMINUM = ("base_metal", ("aluminum",))
_STEEL = ("base_metal", ("mild-steel",))


def _prepare(given: Given) -> None:
    if any(name in given.typed for name in machine_fields.NAMES):
        from calculators.machine import Machine

        Machine(given)  # says at once what of it cannot be read


def _answer(given: Given) -> Answer:
    from calculators.job_cards import Cards
    from calculators.job_case import Plan

    plan = Plan(given)
    cards = Cards(plan)
    totals = [each for each in (plan.wire, plan.gas, plan.time) if each.parts]
    return Answer(
        results=tuple([_standing(plan, cards)] + cards.all),
        working=tuple([say("job.working.asked")] + [each.working() for each in totals]),
        notes=(say("job.note.times"),) if plan.time.parts else (),
        cautions=(say("caution.decides"),),
        sources=(ASKED, SUMS),
        next_questions=(cards.entry(), cards.price()),
        record="job",
    )


def _standing(plan: "Plan", cards: "Cards") -> Words:
    """Return the headline: what stands in the way, the worst of it named; without any, what the job takes."""
    if cards.lines:
        heading, line = cards.lines[0]
        message = say("job.needs", count=len(cards.lines), heading=heading, label=line.label)
    else:
        message = say(
            "job.ready",
            joints=len(plan.joints),
            wire=plan.wire.measured(plan.wire.value),
            gas=plan.gas.measured(plan.gas.value),
        )
    return Words("standing", message)


_HINTED = ("wire_diameter", "lead_voltage_drop")


def _limit(name: str, quantity: str | None = None, *presets: str) -> Quantity:
    return Quantity(name, quantity, optional=True, hint=name in _HINTED, presets=presets)


_PLATES = ("1/8 in", "3/16 in", "1/4 in", "3/8 in", "1/2 in", "3 mm", "5 mm", "6 mm", "10 mm")

CALCULATOR = Calculator(
    name="job",
    fields=(
        Text("title", hint=True),
        Text("broken", longest=200, optional=True),
        Choice("base_metal", ("mild-steel", "stainless", "aluminum", "cast-iron", "unknown"), optional=True),
        Choice("grade", _GRADES, optional=True, when=_STEEL),
        Choice("base_alloy", ("1100-3003", "5052", "5083", "6061", "2024-7075"), optional=True, when=_ALUMINUM),
        Choice("coating", ("none", "galvanized", "painted", "plated", "oily", "unknown"), optional=True),
        Rows(
            "joints",
            (
                Text("name", longest=40, optional=True),
                Choice("joint", _JOINTS, default="fillet"),
                Quantity("thickness", optional=True, hint=True, presets=_PLATES, may_be_unknown=True),
                Quantity("weld_length", optional=True, presets=("6 in", "12 in", "150 mm", "300 mm")),
                Choice("position", transfer.EVERY, default="flat"),
                Quantity("leg", optional=True, hint=True, when=("joint", ("fillet", "lap")), presets=("1/8 in", "3/16 in", "1/4 in", "3 mm", "5 mm")),
            ),
            most=4,
        ),
        Choice("access", ("open", "cramped", "height", "inside"), default="open"),
        Choice("power", ("none", "mains-120", "mains-240", "generator"), optional=True),
        Choice("wind", ("still", "breeze", "wind"), default="still"),
        Choice("job_kind", ("machine", "trailer", "vehicle", "tank", "structure"), optional=True),
        Choice("work_on", ("open", "hollow", "container", "rim"), optional=True, hint=True),
        Choice("held", ("burns", "unknown", "water"), optional=True, when=("work_on", ("container",)), hint=True),
        Choice("where", ("indoors", "outdoors", "vehicle"), optional=True),
        Text("site_rules", longest=200, optional=True),
        _limit("wire_diameter", None, *solid_wire.PRESETS),
        Choice("filler_alloy", ("4043", "5356", "5183"), optional=True, when=_ALUMINUM),
        Choice("gas", shielding_gas.FIELDS[0].options, optional=True),
        shielding_gas.FIELDS[1],
        _limit("spool_left", "wire_mass", "10 lb", "5 kg"),
        _limit("gas_left", "gas_volume", "80 ft3", "2000 L"),
        _limit("generator_power", None, "5500 W", "7500 W", "8 kVA"),
        _limit("largest_current", "current", "140 A", "180 A", "210 A"),
        _limit("largest_feed", "wire_feed_speed"),
        _limit("least_feed", "wire_feed_speed"),
        _limit("largest_voltage", "voltage"),
        _limit("least_voltage", "voltage"),
        _limit("lead_voltage_drop"),
        Text("customer", optional=True),
        Text("place", longest=120, optional=True),
        Quantity("thickest", "thickness", optional=True, hint=True, low=1.0),
        Quantity("carbon_equivalent", optional=True, when=_STEEL, low=0.05, high=1.0),
        Text("wps", optional=True),
        Text("welder", optional=True),
        Text("qualification", optional=True),
        Text("qualified_until", longest=20, optional=True),
        Text("not_done", longest=200, optional=True),
    )
    + machine_fields.FIELDS,
    prepare=_prepare,
    answer=_answer,
    english=ENGLISH,
    sources=(ASKED, SUMS),
    place=-10,
    folds=("access", "wire_diameter", "customer"),
    machine=machine_fields.NAMES,
)  # fmt: skip
