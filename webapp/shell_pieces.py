"""The shell's pieces, made by Jinja. The phone's bundle carries a file of this name with the pieces as literals.

Those of another language are carried with its words.
"""

import hashlib
import os

import jinja2

from calculators.contract import say
from webapp import translations
from webapp.catalogue import ENGLISH, PSEUDO, Context, sentence

_here = os.path.dirname(os.path.abspath(__file__))
_static = os.path.join(os.path.dirname(_here), "static")
LANGUAGES = (ENGLISH, PSEUDO)


def fingerprint(path: str) -> str:
    """Return a short hash of a file under static/, so that an address changes with its content."""
    with open(os.path.join(_static, path), "rb") as handle:
        return hashlib.sha256(handle.read()).hexdigest()[:12]


def _pieces(language: str) -> tuple[str, ...]:
    context = Context(language, "us", "")
    environment = jinja2.Environment(
        loader=jinja2.FileSystemLoader(os.path.join(_here, "templates")),
        autoescape=True,
        undefined=jinja2.StrictUndefined,
        trim_blocks=True,
        lstrip_blocks=True,
    )
    text = environment.get_template("shell.html").render(
        say=lambda id: sentence(say(id), context),
        language=ENGLISH if language == PSEUDO else language,
        languages=(ENGLISH, *translations.LANGUAGES),
        asset=lambda path: "static/" + path + "?v=" + fingerprint(path),
    )
    for slot in ("@of-records@", "@head@", "@title@", "@main@"):
        text = text.replace(slot, "@scripts@")
    return tuple(text.split("@scripts@"))


PIECES = {language: _pieces(language) for language in LANGUAGES}
# Carried with the language.
TRANSLATED = {language: _pieces(language) for language in translations.LANGUAGES}


def pieces(language: str) -> tuple[str, ...]:
    """Return the pieces in a language that is here."""
    return PIECES[language] if language in PIECES else TRANSLATED[language]
