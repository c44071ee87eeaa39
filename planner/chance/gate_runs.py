"""When gates open and close in many runs: what the rules reckon with, and what the film does."""

from __future__ import annotations

from typing import NamedTuple

import numpy as np

from planner.chance.assumptions import assumed
from planner.chance.draws import Draws, Flags, Floats, Minutes, Runs
from planner.chance.film_runs import FilmRuns, drawn
from planner.chance.script import Script
from planner.chance.spreads import Spreads
from planner.cure import DEEP, Band, Film, Wait
from planner.cure.assumptions import assumed as assumed_of_cure
from planner.cure.stacking import bond_of
from planner.schedule.partial_schedule import FOREVER
from planner.schedule.problem import Timed
from planner.values.coating import State

BURIED = assumed_of_cure("buried")
_UNKNOWN = (-1, 0)


class OpeningRuns(NamedTuple):
    """One window of a gate in some runs; see `GateOpening`."""

    opens: Minutes
    closes: Minutes
    best: Minutes
    preparation: int


class GateRuns:
    """Openings, closings and dry films, from when passes were done in each run.

    Parameters
    ----------
    start, end
        By activity and run, when a pass was done; below 0 while it is not.
    """

    def __init__(
        self,
        script: Script,
        films: FilmRuns,
        draws: Draws,
        spreads: Spreads,
        start: Minutes,
        end: Minutes,
    ) -> None:
        self.script, self.films, self.draws, self.spreads = script, films, draws, spreads
        self.start, self.end = start, end
        self._once: dict[tuple[object, ...], Minutes] = {}
        self._alike: dict[int, tuple[object, ...]] = {}
        self._away: dict[tuple[int, str], Floats] = {}
        self._below: dict[tuple[int, str], tuple[int, int] | None] = {}
        self._deep: dict[tuple[int, str, State, Band], Minutes] = {}

    def away(self, index: int, coating: str) -> Floats:
        """Return how far the films of a pass lie from likely, one a run [s.d.]."""
        found = self._away.get((index, coating))
        if found is None:
            key = self.script.activities[index].pass_.key
            found = self._away[index, coating] = self.spreads.drying(self.draws, coating, key)
        return found

    # -- gates that open once and for ever --------------------------------------------------------

    def opens_once(self, number: int, runs: Runs) -> Minutes:
        """Return when a gate that opens once lets its pass through; its earlier pass is done."""
        alike = self._alike.get(number)
        if alike is None:
            alike = self._alike[number] = self._same(number)
        known = self._once.get(alike)
        if known is None:
            known = self._once[alike] = np.full(self.draws.runs, -1, dtype=np.int64)
        fresh = runs[known[runs] < 0]
        if fresh.size:
            known[fresh] = self.windows(number, fresh)[0].opens
        return known[runs]

    def _same(self, number: int) -> tuple[object, ...]:
        """Return what gates have in common that open at the same minute in every run."""
        problem = self.script.problem
        before, gate = problem.ends[number][0], problem.gates[number]
        if not gate.place:
            return before, id(problem.timed(number)), "", None
        laid_by, film = self.script.film(before, gate.place)
        if laid_by != before:
            return (number,)
        cover = self.cover(number, laid_by, gate.place)
        return before, id(problem.timed(number, film)), gate.place, cover

    def windows(self, number: int, runs: Runs) -> list[OpeningRuns]:
        """Return the windows of a gate in runs in which its earlier pass is done."""
        problem = self.script.problem
        before = problem.ends[number][0]
        place = problem.gates[number].place
        start, end = self.start[before][runs], self.end[before][runs]
        if not place:
            return [self._timed(one, start, end) for one in problem.timed(number)]
        laid_by, film = self.script.film(before, place)
        if laid_by != before and (self.end[laid_by][runs] < 0).any():
            laid_by, film = before, self.script.table.films[before, place]  # melts later
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

    def ready(self, index: int, place: str, state: State, band: Band, runs: Runs) -> Minutes:
        """Return when a film that was laid is ready by the rules, not covered by another."""
        laid_by, film = self.script.film(index, place)
        laid = self.end[laid_by][runs]
        wait = self.films.wait(film, state, band)
        if wait.slot < 0 or not wait.deep:
            return self.films.opens(wait, laid)
        return self.films.opens(wait, laid, self.held(laid_by, place, state, band, runs))

    def held(self, index: int, place: str, state: State, band: Band, runs: Runs) -> Minutes | None:
        """Return from when a film can harden, for what lies below leaves through it; or None."""
        lies = self._below.get((index, place), _UNKNOWN)
        if lies is _UNKNOWN:
            lies = self._below[index, place] = self._lies_over(index, place)
        if lies is None:
            return None
        below, share_pct = lies
        laid = self.end[index][runs]
        known = self._deep.get((below, place, state, band))
        if known is None:
            known = np.full(self.draws.runs, -1, dtype=np.int64)
            self._deep[below, place, state, band] = known
        fresh = runs[known[runs] < 0]
        if fresh.size:
            known[fresh] = self.ready(below, place, state, band, fresh)
        left = np.maximum(0, known[runs] - laid)
        return np.where(known[runs] >= FOREVER, FOREVER, laid + -(-left * share_pct // 100))

    def _lies_over(self, index: int, place: str) -> tuple[int, int] | None:
        """Return the film that keeps a film back, and what share of its wait is added [%]."""
        key = self.script.activities[index].pass_.key
        stack = self.script.stacks[key.project, key.model, place]
        at = stack.index(index)
        below = next((one for one in reversed(stack[:at]) if self._apart(one, place, index)), None)
        if below is None:
            return None
        upper, lower = self.script.film(index, place)[1], self.script.film(below, place)[1]
        bond = bond_of(upper.coating.family, lower.coating.family)
        return None if bond is None or not bond.share_pct else (below, bond.share_pct)

    def _apart(self, below: int, place: str, index: int) -> bool:
        return self.script.film(below, place)[0] != index

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

    def handled(self, index: int, runs: Runs) -> dict[str, tuple[Minutes, Minutes]]:
        """Return when each film of a pass is dry to handle: by the rules, and truly."""
        one = self.script.activities[index].pass_
        known: dict[tuple[object, ...], tuple[Minutes, Minutes]] = {}
        found = {}
        for place, name in one.films:
            film = self.script.table.films[index, place]
            alike = (id(film.coating), film.thickness_um, film.wet_um, film.slowness)
            if alike not in known:
                known[alike] = self._handled(index, name, film, runs)
            found[place] = known[alike]
        return found

    def _handled(self, index: int, coating: str, film: Film, runs: Runs) -> tuple[Minutes, Minutes]:
        laid = self.end[index][runs]
        early, likely, late = (
            self.films.opens(self.films.wait(film, State.DRY_TO_HANDLE, band), laid)
            for band in (Band.EARLY, Band.NOMINAL, Band.LATE)
        )
        away = self.away(index, coating)[runs]
        truly = np.where(
            away < 0, drawn(laid, likely, early, away), drawn(laid, likely, late, away)
        )
        return np.maximum(late, truly), truly


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
        cure = self.gates.films.cure
        film = (
            self.film
            if self.pooled == 1
            else Film(
                self.film.coating,
                self.film.thickness_um * self.pooled,
                self.film.location,
                self.film.laid,
                self.film.slowness,
                self.film.wet_um,
            )
        )
        found = end.copy()
        slower = self if slow.all() else self.narrowed(slow)
        ends = {}
        for band in (Band.NOMINAL, Band.LATE):
            if timed.closes is None and (band is Band.NOMINAL) == self.likely:
                ends[band] = opens[slow]
            else:
                ends[band] = slower.opens(cure.wait(film, mark, band))
        likely, late = ends[Band.NOMINAL], np.maximum(ends[Band.LATE], ends[Band.NOMINAL])
        found[slow] = drawn(slower.laid, likely, late, away[slow])
        return found
