"""Clothing against what the trade wears. It has no published numbers. Standing throughout: common practice."""

import json

import pytest

from tests import walking

WORKS = ("wire", "cored", "stick", "gouging", "cutting", "grinding")
POSITIONS = ("flat", "upright", "overhead")


def said(work="wire", position="flat", sparks="light"):
    reply = walking.reply("/api/clothing", [("work", work), ("position", position), ("sparks", sparks)])
    results = json.loads(reply.body)["results"]
    items = {each["id"]: each["text"] for each in results["wear_list"]["items"]}
    return results["wear"]["text"], items


@pytest.mark.parametrize("work", WORKS)
def test_cloth_is_wool_or_cotton_and_never_synthetic_with_the_reason(work):
    _, items = said(work)
    assert "tightly woven wool or cotton" in items["cloth"] and "char" in items["cloth"]
    assert "synthetic" in items["never"] and "melt" in items["never"]


@pytest.mark.parametrize("work", WORKS)
def test_cut_of_the_clothes(work):
    _, items = said(work)
    for words in ("Long sleeves", "high collar buttoned", "shirt tail in"):
        assert words in items["shirt"]
    assert "flaps, or no pockets" in items["pockets"]
    for words in ("Straight trousers", "no cuffs", "over high boots", "steel toes"):
        assert words in items["trousers"]


@pytest.mark.parametrize("work", ["wire", "cored", "stick"])
def test_welding_takes_leather_gloves_and_a_cap(work):
    _, items = said(work)
    assert any("leather gloves" in text for text in items.values())
    assert "cap" in items


@pytest.mark.parametrize("position", POSITIONS)
@pytest.mark.parametrize("sparks", ["light", "heavy"])
def test_leathers_for_heavy_sparks_and_overhead_and_only_then(position, sparks):
    wear, items = said("wire", position, sparks)
    wanted = sparks == "heavy" or position == "overhead"
    assert ("leathers" in items) == wanted
    assert wear.startswith("Leathers") == wanted


def test_ear_plugs_guard_against_noise_and_muffs_against_sparks_too():
    _, light = said()
    _, overhead = said(position="overhead")
    assert light["plugs"] == "Ear plugs against noise." and "muffs" not in light
    assert "noise, and sparks too" in overhead["muffs"] and "plugs" not in overhead


@pytest.mark.parametrize("work", ["gouging", "cutting"])
def test_gouging_and_cutting_throw_heavy_sparks_whatever_is_said(work):
    assert "leathers" in said(work, sparks="light")[1]


def test_a_wheel_wants_no_loose_gloves_and_a_shield():
    _, items = said("grinding")
    assert "catches loose ones" in items["gloves-grinding"]
    assert "face shield" in items["shield"]
