"""What an edit would do, before it is made: to the end of the work, and to what is unsound."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from app.service import planning
from planner.layers.finding import Finding
from planner.layers.findings import find
from planner.values.book import Book
from planner.values.plan import Plan


@dataclass(frozen=True)
class EditEffect:
    """What changes: the last end of all active work [UTC min], and what is found unsound.

    Attributes
    ----------
    before, after
        When all is done; None where a pass has no place or nothing is planned.
    unplaced
        Passes without a place afterwards.
    fresh
        Findings that were not there before.
    mended
        How many findings would be gone.
    """

    before: int | None
    after: int | None
    unplaced: int
    fresh: tuple[Finding, ...]
    mended: int

    @property
    def minutes_later(self) -> int | None:
        """By how much the end moves [min]; None where one is not known."""
        if self.before is None or self.after is None:
            return None
        return self.after - self.before


def effect_of(
    book: Book,
    edited: Book,
    now: int,
    *,
    last: Plan | None = None,
    stop: Callable[[], bool] | None = None,
) -> EditEffect:
    """Plan a book before and after an edit, quickly, and tell the difference.

    Parameters
    ----------
    last
        The plan of the book as it is, if there is one.
    stop
        Asked all the time, from this very thread.

    Raises
    ------
    Stopped
        As soon as ``stop`` says so.
    Refused
        If something lies so far ahead that no plan reaches it.
    """
    old = {finding.key for finding in find(book)}
    new = find(edited)
    before = last or planning.plan(book, now, quick=True, stop=stop).plan
    after = planning.plan(edited, now, last=before, quick=True, stop=stop).plan
    return EditEffect(
        before=end_of(before),
        after=end_of(after),
        unplaced=len(after.unplaced),
        fresh=tuple(finding for finding in new if finding.key not in old),
        mended=len(old - {finding.key for finding in new}),
    )


def end_of(plan: Plan) -> int | None:
    """Return when all of a plan is done [UTC min]; None if something has no place."""
    if plan.unplaced or not plan.finishes:
        return None
    return max(end for _, end in plan.finishes)
