"""One question with a known answer for each calculator, and the ways to put it to a page."""

from playwright.sync_api import Locator, Page

from tests.browser import driving

TYPING_MS = 15  # between key presses: a quick thumb
# Two boxes are scrolled to the same place: tapped faster, Chromium would take it for a double tap.
BETWEEN_TAPS_MS = 350


class Known:
    """A question as it is typed, and where its answer's number has to lie, both ends included; or its words."""

    def __init__(
        self, typed: tuple[tuple[str, str, str], ...], low: float, high: float, unit: str, words: str = ""
    ) -> None:
        self.typed = typed  # (field, number or choice, unit or "" to leave it)
        self.low = low
        self.high = high
        self.unit = unit
        self.words = words

    def address(self, calculator: str) -> str:
        """Return the question as a link, as it would be texted to somebody."""
        pairs = [f"{name}={(text + ' ' + unit).strip().replace(' ', '+')}" for name, text, unit in self.typed]
        return calculator + "?" + "&".join(pairs)


KNOWN = {
    # No number: a job of nothing but its title names what is missing. By hand, from the form.
    "job": Known((("title", "gate", ""),), 0, 0, "", "To settle: 6. First: Joint (Before leaving)"),
    # 95 of call-out and 2.5 h at 90.00 are 320.00; 7 % of tax on it, 22.40. By hand.
    "job-price": Known(
        (
            ("call_out", "95", ""),
            ("welding_time", "2.5", "h"),
            ("labor_rate", "90", ""),
            ("tax_rate", "7", ""),
        ),
        342.4,
        342.4,
        "",
    ),
    # A spool of 5 lb is 5 lb until the log takes something off. By hand.
    "stock": Known((("item", "spool", ""), ("name", "front", ""), ("spool_left", "5", "lb")), 5.0, 5.0, "lb"),
    # Labor 45 an hour / (10 lb/h x 30 %) = 15.00; wire 4.50 / 0.90 = 5.00: 20.00 a pound. By hand.
    "weld-cost": Known(
        (
            ("wire_price", "$4.50", "/lb"),
            ("rate_by", "rate", ""),
            ("deposition_rate", "10", "lb/h"),
            ("labor_rate", "45", ""),
            ("operating_factor", "30", "%"),
            ("deposition_efficiency", "90", "%"),
            ("waste", "0", "%"),
        ),
        20.0,
        20.0,
        "/lb",
    ),
    # By hand: the middle one of 17.3, 17.8 and 21.
    "pass-chart": Known(
        (("heats", "17.3 21 - 17.8 kJ/in", ""), ("limit_basis", "heat-input", ""), ("heat_input_limit", "20", "kJ/in")),
        17.8,
        17.8,
        "kJ/in",
    ),
    # ISO/TR 18491 method A, by hand: 24 V x 180 A / (6 in in 30 s, 5.08 mm/s) = 850 J/mm, x 0.8 = 17.3 kJ/in.
    "weld-entry": Known(
        (
            ("joint", "bracket", ""),
            ("voltage", "24", "V"),
            ("current", "180", "A"),
            ("weld_length", "6", "in"),
            ("arc_time", "30", "s"),
        ),
        17.2,
        17.4,
        "kJ/in",
    ),
    # 1/8 in of steel wants 125 A (common practice), at which 0.035 in wire burns off 1.6 in/min for each,
    # good to 15 %: 170 to 230 in/min. Standing: common practice.
    "settings": Known((("thickness", "1/8", "in"),), 170, 230, "in/min"),
    # Wire in six seconds, times ten: 12 in is 120 in/min. Standing: common practice, by hand.
    "machine-trim": Known(
        (
            ("feed_marks-1-mark", "1", ""),
            ("feed_marks-1-run_out_length", "12", "in"),
            ("feed_marks-2-mark", "5", ""),
            ("feed_marks-2-run_out_length", "31", "in"),
        ),
        0,
        0,
        "",
        "1=120 5=310 in/min",
    ),
    # Welding Journal, July 2016: 309L joins stainless to carbon steel. Standing: published.
    "filler-match": Known(
        (("base", "304", ""), ("second_base", "a36", "")), 0, 0, "", "ER309L: Bare wire or rod, stainless"
    ),
    # AWS D1.1: no gas-shielded welding above 5 mph of wind: holes come of it first. Standing: standard, as quoted.
    "fault-finder": Known((("fault", "porosity", ""), ("wind_speed", "12", "mph")), 0, 0, "", "Wind"),
    # AWS D1.1: no gas-shielded welding above 5 mph of wind; rods are not gas-shielded. Standing: standard, as quoted.
    "process-choice": Known(
        (("thickness", "1/4", "in"), ("wind", "measured", ""), ("wind_speed", "12", "mph")), 0, 0, "", "Stick"
    ),
    # AWS D1.1:2015 5.25.1.4, seen quoted: 2 in beyond each end of a crack, so 6 in of crack is 10 in of repair.
    "crack-repair": Known(
        (
            ("service", "steady", ""),
            ("family", "structural", ""),
            ("grade", "a36-group", ""),
            ("crack_length", "6", "in"),
            ("thickness", "1/2", "in"),
        ),
        10.0,
        10.0,
        "in",
    ),
    # One litre a minute for each millimetre of bore: 16 mm takes 16 L/min, 33.9 ft3/h. Standing: common practice.
    "gas-flow": Known((("nozzle_bore", "16", "mm"),), 34, 34, "ft\u00b3/h"),
    # A scale for argon on carbon dioxide: x 0.9505 by the densities at 20 degC. Standing: published, computed.
    "flow-meter": Known((("gas", "carbon-dioxide", ""), ("reading", "40", "ft3/h")), 38.0, 38.1, "ft\u00b3/h"),
    # 50 L of argon from 200 to 150 bar gauge at 15 degC in 100 h: 2.60 m3 by its equation of state, 0.919 ft3/h.
    # Standing: published, computed.
    "leak-test": Known(
        (
            ("gas", "argon", ""),
            ("cylinder_water_volume", "50", "L"),
            ("start_pressure", "200", "bar"),
            ("end_pressure", "150", "bar"),
            ("leak_time", "100", "h"),
            ("start_temperature", "15", "degC"),
            ("end_temperature", "15", "degC"),
        ),
        0.91,
        0.93,
        "ft\u00b3/h",
    ),
    # AWS A5.18:2005, table 3, as SFA-5.18 (2007): 70 ksi, in the name itself. Standing: standard.
    "filler-name": Known((("filler", "ER70S-6", ""),), 0, 0, "", "Gas-shielded wire, carbon steel"),
    # ISO 14175:2008, table 2: 82 argon and 18 carbon dioxide is M21; that M21 begins above 15 % was seen quoted.
    "gas-blend": Known((("carbon_dioxide", "18", ""),), 0, 0, "", "M21: oxidizing"),
    # 1/2 in fillet, bare triangle: 0.424 lb/ft at 0.283 lb/in3, 0.425 at 7850 kg/m3. Standing: published (a handbook's
    # worked example), by hand.
    "joint-fill": Known((("leg", "1/2", "in"), ("overweld_factor", "1", "")), 0.424, 0.426, "lb/ft"),
    # 0.045 in wire at 300 in/min on a 3/8 in fillet 10 % over: 5.5 in/min with a rate printed 2 % low. Standing:
    # published (Welding Design, November 2009), by hand.
    "travel-speed": Known(
        (
            ("wire_feed_speed", "300", "in/min"),
            ("wire_diameter", "0.045", "in"),
            ("leg", "3/8", "in"),
            ("overweld_factor", "1.21", ""),
            ("deposition_efficiency", "100", ""),
        ),
        5.5,
        5.65,
        "in/min",
    ),
    # What can fall is blocked before anything else. Standing: common practice.
    "make-safe": Known((("job", "machine", ""),), 0, 0, "", "Block what can fall. Then lock out."),
    # 29 CFR 1910.254(b)(3): 100 V dc, moved by hand or not. Standing: law.
    "shock": Known((("place", "dry", ""), ("supply", "mains", "")), 100, 100, "V"),
    # Overhead sparks fall: leather over wool or cotton. Standing: common practice.
    "clothing": Known((("work", "wire", ""), ("position", "overhead", "")), 0, 0, "", "Leathers over wool or cotton"),
    # 45 min after 13:30 is 14:15. By hand.
    "lone-worker": Known(
        (("start_time", "13:30", ""), ("call_every", "45", "min"), ("where", "North gate", "")), 0, 0, "", "14:15"
    ),
    # AWS D1.1, table 8.1 (2020): any crack is unacceptable, whatever its size. Standing: standard, as reproduced.
    "visual-check": Known(
        (("service", "steady", ""), ("joint", "fillet", ""), ("seen", "crack", ""), ("thickness", "1/4", "in")),
        0,
        0,
        "",
        "Not within them",
    ),
    # NFPA 51B, 2019: one hour after the last spark. Standing: standard, as quoted.
    "hot-work": Known((("work_on", "open", ""), ("place", "outdoors", "")), 60, 60, "min"),
    # Lifting gear is not mended by welding: 29 CFR 1910.184 and its letters. Standing: law.
    "metal-id": Known((("part", "lifting-gear", ""),), 0, 0, "", "Do not weld it"),
    # E70, ASD: 0.928 kip/in for each sixteenth of leg (AISC 360): 3.71 for 1/4 in.
    # Standing: standard, the constant from memory.
    "fillet-size": Known((("leg", "1/4", "in"),), 3.71, 3.72, "kip/in"),
    # CE(IIW) of a heat with 0.18 C, 1.2 Mn, 0.05 Cr, 0.01 Mo, 0.04 V, 0.05 Ni, 0.2 Cu by hand: 0.4167.
    "carbon-equivalent": Known(
        (
            ("carbon", "0.18", ""),
            ("silicon", "0.25", ""),
            ("manganese", "1.2", ""),
            ("chromium", "0.05", ""),
            ("molybdenum", "0.01", ""),
            ("vanadium", "0.04", ""),
            ("nickel", "0.05", ""),
            ("copper", "0.2", ""),
            ("boron", "0", ""),
        ),
        0.416,
        0.417,
        "%",
    ),
    # CET 0.34, 25 mm, 5 mL/100 g, 1 kJ/mm by the formula of EN 1011-2 by hand: 102 degC, 216 degF. From memory.
    "preheat": Known(
        (
            ("family", "structural", ""),
            ("grade", "a572-50-group", ""),
            ("thickness", "25", "mm"),
            ("cet", "0.34", ""),
            ("hydrogen", "5", ""),
            ("heat_input", "1", "kJ/mm"),
        ),
        215.0,
        216.0,
        "\u00b0F",
    ),
    # EN 1011-2 annex D, thin plate: 1 kJ/mm, 20 degC, 10 mm: 11.36 s by hand. Standing: from memory.
    "cooling-time": Known(
        (
            ("joint", "bead-on-plate", ""),
            ("heat_input", "1", "kJ/mm"),
            ("thickness", "10", "mm"),
            ("preheat_temperature", "20", "degC"),
        ),
        11.3,
        11.4,
        "s",
    ),
    # 0.2 x 60 mm2 / 10 mm + 0.05 x 2 mm = 1.30 mm, 0.0512 in (Spraragen and Ettinger). Standing: from memory.
    "shrinkage": Known(
        (("thickness", "10", "mm"), ("weld_area", "60", "mm2"), ("root_opening", "2", "mm")), 0.051, 0.0515, "in"
    ),
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
    # 0.035 in steel wire, 75/25, 130 A, 18.5 V: everyday short-circuit. Standing: common practice.
    "transfer-mode": Known(
        (("wire_diameter", "0.035", "in"), ("current", "130", ""), ("voltage", "18.5", "")),
        0.0,
        0.0,
        "",
        words="Short-circuit",
    ),
    # 22 V on the machine less 2.4 V in the leads is 19.6 V at the gun. Standing: law (voltages add up), by hand.
    "arc-voltage": Known(
        (("machine_voltage", "22", ""), ("lead_voltage_drop", "2.4", ""), ("current", "150", "")), 19.6, 19.6, "V"
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
    # NEC Chapter 9 Table 8: 1/0 AWG at 75 degC is 0.122 ohm for 1000 ft: 200 A x 0.2 x 0.122 = 4.88 V. By hand.
    "lead-drop": Known(
        (("lead_length", "100", "ft"), ("current", "200", ""), ("cable_size", "awg-1-0", "")), 4.86, 4.9, "V"
    ),
    # 400 A at 25 % is 200 A at 50 % where heat grows with current, the careful end, by hand. The other end, 283 A, is
    # that of current squared x percent (IEC 60974-1). Standing: standard.
    "duty-cycle": Known(
        (("rated_current", "400", ""), ("rated_duty_cycle", "25", ""), ("duty_cycle", "50", "")), 200, 200, "A"
    ),
    # 24 V x 200 A ÷ (0.8 x 0.7) x 1.25 = 10 714 VA. Standing: law (definitions), by hand.
    "generator-size": Known(
        (("current", "200", ""), ("machine_efficiency", "80", ""), ("power_factor", "0.7", "")), 10700, 10750, "W"
    ),
    # 29 CFR 1910.133(a)(5): gas metal arc, 160 to 250 A, shade 10. Standing: law.
    "shade": Known((("current", "180", ""),), 10, 10, ""),
    # 29 CFR 1910.95, table G-16a: 95 dB for 4 h is a whole dose. Standing: law.
    "noise": Known(
        (
            ("periods-1-work", "measured", ""),
            ("periods-1-sound_level", "95", ""),
            ("periods-1-exposure_time", "4", "h"),
        ),
        100,
        100,
        "%",
    ),
    # 350 ft3 (9.91 m3) with 35 ft3/h of carbon dioxide: 0.5 % after -10 h x ln(0.995) = 3.0 min. Law (mass), by hand.
    "oxygen": Known(
        (
            ("gas", "carbon-dioxide", ""),
            ("space", "known", ""),
            ("space_volume", "350", "ft3"),
            ("gas_inflow", "35", "ft3/h"),
        ),
        3.0,
        3.0,
        "min",
    ),
    # AP-42 12.19: 5.2 g/kg (from memory) of 1 kg in 10 x 10 x 4 m, no air: 13 mg/m3. By hand.
    "fume": Known(
        (
            ("wire_mass", "1", "kg"),
            ("work_time", "1", "h"),
            ("room_by", "tape", ""),
            ("room_length", "10", "m"),
            ("room_width", "10", "m"),
            ("room_height", "4", "m"),
        ),
        13,
        13,
        "mg/m\u00b3",
    ),
}


def type_in(page: Page, known: Known) -> None:
    """Fill in a form as a person would: tap, press keys, choose."""
    for name, text, unit in known.typed:
        field = page.locator(f"#{name}")
        unfold(page, field)
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
    """Fill in a form at once; a box that a choice calls for without script appears when the choice is sent."""
    for name, text, unit in known.typed:
        field = page.locator(f"#{name}")
        unfold(page, field)
        if not field.is_visible():
            with page.expect_navigation():
                page.get_by_role("button", name="Work it out").tap()
        kind = field.evaluate("each => each.tagName + ' ' + each.type")
        if kind == "INPUT radio":
            page.locator(f"input[name={name}][value={text}]").check()
        elif kind.startswith("SELECT"):
            field.select_option(text)
        else:
            field.fill(text)
        choose_unit(page, name, unit)


def unfold(page: Page, field: Locator) -> None:
    """Open the fold that a field lies in, if it lies in a closed one."""
    folded = page.locator("details.more:not([open])", has=field)
    if folded.count():
        folded.locator("summary").tap()


def choose_unit(page: Page, name: str, unit: str) -> None:
    chooser = page.locator(f"select#{name}_unit")
    if unit and chooser.count():
        chooser.select_option(unit)


def read_number(page: Page) -> tuple[float, str]:
    """Return the number and the unit of the answer that the page shows."""
    page.wait_for_selector(".headline.answered .number b")
    shown = shown_number(page)
    assert shown, "the answer went away"
    return shown


# The words of an answer that is no number, or the number and its unit (a shade has none), all at one moment.
SHOWN = """() => {
  const number = document.querySelector('.headline.answered .number');
  const part = selector => number?.querySelector(selector)?.innerText ?? '';
  return [number?.matches('.words') ? number.innerText : '', part('b'), part('.unit')];
}"""


def shown_number(page: Page) -> tuple[float, str] | None:
    """Return the number and the unit that the page shows now, if it does."""
    _, number, unit = page.evaluate(SHOWN)
    return (float(number.replace("\u202f", "").replace("\u2212", "-")), unit) if number else None


def expect(page: Page, known: Known) -> None:
    """Wait for the known answer; fail with what the page shows instead."""
    shown = None
    for _ in range(driving.PATIENCE_MS // 100):
        if known.words:
            shown = page.evaluate(SHOWN)[0]
            if shown == known.words:
                return
        elif shown := shown_number(page):
            if known.low <= shown[0] <= known.high and shown[1] == known.unit:
                return
        page.wait_for_timeout(100)
    raise AssertionError(f"{shown}, not {known.low} to {known.high} {known.unit}")
