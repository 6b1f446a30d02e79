"""A calculator's declaration and what was typed -> its form, with the errors beside their fields."""

from calculators import asking, numerals, reading, units
from calculators.contract import UNKNOWN, Calculator, Choice, Field, Given, Message, Quantity, Rows, Text, say
from webapp import truck_page
from webapp.catalogue import Context, has, sentence
from webapp.markup import escape, query, tag

# By calculator: finished sentences and fields, made once. They depend on nothing that was typed, so there are only
# so many. The calculator stands beside them because a test may put another one under its name.
_kept: dict[str, "tuple[Calculator, Kept]"] = {}
_TYPED = "\x01"  # stands for the text in a box; no request holds it


class Kept:
    """Pieces of a calculator's page: sentences by (language, id); fields (before and after the text in their
    box) by language, unit system, name, unit or option, and whether hidden."""

    def __init__(self) -> None:
        self.sentences: dict[tuple[str, str], str] = {}
        self.fields: dict[tuple[str, str, str, str, bool], tuple[str, str]] = {}


def _kept_of(calculator: Calculator) -> Kept:
    found = _kept.get(calculator.name)
    if found is None or found[0] is not calculator:
        found = (calculator, Kept())
        _kept[calculator.name] = found
    return found[1]


class Filled:
    """What the form shows: the reply, its errors by field name, and the context."""

    def __init__(
        self, calculator: Calculator, reply: asking.Reply, pairs: list[tuple[str, str]], context: Context
    ) -> None:
        self.calculator = calculator
        self.reply = reply
        self.context = context
        self.kept = _kept_of(calculator)
        # As it was read; a text too long to read is kept only as far as it takes to be too long again.
        self.typed = reading.last_typed([(name, text[: reading.LONGEST_TYPED + 1]) for name, text in pairs])
        self.errors: dict[str, Message] = {}
        for name, message in reply.errors:
            if name not in self.errors:
                self.errors[name] = message

    def text(self, message: Message) -> str:
        """Return the escaped sentence of a Message."""
        if message.parameters:
            return escape(sentence(message, self.context))
        key = (self.context.language, message.id)
        if key not in self.kept.sentences:
            self.kept.sentences[key] = escape(sentence(message, self.context))
        return self.kept.sentences[key]


def form(filled: Filled) -> str:
    """Return the whole form of a calculator."""
    calculator = filled.calculator
    address = escape(calculator.name)
    # The first submit button is the one that the Enter key presses: never a preset, which would fill its box.
    out = [
        tag(
            "button",
            filled.text(say("form.work-out")),
            'type="submit" class="visually-hidden" tabindex="-1" aria-hidden="true"',
        )
    ]
    for heading, fields in _folds(calculator):
        inner = [_any_field(filled, field) for field in fields]
        if heading is None:
            out += inner
            out.append(truck_page.choice(calculator.name, filled.context))
            continue
        opened = " open" if any(_holds_something(filled, field) for field in fields) else ""
        inner.insert(0, tag("summary", filled.text(heading)))
        out.append(tag("details", "".join(inner), 'class="more"' + opened))
    out.append(_machine(filled))
    out.append(_units_choice(filled))
    out.append(tag("button", filled.text(say("form.work-out")), 'type="submit" class="primary"'))
    clear = tag("button", filled.text(say("form.clear")), 'type="button" class="quiet" data-clear hidden')
    undo = tag("button", filled.text(say("form.undo")), 'type="button" class="quiet" data-undo hidden')
    out.append(tag("p", clear + undo, 'class="row-of-buttons"'))
    attributes = (
        'id="ask" class="ask" method="get" novalidate action="' + address + '" hx-get="' + address + '"'
        ' hx-target="#answer" hx-swap="innerHTML" hx-trigger="input delay:60ms, change, submit"'
        ' hx-sync="this:replace" data-calculator="' + address + '"'
    )
    return tag("form", "".join(out), attributes)


def _folds(calculator: Calculator) -> list[tuple[Message | None, list[Field]]]:
    """Return (None, the fields that show at once), then (heading, fields) of each fold; a machine's are elsewhere."""
    found: list[tuple[Message | None, list[Field]]] = [(None, [])]
    for field in calculator.fields:
        if field.name in calculator.folds:
            found.append((say(calculator.name + ".fold." + field.name), []))
        elif field.name == calculator.fold_from:
            found.append((say("form.more"), []))
        if field.name not in calculator.machine:
            found[-1][1].append(field)
    return found


def _holds_something(filled: Filled, field: Field) -> bool:
    """Return whether a field was given a value of its own, or has an error: then it must be seen."""
    typed = filled.typed.get(field.name, "")
    if isinstance(field, Choice) and typed == (field.default or ""):
        return False
    return typed != "" or reading.was_typed(field, "", filled.typed) or field.name in filled.errors


def _any_field(filled: Filled, field: Field) -> str:
    return _rows(filled, field) if isinstance(field, Rows) else _field(filled, field, "", filled.reply.given)


def _field(filled: Filled, field: Field, prefix: str, choices: Given) -> str:
    name = prefix + field.name
    if isinstance(field, Choice):
        typed, chosen = "", _chosen(filled, field, name)
    else:
        typed, chosen = _box(filled, field, name)
    # A number whose choice was taken back still stands in the address: it shows, so that it can be taken out.
    unasked = not reading.applies(field, choices) and filled.typed.get(name, "") == ""
    if name in filled.errors:
        return _new_field(filled, field, prefix, typed, chosen, False)
    key = (filled.context.language, filled.context.system, name, chosen, unasked)
    if key not in filled.kept.fields:
        # Made from a blank form, so that nothing typed by one reader can stay in it for the next.
        blank = Filled(filled.calculator, asking.Reply("blank", Given()), [], filled.context)
        before, _, after = _new_field(blank, field, prefix, _TYPED, chosen, unasked).partition(_TYPED)
        filled.kept.fields[key] = (before, after)
    before, after = filled.kept.fields[key]
    return before + escape(typed) + after


def _new_field(filled: Filled, field: Field, prefix: str, typed: str, chosen: str, hidden: bool) -> str:
    """Return a field with `typed` in its box, and `chosen` the unit beside it or the option of a choice."""
    name = prefix + field.name
    if isinstance(field, Choice):
        inner = _choice(filled, field, name, chosen)
    else:
        inner = _entry(filled, field, name, typed, chosen)
    stepped = " stepped" if isinstance(field, Quantity) and field.quantity.steps else ""
    attributes = 'class="field' + stepped + (" wrong" if name in filled.errors else "") + '"'
    return tag("div", inner, attributes + _asked_when(field.when, prefix, hidden))


def _asked_when(when: tuple[str, tuple[str, ...]] | None, prefix: str, hidden: bool) -> str:
    """Return the attributes of what hangs on a choice."""
    if when is None:
        return ""
    values = " ".join(when[1])
    out = ' data-when="' + escape(prefix + when[0]) + '" data-when-is="' + escape(values) + '"'
    return out + " hidden" if hidden else out


def _label_text(filled: Filled, field: Field) -> str:
    label = reading.label(filled.calculator, field)
    return filled.text(
        say("form.optional", label=label) if field.optional and not isinstance(field, (Choice, Rows)) else label
    )


def _hint_and_error(filled: Filled, field: Field, name: str) -> str:
    out = _hint(filled, field, ' id="' + name + '-hint"')
    error = filled.text(filled.errors[name]) if name in filled.errors else ""
    return out + tag("p", error, 'class="error" id="' + name + '-error"' + ("" if error else " hidden"))


def _hint(filled: Filled, field: Field, attributes: str) -> str:
    """Return the sentence beside a field: its own, or the one that fields of its name share; "" if there is none."""
    own = filled.calculator.name
    if field.hint:
        return tag("p", filled.text(say(own + ".hint." + field.name)), 'class="hint"' + attributes)
    for id in ("hint." + field.name + "." + own, "hint." + field.name):
        if has(id):
            return tag("p", filled.text(say(id)), 'class="hint shared"' + attributes)
    return ""


def _described_by(filled: Filled, field: Field, name: str) -> str:
    return 'aria-describedby="' + (name + "-hint " if _hint(filled, field, "") else "") + name + '-error"'


def _state(filled: Filled, name: str) -> str:
    return ' aria-invalid="true"' if name in filled.errors else ""


# ---------------------------------------------------------------- numbers and text


def _entry(filled: Filled, field: Field, name: str, typed: str, unit: str) -> str:
    out = tag("label", _label_text(filled, field), 'for="' + name + '"')
    out += _hint_and_error(filled, field, name)
    mode = ' inputmode="decimal"' if isinstance(field, Quantity) and field.low >= 0 else ""
    box = (
        '<input type="text" placeholder=" " id="'
        + name
        + '" name="'
        + name
        + '" value="'
        + escape(typed)
        + '" autocomplete="off"'
        ' autocapitalize="off" spellcheck="false"'
        + mode
        + " "
        + _described_by(filled, field, name)
        + _state(filled, name)
        + ">"
    )
    if isinstance(field, Quantity):
        box += _unit_choice(filled, field, name, unit) + _steps(filled, field)
    out += tag("div", box, 'class="entry"')
    if isinstance(field, Quantity):
        out += _presets(filled, field, name) + _timer(filled, field, name)
        out += _kept_note(filled, field.kept, field.kept_with, name)
    elif isinstance(field, Text):
        buttons = [_preset(name, escape(text), escape(text), "", tag("code", escape(text))) for text in field.presets]
        out += _group(filled, field, "".join(buttons)) + _kept_note(filled, field.kept, "", name)
    return out


def _box(filled: Filled, field: Field, name: str) -> tuple[str, str]:
    """Return what stands in the box and the unit chosen beside it; a typed unit moves to the chooser."""
    typed = filled.typed.get(name, "")
    if not isinstance(field, Quantity):
        return typed, ""
    offered = field.quantity.units
    unit = numerals.tidy(filled.typed.get(name + "_unit", ""))
    if unit not in offered:
        unit = field.quantity.si if typed else field.quantity.unit(filled.context.system)
    number, suffix = numerals.split_unit(typed)
    named = units.named(suffix) if suffix else None
    if named in offered and number and named is not None:
        return number, named
    return typed, unit


def _unit_choice(filled: Filled, field: Quantity, name: str, unit: str) -> str:
    offered = field.quantity.units
    if len(offered) == 1:
        if not offered[0]:
            return ""
        hidden = '<input type="hidden" name="' + name + '_unit" value="' + escape(offered[0]) + '">'
        return tag("span", escape(units.sign(offered[0])), 'class="unit"') + hidden
    options = ""
    for each in offered:
        chosen = " selected" if each == unit else ""
        shown = escape(units.sign(each)) if each else "\u2013"
        options += tag("option", shown, 'value="' + escape(each) + '"' + chosen)
    label = filled.text(say("form.unit-of", label=reading.label(filled.calculator, field)))
    attributes = 'name="' + name + '_unit" id="' + name + '_unit" data-quantity="' + field.quantity.name
    return tag("select", options, attributes + '" aria-label="' + label + '"')


def _steps(filled: Filled, field: Quantity) -> str:
    """Return the buttons for one step less and more; the page's script presses them (static/page/steppers.js)."""
    if not field.quantity.steps:
        return ""
    low, high = reading.limits(field)
    worth = []
    for unit, step in field.quantity.steps:
        ends = [numerals.plain(units.from_coherent(end, unit)) for end in (low, high)]
        worth.append("|".join([unit, step] + ends))
    label = reading.label(filled.calculator, field)
    buttons = ""
    for id in ("form.step-less", "form.step-more"):
        name = filled.text(say(id, label=label))
        buttons += tag("button", "", 'type="button" tabindex="-1" aria-label="' + name + '"')
    return tag("span", buttons, 'class="steps" data-steps="' + escape(";".join(worth)) + '"')


def _presets(filled: Filled, field: Quantity, name: str) -> str:
    buttons = ""
    for text in _own_presets(filled, field):
        number, unit = numerals.split_unit(text)
        unit = units.named(unit) or ""
        buttons += _preset(
            name,
            escape(text),
            escape(number),
            escape(unit),
            escape(number + ("\u00a0" + units.sign(unit) if unit else "")),
        )
    if field.may_be_unknown:
        buttons += _preset(name, UNKNOWN, UNKNOWN, "", filled.text(say("form.unknown")))
    return _group(filled, field, buttons)


def _group(filled: Filled, field: Field, buttons: str) -> str:
    if not buttons:
        return ""
    label = filled.text(say("form.presets", label=reading.label(filled.calculator, field)))
    return tag("div", buttons, 'class="presets" role="group" aria-label="' + label + '"')


def _own_presets(filled: Filled, field: Quantity) -> tuple[str, ...]:
    """Return the presets in the reader's own units, or all of them where none is."""
    foreign = field.quantity.unit("si" if filled.context.system == "us" else "us")
    own = [text for text in field.presets if units.named(numerals.split_unit(text)[1]) != foreign]
    return tuple(own) if own else field.presets


def _preset(name: str, value: str, number: str, unit: str, shown: str) -> str:
    # A submit button, so that it works without script; with script it only fills its box.
    attributes = 'type="submit" class="preset" name="' + name + '" value="' + value + '" data-fill="' + name + '"'
    return tag("button", shown, attributes + ' data-number="' + number + '" data-unit="' + unit + '"')


def _kept_note(filled: Filled, kept: bool, kept_with: str, name: str) -> str:
    """Return the note that the page's script shows when it filled in what was typed before (with this choice)."""
    if not (kept or kept_with):
        return ""
    attributes = 'class="hint" data-kept-box="' + name + '" data-kept-with="' + kept_with + '" hidden'
    return tag("p", filled.text(say("form.kept" if kept_with else "form.own")), attributes)


def _timer(filled: Filled, field: Quantity, name: str) -> str:
    if not field.timer:
        return ""
    words = "".join(
        " data-" + part + '="' + filled.text(say("timer." + part)) + '"' for part in ("start", "stop", "running")
    )
    button = tag(
        "button", filled.text(say("timer.start")), 'type="button" class="quiet" data-timer="' + name + '"' + words
    )
    clock = tag("span", "", 'class="clock" role="timer" data-clock="' + name + '"')
    return tag("p", button + clock, 'class="row-of-buttons" data-needs-script hidden')


# ---------------------------------------------------------------- choices and rows


def _chosen(filled: Filled, field: Choice, name: str) -> str:
    chosen = numerals.tidy(filled.typed.get(name, ""))
    return chosen if chosen in field.options else field.default or ""


def _choice(filled: Filled, field: Choice, name: str, chosen: str) -> str:
    if field.default is None and not field.optional and not field.many:
        return _radios(filled, field, name, chosen)
    out = tag("label", _label_text(filled, field), 'for="' + name + '"') + _hint_and_error(filled, field, name)
    options = ""
    if field.optional or field.many:
        none = filled.calculator.name + ".option." + field.name + "."
        first = say(none) if has(none) else say("form.choose")
        options += tag("option", filled.text(first), 'value=""')
    for value in field.options:
        selected = " selected" if value == chosen else ""
        options += tag("option", _option_text(filled, field, value), 'value="' + escape(value) + '"' + selected)
    attributes = 'id="' + name + '" name="' + name + '" ' + _described_by(filled, field, name) + _state(filled, name)
    return out + tag("div", tag("select", options, attributes), 'class="entry"')


def _option_text(filled: Filled, field: Choice, value: str) -> str:
    return filled.text(say(filled.calculator.name + ".option." + field.name + "." + value))


def _radios(filled: Filled, field: Choice, name: str, chosen: str) -> str:
    out = tag("legend", _label_text(filled, field)) + _hint_and_error(filled, field, name)
    for position, value in enumerate(field.options):
        # The error summary links to #name, so the first button carries it.
        id = name if position == 0 else name + "-" + value
        checked = " checked" if value == chosen else ""
        box = '<input type="radio" id="' + id + '" name="' + name + '" value="' + escape(value) + '"' + checked + ">"
        out += tag("label", box + tag("span", _option_text(filled, field, value)), 'class="radio" for="' + id + '"')
    return tag("fieldset", out, _described_by(filled, field, name))


def _rows(filled: Filled, field: Rows) -> str:
    given = filled.reply.given
    shown = len(given.rows(field.name)) + 1
    for name in filled.errors:
        if name.startswith(field.name + "-"):
            shown = max(shown, int(name.split("-")[1]))
    out = tag("legend", _label_text(filled, field))
    out += _hint(filled, field, "")
    for number in range(1, field.most + 1):
        prefix = field.name + "-" + str(number) + "-"
        chosen = _choices_of_row(filled, field, prefix)
        heading = filled.text(say("form.row", label=reading.label(filled.calculator, field), row=number))
        inner = "" if field.most == 1 else tag("legend", heading)
        inner += "".join(_field(filled, each, prefix, chosen) for each in field.fields)
        out += tag("fieldset", inner, 'class="row" data-row' + ("" if number <= shown else " hidden"))
    out += _from_log(filled, field)
    wrong = any(name.startswith(field.name + "-") for name in filled.errors)
    hidden = not (wrong or reading.applies(field, given) or reading.was_typed(field, "", filled.typed))
    return tag("fieldset", out, 'class="rows" data-rows' + _asked_when(field.when, "", hidden))


def _from_log(filled: Filled, field: Rows) -> str:
    """Return what fills the pairs of a machine's trim from the welder's own log; only the page's script can."""
    if (filled.calculator.name, field.name) != ("machine-trim", "pairs"):
        return ""
    said = ' data-took="' + filled.text(say("pairs.took")) + '" data-none="' + filled.text(say("pairs.none")) + '"'
    button = tag("button", filled.text(say("pairs.take")), 'type="button" class="quiet"')
    inner = tag("p", button, 'class="row-of-buttons"') + tag("p", "", 'role="status"' + said)
    return tag("div", inner, "data-from-log hidden")


def _choices_of_row(filled: Filled, field: Rows, prefix: str) -> Given:
    """Return what is chosen in one row, begun or not: its other fields hang on that."""
    chosen = Given()
    for each in field.fields:
        if isinstance(each, Choice):
            chosen.values[each.name] = _chosen(filled, each, prefix + each.name) or None
    return chosen


def _units_choice(filled: Filled) -> str:
    options = ""
    for system in ("us", "si"):
        selected = " selected" if filled.context.system == system else ""
        options += tag("option", filled.text(say("form.units." + system)), 'value="' + system + '"' + selected)
    select = tag("select", options, 'id="units" name="units" data-quantity="units"')
    inner = tag("label", filled.text(say("form.units")), 'for="units"') + tag("div", select, 'class="entry"')
    return tag("div", inner, 'class="field"')


# ---------------------------------------------------------------- the welder's own machine


def _machine(filled: Filled) -> str:
    """Return the fields of a machine, folded, below what picks one that the phone has kept."""
    names = filled.calculator.machine
    if not names:
        return ""
    boxes = [_field(filled, filled.calculator.field(name), "", filled.reply.given) for name in names]
    measure = tag("p", tag("a", filled.text(say("machine.measure")), 'class="button" href="machine-trim"'))
    summary = tag("summary", filled.text(say("machine.folded")))
    wrong = any(name in filled.errors for name in names)
    out = _picker(filled) + tag("details", summary + measure + "".join(boxes), "data-machine" + " open" * wrong)
    when = filled.calculator.machine_when
    if when is None:
        return out
    return tag("div", out, _asked_when(when, "", filled.reply.given.word(when[0]) not in when[1])[1:])


def _picker(filled: Filled) -> str:
    label = tag("label", filled.text(say("machine.pick")), 'for="machine-picker"')
    words = "".join(
        " data-" + word + '="' + filled.text(say("machine." + word)) + '"' for word in ("none", "typed", "new-name")
    )
    chooser = tag("div", tag("select", "", 'id="machine-picker"' + words), 'class="entry"')
    buttons = "".join(
        tag(
            "button",
            filled.text(say("machine." + word)),
            'type="button" class="quiet" data-machine-' + word + " hidden",
        )
        for word in ("none", "rename", "delete", "undo")
    )
    inner = label + chooser + tag("p", buttons, 'class="row-of-buttons"')
    return tag("div", inner, 'class="field" data-machines="' + " ".join(filled.calculator.machine) + '" hidden')


def shared_query(filled: Filled) -> str:
    """Return the query of a link that gives this answer to somebody else: each number with its unit.

    A choice left at its default is left out, so that the link stays short enough to read.
    """
    pairs: list[tuple[str, str]] = []
    for field in filled.calculator.fields:
        if not isinstance(field, Rows):
            _share(filled, field, field.name, pairs)
        elif reading.rows_were_sent(field, filled.typed):
            for number in range(1, field.most + 1):
                for each in field.fields:
                    _share(filled, each, field.name + "-" + str(number) + "-" + each.name, pairs)
    if filled.context.system != "us":
        pairs.append(("units", filled.context.system))
    return query(pairs)


def _share(filled: Filled, field: Field, name: str, pairs: list[tuple[str, str]]) -> None:
    typed = filled.typed.get(name, "")
    if typed == "" or (isinstance(field, Choice) and typed == field.default):
        return
    if isinstance(field, Quantity):
        number, unit = _box(filled, field, name)
        known = numerals.tidy(number).lower() != UNKNOWN
        typed = number + " " + unit if unit and known else number
    pairs.append((name, typed))
