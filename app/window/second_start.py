"""The open window hears of a second start with its book, and comes forward."""

from __future__ import annotations

import os
import socket
from contextlib import suppress
from pathlib import Path

from PySide6.QtCore import QObject, QSocketNotifier, Qt, QTimer, Signal
from PySide6.QtWidgets import QApplication, QWidget

from app.service.second_start import ANSWER, MOST_BYTES, Request, address
from app.window.session import Session

HEARD_SECONDS = 0.5  # the other process has sent all before it waits
DIALOG_MS = 200  # how often it is looked whether a file can be taken in


class SecondStarts(QObject):
    """Listens where a second start with the session's book asks.

    Signals
    -------
    file(Path)
        An exchange file is to be taken in.
    """

    file = Signal(object)

    def __init__(self, session: Session, window: QWidget) -> None:
        super().__init__(window)
        self._session, self._window = session, window
        self._line: socket.socket | None = None
        self._place: Path | None = None
        self._ear: QSocketNotifier | None = None
        self._waiting: list[Path] = []
        self._again = QTimer(self)
        self._again.setInterval(DIALOG_MS)
        self._again.timeout.connect(self._take_next)
        session.opened.connect(self._listen)
        session.closed.connect(self._leave)

    def take_in(self, file: Path) -> None:
        """Have an exchange file taken in, as soon as a book is open and no dialog in the way."""
        self._waiting.append(file)
        self._again.start()

    def _take_next(self) -> None:
        if QApplication.activeModalWidget() is None and self._session.book is not None:
            file = self._waiting.pop(0)
            if not self._waiting:
                self._again.stop()
            self.file.emit(file)

    def _listen(self) -> None:
        self._leave()
        place = address(self._session.path) if self._session.path else None
        if place is None or _answered(place):  # another window had the book open before
            return
        line = socket.socket(socket.AF_UNIX)
        try:
            place.unlink(missing_ok=True)  # left by one that was killed
            line.bind(str(place))
            line.listen()
        except OSError:  # no room for a socket: a second start opens a window of its own
            line.close()
            return
        line.setblocking(False)
        self._line, self._place = line, place
        self._ear = QSocketNotifier(line.fileno(), QSocketNotifier.Type.Read, self)
        self._ear.activated.connect(self._hear)

    def _leave(self) -> None:
        if self._ear is not None:
            self._ear.setEnabled(False)
            self._ear.deleteLater()
            self._ear = None
        if self._line is not None:
            self._line.close()
            self._line = None
        if self._place is not None:
            with suppress(OSError):
                self._place.unlink()
            self._place = None

    def _hear(self) -> None:
        if self._line is None:
            return
        try:
            caller, _ = self._line.accept()
        except OSError:
            return
        with caller:
            asked = _request(caller)
            if asked is None:
                return
            with suppress(OSError):  # it has gone; what it asked for is done all the same
                caller.sendall(ANSWER)
        self._come_forward(asked)
        if asked.file is not None:
            self.take_in(asked.file)

    def _come_forward(self, asked: Request) -> None:
        """Show what is in front of the person: the bench mode, where it covers the screen."""
        tops = QApplication.topLevelWidgets()
        covering = [top for top in tops if top.isVisible() and top.isFullScreen()]
        front = self._window if asked.file or not covering else covering[0]
        if asked.token:  # under Wayland a window comes forward only with the caller's leave
            os.environ["XDG_ACTIVATION_TOKEN"] = asked.token
        front.setWindowState(front.windowState() & ~Qt.WindowState.WindowMinimized)
        front.show()
        front.raise_()
        front.activateWindow()


def _answered(place: Path) -> bool:
    """Tell whether somebody listens there."""
    if not place.exists():
        return False
    with socket.socket(socket.AF_UNIX) as line:
        line.settimeout(HEARD_SECONDS)
        try:
            line.connect(str(place))
        except OSError:
            return False
    return True


def _request(caller: socket.socket) -> Request | None:
    caller.settimeout(HEARD_SECONDS)
    data = b""
    try:
        while part := caller.recv(MOST_BYTES):
            data += part
            if len(data) > MOST_BYTES:
                return None
    except OSError:
        return None
    return Request.from_bytes(data)
