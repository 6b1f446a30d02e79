"""What the phone carries: nothing missing, and a build that names exactly this."""

import ast
import json
import shutil
from typing import Any

import pytest

from calculators import made
from webapp import bundle, packing, shelf_entries, shell_pieces, translations

# MicroPython's own, of those that the dialect allows.
BUILT_IN = ("math", "json")
MOST_BYTES = 570_000  # just under two minutes at the 5 kB a second of a poor signal
MOST_BYTES_OF_A_LANGUAGE = 110_000  # beside that, for whoever reads it

# ---------------------------------------------------------------- what is carried


def test_every_module_that_a_carried_file_imports_is_carried():
    files = bundle.python_files()
    for name, source in files.items():
        for module in imported(source):
            path = module.replace(".", "/")
            assert module in BUILT_IN or f"{path}.py" in files or f"{path}/__init__.py" in files, f"{name}: {module}"


def imported(source):
    """Return the dotted names of all modules that a source imports, those for the type checker aside."""
    found = set()
    waiting = [ast.parse(source)]
    while waiting:
        node = waiting.pop()
        if isinstance(node, ast.If) and isinstance(node.test, ast.Name) and node.test.id == "TYPE_CHECKING":
            continue
        if isinstance(node, ast.Import):
            found |= {alias.name for alias in node.names}
        elif isinstance(node, ast.ImportFrom):
            assert node.module is not None, "imports from nowhere are not for shared files"
            found.add(node.module)
            if (bundle.ROOT / node.module.replace(".", "/")).is_dir():
                inside = {f"{node.module}.{alias.name}" for alias in node.names}
                found |= {each for each in inside if (bundle.ROOT / (each.replace(".", "/") + ".py")).exists()}
        waiting += ast.iter_child_nodes(node)
    return found


def test_the_walk_over_imports_sees_them():
    source = "import math\nfrom calculators.facts import units\nfrom webapp import fragments\n"
    source += "if TYPE_CHECKING:\n    import re\n"
    expected = {"math", "calculators.facts", "calculators.facts.units", "webapp", "webapp.fragments"}
    assert imported(source) == expected


def test_every_package_folder_of_a_carried_file_is_a_package():
    files = bundle.python_files()
    for name in files:
        folders = name.split("/")[:-1]
        for depth in range(1, len(folders) + 1):
            assert "/".join([*folders[:depth], "__init__.py"]) in files, name


def test_every_calculator_is_carried():
    files = bundle.python_files()
    assert made.CALCULATOR_MODULES
    assert all(f"calculators/{name}.py" in files for name in made.CALCULATOR_MODULES)


def test_the_literals_of_the_phone_equal_what_was_made():
    files = bundle.python_files()
    units: dict[str, object] = {}
    shell: dict[str, object] = {}
    shelf: dict[str, Any] = {}
    exec(files["calculators/made.py"], units)
    exec(files["webapp/shell_pieces.py"], shell)
    exec(files["webapp/shelf_entries.py"], shelf)
    assert units["FACTORS"] == made.FACTORS
    assert units["CALCULATOR_MODULES"] == made.CALCULATOR_MODULES
    assert shell["PIECES"] == shell_pieces.PIECES
    assert shelf["entries"]() == shelf_entries.entries()


@pytest.mark.parametrize("language", translations.LANGUAGES)
def test_a_language_is_carried_apart_with_its_own_literals(language):
    files = bundle.translated_files(language)
    assert not set(files) & set(bundle.python_files())
    made_there: dict[str, Any] = {}
    exec(files[f"webapp/words/{language}/made.py"], made_there)
    assert made_there["ENTRIES"] == shelf_entries.entries(language)
    assert made_there["PIECES"] == shell_pieces.pieces(language)
    carried = bundle.Bundle()
    assert json.loads(carried.files[f"{language}.json"]) == {"files": files}
    assert not [address for address in carried.precache if language + ".json" in address]
    packed = packing.packed(carried.files[f"{language}.json"], ["br"])[1]
    assert len(packed) <= MOST_BYTES_OF_A_LANGUAGE


def test_the_python_that_is_carried_is_one_json_file_of_the_sources():
    assert json.loads(bundle.Bundle().files["pocket.json"]) == {"files": bundle.python_files()}


def test_carried_python_is_ascii_so_that_every_reader_gets_the_same_bytes():
    assert bundle.Bundle().files["pocket.json"].isascii()


def test_what_goes_over_the_air_fits():
    carried = bundle.Bundle()
    contents = [carried.worker, *(carried.files[address.partition("?")[0]] for address in carried.precache)]
    assert sum(len(packing.packed(content, ["br"])[1]) for content in contents) <= MOST_BYTES


# ---------------------------------------------------------------- the build names what is carried


def changed_static(tmp_path, monkeypatch, name):
    """Return the build when one byte of one file under static/ is another."""
    folder = tmp_path / "static"
    for each in (*bundle.PRECACHED_STATIC, *bundle.PLAIN_STATIC, "manifest.webmanifest", "built/worker.js"):
        (folder / each).parent.mkdir(parents=True, exist_ok=True)
        shutil.copy(bundle.STATIC / each, folder / each)
    content = (folder / name).read_bytes()
    (folder / name).write_bytes(content[:-1] + bytes([content[-1] ^ 1]))
    monkeypatch.setattr(bundle, "STATIC", folder)
    monkeypatch.setattr(shell_pieces, "_static", str(folder))
    return bundle.Bundle().build


def test_the_same_content_is_the_same_build():
    assert bundle.Bundle().build == bundle.Bundle().build


@pytest.mark.parametrize(
    "name", [*bundle.PRECACHED_STATIC, *bundle.PLAIN_STATIC, "manifest.webmanifest", "built/worker.js"]
)
def test_another_byte_in_a_carried_file_is_another_build(tmp_path, monkeypatch, name):
    files = bundle.python_files()
    monkeypatch.setattr(bundle, "python_files", lambda: files)
    before = bundle.Bundle().build
    assert changed_static(tmp_path, monkeypatch, name) != before


def test_another_byte_in_any_carried_source_is_another_build(monkeypatch):
    files = bundle.python_files()
    builds = {bundle.Bundle().build}
    for name in files:
        monkeypatch.setattr(bundle, "python_files", lambda name=name: {**files, name: files[name] + "\n"})
        builds.add(bundle.Bundle().build)
    assert len(builds) == 1 + len(files)


def test_a_comment_is_not_carried_so_it_is_no_other_build():
    full = bundle.sources()
    assert bundle.shortened({path: source + "# why\n" for path, source in full.items()}) == bundle.shortened(full)


def test_the_worker_names_its_build_and_every_carried_file_with_its_hash():
    carried = bundle.Bundle()
    first, _, rest = carried.worker.partition(b"\n")
    head = json.loads(first.removeprefix(b"self.BUILD=").removesuffix(b";"))
    assert head["build"] == carried.build
    assert head["precache"] == carried.precache
    assert rest == (bundle.STATIC / "built" / "worker.js").read_bytes()
    for name in (*bundle.PRECACHED_STATIC, *bundle.PLAIN_STATIC):
        assert any(address.partition("?")[0] == f"static/{name}" for address in carried.precache)
