"""An export behind a plain file server, under a path of its own: as on any web host that gives files.

It takes the same words as the app's own server and prints the same line, so that driving.Server can run it.
"""

import argparse
import contextlib
import functools
import http.server
import io
import json
from pathlib import Path

from webapp import export

UNDER = "sub/book"


class _Quiet(http.server.SimpleHTTPRequestHandler):
    def log_message(self, format: str, *arguments: object) -> None:
        pass


def main() -> None:
    parser = argparse.ArgumentParser()
    parser.add_argument("--port", type=int)
    parser.add_argument("--data", type=Path)
    options = parser.parse_args()
    folder = options.data / UNDER
    with contextlib.redirect_stdout(io.StringIO()):
        assert export.main([str(folder)]) == 0
    build = json.loads((folder / export.MARK).read_text())["build"].removesuffix("-alone")
    handler = functools.partial(_Quiet, directory=str(options.data))
    with http.server.ThreadingHTTPServer(("127.0.0.1", options.port), handler) as server:
        print(f"build {build}: ready", flush=True)
        server.serve_forever()


if __name__ == "__main__":
    main()
