"""How fast the timeline is painted and panned, and how soon the window stands.

The first demonstration with twelve vehicles is copied to thirty and planned;
its strip is then repeated across and down until it holds two thousand
pieces of work.  Printed are milliseconds: of one full repaint with nothing
kept from before, of repaints while panning by keys of one page and by
pixels of a drag, and of a key with all that follows it; and of a cold start (a
fresh process, from its first import) until the window is painted, and until
it is with the plan of thirty models, each also as time of the processor
alone.  The yardstick is a fixed piece of arithmetic.  Run it as
``python tests/benchmarks/timeline.py [rounds]``.
"""

from __future__ import annotations

import os
import statistics
import subprocess
import sys
import tempfile
import time
from dataclasses import replace
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

MODELS, PIECES = 30, 2000
START = """
import time
begun = time.perf_counter()
import os
import sys
from pathlib import Path
import app.entry
from app.window.main_window import MainWindow
from app.window.start import run_window

def told(word):
    spent = round((time.perf_counter() - begun) * 1000), round(time.process_time() * 1000)
    print(word, *spent, flush=True)

class Watched(MainWindow):
    painted = False

    def paintEvent(self, event):
        super().paintEvent(event)
        if not Watched.painted:
            Watched.painted = True
            told("window")
            self.session.pictured.connect(lambda _change: QTimer.singleShot(0, self.ended))

    def ended(self):
        self.repaint()
        told("plan")
        os._exit(0)

from PySide6.QtCore import QTimer
import app.window.start as start
start.MainWindow = Watched
run_window(Path(sys.argv[1]) / "bench.tackfree", int(sys.argv[2]))
"""


def many_models(count: int):
    """Return the club's book with so many models, and the start of its first evening."""
    from app.service import demos

    book = demos.read("club_day_batch").book
    project = book.projects[0]
    copies = tuple(
        replace(project.models[at % len(project.models)], name=f"vehicle {at + 1}")
        for at in range(count)
    )
    rooms = tuple(replace(one, drying_places=count * 4) for one in book.room.locations)
    book = replace(
        book,
        room=replace(book.room, locations=rooms),
        projects=(replace(project, models=copies, pins=(), log=(), pilot=""),),
    )
    return book, demos.first_evening(book)


def repeated(strip, count: int):
    """Return the strip with at least so many pieces: repeated once in time, then in lanes."""
    from planner.values.moment import Interval

    length = strip.columns[-1].interval.end - strip.columns[0].interval.start + 1440
    length = -(-length // 10080) * 10080

    def later(interval):
        return Interval(interval.start + length, interval.end + length)

    def name(key, at):
        return key._replace(model=f"{key.model}, copy {at}", coat=key.coat)

    columns = [*strip.columns, *(replace(c, interval=later(c.interval)) for c in strip.columns)]
    lanes, pieces, wedges = [], [], []
    at = 0
    while len(pieces) < count:
        base = len(lanes)
        lanes += [
            replace(lane, index=base + lane.index, model=f"{lane.model}, copy {at}")
            for lane in strip.lanes
        ]
        for shift in (0, length):
            for piece in strip.pieces:
                interval = later(piece.interval) if shift else piece.interval
                pieces.append(
                    replace(
                        piece,
                        key=name(piece.key, f"{at}.{shift}"),
                        interval=interval,
                        lanes=tuple(base + lane for lane in piece.lanes),
                    )
                )
            wedges += [
                replace(
                    wedge,
                    lane=base + wedge.lane,
                    start=wedge.start + shift,
                    opens=None if wedge.opens is None else wedge.opens + shift,
                    until=None if wedge.until is None else wedge.until + shift,
                )
                for wedge in strip.wedges
            ]
        at += 1
    return replace(
        strip,
        columns=tuple(columns),
        lanes=tuple(lanes),
        pieces=tuple(pieces),
        wedges=tuple(wedges),
    )


def timed(act) -> float:
    """Return how long the processor is at something [ms]: other programs do not count."""
    start = time.thread_time()
    act()
    return (time.thread_time() - start) * 1000


def yardstick() -> float:
    """Return the seconds that a fixed piece of arithmetic takes."""
    return timed(lambda: sum(number * number for number in range(300_000))) / 1000


def line(name: str, values: list[float]) -> None:
    """Print one line of the table."""
    middle = statistics.median(values)
    print(f"{name:34}{min(values):>8.1f}{middle:>8.1f}{max(values):>8.1f}", flush=True)


def main() -> None:
    """Print the table."""
    rounds = int(sys.argv[1]) if len(sys.argv) > 1 else 40
    from PySide6.QtCore import Qt
    from PySide6.QtTest import QTest
    from PySide6.QtWidgets import QApplication

    from app.window.picture import picture_of
    from app.window.timeline.view import TimelineView
    from storage.bench_book import BenchBook

    book, now = many_models(MODELS)
    with tempfile.TemporaryDirectory() as folder:
        BenchBook.create(Path(folder) / "bench.tackfree", book).close()
        asked = [sys.executable, "-c", START, folder, str(now)]
        homes = dict.fromkeys(("HOME", "XDG_CONFIG_HOME", "XDG_DATA_HOME"), folder)
        cold: dict[str, list[float]] = {}
        for _ in range(5):
            told = subprocess.check_output(asked, env={**os.environ, **homes}, text=True)
            for name, wall, spent in (one.split() for one in told.splitlines()):
                cold.setdefault(f"cold start to {name}", []).append(float(wall))
                cold.setdefault(f"cold start to {name}, processor", []).append(float(spent))
    app = QApplication([])
    strip = repeated(picture_of(book, now, quick=True).strip, PIECES)
    print(f"{len(strip.pieces)} pieces, {len(strip.wedges)} wedges, {len(strip.lanes)} lanes")
    view = TimelineView()
    view.resize(1280, 800)
    view.show()
    app.processEvents()
    print(f"{'ms':34}{'least':>8}{'median':>8}{'most':>8}")
    line("yardstick", [yardstick() * 1000 for _ in range(9)])
    for name, values in cold.items():
        line(name, values)
    line("laying out at one zoom", [timed(lambda: view.show_strip(strip)) for _ in range(5)])
    port = view.viewport()
    for zoom in ("as it opens", "whole plan"):
        if zoom == "whole plan":
            view.zoom_to_fit()
        across, down = view.horizontalScrollBar(), view.verticalScrollBar()
        fresh, pages, drags, events = [], [], [], []
        for number in range(rounds):
            across.setValue(across.maximum() * number // rounds)
            down.setValue(down.maximum() * (number * 7 % rounds) // rounds)
            view.forget_painted()
            fresh.append(timed(port.repaint))
        for number in range(rounds):
            across.setValue(across.pageStep() * number % max(1, across.maximum()))
            pages.append(timed(port.repaint))
        across.setValue(0)
        down.setValue(0)
        for number in range(rounds * 4):
            across.setValue(number * 25 % max(1, across.maximum()))
            down.setValue(number * 9 % max(1, down.maximum()))
            drags.append(timed(port.repaint))
        for number in range(rounds):
            key = (Qt.Key.Key_Right, Qt.Key.Key_Down)[number % 2]
            events.append(timed(lambda key=key: (QTest.keyClick(view, key), app.processEvents())))
        line(f"{zoom}: repaint, nothing kept", fresh)
        line(f"{zoom}: repaint, a page on", pages)
        line(f"{zoom}: repaint while dragging", drags)
        line(f"{zoom}: a key and its repaint", events)


if __name__ == "__main__":
    main()
