"""A book, its air and a moment, ready for searching."""

from __future__ import annotations

from collections import defaultdict
from functools import cached_property

from planner.bench import BenchCalendar
from planner.cure import Band, Cure, Film
from planner.schedule.frame import Activity, Lag, frame_of
from planner.values.book import Book
from planner.values.coating import State
from planner.values.gear import Airbrush
from planner.values.room import Location

__all__ = ["Activity", "Problem"]

NEVER_TAIL = 10**7


class Problem:
    """Everything that a schedule of ``book`` from ``now`` on must respect."""

    def __init__(self, book: Book, now: int, *, cure: Cure, calendar: BenchCalendar) -> None:
        self.book = book
        self.now = now
        self.cure = cure
        self.calendar = calendar
        self.frame = frame_of(book)
        self.gates = self.frame.gates
        self.activities = self.frame.activities
        self.index = self.frame.index
        self.logged = self.frame.logged
        self.coatings = self.frame.coatings
        self.ends = self.frame.ends
        self.after = self.frame.after
        self.closing_from = self.frame.closing_from
        self.gates_from = self.frame.gates_from

    @cached_property
    def airbrushes(self) -> dict[str, Airbrush]:
        """The airbrushes by name."""
        return {airbrush.name: airbrush for airbrush in self.book.gear.airbrushes}

    @cached_property
    def places(self) -> dict[str, Location]:
        """The locations by name."""
        return {location.name: location for location in self.book.room.locations}

    @cached_property
    def tails(self) -> list[int]:
        """Least elapsed minutes from each activity's start to the end of its model.

        Lags are those of films laid at ``now``; an estimate for ranking only.
        """
        known = {lag: self._minutes(lag) for lag in set(self.frame.lags)}
        lags: dict[tuple[int, int], int] = defaultdict(int)
        for edge, lag in zip(self.ends, self.frame.lags, strict=True):
            lags[edge] = max(lags[edge], known[lag])
        tails = [0] * len(self.activities)
        for node in self.frame.backwards:
            rest = max((tails[after] + lags[node, after] for after in self.after[node]), default=0)
            tails[node] = min(NEVER_TAIL, self.activities[node].one.minutes + rest)
        return tails

    def _minutes(self, lag: Lag) -> int:
        if lag.opens is None:
            return lag.minutes
        coating = self.coatings[lag.coating]
        film = Film(coating, coating.dry_film_um * lag.pooled, lag.location, self.now)
        opens = self.cure.opens_at(film, lag.opens, Band.LATE)
        return NEVER_TAIL if opens is None else opens - self.now

    def film_of(self, gate: int, laid: int) -> Film:
        """Return the film that a gate watches, laid by the minute ``laid``, melted into none."""
        earlier = self.activities[self.ends[gate][0]]
        coating = self.coatings[dict(earlier.one.films)[self.gates[gate].place]]
        thickness = coating.dry_film_um * self.gates[gate].pooled
        return Film(coating, thickness, earlier.location, laid)

    def handle_minutes(self, index: int, laid: int) -> int:
        """Return how long an activity's films take to be dry to handle if laid at ``laid``."""
        activity = self.activities[index]
        longest = 0
        for name in {name for _, name in activity.one.films}:
            coating = self.coatings[name]
            film = Film(coating, coating.dry_film_um, activity.location, laid)
            ready = self.cure.ready_at(film, State.DRY_TO_HANDLE, Band.LATE)
            longest = max(longest, NEVER_TAIL if ready is None else ready - laid)
        return longest

    def may_melt(self, gate: int) -> bool:
        """Tell whether the film that a gate watches may melt into a later coat."""
        place = self.gates[gate].place
        if not place:
            return False
        earlier = self.activities[self.ends[gate][0]]
        recoat = self.coatings[dict(earlier.one.films)[place]].recoat
        return any(window.merges for window in recoat)

    @cached_property
    def targets(self) -> list[int | None]:
        """The end of each project's target day, by project number [min]."""
        return [
            None if project.target is None else self.calendar.day_end(project.target)
            for project in self.book.projects
        ]
