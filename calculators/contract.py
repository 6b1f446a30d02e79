"""What a calculator is: the fields it asks, the relations between them, and what an answer is made of.

A calculator declares itself once with these classes; reading input, solving, checking, the page, the JSON API and
the tests' walk are all derived from the declaration. Everything a reader will see is a `Message` (an id and its
parameters), never a sentence: the catalogue turns it into the reader's language.
"""

from calculators import numerals, quantities
from calculators.quantities import PhysicalQuantity

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable
    from typing import Any

UNKNOWN = "unknown"  # what a field holds when the welder says honestly that it is not known


# ---------------------------------------------------------------- words


class Message:
    """A sentence to be: its id in the catalogue and the parameters that go into it."""

    def __init__(self, id: str, parameters: tuple[tuple[str, object], ...] = ()) -> None:
        self.id = id
        self.parameters = parameters


def say(id: str, **parameters: object) -> Message:
    """Return the Message `id`; a parameter is text, an integer, a Measured or another Message."""
    if not parameters:
        return Message(id)
    return Message(id, tuple([(key, parameters[key]) for key in sorted(parameters)]))


class Measured:
    """A number with its quantity, to be shown in the reader's units; `value` is in coherent SI.

    `inward` is 1.0 for a lowest and -1.0 for a highest limit: it is rounded so that what is shown is accepted.
    """

    def __init__(
        self, value: float, quantity: str, figures: int | None = None, unit: str | None = None, inward: float = 0.0
    ) -> None:
        self.inward = inward
        self.value = value
        self.quantity = quantities.quantity(quantity)
        self.figures = figures
        self.unit = unit


class Plain:
    """A bare number in a sentence, shown with `figures` significant figures."""

    def __init__(self, value: float, figures: int = 3) -> None:
        self.value = value
        self.figures = figures


# ---------------------------------------------------------------- fields


class Field:
    """One thing the calculator asks. `when` = (choice field, values) makes it conditional on that choice."""

    kind = ""

    def __init__(self, name: str, optional: bool, when: tuple[str, tuple[str, ...]] | None, hint: bool) -> None:
        self.name = name
        self.optional = optional
        self.when = when
        self.hint = hint


class Quantity(Field):
    """A number with a unit. Its vocabulary entry gives units and range; both can be narrowed here.

    `low`, `high` : limits in the entry's `si` unit, where the method holds for less than the vocabulary allows.
    `presets`     : typed texts of what a welder really has in hand.
    `whole`       : only whole numbers.
    `may_be_unknown` : the reader may say so honestly; the value is then UNKNOWN.
    `kept`        : the welder's own, like a rate: the phone keeps what is typed, and fills it in where all such are blank.
    `kept_with`   : a choice; the phone keeps what is typed here for each of its options, and fills it in again.
    """

    kind = "quantity"

    def __init__(
        self,
        name: str,
        quantity: str | None = None,
        optional: bool = False,
        when: tuple[str, tuple[str, ...]] | None = None,
        hint: bool = False,
        low: float | None = None,
        high: float | None = None,
        presets: tuple[str, ...] = (),
        whole: bool = False,
        may_be_unknown: bool = False,
        timer: bool = False,
        kept_with: str = "",
        kept: bool = False,
    ) -> None:
        super().__init__(name, optional, when, hint)
        self.kept = kept
        self.kept_with = kept_with
        self.quantity: PhysicalQuantity = quantities.quantity(quantity or name)
        self.low = self.quantity.low if low is None else low
        self.high = self.quantity.high if high is None else high
        self.presets = presets
        self.whole = whole
        self.may_be_unknown = may_be_unknown
        self.timer = timer


class Choice(Field):
    """One of a few words. Without a default it must be chosen, unless it is optional; `many` makes it a list to open."""

    kind = "choice"

    def __init__(
        self,
        name: str,
        options: tuple[str, ...],
        default: str | None = None,
        optional: bool = False,
        when: tuple[str, tuple[str, ...]] | None = None,
        hint: bool = False,
        many: bool = False,
    ) -> None:
        super().__init__(name, optional, when, hint)
        self.options = options
        self.default = default
        self.many = many


class Text(Field):
    """A few words typed by the reader, kept and shown as typed, at most `longest` characters.

    `examples` : texts that it takes, where it does not take just any; `presets` : those of them that can be tapped;
    `kept` : as of a Quantity.
    """

    kind = "text"

    def __init__(
        self,
        name: str,
        longest: int = 60,
        optional: bool = False,
        when: tuple[str, tuple[str, ...]] | None = None,
        hint: bool = False,
        examples: tuple[str, ...] = (),
        presets: tuple[str, ...] = (),
        kept: bool = False,
    ) -> None:
        super().__init__(name, optional, when, hint)
        self.kept = kept
        self.longest = longest
        self.examples = examples
        self.presets = presets


class Rows(Field):
    """The same few fields repeated, named `name-1-field`, `name-2-field` ... in an address.

    Unless it is optional, at least one row is waited for.
    """

    kind = "rows"

    def __init__(
        self,
        name: str,
        fields: tuple[Field, ...],
        most: int,
        hint: bool = False,
        optional: bool = True,
        when: tuple[str, tuple[str, ...]] | None = None,
    ) -> None:
        super().__init__(name, optional, when, hint)
        self.fields = fields
        self.most = most


class Relation:
    """Fields bound by one equation, any one of which can be the blank.

    `solve(unknown, values)` returns the unknown in coherent SI from the others and from `also`: fields, choices
    among them, that shape the equation but are never its blank. `check` names the field that is worked out again
    when none is blank, and agrees within the share `agree_within`; it is empty where the answer itself says how
    well the numbers agree. A relation that is not `required` takes part only once one of `its_own` fields is
    filled in; where that hangs on more, `takes_part(given)` says whether a required one does.
    """

    def __init__(
        self,
        fields: tuple[str, ...],
        solve: "Callable[[str, dict[str, Any]], float]",
        check: str,
        required: bool = True,
        its_own: tuple[str, ...] = (),
        also: tuple[str, ...] = (),
        agree_within: float = 0.01,  # closer than anybody reads a meter
        takes_part: "Callable[[Given], bool] | None" = None,
    ) -> None:
        self.fields = fields
        self.solve = solve
        self.check = check
        self.required = required
        self.its_own = its_own
        self.also = also
        self.agree_within = agree_within
        self.takes_part = takes_part


# ---------------------------------------------------------------- answers


class Source:
    """Where a number comes from. The title is a citation and stays as published; `standing` is one of STANDINGS."""

    def __init__(self, title: str, standing: str) -> None:
        self.title = title
        self.standing = standing


STANDINGS = ("standard", "law", "published", "common practice", "from memory")


class Number:
    """A number of the answer, [coherent SI], with its band where the method is an estimate."""

    kind = "number"

    def __init__(
        self,
        name: str,
        value: float,
        quantity: str | None = None,
        low: float | None = None,
        high: float | None = None,
        band: Message | None = None,
        label: Message | None = None,
        figures: int | None = None,
        in_words: Message | None = None,
    ) -> None:
        self.name = name
        self.value = value
        self.quantity = quantities.quantity(quantity or name)
        self.low = low
        self.high = high
        self.band = band
        self.label = label
        self.figures = figures
        self.in_words = in_words


class Words:
    """An answer in words."""

    kind = "words"

    def __init__(self, name: str, message: Message, label: Message | None = None) -> None:
        self.name = name
        self.message = message
        self.label = label


class Table:
    """Rows of cells under headings; a cell is a Message, a Measured, a Plain or citation-like text."""

    kind = "table"

    def __init__(
        self, name: str, caption: Message, columns: tuple[Message, ...], rows: tuple[tuple[object, ...], ...]
    ) -> None:
        self.name = name
        self.caption = caption
        self.columns = columns
        self.rows = rows


class Finding:
    """One of several ranked possibilities: what, how sure (a word), and why; `key` names it for the phone's memory.

    Where nothing was given to be sure by, `sureness` is None.
    """

    def __init__(self, what: Message, sureness: Message | None, why: Message, key: str = "") -> None:
        self.what = what
        self.sureness = sureness
        self.why = why
        self.key = key


class Findings:
    """Possibilities, the likeliest first.

    With `remember`, a name for what was asked, the page offers to keep on the phone which of them it was.
    """

    kind = "findings"

    def __init__(self, name: str, heading: Message, items: tuple[Finding, ...], remember: str = "") -> None:
        self.name = name
        self.heading = heading
        self.items = items
        self.remember = remember


class Checklist:
    """Things to do or to look at, each with a box to tick; the page's script keeps the ticks on the phone.

    `items` are (id, what). A tick is kept under the calculator's name and this id, so an id never changes its meaning.
    `left` says what is still to be judged when every box is ticked: ticks prove nothing.
    """

    kind = "checklist"

    def __init__(self, name: str, heading: Message, items: tuple[tuple[str, Message], ...], left: Message) -> None:
        self.name = name
        self.heading = heading
        self.items = items
        self.left = left


class Countdown:
    """A wait of `length`, [s], that the page's script can start: the time it ends is kept across lock and restart.

    `label` says what is waited for, `after` what to do when the time is over; `begin` and `end` are on its buttons, where
    "Start now" could be taken for leave to do something else.
    """

    kind = "countdown"

    def __init__(
        self,
        name: str,
        label: Message,
        length: float,
        after: Message,
        begin: Message | None = None,
        end: Message | None = None,
    ) -> None:
        self.name = name
        self.label = label
        self.length = length
        self.after = after
        self.begin = begin
        self.end = end


class Draft:
    """A text that the reader may copy and send to somebody."""

    kind = "draft"

    def __init__(self, name: str, label: Message, message: Message) -> None:
        self.name = name
        self.label = label
        self.message = message


class Line:
    """One line of a card: `key` names it for good, so that a kept answer can be held against a new one.

    `leads` is the question that it comes from, carrying what was put to it; `takes` are (field of that question, field
    of this one) pairs that a change made there may be taken back into. `state` is "", `doubt` or `missing`.
    """

    def __init__(
        self,
        key: str,
        label: Message,
        value: object,
        leads: "Next | None" = None,
        takes: tuple[tuple[str, str], ...] = (),
        state: str = "",
    ) -> None:
        self.key = key
        self.label = label
        self.value = value
        self.leads = leads
        self.takes = takes
        self.state = state


class Card:
    """Lines that belong together under a heading; a value is a Message, a Measured, a Plain or citation-like text."""

    kind = "card"

    def __init__(self, name: str, heading: Message, lines: tuple[Line, ...]) -> None:
        self.name = name
        self.heading = heading
        self.lines = lines


class Drawing:
    """A line drawing: `shapes` are (form, whole-number coordinates, style, label or None).

    Forms: `line` (x1 y1 x2 y2 ...; a polyline), `area` (a closed polygon), `circle` (x y r), `text` (x y),
    `scale` (x1 y1 x2 y2; label is a `drawings.paper.Scale`, whose round numbers hang on the reader's units).
    Coordinates are whole numbers, since the last bits of the two maths libraries differ.
    """

    kind = "drawing"

    def __init__(
        self,
        name: str,
        width: int,
        height: int,
        title: Message,
        description: Message,
        shapes: tuple[tuple[str, tuple[int, ...], str, object], ...],
    ) -> None:
        self.name = name
        self.width = width
        self.height = height
        self.title = title
        self.description = description
        self.shapes = shapes


class Verdict:
    """Whether a limit is kept: `inside`, `outside` or `unclear`; or a `warning`, where something may go wrong within it.

    `message` follows that word, short enough to stay in sight; `remedy` says what would change the verdict.
    """

    def __init__(self, state: str, message: Message, remedy: Message | None = None) -> None:
        self.state = state
        self.message = message
        self.remedy = remedy


class Next:
    """A question to ask next, carrying values: `carried` is ((field of that calculator, Measured or text), ...)."""

    def __init__(self, calculator: str, message: Message, carried: tuple[tuple[str, object], ...]) -> None:
        self.calculator = calculator
        self.message = message
        self.carried = carried


def carry(name: str, value: Measured, low: float, high: float) -> tuple[tuple[str, object], ...]:
    """Return a value to carry, or none where the next question would refuse it: it takes low to high, [coherent SI]."""
    return ((name, value),) if low <= numerals.settle(value.value) <= high else ()


class Answer:
    """Everything an answer shows. The first of `results` is the headline.

    `machine` is ((field, Measured or text), ...) of a machine that the reader may keep on the phone; `record` is the
    kind of record that what was typed may be kept as.
    """

    def __init__(
        self,
        results: tuple[object, ...],
        working: tuple[Message, ...] = (),
        notes: tuple[Message, ...] = (),
        cautions: tuple[Message, ...] = (),
        sources: tuple[Source, ...] = (),
        next_questions: tuple[Next, ...] = (),
        verdict: Verdict | None = None,
        machine: tuple[tuple[str, object], ...] = (),
        record: str = "",
    ) -> None:
        self.results = results
        self.working = working
        self.notes = notes
        self.cautions = cautions
        self.sources = sources
        self.next_questions = next_questions
        self.verdict = verdict
        self.machine = machine
        self.record = record


class Refusal(ValueError):
    """No number, and why: the field at fault ("" if no one field is), the sentence beside it, what to ask instead."""

    def __init__(self, field: str, message: Message, next_questions: tuple[Next, ...] = ()) -> None:
        super().__init__(field + ": " + message.id)
        self.field = field
        self.message = message
        self.next_questions = next_questions


# ---------------------------------------------------------------- the calculator


class Given:
    """What was asked, read: values in coherent SI, choices as words, and the unit each was typed in."""

    def __init__(self) -> None:
        self.values: dict[str, object] = {}
        self.units: dict[str, str] = {}
        self.typed: dict[str, str] = {}
        self.made: list[str] = []  # names filled in for the reader: by `prepare` or by a relation
        self.solved_for: str | None = None  # the blank that the question was about
        self.place = 0  # of a row among the rows of its field, counted from 1

    def has(self, name: str) -> bool:
        """Return whether `name` holds a value (typed, chosen or solved)."""
        return self.values.get(name) is not None

    def fill(self, name: str, value: object) -> None:
        """Fill in a blank that another field decides."""
        self.values[name] = value
        self.made.append(name)

    def number(self, name: str) -> float:
        """Return the value of a quantity field, [coherent SI]."""
        value = self.values[name]
        assert isinstance(value, (float, int))
        return value

    def word(self, name: str) -> str:
        """Return the chosen word or typed text of a field, or "" if blank."""
        value = self.values.get(name)
        return value if isinstance(value, str) else ""

    def rows(self, name: str) -> "list[Given]":
        """Return the filled rows of a repeated field."""
        value = self.values.get(name)
        return value if isinstance(value, list) else []

    def measured(self, name: str, quantity: str | None = None) -> Measured:
        """Return a quantity field as a Measured that is shown in the unit it was typed in."""
        return Measured(self.number(name), quantity or name, None, self.units.get(name))


class Calculator:
    """A question a welder asks.

    `prepare(given)` may fill blanks that another field decides (and must say so in the answer); `answer(given)` is
    called once all required relations are closed, and returns the Answer or raises Refusal or OutOfRange.
    `english` holds the sentences of its own ids; they are looked up as `<name>.<id>`. `sources` are all it may name;
    `place` is where it stands in the list of questions, in the order of the work. `fold_from` names the field from
    which on the form is folded away: what most readers leave as it is; `folds` are those from which a further fold
    begins, each with its own heading, `fold.<f>`. `machine` names the fields, last in the form,
    that a machine kept on the phone fills in: they are folded too, since nobody types them twice; `machine_when` is the
    choice that they hang on, if any. Without `moves` it is not told which number moves the answer most.
    """

    def __init__(
        self,
        name: str,
        fields: tuple[Field, ...],
        answer: "Callable[[Given], Answer]",
        english: dict[str, str],
        sources: tuple[Source, ...],
        place: int,
        relations: tuple[Relation, ...] = (),
        prepare: "Callable[[Given], None] | None" = None,
        fold_from: str = "",
        machine: tuple[str, ...] = (),
        folds: tuple[str, ...] = (),
        machine_when: tuple[str, tuple[str, ...]] | None = None,
        moves: bool = True,
    ) -> None:
        self.name = name
        self.folds = folds
        self.fields = fields
        self.answer = answer
        self.english = english
        self.sources = sources
        self.place = place
        self.relations = relations
        self.prepare = prepare
        self.fold_from = fold_from
        self.machine = machine
        self.machine_when = machine_when
        self.moves = moves

    def field(self, name: str) -> Field:
        """Return the field of that name; KeyError if there is none."""
        for field in self.fields:
            if field.name == name:
                return field
        raise KeyError(name)
