"""How much is to do in a room, beside its name: the jobs of tonight."""

from __future__ import annotations

from PySide6.QtCore import QObject

from app.window import words
from app.window.navigation import Navigation
from app.window.plan_snapshot import PlanSnapshot
from app.window.session import Session


class RoomBadges(QObject):
    """Keeps the numbers in the column of the rooms as the plan is."""

    def __init__(self, session: Session, navigation: Navigation) -> None:
        super().__init__(navigation)
        self._session, self._tonight = session, navigation.buttons[0]
        session.pictured.connect(self._show)
        session.opened.connect(self._show)

    def _show(self) -> None:
        picture = self._session.picture
        jobs = jobs_tonight(picture) if picture is not None else 0
        told = words.count(jobs, words.tr("{n} job tonight"), words.tr("{n} jobs tonight"))
        self._tonight.show_badge(str(jobs) if jobs else "", told)


def jobs_tonight(picture: PlanSnapshot) -> int:
    """Return how much is left to do in the session that runs or comes next."""
    stretch = picture.calendar.next_stretch(picture.now)
    if stretch is None:
        return 0
    return sum(
        not placed.logged and any(piece.overlaps(stretch.interval) for piece in placed.pieces)
        for placed in picture.plan.placements
    )
