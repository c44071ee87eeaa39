"""What is so in many runs at one moment of each: the state that goes from evening to evening."""

from __future__ import annotations

import numpy as np

from planner.chance.draws import Draws, Flags, Floats, Minutes, Runs
from planner.chance.film_runs import DAY, FilmRuns, Gains
from planner.chance.gate_runs import GateRuns
from planner.chance.script import Script, WorkItem
from planner.chance.session_hours import SessionHours
from planner.chance.spreads import Spreads
from planner.pace.minutes import Work
from planner.schedule.partial_schedule import FOREVER

OLDEST = 60 * DAY  # films laid longer ago count as laid then [min]
REACH = 45 * DAY  # films are followed so far beyond the last session [min]


class RunState:
    """What was done in each run, and where its hands are.

    Attributes
    ----------
    start, end
        By activity and run, when a pass was done; -1 where it never was.
    cause
        By activity and run, which pass its start waited for; -1 is none.
    by_film
        Whether it was the film of that pass, not hands.
    redone
        Whether it came out wrong once.
    done_at
        By item and run, when a piece of a pass was done; `FOREVER` is never.
    at
        The session that each run has come to.
    cursor
        When hands are free in each run.
    latest
        The pass that was done last in each run; -1 is none.
    units
        By `unit_row` and run, until when each unit takes its drying places.
    """

    def __init__(
        self, script: Script, draws: Draws, spreads: Spreads, gains: Gains | None = None
    ) -> None:
        self.script, self.draws, self.spreads = script, draws, spreads
        count, runs = len(script.activities), draws.runs
        self.start = np.full((count, runs), -1, dtype=np.int64)
        self.end = np.full((count, runs), -1, dtype=np.int64)
        self.cause = np.full((count, runs), -1, dtype=np.intp)
        self.by_film = np.zeros((count, runs), dtype=bool)
        self.redone = np.zeros((count, runs), dtype=bool)
        now = script.plan.now
        oldest = max(now - OLDEST, min((end for _, end in script.facts.values()), default=now))
        last = script.sessions[-1].interval.end if script.sessions else now
        films = FilmRuns(script.problem.cure, min(oldest, now), last + REACH, gains)
        self.gates = GateRuns(script, films, draws, spreads, self.start, self.end)
        self.hours = SessionHours(script, draws, spreads)
        self.done_at = np.full((len(script.items), runs), FOREVER, dtype=np.int64)
        self.done = np.zeros((len(script.items), runs), dtype=bool)
        self.at = np.full(runs, -1, dtype=np.intp)
        self.cursor = np.full(runs, now, dtype=np.int64)
        self.latest = np.full(runs, -1, dtype=np.intp)
        self.handled: dict[tuple[str, str, str], Minutes] = {}
        self.dry: dict[tuple[str, str], Minutes] = {}
        self.unit_row = {unit: row for row, unit in enumerate(script.stands)}
        self.units = np.zeros((len(script.stands), runs), dtype=np.int64)
        self.units_until: dict[int, int] = {}
        self.alone: dict[int, Minutes] = {}
        self.floor: dict[int, Minutes] = {}
        self.left: dict[int, Minutes] = {}
        self._factors: dict[tuple[int, bool], Floats] = {}
        self._previous = _previous(script.items)

    @property
    def sessions_lost(self) -> Flags:
        """By session and run, whether it did not take place."""
        return self.hours.lost

    def zeros(self) -> Minutes:
        """Return one minute a run, all 0."""
        return np.zeros(self.draws.runs, dtype=np.int64)

    def may_follow(self, item: WorkItem, runs: Runs) -> Flags:
        """Tell in which runs all that an item waits for is done."""
        found = np.ones(len(runs), dtype=bool)
        before = self._previous.get(item.number)
        if before is not None:
            found &= self.done[before][runs]
        elif item.first:
            for index in self.script.activities[item.activity].before:
                found &= self.end[index][runs] >= 0
        return found

    def minutes_left(self, item: WorkItem, runs: Runs) -> Minutes:
        """Return the minutes that an item really takes, or what is left of it."""
        known = self.left.get(item.number)
        if known is None:
            known = np.maximum(1, np.rint(item.minutes * self.factor(item.activity)))
            known = self.left[item.number] = known.astype(np.int64)
        return known[runs]

    def factor(self, index: int, *, again: bool = False) -> Floats:
        """Return the factor on the minutes of a pass in each run, or of doing it again."""
        known = self._factors.get((index, again))
        if known is None:
            one = self.script.activities[index].pass_
            key = one.key._replace(coat=-one.key.coat) if again else one.key
            work = Work(one.step.stage, one.step.tool)
            known = self.spreads.minutes_factor(self.draws, work, key)
            self._factors[index, again] = known
        return known


def _previous(items: tuple[WorkItem, ...]) -> dict[int, int]:
    """Return, for each piece but the first of a pass, the piece before it."""
    last: dict[int, int] = {}
    found = {}
    for item in items:
        if not item.first:
            found[item.number] = last[item.activity]
        last[item.activity] = item.number
    return found
