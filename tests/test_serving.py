"""`python -m webapp.serve`: it says where it is, serves, refuses on the wire, speaks TLS, and says what is wrong."""

import contextlib
import http.client
import json
import os
import pathlib
import re
import shutil
import signal
import socket
import ssl
import subprocess
import sys
from collections.abc import Iterator

import pytest

from webapp.bundle import ROOT

PATIENCE = 60.0  # s, for a server to stop: its connections are kept open a while, and the machine may be busy


class Served:
    """A running `python -m webapp.serve`, where it listens and what it logs."""

    def __init__(self, process: "subprocess.Popen[str]", log: pathlib.Path) -> None:
        self.process = process
        self.log = log
        assert process.stdout is not None
        self.line = process.stdout.readline()
        found = re.fullmatch(
            r"Puddlebook build ([0-9a-f]{10}): (https?)://(?:127\.0\.0\.1|0\.0\.0\.0):(\d+)/\n", self.line
        )
        assert found, (self.line, log.read_text())
        self.build, self.scheme = found.group(1), found.group(2)
        self.port = int(found.group(3))

    def get(self, address: str, context: ssl.SSLContext | None = None) -> tuple[http.client.HTTPResponse, bytes]:
        """Return a reply and its body."""
        if context is not None:
            connection: http.client.HTTPConnection = http.client.HTTPSConnection(
                "localhost", self.port, timeout=10, context=context
            )
        else:
            connection = http.client.HTTPConnection("127.0.0.1", self.port, timeout=10)
        try:
            connection.request("GET", address)
            reply = connection.getresponse()
            return reply, reply.read()
        finally:
            connection.close()

    def say(self, sent: bytes) -> bytes:
        """Send bytes as they are; return what comes back until the server closes."""
        with socket.create_connection(("127.0.0.1", self.port), timeout=10) as line:
            # It may refuse a long body, and close, before it has read it all.
            with contextlib.suppress(BrokenPipeError, ConnectionResetError):
                line.sendall(sent)
            got = b""
            while part := line.recv(65536):
                got += part
            return got


def _command(*options: str) -> list[str]:
    return [sys.executable, "-P", "-m", "webapp.serve", *options]


def _surroundings() -> dict[str, str]:
    return {**os.environ, "PYTHONPATH": str(ROOT), "PYTHONDONTWRITEBYTECODE": "1"}


def _start(folder: pathlib.Path, *options: str) -> Served:
    log = folder / "log"
    with log.open("w") as out:
        process = subprocess.Popen(
            _command("--port", "0", *options),
            cwd=folder,
            env=_surroundings(),
            stdout=subprocess.PIPE,
            stderr=out,
            text=True,
            preexec_fn=_listen_to_interrupts,
        )
    try:
        return Served(process, log)
    except BaseException:
        _stop(process)
        raise


def _listen_to_interrupts() -> None:
    """A shell that runs the tests in the background has them ignored, and a process hands that on."""
    signal.signal(signal.SIGINT, signal.SIG_DFL)


def _stop(process: "subprocess.Popen[str]") -> None:
    process.send_signal(signal.SIGINT)
    try:
        process.wait(PATIENCE)
    except subprocess.TimeoutExpired:
        process.kill()
        process.wait()
    if process.stdout is not None:
        process.stdout.close()


@pytest.fixture(scope="module")
def served(tmp_path_factory) -> Iterator[Served]:
    running = _start(tmp_path_factory.mktemp("served"))
    yield running
    _stop(running.process)


def test_started_server_says_where_it_is_and_serves(served):
    reply, body = served.get("/heat-input?voltage=24+V&current=200+A&travel_speed=6+mm%2Fs")
    assert reply.status == 200
    assert str(reply.headers["Content-Security-Policy"]).startswith("default-src 'none'; script-src 'self'; ")
    assert b"<!doctype html>" in body and served.build.encode() in body
    assert json.loads(served.get("/healthz")[1])["build"] == served.build
    assert re.search(rf"GET /healthz 200 \d+\.\d ms build {served.build}\n", served.log.read_text())


def test_started_server_writes_into_its_data_folder_alone(served):
    served.get("/heat-input?voltage=24+V")
    assert sorted(path.name for path in served.log.parent.iterdir()) == ["data", "log"]
    made = {path.name for path in (served.log.parent / "data").iterdir()}
    assert made == {"ledger.json", "lock", "revisions-000001.json"}


@pytest.mark.parametrize(
    ("sent", "status"),
    (
        (b"POST / HTTP/1.1\r\nHost: localhost\r\nContent-Length: 1000000000000\r\n\r\n", b"413"),
        (b"POST / HTTP/1.1\r\nHost: localhost\r\nContent-Length: 2000001\r\n\r\n" + b"x" * 2000001, b"413"),
        (b"GET / HTTP/1.1\r\nHost: localhost\r\nContent-Length: 2000001\r\n\r\n" + b"x" * 2000001, b"413"),
        (b"POST / HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\nContent-Length: 9\r\n\r\nvoltage=9", b"405"),
        (b"GET /?" + b"a" * 9000 + b" HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n", b"414"),
        (b"GET /static/../pyproject.toml HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n", b"404"),
        (b"GET //elsewhere.example/ HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n", b"400"),
        (b"BREW / HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n", b"405"),
        (b"no request at all\r\n\r\n", b"400"),
    ),
    ids=("endless body", "long body", "long body of a GET", "form", "long query", "climbing", "host", "brew", "noise"),
)
def test_started_server_refuses_on_the_wire(served, sent, status):
    got = served.say(sent)
    assert got.split(b" ", 2)[1] == status, got[:200]
    assert b"Traceback" not in got
    assert served.process.poll() is None


@pytest.mark.parametrize(
    ("host", "status"),
    [
        (b"localhost", b"200"),
        (b"LOCALHOST:8000", b"200"),
        (b"127.0.0.1:1", b"200"),
        (b"[::1]", b"200"),
        (b"[::1]:8000", b"200"),
        (b"elsewhere.example", b"421"),
        (b"localhost.elsewhere.example", b"421"),
        (b"elsewhere.example:8000", b"421"),
        (b"[::2]:8000", b"421"),
        (b"192.0.2.1", b"421"),
        (b"", b"421"),
        (b"localhost:80:80", b"421"),
        (b"<b>x</b>", b"421"),
        (b"\xff", b"421"),
    ],
)
def test_server_answers_to_its_own_names_alone(served, host, status):
    got = served.say(b"GET /healthz HTTP/1.1\r\nHost: " + host + b"\r\nConnection: close\r\n\r\n")
    assert got.split(b" ", 2)[1] == status, got[:200]
    if status == b"421":
        assert got.endswith(b"This server does not answer to that name. Its owner can add it: --host-name.\n")


@pytest.mark.parametrize("request_line", [b"GET / HTTP/1.0", b"POST /pair HTTP/1.0", b"GET /static/app.css HTTP/1.0"])
def test_a_request_without_any_name_is_refused(served, request_line):
    assert served.say(request_line + b"\r\n\r\n").split(b" ", 2)[1] == b"421"


def test_names_are_given_to_a_server_that_listens_on_every_address(tmp_path):
    running = _start(tmp_path, "--host", "0.0.0.0", "--host-name", "Weld.example", "--host-name", "192.0.2.7")
    try:
        for host, status in ((b"weld.example:8000", b"200"), (b"192.0.2.7", b"200"), (b"x.weld.example", b"421")):
            got = running.say(b"GET /healthz HTTP/1.1\r\nHost: " + host + b"\r\nConnection: close\r\n\r\n")
            assert got.split(b" ", 2)[1] == status, host
        assert "--host-name" not in running.log.read_text()
    finally:
        _stop(running.process)


def test_a_server_that_listens_on_every_address_under_no_name_says_what_to_do(tmp_path):
    running = _start(tmp_path, "--host", "0.0.0.0")
    try:
        assert "Give the name or address that phones use with --host-name." in running.log.read_text()
    finally:
        _stop(running.process)


def test_two_servers_run_side_by_side(served, tmp_path):
    other = _start(tmp_path)
    try:
        assert other.port != served.port
        assert other.build == served.build
        assert other.get("/")[1] == served.get("/")[1]
    finally:
        _stop(other.process)
    assert other.process.returncode == 0
    assert "Traceback" not in other.log.read_text()


@pytest.mark.parametrize(
    ("options", "said"),
    (
        (("--port", "x"), "x is no port: give a whole number from 0 to 65535"),
        (("--port", "65536"), "65536 is no port: give a whole number from 0 to 65535"),
        (("--port=-1",), "-1 is no port: give a whole number from 0 to 65535"),
        (("--host-name", "https://x.example/"), "https://x.example/ is no host name: give it without https://"),
        (("--host-name", "x.example:8000"), "x.example:8000 is no host name: give it without https://, port or path"),
        (("--port", "0", "--data", "file/inside"), "The data folder file/inside cannot be made: Not a directory."),
        (("--port", "0", "--data", "file"), "The data folder file cannot be made: File exists."),
        (("--port", "0", "--certificate", "file"), "--certificate and --key go together"),
        (
            ("--port", "0", "--certificate", "gone", "--key", "file"),
            "The certificate gone with the key file cannot be used",
        ),
        (
            ("--port", "0", "--certificate", "file", "--key", "file"),
            "The certificate file with the key file cannot be used",
        ),
        (("--host", "192.0.2.1", "--port", "0"), "192.0.2.1, port 0, cannot be listened on"),
    ),
    ids=lambda each: " ".join(each) if isinstance(each, tuple) else "",
)
def test_bad_option_gets_one_sentence(tmp_path, options, said):
    (tmp_path / "file").write_text("not a folder, nor a key\n")
    result = subprocess.run(
        _command(*options), cwd=tmp_path, env=_surroundings(), capture_output=True, text=True, timeout=30
    )
    assert result.returncode in (1, 2)
    assert result.stdout == ""
    last = result.stderr.splitlines()[-1]
    assert said in last
    assert "Traceback" not in result.stderr
    assert result.stderr.splitlines()[:-1] == [] or result.stderr.startswith("usage:")


def test_port_in_use_gets_one_sentence(served, tmp_path):
    command = _command("--port", str(served.port), "--data", "data")
    result = subprocess.run(command, cwd=tmp_path, env=_surroundings(), capture_output=True, text=True, timeout=30)
    assert result.returncode == 1
    assert len(result.stderr.splitlines()) == 1
    assert f"port {served.port}, cannot be listened on" in result.stderr


@pytest.mark.skipif(shutil.which("openssl") is None, reason="openssl makes the certificate")
def test_server_speaks_tls_with_a_given_certificate(tmp_path):
    subject = ("-subj", "/CN=localhost", "-addext", "subjectAltName=DNS:localhost")
    curve = ("-newkey", "ec", "-pkeyopt", "ec_paramgen_curve:prime256v1", "-nodes", "-days", "2")
    made = ["openssl", "req", "-x509", *curve, *subject, "-keyout", "key.pem", "-out", "certificate.pem"]
    subprocess.run(made, cwd=tmp_path, check=True, capture_output=True)
    running = _start(tmp_path, "--certificate", "certificate.pem", "--key", "key.pem")
    try:
        assert running.scheme == "https"
        trusting = ssl.create_default_context(cafile=str(tmp_path / "certificate.pem"))
        reply, body = running.get("/", trusting)
        assert reply.status == 200 and b"<!doctype html>" in body
        assert reply.headers["Strict-Transport-Security"] == "max-age=31536000"
        with pytest.raises(ssl.SSLCertVerificationError):
            running.get("/", ssl.create_default_context())
        assert json.loads(running.get("/healthz", trusting)[1])["status"] == "ok"
    finally:
        _stop(running.process)
