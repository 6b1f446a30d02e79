"""One machine on one supply: what it draws, what the supply has room for, and whether the cord stands it."""

from calculators import conductors, duty, ranges, supply_power, voltage_lines
from calculators.contract import Given
from calculators.facts import conductors as copper
from calculators.facts import supply as facts

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

_SUPPLIES = {name: (volts, amperes) for name, volts, amperes in facts.SUPPLIES}
_SOURCES = {name: (efficiencies, factors) for name, efficiencies, factors in facts.POWER_SOURCES}
# What shapes the balance of current and rating, and is never its blank.
OTHERS = ("supply", "power_source", "voltage", "machine_efficiency", "power_factor", "margin", "altitude") + (
    "air_temperature",
    "cord_length",
    "cord_size",
)
_NAMES = OTHERS + ("generator_power", "current", "duty_cycle")
_GAUGES = {name: gauge for name, gauge, _ in facts.CORDS}
_CARRIED = {name: amperes for name, _, amperes in facts.CORDS}
LEAST, USUAL, MOST = 0, 1, 2  # of efficiency and power factor


class Machine:
    """A kind of machine: its efficiency and power factor, typed or usual. `values` are in coherent SI."""

    def __init__(self, values: "dict[str, Any]") -> None:
        efficiencies, factors = _SOURCES[values["power_source"]]
        efficiency, factor = values.get("machine_efficiency"), values.get("power_factor")
        self.efficiencies = efficiencies if efficiency is None else (efficiency, efficiency, efficiency)
        self.factors = factors if factor is None else (factor, factor, factor)
        self.voltage: float | None = values.get("voltage")

    def volts(self, current: float) -> float:
        """Return the voltage typed, else that of the rating line, [V]."""
        return self.voltage or voltage_lines.load_voltage(current)

    def apparent(self, current: float, which: int = USUAL) -> float:
        """Return the apparent power drawn, [W]; `which` is the least or the most efficient of its kind."""
        return supply_power.apparent_power(current, self.volts(current), self.efficiencies[which], self.factors[which])

    def current_of(self, apparent: float, which: int = USUAL) -> float:
        """Return the welding current that draws so much apparent power, [A]."""
        power = apparent * self.efficiencies[which] * self.factors[which]
        return power / self.voltage if self.voltage else supply_power.current_of_power(power)


class Room:
    """What of a rating may be used: less at height and in heat, and a margin kept."""

    def __init__(self, values: "dict[str, Any]") -> None:
        altitude, air = values.get("altitude") or 0.0, values.get("air_temperature") or facts.RATED_TEMPERATURE
        self.left = supply_power.derating(altitude, air)
        self.worst = supply_power.derating(altitude, air, True)
        margin = values.get("margin")
        self.margin = facts.MARGIN if margin is None else margin

    def usable(self, rating: float) -> float:
        """Return the apparent power that may be drawn, [W]."""
        return rating * self.left / (1.0 + self.margin)

    def rating_for(self, apparent: float) -> float:
        """Return the rating that has that room, [W]."""
        return apparent * (1.0 + self.margin) / self.left


class Cord:
    """An extension cord between supply and machine, as far as it is told."""

    def __init__(self, values: "dict[str, Any]") -> None:
        self.length: float | None = values.get("cord_length")
        self.size: str = values.get("cord_size") or ""
        self.told = self.length is not None or self.size != ""
        self.volts = _SUPPLIES[values["supply"]][0]

    def _resistance(self, size: str) -> float:
        if self.length is None:
            return 0.0
        area = conductors.awg_area(_GAUGES[size])
        return conductors.loop_resistance(self.length, area, conductors.copper_resistivity(copper.HOT_LEAD))

    def drop(self, drawn: float) -> float:
        """Return what the cord loses, [V]; nothing where its length is not known."""
        return drawn * self._resistance(self.size)

    def carried(self) -> float:
        """Return what its wires carry, [A]; a cord is too thin a thing to be averaged over minutes."""
        return _CARRIED[self.size]

    def most(self, size: str) -> float:
        """Return the most a size stands: by its heat, and by what the code's note would have lost, [A]."""
        resistance = self._resistance(size)
        return min(_CARRIED[size], facts.CORD_LIMIT * self.volts / resistance) if resistance else _CARRIED[size]

    def enough(self, drawn: float) -> str:
        """Return the thinnest size that stands it, or nothing."""
        found = [name for name, _, _ in facts.CORDS if not ranges.above(drawn, self.most(name))]
        return found[0] if found else ""


class Balance:
    """What a machine draws against what a supply has room for."""

    def __init__(self, values: "dict[str, Any]") -> None:
        self.values = values
        self.machine, self.room, self.cord = Machine(values), Room(values), Cord(values)

    def usable(self) -> float:
        """Return the apparent power that the supply has room for, through whichever cord is told, [W]."""
        room = self.room.usable(self.values["generator_power"])
        return min(room, self.cord.most(self.cord.size) * self.cord.volts) if self.cord.size else room

    def solved(self, unknown: str, which: int = USUAL) -> float:
        """Return the current that supply and cord carry [A], or the rating that the current takes [W]."""
        if unknown == "current":
            return self.machine.current_of(self.usable(), which)
        return self.room.rating_for(self.machine.apparent(self.values["current"], which))


class Load:
    """The machine at work: what it draws, and from what."""

    def __init__(self, given: Given) -> None:
        self.values: dict[str, Any] = {name: given.values.get(name) for name in _NAMES}
        self.balance = Balance(self.values)
        self.machine, self.room, self.cord = self.balance.machine, self.balance.room, self.balance.cord
        self.volts, self.breaker = _SUPPLIES[self.values["supply"]]
        self.rating: float = self.values["generator_power"]
        self.current: float = self.values["current"]
        self.arc_volts = self.machine.volts(self.current)
        self.apparent = self.machine.apparent(self.current)
        self.real = self.apparent * self.machine.factors[USUAL]
        self.drawn = self.apparent / self.volts
        share = self.values["duty_cycle"]
        self.idle = facts.IDLE_POWER / self.volts
        self.limited = ranges.above(self.room.usable(self.rating), self.balance.usable())  # by the cord
        self.heating = self.drawn if share is None else duty.effective_current(self.drawn, share, self.idle)

    def state(self) -> str:
        """Return whether the supply carries it: `inside`, `unclear` or `outside`."""
        if not ranges.above(self.apparent, self.room.usable(self.rating)):
            return "inside"
        if self.breaker:
            trips = not ranges.above(facts.TRIPS_SOON * self.breaker, self.drawn)
            return "outside" if trips or ranges.above(self.heating, self.breaker) else "unclear"
        return "outside" if ranges.above(self.apparent, self.rating * self.room.left) else "unclear"

    def cord_for(self, solved_for: str | None) -> tuple[float, str]:
        """Return the welding current that a cord is chosen for [A], and its thinnest size, or nothing.

        It is the most that the supply carries, as the headline says, or the current asked about where that is more,
        where it alone is known, or where no cord stands the other; for that, at the least efficient of the kind.
        """
        asked = self.current, self.cord.enough(self.machine.apparent(self.current, LEAST) / self.volts)
        room = self.room.usable(self.rating)
        if solved_for == "generator_power" or ranges.above(self.apparent, room):
            return asked
        size = self.cord.enough(room / self.volts)
        return (self.machine.current_of(room), size) if size or solved_for == "current" else asked
