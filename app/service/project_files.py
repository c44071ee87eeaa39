"""Projects as one file with their photos, written from a book and taken into another."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path

from app.service.exporting import export
from planner.values.book import Book
from planner.values.refusal import Refused
from storage.bounded_read import read_bounded
from storage.exchange import load
from storage.project_file import (
    MOST_BYTES,
    ProjectFile,
    is_project_file,
    keep_photos,
    named_photos,
    pack,
    unpack,
)
from storage.strict import MOST_BYTES as MOST_EXCHANGE

__all__ = ["SUFFIX", "Packed", "keep_photos", "packed", "read_projects"]

SUFFIX = ".tackfree.zip"


@dataclass(frozen=True)
class Packed:
    """A file to be written, with how many photos it holds and which are missing."""

    data: bytes
    photos: int
    missing: tuple[str, ...]


def packed(book: Book, names: tuple[str, ...], path: Path, note: str = "") -> Packed:
    """Return some projects of the book at ``path`` as one file.

    Raises
    ------
    Refused
        If no project is called so.
    """
    data = export(book, names, note)
    wanted = named_photos(load(data).book)
    whole, missing = pack(data, wanted, path)
    return Packed(whole, len(wanted) - len(missing), missing)


def read_projects(path: Path) -> ProjectFile:
    """Read a project file, or an exchange file, which holds no photos.

    Raises
    ------
    Refused
        If it is neither; the place begins with the file's name.
    """
    data = read_bounded(path, MOST_EXCHANGE)
    if is_project_file(data) and len(data) > MOST_EXCHANGE:  # with many photos
        data = read_bounded(path, MOST_BYTES)
    try:
        if is_project_file(data):
            return unpack(data)
        return ProjectFile(load(data), _none())
    except Refused as refused:
        place = f"{path}: {refused.place}" if refused.place else str(path)
        raise Refused(place, refused.mend) from refused


def _none() -> Mapping[str, bytes]:
    return {}
