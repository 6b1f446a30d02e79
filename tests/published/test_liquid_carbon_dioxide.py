"""Carbon dioxide on its own, a liquid in its cylinder, against the world; standing beside each check.

`computed` values come from CoolProp 8.0.0, that is Span and Wagner, J. Phys. Chem. Ref. Data 25 (1996) 1509.
"""

import pint
import pytest
from CoolProp.CoolProp import PropsSI

from calculators import ranges
from calculators.facts import cylinders
from calculators.liquid_carbon_dioxide import (
    WATER_DENSITY,
    gas_volume_of_mass,
    largest_charge,
    mass_when_liquid_is_gone,
    vapour_pressure,
)

BAR = 1e5
PSI = 6894.757293168  # Pa, NIST SP 811 (2008), appendix B.8
ATMOSPHERE = 101325.0
CUBIC_FOOT = 0.3048**3
POUND = 0.45359237
ICE = 273.15
SEVENTY_FAHRENHEIT = (70 - 32) / 1.8 + ICE

# Standing: computed (CoolProp, Span and Wagner); m3 for each kg at the reference state named; tolerance 0.3 %
CARBON_DIOXIDE_VOLUME = (
    (BAR, 15 + ICE, 0.54135),
    (ATMOSPHERE, 20 + ICE, 0.54367),
    (ATMOSPHERE, SEVENTY_FAHRENHEIT, 0.54577),
    (ATMOSPHERE, 0 + ICE, 0.50586),
)


def carbon_dioxide_at_reference(volume, pressure, temperature):
    there = PropsSI("D", "P", pressure, "T", temperature, "CarbonDioxide")
    return volume * there / PropsSI("D", "P", ATMOSPHERE, "T", 15 + ICE, "CarbonDioxide")


@pytest.mark.parametrize(("pressure", "temperature", "volume"), CARBON_DIOXIDE_VOLUME)
def test_gas_from_a_kilogram_of_carbon_dioxide(pressure, temperature, volume):
    wanted = carbon_dioxide_at_reference(volume, pressure, temperature)
    assert gas_volume_of_mass(1.0) == pytest.approx(wanted, rel=0.0003)


def test_gas_from_a_pound_of_carbon_dioxide():
    # Specific volume 8.74 ft3/lb at 70 degF and 1 atm, as printed in gas data sheets. Standing: published
    wanted = carbon_dioxide_at_reference(8.74 * CUBIC_FOOT, ATMOSPHERE, SEVENTY_FAHRENHEIT)
    assert gas_volume_of_mass(POUND) == pytest.approx(wanted, rel=0.0025)


@pytest.mark.parametrize(
    ("celsius", "bar"),
    [(-20, 19.7), (-10, 26.49), (0, 34.85), (10, 45.02), (15, 50.87), (20, 57.29), (25, 64.34), (30, 72.14)],
)
def test_vapour_pressure_of_carbon_dioxide(celsius, bar):
    # Standing: computed (CoolProp, Span and Wagner)
    assert vapour_pressure(celsius + ICE) == pytest.approx(bar * BAR, rel=0.0005)


def test_vapour_pressure_at_70_fahrenheit_is_the_handbooks():
    # 835 to 838 psig in handbooks. Standing: published
    assert 835 <= (vapour_pressure(SEVENTY_FAHRENHEIT) - ATMOSPHERE) / PSI <= 838.5


def test_vapour_tables_hold_between_their_rows():
    for tenths in range(-200, 301, 3):
        temperature = tenths / 10 + ICE
        pressure = PropsSI("P", "T", temperature, "Q", 1, "CarbonDioxide")
        vapour = PropsSI("D", "T", temperature, "Q", 1, "CarbonDioxide")
        assert vapour_pressure(temperature) == pytest.approx(pressure, rel=0.0003)
        tolerance = 0.002 if tenths <= 280 else 0.005
        assert mass_when_liquid_is_gone(1.0, temperature) == pytest.approx(vapour, rel=tolerance)


def test_gauge_stays_up_until_29_percent_of_the_charge_is_left():
    # Charge of 0.667 kg for each litre, 20 degC: 0.291. Standing: computed (CoolProp, vapour 194.2 kg/m3)
    assert mass_when_liquid_is_gone(1e-3, 20 + ICE) / 0.667 == pytest.approx(0.291, abs=0.001)


@pytest.mark.parametrize(("service", "kilograms"), [(1800, 27.2), (2000, 28.12), (2265, 29.28), (2400, 29.8)])
def test_largest_charge_of_a_40_litre_cylinder(service, kilograms):
    # 49 CFR 173.304a(a)(2), table 1: 68, 70.3, 73.2, 74.5 %, worked with water at 1 kg/L. Standing: law
    share = dict(cylinders.CARBON_DIOXIDE_FILLING_DENSITY)[service]
    assert largest_charge(0.040, share, 1000.0) == pytest.approx(kilograms, abs=0.02)
    # the rule's own pound of water is lighter by 0.2 %, and so is the charge
    assert 0.997 < largest_charge(0.040, share) / kilograms < 0.999
    assert abs(WATER_DENSITY - 997.94) < 0.01


def test_largest_charge_is_full_of_liquid_on_a_warm_day():
    assert PropsSI("T", "D", 680.0, "Q", 0, "CarbonDioxide") == pytest.approx(27 + ICE, abs=0.3)
    assert PropsSI("P", "T", 50 + ICE, "D", 680.0, "CarbonDioxide") > 140 * BAR


# --- dimensions: the homogeneous formulas with pint quantities in the trade's own units ---


@pytest.fixture
def registry(monkeypatch):
    """A pint registry, with the range checks reading pint quantities."""
    units: pint.UnitRegistry[float] = pint.UnitRegistry()

    def magnitude(value, unit):
        if hasattr(value, "to"):
            return value.to(unit.replace("m3", "m**3")).magnitude
        return value

    monkeypatch.setattr(ranges, "magnitude", magnitude)
    return units


def in_unit(result, unit):
    """Return the number of a result that is a pint quantity because its arguments were."""
    return result.to(unit).magnitude


def test_gas_and_charge_keep_their_units(registry):
    quantity = registry.Quantity
    # 50 lb of carbon dioxide: 437 ft3 at 70 degF, 8.74 ft3/lb (standing: published)
    gas = gas_volume_of_mass(quantity(50, "pound"), quantity(1.8323, "kg/m**3"))
    assert in_unit(gas, "foot**3") == pytest.approx(437, rel=0.002)
    # a cylinder that holds 100 lb of water takes 68 lb (standing: law, 49 CFR 173.304a)
    water = quantity(WATER_DENSITY, "kg/m**3")
    charge = largest_charge(quantity(100, "pound") / water, 0.68, water)
    assert in_unit(charge, "pound") == pytest.approx(68, rel=1e-9)


@pytest.mark.parametrize("celsius", [-20.5, 30.5, 31.5, float("nan")])
def test_outside_the_table_is_refused(celsius):
    for function in (vapour_pressure, lambda temperature: mass_when_liquid_is_gone(0.030, temperature)):
        with pytest.raises(ranges.OutOfRange) as refused:
            function(celsius + ICE)
        assert refused.value.name == "temperature"
