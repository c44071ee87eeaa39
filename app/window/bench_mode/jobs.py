"""What there is to do in this stretch, one job after the other.  No Qt.

A plan knows neither what is in a cup now nor what has been prepared; the
memory of the table does, and what it makes needless is left out.
"""

from __future__ import annotations

from collections.abc import Collection, Iterable, Iterator, Mapping
from dataclasses import dataclass, replace

from app.window.plan_snapshot import PlanSnapshot
from planner.schedule.serial_schedule import LEAST_LEFT
from planner.tonight import BenchRow, Row, WorkRow
from planner.values.moment import minute_of
from planner.values.plan import BenchKind, PassKey
from planner.values.project import Logged
from planner.values.step import Tool

KEYS_FOR_PLACES = 9


@dataclass(frozen=True)
class Job:
    """One thing to do: a pass or a piece of it, or work on an airbrush or a film.

    ``entry`` is the logbook's, while a pass is under way; ``ticked`` its
    places that are done.  ``number`` tells loads of one colour apart.
    """

    row: Row
    entry: Logged | None = None
    number: int = 0

    @property
    def work(self) -> WorkRow | None:
        """The row, if it is a pass."""
        return self.row if isinstance(self.row, WorkRow) else None

    @property
    def set_up(self) -> BenchRow | None:
        """The row, if it is set-up."""
        return self.row if isinstance(self.row, BenchRow) else None

    @property
    def begun(self) -> int | None:
        """Minute at which it was begun."""
        return None if self.entry is None else minute_of(self.entry.start, up=False)

    @property
    def ticked(self) -> frozenset[str]:
        """Places ticked off."""
        return frozenset(self.entry.ticked if self.entry else ())

    @property
    def places(self) -> tuple[str, ...]:
        """Places to tick off, those of one part together."""
        row = self.work
        if row is None:
            return ()
        return tuple(
            place for part in row.parts for place in row.places if place.partition("/")[0] == part
        )

    @property
    def name(self) -> tuple[str, str, int]:
        """What stays the same of it when the plan is made anew."""
        if self.work is not None:
            return str(self.work.key), "", self.work.piece
        row = self.row
        assert isinstance(row, BenchRow)
        return f"{row.kind} {row.airbrush}", row.coating or str(row.serves or ""), self.number

    def goes_alone(self, now: int) -> bool:
        """Tell whether it is under way, and hands are not needed for it now."""
        row = self.work
        if row is None or self.entry is None or self.entry.end is not None:
            return False
        return row.goes_alone and row.free <= now < row.end - LEAST_LEFT


def entry_of(picture: PlanSnapshot, key: PassKey) -> Logged | None:
    """Return the logbook's entry of a pass."""
    wanted = (key.model, key.step, key.coat)
    log = picture.book.project(key.project).log
    return next((fact for fact in log if (fact.model, fact.step, fact.coat) == wanted), None)


def jobs_of(
    picture: PlanSnapshot, cups: Mapping[str, str], prepared: Collection[str] = (), now: int = 0
) -> tuple[Job, ...]:
    """Return what is left to do in the stretch of a picture, what is under way first."""
    jobs = list(_jobs(picture, dict(cups), prepared, max(now, picture.now)))
    return tuple(sorted(_numbered(jobs), key=lambda job: job.entry is None))


def in_turn(jobs: Iterable[Job], now: int) -> tuple[Job, ...]:
    """Return jobs so that what goes on alone steps back for what is begun before it ends."""
    found = list(jobs)
    for job in [job for job in found if job.goes_alone(now)]:
        found.remove(job)
        later = (at for at, item in enumerate(found) if item.row.start >= job.row.end)
        found.insert(next(later, len(found)), job)
    return tuple(found)


def _numbered(jobs: Iterable[Job]) -> Iterator[Job]:
    seen: set[tuple[str, str, int]] = set()
    for job in jobs:
        other = job
        while other.name in seen and other.work is None:
            other = replace(other, number=other.number + 1)
        seen.add(other.name)
        yield other


def _jobs(
    picture: PlanSnapshot, holds: dict[str, str], prepared: Collection[str], now: int
) -> Iterator[Job]:
    rows = [row for row in picture.sheet.rows if not _over(picture, row)]
    filled_for = {name: held for name, held in holds.items() if _takes(rows, name, held)}
    others = {name: held for name, held in holds.items() if name not in filled_for}
    yield from _cleaned(picture, others, rows, now)
    holds = {**filled_for, **others}
    for at, row in enumerate(rows):
        if isinstance(row, WorkRow):
            yield Job(row, entry_of(picture, row.key))
            if row.tool is Tool.AIRBRUSH and row.airbrush:
                holds[row.airbrush] = row.coats[0].coating
        elif row.kind is BenchKind.PREPARE:
            if str(row.serves) not in prepared:
                yield Job(row)
        elif row.kind is BenchKind.CLEAN:
            if holds.pop(row.airbrush, ""):
                yield Job(row)
        elif holds.get(row.airbrush) != row.coating:
            kind = BenchKind.CHANGE if holds.get(row.airbrush) else BenchKind.LOAD
            holds[row.airbrush] = row.coating
            yield Job(replace(row, kind=kind))
        yield from _cleaned(picture, holds, rows[at + 1 :], row.free)


def _cleaned(
    picture: PlanSnapshot, holds: dict[str, str], ahead: list[Row], at: int
) -> Iterator[Job]:
    """Yield the cleaning of each cup that would stand longer than it may."""
    for brush in picture.book.gear.airbrushes:
        if not holds.get(brush.name):
            continue
        use = next((row for row in ahead if row.airbrush == brush.name), None)
        if isinstance(use, BenchRow) and use.kind is BenchKind.CLEAN:
            continue
        if use is None or use.start - at > brush.idle_limit_minutes:
            del holds[brush.name]
            end = at + brush.clean_minutes
            yield Job(BenchRow(BenchKind.CLEAN, brush.name, "", "", (), None, at, end))


def _takes(rows: list[Row], airbrush: str, coating: str) -> bool:
    """Tell whether a cup holds what is sprayed next: filled early, it is not emptied again."""
    use = next((row for row in rows if row.airbrush == airbrush), None)
    if isinstance(use, WorkRow):
        return use.coats[0].coating == coating
    return use is not None and use.coating == coating


def _over(picture: PlanSnapshot, row: Row) -> bool:
    if not isinstance(row, WorkRow) or not row.logged:
        return False
    entry = entry_of(picture, row.key)
    return entry is None or entry.end is not None
