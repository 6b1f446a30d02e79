"""Sentences for the frames of pages whose content the page's script makes: as HTML, and as attributes that it reads."""

from calculators.contract import Source, say
from webapp.catalogue import Context, sentence
from webapp.markup import escape, tag


class Wording:
    """The catalogue's plain sentences, escaped."""

    def __init__(self, context: Context) -> None:
        self.context = context

    def __call__(self, id: str) -> str:
        return escape(sentence(say(id), self.context))

    def given(self, names: tuple[str, ...], prefix: str) -> str:
        """Return sentences as attributes that the page's script reads: data-<name>="…"."""
        return "".join([" data-" + name + '="' + self(prefix + name) + '"' for name in names])


def source(each: Source, context: Context) -> str:
    """Return a source as a list item: its title as published, and its standing in the reader's language."""
    standing = escape(sentence(say("standing." + each.standing), context))
    return tag("li", tag("cite", escape(each.title), 'lang="en"') + " " + tag("span", standing, 'class="standing"'))
