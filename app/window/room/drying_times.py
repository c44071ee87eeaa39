"""What the Room view shows, computed from the book alone; no Qt in here."""

from __future__ import annotations

from dataclasses import dataclass

from planner.air import Advisory, laying_advice
from planner.bench import BenchCalendar
from planner.cure import Band, Cure, Film
from planner.cure.drying_path import PathPoint, StateTimes, film_path, state_times
from planner.values.book import Book
from planner.values.coating import THINNERS, Clock, Coating
from planner.values.moment import Interval
from planner.values.step import Tool

NIGHT = 16 * 60  # at least so long a course is drawn [min]
LONGEST = 72 * 60  # and never a longer one [min]


@dataclass(frozen=True)
class CoatingTimes:
    """One coating, laid at a minute: when it reaches each state, and what speaks against it."""

    coating: Coating
    states: tuple[StateTimes, ...]
    advice: tuple[Advisory, ...]


@dataclass(frozen=True)
class AirPointAhead:
    """Air at one minute."""

    minute: int
    temperature_c: float
    humidity_pct: float


@dataclass(frozen=True)
class FilmCourse:
    """One film through the night: its curve, its states, the air, and where bench time is.

    ``closes`` are the minutes at which a recoat window of it closes.
    """

    coating: Coating
    laid: int
    end: int
    path: tuple[PathPoint, ...]
    states: tuple[StateTimes, ...]
    progress: tuple[float, ...]  # at the nominal time of each state
    closes: tuple[int, ...]
    air: tuple[AirPointAhead, ...]
    bench: tuple[Interval, ...]


def in_stock(book: Book) -> tuple[Coating, ...]:
    """Return the coatings that form a film, as the book lists them."""
    return tuple(coating for coating in book.coatings if coating.family not in THINNERS)


def coating_times(book: Book, cure: Cure, location: str, laid: int) -> tuple[CoatingTimes, ...]:
    """Return how long each coating takes to each state when laid by the minute ``laid``."""
    air = cure.air(location).at(laid)
    return tuple(
        CoatingTimes(
            coating,
            state_times(cure, coating, laid, location),
            laying_advice(coating, Tool.AIRBRUSH, air),
        )
        for coating in in_stock(book)
    )


def course(
    cure: Cure, calendar: BenchCalendar, coating: Coating, location: str, laid: int
) -> FilmCourse:
    """Return one film's course, until it is dry through or for three days."""
    states = state_times(cure, coating, laid, location)
    reached = [state.late for state in states if state.late is not None]
    length = max(NIGHT, min(LONGEST, round(1.08 * (max(reached, default=laid) - laid))))
    end = laid + length
    film = Film(coating, coating.dry_film_um, location, laid)
    path = film_path(cure, film, laid, end, points=160)
    marks = [state.nominal for state in states if state.nominal is not None]
    by_minute = {
        minute: film_path(cure, film, laid, max(laid + 1, minute), points=2)[-1].progress
        for minute in marks
    }
    course_of_air = cure.air(location)
    step = max(10, length // 120)
    return FilmCourse(
        coating=coating,
        laid=laid,
        end=end,
        path=path,
        states=states,
        progress=tuple(
            0.0 if state.nominal is None else by_minute[state.nominal] for state in states
        ),
        closes=tuple(_closings(cure, film, laid)),
        air=tuple(
            AirPointAhead(minute, *course_of_air.at(minute))
            for minute in range(laid, end + 1, step)
        ),
        bench=tuple(stretch.interval for stretch in calendar.stretches(laid, end)),
    )


def _closings(cure: Cure, film: Film, laid: int) -> list[int]:
    found = []
    for window in film.coating.recoat:
        if window.closes is not None:
            band = Band.NOMINAL if window.closes.clock is Clock.ELAPSED else Band.EARLY
            closes = cure.closes_at(film, window.closes, laid, band)
            if closes is not None:
                found.append(closes)
    return found
