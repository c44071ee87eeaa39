"""The plan before, repaired: what the rules still allow stays (definition 27a)."""

from __future__ import annotations

from dataclasses import replace
from typing import NamedTuple

from planner.bench import BenchCalendar
from planner.cure import Cure
from planner.schedule.drying_locations import chosen_in, settled, told
from planner.schedule.judge import Premises, Verdict, judge
from planner.schedule.partial_schedule import PartialSchedule
from planner.schedule.plan_from_schedule import cost_of, reasoned, unreasoned
from planner.schedule.priority_rules import RULES, Rule
from planner.schedule.problem import Problem
from planner.schedule.serial_schedule import SerialSchedule
from planner.schedule.staying.as_it_stands import as_it_stands
from planner.schedule.staying.holding import Holding
from planner.schedule.staying.kept import KeptPlan, kept_of
from planner.schedule.staying.policy import Firm, gains, leaves, moved_passes, worth
from planner.values.book import Book
from planner.values.plan import Plan, Unplaced


class RepairedPlan(NamedTuple):
    """A plan that was repaired, and what the judge, who accepted it, said of it."""

    plan: Plan
    verdict: Verdict


def repaired(
    book: Book,
    last: Plan,
    now: int,
    *,
    premises: Premises,
    calendar: BenchCalendar,
    firm: frozenset[int] = frozenset(),
) -> RepairedPlan | None:
    """Return the plan before, repaired for a book of today; None if the judge takes no repair.

    Where all of it still holds it comes back to the minute.  Where work has
    to move, that which moves least is kept as long as nothing is lost by it;
    else the way that loses least.

    Parameters
    ----------
    premises
        What judging needs of this very book.
    calendar
        The bench time, as it is searched.
    firm
        Beginnings of stretches that were promised: work leaves them only if it must.
    """
    repair = PlanRepair(book, last, now, cure=premises.cure, calendar=calendar, firm=firm)

    def sound(plan: Plan) -> RepairedPlan | None:
        verdict = judge(book, plan, premises=premises)
        return RepairedPlan(repair.told(plan), verdict) if verdict.accepted else None

    as_it_is = repair.as_it_stands()
    standing = as_it_is and sound(as_it_is)
    if standing and not standing.plan.unplaced:
        return standing
    held = repair.held()
    if standing:
        more = len(held.unplaced) < len(standing.plan.unplaced)
        better = more and not moved_passes(calendar, standing.plan, held)
        return (sound(held) if better else None) or standing
    before = worth(book, calendar, replace(last, now=now))
    if worth(book, calendar, held) <= before and (found := sound(held)):
        return found
    ways = [held, repair.pulled(), repair.pushed()]
    times = [
        Firm(stretch.interval)
        for stretch in map(calendar.next_stretch, firm)
        if stretch is not None
    ]

    def rank(plan: Plan) -> tuple[int, bool, tuple[int, ...], int]:
        told = not leaves(last, plan, times)
        lost = worth(book, calendar, plan)
        return plan.cost.unplaced, told, lost, moved_passes(calendar, last, plan)

    ways.sort(key=rank)
    return next((found for plan in ways if (found := sound(plan))), None)


def come_forward(
    book: Book,
    present: Plan,
    *,
    premises: Premises,
    calendar: BenchCalendar,
    firm: frozenset[int] = frozenset(),
) -> Plan | None:
    """Return the present plan with all work come forward into time that is free.

    None where that gains nothing, or the judge does not take it.
    """
    now = present.now
    repair = PlanRepair(book, present, now, cure=premises.cure, calendar=calendar, firm=firm)
    forward = repair.pulled()
    if not gains(book, calendar, present, forward):
        return None
    return repair.told(forward) if judge(book, forward, premises=premises).accepted else None


def drawn_forward(
    book: Book,
    present: Plan,
    *,
    premises: Premises,
    calendar: BenchCalendar,
    firm: frozenset[int] = frozenset(),
) -> Plan:
    """Return the present plan with all work come forward into time that is free, unjudged."""
    now = present.now
    repair = PlanRepair(book, present, now, cure=premises.cure, calendar=calendar, firm=firm)
    return repair.told(repair.pulled())


class PlanRepair:
    """One plan to be repaired for a book of today.

    Its plans have no reasons yet: most are only weighed.  `told` gives them.

    Attributes
    ----------
    book
        The book, films drying where the plan before has chosen.
    """

    def __init__(
        self,
        book: Book,
        last: Plan,
        now: int,
        *,
        cure: Cure,
        calendar: BenchCalendar,
        firm: frozenset[int] = frozenset(),
    ) -> None:
        self.last = last
        self.chosen = chosen_in(book, last)
        self.book = settled(book, self.chosen)
        self.problem = Problem(self.book, now, cure=cure, calendar=calendar)
        facts = SerialSchedule(self.problem, RULES[0], 0, frozenset())
        facts.take_facts()
        self.facts: PartialSchedule = facts.table
        self.kept: KeptPlan = kept_of(self.problem, last, self.facts)
        self.firm = firm
        self._made: list[tuple[Plan, PartialSchedule]] = []

    def told(self, plan: Plan) -> Plan:
        """Return one of these plans with a reason on every placement."""
        table = next(table for made, table in self._made if made is plan)
        return reasoned(self.problem, table, plan)

    def as_it_stands(self) -> Plan | None:
        """Return the plan before as it is, if that is a question at all; the judge answers it."""
        table = as_it_stands(self.problem, self.last, self.facts, self.kept)
        if table is None:
            return None
        left = [
            unplaced
            for unplaced in self.last.unplaced
            if self.problem.index.get(unplaced.key, -1) in self.kept.lost - set(self.facts.end)
        ]
        return self._plan(table, left)

    def held(self) -> Plan:
        """Return the plan in which all that can stays where it was."""
        return self._completed(Holding(self.problem, self.kept, firm=self.firm).run(self.facts))

    def pulled(self) -> Plan:
        """Return the plan in which all that can comes forward into time that is free."""
        holding = Holding(self.problem, self.kept, pull=True, firm=self.firm)
        return self._completed(holding.run(self.facts))

    def pushed(self) -> Plan:
        """Return the plan in which all is done in the order in which it was, one after another."""
        search = _InOrder(self.problem, self.kept)
        search.resume(self.facts.clone())
        return self._plan(search.table, search.unplaced)

    def _completed(self, table: PartialSchedule) -> Plan:
        if len(table.end) == len(self.problem.activities):
            return self._plan(table, [])
        search = _InOrder(self.problem, self.kept)
        search.resume(table)
        return self._plan(search.table, search.unplaced)

    def _plan(self, table: PartialSchedule, unplaced: list[Unplaced]) -> Plan:
        cost = cost_of(self.problem, table, len(unplaced), self.last)
        plan = told(unreasoned(self.problem, table, unplaced, cost), self.chosen)
        self._made.append((plan, table))
        return plan


class _InOrder(SerialSchedule):
    """A run that takes passes in the order of the plan before, none in an earlier stretch."""

    def __init__(self, problem: Problem, kept: KeptPlan) -> None:
        super().__init__(problem, Rule(patience=30), 0, frozenset())
        self.kept = kept

    def _make_ready(self, index: int) -> None:
        super()._make_ready(index)
        begun = self.kept.order.get(index)
        if begun is not None:
            stretch = self.problem.calendar.stretch_at(begun)
            self.floor[index] = max(self.floor[index], stretch.interval.start if stretch else begun)
