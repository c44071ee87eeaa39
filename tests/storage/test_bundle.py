"""Everything in one archive: packed, taken in elsewhere, equal; hostile archives are refused."""

import zipfile
from dataclasses import replace

import pytest
from logged_book import PHOTO, logged_book, png

from planner.values.refusal import Refused
from storage import bundle, photos
from storage.bench_book import BenchBook
from storage.bundle import pack, unpack
from storage.exchange import load


@pytest.fixture
def full(tmp_path):
    """A book with a logbook, history and a kept photo."""
    (tmp_path / PHOTO).write_bytes(png())
    path = tmp_path / "bench.tackfree"
    book = logged_book()
    with BenchBook.create(path, book) as bench:
        photo = photos.keep(path, tmp_path / PHOTO)
        project = book.projects[0]
        entry = replace(project.log[0], photos=(photo,))
        log = (entry, *project.log[1:])
        bench.apply("photo", replace(book, projects=(replace(project, log=log),)))
        first = replace(bench.known().projects[0], note="x")
        bench.apply("note", replace(bench.known(), projects=(first,)))
    return path


def packed(path, target):
    with BenchBook.open(path) as bench:
        assert pack(bench, target) == (1, photos.missing(path, bench.known()))
    return target


def test_a_photo_that_nobody_finds_is_named(full, tmp_path):
    (kept,) = photos.kept(full)
    kept.unlink()
    with BenchBook.open(full) as bench:
        count, missing = pack(bench, tmp_path / "all.zip")
    assert count == 0
    assert kept.name in missing


def test_what_is_packed_and_taken_in_elsewhere_is_equal(full, tmp_path):
    archive = packed(full, tmp_path / "all.zip")
    there = tmp_path / "else" / "my.tackfree"
    there.parent.mkdir()
    assert unpack(archive, there) == 1
    with BenchBook.open(full) as bench, BenchBook.open(there) as other:
        assert other.book() == bench.book()
        assert other.journal() == bench.journal()
        assert photos.missing(there, other.book()) == photos.missing(full, bench.book())
        names = {one.name: one.read_bytes() for one in photos.kept(full)}
        assert {one.name: one.read_bytes() for one in photos.kept(there)} == names
        assert other.undo() == "note"


def test_any_program_can_read_the_exchange_file_in_it(full, tmp_path):
    with zipfile.ZipFile(packed(full, tmp_path / "all.zip")) as opened:
        book = load(opened.read(bundle.EXCHANGE)).book
    with BenchBook.open(full) as bench:
        assert book == bench.book()


def test_nothing_is_overwritten(full, tmp_path):
    archive = packed(full, tmp_path / "all.zip")
    with pytest.raises(Refused, match="is there already"), BenchBook.open(full) as bench:
        pack(bench, archive)
    with pytest.raises(Refused, match="is there already"):
        unpack(archive, full)


@pytest.mark.parametrize(
    "name", ["../outside.tackfree", "/etc/passwd", "photos/../../x", "photos/a.jpg", "more.txt"]
)
def test_what_does_not_belong_there_is_refused(full, tmp_path, name):
    archive = packed(full, tmp_path / "all.zip")
    with zipfile.ZipFile(archive, "a") as opened:
        opened.writestr(name, b"x")
    with pytest.raises(Refused, match="is no archive of Tackfree"):
        unpack(archive, tmp_path / "new.tackfree")
    assert not (tmp_path / "new.tackfree").exists()


def test_a_photo_that_is_another_is_refused(full, tmp_path):
    archive = tmp_path / "all.zip"
    with BenchBook.open(full) as bench:
        bench.backup(tmp_path / "copy")
    with zipfile.ZipFile(archive, "w") as opened:
        opened.write(tmp_path / "copy", bundle.BOOK)
        opened.writestr(f"photos/{'0' * 64}.png", png())
    with pytest.raises(Refused, match="is not the photo of that name"):
        unpack(archive, tmp_path / "new.tackfree")


@pytest.mark.parametrize("content", [b"", b"no zip", b"PK\x05\x06" + b"\0" * 18])
def test_other_files_are_no_archives(tmp_path, content):
    (tmp_path / "x.zip").write_bytes(content)
    with pytest.raises(Refused):
        unpack(tmp_path / "x.zip", tmp_path / "new.tackfree")


def test_an_archive_that_unpacks_to_far_too_much_is_refused(tmp_path, monkeypatch):
    """A hundred megabytes of nothing, packed to a hundred kilobytes."""
    monkeypatch.setattr(bundle, "MOST_SMALL", 10_000_000)
    with zipfile.ZipFile(tmp_path / "x.zip", "w", zipfile.ZIP_DEFLATED) as opened:
        opened.writestr(bundle.BOOK, b"\0" * 100_000_000)
    with pytest.raises(Refused, match="far too large"):
        unpack(tmp_path / "x.zip", tmp_path / "new.tackfree")
