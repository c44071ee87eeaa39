"""Takes the pictures of the README anew, without a display: each room, and bench mode.

Type ``python -m demo_projects.screenshots.take``; it writes beside itself.  The
book is that of a demonstration, in a folder of its own: on its first evening, and
for models some days later, when all has been done as it was planned.
"""

from __future__ import annotations

import os
import sys
import tempfile
import time
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from PySide6.QtCore import QSettings
from PySide6.QtWidgets import QApplication

from app.service import demos, logbook
from app.service.edits import Edit
from app.window import improving, language
from app.window.main_window import MainWindow
from app.window.palette import Appearance
from app.window.session import Session
from planner.values.book import Book
from planner.values.moment import moment_of, zone_named
from planner.values.plan import Plan
from planner.values.project import Logged
from storage.bench_book import BenchBook

HERE = Path(__file__).parent
SIZE = (1600, 1000)
FIRST = {"tonight": "tonight.png", "timeline": "plan.png", "stock": "paints.png"}
LATER = {"build": "models.png"}
LATER_DAYS = 5
MOST_SECONDS = 120


class Camera:
    """A window on a book whose clock is set by hand."""

    def __init__(self, app: QApplication, folder: Path) -> None:
        book = demos.read("club_day_batch").book
        self.now = demos.first_evening(book)
        self._app = app
        settings = QSettings(str(folder / "settings.ini"), QSettings.Format.IniFormat)
        settings.setValue(language.KEY, "en")
        language.install(app, settings)
        path = folder / "club day.tackfree"
        BenchBook.create(path, book).close()
        self.session = Session(lambda: self.now)
        self.window = MainWindow(self.session, settings)
        self.window.set_look(Appearance.LIGHT)
        self.window.resize(*SIZE)
        self.window.show()
        self.session.open(path)

    def settle(self, seconds: float) -> None:
        """Let the window do what it has to for a while."""
        until = time.monotonic() + seconds
        while time.monotonic() < until:
            self._app.processEvents()

    def planned(self) -> Plan | None:
        """Return the plan once there is one; None where none comes."""
        until = time.monotonic() + MOST_SECONDS
        while self.session.picture is None and time.monotonic() < until:
            self.settle(0.1)
        return self.session.picture.plan if self.session.picture else None

    def take(self, pages: dict[str, str]) -> None:
        """Take pictures of pages."""
        for page, name in pages.items():
            self.window.show_page(page)
            self.settle(2)
            self.window.grab().save(str(HERE / name))

    def take_bench(self) -> None:
        """Take the picture of bench mode, as large as the window."""
        self.window.go_to_bench()
        self.settle(1)
        self.window.bench.resize(*SIZE)
        self.settle(1)
        self.window.bench.grab().save(str(HERE / "bench_mode.png"))
        self.window.back_from_bench()


@contextmanager
def camera() -> Iterator[Camera]:
    """Yield a window; it is closed afterwards."""
    improving.START_MS = 10**8  # the plan of the first second is the same everywhere
    app = QApplication(sys.argv[:1])
    with tempfile.TemporaryDirectory() as folder:
        made = Camera(app, Path(folder))
        yield made
        made.window.close()
        made.window.deleteLater()
        made.settle(0.2)


def worked(book: Book, plan: Plan, until: int) -> Edit:
    """Note all that a plan has before a minute as done when it was planned."""
    zone = zone_named(book.bench_time.zone)
    for placed in sorted(plan.placements, key=lambda placed: placed.start):
        if placed.end <= until:
            key = placed.key
            start, end = (moment_of(at, zone) for at in (placed.start, placed.end))
            fact = Logged(model=key.model, step=key.step, coat=key.coat, start=start, end=end)
            book = logbook.write(book, key.project, fact).book
    return Edit("evenings", book)


def main() -> int:
    """Take every picture; 1 where no plan came."""
    with camera() as made:
        plan = made.planned()
        if plan is None:
            return 1
        made.take(FIRST)
        made.take_bench()
        made.now += LATER_DAYS * 24 * 60
        made.session.attempt(lambda book: worked(book, plan, made.now))
        made.settle(8)
        made.window.say("")
        made.take(LATER)
    return 0


if __name__ == "__main__":
    sys.exit(main())
