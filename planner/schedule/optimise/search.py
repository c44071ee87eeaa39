"""Improving a plan step by step, and saying how far from the best it can still be.

The same book, ``now``, seed and effort give the same plans in the same
order; a clock only ever ends the search early.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from concurrent.futures import ThreadPoolExecutor, wait
from functools import partial
from queue import Empty, SimpleQueue

from planner.bench import BenchCalendar
from planner.cure import Cure
from planner.schedule.drying_locations import chosen_in, settled
from planner.schedule.greedy import SerialSchedule, attempt
from planner.schedule.optimise.best_plan import BestPlan, News
from planner.schedule.optimise.board import Board
from planner.schedule.optimise.effort import PROOF_WORK, Effort
from planner.schedule.optimise.fullest_stretches import FILLINGS, fullest
from planner.schedule.optimise.last_stretch_bound import Lowest
from planner.schedule.optimise.master import WorkBudget
from planner.schedule.optimise.parallel_annealing import ASTRAY, FILLED, PROVABLE, Pieces, Walker
from planner.schedule.optimise.rolling_horizon import look_of, roll
from planner.schedule.optimise.settling import Settling
from planner.schedule.optimise.stretch_assignment import Shares, Ties
from planner.schedule.optimise.stretch_reachability import reaches
from planner.schedule.partial_schedule import PartialSchedule
from planner.schedule.priority_rules import RULES, drawn_rules
from planner.schedule.problem import Problem
from planner.values.book import Book
from planner.values.message import message
from planner.values.plan import Plan, Status

POOL_WORK = 0.5  # deterministic seconds for each stretch that a pool may refute
SHARE_WORK = 1.0  # deterministic seconds for a share-out to begin from
NOISE_RULES = 6  # rules drawn at random before each roll
ROLLS = 4  # rounds after which a roll takes the place of a sweep
WALKS = 2  # sweeps that go on side by side
PATIENCE = 0.1  # seconds after which a wait looks whether the search is stopped
STEPS = (3, 5, 20, 60)  # sweeps of the walk beside each round of proof


def improve(
    book: Book,
    first: Plan,
    *,
    cure: Cure,
    calendar: BenchCalendar,
    last: Plan | None = None,
    seed: int = 0,
    effort: Effort | None = None,
    stopped: Callable[[], bool] = lambda: False,
) -> Iterator[News]:
    """Yield ever better plans of a book, the first one with its bounds foremost.

    Parameters
    ----------
    first
        A plan of this very book and ``now``, to start from.
    last
        The plan before an event; steps that leave its stretch are counted.
    stopped
        Asked often; once true the search ends where it is.
    """
    yield from _Improving(
        book, first, cure, calendar, last, seed, effort or Effort(), stopped
    ).run()


class _Improving:
    def __init__(
        self,
        book: Book,
        first: Plan,
        cure: Cure,
        calendar: BenchCalendar,
        last: Plan | None,
        seed: int,
        effort: Effort,
        stopped: Callable[[], bool],
    ) -> None:
        there = settled(book, chosen_in(book, first))
        self.problem = Problem(there, first.now, cure=cure, calendar=calendar)
        self.seed = seed
        self.effort = effort
        self.stopped = stopped
        facts = SerialSchedule(self.problem, RULES[0], 0, frozenset())
        facts.take_facts()
        self.facts: PartialSchedule = facts.table
        latest_end = max((placed.end for placed in first.placements), default=first.now)
        self.board = Board(self.problem, self.facts, max(latest_end, self.facts.time))
        links = reaches(self.board)
        self.walker = Walker(self.board, links, Ties(self.board, links), seed, self._halted)
        self.best = BestPlan(book, first, self.problem, self.board, last)
        self.walks: list[Pieces] = [self.best.pieces] * WALKS
        self.lowest = Lowest(self.board, links, self.best.least)
        self.settling = Settling(self.best, self.walker, self.lowest, seed, self._halted)
        self.abandoned = False

    def run(self) -> Iterator[News]:
        """Alternate rounds and proofs until nothing is left to win."""
        yield self.best.news(improved=False)
        before = self.best.least
        if not (
            self.best.free_choice or self.best.plan.unplaced
        ):  # what has no place, fits nowhere
            work = WorkBudget(POOL_WORK, seed=self.seed, stopped=self._halted)
            self.best.least = self.lowest.pool(work)
        if self.best.least != before:
            yield self.best.news(improved=False)
        if self.stopped():
            return
        yield from self._filled()
        for number in range(max(self.effort.rolls, len(self._proofs()))):
            yield from self.settling.news()
            if self.stopped() or self._finished():
                return
            if number < self.effort.rolls:
                yield from self._round(number)
            if self.stopped() or self._finished():
                return
            if number < len(self._proofs()) and not self.lowest.closed:
                yield from self._prove(number)
        yield from self.settling.news()
        if not self.stopped() and self.best.finish > self.best.least.finish:
            self.best.still_open = self._why_open()
            yield self.best.news(improved=False)

    def _filled(self) -> Iterator[News]:
        """Look for earlier ends by filling stretches one by one, where no set-ups stand between.

        With set-ups that finds nothing that annealing does not.
        """
        best, walker, activities = self.best, self.walker, self.problem.activities
        sprayed = any(activities[index].pass_.load for index in self.board.free)
        if sprayed or best.free_choice or best.plan.unplaced:
            return
        minutes = Shares(walker.ties, best.pieces).minutes
        fillings = list(FILLINGS)
        while fillings and best.last_stretch > best.least.stretch and not self.stopped():
            goal, filling = best.last_stretch - 1, fillings.pop(0)
            numbers = fullest(walker.grid, minutes, filling, goal)
            if numbers is None:
                continue
            table = walker.sweep(best.pieces, FILLED, walker.target(goal), numbers)
            if table is not None and best.take(table, []):
                fillings.append(filling)
                yield best.news(improved=True)

    def _why_open(self) -> str:
        """Return why the finish is not proven, where the search is over."""
        if not self.walker.small:
            return message(
                "{coats} coats are left; up to {most} a proof is tried",
                coats=len(self.board.free),
                most=PROVABLE,
            )
        if self.best.last_stretch <= self.best.least.stretch:
            return message("the minute within the last session")
        if self.lowest.closed:
            return message("fewer sessions might do, but no such plan was found")
        return message("the proof used up the work that it may take")

    def _finished(self) -> bool:
        """Tell whether every level is proven as far as this search can."""
        plan = self.best.plan
        return plan.status is Status.OPTIMAL and len(plan.bounds) == 5

    def _halted(self) -> bool:
        return self.abandoned or self.stopped()

    def _proofs(self) -> tuple[float, ...]:
        """Return the deterministic seconds of each round of proof."""
        return PROOF_WORK[: self.effort.proofs] if self._provable() else ()

    def _prove(self, number: int) -> Iterator[News]:
        """Raise the bound on one thread, while a walk goes on from the best plan on another."""
        found: SimpleQueue[PartialSchedule | None] = SimpleQueue()
        steps = STEPS[number] if number < self.effort.rolls else 0
        work = WorkBudget(PROOF_WORK[number], seed=self.seed, stopped=self._halted)
        before = self.lowest.least
        with ThreadPoolExecutor(max_workers=2) as pool:
            proof = pool.submit(self.lowest.prove, work)
            walk = pool.submit(self._walk, number, steps, found.put)
            try:
                for table in self._coming(found):
                    if self.best.take(table, list(self.best.plan.unplaced)):
                        yield self.best.news(improved=True)
            except GeneratorExit:
                self.abandoned = True
                self.lowest.stop()
                raise
            walk.result()
            while not proof.done():
                wait([proof], timeout=PATIENCE)
                if self.stopped():
                    self.lowest.stop()
            self.best.least = proof.result()
        self.walks[0] = self.best.pieces
        if self.best.least != before:
            yield self.best.news(improved=False)

    def _coming(self, found: SimpleQueue[PartialSchedule | None]) -> Iterator[PartialSchedule]:
        """Yield what a walk finds as it comes, to its end."""
        while True:
            try:
                table = found.get(timeout=PATIENCE)
            except Empty:
                if self.stopped():
                    self.lowest.stop()
                continue
            if table is None:
                return
            yield table

    def _walk(self, number: int, steps: int, put: Callable[[PartialSchedule | None], None]) -> None:
        """Sweep from the best plan on, each time from what the last sweep found; None is the end.

        What is better is worked out here as well, so that the walk does the
        same however soon its finds are taken.
        """
        best, pieces, last = self.best.rank(), self.best.pieces, self.best.last_stretch
        home, least = pieces, self.best.least.stretch
        try:
            for step in range(number, number + steps):
                if self._halted():
                    return
                ways = self.walker.ways(last, least)
                target = self.walker.target(max(least, last - 1))
                way = ways[step % len(ways)]
                table = self.walker.sweep(pieces, way, target, {}, step)
                if table is None:
                    pieces = home
                    continue
                put(table)
                pieces, end = dict(table.pieces), self.walker.last_of(table)
                if (rank := self.best.rank(table)) < best:
                    best, home, last = rank, pieces, end
                elif end >= last + ASTRAY:
                    pieces = home
        finally:
            put(None)

    def _round(self, number: int) -> Iterator[News]:
        """Lookahead for better plans in several ways at once.

        Each way does the same however the others go, and they are taken in
        order: so the same work gives the same plans.
        """
        if number >= 1:
            for rule in drawn_rules(NOISE_RULES, self.seed + NOISE_RULES * number):
                search = attempt(self.problem, rule, self.seed + number)
                if self.best.take(search.table, search.unplaced):
                    yield self.best.news(improved=True)
                if self.stopped():
                    return
        acts, unplaced = self._acts(number), list(self.best.plan.unplaced)
        with ThreadPoolExecutor(max_workers=len(acts)) as pool:
            try:
                for at, doing in enumerate([pool.submit(act) for act in acts]):
                    table = doing.result()
                    if table is not None and self.best.take(table, unplaced):
                        yield self.best.news(improved=True)
                    self._walk_on(at, table)
            except GeneratorExit:
                self.abandoned = True
                raise

    def _acts(self, number: int) -> list[Callable[[], PartialSchedule | None]]:
        """Return what is tried in a round: sweeps, annealing, rolls where those may find more."""
        walker, last, least = self.walker, self.best.last_stretch, self.best.least.stretch
        ways, target = walker.ways(last, least), self._target()
        acts: list[Callable[[], PartialSchedule | None]] = []
        for at, pieces in enumerate(self.walks):
            if at or (number and not walker.small):
                start = self.best.pieces if number % 2 else pieces
                act = partial(walker.anneal, start, last, least, WALKS * number + at)
            else:
                way, numbers = ways[number % len(ways)], self._shared_out(number)
                act = partial(walker.sweep, pieces, way, target, numbers, number)
            acts.append(act)
        every = ROLLS if walker.small else 6 * ROLLS  # they take longer than sweeps
        if number % every == every // 4:
            acts[-1] = self._roll(number, target)
        return acts

    def _roll(self, number: int, target: dict[int, int]) -> Callable[[], PartialSchedule | None]:
        look = look_of(number // ROLLS, self.seed + number)
        number_at = self.board.number_at
        return partial(roll, self.problem, self.facts, target, number_at, look, self._halted)

    def _shared_out(self, number: int) -> dict[int, int]:
        """Return a share-out over fewer stretches than the best plan's, or {} for that plan's."""
        least, most = max(0, self.best.least.stretch), self.best.last_stretch - 1
        if number == 0 or most < least or not self._provable():
            return {}
        if self.lowest.numbers:  # the proof has found one already; it serves once
            numbers, self.lowest.numbers = self.lowest.numbers, {}
            return numbers
        goal = least if number % 2 else most
        work = WorkBudget(SHARE_WORK, seed=self.seed + number, stopped=self.stopped)
        return self.lowest.share_out(goal, work)

    def _provable(self) -> bool:
        return self.walker.small and not self.best.free_choice

    def _walk_on(self, at: int, table: PartialSchedule | None) -> None:
        """Go on from what a walk has found, unless it went astray."""
        best = self.best.last_stretch
        if table is not None and self.walker.last_of(table) < best + ASTRAY:
            self.walks[at] = dict(table.pieces)
        else:
            self.walks[at] = self.best.pieces

    def _target(self) -> dict[int, int]:
        """Return the stretch by which each pass must be done to end one earlier than the best."""
        return self.walker.target(max(self.best.least.stretch, self.best.last_stretch - 1))
