"""When somebody should have a look: at what has just been done, and at decals days later."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from enum import StrEnum

from planner.evening.advice import silvering
from planner.evening.log_entries import key_of
from planner.evening.split_steps import places_of
from planner.tonight import WorkRow
from planner.values.book import Book
from planner.values.model import Model
from planner.values.moment import minute_of
from planner.values.plan import PassKey
from planner.values.project import Logged, Project
from planner.values.step import Stage

LAPSES = 1440  # a look that nobody took by then is of no use any more: assumed [min]


class LookFor(StrEnum):
    """What a look is for: what goes wrong at a stage while nobody looks (common practice)."""

    WORK = "how it has come out"
    DULL = "dull enough to be wiped back"
    TIDE_MARKS = "tide marks"
    FROSTING = "frosting, dust and runs"
    LIFTING = "bubbles and lifted edges"
    SILVERING = "silvery shine under decals"


_LOOK_FOR = {
    Stage.OIL_WASH: LookFor.DULL,
    Stage.WASH: LookFor.TIDE_MARKS,
    Stage.WIPE: LookFor.TIDE_MARKS,
    Stage.FILTER: LookFor.TIDE_MARKS,
    Stage.VARNISH: LookFor.FROSTING,
    Stage.MATTE: LookFor.FROSTING,
    Stage.DECAL: LookFor.LIFTING,
    Stage.PRESS: LookFor.LIFTING,
}


def look_for(stage: Stage) -> LookFor:
    """Return what a look after work of a stage is for."""
    return _LOOK_FOR.get(stage, LookFor.WORK)


@dataclass(frozen=True)
class DueLook:
    """Somebody should look at what a pass did, at the minute ``at`` or soon after.

    Attributes
    ----------
    key
        The pass; of several coats the last.
    since
        Its end, as logged or as planned.
    logged
        Whether it is done; else it is planned.
    """

    key: PassKey
    stage: Stage
    places: tuple[str, ...]
    at: int
    since: int
    what: LookFor
    logged: bool

    @property
    def name(self) -> str:
        """What stays the same of it; work done anew asks for another look."""
        return f"{self.what} {self.key}@{self.since}"


def looks(book: Book, now: int) -> tuple[DueLook, ...]:
    """Return the looks that done work asks for and nobody has taken, the next one first.

    A look is taken once anything is noted of that step at its time or later,
    or a later step works on one of its places; after a day it has lapsed.
    Decals are looked at for silvering between two days and two weeks.
    """
    found = [look for look in _after_work(book) if look.at + LAPSES > now]
    found += _silvery(book, now)
    return tuple(sorted(found, key=lambda look: (look.at, look.key)))


def looks_to_come(rows: Iterable[object]) -> tuple[DueLook, ...]:
    """Return the looks that planned rows of a run sheet will ask for."""
    found = [
        DueLook(
            key=row.key,
            stage=row.stage,
            places=row.places,
            at=row.end + row.look_in,
            since=row.end,
            what=look_for(row.stage),
            logged=False,
        )
        for row in rows
        if isinstance(row, WorkRow)
        if row.look_in is not None and not row.logged and row.piece == row.pieces
    ]
    return tuple(sorted(found, key=lambda look: (look.at, look.key)))


def _after_work(book: Book) -> Iterator[DueLook]:
    for project in book.projects:
        for model in project.models if project.active else ():
            steps = {step.id: step for step in model.steps}
            for entry in project.log:
                step = steps.get(entry.step) if entry.model == model.name else None
                if step is None or step.look_in is None or entry.end is None:
                    continue
                if entry.coat < step.coats:
                    continue
                end = minute_of(entry.end)
                key, at = key_of(project.name, entry), end + step.look_in
                places = places_of(model, step, entry.coat)
                if not _taken(project, key, at) and not _covered(project, model, entry, places):
                    what = look_for(step.stage)
                    yield DueLook(key, step.stage, places, at, end, what, True)


def _silvery(book: Book, now: int) -> Iterator[DueLook]:
    for later_look in silvering(book, now):
        project = book.project(later_look.key.project)
        if not _taken(project, later_look.key, later_look.shows):
            yield DueLook(
                later_look.key,
                Stage.DECAL,
                later_look.places,
                later_look.shows,
                later_look.since,
                LookFor.SILVERING,
                True,
            )


def _taken(project: Project, key: PassKey, at: int) -> bool:
    """Tell whether something was noted of a step at ``at`` or later."""
    mine = (key.model, key.step)
    noted = [line.at for line in project.diary if (line.model, line.step) == mine]
    noted += [seen.at for seen in project.observed if (seen.model, seen.step) == mine]
    return any(minute_of(moment) >= at for moment in noted)


def _covered(project: Project, model: Model, entry: Logged, places: tuple[str, ...]) -> bool:
    """Tell whether something was begun on the same places after an entry had ended."""
    assert entry.end is not None
    steps = {step.id: step for step in model.steps}
    return any(
        other.model == entry.model
        and other.start >= entry.end
        and other.step in steps
        and not set(places).isdisjoint(places_of(model, steps[other.step], other.coat))
        for other in project.log
    )
