"""What the fillet-size question answers, warns of and refuses, as a reader and a program see it.

The strengths and sizes expected here are those of tests/published/test_fillet_size.py, which names their sources; what
follows from them is worked out by hand beside each test.
"""

import json
import re

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests import walking

pytestmark = pytest.mark.quick


def ask(units="us", status=200, **typed):
    """Return what the API replies, its results in US units unless asked otherwise."""
    reply = walking.reply("/api/fillet-size", list(typed.items()), system=units)
    assert reply.status == status, reply.body
    return json.loads(reply.body)


def page(**typed):
    """Return the page of a question as plain text."""
    html = walking.reply("/fillet-size", list(typed.items())).body
    return re.sub(r"\s+", " ", re.sub(r"<[^>]*>", " ", html)).replace("\u00a0", " ")


def values(answer):
    return {name: each["value"] for name, each in answer["results"].items() if "value" in each}


def first(answer):
    return next(iter(answer["results"]))


# ---------------------------------------------------------------- the three questions


def test_what_a_leg_carries():
    # Shigley table 9-6: 5/16 in of 70 ksi, 4.64 kip/in. LRFD is 1.5 times it: 6.96 (AISC Manual).
    answer = ask(leg="5/16 in")
    assert answer["solved_for"] == "force_per_length"
    assert values(answer)["force_per_length"] == pytest.approx(4.64, abs=0.005)
    answer = ask(leg="5/16 in", method="load-and-resistance-factor")
    assert values(answer)["force_per_length"] == pytest.approx(6.96, abs=0.005)


def test_the_leg_for_a_force():
    # 4.64 kip/in backwards; a 1/2 in part needs 3/16 in at least, which is less.
    answer = ask(force_per_length="4.64 kip/in", thickness="1/2 in")
    assert answer["solved_for"] == "leg"
    assert first(answer) == "leg"
    assert values(answer)["leg"] == pytest.approx(5 / 16, abs=0.0005)
    assert values(answer)["minimum_leg"] == pytest.approx(3 / 16)


def test_the_smallest_leg_governs_where_the_force_needs_less():
    # 1 kip/in needs 1 / 14.85 = 0.0673 in; a 1 in part takes 5/16 in (table J2.4).
    answer = ask(force_per_length="1 kip/in", thickness="1 in")
    assert first(answer) == "minimum_leg"
    assert values(answer)["minimum_leg"] == pytest.approx(5 / 16)
    assert values(answer)["leg"] == pytest.approx(0.0673, abs=0.0001)


def test_thickness_alone_gives_the_smallest_leg():
    answer = ask(thickness="1/2 in")
    assert values(answer)["minimum_leg"] == pytest.approx(3 / 16)
    assert "force_per_length" not in answer["results"]
    assert "3/16 in" in page(thickness="1/2 in")


def test_pounds_and_kilonewtons_are_the_same_force():
    # Blodgett: 3710 lb/in for 1/4 in; 3.71 kip/in is 0.650 kN/mm.
    assert values(ask(force_per_length="3712 lb/in"))["leg"] == pytest.approx(0.25, abs=0.0005)
    assert values(ask(leg="1/4 in", units="si"))["force_per_length"] == pytest.approx(0.650, abs=0.001)


def test_next_sixteenth_is_never_below_what_is_needed():
    # 14.85 kip/in for each inch of leg: 3 kip/in needs 0.202 in, over 3/16 and under 1/4.
    assert "Next sixteenth up: 1/4 in" in page(force_per_length="3 kip/in", thickness="1/2 in")


# ---------------------------------------------------------------- leg and throat


def test_a_throat_is_no_leg():
    # 4.2 mm throat of S355 (470): 1.01 kN/mm; a leg of 4.2 mm carries 0.71 of that.
    by_throat = values(ask(throat="4.2 mm", method="eurocode", steel="s355", units="si"))["force_per_length"]
    by_leg = values(ask(leg="4.2 mm", method="eurocode", steel="s355", units="si"))["force_per_length"]
    assert by_throat == pytest.approx(1.01, abs=0.005)
    assert by_throat / by_leg == pytest.approx(1.414, abs=0.001)


def test_the_same_number_for_both_is_refused():
    errors = ask(status=422, leg="1/4 in", throat="1/4 in")["errors"]
    assert list(errors) == ["throat"]
    assert "0.1768" in errors["throat"]
    assert values(ask(leg="6 mm", throat="4.2 mm"))["force_per_length"] > 0


def test_both_are_drawn_with_their_numbers():
    drawing = ask(leg="1/4 in")["results"]["fillet_section"]
    assert "0.25" in json.dumps(drawing) and "0.177" in json.dumps(drawing)
    text = page(leg="1/4 in")
    assert "Leg 0.25 in" in text and "Throat 0.177 in" in text


# ---------------------------------------------------------------- directional increase


@pytest.mark.parametrize(("method", "factor"), (("allowable-strength", 1.5), ("eurocode", 1.2247)))
def test_directional_increase_is_off_unless_turned_on(method, factor):
    """Trap: an increase that is counted by default makes welds 50 % too weak along their length."""
    asked = {"leg": "6 mm", "method": method, "steel": "s355"}
    off = values(ask(**asked))["force_per_length"]
    along = values(ask(**asked, directional_increase="on", load_angle="0"))["force_per_length"]
    across = values(ask(**asked, directional_increase="on", load_angle="90 deg"))["force_per_length"]
    assert along == pytest.approx(off, rel=1e-9)
    assert across / off == pytest.approx(factor, abs=0.0001)
    assert "Not counted: square across" in " ".join(ask(**asked)["notes"])


def test_increase_waits_for_the_angle():
    assert "Waiting for" in page(leg="1/4 in", directional_increase="on")


# ---------------------------------------------------------------- the metal beside the weld


def test_thin_metal_governs_over_a_big_weld():
    # A36, 1/4 in, ASD: 0.6 x 36 x 0.25 / 1.5 = 3.6 kip/in; 3/8 in of weld would carry 5.57.
    answer = ask(leg="3/8 in", thickness="1/4 in", steel="a36")
    assert first(answer) == "metal_strength"
    assert values(answer)["metal_strength"] == pytest.approx(3.6, abs=0.001)
    assert values(answer)["force_per_length"] == pytest.approx(5.57, abs=0.005)


def test_two_welds_share_the_metal():
    answer = ask(leg="3/16 in", thickness="1/4 in", steel="a36", sides="both")
    assert values(answer)["metal_strength"] == pytest.approx(1.8, abs=0.001)


def test_no_leg_helps_where_the_metal_is_too_weak():
    text = page(force_per_length="4 kip/in", thickness="1/4 in", steel="a36")
    assert "Outside : the force is 111 % of what the thinner part carries" in text


def test_unknown_steel_is_not_checked_and_says_so():
    assert "metal_strength" not in ask(leg="1/4 in", thickness="1/2 in")["results"]
    assert "is not checked" in " ".join(ask(leg="1/4 in", thickness="1/2 in")["notes"])


def test_other_steel_takes_its_own_strengths():
    # 0.6 x 40 x 0.5 / 1.5 = 8; 0.6 x 60 x 0.5 / 2 = 9.
    typed = {"steel": "other", "yield_strength": "40 ksi", "ultimate_strength": "60 ksi"}
    assert values(ask(leg="1/4 in", thickness="1/2 in", **typed))["metal_strength"] == pytest.approx(8.0)


# ---------------------------------------------------------------- verdicts


@pytest.mark.parametrize(
    ("typed", "said"),
    (
        ({"leg": "1/4 in", "force_per_length": "4 kip/in"}, "Outside : the force is 108 %"),
        ({"leg": "1/4 in", "force_per_length": "3 kip/in"}, "Unclear : the force is 80.8 %"),
        (
            {"leg": "1/4 in", "force_per_length": "3 kip/in", "thickness": "1/2 in", "steel": "a36"},
            "Inside : by this sum the force is 80.8 %",
        ),
        ({"leg": "1/8 in", "thickness": "1/2 in"}, "Outside : the smallest leg here is 0.1875 in"),
        ({"leg": "1/4 in", "thickness": "1/4 in", "joint": "lap"}, "Outside : the largest leg along this edge"),
        ({"leg": "4 mm", "method": "eurocode", "steel": "s355"}, "Outside : the smallest leg here is 4.243 mm"),
    ),
)
def test_verdict(typed, said):
    assert said in page(**typed)


def test_no_answer_reads_as_an_approval():
    for typed in ({"leg": "1/4 in"}, {"thickness": "1/2 in"}, {"force_per_length": "2 kip/in"}):
        cautions = ask(**typed)["cautions"]
        assert cautions[0].startswith("A reckoning aid: the drawing and the engineer decide")
        assert any("not prequalified" in each for each in cautions)
    inside = page(leg="1/4 in", force_per_length="3 kip/in", thickness="1/2 in", steel="a36")
    assert "A sum is no approval" in inside
    assert not re.search(r"\b(ok|safe|passes|approved|acceptable|strong enough)\b", inside, re.I)


# ---------------------------------------------------------------- gap


def test_gap_takes_its_share_of_the_leg():
    # 3/8 in with 1/8 in of gap carries what 1/4 in does; 1/16 in of gap takes nothing.
    assert values(ask(leg="3/8 in", root_gap="1/8 in"))["force_per_length"] == pytest.approx(3.71, abs=0.005)
    assert values(ask(leg="1/4 in", root_gap="1/16 in"))["force_per_length"] == pytest.approx(3.71, abs=0.005)


def test_leg_for_a_force_is_bigger_by_the_gap():
    without = values(ask(force_per_length="3 kip/in"))["leg"]
    assert values(ask(force_per_length="3 kip/in", root_gap="1/8 in"))["leg"] == pytest.approx(
        without + 0.125, abs=1e-6
    )
    assert values(ask(thickness="1/2 in", root_gap="1/8 in"))["minimum_leg"] == pytest.approx(3 / 16 + 1 / 8)


def test_gap_is_refused_where_nothing_is_left_or_the_parts_are_too_far_apart():
    assert list(ask(status=422, leg="1/8 in", root_gap="1/8 in")["errors"]) == ["leg"]
    assert list(ask(status=422, leg="1/2 in", root_gap="1/4 in")["errors"]) == ["root_gap"]


# ---------------------------------------------------------------- refusals


@pytest.mark.parametrize(
    ("typed", "field"),
    (
        ({"thickness": "1/16 in"}, "thickness"),
        ({"leg": "6 mm", "method": "eurocode"}, "steel"),
        ({"leg": "6 mm", "method": "eurocode", "steel": "a36"}, "steel"),
        ({"thickness": "3.5 mm", "method": "eurocode"}, "thickness"),
        ({"leg": "6 mm", "thickness": "50 mm", "steel": "s355"}, "yield_strength"),
        ({"thickness": "1/2 in", "joint": "lap", "edge_thickness": "1/4 in"}, "thickness"),
        ({"leg": "1/4 in", "electrode_strength": "82-ksi"}, "electrode_strength"),
    ),
)
def test_refused_by_name(typed, field):
    assert list(ask(status=422, **typed)["errors"]) == [field]


def test_sheet_is_sent_to_its_own_code():
    assert "sheet has its own code" in ask(status=422, thickness="0.06 in")["errors"]["thickness"]
    assert any("D1.3" in each for each in ask(thickness="1/8 in")["cautions"])
    assert not any("D1.3" in each for each in ask(thickness="3/16 in")["cautions"])


# ---------------------------------------------------------------- round trips


@settings(max_examples=60, deadline=None)
@given(
    force=st.floats(0.05, 3.0),
    method=st.sampled_from(("allowable-strength", "load-and-resistance-factor", "eurocode")),
    gap=st.sampled_from(("", "1 mm", "3 mm")),
    angle=st.sampled_from((None, 0, 30, 90)),
)
def test_leg_for_a_force_carries_that_force(force, method, gap, angle):
    asked = {"method": method, "steel": "s355", "root_gap": gap}
    if angle is not None:
        asked.update(directional_increase="on", load_angle=f"{angle} deg")
    leg = values(ask(units="si", force_per_length=f"{force:.9g} kN/mm", **asked))["leg"]
    carried = values(ask(units="si", leg=f"{leg:.10g} mm", **asked))["force_per_length"]
    assert carried == pytest.approx(force, rel=1e-7)


def test_every_blank_of_leg_and_throat():
    leg = values(ask(units="si", leg="8 mm"))
    throat = values(ask(units="si", throat=f"{leg['throat']:.10g} mm"))
    assert throat["force_per_length"] == pytest.approx(leg["force_per_length"], rel=1e-9)


# ---------------------------------------------------------------- next questions


def test_next_size_up_is_asked_with_everything_carried():
    html = walking.reply(
        "/fillet-size", [("force_per_length", "3 kip/in"), ("thickness", "1/2 in"), ("steel", "a36")]
    ).body
    link = re.search(r'href="(fillet-size\?leg[^"]*)"', html)
    assert link is not None
    for part in ("leg=0.25+in", "force_per_length=3+kip/in", "thickness=0.5+in", "steel=a36"):
        assert part in link.group(1).replace("&amp;", "&"), link.group(1)


def test_next_size_up_keeps_the_increase_that_was_counted():
    asked = [("force_per_length", "3 kip/in"), ("directional_increase", "on"), ("load_angle", "60 deg")]
    html = walking.reply("/fillet-size", asked).body
    assert re.search(r"directional_increase=on[^\"]*load_angle=60\+deg", html)
