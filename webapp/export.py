"""`./webapp/start export FOLDER`: the whole book as files, for any web host that gives files over https.

The phone's worker answers every page, so a host needs no Python and no rules of its own. What the host gives, once, is
a page of arrival: it puts the book on the phone and then opens the address that was asked for. Every question has one,
so that a texted link works on a phone that has never seen the book. Such a copy has no server and never sends a record.
"""

import argparse
import json
import pathlib
import sys

from calculators.contract import say
from webapp import shelf
from webapp.bundle import PAGE_POLICY, Bundle
from webapp.catalogue import ALONE, Context, sentence
from webapp.markup import escape, tag
from webapp.pocket import PAGES
from webapp.shell import page

MARK = "exported.json"
START, NOT_FOUND = "index.html", "404.html"
LANGUAGE = "en"


def files(bundle: Bundle) -> dict[str, bytes]:
    """Return path -> content of every file of an export."""
    build = bundle.build + ALONE
    found = {**bundle.files, "worker.js": bundle.worker_alone}
    found[START] = _arrival("./", 0, build)
    # Some hosts give this for whatever they do not have; it opens the first page.
    found[NOT_FOUND] = _arrival("./", 0, build)
    for name in (*PAGES, *shelf.names()):
        found[f"{name}/{START}"] = _arrival("../" + name, 1, build)
    found[MARK] = json.dumps({"build": build, "files": sorted(found)}, indent=1).encode()
    return found


def _arrival(address: str, depth: int, build: str) -> bytes:
    """Return a page that puts the book on the phone and then opens `address`, from a folder so deep."""
    context = Context(LANGUAGE, "us", build)

    def words(id: str) -> str:
        return escape(sentence(say(id), context))

    main = tag("h1", words("arrive.title")) + tag("p", words("arrive.text"), f'data-arrive="{escape(address)}"')
    text = page(words("arrive.title"), main, context).replace(words("noscript"), words("arrive.no-script"))
    # A frame's policy cannot stand in a page; the worker's replies have it in their headers.
    policy = PAGE_POLICY.partition("; frame-ancestors")[0]
    meta = f'<meta http-equiv="Content-Security-Policy" content="{escape(policy)}">'
    text = text.replace('<meta charset="utf-8">', '<meta charset="utf-8">\n' + meta)
    for start in ('href="', 'src="'):
        text = text.replace(start, start + "../" * depth).replace(start + "../" * depth + "#", start + "#")
    return text.encode()


def main(arguments: list[str]) -> int:
    """Write the files; return the exit status."""
    parser = argparse.ArgumentParser(prog="webapp/start export", description="Write the whole book as files.")
    parser.add_argument("folder", type=pathlib.Path, help="a new folder, or one that was exported to before")
    folder = parser.parse_args(arguments).folder
    try:
        found = files(Bundle())
        _make_room(folder)
        for path, content in found.items():
            place = folder / path
            place.parent.mkdir(parents=True, exist_ok=True)
            place.write_bytes(content)
    except (OSError, NotOurs) as reason:
        print(reason, file=sys.stderr)
        return 1
    size = sum(len(content) for content in found.values())
    print(f"{len(found)} files, {size // 1000} kB, in {folder}. A phone needs them over https, or from localhost.")
    return 0


class NotOurs(Exception):
    """There is something in the folder that no export put there."""


def _make_room(folder: pathlib.Path) -> None:
    """Take out what an earlier export wrote, and nothing else."""
    if not folder.exists() or not any(folder.iterdir()):
        return
    mark = folder / MARK
    if not mark.exists():
        raise NotOurs(f"{folder} is not empty, and was not exported to before. Give a new folder.")
    for path in json.loads(mark.read_text("utf-8"))["files"]:
        place = folder / path
        if folder.resolve() in place.resolve().parents:
            place.unlink(missing_ok=True)
    for each in sorted(folder.rglob("*"), reverse=True):
        if each.is_dir() and not any(each.iterdir()):
            each.rmdir()
