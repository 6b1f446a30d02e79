"""The truck: what is left of a spool and a cylinder, what runs them down, and choosing them on a form."""

from pathlib import Path

import pytest
from playwright.sync_api import BrowserContext, Page, expect

from tests.browser import kept, test_axe, test_touch
from tests.browser.driving import Server, visit
from tests.browser.test_log import keep

COUNTED = "2026-05-01T08:00:00.000Z"
SPOOL = {
    "item": "spool",
    "name": "Front rack",
    "wire_class": "ER70S-6",
    "wire_diameter": "0.035 in",
    "spool_left": "10 lb",
    "left": "4.535924 kg",
    "counted_at": COUNTED,
}
CYLINDER = {
    "item": "cylinder",
    "name": "Mix",
    "gas_words": "Argon + CO2",
    "cylinder_pressure": "100 bar",
    "left": "2000 L",
    "counted_at": COUNTED,
}
LEAD = {"item": "lead", "name": "Long pair"}


class Truck:
    """A phone with two spools, a cylinder, a lead and a weld that used of the first spool and the cylinder."""

    def __init__(self, page: Page, server: Server, folder: Path) -> None:
        self.page, self.address, self.folder = page, server.address, folder
        self.spool = kept.record("stock", SPOOL)
        self.other = kept.record("stock", {**SPOOL, "name": "Behind the seat"}, "2026-05-01T09:00:00.000Z")
        self.cylinder = kept.record("stock", CYLINDER)
        used = {"used_wire": "0.535924 kg", "used_gas": "500 L", "welded_at": "2026-05-02T10:00:00.000Z"}
        of = {"spool": self.spool["id"], "cylinder": self.cylinder["id"]}
        self.weld = kept.record("weld-entry", {"joint": "bracket", "weld_pass": "root", **of, **used})
        self.put(self.spool, self.other, self.cylinder, kept.record("stock", LEAD), self.weld)

    def put(self, *records: kept.Record) -> None:
        """Put records on the phone."""
        kept.put(self.page, self.address, self.folder, *records)

    def opened(self, count: int = 4) -> Page:
        """Open the truck's page; return it once so many things stand on it."""
        self.page.goto(self.address + "truck")
        expect(self.page.locator("[data-rows] > li")).to_have_count(count)
        return self.page

    def row(self, name: str) -> str:
        """Return what a thing's row says."""
        return self.page.locator("[data-rows] > li", has_text=name).inner_text().replace("\u00a0", " ")


@pytest.fixture
def truck(phone: BrowserContext, server: Server, tmp_path: Path) -> Truck:
    return Truck(visit(phone, server.address), server, tmp_path)


def test_what_is_left_is_the_count_less_what_was_welded_in_the_units_it_was_typed_in(truck: Truck):
    page = truck.opened()
    assert "8.82 lb (4 kg) left" in truck.row("Front rack") and "Welds on it: 1" in truck.row("Front rack")
    assert "10 lb (4.54 kg) left" in truck.row("Behind the seat")
    assert "1500 L (53 ft³) left" in truck.row("Mix")
    meter = page.locator("li", has_text="Front rack").locator("meter")
    assert meter.evaluate("each => [each.value.toFixed(3), each.max]") == ["4.000", 4.535924]
    assert page.locator("li", has_text="Long pair").locator("meter").is_hidden()
    page.locator("li", has_text="Front rack").locator("summary").tap()
    assert "bracket, root" in truck.row("Front rack") and "1.18 lb (0.536 kg)" in truck.row("Front rack")


def test_deleting_a_weld_puts_back_what_it_took_and_bringing_it_back_takes_it_again(truck: Truck):
    page = truck.page
    page.goto(truck.address + "entry#" + truck.weld["id"])
    page.get_by_role("button", name="Delete").tap()
    page.get_by_text("Deleted. It stays readable here.").wait_for()
    truck.opened()
    assert "10 lb (4.54 kg) left" in truck.row("Front rack") and "2000 L" in truck.row("Mix")
    page.goto(truck.address + "entry#" + truck.weld["id"])
    page.get_by_role("button", name="Bring back").tap()
    page.get_by_role("button", name="Delete").wait_for()
    truck.opened()
    assert "8.82 lb (4 kg) left" in truck.row("Front rack")


def test_a_correction_of_a_weld_counts_in_the_place_of_what_it_corrects(truck: Truck):
    fields = {
        "joint": "bracket",
        "spool": truck.spool["id"],
        "used_wire": "6 kg",
        "welded_at": "2026-05-02T10:00:00.000Z",
    }
    truck.put(kept.record("weld-entry", fields, follows=truck.weld))
    truck.opened()
    assert "3.23 lb (1.46 kg) over: count it again" in truck.row("Front rack")
    assert "2000 L" in truck.row("Mix")


def test_what_is_taken_off_the_truck_can_be_brought_back(truck: Truck):
    page = truck.opened()
    page.locator("li", has_text="Behind the seat").locator("summary").tap()
    page.locator("li", has_text="Behind the seat").get_by_role("button", name="Take off the truck").tap()
    expect(page.locator("[data-rows] > li")).to_have_count(3)
    page.get_by_role("button", name="Show what was taken off").tap()
    expect(page.locator("[data-rows] > li")).to_have_count(1)
    assert "Deleted" in truck.row("Behind the seat")
    page.get_by_role("button", name="Bring back").tap()
    page.get_by_text("Nothing on the truck yet.").wait_for()
    truck.opened()


def test_a_link_counts_again_or_corrects_this_very_revision(truck: Truck):
    page = truck.opened()
    row = page.locator("li", has_text="Front rack")
    again = row.locator("[data-again]").get_attribute("href") or ""
    assert again.startswith("stock?item=spool&name=Front+rack") and "spool_left" not in again
    assert again.endswith(f"#correct={truck.spool['id']}&rev={truck.spool['rev']}&count=yes")
    correct = row.locator("[data-correct]").get_attribute("href") or ""
    assert "spool_left=10+lb" in correct and "left=4.5" not in correct
    assert correct.endswith(f"#correct={truck.spool['id']}&rev={truck.spool['rev']}")


# ---------------------------------------------------------------- choosing on a form


def test_a_weld_s_form_offers_the_truck_and_is_filled_in_from_it_but_never_over_what_was_typed(truck: Truck):
    page = truck.page
    page.goto(truck.address + "weld-entry")
    spool = page.get_by_label("Spool on the truck")
    spool.wait_for()
    assert spool.locator("option").all_inner_texts() == [
        "None of these",
        "Behind the seat, 10\u00a0lb",
        "Front rack, 8.82\u00a0lb",
    ]
    spool.select_option(truck.spool["id"])
    assert page.input_value("#wire_class") == "ER70S-6"
    page.locator("summary", has_text="More").tap()
    page.locator("#gas_used").fill("what hangs there")
    page.get_by_label("Cylinder on the truck").select_option(truck.cylinder["id"])
    assert page.input_value("#gas_used") == "what hangs there"


def test_a_weld_draws_down_what_was_chosen_and_its_correction_puts_the_rest_back(truck: Truck):
    page = truck.page
    page.goto(truck.address + "weld-entry")
    page.get_by_label("Spool on the truck").select_option(truck.other["id"])
    page.get_by_label("Cylinder on the truck").select_option(truck.cylinder["id"])
    run = {
        "wire_material": "mild-steel",
        "wire_diameter": "0.035 in",
        "gas_flow": "20 L/min",
        "arc_time": "20 min",
        "weld_length": "100 in",
    }
    # The last ones chosen stand there again, so that the next pass needs no tap for them.
    keep(page, truck.address, **run, wire_feed_speed="300 in/min")
    assert page.get_by_label("Spool on the truck").input_value() == truck.other["id"]
    # By hand: 300 in/min for 20 min of 0.889 mm wire at 7.85 g/cm3 is 152.4 m, 94.6 cm3, 0.743 kg; 20 L/min is 400 L.
    truck.opened()
    assert "3.79 kg) left" in truck.row("Behind the seat") and "1100 L" in truck.row("Mix")
    page.locator("li", has_text="Behind the seat").locator("summary").tap()
    page.get_by_role("link", name="bracket left, root").first.tap()
    page.get_by_role("link", name="Correct").tap()
    page.locator("#arc_time").fill("10")
    page.get_by_role("button", name="Keep the correction").tap()
    page.get_by_text("Kept on this phone.").wait_for()
    truck.opened()
    assert "4.16 kg) left" in truck.row("Behind the seat") and "1300 L" in truck.row("Mix")
    assert "Welds on it: 1" in truck.row("Behind the seat")


def test_a_form_offers_nothing_on_a_phone_with_no_truck(phone: BrowserContext, server: Server):
    page = visit(phone, server.address + "weld-entry")
    page.wait_for_timeout(500)
    assert page.get_by_label("Spool on the truck").is_hidden()
    page.goto(server.address + "heat-input")
    assert page.locator("[data-stock-choice]").count() == 0


# ---------------------------------------------------------------- looks, and what other phones send


def test_what_stands_on_it_can_be_tapped_fits_and_breaks_no_rule(new_phone, server: Server, tmp_path: Path):
    truck = Truck(visit(new_phone(bypass_csp=True), server.address), server, tmp_path)
    page = truck.opened()
    for summary in page.locator("summary").all():
        summary.tap()
    for width in test_touch.WIDTHS:
        page.set_viewport_size({"width": width, "height": 640})
        targets = page.evaluate(test_touch.TARGETS)
        assert [each for each in targets if test_touch.too_small(each)] == []
        assert test_touch.too_close(targets) == []
        assert page.evaluate(test_touch.RUNS_OFF) == []
    page.add_script_tag(path=test_axe.AXE)
    for theme in ("dark", "noon"):
        page.evaluate("theme => { document.documentElement.dataset.theme = theme }", theme)
        assert page.evaluate(test_axe.RUN, {"type": "tag", "values": test_axe.RULES}) == []


def test_s6_what_another_phone_wrote_is_text(truck: Truck):
    poison = "<img src=x onerror=alert(1)>{{7*7}}"
    fields = {**SPOOL, **dict.fromkeys(("name", "wire_class", "notes", "shown", "gas_words"), poison)}
    truck.put(kept.record("stock", fields))
    page = truck.opened(5)
    assert poison in page.locator("main").inner_text()
    assert page.locator("main img").count() == 0
