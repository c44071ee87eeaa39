"""What to do instead tonight where something is not ready, and what else takes a colour."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from planner.bench import Stretch
from planner.cure import Cure
from planner.evening.logged_films import laid
from planner.layers.requirement import WHILE_SOFT
from planner.schedule.fit import Fit, fit_in, gates_open
from planner.schedule.partial_schedule import FOREVER, PartialSchedule
from planner.schedule.placing import place
from planner.values.book import Book
from planner.values.plan import PassKey
from planner.values.step import Bound, Stage

SHORT = 15  # an evening of ten to fifteen minutes [min]
GOOD_FOR_SHORT = WHILE_SOFT | {Stage.TURN, Stage.MASK}
"""What a short evening is good for: nothing is loaded, mixed or cleaned for it."""


@dataclass(frozen=True)
class Other:
    """A pass that can be begun at ``start`` in this stretch, and takes until ``end`` [minutes].

    ``setup`` are the minutes of loading or changing that are in it.
    """

    key: PassKey
    stage: Stage
    parts: tuple[str, ...]
    start: int
    end: int
    setup: int


def instead(
    book: Book, now: int, *, cure: Cure | None = None, without: Iterable[PassKey] = ()
) -> tuple[Other, ...]:
    """Return what fits into the rest of this stretch, or of the next one, the soonest first.

    Only what has been logged is taken to be there.  Left out is what would
    make a window be missed: above all a wash with less than its wiping time
    left, and work that keeps hands from something that closes.  In a short
    evening what needs set-up comes last.
    """
    table = laid(book, now, cure)
    stretch = table.problem.calendar.next_stretch(now)
    if stretch is None:
        return ()
    left_out = set(without)
    found = []
    for activity in table.problem.activities:
        pass_ = activity.pass_
        if activity.index in table.end or pass_.key in left_out or activity.blocked:
            continue
        if any(before not in table.end for before in activity.before):
            continue
        fit = fit_in(table, activity.index, stretch, now)
        if fit is not None and fit.last and keeps_windows(table, fit, stretch):
            found.append(offer(table, fit))
    short = stretch.interval.end - max(now, stretch.interval.start) <= SHORT
    return tuple(
        sorted(
            found,
            key=lambda other: (
                short and other.stage not in GOOD_FOR_SHORT,
                other.start,
                other.key,
            ),
        )
    )


def leaves_time(book: Book, key: PassKey, now: int, *, cure: Cure | None = None) -> bool:
    """Tell whether what a pass opens a window for can still be done in time if it begins now.

    A wash begun too late in the evening cannot be wiped back before it sets.
    """
    table = laid(book, now, cure)
    index = table.problem.index.get(key)
    if index is None or index not in table.problem.closing_from:
        return True
    stretch = table.problem.calendar.next_stretch(now)
    if stretch is None:
        return False
    if any(before not in table.end for before in table.problem.activities[index].before):
        return True  # it is out of order, which is told by itself
    fit = fit_in(table, index, stretch, now)
    return fit is not None and keeps_windows(table, fit, stretch)


def offer(table: PartialSchedule, fit: Fit) -> Other:
    """Return a fit as what is offered."""
    pass_ = table.problem.activities[fit.index].pass_
    return Other(
        key=pass_.key,
        stage=pass_.step.stage,
        parts=pass_.parts,
        start=fit.start,
        end=fit.end,
        setup=fit.setup_minutes + fit.prepare,
    )


def keeps_windows(table: PartialSchedule, fit: Fit, stretch: Stretch) -> bool:
    """Tell whether work leaves time for all that closes: what it opens itself, and what runs."""
    trial = table.clone()
    place(trial, fit)
    for index in table.awaited - {fit.index}:
        if not table.time < _too_late(table, index) < FOREVER:
            continue  # never closes, or cannot be met any more as it is
        if fit.free >= _too_late(trial, index):
            return False
    begun = {
        table.problem.ends[number][1] for number in table.problem.closing_from.get(fit.index, ())
    }
    return all(_in_time(trial, index, fit.free, stretch) for index in begun)


def _too_late(table: PartialSchedule, index: int) -> int:
    """Return the first start that would miss a closing that runs, or FOREVER (definition 7)."""
    minutes = table.problem.activities[index].pass_.minutes
    bound = table.bound_to(index)
    late = bound.interval.end if bound else FOREVER
    for number in table.problem.activities[index].closing:
        if table.problem.ends[number][0] in table.end:
            openings = table.windows(number)
            closes = openings[-1].closes if openings else 0
            ends_by = table.problem.gates[number].closing is Bound.END and closes < FOREVER
            late = min(late, closes - minutes + 1 if ends_by else closes)
    return late


def _in_time(trial: PartialSchedule, index: int, free: int, stretch: Stretch) -> bool:
    """Tell whether what must follow has a place before its closing, in bench time."""
    activity = trial.problem.activities[index]
    late = _too_late(trial, index)
    if late >= FOREVER or any(before not in trial.end for before in activity.before):
        return True  # it never closes, or waits for more than this
    opens = gates_open(trial, index, free)
    if opens is None:
        return False
    while opens < late:
        here = trial.problem.calendar.next_stretch(opens)
        if here is None:
            return False
        start = max(opens, here.interval.start)
        if start < late and start + activity.pass_.hands <= here.interval.end:
            return True
        opens = here.interval.end
    return False


@dataclass(frozen=True)
class ColourTaker:
    """A pass of the same colour as the one in the cup.

    ``opens`` is when it may be begun, now or later; None while it waits for
    work that is not done, which ``waits_for`` names.
    """

    key: PassKey
    places: tuple[str, ...]
    opens: int | None
    waits_for: str

    def ready(self, now: int) -> bool:
        """Tell whether it could be done at once."""
        return self.opens is not None and self.opens <= now


def takers(
    book: Book, coating: str, now: int, *, cure: Cure | None = None
) -> tuple[ColourTaker, ...]:
    """Return what else takes a colour: every vehicle, loose part and project, ready ones first.

    ``coating`` is a coating or mix by name.
    """
    table = laid(book, now, cure)
    found = []
    for activity in table.problem.activities:
        pass_ = activity.pass_
        places = tuple(place for place, name in pass_.films if name == coating)
        if not places or activity.index in table.end:
            continue
        missing = [
            table.problem.activities[before].pass_.key.step
            for before in activity.before
            if before not in table.end
        ]
        opens = None if missing else gates_open(table, activity.index, now)
        waits = missing[0] if missing else ("" if opens is not None else activity.blocked)
        found.append(ColourTaker(pass_.key, places, opens, waits))
    return tuple(
        sorted(
            found,
            key=lambda colour_taker: (
                colour_taker.opens is None,
                colour_taker.opens or 0,
                colour_taker.key,
            ),
        )
    )
