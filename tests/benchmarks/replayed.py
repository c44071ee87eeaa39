"""A project as the program itself lets it go by: each pass logged as it went, the rest repaired.

What the simulation of `planner.chance` says is held against this.  The person
keeps to the plan on screen: what comes next in it is begun as soon as the
rules let it within its session, what was begun is finished (half an hour past
the end; the rest first thing next time), and a closing that was missed is
mended as the program offers first.  Minutes and lost sessions are those of
one run of the simulation; films dry by the rules, and nothing is done over.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np

from app.service import planning
from planner.bench import Stretch, calendar_of
from planner.chance.assumptions import assumed
from planner.chance.draws import Draws, Floats
from planner.chance.spreads import Spreads
from planner.chance.work_runs import LEAST_LEFT
from planner.evening.log_entries import step_of
from planner.evening.logged_films import laid
from planner.evening.missed_closings import Remedy, missed, remedied
from planner.pace.minutes import Work
from planner.schedule.drying_locations import chosen_in, settled
from planner.schedule.fit import fit_in
from planner.values.book import Book
from planner.values.moment import moment_of
from planner.values.plan import PassKey, Placement, Plan
from planner.values.project import Logged
from planner.values.step import Stage

IDLE = 40  # sessions without work before a replay is given up


class OnlyHands(Spreads):
    """The assumed law of minutes and sessions; films dry by the rules, and nothing is redone."""

    def setup_factor(self, draws: Draws, *name: object) -> Floats:
        return np.ones(draws.runs)

    def drying(self, draws: Draws, coating: str, key: PassKey) -> Floats:
        return np.zeros(draws.runs)

    def redone_share(self, stage: Stage) -> float:
        return 0.0


@dataclass(frozen=True)
class Luck:
    """What happens in one run."""

    draws: Draws
    run: int

    def lost(self, begun: int) -> bool:
        """Tell whether the session that begins at a minute does not take place."""
        share = OnlyHands().lost_share(self.draws)[self.run]
        return bool(self.draws.uniform("session", begun)[self.run] < share)

    def factor(self, book: Book, key: PassKey) -> float:
        """Return the factor on the minutes of a pass."""
        step = step_of(book, key)
        drawn = OnlyHands().minutes_factor(self.draws, Work(step.stage, step.tool), key)
        return float(drawn[self.run])


def replayed(book: Book, now: int, plan: Plan, luck: Luck) -> int | None:
    """Return when the last pass ends; None if the program never gets there."""
    calendar, first, idle = calendar_of(book.bench_time), now, 0
    while idle < IDLE:
        book = _mended(book, now)
        plan = planning.plan(book, now, last=plan).plan
        ahead = [placed for placed in plan.placements if not placed.logged]
        if not ahead and not plan.unplaced:
            return max(placed.end for placed in plan.placements)
        placed = min(ahead, key=lambda one: one.start, default=None)
        stretch = calendar.next_stretch(now if placed is None else placed.start)
        assert stretch is not None
        begun = stretch.interval.start
        if placed is None or (begun > first and luck.lost(begun)):
            idle += placed is None
            now = stretch.interval.end
            continue
        idle = 0
        fact = _done(book, plan, now, placed, luck)
        project = placed.key.project
        book = replace(
            book,
            projects=tuple(
                replace(one, log=(*one.log, fact)) if one.name == project else one
                for one in book.projects
            ),
        )
        assert fact.end is not None
        now = round(fact.end.timestamp() / 60)
    return None


def _mended(book: Book, now: int) -> Book:
    """Return the book with what was missed mended in the way that is offered first."""
    while True:
        late = [one for one in missed(book, now) if one.remedies[0] is not Remedy.WAIT]
        if not late:
            return book
        book = remedied(book, late[0], late[0].remedies[0])


def _done(book: Book, plan: Plan, now: int, placed: Placement, luck: Luck) -> Logged:
    """Return what the logbook says of the next pass."""
    calendar = calendar_of(book.bench_time)
    stretch = calendar.stretch_at(placed.start)
    assert stretch is not None
    start = placed.start
    factor, last = luck.factor(book, placed.key), placed.pieces[-1]
    minutes = max(1, round(last.minutes * factor))
    if len(placed.pieces) > 1:
        end = last.start + minutes
    else:
        start = min(start, _soonest(book, plan, now, placed, stretch))
        end = start + minutes
        limit = stretch.interval.end + int(assumed("finishes"))
        if end > max(limit, start + last.minutes):
            after = calendar.next_stretch(stretch.interval.end)
            assert after is not None
            end = after.interval.start + max(LEAST_LEFT, end - limit)
    return Logged(
        model=placed.key.model,
        step=placed.key.step,
        coat=placed.key.coat,
        start=moment_of(start, calendar.zone),
        end=moment_of(end, calendar.zone),
        minutes=minutes,
        airbrush=placed.airbrush,
    )


def _soonest(book: Book, plan: Plan, now: int, placed: Placement, stretch: Stretch) -> int:
    """Return when a pass can begin in a session, with the cups as the logbook leaves them."""
    table = laid(settled(book, chosen_in(book, plan)), now)
    index = table.problem.index[placed.key]
    fit = fit_in(table, index, stretch, max(now, stretch.interval.start))
    return placed.start if fit is None else fit.start
