"""Looking for a better plan: promised evenings weigh as they do everywhere else."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from types import SimpleNamespace

import pytest
from small_book import NOW, small_book

from app.service import looking, planning
from planner.bench import BenchCalendar
from planner.schedule.staying.policy import Firm, StayingChoice
from planner.values.book import Book
from planner.values.plan import Plan


def test_a_plan_that_was_looked_for_leaves_promised_evenings_as_they_are(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    book = small_book()
    calendar = BenchCalendar(book.bench_time)
    first = calendar.next_stretch(NOW)
    assert first is not None
    second = calendar.next_stretch(first.interval.end)
    assert second is not None
    planned = planning.plan(book, NOW, promised=(second.interval,))
    assert planned.promised == (second.interval,)
    other = replace(planned.plan, placements=planned.plan.placements[:-1])
    asked: list[Sequence[Firm]] = []

    def choose(
        _book: Book, _calendar: BenchCalendar, present: Plan, _others: object, firm: Sequence[Firm]
    ) -> StayingChoice:
        asked.append(firm)
        return StayingChoice(present, other)

    monkeypatch.setattr(looking, "improvements", lambda *_: [SimpleNamespace(plan=other)])
    monkeypatch.setattr(looking, "choose", choose)
    found = looking.looked_into(planned, book, 1, lambda _line: None, near=True)
    assert [firm.time for firm in asked[0]] == [first.interval, second.interval]
    assert found.plan is planned.plan
    assert found.offer is other
