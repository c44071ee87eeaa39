"""Plans of the same worth whose dates are surer, and what a still surer one would cost."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

from app.service.advising import LEAST_CHANCE, LEAST_DAYS, Adviser, gained
from app.service.few_runs import Most
from app.service.planning import Planned
from app.service.planning_errors import Stopped
from planner.schedule.drying_locations import chosen_in, settled
from planner.schedule.greedy import plan_book
from planner.schedule.judge import Premises, judge
from planner.schedule.priority_rules import RULES, drawn_rules
from planner.schedule.staying.policy import firm_times, leaves, worth
from planner.schedule.staying.repair import drawn_forward
from planner.values.message import Message, message
from planner.values.moment import Interval
from planner.values.plan import Plan

DRAWN = 12  # rules beside the usual ones
RUNS = 400  # enough to tell one order from another with the same luck
SEED = 29


@dataclass(frozen=True)
class SurerPlan:
    """Another order of the same work.

    Attributes
    ----------
    days, chance
        By how many days it ends earlier on average, and by how much its
        least sure date is surer; None without a date.
    free
        It is worth the same by all that work moves for (definition 27a).
    leaves
        It leaves tonight and promised evenings as they are.
    """

    planned: Planned
    days: float
    chance: float | None
    free: bool
    leaves: bool


def surer_plans(adviser: Adviser, promised: Sequence[Interval] = ()) -> tuple[SurerPlan, ...]:
    """Return other plans of the same book that are surer, the surest first.

    Raises
    ------
    Stopped
        As soon as the adviser is told to stop.
    """
    book, present = adviser.book, adviser.planned
    calendar, plan = present.calendar, present.plan
    own = worth(book, calendar, plan)
    firm = firm_times(calendar, plan.now, promised)
    found = []
    for other in _others(adviser):
        if not adviser.may_buy(other, _enough):
            continue
        days, chance = gained(adviser.odds, adviser.simulated(book, other))
        if not _enough(Most(days, chance)):
            continue
        value = worth(book, calendar, other.plan)
        found.append(SurerPlan(other, days, chance, value <= own, leaves(plan, other.plan, firm)))
    found.sort(key=lambda one: (-(one.chance or 0.0), -one.days))
    return tuple(found)


def _enough(bought: Most) -> bool:
    """Tell whether another order buys days or chance worth telling, and costs none of either."""
    days, chance = bought.days, bought.chance or 0.0
    return (days >= LEAST_DAYS or chance >= LEAST_CHANCE) and chance >= 0 and days >= -LEAST_DAYS


def _others(adviser: Adviser) -> Iterator[Planned]:
    """Yield plans that other rules find, which the judge accepts and which leave nothing more."""
    book, present = adviser.book, adviser.planned
    premises = Premises(book, present.cure, present.calendar)
    seen = {present.plan.placements}
    for made in _made(adviser, premises):
        if made.placements in seen or made.cost.unplaced > present.plan.cost.unplaced:
            continue
        seen.add(made.placements)
        other = replace(made, digest=present.plan.digest)
        verdict = judge(book, other, premises=premises)
        if verdict.accepted:
            there = settled(book, chosen_in(book, other))
            yield Planned(other, verdict, premises.cure, present.calendar, there)


def _made(adviser: Adviser, premises: Premises) -> Iterator[Plan]:
    """Yield the present plan with all work come forward, then what other rules make."""
    book, present = adviser.book, adviser.planned
    yield drawn_forward(book, present.plan, premises=premises, calendar=present.calendar)
    for rule in (*RULES, *drawn_rules(DRAWN, SEED)):
        if adviser.stop():
            raise Stopped
        yield plan_book(
            book,
            present.plan.now,
            cure=premises.cure,
            calendar=present.calendar,
            rules=(rule,),
            last=present.plan,
        )


def taken(found: Sequence[SurerPlan]) -> SurerPlan | None:
    """Return the surest that costs nothing and moves nothing of tonight; None if there is none."""
    return next((one for one in found if one.free and one.leaves), None)


def price_line(one: SurerPlan, present: Plan) -> Message:
    """Return what another order buys, and what it costs."""
    before, after = present.cost, one.planned.plan.cost
    return message(
        "another order of the work: {days:.1f} days on average, {percent:+d} % chance; it takes "
        "{sessions:+d} sessions and ends {later:+.1f} days by plan",
        days=one.days,
        percent=round(100 * (one.chance or 0)),
        sessions=after.stretches - before.stretches,
        later=(after.finish - before.finish) / 1440,
    )
