"""What a gauge shows on a carbon dioxide cylinder while liquid is left in it: a table over temperature."""

from calculators import units
from calculators.contract import Measured, Table, say
from calculators.facts.gas_state import STANDARD_ATMOSPHERE
from calculators.liquid_carbon_dioxide import vapour_pressure

_CELSIUS = (-10.0, 0.0, 10.0, 20.0, 30.0)


class VapourTable(Table):
    """Temperature and gauge reading, both in both systems."""

    def __init__(self) -> None:
        rows = []
        for celsius in _CELSIUS:
            temperature = units.to_coherent(celsius, "degC")
            gauge = vapour_pressure(temperature) - STANDARD_ATMOSPHERE
            rows.append(
                (
                    say(
                        "gas-supply.both",
                        one=Measured(temperature, "cylinder_temperature", None, "degF"),
                        other=Measured(temperature, "cylinder_temperature", None, "degC"),
                    ),
                    say(
                        "gas-supply.both",
                        one=Measured(gauge, "cylinder_pressure", None, "psi"),
                        other=Measured(gauge, "cylinder_pressure", None, "bar"),
                    ),
                )
            )
        columns = (say("gas-supply.column.temperature"), say("gas-supply.column.shows"))
        super().__init__("vapour_pressures", say("gas-supply.vapour"), columns, tuple(rows))
