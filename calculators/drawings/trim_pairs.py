"""Pairs of feed and current read off a machine, on the law fitted to them, with the plain law beside."""

from calculators import numerals
from calculators.contract import Drawing, Given, Measured, Plain, say
from calculators.drawings import melting_curve
from calculators.melting_law import MeltingLaw, Point
from calculators.melting_trim import MeltingTrim

_CURVE_STEPS = 8


def draw(given: Given, found: MeltingTrim) -> Drawing:
    """Return the pairs on the fitted law, with the plain law beside, both at the middle one of their distances."""
    rows = given.rows("pairs")
    distance = sorted([row.number("contact_tip_to_work") for row in rows])[len(rows) // 2]
    law = MeltingLaw(given.values)
    fitted: dict[str, object] = {"arc_term": found.terms[0], "resistance_term": found.terms[1], "trim_band": found.band}
    fitted.update(given.values)
    extension = law.extension(distance)
    lowest, highest = law.current_limits(extension)
    inside = min(max(rows[0].number("current"), lowest), highest)
    curve = Point(MeltingLaw(fitted), distance, inside, rows[0].number("wire_feed_speed"), False).curve(_CURVE_STEPS)
    parts = []
    for pair, row in zip(found.pairs, rows):
        off = numerals.settle(pair.off((1.0, 1.0)), 3)
        shown = {"pair": pair.place, "percent": Plain(abs(off) * 100.0, 2)}
        shown["current"], shown["feed"] = row.measured("current"), row.measured("wire_feed_speed")
        parts.append(say("machine-trim.drawing." + ("below" if off < 0.0 else "above"), **shown))
    listed = parts[-1]
    for part in reversed(parts[:-1]):
        listed = say("list.comma", first=part, rest=listed)
    shown_distance = Measured(distance, "contact_tip_to_work", None, rows[0].units.get("contact_tip_to_work"))
    words = (
        say("machine-trim.drawing.title"),
        say("machine-trim.drawing.description", contact_tip_to_work=shown_distance, pairs=listed),
    )
    names = (say("machine-trim.field.current"), say("machine-trim.field.wire_feed_speed"), say("drawing.plain"))
    plain = tuple([(row[0], law.feed(row[0], extension)) for row in curve])
    points = tuple([(row.number("current"), row.number("wire_feed_speed")) for row in rows])
    return melting_curve.draw(curve, plain, points, rows[0].units.get("wire_feed_speed"), words, names)
