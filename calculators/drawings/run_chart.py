"""Readings in the order they were taken, with their limits as lines: what climbs, drifts or jumps shows."""

from calculators.contract import Drawing, Message
from calculators.drawings import chart

_AIR = 0.25  # of what is drawn, above and below it
_FLAT = 0.02  # of the value: so much is drawn where all readings are the same


def draw(
    name: str,
    values: list[float | None],
    limits: list[tuple[float, Message, bool]],
    scale: tuple[str, str | None],
    words: tuple[Message, Message],
    names: tuple[Message, Message],
) -> Drawing:
    """Return the drawing of readings, None where there is none; `limits` are (value, name, whether it is the least).

    `scale` is quantity and unit; `words` are title and description; `names` those of the order and the quantity.
    """
    known = [(float(place + 1), value) for place, value in enumerate(values) if value is not None]
    shown = [value for _, value in known] + [limit for limit, _, _ in limits]
    bottom, top = min(shown), max(shown)
    air = max((top - bottom) * _AIR, abs(top) * _FLAT, 1e-9)
    made = chart.Chart(
        chart.across(names[0], "count", (1.0, float(max(len(values), 2)))),
        chart.up(names[1], scale[0], (bottom - air, top + air), None, scale[1]),
    )
    for place, (limit, word, is_least) in enumerate(limits):
        above = not is_least
        if len(limits) == 2:  # the upper of two upwards, so that neither runs through the other
            other = limits[1 - place][0]
            above = limit > other or (limit == other and place == 0)
        made.limit(limit, word, above)
    if len(known) > 1:
        made.curve(known)
    for place_across, value in known:
        made.point(place_across, value)
    return made.drawing("run_" + name, words[0], words[1])
