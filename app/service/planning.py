"""Planning: the heuristic's plan, shown only if the judge accepts it."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace

from app.service.planning_errors import Stopped, Unsound
from planner.bench import BenchCalendar, Stretch, calendar_of
from planner.cure import Cure, cure_of
from planner.schedule.drying_locations import chosen_in, settled
from planner.schedule.greedy import plan_book
from planner.schedule.judge import Premises, Verdict, judge
from planner.schedule.priority_rules import RULES, Rule
from planner.schedule.staying.policy import StayingChoice, choose, firm_stretches, firm_times, gains
from planner.schedule.staying.repair import come_forward, repaired
from planner.values.book import Book
from planner.values.moment import Interval
from planner.values.plan import Plan
from planner.values.plausible_dates import PLAN_REACH, in_reach
from storage.exchange import digest


class _Watched(BenchCalendar):
    """A calendar that whoever searches looks into again and again, and so can be stopped at.

    Beyond ``last`` there is no bench time: the judge takes nothing that lies there.
    """

    def __init__(self, calendar: BenchCalendar, last: int, stop: Callable[[], bool] | None) -> None:
        self.share(calendar)
        self._last = last
        self._stop = stop

    def next_stretch(self, minute: int) -> Stretch | None:
        """Return the first stretch that ends after ``minute``; raise `Stopped` if told so."""
        if self._stop is not None and self._stop():
            raise Stopped
        found = super().next_stretch(minute)
        return None if found is None or found.interval.end > self._last else found


@dataclass(frozen=True)
class Planned:
    """A plan that the judge accepted, the judge's word on it, and the tables it was read from.

    ``book`` is the one planned, films drying where the plan has chosen;
    ``offer`` another plan that would gain something, but moves what is not
    moved without a person's word; ``promised`` the evenings that somebody was
    told of.
    """

    plan: Plan
    verdict: Verdict
    cure: Cure
    calendar: BenchCalendar
    book: Book
    offer: Plan | None = None
    promised: tuple[Interval, ...] = ()


def plan(
    book: Book,
    now: int,
    *,
    last: Plan | None = None,
    quick: bool = False,
    promised: Sequence[Interval] = (),
    shown: bool = False,
    stop: Callable[[], bool] | None = None,
) -> Planned:
    """Plan every active project of a book from ``now`` on.

    Parameters
    ----------
    last
        The plan before it: it is repaired, and other plans take its place
        only as far as definition 27a lets them.
    quick
        Only repair the plan before it or, if there is none, try one rule only:
        sound, found in a fraction of the time, and often a little dearer; for
        showing something while the rest is tried.  It names no input (its
        digest is empty).
    promised
        Evenings that somebody was told of, on paper or in a calendar.
    shown
        ``last`` is what was shown for this very book: where all of it still
        holds, nothing else is tried.
    stop
        Asked all the time while a plan is searched, from this very thread.

    Raises
    ------
    Stopped
        As soon as ``stop`` says so.
    Refused
        If something of the book lies so far ahead that no plan reaches it.
    Unsound
        If the judge refuses what the heuristic made.
    """
    in_reach(book, now)
    # Both read the same tables of rates and bench time; each computes its own times.
    whole = calendar_of(book.bench_time)
    premises = Premises(book, cure_of(book.room, whole.zone), whole)
    calendar = _Watched(whole, now + PLAN_REACH, stop)
    asked = _Asked(book, now, last, premises, calendar, tuple(promised))
    near = _near_to_last(asked, quick=quick, shown=shown) if last is not None else None
    choice, verdict = near or (StayingChoice(_first(asked, quick=quick)), None)
    made = choice.taken if quick else replace(choice.taken, digest=digest(book))
    verdict = verdict or judge(book, made, premises=premises)
    if not verdict.accepted:
        raise Unsound(verdict)
    there = settled(book, chosen_in(book, made))
    return Planned(
        made, verdict, premises.cure, premises.calendar, there, choice.offered, asked.promised
    )


@dataclass(frozen=True)
class _Asked:
    book: Book
    now: int
    last: Plan | None
    premises: Premises
    calendar: BenchCalendar
    promised: tuple[Interval, ...]


def _by_rules(asked: _Asked, rules: tuple[Rule, ...]) -> Plan:
    cure, calendar = asked.premises.cure, asked.calendar
    return plan_book(
        asked.book, asked.now, cure=cure, calendar=calendar, rules=rules, last=asked.last
    )


def _first(asked: _Asked, *, quick: bool) -> Plan:
    """Return a plan where none was before: of the rules, and what comes forward in theirs."""
    found = _by_rules(asked, RULES[:1] if quick else RULES)
    if quick:
        return found
    forward = come_forward(asked.book, found, premises=asked.premises, calendar=asked.calendar)
    return found if forward is None else replace(forward, cost=replace(forward.cost, moved=0))


def _near_to_last(
    asked: _Asked, *, quick: bool, shown: bool
) -> tuple[StayingChoice, Verdict | None] | None:
    """Repair the plan before, and hold others against it; None if there is nothing to repair.

    What the judge said of the plan that is taken comes with it, if that is known.
    """
    book, last, premises, calendar = asked.book, asked.last, asked.premises, asked.calendar
    if last is None or not (last.placements or last.unplaced):
        return None
    firm = firm_stretches(calendar, asked.promised)
    found = repaired(book, last, asked.now, premises=premises, calendar=calendar, firm=firm)
    present, verdict = found or (None, None)
    if present is None or present.cost.unplaced > last.cost.unplaced:
        # No repair leaves out what the rules alone could place.
        ruled = _by_rules(asked, RULES[:1] if quick else RULES)
        if present is None or ruled.cost.unplaced < present.cost.unplaced:
            said = judge(book, ruled, premises=premises)
            present, verdict = (ruled, said) if said.accepted else (present, verdict)
    if present is None:
        return None
    if quick or (shown and (present.placements, present.bench) == (last.placements, last.bench)):
        return StayingChoice(present), verdict
    forward = come_forward(book, present, premises=premises, calendar=calendar, firm=firm)
    ruled = _by_rules(asked, RULES)
    better = gains(book, calendar, present, ruled)
    others = [
        *([forward] if forward else []),
        *([ruled] if better and judge(book, ruled, premises=premises).accepted else []),
    ]
    times = firm_times(calendar, asked.now, asked.promised)
    choice = choose(book, calendar, present, others, times)
    return choice, verdict if choice.taken is present else None
