"""`python -m webapp.serve`: the app behind a production WSGI server, over TLS if a certificate is given."""

import argparse
import ipaddress
import logging
import os
import pathlib
import re
import sys

from cheroot import wsgi
from cheroot.ssl.builtin import BuiltinSSLAdapter

from webapp import export, owner, packing
from webapp.pages import LOCAL_NAMES, create_app
from webapp.store import CannotStart

EVERY_ADDRESS = ("0.0.0.0", "::", "[::]", "")


def main(arguments: list[str] | None = None) -> int:
    """Serve until interrupted; return the exit status."""
    arguments = sys.argv[1:] if arguments is None else arguments
    if arguments[:1] and arguments[0] in owner.COMMANDS:
        return owner.main(arguments)
    if arguments[:1] == ["export"]:
        return export.main(arguments[1:])
    options = _options(arguments)
    logging.basicConfig(level=logging.INFO, format="%(asctime)s %(message)s", stream=sys.stderr)
    try:
        options.data.mkdir(parents=True, exist_ok=True)
    except OSError as error:
        return _refuse(f"The data folder {options.data} cannot be made: {error.strerror}. Give another with --data.")
    if not os.access(options.data, os.W_OK | os.X_OK):
        return _refuse(f"The data folder {options.data} cannot be written to. Give another with --data.")
    try:
        app = create_app(options.data, _names(options))
    except CannotStart as reason:
        return _refuse(str(reason))
    bundle = app.extensions["bundle"]
    packing.pack([bundle.worker, *bundle.files.values()])
    server = wsgi.Server(
        (options.host, options.port), app, numthreads=4, server_name="puddlebook", request_queue_size=128
    )
    server.max_request_body_size = app.config["MAX_CONTENT_LENGTH"]
    secure = bool(options.certificate)
    if secure:
        try:
            server.ssl_adapter = BuiltinSSLAdapter(str(options.certificate), str(options.key))
        except OSError as error:  # an SSLError is one too
            pair = f"{options.certificate} with the key {options.key}"
            return _refuse(f"The certificate {pair} cannot be used: {error}. Both are PEM files.")
    try:
        server.prepare()
    except OSError as error:
        where = f"{options.host}, port {options.port},"
        return _refuse(f"{where} cannot be listened on: {error}. Give another with --host or --port.")
    port = server.bind_addr[1]
    if options.host in EVERY_ADDRESS and not options.host_name:
        print(
            f"Listening on every address, answering as {', '.join(LOCAL_NAMES)} alone. "
            "Give the name or address that phones use with --host-name.",
            file=sys.stderr,
        )
    print(
        f"Puddlebook build {bundle.build}: {'https' if secure else 'http'}://{options.host}:{port}/",
        flush=True,
    )
    try:
        server.serve()
    except KeyboardInterrupt:
        server.stop()
    return 0


def _refuse(sentence: str) -> int:
    print(sentence, file=sys.stderr)
    return 1


def _names(options: argparse.Namespace) -> list[str]:
    """Return what the server is called besides its local names; an address listened on is one of them."""
    try:
        return [*options.host_name, _host_name(options.host)]
    except argparse.ArgumentTypeError:  # and it cannot be listened on either, unless it stands for every address
        return list(options.host_name)


def _host_name(text: str) -> str:
    """Return a name as it stands in a request: an IPv6 address in brackets."""
    bare = text.removeprefix("[").removesuffix("]")
    try:
        address = ipaddress.ip_address(bare)
        return f"[{address}]" if address.version == 6 else str(address)
    except ValueError:
        pass
    if not re.fullmatch(r"[A-Za-z0-9_-]+(\.[A-Za-z0-9_-]+)*", text):
        raise argparse.ArgumentTypeError(f"{text} is no host name: give it without https://, port or path")
    return text


def _port(text: str) -> int:
    if not text.isdecimal() or int(text) > 65535:
        raise argparse.ArgumentTypeError(f"{text} is no port: give a whole number from 0 to 65535")
    return int(text)


def _options(arguments: list[str] | None) -> argparse.Namespace:
    parser = argparse.ArgumentParser(
        prog="webapp/start",
        description="Serve Puddlebook. A phone needs https, or localhost.",
        epilog="Commands of the owner's, beside a running server: pair, phones, shut-out; with it stopped: restore. "
        "Without a server: export FOLDER. Each has its own --help.",
    )
    parser.add_argument("--host", default="127.0.0.1", help="address to listen on (default 127.0.0.1)")
    parser.add_argument(
        "--port", type=_port, default=8000, help="port to listen on; 0 takes any free one (default 8000)"
    )
    parser.add_argument(
        "--host-name",
        type=_host_name,
        action="append",
        default=[],
        metavar="NAME",
        help="name or address that phones use for this server, besides localhost and --host; may be given again",
    )
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
