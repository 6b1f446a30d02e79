"""Part weight: what pieces of plate, bar, pipe, tube, angle or channel weigh, or what else their weight tells."""

import math

from calculators import numerals, part_mass, pipe_sizes
from calculators.contract import (
    Answer,
    Calculator,
    Choice,
    Drawing,
    Given,
    Measured,
    Message,
    Next,
    Number,
    Plain,
    Quantity,
    Relation,
    Source,
    Words,
    carry,
    say,
)
from calculators.density_sources import GERE, STAINLESS, STEEL_AND_IRON
from calculators.drawings import part_section as drawing
from calculators.facts import densities, part_tolerances
from calculators.part_section import SHAPES, SIZES_OF, Section
from calculators.part_weight_words import ENGLISH
from calculators.sections import sharp_tube_area

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

GEOMETRY = Source("Geometry of the section; definition of density", "law")
B36_10 = Source(
    "ASME B36.10M and B36.19M, pipe sizes and walls; edition not at hand, by way of a public table and copies of ASTM A53",
    "standard",
)
A53 = Source("ASTM A53, weight of pipe within 10 %; copies seen, edition not known", "standard")
EN_10219 = Source("EN 10219-2, area with round corners, outside radius twice the wall up to 6 mm", "from memory")
A500 = Source("ASTM A500, wall of tube within 10 %", "from memory")
A6 = Source("ASTM A6, weight of shapes within 2.5 %", "from memory")
SPREAD = Source("How far alloys of one kind differ in density", "from memory")

_METALS = tuple(row[0] for row in densities.PARTS)
_DENSITY_SOURCES = (
    ("carbon-steel", (STEEL_AND_IRON,)),
    ("cast-iron", (STEEL_AND_IRON, GERE)),
    ("stainless", (STAINLESS, SPREAD)),
    ("other", ()),
)
# Shapes whose pieces have a tolerance here: (shape, tolerance, sentence, sources).
_TOLERANCES = (
    ("pipe", part_tolerances.PIPE, "pipe", (A53,)),
    ("round-tube", part_tolerances.HOLLOW, "hollow", (A500,)),
    ("rectangular-tube", part_tolerances.HOLLOW, "hollow", (A500,)),
    ("sharp-tube", part_tolerances.HOLLOW, "hollow", (A500,)),
    ("angle", part_tolerances.ROLLED, "rolled", (A6,)),
    ("channel", part_tolerances.ROLLED, "rolled", (A6,)),
)
_RELATED = ("part_length", "piece_count", "density", "total_mass")
_SIZES = tuple(sorted({name for _, names in SIZES_OF for name in names}))
# What every list of the gauge question holds: 30 to 3 gauge.
_THINNEST_GAUGE, _THICKEST_GAUGE = 0.32e-3, 5.8e-3
_SHAPING = ("shape", "corner_radius", "pipe_size", "pipe_schedule")


# ---------------------------------------------------------------- the question


def _prepare(given: Given) -> None:
    if given.word("material") != "other":
        given.fill("density", part_mass.metal_density(given.word("material"))[0])
    blanks = [name for name in ("part_length", "density", "total_mass") if not given.has(name)]
    # With all the others given, the number of pieces is the one blank.
    if blanks and not given.has("piece_count"):
        given.fill("piece_count", 1.0)


def _solve(unknown: str, values: "dict[str, Any]") -> float:
    numbers = {name: values[name] for name in _RELATED if name in values}
    numbers["section_area"] = Section(values).area
    return part_mass.solve_total_mass(unknown, numbers)


# ---------------------------------------------------------------- the answer


class _Part:
    """The pieces asked about: their section, and what one and all of them weigh."""

    def __init__(self, given: Given) -> None:
        self.given = given
        self.section = Section(given.values)
        self.material = given.word("material")
        self.density = given.number("density")
        self.count = given.number("piece_count")
        self.length = given.number("part_length")
        self.per_length = self.section.area * self.density
        self.reckoned = part_mass.total_mass(self.section.area, self.density, self.length, self.count)
        self.unknown = given.solved_for or "total_mass"

    def tolerance(self) -> tuple[float, float, str, tuple[Source, ...]]:
        """Return how far the weight may be off below and above, why, and who says so."""
        low, high, why = 0.0, 0.0, ""
        sources: tuple[Source, ...] = ()
        for shape, shares, name, theirs in _TOLERANCES:
            # The standards named are for steel.
            if shape == self.section.shape and self.material == "carbon-steel":
                low, high, why, sources = shares[0], shares[1], name, theirs
        if self.material != "other":
            density, least, most = part_mass.metal_density(self.material)
            if most > least:
                low, high, why = 1.0 - least / density, most / density - 1.0, "metal"
        return low, high, why, sources


def _answer(given: Given) -> Answer:
    part = _Part(given)
    return Answer(
        results=_results(part),
        working=_working(part),
        notes=_notes(part),
        cautions=tuple(say("part-weight.caution." + id) for id in ("scale", "rigging", "balance", "under")),
        sources=_sources(part),
        next_questions=_next(part),
    )


def _results(part: _Part) -> tuple[object, ...]:
    given, section = part.given, part.section
    mass = _mass(part, "total_mass", part.reckoned)
    results: list[object] = [mass]
    if part.unknown == "part_length":
        results.insert(0, Number("part_length", part.length))
    elif part.unknown == "piece_count":
        results.insert(0, Number("piece_count", part.count, in_words=_whole_pieces(part.count)))
    elif part.unknown == "density":
        results = [Number("density", part.density), Words("closest_metal", _closest(part.density)), mass]
    if numerals.settle(part.count) != 1.0:
        results.append(_mass(part, "piece_mass", part.reckoned / part.count))
    results.append(Number("mass_per_length", part.per_length))
    results.append(Number("section_area", section.area))
    if section.shape == "pipe":
        results.append(Number("diameter", section.sizes["diameter"], "part_size"))
        results.append(Number("wall", section.sizes["wall"], "part_size"))
    balance = section.balance()
    if balance is not None and section.shape == "angle":
        results.append(Number("balance_from_first_leg", balance[0], "part_size", figures=3))
        results.append(Number("balance_from_second_leg", balance[1], "part_size", figures=3))
    elif balance is not None:
        results.append(Number("balance_from_web", balance[0], "part_size", figures=3))
    return tuple(results) + (_drawing(section, given.units),)


def _mass(part: _Part, name: str, mass: float) -> Number:
    low, high, why, _ = part.tolerance()
    if not why:
        return Number(name, mass, "total_mass")
    band = say("part-weight.band." + why)
    return Number(name, mass, "total_mass", mass * (1.0 - low), mass * (1.0 + high), band)


def _whole_pieces(count: float) -> Message:
    return say("part-weight.pieces.whole", count=math.floor(numerals.settle(count)))


def _closest(density: float) -> Message:
    ranked = sorted((numerals.settle(abs(row[1] - density)), row[0], row[1]) for row in densities.PARTS)
    metal = say("part-weight.option.material." + ranked[0][1])
    return say("part-weight.closest", metal=metal, density=Measured(ranked[0][2], "density"))


def _drawing(section: Section, units: dict[str, str]) -> Drawing:
    across, up = section.across(units), section.up(units)
    balance = section.balance()
    id = "part-weight.section.description" if balance is None else "part-weight.section.balance"
    return drawing.draw(
        section.outlines(),
        section.extent(),
        balance,
        (say("part-weight.drawn." + _drawn(section), shape=section.name(), **section.parameters(units)), across, up),
        say("part-weight.section"),
        say(id, shape=section.name(), width=across, height=up),
    )


def _drawn(section: Section) -> str:
    if section.shape == "channel":
        return "channel"
    if "wall" in section.sizes:
        return "wall"
    return "thickness" if "thickness" in section.sizes else "solid"


# ---------------------------------------------------------------- working, notes, sources, next


def _working(part: _Part) -> tuple[Message, ...]:
    section, given = part.section, part.given
    area = Measured(section.area, "section_area", 6)
    lines = [say("part-weight.working.area." + section.shape, area=area, **section.parameters(given.units))]
    if part.unknown != "density":
        lines.append(_per_length(part, "working.metric", ("mm2", "kg/m3", "kg/m")))
        lines.append(_per_length(part, "working.us", ("in2", "lb/in3", "lb/ft")))
    lines.append(
        say(
            "part-weight.working." + part.unknown,
            piece_count=Plain(part.count, 4),
            part_length=given.measured("part_length"),
            total_mass=Measured(part.reckoned, "total_mass", None, given.units.get("total_mass")),
            mass_per_length=Measured(part.per_length, "mass_per_length", 5),
            density=Measured(part.density, "density"),
            area=area,
        )
    )
    return tuple(lines)


def _per_length(part: _Part, id: str, units: tuple[str, str, str]) -> Message:
    return say(
        "part-weight." + id,
        area=Measured(part.section.area, "section_area", 6, units[0]),
        density=Measured(part.density, "density", None, units[1]),
        mass_per_length=Measured(part.per_length, "mass_per_length", 5, units[2]),
    )


def _notes(part: _Part) -> tuple[Message, ...]:
    section = part.section
    notes = [say("part-weight.note.nominal")]
    if section.radius_assumed:
        of = section.sizes
        sharp = sharp_tube_area(of["part_width"], of["part_height"], of["wall"])
        radius = section.shown("corner_radius", {"corner_radius": part.given.units.get("wall", "in")})
        percent = Plain((sharp / section.area - 1.0) * 100.0, 2)
        notes.append(say("part-weight.note.radius", corner_radius=radius, percent=percent))
    for shapes, id in (
        (("angle", "channel"), "fillet"),
        (("channel",), "taper"),
        (("plate",), "plate"),
        (("pipe",), "ends"),
    ):
        if section.shape in shapes:
            notes.append(say("part-weight.note." + id))
    if part.material == "cast-iron":
        notes.append(say("part-weight.note.cast"))
    return tuple(notes)


def _sources(part: _Part) -> tuple[Source, ...]:
    found = [GEOMETRY]
    if part.section.shape == "pipe":
        found.append(B36_10)
    if part.section.rounded:
        found.append(EN_10219)
    found += dict(_DENSITY_SOURCES).get(part.material, (GERE, SPREAD))
    return tuple(found) + part.tolerance()[3]


def _next(part: _Part) -> tuple[Next, ...]:
    given = part.given
    other = "carbon-steel" if part.material == "aluminum" else "aluminum"
    weighs = Measured(part.reckoned / part.density * part_mass.metal_density(other)[0], "total_mass")
    if not carry("total_mass", weighs, 1.0e-4, 1.0e6):
        return _next_gauge(part)
    carried: list[tuple[str, object]] = [("shape", part.section.shape), ("material", other)]
    for name in _SHAPING[1:] + _SIZES:
        if name in given.typed and given.has(name):
            value = given.values[name]
            carried.append((name, value if isinstance(value, str) else _as_typed(given, name)))
    carried.append(("part_length", given.measured("part_length")))
    if numerals.settle(part.count) == math.floor(numerals.settle(part.count)):
        carried.append(("piece_count", given.measured("piece_count")))
    id = "part-weight.next." + ("steel" if other == "carbon-steel" else "aluminum")
    return (Next("part-weight", say(id), tuple(carried)),) + _next_gauge(part)


def _as_typed(given: Given, name: str) -> Measured:
    field = CALCULATOR.field(name)
    assert isinstance(field, Quantity)
    return given.measured(name, field.quantity.name)


def _next_gauge(part: _Part) -> tuple[Next, ...]:
    """Return the question which gauge it is, for sheet in a metal that has a list of gauges."""
    name = "thickness" if part.section.shape == "plate" else "wall"
    systems = {"carbon-steel": "steel" if name == "thickness" else "tube", "stainless": "stainless"}
    systems["aluminum"] = "aluminum"
    thickness = part.section.sizes.get(name)
    if part.section.shape == "pipe" or thickness is None or part.material not in systems:
        return ()
    if numerals.settle(thickness) > _THICKEST_GAUGE or numerals.settle(thickness) < _THINNEST_GAUGE:
        return ()
    carried = (
        ("gauge_system", systems[part.material]),
        ("thickness", Measured(thickness, "thickness", None, part.given.units.get(name))),
    )
    return (Next("sheet-gauge", say("part-weight.next.gauge"), carried),)


def _size(name: str, *shapes: str) -> Quantity:
    """Return the field of one size, asked for these shapes."""
    return Quantity(name, "part_size", when=("shape", shapes), presets=_PRESETS.get(name, ()))


_PRESETS = {
    "diameter": ("1/2 in", "3/4 in", "1 in", "2 in"),
    "wall": ("1/8 in", "3/16 in", "1/4 in", "3 mm", "5 mm"),
    "side": ("1/2 in", "3/4 in", "1 in"),
    "across_flats": ("3/4 in", "1 in", "1 1/4 in"),
    "first_leg": ("2 in", "3 in", "4 in", "50 mm"),
    "second_leg": ("2 in", "3 in", "4 in", "50 mm"),
}

CALCULATOR = Calculator(
    name="part-weight",
    fields=(
        Choice("shape", SHAPES, default="plate"),
        Choice("material", _METALS + ("other",), default="carbon-steel"),
        Quantity("density", when=("material", ("other",)), hint=True),
        Choice("pipe_size", pipe_sizes.PIPE_SIZES, default="dn-50", when=("shape", ("pipe",)), hint=True),
        Choice("pipe_schedule", pipe_sizes.SCHEDULES, default="40", when=("shape", ("pipe",))),
        _size("diameter", "round-bar", "round-tube"),
        _size("side", "square-bar"),
        _size("across_flats", "hex-bar"),
        Quantity(
            "part_width",
            when=("shape", ("plate", "flat-bar", "rectangular-tube", "sharp-tube")),
            presets=("2 in", "4 in", "12 in", "48 in"),
        ),
        Quantity(
            "part_height",
            "part_width",
            when=("shape", ("rectangular-tube", "sharp-tube")),
            presets=("2 in", "4 in"),
        ),
        _size("first_leg", "angle"),
        _size("second_leg", "angle"),
        Quantity(
            "thickness",
            when=("shape", ("plate", "flat-bar", "angle")),
            presets=("1/8 in", "3/16 in", "1/4 in", "3/8 in", "1/2 in", "1 in"),
        ),
        _size("wall", "round-tube", "rectangular-tube", "sharp-tube"),
        Quantity("corner_radius", "part_size", optional=True, when=("shape", ("rectangular-tube",)), hint=True),
        _size("depth", "channel"),
        _size("flange_width", "channel"),
        _size("web_thickness", "channel"),
        Quantity("flange_thickness", "part_size", when=("shape", ("channel",)), hint=True),
        Quantity("part_length", presets=("1 ft", "10 ft", "20 ft", "1 m", "6 m")),
        Quantity("piece_count", whole=True, low=1.0, hint=True, presets=("1", "2", "4", "10")),
        Quantity("total_mass", hint=True),
    ),
    relations=(
        # A scale and a sum from nominal sizes are not expected to agree better.
        Relation(_RELATED, _solve, check="total_mass", also=_SHAPING + _SIZES, agree_within=0.03),
    ),
    prepare=_prepare,
    answer=_answer,
    english=ENGLISH,
    sources=(GEOMETRY, B36_10, A53, EN_10219, A500, A6, STEEL_AND_IRON, STAINLESS, GERE, SPREAD),
    place=70,
)
