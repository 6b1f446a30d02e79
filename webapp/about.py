"""The About page: what the book is, every source with its standing, licences."""

from calculators.contract import say
from webapp import cautions, fragments, glossary, shelf, wording
from webapp.catalogue import Context, sentence
from webapp.markup import escape, tag

# Name and licence of what runs on the phone or on the server, as their own packages state it.
PARTS = (
    ("htmx", "Zero-Clause BSD"),
    ("MicroPython (WebAssembly build)", "MIT"),
    ("Flask", "BSD-3-Clause"),
    ("Pint", "BSD-3-Clause"),
    ("TinyDB", "MIT"),
    ("Cheroot", "BSD-3-Clause"),
    ("idb", "ISC"),
    ("segno", "BSD-3-Clause"),
)


def page(context: Context) -> str:
    """Return everything inside <main> of the About page."""

    def words(id: str) -> str:
        return escape(sentence(say(id), context))

    parts = "".join(
        tag("li", escape(sentence(say("about.part", name=name, licence=licence), context))) for name, licence in PARTS
    )
    return (
        tag("h1", words("about.title"))
        + tag("p", words("about.what"))
        + fragments.caution("about.caution", context)
        + tag("h2", words("about.keeps"))
        + tag("p", words("about.keeps.text"))
        + tag("p", tag("a", words("glossary.title"), 'class="action" href="glossary"'))
        + tag("h2", words("about.sources"))
        + tag("p", words("about.standings"))
        + _sources(context)
        + tag("h2", words("about.licence"))
        + tag("p", words("about.licence.text"))
        + tag("h2", words("about.parts"))
        + tag("ul", parts)
    )


def _sources(context: Context) -> str:
    """Return a fold for each question, then one for the cautions and one for the glossary."""
    listed = []
    for name in shelf.names():
        calculator = shelf.calculator(name)
        assert calculator is not None
        listed.append((name + ".title", calculator.sources))
    listed.append(("answer.cautions", tuple([each for each, _ in cautions.LIBRARY])))
    listed.append(("glossary.title", glossary.SOURCES))
    out = ""
    for heading, sources in listed:
        items = "".join([wording.source(each, context) for each in sources])
        summary = tag("summary", tag("h3", escape(sentence(say(heading), context))))
        out += tag("details", summary + tag("ul", items))
    return out
