"""Starting Qt with a window on a bench book."""

from __future__ import annotations

import faulthandler
import signal
import sys
from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QEvent, QSettings, QTimer
from PySide6.QtGui import QIcon
from PySide6.QtWidgets import QApplication

from app.service import program_log
from app.service.clock import current_minute
from app.service.desktop import ICON
from app.window import language, words
from app.window.focus_ring import FocusRing
from app.window.garbage_collection import Collector
from app.window.initial_size import fit_to
from app.window.main_window import MainWindow
from app.window.second_start import SecondStarts
from app.window.session import Session
from app.window.unforeseen import Unforeseen

SWITCH_SECONDS = 0.001
PULSE_MS = 200


def run_window(
    book: Path | Callable[[str], Path] | None = None,
    now: int | None = None,
    exchange: Path | None = None,
) -> int:
    """Open the window on a book (None: the person's own) and run it to its end.

    Parameters
    ----------
    exchange
        An exchange file that is to be taken into the book.
    """
    app = QApplication.instance()
    if not isinstance(app, QApplication):
        app = QApplication(sys.argv[:1])
    app.setApplicationName("Tackfree")
    app.setOrganizationName("tackfree")
    app.setDesktopFileName("tackfree")
    language.install(app, QSettings())
    if callable(book):
        book = book(words.language_code())
    FocusRing(app)
    program_log.begin()
    crashes = program_log.watch_for_crashes()
    mark = program_log.StartMark()
    session = Session(current_minute if now is None else running_from(now))
    window = MainWindow(session, plain_settings() if mark.died else QSettings())
    Unforeseen(window)
    session.pictured.connect(lambda _change: mark.stands())
    if mark.died:
        plainly = words.tr("The last start failed; the window opens without its saved layout.")
        session.opened.connect(lambda: QTimer.singleShot(0, lambda: window.say(plainly)))
    if not QSettings().contains("geometry"):  # where a person left it, it comes again
        fit_to(window.screen().availableSize(), window)
    starts = SecondStarts(session, window)
    starts.file.connect(window.files.import_path)
    window.show()
    QTimer.singleShot(0, lambda: app.setWindowIcon(QIcon(str(ICON))))  # it loads a plugin
    app.processEvents()  # the window stands before the book is read
    share_the_interpreter()
    collector = collect_at_rest(window, session, app)
    session.open_soon(book, create=True)
    if exchange is not None:
        starts.take_in(exchange)
    pulse = close_when_told(window)
    status = app.exec()
    mark.stands()
    session.close()
    collector.stop()
    pulse.stop()
    # The widgets go before the application does: the other way round Qt may end the process.
    window.deleteLater()
    app.sendPostedEvents(None, QEvent.Type.DeferredDelete)
    if crashes is not None:
        faulthandler.disable()
        crashes.close()
    return status


def plain_settings() -> QSettings:
    """Return settings without anything of how the window looked: the last one died at opening."""
    settings = QSettings()
    for name in ("geometry", "state", "splitter", "view"):
        settings.remove(name)
    return settings


def close_when_told(window: MainWindow) -> QTimer:
    """Close the window, and so the book, at Ctrl+C, a logout or a shutdown.

    Python sees a signal only when its own code runs now and then; the timer sees to that.
    """

    def close(*_: object) -> None:
        window.close_at_once()

    for name in ("SIGINT", "SIGTERM", "SIGHUP"):
        if hasattr(signal, name):  # no hang-up on Windows
            signal.signal(getattr(signal, name), close)
    pulse = QTimer()
    pulse.timeout.connect(lambda: None)
    pulse.start(PULSE_MS)
    return pulse


def share_the_interpreter() -> None:
    """Let no event of the window wait long for other threads."""
    # Threads that plan and read hold the interpreter for 5 ms at a time otherwise.
    sys.setswitchinterval(SWITCH_SECONDS)


def collect_at_rest(window: MainWindow, session: Session, app: QApplication) -> Collector:
    """Search for garbage when the person rests, the next time once a new plan is there."""
    collector = Collector(window, app)
    session.foreseen.connect(collector.rest_soon)
    return collector


def running_from(now: int) -> Callable[[], int]:
    """Return a clock that shows ``now`` and goes on from there."""
    begun = current_minute()
    return lambda: now + current_minute() - begun
