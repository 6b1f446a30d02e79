"""The owner's commands: let a phone into the crew, see which are in, shut one out, put good copies of records back."""

import argparse
import pathlib
import sys

import segno

from webapp import devices
from webapp.atomic_storage import Damaged
from webapp.restore import restore
from webapp.store import CannotStart

COMMANDS = ("pair", "phones", "shut-out", "restore")


def main(arguments: list[str]) -> int:
    """Carry out one command; return the exit status."""
    options = _options(arguments)
    try:
        if options.command == "pair":
            _pair(options.data, options.address)
        elif options.command == "phones":
            _list(options.data)
        elif options.command == "shut-out":
            return _shut_out(options.data, options.phone)
        else:
            print("\n".join(restore(options.data)))
    except (CannotStart, Damaged, OSError) as reason:
        print(reason, file=sys.stderr)
        return 1
    return 0


def _pair(folder: pathlib.Path, address: str) -> None:
    code = devices.make_code(folder)
    print(f"{code}\n\nOne phone, once, within ten minutes: open the page Crew on the phone and type the code.")
    if address:
        # After the #, the code never leaves the phone: no server and no log sees it in an address.
        link = f"{address.rstrip('/')}/crew#{code}"
        print(f"Or scan this, which is {link}\n")
        segno.make(link, error="m").terminal(compact=True)


def _list(folder: pathlib.Path) -> None:
    rows = devices.paired(folder)
    if not rows:
        print("No phone was let in yet.")
    for row in rows:
        state = "shut out" if row["shut_out"] else f"last seen {row['seen'][:10]}"
        print(f"{row['id']}  {row['name']}  paired {row['paired'][:10]}  {state}")


def _shut_out(folder: pathlib.Path, phone: str) -> int:
    found = [row for row in devices.paired(folder) if row["id"].startswith(phone)]
    if len(found) != 1:
        print(f"{len(found)} phones have an id that begins with {phone}: see ./webapp/start phones", file=sys.stderr)
        return 1
    devices.shut_out(folder, found[0]["id"])
    print(f"{found[0]['name']} is shut out from its next request on. What it has not sent stays on it.")
    return 0


def _options(arguments: list[str]) -> argparse.Namespace:
    parser = argparse.ArgumentParser(prog="webapp/start", description="The owner's commands.")
    commands = parser.add_subparsers(dest="command", required=True)
    helps = (
        "make a code that lets one phone in",
        "list the phones that were let in",
        "keep a phone out from its next request on",
        "put good copies in the place of damaged records; the server has to be stopped",
    )
    for name, text in zip(COMMANDS, helps):
        command = commands.add_parser(name, help=text, description=text.capitalize() + ".")
        command.add_argument("--data", type=pathlib.Path, default=pathlib.Path("data"), help="folder (default ./data)")
        if name == "pair":
            command.add_argument("--address", default="", help="where phones find the server: then a code to scan too")
        if name == "shut-out":
            command.add_argument("phone", help="the beginning of the phone's id")
    return parser.parse_args(arguments)
