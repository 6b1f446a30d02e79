"""Preheat: how warm before the arc and between passes, at least and, where too hot spoils the metal, at most."""

from calculators import cooling, numerals, units
from calculators.contract import (
    Answer,
    Calculator,
    Choice,
    Drawing,
    Finding,
    Findings,
    Given,
    Measured,
    Message,
    Next,
    Number,
    Plain,
    Quantity,
    Source,
    Table,
    Verdict,
    Words,
    carry,
    say,
)
from calculators.drawings import preheat_window
from calculators.facts import preheat as facts
from calculators.facts import steels
from calculators.preheat_bounds import (
    AMBIENT,
    BY_METHOD_B,
    BY_SEFERIAN,
    CHEMISTRY,
    FAMILIES,
    FREEZING,
    HARDENING_GRADES,
    PROCESSES,
    STRUCTURAL_GRADES,
    THICKNESS_COUNTS,
    WARMED,
    Bounds,
    Rule,
)
from calculators.preheat_sources import (
    ALL,
    CODE_FOOTNOTE,
    CODE_ZONE,
    HYDROGEN,
    ISO_13916,
    OF_RULE,
    SAE,
    UNKNOWN_GRADES,
)
from calculators.preheat_words import ENGLISH

_PERCENT = 0.01
_MUCH_FOR_STRUCTURAL = 0.40  # %; more CET than structural steel has: likelier a CE in the wrong box

# ---------------------------------------------------------------- the answer


def _answer(given: Given) -> Answer:
    bounds = Bounds(given)
    results: list[object] = []
    if bounds.family == "unknown":
        results.append(_find_out())
    results += _ends(bounds)
    if bounds.family in THICKNESS_COUNTS:
        results.append(Number("measuring_distance", bounds.distance(), "thickness", figures=3))
    if bounds.rules:
        results.append(_rules(bounds))
    if bounds.highest is not None:  # an open end would look like leave to go on heating
        results.append(_drawing(bounds, bounds.highest))
    return Answer(
        results=tuple(results),
        working=_working(bounds),
        notes=_notes(bounds),
        cautions=_cautions(bounds),
        sources=_sources(bounds),
        next_questions=_next(bounds),
        verdict=_verdict(bounds),
    )


def _shown(temperature: float) -> Measured:
    return Measured(temperature, "preheat_temperature")


def _ends(bounds: Bounds) -> list[object]:
    """Return the lowest and the highest temperature; words where there is neither."""
    results: list[object] = []
    guessed = bounds.family == "unknown"
    if bounds.lowest is not None:
        label = say("preheat.label.lowest-guessed" if guessed else "preheat.label.lowest")
        results.append(_lowest(bounds, label))
    elif bounds.family in BY_METHOD_B:
        results.append(Words("no_lowest", say("preheat.no-lowest." + bounds.family)))
    if bounds.highest is not None:
        label = say("preheat.label.highest-guessed" if guessed else "preheat.label.highest")
        results.append(Number("preheat_maximum", bounds.highest, "preheat_temperature", label=label))
    if bounds.lowest is None and bounds.family not in BY_METHOD_B:
        results.append(Words("no_lowest", say("preheat.no-lowest." + bounds.family)))
    return results


def _lowest(bounds: Bounds, label: Message) -> Number:
    assert bounds.lowest is not None and bounds.deciding is not None
    if bounds.highest is not None:
        words = say("preheat.and-not-hotter", highest=_shown(bounds.highest))
    elif numerals.settle(bounds.lowest) < numerals.settle(AMBIENT):
        words = say("preheat.no-heating", ambient=_shown(AMBIENT))
    else:
        words = say("preheat.decides", rule=say("preheat.rule." + bounds.deciding.name))
    low = high = None
    if bounds.deciding.name == "seferian" and bounds.seferian is not None and bounds.seferian[0] != bounds.seferian[1]:
        low, high = bounds.seferian
    band = None if low is None else say("preheat.band.grade")
    return Number("preheat_minimum", bounds.lowest, "preheat_temperature", low, high, band, label, in_words=words)


def _rules(bounds: Bounds) -> Table:
    rows = []
    for rule in bounds.rules:
        rows.append((say("preheat.rule." + rule.name), _says(bounds, rule)))
    columns = (say("preheat.column.rule"), say("preheat.column.says"))
    return Table("rules", say("preheat.rules"), columns, tuple(rows))


def _says(bounds: Bounds, rule: Rule) -> Message:
    if rule.value is None:
        return _why_not(bounds, rule)
    if rule.upper is not None:
        return say("preheat.says.practice", low=_shown(rule.value), high=_shown(rule.upper))
    nothing = rule.what == "lowest" and numerals.settle(rule.value) < numerals.settle(FREEZING)
    return say("preheat.says." + ("nothing" if nothing else rule.what), temperature=_shown(rule.value))


def _why_not(bounds: Bounds, rule: Rule) -> Message:
    """Return why a rule gives no number: the input that left its range, and the range."""
    if rule.left is None:
        return say("preheat.why." + rule.name)
    left = rule.left
    if rule.name.startswith("code-"):
        return say("preheat.why.thin")
    quantity = {
        "cet": "carbon_equivalent",
        "thickness": "thickness",
        "hydrogen": "diffusible_hydrogen",
        "heat_input": "heat_input",
    }[left.name]
    unit = bounds.given.units.get(left.name)
    return say(
        "preheat.why.outside." + left.name,
        value=Measured(left.value, quantity, 3, unit),
        low=Measured(left.low or 0.0, quantity, 3, unit),
        high=Measured(left.high or 0.0, quantity, 3, unit),
    )


def _drawing(bounds: Bounds, most: float) -> Drawing:
    highest = say("preheat.drawing.highest", temperature=_shown(most))
    lowest = None
    ends = highest
    if bounds.lowest is not None:
        lowest = (say("preheat.drawing.lowest", temperature=_shown(bounds.lowest)), bounds.lowest)
        ends = say("list.comma", first=lowest[0], rest=highest)
    description = say("preheat.drawing.description", ends=ends)
    name = say("preheat.drawing.scale")
    return preheat_window.draw(lowest, (highest, most), name, say("preheat.drawing.title"), description)


def _verdict(bounds: Bounds) -> Verdict | None:
    window = bounds.window()
    if bounds.family == "unknown":
        return Verdict("unclear", say("preheat.verdict.unknown"))
    if window in ("closed", "narrow"):
        assert bounds.lowest is not None and bounds.highest is not None
        ends = say("preheat.verdict." + window, lowest=_shown(bounds.lowest), highest=_shown(bounds.highest))
        return Verdict("outside" if window == "closed" else "unclear", ends, say("preheat.remedy." + window))
    return None


def _find_out() -> Findings:
    items = []
    for step in ("papers", "analysis", "hardness", "magnet", "spark"):
        items.append(
            Finding(say("preheat.find." + step), say("preheat.sure." + step), say("preheat.find." + step + ".why"))
        )
    return Findings("find_out", say("preheat.find"), tuple(items))


# ---------------------------------------------------------------- working


def _working(bounds: Bounds) -> tuple[Message, ...]:
    lines = []
    for rule in bounds.rules:
        if rule.name.startswith("code-") and rule.value is not None:
            thickness = Measured(bounds.thickness, "thickness", 4, bounds.given.units.get("thickness"))
            parameters = {"thickness": thickness, "temperature": _shown(rule.value)}
            lines.append(say("preheat.working.code", row=say("preheat.rule." + rule.name), **parameters))
        if rule.what == "highest" and rule.value is not None:
            named = say("preheat.rule." + rule.name)
            lines.append(say("preheat.working.highest", rule=named, temperature=_shown(rule.value)))
    if bounds.parts is not None:
        lines += _working_of_cet(bounds, bounds.parts)
    if bounds.seferian is not None:
        lines += _working_of_seferian(bounds, bounds.seferian)
    if bounds.family in THICKNESS_COUNTS:
        shown = Measured(bounds.distance(), "thickness", 3, bounds.given.units.get("thickness"))
        lines.append(say("preheat.working.distance", distance=shown))
    return tuple(lines)


def _working_of_cet(bounds: Bounds, parts: tuple[float, float, float, float]) -> list[Message]:
    given = bounds.given
    assert bounds.cet is not None and bounds.hydrogen is not None
    cet = Plain(bounds.cet / _PERCENT, 4)
    lines = []
    if given.has("weld_metal_cet"):
        steel, weld = given.measured("cet", "carbon_equivalent"), given.measured("weld_metal_cet", "carbon_equivalent")
        lines.append(say("preheat.working.governing", steel=steel, weld=weld, cet=cet))
    heat = Plain(units.from_coherent(bounds.heat_input, "kJ/mm"), 4)
    thickness = Plain(units.from_coherent(bounds.thickness, "mm"), 4)
    hydrogen = Plain(units.from_coherent(bounds.hydrogen, "mL/100g"), 4)
    added = [Plain(numerals.settle(part, 4) if abs(part) > 1e-9 else 0.0, 4) for part in parts]
    lines.append(say("preheat.working.chemistry", cet=cet, part=added[0]))
    lines.append(say("preheat.working.thickness", thickness=thickness, part=added[1]))
    lines.append(say("preheat.working.hydrogen", hydrogen=hydrogen, part=added[2]))
    lines.append(say("preheat.working.heat", cet=cet, heat=heat, part=added[3]))
    total = parts[0] + parts[1] + parts[2] + parts[3]
    lines.append(
        say(
            "preheat.working.sum",
            chemistry=added[0],
            thickness=added[1],
            hydrogen=added[2],
            heat=added[3],
            celsius=Measured(units.to_coherent(total, "degC"), "preheat_temperature", None, "degC"),
            fahrenheit=Measured(units.to_coherent(total, "degC"), "preheat_temperature", None, "degF"),
        )
    )
    return lines


def _working_of_seferian(bounds: Bounds, both: tuple[float, float]) -> list[Message]:
    assert bounds.chemistry is not None
    contents = [each / _PERCENT for each in bounds.chemistry[1]]
    chemical = contents[0] + (40.0 * (contents[1] + contents[2]) + 20.0 * contents[3] + 28.0 * contents[4]) / 360.0
    millimetres = units.from_coherent(bounds.thickness, "mm")
    total = chemical * (1.0 + 0.005 * millimetres)
    named = {name: Plain(content, 4) for name, content in zip(CHEMISTRY, contents)}
    return [
        say("preheat.working.chemical", chemical=Plain(chemical, 4), **named),
        say(
            "preheat.working.total", chemical=Plain(chemical, 4), thickness=Plain(millimetres, 4), total=Plain(total, 4)
        ),
        say(
            "preheat.working.seferian",
            total=Plain(total, 4),
            celsius=Measured(both[1], "preheat_temperature", None, "degC"),
            fahrenheit=Measured(both[1], "preheat_temperature", None, "degF"),
        ),
    ]


# ---------------------------------------------------------------- notes, cautions, sources, next


def _notes(bounds: Bounds) -> tuple[Message, ...]:
    given = bounds.given
    notes = []
    if bounds.cet is not None:
        if not given.has("hydrogen") and bounds.hydrogen is not None:
            hydrogen = Measured(bounds.hydrogen, "diffusible_hydrogen")
            notes.append(say("preheat.note.hydrogen", hydrogen=hydrogen))
        if not given.has("heat_input"):
            heat = Measured(bounds.heat_input, "heat_input", None, None)
            notes.append(say("preheat.note.heat", heat_input=heat))
        much = numerals.settle(given.number("cet") / _PERCENT) >= _MUCH_FOR_STRUCTURAL
        if bounds.family == "structural" and much:
            notes.append(say("preheat.note.is-it-ce"))
    if bounds.family in ("structural", "quenched-tempered") and bounds.between_the_codes_limits():
        notes.append(say("preheat.note.metric"))
    notes.append(_of_the_metal(bounds.family))
    if bounds.family in THICKNESS_COUNTS:
        notes += [say("preheat.note.restraint"), say("preheat.note.tacks"), say("preheat.note.where")]
    notes.append(say("preheat.note.when"))
    return tuple(notes)


def _of_the_metal(family: str) -> Message:
    """Return what else is to be said of this metal, with its temperatures in the reader's unit."""
    ends = {"aluminum-heat-treated": facts.AGEING, "aluminum-magnesium": facts.SENSITIZING}.get(family)
    if ends is not None:
        low, high = [_shown(units.to_coherent(end, "degF")) for end in ends]
        return say("preheat.note." + family, low=low, high=high)
    if family in BY_SEFERIAN:
        return say("preheat.note.hardening")
    if family == "quenched-tempered":
        highest = _shown(units.to_coherent(facts.NAVY_QUENCHED_TEMPERED_HIGHEST, "degF"))
        return say("preheat.note.quenched-tempered", highest=highest)
    return say("preheat.note." + family)


def _cautions(bounds: Bounds) -> tuple[Message, ...]:
    cautions = [say("preheat.caution.procedure")]
    if bounds.family == "unknown":
        cautions.append(say("preheat.caution.guess"))
    if bounds.family in THICKNESS_COUNTS:
        cautions.append(say("preheat.caution.freezing", freezing=_shown(FREEZING), warmed=_shown(WARMED)))
    if bounds.highest is not None:
        cautions.append(say("preheat.caution.too-hot"))
    cautions.append(say("preheat.caution.burn"))
    return tuple(cautions)


def _sources(bounds: Bounds) -> tuple[Source, ...]:
    wanted: list[Source] = []
    for rule in bounds.rules:
        wanted += list(dict(OF_RULE)[rule.name])
    if bounds.hydrogen is not None and not bounds.given.has("hydrogen"):
        wanted.append(HYDROGEN)
    if bounds.family == "hardening":
        wanted.append(SAE)
    if bounds.family == "unknown":
        wanted.append(UNKNOWN_GRADES)
    if bounds.family in THICKNESS_COUNTS:
        wanted.append(CODE_FOOTNOTE)
        wanted.append(CODE_ZONE)
    wanted.append(ISO_13916)
    sources: list[Source] = []
    for each in wanted:
        if each not in sources:
            sources.append(each)
    return tuple(sources)


def _next(bounds: Bounds) -> tuple[Next, ...]:
    given = bounds.given
    questions = []
    if bounds.family == "unknown" or (bounds.family in BY_METHOD_B and bounds.cet is None):
        questions.append(Next("carbon-equivalent", say("preheat.next.carbon-equivalent"), ()))
    heat = (("heat_input", given.measured("heat_input")),) if given.has("heat_input") else ()
    if bounds.family in BY_METHOD_B:
        id = "preheat.next." + ("settings" if heat else "heat-input")
        questions.append(Next("heat-input", say(id), heat))
        questions.append(Next("cooling-time", say("preheat.next.cooling-time"), _to_cooling_time(bounds)))
    if bounds.highest is not None:
        questions.append(Next("heat-input", say("preheat.next.limit"), (("limit_basis", "heat-input"),)))
    return tuple(questions)


def _to_cooling_time(bounds: Bounds) -> tuple[tuple[str, object], ...]:
    given = bounds.given
    carried = carry("thickness", given.measured("thickness"), *cooling.THICKNESS_RANGE)
    # Where no heating is asked for, how cold the steel is only the welder can tell.
    if bounds.lowest is not None and numerals.settle(bounds.lowest) > numerals.settle(AMBIENT):
        carried += carry("preheat_temperature", _shown(bounds.lowest), *cooling.PREHEAT_RANGE)
    if given.has("heat_input"):
        heat = carry("heat_input", given.measured("heat_input"), *cooling.HEAT_INPUT_RANGE)
        # Left out where all three would make a time that the formulas are not used for.
        if len(carried) < 2 or (heat and _is_reckoned(bounds)):
            carried += heat
    return carried


def _is_reckoned(bounds: Bounds) -> bool:
    low, high, thick = cooling.joint_factors("butt-passes")
    heat, thickness = bounds.given.number("heat_input"), bounds.given.number("thickness")
    time = cooling.cooling_time(heat, bounds.lowest or AMBIENT, thickness, (low + high) / 2.0, thick)
    return cooling.COOLING_TIME_RANGE[0] <= numerals.settle(time) <= cooling.COOLING_TIME_RANGE[1]


_METHOD_B_FIELDS = ("family", BY_METHOD_B)
_TYPED_CHEMISTRY = tuple(
    [
        Quantity(
            name,
            "percentage",
            when=("family", ("hardening-chemistry",)),
            low=low,
            high=high,
            presets=() if name in ("carbon", "manganese") else ("0 %",),
        )
        for name, low, high in steels.PREHEATED_BY_CHEMISTRY
    ]
)

CALCULATOR = Calculator(
    name="preheat",
    fields=(
        Choice("family", FAMILIES),
        Choice("grade", STRUCTURAL_GRADES, when=("family", ("structural",))),
        Choice("hardening_grade", HARDENING_GRADES, when=("family", ("hardening",))),
        Choice("magnet", ("sticks", "does-not-stick"), when=("family", ("unknown",))),
        Quantity(
            "thickness",
            hint=True,
            when=("family", THICKNESS_COUNTS),
            low=1.0,
            presets=("1/4 in", "1/2 in", "3/4 in", "1 in", "1 1/2 in", "6 mm", "12 mm", "20 mm", "25 mm", "40 mm"),
        ),
        Choice("process", PROCESSES, default="gas-metal-arc", when=_METHOD_B_FIELDS),
        Quantity("cet", "carbon_equivalent", optional=True, hint=True, when=_METHOD_B_FIELDS, low=0.05, high=1.0),
        Quantity(
            "weld_metal_cet", "carbon_equivalent", optional=True, hint=True, when=_METHOD_B_FIELDS, low=0.05, high=0.97
        ),
        Quantity(
            "hydrogen",
            "diffusible_hydrogen",
            optional=True,
            hint=True,
            when=_METHOD_B_FIELDS,
            presets=("4 mL/100g", "5 mL/100g", "8 mL/100g", "10 mL/100g", "16 mL/100g"),
        ),
        Quantity("heat_input", optional=True, hint=True, when=_METHOD_B_FIELDS),
    )
    + _TYPED_CHEMISTRY,
    answer=_answer,
    english=ENGLISH,
    sources=ALL,
    place=42,
)
