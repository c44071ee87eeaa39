"""Takes the pictures of the README anew, without a display: Tonight, Plan, Models, bench mode.

Type ``python -m demo_projects.screenshots.take``; it writes beside itself.  The
book is that of a demonstration on its first evening, in a folder of its own.
"""

from __future__ import annotations

import os
import sys
import tempfile
import time
from pathlib import Path

HERE = Path(__file__).parent
SIZE = (1600, 1000)
PAGES = {"tonight": "tonight.png", "timeline": "plan.png", "build": "models.png"}
MOST_SECONDS = 120


def main() -> int:
    """Take every picture; 1 where no plan came."""
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    from PySide6.QtCore import QSettings  # noqa: PLC0415 -- after the platform is chosen
    from PySide6.QtWidgets import QApplication  # noqa: PLC0415

    from app.service import demos  # noqa: PLC0415
    from app.window import improving, language  # noqa: PLC0415
    from app.window.main_window import MainWindow  # noqa: PLC0415
    from app.window.palette import Appearance  # noqa: PLC0415
    from app.window.session import Session  # noqa: PLC0415
    from storage.bench_book import BenchBook  # noqa: PLC0415

    improving.START_MS = 10**8  # the plan of the first second is the same everywhere
    app = QApplication(sys.argv[:1])
    with tempfile.TemporaryDirectory() as folder:
        settings = QSettings(f"{folder}/settings.ini", QSettings.Format.IniFormat)
        settings.setValue(language.KEY, "en")
        language.install(app, settings)
        book = demos.read("club_day_batch").book
        path = Path(folder) / "club day.tackfree"
        BenchBook.create(path, book).close()
        now = demos.first_evening(book)
        session = Session(lambda: now)
        window = MainWindow(session, settings)
        window.set_look(Appearance.LIGHT)
        window.resize(*SIZE)
        window.show()
        session.open(path)

        def settle(seconds: float) -> None:
            until = time.monotonic() + seconds
            while time.monotonic() < until:
                app.processEvents()

        until = time.monotonic() + MOST_SECONDS
        while session.picture is None and time.monotonic() < until:
            settle(0.1)
        taken = session.picture is not None
        if taken:
            for page, name in PAGES.items():
                window.show_page(page)
                settle(2)
                window.grab().save(str(HERE / name))
            window.go_to_bench()
            settle(2)
            window.bench.grab().save(str(HERE / "bench_mode.png"))
        window.close()
        window.deleteLater()
        settle(0.2)
    return 0 if taken else 1


if __name__ == "__main__":
    sys.exit(main())
