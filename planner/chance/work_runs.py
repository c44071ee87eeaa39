"""What work does in many runs: hands busy, films laid, places taken, mishaps."""

from __future__ import annotations

import numpy as np

from planner.chance.assumptions import assumed
from planner.chance.cups import Cups
from planner.chance.draws import Flags, Minutes, Runs
from planner.chance.run_state import RunState
from planner.chance.script import WorkItem
from planner.chance.start_runs import Begun
from planner.evening.missed_closings import SCUFF_MINUTES

LEAST_LEFT = 5  # definition 23 [min]


class WorkRuns:
    """Records in many runs what was done."""

    def __init__(self, state: RunState, cups: Cups) -> None:
        self.state, self.cups = state, cups

    def do(self, item: WorkItem, begun: Begun, some: Flags) -> None:
        """Record that an item was done in some of the runs in which it could begin."""
        state, index = self.state, item.activity
        runs, at, floor, cause = (
            one[some] for one in (begun.runs, begun.at, begun.floor, begun.cause)
        )
        activity = state.script.activities[index]
        end = self._ends(item, runs, at, begun.left[some])
        by_film = self._held_by_film(item, runs, at, floor) & (cause >= 0)
        self.cups.used(state.script, index, at, end, runs)
        if item.first:
            state.start[index][runs] = at
            state.cause[index][runs] = np.where(by_film, cause, state.latest[runs])
            state.by_film[index][runs] = by_film
        state.cursor[runs] = end
        state.latest[runs] = index
        if activity.pass_.alone and item.last:
            end = self._goes_on_alone(item, runs, end)
        if not item.last:
            state.done[item.number][runs] = True
            state.done_at[item.number][runs] = end
            return
        share = state.spreads.redone_share(activity.pass_.step.stage)
        wrong = state.draws.uniform("mishap", *activity.pass_.key)[runs] < share
        wrong &= ~state.redone[index][runs]
        if not wrong.all():
            self._finish(item, runs[~wrong], end[~wrong])
        if wrong.any():
            self._over_again(item, runs[wrong], end[wrong])

    def _ends(self, item: WorkItem, runs: Runs, at: Minutes, minutes: Minutes) -> Minutes:
        """Return when an item ends; what is left after half an hour is done first next time."""
        hours, sessions = self.state.hours, self.state.at[runs]
        limit = hours.close[sessions] + int(assumed("finishes"))
        end = at + minutes
        over = end > np.maximum(limit, at + item.minutes)
        rest = np.maximum(LEAST_LEFT, end - limit)
        return np.where(over, hours.next_begin[sessions] + rest, end)

    def _held_by_film(self, item: WorkItem, runs: Runs, at: Minutes, floor: Minutes) -> Flags:
        """Tell in which runs an item waited for a film, and not for hands."""
        hours, sessions = self.state.hours, self.state.at[runs]
        cursor = self.state.cursor[runs]
        reached = np.where(sessions > 0, hours.close[sessions - 1], 0)
        first = cursor <= hours.begin[sessions]
        return ((at > cursor) & (at <= floor)) | (first & (floor + item.minutes > reached))

    def _goes_on_alone(self, item: WorkItem, runs: Runs, end: Minutes) -> Minutes:
        """Return when work ends that goes on without hands; it takes longer as its hands do."""
        one = self.state.script.activities[item.activity].pass_
        alone = np.rint(one.alone * self.state.factor(item.activity)[runs])
        whole: Minutes = end + alone.astype(np.int64)
        for unit in self.state.script.activities[item.activity].held:
            known = self.state.alone.setdefault(unit, self.state.zeros())
            known[runs] = np.maximum(known[runs], whole)
        return whole

    def _finish(self, item: WorkItem, runs: Runs, end: Minutes) -> None:
        self.state.done[item.number][runs] = True
        self.state.done_at[item.number][runs] = end
        self.state.end[item.activity][runs] = end
        self._lay(item.activity, runs)

    def _over_again(self, item: WorkItem, runs: Runs, end: Minutes) -> None:
        """Let a pass that came out wrong be done again, once it can be touched and scuffed."""
        index = item.activity
        self.state.redone[index][runs] = True
        self.state.end[index][runs] = end  # its film dries from here
        ready = np.maximum(end, self.state.gates.dry(index, runs))
        self.state.end[index][runs] = -1
        floor = self.state.floor.setdefault(item.number, self.state.zeros())
        floor[runs] = ready
        again = np.maximum(1, np.rint(item.minutes * self.state.factor(index, again=True)))
        self.state.left[item.number][runs] = again[runs].astype(np.int64) + SCUFF_MINUTES

    def _lay(self, index: int, runs: Runs) -> None:
        """Record what films a pass left behind, and until when they take their places."""
        state, activity = self.state, self.state.script.activities[index]
        key = activity.pass_.key
        handle = np.zeros(len(runs), dtype=np.int64)
        for place, ready in state.gates.handled(index, runs).items():
            known = state.handled.setdefault((key.project, key.model, place), state.zeros())
            known[runs] = np.maximum(known[runs], ready)
            handle = np.maximum(handle, known[runs])
        if activity.pass_.unit_after is not None:
            for unit in activity.held:
                if unit in state.unit_row:
                    taken = state.units[state.unit_row[unit]]
                    handle = np.maximum(handle, taken[runs])
                    taken[runs] = 0
        for unit, _ in activity.wet:
            taken = state.units[state.unit_row[unit]]
            taken[runs] = np.maximum(taken[runs], handle)
            known_until = state.units_until.get(unit, 0)
            state.units_until[unit] = max(known_until, int(handle.max()))

    def let_dry(self) -> None:
        """Tell when each model is dry in the end."""
        state = self.state
        for activity in state.script.activities:
            key, runs = activity.pass_.key, np.flatnonzero(state.end[activity.index] >= 0)
            if not runs.size:
                continue
            whole = state.dry.setdefault((key.project, key.model), state.zeros())
            whole[runs] = np.maximum(whole[runs], state.gates.dry(activity.index, runs))

    def take_facts(self) -> None:
        """Take what was logged; work under way ends sooner or later than it should."""
        every = np.arange(self.state.draws.runs)
        now = self.state.script.plan.now
        for index, (start, end) in sorted(self.state.script.facts.items(), key=lambda one: one[1]):
            self.state.start[index] = start
            self.state.end[index] = end
            if index in self.state.script.under_way:
                left = np.maximum(LEAST_LEFT, np.rint((end - now) * self.state.factor(index)))
                self.state.end[index] = now + left.astype(np.int64)
                if not self.state.script.activities[index].pass_.alone:
                    np.maximum(self.state.cursor, self.state.end[index], out=self.state.cursor)
            self._lay(index, every)
