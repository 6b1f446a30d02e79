"""The page of a weld entry: what was used, shown and told to the page's script."""

import re
from html import unescape
from urllib.parse import parse_qsl

import pytest

from tests import walking

RUN = [
    ("joint", "a"),
    ("arc_time", "5 min"),
    ("wire_material", "mild-steel"),
    ("wire_diameter", "1.2 mm"),
    ("wire_feed_speed", "8 m/min"),
    ("gas_flow", "17 L/min"),
]


def page(pairs, **more):
    return walking.reply("/weld-entry", pairs, partial=True, **more).body


def told(text: str) -> dict[str, str]:
    """Return what the page's script reads off an answer."""
    [results] = re.findall(r'data-results="([^"]*)"', text)
    return dict(parse_qsl(unescape(results)))


# By hand: 40 m x pi/4 x 1.2^2 mm2 x 7850 kg/m3 = 0.355126 kg; 17 L/min x 5 min = 85 L.
@pytest.mark.parametrize("system", ["us", "si"])
def test_the_script_is_told_the_same_whatever_units_are_shown(system):
    assert told(page(RUN, system=system)) == {"wire_used": "0.355126 kg", "gas_used_volume": "85 L"}


def test_the_headline_is_named_too():
    found = told(page([("joint", "a"), ("voltage", "24"), ("current", "180"), ("travel_speed", "5 mm/s")]))
    assert found == {"heat_input": "691.2 J/mm", "arc_energy": "864 J/mm"}


def test_what_was_used_is_shown_with_its_working():
    text = page(RUN, system="us")
    assert "Wire used" in text and "Gas used" in text
    fed = "8\u00a0m/min \u00d7 5\u00a0min \u00d7 \u03c0/4 \u00d7 (1.2\u00a0mm)\u00b2"
    assert fed + " \u00d7 7850 kg/m\u00b3 = 0.3551\u00a0kg" in text
    assert "17\u00a0L/min \u00d7 5\u00a0min = " in text


def test_what_was_used_leads_to_spool_and_cylinder():
    text = page(RUN)
    assert 'href="spool-life?wire_material=mild-steel&amp;wire_diameter=1.2+mm&amp;wire_feed_speed=8+m/min"' in text
    assert 'href="gas-supply?gas_flow=17+L/min"' in text
