"""When gates open and close in many runs: what the rules reckon with, and what the film does."""

from __future__ import annotations

from dataclasses import replace
from typing import NamedTuple

import numpy as np

from planner.chance.assumptions import assumed
from planner.chance.draws import Draws, Flags, Minutes, Runs
from planner.chance.film_runs import FilmRuns, drawn
from planner.chance.laid_films import LaidFilms
from planner.chance.script import Script
from planner.chance.spreads import Spreads
from planner.cure import DEEP, Band, Film, Wait
from planner.cure.assumptions import assumed as assumed_of_cure
from planner.schedule.partial_schedule import FOREVER
from planner.schedule.problem import Timed
from planner.values.coating import Mark, State, Window

BURIED = assumed_of_cure("buried")


class OpeningRuns(NamedTuple):
    """One window of a gate in some runs; see `GateOpening`."""

    opens: Minutes
    closes: Minutes
    best: Minutes
    preparation: int


class GateRuns(LaidFilms):
    """Openings and closings over the films, from when passes were done in each run."""

    def __init__(
        self,
        script: Script,
        films: FilmRuns,
        draws: Draws,
        spreads: Spreads,
        start: Minutes,
        end: Minutes,
    ) -> None:
        super().__init__(script, films, draws, spreads, end)
        self.start = start
        self._once: dict[tuple[object, ...], Minutes] = {}
        self._alike: dict[int, tuple[object, ...]] = {}
        self._touches: dict[int, bool] = {}
        self._rests: dict[int, list[int]] = {}
        self._waits: dict[tuple[int, int, Mark, Band], Wait] = {}

    # -- gates that open once and for ever --------------------------------------------------------

    def opens_once(self, number: int, runs: Runs) -> Minutes:
        """Return when a gate that opens once lets its pass through; its earlier pass is done."""
        if self._only_touches(number):
            spot = self.script.problem.ends[number][0], self.script.problem.gates[number].place
            ready: Minutes = np.maximum(self.touchable[spot][runs], self.end[spot[0]][runs])
            return ready
        alike = self._alike.get(number)
        if alike is None:
            alike = self._alike[number] = self._same(number)
        known = self._once.get(alike)
        if known is None:
            known = self._once[alike] = np.full(self.draws.runs, -1, dtype=np.int64)
        wanted = runs[known[runs] < 0]
        if wanted.size:
            rows = self._rests.get(number)
            if rows is None:
                rows = self._rests[number] = self._rests_on(number)
            fresh = self.settled(rows, known, wanted)
            known[fresh] = self.windows(number, fresh)[0].opens
        return known[runs]

    def _rests_on(self, number: int) -> list[int]:
        """Return the passes that tell when a gate opens once they are done: all films before it."""
        script, place = self.script, self.script.problem.gates[number].place
        before, after = script.problem.ends[number]
        if not place:
            return [before]
        key = script.activities[before].pass_.key
        rank = script.activities[after].pass_.rank
        stack = script.stacks[key.project, key.model, place]
        lower = {one for one in stack if script.activities[one].pass_.rank < rank}
        return sorted(lower | {before, script.film(before, place)[0]})

    def _only_touches(self, number: int) -> bool:
        """Tell whether a gate asks nothing but that fingers leave no print in a film."""
        found = self._touches.get(number)
        if found is None:
            gate, before = self.script.problem.gates[number], self.script.problem.ends[number][0]
            found = (
                gate.windows == (Window(opens=Mark(state=State.DRY_TO_HANDLE)),)
                and gate.place != ""
                and gate.pooled == 1
                and not gate.likely
                and self.script.film(before, gate.place)[0] == before
            )
            self._touches[number] = found
        return found

    def _same(self, number: int) -> tuple[object, ...]:
        """Return what gates have in common that open at the same minute in every run."""
        problem = self.script.problem
        before, gate = problem.ends[number][0], problem.gates[number]
        if not gate.place:
            return before, id(problem.timed(number)), -1, None
        laid_by, film = self.script.film(before, gate.place)
        if laid_by != before:
            return (number,)
        cover = self.cover(number, laid_by, gate.place)
        return before, id(problem.timed(number, film)), self.chain(before, gate.place), cover

    def windows(self, number: int, runs: Runs) -> list[OpeningRuns]:
        """Return the windows of a gate in runs in which its earlier pass is done."""
        problem = self.script.problem
        before, place = problem.ends[number][0], problem.gates[number].place
        if not place:
            start, end = self.start[before][runs], self.end[before][runs]
            return [self._timed(one, start, end) for one in problem.timed(number)]
        laid_by, film = self.script.film(before, place)
        melted = self.end[laid_by][runs] >= 0
        if melted.all():
            return self._of_film(number, runs, laid_by, film)
        alone = self.script.table.films[before, place]  # melts later
        if not melted.any():
            return self._of_film(number, runs, before, alone)
        parts = (
            self._of_film(number, runs[melted], laid_by, film),
            self._of_film(number, runs[~melted], before, alone),
        )
        return [_put_together(melted, *both) for both in zip(*parts, strict=True)]

    def _of_film(self, number: int, runs: Runs, laid_by: int, film: Film) -> list[OpeningRuns]:
        """Return the windows of a gate that watches a film."""
        problem = self.script.problem
        before, place = problem.ends[number][0], problem.gates[number].place
        start, end = self.start[before][runs], self.end[before][runs]
        watch = _Watch(self, number, laid_by, place, film, runs)
        found = []
        for timed in problem.timed(number, film):
            one = self._timed(timed, start, end, watch)
            opens = one.opens
            if timed.window.opens is not None and timed.window.opens.of_film:
                opens = np.maximum(opens, watch.truly(timed, end, opens))
            found.append(one._replace(opens=opens))
        return found

    def _timed(
        self, timed: Timed, start: Minutes, end: Minutes, watch: _Watch | None = None
    ) -> OpeningRuns:
        opens = self._opens(timed.opens, end, watch)
        closes = self._closes(timed.closes, start)
        if timed.closes is not None:
            empty = opens >= closes  # judged at nominal values (definition 9)
            if empty.any():
                opens = np.where(empty, self._opens(timed.nominal_opens, end, watch), opens)
                closes = np.where(empty, self._closes(timed.nominal_closes, start), closes)
        opens = np.maximum(opens, end)
        best = opens
        if timed.best is not None:
            best = np.maximum(opens, self._opens(timed.best, end, watch))
        return OpeningRuns(opens, closes, best, timed.window.preparation_minutes)

    def _opens(self, wait: Wait | None, end: Minutes, watch: _Watch | None) -> Minutes:
        if wait is None:
            return end
        if watch is None:
            return self.films.after(wait, end, up=True)
        return watch.opens(wait)

    def _closes(self, wait: Wait | None, start: Minutes) -> Minutes:
        if wait is None:
            return np.full(len(start), FOREVER, dtype=np.int64)
        return self.films.after(wait, start, up=False)

    # -- films ------------------------------------------------------------------------------------

    def cover(self, number: int, laid_by: int, place: str) -> int | None:
        """Return the pass that lays the next film over one, if the gate's later pass meets it."""
        script = self.script
        key = script.activities[laid_by].pass_.key
        stack = script.stacks[key.project, key.model, place]
        at = stack.index(laid_by) + 1
        if at >= len(stack):
            return None
        after = script.problem.ends[number][1]
        rank = script.activities[after].pass_.rank
        return stack[at] if script.activities[stack[at]].pass_.rank < rank else None

    def wait(self, watch: _Watch, mark: Mark, band: Band) -> Wait:
        """Return what a film that is watched still lacks to a mark, pooled as the gate has it."""
        key = watch.number, watch.laid_by, mark, band
        found = self._waits.get(key)
        if found is None:
            film = watch.film
            if watch.pooled != 1:
                film = replace(film, thickness_um=film.thickness_um * watch.pooled)
            found = self._waits[key] = self.films.cure.wait(film, mark, band)
        return found


def _put_together(some: Flags, one: OpeningRuns, other: OpeningRuns) -> OpeningRuns:
    """Return a window of which some runs have one side and the others the other."""

    def both(here: Minutes, there: Minutes) -> Minutes:
        whole = np.empty(len(some), dtype=np.int64)
        whole[some], whole[~some] = here, there
        return whole

    return OpeningRuns(
        both(one.opens, other.opens),
        both(one.closes, other.closes),
        both(one.best, other.best),
        one.preparation,
    )


class _Watch:
    """A film that a gate watches, in some runs."""

    def __init__(
        self, gates: GateRuns, number: int, laid_by: int, place: str, film: Film, runs: Runs
    ) -> None:
        self.gates, self.place, self.film, self.runs = gates, place, film, runs
        self.number, self.laid_by = number, laid_by
        self.laid = gates.end[laid_by][runs]
        gate = gates.script.problem.gates[number]
        self.pooled, self.likely = gate.pooled, gate.likely
        cover = gates.cover(number, laid_by, place)
        self.buried = None if cover is None else gates.end[cover][runs]
        self._held: dict[int, Minutes | None] = {}

    def narrowed(self, some: Flags) -> _Watch:
        """Return the same watch in some of its runs."""
        return _Watch(self.gates, self.number, self.laid_by, self.place, self.film, self.runs[some])

    def opens(self, wait: Wait) -> Minutes:
        """Return when a wait for this film is over by the rules."""
        held = None
        if wait.slot >= 0 and wait.deep:
            held = self._held_at(wait.slot)
        found = self.gates.films.opens(wait, self.laid, held)
        if wait.slot >= 0 and self.buried is not None:
            over = (self.buried >= 0) & (found > self.buried) & (found < FOREVER)
            longer = self.buried + np.ceil((found - self.buried) * BURIED).astype(np.int64)
            found = np.where(over, longer, found)
        return found

    def _held_at(self, slot: int) -> Minutes | None:
        if slot not in self._held:
            bands = tuple(Band)
            state, band = DEEP[slot // len(bands)], bands[slot % len(bands)]
            self._held[slot] = self.gates.held(self.laid_by, self.place, state, band, self.runs)
        return self._held[slot]

    def truly(self, timed: Timed, end: Minutes, opens: Minutes) -> Minutes:
        """Return when the film truly is where a window's opening wants it.

        ``opens`` is when the rules have it there: one of the two moments that it lies between.
        A film that is slower than the rules reckon with keeps its pass
        waiting; one that is faster does not make it earlier, for nobody
        looks.
        """
        mark = timed.window.opens
        assert mark is not None
        away = self.gates.away(self.laid_by, self.film.coating.name)[self.runs]
        slow = away > (0 if self.likely else assumed("surely"))
        if not slow.any():
            return end
        found = end.copy()
        slower = self if slow.all() else self.narrowed(slow)
        ends = {}
        for band in (Band.NOMINAL, Band.LATE):
            if timed.closes is None and (band is Band.NOMINAL) == self.likely:
                ends[band] = opens[slow]
            else:
                ends[band] = slower.opens(self.gates.wait(self, mark, band))
        likely, late = ends[Band.NOMINAL], np.maximum(ends[Band.LATE], ends[Band.NOMINAL])
        found[slow] = drawn(slower.laid, likely, late, away[slow])
        return found
