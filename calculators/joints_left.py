"""How many more joints a supply of gas does, and the gauge reading at which to change it."""

from calculators import numerals
from calculators.contract import Measured, Message, Number, Plain, say
from calculators.cylinder_supply import USUAL_RESERVE, Supply
from calculators.gas_density import HIGHEST_GAUGE_PRESSURE
from calculators.usable_gas import pressure_to_start, usable_gas_volume

_MOST = 1000.0


class JointsLeft:
    """The joints that a supply is good for, where the arc time of one is told."""

    def __init__(self, supply: Supply) -> None:
        given = supply.given
        self.supply = supply
        self.asked = given.has("joint_time") and not supply.needed and "gas_flow" not in given.made
        if self.asked:
            self.time = given.number("joint_time")
            self.each = given.number("gas_flow") * self.time

    def results(self, why: Message) -> list[Number]:
        """Return the joints with their band, `why` it is one, and the reading to change at."""
        if not self.asked:
            return []
        lasting = self.supply.lasting()
        band = self.supply.band("arc_time") or (lasting, lasting, ())
        low, left, high = [self._whole(each / self.time) for each in (band[0], lasting, band[1])]
        found = [Number("joints_left", left, "count", low, high, why)]
        if self.supply.from_gauge and left >= 1.0:
            found.append(Number("change_pressure", self._change(), "cylinder_pressure"))
        return found

    def _change(self) -> float:
        """Return the reading that still does one joint above what the trade leaves in a cylinder, [Pa gauge]."""
        supply = self.supply
        reserve = max(supply.reserve, USUAL_RESERVE)
        gas = (supply.temperature, supply.fraction, supply.second)
        most = usable_gas_volume(supply.size, HIGHEST_GAUGE_PRESSURE, reserve, *gas)
        return pressure_to_start(min(self.each, most), supply.size, reserve, *gas)

    def _whole(self, joints: float) -> float:
        return float(int(min(numerals.settle(joints), _MOST)))

    def working(self) -> list[Message]:
        """Return the line that counts the joints."""
        if not self.asked:
            return []
        each = Measured(self.each, "gas_volume", 3)
        joints = Plain(self.supply.volume / self.each, 4)
        volume = Measured(self.supply.volume, "gas_volume", 4)
        return [say("gas-supply.working.joints", each=each, gas_volume=volume, joints=joints)]
