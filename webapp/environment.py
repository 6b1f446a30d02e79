"""Everything between a fresh clone and a running app: Python packages, npm parts, built files.

The standard library alone, because this runs before anything is installed. Whatever is made leaves
a stamp (a hash of what it was made from) as its very last act, so a set-up that was cut short is
made again, and one that is up to date costs only the hashing of a few files.
"""

import contextlib
import hashlib
import importlib.util
import json
import os
import shutil
import subprocess
import sys
from collections.abc import Iterable, Iterator
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
VENV = ROOT / ".venv"
VENV_PYTHON = VENV / "bin" / "python"
VENV_STAMP = VENV / "setup-stamp.json"
LOG = VENV / "setup.log"
LOCK = ROOT / ".setup-lock"

RUNTIME_REQUIREMENTS = ROOT / "webapp" / "requirements.txt"
TEST_REQUIREMENTS = ROOT / "tests" / "requirements.txt"
NODE_REQUIREMENTS = ROOT / "webapp" / "node-requirements.txt"

STATIC = ROOT / "static"
NODE_MODULES = STATIC / "node_modules"
NODE_STAMP = NODE_MODULES / ".setup-stamp"
BUILT = STATIC / "built"
BUILT_STAMP = BUILT / ".setup-stamp"

# The oldest node that the linter of static/ runs on.
OLDEST_NODE = (20, 19)


class SetupProblem(Exception):
    """Something the reader has to put right; the message is one sentence that says what."""


def prepare(for_tests: bool = False) -> None:
    """Bring .venv, static/node_modules and static/built up to date."""
    if os.name != "posix":
        raise SetupProblem("Puddlebook's set-up runs on Linux, macOS or the Windows Subsystem for Linux.")
    if _is_ready(for_tests):
        return
    with _only_one_set_up() as lock:
        _prepare_python(for_tests, lock)
        _prepare_node_modules(for_tests, lock)
        _prepare_built_files(lock)


def environment_variables() -> dict[str, str]:
    """Variables for whatever runs inside .venv: its commands come first, node among them if installed."""
    variables = dict(os.environ)
    variables["PATH"] = str(VENV / "bin") + os.pathsep + variables.get("PATH", os.defpath)
    variables["VIRTUAL_ENV"] = str(VENV)
    # Playwright drives the system's Chromium and must never fetch a browser of its own.
    variables["PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD"] = "1"
    variables.pop("PYTHONHOME", None)
    return variables


def find_node() -> str | None:
    """Path of a node that is new enough: the machine's own if npm is there too, else the one in .venv."""
    machine_node = shutil.which("node")
    if machine_node and shutil.which("npm") and _node_version(machine_node) >= OLDEST_NODE:
        return machine_node
    installed = VENV / "bin" / "node"
    return str(installed) if installed.exists() else None


def find_chromium() -> str | None:
    """Path of the Chromium that the browser tests drive, or None."""
    chosen = os.environ.get("CHROMIUM")
    if chosen:
        if not shutil.which(chosen):
            raise SetupProblem(f"CHROMIUM is set to {chosen}, which is not a program that can be run.")
        return shutil.which(chosen)
    for name in ("/usr/bin/chromium", "chromium", "chromium-browser", "google-chrome"):
        found = shutil.which(name)
        if found:
            return found
    return None


# --- stamps ---------------------------------------------------------------------------------------


def _hash_of(*paths: Path) -> str:
    digest = hashlib.sha256()
    for path in paths:
        content = path.read_bytes()
        digest.update(f"{path.relative_to(ROOT)} {len(content)}\n".encode())
        digest.update(content)
    return digest.hexdigest()


def _read_stamp(path: Path) -> str:
    try:
        return path.read_text(encoding="utf-8")
    except FileNotFoundError:
        return ""


def _write_stamp(path: Path, text: str) -> None:
    unfinished = path.with_name(path.name + ".new")
    unfinished.write_text(text, encoding="utf-8")
    unfinished.replace(path)


def _is_ready(for_tests: bool) -> bool:
    return _python_is_ready(for_tests) and _node_modules_are_ready(for_tests) and _built_files_are_ready()


# --- Python ---------------------------------------------------------------------------------------


def _requirements(for_tests: bool) -> tuple[Path, ...]:
    return (RUNTIME_REQUIREMENTS, TEST_REQUIREMENTS) if for_tests else (RUNTIME_REQUIREMENTS,)


def _installed() -> dict[str, str]:
    """What .venv was made from, by name; empty if there is none or it was not finished."""
    stamp = _read_stamp(VENV_STAMP)
    return json.loads(stamp) if stamp and VENV_PYTHON.exists() else {}


def _python() -> str:
    # With its folder, because the commands in .venv/bin break when the project is moved.
    return f"{sys.version_info.major}.{sys.version_info.minor} in {VENV}"


def _wanted_now(names: Iterable[str]) -> dict[str, str]:
    """What .venv should have been made from, for those names that are asked about."""
    paths = {path.relative_to(ROOT).as_posix(): path for path in (*_requirements(True), NODE_REQUIREMENTS)}
    current = {"python": _python()} | {name: _hash_of(path) for name, path in paths.items()}
    return {name: current.get(name, "") for name in names}


def _python_is_ready(for_tests: bool) -> bool:
    names = ("python", *(path.relative_to(ROOT).as_posix() for path in _requirements(for_tests)))
    installed = _installed()
    return all(installed.get(name) == wanted for name, wanted in _wanted_now(names).items())


def _prepare_python(for_tests: bool, lock: int) -> None:
    if _python_is_ready(for_tests):
        return
    installed = _installed()
    # Any change of pins starts afresh: an environment that was only added to would keep what is no
    # longer pinned, and a test could lean on it.
    if not installed or _wanted_now(tuple(installed)) != installed:
        _make_venv(lock)
    _install(_requirements(for_tests), lock)


def _make_venv(lock: int) -> None:
    if not importlib.util.find_spec("venv") or not importlib.util.find_spec("ensurepip"):
        raise SetupProblem(
            "This Python lacks its venv and ensurepip modules: install them first"
            " (on Debian or Ubuntu: apt-get install python3-venv)."
        )
    if VENV.exists():
        shutil.rmtree(VENV)
    VENV.mkdir()
    _say("making .venv")
    # The interpreter behind this one, in case this one lives in the .venv that was just removed.
    base = getattr(sys, "_base_executable", None) or sys.executable
    _run([base, "-I", "-m", "venv", str(VENV)], lock, "Python's venv module could not make .venv")


def _install(requirements: tuple[Path, ...], lock: int) -> None:
    """Install pinned files on top of what .venv has, without a stamp while it is being done."""
    installed = _installed()
    VENV_STAMP.unlink(missing_ok=True)
    names = tuple(path.relative_to(ROOT).as_posix() for path in requirements)
    _say("installing the Python packages of " + " and ".join(names))
    # The files name every package there is to install, worked out for the oldest Python that we run
    # on; left to itself, pip would look for what another Python might like in place of one of them.
    command = [str(VENV_PYTHON), "-I", "-m", "pip", "install", "--require-hashes", "--no-deps", "--no-input"]
    for path in requirements:
        command += ["-r", str(path)]
    _run(command, lock, "pip could not install the Python packages, for which the first set-up needs a network")
    installed.update(_wanted_now(("python", *names)))
    _write_stamp(VENV_STAMP, json.dumps(installed, indent=1))


# --- node -----------------------------------------------------------------------------------------


def _node_version(node: str) -> tuple[int, ...]:
    answer = subprocess.run([node, "--version"], capture_output=True, text=True, check=False).stdout
    parts = answer.strip().removeprefix("v").split(".")
    return tuple(int(part) for part in parts) if all(part.isdigit() for part in parts) else ()


def _node(lock: int) -> str:
    if not find_node():
        _install((NODE_REQUIREMENTS,), lock)
    found = find_node()
    if not found:
        raise SetupProblem("There is no node here: install node 20.19 or newer together with npm.")
    return found


def _node_modules_stamp(for_tests: bool) -> str:
    parts = "all parts" if for_tests else "production parts"
    return parts + " " + _hash_of(STATIC / "package.json", STATIC / "package-lock.json")


def _node_modules_are_ready(for_tests: bool) -> bool:
    stamp = _read_stamp(NODE_STAMP)
    return stamp == _node_modules_stamp(True) or (not for_tests and stamp == _node_modules_stamp(False))


def _prepare_node_modules(for_tests: bool, lock: int) -> None:
    if _node_modules_are_ready(for_tests):
        return
    node = _node(lock)
    npm = VENV / "bin" / "npm" if Path(node).parent == VENV / "bin" else shutil.which("npm")
    NODE_STAMP.unlink(missing_ok=True)
    _say("installing the npm parts of static/package.json")
    # No package's own scripts run: none of the parts needs any, and none is to be trusted with it.
    command = [str(npm), "ci", "--ignore-scripts", "--no-audit", "--no-fund"]
    if not for_tests:
        command.append("--omit=dev")
    _run(command, lock, "npm could not install the parts, for which the first set-up needs a network", STATIC)
    _write_stamp(NODE_STAMP, _node_modules_stamp(for_tests))


# --- built files ----------------------------------------------------------------------------------


def _built_files_stamp() -> str:
    own_folders = [path for path in STATIC.iterdir() if path.is_dir() and path not in (NODE_MODULES, BUILT)]
    sources = [path for path in STATIC.iterdir() if path.is_file()]
    sources += [path for folder in own_folders for path in folder.rglob("*")]
    scripts = sorted(path for path in sources if path.suffix in (".js", ".mjs", ".mts"))
    return _hash_of(STATIC / "package-lock.json", *scripts)


def _built_files_are_ready() -> bool:
    return _read_stamp(BUILT_STAMP) == _built_files_stamp()


def _prepare_built_files(lock: int) -> None:
    if _built_files_are_ready():
        return
    stamp = _built_files_stamp()
    BUILT_STAMP.unlink(missing_ok=True)
    _say("building static/built")
    _run([_node(lock), str(STATIC / "build.mjs")], lock, "static/build.mjs failed", show=True)
    _write_stamp(BUILT_STAMP, stamp)


# --- running and waiting --------------------------------------------------------------------------


def _say(what: str) -> None:
    print(f"Puddlebook set-up: {what} ...", file=sys.stderr, flush=True)


def _run(command: list[str], lock: int, problem: str, folder: Path = ROOT, show: bool = False) -> None:
    """Run one command of the set-up, its output in the log (or on the terminal if `show`)."""
    with LOG.open("ab") as log:
        log.write(f"\n$ {' '.join(command)}\n".encode())
        log.flush()
        started_at = log.tell()
        output = None if show else log
        # The child holds the lock too: if this process is killed, the next set-up waits until its
        # orphan has stopped writing.
        status = subprocess.run(
            command,
            cwd=folder,
            env=environment_variables(),
            stdin=subprocess.DEVNULL,
            stdout=output,
            stderr=output,
            pass_fds=(lock,),
            check=False,
        ).returncode
    if status:
        if not show and os.environ.get("CI"):
            # Nobody can open the log of a machine that is gone.
            sys.stderr.write(LOG.read_bytes()[started_at:].decode(errors="replace"))
        where = "" if show else f" (what it said is in {LOG})"
        raise SetupProblem(f"{problem}{where}.")


@contextlib.contextmanager
def _only_one_set_up() -> Iterator[int]:
    """Hold the lock file; yields its descriptor, for children to hold as well."""
    import fcntl  # not on Windows, which `prepare` turns away in words

    lock = os.open(LOCK, os.O_RDWR | os.O_CREAT, 0o644)
    try:
        try:
            fcntl.flock(lock, fcntl.LOCK_EX | fcntl.LOCK_NB)
        except BlockingIOError:
            _say("waiting for another set-up of this folder to finish")
            fcntl.flock(lock, fcntl.LOCK_EX)
        yield lock
    finally:
        os.close(lock)
