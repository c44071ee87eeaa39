"""The date of a plan and how sure it is, in one line."""

from __future__ import annotations

from typing import TYPE_CHECKING
from zoneinfo import ZoneInfo

from app.window import words

if TYPE_CHECKING:
    from planner.chance.odds import Odds

SURE = 0.8


def sure_line(odds: Odds, zone: ZoneInfo) -> str:
    """Return the plan's date and the one that four runs in five keep; "" where either is never."""
    planned, most = odds.together.planned, odds.together.by(SURE)
    if most is None or planned is None:
        return ""
    return words.tr("{planned}; four in five by {most}").format(
        planned=words.day_of(planned - 1, zone, long=True),
        most=words.day_of(most - 1, zone, long=True),
    )


def sure_bands(odds: Odds) -> dict[tuple[str, str], tuple[int, int, int]]:
    """Return of each model, and of each project under no model, its three dates if it has all."""
    found = {}
    for one in (*odds.projects, *odds.models):
        half, most, nearly = (one.by(share) for share in (0.5, SURE, 0.95))
        if half is not None and most is not None and nearly is not None:
            found[one.project, one.model] = (half, most, nearly)
    return found
