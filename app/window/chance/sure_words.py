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
