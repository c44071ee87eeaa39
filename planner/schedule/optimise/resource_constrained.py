"""A plain resource-constrained problem with least and greatest lags, for the same solver.

It lets the engine be held against published instances.  Activities have a
fixed duration and demands on renewable resources; a lag says that one starts
at least so long after another starts (a negative one that the other starts
at most so long after it).
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from ortools.sat.python import cp_model

from planner.schedule.optimise.master import WorkBudget, solver_of
from planner.values.plan import Status
from planner.values.refusal import demand, number_in


@dataclass(frozen=True)
class TimeLag:
    """Start of ``after`` ≥ start of ``before`` + ``least``."""

    before: int
    after: int
    least: int


@dataclass(frozen=True)
class PlainProblem:
    """Activities by number, their durations and demands, and what there is.

    Attributes
    ----------
    durations
        Of each activity, 0 or more.
    demands
        Of each activity, one number for each resource, 0 or more.
    capacities
        Of each resource, 0 or more.
    lags
        Between starts.

    Raises
    ------
    Refused
        If the lists do not fit together, or a number is negative that must not be.
    """

    durations: tuple[int, ...]
    demands: tuple[tuple[int, ...], ...]
    capacities: tuple[int, ...]
    lags: tuple[TimeLag, ...]

    def __post_init__(self) -> None:
        count = len(self.durations)
        demand(len(self.demands) == count, "demands", "must be as many as the durations")
        for at, duration in enumerate(self.durations):
            demand(duration >= 0, f"durations[{at}]", "must not be negative")
        for at, capacity in enumerate(self.capacities):
            demand(capacity >= 0, f"capacities[{at}]", "must not be negative")
        for at, own in enumerate(self.demands):
            demand(len(own) == len(self.capacities), f"demands[{at}]", "needs one per resource")
            demand(min(own, default=0) >= 0, f"demands[{at}]", "must not be negative")
        for at, lag in enumerate(self.lags):
            number_in(lag.before, 0, count - 1, f"lags[{at}].before")
            number_in(lag.after, 0, count - 1, f"lags[{at}].after")


@dataclass(frozen=True)
class PlainSchedule:
    """Starts, their makespan, and what is proven; no starts where none are known."""

    status: Status
    starts: tuple[int, ...]
    makespan: int
    bound: int


def least_makespan(problem: PlainProblem, work: WorkBudget) -> PlainSchedule:
    """Return the schedule of least makespan that some work finds."""
    model = cp_model.CpModel()
    horizon = sum(problem.durations) + sum(max(0, lag.least) for lag in problem.lags)
    starts = [model.new_int_var(0, horizon - duration, "") for duration in problem.durations]
    end = model.new_int_var(0, horizon, "")
    for start, duration in zip(starts, problem.durations, strict=True):
        model.add(end >= start + duration)
    for lag in problem.lags:
        model.add(starts[lag.after] >= starts[lag.before] + lag.least)
    for resource, capacity in enumerate(problem.capacities):
        _share(model, problem, starts, resource, capacity)
    hint = first_schedule(problem)
    for start, at in zip(starts, hint or (), strict=False):
        model.add_hint(start, at)
    model.minimize(end)
    solver = solver_of(work)
    status = solver.solve(model)
    if status == cp_model.INFEASIBLE:
        return PlainSchedule(Status.INFEASIBLE, (), 0, 0)
    bound = max(0, round(solver.best_objective_bound))
    if status not in (cp_model.OPTIMAL, cp_model.FEASIBLE):
        return PlainSchedule(Status.INCOMPLETE, (), 0, bound)
    found = tuple(solver.value(start) for start in starts)
    proven = Status.OPTIMAL if status == cp_model.OPTIMAL else Status.FEASIBLE
    return PlainSchedule(proven, found, solver.value(end), bound)


def broken(problem: PlainProblem, starts: tuple[int, ...]) -> list[str]:
    """Return what a schedule does against the problem, counted unit by unit of time."""
    wrong = [f"activity {at} starts at {s}, before 0" for at, s in enumerate(starts) if s < 0]
    wrong += [
        f"activity {lag.after} starts {starts[lag.after]}, not {lag.least} after {lag.before}"
        for lag in problem.lags
        if starts[lag.after] < starts[lag.before] + lag.least
    ]
    ends = [s + d for s, d in zip(starts, problem.durations, strict=True)]
    for time in sorted(set(starts)):
        for resource, capacity in enumerate(problem.capacities):
            used = sum(
                own[resource]
                for own, start, end in zip(problem.demands, starts, ends, strict=True)
                if start <= time < end
            )
            if used > capacity:
                wrong.append(f"at {time} {used} of {capacity} of resource {resource} are used")
    return wrong


def first_schedule(problem: PlainProblem) -> tuple[int, ...] | None:
    """Return a schedule by serial generation where no lag is a greatest one, else None.

    None also where an activity asks more of a resource than there is.
    """
    if any(lag.least < 0 for lag in problem.lags) or _asks_too_much(problem):
        return None
    before: dict[int, list[TimeLag]] = {}
    for lag in problem.lags:
        before.setdefault(lag.after, []).append(lag)
    starts: dict[int, int] = {}
    left = list(range(len(problem.durations)))
    while left:
        ready = [i for i in left if all(lag.before in starts for lag in before.get(i, ()))]
        if not ready:
            return None
        index = ready[0]
        start = max((starts[lag.before] + lag.least for lag in before.get(index, ())), default=0)
        while not _fits(problem, starts, index, start):
            start += 1
        starts[index] = start
        left.remove(index)
    return tuple(starts[index] for index in range(len(problem.durations)))


def _share(
    model: Any, problem: PlainProblem, starts: list[Any], resource: int, capacity: int
) -> None:
    users = [i for i, own in enumerate(problem.demands) if own[resource] and problem.durations[i]]
    intervals = [
        model.new_fixed_size_interval_var(starts[i], problem.durations[i], "") for i in users
    ]
    demands = [problem.demands[i][resource] for i in users]
    if capacity == 1 and all(demand == 1 for demand in demands):
        model.add_no_overlap(intervals)
    else:
        model.add_cumulative(intervals, demands, capacity)


def _asks_too_much(problem: PlainProblem) -> bool:
    return any(
        amount > capacity
        for own, duration in zip(problem.demands, problem.durations, strict=True)
        for amount, capacity in zip(own, problem.capacities, strict=True)
        if duration
    )


def _fits(problem: PlainProblem, starts: dict[int, int], index: int, start: int) -> bool:
    for time in range(start, start + problem.durations[index]):
        for resource, capacity in enumerate(problem.capacities):
            used = problem.demands[index][resource] + sum(
                problem.demands[other][resource]
                for other, begun in starts.items()
                if begun <= time < begun + problem.durations[other]
            )
            if used > capacity:
                return False
    return True
