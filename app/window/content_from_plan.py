"""What the timeline shows, read off a plan.

No Qt and no pixels in here.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Iterator
from itertools import zip_longest

from app.service.pins import wishes_of
from app.window.strip_content import (
    Bracket,
    HeldColour,
    Lane,
    Piece,
    SetUp,
    Strip,
    StripColumn,
    Wedge,
)
from planner.evening.film_brake import marks
from planner.schedule.partial_schedule import FOREVER
from planner.tonight import swatch_of
from planner.tonight.replayed_plan import ReplayedPlan
from planner.values.coating import State
from planner.values.moment import Interval, moment_of
from planner.values.plan import PassKey, Placement

LOOK_AHEAD = 120 * 1440  # a date farther off than this adds no columns [min]


def strip_of(laid: ReplayedPlan) -> Strip:
    """Return everything that the timeline draws."""
    book, plan = laid.book, laid.plan
    lanes = _lanes(laid)
    lane_of = {(lane.project, lane.model, part): lane for lane in lanes for part in lane.parts}
    airbrushes = tuple(airbrush.name for airbrush in book.gear.airbrushes)
    pieces = tuple(_pieces(laid, lane_of))
    targets = tuple(
        (project.name, laid.calendar.day_end(project.target))
        for project in book.projects
        if project.active and project.target is not None
    )
    columns, free = _columns(laid, targets)
    return Strip(
        now=laid.now,
        zone=book.bench_time.zone,
        columns=columns,
        free=free,
        airbrushes=airbrushes,
        lanes=lanes,
        pieces=pieces,
        wedges=tuple(_wedges(laid, lanes)),
        brackets=tuple(_brackets(laid, lane_of)),
        set_ups=tuple(
            SetUp(
                work.kind,
                work.interval,
                airbrushes.index(work.airbrush) if work.airbrush in airbrushes else None,
                work.coating,
                swatch_of(book, work.coating) if work.coating else "",
                work.serves,
            )
            for work in plan.bench
        ),
        held=tuple(_held(laid, airbrushes)),
        targets=targets,
        finishes=plan.finishes,
        beyond=_beyond(laid, columns),
    )


def _lanes(laid: ReplayedPlan) -> tuple[Lane, ...]:
    """Group the parts of each model that the same passes touch, in order of the parts."""
    touched: dict[tuple[str, str, str], list[PassKey]] = defaultdict(list)
    for activity in laid.problem.activities:
        key = activity.pass_.key
        for name in activity.pass_.parts:
            touched[key.project, key.model, name].append(key)
    lanes: list[Lane] = []
    for project in laid.book.projects:
        for model in project.models if project.active else ():
            groups: dict[tuple[PassKey, ...], list[str]] = {}
            for part in model.parts:
                passes = tuple(touched[project.name, model.name, part.name])
                if passes:
                    groups.setdefault(passes, []).append(part.name)
            for members in groups.values():
                lanes.append(Lane(len(lanes), project.name, model.name, tuple(members)))
    return tuple(lanes)


def _pieces(laid: ReplayedPlan, lane_of: dict[tuple[str, str, str], Lane]) -> Iterator[Piece]:
    for key, placed in laid.placed.items():
        pass_ = laid.of(key)
        coatings = tuple(dict.fromkeys(coating for _, coating in pass_.films))
        lanes = {lane_of[key.project, key.model, part].index for part in pass_.parts}
        for number, interval in enumerate(placed.pieces, start=1):
            yield Piece(
                key=key,
                interval=interval,
                number=number,
                of=len(placed.pieces),
                lanes=tuple(sorted(lanes)),
                parts=pass_.parts,
                stage=pass_.step.stage,
                title=pass_.step.title,
                tool=pass_.step.tool,
                coating=coatings[0] if coatings else "",
                swatch=swatch_of(laid.book, coatings[0]) if coatings else "",
                coats=pass_.step.coats,
                airbrush=placed.airbrush,
                reason=placed.reason,
                logged=placed.logged,
                free=pass_.attended(interval).end,
                wishes=wishes_of(laid.book, key),
                marks=_marks(laid, key) if placed.logged else (),
            )


def _marks(laid: ReplayedPlan, key: PassKey) -> tuple[str, ...]:
    entry = laid.problem.logged.get(key)
    if entry is None:
        return ()
    return tuple(line.text for line in marks(laid.book.project(key.project), entry))


def _wedges(laid: ReplayedPlan, lanes: Iterable[Lane]) -> Iterator[Wedge]:
    of_model: dict[tuple[str, str], list[tuple[PassKey, Placement]]] = defaultdict(list)
    for key, placed in laid.placed.items():
        of_model[key.project, key.model].append((key, placed))
    for lane in lanes:
        for key, placed in of_model[lane.project, lane.model]:
            here = [film for film in laid.of(key).films if film[0].partition("/")[0] in lane.parts]
            if here:
                yield _wedge(laid, lane, key, placed, here)


def _wedge(
    laid: ReplayedPlan, lane: Lane, key: PassKey, placed: Placement, films: list[tuple[str, str]]
) -> Wedge:
    """Return the wedge of a pass in a lane, thinning for the first pass that waits for it."""
    waiting: tuple[int, PassKey] | None = None
    best: tuple[int, State | None] | None = None
    for number in laid.problem.gates_from[laid.problem.index[key]]:
        gate = laid.problem.gates[number]
        after = laid.placed.get(gate.after)
        if not gate.place or after is None:
            continue
        if not set(laid.of(gate.after).parts) & set(lane.parts):
            continue
        window = laid.window(number)
        if window is None or window.window.opens is None:
            continue
        found = (after.start, gate.after)
        opens = (window.opens, window.window.opens.state)
        if waiting is None or found < waiting:
            waiting, best = found, opens
        elif found == waiting and best is not None and opens[0] > best[0]:
            best = opens
    if waiting is None or best is None:
        spots = ((key.project, key.model, place) for place, _ in films)
        tops = [laid.table.wet.get(spot, placed.end) for spot in spots]
        state = State.DRY_TO_HANDLE
        top = all(
            laid.table.top.get((key.project, key.model, place), (-1, ""))[0]
            == laid.problem.index[key]
            for place, _ in films
        )
        if not top:  # buried without anything having waited for it
            film = laid.table.film(laid.problem.index[key], films[0][0])
            at = laid.problem.cure.ready_at(film, state)
            tops = [FOREVER if at is None else at]
        best = (max(tops), state)
    opens_at = None if best[0] >= FOREVER else best[0]
    return Wedge(
        key=key,
        lane=lane.index,
        coating=films[0][1],
        start=placed.end,
        opens=opens_at,
        state=best[1],
        waiting=waiting[1] if waiting else None,
        until=waiting[0] if waiting else None,
    )


def _brackets(laid: ReplayedPlan, lane_of: dict[tuple[str, str, str], Lane]) -> Iterator[Bracket]:
    found: dict[tuple[PassKey, PassKey], Bracket] = {}
    for number, gate in enumerate(laid.problem.gates):
        if not gate.closes or gate.before not in laid.placed:
            continue
        window = laid.window(number)
        if window is None or window.closes >= FOREVER:
            continue
        after = laid.of(gate.after)
        lane = lane_of[gate.after.project, gate.after.model, after.parts[0]].index
        known = found.get((gate.before, gate.after))
        if known is None or window.closes < known.at:
            found[gate.before, gate.after] = Bracket(
                gate.before, lane, gate.after, window.closes, gate.closing, gate.why
            )
    yield from found.values()


def _held(laid: ReplayedPlan, airbrushes: tuple[str, ...]) -> Iterator[HeldColour]:
    for number, name in enumerate(airbrushes):
        mine = sorted(
            (work for work in laid.plan.bench if work.airbrush == name),
            key=lambda work: work.interval.start,
        )
        for work, following in zip_longest(mine, mine[1:]):
            if not work.coating:
                continue
            end = following.interval.start if following else work.interval.end
            if end > work.interval.end:
                yield HeldColour(
                    number,
                    Interval(work.interval.end, end),
                    work.coating,
                    swatch_of(laid.book, work.coating),
                )


def _columns(
    laid: ReplayedPlan, targets: tuple[tuple[str, int], ...]
) -> tuple[tuple[StripColumn, ...], tuple[Interval, ...]]:
    """Return the stretches that hold work, or now, and the free ones between."""
    hands = [
        laid.of(key).attended(piece)
        for key, placed in laid.placed.items()
        for piece in placed.pieces
    ]
    hands += [work.interval for work in laid.plan.bench]
    start = min([laid.now, *(hand.start for hand in hands)])
    ends = [laid.now + 1440, *(hand.end for hand in hands)]
    ends += [finish for _, finish in laid.plan.finishes]
    ends += [at for _, at in targets if at - laid.now < LOOK_AHEAD]
    columns: list[StripColumn] = []
    free: list[Interval] = []
    outside = sorted(hands)
    zone = laid.calendar.zone
    for stretch in laid.calendar.stretches(start, max(ends)):
        inside = [interval for interval in outside if interval.overlaps(stretch.interval)]
        outside = [interval for interval in outside if not interval.overlaps(stretch.interval)]
        holds_now = stretch.interval.start <= laid.now < stretch.interval.end
        if inside or holds_now:
            columns.append(StripColumn(stretch.interval, stretch.on, stretch.people))
        else:
            free.append(stretch.interval)
    columns += [
        StripColumn(interval, moment_of(interval.start, zone).date(), 1)
        for interval in _merged(outside)
    ]
    return tuple(sorted(columns, key=lambda column: column.interval)), tuple(free)


def _beyond(laid: ReplayedPlan, columns: tuple[StripColumn, ...]) -> Interval | None:
    end = max((column.interval.end for column in columns), default=laid.now)
    following = laid.calendar.next_stretch(end)
    return following.interval if following else None


def _merged(intervals: Iterable[Interval]) -> list[Interval]:
    merged: list[Interval] = []
    for interval in sorted(intervals):
        if merged and interval.start <= merged[-1].end:
            merged[-1] = Interval(merged[-1].start, max(merged[-1].end, interval.end))
        else:
            merged.append(interval)
    return merged
