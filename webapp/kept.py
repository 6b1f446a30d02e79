"""What takes seconds to make and depends only on what it is made from: made once, then read back.

Each lies in static/built/kept/ under a hash of what it was made from, after a hash of itself, so that one that was cut
short or spoilt is made again. Where the folder cannot be written to, everything is made at every start.
"""

import contextlib
import hashlib
import pathlib
from collections.abc import Callable

FOLDER = pathlib.Path(__file__).resolve().parent.parent / "static" / "built" / "kept"

_in_use: set[str] = set()


def kept(kind: str, source: bytes, make: Callable[[], bytes]) -> bytes:
    """Return what `make` makes of a source, by calling it or as it was kept."""
    name = f"{hashlib.sha256(source).hexdigest()[:32]}.{kind}"
    _in_use.add(name)
    try:
        found = (FOLDER / name).read_bytes()
    except OSError:
        found = b""
    content = found[32:]
    if found[:32] != hashlib.sha256(content).digest():
        content = make()
        _keep(FOLDER / name, hashlib.sha256(content).digest() + content)
    return content


def _keep(path: pathlib.Path, content: bytes) -> None:
    unfinished = path.with_name(path.name + ".new")
    with contextlib.suppress(OSError):
        path.parent.mkdir(parents=True, exist_ok=True)
        unfinished.write_bytes(content)
        unfinished.replace(path)


def forget_others() -> None:
    """Remove what was kept for other versions and not asked for since this process began."""
    with contextlib.suppress(OSError):
        for path in FOLDER.glob("*"):
            if path.name not in _in_use:
                path.unlink()
