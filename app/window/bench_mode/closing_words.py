"""What the bench mode says where no job is left, and before the table is left."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from app.window import reasons, words
from app.window.bench_mode.choice_prompt import Asked, Line
from app.window.bench_mode.cups import cups_to_check
from app.window.bench_mode.restart_state import Memory
from app.window.plan_snapshot import PlanSnapshot
from app.window.run_sheet_notes_words import check_words, look_sentence
from planner.evening.closing_check import CheckKind, checks, closing_before
from planner.evening.looks import looks
from planner.values.book import Book
from planner.values.moment import Interval

CLOSINGS_TOLD = 2
FILMS_TOLD = 4


def closing_before_next(picture: PlanSnapshot, now: int) -> list[str]:
    """Return the windows that close before there is bench time again."""
    sheet, zone = picture.sheet, picture.zone
    after = picture.calendar.next_stretch(max(now, sheet.interval.end))
    until = after.interval.start if after else now
    return [
        words.tr("{work} closes {time}, before the next bench time").format(
            work=words.capital(reasons.key_name(closing.waiting)),
            time=words.closing(closing.closes, zone, now),
        )
        for closing in closing_before(sheet, until)[:CLOSINGS_TOLD]
    ]


def before_you_go(
    picture: PlanSnapshot, book: Book, memory: Memory, now: int, look_at: Callable[[str], None]
) -> Asked:
    """Return the closing check; ``look_at`` ticks a line of it by its name."""
    begun = picture.sheet.interval.start
    span = Interval(min(begun, now), now + 1)
    ticked = memory.checked(begun)
    lines = tuple(
        Line(
            check_words(check),
            ", ".join(check.things) if check.kind is CheckKind.WET else "",
            partial(look_at, check.name),
            on=check.name in ticked,
        )
        for check in checks(
            picture.book, span, cups_to_check(book, memory, begun, span), cure=picture.cure
        )
    )
    about = tuple(closing_before_next(picture, now))
    return Asked(words.tr("Before you go"), lines, about, stays=True)


def nothing_left(picture: PlanSnapshot, now: int) -> list[str]:
    """Return what to say where no job is left: what dries, and what may be looked at again."""
    sheet, zone = picture.sheet, picture.zone
    if not any(project.active for project in picture.book.projects):
        told = [words.tr("No project is planned: begin one on the page Tonight or Build.")]
    elif sheet.interval.start > now:
        at = words.when(sheet.interval.start, zone, now)
        told = [words.tr("The next bench time begins {time}.").format(time=at)]
    else:
        told = []
        for film in sheet.drying_now[:FILMS_TOLD]:
            at = (
                words.tr("never in this air")
                if film.opens is None
                else words.opening(film.opens, zone, now)
            )
            told.append(
                words.tr("{work} dries until {time}").format(
                    work=words.capital(reasons.key_name(film.key)), time=at
                )
            )
    looked = looks(picture.book, now)[:FILMS_TOLD]
    return [*told, *(look_sentence(look, zone, now) for look in looked)]
