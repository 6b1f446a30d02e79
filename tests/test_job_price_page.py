"""The page of a job's price: what is charged and shown, what is refused, what the phone keeps."""

import html
import re

import pytest

from tests import walking

A_LIFETIME = [(f"{name}_time", "1000") for name in ("gouging", "prep", "fit_up", "welding", "cleaning", "waiting")]


def page(*pairs, **more):
    return html.unescape(walking.reply("/job-price", list(pairs), partial=True, **more).body)


def keys(text: str) -> list[str]:
    return re.findall(r'data-line="([^"]*)"', text)


def test_a_blank_is_not_charged_and_not_shown():
    assert keys(page(("call_out", "95"))) == ["call_out", "total", "due"]
    assert keys(page(("welding_time", "2"), ("labor_rate", "90"), ("tax_rate", "0"))) == [
        "welding_time",
        "subtotal",
        "tax",
        "total",
        "due",
    ]


def test_rates_alone_charge_nothing_and_are_no_record():
    text = page(("labor_rate", "90"), ("tax_rate", "7"), ("wire_price", "4.50 /lb"))
    assert "Nothing is charged yet" in text and "data-record" not in text and keys(text) == []


def test_a_price_is_kept_in_the_record_of_its_job():
    assert 'data-record="job"' in page(("call_out", "95"))
    assert 'data-card="price"' in page(("call_out", "95"))


def test_the_tax_goes_by_its_own_name():
    asked = (("call_out", "100"), ("tax_rate", "20"))
    assert "Tax 20\u00a0% on 100.00" in page(*asked)
    assert "VAT & levy 20\u00a0% on 100.00" in page(*asked, ("tax_name", "VAT & levy"))


def test_what_is_not_included_stands_below_the_sums():
    text = page(("call_out", "100"), ("exclusions", "paint <none>"))
    assert keys(text)[-1] == "exclusions" and "paint <none>" in text


def test_a_currency_s_sign_may_be_typed():
    assert "1\u202f234" not in page(("call_out", "$95"))
    assert ">95.00<" in page(("call_out", "$95"))


@pytest.mark.parametrize(
    ("pairs", "box", "words"),
    [
        ([("welding_time", "2")], "labor_rate", "Welding is given: its price is needed too"),
        ([("drive_time", "1")], "labor_rate", "Driving time is given"),
        ([("drive_distance", "10 mi")], "distance_price", "Driving is given"),
        ([("gas_volume", "30 ft3"), ("fill_price", "60")], "fill_volume", "Gas is given"),
        ([("gas_volume", "30 ft3"), ("fill_volume", "125 ft3")], "fill_price", "Gas is given"),
        ([("call_out", "95"), ("paid", "deposit")], "paid", "how much the deposit is"),
        ([("call_out", "95"), ("deposit", "95.01")], "deposit", "cannot be more than the total, 95.00"),
        ([("welding_time", "1"), ("labor_rate", "9"), ("arc_time", "61 min")], "arc_time", "cannot burn longer"),
        ([*A_LIFETIME, ("labor_rate", "10000"), ("tax_rate", "100")], "", "too many figures"),
    ],
)
def test_what_cannot_be_charged_is_said_at_its_box(pairs, box, words):
    text = page(*pairs)
    assert f'data-field="{box}"' in text and words in text


def test_driving_has_a_rate_of_its_own_or_that_of_labor():
    labor = page(("drive_time", "2"), ("labor_rate", "90"))
    own = page(("drive_time", "2"), ("labor_rate", "90"), ("drive_rate", "45"))
    assert ">180.00<" in labor and ">90.00<" in own


def test_the_phone_keeps_rates_and_not_amounts():
    form = walking.reply("/job-price", []).body
    kept = re.findall(r'data-kept-box="(\w+)" data-kept-with=""', form)
    assert kept == [
        *("call_out", "distance_price", "drive_rate", "labor_rate", "wire_price", "fill_price", "fill_volume"),
        *("tax_rate", "waste", "markup", "tax_name", "deposit_share"),
    ]


def test_the_rates_lead_on_to_what_the_weld_costs():
    text = page(("call_out", "95"), ("labor_rate", "90"), ("wire_price", "4.50 /lb"))
    assert 'href="weld-cost?wire_price=4.5+/lb&labor_rate=90+/h"' in text


def test_wire_and_gas_without_a_price_are_not_charged_and_the_total_says_so():
    """A job fills in how much it needs; the welder may charge by the hour alone."""
    text = page(("call_out", "60"), ("wire_mass", "2 lb"), ("gas_volume", "7 ft3"))
    assert "Not charged, since no price is given: Wire and Gas" in text
    assert 'data-line="wire_mass"' not in text and ">60.00<" in text
    text = page(("call_out", "60"), ("wire_mass", "2 lb"), ("wire_price", "4 /lb"), ("gas_volume", "7 ft3"))
    assert "no price is given: Gas" in text and ">8.00<" in text
    assert "its price is needed too" in page(("gas_volume", "7 ft3"), ("fill_price", "60"))
