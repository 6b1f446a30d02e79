"""What a job asks of another calculator, in text pairs as its own page would be asked, and the lines that come of it."""

from calculators import asking, numerals, reading
from calculators.contract import Given, Line, Measured, Message, Next, Number, Words, say

TYPE_CHECKING = False
if TYPE_CHECKING:
    Pairs = list[tuple[str, str]]
    Takes = tuple[tuple[str, str], ...]

_METRIC = ("mm", "m", "kg", "L", "L/min", "m/min")


def _as_typed(given: Given, name: str) -> str:
    """Return what stands in a box together with the unit that was chosen beside it."""
    text, unit = given.typed[name], given.units.get(name, "")
    return text + " " + unit if unit and not numerals.split_unit(text)[1] else text


def _system(given: Given) -> str:
    """Return the units in which what one calculator found is put to the next: those that the job is typed in."""
    for each in [given] + given.rows("joints"):
        for name in ("thickness", "weld_length", "spool_left", "gas_left", "wire_diameter"):
            if name in each.units:
                return "si" if each.units[name] in _METRIC else "us"
    return "us"


class Told:
    """What the job says: boxes of the form as another calculator takes them, and the units they were typed in."""

    def __init__(self, given: Given) -> None:
        self.given = given
        self.system = _system(given)

    def pairs(self, takes: "Takes", row: Given | None = None) -> "Pairs":
        """Return (field there, text) of every (field there, field here) that is filled in here."""
        found = []
        for there, here in takes:
            holder = self.given
            if row is not None and here.startswith("joints-"):
                holder, here = row, here.split("-")[2]
            if not holder.has(here):
                continue
            if here in holder.typed:
                found.append((there, _as_typed(holder, here)))
            elif holder.word(here):  # what a choice is unless somebody says otherwise
                found.append((there, holder.word(here)))
        return found

    def carried(self, pairs: tuple[tuple[str, object], ...]) -> "Pairs":
        """Return what an answer carries on as text."""
        found = []
        for name, value in pairs:
            found.append((name, reading.as_typed(value, self.system) if isinstance(value, Measured) else str(value)))
        return found


class Asked:
    """A question put to the calculator `name`; `takes` are the fields that a change there may be taken back into."""

    def __init__(self, name: str, pairs: "Pairs", takes: "Takes" = ()) -> None:
        self.name = name
        self.takes = takes
        self.reply = asking.answer_only(asking.named(name), pairs)
        self.answer = self.reply.answer
        self.leads = Next(name, say(name + ".title"), tuple(pairs))

    def onward(self, name: str) -> "tuple[tuple[str, object], ...] | None":
        """Return what the answer, or the refusal, carries to the calculator `name`; None where it does not lead there."""
        questions = self.reply.next_questions if self.answer is None else self.answer.next_questions
        for each in questions:
            if each.calculator == name:
                return each.carried
        return None

    def result(self, name: str) -> Number | Words | None:
        """Return a result by its name, if there is one."""
        for result in self.answer.results if self.answer is not None else ():
            if isinstance(result, (Number, Words)) and result.name == name:
                return result
        return None

    def number(self, name: str) -> Number | None:
        """Return a number by its name, if there is one."""
        found = self.result(name)
        return found if isinstance(found, Number) else None

    def shown(self, number: Number) -> Message | Measured:
        """Return a number as its own page shows it, with its band."""
        values = (
            [number.value] if number.low is None or number.high is None else [number.value, number.low, number.high]
        )
        unit = self.reply.given.units.get(number.name)
        shown = [Measured(value, number.quantity.name, number.figures, unit) for value in values]
        return shown[0] if len(shown) == 1 else say("job.band", value=shown[0], low=shown[1], high=shown[2])

    def lines(self, names: tuple[str, ...], more: str = "") -> list[Line]:
        """Return a line for each of these results that there is; `more` is added to its key."""
        found = []
        for name in names:
            result = self.result(name)
            if result is None:
                continue
            label = result.label if result.label is not None else say(self.name + ".result." + name)
            value = self.shown(result) if isinstance(result, Number) else result.message
            found.append(Line(name + more, label, value, self.leads, self.takes))
        return found

    def line(self, key: str, label: Message, value: object, state: str = "") -> Line:
        """Return a line that leads to this question."""
        return Line(key, label, value, self.leads, self.takes, state)

    def trouble(self, key: str, label: Message, first: str = "") -> Line:
        """Return the line that says in this calculator's own words why it has no answer yet.

        `first` is the field of the job that it waits for where nothing at all is told.
        """
        if self.reply.state == "problem":
            return self.line(key, label, self.reply.errors[0][1], "doubt")
        waiting = self.reply.waiting or say("waiting.field", label=say("job.field." + first))
        return self.line(key, label, waiting, "missing")
