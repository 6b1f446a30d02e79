"""What takes long to make is made once, and a bad copy of it is never used."""

import pytest

from webapp import kept

pytestmark = pytest.mark.quick


class Maker:
    """Makes the same thing each time, and counts how often."""

    def __init__(self):
        self.times = 0

    def __call__(self):
        self.times += 1
        return b"what was made"


@pytest.fixture
def folder(tmp_path, monkeypatch):
    monkeypatch.setattr(kept, "FOLDER", tmp_path / "kept")
    monkeypatch.setattr(kept, "_in_use", set())
    return tmp_path / "kept"


def test_what_was_made_is_read_back(folder):
    make = Maker()
    assert kept.kept("x", b"source", make) == kept.kept("x", b"source", make) == b"what was made"
    assert make.times == 1
    assert [path.suffix for path in folder.iterdir()] == [".x"]


def test_another_source_or_another_kind_is_made_anew(folder):
    make = Maker()
    for kind, source in (("x", b"source"), ("x", b"Source"), ("y", b"source")):
        kept.kept(kind, source, make)
    assert make.times == 3


@pytest.mark.parametrize("spoilt", (b"", b"w", b"hat was made", bytes(32) + b"what was made"))
def test_a_spoilt_copy_is_made_again(folder, spoilt):
    make = Maker()
    kept.kept("x", b"source", make)
    (path,) = folder.iterdir()
    good = path.read_bytes()
    path.write_bytes(spoilt)
    assert kept.kept("x", b"source", make) == b"what was made"
    assert (make.times, path.read_bytes()) == (2, good)


def test_a_copy_cut_short_at_any_byte_is_made_again(folder):
    make = Maker()
    kept.kept("x", b"source", make)
    (path,) = folder.iterdir()
    good = path.read_bytes()
    for length in range(len(good)):
        path.write_bytes(good[:length])
        assert kept.kept("x", b"source", make) == b"what was made"
    assert make.times == 1 + len(good)


def test_where_nothing_can_be_written_it_is_made_each_time(folder):
    folder.write_text("a file where the folder should be")
    make = Maker()
    assert kept.kept("x", b"source", make) == kept.kept("x", b"source", make) == b"what was made"
    assert make.times == 2
    kept.forget_others()


def test_what_nobody_asked_for_is_forgotten(folder):
    make = Maker()
    kept.kept("x", b"used", make)
    (used,) = folder.iterdir()
    (folder / "of-another-version.x").write_bytes(b"")
    (folder / "cut-short.new").write_bytes(b"")
    kept.forget_others()
    assert list(folder.iterdir()) == [used]
