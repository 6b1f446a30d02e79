"""An answer, a refusal or a list of questions -> HTML, escaped; runs on both Pythons."""

from calculators import reading, units
from calculators.contract import (
    Card,
    Checklist,
    Countdown,
    Draft,
    Drawing,
    Findings,
    Measured,
    Message,
    Next,
    Number,
    Table,
    Words,
    say,
)
from webapp import cautions, glossary, wording
from webapp.catalogue import Context, amount, has, piece, sentence, unchecked, with_unit
from webapp.forms import Filled, form, shared_query
from webapp.markup import escape, query, tag


def question(filled: Filled) -> str:
    """Return everything inside <main> for a calculator: its question, form and answer."""
    name = filled.calculator.name
    heading = tag("h1", filled.text(say(name + ".title")))
    lead = tag("p", filled.text(say(name + ".question")), 'class="lead"')
    if has(name + ".lead"):
        lead += tag("p", filled.text(say(name + ".lead")))
    summary = _summary(filled, ' tabindex="-1" autofocus') if filled.reply.state == "problem" else ""
    spoken = tag("p", "", 'class="visually-hidden" role="status" id="spoken"')
    section = tag("section", answer(filled), 'id="answer" aria-label="' + filled.text(say("answer.heading")) + '"')
    pin = tag("button", filled.text(say("pin.button")), 'type="button" aria-pressed="false" data-pin="' + name + '"')
    pin = tag("p", pin, 'class="row-of-buttons" data-needs-script hidden')
    return (
        heading
        + lead
        + summary
        + tag("div", form(filled) + section, 'class="work"')
        + pin
        + spoken
        + glossary.of_question(name, filled.context)
    )


def title(filled: Filled) -> str:
    """Return the document title; it begins with the word for error when something is wrong."""
    id = "title.error" if filled.reply.state == "problem" else "title.page"
    return filled.text(say(id, title=say(filled.calculator.name + ".title")))


def answer(filled: Filled) -> str:
    """Return what goes into the answer region: answer, problem, or what is still waited for."""
    reply = filled.reply
    if reply.state == "problem":
        return _problem(filled)
    if reply.state == "waiting":
        assert reply.waiting is not None
        return tag("div", tag("p", filled.text(reply.waiting)), 'class="headline waiting"')
    if reply.state == "blank":
        return tag("div", tag("p", filled.text(say("answer.blank"))), 'class="headline waiting"')
    return _answer(filled)


def _problem(filled: Filled) -> str:
    typing = tag("p", filled.text(say("answer.typing")), 'class="still-typing" hidden')
    problem = tag("div", _summary(filled, "") + typing, 'class="headline problem"')
    return problem + _next(filled, filled.reply.next_questions)


def _summary(filled: Filled, attributes: str) -> str:
    items = ""
    for name, message in filled.reply.errors:
        text = filled.text(message)
        if name:
            text = tag("a", text, 'href="#' + escape(name) + '"')
        items += tag("li", text, 'data-field="' + escape(name) + '"')
    heading = tag("h2", filled.text(say("answer.problem")))
    return tag("div", heading + tag("ul", items), 'class="summary"' + attributes)


# ---------------------------------------------------------------- an answer


def _answer(filled: Filled) -> str:
    reply = filled.reply
    found = reply.answer
    assert found is not None
    out = _headline(filled, found.results[0]) + _before(filled)
    remedy = None if found.verdict is None else found.verdict.remedy
    for message in (remedy, reply.agreement, reply.sensitivity):
        if message is not None:
            out += tag("p", filled.text(message), 'class="remark"')
    others = "".join(_result(filled, result) for result in found.results[1:] if isinstance(result, (Number, Words)))
    if others:
        out += tag("h2", filled.text(say("answer.also"))) + tag("dl", others, 'class="results"')
    for result in found.results:
        if not isinstance(result, (Number, Words)):
            out += _block(filled, result)
    out += _keeping(filled, found.machine)
    out += _recording(filled, found.record)
    out += _cautions(filled, found.cautions)
    out += _list(filled, "answer.notes", found.notes, "notes")
    out += _folded(filled, "answer.working", "".join(tag("li", filled.text(line)) for line in found.working), "ol")
    cited = cautions.sources_of(found.sources, found.cautions)
    out += _folded(filled, "answer.sources", "".join(wording.source(each, filled.context) for each in cited), "ul")
    out += _next(filled, found.next_questions)
    return out + _ran(filled) + _sharing(filled)


def _headline(filled: Filled, result: object) -> str:
    inner = ""
    if isinstance(result, Number):
        first, second = shown_amounts(filled, result)
        inner = tag("p", _label(filled, result), 'class="headline-label"')
        inner += tag(
            "p",
            first
            + (" " + tag("span", filled.text(say("answer.or", amount=second)), 'class="other"') if second else ""),
            'class="number"',
        )
        if result.in_words is not None:
            inner += tag("p", filled.text(result.in_words), 'class="in-words"')
        inner += _band(filled, result)
    elif isinstance(result, Words):
        inner = tag("p", _label(filled, result), 'class="headline-label"') + tag(
            "p", filled.text(result.message), 'class="number words"'
        )
    elif isinstance(result, Findings):
        inner = tag("p", filled.text(result.heading), 'class="headline-label"')
        if result.items:
            inner += tag("p", filled.text(result.items[0].what), 'class="number words"')
    found = filled.reply.answer
    if found is not None and found.verdict is not None:
        state = found.verdict.state
        word = tag("strong", filled.text(say("answer.verdict." + state)))
        inner += tag("p", word + ": " + filled.text(found.verdict.message), 'class="verdict ' + state + '"')
    return tag("div", inner, 'class="headline answered"')


def _before(filled: Filled) -> str:
    """Return the place for what the answer was before; only the page's script knows that."""
    words = filled.text(say("answer.before", number="{number}", typed="{typed}"))
    plain = filled.text(say("answer.before-plain", number="{number}"))
    back = tag("button", filled.text(say("answer.back")), 'type="button" class="quiet"')
    attributes = 'class="row-of-buttons" hidden data-before="' + words + '" data-plain="' + plain + '"'
    return tag("p", tag("span", "") + back, attributes)


def shown_amounts(filled: Filled, result: Number) -> tuple[str, str]:
    """Return the escaped amount in the reader's unit and, or "", in the other system's unit."""
    quantity = result.quantity
    first = filled.reply.given.units.get(result.name, quantity.unit(filled.context.system))
    if first not in quantity.units:
        first = quantity.unit(filled.context.system)
    other = quantity.si if filled.context.system == "us" else quantity.us
    if other == first:
        other = quantity.unit(filled.context.system)
    value = Measured(result.value, quantity.name, result.figures)
    number = tag("b", escape(amount(value, first)))
    shown = number + ("\u00a0" + tag("span", escape(units.sign(first)), 'class="unit"') if first else "")
    return shown, "" if other == first else with_unit(amount(value, other), other)


def _label(filled: Filled, result: Number | Words) -> str:
    if result.label is not None:
        return filled.text(result.label)
    return filled.text(say(filled.calculator.name + ".result." + result.name))


def _band(filled: Filled, result: Number) -> str:
    if result.low is None or result.high is None:
        return ""
    unit = filled.reply.given.units.get(result.name)
    low = Measured(result.low, result.quantity.name, result.figures, unit)
    high = Measured(result.high, result.quantity.name, result.figures, unit)
    text = filled.text(say("answer.band", low=low, high=high))
    if result.band is not None:
        text += " " + tag("span", filled.text(result.band), 'class="band-reason"')
    return tag("p", text, 'class="band"')


def _result(filled: Filled, result: Number | Words) -> str:
    term = tag("dt", _label(filled, result))
    if isinstance(result, Words):
        return term + tag("dd", filled.text(result.message))
    first, second = shown_amounts(filled, result)
    inner = first + (" " + tag("span", filled.text(say("answer.or", amount=second)), 'class="other"') if second else "")
    if result.in_words is not None:
        inner += " " + tag("span", filled.text(result.in_words), 'class="in-words"')
    return term + tag("dd", inner + _band(filled, result))


def _list(filled: Filled, heading: str, messages: tuple[Message, ...], style: str) -> str:
    if not messages:
        return ""
    items = "".join(tag("li", filled.text(message)) for message in messages)
    return tag("div", tag("h2", filled.text(say(heading))) + tag("ul", items), 'class="' + style + '"')


def _cautions(filled: Filled, messages: tuple[Message, ...]) -> str:
    """Return the cautions; in a language that no native reader has checked, each with its English beside it."""
    if not messages or not unchecked(messages[0], filled.context):
        return _list(filled, "answer.cautions", messages, "cautions")
    items = "".join(tag("li", filled.text(each) + " " + english(each, filled.context)) for each in messages)
    heading = tag("h2", filled.text(say("answer.cautions"))) + tag("p", filled.text(say("answer.unchecked")))
    return tag("div", heading + tag("ul", items), 'class="cautions"')


def english(message: Message, context: Context) -> str:
    """Return the English that stands beside a caution in another language, or ""."""
    text = unchecked(message, context)
    return tag("span", escape(text), 'lang="en" class="english"') if text else ""


def caution(id: str, context: Context) -> str:
    """Return a caution that stands alone."""
    message = say(id)
    return tag(
        "p", (escape(sentence(message, context)) + " " + english(message, context)).strip(" "), 'class="caution"'
    )


def _folded(filled: Filled, heading: str, items: str, kind: str) -> str:
    if not items:
        return ""
    return tag("details", tag("summary", filled.text(say(heading))) + tag(kind, items))


def _next(filled: Filled, questions: tuple[Next, ...]) -> str:
    items = "".join(
        tag("li", tag("a", filled.text(each.message), 'href="' + escape(_address(filled, each)) + '"'))
        for each in questions
    )
    return (
        tag(
            "nav",
            tag("h2", filled.text(say("answer.next"))) + tag("ul", items),
            'class="next" aria-label="' + filled.text(say("answer.next")) + '"',
        )
        if items
        else ""
    )


def _address(filled: Filled, each: Next) -> str:
    pairs = _carried(filled, each.carried)
    if filled.context.system != "us":
        pairs.append(("units", filled.context.system))
    return each.calculator + ("?" + query(pairs) if pairs else "")


def _carried(filled: Filled, carried: tuple[tuple[str, object], ...]) -> list[tuple[str, str]]:
    """Return fields with their values as they are typed."""
    pairs = []
    for name, value in carried:
        if isinstance(value, Measured):
            pairs.append((name, reading.as_typed(value, filled.context.system)))
        else:
            pairs.append((name, str(value)))
    return pairs


def _keeping(filled: Filled, machine: tuple[tuple[str, object], ...]) -> str:
    """Return what offers to keep a machine on the phone; only the page's script can."""
    if not machine:
        return ""
    kept = ' data-kept="' + filled.text(say("machine.kept")) + '" data-unnamed="' + filled.text(say("machine.pick"))
    keep = tag("button", filled.text(say("machine.keep")), 'type="button" data-keep' + kept + '"')
    undo = tag("button", filled.text(say("machine.undo")), 'type="button" class="quiet" data-undo-keep hidden')
    attributes = 'class="row-of-buttons" data-keeping="' + escape(query(_carried(filled, machine))) + '" hidden'
    return tag("p", keep + undo, attributes)


def _recording(filled: Filled, kind: str) -> str:
    """Return what keeps what was typed as a record on the phone; only the page's script can."""
    if not kind:
        return ""

    def words(id: str) -> str:
        """Return what it is called for this calculator, or for any that keeps a record."""
        own = id + "." + filled.calculator.name
        return filled.text(say(own if has(own) else id))

    def given(names: tuple[str, ...]) -> str:
        return "".join([" data-" + name + '="' + words("record." + name) + '"' for name in names])

    photo = tag("label", words("record.photo"), 'for="record-photo"')
    photo += '<input id="record-photo" type="file" accept="image/*" capture="environment">'
    changed = tag("h2", words("record.changed")) + tag("ul", "", 'class="changes"')
    save = tag("button", words("record.save"), 'type="button" data-record-save' + given(("corrects",)))
    open = 'class="action" href="' + _LISTS.get(kind, "log") + '" data-record-open' + given(("job",))
    inner = tag("div", changed, "data-record-changed hidden")
    if filled.calculator.name not in _WITHOUT_PHOTO:
        inner += tag("div", photo, 'class="field"')
    inner += tag("p", save, 'class="row-of-buttons"')
    inner += tag(
        "p", "", 'role="status" data-record-said' + given(("saved", "full", "refused", "versions", "last-time"))
    )
    again = tag("a", words("log.repeat"), 'class="action" href="weld-entry" data-record-again hidden')
    ways = tag("a", words("record.log"), open) + (again if kind == "weld-entry" else "")
    inner += tag("p", ways, 'class="row-of-buttons"')
    found = filled.reply.answer
    assert found is not None
    # In one unit each, whatever the reader's are: amounts of several entries are added up.
    amounts = [each for each in found.results if isinstance(each, Number)]
    carried = [(each.name, Measured(each.value, each.quantity.name, None, each.quantity.si)) for each in amounts]
    results = '" data-results="' + escape(query(_carried(filled, tuple(carried)))) + '" hidden'
    return tag("div", inner, 'class="recording" data-record="' + kind + results)


_WITHOUT_PHOTO = ("job-price",)  # a price is of a job, which has its own photos
_LISTS = {"weld-entry": "log", "job": "jobs", "stock": "truck"}


def _ran(filled: Filled) -> str:
    """Return the way to what the welder ran last time on this thickness: the log's, which only the phone has."""
    given = filled.reply.given
    if filled.calculator.name != "settings" or not given.has("thickness"):
        return ""
    carried = query(_carried(filled, (("thickness", given.measured("thickness")),)))
    link = tag("a", filled.text(say("log.last")), 'class="action" href="log#' + escape(carried) + '"')
    return tag("p", link, 'class="row-of-buttons"')


def _sharing(filled: Filled) -> str:
    address = escape(filled.calculator.name + "?" + shared_query(filled))
    link = tag("a", filled.text(say("answer.share")), 'class="share" href="' + address + '"')
    copied = filled.text(say("answer.copied"))
    copy = tag(
        "button",
        filled.text(say("answer.copy")),
        'type="button" class="quiet" data-copy hidden data-copied="' + copied + '"',
    )
    hand_on = tag("button", filled.text(say("answer.hand-on")), 'type="button" class="quiet" data-hand-on hidden')
    return tag("p", link + copy + hand_on, 'class="row-of-buttons sharing"')


# ---------------------------------------------------------------- tables, findings, lists, drawings


def _block(filled: Filled, result: object) -> str:
    if isinstance(result, Table):
        return _table(filled, result)
    if isinstance(result, Findings):
        return _findings(filled, result)
    if isinstance(result, Checklist):
        return _checklist(filled, result)
    if isinstance(result, Countdown):
        return _countdown(filled, result)
    if isinstance(result, Draft):
        return _draft(filled, result)
    if isinstance(result, Card):
        return _card(filled, result)
    assert isinstance(result, Drawing)
    return _drawing(filled, result)


def _table(filled: Filled, table: Table) -> str:
    head = "".join(tag("th", filled.text(column), 'scope="col"') for column in table.columns)
    body = ""
    for row in table.rows:
        cells = [escape(piece(cell, filled.context)) for cell in row]
        body += tag("tr", tag("th", cells[0], 'scope="row"') + "".join(tag("td", cell) for cell in cells[1:]))
    caption = tag("caption", filled.text(table.caption))
    inner = caption + tag("thead", tag("tr", head)) + tag("tbody", body)
    return tag(
        "div",
        tag("table", inner),
        'class="table" role="region" tabindex="0" aria-label="' + filled.text(table.caption) + '"',
    )


def _findings(filled: Filled, findings: Findings) -> str:
    items = ""
    for item in findings.items:
        what = tag("strong", filled.text(item.what))
        if item.sureness is not None:
            sure = filled.text(say("answer.sureness")) + ": " + filled.text(item.sureness)
            what += " " + tag("span", sure, 'class="sureness"')
        items += tag("li", what + tag("p", filled.text(item.why)))
    heading = tag("h2", filled.text(findings.heading))
    if not findings.remember:
        return tag("div", heading + tag("ol", items), 'class="findings"')
    before = tag("p", filled.text(say("fixed.before")) + " " + tag("strong", ""), 'class="remark" hidden')
    attributes = 'class="findings" data-remember="' + escape(findings.remember) + '"'
    return tag("div", heading + before + tag("ol", items) + _fixed(filled, findings), attributes)


def _fixed(filled: Filled, findings: Findings) -> str:
    """Return what keeps on the phone which of them it was; only the page's script can, and takes it back."""
    options = tag("option", filled.text(say("fixed.none")), 'value=""')
    for item in findings.items:
        options += tag("option", filled.text(item.what), 'value="' + escape(item.key) + '"')
    label = tag("label", filled.text(say("fixed.which")), 'for="fixed"')
    entry = tag("div", tag("select", options, 'id="fixed"'), 'class="entry"')
    undo = tag("button", filled.text(say("machine.undo")), 'type="button" class="quiet" data-undo-fixed hidden')
    return tag("div", label + entry + tag("p", undo, 'class="row-of-buttons"'), 'class="fixed" hidden')


def _checklist(filled: Filled, found: Checklist) -> str:
    """Return boxes to tick. They are no part of the form: what is ticked stays on the phone, not in the address."""
    out = tag("legend", filled.text(found.heading))
    for id, what in found.items:
        box = '<input type="checkbox" autocomplete="off" data-tick="' + escape(id) + '">'
        words = (filled.text(what) + " " + english(what, filled.context)).strip(" ")
        out += tag("label", box + tag("span", words), 'class="tick"')
    # The script puts the numbers in, so their places are kept open.
    done = filled.text(say("checklist.done", done="{done}", all=len(found.items)))
    since = filled.text(say("checklist.since", when="{when}"))
    out += tag("p", "", 'role="status" data-done="' + done + '" data-since="' + since + '" hidden')
    out += tag("p", (filled.text(found.left) + " " + english(found.left, filled.context)).strip(" "), 'class="left"')
    told = "".join([" data-" + id + '="' + filled.text(say("checklist.job." + id)) + '"' for id in OF_JOB])
    out += tag("p", "", 'class="hint" role="status" data-job' + told)
    clear = tag("button", filled.text(say("checklist.clear")), 'type="button" class="quiet" data-untick hidden')
    undo = tag("button", filled.text(say("checklist.undo")), 'type="button" class="quiet" data-retick hidden')
    return tag("fieldset", out + tag("p", clear + undo, 'class="row-of-buttons"'), 'class="checklist" data-checklist')


OF_JOB = ("kept", "closed", "refused")  # what is said of ticks on a list that was opened from a job


def _countdown(filled: Filled, found: Countdown) -> str:
    """Return a wait that only the page's script can time; without it the sentences stand alone."""
    ends = filled.text(say("countdown.ends", start="{start}", end="{end}"))
    out = tag("h2", filled.text(found.label))
    out += tag("p", "", 'class="clock" role="timer" data-left hidden')
    out += tag("p", "", 'role="status" data-ends="' + ends + '" hidden')
    out += tag("p", filled.text(found.after), "data-over hidden") + tag("p", filled.text(say("countdown.alarm")))
    words = ' data-again="' + filled.text(found.begin or say("countdown.again")) + '"'
    begin = filled.text(found.begin or say("countdown.start"))
    buttons = tag("button", begin, 'type="button" data-begin hidden' + words)
    end = filled.text(found.end or say("countdown.stop"))
    buttons += tag("button", end, 'type="button" class="quiet" data-end hidden')
    buttons += tag("button", filled.text(say("countdown.undo")), 'type="button" class="quiet" data-back hidden')
    out += tag("p", buttons, 'class="row-of-buttons"')
    attributes = 'class="countdown" data-countdown="' + escape(found.name) + '" data-seconds="'
    return tag("div", out, attributes + str(int(found.length + 0.5)) + '"')


def _draft(filled: Filled, found: Draft) -> str:
    copied = ' data-copied="' + filled.text(say("answer.copied")) + '"'
    copy = tag("button", filled.text(say("draft.copy")), 'type="button" data-copy-draft hidden' + copied)
    text = tag("p", filled.text(found.message), "data-draft")
    return tag(
        "div", tag("h2", filled.text(found.label)) + text + tag("p", copy, 'class="row-of-buttons"'), 'class="draft"'
    )


def _card(filled: Filled, card: Card) -> str:
    """Return a card; its lines are named, so that the page's script can keep them and tell what changed."""
    lines = ""
    for line in card.lines:
        value = escape(piece(line.value, filled.context))
        if line.leads is not None:
            takes = " ".join([there + ":" + here for there, here in line.takes])
            more = ' data-takes="' + escape(takes) + '"' if takes else ""
            value = tag("a", value, 'href="' + escape(_address(filled, line.leads)) + '"' + more)
        style = ' class="' + line.state + '"' if line.state else ""
        inner = tag("dt", filled.text(line.label)) + tag("dd", value)
        lines += tag("div", inner, 'data-line="' + escape(line.key) + '"' + style)
    inner = tag("h2", filled.text(card.heading)) + tag("dl", lines, 'class="results"')
    return tag("section", inner, 'class="card" data-card="' + escape(card.name) + '"')


def _drawing(filled: Filled, drawing: Drawing) -> str:
    id = "drawing-" + drawing.name
    inner = tag("desc", filled.text(drawing.description), 'id="' + id + '-desc"')
    for shape, numbers, style, label in drawing.shapes:
        parts = [(shape, numbers, style, label)]
        if shape == "scale":
            parts = label.shapes(filled.context.system, lambda value: piece(value, filled.context))  # type: ignore[attr-defined]
        for each in parts:
            inner += _shape(filled, drawing.width, each)
    attributes = (
        'viewBox="0 0 '
        + str(drawing.width)
        + " "
        + str(drawing.height)
        + '" role="img" aria-labelledby="'
        + id
        + '-desc"'
    )
    return tag(
        "figure", tag("svg", inner, attributes) + tag("figcaption", filled.text(drawing.title)), 'class="drawing"'
    )


def _shape(filled: Filled, width: int, each: "tuple[str, tuple[int, ...], str, object]") -> str:
    shape, numbers, style, label = each
    if shape == "text":
        words, x = piece(label, filled.context), numbers[0]
        # No word may leave the paper, however long it is in this language and these units.
        half = len(words) * 5
        before, behind = (half, half) if style == "middle" else (2 * half, 0) if style == "end" else (0, 2 * half)
        x = max(min(x, width - behind), before)
        return tag("text", escape(words), 'x="' + str(x) + '" y="' + str(numbers[1]) + '" class="' + style + '"')
    style = 'class="' + style + '"'
    if shape == "circle":
        x, y, r = numbers
        return '<circle cx="' + str(x) + '" cy="' + str(y) + '" r="' + str(r) + '" ' + style + "/>"
    points = " ".join(str(number) for number in numbers)
    return "<" + ("polyline" if shape == "line" else "polygon") + ' points="' + points + '" ' + style + "/>"
