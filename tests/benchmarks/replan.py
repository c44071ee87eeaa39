"""How soon the window shows what a change of temperature moved.

Opens the three-vehicle demonstration offscreen and goes from 21 °C to 14 °C
and back.  Printed are the milliseconds from the edit until the list of what
moved is painted, until the view on screen is, and their ratio to a fixed
piece of arithmetic timed in the same run.  Run it as
``python tests/benchmarks/replan.py [rounds]``.
"""

from __future__ import annotations

import os
import statistics
import sys
import tempfile
import time
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from PySide6.QtCore import QEventLoop, QSettings, QTimer
from PySide6.QtWidgets import QApplication

from app.service import demos, edits
from app.window.main_window import MainWindow
from app.window.session import Session
from app.window.start import running_from
from storage.bench_book import BenchBook


def rest(seconds: float) -> None:
    """Let the window work for a while."""
    loop = QEventLoop()
    QTimer.singleShot(int(seconds * 1000), loop.quit)
    loop.exec()


def yardstick() -> float:
    """Return the seconds that a fixed piece of arithmetic takes."""
    start = time.perf_counter()
    sum(number * number for number in range(300_000))
    return time.perf_counter() - start


def main() -> None:
    """Print the table."""
    rounds = int(sys.argv[1]) if len(sys.argv) > 1 else 12
    app = QApplication([])
    folder = Path(tempfile.mkdtemp())
    book = demos.read("harbour_tenders").book
    BenchBook.create(folder / "bench.tackfree", book).close()
    session = Session(running_from(demos.first_evening(book)))
    window = MainWindow(session, QSettings(str(folder / "s.ini"), QSettings.Format.IniFormat))
    window.resize(1280, 800)
    window.show()
    session.open(folder / "bench.tackfree")
    window.show_view(1)
    rest(2)
    shown: dict[str, float] = {}

    def told() -> None:
        window.moved.repaint()
        window.moved.list.viewport().repaint()
        shown.setdefault("moved", time.perf_counter())

    def drawn() -> None:
        window.repaint()
        shown.setdefault("view", time.perf_counter())

    session.pictured.connect(lambda _change: QTimer.singleShot(0, told))
    session.prepared.connect(lambda: QTimer.singleShot(0, drawn))
    times: dict[str, list[float]] = {"moved": [], "view": [], "yardstick": []}
    for number in range(rounds):
        shown.clear()
        times["yardstick"].append(yardstick() * 1000)
        start = time.perf_counter()
        warmth = (14, 21)[number % 2]
        session.attempt(lambda old, warmth=warmth: edits.set_air(old, "", warmth, 50))
        rest(1)
        for name in ("moved", "view"):
            times[name].append((shown[name] - start) * 1000)
    window.close()
    app.processEvents()
    unit = statistics.median(times["yardstick"])
    print(f"{'ms':10}{'least':>8}{'median':>8}{'most':>8}{'ratio':>8}")
    for name, values in times.items():
        middle = statistics.median(values)
        print(f"{name:10}{min(values):>8.0f}{middle:>8.0f}{max(values):>8.0f}{middle / unit:>8.2f}")


if __name__ == "__main__":
    main()
