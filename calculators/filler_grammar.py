"""Reading the name of a filler part by part, or finding which part of it is wrong and what may stand there.

The rows of symbols are in facts/fillers.py and facts/fillers_alloy.py. Hyphens, spaces and small letters do not count.
"""

from calculators import numerals
from calculators.facts import fillers, fillers_alloy

TYPE_CHECKING = False
if TYPE_CHECKING:
    Wrong = tuple[int, int, int, bool]
    Way = tuple[int, int, tuple[str, ...], Wrong | None]

FORMS = fillers.FORMS + fillers_alloy.FORMS
_MOST_WRONG = 4  # characters; more of them wrong says little about what was meant
_LEAST_RIGHT = 2
_LEFT_OUT = " _-–—‐‑"
_PARTS = dict(fillers.PARTS)


def _plain(part: str) -> str:
    return part.lstrip(" -")


def _upper(text: str) -> str:
    """Return ASCII letters as capitals; the two Pythons differ about all others."""
    return "".join([chr(ord(letter) - 32) if "a" <= letter <= "z" else letter for letter in text])


_SYMBOLS = {slot: tuple(slot.split(" ")) for row in FORMS for slot in row[1:]}
_CAPITALS = {symbol: _upper(symbol) for slot in _SYMBOLS for symbol in _SYMBOLS[slot]}


class Class:
    """A valid name: its system, and (part, symbol) of each part that it has, as its standard writes it."""

    def __init__(self, row: tuple[str, ...], symbols: tuple[str, ...]) -> None:
        self.system = row[0]
        self.name = ""
        self.parts: list[tuple[str, str]] = []
        names = _PARTS[row[0]]
        for place in range(len(symbols)):
            symbol = symbols[place]
            if symbol:
                part = _plain(names[place])
                between = names[place][: len(names[place]) - len(part)]
                wire_alone = part == "type" and between == " " and self.name[-1:] == "G"
                self.name += symbol if wire_alone else between + symbol
                self.parts.append((part, symbol))

    def symbol(self, part: str) -> str:
        """Return the symbol of a part, or "" where the name lacks it."""
        return dict(self.parts).get(part, "")


class Fault:
    """What is wrong with a name.

    `kind` is wrong, missing, extra, elsewhere or start; `before` is what was typed before, `typed` what stands there
    instead, `part` the name of the part, `choices` what may stand there, `standard` where such a class is at home.
    """

    def __init__(
        self, kind: str, before: str = "", typed: str = "", part: str = "", choices: tuple[str, ...] = (), standard: str = ""
    ) -> None:  # fmt: skip
        self.kind = kind
        self.before = before
        self.typed = typed
        self.part = part
        self.choices = choices
        self.standard = standard


class Reading:
    """One typed name, read: `found` is the Class, or else `fault` says what is wrong."""

    def __init__(self, typed: str) -> None:
        self.standard, self.typed = _standard_and_name(numerals.tidy(typed))
        self.text = ""
        self._at: list[int] = []  # where in what was typed each letter of `text` stands
        for place in range(len(self.typed)):
            if self.typed[place] not in _LEFT_OUT:
                self.text += _upper(self.typed[place])
                self._at.append(place)
        self._at.append(len(self.typed))
        self._held = [row for row in FORMS if self.standard in ("", row[0])]
        self._rows = [row for row in self._held if any(self.text.startswith(each) for each in _SYMBOLS[row[1]])]
        found = self.all()
        self.found = found[0] if found else None
        self.fault = None if found else self._elsewhere() or self._fault()

    def all(self) -> list[Class]:
        """Return every way to read it; the tests see to it that there is never more than one."""
        found = []
        for row in self._rows:
            for symbols, wrong in self._ways(row, False):
                if wrong is None:
                    found.append(Class(row, symbols))
        return found

    def _ways(self, row: tuple[str, ...], forgiving: bool) -> "list[tuple[tuple[str, ...], Wrong | None]]":
        """Return (symbols, what is wrong or None) of each way through a row; a wrong part has no symbol.

        What is wrong is one part, or with two of them all from the first one on: (place, from, to, whether all).
        """
        found: list[tuple[tuple[str, ...], Wrong | None]] = []
        text = self.text
        open_: list[Way] = [(1, 0, (), None)]
        while open_:
            place, position, symbols, wrong = open_.pop()
            left = len(text) - position
            if place == len(row):
                if left == 0:
                    found.append((symbols, wrong))
                elif forgiving and wrong is None and left <= _MOST_WRONG:
                    found.append((symbols, (0, position, len(text), False)))
                continue
            optional = False
            for symbol in _SYMBOLS[row[place]]:
                if symbol in ("~", ""):
                    open_.append((place + 1, position, symbols + ("",), wrong))
                    optional = True
                elif text.startswith(_CAPITALS[symbol], position):
                    open_.append((place + 1, position + len(symbol), symbols + (symbol,), wrong))
            if forgiving and wrong is None and place > 1 and not optional:
                found.append((symbols, (place, position, len(text), True)))
                for end in range(position, position + min(_MOST_WRONG, left) + 1):
                    open_.append((place + 1, end, symbols + ("",), (place, position, end, False)))
        return found

    # ------------------------------------------------------------ what is wrong

    def _elsewhere(self) -> Fault | None:
        """A class of a standard that this book does not hold must never be taken for another."""
        if not self._held:
            return Fault("elsewhere", standard=self.standard if self.standard[0] == "I" else "AWS " + self.standard)
        for standard, patterns in fillers.ELSEWHERE:
            for pattern in patterns.split(" "):
                if _begins(self.text, pattern):
                    return Fault("elsewhere", standard=standard)
        return None

    def _fault(self) -> Fault:
        """Find the row that fits but for one part, the fewer characters wrong and the later the better; or fits longest."""
        best: tuple[int, int, bool] | None = None
        rows: list[tuple[tuple[str, ...], int]] = []
        start = end = 0
        for row in self._rows:
            for _, wrong in self._ways(row, True):
                assert wrong is not None
                place, from_, to, all_ = wrong
                all_ = all_ or len(self.text) - to + from_ < _LEAST_RIGHT
                # Where the most is wrong that one part may hold, it is as likely that two are: the later then decides.
                rank = (_MOST_WRONG if all_ else to - from_, -from_, all_)
                if best is None or rank < best:
                    best, rows, start, end = rank, [], from_, to
                if rank == best and (row, place) not in rows:
                    rows.append((row, place))
        if best is None:
            return Fault("start")
        before = self.typed[: self._at[start]].strip(_LEFT_OUT)
        typed = self.typed[self._at[start] : self._at[end]].strip(_LEFT_OUT)
        whole = [row for row, place in rows if place == 0]
        inside = [(row, place) for row, place in rows if place]
        if whole:
            return Fault("extra", before, typed, "", _choices(self._may_follow(whole, start) + inside))
        part = _part(inside[0][0], inside[0][1])
        same = [(row, place) for row, place in inside if _part(row, place) == part]
        return Fault("wrong" if typed else "missing", before, typed, part, _choices(same))

    def _may_follow(self, rows: list[tuple[str, ...]], end: int) -> list[tuple[tuple[str, ...], int]]:
        """Return where the rows have parts that were left out and may follow a whole name."""
        found = []
        for row in rows:
            for symbols, wrong in self._ways(row, True):
                if wrong == (0, end, len(self.text), False):
                    last = max([place for place in range(len(symbols)) if symbols[place]])
                    found += [(row, place) for place in range(last + 2, len(row)) if "~" in row[place]]
        return found


def _part(row: tuple[str, ...], place: int) -> str:
    return _plain(_PARTS[row[0]][place - 1])


def _choices(rows: list[tuple[tuple[str, ...], int]]) -> tuple[str, ...]:
    found: list[str] = []
    for row, place in rows:
        for symbol in _SYMBOLS[row[place]]:
            if symbol not in ("~", "") and symbol not in found:
                found.append(symbol)
    return tuple(found)


def _begins(text: str, pattern: str) -> bool:
    if len(text) < len(pattern):
        return False
    for place in range(len(pattern)):
        if pattern[place] != text[place] and not (pattern[place] == "#" and "0" <= text[place] <= "9"):
            return False
    return True


def _standard_and_name(typed: str) -> tuple[str, str]:
    """Return the standard that a label prints beside a name, or "", and the name: `AWS A5.18: ER70S-6`, `ISO 14341-A-G 42 4`."""
    standard, name = "", []
    body = ""  # that the number after it belongs to
    for word in typed.split(" "):
        upper = _upper(word).replace("SFA-5", "A5").replace("SFA5", "A5")
        if upper in ("AWS", "ANSI", "ASME", "SFA"):
            continue
        if upper in ("ISO", "EN", "ENISO"):
            body = "ISO "
        elif upper.startswith("A5."):
            standard = upper[: 3 + _digits(upper[3:])]
        elif body and _digits(upper):
            number = upper[: _digits(upper)]
            rest = word[len(number) :]
            standard = "ISO 14341-A" if number == "440" else "ISO " + number
            if number == "14341":
                standard, rest = "ISO 14341-" + _upper(rest[1:2]), rest[2:]
            body = ""
            name.append(rest)
        else:
            name.append(word)
    return standard, " ".join([each for each in name if each])


def _digits(text: str) -> int:
    count = 0
    while count < len(text) and "0" <= text[count] <= "9":
        count += 1
    return count
