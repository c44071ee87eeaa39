"""The bench in many runs: the plan kept, and what overruns put off (definition 29)."""

from __future__ import annotations

from collections.abc import Callable

import numpy as np

from planner.chance.assumptions import assumed
from planner.chance.cups import Cups
from planner.chance.draws import Draws, Minutes, Runs
from planner.chance.film_runs import Gains
from planner.chance.run_state import RunState
from planner.chance.script import Script, WorkItem
from planner.chance.spreads import Spreads
from planner.chance.start_runs import StartRuns
from planner.chance.work_runs import WorkRuns
from planner.schedule.partial_schedule import FOREVER

HOPES = FOREVER - 1  # put off until that is done which it waits for
MOST_WAITS = 2  # rounds over what was put off, at the end of a session
LOOKS = 6  # after so many pieces of work one looks back at what was put off: assumed


class BenchRuns(RunState):
    """All runs of one script; see `RunState` for what they tell."""

    def __init__(
        self, script: Script, draws: Draws, spreads: Spreads, gains: Gains | None = None
    ) -> None:
        super().__init__(script, draws, spreads, gains)
        self._cups = Cups(script.problem, draws, spreads)
        self._starts = StartRuns(self, self._cups)
        self._work = WorkRuns(self, self._cups)
        self._work.take_facts()
        self._needs = [
            {*script.activities[item.activity].before}
            | ({item.activity} if not item.first else set())
            for item in script.items
        ]
        self._put_off: dict[int, Minutes] = {}

    def let_go(self) -> None:
        """Let go of all that is held; nothing can be asked of the runs then.

        Those who work on them point back, and circles wait for a search through everything,
        which a window puts off: some seventy megabytes a simulation.
        """
        vars(self).clear()

    # -- the evenings -----------------------------------------------------------------------------

    def run(self, stop: Callable[[], bool] = lambda: False) -> bool:
        """Let every session go by in every run; False if ``stop`` said so before the end."""
        waiting = list(self.script.items)
        for number in range(len(self.script.sessions)):
            if not waiting:
                break
            if stop():
                return False
            own = int(self.hours.upto[number])
            if waiting[0].number < own:
                self._session(number, waiting, own)
                waiting = [item for item in waiting if not self.done[item.number].all()]
        self._work.let_dry()
        return True

    def _session(self, number: int, waiting: list[WorkItem], own: int) -> None:
        """Do what the plan has in a session and before; who is behind goes on with the next."""
        held = np.flatnonzero(~self.hours.lost[number])
        self.at[held] = number
        self.cursor[held] = np.maximum(self.cursor[held], self.hours.begin[number])
        self._cups.begin(held)
        self._put_off.clear()
        here = [item for item in waiting if item.number < own]
        for item in here:
            self._come_to(item, held[~self.done[item.number][held]])
        self._wait_for(held)
        self._put_off.clear()
        behind = np.zeros(self.draws.runs, dtype=bool)
        for item in here:
            behind |= ~self.done[item.number]
        runs = held[behind[held]]
        after = int(self.hours.upto[min(number + 1, len(self.hours.upto) - 1)])
        for item in waiting if runs.size else ():
            if own <= item.number < after:
                self._come_to(item, runs[~self.done[item.number][runs]])

    # -- one piece of work after the other --------------------------------------------------------

    def _come_to(self, item: WorkItem, runs: Runs) -> None:
        """Do an item in its turn; where it has to wait too long, it is put off."""
        if item.number % LOOKS == 0 and self._put_off:
            self._look_back(runs)
        for name in item.cleans:
            self._cups.cleaned(name, self.cursor, runs[self.at[runs] == item.session])
        runs = runs[self.cursor[runs] + item.minutes <= self.hours.close[self.at[runs]]]
        if not runs.size:
            return
        follows = self.may_follow(item, runs)
        if not follows.all():
            self._hope(item, runs[~follows])
        if follows.any():
            self._try(item, runs[follows])

    def _try(self, item: WorkItem, runs: Runs, *, patient: bool = False) -> None:
        """Do an item in all runs in which it fits, unless it keeps hands waiting too long."""
        begun = self._starts.begun(item, runs)
        if begun is None:
            return
        soon, runs = begun.fits, begun.runs
        if not patient:
            most = item.wait + int(assumed("patience"))
            soon = soon & (begun.hands - self.cursor[runs] <= most)
            later = begun.fits & ~soon
            if later.any():
                self._due(item)[runs[later]] = begun.hands[later]
        if not soon.any():
            return
        self._work.do(item, begun, soon)
        again = runs[soon]
        again = again[self.redone[item.activity][again] & ~self.done[item.number][again]]
        if again.size:
            self._due(item)[again] = self.floor[item.number][again]

    # -- what was put off -------------------------------------------------------------------------

    def _due(self, item: WorkItem) -> Minutes:
        """Return from when hands can do an item that was put off; `FOREVER` where it was not."""
        known = self._put_off.get(item.number)
        if known is None:
            known = np.full(self.draws.runs, FOREVER, dtype=np.int64)
            self._put_off[item.number] = known
        return known

    def _hope(self, item: WorkItem, runs: Runs) -> None:
        """Put an item off where what it waits for was."""
        hopes = np.zeros(len(runs), dtype=bool)
        for number, due in self._put_off.items():
            if self.script.items[number].activity in self._needs[item.number]:
                hopes |= due[runs] < FOREVER
        if hopes.any():
            self._due(item)[runs[hopes]] = HOPES

    def _look_back(self, runs: Runs) -> None:
        """Do what was put off and can be done by now."""
        for number in sorted(self._put_off):
            due = runs[self._put_off[number][runs] <= self.cursor[runs]]
            if due.size:
                self._take_up(number, due)

    def _take_up(self, number: int, runs: Runs, *, patient: bool = False) -> None:
        """Take up what was put off, and then what hoped for it."""
        item = self.script.items[number]
        self._put_off[number][runs] = FOREVER
        self._try(item, runs, patient=patient)
        for other, due in self._put_off.items():
            if item.activity in self._needs[other]:
                hope = runs[due[runs] == HOPES]
                hope = hope[self.may_follow(self.script.items[other], hope)]
                due[hope] = self.cursor[hope]

    def _wait_for(self, runs: Runs) -> None:
        """Wait for what was put off, in its order, as far as it still fits."""
        for _ in range(MOST_WAITS):
            left = False
            for number in sorted(self._put_off):
                here = runs[self._put_off[number][runs] < HOPES]
                if here.size:
                    left = True
                    self._take_up(number, here, patient=True)
            if not left:
                return
