"""What the phone carries: the files to precache with their hashes, and the Python sources with the made values.

The Python bundle is one JSON file: module path -> source, docstrings and comments stripped. Three files of it are
not copies but literals made here: unit factors and the calculator list (`calculators/made.py`), the calculators' titles
(`webapp/shelf_entries.py`) and the page shell (`webapp/shell_pieces.py`).
"""

import ast
import hashlib
import io
import json
import pathlib
import tokenize

from calculators import made
from calculators.contract import say
from webapp import shelf_entries, shell_pieces
from webapp.catalogue import Context, sentence
from webapp.markup import escape

ROOT = pathlib.Path(__file__).resolve().parent.parent
STATIC = ROOT / "static"

# The files of webapp/ that run on both Pythons; everything in calculators/ does.
SHARED_WEBAPP = (
    "__init__.py",
    "about.py",
    "api.py",
    "catalogue.py",
    "finding.py",
    "forms.py",
    "fragments.py",
    "home.py",
    "json_text.py",
    "markup.py",
    "pocket.py",
    "shelf.py",
    "shell.py",
    "words/__init__.py",
    "words/en.py",
)
PRECACHED_STATIC = (
    "app.css",
    "theme.js",
    "built/app.js",
    "built/htmx.min.js",
)
# Fetched by their plain names: from inside the worker, or by the browser reading the manifest.
PLAIN_STATIC = (
    "built/micropython.wasm",
    "icon.svg",
    "icon-180.png",
    "icon-192.png",
    "icon-512.png",
    "icon-maskable-512.png",
)


def shared_sources() -> list[pathlib.Path]:
    """Return every source file that runs on both Pythons, made files excepted, in a fixed order."""
    found = [path for path in sorted((ROOT / "calculators").rglob("*.py")) if path.name != "made.py"]
    return found + [ROOT / "webapp" / name for name in SHARED_WEBAPP]


def strip(source: str) -> str:
    """Return source without docstrings, comments, annotations and blank lines; what stands in strings is kept."""
    lines = source.split("\n")
    docstrings = _docstrings(source)
    kept = _rows_that_end_in_strings(source)
    for (first, _), (last, _), _ in docstrings:
        kept.difference_update(range(first, last + 1))
    for (first, start), (last, end), replacement in sorted(
        docstrings + _comments(source) + _annotations(source), reverse=True
    ):
        lines[first - 1] = lines[first - 1][:start] + replacement + lines[last - 1][end:]
        lines[first:last] = [""] * (last - first)
    return "".join(
        (line if row in kept else line.rstrip()) + "\n"
        for row, line in enumerate(lines, 1)
        if row in kept or line.strip()
    )


def _annotations(source: str) -> list[tuple[tuple[int, int], tuple[int, int], str]]:
    """Return the annotations of arguments, of returns and of names given a value: the phone's Python skips them."""
    lines = source.split("\n")

    def place(row: int | None, column: int | None) -> tuple[int, int]:
        # ast counts columns in bytes.
        return row or 0, len(lines[(row or 1) - 1].encode()[:column].decode())

    found = []
    for node in ast.walk(ast.parse(source)):
        if isinstance(node, ast.arg) and node.annotation is not None:
            row, column = place(node.lineno, node.col_offset)
            found.append(((row, column + len(node.arg)), place(node.end_lineno, node.end_col_offset), ""))
        elif isinstance(node, ast.FunctionDef) and node.returns is not None:
            row, column = place(node.returns.lineno, node.returns.col_offset)
            arrow = lines[row - 1].rindex(" ->", 0, column)
            found.append(((row, arrow), place(node.returns.end_lineno, node.returns.end_col_offset), ""))
        elif isinstance(node, ast.AnnAssign) and node.value is not None:
            named = node.target
            note = node.annotation
            found.append(
                (place(named.end_lineno, named.end_col_offset), place(note.end_lineno, note.end_col_offset), "")
            )
    return found


def _docstrings(source: str) -> list[tuple[tuple[int, int], tuple[int, int], str]]:
    lines = source.split("\n")
    found = []
    for node in ast.walk(ast.parse(source)):
        if (
            isinstance(node, (ast.Module, ast.ClassDef, ast.FunctionDef))
            and ast.get_docstring(node, clean=False) is not None
        ):
            text = node.body[0]
            last = text.end_lineno or 0
            # ast counts columns in bytes.
            end = len(lines[last - 1].encode()[: text.end_col_offset].decode())
            replacement = "pass" if len(node.body) == 1 and not isinstance(node, ast.Module) else ""
            found.append(((text.lineno, text.col_offset), (last, end), replacement))
    return found


def _rows_that_end_in_strings(source: str) -> set[int]:
    """Return the rows whose line break, and the spaces before it, are part of a string."""
    rows: set[int] = set()
    begun: list[int] = []
    for token in tokenize.generate_tokens(io.StringIO(source).readline):
        name = tokenize.tok_name[token.type]
        if name == "STRING":
            rows.update(range(token.start[0], token.end[0]))
        elif name == "FSTRING_START":
            begun.append(token.start[0])
        elif name == "FSTRING_END":
            rows.update(range(begun.pop(), token.end[0]))
    return rows


def _comments(source: str) -> list[tuple[tuple[int, int], tuple[int, int], str]]:
    tokens = tokenize.generate_tokens(io.StringIO(source).readline)
    return [(token.start, token.end, "") for token in tokens if token.type == tokenize.COMMENT]


def python_files() -> dict[str, str]:
    """Return module path -> source for the phone."""
    files = {str(path.relative_to(ROOT)): strip(path.read_text("utf-8")) for path in shared_sources()}
    files["calculators/made.py"] = f"FACTORS = {made.FACTORS!r}\nCALCULATOR_MODULES = {made.CALCULATOR_MODULES!r}\n"
    files["webapp/shelf_entries.py"] = f"def entries():\n    return {shelf_entries.entries()!r}\n"
    files["webapp/shell_pieces.py"] = f"PIECES = {shell_pieces.PIECES!r}\n"
    return dict(sorted(files.items()))


class Bundle:
    """Everything the phone carries, read once: `build` names exactly this content."""

    def __init__(self) -> None:
        python = json.dumps({"files": python_files()}, ensure_ascii=True, separators=(",", ":"))
        self.files = {f"static/{name}": (STATIC / name).read_bytes() for name in PRECACHED_STATIC + PLAIN_STATIC}
        self.files["manifest.webmanifest"] = (STATIC / "manifest.webmanifest").read_bytes()
        self.files["pocket.json"] = python.encode()
        self.precache = {_address(path): _hash(content) for path, content in self.files.items()}
        worker = (STATIC / "built" / "worker.js").read_bytes()
        everything = json.dumps(self.precache, sort_keys=True).encode() + worker
        self.build = hashlib.sha256(everything).hexdigest()[:10]
        failed = escape(sentence(say("offline.text"), Context("en", "us", self.build)))
        head = {"build": self.build, "precache": self.precache, "language": "en", "failed": failed}
        self.worker = b"self.BUILD=" + json.dumps(head, sort_keys=True).encode() + b";\n" + worker


def _address(path: str) -> str:
    name = path.removeprefix("static/")
    return f"{path}?v={shell_pieces.fingerprint(name)}" if name in PRECACHED_STATIC else path


def _hash(content: bytes) -> str:
    return hashlib.sha256(content).hexdigest()[:16]
