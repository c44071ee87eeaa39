"""Every opening that something waits for, every window that closes, every look.  No Qt.

Only facts count: what a film of the plan will do is no news yet.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from enum import StrEnum

from app.window.message_translation import translated
from planner.evening.looks import LookFor, looks
from planner.schedule.partial_schedule import FOREVER
from planner.tonight.replayed_plan import ReplayedPlan
from planner.values.coating import State
from planner.values.plan import PassKey
from planner.values.step import Bound


class FilmEventKind(StrEnum):
    """What happens at a moment."""

    OPENS = "opens"
    CLOSES = "closes"
    LOOK = "look"


@dataclass(frozen=True)
class FilmEvent:
    """A film opens for a pass, the window for a pass closes, or a look is due.

    Attributes
    ----------
    film
        The pass that laid the film, or after which the window runs.
    waiting
        The pass that waits; None where only handling the model does.
    at
        The minute; None for an opening that never comes in this air.
    since
        When the film was laid, or the window began to run.
    state
        What the film must have reached; None where the clock counts.
    bound
        For a closing: which end of the waiting pass must come before it.
    minutes
        How long the waiting pass takes [min].
    planned
        When the waiting pass is planned, None where it has no place.
    looks
        How often the film was found not to be there yet.
    sign
        What a look is for.
    """

    kind: FilmEventKind
    film: PassKey
    waiting: PassKey | None
    places: tuple[str, ...]
    coating: str
    at: int | None
    since: int
    state: State | None = None
    bound: Bound = Bound.START
    minutes: int = 0
    planned: int | None = None
    looks: int = 0
    why: str = ""
    sign: LookFor | None = None

    @property
    def name(self) -> str:
        """What it is told by only once; a film laid anew is another one."""
        told = f"{self.kind} {self.film}>{self.waiting or ''}@{self.since}~{self.looks}"
        return f"{told} {self.sign}" if self.sign else told

    @property
    def last_begin(self) -> int | None:
        """The last minute at which what must come before a closing can begin."""
        if self.at is None:
            return None
        return self.at - self.minutes if self.bound is Bound.END else self.at


def moments(laid: ReplayedPlan) -> tuple[FilmEvent, ...]:
    """Return every opening, closing and look after facts, the next one first, never at the end.

    A pass that waits for several films has one opening, that of the last.
    One that waits for other work as well has none: nothing could be begun.
    """
    found = [*_openings(laid), *_last_coats(laid), *_closings(laid), *_looks(laid)]
    return tuple(
        sorted(found, key=lambda event: (event.at is None, event.at or 0, event.kind, event.film))
    )


def grouped(found: tuple[FilmEvent, ...]) -> tuple[tuple[FilmEvent, ...], ...]:
    """Return moments with those of one film, kind and minute together, in the same order."""
    groups: dict[tuple[object, ...], list[FilmEvent]] = {}
    for event in found:
        groups.setdefault(
            (event.kind, event.film, event.coating, event.at, event.bound, event.sign), []
        ).append(event)
    return tuple(tuple(group) for group in groups.values())


def _openings(laid: ReplayedPlan) -> Iterator[FilmEvent]:
    facts = _facts(laid)
    best: dict[PassKey, FilmEvent] = {}
    held: set[PassKey] = set()
    for number, gate in enumerate(laid.problem.gates):
        if gate.after in facts or gate.after not in laid.problem.index:
            continue
        if facts.get(gate.before) is None:
            held.add(gate.after)
            continue
        window = laid.window(number)
        if window is None or not gate.place or window.window.opens is None:
            continue
        at = None if window.opens >= FOREVER else window.opens
        event = _moment(laid, FilmEventKind.OPENS, gate.before, gate.after, at, gate.place)
        known = best.get(gate.after)
        if known is None or _later(at, known.at):
            state = window.window.opens.state
            best[gate.after] = replace(event, state=state, why=translated(gate.why))
    yield from (event for key, event in best.items() if key not in held)


def _last_coats(laid: ReplayedPlan) -> Iterator[FilmEvent]:
    """Yield the last coats of facts on which nothing more is to be done but handling."""
    facts = _facts(laid)
    waits = {gate.before for gate in laid.problem.gates if gate.after not in facts}
    told: set[tuple[PassKey, str]] = set()
    for spot, (index, _) in laid.table.top.items():
        pass_ = laid.problem.activities[index].pass_
        coating = dict(pass_.films)[spot[2]]
        if facts.get(pass_.key) is None or pass_.key in waits or (pass_.key, coating) in told:
            continue
        told.add((pass_.key, coating))
        wet = laid.table.wet[spot]
        at = None if wet >= FOREVER else wet
        moment = _moment(laid, FilmEventKind.OPENS, pass_.key, None, at, spot[2])
        yield replace(moment, state=State.DRY_TO_HANDLE)


def _closings(laid: ReplayedPlan) -> Iterator[FilmEvent]:
    facts = _facts(laid)
    best: dict[PassKey, FilmEvent] = {}
    for number, gate in enumerate(laid.problem.gates):
        if not gate.closes or gate.after in facts or gate.before not in facts:
            continue
        window = laid.window(number)
        if window is None or window.closes >= FOREVER:
            continue
        known = best.get(gate.after)
        if known is None or window.closes < (known.at or 0):
            place = gate.place or laid.of(gate.before).places[0]
            event = _moment(
                laid, FilmEventKind.CLOSES, gate.before, gate.after, window.closes, place
            )
            best[gate.after] = replace(event, bound=gate.closing, why=translated(gate.why))
    yield from best.values()


def _looks(laid: ReplayedPlan) -> Iterator[FilmEvent]:
    """Yield the looks that done work asks for and nobody has taken."""
    for look in looks(laid.book, laid.now):
        if look.key in laid.problem.index:
            coating = dict(laid.of(look.key).films).get(look.places[0], "")
            yield FilmEvent(
                kind=FilmEventKind.LOOK,
                film=look.key,
                waiting=None,
                places=look.places,
                coating=coating,
                at=look.at,
                since=look.since,
                sign=look.what,
            )


def _facts(laid: ReplayedPlan) -> dict[PassKey, int | None]:
    """Return every pass of the logbook with its end, None while it is under way."""
    under_way = {
        PassKey(project.name, entry.model, entry.step, entry.coat)
        for project in laid.book.projects
        for entry in project.log
        if entry.end is None
    }
    return {
        placed.key: None if placed.key in under_way else placed.end
        for placed in laid.plan.placements
        if placed.logged
    }


def _moment(
    laid: ReplayedPlan,
    kind: FilmEventKind,
    film: PassKey,
    waiting: PassKey | None,
    at: int | None,
    place: str,
) -> FilmEvent:
    films = laid.of(film).films
    coating = dict(films).get(place, "")
    placed, mine = laid.placed.get(waiting) if waiting else None, laid.placed[film]
    looks = laid.book.project(film.project).observed
    return FilmEvent(
        kind=kind,
        film=film,
        waiting=waiting,
        places=tuple(name for name, other in films if other == coating) or (place,),
        coating=coating,
        at=at,
        since=mine.start if kind is FilmEventKind.CLOSES else mine.end,
        minutes=laid.of(waiting).minutes if waiting else 0,
        planned=placed.start if placed else None,
        looks=sum(
            1
            for look in looks
            if (look.model, look.step, look.coat) == film[1:] and not look.reached
        ),
    )


def _later(index: int | None, other: int | None) -> bool:
    return other is not None and (index is None or index > other)
