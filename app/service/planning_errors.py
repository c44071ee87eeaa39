"""Why there is no plan to show: kept apart, for a start need not load what plans."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from planner.schedule.judge import Verdict


class Unsound(RuntimeError):  # noqa: N818 - named after what the plan is
    """A plan of ours that the judge refuses: a fault of the program, told in one line."""

    def __init__(self, verdict: Verdict) -> None:
        first = verdict.violations[0]
        more = len(verdict.violations) - 1
        also = f" (and {more} more)" if more else ""
        super().__init__(f"the plan made is not sound, so it is not shown: {first}{also}")
        self.verdict = verdict


class Stopped(Exception):  # noqa: N818 - nothing went wrong
    """Nobody waits for this plan any more."""
