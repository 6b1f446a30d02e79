"""What the phone carries: the files to precache with their hashes, and the Python sources with the made values.

The Python bundle is one JSON file: module path -> source, shortened (`webapp/shorten.py`). Three files of it are not
copies but literals made here: unit factors and the calculator list (`calculators/made.py`), the calculators' titles
(`webapp/shelf_entries.py`) and the page shell (`webapp/shell_pieces.py`).
"""

import hashlib
import json
import pathlib

from calculators import made
from calculators.contract import say
from webapp import shelf_entries, shell_pieces, translations
from webapp.catalogue import ALONE, ENGLISH, Context, sentence
from webapp.kept import kept
from webapp.markup import escape
from webapp.shorten import shorten

ROOT = pathlib.Path(__file__).resolve().parent.parent
STATIC = ROOT / "static"

# The files of webapp/ that run on both Pythons; everything in calculators/ does.
SHARED_WEBAPP = (
    "__init__.py",
    "about.py",
    "api.py",
    "asked_often.py",
    "catalogue.py",
    "cautions.py",
    "finding.py",
    "forms.py",
    "fragments.py",
    "glossary.py",
    "home.py",
    "jobs_page.py",
    "json_text.py",
    "log_page.py",
    "markup.py",
    "paper_page.py",
    "pocket.py",
    "shelf.py",
    "shell.py",
    "translations.py",
    "truck_page.py",
    "wording.py",
    "words/__init__.py",
    "words/en.py",
)
# What a page may do, whether the server gave it or the phone's worker. Photos are blobs of the page's own.
PAGE_POLICY = (
    "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' blob:; connect-src 'self'; "
    "manifest-src 'self'; worker-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'"
)
PRECACHED_STATIC = (
    "app.css",
    "theme.js",
    "built/app.js",
    "built/htmx.min.js",
    "built/log.js",
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


def sources() -> dict[str, str]:
    """Return module path -> source, at its full length, of all that the phone runs."""
    found = {str(path.relative_to(ROOT)): path.read_text("utf-8") for path in shared_sources()}
    found["calculators/made.py"] = f"FACTORS = {made.FACTORS!r}\nCALCULATOR_MODULES = {made.CALCULATOR_MODULES!r}\n"
    found["webapp/shelf_entries.py"] = f"ENTRIES = {shelf_entries.entries()!r}\n{_ENTRIES}"
    found["webapp/shell_pieces.py"] = f"PIECES = {shell_pieces.PIECES!r}\n{_PIECES}"
    return found


def translated_sources(language: str) -> dict[str, str]:
    """Return module path -> source of a language's words, with its titles and page shell as literals."""
    folder = ROOT / "webapp" / "words" / language
    found = {str(path.relative_to(ROOT)): path.read_text("utf-8") for path in sorted(folder.glob("*.py"))}
    made = f"ENTRIES = {shelf_entries.entries(language)!r}\nPIECES = {shell_pieces.TRANSLATED[language]!r}\n"
    found[f"webapp/words/{language}/made.py"] = made
    return found


def shortened(full: dict[str, str]) -> dict[str, str]:
    """Return module path -> short source; what is alike lies side by side, since that packs smaller."""
    made_from = json.dumps([full, (ROOT / "webapp" / "shorten.py").read_text("utf-8")])
    short = json.loads(kept("short", made_from.encode(), lambda: json.dumps(shorten(full)).encode()))
    return {path: short[path] for path in sorted(full, key=lambda path: ("words" not in path, path))}


def python_files() -> dict[str, str]:
    """Return module path -> source for the phone."""
    return shortened(sources())


def translated_files(language: str) -> dict[str, str]:
    """Return module path -> source for a phone that carries that language."""
    return shortened(translated_sources(language))


# What the literals of the first two are read with; another language's are in `made.py` beside its words.
_ENTRIES = """
def entries(language="en"):
    if language == "en":
        return ENTRIES
    try:
        return __import__("webapp.words." + language + ".made", None, None, ("ENTRIES",)).ENTRIES
    except ImportError:
        return ENTRIES
"""
_PIECES = """
def pieces(language):
    if language in PIECES:
        return PIECES[language]
    return __import__("webapp.words." + language + ".made", None, None, ("PIECES",)).PIECES
"""


class Bundle:
    """Everything the phone carries, read once: `build` names exactly this content."""

    def __init__(self) -> None:
        python = json.dumps({"files": python_files()}, ensure_ascii=True, separators=(",", ":"))
        self.files = {f"static/{name}": (STATIC / name).read_bytes() for name in PRECACHED_STATIC + PLAIN_STATIC}
        self.files["manifest.webmanifest"] = (STATIC / "manifest.webmanifest").read_bytes()
        self.files["pocket.json"] = python.encode()
        self.precache = {_address(path): _hash(content) for path, content in self.files.items()}
        # Carried by whoever reads that language, and by nobody else.
        self.languages = {}
        for language in translations.LANGUAGES:
            words = json.dumps({"files": translated_files(language)}, ensure_ascii=True, separators=(",", ":")).encode()
            self.files[language + ".json"] = words
            self.languages[language] = _hash(words)
        worker = (STATIC / "built" / "worker.js").read_bytes()
        everything = json.dumps([self.precache, self.languages], sort_keys=True).encode() + worker
        self.build = hashlib.sha256(everything).hexdigest()[:10]
        self.worker = self._worker(self.build, worker)
        self.worker_alone = self._worker(self.build + ALONE, worker)

    def _worker(self, build: str, script: bytes) -> bytes:
        failed = escape(sentence(say("offline.text"), Context(ENGLISH, "us", build)))
        head = {
            "build": build,
            "precache": self.precache,
            "language": ENGLISH,
            "languages": self.languages,
            "failed": failed,
            "policy": PAGE_POLICY,
        }
        return b"self.BUILD=" + json.dumps(head, sort_keys=True).encode() + b";\n" + script


def _address(path: str) -> str:
    name = path.removeprefix("static/")
    return f"{path}?v={shell_pieces.fingerprint(name)}" if name in PRECACHED_STATIC else path


def _hash(content: bytes) -> str:
    return hashlib.sha256(content).hexdigest()[:16]
