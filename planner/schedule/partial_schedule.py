"""What the table looks like at some minute of a search."""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from typing import NamedTuple

from planner.bench import Stretch
from planner.cure import Band, Film, Wait, film_um, observed_film
from planner.schedule.problem import Problem
from planner.values.coating import State, Window
from planner.values.moment import FOREVER, Interval
from planner.values.plan import BenchWork, Placement

__all__ = ["EMPTY", "FOREVER", "Cup", "GateOpening", "PartialSchedule"]

FEW = 12  # units on drying places before those long dry are forgotten


class Cup(NamedTuple):
    """What an airbrush holds: a coating since ``mixed``, last used at ``used``."""

    coating: str = ""
    mixed: int = 0
    used: int = 0


EMPTY = Cup()


class GateOpening(NamedTuple):
    """One window of a gate in minutes: start in [opens, closes), or end by ``closes``.

    ``best`` is the start to aim at (definition 6a); where none is told, it is ``opens``.
    """

    opens: int
    closes: int
    window: Window
    best: int


@dataclass
class PartialSchedule:
    """Placed passes, films, wet units and cups.

    A film is kept under (activity, place); a film that melted into the
    next coat points to it, and ``covered`` says when, and by the pass of
    which rank, another was laid over it (definition 11).  ``drying`` holds, by unit
    number, (until, stands, location), ``alone`` until when work goes on
    alone on it; ``awaited`` the unplaced passes that a running window will
    close on.
    """

    problem: Problem
    time: int
    start: dict[int, int] = field(default_factory=dict)
    end: dict[int, int] = field(default_factory=dict)
    left: dict[int, int] = field(default_factory=dict)
    pieces: dict[int, tuple[Interval, ...]] = field(default_factory=dict)
    films: dict[tuple[int, str], Film] = field(default_factory=dict)
    melted: dict[tuple[int, str], tuple[int, str]] = field(default_factory=dict)
    covered: dict[tuple[int, str], tuple[int, int]] = field(default_factory=dict)
    top: dict[tuple[str, str, str], tuple[int, str]] = field(default_factory=dict)
    wet: dict[tuple[str, str, str], int] = field(default_factory=dict)
    drying: dict[int, tuple[int, int, str]] = field(default_factory=dict)
    alone: dict[int, int] = field(default_factory=dict)
    cups: dict[str, Cup] = field(default_factory=dict)
    placements: list[Placement] = field(default_factory=list)
    bench: list[BenchWork] = field(default_factory=list)
    openings: dict[int, tuple[GateOpening, ...]] = field(default_factory=dict)
    floors: dict[int, int] = field(default_factory=dict)
    awaited: set[int] = field(default_factory=set)

    def clone(self) -> PartialSchedule:
        """Return a copy that can be changed without touching this one."""
        return replace(
            self,
            start=dict(self.start),
            end=dict(self.end),
            left=dict(self.left),
            pieces=dict(self.pieces),
            films=dict(self.films),
            melted=dict(self.melted),
            covered=dict(self.covered),
            top=dict(self.top),
            wet=dict(self.wet),
            drying=dict(self.drying),
            alone=dict(self.alone),
            cups=dict(self.cups),
            placements=list(self.placements),
            bench=list(self.bench),
            openings=dict(self.openings),
            floors=dict(self.floors),
            awaited=set(self.awaited),
        )

    def film(self, index: int, place: str) -> Film:
        """Return the film laid by an activity on a place, melted ones followed."""
        spot = self._spot(index, place)
        cover = self.covered.get(spot)
        return self.films[spot] if cover is None else replace(self.films[spot], buried=cover[0])

    def _spot(self, index: int, place: str) -> tuple[int, str]:
        spot = (index, place)
        while spot in self.melted:
            spot = self.melted[spot]
        return spot

    def windows(self, number: int) -> tuple[GateOpening, ...]:
        """Return the windows of a gate whose earlier pass is placed, in minutes."""
        known = self.openings.get(number)
        if known is None:
            known = self.openings[number] = self._windows(number)
        return known

    def _windows(self, number: int) -> tuple[GateOpening, ...]:
        problem = self.problem
        before = problem.ends[number][0]
        place = problem.gates[number].place
        start = self.start[before]
        end = self.end[before]
        film = self._watched(number, before, place) if place else None
        found = []
        for window, late, early, nominal_opens, nominal_closes, best in problem.timed(number, film):
            opens, closes = _opens(late, film, end), _closes(early, start)
            if early is not None and opens >= closes:
                # Empty between the bands: judged at nominal values (definition 9).
                opens, closes = _opens(nominal_opens, film, end), _closes(nominal_closes, start)
            if opens < closes:
                opens = max(opens, end)
                aim = opens if best is None else max(opens, _opens(best, film, end))
                found.append(GateOpening(opens, closes, window, aim))
        return tuple(found)

    def shut_before_open(self, number: int) -> int | None:
        """Return when the last window of a gate closed that can open no more; None if it can.

        Work that took far longer than planned can outlast the windows that
        count from its start.
        """
        problem = self.problem
        if self.windows(number):
            return None
        before, place = problem.ends[number][0], problem.gates[number].place
        film = self._watched(number, before, place) if place else None
        shut = [
            _closes(timed.nominal_closes, self.start[before])
            for timed in problem.timed(number, film)
            if _opens(timed.nominal_opens, film, self.end[before]) < FOREVER
        ]
        return max(shut, default=None)

    def _watched(self, number: int, before: int, place: str) -> Film:
        """Return the film that a gate watches, as buried as it is for its later pass."""
        spot = self._spot(before, place)
        film, cover = self.films[spot], self.covered.get(spot)
        if cover is not None:
            after = self.problem.activities[self.problem.ends[number][1]]
            if cover[1] < after.pass_.rank:
                return replace(film, buried=cover[0])
        return film

    def lay(self, index: int, start: int, end: int) -> None:
        """Record that an activity was done over [start, end) and what it left behind."""
        problem = self.problem
        activity = problem.activities[index]
        one = activity.pass_
        self.start[index], self.end[index] = start, end
        self.awaited.discard(index)
        if one.alone:
            for unit in activity.held:
                self.alone[unit] = max(self.alone.get(unit, 0), end)
        for number in problem.closing_from.get(index, ()):
            after = problem.ends[number][1]
            if after not in self.end:
                self.awaited.add(after)
        if activity.together:
            self.awaited.update(other for other in activity.together if other not in self.end)
        project, model = one.key.project, one.key.model
        handle = 0
        for place, name in one.films:
            coating = problem.coatings[name]
            spot = (project, model, place)
            below = self.top.get(spot)
            film = Film(coating, film_um(one.step, coating), activity.location, end)
            if below is not None:
                film = self._over(film, below, (index, place), start)
            if looks := problem.observed.get(one.key):
                film = observed_film(problem.cure, film, looks)
            self.films[index, place] = film
            self.top[spot] = (index, place)
            ready = problem.cure.ready_at(film, State.DRY_TO_HANDLE, Band.LATE)
            self.wet[spot] = max(self.wet.get(spot, 0), FOREVER if ready is None else ready)
            handle = max(handle, self.wet[spot])
        self._occupy(index, handle)

    def _over(self, film: Film, below: tuple[int, str], upper: tuple[int, str], start: int) -> Film:
        """Return a film as what lies below makes it; a coat begun at ``start`` may melt it."""
        lower = self.films[below]
        if self._melts(below, upper, start):
            thick = film.thickness_um + lower.thickness_um
            return replace(film, thickness_um=thick, wet_um=lower.wet_um, lower=lower.lower)
        self.covered[below] = (film.laid, self.problem.activities[upper[0]].pass_.rank)
        for number in self.problem.deep_gates[below[0]]:
            self.openings.pop(number, None)
            self.floors.pop(self.problem.ends[number][1], None)
        return self.problem.cure.over(film, lower)

    def _melts(self, below: tuple[int, str], upper: tuple[int, str], start: int) -> bool:
        before = below[0]
        film = self.films[below]
        for window in film.coating.recoat:
            if not window.merges:
                continue
            opens, closes = self._window_of(window, film, before, Band.LATE, Band.EARLY)
            if opens >= closes:  # empty between the bands (definition 9)
                opens, closes = self._window_of(window, film, before, Band.NOMINAL, Band.NOMINAL)
            if opens <= start < closes:
                self.melted[below] = upper
                for number in self.problem.gates_from[before]:
                    self.openings.pop(number, None)
                self.floors.clear()
                return True
        return False

    def _window_of(
        self, window: Window, film: Film, before: int, opening: Band, closing: Band
    ) -> tuple[int, int]:
        """Return [opens, closes) of a window over a film at given ends of the band."""
        cure, opens, closes = self.problem.cure, window.opens, window.closes
        opened: int | None = self.end[before]
        closed: int | None = None
        if opens is not None:
            opened = cure.opens_at(film, opens, opening)
        if closes is not None:
            closed = cure.closes_at(film, closes, self.start[before], closing)
        return (
            FOREVER if opened is None else opened,
            FOREVER if closed is None else closed,
        )

    def _occupy(self, index: int, handle: int) -> None:
        """Keep the units of an activity on their drying places until ``handle``."""
        activity = self.problem.activities[index]
        until = handle
        if activity.pass_.unit_after is not None:
            for unit in activity.held:
                until = max(until, self.drying.pop(unit, (0, 0, ""))[0])
        for unit, stands in activity.wet:
            before = self.drying.get(unit, (0, 0, ""))[0]
            self.drying[unit] = (max(until, before), stands, activity.location)
        if len(self.drying) > FEW:
            self.drying = {u: one for u, one in self.drying.items() if one[0] > self.time}

    def place_free_from(self, index: int, time: int) -> int:
        """Return the first minute ≥ ``time`` with drying places for an activity's units."""
        activity = self.problem.activities[index]
        if not activity.wet:
            return time
        here, own = activity.location, activity.held
        room = self.problem.places[here].drying_places
        for _, stands in activity.wet:
            room -= stands
        others = [
            (until, stands)
            for unit, (until, stands, location) in self.drying.items()
            if until > time and location == here and unit not in own
        ]
        used = 0
        for _, stands in others:
            used += stands
        if used <= room:
            return time
        for until, stands in sorted(others):
            time = until
            used -= stands
            if used <= room:
                break
        return time

    def floor(self, index: int) -> int:
        """Return the latest opening of an activity's gates that open once and for ever."""
        known = self.floors.get(index)
        if known is None:
            activity = self.problem.activities[index]
            known = 0
            for number in activity.opening:
                opens = self._opens_once(number, activity.pass_.rank)
                known = max(known, opens)
            self.floors[index] = known
        return known

    def _opens_once(self, number: int, rank: int) -> int:
        """Return when a gate opens that has one window without an end, for a pass of a rank."""
        problem = self.problem
        before = problem.ends[number][0]
        place = problem.gates[number].place
        end = self.end[before]
        if not place:
            wait = problem.timed(number)[0].opens
            at = end if wait is None else wait.after(end, up=True)
        else:
            spot = self._spot(before, place)
            film, cover = self.films[spot], self.covered.get(spot)
            wait = problem.timed(number, film)[0].opens
            buried = cover[0] if cover is not None and cover[1] < rank else None
            at = end if wait is None else wait.opens(film, buried)
        return FOREVER if at is None else max(at, end)

    def held_up(self, index: int) -> bool:
        """Tell whether work begun and not yet finished is wet where fingers would hold."""
        if not self.left:
            return False
        activities = self.problem.activities
        wet = {
            (one.key.project, one.key.model, place)
            for begun in self.left
            for one in (activities[begun].pass_,)
            for place, _ in one.films
        }
        return index not in self.left and not wet.isdisjoint(activities[index].fingers)

    def stays_until(self, index: int) -> int:
        """Return until when films that an activity would carry off must stay (definition 10)."""
        latest = 0
        for number in self.problem.activities[index].leaving:
            before, after = self.problem.ends[number]
            if before in self.end and after not in self.end:
                openings = self.windows(number)
                latest = max(latest, openings[0].opens if openings else FOREVER)
        return latest

    def deadline(self, index: int) -> int:
        """Return the earliest last closing of an activity's running gates, or FOREVER.

        What must begin in the stretch of something placed closes with it.
        """
        bound = self.bound_to(index)
        closing = bound.interval.end if bound else FOREVER
        for number in self.problem.activities[index].closing:
            if self.problem.ends[number][0] in self.end:
                openings = self.windows(number)
                closing = min(closing, openings[-1].closes if openings else 0)
        return closing

    def bound_to(self, index: int) -> Stretch | None:
        """Return the stretch in which an activity must begin, because others have; or None."""
        for other in self.problem.activities[index].together:
            begun = self.pieces.get(other)
            if begun and begun[0].start >= self.problem.now:
                return self.problem.calendar.stretch_at(begun[0].start)
        return None

    def left_alone_until(self, index: int) -> int:
        """Return when what goes on alone leaves an activity its units and forerunners."""
        activity = self.problem.activities[index]
        until = max((self.end.get(before, 0) for before in activity.before), default=0)
        return max([until, *(self.alone.get(unit, 0) for unit in activity.held)])

    def fingers_from(self, index: int) -> int:
        """Return when fingers may hold an activity's units (definition 5)."""
        spots = self.problem.activities[index].fingers
        return max((self.wet.get(spot, 0) for spot in spots), default=0)


def _opens(wait: Wait | None, film: Film | None, end: int) -> int:
    """Return when a wait for a film is over; no wait ends with the pass."""
    if wait is None:
        return end
    at = wait.after(end, up=True) if film is None else wait.opens(film)
    return FOREVER if at is None else at


def _closes(wait: Wait | None, start: int) -> int:
    at = None if wait is None else wait.after(start, up=False)
    return FOREVER if at is None else at
