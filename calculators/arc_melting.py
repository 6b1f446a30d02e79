"""How long the arc and the stick-out are taken where the melting law is asked from a point of current and voltage."""

from calculators import transfer_limits
from calculators.melting_law import MeltingLaw
from calculators.ranges import OutOfRange

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any


class Melt:
    """The melting law as it is elsewhere: with the arc, and where it is not told the stick-out, of the mode at hand.

    That is the mode whose own law brings current and voltage where it runs; without one, an arc of no known mode.
    """

    def __init__(self, values: "dict[str, Any]", from_feed: bool) -> None:
        self.values = values
        self.from_feed = from_feed
        for mode in ("short-circuit", "spray") if values["waveform"] == "steady" else ():
            self._take(mode)
            try:
                if self._mode() == mode:
                    return
            except OutOfRange:
                continue  # this law is not asked there
        self._take("")

    def _take(self, mode: str) -> None:
        values = dict(self.values)
        values["transfer_mode"] = mode
        self.law = MeltingLaw(values)
        self.distance: float = values.get("contact_tip_to_work") or self.law.usual_distances()[1]

    def _mode(self) -> str:
        asked = self.values
        current = asked.get("current")
        if self.from_feed:
            current = self.law.checked_current(asked["wire_feed_speed"], self.distance)
        assert current is not None  # one of the two is told
        share = asked.get("carbon_dioxide") or 0.0
        return transfer_limits.mode_at(
            asked["wire_material"],
            asked["wire_diameter"],
            asked["gas"],
            current,
            asked["voltage"],
            asked["position"],
            share,
        )[0]
