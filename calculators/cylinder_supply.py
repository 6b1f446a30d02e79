"""The supply of gas that was asked about: what is known of it, what follows, and how sure that is."""

from calculators import numerals, units
from calculators.contract import Given
from calculators.cylinder_contents import absolute_pressure, expanded_volume, ideal_gas_volume_in_cylinder
from calculators.cylinder_gas import LIQUID, CylinderGas
from calculators.facts.cylinders import (
    METRIC_GAS_CYLINDERS,
    RESERVE_PRESSURE,
    US_GAS_CYLINDERS,
)
from calculators.gas_density import HIGHEST_GAUGE_PRESSURE, density, reference_density
from calculators.usable_gas import pressure_to_start, usable_gas_volume

TYPE_CHECKING = False
if TYPE_CHECKING:
    Parts = list[tuple[str, float, float]]

UNNAMED = "other"  # a cylinder whose water volume is known

_PSI = units.factor_of("psi")
_LITRE = units.factor_of("L")

# (name, water volume [m3], full pressure [Pa gauge] at 70 degF or 0 where one size is filled to several)
NAMED = tuple((str(feet) + "-ft3", litres * _LITRE, psi * _PSI) for feet, litres, psi in US_GAS_CYLINDERS) + tuple(
    (str(int(litres)) + "-litre", litres * _LITRE, 0.0) for litres in METRIC_GAS_CYLINDERS
)
FILLED_AT = units.to_coherent(70.0, "degF")
USUAL_RESERVE = RESERVE_PRESSURE * _PSI

USUAL_TEMPERATURE = 293.15  # [K], 20 degC; taken where none is given
COLD, HOT = 273.15, 308.15  # [K], 0 and 35 degC; where the gas may lie when none is given

# What the welder's own instruments add. Class 2.5 is 2.5 % of the span (EN 837-1, table 11); that a cylinder
# gauge is of that class and spans 315 bar, that a flow meter is good to 10 % and a scale to 1 %, is from memory.
GAUGE_ERROR = 0.025 * 315.0e5  # [Pa]
_FLOW_SHARE = 0.10
_SCALE_SHARE = 0.01
_SIZE_SHARE = 0.05  # water volumes of one named size: facts/cylinders.py
_MIX_SHARE = 0.01  # the equation of state of the mixes: facts/gas_state.py


class Supply:
    """The gas, its cylinder, the flow and the time, as far as they are known; coherent SI."""

    def __init__(self, given: Given) -> None:
        self.given = given
        self.liquid = given.word("gas") == LIQUID
        self.temperature = given.number("cylinder_temperature")
        self.volume = given.number("gas_volume")
        self.in_cylinder = not self.liquid and given.has("cylinder_pressure") and given.has("cylinder_water_volume")
        if not self.liquid:
            gas = CylinderGas(given.values)
            self.fraction, self.second = gas.fraction, gas.second
            self.reserve = given.number("reserve")
        if self.in_cylinder:
            self.size = given.number("cylinder_water_volume") * given.number("cylinder_count")
            self.pressure = given.number("cylinder_pressure")
            # Kept, since a density takes the phone's Python long: at the gauge, at the reserve, at the reference.
            self.inside = self._density(self.pressure, self.temperature)
            self.kept = self._density(self.reserve, self.temperature)
            self.outside = reference_density(self.fraction, 0.0, self.second)
            self.usable = self._given_by(self.inside - self.kept)
        self.needed = self._is_needed()
        both = given.has("gas_flow") and given.has("arc_time")
        self.judged = both and not self.needed and not {"gas_flow", "arc_time"} & set(given.made)
        self._of_cylinder: Parts | None = None
        self.from_gauge = self.in_cylinder and "gas_volume" in given.made and not self.needed

    def _is_needed(self) -> bool:
        """Return whether the gas was reckoned from flow and time, not from what there is."""
        given = self.given
        if "gas_volume" not in given.made or {"gas_flow", "arc_time"} & set(given.made):
            return False
        after = given.made[given.made.index("gas_volume") + 1 :]
        if any(name in after for name in ("cylinder_pressure", "cylinder_water_volume", "gas_mass")):
            return True
        return not (self.in_cylinder or given.has("gas_mass"))

    def _density(self, pressure: float, temperature: float) -> float:
        return density(absolute_pressure(pressure), temperature, self.fraction, 0.0, self.second)

    def _given_by(self, difference: float) -> float:
        """Return the volume that a fall in density gives, [m3]."""
        return expanded_volume(self.size, difference, self.outside)

    def usable_above(self, reserve: float) -> float:
        """Return what the cylinder gives down to another reserve, [m3]."""
        return self._given_by(self.inside - self._density(reserve, self.temperature))

    def usable_at(self, temperature: float) -> float:
        """Return what the cylinder gives if the gas has another temperature, [m3]."""
        return self._given_by(self._density(self.pressure, temperature) - self._density(self.reserve, temperature))

    def usable_off(self, error: float) -> float:
        """Return what the cylinder gives if the gauge is an error out, [m3]."""
        pressure = min(max(self.pressure + error, self.reserve), HIGHEST_GAUGE_PRESSURE)
        return self._given_by(self._density(pressure, self.temperature) - self.kept)

    def ideal(self) -> float:
        """Return what the ideal gas law says that the cylinder gives, [m3]."""
        ends = [absolute_pressure(pressure) for pressure in (self.pressure, self.reserve)]
        full, kept = [ideal_gas_volume_in_cylinder(self.size, end, self.temperature) for end in ends]
        return full - kept

    def pressure_at_end(self) -> float | None:
        """Return the gauge pressure after gas_flow * arc_time was used, or None if that is more than there is."""
        used = self.given.number("gas_flow") * self.given.number("arc_time")
        if not self.from_gauge or numerals.settle(used) > numerals.settle(self.volume):
            return None
        return pressure_to_start(
            self.volume - used, self.size, self.reserve, self.temperature, self.fraction, self.second
        )

    def pressure_for(self, volume: float) -> float | None:
        """Return the gauge pressure at which the cylinder gives a volume, or None if it never can."""
        most = self.usable_off(HIGHEST_GAUGE_PRESSURE)
        if numerals.settle(volume) > numerals.settle(most):
            return None
        return pressure_to_start(volume, self.size, self.reserve, self.temperature, self.fraction, self.second)

    def full(self, name: str) -> float | None:
        """Return what a full cylinder of that name gives, [m3], or None if it is filled to several pressures."""
        for each, size, pressure in NAMED:
            if each == name and pressure:
                start = max(pressure, self.reserve)
                size *= self.given.number("cylinder_count")
                return usable_gas_volume(size, start, self.reserve, FILLED_AT, self.fraction, self.second)
        return None

    # ------------------------------------------------------------ how sure

    def band(self, name: str) -> tuple[float, float, tuple[str, ...]] | None:
        """Return the lowest and highest likely value of a number of the answer and what makes it unsure, or None."""
        parts = self._parts(name)
        if not parts:
            return None
        value = self.lasting() if name == "arc_time" else self.given.number(name)
        down, up = _together(parts)
        start = 0.0
        if name in ("cylinder_pressure", "cylinder_water_volume"):
            down, up = up, down
            start = self.reserve if name == "cylinder_pressure" else 0.0
        low = start + (value - start) * max(0.0, 1.0 - down)
        return low, start + (value - start) * (1.0 + up), tuple(part[0] for part in parts)

    def lasting(self) -> float:
        """Return how long the gas lasts at the flow, [s]."""
        return self.volume / self.given.number("gas_flow")

    def _parts(self, name: str) -> "Parts":
        """Return (what, share below, share above) of everything that makes a number of the answer unsure."""
        parts: Parts = []
        solved = name in ("cylinder_pressure", "cylinder_water_volume")
        if self.in_cylinder and (solved or (self.from_gauge and name != "gas_mass")):
            if self._of_cylinder is None:
                self._of_cylinder = self._cylinder_parts()
            # A size that is asked for has no name yet.
            parts += [part for part in self._of_cylinder if part[0] != "size" or name != "cylinder_water_volume"]
        if self.liquid and self._is_weighed() and not self.needed:
            scale = _SCALE_SHARE * self.given.number("cylinder_mass") / self.given.number("gas_mass")
            parts.append(("scale", scale, scale))
        metered = self.needed if solved or name in ("gas_volume", "gas_mass") else self.given.has("gas_flow")
        if metered:
            parts.append(("flow", _FLOW_SHARE, _FLOW_SHARE))
        return parts

    def _is_weighed(self) -> bool:
        """Return whether the contents are what a scale showed less the tare."""
        return "gas_mass" in self.given.made and self.given.has("cylinder_mass")

    def _cylinder_parts(self) -> "Parts":
        low, high = self.usable_off(-GAUGE_ERROR), self.usable_off(GAUGE_ERROR)
        parts: Parts = [("gauge", 1.0 - low / self.usable, high / self.usable - 1.0)]
        if self.given.word("cylinder") != UNNAMED:
            parts.append(("size", _SIZE_SHARE, _SIZE_SHARE))
        if 0.0 < self.fraction < 1.0:
            parts.append(("mix", _MIX_SHARE, _MIX_SHARE))
        if "cylinder_temperature" in self.given.made:
            hot, cold = self.usable_at(HOT) / self.usable, self.usable_at(COLD) / self.usable
            parts.append(("temperature", 1.0 - hot, cold - 1.0))
        return parts


def _together(parts: "Parts") -> tuple[float, float]:
    """Return the shares below and above of independent parts: the root of the sum of their squares."""
    down, up = 0.0, 0.0
    for _, below, above in parts:
        down += below * below
        up += above * above
    return down**0.5, up**0.5
