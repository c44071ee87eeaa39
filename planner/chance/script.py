"""What a plan says is done, in which session and in which order: the script of all runs."""

from __future__ import annotations

from dataclasses import dataclass, field, replace

from planner.bench import AIRED, Stretch, calendar_of
from planner.cure import Film, cure_of
from planner.schedule.drying_locations import chosen_in, settled
from planner.schedule.judge import Premises
from planner.schedule.partial_schedule import FOREVER, PartialSchedule
from planner.schedule.priority_rules import RULES
from planner.schedule.problem import Activity, Problem
from planner.schedule.serial_schedule import SerialSchedule
from planner.values.book import Book
from planner.values.moment import Interval
from planner.values.plan import BenchKind, PassKey, Plan

MORE_SESSIONS = 40  # beyond the plan's last, and as many again as it has: the rest is never done


@dataclass(frozen=True)
class WorkItem:
    """A piece of a pass in its turn.

    Attributes
    ----------
    number
        Its place in the order of the plan.
    activity
        Number of its pass in the problem.
    session
        Number of the session that it has in the plan.
    minutes
        Of hands, as planned.
    share
        What part of its pass it is.
    first, last
        Whether it begins, whether it ends the pass.
    wait
        Minutes for which hands rest before it in the plan.
    cleans
        Airbrushes that are cleaned before it, since the piece of work before.
    """

    number: int
    activity: int
    session: int
    minutes: int
    share: float
    first: bool
    last: bool
    wait: int
    cleans: tuple[str, ...] = ()


@dataclass
class Script:
    """A plan, laid out for many runs.

    Attributes
    ----------
    table
        The plan on the table: what films lie where.
    facts
        What was logged: minutes of start and end, by activity.
    under_way
        Of those, what still goes on, and since when.
    order
        Of each place, its films by activity, from the lowest.
    """

    plan: Plan
    problem: Problem
    table: PartialSchedule
    sessions: tuple[Stretch, ...]
    items: tuple[WorkItem, ...]
    facts: dict[int, tuple[int, int]]
    under_way: dict[int, int]
    airbrush: dict[int, str]
    stacks: dict[tuple[str, str, str], list[int]] = field(default_factory=dict)

    def __post_init__(self) -> None:
        self.stands: dict[int, int] = {}
        self.unit_place: dict[int, str] = {}
        for activity in self.problem.activities:
            for unit, stands in activity.wet:
                self.stands[unit] = stands
                self.unit_place[unit] = activity.location

    def next_session(self, number: int) -> int:
        """Return when the session after one begins."""
        after = number + 1
        if after < len(self.sessions):
            return self.sessions[after].interval.start
        return self.sessions[number].interval.end + 7 * 1440

    def least_opening(self, number: int) -> int:
        """Return for how long a gate keeps its pass waiting in the plan [min]."""
        before = self.problem.ends[number][0]
        openings = self.table.windows(number) if before in self.table.end else ()
        return max(0, openings[0].best - self.table.end[before]) if openings else 0

    def least_closing(self, number: int) -> int:
        """Return how long after the start of its earlier pass a gate closes in the plan [min]."""
        before = self.problem.ends[number][0]
        openings = self.table.windows(number) if before in self.table.end else ()
        return openings[-1].closes - self.table.start[before] if openings else FOREVER

    @property
    def activities(self) -> list[Activity]:
        """The passes."""
        return self.problem.activities

    def film(self, index: int, place: str) -> tuple[int, Film]:
        """Return the film that a pass laid on a place, and the pass with whose end its clock began.

        Films that melt into the next coat in the plan do so in every run.
        """
        spot = (index, place)
        while spot in self.table.melted:
            spot = self.table.melted[spot]
        return spot[0], self.table.films[spot]

    def kind(self, index: int) -> tuple[object, ...]:
        """Return what passes have in common that may be worked on at the same times."""
        activity = self.problem.activities[index]
        return (
            activity.loud,
            activity.smells,
            activity.light,
            activity.pass_.step.helper,
            activity.allowed,
            *self.problem.fit_airs[index],
        )

    def slots(self, index: int, session: int) -> tuple[Interval, ...]:
        """Return when a pass may be worked on in a session: hours of tools, daylight, air, pins."""
        return self._open(self.problem.activities[index], self.sessions[session])

    def _open(self, activity: Activity, stretch: Stretch) -> tuple[Interval, ...]:
        start, end = stretch.interval.start, stretch.interval.end
        if activity.pass_.step.helper and stretch.people < 2:
            return ()
        open_ = [(start, end)]
        calendar = self.problem.calendar
        if activity.loud or activity.smells:
            early = AIRED if activity.smells else 0
            for quiet in calendar.quiet(start, end, early):
                open_ = _without(open_, quiet.start, quiet.end)
        light = calendar.daylight(start, end) if activity.light else None
        if light is not None:
            open_ = _within(open_, [(one.start, one.end) for one in light])
        if activity.allowed is not None:
            open_ = _within(open_, [(one.start, one.end) for one in activity.allowed])
        for air in self.problem.fit_airs[activity.index]:
            open_ = _within(open_, air.pieces(start, end))
        return tuple(Interval(a, b) for a, b in open_)


def _without(open_: list[tuple[int, int]], start: int, end: int) -> list[tuple[int, int]]:
    found = []
    for a, b in open_:
        found += [(x, y) for x, y in ((a, min(b, start)), (max(a, end), b)) if x < y]
    return found


def _within(open_: list[tuple[int, int]], those: list[tuple[int, int]]) -> list[tuple[int, int]]:
    return sorted(
        (max(a, c), min(b, d)) for a, b in open_ for c, d in those if max(a, c) < min(b, d)
    )


def script_of(book: Book, plan: Plan, *, premises: Premises | None = None) -> Script:
    """Lay out a plan of a book, which the judge has accepted.

    Raises
    ------
    KeyError
        If the plan names a pass that the book does not know.
    """
    calendar = premises.calendar if premises else calendar_of(book.bench_time)
    there = settled(book, chosen_in(book, plan))
    cure = cure_of(there.room, calendar.zone)
    problem = Problem(there, plan.now, cure=cure, calendar=calendar)
    serial = SerialSchedule(problem, RULES[0], 0, frozenset())
    serial.take_facts()
    facts = {index: (serial.table.start[index], end) for index, end in serial.table.end.items()}
    sessions = _sessions(problem, plan)
    items = _items(problem, plan, sessions, facts)
    table = _laid(problem, plan, serial.table)
    script = Script(
        plan=plan,
        problem=problem,
        table=table,
        sessions=sessions,
        items=items,
        facts=facts,
        under_way=_under_way(problem),
        airbrush={problem.index[one.key]: one.airbrush for one in plan.placements},
    )
    _stack(script)
    return script


def _under_way(problem: Problem) -> dict[int, int]:
    return {
        problem.index[key]: problem.now
        for key, entry in problem.logged.items()
        if entry.end is None and key in problem.index
    }


def _sessions(problem: Problem, plan: Plan) -> tuple[Stretch, ...]:
    """Return tonight and all sessions to the plan's last, and as many again and more."""
    last = max((one.end for one in plan.placements if not one.logged), default=plan.now)
    found: list[Stretch] = []
    at, needed = plan.now, -1
    while needed < 0 or len(found) < needed:
        stretch = problem.calendar.next_stretch(at)
        if stretch is None:
            break
        at = stretch.interval.end
        found.append(replace(stretch, interval=Interval(max(stretch.interval.start, plan.now), at)))
        if needed < 0 and at >= last:
            needed = 2 * len(found) + MORE_SESSIONS
    return tuple(found)


def _items(
    problem: Problem, plan: Plan, sessions: tuple[Stretch, ...], facts: dict[int, tuple[int, int]]
) -> tuple[WorkItem, ...]:
    lead: dict[PassKey, int] = {}
    for work in plan.bench:
        if work.serves is not None:
            lead[work.serves] = min(lead.get(work.serves, work.interval.start), work.interval.start)
    pieces = sorted(
        (piece.start, problem.index[placed.key], at)
        for placed in plan.placements
        if problem.index[placed.key] not in facts
        for at, piece in enumerate(placed.pieces)
    )
    whole = {problem.index[placed.key]: placed for placed in plan.placements}
    busy = sorted(
        [work.interval for work in plan.bench]
        + [
            problem.activities[index].pass_.attended(whole[index].pieces[at])
            for _, index, at in pieces
        ]
    )
    found = []
    for number, (start, index, at) in enumerate(pieces):
        placed, pass_ = whole[index], problem.activities[index].pass_
        hands = [pass_.attended(piece).minutes for piece in placed.pieces]
        begin = lead.get(placed.key, start) if at == 0 else start
        session = next(i for i, one in enumerate(sessions) if one.interval.end > start)
        free = max(
            (one.end for one in busy if one.end <= begin), default=sessions[session].interval.start
        )
        rest = max(0, begin - max(free, sessions[session].interval.start))
        found.append(
            WorkItem(
                number,
                index,
                session,
                hands[at],
                hands[at] / sum(hands),
                at == 0,
                at == len(placed.pieces) - 1,
                rest,
                _cleaned(plan, sessions[session].interval.start, pieces, number),
            )
        )
    return tuple(found)


def _cleaned(
    plan: Plan, session: int, pieces: list[tuple[int, int, int]], number: int
) -> tuple[str, ...]:
    """Return the airbrushes that are cleaned between a piece and the one before, that session."""
    since = max(session, pieces[number - 1][0] if number else 0)
    return tuple(
        work.airbrush
        for work in plan.bench
        if work.kind is BenchKind.CLEAN and since <= work.interval.start < pieces[number][0]
    )


def _laid(problem: Problem, plan: Plan, facts: PartialSchedule) -> PartialSchedule:
    """Return the table with the plan done to the minute."""
    table = facts.clone()
    for placed in sorted(plan.placements, key=lambda one: one.start):
        index = problem.index[placed.key]
        if index not in table.end:
            table.pieces[index] = placed.pieces
            table.lay(index, placed.start, placed.end)
    return table


def _stack(script: Script) -> None:
    """Say which films lie on each place, from below."""
    for index, place in script.table.films:
        key = script.activities[index].pass_.key
        script.stacks.setdefault((key.project, key.model, place), []).append(index)
    for spot in script.stacks.values():
        spot.sort(key=lambda index: script.activities[index].pass_.rank)
