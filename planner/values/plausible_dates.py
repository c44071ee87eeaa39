"""How far from now a book may speak: the one check of a mistyped year.

History may be as old as it likes.  What lies too far ahead would carry
hands, and with them the whole plan, out of the years that are looked at.
"""

from __future__ import annotations

from collections.abc import Iterator
from datetime import datetime, time
from zoneinfo import ZoneInfo

from planner.values.book import Book
from planner.values.message import Message, message
from planner.values.moment import minute_of, zone_named
from planner.values.project import Project
from planner.values.refusal import Refused, demand

REACH = 20 * 366 * 1440  # assumed: nobody plans, and no plan begins, further ahead [min]
PLAN_REACH = REACH + 10 * 366 * 1440  # no plan reaches further from its now [min]


def just_told(minute: int, now: int, place: str) -> None:
    """Demand that a moment somebody has just typed lies within 20 years of ``now``.

    Raises
    ------
    Refused
        It is a mistyped year, whichever way.
    """
    demand(abs(minute - now) <= REACH, place, "is more than 20 years from today; check the year")


def in_reach(book: Book, now: int, *, idle: bool = False) -> None:
    """Demand that no fact and no wish of a book lies more than 20 years ahead of ``now``.

    Parameters
    ----------
    idle
        Look at projects that are not planned, too.

    Raises
    ------
    Refused
        With the path to the first that does, and what it is.
    """
    zone = zone_named(book.bench_time.zone)
    for at, project in enumerate(book.projects):
        if project.active or idle:
            for place, moment, about in _told(project, zone):
                if minute_of(moment) - now > REACH:
                    mend = message(
                        "{what} is dated {day}, more than 20 years after now; check the year",
                        what=about,
                        day=moment.date(),
                    )
                    raise Refused(f"projects[{at}].{place}", mend)


def _told(project: Project, zone: ZoneInfo) -> Iterator[tuple[str, datetime, Message | str]]:
    """Yield all that moves work of a project: its place, the moment, and of what it speaks."""
    if project.begins is not None:
        yield "begins", datetime.combine(project.begins, time(), zone), project.name
    for at, entry in enumerate(project.log):
        yield f"log[{at}].start", entry.start, _step(entry.model, entry.step)
        if entry.end is not None:
            yield f"log[{at}].end", entry.end, _step(entry.model, entry.step)
    for at, look in enumerate(project.observed):
        yield f"observed[{at}].at", look.at, _step(look.model, look.step)
    for at, pin in enumerate(project.pins):
        about = _step(pin.model, pin.step)
        if pin.on is not None:
            yield f"pins[{at}].on", datetime.combine(pin.on, time(), zone), about
        for name in ("start", "not_before"):
            moment = getattr(pin, name)
            if moment is not None:
                yield f"pins[{at}].{name}", moment, about


def _step(model: str, step: str) -> str:
    return f"{model}/{step}"
