"""A pass that stands at the last minute that a definition allows, and one minute to either side.

Each edge is told once and asked of judge and heuristic apart: the judge is
given whole plans, the heuristic a table on which all but the pass in question
is laid, and the minute from which hands are free for it.  The minutes are
worked out by hand from the definition that an edge names, or taken from
``planner.cure``, which has published checks of its own.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass, field, replace

from judge_cases.making import NOW, key, piece, plan

from planner.bench import BenchCalendar
from planner.cure import Cure
from planner.schedule.fit import Fit, earliest_fit
from planner.schedule.partial_schedule import Cup, PartialSchedule
from planner.schedule.priority_rules import RULES
from planner.schedule.problem import Problem
from planner.schedule.serial_schedule import SerialSchedule
from planner.values.book import Book
from planner.values.moment import zone_named
from planner.values.plan import BenchWork, PassKey, Placement, Plan

Bench = Callable[[int], Iterable[BenchWork]]


def _nothing(start: int) -> Iterable[BenchWork]:
    return ()


@dataclass(frozen=True)
class Edge:
    """One pass at the edge of what a definition allows.

    Attributes
    ----------
    at, out
        The first or last start that is allowed, and that one minute beyond.
    minutes
        Its length, in one piece.
    done
        What stands before it, in the order of time.
    bench
        What goes with a start: loads, changes, cleanings, preparations.
    cups
        What the airbrushes hold when it is fitted.
    lead
        Minutes of hands right before its start.
    later
        What stands after it, and is not there yet when it is fitted.
    unplaced
        Steps that the plan leaves out.
    named
        The definitions that the judge names for the minute beyond; by default the edge's own.
        That it was off by no more than the coat below is long is told as definition 4.
    """

    book: Book
    step: str | PassKey
    at: int
    out: int
    minutes: int = 10
    done: tuple[Placement, ...] = ()
    bench: Bench = _nothing
    cups: dict[str, Cup] = field(default_factory=dict)
    lead: int = 0
    airbrush: str = ""
    now: int = NOW
    later: tuple[Placement, ...] = ()
    unplaced: tuple[str, ...] = ()
    named: frozenset[int] = frozenset()

    @property
    def key(self) -> PassKey:
        """The pass in question."""
        return key(self.step) if isinstance(self.step, str) else self.step

    @property
    def inside(self) -> int:
        """The start one minute within."""
        return 2 * self.at - self.out


EDGES: list[tuple[int, str, Callable[[], Edge]]] = []


def edge(definition: int) -> Callable[[Callable[[], Edge]], Callable[[], Edge]]:
    """Register an edge of this definition."""

    def register(build: Callable[[], Edge]) -> Callable[[], Edge]:
        EDGES.append((definition, build.__name__, build))
        return build

    return register


def fact(placed: Placement) -> Placement:
    """Return a placement as the logbook has it."""
    return replace(placed, logged=True)


def planned(one: Edge, start: int) -> Plan:
    """Return the plan in which the pass stands at ``start``."""
    placed = Placement(one.key, (piece(start, one.minutes),), airbrush=one.airbrush)
    bench = one.bench(start)
    placements = (*one.done, placed, *one.later)
    return plan(one.book, *placements, bench=bench, now=one.now, unplaced=one.unplaced)


def fitted(one: Edge, start: int) -> Fit | None:
    """Return how the heuristic places the pass, with hands free just in time for ``start``."""
    cure = Cure(one.book.room, zone_named(one.book.bench_time.zone))
    problem = Problem(one.book, one.now, cure=cure, calendar=BenchCalendar(one.book.bench_time))
    search = SerialSchedule(problem, RULES[0], 0, frozenset())
    search.take_facts()
    table = search.table
    for placed in one.done:
        if not placed.logged:
            lay(table, placed)
    table.cups.update(one.cups)
    return earliest_fit(table, problem.index[one.key], max(table.time, start - one.lead))


def lay(table: PartialSchedule, placed: Placement) -> None:
    """Put a pass on a table where a plan has it."""
    index = table.problem.index[placed.key]
    table.pieces[index] = placed.pieces
    table.placements.append(placed)
    table.lay(index, placed.start, placed.pieces[-1].end)
