"""The server as a half-finished deployment leaves it: `faults.json` in its data folder spoils single files.

It maps a path to `missing` or `another build` and is read at every request, so that a test can change it.
"""

import json
import sys
from collections.abc import Callable, Iterable
from pathlib import Path
from typing import Any

from flask import Flask
from werkzeug.wrappers import Response

from webapp import pages, serve

FAULTS = "faults.json"


def spoil(app: Flask, faults: Path) -> Flask:
    """Put the faults between an app and whoever asks it."""
    sound = app.wsgi_app

    def answer(environ: dict[str, Any], start_response: Callable[..., Any]) -> Iterable[bytes]:
        fault = json.loads(faults.read_text()).get(environ["PATH_INFO"]) if faults.exists() else None
        if fault is None:
            return sound(environ, start_response)
        if fault == "missing":
            return Response("not here", status=404)(environ, start_response)
        # Whole, not "unchanged since", since somebody might hold the file of the build before; and not encoded.
        for header in ("HTTP_IF_NONE_MATCH", "HTTP_IF_MODIFIED_SINCE", "HTTP_ACCEPT_ENCODING"):
            environ.pop(header, None)
        response = Response.from_app(sound, environ)
        response.set_data(response.get_data() + b"\n")
        return response(environ, start_response)

    app.wsgi_app = answer  # type: ignore[method-assign]
    return app


def main() -> int:
    faults = Path(sys.argv[sys.argv.index("--data") + 1]) / FAULTS
    serve.create_app = lambda *given: spoil(pages.create_app(*given), faults)  # type: ignore
    return serve.main()


if __name__ == "__main__":
    sys.exit(main())
