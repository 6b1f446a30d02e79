"""The crew's server, in this process and in one that can be killed."""

import http.client
import json
import os
import pathlib
import random
import socket
import subprocess
import sys
from collections.abc import Callable, Iterator

import pytest
from flask import Flask
from flask.testing import FlaskClient

from tests.faults.phones import Phone, headers
from webapp import crew, devices
from webapp.bundle import ROOT


@pytest.fixture
def chance(request: pytest.FixtureRequest) -> random.Random:
    """The same numbers each time, others for each test."""
    return random.Random(request.node.name)


class CrewServer:
    """A server process of the crew's routes, on the port that it had at its first start."""

    def __init__(self, folder: pathlib.Path) -> None:
        self.folder = folder
        # Below the ports that clients take by themselves: one of those could sit on it while the server is down.
        self.port = next(port for port in range(20000 + os.getpid() % 9000, 32000) if _is_free(port))
        self.process: subprocess.Popen[str] | None = None

    def start(self) -> None:
        """Start and return when it listens."""
        command = [sys.executable, "-m", "tests.faults.crew_server", str(self.port), str(self.folder)]
        with open(self.folder.parent / "server-errors.txt", "a") as errors:
            self.process = subprocess.Popen(command, cwd=ROOT, stdout=subprocess.PIPE, stderr=errors, text=True)
        assert self.process.stdout is not None
        line = self.process.stdout.readline()
        assert line, (self.folder.parent / "server-errors.txt").read_text()[-2000:]
        self.port = int(line)

    def kill(self) -> None:
        """End it as a power cut does to a process."""
        if self.process is not None:
            self.process.kill()
            self.process.wait()
            assert self.process.stdout is not None
            self.process.stdout.close()
            self.process = None

    def phone(self) -> Phone:
        """Return a phone that was let in."""
        phone = Phone(self.port, "")
        phone.token = self.token()
        return phone

    def token(self) -> str:
        """Return the token of a phone that is let in now."""
        code = devices.make_code(self.folder)
        connection = http.client.HTTPConnection("127.0.0.1", self.port, timeout=20)
        body = json.dumps({"code": code, "name": "test"})
        connection.request("POST", "/pair", body, headers(f"http://127.0.0.1:{self.port}"))
        reply = connection.getresponse()
        assert reply.status == 200, reply.read()
        cookie = reply.headers["Set-Cookie"]
        connection.close()
        return cookie.partition("=")[2].partition(";")[0]


def _is_free(port: int) -> bool:
    with socket.socket() as trial:
        try:
            trial.bind(("127.0.0.1", port))
        except OSError:
            return False
    return True


@pytest.fixture
def server(tmp_path: pathlib.Path) -> Iterator[CrewServer]:
    """A running server of the crew's routes."""
    folder = tmp_path / "data"
    folder.mkdir()
    running = CrewServer(folder)
    running.start()
    yield running
    running.kill()


@pytest.fixture
def folder(tmp_path: pathlib.Path) -> pathlib.Path:
    """An empty folder for records."""
    return tmp_path / "data"


@pytest.fixture
def new_app(folder: pathlib.Path) -> Iterator[Callable[..., Flask]]:
    """Make the crew's routes in this process; its store is closed in the end."""
    made: list[Flask] = []

    def make(**options: object) -> Flask:
        for app in made:
            app.extensions["store"].close()
        made.clear()
        app = Flask("crew", root_path=".", static_folder=None)
        app.config["MAX_CONTENT_LENGTH"] = crew.LARGEST_BODY
        crew.register(app, folder, "0123456789", **options)  # type: ignore[arg-type]
        made.append(app)
        return app

    yield make
    for app in made:
        app.extensions["store"].close()


@pytest.fixture
def client(new_app: Callable[..., Flask]) -> FlaskClient:
    """A client without a token."""
    return new_app().test_client()
