"""Closing the evening: all its answers as one edit."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from enum import StrEnum

from app.service import air_readings, bench_events, film_brake, logbook, stock
from app.service.edits import Edit
from planner.bench import calendar_of
from planner.evening.closing_evening import JAR_KEEPS_DAYS, EveningSummary, LeftInCup, summary
from planner.evening.log_entries import entry_of
from planner.values.book import Book
from planner.values.coating import State
from planner.values.message import called
from planner.values.mix import Portion
from planner.values.moment import minute_of, moment_of, zone_named
from planner.values.plan import PassKey, Plan
from planner.values.supplies import Leftover

__all__ = ["EveningSummary", "LeftInCup", "summary"]


class WorkState(StrEnum):
    """How far work has come when the evening closes."""

    DONE = "done"
    UNDER_WAY = "under way"
    NOT_BEGUN = "not begun"


class Feel(StrEnum):
    """How a film feels to a careful finger at its edge."""

    WET = "wet"
    STICKY = "sticky"
    TOUCH_DRY = "touch-dry"
    HARD = "hard"


_FELT: dict[Feel, tuple[State, bool]] = {
    Feel.WET: (State.SET_TO_TOUCH, False),
    Feel.STICKY: (State.TACK_FREE, False),
    Feel.TOUCH_DRY: (State.TACK_FREE, True),
    Feel.HARD: (State.DRY_TO_HANDLE, True),
}


@dataclass(frozen=True)
class ClosingAnswers:
    """What was answered; what is not named stays as it is.

    Attributes
    ----------
    work
        How far passes have come.
    photos
        Names of kept photos, for the pass that they go to.
    cleaned
        Airbrushes that are clean now.
    kept
        How much of a mix or coating goes into a jar [ml].
    feels
        How the film of a pass feels.
    """

    work: Mapping[PassKey, WorkState] = field(default_factory=dict)
    photos: Mapping[PassKey, str] = field(default_factory=dict)
    cleaned: tuple[str, ...] = ()
    kept: Mapping[str, float] = field(default_factory=dict)
    feels: Mapping[PassKey, Feel] = field(default_factory=dict)


def closed(book: Book, answers: ClosingAnswers, now: int, plan: Plan | None = None) -> Edit:
    """Return the evening closed: work noted or put back, photos, cups, jars, films; then its end.

    Raises
    ------
    Refused
        If an answer cannot be, with what it was about.
    """
    for key, how in answers.work.items():
        book = _worked(book, key, how, now, plan)
    for key, photo in answers.photos.items():
        book = logbook.annotate(book, key, photo=photo).book
    for airbrush in answers.cleaned:
        book = logbook.cleaned(book, airbrush, now).book
    for name, ml in answers.kept.items():
        if ml > 0:
            book = _kept(book, name, ml, now)
    for key, feel in answers.feels.items():
        state, reached = _FELT[feel]
        if reached:
            book = bench_events.looked(book, key, now, state, reached=True).book
        else:
            book = bench_events.tacky(book, key, now, state).book
    return Edit(called("evening closed"), _ended(book, now))


def _worked(book: Book, key: PassKey, state: WorkState, now: int, plan: Plan | None) -> Book:
    known = entry_of(book, key)
    if state is WorkState.NOT_BEGUN:
        return logbook.take_back(book, key).book if known is not None else book
    airbrush = logbook.usual_airbrush(book, key, plan)
    if state is WorkState.UNDER_WAY:
        return book if known is not None else logbook.begin(book, key, now, airbrush=airbrush).book
    if known is not None and known.end is not None:
        return book
    placed = plan.placement(key) if plan else None
    end = now if known is not None or placed is None else min(now, placed.end)
    usual = logbook.planned_minutes(book, plan, key)
    minutes = None if known is not None else film_brake.likely_minutes(book, key, end, usual)
    if known is not None:
        end = max(end, minute_of(known.start) + 1)
    return logbook.finish(
        book,
        key,
        end,
        minutes,
        usual,
        used=logbook.usual_use(book, key, plan),
        air=air_readings.last_read(book, now),
        airbrush=airbrush,
    ).book


def _kept(book: Book, name: str, ml: float, now: int) -> Book:
    """Put what is left of a mix into a jar, in place of one of that name."""
    mix = book.mix(name)
    portions = mix.portions if mix is not None else (Portion(coating=name, parts=1),)
    jar = Leftover(
        name=name,
        ml=ml,
        made=moment_of(now, zone_named(book.bench_time.zone)),
        keeps_days=JAR_KEEPS_DAYS,
        portions=portions,
    )
    there = any(leftover.name == name for leftover in book.supplies.leftovers)
    return stock.put_leftover(book, name if there else "", jar).book


def _ended(book: Book, now: int) -> Book:
    """Return the book whose evening is over; out of bench time it is only said."""
    if calendar_of(book.bench_time).stretch_at(now) is not None:
        return bench_events.stop(book, now).book
    return bench_events.evening_over(book, now).book
