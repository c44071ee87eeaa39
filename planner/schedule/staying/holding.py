"""Laying a plan again, stretch by stretch, every pass where it was if the rules still allow it.

What cannot hold waits, and takes the first room that is left over: between
what stays, or after it.  Nothing that can stay makes way.
"""

from __future__ import annotations

from collections import defaultdict
from dataclasses import dataclass, field, replace
from heapq import heapify, heappop, heappush

from planner.bench import Stretch
from planner.schedule.fit import Fit, fit_in
from planner.schedule.optimise.stretch_sequencing import enter, sequence, what_fits
from planner.schedule.partial_schedule import PartialSchedule
from planner.schedule.placing import clean, place, put_away
from planner.schedule.problem import Problem
from planner.schedule.staying.kept import Cleaning, KeptPiece, KeptPlan
from planner.values.moment import Interval

LOOKS = 8  # gaps of one stretch are tried for no more passes
EMPTY_STRETCHES = 60  # left unused one after another before what waits is left to the rules
NEVER = 10**12


@dataclass
class Holding:
    """Lays what is kept; ``pull`` lets work come forward into room that nothing else takes.

    ``firm`` are stretches, by their starts, that nothing is moved into or out
    of unless it must.
    """

    problem: Problem
    kept: KeptPlan
    pull: bool = False
    firm: frozenset[int] = frozenset()
    _open: set[int] = field(default_factory=set, init=False)  # whose forerunners are all done
    _by_hands: list[tuple[int, int]] = field(default_factory=list, init=False)

    def run(self, facts: PartialSchedule) -> PartialSchedule:
        """Return the table with all that found a place by itself."""
        calendar, table = self.problem.calendar, facts.clone()
        events = self._by_stretch(table.time)
        starts = sorted(events)
        empty = 0
        self._by_hands = sorted((one.pass_.hands, one.index) for one in self.problem.activities)
        self._open = {
            activity.index
            for activity in self.problem.activities
            if activity.index not in table.end and self._follows(table, activity.index)
        }
        while len(table.end) < len(self.problem.activities) and empty < EMPTY_STRETCHES:
            stretch = calendar.next_stretch(table.time)
            if stretch is None:
                break
            ahead = [at for at in starts if at >= stretch.interval.start]
            before = len(table.placements) + len(table.left)
            table = self._stretch(table, stretch, events.get(stretch.interval.start, []))
            progress = len(table.placements) + len(table.left) > before
            empty = 0 if progress or len(ahead) > 1 else empty + 1
        return table

    def _by_stretch(self, time: int) -> dict[int, list[KeptPiece | Cleaning]]:
        """Return the events of each stretch of today's bench time."""
        found: dict[int, list[KeptPiece | Cleaning]] = defaultdict(list)
        for event in self.kept.events:
            stretch = self.problem.calendar.stretch_at(event.begin)
            if stretch is not None and stretch.interval.end > time:
                found[stretch.interval.start].append(event)
        return found

    def _stretch(
        self, table: PartialSchedule, stretch: Stretch, events: list[KeptPiece | Cleaning]
    ) -> PartialSchedule:
        here = enter(table, stretch)
        done, failed = self._as_held(here, stretch, events)
        if failed or not self._closed(done, stretch):
            done = self._mended(here, stretch, events, done, failed)
        done = self._filled(here, done, stretch, events)
        put_away(done)
        done.time = max(done.time, stretch.interval.end)
        return done

    # -- what was there -----------------------------------------------------------------------

    def _as_held(
        self, here: PartialSchedule, stretch: Stretch, events: list[KeptPiece | Cleaning]
    ) -> tuple[PartialSchedule, list[int]]:
        """Return the table with a stretch done as it was, and what of it could not be."""
        table, failed = here.clone(), []
        last = max(
            (at for at, event in enumerate(events) if isinstance(event, KeptPiece)), default=-1
        )
        for at, event in enumerate(events):
            if isinstance(event, Cleaning):
                if at < last:
                    _clean_as_before(table, event)
            elif event.activity not in table.end and not self._lay(table, stretch, event):
                failed.append(event.activity)
        return table, list(dict.fromkeys(failed))

    def _lay(self, table: PartialSchedule, stretch: Stretch, event: KeptPiece) -> bool:
        """Do a piece no earlier than before, or as soon as it can be; tell whether that went."""
        fit = self._fit(table, stretch, event.activity, max(table.time, event.begin))
        if fit is None and event.begin > table.time:
            fit = self._fit(table, stretch, event.activity, table.time)
        if fit is None:
            return False
        minutes = event.interval.minutes
        if not event.last and fit.end - fit.start > minutes and not self._alone(event.activity):
            end = fit.start + minutes
            fit = replace(fit, end=end, free=end, last=False)
        elif not fit.last and event.last:
            return False
        place(table, fit)
        return True

    def _fit(self, table: PartialSchedule, stretch: Stretch, index: int, time: int) -> Fit | None:
        if table.held_up(index) or self.problem.activities[index].blocked:
            return None
        if not self._follows(table, index):
            return None
        return fit_in(table, index, stretch, time)

    def _alone(self, index: int) -> bool:
        return self.problem.activities[index].pass_.alone > 0

    def _mended(
        self,
        here: PartialSchedule,
        stretch: Stretch,
        events: list[KeptPiece | Cleaning],
        done: PartialSchedule,
        failed: list[int],
    ) -> PartialSchedule:
        """Return a stretch with as much of what was in it as it can hold, in any order."""
        first = self._put_first(here, stretch, events, failed)
        if first is not None:
            return first
        inside = self._could(
            here, [event.activity for event in events if isinstance(event, KeptPiece)]
        )
        if any(index in here.left or index in done.left for index in inside):
            return done  # work in pieces goes on as it can
        tails = self.problem.tails
        found = sequence(here, stretch, inside, tails) if inside else None
        if found is not None and self._closed(found, stretch):
            return found
        urgency = sorted(inside, key=lambda i: (-tails[i], self.kept.order[i]))
        most = what_fits(here, stretch, urgency, set(inside))
        sound = self._closed(done, stretch)
        if sound and len(done.placements) >= len(most.placements):
            return done
        return most

    def _put_first(
        self,
        here: PartialSchedule,
        stretch: Stretch,
        events: list[KeptPiece | Cleaning],
        failed: list[int],
    ) -> PartialSchedule | None:
        """Return a stretch that begins with what its work waits for; None if not all fits then.

        What was put off keeps its place in the order: before the work that needs it.
        """
        if stretch.interval.start in self.firm:
            return None
        put_off = sorted(self._put_off(here, failed), key=lambda i: self.kept.order.get(i, NEVER))
        if not put_off:
            return None
        start, activities = here.time, self.problem.activities
        lead = [
            KeptPiece(start, i, Interval(start, start + activities[i].pass_.minutes), True)
            for i in put_off
        ]
        table, left = self._as_held(here, stretch, [*lead, *events])
        return None if left or not self._closed(table, stretch) else table

    def _put_off(self, here: PartialSchedule, failed: list[int]) -> set[int]:
        """Return what passes wait for that should have been done before this stretch."""
        found: set[int] = set()
        ask = list(failed)
        while ask:
            for index in self.problem.activities[ask.pop()].before:
                late = self.kept.order.get(index, NEVER) < here.time
                if late and index not in here.end and index not in found:
                    found.add(index)
                    ask.append(index)
        return found

    def _closed(self, table: PartialSchedule, stretch: Stretch) -> bool:
        """Tell whether no closing runs out before the next stretch, but for what has no place."""
        after = self.problem.calendar.next_stretch(stretch.interval.end)
        begin = after.interval.start if after else 0
        awaited = table.awaited - self.kept.lost
        return all(table.deadline(index) > begin for index in awaited)

    def _could(self, here: PartialSchedule, indices: list[int]) -> list[int]:
        """Return those of some passes whose forerunners are done or among them."""
        inside: list[int] = []
        for index in indices:
            activity = self.problem.activities[index]
            known = all(index in here.end or index in inside for index in activity.before)
            if known and not activity.blocked and index not in inside and index not in here.end:
                inside.append(index)
        return inside

    # -- what waits ---------------------------------------------------------------------------

    def _opened(self, here: PartialSchedule, done: PartialSchedule) -> list[int]:
        """Return what has lost the last of its forerunners since a stretch began."""
        ended = [*done.end][len(here.end) :]
        found = {after for index in ended for after in self.problem.after[index]}
        fresh = [i for i in found if i not in self._open and self._follows(done, i)]
        self._open.update(fresh)
        self._open.difference_update(ended)
        return fresh

    def _follows(self, table: PartialSchedule, index: int) -> bool:
        """Tell whether all that goes before a pass is done."""
        return all(before in table.end for before in self.problem.activities[index].before)

    def _turn(self, index: int, stretch: Stretch) -> tuple[int, int, int] | None:
        """Return when a pass is to be tried for room that is left over, if it may take that."""
        pieces = self.kept.pieces.get(index)
        if self.problem.activities[index].blocked:
            return None
        if not self.pull and pieces is not None and pieces[0].start >= stretch.interval.end:
            return None
        own = stretch.interval.start
        if self.firm and self._firm_at(index) != own * (own in self.firm):
            return None
        return self.kept.order.get(index, NEVER), -self.problem.tails[index], index

    def _firm_at(self, index: int) -> int:
        """Return the start of the firm stretch ahead that a pass was in, or 0."""
        begun = self.kept.order.get(index)
        stretch = None if begun is None else self.problem.calendar.stretch_at(begun)
        at = stretch.interval.start if stretch else 0
        return at if at in self.firm else 0

    def _filled(
        self,
        here: PartialSchedule,
        done: PartialSchedule,
        stretch: Stretch,
        events: list[KeptPiece | Cleaning],
    ) -> PartialSchedule:
        """Return the stretch with what waits put after what stays, or between it."""
        self._opened(here, done)
        waiting = [turn for i in self._open if (turn := self._turn(i, stretch))]
        heapify(waiting)
        looked, least, stayed = 0, 0, done
        widest = -1  # not known for what is done by now
        until: dict[int, PartialSchedule] = {}
        while waiting:
            turn = heappop(waiting)
            index = turn[-1]
            if index in done.end or index in done.left or done.held_up(index):
                continue
            found = self._behind(done, stretch, index)
            if found is None and looked < LOOKS:
                widest = _widest(here, done, stretch) if widest < 0 else widest
                least = least or self._least(stayed, stretch)
                if widest >= least:
                    looked += 1
                    found = self._between(here, done, stretch, events, index, until)
            if found is not None:
                done, widest = found, -1
                fresh = (self._turn(i, stretch) for i in self._opened(here, done))
                for later in fresh:
                    if later is not None and later > turn:
                        heappush(waiting, later)
        return done

    def _least(self, table: PartialSchedule, stretch: Stretch) -> int:
        """Return the least minutes of hands of all that may yet take room that is left over."""
        for minutes, index in self._by_hands:
            open_ = index not in table.end and index not in table.left
            if open_ and self._turn(index, stretch) is not None:
                return minutes
        return NEVER

    def _ready(self, table: PartialSchedule, index: int) -> bool:
        return self._follows(table, index) and not table.held_up(index)

    def _behind(
        self, done: PartialSchedule, stretch: Stretch, index: int
    ) -> PartialSchedule | None:
        """Return the table with a pass, and all that must follow it soon, at the end."""
        least = self.problem.frame.asks[index][0]
        if max(done.time, done.floor(index)) + least > stretch.interval.end:
            return None
        fit = fit_in(done, index, stretch, done.time)
        if fit is None:
            return None
        trial = done.clone()
        place(trial, fit)
        if not fit.last:
            return trial
        return self._followed(trial, stretch, index)

    def _followed(
        self, trial: PartialSchedule, stretch: Stretch, index: int
    ) -> PartialSchedule | None:
        """Do what a closing asks for before the next stretch; None if that cannot be."""
        if self._closed(trial, stretch):
            return trial
        for after in self._soon(index):
            if after in trial.end or not self._ready(trial, after):
                continue
            fit = fit_in(trial, after, stretch, trial.time)
            if fit is None or not fit.last:
                return None
            place(trial, fit)
        return trial if self._closed(trial, stretch) else None

    def _soon(self, index: int) -> list[int]:
        problem = self.problem
        soon = [problem.ends[number][1] for number in problem.closing_from.get(index, ())]
        return [*soon, *(other for other in problem.activities[index].together if other != index)]

    def _between(
        self,
        here: PartialSchedule,
        done: PartialSchedule,
        stretch: Stretch,
        events: list[KeptPiece | Cleaning],
        index: int,
        until: dict[int, PartialSchedule],
    ) -> PartialSchedule | None:
        """Return the stretch with a pass put where hands rest, and the rest at its minutes.

        ``until`` keeps the stretch as it is before each event, for others to be put there.
        """
        before = {
            event.activity: done.start.get(event.activity)
            for event in events
            if isinstance(event, KeptPiece)
        }
        fresh = [i for i in done.start if i not in here.start and i not in before]
        if fresh or done.left:
            return None  # gaps are looked at once, before anything else came
        hands = self.problem.activities[index].pass_.hands
        for at, event in enumerate(events):
            if not isinstance(event, KeptPiece):
                continue
            if at not in until:
                until[at] = self._as_held(here, stretch, events[:at])[0]
            table = until[at]
            if table.time + hands > event.begin:
                continue
            fit = self._fit(table, stretch, index, table.time)
            if fit is None or not fit.last or fit.free > event.begin:
                continue
            table = table.clone()
            place(table, fit)
            if self._soon(index) and not self._closed(table, stretch):
                continue
            rest, failed = self._as_held(table, stretch, events[at:])
            same = all(rest.start.get(i) == start for i, start in before.items())
            if not failed and same and self._closed(rest, stretch):
                return rest
        return None


def _clean_as_before(table: PartialSchedule, event: Cleaning) -> None:
    """Empty a cup when it was emptied before, or as soon as can be, if anything is in it."""
    cup = table.cups.get(event.airbrush)
    if cup is not None and cup.coating:
        clean(table, event.airbrush, max(table.time, event.begin))


def _widest(here: PartialSchedule, done: PartialSchedule, stretch: Stretch) -> int:
    """Return for how long hands rest at most between two pieces of work [min]."""
    since = here.time
    busy = [
        *(work.interval for work in done.bench if work.interval.end > since),
        *(p for placement in done.placements for p in placement.pieces if p.end > since),
    ]
    busy = sorted(one for one in busy if one.start < stretch.interval.end)
    widest, free = 0, max(since, stretch.interval.start)
    for one in busy:
        widest = max(widest, one.start - free)
        free = max(free, one.end)
    return widest
