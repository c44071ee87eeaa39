"""The instant answer: several rules are tried, and the plan of least cost is kept."""

from __future__ import annotations

from dataclasses import dataclass

from planner.bench import BenchCalendar, calendar_of
from planner.cure import Cure
from planner.schedule.drying_locations import choices, settled, told
from planner.schedule.plan_from_schedule import cost_of, plan_of
from planner.schedule.priority_rules import RULES, Rule, drawn_rules
from planner.schedule.problem import Problem
from planner.schedule.rival import Rival, rival_of
from planner.schedule.serial_schedule import SerialSchedule
from planner.values.book import Book
from planner.values.keys import StepKey
from planner.values.moment import zone_named
from planner.values.plan import Cost, Plan

__all__ = ["SerialSchedule", "attempt", "plan_book"]

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
    last, order = tables.last, book.preferences.order
    best: tuple[Cost, SerialSchedule] | None = None
    rival: Rival | None = None
    for number, rule in enumerate(rules):
        search = attempt(problem, rule, seed + number, rival)
        if search.beaten:
            continue
        cost = cost_of(problem, search.table, len(search.unplaced), last)
        if best is None or cost.in_order(order) < best[0].in_order(order):
            best, rival = (cost, search), rival_of(problem, cost)
    assert best is not None
    cost, search = best
    return plan_of(problem, search.table, search.unplaced, cost)


def attempt(problem: Problem, rule: Rule, seed: int, rival: Rival | None = None) -> SerialSchedule:
    """Run one rule; where a closing was missed, run it again guarding that closing.

    It is given up, and says so, as soon as ``rival`` is better for sure.
    """
    guarded: frozenset[int] = frozenset()
    best: SerialSchedule | None = None
    for _ in range(3):
        search = SerialSchedule(problem, rule, seed, guarded, rival)
        search.run()
        if search.beaten:
            return best or search
        if best is None or len(search.unplaced) < len(best.unplaced):
            best = search
        missed = search.missed - guarded
        if not missed:
            break
        guarded |= missed
    assert best is not None
    return best
