"""How the work of an evening stands, read off book and plan for the tables of places."""

from __future__ import annotations

from collections.abc import Sequence

from app.service.model_faces import face_of
from app.window.plan_snapshot import PlanSnapshot
from app.window.tonight_cards.places_model import Progress
from planner.evening.log_entries import entry_of
from planner.tonight import DryingFilm, WorkRow
from planner.values.plan import PassKey


def progress_of(picture: PlanSnapshot, rows: Sequence[WorkRow]) -> Progress:
    """Return what the logbook has of rows, which comes next, and what their models look like."""
    running = picture.sheet.interval.start <= picture.sheet.now
    keys = dict.fromkeys(row.key for row in rows)
    found = {key: entry_of(picture.book, key) for key in keys}
    entries = {key: entry for key, entry in found.items() if entry is not None}
    bare = Progress(picture.sheet.now, picture.zone, entries)
    first = next((row.key for row in rows if not bare.over(row)), None)
    return Progress(
        picture.sheet.now,
        picture.zone,
        entries,
        first,
        lambda row: running and row.piece == row.pieces,
        {
            at: face_of(picture.book, *at)
            for at in dict.fromkeys((key.project, key.model) for key in keys)
        },
        _wet(picture),
    )


def _wet(picture: PlanSnapshot) -> dict[tuple[PassKey, str], DryingFilm]:
    """Return by pass and place the film whose next state is reached first."""
    films = [film for film in picture.sheet.drying if film.opens is not None]
    found: dict[tuple[PassKey, str], DryingFilm] = {}
    for film in sorted(films, key=lambda film: film.opens or 0):
        for place in film.places:
            found.setdefault((film.key, place), film)
    return found
