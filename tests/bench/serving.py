"""Answers a second from the real server, beside a bare Flask view on the same server with the same clients.

The clients are processes of their own with one kept-open connection each, and read no more of a reply than they
must, so that the server is what is measured. Each asks for an address that nobody asked before.
"""

import multiprocessing
import socket
import time
from statistics import median
from urllib.parse import urlsplit

from tests.bench.browser import question

CLIENTS = 2
SECONDS = 2.0
PARTIAL = "HX-Request: true\r\nHX-Request-Type: partial\r\n"


def _read_reply(line: socket.socket) -> bytes:
    """Read one reply to its end; return its first line."""
    received = line.recv(65536)
    while b"\r\n\r\n" not in received:
        received += line.recv(65536)
    head, _, body = received.partition(b"\r\n\r\n")
    length = int(head.lower().partition(b"content-length:")[2].split(b"\r\n", 1)[0])
    missing = length - len(body)
    while missing > 0:
        missing -= len(line.recv(65536))
    return head.split(b"\r\n", 1)[0]


def _client(
    address: str, path: str, headers: str, first: int, until: float, counted: "multiprocessing.SimpleQueue[int]"
) -> None:
    where = urlsplit(address)
    number = 0
    with socket.create_connection((where.hostname, where.port)) as line:
        line.setsockopt(socket.IPPROTO_TCP, socket.TCP_NODELAY, 1)
        while time.monotonic() < until:
            voltage = f"24.{first + number:07d}"
            request = f"GET /{path.format(voltage=voltage)} HTTP/1.1\r\nHost: {where.netloc}\r\n{headers}\r\n"
            line.sendall(request.encode())
            status = _read_reply(line)
            assert status.startswith(b"HTTP/1.1 200"), status
            number += 1
    counted.put(number)


class Rate:
    """Requests a second for one kind of request, over its rounds."""

    def __init__(self, address: str, path: str, headers: str = "") -> None:
        self.address = address
        self.path = path
        self.headers = headers
        self.rounds: list[float] = []
        self.asked = 0

    def measure(self) -> None:
        """Run the clients once."""
        counted: multiprocessing.SimpleQueue[int] = multiprocessing.SimpleQueue()
        until = time.monotonic() + SECONDS
        clients = []
        for number in range(CLIENTS):
            first = self.asked + number * 1_000_000
            arguments = (self.address, self.path, self.headers, first, until, counted)
            clients.append(multiprocessing.Process(target=_client, args=arguments))
        for client in clients:
            client.start()
        counts = [counted.get() for _ in clients]
        for client in clients:
            client.join()
        self.asked += max(counts)
        self.rounds.append(sum(counts) / SECONDS)

    def per_second(self) -> float:
        """Return the median over the rounds."""
        return median(self.rounds)


def rates(answering: str, bare: str, rounds: int) -> dict[str, Rate]:
    """Return the rates of the bare view, the answer region, the whole page and the JSON answer, taken in turns."""
    asked = question("{voltage}")
    found = {
        "bare": Rate(bare, "?{voltage}"),
        "region": Rate(answering, asked, PARTIAL),
        "page": Rate(answering, asked),
        "json": Rate(answering, "api/" + asked),
    }
    for _ in range(rounds):
        for rate in found.values():
            rate.measure()
    return found
