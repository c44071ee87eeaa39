"""What the Room view shows, computed from the book alone; no Qt in here."""

from __future__ import annotations

from collections import defaultdict
from dataclasses import dataclass

from planner.air import Advisory, Air, Fitness, fitness, laying_advice, step_advice
from planner.bench import BenchCalendar
from planner.cure import Band, Cure, Film
from planner.cure.drying_path import PathPoint, StateTimes, film_path, state_times
from planner.values.book import Book
from planner.values.coating import THINNERS, Clock, Coating
from planner.values.moment import Interval
from planner.values.step import CLEAR_STAGES, Step, Tool

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
    """Return how long each coating takes to each state when laid by the minute ``laid``.

    What speaks against laying it is said as plan and run sheet say it: of the
    ways in which the book's steps lay it the one that the air likes least.
    """
    air = cure.air(location).at(laid)
    uses = _uses(book)
    return tuple(
        CoatingTimes(
            coating,
            state_times(cure, coating, laid, location),
            _worst(coating, uses.get(coating.name, []), air),
        )
        for coating in in_stock(book)
    )


def _uses(book: Book) -> dict[str, list[Step]]:
    """Return one step for each tool, and for colour and clear, that lays each coating."""
    found: dict[str, dict[tuple[Tool, bool], Step]] = defaultdict(dict)
    for project in book.projects:
        for model in project.models if project.active else ():
            for step in model.steps:
                for application in step.applications:
                    name = book.coating(application.coating).name
                    found[name].setdefault((step.tool, step.stage in CLEAR_STAGES), step)
    return {name: list(steps.values()) for name, steps in found.items()}


def _worst(coating: Coating, uses: list[Step], air: Air) -> tuple[Advisory, ...]:
    every = [step_advice(step, coating, air) for step in uses]
    every = every or [laying_advice(coating, Tool.AIRBRUSH, air)]
    return max(every, key=lambda told: list(Fitness).index(fitness(told)))


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
