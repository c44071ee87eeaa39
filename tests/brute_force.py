"""Every way to place a handful of brush passes, by rules of its own.

Knows brushwork, wiping back within the hour, masks on parts with and without
holders, what smells and what goes on alone; no airbrush, joins, turns,
splitting or drying places.  Every order of the passes and, for each pass, its
earliest start and every fifth minute after it are tried, so the least finish
found is the least there is on that grid; where nothing closes, earliest
starts alone reach it.  It shares the expansion of steps to passes and the
drying times with the planner, and none of its gates.
"""

from __future__ import annotations

from dataclasses import dataclass, field, replace

from planner.bench import BenchCalendar
from planner.cure import Cure, Film
from planner.passes import Pass, expand_all
from planner.values.book import Book
from planner.values.coating import State
from planner.values.moment import zone_named
from planner.values.step import Stage, Tool, Trait

GRID = 5
SET_GOING = 5  # minutes of hands before work goes on alone: assumed, as in the planner
AIRED = 60  # minutes between a smell and quiet hours: assumed, as in the planner
WASH_UM = 3.0  # a wash is mostly thinner: assumed, as in the planner
WIPE_WITHIN = 60  # minutes from the start of the wash: common practice, no source


@dataclass
class _Search:
    """What is tried, and the best finish so far."""

    book: Book
    now: int
    reach: int
    cure: Cure
    calendar: BenchCalendar
    passes: tuple[Pass, ...]
    best: int | None = None
    at: dict[int, int] = field(default_factory=dict)

    def ready(self, index: int, place: str, state: State, before: int) -> int:
        """Return when a placed film is ready for the pass numbered ``before``."""
        above = [i for i in self.stack(index, place) if index < i < before]
        film = self.film(index, place)
        if above:
            film = replace(film, buried=self.end(min(above)))
        minute = self.cure.ready_at(film, state)
        assert minute is not None
        return minute

    def film(self, index: int, place: str) -> Film:
        one = self.passes[index]
        coating = self.book.coating(dict(one.films)[place])
        um = WASH_UM if one.step.stage is Stage.OIL_WASH else coating.dry_film_um
        film = Film(coating, min(um, coating.dry_film_um), one.step.dries_in, self.end(index))
        below = [i for i in self.stack(index, place) if i < index]
        return self.cure.over(film, self.film(max(below), place)) if below else film

    def stack(self, index: int, place: str) -> list[int]:
        """Return the placed passes that laid a film there, on the same model."""
        model = self.passes[index].key.model
        return [
            i
            for i in self.at
            if self.passes[i].key.model == model and place in dict(self.passes[i].films)
        ]

    def end(self, index: int) -> int:
        return self.at[index] + self.passes[index].minutes


def best_finish(book: Book, now: int, reach: int = 2 * 1440) -> int | None:
    """Return the least finish of all placements within ``reach`` minutes, or None."""
    search = _Search(
        book,
        now,
        now + reach,
        Cure(book.room, zone_named(book.bench_time.zone)),
        BenchCalendar(book.bench_time),
        expand_all(book),
    )
    assert all(pass_.step.tool is not Tool.AIRBRUSH for pass_ in search.passes)
    _extend(search, now, now)
    return search.best


def _extend(search: _Search, free: int, finish: int) -> None:
    if search.best is not None and finish >= search.best:
        return
    if len(search.at) == len(search.passes):
        search.best = finish
        return
    for index, pass_ in enumerate(search.passes):
        if index in search.at or not _in_turn(search, index):
            continue
        opens = max(free, _opens(search, index, free))
        for start in _starts(search, pass_, opens):
            if search.best is not None and start + pass_.minutes >= search.best:
                break
            if not _closed(search, pass_, start):
                search.at[index] = start
                _extend(search, start + _hands(pass_), max(finish, _dry(search, index)))
                del search.at[index]


def _hands(pass_: Pass) -> int:
    """Return the minutes for which a pass keeps hands."""
    return min(pass_.minutes, SET_GOING) if _alone(pass_) else pass_.minutes


def _alone(pass_: Pass) -> bool:
    return Trait.HANDS_FREE in pass_.step.traits


def _in_turn(search: _Search, index: int) -> bool:
    """Tell whether everything before it on its places, and under its mask, is placed."""
    one = search.passes[index]
    for earlier in range(index):
        other = search.passes[earlier]
        if other.key.model != one.key.model or earlier in search.at:
            continue
        masked = {Stage.MASK, Stage.UNMASK} & {other.step.stage, one.step.stage}
        if set(other.places) & set(one.places) or (masked and set(other.parts) & set(one.parts)):
            return False
    return True


def _asked(pass_: Pass) -> State | None:
    """Return what a pass asks of the films below it (common practice, no source)."""
    return {
        Stage.WIPE: None,
        Stage.UNMASK: None,
        Stage.MASK: State.PRINT_FREE,
        Stage.OIL_WASH: State.SOLVENT_SAFE,
    }.get(pass_.step.stage, State.DRY_TO_RECOAT)


def _opens(search: _Search, mine: int, free: int) -> int:
    """Return when everything that a pass would touch is ready for it."""
    pass_, opens = search.passes[mine], free
    held = {part for unit in pass_.units if not unit.holder for part in unit.parts}
    for index, start in search.at.items():
        other = search.passes[index]
        if other.key.model != pass_.key.model:
            continue
        if _alone(other) and set(other.parts) & set(pass_.parts):
            opens = max(opens, start + other.minutes)
        for place, _ in other.films:
            if place in pass_.places:
                state = _asked(pass_)
            elif pass_.step.stage is Stage.UNMASK and place.partition("/")[0] in pass_.parts:
                state = State.SET_TO_TOUCH
            else:
                state = None
            if state:
                opens = max(opens, search.ready(index, place, state, mine))
            if place not in pass_.places and place.partition("/")[0] in held:
                opens = max(opens, search.ready(index, place, State.DRY_TO_HANDLE, mine))
    return opens


def _starts(search: _Search, pass_: Pass, opens: int) -> list[int]:
    """Return the earliest start in each stretch, and the grid after it."""
    starts: list[int] = []
    for stretch in search.calendar.stretches(opens, search.reach):
        first = max(opens, stretch.interval.start)
        last = stretch.interval.end - _hands(pass_)
        if first <= last:
            starts.append(first)
            starts.extend(range(first + GRID - first % GRID, last + 1, GRID))
    return [start for start in starts if not _smelt(search, pass_, start)]


def _smelt(search: _Search, pass_: Pass, start: int) -> bool:
    """Tell whether a smell would be there in quiet hours, or just before."""
    if Trait.SMELLS not in pass_.step.traits:
        return False
    return bool(search.calendar.quiet(start, start + pass_.minutes + AIRED))


def _closed(search: _Search, pass_: Pass, start: int) -> bool:
    if pass_.step.stage is not Stage.WIPE:
        return False
    return any(
        search.passes[index].step.stage is Stage.OIL_WASH
        and search.passes[index].key.model == pass_.key.model
        and set(search.passes[index].places) & set(pass_.places)
        and start + pass_.minutes > laid + WIPE_WITHIN
        for index, laid in search.at.items()
    )


def _dry(search: _Search, index: int) -> int:
    one = search.passes[index]
    ready = [search.ready(index, place, State.DRY_TO_HANDLE, index) for place, _ in one.films]
    return max([search.end(index), *ready])
