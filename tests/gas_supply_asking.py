"""How the tests of gas-supply ask, and what they expect a cylinder to hold.

The gas is expected from CoolProp 8.0.0, that is from the published equations of state (argon: Tegeler, Span and
Wagner 1999; argon with carbon dioxide: Gernert 2013), brought to 15 degC and 1 atm here, in the open. Standing:
published.
"""

import html
import json
import re

import CoolProp
from CoolProp.CoolProp import PT_INPUTS, AbstractState, PropsSI

from tests import walking

PSI = 6894.757293168  # Pa, NIST SP 811 (2008), appendix B.8
BAR = 1e5
ATMOSPHERE = 101325.0
CUBIC_FOOT = 0.3048**3
POUND = 0.45359237
ICE = 273.15
FIFTEEN, TWENTY = 15 + ICE, 20 + ICE
CUBIC_FEET_PER_HOUR = CUBIC_FOOT / 3600


def ask(units="us", status=200, **typed):
    """Return what the API replies to a question, its results in US units unless asked otherwise."""
    reply = walking.reply("/api/gas-supply", list(typed.items()), system=units)
    assert reply.status == status, reply.body
    return json.loads(reply.body)


def errors(**typed):
    return plain(ask(status=422, **typed)["errors"])


def plain(value):
    """Return texts with their spaces made plain."""
    if isinstance(value, dict):
        return {key: plain(each) for key, each in value.items()}
    return value.replace("\u00a0", " ").replace("\u202f", "")


def said(answer, part):
    return plain(" ".join(answer[part]))


def page(**typed):
    """Return the page of a question as plain text, and its HTML."""
    body = walking.reply("/gas-supply", list(typed.items())).body
    return re.sub(r"\s+", " ", plain(html.unescape(re.sub(r"<[^>]*>", " ", body)))), body


def value(answer, name):
    return answer["results"][name]["value"]


def density(pressure, temperature, carbon_dioxide=0.0):
    """Return the density of argon or a mix at an absolute pressure, [kg/m3]."""
    if not carbon_dioxide:
        return PropsSI("D", "P", pressure, "T", temperature, "Argon")
    state = AbstractState("HEOS", "Argon&CarbonDioxide")
    state.set_mole_fractions([1 - carbon_dioxide, carbon_dioxide])
    state.specify_phase(CoolProp.iphase_gas)
    state.update(PT_INPUTS, pressure, temperature)
    return state.rhomass()


def usable(litres, gauge, temperature=TWENTY, carbon_dioxide=0.0, reserve=0.0):
    """Return the gas between two gauge pressures, [m3] at 15 degC and 1 atm."""
    gas = [density(each + ATMOSPHERE, temperature, carbon_dioxide) for each in (gauge, reserve)]
    return litres / 1000 * (gas[0] - gas[1]) / density(ATMOSPHERE, FIFTEEN, carbon_dioxide)


def found(pattern, text):
    """Return what the group of a pattern is in a text."""
    match = re.search(pattern, text)
    assert match is not None, text
    return match.group(1)


ARGON = {"gas": "argon", "cylinder_water_volume": "43 L", "cylinder_temperature": "20 degC"}
MIX = {"carbon_dioxide": "25 %", "cylinder": "250-ft3", "cylinder_temperature": "70 degF"}
SEVENTY_FAHRENHEIT = (70 - 32) / 1.8 + ICE
