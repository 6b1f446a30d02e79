"""Visual limits against AWS D1.1 as its table is reproduced and quoted; standing beside each."""

import json

import pytest

from calculators import visual_limits as limits
from calculators.facts import visual as facts
from tests import walking

INCH = 0.0254
STEADY = {"service": "steady", "joint": "fillet", "seen": "none", "thickness": "1/2 in"}


def inches(value):
    return value / INCH


def state(look, **typed):
    reply = walking.reply("/api/visual-check", list({**STEADY, **typed}.items()))
    assert reply.status == 200, reply.body
    rows = json.loads(reply.body)["results"]["looks"]["rows"]
    (found,) = [row[0].partition(": ") for row in rows if row[0].partition(": ")[2] == look]
    return found[0]


# D1.1 table 6.1 (2000) and 8.1 (2020), item 7: below 1 in of material 1/32 in, and 1/16 in over 2 in added up in any
# 12 in; from 1 in on 1/16 in at any length. Standing: standard, seen as reproduced.
@pytest.mark.parametrize(
    ("thickness", "length", "most"),
    [
        (0.999, 12, 1 / 32),
        (0.999, 2.001, 1 / 32),
        (0.999, 2, 1 / 16),
        (1.0, 12, 1 / 16),
        (3.0, 12, 1 / 16),
        (0.25, 0, 1 / 16),
    ],
)
def test_undercut(thickness, length, most):
    assert inches(limits.most_undercut(thickness * INCH, length * INCH)) == pytest.approx(most)


@pytest.mark.parametrize(
    ("thickness", "depth", "length", "expected"),
    [
        ("1/2 in", "1/32 in", None, "Inside"),
        ("1/2 in", "3/64 in", None, "Unclear"),
        ("1/2 in", "3/64 in", "2 in", "Inside"),
        ("1/2 in", "3/64 in", "2.1 in", "Outside"),
        ("1/2 in", "5/64 in", "1 in", "Outside"),
        ("1/2 in", "5/64 in", None, "Outside"),
        ("1 in", "1/16 in", None, "Inside"),
        ("1 in", "0.07 in", "1 in", "Outside"),
    ],
)
def test_undercut_on_the_page(thickness, depth, length, expected):
    typed = {"thickness": thickness, "undercut_depth": depth}
    if length:
        typed["undercut_length"] = length
    assert state("Undercut", **typed) == expected


# Items 1 to 3: any crack unacceptable regardless of size; thorough fusion; craters filled. Standing: standard, seen.
@pytest.mark.parametrize("seen", ["crack", "fusion", "crater"])
def test_crack_fusion_and_crater_have_no_limit_but_none(seen):
    assert state("Cracks, fusion, craters", seen=seen) == "Outside"


# Item 6: L up to 3/16: U 1/16; 1/4: 3/32; 5/16 and more: 1/8; not over 10 % of the length. Standing: standard, seen.
@pytest.mark.parametrize(
    ("leg", "missing"),
    [(1 / 8, 1 / 16), (3 / 16, 1 / 16), (1 / 4, 3 / 32), (9 / 32, 3 / 32), (5 / 16, 1 / 8), (1, 1 / 8)],
)
def test_missing_leg(leg, missing):
    assert inches(limits.most_missing_leg(leg * INCH)) == pytest.approx(missing)


@pytest.mark.parametrize(
    ("found", "share", "expected"),
    [
        ("1/4 in", None, "Inside"),
        ("0.3 in", None, "Inside"),
        ("5/32 in", "10 %", "Inside"),
        ("5/32 in", "11 %", "Outside"),
        ("5/32 in", None, "Unclear"),
        ("0.15 in", "1 %", "Outside"),
        ("0.15 in", None, "Outside"),
    ],
)
def test_missing_leg_on_the_page(found, share, expected):
    typed = {"wanted_leg": "1/4 in", "found_leg": found}
    if share:
        typed["short_share"] = share
    assert state("Leg, at least", **typed) == expected


# Pores: 3/8 in in any linear inch, 3/4 in in any 12 in; none in complete penetration butt joints in tension, static.
# Standing: standard, seen quoted.
def test_pores():
    assert inches(facts.PORES_IN_INCH) == pytest.approx(3 / 8)
    assert inches(facts.PORES_IN_FOOT) == pytest.approx(3 / 4)
    assert state("Pores in 1 in", pores_in_inch="3/8 in") == "Inside"
    assert state("Pores in 1 in", pores_in_inch="0.38 in") == "Outside"
    assert state("Pores in 12 in", pores_in_foot="3/4 in") == "Inside"
    assert state("Pores in 12 in", pores_in_foot="0.76 in") == "Outside"


def test_no_pore_in_a_butt_joint_that_is_pulled_across():
    groove = {"joint": "groove", "pores_in_inch": "1/32 in"}
    assert state("Pores in 1 in", **groove) == "Outside", "unless it is said not to be"
    assert state("Pores in 1 in", **groove, pull="not-across") == "Inside"
    assert state("Pores in 1 in", joint="groove", pores_in_inch="0 in") == "Inside"


# Convexity 1/16 in for a face of 5/16 in or less, 1/8 in for larger (seen quoted); 3/16 in from 1 in (from memory).
@pytest.mark.parametrize(
    ("face", "most"), [(1 / 4, 1 / 16), (5 / 16, 1 / 16), (0.32, 1 / 8), (0.99, 1 / 8), (1.01, 3 / 16)]
)
def test_bulge(face, most):
    assert inches(limits.most_bulge(face * INCH)) == pytest.approx(most)


# D1.1:2015 table 5.9, schedule A. Standing: from memory.
@pytest.mark.parametrize(
    ("thickness", "most"), [(0.5, 1 / 8), (1.0, 1 / 8), (1.01, 3 / 16), (2.0, 3 / 16), (2.01, 1 / 4)]
)
def test_cap(thickness, most):
    assert inches(limits.most_cap(thickness * INCH)) == pytest.approx(most)
