"""Turning edits back, making them again, and telling when one goes on with the last."""

from __future__ import annotations

import time
from collections.abc import Mapping
from dataclasses import dataclass

from planner.values.book import Book
from planner.values.message import message
from planner.values.refusal import Refused, demand
from storage.aggregates import Pieces, holds_facts, join
from storage.journal import Change

MERGED_WITHIN = 8.0  # edits of the same thing closer than this are one [s]


def back_to(made: Mapping[str, Change]) -> dict[str, Change]:
    """Return what takes an edit back."""
    return {key: Change(one.after, one.before) for key, one in made.items()}


def turned(old: Pieces, wanted: Mapping[str, Change], trouble: str) -> Pieces:
    """Return the pieces after an edit is turned back or made again.

    Raises
    ------
    Refused
        If facts were logged since that would be lost; ``trouble`` begins the line.
    """
    after = dict(old)
    for key, change in wanted.items():
        demand(
            not holds_facts(key) or old.get(key) == change.before,
            "",
            message(
                "{trouble}: work of its project was logged since; take those facts back first",
                trouble=trouble,
            ),
        )
        if change.after is None:
            after.pop(key, None)
        else:
            after[key] = change.after
    return after


def joined(pieces: Pieces, trouble: str) -> Book:
    """Return the book of the pieces.

    Raises
    ------
    Refused
        If they do not fit together, since something was logged.
    """
    try:
        return join(pieces)
    except Refused as problem:
        raise Refused(
            "",
            message(
                "{trouble}: {problem}; take back what was logged since",
                trouble=trouble,
                problem=problem.line,
            ),
        ) from problem


@dataclass(frozen=True)
class Latest:
    """The edit that a session made last: what of, as which revision, and when [s]."""

    merge: str = ""
    revision: int = 0
    at: float = 0.0

    @classmethod
    def now(cls, merge: str, revision: int) -> Latest:
        """Return the edit made at this moment."""
        return cls(merge, revision, time.monotonic())

    def continues(self, merge: str, revision: int) -> bool:
        """Tell whether an edit of ``merge`` on top of ``revision`` goes on with it."""
        near = time.monotonic() - self.at < MERGED_WITHIN
        return bool(merge) and (self.merge, self.revision) == (merge, revision) and near
