"""What the airbrushes hold in many runs, each during its session (definitions 15 and 16)."""

from __future__ import annotations

import numpy as np

from planner.chance.draws import Draws, Floats, Minutes, Runs
from planner.chance.script import Script
from planner.chance.spreads import Spreads
from planner.schedule.problem import Problem


class Cups:
    """The cups: each begins every session clean, and is clean before it ends."""

    def __init__(self, problem: Problem, draws: Draws, spreads: Spreads) -> None:
        self.problem, self.draws, self.spreads = problem, draws, spreads
        self.held: dict[str, Minutes] = {}
        self.mixed: dict[str, Minutes] = {}
        self.last: dict[str, Minutes] = {}
        self._codes: dict[str, int] = {"": 0}
        self._names: list[str] = [""]
        self._factors: dict[tuple[object, ...], Floats] = {}
        self._minutes: dict[tuple[str, str], Minutes] = {}

    def _code(self, load: str) -> int:
        if load not in self._codes:
            self._codes[load] = len(self._names)
            self._names.append(load)
        return self._codes[load]

    def _cup(self, name: str) -> tuple[Minutes, Minutes, Minutes]:
        if name not in self.held:
            for kept in (self.held, self.mixed, self.last):
                kept[name] = np.zeros(self.draws.runs, dtype=np.int64)
        return self.held[name], self.mixed[name], self.last[name]

    def around(
        self, script: Script, index: int, cursor: Minutes, runs: Runs
    ) -> tuple[Minutes, Minutes]:
        """Return the minutes of set-up before a pass, and of cleaning to come after it."""
        activity = script.activities[index]
        name, load = script.airbrush.get(index, ""), activity.pass_.load
        tail = np.zeros(len(runs), dtype=np.int64)
        for other, held in self.held.items():
            if other != name or not load:
                tail += (held[runs] > 0) * self.problem.airbrushes[other].clean_minutes
        if not load or name not in self.problem.airbrushes:
            return np.zeros(len(runs), dtype=np.int64), tail
        brush = self.problem.airbrushes[name]
        held, mixed, last = (one[runs] for one in self._cup(name))
        lead = self._changes(name, load)[held]
        stale = (held > 0) & (cursor[runs] - last > brush.idle_limit_minutes)
        if activity.life is not None:
            ends = cursor[runs] + lead + activity.pass_.minutes
            stale |= (held == self._code(load)) & (ends - mixed > activity.life)
        lead = np.where(stale, brush.clean_minutes + brush.load_minutes, lead)
        factor = self._factor(*activity.pass_.key)[runs]
        found: Minutes = np.rint(lead * factor).astype(np.int64)
        return found, tail + brush.clean_minutes

    def _factor(self, *name: object) -> Floats:
        found = self._factors.get(name)
        if found is None:
            found = self._factors[name] = self.spreads.setup_factor(self.draws, *name)
        return found

    def _changes(self, name: str, load: str) -> Minutes:
        """Return the minutes before a load, by the code of what a cup holds."""
        code = self._code(load)
        found = self._minutes.get((name, load))
        if found is None or len(found) < len(self._names):
            minutes = [self._change(name, known, load) for known in self._names]
            minutes[code] = 0
            found = self._minutes[name, load] = np.array(minutes, dtype=np.int64)
        return found

    def _change(self, name: str, known: str, load: str) -> int:
        brush, coatings = self.problem.airbrushes[name], self.problem.coatings
        if not known:
            return brush.load_minutes
        same = coatings[known].family is coatings[load].family
        return brush.change_same_family if same else brush.change_other_family

    def used(self, script: Script, index: int, start: Minutes, end: Minutes, runs: Runs) -> None:
        """Record that a pass was sprayed."""
        load, name = script.activities[index].pass_.load, script.airbrush.get(index, "")
        if not load or name not in self.problem.airbrushes:
            return
        held, mixed, last = self._cup(name)
        code = self._code(load)
        mixed[runs] = np.where(held[runs] == code, mixed[runs], start)
        held[runs], last[runs] = code, end

    def begin(self, runs: Runs) -> None:
        """Begin another session with clean cups in some runs."""
        for held in self.held.values():
            held[runs] = 0

    def cleaned(self, name: str, cursor: Minutes, runs: Runs) -> None:
        """Clean one cup in those of some runs in which it is loaded, from where hands are."""
        if name not in self.held:
            return
        loaded = runs[self.held[name][runs] > 0]
        minutes = self.problem.airbrushes[name].clean_minutes
        factor = self._factor("clean", name)
        cursor[loaded] += np.rint(minutes * factor[loaded]).astype(np.int64)
        self.held[name][loaded] = 0
