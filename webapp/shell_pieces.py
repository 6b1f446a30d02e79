"""The shell's pieces, made by Jinja. The phone's bundle carries a file of this name with the pieces as literals."""

import hashlib
import os

import jinja2

from calculators.contract import say
from webapp.catalogue import PSEUDO, Context, sentence

_here = os.path.dirname(os.path.abspath(__file__))
_static = os.path.join(os.path.dirname(_here), "static")
LANGUAGES = ("en", PSEUDO)


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
        language="en" if language == PSEUDO else language,
        asset=lambda path: "static/" + path + "?v=" + fingerprint(path),
    )
    for slot in ("@of-records@", "@head@", "@title@", "@main@"):
        text = text.replace(slot, "@scripts@")
    return tuple(text.split("@scripts@"))


PIECES = {language: _pieces(language) for language in LANGUAGES}
