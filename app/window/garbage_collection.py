"""Python's search for circles that nobody holds any more, at moments that suit the window.

Left alone, Python searches in whichever thread happens to ask for memory: what is found by the
thread that plans is deleted there, and Qt allows its own things to be deleted in the window's
thread only.  A search through everything also stops all threads for a tenth of a second.

What is free after that goes back to the system: large pictures and plans come and go, and
Linux's C library would keep their room, a quarter of all that the program holds.
"""

from __future__ import annotations

import ctypes
import gc
import sys
from contextlib import suppress

from PySide6.QtCore import QEvent, QObject, Qt, QTimer
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QWidget

LOOK_MS = 1_000
YOUNG = 20_000  # new things that are not worth a search [pieces]
REST_MS = 3_000  # without a key or the pointer: long enough to be no pause between two words
TOUCHES = (
    QEvent.Type.KeyPress,
    QEvent.Type.MouseButtonPress,
    QEvent.Type.MouseMove,
    QEvent.Type.Wheel,
    QEvent.Type.TouchUpdate,
)


class Collector(QObject):
    """Searches in the window's own thread, and nowhere else, until `stop`.

    What is new is searched every second, as far as there is much of it;
    everything when the person rests, or turns to another program.  Made once
    the window is shown.
    """

    def __init__(self, window: QWidget, app: QGuiApplication) -> None:
        super().__init__(window)
        gc.disable()
        gc.freeze()  # the libraries that are loaded by now stay to the end; no view is there yet
        self._look = QTimer(self)
        self._look.setInterval(LOOK_MS)
        self._look.timeout.connect(self._search_new)
        self._look.start()
        self._rest = QTimer(self)
        self._rest.setSingleShot(True)
        self._rest.setInterval(REST_MS)
        self._rest.timeout.connect(self.search_all)
        window.windowHandle().installEventFilter(self)
        app.applicationStateChanged.connect(self._turned)

    def stop(self) -> None:
        """Leave the search to Python again."""
        self._look.stop()
        self._rest.stop()
        gc.unfreeze()
        gc.enable()

    def rest_soon(self) -> None:
        """Search everything at the next rest: much has become old."""
        self._rest.start()

    def eventFilter(self, _watched: QObject, event: QEvent) -> bool:
        """Begin to count the rest anew whenever the window is touched."""
        if event.type() in TOUCHES:
            self._rest.start()
        return False

    def _search_new(self) -> None:
        if gc.get_count()[0] > YOUNG:
            gc.collect(1)

    def search_all(self) -> None:
        """Search everything, and give back what is free."""
        gc.collect()
        if sys.platform == "linux":
            with suppress(AttributeError):  # not every C library can
                ctypes.CDLL(None).malloc_trim(0)

    def _turned(self, state: Qt.ApplicationState) -> None:
        if state is not Qt.ApplicationState.ApplicationActive:
            self.search_all()
