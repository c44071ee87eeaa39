"""What can be done with one session of the plan: skip it, lengthen it, add another."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QMenu, QWidget

from app.service import bench_events, edits
from app.service.edits import Edit
from app.window import words
from app.window.message_translation import translated
from app.window.session import Session
from app.window.strip_content import Strip, StripColumn
from planner.values.book import Book
from planner.values.plan import PassKey

HOUR = 60


class DayActions(QObject):
    """The three, for whatever session they are asked of.

    Signals
    -------
    said(str)
        Why something could not be done, or "".
    """

    said = Signal(str)

    def __init__(self, session: Session, parent: QWidget) -> None:
        super().__init__(parent)
        self._session, self._window = session, parent

    def fill(self, menu: QMenu, column: StripColumn) -> None:
        """Put the three into a menu."""
        day = words.day(column.on)
        entries: tuple[tuple[str, Callable[[], None]], ...] = (
            (self.tr("S&kip {day}").format(day=day), lambda: self.skip(column)),
            (self.tr("{day} an &hour longer").format(day=day), lambda: self.lengthen(column)),
            (self.tr("&Add a session…"), lambda: self.add(column)),
        )
        for name, act in entries:
            menu.addAction(name, act)

    def skip(self, column: StripColumn) -> None:
        """Be away on that day after all."""
        self._make(lambda book: bench_events.lost(book, column.on))

    def lengthen(self, column: StripColumn) -> None:
        """Let a session last an hour longer."""
        end = column.interval.end
        self._make(lambda book: edits.minutes_more(book, end, HOUR))

    def add(self, column: StripColumn) -> None:
        """Ask for one more session, on that day to begin with."""
        from app.window.bench_time.dialogs import ExtraDialog  # noqa: PLC0415 -- loaded when asked

        ExtraDialog(self._session, None, column.on, self._window).open()

    def _make(self, make: Callable[[Book], Edit]) -> None:
        refused = self._session.attempt(make)
        self.said.emit("" if refused is None else translated(str(refused)))


def session_of(strip: Strip, key: PassKey | None) -> StripColumn | None:
    """Return the session in which a piece of work begins, None where there is none."""
    start = next((piece.interval.start for piece in strip.pieces if piece.key == key), None)
    if start is None:
        return None
    return next(
        (
            column
            for column in strip.columns
            if column.interval.start <= start < column.interval.end
        ),
        None,
    )
