"""How long the window keeps a person waiting while better plans are looked for.

The real window is opened offscreen on the invented batch of thirty vehicles;
after it has planned, the process that improves plans works for so many
seconds, and every plan that it finds is taken.  As those come seldom, a second
round lets one come every second, by the same way: unpickled, looked at, taken,
read and shown.  These are two plans in turn, the second made with the vehicles
in the opposite order, so that nearly every piece of work moves.  A timer of
5 ms notes how late it is each time: that is how long a key would have waited.
Told are these delays, for each view on screen in turn, and the worst ones with
what the window did.  ``wall`` is what a person would have felt on this machine
as busy as it is; ``own`` counts what the processor did for the thread of the
window meanwhile, so neither other programs nor other threads count.  Run it as
``python tests/benchmarks/responsive.py [--stacks MS] [seconds] [page ...]``;
with ``--stacks`` what the window does is told wherever it takes so long.
"""

from __future__ import annotations

import argparse
import faulthandler
import gc
import os
import pickle
import tempfile
import time
from dataclasses import replace
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

EVERY_MS = 5
PUSHED_SECONDS = 6
VEHICLES = 30


def share(values: list[float], part: float) -> float:
    """Return the value that this share of all values does not pass."""
    return sorted(values)[min(len(values) - 1, int(part * len(values)))]


class Watch:
    """Notes how late a timer is, by the clock and by the processor's time for this thread."""

    def __init__(self, stacks_ms: float) -> None:
        from PySide6.QtCore import Qt, QTimer

        self.wall: list[float] = []
        self.own: list[float] = []
        self.worst: list[tuple[float, float, str]] = []
        self.doing = ""
        self._clearing = 0.0
        self._stacks = stacks_ms / 1000
        self._at = time.perf_counter(), time.thread_time()
        self._timer = QTimer()
        self._timer.setTimerType(Qt.TimerType.PreciseTimer)
        self._timer.setInterval(EVERY_MS)
        self._timer.timeout.connect(self._note)
        gc.callbacks.append(self._cleared)

    def begin(self) -> None:
        """Begin anew."""
        self.wall, self.own, self.worst = [], [], []
        self._at = time.perf_counter(), time.thread_time()
        self._timer.start()

    def stop(self) -> None:
        """Note nothing more."""
        self._timer.stop()
        faulthandler.cancel_dump_traceback_later()

    def _cleared(self, phase: str, told: dict[str, int]) -> None:
        """Note a clearing up of all that Python holds, in whichever thread."""
        if told["generation"] == 2:
            if phase == "start":
                self._clearing = time.perf_counter()
            else:
                self.doing += f" (cleared up: {(time.perf_counter() - self._clearing) * 1000:.0f})"

    def _note(self) -> None:
        now = time.perf_counter(), time.thread_time()
        late = max(0.0, (now[0] - self._at[0]) * 1000 - EVERY_MS)
        own = (now[1] - self._at[1]) * 1000
        self.wall.append(late)
        self.own.append(own)
        if late > 40:
            self.worst.append((late, own, self.doing))
        self.doing = ""
        self._at = now
        if self._stacks:
            faulthandler.dump_traceback_later(self._stacks)


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

    def turn_to(self, _task: object) -> None:
        """Go on: no task is worked on."""

    def stop(self) -> None:
        """Nothing runs."""


def both_plans(book, now: int) -> list[bytes]:
    """Return a plan, and one of the vehicles in the opposite order, as the process sends them."""
    from app.service.improving import Improved
    from app.service.planning import plan
    from planner.schedule.judge import judge

    project = book.projects[0]
    turned = replace(book, projects=(replace(project, models=project.models[::-1]),))
    plans = [plan(one, now, quick=True).plan for one in (book, turned)]
    return [pickle.dumps(Improved(plan, True, judge(book, plan))) for plan in plans]


def line(name: str, values: list[float]) -> None:
    """Print one line of the table."""
    told = [share(values, 0.5), share(values, 0.99), max(values)]
    print(f"{name:36}" + "".join(f"{one:>9.1f}" for one in told), flush=True)


class Bench:
    """The window, watched."""

    def __init__(self, folder: str, stacks_ms: float) -> None:
        from families import NOW
        from PySide6.QtCore import QSettings
        from PySide6.QtWidgets import QApplication

        from app.window import improving
        from app.window.main_window import MainWindow
        from app.window.session import Session

        improving.START_MS = 0
        self.app = QApplication.instance() or QApplication([])
        self.watch = Watch(stacks_ms)
        self.session = Session(lambda: NOW)
        settings = QSettings(f"{folder}/settings.ini", QSettings.Format.IniFormat)
        self.window = MainWindow(self.session, settings)
        self.taken = 0
        self.every: list[float] = []
        self.session.pictured.connect(self._seen)
        self.session.prepared.connect(self._read)
        self.window.show()

    def _seen(self, change) -> None:
        self.taken += 1
        self.watch.doing += f"took: {change.cause}, {len(change.moves)} moved"

    def _read(self) -> None:
        self.watch.doing += "showed what was read"

    def run(self, seconds: float, until=lambda: False) -> None:
        """Let the window be, so long or until something holds."""
        from PySide6.QtCore import QEventLoop, QTimer

        loop, look = QEventLoop(), QTimer()
        look.setInterval(50)
        look.timeout.connect(lambda: loop.quit() if until() else None)
        look.start()
        QTimer.singleShot(int(seconds * 1000), loop.quit)
        loop.exec()

    def open(self, path: Path) -> None:
        """Open the book, and wait until its plan is being improved."""
        from app.window import start

        start.share_the_interpreter()
        self.collector = start.collect_at_rest(self.window, self.session, self.app)
        self.watch.begin()
        self.session.open_soon(path)
        self.run(60, lambda: self.window.improving.running)
        self._tell("opening, planning")

    def watched(self, name: str, seconds: float) -> None:
        """Print the delays with one page on screen."""
        self.window.show_page(name)
        self.run(0.2)
        self.taken = 0
        self.watch.begin()
        self.run(seconds)
        self._tell(f"{name}, {self.taken} plans")

    def _tell(self, name: str) -> None:
        self.watch.stop()
        line(f"{name}: wall", self.watch.wall)
        line(f"{name}: own", self.watch.own)
        self.every += self.watch.wall
        for late, own, doing in sorted(self.watch.worst, reverse=True)[:4]:
            print(f"    {late:.0f} ms late, {own:.0f} own {doing}")

    def push(self, plans: list[bytes]) -> None:
        """Let plans come every second from now on, in place of the process's."""
        from app.window import improving

        often = Often(plans)
        self.window.improving.stop()
        improving.Improver = lambda _task: often
        # Each is taken, whatever it moves: what people wait for then is what is measured.
        self.window.improving._weigh = lambda newest: self.session.take_plan(
            newest.plan, newest.verdict, "a better plan was taken"
        )
        self.window.improving._start()


def main() -> None:
    """Print the table."""
    reading = argparse.ArgumentParser()
    reading.add_argument("--stacks", type=float, default=0.0, metavar="MS")
    reading.add_argument("seconds", type=float, nargs="?", default=60.0)
    reading.add_argument("pages", nargs="*")
    asked = reading.parse_args()
    from families import NOW, batch

    from storage.bench_book import BenchBook

    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "bench.tackfree"
        BenchBook.create(path, batch(VEHICLES, 0)).close()
        bench = Bench(folder, asked.stacks)
        pages = asked.pages or [page.name for page in bench.window.pages]
        print(f"{'ms':36}{'median':>9}{'99 %':>9}{'most':>9}")
        bench.open(path)
        bench.every.clear()
        if asked.seconds:
            for name in pages:
                bench.watched(name, asked.seconds / len(pages))
            line("the process at work, every page", bench.every)
            bench.every.clear()
        bench.push(both_plans(bench.session.book, NOW))
        print("a plan every second:")
        for name in pages:
            bench.watched(name, PUSHED_SECONDS)
        line("a plan every second, every page", bench.every)
        bench.window.close()


if __name__ == "__main__":
    main()
