"""A job on paper: what stands on the sheet, the quote and the invoice, read from the PDF that the browser prints."""

import io
import json
from collections.abc import Iterator
from pathlib import Path

import pytest
from playwright.sync_api import BrowserContext, Locator, Page, expect
from pypdf import PdfReader

from tests.browser import kept, test_axe, test_touch
from tests.browser.driving import Server, box_of, visit

POINTS_A_MM = 72 / 25.4
FORMATS = {"A4": (210.0, 297.0), "Letter": (215.9, 279.4)}
JOB = {
    "title": "Trailer, cracked coupler",
    "customer": "Ida Marlow",
    "place": "Pell Farm",
    "broken": "Crack along the toe",
    "joints-1-name": "Coupler left",
    "joints-1-joint": "fillet",
    "joints-1-thickness": "1/4 in",
    "joints-1-weld_length": "8 in",
    "wps": "own 12",
    "welder": "R. Tamm",
    "qualified_until": "2099-03-31",
    "not_done": "The chains were not looked at.",
    "status": "open",
    "card_load": json.dumps(["Before leaving", ["wire", "Wire", "0.4 lb of 8.5 lb"]]),
    "card_preheat": json.dumps(["Preheat", ["least", "At least", "50 \u00b0F"]]),
    "card_price": json.dumps(
        [
            "Price",
            ["call_out", "Call-out", "60.00"],
            ["total", "Total with tax", "294.30"],
            ["paid", "Paid", "94.30"],
            ["due", "Still to pay", "200.00"],
            ["exclusions", "Not included", "Paint."],
        ]
    ),
    "price.shown": "294.30",
}


class Paper:
    """A phone with a job, and welds on it."""

    def __init__(self, page: Page, server: Server, folder: Path, welds: int = 2, **changed: str) -> None:
        self.page, self.address, self.folder = page, server.address, folder
        self.job = kept.record("job", {**JOB, **changed})
        self.welds = [kept.record("weld-entry", self.weld(number)) for number in range(welds)]
        kept.put(page, server.address, folder, self.job, *self.welds)
        self.open()

    def weld(self, number: int) -> dict[str, str]:
        """Return what a weld of the job says."""
        used = {"used_wire": "0.25 kg", "used_gas": "100 L", "shown": "14.2 kJ/in"}
        time = {"welded_at": f"2026-05-02T{10 + number // 60:02}:{number % 60:02}:00.000Z"}
        return {"joint": "Coupler left", "weld_pass": f"pass {number}", "job_id": self.job["id"], **used, **time}

    def open(self) -> None:
        """Open the job's paper."""
        self.page.goto(self.address + "paper#" + self.job["id"])
        self.page.locator(".paper header").wait_for()

    def of(self, kind: str) -> None:
        """Choose the sheet, the quote or the invoice."""
        self.page.locator(f"[data-kind={kind.split()[-1].lower()}]").tap()

    def printed(self, size: str = "A4") -> list[str]:
        """Return the text of each page that is printed."""
        return [each.extract_text() for each in self.pdf(size).pages]

    def pdf(self, size: str = "A4") -> PdfReader:
        """Return what is printed."""
        return PdfReader(io.BytesIO(self.page.pdf(format=size, prefer_css_page_size=True)))


@pytest.fixture
def page(phone: BrowserContext, server: Server) -> Iterator[Page]:
    yield visit(phone, server.address)


@pytest.mark.parametrize("size", FORMATS)
def test_the_sheet_has_all_that_was_asked_done_and_not_done(page: Page, server: Server, tmp_path: Path, size: str):
    paper = Paper(page, server, tmp_path)
    pdf = paper.pdf(size)
    wide, high = FORMATS[size]
    assert [round(float(each) / POINTS_A_MM) for each in pdf.pages[0].mediabox[2:]] == [round(wide), round(high)]
    text = " ".join(" ".join(each.extract_text() for each in pdf.pages).split())
    for words in (
        "Job sheet: Trailer, cracked coupler",
        "Ida Marlow",
        "Pell Farm",
        "Coupler left",
        "1/4 in",
        "Before leaving",
        "0.4 lb of 8.5 lb",
        "50 \u00b0F",
        "What was welded",
        "pass 0",
        "pass 1",
        "14.2 kJ/in",
        "Wire used, as logged: 1.1 lb (0.5 kg)",
        "Gas used, as logged: 7.06 ft\u00b3 (200 L)",
        "The chains were not looked at.",
        "own 12",
        "R. Tamm",
        "Received by the customer",
        "Welder:",
        "Page 1 of",
        "Record " + paper.job["id"][:8],
        paper.job["rev"][:10],
        "Build 0123456789",
        "not yet on the server",
    ):
        assert words in text, words
    for words in (
        "294.30",
        "ran out",
        "Build ea",
        "Puddlebook",
        "Light and dark",
        "Share as a file",
        "Sign on the screen",
    ):
        assert words not in text, words


def test_the_quote_and_the_invoice_have_the_same_lines(page: Page, server: Server, tmp_path: Path):
    paper = Paper(page, server, tmp_path)
    for kind in ("Quote", "Invoice"):
        paper.of(kind)
        [text] = paper.printed()
        assert f"{kind}: Trailer, cracked coupler" in text and "Crack along the toe" in text
        assert "Call-out" in text and "60.00" in text and "294.30" in text
        assert "Not included" in text and "Paint." in text
        assert ("Ordered by the customer" in text) == (kind == "Quote")
        assert ("Still to pay" in text and "200.00" in text) == (kind == "Invoice")
        assert "pass 0" not in text


def test_forty_welds_print_on_pages_that_are_counted_with_the_table_s_head_on_each(page, server, tmp_path):
    pages = Paper(page, server, tmp_path, welds=60).printed()
    assert 3 <= len(pages) <= 5
    for number, text in enumerate(pages, 1):
        assert f"Page {number} of {len(pages)}" in text
        assert "Record " in text and "not yet on the server" in text
    tables = [text for text in pages if "pass " in text]
    assert len(tables) >= 2 and all("Joint" in text and "Pass" in text for text in tables)
    assert sum(text.count("pass ") for text in pages) == 60


@pytest.mark.parametrize("theme", ["dark", "noon"])
def test_it_is_black_on_white_and_large_enough(phone: BrowserContext, server: Server, tmp_path: Path, theme: str):
    phone.add_init_script(f"if (location.host) localStorage.setItem('theme', '{theme}')")
    paper = Paper(visit(phone, server.address), server, tmp_path)
    paper.page.emulate_media(media="print")
    sheet = paper.page.locator(".paper")
    look = (
        "each => { const style = getComputedStyle(each); return [style.color, style.backgroundColor, style.fontSize]; }"
    )
    assert sheet.evaluate(look) == ["rgb(0, 0, 0)", "rgb(255, 255, 255)", f"{11 / 72 * 96:.4f}px"]
    for each in (".paper td", ".paper th", ".paper .foot", ".paper caption"):
        assert sheet.page.locator(each).first.evaluate(look)[0] == "rgb(0, 0, 0)", each
    assert paper.page.locator("[data-signing]").is_hidden() and paper.page.locator(".top").is_hidden()


# ---------------------------------------------------------------- the qualification


@pytest.mark.parametrize(
    ("until", "closed", "words"),
    [
        ("2025-03-31", "", "ran out on March 31, 2025"),
        ("2026-06-30", "2026-06-30T12:00:00.000Z", ""),
        ("2026-06-29", "2026-06-30T12:00:00.000Z", "ran out on June 29, 2026"),
        ("06/07/26", "", "not written as a date"),
        ("", "", ""),
    ],
)
def test_a_qualification_that_has_run_out_is_said_on_the_paper(page, server, tmp_path, until, closed, words):
    paper = Paper(page, server, tmp_path, qualified_until=until, closed_at=closed)
    text = " ".join(" ".join(paper.printed()).split())
    warned = ("ran out" in text, "not written as a date" in text)
    assert warned == ("ran out" in words, "not written" in words)
    assert words in text


# ---------------------------------------------------------------- signing


def draw(page: Page, pad: Locator) -> None:
    """Draw a zigzag on the field."""
    pad.scroll_into_view_if_needed()
    box = box_of(pad)
    page.mouse.move(box["x"] + 20, box["y"] + 20)
    page.mouse.down()
    for step in range(1, 12):
        page.mouse.move(box["x"] + 20 + step * 15, box["y"] + (20 if step % 2 else 60))
    page.mouse.up()


def test_a_signature_drawn_on_the_screen_stands_on_the_sheet_and_is_a_revision_of_its_own(page, server, tmp_path):
    paper = Paper(page, server, tmp_path)
    assert "Customer:" in " ".join(paper.printed())
    draw(page, page.locator("[data-pad]"))
    page.get_by_label("Name", exact=True).fill("Ida Marlow")
    page.get_by_role("button", name="Keep the signature").tap()
    page.get_by_text("Signed: Ida Marlow").wait_for()
    points = page.locator(".paper .signature polyline").get_attribute("points") or ""
    assert len(points.split()) == 12  # every corner of the zigzag, and no point more
    revisions = [value for _, value in kept.lying_on(page)["revisions"] if value["id"] == paper.job["id"]]
    [second] = [each for each in revisions if each["parents"] == [paper.job["rev"]]]
    fields = json.loads(second["body"])["fields"]
    assert {name: fields[name] for name in JOB} == JOB and fields["signed_by"] == "Ida Marlow"
    text = " ".join(paper.printed())
    assert "Signed: Ida Marlow" in text and "Customer:" not in text and second["rev"][:10] in text
    paper.of("Quote")
    assert "Customer:" in " ".join(paper.printed())  # the quote was not signed


def test_a_typed_name_signs_from_a_keyboard_and_nothing_signs_nothing(page: Page, server: Server, tmp_path: Path):
    paper = Paper(page, server, tmp_path)
    paper.of("Quote")
    sign = page.get_by_role("button", name="Keep the signature")
    sign.focus()
    page.keyboard.press("Enter")
    page.get_by_text("Draw or type a name first.").wait_for()
    page.get_by_label("Name", exact=True).focus()
    page.keyboard.type("Ida Marlow")
    sign.focus()
    page.keyboard.press("Enter")
    page.get_by_text("Signed: Ida Marlow").wait_for()
    assert page.locator(".paper .signature").count() == 0


def test_what_is_changed_after_signing_is_named_on_the_paper(page: Page, server: Server, tmp_path: Path):
    paper = Paper(page, server, tmp_path)
    signed = kept.record("job", {**JOB, "signed_at": "2026-05-03T10:00:00.000Z", "signed_by": "Ida"}, follows=paper.job)
    said = {
        **json.loads(signed["body"])["fields"],
        "card_preheat": json.dumps(["Preheat", ["least", "At least", "100"]]),
    }
    changed = kept.record("job", said, "2026-05-04T08:00:00.000Z", follows=signed)
    kept.put(page, server.address, tmp_path, signed)
    paper.open()
    assert "Changed after" not in page.locator(".paper").inner_text()
    kept.put(page, server.address, tmp_path, changed)
    paper.open()
    assert "Changed after it was signed: Preheat" in page.locator(".paper").inner_text()


def test_two_versions_side_by_side_are_said_and_cannot_be_signed(page: Page, server: Server, tmp_path: Path):
    paper = Paper(page, server, tmp_path)
    beside = [kept.record("job", {**JOB, "title": each}, follows=paper.job) for each in ("one", "other")]
    kept.put(page, server.address, tmp_path, *beside)
    paper.open()
    page.get_by_text("Two versions stand side by side").wait_for()
    assert page.locator("[data-signing]").is_hidden()


# ---------------------------------------------------------------- as a file, looks, and what other phones send


def test_it_is_shared_as_a_page_of_its_own(new_phone, server: Server, tmp_path: Path):
    paper = Paper(visit(new_phone(), server.address), server, tmp_path)
    with paper.page.expect_download() as download:
        paper.page.get_by_role("button", name="Share as a file").tap()
    assert download.value.suggested_filename == "Job-sheet-Trailer-cracked-coupler.html"
    download.value.save_as(tmp_path / "shared.html")
    text = (tmp_path / "shared.html").read_text("utf-8")
    assert "<script" not in text and "http" not in text.replace("http://www.w3.org/2000/svg", "")
    other = new_phone(java_script_enabled=False, offline=True).new_page()
    other.goto((tmp_path / "shared.html").as_uri())
    assert other.locator(".paper").inner_text() == paper.page.locator(".paper").inner_text()
    pages = PdfReader(io.BytesIO(other.pdf(prefer_css_page_size=True))).pages
    assert f"Page 1 of {len(pages)}" in pages[0].extract_text()


def test_it_is_handed_to_the_phone_s_own_sharing_where_there_is_one(phone: BrowserContext, server, tmp_path):
    phone.add_init_script(
        """navigator.canShare = () => true;
        navigator.share = async said => { window.shared = [said.files[0].name, await said.files[0].text()]; };"""
    )
    paper = Paper(visit(phone, server.address), server, tmp_path)
    paper.of("Invoice")
    paper.page.get_by_role("button", name="Share as a file").tap()
    paper.page.wait_for_function("window.shared")
    name, text = paper.page.evaluate("window.shared")
    assert name == "Invoice-Trailer-cracked-coupler.html" and "294.30" in text


def test_it_can_be_tapped_fits_and_breaks_no_rule(new_phone, server: Server, tmp_path: Path):
    paper = Paper(visit(new_phone(bypass_csp=True), server.address), server, tmp_path, qualified_until="2025-01-01")
    page = paper.page
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


def test_s6_what_another_phone_wrote_is_text_on_every_paper(page: Page, server: Server, tmp_path: Path):
    poison = '<img src=x onerror=alert(1)>"; } </style>{{7*7}}'
    cards = {name: json.dumps([poison, [poison, poison, poison]]) for name in ("card_x", "card_price")}
    odd = {"card_bad": "no list", "card_worse": json.dumps({"a": 1}), "signature": "0,0;<b>", "signed_at": poison}
    paper = Paper(page, server, tmp_path, 2, **{**dict.fromkeys(JOB, poison), **cards, **odd})
    for kind in ("Job sheet", "Quote", "Invoice"):
        paper.of(kind)
        assert poison in page.locator(".paper").inner_text()
        assert page.locator("main img, .paper b").count() == 0
        assert poison[:20] in " ".join(paper.printed())
    with page.expect_download() as download:
        page.get_by_role("button", name="Share as a file").tap()
    download.value.save_as(tmp_path / "shared.html")
    page.goto((tmp_path / "shared.html").as_uri())
    assert page.locator("img").count() == 0


def test_no_job_no_paper(page: Page, server: Server):
    page.goto(server.address + "paper#00000000-0000-4000-8000-000000000000")
    page.get_by_text("This job is not on this phone.").wait_for()
    expect(page.locator("[data-kind=sheet]")).to_be_hidden()
