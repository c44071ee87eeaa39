"""Which sessions of the past took place, and which were lost though work waited."""

from __future__ import annotations

from bisect import bisect_left
from dataclasses import replace

from planner.bench import Stretch, calendar_of
from planner.evening.logged_films import laid
from planner.schedule.partial_schedule import PartialSchedule
from planner.schedule.problem import Activity
from planner.values.book import Book
from planner.values.moment import minute_of

PAUSE_MINUTES = 14 * 1440  # longer without a fact is a pause, and says nothing: assumed


def held_and_lost(book: Book, now: int) -> tuple[int, int]:
    """Return in how many sessions something was logged, and in how many nothing that could be.

    Sessions before the first fact, after the last and within a long pause
    say nothing, nor do those in which every film still had to dry: then
    nothing was to be done by hand.
    """
    begun = sorted(
        minute_of(entry.start, up=False) for project in book.projects for entry in project.log
    )
    if not begun:
        return 0, 0
    calendar = calendar_of(book.bench_time)
    held, empty = 0, []
    for stretch in calendar.stretches(begun[0], min(now, begun[-1])):
        at = bisect_left(begun, stretch.interval.start)
        if at < len(begun) and begun[at] < stretch.interval.end:
            held += 1
        elif 0 < at < len(begun) and begun[at] - begun[at - 1] <= PAUSE_MINUTES:
            empty.append(stretch)
    return held, _could_work(book, now, empty) if empty else 0


def _could_work(book: Book, now: int, empty: list[Stretch]) -> int:
    """Return in how many sessions a pass of a project under way could have been done."""
    every = replace(book, projects=tuple(replace(one, active=True) for one in book.projects))
    table = laid(every, now)
    asleep = {one.name for one in book.projects if not one.active}
    since: dict[str, int] = {}
    for index, start in table.start.items():
        name = table.problem.activities[index].pass_.key.project
        since[name] = min(since.get(name, start), start)
    found = 0
    for stretch in empty:
        under_way = {name for name, start in since.items() if start <= stretch.interval.start}
        found += any(
            _could_begin(table, one, stretch)
            for one in table.problem.activities
            if one.pass_.key.project in under_way
            and (one.index in table.start or one.pass_.key.project not in asleep)
        )
    return found


def _could_begin(table: PartialSchedule, activity: Activity, stretch: Stretch) -> bool:
    """Tell whether a pass that was not done by then could have been done in a session."""
    start, end = stretch.interval.start, stretch.interval.end
    index = activity.index
    if activity.blocked or (index in table.start and table.start[index] < end):
        return False
    if any(table.end.get(before, end) > start for before in activity.before):
        return False
    opens = start
    for number in activity.gates:
        windows = [one for one in table.windows(number) if one.closes > start]
        if not windows:
            return False
        opens = max(opens, windows[0].opens)
    return opens + activity.pass_.hands <= end
