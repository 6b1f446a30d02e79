"""Sentences in other languages than English, loaded when asked for; on the phone they may not be there at all."""

LANGUAGES = ("es",)
SHARED = "shared"

_loaded: dict[str, dict[str, str]] = {}


def words_of(language: str, module: str) -> dict[str, str]:
    """Return the sentences of a calculator's module, or the shared ones, in a language; none if they are not there."""
    place = "webapp.words." + language + "." + module
    if place not in _loaded:
        try:
            _loaded[place] = __import__(place, None, None, ("WORDS",)).WORDS
        except ImportError:
            _loaded[place] = {}
    return _loaded[place]


def is_here(language: str) -> bool:
    """Return whether there are sentences in that language."""
    return bool(words_of(language, SHARED))
