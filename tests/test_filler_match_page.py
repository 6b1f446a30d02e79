"""The filler-match question: which classes it lists for a joint, why, and what it will not list any for."""

import json

import pytest

from calculators import filler_match
from calculators.facts import filler_match as facts
from calculators.facts import settings as settings_facts
from calculators.filler_grammar import Reading
from calculators.filler_match_words import ENGLISH
from tests import walking
from tests.html_reading import Page


def ask(status=200, **typed):
    reply = walking.reply("/api/filler-match", list(typed.items()))
    assert reply.status == status, reply.body
    return json.loads(reply.body)


def plain(text):
    return text.replace("\u00a0", " ")


def fillers(**typed):
    """Return class -> (how it goes, why), in the order they are shown."""
    rows = ask(**typed)["results"]["fillers"]["rows"]
    return {name: tuple(plain(use).split(". ", 1)) for name, use in rows}


def first(**typed):
    return ask(**typed)["results"]["first"]["text"].partition(":")[0]


BASES = [row[0] for row in facts.BASES]
STOPPED = [row[0] for row in facts.BASES if row[3] == ""]


def test_every_class_of_the_lists_is_a_name_that_is_read():
    for _, rows in facts.FILLERS:
        for _, reason, classes in rows:
            assert "why." + reason in ENGLISH
            for name in classes.split(" "):
                assert Reading(name).found is not None, name


def test_every_base_has_a_list_or_is_stopped_and_every_list_is_used():
    lists = {name for name, _ in facts.FILLERS}
    assert {row[3] for row in facts.BASES if row[3]} | {"stainless-steel", "steel-hard"} == lists
    assert {"stop." + base for base in STOPPED} <= set(ENGLISH)


@pytest.mark.parametrize("base", STOPPED)
@pytest.mark.parametrize("second", ("", "a36", "304"))
def test_what_is_not_welded_gets_no_class_at_all(base, second):
    answer = ask(base=base, second_base=second)
    assert answer["results"]["first"]["text"] == "Do not weld it"
    assert "fillers" not in answer["results"]
    assert answer["notes"][0] == ENGLISH["stop." + base]
    if second:
        assert "fillers" not in ask(base=second, second_base=base)["results"]


def test_unknown_metal_leads_to_finding_out_what_it_is():
    page = Page(walking.reply("/filler-match", [("base", "unknown")]).body)
    assert any(each.attributes.get("href") == "metal-id" for each in page.elements)


def test_aluminum_is_not_welded_to_anything_else():
    for other in ("a36", "304", "gray-iron"):
        assert "brittle" in ask(base="6061", second_base=other)["notes"][0]


def test_mild_steel_gets_the_everyday_wire_and_its_overmatch():
    answer = ask(base="a36")
    assert answer["results"]["first"]["text"] == "ER70S-6: Gas-shielded wire, carbon steel"
    assert plain(answer["results"]["match"]["text"]) == "overmatches by 82.7 MPa"  # 70 less 58 ksi
    assert fillers(base="a36")["E71T-GS"][0] == "With care"
    assert fillers(base="a36")["ER308L"][0] == "Do not"


def test_stronger_steel_is_matched_and_the_weaker_of_two_counts():
    assert plain(ask(base="a572-50")["results"]["match"]["text"]) == "matches, within 34.5 MPa"  # 70 less 65 ksi
    assert ask(base="a572-50", second_base="a36")["results"]["base_strength"]["value"] == pytest.approx(399.9, abs=0.1)
    assert plain(ask(base="quenched-tempered")["results"]["match"]["text"]).startswith("matches")


def test_gas_rules_out_wire_but_not_rods_or_self_shielded_wire():
    listed = fillers(base="a36", gas="none")
    assert listed["ER70S-6"] == ("Do not", "Needs gas.")
    assert listed["E71T-1M"][0] == "Do not"
    assert listed["E71T-8"][0] == listed["E7018"][0] == "Suits"
    listed = fillers(base="a36", gas="argon")
    assert listed["ER70S-6"][0] == "Do not" and "wanders" in listed["ER70S-6"][1]
    assert "soot" in fillers(base="6061", gas="ar-co2-25")["ER5356"][1]
    assert fillers(base="304", gas="ar-co2-25")["ER308L"][0] == "Do not"
    assert fillers(base="304", gas="ar-co2-2")["ER308L"][0] == "Suits"
    assert fillers(base="304", gas="ar-co2-25")["E308L-16"][0] == "Suits"


def test_oxidizing_gas_wants_deoxidizer():
    assert fillers(base="a36", gas="carbon-dioxide")["ER70S-3"] == ("With care", ENGLISH["why.deoxidizer"])
    assert fillers(base="a36", gas="ar-co2-25")["ER70S-3"][0] == "Suits"


def test_cold_service_wants_toughness_that_the_class_promises():
    listed = fillers(base="a36", service="cold")
    assert listed["E71T-11"][0] == "Do not"
    assert "−29 °C" in listed["ER70S-6"][1]
    assert "−18 °C" in listed["ER70S-3"][1]


def test_cold_service_judges_low_alloy_classes_too():
    listed = fillers(base="quenched-tempered", service="cold")
    assert {name: "−51 °C" in listed[name][1] for name in ("ER110S-1", "E11018-M", "E110C-K4")} == {
        "ER110S-1": True, "E11018-M": True, "E110C-K4": True
    }  # fmt: skip
    assert "−29 °C" in fillers(base="weathering", service="cold")["E81T1-W2C"][1]
    assert fillers(base="galvanized", service="cold")["E71T-14"][0] == "Do not"
    assert fillers(base="304", service="cold")["ER308L"][0] == "Suits"


def test_hot_service_is_with_care_for_plain_steel_and_low_carbon_stainless():
    steel = fillers(base="a36", service="hot")
    assert steel["ER70S-6"] == steel["E7018"] == ("With care", ENGLISH["why.creep"])
    stainless = fillers(base="304", service="hot")
    assert stainless["ER308LSi"] == stainless["ER308L"] == ("With care", ENGLISH["why.hot-low-carbon"])
    assert fillers(base="2205", service="hot")["ER2209"][0] == "Suits"
    assert fillers(base="manganese", service="hot")["ER307"][0] == "Suits"


def test_gas_is_judged_for_cored_and_duplex_wire_as_well():
    assert fillers(base="weathering", gas="none")["E80C-W2"] == ("Do not", "Needs gas.")
    assert fillers(base="2205", gas="ar-co2-5")["ER2209"][0] == "Do not"  # 3 % at most, austenitic takes 5
    assert fillers(base="304", gas="ar-co2-5")["ER308L"][0] == "Suits"


def test_two_steels_get_the_list_of_both():
    assert "E71T-8" in fillers(base="a36", second_base="weathering")
    assert "E71T-8" not in fillers(base="a36", second_base="wear-plate")
    assert first(base="manganese", second_base="304") == "ER309L"
    assert first(base="manganese", second_base="a36") == "ER307"
    assert "base_strength" not in ask(base="a36", second_base="wear-plate")["results"]
    assert "match" not in ask(base="wear-plate")["results"]


def test_structural_service_takes_no_single_pass_wire():
    assert fillers(base="a36", service="structural")["E71T-GS"][0] == "Do not"
    assert "short-circuit" in " ".join(ask(base="a36", service="structural")["notes"])


def test_stainless_to_carbon_steel_takes_the_rich_filler():
    assert first(base="304", second_base="a36") == first(base="a36", second_base="316") == "ER309L"
    listed = fillers(base="304", second_base="a36")
    assert listed["ER308L"][0] == listed["ER70S-6"][0] == "Do not"


def test_316_in_chemicals_is_not_welded_with_308():
    assert fillers(base="316")["ER308L"][0] == "With care"
    assert fillers(base="316", service="corrosion")["ER308L"][0] == "Do not"
    assert first(base="304", second_base="316") == "ER316LSi"


def test_aluminum_follows_magnesium_and_heat():
    assert fillers(base="5083")["ER4043"] == ("Do not", ENGLISH["why.4043-on-5083"])
    assert fillers(base="6061", second_base="5083")["ER4043"][0] == "Do not"
    assert fillers(base="5052")["ER4043"] == ("With care", ENGLISH["why.magnesium"])
    hot = fillers(base="6061", service="hot")
    assert hot["ER5356"] == ("Do not", ENGLISH["why.hot"])
    assert hot["ER4043"][0] == "Suits"
    assert first(base="5052", service="hot") == "ER5554"
    assert "Never without filler" in " ".join(ask(base="6061")["notes"])


@pytest.mark.parametrize("alloy", ("1100-3003", "5052", "5083", "6061", "2024-7075"))
@pytest.mark.parametrize("filler", ("4043", "5356", "5183"))
def test_settings_refuse_exactly_what_is_ruled_out_here(alloy, filler):
    typed = {"wire_material": "aluminum", "thickness": "1/4 in", "base_alloy": alloy, "filler_alloy": filler}
    reply = walking.reply("/api/settings", [*typed.items(), ("gas", "argon"), ("wire_diameter", "1.2 mm")])
    errors = json.loads(reply.body).get("errors", {})
    refused = "base_alloy" in errors or "filler_alloy" in errors
    listed = ask(base=alloy)["results"]
    ruled_out = "fillers" not in listed or fillers(base=alloy).get("ER" + filler, ("",))[0] == "Do not"
    assert refused == ruled_out, errors
    assert settings_facts  # the same tables


def test_hard_steels_want_low_hydrogen():
    for base in ("quenched-tempered", "wear-plate", "hardening"):
        listed = fillers(base=base)
        assert listed["E6010"][0] == listed["E71T-11"][0] == "Do not"
        assert "H4 or H8" in " ".join(why for _, why in listed.values()) or base == "hardening"
    assert first(base="quenched-tempered", second_base="a36").startswith("E7018")
    assert "preheat" in " ".join(ask(base="quenched-tempered", second_base="a36")["notes"])


def test_cast_iron_and_galvanized_are_never_more_than_with_care():
    for base in ("gray-iron", "galvanized", "hardening"):
        assert "Suits" not in {sureness for sureness, _ in fillers(base=base).values()}
    assert "respirator" in " ".join(ask(base="galvanized")["cautions"])
    assert fillers(base="gray-iron", second_base="a36")["ER70S-6"][0] == "Do not"


def test_weathering_steel_under_paint_and_bare():
    assert first(base="weathering") == "E80C-W2"
    assert "one pass" in fillers(base="weathering")["ER70S-6"][1].lower()


def test_where_no_class_is_left_none_is_named():
    answer = ask(base="5083", service="hot")
    assert answer["results"]["first"]["text"] == "Not with this gas or service"
    assert "match" not in answer["results"]
    assert {sureness for sureness, _ in fillers(base="5083", service="hot").values()} == {"Do not"}


def test_no_answer_is_a_permission():
    for base in BASES:
        page = walking.reply("/filler-match", [("base", base)]).body
        assert "verdict inside" not in page
        assert "No leave to weld" in page


@pytest.mark.parametrize("base", [base for base in BASES if base not in STOPPED])
def test_every_pair_is_answered_and_order_does_not_matter(base):
    for second in BASES:
        one, other = ask(base=base, second_base=second)["results"], ask(base=second, second_base=base)["results"]
        assert one["first"] == other["first"], (base, second)


def test_next_questions_carry_what_is_known():
    page = Page(walking.reply("/filler-match", [("base", "6061")]).body)
    links = [each.attributes["href"] for each in page.elements if "href" in each.attributes]
    assert "filler-name?filler=ER5356" in links
    assert "preheat?family=aluminum-heat-treated" in links
    assert any(link.startswith("settings?wire_material=aluminum&") and "filler_alloy=5356" in link for link in links)


def test_sources_named_are_those_it_declares():
    declared = {each.title for each in filler_match.CALCULATOR.sources}
    for base in BASES:
        assert {each["title"] for each in ask(base=base)["sources"]} <= declared
