"""Write calculators/facts/gas_state.py from CoolProp: run this file with CPython, then review the difference.

The phone cannot carry an equation of state; it carries this small table and interpolates in it.
tests/published/test_gas_density.py compares every node, and many points between nodes, with CoolProp again.
"""

from pathlib import Path

import CoolProp
from CoolProp.CoolProp import AbstractState, PropsSI

TARGET = Path(__file__).resolve().parents[2] / "calculators" / "facts" / "gas_state.py"

GAS_CONSTANT = 8.31446261815324  # J/(mol K), CODATA 2018, exact since the SI of 2019
ATMOSPHERE = 101325.0
REFERENCE_TEMPERATURE = 288.15

PRESSURE_STEP, PRESSURES = 2500000, 14  # 0 to 325 bar absolute
FIRST_TEMPERATURE, TEMPERATURE_STEP, TEMPERATURES = 253.15, 10, 8  # -20 to 50 degC
FRACTION_STEP, FRACTIONS = 0.1, 4  # 0 to 30 % carbon dioxide
# Helium and nitrogen bend less: a coarser table, from argon alone to none of it
LIGHT_PRESSURE_STEP, LIGHT_PRESSURES = 5000000, 8  # 0 to 350 bar absolute
LIGHT_TEMPERATURES, LIGHT_FRACTIONS = 4, 4  # -20 to 50 degC and 0 to 100 %, by thirds
FIRST_SATURATION, SATURATION_STEP, SATURATIONS = 253.15, 2, 26  # -20 to 30 degC

HEAD = '''"""How far argon, argon with carbon dioxide, helium or nitrogen, and carbon dioxide are from ideal gases.

Made by tests/tools/make_gas_state.py with CoolProp {version}; do not edit by hand.

Sources (standing: published; computed with CoolProp, I. Bell et al., Ind. Eng. Chem. Res. 53 (2014) 2498)
- argon: Tegeler, Span and Wagner, J. Phys. Chem. Ref. Data 28 (1999) 779; its authors state the density to
  0.02 % up to 120 bar and 0.03 % up to 300 bar at these temperatures
- carbon dioxide: Span and Wagner, J. Phys. Chem. Ref. Data 25 (1996) 1509
- mixtures: the argon-carbon dioxide pair of Gernert (thesis, Bochum 2013; EOS-CG, Gernert and Span, J. Chem.
  Thermodyn. 93 (2016) 274) in the multi-fluid form of Kunz and Wagner (GERG-2008); taken here as good to 1 %
  of density, which is our estimate
- helium and nitrogen: the equations of state that CoolProp names for them (Ortiz Vega 2013; Span et al., J. Phys.
  Chem. Ref. Data 29 (2000) 1361); their mixes with argon by the same multi-fluid form, also taken as good to 1 %
- gas constant: CODATA 2018, exact
"""

GAS_CONSTANT = {gas_constant!r}  # [J/(mol K)]

# [kg/mol]
ARGON_MOLAR_MASS = {argon!r}
CARBON_DIOXIDE_MOLAR_MASS = {carbon_dioxide!r}
OXYGEN_MOLAR_MASS = {oxygen!r}
HELIUM_MOLAR_MASS = {helium!r}
NITROGEN_MOLAR_MASS = {nitrogen!r}

# The one reference state of the app: 15 degC and 1 atm
REFERENCE_TEMPERATURE = 288.15  # [K]
STANDARD_ATMOSPHERE = 101325.0  # [Pa]
CARBON_DIOXIDE_REFERENCE_DENSITY = {reference_density!r}  # [kg/m3], real gas

'''


def compressibility(fraction: float, temperature: float, pressure: float, second: str = "CarbonDioxide") -> float:
    """Return pressure / (molar density * gas constant * temperature), [-], of argon with a second gas."""
    if pressure == 0:
        return 1.0
    if 0 < fraction < 1:
        state = AbstractState("HEOS", "Argon&" + second)
        state.set_mole_fractions([1 - fraction, fraction])
    else:
        state = AbstractState("HEOS", second if fraction else "Argon")
    state.update(CoolProp.PT_INPUTS, pressure, temperature)
    if state.phase() == CoolProp.iphase_twophase:
        raise SystemExit(f"{fraction:.0%} carbon dioxide is part liquid at {temperature} K, {pressure} Pa")
    return pressure / (state.rhomolar() * GAS_CONSTANT * temperature)


def compressibility_lines() -> list[str]:
    """Return the source lines of the table of compressibility factors."""
    lines = [
        "# Compressibility factor x 10 000. One block a carbon dioxide fraction (0 to 0.3 by 0.1), one row",
        "# a temperature (-20 to 50 degC by 10 K), one column a pressure (0 to 325 bar absolute by 25 bar).",
        f"FRACTION_STEP = {FRACTION_STEP!r}  # [-]",
        f"FIRST_TEMPERATURE = {FIRST_TEMPERATURE!r}  # [K]",
        f"TEMPERATURE_STEP = {float(TEMPERATURE_STEP)!r}  # [K]",
        f"PRESSURE_STEP = {float(PRESSURE_STEP)!r}  # [Pa]",
        "COMPRESSIBILITY = (",
    ]
    for block in range(FRACTIONS):
        lines.append("    (")
        for row in range(TEMPERATURES):
            temperature = FIRST_TEMPERATURE + row * TEMPERATURE_STEP
            cells = (
                round(compressibility(block * FRACTION_STEP, temperature, column * PRESSURE_STEP) * 10000)
                for column in range(PRESSURES)
            )
            lines.append("        (" + ", ".join(str(cell) for cell in cells) + "),")
        lines.append("    ),")
    lines.append(")")
    return lines


def light_lines() -> list[str]:
    """Return the source lines of the tables of helium and of nitrogen in argon."""
    span = (TEMPERATURES - 1) * TEMPERATURE_STEP
    step = span / (LIGHT_TEMPERATURES - 1)
    lines = [
        "",
        "# The same for helium and for nitrogen in argon: a block a fraction (0 to 1 by thirds), a row a temperature",
        "# (-20 to 50 degC by thirds), a column a pressure (0 to 350 bar absolute by 50 bar).",
        f"LIGHT_PRESSURE_STEP = {float(LIGHT_PRESSURE_STEP)!r}  # [Pa]",
    ]
    for name, second in (("HELIUM", "Helium"), ("NITROGEN", "Nitrogen")):
        lines.append(f"{name}_COMPRESSIBILITY = (")
        for block in range(LIGHT_FRACTIONS):
            lines.append("    (")
            for row in range(LIGHT_TEMPERATURES):
                cells = (
                    round(
                        compressibility(
                            block / (LIGHT_FRACTIONS - 1),
                            FIRST_TEMPERATURE + row * step,
                            column * LIGHT_PRESSURE_STEP,
                            second,
                        )
                        * 10000
                    )
                    for column in range(LIGHT_PRESSURES)
                )
                lines.append("        (" + ", ".join(str(cell) for cell in cells) + "),")
            lines.append("    ),")
        lines.append(")")
    return lines


def saturation_lines() -> list[str]:
    """Return the source lines of the table of carbon dioxide above its own liquid."""
    lines = [
        "",
        "# Carbon dioxide over its liquid, -20 to 30 degC by 2 K: vapour pressure [kPa absolute], vapour",
        "# density [0.1 kg/m3]. From 31.0 degC, the critical temperature, there is no liquid.",
        f"FIRST_SATURATION_TEMPERATURE = {FIRST_SATURATION!r}  # [K]",
        f"SATURATION_TEMPERATURE_STEP = {float(SATURATION_STEP)!r}  # [K]",
        "CARBON_DIOXIDE_SATURATION = (",
    ]
    for row in range(SATURATIONS):
        temperature = FIRST_SATURATION + row * SATURATION_STEP
        pressure = PropsSI("P", "T", temperature, "Q", 1, "CarbonDioxide")
        density = PropsSI("D", "T", temperature, "Q", 1, "CarbonDioxide")
        lines.append(f"    ({round(pressure / 1000)}, {round(density * 10)}),")
    lines.append(")")
    return lines


def source() -> str:
    """Return the whole text of calculators/facts/gas_state.py."""
    head = HEAD.format(
        version=CoolProp.__version__,
        gas_constant=GAS_CONSTANT,
        argon=PropsSI("M", "Argon"),
        carbon_dioxide=PropsSI("M", "CarbonDioxide"),
        oxygen=PropsSI("M", "Oxygen"),
        helium=PropsSI("M", "Helium"),
        nitrogen=PropsSI("M", "Nitrogen"),
        reference_density=round(PropsSI("D", "P", ATMOSPHERE, "T", REFERENCE_TEMPERATURE, "CarbonDioxide"), 4),
    )
    return head + "\n".join(compressibility_lines() + light_lines() + saturation_lines()) + "\n"


if __name__ == "__main__":
    TARGET.write_text(source(), encoding="utf-8")
