"""Sentences for the frames of pages whose content the page's script makes: as HTML, and as attributes that it reads."""

from calculators.contract import say
from webapp.catalogue import Context, sentence
from webapp.markup import escape


class Wording:
    """The catalogue's plain sentences, escaped."""

    def __init__(self, context: Context) -> None:
        self.context = context

    def __call__(self, id: str) -> str:
        return escape(sentence(say(id), self.context))

    def given(self, names: tuple[str, ...], prefix: str) -> str:
        """Return sentences as attributes that the page's script reads: data-<name>="…"."""
        return "".join([" data-" + name + '="' + self(prefix + name) + '"' for name in names])
