"""What can be done to a job, and how one that is done goes into the logbook."""

from __future__ import annotations

from collections.abc import Callable

from app.service import air_readings, film_brake, logbook
from app.service.edits import Edit
from app.service.film_brake import GoOn, HeldUp
from app.window.bench_mode.jobs import Job
from app.window.bench_mode.keys import Deed
from planner.tonight import WorkRow
from planner.values.book import Book
from planner.values.plan import Plan


def deeds_on(job: Job | None) -> list[Deed]:
    """Return the deeds that the job on screen allows; none where there is no job."""
    if job is None:
        return []
    if job.work is None:
        return [Deed.DONE]
    begin = [Deed.BEGIN] if job.entry is None else []
    return [Deed.DONE, Deed.PLACE, Deed.NOT_NOW, Deed.NOTE, *begin]


def finishing(
    row: WorkRow,
    job: Job,
    plan: Plan | None,
    now: int,
    held: HeldUp | None = None,
    way: GoOn | None = None,
) -> Callable[[Book], Edit]:
    """Return the edit that notes a job as done, with its usual use, air and airbrush.

    ``held`` is what it met outside its window, ``way`` how it went on all the same.
    """
    airbrush = (job.entry.airbrush if job.entry else "") or row.airbrush or None

    def finished(book: Book) -> Edit:
        book = film_brake.gone_on(book, held, way)
        length = None
        if job.entry is None:
            length = (
                now - held.start
                if held
                else film_brake.likely_minutes(book, row.key, now, row.minutes)
            )
        return logbook.finish(
            book,
            row.key,
            now,
            length,
            row.minutes,
            used=logbook.usual_use(book, row.key, plan),
            air=air_readings.last_read(book, now),
            airbrush=airbrush,
        )

    return finished
