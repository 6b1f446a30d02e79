"""What filler names say, against the standards as they were seen quoted.

AWS A5.18:2005, tables 1 and 3, as SFA-5.18 (ASME, 2007): standard, seen. AWS D1.1/D1.1M:2020, table M.1, for classes of
A5.20 and E70C-6M: standard, seen reproduced. US Army Corps of Engineers, TI 809-26 (2000), table C-2, for A5.5:
published, seen. ISO 14341, tables 1A, 2 and 3A: standard, seen. SFA-5.21 (A5.21:2001), iron-chromium rows: standard,
seen. Limits of A5.9: from memory, the one check without a document.
"""

import re

import pytest

from calculators import units
from calculators.filler_grammar import Reading
from calculators.filler_name import Meaning


def read(name):
    found = Reading(name).found
    assert found is not None, name
    return Meaning(found)


def ksi(pascal):
    return units.from_coherent(pascal, "ksi")


def analysis(name):
    """Return element -> (low, high) as a name's chemistry is told; one number is both ends."""
    (message,) = [message for part, _, message in read(name).parts if part == "type"]
    text = dict(message.parameters)["analysis"].replace("\u00a0", " ")
    found = {}
    for each in text.split(", "):
        match = re.fullmatch(r"([A-Z][a-z]?)(?: ≤)? ?([0-9.]*)(?:–([0-9.]+))?", each)
        assert match is not None, each
        element, low, high = match.groups()
        if low:
            found[element] = (float(low), float(high or low))
    return found


# AWS A5.18:2005, table 1: (class, C, Mn, Si), % by mass.
WIRES = (
    ("ER70S-2", (0.07, 0.07), (0.90, 1.40), (0.40, 0.70)),
    ("ER70S-3", (0.06, 0.15), (0.90, 1.40), (0.45, 0.75)),
    ("ER70S-4", (0.06, 0.15), (1.00, 1.50), (0.65, 0.85)),
    ("ER70S-6", (0.06, 0.15), (1.40, 1.85), (0.80, 1.15)),
    ("ER70S-7", (0.07, 0.15), (1.50, 2.00), (0.50, 0.80)),
)


@pytest.mark.parametrize(("name", "carbon", "manganese", "silicon"), WIRES)
def test_carbon_steel_wire_has_the_analysis_of_its_table(name, carbon, manganese, silicon):
    found = analysis(name)
    assert (found["C"], found["Mn"], found["Si"]) == (carbon, manganese, silicon)


def test_wire_2_has_three_more_deoxidizers():
    found = analysis("ER70S-2")
    assert (found["Ti"], found["Zr"], found["Al"]) == ((0.05, 0.15), (0.02, 0.12), (0.05, 0.15))


# AWS A5.18:2005, table 3: 20 ft-lbf at so many degF, or not required. All 70 ksi tensile, 58 ksi yield.
TOUGH = (("ER70S-2", -20), ("ER70S-3", 0), ("ER70S-4", None), ("ER70S-6", -20), ("ER70S-7", -20), ("E70C-6M", -20))


@pytest.mark.parametrize(("name", "fahrenheit"), TOUGH)
def test_carbon_steel_wire_has_strength_and_toughness_of_its_table(name, fahrenheit):
    found = read(name)
    assert (ksi(found.tensile), ksi(found.yield_)) == pytest.approx((70.0, 58.0))
    assert found.fahrenheit == fahrenheit


# AWS D1.1:2020, table M.1: (class, gas that it is tested with, 20 ft-lbf at so many degF).
CORED = (
    ("E71T-1C", "gas.C", 0),
    ("E71T-1M", "gas.M", 0),
    ("E70T-5C", "gas.C", -20),
    ("E71T-9M", "gas.M", -20),
    ("E71T-12C", "gas.C", -20),
    ("E70T-4", None, None),
    ("E70T-6", None, -20),
    ("E71T-7", None, None),
    ("E71T-8", None, -20),
)


@pytest.mark.parametrize(("name", "gas", "fahrenheit"), CORED)
def test_cored_wire_is_as_in_the_structural_code(name, gas, fahrenheit):
    found = read(name)
    assert (ksi(found.tensile), ksi(found.yield_)) == pytest.approx((70.0, 58.0))
    assert found.fahrenheit == fahrenheit
    told = {part: message.id for part, _, message in found.parts}
    assert told.get("gas") == (None if gas is None else "filler-name." + gas)
    if gas is None:
        assert Reading(name + "C").found is None  # no gas letter on what shields itself


# TI 809-26, table C-2: strength symbol, ksi, MPa.
STRENGTHS = ((70, 480), (80, 550), (90, 620), (100, 690), (110, 760), (120, 830))


@pytest.mark.parametrize(("symbol", "megapascal"), STRENGTHS)
def test_low_alloy_electrodes_have_the_strength_of_the_army_s_table(symbol, megapascal):
    found = read(f"E{symbol}18-G")
    assert ksi(found.tensile) == pytest.approx(symbol)
    assert found.tensile / 1e6 == pytest.approx(megapascal, abs=5)


def test_low_alloy_electrodes_have_position_covering_hydrogen_and_suffix_of_the_army_s_table(words):
    told = words("E8018-C3 H8R")
    assert told["position"] == "all positions"
    assert told["covering"] == "low-hydrogen, iron powder; AC or DCEP"
    assert told["type"].startswith("nickel")
    assert told["hydrogen"] == "at most 8 mL in 100 g of weld metal"
    assert told["moisture"] == "stays dry longer in humid air"
    assert words("E7020-A1")["position"] == "flat, and horizontal fillets"
    assert words("E7020-A1")["type"].startswith("molybdenum")
    assert words("E7018-W1")["type"].startswith("weathering")
    assert words("E7010-P1")["type"] == "for pipelines"
    assert Reading("E11018-M H4").found is None  # the M classes meet H4 and do not print it


@pytest.fixture
def words():
    """Return a function from a name to its parts in English."""
    from webapp.catalogue import Context, sentence

    def told(name):
        context = Context("en", "us", "")
        return {part: sentence(message, context).replace("\u00a0", " ") for part, _, message in read(name).parts}

    return told


# ISO 14341, table 1A: symbol, yield, tensile from, to [MPa].
EUROPEAN = ((35, 355, 440, 570), (38, 380, 470, 600), (42, 420, 500, 640), (46, 460, 530, 680), (50, 500, 560, 720))


@pytest.mark.parametrize(("symbol", "yield_", "least", "most"), EUROPEAN)
def test_european_wire_has_the_strength_of_its_table(symbol, yield_, least, most):
    found = read(f"G {symbol} 4 M21 3Si1")
    assert (found.yield_, found.tensile, found.most) == (yield_ * 1e6, least * 1e6, most * 1e6)


def test_european_wire_has_toughness_and_analysis_of_its_tables(words):
    # Table 2: 47 J at +20, 0, -20, -30, -40, -50, -60.
    celsius = {symbol: words(f"G 42 {symbol} M21 3Si1")["impact"] for symbol in "A023456"}
    assert [celsius[symbol].split(" (")[0] for symbol in "A023456"] == [
        f"47 J at {each} °C" for each in ("20", "0", "−20", "−30", "−40", "−50", "−60")
    ]
    # Table 3A.
    assert analysis("G2Si") == {"Mn": (0.9, 1.3), "Si": (0.5, 0.8)}
    assert analysis("G3Si1") == {"C": (0.06, 0.14), "Mn": (1.3, 1.6), "Si": (0.7, 1.0)}
    assert analysis("G3Si2") == {"Mn": (1.3, 1.6), "Si": (1.0, 1.3)}
    assert analysis("G4Si1") == {"Mn": (1.6, 1.9), "Si": (0.8, 1.2)}
    assert analysis("G2Ti") == {"Mn": (0.9, 1.4), "Si": (0.4, 0.8)}


def test_surfacing_names_of_the_iron_chromium_rows_are_read():
    # SFA-5.21: chromium 20-25, 14-20, 23-29, 24-32, 24-30.
    for variant in ("A1A", "A3A", "A4", "A5", "A9"):
        found = read("ERFeCr-" + variant)
        assert found.system == "A5.21"
    assert analysis("ERFeCr-A4")["Cr"] == (14.0, 32.0)


# Limits of A5.9 (from memory): class, chromium, nickel, molybdenum.
STAINLESS = (
    ("ER308L", (19.5, 22.0), (9.0, 11.0), None),
    ("ER309L", (23.0, 25.0), (12.0, 14.0), None),
    ("ER316L", (18.0, 20.0), (11.0, 14.0), (2.0, 3.0)),
)


@pytest.mark.parametrize(("name", "chromium", "nickel", "molybdenum"), STAINLESS)
def test_nominal_stainless_lies_within_the_limits(name, chromium, nickel, molybdenum):
    found = analysis(name)
    assert chromium[0] <= found["Cr"][0] <= chromium[1]
    assert nickel[0] <= found["Ni"][0] <= nickel[1]
    assert ("Mo" in found) == (molybdenum is not None)
    if molybdenum is not None:
        assert molybdenum[0] <= found["Mo"][0] <= molybdenum[1]
