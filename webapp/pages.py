"""Flask: the same replies as on the phone, the files the phone carries, and the headers that keep others out."""

import hashlib
import logging
import time
from urllib.parse import parse_qsl, quote

from flask import Flask, Response, g, request, send_from_directory
from werkzeug.exceptions import HTTPException

from calculators.contract import say
from webapp import pocket
from webapp.bundle import STATIC, Bundle
from webapp.catalogue import Context, sentence
from webapp.json_text import Pairs, to_json

PAGE_POLICY = (
    "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; connect-src 'self'; manifest-src 'self'; "
    "worker-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'"
)
WORKER_POLICY = "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; connect-src 'self'"
LONGEST_QUERY = 8000  # bytes; a full form sends a few hundred
LARGEST_BODY = 64 * 1024  # nothing here reads a body yet
A_YEAR = 31536000
LANGUAGE = "en"

log = logging.getLogger("puddlebook")


def create_app() -> Flask:
    """Return the WSGI application; what the phone carries is read once, here."""
    app = Flask(__name__, static_folder=None)
    app.config["MAX_CONTENT_LENGTH"] = LARGEST_BODY
    bundle = Bundle()
    app.extensions["bundle"] = bundle
    _file_routes(app, bundle)
    _answer_routes(app, bundle)
    _headers_and_log(app, bundle)
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
        reply = pocket.respond(pocket.Request("/" + path, pairs, _wants_part()), LANGUAGE, bundle.build)
        response = _response(reply.status, reply.content_type, reply.body)
        response.headers["Vary"] = "HX-Request, HX-Request-Type, HX-History-Restore-Request"
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


def _wants_part() -> bool:
    """Return whether htmx asks for the answer region alone; what it puts into its history is a whole page."""
    headers = request.headers
    whole = headers.get("HX-Request-Type") == "full" or headers.get("HX-History-Restore-Request") == "true"
    return headers.get("HX-Request") == "true" and not whole


def _file_routes(app: Flask, bundle: Bundle) -> None:
    @app.get("/worker.js")
    def worker() -> Response:
        """Return the service worker with the list of what it carries."""
        response = _response(200, "text/javascript; charset=utf-8", bundle.worker)
        response.headers["Content-Security-Policy"] = WORKER_POLICY
        response.headers["Cache-Control"] = "no-cache"
        return response

    @app.get("/pocket.json")
    def python() -> Response:
        """Return the Python sources the phone runs."""
        return _carried("application/json", bundle.python)

    @app.get("/manifest.webmanifest")
    def manifest() -> Response:
        """Return the install manifest."""
        return _carried("application/manifest+json", bundle.manifest)

    @app.get("/static/<path:name>")
    def static(name: str) -> Response:
        """Return a file of static/ that the page or the phone uses; a versioned address may be kept for a year."""
        if f"static/{name}" not in {address.partition("?")[0] for address in bundle.precache}:
            return _plain_failure(404, "not-found.text")
        response = send_from_directory(STATIC, name, conditional=True)
        if request.args.get("v"):
            response.headers["Cache-Control"] = f"public, max-age={A_YEAR}, immutable"
        else:
            response.headers["Cache-Control"] = "no-cache"
        return response


def _carried(content_type: str, content: bytes) -> Response:
    response = _response(200, content_type, content)
    response.headers["Cache-Control"] = "no-cache"
    response.headers["ETag"] = '"' + hashlib.sha256(content).hexdigest()[:16] + '"'
    response.make_conditional(request)
    return response


def _response(status: int, content_type: str, body: str | bytes) -> Response:
    response = Response(body, status=status, content_type=content_type)
    response.headers["Cache-Control"] = "no-store"
    return response


def _plain_failure(status: int, id: str) -> Response:
    return _response(status, "text/plain; charset=utf-8", sentence(say(id), Context(LANGUAGE, "us", "")) + "\n")


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
