"""A calculator of no use to anybody that has every kind of field and every kind of answer.

The tests of the contract, of asking and of parity run on it, so that each kind is tested whether or not a
calculator on the shelf happens to use it. The fixture `specimen` puts it on the shelf, for one test or one module;
the phone's Python gets this very file, so it imports only what the phone has.
"""

from calculators import numerals, ranges
from calculators.contract import (
    UNKNOWN,
    Answer,
    Calculator,
    Card,
    Checklist,
    Choice,
    Countdown,
    Draft,
    Drawing,
    Finding,
    Findings,
    Given,
    Line,
    Measured,
    Message,
    Next,
    Number,
    Plain,
    Quantity,
    Refusal,
    Relation,
    Rows,
    Source,
    Table,
    Text,
    Verdict,
    Words,
    say,
)
from calculators.drawings.paper import Scale

GEOMETRY = Source("Definition of speed", "law")
HABIT = Source("Nobody's habit, for tests", "common practice")


def solve_travel(unknown: str, values: dict[str, float]) -> float:
    """Return the unknown one of weld_length [m], arc_time [s] and travel_speed [m/s]."""
    if unknown == "weld_length":
        return values["travel_speed"] * values["arc_time"]
    if unknown == "arc_time":
        return values["weld_length"] / values["travel_speed"]
    return values["weld_length"] / values["arc_time"]


def solve_wire(unknown: str, values: dict[str, float]) -> float:
    """Return the unknown one of wire_length [m], arc_time [s] and wire_feed_speed [m/s]."""
    if unknown == "wire_length":
        return values["wire_feed_speed"] * values["arc_time"]
    if unknown == "arc_time":
        return values["wire_length"] / values["wire_feed_speed"]
    return values["wire_length"] / values["arc_time"]


def _answer(given: Given) -> Answer:
    length = given.number("weld_length")
    time = given.number("arc_time")
    speed = given.number("travel_speed")
    ranges.require("weld_length", length, 0.002, 500.0, "m")
    ranges.require("distance_between_ends", length * speed, 0.0, 20.0, "m2/s")
    if given.word("position") == "vertical" and given.word("joint") == "fillet" and time > 36000.0:
        raise Refusal("position", say("specimen.refusal.position", arc_time=given.measured("arc_time")))
    headline = given.solved_for or "arc_time"
    numbers = [_banded(given, headline)]
    for name in ("weld_length", "arc_time", "travel_speed", "wire_feed_speed", "wire_length"):
        if name != headline and given.has(name):
            numbers.append(Number(name, given.number(name)))
    posture = Words("posture", say("specimen.posture." + given.word("position")))
    return Answer(
        results=tuple(numbers) + (posture, _parts(given), _suspects(given)) + _to_do(given, time) + (_sketch(given),),
        working=(
            say(
                "specimen.working",
                weld_length=given.measured("weld_length"),
                travel_speed=Measured(speed, "travel_speed", 4, "mm/s"),
                arc_time=Measured(time, "arc_time", 4, "s"),
            ),
        ),
        notes=_notes(given),
        cautions=(say("specimen.caution"), say("caution.arc")),
        sources=(GEOMETRY, HABIT),
        next_questions=(
            Next(
                "specimen",
                say("specimen.next.again"),
                (("weld_length", given.measured("weld_length")), ("joint", given.word("joint"))),
            ),
            Next("heat-input", say("specimen.next.heat"), (("travel_speed", given.measured("travel_speed")),)),
        ),
        verdict=_verdict(given, time),
        machine=(("weld_length", given.measured("weld_length")), ("remark", given.word("remark"))),
        record="specimen",
    )


def _banded(given: Given, name: str) -> Number:
    value = given.number(name)
    return Number(
        name,
        value,
        low=value * 0.9,
        high=value * 1.1,
        band=say("specimen.band"),
        in_words=say("specimen.in-words", tenths=Plain(value * 10.0, 2)),
    )


def _parts(given: Given) -> Table:
    rows: list[tuple[object, ...]] = [
        (say("specimen.part.main"), given.measured("weld_length"), Plain(given.number("arc_time") / 60.0, 3), "1")
    ]
    for row in given.rows("extras"):
        rows.append(
            (
                say("specimen.option.kind." + row.word("kind")),
                row.measured("length", "weld_length"),
                Plain(row.number("length") / given.number("travel_speed") / 60.0, 3),
                row.word("name"),
            )
        )
    heads = ("part", "length", "minutes", "name")
    columns = tuple(say("specimen.column." + head) for head in heads)
    return Table("parts", say("specimen.parts"), columns, tuple(rows))


def _suspects(given: Given) -> Findings:
    items = [Finding(say("specimen.suspect.first"), say("specimen.sure.likely"), say("specimen.why.first"))]
    if given.has("operating_factor"):
        why = say("specimen.why.second", factor=given.measured("operating_factor", "thermal_efficiency"))
        items.append(Finding(say("specimen.suspect.second"), say("specimen.sure.possible"), why))
    return Findings("suspects", say("specimen.suspects"), tuple(items))


def _chores(given: Given) -> Checklist:
    items = [("clean", say("specimen.chore.clean")), ("measure", say("specimen.chore.measure"))]
    if given.has("thickness"):
        items.append(("bevel", say("specimen.chore.bevel", thickness=given.measured("thickness"))))
    return Checklist("chores", say("specimen.chores"), tuple(items), say("specimen.chores.left"))


def _to_do(given: Given, time: float) -> tuple[object, ...]:
    label = say("specimen.wait", length=given.measured("arc_time"))
    letter = say("specimen.letter.text", length=given.measured("weld_length"))
    return (
        _chores(given),
        Countdown("wait", label, time, say("specimen.wait.after")),
        Draft("letter", say("specimen.letter"), letter),
        _slip(given),
    )


def _slip(given: Given) -> Card:
    speed = given.measured("travel_speed")
    leads = Next("heat-input", say("specimen.next.heat"), (("travel_speed", speed),))
    lines = (
        Line("speed", say("specimen.slip.speed"), speed, leads, (("travel_speed", "travel_speed"),)),
        Line("posture", say("specimen.slip.posture"), say("specimen.posture.flat"), state="doubt"),
    )
    return Card("slip", say("specimen.slip"), lines)


def _sketch(given: Given) -> Drawing:
    right = 10 + int(numerals.settle(given.number("weld_length"), 6) * 100.0) % 280
    return Drawing(
        "sketch",
        300,
        100,
        say("specimen.sketch"),
        say("specimen.sketch.description", weld_length=given.measured("weld_length")),
        (
            ("line", (10, 50, right, 50), "mark", None),
            ("area", (10, 60, right, 60, right, 80, 10, 80), "metal", None),
            ("circle", (10, 50, 4), "mark", None),
            ("text", (10, 40), "label", given.measured("weld_length")),
            Scale(say("specimen.slip.speed"), "weld_length", ((0.0, 10), (2.54, 290)), 50).shape(),
        ),
    )


def _notes(given: Given) -> tuple[Message, ...]:
    notes = []
    tip = given.values["contact_tip_to_work"]
    if tip == UNKNOWN:
        notes.append(say("specimen.note.tip-unknown"))
    else:
        notes.append(say("specimen.note.tip", distance=given.measured("contact_tip_to_work")))
    if given.has("pass_count"):
        notes.append(say("specimen.note.passes", count=Plain(given.number("pass_count"), 2)))
    if given.has("metal_temperature"):
        temperature = given.measured("metal_temperature", "cylinder_temperature")
        notes.append(say("specimen.note.temperature", temperature=temperature))
    if given.has("thickness"):
        groove = say("specimen.option.groove." + given.word("groove"))
        notes.append(say("specimen.note.thickness", groove=groove, thickness=given.measured("thickness")))
    if given.has("remark"):
        notes.append(say("specimen.note.remark", remark=given.word("remark")))
    return tuple(notes)


def _verdict(given: Given, time: float) -> Verdict | None:
    if given.word("limit_on") == "length":
        return Verdict("unclear", say("specimen.verdict.unclear"))
    if not given.has("longest_time"):
        return None
    over = numerals.settle(time) > numerals.settle(given.number("longest_time"))
    state = "outside" if over else "inside"
    return Verdict(state, say("specimen.verdict." + state, longest=given.measured("longest_time", "arc_time")))


ENGLISH = {
    "title": "Specimen",
    "found-by": "example",
    "question": "Does every kind of field and answer work?",
    "lead": "Give all but one of length, time and speed.",
    "field.position": "Position",
    "option.position.flat": "Flat",
    "option.position.vertical": "Vertical",
    "field.joint": "Joint",
    "hint.joint": "A butt also needs its thickness.",
    "option.joint.butt": "Butt",
    "option.joint.fillet": "Fillet",
    "field.limit_on": "Limit on",
    "option.limit_on.": "No limit",
    "option.limit_on.time": "Time",
    "option.limit_on.length": "Length",
    "field.groove": "Groove",
    "option.groove.square": "Square",
    "option.groove.vee": "Vee",
    "field.weld_length": "Weld length",
    "hint.weld_length": "Along the seam.",
    "field.arc_time": "Arc time",
    "field.travel_speed": "Travel speed",
    "field.wire_feed_speed": "Wire feed speed",
    "field.wire_length": "Wire length",
    "field.contact_tip_to_work": "Contact tip to work",
    "field.pass_count": "Passes",
    "field.operating_factor": "Operating factor",
    "field.metal_temperature": "Metal temperature",
    "field.thickness": "Thickness",
    "range.thickness": "nobody tests thicker ones",
    "field.longest_time": "Longest time",
    "field.remark": "Remark",
    "field.extras": "More welds",
    "field.kind": "Kind",
    "option.kind.tack": "Tack",
    "option.kind.seam": "Seam",
    "field.length": "Length",
    "field.gap": "Gap",
    "field.name": "Name",
    "result.weld_length": "Weld length",
    "result.arc_time": "Arc time",
    "result.travel_speed": "Travel speed",
    "result.wire_feed_speed": "Wire feed speed",
    "result.wire_length": "Wire length",
    "result.posture": "Posture",
    "posture.flat": "Stand <easy> & look down",
    "posture.vertical": "Kneel",
    "band": "A tenth either way, for tests.",
    "in-words": "or {tenths} tenths",
    "parts": "The welds",
    "part.main": "Main",
    "column.part": "Part",
    "column.length": "Length",
    "column.minutes": "Minutes",
    "column.name": "Name",
    "suspects": "What it could be",
    "suspect.first": "This",
    "suspect.second": "That",
    "sure.likely": "likely",
    "sure.possible": "possible",
    "why.first": "It comes first.",
    "why.second": "Factor {factor}.",
    "chores": "Before the seam",
    "chore.clean": "Clean it <twice>.",
    "chore.measure": "Measure it.",
    "chore.bevel": "Bevel the plate of {thickness}.",
    "chores.left": "Ticks do not clean it.",
    "wait": "Wait {length}",
    "wait.after": "Look again.",
    "letter": "To send",
    "letter.text": "Seam of {length} & more.",
    "slip": "On a slip & pinned",
    "slip.speed": "So fast",
    "slip.posture": "Held",
    "sketch": "The seam",
    "sketch.description": "A line of {weld_length}.",
    "working": "{weld_length} ÷ {travel_speed} = {arc_time}",
    "note.tip": "Tip at {distance}.",
    "note.tip-unknown": "Tip distance not known.",
    "note.passes": "{count} passes.",
    "note.temperature": "Metal at {temperature}.",
    "note.thickness": "{groove}, plate of {thickness}.",
    "note.remark": "You wrote: {remark}",
    "caution": "Do not weld a specimen.",
    "next.again": "Once more",
    "next.heat": "How much heat?",
    "verdict.inside": "No more than {longest}.",
    "verdict.outside": "More than {longest}.",
    "verdict.unclear": "No length limit was given.",
    "refusal.position": "Nobody holds a vertical fillet for {arc_time}",
}

CALCULATOR = Calculator(
    name="specimen",
    fields=(
        Choice("position", ("flat", "vertical"), default="flat"),
        Choice("joint", ("butt", "fillet"), hint=True),
        Choice("limit_on", ("time", "length"), optional=True),
        Choice("groove", ("square", "vee"), default="square", when=("joint", ("butt",))),
        Quantity("weld_length", hint=True, presets=("6 in", "100 mm")),
        Quantity("arc_time", timer=True, kept_with="position"),
        Quantity("travel_speed", presets=("12 in/min",)),
        Quantity("wire_feed_speed", optional=True),
        Quantity("wire_length", optional=True),
        Quantity("contact_tip_to_work", may_be_unknown=True),
        Quantity("pass_count", "ratio", optional=True, whole=True, low=1.0, high=12.0),
        Quantity("operating_factor", "thermal_efficiency", optional=True, presets=("30 %", "0.5")),
        Quantity("metal_temperature", "cylinder_temperature", optional=True, presets=("-5 degC",)),
        Quantity("thickness", when=("joint", ("butt",)), high=50.0),
        Quantity("longest_time", "arc_time", when=("limit_on", ("time",))),
        Rows(
            "extras",
            (
                Choice("kind", ("tack", "seam"), default="tack"),
                Quantity("length", "weld_length"),
                Quantity("gap", "thickness", optional=True, when=("kind", ("seam",))),
                Text("name", longest=20, optional=True, examples=("as found",)),
            ),
            most=3,
        ),
        Text("remark", longest=40, optional=True),
    ),
    relations=(
        Relation(("weld_length", "arc_time", "travel_speed"), solve_travel, check="arc_time"),
        Relation(
            ("wire_length", "wire_feed_speed", "arc_time"),
            solve_wire,
            check="wire_length",
            required=False,
            its_own=("wire_length", "wire_feed_speed"),
        ),
    ),
    answer=_answer,
    english=ENGLISH,
    sources=(GEOMETRY, HABIT),
    place=999,
    fold_from="extras",
    machine=("remark",),
)
