"""Which filler goes with which metal, against books and codes.

Published or standard, seen: Mathers, The welding of aluminium and its alloys, p. 49 (no silicon filler on more than 2 %
magnesium); Welding Journal, July 2016 (309L and 312 join stainless to carbon steel; 304 is welded with 308; the L grade
serves too); AWS D1.1:2015, table 3.1 (A36: 58 to 80 ksi); AWS D1.1:2020, table M.1 (70 ksi, 20 ft-lbf at so many degF).
Machinery's practice of cast iron by nickel: SFA-5.15 names the nickel classes for it.
"""

import pytest

from calculators.aluminum_fillers import fault
from calculators.contract import Given
from calculators.facts import aluminum_fillers, fillers_alloy
from calculators.filler_grammar import Reading
from calculators.filler_name import Meaning
from calculators.filler_pairing import Joint

KSI = 6894757.293168361


def found_in(name):
    found = Reading(name).found
    assert found is not None, name
    return found


def strength(name):
    return Meaning(found_in(name)).tensile


def joint(base, second="", gas="", service=""):
    given = Given()
    given.values = {"base": base, "second_base": second, "gas": gas, "service": service}
    return Joint(given)


def verdicts(*asked, **typed):
    return {each.name: each.verdict for each in joint(*asked, **typed).candidates}


# Mathers, p. 49: magnesium of the alloy [%] and whether a silicon filler is left unspoken against.
@pytest.mark.parametrize(("base", "magnesium"), aluminum_fillers.BASES)
def test_silicon_filler_only_up_to_two_percent_magnesium(base, magnesium):
    assert (fault(base, "4043", False) == "") == (magnesium <= 2.0)
    assert fault(base, "5356", False) == ""


def test_more_than_three_percent_magnesium_is_not_for_hot_service():
    # From memory: 5356, 5183 and 5556 hold 4.3 to 5.5 %, 5554 2.4 to 3.0 %.
    hot = {filler: fault("6061", filler, True) for filler, _ in aluminum_fillers.FILLERS}
    assert [filler for filler in hot if hot[filler] == "hot"] == ["5356", "5183", "5556"]
    assert fault("5083", "5554", True) == "hot"
    assert fault("5052", "5554", True) == ""
    assert fault("5052", "4043", True) == "magnesium"
    assert fault("5083", "4043", True) == "4043-on-5083"
    assert fault("2024-7075", "4043", False) == "cracks"


def test_what_is_not_told_has_nothing_against_it():
    assert fault("", "4043", True) == fault("6061", "", True) == fault("", "", False) == ""


def test_magnesium_of_the_fillers_lies_within_their_limits():
    limits = {
        symbol: analysis for system, _, rows in fillers_alloy.TYPES if system == "A5.10" for symbol, analysis in rows
    }
    for filler, magnesium in aluminum_fillers.FILLERS:
        told = [each for each in limits[filler].split(", ") if each.startswith("Mg")]
        if not told or filler == "4643":
            assert magnesium == 0.0
            continue
        low, high = [float(each) for each in told[0].split(" ")[1].split("–")]
        assert low <= magnesium <= high, filler


def test_stainless_to_carbon_steel_is_309_and_312_and_304_is_308():
    bridged = verdicts("304", "a36")
    assert bridged["ER309L"] == "suits"
    assert bridged["ER312"] != "no"
    alone = verdicts("304")
    assert alone["ER308L"] == "suits"


def test_a36_is_overmatched_by_a_70_ksi_class():
    # D1.1:2015 table 3.1: A36 at least 58 ksi; D1.1:2020 table M.1: E70C-6M and E7XT at least 70.
    assert joint("a36").base_strength() == pytest.approx(58 * KSI)
    assert strength("E71T-1M") == pytest.approx(70 * KSI)


def test_cold_service_follows_the_code_s_toughness():
    # Table M.1: E7XT-8 and -1 have a figure, E7XT-7 and the general classes none.
    cold = verdicts("a36", service="cold")
    assert cold["E71T-1M"] != "no" and cold["E71T-8"] != "no"
    assert cold["E71T-11"] == cold["E71T-GS"] == "no"


def test_cast_iron_takes_the_nickel_classes_of_its_own_standard():
    listed = verdicts("gray-iron")
    taken = [name for name, verdict in listed.items() if verdict != "no"]
    assert {found_in(name).system for name in taken} == {"A5.15"}
    assert listed["ER70S-6"] == "no"
