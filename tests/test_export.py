"""What an export writes, and that it takes nothing away that it did not put there."""

import json

from webapp import export, pocket, shelf
from webapp.bundle import Bundle


def test_every_address_of_the_book_has_a_page_of_arrival(tmp_path, capsys):
    assert export.main([str(tmp_path / "book")]) == 0
    assert "over https" in capsys.readouterr().out
    for name in (*shelf.names(), *pocket.PAGES):
        text = (tmp_path / "book" / name / "index.html").read_text()
        assert f'data-arrive="../{name}"' in text and 'src="../static/built/app.js' in text
        assert 'href="../#main"' not in text and 'href="#main"' in text
        assert "frame-ancestors" not in text and "default-src" in text
    written = {str(path.relative_to(tmp_path / "book")) for path in (tmp_path / "book").rglob("*") if path.is_file()}
    assert set(Bundle().files) | {"worker.js", "index.html", "404.html"} < written


def test_exporting_again_takes_out_what_is_no_longer_there_and_nothing_else(tmp_path):
    folder = tmp_path / "book"
    assert export.main([str(folder)]) == 0
    mark = folder / export.MARK
    said = json.loads(mark.read_text())
    (folder / "old").mkdir()
    (folder / "old" / "index.html").write_text("of a version before")
    (tmp_path / "outside").write_text("not of the export")
    mark.write_text(json.dumps({**said, "files": [*said["files"], "old/index.html", "../outside"]}))
    (folder / "CNAME").write_text("the host's own")
    assert export.main([str(folder)]) == 0
    assert not (folder / "old").exists()
    assert (folder / "CNAME").exists() and (tmp_path / "outside").exists()


def test_a_folder_with_something_else_in_it_is_left_alone(tmp_path, capsys):
    (tmp_path / "letter").write_text("dear")
    assert export.main([str(tmp_path)]) == 1
    assert "not empty" in capsys.readouterr().err
    assert [each.name for each in tmp_path.iterdir()] == ["letter"]
