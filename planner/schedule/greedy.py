"""The instant answer: a constructive schedule generation scheme.

Time runs forward through the bench time.  At each moment every pass whose
forerunners are placed is fitted; the rule's favourite goes next, unless it
would leave a window that closes (wiping back, unmasking) unmet.  Several
rules are tried and the plan of least cost is kept.
"""

from __future__ import annotations

from dataclasses import dataclass
from random import Random

from planner.bench import BenchCalendar, Stretch, calendar_of
from planner.cure import Cure
from planner.schedule.fit import Fit, earliest_fit, fit_in, gates_open, setup_for
from planner.schedule.frame import LAST_MINUTE
from planner.schedule.outcome import cost_of, plan_of
from planner.schedule.placing import place, put_away
from planner.schedule.problem import Problem
from planner.schedule.rules import RULES, Rule, drawn_rules
from planner.schedule.state import FOREVER, Cup, Table
from planner.schedule.where import StepKey, choices, settled, told
from planner.values.book import Book
from planner.values.moment import Interval, minute_of, zone_named
from planner.values.plan import Cost, Placement, Plan, Unplaced
from planner.values.said import say

SOON = 36 * 60  # closings nearer than this are guarded exactly [min]
LONGEST_CHAIN = 12
PATIENT_STRETCHES = 3  # stretches left unused before a closing is risked
LEAST_LEFT = 5  # definition 23 [min]
MOST_CHOICES = 24  # places tried one by one for films that may dry elsewhere


def plan_book(
    book: Book,
    now: int,
    *,
    cure: Cure | None = None,
    calendar: BenchCalendar | None = None,
    rules: tuple[Rule, ...] = RULES,
    tries: int = 0,
    seed: int = 0,
    last: Plan | None = None,
) -> Plan:
    """Return the best plan that the rules find, at once.

    Parameters
    ----------
    now
        Minute from which unstarted work may be placed.
    cure, calendar
        Warm tables of this very book, to save building them again.
    rules
        Rules to try; the first alone gives the quickest answer.
    tries
        Number of further rules drawn at random with ``seed``.
    last
        Plan to stay near to; steps that leave its stretch are counted.
    """
    tables = _Tables(
        now,
        cure or Cure(book.room, zone_named(book.bench_time.zone)),
        calendar or calendar_of(book.bench_time),
        last,
    )
    ruled = (*rules, *drawn_rules(tries, seed))
    chosen = _where(book, tables, ruled, seed)
    return told(_plan_settled(settled(book, chosen), tables, ruled, seed), chosen)


@dataclass(frozen=True)
class _Tables:
    now: int
    cure: Cure
    calendar: BenchCalendar
    last: Plan | None


def _where(book: Book, tables: _Tables, rules: tuple[Rule, ...], seed: int) -> dict[StepKey, str]:
    """Choose where films dry: all elsewhere at once, then step by step while that is cheaper."""
    open_to = choices(book)
    if not open_to:
        return {}
    order = book.preferences.order

    def cost(chosen: dict[StepKey, str]) -> tuple[int, ...]:
        plan = _plan_settled(settled(book, chosen), tables, rules[:1], seed)
        return plan.cost.in_order(order)

    best: dict[StepKey, str] = {}
    least = cost(best)
    everywhere = [{key: places[1] for key, places in open_to.items()}]
    single = [(key, one) for key, places in open_to.items() for one in places]
    for trial in everywhere:
        if (found := cost(trial)) < least:
            best, least = trial, found
    for key, location in single[:MOST_CHOICES] if len(rules) > 1 else ():
        trial = {**best, key: location}
        if trial != best and (found := cost(trial)) < least:
            best, least = trial, found
    own = {key: places[0] for key, places in open_to.items()}
    return {key: location for key, location in best.items() if location != own[key]}


def _plan_settled(book: Book, tables: _Tables, rules: tuple[Rule, ...], seed: int) -> Plan:
    problem = Problem(book, tables.now, cure=tables.cure, calendar=tables.calendar)
    last = tables.last
    found: list[tuple[Cost, Search]] = []
    for number, rule in enumerate(rules):
        search = attempt(problem, rule, seed + number)
        found.append((cost_of(problem, search.table, len(search.unplaced), last), search))
    cost, best = min(found, key=lambda one: one[0].in_order(book.preferences.order))
    return plan_of(problem, best.table, best.unplaced, cost)


def attempt(problem: Problem, rule: Rule, seed: int) -> Search:
    """Run one rule; where a closing was missed, run it again guarding that closing."""
    guarded: frozenset[int] = frozenset()
    best: Search | None = None
    for _ in range(3):
        search = Search(problem, rule, seed, guarded)
        search.run()
        if best is None or len(search.unplaced) < len(best.unplaced):
            best = search
        missed = search.missed - guarded
        if not missed:
            break
        guarded |= missed
    assert best is not None
    return best


class Search:
    """One run of one rule over a problem."""

    def __init__(self, problem: Problem, rule: Rule, seed: int, guarded: frozenset[int]) -> None:
        self.problem = problem
        self.rule = rule
        self.random = Random(seed)  # noqa: S311 - a seeded search, not a secret
        self.guarded = guarded
        self.table = Table(problem, problem.now)
        self.unplaced: list[Unplaced] = []
        self.missed: set[int] = set()
        self.waits = [len(activity.before) for activity in problem.activities]
        self.ready: set[int] = set()
        self.dead: set[int] = set()
        self.floor: dict[int, int] = {}
        self.idle_stretches = 0
        self._setups: dict[str, int] = {}
        self._plain: dict[int, tuple[float, ...]] = {}
        self._longest_lead = max(
            (
                max(one.load_minutes, one.change_same_family, one.change_other_family)
                for one in problem.book.gear.airbrushes
            ),
            default=0,
        ) + max(
            (window.preparation_minutes for gate in problem.gates for window in gate.windows),
            default=0,
        )

    def run(self) -> None:
        """Place all that can be placed."""
        self.take_facts()
        for activity in self.problem.activities:
            if activity.index not in self.table.end and self.waits[activity.index] == 0:
                self._make_ready(activity.index)
        while self.ready:
            fit = self._choose()
            if fit is None:
                continue
            if fit.stretch.interval.start > self.table.time:
                put_away(self.table)
            place(self.table, fit)
            self.idle_stretches = 0
            if fit.last:
                self._release(fit.index)
        put_away(self.table)
        for activity in self.problem.activities:
            if activity.index not in self.table.end and activity.index not in self.dead:
                why = activity.blocked or self._waits_for(activity.index)
                self.unplaced.append(Unplaced(activity.one.key, why))
        self.unplaced.sort(key=lambda lost: self.problem.index[lost.key])

    def _waits_for(self, index: int) -> str:
        names = [
            self.problem.activities[before].one.key.step
            for before in self.problem.activities[index].before
            if before not in self.table.end
        ]
        return (
            say("waits for {step}, which has no place", step=names[0])
            if names
            else say("has no place")
        )

    def take_facts(self) -> None:
        """Lay what was logged; work under way is finished first (definitions 22, 23)."""
        problem, table = self.problem, self.table
        for key, entry in sorted(problem.logged.items(), key=lambda item: item[1].start):
            if key not in problem.index:
                continue
            index = problem.index[key]
            start = minute_of(entry.start, up=False)
            if entry.end is not None:
                end = max(start + 1, minute_of(entry.end))
            else:
                minutes = problem.activities[index].one.minutes
                end = problem.now + max(minutes - (problem.now - start), LEAST_LEFT)
                table.time = max(table.time, end)
            table.pieces[index] = [Interval(start, end)]
            table.placements.append(Placement(key, (Interval(start, end),), logged=True))
            table.lay(index, start, end)
        for index in table.end:
            for after in problem.after[index]:
                self.waits[after] -= 1

    def _release(self, index: int) -> None:
        self.ready.discard(index)
        for after in self.problem.after[index]:
            self.waits[after] -= 1
            if self.waits[after] == 0 and after not in self.table.end:
                self._make_ready(after)

    def _make_ready(self, index: int) -> None:
        """Offer a pass whose forerunners are placed; no start before its floor is possible."""
        self.ready.add(index)
        opens = gates_open(self.table, index, 0)
        self.floor[index] = 0 if opens is None else opens

    def _bury(self, index: int) -> None:
        """Give up a pass that fits nowhere any more, saying why."""
        activity = self.problem.activities[index]
        self.ready.discard(index)
        self.dead.add(index)
        self.unplaced.append(Unplaced(activity.one.key, self._why(index)))

    def _why(self, index: int) -> str:
        activity = self.problem.activities[index]
        if activity.blocked:
            return activity.blocked
        if self.problem.calendar.next_stretch(self.table.time) is None:
            return say("there is no more bench time; add an evening")
        for number in activity.gates:
            openings = self.table.windows(number)
            gate = self.problem.gates[number]
            if not openings or openings[-1].opens >= FOREVER:
                return say(
                    "what {step} laid never gets there in this air: {why}",
                    step=gate.before.step,
                    why=gate.why,
                )
            if openings[-1].closes <= self.table.time + activity.one.minutes:
                self.missed.add(index)
                return say(
                    "the window after {step} closes before it can be done", step=gate.before.step
                )
        if activity.allowed is not None:
            return say("its pin leaves no room; move or remove the pin")
        if activity.one.step.helper:
            return say("needs two people, and no stretch of bench time has a helper")
        return say(
            "no stretch of bench time takes its {minutes} minutes", minutes=activity.one.minutes
        )

    def _choose(self) -> Fit | None:
        """Return the next piece of work; None after moving on or giving something up."""
        table, calendar = self.table, self.problem.calendar
        for index in [i for i in self.ready if self.problem.activities[i].blocked]:
            self._bury(index)
        stretch = calendar.next_stretch(table.time)
        if stretch is None:
            for index in sorted(self.ready):
                self._bury(index)
            return None
        begin = max(table.time, stretch.interval.start)
        late = begin + self.rule.patience
        waiting: list[Fit] = []
        refused: list[Fit] = []
        self._setups.clear()
        ranked = sorted((self._rank(i), i) for i in self.ready)
        # What cannot begin yet is fitted only if nothing else can be done.
        soon = late + self._longest_lead
        ranked.sort(key=lambda one: self.floor[one[1]] > soon)
        for _, index in ranked:
            floor = self.floor[index]
            if floor >= stretch.interval.end or table.held_up(index):
                continue
            fit = fit_in(table, index, stretch, table.time)
            if fit is None:
                continue
            if fit.work > late:
                waiting.append(fit)
            elif self._keeps_windows(fit):
                return fit
            else:
                refused.append(fit)
        for fit in sorted(waiting, key=lambda fit: fit.work):
            if self._keeps_windows(fit):
                return fit
            refused.append(fit)
        self.idle_stretches += 1
        if refused and self.idle_stretches > PATIENT_STRETCHES:
            # Nothing keeps every window: the most urgent closing decides.
            return min(refused, key=lambda fit: (table.deadline(fit.index), fit.work))
        self._move_on(stretch)
        return None

    def _move_on(self, stretch: Stretch) -> None:
        """Leave a stretch in which nothing more can be done, for the next that helps."""
        put_away(self.table)
        later = stretch.interval.end
        following = self.problem.calendar.next_stretch(later)
        starts = []
        for index in sorted(self.ready, key=lambda one: (self.floor[one], one)):
            if self.table.held_up(index):
                continue
            fit = earliest_fit(self.table, index, later)
            if fit is None:
                self._bury(index)
            else:
                starts.append(fit.stretch.interval.start)
                if fit.stretch == following:
                    break  # sooner it cannot be
        self.table.time = max(min(starts, default=later), later)

    def _rank(self, index: int) -> tuple[float, ...]:
        """Return a sort key: smaller goes first."""
        problem, rule, table = self.problem, self.rule, self.table
        known = self._plain.get(index)
        if known is not None and index not in table.left:
            return known
        activity = problem.activities[index]
        tail = problem.tails[index]
        value = float(tail)
        target = problem.targets[activity.project]
        if target is not None:
            weight = problem.book.projects[activity.project].weight
            value += rule.due * max(-20_000, table.time + tail - target) * min(weight, 10)
        if activity.one.load:
            minutes = self._setup(activity.one.load)
            value += -rule.setup * minutes if minutes else rule.same_load
        if rule.noise:
            value += self.random.gauss(0, rule.noise)
        bound = activity.closing or activity.together
        deadline = table.deadline(index) if bound else FOREVER
        urgent = index in table.left or deadline < table.time + SOON
        allowed = activity.allowed
        pinned = allowed is not None and not any(one.end >= LAST_MINUTE for one in allowed)
        rank = (not urgent, deadline if urgent else 0, not pinned, -value)
        if not (bound or activity.one.load or rule.noise or target is not None or urgent):
            self._plain[index] = rank  # nothing on the table changes it
        return rank

    def _setup(self, load: str) -> int:
        """Return the least set-up minutes for a load as the cups are at this moment."""
        known = self._setups.get(load)
        if known is None:
            table = self.table
            known = self._setups[load] = min(
                setup_for(table, airbrush, table.cups.get(airbrush.name, Cup()), load)[1]
                for airbrush in self.problem.book.gear.airbrushes
            )
        return known

    def _keeps_windows(self, fit: Fit) -> bool:
        """Tell whether every closing that runs, or that ``fit`` starts, can still be met."""
        if not fit.last:
            return True
        table = self.table
        starts = [
            self.problem.ends[number][1] for number in self.problem.closing_from.get(fit.index, ())
        ]
        together = self.problem.activities[fit.index].together
        starts += [index for index in together if index not in table.end]
        guards = fit.index in self.guarded or bool(together)
        running = [
            index
            for index in table.awaited
            if index != fit.index
            and index not in self.dead
            and (index in self.guarded or table.deadline(index) < fit.end + SOON)
        ]
        if not starts and not running:
            return True
        trial = table.clone()
        if fit.stretch.interval.start > trial.time:
            put_away(trial)
        place(trial, fit)
        waiting = {*running, *starts}
        for index in sorted(waiting, key=lambda waiter: (trial.deadline(waiter), waiter)):
            if index in trial.end or index in self.dead:
                continue
            near = trial.deadline(index) < trial.time + SOON
            if (near or guards or index in self.guarded) and not _chain(trial, index, set()):
                return False
        return True


def _chain(table: Table, index: int, on_the_way: set[int]) -> bool:
    """Place a pass and all that it still waits for, one after the other; tell if it works."""
    if index in table.end:
        return True
    if index in on_the_way or len(on_the_way) > LONGEST_CHAIN:
        return len(on_the_way) > LONGEST_CHAIN  # too long to try: hope, the rerun guards
    on_the_way.add(index)
    for before in table.problem.activities[index].before:
        if not _chain(table, before, on_the_way):
            return False
    if any(before not in table.end for before in table.problem.activities[index].before):
        return True
    if table.problem.activities[index].blocked:
        return False
    if table.held_up(index):
        return True  # until the work begun is finished; the rerun guards
    fit = earliest_fit(table, index, table.time)
    while fit is not None:
        if fit.stretch.interval.start > table.time:
            put_away(table)
        place(table, fit)
        if fit.last:
            return True
        fit = earliest_fit(table, index, table.time)
    return False
