"""Where bench books lie, and opening them."""

from __future__ import annotations

import errno
from datetime import date, datetime
from pathlib import Path
from typing import TYPE_CHECKING

import platformdirs

from app.service.clock import local_zone
from planner.values.bench_time import BenchTime, Recurring
from planner.values.book import Book
from planner.values.gear import Airbrush, Gear
from planner.values.message import Translate, message
from planner.values.refusal import Refused
from planner.values.room import AirPoint, Location, Room
from storage.atomic_write import put_whole

if TYPE_CHECKING:
    from storage.bench_book import BenchBook

BOOK_NAME = "bench.tackfree"
BENCH, AIRBRUSH = "bench", "airbrush"  # what a new book calls them


def usual_path() -> Path:
    """Return where this person's bench book lies."""
    return Path(platformdirs.user_data_dir("tackfree", appauthor=False)) / BOOK_NAME


def open_book(
    path: Path | None = None, *, create: bool = False, translate: Translate = str
) -> BenchBook:
    """Open a bench book, the person's own if no path is given.

    Parameters
    ----------
    create
        Begin a new book where there is none.
    translate
        Gives names to what a new book holds.

    Raises
    ------
    Refused
        If there is none, or the file is no bench book.
    """
    # The database's library takes a good part of a start: not before there is a book to open.
    from storage.bench_book import BenchBook  # noqa: PLC0415

    chosen = path or usual_path()
    if chosen.exists():
        return BenchBook.open(chosen)
    if not create:
        raise Refused(
            str(chosen), "there is no bench book yet; name an exchange file, or start tackfree"
        )
    chosen.parent.mkdir(parents=True, exist_ok=True)
    today = date.today()  # noqa: DTZ011
    try:
        return BenchBook.create(chosen, starter_book(local_zone(), today, translate))
    except Refused:
        if chosen.exists():  # another program has just been faster: it is that one's book
            return BenchBook.open(chosen)
        raise


def starter_book(zone: str, today: date, translate: Translate = str) -> Book:
    """Return what a new bench book holds: an ordinary room and two evenings a week."""
    air = (AirPoint(at="00:00", temperature_c=20, humidity_pct=50),)
    evenings = Recurring(rule="FREQ=WEEKLY;BYDAY=TU,TH", since=today, start="19:30", end="21:30")
    return Book(
        room=Room(locations=(Location(name=translate(BENCH), drying_places=12, workdays=air),)),
        bench_time=BenchTime(zone=zone, stretches=(evenings,)),
        gear=Gear(airbrushes=(Airbrush(name=translate(AIRBRUSH)),)),
    )


def seen(path: Path) -> tuple[int, ...] | None:
    """Return what tells whether a file was written or exchanged; None where there is none."""
    try:
        there = path.stat()
    except OSError:
        return None
    return there.st_dev, there.st_ino, there.st_size, there.st_mtime_ns


def kept_aside() -> Path:
    """Return the folder for books that could not be saved when a window closed."""
    return usual_path().with_name("not_saved")


def keep_aside(book: Book, name: str) -> Path:
    """Write a book that could not be saved as an exchange file of the program's own.

    Raises
    ------
    Refused
        If there is no place for that, either.
    """
    from storage.exchange import Exchange, dump  # noqa: PLC0415

    folder = kept_aside()
    path = folder / f"{name}-{datetime.now():%Y-%m-%dT%H-%M-%S}.json"  # noqa: DTZ005
    try:
        folder.mkdir(parents=True, exist_ok=True)
    except OSError as problem:
        raise Refused(str(folder), _unwritten(problem)) from problem
    write_whole(path, dump(Exchange(book, "what could not be saved")))
    return path


def write_whole(path: Path, data: bytes) -> None:
    """Write a file so that either the old or the new one is there, never half of it.

    Raises
    ------
    Refused
        If it cannot be written.
    """
    try:
        put_whole(path, data)
    except OSError as problem:
        raise Refused(str(path), _unwritten(problem)) from problem


def _unwritten(problem: OSError) -> str:
    if problem.errno in (errno.ENOSPC, errno.EDQUOT):
        return message("cannot be written: the disk is full; make room, or choose another place")
    why = problem.strerror or type(problem).__name__
    return message("cannot be written ({why}); choose another place", why=why)
