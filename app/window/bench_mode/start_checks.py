"""What is asked before work is begun: whether it may, and what else could be.  No Qt."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from app.window import reasons, words
from app.window.bench_mode.choice_prompt import Asked, Line
from app.window.bench_mode.jobs import Job
from app.window.plan_snapshot import PlanSnapshot
from app.window.run_sheet_notes_words import below_words, other_words, rest_words
from planner.evening.advice import rest
from planner.evening.alternatives import instead, leaves_time
from planner.evening.last_coat_brake import braked
from planner.tonight import WorkRow
from planner.values.plan import PassKey

OTHERS_SHOWN = 8


def against_beginning(
    row: WorkRow, picture: PlanSnapshot, now: int, begin: Callable[[], None]
) -> Asked | None:
    """Return what is to be thought of before work begins, as a question; None for nothing."""
    zone, book = picture.zone, picture.book
    about = []
    name = words.stage_word(row.stage)
    title = words.tr("Ready for {work}?").format(work=name)
    if not leaves_time(book, row.key, now, cure=picture.cure):
        about.append(words.tr("What must follow it soon has no time left: leave it today."))
        title = words.tr("Begin all the same?")
    resting = rest(book, row.key, now)
    if resting is not None:
        about.append(rest_words(resting, zone, now))
        title = words.tr("Begin all the same?")
    below = braked(book, row.key, now, picture.cure)
    about += [below_words(top_film, zone, now) for top_film in below]
    if not about:
        return None
    space = words.tr("it is ready: begin")
    return Asked(title, about=tuple(about), space=begin, space_word=space)


def what_else(
    picture: PlanSnapshot, job: Job | None, now: int, take: Callable[[PassKey], None]
) -> Asked:
    """Return the question which other work is begun in place of the job on screen."""
    without = [job.work.key] if job and job.work else []
    found = instead(picture.book, now, cure=picture.cure, without=without)[:OTHERS_SHOWN]
    lines = tuple(
        Line(
            words.capital(reasons.key_name(other.key)),
            other_words(other, picture.zone, now),
            partial(take, other.key),
        )
        for other in found
    )
    about = () if lines else (words.tr("Nothing else is ready in this session."),)
    return Asked(words.tr("Something else for now"), lines, about)
