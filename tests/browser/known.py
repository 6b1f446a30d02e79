"""One question with a known answer for each calculator, and the ways to put it to a page."""

from playwright.sync_api import Page

from tests.browser import driving

TYPING_MS = 15  # between key presses: a quick thumb
# Two boxes are scrolled to the same place: tapped faster, Chromium would take it for a double tap.
BETWEEN_TAPS_MS = 350


class Known:
    """A question as it is typed, and where its answer's number has to lie, both ends included."""

    def __init__(self, typed: tuple[tuple[str, str, str], ...], low: float, high: float, unit: str) -> None:
        self.typed = typed  # (field, number or choice, unit or "" to leave it)
        self.low = low
        self.high = high
        self.unit = unit

    def address(self, calculator: str) -> str:
        """Return the question as a link, as it would be texted to somebody."""
        pairs = [f"{name}={(text + ' ' + unit).strip().replace(' ', '+')}" for name, text, unit in self.typed]
        return calculator + "?" + "&".join(pairs)


KNOWN = {
    # Manufacturers' standard gage, 16 gauge: 0.0598 in. Standing: published (Machinery's Handbook, 29th ed.).
    "sheet-gauge": Known((("gauge_system", "steel", ""), ("gauge", "16", "")), 0.0598, 0.0598, "in"),
    # 0.035 in wire at 125 A runs at 200 to 225 in/min in short-circuit. Standing: common practice.
    "wire-feed": Known(
        (
            ("wire_material", "mild-steel", ""),
            ("wire_diameter", "0.035", "in"),
            ("current", "125", ""),
            ("contact_tip_to_work", "12", "mm"),
        ),
        200,
        225,
        "in/min",
    ),
    # EN 1011-1: 0.8 x 24 V x 180 A x 60 / (1000 x 12 in/min) = 17.28 kJ/in. Standing: standard, by hand.
    "heat-input": Known(
        (("voltage", "24", ""), ("current", "180", ""), ("travel_speed", "12", "in/min")), 17.3, 17.3, "kJ/in"
    ),
    # NPS 4 schedule 40 is 10.80 lb/ft in a list made from ASTM A53: 216 lb for 20 ft. Standing: published.
    "part-weight": Known(
        (
            ("shape", "pipe", ""),
            ("pipe_size", "dn-100", ""),
            ("pipe_schedule", "40", ""),
            ("part_length", "20", "ft"),
        ),
        215.8,
        216.2,
        "lb",
    ),
    # 1 kg of 0.9 mm wire at 7850 kg/m3 is 200.24 m, 657 ft. Standing: law (geometry), by hand.
    "spool-life": Known(
        (("wire_material", "mild-steel", ""), ("wire_diameter", "0.9", "mm"), ("wire_mass", "1", "kg")), 657, 657, "ft"
    ),
    # Argon by its equation of state (Tegeler, Span and Wagner 1999, as CoolProp 8.0.0 has it): 43 L at 2000 psi
    # and 20 degC hold 6153 L at 15 degC and 1 atm, 42 of which stay in it when the gauge shows nothing: 370.0 min
    # at 35 ft3/h. Standing: published, computed.
    "gas-supply": Known(
        (
            ("gas", "argon", ""),
            ("cylinder_water_volume", "43", "L"),
            ("cylinder_pressure", "2000", "psi"),
            ("cylinder_temperature", "20", "degC"),
            ("gas_flow", "35", "ft3/h"),
        ),
        369,
        371,
        "min",
    ),
}


def type_in(page: Page, known: Known) -> None:
    """Fill in a form as a person would: tap, press keys, choose."""
    for name, text, unit in known.typed:
        field = page.locator(f"#{name}")
        kind = field.evaluate("each => each.tagName + ' ' + each.type")
        if kind == "INPUT radio":
            page.locator(f"label:has(input[name={name}][value={text}])").tap()
        elif kind.startswith("SELECT"):
            field.select_option(text)
        else:
            page.wait_for_timeout(BETWEEN_TAPS_MS)
            field.tap()
            page.keyboard.type(text, delay=TYPING_MS)
        choose_unit(page, name, unit)


def fill_in(page: Page, known: Known) -> None:
    """Fill in a form at once."""
    for name, text, unit in known.typed:
        field = page.locator(f"#{name}")
        kind = field.evaluate("each => each.tagName + ' ' + each.type")
        if kind == "INPUT radio":
            page.locator(f"input[name={name}][value={text}]").check()
        elif kind.startswith("SELECT"):
            field.select_option(text)
        else:
            field.fill(text)
        choose_unit(page, name, unit)


def choose_unit(page: Page, name: str, unit: str) -> None:
    chooser = page.locator(f"select#{name}_unit")
    if unit and chooser.count():
        chooser.select_option(unit)


def read_number(page: Page) -> tuple[float, str]:
    """Return the number and the unit of the answer that the page shows."""
    page.wait_for_selector(".headline.answered .number")
    number = page.inner_text(".headline .number b").replace("\u202f", "").replace("\u2212", "-")
    return float(number), page.inner_text(".headline .number .unit")


def expect(page: Page, known: Known) -> None:
    """Wait for the known answer; fail with what the page shows instead."""
    shown = None
    for _ in range(driving.PATIENCE_MS // 100):
        if page.locator(".headline.answered .number b").count():
            shown = read_number(page)
            if known.low <= shown[0] <= known.high and shown[1] == known.unit:
                return
        page.wait_for_timeout(100)
    raise AssertionError(f"{shown}, not {known.low} to {known.high} {known.unit}")
