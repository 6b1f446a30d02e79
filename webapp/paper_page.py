"""The frame of a job's paper: sheet, quote, invoice; what stands on it is the page script's, from the kept record."""

from calculators.contract import Choice, Field, Rows
from webapp import shelf
from webapp.catalogue import Context
from webapp.jobs_page import LISTS
from webapp.log_page import store_said
from webapp.markup import tag
from webapp.truck_page import factors
from webapp.wording import Wording

KINDS = ("sheet", "quote", "invoice")
# Sentences that the script puts on the paper.
WORDS = (
    KINDS
    + ("demo", "date", "call", "joints", "welds", "welds.none", "used.wire", "used.gas", "not-done", "not-done.none")
    + ("procedure", "expired", "no-date", "sign.sheet", "sign.quote", "signature", "signed", "changed", "line.customer")
    + ("line.name", "line.day", "line.welder", "no-price", "quote.note", "record", "build", "not-sent", "sent", "page")
    + ("ticks.not", "ticks.none", "watch", "photos")
)
# What is said elsewhere in the same words.
_SHARED = ("ticks.ticked", "ticks.note", "photos.photo", "photos.elsewhere")


def paper(context: Context) -> str:
    """Return what stands inside <main> of a job's paper."""
    words = Wording(context)
    out = tag("h1", words("paper.title")) + tag("p", words("log.no-script"), "data-no-log")
    out += store_said(words)
    kinds = ""
    for kind in KINDS:
        kinds += tag("button", words("paper." + kind), 'type="button" data-kind="' + kind + '" aria-pressed="false"')
    doing = tag("button", words("paper.print"), 'type="button" data-print')
    doing += tag("button", words("paper.share"), 'type="button" data-share')
    back = tag("a", words("paper.back"), 'class="action" data-back href="jobs"')
    letterhead = tag("label", words("paper.letterhead"), 'for="letterhead"')
    letterhead += '<input id="letterhead" maxlength="120" autocomplete="organization">'
    said = 'role="status" data-said' + words.given(("gone",), "paper.") + words.given(("versions",), "log.")
    inner = tag("p", "", said) + tag("p", kinds, 'class="row-of-buttons" data-of-job')
    inner += tag("p", doing + back, 'class="row-of-buttons"') + tag("div", letterhead, 'class="field" data-of-job')
    inner += tag("article", "", 'class="paper" data-sheet') + _signing(words)
    inner += tag("ul", _labels(words), "data-labels hidden")
    return out + tag("div", inner, "data-paper hidden" + factors())


def _signing(words: Wording) -> str:
    """Return where a customer signs: a field for a finger, a name for a keyboard, either is enough."""
    name = tag("label", words("paper.signed-by"), 'for="signed-by"')
    name += '<input id="signed-by" maxlength="100" autocomplete="off">'
    pad = '<svg data-pad class="pad" viewBox="0 0 600 200" role="img" aria-label="' + words("paper.pad") + '"></svg>'
    buttons = tag("button", words("paper.sign"), 'type="button" data-sign')
    buttons += tag("button", words("paper.clear"), 'type="button" class="quiet" data-clear-signature')
    said = 'role="status" data-signed-said' + words.given(("nothing", "kept", "refused"), "paper.sign.")
    inner = tag("h2", words("paper.signing")) + tag("p", words("paper.signing.how")) + pad
    inner += tag("div", name, 'class="field"') + tag("p", buttons, 'class="row-of-buttons"') + tag("p", "", said)
    return tag("section", inner, 'class="signing" data-signing hidden')


def _labels(words: Wording) -> str:
    out = ""
    for name in WORDS:
        out += tag("li", words("paper." + name), 'data-label="paper.' + name + '"')
    for name in _SHARED:
        out += tag("li", words(name), 'data-label="paper.' + name + '"')
    for name in ("job", "weld-entry"):
        calculator = shelf.calculator(name)
        if calculator is not None:
            for field in calculator.fields:
                if field.name not in calculator.machine:
                    out += _label(words, name, field)
    for name in LISTS:
        out += tag("li", words(name + ".title"), 'data-label="ticks.' + name + '"')
    out += tag("li", words("watch.title"), 'data-label="watch"')
    for id in ("entry.field.welded_at", "entry.field.shown", "entry.field.shown_verdict"):
        out += tag("li", words(id), 'data-label="weld-entry.' + id.rpartition(".")[2] + '"')
    return out


def _label(words: Wording, calculator: str, field: Field) -> str:
    """Return what a field and its options are called."""
    if isinstance(field, Rows):
        return "".join([_label(words, calculator, each) for each in field.fields])
    own = calculator + "." + field.name
    out = tag("li", words(calculator + ".field." + field.name), 'data-label="' + own + '"')
    if isinstance(field, Choice):
        for word in field.options:
            out += tag(
                "li", words(calculator + ".option." + field.name + "." + word), 'data-label="' + own + "." + word + '"'
            )
    return out
