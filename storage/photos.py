"""Photos of the logbook, kept beside the bench book.

A photo is copied into the book's own folder under the digest of its content,
so that it outlasts its original, and the same one is kept once.
"""

from __future__ import annotations

import hashlib
import os
import re
from collections.abc import Callable
from pathlib import Path

from planner.values.book import Book
from planner.values.message import message
from planner.values.refusal import Refused, demand
from storage.atomic_write import put_whole
from storage.bounded_read import read_bounded

MOST_BYTES = 100_000_000  # of one photo
NAME = re.compile(r"[0-9a-f]{64}\.(jpg|png|gif|webp|tif|bmp|heic)")

_KINDS: tuple[tuple[str, Callable[[bytes], bool]], ...] = (
    ("jpg", lambda head: head.startswith(b"\xff\xd8\xff")),  # ISO/IEC 10918-1, start of image
    ("png", lambda head: head.startswith(b"\x89PNG\r\n\x1a\n")),  # ISO/IEC 15948, clause 5.2
    ("gif", lambda head: head[:6] in (b"GIF87a", b"GIF89a")),
    ("webp", lambda head: head[:4] == b"RIFF" and head[8:12] == b"WEBP"),  # RFC 9649
    ("tif", lambda head: head[:4] in (b"II*\0", b"MM\0*")),  # TIFF 6.0, section 2
    ("bmp", lambda head: head[:2] == b"BM" and len(head) >= 26 and head[6:10] == b"\0\0\0\0"),
    ("heic", lambda head: head[4:8] == b"ftyp" and head[8:12] in (b"heic", b"heix", b"mif1")),
)


def folder_of(book: Path) -> Path:
    """Return the folder in which a bench book keeps its photos: beside the book, not a link."""
    book = Path(os.path.realpath(book))
    return book.with_name(f"{book.name}.photos")


def kind_of(data: bytes) -> str | None:
    """Return the suffix that belongs to an image's first bytes; None if it is no image."""
    return next((kind for kind, begins in _KINDS if begins(data[:32])), None)


def name_of(data: bytes) -> str | None:
    """Return the name under which an image is kept; None if it is none."""
    kind = kind_of(data)
    return None if kind is None else f"{hashlib.sha256(data).hexdigest()}.{kind}"


def kept(book: Path) -> tuple[Path, ...]:
    """Return the photos in a book's folder."""
    try:
        every = sorted(folder_of(book).iterdir())
    except OSError:
        return ()
    return tuple(path for path in every if NAME.fullmatch(path.name) and path.is_file())


def keep(book: Path, source: Path) -> str:
    """Copy a photo into the book's folder; return the name by which entries know it.

    Raises
    ------
    Refused
        If it cannot be read, is no image, is too large, or cannot be kept.
    """
    data = read_bounded(source, MOST_BYTES)
    demand(len(data) <= MOST_BYTES, str(source), "is larger than 100 MB; make it smaller")
    if name_of(data) is None:
        raise Refused(str(source), "is no image; give a JPEG, PNG, WebP, HEIC, TIFF, GIF or BMP")
    return keep_data(book, data)


def keep_data(book: Path, data: bytes) -> str:
    """Keep the bytes of a photo in the book's folder; return the name by which entries know it.

    Raises
    ------
    Refused
        If they are no image, or cannot be kept.
    """
    name = name_of(data)
    if name is None:
        raise Refused("photos", "is no image; give a JPEG, PNG, WebP, HEIC, TIFF, GIF or BMP")
    target = folder_of(book) / name
    if not _same(target, data):
        _write_whole(target, data)
    return name


def path_of(book: Path, name: str) -> Path:
    """Return where a photo lies, or would lie, by its name in an entry.

    Raises
    ------
    Refused
        If that is no name of a kept photo; it could point anywhere.
    """
    demand(
        NAME.fullmatch(name) is not None,
        "photos",
        message('"{name}" is no kept photo', name=name[:80]),
    )
    return folder_of(book) / name


def missing(path: Path, book: Book) -> tuple[str, ...]:
    """Return the photos that entries and sample cards of a book name and its folder lacks."""
    named = dict.fromkeys(
        name for project in book.projects for entry in project.log for name in entry.photos
    )
    named.update((card.photo, None) for card in book.supplies.cards if card.photo)
    return tuple(
        name
        for name in named
        if NAME.fullmatch(name) is None or not (folder_of(path) / name).is_file()
    )


def _same(target: Path, data: bytes) -> bool:
    """Tell whether the photo is there, whole."""
    try:
        return target.read_bytes() == data
    except OSError:
        return False


def _write_whole(target: Path, data: bytes) -> None:
    """Write a file so that it has its name only once it is whole and on the disk."""
    try:
        target.parent.mkdir(exist_ok=True)
        put_whole(target, data)
    except OSError as problem:
        why = problem.strerror or type(problem).__name__
        raise Refused(
            str(target.parent), message("the photo cannot be kept there ({why})", why=why)
        ) from problem
