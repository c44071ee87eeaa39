"""A problem seen by stretches of bench time: which pass can be done in which.

Everything here is optimistic: a pass is never kept from a stretch in which a
sound plan could have it.  So a bound that follows from it is a bound.
"""

from __future__ import annotations

from bisect import bisect_left, bisect_right
from collections import defaultdict
from dataclasses import dataclass
from functools import cached_property
from itertools import accumulate

from planner.bench import AIRED, Stretch
from planner.cure import Band
from planner.schedule.partial_schedule import FOREVER, PartialSchedule
from planner.schedule.problem import Problem
from planner.values.coating import Window
from planner.values.moment import Interval

NEVER = 10**9
"""Stretch number of what can never be."""


@dataclass(frozen=True, slots=True)
class BoardSlot:
    """Hours of one stretch in which one kind of pass may begin and end."""

    start: int
    end: int


class Board:
    """The passes that are not facts, over the stretches from ``now`` on.

    Parameters
    ----------
    last
        The stretches end with the one that begins at or before this minute.

    Attributes
    ----------
    stretches
        In order; the first ends after the work under way.
    free
        Activities to be placed, in an order that keeps precedence.
    head
        Least start of each free activity [min], NEVER where there is none.
    shortest_dry
        Least minutes that a film takes to be handled, by what it is and when it is laid
        at the earliest and at the latest, as far as it was asked for.
    held, washing
        What cups hold when the first stretch begins or goes on, and the
        minutes that cleaning them takes in it.
    """

    def __init__(self, problem: Problem, facts: PartialSchedule, last: int) -> None:
        self.problem = problem
        self.facts = facts
        calendar = problem.calendar
        self.stretches: tuple[Stretch, ...] = tuple(
            stretch
            for stretch in calendar.stretches(facts.time, last + 1)
            if stretch.interval.end > facts.time
        )
        self.starts = [max(stretch.interval.start, facts.time) for stretch in self.stretches]
        self.ends = [stretch.interval.end for stretch in self.stretches]
        loaded = {name: cup.coating for name, cup in facts.cups.items() if cup.coating}
        self.held = frozenset(loaded.values())
        self.washing = sum(problem.airbrushes[name].clean_minutes for name in loaded)
        done = set(facts.end)
        self.free = [i for i in reversed(problem.frame.backwards) if i not in done]
        self.shortest_dry: dict[tuple[str, float, str, int, int], int] = {}
        self._slots: dict[tuple[object, ...], list[list[BoardSlot]]] = {}
        self._slots_of: dict[int, list[list[BoardSlot]]] = {}
        self._least = {index: self._least_of(index) for index in self.free}
        self._opens: dict[tuple[int, int], int] = {}
        self._lags: dict[tuple[int, Window, int], int] = {}
        self.head: dict[int, int] = {}
        for index in self.free:
            self.head[index] = self._head(index)

    def slots(self, index: int) -> list[list[BoardSlot]]:
        """Return, per stretch, the hours in which an activity may be worked on."""
        found = self._slots_of.get(index)
        if found is None:
            found = self._slots_of[index] = self._slots_by_kind(index)
        return found

    def _slots_by_kind(self, index: int) -> list[list[BoardSlot]]:
        activity = self.problem.activities[index]
        sprayed = bool(activity.pass_.load)
        key = (
            sprayed,
            activity.loud,
            activity.smells,
            activity.light,
            activity.pass_.step.helper,
            activity.allowed,
            activity.pass_.hands if activity.light else 0,
            activity.pass_.alone if activity.loud or activity.smells else 0,
            self.problem.fit_airs[index],
        )
        found = self._slots.get(key)
        if found is None:
            found = [self._slots_in(index, number) for number in range(len(self.stretches))]
            self._slots[key] = found
        return found

    def _slots_in(self, index: int, number: int) -> list[BoardSlot]:
        problem, activity = self.problem, self.problem.activities[index]
        stretch = self.stretches[number]
        if activity.pass_.step.helper and stretch.people < 2:
            return []
        pieces = [(self.starts[number], self.ends[number])]
        alone = activity.pass_.alone  # after hands it is still to be heard and smelt
        if activity.loud:
            for quiet in problem.calendar.quiet(*pieces[0], alone):
                pieces = _without(pieces, quiet)
        if activity.pass_.load:
            gear = problem.book.gear.airbrushes
            lead = min(airbrush.load_minutes for airbrush in gear)
            if number == 0 and self.held:
                lead = 0
            after = min(airbrush.clean_minutes for airbrush in gear)
            pieces = [(start + lead, end - after) for start, end in pieces]
        if activity.smells:
            whole = (self.starts[number], self.ends[number])
            for quiet in problem.calendar.quiet(*whole, alone + AIRED):
                pieces = _without(pieces, quiet)
        if activity.light:
            hours = problem.calendar.daylight(*pieces[0]) if pieces else ()
            if hours is not None:
                pieces = [
                    (max(start, hour.start), min(end, hour.end))
                    for start, end in pieces
                    for hour in hours
                ]
        for air in problem.fit_airs[index]:
            pieces = [fair for piece in pieces for fair in air.pieces(*piece)]
        if activity.allowed is not None:
            pieces = [
                (max(start, interval.start), min(end, interval.end))
                for start, end in pieces
                for interval in activity.allowed
            ]
        return [BoardSlot(start, end) for start, end in sorted(pieces) if start < end]

    def least(self, index: int) -> int:
        """Return the least minutes that a free activity needs hands in one go."""
        return self._least[index]

    def lasts(self, index: int) -> int:
        """Return the least minutes from the start of a free activity to its end."""
        return self._least[index] + self.problem.activities[index].pass_.alone

    def _least_of(self, index: int) -> int:
        activity = self.problem.activities[index]
        split = activity.pass_.step.least_piece
        left = self.facts.left.get(index, activity.pass_.hands)
        return min(left, split) if split else left

    def first_start(self, index: int, minute: int) -> tuple[int, int] | None:
        """Return (stretch, start) of the earliest start ≥ ``minute`` by the calendar alone."""
        if minute >= FOREVER:
            return None
        slots, least = self.slots(index), self.least(index)
        for number in range(bisect_right(self.ends, minute), len(self.stretches)):
            for slot in slots[number]:
                start = max(slot.start, minute)
                if start + least <= slot.end:
                    return number, start
        return None

    def last_start(self, index: int, number: int) -> int | None:
        """Return the latest start of an activity in a stretch, or None."""
        least = self._least[index]
        best: int | None = None
        for slot in self.slots(index)[number]:
            start = slot.end - least
            if start >= slot.start and (best is None or start > best):
                best = start
        return best

    def earliest_after(self, gate: int, end: int) -> int:
        """Return the first start that a gate may leave to its later pass, FOREVER if none.

        ``end`` is the end of the earlier pass.  The nominal opening counts
        where it is before the late one and the window might be empty between
        the bands (definition 9).
        """
        key = (gate, end)
        found = self._opens.get(key)
        if found is None:
            found = self._opens[key] = min(
                (self.opens(gate, window, end) for window in self.problem.gates[gate].windows),
                default=end,
            )
        return found

    def opens(self, gate: int, window: Window, end: int) -> int:
        """Return when a window surely may open after an earlier pass that ends at ``end``."""
        mark = window.opens
        if mark is None:
            return end
        if self.problem.gates[gate].place == "" or not mark.of_film:
            return end + (mark.minutes or 0) + window.preparation_minutes
        film = self.problem.film_of(gate, end)
        surely = window.closes is None and not self.problem.gates[gate].likely
        band = Band.LATE if surely else Band.NOMINAL
        opens = self.problem.cure.opens_at(film, mark, band)
        return FOREVER if opens is None else opens + window.preparation_minutes

    def shortest_lag(self, gate: int, window: Window, number: int) -> int:
        """Return the least minutes that a film laid within a stretch keeps a window shut."""
        key = (self.problem.frame.kinds[1][gate], window, number)
        found = self._lags.get(key)
        if found is None:
            laid = range(self.starts[number], self.ends[number] + 1)
            found = max(0, min(self.opens(gate, window, at) - at for at in laid))
            self._lags[key] = found
        return found

    def closes(self, gate: int, window: Window, start: int) -> int:
        """Return when a window surely has closed after an earlier pass begun at ``start``."""
        mark = window.closes
        if mark is None or self.problem.may_melt(gate):
            return FOREVER
        if self.problem.gates[gate].place == "" or not mark.of_film:
            return start + (mark.minutes or 0)
        film = self.problem.film_of(gate, start)
        closes = self.problem.cure.closes_at(film, mark, start, Band.NOMINAL)
        return FOREVER if closes is None else closes

    def _head(self, index: int) -> int:
        activity = self.problem.activities[index]
        start = self.facts.time
        for number in activity.gates:
            start = max(start, self._after(number))
        for before in activity.before:
            start = max(start, self.end_of(before))
        if len(activity.before) > 1 and start < FOREVER:
            start = max(start, self._after_all(index))
        found = self.first_start(index, start)
        return NEVER if found is None or activity.blocked else found[1]

    def _after_all(self, index: int) -> int:
        """Return when the same hands can have done all that comes before an activity.

        They take it up in the order in which it can begin, and may be called off: so nobody
        is ready sooner.  Along a chain that says no more than the chain itself.
        """
        bits = self.problem.frame.forerunners[index]
        ahead = sorted((self.head[i], i) for i in self.free if bits >> i & 1)
        done = 0  # minutes of bench time from the first stretch on
        for head, i in ahead:
            left = self.facts.left.get(i, self.problem.activities[i].pass_.hands)
            done = max(done, self._bench_minutes(head)) + left
        return self._minute_after(done)

    @cached_property
    def _before(self) -> list[int]:
        """Of each stretch, the minutes of bench time before it, and of all of them last."""
        lengths = (end - start for start, end in zip(self.starts, self.ends, strict=True))
        return [0, *accumulate(lengths)]

    def _bench_minutes(self, minute: int) -> int:
        """Return how many minutes of bench time there are before a minute."""
        number = self.number_at(minute)
        if number >= len(self.starts):
            return self._before[-1]
        return self._before[number] + max(0, minute - self.starts[number])

    def _minute_after(self, done: int) -> int:
        """Return when so many minutes of bench time are over, FOREVER if they never are."""
        number = bisect_left(self._before, done) - 1
        if number < 0:
            return self.facts.time
        if number >= len(self.starts):
            return FOREVER
        return self.starts[number] + done - self._before[number]

    def end_of(self, index: int) -> int:
        """Return the least end of an activity, or its end as a fact."""
        if index in self.facts.end:
            return self.facts.end[index]
        head = self.head[index]
        return FOREVER if head >= NEVER else head + self.lasts(index)

    def _after(self, gate: int) -> int:
        before = self.problem.ends[gate][0]
        if before in self.facts.end:
            windows = self.facts.windows(gate)
            return windows[0].opens if windows else FOREVER
        end = self.end_of(before)
        return FOREVER if end >= FOREVER else self.earliest_after(gate, end)

    def last_before(self, minute: int) -> int | None:
        """Return the number of the last stretch that begins before a minute, -1 for none.

        None where a stretch that the board does not reach begins before it, too.
        """
        after = self.problem.calendar.next_stretch(self.ends[-1] if self.ends else self.facts.time)
        if after is not None and after.interval.start < minute:
            return None
        return bisect_left(self.starts, minute) - 1

    def number_at(self, minute: int) -> int:
        """Return the number of the stretch that holds a minute, or of the next."""
        return bisect_right(self.ends, minute)


def _without(pieces: list[tuple[int, int]], hole: Interval) -> list[tuple[int, int]]:
    cut = []
    for start, end in pieces:
        cut += [(start, min(end, hole.start)), (max(start, hole.end), end)]
    return [(start, end) for start, end in cut if start < end]


def grouped(problem: Problem, indices: list[int]) -> dict[tuple[str, str], list[int]]:
    """Return activities by (project, model)."""
    found: dict[tuple[str, str], list[int]] = defaultdict(list)
    for index in indices:
        key = problem.activities[index].pass_.key
        found[key.project, key.model].append(index)
    return found
