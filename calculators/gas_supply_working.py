"""The working of a gas supply, line by line."""

from calculators import numerals
from calculators.contract import Measured, Message, Plain, say
from calculators.cylinder_supply import Supply
from calculators.facts.gas_state import CARBON_DIOXIDE_REFERENCE_DENSITY, STANDARD_ATMOSPHERE
from calculators.gas_density import compressibility


class Working:
    """What is in the cylinder, and how long it lasts or what is needed, line by line."""

    def __init__(self, supply: Supply) -> None:
        self.supply = supply

    def lines(self) -> tuple[Message, ...]:
        """Return the lines in the order in which a reader needs them."""
        supply = self.supply
        lines = _of_time(supply) if supply.needed else []
        if supply.liquid:
            lines += _of_mass(supply)
        elif supply.in_cylinder:
            lines += _of_pressure(supply)
        return tuple(lines if supply.needed else lines + _of_time(supply))


def _of_time(supply: Supply) -> list[Message]:
    """Return the line of gas, flow and time, gas and flow in units that go together."""
    given = supply.given
    if not given.has("gas_flow"):
        return []
    unit = given.units.get("gas_flow")
    volume_unit = {"ft3/h": "ft3", "L/min": "L"}.get(unit or "")
    flow = Measured(given.number("gas_flow"), "gas_flow", 4, unit)
    volume = Measured(supply.volume, "gas_volume", 4, volume_unit)
    id = "need" if supply.needed else "flow" if "gas_flow" in given.made else "time"
    time = supply.lasting() if id == "time" else given.number("arc_time")
    shown = Measured(time, "arc_time", 4, "h" if unit == "ft3/h" else "min")
    minutes = Measured(time, "arc_time", 4, "min")
    return [say("gas-supply.working." + id, gas_flow=flow, gas_volume=volume, arc_time=shown, minutes=minutes)]


def _of_mass(supply: Supply) -> list[Message]:
    given = supply.given
    mass = given.number("gas_mass") if given.has("gas_mass") else supply.volume * CARBON_DIOXIDE_REFERENCE_DENSITY
    lines = []
    if given.has("cylinder_mass") and given.has("tare"):
        gross, tare = given.measured("cylinder_mass", "gas_mass"), given.measured("tare", "gas_mass")
        lines.append(say("gas-supply.working.net", gross=gross, tare=tare, gas_mass=Measured(mass, "gas_mass", 4)))
    id = "gas-supply.working.weight" if supply.needed else "gas-supply.working.liquid"
    density = Plain(CARBON_DIOXIDE_REFERENCE_DENSITY, 4)
    kilograms, cubic_metres = Measured(mass, "gas_mass", 4, "kg"), Measured(supply.volume, "gas_volume", 4, "m3")
    lines.append(say(id, gas_mass=kilograms, gas_volume=cubic_metres, density=density))
    return lines


def _of_pressure(supply: Supply) -> list[Message]:
    given = supply.given
    lines = []
    count = given.number("cylinder_count")
    if count > 1.0:
        each = Measured(supply.size / count, "cylinder_water_volume", 4, "L")
        size = Measured(supply.size, "cylinder_water_volume", 4, "L")
        lines.append(say("gas-supply.working.manifold", count=Plain(count, 1), each=each, size=size))
    for id, name, inside in (
        ("contents", "cylinder_pressure", supply.inside),
        ("kept", "reserve", supply.kept),
    ):
        lines.append(
            say(
                "gas-supply.working." + id,
                pressure=given.measured(name, "cylinder_pressure"),
                size=Measured(supply.size, "cylinder_water_volume", 4, "L"),
                inside=Plain(inside, 4),
                outside=Plain(supply.outside, 4),
                volume=Measured(supply.size * inside / supply.outside, "gas_volume", 4, "L"),
            )
        )
    litres, feet = Measured(supply.usable, "gas_volume", 4, "L"), Measured(supply.usable, "gas_volume", 4, "ft3")
    lines.append(say("gas-supply.working.usable", litres=litres, feet=feet))
    absolute = supply.pressure + STANDARD_ATMOSPHERE
    factor = compressibility(absolute, supply.temperature, supply.fraction, supply.second)
    temperature = Measured(supply.temperature, "cylinder_temperature", None, given.units.get("cylinder_temperature"))
    shown = Measured(absolute, "cylinder_pressure", 4, given.units.get("cylinder_pressure"))
    lines.append(say("gas-supply.working.factor", absolute=shown, temperature=temperature, factor=Plain(factor, 4)))
    return lines + [_ideal(supply)]


def _ideal(supply: Supply) -> Message:
    """Return what the ideal gas law would have said, and how far that is off."""
    ideal = supply.ideal()
    off = numerals.settle(ideal / supply.usable - 1.0, 3)
    return say(
        "gas-supply.working.ideal-" + ("more" if off > 0.0 else "less"),
        gas_volume=Measured(ideal, "gas_volume"),
        percent=Plain(abs(off) * 100.0, 2),
        difference=Measured(abs(ideal - supply.usable), "gas_volume", 2),
    )
