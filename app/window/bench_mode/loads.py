"""What goes into a cup, and what else takes its colour.  No Qt."""

from __future__ import annotations

from dataclasses import dataclass

from app.window.picture import Picture
from planner.passes import expand_all
from planner.tonight import WorkRow
from planner.values.plan import PassKey


@dataclass(frozen=True)
class Taker:
    """A pass that takes a colour: when it is planned; None for no place yet."""

    key: PassKey
    parts: tuple[str, ...]
    start: int | None


def served(picture: Picture, airbrush: str, coating: str, since: int) -> tuple[PassKey, ...]:
    """Return the passes of this stretch that a load filled at ``since`` is for, in order."""
    keys = []
    for row in sorted(picture.sheet.rows, key=lambda row: row.start):
        if row.airbrush != airbrush or row.start < since:
            continue
        if isinstance(row, WorkRow):
            if not row.logged:
                keys.append(row.key)
        elif row.coating != coating:
            break
    return tuple(dict.fromkeys(keys))


def others(picture: Picture, coating: str, without: tuple[PassKey, ...]) -> tuple[Taker, ...]:
    """Return every pass not done and not in ``without`` that takes a colour, the next first.

    All active projects are looked at, for one forgotten wheel costs a load
    of its own.
    """
    done = {
        (project.name, entry.model, entry.step, entry.coat)
        for project in picture.book.projects
        for entry in project.log
    }
    starts = {placed.key: placed.start for placed in picture.plan.placements}
    found = [
        Taker(one.key, one.parts, starts.get(one.key))
        for one in expand_all(picture.book)
        if coating in {name for _, name in one.films}
        and one.key not in without
        and tuple(one.key) not in done
    ]
    return tuple(sorted(found, key=lambda one: (one.start is None, one.start or 0, one.key)))
