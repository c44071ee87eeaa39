"""How soon the window stands on a book with thirty models, and commands answer, from the start.

A child process opens the real window on the invented batch of thirty; told
are the milliseconds from the child's birth to its first paint, to the first
paint with the plan in it, and the processor's share of both.  Commands are
typed as a person would, and the import of Qt's widgets alone is timed in the
same rounds: what else is busy slows it as much.  Byte code lies ready, as it
does on every start but the first.  With a display the whole program is
started, the probe of the display included; without one, it is the window
alone, offscreen.  The yardstick is a fixed piece of arithmetic.  Run it as
``python tests/benchmarks/start.py [runs] [folder of another tree]``.
"""

from __future__ import annotations

import os
import resource
import statistics
import subprocess
import sys
import tempfile
import time
from pathlib import Path

VEHICLES = 30
NOW_TYPED = "2031-03-06T19:30"
CHILD = """
import os, sys, time
def told(word):
    print(word, time.time_ns() // 1_000_000, round(time.process_time() * 1000), flush=True)
def watched():
    from PySide6.QtCore import QTimer
    from app.window import main_window, start
    class Watched(main_window.MainWindow):
        painted = False
        def paintEvent(self, event):
            super().paintEvent(event)
            if not Watched.painted:
                Watched.painted = True
                told("window")
                self.session.prepared.connect(lambda: QTimer.singleShot(0, self.ended))
        def ended(self):
            self.repaint()
            told("plan")
            os._exit(0)
    start.MainWindow = Watched
import app.window
from pathlib import Path
book, now = Path(sys.argv[1]), int(sys.argv[2])
def run(path, *_given):
    watched()
    from app.window.start import run_window
    return run_window(book, now)
if os.environ.get("QT_QPA_PLATFORM") == "offscreen":
    run(book)
else:
    app.window.run = run
    from app.entry import main
    main(["--book", str(book)])
"""


def yardstick() -> float:
    """Return the milliseconds of the processor that a fixed piece of arithmetic takes."""
    start = time.thread_time()
    sum(number * number for number in range(300_000))
    return (time.thread_time() - start) * 1000


def surroundings(folder: str, tree: Path) -> dict[str, str]:
    """Return the environment of a child: a home of its own, byte code kept."""
    homes = dict.fromkeys(("HOME", "XDG_CONFIG_HOME", "XDG_DATA_HOME"), folder)
    env = {**os.environ, **homes, "PYTHONPATH": str(tree), "PYTHONPYCACHEPREFIX": f"{folder}/code"}
    env.pop("PYTHONDONTWRITEBYTECODE", None)
    if not (env.get("DISPLAY") or env.get("WAYLAND_DISPLAY")):
        env["QT_QPA_PLATFORM"] = "offscreen"
    return env


def started(folder: str, now: int, tree: Path) -> dict[str, float]:
    """Start the window once; return milliseconds by what was reached."""
    asked = [sys.executable, "-c", CHILD, f"{folder}/bench.tackfree", str(now)]
    born = time.time_ns() // 1_000_000
    said = subprocess.check_output(
        asked, env=surroundings(folder, tree), text=True, cwd=folder, stderr=subprocess.DEVNULL
    )
    reached: dict[str, float] = {}
    for word, at, spent in (line.split() for line in said.splitlines()):
        reached[f"to {word}"] = int(at) - born
        reached[f"to {word}, processor"] = int(spent)
    return reached


def typed(folder: str, tree: Path) -> dict[str, float]:
    """Run each command once; return its milliseconds, and those of the processor."""
    entry, at = ["-m", "app.entry"], ["--now", NOW_TYPED]
    commands = {
        "import of Qt's widgets": ["-c", "import PySide6.QtWidgets"],
        "tackfree cure": [*entry, "cure", "--family", "waterborne acrylic"],
        "tackfree tonight, 3 models": [*entry, "tonight", f"{folder}/three.json", *at],
        "tackfree plan, 30 models": [*entry, "plan", f"{folder}/thirty.json", *at],
    }
    found: dict[str, float] = {}
    for name, words in commands.items():
        before, born = resource.getrusage(resource.RUSAGE_CHILDREN), time.monotonic()
        subprocess.run(
            [sys.executable, *words],
            env=surroundings(folder, tree),
            cwd=folder,
            stdout=subprocess.DEVNULL,
            stderr=subprocess.DEVNULL,
            check=True,
        )
        found[name] = (time.monotonic() - born) * 1000
        after = resource.getrusage(resource.RUSAGE_CHILDREN)
        spent = after.ru_utime + after.ru_stime - before.ru_utime - before.ru_stime
        found[f"{name}, processor"] = spent * 1000
    return found


def main() -> None:
    """Print the table."""
    from families import NOW, batch

    from app.service import demos
    from storage.bench_book import BenchBook
    from storage.exchange import Exchange, dump

    runs = int(sys.argv[1]) if len(sys.argv) > 1 else 10
    tree = Path(sys.argv[2] if len(sys.argv) > 2 else Path(__file__).parents[2])
    found: dict[str, list[float]] = {}
    with tempfile.TemporaryDirectory() as folder:
        BenchBook.create(Path(folder) / "bench.tackfree", batch(VEHICLES, 0)).close()
        (Path(folder) / "thirty.json").write_bytes(dump(Exchange(batch(VEHICLES, 0))))
        (Path(folder) / "three.json").write_bytes(demos.data("harbour_tenders"))
        for first in (started(folder, NOW, tree), typed(folder, tree)):
            if not first:  # else it has left byte code behind
                sys.exit("no window can be opened on this display")
        for _ in range(runs):
            found.setdefault("yardstick", []).append(yardstick())
            for name, value in (*started(folder, NOW, tree).items(), *typed(folder, tree).items()):
                found.setdefault(name, []).append(value)
    print(f"{'ms':40}{'least':>8}{'median':>8}{'most':>8}")
    for name, values in found.items():
        middle = statistics.median(values)
        print(f"{name:40}{min(values):>8.0f}{middle:>8.0f}{max(values):>8.0f}")


if __name__ == "__main__":
    main()
