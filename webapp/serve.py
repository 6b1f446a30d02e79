"""`python -m webapp.serve`: the app behind a production WSGI server, over TLS if a certificate is given."""

import argparse
import logging
import pathlib
import sys

from cheroot import wsgi
from cheroot.ssl.builtin import BuiltinSSLAdapter

from webapp.pages import create_app


def main(arguments: list[str] | None = None) -> int:
    """Serve until interrupted; return the exit status."""
    options = _options(arguments)
    logging.basicConfig(level=logging.INFO, format="%(asctime)s %(message)s", stream=sys.stderr)
    try:
        options.data.mkdir(parents=True, exist_ok=True)
    except OSError as error:
        print(
            f"The data folder {options.data} cannot be made: {error.strerror}. Give another with --data.",
            file=sys.stderr,
        )
        return 1
    app = create_app()
    server = wsgi.Server((options.host, options.port), app, numthreads=4, server_name="puddlebook")
    secure = bool(options.certificate)
    if secure:
        server.ssl_adapter = BuiltinSSLAdapter(str(options.certificate), str(options.key))
    try:
        server.prepare()
    except OSError as error:
        print(f"Port {options.port} cannot be used: {error}. Give another with --port.", file=sys.stderr)
        return 1
    port = server.bind_addr[1]
    print(
        f"Puddlebook build {app.extensions['bundle'].build}: {'https' if secure else 'http'}://{options.host}:{port}/",
        flush=True,
    )
    try:
        server.serve()
    except KeyboardInterrupt:
        server.stop()
    return 0


def _options(arguments: list[str] | None) -> argparse.Namespace:
    parser = argparse.ArgumentParser(
        prog="webapp/start", description="Serve Puddlebook. A phone needs https, or localhost."
    )
    parser.add_argument("--host", default="127.0.0.1", help="address to listen on (default 127.0.0.1)")
    parser.add_argument("--port", type=int, default=8000, help="port to listen on; 0 takes any free one (default 8000)")
    parser.add_argument(
        "--data", type=pathlib.Path, default=pathlib.Path("data"), help="folder for records (default ./data)"
    )
    parser.add_argument("--certificate", type=pathlib.Path, help="TLS certificate (PEM), with --key")
    parser.add_argument("--key", type=pathlib.Path, help="TLS private key (PEM)")
    options = parser.parse_args(arguments)
    if bool(options.certificate) != bool(options.key):
        parser.error("--certificate and --key go together")
    return options


if __name__ == "__main__":
    sys.exit(main())
