"""Copies of a bench book, told to a person: when made, what is in them, how they differ."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, datetime
from pathlib import Path
from typing import TYPE_CHECKING

from app.service.books import starter_book
from app.service.clock import local_zone
from planner.values.message import Message, message
from planner.values.refusal import Refused
from storage import backups
from storage.backups import BackupReason, Copy
from storage.journal import Entry

if TYPE_CHECKING:
    from storage.bench_book import BenchBook

WHY = {
    BackupReason.DAILY: message("made by itself"),
    BackupReason.ASKED: message("asked for"),
    BackupReason.UPGRADE: message("before an upgrade"),
    BackupReason.RESTORE: message("before something was restored"),
}


Offers = tuple[tuple[Path, Path, Message], ...]  # a damaged book, a copy of it, what to say


@dataclass(frozen=True)
class CopyLine:
    """One copy as it is listed: what is in it, how it differs, "" where that cannot be told."""

    copy: Copy
    holds: str
    differs: str


def listed(path: Path, history: tuple[Entry, ...]) -> tuple[CopyLine, ...]:
    """Return the copies of a book with that history, the newest first, each looked into."""
    return tuple(_line(copy, history) for copy in backups.copies(path))


def when(copy: Copy) -> str:
    """Return when a copy was made, by this machine's clock."""
    return f"{copy.at.astimezone():%Y-%m-%d %H:%M}"


def offered(path: Path) -> tuple[tuple[Copy, Message], ...]:
    """Return the newest copies of a damaged book, and what to say of opening each."""
    from storage.restoring import last_line  # noqa: PLC0415 - mostly no book is damaged

    last = last_line(path)
    found = []
    for copy in [copy for copy in backups.copies(path) if copy.revision][:3]:
        fewer = None if last is None else last - copy.revision
        if fewer is None or fewer < 0:
            said = message("Open the copy of {day}", day=when(copy))
        elif fewer == 1:
            said = message("Open the copy of {day} (1 edit fewer)", day=when(copy))
        else:
            said = message("Open the copy of {day} ({n} edits fewer)", day=when(copy), n=fewer)
        found.append((copy, said))
    return tuple(found)


def offers_for(problem: Refused) -> Offers:
    """Return what can be opened in place of a damaged book; nothing for any other refusal."""
    path = damaged_by(problem)
    if path is None:
        return ()
    return tuple((path, copy.path, said) for copy, said in offered(path))


def damaged_by(problem: Refused) -> Path | None:
    """Return the book that a refusal calls damaged; None for any other refusal."""
    from storage.errors import BookDamaged  # noqa: PLC0415

    return Path(problem.place) if isinstance(problem, BookDamaged) else None


def readable(path: Path) -> tuple[bytes, Message] | None:
    """Return what can be read of a damaged book, as an exchange file, and what that is."""
    from storage.exchange import Exchange, dump  # noqa: PLC0415
    from storage.restoring import salvage  # noqa: PLC0415

    today = date.today()  # noqa: DTZ011
    found = salvage(path, starter_book(local_zone(), today))
    if found is None or not (found.book.projects or found.book.coatings):
        return None
    projects, models, entries = backups.counted(found.book)
    said = message(
        "Of the damaged book can still be read: {projects} projects, {models} models, "
        "{entries} entries of the logbook, {coatings} coatings",
        projects=projects,
        models=models,
        entries=entries,
        coatings=len(found.book.coatings),
    )
    if found.lost:
        said = message("{said}; lost: {lost}", said=said, lost=", ".join(found.lost)[:200])
    return dump(Exchange(found.book, "read out of a damaged bench book")), said


def keep_daily(bench: BenchBook, now: datetime | None = None) -> Refused | None:
    """Copy a book unless that was done since it was last edited; return why it could not be."""
    if bench.read_only or bench.revision <= 1:  # nothing was edited yet
        return None
    try:
        backups.keep_daily(bench.path, bench.revision, now)
    except Refused as problem:
        return problem
    return None


def _line(copy: Copy, history: tuple[Entry, ...]) -> CopyLine:
    try:
        read = backups.look_into(copy.path)
    except Refused as problem:
        return CopyLine(copy, "", problem.mend)
    if read is None:
        return CopyLine(copy, message("of an older version"), "")
    projects, models, entries = backups.counted(read.book)
    holds = message(
        "projects: {projects}, models: {models}, entries of the logbook: {entries}",
        projects=projects,
        models=models,
        entries=entries,
    )
    return CopyLine(copy, holds, _differs(backups.compare(read.entries, history)))


def _differs(found: backups.BackupDifference) -> str:
    if not found.common:
        return message("another book")
    fewer, more = len(found.fewer), len(found.more)
    if not fewer and not more:
        return message("the same as now")
    if not more:
        first = found.fewer[0].name
        if fewer == 1:
            return message("without “{edit}”", edit=first)
        return message("{n} edits fewer, from “{edit}” on", n=fewer, edit=first)
    return message("{fewer} edits fewer, {more} of its own", fewer=fewer, more=more)
