"""The process that improves plans: it sends judged plans, and its death costs nothing."""

from __future__ import annotations

import time

from app.service import demos
from app.service.improving import Improver, Task, improvements
from app.service.planning import plan
from planner.schedule.judge import judge
from planner.schedule.optimise.effort import Effort


def test_what_comes_is_sound_and_never_dearer() -> None:
    book = demos.read("lone_lamplighter").book
    first = plan(book, demos.first_evening(book)).plan
    # The search is over long before these seconds; a wait for them all ends in a timeout.
    found = list(improvements(Task(book, first, effort=Effort(rolls=1, proofs=1)), 600))
    assert found
    for one in found:
        assert judge(book, one.plan).accepted
        assert one.plan.cost.in_order() <= first.cost.in_order()
        assert {bound.level for bound in one.plan.bounds} == {"unplaced", "late", "finish"}


def test_a_stopped_process_is_gone_at_once() -> None:
    book = demos.read("harbour_tenders").book
    improver = Improver(Task(book, plan(book, demos.first_evening(book)).plan))
    began = time.monotonic()
    improver.stop()
    assert time.monotonic() - began < 0.1  # nobody waits for a process that is waking up
    improver._starting.join(60)
    assert not improver._process.is_alive()
    assert not improver.running
