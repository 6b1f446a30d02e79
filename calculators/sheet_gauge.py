"""Sheet gauge: how thick a gauge number is in this metal, or which gauge a measured thickness is."""

from calculators import gauge_tables, numerals, units
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
    Verdict,
    Words,
    say,
)
from calculators.density_sources import GERE, STAINLESS, STEEL_AND_IRON
from calculators.facts import densities, usual_wire
from calculators.facts import gauges as facts

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

_INCH = units.factor_of("in")
_TEN_THOUSANDTH = 0.0001 * _INCH  # the last digit shown: up to half of it is no difference
_PLATE = 0.25 * _INCH

# One ampere for each thousandth of an inch of steel, up to 3/16 in: common practice. Below 0.030 in the sum
# gives less than an arc on the thinnest wire holds.
_AMPERES_PER_METRE = 1000.0 / _INCH
_THINNEST_FOR_CURRENT = 0.030 * _INCH
_THICKEST_FOR_CURRENT = 0.1875 * _INCH

LAW = Source("15 U.S.C. 206, standard gauge for sheet and plate iron and steel (Act of March 3, 1893)", "law")
MANUFACTURERS_STANDARD = Source(
    "Manufacturers' Standard Gauge for Sheet Steel: the law's weights at 41.82 lb/ft² for each inch", "published"
)
GALVANIZED_GAGE = Source("Galvanized Sheet Gage: the bare gauge and 2.5 oz/ft² of zinc, 8 to 30 gauge", "published")
ASTM_B258 = Source(
    "ASTM B258, American Wire (Brown & Sharpe) Gauge; edition not at hand, equal to the Machinery's Handbook table",
    "standard",
)
HANDBOOK = Source("Machinery's Handbook, wire gauges: Birmingham (Stubs') gauge, the wall of tubing", "published")
MILL_TOLERANCE = Source(
    "Lists made from the ASTM tables for carbon steel sheet: Engineers Edge, Mechanical Steel Sheet Mechanical"
    " Tolerances; Steel Market Update, Cold-Rolled Sheet Thickness Tolerances",
    "published",
)
SECOND_LIST = Source("A second list of stainless gauges that suppliers sell by", "common practice")
PLATE_BY_FRACTION = Source("Plate of 1/4 in and more is sold by the fraction", "common practice")
AMPERE_RULE = Source("1 A for each 0.001 in of steel, up to 3/16 in", "common practice")

_SOURCES_OF = (
    ("steel", (MANUFACTURERS_STANDARD, LAW, MILL_TOLERANCE)),
    ("galvanized", (GALVANIZED_GAGE, MANUFACTURERS_STANDARD, LAW, MILL_TOLERANCE)),
    ("stainless", (LAW, SECOND_LIST, STAINLESS)),
    ("aluminum", (ASTM_B258, GERE)),
    ("tube", (HANDBOOK, STEEL_AND_IRON)),
)


# ---------------------------------------------------------------- what is asked about


class _Sheet:
    """The metal in hand: its list, its gauge, that gauge's nominal thickness and, if there is one, the reading."""

    def __init__(self, given: Given) -> None:
        self.system = given.word("gauge_system")
        self.gauge = int(given.number("gauge"))
        self.thickness = given.number("thickness")
        self.measured = given.solved_for != "thickness"
        self.unit = given.units.get("thickness")
        self.nominal = gauge_tables.thickness_of_gauge(self.system, self.gauge)
        self.tolerance = gauge_tables.mill_tolerance(self.system, self.gauge)
        self.difference = self.thickness - self.nominal
        self.metal = say("sheet-gauge.metal." + self.system)
        self.zinc = 0.0
        if self.system == "galvanized":
            self.zinc = self.nominal - gauge_tables.thickness_of_gauge("steel", self.gauge)
        self.rows: tuple[tuple[int, float, float], ...] = ()
        self.within: tuple[int, ...] = ()
        if self.measured:
            lowest, highest = gauge_tables.gauge_range(self.system)
            self.rows = gauge_tables.nearest_gauges(self.system, self.thickness, highest - lowest + 1)
            self.within = gauge_tables.gauges_within_tolerance(self.system, self.thickness)

    def shown(self, thickness: float) -> Measured:
        """Return a thickness in the unit that the reading was typed in."""
        return Measured(thickness, "thickness", None, self.unit)


def _solve(unknown: str, values: "dict[str, Any]") -> float:
    """Return the thickness of the gauge, or the gauge nearest to the thickness, in the list of the metal."""
    if unknown == "thickness":
        return gauge_tables.thickness_of_gauge(values["gauge_system"], values["gauge"])
    return float(gauge_tables.nearest_gauges(values["gauge_system"], values["thickness"], 1)[0][0])


# ---------------------------------------------------------------- the answer


def _answer(given: Given) -> Answer:
    sheet = _Sheet(given)
    results: list[object] = []
    if given.solved_for == "gauge":
        results += [_nearest(sheet)] + _also_possible(sheet) + [_reading(sheet), _nominal(sheet, "nominal_thickness")]
    else:
        results.append(_nominal(sheet, "thickness"))
    if given.solved_for is None:
        results += [_nearest(sheet)] + _also_possible(sheet) + [_reading(sheet)]
    results.append(_weight(sheet))
    current = _starting_current(sheet)
    if current is not None:
        results.append(Number("current", current, figures=2, in_words=say("sheet-gauge.current.rule")))
    results.append(_neighbours(sheet) if sheet.measured else _every_list(sheet.gauge))
    return Answer(
        results=tuple(results),
        working=_working(sheet, given),
        notes=_notes(sheet),
        cautions=_cautions(sheet),
        sources=_sources(sheet, current),
        next_questions=_next(sheet, current),
        verdict=_verdict(sheet) if given.solved_for is None else None,
    )


def _nominal(sheet: _Sheet, name: str) -> Number:
    """Return the thickness that the gauge stands for, with what a mill may deliver."""
    tolerance = sheet.tolerance
    return Number(
        name,
        sheet.nominal,
        "thickness",
        low=None if tolerance is None else sheet.nominal - tolerance,
        high=None if tolerance is None else sheet.nominal + tolerance,
        band=say("sheet-gauge.band.mill"),
        label=say("sheet-gauge.label.nominal", gauge=sheet.gauge, metal=sheet.metal),
        # Beside a typed thickness the verdict takes this room.
        in_words=None if sheet.measured and name == "thickness" else _fraction(sheet, sheet.nominal),
    )


def _nearest(sheet: _Sheet) -> Number:
    gauge, nominal, difference = sheet.rows[0]
    why = say("sheet-gauge.nearest", far=_far(sheet, difference), nominal=sheet.shown(nominal))
    return Number("gauge", float(gauge), label=say("sheet-gauge.label.nearest", metal=sheet.metal), in_words=why)


def _reading(sheet: _Sheet) -> Words:
    """Return the thickness as it was understood, so that a slip of the thumb shows."""
    return Words(
        "reading",
        say(
            "sheet-gauge.reading",
            inches=Measured(sheet.thickness, "thickness", None, "in"),
            millimetres=Measured(sheet.thickness, "thickness", None, "mm"),
            fraction=_fraction(sheet, sheet.thickness),
        ),
    )


def _also_possible(sheet: _Sheet) -> list[Words]:
    """Return the other gauges that a mill may have rolled to this thickness, if any."""
    listed: Message | None = None
    joint = "list.or"
    for gauge, nominal, _ in reversed(sheet.rows[1:]):
        if gauge in sheet.within:
            rolled = "sheet-gauge.rolled.thick" if nominal < sheet.thickness else "sheet-gauge.rolled.thin"
            one = say(rolled, gauge=gauge)
            if listed is None:
                listed = one
            else:
                listed = say(joint, first=one, rest=listed)
                joint = "list.comma"
    return [] if listed is None else [Words("also_possible", listed)]


def _weight(sheet: _Sheet) -> Number:
    mass = gauge_tables.mass_per_area_of_gauge(sheet.system, sheet.gauge)
    id = "sheet-gauge.label.weight-of-tube" if sheet.system == "tube" else "sheet-gauge.label.weight"
    return Number("mass_per_area", mass, label=say(id, gauge=sheet.gauge))


def _starting_current(sheet: _Sheet) -> float | None:
    """Return the current that the thumb rule starts from, [A]; only for steel, and where the rule is used."""
    if sheet.system not in ("steel", "galvanized"):
        return None
    steel = numerals.settle(sheet.thickness - sheet.zinc)
    if steel < numerals.settle(_THINNEST_FOR_CURRENT) or steel > numerals.settle(_THICKEST_FOR_CURRENT):
        return None
    return numerals.settle(steel * _AMPERES_PER_METRE, 2)


def _verdict(sheet: _Sheet) -> Verdict:
    """Return whether the gauge and the thickness, both given, belong together."""
    if _is_nothing(sheet.difference):
        return Verdict("inside", say("sheet-gauge.verdict.same", gauge=sheet.gauge))
    nearest = sheet.rows[0][0]
    if sheet.gauge in sheet.within:
        state, found = ("inside", "deliverable") if sheet.gauge == nearest else ("unclear", "deliverable-but-nearer")
    else:
        state, found = ("unclear", "nearest") if sheet.gauge == nearest else ("outside", "other")
    return Verdict(
        state,
        say(
            "sheet-gauge.verdict." + found,
            far=_far(sheet, sheet.difference),
            gauge=sheet.gauge,
            percent=Plain(abs(sheet.difference) / sheet.nominal * 100.0, 2),
            nearest=nearest,
        ),
    )


def _neighbours(sheet: _Sheet) -> Table:
    """Return the nearest gauge, the ones beside it, the one asked about and all that a mill may have rolled so."""
    kept = sheet.within + (sheet.gauge,)
    near = [row for row in sheet.rows if abs(row[0] - sheet.rows[0][0]) <= 1 or row[0] in kept]
    columns = ("sheet-gauge.column.gauge", "sheet-gauge.column.reading", "sheet-gauge.column.thickness")
    cells = [(str(gauge), _far(sheet, off), sheet.shown(nominal)) for gauge, nominal, off in sorted(near)]
    return Table("neighbours", say("sheet-gauge.neighbours"), tuple(say(id) for id in columns), tuple(cells))


def _every_list(gauge: int) -> Table:
    """Return what the same number means in each metal: the commonest mistake with gauges."""
    rows = []
    for system in gauge_tables.GAUGE_SYSTEMS:
        lowest, highest = gauge_tables.gauge_range(system)
        cells: list[object] = [say("sheet-gauge.not-listed"), say("sheet-gauge.not-listed")]
        if lowest <= gauge <= highest:
            thickness = gauge_tables.thickness_of_gauge(system, gauge)
            cells = [Measured(thickness, "thickness", None, unit) for unit in ("in", "mm")]
        rows.append((say("sheet-gauge.option.gauge_system." + system), cells[0], cells[1]))
    columns = ("sheet-gauge.column.metal", "sheet-gauge.column.us", "sheet-gauge.column.metric")
    caption = say("sheet-gauge.every-list", gauge=gauge)
    return Table("every_list", caption, tuple(say(id) for id in columns), tuple(rows))


def _is_nothing(difference: float) -> bool:
    return numerals.settle(abs(difference)) <= numerals.settle(_TEN_THOUSANDTH / 2)


def _far(sheet: _Sheet, difference: float) -> Message:
    """Return words that read on into a thickness: `0.0012 in over`, `the same as`."""
    if _is_nothing(difference):
        return say("sheet-gauge.far.same")
    id = "sheet-gauge.far.over" if difference > 0 else "sheet-gauge.far.under"
    return say(id, difference=sheet.shown(abs(difference)))


def _fraction(sheet: _Sheet, thickness: float) -> Message:
    """Return a thickness against the nearest fraction of an inch."""
    text, difference = gauge_tables.nearest_fraction(thickness)
    if _is_nothing(difference):
        return say("sheet-gauge.fraction.is", fraction=text)
    return say("sheet-gauge.fraction.off", far=_far(sheet, difference), fraction=text)


# ---------------------------------------------------------------- working, notes, cautions, sources, next


def _working(sheet: _Sheet, given: Given) -> tuple[Message, ...]:
    inches = Measured(sheet.nominal, "thickness", None, "in")
    millimetres = Measured(sheet.nominal, "thickness", None, "mm")
    ounces = dict(facts.OUNCES_PER_SQUARE_FOOT)[sheet.gauge]
    how = say("sheet-gauge.working." + sheet.system, gauge=sheet.gauge, ounces=ounces, inches=inches)
    lines = [how, say("sheet-gauge.working.metric", inches=inches, millimetres=millimetres)]
    if sheet.measured:
        number, _ = numerals.split_unit(given.typed["thickness"])
        id = "sheet-gauge.working.reading-fraction" if "/" in number else "sheet-gauge.working.reading"
        reading = Measured(sheet.thickness, "thickness", None, "in")
        metric = Measured(sheet.thickness, "thickness", None, "mm")
        typed = number + " " + given.units["thickness"]
        lines.insert(0, say(id, typed=typed, inches=reading, millimetres=metric))
        id = "sheet-gauge.working.over" if sheet.difference >= 0 else "sheet-gauge.working.under"
        off = Measured(abs(sheet.difference), "thickness", None, "in")
        lines.append(say(id, thickness=reading, nominal=inches, difference=off))
    lines.append(_working_of_weight(sheet, ounces, millimetres))
    return tuple(lines)


def _working_of_weight(sheet: _Sheet, ounces: int, millimetres: Measured) -> Message:
    mass = gauge_tables.mass_per_area_of_gauge(sheet.system, sheet.gauge)
    metric = Measured(mass, "mass_per_area", None, "kg/m2")
    for name, density in densities.GAUGES:
        if name == sheet.system:
            return say("sheet-gauge.working.density", thickness=millimetres, density=Plain(density, 4), mass=metric)
    id = "sheet-gauge.working.weight-with-zinc" if sheet.zinc else "sheet-gauge.working.weight"
    return say(id, ounces=ounces, mass=Measured(mass, "mass_per_area", None, "lb/ft2"), metric=metric)


def _notes(sheet: _Sheet) -> tuple[Message, ...]:
    notes = []
    if sheet.measured:
        nearest, _, least = sheet.rows[0]
        second, _, next_least = sheet.rows[1]
        if numerals.settle(abs(least)) == numerals.settle(abs(next_least)):
            notes.append(say("sheet-gauge.note.tie", thick=nearest, thin=second))
        if nearest not in sheet.within and gauge_tables.mill_tolerance(sheet.system, nearest) is not None:
            notes.append(say("sheet-gauge.note.outside-mill", gauge=nearest))
    if _is_plate(sheet):
        notes.append(say("sheet-gauge.note.plate"))
    if sheet.system == "galvanized":
        notes.append(say("sheet-gauge.note.zinc", zinc=sheet.shown(sheet.zinc)))
    if sheet.system == "stainless":
        notes += _second_list(sheet)
    if sheet.tolerance is None:
        notes.append(say("sheet-gauge.note.no-tolerance", gauge=sheet.gauge, metal=sheet.metal))
    return tuple(notes)


def _second_list(sheet: _Sheet) -> list[Message]:
    """Return what the second list of stainless gauges says to the same question."""
    if sheet.measured:
        distances = []
        for gauge, inches in facts.SECOND_STAINLESS_INCHES:
            distances.append((numerals.settle(abs(inches * _INCH - sheet.thickness)), gauge, inches * _INCH))
        _, gauge, second = sorted(distances)[0]
        return [say("sheet-gauge.note.second-list-nearest", gauge=gauge, thickness=sheet.shown(second))]
    listed = gauge_tables.second_stainless_thickness(sheet.gauge)
    if listed is None:
        return []
    return [say("sheet-gauge.note.second-list", gauge=sheet.gauge, thickness=sheet.shown(listed))]


def _is_plate(sheet: _Sheet) -> bool:
    return numerals.settle(sheet.thickness) >= numerals.settle(_PLATE)


def _cautions(sheet: _Sheet) -> tuple[Message, ...]:
    cautions = [say("sheet-gauge.caution.zinc")] if sheet.system == "galvanized" else []
    if sheet.measured:
        how = sheet.system if sheet.system in ("galvanized", "tube") else "bare"
        cautions.append(say("sheet-gauge.caution.measure." + how))
    cautions.append(say("sheet-gauge.caution.order"))
    return tuple(cautions)


def _sources(sheet: _Sheet, current: float | None) -> tuple[Source, ...]:
    sources: tuple[Source, ...] = dict(_SOURCES_OF)[sheet.system]
    if _is_plate(sheet):
        sources += (PLATE_BY_FRACTION,)
    return sources if current is None else sources + (AMPERE_RULE,)


def _next(sheet: _Sheet, current: float | None) -> tuple[Next, ...]:
    questions = []
    material = "mild-steel" if sheet.system in ("steel", "galvanized") else sheet.system
    metal = sheet.thickness - sheet.zinc  # what is left to weld when the zinc is ground off
    if material in ("mild-steel", "stainless") and usual_wire.THINNEST <= numerals.settle(metal) <= usual_wire.THICKEST:
        carried: tuple[tuple[str, object], ...] = (("wire_material", material), ("thickness", sheet.shown(metal)))
        if sheet.system == "galvanized":
            carried += (("surface", "galvanized"),)
        questions.append(Next("settings", say("sheet-gauge.next.settings"), carried))
    if current is not None:
        shown = Measured(current, "current", 2)
        carried = (("wire_material", "mild-steel"), ("current", shown))
        questions.append(Next("wire-feed", say("sheet-gauge.next.current", current=shown), carried))
    elif sheet.system in ("stainless", "aluminum"):
        wire = (("wire_material", sheet.system),)
        questions.append(Next("wire-feed", say("sheet-gauge.next." + sheet.system), wire))
    if sheet.system in ("steel", "stainless", "aluminum"):
        material = "carbon-steel" if sheet.system == "steel" else sheet.system
        thickness = sheet.shown(sheet.thickness)
        piece = (("shape", "plate"), ("material", material), ("thickness", thickness))
        questions.append(Next("part-weight", say("sheet-gauge.next.part-weight"), piece))
    return tuple(questions)


ENGLISH = {
    "title": "Sheet gauge",
    "question": "How thick is this gauge, or what gauge is this?",
    "found-by": "gage ga gauges sheet metal thin plate tube wall caliper decimal fraction mm galvanized",
    "lead": "Choose the metal, then give the gauge or the thickness. Give both to check them.",
    "field.gauge_system": "Metal",
    "hint.gauge_system": "One gauge number is a different thickness in each.",
    "option.gauge_system.steel": "Bare steel",
    "option.gauge_system.galvanized": "Galvanized",
    "option.gauge_system.stainless": "Stainless",
    "option.gauge_system.aluminum": "Aluminum",
    "option.gauge_system.tube": "Tube wall",
    "field.gauge": "Gauge number",
    "range.gauge": "the list of this metal has no others",
    "field.thickness": "Thickness",
    "hint.thickness": "As measured. A fraction of an inch works: 3/16.",
    "range.thickness": "thinner or thicker has no gauge. Plate is sold by the fraction",
    "metal.steel": "bare steel sheet",
    "metal.galvanized": "galvanized sheet",
    "metal.stainless": "stainless sheet",
    "metal.aluminum": "aluminum sheet",
    "metal.tube": "tube wall",
    "label.nominal": "{gauge} gauge {metal}",
    "label.nearest": "Nearest gauge, {metal}",
    "label.weight": "Weight of {gauge} gauge",
    "label.weight-of-tube": "Weight of {gauge} gauge wall laid flat, if carbon steel",
    "result.reading": "Your reading",
    "result.also_possible": "Could also be",
    "result.current": "Current to start from",
    "band.mill": "Widest a mill may deliver; it varies with the width of the sheet.",
    "fraction.is": "{fraction}\u00a0in",
    "fraction.off": "{far} {fraction}\u00a0in",
    "far.over": "{difference} over",
    "far.under": "{difference} under",
    "far.same": "the same as",
    "nearest": "Your reading is {far} its {nominal}.",
    "reading": "{inches}, {millimetres}, {fraction}",
    "rolled.thick": "{gauge} gauge rolled thick",
    "rolled.thin": "{gauge} gauge rolled thin",
    "current.rule": "Common practice: 1 A for each 0.001 in. Try it on scrap; the procedure (WPS) rules.",
    "verdict.same": "They agree: your reading is {gauge} gauge.",
    "verdict.deliverable": "They agree: your reading is {far} {gauge} gauge ({percent} %), and a mill may deliver that.",
    "verdict.deliverable-but-nearer": "A mill may deliver {gauge} gauge like this: your reading is {far} it ({percent} %). But it is nearer {nearest} gauge.",
    "verdict.nearest": "{gauge} is the nearest gauge, but your reading is {far} it ({percent} %), and no mill tolerance here covers that.",
    "verdict.other": "They do not agree: your reading is {far} {gauge} gauge ({percent} %). It is nearest {nearest} gauge.",
    "neighbours": "Gauges near your reading",
    "column.gauge": "Gauge",
    "column.reading": "You read",
    "column.thickness": "It is",
    "every-list": "{gauge} gauge is five thicknesses",
    "column.metal": "Metal",
    "column.us": "US",
    "column.metric": "Metric",
    "not-listed": "no such gauge",
    "working.reading": "Your reading = {inches} = {millimetres}",
    "working.reading-fraction": "Your reading = {typed} = {inches} = {millimetres}",
    "working.steel": "{gauge} gauge is {ounces} oz/ft² by law. Thickness = {ounces} ÷ 16 ÷ 41.82 = {inches}",
    "working.galvanized": "{gauge} gauge is {ounces} oz/ft² by law, and 2.5 of zinc. Thickness = ({ounces} + 2.5) ÷ 16 ÷ 41.82 = {inches}",
    "working.stainless": "{gauge} gauge is {ounces} oz/ft² of iron by law. Thickness = {ounces} ÷ 640 = {inches}",
    "working.aluminum": "Thickness = 0.005 × 92^((36 − {gauge}) ÷ 39) = {inches}",
    "working.tube": "{gauge} gauge in the Birmingham table = {inches}",
    "working.metric": "{inches} × 25.4 mm/in = {millimetres}",
    "working.over": "Reading − gauge thickness = {thickness} − {nominal} = {difference}",
    "working.under": "Gauge thickness − reading = {nominal} − {thickness} = {difference}",
    "working.density": "Weight = thickness × density = {thickness} × {density} kg/m³ = {mass}",
    "working.weight": "Weight = {ounces} ÷ 16 = {mass} = {metric}. A piece equally thick all over weighs 2.5 % less.",
    "working.weight-with-zinc": "Weight = ({ounces} + 2.5) ÷ 16 = {mass} = {metric}. A piece equally thick all over weighs 2.5 % less.",
    "note.tie": "Half way between {thick} and {thin} gauge: the thicker is named.",
    "note.outside-mill": "That is further from {gauge} gauge than a mill may deliver it. Measure again, or it was not sold by gauge.",
    "note.plate": "From 1/4 in up, metal is sold as plate, by the fraction and not by gauge (common practice).",
    "note.zinc": "The zinc counts, {zinc} for both sides together. Some duct lists give the sheet without it.",
    "note.second-list": "Some suppliers sell stainless by a second list: {gauge} gauge is {thickness} there. Ask which.",
    "note.second-list-nearest": "Some suppliers sell stainless by a second list: your reading is nearest {gauge} gauge there, {thickness}.",
    "note.no-tolerance": "How far a mill may be off {gauge} gauge {metal} is not in this book.",
    "caution.zinc": "Zinc fume makes you ill. Strip the zinc from both sides before welding, keep your head out of the fume and ventilate.",
    "caution.measure.bare": "Measure bare metal: paint, zinc, scale and burr off, and away from a rolled edge.",
    "caution.measure.galvanized": "Measure with the zinc on and the paint off: this list counts the zinc.",
    "caution.measure.tube": "Measure the wall at a cut end: burr, weld seam, paint and zinc off.",
    "caution.order": "Order stainless and structural work by thickness, not by gauge. The drawing rules.",
    "next.settings": "Where do I set the machine for it?",
    "next.current": "What wire feed gives about {current}, the common-practice start?",
    "next.stainless": "What wire feed for stainless wire?",
    "next.aluminum": "What wire feed for aluminum wire?",
    "next.part-weight": "What does a sheet of it weigh?",
}

CALCULATOR = Calculator(
    name="sheet-gauge",
    fields=(
        Choice("gauge_system", gauge_tables.GAUGE_SYSTEMS, hint=True),
        Quantity("gauge", whole=True, presets=("10", "11", "12", "14", "16", "18", "20", "22", "24")),
        # A little beyond the ends of all lists; the list of the metal narrows it.
        Quantity("thickness", hint=True, low=0.2, high=7.0, presets=("1/16 in", "1/8 in", "3/16 in", "1/4 in")),
    ),
    # Not checked by the share they differ by: the answer says whether a mill may deliver the difference.
    relations=(Relation(("gauge", "thickness"), _solve, check="", also=("gauge_system",)),),
    answer=_answer,
    english=ENGLISH,
    sources=(
        LAW,
        MANUFACTURERS_STANDARD,
        GALVANIZED_GAGE,
        ASTM_B258,
        HANDBOOK,
        MILL_TOLERANCE,
        STEEL_AND_IRON,
        STAINLESS,
        GERE,
        SECOND_LIST,
        PLATE_BY_FRACTION,
        AMPERE_RULE,
    ),
    place=10,
)
