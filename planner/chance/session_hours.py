"""The sessions of many runs: when each begins and ends, and which of them take place."""

from __future__ import annotations

import numpy as np

from planner.chance.draws import Draws, Minutes, Runs
from planner.chance.script import Script
from planner.chance.spreads import Spreads
from planner.schedule.partial_schedule import FOREVER


class SessionHours:
    """Beginning and end of each session, one after another.

    Attributes
    ----------
    begin, close
        By session, when it begins and ends.
    next_begin
        By session, when the one after it begins.
    lost
        By session and run, whether it does not take place; the one that runs does.
    upto
        By session, how many pieces of work the plan has in it and before.
    """

    def __init__(self, script: Script, draws: Draws, spreads: Spreads) -> None:
        self.script = script
        sessions, now = script.sessions, script.plan.now
        self.begin = np.array([one.interval.start for one in sessions], dtype=np.int64)
        self.close = np.array([one.interval.end for one in sessions], dtype=np.int64)
        after = [script.next_session(number) for number in range(len(sessions))]
        self.next_begin = np.array(after, dtype=np.int64)
        planned = np.array([item.session for item in script.items], dtype=np.intp)
        self.upto = np.searchsorted(planned, np.arange(len(sessions)), side="right")
        share = spreads.lost_share(draws)
        self.lost = np.zeros((len(sessions), draws.runs), dtype=bool)
        for number, start in enumerate(self.begin):
            if start > now:
                self.lost[number] = draws.uniform("session", int(start)) < share
        self._slots: dict[tuple[object, ...], tuple[Minutes, Minutes, Minutes]] = {}
        self._slots_of: dict[int, tuple[Minutes, Minutes, Minutes]] = {}

    def slots(self, index: int, at: Runs) -> tuple[Minutes, Minutes]:
        """Return from when until when a pass may be worked on, by run and slot of its session.

        Where a session has fewer slots than another, the rest begin never.
        """
        starts, ends, _ = self._known(index)
        return starts[at], ends[at]

    def last_end(self, index: int, at: Runs) -> Minutes:
        """Return when the last of those slots ends."""
        return self._known(index)[2][at]

    def _known(self, index: int) -> tuple[Minutes, Minutes, Minutes]:
        found = self._slots_of.get(index)
        if found is None:
            found = self._slots_of[index] = self._of_kind(index, self.script.kind(index))
        return found

    def _of_kind(self, index: int, kind: tuple[object, ...]) -> tuple[Minutes, Minutes, Minutes]:
        known = self._slots.get(kind)
        if known is None:
            slots = [self.script.slots(index, number) for number in range(len(self.begin))]
            most = max(1, *(len(one) for one in slots)) if slots else 1
            starts = np.full((len(slots), most), FOREVER, dtype=np.int64)
            ends = np.zeros((len(slots), most), dtype=np.int64)
            for number, own in enumerate(slots):
                for nth, slot in enumerate(own):
                    starts[number, nth], ends[number, nth] = slot.start, slot.end
            known = self._slots[kind] = starts, ends, ends.max(axis=1)
        return known
