"""What an evening leaves behind when it closes: done, half done, cups and jars, films."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from planner.cure import Band, Cure
from planner.evening.log_entries import key_of
from planner.evening.logged_films import laid
from planner.tonight import RunSheet, WorkRow
from planner.values.book import Book
from planner.values.coating import State
from planner.values.mix import Portion
from planner.values.moment import minute_of
from planner.values.plan import PassKey, Plan

STATES = tuple(State)
JAR_KEEPS_DAYS = 14  # of a mix kept in a jar: assumed


@dataclass(frozen=True)
class WornModel:
    """A model that was worked on, and the last pass on it, to which its photo goes."""

    project: str
    model: str
    last: PassKey


@dataclass(frozen=True)
class LeftInCup:
    """What a cup holds; ``portions`` are what a mix is made of, which a jar could keep."""

    airbrush: str
    coating: str
    portions: tuple[Portion, ...]


@dataclass(frozen=True)
class FilmLaid:
    """A film of this evening: what laid it, and how far it should have come, None for wet."""

    key: PassKey
    coating: str
    places: tuple[str, ...]
    likely: State | None


@dataclass(frozen=True)
class EveningSummary:
    """All that is asked and told when an evening closes.

    Attributes
    ----------
    done
        Passes that ended since it began.
    half
        Passes that are under way, whenever they were begun.
    not_told
        What the sheet had planned to be over by now and the logbook does not have.
    jars
        Mixes that were stirred for it and are in no cup.
    next_start, next_work
        When the bench is next needed, and for what; None and nothing for never.
    """

    since: int
    done: tuple[PassKey, ...]
    half: tuple[PassKey, ...]
    not_told: tuple[PassKey, ...]
    models: tuple[WornModel, ...]
    cups: tuple[LeftInCup, ...]
    jars: tuple[LeftInCup, ...]
    films: tuple[FilmLaid, ...]
    next_start: int | None
    next_work: tuple[PassKey, ...]


def summary(
    book: Book,
    plan: Plan,
    sheet: RunSheet,
    now: int,
    cups: Mapping[str, str],
    *,
    since: int,
    cure: Cure | None = None,
) -> EveningSummary:
    """Return what an evening that began at ``since`` leaves behind at ``now``.

    ``cups`` is what each airbrush holds.
    """
    facts = sorted(
        (
            (minute_of(fact.start, up=False), key_of(project.name, fact), fact)
            for project in book.projects
            for fact in project.log
        ),
        key=lambda one: (one[0], one[1]),
    )
    done = [
        (key, fact)
        for _, key, fact in facts
        if fact.end is not None and since <= minute_of(fact.end) <= now
    ]
    half = [key for _, key, fact in facts if fact.end is None]
    models: dict[tuple[str, str], PassKey] = {}
    for key in (*(key for key, _ in done), *half):
        models[key.project, key.model] = key
    return EveningSummary(
        since=since,
        done=tuple(key for key, _ in done),
        half=tuple(half),
        not_told=_not_told(sheet, now),
        models=tuple(WornModel(*names, last) for names, last in models.items()),
        cups=tuple(
            LeftInCup(name, held, _portions(book, held))
            for name, held in sorted(cups.items())
            if held
        ),
        jars=_jars(book, (key for key, _ in done), cups),
        films=_films(book, now, cure, (key for key, _ in done)),
        next_start=(start := _next(plan, now)),
        next_work=() if start is None else _work_at(plan, start),
    )


def _not_told(sheet: RunSheet, now: int) -> tuple[PassKey, ...]:
    return tuple(
        dict.fromkeys(
            row.key
            for row in sheet.rows
            if isinstance(row, WorkRow) and not row.logged
            if sheet.interval.start <= now and row.start < sheet.interval.end
        )
    )


def _portions(book: Book, coating: str) -> tuple[Portion, ...]:
    mix = book.mix(coating)
    return mix.portions if mix is not None else ()


def _jars(book: Book, done: Iterable[PassKey], cups: Mapping[str, str]) -> tuple[LeftInCup, ...]:
    """Return the mixes that work by hand or in cups cleaned since was done with."""
    steps = {
        (project.name, model.name, step.id): step
        for project in book.projects
        for model in project.models
        for step in model.steps
    }
    found: dict[str, LeftInCup] = {}
    for key in done:
        step = steps.get(key[:3])
        for application in step.applications if step else ():
            mix = book.mix(application.coating)
            if mix is not None and mix.name not in cups.values():
                found[mix.name] = LeftInCup("", mix.name, mix.portions)
    return tuple(found.values())


def _films(
    book: Book, now: int, cure: Cure | None, done: Iterable[PassKey]
) -> tuple[FilmLaid, ...]:
    """Return the films that lie on top, laid by passes of this evening."""
    table = laid(book, now, cure)
    fresh = set(done)
    found: dict[tuple[PassKey, str], list[str]] = {}
    for (project, model, place), (index, _) in table.top.items():
        pass_ = table.problem.activities[index].pass_
        if pass_.key in fresh and (project, model) == pass_.key[:2]:
            found.setdefault((pass_.key, dict(pass_.films)[place]), []).append(place)
    films = []
    for (key, coating), places in sorted(found.items()):
        film = table.film(table.problem.index[key], places[0])
        reached = None
        for state in STATES:
            ready = table.problem.cure.ready_at(film, state, Band.NOMINAL)
            if ready is not None and ready <= now:
                reached = state
        films.append(FilmLaid(key, coating, tuple(places), reached))
    return tuple(films)


def _next(plan: Plan, now: int) -> int | None:
    ahead = [
        piece.start
        for placed in plan.placements
        if not placed.logged
        for piece in placed.pieces
        if piece.start >= now
    ]
    return min(ahead, default=None)


def _work_at(plan: Plan, start: int) -> tuple[PassKey, ...]:
    return tuple(
        placed.key
        for placed in plan.placements
        if not placed.logged and any(piece.start == start for piece in placed.pieces)
    )
