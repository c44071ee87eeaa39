"""Work that was done before a model came into the book: films laid then, noted as such.

What is told is how far a model is and when the last of it was done.  When
the rest was done nobody says: each coat is taken to have been laid a day
before the next, and what is wiped, pressed or rubbed soon to have been done
soon.  Minutes and amounts stay untold, so that neither pace nor stock learn
from it.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from planner.values.book import Book
from planner.values.book_changes import with_project
from planner.values.lookup import model_named, project_of
from planner.values.message import message
from planner.values.model import Model
from planner.values.moment import moment_of, zone_named
from planner.values.project import Logged, Project, StageReached
from planner.values.refusal import Refused
from planner.values.step import CLEAR_STAGES, Stage, Step

DAY = 1440  # between two coats of which nobody says when they were laid: assumed [min]
SOON = 20  # between a wash and its wiping, decals and their pressing, a coat and its rubbing
SOON_AFTER = frozenset({Stage.WIPE, Stage.PRESS, Stage.CHIP_RUB})
COLOURS = frozenset(
    {Stage.BASE, Stage.CAMO, Stage.DETAIL, Stage.HIGHLIGHT, Stage.CHIP_FLUID, Stage.CHIP_RUB}
)


_STAGES = {
    StageReached.PRIMED: frozenset({Stage.PRIME}),
    StageReached.BASE: frozenset({Stage.BASE}),
    StageReached.COLOURS: COLOURS,
    StageReached.DECALS: frozenset({Stage.DECAL, Stage.PRESS}),
}


def done_by_then(model: Model, reached: StageReached) -> tuple[Step, ...]:
    """Return the steps of a model that are behind it once it is so far.

    Raises
    ------
    Refused
        If its order has no such stage.
    """
    if reached is StageReached.NOTHING:
        return ()
    steps = model.steps
    if reached in (StageReached.PRIMED, StageReached.BASE, StageReached.COLOURS):
        steps = steps[: _bare(steps)]
    last = max((at for at, step in enumerate(steps) if step.stage in _STAGES[reached]), default=-1)
    if last < 0:
        mend = message(
            '"{model}" has nothing in its order by which it could be {reached}',
            model=model.name,
            reached=reached,
        )
        raise Refused("reached", mend)
    while last + 1 < len(model.steps) and model.steps[last + 1].stage in SOON_AFTER:
        last += 1
    return model.steps[: last + 1]


def laid_before(
    book: Book, project: str, name: str, reached: StageReached, when: int, note: str = ""
) -> Book:
    """Return the book in which a model is as far as is told; what was logged stays.

    Parameters
    ----------
    when
        Minute by which the last of it was done.
    note
        What its entries say beside that.

    Raises
    ------
    Refused
        If its order has no such stage.
    """
    home = project_of(book, project)
    model = model_named(home, name)
    known = {(fact.model, fact.step, fact.coat) for fact in home.log}
    zone = zone_named(book.bench_time.zone)
    facts = [
        Logged(
            model=name,
            step=step.id,
            coat=coat,
            start=moment_of(start, zone),
            end=moment_of(end, zone),
            note=note,
        )
        for step, coat, start, end in _times(model, done_by_then(model, reached), when)
        if (name, step.id, coat) not in known
    ]

    def noted(old: Project) -> Project:
        return replace(old, log=(*old.log, *facts))

    return with_project(book, project, noted) if facts else book


def _bare(steps: tuple[Step, ...]) -> int:
    """Return where the first clear coat, decal or wash comes."""
    ends = CLEAR_STAGES | {Stage.DECAL, Stage.WASH, Stage.OIL_WASH, Stage.FILTER}
    return next((at for at, step in enumerate(steps) if step.stage in ends), len(steps))


def _times(
    model: Model, steps: tuple[Step, ...], when: int
) -> Iterator[tuple[Step, int, int, int]]:
    """Yield steps and coats with when each began and ended, the first of them first."""
    found = []
    end = when
    for at in range(len(steps) - 1, -1, -1):
        step = steps[at]
        parts = {name.partition("/")[0] for name in step.references()}
        minutes = max(1, step.minutes.of(len(parts)))
        for coat in range(step.coats, 0, -1):
            found.append((step, coat, end - minutes, end))
            soon = coat == 1 and step.stage in SOON_AFTER
            end -= minutes + (SOON if soon else DAY)
    return reversed(found)
