"""The price of a job: what is charged line by line, tax, deposit and what is still to pay, for a quote and an invoice."""

import math

from calculators import numerals, units, wire_mass
from calculators.contract import (
    Answer,
    Calculator,
    Card,
    Choice,
    Field,
    Given,
    Line,
    Measured,
    Message,
    Next,
    Number,
    Plain,
    Quantity,
    Refusal,
    Rows,
    Source,
    Text,
    Verdict,
    Words,
    carry,
    say,
)
from calculators.job_price_words import ENGLISH

SUMS = Source(
    "Price × amount, rate × hours on the clock; each line to a whole cent, the total their sum", "common practice"
)
ROUNDING = Source(
    "Streamlined Sales and Use Tax Agreement, section 324, as R.I. Gen. Laws 44-18.1-25: tax to the third decimal place, up"
    " to the next cent if that is over four; by item or by invoice",
    "law",
)

_HOURS = ("make_safe_time", "gouging_time", "prep_time", "fit_up_time", "welding_time", "cleaning_time", "waiting_time")
_MOST = 10**10  # cents; more has too many figures to be sure of the last


def _whole(cents: float) -> int:
    """Return a sum in whole cents, halves up."""
    return math.floor(numerals.settle(cents) + 0.5)


def _money(cents: int) -> Measured:
    return Measured(cents / 100.0, "money")


def _each(price: float) -> Measured:
    return Measured(price, "money")


def _figures(price: float, unit: str) -> int | None:
    """Return how many figures of a price to show: more than cents only where it has more."""
    cents = units.from_coherent(price, unit) * 100.0
    return None if numerals.settle(cents) == _whole(cents) else 6


class _Price:
    """The lines of a price in whole cents, and what follows from them."""

    def __init__(self, given: Given) -> None:
        self.given = given
        self.lines: list[tuple[str, Message, int]] = []
        self.free: list[str] = []
        self.goods = 0
        self.hours = 0.0
        self._travel()
        self._labor()
        self._goods()
        for row in given.rows("extras"):
            self._add("extras-" + str(row.place), say("job-price.named", name=row.word("what")), row.number("amount"))
        self.subtotal = sum([cents for _, _, cents in self.lines])
        off = given.number("discount") if given.has("discount") else 0.0
        self.discount = _whole(self.subtotal * off)
        self.taxed = self.subtotal - self.discount
        if given.word("tax_on") == "goods":
            self.taxed = self.goods - _whole(self.goods * off)
        self.tax = _whole(self.taxed * given.number("tax_rate")) if given.has("tax_rate") else 0
        self.total = self.subtotal - self.discount + self.tax
        if max(self.subtotal, self.total) >= _MOST:
            raise Refusal("", say("job-price.refusal.large"))
        self.deposit = self._deposit()
        paid = given.word("paid")
        if paid == "deposit" and not self.deposit:
            raise Refusal("paid", say("job-price.refusal.deposit"))
        self.paid = self.total if paid == "all" else self.deposit if paid == "deposit" else 0

    def _add(self, key: str, label: Message, amount: float) -> int:
        cents = _whole(amount * 100.0)
        self.lines.append((key, label, cents))
        return cents

    def _rate(self, name: str, amount: str) -> float:
        """Return a rate, which has to be there if there is an amount of what it is for."""
        if not self.given.has(name):
            raise Refusal(name, say("job-price.refusal.rate", amount=say("job-price.field." + amount)))
        return self.given.number(name)

    def _typed(self, name: str, quantity: str = "") -> Measured:
        """Return an amount with all the figures that count, so that who reckons the line again finds the same."""
        shown = self.given.measured(name, quantity or name)
        shown.figures = 6
        return shown

    def _needed(self, name: str, waste: float, unit: str) -> Measured:
        return Measured(wire_mass.needed(self.given.number(name), waste), name, 6, unit)

    def _times(self, key: str, amount: Measured, rate: Measured) -> None:
        label = say("job-price.times", what=say("job-price.field." + key), amount=amount, rate=rate)
        self._add(key, label, amount.value * rate.value)

    def _travel(self) -> None:
        given = self.given
        if given.has("call_out"):
            self._add("call_out", say("job-price.field.call_out"), given.number("call_out"))
        if given.has("drive_distance"):
            self._rate("distance_price", "drive_distance")
            price = given.measured("distance_price")
            distance = Measured(given.number("drive_distance"), "drive_distance", 6, (price.unit or "")[1:])
            price.figures = _figures(price.value, price.unit or "")
            self._times("drive_distance", distance, price)
        if given.has("drive_time"):
            name = "drive_rate" if given.has("drive_rate") else "labor_rate"
            self._rate(name, "drive_time")
            self._times("drive_time", self._typed("drive_time", "work_time"), given.measured(name, "labor_rate"))

    def _labor(self) -> None:
        given = self.given
        for name in _HOURS:
            if given.has(name):
                self._rate("labor_rate", name)
                self._times(name, self._typed(name, "work_time"), given.measured("labor_rate"))
                self.hours += given.number(name)
        arc = given.number("arc_time") if given.has("arc_time") else 0.0
        if self.hours > 0.0 and numerals.settle(arc) > numerals.settle(self.hours):
            raise Refusal("arc_time", say("job-price.refusal.arc"))

    def _goods(self) -> None:
        given = self.given
        waste = given.number("waste") if given.has("waste") else 0.0
        more = 1.0 + (given.number("markup") if given.has("markup") else 0.0)
        before = len(self.lines)
        # A job fills in how much it needs; who charges nothing for it gives no price, and is told so.
        for name, rates in (("wire_mass", ("wire_price",)), ("gas_volume", ("fill_price", "fill_volume"))):
            if given.has(name) and not any(given.has(rate) for rate in rates):
                self.free.append(name)
        if given.has("wire_mass") and "wire_mass" not in self.free:
            price = self._rate("wire_price", "wire_mass") * more
            unit = given.units["wire_price"]
            amount = self._needed("wire_mass", waste, unit[1:])
            self._times("wire_mass", amount, Measured(price, "wire_price", _figures(price, unit), unit))
        if given.has("gas_volume") and "gas_volume" not in self.free:
            fill, unit = self._rate("fill_volume", "gas_volume"), given.units["fill_volume"]
            price = _whole(self._rate("fill_price", "gas_volume") * more * 100.0) / 100.0
            amount = self._needed("gas_volume", waste, unit)
            label = say("job-price.gas", amount=amount, fill=Measured(fill, "gas_volume", 4, unit), price=_each(price))
            self._add("gas_volume", label, price * amount.value / fill)
        for row in given.rows("goods"):
            price, count = _whole(row.number("price") * more * 100.0) / 100.0, row.number("count")
            label = say("job-price.counted", name=row.word("what"), count=Plain(count, 6), price=_each(price))
            self._add("goods-" + str(row.place), label, price * count)
        self.goods = sum([cents for _, _, cents in self.lines[before:]])

    def _deposit(self) -> int:
        given = self.given
        if given.has("deposit"):
            deposit = _whole(given.number("deposit") * 100.0)
            if self.lines and deposit > self.total:
                raise Refusal("deposit", say("job-price.refusal.more", total=_money(self.total)))
            return deposit
        return _whole(self.total * given.number("deposit_share")) if given.has("deposit_share") else 0

    def card(self) -> Card:
        """Return every line with its amount, and the sums below them."""
        given = self.given
        lines = [Line(key, label, _money(cents)) for key, label, cents in self.lines]
        if self.total != self.subtotal or given.has("tax_rate"):
            lines.append(Line("subtotal", say("job-price.line.subtotal"), _money(self.subtotal)))
        if self.discount:
            off = given.measured("discount", "percentage")
            lines.append(Line("discount", say("job-price.line.discount", percent=off), _money(-self.discount)))
        if given.has("tax_rate"):
            name: object = given.word("tax_name") or say("job-price.tax")
            shown = {"name": name, "percent": given.measured("tax_rate", "percentage"), "taxed": _money(self.taxed)}
            lines.append(Line("tax", say("job-price.line.tax", **shown), _money(self.tax)))
        lines.append(Line("total", say("job-price.result.total"), _money(self.total)))
        if self.deposit:
            lines.append(Line("deposit", say("job-price.line.deposit"), _money(self.deposit)))
        if self.paid:
            lines.append(Line("paid", say("job-price.field.paid"), _money(self.paid)))
        lines.append(Line("due", say("job-price.result.due"), _money(self.total - self.paid)))
        if given.word("exclusions"):
            lines.append(Line("exclusions", say("job-price.field.exclusions"), given.word("exclusions")))
        return Card("price", say("job-price.title"), tuple(lines))


def _answer(given: Given) -> Answer:
    price = _Price(given)
    results: list[object] = [Words("total", say("job-price.nothing"))]
    if price.lines:
        results = [Number("total", price.total / 100.0, "money")]
        if price.paid:
            results.append(Number("due", (price.total - price.paid) / 100.0, "money"))
        results.append(price.card())
    shown = {"subtotal": _money(price.subtotal), "discount": _money(price.discount), "tax": _money(price.tax)}
    return Answer(
        results=tuple(results),
        working=(say("job-price.working", total=_money(price.total), **shown),),
        notes=_notes(price),
        cautions=(say("job-price.caution"),),
        sources=(SUMS, ROUNDING),
        next_questions=(Next("weld-cost", say("job-price.next.weld-cost"), _carried(given)),),
        verdict=_verdict(price),
        record="job" if price.lines else "",
    )


def _verdict(price: _Price) -> Verdict | None:
    """Return what is needed and not charged, beside the total that leaves it out."""
    if not price.free:
        return None
    names = say("job-price.field." + price.free[0])
    if len(price.free) > 1:
        names = say("list.and", first=names, rest=say("job-price.field." + price.free[1]))
    return Verdict("unclear", say("job-price.free", names=names))


def _notes(price: _Price) -> tuple[Message, ...]:
    given = price.given
    notes = [say("job-price.note.rounded")]
    if price.hours > 0.0:
        hours = Measured(price.hours, "work_time", None, "h")
        if given.has("arc_time"):
            share = Plain(given.number("arc_time") / price.hours * 100.0, 2)
            notes.append(say("job-price.note.arc", percent=share, hours=hours))
        else:
            notes.append(say("job-price.note.hours", hours=hours))
    return tuple(notes)


def _carried(given: Given) -> "tuple[tuple[str, object], ...]":
    found: tuple[tuple[str, object], ...] = ()
    if given.has("wire_price"):
        found += (("wire_price", given.measured("wire_price")),)
    if given.has("labor_rate"):
        found += carry("labor_rate", given.measured("labor_rate"), 0.01 / 3600.0, 10000.0 / 3600.0)
    return found


def _time(name: str) -> Field:
    return Quantity(name, "work_time", optional=True)


CALCULATOR = Calculator(
    name="job-price",
    fields=(
        Quantity("call_out", "price", optional=True, kept=True),
        Quantity("drive_distance", optional=True),
        Quantity("distance_price", optional=True, kept=True),
        Quantity("drive_time", "work_time", optional=True),
        Quantity("drive_rate", "labor_rate", optional=True, kept=True, hint=True),
    )
    + tuple([_time(name) for name in _HOURS])
    + (
        Quantity("labor_rate", optional=True, kept=True, hint=True),
        Quantity("wire_mass", optional=True),
        Quantity("wire_price", optional=True, kept=True),
        Quantity("gas_volume", optional=True, high=20000.0),
        Quantity("fill_price", optional=True, high=10000.0, kept=True),
        Quantity("fill_volume", "gas_volume", optional=True, low=100.0, high=20000.0, kept=True),
        Quantity("tax_rate", "percentage", optional=True, kept=True),
        Choice("paid", ("none", "deposit", "all"), default="none"),
        Quantity("arc_time", "work_time", optional=True, hint=True),
        Quantity("waste", "percentage", optional=True, high=50.0, kept=True),
        Quantity("markup", "percentage", optional=True, high=100.0, kept=True, hint=True),
        Rows("goods", (Text("what", longest=40), Quantity("count"), Quantity("price", high=10000.0)), most=4, hint=True),
        Rows("extras", (Text("what", longest=40), Quantity("amount", "price")), most=6),
        Quantity("discount", "percentage", optional=True),
        Text("tax_name", longest=30, optional=True, kept=True),
        Choice("tax_on", ("all", "goods"), default="all"),
        Quantity("deposit_share", "percentage", optional=True, kept=True),
        Quantity("deposit", "price", optional=True, hint=True),
        Text("exclusions", longest=200, optional=True),
    ),
    answer=_answer,
    english=ENGLISH,
    sources=(SUMS, ROUNDING),
    place=92,
    fold_from="arc_time",
    moves=False,
)  # fmt: skip
