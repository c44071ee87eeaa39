"""The plan as comma-separated values."""

from __future__ import annotations

import csv
import io
from collections.abc import Iterator

from app.service import words
from planner.bench import BenchCalendar
from planner.passes import Pass, expand_all
from planner.values.book import Book
from planner.values.moment import Interval, moment_of
from planner.values.plan import BenchWork, PassKey, Placement, Plan

COLUMNS = (
    "start",
    "end",
    "minutes",
    "evening",
    "kind",
    "project",
    "model",
    "step",
    "coat",
    "title",
    "places",
    "coating",
    "tool",
    "reason",
)
FORMULA = ("=", "+", "-", "@", "\t", "\r", "\n")  # what makes a spreadsheet calculate a cell


def csv_bytes(plan: Plan, book: Book) -> bytes:
    """Return the plan as CSV (RFC 4180, UTF-8), one row for each piece of work.

    A cell that a spreadsheet would take for a formula gets an apostrophe.
    """
    rows = [*_work(plan, book), *_bench(plan, book)]
    text = io.StringIO(newline="")
    writer = csv.writer(text)
    writer.writerow(COLUMNS)
    for row in sorted(rows, key=lambda row: (row[0], row[1])):
        writer.writerow([disarmed(cell) for cell in row])
    return text.getvalue().encode()


def disarmed(cell: str) -> str:
    """Return a cell's text that no spreadsheet takes for a formula."""
    return f"'{cell}" if cell.startswith(FORMULA) else cell


def _work(plan: Plan, book: Book) -> Iterator[list[str]]:
    calendar = BenchCalendar(book.bench_time)
    passes = {one.key: one for one in expand_all(book)}
    for placed in plan.placements:
        one = passes.get(placed.key)
        if one is None:
            continue
        for piece in placed.pieces:
            yield [*_times(piece, calendar), *_pass(one, placed, calendar)]


def _pass(one: Pass, placed: Placement, calendar: BenchCalendar) -> list[str]:
    return [
        one.step.stage.value,
        *_key(one.key),
        one.step.title,
        "; ".join(one.places),
        "; ".join(dict.fromkeys(coating for _, coating in one.films)),
        placed.airbrush or one.step.tool.value,
        "logged" if placed.logged else words.reasons_text(placed.reason, calendar.zone),
    ]


def _bench(plan: Plan, book: Book) -> Iterator[list[str]]:
    calendar = BenchCalendar(book.bench_time)
    for work in plan.bench:
        yield [*_times(work.interval, calendar), work.kind.value, *_set_up(work)]


def _set_up(work: BenchWork) -> list[str]:
    key = _key(work.serves) if work.serves else ["", "", "", ""]
    return [*key, "", "", work.coating, work.airbrush, ""]


def _key(key: PassKey) -> list[str]:
    return [key.project, key.model, key.step, str(key.coat)]


def _times(interval: Interval, calendar: BenchCalendar) -> list[str]:
    stretch = calendar.stretch_at(interval.start)
    start, end = (moment_of(at, calendar.zone) for at in (interval.start, interval.end))
    return [
        start.isoformat(),
        end.isoformat(),
        str(interval.minutes),
        (stretch.on if stretch else start.date()).isoformat(),
    ]
