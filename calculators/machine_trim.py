"""Measure your machine: what its own marks and taps give, and the melting law fitted to it."""

from calculators import machine_fields, numerals, ranges, solid_wire, units, wire_mass
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
    Rows,
    Source,
    Table,
    Text,
    Verdict,
    Words,
    say,
)
from calculators.drawings import trim_pairs
from calculators.facts import trim, wires
from calculators.machine import FeedDial, VoltageKnob, VoltageTaps
from calculators.machine_trim_words import ENGLISH
from calculators.melting_law import MeltingLaw
from calculators.melting_trim import MeltingTrim, Pair
from calculators.ranges import OutOfRange

RUN_OUT = Source("Wire run out in six seconds, times ten", "common practice")
LEAST_SQUARES = Source("NIST/SEMATECH e-Handbook of Statistical Methods, 4.1.4: least squares, weighted", "published")
FEW_PAIRS = Source("Two terms from three pairs over 30 % of current, else one factor", "common practice")
LESNEWICH = Source(
    "Lesnewich, Welding Journal, 1958, as in the AWS Welding Handbook: wire feed = arc term + resistance term",
    "from memory",
)

_DIALS, _PAIRS = ("dials", "all"), ("pairs", "all")
_IN_MINUTES = (("in", "in/min"), ("ft", "in/min"), ("mm", "m/min"), ("m", "m/min"))


# ---------------------------------------------------------------- dials


def _seconds(given: Given) -> float:
    return given.number("run_out_time") if given.has("run_out_time") else wires.RUN_OUT_TIME


def _feed_unit(row: Given) -> str:
    return dict(_IN_MINUTES)[row.units.get("run_out_length", "mm")]


def _feeds(given: Given) -> list[tuple[Given, float]]:
    """Return (row, feed [m/s]) of every feed mark."""
    found = []
    for row in given.rows("feed_marks"):
        feed = wire_mass.feed_measured(row.number("run_out_length"), _seconds(given))
        found.append((row, feed))
    return found


def _feed_dial(given: Given) -> FeedDial | None:
    feeds = _feeds(given)
    if len(feeds) < 2:
        return None
    unit = _feed_unit(feeds[0][0])
    pairs = [(_text(row.number("mark"), 6), units.from_coherent(feed, unit)) for row, feed in feeds]
    try:
        dial = FeedDial(_written(pairs, unit))
        return FeedDial(dial.written())
    except Refusal as refusal:
        raise Refusal("", refusal.message) from None


def _voltage_dial(given: Given) -> VoltageKnob | VoltageTaps | None:
    rows = given.rows("taps")
    for row in rows:
        name = numerals.tidy(row.word("tap"))
        if name.endswith(",") or [mark for mark in " =;" if mark in name]:
            raise Refusal("taps-" + str(row.place) + "-tap", say("machine-trim.refusal.tap"))
    if len(rows) < 2:
        return None
    text = _written([(numerals.tidy(row.word("tap")), row.number("voltage")) for row in rows], "V")
    try:
        if given.word("voltage_control") == "knob":
            return VoltageKnob(text)
        taps = VoltageTaps(text)
    except Refusal as refusal:
        raise Refusal(_row_named(refusal.message, rows), refusal.message) from None
    if given.word("voltage_control") == "" and taps.numbered():
        raise Refusal("voltage_control", say("machine-trim.refusal.control"))
    return taps


def _row_named(message: Message, rows: list[Given]) -> str:
    """Return the box of a mark that is no number, where that is what is wrong: else two rows are, or more."""
    mark = dict(message.parameters).get("mark")
    for row in rows:
        if message.id == "dial.place" and numerals.tidy(row.word("tap")) == mark:
            return "taps-" + str(row.place) + "-tap"
    return ""


def _written(pairs: list[tuple[str, float]], unit: str) -> str:
    return " ".join([mark + "=" + _text(value, 4) for mark, value in pairs] + [unit])


def _text(value: float, figures: int) -> str:
    return numerals.significant(value, figures, False)


def _feed_table(given: Given) -> Table:
    columns = tuple(say("machine-trim.column." + head) for head in ("mark", "run-out", "feed"))
    rows = tuple(
        (
            Plain(row.number("mark"), 4),
            row.measured("run_out_length"),
            Measured(feed, "wire_feed_speed", None, _feed_unit(row)),
        )
        for row, feed in _feeds(given)
    )
    return Table("feed_marks", say("machine-trim.table.feed"), columns, rows)


# ---------------------------------------------------------------- melting


def _pairs(given: Given) -> list[Pair]:
    law = MeltingLaw(given.values)
    found = []
    for row in given.rows("pairs"):
        current, distance = row.number("current"), row.number("contact_tip_to_work")
        try:
            extension = law.extension(distance)
            lowest, highest = law.current_limits(extension)
            ranges.require("current", current, lowest, highest, "A")
        except OutOfRange as error:
            raise _outside(row, error) from None
        arc = law.arc * current
        feed = law.feed(current, extension)
        found.append(Pair(row.place, row.number("wire_feed_speed"), current, arc, feed - arc))
    return found


def _outside(row: Given, error: OutOfRange) -> Refusal:
    """Return which pair the law is not known for, and from where to where it is."""
    unit = row.units.get(error.name)
    ends = [Measured(end or 0.0, error.name, None, unit) for end in (error.low, error.high)]
    label = say("machine-trim.field." + error.name)
    message = say("machine-trim.refusal.outside", pair=row.place, label=label, low=ends[0], high=ends[1])
    return Refusal("pairs-" + str(row.place) + "-" + error.name, message)


def _trim(given: Given) -> MeltingTrim:
    """Return the fitted law, after refusing pairs that no wire and no arc explain."""
    law = MeltingLaw(given.values)
    pairs = _pairs(given)
    found = MeltingTrim(pairs)
    if numerals.settle(found.farthest, 6) > trim.FARTHEST:
        pair, off, _ = found.worst()
        raise _refused(pair, off, "odd" if len(pairs) >= trim.FEWEST_PAIRS else "two")
    limit = law.half_band + trim.READINGS
    ranked = [(numerals.settle(abs(pair.off((1.0, 1.0))), 6), -place) for place, pair in enumerate(pairs)]
    factor = sum([1.0 + pair.off((1.0, 1.0)) for pair in pairs]) / len(pairs)
    if numerals.settle(abs(factor - 1.0), 6) > limit:
        pair = pairs[-max(ranked)[1]]
        raise _refused(pair, pair.off((1.0, 1.0)), "far")
    return found


def _refused(pair: Pair, off: float, what: str) -> Refusal:
    id = "machine-trim.refusal." + what + ("-above" if off > 0.0 else "-below")
    shown = Plain(abs(off) * 100.0, 2)
    return Refusal("pairs-" + str(pair.place) + "-wire_feed_speed", say(id, pair=pair.place, percent=shown))


def _pair_table(given: Given, found: MeltingTrim) -> Table:
    columns = tuple(say("machine-trim.column." + head) for head in ("pair", "current", "feed", "off"))
    rows = []
    for off, row in zip(found.offs, given.rows("pairs")):
        percent = Plain(off * 100.0 if abs(off) >= 0.0005 else 0.0, 2)
        rows.append((str(row.place), row.measured("current"), row.measured("wire_feed_speed"), percent))
    return Table("pairs", say("machine-trim.table.pairs"), columns, tuple(rows))


def _trim_words(found: MeltingTrim) -> Message:
    off = numerals.settle(found.factor, 3) - 1.0
    id = "machine-trim.trim." + ("same" if off == 0.0 else "more" if off > 0.0 else "less")
    return say(id, percent=Plain(abs(off) * 100.0, 2))


def _trim_results(found: MeltingTrim) -> list[object]:
    return [
        Words("melting_trim", _trim_words(found)),
        Number("arc_term", found.terms[0], "trim_factor"),
        Number("resistance_term", found.terms[1], "trim_factor"),
        Number("trim_band", found.band, "percentage", figures=2),
    ]


def _trim_verdict(found: MeltingTrim) -> Verdict:
    odd = found.odd_one()
    if odd is not None:
        percent = Plain(abs(odd[1]) * 100.0, 2)
        verdict = say("machine-trim.verdict.odd", pair=odd[0].place, percent=percent)
        return Verdict("unclear", verdict, say("machine-trim.remedy.odd", pair=odd[0].place))
    if len(found.pairs) == 1:
        return Verdict("unclear", say("machine-trim.verdict.one"))
    return Verdict("inside", say("machine-trim.verdict.within", percent=Plain(found.farthest * 100.0, 2)))


# ---------------------------------------------------------------- the answer


def _answer(given: Given) -> Answer:
    feed_dial, voltage_dial = _feed_dial(given), _voltage_dial(given)
    found = _trim(given) if given.rows("pairs") else None
    if not given.rows("feed_marks") and not given.rows("taps") and found is None:
        raise Refusal("", say("machine-trim.refusal.nothing"))
    results: list[object] = []
    for name, dial in (("feed_dial", feed_dial), ("voltage_dial", voltage_dial)):
        if dial is not None:
            results.append(Words(name, say("machine-trim.typed", mark=dial.written())))
    if found is not None:
        results = _trim_results(found) + results
    if given.rows("feed_marks"):
        results.append(_feed_table(given))
    if found is not None:
        results.append(_pair_table(given, found))
        results.append(trim_pairs.draw(given, found))
    if not results or not isinstance(results[0], Words):
        results.insert(0, Words("one_mark", say("machine-trim.one-mark")))
    machine = _machine(given, feed_dial, voltage_dial, found)
    return Answer(
        results=tuple(results),
        working=_working(given, found),
        notes=_notes(given, feed_dial, voltage_dial, found),
        cautions=_cautions(given),
        sources=(RUN_OUT,) + ((LEAST_SQUARES, FEW_PAIRS, LESNEWICH) if found is not None else ()),
        next_questions=_next(given, machine, found),
        verdict=None if found is None else _trim_verdict(found),
        machine=machine,
    )


def _machine(
    given: Given, feed_dial: FeedDial | None, voltage_dial: VoltageKnob | VoltageTaps | None, found: MeltingTrim | None
) -> tuple[tuple[str, object], ...]:
    """Return the fields of machine_fields.py that say what was measured, as they are typed."""
    pairs: list[tuple[str, object]] = []
    for name, dial in (("feed_dial", feed_dial), ("voltage_dial", voltage_dial)):
        if dial is not None:
            pairs.append((name, dial.written()))
    if voltage_dial is not None:
        pairs.append(("voltage_control", "knob" if isinstance(voltage_dial, VoltageKnob) else "taps"))
        pairs.append(("voltage_read_at", given.word("voltage_read_at")))
    if found is not None:
        pairs.append(("arc_term", _text(found.terms[0], 3)))
        pairs.append(("resistance_term", _text(found.terms[1], 3)))
        pairs.append(("trim_band", _text(found.band * 100.0, 2)))
        pairs.append(("trim_material", given.word("wire_material")))
    named: list[tuple[str, object]] = [("machine", given.word("machine"))] if given.has("machine") else []
    return tuple(named + pairs) if pairs else ()


def _next(given: Given, machine: tuple[tuple[str, object], ...], found: MeltingTrim | None) -> tuple[Next, ...]:
    wire: list[tuple[str, object]] = []
    mode: list[tuple[str, object]] = []
    if found is not None:
        for name in ("wire_material", "filler_alloy"):
            if given.word(name):
                wire.append((name, given.word(name)))
        wire.append(("wire_diameter", given.measured("wire_diameter")))
        if given.word("transfer_mode"):
            mode.append(("transfer_mode", given.word("transfer_mode")))
    feed = [pair for pair in machine if pair[0] in machine_fields.FEED_NAMES]
    return (
        Next("settings", say("machine-trim.next.settings"), tuple(list(machine) + wire)),
        Next("wire-feed", say("machine-trim.next.wire-feed"), tuple(feed + wire + mode)),
    )


def _working(given: Given, found: MeltingTrim | None) -> tuple[Message, ...]:
    lines = []
    for row, feed in _feeds(given)[:1]:
        shown = Measured(feed, "wire_feed_speed", 4, _feed_unit(row))
        time = Measured(_seconds(given), "run_out_time")
        length = row.measured("run_out_length")
        mark = Plain(row.number("mark"), 4)
        lines.append(say("machine-trim.working.run-out", mark=mark, length=length, time=time, feed=shown))
    if found is None:
        return tuple(lines)
    if found.fitted_terms == 2:
        terms = [Plain(term, 3) for term in found.terms]
        lines.append(say("machine-trim.working.two", arc=terms[0], resistance=terms[1]))
    else:
        shares = [pair.arc_share + pair.resistance_share for pair in found.pairs]
        sums = [Plain(sum(shares), 5), Plain(sum([share * share for share in shares]), 5)]
        factor = Plain(found.terms[0], 3)
        lines.append(say("machine-trim.working.one", total=sums[0], squares=sums[1], factor=factor))
    return tuple(lines)


def _notes(
    given: Given, feed_dial: FeedDial | None, voltage_dial: VoltageKnob | VoltageTaps | None, found: MeltingTrim | None
) -> tuple[Message, ...]:
    ids = []
    if given.rows("feed_marks"):
        ids.append("dial" if feed_dial is not None else "few-marks")
    if given.rows("taps"):
        if isinstance(voltage_dial, VoltageKnob):
            ids.append("knob")
        ids += ["taps"] if voltage_dial is not None else ["few-taps", "taps"]
    if found is not None:
        ids += ["weights", "two" if found.fitted_terms == 2 else "one"]
        ids += ["band-few" if len(found.pairs) < trim.FEWEST_PAIRS else "band", "holds"]
    return tuple(say("machine-trim.note." + id) for id in ids)


def _cautions(given: Given) -> tuple[Message, ...]:
    cautions = [say("caution.run-out"), say("caution.live")]
    if given.rows("taps") or given.rows("pairs"):
        at_gun = given.rows("taps") and given.word("voltage_read_at") == "gun"
        cautions += [say("caution.gun-meter")] if at_gun else []
        cautions += [say("machine-trim.caution.meter"), say("caution.arc")]
    return tuple(cautions)


CALCULATOR = Calculator(
    name="machine-trim",
    fields=(
        Choice("measured", ("dials", "pairs", "all"), default="dials"),
        Rows(
            "feed_marks",
            (
                Quantity("mark", "dial_mark"),
                Quantity("run_out_length"),
            ),
            most=6,
            hint=True,
            when=("measured", _DIALS),
        ),
        Quantity("run_out_time", optional=True, hint=True, when=("measured", _DIALS)),
        Choice("voltage_control", machine_fields.CONTROLS, optional=True, hint=True, when=("measured", _DIALS)),
        Choice("voltage_read_at", machine_fields.READ_AT, default="machine", hint=True, when=("measured", _DIALS)),
        Rows(
            "taps",
            (Text("tap", longest=8, examples=tuple("ABCDEFGHIJ")), Quantity("voltage")),
            most=10,
            hint=True,
            when=("measured", _DIALS),
        ),
        Choice("wire_material", ("mild-steel", "stainless", "aluminum"), default="mild-steel", when=("measured", _PAIRS)),
        Choice("filler_alloy", ("4043", "5356", "5183"), optional=True, when=("wire_material", ("aluminum",))),
        Quantity("wire_diameter", hint=True, presets=solid_wire.PRESETS, when=("measured", _PAIRS)),
        Choice("transfer_mode", ("short-circuit", "spray"), optional=True, when=("measured", _PAIRS)),
        Rows(
            "pairs",
            (
                Quantity("wire_feed_speed"),
                Quantity("current"),
                Quantity("contact_tip_to_work", low=5.0, high=35.0, presets=("3/8 in", "1/2 in", "3/4 in", "10 mm", "12 mm", "19 mm")),
            ),
            most=6,
            hint=True,
            optional=False,
            when=("measured", _PAIRS),
        ),
        Text("machine", longest=40, optional=True, hint=True),
    ),
    answer=_answer,
    english=ENGLISH,
    sources=(RUN_OUT, LEAST_SQUARES, FEW_PAIRS, LESNEWICH),
    place=25,
)  # fmt: skip
