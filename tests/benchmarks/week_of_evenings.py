"""A week of evenings at the bench under a real display, by real keys, with seeded troubles.

Each week opens the window on an invented book under Xvfb, with a clock of its own, and works
through seven evenings with the keys of the bench mode, sent by xdotool: things take longer or
shorter than planned, a film is tacky, work goes wrong, is left out, or is another than planned, an
evening ends early or an hour later, and coats go over films that are not ready.  A line tells
the finish as it was told when each evening began; below it stands each change of the finish, with
what had been done just before.  The judge looks at every plan that comes on screen.
Needs Xvfb and xdotool.  Run it as
``python tests/benchmarks/week_of_evenings.py [--seeds 1-2] [--evenings 7] [--carts 3]``.
"""

from __future__ import annotations

import argparse
import os
import shutil
import subprocess
import sys
import tempfile
import time
from collections.abc import Callable
from pathlib import Path

ROOT = Path(__file__).parent.parent.parent
sys.path[:0] = [str(ROOT), str(ROOT / "tests"), str(Path(__file__).parent)]

from bench_steps import AtTheBench
from evening_week import CLOCK, EveningWeek, carts
from PySide6.QtCore import QSettings, Qt
from PySide6.QtGui import QKeySequence
from PySide6.QtWidgets import QApplication, QWidget
from small_book import NOW
from walk_by_keys import display

from app.window.main_window import MainWindow
from app.window.session import Session
from storage.bench_book import BenchBook

NAMES = {Qt.Key.Key_Space: "space", Qt.Key.Key_Escape: "Escape", Qt.Key.Key_Return: "Return"}
PATIENCE_S = 20.0
LANDS_S = 0.05  # a key is given so long to come through the display [s]


class RealKeys:
    """What a test's robot does, by keys that go through the display."""

    def keyClick(self, widget: QWidget, key: Qt.Key) -> None:
        """Press a key where the display has the focus, which is the window of a widget."""
        name = NAMES.get(key) or QKeySequence(key).toString()
        name = name.lower() if len(name) == 1 else name
        self._send(widget, "key", name)

    def keyClicks(self, widget: QWidget, text: str) -> None:
        """Type a text."""
        self._send(widget, "type", "--delay", "5", text)

    def _send(self, widget: QWidget, *words: str) -> None:
        window = widget.window()
        subprocess.run(["xdotool", "windowfocus", "--sync", str(int(window.winId()))], check=False)
        window.activateWindow()
        widget.setFocus()
        self._rest(LANDS_S)
        subprocess.run(["xdotool", *words], check=True)
        self._rest(LANDS_S)

    def waitUntil(self, holds: Callable[[], bool], timeout: int) -> None:
        """Let the window work until something holds."""
        until = time.monotonic() + timeout / 1000
        while not holds():
            if time.monotonic() > until:
                raise TimeoutError
            self._rest(0.01)

    def _rest(self, seconds: float) -> None:
        until = time.monotonic() + seconds
        while time.monotonic() < until:
            QApplication.processEvents()
            time.sleep(0.002)


def week(seed: int, evenings: int, count: int, home: Path) -> tuple[EveningWeek, list[str]]:
    """Go through one week, and return what was told, also in lines."""
    path = home / "bench.tackfree"
    BenchBook.create(path, carts(count)).close()
    session = Session(lambda: NOW)
    window = MainWindow(session, QSettings(str(home / "s.ini"), QSettings.Format.IniFormat))
    window.show()
    session.open(path)
    until = time.monotonic() + PATIENCE_S
    while session.picture is None and time.monotonic() < until:
        QApplication.processEvents()
        time.sleep(0.01)
    here = AtTheBench(RealKeys(), window, NOW)
    told = EveningWeek(here, seed)
    told.run(evenings)
    lines = told.lines()
    here.bench.leave()
    window.close_at_once()
    return told, lines


def main() -> None:
    """Print the weeks."""
    reading = argparse.ArgumentParser()
    reading.add_argument("--seeds", default="1-2", help="one, or the first and the last")
    reading.add_argument("--evenings", type=int, default=7)
    reading.add_argument("--carts", type=int, default=3)
    given = reading.parse_args()
    for tool in ("Xvfb", "xdotool"):
        if shutil.which(tool) is None:
            sys.exit(f"{tool} is needed")
    server, name = display()
    os.environ.update(DISPLAY=name, QT_QPA_PLATFORM="xcb")
    first, _, last = given.seeds.partition("-")
    moved = by_clock = 0
    app = QApplication([])
    app.setQuitOnLastWindowClosed(False)
    try:
        for seed in range(int(first), int(last or first) + 1):
            with tempfile.TemporaryDirectory() as home:
                begun = time.monotonic()
                told, lines = week(seed, given.evenings, given.carts, Path(home))
                took = time.monotonic() - begun
            print(f"seed {seed}, {took:.0f} s, {told.here.verdicts} plans judged")
            print("\n".join(f"  {line}" for line in lines), flush=True)
            changes = [one for evening in told.told for one in evening.moved]
            moved += len(changes)
            by_clock += sum(one.cause == CLOCK for one in changes)
    finally:
        server.terminate()
    print(f"{moved} changes of the finish, {by_clock} of them because time went by")


if __name__ == "__main__":
    main()
