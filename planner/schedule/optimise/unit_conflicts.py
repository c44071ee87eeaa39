"""Passes of one stretch that keep each other off the units that both handle.

WorkBudget that goes on alone keeps its units to itself (definition 13), and wet
films keep fingers off a unit without a holder (definition 5), whichever of
two passes comes first.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Callable, Mapping
from itertools import combinations
from typing import Any

from planner.cure import Band, Film, film_um
from planner.schedule.compiled_book import Activity
from planner.schedule.optimise.board import Board
from planner.values.coating import State

HOUR = 60

Dry = Callable[[Activity, str], int]
"""Minutes from the end of a pass until its film of a coating may be held."""


def keep_apart(
    model: Any,
    board: Board,
    starts: Mapping[int, Any],
    dry: Dry,
    present: Mapping[int, Any] | None = None,
) -> None:
    """Hold passes apart that cannot be done close after each other.

    Parameters
    ----------
    starts
        Start variable of each pass.
    present
        Literals that say whether a pass is done here at all; without them all are.
    """
    by_model: dict[tuple[str, str], list[int]] = defaultdict(list)
    for index in starts:
        key = board.problem.activities[index].pass_.key
        by_model[key.project, key.model].append(index)
    for passes in by_model.values():
        for combination, other in combinations(sorted(passes), 2):
            gaps = _gap(board, combination, other, dry), _gap(board, other, combination, dry)
            if gaps == (0, 0):
                continue
            both = [present[combination], present[other]] if present is not None else []
            first = model.new_bool_var("")
            for gap, before, after, literal in (
                (gaps[0], combination, other, first),
                (gaps[1], other, combination, first.negated()),
            ):
                least = gap or board.least(before)
                model.add(starts[after] - starts[before] >= least).only_enforce_if([literal, *both])


def shortest_dry(board: Board, begin: int, end: int, step: int = HOUR) -> Dry:
    """Return what tells the shortest time that a film takes which is laid in some minutes.

    A film laid later is never ready earlier: so looking every ``step`` minutes and taking
    as much off, but for one, is safe.
    """
    problem = board.problem
    known = board.shortest_dry

    def shortest(activity: Activity, name: str) -> int:
        thickness = film_um(activity.pass_.step, problem.coatings[name])
        key = (name, thickness, activity.location, begin, step)
        if key not in known:
            coating = problem.coatings[name]
            lags = []
            for at in range(begin, end + 1, step):
                film = Film(coating, thickness, activity.location, at)
                ready = problem.cure.ready_at(film, State.DRY_TO_HANDLE, Band.LATE)
                if ready is not None:
                    lags.append(ready - at - step + 1)
            known[key] = max(0, min(lags, default=0))
        return known[key]

    return shortest


def dry_as_at(board: Board, minute: int) -> Dry:
    """Return what tells how long a film takes that is laid at a minute."""
    problem = board.problem

    def lasting(activity: Activity, name: str) -> int:
        coating = problem.coatings[name]
        thickness = film_um(activity.pass_.step, coating)
        film = Film(coating, thickness, activity.location, minute)
        ready = problem.cure.ready_at(film, State.DRY_TO_HANDLE, Band.LATE)
        return 0 if ready is None else ready - minute

    return lasting


def _gap(board: Board, before: int, after: int, dry: Dry) -> int:
    """Return the least minutes from the start of a pass to that of one after it; 0 for any."""
    activity, other = (board.problem.activities[index] for index in (before, after))
    gap = 0
    if activity.pass_.alone and set(activity.held) & set(other.held):
        gap = board.lasts(before)
    touched = {place for _, _, place in other.fingers}
    for place, name in activity.pass_.films:
        if place in touched:
            gap = max(gap, board.lasts(before) + dry(activity, name))
    return gap
