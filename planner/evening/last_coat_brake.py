"""The brake before a last coat: what lies below, and how far each film has come."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from planner.cure import Band, Cure
from planner.evening.logged_films import laid
from planner.schedule.partial_schedule import PartialSchedule
from planner.values.book import Book
from planner.values.coating import State
from planner.values.plan import PassKey, Placement
from planner.values.step import Role, Stage, Step

ORDER = tuple(State)
HARD = State.DRY_THROUGH


@dataclass(frozen=True)
class TopFilm:
    """The top film of some places.

    ``state`` is the farthest that it has surely come, None for wet;
    ``hard`` is when it is surely dry through, None for never.
    """

    places: tuple[str, ...]
    coating: str
    step: str
    state: State | None
    hard: int | None


@dataclass(frozen=True)
class Brake:
    """A last coat that is to come at ``at``, and the films below it, the least dry first."""

    key: PassKey
    at: int
    below: tuple[TopFilm, ...]


def is_last(step: Step) -> bool:
    """Tell whether a step is one that people hurry: a last coat, or a join."""
    return step.stage in (Stage.MATTE, Stage.JOIN) or step.role is Role.FINAL


def braked(
    book: Book,
    key: PassKey,
    at: int,
    cure: Cure | None = None,
    planned: Iterable[Placement] = (),
) -> tuple[TopFilm, ...]:
    """Return the films below a last coat at ``at``, the least dry first.

    Nothing for any other work.  Films are those of the logbook, and of
    ``planned`` what is laid before ``at``.
    """
    table = laid(book, at, cure, planned)
    mine = table.problem.index.get(key)
    if mine is None:
        return ()
    pass_ = table.problem.activities[mine].pass_
    if not is_last(pass_.step):
        return ()
    found: dict[tuple[int, str], list[str]] = {}
    for (project, model, place), (index, _) in table.top.items():
        here = (project, model) == key[:2] and place.partition("/")[0] in pass_.parts
        if here and index != mine:
            coating = dict(table.problem.activities[index].pass_.films)[place]
            found.setdefault((index, coating), []).append(place)
    told = [
        _below(table, index, coating, tuple(places), at)
        for (index, coating), places in found.items()
    ]
    return tuple(
        sorted(
            told, key=lambda top_film: -1 if top_film.state is None else ORDER.index(top_film.state)
        )
    )


def _below(
    table: PartialSchedule, index: int, coating: str, places: tuple[str, ...], at: int
) -> TopFilm:
    film, cure = table.film(index, places[0]), table.problem.cure
    reached: State | None = None
    for state in ORDER:
        ready = cure.ready_at(film, state, Band.LATE)
        if ready is not None and ready <= at:
            reached = state
    step = table.problem.activities[index].pass_.key.step
    return TopFilm(places, coating, step, reached, cure.ready_at(film, HARD, Band.LATE))
