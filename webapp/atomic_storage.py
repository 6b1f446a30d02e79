"""A storage for TinyDB that is never half written: a new file beside the old one, then one rename.

TinyDB's own storage overwrites the file in place, so a server killed while it writes leaves one that nothing can
read. Here a reader finds the old content or the new one, whenever the power goes.
"""

import hashlib
import json
import os
import pathlib
from collections.abc import Callable
from typing import Any

from tinydb.storages import Storage

MODE = 0o600  # records are nobody else's business
MARK = "puddlebook 1 sha256 "  # the first line of each file: what it is, and the checksum of all that follows


class Damaged(Exception):
    """A file that is not what was written; `path` is the file."""

    def __init__(self, path: pathlib.Path, why: str) -> None:
        super().__init__(f"{path.name}: {why}")
        self.path = path


def checksum(content: bytes) -> str:
    """Return the checksum that stands in the first line of a file of this content."""
    return hashlib.sha256(content).hexdigest()


def written(content: bytes) -> bytes:
    """Return the whole of a file that holds this content."""
    return (MARK + checksum(content) + "\n").encode() + content


def content_of(path: pathlib.Path) -> bytes:
    """Return the content of a file, byte for byte.

    Raises
    ------
    Damaged
        If the file is not what was written: cut, changed, or of another kind.
    OSError
        If it cannot be read at all.
    """
    first, _, content = path.read_bytes().partition(b"\n")
    if first.decode("latin-1") != MARK + checksum(content):
        raise Damaged(path, "its content is not what was written")
    return content


def read(path: pathlib.Path) -> Any:
    """Return what a file holds; it raises what `content_of` does."""
    return json.loads(content_of(path))


def replace(path: pathlib.Path, whole: bytes) -> None:
    """Put a file in the place of another; when this returns, it is on the disk, and if it raises, the old one is."""
    fresh = path.with_name(path.name + ".new")
    try:
        handle = os.open(fresh, os.O_WRONLY | os.O_CREAT | os.O_TRUNC | os.O_CLOEXEC, MODE)
        try:
            rest = memoryview(whole)
            while rest:
                rest = rest[os.write(handle, rest) :]
            os.fsync(handle)
        finally:
            os.close(handle)
        os.replace(fresh, path)
    except OSError:
        fresh.unlink(missing_ok=True)
        raise
    sync_folder(path.parent)


def sync_folder(folder: pathlib.Path) -> None:
    """Wait until the names in a folder are on the disk."""
    handle = os.open(folder, os.O_RDONLY | os.O_DIRECTORY)
    try:
        os.fsync(handle)
    finally:
        os.close(handle)


class AtomicStorage(Storage):
    """One file of TinyDB's, whole at any time.

    What was written last is kept in memory, so that a write costs no reading. A write that fails leaves the old
    content, in the file and in memory.
    """

    def __init__(self, path: pathlib.Path, before: Callable[[pathlib.Path], None] | None = None) -> None:
        self.path = path
        self.before = before  # called with the path before each write, to keep a copy of what is replaced
        self.content: bytes | None = None
        if path.exists():
            self.content = content_of(path)

    def read(self) -> Any:
        """Return what the file holds, or None."""
        return None if self.content is None else json.loads(self.content)

    def write(self, data: Any) -> None:
        """Put this in the place of what the file holds."""
        content = json.dumps(data, separators=(",", ":")).encode()
        if self.before is not None and self.path.exists():
            self.before(self.path)
        replace(self.path, written(content))
        self.content = content
