"""What a run sheet says of films: which dry, and which windows close."""

from __future__ import annotations

from collections.abc import Iterator

from planner.schedule.partial_schedule import FOREVER
from planner.tonight.replayed_plan import ReplayedPlan
from planner.tonight.run_sheet_rows import Closing, DryingFilm
from planner.tonight.work_rows import swatch_of
from planner.values.coating import State
from planner.values.moment import Interval
from planner.values.plan import PassKey
from planner.values.step import Bound


def drying_of(laid: ReplayedPlan, interval: Interval) -> list[DryingFilm]:
    """Return each film's next opening that still lies ahead, soonest first.

    Films laid in the stretch count where they outlast it.
    """
    found: dict[tuple[PassKey, str], DryingFilm] = {}
    for film in (*_awaited(laid), *_last_coats(laid)):
        laid_before = film.since <= laid.now
        if film.since > interval.end:
            continue
        opens = FOREVER if film.opens is None else film.opens
        if opens <= (laid.now if laid_before else interval.end):
            continue
        known = found.get((film.key, film.coating))
        if known is None or opens < (FOREVER if known.opens is None else known.opens):
            found[film.key, film.coating] = film
    return sorted(
        found.values(),
        key=lambda film: (film.opens is None, film.opens or 0, film.key, film.coating),
    )


def _awaited(laid: ReplayedPlan) -> Iterator[DryingFilm]:
    """Yield the films that a pass still to be begun waits for."""
    for number, gate in enumerate(laid.problem.gates):
        before = laid.placed.get(gate.before)
        after = laid.placed.get(gate.after)
        if not gate.place or before is None or (after and after.start <= laid.now):
            continue
        window = laid.window(number)
        if window is None or window.window.opens is None:
            continue
        opens = None if window.opens >= FOREVER else window.opens
        yield _film(
            laid, gate.before, gate.place, window.window.opens.state, opens, waiting=gate.after
        )


def _last_coats(laid: ReplayedPlan) -> Iterator[DryingFilm]:
    """Yield the top films that must only become dry-to-handle."""
    for (project, model, place), (index, _) in laid.table.top.items():
        key = laid.problem.activities[index].pass_.key
        wet = laid.table.wet[project, model, place]
        opens = None if wet >= FOREVER else wet
        yield _film(laid, key, place, State.DRY_TO_HANDLE, opens, waiting=None)


def _film(
    laid: ReplayedPlan,
    key: PassKey,
    place: str,
    state: State | None,
    opens: int | None,
    *,
    waiting: PassKey | None,
) -> DryingFilm:
    films = laid.of(key).films
    coating = dict(films)[place]
    return DryingFilm(
        key=key,
        coating=coating,
        swatch=swatch_of(laid.book, coating),
        places=tuple(name for name, other in films if other == coating),
        state=state,
        since=laid.placed[key].end,
        opens=opens,
        waiting=waiting,
    )


def closing_of(laid: ReplayedPlan, interval: Interval) -> list[Closing]:
    """Return the windows that run at ``now`` or begin to run in the stretch."""
    found: dict[tuple[PassKey, PassKey], Closing] = {}
    for number, gate in enumerate(laid.problem.gates):
        before, after = laid.placed.get(gate.before), laid.placed.get(gate.after)
        if not gate.closes or before is None or before.start >= interval.end:
            continue
        if after and (after.end if gate.closing is Bound.END else after.start) <= laid.now:
            continue
        window = laid.window(number)
        if window is None or not laid.now < window.closes < FOREVER:
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
    return sorted(found.values(), key=lambda closing: (closing.closes, closing.waiting))
