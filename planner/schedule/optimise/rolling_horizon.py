"""Evening by evening: a master looks some evenings ahead, the next one is done exactly."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from random import Random

from planner.schedule.optimise.board import Board
from planner.schedule.optimise.exact_stretch import Exact
from planner.schedule.optimise.master import Master, WorkBudget, solver_of
from planner.schedule.optimise.stretch_sequencing import (
    closed,
    enter,
    fill,
    in_order,
    sequence,
    top_up,
    what_fits,
)
from planner.schedule.partial_schedule import PartialSchedule
from planner.schedule.placing import put_away
from planner.schedule.problem import Problem

TRIES = 4  # sets tried for one evening before it takes what fits
LATE = 400  # what a stretch of lateness against the goal weighs, in minutes of work


@dataclass(frozen=True)
class Lookahead:
    """How a roll looks ahead.

    Attributes
    ----------
    ahead
        Stretches that the master sees.
    work
        CP-SAT's deterministic seconds for one evening.
    discount
        What work is worth one stretch later.
    setup
        What a minute of set-up weighs beside a minute of work.
    slack
        How many times more work counts that could not wait at all; with
        every stretch that it could wait, less.
    seed
        0 for work as it is; else each pass is worth a little more, at random.
    """

    ahead: int = 4
    work: float = 0.15
    discount: float = 0.9
    setup: float = 1.0
    slack: float = 0.0
    seed: int = 0


LOOKS = (
    Lookahead(ahead=2, work=0.03, discount=0.7, setup=0.5, slack=40),
    Lookahead(ahead=3, work=0.03, discount=0.8, setup=1.0, slack=10),
    Lookahead(ahead=2, work=0.02, discount=0.7, setup=0.5, slack=100),
    Lookahead(ahead=4, work=0.1, discount=0.8, setup=1.0),
    Lookahead(ahead=3, work=0.05, discount=0.7, setup=0.5, slack=40),
)


def look_of(number: int, seed: int) -> Lookahead:
    """Return how the roll of this number looks ahead; once all ways were tried, at random."""
    look = LOOKS[number % len(LOOKS)]
    return look if number < len(LOOKS) else replace(look, seed=seed)


def roll(
    problem: Problem,
    start: PartialSchedule,
    latest: dict[int, int],
    numbers: Callable[[int], int],
    look: Lookahead,
    stopped: Callable[[], bool] = lambda: False,
) -> PartialSchedule | None:
    """Return a table with every pass placed, or None where that fails.

    Parameters
    ----------
    latest
        Stretch by which each pass must be done to meet the goal.
    numbers
        From a minute to the number of its stretch, as in ``latest``.
    """
    table, calendar = start.clone(), problem.calendar
    wanted = set(placeable(problem, start))
    idle = 0
    while not wanted <= table.end.keys():
        if stopped():
            return None
        stretch = calendar.next_stretch(table.time)
        if stretch is None or idle > 12:
            return None
        reach = _reach_of(problem, stretch.interval.start, look.ahead)
        here = enter(table, stretch)
        board = Board(problem, here, reach)
        base = numbers(stretch.interval.start)
        done = _evening(here, board, latest, base, look)
        idle = idle + 1 if len(done.end) == len(table.end) else 0
        table = done
        put_away(table)
        table.time = max(table.time, stretch.interval.end)
    put_away(table)  # also where nothing was left to do but that
    return table


def placeable(problem: Problem, start: PartialSchedule) -> list[int]:
    """Return the activities that nothing forbids for good, nor those before them."""
    found: list[int] = []
    dead: set[int] = set()
    for index in reversed(problem.frame.backwards):
        if index in start.end:
            continue
        activity = problem.activities[index]
        if activity.blocked or any(before in dead for before in activity.before):
            dead.add(index)
        else:
            found.append(index)
    return found


def _reach_of(problem: Problem, minute: int, ahead: int) -> int:
    at = minute
    for _ in range(ahead - 1):
        stretch = problem.calendar.next_stretch(at)
        if stretch is None:
            break
        at = stretch.interval.end
    stretch = problem.calendar.next_stretch(at)
    return stretch.interval.start if stretch else at


def _evening(
    here: PartialSchedule, board: Board, latest: dict[int, int], base: int, look: Lookahead
) -> PartialSchedule:
    problem, stretch = here.problem, board.stretches[0]
    tails = problem.tails
    master = Master(board, whole=False)
    if not master.passes:
        return here
    _value(master, latest, base, look)
    _deadlines(master, here)
    urgency = sorted(master.passes, key=lambda i: (latest.get(i, 0), -tails[i]))
    soon = {i: master.by[i, 0] for i in master.passes if master.first[i] == 0}
    exact = Exact(master.model, board, soon, here)
    for _ in range(TRIES):
        solver = solver_of(WorkBudget(look.work, seed=look.seed))
        solver.solve(master.model)
        if not solver.response_proto.solution:
            break
        wanted = exact.order(solver)
        done = in_order(here, stretch, wanted) or sequence(here, stretch, wanted, tails)
        if done is not None and closed(done, stretch):
            done = fill(done, stretch, urgency, tails)
            return top_up(here, stretch, done, urgency, tails)
        chosen = [exact.present[index] for index in wanted]
        master.model.add_bool_or([literal.negated() for literal in chosen])
    return what_fits(here, stretch, urgency, set(board.head))


def _deadlines(master: Master, here: PartialSchedule) -> None:
    """What a running window waits for is done while it is open."""
    for index in master.passes:
        deadline = here.deadline(index) if here.problem.activities[index].closing else None
        if deadline is not None and deadline < master.board.ends[-1]:
            number = master.board.number_at(deadline - 1)
            if master.first[index] <= number < master.count:
                master.model.add(master.done_by(index, number) == 1)


def _value(master: Master, latest: dict[int, int], base: int, look: Lookahead) -> None:
    """Do much, soon; what is late against the goal first; few set-ups."""
    board = master.board
    random = Random(look.seed)  # noqa: S311 - a seeded search, not a secret
    terms = []
    for index in master.passes:
        slack = max(0, latest.get(index, 0) - base)
        minutes = board.least(index) * (1 + look.slack / (2 + slack))
        minutes += random.random() * look.seed
        for number in range(master.first[index], master.count):
            worth = minutes * (look.discount**number - look.discount ** (number + 1))
            if number + base >= latest.get(index, 0):
                worth += LATE
            terms.append(round(100 * worth) * master.done_by(index, number))
    weighed = [
        round(100 * look.setup * look.discount**number) * setup
        for number, setup in enumerate(master.setups)
    ]
    master.model.maximize(sum(terms) - sum(weighed))
