"""The server: what every reply carries, what is refused, what is logged, and how it starts."""

import gzip
import json
import logging
import re

import brotli
import pytest
from flask.testing import FlaskClient

from webapp import pages, pocket

quick = pytest.mark.quick

# Written out in full, so that loosening one in pages.py does not loosen the test with it.
PAGE_POLICY = (
    "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' blob:; connect-src 'self'; "
    "manifest-src 'self'; worker-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'"
)
WORKER_POLICY = "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; connect-src 'self'"
ALWAYS = {
    "X-Content-Type-Options": "nosniff",
    "Referrer-Policy": "same-origin",
    "Cross-Origin-Opener-Policy": "same-origin",
    "Cross-Origin-Resource-Policy": "same-origin",
    "Permissions-Policy": "geolocation=(), microphone=(), camera=()",
}
SECRET = "77.125"  # a number that nobody but the reader need see


@pytest.fixture(scope="module")
def app():
    return pages.create_app()


class Client(FlaskClient):
    """A test client that reads each reply to its end, which closes the file behind it."""

    def open(self, *arguments, **named):
        return super().open(*arguments, buffered=True, **named)


@pytest.fixture
def client(app):
    return Client(app, app.response_class)


@pytest.fixture
def broken(monkeypatch):
    """Make every page fail inside."""

    def fail(request, language, build):
        raise RuntimeError("planted")

    monkeypatch.setattr(pocket, "respond", fail)


# ---------------------------------------------------------------- headers

# (method, address, status)
REPLIES = (
    ("GET", "/", 200),
    ("GET", "/heat-input", 200),
    ("GET", "/heat-input?voltage=?", 200),
    ("GET", "/about", 200),
    ("GET", "/api", 200),
    ("GET", "/api/openapi.json", 200),
    ("GET", "/api/heat-input", 422),
    ("GET", "/api/no-such", 404),
    ("GET", "/healthz", 200),
    ("GET", "/no-such-page", 404),
    ("GET", "/no/such/page", 404),
    ("GET", "/worker.js", 200),
    ("GET", "/pocket.json", 200),
    ("GET", "/manifest.webmanifest", 200),
    ("GET", "/static/app.css", 200),
    ("GET", "/static/no-such.css", 404),
    ("HEAD", "/", 200),
    ("OPTIONS", "/", 200),
    ("POST", "/", 405),
    ("GET", "/heat-input?voltage=" + "9" * pages.LONGEST_QUERY, 414),
)


def _check_headers(reply, policy=PAGE_POLICY):
    assert reply.headers.getlist("Content-Security-Policy") == [policy]
    for name in ALWAYS:
        assert reply.headers.getlist(name) == [ALWAYS[name]], name
    assert "Set-Cookie" not in reply.headers
    assert "Strict-Transport-Security" not in reply.headers


@quick
@pytest.mark.parametrize(("method", "address", "status"), REPLIES, ids=lambda each: str(each)[:40])
def test_every_reply_has_its_headers(client, method, address, status):
    reply = client.open(address, method=method)
    assert reply.status_code == status
    _check_headers(reply, WORKER_POLICY if address == "/worker.js" else PAGE_POLICY)


@quick
def test_reply_over_tls_says_to_stay_with_it(client):
    reply = client.get("/", base_url="https://book.example")
    assert reply.headers["Strict-Transport-Security"] == "max-age=31536000"


@quick
def test_failure_is_a_plain_sentence_with_all_headers(client, broken, caplog):
    with caplog.at_level(logging.INFO, "puddlebook"):
        reply = client.get("/heat-input?voltage=" + SECRET)
    assert reply.status_code == 500
    assert reply.content_type == "text/plain; charset=utf-8"
    assert reply.text == "The fault is ours, not yours. What you typed is still in the address.\n"
    _check_headers(reply)
    assert "Traceback" in caplog.text
    assert "failed on /heat-input" in caplog.text
    assert SECRET not in caplog.text


@quick
@pytest.mark.parametrize("address", ("/", "/heat-input?voltage=24+V", "/about", "/api", "/healthz", "/no-such"))
def test_answers_are_not_kept_by_anybody_between(client, address):
    assert client.get(address).headers["Cache-Control"] == "no-store"


@quick
def test_files_are_kept_as_long_as_their_address_says(client, app):
    bundle = app.extensions["bundle"]
    for address in bundle.precache:
        reply = client.get("/" + address)
        assert reply.status_code == 200, address
        kept = reply.headers["Cache-Control"]
        assert kept == ("public, max-age=31536000, immutable" if "?v=" in address else "no-cache"), address
    assert client.get("/worker.js").headers["Cache-Control"] == "no-cache"


@quick
@pytest.mark.parametrize("address", ("/pocket.json", "/manifest.webmanifest", "/static/app.css"))
def test_unchanged_file_is_not_sent_again(client, address):
    etag = client.get(address).headers["ETag"]
    again = client.get(address, headers={"If-None-Match": etag})
    assert (again.status_code, again.data) == (304, b"")
    _check_headers(again)


ACCEPTED = (
    (None, ""),
    ("identity", ""),
    ("deflate", ""),
    ("gzip", "gzip"),
    ("gzip, deflate, br, zstd", "br"),
    ("br;q=0.1, gzip;q=0.9", "br"),
    ("br;q=0, gzip", "gzip"),
    ("*", "br"),
    ("*;q=0", ""),
)
UNPACK = {"": bytes, "br": brotli.decompress, "gzip": gzip.decompress}


@quick
@pytest.mark.parametrize(("accepted", "expected"), ACCEPTED)
def test_carried_files_come_in_the_best_encoding_that_is_accepted(client, app, accepted, expected):
    bundle = app.extensions["bundle"]
    headers = {"Accept-Encoding": accepted} if accepted else {}
    for path, content in {"worker.js": bundle.worker, **bundle.files}.items():
        reply = client.get("/" + path, headers=headers)
        encoding = reply.headers.get("Content-Encoding", "")
        assert encoding == expected or (encoding == "" and path.endswith(".png")), path
        assert UNPACK[encoding](reply.data) == content, path
        assert len(reply.data) == int(reply.headers["Content-Length"]) <= len(content), path
        assert reply.headers["Vary"] == "Accept-Encoding", path


@quick
def test_every_encoding_of_a_file_has_a_tag_of_its_own(client):
    tags = {client.get("/pocket.json", headers={"Accept-Encoding": each}).headers["ETag"] for each in UNPACK}
    assert len(tags) == 3
    for each in UNPACK:
        asked = {"Accept-Encoding": each, "If-None-Match": ", ".join(sorted(tags))}
        assert client.get("/pocket.json", headers=asked).status_code == 304


# ---------------------------------------------------------------- whole pages and fragments


@quick
def test_htmx_gets_the_answer_region_alone(client):
    whole = client.get("/heat-input?voltage=24+V")
    part = client.get("/heat-input?voltage=24+V", headers={"HX-Request": "true", "HX-Request-Type": "partial"})
    assert whole.text.startswith("<!doctype html>")
    assert part.text.startswith("<div") and part.text in whole.text
    for reply in (whole, part):
        assert "HX-Request" in [name.strip() for name in reply.headers["Vary"].split(",")]


@quick
@pytest.mark.parametrize(
    "headers",
    (
        {"HX-Request": "false"},
        {"HX-Request": "true", "HX-Request-Type": "full"},
        {"HX-Request": "true", "HX-History-Restore-Request": "true"},
    ),
)
def test_htmx_that_wants_the_page_gets_the_page(client, headers):
    assert client.get("/heat-input", headers=headers).text.startswith("<!doctype html>")


# ---------------------------------------------------------------- what is refused


@quick
@pytest.mark.parametrize("method", ("POST", "PUT", "PATCH", "DELETE", "TRACE"))
@pytest.mark.parametrize(
    "address", ("/", "/heat-input", "/api/heat-input", "/worker.js", "/static/app.css", "/healthz", "/no-such")
)
def test_only_get_is_answered(client, method, address):
    reply = client.open(address, method=method, data=b"voltage=24")
    assert reply.status_code == 405
    assert reply.headers["Allow"] == "GET, HEAD, OPTIONS"
    assert reply.text == "Only GET is answered here\n"


@quick
@pytest.mark.parametrize("address", ("/", "/heat-input?voltage=24+V&current=200&travel_speed=6+mm/s", "/about", "/api"))
def test_get_changes_nothing(client, address):
    before = client.get(address)
    client.get("/heat-input?voltage=30+V&units=si&lang=zz")
    client.head(address)
    after = client.get(address)
    assert after.data == before.data
    assert [each for each in after.headers if each[0] != "Date"] == [
        each for each in before.headers if each[0] != "Date"
    ]


@quick
@pytest.mark.parametrize(
    "path",
    (
        "/static/../webapp/pages.py",
        "/static/%2e%2e/webapp/pages.py",
        "/static/..%2fpyproject.toml",
        "/static/..%5cpyproject.toml",
        "/static/built/../../pyproject.toml",
        "/static//etc/passwd",
        "/static/%2fetc/passwd",
        "/static/",
        "/static",
        "/static/package.json",
        "/static/worker.js",
        "/static/page/main.js",
        "/static/node_modules/htmx.org/package.json",
        "/static/app.css%00",
        "/static/app.css/",
        "/../pyproject.toml",
        "/webapp/pages.py",
        "/calculators/heat_input.py",
        "/data/store.json",
        "/.git/config",
    ),
)
def test_only_the_carried_files_are_served(client, path):
    reply = client.get(path)
    assert reply.status_code == 404
    for leaked in (b"import ", b"[project]", b"root:", b'"name"', b"[core]"):
        assert leaked not in reply.data


@quick
def test_longest_query_is_still_read_and_one_more_is_refused(client):
    query = "voltage=" + "9" * (pages.LONGEST_QUERY - len("voltage="))
    assert client.get("/heat-input?" + query).status_code == 200
    refused = client.get("/heat-input?" + query + "9")
    assert (refused.status_code, refused.text) == (414, "The address is too long\n")


# ---------------------------------------------------------------- the log and the check that it is up


@quick
def test_health_names_the_build(client, app):
    reply = client.get("/healthz")
    assert json.loads(reply.text) == {"status": "ok", "build": app.extensions["bundle"].build}


@quick
@pytest.mark.parametrize(
    ("method", "address", "status"),
    (
        ("GET", f"/heat-input?voltage={SECRET}", 200),
        ("GET", f"/api/heat-input?voltage={SECRET}", 422),
        ("GET", f"/static/app.css?x={SECRET}", 200),
        ("GET", f"/no-such?x={SECRET}", 404),
        ("POST", f"/heat-input?voltage={SECRET}", 405),
        ("GET", "/heat-input?voltage=" + SECRET * 2000, 414),
    ),
    ids=lambda each: str(each)[:40],
)
def test_log_has_the_build_and_nothing_that_was_typed(client, app, caplog, method, address, status):
    with caplog.at_level(logging.DEBUG):
        client.open(address, method=method, data=f"current={SECRET}")
    lines = [record.getMessage() for record in caplog.records if record.name == "puddlebook"]
    path = address.partition("?")[0]
    build = app.extensions["bundle"].build
    assert len(lines) == 1
    assert re.fullmatch(rf"{method} {re.escape(path)} {status} \d+\.\d ms build {build}", lines[0])
    assert SECRET not in caplog.text


@quick
def test_line_break_in_an_address_does_not_make_a_second_log_line(client, caplog):
    with caplog.at_level(logging.INFO, "puddlebook"):
        client.get("/x%0aGET%20/admin%20200")
    assert all("\n" not in record.getMessage() for record in caplog.records)


@pytest.mark.parametrize("path", ("/", "/heat-input?voltage=24+V&current=180+A&travel_speed=12+in/min", "/api"))
@pytest.mark.parametrize(("accepted", "encoding"), [("gzip, br", "br"), ("gzip", "gzip"), ("", "")])
def test_answers_are_packed_too(client, path, accepted, encoding):
    headers = {"Accept-Encoding": accepted} if accepted else {}
    plain, reply = client.get(path), client.get(path, headers=headers)
    assert reply.headers.get("Content-Encoding", "") == encoding
    assert UNPACK[encoding](reply.data) == plain.data
    assert not encoding or len(reply.data) < len(plain.data) / 3
    assert "Accept-Encoding" in reply.headers["Vary"]


# ---------------------------------------------------------------- the reader's language


@pytest.mark.parametrize(
    ("asked", "cookie", "accepts", "language"),
    [
        ("/", "", "", "en"),
        ("/", "", "es-MX,es;q=0.9,en;q=0.8", "es"),
        ("/", "", "de,fr;q=0.5", "en"),
        ("/", "es", "en-US", "es"),
        ("/", "en", "es", "en"),
        ("/", "xx", "es", "es"),
        ("/shade?lang=es", "en", "en", "es"),
        ("/shade?lang=xx", "", "en", "en"),
    ],
)
def test_language_is_the_address_s_then_the_chosen_then_the_browser_s(client, asked, cookie, accepts, language):
    if cookie:
        client.set_cookie("language", cookie)
    reply = client.get(asked, headers={"Accept-Language": accepts})
    assert f'<html lang="{language}">' in reply.text
    assert {"Cookie", "Accept-Language"} <= {name.strip() for name in reply.headers["Vary"].split(",")}


def test_following_the_link_of_a_language_chooses_it(client):
    first = client.get("/?lang=es")
    assert "language=es" in first.headers["Set-Cookie"] and "SameSite=Lax" in first.headers["Set-Cookie"]
    assert '<html lang="es">' in client.get("/shade").text
    assert "Set-Cookie" not in client.get("/?lang=zz").headers
    assert "Set-Cookie" not in client.get("/api/shade?lang=es").headers
    asked_by_script = {"Sec-Fetch-Mode": "cors"}
    assert "Set-Cookie" not in client.get("/job?lang=es", headers=asked_by_script).headers
