"""The vocabulary: one entry per physical quantity, its units, its defaults and the range that makes sense."""


class PhysicalQuantity:
    """A quantity of the trade: the units it is offered in, the default of each system, a sensible range.

    `low` and `high` are in the unit `si`, which is also the API's default unit. `figures` is how many significant
    figures an answer shows; `places` gives fixed decimals for a unit instead. Of `money` the sign of any currency may
    be typed, and is left off. `steps` gives, for a unit, what one tap on minus or plus is worth, as it is typed.
    """

    def __init__(
        self,
        name: str,
        units: tuple[str, ...],
        si: str,
        us: str,
        low: float,
        high: float,
        figures: int = 3,
        places: tuple[tuple[str, int], ...] = (),
        money: bool = False,
        steps: tuple[tuple[str, str], ...] = (),
    ) -> None:
        self.name = name
        self.units = units
        self.si = si
        self.us = us
        self.low = low
        self.high = high
        self.figures = figures
        self.places = places
        self.money = money
        self.steps = steps

    def unit(self, system: str) -> str:
        """Return the default unit of `us` or `si`."""
        return self.us if system == "us" else self.si

    def decimals(self, unit: str) -> int | None:
        """Return the fixed decimals an answer shows in `unit`, or None for significant figures."""
        for name, places in self.places:
            if name == unit:
                return places
        return None


def _q(
    name: str, units: tuple[str, ...], si: str, us: str, low: float, high: float, **more: object
) -> PhysicalQuantity:
    return PhysicalQuantity(name, units, si, us, low, high, **more)  # type: ignore[arg-type]


_LENGTH = ("in", "ft", "mm", "m")
_THICK = ("in", "mm")
_SPEED = ("in/min", "mm/s", "m/min")
_LINE_ENERGY = ("kJ/in", "kJ/mm", "J/mm")

# What one tap is worth: our choice, as near to the marks of a dial, a rule or a gauge as a round number goes.
_SIXTEENTHS = (("in", "1/16"), ("mm", "0.5"))
_ALONG = (("in", "1"), ("ft", "1"), ("mm", "10"), ("m", "0.1"))
_FEED = (("in/min", "10"), ("m/min", "0.25"), ("mm/s", "5"))
_FLOW = (("ft3/h", "5"), ("L/min", "1"))
_REACH = (("ft", "5"), ("m", "1"))
_ENERGY = (("kJ/in", "1"), ("kJ/mm", "0.05"), ("J/mm", "50"))
_DEGREES = (("degF", "5"), ("degC", "5"))
_HOURS = (("h", "0.5"), ("min", "5"))

_ALL = (
    _q("voltage", ("V",), "V", "V", 5.0, 60.0, steps=(("V", "0.5"),)),
    _q("current", ("A",), "A", "A", 5.0, 1000.0, steps=(("A", "5"),)),
    _q(
        "travel_speed",
        _SPEED,
        "mm/s",
        "in/min",
        0.2,
        100.0,
        steps=(("in/min", "1"), ("mm/s", "0.5"), ("m/min", "0.05")),
    ),
    _q("weld_length", _LENGTH, "mm", "in", 1.0, 1000000.0, steps=_ALONG),
    _q("pass_time", ("s", "min", "h"), "min", "min", 0.01, 60000.0, steps=(("s", "5"), ("min", "1"), ("h", "0.5"))),
    _q("arc_time", ("s", "min", "h"), "min", "min", 0.01, 60000.0, steps=(("s", "5"), ("min", "1"), ("h", "0.5"))),
    _q("thermal_efficiency", ("", "%"), "", "", 0.2, 1.0),
    _q("heat_input", _LINE_ENERGY, "J/mm", "kJ/in", 5.0, 20000.0, steps=_ENERGY),
    _q("arc_energy", _LINE_ENERGY, "J/mm", "kJ/in", 5.0, 20000.0),
    _q("heat_input_limit", _LINE_ENERGY, "J/mm", "kJ/in", 5.0, 20000.0, steps=_ENERGY),
    _q("thickness", _THICK, "mm", "in", 0.1, 300.0, places=(("in", 4), ("mm", 3)), steps=_SIXTEENTHS),
    _q("gauge", ("",), "", "", 3.0, 30.0, steps=(("", "1"),)),
    _q("mass_per_area", ("lb/ft2", "kg/m2"), "kg/m2", "lb/ft2", 0.1, 3000.0, figures=4),
    _q("wire_feed_speed", ("in/min", "m/min", "mm/s"), "m/min", "in/min", 0.5, 40.0, steps=_FEED),
    _q("wire_diameter", _THICK, "mm", "in", 0.5, 4.0, places=(("in", 3), ("mm", 2))),
    _q("contact_tip_to_work", _THICK, "mm", "in", 3.0, 60.0, steps=(("in", "1/16"), ("mm", "1"))),
    _q("run_out_length", ("in", "ft", "mm", "m"), "mm", "in", 20.0, 20000.0),
    _q("run_out_time", ("s",), "s", "s", 1.0, 60.0, steps=(("s", "1"),)),
    _q("gas_flow", ("ft3/h", "L/min"), "L/min", "ft3/h", 1.0, 100.0, steps=_FLOW),
    _q("cylinder_water_volume", ("L", "ft3"), "L", "L", 0.5, 200.0),
    _q("cylinder_pressure", ("psi", "bar"), "bar", "psi", 0.0, 300.0, steps=(("psi", "100"), ("bar", "5"))),
    _q("cylinder_temperature", ("degF", "degC"), "degC", "degF", -20.0, 50.0, steps=_DEGREES),
    _q("gas_volume", ("ft3", "L", "m3"), "L", "ft3", 0.0, 100000.0),
    _q("gas_mass", ("lb", "kg"), "kg", "lb", 0.0, 200.0),
    _q("wire_mass", ("lb", "kg"), "kg", "lb", 0.001, 1000.0, steps=(("lb", "1"), ("kg", "0.5"))),
    _q("wire_length", ("ft", "m"), "m", "ft", 0.01, 1000000.0),
    _q("spool_diameter", _THICK, "mm", "in", 20.0, 1000.0),
    _q("spool_width", _THICK, "mm", "in", 10.0, 500.0),
    _q("spool_depth", _THICK, "mm", "in", 0.0, 500.0),
    _q("ratio", ("", "%"), "", "", 0.0, 1000.0),
    _q("percentage", ("%",), "%", "%", 0.0, 100.0),
    _q("count", ("",), "", "", 1.0, 1000.0, steps=(("", "1"),)),
    _q("leg", _THICK, "mm", "in", 1.0, 50.0, figures=4, steps=_SIXTEENTHS),
    _q("joint_size", _THICK, "mm", "in", 0.0, 300.0, figures=4, steps=_SIXTEENTHS),
    _q("joint_angle", ("deg",), "deg", "deg", 0.0, 180.0, steps=(("deg", "5"),)),
    _q("bead_area", ("in2", "mm2"), "mm2", "in2", 0.1, 100000.0, figures=4),
    _q("overweld_factor", ("",), "", "", 0.8, 2.5),
    _q("deposition_efficiency", ("%",), "%", "%", 30.0, 100.0, steps=(("%", "5"),)),
    _q("mass_per_length", ("lb/ft", "kg/m"), "kg/m", "lb/ft", 0.0, 1e6, figures=4),
    _q("deposition_rate", ("lb/h", "kg/h"), "kg/h", "lb/h", 0.0, 1000.0),
    _q("throat", _THICK, "mm", "in", 0.7, 35.0, figures=4, steps=_SIXTEENTHS),
    _q("root_gap", _THICK, "mm", "in", 0.0, 10.0, figures=4, steps=(("in", "1/32"), ("mm", "0.5"))),
    _q("force_per_length", ("kip/in", "lb/in", "kN/mm"), "kN/mm", "kip/in", 0.001, 20.0),
    _q("strength", ("ksi", "MPa"), "MPa", "ksi", 100.0, 1200.0),
    _q("load_angle", ("deg",), "deg", "deg", 0.0, 90.0, steps=(("deg", "5"),)),
    _q(
        "preheat_temperature",
        ("degF", "degC"),
        "degC",
        "degF",
        -50.0,
        700.0,
        places=(("degF", 0), ("degC", 0)),
        steps=(("degF", "25"), ("degC", "10")),
    ),
    _q("cooling_time", ("s",), "s", "s", 0.5, 200.0, steps=(("s", "1"),)),
    _q("shrinkage", _THICK, "mm", "in", 0.001, 2000.0),
    _q("part_mass", ("lb", "kg"), "kg", "lb", 0.01, 10000.0),
    _q("piece_size", _LENGTH, "mm", "in", 0.5, 20000.0, steps=_ALONG),
    _q("part_length", _LENGTH, "m", "ft", 0.001, 100.0, figures=4, steps=_ALONG),
    _q("density", ("lb/in3", "kg/m3"), "kg/m3", "lb/in3", 500.0, 25000.0, figures=4),
    _q("carbon_equivalent", ("%",), "%", "%", 0.0, 5.0, places=(("%", 3),)),
    _q("diffusible_hydrogen", ("mL/100g",), "mL/100g", "mL/100g", 0.5, 60.0),
    _q("arc_power", ("W", "kW"), "W", "W", 25.0, 60000.0, figures=4),
    _q("instantaneous_energy", ("J", "kJ"), "J", "J", 1.0, 1e9, figures=4),
    _q("part_size", _THICK, "mm", "in", 0.1, 3000.0, figures=4, steps=(("in", "1/4"), ("mm", "5"))),
    _q(
        "part_width",
        _LENGTH,
        "mm",
        "in",
        0.5,
        20000.0,
        figures=4,
        steps=(("in", "1/4"), ("ft", "1"), ("mm", "5"), ("m", "0.1")),
    ),
    _q("piece_count", ("",), "", "", 0.001, 10000.0, figures=4, steps=(("", "1"),)),
    _q("section_area", ("in2", "mm2"), "mm2", "in2", 0.01, 1e8, figures=4),
    _q("total_mass", ("lb", "kg"), "kg", "lb", 0.0001, 1000000.0, figures=4),
    _q("metal_volume", ("in3", "cm3"), "cm3", "in3", 0.0, 1000000.0),
    _q("hold_time", ("h", "min"), "h", "h", 0.0, 1000.0),
    _q("lead_voltage_drop", ("V",), "V", "V", 0.0, 20.0),
    _q("lead_resistance", ("mohm", "ohm"), "mohm", "mohm", 0.1, 1000.0),
    _q("lead_length", ("ft", "m"), "m", "ft", 0.5, 200.0, steps=_REACH),
    _q("voltage_drop", ("V",), "V", "V", 0.05, 60.0),
    _q("conductor_area", ("mm2",), "mm2", "mm2", 0.1, 500.0),
    _q("conductor_temperature", ("degF", "degC"), "degC", "degF", -40.0, 120.0, steps=_DEGREES),
    _q("duty_cycle", ("%",), "%", "%", 5.0, 100.0, steps=(("%", "5"),)),
    _q(
        "generator_power",
        ("W", "kW", "kVA"),
        "kVA",
        "W",
        0.3,
        60.0,
        steps=(("W", "500"), ("kW", "0.5"), ("kVA", "0.5")),
    ),
    _q("apparent_power", ("kVA",), "kVA", "kVA", 0.01, 200.0),
    _q("altitude", ("ft", "m"), "m", "ft", -400.0, 4500.0, steps=(("ft", "500"), ("m", "100"))),
    _q("air_temperature", ("degF", "degC"), "degC", "degF", -40.0, 60.0, steps=_DEGREES),
    _q("dial_mark", ("",), "", "", 0.0, 1000.0),
    _q("trim_factor", ("",), "", "", 0.5, 2.0),
    _q("wind_speed", ("mph", "km/h"), "km/h", "mph", 0.0, 100.0, steps=(("mph", "1"), ("km/h", "1"))),
    _q("nozzle_bore", _THICK, "mm", "in", 8.0, 32.0, steps=(("in", "1/16"), ("mm", "1"))),
    _q("inlet_pressure", ("psi", "bar"), "bar", "psi", 0.0, 20.0, steps=(("psi", "5"), ("bar", "0.5"))),
    _q("leak_rate", ("ft3/h", "L/h"), "L/h", "ft3/h", 0.0, 1000000.0, figures=2),
    _q("hose_bore", _THICK, "mm", "in", 2.0, 20.0),
    _q("open_circuit_voltage", ("V",), "V", "V", 5.0, 200.0, steps=(("V", "5"),)),
    _q("body_current", ("mA",), "mA", "mA", 0.0, 1000.0, figures=2),
    _q("fire_distance", ("ft", "m"), "m", "ft", 0.0, 200.0, steps=_REACH),
    _q("hose_length", ("ft", "m"), "m", "ft", 0.5, 100.0, steps=_REACH),
    _q("leak_time", ("h", "min"), "h", "h", 0.01, 1000.0, steps=(("h", "1"), ("min", "5"))),
    _q("fill_price", ("",), "", "", 0.01, 100000.0, money=True),
    _q("shade", ("",), "", "", 1.5, 15.0, figures=2, steps=(("", "1"),)),
    _q("space_volume", ("ft3", "m3"), "m3", "ft3", 0.01, 1e7),
    _q("gas_inflow", ("ft3/h", "L/min", "L/h"), "L/min", "ft3/h", 0.001, 1000.0),
    _q("air_flow", ("ft3/min", "m3/h"), "m3/h", "ft3/min", 1.0, 1e6),
    _q("carbon_dioxide_share", ("ppm",), "ppm", "ppm", 0.0, 1e6),
    _q("air_concentration", ("mg/m3",), "mg/m3", "mg/m3", 0.0, 1e9, figures=2),
    _q("sound_level", ("dB",), "dB", "dB", 40.0, 130.0, places=(("dB", 0),), steps=(("dB", "1"),)),
    _q("average_level", ("dB",), "dB", "dB", 0.0, 200.0, places=(("dB", 1),)),
    _q("noise_share", ("%",), "%", "%", 0.0, 1e7),
    _q("exposure_time", ("h", "min"), "h", "h", 0.01, 24.0, steps=_HOURS),
    _q("monthly_cost", ("",), "", "", 0.0, 1e9, figures=2),
    _q("wire_price", ("/lb", "/kg"), "/kg", "/lb", 0.0, 10000.0, places=(("/lb", 2), ("/kg", 2)), money=True),
    _q("labor_rate", ("/h",), "/h", "/h", 0.0, 10000.0, places=(("/h", 2),), money=True, steps=(("/h", "5"),)),
    _q("energy_price", ("/kWh",), "/kWh", "/kWh", 0.0, 100.0, places=(("/kWh", 3),), money=True),
    _q("cost_per_mass", ("/lb", "/kg"), "/kg", "/lb", 0.0, 1e6, places=(("/lb", 2), ("/kg", 2))),
    _q("cost_per_length", ("/ft", "/m"), "/m", "/ft", 0.0, 1e6, places=(("/ft", 2), ("/m", 2))),
    _q("money", ("",), "", "", 0.0, 1e12, places=(("", 2),)),
    _q("price", ("",), "", "", 0.0, 1e6, places=(("", 2),), money=True),
    _q("drive_distance", ("mi", "km"), "km", "mi", 0.0, 10000.0, steps=(("mi", "5"), ("km", "5"))),
    _q("distance_price", ("/mi", "/km"), "/km", "/mi", 0.0, 1000.0, places=(("/mi", 2), ("/km", 2)), money=True),
    _q("work_time", ("h", "min"), "h", "h", 0.0, 1000.0, steps=_HOURS),
)
_BY_NAME = {entry.name: entry for entry in _ALL}


def quantity(name: str) -> PhysicalQuantity:
    """Return the vocabulary entry of that name; KeyError if the trade has no such word here."""
    return _BY_NAME[name]
