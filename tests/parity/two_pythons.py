"""The same requests to CPython and to the phone's Python, and where their replies part."""

import hashlib
import json
import pathlib
import subprocess
import tempfile
import traceback

from webapp import bundle, environment, pocket, translations

HERE = pathlib.Path(__file__).resolve().parent
SPECIMEN = HERE.parent / "specimen.py"
PROCESSES = 2
FEW = 100  # requests for which a second node would only cost its start
SHOWN = 200  # characters of a difference
BUILD = "0123456789"

Request = tuple[str, list[tuple[str, str]], str, str, str]  # the arguments of pocket.respond_text, pairs not yet JSON


class Difference:
    """A request whose two replies are not the same bytes, or to which one Python raised."""

    def __init__(self, request: Request, server: str, phone: str) -> None:
        self.request = request
        self.server = server
        self.phone = phone

    def __str__(self) -> str:
        pairs = zip(self.server, self.phone, strict=False)
        shorter = min(len(self.server), len(self.phone))
        at = next((place for place, (one, other) in enumerate(pairs) if one != other), shorter)
        start = max(0, at - 40)
        return (
            f"{json.dumps(self.request)}\n"
            f"  from character {at} on:\n"
            f"  CPython     {self.server[start : start + SHOWN]!r}\n"
            f"  MicroPython {self.phone[start : start + SHOWN]!r}"
        )


def asked(path: str, pairs: list[tuple[str, str]], partial: bool = False, language: str = "en") -> Request:
    """Return a request."""
    return path, pairs, "yes" if partial else "no", language, BUILD


def phone_files() -> dict[str, str]:
    """Return the real bundle's Python files and every language's; with the fixture `specimen`, it stands among them."""
    full = bundle.sources()
    if "'specimen'" in full["calculators/made.py"]:
        full["calculators/specimen.py"] = SPECIMEN.read_text("utf-8")
    words: dict[str, str] = {}
    for language in translations.LANGUAGES:
        words.update(bundle.translated_files(language))
    return {**bundle.shortened(full), **words}


def server_reply(request: Request) -> str:
    """Return CPython's reply, or what it raised."""
    path, pairs, partial, language, build = request
    try:
        return pocket.respond_text(path, json.dumps(pairs), partial, language, build)
    except Exception:
        return "raised " + traceback.format_exc()


def differences(requests: list[Request], files: dict[str, str], most: int = 5) -> tuple[int, list[Difference]]:
    """Return how many replies differ, and the first few of them with both bodies."""
    with tempfile.TemporaryDirectory() as name:
        folder = pathlib.Path(name)
        (folder / "bundle.json").write_text(json.dumps({"files": files}), "utf-8")
        processes = PROCESSES if len(requests) > FEW else 1
        phones = [Phone(folder, str(each), requests[each::processes]) for each in range(processes)]
        # CPython answers while node does.
        server = [server_reply(request) for request in requests]
        phone = [""] * len(requests)
        for each in range(processes):
            phone[each::processes] = phones[each].lines()
        parted = [at for at, reply in enumerate(server) if phone[at] != _hash(reply) or reply.startswith("raised ")]
        few = [requests[at] for at in parted[:most]]
        bodies = [json.loads(line) for line in Phone(folder, "few", few, "bodies").lines()] if few else []
    return len(parted), [Difference(requests[at], server[at], body) for at, body in zip(parted, bodies, strict=False)]


def _hash(reply: str) -> str:
    return hashlib.sha256(reply.encode("utf-8", "surrogatepass")).hexdigest()


class Phone:
    """A node with the phone's Python in it, answering a file of requests while others work."""

    def __init__(self, folder: pathlib.Path, name: str, requests: list[Request], *arguments: str) -> None:
        self.asked = len(requests)
        self.said, self.complaints = folder / f"{name}.out", folder / f"{name}.err"
        questions = folder / f"{name}.in"
        questions.write_text("".join(json.dumps(request) + "\n" for request in requests), "utf-8")
        node = environment.find_node() or "node"
        command = [node, str(HERE / "phone.mjs"), str(folder / "bundle.json"), *arguments]
        with questions.open("rb") as read, self.said.open("wb") as out, self.complaints.open("wb") as err:
            self.process = subprocess.Popen(command, stdin=read, stdout=out, stderr=err)

    def lines(self) -> list[str]:
        """Return one line per request, once node is done."""
        status = self.process.wait()
        found = self.said.read_text("utf-8").split("\n")[:-1]  # splitlines would also split inside a reply
        if status or len(found) != self.asked:
            complaint = self.complaints.read_text("utf-8")[-2000:]
            raise RuntimeError(f"node ended with {status} after {len(found)} of {self.asked} replies:\n{complaint}")
        return found
