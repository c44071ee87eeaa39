"""The brake before a last coat: what lies below, and how far each film has come.  No Qt."""

from __future__ import annotations

from dataclasses import dataclass

from app.window.picture import Picture
from planner.cure import Band
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
    laid = picture.laid
    if row.key not in laid.problem.index or not is_last(laid.of(row.key).step):
        return ()
    mine = laid.problem.index[row.key]
    found: dict[tuple[int, str], list[str]] = {}
    tops = _tops(picture, row, mine)
    for place, index in tops.items():
        one = laid.problem.activities[index].one
        found.setdefault((index, dict(one.films)[place]), []).append(place)
    told = [
        _below(picture, index, coating, tuple(places)) for (index, coating), places in found.items()
    ]
    return tuple(sorted(told, key=lambda one: -1 if one.state is None else ORDER.index(one.state)))


def _tops(picture: Picture, row: WorkRow, mine: int) -> dict[str, int]:
    """Return the pass that lies on top of each place of the model's parts now."""
    laid = picture.laid
    tops: dict[str, tuple[int, int]] = {}
    for index, end in laid.table.end.items():
        one = laid.problem.activities[index].one
        if index == mine or one.key[:2] != row.key[:2] or end > picture.now:
            continue
        for place, _ in one.films:
            if place.partition("/")[0] in row.parts:
                tops[place] = max(tops.get(place, (0, 0)), (end, index))
    return {place: index for place, (_, index) in tops.items()}


def _below(picture: Picture, index: int, coating: str, places: tuple[str, ...]) -> Below:
    film = picture.laid.table.film(index, places[0])
    reached: State | None = None
    for state in ORDER:
        at = picture.cure.ready_at(film, state, Band.LATE)
        if at is not None and at <= picture.now:
            reached = state
    step = picture.laid.problem.activities[index].one.key.step
    return Below(places, coating, step, reached, picture.cure.ready_at(film, HARD, Band.LATE))
