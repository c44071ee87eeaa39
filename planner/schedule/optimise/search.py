"""Improving a plan step by step, and saying how far from the best it can still be.

The same book, ``now``, seed and effort give the same plans in the same
order; a clock only ever ends the search early.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from concurrent.futures import ThreadPoolExecutor, wait
from dataclasses import dataclass, replace
from functools import partial
from queue import Empty, SimpleQueue

from planner.bench import BenchCalendar
from planner.cure import Cure
from planner.schedule.drying_locations import chosen_in, settled, told
from planner.schedule.greedy import SerialSchedule, attempt
from planner.schedule.optimise import lower_bounds
from planner.schedule.optimise.board import Board
from planner.schedule.optimise.effort import PROOF_WORK, Effort
from planner.schedule.optimise.fewest_stretches import StretchesProven, as_shared_out, least_rest
from planner.schedule.optimise.last_stretch_bound import Lowest
from planner.schedule.optimise.master import WorkBudget
from planner.schedule.optimise.parallel_annealing import ASTRAY, SETTLED, Pieces, Walker
from planner.schedule.optimise.rolling_horizon import Lookahead, roll
from planner.schedule.optimise.stretch_assignment import Ties
from planner.schedule.optimise.stretch_reachability import Reach, reaches
from planner.schedule.partial_schedule import PartialSchedule
from planner.schedule.plan_from_schedule import cost_of, plan_of
from planner.schedule.priority_rules import RULES, drawn_rules
from planner.schedule.problem import Problem
from planner.values.book import Book
from planner.values.message import message
from planner.values.plan import Cost, Plan, ProvenBound, Status, Unplaced
from planner.values.wishes import USUAL_ORDER, Level

LOOKS = (
    Lookahead(ahead=2, work=0.03, discount=0.7, setup=0.5, slack=40),
    Lookahead(ahead=3, work=0.03, discount=0.8, setup=1.0, slack=10),
    Lookahead(ahead=2, work=0.02, discount=0.7, setup=0.5, slack=100),
    Lookahead(ahead=4, work=0.1, discount=0.8, setup=1.0),
    Lookahead(ahead=3, work=0.05, discount=0.7, setup=0.5, slack=40),
)
SHARE_WORK = 1.0  # deterministic seconds for a share-out to begin from
REST_WORK = 1.0  # deterministic seconds for each of them
NOTHING = StretchesProven(None, None, {})
NOISE_RULES = 6  # rules drawn at random before each roll
ROLLS = 4  # rounds after which a roll takes the place of a sweep
WALKS = 2  # sweeps that go on side by side
PATIENCE = 0.1  # seconds after which a wait looks whether the search is stopped
STEPS = (3, 5, 20, 60)  # sweeps of the walk beside each round of proof


@dataclass(frozen=True)
class News:
    """A better plan, or the same plan with better bounds."""

    plan: Plan
    improved: bool


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
        self.chosen = chosen_in(book, first)
        self.book = settled(book, self.chosen)
        self.free_choice = any(
            step.or_in for p in book.projects for model in p.models for step in model.steps
        )
        self.problem = Problem(self.book, first.now, cure=cure, calendar=calendar)
        self.best = first
        self.last = last
        self.seed = seed
        self.effort = effort
        self.stopped = stopped
        facts = SerialSchedule(self.problem, RULES[0], 0, frozenset())
        facts.take_facts()
        self.facts: PartialSchedule = facts.table
        latest_end = max((placed.end for placed in first.placements), default=first.now)
        self.board = Board(self.problem, self.facts, max(latest_end, self.facts.time))
        self.links: list[Reach] = reaches(self.board)
        self.walker = Walker(
            self.board, self.links, Ties(self.board, self.links), seed, self._halted
        )
        self.least = lower_bounds.least_finish(self.board)
        self.late = lower_bounds.least_late(self.board)
        self.rest = NOTHING
        self.asked: tuple[int, StretchesProven] | None = (
            None  # for which finish, and what was found
        )
        keys = {activity.one.key: at for at, activity in enumerate(self.problem.activities)}
        pieces = {keys[one.key]: one.pieces for one in first.placements if one.key in keys}
        self.pieces: Pieces = pieces
        self.walks: list[Pieces] = [pieces] * WALKS
        self.lowest = Lowest(self.board, self.links, self.least)
        self.abandoned = False

    def run(self) -> Iterator[News]:
        """Alternate rounds and proofs until nothing is left to win."""
        yield self._news(improved=False)
        for number in range(max(self.effort.rolls, len(self._proofs()))):
            yield from self._settling()
            if self.stopped() or self._finished():
                return
            if number < self.effort.rolls:
                yield from self._round(number)
            if self.stopped() or self._finished():
                return
            if number < len(self._proofs()) and not self.lowest.closed:
                yield from self._prove(number)
        yield from self._settling()

    def _finished(self) -> bool:
        """Tell whether every level is proven as far as this search can."""
        return self.best.status is Status.OPTIMAL and len(self.best.bounds) == 5

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
                    if self._take(table, list(self.best.unplaced)):
                        yield self._news(improved=True)
            except GeneratorExit:
                self.abandoned = True
                self.lowest.stop()
                raise
            walk.result()
            while not proof.done():
                wait([proof], timeout=PATIENCE)
                if self.stopped():
                    self.lowest.stop()
            self.least = proof.result()
        self.walks[0] = self.pieces
        if self.least != before:
            yield self._news(improved=False)

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
        best, pieces, last = self._in_order(self.best.cost), self.pieces, self._last_stretch()
        home, least = pieces, self.least.stretch
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
                if (cost := self._in_order(self._cost(table))) < best:
                    best, home, last = cost, pieces, end
                elif end >= last + ASTRAY:
                    pieces = home
        finally:
            put(None)

    def _settling(self) -> Iterator[News]:
        better = self._settle()
        if better is not None:
            yield self._news(improved=better)

    def _settle(self) -> bool | None:
        """Go for the levels after the finish once that can hardly be better.

        Tell whether a better plan was found; None where nothing is new.

        What is proven of them holds for a plan that ends at the very minute
        of the best one, so it is a bound only where that minute is proven.
        """
        goal, finish = self._last_stretch(), self.best.now + self.best.cost.finish
        usual = self.book.preferences.order == USUAL_ORDER
        # Where nothing but facts is left there may be no stretch at all.
        if not self.board.free or goal >= len(self.board.ends) or not self.walker.small:
            return None
        if not usual or goal > self.least.stretch or self.stopped():
            return None
        if self.asked is not None and self.asked[0] == finish:
            return self._settled(self.asked[1])
        rest = least_rest(
            self.board, self.links, goal, finish, WorkBudget(REST_WORK, seed=self.seed)
        )
        self.asked = finish, rest
        self.rest = rest if self.best.status is Status.OPTIMAL else NOTHING
        tables = [as_shared_out(self.facts, self.board, rest.numbers)]
        if rest.numbers:
            target = self._target()
            tables += [self.walker.sweep(self.pieces, way, target, rest.numbers) for way in SETTLED]
        found = [table is not None and self._take(table, []) for table in tables]
        return True if any(found) else False if self.rest != NOTHING else None

    def _settled(self, rest: StretchesProven) -> bool | None:
        """Let what was found hold from when the finish is proven on."""
        if self.best.status is not Status.OPTIMAL or self.rest == rest:
            return None
        self.rest = rest
        return False

    def _round(self, number: int) -> Iterator[News]:
        """Look for better plans in several ways at once.

        Each way does the same however the others go, and they are taken in
        order: so the same work gives the same plans.
        """
        if number >= 1:
            for rule in drawn_rules(NOISE_RULES, self.seed + NOISE_RULES * number):
                search = attempt(self.problem, rule, self.seed + number)
                if self._take(search.table, search.unplaced):
                    yield self._news(improved=True)
                if self.stopped():
                    return
        acts, unplaced = self._acts(number), list(self.best.unplaced)
        with ThreadPoolExecutor(max_workers=len(acts)) as pool:
            try:
                for at, doing in enumerate([pool.submit(act) for act in acts]):
                    table = doing.result()
                    if table is not None and self._take(table, unplaced):
                        yield self._news(improved=True)
                    self._walk_on(at, table)
            except GeneratorExit:
                self.abandoned = True
                raise

    def _acts(self, number: int) -> list[Callable[[], PartialSchedule | None]]:
        """Return what is tried in a round: sweeps, annealing, rolls where those may find more."""
        walker, last, least = self.walker, self._last_stretch(), self.least.stretch
        ways, target = walker.ways(last, least), self._target()
        acts: list[Callable[[], PartialSchedule | None]] = []
        for at, pieces in enumerate(self.walks):
            if at or (number and not walker.small):
                start = self.pieces if number % 2 else pieces
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
        look = LOOKS[(number // 4) % len(LOOKS)]
        if number >= 4 * len(LOOKS):
            look = replace(look, seed=self.seed + number)
        number_at = self.board.number_at
        return partial(roll, self.problem, self.facts, target, number_at, look, self._halted)

    def _shared_out(self, number: int) -> dict[int, int]:
        """Return a share-out over fewer stretches than the best plan's, or {} for that plan's."""
        least, most = max(0, self.least.stretch), self._last_stretch() - 1
        if number == 0 or most < least or not self._provable():
            return {}
        if self.lowest.numbers:  # the proof has found one already; it serves once
            numbers, self.lowest.numbers = self.lowest.numbers, {}
            return numbers
        goal = least if number % 2 else most
        work = WorkBudget(SHARE_WORK, seed=self.seed + number, stopped=self.stopped)
        return self.lowest.share_out(goal, work)

    def _provable(self) -> bool:
        return self.walker.small and not self.free_choice

    def _walk_on(self, at: int, table: PartialSchedule | None) -> None:
        """Go on from what a walk has found, unless it went astray."""
        best = self._last_stretch()
        if table is not None and self.walker.last_of(table) < best + ASTRAY:
            self.walks[at] = dict(table.pieces)
        else:
            self.walks[at] = self.pieces

    def _target(self) -> dict[int, int]:
        """Return the stretch by which each pass must be done to end one earlier than the best."""
        return self.walker.target(max(self.least.stretch, self._last_stretch() - 1))

    def _last_stretch(self) -> int:
        begun = [p.pieces[-1].start for p in self.best.placements if not p.logged]
        return self.board.number_at(max(begun)) if begun else 0

    def _take(self, table: PartialSchedule, unplaced: list[Unplaced]) -> bool:
        cost = self._cost(table)
        if self._in_order(cost) >= self._in_order(self.best.cost):
            return False
        if cost.unplaced != len(unplaced):
            return False
        plan = plan_of(self.problem, table, unplaced, cost)
        self.pieces = dict(table.pieces)
        self.best = replace(told(plan, self.chosen), digest=self.best.digest)
        return True

    def _cost(self, table: PartialSchedule) -> Cost:
        left = len(self.problem.activities) - len(table.end)
        return cost_of(self.problem, table, left, self.last)

    def _in_order(self, cost: Cost) -> tuple[int, ...]:
        return cost.in_order(self.book.preferences.order)

    def _news(self, *, improved: bool) -> News:
        """Return the best plan with what is proven of it."""
        plan = self.best
        found = () if self.free_choice else self._bounds(plan.cost)
        names = [bound.level for bound in found]
        order = self.book.preferences.order
        wanted = ["unplaced", Level.LATE.value, Level.FINISH.value]
        tight = all(bound.value == getattr(plan.cost, bound.level) for bound in found)
        usual = order[0] is Level.LATE and order[1] is Level.FINISH
        status = plan.status
        if status in (Status.FEASIBLE, Status.OPTIMAL):
            proven = usual and tight and names[:3] == wanted
            status = Status.OPTIMAL if proven else Status.FEASIBLE
        self.best = replace(plan, bounds=found, status=status)
        return News(self.best, improved)

    def _bounds(self, cost: Cost) -> tuple[ProvenBound, ...]:
        if cost.unplaced:
            return ()
        stated = list(lower_bounds.stated(self.board, self.least, self.late, placed=True))
        # A level after the finish is bounded only once the finish is proven, and then if met.
        rest = (("stretches", self.rest.stretches), ("setup_minutes", self.rest.setup))
        for level, least in rest:
            if least is None or getattr(cost, level) != least:
                break
            stated.append(
                ProvenBound(level, least, message("no way to share the passes out does with less"))
            )
        return tuple(stated)
