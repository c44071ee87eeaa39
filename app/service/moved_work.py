"""Which work a new plan does on another evening, told evening by evening in a few lines."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import date

from planner.bench import BenchCalendar
from planner.schedule.staying.policy import moves_between
from planner.values.book import Book
from planner.values.message import Message, message, row
from planner.values.moment import moment_of
from planner.values.plan import PassKey, Plan

MOST_LINES = 3  # the end of all included
MOST_NAMES = 3  # pieces of work that a line names


@dataclass(frozen=True)
class MovedWork:
    """Work that goes from one evening to another together; None is no place."""

    keys: tuple[PassKey, ...]
    before: date | None
    after: date | None

    @property
    def names(self) -> tuple[tuple[PassKey, ...], int]:
        """The first pieces of work, each step once, and how many more there are."""
        steps = tuple(dict.fromkeys(key._replace(coat=1) for key in self.keys))
        return steps[:MOST_NAMES], max(0, len(steps) - MOST_NAMES)


@dataclass(frozen=True)
class Ends:
    """The local days on which all was finished before, and is now; None before is no plan."""

    before: date
    after: date


def moved_work(calendar: BenchCalendar, last: Plan, plan: Plan) -> tuple[MovedWork, ...]:
    """Return what a plan does on another evening than the last, the first evening foremost."""

    def evening(minute: int | None) -> date | None:
        if minute is None:
            return None
        stretch = calendar.stretch_at(minute)
        return stretch.on if stretch else moment_of(minute, calendar.zone).date()

    found: dict[tuple[date | None, date | None], list[PassKey]] = {}
    for move in moves_between(calendar, last, plan):
        days = evening(move.before), evening(move.after)
        if days[0] != days[1]:  # another stretch of the same day is no news
            found.setdefault(days, []).append(move.key)
    return tuple(MovedWork(tuple(keys), *days) for days, keys in found.items())


def ends_between(calendar: BenchCalendar, last: Plan, plan: Plan) -> Ends:
    """Return when all is finished by the last plan, and by this one."""
    zone = calendar.zone
    days = [
        moment_of(max((end for _, end in one.finishes), default=one.now), zone).date()
        for one in (last, plan)
    ]
    return Ends(*days)


def chosen_lines(lines: Sequence[str], end: str) -> list[str]:
    """Return at most three lines: what changes first, and the end of all."""
    return [*lines[: MOST_LINES - 1], end]


def moved_lines(
    book: Book, calendar: BenchCalendar, last: Plan, plan: Plan, *, every: bool = False
) -> list[str]:
    """Return what moved in plain words, in three lines or, with ``every``, in as many as it takes.

    Nothing is said of swaps within an evening.
    """
    titles = titles_of(book)
    lines = [_line(moved, titles) for moved in moved_work(calendar, last, plan)]
    ends = ends_between(calendar, last, plan)
    if ends.before == ends.after:
        end = message("The end stays {day}.", day=_day(ends.after))
    else:
        end = message(
            "The end is {day}; it was {before}.", day=_day(ends.after), before=_day(ends.before)
        )
    return [*lines, end] if every else chosen_lines(lines, end)


def titles_of(book: Book) -> Callable[[PassKey], str]:
    """Return how steps are called: their titles, or else their stages."""
    found = {
        (project.name, model.name, step.id): step.title or step.stage.value
        for project in book.projects
        for model in project.models
        for step in model.steps
    }
    return lambda key: found.get(key[:3], key.step)


def _line(moved: MovedWork, titles: Callable[[PassKey], str]) -> Message:
    keys, more = moved.names
    works = row(
        [message("{work} of {model}", work=titles(key), model=key.model) for key in keys]
        + ([message("{n} more", n=more)] if more else [])
    )
    if moved.after is None:
        return message("{day}: {works}, now without a place.", day=_day(moved.before), works=works)
    if moved.before is None:
        return message(
            "{day}: {works}, without a place before.", day=_day(moved.after), works=works
        )
    return message(
        "{day}: {works}, now {after}.", day=_day(moved.before), works=works, after=_day(moved.after)
    )


def _day(on: date | None) -> str:
    assert on is not None
    return message("{at:%a} {at.day} {at:%b}", at=on)
