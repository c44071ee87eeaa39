"""How fast the timeline is painted and panned.

The first demonstration with twelve vehicles is copied to thirty and planned;
its strip is then repeated across and down until it holds two thousand
pieces of work.  Printed are milliseconds of the processor: of one full repaint
with nothing kept from before, of repaints while panning by keys of one page
and by pixels of a drag, and of a key with all that follows it.  Between two
pages 100 ms go by and between two moves of a drag 8 ms, in which the window
paints ahead as it does for a person; how long it is away for that at a time
is told, too.  The yardstick is a fixed piece of arithmetic.  Run it as
``python tests/benchmarks/timeline.py [rounds]``.
"""

from __future__ import annotations

import os
import statistics
import sys
import time
from dataclasses import replace

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

MODELS, PIECES = 30, 2000


def many_models(count: int):
    """Return the club's book with so many models, and the start of its first evening."""
    from app.service import demos

    book = demos.read("club_day_batch").book
    project = book.projects[0]
    copies = tuple(
        replace(project.models[at % len(project.models)], name=f"vehicle {at + 1}")
        for at in range(count)
    )
    rooms = tuple(replace(location, drying_places=count * 4) for location in book.room.locations)
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

    from app.window.plan_snapshot import picture_of
    from app.window.timeline.view import TimelineView

    book, now = many_models(MODELS)
    app = QApplication([])
    strip = repeated(picture_of(book, now, quick=True).strip, PIECES)
    print(f"{len(strip.pieces)} pieces, {len(strip.wedges)} wedges, {len(strip.lanes)} lanes")
    view = TimelineView()
    view.resize(1280, 800)
    view.show()
    app.processEvents()
    print(f"{'ms':34}{'least':>8}{'median':>8}{'most':>8}")
    line("yardstick", [yardstick() * 1000 for _ in range(9)])
    line("laying out at one zoom", [timed(lambda: view.show_strip(strip)) for _ in range(5)])
    port = view.viewport()
    ahead: list[float] = []
    paint_ahead = view._paint_ahead
    view._idle.timeout.disconnect()
    view._idle.timeout.connect(lambda: ahead.append(timed(paint_ahead)))

    def pause(milliseconds: float) -> None:
        end = time.perf_counter() + milliseconds / 1000
        while time.perf_counter() < end:
            app.processEvents()

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
            pause(100)
            across.setValue(across.pageStep() * number % max(1, across.maximum()))
            pages.append(timed(port.repaint))
        across.setValue(0)
        down.setValue(0)
        for number in range(rounds * 4):
            pause(8)
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
    line("a square painted ahead", ahead)


if __name__ == "__main__":
    main()
