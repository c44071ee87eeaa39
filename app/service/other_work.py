"""Work that was really done, planned or not, as an edit; and what the order of coats says to it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from app.service.edits import Edit
from planner.evening.other_work import OtherWork, PaintedModel, name_of_work, noted
from planner.evening.other_work_line import EXAMPLE, read_line
from planner.layers.findings import Finding, find
from planner.values.book import Book
from planner.values.plan import PassKey
from planner.values.step import Stage, Tool

__all__ = ["EXAMPLE", "OtherWork", "PaintedModel", "read_line"]


@dataclass(frozen=True)
class DoneBeside:
    """An edit that notes other work, the passes that it became, and what it leaves unsound."""

    edit: Edit
    keys: tuple[PassKey, ...]
    findings: tuple[Finding, ...]


def done_beside(
    book: Book, line: str, now: int, words: Mapping[str, Stage | Tool] | None = None
) -> DoneBeside:
    """Return the edit that notes what a line tells, as done by now.

    Raises
    ------
    Refused
        If the line cannot be read, or what it tells cannot be.
    """
    work = read_line(book, line, words)
    after, keys = noted(book, work, now)
    known = {(finding.key, finding.places) for finding in find(book)}
    fresh = tuple(one for one in find(after) if (one.key, one.places) not in known)
    return DoneBeside(Edit(name_of_work(work), after), keys, fresh)
