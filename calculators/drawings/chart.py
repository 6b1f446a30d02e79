"""A chart: one quantity across, one up, a curve in its band, limits, and where the reader stands."""

from calculators.contract import Drawing, Message
from calculators.drawings.paper import LEFT, POINT, RIGHT, TEXT_HEIGHT, WIDTH, Scale, flat, limit

TYPE_CHECKING = False
if TYPE_CHECKING:
    Shape = tuple[str, tuple[int, ...], str, object]

TOP, BOTTOM = 36, 216


class Chart:
    """Collects the shapes of a chart whose scales stand on the left and below."""

    def __init__(self, across: Scale, up: Scale) -> None:
        self.across = across
        self.up = up
        self.shapes: list[Shape] = [up.shape(), across.shape()]

    def at(self, across: float, up: float) -> tuple[int, int]:
        """Return where a pair of values stands."""
        return self.across.place(across), self.up.place(up)

    def area(self, rows: "list[tuple[float, float, float]]") -> None:
        """Shade what lies between the lower and the upper value of each (value across, lower, upper)."""
        lower = [self.at(row[0], row[1]) for row in rows]
        upper = [self.at(row[0], row[2]) for row in rows]
        self.shapes.append(("area", flat(lower + list(reversed(upper))), "band-area", None))

    def curve(self, points: "list[tuple[float, float]]", style: str = "curve") -> None:
        """Draw a line through points."""
        self.shapes.append(("line", flat([self.at(x, y) for x, y in points]), style, None))

    def banded(self, rows: "tuple[tuple[float, float, float, float], ...]") -> None:
        """Draw a curve in its band: (value across, lowest, middle, highest)."""
        self.area([(row[0], row[1], row[3]) for row in rows])
        self.curve([(row[0], row[2]) for row in rows])

    def lead(self, across: float, up: float, top: int | None = None) -> None:
        """Draw the lines from a point to its numbers on the scales."""
        x, y = self.at(across, up)
        self.shapes.append(("line", (LEFT, y, x, y, x, self.across.cross), "mark-line", None))
        if top is not None:
            self.shapes.append(("line", (x, top, x, y), "mark-line", None))

    def point(self, across: float, up: float) -> None:
        """Mark a point of the reader's."""
        self.shapes.append(("circle", self.at(across, up) + (POINT,), "mark", None))

    def limit(self, up: float, name: Message, above: bool) -> None:
        """Draw a limit with its word above or below it."""
        y = self.up.place(up)
        self.shapes += limit((LEFT, y, RIGHT, y))
        self.text(RIGHT, y - 7 if above else y + TEXT_HEIGHT - 4, "end", name)

    def text(self, x: int, y: int, style: str, label: object) -> None:
        """Write a text."""
        self.shapes.append(("text", (x, y), style, label))

    def drawing(self, name: str, title: Message, description: Message) -> Drawing:
        """Return what was drawn."""
        height = self.across.cross + 2 * TEXT_HEIGHT + 6
        return Drawing(name, WIDTH, height, title, description, tuple(self.shapes))


def across(
    name: Message, quantity: str, ends: tuple[float, float], own: float | None = None, unit: str | None = None
) -> Scale:
    """Return a scale along the bottom of a chart."""
    return Scale(name, quantity, ((ends[0], LEFT), (ends[1], RIGHT)), BOTTOM, own, unit)


def up(
    name: Message, quantity: str, ends: tuple[float, float], own: float | None = None, unit: str | None = None
) -> Scale:
    """Return a scale up the left of a chart."""
    return Scale(name, quantity, ((ends[0], BOTTOM), (ends[1], TOP)), LEFT, own, unit, "left")
