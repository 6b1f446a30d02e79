"""Every drawing of every answer that the walk makes, in both languages, as the page has it."""

import functools
import itertools
import re

import pytest

from calculators import numerals
from calculators.contract import Drawing
from calculators.drawings.paper import WIDTH, Scale
from tests import walking
from tests.html_reading import Element, Page
from webapp import environment, shelf
from webapp.catalogue import Context, piece

LETTER, HEIGHT = 16.5, 13  # px: of a letter, and of the tallest from its line
WIDE = 0.58  # of that height, by and large: what a medium weight of a phone's font takes
LIMITS = {"carbon_share": 2, "gas_bars": 1}  # drawings that always have so many
CHARTS = {"melting_curve", "cooling_curve", "transfer_map", "run_heats", "run_preheats", "run_interpasses"}
BARS = {"duty_bar", "gas_bars", "preheat_window", "carbon_share"}


@functools.cache
def drawn(language):
    """Return (calculator, system of units, drawing, its figure) of all answers of the walk."""
    found = []
    for name in shelf.names():
        for number, (pairs, came) in enumerate(walking.answered(name)):
            assert came.answer is not None
            drawings = [each for each in came.answer.results if isinstance(each, Drawing)]
            if drawings:
                system = "si" if number % 2 else "us"
                body = walking.reply("/" + name, pairs, language, system, partial=True).body
                figures = [Page(each) for each in re.findall(r"<figure class=\"drawing\">.*?</figure>", body, re.S)]
                assert len(figures) == len(drawings), (name, pairs)
                found += [(name, system, *both) for both in zip(drawings, figures, strict=True)]
    return found


def box(text: Element) -> tuple[float, float, float, float]:
    """Return left, top, right and bottom of a text, by its letters."""
    x, y = int(text.attributes["x"] or ""), int(text.attributes["y"] or "")
    wide = len(text.text()) * LETTER * WIDE
    left = x - wide if text.has_class("end") else x - wide / 2 if text.has_class("middle") else x
    return left, y - HEIGHT, left + wide, y + 3


def numbers(element: Element) -> list[int]:
    return [int(each) for each in (element.attributes["points"] or "").split()]


@pytest.mark.parametrize("language", ["en", "es"])
def test_no_text_leaves_the_paper_or_runs_into_another(language):
    for name, _, drawing, figure in drawn(language):
        boxes = [(box(each), each.text()) for each in figure.all("text")]
        for (left, top, right, bottom), text in boxes:
            assert left >= -1 and right <= WIDTH + 1 and top >= -1 and bottom <= drawing.height, (name, text)
        for (one, text), (other, beside) in itertools.combinations(boxes, 2):
            across = min(one[2], other[2]) - max(one[0], other[0])
            up = min(one[3], other[3]) - max(one[1], other[1])
            assert across <= 1 or up <= 1, (name, text, beside)


def test_letters_are_14_px_on_the_narrowest_phone():
    css = (environment.ROOT / "static" / "app.css").read_text("utf-8")
    size = float(one(r"\.drawing text \{[^}]*font: \d+ ([0-9.]+)px", css))
    side = float(one(r"--side: max\(([0-9.]+)px", css))
    assert size == LETTER and size * (320 - 2 * side) / WIDTH >= 14
    assert {drawing.width for _, _, drawing, _ in drawn("en")} == {WIDTH}


def one(pattern: str, text: str) -> str:
    (found,) = re.findall(pattern, text)
    return found


def test_every_line_stays_on_the_paper():
    for name, _, drawing, figure in drawn("en"):
        for each in figure.all("polyline", "polygon"):
            places = numbers(each)
            assert all(0 <= x <= WIDTH for x in places[::2]), (name, places)
            assert all(0 <= y <= drawing.height for y in places[1::2]), (name, places)
        for each in figure.all("circle"):
            x, y, r = [int(each.attributes[key] or "") for key in ("cx", "cy", "r")]
            assert r <= x <= WIDTH - r and r <= y <= drawing.height - r, (name, drawing.name, x, y)


@pytest.mark.parametrize("language", ["en", "es"])
def test_every_drawing_has_a_title_and_a_description_with_the_answers_numbers(language):
    for name, system, drawing, figure in drawn(language):
        (description,), (title,) = figure.all("desc"), figure.all("figcaption")
        assert title.text() and description.text().endswith("."), name
        assert re.search(r"\d", description.text()), (name, description.text())
        # The reader's own numbers on the scales are told to the ear as well.
        for scale in scales(drawing):
            if scale.own is not None and (drawing.name, scale.side) != ("transfer_map", "above"):
                _, (*_, own), *_ = scale.shapes(system, lambda each: piece(each, Context(language, system, "")))  # noqa: B023
                assert own in re.split(r"[^0-9.]+(?:\.|$)?", description.text()), (name, own, description.text())


def scales(drawing) -> list[Scale]:
    return [shape[3] for shape in drawing.shapes if shape[0] == "scale"]


def test_a_chart_has_two_scales_and_a_bar_has_one_each_named_with_its_unit():
    seen = set()
    for name, _, drawing, figure in drawn("en"):
        seen.add(drawing.name)
        named = [each.text() for each in figure.all("text") if re.match(r".+, [^ ]+$|Pass$", each.text())]
        assert len(named) == len(scales(drawing)), (name, named)
        least = 2 if drawing.name in CHARTS else 1 if drawing.name in BARS else 0
        assert len(named) >= least, (name, drawing.name)
    assert seen >= CHARTS | BARS


def test_limits_and_own_points_are_drawn_alike():
    for name, _, drawing, figure in drawn("en"):
        limits = [each for each in figure.all("polyline") if each.has_class("limit")]
        assert len(limits) >= LIMITS.get(drawing.name, 0), (name, drawing.name)
        for each in limits:  # told from any curve without colour: its word stands at it
            x, y, *_, right, bottom = numbers(each)
            near = [box(text) for text in figure.all("text")]
            assert any(
                left - 8 <= max(x, right) and min(x, right) <= end + 8 and top - 12 <= max(y, bottom) and y <= low + 12
                for left, top, end, low in near
            ), (name, x, y)
        radii = {each.attributes["r"] for each in figure.all("circle")}
        assert radii <= {"7"}, (name, radii)


# ---------------------------------------------------------------- the numbers along a scale


@pytest.mark.parametrize(
    ("low", "high", "system", "expected"),
    [
        (0.0, 0.1, "si", ["0", "20", "40", "60", "80", "100"]),
        (0.0, 0.254, "us", ["0", "2", "4", "6", "8", "10"]),
        (0.0011, 0.0042, "si", ["2", "3", "4"]),
        (0.0, 1.0e-3, "si", ["0", "0.2", "0.4", "0.6", "0.8", "1"]),
    ],
)
def test_numbers_along_a_scale_are_round_in_the_readers_unit(low, high, system, expected):
    scale = Scale("Width", "thickness", ((low, 10), (high, 10 + 62 * 5)), 50)
    found = [each[3] for each in scale.shapes(system, str) if each[0] == "text"][:-1]
    assert found == expected


def test_the_readers_own_number_takes_the_place_of_a_round_one():
    scale = Scale("Width", "thickness", ((0.0, 10), (0.1, 320)), 50, 0.041)
    found = {
        each[3]: each[1][0]
        for each in scale.shapes("si", lambda each: "41\u00a0mm" if each != "Width" else "Width")
        if each[0] == "text"
    }
    assert "40" not in found and found["41"] == 137 and found["Width, mm"] == 320


def test_counts_are_never_halved():
    scale = Scale("Pass", "count", ((1.0, 60), (2.0, 328)), 216)
    found = [each[3] for each in scale.shapes("si", str) if each[0] == "text"]
    assert found == ["1", "2", "Pass"]


@pytest.mark.parametrize("value", [0.0, 3.0, 5.0, 9.0])
def test_a_bent_scale_places_by_its_stops(value):
    scale = Scale("Feed", "wire_feed_speed", ((1.0, 10), (5.0, 110), (6.0, 210)), 50)
    expected = {0.0: 10, 3.0: 60, 5.0: 110, 9.0: 210}[value]
    assert scale.place(value) == expected and numerals.settle(value) == value
