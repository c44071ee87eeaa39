"""What the search says of a plan that leaves passes over, without a process of its own."""

from __future__ import annotations

from dataclasses import replace

from app.service.planning import Planned
from planner.schedule.judge import Premises, judge
from planner.schedule.optimise.conflict import explain, infeasible
from planner.values.book import Book


def explained(planned: Planned, book: Book) -> Planned:
    """Return a plan that leaves passes over with what clashes, where that is proven."""
    if not planned.plan.unplaced:
        return planned
    plan = infeasible(planned.plan, explain(book, planned.plan.now, planned.cure))
    verdict = judge(book, plan, premises=Premises(book, planned.cure, planned.calendar))
    return replace(planned, plan=plan, verdict=verdict)
