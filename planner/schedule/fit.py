"""Where a pass fits next on the table: gates, calendar, airbrush, drying places."""

from __future__ import annotations

from dataclasses import dataclass

from planner.bench import AIRED, Stretch
from planner.schedule.partial_schedule import EMPTY, FOREVER, Cup, PartialSchedule
from planner.schedule.problem import Activity
from planner.values.gear import Airbrush
from planner.values.plan import BenchKind
from planner.values.step import Bound, Tool

DRY_RUNS = 12  # openings and closings settle in two or three rounds
STRETCHES_TRIED = 120  # what does not fit in so many evenings will not fit at all


@dataclass(slots=True)  # not frozen: that would cost as much as finding it
class Fit:
    """The next possible place of (a piece of) a pass.

    ``hands`` is when hands are first needed for it, and ``free`` when they
    are free again; ``start`` and ``end`` bound the work itself.  ``cleans``
    says that a cup is emptied at ``hands``; preparation and ``setup`` come
    right before the work.
    """

    index: int
    stretch: Stretch
    hands: int
    start: int
    end: int
    free: int
    prepare: int
    airbrush: str
    setup: BenchKind | None
    setup_minutes: int
    cleans: bool
    last: bool

    @property
    def work(self) -> int:
        """When its preparation, set-up or work begins [min]."""
        return self.start - self.setup_minutes - self.prepare


def earliest_fit(table: PartialSchedule, index: int, time: int) -> Fit | None:
    """Return the earliest fit of an activity from ``time`` on.

    All passes that it waits for must be placed.  None if there is none, for
    want of bench time, an open window or a film that dries.
    """
    for _ in range(STRETCHES_TRIED):
        opens = gates_open(table, index, time)
        if opens is None:
            return None
        stretch = table.problem.calendar.next_stretch(opens)
        if stretch is None:
            return None
        fit = fit_in(table, index, stretch, time)
        if fit is not None:
            return fit
        time = stretch.interval.end
    return None


def gates_open(table: PartialSchedule, index: int, time: int) -> int | None:
    """Return the first start ≥ ``time`` that gates, fingers and pins allow, or None.

    Bench time, tools and drying places are not looked at.
    """
    activity = table.problem.activities[index]
    settled = _settle(table, activity, time, activity.pass_.minutes)
    return None if settled is None else settled[0]


def fit_in(table: PartialSchedule, index: int, stretch: Stretch, time: int) -> Fit | None:
    """Return the earliest fit of an activity in one stretch, from ``time`` on, or None.

    Where a gate has a best moment, it is the earliest from that on, if the
    stretch has room for it then (definition 6a).
    """
    if table.problem.activities[index].aims:
        aimed = _fit_in(table, index, stretch, time, aim=True)
        if aimed is not None:
            return aimed
    return _fit_in(table, index, stretch, time)


def _fit_in(
    table: PartialSchedule, index: int, stretch: Stretch, time: int, aim: bool = False
) -> Fit | None:
    activity = table.problem.activities[index]
    if activity.pass_.step.helper and stretch.people < 2:
        return None
    bound = activity.together and index not in table.left
    if bound and table.bound_to(index) not in (None, stretch):
        return None
    begin = max(time, stretch.interval.start)
    if activity.pass_.step.tool is Tool.AIRBRUSH:
        best = None
        for airbrush in table.problem.book.gear.airbrushes:
            fit = _spray(table, activity, stretch, begin, airbrush, aim)
            if fit is not None and (
                best is None or (fit.start, fit.setup_minutes) < (best.start, best.setup_minutes)
            ):
                best = fit
        return best
    return _by_hand(table, activity, stretch, begin, aim)


def _settle(
    table: PartialSchedule,
    activity: Activity,
    time: int,
    minutes: int,
    lead: int = 0,
    aim: bool = False,
) -> tuple[int, int] | None:
    """Return (start, preparation minutes) where every gate holds, or None.

    Hands are free from ``time`` on; between preparation and start lie
    ``lead`` minutes of set-up.
    """
    index, choosing = activity.index, activity.choosing
    alone = table.left_alone_until(index) if table.alone else 0
    if index in table.left:
        return max(time + lead, alone), 0
    floor = table.floor(index)
    fingers = table.fingers_from(index) if activity.fingers else 0
    if alone > fingers:  # noqa: PLR1730 - max() costs thrice as much
        fingers = alone
    if activity.whole:
        fingers = max(fingers, floor)  # its own films must bear fingers, too
    start = max(time + lead, fingers, floor)
    if activity.leaving:
        start = max(start, table.stays_until(index))
    if start >= FOREVER:
        return None
    if not choosing and activity.allowed is None:
        return start, 0
    prepare = 0
    for _ in range(DRY_RUNS):
        before = start
        for number in choosing:
            found = _through(table, number, start, minutes, lead, time, aim)
            if found is None:
                return None
            start = max(start, found[0])
            prepare = max(prepare, found[1])
        if prepare:  # preparing holds the unit as well
            start = max(start, max(time, fingers) + prepare + lead)
        pinned = _pinned(activity, start, minutes - activity.pass_.alone)
        if pinned is None:
            return None
        start = pinned
        if start == before:
            return start, prepare
        prepare = 0
    return None


def _through(
    table: PartialSchedule, number: int, start: int, minutes: int, lead: int, time: int, aim: bool
) -> tuple[int, int] | None:
    """Return (start, preparation) by which one gate lets a pass through, or None."""
    to_end = table.problem.gates[number].closing is Bound.END
    for opening in table.windows(number):
        prepare = opening.window.preparation_minutes
        begin = max(start, opening.best if aim else opening.opens)
        if prepare:
            begin = max(begin, max(opening.opens, time) + prepare + lead)
        if begin + minutes <= opening.closes if to_end else begin < opening.closes:
            return begin, prepare
    return None


def _pinned(activity: Activity, start: int, minutes: int) -> int | None:
    if activity.allowed is None:
        return start
    for interval in sorted(activity.allowed):
        begin = max(start, interval.start)
        if begin + minutes <= interval.end:
            return begin
    return None


def _by_hand(
    table: PartialSchedule, activity: Activity, stretch: Stretch, begin: int, aim: bool
) -> Fit | None:
    """Fit work without an airbrush; a loaded cup is cleaned first where it must be."""
    loaded = _loaded(table)
    for cleans in (False, True) if loaded else (False,):
        opens = begin + _cleaning(table, loaded) if cleans else begin
        found = _handwork(table, activity, stretch, opens, aim)
        if found is None:
            continue
        start, end, prepare, last = found
        free = end - activity.pass_.alone
        if loaded and not cleans and not _all_keep(table, loaded, loaded, stretch, free):
            continue
        hands = begin if cleans else start - prepare
        return Fit(
            activity.index, stretch, hands, start, end, free, prepare, "", None, 0, cleans, last
        )
    return None


def _handwork(
    table: PartialSchedule, activity: Activity, stretch: Stretch, begin: int, aim: bool
) -> tuple[int, int, int, bool] | None:
    """Return (start, end, preparation, whether it is the last piece) in a stretch."""
    settled = _clear_start(table, activity, stretch, begin, 0, 0, aim)
    if settled is None:
        return None
    start, prepare = settled
    left = table.left.get(activity.index, activity.pass_.hands)
    room = stretch.interval.end - start
    if activity.life is not None:
        room = min(room, activity.life)  # what was mixed for this piece
    fair = table.problem.fair_until(activity.index, start, start + left) - start
    cut = left > room or activity.smells or fair < left
    least = activity.pass_.step.least_piece if cut else None
    if least:
        room = min(room, fair)
    elif fair < left:
        return None
    if least and activity.smells:
        room = min(room, _unsmelt(table, start, left))
    if left <= room:
        return start, start + left + activity.pass_.alone, prepare, True
    if least and not _tied(table, activity):
        piece = min(room, left - least)
        if piece >= least:
            return start, start + piece, prepare, False
    return None


def _tied(table: PartialSchedule, activity: Activity) -> bool:
    """Tell whether a closing gate touches the pass, so that it cannot be split."""
    problem = table.problem
    return any(problem.gates[n].closes for n in activity.gates) or any(
        problem.gates[n].closes for n in problem.gates_from[activity.index]
    )


def _spray(
    table: PartialSchedule,
    activity: Activity,
    stretch: Stretch,
    begin: int,
    airbrush: Airbrush,
    aim: bool,
) -> Fit | None:
    """Fit a sprayed coat with one airbrush, its set-up before and its cleaning after."""
    loaded = _loaded(table)
    others = [name for name in loaded if name != airbrush.name]
    cup = table.cups.get(airbrush.name, EMPTY)
    after = airbrush.clean_minutes + _cleaning(table, others)
    for cleans in _ways(table, airbrush, cup, activity.pass_.load):
        opens = begin + (airbrush.clean_minutes if cleans else 0)
        held = EMPTY if cleans else cup
        kind, minutes = setup_for(table, airbrush, held, activity.pass_.load)
        found = _clear_start(table, activity, stretch, opens, minutes, after, aim)
        if found is None:
            continue
        start, prepare = found
        end = start + activity.pass_.minutes
        mixed = held.mixed if kind is None else start - minutes
        if (
            end + after > stretch.interval.end
            or (activity.life is not None and end - mixed > activity.life)
            or (held.coating and start - minutes - held.used > airbrush.idle_limit_minutes)
            or (others and not _all_keep(table, others, [airbrush.name, *others], stretch, end))
        ):
            continue
        hands = begin if cleans else start - minutes - prepare
        name = airbrush.name
        return Fit(
            activity.index,
            stretch,
            hands,
            start,
            end,
            end,
            prepare,
            name,
            kind,
            minutes,
            cleans,
            True,
        )
    return None


def _ways(table: PartialSchedule, airbrush: Airbrush, cup: Cup, load: str) -> tuple[bool, ...]:
    """Return whether to clean the cup first, the cheaper way before the other."""
    if not cup.coating:
        return (False,)
    anew = airbrush.clean_minutes + airbrush.load_minutes
    return (True, False) if anew < setup_for(table, airbrush, cup, load)[1] else (False, True)


def _clear_start(
    table: PartialSchedule,
    activity: Activity,
    stretch: Stretch,
    opens: int,
    lead: int,
    after: int,
    aim: bool,
) -> tuple[int, int] | None:
    """Return (start, preparation) with gates, quiet, daylight and drying places all clear.

    ``lead`` and ``after`` are the set-up and cleaning minutes around it.
    """
    minutes = table.left.get(activity.index, activity.pass_.minutes)
    time = opens
    for _ in range(DRY_RUNS):
        settled = _settle(table, activity, time, minutes, lead, aim)
        if settled is None or settled[0] >= stretch.interval.end:
            return None
        start, prepare = settled
        later = start
        if activity.wet:
            later = max(later, table.place_free_from(activity.index, start))
        if activity.light:
            later = max(later, _daylight(table, start, minutes - activity.pass_.alone))
        if table.problem.fit_airs[activity.index]:
            least = min(minutes - activity.pass_.alone, activity.pass_.step.least_piece or minutes)
            later = max(later, _fair(table, activity.index, start, least, stretch.interval.end))
        if activity.loud:
            later = max(later, _silence(table, start - lead, start + minutes + after) + lead)
        if activity.smells:
            least = min(minutes, activity.pass_.step.least_piece or minutes)
            later = max(later, _silence(table, start, start + least, AIRED))
        if later == start:
            return start, prepare
        time = later - lead - prepare
    return None


def _fair(table: PartialSchedule, index: int, start: int, minutes: int, latest: int) -> int:
    """Return the first start ≥ ``start`` in air that lets it be laid (definition 10a)."""
    return table.problem.fair_from(index, start, minutes, max(start, latest))


def _silence(table: PartialSchedule, start: int, end: int, aired: int = 0) -> int:
    """Return the first minute ≥ ``start`` from which there may be noise until ``end``.

    A smell may be there until ``end`` where the room is ``aired`` after it [min].
    """
    quiet = table.problem.calendar.quiet(start, end, aired)
    return quiet[-1].end if quiet else start


def _unsmelt(table: PartialSchedule, start: int, minutes: int) -> int:
    """Return how many of ``minutes`` from ``start`` may smell before the room must be aired."""
    quiet = table.problem.calendar.quiet(start, start + minutes, AIRED)
    return quiet[0].start - start if quiet else minutes


def _daylight(table: PartialSchedule, start: int, minutes: int) -> int:
    """Return the first start ≥ ``start`` in daylight, for what needs it."""
    light = table.problem.calendar.daylight(start, start + 2 * 1440)
    if light is None:
        return start
    for interval in light:
        begin = max(start, interval.start)
        if begin + minutes <= interval.end:
            return begin
    return start + 2 * 1440


def setup_for(
    table: PartialSchedule, airbrush: Airbrush, cup: Cup, coating: str
) -> tuple[BenchKind | None, int]:
    """Return the set-up, and its minutes, that brings a coating into a cup."""
    if cup.coating == coating:
        return None, 0
    if not cup.coating:
        return BenchKind.LOAD, airbrush.load_minutes
    family = table.problem.coatings
    same = family[cup.coating].family is family[coating].family
    minutes = airbrush.change_same_family if same else airbrush.change_other_family
    return BenchKind.CHANGE, minutes


def _loaded(table: PartialSchedule) -> list[str]:
    return [name for name, cup in table.cups.items() if cup.coating]


def _cleaning(table: PartialSchedule, names: list[str]) -> int:
    return sum([table.problem.airbrushes[name].clean_minutes for name in names]) if names else 0


def _all_keep(
    table: PartialSchedule, names: list[str], loaded: list[str], stretch: Stretch, end: int
) -> bool:
    """Tell whether these loaded cups can stand until ``end`` and be cleaned afterwards.

    Of all that are loaded each is taken to be cleaned last.
    """
    cleaned = end + _cleaning(table, loaded)
    if cleaned > stretch.interval.end or table.problem.calendar.quiet(end, cleaned):
        return False
    airbrushes = table.problem.airbrushes
    return all(
        cleaned - airbrushes[name].clean_minutes - table.cups[name].used
        <= airbrushes[name].idle_limit_minutes
        for name in names
    )
