"""A project in one file: nothing is lost on the way, and a file of ill will does nothing."""

from __future__ import annotations

import io
import zipfile
from collections.abc import Iterable
from dataclasses import replace
from datetime import datetime, timedelta
from pathlib import Path

import pytest
from small_book import small_book

from app.service.importing import import_file
from app.service.project_files import keep_photos, packed, read_projects
from planner.values.book import Book
from planner.values.project import Logged
from planner.values.refusal import Refused
from storage import photos
from storage.exchange import Exchange, dump
from storage.project_file import EXCHANGE, unpack

PICTURE = b"\xff\xd8\xff" + b"a photo of our own" * 40


@pytest.fixture
def home(tmp_path: Path) -> tuple[Book, Path]:
    """Return a book of a project with a photo in its logbook, and where it lies."""
    path = tmp_path / "bench.tackfree"
    name = photos.keep_data(path, PICTURE)
    book = small_book()
    project = book.projects[0]
    model = project.models[0]
    start = datetime.fromisoformat("2031-03-01T19:00:00+01:00")
    fact = Logged(
        model=model.name,
        step=model.steps[0].id,
        start=start,
        end=start + timedelta(minutes=9),
        photos=(name,),
    )
    project = replace(project, log=(fact,))
    return replace(book, projects=(project,)), path


def zipped(entries: Iterable[tuple[str, bytes]]) -> bytes:
    buffer = io.BytesIO()
    with zipfile.ZipFile(buffer, "w", zipfile.ZIP_DEFLATED) as archive:
        for name, data in entries:
            archive.writestr(name, data)
    return buffer.getvalue()


def test_a_project_goes_to_another_book_with_its_photos(
    home: tuple[Book, Path], tmp_path: Path
) -> None:
    book, path = home
    project = book.projects[0]
    whole = packed(book, (project.name,), path)
    assert (whole.photos, whole.missing) == (1, ())
    file = tmp_path / "one.tackfree.zip"
    file.write_bytes(whole.data)
    read = read_projects(file)
    elsewhere = tmp_path / "elsewhere" / "bench.tackfree"
    elsewhere.parent.mkdir()
    assert keep_photos(read, elsewhere) == 1
    taken = import_file(replace(book, projects=()), read.exchange).book
    assert taken.projects == (project,)
    (name,) = project.log[0].photos
    assert photos.path_of(elsewhere, name).read_bytes() == PICTURE
    assert photos.missing(elsewhere, taken) == ()
    assert packed(taken, (project.name,), elsewhere).data == whole.data


def test_what_is_missing_is_told_and_the_rest_is_written(home: tuple[Book, Path]) -> None:
    book, path = home
    (name,) = book.projects[0].log[0].photos
    photos.path_of(path, name).write_bytes(b"something else")
    whole = packed(book, (), path)
    assert (whole.photos, whole.missing) == (0, (name,))
    assert unpack(whole.data).photos == {}


def test_an_exchange_file_is_still_read(home: tuple[Book, Path], tmp_path: Path) -> None:
    book, _ = home
    file = tmp_path / "old.json"
    file.write_bytes(dump(Exchange(book, "from before")))
    read = read_projects(file)
    assert (read.exchange.book, read.exchange.note, dict(read.photos)) == (book, "from before", {})


def sound() -> bytes:
    return dump(Exchange(small_book()))


PHOTO = "0" * 64 + ".jpg"


@pytest.mark.parametrize(
    ("entries", "where", "why"),
    [
        ([], "", "no project.json"),
        ([("photos/x.jpg", b"")], "photos/x.jpg", "does not belong"),
        ([(EXCHANGE, b"[]")], EXCHANGE, "exchange file"),
        ([(EXCHANGE, b'{"tackfree": 1}')], EXCHANGE + ".room", "is missing"),
        ([(EXCHANGE, None), ("../bench.tackfree", b"x")], "../bench.tackfree", "does not belong"),
        ([(EXCHANGE, None), ("/etc/passwd", b"x")], "/etc/passwd", "does not belong"),
        ([(EXCHANGE, None), ("photos/../../x.jpg", b"x")], "photos/../../x.jpg", "does not belong"),
        ([(EXCHANGE, None), ("photos\\" + PHOTO, b"x")], "photos", "does not belong"),
        ([(EXCHANGE, None), ("photos/" + PHOTO, PICTURE)], "photos/" + PHOTO, "not the photo"),
        ([(EXCHANGE, None), ("notes.txt", b"x")], "notes.txt", "does not belong"),
        ([(EXCHANGE, b" " * 60_000_000)], EXCHANGE, "unpacks to far more"),
    ],
)
def test_what_does_not_belong_there_is_refused_by_its_name(
    entries: list[tuple[str, bytes | None]], where: str, why: str
) -> None:
    data = zipped((name, sound() if content is None else content) for name, content in entries)
    with pytest.raises(Refused) as refused:
        unpack(data)
    assert refused.value.place.startswith(where)
    assert why in refused.value.mend


def test_a_second_file_of_one_name_is_refused() -> None:
    with pytest.warns(UserWarning, match="Duplicate"):
        data = zipped([(EXCHANGE, sound()), (EXCHANGE, sound())])
    with pytest.raises(Refused, match="twice"):
        unpack(data)


def outcome(data: bytes) -> str | Book:
    """Return what a file holds, or the line that refuses it."""
    try:
        return unpack(data).exchange.book
    except Refused as refused:
        return refused.line


def test_any_damage_is_refused_in_one_line_or_does_no_harm() -> None:
    whole = zipped([(EXCHANGE, sound())])
    for at in range(0, len(whole), max(1, len(whole) // 60)):
        for bad in (whole[:at], whole[:at] + bytes([whole[at] ^ 0xFF]) + whole[at + 1 :]):
            told = outcome(bad)
            assert told == small_book() or (isinstance(told, str) and "\n" not in told)
    assert isinstance(outcome(whole[: len(whole) // 2]), str)


def test_an_entry_that_lies_about_its_size_is_cut_off() -> None:
    data = bytearray(zipped([(EXCHANGE, b" " * 3_000_000 + b"{}")]))
    at = data.rfind(b"PK\x01\x02")
    data[at + 24 : at + 28] = (100).to_bytes(4, "little")  # its size in the directory
    with pytest.raises(Refused):
        unpack(bytes(data))
