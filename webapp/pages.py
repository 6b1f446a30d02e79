"""Flask: the same replies as on the phone, the files the phone carries, and the headers that keep others out."""

import hashlib
import logging
import pathlib
import time
from collections.abc import Iterable
from urllib.parse import parse_qsl, quote

from flask import Flask, Response, g, request
from werkzeug.exceptions import HTTPException

from calculators.contract import say
from webapp import crew, packing, pocket, translations
from webapp.bundle import PAGE_POLICY, Bundle
from webapp.catalogue import ENGLISH, Context, sentence
from webapp.json_text import Pairs, to_json

WORKER_POLICY = "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; connect-src 'self'"
LONGEST_QUERY = 8000  # bytes; a full form sends a few hundred
A_YEAR = 31536000
LOCAL_NAMES = ("localhost", "127.0.0.1", "[::1]")
LANGUAGE = ENGLISH
LANGUAGE_COOKIE = "language"
# What an answer depends on beside its address.
VARIES = "HX-Request, HX-Request-Type, HX-History-Restore-Request, Cookie, Accept-Language, Accept-Encoding"
READ = (ENGLISH, *translations.LANGUAGES)
TYPES = {
    "css": "text/css; charset=utf-8",
    "js": "text/javascript; charset=utf-8",
    "json": "application/json",
    "png": "image/png",
    "svg": "image/svg+xml",
    "wasm": "application/wasm",
    "webmanifest": "application/manifest+json",
}

log = logging.getLogger("puddlebook")


def create_app(data: pathlib.Path | None = None, names: Iterable[str] = ()) -> Flask:
    """Return the WSGI application; what the phone carries is read once, here.

    Without a folder for records it has the calculators alone. It answers as LOCAL_NAMES and as the names given.
    """
    app = Flask(__name__, static_folder=None)
    app.config["MAX_CONTENT_LENGTH"] = crew.LARGEST_BODY
    bundle = Bundle()
    app.extensions["bundle"] = bundle
    _file_routes(app, bundle)
    _answer_routes(app, bundle)
    if data is not None:
        crew.register(app, data, bundle.build)
    _headers_and_log(app, bundle)
    _own_names_only(app, {each.lower() for each in (*LOCAL_NAMES, *names)})
    return app


def _answer_routes(app: Flask, bundle: Bundle) -> None:
    @app.get("/healthz")
    def healthz() -> Response:
        """Return that the server is up, and which build it is."""
        return _response(200, pocket.JSON, to_json(Pairs(("status", "ok"), ("build", bundle.build))) + "\n")

    @app.get("/", defaults={"path": ""})
    @app.get("/<path:path>")
    def answer(path: str) -> Response:
        """Return the page, the answer region alone (for htmx), or JSON under /api."""
        raw = request.query_string
        if len(raw) > LONGEST_QUERY:
            return _plain_failure(414, "too-long.text")
        pairs = parse_qsl(raw.decode("latin-1"), keep_blank_values=True, errors="replace")
        reply = pocket.respond(pocket.Request("/" + path, pairs, _wants_part()), _language(), bundle.build)
        encoding, body = packing.packed_at_once(reply.body.encode(), _accepted())
        response = _response(reply.status, reply.content_type, body)
        if encoding:
            response.headers["Content-Encoding"] = encoding
        response.headers["Vary"] = VARIES
        chosen = request.args.get("lang", "")
        followed = request.headers.get("Sec-Fetch-Mode", "navigate") == "navigate"
        if chosen in READ and followed and not path.startswith("api"):
            # The way to choose where there is no script: whoever follows the link reads on in that language.
            place = request.script_root + "/"
            response.set_cookie(LANGUAGE_COOKIE, chosen, max_age=A_YEAR, path=place, samesite="Lax")
        return response

    @app.errorhandler(HTTPException)
    def refused(error: HTTPException) -> Response:
        """Return a plain sentence for a refused request."""
        response = _plain_failure(error.code or 500, "method.text" if error.code == 405 else "not-found.text")
        if error.code == 405:
            response.headers["Allow"] = "GET, HEAD, OPTIONS"
        return response

    @app.errorhandler(Exception)
    def failed(error: Exception) -> Response:
        """Return a page that says the fault is ours; the trace goes to the log."""
        log.exception("failed on %s", quote(request.path))
        return _plain_failure(500, "failed.text")


def _language() -> str:
    """Return the language that was chosen on this phone, else the one that its browser asks for, else English."""
    chosen = request.cookies.get(LANGUAGE_COOKIE, "")
    if chosen in READ:
        return chosen
    return request.accept_languages.best_match(READ) or LANGUAGE


def _wants_part() -> bool:
    """Return whether htmx asks for the answer region alone; what it puts into its history is a whole page."""
    headers = request.headers
    whole = headers.get("HX-Request-Type") == "full" or headers.get("HX-History-Restore-Request") == "true"
    return headers.get("HX-Request") == "true" and not whole


def _file_routes(app: Flask, bundle: Bundle) -> None:
    @app.get("/worker.js")
    def worker() -> Response:
        """Return the service worker with the list of what it carries."""
        response = _carried("worker.js", bundle.worker)
        response.headers["Content-Security-Policy"] = WORKER_POLICY
        return response

    @app.get(f"/<any({','.join(translations.LANGUAGES)}):language>.json")
    @app.get("/pocket.json")
    @app.get("/manifest.webmanifest")
    @app.get("/static/<path:name>")
    def carried(**_named: str) -> Response:
        """Return a file that the phone carries; one with its version in the address may be kept for a year."""
        path = request.path.removeprefix("/")
        if path not in bundle.files:
            return _plain_failure(404, "not-found.text")
        response = _carried(path, bundle.files[path])
        if request.args.get("v"):
            response.headers["Cache-Control"] = f"public, max-age={A_YEAR}, immutable"
        return response


def _accepted() -> list[str]:
    return [each for each in packing.ENCODINGS if request.accept_encodings[each] > 0]


def _carried(path: str, content: bytes) -> Response:
    encoding, packed = packing.packed(content, _accepted())
    response = _response(200, TYPES[path.rpartition(".")[2]], packed)
    if encoding:
        response.headers["Content-Encoding"] = encoding
    response.headers["Vary"] = "Accept-Encoding"
    response.headers["Cache-Control"] = "no-cache"
    response.set_etag(hashlib.sha256(content).hexdigest()[:16] + encoding)
    response.make_conditional(request)
    return response


def _response(status: int, content_type: str, body: str | bytes) -> Response:
    response = Response(body, status=status, content_type=content_type)
    response.headers["Cache-Control"] = "no-store"
    return response


def _plain_failure(status: int, id: str) -> Response:
    return _response(status, "text/plain; charset=utf-8", sentence(say(id), Context(LANGUAGE, "us", "")) + "\n")


def _own_names_only(app: Flask, names: set[str]) -> None:
    """Refuse what was asked of another name: a stranger's name that points here makes his page one of our origin.

    Flask has TRUSTED_HOSTS for this; in the pinned version it cannot match an IPv6 address.
    """

    @app.before_request
    def check() -> Response | None:
        host = request.headers.get("Host", "").lower()
        name = host.rpartition(":")[0] if ":" in host.rpartition("]")[2] else host
        return None if name in names else _plain_failure(421, "other-name.text")


def _headers_and_log(app: Flask, bundle: Bundle) -> None:
    @app.before_request
    def start() -> None:
        g.started = time.perf_counter()

    @app.after_request
    def finish(response: Response) -> Response:
        headers = response.headers
        headers.setdefault("Content-Security-Policy", PAGE_POLICY)
        headers["X-Content-Type-Options"] = "nosniff"
        headers["Referrer-Policy"] = "same-origin"
        headers["Cross-Origin-Opener-Policy"] = "same-origin"
        headers["Cross-Origin-Resource-Policy"] = "same-origin"
        headers["Permissions-Policy"] = "geolocation=(), microphone=(), camera=()"
        if request.is_secure:
            headers["Strict-Transport-Security"] = f"max-age={A_YEAR}"
        # Neither query nor body: what somebody typed is nobody else's business.
        elapsed = (time.perf_counter() - g.started) * 1000.0 if "started" in g else 0.0
        # Quoted, so that a line break in an address cannot begin a log line of its own.
        path = quote(request.path)
        log.info("%s %s %d %.1f ms build %s", request.method, path, response.status_code, elapsed, bundle.build)
        return response
