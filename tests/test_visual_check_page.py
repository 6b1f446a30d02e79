"""The visual check: inside only when all was measured, outside for one thing, and for no other code."""

import json

import pytest

from tests import walking

FILLET = {
    "service": "steady",
    "joint": "fillet",
    "seen": "none",
    "thickness": "3/8 in",
    "undercut_depth": "1/64 in",
    "pores_in_inch": "0 in",
    "pores_in_foot": "0 in",
    "wanted_leg": "1/4 in",
    "found_leg": "1/4 in",
    "face_width": "3/8 in",
    "convexity": "1/16 in",
}


def ask(status=200, **typed):
    reply = walking.reply("/api/visual-check", [(name, text) for name, text in {**FILLET, **typed}.items() if text])
    assert reply.status == status, reply.body
    return json.loads(reply.body)


def test_inside_only_if_everything_was_measured():
    assert ask()["verdict"] == "inside"
    for name in ("undercut_depth", "pores_in_inch", "pores_in_foot", "found_leg", "convexity"):
        said = ask(**{name: ""})
        assert said["verdict"] == "unclear", name
        assert "Measure what is missing" in said["notes"][1]


def test_one_thing_outside_is_named_and_outweighs_what_is_missing():
    said = ask(convexity="3/16 in", undercut_depth="")
    assert said["verdict"] == "outside"
    assert said["notes"][0] == "Bulge"
    said = ask(convexity="3/16 in", pores_in_inch="1/2 in")
    assert said["notes"][0] == "Pores in 1 in, Bulge"


def test_even_inside_it_gives_no_leave():
    said = ask()
    text = " ".join([said["results"]["weld"]["text"], *said["notes"], *said["cautions"]])
    assert "decide" in text and "Good looks are no strength" in text
    for word in ("accepted", "approved", "safe", "good weld", "pass"):
        assert word not in text.lower(), word


@pytest.mark.parametrize("service", ["vibrating", "pressure", "machine", "not-known"])
def test_other_codes_are_refused_by_name(service):
    errors = ask(422, service=service)["errors"]
    assert list(errors) == ["service"]


def test_a_crack_leads_to_its_repair_and_a_fillet_to_its_size():
    assert 'href="crack-repair"' in walking.reply("/visual-check", list({**FILLET, "seen": "crack"}.items())).body
    assert 'href="fillet-size"' in walking.reply("/visual-check", list(FILLET.items())).body


def test_thin_metal_and_a_length_beyond_12_in_are_refused_with_the_reason():
    assert "AWS D1.1 begins at" in ask(422, thickness="2 mm")["errors"]["thickness"]
    assert "counted in 12 in" in ask(422, undercut_length="13 in")["errors"]["undercut_length"]


def test_a_limit_met_in_either_unit_is_inside():
    """A thirty-second typed as millimetres is not outside by the last digit."""
    assert ask(undercut_depth="0.79375 mm", thickness="9.525 mm")["verdict"] == "inside"
    assert ask(undercut_depth="0.8 mm")["verdict"] == "unclear", "deeper than 1/32 in: over what length?"


def rows(**typed):
    return ask(**typed)["results"]["looks"]["rows"]


def inch(value):
    return {"value": value, "unit": "in"}


def test_each_look_stands_with_what_was_found_and_its_limit():
    assert rows() == [
        ["Inside: Cracks, fusion, craters", "not one", "not one"],
        ["Inside: Undercut", inch(1 / 64), inch(1 / 32)],
        ["Inside: Pores in 1 in", inch(0), inch(3 / 8)],
        ["Inside: Pores in 12 in", inch(0), inch(3 / 4)],
        ["Inside: Leg, at least", inch(1 / 4), inch(5 / 32)],
        ["Inside: Bulge", inch(1 / 16), inch(1 / 8)],
    ]
    assert rows(seen="crater")[0] == ["Outside: Cracks, fusion, craters", "Crater not filled", "not one"]
    assert rows(pores_in_foot="")[3] == ["Unclear: Pores in 12 in", "not measured", ""]


def test_the_cap_of_a_groove_is_one_of_its_looks():
    groove = dict.fromkeys(("wanted_leg", "found_leg", "face_width", "convexity"), "")
    found = rows(joint="groove", reinforcement="3/16 in", **groove)
    assert [row[0] for row in found[2:]] == ["Inside: Pores in 1 in", "Inside: Pores in 12 in", "Outside: Cap"]
    assert found[-1][1:] == [inch(3 / 16), inch(1 / 8)]
    assert found[3][2] == inch(0), "a butt joint pulled across takes no pore"
    more = rows(joint="groove", pores_in_foot="1/32 in", **groove)
    assert more[3][0] == "Outside: Pores in 12 in"


@pytest.mark.parametrize(
    ("depth", "length", "limit"),
    [
        ("1/64 in", "", 1 / 32),
        ("1/64 in", "1 in", 1 / 32),
        ("3/64 in", "", 1 / 16),
        ("3/64 in", "1 in", 1 / 16),
        ("3/64 in", "3 in", 1 / 32),
    ],
)
def test_undercut_shows_the_limit_it_was_held_against(depth, length, limit):
    assert rows(undercut_depth=depth, undercut_length=length)[1][2] == inch(limit)


def test_a_limit_is_shown_in_the_unit_typed_on_the_page():
    page = walking.reply("/visual-check", list({**FILLET, "undercut_depth": "0.5 mm"}.items())).body
    page = page.replace("\u00a0", " ")
    assert "<td>0.5 mm</td><td>0.794 mm</td>" in page
    deep = walking.reply("/visual-check", list({**FILLET, "undercut_depth": "3/64 in"}.items())).body
    assert "<td>0.0469 in</td><td>0.0625 in</td>" in deep.replace("\u00a0", " ")
    assert "<td>0.25 in</td><td>0.156 in</td>" in page
    assert "<td>0.0625 in</td><td>0.125 in</td>" in page
    assert "<td>0 in</td><td>0.375 in</td>" in page
