"""Makes openings and closings known: on the desktop, in the status line, with a quiet sound."""

from __future__ import annotations

import json

from PySide6.QtCore import QObject, QRectF, QSettings, Qt, QTimer, Signal
from PySide6.QtGui import QColor, QIcon, QPainter, QPixmap
from PySide6.QtWidgets import QApplication, QSystemTrayIcon

from app.window import mark_drawing, words
from app.window.drying.event_wording import told
from app.window.drying.notices import due
from app.window.palette import LIGHT
from app.window.plan_snapshot import PlanSnapshot, SnapshotPart
from app.window.session import Session
from app.window.wedge_geometry import wedge_outline

LOOK_MS = 10_000  # how often the clock is looked at


class Notifier(QObject):
    """Looks at the clock and tells each moment once.

    Signals
    -------
    said(str)
        The message, for the status line and the bench mode.
    """

    said = Signal(str)

    def __init__(self, session: Session, settings: QSettings) -> None:
        super().__init__()
        self._session, self._settings = session, settings
        self._tray: QSystemTrayIcon | None = None
        session.foreseen.connect(self.look)
        self._clock = QTimer(self)
        self._clock.setInterval(LOOK_MS)
        self._clock.timeout.connect(self.look_if_read)
        self._clock.start()

    @property
    def desktop(self) -> bool:
        """Whether messages go to the desktop, too."""
        return _on(self._settings.value("notices/desktop", True))

    @desktop.setter
    def desktop(self, on: bool) -> None:
        self._settings.setValue("notices/desktop", on)
        if not on and self._tray is not None:
            self._tray.hide()

    @property
    def sound(self) -> bool:
        """Whether a message is heard, in bench time only."""
        return _on(self._settings.value("notices/sound", True))

    @sound.setter
    def sound(self, on: bool) -> None:
        self._settings.setValue("notices/sound", on)

    def look(self) -> None:
        """Tell what has come since the last look."""
        picture = self._session.picture
        if picture is None or self._session.path is None:
            return
        name = f"notices/told/{self._session.path}"
        saved = self._settings.value(name)
        known = frozenset(json.loads(str(saved))) if saved is not None else frozenset()
        now = self._session.now
        found = due(picture, known, now)
        if found.told != known or saved is None:
            self._settings.setValue(name, json.dumps(sorted(found.told)))
        # The first look at a book tells nothing: all that lies behind it is known.
        if saved is not None and (found.fresh or found.meanwhile):
            self._tell(told(found, picture.zone, now), picture, now)

    def stop(self) -> None:
        """Look no more, and leave the tray."""
        self._clock.stop()
        if self._tray is not None:
            self._tray.hide()
            self._tray = None

    def look_if_read(self) -> None:
        """Look, unless what opens and closes is still being read."""
        picture = self._session.picture
        if picture is not None and picture.has(SnapshotPart.MOMENTS):
            self.look()

    def _tell(self, message: str, picture: PlanSnapshot, now: int) -> None:
        self.said.emit(message)
        if self.sound and picture.calendar.stretch_at(now) is not None:
            QApplication.beep()
        if self.desktop and QSystemTrayIcon.isSystemTrayAvailable():
            if self._tray is None:
                self._tray = QSystemTrayIcon(icon(), self)
                self._tray.setToolTip(words.tr("Tackfree"))
            self._tray.show()
            self._tray.showMessage(words.tr("Tackfree"), message, icon())


def icon() -> QIcon:
    """Return the mark of the program: a wedge that thins until its ring."""
    pixmap = QPixmap(64, 64)
    pixmap.fill(Qt.GlobalColor.transparent)
    painter = QPainter(pixmap)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setBrush(QColor(LIGHT.sheet))
    painter.setPen(Qt.PenStyle.NoPen)
    painter.drawRoundedRect(QRectF(2, 2, 60, 60), 12, 12)
    mark_drawing.paint_wedge(painter, wedge_outline(8, 52, 32, 36, 52), LIGHT, strong=True)
    mark_drawing.paint_ring(painter, 51, 32, LIGHT, 7)
    painter.end()
    return QIcon(pixmap)


def _on(saved: object) -> bool:
    return saved in (True, "true")
