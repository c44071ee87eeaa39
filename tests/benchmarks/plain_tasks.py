"""The bare scheduling problem in a batch of `families`: what both baselines are given."""

from __future__ import annotations

from dataclasses import dataclass

from planner.bench import calendar_of
from planner.values.book import Book
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
    """Return the bare problem of a batch, with so many evenings from ``now`` on."""
    families = {one.name: one.family.value for one in book.coatings}
    chains = []
    for number, model in enumerate(book.projects[0].models):
        chain = []
        for step in model.steps:
            colour = step.applications[0].coating if step.tool.value == "airbrush" else ""
            windows: list[tuple[int, int | None]] = [(0, None)]
            within = None
            if step.gates:
                gate = step.gates[0]
                windows = []
                for window in gate.windows:
                    least = window.opens.minutes or 0 if window.opens else 0
                    most = window.closes.minutes if window.closes else None
                    windows.append((least, most))
                if gate.closing is Bound.END:
                    within, windows = windows[0][1], [(windows[0][0], None)]
            minutes = step.minutes.of(1)
            chain.append(
                Task(number, minutes, colour, families.get(colour, ""), tuple(windows), within)
            )
        chains.append(tuple(chain))
    calendar, stretches, at = calendar_of(book.bench_time), [], now
    while len(stretches) < evenings:
        found = calendar.next_stretch(at)
        assert found is not None
        stretches.append((found.interval.start, found.interval.end))
        at = found.interval.end
    (airbrush,) = book.gear.airbrushes
    return Batch(
        tuple(chains),
        tuple(stretches),
        airbrush.load_minutes,
        airbrush.change_same_family,
        airbrush.change_other_family,
        airbrush.clean_minutes,
    )
