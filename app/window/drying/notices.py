"""What is to be made known, and when: each opening, closing and look once.  No Qt.

Correct after a restart and a sleeping computer: what was told is
remembered by name, so that whatever has come meanwhile is told once.
"""

from __future__ import annotations

from collections.abc import Collection, Iterable
from dataclasses import dataclass

from app.window.film_events import FilmEvent, FilmEventKind
from app.window.plan_snapshot import PlanSnapshot

LATE = 5  # told later than this, it has happened meanwhile [min]
SHORT, MIDDLE = 180, 2880  # lengths of windows [min]
WARNED_SHORT, WARNED_MIDDLE, WARNED_LONG = 10, 120, 1440  # before a window closes [min]


@dataclass(frozen=True)
class DueNotice:
    """What is to be told now.

    ``fresh`` has just come, ``meanwhile`` came while nobody was told;
    ``told`` names all that need not be told again.
    """

    fresh: tuple[FilmEvent, ...]
    meanwhile: tuple[FilmEvent, ...]
    told: frozenset[str]


def told_at(moment: FilmEvent) -> int | None:
    """Return the minute at which a moment is to be told; None for never.

    An opening or a look when it is there; a closing a while before the last minute at
    which the work can begin: the longer the window, the sooner.
    """
    if moment.kind is not FilmEventKind.CLOSES:
        return moment.at
    begin = moment.last_begin
    if begin is None or moment.at is None:
        return None
    length = moment.at - moment.since
    before = WARNED_SHORT if length <= SHORT else WARNED_MIDDLE
    return begin - (before if length <= MIDDLE else WARNED_LONG)


def due(picture: PlanSnapshot, told: Collection[str], now: int) -> DueNotice:
    """Return what is to be told at ``now``, given the names of what was told."""
    return due_of(picture.moments, told, now)


def due_of(found: Iterable[FilmEvent], told: Collection[str], now: int) -> DueNotice:
    """Return what of some moments is to be told at ``now``.

    Names of moments that are no more are forgotten.
    """
    fresh: list[FilmEvent] = []
    meanwhile: list[FilmEvent] = []
    names: set[str] = set()
    for moment in found:
        at = told_at(moment)
        if moment.name in told:
            names.add(moment.name)
        elif at is not None and at <= now:
            names.add(moment.name)
            (fresh if now - at <= LATE else meanwhile).append(moment)
    return DueNotice(tuple(fresh), tuple(meanwhile), frozenset(names))
