"""The repository: what lies where, nothing that points outside it, nothing of anybody else's in it."""

import ast
import pathlib
import re
import shutil
import subprocess

import pytest

from webapp import bundle
from webapp.bundle import ROOT

pytestmark = [
    pytest.mark.quick,
    pytest.mark.skipif(
        shutil.which("git") is None or not (ROOT / ".git").exists(), reason="git knows which files are the project's"
    ),
]

TOP = {"README.md", "DEVELOPERS.md", "pyproject.toml", "webapp", "static", "calculators", "tests"}


def _kept() -> list[pathlib.PurePosixPath]:
    """Return every file of the project: tracked, or new and not ignored."""
    command = ["git", "ls-files", "--cached", "--others", "--exclude-standard", "-z"]
    listed = subprocess.run(command, cwd=ROOT, check=True, capture_output=True).stdout.decode()
    return [pathlib.PurePosixPath(name) for name in sorted(set(listed.split("\0"))) if name and (ROOT / name).exists()]


KEPT = _kept() if shutil.which("git") and (ROOT / ".git").exists() else []


def _texts() -> list[tuple[str, str]]:
    found = []
    for path in KEPT:
        content = (ROOT / path).read_bytes()
        if b"\0" not in content:
            found.append((str(path), content.decode("utf-8")))
    return found


# ---------------------------------------------------------------- what lies where


def test_top_level_holds_what_it_should_and_nothing_else():
    top = {path.parts[0] for path in KEPT}
    assert {name for name in top if not name.startswith(".")} == TOP


def test_every_file_of_a_language_lies_with_its_like():
    for path in KEPT:
        if path.suffix == ".py":
            assert path.parts[0] in ("calculators", "webapp", "tests"), path
        if path.suffix in (".js", ".mjs", ".css", ".ts"):
            assert path.parts[0] in ("static", "tests"), path
        if path.suffix == ".html":
            assert path.parts[:2] == ("webapp", "templates"), path


def test_names_are_plain():
    for path in KEPT:
        assert re.fullmatch(r"[A-Za-z0-9._/-]+", str(path)), path
        assert path.stem not in ("utils", "helpers", "misc", "common"), path


# ---------------------------------------------------------------- nothing of anybody else's

OTHERS = re.compile(
    r"\.min\.(js|css)$|\.(wasm|whl|so|dll|exe|jar|zip|gz|tgz|mpy|pyc|ttf|otf|woff2?)$|(^|/)(node_modules|vendor|dist|built)/"
)


def others_files(paths: list[str]) -> list[str]:
    """Return the paths that look like a copy of something made elsewhere, or made from it."""
    return [path for path in paths if OTHERS.search(path)]


def test_no_copy_of_other_people_s_code_is_kept():
    assert others_files([str(path) for path in KEPT]) == []


def test_copy_of_other_people_s_code_is_found():
    planted = ["static/htmx.min.js", "static/a/micropython.wasm", "static/node_modules/x/y.js", "webapp/app.js"]
    assert others_files(planted) == planted[:3]


def test_nothing_kept_is_big():
    for path in KEPT:
        longest = 600_000 if path.name.endswith(("lock.json", "requirements.txt")) else 100_000
        assert (ROOT / path).stat().st_size < longest, path


# ---------------------------------------------------------------- nothing that points outside

# Put together here, so that this file does not name what it forbids.
HOSTS = [
    ".".join(parts)
    for parts in (
        ("pypi", "org"),
        ("pythonhosted", "org"),
        ("npmjs", "org"),
        ("npmjs", "com"),
        ("yarnpkg", "com"),
        ("jsdelivr", "net"),
        ("unpkg", "com"),
        ("cdnjs", "cloudflare"),
        ("deb", "debian", "org"),
        ("debian", "org/debian"),
        ("conda", "anaconda"),
    )
]
FOLDERS = ["work", "root", "tmp", "home/somebody", "Users/Somebody"]
OUTSIDE = re.compile(
    "|".join(re.escape(host) for host in HOSTS) + r"|(?<![\w./$}-])/(?:(?:work|root|tmp)(?![\w.-])|(?:home|Users)/\w)"
)


def pointers_outside(text: str) -> list[str]:
    """Return every registry and every folder of somebody's machine that a text names."""
    return [found.group(0) for found in OUTSIDE.finditer(text)]


def test_no_file_names_a_registry_or_a_folder_of_this_machine():
    found = [(path, each) for path, text in _texts() for each in pointers_outside(text)]
    assert found == []


@pytest.mark.parametrize(
    ("text", "count"),
    (
        ("see https://" + HOSTS[0] + "/simple", 1),
        ('"resolved": "https://registry.' + HOSTS[2] + '/x.tgz"', 1),
        ("open('/" + FOLDERS[0] + "/main/x')", 1),
        ("cd /" + FOLDERS[1], 1),
        ("as in /" + FOLDERS[3] + "/rules.md", 1),
        ("GET /worker.js, /home and /rooted and ./webapp/work and /work-order", 0),
        ("kg/m2 J/mm /usr/bin/env python3", 0),
    ),
)
def test_pointer_outside_is_found(text, count):
    assert len(pointers_outside(text)) == count


def test_lock_file_has_hashes_and_no_addresses():
    text = (ROOT / "static" / "package-lock.json").read_text("utf-8")
    assert "http" not in re.sub(r'"(url|funding)": "[^"]*"', "", text)
    assert text.count('"integrity"') > 5
    for path in ("webapp/requirements.txt", "tests/requirements.txt"):
        pins = [line for line in (ROOT / path).read_text("utf-8").splitlines() if re.match("[a-z0-9]", line, re.I)]
        assert pins and all(re.match(r"[A-Za-z0-9._\[\]-]+==\S+", line) for line in pins), path


# ---------------------------------------------------------------- shared files keep to themselves

# What of the standard library both Pythons have and shared files may use.
BOTH_HAVE = {"math", "json"}


def _imports(path: pathlib.Path) -> set[str]:
    """Return the modules that a file imports when it runs (not under TYPE_CHECKING)."""
    found = set()
    tree = ast.parse(path.read_text("utf-8"))
    skipped = {
        id(inner)
        for node in ast.walk(tree)
        if isinstance(node, ast.If) and isinstance(node.test, ast.Name) and node.test.id == "TYPE_CHECKING"
        for inner in ast.walk(node)
    }
    for node in ast.walk(tree):
        if id(node) in skipped:
            continue
        if isinstance(node, ast.Import):
            found |= {alias.name for alias in node.names}
        elif isinstance(node, ast.ImportFrom):
            assert node.level == 0, f"{path} imports relatively"
            found |= {f"{node.module}.{alias.name}" for alias in node.names}
    return found


SHARED = bundle.shared_sources()


def _is_shared(name: str) -> bool:
    """Return whether `package.module` or `package.module.thing` is of a shared file or one that the bundle makes."""
    carried = {str(path.relative_to(ROOT).with_suffix("")).replace("/", ".") for path in SHARED}
    made = {"calculators.made", "webapp.shelf_entries", "webapp.shell_pieces"}
    carried |= {name.removesuffix(".__init__") for name in carried} | made
    return name in carried or name.rpartition(".")[0] in carried - {"calculators", "webapp", "webapp.words"}


@pytest.mark.parametrize("path", SHARED, ids=lambda path: str(path.relative_to(ROOT)))
def test_shared_file_imports_only_shared_files(path):
    for name in _imports(path):
        assert name.partition(".")[0] in BOTH_HAVE or _is_shared(name), name


@pytest.mark.parametrize("path", [path for path in SHARED if "calculators" in path.parts], ids=lambda path: path.name)
def test_calculators_do_not_know_the_web(path):
    assert not any(name.startswith("webapp") for name in _imports(path))


def test_formula_modules_do_not_read_the_machine():
    """No clock, no chance, no file, no network: the same question gets the same answer for ever."""
    for path in SHARED:
        for node in ast.walk(ast.parse(path.read_text("utf-8"))):
            if isinstance(node, ast.Call) and isinstance(node.func, ast.Name):
                assert node.func.id not in ("open", "input", "print", "eval", "exec"), (path, node.lineno)
