"""What stands on the truck, and the choice of a spool and a cylinder on a form: frames; the script fills them in."""

from calculators import numerals, units
from webapp.catalogue import Context
from webapp.log_page import store_said
from webapp.markup import tag
from webapp.wording import Wording

ITEMS = ("spool", "cylinder", "machine", "lead", "generator")
STATES = ("phone", "server", "needs-you")
_DRAWS = ("weld-entry", "job")  # the forms on which something of the truck is chosen


def truck(context: Context) -> str:
    """Return what stands inside <main> of the truck's page."""
    words = Wording(context)
    out = tag("h1", words("truck.title")) + tag("p", words("truck.lead"))
    out += tag("p", words("log.no-script"), "data-no-log") + store_said(words)
    new = tag("a", words("truck.new"), 'class="action" href="stock"')
    jobs = tag("a", words("truck.jobs"), 'class="action" href="jobs"')
    out += tag("p", new + jobs, 'class="row-of-buttons"')
    inner = tag("p", words("truck.empty"), "data-empty hidden")
    for item in ITEMS:
        more = tag("button", words("log.more"), 'type="button" class="quiet" data-more hidden')
        rows = tag("ol", "", 'class="log" data-rows') + tag("p", more, 'class="row-of-buttons"')
        inner += tag("section", tag("h2", words("truck.item." + item)) + rows, 'data-item="' + item + '" hidden')
    off = tag("button", words("truck.taken-off"), 'type="button" class="quiet" data-deleted aria-pressed="false"')
    inner += _pattern(words) + tag("p", off, 'class="row-of-buttons"') + demo(words)
    return out + tag("div", inner, "data-truck hidden" + factors())


def factors() -> str:
    """Return pounds in a kilogram and cubic feet in a litre as attributes."""
    kilogram = numerals.significant(units.from_coherent(1.0, "lb"), 8, group=False)
    litre = numerals.significant(units.from_coherent(units.to_coherent(1.0, "L"), "ft3"), 8, group=False)
    return ' data-kg="' + kilogram + '" data-l="' + litre + '"'


def _pattern(words: Wording) -> str:
    """Return the pattern of one thing on the truck."""
    left = tag("p", "", 'class="number words"' + words.given(("left", "uncounted", "short"), "truck."))
    left += tag("p", "", 'class="details" data-count' + words.given(("counted",), "truck."))
    left += '<meter min="0" hidden></meter>'
    state = tag(
        "p",
        "",
        'class="state"'
        + words.given(STATES, "log.state.")
        + words.given(("versions", "newer"), "log.")
        + words.given(("deleted",), "entry.")
        + words.given(("mark",), "demo."),
    )
    again = tag("a", words("truck.again"), 'class="action" data-again')
    back = tag("button", words("entry.undo"), 'type="button" data-undo-delete hidden')
    used = tag("p", "", "data-unknown hidden" + words.given(("unknown",), "truck.")) + tag("ul", "", "data-used")
    correct = tag("a", words("entry.correct"), 'class="action" data-correct')
    versions = tag("a", words("truck.versions"), 'class="action" data-open')
    remove = tag("button", words("truck.remove"), 'type="button" class="quiet" data-delete')
    lasts = tag("a", words("truck.lasts"), 'class="action" data-lasts')
    used += tag("p", lasts + correct + versions + remove, 'class="row-of-buttons"')
    folded = tag("details", tag("summary", words("truck.used"), words.given(("used-by",), "truck.")[1:]) + used)
    inner = tag("p", "", 'class="what"') + left + tag("p", "", 'class="details" data-details') + state
    return tag("template", tag("li", inner + tag("p", again + back, 'class="row-of-buttons"') + folded), "data-pattern")


def demo(words: Wording) -> str:
    """Return what loads the demo and takes it away."""
    load = tag("button", words("demo.load"), 'type="button" class="quiet" data-demo-load')
    remove = tag("button", words("demo.remove"), 'type="button" data-demo-remove hidden')
    said = 'role="status" data-demo-said' + words.given(("loading", "failed", "here"), "demo.")
    inner = tag("p", words("demo.lead")) + tag("p", "", said) + tag("p", load + remove, 'class="row-of-buttons"')
    return tag("section", inner, 'class="demo" data-demo')


def choice(calculator: str, context: Context) -> str:
    """Return where the spool and the cylinder that are welded with are chosen; nothing for most questions."""
    if calculator not in _DRAWS:
        return ""
    words = Wording(context)
    out = tag("p", words("demo.form"), "data-demo-form hidden")
    for item in ("spool", "cylinder"):
        none = tag("option", words("truck.choice.none"), 'value=""')
        select = tag("select", none, 'id="stock-' + item + '" data-stock="' + item + '"')
        label = tag("label", words("truck.choice." + item), 'for="stock-' + item + '"')
        out += tag("div", label + tag("div", select, 'class="entry"'), 'class="field" hidden')
    return tag("div", out, "data-stock-choice" + factors())
