"""The first page: all questions in the order of the work, and a box that finds one by the words a welder uses."""

from calculators.contract import say
from webapp import asked_often, finding, shelf
from webapp.catalogue import Context, sentence
from webapp.fragments import caution
from webapp.markup import escape, query, tag

# The parts of the book: (place of the first calculator in it, its heading).
PARTS = (
    (-10, "home.part.jobs"),
    (0, "home.part.metal"),
    (15, "home.part.machine"),
    (30, "home.part.weld"),
    (40, "home.part.heat"),
    (50, "home.part.supply"),
    (70, "home.part.repair"),
    (90, "home.part.cost"),
    (95, "home.part.danger"),
)
LONGEST = 60  # characters of a search that are looked at
_BEYOND = 1000  # every place


def page(typed: str, context: Context) -> str:
    """Return what stands inside <main>; `typed` is what is looked for, or ""."""

    def words(id: str) -> str:
        return escape(sentence(say(id), context))

    box = tag("label", words("home.find"), 'for="find"')
    entry = '<input id="find" name="find" type="search" autocomplete="off" enterkeyhint="search" maxlength="'
    entry += str(LONGEST) + '" value="' + escape(typed) + '">'
    entry += tag("button", words("home.find-go"), 'type="submit"')
    box += tag("p", words("home.find-hint"), 'class="hint"') + tag("div", entry, 'class="entry"')
    if context.system == "si":
        box += '<input type="hidden" name="units" value="si">'
    asks = 'role="search" class="find" action="./" method="get" hx-get="./" hx-target="#questions"'
    asks += ' hx-trigger="input delay:60ms, submit" hx-sync="this:replace"'
    recent = tag("h2", words("home.recent")) + tag("p", words("home.no-recent"), "data-no-recent")
    recent += tag("ol", "", "data-recent hidden")
    recent += tag("button", words("home.forget"), 'type="button" class="quiet" data-forget hidden')
    at_hand = tag("a", tag("strong", words("home.job-at-hand")) + " " + tag("span", ""), 'href="jobs"')
    # Their rows come from the phone's memory (page/pinned.js); until then they take no room.
    first = tag("section", tag("h2", words("home.pinned")) + tag("ol", ""), "data-pinned")
    first += tag("section", tag("h2", words("home.used")) + tag("ol", ""), "data-used")
    return (
        tag("h1", words("home.title"))
        + tag("p", at_hand, "data-at-hand")
        + first
        + tag("form", box, asks)
        + tag("div", questions(typed, context), 'id="questions"')
        + tag("section", recent, 'id="recent" class="recent" data-needs-script hidden')
        + caution("home.caution", context)
    )


def questions(typed: str, context: Context) -> str:
    """Return the questions: those that fit, the best first, or all of them, folded into the parts of the book."""
    typed = typed[:LONGEST]
    if finding.plain(typed):
        found = finding.find(typed, context.language)
        say_so = say("home.found", count=len(found)) if found else say("home.nothing", typed=typed)
        out = tag("p", escape(sentence(say_so, context)), 'role="status"')
        if found:
            return out + _list(found, context)
    else:
        out = ""
    out += _often(context)
    for heading, names in _parts():
        titles = " ".join([tag("span", escape(sentence(say(name + ".title"), context))) for name in names])
        shown = tag("h2", escape(sentence(say(heading), context))) + tag("p", titles)
        out += tag("details", tag("summary", tag("div", shown)) + _list(names, context), 'class="part"')
    return out


def _often(context: Context) -> str:
    """Return the questions asked most, folded; each leads to where its answer stands."""
    items = ""
    for id, name, pairs, _ in asked_often.OFTEN:
        carried = list(pairs + ((("units", "si"),) if context.system == "si" else ()))
        address = name + ("?" + query(carried) if carried else "")
        items += tag("li", tag("a", escape(sentence(say(id), context)), 'href="' + escape(address) + '"'))
    shown = tag("h2", escape(sentence(say("home.often"), context)))
    shown += tag("p", escape(sentence(say("home.often-hint"), context)))
    return tag("details", tag("summary", tag("div", shown)) + tag("ul", items, 'class="often"'), 'class="part"')


def _parts() -> list[tuple[str, list[str]]]:
    """Return (heading, names of its calculators) of each part that has any."""
    ends = [start for start, _ in PARTS[1:]] + [_BEYOND]
    found = []
    for index, (start, heading) in enumerate(PARTS):
        names = [name for name, place in shelf.places() if start <= place < ends[index]]
        if names:
            found.append((heading, names))
    return found


def _list(names: list[str], context: Context) -> str:
    units = "?units=si" if context.system == "si" else ""
    items = ""
    for name in names:
        title = escape(sentence(say(name + ".title"), context))
        question = escape(sentence(say(name + ".question"), context))
        inner = tag("strong", title) + " " + tag("span", question)
        items += tag("li", tag("a", inner, 'href="' + name + units + '"'))
    return tag("ul", items, 'class="questions"')
