"""What an evening comes to, in a few figures."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from planner.tonight.run_sheet_rows import BenchRow, Row, RunSheet, WorkRow
from planner.values.plan import BenchKind

LOADS = (BenchKind.LOAD, BenchKind.CHANGE)


@dataclass(frozen=True)
class EveningAnswer:
    """What is left of an evening, and what it leaves behind.

    Attributes
    ----------
    jobs, done
        Passes still to be done in it, and those done.
    minutes
        How long hands are busy with the jobs and their set-up, whoever's [min].
    fills
        How often a cup is filled for them.
    wet
        Coats that still dry when it ends.
    """

    jobs: int
    done: int
    minutes: int
    fills: int
    wet: int


def evening_answer(sheet: RunSheet, over: Callable[[WorkRow], bool]) -> EveningAnswer:
    """Return what a run sheet comes to; ``over`` tells which of its work is done."""
    open_rows = [row for row in sheet.work if not over(row)]
    ahead = [row for row in sheet.rows if isinstance(row, BenchRow) and row.end > sheet.now]
    jobs = {row.key for row in open_rows}
    busy: list[Row] = [*open_rows, *ahead]
    spans = [(max(row.start, sheet.now), row.free) for row in busy]
    wet = {
        film.key
        for film in sheet.drying
        if film.since < sheet.interval.end
        and (film.opens is None or film.opens > sheet.interval.end)
    }
    return EveningAnswer(
        jobs=len(jobs),
        done=len({row.key for row in sheet.work} - jobs),
        minutes=_covered(spans),
        fills=sum(_fills(row) for row in ahead if row.kind in LOADS),
        wet=len(wet),
    )


def _fills(row: BenchRow) -> int:
    return max(1, row.load.fills) if row.load is not None else 1


def _covered(spans: list[tuple[int, int]]) -> int:
    """Return how many minutes lie in at least one span."""
    total, reached = 0, None
    for start, end in sorted(spans):
        begin = start if reached is None else max(start, reached)
        if end > begin:
            total += end - begin
        reached = end if reached is None else max(reached, end)
    return total
