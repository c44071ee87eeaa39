"""A book, its air and a moment, ready for searching."""

from __future__ import annotations

from collections import defaultdict
from dataclasses import replace
from functools import cached_property, lru_cache
from typing import NamedTuple

from planner.air import FitAir, fit_air, laid_in, on_any_terms
from planner.bench import BenchCalendar
from planner.cure import Band, Cure, Film, Wait, film_um
from planner.schedule.compiled_book import Activity, CompiledBook, GateKind, frame_of
from planner.values.book import Book
from planner.values.coating import Mark, State, Window
from planner.values.gear import Airbrush
from planner.values.plan import PassKey
from planner.values.present import present
from planner.values.project import Logged, Observed, Project
from planner.values.room import Location

__all__ = ["Activity", "Problem"]

NEVER_TAIL = 10**7
AIR_ROUNDS = 8  # several coatings of one step settle in two or three rounds


class Timed(NamedTuple):
    """A window by what it waits for: the late opening and the early closing, then both nominal.

    None is no wait at all, and no closing; ``best`` is what it aims at, nominal.
    """

    window: Window
    opens: Wait | None
    closes: Wait | None
    nominal_opens: Wait | None
    nominal_closes: Wait | None
    best: Wait | None


class Due(NamedTuple):
    """Models that are due together at a minute; each minute later costs ``weight``."""

    project: str
    models: tuple[str, ...]
    weight: int
    at: int


class Problem:
    """Everything that a schedule of ``book`` from ``now`` on must respect."""

    def __init__(self, book: Book, now: int, *, cure: Cure, calendar: BenchCalendar) -> None:
        self.book = book
        self.now = present(book, now)
        self.cure = cure
        self.calendar = calendar
        self.frame = frame_of(book)
        self.gates = self.frame.gates
        self.activities = self.frame.activities
        self.index = self.frame.index
        self.logged: dict[PassKey, Logged] = {}
        self.observed: dict[PassKey, list[Observed]] = defaultdict(list)
        self.coatings = self.frame.coatings
        self.ends = self.frame.ends
        self.after = self.frame.after
        self.closing_from = self.frame.closing_from
        self.gates_from = self.frame.gates_from
        self.deep_gates = self.frame.deep_gates
        self._timed = _known_waits(self.frame, cure)
        for project in book.projects:
            if project.active:
                self._read(project)

    def _read(self, project: Project) -> None:
        """Take what a project's logbook says of its passes."""
        for entry in project.log:
            key = PassKey(project.name, entry.model, entry.step, entry.coat)
            self.logged[key] = entry
        for look in project.observed:
            key = PassKey(project.name, look.model, look.step, look.coat)
            self.observed[key].append(look)

    @cached_property
    def airbrushes(self) -> dict[str, Airbrush]:
        """The airbrushes by name."""
        return {airbrush.name: airbrush for airbrush in self.book.gear.airbrushes}

    @cached_property
    def places(self) -> dict[str, Location]:
        """The locations by name."""
        return {location.name: location for location in self.book.room.locations}

    @cached_property
    def fit_airs(self) -> list[tuple[FitAir, ...]]:
        """Of each activity, when the air lets each of its coatings be laid (definition 10a)."""
        found = []
        for activity in self.activities:
            step = activity.pass_.step
            airs: dict[FitAir, None] = {}
            if activity.pass_.films and not on_any_terms(step):
                course = self.cure.air(laid_in(self.book.room, step.tool).name)
                for name in dict.fromkeys(name for _, name in activity.pass_.films):
                    airs.setdefault(fit_air(course, step, self.coatings[name]))
            found.append(tuple(airs))
        return found

    def fair_from(self, index: int, start: int, minutes: int, latest: int) -> int:
        """Return the first start ≥ ``start`` with so many minutes of air to lay it, or ``latest``.

        What cannot begin before ``latest`` is not looked at further.
        """
        for _ in range(AIR_ROUNDS):
            before = start
            for air in self.fit_airs[index]:
                start = air.start(start, minutes, latest)
            if start == before:
                break
        return start

    def fair_until(self, index: int, start: int, end: int) -> int:
        """Return the first minute in [start, end) whose air forbids laying it, or ``end``."""
        return min((air.until(start, end) for air in self.fit_airs[index]), default=end)

    @cached_property
    def tails(self) -> list[int]:
        """Least elapsed minutes from each activity's start to the end of its model.

        Lags are those of films laid at ``now``; an estimate for ranking only.
        """
        known = _known_tails(self.frame, self.cure, self.now)
        if not known:
            known[:] = self._tails()
        return known

    def _tails(self) -> list[int]:
        minutes = [self._minutes(kind) for kind in self.frame.kinds[0]]
        tails = [0] * len(self.activities)
        for node in self.frame.backwards:
            rest = 0
            for after, kind in self.frame.waits[node]:
                rest = max(rest, tails[after] + (0 if kind is None else minutes[kind]))
            tails[node] = min(NEVER_TAIL, self.activities[node].pass_.minutes + rest)
        return tails

    def _minutes(self, kind: GateKind) -> int:
        """Return how long the first opening of such a gate keeps waiting, from ``now`` [min]."""
        opens = kind.windows[0].opens
        if opens is None:
            return 0
        if not kind.coating:
            return opens.minutes or 0
        film = self._film(kind, kind.film_um)
        at = self.cure.opens_at(film, opens, Band.NOMINAL if kind.likely else Band.LATE)
        return NEVER_TAIL if at is None else at - self.now

    def _film(self, kind: GateKind, thickness_um: float) -> Film:
        coating = self.coatings[kind.coating]
        return Film(coating, thickness_um * kind.pooled, kind.location, self.now)

    def timed(self, gate: int, film: Film | None = None) -> tuple[Timed, ...]:
        """Return the windows of a gate, by what they wait for.

        ``film`` is the one that it watches, if any; when that was laid does not
        matter, nor what lies below and above it.
        """
        number = self.frame.kinds[1][gate]
        like = (0.0, 1.0, 0.0) if film is None else (film.thickness_um, film.slowness, film.wet_um)
        known = self._timed.get((number, *like))
        if known is None:
            kind = self.frame.kinds[0][number]
            watched = None
            if film is not None:
                watched = replace(
                    self._film(kind, film.thickness_um), slowness=like[1], wet_um=like[2]
                )
            known = tuple(
                self._timed_window(window, watched, likely=kind.likely) for window in kind.windows
            )
            self._timed[number, *like] = known
        return known

    def _timed_window(self, window: Window, film: Film | None, *, likely: bool) -> Timed:
        def wait(mark: Mark | None, band: Band) -> Wait | None:
            if mark is None:
                return None
            return self.cure.wait(film, mark, band) if film else Wait(mark.minutes or 0)

        def shut(mark: Mark | None, band: Band) -> Wait | None:  # as if nothing lay below
            alone = replace(film, wet_um=0.0) if film else None
            if mark is None or alone is None:
                return wait(mark, band)
            return self.cure.wait(alone, mark, band)

        opens, closes = window.opens, window.closes
        surely = Band.NOMINAL if likely else Band.LATE
        late, early = wait(opens, surely), shut(closes, Band.EARLY)
        best = wait(window.best, Band.NOMINAL)
        if closes is None:
            return Timed(window, late, early, late, early, best)
        nominal = wait(opens, Band.NOMINAL), shut(closes, Band.NOMINAL)
        return Timed(window, late, early, *nominal, best)

    def film_of(self, gate: int, laid: int) -> Film:
        """Return the film that a gate watches, laid by the minute ``laid``, melted into none."""
        earlier = self.activities[self.ends[gate][0]]
        coating = self.coatings[dict(earlier.pass_.films)[self.gates[gate].place]]
        thickness = film_um(earlier.pass_.step, coating) * self.gates[gate].pooled
        return Film(coating, thickness, earlier.location, laid)

    def handle_minutes(self, index: int, laid: int) -> int:
        """Return how long an activity's films take to be dry to handle if laid at ``laid``."""
        activity = self.activities[index]
        longest = 0
        for name in {name for _, name in activity.pass_.films}:
            coating = self.coatings[name]
            thickness = film_um(activity.pass_.step, coating)
            film = Film(coating, thickness, activity.location, laid)
            ready = self.cure.ready_at(film, State.DRY_TO_HANDLE, Band.LATE)
            longest = max(longest, NEVER_TAIL if ready is None else ready - laid)
        return longest

    def may_melt(self, gate: int) -> bool:
        """Tell whether the film that a gate watches may melt into a later coat."""
        place = self.gates[gate].place
        if not place:
            return False
        earlier = self.activities[self.ends[gate][0]]
        recoat = self.coatings[dict(earlier.pass_.films)[place]].recoat
        return any(window.merges for window in recoat)

    @cached_property
    def dues(self) -> tuple[Due, ...]:
        """What is due, each model counted once (definition 26)."""
        found = []
        for project in self.book.projects:
            if not project.active:
                continue
            end = None if project.target is None else self.calendar.day_end(project.target)
            rest = []
            for model in project.models:
                own = None if model.target is None else self.calendar.day_end(model.target)
                at = self.now if model.early else own
                if at is None and model.weight > 1:
                    at = end
                if at is None:
                    rest.append(model.name)
                else:
                    weight = project.weight * model.weight
                    found.append(Due(project.name, (model.name,), weight, at))
            if end is not None and rest:
                found.append(Due(project.name, tuple(rest), project.weight, end))
        return tuple(found)

    @cached_property
    def due_of(self) -> list[int | None]:
        """Of each activity, the number of what is due by it in `dues`."""
        number = {
            (due.project, model): at for at, due in enumerate(self.dues) for model in due.models
        }
        keys = (activity.pass_.key for activity in self.activities)
        return [number.get((key.project, key.model)) for key in keys]


_Waits = dict[tuple[int, float, float, float], tuple[Timed, ...]]


@lru_cache(maxsize=16)
def _known_waits(frame: CompiledBook, cure: Cure) -> _Waits:
    """Return the waits that are known of the gates of a book in one air, to be added to."""
    return {}


@lru_cache(maxsize=16)
def _known_tails(frame: CompiledBook, cure: Cure, now: int) -> list[int]:
    """Return the tails of a book in one air at a minute, empty until they are known."""
    return []
