"""A person at the keyboard who never tires: seeded acts on the real window, and what is left after.

``python tests/walking.py --seed N`` opens the program's own window offscreen on a demonstration,
walks, and prints what it met as one line of JSON; whoever calls it reads from its end whether
the window lived.  Keys go to whatever has them, in a dialog of a dialog too, so a timer drives
the walk and not somebody outside.
"""

from __future__ import annotations

import argparse
import gc
import json
import os
import random
import re
import sys
import tempfile
import threading
from collections import Counter
from collections.abc import Callable
from pathlib import Path
from typing import Any

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
sys.path.insert(0, str(Path(__file__).parents[1]))  # before tests/, which has an app of its own

from every_dialog import every_dialog
from PySide6.QtCore import QObject, QPoint, Qt, QTimer, qInstallMessageHandler
from PySide6.QtGui import QAction, QContextMenuEvent, QScreen, QWindow
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLayout, QWidget
from shiboken6 import Shiboken

from app.service import demos, edits
from app.window import improving, start
from app.window.garbage_collection import Collector
from app.window.main_window import MainWindow
from app.window.palette import Appearance
from storage.bench_book import BenchBook

BOOK = "harbour_tenders"
REST_TICKS = 400  # of `PAUSE_MS`: as long as planning is waited for
PAUSE_MS = 25
SHIFT, CTRL = Qt.KeyboardModifier.ShiftModifier, Qt.KeyboardModifier.ControlModifier
PLAIN = Qt.KeyboardModifier.NoModifier
Key = Qt.Key
ARROWS = (Key.Key_Down, Key.Key_Down, Key.Key_Up, Key.Key_Left, Key.Key_Right, Key.Key_End)
OTHERS = (Key.Key_Space, Key.Key_Return, Key.Key_Delete, Key.Key_F2, Key.Key_Plus, Key.Key_7)
COMMANDS = (
    (Key.Key_F11, PLAIN),
    (Key.Key_F4, PLAIN),
    (Key.Key_F6, PLAIN),
    (Key.Key_H, CTRL),
    (Key.Key_L, CTRL),
    (Key.Key_E, CTRL | SHIFT),
    (Key.Key_Backspace, CTRL),
    (Key.Key_F1, PLAIN),
)
HANGS_ON = re.compile(r"^parent\.+ <.* at (0x[0-9a-f]+)>$", re.MULTILINE)
LEAVES = (QAction, QScreen, QWindow)
QUIET = "This plugin does not support"  # of the offscreen platform


def resident() -> int:
    """Return how much memory this process holds now [kB], 0 where the system does not tell."""
    try:
        lines = Path("/proc/self/status").read_text(encoding="ascii").splitlines()
    except OSError:
        return 0
    return next(int(line.split()[1]) for line in lines if line.startswith("VmRSS"))


def handles() -> int:
    """Return how many files this process has open, 0 where the system does not tell."""
    try:
        return len(os.listdir("/proc/self/fd"))
    except OSError:
        return 0


def held() -> dict[str, int]:
    """Return what the process holds: memory [kB] and things of Qt, by kind."""
    wrapped = Shiboken.getAllValidWrappers()
    objects = [one for one in wrapped if isinstance(one, QObject)]
    return {
        "memory": resident(),
        "wrapped": len(wrapped),
        "objects": len(objects),
        "widgets": len(QApplication.allWidgets()),
        "timers": sum(1 for one in objects if isinstance(one, QTimer)),
        "handles": handles(),
        "threads": threading.active_count(),
    }


def strangers() -> list[str]:
    """Return what hangs on a stranger: the binding would forget it when that goes.

    Each object of Qt that Python knows hangs, in the binding's own books, on its parent or what
    is above that, or on nothing.  A layout goes with what it lies on; below an action,
    a screen or a window of the system is nothing.
    """
    wrapped = Shiboken.getAllValidWrappers()
    known = {id(one): one for one in wrapped}
    found = []
    for one in wrapped:
        if not isinstance(one, QObject) or isinstance(one, LEAVES):
            continue
        told = HANGS_ON.search(Shiboken.dump(one))
        above, on = QObject.parent(one), known.get(int(told[1], 16)) if told else None
        while above is not None and above is not on:
            above = QObject.parent(above)
        if on is not None and above is None and not isinstance(on, QLayout):
            found.append(f"{type(one).__name__} on {type(on).__name__}")
    return found


class Walk(QObject):
    """So many acts, chosen by a seed.

    ``told`` gathers exceptions that were raised into Qt and what Qt said; ``rests`` what was
    held at each rest: all dialogs closed, the first page shown, planning ended; ``strange`` what
    hung on a stranger then.
    """

    def __init__(self, window: MainWindow, asked: argparse.Namespace) -> None:
        super().__init__(window)
        self._window = window
        self._drawn = random.Random(asked.seed)
        self._left, self._every = asked.acts, asked.every
        self._collect, self._verbose = asked.collect, asked.verbose
        self._waited = 0
        self._now = window.session.now
        self.told: list[str] = []
        self.rests: list[dict[str, int]] = []
        self.strange: set[str] = set()
        self.done: Counter[str] = Counter()
        sys.excepthook = self._raised
        sys.unraisablehook = lambda fault: self._raised(
            fault.exc_type, fault.exc_value or RuntimeError(fault.err_msg), fault.exc_traceback
        )
        qInstallMessageHandler(self._said)
        self._kinds: list[tuple[int, Callable[[], object]]] = [
            (30, self._page),
            (20, self._tab),
            (16, self._arrow),
            (8, self._other),
            (4, self._letter),
            (6, self._resize),
            (4, self._undo),
            (3, self._redo),
            (5, self._edit),
            (4, self._tick),
            (5, self._dialog),
            (3, self._command),
            (2, self._menu),
            (1, self._look),
            (2, self._later),
        ]
        self._next(self._rest)

    def _raised(self, kind: type[BaseException], fault: BaseException | None, trace: Any) -> None:
        where = ""
        while trace is not None:
            where = f"{trace.tb_frame.f_code.co_filename}:{trace.tb_lineno}"
            trace = trace.tb_next
        self.told.append(f"{kind.__name__}: {fault} at {where}")

    def _said(self, _kind: object, _where: object, message: str) -> None:
        if not message.startswith(QUIET):
            self.told.append(f"Qt: {message}")

    def _next(self, act: Callable[[], None]) -> None:
        QTimer.singleShot(self._drawn.choice((0, 0, 1, 5, PAUSE_MS)), self, act)

    def _act(self) -> None:
        """Do one thing; what follows is asked for first, as this may open a loop of its own."""
        if self._left <= 0:
            self._next(self._rest)
            return
        self._left -= 1
        self._next(self._rest if self._left % self._every == 0 else self._act)
        within = self._within()
        if within is not None and self._drawn.random() < 0.25:
            act: Callable[[], object] = self._leave
        else:
            weights = [weight for weight, _ in self._kinds]
            act = self._drawn.choices([one for _, one in self._kinds], weights)[0]
        self.done[act.__name__.lstrip("_")] += 1
        if self._verbose:
            print(self._left, act.__name__, file=sys.stderr, flush=True)
        act()
        if self._collect:
            gc.collect()

    def _rest(self) -> None:
        """Close what is open and wait for the plan; then look at what is held."""
        within = self._within()
        self._waited += 1
        if self._waited < REST_TICKS and (within is not None or self._busy()):
            if within is not None:
                within.close()
            QTimer.singleShot(PAUSE_MS, self, self._rest)
            return
        self._waited = 0
        self._window.resize(1280, 800)
        self._window.show_page("tonight")
        QTimer.singleShot(4 * PAUSE_MS, self, self._look_at_rest)

    def _busy(self) -> bool:
        return self._window.session._worker.busy

    def _look_at_rest(self) -> None:
        for collector in self._window.findChildren(Collector):
            collector.search_all()  # as when a person rests for a while
        self.rests.append(held())
        self.strange |= set(strangers())
        if self._left > 0:
            self._next(self._act)
        else:
            self._window.close()

    def _within(self) -> QWidget | None:
        """Return what lies over the window, the innermost: a menu, a dialog, the bench mode."""
        over = QApplication.activePopupWidget() or QApplication.activeModalWidget()
        if over is None:
            shown = [one for one in QApplication.topLevelWidgets() if one.isVisible()]
            over = next((one for one in shown if one is not self._window and one.isWindow()), None)
        return over

    def _target(self) -> QWidget:
        within = self._within()
        focused = QApplication.focusWidget()
        if within is not None and (focused is None or not within.isAncestorOf(focused)):
            return within
        return focused or self._window

    def _press(self, key: Key, held: Qt.KeyboardModifier = PLAIN) -> None:
        QTest.keyClick(self._target(), key, held)

    def _page(self) -> None:
        at = self._drawn.randrange(len(self._window.pages))
        if at < 10 and self._within() is None:
            self._press(Key(Key.Key_0 + (at + 1) % 10), CTRL)
        else:
            self._window.show_view(at)

    def _tab(self) -> None:
        back = self._drawn.random() < 0.5
        self._press(Key.Key_Backtab if back else Key.Key_Tab, SHIFT if back else PLAIN)

    def _arrow(self) -> None:
        self._press(self._drawn.choice(ARROWS))

    def _other(self) -> None:
        self._press(self._drawn.choice(OTHERS))

    def _letter(self) -> None:
        self._press(Key(Key.Key_A + self._drawn.randrange(26)))

    def _command(self) -> None:
        self._press(*self._drawn.choice(COMMANDS))

    def _leave(self) -> None:
        self._press(Key.Key_Escape)

    def _resize(self) -> None:
        self._window.resize(700 + self._drawn.randrange(1000), 500 + self._drawn.randrange(500))

    def _undo(self) -> None:
        self._window.session.undo()

    def _redo(self) -> None:
        self._window.session.redo()

    def _edit(self) -> None:
        warm, damp = 12 + self._drawn.randrange(14), 40 + self._drawn.randrange(30)
        self._window.session.attempt(lambda book: edits.set_air(book, "", warm, damp))

    def _tick(self) -> None:
        session = self._window.session
        placements = session.picture.plan.placements if session.picture else ()
        ahead = sorted((one for one in placements if not one.logged), key=lambda one: one.start)
        if ahead:
            self._window.acts.done(ahead[0].key)

    def _dialog(self) -> None:
        if self._within() is None and self._window.session.book is not None:
            openers = every_dialog(self._window)
            name = self._drawn.choice(sorted(openers))
            dialog = openers[name]()
            dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
            if not dialog.isVisible():
                dialog.open()

    def _menu(self) -> None:
        on = self._target()
        middle = on.rect().center()
        event = QContextMenuEvent(
            QContextMenuEvent.Reason.Keyboard, QPoint(middle), on.mapToGlobal(middle)
        )
        QApplication.sendEvent(on, event)

    def _look(self) -> None:
        self._window.set_look(self._drawn.choice(tuple(Appearance)))

    def _later(self) -> None:
        self._now += 5 * self._drawn.randrange(1, 12)
        self._window.session.set_clock(lambda: self._now)
        self._window.clock_moved()


def main() -> None:
    """Walk, and print what was met."""
    reading = argparse.ArgumentParser(description=__doc__)
    reading.add_argument("--seed", type=int, default=1)
    reading.add_argument("--acts", type=int, default=200)
    reading.add_argument("--every", type=int, default=100, help="acts between two rests")
    reading.add_argument("--collect", action="store_true", help="collect after each act")
    reading.add_argument("--book", default=BOOK, help="one of the demonstrations")
    reading.add_argument("--verbose", action="store_true", help="name each act before it is done")
    asked = reading.parse_args()
    improving.START_MS = 10**8  # no process of its own to improve plans
    book = demos.read(asked.book).book
    walks: list[Walk] = []

    class Walked(MainWindow):
        def __init__(self, *given: Any) -> None:
            super().__init__(*given)
            walks.append(Walk(self, asked))

    start.MainWindow = Walked  # type: ignore[misc]
    with tempfile.TemporaryDirectory() as folder:
        for name in ("HOME", "XDG_DATA_HOME", "XDG_CONFIG_HOME", "XDG_CACHE_HOME"):
            os.environ[name] = folder
        os.chdir(folder)
        path = Path(folder) / "bench.tackfree"
        BenchBook.create(path, book).close()
        status = start.run_window(path, demos.first_evening(book))
        walk = walks[0]
        told = {
            "status": status,
            "told": walk.told,
            "rests": walk.rests,
            "done": walk.done,
            "strange": sorted(walk.strange),
        }
        print(json.dumps(told), flush=True)


if __name__ == "__main__":
    main()
