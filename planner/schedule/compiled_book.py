"""What searching needs of a book and the air does not change: activities, gates, order."""

from __future__ import annotations

from collections import defaultdict
from dataclasses import dataclass, replace
from datetime import timedelta
from functools import cached_property, lru_cache
from graphlib import TopologicalSorter
from typing import NamedTuple

from planner.bench import BenchCalendar, calendar_of
from planner.cure import DEEP, film_um, life_in_room
from planner.graph.gates import PassGate, gates_of
from planner.passes import WHOLE_UNIT, Pass, Unit, expand, noted_of, order_left
from planner.schedule.impossible_passes import blocked
from planner.schedule.stretch_groups import Groups
from planner.values.book import Book
from planner.values.coating import Coating, Window
from planner.values.mix import film_of_mix
from planner.values.model import Model
from planner.values.moment import Interval, minute_of
from planner.values.plan import PassKey
from planner.values.project import Project
from planner.values.step import Tool, Trait

LAST_MINUTE = 230 * 366 * 1440  # beyond the last year that values allow


@dataclass(frozen=True, slots=True)
class Activity:
    """One pass to be placed, with all that does not change while searching.

    ``allowed`` are the intervals that its pins leave, None if unpinned.
    ``life`` is how long its mix may be used [min], None if for ever;
    ``fingers`` are the places whose wet film would be touched by holding
    its units, as (project, model, place).  ``wet`` are (unit number,
    stands) of the units that its films keep on a drying place, ``held``
    the numbers of all units that it handles.  ``opening`` are those of its
    gates that open once and for ever, ``choosing`` the others, ``closing``
    those that close for good; ``aims`` says that a window of them has a best
    moment; ``whole`` says that it handles whole units as it works on them
    (turn, join).  ``leaving`` are gates of other passes on
    films that dry elsewhere, and that it would carry off (definition 10).
    ``loud`` keeps it out of quiet hours, ``smells`` out of those and of the
    time in which a room is aired before, ``light`` in daylight (definition
    14); ``together`` are those that must begin in the same stretch.
    """

    index: int
    pass_: Pass
    project: int
    gates: tuple[int, ...]
    before: tuple[int, ...]
    allowed: tuple[Interval, ...] | None
    blocked: str
    life: int | None
    location: str
    fingers: tuple[tuple[str, str, str], ...]
    wet: tuple[tuple[int, int], ...]
    held: tuple[int, ...]
    opening: tuple[int, ...]
    choosing: tuple[int, ...]
    closing: tuple[int, ...]
    leaving: tuple[int, ...]
    aims: bool
    whole: bool
    loud: bool
    smells: bool
    light: bool
    together: tuple[int, ...]


class CompiledBook:
    """The activities of a book's active projects, and the gates between them.

    Attributes
    ----------
    ends
        Of each gate, the indices of its earlier and its later activity.
    after
        Of an activity, the indices of those that wait for it.
    gates_from, closing_from
        Of an activity, its outgoing gates, and those that close for good.
    """

    def __init__(self, book: Book) -> None:
        self.book = book
        self.calendar: BenchCalendar = calendar_of(book.bench_time)
        self.gates: list[PassGate] = []
        self.activities: list[Activity] = []
        self.index: dict[PassKey, int] = {}
        self.coatings = self._coatings()
        self.lives = {name: life_in_room(book, name) for name in self.coatings}
        self.units: dict[tuple[str, Unit], int] = {}
        for number, project in enumerate(book.projects):
            if project.active:
                first = len(self.activities)
                for model in project.models:
                    self._compile(number, project, model)
                self._wish(project, first)
        self.ends = [(self.index[g.before], self.index[g.after]) for g in self.gates]
        self.after: dict[int, list[int]] = defaultdict(list)
        for activity in self.activities:
            for before in activity.before:
                self.after[before].append(activity.index)
        self.closing_from: dict[int, list[int]] = defaultdict(list)
        self.gates_from: dict[int, list[int]] = defaultdict(list)
        self.deep_gates: dict[int, list[int]] = defaultdict(list)
        for number, gate in enumerate(self.gates):
            self.gates_from[self.ends[number][0]].append(number)
            marks = [window.opens for window in gate.windows]
            if gate.place and any(mark is not None and mark.state in DEEP for mark in marks):
                self.deep_gates[self.ends[number][0]].append(number)
            if gate.windows[-1].closes is not None:
                self.closing_from[self.ends[number][0]].append(number)

    def _coatings(self) -> dict[str, Coating]:
        known = {coating.name: coating for coating in self.book.coatings}
        for mix in self.book.mixes:
            known[mix.name] = film_of_mix(mix, known)
        return known

    def _compile(self, number: int, project: Project, model: Model) -> None:
        passes = expand(project, model)
        gates = gates_of(self.book, project, model)
        reasons = blocked(self.book, model, passes)
        start = len(self.activities)
        for offset, pass_ in enumerate(passes):
            self.index[pass_.key] = start + offset
        into: dict[PassKey, list[int]] = defaultdict(list)
        for gate in gates:
            into[gate.after].append(len(self.gates))
            self.gates.append(gate)
        films = self._films_awaited(passes, gates, len(self.gates) - len(gates))
        for offset, pass_ in enumerate(passes):
            numbers = into[pass_.key]
            felt = [n for n in numbers if not self.gates[n].is_order]
            before = dict.fromkeys(self.index[self.gates[n].before] for n in numbers)
            self.activities.append(
                Activity(
                    index=start + offset,
                    pass_=pass_,
                    project=number,
                    gates=tuple(felt),
                    before=tuple(before),
                    allowed=self._allowed(project, pass_),
                    blocked=reasons.get(pass_.key, ""),
                    life=self._life(pass_),
                    location=self._location(pass_),
                    leaving=self._leaving(pass_, films),
                    fingers=_fingers(project, model, pass_),
                    wet=self._wet(project, pass_),
                    held=tuple(self._unit(project, unit) for unit in pass_.units),
                    opening=tuple(n for n in felt if _opens_once(self.gates[n])),
                    choosing=tuple(n for n in felt if not _opens_once(self.gates[n])),
                    closing=tuple(n for n in numbers if self.gates[n].windows[-1].closes),
                    aims=any(w.best for n in felt for w in self.gates[n].windows),
                    whole=pass_.step.stage in WHOLE_UNIT,
                    loud=pass_.step.tool is Tool.AIRBRUSH or Trait.NOISY in pass_.step.traits,
                    smells=Trait.SMELLS in pass_.step.traits,
                    light=pass_.step.tool is Tool.CAN or Trait.DAYLIGHT in pass_.step.traits,
                    together=(),
                )
            )

    def _wish(self, project: Project, first: int) -> None:
        """Bind together what is wished in one stretch, and let the pilot go first."""
        own = self.activities[first:]
        groups = Groups()
        coats: dict[str, list[int]] = defaultdict(list)
        for one in own:
            coats[f"{one.pass_.key.model}/{one.pass_.step.id}"].append(one.index)
            if Trait.ONE_STRETCH in one.pass_.step.traits:
                groups.bind(coats[f"{one.pass_.key.model}/{one.pass_.step.id}"])
        for pin in project.pins:
            if pin.beside is not None:
                model, _, step = pin.beside.partition("/")
                mine = PassKey(project.name, pin.model, pin.step, pin.coat or 1)
                both = (mine, PassKey(project.name, model, step, 1))
                if all(key in self.index for key in both):  # not what is passed over
                    groups.bind([self.index[key] for key in both])
        ended = {before for one in own for before in one.before}
        pilots = [one.index for one in own if one.pass_.key.model == project.pilot]
        last = tuple(index for index in pilots if index not in ended)
        for one in own:
            waits = last if (project.log or not one.before) and one.index not in pilots else ()
            together = tuple(i for i in groups.of(one.index) if i != one.index)
            if together or waits:
                self.activities[one.index] = replace(
                    one, together=together, before=(*one.before, *waits)
                )

    def _location(self, pass_: Pass) -> str:
        return self.book.room.location(pass_.step.dries_in).name

    def _films_awaited(
        self, passes: tuple[Pass, ...], gates: tuple[PassGate, ...], first: int
    ) -> list[tuple[int, str, str, PassKey]]:
        """Return (gate number, part, location, awaiting pass) of gates that watch a film dry."""
        dries_in = {pass_.key: self._location(pass_) for pass_ in passes}
        if len(set(dries_in.values())) == 1:
            return []
        return [
            (number, gate.place.partition("/")[0], dries_in[gate.before], gate.after)
            for number, gate in enumerate(gates, first)
            if gate.watches_film
        ]

    def _leaving(self, pass_: Pass, films: list[tuple[int, str, str, PassKey]]) -> tuple[int, ...]:
        parts = {part for unit in pass_.units for part in unit.parts}
        return tuple(
            number
            for number, part, location, after in films
            if pass_.films
            and part in parts
            and location != self._location(pass_)
            and after != pass_.key
        )

    def _unit(self, project: Project, unit: Unit) -> int:
        return self.units.setdefault((project.name, unit), len(self.units))

    def _wet(self, project: Project, pass_: Pass) -> tuple[tuple[int, int], ...]:
        if not pass_.films:
            return ()
        if pass_.unit_after is not None:
            return ((self._unit(project, pass_.unit_after), pass_.unit_after.stands),)
        laid = {place.partition("/")[0] for place, _ in pass_.films}
        units = [unit for unit in pass_.units if laid.intersection(unit.parts)]
        return tuple((self._unit(project, unit), unit.stands) for unit in units)

    def _life(self, pass_: Pass) -> int | None:
        lives = [self.lives[name] for _, name in pass_.films]
        return min((life for life in lives if life is not None), default=None)

    def _allowed(self, project: Project, pass_: Pass) -> tuple[Interval, ...] | None:
        allowed: tuple[Interval, ...] | None = None
        if project.begins is not None:
            first = self.calendar.day_end(project.begins - timedelta(days=1))
            allowed = (Interval(first, LAST_MINUTE),)
        for pin in project.pins:
            if (pin.model, pin.step) != (pass_.key.model, pass_.key.step):
                continue
            if pin.coat not in (None, pass_.key.coat):
                continue
            interval = pin.interval
            if pin.beside is not None:
                continue
            if pin.not_before is not None:
                here: tuple[Interval, ...] = (Interval(minute_of(pin.not_before), LAST_MINUTE),)
            elif interval is not None:
                here = (interval,)
            else:
                assert pin.on is not None
                midnight = self.calendar.day_end(pin.on)
                around = self.calendar.stretches(midnight - 2880, midnight + 2880)
                here = tuple(stretch.interval for stretch in around if stretch.on == pin.on)
            allowed = here if allowed is None else _meet(allowed, here)
        return allowed

    @cached_property
    def asks(self) -> list[tuple[int, str]]:
        """Of each activity, the least minutes from its start to free hands, and its load or "".

        It may be begun with its shortest piece; cleaning follows what is sprayed.
        """
        cleaning = min(
            (airbrush.clean_minutes for airbrush in self.book.gear.airbrushes), default=0
        )
        return [
            (
                min(activity.hands, activity.step.least_piece or activity.hands)
                + bool(activity.load) * cleaning,
                activity.load,
            )
            for activity in (activity.pass_ for activity in self.activities)
        ]

    @cached_property
    def loads(self) -> frozenset[str]:
        """Every load that some activity asks, "" included where one asks none."""
        return frozenset(load for _, load in self.asks)

    @cached_property
    def longest_preparation(self) -> int:
        """The most minutes that any window of a gate asks for preparation."""
        return max(
            (window.preparation_minutes for gate in self.gates for window in gate.windows),
            default=0,
        )

    @cached_property
    def forerunners(self) -> list[int]:
        """Of each activity, all that must end before it begins, as the bits of a number."""
        found = [0] * len(self.activities)
        for node in reversed(self.backwards):
            for before in self.activities[node].before:
                found[node] |= found[before] | 1 << before
        return found

    @cached_property
    def backwards(self) -> tuple[int, ...]:
        """The activities, each after all that wait for it."""
        order = TopologicalSorter({activity.index: activity.before for activity in self.activities})
        return tuple(reversed(tuple(order.static_order())))

    @cached_property
    def kinds(self) -> tuple[tuple[GateKind, ...], list[int]]:
        """The few different things that gates wait for, and of each gate the number of its own."""
        numbers: dict[GateKind, int] = {}
        own = [numbers.setdefault(self._kind(i), len(numbers)) for i in range(len(self.gates))]
        return tuple(numbers), own

    def _kind(self, number: int) -> GateKind:
        gate = self.gates[number]
        if not gate.place:
            return GateKind(gate.windows)
        earlier = self.activities[self.ends[number][0]]
        coating = next(name for place, name in earlier.pass_.films if place == gate.place)
        film = film_um(earlier.pass_.step, self.coatings[coating])
        return GateKind(gate.windows, coating, earlier.location, gate.pooled, film, gate.likely)

    @cached_property
    def waits(self) -> list[list[tuple[int, int | None]]]:
        """Of each activity, pairs of one that waits for it and the kind of gate between.

        The kind is None where it waits for no more than its end.
        """
        waits: list[dict[tuple[int, int | None], None]] = [
            dict.fromkeys((after, None) for after in self.after[i])
            for i in range(len(self.activities))
        ]
        for (before, after), kind in zip(self.ends, self.kinds[1], strict=True):
            waits[before][after, kind] = None
        return [list(some) for some in waits]


class GateKind(NamedTuple):
    """What a gate waits for, whatever passes it lies between.

    ``coating`` is that of the film it watches, "" where it watches time
    alone; the film dries at ``location`` and counts ``pooled`` times its
    thickness, which is ``film_um`` where it melted into none.  ``likely`` is as the
    gate's own.
    """

    windows: tuple[Window, ...]
    coating: str = ""
    location: str = ""
    pooled: float = 1.0
    film_um: float = 0.0
    likely: bool = False


def frame_of(book: Book) -> CompiledBook:
    """Return the frame of a book.

    That of a book in other air, or with other times in its logbook, is the same one.
    """
    return _framed(_Work(book))


@dataclass(frozen=True, eq=False)
class _Work:
    """A book that equals another with the very same work, the same of it noted, in other air.

    It keeps the book alive, so that an identity is never given out twice.
    """

    book: Book

    @cached_property
    def _key(self) -> tuple[object, ...]:
        book = self.book
        kept = (book.coatings, book.mixes, book.bench_time, book.gear)
        likely = book.preferences.likely
        rooms = ((location.name, location.drying_places) for location in book.room.locations)
        return (*map(id, kept), likely, *rooms, *map(_work_of, book.projects))

    def __eq__(self, other: object) -> bool:
        return isinstance(other, _Work) and self._key == other._key

    def __hash__(self) -> int:
        return hash(self._key)


@lru_cache(maxsize=16)
def _framed(work: _Work) -> CompiledBook:
    return CompiledBook(work.book)


def _work_of(project: Project) -> tuple[object, ...]:
    """Return all of a project that its activities follow from."""
    begun = bool(project.pilot and project.log)
    named = (project.name, project.active, project.begins, project.pilot, begun)
    orders = tuple(order_left(project, model) for model in project.models if project.log)
    left = orders if any(order is not None for order in orders) else ()
    noted = tuple(noted_of(project, model) for model in project.models if project.log)
    return (*named, id(project.models), id(project.pins), left, noted)


def _opens_once(gate: PassGate) -> bool:
    only = gate.windows[0]
    plain = only.closes is None and only.best is None and not only.preparation_minutes
    return len(gate.windows) == 1 and plain


def _fingers(project: Project, model: Model, pass_: Pass) -> tuple[tuple[str, str, str], ...]:
    return tuple(
        (project.name, model.name, f"{part}/{place.name}")
        for unit in pass_.units
        if not unit.holder
        for part in unit.parts
        for place in model.part(part).places
        if f"{part}/{place.name}" not in pass_.places
    )


def _meet(these: tuple[Interval, ...], those: tuple[Interval, ...]) -> tuple[Interval, ...]:
    return tuple(
        Interval(max(a.start, b.start), min(a.end, b.end))
        for a in these
        for b in those
        if a.overlaps(b)
    )
