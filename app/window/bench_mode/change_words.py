"""What a change of the plan is at the bench, in two lines."""

from __future__ import annotations

from app.window import words
from app.window.moved_words import moved_lines
from app.window.plan_changes_panel import cause_words
from app.window.plan_snapshot import PlanChange


def change_words(change: PlanChange) -> str:
    """Return a change, what moves first by it, and the end: at the bench one reads two lines."""
    told = words.tr("{cause}.").format(cause=cause_words(change.cause))
    calendar = change.new.calendar
    moved = any(move.to_other_stretch(calendar) for move in change.moves)
    if not moved:
        return told
    lines = moved_lines(change)
    return " ".join([told, *dict.fromkeys((lines[0], lines[-1]))])
