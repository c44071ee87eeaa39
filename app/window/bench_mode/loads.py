"""What a cup is filled for, and what else takes its colour.  No Qt."""

from __future__ import annotations

from app.window.plan_snapshot import PlanSnapshot
from planner.evening.alternatives import ColourTaker, takers
from planner.tonight import WorkRow
from planner.values.plan import PassKey


def served(picture: PlanSnapshot, airbrush: str, coating: str, since: int) -> tuple[PassKey, ...]:
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


def others(
    picture: PlanSnapshot, coating: str, without: tuple[PassKey, ...]
) -> tuple[ColourTaker, ...]:
    """Return what else takes a colour beside what it is loaded for, ready ones first.

    All active projects are looked at, for one forgotten wheel costs a load
    of its own.
    """
    found = takers(picture.book, coating, picture.now, cure=picture.cure)
    return tuple(colour_taker for colour_taker in found if colour_taker.key not in without)
