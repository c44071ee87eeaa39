"""Written gates that open long before the film below allows the work.

Gates meet (definition 6a): the plan waits for the film whatever was written,
so that such a gate says what nobody keeps.  The soonest that the film may be
ready is looked at, laid at any hour of a workday.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import datetime

from planner.cure import Band, Cure, Film, film_um
from planner.layers.coat_stack import Layer, Moment
from planner.layers.customary import released
from planner.layers.finding import Finding, Mend, Scene
from planner.layers.overcoat_table import LayerVerdict
from planner.layers.requirement import requirement
from planner.layers.step_edits import DropGate
from planner.values.coating import Clock, Mark, State
from planner.values.message import Message, message
from planner.values.moment import minute_of, zone_named
from planner.values.step import Gate

MANY_TIMES, SLACK = 2, 60
"""A gate is told of where the film takes twice as long and an hour more: assumed [-], [min]."""
HOURS = range(0, 24, 3)
HOUR = 60


@dataclass(frozen=True)
class _Clash:
    """What a gate says, and what its film needs at the soonest [min]."""

    layer: Layer
    state: State
    written: int
    needs: int
    closed: bool


def early_gates(scene: Scene) -> Iterator[Finding]:
    """Yield written gates that open, or close for good, long before the film is ready."""
    cure = Cure(scene.book.room, zone_named(scene.book.bench_time.zone))
    for moment in scene.moments:
        for gate in moment.step.gates:
            clashes: dict[_Clash, list[str]] = defaultdict(list)
            for place in moment.first.places:
                clash = _clash(scene, moment, gate, place, cure)
                if clash is not None:
                    clashes[clash].append(place)
            if clashes:
                worst = max(clashes, key=lambda one: (one.closed, one.needs))
                yield _finding(scene, moment, gate, worst, clashes[worst])


def _clash(scene: Scene, moment: Moment, gate: Gate, place: str, cure: Cure) -> _Clash | None:
    stack = moment.stack(place)
    if not stack or stack[-1].step.id != gate.after or released(moment.step, gate.after):
        return None
    top = stack[-1]
    named = moment.laid.get(place)
    laid = scene.book.coating(named) if named else None
    asks = requirement(moment.step, laid, top.coating, top.step)
    if asks is None or (asks.state is State.DRY_TO_RECOAT and top.coating.recoat):
        return None  # a label's own windows stand for it
    opens = [window.opens for window in gate.windows]
    if not all(_of_clock(mark) for mark in opens):
        return None
    written = max((mark.minutes or 0 for mark in opens if mark is not None), default=0)
    closes = gate.windows[-1].closes
    needs = _soonest(scene, top, asks.state, cure)
    if needs is None:
        return None
    last = closes.minutes if closes is not None and _of_clock(closes) else None
    if last is not None and last <= needs:
        return _Clash(top, asks.state, last, needs, closed=True)
    if written and needs >= MANY_TIMES * written + SLACK:
        return _Clash(top, asks.state, written, needs, closed=False)
    return None


def _of_clock(mark: Mark | None) -> bool:
    return mark is None or (mark.minutes is not None and mark.clock is Clock.ELAPSED)


def _soonest(scene: Scene, top: Layer, state: State, cure: Cure) -> int | None:
    """Return how long the film takes at the soonest [min]; None for never."""
    zone = zone_named(scene.book.bench_time.zone)
    found = []
    for name in (top.step.dries_in, *top.step.or_in):
        for hour in HOURS:
            laid = minute_of(datetime(2031, 1, 8, hour, tzinfo=zone))  # a Wednesday
            where = scene.book.room.location(name).name
            film = Film(top.coating, film_um(top.step, top.coating), where, laid)
            ready = cure.ready_at(film, state, Band.EARLY)
            if ready is not None:
                found.append(ready - laid)
    return min(found, default=None)


def _finding(scene: Scene, moment: Moment, gate: Gate, clash: _Clash, places: list[str]) -> Finding:
    layer, written, needs = clash.layer, _span(clash.written), _span(clash.needs)
    if clash.closed:
        why = message(
            "the gate written after {step} closes after {written}, but {coating} is {state} after "
            "{needs} at the soonest; no moment is left",
            step=gate.after,
            written=written,
            coating=layer.laid_as,
            state=clash.state,
            needs=needs,
        )
    else:
        why = message(
            "the gate written after {step} says {written}, but {coating} is {state} after {needs} "
            "at the soonest; the plan waits for the film",
            step=gate.after,
            written=written,
            coating=layer.laid_as,
            state=clash.state,
            needs=needs,
        )
    return scene.found(
        message("written gate against the film"),
        LayerVerdict.NEVER if clash.closed else LayerVerdict.ADVICE,
        moment,
        places,
        why,
        Mend(
            message("take the written gate off it"), (DropGate(scene.spot, moment.step.id, gate),)
        ),
    )


def _span(minutes: int) -> Message:
    """Return a time as people say it: "10 min", "9 h", "3 days"."""
    if minutes < 2 * HOUR:
        return message("{n} min", n=minutes)
    if minutes < 48 * HOUR:
        return message("{n} h", n=round(minutes / HOUR))
    return message("{n} days", n=round(minutes / (24 * HOUR)))
