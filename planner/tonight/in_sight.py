"""What stays in sight of an evening beside the stretch itself, and where it stands."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from planner.tonight.replayed_plan import ReplayedPlan
from planner.tonight.run_sheet_rows import Row, WorkRow
from planner.values.moment import Interval, minute_of
from planner.values.plan import PassKey, Placement
from planner.values.project import Event

BEFORE = 180  # work begun so long before a stretch belongs to that evening: assumed [min]
AFTER = 120  # so long after its end an evening is still open, unless it was closed: assumed [min]
LAST_DAYS = 7 * 1440  # how far back an evening is looked for [min]


def open_since(laid: ReplayedPlan, interval: Interval) -> int:
    """Return since when what is done stays on the sheet of ``interval``, up to its end.

    In a stretch since it began, or since somebody came early; between two
    since the last one began, as long as that evening is open.  An evening
    closes when somebody says so, or some time after its end.
    """
    now = laid.now
    past = [
        stretch.interval
        for stretch in laid.calendar.stretches(now - LAST_DAYS, now)
        if stretch.interval.end <= now and stretch.interval != interval
    ]
    last = past[-1] if past else None
    begun = min(now, interval.start)
    since = begun - BEFORE
    if last is None:
        return since
    if now < interval.start and now < last.end + AFTER and not _closed(laid, last.start):
        return last.start
    return max(last.end, since)


def _closed(laid: ReplayedPlan, since: int) -> bool:
    """Tell whether an evening that began then was ended by somebody."""
    return any(
        line.event is Event.STOPPED and minute_of(line.at) >= since
        for project in laid.book.projects
        for line in project.diary
    )


def kept_in_sight(laid: ReplayedPlan, interval: Interval) -> Iterator[Placement]:
    """Yield what is begun and not done, whenever that was, and what this evening has done.

    Only what lies outside ``interval``: the rest is on its sheet anyway.
    """
    since = open_since(laid, interval)
    for key, placed in laid.placed.items():
        if not placed.logged or any(piece.overlaps(interval) for piece in placed.pieces):
            continue
        if is_under_way(laid, key) or since <= placed.start < interval.start:
            yield placed


def is_under_way(laid: ReplayedPlan, key: PassKey) -> bool:
    """Tell whether a pass is begun and not done."""
    entry = laid.problem.logged.get(key)
    return entry is not None and entry.end is None


def name_of(row: Row) -> tuple[object, ...]:
    """Return what stays the same of a row when the plan is made anew."""
    if isinstance(row, WorkRow):
        return (row.key, row.piece)
    return (row.kind, row.airbrush, row.coating, row.serves)


def as_they_stood(before: Sequence[tuple[object, ...]], rows: Sequence[Row]) -> tuple[Row, ...]:
    """Return rows in order of the clock, but what was begun or done where it stood.

    Parameters
    ----------
    before
        Names of the rows as they were shown last, in that order.
    rows
        Rows as they are now, in order of the clock.
    """
    stood = {name: at for at, name in enumerate(before)}
    stay = [
        row for row in rows if isinstance(row, WorkRow) and row.logged and name_of(row) in stood
    ]
    found = [row for row in rows if row not in stay]
    names = [name_of(row) for row in found]
    for row in sorted(stay, key=lambda row: stood[name_of(row)]):
        at = stood[name_of(row)]
        ahead = [name for name in before[:at] if name in names]
        place = names.index(ahead[-1]) + 1 if ahead else 0
        found.insert(place, row)
        names.insert(place, name_of(row))
    return tuple(found)
