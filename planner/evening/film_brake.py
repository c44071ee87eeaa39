"""The brake on wet films: what is not ready, or too late, for work that is begun or done.

A fact is never refused (definition 22); whoever notes it is asked first, and
what was done all the same is marked.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace
from datetime import datetime
from enum import StrEnum

from planner.cure import Cure
from planner.evening.log_entries import entry_of, is_mark_of
from planner.evening.logged_films import laid
from planner.schedule.partial_schedule import FOREVER, GateOpening, PartialSchedule
from planner.values.book import Book
from planner.values.book_changes import with_project
from planner.values.coating import State
from planner.values.lookup import project_of
from planner.values.message import Message, called, message, within
from planner.values.moment import minute_of
from planner.values.plan import PassKey
from planner.values.project import Event, Happened, Logged, Project
from planner.values.step import Bound, Stage

_STATES = tuple(State)  # in order of coming


class Miss(StrEnum):
    """On which side of its window work is."""

    EARLY = "too early"
    LATE = "too late"


@dataclass(frozen=True)
class Unready:
    """A film that work meets outside its window.

    Attributes
    ----------
    film
        The pass that laid it, or after which the window runs.
    coating, places
        What was laid, and where, as "part/place"; empty where time alone is watched.
    side
        Whether it is too early for it, or too late.
    state
        What the film must have reached; None where minutes count.
    ready
        The minute from which it may be; of a missed window, the next one's
        opening; None for never.
    closed
        The minute at which the window closed; None where it is too early.
    off
        How many minutes too early or too late the work is, None for for ever [min].
    risk
        What may come of it.
    under_way
        It is still being laid.
    """

    film: PassKey
    coating: str
    places: tuple[str, ...]
    side: Miss
    state: State | None
    ready: int | None
    closed: int | None
    off: int | None
    risk: Message
    under_way: bool = False

    @property
    def by_looking(self) -> bool:
        """Tell whether somebody who looks at the film can say that it is ready after all."""
        return self.side is Miss.EARLY and self.state is not None and not self.under_way


EARLY_RISKS = {
    State.SET_TO_TOUCH: message("it still runs: the edge tears or creeps"),
    State.DUST_FREE: message("it still runs, and takes every mark"),
    State.TACK_FREE: message("it sticks to whatever touches it"),
    State.DRY_TO_HANDLE: message("fingers leave prints in it"),
    State.DRY_TO_RECOAT: message(
        "solvent is shut in: the coat below stays soft, and may wrinkle or crack"
    ),
    State.PRINT_FREE: message("tape prints into it, or lifts it off"),
    State.SOLVENT_SAFE: message("the thinner softens it: it smears, or comes off with the cloth"),
    State.DRY_THROUGH: message("it still shrinks below: a hard coat over it crazes"),
}
"""What comes of work over a film that has not come so far: common practice, no source."""
TOO_SOON = message("the wait that was asked for is not over")
LATE_RISKS = {
    Stage.WIPE: message("it has set: it comes off with its own thinner only, or not at all"),
    Stage.PRESS: message("the decal has dried: it no longer settles"),
    Stage.CHIP_RUB: message("the coat over the fluid has hardened: it chips in large flakes"),
    Stage.UNMASK: message("tape left for long creeps, and lifts paint with it"),
}
"""What comes of work after its window has closed: common practice, no source."""
TOO_LATE = message("the film has closed: the next coat holds badly, or lifts it")


def unready(
    book: Book,
    key: PassKey,
    start: int,
    end: int | None = None,
    *,
    begun: bool = False,
    cure: Cure | None = None,
) -> tuple[Unready, ...]:
    """Return the films that a pass from ``start`` on meets outside their windows, worst first.

    Only what the logbook says was begun before it counts; what is done
    before its turn is no matter of films (`planner.evening.out_of_order`).

    Parameters
    ----------
    end
        When it ended; None where it only begins.
    begun
        Its beginning was noted before: only what binds its end is looked at.
    """
    table = laid(book, max(start, end or start), cure, until=max(start, 1))
    mine = table.problem.index.get(key)
    if mine is None or (mine in table.end and not begun):
        return ()
    found = [] if begun else [*_by_hands(book, table, mine, start)]
    for number, gate in enumerate(table.problem.gates):
        if gate.after != key or table.problem.ends[number][0] not in table.end:
            continue
        moment = start
        if gate.closing is Bound.END and end is not None:
            moment = end
        elif begun:
            continue
        one = _outside(table, number, start, moment, begun=begun)
        if one is not None and not _seen(book, one, start):
            found.append(one)
    return _gathered(found)


def met(book: Book, key: PassKey, fact: Logged) -> tuple[Unready, ...]:
    """Return what an entry that is to be noted meets outside its window.

    Of one whose beginning is noted already only what binds its end is looked at.
    """
    known = entry_of(book, key)
    if known is not None and fact.end is None:
        return ()
    start = minute_of(fact.start, up=False)
    end = None if fact.end is None else minute_of(fact.end)
    return unready(book, key, start, end, begun=known is not None)


def marked(book: Book, key: PassKey, at: datetime, found: Iterable[Unready]) -> Book:
    """Return the book whose diary says what work begun at ``at`` met outside its window."""
    lines = tuple(
        Happened(
            at=at,
            event=Event.TOO_SOON if one.side is Miss.EARLY else Event.TOO_LATE,
            model=key.model,
            step=key.step,
            text=within(2000, _told(one)),
        )
        for one in found
    )

    def with_lines(old: Project) -> Project:
        return replace(old, diary=(*old.diary, *lines))

    return with_project(book, key.project, with_lines) if lines else book


def _told(one: Unready) -> Message:
    what = one.coating or one.film.step
    if one.off is None:
        return called("over {coating}, which never gets ready in this air", coating=what)
    hours, minutes = divmod(one.off, 60)
    length = called("{minutes} min", minutes=one.off)
    if hours >= 2:
        length = called("{hours} h {minutes} min", hours=hours, minutes=minutes)
    if one.side is Miss.EARLY:
        return called("{length} before {coating} was ready", length=length, coating=what)
    return called("{length} after the window of {coating} had closed", length=length, coating=what)


def marks(project: Project, fact: Logged) -> tuple[Happened, ...]:
    """Return the lines of the diary that say that an entry met a film outside its window."""
    return tuple(line for line in project.diary if is_mark_of(line, fact))


def open_from(book: Book, key: PassKey, now: int, *, cure: Cure | None = None) -> int:
    """Return the last minute up to ``now`` at which a film became ready for a pass; 0 for none.

    Work that was done by ``now``, and whose beginning nobody noted, is taken
    to have been begun no earlier.
    """
    table = laid(book, now, cure)
    mine = table.problem.index.get(key)
    if mine is None:
        return 0
    latest = table.fingers_from(mine)
    opened = [latest] if latest <= now else []
    for number, gate in enumerate(table.problem.gates):
        if gate.after == key and table.problem.ends[number][0] in table.end:
            opened += [
                window.opens
                for window in table.windows(number)
                if window.window.opens is not None and window.opens <= now < window.closes
            ]
    return max(opened, default=0)


def _outside(
    table: PartialSchedule, number: int, start: int, moment: int, *, begun: bool
) -> Unready | None:
    """Return how far outside its windows a gate is met, None where it is inside one."""
    gate = table.problem.gates[number]
    windows = table.windows(number)
    closing_by_end = gate.closing is Bound.END
    ahead: GateOpening | None = None
    shut: GateOpening | None = None
    for window in windows:
        early = not begun and window.window.opens is not None and start < window.opens
        late = moment > window.closes if closing_by_end else moment >= window.closes
        if not early and not late:
            return None
        if late:
            shut = window
        elif ahead is None:
            ahead = window
    waits = next((one.opens for one in gate.windows if one.opens is not None), None)
    if shut is None and ahead is None and waits is None:
        return None
    opens = ahead.window.opens if ahead else waits
    ready = None if ahead is None or ahead.opens >= FOREVER else ahead.opens
    film = _film(table, number)
    if shut is not None:
        stage = table.problem.activities[table.problem.index[gate.after]].pass_.step.stage
        return Unready(
            gate.before,
            *film,
            side=Miss.LATE,
            state=None,
            ready=ready,
            closed=shut.closes,
            off=moment - shut.closes,
            risk=LATE_RISKS.get(stage, TOO_LATE),
            under_way=_goes_on(table, gate.before),
        )
    state = opens.state if opens is not None else None
    return Unready(
        gate.before,
        *film,
        side=Miss.EARLY,
        state=state,
        ready=ready,
        closed=None,
        off=None if ready is None else ready - start,
        risk=TOO_SOON if state is None else EARLY_RISKS[state],
        under_way=_goes_on(table, gate.before),
    )


def _goes_on(table: PartialSchedule, key: PassKey) -> bool:
    entry = table.problem.logged.get(key)
    return entry is not None and entry.end is None


def _film(table: PartialSchedule, number: int) -> tuple[str, tuple[str, ...]]:
    gate = table.problem.gates[number]
    films = table.problem.activities[table.problem.ends[number][0]].pass_.films
    coating = dict(films).get(gate.place, "")
    return coating, tuple(place for place, name in films if coating and name == coating)


def _by_hands(book: Book, table: PartialSchedule, mine: int, start: int) -> Iterator[Unready]:
    """Yield the films elsewhere on the same unit that fingers would touch too early."""
    for spot in table.problem.activities[mine].fingers:
        ready = table.wet.get(spot, 0)
        if ready <= start or spot not in table.top:
            continue
        index, _ = table.top[spot]
        pass_ = table.problem.activities[index].pass_
        coating = dict(pass_.films)[spot[2]]
        never = ready >= FOREVER
        one = Unready(
            pass_.key,
            coating,
            (spot[2],),
            side=Miss.EARLY,
            state=State.DRY_TO_HANDLE,
            ready=None if never else ready,
            closed=None,
            off=None if never else ready - start,
            risk=EARLY_RISKS[State.DRY_TO_HANDLE],
            under_way=_goes_on(table, pass_.key),
        )
        if not _seen(book, one, start):
            yield one


def _seen(book: Book, one: Unready, start: int) -> bool:
    """Tell whether somebody has seen by ``start`` that the film had come so far."""
    if one.state is None:
        return False
    wanted = _STATES.index(one.state)
    return any(
        (look.model, look.step, look.coat) == one.film[1:]
        and look.reached
        and minute_of(look.at) <= start
        and _STATES.index(look.state) >= wanted
        for look in project_of(book, one.film.project).observed
    )


def _gathered(found: list[Unready]) -> tuple[Unready, ...]:
    """Return one of each film and side, that which is farthest off; too late comes first."""
    worst: dict[tuple[PassKey, str, Miss], Unready] = {}
    for one in found:
        name = (one.film, one.coating, one.side)
        known = worst.get(name)
        places = tuple(dict.fromkeys((*(known.places if known else ()), *one.places)))
        first = one if known is None or _far(one) > _far(known) else known
        worst[name] = replace(first, places=places)
    return tuple(sorted(worst.values(), key=lambda one: (one.side is Miss.EARLY, -_far(one))))


def _far(one: Unready) -> int:
    return FOREVER if one.off is None else one.off
