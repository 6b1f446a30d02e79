"""Finds questions by the words a welder uses: those of its title and question, and each calculator's own list."""

from webapp import shelf_entries

_EXACT, _BEGUN, _NEARLY = 6, 4, 2
_IN_TITLE = 1  # more, where the word stands in the title
_LEAST_BEGUN = 2  # letters that already point to a word
_LEAST_NEARLY = 5  # letters of which one may be wrong

_found_by: list[tuple[str, int, str, str]] = []


def _words() -> list[tuple[str, int, str, str]]:
    """Return (name, place, words of its title, its other words) of every calculator; made when first asked for."""
    if not _found_by:
        for name, place, title, question, words in shelf_entries.entries():
            _found_by.append((name, place, " ".join(plain(title)), " ".join(plain(words + " " + question))))
    return _found_by


def find(typed: str) -> list[str]:
    """Return the names of the calculators that fit most of the words typed, the best first."""
    asked = plain(typed)
    ranked = []
    for name, place, in_title, others in _words():
        fitted, score = 0, 0
        for word in asked:
            best = _fit(word, in_title)
            best = max(best + _IN_TITLE if best else 0, _fit(word, others))
            if best:
                fitted, score = fitted + 1, score + best
        if fitted:
            ranked.append((-fitted, -score, place, name))
    ranked.sort()
    return [row[3] for row in ranked if row[0] == ranked[0][0]]


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
            if _one_slip(asked, word):
                return _NEARLY
    return 0


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
    """Return the words of a text in plain small letters, without those that ask rather than name.

    A hyphen joins: "stick-out" is "stickout". Only ASCII letters are made small: the phone's Python knows no others.
    """
    out = ""
    for character in text:
        if "A" <= character <= "Z":
            out += chr(ord(character) + 32)
        elif character in "-'\u2019":
            continue
        elif "a" <= character <= "z" or "0" <= character <= "9" or character >= "\u00c0":
            out += character
        else:
            out += " "
    return [word for word in out.split(" ") if word and word not in ASKING]


# Words that stand in any question.
ASKING = (
    "a", "an", "and", "are", "at", "can", "do", "does", "for", "from", "give", "gives", "go", "goes", "how", "i", "in",
    "is", "it", "its", "may", "me", "much", "must", "my", "need", "of", "on", "or", "so", "take", "takes", "that",
    "the", "this", "to", "what", "where", "which", "why", "will", "with", "you",
)  # fmt: skip
