"""Finds questions by the words a welder uses: those of its title and question, and each calculator's own list."""

from webapp import shelf_entries

_EXACT, _BEGUN, _NEARLY = 6, 4, 2
_MOST_TELLING = 24  # how much more than a word that stands everywhere one may count that stands once (halved)
_IN_TITLE = 1  # more, where the word stands in the title
_LEAST_BEGUN = 2  # letters that already point to a word
_LEAST_NEARLY = 5  # letters of which one may be wrong
_LONGEST_ENDING = 3

_found_by: dict[str, list[tuple[str, int, str, str]]] = {}


def _words(language: str) -> list[tuple[str, int, str, str]]:
    """Return (name, place, words of its title, its other words) of every calculator; made when first asked for.

    In another language the English words find too: half of a trade's words are never translated.
    """
    if language not in _found_by:
        found = []
        english = {entry[0]: entry[4] for entry in shelf_entries.entries()}
        for name, place, title, question, words in shelf_entries.entries(language):
            others = " ".join(plain(words + " " + question))
            if english[name] != words:
                others += " " + " ".join(plain(english[name]))
            found.append((name, place, " ".join(plain(title)), others))
        _found_by[language] = found
    return _found_by[language]


def find(typed: str, language: str = "en") -> list[str]:
    """Return the names of the calculators that fit the words typed, the best first.

    A word that few calculators have says more than one that most have: "spatter" more than "weld".
    """
    entries = _words(language)
    scores = [0 for _ in entries]
    for word in plain(typed):
        fits = []
        for _, _, in_title, others in entries:
            best = _fit(word, in_title)
            fits.append(max(best + _IN_TITLE if best else 0, _fit(word, others)))
        having = len([fit for fit in fits if fit])
        for index, fit in enumerate(fits):
            scores[index] += fit * (_MOST_TELLING // (having + 1) + 1)
    ranked = [(-scores[index], entry[1], entry[0]) for index, entry in enumerate(entries) if scores[index]]
    ranked.sort()
    return [name for score, _, name in ranked if 2 * score <= ranked[0][0]]


def _fit(asked: str, words: str) -> int:
    """Return how well a word fits the best of `words` (separated by spaces), 0 if not at all."""
    framed = " " + words + " "
    if " " + asked + " " in framed:
        return _EXACT
    if len(asked) < _LEAST_BEGUN:
        return 0
    if " " + asked in framed:
        return _BEGUN
    if len(asked) >= _LEAST_NEARLY:
        for word in words.split(" "):
            if _one_slip(asked, word) or _ends_otherwise(asked, word):
                return _NEARLY
    return 0


def _ends_otherwise(asked: str, word: str) -> bool:
    """Return whether a word has another ending here: "cracking" for "crack"."""
    return len(word) >= _LEAST_NEARLY and len(asked) - len(word) <= _LONGEST_ENDING and asked.startswith(word)


def _one_slip(asked: str, word: str) -> bool:
    """Return whether one letter too many, too few, wrong or swapped with the next makes the difference."""
    short, long = (asked, word) if len(asked) <= len(word) else (word, asked)
    if len(short) < _LEAST_NEARLY - 1 or len(long) - len(short) > 1:
        return False
    at = 0
    while at < len(short) and short[at] == long[at]:
        at += 1
    if len(short) < len(long):
        return short[at:] == long[at + 1 :]
    if short[at + 1 :] == long[at + 1 :]:
        return True
    return short[at : at + 2] == long[at + 1 : at + 2] + long[at : at + 1] and short[at + 2 :] == long[at + 2 :]


def plain(text: str) -> list[str]:
    """Return the words of a text in plain small letters without accents, and without those that ask rather than name.

    A hyphen joins, and so does a slash between digits: "stick-out" is "stickout", "75/25" is "7525". Only ASCII letters
    and those of _ACCENTED are made small: the phone's Python knows no others.
    """
    out = ""
    for index, character in enumerate(text):
        if "A" <= character <= "Z":
            out += chr(ord(character) + 32)
        elif character in _JOINING or (
            character == "/" and _is_digit(text[index + 1 : index + 2]) and _is_digit(out[-1:])
        ):
            continue
        elif "a" <= character <= "z" or _is_digit(character):
            out += character
        elif character >= "\u00c0":
            at = _ACCENTED.find(character)
            out += character if at < 0 else _UNACCENTED[at]
        else:
            out += " "
    return [word for word in out.split(" ") if word and word not in ASKING]


def _is_digit(character: str) -> bool:
    return "0" <= character <= "9"


_JOINING = "-'\u2019"
# One letter of the second for each of the first: a phone's keyboard adds accents, a glove leaves them out.
_ACCENTED = "\u00e1\u00e9\u00ed\u00f3\u00fa\u00fc\u00f1\u00c1\u00c9\u00cd\u00d3\u00da\u00dc\u00d1"
_UNACCENTED = "aeiouunaeiouun"
# Words that stand in any question.
ASKING = (
    "a", "an", "and", "any", "are", "at", "be", "can", "did", "do", "does", "for", "from", "get", "gets", "give",
    "gives", "go", "goes", "have", "how", "i", "if", "in", "is", "it", "its", "keep", "keeps", "many", "may", "me",
    "much", "must", "my", "need", "of", "on", "or", "so", "take", "takes", "that", "the", "there", "they", "this",
    "to", "too", "what", "when", "where", "which", "why", "will", "with", "you",
    # Spanish, without accents
    "al", "como", "con", "cual", "cuando", "cuanta", "cuantas", "cuanto", "cuantos", "de", "del", "debe", "debo",
    "donde", "el", "en", "es", "esta", "este", "esto", "hay", "la", "las", "lo", "los", "mi", "mis", "para", "pero",
    "por", "puede", "puedo", "que", "se", "si", "su", "sus", "tan", "tengo", "tiene", "un", "una", "y", "ya",
)  # fmt: skip
