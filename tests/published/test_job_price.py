"""The price of a job: worked by hand in exact decimals, tax rounded as the law that was seen says.

Law: Streamlined Sales and Use Tax Agreement, section 324, as R.I. Gen. Laws 44-18.1-25, N.D.C.C. 57-39.4-25 and
K.S.A. 79-3676 have it, seen: tax is carried to the third decimal place and goes up to the next cent whenever that is
over four, by item or by invoice. For rounding the lines themselves no published number was found: half a cent goes up
there too, and the check is that anybody with pencil and paper who multiplies what a line shows gets what it says.
"""

import random
import re
from decimal import ROUND_HALF_UP, Decimal
from typing import Any

import pint
import pytest

from calculators import asking
from webapp import shelf
from webapp.catalogue import Context, piece, sentence

UREG: pint.UnitRegistry[Decimal] = pint.UnitRegistry(non_int_type=Decimal)
CENT = Decimal("0.01")
ENGLISH = Context("en", "us", "0")
JOB: dict[str, str] = {
    "call_out": "95",
    "drive_distance": "42 mi",
    "distance_price": "0.67 /mi",
    "prep_time": "45 min",
    "welding_time": "2.5 h",
    "labor_rate": "90 /h",
    "wire_mass": "2 lb",
    "wire_price": "4.50 /lb",
    "waste": "5 %",
    "markup": "15 %",
    "gas_volume": "30 ft3",
    "fill_price": "60",
    "fill_volume": "125 ft3",
    "goods-1-what": "Tip",
    "goods-1-count": "3",
    "goods-1-price": "1.95",
    "extras-1-what": "Crane",
    "extras-1-amount": "120",
    "discount": "5 %",
    "tax_rate": "7.25 %",
    "deposit_share": "30 %",
    "paid": "deposit",
}


def ask(**fields: str) -> Any:
    calculator = shelf.calculator("job-price")
    assert calculator is not None
    return asking.ask(calculator, list(fields.items())).answer


def lines(answer) -> dict[str, Decimal]:
    """Return key -> amount of the card, as it is shown."""
    (card,) = [each for each in answer.results if each.kind == "card"]
    shown = {line.key: piece(line.value, ENGLISH) for line in card.lines if line.key != "exclusions"}
    return {key: Decimal(text.replace("\u202f", "").replace("\u2212", "-")) for key, text in shown.items()}


def labels(answer) -> dict[str, str]:
    (card,) = [each for each in answer.results if each.kind == "card"]
    return {line.key: sentence(line.label, ENGLISH) for line in card.lines}


def cents(amount: Decimal) -> Decimal:
    return amount.quantize(CENT, ROUND_HALF_UP)


# By hand, line by line. Wire: 2 / 0.95 = 2.10526 lb, at 4.50 x 1.15 = 5.175: 10.8947. Gas: 30 / 0.95 = 31.5789 ft3 of
# a fill of 125 at 60 x 1.15 = 69: 17.4316. Tips: 1.95 x 1.15 = 2.2425, 2.24, times 3.
BY_HAND = {
    "call_out": "95.00",
    "drive_distance": "28.14",
    "prep_time": "67.50",
    "welding_time": "225.00",
    "wire_mass": "10.89",
    "gas_volume": "17.43",
    "goods-1": "6.72",
    "extras-1": "120.00",
    "subtotal": "570.68",
    "discount": "-28.53",
    "tax": "39.31",
    "total": "581.46",
    "deposit": "174.44",
    "paid": "174.44",
    "due": "407.02",
}


def test_a_whole_job_by_hand():
    assert lines(ask(**JOB)) == {key: Decimal(text) for key, text in BY_HAND.items()}


def test_tax_on_materials_alone_by_hand():
    # Materials 10.89 + 17.43 + 6.72 = 35.04, less 5 % (1.75) = 33.29; 7.25 % of it is 2.413525.
    found = lines(ask(**JOB, tax_on="goods"))
    assert found["tax"] == Decimal("2.41") and found["total"] == Decimal("544.56")


# The law's rule, third decimal place over four: up; four: down.
@pytest.mark.parametrize(
    ("amount", "rate", "tax"),
    [
        ("10.07", "5", "0.50"),  # 0.5035
        ("10.10", "5", "0.51"),  # 0.505
        ("10.09", "5", "0.50"),  # 0.5045: the third place is four
        ("0.30", "5", "0.02"),  # 0.015
        ("19.99", "7.25", "1.45"),  # 1.449275
        ("100.00", "6.875", "6.88"),  # 6.875
        ("99.93", "6.5", "6.50"),  # 6.49545
    ],
)
def test_tax_is_rounded_as_the_law_says(amount, rate, tax):
    assert lines(ask(call_out=amount, tax_rate=rate))["tax"] == Decimal(tax)


# A second method: pint for the units, exact decimals for the money.
@pytest.mark.parametrize("seed", range(40))
def test_any_hours_and_miles_agree_with_pint_and_decimal(seed):
    chance = random.Random(seed)
    minutes, miles = chance.randint(1, 900), chance.randint(1, 300)
    hour, mile = Decimal(chance.randint(2000, 20000)) / 100, Decimal(chance.randint(10, 300)) / 100
    rate = Decimal(chance.randint(0, 2500)) / 100
    answer = ask(
        welding_time=f"{minutes} min",
        labor_rate=f"{hour} /h",
        drive_distance=f"{miles} mi",
        distance_price=f"{mile} /mi",
        tax_rate=f"{rate} %",
    )
    hours = UREG.Quantity(Decimal(minutes), "minute").to("hour").magnitude
    labor, drive = cents((hours * hour).quantize(Decimal("1e-9"))), cents(miles * mile)
    tax = cents((labor + drive) * rate / 100)
    found = lines(answer)
    assert (found["welding_time"], found["drive_distance"], found["tax"]) == (labor, drive, tax)
    assert found["total"] == labor + drive + tax


@pytest.mark.parametrize("seed", range(40))
def test_what_is_shown_adds_up_to_the_cent(seed):
    chance = random.Random(f"sum {seed}")
    job = dict(JOB)
    for name in ("call_out", "labor_rate", "wire_price", "fill_price", "goods-1-price", "extras-1-amount"):
        job[name] = f"{chance.uniform(0.01, 400):.3f}"
    for name in ("waste", "markup", "discount", "tax_rate", "deposit_share"):
        job[name] = f"{chance.uniform(0, 30):.3f}"
    answer = ask(**job, tax_on=chance.choice(("all", "goods")))
    found = lines(answer)
    sums = ("subtotal", "discount", "tax", "total", "deposit", "paid", "due")
    assert sum(amount for key, amount in found.items() if key not in sums) == found["subtotal"]
    assert found["subtotal"] + found["discount"] + found["tax"] == found["total"]
    assert found["total"] - found["paid"] == found["due"]
    assert Decimal(str(answer.results[0].value)) == found["total"]


def test_a_line_reckoned_again_from_what_it_shows_gives_what_it_says():
    found, said = lines(ask(**JOB)), labels(ask(**JOB))
    checked = []
    for key, text in said.items():
        numbers = [Decimal(each) for each in re.findall(r"\d+(?:\.\d+)?", text.partition(": ")[2])]
        if " × " in text and "min" not in text:
            assert cents(numbers[0] * numbers[1]) == found[key], text
            checked.append(key)
        elif key == "gas_volume":
            assert cents(numbers[0] * numbers[1] / numbers[2]) == found[key], text
            checked.append(key)
    assert checked == ["drive_distance", "welding_time", "wire_mass", "gas_volume", "goods-1"]


def test_hours_on_the_clock_are_charged_and_not_arc_time():
    with_arc = ask(welding_time="2 h", labor_rate="90", arc_time="12 min")
    assert lines(with_arc) == lines(ask(welding_time="2 h", labor_rate="90"))
    (note,) = [each for each in with_arc.notes if each.id == "job-price.note.arc"]
    assert sentence(note, ENGLISH) == "The arc burns 10 % of the 2\u00a0h charged."


@pytest.mark.parametrize(("paid", "due"), [("none", "100.00"), ("deposit", "75.00"), ("all", "0.00")])
def test_still_to_pay(paid, due):
    assert lines(ask(call_out="100", deposit="25", deposit_share="50", paid=paid))["due"] == Decimal(due)
