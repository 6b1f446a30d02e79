"""The page's own functions that need no browser, under node."""

import subprocess
from pathlib import Path

import pytest

from webapp import environment

HERE = Path(__file__).parent
TESTS = sorted(HERE.glob("*.test.mjs"))


@pytest.mark.quick
@pytest.mark.parametrize("path", TESTS, ids=lambda path: path.name)
def test_under_node(path):
    node = environment.find_node()
    assert node, "the page's tests need node: ./tests/run installs it"
    ran = subprocess.run([node, "--test", str(path)], capture_output=True, text=True, check=False)
    assert ran.returncode == 0, ran.stdout + ran.stderr
    assert "# fail 0" in ran.stdout or "fail 0" in ran.stdout
    assert "# tests 0" not in ran.stdout
