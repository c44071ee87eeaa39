"""Photos are kept whole, once, by what is in them, and nothing else is."""

from __future__ import annotations

import hashlib
from dataclasses import replace
from datetime import UTC, date, datetime
from pathlib import Path

import pytest

from planner.values.book import Book
from planner.values.project import Logged
from planner.values.refusal import Refused
from planner.values.supplies import Card, Drops
from storage import photos

# First bytes by the formats' own specifications; see the sources in the module.
HEADS = {
    "jpg": b"\xff\xd8\xff\xe0\x00\x10JFIF\x00",
    "png": b"\x89PNG\r\n\x1a\n\x00\x00\x00\rIHDR",
    "gif": b"GIF89a\x01\x00\x01\x00",
    "webp": b"RIFF\x24\x00\x00\x00WEBPVP8 ",
    "tif": b"II*\x00\x08\x00\x00\x00",
    "bmp": b"BM\x46\x00\x00\x00\x00\x00\x00\x00\x36\x00\x00\x00\x28\x00\x00\x00" + b"\0" * 20,
    "heic": b"\x00\x00\x00\x18ftypheic\x00\x00\x00\x00",
}


@pytest.mark.parametrize("kind", HEADS)
def test_a_photo_is_kept_by_its_content(kind: str, tmp_path: Path) -> None:
    book, source = tmp_path / "bench.tackfree", tmp_path / "any name.dat"
    data = HEADS[kind] + b"pixels"
    source.write_bytes(data)
    name = photos.keep(book, source)
    assert name == f"{hashlib.sha256(data).hexdigest()}.{kind}"
    source.write_bytes(b"gone")
    assert photos.path_of(book, name).read_bytes() == data
    assert photos.folder_of(book).name == "bench.tackfree.photos"


def test_the_same_photo_is_kept_once_and_mended_if_it_was_damaged(tmp_path: Path) -> None:
    book = tmp_path / "bench.tackfree"
    for name in ("one.jpg", "two.jpg"):
        (tmp_path / name).write_bytes(HEADS["jpg"])
    first = photos.keep(book, tmp_path / "one.jpg")
    photos.path_of(book, first).write_bytes(b"half")
    assert photos.keep(book, tmp_path / "two.jpg") == first
    assert photos.path_of(book, first).read_bytes() == HEADS["jpg"]
    assert [path.name for path in photos.folder_of(book).iterdir()] == [first]


@pytest.mark.parametrize("data", [b"", b"%PDF-1.7", b"BM", b"<svg/>", b"RIFF....WAVE", b"\xff\xd8"])
def test_what_is_no_image_is_refused(data: bytes, tmp_path: Path) -> None:
    source = tmp_path / "fake.jpg"
    source.write_bytes(data)
    with pytest.raises(Refused, match="is no image"):
        photos.keep(tmp_path / "bench.tackfree", source)
    assert not photos.folder_of(tmp_path / "bench.tackfree").exists()


def test_what_cannot_be_read_or_named_is_refused(tmp_path: Path) -> None:
    with pytest.raises(Refused, match="cannot be read"):
        photos.keep(tmp_path / "bench.tackfree", tmp_path / "none.jpg")
    for name in ("../secret.jpg", "a.jpg", "0" * 64 + ".exe"):
        with pytest.raises(Refused, match="no kept photo"):
            photos.path_of(tmp_path / "bench.tackfree", name)


def test_missing_photos_are_named(demo_book: Book, tmp_path: Path) -> None:
    book = tmp_path / "bench.tackfree"
    (tmp_path / "a.png").write_bytes(HEADS["png"])
    kept = photos.keep(book, tmp_path / "a.png")
    lost = "f" * 64 + ".jpg"
    project = demo_book.projects[0]
    model = project.models[0]
    entry = Logged(
        model=model.name,
        step=model.steps[0].id,
        start=datetime(2031, 3, 1, tzinfo=UTC),
        photos=(kept, lost),
    )
    with_log = replace(demo_book, projects=(replace(project, log=(entry,)),))
    assert photos.missing(book, with_log) == (lost,)


def test_a_missing_photo_of_a_sample_card_is_named(demo_book: Book, tmp_path: Path) -> None:
    book = tmp_path / "bench.tackfree"
    (tmp_path / "a.png").write_bytes(HEADS["png"])
    kept, lost = photos.keep(book, tmp_path / "a.png"), "e" * 64 + ".png"
    drops = (Drops(coating=demo_book.coatings[0].name, drops=3),)
    cards = tuple(
        Card(name=name, on=date(2031, 3, 1), drops=drops, photo=photo)
        for name, photo in (("first", kept), ("second", lost), ("third", ""))
    )
    with_cards = replace(demo_book, supplies=replace(demo_book.supplies, cards=cards))
    assert photos.missing(book, with_cards) == (lost,)


def test_photos_of_a_book_behind_a_link_lie_beside_the_book(tmp_path):
    real = tmp_path / "there" / "bench.tackfree"
    real.parent.mkdir()
    real.touch()
    link = tmp_path / "link.tackfree"
    link.symlink_to(real)
    assert (
        photos.folder_of(link) == photos.folder_of(real) == real.with_name("bench.tackfree.photos")
    )
