"""What can be done to this evening as a whole, each by one command of the menu.

What does it is imported with the first: a start need not wait for it.
"""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QObject

from app.service.edits import Edit
from app.window.message_translation import translated
from app.window.session import Session
from planner.values.book import Book
from planner.values.coating import State
from planner.values.moment import moment_of
from planner.values.plan import PassKey

HOUR = 60


class EveningActs(QObject):
    """An hour more, an early end, an evening lost, a film looked at; each can be undone."""

    def __init__(self, session: Session) -> None:
        super().__init__()
        self._session = session

    def hour(self) -> None:
        """Make the stretch that runs an hour longer, or begin one now."""
        from app.service import bench_events  # noqa: PLC0415

        self._make(lambda book: bench_events.longer(book, self._session.now, HOUR))

    def stop(self) -> None:
        """End the stretch that runs."""
        from app.service import bench_events  # noqa: PLC0415

        self._make(lambda book: bench_events.stop(book, self._session.now))

    def lost(self) -> None:
        """Be away in the next stretch after all."""
        from app.service import bench_events  # noqa: PLC0415

        picture = self._session.picture
        if picture is None:
            return
        stretch = picture.calendar.next_stretch(self._session.now)
        today = moment_of(self._session.now, picture.zone).date()
        self._make(lambda book: bench_events.lost(book, stretch.on if stretch else today))

    def take_back(self) -> None:
        """Take back what was done last, a fact of the logbook as well."""
        self._session.take_back()

    def looked(self, key: PassKey, state: State, reached: bool) -> None:
        """Note that a film was looked at."""
        from app.service import bench_events  # noqa: PLC0415

        now = self._session.now
        if reached:
            self._make(lambda book: bench_events.looked(book, key, now, state, reached=True))
        else:
            self._make(lambda book: bench_events.tacky(book, key, now, state))

    def _make(self, make: Callable[[Book], Edit]) -> None:
        refused = self._session.attempt(make)
        if refused is not None:
            self._session.troubled.emit(translated(str(refused)))
