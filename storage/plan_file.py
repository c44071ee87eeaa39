"""The plan as a JSON document: the contract of ``tackfree plan --json``.

Every time is ISO 8601 with the local offset of the book's zone.  Reading
takes plans that were made elsewhere too: only what a plan cannot do without
must be there; the judge decides what it is worth.
"""

from __future__ import annotations

from dataclasses import asdict, dataclass
from datetime import datetime
from typing import Any

from planner.bench import BenchCalendar
from planner.passes import Pass, expand_all
from planner.schedule.missed_dates import missed_dates
from planner.schedule.reason_wording import sentence
from planner.values.book import Book
from planner.values.moment import Interval, aware, minute_of, moment_of, zone_named
from planner.values.plan import (
    BenchKind,
    BenchWork,
    Cause,
    Clash,
    Cost,
    PassKey,
    Placement,
    Plan,
    ProvenBound,
    Reason,
    Status,
    Unplaced,
)
from planner.values.refusal import Refused, demand
from storage.strict import build, read_json


def dump_plan(plan: Plan, book: Book) -> dict[str, Any]:
    """Return the plan as JSON data.

    ``finish`` is the latest of ``finishes``, ``evenings`` the number of
    stretches of bench time with work in them, ``late`` the projects and
    models that miss their date, ``input`` the digest of what was planned.
    """
    clock = _Clock(book)
    passes = {one.key: one for one in expand_all(book)}
    return {
        "status": plan.status.value,
        "now": clock.iso(plan.now),
        "input": plan.digest,
        "finish": clock.iso(max((end for _, end in plan.finishes), default=plan.now)),
        "finishes": [{"project": name, "at": clock.iso(end)} for name, end in plan.finishes],
        "models": [
            {"project": project, "model": model, "at": clock.iso(end)}
            for project, model, end in plan.model_finishes
        ],
        "late": _late(plan, book, clock),
        "evenings": plan.cost.stretches,
        "setup_minutes": plan.cost.setup_minutes,
        "cost": asdict(plan.cost),
        "bound": [asdict(bound) for bound in plan.bounds],
        **({"conflict": [asdict(one) for one in plan.conflict]} if plan.conflict else {}),
        "placements": [
            _placement(placed, passes.get(placed.key), clock) for placed in plan.placements
        ],
        "bench": [_bench(work, clock) for work in plan.bench],
        "unplaced": [{**_key(one.key), "why": one.why} for one in plan.unplaced],
    }


class _Clock:
    """Minutes as the person's clock and calendar show them."""

    def __init__(self, book: Book) -> None:
        self.zone = zone_named(book.bench_time.zone)
        self.calendar = BenchCalendar(book.bench_time)

    def iso(self, minute: int) -> str:
        return moment_of(minute, self.zone).isoformat()

    def evening(self, minute: int) -> str:
        """Return the date on which the stretch of bench time around a minute begins."""
        stretch = self.calendar.stretch_at(minute)
        return (stretch.on if stretch else moment_of(minute, self.zone).date()).isoformat()


def _placement(placed: Placement, one: Pass | None, clock: _Clock) -> dict[str, Any]:
    reason = placed.reason
    return {
        **_key(placed.key),
        "parts": list(one.parts) if one else [],
        "stage": one.step.stage.value if one else "",
        "start": clock.iso(placed.start),
        "end": clock.iso(placed.end),
        "evening": clock.evening(placed.start),
        "pieces": [_interval(piece, clock) for piece in placed.pieces],
        "airbrush": placed.airbrush,
        "logged": placed.logged,
        **({"location": placed.location} if placed.location else {}),
        "reason": {
            "cause": reason.cause.value,
            "until": None if reason.until is None else clock.iso(reason.until),
            "about": reason.about,
            "detail": reason.detail,
            "text": sentence(reason, clock.zone),
        },
    }


def _bench(work: BenchWork, clock: _Clock) -> dict[str, Any]:
    return {
        "kind": work.kind.value,
        **_interval(work.interval, clock),
        "airbrush": work.airbrush,
        "coating": work.coating,
        "serves": _key(work.serves) if work.serves else None,
    }


def _late(plan: Plan, book: Book, clock: _Clock) -> list[dict[str, Any]]:
    return [
        {
            "project": one.project,
            **({"model": one.model} if one.model else {}),
            "target": one.target.isoformat(),
            "minutes": one.minutes,
        }
        for one in missed_dates(book, clock.calendar, plan)
    ]


def _interval(interval: Interval, clock: _Clock) -> dict[str, str]:
    return {"start": clock.iso(interval.start), "end": clock.iso(interval.end)}


def _key(key: PassKey) -> dict[str, Any]:
    return {"project": key.project, "model": key.model, "step": key.step, "coat": key.coat}


# --- reading: the shape of the document, entry by entry ------------------------------------


@dataclass(frozen=True, kw_only=True)
class _Key:
    project: str
    model: str
    step: str
    coat: int = 1

    @property
    def key(self) -> PassKey:
        return PassKey(self.project, self.model, self.step, self.coat)


@dataclass(frozen=True, kw_only=True)
class _Times:
    start: datetime
    end: datetime

    def __post_init__(self) -> None:
        aware(self.start, "start")
        aware(self.end, "end")
        demand(self.start < self.end, "end", "must lie after start")

    @property
    def interval(self) -> Interval:
        return Interval(minute_of(self.start), minute_of(self.end))


@dataclass(frozen=True, kw_only=True)
class _Reason:
    cause: Cause
    until: datetime | None = None
    about: str = ""
    detail: str = ""
    text: str = ""

    def __post_init__(self) -> None:
        if self.until is not None:
            aware(self.until, "until")

    @property
    def reason(self) -> Reason:
        until = None if self.until is None else minute_of(self.until)
        return Reason(self.cause, until, self.about, self.detail)


@dataclass(frozen=True, kw_only=True)
class _Placement(_Key, _Times):
    parts: tuple[str, ...] = ()
    stage: str = ""
    evening: str = ""
    pieces: tuple[_Times, ...] = ()
    airbrush: str = ""
    logged: bool = False
    location: str = ""
    reason: _Reason = _Reason(cause=Cause.AT_ONCE)

    def __post_init__(self) -> None:
        super().__post_init__()
        if self.pieces:
            demand(self.pieces[0].start == self.start, "pieces", "must begin at start")
            demand(self.pieces[-1].end == self.end, "pieces", "must finish at end")

    @property
    def placement(self) -> Placement:
        pieces = tuple(piece.interval for piece in self.pieces) or (self.interval,)
        return Placement(
            self.key, pieces, self.airbrush, self.reason.reason, self.logged, self.location
        )


@dataclass(frozen=True, kw_only=True)
class _Bench(_Times):
    kind: BenchKind
    airbrush: str = ""
    coating: str = ""
    serves: _Key | None = None

    @property
    def work(self) -> BenchWork:
        serves = self.serves.key if self.serves else None
        return BenchWork(self.kind, self.interval, self.airbrush, self.coating, serves)


@dataclass(frozen=True, kw_only=True)
class _Unplaced(_Key):
    why: str = ""


@dataclass(frozen=True, kw_only=True)
class _Finish:
    project: str
    at: datetime

    def __post_init__(self) -> None:
        aware(self.at, "at")


@dataclass(frozen=True, kw_only=True)
class _ModelFinish(_Finish):
    model: str


@dataclass(frozen=True, kw_only=True)
class _Late:
    project: str
    model: str = ""
    target: str = ""
    minutes: int = 0


@dataclass(frozen=True, kw_only=True)
class _Cost:
    unplaced: int
    late: int
    finish: int
    stretches: int
    setup_minutes: int
    moved: int = 0


@dataclass(frozen=True, kw_only=True)
class _Bound:
    level: str
    value: int
    proof: str = ""


@dataclass(frozen=True, kw_only=True)
class _Clash:
    what: str
    relax: str = ""


@dataclass(frozen=True, kw_only=True)
class _Document:
    now: datetime
    placements: tuple[_Placement, ...]
    bench: tuple[_Bench, ...] = ()
    unplaced: tuple[_Unplaced, ...] = ()
    status: Status = Status.FEASIBLE
    finish: datetime | None = None
    finishes: tuple[_Finish, ...] = ()
    models: tuple[_ModelFinish, ...] = ()
    late: tuple[_Late, ...] = ()
    evenings: int = 0
    setup_minutes: int = 0
    cost: _Cost | None = None
    bound: tuple[_Bound, ...] = ()
    conflict: tuple[_Clash, ...] = ()
    input: str = ""

    def __post_init__(self) -> None:
        aware(self.now, "now")


def load_plan(data: bytes) -> Plan:
    """Read a plan, ours or not.

    The cost, where the document gives none, is what its entries show; the
    judge computes its own.

    Raises
    ------
    Refused
        For bytes that are no such document, with the path to the fault.
    """
    raw = read_json(data)
    if not isinstance(raw, dict):
        raise Refused("", 'must be an object {"now": ..., "placements": [...]}; this is no plan')
    # What moved against a plan before it, and how sure it is, is told and is no part of the plan.
    told = ("moved", "gained", "chance")
    own = {name: value for name, value in raw.items() if name not in told}
    read = build(own, _Document)
    return Plan(
        now=minute_of(read.now),
        placements=tuple(entry.placement for entry in read.placements),
        bench=tuple(entry.work for entry in read.bench),
        unplaced=tuple(Unplaced(entry.key, entry.why) for entry in read.unplaced),
        status=read.status,
        cost=_cost(read),
        finishes=tuple((entry.project, minute_of(entry.at)) for entry in read.finishes),
        bounds=tuple(ProvenBound(entry.level, entry.value, entry.proof) for entry in read.bound),
        digest=read.input,
        model_finishes=tuple((one.project, one.model, minute_of(one.at)) for one in read.models),
        conflict=tuple(Clash(entry.what, entry.relax) for entry in read.conflict),
    )


def _cost(read: _Document) -> Cost:
    if read.cost is not None:
        return Cost(**asdict(read.cost))
    ends = [entry.end for entry in read.placements] + [entry.at for entry in read.finishes]
    now = minute_of(read.now)
    return Cost(
        unplaced=len(read.unplaced),
        late=sum(entry.minutes for entry in read.late),
        finish=max([minute_of(end) for end in ends], default=now) - now,
        stretches=read.evenings,
        setup_minutes=read.setup_minutes,
    )
