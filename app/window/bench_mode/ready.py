"""The brake before a last coat: what lies below, and how far each film has come.  No Qt."""

from __future__ import annotations

from dataclasses import dataclass

from app.window.picture import Picture
from planner.cure import Band
from planner.evening.films import laid
from planner.schedule.state import Table
from planner.tonight import WorkRow
from planner.values.coating import State
from planner.values.step import Role, Stage, Step

ORDER = tuple(State)
HARD = State.DRY_THROUGH


@dataclass(frozen=True)
class Below:
    """The top film of some places.

    ``state`` is the farthest that it has surely come, None for wet;
    ``hard`` is when it is surely dry through, None for never.
    """

    places: tuple[str, ...]
    coating: str
    step: str
    state: State | None
    hard: int | None


def is_last(step: Step) -> bool:
    """Tell whether a step is one that people hurry: a last coat, or a join."""
    return step.stage in (Stage.MATTE, Stage.JOIN) or step.role is Role.FINAL


def braked(picture: Picture, row: WorkRow) -> tuple[Below, ...]:
    """Return the films below a last coat, the least dry first; nothing for any other work."""
    table = laid(picture.book, picture.now, picture.cure)
    mine = table.problem.index.get(row.key)
    if mine is None or not is_last(table.problem.activities[mine].one.step):
        return ()
    found: dict[tuple[int, str], list[str]] = {}
    for (project, model, place), (index, _) in table.top.items():
        here = (project, model) == row.key[:2] and place.partition("/")[0] in row.parts
        if here and index != mine:
            one = table.problem.activities[index].one
            found.setdefault((index, dict(one.films)[place]), []).append(place)
    told = [
        _below(picture, table, index, coating, tuple(places))
        for (index, coating), places in found.items()
    ]
    return tuple(sorted(told, key=lambda one: -1 if one.state is None else ORDER.index(one.state)))


def _below(
    picture: Picture, table: Table, index: int, coating: str, places: tuple[str, ...]
) -> Below:
    film = table.film(index, places[0])
    reached: State | None = None
    for state in ORDER:
        at = picture.cure.ready_at(film, state, Band.LATE)
        if at is not None and at <= picture.now:
            reached = state
    step = table.problem.activities[index].one.key.step
    return Below(places, coating, step, reached, picture.cure.ready_at(film, HARD, Band.LATE))
