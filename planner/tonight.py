"""The run sheet: what to do in one stretch of bench time, in order of the clock.

It is read off a plan; nothing is decided here.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date
from itertools import zip_longest

from planner.bench import BenchCalendar
from planner.cautions import Caution, cautions
from planner.cure import Cure
from planner.passes import Pass
from planner.quantity import Load, fill, filled, served
from planner.schedule.problem import Problem
from planner.schedule.state import FOREVER, Opening, Table
from planner.values.book import Book
from planner.values.coating import Family, Portion, State
from planner.values.moment import Interval, moment_of, zone_named
from planner.values.plan import BenchKind, BenchWork, PassKey, Placement, Plan, Reason
from planner.values.refusal import number_in
from planner.values.step import Bound, Stage, Tool

WITHOUT_END = 1440  # minutes shown where no bench time follows
SPRAYED = (Tool.AIRBRUSH, Tool.CAN)


@dataclass(frozen=True)
class Coat:
    """What one coating or mix of a step covers.

    ``portions`` is how the mix is stirred, empty for a coating from the
    bottle; ``places`` are the "part/place" names to tick off.  ``load`` is
    how much of it to put on the palette; None where it is sprayed from a
    load with a row of its own or from a can, done, or not measured by volume.
    """

    coating: str
    swatch: str
    portions: tuple[Portion, ...]
    places: tuple[str, ...]
    load: Load | None = None


@dataclass(frozen=True)
class WorkRow:
    """One pass, or one piece of it, on the run sheet.

    Attributes
    ----------
    coats
        What is laid and where; empty for work that lays nothing.
    places
        Every "part/place" to tick off, coated or only touched.
    piece, pieces
        Which piece of how many, from 1.
    reason
        What holds the pass where it is.
    logged
        It is a fact of the logbook.
    """

    key: PassKey
    stage: Stage
    title: str
    parts: tuple[str, ...]
    coats: tuple[Coat, ...]
    places: tuple[str, ...]
    tool: Tool
    airbrush: str
    start: int
    end: int
    piece: int
    pieces: int
    reason: Reason
    cautions: tuple[Caution, ...]
    logged: bool

    @property
    def minutes(self) -> int:
        """Attended minutes."""
        return self.end - self.start


@dataclass(frozen=True)
class BenchRow:
    """Loading, changing, cleaning or preparing on the run sheet.

    ``load`` is what is filled in for all that it serves.
    """

    kind: BenchKind
    airbrush: str
    coating: str
    swatch: str
    portions: tuple[Portion, ...]
    serves: PassKey | None
    start: int
    end: int
    load: Load | None = None

    @property
    def minutes(self) -> int:
        """Attended minutes."""
        return self.end - self.start


Row = WorkRow | BenchRow


@dataclass(frozen=True)
class Drying:
    """A film that is not yet ready for what waits for it.

    Attributes
    ----------
    key
        The pass that laid it.
    places
        Where it lies, as "part/place".
    state
        The state awaited; None where the gate counts minutes.
    since, opens
        When it was laid, and the first minute on which it is ready; None
        if it never will be in this air.
    waiting
        The pass that waits; None if only the finish does.
    """

    key: PassKey
    coating: str
    swatch: str
    places: tuple[str, ...]
    state: State | None
    since: int
    opens: int | None
    waiting: PassKey | None


@dataclass(frozen=True)
class Closing:
    """A window that runs out: ``waiting`` must start, or end, before ``closes``."""

    key: PassKey
    waiting: PassKey
    bound: Bound
    since: int
    closes: int
    planned: int | None
    why: str


@dataclass(frozen=True)
class RunSheet:
    """All that a person at the bench needs to know at ``now``.

    Attributes
    ----------
    interval
        The stretch of bench time; a virtual one where minutes were given.
    on
        Local date on which it begins.
    rows
        Work and set-up in order of time.
    drying, closing
        Films and windows at ``now``, and those that the rows themselves
        will leave behind.
    next_interval, next_opens
        The next stretch with work in it, and what is done there.
    """

    now: int
    interval: Interval
    on: date
    rows: tuple[Row, ...]
    drying: tuple[Drying, ...]
    closing: tuple[Closing, ...]
    next_interval: Interval | None
    next_opens: tuple[WorkRow, ...]

    @property
    def drying_now(self) -> tuple[Drying, ...]:
        """Films that lie there wet at ``now``."""
        return tuple(film for film in self.drying if film.since <= self.now)

    @property
    def drying_after(self) -> tuple[Drying, ...]:
        """Films that this stretch will leave to dry."""
        return tuple(film for film in self.drying if film.since > self.now)

    @property
    def work(self) -> tuple[WorkRow, ...]:
        """The rows that are passes."""
        return tuple(row for row in self.rows if isinstance(row, WorkRow))


def run_sheet(book: Book, plan: Plan, now: int, minutes: int | None = None) -> RunSheet:
    """Return the run sheet of the stretch in which ``now`` lies, or of the next one.

    Parameters
    ----------
    minutes
        Show so many minutes from ``now`` instead, bench time or not [min].

    Raises
    ------
    Refused
        If ``minutes`` is not in 1 to 1440.
    """
    zone = zone_named(book.bench_time.zone)
    calendar = BenchCalendar(book.bench_time)
    interval, on = _stretch(calendar, now, minutes)
    sheet = _Sheet(book, plan, now, calendar, Cure(book.room, zone))
    upcoming = [piece.start for one in plan.placements for piece in one.pieces]
    following = min((start for start in upcoming if start >= interval.end), default=None)
    after = calendar.stretch_at(following) if following is not None else None
    next_interval = after.interval if after else None
    return RunSheet(
        now=now,
        interval=interval,
        on=on or moment_of(now, zone).date(),
        rows=tuple(sheet.rows(interval)),
        drying=tuple(sheet.drying(interval)),
        closing=tuple(sheet.closing(interval)),
        next_interval=next_interval,
        next_opens=tuple(sheet.work(next_interval)) if next_interval else (),
    )


def run_sheets(book: Book, plan: Plan, now: int) -> tuple[RunSheet, ...]:
    """Return the run sheet of every stretch from ``now`` on in which the plan has work.

    Each is written as of its own start, the one that runs as of ``now``.
    """
    calendar = BenchCalendar(book.bench_time)
    sheet = _Sheet(book, plan, now, calendar, Cure(book.room, calendar.zone))
    starts = [piece.start for one in sheet.placed.values() for piece in one.pieces]
    starts += [work.interval.start for work in plan.bench]
    used = dict.fromkeys(calendar.stretch_at(start) for start in sorted(starts))
    ahead = [one for one in used if one is not None and one.interval.end > now]
    sheets = []
    for stretch, following in zip_longest(ahead, ahead[1:]):
        sheet.now = max(now, stretch.interval.start)
        sheets.append(
            RunSheet(
                now=sheet.now,
                interval=stretch.interval,
                on=stretch.on,
                rows=tuple(sheet.rows(stretch.interval)),
                drying=tuple(sheet.drying(stretch.interval)),
                closing=tuple(sheet.closing(stretch.interval)),
                next_interval=following.interval if following else None,
                next_opens=tuple(sheet.work(following.interval)) if following else (),
            )
        )
    return tuple(sheets)


def _stretch(
    calendar: BenchCalendar, now: int, minutes: int | None
) -> tuple[Interval, date | None]:
    if minutes is not None:
        number_in(minutes, 1, 1440, "minutes", "min")
        return Interval(now, now + minutes), None
    stretch = calendar.next_stretch(now)
    if stretch is None:
        return Interval(now, now + WITHOUT_END), None
    return stretch.interval, stretch.on


class _Sheet:
    """The plan laid out on a table, so that films and windows can be read off."""

    def __init__(
        self, book: Book, plan: Plan, now: int, calendar: BenchCalendar, cure: Cure
    ) -> None:
        self.book = book
        self.plan = plan
        self.now = now
        self.problem = Problem(book, now, cure=cure, calendar=calendar)
        self.table = Table(self.problem, now)
        self.served = served(plan)
        self.placed: dict[PassKey, Placement] = {}
        for placed in sorted(plan.placements, key=lambda one: (one.start, one.end)):
            index = self.problem.index.get(placed.key)
            if index is not None and placed.key not in self.placed:
                self.placed[placed.key] = placed
                self.table.lay(index, placed.start, placed.end)

    def rows(self, interval: Interval) -> list[Row]:
        rows: list[Row] = [*self.work(interval), *self._bench(interval)]
        return sorted(rows, key=lambda row: (row.start, row.end))

    def work(self, interval: Interval) -> Iterator[WorkRow]:
        """Yield the pieces of passes that lie in ``interval``."""
        for placed in self.placed.values():
            for number, piece in enumerate(placed.pieces, start=1):
                if piece.overlaps(interval):
                    yield self._work(placed, number, piece)

    def _work(self, placed: Placement, number: int, piece: Interval) -> WorkRow:
        one = self._pass(placed.key)
        names = tuple(dict.fromkeys(coating for _, coating in one.films))
        return WorkRow(
            key=placed.key,
            stage=one.step.stage,
            title=one.step.title,
            parts=one.parts,
            coats=tuple(
                Coat(
                    name,
                    swatch_of(self.book, name),
                    _portions(self.book, name),
                    tuple(place for place, coating in one.films if coating == name),
                    self._palette(placed, one, name),
                )
                for name in names
            ),
            places=one.places,
            tool=one.step.tool,
            airbrush=placed.airbrush,
            start=piece.start,
            end=piece.end,
            piece=number,
            pieces=len(placed.pieces),
            reason=placed.reason,
            cautions=cautions(one.step, self._families(one), self.book.room.volume_m3),
            logged=placed.logged,
        )

    def _palette(self, placed: Placement, one: Pass, name: str) -> Load | None:
        """Return what a pass takes of a colour that is put out and not sprayed."""
        if placed.logged or one.step.tool in SPRAYED:
            return None
        return fill(self.book, name, (one,), span=(placed.start, placed.end))

    def _families(self, one: Pass) -> Iterator[Family]:
        """Yield the families in the cup, and for wiping those of the films wiped."""
        for _, name in one.films:
            mix = self.book.mix(name)
            for portion in mix.portions if mix else ():
                yield self.book.coating(portion.coating).family
            yield self.book.coating(name).family
        if one.step.stage is Stage.WIPE:
            for place in one.places:
                spot = self.table.top.get((one.key.project, one.key.model, place))
                if spot is not None:
                    yield self.table.film(*spot).coating.family

    def _bench(self, interval: Interval) -> Iterator[BenchRow]:
        for work in self.plan.bench:
            if work.interval.overlaps(interval):
                yield self._bench_row(work)

    def _bench_row(self, work: BenchWork) -> BenchRow:
        return BenchRow(
            kind=work.kind,
            airbrush=work.airbrush,
            coating=work.coating,
            swatch=swatch_of(self.book, work.coating) if work.coating else "",
            portions=_portions(self.book, work.coating),
            serves=work.serves,
            start=work.interval.start,
            end=work.interval.end,
            load=self._filled(work),
        )

    def _filled(self, work: BenchWork) -> Load | None:
        """Return what is filled in at a loading or change."""
        if work not in self.served:
            return None
        sprayed = self.served[work]
        return filled(
            self.book,
            {one.key: self._pass(one.key) for one in sprayed if one.key in self.placed},
            work,
            sprayed,
        )

    def drying(self, interval: Interval) -> list[Drying]:
        """Return each film's next opening that still lies ahead, soonest first.

        Films laid in the stretch count where they outlast it.
        """
        found: dict[tuple[PassKey, str], Drying] = {}
        for film in (*self._awaited(), *self._last_coats()):
            laid_before = film.since <= self.now
            if film.since > interval.end:
                continue
            opens = FOREVER if film.opens is None else film.opens
            if opens <= (self.now if laid_before else interval.end):
                continue
            known = found.get((film.key, film.coating))
            if known is None or opens < (FOREVER if known.opens is None else known.opens):
                found[film.key, film.coating] = film
        return sorted(
            found.values(),
            key=lambda film: (film.opens is None, film.opens or 0, film.key, film.coating),
        )

    def _awaited(self) -> Iterator[Drying]:
        """Yield the films that a pass still to be begun waits for."""
        for number, gate in enumerate(self.problem.gates):
            before = self.placed.get(gate.before)
            after = self.placed.get(gate.after)
            if not gate.place or before is None or (after and after.start <= self.now):
                continue
            window, opens = self._planned_window(number, after)
            if window is None or window.window.opens is None:
                continue
            yield self._film(
                gate.before, gate.place, window.window.opens.state, opens, waiting=gate.after
            )

    def _last_coats(self) -> Iterator[Drying]:
        """Yield the top films that must only become dry-to-handle."""
        for (project, model, place), (index, _) in self.table.top.items():
            key = self.problem.activities[index].one.key
            wet = self.table.wet[project, model, place]
            opens = None if wet >= FOREVER else wet
            yield self._film(key, place, State.DRY_TO_HANDLE, opens, waiting=None)

    def _film(
        self,
        key: PassKey,
        place: str,
        state: State | None,
        opens: int | None,
        *,
        waiting: PassKey | None,
    ) -> Drying:
        films = self._pass(key).films
        coating = dict(films)[place]
        return Drying(
            key=key,
            coating=coating,
            swatch=swatch_of(self.book, coating),
            places=tuple(name for name, other in films if other == coating),
            state=state,
            since=self.placed[key].end,
            opens=opens,
            waiting=waiting,
        )

    def _planned_window(
        self, number: int, after: Placement | None
    ) -> tuple[Opening | None, int | None]:
        """Return the window that the plan uses, or the next one ahead, and its opening."""
        windows = self.table.windows(number)
        moment = after.start if after else self.now
        for window in windows:
            if moment < window.closes:
                return window, None if window.opens >= FOREVER else window.opens
        return None, None

    def closing(self, interval: Interval) -> list[Closing]:
        """Return the windows that run at ``now`` or begin to run in the stretch."""
        found: dict[tuple[PassKey, PassKey], Closing] = {}
        for number, gate in enumerate(self.problem.gates):
            before, after = self.placed.get(gate.before), self.placed.get(gate.after)
            if not gate.closes or before is None or before.start >= interval.end:
                continue
            if after and (after.end if gate.closing is Bound.END else after.start) <= self.now:
                continue
            window, _ = self._planned_window(number, after)
            if window is None or not self.now < window.closes < FOREVER:
                continue
            known = found.get((gate.before, gate.after))
            if known is None or window.closes < known.closes:
                found[gate.before, gate.after] = Closing(
                    key=gate.before,
                    waiting=gate.after,
                    bound=gate.closing,
                    since=before.start,
                    closes=window.closes,
                    planned=after.start if after else None,
                    why=gate.why,
                )
        return sorted(found.values(), key=lambda one: (one.closes, one.waiting))

    def _pass(self, key: PassKey) -> Pass:
        return self.problem.activities[self.problem.index[key]].one


def swatch_of(book: Book, name: str) -> str:
    """Return the colour of a coating or mix, as "#rrggbb"."""
    mix = book.mix(name)
    return (mix.swatch if mix else None) or book.coating(name).swatch


def _portions(book: Book, name: str) -> tuple[Portion, ...]:
    mix = book.mix(name)
    return mix.portions if mix else ()
