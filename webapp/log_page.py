"""The log and the crew: rows live on the phone alone. Python makes the frame, the page's script the rows."""

from calculators.contract import Choice, Field, Rows
from webapp import shelf
from webapp.catalogue import Context
from webapp.markup import tag
from webapp.wording import Wording

NARROWED_BY = ("job", "joint", "wire_class", "gas_used", "thickness")
REASONS = ("no-signal", "portal", "pair", "wait", "server", "older", "busy", "store")
STATES = ("phone", "sending", "server", "needs-you")


def log(context: Context) -> str:
    """Return what stands inside <main> of the log."""
    words = Wording(context)
    new = tag("a", words("log.new"), 'class="action" href="weld-entry"')
    out = tag("h1", words("log.title")) + tag("p", words("log.lead"))
    out += tag("p", words("log.no-script"), "data-no-log")
    out += tag("p", new, 'class="row-of-buttons"')
    out += tag("div", _sending(words) + _narrowing(words) + _rows(words) + _keeping(words), "data-log hidden")
    return out


def _sending(words: Wording) -> str:
    state = 'role="status" data-exchange' + words.given(("none", "waiting", "alone", "sending"), "log.exchange.")
    state += words.given(REASONS, "log.reason.")
    button = tag("button", words("log.send"), 'type="button" data-send')
    crew = tag("a", words("crew.title"), 'class="action" href="crew"')
    return tag("p", "", state) + tag("p", button + crew, 'class="row-of-buttons"')


def _narrowing(words: Wording) -> str:
    options = tag("option", words("log.all"), 'value=""')
    for name in NARROWED_BY:
        options += tag("option", words("log.by." + name), 'value="' + name + '"')
    by = tag("label", words("log.narrow"), 'for="narrow-by"') + tag("select", options, 'id="narrow-by" data-by')
    value = tag("label", words("log.narrow-value"), 'for="narrow-value"')
    value += tag("select", "", 'id="narrow-value" data-value')
    value += tag("p", words("log.near"), 'class="hint" data-near hidden')
    out = tag("div", by, 'class="field"') + tag("div", value, 'class="field" data-narrow-value hidden')
    days = ""
    for name in ("from", "to"):
        box = '<input id="narrow-' + name + '" type="date" data-' + name + ">"
        days += tag("div", tag("label", words("log." + name), 'for="narrow-' + name + '"') + box, 'class="field"')
    out += tag("div", days, 'class="days"')
    chart = tag("a", words("log.passes"), 'class="action" data-passes hidden')
    return out + tag("p", chart, 'class="row-of-buttons"')


def _rows(words: Wording) -> str:
    """Return the list and the pattern of one entry, which the script fills in with text."""
    kinds = words.given(("arc-energy", "heat-input"), "log.")
    looked = words.given(("accepted", "rejected", "repaired"), "weld-entry.option.visual_result.")
    line = tag("p", "", 'class="what"') + tag("p", "", 'class="number words"' + kinds)
    line += tag("p", "", 'class="details"' + looked)
    line += tag(
        "p",
        "",
        'class="state"'
        + words.given(STATES, "log.state.")
        + words.given(("versions", "newer"), "log.")
        + words.given(("mark",), "demo."),
    )
    actions = tag("a", words("log.repeat"), 'class="action" data-repeat')
    actions += tag("a", words("log.open"), 'class="action" data-open')
    pattern = tag("template", tag("li", line + tag("p", actions, 'class="row-of-buttons"')), "data-pattern")
    empty = tag("p", words("log.empty"), "data-empty hidden")
    more = tag("button", words("log.more"), 'type="button" class="quiet" data-more hidden')
    return pattern + empty + tag("ol", "", 'class="log" data-rows') + tag("p", more, 'class="row-of-buttons"')


def _keeping(words: Wording) -> str:
    """Return what takes everything out and in, and says how safe it lies on the phone."""
    out = tag("h2", words("log.keeping")) + tag(
        "p", "", "data-persist" + words.given(("yes", "no", "unknown"), "log.persist.")
    )
    export = tag("button", words("log.export"), 'type="button" data-export')
    table = tag("button", words("log.csv"), 'type="button" class="quiet" data-csv')
    out += tag("p", export + table, 'class="row-of-buttons"')
    out += (
        tag("label", words("log.import"), 'for="import"') + '<input id="import" type="file" accept=".json" data-import>'
    )
    said = 'role="status" data-import-said' + words.given(("done", "spoilt"), "log.import.")
    return tag("section", out + tag("p", "", said))


def entry(context: Context) -> str:
    """Return what stands inside <main> of one entry with its versions."""
    words = Wording(context)
    pattern = version_pattern(words)
    given = words.given(("leading", "beside", "older", "deleted", "gone"), "entry.") + words.given(("newer",), "log.")
    given += words.given(("mark",), "demo.") + words.given(("photo", "elsewhere"), "photos.")
    labels = ""
    for label, id in recorded("weld-entry"):
        labels += tag("li", words(id), 'data-label="' + label + '"')
    actions = tag("a", words("entry.correct"), 'class="action" data-correct')
    actions += tag("a", words("log.repeat"), 'class="action" data-repeat')
    actions += tag("button", words("entry.delete"), 'type="button" class="quiet" data-delete')
    actions += tag("button", words("entry.undo"), 'type="button" class="quiet" data-undo-delete hidden')
    out = tag("h1", words("entry.title")) + tag("p", words("log.no-script"), "data-no-log") + store_said(words)
    out += tag("p", tag("a", words("entry.back"), 'href="log"'))
    inner = pattern + tag("p", "", 'role="status" data-said') + tag("p", actions, 'class="row-of-buttons"')
    inner += tag("div", "", "data-photos") + tag("div", "", "data-versions")
    inner += tag("ul", labels, "data-labels hidden")
    return out + tag("div", inner, "data-entry hidden" + given)


def store_said(words: Wording) -> str:
    """Return where a page says that the phone's own store does not open."""
    return tag("p", "", 'role="status" data-store-said="' + words("log.reason.store") + '"')


def version_pattern(words: Wording) -> str:
    """Return the pattern of one version of a record."""
    version = tag("h2", "") + tag("p", "", 'class="state"') + tag("dl", "")
    version += tag("p", tag("button", words("entry.take"), 'type="button" data-take'), 'class="row-of-buttons"')
    return tag("template", tag("article", version), "data-pattern")


def recorded(name: str) -> list[tuple[str, str]]:
    """Return (field, or field and choice; the id of what it is called) of all that a record may hold."""
    calculator = shelf.calculator(name)
    found: list[tuple[str, str]] = []
    if calculator is not None:
        for field in calculator.fields:
            found += _labelled(calculator.name, "", field)
            if isinstance(field, Rows):
                for each in field.fields:
                    found += _labelled(calculator.name, field.name + "-", each)
    ids = ("welded_at", "shown", "shown_verdict", "status", "closed_at")
    found += [("used_wire", "weld-entry.result.wire_used"), ("used_gas", "weld-entry.result.gas_used_volume")]
    return found + [(each, "entry.field." + each) for each in ids]


def _labelled(name: str, prefix: str, field: Field) -> list[tuple[str, str]]:
    found = [(prefix + field.name, name + ".field." + field.name)]
    if isinstance(field, Choice):
        for word in field.options:
            found.append((prefix + field.name + "." + word, name + ".option." + field.name + "." + word))
    return found


def crew(context: Context) -> str:
    """Return what stands inside <main> of the crew's page: pairing this phone, and leaving."""
    words = Wording(context)
    out = tag("h1", words("crew.title")) + tag("p", words("crew.lead"))
    back = tag("p", tag("a", words("entry.back"), 'href="log"'))
    if not context.has_server():
        return out + tag("p", words("crew.alone")) + back
    out += tag("p", words("log.no-script"), "data-no-log")
    code = tag("label", words("crew.code"), 'for="code"')
    code += '<input id="code" autocomplete="off" autocapitalize="characters" maxlength="20">'
    name = tag("label", words("crew.name"), 'for="name"') + '<input id="name" autocomplete="off" maxlength="60">'
    form = tag("div", code, 'class="field"') + tag("div", name, 'class="field"')
    form += tag("p", tag("button", words("crew.pair"), 'type="submit"'), 'class="row-of-buttons"')
    said = 'role="status" data-said' + words.given(("paired", "not-paired", "not-sent", "left", "wrong"), "crew.")
    said += words.given(REASONS, "log.reason.")
    inner = tag("p", "", said) + tag("form", form, "data-joining")
    inner += tag(
        "p",
        tag("button", words("crew.leave"), 'type="button" class="quiet" data-leave hidden'),
        'class="row-of-buttons"',
    )
    return out + tag("div", inner, "data-crew hidden") + back
