"""What the carbon-equivalent question answers, waits for and refuses, as a reader and a program see it.

The sums expected here are worked by hand in tests/published/test_carbon_equivalent.py or beside each test.
"""

import json
import re

import pytest

from calculators import asking, carbon_equivalent
from calculators.contract import STANDINGS
from tests import walking

pytestmark = pytest.mark.quick

# A572-50, an illustrative heat: CE 0.4167, CET 0.3147, Pcm 0.2663.
HEAT = {
    "carbon": "0.18", "silicon": "0.25", "manganese": "1.20", "chromium": "0.05", "molybdenum": "0.01",
    "vanadium": "0.04", "nickel": "0.05", "copper": "0.20", "boron": "0",
}  # fmt: skip


def ask(status=200, **typed):
    reply = walking.reply("/api/carbon-equivalent", list(typed.items()))
    assert reply.status == status, reply.body
    return json.loads(reply.body)


def errors(**typed):
    return ask(status=422, **typed)["errors"]


def without(*names, **changed):
    return {name: text for name, text in {**HEAT, **changed}.items() if name not in names}


def said(answer, part):
    return " ".join(answer[part]).replace("\u00a0", " ")


def words(result):
    return result["text"].replace("\u00a0", " ")


# ---------------------------------------------------------------- a whole certificate


def test_a_whole_certificate_gives_every_sum_with_its_formula():
    answer = ask(**HEAT)
    for name, expected in (("ce", 0.4167), ("cet", 0.3147), ("pcm", 0.2663), ("ce_with_silicon", 0.4583)):
        assert answer["results"][name]["unit"] == "%"
        assert answer["results"][name]["value"] == pytest.approx(expected, abs=0.0001)
    working = said(answer, "working")
    for formula in (
        "CE = C + Mn/6 + (Cr + Mo + V)/5 + (Ni + Cu)/15 = 0.18 + 1.2/6 + (0.05 + 0.01 + 0.04)/5 + (0.05 + 0.2)/15 =",
        "CET = C + (Mn + Mo)/10 + (Cr + Cu)/20 + Ni/40 =",
        "Pcm = C + Si/30 + (Mn + Cu + Cr)/20 + Ni/60 + Mo/15 + V/10 + 5 B =",
    ):
        assert formula in working


def test_what_each_element_adds_is_shown_and_adds_up():
    rows = ask(**HEAT)["results"]["adding_up"]["rows"]
    assert [row[0].split()[0] for row in rows] == ["C", "Si", "Mn", "Cr", "Mo", "V", "Ni", "Cu"]
    for column, total in ((1, 0.4167), (2, 0.3147), (3, 0.2663)):
        added = sum(float(row[column]) for row in rows if row[column] != "\u2013")
        assert added == pytest.approx(total, abs=0.003)


@pytest.mark.parametrize(
    ("carbon", "band"),
    (("0.05", "hardens little"), ("0.18", "usually preheated"), ("0.40", "brittle beside the weld")),
)
def test_what_ce_says_follows_its_band(carbon, band):
    assert band in words(ask(**without(carbon=carbon))["results"]["ce"])


# ---------------------------------------------------------------- what the certificate does not say


def test_a_blank_element_is_asked_for_by_name_and_the_other_sums_answer():
    answer = ask(**without("silicon", "boron"))
    assert answer["results"]["ce"]["value"] == pytest.approx(0.4167, abs=0.0001)
    assert answer["results"]["cet"]["value"] == pytest.approx(0.3147, abs=0.0001)
    assert "value" not in answer["results"]["pcm"]
    assert words(answer["results"]["pcm"]).startswith("Waiting for silicon and boron.")


def test_no_blank_element_is_taken_for_none():
    """Residual copper and nickel of scrap-fed steel count: a blank must never be a silent 0."""
    for name in ("chromium", "vanadium", "nickel", "copper"):
        ce = ask(**without(name))["results"]["ce"]
        assert "value" not in ce and name in words(ce)
    assert ask(**without(copper="0"))["results"]["ce"]["value"] == pytest.approx(0.4167 - 0.2 / 15, abs=0.0001)


def test_not_known_gives_at_least_and_says_what_is_not_counted():
    answer = ask(**without(copper="unknown"))
    ce = answer["results"]["ce"]
    assert ce["value"] == pytest.approx(0.4167 - 0.2 / 15, abs=0.0001)
    assert "Not counted, since not known: copper." in words(ce)
    assert "the true number is higher" in said(answer, "notes")
    assert "not known" in said(answer, "working")
    html = walking.reply("/carbon-equivalent", list(without(copper="unknown").items())).body
    assert "CE (IIW), at least" in html


def test_at_least_is_carried_nowhere():
    html = walking.reply("/carbon-equivalent", list(without(copper="unknown").items())).body
    assert "cet=" not in html.replace("amp;", "").split('class="next"')[1]


def test_carbon_and_manganese_are_waited_for():
    for name in ("carbon", "manganese"):
        came = asking.ask(carbon_equivalent.CALCULATOR, list(without(name).items()))
        assert came.state == "waiting"


# ---------------------------------------------------------------- typical chemistry


def test_typical_chemistry_is_marked_as_not_the_part_s():
    answer = ask(chemistry="a572-50")
    assert answer["results"]["ce"]["value"] == pytest.approx(0.4167, abs=0.0001)
    assert "typical of the grade, not your steel's own" in said(answer, "notes")
    assert "Typical chemistry is a start" in said(answer, "cautions")
    assert any(source["standing"] == "from memory" and "Typical" in source["title"] for source in answer["sources"])


def test_certificate_goes_before_typical():
    answer = ask(chemistry="a572-50", carbon="0.22")
    assert answer["results"]["ce"]["value"] == pytest.approx(0.4567, abs=0.0001)


def test_limits_of_the_specification_are_told_apart_from_the_heat():
    answer = ask(chemistry="a572-50")
    assert "CE comes to 0.455 %" in said(answer, "notes")
    assert answer["results"]["ce"]["value"] < 0.43


def test_own_certificate_is_not_called_typical():
    answer = ask(**HEAT)
    assert "typical" not in said(answer, "notes") and "Typical" not in said(answer, "cautions")


# ---------------------------------------------------------------- outside what was tested


@pytest.mark.parametrize("grade", ("1045", "4140"))
def test_cet_of_medium_carbon_steel_is_no_number(grade):
    results = ask(chemistry=grade)["results"]
    assert "value" not in results["cet"] and "outside 0.05 to 0.32 %" in words(results["cet"])
    assert "value" not in results["pcm"] and "outside 0.07 to 0.22 %" in words(results["pcm"])
    assert results["ce"]["value"] > 0.55


def test_edges_of_the_tested_composition_belong_to_it():
    assert "value" in ask(**without(carbon="0.32"))["results"]["cet"]
    assert "value" not in ask(**without(carbon="0.321"))["results"]["cet"]
    assert "value" in ask(**without(carbon="0.22"))["results"]["pcm"]
    assert "value" not in ask(**without(carbon="0.221"))["results"]["pcm"]


@pytest.mark.parametrize(
    ("name", "typed", "why"),
    (
        ("boron", "20", "ppm"),
        ("boron", "0.02", "ppm"),
        ("carbon", "18", "hundredths"),
        ("manganese", "120", "hundredths"),
        ("manganese", "12.5", "manganese steel"),
        ("chromium", "18", "stainless"),
    ),
)
def test_another_unit_or_another_metal_is_refused_with_the_reason(name, typed, why):
    assert why in errors(**without(**{name: typed}))[name]


# ---------------------------------------------------------------- what comes next


def test_it_is_cet_and_not_ce_that_goes_on_to_the_preheat():
    html = walking.reply("/carbon-equivalent", list(HEAT.items())).body.replace("&amp;", "&")
    links = re.findall(r'href="(preheat\?[^"]+)"', html)
    assert len(links) == 2
    for link in links:
        assert "cet=0.31475+%25" in link or "cet=0.31475%20%25" in link
        assert "0.41" not in link


def test_medium_carbon_goes_on_with_its_chemistry_and_no_cet():
    html = walking.reply("/carbon-equivalent", [("chemistry", "4140")]).body.replace("&amp;", "&")
    (link,) = re.findall(r'href="(preheat\?[^"]+)"', html)
    assert "family=hardening-chemistry" in link and "carbon=0.405" in link and "cet=" not in link


def test_less_carbon_than_tested_is_not_called_much():
    html = walking.reply("/carbon-equivalent", list(without(carbon="0.03").items())).body
    assert "with this much carbon" not in html


def test_a_sum_that_is_not_worked_out_still_shows_its_formula():
    assert "Pcm = C + Si/30 + (Mn + Cu + Cr)/20 + Ni/60 + Mo/15 + V/10 + 5 B: not worked out" in said(
        ask(**without("boron")), "working"
    )


def test_nothing_said_sounds_like_leave_to_weld():
    for state, pairs in walking.states("carbon-equivalent"):
        body = walking.reply("/carbon-equivalent", pairs).body.lower()
        for word in ("safe", "no preheat", "is allowed", "you may", "approved", "passes"):
            assert word not in re.sub(r"<[^>]+>", " ", body), (state, word)


def test_sources_used_are_among_the_sources_declared():
    declared = {source.title for source in carbon_equivalent.CALCULATOR.sources}
    for _, pairs in walking.states("carbon-equivalent"):
        came = asking.ask(carbon_equivalent.CALCULATOR, pairs)
        if came.answer is not None:
            assert {source.title for source in came.answer.sources} <= declared
            assert all(source.standing in STANDINGS for source in came.answer.sources)
