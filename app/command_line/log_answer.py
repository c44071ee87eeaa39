"""What is told after something was logged: what moved, what is next, what to look at."""

from __future__ import annotations

from typing import Any
from zoneinfo import ZoneInfo

from app.command_line.output import iso
from app.command_line.run_sheet_notes import key_fields
from app.service import run_sheet_text, wording
from app.service.moved_work import ends_between, moved_lines
from app.service.run_sheet_notes_text import below_text, check_lines, look_when
from planner.bench import calendar_of
from planner.evening.alternatives import leaves_time
from planner.evening.closing_check import checks, cups_used
from planner.evening.last_coat_brake import braked
from planner.evening.looks import looks
from planner.evening.missed_closings import Missed
from planner.layers.finding import Finding
from planner.tonight import RunSheet, WorkRow
from planner.values.book import Book
from planner.values.moment import Interval, zone_named
from planner.values.plan import PassKey, Plan

HOUR = 60


def remarks_of(book: Book, now: int, late: tuple[Missed, ...], zone: ZoneInfo) -> list[str]:
    """Return what the logbook and the clock ask for: windows missed, and looks."""
    lines = []
    for missed in late:
        what = (
            f"{wording.pass_name(missed.key)}: window closed {wording.moment(missed.closed, zone)}"
        )
        if missed.reopens is not None:
            lines.append(f"{what}, open again {wording.moment(missed.reopens, zone)}")
        else:
            lines.append(f"{what}; now: {' or '.join(remedy.value for remedy in missed.remedies)}")
    lines += [
        f"look {look_when(look, now, zone)}: {wording.pass_name(look.key)}: {look.what}"
        for look in looks(book, now)
    ]
    return lines


def brake_remarks(book: Book, key: PassKey, now: int) -> list[str]:
    """Return what speaks against beginning: films below a last coat, no time left to wipe back."""
    zone = zone_named(book.bench_time.zone)
    told = [below_text(top_film, now, zone) for top_film in braked(book, key, now)]
    if not leaves_time(book, key, now):
        told.append("what must follow it soon has no time left; better leave it today")
    return told


def closing_remarks(book: Book, now: int, since: int, plan: Plan) -> list[str]:
    """Return what to look at before the table is left; ``since`` is when the stretch began."""
    span = Interval(min(since, now - 1), now)
    done = [placement for placement in plan.placements if placement.logged]
    found = checks(book, span, cups_used(done, book, span))
    return ["before you go:", *(f"  {line}" for line in check_lines(found))]


def shifts(book: Book, last: Plan, plan: Plan) -> list[str]:
    """Return what the plan does on another evening, and what found no place; [] for nothing."""
    calendar = calendar_of(book.bench_time)
    lines = moved_lines(book, calendar, last, plan)
    ends = ends_between(calendar, last, plan)
    if len(lines) == 1 and ends.before == ends.after:
        lines = []
    lines += [
        f"no place for {wording.pass_name(unplaced.key)}: {unplaced.why}"
        for unplaced in plan.unplaced
    ]
    return lines


def next_lines(sheet: RunSheet, book: Book) -> list[str]:
    """Return what is next in this stretch."""
    work = [row for row in sheet.rows if isinstance(row, WorkRow) and not row.logged]
    zone = zone_named(book.bench_time.zone)
    if not work:
        return ["next: nothing more in this session"]
    row = work[0]
    return [
        f"next: {wording.moment(row.start, zone)} {run_sheet_text.work_title(row)}"
        f" ({row.minutes} min)"
    ]


def log_document(
    names: list[str],
    findings: tuple[Finding, ...],
    remarks: list[str],
    late: tuple[Missed, ...],
    sheet: RunSheet,
    zone: ZoneInfo,
) -> dict[str, Any]:
    """Return what came of it as JSON data."""
    work = [row for row in sheet.rows if isinstance(row, WorkRow) and not row.logged]
    return {
        "logged": names,
        "remarks": remarks,
        "findings": [
            {
                "verdict": finding.verdict.value,
                "where": finding.path,
                "message": finding.message,
                "mend": finding.mend.title if finding.mend else None,
            }
            for finding in findings
        ],
        "missed": [
            {
                **key_fields(missed.key),
                "closed": iso(missed.closed, zone),
                "reopens": iso(missed.reopens, zone),
                "remedies": [remedy.value for remedy in missed.remedies],
            }
            for missed in late
        ],
        "next": [
            {
                **key_fields(row.key),
                "start": iso(row.start, zone),
                "end": iso(row.end, zone),
                "minutes": row.minutes,
            }
            for row in work
        ],
    }
