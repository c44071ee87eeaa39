"""The bare scheduling problem in a batch of `families`: what both baselines are given."""

from __future__ import annotations

from dataclasses import dataclass

from planner.bench import calendar_of
from planner.cure import Band, Cure
from planner.schedule.problem import Problem
from planner.values.book import Book
from planner.values.moment import zone_named
from planner.values.plan import PassKey
from planner.values.step import Bound


@dataclass(frozen=True)
class Task:
    """One pass: minutes, colour ("" for hand work) and family, and the wait before it.

    ``windows`` are (least, most or None) minutes after the end of the task
    before it in its chain; for wiping ``ends_within`` is counted from that
    task's start to this one's end.
    """

    vehicle: int
    minutes: int
    colour: str
    family: str
    windows: tuple[tuple[int, int | None], ...]
    ends_within: int | None = None


@dataclass(frozen=True)
class Batch:
    """Chains of tasks, evenings as (start, end) minutes from the first, and set-up minutes."""

    chains: tuple[tuple[Task, ...], ...]
    evenings: tuple[tuple[int, int], ...]
    load: int
    same: int
    other: int
    clean: int


def batch_of(book: Book, now: int, evenings: int) -> Batch:
    """Return the bare problem of a batch, with so many evenings from ``now`` on.

    A wait is that of its gate or of the film below, whichever is longer.
    """
    families = {coating.name: coating.family.value for coating in book.coatings}
    chains = []
    dry = _film_waits(book, now)
    for number, model in enumerate(book.projects[0].models):
        chain = []
        for at, step in enumerate(model.steps):
            colour = step.applications[0].coating if step.tool.value == "airbrush" else ""
            windows: list[tuple[int, int | None]] = [(0, None)]
            within = None
            if step.gates:
                gate = step.gates[0]
                windows = []
                for window in gate.windows:
                    least = window.opens.minutes or 0 if window.opens else 0
                    most = window.closes.minutes if window.closes else None
                    windows.append((max(least, dry.get((number, at), 0)), most))
                if gate.closing is Bound.END:
                    within, windows = windows[0][1], [(windows[0][0], None)]
            minutes = step.minutes.of(1)
            chain.append(
                Task(number, minutes, colour, families.get(colour, ""), tuple(windows), within)
            )
        chains.append(tuple(chain))
    calendar, stretches, minute = calendar_of(book.bench_time), [], now
    while len(stretches) < evenings:
        found = calendar.next_stretch(minute)
        assert found is not None
        stretches.append((found.interval.start, found.interval.end))
        minute = found.interval.end
    (airbrush,) = book.gear.airbrushes
    return Batch(
        tuple(chains),
        tuple(stretches),
        airbrush.load_minutes,
        airbrush.change_same_family,
        airbrush.change_other_family,
        airbrush.clean_minutes,
    )


def _film_waits(book: Book, now: int) -> dict[tuple[int, int], int]:
    """Return how long the film of the task before is waited for, by (vehicle, task).

    The air of the families never changes, so that a film takes as long
    whenever it is laid.  Work that can be done over again waits until the film
    is likely ready, all else until it surely is (definition 6).  What lies
    below it, and may keep it longer (definition 11), is not stated: the bare
    problem is the easier one there.
    """
    cure = Cure(book.room, zone_named(book.bench_time.zone))
    problem = Problem(book, now, cure=cure, calendar=calendar_of(book.bench_time))
    vehicles = {model.name: number for number, model in enumerate(book.projects[0].models)}
    waits: dict[tuple[int, int], int] = {}
    for number, gate in enumerate(problem.gates):
        opens = gate.windows[0].opens
        before, after = problem.ends[number]
        if opens is None or not opens.of_film or not gate.place or before != after - 1:
            continue
        band = Band.NOMINAL if gate.likely else Band.LATE
        ready = cure.opens_at(problem.film_of(number, now), opens, band)
        assert ready is not None
        one = problem.activities[after].pass_
        spot = vehicles[one.key.model], after - problem.index[_first(problem, one.key.model)]
        waits[spot] = max(waits.get(spot, 0), ready - now)
    return waits


def _first(problem: Problem, model: str) -> PassKey:
    """Return the first pass of a vehicle; each step of the families is one pass."""
    return next(key for key in problem.index if key.model == model)
