"""The page of what is on the truck: one truth with the questions it asks, what is kept, what is refused."""

import json
import re

import pytest

from tests import walking

SPOOL = [("item", "spool"), ("name", "front"), ("wire_material", "mild-steel"), ("wire_diameter", "0.9 mm")]
SPOOL += [("spool_left", "5 kg"), ("wire_feed_speed", "8 m/min")]
CYLINDER = [("item", "cylinder"), ("name", "big"), ("carbon_dioxide", "25 %"), ("cylinder", "125-ft3")]
CYLINDER += [("cylinder_pressure", "1500 psi")]


def page(pairs, **more):
    return walking.reply("/stock", pairs, partial=True, **more).body


def told(name: str, pairs) -> dict[str, tuple[float, str]]:
    """Return what a script is told: the numbers, each in one unit whatever is shown."""
    results = json.loads(walking.reply("/api/" + name, pairs).body)["results"]
    return {key: (each["value"], each["unit"]) for key, each in results.items() if "value" in each}


@pytest.mark.parametrize(
    ("pairs", "there", "name", "here"),
    [
        (SPOOL, "spool-life", "wire_length", "wire_length"),
        (SPOOL, "spool-life", "arc_time", "arc_time"),
        (CYLINDER, "gas-supply", "gas_volume", "gas_left"),
    ],
)
def test_a_line_says_what_the_page_it_leads_to_says(pairs, there, name, here):
    text = page(pairs)
    link = re.search(rf'href="{there}\?([^"]*)"', text)
    assert link is not None
    carried = [tuple(each.split("=")) for each in link.group(1).replace("+", " ").replace("&amp;", "&").split("&")]
    asked = [(box, value.replace("%25", "%").replace("%2F", "/")) for box, value in carried]
    own, other = told("stock", pairs)[here], told(there, asked)[name]
    assert own[0] == pytest.approx(other[0], rel=1e-5) and own[1] == other[1]


def test_what_is_left_is_told_in_one_unit():
    left = told("stock", [*SPOOL, ("used_wire", "1 lb")])["wire_left"]
    assert left[0] == pytest.approx(5 - 0.45359237) and left[1] == "kg"


def test_a_count_is_kept_and_what_the_log_drew_down_is_not():
    assert 'data-record="stock"' in page(SPOOL)
    text = page([*SPOOL, ("used_wire", "1 kg")])
    assert "data-record" not in text and "This is no count" in text


def test_more_used_than_counted_asks_for_a_count():
    text = page([*SPOOL, ("used_wire", "6 kg")])
    assert told("stock", [*SPOOL, ("used_wire", "6 kg")])["wire_left"] == (0, "kg")
    assert "More was used than was there. Count it again." in text and "Outside" in text


def test_the_lines_take_back_what_they_carry():
    assert 'data-takes="wire_material:wire_material wire_diameter:wire_diameter wire_mass:spool_left"' in page(SPOOL)
    # With what was used taken off, the mass there is no count.
    assert "wire_mass:spool_left" not in page([*SPOOL, ("used_wire", "1 kg")])


def test_cored_wire_is_told_by_its_mass_alone():
    cored = [("item", "spool"), ("name", "cored"), ("spool_left", "15 kg"), ("wire_diameter", "1.2 mm")]
    assert set(told("stock", cored)) == {"wire_left"} and 'href="spool-life"' in page(cored)


@pytest.mark.parametrize(
    ("pairs", "box"),
    [
        ([*SPOOL, ("new_wire_mass", "4 kg")], "spool_left"),
        ([*CYLINDER, ("full_pressure", "1000 psi")], "cylinder_pressure"),
        ([("item", "machine"), ("name", "m"), ("rated_current", "200 A")], "rated_duty_cycle"),
        ([("item", "machine"), ("name", "m"), ("rated_duty_cycle", "60 %")], "rated_current"),
        ([*CYLINDER[:2], ("cylinder", "125-ft3"), ("carbon_dioxide", "3/4"), CYLINDER[-1]], "carbon_dioxide"),
    ],
)
def test_what_cannot_be_is_said_at_its_box(pairs, box):
    assert f'data-field="{box}"' in page(pairs)


def test_a_machine_s_own_numbers_are_asked_for_a_machine_alone():
    text = walking.reply("/stock", [("item", "machine"), ("name", "m")]).body
    other = walking.reply("/stock", SPOOL).body
    assert '<div data-when="item" data-when-is="machine"><div class="field" data-machines=' in text
    assert '<div data-when="item" data-when-is="machine" hidden><div class="field" data-machines=' in other


def test_a_machine_is_kept_by_its_name():
    text = page([("item", "machine"), ("name", "red one"), ("largest_current", "210 A")])
    assert "Machine: red one" in text and "210\u00a0A" in text and 'data-record="stock"' in text
