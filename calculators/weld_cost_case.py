"""One way of making a weld, and what it costs: for a mass of weld metal, a length of weld, or the whole job."""

from calculators import deposit_cost, deposition, wire_mass
from calculators.contract import Given, Refusal, say
from calculators.facts import costs
from calculators.facts import deposition as facts

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

SELF_SHIELDED = "flux-cored-self-shielded"
GAS = ("gas_flow", "fill_price", "fill_volume")
AROUND = ("drive_time", "prep_time", "finish_time")
_FEED = ("wire_diameter", "wire_feed_speed")
ROW = "other"
_IN_ROW = ROW + "-1-"


class Costs:
    """Costs of a mass of weld metal [1/kg], at one efficiency and one operating factor."""

    def __init__(self, values: "dict[str, Any]", rate: float, efficiency: float, factor: float) -> None:
        self.wire = deposit_cost.wire_cost(values["wire_price"], efficiency, values["waste"])
        self.arc_on = deposit_cost.labor_cost(values["labor_rate"], rate, 1.0)
        self.arc_off = deposit_cost.labor_cost(values["labor_rate"], rate, factor) - self.arc_on
        self.gas = self.power = 0.0
        if all(name in values for name in GAS):
            price = values["fill_price"] / values["fill_volume"]
            self.gas = deposit_cost.gas_cost(price, values["gas_flow"], rate)
        if "energy_price" in values and "arc_power" in values:
            power = (values["energy_price"], values["arc_power"], costs.MACHINE_EFFICIENCY)
            self.power = deposit_cost.power_cost(power[0], power[1], power[2], rate)
        self.total = self.wire + self.gas + self.power + self.arc_on + self.arc_off


class Way:
    """One way: its wire, its rate, its costs. `values` are those of the form, coherent SI; `prefix` names its boxes."""

    def __init__(self, values: "dict[str, Any]", prefix: str = "") -> None:
        self.values = values
        self.prefix = prefix
        material = values["wire_material"]
        self.gas: str = values.get("wire_and_gas") or dict(facts.USUAL_GAS)[material]
        self._refuse()
        self.density, _ = wire_mass.density(material)
        share, half_band = deposition.deposition_efficiency(self.gas)
        if "deposition_efficiency" in values:
            share, half_band = values["deposition_efficiency"], 0.0
        self.efficiencies = (share - half_band, share, min(share + half_band, 1.0))
        self.factors = costs.OF_THE_WELDING if self._counted_apart() else costs.IN_REPAIR
        if "operating_factor" in values:
            self.factors = (values["operating_factor"],) * 3
        self.most, self.usual, self.least = [self._costs(place) for place in range(3)]
        self.rate = self._rate(share)
        self.metal = self._metal()
        self.around = sum([values.get(name, 0.0) for name in AROUND]) * values["labor_rate"]
        if self.basis() != "job":
            self.around = 0.0

    def _refuse(self) -> None:
        """Refuse what does not go together, at the box that says so."""
        chooser = self.prefix + ("other_wire" if self.prefix else "wire_and_gas")
        if self.values["wire_material"] == "aluminum" and self.gas != "solid-argon-rich":
            raise Refusal(chooser, say("weld-cost.refusal.aluminum"))
        if self.gas == SELF_SHIELDED and any(name in self.values for name in GAS):
            raise Refusal(self.prefix + "gas_flow", say("weld-cost.refusal.no-gas"))
        if self.values["rate_by"] == "rate":
            return
        if self.gas in facts.CORED:
            raise Refusal(self.prefix + "rate_by", say("weld-cost.refusal.cored"))
        for name in _FEED:
            if name not in self.values:
                raise Refusal(self.prefix + name, say("weld-cost.refusal.feed"))

    def _counted_apart(self) -> bool:
        """Return whether fitting and cleaning are counted apart from the welding."""
        return self.values.get("prep_time", 0.0) + self.values.get("finish_time", 0.0) > 0.0

    def _rate(self, efficiency: float) -> float:
        """Return the mass laid down in a time of arc, [kg/s]."""
        values = self.values
        if values["rate_by"] == "rate":
            return values["deposition_rate"]
        return deposition.deposition_rate(values["wire_feed_speed"], values["wire_diameter"], self.density, efficiency)

    def _costs(self, place: int) -> Costs:
        efficiency = self.efficiencies[place]
        return Costs(self.values, self._rate(efficiency), efficiency, self.factors[place])

    def _metal(self) -> float:
        """Return the weld metal that is paid for: of the job [kg], of a length [kg/m], or a unit of it."""
        if "weld_area" not in self.values:
            return 1.0
        per_length = deposition.deposit_per_length(self.values["weld_area"], self.density)
        return per_length * self.values.get("weld_length", 1.0)

    def basis(self) -> str:
        """Return what the cost is for: `mass`, `length` or `job`."""
        if "weld_area" not in self.values:
            return "mass"
        return "job" if "weld_length" in self.values else "length"

    def totals(self) -> tuple[float, float, float]:
        """Return the lowest, the usual and the highest cost."""
        low, usual, high = [each.total * self.metal + self.around for each in (self.least, self.usual, self.most)]
        return low, usual, high

    def around_shares(self) -> tuple[float, float, float]:
        """Return the lowest, the usual and the highest share of the cost that is labor around the arc."""
        least, usual, most = [
            (each.arc_off * self.metal + self.around) / (each.total * self.metal + self.around)
            for each in (self.least, self.usual, self.most)
        ]
        return min(least, most), usual, max(least, most)

    def arc_time(self) -> float:
        """Return how long the arc burns in the job, [s]."""
        return deposition.arc_time(self.metal, self.rate)

    def work_time(self) -> float:
        """Return how long the job takes, [s]."""
        return deposition.clock_time(self.arc_time(), self.factors[1]) + self.around / self.values["labor_rate"]

    @staticmethod
    def asked_about(given: Given) -> "list[Way]":
        """Return the way that was typed, and the other one if anything of it was."""
        values = {name: given.values[name] for name in given.values if given.has(name) and name != ROW}
        found = [Way(values)]
        for row in given.rows(ROW):
            if row.has("weld_area") and "weld_area" not in values:
                raise Refusal("weld_area", say("weld-cost.refusal.area"))
            found.append(Way(_changed(values, row), _IN_ROW))
        return found


def _changed(values: "dict[str, Any]", row: Given) -> "dict[str, Any]":
    """Return the values of a way with those of another that differ."""
    other = dict(values)
    if row.word("other_wire"):
        other["wire_and_gas"] = row.word("other_wire")
        for name in ("deposition_efficiency",) + (GAS if row.word("other_wire") == SELF_SHIELDED else ()):
            other.pop(name, None)
    for name in row.values:
        if row.has(name) and name != "rate_by":
            other[name] = row.values[name]
    if row.has("deposition_rate"):
        other["rate_by"] = "rate"
    elif row.has("wire_diameter") or row.has("wire_feed_speed"):
        other["rate_by"] = "feed"
    return other
