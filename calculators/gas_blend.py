"""Gas blend: what a mix is called, whether it sinks or rises, and which metals it suits.

The names are in gas_designation.py, density in gas_mixture.py, the tables of both in facts/gases.py.
"""

from calculators import numerals
from calculators.contract import (
    Answer,
    Calculator,
    Choice,
    Given,
    Measured,
    Message,
    Next,
    Plain,
    Quantity,
    Refusal,
    Relation,
    Source,
    Table,
    Verdict,
    Words,
    carry,
    say,
)
from calculators.cylinder_gas import HELIUM_MIX, LIQUID
from calculators.facts.gases import AIR_DENSITY, BLENDS, GASES
from calculators.gas_blend_words import ENGLISH
from calculators.gas_density import HIGHEST_CARBON_DIOXIDE_FRACTION, HIGHEST_OXYGEN_FRACTION
from calculators.gas_designation import designation, group, older_group, suits, us_designation
from calculators.gas_mixture import NAMES, density_against_air, fraction_of_two, mixture_density
from calculators.shielding_gas import MIXED

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

ISO = Source(
    "ISO 14175:2008, table 2: groups of shielding gas; letters and a few groups seen quoted, the other limits not",
    "from memory",
)
OLDER = Source("ISO 14175:1997 and EN 439:1994: 5 to 25 % carbon dioxide was all M21", "from memory")
US = Source("AWS A5.32/A5.32M-97: SG and the letters of the gases", "from memory")
DENSITY = Source("Densities by the equations of state in CoolProp 8.0.0, mixed by volume", "published")
TRADE = Source("What each mix does in the arc, in our words", "common practice")

METALS = ("mild-steel", "stainless", "duplex", "aluminum", "copper")
_SECOND = ("carbon-dioxide", "argon", "helium")
_VERDICTS = {"suits": "inside", "care": "unclear", "no": "outside"}
_SINKS, _RISES = 1.05, 0.95  # nearer to air than this, draughts decide
_METER = 0.10  # share a flow meter may be out
_ENRICHED = 0.235  # oxygen in air above which 29 CFR 1910.146 calls it hazardous


# ---------------------------------------------------------------- the mix


def _prepare(given: Given) -> None:
    if given.word("blend") != "other":
        return
    for name in NAMES:
        if "/" in given.typed.get(name, ""):
            raise Refusal(name, say("gas-blend.refusal.mix"))
    typed = [name for name in NAMES if given.has(name)]
    if not typed:
        return
    for name in NAMES[1:] if "argon" not in typed else NAMES[2:]:
        if not given.has(name):
            given.fill(name, 0.0)
    total = sum([given.number(name) for name in typed])
    off = numerals.settle(numerals.settle(total * 100.0, 8) - 100.0, 8)
    whole = "argon" in typed and "carbon_dioxide" in typed
    if off > 0.0 or (off < 0.0 and whole):
        id = "gas-blend.refusal.over" if off > 0.0 else "gas-blend.refusal.under"
        field = typed[0] if off > 0.0 else "carbon_dioxide"
        raise Refusal(field, say(id, total=Plain(total * 100.0, 6), off=Plain(abs(off), 4)))


def _solve(unknown: str, values: "dict[str, Any]") -> float:
    """Return argon or carbon dioxide as the rest."""
    others = sum([values[name] for name in NAMES if name != unknown and name in values])
    return max(0.0, numerals.settle(1.0 - others))


def _of(blend: str) -> tuple[float, ...]:
    for row in BLENDS:
        if row[0] == blend:
            return tuple(percent / 100.0 for percent in row[1:])
    raise KeyError(blend)


def _mix(given: Given) -> tuple[float, ...]:
    blend = given.word("blend")
    first = tuple(given.number(name) for name in NAMES) if blend == "other" else _of(blend)
    if not given.word("second_blend"):
        return first
    second = _of(given.word("second_blend"))
    flows = given.number("gas_flow"), given.number("second_flow")
    return tuple(numerals.settle(fraction_of_two(first[i], second[i], flows[0], flows[1])) for i in range(len(first)))


# ---------------------------------------------------------------- the answer


def _answer(given: Given) -> Answer:
    mix = _mix(given)
    symbol = group(mix)
    results: list[object] = [
        Words(
            "group",
            say("gas-blend.group", mark=symbol, character=say("gas-blend.character." + _character(symbol))),
        ),
        _text("designation", designation(mix)),
    ]
    if older_group(mix):
        results.append(_text("older", older_group(mix)))
    results += [_text("aws", us_designation(mix)), Words("mix", _composition(mix)), Words("weight", _weight(mix))]
    metal = given.word("metal")
    if not metal:
        results.append(_table(mix))
    return Answer(
        results=tuple(results),
        working=_working(given, mix),
        notes=_notes(given),
        cautions=_cautions(given, mix),
        sources=(ISO, OLDER, US, DENSITY, TRADE),
        next_questions=_next(mix),
        verdict=_verdict(mix, metal) if metal else None,
    )


def _text(name: str, text: str) -> Words:
    return Words(name, say("gas-blend.named", mark=text))


def _character(symbol: str) -> str:
    return symbol[:2] if symbol[0] == "M" else symbol[0]


def _gas(name: str) -> Message:
    return say("gas-blend.field." + name)


def _composition(mix: tuple[float, ...]) -> Message:
    parts = [(-mix[place], place) for place in range(len(mix)) if mix[place] > 0.0]
    parts.sort()
    listed: Message | None = None
    for less, place in reversed(parts):
        part = say("gas-blend.part", percent=Plain(-less * 100.0, 4), gas=_gas(NAMES[place]))
        listed = part if listed is None else say("list.comma", first=part, rest=listed)
    assert listed is not None
    return listed


def _ratio(mix: tuple[float, ...]) -> float:
    return numerals.settle(density_against_air(mixture_density(mix)))


def _weight(mix: tuple[float, ...]) -> Message:
    ratio = _ratio(mix)
    way = "sinks" if ratio > _SINKS else "rises" if ratio < _RISES else "even"
    return say("gas-blend.weight." + way, ratio=Plain(ratio, 3))


def _use(mix: tuple[float, ...], metal: str) -> tuple[str, Message]:
    verdict, reason = suits(mix, metal)
    return verdict, say("gas-blend.use." + verdict, reason=say("gas-blend.why." + metal + "." + reason))


def _table(mix: tuple[float, ...]) -> Table:
    rows = tuple((say("gas-blend.option.metal." + metal), _use(mix, metal)[1]) for metal in METALS)
    columns = (say("gas-blend.column.metal"), say("gas-blend.column.use"))
    return Table("metals", say("gas-blend.table"), columns, rows)


def _verdict(mix: tuple[float, ...], metal: str) -> Verdict:
    verdict, use = _use(mix, metal)
    name = say("gas-blend.option.metal." + metal)
    return Verdict(_VERDICTS[verdict], say("gas-blend.verdict", metal=name, use=use))


def _working(given: Given, mix: tuple[float, ...]) -> tuple[Message, ...]:
    lines = []
    if given.word("second_blend"):
        first, second = given.number("gas_flow"), given.number("second_flow")
        lines.append(
            say(
                "gas-blend.working.two",
                first=given.measured("gas_flow"),
                second=Measured(second, "gas_flow", None, given.units.get("gas_flow")),
                percent=Plain(fraction_of_two(0.0, 1.0, first, second) * 100.0, 3),
            )
        )
    for place in range(len(mix)):
        if mix[place] > 0.0:
            density = GASES[place][3]
            lines.append(
                say(
                    "gas-blend.working.part",
                    gas=_gas(NAMES[place]),
                    percent=Plain(mix[place] * 100.0, 4),
                    density=Plain(density, 4),
                    product=Plain(mix[place] * density, 4),
                )
            )
    total, air = Plain(mixture_density(mix), 4), Plain(AIR_DENSITY, 4)
    lines.append(say("gas-blend.working.sum", density=total, air=air, ratio=Plain(_ratio(mix), 3)))
    return tuple(lines)


def _notes(given: Given) -> tuple[Message, ...]:
    if not given.word("second_blend"):
        rest = "carbon_dioxide" in given.made and given.number("carbon_dioxide") > 0.0
        return (say("gas-blend.note.rest") if rest else say("gas-blend.note.nominal"),)
    first, second = given.number("gas_flow"), given.number("second_flow")
    ends = []
    for error in (_METER, -_METER):
        ends.append(fraction_of_two(0.0, 1.0, first * (1.0 + error), second * (1.0 - error)) * 100.0)
    return (say("gas-blend.note.band", low=Plain(ends[0], 2), high=Plain(ends[1], 2)),)


def _cautions(given: Given, mix: tuple[float, ...]) -> tuple[Message, ...]:
    cautions = [say("caution.cylinder"), say("gas-blend.caution.procedure")]
    if given.word("second_blend"):
        cautions.append(say("gas-blend.caution.back-feed"))
    if mix[4] > 0.0:
        cautions.append(say("gas-blend.caution.hydrogen"))
    if numerals.settle(mix[2]) > _ENRICHED:
        cautions.append(say("gas-blend.caution.oxygen"))
    return tuple(cautions)


def _next(mix: tuple[float, ...]) -> tuple[Next, ...]:
    carried = _carried(mix)
    if not carried:
        return ()
    supply = Next("gas-supply", say("gas-blend.next.supply"), carried)
    if mix[5] > 0.0:
        return (supply,)
    return (Next("gas-flow", say("gas-blend.next.flow"), carried), supply)


def _carried(mix: tuple[float, ...]) -> tuple[tuple[str, object], ...]:
    """Return the gas as gas-supply asks for it, or nothing where it does not know the mix."""
    argon, carbon_dioxide, oxygen, helium = [numerals.settle(each) for each in mix[:4]]
    if carbon_dioxide == 1.0:
        return (("gas", LIQUID),)
    if mix[5] == 1.0:
        return (("gas", "nitrogen"),)
    if helium > 0.0 and numerals.settle(argon + helium) == 1.0:
        return (("gas", HELIUM_MIX),) + carry("helium", Measured(helium, "percentage"), 0.01, 1.0)
    if argon == 1.0:
        return (("gas", "argon"),)
    if numerals.settle(argon + oxygen) == 1.0 and oxygen <= HIGHEST_OXYGEN_FRACTION:
        return (("gas", "argon-oxygen"),)
    if numerals.settle(argon + carbon_dioxide) == 1.0 and carbon_dioxide <= HIGHEST_CARBON_DIOXIDE_FRACTION:
        share = Measured(carbon_dioxide, "percentage")
        return (("gas", MIXED),) + carry("carbon_dioxide", share, 0.0001, HIGHEST_CARBON_DIOXIDE_FRACTION)
    return ()


CALCULATOR = Calculator(
    name="gas-blend",
    fields=(
        Choice("blend", ("other",) + tuple(row[0] for row in BLENDS), default="other"),
        Quantity(
            "carbon_dioxide",
            "percentage",
            when=("blend", ("other",)),
            presets=("25 %", "20 %", "18 %", "15 %", "10 %", "8 %", "5 %", "2.5 %"),
        ),
        Quantity("argon", "percentage", hint=True, when=("blend", ("other",)), presets=("75 %", "90 %", "98 %")),
        Quantity("oxygen", "percentage", optional=True, when=("blend", ("other",)), presets=("1 %", "2 %", "5 %")),
        Quantity("helium", "percentage", optional=True, when=("blend", ("other",)), presets=("25 %", "75 %", "90 %")),
        Choice("metal", METALS, optional=True),
        Choice("second_blend", _SECOND, optional=True),
        Quantity("gas_flow", when=("second_blend", _SECOND)),
        Quantity("second_flow", "gas_flow", hint=True, when=("second_blend", _SECOND)),
        Quantity("hydrogen", "percentage", optional=True, when=("blend", ("other",))),
        Quantity("nitrogen", "percentage", optional=True, when=("blend", ("other",))),
    ),
    relations=(
        Relation(
            ("argon", "carbon_dioxide"),
            _solve,
            check="",
            also=("oxygen", "helium", "hydrogen", "nitrogen"),
            takes_part=lambda given: given.word("blend") == "other",
        ),
    ),
    prepare=_prepare,
    answer=_answer,
    english=ENGLISH,
    sources=(ISO, OLDER, US, DENSITY, TRADE),
    place=52,
    fold_from="hydrogen",
)
