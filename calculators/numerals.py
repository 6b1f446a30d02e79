"""Numbers to text and text to numbers, the same on every Python.

CPython and MicroPython print and round some floats differently, and silently. Everything here is exact
integer arithmetic on the float's own bits, so that both give the same characters and the same doubles.
"""

import math

MOST_DIGITS_READ = 15  # below 2**53, so int -> float is exact in both Pythons
MOST_FIGURES = 10  # beyond this the guard rounding below is no longer trustworthy
_GUARD = 13
_TENS = tuple(10**k for k in range(40))  # whole numbers; all that values of the trade call for
_POWERS_OF_TEN = tuple(float(10**k) for k in range(23))  # every one an exact double
_THIN_SPACE = "\u202f"  # groups thousands without looking like a decimal mark in any country
_VULGAR = (
    ("\u00bd", "1/2"),
    ("\u00bc", "1/4"),
    ("\u00be", "3/4"),
    ("\u215b", "1/8"),
    ("\u215c", "3/8"),
    ("\u215d", "5/8"),
    ("\u215e", "7/8"),
)


_PLAIN = "".join(chr(code) for code in range(32, 127))
CURRENCIES = ("$", "\u20ac", "\u00a3")


class BadNumber(ValueError):
    """Text that cannot be read as one number; `reason` is a message id, `readings` what it might mean."""

    def __init__(self, reason: str, readings: tuple[str, ...] = ()) -> None:
        super().__init__(reason)
        self.reason = reason
        self.readings = readings


def all_digits(text: str) -> bool:
    """Return whether text is one or more of 0 to 9 (str.isdigit takes other scripts on CPython only)."""
    if not text:
        return False
    return all(character in "0123456789" for character in text)


def tidy(text: str) -> str:
    """Return text with no-break spaces, typographic minus and vulgar fractions made plain, ends trimmed."""
    if not text.strip(_PLAIN):
        return text.strip(" ")  # nothing to make plain, as nearly always
    for space in ("\u00a0", "\u202f", "\u2009", "\t", "\n", "\r", "\x0b", "\x0c"):
        text = text.replace(space, " ")
    # The kelvin sign is the one letter that only CPython makes an ASCII letter of when it lowers.
    text = text.replace("\u2212", "-").replace("\u2044", "/").replace("\u212a", "K")
    for character, fraction in _VULGAR:
        text = text.replace(character, " " + fraction)
    return text.strip(" ")


def split_unit(text: str) -> tuple[str, str]:
    """Return (number part, unit part) of a typed quantity such as `24 V`, `3/16"`, `1e3 mm`, `$4.50/lb`.

    The sign of a currency before or behind the number is left off: money has no unit here.
    """
    text = tidy(text)
    if text[:1] in CURRENCIES:
        text = text[1:]
    position = 0
    while position < len(text):
        character = text[position]
        if character in "0123456789.,+-/ " or (character in "eE" and _is_exponent(text, position)):
            position += 1
        else:
            break
    number, unit = text[:position].strip(" "), text[position:].strip(" ")
    if unit[:1] in CURRENCIES:
        unit = unit[1:].strip(" ")
    if unit and number[-1:] == "/":
        number, unit = number[:-1].strip(" "), "/" + unit
    return number, unit


def names_money(text: str) -> bool:
    """Return whether the sign of a currency stands in text."""
    return any(sign in text for sign in CURRENCIES)


def _is_exponent(text: str, position: int) -> bool:
    after = text[position + 1 : position + 3]
    return position > 0 and text[position - 1] in "0123456789." and all_digits(after.lstrip("+-")[:1])


def parse(text: str) -> float | None:
    """Read a number: None for an empty box, a float, or BadNumber.

    Takes `.` or `,` as the decimal mark, spaces between digits, fractions (`3/16`, `1 3/16`, `1-3/16`) and
    exponents. One comma before exactly three digits, or two different marks, could mean two numbers a
    thousand times apart: that is asked about, never guessed.
    """
    text = tidy(text)
    if text == "":
        return None
    if "/" in text:
        return _parse_fraction(text)
    return _parse_decimal(text)


def _parse_fraction(text: str) -> float:
    sign = 1.0
    if text[0] in "+-":
        sign = -1.0 if text[0] == "-" else 1.0
        text = text[1:].strip(" ")
    top, _, bottom = text.partition("/")
    words = [word for word in top.replace("-", " ").split(" ") if word]
    bottom = bottom.strip(" ")
    if not words or len(words) > 2 or not all_digits(bottom):
        raise BadNumber("number.fraction")
    if any(not all_digits(word) for word in words):
        raise BadNumber("number.fraction")
    if any(len(word) > 6 for word in words) or len(bottom) > 6 or int(bottom) == 0:
        raise BadNumber("number.fraction")
    whole = int(words[0]) if len(words) == 2 else 0
    return sign * ((whole * int(bottom) + int(words[-1])) / int(bottom))


def _parse_decimal(text: str) -> float:
    original = text
    sign = 1.0
    if text[0] in "+-":
        sign = -1.0 if text[0] == "-" else 1.0
        text = text[1:]
    text, exponent = _take_exponent(text.replace(" ", ""))
    whole, fraction = _split_at_mark(text)
    if not all_digits(whole + fraction):
        raise BadNumber("number.unreadable")
    digits = (whole + fraction).lstrip("0")
    exponent -= len(fraction)
    if not digits:
        return 0.0
    trimmed = digits.rstrip("0")
    exponent += len(digits) - len(trimmed)
    if len(trimmed) > MOST_DIGITS_READ or exponent > 22 or exponent < -22:
        raise BadNumber("number.too-long")
    if "," in original and "e" in original.lower():
        raise BadNumber("number.unreadable")
    magnitude = float(int(trimmed))
    return sign * (magnitude * _POWERS_OF_TEN[exponent] if exponent >= 0 else magnitude / _POWERS_OF_TEN[-exponent])


def _take_exponent(text: str) -> tuple[str, int]:
    at = text.lower().find("e")
    if at < 0:
        return text, 0
    tail = text[at + 1 :]
    negative = tail[:1] == "-"
    if tail[:1] in ("+", "-"):
        tail = tail[1:]
    if not all_digits(tail):
        raise BadNumber("number.unreadable")
    if len(tail) > 3:
        raise BadNumber("number.too-long")
    return text[:at], -int(tail) if negative else int(tail)


def _split_at_mark(text: str) -> tuple[str, str]:
    """Return (digits before, digits after) the decimal mark; ask where the mark could be either."""
    commas = len(text.split(",")) - 1
    points = len(text.split(".")) - 1
    if commas and points:
        last = max(text.rfind(","), text.rfind("."))
        raise BadNumber("number.two-marks", (_digits_only(text[:last]) + "." + _digits_only(text[last:]),))
    if commas > 1 or points > 1:
        raise BadNumber("number.two-marks", (_digits_only(text),))
    if commas:
        whole, _, fraction = text.partition(",")
        if len(fraction) == 3 and whole.lstrip("0") != "":
            raise BadNumber("number.ambiguous", (whole + fraction, whole + "." + fraction))
        return whole, fraction
    whole, _, fraction = text.partition(".")
    return whole, fraction


def _digits_only(text: str) -> str:
    return "".join(character for character in text if character in "0123456789")


def _round_quotient(top: int, bottom: int) -> int:
    """Return top/bottom to the nearest integer, halves up; both positive."""
    return (2 * top + bottom) // (2 * bottom)


def _decimal(value: float, figures: int) -> tuple[int, int]:
    """Return (mantissa of exactly `figures` digits, exponent of its last digit) of value > 0, exactly."""
    mantissa, binary = math.frexp(value)
    whole = int(mantissa * 9007199254740992.0)
    binary -= 53
    top, bottom = (whole * 2**binary, 1) if binary >= 0 else (whole, 2**-binary)
    exponent = math.floor(math.log10(value)) - figures + 1  # a guess, corrected below
    while True:
        power = exponent if exponent >= 0 else -exponent
        ten = _TENS[power] if power < len(_TENS) else 10**power
        scaled = _round_quotient(top, bottom * ten) if exponent >= 0 else _round_quotient(top * ten, bottom)
        if scaled < _TENS[figures - 1]:
            exponent -= 1
        elif scaled >= _TENS[figures]:
            exponent += 1
        else:
            return scaled, exponent


def _settled(value: float, figures: int) -> tuple[int, int]:
    """Round first to 13 figures, then to `figures`: swallows the last-bit noise between maths libraries."""
    mantissa, exponent = _decimal(value, _GUARD)
    mantissa = _round_quotient(mantissa, _TENS[_GUARD - figures])
    exponent += _GUARD - figures
    if mantissa == _TENS[figures]:
        mantissa //= 10
        exponent += 1
    return mantissa, exponent


def is_finite(value: float) -> bool:
    """Return whether value is neither infinite nor not-a-number."""
    return value == value and value not in (math.inf, -math.inf)


def settle(value: float, figures: int = MOST_FIGURES) -> float:
    """Return value rounded to `figures` significant figures (1 to 10): what every decision must compare."""
    if value == 0 or not is_finite(value):
        return value
    mantissa, exponent = _settled(abs(value), figures)
    if exponent > 22 or exponent < -22:
        return value
    size = float(mantissa)
    size = size * _POWERS_OF_TEN[exponent] if exponent >= 0 else size / _POWERS_OF_TEN[-exponent]
    return -size if value < 0 else size


def significant(value: float, figures: int = 4, group: bool = True) -> str:
    """Return value with `figures` significant figures, trailing zeros of the fraction dropped."""
    if not is_finite(value):
        raise ValueError("only finite numbers become text")
    if value == 0:
        return "0"
    sign = "\u2212" if group and value < 0 else "-" if value < 0 else ""
    mantissa, exponent = _settled(abs(value), figures)
    digits = str(mantissa)
    point = figures + exponent  # digits before the decimal mark
    if point > 12 or point <= -6:
        tail = digits[1:].rstrip("0")
        return sign + digits[0] + ("." + tail if tail else "") + "e" + str(point - 1)
    if point <= 0:
        whole, fraction = "0", "0" * -point + digits
    elif point >= figures:
        whole, fraction = digits + "0" * (point - figures), ""
    else:
        whole, fraction = digits[:point], digits[point:]
    fraction = fraction.rstrip("0")
    return sign + (_grouped(whole) if group else whole) + ("." + fraction if fraction else "")


def fixed(value: float, places: int) -> str:
    """Return value with exactly `places` decimals, halves up on the 13-figure value."""
    if not is_finite(value):
        raise ValueError("only finite numbers become text")
    mantissa, exponent = _decimal(abs(value), _GUARD) if value != 0 else (0, 0)
    shift = exponent + places
    mantissa = mantissa * 10**shift if shift >= 0 else _round_quotient(mantissa, 10**-shift)
    digits = str(mantissa)
    if len(digits) <= places:
        digits = "0" * (places + 1 - len(digits)) + digits
    sign = "\u2212" if value < 0 and mantissa != 0 else ""
    if places == 0:
        return sign + _grouped(digits)
    return sign + _grouped(digits[:-places]) + "." + digits[-places:]


def plain(value: float) -> str:
    """Return value with ten figures and no grouping: for addresses and JSON."""
    return significant(value, MOST_FIGURES, group=False)


def _grouped(whole: str) -> str:
    if len(whole) <= 4:
        return whole
    parts: list[str] = []
    while len(whole) > 3:
        parts.insert(0, whole[-3:])
        whole = whole[:-3]
    parts.insert(0, whole)
    return _THIN_SPACE.join(parts)
