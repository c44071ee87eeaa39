"""How long the window keeps a person waiting while better plans are looked for.

The real window is opened offscreen on the invented batch of thirty vehicles;
after it has planned, the process that improves plans works for so many
seconds, and every plan that it finds is taken.  As those come seldom, a second
round lets one come every second, by the same way: unpickled, looked at, taken,
read and shown.  A timer of 5 ms notes how late
it is each time: that is how long a key would have waited.  Told are these
delays, for each view on screen in turn, and the worst ones with what the
window did.  ``wall`` is what a person would have felt on this machine as busy
as it is; ``own`` counts what the processor did for the window meanwhile, so
other programs do not count.  Run it as
``python tests/benchmarks/responsive.py [seconds] [page ...]``.
"""

from __future__ import annotations

import os
import pickle
import sys
import tempfile
import time
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

EVERY_MS = 5
PAGES = ("tonight", "timeline", "build", "stock")
VEHICLES = 30


def share(values: list[float], part: float) -> float:
    """Return the value that this share of all values does not pass."""
    return sorted(values)[min(len(values) - 1, int(part * len(values)))]


class Watch:
    """Notes how late a timer is, by the clock and by the processor's time for this thread."""

    def __init__(self) -> None:
        from PySide6.QtCore import Qt, QTimer

        self.wall: list[float] = []
        self.own: list[float] = []
        self.worst: list[tuple[float, str]] = []
        self.doing = ""
        self._at = time.perf_counter(), time.thread_time()
        self._timer = QTimer()
        self._timer.setTimerType(Qt.TimerType.PreciseTimer)
        self._timer.setInterval(EVERY_MS)
        self._timer.timeout.connect(self._note)

    def begin(self) -> None:
        """Begin anew."""
        self.wall, self.own, self.worst = [], [], []
        self._at = time.perf_counter(), time.thread_time()
        self._timer.start()

    def stop(self) -> None:
        """Note nothing more."""
        self._timer.stop()

    def _note(self) -> None:
        now = time.perf_counter(), time.thread_time()
        late = max(0.0, (now[0] - self._at[0]) * 1000 - EVERY_MS)
        self.wall.append(late)
        self.own.append((now[1] - self._at[1]) * 1000)
        if late > 50:
            self.worst.append((late, self.doing))
        self.doing = ""
        self._at = now


class Often:
    """Stands for the process: has another plan every second, as the bytes that it would send."""

    running = True

    def __init__(self, plans: list[bytes]) -> None:
        self._plans = plans
        self._sent, self._due = 0, time.monotonic() + 1

    def news(self) -> list:
        """Return the next plan if a second has gone by."""
        if time.monotonic() < self._due:
            return []
        self._due = time.monotonic() + 1
        self._sent += 1
        return [pickle.loads(self._plans[self._sent % len(self._plans)])]

    def stop(self) -> None:
        """Nothing runs."""


def both_plans(book, now: int) -> list[bytes]:
    """Return the plan by one rule and that by all, as the process would send them."""
    from app.service.improving import Improved
    from app.service.planning import plan

    made = [plan(book, now, quick=quick) for quick in (True, False)]
    return [pickle.dumps(Improved(one.plan, True, one.verdict)) for one in made]


def line(name: str, values: list[float]) -> None:
    """Print one line of the table."""
    told = [share(values, 0.5), share(values, 0.99), max(values)]
    print(f"{name:28}" + "".join(f"{one:>9.1f}" for one in told), flush=True)


def main() -> None:
    """Print the table."""
    seconds = float(sys.argv[1]) if len(sys.argv) > 1 else 60.0
    pages = tuple(sys.argv[2:]) or PAGES
    from families import NOW, batch
    from PySide6.QtCore import QEventLoop, QSettings
    from PySide6.QtWidgets import QApplication

    from app.window import improving, start
    from app.window.main_window import MainWindow
    from app.window.session import Session
    from storage.bench_book import BenchBook

    improving.START_MS = 0
    app = QApplication([])
    watch = Watch()
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "bench.tackfree"
        BenchBook.create(path, batch(VEHICLES, 0)).close()
        session = Session(lambda: NOW)
        settings = QSettings(f"{folder}/settings.ini", QSettings.Format.IniFormat)
        window = MainWindow(session, settings)
        session.leaves_tonight = lambda _plan: True  # every better plan is taken
        taken: list[float] = []

        def seen(change) -> None:
            taken.append(time.perf_counter())
            watch.doing = f"took: {change.cause}"

        session.pictured.connect(seen)
        session.prepared.connect(lambda: setattr(watch, "doing", "showed what was read"))
        window.show()

        def run(until) -> None:
            while not until():
                app.processEvents(QEventLoop.ProcessEventsFlag.WaitForMoreEvents, 100)

        def watched(name: str, length: float) -> None:
            window.show_page(name)
            app.processEvents()
            taken.clear()
            watch.begin()
            end = time.perf_counter() + length
            run(lambda: time.perf_counter() > end)
            watch.stop()
            line(f"{name}: wall, {len(taken)} plans", watch.wall)
            line(f"{name}: own", watch.own)
            for late, doing in sorted(watch.worst, reverse=True)[:5]:
                print(f"    {late:.0f} ms late {doing}")

        print(f"{'ms':28}{'median':>9}{'99 %':>9}{'most':>9}")
        watch.begin()
        session.open(path)
        start.share_the_interpreter()
        run(lambda: window.improving.running)
        line("opening, planning: wall", watch.wall)
        line("opening, planning: own", watch.own)
        for name in pages:
            watched(name, seconds / len(pages))
        often = Often(both_plans(session.book, NOW))
        window.improving.stop()
        improving.Improver = lambda _task: often
        window.improving._start()
        print("a plan every second:")
        for name in pages:
            watched(name, 8)
        window.close()


if __name__ == "__main__":
    main()
