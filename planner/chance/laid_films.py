"""The films of many runs: when each is ready by the rules, and when in truth."""

from __future__ import annotations

import numpy as np

from planner.chance.assumptions import assumed
from planner.chance.draws import Draws, Floats, Minutes, Runs
from planner.chance.film_runs import FilmRuns, drawn
from planner.chance.script import Script
from planner.chance.spreads import Spreads
from planner.cure import Band, Film
from planner.cure.stacking import bond_of
from planner.schedule.partial_schedule import FOREVER
from planner.values.coating import State

_UNKNOWN = (-1, 0)


class LaidFilms:
    """Films from when their passes were done in each run.

    Parameters
    ----------
    end
        By activity and run, when a pass was done; below 0 while it is not.

    Attributes
    ----------
    touchable
        By activity and place, when fingers may touch a film in each run; -1
        where that was not asked yet.
    """

    def __init__(
        self, script: Script, films: FilmRuns, draws: Draws, spreads: Spreads, end: Minutes
    ) -> None:
        self.script, self.films, self.draws, self.spreads = script, films, draws, spreads
        self.end = end
        self.touchable: dict[tuple[int, str], Minutes] = {}
        self._away: dict[tuple[int, str], Floats] = {}
        self._below: dict[tuple[int, str], tuple[int, int] | None] = {}
        self._deep: dict[tuple[int, State, Band], Minutes] = {}
        self._chains: dict[tuple[object, ...], int] = {}
        self._chain_of: dict[tuple[int, str], int] = {}
        self._alike_films: dict[int, dict[tuple[str, Film], list[str]]] = {}

    def away(self, index: int, coating: str) -> Floats:
        """Return how far the films of a pass lie from likely, one a run [s.d.]."""
        found = self._away.get((index, coating))
        if found is None:
            key = self.script.activities[index].pass_.key
            found = self._away[index, coating] = self.spreads.drying(self.draws, coating, key)
        return found

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
        lies = self._lower(index, place)
        if lies is None:
            return None
        below, share_pct = lies
        laid = self.end[index][runs]
        deep = self.chain(below, place), state, band
        known = self._deep.get(deep)
        if known is None:
            known = np.full(self.draws.runs, -1, dtype=np.int64)
            self._deep[deep] = known
        wanted = runs[known[runs] < 0]
        if wanted.size:
            fresh = self._all_laid(below, place, known, wanted)
            known[fresh] = self.ready(below, place, state, band, fresh)
        left = np.maximum(0, known[runs] - laid)
        return np.where(known[runs] >= FOREVER, FOREVER, laid + -(-left * share_pct // 100))

    def chain(self, index: int, place: str) -> int:
        """Return a number that films share which are ready at the same minute in every run.

        They are of one pass, alike, and so is what keeps them back from below.
        """
        found = self._chain_of.get((index, place))
        if found is None:
            laid_by, film = self.script.film(index, place)
            alike = film.thickness_um, film.wet_um, film.slowness
            lies = self._lower(index, place)
            below = () if lies is None else (self.chain(lies[0], place), lies[1])
            known = index, laid_by, film.coating.name, film.location, *alike, *below
            found = self._chains.setdefault(known, len(self._chains))
            self._chain_of[index, place] = found
        return found

    def _lower(self, index: int, place: str) -> tuple[int, int] | None:
        lies = self._below.get((index, place), _UNKNOWN)
        if lies is _UNKNOWN:
            lies = self._below[index, place] = self._lies_over(index, place)
        return lies

    def _all_laid(self, index: int, place: str, known: Minutes, wanted: Runs) -> Runs:
        """Return what is wanted, and all runs not known yet with a film and all below laid."""
        key = self.script.activities[index].pass_.key
        stack = self.script.stacks[key.project, key.model, place]
        upto = stack.index(max(index, self.script.film(index, place)[0], key=stack.index))
        return self.settled(stack[: upto + 1], known, wanted)

    def settled(self, passes: list[int], known: Minutes, wanted: Runs) -> Runs:
        """Return runs that are wanted, and all others not known yet in which passes are done.

        What rests on nothing but those can change no more there, and is
        worked out for all such runs at once.
        """
        fresh = known < 0
        for one in passes:
            fresh &= self.end[one] >= 0
        fresh[wanted] = True
        return np.flatnonzero(fresh)

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

    def handled(self, index: int, runs: Runs) -> dict[str, Minutes]:
        """Return when each film of a pass can be touched: late, or later if it is slow."""
        found = {}
        for kind, places in self._kinds(index).items():
            ready = self._touched(index, kind, runs)
            for place in places:
                known = self.touchable.get((index, place))
                if known is None:
                    known = np.full(self.draws.runs, -1, dtype=np.int64)
                    self.touchable[index, place] = known
                known[runs] = ready
                found[place] = ready
        return found

    def dry(self, index: int, runs: Runs) -> Minutes:
        """Return when all films of a pass are truly dry to handle."""
        found: Minutes = self.end[index][runs]
        for coating, film in self._kinds(index):
            laid = self.end[index][runs]
            early, likely, late = (
                self.films.opens(self.films.wait(film, State.DRY_TO_HANDLE, band), laid)
                for band in (Band.EARLY, Band.NOMINAL, Band.LATE)
            )
            away = self.away(index, coating)[runs]
            truly = drawn(laid, likely, np.where(away < 0, early, late), away)
            found = np.maximum(found, np.where(truly < FOREVER, truly, 0))
        return found

    def _kinds(self, index: int) -> dict[tuple[str, Film], list[str]]:
        """Return the films of a pass that dry alike, each with its places."""
        known = self._alike_films.get(index)
        if known is None:
            known = self._alike_films[index] = {}
            seen: dict[tuple[object, ...], tuple[str, Film]] = {}
            for place, _ in self.script.activities[index].pass_.films:
                film = self.script.table.films[index, place]
                name = film.coating.name
                alike = (name, film.thickness_um, film.wet_um, film.slowness)
                known.setdefault(seen.setdefault(alike, (name, film)), []).append(place)
        return known

    def _touched(self, index: int, kind: tuple[str, Film], runs: Runs) -> Minutes:
        coating, film = kind
        laid = self.end[index][runs]
        late = self.films.opens(self.films.wait(film, State.DRY_TO_HANDLE, Band.LATE), laid)
        away = self.away(index, coating)[runs]
        slow = away > assumed("surely")
        if slow.any():
            laid = laid[slow]
            wait = self.films.wait(film, State.DRY_TO_HANDLE, Band.NOMINAL)
            truly = drawn(laid, self.films.opens(wait, laid), late[slow], away[slow])
            late[slow] = np.maximum(late[slow], truly)
        return late
