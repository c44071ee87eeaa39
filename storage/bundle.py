"""All that one person has, in one archive: the book with its history, its photos, in the open.

A zip file with the bench book itself, the photos that it names, and the book
once more as an exchange file, which any program can read.
"""

from __future__ import annotations

import os
import tempfile
import zipfile
from pathlib import Path
from typing import Final

from planner.values.message import message
from planner.values.refusal import Refused, demand
from storage import backups, photos
from storage.atomic_write import name_new, unfinished
from storage.bench_book import BenchBook
from storage.errors import BookTrouble, told_plainly
from storage.exchange import Exchange, dump
from storage.project_file import DAMAGED
from storage.sound_book import read_file

BOOK: Final = "bench.tackfree"
EXCHANGE: Final = "everything.json"
PHOTOS: Final = "photos/"
STAMP: Final = (1980, 1, 1, 0, 0, 0)  # the same book makes the same archive
MOST_FILES: Final = 20_000
MOST_BYTES: Final = 20_000_000_000  # unpacked
MOST_SMALL: Final = 200_000_000  # of the book in it


def pack(bench: BenchBook, target: Path) -> tuple[int, tuple[str, ...]]:
    """Write everything to ``target``, which must not exist.

    Return how many photos went along, and which the logbook names but nobody finds.

    Raises
    ------
    BookTrouble
        If something lies there, or it cannot be written.
    """
    if target.exists():
        raise BookTrouble(str(target), "is there already; choose another name")
    named = photos.kept(bench.path)
    with (
        told_plainly(target),
        tempfile.TemporaryDirectory(prefix="tackfree-pack-") as folder,
        unfinished(target) as half,
    ):
        copy = Path(folder) / BOOK
        backups.write_copy(bench.path, copy)
        with zipfile.ZipFile(half, "x", zipfile.ZIP_DEFLATED) as archive:
            _add(archive, BOOK, copy.read_bytes())
            _add(archive, EXCHANGE, dump(Exchange(bench.known())))
            for photo in named:
                _add(archive, PHOTOS + photo.name, photo.read_bytes(), stored=True)
        try:
            name_new(half, target)
        except FileExistsError:
            raise BookTrouble(str(target), "is there already; choose another name") from None
    return len(named), photos.missing(bench.path, bench.known())


def unpack(archive: Path, target: Path) -> int:
    """Make a bench book of such an archive; return how many photos came along.

    Raises
    ------
    Refused
        If it is none, or holds what does not belong there; nothing is left then.
    """
    target = Path(os.path.realpath(target))
    if target.exists():
        raise BookTrouble(str(target), "is there already; choose another name")
    try:
        with told_plainly(archive), zipfile.ZipFile(archive) as opened:
            return _unpack(opened, archive, target)
    except DAMAGED as problem:
        raise Refused(
            str(archive), message("is no archive of Tackfree, or damaged; pack it again")
        ) from problem


def _unpack(opened: zipfile.ZipFile, archive: Path, target: Path) -> int:
    entries = opened.infolist()
    sound = len(entries) <= MOST_FILES and sum(one.file_size for one in entries) <= MOST_BYTES
    demand(sound, str(archive), message("holds far more than a bench book does"))
    names = {one.filename: one for one in entries}
    foreign = [name for name in names if not _ours(name)]
    demand(
        BOOK in names and not foreign and len(names) == len(entries),
        str(archive),
        message("is no archive of Tackfree, or damaged; pack it again"),
    )
    demand(names[BOOK].file_size <= MOST_SMALL, str(archive), message("holds far too large a book"))
    pictures = [one for name, one in names.items() if name.startswith(PHOTOS)]
    with unfinished(target) as half:
        half.write_bytes(_content(opened, names[BOOK], MOST_SMALL))
        read_file(half)
        for one in pictures:
            _keep_photo(target, one, _content(opened, one, photos.MOST_BYTES), archive)
        try:
            name_new(half, target)
        except FileExistsError:
            raise BookTrouble(str(target), "is there already; choose another name") from None
    return len(pictures)


def _ours(name: str) -> bool:
    return name in (BOOK, EXCHANGE) or (
        name.startswith(PHOTOS) and photos.NAME.fullmatch(name.removeprefix(PHOTOS)) is not None
    )


def _content(opened: zipfile.ZipFile, entry: zipfile.ZipInfo, most: int) -> bytes:
    """Return what an entry holds, no more than it says and than is allowed."""
    with opened.open(entry) as file:
        data = file.read(most + 1)
    demand(len(data) <= most, entry.filename, message("is far too large"))
    return data


def _keep_photo(target: Path, entry: zipfile.ZipInfo, data: bytes, archive: Path) -> None:
    name = entry.filename.removeprefix(PHOTOS)
    demand(
        photos.name_of(data) == name,
        str(archive),
        message("{photo} in it is not the photo of that name", photo=name),
    )
    folder = photos.folder_of(target)
    folder.mkdir(exist_ok=True)
    if not (folder / name).exists():
        with unfinished(folder / name) as half:
            half.write_bytes(data)
            name_new(half, folder / name)


def _add(archive: zipfile.ZipFile, name: str, data: bytes, *, stored: bool = False) -> None:
    entry = zipfile.ZipInfo(name, STAMP)
    entry.external_attr = 0o644 << 16
    kind = zipfile.ZIP_STORED if stored else zipfile.ZIP_DEFLATED
    archive.writestr(entry, data, kind)
