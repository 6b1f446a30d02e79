"""Asking another calculator, as its page would be asked: one truth for every number that two pages show."""

from calculators import asking, numerals, units
from calculators.contract import Answer, Measured, Next, Number, Refusal, say

TYPE_CHECKING = False
if TYPE_CHECKING:
    Carried = tuple[tuple[str, object], ...]


class Asked:
    """The reply of the calculator `name` to what is carried to it: ((field, Measured or text), ...).

    `fields` are (field there, field here): what is wrong there is said beside the field here that it came from.
    """

    def __init__(self, name: str, carried: "Carried", fields: tuple[tuple[str, str], ...] = ()) -> None:
        self.name = name
        self.carried = carried
        self.reply = asking.answer_only(asking.named(name), [(field, _typed(value)) for field, value in carried])
        for field, message in self.reply.errors:
            raise Refusal(dict(fields).get(field, ""), message, self.reply.next_questions)

    def answer(self) -> Answer:
        """Return its answer; what is carried has to be all that it waits for."""
        assert self.reply.answer is not None, self.name
        return self.reply.answer

    def number(self, name: str) -> Number:
        """Return one of the numbers of its answer, under the label that it has there."""
        for result in self.answer().results:
            if isinstance(result, Number) and result.name == name:
                if result.label is None:
                    result.label = say(self.name + ".result." + name)
                return result
        raise KeyError(name)

    def leads(self) -> Next:
        """Return the link that opens it with the same question."""
        return Next(self.name, say(self.name + ".title"), self.carried)


def _typed(value: object) -> str:
    if not isinstance(value, Measured):
        return str(value)
    unit = value.quantity.si if value.unit is None else value.unit
    return numerals.plain(units.from_coherent(value.value, unit)) + " " + unit
