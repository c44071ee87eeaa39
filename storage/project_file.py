"""Some projects in one file: an exchange file and the photos that their logbook names.

A zip archive with ``project.json`` and a folder of photos, each called after
the digest of its content.  Nothing else may be in it.
"""

from __future__ import annotations

import io
import zipfile
import zlib
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from pathlib import Path
from typing import Final

from planner.values.book import Book
from planner.values.message import message
from planner.values.refusal import Refused, demand
from storage import photos
from storage.bounded_read import read_bounded
from storage.exchange import Exchange, load
from storage.strict import MOST_BYTES as MOST_EXCHANGE

EXCHANGE: Final = "project.json"
PHOTOS: Final = "photos/"
MAGIC: Final = b"PK\x03\x04"
STAMP: Final = (1980, 1, 1, 0, 0, 0)  # the same project makes the same file
MOST_FILES: Final = 2_000
MOST_BYTES: Final = 2_000_000_000  # of the file, and of all that is in it
MOST_TIMES: Final = 200  # that an entry may be larger than what stands for it in the file
AT_ONCE: Final = 1 << 20
DAMAGED: Final = (
    zipfile.BadZipFile,
    zlib.error,
    NotImplementedError,
    RuntimeError,
    EOFError,
    OSError,
)
"""What the library says of an archive that is damaged, or made otherwise than ours."""


@dataclass(frozen=True)
class ProjectFile:
    """What such a file holds: photos by their names."""

    exchange: Exchange
    photos: Mapping[str, bytes]


def named_photos(book: Book) -> tuple[str, ...]:
    """Return the photos that the logbook of a book's projects names, each once."""
    names = (
        name
        for project in book.projects
        for fact in project.log
        for name in fact.photos
        if photos.NAME.fullmatch(name)
    )
    return tuple(dict.fromkeys(names))


def pack(data: bytes, named: Iterable[str], book: Path) -> tuple[bytes, tuple[str, ...]]:
    """Return a file of an exchange file's bytes and photos of a bench book, and what is missing.

    A photo that the book's folder lacks, or that is another by now, is left out.
    """
    lacking = []
    buffer = io.BytesIO()
    with zipfile.ZipFile(buffer, "w", zipfile.ZIP_DEFLATED) as archive:
        _add(archive, EXCHANGE, data)
        for name in named:
            try:
                picture = read_bounded(photos.path_of(book, name), photos.MOST_BYTES)
            except Refused:
                picture = b""
            if photos.name_of(picture) == name:
                _add(archive, PHOTOS + name, picture, stored=True)
            else:
                lacking.append(name)
    return buffer.getvalue(), tuple(lacking)


def is_project_file(data: bytes) -> bool:
    """Tell whether bytes begin as such a file does."""
    return data.startswith(MAGIC)


def unpack(data: bytes) -> ProjectFile:
    """Read such a file.

    Raises
    ------
    Refused
        If it is none, holds what does not belong there, or far more than it
        may; the place names the entry.
    """
    try:
        with zipfile.ZipFile(io.BytesIO(data)) as archive:
            return _read(archive)
    except DAMAGED as problem:
        raise Refused("", message("is no project file, or damaged; write it again")) from problem
    except ValueError as problem:
        if isinstance(problem, Refused):
            raise
        raise Refused("", message("is no project file, or damaged; write it again")) from problem


def keep_photos(file: ProjectFile, book: Path) -> int:
    """Put the photos of a file beside a bench book; return how many came.

    Raises
    ------
    Refused
        If they cannot be kept there.
    """
    for picture in file.photos.values():
        photos.keep_data(book, picture)
    return len(file.photos)


def _read(archive: zipfile.ZipFile) -> ProjectFile:
    entries = archive.infolist()
    demand(len(entries) <= MOST_FILES, "", message("holds far more files than a project does"))
    demand(
        sum(entry.file_size for entry in entries) <= MOST_BYTES,
        "",
        message("holds far more than a project does"),
    )
    seen: set[str] = set()
    for entry in entries:
        name = entry.filename
        foreign = message("does not belong in a project file")
        demand(_ours(name), _told(name), foreign)
        demand(name not in seen, _told(name), message("is in it twice"))
        demand(not entry.flag_bits & 1, _told(name), message("is locked with a password"))
        demand(
            entry.file_size <= max(AT_ONCE, MOST_TIMES * entry.compress_size),
            _told(name),
            message("unpacks to far more than it says; it is not read"),
        )
        seen.add(name)
    demand(EXCHANGE in seen, "", message("holds no project.json; this is no project file"))
    data = _content(archive, EXCHANGE, MOST_EXCHANGE)
    try:
        exchange = load(data)
    except Refused as refused:
        raise refused.under(EXCHANGE) from refused
    pictures = {
        name.removeprefix(PHOTOS): _photo(archive, name) for name in sorted(seen - {EXCHANGE})
    }
    return ProjectFile(exchange, pictures)


def _ours(name: str) -> bool:
    if name == EXCHANGE:
        return True
    return name.startswith(PHOTOS) and bool(photos.NAME.fullmatch(name.removeprefix(PHOTOS)))


def _photo(archive: zipfile.ZipFile, name: str) -> bytes:
    data = _content(archive, name, photos.MOST_BYTES)
    demand(
        photos.name_of(data) == name.removeprefix(PHOTOS),
        name,
        message("is not the photo of that name"),
    )
    return data


def _content(archive: zipfile.ZipFile, name: str, most: int) -> bytes:
    """Return what an entry holds, no more than is allowed, whatever it says of its size."""
    with archive.open(name) as file:
        data = file.read(most + 1)
    demand(len(data) <= most, _told(name), message("is far too large"))
    return data


def _told(name: str) -> str:
    return "".join(sign if sign.isprintable() else "?" for sign in name)[:80]


def _add(archive: zipfile.ZipFile, name: str, data: bytes, *, stored: bool = False) -> None:
    entry = zipfile.ZipInfo(name, STAMP)
    entry.external_attr = 0o644 << 16
    archive.writestr(entry, data, zipfile.ZIP_STORED if stored else zipfile.ZIP_DEFLATED)
