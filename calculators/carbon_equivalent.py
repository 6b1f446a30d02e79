"""Carbon equivalent: how much the carbon and alloy on a certificate harden a steel beside the weld."""

from calculators import carbon_equivalent_formulas as formulas
from calculators import numerals
from calculators.carbon_equivalent_words import ENGLISH
from calculators.contract import (
    UNKNOWN,
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
    Source,
    Table,
    Verdict,
    Words,
    carry,
    say,
)
from calculators.drawings import carbon_share
from calculators.facts import steels

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable

_PERCENT = 0.01
_CERTIFICATE = "certificate"
_HIGHEST_METHOD_CET, _LOWEST_METHOD_CET = 0.50, 0.20  # %, EN 1011-2 Method B

IIW = Source(
    "EN 1011-2:2001, C.2.1, and EN 10025-1: CE, the formula of the International Institute of Welding; as quoted"
    " by TWI, not read in the standards themselves",
    "standard",
)
METHOD_B = Source("EN 1011-2:2001, C.3: CET; seen quoted, not read in the standard itself", "standard")
ITO_BESSYO = Source(
    "Ito and Bessyo, IIW documents IX-576-68 and IX-631-69: Pcm, as in AWS D1.1 and API 5L, 6.1.3.1; seen quoted",
    "standard",
)
D1_1_ANNEX = Source("AWS D1.1, annex on preheat: CE with Si/6; as told by TWI", "standard")
BANDS = Source("CE read at 0.35 and 0.55", "common practice")
INDEX_GROUPS = Source("AWS D1.1, annex on preheat: index groups by Pcm, one of them seen quoted", "from memory")
TESTED = Source("Compositions that CET and Pcm were tested on", "from memory")
TYPICAL_HEATS = Source(
    "Typical heats, and limits of ASTM A36, A572, A516, A514, EN 10025-2 and SAE J403 and J404; 4130 as printed in"
    " FAA report ANM-112N-14-02 (2014)",
    "from memory",
)


# ---------------------------------------------------------------- what is known of the steel


class _Formula:
    """One of the sums, worked out as far as the chemistry allows."""

    def __init__(
        self,
        name: str,
        function: "Callable[..., float]",
        divisors: tuple[tuple[str, float], ...],
        tested: tuple[tuple[str, float, float], ...],
        given: Given,
    ) -> None:
        self.name = name
        self.divisors = divisors
        self.elements = tuple([element for element, _ in divisors])
        self.missing = tuple([element for element in self.elements if not given.has(element)])
        self.unknown = tuple([element for element in self.elements if given.values.get(element) == UNKNOWN])
        self.contents = {}
        for element in self.elements:
            counted = element not in self.missing and element not in self.unknown
            self.contents[element] = given.number(element) if counted else 0.0
        self.outside = None
        for element, low, high in tested:
            content = numerals.settle(self.contents.get(element, low * _PERCENT) / _PERCENT)
            known = element not in self.missing and element not in self.unknown
            if self.outside is None and known and (content < low or content > high):
                self.outside = (element, low, high)
        self.value = None
        if not self.missing and self.outside is None:
            self.value = function(**self.contents)


def _formulas(given: Given) -> tuple[_Formula, ...]:
    return (
        _Formula("ce", formulas.ce_iiw, steels.CE_DIVISORS, (), given),
        _Formula("cet", formulas.cet, steels.CET_DIVISORS, steels.CET_TESTED, given),
        _Formula("pcm", formulas.pcm, steels.PCM_DIVISORS, steels.PCM_TESTED, given),
        _Formula("ce_with_silicon", formulas.ce_with_silicon, steels.CE_WITH_SILICON_DIVISORS, (), given),
    )


def _prepare(given: Given) -> None:
    """A typical chemistry fills the blanks, and only these: what the certificate says goes first."""
    for grade, typical, _ in steels.TYPICAL:
        if grade == given.word("chemistry"):
            for element, content in zip(steels.ELEMENTS, typical):
                if not given.has(element):
                    given.fill(element, content * _PERCENT)


def _named(elements: tuple[str, ...]) -> Message:
    """Return names of elements as a list in words."""
    listed = say("carbon-equivalent.element." + elements[-1])
    joint = "list.and"
    for element in reversed(elements[:-1]):
        listed = say(joint, first=say("carbon-equivalent.element." + element), rest=listed)
        joint = "list.comma"
    return listed


# ---------------------------------------------------------------- the answer


def _answer(given: Given) -> Answer:
    sums = _formulas(given)
    ready = [each for each in sums if each.value is not None]
    others = [each for each in sums if each.value is None]
    results: list[object] = [_number(each) for each in ready] + [_no_number(each, given) for each in others]
    if ready:
        results.append(_adding_up(sums, given))
        results += [_drawing(each) for each in ready if each.name == "ce"]
    return Answer(
        results=tuple(results),
        working=tuple([_working(each) for each in ready + others]),
        notes=_notes(given, ready),
        cautions=_cautions(given),
        sources=_sources(given, ready),
        next_questions=_next(given, sums),
        verdict=_verdict(given, ready),
    )


def _number(each: _Formula) -> Number:
    assert each.value is not None
    if each.unknown:
        label = say("carbon-equivalent.label.at-least." + each.name)
        words = say("carbon-equivalent.not-counted", names=_named(each.unknown))
        return Number(each.name, each.value, "carbon_equivalent", label=label, in_words=words)
    return Number(each.name, each.value, "carbon_equivalent", in_words=_reading(each.name, each.value))


def _reading(name: str, value: float) -> Message:
    """Return what a sum says about cracking."""
    percent = numerals.settle(value / _PERCENT)
    if name == "ce":
        band = "low" if percent < steels.CE_LOW else "high" if percent > steels.CE_HIGH else "middle"
        return say("carbon-equivalent.ce." + band)
    if name == "cet":
        below, above = percent < _LOWEST_METHOD_CET, percent > _HIGHEST_METHOD_CET
        return say("carbon-equivalent.cet." + ("below" if below else "above" if above else "inside"))
    if name == "pcm":
        for end, group in steels.PCM_GROUPS:
            if percent < end:
                return say("carbon-equivalent.pcm.group-" + group.lower())
        return say("carbon-equivalent.pcm.group-f")
    return say("carbon-equivalent.with-silicon")


def _no_number(each: _Formula, given: Given) -> Words:
    if each.outside is not None:
        element, low, high = each.outside
        message = say(
            "carbon-equivalent.outside",
            element=say("carbon-equivalent.element." + element),
            content=given.measured(element, "percentage"),
            low=Plain(low),
            high=Measured(high * _PERCENT, "percentage"),
        )
        return Words(each.name, message)
    return Words(each.name, say("carbon-equivalent.waits", names=_named(each.missing)))


def _adding_up(sums: tuple[_Formula, ...], given: Given) -> Table:
    """Return what each element that is there adds to each of the three sums."""
    rows = []
    for element in steels.ELEMENTS:
        content = given.values.get(element)
        if not isinstance(content, float) or content == 0.0:
            continue
        cells: list[object] = []
        for each in sums[:3]:
            divisor = dict(each.divisors).get(element)
            counts = divisor is not None and each.outside is None
            added = numerals.fixed(content / _PERCENT / divisor, 3) if counts and divisor else ""
            cells.append(added if added else say("carbon-equivalent.none"))
        shown = Measured(content, "percentage", 4)
        head = say("carbon-equivalent.content", symbol=say("carbon-equivalent.symbol." + element), content=shown)
        rows.append((head,) + tuple(cells))
    columns = tuple([say("carbon-equivalent.column." + name) for name in ("content", "ce", "cet", "pcm")])
    return Table("adding_up", say("carbon-equivalent.adding-up"), columns, tuple(rows))


def _drawing(each: _Formula) -> object:
    pieces = []
    for element, divisor in each.divisors:
        pieces.append((say("carbon-equivalent.symbol." + element), each.contents[element] / _PERCENT / divisor))
    marks = tuple(
        [(say("carbon-equivalent.mark", value=Plain(value)), value) for value in (steels.CE_LOW, steels.CE_HIGH)]
    )
    assert each.value is not None
    total = Measured(each.value, "carbon_equivalent")
    most = max([amount for _, amount in pieces])
    largest = next(sign for sign, amount in pieces if amount == most)
    return carbon_share.draw(
        tuple(pieces),
        marks,
        say("carbon-equivalent.column.ce"),
        say("carbon-equivalent.drawing.title"),
        say("carbon-equivalent.drawing.description", total=total, largest=largest),
    )


def _verdict(given: Given, ready: list[_Formula]) -> Verdict | None:
    """What is not the part's own certificate is said beside the number, not below the fold."""
    if ready and given.word("chemistry") != _CERTIFICATE:
        return Verdict("unclear", say("carbon-equivalent.verdict.typical"))
    if ready and ready[0].unknown:
        return Verdict("unclear", say("carbon-equivalent.verdict.at-least"))
    return None


def _working(each: _Formula) -> Message:
    formula = say("carbon-equivalent.formula." + each.name)
    if each.value is None:
        return say("carbon-equivalent.working.not-yet", formula=formula)
    parameters: list[tuple[str, object]] = [("formula", formula), ("total", Measured(each.value, "carbon_equivalent"))]
    for element in each.elements:
        unknown = element in each.unknown
        value = say("carbon-equivalent.unknown") if unknown else Plain(each.contents[element] / _PERCENT, 4)
        parameters.append((element, value))
    return Message("carbon-equivalent.working." + each.name, tuple(sorted(parameters, key=lambda pair: pair[0])))


def _notes(given: Given, ready: list[_Formula]) -> tuple[Message, ...]:
    notes = []
    for grade, _, limits in steels.TYPICAL:
        if ready and grade == given.word("chemistry"):
            contents = dict(zip(steels.ELEMENTS, limits))
            most = formulas.ce_iiw(**{name: contents[name] * _PERCENT for name, _ in steels.CE_DIVISORS})
            notes.append(say("carbon-equivalent.note.limits", most=Measured(most, "carbon_equivalent")))
    notes.append(say("carbon-equivalent.note.names"))
    if "pcm" in [each.name for each in ready]:
        notes.append(say("carbon-equivalent.note.line-pipe"))
    notes.append(say("carbon-equivalent.note.analyser"))
    return tuple(notes)


def _cautions(given: Given) -> tuple[Message, ...]:
    cautions = [say("carbon-equivalent.caution.not-alone"), say("carbon-equivalent.caution.procedure")]
    if given.word("chemistry") != _CERTIFICATE:
        cautions.insert(0, say("carbon-equivalent.caution.typical"))
    return tuple(cautions)


def _sources(given: Given, ready: list[_Formula]) -> tuple[Source, ...]:
    names = [each.name for each in ready]
    sources = []
    for name, used in (
        ("ce", (IIW, BANDS)),
        ("cet", (METHOD_B,)),
        ("pcm", (ITO_BESSYO, INDEX_GROUPS)),
        ("ce_with_silicon", (D1_1_ANNEX,)),
    ):
        if name in names:
            sources += list(used)
    sources.append(TESTED)
    if given.word("chemistry") != _CERTIFICATE:
        sources.append(TYPICAL_HEATS)
    return tuple(sources)


def _next(given: Given, sums: tuple[_Formula, ...]) -> tuple[Next, ...]:
    cet = sums[1]
    if cet.value is not None and not cet.unknown:
        carried = (("cet", Measured(cet.value, "carbon_equivalent")),)
        return (
            Next("preheat", say("carbon-equivalent.next.structural"), (("family", "structural"),) + carried),
            Next("preheat", say("carbon-equivalent.next.quenched"), (("family", "quenched-tempered"),) + carried),
        )
    if cet.outside is not None and given.number("carbon") > cet.outside[2] * _PERCENT:
        chemistry: tuple[tuple[str, object], ...] = (("family", "hardening-chemistry"),)
        for element, low, high in steels.PREHEATED_BY_CHEMISTRY:
            if isinstance(given.values.get(element), float):
                chemistry += carry(element, given.measured(element, "percentage"), low * _PERCENT, high * _PERCENT)
        return (Next("preheat", say("carbon-equivalent.next.hardening"), chemistry),)
    return (Next("preheat", say("carbon-equivalent.next.preheat"), ()),)


def _element(name: str, required: bool, presets: tuple[str, ...] = ()) -> Quantity:
    low = 0.005 if name == "carbon" else 0.0
    return Quantity(
        name,
        "percentage",
        optional=not required,
        hint=name == "boron",
        low=low,
        high=dict(steels.HIGHEST)[name],
        presets=presets,
        may_be_unknown=not required,
    )


CALCULATOR = Calculator(
    name="carbon-equivalent",
    fields=(
        Choice(
            "chemistry", (_CERTIFICATE,) + tuple([grade for grade, _, _ in steels.TYPICAL]), _CERTIFICATE, hint=True
        ),
        _element("carbon", True),
        _element("silicon", False),
        _element("manganese", True),
        _element("chromium", False, ("0 %",)),
        _element("molybdenum", False, ("0 %",)),
        _element("vanadium", False, ("0 %",)),
        _element("nickel", False, ("0 %",)),
        _element("copper", False, ("0 %",)),
        _element("boron", False, ("0 %",)),
    ),
    prepare=_prepare,
    answer=_answer,
    english=ENGLISH,
    sources=(IIW, METHOD_B, ITO_BESSYO, D1_1_ANNEX, BANDS, INDEX_GROUPS, TESTED, TYPICAL_HEATS),
    place=40,
)
