"""When a piece of work can begin in many runs: films, fingers, windows, hours, drying places."""

from __future__ import annotations

from typing import NamedTuple

import numpy as np

from planner.chance.cups import Cups
from planner.chance.draws import Flags, Minutes, Runs
from planner.chance.run_state import RunState
from planner.chance.script import WorkItem
from planner.evening.missed_closings import LATE_TIMES, LATE_WORDS, SCUFF_MINUTES
from planner.schedule.partial_schedule import FOREVER
from planner.values.step import Bound


class Begun(NamedTuple):
    """How a piece of work would begin, by run.

    Attributes
    ----------
    runs
        The runs that it is about.
    fits
        Whether it fits into the session that its run has come to.
    at, hands
        When it begins, and when its preparation or set-up does.
    left
        The minutes that it really takes.
    floor, cause
        When films let it begin, and the pass whose film was the last.
    """

    runs: Runs
    fits: Flags
    at: Minutes
    hands: Minutes
    left: Minutes
    floor: Minutes
    cause: Runs


class StartRuns:
    """Asks in many runs when work can begin."""

    def __init__(self, state: RunState, cups: Cups) -> None:
        self.state, self.cups = state, cups
        self._opened: dict[int, tuple[Minutes, Runs]] = {}

    def begun(self, item: WorkItem, runs: Runs) -> Begun | None:
        """Return how an item would begin in runs in which what it waits for is done, or None."""
        state, index = self.state, item.activity
        floor, cause = self._floor(item, runs)
        soon = floor < state.hours.last_end(index, state.at[runs])
        if not soon.all():
            runs, floor, cause = runs[soon], floor[soon], cause[soon]
            if not runs.size:
                return None
        slots = state.hours.slots(index, state.at[runs])
        lead, tail = self.cups.around(state.script, index, state.cursor, runs)
        planned = np.full(len(runs), item.minutes, dtype=np.int64)
        left = state.minutes_left(item, runs)
        if item.first:
            floor, prepare, extra = self._choose(item, runs, floor, lead)
            lead, left, planned = lead + prepare, left + extra, planned + extra
        if item.last:
            planned += state.redone[index][runs] * SCUFF_MINUTES
        at = self._start(item, runs, slots, floor, lead, (planned, tail))
        fits = at < FOREVER
        fits &= self._leaves_time(item, runs, at, planned, tail)
        return Begun(runs, fits, at, at - lead, left, floor, cause)

    def _floor(self, item: WorkItem, runs: Runs) -> tuple[Minutes, Runs]:
        """Return when films and fingers let an item begin, and the pass that it waits for."""
        script, index = self.state.script, item.activity
        activity = script.activities[index]
        floor = np.zeros(len(runs), dtype=np.int64)
        cause = np.full(len(runs), -1, dtype=np.intp)
        extra = self.state.floor.get(item.number)
        if extra is not None:
            floor = np.maximum(floor, extra[runs])
        if not item.first:
            return floor, cause
        opens, cause = self._opens(item, runs)
        floor = np.maximum(floor, opens)
        for number in activity.leaving:
            before, after = script.problem.ends[number]
            stay = (self.state.end[before][runs] >= 0) & (self.state.end[after][runs] < 0)
            if stay.any():
                stays = runs[stay]
                floor[stay] = np.maximum(floor[stay], self.state.gates.opens_once(number, stays))
        for spot in activity.fingers:
            wet = self.state.handled.get(spot)
            if wet is not None:
                floor = np.maximum(floor, wet[runs])
        for before in activity.before:
            if script.activities[before].pass_.alone:
                later = self.state.end[before][runs] > floor
                cause = np.where(later, before, cause)
                floor = np.maximum(floor, self.state.end[before][runs])
        for unit in activity.held:
            alone = self.state.alone.get(unit)
            if alone is not None:
                floor = np.maximum(floor, alone[runs])
        return floor, cause

    def _opens(self, item: WorkItem, runs: Runs) -> tuple[Minutes, Runs]:
        """Return when the gates that open once have, and the pass whose film was the last."""
        known = self._opened.get(item.number)
        if known is None:
            size = self.state.draws.runs
            known = np.full(size, -1, dtype=np.int64), np.full(size, -1, dtype=np.intp)
            self._opened[item.number] = known
        opened, by = known
        fresh = runs[opened[runs] < 0]
        if fresh.size:
            floor = np.zeros(len(fresh), dtype=np.int64)
            cause = np.full(len(fresh), -1, dtype=np.intp)
            for number in self.state.script.activities[item.activity].opening:
                opens = self.state.gates.opens_once(number, fresh)
                later = opens > floor
                cause[later] = self.state.script.problem.ends[number][0]
                floor = np.maximum(floor, opens)
            opened[fresh], by[fresh] = floor, cause
        return opened[runs], by[runs]

    def _choose(
        self, item: WorkItem, runs: Runs, floor: Minutes, lead: Minutes
    ) -> tuple[Minutes, Minutes, Minutes]:
        """Return start, preparation and more minutes as the windows of gates have them.

        A closing that has gone by makes the work longer: what is wiped,
        pressed, rubbed or unmasked late takes twice as long, anything else
        is scuffed first.
        """
        problem = self.state.script.problem
        activity = problem.activities[item.activity]
        prepare = np.zeros(len(runs), dtype=np.int64)
        extra = np.zeros(len(runs), dtype=np.int64)
        for number in activity.choosing:
            floor = np.maximum(floor, self.state.cursor[runs] + lead)
            gate = problem.gates[number]
            needs = item.minutes if gate.closing is Bound.END else 1
            chosen = np.full(len(runs), FOREVER, dtype=np.int64)
            wants = np.zeros(len(runs), dtype=np.int64)
            windows = self.state.gates.windows(number, runs)
            for window in windows:
                begin = np.maximum(floor, np.maximum(window.opens, 0))
                aimed = np.maximum(floor, window.best)
                begin = np.where(aimed + needs <= window.closes, aimed, begin)
                if window.preparation:
                    begin = np.maximum(begin, np.maximum(window.opens, 0) + window.preparation)
                good = (chosen >= FOREVER) & (begin + needs <= window.closes)
                chosen = np.where(good, begin, chosen)
                wants = np.where(good, window.preparation, wants)
            missed = chosen >= FOREVER
            if missed.any():
                opens = windows[0].opens if windows else floor
                late = gate.closing is Bound.END or activity.pass_.step.stage in LATE_WORDS
                more = (LATE_TIMES - 1) * item.minutes if late else SCUFF_MINUTES
                chosen = np.where(missed, np.maximum(floor, opens), chosen)
                extra = np.where(missed, np.maximum(extra, more), extra)
            floor = np.maximum(floor, chosen)
            prepare = np.maximum(prepare, wants)
        return floor, prepare, extra

    def _start(
        self,
        item: WorkItem,
        runs: Runs,
        slots: tuple[Minutes, Minutes],
        floor: Minutes,
        lead: Minutes,
        needs: tuple[Minutes, Minutes],
    ) -> Minutes:
        """Return when an item can begin in its session; `FOREVER` where it cannot.

        ``needs`` are its planned minutes, and those of the cleaning after it.
        """
        state, (planned, tail) = self.state, needs
        activity = state.script.activities[item.activity]
        wish = np.maximum(state.cursor[runs] + lead, floor)
        if activity.wet and item.first:
            wish = self._drying_place(item.activity, runs, wish)
        close = state.hours.close[state.at[runs]]
        found = np.full(len(runs), FOREVER, dtype=np.int64)
        for begins, ends in zip(slots[0].T, slots[1].T, strict=True):
            begin = np.maximum(wish, begins + lead if activity.loud else begins)
            whole = planned + (tail if activity.loud else tail * (ends == close))
            good = (found >= FOREVER) & (begin + whole <= ends)
            found = np.where(good, begin, found)
        return found

    def _drying_place(self, index: int, runs: Runs, wish: Minutes) -> Minutes:
        """Return the first start at which the drying places are not all taken (definition 18)."""
        script = self.state.script
        activity = script.activities[index]
        stands = script.stands
        room = script.problem.places[activity.location].drying_places
        room -= sum(one for _, one in activity.wet)
        soonest = int(wish.min())  # what is free by then in every run takes no place
        others = [
            unit
            for unit, until in self.state.units_until.items()
            if until > soonest
            and script.unit_place[unit] == activity.location
            and unit not in activity.held
        ]
        if sum(stands[unit] for unit in others) <= room:
            return wish
        rows = [self.state.unit_row[unit] for unit in others]
        until = self.state.units.take(rows, axis=0).take(runs, axis=1)
        weight = np.array([stands[unit] for unit in others])
        used = weight @ (until > wish)
        full = np.flatnonzero(used > room)
        if full.size:
            wish = wish.copy()
            wish[full] = self._freed(until[:, full], weight, used[full] - room, wish[full])
        return wish

    @staticmethod
    def _freed(until: Minutes, weight: Minutes, over: Minutes, wish: Minutes) -> Minutes:
        """Return when so many drying places as are wanted have been freed."""
        order = np.argsort(until, axis=0, kind="stable")
        sorted_ = np.take_along_axis(until, order, axis=0)
        gone = np.where(sorted_ > wish, weight[order], 0).cumsum(axis=0)
        enough = (gone >= over) & (sorted_ > wish)
        first = np.argmax(enough, axis=0)
        freed: Minutes = np.take_along_axis(sorted_, first[None, :], axis=0)[0]
        return freed

    def _leaves_time(
        self, item: WorkItem, runs: Runs, at: Minutes, planned: Minutes, tail: Minutes
    ) -> Flags:
        """Tell in which runs what must follow soon, or in this session, can still follow."""
        state, index = self.state, item.activity
        script, problem = state.script, state.script.problem
        close = state.hours.close[state.at[runs]]
        fits = np.ones(len(runs), dtype=bool)
        for number in problem.closing_from.get(index, ()) if item.last else ():
            follower = problem.ends[number][1]
            waits = np.zeros(len(runs), dtype=bool)  # for more than this
            for before in problem.activities[follower].before:
                if before != index:
                    waits |= state.end[before][runs] < 0
            closes = script.least_closing(number)
            wait, takes = script.least_opening(number), problem.activities[follower].pass_
            needs = takes.minutes if problem.gates[number].closing is Bound.END else 0
            here = at + planned + wait + takes.hands + tail <= close
            after = state.hours.next_begin[state.at[runs]]
            fits &= waits | here | (at + closes >= after + needs)
        group = problem.activities[index].together
        if group and item.first:
            rest = np.zeros(len(runs), dtype=np.int64)
            begun = np.zeros(len(runs), dtype=bool)
            for other in group:
                rest += problem.activities[other].pass_.hands * (state.end[other][runs] < 0)
                begun |= state.start[other][runs] >= 0
            fits &= begun | (at + planned + rest + tail <= close)
        return fits
