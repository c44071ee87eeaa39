"""What is looked for in the process of its own: better plans, and what cannot hold together.

It loads the solver; nothing but that process imports it.
"""

from __future__ import annotations

import contextlib
import os
from collections.abc import Callable, Iterator

from app.service.search_process import Improved, Task
from planner.bench import calendar_of
from planner.cure import Cure
from planner.schedule.judge import Premises, judge
from planner.schedule.optimise.conflict import explain, infeasible
from planner.schedule.optimise.search import improve
from planner.values.moment import zone_named


def search(task: Task, stopped: Callable[[], bool] = lambda: False) -> Iterator[Improved]:
    """Yield what clashes, then better plans and bounds; what the judge refuses is left out."""
    with contextlib.suppress(AttributeError, OSError):
        os.nice(10)  # whoever sits at the window comes first
    cure = Cure(task.book.room, zone_named(task.book.bench_time.zone))
    calendar = calendar_of(task.book.bench_time)
    premises = Premises(task.book, cure, calendar)
    if task.first.unplaced:
        told = infeasible(task.first, explain(task.book, task.first.now, cure))
        yield Improved(told, False, judge(task.book, told, premises=premises))
        if told.conflict:
            return
    for news in improve(
        task.book,
        task.first,
        cure=cure,
        calendar=calendar,
        last=task.last,
        seed=task.seed,
        effort=task.effort,
        stopped=stopped,
    ):
        verdict = judge(task.book, news.plan, premises=premises)
        if verdict.accepted:
            yield Improved(news.plan, news.improved, verdict)
