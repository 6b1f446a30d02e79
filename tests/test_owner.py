"""The owner's commands, beside a running server: what they print, and what they do to it."""

import pathlib
import re

import pytest
from flask import Flask

from tests.faults.phones import headers
from tests.faults.test_exchange import HERE, let_in, push
from webapp import crew, owner, serve
from webapp.store import Store


@pytest.fixture
def data(tmp_path: pathlib.Path) -> pathlib.Path:
    return tmp_path / "data"


def _run(capsys: pytest.CaptureFixture[str], *arguments: str) -> tuple[int, str, str]:
    status = owner.main(list(arguments))
    out, err = capsys.readouterr()
    return status, out, err


def test_a_code_is_shown_as_text_and_to_scan_and_lets_a_phone_in(data: pathlib.Path, capsys):
    _, out, _ = _run(capsys, "pair", "--data", str(data), "--address", "https://truck.example/")
    code = re.search(r"https://truck\.example/crew#([A-Z2-7]{4}-[A-Z2-7]{4})", out)
    assert code and out.startswith(code.group(1)) and "ten minutes" in out
    assert sum(out.count(block) for block in "█▀▄") > 100  # the code to scan
    app = Flask("crew", root_path=".", static_folder=None)
    crew.register(app, data, "0123456789")
    reply = app.test_client().post("/pair", json={"code": code.group(1), "name": "n"}, headers=headers(HERE))
    assert reply.status_code == 200
    app.extensions["store"].close()


def test_phones_are_listed_and_shut_out_while_the_server_runs(data: pathlib.Path, capsys):
    assert _run(capsys, "phones", "--data", str(data)) == (0, "No phone was let in yet.\n", "")
    app = Flask("crew", root_path=".", static_folder=None)
    crew.register(app, data, "0123456789")
    client = app.test_client()
    let_in(client, data)
    assert push(client, [])[0] == 200
    _, out, _ = _run(capsys, "phones", "--data", str(data))
    id = out.split()[0]
    assert "test" in out and "last seen 20" in out
    assert _run(capsys, "shut-out", id[:6], "--data", str(data))[0] == 0
    assert push(client, [])[0] == 401
    assert "shut out" in _run(capsys, "phones", "--data", str(data))[1]
    status, _, err = _run(capsys, "shut-out", "zz", "--data", str(data))
    assert status == 1 and "0 phones" in err
    app.extensions["store"].close()


def test_restore_refuses_while_the_server_runs_and_says_what_it_did(data: pathlib.Path, capsys):
    store = Store(data)
    status, _, err = _run(capsys, "restore", "--data", str(data))
    assert status == 1 and "another process" in err
    store.close()
    status, out, _ = _run(capsys, "restore", "--data", str(data))
    assert status == 0 and "new name" in out


def test_start_takes_the_commands_and_refuses_damaged_records_in_words(data: pathlib.Path, capsys):
    assert serve.main(["phones", "--data", str(data)]) == 0
    Store(data).close()
    (data / "ledger.json").write_text("nothing")
    capsys.readouterr()
    assert serve.main(["--data", str(data), "--port", "0"]) == 1
    assert "ledger.json is damaged or gone" in capsys.readouterr().err
