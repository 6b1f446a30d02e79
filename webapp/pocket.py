"""Every dynamic answer: respond(request, context) -> reply. Flask and the phone's service worker both call this.

No clock, no randomness, no network, no preference of its own: a reply depends on the request and the context alone,
so that the same address gives the same bytes on the server and on the phone.
"""

import json

from calculators import asking
from calculators.contract import Message, say
from webapp import (
    about,
    api,
    fragments,
    glossary,
    home,
    jobs_page,
    log_page,
    paper_page,
    shelf,
    shell,
    translations,
    truck_page,
)
from webapp.catalogue import ENGLISH, PSEUDO, Context, sentence
from webapp.forms import Filled
from webapp.json_text import to_json
from webapp.markup import escape, tag

HTML = "text/html; charset=utf-8"
JSON = "application/json"
MOST_PAIRS = 400
LANGUAGES = (ENGLISH,) + translations.LANGUAGES + (PSEUDO,)
# The pages that are no question: name -> what stands inside <main>. Its title is `<name>.title`.
PAGES = {
    "about": about.page,
    "glossary": glossary.page,
    "log": log_page.log,
    "entry": log_page.entry,
    "crew": log_page.crew,
    "truck": truck_page.truck,
    "paper": paper_page.paper,
    "jobs": jobs_page.jobs,
    "work": jobs_page.work,
}


class Request:
    """A GET: its path (`/heat-input`), its query as pairs, and whether only the answer region is wanted."""

    def __init__(self, path: str, pairs: list[tuple[str, str]], partial: bool) -> None:
        self.path = path
        self.pairs = [(_printable(name), _printable(text)) for name, text in pairs[:MOST_PAIRS]]
        self.partial = partial

    def first(self, name: str) -> str:
        """Return the last value of `name`, or ""."""
        found = ""
        for key, value in self.pairs:
            if key == name:
                found = value
        return found


class Reply:
    """Status, content type and body of an answer."""

    def __init__(self, status: int, content_type: str, body: str) -> None:
        self.status = status
        self.content_type = content_type
        self.body = body


def _printable(text: str) -> str:
    """Return text without control characters; a NUL would cut the reply short on its way out of the phone's Python."""
    if not text or min(text) >= " ":
        return text
    return "".join(character if character >= " " else " " for character in text)


def respond(request: Request, language: str, build: str) -> Reply:
    """Return the reply to a request, in `language` unless the address says another."""
    path = request.path
    asked = request.first("lang")
    system = request.first("units")
    if asked in LANGUAGES:
        language = asked
    if language in translations.LANGUAGES and not translations.is_here(language):
        language = ENGLISH
    if path.startswith("/api"):
        context = Context(language, system if system in ("us", "si") else "si", build)
        status, value = api.reply(path, request.pairs, context)
        return Reply(status, JSON, to_json(value) + "\n")
    context = Context(language, system if system in ("us", "si") else "us", build)
    if path == "/":
        typed = request.first("find")
        if request.partial:
            return Reply(200, HTML, home.questions(typed, context))
        return _page(200, say("app.name"), home.page(typed, context), context)
    frame = PAGES.get(path[1:])
    if frame is not None:
        return _page(200, say("title.page", title=say(path[1:] + ".title")), frame(context), context)
    return _question(request, context)


def _question(request: Request, context: Context) -> Reply:
    calculator = shelf.calculator(request.path[1:])
    if calculator is None:
        return not_found(request.path, context)
    filled = Filled(calculator, asking.ask(calculator, request.pairs), request.pairs, context)
    if request.partial:
        return Reply(200, HTML, fragments.answer(filled))
    return Reply(200, HTML, shell.page(fragments.title(filled), fragments.question(filled), context))


def not_found(path: str, context: Context) -> Reply:
    """Return the page for an address that is not in the book."""
    words = [say("not-found.title"), say("not-found.text"), say("nav.home")]
    heading, text, link = [escape(sentence(message, context)) for message in words]
    main = tag("h1", heading) + tag("p", text) + tag("p", tag("a", link, 'class="button" href="./"'))
    reply = _page(404, say("title.page", title=say("not-found.title")), main, context)
    depth = len(path.split("/")) - 2
    if depth > 0:
        # Addresses are relative, so that the book works under any path; climb back out of a nested one.
        for start in ('href="', 'src="'):
            reply.body = reply.body.replace(start, start + "../" * depth).replace(
                start + "../" * depth + "#", start + "#"
            )
    return reply


def _page(status: int, title: Message, main: str, context: Context) -> Reply:
    # Each page of records says what it needs where there is no script.
    of_records = " data-no-log>" in main
    return Reply(status, HTML, shell.page(escape(sentence(title, context)), main, context, of_records))


def respond_text(path: str, pairs_json: str, partial: str, language: str, build: str) -> str:
    """Return `status content-type\\n` and the body: only strings cross between JavaScript and the phone's Python."""
    pairs = [(name, text) for name, text in json.loads(pairs_json)]
    reply = respond(Request(path, pairs, partial == "yes"), language, build)
    return str(reply.status) + " " + reply.content_type + "\n" + reply.body
