"""JSON text with a fixed order and ASCII only, the same from both Pythons (json.dumps is not)."""

from calculators import numerals


class Pairs:
    """A JSON object: its members in the order they are written."""

    def __init__(self, *members: tuple[str, object]) -> None:
        self.members = list(members)

    def add(self, name: str, value: object) -> None:
        """Append a member."""
        self.members.append((name, value))


def to_json(value: object) -> str:
    """Return JSON text of Pairs, lists, tuples, text, numbers, booleans and None."""
    if value is None:
        return "null"
    if value is True:
        return "true"
    if value is False:
        return "false"
    if isinstance(value, str):
        return _quoted(value)
    if isinstance(value, int):
        return str(value)
    if isinstance(value, float):
        return numerals.plain(value)
    if isinstance(value, Pairs):
        return "{" + ", ".join(_quoted(name) + ": " + to_json(member) for name, member in value.members) + "}"
    if isinstance(value, (list, tuple)):
        return "[" + ", ".join(to_json(member) for member in value) + "]"
    raise TypeError("no JSON for this kind of value")


_PLAIN = "".join(chr(code) for code in range(32, 127) if chr(code) not in ('"', "\\"))
_SHORT = {'"': '\\"', "\\": "\\\\", "\n": "\\n", "\r": "\\r", "\t": "\\t"}


def _quoted(text: str) -> str:
    if not text.strip(_PLAIN):
        return '"' + text + '"'
    out = []
    for character in text:
        code = ord(character)
        if character in _SHORT:
            out.append(_SHORT[character])
        elif 32 <= code < 127:
            out.append(character)
        elif code > 0xFFFF:
            code -= 0x10000
            out.append("\\u" + _hex4(0xD800 + (code >> 10)) + "\\u" + _hex4(0xDC00 + (code & 0x3FF)))
        else:
            out.append("\\u" + _hex4(code))
    return '"' + "".join(out) + '"'


def _hex4(code: int) -> str:
    digits = "0123456789abcdef"
    return digits[code >> 12 & 15] + digits[code >> 8 & 15] + digits[code >> 4 & 15] + digits[code & 15]
